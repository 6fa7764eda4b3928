//! From fans to what each groove gets, how far grooves spread, and the thinnest and the thickest.

use core::ops::Range;

use units::{Length, Quantity};

use super::boom::SprayBoom;
use super::error::PatternError;
use super::fan::Fan;

/// Which part of the pattern is judged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Judged {
    /// Where no tip beyond either end would reach if the boom went on.
    Overlapped,
    /// So much in the middle of the boom.
    Middle(Length),
}

/// The strips the ground is divided into. One edge lies under the boom's middle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grooves {
    /// How wide each is. Source of the usual 100 mm: ISO 5682-2 and ISO 16122-2, from memory; 50 mm is finer.
    pub width: Length,
    /// Which of them are judged.
    pub judged: Judged,
}

impl Default for Grooves {
    fn default() -> Self {
        // Source: 100 mm, as above.
        Self { width: Length::metres(0.1), judged: Judged::Overlapped }
    }
}

/// The grooves that lie under a boom, and those that are judged.
pub(super) struct Laid {
    pub width: f64,
    /// The left edge of the first groove.
    pub left: f64,
    pub count: usize,
    pub judged: Range<usize>,
}

/// The thinnest or the thickest groove.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extreme {
    /// Which groove, counted from the left from 0; the middle one where several side by side are as thin or as thick.
    pub groove: usize,
    /// What it gets over the mean: 0.8 is a fifth less.
    pub dose: f64,
}

/// How even one fan's pattern is.
#[derive(Clone, Debug, PartialEq)]
pub struct Evenness {
    /// The fan's word.
    pub fan: &'static str,
    /// What each groove gets, over the mean of those that are judged.
    pub doses: Vec<f64>,
    /// That mean, over what sound tips at the spacing would give.
    pub mean: f64,
    /// The standard deviation (n − 1) of the judged grooves over their mean.
    pub spread: f64,
    /// The thinnest judged groove.
    pub lowest: Extreme,
    /// The thickest judged groove.
    pub highest: Extreme,
}

/// The widest stretch of grooves taken. Our own bound: ten thousand grooves are a kilometre of the usual ones.
const MOST_GROOVES: f64 = 10_000.0;
/// Grooves whose doses differ by less are alike, and the leftmost is named. Our own choice: rounding, far below any reading.
const ALIKE: f64 = 1e-9;
/// Neighbours within this of the thinnest are as thin as it. Our own choice: half a percent, which no cup shows.
const AS_THIN: f64 = 0.005;
/// Places within this of the thinnest are about as thin. Our own choice: what one set of grooves or the next may show.
const ABOUT_AS_THIN: f64 = 0.03;
/// So many places may be about as thin and still be named. Our own choice: a fault has one, or one on either side.
const FEW: usize = 2;

impl Laid {
    /// Lays grooves under all the fans.
    pub(super) fn under(boom: &SprayBoom, fans: &[Fan], grooves: &Grooves) -> Result<Self, PatternError> {
        let width = grooves.width.si();
        if !grooves.width.is_positive() {
            return Err(PatternError::Groove { groove: grooves.width });
        }
        let swath = boom.last() - boom.first() + boom.spacing().si();
        if width > swath {
            return Err(PatternError::GrooveWiderThanBoom {
                groove: grooves.width,
                boom: Length::from_si(swath),
            });
        }
        let (mut left, mut right) = (boom.first(), boom.last());
        for tip in boom.tips() {
            for fan in fans {
                let reach = fan.reach(tip.half_tangent());
                left = left.min(tip.axis().si() + tip.lands(reach.0));
                right = right.max(tip.axis().si() + tip.lands(reach.1));
            }
        }
        let middle = boom.middle();
        let part = match grooves.judged {
            Judged::Overlapped => boom.overlapped(fans),
            Judged::Middle(length) => {
                let half = length.si() / 2.0;
                if middle - half < left - ROUNDING || middle + half > right + ROUNDING {
                    return Err(PatternError::NoOverlap { tips: boom.tips().len() });
                }
                (middle - half, middle + half)
            }
        };
        if part.1 - part.0 < boom.spacing().si().max(2.0 * width) - ROUNDING {
            return Err(PatternError::NoOverlap { tips: boom.tips().len() });
        }
        let before = ((middle - left) / width).ceil();
        let after = ((right - middle) / width).ceil();
        let (Some(before), Some(after), true) = (count(before), count(after), before + after <= MOST_GROOVES)
        else {
            return Err(PatternError::Groove { groove: grooves.width });
        };
        // Whole grooves within the part.
        let from = before.saturating_sub(count((middle - part.0 + ROUNDING) / width).unwrap_or(0));
        let to = before + count((part.1 - middle + ROUNDING) / width).unwrap_or(0);
        let left = middle - number(before) * width;
        Ok(Self { width, left, count: before + after, judged: from..to.min(before + after) })
    }

    /// What every groove gets from a boom, for each of the fans: flow over the groove's width.
    pub(super) fn doses(&self, boom: &SprayBoom, fans: &[Fan]) -> Vec<Vec<f64>> {
        let mut doses = vec![vec![0.0; self.count]; fans.len()];
        for tip in boom.tips().iter().filter(|tip| tip.flow > 0.0) {
            let half = tip.half_tangent();
            let axis = tip.axis().si();
            for (fan, doses) in fans.iter().zip(&mut doses) {
                let (left, right) = fan.reach(half);
                let first = count((axis + tip.lands(left) - self.left) / self.width).unwrap_or(0);
                let last = (axis + tip.lands(right) - self.left) / self.width;
                let last = count(last).map_or(self.count, |last| (last + 1).min(self.count));
                // Shares left of one edge after the other; a groove gets what lies between its own.
                let mut before = 0.0;
                let reached = doses.iter_mut().enumerate().take(last).skip(first);
                for (groove, dose) in reached {
                    let edge = self.left + number(groove + 1) * self.width;
                    let share = if groove + 1 == last {
                        1.0
                    } else {
                        fan.share_left_of(tip.tangent_to(edge - axis), half)
                    };
                    *dose += tip.flow * (share - before) / self.width;
                    before = share;
                }
            }
        }
        doses
    }

    /// How even doses are.
    pub(super) fn evenness(
        &self,
        fan: &Fan,
        mut doses: Vec<f64>,
        spacing: f64,
    ) -> Result<Evenness, PatternError> {
        let judged = doses.get(self.judged.clone()).unwrap_or_default();
        let mean = judged.iter().sum::<f64>() / number(judged.len());
        if mean.is_nan() || mean <= 0.0 {
            return Err(PatternError::AllPlugged);
        }
        for dose in &mut doses {
            *dose /= mean;
        }
        let judged = || self.judged.clone().zip(&doses[self.judged.clone()]);
        let off: f64 = judged().map(|(_, dose)| (dose - 1.0) * (dose - 1.0)).sum();
        let lowest = self.extreme(&doses, |dose, now| dose < now - ALIKE);
        let highest = self.extreme(&doses, |dose, now| dose > now + ALIKE);
        let spread = (off / (number(self.judged.len()) - 1.0)).sqrt();
        Ok(Evenness { fan: fan.word(), mean: mean * spacing, spread, lowest, highest, doses })
    }

    /// Whether this thinnest or thickest stands out: not all alike, and no more than a few places about as thin or as thick.
    pub(super) fn stands_out(&self, doses: &[f64], dose: f64) -> bool {
        let judged = doses.get(self.judged.clone()).unwrap_or_default();
        let mut before = false;
        let begins = judged.iter().filter(|one| {
            let alike = (*one - dose).abs() < ABOUT_AS_THIN;
            let was = core::mem::replace(&mut before, alike);
            alike && !was
        });
        (dose - 1.0).abs() >= ABOUT_AS_THIN && begins.count() <= FEW
    }

    /// The judged groove beyond all others.
    fn extreme(&self, doses: &[f64], beyond: fn(f64, f64) -> bool) -> Extreme {
        let Range { start, end } = self.judged;
        let most = (start..end).fold(
            start,
            |most, groove| {
                if beyond(doses[groove], doses[most]) { groove } else { most }
            },
        );
        // Where its neighbours are as thin or as thick, the middle of them is named.
        let alike = |groove: &usize| (doses[*groove] - doses[most]).abs() < AS_THIN;
        let from = (start..most).rev().take_while(alike).last().unwrap_or(most);
        let to = (most..end).take_while(alike).last().unwrap_or(most);
        Extreme { groove: from.midpoint(to), dose: doses[most] }
    }
}

/// What adding up lengths may be off, in metres. Our own choice: far below any tape.
const ROUNDING: f64 = 1e-9;

/// A count that a length came to, rounded down.
fn count(value: f64) -> Option<usize> {
    // Below the bound, so nothing is cut off.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    (0.0..=2.0 * MOST_GROOVES).contains(&value).then_some(value as usize)
}

pub(super) fn number(count: usize) -> f64 {
    f64::from(u32::try_from(count).unwrap_or(u32::MAX))
}
