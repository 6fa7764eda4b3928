//! The other drawings of a visit: the drive, the rate against what is wanted, the tips on the tape.

use calibration::drive::Direction;
use calibration::spacing::Side;
use figures::{
    Allowed, DriveFigure, GapRow, GapShown, Labelled, Mark, MoveShown, RateScale, RunShown, TipOnTape,
    Toward, Way,
};
use units::{Amount, Kind, Quantity, Verdict};
use visit::Visit;
use visit::findings::Outcome;
use words::Words;

use super::said::{count, most_likely, shown};
use crate::sheet::Block;

/// The rate against what is wanted and the label's least.
pub fn rate(words: &Words, visit: &Visit, outcome: &Outcome) -> Vec<Block> {
    let Some(rate) = &outcome.rate else { return Vec::new() };
    let system = words.reader().units;
    let amount = Amount::ranged(&rate.of_mix(), Kind::Rate);
    let (low, high) = amount.range(system).unzip();
    let of = |text: &str, amount: &Amount| Labelled {
        value: amount.value(system),
        label: words.say(text, &[("rate", words.amount(amount).into())]),
    };
    let wanted = visit.target.as_ref().map(|target| Amount::new(target.rate.value(), Kind::Rate));
    let least = visit
        .products
        .iter()
        .filter_map(|product| product.label.least_carrier.as_ref())
        .map(units::AsWritten::value)
        .fold(None, |most: Option<units::VolumePerArea>, one| Some(most.map_or(one, |most| most.max(one))));
    if wanted.is_none() && least.is_none() {
        return Vec::new();
    }
    let against = outcome.target.as_ref().and_then(|target| target.against_intended);
    let share = visit.target.as_ref().and_then(|target| target.within).unwrap_or(super::answers::USUAL_LIMIT);
    let wanted_text = wanted.as_ref().map_or("none".to_string(), |wanted| words.amount(wanted));
    let figure = RateScale {
        id: id(words, "rate"),
        language: words.reader().language.tag().to_string(),
        title: words.label("rate-title"),
        description: words
            .say("rate-describe", &[("rate", words.amount(&amount).into()), ("wanted", wanted_text.into())]),
        value: of("rate-puts_out", &amount),
        low,
        high,
        doubt_label: most_likely(words, &amount).unwrap_or_default(),
        mark: match against.map(|against| (against.verdict, against.percent < 0.0)) {
            Some((Verdict::Outside, true)) => Mark::Low,
            Some((Verdict::Outside, false)) => Mark::High,
            Some((Verdict::CannotTell, _)) => Mark::CannotTell,
            Some((Verdict::Within, _)) | None => Mark::Quiet,
        },
        wanted: wanted.as_ref().map(|wanted| of("rate-wanted", wanted)),
        allowed: wanted.as_ref().map(|wanted| Allowed {
            low: wanted.value(system) * (1.0 - share),
            high: wanted.value(system) * (1.0 + share),
            label: words
                .say("rate-within", &[("percent", words.number(units::tidy_digits(100.0 * share)).into())]),
        }),
        least: least.map(|least| of("rate-label_least", &Amount::new(least, Kind::Rate))),
        most: None,
        ticks: Vec::new(),
    };
    vec![Block::Heading(words.label("rate-title")), Block::Drawing(Box::new(figure.draw()))]
}

/// The timed drive.
pub fn drive(words: &Words, visit: &Visit, outcome: &Outcome) -> Vec<Block> {
    let (Some(speed), Some(facts)) = (&outcome.speed, &visit.drive) else { return Vec::new() };
    let course = shown(words, facts.course.value(), Kind::Length);
    let amount = words.amount(&Amount::ranged(&speed.speed.ranged(), Kind::Speed));
    let runs = speed.runs.iter().enumerate().map(|(index, run)| {
        let way = match run.direction {
            Direction::There => Way::There,
            Direction::Back => Way::Back,
            // Nobody wrote it down: runs are driven there and back by turns (common practice).
            Direction::Unknown if index % 2 == 1 => Way::Back,
            Direction::Unknown => Way::There,
        };
        RunShown {
            id: format!("run-{}", run.number),
            label: words.say("drive-run", &[("number", run.number.into())]),
            way,
            time: shown(words, run.time, Kind::Time),
            speed: shown(words, run.speed, Kind::Speed),
        }
    });
    let figure = DriveFigure {
        id: id(words, "drive"),
        language: words.reader().language.tag().to_string(),
        title: words.label("drive-title"),
        description: words.say(
            "drive-describe",
            &[
                ("runs", count(speed.runs.len()).into()),
                ("course", course.clone().into()),
                ("speed", amount.clone().into()),
            ],
        ),
        length: course,
        runs: runs.collect(),
        mean: amount,
        mean_label: words.say("drive-mean", &[("time", shown(words, speed.mean_time, Kind::Time).into())]),
    };
    vec![Block::Heading(words.label("drive-title")), Block::Drawing(Box::new(figure.draw()))]
}

/// The tips on the tape.
pub fn spacing(words: &Words, outcome: &Outcome) -> Vec<Block> {
    let Some(spacing) = &outcome.spacing else { return Vec::new() };
    let mut place = 0.0;
    let mut tips = vec![TipOnTape { number: 1, place }];
    for gap in &spacing.gaps {
        place += gap.size.si();
        tips.push(TipOnTape { number: gap.number + 1, place });
    }
    let gaps = spacing.gaps.iter().map(|gap| {
        let off = Amount::new(gap.error.value, Kind::Width);
        let wide = gap.error.value.si() > 0.0;
        GapShown {
            id: format!("gap-{}", gap.number),
            length: shown(words, gap.size, Kind::Width),
            off: format!("{}{}", if wide { "+" } else { "" }, words.amount(&off)),
            mark: match (gap.verdict, wide) {
                (Verdict::Outside, true) => Mark::High,
                (Verdict::Outside, false) => Mark::Low,
                (Verdict::CannotTell, _) => Mark::CannotTell,
                (Verdict::Within, _) => Mark::Quiet,
            },
        }
    });
    let moves = spacing.moves.iter().map(|one| MoveShown {
        number: one.tip,
        toward: match one.direction {
            Side::Left => Toward::Left,
            Side::Right => Toward::Right,
        },
        label: words.say("spacing-move", &[("distance", shown(words, one.distance, Kind::Width).into())]),
    });
    let off = spacing.gaps.iter().filter(|gap| gap.verdict == Verdict::Outside).count();
    let figure = GapRow {
        id: id(words, "gaps"),
        language: words.reader().language.tag().to_string(),
        title: words.label("spacing-title"),
        description: words.say(
            "spacing-describe",
            &[("off", count(off).into()), ("all", count(spacing.gaps.len()).into())],
        ),
        tips,
        gaps: gaps.collect(),
        moves: moves.collect(),
        per_row: None,
    };
    let meant = shown(words, spacing.intended, Kind::Width);
    vec![
        Block::Heading(words.say("spacing-heading", &[("spacing", meant.into())])),
        Block::Drawing(Box::new(figure.draw())),
    ]
}

/// A name for a drawing that no other on the sheet has.
fn id(words: &Words, of: &str) -> String {
    format!("{of}-{}", words.reader().language.tag())
}
