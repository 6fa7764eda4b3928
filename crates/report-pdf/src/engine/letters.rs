//! Texts made ready to be set: whitespace as a page shows it, and places to break in words that are wider than a line.

use figures::{Weight, text_width};
use report::style::MM_PER_POINT;

/// Where a word may be broken without a sign: the zero width space.
///
/// *Source*: Unicode Standard Annex 14, class ZW.
const BREAK: char = '\u{200b}';

/// The widest that letters may stand, and how large they are.
#[derive(Clone, Copy)]
pub struct Letters {
    /// The width of a line, in millimetres.
    pub width: f64,
    /// The size of the letters, in points.
    pub size: f64,
    /// Regular or bold.
    pub weight: Weight,
}

impl Letters {
    /// A text as a page shows it: each run of whitespace one space.
    pub fn flowing(&self, text: &str) -> String {
        let words: Vec<String> = sound(text).split_whitespace().map(|word| self.broken(word)).collect();
        words.join(" ")
    }

    /// A line with its spaces as they were written.
    pub fn as_written(&self, line: &str) -> String {
        let words: Vec<String> = sound(line).split(' ').map(|word| self.broken(word)).collect();
        words.join(" ")
    }

    /// A word, with places to break after each sign where it is wider than the line.
    fn broken(&self, word: &str) -> String {
        if text_width(word, self.size, self.weight) * MM_PER_POINT <= self.width {
            return word.to_owned();
        }
        let mut broken = String::with_capacity(word.len() * 4);
        for (index, sign) in word.chars().enumerate() {
            if index > 0 && !joins(sign) {
                broken.push(BREAK);
            }
            broken.push(sign);
        }
        broken
    }
}

/// Whether a sign belongs to the one before it.
///
/// *Source*: Unicode blocks "Combining Diacritical Marks", "Variation Selectors" and the zero width joiner.
fn joins(sign: char) -> bool {
    matches!(sign, '\u{300}'..='\u{36f}' | '\u{fe00}'..='\u{fe0f}' | '\u{200d}')
}

/// Without signs that no page may hold, and those that would turn the text around them over; as the HTML page has it.
pub fn sound(text: &str) -> String {
    text.chars()
        .filter_map(|sign| match sign {
            '\n' | '\t' => Some(' '),
            sign if sign.is_control() => None,
            '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' => None,
            sign => Some(sign),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    // 20 mm for letters of 10 pt: some ten letters.
    const NARROW: Letters = Letters { width: 20.0, size: 10.0, weight: Weight::Regular };

    #[test]
    fn only_words_wider_than_the_line_are_broken() {
        assert_eq!(NARROW.flowing("  two\n words "), "two words");
        assert_eq!(NARROW.flowing("a Pneumonoultramicroscopic").matches(BREAK).count(), 23);
        assert_eq!(NARROW.flowing("eeeeeeeeeeeeeeeeeeeeeeeee\u{301}").matches(BREAK).count(), 24);
    }

    #[test]
    fn a_line_keeps_its_spaces() {
        assert_eq!(NARROW.as_written("  a   b"), "  a   b");
    }

    #[test]
    fn signs_that_turn_text_over_or_that_nobody_sees_are_left_out() {
        assert_eq!(sound("a\u{202e}b\u{0}c\u{7}\u{2067}d"), "abcd");
    }
}
