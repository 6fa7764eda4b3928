//! The JSON forms of the contract: quantities with their unit, ranges, findings, workings.

use serde_json::{Map, Value, json};
use units::{Amount, Arg, Coded, Finding, Kind, Quantity, Ranged, UnitSystem, Weight, Working, tidy_digits};
use words::Words;

/// A bare number at full precision; what is no number becomes null.
pub fn number(value: f64) -> Value {
    serde_json::Number::from_f64(tidy_digits(value)).map_or(Value::Null, Value::Number)
}

/// A share as a bare percentage; what is left of nothing after arithmetic is nothing.
pub fn percent(share: f64) -> Value {
    number(if share.abs() < 1e-12 { 0.0 } else { share * 100.0 })
}

/// A quantity: value and unit.
pub fn quantity<Q: Quantity>(value: Q, kind: Kind, system: UnitSystem) -> Value {
    amount(&Amount::new(value, kind), system)
}

/// A quantity with its 95 % range.
pub fn ranged<Q: Quantity>(value: &Ranged<Q>, kind: Kind, system: UnitSystem) -> Value {
    amount(&Amount::ranged(value, kind), system)
}

/// Any amount: value and unit, with low and high where it has a range.
pub fn amount(amount: &Amount, system: UnitSystem) -> Value {
    let mut object = Map::new();
    object.insert("value".into(), number(amount.value(system)));
    object.insert("unit".into(), Value::from(amount.unit(system).text()));
    if let Some((low, high)) = amount.range(system) {
        object.insert("low".into(), number(low));
        object.insert("high".into(), number(high));
    }
    Value::Object(object)
}

/// Findings in the order they are to be read.
pub fn findings(list: &[Finding], words: &Words) -> Value {
    Value::Array(list.iter().map(|one| finding(one, words)).collect())
}

/// One finding: code, arguments, text, what to do, value, verdict, working. The text and what to do are in the
/// reader's language; all else is the same in every language.
pub fn finding(finding: &Finding, words: &Words) -> Value {
    let system = words.reader().units;
    let mut object = Map::new();
    object.insert("code".into(), Value::from(finding.code()));
    object.insert("weight".into(), Value::from(weight_word(finding.weight)));
    object.insert("args".into(), args(&finding.args(), system));
    object.insert("text".into(), Value::from(words.finding(finding)));
    if let Some(action) = words.action(finding) {
        object.insert("action".into(), Value::from(action));
    }
    if let Some(value) = &finding.value {
        object.insert("value".into(), amount(value, system));
    }
    if let Some(verdict) = finding.verdict {
        object.insert("verdict".into(), Value::from(verdict.word()));
    }
    if let Some(source) = finding.limit_source {
        object.insert("limit_source".into(), Value::from(source));
    }
    if let Some(steps) = &finding.working {
        object.insert("working".into(), working(steps, system));
    }
    Value::Object(object)
}

/// A working: formula, figures, result, source, and the workings it rests on.
pub fn working(working: &Working, system: UnitSystem) -> Value {
    let figures: Map<String, Value> =
        working.figures.iter().map(|figure| (figure.name.to_string(), arg(&figure.value, system))).collect();
    let mut object = Map::new();
    object.insert("code".into(), Value::from(working.code));
    object.insert("formula".into(), Value::from(working.formula));
    object.insert("figures".into(), Value::Object(figures));
    if let Some(result) = &working.result {
        object.insert("result".into(), arg(result, system));
    }
    object.insert("source".into(), Value::from(working.source));
    if !working.steps.is_empty() {
        let steps = working.steps.iter().map(|step| self::working(step, system)).collect();
        object.insert("steps".into(), Value::Array(steps));
    }
    Value::Object(object)
}

fn args(args: &units::Args, system: UnitSystem) -> Value {
    Value::Object(args.iter().map(|(name, value)| ((*name).to_string(), arg(value, system))).collect())
}

fn arg(value: &Arg, system: UnitSystem) -> Value {
    match value {
        Arg::Amount(value) => amount(value, system),
        Arg::Percent(value) | Arg::Deviation(value) | Arg::Doubt(value) | Arg::Number(value) => {
            number(*value)
        }
        Arg::Off { percent, .. } | Arg::DeviationFrom { percent, .. } => number(*percent),
        Arg::Count(count) => Value::from(*count),
        Arg::Tips(tips) => json!(tips),
        Arg::Text(text) | Arg::Money(text) => Value::from(text.as_str()),
        Arg::Word { .. } | Arg::Phrases(_) | Arg::Parts(_) => Value::from(value.text(system)),
        Arg::Verdict(verdict) => Value::from(verdict.word()),
    }
}

fn weight_word(weight: Weight) -> &'static str {
    match weight {
        Weight::Stop => "stop",
        Weight::Act => "act",
        Weight::Settle => "settle",
        Weight::Doubt => "doubt",
        Weight::Note => "note",
    }
}
