//! The row of cups as they stood under the boom, with a sign under each that is not in order, their mean and spread.

use calibration::catch::{GroupSummary, TipState, TipSummary};
use units::{Amount, Arg, Kind, UnitSystem, Verdict};
use visit::Visit;
use visit::findings::{Outcome, RoundOutcome};
use visit::record::Coverage;

use super::Answer;

/// The row of cups: numbers, readings, and a sign under each that is not in order; below it mean and spread.
pub fn cups(answer: &mut Answer, visit: &Visit, outcome: &Outcome, system: UnitSystem) {
    let Some(catch) = &outcome.catch else { return };
    let now = catch.now();
    let time = Amount::new(now.round.time, Kind::Time).text(system);
    let unit = now.round.unit.as_ref().map_or("", units::Unit::text);
    // Nobody sits before a hand sprayer, and one cup has no left.
    let hand =
        visit.machine.as_ref().is_some_and(|machine| matches!(machine.coverage, Coverage::Hand { .. }));
    let side = if hand || now.round.tips.len() < 2 { "" } else { ", from the left as you sit" };
    let words = ["The cups", now.round.kind.word(), &time, unit];
    let words: Vec<&str> = words.into_iter().filter(|word| !word.is_empty()).collect();
    answer.head(format!("{}{side}", words.join(", ")));
    for line in now.verdicts.summary.tips.chunks(CUPS_IN_A_LINE) {
        cup_lines(answer, now, line);
    }
    for group in now.verdicts.summary.groups.iter().filter(|group| group.running.len() > 1) {
        answer.plain(format!("  {}", mean(now, group, system)));
    }
    if now
        .verdicts
        .summary
        .tips
        .iter()
        .any(|tip| sign(tip.state, tip.verdict, tip.measured.map(|range| range.deviation)) != " ")
    {
        answer
            .plain("  ^ too much   v too little   x plugged   ? cannot be told from this cup   - not caught");
    }
}

/// Cups in a line, so that it fits a screen 80 letters wide. Our own choice.
const CUPS_IN_A_LINE: usize = 12;

fn cup_lines(answer: &mut Answer, now: &RoundOutcome, tips: &[TipSummary]) {
    let mut rows = ["  tip".to_string(), "  cup".to_string(), "     ".to_string()];
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
        let reading = if readings.is_empty() { "-".to_string() } else { readings.join("+") };
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
fn mean(now: &RoundOutcome, group: &GroupSummary, system: UnitSystem) -> String {
    let of = if now.verdicts.summary.groups.len() > 1 {
        format!("tips {}: ", Arg::Tips(group.running.clone()).text(system))
    } else {
        String::new()
    };
    let caught = group.mean.unwrap_or_default() * now.round.time;
    let unit = now.round.unit.as_ref();
    let weighed = unit.is_some_and(|unit| unit.dimension() == units::Dimension::Mass);
    let amount = if weighed {
        Amount::new(now.round.density * caught, Kind::Mass)
    } else {
        Amount::new(caught, Kind::Cup)
    };
    let amount = unit.map_or(amount.clone(), |unit| amount.shown_in(unit));
    let spread = group.cv_percent.map_or(String::new(), |cv| format!(", spread (CV) {cv:.1} %"));
    format!("{of}mean {}{spread}", amount.text(system))
}
