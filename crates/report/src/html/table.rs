//! Tables, to read and to write in.

use super::escape;
use crate::sheet::{Table, Use};

/// A table of more columns than these is scrolled on a narrow screen, not squeezed. Our own choice: a word in each.
const WIDE: usize = 4;

/// Writes a table.
pub fn write(out: &mut String, table: &Table) {
    let class = match table.use_ {
        Use::Read => "read",
        Use::Write => "write",
    };
    let total: u32 = table.widths.iter().sum::<u32>().max(1);
    let wide = table.widths.len() > WIDE;
    if wide {
        out.push_str("<div class=\"wide\" tabindex=\"0\">");
    }
    out.push_str(&format!(
        "<table class=\"{class}\"><caption>{}</caption><colgroup>",
        escape(&table.caption)
    ));
    for width in &table.widths {
        let share = 100.0 * f64::from(*width) / f64::from(total);
        out.push_str(&format!("<col style=\"width:{share:.2}%\">"));
    }
    out.push_str("</colgroup>");
    if table.heads.iter().any(|head| !head.is_empty()) {
        out.push_str("<thead><tr>");
        for head in &table.heads {
            // A column without a head, as of numbers, has none to hear either.
            if head.is_empty() {
                out.push_str("<td></td>");
            } else {
                out.push_str(&format!("<th scope=\"col\">{}</th>", escape(head)));
            }
        }
        out.push_str("</tr></thead>");
    }
    out.push_str("<tbody>\n");
    for row in &table.rows {
        out.push_str("<tr>");
        for cell in row {
            out.push_str(&format!("<td>{}</td>", escape(cell)));
        }
        out.push_str("</tr>\n");
    }
    out.push_str(if wide { "</tbody></table></div>\n" } else { "</tbody></table>\n" });
}
