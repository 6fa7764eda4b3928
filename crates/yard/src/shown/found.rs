//! What a step found: sentence, what to do, the working behind it, tips to catch again; and the rows it has so far.

use notebook::{RowId, Value};
use report::sheet::Sign;
use units::{Arg, Coded, Finding, UnitSystem, Weight};
use visit::findings::Place;

use super::why::has_why;
use crate::facts::typed_text;
use crate::hands_free::seconds_text;
use crate::opened::{CLOSED, PRODUCTS, RUNS};
use crate::plan::Step;
use crate::state::{State, WhyOf};

/// Something that was found.
#[derive(Clone, Debug, PartialEq)]
pub struct FoundShown {
    /// How soon it is to be read.
    pub sign: Sign,
    /// What is so.
    pub lead: String,
    /// What to do; may be empty.
    pub rest: String,
    /// Its working, where it has one.
    pub why: Option<WhyOf>,
    /// Tips that settle it, where it names some.
    pub again: Option<Again>,
}

/// Tips to catch again.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Again {
    /// "catch tips 4 and 9 again for 60 s".
    pub label: String,
    /// The tips.
    pub tips: Vec<u32>,
    /// For how long, as written; empty for the round's time.
    pub seconds: String,
}

/// The parts of a visit whose findings stand under a step.
const fn places(step: Step) -> &'static [Place] {
    match step {
        Step::Look => &[Place::Look, Place::Symptoms],
        Step::Spacing => &[Place::Spacing, Place::Pattern],
        Step::Drive => &[Place::Drive],
        Step::Catch => &[Place::Tips, Place::Controller],
        Step::Rate => &[Place::Rate],
        Step::Tank => &[Place::Tank],
        Step::Change => &[Place::Change, Place::Cost],
        Step::Repeat => &[Place::Setting],
        Step::Machine | Step::Safe | Step::HandOver => &[],
    }
}

/// What a step found, the most pressing first.
#[must_use]
pub fn found(state: &State, step: Step) -> Vec<FoundShown> {
    let Some(visit) = &state.visit else { return Vec::new() };
    let mut of_step: Vec<(usize, &Finding)> = visit
        .outcome
        .all()
        .enumerate()
        .filter(|(_, (place, _))| places(step).contains(place))
        .map(|(index, (_, finding))| (index, finding))
        .collect();
    of_step.sort_by_key(|(_, finding)| finding.weight);
    of_step.into_iter().map(|(index, finding)| shown(state, index, finding)).collect()
}

fn shown(state: &State, index: usize, finding: &Finding) -> FoundShown {
    let words = &state.words;
    let lead = words.finding(finding);
    FoundShown {
        sign: match finding.weight {
            Weight::Stop | Weight::Act => Sign::Act,
            Weight::Settle => Sign::Settle,
            Weight::Doubt | Weight::Note => Sign::Plain,
        },
        rest: words.action(finding).filter(|rest| *rest != lead).unwrap_or_default(),
        lead,
        why: has_why(finding).then(|| WhyOf::Finding { code: finding.code().to_string(), index }),
        again: again(state, finding),
    }
}

fn again(state: &State, finding: &Finding) -> Option<Again> {
    let words = &state.words;
    let args = finding.args();
    let Some(Arg::Tips(tips)) = args.get("again") else { return None };
    if tips.is_empty() {
        return None;
    }
    let count = i64::try_from(tips.len()).unwrap_or(i64::MAX);
    let named = |key: &str, time: String| {
        words.say(key, &[("tips", words.tips(tips).into()), ("count", count.into()), ("time", time.into())])
    };
    let (label, seconds) = match args.get("time") {
        Some(Arg::Amount(time)) => (
            named("yard-catch_again_for", words.amount(time)),
            // Seconds are the same in both systems.
            seconds_text(time.value(UnitSystem::Us)),
        ),
        _ => (named("yard-catch_again", String::new()), String::new()),
    };
    Some(Again { label, tips: tips.clone(), seconds })
}

/// The timed runs so far, each with its row to strike it by.
#[must_use]
pub fn runs(state: &State) -> Vec<(RowId, String)> {
    let Some(visit) = &state.visit else { return Vec::new() };
    let rows = visit.folded.rows.get(RUNS).map_or(&[][..], Vec::as_slice);
    let of = |value: &Value, name: &str| match value {
        Value::Table(fields) => {
            fields.iter().find(|(known, _)| known == name).map(|(_, value)| typed_text(value))
        }
        value if name == "time" => Some(typed_text(value)),
        _ => None,
    };
    let said = |(place, (row, held)): (usize, &(RowId, notebook::Held))| {
        let time = of(&held.value, "time").unwrap_or_default();
        let way = of(&held.value, "way").unwrap_or_else(|| "none".to_string());
        let number = i64::try_from(place + 1).unwrap_or(i64::MAX);
        let says = state.words.say(
            "yard-run",
            &[
                ("number", number.into()),
                ("way", way.into()),
                ("time", super::value_said(&state.words, &time).into()),
            ],
        );
        (*row, says)
    };
    rows.iter().enumerate().map(said).collect()
}

/// The products: each row, what it is called here, and the fields asked of it.
#[must_use]
pub fn product_names(state: &State) -> Vec<(RowId, String, Vec<String>)> {
    let Some(visit) = &state.visit else { return Vec::new() };
    let rows = visit.folded.rows.get(PRODUCTS).map_or(&[][..], Vec::as_slice);
    let names = ["name", "rate", "label_most", "label_least", "label_least_carrier", "price"];
    rows.iter()
        .enumerate()
        .map(|(place, (row, _))| {
            let number = i64::try_from(place + 1).unwrap_or(i64::MAX);
            let head = state.words.say("yard-product", &[("number", number.into())]);
            (*row, head, names.iter().map(|name| format!("{PRODUCTS}.{row}.{name}")).collect())
        })
        .collect()
}

/// Sections closed in turn: each row, what it is called here, and the fields asked of it.
#[must_use]
pub fn closed_names(state: &State) -> Vec<(RowId, String, Vec<String>)> {
    let Some(visit) = &state.visit else { return Vec::new() };
    let rows = visit.folded.rows.get(CLOSED).map_or(&[][..], Vec::as_slice);
    rows.iter()
        .map(|(row, held)| {
            let section = match &held.value {
                Value::Table(fields) => fields.iter().find(|(name, _)| name == "section"),
                _ => None,
            };
            let number = section.map(|(_, value)| typed_text(value)).unwrap_or_default();
            let head = state.words.say("yard-section_closed", &[("number", number.into())]);
            (*row, head, ["before", "closed", "after"].map(|name| format!("{CLOSED}.{row}.{name}")).to_vec())
        })
        .collect()
}

/// Whether the sprayer has a rate controller, as far as was said.
#[must_use]
pub fn has_controller(state: &State) -> crate::Waits {
    let held = state.visit.as_ref().is_some_and(|visit| visit.text("sprayer.held_by") == "rate_controller");
    crate::Waits::when(held)
}

/// What is to be done, in order, those alike told together.
#[must_use]
pub fn to_do(state: &State) -> Vec<report::sheet::Step> {
    let Some(visit) = &state.visit else { return Vec::new() };
    report::make::steps_and_likely(&state.words, &visit.outcome, visit.diagnosed())
}
