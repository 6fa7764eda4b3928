//! From a round of cups to what is most likely wrong: the answer and the way to it.

use std::collections::BTreeMap;

use sprayer::{GroupId, Scale, TipSize, WATER_AT_20_C};
use units::{Flow, Pressure, Quantity};

use super::answer::{Diagnosis, Part, put_together};
use super::aside::aside;
use super::beside::Beside;
use super::cups::{Moment, TipCups, shared_by_all};
use super::evidence::Taken;
use super::infer::{Believed, OfSection, infer};
use super::kinds::{Boom, log_off};
use super::model::{DiagnosisModel, Rated};
use super::offsets::{BOOM_REACH, at};
use super::parts::Parts;
use super::section::LossLaw;
use super::states::Laws;
use super::swapped::{Sits, Way, chances, mixed, with_swaps};
use crate::catch::{Catch, CatchError, Round, TipCatches};
use crate::verdict::NORMAL_FIVE;

/// The most tips there are on a boom. Our own choice, as for a catch test.
const MOST_TIPS: usize = 1000;

/// The group of tips that are in no group of their own: those the fitted tip is named for.
const USUAL_GROUP: GroupId = GroupId(0);

/// Returns what is most likely wrong with a sprayer, from one round of cups and what else was read and seen.
///
/// *Units*: chances; losses and offsets as shares of flow.
///
/// *Assumptions*: the logarithm of a tip's flow against a new one's is the boom's offset, plus what its section loses,
/// plus what the tip is off by itself; tips are independent given the first two, which the plumbing bears out (pressure
/// within a healthy section is flat). Any number of tips, catches and sections may be wrong at once. Everything in
/// [`Priors`](super::Priors). First cups under one timed run share its time, within a section or all over the boom; a run
/// that only some sections share is taken as timed for each of them. Tips of a group of their own are held against one another,
/// on sections as the others found them. Without a rated flow a new tip caught here stands for it, or else the middle tip,
/// and then nothing is said about the boom's offset; cups at other pressures need the rated flow.
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
    let model = &model.looked_at();
    let groups = groups(round);
    let Some((main, tips)) = groups.first() else { return Err(CatchError::NothingCaught) };
    let rated = rated.filter(|_| *main == USUAL_GROUP);
    let sections = Sections::of(round);
    let mut found = main_group(round, tips, rated, &sections, model)?;
    for (_, tips) in &groups[1..] {
        let tips = aside(round, tips, &found, &sections, model);
        found.tips.extend(tips);
    }
    let place = |number: u32| round.tips.iter().position(|tip| tip.number == number);
    found.tips.sort_by_key(|tip| place(tip.number));
    Ok(found)
}

/// The sections' numbers as the tips have them, and their tips.
pub(super) struct Sections {
    numbers: Vec<u16>,
    /// The numbers of each section's tips.
    pub tips: Vec<Vec<u32>>,
}

impl Sections {
    fn of(round: &Round) -> Self {
        let mut by_number: BTreeMap<u16, Vec<u32>> = BTreeMap::new();
        for tip in &round.tips {
            by_number.entry(tip.section).or_default().push(tip.number);
        }
        Self { numbers: by_number.keys().copied().collect(), tips: by_number.into_values().collect() }
    }

    /// The place of a tip's section, from the left.
    pub fn place(&self, tip: &TipCatches) -> usize {
        self.numbers.iter().position(|number| *number == tip.section).unwrap_or(0)
    }

    /// The place of the section of a tip by its number.
    pub fn place_of(&self, tip: u32) -> Option<usize> {
        self.tips.iter().position(|tips| tips.contains(&tip))
    }
}

/// The tips by group, those of no group of their own first; where none of them was caught, the largest group first. Groups of
/// which nothing was caught are left out.
fn groups(round: &Round) -> Vec<(GroupId, Vec<&TipCatches>)> {
    let mut groups: Vec<(GroupId, Vec<&TipCatches>)> = Vec::new();
    for tip in &round.tips {
        match groups.iter_mut().find(|(group, _)| *group == tip.group) {
            Some((_, tips)) => tips.push(tip),
            None => groups.push((tip.group, vec![tip])),
        }
    }
    groups.retain(|(_, tips)| tips.iter().any(|tip| !tip.catches.is_empty()));
    groups.sort_by_key(|(group, tips)| (*group != USUAL_GROUP, core::cmp::Reverse(tips.len())));
    groups
}

fn main_group(
    round: &Round,
    tips: &[&TipCatches],
    rated: Option<Rated>,
    sections: &Sections,
    model: &DiagnosisModel,
) -> Result<Diagnosis, CatchError> {
    let heavier = round.density.ratio_to(WATER_AT_20_C).sqrt();
    let new_tip = Beside::new_tip(round, model);
    let known = match (rated, new_tip) {
        (Some(rated), _) => Some(rated.rated.flow_at(rated.pressure)?.si() / heavier),
        (None, Some((flow, _))) => Some(flow),
        (None, None) => None,
    };
    let new_flow = known.unwrap_or_else(|| middle_flow(tips, round));
    let laws = Laws::of(&model.priors, &other_sizes(rated));
    let taken = Taken { new_flow, density: round.density, doubts: &model.doubts, priors: &model.priors };
    let put = |cups| Boom::of(cups, sections.tips.len(), |tip| sections.place(tip), new_flow, round.density);
    let boom = put(TipCups::of(tips, model, rated.is_some()));

    let doubts = &model.doubts;
    let scale = [doubts.cup_scale, doubts.watch, shared_by_all(tips, doubts)];
    let scale = scale.iter().map(|doubt| doubt * doubt).sum::<f64>().sqrt();
    let spreads = if known.is_some() { &model.priors.boom } else { &model.priors.boom_unknown };
    let mut losses = vec![LossLaw::of(&model.priors); sections.tips.len()];
    let plain = normal_laws(spreads, scale);
    let pressure = rated.map(|rated| rated.pressure);
    let beside = Beside { rated, new_tip, scale, sections };
    let first = |losses: &[LossLaw]| {
        let moment = Moment { drift: 0.0, changes: &beside.due(model) };
        let tips = boom.sections(&moment, &taken, &laws, model);
        infer(&tips, &laws, &model.priors, &Believed { boom: &plain, losses })
    };
    let changed = beside.all_changed(&boom, &taken, model);
    let parts = beside.parts(&changed, &taken, model, &mut losses, first);
    let believed = parts.as_ref().map_or_else(|| plain.clone(), Parts::believed);
    let changes = beside.changes(&changed, model, parts.as_ref());
    let moments: Vec<(Moment<'_>, f64)> = drifts(model)
        .into_iter()
        .flat_map(|(drift, weight)| {
            changes.iter().map(move |(changes, log)| (Moment { drift, changes }, libm::log(weight) + log))
        })
        .collect();
    let tables = |boom: &Boom<'_>, moment: &Moment<'_>| boom.sections(moment, &taken, &laws, model);
    let sums = |tables: &[OfSection]| {
        infer(tables, &laws, &model.priors, &Believed { boom: &believed, losses: &losses })
    };
    // Each moment's tables; where there is but one they may be at hand.
    let told = |boom: &Boom<'_>, at_hand: Option<&[OfSection]>| {
        let mut tried: Vec<Part> = Vec::new();
        let mut off = f64::NEG_INFINITY;
        for (place, (moment, log)) in moments.iter().enumerate() {
            let own = if at_hand.is_some() { Vec::new() } else { tables(boom, moment) };
            let tips = at_hand.unwrap_or(&own);
            if place == moments.len() / 2 {
                off = log_off(tips, &model.priors);
            }
            let found = sums(tips);
            tried.push(Part { drift: moment.drift, log: log + found.log, found });
        }
        put_together(boom, sections, known.map(Flow::from_si), &tried, (off, scale), model)
    };
    let mut found = if model.swaps.is_empty() {
        told(&boom, None)
    } else {
        let (moment, _) = &moments[moments.len() / 2];
        let plain = tables(&boom, moment);
        let first = sums(&plain);
        let swapped = |sits| {
            let at_place = model.priors.at_place();
            let boom = put(with_swaps(&boom.tips, &model.swaps, sits, at_place, &boom.kinds, &first));
            let tables = boom.over(&plain, moment, &taken, &laws, model);
            (boom, tables)
        };
        let [in_tip, at_place] = [Sits::InTip, Sits::AtPlace].map(swapped);
        let chances = chances(
            &model.swaps,
            &Way { boom: &boom, sections: &plain },
            &first,
            &Way { boom: &in_tip.0, sections: &in_tip.1 },
            &Way { boom: &at_place.0, sections: &at_place.1 },
            model.priors.tips.shares(),
        );
        let [moved, stayed] = [&in_tip, &at_place]
            .map(|(boom, tables)| told(boom, Some(tables).filter(|_| moments.len() == 1).map(Vec::as_slice)));
        mixed(&model.swaps, &chances, moved, &stayed)
    };
    found.boom.parts = parts.map(|parts| parts.told(&found.booms, pressure));
    let caught = tips.iter().filter(|tip| !tip.catches.is_empty()).count();
    found.remarks = beside.remarks(caught, model);
    Ok(found)
}

/// The drifts that are tried with their weights; none where the order of the cups is not known.
fn drifts(model: &DiagnosisModel) -> Vec<(f64, f64)> {
    if model.order.is_empty() {
        return vec![(0.0, 1.0)];
    }
    NORMAL_FIVE.iter().map(|(node, weight)| (node * model.priors.drift, *weight)).collect()
}

/// What is believed of the boom's offset: normal laws about nothing, what shifts every cup alike with them.
pub(super) fn normal_laws(laws: &[(f64, f64)], scale: f64) -> Vec<f64> {
    (-BOOM_REACH..=BOOM_REACH)
        .map(|boom| {
            let one = |(weight, spread): &(f64, f64)| {
                let spread = (spread * spread + scale * scale).sqrt();
                let off = at(boom) / spread;
                weight / spread * libm::exp(-0.5 * off * off)
            };
            laws.iter().map(one).sum()
        })
        .collect()
}

/// What tips of other sizes give against the right one.
pub(super) fn other_sizes(rated: Option<Rated>) -> Vec<f64> {
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
pub(super) fn middle_flow(tips: &[&TipCatches], round: &Round) -> f64 {
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
