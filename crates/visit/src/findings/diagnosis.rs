//! What is most likely wrong, from the cups of a visit and what else was read and seen.

use calibration::diagnosis::{Checking, Diagnosed, DiagnosisModel, Looked, Rated, diagnose_and_tell};
use units::{AsWritten, Pressure};

use super::catching::{CatchOutcome, outlet};
use super::error::CheckError;
use super::{Outcome, fitted};
use crate::record::{Answer, LookItem, Visit};

/// Returns what is most likely wrong and what to look at next, in the round that counts now; nothing where no cup was caught.
///
/// `outcome` is what [`super::findings`] made of the same visit. This is not part of it because it takes some milliseconds:
/// ask when it is shown.
///
/// *Errors*: no cup of the round tells anything, or a pressure of nothing.
pub fn diagnosis(visit: &Visit, outcome: &Outcome) -> Result<Option<Diagnosed>, CheckError> {
    let Some(catch) = &outcome.catch else { return Ok(None) };
    let rated =
        fitted::rated(visit)?.zip(catch_pressure(visit)).map(|(rated, pressure)| Rated { rated, pressure });
    let model = model(visit, catch);
    let round = &catch.now().round;
    diagnose_and_tell(round, outlet(visit), rated, &model, &Checking::default())
        .map(Some)
        .map_err(CheckError::of("catch"))
}

/// How cups were read, and what was seen beside them.
fn model(visit: &Visit, catch: &CatchOutcome) -> DiagnosisModel {
    let mut model = DiagnosisModel { doubts: catch.doubts, ..DiagnosisModel::default() };
    for looked in visit.look.iter().filter_map(looked) {
        looked.weigh(&mut model.priors);
    }
    model
}

/// The pressure that cups were caught at.
fn catch_pressure(visit: &Visit) -> Option<Pressure> {
    let setting = match &visit.catch {
        Some(catch) => catch.setting.over(&visit.setting),
        None => visit.setting.clone(),
    };
    setting.pressure.as_ref().map(AsWritten::value)
}

/// What the look tells of causes.
fn looked((item, answer): &(LookItem, Answer)) -> Option<Looked> {
    match (item, answer) {
        (LookItem::TipsAlike, Answer::Yes) => Some(Looked::TipsAlike),
        (LookItem::TipsAlike, Answer::No) => Some(Looked::TipsMixed),
        (LookItem::StrainersClean, Answer::Yes) => Some(Looked::StrainersClean),
        (LookItem::StrainersClean, Answer::No) => Some(Looked::StrainersDirty),
        (LookItem::GaugeBackToZero, Answer::No) => Some(Looked::GaugeOff),
        _ => None,
    }
}
