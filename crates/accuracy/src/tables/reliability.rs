//! Whether a probability means what it says: ten bins, said and found.

use crate::ratio::Ratio;
use crate::tables::table::{Table, percent};
use crate::tally::{BINS, Tally};

pub(crate) fn reliability(simulator: &Tally, second: &Tally) -> Table {
    let says = "Tips of the announced worlds by the probability of being within that they were given: the mean of it, \
                the share that is within, and how many standard errors they are apart (beside few tips in a bin, \
                more than 3 is worth a look).";
    let heads = ["probability", "tips", "said", "found", "apart", "second: tips", "said", "found", "apart"];
    let mut table = Table::new("Reliability", says, &heads);
    for bin in 0..BINS {
        let mut row =
            vec![format!("{:.1} to {:.1}", bin as f64 / BINS as f64, (bin + 1) as f64 / BINS as f64)];
        for tally in [simulator, second] {
            let (said, found) = (&tally.said[bin], &tally.bins[bin]);
            row.extend([format!("{}", found.of()), said_text(said), percent(found), apart(said, found)]);
        }
        table.row(row);
    }
    table
}

fn said_text(said: &Ratio) -> String {
    said.value().map_or("-".to_owned(), |value| format!("{:.2} %", 100.0 * value))
}

fn apart(said: &Ratio, found: &Ratio) -> String {
    match (said.value(), found.value(), found.standard_error()) {
        (Some(said), Some(found), Some(error)) => format!("{:+.1} se", (found - said) / error),
        _ => "-".to_owned(),
    }
}
