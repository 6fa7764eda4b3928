//! What tips of a boom have in common beyond chance: an older half, a starved section, a drop along the boom.

use units::Pressure;

use crate::between::{Between, Shape};
use crate::random::Random;

/// A pattern over a whole boom.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pattern {
    /// None: tips differ by chance alone.
    Alike,
    /// Half of the tips, anywhere on the boom, are older and give more by one share common to them.
    HalfOld(Between<f64>),
    /// One section's pressure is short by a share (its strainer, valve or feed).
    SectionStep(Between<f64>),
    /// Pressure falls from the middle of the boom to its ends, by a share at the ends.
    Taper(Between<f64>),
}

/// What a pattern came to on one boom: for each tip, pressure at it and how its wear multiplies its flow.
pub(crate) struct Laid {
    pub(crate) tips: Vec<(Pressure, Age)>,
}

/// Of which set a tip is.
#[derive(Clone, Copy)]
pub(crate) enum Age {
    New,
    /// Of an older set that gives more by this share.
    Old(f64),
}

impl Pattern {
    /// Lays the pattern over tips that stand in the sections told, from left to right.
    pub(crate) fn lay(&self, sections: &[u16], pressure: Pressure, random: &mut Random) -> Laid {
        let even = |_| (pressure, Age::New);
        let tips = match self {
            Self::Alike => sections.iter().map(even).collect(),
            Self::HalfOld(more) => {
                let more = more.draw(Shape::Even, random);
                let old = half_of(sections.len(), random);
                old.into_iter().map(|old| (pressure, if old { Age::Old(more) } else { Age::New })).collect()
            }
            Self::SectionStep(short) => {
                let short = short.draw(Shape::Even, random);
                let last = sections.last().copied().unwrap_or(0);
                let which = random.whole(0, u32::from(last));
                sections
                    .iter()
                    .map(|section| {
                        let left = if u32::from(*section) == which { 1.0 - short } else { 1.0 };
                        (pressure * left, Age::New)
                    })
                    .collect()
            }
            Self::Taper(short) => {
                let short = short.draw(Shape::Even, random);
                let middle = (sections.len().max(2) - 1) as f64 / 2.0;
                (0..sections.len())
                    .map(|place| {
                        let out = (place as f64 - middle) / middle;
                        (pressure * (1.0 - short * out * out), Age::New)
                    })
                    .collect()
            }
        };
        Laid { tips }
    }
}

/// Marks half of so many, drawn without putting back.
fn half_of(count: usize, random: &mut Random) -> Vec<bool> {
    let mut marked: Vec<bool> = (0..count).map(|place| place < count / 2).collect();
    for last in (1..count).rev() {
        let other = random.whole(0, u32::try_from(last).unwrap_or(u32::MAX));
        marked.swap(last, usize::try_from(other).unwrap_or(last));
    }
    marked
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::random::Part;

    const SECTIONS: [u16; 9] = [0, 0, 0, 1, 1, 1, 2, 2, 2];

    fn lay(pattern: Pattern, seed: u64) -> Vec<(f64, bool)> {
        let mut random = Random::new(seed, Part::Boom);
        let laid = pattern.lay(&SECTIONS, Pressure::psi(40.0), &mut random);
        laid.tips.iter().map(|(pressure, age)| (pressure.as_psi(), matches!(age, Age::Old(_)))).collect()
    }

    #[test]
    fn half_of_the_tips_are_old_and_not_always_the_same() {
        let old = |seed| lay(Pattern::HalfOld(Between::always(0.1)), seed).iter().map(|tip| tip.1).collect();
        let (one, other): (Vec<bool>, Vec<bool>) = (old(1), old(2));
        assert_eq!(one.iter().filter(|old| **old).count(), 4);
        assert_ne!(one, other);
    }

    #[test]
    fn one_whole_section_is_short() {
        let pressures = lay(Pattern::SectionStep(Between::always(0.25)), 5);
        let short: Vec<u16> =
            SECTIONS.iter().zip(&pressures).filter(|(_, tip)| tip.0 < 39.0).map(|(one, _)| *one).collect();
        assert_eq!(short.len(), 3);
        assert!(short.iter().all(|section| *section == short[0]));
        assert!(pressures.iter().all(|tip| (tip.0 - 30.0).abs() < 1e-9 || (tip.0 - 40.0).abs() < 1e-9));
    }

    #[test]
    fn a_taper_is_lowest_at_both_ends() {
        let pressures = lay(Pattern::Taper(Between::always(0.1)), 5);
        assert!((pressures[0].0 - 36.0).abs() < 1e-9 && (pressures[8].0 - 36.0).abs() < 1e-9);
        assert!((pressures[4].0 - 40.0).abs() < 1e-9);
    }
}
