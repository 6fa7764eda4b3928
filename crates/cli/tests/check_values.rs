//! Every published figure of `check-values/check-values.tsv`, worked out by the program's own functions.
//!
//! For each row: the answer comes out, what the source printed lies as near to it as the row says, and a misprint does
//! not come out. Where we differ from a source on purpose, the row stands in a table with the reason
//! (`check_values/differences.rs`); a row that stands there without need fails as well.
#![allow(clippy::panic)] // a test fails by panicking

#[path = "check_values/boom.rs"]
mod boom;
#[path = "check_values/carrier.rs"]
mod carrier;
#[path = "check_values/common_practice.rs"]
mod common_practice;
#[path = "check_values/differences.rs"]
mod differences;
#[path = "check_values/drive.rs"]
mod drive;
#[path = "check_values/givens.rs"]
mod givens;
#[path = "check_values/ground.rs"]
mod ground;
#[path = "check_values/product.rs"]
mod product;
#[path = "check_values/rate.rs"]
mod rate;
#[path = "check_values/table.rs"]
mod table;
#[path = "check_values/tank.rs"]
mod tank;
#[path = "check_values/tips.rs"]
mod tips;

use std::collections::BTreeSet;
use std::error::Error;

use differences::{OWN_CONSTANT, PRINTED_OTHERWISE, reason};
use givens::{Found, Givens};
use table::{NOT_USABLE, Row, row_of, rows};

/// What a step of a test gives; any error of the library fails the row with its own words.
type Outcome<T> = Result<T, Box<dyn Error>>;

/// One kind of calculation.
type Calculation = fn(&Givens) -> Outcome<Found>;

/// Fewer used rows than these would mean that the table was cut.
const FEWEST_ROWS: usize = 150;
/// Answers are written with twelve digits, and ours must come out to nine of them.
const AGREES: f64 = 1e-9;
/// Room for binary arithmetic where a printed value lies exactly as far off as it may.
const SLACK: f64 = 1e-12;

/// Every calculation with its name in the table.
fn calculations() -> impl Iterator<Item = (&'static str, Calculation)> {
    [
        ground::CALCULATIONS,
        drive::CALCULATIONS,
        rate::CALCULATIONS,
        tips::CALCULATIONS,
        boom::CALCULATIONS,
        carrier::CALCULATIONS,
        tank::CALCULATIONS,
        product::CALCULATIONS,
    ]
    .into_iter()
    .flatten()
    .copied()
}

/// What our functions make of a row, in the unit of its answer.
fn ours(row: &Row) -> Outcome<f64> {
    let calculation = calculations().find(|(name, _)| *name == row.calc);
    let (_, calculation) = calculation.ok_or_else(|| format!("there is no calculation {}", row.calc))?;
    let given = Givens::read(row.given)?;
    let found = calculation(&given)?;
    let unused = given.unused();
    if !unused.is_empty() {
        return Err(format!("nobody asked for {}", unused.join(", ")).into());
    }
    let unit = row.answer()?.unit;
    if found.measures != unit.measures {
        return Err(format!("found {:?}, the answer is {:?}", found.measures, unit.measures).into());
    }
    Ok(found.value / unit.factor)
}

/// Whether two values are the same to the digits an answer is written with.
fn agrees(ours: f64, answer: f64) -> bool {
    (ours - answer).abs() <= AGREES * answer.abs()
}

/// What is wrong with a row, if anything.
fn complaint(row: &Row) -> Outcome<Option<String>> {
    let (ours, answer, within) = (ours(row)?, row.answer()?.number, row.within()?);
    let unit = row.answer.split_once(' ').map_or("", |(_, unit)| unit);
    if !ours.is_finite() {
        return Ok(Some(format!("{ours} {unit} came out")));
    }
    let differs = reason(OWN_CONSTANT, row.id);
    if differs.is_none() && !agrees(ours, answer) {
        return Ok(Some(format!("{ours} {unit} came out, not {}", row.answer)));
    }
    if let Some(why) = differs {
        if agrees(ours, answer) {
            return Ok(Some(format!(
                "no longer a DIFFERENCE: {} came out; it stood there because {why}",
                row.answer
            )));
        }
        if (ours - answer).abs() > within + SLACK {
            return Ok(Some(format!(
                "{ours} {unit} came out; even as a DIFFERENCE not within {within} of {answer}"
            )));
        }
    }
    if let Some(printed) = row.printed()?
        && (printed - ours).abs() > within + SLACK
    {
        return Ok(Some(format!(
            "{ours} {unit} came out, not within {within} of {}, as printed",
            row.printed
        )));
    }
    if let Some(misprint) = row.misprint()?
        && (misprint - ours).abs() <= within
    {
        return Ok(Some(format!("the misprint {} came out: {ours} {unit}", row.not_equal)));
    }
    Ok(None)
}

fn fail_with(complaints: &[String]) {
    assert!(complaints.is_empty(), "{} rows are wrong:\n{}", complaints.len(), complaints.join("\n"));
}

#[test]
fn expected_from_every_published_row() -> Outcome<()> {
    let (usable, unusable): (Vec<Row>, Vec<Row>) =
        rows()?.into_iter().partition(|row| row.calc != NOT_USABLE);
    let mut complaints = Vec::new();
    for row in &usable {
        let found = complaint(row).unwrap_or_else(|error| Some(error.to_string()));
        complaints.extend(found.map(|what| format!("{} ({}): {what}", row.id, row.source)));
    }
    for row in &unusable {
        if row.note.is_empty() {
            complaints.push(format!("{} ({}): not usable, and nobody says why", row.id, row.source));
        }
    }
    fail_with(&complaints);
    assert!(usable.len() >= FEWEST_ROWS, "only {} rows were used", usable.len());
    Ok(())
}

#[test]
fn a_row_that_is_wrong_is_complained_of() -> Outcome<()> {
    let (row, misprinted) = (row_of("T02-07")?, row_of("T02-03")?);
    let differing = row_of("T05-16")?;
    for (what, row, words) in [
        ("nothing", row, ""),
        ("the answer", Row { answer: "200.001 L/ha", ..row }, "came out, not 200.001 L/ha"),
        ("the unit", Row { answer: "200 L/min", ..row }, "the answer is"),
        ("what was printed", Row { printed: "201 L/ha", ..row }, "as printed"),
        ("the unit printed", Row { printed: "200 gal/ac", ..row }, "in another unit"),
        ("a given", Row { given: "flow=1.3 L/min; speed=7.8 km/h; width=0.6 m", ..row }, "came out, not"),
        ("a given too few", Row { given: "flow=1.3 L/min; speed=7.8 km/h", ..row }, "no width is given"),
        (
            "a given too many",
            Row { given: "flow=1.3 L/min; speed=7.8 km/h; width=0.5 m; b=1", ..row },
            "asked for b",
        ),
        ("the calculation", Row { calc: "rate_by_magic", ..row }, "there is no calculation rate_by_magic"),
        (
            "a misprint that is right",
            Row { not_equal: "86.9 gal/ac", ..misprinted },
            "the misprint 86.9 gal/ac",
        ),
        ("a difference no more", Row { answer: "1.09006853017579", ..differing }, "no longer a DIFFERENCE"),
        ("a difference too large", Row { answer: "1.10", printed: "", ..differing }, "even as a DIFFERENCE"),
    ] {
        let found = complaint(&row).unwrap_or_else(|error| Some(error.to_string())).unwrap_or_default();
        assert!(found.contains(words) && found.is_empty() == words.is_empty(), "{what} changed: {found:?}");
    }
    Ok(())
}

#[test]
fn misprints_are_among_the_rows() -> Outcome<()> {
    // A row flagged X must have its misprint, and no other row may; else the negative tests are none.
    let rows = rows()?;
    let flagged = rows.iter().filter(|row| row.flag == "X").count();
    assert!(flagged >= 5, "only {flagged} misprints");
    for row in &rows {
        assert_eq!(row.flag == "X", row.misprint()?.is_some(), "{} ({})", row.id, row.source);
    }
    Ok(())
}

#[test]
fn every_calculation_has_a_row_and_stands_once() -> Outcome<()> {
    let rows = rows()?;
    let mut seen = BTreeSet::new();
    for (name, _) in calculations() {
        assert!(rows.iter().any(|row| row.calc == name), "no row has the calculation {name}");
        assert!(seen.insert(name), "{name} stands twice");
    }
    Ok(())
}

#[test]
fn what_sources_print_is_our_answer_rounded_or_a_named_difference() -> Outcome<()> {
    let mut complaints = Vec::new();
    for row in rows()?.iter().filter(|row| row.calc != NOT_USABLE) {
        let Some(printed) = row.printed()? else { continue };
        let rounded = (printed - ours(row)?).abs() <= 0.5 * row.last_printed_digit() + SLACK;
        match (rounded, reason(PRINTED_OTHERWISE, row.id)) {
            (true, None) | (false, Some(_)) => {}
            (true, Some(why)) => complaints.push(format!(
                "{} ({}): no longer a DIFFERENCE, rounding gives {}; it stood there because {why}",
                row.id, row.source, row.printed
            )),
            (false, None) => complaints.push(format!(
                "{} ({}): prints {}, which is not {} rounded; name the DIFFERENCE",
                row.id,
                row.source,
                row.printed,
                ours(row)?
            )),
        }
    }
    fail_with(&complaints);
    Ok(())
}

#[test]
fn every_difference_names_a_row_once() -> Outcome<()> {
    let rows = rows()?;
    for table in [OWN_CONSTANT, PRINTED_OTHERWISE] {
        let mut seen = BTreeSet::new();
        for difference in table {
            assert!(rows.iter().any(|row| row.id == difference.id), "there is no row {}", difference.id);
            assert!(seen.insert(difference.id), "{} stands twice", difference.id);
        }
    }
    Ok(())
}
