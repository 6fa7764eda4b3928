//! What most likely brings what was seen beside the readings, and the next check.

use calibration::symptoms::{
    Check, NextStep, Ranked, Seen, Signs, chance_told, check_said, nothing_more_said, ranked, working,
};
use units::{Arg, AsWritten, Finding, Phrase, Pressure, Weight};

use super::error::CheckError;
use crate::record::Visit;

/// What most likely brings what was seen.
#[derive(Clone, Debug, PartialEq)]
pub struct SymptomOutcome {
    /// Causes, the likeliest first, and what to do next.
    pub ranked: Ranked,
    /// The same as a finding.
    pub findings: Vec<Finding>,
}

/// Works it out, where something was seen.
pub(super) fn symptoms(visit: &Visit) -> Result<Option<SymptomOutcome>, CheckError> {
    let facts = &visit.symptoms;
    if facts.seen.is_empty() {
        return Ok(None);
    }
    let signs = facts.signs(visit.machine.as_ref().and_then(|machine| machine.held_by));
    let ranked = ranked(&signs).map_err(CheckError::of("symptoms"))?;
    let pressure = visit.setting.pressure.as_ref().map(AsWritten::value);
    let findings = finding(&signs, &ranked, pressure).into_iter().collect();
    Ok(Some(SymptomOutcome { ranked, findings }))
}

fn finding(signs: &Signs, found: &Ranked, pressure: Option<Pressure>) -> Option<Finding> {
    let [first, second, ..] = found.causes.as_slice() else { return None };
    let off = |check: Check| {
        let mut said = check_said(check, pressure);
        let asks = said.pop();
        (said, asks)
    };
    let finding = match found.next {
        NextStep::Check(check) => {
            let (said, asks) = off(check);
            Finding::new(
                Weight::Settle,
                "symptom_open",
                "Seen: {seen}. Most likely: {cause} ({chance}), or {second} ({second_chance}).",
            )
            .to_do("{check} {asks}")
            .with("check", Arg::Phrases(said))
            .with("asks", Arg::Phrases(asks.into_iter().collect()))
        }
        NextStep::Settled => {
            Finding::new(Weight::Act, "symptom_settled", "Seen: {seen}. Most likely: {cause} ({chance}).")
                .to_do("{remedy}")
        }
        NextStep::NothingMore => Finding::new(
            Weight::Act,
            "symptom_stop",
            "Seen: {seen}. Most likely: {cause} ({chance}), or {second} ({second_chance}).",
        )
        .to_do("{no_more} {remedy}")
        .with("no_more", Arg::Phrases(vec![nothing_more_said()])),
    };
    let seen = signs.seen.iter().filter(|(_, seen)| *seen == Seen::Present);
    let seen: Vec<Phrase> = seen.map(|(symptom, _)| symptom.said()).collect();
    Some(
        finding
            .with("seen", Arg::Phrases(seen))
            .with("cause", Arg::Phrases(vec![first.trouble.said()]))
            .with("chance", chance_told(first.chance))
            .with("second", Arg::Phrases(vec![second.trouble.said()]))
            .with("second_chance", chance_told(second.chance))
            .with("remedy", Arg::Phrases(vec![first.trouble.remedy()]))
            .because(working(signs, first)),
    )
}
