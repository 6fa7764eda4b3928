//! A diagnosis as JSON and as lines for a person.

use calibration::diagnosis::{BoomParts, Cause, Diagnosed, Middle, NextCheck, TipDiagnosis};
use serde_json::{Map, Value, json};
use units::{Arg, Args, Kind, Pressure, Ranged, Weight};
use words::Words;

use crate::out::{Answer, finding, findings, number, percent, ranged};

/// The JSON object.
pub fn diagnosed_object(diagnosed: &Diagnosed, words: &Words) -> Value {
    let found = &diagnosed.found;
    let sections = (1_u32..).zip(&found.sections).map(|(place, section)| {
        json!({
            "number": place,
            "tips": section.tips,
            "loss_percent": percent(section.loss),
            "low": percent(section.low),
            "high": percent(section.high),
            "probability_restricted": number(section.probability_restricted),
            "probability_shut": number(section.probability_shut),
        })
    });
    let boom = &found.boom;
    let told = found.new_flow.is_some();
    json!({
        "tips": found.tips.iter().map(tip_object).collect::<Vec<_>>(),
        "sections": sections.collect::<Vec<_>>(),
        "boom": {
            "offset_percent": told.then(|| percent(boom.offset)),
            "low": told.then(|| percent(boom.low)),
            "high": told.then(|| percent(boom.high)),
            "probability_off": number(boom.probability_off),
            "drift_percent": boom.drift.map(|(drift, _)| percent(drift)),
            "parts": boom.parts.as_ref().map(|parts| parts_object(parts, words)),
        },
        "next": diagnosed.next.iter().map(|next| next_object(next, words)).collect::<Vec<_>>(),
        "stop": diagnosed.stop.as_ref().map(|stop| finding(stop, words)),
        "findings": findings(&diagnosed.findings, words),
    })
}

/// The lines for a person: what is most likely wrong, then what to look at next.
pub fn lines(diagnosed: &Diagnosed, answer: &mut Answer, words: &Words) {
    answer.main(words.label("line-most_likely_wrong"));
    for one in &diagnosed.findings {
        let text = format!("  {}", words.finding_and_action(one));
        match one.weight {
            Weight::Stop | Weight::Act => answer.act(text),
            _ => answer.plain(text),
        }
    }
    answer.head(words.label("line-look_next"));
    if let Some(stop) = &diagnosed.stop {
        answer.plain(format!("  {}", words.finding_and_action(stop)));
    }
    for next in &diagnosed.next {
        answer.plain(format!("  {} {}", what(next, words), why(next, words)));
    }
}

/// What the boom's offset is made of.
fn parts_object(parts: &BoomParts, words: &Words) -> Value {
    let share = |off: &Middle| json!({ "value": percent(off.middle), "low": percent(off.low), "high": percent(off.high) });
    let pressure = |off: &Middle<Pressure>| {
        let told = Ranged { value: off.middle, low: off.low, high: off.high };
        ranged(&told, Kind::Pressure, words.reader().units)
    };
    json!({
        "set_percent": share(&parts.set),
        "pressure_percent": parts.pressure.as_ref().map(share),
        "pressure_zero": parts.zero.as_ref().map(pressure),
    })
}

fn tip_object(tip: &TipDiagnosis) -> Value {
    let states: Map<String, Value> = Cause::ALL
        .iter()
        .map(|cause| (cause.word().to_string(), number(tip.probability_of(*cause))))
        .collect();
    json!({
        "number": tip.number,
        "states": states,
        "misread": tip.misread.iter().map(|chance| number(*chance)).collect::<Vec<_>>(),
        "at_place": tip.at_place.map(number),
        "misread_beside": tip.misread_beside.iter().map(|chance| number(*chance)).collect::<Vec<_>>(),
    })
}

fn next_object(next: &NextCheck, words: &Words) -> Value {
    let section = next.section.map(|place| place + 1);
    json!({
        "what": next.kind.word(),
        "where": { "tips": next.tips, "section": section },
        "minutes": number(next.minutes),
        "settles": number(next.settles),
        "why": {
            "code": "settles_most",
            "args": { "minutes": number(next.minutes), "settles": number(next.settles) },
            "text": format!("{} {}", what(next, words), why(next, words)),
        },
    })
}

/// What to do, and how it is done safely.
fn what(next: &NextCheck, words: &Words) -> String {
    let place = next.section.map_or(0, |place| place + 1);
    let args = Args::new()
        .with("tips", Arg::Tips(next.tips.clone()))
        .with("section", Arg::Count(u32::try_from(place).unwrap_or(u32::MAX)));
    words.say_with(&format!("check-{}", next.kind.word()), &args)
}

/// What it is worth: the minutes, and in a word how much of what is open it settles at each tip.
fn why(next: &NextCheck, words: &Words) -> String {
    let each = next.settles / next.tips.len().max(1) as f64;
    let much = match each {
        each if each >= MUCH => "much",
        each if each >= SOME => "some",
        _ => "little",
    };
    let told = [("minutes", words.fixed(next.minutes, 1).into()), ("much", much.into())];
    words.say("check-worth", &told)
}

/// What settles this share of an answer at each tip settles a good deal. Our own choice: the likeliest cause is then wrong half
/// as often.
const MUCH: f64 = 0.25;
/// What settles this share may settle it. Our own choice.
const SOME: f64 = 0.08;
