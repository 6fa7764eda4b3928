//! The answer at the top of a visit's page: what the sprayer puts out, or what is known of it so far.

use calibration::catch::TipState;
use units::{Amount, Arg, Args, Kind, Verdict};
use visit::Visit;
use visit::findings::{CatchOutcome, Outcome, RateOutcome};
use words::Words;

use super::Answer;

/// What it puts out; where that is not known, the furthest that the readings go.
pub fn puts_out(answer: &mut Answer, visit: &Visit, outcome: &Outcome, words: &Words) {
    if let Some(rate) = &outcome.rate {
        the_rate(answer, visit, outcome, rate, words);
    } else if let Some(none) = outcome.catch.as_ref().filter(|catch| nothing_comes(catch)) {
        let tips = &none.now().verdicts.summary.tips;
        let caught = tips.iter().filter(|tip| tip.state == TipState::Plugged).count();
        answer.main(words.say("page-nothing_comes", &[("tips", caught.into())]));
    } else if let Some(speed) = &outcome.speed {
        let amount = Amount::ranged(&speed.speed.ranged(), Kind::Speed);
        answer.main(words.say("page-drives", &[("speed", words.amount(&amount).into())]));
        most_likely(answer, &amount, words);
        answer.plain(format!("  {}", words.label("page-needs_cups")));
    } else if outcome.catch.is_some() {
        answer.main(words.label("page-needs_drive"));
    } else if let Some(spacing) = outcome.spacing.as_ref() {
        let off = spacing.gaps.iter().filter(|gap| gap.verdict == Verdict::Outside).count();
        let key = match spacing.verdict {
            Verdict::Within => "page-gaps_within",
            Verdict::Outside => "page-gaps_off",
            Verdict::CannotTell => "page-gaps_open",
        };
        answer.main(words.say(key, &[("gaps", spacing.gaps.len().into()), ("off", off.into())]));
    }
}

fn most_likely(answer: &mut Answer, amount: &Amount, words: &Words) {
    if let Some(range) = words.range(amount) {
        answer.plain(format!("  {}", words.say("page-most_likely", &[("range", range.into())])));
    }
}

fn the_rate(answer: &mut Answer, visit: &Visit, outcome: &Outcome, rate: &RateOutcome, words: &Words) {
    let amount = Amount::ranged(&rate.of_mix(), Kind::Rate);
    answer.main(words.say("page-puts_out", &[("rate", words.amount(&amount).into())]));
    most_likely(answer, &amount, words);
    // With tips plugged the rate is as found; what it will be once they run stands beside it.
    if let Some(cleaned) = &rate.once_cleaned {
        let told = Args::new()
            .with("tips", Arg::Tips(rate.plugged.clone()))
            .with("rate", Arg::Amount(Amount::ranged(cleaned, Kind::Rate)));
        answer.plain(format!("  {}", words.say_with("page-as_found", &told)));
    }
    if outcome.setting.as_ref().is_some_and(visit::findings::Repeat::differ) {
        answer.plain(format!("  {}", words.label("page-two_settings")));
    }
    wanted(answer, visit, outcome, words);
}

/// What was wanted, and how far off it is.
fn wanted(answer: &mut Answer, visit: &Visit, outcome: &Outcome, words: &Words) {
    let against = outcome.target.as_ref().and_then(|target| target.against_intended);
    let (Some(target), Some(against)) = (&visit.target, against) else { return };
    // 5 % where nothing else is said, as the judging of it has.
    let limit = units::tidy_digits(100.0 * target.within.unwrap_or(0.05));
    let off = words.arg(&Arg::Off { percent: against.percent, limit: Some(limit) });
    let side = match off.as_str() {
        "0 %" => "page-just_that",
        _ if against.percent < 0.0 => "page-under",
        _ => "page-over",
    };
    let close = match against.verdict {
        Verdict::Within => "page-close_enough",
        Verdict::Outside => "page-too_far_off",
        Verdict::CannotTell => "page-perhaps_close_enough",
    };
    let told = [
        ("wanted", words.amount(&Amount::new(target.rate.value(), Kind::Rate)).into()),
        ("off", words.say(side, &[("off", off.into())]).into()),
        ("close", words.label(close).into()),
        ("limit", words.digits(&format!("{limit} %")).into()),
    ];
    answer.plain(format!("  {}", words.say("page-wanted", &told)));
}

/// Whether cups were held and not one caught anything.
fn nothing_comes(catch: &CatchOutcome) -> bool {
    catch.now().verdicts.summary.tips.iter().all(|tip| tip.state != TipState::Runs)
}
