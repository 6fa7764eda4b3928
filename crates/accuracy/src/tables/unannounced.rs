//! Worlds the inference was not told about, against what the house is held to there.

use crate::bar::UNANNOUNCED;
use crate::tables::table::{Table, bar_text, number, percent};
use crate::tally::ThreeWays;

/// One world's name, what differs in it, and its counts.
pub(crate) struct Strange {
    pub(crate) name: String,
    pub(crate) says: String,
    /// The first seed.
    pub(crate) from: u64,
    pub(crate) ways: ThreeWays,
}

pub(crate) fn unannounced(worlds: &[Strange]) -> Table {
    let says = format!(
        "Each is the announced world with one thing changed that the inference is not told. Bars: within {}, outside {}. \
         {} booms each.",
        bar_text(&UNANNOUNCED[0]),
        bar_text(&UNANNOUNCED[1]),
        worlds.first().map_or(0, |world| world.ways.boom.draws),
    );
    let heads = [
        "world",
        "what differs",
        "seeds from",
        "within, are",
        "",
        "outside, are",
        "",
        "cannot tell",
        "Brier",
        "covers",
    ];
    let mut table = Table::new("Unannounced worlds", &says, &heads);
    for world in worlds {
        let boom = &world.ways.boom;
        let mut row = vec![world.name.clone(), world.says.clone(), world.from.to_string()];
        for bar in UNANNOUNCED {
            let ratio = (bar.figure)(boom);
            row.push(percent(ratio));
            row.push(table.standing(bar, ratio));
        }
        row.extend([percent(&boom.cannot_tell), number(&boom.brier, 4), percent(&boom.coverage)]);
        table.row(row);
    }
    table
}
