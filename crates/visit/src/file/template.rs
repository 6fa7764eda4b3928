//! The empty visit file to fill in: every field with a word about it, switched off by a `#` until it is filled in.

use super::fields::{SECTIONS, Several};

/// Returns a commented visit file. Nothing in it is switched on, so that what is not filled in is not claimed.
#[must_use]
pub fn template() -> String {
    let mut lines = vec![
        "# A visit: one sprayer on one day. Take away the # before a line and put your own value in.".to_string(),
        "# Leave out what was not done. Quantities carry their unit and stand in quotes; the decimal mark is a point.".to_string(),
        "# Clean water only. Brake on, out of gear, nobody near the shaft; never a tip to the mouth.".to_string(),
    ];
    for section in SECTIONS {
        lines.push(String::new());
        lines.push(format!("# {}", section.english));
        let header = match section.several {
            Several::No => format!("[{}]", section.name),
            Several::Yes => format!("[[{}]]", section.name),
        };
        // The headers that need a field stay off as well, so that the file as written is an empty visit.
        lines.push(format!("# {header}"));
        for field in section.fields {
            lines.push(format!("# {} = {}  # {}", field.name, field.example, field.english));
        }
    }
    lines.push(String::new());
    lines.join("\n")
}
