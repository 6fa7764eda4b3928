//! The row of cups as they stood under the boom, with a sign under each that is not in order, their mean and spread.

use calibration::catch::{GroupSummary, TipState, TipSummary};
use units::{Amount, Arg, Args, Kind, Verdict};
use visit::Visit;
use visit::findings::{Outcome, RoundOutcome};
use visit::record::{Coverage, round_said};
use words::Words;

use super::Answer;
use crate::command::catch;

/// The row of cups: numbers, readings, and a sign under each that is not in order; below it mean and spread.
pub fn cups(answer: &mut Answer, visit: &Visit, outcome: &Outcome, words: &Words) {
    let Some(catch) = &outcome.catch else { return };
    let now = catch.now();
    let mut head = vec![
        words.label("page-the_cups"),
        words.arg(&round_said(&now.round.kind)),
        words.amount(&Amount::new(now.round.time, Kind::Time)),
        now.round.unit.as_ref().map(|unit| words.unit(unit)).unwrap_or_default(),
    ];
    // Nobody sits before a hand sprayer, and one cup has no left.
    let hand =
        visit.machine.as_ref().is_some_and(|machine| matches!(machine.coverage, Coverage::Hand { .. }));
    if !hand && now.round.tips.len() > 1 {
        head.push(words.label("page-from_the_left"));
    }
    head.retain(|part| !part.is_empty());
    answer.head(head.join(", "));
    for line in now.verdicts.summary.tips.chunks(CUPS_IN_A_LINE) {
        cup_lines(answer, now, line, words);
    }
    for group in now.verdicts.summary.groups.iter().filter(|group| group.running.len() > 1) {
        answer.plain(format!("  {}", mean(now, group, words)));
    }
    if now
        .verdicts
        .summary
        .tips
        .iter()
        .any(|tip| sign(tip.state, tip.verdict, tip.measured.map(|range| range.deviation)) != " ")
    {
        answer.plain(format!("  {}", words.label("page-signs")));
    }
}

/// Cups in a line, so that it fits a screen 80 letters wide. Our own choice.
const CUPS_IN_A_LINE: usize = 12;

fn cup_lines(answer: &mut Answer, now: &RoundOutcome, tips: &[TipSummary], words: &Words) {
    let [tip, cup] = ["page-tip", "page-cup"].map(|key| words.label(key));
    let first = tip.chars().count().max(cup.chars().count()) + 2;
    let mut rows = [format!("{tip:>first$}"), format!("{cup:>first$}"), " ".repeat(first)];
    let mut section = tips.first().map(|tip| tip.section);
    for tip in tips {
        if section != Some(tip.section) {
            section = Some(tip.section);
            rows.iter_mut().take(2).for_each(|row| row.push_str(" |"));
            rows[2].push_str("  ");
        }
        let facts = now.round.tips.iter().find(|facts| facts.number == tip.number);
        let readings: Vec<&str> = facts
            .iter()
            .flat_map(|facts| &facts.catches)
            .filter_map(|catch| catch.reading().written().terms().first().map(units::Term::number))
            .collect();
        let reading = if readings.is_empty() { "-".to_string() } else { words.digits(&readings.join("+")) };
        let sign = sign(tip.state, tip.verdict, tip.measured.map(|range| range.deviation));
        let wide = reading.chars().count().max(4) + 1;
        rows[0].push_str(&format!("{:>wide$}", tip.number));
        rows[1].push_str(&format!("{reading:>wide$}"));
        rows[2].push_str(&format!("{sign:>wide$}"));
    }
    for row in rows {
        if !row.trim().is_empty() {
            answer.verbatim(row.trim_end());
        }
    }
}

fn sign(state: TipState, verdict: Option<Verdict>, deviation: Option<f64>) -> &'static str {
    match (state, verdict) {
        (TipState::Plugged, _) => "x",
        (TipState::NotCaught, _) => "-",
        (_, Some(Verdict::CannotTell)) => "?",
        (_, Some(Verdict::Outside)) if deviation.unwrap_or(0.0) > 0.0 => "^",
        (_, Some(Verdict::Outside)) => "v",
        _ => " ",
    }
}

/// The mean and the spread of a group; where there are several, of which tips.
fn mean(now: &RoundOutcome, group: &GroupSummary, words: &Words) -> String {
    let mut told = Args::new();
    if let Some(mean) = catch::mean(&now.round, group) {
        told = told.with("mean", Arg::Amount(mean));
    }
    let text = match group.cv_percent {
        Some(cv) => {
            let spread = Arg::Text(format!("{} %", words.fixed(cv, 1)));
            words.say_with("page-mean_spread", &told.with("spread", spread))
        }
        None => words.say_with("page-mean", &told),
    };
    if now.verdicts.summary.groups.len() > 1 {
        let of = words.say_with("page-of_tips", &Args::new().with("tips", Arg::Tips(group.running.clone())));
        format!("{of}: {text}")
    } else {
        text
    }
}
