//! What catching again settles, and for how many minutes.

use crate::again::{Again, Came};
use crate::tables::table::{Table, number, percent};

/// What came of each way in one world.
pub(crate) struct InWorld {
    pub(crate) world: &'static str,
    /// The first seed.
    pub(crate) from: u64,
    pub(crate) ways: Vec<(Again, Came)>,
}

pub(crate) fn again(worlds: &[InWorld], draws: u32) -> Table {
    let says = format!(
        "Every tip is caught once, then some again; the same booms and first cups in every row of a world ({draws} booms \
         each). Figures are for a boom. Minutes are those of the cups caught again, 20 s each for walking, pouring and \
         reading. *Said* is what the named catches promised to settle, *came* what they did, by the truth: a wrong call \
         counts 1, an open one 0.05."
    );
    let heads = [
        "world",
        "caught again",
        "cups",
        "minutes",
        "wrong calls",
        "false alarms",
        "left open",
        "faults found",
        "said",
        "came",
    ];
    let mut table = Table::new("The next cup", &says, &heads);
    for InWorld { world, from, ways } in worlds {
        for (how, came) in ways {
            let said = match how {
                Again::Named | Again::NamedUntilDone => number(&came.said, 3),
                _ => "-".to_owned(),
            };
            table.row(vec![
                format!("{world} (seeds from {from})"),
                how.words().to_owned(),
                number(&came.cups, 2),
                number(&came.minutes, 2),
                number(&came.wrong, 3),
                number(&came.false_alarms, 3),
                number(&came.open, 3),
                percent(&came.faults_found),
                said,
                number(&came.came, 3),
            ]);
        }
    }
    table
}
