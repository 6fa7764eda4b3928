//! Several tip sets on one body are kept apart: what was caught with one never meets what was caught with another.

use std::borrow::Cow;

use calibration::drive::DriveSpeed;
use units::{Amount, Arg, Finding, Kind, Weight};

use super::catching::{CatchOutcome, catching};
use super::error::CheckError;
use crate::record::Visit;

/// What was caught with a set of tips that is not the one in use.
#[derive(Clone, Debug)]
pub struct SetOutcome {
    /// What the set is called; none where its rounds bear no name.
    pub name: Option<String>,
    /// Its catch test by itself.
    pub catch: CatchOutcome,
    /// What it comes to.
    pub findings: Vec<Finding>,
}

/// The visit with the rounds of the set in use alone: that of the last round.
pub(super) fn in_use(visit: &Visit) -> Cow<'_, Visit> {
    let Some(set) = last_set(visit) else { return Cow::Borrowed(visit) };
    let all_alike =
        visit.catch.as_ref().is_none_or(|catch| catch.rounds.iter().all(|round| round.tip_set == set));
    if all_alike { Cow::Borrowed(visit) } else { Cow::Owned(with_set(visit, &set)) }
}

/// Works the other sets out, each by itself. What is fitted, and a new tip caught for the purpose, are the set's in use.
pub(super) fn others(visit: &Visit, speed: Option<&DriveSpeed>) -> Result<Vec<SetOutcome>, CheckError> {
    let (Some(catch), Some(used)) = (&visit.catch, last_set(visit)) else { return Ok(Vec::new()) };
    let mut sets: Vec<Option<String>> = Vec::new();
    for round in catch.rounds.iter().filter(|round| round.tip_set != used) {
        if !sets.contains(&round.tip_set) {
            sets.push(round.tip_set.clone());
        }
    }
    let mut found = Vec::new();
    for set in sets {
        let mut apart = with_set(visit, &set);
        if let Some(machine) = &mut apart.machine {
            machine.tip = None;
        }
        if let Some(catch) = &mut apart.catch {
            catch.new_tip.clear();
        }
        if let Some(catch) = catching(&apart, speed)? {
            let findings = finding(&set, &used, &catch).into_iter().collect();
            found.push(SetOutcome { name: set, catch, findings });
        }
    }
    Ok(found)
}

fn last_set(visit: &Visit) -> Option<Option<String>> {
    visit.catch.as_ref()?.rounds.last().map(|round| round.tip_set.clone())
}

fn with_set(visit: &Visit, set: &Option<String>) -> Visit {
    let mut apart = visit.clone();
    if let Some(catch) = &mut apart.catch {
        catch.rounds.retain(|round| round.tip_set == *set);
    }
    apart
}

fn finding(set: &Option<String>, used: &Option<String>, catch: &CatchOutcome) -> Option<Finding> {
    let name = |set: &Option<String>| match set {
        Some(name) => Arg::Text(name.clone()),
        None => Arg::Word { code: "tip_set_unnamed", english: "without a name" },
    };
    let group = catch.now().verdicts.summary.groups.first()?;
    let tips = u32::try_from(group.running.len()).unwrap_or(u32::MAX);
    Some(
        Finding::new(
            Weight::Note,
            "tip_set_apart",
            "Tip set {set} stands by itself: {mean} a tip on average, of {tips} tips. All else told here is of tip set {used}.",
        )
        .with("set", name(set))
        .with("used", name(used))
        .with("mean", Arg::Amount(Amount::new(group.mean?, Kind::Flow)))
        .with("tips", Arg::Count(tips)),
    )
}
