//! A round diagnosed and told: what is most likely wrong, in sentences, and what to look at next.

use units::Finding;

use super::answer::Diagnosis;
use super::diagnose::diagnose;
use super::model::{DiagnosisModel, Rated};
use super::next::{Checking, NextCheck, next_checks, why_stop};
use super::tell::tell_diagnosis;
use crate::catch::{CatchError, Cup, Doubtful, Outlet, Round};

/// Everything there is to say about what is wrong.
#[derive(Clone, Debug, PartialEq)]
pub struct Diagnosed {
    /// Tips, sections and boom with their chances.
    pub found: Diagnosis,
    /// The same in sentences, the most pressing first.
    pub findings: Vec<Finding>,
    /// The checks worth making, the best first; none when the next one costs more than it settles.
    pub next: Vec<NextCheck>,
    /// Why there is none.
    pub stop: Option<Finding>,
}

/// Returns everything there is to say about what is wrong. Readings that cannot well be are kept and pointed out: they may
/// be just what is wrong.
///
/// *Units*, *assumptions*, *source*: those of [`diagnose`] and [`next_checks`].
///
/// *Errors*: those of [`diagnose`].
///
/// *Example*: eleven tips of 19 fl oz and one of 10: that one is most likely partly plugged; catch it once more.
pub fn diagnose_and_tell(
    round: &Round,
    outlet: Outlet,
    rated: Option<Rated>,
    model: &DiagnosisModel,
    costs: &Checking,
) -> Result<Diagnosed, CatchError> {
    let found = diagnose(round, rated, model)?;
    let mut findings = tell_diagnosis(&found);
    let cup = Cup { marks: None, holds: None };
    findings.extend(round.look_for_absurd_from(outlet, &cup, found.new_flow, Doubtful::Keep)?);
    findings.sort_by_key(|finding| finding.weight);
    let next = next_checks(round, &found, model, costs);
    let stop = if next.is_empty() { why_stop(round, &found, model, costs) } else { None };
    Ok(Diagnosed { found, findings, next, stop })
}
