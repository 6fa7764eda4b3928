//! The announced worlds against what the house is held to, by both generators.

use crate::bar::{ANNOUNCED, Bar, ONE_BAD_TIP};
use crate::ratio::Ratio;
use crate::tables::table::{Table, bar_text, number, percent};
use crate::tally::{Tally, ThreeWays};

/// The counts the table is made of.
pub(crate) struct Held<'a> {
    pub(crate) simulator: &'a ThreeWays,
    pub(crate) second: &'a ThreeWays,
    /// Twenty tips, one 12 % over the others.
    pub(crate) over_others: &'a Tally,
    /// Twenty tips, one 12 % over the mean.
    pub(crate) over_mean: &'a Tally,
    /// The first seeds of the four.
    pub(crate) from: [u64; 4],
}

pub(crate) fn held(counts: &Held<'_>) -> Table {
    let heads = ["figure", "bar", "simulator", "", "second generator", "", "plain rule, simulator"];
    let says = format!(
        "Announced worlds: 7 to 60 tips, spread 1 to 3 %, a tenth of the tips off by 4 to 40 %, several cups and times, \
         repeats, cups under one run. {} and {} booms, {} and {} tips. ± is the Monte Carlo standard error over booms. \
         The tip 12 % high: {} and {} draws. Seeds from {:?}.",
        counts.simulator.boom.draws,
        counts.second.boom.draws,
        counts.simulator.boom.brier.of(),
        counts.second.boom.brier.of(),
        counts.over_others.draws,
        counts.over_mean.draws,
        counts.from,
    );
    let mut table = Table::new("What the house is held to", &says, &heads);
    for bar in ANNOUNCED {
        let [simulator, second] = [counts.simulator, counts.second].map(|ways| (bar.figure)(&ways.boom));
        let plain = (bar.figure)(&counts.simulator.plain);
        let row = vec![
            bar.name.to_owned(),
            bar_text(bar),
            cell(bar, simulator),
            table.standing(bar, simulator),
            cell(bar, second),
            table.standing(bar, second),
            cell(bar, plain),
        ];
        table.row(row);
    }
    for (tally, over) in [(counts.over_others, "over the others"), (counts.over_mean, "over the mean")] {
        let ratio = &tally.near_missed;
        let standing = table.standing(&ONE_BAD_TIP, ratio);
        let row = vec![
            format!("{} (12 % {over})", ONE_BAD_TIP.name),
            bar_text(&ONE_BAD_TIP),
            percent(ratio),
            standing,
            "-".to_owned(),
            String::new(),
            "-".to_owned(),
        ];
        table.row(row);
    }
    table
}

fn cell(bar: &Bar, ratio: &Ratio) -> String {
    if bar.name == "Brier score" { number(ratio, 5) } else { percent(ratio) }
}
