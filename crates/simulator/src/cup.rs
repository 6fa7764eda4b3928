//! Cups and scales: how far their marks are apart, what they hold, how their scale is off, what is written down.

use sprayer::WATER_AT_20_C;
use units::{Mass, Quantity, Time, Volume};

/// The unit that marks are in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MarkUnit {
    /// US fluid ounces.
    FluidOunces,
    /// Millilitres.
    Millilitres,
    /// Grams on a scale.
    Grams,
}

/// One kind of cup or scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CupKind {
    unit: MarkUnit,
    /// The distance between marks in tenths of the unit, so that what is written is exact decimal text.
    tenths: u32,
    holds: Volume,
}

impl CupKind {
    /// A quart cup marked every fluid ounce.
    pub const OUNCES: Self = Self::new(MarkUnit::FluidOunces, 10, Volume::fluid_ounces(32.0)); // common practice
    /// A quart cup marked every half fluid ounce.
    pub const HALF_OUNCES: Self = Self::new(MarkUnit::FluidOunces, 5, Volume::fluid_ounces(32.0)); // common practice
    /// A litre jug marked every 10 mL.
    pub const TEN_MILLILITRES: Self = Self::new(MarkUnit::Millilitres, 100, Volume::millilitres(1000.0)); // common practice
    /// A half-litre cylinder marked every 5 mL.
    pub const FIVE_MILLILITRES: Self = Self::new(MarkUnit::Millilitres, 50, Volume::millilitres(500.0)); // common practice
    /// A pail of two litres on a scale that shows every 2 g.
    pub const SCALE: Self = Self::new(MarkUnit::Grams, 20, Volume::millilitres(2000.0)); // common practice

    /// A kind of cup: its unit, the distance between marks in tenths of it, and what it holds.
    #[must_use]
    pub const fn new(unit: MarkUnit, tenths: u32, holds: Volume) -> Self {
        Self { unit, tenths, holds }
    }

    /// The same marks on a vessel of another size.
    #[must_use]
    pub const fn holding(self, holds: Volume) -> Self {
        Self { holds, ..self }
    }

    /// The unit of its marks.
    #[must_use]
    pub const fn unit(&self) -> MarkUnit {
        self.unit
    }

    /// What it holds.
    #[must_use]
    pub const fn holds(&self) -> Volume {
        self.holds
    }

    /// The distance between marks as a volume of water.
    #[must_use]
    pub fn step(&self) -> Volume {
        let number = f64::from(self.tenths) / 10.0;
        match self.unit {
            MarkUnit::FluidOunces => Volume::fluid_ounces(number),
            MarkUnit::Millilitres => Volume::millilitres(number),
            MarkUnit::Grams => Mass::grams(number) / WATER_AT_20_C,
        }
    }

    /// The distance between marks as it would be written: `"1 fl oz"`, `"2 g"`.
    #[must_use]
    pub fn step_text(&self) -> String {
        self.text(1)
    }

    /// What is written for so many marks: `"14 fl oz"`, `"14.5 fl oz"`, `"410 mL"`, `"412 g"`.
    #[must_use]
    pub fn text(&self, marks: u32) -> String {
        let tenths = u64::from(marks) * u64::from(self.tenths);
        let unit = match self.unit {
            MarkUnit::FluidOunces => "fl oz",
            MarkUnit::Millilitres => "mL",
            MarkUnit::Grams => "g",
        };
        match (tenths / 10, tenths % 10) {
            (whole, 0) => format!("{whole} {unit}"),
            (whole, tenth) => format!("{whole}.{tenth} {unit}"),
        }
    }

    /// How many of its marks a volume reaches, not rounded.
    #[must_use]
    pub fn marks_reached(&self, volume: Volume) -> f64 {
        volume.ratio_to(self.step())
    }

    /// Whether a catch of this flow and time leaves room and reaches enough marks: 40 % room, and at least as many marks.
    #[must_use]
    pub fn suits(&self, flow: units::Flow, time: Time, least_marks: u32) -> bool {
        let volume = flow * time;
        volume * ROOM <= self.holds && self.marks_reached(volume) >= f64::from(least_marks)
    }
}

/// One cup in hand: its kind, and by what share its marks or display are off. Nobody at the boom knows the latter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cup {
    /// The kind.
    pub kind: CupKind,
    /// It shows this share too much.
    pub scale_error: f64,
}

impl Cup {
    /// The volume the cup shows for a true volume; what is over its brim is lost.
    #[must_use]
    pub fn shows(&self, volume: Volume) -> Volume {
        let held = Volume::from_si(volume.si().min(self.kind.holds.si()));
        held * (1.0 + self.scale_error)
    }
}

/// A cup suits a catch that fills it by this many times less than the brim, so that a worn tip does not run it over.
/// Our own choice, as faults here reach 40 %.
const ROOM: f64 = 1.4;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_exact_decimal_text() {
        assert_eq!(CupKind::OUNCES.text(14), "14 fl oz");
        assert_eq!(CupKind::HALF_OUNCES.text(29), "14.5 fl oz");
        assert_eq!(CupKind::TEN_MILLILITRES.text(41), "410 mL");
        assert_eq!(CupKind::SCALE.text(206), "412 g");
        assert_eq!(CupKind::FIVE_MILLILITRES.step_text(), "5 mL");
    }

    #[test]
    fn marks_are_as_far_apart_as_they_say() {
        // NIST Handbook 44, appendix C: a US fluid ounce is 29.5735295625 mL.
        assert!((CupKind::OUNCES.step().as_millilitres() - 29.573_529_562_5).abs() < 1e-9);
        // 2 g of water of 0.9982 g/mL.
        assert!((CupKind::SCALE.step().as_millilitres() - 2.0 / 0.9982).abs() < 1e-9);
    }

    #[test]
    fn a_full_cup_runs_over() {
        let cup = Cup { kind: CupKind::FIVE_MILLILITRES, scale_error: 0.01 };
        assert!((cup.shows(Volume::millilitres(700.0)).as_millilitres() - 505.0).abs() < 1e-9);
    }
}
