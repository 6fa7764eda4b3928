//! The setting to repeat, in pairs of name and value.

use units::{Amount, Kind};
use visit::Visit;
use visit::findings::Outcome;
use visit::record::{NamedTip, Setting, Switch, place_word, setting_said};
use words::Words;

use super::said::{joined, shown};

/// Name and value of everything that brings the same rate again.
pub fn pairs(words: &Words, visit: &Visit, outcome: &Outcome) -> Vec<(String, String)> {
    let Some(repeat) = &outcome.setting else { return Vec::new() };
    let setting = &repeat.drive;
    let mut pairs = Vec::new();
    let mut add = |key: &str, value: Option<String>| {
        if let Some(value) = value.filter(|value| !value.trim().is_empty()) {
            pairs.push((words.label(key), value));
        }
    };
    add("sheet-gear_engine", engine(words, setting));
    add("sheet-pressure", pressure(words, setting));
    add("sheet-speed", speed(words, outcome));
    add("sheet-tips", tips(words, visit));
    add("sheet-agitation", as_set(words, Switch::Agitation, setting.agitation.as_deref()));
    add("sheet-sections_on", as_set(words, Switch::SectionsOn, setting.sections_on.as_deref()));
    add("sheet-controller", as_set(words, Switch::Controller, setting.controller.as_deref()));
    add("sheet-tank", as_set(words, Switch::WaterInTank, setting.water_in_tank.as_deref()));
    add(
        "sheet-boom_height",
        setting.boom_height.as_ref().map(|height| shown(words, height.value(), Kind::Width)),
    );
    add("sheet-catch_again", Some(words.label("sheet-catch_again_when")));
    pairs
}

/// "3rd low, 1700 rpm (PTO 540 rpm)".
pub fn engine(words: &Words, setting: &Setting) -> Option<String> {
    let pto = setting.pto_speed.as_ref().map(|pto| words.say("sheet-pto", &[("speed", pto.clone().into())]));
    let engine = joined(&[setting.engine_speed.as_deref(), pto.as_deref()], " ");
    let all = joined(&[setting.gear.as_deref(), Some(&engine)], ", ");
    Some(all).filter(|all| !all.is_empty())
}

/// "28 psi at the boom".
pub fn pressure(words: &Words, setting: &Setting) -> Option<String> {
    let pressure = setting.pressure.as_ref()?;
    let shown = shown(words, pressure.value(), Kind::Pressure);
    Some(match setting.pressure_read_at {
        Some(place) => format!("{shown} {}", words.label(&format!("read_at-{}", place_word(place)))),
        None => shown,
    })
}

/// "4.96 mph: 28.1 s over 204 ft, 4 runs".
pub fn speed(words: &Words, outcome: &Outcome) -> Option<String> {
    let speed = outcome.speed.as_ref()?;
    let amount = words.amount(&Amount::ranged(&speed.speed.ranged(), Kind::Speed));
    let time = shown(words, speed.mean_time, Kind::Time);
    let runs = super::said::count(speed.runs.len());
    Some(
        words.say(
            "sheet-speed_over",
            &[("speed", amount.into()), ("time", time.into()), ("runs", runs.into())],
        ),
    )
}

/// The tip that is fitted, as the driver knows it.
pub fn tips_short(words: &Words, visit: &Visit) -> Option<String> {
    match visit.machine.as_ref()?.tip.as_ref()? {
        NamedTip::Size(size) => Some(format!("{} ({})", size.name(), colour(words, *size))),
        NamedTip::Rated { .. } => tips(words, visit),
    }
}

/// The colour that tells a size, in a word.
fn colour(words: &Words, size: sprayer::TipSize) -> String {
    words.label(&format!("tip_colour-{}", size.colour().replace([' ', '-'], "_")))
}

/// The tip that is fitted.
pub fn tips(words: &Words, visit: &Visit) -> Option<String> {
    match visit.machine.as_ref()?.tip.as_ref()? {
        NamedTip::Size(size) => {
            let colour = colour(words, *size);
            Some(words.say("sheet-tip_size", &[("size", size.name().into()), ("colour", colour.into())]))
        }
        NamedTip::Rated { flow, pressure } => Some(words.say(
            "sheet-tip_rated",
            &[
                ("flow", shown(words, flow.value(), Kind::Flow).into()),
                ("pressure", shown(words, pressure.value(), Kind::Pressure).into()),
            ],
        )),
    }
}

/// What was typed of a setting: the few usual answers in the reader's words, all else as it was typed.
fn as_set(words: &Words, of: Switch, text: Option<&str>) -> Option<String> {
    Some(words.arg(&setting_said(of, text?)))
}
