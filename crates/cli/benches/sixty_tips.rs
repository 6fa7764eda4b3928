//! Sixty tips: the range that the readings alone give, and the same as a line of a batch.
//!
//! `measured_60_tips` goes from the readings to each tip's deviation and range, as `tools/bench/measured_numpy.py` does
//! by general-purpose libraries for the same boom; reading the texts is not timed. Both are held to the same vectors first.
//! `catch_60_tips_json_line` is what the command takes for one line of a long batch, texts, verdicts and writing included.
#![allow(clippy::print_stdout, reason = "a bench prints its figures")]

mod timing;

use std::error::Error;
use std::hint::black_box;
use std::path::{Path, PathBuf};
use std::process::Command;

use calibration::catch::{Catch, DeviationRange, TipCatches, Uncertainties, measured};
use serde_json::{Value, json};
use sprayer::{GroupId, WATER_AT_20_C};
use timing::case;
use units::{Caught, Dimension, Marks, Quantity, Time};

const VECTORS: &str = include_str!("../../calibration/tests/vectors/measured.json");
const CASE: &str = "sixty_tips";
/// Percentages agree to this with the vectors, as in the tests.
const AGREE: f64 = 1e-9;
/// Lines of a batch, enough that starting the program does not count. Chosen.
const LINES: u32 = 500;

fn main() -> Result<(), Box<dyn Error>> {
    let vectors: Value = serde_json::from_str(VECTORS)?;
    let sixty = list(&vectors["cases"])?.iter().find(|case| case["name"] == CASE).ok_or("no such case")?;
    let tips: Vec<TipCatches> = (1..).zip(list(&sixty["tips"])?).map(tip).collect::<Result<_, _>>()?;
    let tips: Vec<&TipCatches> = tips.iter().collect();
    let assumed = &sixty["assumed"];
    let doubts = Uncertainties {
        timer: Time::parse(text(&assumed["timer"])?)?,
        handling: number(&assumed["handling"])?,
        cup_scale: number(&assumed["cup_scale"])?,
        watch: number(&assumed["watch"])?,
    };
    hold(&measured(&tips, WATER_AT_20_C, &doubts), list(&sixty["expected"]["tips"])?)?;
    case("measured_60_tips", 1, || measured(black_box(&tips), WATER_AT_20_C, black_box(&doubts)));

    let batch = Batch::write(sixty)?;
    batch.run()?;
    case("catch_60_tips_json_line", LINES, || batch.run());
    Ok(())
}

fn tip((number, tip): (u32, &Value)) -> Result<TipCatches, Box<dyn Error>> {
    let catches = list(&tip["catches"])?.iter().map(catch).collect::<Result<_, _>>()?;
    Ok(TipCatches { number, group: GroupId(0), section: 0, catches })
}

fn catch(catch: &Value) -> Result<Catch, Box<dyn Error>> {
    let caught = Caught::parse(text(&catch["reading"])?, None)?;
    let marks = Marks::every(units::quantity(text(&catch["step"])?, Dimension::Volume)?)?;
    // Runs are called "run 7".
    let run = catch["run"].as_str().and_then(|run| run.strip_prefix("run ")).map(str::parse).transpose()?;
    Ok(Catch::new(caught, Some(marks), Time::parse(text(&catch["time"])?)?, run)?)
}

fn hold(ranges: &[DeviationRange], expected: &[Value]) -> Result<(), Box<dyn Error>> {
    if ranges.len() != 60 || expected.len() != 60 {
        return Err("not sixty tips".into());
    }
    for (ours, theirs) in ranges.iter().zip(expected) {
        for (ours, name) in [(ours.deviation, "deviation_percent"), (ours.low, "low"), (ours.high, "high")] {
            let theirs = number(&theirs["measured"][name])?;
            if (100.0 * ours - theirs).abs() > AGREE {
                return Err(format!("{name}: {} is not {theirs}", 100.0 * ours).into());
            }
        }
    }
    Ok(())
}

/// A file of lines, each the same sixty tips.
struct Batch(PathBuf);

impl Batch {
    fn write(sixty: &Value) -> Result<Self, Box<dyn Error>> {
        let mut readings = Vec::new();
        for tip in list(&sixty["tips"])? {
            let cups: Vec<&Value> = list(&tip["catches"])?.iter().map(|catch| &catch["reading"]).collect();
            readings.push(json!(cups));
        }
        let first = &sixty["tips"][0]["catches"][0];
        let line = json!({
            "time": first["time"],
            "step": first["step"],
            "limit": "10 %",
            "rated": sixty["against_new"]["rated"],
            "pressure": sixty["against_new"]["pressure"],
            "readings": readings,
        });
        let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join("sixty_tips.jsonl");
        std::fs::write(&path, (0..LINES).map(|_| format!("{line}\n")).collect::<String>())?;
        Ok(Self(path))
    }

    /// Lets the command answer every line.
    fn run(&self) -> Result<(), Box<dyn Error>> {
        let output = Command::new(env!("CARGO_BIN_EXE_evenswath"))
            .args(["catch", "--json", "--batch"])
            .arg(&self.0)
            .output()?;
        let answers = String::from_utf8(output.stdout)?;
        let whole = answers.lines().filter(|answer| answer.contains("\"tips\"")).count();
        if whole == usize::try_from(LINES)? {
            Ok(())
        } else {
            Err(format!("{whole} answers: {answers}").into())
        }
    }
}

fn list(value: &Value) -> Result<&[Value], String> {
    value.as_array().map(Vec::as_slice).ok_or_else(|| format!("{value} is no list"))
}

fn text(value: &Value) -> Result<&str, String> {
    value.as_str().ok_or_else(|| format!("{value} is no text"))
}

fn number(value: &Value) -> Result<f64, String> {
    value.as_f64().ok_or_else(|| format!("{value} is no number"))
}
