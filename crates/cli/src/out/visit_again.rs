//! How to get the same again: the setting and the speed of the drive.

use units::{Amount, Arg, Args, Kind};
use visit::findings::Outcome;
use visit::record::{Setting, Switch, place_word, setting_said};
use words::Words;

use super::Answer;

/// How the sprayer was set on the drive, one thing a line, and when to catch again.
pub fn again(answer: &mut Answer, outcome: &Outcome, words: &Words) {
    let Some(repeat) = &outcome.setting else { return };
    answer.head(words.label("page-same_again"));
    let mut parts = setting(&repeat.drive, words);
    if let Some(speed) = &outcome.speed {
        let told = Args::new()
            .with("speed", Arg::Amount(Amount::ranged(&speed.speed.ranged(), Kind::Speed)))
            .with("time", Arg::Amount(Amount::new(speed.mean_time, Kind::Time)))
            .with("runs", Arg::Count(u32::try_from(speed.runs.len()).unwrap_or(u32::MAX)));
        parts.push(words.say_with("page-speed", &told));
    }
    for part in parts {
        answer.plain(format!("  {part}"));
    }
    answer.plain(format!("  {}", words.label("page-catch_again")));
}

fn setting(setting: &Setting, words: &Words) -> Vec<String> {
    let said = |key: &str, arg: Arg| words.say_with(key, &Args::new().with("as", arg));
    let typed = |key: &str, text: &Option<String>| text.clone().map(|text| said(key, Arg::Text(text)));
    let switch = |key: &str, of: Switch, text: &Option<String>| {
        text.as_ref().map(|text| said(key, setting_said(of, text)))
    };
    let pressure = setting.pressure.as_ref().map(|pressure| {
        let shown = words.amount(&Amount::new(pressure.value(), Kind::Pressure));
        match setting.pressure_read_at {
            Some(place) => format!("{shown} {}", words.label(&format!("read_at-{}", place_word(place)))),
            None => shown,
        }
    });
    let height = setting.boom_height.as_ref();
    let height =
        height.map(|height| said("page-boom_height", Arg::Amount(Amount::new(height.value(), Kind::Width))));
    let parts = [
        typed("page-gear", &setting.gear),
        typed("page-engine", &setting.engine_speed),
        typed("page-pto", &setting.pto_speed),
        pressure,
        switch("page-agitation", Switch::Agitation, &setting.agitation),
        switch("page-sections_on", Switch::SectionsOn, &setting.sections_on),
        switch("page-controller", Switch::Controller, &setting.controller),
        switch("page-tank", Switch::WaterInTank, &setting.water_in_tank),
        height,
    ];
    parts.into_iter().flatten().collect()
}
