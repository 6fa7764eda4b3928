//! Sprayers with several things wrong at once, and the cups somebody catches under them: two worlds drawn here and one from
//! the simulator's plumbing (`plumbed`), by code that shares nothing with the inference.
//!
//! 24 tips in three sections, each rated 0.30 gal/min at 40 psi and caught once for half a minute, read to 10 mL.

use simulator::{Part, Random, Yard};
use units::Pressure;

use crate::draw::DrawError;
use crate::plumbed;

/// Which world is drawn from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AilingWorld {
    /// Laws near those that the inference believes.
    NearBelief,
    /// Other laws of wear, dirt, sizes, losses, hands and slips, with heavy tails.
    Mismatched,
    /// Whole sprayers over their plumbing, other laws again, tested by the simulator's people.
    Plumbed,
}

/// What a tip truly is, in the order the tables have them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Truth {
    /// Sound.
    Sound,
    /// Worn.
    Worn,
    /// Partly plugged.
    PartlyPlugged,
    /// Plugged.
    Plugged,
    /// Of another size.
    WrongTip,
}

/// One tip with its cup.
#[derive(Clone, Copy, Debug)]
pub struct AilingTip {
    /// What it is.
    pub truth: Truth,
    /// Whether its cup was misread or mistimed.
    pub slip: bool,
    /// What was read, in marks of 10 mL.
    pub marks: u32,
    /// What it truly gives in half a minute, in millilitres.
    pub(crate) volume: f64,
    /// How many times that is what a sound tip would give in its place.
    pub(crate) own: f64,
}

/// A sprayer and its cups.
#[derive(Clone, Debug)]
pub struct Ailing {
    /// Tips by section.
    pub sections: Vec<Vec<AilingTip>>,
    /// What each section loses beyond the best-fed, a share of flow.
    pub losses: Vec<f64>,
    /// What the gauge shows.
    pub pressure: Pressure,
    /// Where its tips can be caught again, in the plumbed world.
    pub(crate) yard: Option<Yard>,
}

/// Sections, and tips in each. The house's own choice: 24 tips in three sections.
const SECTIONS: usize = 3;
const TIPS: usize = 8;
/// What a new tip gives in half a minute: 0.15 gal of 3785.411784 mL.
const NEW_ML: f64 = 0.15 * 3_785.411_784;
/// Marks of the cup, in millilitres, and seconds of a catch.
pub(crate) const MARK_ML: f64 = 10.0;
pub(crate) const SECONDS: f64 = 30.0;

impl Ailing {
    /// The sprayer that belongs to a seed.
    ///
    /// *Errors*: plumbing that cannot be solved; none should be.
    pub fn of(world: AilingWorld, seed: u64) -> Result<Self, DrawError> {
        if world == AilingWorld::Plumbed {
            return plumbed::sprayer(seed);
        }
        let mut random = Random::new(seed, Part::Boom);
        let random = &mut random;
        let boom = match world {
            AilingWorld::NearBelief if random.happens(0.75) => 0.03 * random.normal(),
            AilingWorld::NearBelief => 0.12 * random.normal(),
            // A gauge read between marks two psi apart and now and then badly off.
            AilingWorld::Mismatched | AilingWorld::Plumbed => 0.05 * heavy(random),
        };
        let lost: Vec<f64> = (0..SECTIONS).map(|_| section_loss(world, random)).collect();
        let least = lost.iter().copied().fold(f64::INFINITY, f64::min);
        let sections =
            lost.iter().map(|lost| (0..TIPS).map(|_| tip(world, boom - lost, random)).collect()).collect();
        let losses = lost.iter().map(|lost| 1.0 - libm::exp(least - lost)).collect();
        Ok(Self { sections, losses, pressure: Pressure::psi(40.0), yard: None })
    }

    /// For each tip in turn what was read against what a sound tip would give in its place and these hands would read of it: what is
    /// common to all cups, the cup's scale and the watch's habit, is taken out by the truth.
    #[must_use]
    pub fn read_against_sound(&self) -> Vec<f64> {
        let right = self.sections.iter().flatten().filter(|tip| !tip.slip);
        let mut ratios: Vec<f64> = right.filter_map(AilingTip::read_against_given).collect();
        ratios.sort_by(f64::total_cmp);
        let common = ratios.get(ratios.len() / 2).copied().unwrap_or(1.0);
        let of = |tip: &AilingTip| tip.read_against_given().map_or(0.0, |ratio| ratio * tip.own / common);
        self.sections.iter().flatten().map(of).collect()
    }

    /// One more cup under a tip, by its number from 1: whether it was a slip, and what was read.
    pub fn again(&mut self, number: u32, world: AilingWorld, random: &mut Random) -> (bool, u32) {
        if let Some(yard) = &mut self.yard {
            return plumbed::catch(yard, number);
        }
        let place = usize::try_from(number).unwrap_or(usize::MAX).wrapping_sub(1);
        let volume = self.sections.iter().flatten().nth(place).map_or(0.0, |tip| tip.volume);
        cup(world, volume, random)
    }
}

/// What a section loses, in the logarithm of flow.
fn section_loss(world: AilingWorld, random: &mut Random) -> f64 {
    match world {
        AilingWorld::NearBelief if random.happens(0.07) => -0.15 * libm::log(1.0 - random.share()),
        AilingWorld::NearBelief => 0.0,
        // Strainers and valves take 2 to 30 %; free sections differ a little too.
        AilingWorld::Mismatched | AilingWorld::Plumbed if random.happens(0.1) => 0.02 + 0.33 * random.share(),
        AilingWorld::Mismatched | AilingWorld::Plumbed => 0.004 * random.share(),
    }
}

fn tip(world: AilingWorld, base: f64, random: &mut Random) -> AilingTip {
    let (truth, own) = own(world, random);
    let volume = NEW_ML * libm::exp(base) * own;
    let (slip, marks) = cup(world, volume, random);
    AilingTip { truth, slip, marks, volume, own }
}

impl AilingTip {
    /// What was read against what the tip gave; a tip of which nothing came tells nothing.
    fn read_against_given(&self) -> Option<f64> {
        (self.volume > MARK_ML).then(|| f64::from(self.marks) * MARK_ML / self.volume)
    }
}

/// A cup of what a tip gives: whether it was a slip, and what was read.
fn cup(world: AilingWorld, volume: f64, random: &mut Random) -> (bool, u32) {
    let (noise, handling) = match world {
        AilingWorld::NearBelief => {
            (core::f64::consts::SQRT_2 * 0.2 / SECONDS * random.normal(), 0.005 * random.normal())
        }
        AilingWorld::Mismatched | AilingWorld::Plumbed => {
            (core::f64::consts::SQRT_2 * 0.3 / SECONDS * heavy(random), 0.008 * random.normal())
        }
    };
    let slip = random.happens(0.03);
    let factor = if slip { slip_of(world, random) } else { 1.0 };
    let read = volume * (1.0 + noise) * (1.0 + handling) * factor / MARK_ML;
    // Not below nothing, and far below any limit of the type.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let marks = (read + 0.5).max(0.0) as u32;
    (slip, marks)
}

/// What a tip is, and how many times a new one's flow it gives.
fn own(world: AilingWorld, random: &mut Random) -> (Truth, f64) {
    let which = random.share();
    let matched = world == AilingWorld::NearBelief;
    if which < 0.05 {
        let by = if matched {
            0.08 + 0.18 * random.share()
        } else {
            // Wear grows with use, and few tips are used for ever.
            (0.06 - 0.06 * libm::log(1.0 - random.share())).min(0.5)
        };
        (Truth::Worn, 1.0 + by)
    } else if which < 0.09 {
        let share = random.share();
        let by = if matched { 0.11 + 0.54 * share } else { 0.07 + 0.73 * share * share };
        (Truth::PartlyPlugged, 1.0 - by)
    } else if which < 0.10 {
        (Truth::Plugged, 0.05 * random.share())
    } else if which < 0.12 {
        (Truth::WrongTip, size(matched, random) * libm::exp(sound(world, random)))
    } else {
        (Truth::Sound, libm::exp(sound(world, random)))
    }
}

fn sound(world: AilingWorld, random: &mut Random) -> f64 {
    match world {
        AilingWorld::NearBelief => 0.015 * random.normal(),
        AilingWorld::Mismatched | AilingWorld::Plumbed => 0.018 * heavy(random),
    }
}

/// Another size beside 03: neighbours, or in the mismatched world any that lies about.
fn size(matched: bool, random: &mut Random) -> f64 {
    let near = [2.5 / 3.0, 4.0 / 3.0];
    let any = [1.5 / 3.0, 2.0 / 3.0, 2.5 / 3.0, 4.0 / 3.0, 5.0 / 3.0, 2.0];
    let sizes: &[f64] = if matched { &near } else { &any };
    random.one_of(sizes).copied().unwrap_or(1.0)
}

/// By how many times a slip makes a reading too high.
fn slip_of(world: AilingWorld, random: &mut Random) -> f64 {
    match world {
        AilingWorld::NearBelief => random.one_of(&[0.5, 2.0, 0.9, 1.1, 0.8, 1.25]).copied().unwrap_or(1.0),
        // Of any size from 5 to 60 %, either way.
        AilingWorld::Mismatched | AilingWorld::Plumbed => {
            let by = 0.05 + 0.55 * random.share();
            if random.happens(0.5) { 1.0 + by } else { 1.0 / (1.0 + by) }
        }
    }
}

/// A t law of four degrees with a standard deviation of one: a narrower middle and heavier tails than a normal law.
fn heavy(random: &mut Random) -> f64 {
    let squares: f64 = (0..4).map(|_| random.normal()).map(|normal| normal * normal).sum();
    // Its variance is 4 ÷ (4 − 2).
    random.normal() / (squares / 4.0).sqrt() / core::f64::consts::SQRT_2
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn as_many_are_wrong_as_was_asked() {
        for world in [AilingWorld::NearBelief, AilingWorld::Mismatched, AilingWorld::Plumbed] {
            let tips: Vec<AilingTip> =
                (0..500).flat_map(|seed| Ailing::of(world, seed).unwrap().sections.concat()).collect();
            assert_eq!(tips.len(), 12_000);
            let faulty = tips.iter().filter(|tip| tip.truth != Truth::Sound).count();
            // Standard error √(12,000 × 0.12 × 0.88) = 36.
            assert!((1_300..1_580).contains(&faulty), "{faulty}");
            let slips = tips.iter().filter(|tip| tip.slip).count();
            assert!((290..430).contains(&slips), "{slips}");
        }
    }
}
