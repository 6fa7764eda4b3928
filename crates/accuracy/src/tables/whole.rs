//! What is said of a boom as a whole, beside what is so.

use crate::tables::table::{Table, number, percent};
use crate::whole::{FIFTHS, Whole};

pub(crate) fn whole(generators: &[(&str, &Whole)]) -> Table {
    let says = "Booms of the announced worlds: the wrong calls to expect on a boom and those there are; then, by the \
                chance that every tip is within, its mean and the share of booms that are so.";
    let mut table =
        Table::new("The boom as a whole", says, &["generator", "figure", "booms", "said", "found"]);
    for (generator, whole) in generators {
        table.row(vec![
            (*generator).to_owned(),
            "wrong calls on a boom".to_owned(),
            whole.wrong_said.of().to_string(),
            number(&whole.wrong_said, 4),
            number(&whole.wrong_found, 4),
        ]);
        for bin in 0..FIFTHS {
            let (low, high) = (100 * bin / FIFTHS, 100 * (bin + 1) / FIFTHS);
            let (said, found) = (&whole.all_within_said[bin], &whole.all_within_found[bin]);
            table.row(vec![
                (*generator).to_owned(),
                format!("every tip within, {low} to {high} %"),
                said.of().to_string(),
                percent(said),
                percent(found),
            ]);
        }
    }
    table
}
