//! What is believed before a cup is caught: all of it in one table, with its source, ready to be brought up to date.
//!
//! Shares are kept as counts, so that a season's records can be added to them ([`Counts::learn`]): a hundred tips
//! looked at weigh as much as what is written here, a thousand ten times as much.

use super::cause::Cause;
use super::parts::PartLaw;

/// How often each of several things was seen: a share that knows how much it rests on (a Dirichlet law).
#[derive(Clone, Debug, PartialEq)]
pub struct Counts<const KINDS: usize>([f64; KINDS]);

impl<const KINDS: usize> Counts<KINDS> {
    /// So many of each. What is below nothing, or no number, counts as nothing.
    #[must_use]
    pub fn new(seen: [f64; KINDS]) -> Self {
        Self(seen.map(|count| if count > 0.0 && count.is_finite() { count } else { 0.0 }))
    }

    /// Adds what was seen and is certain: tips taken off and looked at, strainers opened.
    pub fn learn(&mut self, seen: &Self) {
        self.0.iter_mut().zip(seen.0).for_each(|(own, seen)| *own += seen);
    }

    /// Weighs each by how likely something that was seen is under it; how much is known stays as it was.
    pub fn weigh(&mut self, likely: &[f64; KINDS]) {
        let before: f64 = self.0.iter().sum();
        let weighed = Self::new(core::array::from_fn(|kind| self.0[kind] * likely[kind]));
        let after: f64 = weighed.0.iter().sum();
        if after > 0.0 {
            *self = Self(weighed.0.map(|count| count * before / after));
        }
    }

    /// The share of each, all adding to one; all alike where nothing was ever seen.
    #[must_use]
    pub fn shares(&self) -> [f64; KINDS] {
        let all: f64 = self.0.iter().sum();
        self.0.map(|count| if all > 0.0 { count / all } else { 1.0 / KINDS as f64 })
    }
}

/// A density over shares of flow: straight lines between points, whatever their scale.
#[derive(Clone, Debug, PartialEq)]
pub struct Broad(pub Vec<(f64, f64)>);

impl Broad {
    /// The height at a share; nothing outside.
    pub(super) fn height(&self, share: f64) -> f64 {
        self.0.windows(2).find(|pair| share >= pair[0].0 && share <= pair[1].0).map_or(0.0, |pair| {
            let along = (share - pair[0].0) / (pair[1].0 - pair[0].0);
            pair[0].1 + along * (pair[1].1 - pair[0].1)
        })
    }
}

/// What is believed of a sprayer and of those who catch. Every figure is an input.
#[derive(Clone, Debug, PartialEq)]
pub struct Priors {
    /// Tips that are sound, worn, partly plugged, plugged, of another size, in the order of [`Cause::ALL`].
    pub tips: Counts<5>,
    /// Catches that are right, and those misread or mistimed.
    pub catches: Counts<2>,
    /// Sections that are free, restricted, shut.
    pub sections: Counts<3>,
    /// Low tips that were low for their own sake, and those for their place's (body, its hose, its check valve).
    pub swaps: Counts<2>,
    /// How much a restricted section loses: the mean of an exponential law, in the logarithm of flow.
    pub section_loss: f64,
    /// What is common to the boom, in the logarithm of flow: normal laws about nothing, weight and standard deviation.
    pub boom: Vec<(f64, f64)>,
    /// The same where it is not known what a new tip gives.
    pub boom_unknown: Vec<(f64, f64)>,
    /// What the boom's offset is made of, kind by kind of boom.
    pub parts: Vec<PartLaw>,
    /// How much a gauge's error changes from one pressure to another: standard deviation, a share of pressure.
    pub gauge_between: f64,
    /// How sound tips differ, in the logarithm of flow: normal laws about nothing, weight and standard deviation.
    pub sound: Vec<(f64, f64)>,
    /// How much more worn tips give.
    pub worn: Broad,
    /// How much less partly plugged tips give.
    pub partly_plugged: Broad,
    /// How likely a tip of another size is the next one, the second next and so on; the last stands for all beyond.
    pub size_steps: Vec<f64>,
    /// By how many times a misread or mistimed catch is read: weight and factor.
    pub slips: Vec<(f64, f64)>,
    /// The weight of one mark too many or too few among slips.
    pub one_mark: f64,
    /// The weight of a slip of any size among slips.
    pub any_slip: f64,
    /// How far such a slip goes: standard deviation of the logarithm of its factor.
    pub any_slip_spread: f64,
    /// The drift from first to last cup where the order is known: standard deviation in the logarithm of flow.
    pub drift: f64,
    /// The chance that a boom of which nothing runs was not switched on.
    pub off: f64,
}

impl Default for Priors {
    /// The table of this house.
    ///
    /// | what | source |
    /// |---|---|
    /// | tips | our assumption: of 100, 5 worn, 4 partly plugged, 1 plugged, 2 of another size. Inspections of 2008 rejected 12 % of sprayers, one in eight of these for worn tips (ILVO, Belgium); Nebraska found every third applicator within 5 % (Applied Eng. Agric. 4(4), 1988, 310–315) |
    /// | catches | our assumption: 3 of 100 misread or mistimed |
    /// | sections | our assumption: 7 of 100 restricted, by 14 % on average; one of 400 shut |
    /// | swaps | our assumption: two of ten at the place; tips and their strainers are finer than what feeds them |
    /// | boom | our assumption: three of four within some 3 % (gauge and sizes as they should be), the rest within some 12 % (gauge off, all worn) |
    /// | parts | our assumption, adding up to the line above: of the booms that are off, half for the gauge or for what is lost on the way, half for the set |
    /// | gauge between | our assumption: 1 % of pressure |
    /// | sound | new tips spread by 1 to 3 % (Huyghebaert et al., Trans. ASAE 44(4), 2001, 769–773); the tail is our assumption |
    /// | worn, partly plugged | sizes found in clinics, 8 to 26 % more and 11 to 65 % less, from memory; edges and tails are our assumption |
    /// | size steps | our assumption: mostly a neighbour in the series of ISO 10625 |
    /// | slips | a tenth more or less, a mark of 20 or 25 % taken for its neighbour, 30 s for 60 s: our assumption |
    /// | drift | our assumption: 2 % |
    /// | off | our assumption: one boom in fifty |
    fn default() -> Self {
        Self {
            tips: Counts::new([88.0, 5.0, 4.0, 1.0, 2.0]),
            catches: Counts::new([97.0, 3.0]),
            sections: Counts::new([92.75, 7.0, 0.25]),
            swaps: Counts::new([8.0, 2.0]),
            section_loss: 0.15,
            boom: vec![(0.75, 0.03), (0.25, 0.12)],
            boom_unknown: vec![(1.0, 0.12)],
            parts: vec![
                PartLaw { weight: 0.75, set: 0.02, gauge: 0.03, zero: 0.033 },
                PartLaw { weight: 0.125, set: 0.02, gauge: 0.03, zero: 0.236 },
                PartLaw { weight: 0.125, set: 0.117, gauge: 0.03, zero: 0.033 },
            ],
            gauge_between: 0.01,
            sound: vec![(0.75, 0.013), (0.2, 0.02), (0.05, 0.035)],
            worn: Broad(vec![(0.05, 0.0), (0.08, 1.0), (0.20, 0.7), (0.26, 0.4), (0.35, 0.06), (0.70, 0.0)]),
            partly_plugged: Broad(vec![
                (-0.95, 0.0),
                (-0.70, 0.05),
                (-0.65, 0.4),
                (-0.35, 0.7),
                (-0.11, 1.0),
                (-0.06, 0.0),
            ]),
            size_steps: vec![1.0, 0.3, 0.1, 0.03],
            slips: vec![(0.1, 0.5), (0.1, 2.0), (0.1, 0.9), (0.1, 1.1), (0.1, 0.8), (0.1, 1.25)],
            one_mark: 0.05,
            any_slip: 0.35,
            any_slip_spread: 0.3,
            drift: 0.02,
            off: 0.02,
        }
    }
}

impl Priors {
    /// The share of tips of one cause.
    #[must_use]
    pub fn share_of(&self, cause: Cause) -> f64 {
        self.tips.shares()[cause.place()]
    }

    /// How far a new tip may be off its rated flow: the spread of sound ones.
    pub(super) fn new_tip_spread(&self) -> f64 {
        let all: f64 = self.sound.iter().map(|(weight, _)| weight).sum();
        let squares: f64 = self.sound.iter().map(|(weight, spread)| weight * spread * spread).sum();
        if all > 0.0 { (squares / all).sqrt() } else { 0.0 }
    }

    /// Of what makes a tip low, the share that sits at its place.
    pub(super) fn at_place(&self) -> f64 {
        self.swaps.shares()[1]
    }

    /// The share of catches that are misread or mistimed.
    pub(super) fn misread(&self) -> f64 {
        self.catches.shares()[1]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_season_moves_the_shares_by_as_much_as_it_saw() {
        let mut tips = Priors::default().tips;
        tips.learn(&Counts::new([60.0, 40.0, 0.0, 0.0, 0.0]));
        // 5 of 100 and 40 of 100 more: 45 of 200.
        assert!((tips.shares()[1] - 0.225).abs() < 1e-12);
        assert!((tips.shares().iter().sum::<f64>() - 1.0).abs() < 1e-12);
        assert!(Counts::new([f64::NAN, -1.0]).shares().iter().all(|share| (share - 0.5).abs() < 1e-12));
    }

    #[test]
    fn the_parts_of_the_boom_add_up_to_the_whole() {
        // Variances add; flow goes with the square root of pressure, so halves of its errors count.
        let priors = Priors::default();
        let whole =
            |law: &PartLaw| (law.set * law.set + 0.25 * (law.gauge * law.gauge + law.zero * law.zero)).sqrt();
        let wide = |law: &&PartLaw| whole(law) > 0.06;
        let weight: f64 = priors.parts.iter().filter(wide).map(|law| law.weight).sum();
        assert!((weight - priors.boom[1].0).abs() < 1e-12);
        for law in &priors.parts {
            let due = if wide(&law) { priors.boom[1].1 } else { priors.boom[0].1 };
            assert!((whole(law) - due).abs() < 0.001, "{law:?}: {}", whole(law));
        }
    }

    #[test]
    fn slips_add_to_one() {
        let priors = Priors::default();
        let slips: f64 = priors.slips.iter().map(|(weight, _)| weight).sum();
        assert!((slips + priors.one_mark + priors.any_slip - 1.0).abs() < 1e-12);
    }
}
