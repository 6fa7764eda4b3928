//! Tips in groups of their own, meant to be others than the fitted tip: held against one another.

use super::answer::{Diagnosis, TipDiagnosis, tips_of};
use super::cups::{Moment, TipCups, shared_by_all};
use super::diagnose::{Sections, middle_flow, normal_laws, other_sizes};
use super::evidence::Taken;
use super::infer::{Believed, infer};
use super::kinds::Boom;
use super::model::DiagnosisModel;
use super::section::LossLaw;
use super::states::Laws;
use crate::catch::{Round, TipCatches};

/// A section that is shut with this chance says nothing of its tips. Our own choice.
const SHUT: f64 = 0.5;

/// Returns what is most likely of each tip of a group. What the sections lose is taken as the other tips found it, and so is
/// the drift; what a new tip of the group gives is not known, so the middle one stands for it.
pub(super) fn aside(
    round: &Round,
    tips: &[&TipCatches],
    main: &Diagnosis,
    sections: &Sections,
    model: &DiagnosisModel,
) -> Vec<TipDiagnosis> {
    let of_section = |tip: &TipCatches| main.sections.get(sections.place(tip));
    let shut = |tip: &TipCatches| of_section(tip).is_some_and(|section| section.probability_shut > SHUT);
    // Where nothing can come out the cups say nothing.
    let empty: Vec<TipCatches> = tips
        .iter()
        .map(|tip| TipCatches {
            catches: if shut(tip) { Vec::new() } else { tip.catches.clone() },
            ..(*tip).clone()
        })
        .collect();
    let tips: Vec<&TipCatches> = empty.iter().collect();
    let new_flow = middle_flow(&tips, round);
    let laws = Laws::of(&model.priors, &other_sizes(None));
    let taken = Taken { new_flow, density: round.density, doubts: &model.doubts, priors: &model.priors };
    let mut cups = TipCups::of(&tips, model, false);
    for cups in &mut cups {
        let loss = of_section(cups.tip).map_or(0.0, |section| section.loss);
        cups.by = libm::log1p(-loss.clamp(0.0, 0.9));
    }
    let boom = Boom::of(cups, 1, |_| 0, new_flow, round.density);
    let drift = main.boom.drift.map_or(0.0, |(drift, _)| drift);
    let moment = Moment { drift, changes: &[] };
    let of_tips = boom.sections(&moment, &taken, &laws, model);
    let scale = shared_by_all(&tips, &model.doubts);
    let believed = normal_laws(&model.priors.boom_unknown, scale);
    let found =
        infer(&of_tips, &laws, &model.priors, &Believed { boom: &believed, losses: &[LossLaw::none()] });
    let off = main.boom.probability_off;
    let found = tips_of(&boom, core::iter::once(&found), &[1.0 - off], (1.0, off), model);
    let place = |tip: &TipDiagnosis| sections.place_of(tip.number).unwrap_or(0);
    found.into_iter().map(|tip| TipDiagnosis { section: place(&tip), ..tip }).collect()
}
