//! `evenswath pattern`: what each strip of ground gets across the boom, as a band over shapes of fans.

use calibration::pattern::{Across, across};
use sprayer::height_for_overlap;
use sprayer::pattern::{Fan, Grooves, MeasuredFan, PATTERN_LIMIT, PatternError, Shape, SprayBoom, SprayTip};
use units::{Angle, Arg, Args, Length, Quantity, Verdict};
use words::Words;

use super::input::{known, positive, quantity};
use super::visit_check;
use crate::args::PatternArgs;
use crate::error::{CliError, Place};
use crate::out::{Answer, pattern_lines, pattern_object};

/// Works it out.
pub fn run(args: &PatternArgs, words: &Words) -> Result<Answer, CliError> {
    let found = match &args.file {
        Some(file) => of_file(args, file, words)?,
        None => worked_out(boom(args)?, args)?,
    };
    let overlap = args
        .overlap
        .as_ref()
        .map(|text| {
            let share = known("--overlap", units::percent(text))?;
            let height = height_for_overlap(found.angle, found.boom.spacing(), share);
            Ok((share, known("--overlap", height)?))
        })
        .transpose()?;
    let mut answer = Answer::of(pattern_object::object(&found, overlap, words));
    pattern_lines::lines(&mut answer, &found, overlap, words);
    answer.outside = found.verdict == Verdict::Outside;
    Ok(answer)
}

/// The pattern of a visit's boom.
fn of_file(args: &PatternArgs, file: &std::path::Path, words: &Words) -> Result<Across, CliError> {
    let visit = visit_check::read(file)?;
    let outcome = visit_check::work_out(file, &visit, words)?;
    let found = outcome.pattern.and_then(|pattern| pattern.across);
    let found =
        found.ok_or_else(|| CliError::usage("no_pattern", Args::new()).at(super::input::place(file)))?;
    worked_out(found.boom, args)
}

fn worked_out(boom: SprayBoom, args: &PatternArgs) -> Result<Across, CliError> {
    let grooves = Grooves { width: positive("--groove", &args.groove)?, ..Grooves::default() };
    across(boom, &fans(args)?, &grooves, &PATTERN_LIMIT).map_err(|error| refused(&error))
}

/// What the pattern refuses, with the option it came in by.
fn refused(error: &PatternError) -> CliError {
    let option = match error {
        PatternError::NoHeight { .. } => "--height",
        PatternError::Angle { .. } => "--angle",
        PatternError::Flow { .. } => "--flow",
        PatternError::Tilt { .. } => "--tilt",
        PatternError::Twist { .. } => "--twist",
        PatternError::Order { .. } => "--marks",
        PatternError::AllPlugged => "--plugged",
        PatternError::Groove { .. } | PatternError::GrooveWiderThanBoom { .. } => "--groove",
        PatternError::Spacing { .. } => "--spacing",
        PatternError::Tips { .. } | PatternError::NoOverlap { .. } => "--tips",
        PatternError::NothingCollected { .. } | PatternError::Collected { .. } => "--caught",
    };
    CliError::input(option, error)
}

fn fans(args: &PatternArgs) -> Result<Vec<Fan>, CliError> {
    if let (false, Some(groove), Some(height)) =
        (args.caught.is_empty(), &args.caught_groove, &args.caught_height)
    {
        let (groove, height) = (positive("--caught-groove", groove)?, positive("--caught-height", height)?);
        let fan = MeasuredFan::new(&args.caught, groove, height, None).map_err(|error| refused(&error))?;
        return Ok(vec![Fan::Measured(fan)]);
    }
    match &args.shape {
        None => Ok(Fan::tapered()),
        Some(word) => match Shape::named(word) {
            Some(shape) => Ok(vec![Fan::Assumed(shape)]),
            None => {
                let known = Shape::ALL.map(Shape::word).join(", ");
                let told = Args::new()
                    .with("given", Arg::Text(word.trim().to_string()))
                    .with("known", Arg::Text(known));
                Err(CliError::usage("pattern_shape", told).at("--shape"))
            }
        },
    }
}

/// The boom that the options tell of.
fn boom(args: &PatternArgs) -> Result<SprayBoom, CliError> {
    let needed = |text: &Option<String>| text.clone().unwrap_or_default();
    let angle = angle("--angle", &needed(&args.angle))?;
    let height: Length = positive("--height", &needed(&args.height))?;
    let spacing: Length = positive("--spacing", &needed(&args.spacing))?;
    let twist = args.twist.as_ref().map(|text| self::angle("--twist", text)).transpose()?;
    let marks: Result<Vec<Length>, CliError> =
        (1..).zip(&args.marks).map(|(number, text)| quantity(Place::Mark(number), text)).collect();
    let mut places = marks?;
    if places.is_empty() {
        places = (0..args.tips.unwrap_or_default()).map(|number| spacing * f64::from(number)).collect();
    }
    let mut tips: Vec<SprayTip> = places
        .into_iter()
        .map(|place| SprayTip { twist: twist.unwrap_or(Angle::ZERO), ..SprayTip::new(place, height, angle) })
        .collect();
    for number in &args.plugged {
        on(&mut tips, "--plugged", *number)?.flow = 0.0;
    }
    for (option, texts) in
        [("--flow", &args.flow), ("--tilt", &args.tilt), ("--offset", &args.offset), ("--hangs", &args.hangs)]
    {
        for text in texts {
            let (number, value) = numbered(option, text)?;
            let tip = on(&mut tips, option, number)?;
            match option {
                "--flow" => tip.flow = known(option, units::percent(value))?,
                "--tilt" => tip.tilt = signed(option, &in_degrees(value))?,
                "--offset" => tip.offset = signed(option, value)?,
                _ => tip.height = positive(option, value)?,
            }
        }
    }
    SprayBoom::new(tips, spacing).map_err(|error| refused(&error))
}

/// An angle; fans are named by their degrees, so a bare number is taken for them.
fn angle(option: &str, text: &str) -> Result<Angle, CliError> {
    positive(option, &in_degrees(text))
}

fn in_degrees(text: &str) -> String {
    let bare = text.trim();
    if units::decimal(bare.trim_start_matches('-')).is_ok() {
        format!("{bare} deg")
    } else {
        bare.to_string()
    }
}

fn signed<Q: Quantity>(option: &str, text: &str) -> Result<Q, CliError> {
    known(option, units::signed_quantity(text, Q::DIMENSION).map(|written| Q::from_si(written.si())))
}

/// A tip's number and what is given of it: "5=10 deg".
fn numbered<'a>(option: &str, text: &'a str) -> Result<(u32, &'a str), CliError> {
    let told = || Args::new().with("given", Arg::Text(text.trim().to_string()));
    let (number, value) =
        text.split_once('=').ok_or_else(|| CliError::usage("pattern_of_tip", told()).at(option))?;
    let number = number.trim().parse().map_err(|_| CliError::usage("pattern_of_tip", told()).at(option))?;
    Ok((number, value.trim()))
}

fn on<'a>(tips: &'a mut [SprayTip], option: &str, number: u32) -> Result<&'a mut SprayTip, CliError> {
    let count = u32::try_from(tips.len()).unwrap_or(u32::MAX);
    let place = usize::try_from(number).unwrap_or(usize::MAX).checked_sub(1);
    place.and_then(|place| tips.get_mut(place)).ok_or_else(|| {
        let told = Args::new().with("number", Arg::Count(number)).with("tips", Arg::Count(count));
        CliError::usage("pattern_no_such_tip", told).at(option)
    })
}
