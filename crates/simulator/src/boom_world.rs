//! What booms there are: how many tips, how alike, what can be wrong. One boom is drawn from it.

use sprayer::{BoomError, BoomLayout, FlowError, Mounting, Scale, SizeError, TipSize};
use units::{Length, Pressure};

use crate::between::{Between, Shape};
use crate::boom::{TrueBoom, TrueTip};
use crate::fault::{Fault, FaultMix};
use crate::pattern::{Age, Pattern};
use crate::random::{Part, Random};

/// What booms are drawn from.
#[derive(Clone, Debug, PartialEq)]
pub struct BoomWorld {
    /// The fewest and the most tips.
    pub tips: (u32, u32),
    /// The fewest and the most sections; a section has at least two tips, so short booms have fewer.
    pub sections: (u32, u32),
    /// Tip sizes by their number, each as likely as the others.
    pub sizes: Vec<&'static str>,
    /// The pressure at the boom.
    pub pressure: Between<Pressure>,
    /// The standard deviation of sound tips, as a share of their flow.
    pub spread: Between<f64>,
    /// What can be wrong with a tip.
    pub faults: FaultMix,
    /// What tips have in common, each as likely as the others; none is [`Pattern::Alike`].
    pub patterns: Vec<Pattern>,
    /// By what share of itself the pressure changes each minute of the test; below nothing it falls.
    pub drift_per_minute: Between<f64>,
}

impl BoomWorld {
    /// Draws the boom that belongs to a seed.
    ///
    /// *Assumptions*: a sound tip's flow differs by a normal share of the spread; a faulty one's by its fault alone,
    /// so that a fault of 12 % is 12 %; a pattern comes on top of both.
    ///
    /// *Errors*: sizes that are not of ISO 10625, no size, no tips, a pressure of nothing.
    pub fn boom(&self, seed: u64) -> Result<TrueBoom, WorldError> {
        let mut random = Random::new(seed, Part::Boom);
        let count = random.whole(self.tips.0, self.tips.1);
        let most = self.sections.1.min(count / LEAST_IN_SECTION).max(1);
        let in_sections = shared_out(count, random.whole(self.sections.0.min(most), most));
        let layout = BoomLayout::new(&in_sections, Length::inches(20.0), Mounting::Rear)?;
        let size = TipSize::named(random.one_of(&self.sizes).ok_or(WorldError::NoSize)?)?;
        let rated = size.rated(Scale::UsAt40Psi)?;
        let pressure = self.pressure.draw_quantity(&mut random);
        let spread = self.spread.draw(Shape::Even, &mut random);
        let pattern = random.one_of(&self.patterns).copied().unwrap_or(Pattern::Alike);
        let drift = self.drift_per_minute.draw(Shape::Even, &mut random);

        let sections: Vec<u16> = layout.positions().iter().map(|position| position.section).collect();
        let laid = pattern.lay(&sections, pressure, &mut random);
        let mut tips = Vec::with_capacity(sections.len());
        for (number, (section, (at_tip, age))) in (1_u32..).zip(sections.into_iter().zip(laid.tips)) {
            let wrong = self.faults.draw(size, &mut random);
            let own = spread * random.normal();
            let (fault, share) = match (wrong, age) {
                (Some((fault, by)), _) => (fault, by),
                (None, Age::Old(_)) => (Fault::Old, own),
                (None, Age::New) => (Fault::Sound, own),
            };
            let older = match age {
                Age::New => 1.0,
                Age::Old(more) => 1.0 + more,
            };
            let flow = rated.flow_at(at_tip)? * (older * (1.0 + share).max(0.0));
            tips.push(TrueTip { number, section, fault, flow });
        }
        Ok(TrueBoom { layout, tips, pressure, drift_per_minute: drift })
    }
}

/// So many tips in so many sections, as even as can be, the fuller ones at the left.
fn shared_out(tips: u32, sections: u32) -> Vec<u32> {
    (0..sections).map(|section| tips / sections + u32::from(section < tips % sections)).collect()
}

/// Why no boom can be drawn.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum WorldError {
    /// A world without tip sizes. Name at least one.
    #[error("a world needs at least one tip size")]
    NoSize,
    /// A size that is not known.
    #[error(transparent)]
    Size(#[from] SizeError),
    /// A boom that cannot be laid out.
    #[error(transparent)]
    Boom(#[from] BoomError),
    /// A flow that cannot be.
    #[error(transparent)]
    Flow(#[from] FlowError),
    /// Plumbing that cannot be solved.
    #[error(transparent)]
    Plumbing(#[from] sprayer::plumbing::PlumbingError),
}

/// Tips in the shortest section. Our own choice: end sections of small booms have two or three.
const LEAST_IN_SECTION: u32 = 2;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tips_are_shared_out_evenly() {
        assert_eq!(shared_out(20, 3), [7, 7, 6]);
        assert_eq!(shared_out(7, 1), [7]);
    }
}
