//! What can be wrong with one tip, and how often and how badly.

use sprayer::TipSize;

use crate::between::{Between, Shape};
use crate::random::Random;

/// What is wrong with a tip. Nobody at the boom knows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fault {
    /// Nothing: it differs from its neighbours as new tips do.
    Sound,
    /// Off one way or the other, whatever the cause.
    Off,
    /// Worn: it gives too much.
    Worn,
    /// Partly plugged: it gives too little.
    PartlyPlugged,
    /// Plugged: it gives next to nothing.
    Plugged,
    /// A tip of a neighbouring size.
    WrongSize,
    /// Sound for its age, but of an older set than others.
    Old,
}

/// How one kind of fault is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FaultLaw {
    /// Off by a share, as often up as down.
    EitherWay(Between<f64>),
    /// Worn by a share.
    Worn(Between<f64>, Shape),
    /// Short by a share.
    PartlyPlugged(Between<f64>, Shape),
    /// Next to nothing, or nothing.
    Plugged,
    /// The next size of ISO 10625 above or below.
    WrongSize,
}

/// How many tips are off, and by which laws, each as often as its weight says.
#[derive(Clone, Debug, PartialEq)]
pub struct FaultMix {
    /// The share of tips that are off, by chance.
    pub share: f64,
    /// The laws with their weights.
    pub laws: Vec<(f64, FaultLaw)>,
}

impl FaultMix {
    /// No tip is off.
    #[must_use]
    pub const fn none() -> Self {
        Self { share: 0.0, laws: Vec::new() }
    }

    /// A tenth of the tips off by 4 to 40 % either way.
    #[must_use]
    pub fn a_tenth_either_way() -> Self {
        Self { share: 0.1, laws: vec![(1.0, FaultLaw::EitherWay(Between::new(0.04, 0.40)))] }
    }

    /// A tenth of the tips off, as in a yard: worn tips most often, then dirt, now and then a wrong tip.
    ///
    /// *Source*: sizes as found in clinics (wear + 8 to + 26 %, dirt − 11 to − 65 %), from memory; weights are our
    /// assumption.
    #[must_use]
    pub fn of_the_yard() -> Self {
        Self {
            share: 0.1,
            laws: vec![
                (0.45, FaultLaw::Worn(Between::new(0.08, 0.26), Shape::MostlySmall)),
                (0.30, FaultLaw::PartlyPlugged(Between::new(0.11, 0.65), Shape::MostlySmall)),
                (0.10, FaultLaw::Plugged),
                (0.15, FaultLaw::WrongSize),
            ],
        }
    }

    /// Draws what is wrong with one tip of a size, and the share by which its flow differs for it; `None` for sound.
    pub fn draw(&self, size: TipSize, random: &mut Random) -> Option<(Fault, f64)> {
        if !random.happens(self.share) {
            return None;
        }
        let total: f64 = self.laws.iter().map(|(weight, _)| weight).sum();
        let mut place = random.share() * total;
        for (weight, law) in &self.laws {
            if place < *weight {
                return Some(law.draw(size, random));
            }
            place -= weight;
        }
        None
    }
}

impl FaultLaw {
    fn draw(&self, size: TipSize, random: &mut Random) -> (Fault, f64) {
        match self {
            Self::EitherWay(by) => {
                let by = by.draw(Shape::Even, random);
                (Fault::Off, if random.happens(0.5) { by } else { -by })
            }
            Self::Worn(by, shape) => (Fault::Worn, by.draw(*shape, random)),
            Self::PartlyPlugged(by, shape) => (Fault::PartlyPlugged, -by.draw(*shape, random)),
            Self::Plugged => (Fault::Plugged, -Between::new(LEAST_PLUGGED, 1.0).draw(Shape::Even, random)),
            Self::WrongSize => (Fault::WrongSize, neighbour(size, random) - 1.0),
        }
    }
}

/// How many times the flow of a size a neighbouring size gives.
fn neighbour(size: TipSize, random: &mut Random) -> f64 {
    let flow = |size: TipSize| size.rated(sprayer::Scale::UsAt40Psi).ok().map(|rated| rated.flow());
    let Some(own) = flow(size) else { return 1.0 };
    let others = TipSize::all().filter_map(flow);
    let (mut below, mut above) = (None, None);
    for other in others {
        if other < own {
            below = Some(other);
        } else if other > own && above.is_none() {
            above = Some(other);
        }
    }
    let either: Vec<_> = [below, above].into_iter().flatten().collect();
    random.one_of(&either).map_or(1.0, |other| other.ratio_to(own))
}

/// A plugged tip is short by at least this share. Chosen to stay clear of the 5 % below which a tip counts as plugged.
const LEAST_PLUGGED: f64 = 0.96;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::random::Part;

    fn drawn(mix: &FaultMix, count: u32) -> Vec<(Fault, f64)> {
        let mut random = Random::new(11, Part::Boom);
        let Ok(size) = TipSize::named("03") else { return Vec::new() };
        (0..count).filter_map(|_| mix.draw(size, &mut random)).collect()
    }

    #[test]
    fn a_tenth_is_off_and_by_what_was_asked() {
        let off = drawn(&FaultMix::a_tenth_either_way(), 20_000);
        // Standard error of the count: √(20,000 × 0.09) = 42.
        assert!((1_850..2_150).contains(&off.len()), "{}", off.len());
        assert!(off.iter().all(|(fault, by)| *fault == Fault::Off && (0.04..=0.40).contains(&by.abs())));
        let up = off.iter().filter(|(_, by)| *by > 0.0).count();
        assert!((900..1_100).contains(&up), "{up}");
    }

    #[test]
    fn the_faults_of_a_yard_keep_to_their_ranges() {
        let off = drawn(&FaultMix::of_the_yard(), 50_000);
        for (fault, by) in &off {
            let range = match fault {
                Fault::Worn => 0.08..=0.26,
                Fault::PartlyPlugged => -0.65..=-0.11,
                Fault::Plugged => -1.0..=-0.96,
                // ISO 10625: beside 03 stand 025 and 04, five sixths and four thirds of its flow.
                Fault::WrongSize => -0.1667..=0.3334,
                other => unreachable!("{other:?}"),
            };
            assert!(range.contains(by), "{fault:?} by {by}");
        }
        for fault in [Fault::Worn, Fault::PartlyPlugged, Fault::Plugged, Fault::WrongSize] {
            assert!(off.iter().any(|(found, _)| *found == fault), "{fault:?}");
        }
    }

    #[test]
    fn the_ends_of_the_series_have_one_neighbour() {
        let mut random = Random::new(1, Part::Boom);
        for (name, expected) in [("005", 1.5), ("20", 0.75)] {
            let Ok(size) = TipSize::named(name) else { panic!("{name}") };
            assert!((neighbour(size, &mut random) - expected).abs() < 1e-12, "{name}");
        }
    }
}
