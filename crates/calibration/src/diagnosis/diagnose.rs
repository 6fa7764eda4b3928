//! From a round of cups to what is most likely wrong: the answer and the way to it.

use std::collections::BTreeMap;

use sprayer::{GroupId, RatedFlow, Scale, TipSize, WATER_AT_20_C};
use units::{Density, Flow, Pressure, Quantity};

use super::answer::{Diagnosis, put_together};
use super::evidence::{Taken, TipEvidence};
use super::infer::{Alike, Found, infer};
use super::priors::Priors;
use super::seen::{Seen, says};
use super::states::Laws;
use crate::catch::{Catch, CatchError, Round, TipCatches, Uncertainties, flow_of};
use crate::verdict::NORMAL_FIVE;

/// What the tips are held against.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rated {
    /// What a new tip gives.
    pub rated: RatedFlow,
    /// The pressure that was read.
    pub pressure: Pressure,
}

/// How cups are read and what is believed and seen beside them.
#[derive(Clone, Debug, Default)]
pub struct DiagnosisModel {
    /// The errors of reading and timing.
    pub doubts: Uncertainties,
    /// What is believed beforehand.
    pub priors: Priors,
    /// The order in which tips were caught, by number, where it is known; a tip may stand twice.
    pub order: Vec<u32>,
    /// What was seen beside the cups.
    pub seen: Vec<Seen>,
}

/// The most tips there are on a boom. Our own choice, as for a catch test.
const MOST_TIPS: usize = 1000;

/// The group of tips that are in no group of their own: those the fitted tip is named for.
const USUAL_GROUP: GroupId = GroupId(0);

/// Returns what is most likely wrong with a sprayer, from one round of cups.
///
/// *Units*: chances; losses and offsets as shares of flow.
///
/// *Assumptions*: the logarithm of a tip's flow against a new one's is the boom's offset, plus what its section loses,
/// plus what the tip is off by itself; tips are independent given the first two, which the plumbing bears out (pressure
/// within a healthy section is flat). Any number of tips, catches and sections may be wrong at once. Everything in
/// [`Priors`]. Cups under one timed run are taken as timed one by one. Tips of a group of their own are left out. Without
/// a rated flow the middle tip stands for a new one, and nothing is said about the boom's offset.
///
/// *Errors*: nothing caught, more than 1,000 tips, a pressure of nothing.
///
/// *Source*: Bayes' theorem, summed over grids; the model is our own and held to simulated sprayers made by other code.
///
/// *Example*: eleven tips of 19 fl oz and one of 10: that one is most likely partly plugged, and may have been misread.
pub fn diagnose(
    round: &Round,
    rated: Option<Rated>,
    model: &DiagnosisModel,
) -> Result<Diagnosis, CatchError> {
    if round.tips.len() > MOST_TIPS {
        return Err(CatchError::TooMany { tips: round.tips.len() });
    }
    let tips: Vec<&TipCatches> = round.tips.iter().filter(|tip| tip.group == USUAL_GROUP).collect();
    if tips.iter().all(|tip| tip.catches.is_empty()) {
        return Err(CatchError::NothingCaught);
    }
    let heavier = round.density.ratio_to(WATER_AT_20_C).sqrt();
    let new_flow = match rated {
        Some(rated) => rated.rated.flow_at(rated.pressure)?.si() / heavier,
        None => middle_flow(&tips, round),
    };
    let laws = Laws::of(&model.priors, &other_sizes(rated));
    let taken = Taken { new_flow, density: round.density, doubts: &model.doubts, priors: &model.priors };
    let boom_law = boom_law(rated, model);
    let boom = Boom::of(&tips, new_flow, round.density, model);

    let mut parts: Vec<(f64, f64, Found)> = Vec::new();
    for (drift, weight) in drifts(model) {
        let sections = boom.sections(&tips, drift, &taken, &laws, model);
        let found = infer(&sections, &laws, &model.priors, &boom_law);
        parts.push((drift, libm::log(weight) + found.log, found));
    }
    let log_off = boom.log_off(&tips, &taken, model);
    Ok(put_together(&tips, &boom, rated.map(|_| Flow::from_si(new_flow)), &parts, log_off, model))
}

/// The tips by section and by cups that are alike.
pub(super) struct Boom {
    /// The sections' numbers as the tips have them, from left to right.
    pub numbers: Vec<u16>,
    /// For each tip its section's place and the place of its kind in it.
    pub kinds: Vec<(usize, usize)>,
    /// For each section the first tip of each kind, and how many there are.
    pub firsts: Vec<Vec<(usize, f64)>>,
    new_flow: f64,
    density: Density,
}

impl Boom {
    fn of(tips: &[&TipCatches], new_flow: f64, density: Density, model: &DiagnosisModel) -> Self {
        let mut numbers: Vec<u16> = tips.iter().map(|tip| tip.section).collect();
        numbers.sort_unstable();
        numbers.dedup();
        let firsts = vec![Vec::new(); numbers.len()];
        let mut boom = Self { firsts, kinds: Vec::new(), numbers, new_flow, density };
        for (place, tip) in tips.iter().enumerate() {
            let section = boom.numbers.iter().position(|number| *number == tip.section).unwrap_or(0);
            // Cups in a known order are each something of their own, and so is a tip that was looked at.
            let own = !model.order.is_empty() || model.seen.iter().any(|seen| seen.tip() == tip.number);
            let of_section = &mut boom.firsts[section];
            let alike = |(first, _): &(usize, f64)| {
                !own && tips[*first].catches == tip.catches
                    && !model.seen.iter().any(|seen| seen.tip() == tips[*first].number)
            };
            match of_section.iter().position(alike) {
                Some(kind) => {
                    of_section[kind].1 += 1.0;
                    boom.kinds.push((section, kind));
                }
                None => {
                    of_section.push((place, 1.0));
                    boom.kinds.push((section, of_section.len() - 1));
                }
            }
        }
        boom
    }

    fn sections(
        &self,
        tips: &[&TipCatches],
        drift: f64,
        taken: &Taken<'_>,
        laws: &Laws,
        model: &DiagnosisModel,
    ) -> Vec<Vec<Alike>> {
        let alike = |(first, copies): &(usize, f64)| {
            let tip = tips[*first];
            let drifts: Vec<f64> =
                turns_of(tip.number, &model.order).iter().map(|turn| drift * turn).collect();
            let evidence = TipEvidence::of(&tip.catches, &drifts, taken);
            let says = says(&model.seen, tip.number);
            Alike { copies: *copies, tables: laws.tables(&evidence, &says), evidence, says }
        };
        self.firsts.iter().map(|tips| tips.iter().map(alike).collect()).collect()
    }

    /// What a tip's cups read against a new tip, all together: the logarithm; nothing where nothing was read.
    pub fn read(&self, tip: &TipCatches) -> Option<f64> {
        let flow = flow_of(tip, self.density);
        (flow > 0.0).then(|| libm::log(flow / self.new_flow))
    }

    /// How far the marks of a tip's first cup are apart, as a share of what was read.
    pub fn marks(&self, tip: &TipCatches) -> Option<f64> {
        let first = tip.catches.first()?;
        let volume = first.volume(self.density);
        volume.is_positive().then(|| first.step(self.density).ratio_to(volume))
    }

    /// The logarithm of the probability of all cups if the boom was not switched on.
    fn log_off(&self, tips: &[&TipCatches], taken: &Taken<'_>, model: &DiagnosisModel) -> f64 {
        let of = |(first, copies): &(usize, f64)| {
            let evidence = TipEvidence::of(&tips[*first].catches, &[], taken);
            copies * libm::log(evidence.plugged.max(f64::MIN_POSITIVE))
        };
        let cups: f64 = self.firsts.iter().flatten().map(of).sum();
        libm::log(model.priors.off.max(f64::MIN_POSITIVE)) + cups
    }
}

/// When each cup of a tip was caught, from −½ at the first cup of the test to ½ at the last.
fn turns_of(number: u32, order: &[u32]) -> Vec<f64> {
    let last = (order.len().max(2) - 1) as f64;
    let turns = order.iter().enumerate().filter(|(_, tip)| **tip == number);
    turns.map(|(turn, _)| turn as f64 / last - 0.5).collect()
}

/// The drifts that are tried with their weights; none where the order of the cups is not known.
fn drifts(model: &DiagnosisModel) -> Vec<(f64, f64)> {
    if model.order.is_empty() {
        return vec![(0.0, 1.0)];
    }
    NORMAL_FIVE.iter().map(|(node, weight)| (node * model.priors.drift, *weight)).collect()
}

/// What is believed of the boom's offset, the cup's scale and the watch's rate with it: they shift every cup alike.
fn boom_law(rated: Option<Rated>, model: &DiagnosisModel) -> Vec<(f64, f64)> {
    let scale = model.doubts.cup_scale * model.doubts.cup_scale + model.doubts.watch * model.doubts.watch;
    let laws = if rated.is_some() { &model.priors.boom } else { &model.priors.boom_unknown };
    laws.iter().map(|(weight, spread)| (*weight, (spread * spread + scale).sqrt())).collect()
}

/// What tips of other sizes give against the right one.
fn other_sizes(rated: Option<Rated>) -> Vec<f64> {
    let series = TipSize::all().filter_map(|size| size.rated(Scale::UsAt40Psi).ok());
    match rated {
        Some(rated) => {
            let own = rated.rated.flow_at(Pressure::psi(40.0)).unwrap_or(rated.rated.flow());
            series.map(|size| size.flow().ratio_to(own)).collect()
        }
        None => UNKNOWN_SIZE.to_vec(),
    }
}

/// Neighbours in the series where the right size is not known: those of 03, in the middle of it.
/// Source: ISO 10625 (02, 025, 04, 05 against 03).
const UNKNOWN_SIZE: [f64; 4] = [2.0 / 3.0, 2.5 / 3.0, 4.0 / 3.0, 5.0 / 3.0];

/// The flow of the middle tip of those that give something; a mark in the time where nothing does.
fn middle_flow(tips: &[&TipCatches], round: &Round) -> f64 {
    let flow = |catch: &Catch| (catch.volume(round.density) / catch.time()).si();
    let mut flows: Vec<f64> =
        tips.iter().filter_map(|tip| tip.catches.first()).map(flow).filter(|flow| *flow > 0.0).collect();
    flows.sort_by(f64::total_cmp);
    let smallest = tips
        .iter()
        .flat_map(|tip| &tip.catches)
        .map(|catch| (catch.step(round.density) / catch.time()).si())
        .find(|flow| *flow > 0.0);
    // A boom of which nothing runs: any flow of many marks will do to say so.
    flows.get(flows.len() / 2).copied().or(smallest.map(|flow| flow * MANY_MARKS)).unwrap_or(NO_MARKS)
}

/// A catch of so many marks stands for one of a tip that runs, where none does. Our own choice.
const MANY_MARKS: f64 = 20.0;
/// The flow (SI) taken where neither cups nor marks tell anything: 1 L/min, our own choice.
const NO_MARKS: f64 = 1.0 / 60_000.0;

/// The numbers of each section's tips.
pub(super) fn numbers_by_section(tips: &[&TipCatches], boom: &Boom) -> BTreeMap<usize, Vec<u32>> {
    let mut numbers: BTreeMap<usize, Vec<u32>> = BTreeMap::new();
    for (tip, (section, _)) in tips.iter().zip(&boom.kinds) {
        numbers.entry(*section).or_default().push(tip.number);
    }
    numbers
}
