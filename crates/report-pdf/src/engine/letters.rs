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

    /// A word, with places to break where it is wider than the line.
    fn broken(&self, word: &str) -> String {
        if self.wide(word) <= self.width {
            return word.to_owned();
        }
        let mut broken = String::with_capacity(word.len() * 2);
        let mut piece = 0.0;
        for (index, sign) in word.chars().enumerate() {
            if index > 0 && piece >= self.width * PIECE && !joins(sign) {
                broken.push(BREAK);
                piece = 0.0;
            }
            piece += self.wide(sign.encode_utf8(&mut [0; 4]));
            broken.push(sign);
        }
        broken
    }

    fn wide(&self, text: &str) -> f64 {
        text_width(text, self.size, self.weight) * MM_PER_POINT
    }
}

/// The pieces that a word too long for the line may be broken into are about this share of the line. Our own choice: the
/// engine tries the line again at each place to break, so that one after every letter would take it seconds.
const PIECE: f64 = 0.06;

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
        let broken = NARROW.flowing("a Pneumonoultramicroscopic");
        assert!(broken.starts_with("a P\u{200b}n") && broken.ends_with("o\u{200b}p\u{200b}ic"), "{broken:?}");
        assert!(!NARROW.flowing(&"e\u{301}".repeat(25)).contains("\u{200b}\u{301}"));
    }

    #[test]
    fn no_piece_is_wider_than_a_letter_more_than_its_share() {
        let letters = Letters { width: 190.0, ..NARROW };
        let broken = letters.flowing(&"Wi".repeat(300));
        let widest = broken.split(BREAK).map(|piece| letters.wide(piece)).fold(0.0, f64::max);
        assert!(widest <= 190.0 * PIECE + letters.wide("W"), "{widest}");
        assert_eq!(broken.replace(BREAK, ""), "Wi".repeat(300));
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
