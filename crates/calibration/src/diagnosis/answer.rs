//! The answer: what is most likely of each tip, each section and the boom, over all drifts.

use units::{Finding, Flow};

use super::cause::Cause;
use super::cups::TipCups;
use super::diagnose::Sections;
use super::infer::{COARSE, FED, Found, FoundTip};
use super::kinds::Boom;
use super::model::DiagnosisModel;
use super::offsets::{LOWEST_BASE, STEP, at, flow_at};
use super::parts::BoomParts;
use super::quantile::{TOLD, mean_and_spread, quantile};
use super::section::LOSSES;

/// A section that loses more than this beyond the best-fed is restricted.
/// Source: 8 % of pressure, near the 10 % at which inspections reject a section (French order of 18 Dec 2008, NOR
/// AGRP0828914A, annex IV B, 8.3.3.2), is 4 % of flow.
pub const RESTRICTED_FROM: f64 = 0.04;

/// What is most likely of one tip.
#[derive(Clone, Debug, PartialEq)]
pub struct TipDiagnosis {
    /// The tip's number.
    pub number: u32,
    /// The place of its section among the sections, from the left.
    pub section: usize,
    /// The chance of each cause, in the order of [`Cause::ALL`].
    pub causes: [f64; 5],
    /// For each of its catches the chance that it was misread or mistimed.
    pub misread: Vec<f64>,
    /// The same for its catches at other pressures.
    pub misread_beside: Vec<f64>,
    /// The chance that it is sound and that every catch of it was read and timed right.
    pub in_order: f64,
    /// The chance that its cup is low for its place's sake (body, its hose, its check valve), where it was swapped: a part of
    /// the chances of partly plugged and plugged, which take tip and place together.
    pub at_place: Option<f64>,
    /// What it most likely gives against a new tip, while it runs: mean and standard deviation of the logarithm.
    pub off: Option<(f64, f64)>,
    /// What its cups read against a new tip, all together: the logarithm; nothing where nothing was read.
    pub read: Option<f64>,
    /// How far the marks of its first cup are apart, as a share of what was read.
    pub marks: Option<f64>,
    /// Weights over flows by cause, for trying further cups.
    pub(super) flows: Vec<[f64; 5]>,
}

/// What is most likely of one section.
#[derive(Clone, Debug, PartialEq)]
pub struct SectionDiagnosis {
    /// Its tips.
    pub tips: Vec<u32>,
    /// The flow lost beyond the best-fed section, as likely more as less (a share).
    pub loss: f64,
    /// The low end of the 95 % range.
    pub low: f64,
    /// The high end.
    pub high: f64,
    /// The chance that it loses more than [`RESTRICTED_FROM`].
    pub probability_restricted: f64,
    /// The chance that it is shut.
    pub probability_shut: f64,
}

/// What is most likely of the boom.
#[derive(Clone, Debug, PartialEq)]
pub struct BoomDiagnosis {
    /// What its best-fed section gives more than new tips would, as likely more as less (a share).
    pub offset: f64,
    /// The low end of the 95 % range.
    pub low: f64,
    /// The high end.
    pub high: f64,
    /// The chance that it was not switched on.
    pub probability_off: f64,
    /// The drift from first to last cup, where the order is known: mean and standard deviation (shares).
    pub drift: Option<(f64, f64)>,
    /// What the offset is made of, where a second pressure, a pressure at a tip or a new tip tells.
    pub parts: Option<BoomParts>,
}

/// What is most likely wrong with a sprayer.
#[derive(Clone, Debug, PartialEq)]
pub struct Diagnosis {
    /// Each tip from left to right.
    pub tips: Vec<TipDiagnosis>,
    /// Each section from left to right.
    pub sections: Vec<SectionDiagnosis>,
    /// The boom.
    pub boom: BoomDiagnosis,
    /// What a new tip gives at the pressure; nothing where it is not known.
    pub new_flow: Option<Flow>,
    /// What is to be said of the facts themselves.
    pub remarks: Vec<Finding>,
    /// Weights over the boom's own offset.
    pub(super) booms: Vec<f64>,
}

/// One set of what is tried: a drift and the changes to other pressures.
pub(super) struct Part {
    /// The drift.
    pub drift: f64,
    /// The logarithm of its weight, its prior's with that of all cups.
    pub log: f64,
    /// What is most likely under it.
    pub found: Found,
}

impl BoomDiagnosis {
    /// Whether it was most likely not switched on.
    pub(super) fn is_off(&self) -> bool {
        self.probability_off >= super::tell_tip::LIKELY
    }
}

impl TipDiagnosis {
    /// The chance that something is the matter with it.
    #[must_use]
    pub fn probability_faulty(&self) -> f64 {
        1.0 - self.causes[0]
    }

    /// The likeliest cause.
    #[must_use]
    pub fn likeliest(&self) -> Cause {
        Cause::ALL.into_iter().fold(Cause::Sound, |best, cause| {
            if self.causes[cause.place()] > self.causes[best.place()] { cause } else { best }
        })
    }

    /// The chance of one cause.
    #[must_use]
    pub fn probability_of(&self, cause: Cause) -> f64 {
        self.causes[cause.place()]
    }
}

/// Puts all that was tried together, and the chance that nothing was switched on. `scale` is how far cup and watch may be off
/// for every cup alike: it is no part of what the boom gives.
pub(super) fn put_together(
    boom: &Boom<'_>,
    sections: &Sections,
    new_flow: Option<Flow>,
    parts: &[Part],
    (log_off, scale): (f64, f64),
    model: &DiagnosisModel,
) -> Diagnosis {
    let on = libm::log(1.0 - model.priors.off);
    let best = parts.iter().map(|part| part.log + on).fold(log_off, f64::max);
    let weights: Vec<f64> = parts.iter().map(|part| libm::exp(part.log + on - best)).collect();
    let weight_off = libm::exp(log_off - best);
    let all = weights.iter().sum::<f64>() + weight_off;
    let off = weight_off / all;
    let drifts: Vec<f64> = parts.iter().map(|part| part.drift).collect();
    let weigh = |values: &dyn Fn(&Found) -> Vec<f64>| -> Vec<f64> {
        let mut sum: Vec<f64> = Vec::new();
        for (part, weight) in parts.iter().zip(&weights) {
            let values = values(&part.found);
            sum.resize(values.len(), 0.0);
            sum.iter_mut().zip(values).for_each(|(sum, value)| *sum += weight / all * value);
        }
        sum
    };
    let drift = (!model.order.is_empty())
        .then(|| mean_and_spread(drifts.iter().copied().zip(weights.iter().copied())))
        .flatten();
    let fed = blurred(&weigh(&|found| found.fed.clone()), scale);
    debug_assert_eq!(fed.len(), FED);
    let [offset, low, high] = TOLD.map(|share| libm::expm1(at(LOWEST_BASE) + quantile(&fed, share) * STEP));
    let of_section = |(section, tips): (usize, &Vec<u32>)| {
        let mut losses = weigh(&|found| found.sections[section].losses.clone());
        let shut = weigh(&|found| vec![found.sections[section].shut]).first().copied().unwrap_or(0.0);
        // A boom that was not switched on says nothing of its sections: none is taken to be worse than the best.
        losses[0] += off;
        section_of(tips.clone(), losses, shut)
    };
    let found_sections = sections.tips.iter().enumerate().map(of_section).collect();
    let found_tips = tips_of(boom, parts.iter().map(|part| &part.found), &weights, (all, off), model);
    Diagnosis {
        tips: found_tips,
        sections: found_sections,
        boom: BoomDiagnosis { offset, low, high, probability_off: off, drift, parts: None },
        new_flow,
        remarks: Vec::new(),
        booms: weigh(&|found| found.boom.clone()),
    }
}

/// Weights on the grid spread by a normal law.
fn blurred(weights: &[f64], spread: f64) -> Vec<f64> {
    let steps = spread / STEP;
    // Four spreads of a cup's scale are a dozen steps; a spread that is none leaves the weights as they are.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let reach = (4.0 * steps).ceil().clamp(0.0, weights.len() as f64) as usize;
    let law = |place: usize| {
        let off = (place as f64 - reach as f64) / steps.max(f64::MIN_POSITIVE);
        libm::exp(-0.5 * off * off)
    };
    let laws: Vec<f64> = (0..=2 * reach).map(law).collect();
    let all: f64 = laws.iter().sum();
    let mut spread = vec![0.0; weights.len()];
    for (place, weight) in weights.iter().enumerate().filter(|(_, weight)| **weight > 0.0) {
        for (by, law) in laws.iter().enumerate() {
            let to = (place + by).saturating_sub(reach).min(weights.len() - 1);
            spread[to] += weight * law / all;
        }
    }
    spread
}

/// The tips of a boom under all that was tried, with the weight of each; `all` is their sum with that of a boom that is off.
pub(super) fn tips_of<'a>(
    boom: &Boom<'_>,
    founds: impl Iterator<Item = &'a Found> + Clone,
    weights: &[f64],
    (all, off): (f64, f64),
    model: &DiagnosisModel,
) -> Vec<TipDiagnosis> {
    let of = |(tip, (section, kind)): (&TipCups<'_>, &(usize, usize))| {
        let parts = founds.clone().map(|found| found.sections[*section].tips[*kind].clone());
        let mut found = tip_of(tip.tip.number, *section, parts, weights, (all, off), model);
        found.misread_beside = found.misread.split_off(tip.tip.catches.len().min(found.misread.len()));
        found.misread_beside.truncate(tip.others.len());
        TipDiagnosis { read: boom.read(tip.tip), marks: boom.marks(tip.tip), ..found }
    };
    boom.tips.iter().zip(&boom.kinds).map(of).collect()
}

fn section_of(tips: Vec<u32>, mut losses: Vec<f64>, shut: f64) -> SectionDiagnosis {
    // A node stands for its step: the one on the limit counts with the part of it that lies beyond.
    let limit = -libm::log1p(-RESTRICTED_FROM) / STEP;
    let beyond = |node: usize| (node as f64 + 0.5 - limit).clamp(0.0, 1.0);
    let restricted: f64 = losses.iter().enumerate().map(|(node, weight)| beyond(node) * weight).sum();
    losses.push(shut);
    let [loss, low, high] = TOLD.map(|share| {
        let node = quantile(&losses, share);
        // Beyond the last loss that is tried it is shut.
        if node > LOSSES as f64 - 0.5 { 1.0 } else { -libm::expm1(-node.max(0.0) * STEP) }
    });
    SectionDiagnosis {
        tips,
        loss,
        low,
        high,
        probability_restricted: (restricted + shut).clamp(0.0, 1.0),
        probability_shut: shut,
    }
}

fn tip_of(
    number: u32,
    section: usize,
    parts: impl Iterator<Item = FoundTip>,
    weights: &[f64],
    (all, off): (f64, f64),
    model: &DiagnosisModel,
) -> TipDiagnosis {
    let shares = model.priors.tips.shares();
    let mut tip = TipDiagnosis {
        number,
        section,
        causes: shares.map(|share| off * share),
        misread: Vec::new(),
        misread_beside: Vec::new(),
        at_place: None,
        in_order: 0.0,
        off: None,
        read: None,
        marks: None,
        flows: Vec::new(),
    };
    for (part, weight) in parts.zip(weights) {
        let weight = weight / all;
        tip.misread.resize(part.misread.len(), off * model.priors.catches.shares()[1]);
        tip.in_order += weight * part.in_order;
        tip.flows.resize(part.flows.len(), [0.0; 5]);
        tip.causes.iter_mut().zip(part.causes).for_each(|(sum, chance)| *sum += weight * chance);
        tip.misread.iter_mut().zip(part.misread).for_each(|(sum, chance)| *sum += weight * chance);
        for (sum, flow) in tip.flows.iter_mut().zip(part.flows) {
            sum.iter_mut().zip(flow).for_each(|(sum, value)| *sum += weight * value);
        }
    }
    let places = tip.flows.iter().enumerate();
    tip.off = mean_and_spread(places.map(|(place, weights)| (coarse_at(place), weights.iter().sum())));
    tip
}

/// The logarithm of the flow in the middle of a coarse step.
fn coarse_at(place: usize) -> f64 {
    flow_at(place * COARSE) + (COARSE - 1) as f64 / 2.0 * STEP
}
