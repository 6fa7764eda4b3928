//! The other drawings of a visit: the drive, the rate against what is wanted, the tips on the tape.

use calibration::drive::Direction;
use calibration::pattern::Across as Pattern;
use calibration::spacing::Side;
use figures::{
    Across, Allowed, DriveFigure, GapRow, GapShown, GrooveShown, GroundRow, Labelled, LimitBand, Mark,
    MoveShown, RateScale, RunShown, Spot, TipOnTape, TipOverGround, Toward, Way,
};
use units::{Amount, Arg, Kind, Quantity, Verdict};
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

/// What the ground gets across the boom.
pub fn ground(words: &Words, outcome: &Outcome, across: Across) -> Vec<Block> {
    let Some(found) = outcome.pattern.as_ref().and_then(|pattern| pattern.across.as_ref()) else {
        return Vec::new();
    };
    let mut figure = ground_figure(words, found, across);
    let told = [
        ("height", shown(words, found.height, Kind::Width).into()),
        ("angle", shown(words, found.angle, Kind::Angle).into()),
    ];
    let heading = Block::Heading(words.say("ground-heading", &told));
    if across == Across::Page {
        return vec![heading, Block::Drawing(Box::new(figure.draw()))];
    }
    // On a phone what explains the drawing is text like any other, as long as it needs to be.
    let explains = Block::Text(core::mem::take(&mut figure.doubt_label));
    vec![heading, Block::Drawing(Box::new(figure.draw())), explains]
}

fn ground_figure(words: &Words, found: &Pattern, across: Across) -> GroundRow {
    let pattern = &found.pattern;
    let tips = (1..).zip(found.boom.tips()).map(|(number, tip)| {
        let (from, to) = tip.lies();
        TipOverGround {
            number,
            place: tip.axis().si(),
            fan: (tip.flow > 0.0).then_some((from.si(), to.si())),
        }
    });
    let grooves = pattern.grooves.iter().map(|groove| GrooveShown {
        from: groove.from.si(),
        to: groove.to.si(),
        low: groove.dose.low,
        high: groove.dose.high,
        judged: groove.judged,
    });
    let each = 100.0 * found.limit.groove;
    let off = |dose: f64| words.arg(&Arg::DeviationFrom { percent: 100.0 * (dose - 1.0), limit: each });
    let mark = |act: Mark| match found.verdict {
        Verdict::Within => Mark::Quiet,
        Verdict::CannotTell => Mark::CannotTell,
        Verdict::Outside => act,
    };
    let places = |under: &[u32]| -> Option<f64> {
        let places = under.iter().filter_map(|number| {
            let tip = usize::try_from(*number).ok()?.checked_sub(1)?;
            Some(found.boom.tips().get(tip)?.axis().si())
        });
        let places: Vec<f64> = places.collect();
        (!places.is_empty()).then(|| places.iter().sum::<f64>() / places.len() as f64)
    };
    let spot = |id: &str, under: &[u32], dose: f64, act: Mark| {
        let mark = mark(act);
        let place = places(under).filter(|_| mark != Mark::Quiet)?;
        Some(Spot { id: id.to_string(), place, mark, label: off(dose) })
    };
    let spots = [
        spot("thin", &pattern.under_lowest, pattern.lowest.low, Mark::Low),
        spot("thick", &pattern.under_highest, pattern.highest.high, Mark::High),
    ];
    let limit = |share: f64| words.arg(&Arg::Deviation(100.0 * share));
    GroundRow {
        // Both may stand on one page.
        id: id(words, if across == Across::Phone { "ground-narrow" } else { "ground" }),
        language: words.reader().language.tag().to_string(),
        title: words.label("ground-title"),
        description: found.findings.first().map(|finding| words.finding(finding)).unwrap_or_default(),
        tips: tips.collect(),
        height: found.height.si(),
        grooves: grooves.collect(),
        limit: Some(LimitBand {
            below: Some(found.limit.groove),
            above: Some(found.limit.groove),
            above_label: limit(found.limit.groove),
            label: words.label("ground-mean"),
            below_label: limit(-found.limit.groove),
        }),
        spots: spots.into_iter().flatten().collect(),
        doubt_label: words.label("ground-doubt"),
        across,
    }
}

/// A name for a drawing that no other on the sheet has.
fn id(words: &Words, of: &str) -> String {
    format!("{of}-{}", words.reader().language.tag())
}
