//! What the house is held to, and how a figure stands against it.

use crate::ratio::Ratio;
use crate::tally::Tally;

/// On which side of the bar a figure must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Not below it.
    AtLeast,
    /// Not above it.
    AtMost,
}

/// One bar.
#[derive(Clone, Copy, Debug)]
pub struct Bar {
    /// What is held to it.
    pub name: &'static str,
    /// On which side it must be.
    pub side: Side,
    /// The bar itself: a share, or a Brier score.
    pub share: f64,
    /// The figure.
    pub figure: fn(&Tally) -> &Ratio,
}

/// How a figure stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// On the right side.
    Held,
    /// On the wrong side, by however little.
    Missed,
    /// There was nothing to count.
    Nothing,
}

impl Bar {
    /// How a figure stands against it: the estimate counts, the standard error excuses nothing.
    #[must_use]
    pub fn standing(&self, ratio: &Ratio) -> Standing {
        match (ratio.value(), self.side) {
            (None, _) => Standing::Nothing,
            (Some(value), Side::AtLeast) if value >= self.share => Standing::Held,
            (Some(value), Side::AtMost) if value <= self.share => Standing::Held,
            _ => Standing::Missed,
        }
    }

    /// By how many standard errors a figure is on the wrong side; below nothing when it is on the right one.
    #[must_use]
    pub fn errors_beyond(&self, ratio: &Ratio) -> Option<f64> {
        let (value, error) = (ratio.value()?, ratio.standard_error()?);
        let beyond = match self.side {
            Side::AtLeast => self.share - value,
            Side::AtMost => value - self.share,
        };
        Some(beyond / error)
    }
}

/// The bars of the announced worlds. Source: this house's verdict specification, as are those below.
pub const ANNOUNCED: &[Bar] = &[
    Bar {
        name: "of tips called within, are",
        side: Side::AtLeast,
        share: 0.995,
        figure: |tally| &tally.within_right,
    },
    Bar {
        name: "of tips called outside, are",
        side: Side::AtLeast,
        share: 0.97,
        figure: |tally| &tally.outside_right,
    },
    Bar { name: "cannot tell", side: Side::AtMost, share: 0.06, figure: |tally| &tally.cannot_tell },
    Bar { name: "Brier score", side: Side::AtMost, share: 0.008, figure: |tally| &tally.brier },
    Bar {
        name: "[low, high] holds the truth",
        side: Side::AtLeast,
        share: 0.94,
        figure: |tally| &tally.coverage,
    },
    Bar {
        name: "of true faults of 10 to 15 %, called within",
        side: Side::AtMost,
        share: 0.12,
        figure: |tally| &tally.near_missed,
    },
];

/// The bars of the worlds the inference was not told about.
pub const UNANNOUNCED: &[Bar] = &[
    Bar {
        name: "of tips called within, are",
        side: Side::AtLeast,
        share: 0.95,
        figure: |tally| &tally.within_right,
    },
    Bar {
        name: "of tips called outside, are",
        side: Side::AtLeast,
        share: 0.90,
        figure: |tally| &tally.outside_right,
    },
];

/// A tip 12 % high read in ounces (0.2 gal/min, 30 s, 20 tips): called within in at most 3 % of draws.
pub const ONE_BAD_TIP: Bar = Bar {
    name: "a tip 12 % high, read in ounces, called within",
    side: Side::AtMost,
    share: 0.03,
    figure: |tally| &tally.near_missed,
};

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ratio::Counted;

    #[test]
    fn a_figure_just_short_is_missed() {
        let ratio = |so: f64| {
            let mut ratio = Ratio::default();
            ratio.draw(Counted { so, of: 1000.0 });
            ratio
        };
        let within = &ANNOUNCED[0];
        assert_eq!(within.standing(&ratio(995.0)), Standing::Held);
        assert_eq!(within.standing(&ratio(994.0)), Standing::Missed);
        assert_eq!(ONE_BAD_TIP.standing(&ratio(31.0)), Standing::Missed);
        assert_eq!(ONE_BAD_TIP.standing(&Ratio::default()), Standing::Nothing);
    }
}
