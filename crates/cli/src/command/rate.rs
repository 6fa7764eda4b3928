//! `evenswath rate`: the application rate by whichever method there are readings for.

use calibration::doubt::{DoubtOf, Known};
use calibration::rate::{
    Band, Boomless, BroadcastWidth, CatchOverCourse, Collected, Directed, DistanceRefill, EffectiveSwath,
    FlowSpeedWidth, FromRow, HandWalking, Input, KnownArea, Rate, RateError, per_small_area,
};
use serde_json::{Value, json};
use units::{Amount, Arg, Args, Doubted, Finding, Kind, Length, Quantity, UnitSystem, Volume};
use words::Words;

use super::input::{known, not_positive};
use crate::args::{RateArgs, WidthKind};
use crate::error::CliError;
use crate::out::{self, Answer, findings, ranged, with_range, working};

/// Works it out.
pub fn run(args: &RateArgs, words: &Words) -> Result<Answer, CliError> {
    let rates = rates(args)?;
    let mut answer = Answer::of(object(&rates, words));
    let mut told: Vec<Finding> = Vec::new();
    for rate in &rates {
        lines(&mut answer, rate, words);
        // What is said of the treated ground and of the crop alike is told once.
        let new: Vec<Finding> = rate.findings.iter().filter(|one| !told.contains(one)).cloned().collect();
        answer.findings(&new, words);
        answer.why(rate.working.clone());
        told.extend(new);
    }
    Ok(answer)
}

fn rates(args: &RateArgs) -> Result<Vec<Rate>, CliError> {
    if let Some(used) = &args.used {
        let used = doubted("--used", used, Known::refilled)?;
        return used_over(args, used).map(|rate| vec![rate]);
    }
    let collected = if let Some(text) = &args.catch {
        let caught: Known<Volume> = doubted("--catch", text, |volume| Known::in_cup(volume, None))?;
        let course = doubted("--course", given("--course", args.course.as_ref())?, Known::taped_course)?;
        Collected::over_course(caught, course, None)
    } else {
        let flow = doubted("--flow", given("--flow", args.flow.as_ref())?, Known::flow_as_given)?;
        let speed = doubted("--speed", given("--speed", args.speed.as_ref())?, Known::speed_as_given)?;
        Collected::Flow { flow, speed }
    };
    by_kind(args, collected)
}

fn by_kind(args: &RateArgs, collected: Collected) -> Result<Vec<Rate>, CliError> {
    let width = |known_as: fn(Length) -> Known<Length>| {
        doubted("--width", given("--width", args.width.as_ref())?, known_as)
    };
    let from = args.tips_per_row.map_or(FromRow::AllTips, FromRow::OneOf);
    let kind = if args.row.is_some() && args.width.is_none() { WidthKind::Directed } else { args.kind };
    which_width(args, kind)?;
    Ok(match kind {
        WidthKind::Broadcast => {
            let width = BroadcastWidth::AsGiven(width(Known::tip_spacing)?);
            let rate = match collected {
                Collected::Flow { flow, speed } => FlowSpeedWidth { flow, speed, width }.rate(),
                Collected::OverCourse { caught, course, timing } => {
                    CatchOverCourse { caught, course, timing, width }.rate()
                }
            };
            vec![worked(args, rate)?]
        }
        WidthKind::Band => {
            let rows = doubted("--row", given("--row", args.row.as_ref())?, Known::rows)?;
            let rate = worked(args, Band { collected, from, band: width(Known::band)?, rows }.rate())?;
            vec![rate.treated, rate.crop]
        }
        WidthKind::Directed => {
            let rows = doubted("--row", given("--row", args.row.as_ref())?, Known::rows)?;
            vec![worked(args, Directed { collected, from, rows }.rate())?]
        }
        WidthKind::Boomless => {
            let swath = EffectiveSwath::Given(width(Known::swath_by_sight)?);
            vec![worked(args, Boomless { collected, swath }.rate())?]
        }
        WidthKind::Hand => {
            let width = width(Known::swath_by_sight)?;
            let Collected::Flow { flow, speed } = collected else {
                return Err(CliError::usage("hand_needs_flow", Args::new()));
            };
            vec![worked(args, HandWalking { flow, speed, width }.rate())?]
        }
    })
}

/// A width that the rate is not worked out with would be passed over in silence; it is refused.
fn which_width(args: &RateArgs, kind: WidthKind) -> Result<(), CliError> {
    match kind {
        WidthKind::Directed if args.width.is_some() => {
            Err(CliError::usage("two_widths", Args::new()).case("width"))
        }
        WidthKind::Broadcast | WidthKind::Boomless | WidthKind::Hand if args.row.is_some() => {
            Err(CliError::usage("two_widths", Args::new()).case("row"))
        }
        _ => Ok(()),
    }
}

fn used_over(args: &RateArgs, used: Known<Volume>) -> Result<Rate, CliError> {
    if let Some(area) = &args.area {
        let area = doubted("--area", area, Known::field)?;
        return worked(args, KnownArea { used, area }.rate());
    }
    let Some(distance) = &args.distance else {
        return Err(CliError::usage("used_over_what", Args::new()));
    };
    let distance = doubted("--distance", distance, Known::taped_course)?;
    let swath = doubted("--swath", given("--swath", args.swath.as_ref())?, Known::swath)?;
    worked(args, DistanceRefill { used, distance, swath }.rate())
}

/// A rate, or which option is at fault; a width with the text as it was typed.
fn worked<T>(args: &RateArgs, rate: Result<T, RateError>) -> Result<T, CliError> {
    rate.map_err(|error| {
        let option = match &error {
            RateError::Width { what: Input::Rows, .. } => ("--row", &args.row),
            RateError::Width { .. } if args.swath.is_some() => ("--swath", &args.swath),
            RateError::Width { .. } => ("--width", &args.width),
            _ => ("", &None),
        };
        match option {
            (name, Some(text)) => CliError::as_given(name, text, &error),
            (_, None) => CliError::input("", &error),
        }
    })
}

fn given<'a>(name: &str, text: Option<&'a String>) -> Result<&'a str, CliError> {
    text.map(String::as_str).ok_or_else(|| {
        CliError::usage("missing_option", Args::new().with("option", Arg::Text(name.to_string())))
    })
}

/// A quantity with the doubt its writer gives, or the usual doubt of such a figure.
fn doubted<Q: Quantity>(name: &str, text: &str, usual: impl Fn(Q) -> Known<Q>) -> Result<Known<Q>, CliError> {
    let Doubted { value, either_way } = known(name, units::doubted::<Q>(text))?;
    if !value.is_positive() {
        return Err(not_positive(name, text, Q::DIMENSION));
    }
    Ok(match either_way {
        Some(half) => Known::either_way(value, half, DoubtOf::Given),
        None => usual(value),
    })
}

/// The JSON object of one rate or, for a band, of the treated ground with the crop's beside it.
pub fn object(rates: &[Rate], words: &Words) -> Value {
    let Some((main, others)) = rates.split_first() else { return Value::Null };
    let mut object = one(main, words);
    if let Some(other) = others.first() {
        object["crop_rate"] = ranged(&other.rate, Kind::Rate, words.reader().units);
    }
    object
}

/// The JSON object of one rate.
pub fn one(rate: &Rate, words: &Words) -> Value {
    let system = words.reader().units;
    let small = per_small_area(&rate.rate).ok();
    json!({
        "rate": ranged(&rate.rate, Kind::Rate, system),
        "method": rate.method.code(),
        "width": { "kind": rate.width.code(), "why": words.arg(&rate.width.why_word()) },
        "small_area": small.map(|small| out::amount(&small.rate, system)),
        "findings": findings(&rate.findings, words),
        "working": working(&rate.working, system),
        "largest_doubt": rate.doubt.largest().map(|share| json!({
            "code": share.of.code(),
            "of": words.arg(&share.of.word()),
            "percent": out::percent(share.relative * units::NORMAL_95),
            "smaller": words.arg(&share.of.smaller_word()),
        })),
    })
}

fn lines(answer: &mut Answer, rate: &Rate, words: &Words) {
    answer.main(with_range(words, &Amount::ranged(&rate.rate, Kind::Rate)));
    if let Ok(small) = per_small_area(&rate.rate) {
        let (key, covers) = match words.reader().units {
            UnitSystem::Us => ("line-gallon_covers", small.gallon_covers),
            UnitSystem::Metric => ("line-litre_covers", small.litre_covers),
        };
        let told = Args::new().with("rate", Arg::Amount(small.rate)).with("area", Arg::Amount(covers));
        answer.plain(words.say_with(key, &told));
    }
    answer.plain(words.say_with("line-width", &Args::new().with("why", rate.width.why_word())));
    if let Some(largest) = rate.doubt.largest() {
        let told = Args::new()
            .with("of", largest.of.word())
            .with("doubt", Arg::Doubt(100.0 * largest.relative * units::NORMAL_95))
            .with("smaller", largest.of.smaller_word());
        answer.plain(words.say_with("line-most_of_doubt", &told));
    }
}
