//! The JSON object of a visit; each part is absent where the file has nothing for it.

use calibration::controller::ShownCheck;
use calibration::symptoms::NextStep;
use planning::{Deviation, Judged, RangedAmount, RangedPerArea};
use serde_json::{Map, Value, json};
use units::{Kind, UnitSystem};
use visit::Visit;
use visit::findings::{
    CatchOutcome, ControllerOutcome, Outcome, PatternOutcome, RateOutcome, Repeat, SymptomOutcome,
    TankOutcome,
};
use visit::record::{About, Setting, place_word};
use words::Words;

use super::{finding, findings, number, quantity, ranged};
use crate::command::{catch, load, rate, spacing, speed};

/// The whole object.
pub fn object(visit: &Visit, outcome: &Outcome, words: &Words) -> Value {
    let mut object = Map::new();
    let mut put = |name: &str, value: Option<Value>| {
        if let Some(value) = value {
            object.insert(name.to_string(), value);
        }
    };
    put("visit", about(&visit.about));
    put("setting", outcome.setting.as_ref().map(|repeat| setting(repeat, words)));
    put("look", (!visit.look.is_empty()).then(|| look(visit, outcome, words)));
    put("symptoms", outcome.symptoms.as_ref().map(|part| symptoms(part, words)));
    put("spacing", outcome.spacing.as_ref().map(|part| spacing::object(part, words)));
    put("speed", outcome.speed.as_ref().map(|part| speed::object(part, words)));
    put("catch", outcome.catch.as_ref().map(|part| catch_object(part, words)));
    put("pattern", outcome.pattern.as_ref().map(|part| pattern(part, words)));
    put("rate", outcome.rate.as_ref().map(|part| rate_object(part, words)));
    put("controller", outcome.controller.as_ref().map(|part| controller(part, words)));
    let sets: Vec<Value> = outcome
        .other_sets
        .iter()
        .map(|set| json!({ "tip_set": set.name, "catch": catch_object(&set.catch, words), "findings": findings(&set.findings, words) }))
        .collect();
    put("other_tip_sets", (!sets.is_empty()).then_some(Value::Array(sets)));
    put("target", outcome.target.as_ref().map(|part| target(part, words)));
    put("change", outcome.change.as_ref().map(|part| json!({ "findings": findings(&part.findings, words) })));
    put("tank", outcome.tank.as_ref().map(|part| tank(part, words)));
    put(
        "cost",
        outcome.cost.as_ref().map(|part| {
            json!({
                "over": part.over.value.to_string(),
                "missing": part.missing.value.to_string(),
                "over_percent": number(100.0 * part.shares.over),
                "missing_percent": number(100.0 * part.shares.missing),
                "findings": findings(&part.findings, words),
            })
        }),
    );
    put("actions", Some(actions(outcome, words)));
    Value::Object(object)
}

/// The pattern across the boom; where the boom is too short to tell, what is told of that.
fn pattern(part: &PatternOutcome, words: &Words) -> Value {
    let told: Vec<units::Finding> = part.findings().cloned().collect();
    let mut object = match &part.across {
        Some(across) => super::pattern_object::object(across, None, words),
        None => json!({}),
    };
    object["findings"] = findings(&told, words);
    object
}

fn about(about: &About) -> Option<Value> {
    let fields = [
        ("sprayer", &about.sprayer),
        ("farm", &about.farm),
        ("date", &about.date),
        ("operator", &about.operator),
        ("with", &about.with),
        ("notes", &about.notes),
    ];
    let object: Map<String, Value> = fields
        .iter()
        .filter_map(|(name, text)| Some(((*name).to_string(), Value::from(text.as_ref()?.as_str()))))
        .collect();
    (!object.is_empty()).then_some(Value::Object(object))
}

fn setting(repeat: &Repeat, words: &Words) -> Value {
    let system = words.reader().units;
    json!({
        "drive": setting_fields(&repeat.drive, system),
        "catch": setting_fields(&repeat.catch, system),
        "same": !repeat.differ(),
        "findings": findings(&repeat.findings, words),
    })
}

fn setting_fields(setting: &Setting, system: UnitSystem) -> Value {
    let texts = [
        ("gear", &setting.gear),
        ("engine_speed", &setting.engine_speed),
        ("pto_speed", &setting.pto_speed),
        ("agitation", &setting.agitation),
        ("sections_on", &setting.sections_on),
        ("controller", &setting.controller),
        ("water_in_tank", &setting.water_in_tank),
    ];
    let mut object: Map<String, Value> = texts
        .iter()
        .filter_map(|(name, text)| Some(((*name).to_string(), Value::from(text.as_ref()?.as_str()))))
        .collect();
    if let Some(pressure) = &setting.pressure {
        object.insert("pressure".into(), quantity(pressure.value(), Kind::Pressure, system));
    }
    if let Some(height) = &setting.boom_height {
        object.insert("boom_height".into(), quantity(height.value(), Kind::Width, system));
    }
    if let Some(place) = setting.pressure_read_at {
        object.insert("pressure_read_at".into(), Value::from(place_word(place)));
    }
    Value::Object(object)
}

fn look(visit: &Visit, outcome: &Outcome, words: &Words) -> Value {
    let seen: Map<String, Value> = visit
        .look
        .iter()
        .map(|(item, answer)| {
            let yes = *answer == visit::record::Answer::Yes;
            (item.word().to_string(), Value::from(if yes { "yes" } else { "no" }))
        })
        .collect();
    json!({ "seen": seen, "findings": findings(&outcome.look, words) })
}

fn controller(part: &ControllerOutcome, words: &Words) -> Value {
    let check = |check: &ShownCheck| {
        json!({
            "error_percent": number(check.error_percent),
            "low": number(check.low_percent),
            "high": number(check.high_percent),
            "verdict": check.verdict.word(),
            "factor": number(check.factor),
        })
    };
    json!({
        "flow": part.flow.as_ref().map(check),
        "speed": part.speed.as_ref().map(check),
        "findings": findings(&part.findings, words),
    })
}

fn symptoms(part: &SymptomOutcome, words: &Words) -> Value {
    let causes: Vec<Value> = part
        .ranked
        .causes
        .iter()
        .map(|one| json!({ "code": one.trouble.word(), "chance": number(one.chance) }))
        .collect();
    let (next, stop) = match part.ranked.next {
        NextStep::Check(check) => (Value::from(check.word()), Value::Null),
        NextStep::Settled => (Value::Null, Value::from("settled")),
        NextStep::NothingMore => (Value::Null, Value::from("nothing_more")),
    };
    json!({ "causes": causes, "next": next, "stop": stop, "findings": findings(&part.findings, words) })
}

fn catch_object(part: &CatchOutcome, words: &Words) -> Value {
    let rounds: Vec<Value> = part
        .rounds
        .iter()
        .map(|round| {
            let mut object = catch::round_object(&round.round, &round.verdicts, words);
            object["after"] = Value::from(round.round.kind.word());
            object
        })
        .collect();
    let mut now = rounds[part.current].clone();
    now["rounds"] = Value::Array(rounds);
    now
}

fn rate_object(part: &RateOutcome, words: &Words) -> Value {
    let system = words.reader().units;
    let mut object = rate::one(part.main(), words);
    if let Some(carrier) = &part.carrier {
        object["of_carrier"] = ranged(carrier, Kind::Rate, system);
    }
    if let Some(cleaned) = &part.once_cleaned {
        object["once_cleaned"] = ranged(cleaned, Kind::Rate, system);
    }
    let others: Vec<Value> = part.rates.iter().skip(1).map(|other| rate::one(other, words)).collect();
    if !others.is_empty() {
        object["others"] = Value::Array(others);
    }
    let all: Vec<Value> = part.findings().map(|one| finding(one, words)).collect();
    object["findings"] = Value::Array(all);
    object
}

fn deviation(deviation: &Deviation) -> Value {
    json!({
        "percent": number(deviation.percent),
        "low": number(deviation.low),
        "high": number(deviation.high),
        "verdict": deviation.verdict.word(),
    })
}

fn target(part: &Judged, words: &Words) -> Value {
    let system = words.reader().units;
    let products: Vec<Value> = part
        .products
        .iter()
        .map(|product| {
            let rate = match &product.rate {
                RangedPerArea::Liquid(rate) => ranged(rate, Kind::ProductRate, system),
                RangedPerArea::Dry(rate) => ranged(rate, Kind::MassRate, system),
            };
            json!({ "name": product.name, "put_down": rate })
        })
        .collect();
    json!({
        "against_intended": part.against_intended.as_ref().map(deviation),
        "against_least_carrier": part.against_least_carrier.as_ref().map(deviation),
        "products": products,
        "findings": findings(&part.findings, words),
    })
}

fn tank(part: &TankOutcome, words: &Words) -> Value {
    let system = words.reader().units;
    let products: Vec<Value> = part
        .full
        .products
        .iter()
        .map(|product| {
            let exact = match &product.amount {
                RangedAmount::Liquid(volume) => ranged(volume, Kind::Volume, system),
                RangedAmount::Dry(mass) => ranged(mass, Kind::Mass, system),
            };
            json!({
                "name": product.name,
                "amount": exact,
                "measure": product.measure.as_ref().map(|measure| load::amount(measure.amount, system)),
                "measure_text": product.measure.as_ref().map(|measure| load::parts(measure, words)),
            })
        })
        .collect();
    let mut object = json!({
        "volume": quantity(part.full.volume, Kind::Volume, system),
        "area": ranged(&part.full.area, Kind::Area, system),
        "products": products,
    });
    if let Some(loads) = &part.loads {
        object["job"] = load::object(loads, words);
    }
    object["findings"] = Value::Array(part.findings().map(|one| finding(one, words)).collect());
    object
}

fn actions(outcome: &Outcome, words: &Words) -> Value {
    let system = words.reader().units;
    let list = outcome.actions.iter().map(|action| {
        let mut object =
            json!({ "what": what(action, words), "where": action.at(system), "why": words.finding(&action.finding) });
        object["finding"] = finding(&action.finding, words);
        object
    });
    Value::Array(list.collect())
}

/// What to do: the order, or the finding itself where it says all.
pub fn what(action: &visit::findings::Action, words: &Words) -> String {
    words.action(&action.finding).unwrap_or_else(|| words.finding(&action.finding))
}
