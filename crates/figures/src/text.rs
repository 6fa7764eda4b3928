//! How wide a text is, and how to make it fit.
//!
//! Widths are those of the font we ship (`fonts`), without kerning, which mostly draws letters closer.

use crate::type_widths::{HIGHEST, LOWEST, WIDTHS};

/// Regular or bold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weight {
    /// For most texts.
    Regular,
    /// For what matters.
    Bold,
}

/// Width of a character that the font lacks, in thousandths of the type size. Our own choice: wider than the widest
/// letter of common fonts that might stand in, most of which keep to one size.
const UNKNOWN: f64 = 1400.0;

/// The font counts in thousandths of the type size: its own grid.
const GRID: f64 = 1000.0;

/// How wide a text stands at this size.
#[must_use]
pub fn text_width(text: &str, size: f64, weight: Weight) -> f64 {
    clean(text).chars().map(|letter| advance(letter, weight)).sum::<f64>() * size / GRID
}

/// How far the highest letter rises above the line its text stands on.
#[must_use]
pub fn rise(size: f64) -> f64 {
    f64::from(HIGHEST) * size / GRID
}

/// How far the lowest letter hangs below that line.
#[must_use]
pub fn drop(size: f64) -> f64 {
    f64::from(LOWEST) * size / GRID
}

fn advance(letter: char, weight: Weight) -> f64 {
    match WIDTHS.binary_search_by(|(known, _, _)| known.cmp(&letter)) {
        Ok(index) => {
            let (_, regular, bold) = WIDTHS[index];
            f64::from(match weight {
                Weight::Regular => regular,
                Weight::Bold => bold,
            })
        }
        Err(_) => UNKNOWN,
    }
}

/// The text as it is drawn: without characters that XML forbids, each run of whitespace one space, none at the ends.
/// A no-break space stays what it is.
#[must_use]
pub fn clean(text: &str) -> String {
    let mut clean = String::with_capacity(text.len());
    let mut space_due = false;
    for letter in text.chars() {
        if matches!(letter, ' ' | '\t' | '\n' | '\r' | '\u{85}' | '\u{2028}' | '\u{2029}') {
            space_due = !clean.is_empty();
            continue;
        }
        if letter.is_control() || matches!(letter, '\u{fffe}' | '\u{ffff}') {
            continue;
        }
        if space_due {
            clean.push(' ');
            space_due = false;
        }
        clean.push(letter);
    }
    clean
}

/// The type a text would like to stand in, and how far it may give way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Room {
    /// How wide the lines may be.
    pub width: f64,
    /// How many lines there may be; at least one.
    pub lines: usize,
    /// The size it would like.
    pub size: f64,
    /// The least size it may have.
    pub least_size: f64,
    /// Regular or bold.
    pub weight: Weight,
}

/// A text that fits.
#[derive(Clone, Debug, PartialEq)]
pub struct Fitted {
    /// Its lines; none when there is no text, or no room for even one letter.
    pub lines: Vec<String>,
    /// The size it stands in.
    pub size: f64,
    /// The width of its widest line.
    pub width: f64,
    /// Whether all of it is there.
    pub wholeness: Wholeness,
}

/// Whether all of a text is there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wholeness {
    /// All of it.
    Whole,
    /// It was cut, and ends in "…".
    Cut,
}

/// Makes a text fit: broken between words, then smaller, and at the least size cut with "…" as the last resort.
#[must_use]
pub fn fit(text: &str, room: Room) -> Fitted {
    let text = clean(text);
    if !room.size.is_finite() {
        return fitted(Vec::new(), 0.0, room.weight, Wholeness::Cut);
    }
    let most = room.lines.max(1);
    let least = if room.least_size.is_finite() { room.least_size.min(room.size) } else { room.size };
    // Steps of half a unit are too small to see; our own choice.
    let mut size = room.size;
    loop {
        let lines = broken(&text, room.width, size, room.weight);
        let fits =
            lines.len() <= most && lines.iter().all(|line| text_width(line, size, room.weight) <= room.width);
        if fits {
            return fitted(lines, size, room.weight, Wholeness::Whole);
        }
        if size <= least {
            return cut(lines, most, Room { size, ..room });
        }
        size = (size - 0.5).max(least);
    }
}

fn fitted(lines: Vec<String>, size: f64, weight: Weight, wholeness: Wholeness) -> Fitted {
    let width = lines.iter().map(|line| text_width(line, size, weight)).fold(0.0, f64::max);
    Fitted { lines, size, width, wholeness }
}

/// Lines of whole words; a word that is too wide has a line of its own.
fn broken(text: &str, width: f64, size: f64, weight: Weight) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        if let Some(last) = lines.last_mut() {
            let longer = format!("{last} {word}");
            if text_width(&longer, size, weight) <= width {
                *last = longer;
                continue;
            }
        }
        lines.push(word.to_owned());
    }
    lines
}

/// The first lines, each cut where it is too wide, the last with "…" when anything is missing after it.
fn cut(lines: Vec<String>, most: usize, room: Room) -> Fitted {
    let missing = lines.len() > most;
    let mut kept = Vec::new();
    for (index, line) in lines.iter().take(most).enumerate() {
        let last = index + 1 == most.min(lines.len());
        let too_wide = text_width(line, room.size, room.weight) > room.width;
        let goes_on = last && missing;
        if !too_wide && !goes_on {
            kept.push(line.clone());
            continue;
        }
        match shortened(line, room) {
            Some(short) => kept.push(short),
            None => return fitted(Vec::new(), room.size, room.weight, Wholeness::Cut),
        }
        if too_wide {
            // What follows a cut word would read as if nothing were missing.
            break;
        }
    }
    fitted(kept, room.size, room.weight, Wholeness::Cut)
}

fn shortened(line: &str, room: Room) -> Option<String> {
    let mut letters: Vec<char> = line.chars().collect();
    loop {
        let start: String = letters.iter().collect();
        let short = format!("{}…", start.trim_end());
        if text_width(&short, room.size, room.weight) <= room.width {
            return (!letters.is_empty()).then_some(short);
        }
        letters.pop()?;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn room(width: f64, lines: usize) -> Room {
        Room { width, lines, size: 16.0, least_size: 13.0, weight: Weight::Regular }
    }

    #[test]
    fn the_table_is_that_of_the_fonts() {
        for (file, weight) in
            [(crate::fonts::REGULAR_TTF, Weight::Regular), (crate::fonts::BOLD_TTF, Weight::Bold)]
        {
            let face = ttf_parser::Face::parse(file, 0).expect("a font");
            assert_eq!(face.units_per_em(), 1000);
            for (letter, _, _) in WIDTHS {
                let glyph = face.glyph_index(letter).unwrap_or_else(|| panic!("{letter:?} is in the font"));
                let width = face.glyph_hor_advance(glyph).expect("a width");
                assert!((advance(letter, weight) - f64::from(width)).abs() < 1e-9, "{letter:?}");
            }
            let known = face.tables().cmap.expect("a map").subtables;
            let mut count = 0;
            known.into_iter().find(|table| table.is_unicode()).expect("unicode").codepoints(|_| count += 1);
            assert_eq!(count, WIDTHS.len(), "every character of the font is in the table");
        }
    }

    #[test]
    fn what_we_write_is_in_the_font() {
        for letter in "0123456789 ½¼¾−×÷±≤≥≈√→←·…–%°′″ñÑáéíóúüÁÉÍÓÚ¿¡ŁőČ²µ".chars()
        {
            assert!(WIDTHS.iter().any(|(known, _, _)| *known == letter), "{letter}");
        }
    }

    #[test]
    fn bold_digits_are_all_alike_enough_to_line_up() {
        assert!(text_width("14½", 13.0, Weight::Regular) < text_width("14½", 13.0, Weight::Bold));
        assert!(
            text_width("\u{4e2d}", 10.0, Weight::Regular) > 10.0,
            "an unknown letter is taken to be wide"
        );
    }

    #[test]
    fn a_text_is_broken_then_made_smaller_then_cut() {
        let one = fit("end tips", room(100.0, 1));
        assert!(one.lines.len() == 1 && one.size > 15.9);
        let two = fit("end tips, half flow", room(90.0, 2));
        assert_eq!(two.lines, ["end tips,", "half flow"]);
        let smaller = fit("end tips, half", room(90.0, 1));
        assert!(smaller.size < 16.0 && smaller.wholeness == Wholeness::Whole, "{smaller:?}");
        let cut = fit("boquillas de los extremos, medio caudal", room(90.0, 1));
        assert_eq!((cut.lines[0].as_str(), cut.wholeness), ("boquillas de l…", Wholeness::Cut));
        assert!(fit("Wolfeschlegelsteinhausenbergerdorff", room(60.0, 3)).width <= 60.0);
        assert!(fit("any", room(2.0, 3)).lines.is_empty());
        assert!(fit("  ", room(90.0, 3)).lines.is_empty());
    }
}
