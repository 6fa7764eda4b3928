//! The plain rule, the readings alone, and the boom's word too, on the same draws.

use crate::tables::table::{Table, number, percent};
use crate::tally::ThreeWays;

pub(crate) fn compare(worlds: &[(&str, &ThreeWays)]) -> Table {
    let says = "The same draws judged in three ways. The plain rule always decides; the readings alone decide where their \
                range allows; with the boom, tips that are alike speak for one another.";
    let heads = [
        "world",
        "way",
        "within, are",
        "outside, are",
        "cannot tell",
        "faults found",
        "false alarms",
        "faults of 10 to 15 % called within",
        "wrong calls a boom",
        "Brier",
        "covers",
    ];
    let mut table = Table::new("Beside the plain rule and the readings alone", says, &heads);
    for (name, ways) in worlds {
        let each =
            [("plain rule", &ways.plain), ("readings alone", &ways.measured), ("with the boom", &ways.boom)];
        for (way, tally) in each {
            table.row(vec![
                (*name).to_owned(),
                way.to_owned(),
                percent(&tally.within_right),
                percent(&tally.outside_right),
                percent(&tally.cannot_tell),
                percent(&tally.faults_found),
                percent(&tally.false_alarms),
                percent(&tally.near_missed),
                number(&tally.wrong_calls, 3),
                number(&tally.brier, 4),
                percent(&tally.coverage),
            ]);
        }
    }
    table
}
