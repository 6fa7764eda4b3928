//! What was read beside the cups of the round, put in the form in which the sums take it.

use units::{Finding, Pressure, Quantity};

use super::changed::Changed;
use super::cups::shared_by_some;
use super::diagnose::Sections;
use super::evidence::{OneCup, Taken, TipEvidence};
use super::infer::Found;
use super::kinds::Boom;
use super::model::{DiagnosisModel, Rated, TipPressure};
use super::offsets::STEP;
use super::parts::{PartLaw, Parts, ReadBeside};
use super::quantile::mean_and_spread;
use super::section::LossLaw;
use crate::catch::{NewTip, Round, TipCatches};

/// What a gauge that is trusted is off by itself: standard deviation, a share of pressure. Our assumption: class 1.6 of
/// EN 837-1 read in the middle of its dial.
const TRUSTED: f64 = 0.01;
/// A pressure at a tip that was misread tells nothing; so many are. Our assumption, as for cups.
const MISREAD: f64 = 0.03;
/// Two pressures nearer than this (a share) tell nothing apart. Our own choice: marks of a gauge.
const SAME_PRESSURE: f64 = 0.05;
/// What the gauge shows at rest also holds roughly while it runs: standard deviation, a share of the pressure of the test.
/// Our assumption.
const RESTS: f64 = 0.02;

/// What is known of the test as a whole.
pub(super) struct Beside<'a> {
    /// What a new tip gives, and the pressure of the test.
    pub rated: Option<Rated>,
    /// What a new tip gave here (SI) and its relative standard uncertainty.
    pub new_tip: Option<(f64, f64)>,
    /// What shifts every cup alike: cup, watch, a run they all share.
    pub scale: f64,
    /// The sections.
    pub sections: &'a Sections,
}

impl Beside<'_> {
    /// What a new tip gave here, and how well that is known: its own cups' errors and those of making tips.
    pub fn new_tip(round: &Round, model: &DiagnosisModel) -> Option<(f64, f64)> {
        let mut tip = round.tips.first()?.clone();
        tip.catches.clone_from(&model.new_tip);
        match NewTip::from_catch(&tip, round.density, &model.doubts) {
            Ok(NewTip::Caught { flow, doubt }) => {
                let spread = model.priors.new_tip_spread();
                Some((flow.si(), (doubt * doubt + spread * spread).sqrt()))
            }
            _ => None,
        }
    }

    /// The pressure of the test, where a rated flow goes with it.
    fn pressure(&self) -> Option<Pressure> {
        self.rated.map(|rated| rated.pressure)
    }

    /// How the pressures alone change the flow at each other pressure, as logarithms.
    pub fn due(&self, model: &DiagnosisModel) -> Vec<f64> {
        let to = |other: Pressure| self.pressure().map_or(0.0, |own| 0.5 * libm::log(other.ratio_to(own)));
        model.others.iter().map(|other| to(other.pressure)).collect()
    }

    /// The other pressures that are far enough from that of the test to tell, by their places.
    fn apart(&self, model: &DiagnosisModel) -> Vec<usize> {
        let Some(own) = self.pressure() else { return Vec::new() };
        let apart = |other: Pressure| libm::log(other.ratio_to(own)).abs() > SAME_PRESSURE;
        (0..model.others.len()).filter(|place| apart(model.others[*place].pressure)).collect()
    }

    /// The parts of the boom's offset, where anything was read that tells of them. Pressures at tips weigh the losses of
    /// their sections; `first` gives what the cups alone say.
    pub fn parts(
        &self,
        changed: &[Changed],
        taken: &Taken<'_>,
        model: &DiagnosisModel,
        losses: &mut [LossLaw],
        first: impl Fn(&[LossLaw]) -> Found,
    ) -> Option<Parts> {
        let Some(pressure) = self.pressure() else {
            // Held against a new tip caught here, only the set can be off.
            let (_, doubt) = self.new_tip?;
            let only_set = |law: &PartLaw| PartLaw { gauge: 0.0, zero: 0.0, ..*law };
            let laws: Vec<PartLaw> = model.priors.parts.iter().map(only_set).collect();
            return Some(Parts::of(&ReadBeside::default(), &laws, doubt));
        };
        let mut read =
            ReadBeside { gauge: 0.5 * model.gauge.doubt.ratio_to(pressure), ..ReadBeside::default() };
        read.new = self.new_tip.map(|(flow, doubt)| (libm::log(flow / taken.new_flow), doubt));
        read.rests_at = model.gauge.rests_at.map(|rests| {
            let doubt = model.gauge.doubt.ratio_to(pressure);
            (rests.ratio_to(pressure), (doubt * doubt + RESTS * RESTS).sqrt())
        });
        read.changed = changed.to_vec();
        let at_tips = self.at_tips(pressure, model);
        if !at_tips.is_empty() {
            weigh_losses(&at_tips, losses);
            let found = first(losses);
            read.tips = at_tips.iter().map(|at_tip| at_tip.of_free_section(&found)).collect();
        }
        let nothing =
            read.new.is_none() && read.rests_at.is_none() && read.tips.is_empty() && read.changed.is_empty();
        (!nothing).then(|| Parts::of(&read, &model.priors.parts, self.scale))
    }

    /// What the tips caught at each other pressure too say of it, where it is far enough from that of the test.
    pub fn all_changed(&self, boom: &Boom<'_>, taken: &Taken<'_>, model: &DiagnosisModel) -> Vec<Changed> {
        self.apart(model).into_iter().map(|place| self.changed(place, boom, taken, model)).collect()
    }

    fn changed(&self, place: usize, boom: &Boom<'_>, taken: &Taken<'_>, model: &DiagnosisModel) -> Changed {
        let other = &model.others[place];
        let due = self.due(model)[place];
        let ends = core::f64::consts::SQRT_2 * taken.doubts.timer.si();
        let of = |tip: &TipCatches, by: f64| {
            let cups: Vec<OneCup<'_>> = tip.catches.iter().map(|catch| OneCup { catch, by, ends }).collect();
            TipEvidence::of(&cups, taken)
        };
        let runs =
            |tip: &TipCatches| tip.catches.iter().any(|catch| catch.volume(taken.density).is_positive());
        let tips: Vec<(TipEvidence, TipEvidence)> = boom
            .tips
            .iter()
            .filter(|cups| runs(cups.tip))
            .filter_map(|cups| {
                let after = other.tips.iter().find(|tip| tip.number == cups.tip.number && runs(tip))?;
                Some((of(cups.tip, 0.0), of(after, due)))
            })
            .collect();
        let round = |tips: Vec<TipCatches>| Round { tips, ..empty_round(taken) };
        let shared = [
            shared_by_some(&round(boom.tips.iter().map(|cups| cups.tip.clone()).collect()), taken.doubts),
            shared_by_some(&round(other.tips.clone()), taken.doubts),
        ];
        let gauge = [self.pressure().unwrap_or(other.pressure), other.pressure]
            .map(|pressure| 0.5 * model.gauge.doubt.ratio_to(pressure));
        let between = 0.5 * model.priors.gauge_between;
        let spread =
            shared.iter().chain(&gauge).chain([&between]).map(|part| part * part).sum::<f64>().sqrt();
        Changed::of(libm::exp(-2.0 * due), &tips, spread)
    }

    /// The changes to try at every other pressure, with the logarithms of their weights.
    pub fn changes(
        &self,
        changed: &[Changed],
        model: &DiagnosisModel,
        parts: Option<&Parts>,
    ) -> Vec<(Vec<f64>, f64)> {
        let due = self.due(model);
        let apart = self.apart(model);
        let (Some(parts), false) = (parts, apart.is_empty()) else { return vec![(due, 0.0)] };
        let nodes: Vec<(usize, Vec<(f64, f64)>)> =
            apart.iter().zip(changed).map(|(place, changed)| (*place, changed.nodes(parts))).collect();
        let middle: Vec<f64> = (0..due.len())
            .map(|place| {
                let most = nodes
                    .iter()
                    .find(|(of, _)| *of == place)
                    .and_then(|(_, nodes)| nodes.get(nodes.len() / 2));
                due[place] + most.map_or(0.0, |(change, _)| *change)
            })
            .collect();
        match nodes.as_slice() {
            // Several pressures, or a drift as well: the likeliest change stands for all, which each pins down by now.
            [(place, nodes)] if model.order.is_empty() => {
                let at = |(change, log): &(f64, f64)| {
                    let mut changes = middle.clone();
                    changes[*place] = due[*place] + change;
                    (changes, *log)
                };
                nodes.iter().map(at).collect()
            }
            _ => vec![(middle, 0.0)],
        }
    }

    fn at_tips(&self, pressure: Pressure, model: &DiagnosisModel) -> Vec<AtTip> {
        let of = |read: &TipPressure| {
            let doubt = read.doubt.ratio_to(read.pressure.max(read.doubt));
            let ratio = read.pressure.ratio_to(pressure);
            (ratio > 0.0).then_some(())?;
            Some(AtTip {
                section: self.sections.place_of(read.tip)?,
                flow: 0.5 * libm::log(ratio),
                spread: 0.5 * (doubt * doubt + TRUSTED * TRUSTED).sqrt(),
            })
        };
        model.tip_pressures.iter().filter_map(of).collect()
    }

    /// What is to be said of the facts themselves.
    pub fn remarks(&self, caught: usize, model: &DiagnosisModel) -> Vec<Finding> {
        super::remarks::remarks(self.apart(model).len(), caught, self.rated, self.sections, model)
    }
}

/// A pressure at a tip, as what it does to flow.
struct AtTip {
    section: usize,
    flow: f64,
    spread: f64,
}

impl AtTip {
    /// What it would be in a section that loses nothing, by what the cups say this one loses.
    fn of_free_section(&self, found: &Found) -> (f64, f64) {
        let losses = found.sections.get(self.section).map(|section| section.losses.iter().enumerate());
        let (loss, spread) = losses
            .and_then(|losses| mean_and_spread(losses.map(|(place, weight)| (place as f64 * STEP, *weight))))
            .unwrap_or((0.0, 0.0));
        (self.flow + loss, (self.spread * self.spread + spread * spread).sqrt())
    }
}

/// Pressures at tips of several sections weigh what these lose: the highest is taken as that of a free section.
fn weigh_losses(at_tips: &[AtTip], losses: &mut [LossLaw]) {
    let Some(best) = at_tips.iter().max_by(|one, other| one.flow.total_cmp(&other.flow)) else { return };
    for at_tip in at_tips.iter().filter(|at_tip| at_tip.section != best.section) {
        let variance = at_tip.spread * at_tip.spread + best.spread * best.spread;
        let below = best.flow - at_tip.flow;
        let likely = |loss: f64| {
            let off = loss - below;
            (1.0 - MISREAD) * libm::exp(-0.5 * off * off / variance) + MISREAD * 0.1
        };
        // Under a shut valve there is no pressure at a tip.
        losses[at_tip.section].weigh(likely, MISREAD * 0.1);
    }
}

/// A round of nothing, to put tips in.
fn empty_round(taken: &Taken<'_>) -> Round {
    Round {
        kind: crate::catch::RoundKind::AsFound,
        tips: Vec::new(),
        density: taken.density,
        time: units::Time::seconds(30.0),
        unit: None,
    }
}
