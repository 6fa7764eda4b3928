//! `evenswath rate`: the application rate by whichever method there are readings for.

use calibration::doubt::{DoubtOf, Known};
use calibration::rate::{
    Band, Boomless, BroadcastWidth, CatchOverCourse, Collected, Directed, DistanceRefill, EffectiveSwath,
    FlowSpeedWidth, FromRow, HandWalking, Input, KnownArea, Rate, RateError, per_small_area,
};
use serde_json::{Value, json};
use units::{Amount, Doubted, Finding, Kind, Length, Quantity, UnitSystem, Volume, sensible_doubt};

use super::input::known;
use crate::args::{RateArgs, WidthKind};
use crate::error::CliError;
use crate::out::{self, Answer, findings, ranged, working};

/// Works it out.
pub fn run(args: &RateArgs, system: UnitSystem) -> Result<Answer, CliError> {
    let rates = rates(args)?;
    let mut answer = Answer::of(object(&rates, system));
    let mut told: Vec<Finding> = Vec::new();
    for rate in &rates {
        lines(&mut answer, rate, system);
        // What is said of the treated ground and of the crop alike is told once.
        let new: Vec<Finding> = rate.findings.iter().filter(|one| !told.contains(one)).cloned().collect();
        answer.findings(&new, system);
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
                return Err(CliError::usage(
                    "hand_needs_flow",
                    "a hand sprayer's rate needs --flow and --speed",
                    "or give --used and --area for a sprayed plot",
                ));
            };
            vec![worked(args, HandWalking { flow, speed, width }.rate())?]
        }
    })
}

/// A width that the rate is not worked out with would be passed over in silence; it is refused.
fn which_width(args: &RateArgs, kind: WidthKind) -> Result<(), CliError> {
    let (name, would_do) = match kind {
        WidthKind::Directed if args.width.is_some() => {
            ("--width", "give --row alone: a row's tips serve the row spacing")
        }
        WidthKind::Broadcast | WidthKind::Boomless | WidthKind::Hand if args.row.is_some() => {
            ("--row", "for a band add --kind band; for several tips to a row leave --width out")
        }
        _ => return Ok(()),
    };
    Err(CliError::usage("two_widths", format!("{name} is not used for this kind of rate"), would_do))
}

fn used_over(args: &RateArgs, used: Known<Volume>) -> Result<Rate, CliError> {
    if let Some(area) = &args.area {
        let area = doubted("--area", area, Known::field)?;
        return worked(args, KnownArea { used, area }.rate());
    }
    let Some(distance) = &args.distance else {
        return Err(CliError::usage(
            "used_over_what",
            "--used needs the ground it was used on",
            "give --area, or --distance with --swath",
        ));
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
        CliError::usage(
            "missing_option",
            format!("{name} is missing"),
            "see evenswath rate --help for what goes together",
        )
    })
}

/// A quantity with the doubt its writer gives, or the usual doubt of such a figure.
fn doubted<Q: Quantity>(name: &str, text: &str, usual: impl Fn(Q) -> Known<Q>) -> Result<Known<Q>, CliError> {
    let Doubted { value, either_way } = known(name, units::doubted::<Q>(text))?;
    if !value.is_positive() {
        return Err(CliError::usage(
            "not_positive",
            format!("{name}: \"{}\" must be more than nothing", text.trim()),
            format!("units that would do: {}", Q::DIMENSION.would_do()),
        ));
    }
    Ok(match either_way {
        Some(half) => Known::either_way(value, half, DoubtOf::Given),
        None => usual(value),
    })
}

/// The JSON object of one rate or, for a band, of the treated ground with the crop's beside it.
pub fn object(rates: &[Rate], system: UnitSystem) -> Value {
    let Some((main, others)) = rates.split_first() else { return Value::Null };
    let mut object = one(main, system);
    if let Some(other) = others.first() {
        object["crop_rate"] = ranged(&other.rate, Kind::Rate, system);
    }
    object
}

/// The JSON object of one rate.
pub fn one(rate: &Rate, system: UnitSystem) -> Value {
    let small = per_small_area(&rate.rate).ok();
    json!({
        "rate": ranged(&rate.rate, Kind::Rate, system),
        "method": rate.method.code(),
        "width": { "kind": rate.width.code(), "why": rate.width.why() },
        "small_area": small.map(|small| out::amount(&small.rate, system)),
        "findings": findings(&rate.findings, system),
        "working": working(&rate.working, system),
        "largest_doubt": rate.doubt.largest().map(|share| json!({
            "of": share.of.name(),
            "percent": out::percent(share.relative * units::NORMAL_95),
            "smaller": share.of.smaller(),
        })),
    })
}

fn lines(answer: &mut Answer, rate: &Rate, system: UnitSystem) {
    let amount = Amount::ranged(&rate.rate, Kind::Rate);
    let range = amount.range_text(system).map_or(String::new(), |range| format!(", most likely {range}"));
    answer.main(format!("{}{range}", amount.text(system)));
    if let Ok(small) = per_small_area(&rate.rate) {
        let covers = match system {
            UnitSystem::Us => format!("a gallon covers {}", small.gallon_covers.text(system)),
            UnitSystem::Metric => format!("a litre covers {}", small.litre_covers.text(system)),
        };
        answer.plain(format!("{}; {covers}", small.rate.text(system)));
    }
    answer.plain(format!("width: {}", rate.width.why()));
    if let Some(largest) = rate.doubt.largest() {
        answer.plain(format!(
            "most of the doubt: {} (± {} %); to make it smaller, {}",
            largest.of.name(),
            sensible_doubt(100.0 * largest.relative * units::NORMAL_95),
            largest.of.smaller()
        ));
    }
}
