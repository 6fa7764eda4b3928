//! What is seen beside the readings: large buttons to choose it, one check at a time, the likely causes beneath.

use calibration::symptoms::{
    Check, NextStep, Outcome, Symptom, chance_said, chance_told, check_row, check_said, nothing_more_said,
};
use units::{AsWritten, Phrase};
use words::Words;

use crate::opened::Opened;
use crate::state::State;

/// All of it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SymptomsShown {
    /// What can be seen on this kind of sprayer.
    pub symptoms: Vec<SymptomShown>,
    /// The check to make next.
    pub next: Option<SymptomCheckShown>,
    /// What to do where no check is left: what puts it right, or who could.
    pub end: Vec<String>,
    /// The likely causes, each with its chance.
    pub causes: Vec<(String, String)>,
    /// The checks answered so far, the last one first.
    pub answered: Vec<AnsweredShown>,
    /// What does not go together.
    pub wrong: Option<String>,
}

/// Something that can be seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum IsSeen {
    /// It is.
    Yes,
    /// Nobody said so.
    No,
}

/// A symptom to choose.
#[derive(Clone, Debug, PartialEq)]
pub struct SymptomShown {
    /// Which.
    pub symptom: Symptom,
    /// What it says.
    pub says: String,
    /// Whether it was chosen.
    pub seen: IsSeen,
}

/// A check to make.
#[derive(Clone, Debug, PartialEq)]
pub struct SymptomCheckShown {
    /// Which.
    pub check: Check,
    /// What must be off, or who away, before it.
    pub before: String,
    /// What is done.
    pub does: String,
    /// What is asked.
    pub asks: String,
    /// How long it takes.
    pub takes: String,
}

/// A check that was answered.
#[derive(Clone, Debug, PartialEq)]
pub struct AnsweredShown {
    /// Which.
    pub check: Check,
    /// What was asked, with the answer.
    pub says: String,
}

/// Causes less likely than this are not shown. Our own choice.
const SHOWN_FROM: f64 = 0.05;

/// What the screen shows.
#[must_use]
pub fn symptoms(state: &State) -> SymptomsShown {
    let Some(visit) = &state.visit else { return SymptomsShown::default() };
    let words = &state.words;
    let facts = &visit.visit.symptoms;
    let pumping = facts.signs(None).pumping;
    let symptom = |symptom: &Symptom| SymptomShown {
        symptom: *symptom,
        says: words.phrase(&symptom.said()),
        seen: if facts.seen.contains(symptom) { IsSeen::Yes } else { IsSeen::No },
    };
    let mut shown = SymptomsShown {
        symptoms: Symptom::ALL
            .iter()
            .filter(|one| one.fits().on(&pumping) || facts.seen.contains(one))
            .map(symptom)
            .collect(),
        answered: answered(words, visit),
        wrong: visit
            .stuck
            .iter()
            .find(|error| error.part == "symptoms")
            .map(|error| crate::facts::said(state, error)),
        ..SymptomsShown::default()
    };
    let Some(outcome) = &visit.outcome.symptoms else { return shown };
    let found = &outcome.ranked;
    let remedy = found.causes.first().map(|one| words.phrase(&one.trouble.remedy()));
    match found.next {
        NextStep::Check(check) => shown.next = Some(check_shown(words, visit, check)),
        NextStep::Settled => shown.end.extend(remedy),
        NextStep::NothingMore => {
            shown.end.push(words.phrase(&nothing_more_said()));
            shown.end.extend(remedy);
        }
    }
    shown.causes = found
        .causes
        .iter()
        .filter(|one| one.chance >= SHOWN_FROM)
        .map(|one| {
            let chance = words.arg(&chance_told(one.chance));
            let how = words.phrase(&chance_said(one.chance));
            let said = words.say("yard-symptom_chance", &[("how", how.into()), ("chance", chance.into())]);
            (words.phrase(&one.trouble.said()), said)
        })
        .collect();
    shown
}

fn check_shown(words: &Words, visit: &Opened, check: Check) -> SymptomCheckShown {
    let pressure = visit.visit.setting.pressure.as_ref().map(AsWritten::value);
    let mut said = check_said(check, pressure);
    let last = |phrase: Option<Phrase>| phrase.map(|phrase| words.phrase(&phrase)).unwrap_or_default();
    let asks = last(said.pop());
    let does = last(said.pop());
    let minutes = words.fixed(check_row(check).minutes, 0);
    SymptomCheckShown {
        check,
        before: said.iter().map(|phrase| words.phrase(phrase)).collect::<Vec<_>>().join(" "),
        does,
        asks,
        takes: words.say("yard-symptom_takes", &[("minutes", minutes.into())]),
    }
}

fn answered(words: &Words, visit: &Opened) -> Vec<AnsweredShown> {
    let facts = &visit.visit.symptoms;
    let of = |list: &[Check], key: &str| {
        let said = |check: &Check| AnsweredShown {
            check: *check,
            says: format!("{} {}", words.phrase(&check.asks()), words.label(key)),
        };
        list.iter().rev().map(said).collect::<Vec<_>>()
    };
    let mut all = of(&facts.yes, key_of(Outcome::Yes));
    all.extend(of(&facts.no, key_of(Outcome::No)));
    all.extend(of(&facts.skipped, key_of(Outcome::Skipped)));
    all
}

const fn key_of(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Yes => "choice-yes",
        Outcome::No => "choice-no",
        Outcome::Skipped => "yard-symptom_skipped",
    }
}
