//! A pattern across the boom for people: the answer, each shape in a line, what is worth telling.

use calibration::pattern::Across;
use units::{Amount, Arg, Args, Kind, Length};
use words::Words;

use super::Answer;

/// The lines; `wanted` is an overlap with its height.
pub fn lines(answer: &mut Answer, found: &Across, wanted: Option<(f64, Length)>, words: &Words) {
    let pattern = &found.pattern;
    // Never rounded to the limit's other side.
    let percent = |share: f64| Arg::Off { percent: 100.0 * share, limit: Some(100.0 * found.limit.spread) };
    let told = Args::new()
        .with("low", percent(pattern.spread.low))
        .with("high", percent(pattern.spread.high))
        .with("fans", Arg::Count(u32::try_from(pattern.fans.len()).unwrap_or(u32::MAX)))
        .with("verdict", Arg::Verdict(found.verdict));
    answer.main(words.say_with("line-pattern", &told));
    let name = |fan: &str| words.label(&format!("fan-{fan}"));
    let wide = pattern.fans.iter().map(|fan| name(fan.fan).chars().count()).max().unwrap_or(0);
    for fan in &pattern.fans {
        let told = Args::new()
            .with("spread", percent(fan.spread))
            .with("thin", Arg::Deviation(100.0 * (fan.lowest.dose - 1.0)))
            .with("thick", Arg::Deviation(100.0 * (fan.highest.dose - 1.0)));
        let name = name(fan.fan);
        answer.verbatim(format!("  {name:<wide$}  {}", words.say_with("line-pattern_fan", &told)));
    }
    answer.plain("");
    answer.findings(&found.findings, words);
    if let Some((share, height)) = wanted {
        let told = Args::new()
            .with("overlap", Arg::Percent(100.0 * share))
            .with("height", Arg::Amount(Amount::new(height, Kind::Width)));
        answer.plain(words.say_with("line-pattern_overlap", &told));
    }
}
