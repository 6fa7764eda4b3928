//! The pad under the large cup: digits, the fractions a cup has, and the other side of the cup.

use units::{Caught, Dimension, Marks, Unit};

/// A key of the pad.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Key {
    /// A digit.
    Digit(u8),
    /// The point of a decimal.
    Point,
    /// One, two or three quarters on top of the whole number.
    Quarters(u8),
    /// The last sign is taken back.
    Rub,
    /// This tip is not caught.
    Skip,
    /// The other side of the cup.
    OtherSide,
    /// The next step of marks of the other side.
    OtherMarks,
}

/// What was typed so far.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Pad {
    /// Digits, with at most one point.
    pub digits: String,
    /// Quarters on top.
    pub quarters: u8,
    /// Which side of the cup is read.
    pub side: Side,
    /// The place in [`Sides::other_marks`] of the marks of the other side.
    pub other_marks: usize,
}

/// A side of the cup.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Side {
    /// The side with the marks that were given for the cup.
    #[default]
    Given,
    /// The other side.
    Other,
}

/// What the pad offers for a cup.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sides {
    /// The unit of the marks that were given, as a person writes it.
    pub given: &'static str,
    /// The unit of the other side; none on a scale.
    pub other: Option<&'static str>,
    /// Steps of marks that the other side may have.
    pub other_marks: &'static [&'static str],
}

/// More digits than these are a slip of the finger. Our own choice: no cup on a boom holds a hundred litres.
const MOST_DIGITS: usize = 6;

/// The sides of a cup by its marks; US fluid ounces where nothing is said.
///
/// *Source*: kitchen and calibration cups in the US carry fluid ounces and millilitres side by side (common practice). The
/// marks of the other side are offered in steps that such cups have.
#[must_use]
pub fn sides(marks: &str) -> Sides {
    let ounces = Sides {
        given: "fl oz",
        other: Some("mL"),
        other_marks: &["10 mL", "20 mL", "25 mL", "50 mL", "5 mL", "1 mL"],
    };
    let Ok(step) = Caught::parse(marks, None) else { return ounces };
    let written = step.written();
    let is = |name: &str| written.unit().is_some() && written.unit() == Unit::named(name).as_ref();
    match written.dimension() {
        Dimension::Volume if is("mL") => Sides {
            given: "mL",
            other: Some("fl oz"),
            other_marks: &["1 fl oz", "1/2 fl oz", "1/4 fl oz", "2 fl oz"],
        },
        Dimension::Mass if is("g") => Sides { given: "g", other: None, other_marks: &[] },
        Dimension::Mass => Sides { given: "oz wt", other: None, other_marks: &[] },
        _ => ounces,
    }
}

impl Pad {
    /// Whether nothing was typed.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.digits.is_empty() && self.quarters == 0
    }

    /// Takes a key. Keys that mean nothing here change nothing.
    pub fn press(&mut self, key: Key, sides: &Sides) {
        match key {
            Key::Digit(digit) if digit < 10 && self.digits.len() < MOST_DIGITS => {
                // A leading zero says nothing, and 07 would look like another number.
                if self.digits == "0" {
                    self.digits.clear();
                }
                self.digits.push(char::from(b'0' + digit));
                self.quarters = if self.digits.contains('.') { 0 } else { self.quarters };
            }
            Key::Point if !self.digits.contains('.') && self.quarters == 0 => {
                if self.digits.is_empty() {
                    self.digits.push('0');
                }
                self.digits.push('.');
            }
            Key::Quarters(quarters) if (1..=3).contains(&quarters) && !self.digits.contains('.') => {
                // The same fraction once more takes it back.
                self.quarters = if self.quarters == quarters { 0 } else { quarters };
            }
            Key::Rub if self.quarters > 0 => self.quarters = 0,
            Key::Rub => {
                self.digits.pop();
                if self.digits == "0." {
                    self.digits.pop();
                }
            }
            Key::OtherSide if sides.other.is_some() => {
                self.side = if self.side == Side::Given { Side::Other } else { Side::Given };
                self.quarters = 0;
            }
            Key::OtherMarks if !sides.other_marks.is_empty() => {
                self.other_marks = (self.other_marks + 1) % sides.other_marks.len();
            }
            _ => {}
        }
    }

    /// The unit of the side that is read.
    #[must_use]
    pub fn unit(&self, sides: &Sides) -> &'static str {
        match self.side {
            Side::Given => sides.given,
            Side::Other => sides.other.unwrap_or(sides.given),
        }
    }

    /// Whether that side has quarters; millilitres and grams have a point.
    #[must_use]
    pub fn has_quarters(&self, sides: &Sides) -> bool {
        matches!(self.unit(sides), "fl oz" | "oz wt")
    }

    /// The number as a person writes it: `14 1/2`.
    #[must_use]
    pub fn number(&self) -> String {
        let whole = self.digits.trim_end_matches('.');
        match (whole, self.fraction()) {
            ("", "") => String::new(),
            ("" | "0", fraction) if !fraction.is_empty() => fraction.to_string(),
            (whole, "") => whole.to_string(),
            (whole, fraction) => format!("{whole} {fraction}"),
        }
    }

    const fn fraction(&self) -> &'static str {
        match self.quarters {
            1 => "1/4",
            2 => "1/2",
            3 => "3/4",
            _ => "",
        }
    }

    /// What was read, as it is written down: `14 1/2 fl oz`; none where nothing was typed.
    #[must_use]
    pub fn reading(&self, sides: &Sides) -> Option<String> {
        let number = self.number();
        (!number.is_empty()).then(|| format!("{number} {}", self.unit(sides)))
    }

    /// The marks of the side that is read, where they are not those given for the cup.
    #[must_use]
    pub fn own_marks(&self, sides: &Sides) -> Option<&'static str> {
        match self.side {
            Side::Given => None,
            Side::Other => sides.other_marks.get(self.other_marks).copied(),
        }
    }

    /// What was typed, as a quantity in SI: cubic metres or kilograms; none where nothing was.
    #[must_use]
    pub fn si(&self, sides: &Sides) -> Option<f64> {
        let reading = self.reading(sides)?;
        Caught::parse(&reading, None).ok().map(|caught| caught.written().si())
    }
}

/// How far the marks of a cup are apart, in SI; none where that cannot be read.
#[must_use]
pub fn step_si(marks: &str) -> Option<f64> {
    let step = Caught::parse(marks, None).ok()?.written().clone();
    Marks::every(step).ok().map(|marks| marks.step().si())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn typed(keys: &[Key]) -> Pad {
        let mut pad = Pad::default();
        for key in keys {
            pad.press(*key, &sides("1/2 fl oz"));
        }
        pad
    }

    #[test]
    fn fourteen_and_a_half_is_three_taps() {
        let pad = typed(&[Key::Digit(1), Key::Digit(4), Key::Quarters(2)]);
        assert_eq!(pad.reading(&sides("1/2 fl oz")).as_deref(), Some("14 1/2 fl oz"));
        // 14.5 US fluid ounces of 29.5735295625 mL (NIST Handbook 44, appendix C) are 428.816 mL.
        assert!((pad.si(&sides("1/2 fl oz")).unwrap() * 1e6 - 428.816_178_7).abs() < 1e-6);
    }

    #[test]
    fn what_is_rubbed_out_is_gone_sign_by_sign() {
        let mut pad = typed(&[Key::Digit(1), Key::Digit(4), Key::Quarters(2), Key::Rub]);
        assert_eq!(pad.number(), "14");
        pad.press(Key::Rub, &sides(""));
        pad.press(Key::Rub, &sides(""));
        pad.press(Key::Rub, &sides(""));
        assert!(pad.is_empty());
    }

    #[test]
    fn the_other_side_has_its_own_marks() {
        let pad = typed(&[Key::OtherSide, Key::Digit(4), Key::Digit(3), Key::Digit(0)]);
        let sides = sides("1/2 fl oz");
        assert_eq!((pad.reading(&sides).as_deref(), pad.own_marks(&sides)), (Some("430 mL"), Some("10 mL")));
        assert!(!pad.has_quarters(&sides));
    }

    #[test]
    fn a_tip_that_gives_nothing_is_a_nought() {
        assert_eq!(typed(&[Key::Digit(0)]).number(), "0");
        assert_eq!(typed(&[Key::Digit(0), Key::Digit(7)]).number(), "7");
        assert_eq!(typed(&[Key::Digit(0), Key::Quarters(3)]).number(), "3/4");
        assert_eq!(typed(&[Key::Point, Key::Digit(5)]).number(), "0.5");
    }

    #[test]
    fn a_scale_has_one_side() {
        assert_eq!(sides("5 g").other, None);
        assert_eq!(sides("10 mL").other, Some("fl oz"));
        assert_eq!(sides("anything").given, "fl oz");
    }
}
