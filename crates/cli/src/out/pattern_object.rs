//! The JSON object of a pattern across the boom.

use calibration::pattern::{Across, Helps};
use serde_json::{Value, json};
use sprayer::pattern::{Band, MOVEMENT_ADDS, MOVEMENT_SOURCE};
use units::{Kind, Length};
use words::Words;

use super::{findings, number, percent, quantity, working};

/// The object; `wanted` is an overlap with its height.
pub fn object(found: &Across, wanted: Option<(f64, Length)>, words: &Words) -> Value {
    let system = words.reader().units;
    // What is left of nothing after arithmetic is nothing.
    let width = |length: Length| {
        let length = if length.abs() < Length::metres(1e-9) { Length::ZERO } else { length };
        quantity(length, Kind::Width, system)
    };
    let pattern = &found.pattern;
    let extreme = |dose: Band, under: &[u32]| {
        let mut object = off(dose);
        object["tips"] = json!(under);
        object
    };
    let grooves: Vec<Value> = pattern
        .grooves
        .iter()
        .map(|groove| {
            let mut object = off(groove.dose);
            object["from"] = width(groove.from);
            object["to"] = width(groove.to);
            object["judged"] = Value::from(groove.judged);
            object
        })
        .collect();
    let fans: Vec<Value> = pattern
        .fans
        .iter()
        .map(|fan| {
            json!({
                "shape": fan.fan,
                "spread_percent": percent(fan.spread),
                "lowest_percent": percent(fan.lowest.dose - 1.0),
                "highest_percent": percent(fan.highest.dose - 1.0),
            })
        })
        .collect();
    let tips: Vec<Value> = (1_u32..)
        .zip(found.boom.tips())
        .map(|(number, tip)| json!({ "number": number, "place": width(tip.place), "flow_percent": percent(tip.flow) }))
        .collect();
    let suits: Vec<Value> =
        found.suits.iter().map(|range| json!({ "from": width(range.from), "to": width(range.to) })).collect();
    let mut object = json!({
        "verdict": found.verdict.word(),
        "height": width(found.height),
        "angle": quantity(found.angle, Kind::Angle, system),
        "spread_percent": band(pattern.spread),
        "lowest": extreme(pattern.lowest, &pattern.under_lowest),
        "highest": extreme(pattern.highest, &pattern.under_highest),
        "limit": {
            "spread_percent": percent(found.limit.spread),
            "groove_percent": percent(found.limit.groove),
            "source": found.limit.source,
        },
        "fans": fans,
        "overlap": {
            "wide": width(found.overlap.wide),
            "percent": percent(found.overlap.share),
            "whole_at": width(found.overlap.whole_at),
        },
        "heights": suits,
        "help": help(found, words),
        "field_adds_percent": { "low": number(MOVEMENT_ADDS.0), "high": number(MOVEMENT_ADDS.1), "source": MOVEMENT_SOURCE },
        "tips": tips,
        "grooves": grooves,
        "findings": findings(&found.findings, words),
        "working": working(&found.working, system),
    });
    if let Some((share, height)) = wanted {
        object["overlap"]["wanted"] = json!({ "percent": percent(share), "height": width(height) });
    }
    object
}

fn band(band: Band) -> Value {
    json!({ "low": percent(band.low), "high": percent(band.high) })
}

/// How far a dose is off the mean.
fn off(dose: Band) -> Value {
    json!({ "low_percent": percent(dose.low - 1.0), "high_percent": percent(dose.high - 1.0) })
}

fn help(found: &Across, words: &Words) -> Value {
    let Some(help) = &found.help else { return Value::Null };
    let mut object = json!({ "spread_percent": band(help.spread) });
    let (kind, tips) = match &help.what {
        Helps::Clean(tips) => ("clean", tips.clone()),
        Helps::Change(tip) => ("change", vec![*tip]),
        Helps::Aim(tips) => ("aim", tips.clone()),
        Helps::Move => ("move", Vec::new()),
        Helps::Height(height) => {
            object["height"] = quantity(*height, Kind::Width, words.reader().units);
            ("height", Vec::new())
        }
    };
    object["kind"] = Value::from(kind);
    if !tips.is_empty() {
        object["tips"] = json!(tips);
    }
    object
}
