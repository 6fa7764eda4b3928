//! Readings as people read them off a cup, and how far off each tip is.

use calibration::catch::{Change, Round, TipCatches, TipState, TipSummary};
use calibration::verdict::CatchVerdicts;
use units::{Amount, Kind, Unit, Verdict};
use words::{NumberFormat, Words};

/// What was read off the cups of a tip: "14½", "14½, 14"; a dash where none was held under it.
#[must_use]
pub fn reading_text(words: &Words, tip: &TipCatches) -> String {
    let each: Vec<String> = tip
        .catches
        .iter()
        .map(|catch| {
            let terms = catch.reading().written().terms();
            let one = terms.len() == 1;
            let texts: Vec<String> = terms
                .iter()
                .map(|term| {
                    let number = as_on_the_cup(words, term.number(), term.unit());
                    if one { number } else { format!("{number} {}", words.unit(term.unit())) }
                })
                .collect();
            texts.join(" ")
        })
        .collect();
    if each.is_empty() { "–".to_string() } else { each.join(", ") }
}

/// A number as it stands on the cup: quarters of an ounce as fractions, all else as written.
fn as_on_the_cup(words: &Words, number: &str, unit: &Unit) -> String {
    let ounces = matches!(unit.text(), "fl oz" | "oz wt" | "imp fl oz");
    let fraction = [(".25", "¼"), (".5", "½"), (".75", "¾"), (" 1/4", "¼"), (" 1/2", "½"), (" 3/4", "¾")];
    if ounces && words.reader().numbers == NumberFormat::Point {
        for (written, shown) in fraction {
            if let Some(whole) = number.strip_suffix(written)
                && whole.bytes().all(|sign| sign.is_ascii_digit())
            {
                return if whole == "0" { shown.to_string() } else { format!("{whole}{shown}") };
            }
        }
    }
    words.digits(number)
}

/// What the row of cups shows under a tip: its reading; of several cups, what they come to over the usual time.
pub fn shown_reading(words: &Words, round: &Round, tip: &TipCatches, summary: &TipSummary) -> String {
    match (tip.catches.as_slice(), summary.flow) {
        ([], _) => String::new(),
        ([one], _) if one.time() == round.time => reading_text(words, tip),
        (_, Some(flow)) => words.amount_number(&caught(round, flow)),
        _ => reading_text(words, tip),
    }
}

/// What a flow comes to in a cup over the usual time, in the unit the cups were read in.
pub fn caught(round: &Round, flow: units::Flow) -> Amount {
    let volume = flow * round.time;
    let weighed = round.unit.as_ref().is_some_and(|unit| unit.dimension() == units::Dimension::Mass);
    let amount = if weighed {
        Amount::new(round.density * volume, Kind::Mass)
    } else {
        Amount::new(volume, Kind::Cup)
    };
    match &round.unit {
        Some(unit) => amount.shown_in(unit),
        None => amount,
    }
}

/// What is to be said of a tip, as one stable word: plugged, not_caught, high, low, worn, cannot_tell, in_order.
pub fn state(tip: &TipSummary, verdicts: &CatchVerdicts) -> &'static str {
    let worn =
        verdicts.new_judged.iter().any(|new| new.number == tip.number && new.verdict == Verdict::Outside)
            || verdicts
                .advice
                .tips
                .iter()
                .any(|(number, change)| *number == tip.number && *change == Change::Worn);
    match (tip.state, tip.verdict) {
        (TipState::Plugged, _) => "plugged",
        (TipState::NotCaught, _) => "not_caught",
        (TipState::Runs, Some(Verdict::Outside)) => {
            if tip.most_likely().is_some_and(|likely| likely.deviation < 0.0) { "low" } else { "high" }
        }
        (TipState::Runs, _) if worn => "worn",
        (TipState::Runs, Some(Verdict::CannotTell)) => "cannot_tell",
        (TipState::Runs, _) => "in_order",
    }
}
