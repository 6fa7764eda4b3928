//! The sheet of a visit: each step with the line that says what it found.

use report::make::of_more_than_a_tip;
use units::{Amount, Kind, Verdict, Weight};
use visit::findings::Outcome;
use words::Words;

use super::lines::{rate_line, tank_line};
use crate::opened::{Opened, RUNS};
use crate::plan::{Step, Today};
use crate::state::State;
use crate::usable::FaultIs;

/// A step as the sheet shows it.
#[derive(Clone, Debug, PartialEq)]
pub struct StepShown {
    /// The step.
    pub step: Step,
    /// Its name.
    pub title: String,
    /// What it found, in one line; what it is for where nothing was found yet.
    pub line: String,
    /// How it stands.
    pub mark: Mark,
    /// Whether there is time for it today.
    pub today: Today,
    /// What is still needed before it can tell anything, and facts that do not go together.
    pub in_the_way: Vec<String>,
}

/// How a step stands: told by shape and word, never by colour alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// Nothing is there yet.
    Open,
    /// Something is there, and more is wanted.
    Begun,
    /// Done, and in order.
    InOrder,
    /// Something is to be done about it.
    Act,
    /// It cannot be told yet.
    CannotTell,
}

/// Every step of the open visit, in yard order.
#[must_use]
pub fn steps(state: &State) -> Vec<StepShown> {
    let Some(visit) = &state.visit else { return Vec::new() };
    let words = &state.words;
    state
        .plan
        .steps(visit.kind())
        .into_iter()
        .map(|(step, today)| {
            let (line, mark) = found(state, visit, step);
            let purpose = || words.label(&format!("step-{}-purpose", step.word()));
            StepShown {
                step,
                title: words.label(&format!("step-{}", step.word())),
                line: if line.is_empty() { purpose() } else { line },
                mark,
                today,
                in_the_way: in_the_way(state, visit, step),
            }
        })
        .collect()
}

/// The step behind one, and how it is led to; none behind the last.
#[must_use]
pub fn next_step(state: &State, step: Step) -> Option<(Step, String)> {
    let visit = state.visit.as_ref()?;
    let steps = state.plan.steps(visit.kind());
    let place = steps.iter().position(|(one, _)| *one == step)?;
    // What there is no time for today is passed over; it can still be opened.
    let (next, _) = steps[place + 1..].iter().find(|(_, today)| *today == Today::Planned)?;
    let title = state.words.label(&format!("step-{}", next.word()));
    Some((*next, state.words.say("yard-next_step", &[("step", title.into())])))
}

/// The drawings of a step, as the sheets have them.
#[must_use]
pub fn drawings(state: &State, step: Step) -> Vec<report::sheet::Block> {
    let Some(visit) = &state.visit else { return Vec::new() };
    match step {
        Step::Catch => {
            report::make::cup_blocks(&state.words, &visit.visit, &visit.outcome, visit.diagnosed())
        }
        Step::Spacing => {
            let mut blocks = report::make::spacing_blocks(&state.words, &visit.outcome);
            blocks.extend(report::make::ground_blocks(&state.words, &visit.outcome, figures::Across::Page));
            blocks
        }
        _ => Vec::new(),
    }
}

/// The drawings of a step that a phone has room for.
#[must_use]
pub fn narrow_drawings(state: &State, step: Step) -> Vec<report::sheet::Block> {
    match (step, &state.visit) {
        (Step::Spacing, Some(visit)) => {
            report::make::ground_blocks(&state.words, &visit.outcome, figures::Across::Phone)
        }
        _ => Vec::new(),
    }
}

/// The sections of a visit file that belong to a step.
const fn sections(step: Step) -> &'static [&'static str] {
    match step {
        Step::Machine => &["sprayer"],
        Step::Spacing => &["spacing"],
        Step::Drive => &["drive"],
        Step::Catch => &["catch"],
        Step::Rate => &["target", "refill"],
        Step::Tank => &["product", "job"],
        Step::Repeat => &["setting"],
        Step::Look => &["look"],
        Step::Safe | Step::Change | Step::HandOver => &[],
    }
}

fn in_the_way(state: &State, visit: &Opened, step: Step) -> Vec<String> {
    let words = &state.words;
    let of = |part: &str| {
        // What is asked with the tips' places is told there.
        if matches!(part, "sprayer.fan_angle" | "setting.boom_height") {
            return step == Step::Spacing;
        }
        let section = part.split(['.', '[']).next().unwrap_or_default();
        sections(step).contains(&section)
    };
    let mut told: Vec<String> = visit
        .faults
        .iter()
        .filter(|fault| fault.is == FaultIs::Missing && of(&fault.field))
        .map(|fault| {
            let name = words.label(&format!("field-{}", fault.field.replace('.', "_")));
            words.say("yard-still_needed", &[("what", name.into())])
        })
        .collect();
    told.extend(
        visit.stuck.iter().filter(|error| of(error.part)).map(|error| crate::facts::said(state, error)),
    );
    told
}

/// What a step found, and how it stands.
fn found(state: &State, visit: &Opened, step: Step) -> (String, Mark) {
    let (words, outcome) = (&state.words, &visit.outcome);
    match step {
        Step::Machine => machine(words, visit),
        Step::Safe => safe(words, visit),
        Step::Look => look(words, visit, outcome),
        Step::Spacing => spacing(words, outcome),
        Step::Drive => drive(words, visit, outcome),
        Step::Catch => catch(words, visit, outcome),
        Step::Rate => rate(words, outcome),
        Step::Tank => match outcome.tank {
            Some(_) => (tank_line(words, outcome), Mark::InOrder),
            None => (String::new(), Mark::Open),
        },
        Step::Change => change(words, visit),
        Step::Repeat => match &outcome.setting {
            Some(repeat) if repeat.differ() => (words.label("yard-two_settings"), Mark::Act),
            Some(_) => (setting_line(words, visit), Mark::InOrder),
            None => (String::new(), Mark::Open),
        },
        Step::HandOver => (String::new(), Mark::Open),
    }
}

fn machine(words: &Words, visit: &Opened) -> (String, Mark) {
    let Some(machine) = &visit.visit.machine else {
        let begun = visit.folded.facts.keys().any(|field| field.starts_with("sprayer."));
        return (String::new(), if begun { Mark::Begun } else { Mark::Open });
    };
    let kind = if visit.kind().is_empty() { "boom" } else { visit.kind() };
    let mut parts = vec![
        words.label(&format!("choice-sprayer_kind-{kind}")),
        words.say("yard-tips_count", &[("count", i64::from(machine.tips()).into())]),
    ];
    let spacing = visit.text("sprayer.spacing");
    if !spacing.is_empty() && machine.boom().is_some() {
        parts.push(super::value_said(words, spacing));
    }
    if let Some(tank) = &machine.tank {
        parts.push(words.say("yard-tank_of", &[("tank", super::value_said(words, tank.text()).into())]));
    }
    (parts.join(" · "), Mark::InOrder)
}

/// The cautions of the step, by their keys, in the order of the yard.
pub const CAUTIONS: [&str; 6] =
    ["safe-still", "safe-shaft", "safe-above", "safe-water", "safe-gloves", "safe-signals"];

fn safe(words: &Words, visit: &Opened) -> (String, Mark) {
    let (seen, all) = (visit.made_safe.len(), CAUTIONS.len());
    if seen == 0 {
        return (String::new(), Mark::Open);
    }
    let count = |number: usize| i64::try_from(number).unwrap_or(0);
    let line = words.say("yard-seen_to", &[("seen", count(seen).into()), ("all", count(all).into())]);
    (line, if seen == all { Mark::InOrder } else { Mark::Begun })
}

fn look(words: &Words, visit: &Opened, outcome: &Outcome) -> (String, Mark) {
    let seen = visit.visit.look.len();
    if seen == 0 {
        return (String::new(), Mark::Open);
    }
    let all = visit::record::LookItem::ALL.len();
    let count = |number: usize| i64::try_from(number).unwrap_or(0);
    match outcome.look.len() {
        0 if seen == all => (words.label("yard-look_in_order"), Mark::InOrder),
        0 => {
            let line = words.say("yard-seen_to", &[("seen", count(seen).into()), ("all", count(all).into())]);
            (line, Mark::Begun)
        }
        found => (words.say("yard-look_found", &[("count", count(found).into())]), Mark::Act),
    }
}

fn of_verdict(verdict: Verdict) -> Mark {
    match verdict {
        Verdict::Within => Mark::InOrder,
        Verdict::Outside => Mark::Act,
        Verdict::CannotTell => Mark::CannotTell,
    }
}

fn spacing(words: &Words, outcome: &Outcome) -> (String, Mark) {
    let ground = outcome.pattern.as_ref().and_then(|pattern| pattern.across.as_ref());
    let Some(spacing) = &outcome.spacing else {
        let Some(ground) = ground else { return (String::new(), Mark::Open) };
        let told = units::Args::new()
            .with("height", units::Arg::Amount(Amount::new(ground.height, Kind::Width)))
            .with("verdict", units::Arg::Verdict(ground.verdict));
        return (words.say_with("yard-ground", &told), of_verdict(ground.verdict));
    };
    let first = spacing.findings.iter().min_by_key(|finding| finding.weight != Weight::Act);
    let line = first.map_or_else(|| words.label("yard-spacing_in_order"), |finding| words.finding(finding));
    (line, of_verdict(spacing.verdict))
}

fn drive(words: &Words, visit: &Opened, outcome: &Outcome) -> (String, Mark) {
    let runs = visit.folded.rows.get(RUNS).map_or(0, Vec::len);
    let Some(speed) = &outcome.speed else {
        let begun = runs > 0 || visit.fact("drive.course").is_some();
        return (String::new(), if begun { Mark::Begun } else { Mark::Open });
    };
    let shown = Amount::ranged(&speed.speed.ranged(), Kind::Speed);
    let line = words.say(
        "yard-drove",
        &[("speed", words.amount(&shown).into()), ("runs", i64::try_from(runs).unwrap_or(0).into())],
    );
    let asks = speed.findings.iter().any(|finding| finding.weight == Weight::Act);
    (line, if asks { Mark::Act } else { Mark::InOrder })
}

fn catch(words: &Words, visit: &Opened, outcome: &Outcome) -> (String, Mark) {
    let Some(catch) = &outcome.catch else {
        return (String::new(), if visit.rounds().is_empty() { Mark::Open } else { Mark::Begun });
    };
    let tips = &catch.now().verdicts.summary.tips;
    let standing = report::make::standing(catch);
    let number = |count: usize| i64::try_from(count).unwrap_or(0);
    let line = words.say(
        "yard-caught",
        &[
            ("off", number(standing.off).into()),
            ("open", number(standing.open).into()),
            ("within", number(standing.within).into()),
            ("caught", number(tips.iter().filter(|tip| tip.flow.is_some()).count()).into()),
        ],
    );
    let mark = match (standing.off, standing.open) {
        (1.., _) => Mark::Act,
        (_, 1..) => Mark::CannotTell,
        _ => Mark::InOrder,
    };
    (line, mark)
}

fn rate(words: &Words, outcome: &Outcome) -> (String, Mark) {
    let line = rate_line(words, outcome);
    if line.is_empty() {
        return (line, Mark::Open);
    }
    let against = outcome.target.as_ref().and_then(|target| target.against_intended.as_ref());
    (line, against.map_or(Mark::InOrder, |against| of_verdict(against.verdict)))
}

fn change(words: &Words, visit: &Opened) -> (String, Mark) {
    let outcome = &visit.outcome;
    let acts = outcome.actions.iter().filter(|action| action.finding.weight != Weight::Settle).count();
    // A diagnosis takes a while, so it is looked at here only where it was made already.
    let made = visit.is_diagnosed().then(|| outcome.catch.as_ref().zip(visit.diagnosed())).flatten();
    let more = made.and_then(|(catch, found)| of_more_than_a_tip(catch, found).next());
    if let (0, Some(more)) = (acts, more) {
        return (words.finding(more), Mark::Act);
    }
    let Some(first) = outcome.actions.first() else {
        let told = outcome.rate.is_some() || outcome.catch.is_some();
        return match told {
            true => (words.label("yard-nothing_to_do"), Mark::InOrder),
            false => (String::new(), Mark::Open),
        };
    };
    let line = words.say(
        "yard-to_do",
        &[
            ("count", i64::try_from(outcome.actions.len()).unwrap_or(0).into()),
            ("first", words.finding(&first.finding).into()),
        ],
    );
    (line, if acts > 0 { Mark::Act } else { Mark::CannotTell })
}

fn setting_line(words: &Words, visit: &Opened) -> String {
    let pairs = report::make::setting_pairs(words, &visit.visit, &visit.outcome);
    // The last pair says when to catch again, which is no part of the setting.
    let values: Vec<String> = pairs.into_iter().rev().skip(1).map(|(_, value)| value).collect();
    values.into_iter().rev().collect::<Vec<_>>().join(" · ")
}
