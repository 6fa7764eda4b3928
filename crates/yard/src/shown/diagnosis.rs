//! What is most likely wrong, beside the verdict: what it is, the next best check and how to do it, and what a tap does.

use calibration::diagnosis::{CheckKind, Diagnosed, NextCheck};
use notebook::Value;
use report::make;
use report::sheet::Sign;
use units::{Arg, Coded, Finding, Weight};
use words::Words;

use super::found::Again;
use crate::catching::{PRESSURE_CHANGED, SWAPPED};
use crate::facts::typed_text;
use crate::opened::{ROUNDS, TIP_PRESSURES};
use crate::state::State;

/// What is most likely wrong, and what to look at next.
#[derive(Clone, Debug, PartialEq)]
pub struct DiagnosisShown {
    /// What is most likely wrong, the most pressing first.
    pub likely: Vec<LikelyShown>,
    /// What is worth checking, the best first; none where nothing more is.
    pub checks: Vec<CheckShown>,
    /// Why nothing more is, where there is none.
    pub stop: Option<String>,
}

/// Something that is most likely so.
#[derive(Clone, Debug, PartialEq)]
pub struct LikelyShown {
    /// How soon it is to be read.
    pub sign: Sign,
    /// What is so.
    pub lead: String,
    /// What to do; may be empty.
    pub rest: String,
    /// What may have been done about it, and is then held against what was read.
    pub repairs: Vec<RepairShown>,
}

/// Something done, after which tips are caught again in a round of their own.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RepairShown {
    /// "cleaned: catch tip 7 again".
    pub label: String,
    /// What was done, as the visit file words it.
    pub after: &'static str,
    /// The tips.
    pub tips: Vec<u32>,
}

/// A check that is worth making.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckShown {
    /// What.
    pub lead: String,
    /// How it is done safely, and the minutes it takes.
    pub rest: String,
    /// Cups to catch again, where that is the check.
    pub again: Option<Again>,
    /// What it comes to where it was done.
    pub repair: Option<RepairShown>,
    /// The tip at which a pressure is read, where that is the check, and the button that begins it.
    pub pressure_at: Option<(u32, String)>,
}

/// More checks than these are not named beside the best. Our own choice: what one remembers walking there.
const BESIDE: usize = 2;

/// What is most likely wrong with the boom of the open visit; `None` before any cup was caught. Worked out when it is first
/// asked for after the facts changed.
#[must_use]
pub fn diagnosis(state: &State) -> Option<DiagnosisShown> {
    let visit = state.visit.as_ref()?;
    let diagnosed = visit.diagnosed()?;
    let catch = visit.outcome.catch.as_ref()?;
    let words = &state.words;
    let likely = make::findings_now(catch, diagnosed).map(|finding| likely(words, finding)).collect();
    let checks = make::checks_now(catch, diagnosed)
        .take(1 + BESIDE)
        .map(|check| check_shown(words, diagnosed, check))
        .collect::<Vec<_>>();
    let why =
        || diagnosed.stop.as_ref().map_or_else(|| words.label("likely-stop"), |stop| words.finding(stop));
    let stop = checks.is_empty().then(why);
    Some(DiagnosisShown { likely, checks, stop })
}

/// The fields for what was read or seen beside the cups: those that a check asks for, and those that hold something.
#[must_use]
pub fn beside(state: &State) -> Vec<String> {
    let Some(visit) = &state.visit else { return Vec::new() };
    let asked = |kind: CheckKind| {
        let next = visit.diagnosed().map(|found| found.next.iter().take(1 + BESIDE));
        next.into_iter().flatten().any(|check| check.kind == kind)
    };
    let mut fields = Vec::new();
    for (kind, field) in [(CheckKind::LookAtTip, "look.odd_tips"), (CheckKind::NewTip, "catch.new_tip")] {
        if visit.fact(field).is_some() || asked(kind) {
            fields.push(field.to_string());
        }
    }
    for (row, held) in visit.rounds() {
        let Value::Table(table) = &held.value else { continue };
        let after = table.iter().find(|(name, _)| name == "after").map(|(_, value)| typed_text(value));
        if after.as_deref() == Some(PRESSURE_CHANGED) {
            fields.push(format!("{ROUNDS}.{row}.pressure"));
        }
    }
    for (row, _) in visit.folded.rows.get(TIP_PRESSURES).into_iter().flatten() {
        fields.extend(["tip", "pressure"].map(|name| format!("{TIP_PRESSURES}.{row}.{name}")));
    }
    fields
}

fn likely(words: &Words, finding: &Finding) -> LikelyShown {
    let lead = words.finding(finding);
    LikelyShown {
        sign: match finding.weight {
            Weight::Stop | Weight::Act => Sign::Act,
            Weight::Settle => Sign::Settle,
            Weight::Doubt | Weight::Note => Sign::Plain,
        },
        rest: words.action(finding).filter(|rest| *rest != lead).unwrap_or_default(),
        repairs: repairs(words, finding),
        lead,
    }
}

/// What may have been done: cleaned, where it is most likely dirt; new, where it is most likely the tip; the strainer of a
/// section.
fn repairs(words: &Words, finding: &Finding) -> Vec<RepairShown> {
    let args = finding.args();
    if let ("section_restricted" | "section_shut", Some(Arg::Tips(tips))) = (finding.code(), args.get("tips"))
    {
        return vec![repair(words, "likely-cleaned", tips.clone())];
    }
    if let ("tip_swapped", Some("stayed"), Some(Arg::Count(tip))) =
        (finding.code(), Coded::case(finding), args.get("tip"))
    {
        return vec![repair(words, "likely-cleaned", vec![*tip])];
    }
    let (Some(Arg::Count(tip)), Some(Arg::Word { code, .. })) = (args.get("tip"), args.get("first")) else {
        return Vec::new();
    };
    match *code {
        "cause_partly_plugged" | "cause_plugged" => vec![repair(words, "likely-cleaned", vec![*tip])],
        "cause_worn" | "cause_larger_tip" | "cause_smaller_tip" => {
            vec![repair(words, "likely-new_tips", vec![*tip])]
        }
        _ => Vec::new(),
    }
}

fn repair(words: &Words, key: &str, tips: Vec<u32>) -> RepairShown {
    let count = i64::try_from(tips.len()).unwrap_or(i64::MAX);
    let after = match key {
        "likely-cleaned" => "after cleaning",
        "likely-swapped" => SWAPPED,
        "likely-other_pressure" => PRESSURE_CHANGED,
        _ => "new tips",
    };
    let label = words.say(key, &[("tips", words.tips(&tips).into()), ("count", count.into())]);
    RepairShown { label, after, tips }
}

fn check_shown(words: &Words, diagnosed: &Diagnosed, check: &NextCheck) -> CheckShown {
    let how = make::check_how(words, check.kind);
    let again = (check.kind == CheckKind::CatchAgain).then(|| {
        let count = i64::try_from(check.tips.len()).unwrap_or(i64::MAX);
        let tips = words.tips(&check.tips);
        let label = words.say("yard-catch_again", &[("tips", tips.into()), ("count", count.into())]);
        Again { label, tips: check.tips.clone(), seconds: String::new() }
    });
    let of_section = check.section.and_then(|place| diagnosed.found.sections.get(place));
    let repair = match check.kind {
        CheckKind::OpenStrainer => {
            of_section.map(|section| repair(words, "likely-cleaned", section.tips.clone()))
        }
        CheckKind::LookAtTip => Some(repair(words, "likely-new_tips", check.tips.clone())),
        CheckKind::SwapTips => Some(repair(words, "likely-swapped", check.tips.clone())),
        CheckKind::SecondPressure => Some(repair(words, "likely-other_pressure", check.tips.clone())),
        CheckKind::CatchAgain | CheckKind::ReadPressure | CheckKind::NewTip => None,
    };
    let tip = check.tips.first().or_else(|| of_section?.tips.first()).copied().unwrap_or(1);
    let says = || words.say("likely-pressure_at", &[("tip", i64::from(tip).into())]);
    let pressure_at = (check.kind == CheckKind::ReadPressure).then(|| (tip, says()));
    let rest = format!("{how} {}", make::check_minutes(words, check));
    CheckShown { lead: make::check_said(words, check), rest, again, repair, pressure_at }
}
