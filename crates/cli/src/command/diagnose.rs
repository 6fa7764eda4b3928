//! `evenswath diagnose`: what is most likely wrong, from a visit file, a file of one test, or a batch of them.

use std::path::Path;

use calibration::catch::Outlet;
use calibration::diagnosis::{Checking, Diagnosed, DiagnosisModel, Priors, Rated, diagnose_and_tell};
use serde_json::{Map, Value};
use units::{Arg, Args, Pressure};
use words::Words;

use super::catch_batch::{check_fields, needed, object, order, share, text};
use super::catch_test::Given;
use super::diagnose_answer::{diagnosed_object, lines};
use super::diagnose_beside::{beside, readings};
use super::input::known;
use crate::args::DiagnoseArgs;
use crate::error::CliError;
use crate::out::Answer;

/// The most bytes read of a file; the reader of visit files refuses more with a word of its own.
const MOST_BYTES: u64 = 1_000_001;

/// The fields of a line.
const KNOWN: &[&str] = &[
    "rated",
    "pressure",
    "time",
    "step",
    "sections",
    "timer",
    "cup_scale",
    "watch",
    "handling",
    "order",
    "density",
    // What is told beside the cups.
    "second",
    "tip_pressure",
    "new_tip",
    "gauge_marks",
    "gauge_rests_at",
    "groups",
    "swapped",
    "seen",
    "looked",
];

/// Works it out.
pub fn run(args: &DiagnoseArgs, words: &Words) -> Result<Answer, CliError> {
    let priors = super::records::learned(&args.records, words)?;
    if let Some(path) = &args.batch {
        return super::batch::run(path, words, |line| {
            Ok((false, diagnosed_object(&of_object(&object(line, KNOWN)?, &priors)?, words)))
        });
    }
    let path = args.file.clone().unwrap_or_default();
    let diagnosed = of_file(&path, &priors, words)?;
    let mut answer = Answer::of(diagnosed_object(&diagnosed, words));
    lines(&diagnosed, &mut answer, words);
    Ok(answer)
}

/// One test as TOML has its `sections` as a list of lists; anything else is a visit file.
fn of_file(path: &Path, priors: &Priors, words: &Words) -> Result<Diagnosed, CliError> {
    let bytes = super::input::bytes(path, MOST_BYTES)?;
    let one_test = std::str::from_utf8(&bytes)
        .ok()
        .and_then(|text| toml::from_str::<Map<String, Value>>(text).ok())
        .filter(|fields| fields.get("sections").is_some_and(Value::is_array));
    if let Some(fields) = one_test {
        check_fields(&fields, KNOWN)?;
        return of_object(&fields, priors);
    }
    let visit = super::visit_check::read_bytes(path, &bytes)?;
    let outcome = super::visit_check::work_out(path, &visit, words)?;
    match visit::findings::diagnosis_with(&visit, &outcome, priors) {
        Ok(Some(diagnosed)) => Ok(diagnosed),
        Ok(None) => Err(CliError::usage("no_cups", Args::new()).at(super::input::place(path))),
        Err(error) => Err(super::visit_check::cannot_be(path, &error)),
    }
}

/// One test out of a line of a batch.
fn of_object(fields: &Map<String, Value>, priors: &Priors) -> Result<Diagnosed, CliError> {
    let Some(Value::Array(sections)) = fields.get("sections") else {
        return Err(CliError::usage("no_sections", Args::new()));
    };
    let tips = readings(sections)?;
    let of_tips = (0_u16..)
        .zip(sections)
        .flat_map(|(section, tips)| core::iter::repeat_n(section, tips.as_array().map_or(0, Vec::len)));
    let given = Given {
        time: needed(fields, "time", "30 s")?,
        step: needed(fields, "step", "1 fl oz")?,
        tips,
        rated: text(fields, "rated")?,
        pressure: text(fields, "pressure")?,
        timer: text(fields, "timer")?,
        shares: [share(fields, "cup_scale")?, share(fields, "watch")?, share(fields, "handling")?],
        density: text(fields, "density")?,
        order: order(fields)?,
        ..Given::default()
    };
    let (mut round, _) = given.round()?;
    for (tip, section) in round.tips.iter_mut().zip(of_tips) {
        tip.section = section;
    }
    given.check_order(&round)?;
    let rated = match given.rated_flow()? {
        None if given.pressure.is_some() => {
            let told = Args::new()
                .with("field", Arg::Text("rated".to_string()))
                .with("example", Arg::Text("0.30 gal/min @ 40 psi".to_string()));
            return Err(CliError::usage("missing_field", told));
        }
        None => None,
        Some(rated) => {
            let pressure = match &given.pressure {
                Some(text) => super::input::positive::<Pressure>("pressure", text)?,
                None => rated.pressure(),
            };
            Some(Rated { rated, pressure })
        }
    };
    let mut model = DiagnosisModel {
        doubts: given.doubts()?,
        priors: priors.clone(),
        order: given.order.clone(),
        ..DiagnosisModel::default()
    };
    beside(fields, &given, &mut round, &mut model)?;
    known("sections", diagnose_and_tell(&round, Outlet::BoomTip, rated, &model, &Checking::default()))
}
