//! The announced world by cup and by length of the boom: where what is lost is lost.

use crate::tables::table::{Table, number, percent};
use crate::tally::Tally;

pub(crate) fn by_kind(kinds: &[(String, u64, Tally)]) -> Table {
    let says = "Parts of the announced world, each with draws of its own. No bars hold for a part alone.";
    let heads = [
        "part",
        "booms",
        "seeds from",
        "within, are",
        "outside, are",
        "cannot tell",
        "10 to 15 % called within",
        "Brier",
        "covers",
    ];
    let mut table = Table::new("By cup and by length of the boom", says, &heads);
    for (name, from, tally) in kinds {
        table.row(vec![
            name.clone(),
            tally.draws.to_string(),
            from.to_string(),
            percent(&tally.within_right),
            percent(&tally.outside_right),
            percent(&tally.cannot_tell),
            percent(&tally.near_missed),
            number(&tally.brier, 4),
            percent(&tally.coverage),
        ]);
    }
    table
}
