//! `evenswath symptom`: what is seen, what most likely brings it, and the next check.

use calibration::symptoms::{
    AirChamber, Check, Control, Drive, Likely, NextStep, Outcome, Pumping, Ranked, Seen, Signs, Symptom,
    chance_said, chance_told, check_row, check_said, nothing_more_said, ranked, says_yes,
};
use serde_json::{Value, json};
use units::{Arg, Args, Phrase, Pressure};
use words::Words;

use super::input::{known, maybe};
use super::symptom_table::table;
use crate::args::SymptomArgs;
use crate::error::CliError;
use crate::out::{Answer, number};

/// Causes less likely than this are not told to a person; JSON has them all. Our own choice.
const TOLD_FROM: f64 = 0.03;

/// Works it out.
pub fn run(args: &SymptomArgs, words: &Words) -> Result<Answer, CliError> {
    let signs = signs(args)?;
    let working: Option<Pressure> = maybe("--pressure", args.pressure.as_ref())?;
    if signs == Signs::default() {
        return Ok(table(working, words));
    }
    let found = known("symptom", ranked(&signs))?;
    let mut answer = Answer::of(object(&signs, &found, working, words));
    answer.working.extend(found.causes.first().map(|one| calibration::symptoms::working(&signs, one)));
    lines(&mut answer, &signs, &found, working, words);
    Ok(answer)
}

fn signs(args: &SymptomArgs) -> Result<Signs, CliError> {
    let mut signs = Signs::default();
    for (at, list, seen) in [("symptom", &args.seen, Seen::Present), ("--absent", &args.absent, Seen::Absent)]
    {
        for text in list {
            signs.seen.push((word(at, text, Symptom::WORDS, Symptom::from_word)?, seen));
        }
    }
    for (at, list, outcome) in [
        ("--yes", &args.yes, Outcome::Yes),
        ("--no", &args.no, Outcome::No),
        ("--skip", &args.skip, Outcome::Skipped),
    ] {
        for text in list {
            signs.checked.push((word(at, text, Check::WORDS, Check::from_word)?, outcome));
        }
    }
    signs.pumping = Pumping {
        drive: said("--drive", args.drive.as_ref(), Drive::WORDS, Drive::from_word)?,
        control: said("--control", args.control.as_ref(), Control::WORDS, Control::from_word)?,
        air_chamber: said(
            "--air-chamber",
            args.air_chamber.as_ref(),
            AirChamber::WORDS,
            AirChamber::from_word,
        )?,
    };
    Ok(signs)
}

fn said<T>(
    at: &'static str,
    text: Option<&String>,
    words: &[&str],
    of: impl Fn(&str) -> Option<T>,
) -> Result<Option<T>, CliError> {
    text.map(|text| word(at, text, words, of)).transpose()
}

/// One of a few words.
fn word<T>(
    at: &'static str,
    text: &str,
    words: &[&str],
    of: impl Fn(&str) -> Option<T>,
) -> Result<T, CliError> {
    of(text.trim()).ok_or_else(|| {
        let told = Args::new()
            .with("given", Arg::Text(text.trim().to_string()))
            .with("words", Arg::Text(words.join(", ")));
        CliError::usage("symptom_word", told).at(at)
    })
}

pub(super) fn all(words: &Words, phrases: &[Phrase]) -> String {
    phrases.iter().map(|phrase| words.phrase(phrase)).collect::<Vec<_>>().join(" ")
}

fn object(signs: &Signs, found: &Ranked, working: Option<Pressure>, words: &Words) -> Value {
    let cause = |one: &Likely| {
        json!({
            "code": one.trouble.word(),
            "chance": number(one.chance),
            "text": words.phrase(&one.trouble.said()),
            "action": words.phrase(&one.trouble.remedy()),
        })
    };
    let seen = |(symptom, seen): &(Symptom, Seen)| {
        json!({
            "code": symptom.word(),
            "present": *seen == Seen::Present,
            "text": words.phrase(&symptom.said()),
        })
    };
    let (stop, next) = match found.next {
        NextStep::Check(check) => (Value::Null, check_object(check, found, working, words)),
        NextStep::Settled => ("settled".into(), Value::Null),
        NextStep::NothingMore => ("nothing_more".into(), Value::Null),
    };
    json!({
        "symptoms": signs.seen.iter().map(seen).collect::<Vec<_>>(),
        "causes": found.causes.iter().map(cause).collect::<Vec<_>>(),
        "next": next,
        "stop": stop,
    })
}

/// The next check, with the chance of each of the causes after either answer.
fn check_object(check: Check, found: &Ranked, working: Option<Pressure>, words: &Words) -> Value {
    let row = check_row(check);
    let after = |yes: bool| {
        let weight = |one: &Likely| {
            let share = says_yes(check, one.trouble).share();
            one.chance * if yes { share } else { 1.0 - share }
        };
        let sum: f64 = found.causes.iter().map(weight).sum();
        let best = found.causes.iter().max_by(|one, other| weight(one).total_cmp(&weight(other)));
        best.map_or(
            Value::Null,
            |one| json!({"code": one.trouble.word(), "chance": number(weight(one) / sum)}),
        )
    };
    json!({
        "check": check.word(),
        "before": row.before.iter().map(|before| before.word()).collect::<Vec<_>>(),
        "text": all(words, &check_said(check, working)),
        "minutes": number(row.minutes),
        "costs": row.costs.word(),
        "risk": row.risk.word(),
        "source": row.source,
        "likeliest_after_yes": after(true),
        "likeliest_after_no": after(false),
    })
}

fn lines(answer: &mut Answer, signs: &Signs, found: &Ranked, working: Option<Pressure>, words: &Words) {
    let seen = signs.seen.iter().filter(|(_, seen)| *seen == Seen::Present);
    let seen: Vec<Phrase> = seen.map(|(symptom, _)| symptom.said()).collect();
    answer.plain(words.say_with("line-symptoms_seen", &Args::new().with("seen", Arg::Phrases(seen))));
    answer.head(words.label("line-most_likely_wrong"));
    for one in found.causes.iter().filter(|one| one.chance >= TOLD_FROM) {
        let told = Args::new()
            .with("cause", Arg::Phrases(vec![one.trouble.said()]))
            .with("how", Arg::Phrases(vec![chance_said(one.chance)]))
            .with("chance", chance_told(one.chance));
        answer.plain(format!("  - {}", words.say_with("line-symptom_cause", &told)));
    }
    let first = found.causes.first().map(|one| words.phrase(&one.trouble.remedy())).unwrap_or_default();
    match found.next {
        NextStep::Check(check) => {
            let minutes = words.fixed(check_row(check).minutes, 0);
            answer.head(words.say("line-symptom_next", &[("minutes", minutes.into())]));
            answer.plain(format!("  {}", all(words, &check_said(check, working))));
            let how = words.say("line-symptom_answer", &[("check", check.word().into())]);
            answer.plain(format!("  {how}"));
        }
        NextStep::Settled => {
            answer.head(words.label("line-symptom_remedy"));
            answer.act(format!("  {first}"));
        }
        NextStep::NothingMore => {
            answer.head(words.label("line-symptom_stop"));
            answer.act(format!("  {}", words.phrase(&nothing_more_said())));
            answer.plain(format!("  {first}"));
        }
    }
}
