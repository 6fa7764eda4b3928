//! Every field of a visit file wrong, one at a time: exit status 2, and the line, the column and the field are named.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::run_with;
use visit::file::{Field, SECTIONS, Section, Several, Shape};

/// Values that a field of a shape cannot have.
fn wrong(field: &Field) -> Vec<String> {
    let quoted = |list: &[&str]| list.iter().map(|text| format!("\"{text}\"")).collect::<Vec<_>>();
    let bare = |list: &[&str]| list.iter().map(|text| (*text).to_string()).collect::<Vec<_>>();
    let unit = field.example.trim_matches('"').split_once(' ').map_or("", |(_, unit)| unit).to_string();
    match field.shape {
        Shape::Text => bare(&["[1, 2]", "true", "{ a = 1 }"]),
        Shape::Day => {
            [quoted(&["yesterday", "14/4/2027", "2027-13-01", "2027-04-32"]), bare(&["true", "3"])].concat()
        }
        Shape::Quantity(_) => {
            let negative = format!("\"-5 {unit}\"");
            let comma = format!("\"1,500 {unit}\"");
            [
                quoted(&["corn", "5 parsecs", "5", "", "nan", "inf"]),
                bare(&["true", "[]", "5", "nan"]),
                vec![negative, comma],
            ]
            .concat()
        }
        Shape::Quantities(_) => bare(&["\"20 in\"", "[\"corn\"]", "[true]", "[\"-5 in\"]", "[\"20 psi\"]"]),
        Shape::Count => bare(&["0", "-3", "2.5", "\"many\"", "true", "99999999999999999999"]),
        Shape::Counts => bare(&["3", "[0]", "[-1]", "[\"x\"]", "[true]"]),
        Shape::Percent => [quoted(&["300 %", "-5 %", "0 %", "5", "5 in", "corn"]), bare(&["true"])].concat(),
        Shape::Words(_) => bare(&["3", "[\"purple\"]", "[true]", "[1]", "true"]),
        Shape::Word(_) => [quoted(&["purple", ""]), bare(&["true", "1"])].concat(),
        Shape::FlowAtPressure => {
            quoted(&["0.3 gal/min", "fast @ 40 psi", "0.3 gal/min @ 40", "corn", "40 psi @ 0.3 gal/min"])
        }
        Shape::ProductRate => quoted(&["2", "2 pt", "8 oz/ac", "corn", "-2 pt/ac", "2 lb ai/ac at 0 %"]),
        Shape::Price => [quoted(&["dear", "40", "-$40/gal", "$40/ac ft"]), bare(&["true"])].concat(),
        Shape::Runs => {
            bare(&["\"27 s\"", "[true]", "[{ way = \"there\" }]", "[\"0 s\"]", "[\"27 ft\"]", "[]"])
        }
        Shape::CatchTime => quoted(&["soon", "0 s", "-30 s", "30 psi", "30"]),
        Shape::Readings => {
            bare(&["14", "[true]", "[\"14 psi\"]", "[-1]", "[{ time = \"30 s\" }]", "[\"x\"]", "[nan]"])
        }
        Shape::Marks => [quoted(&["1 psi", "0 fl oz", "1 oz", "corn"]), bare(&["1", "true"])].concat(),
        Shape::Limit => quoted(&["mean-7", "500 %", "0 %", "-5 %", "corn"]),
    }
}

/// What must stand beside a field so that it counts: in its own part before it, and in parts behind.
fn beside(section: &str, field: &str) -> (&'static str, &'static str) {
    match (section, field) {
        ("sprayer", "kind") => ("tips = 12\nspacing = \"20 in\"", ""),
        ("sprayer", "tips") => ("spacing = \"20 in\"", ""),
        ("sprayer", "sections") => ("spacing = \"20 in\"", ""),
        ("sprayer", "spacing") => ("tips = 12", ""),
        ("sprayer", "band_width") => ("kind = \"band\"\ntips = 12\nspacing = \"30 in\"", ""),
        ("sprayer", "row_spacing") => ("kind = \"directed\"\ntips = 12\ntips_per_row = 3", ""),
        ("sprayer", "tips_per_row") => ("kind = \"directed\"\ntips = 12\nrow_spacing = \"30 in\"", ""),
        ("sprayer", "effective_swath") => ("kind = \"boomless\"", ""),
        ("sprayer", "wetted_width") => ("kind = \"boomless\"\noverlap = \"15 %\"", ""),
        ("sprayer", "overlap") => ("kind = \"boomless\"\nwetted_width = \"36 ft\"", ""),
        ("sprayer", "spray_width") => ("kind = \"hand\"", ""),
        ("sprayer", _) => ("tips = 12\nspacing = \"20 in\"", ""),
        ("spacing", "gaps") => ("", ""),
        ("spacing", "marks") => ("", ""),
        ("spacing", _) => ("marks = [\"0 in\", \"20 in\"]", ""),
        ("drive", "course") => ("runs = [\"27 s\"]", ""),
        ("drive", "runs") => ("course = \"204 ft\"", ""),
        ("drive", _) => ("course = \"204 ft\"\nruns = [\"27 s\"]", ""),
        ("drive.setting", _) => ("", "[drive]\ncourse = \"204 ft\"\nruns = [\"27 s\"]"),
        ("catch", "time") => ("cup_marks = \"1 fl oz\"", "[[catch.round]]\nreadings = [14]"),
        ("catch", "cup_marks") => ("time = \"30 s\"", "[[catch.round]]\nreadings = [\"14 fl oz\"]"),
        ("catch", _) => ("time = \"30 s\"\ncup_marks = \"1 fl oz\"", "[[catch.round]]\nreadings = [14]"),
        ("catch.setting", _) => {
            ("", "[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [14]")
        }
        ("catch.round", "readings") => ("", "[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\""),
        ("catch.round", _) => ("readings = [14]", "[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\""),
        ("catch.tip_pressure", field) => {
            let other = if field == "pressure" { "tip = 5" } else { "pressure = \"38 psi\"" };
            let both = if field == "marks" { "tip = 5\npressure = \"38 psi\"" } else { other };
            (both, "[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [14]")
        }
        ("refill", "used") => ("distance = \"660 ft\"", ""),
        ("refill", _) => ("used = \"5 gal\"", "[sprayer]\ntips = 12\nspacing = \"20 in\""),
        ("target", "rate") => ("", ""),
        ("target", _) => ("rate = \"15 gal/ac\"", ""),
        ("product", "name") => ("rate = \"2 pt/ac\"", ""),
        ("product", "rate") => ("name = \"Product A\"", ""),
        ("product", _) => ("name = \"Product A\"\nrate = \"2 pt/ac\"", ""),
        _ => ("", ""),
    }
}

/// A file with one field in it, and the line and the column where its value begins.
fn file(section: &Section, field: &Field, value: &str) -> (String, usize, usize) {
    let header = match section.several {
        Several::Yes => format!("[[{}]]", section.name),
        Several::No => format!("[{}]", section.name),
    };
    let (before, behind) = beside(section.name, field.name);
    let (above, under) = if section.name.contains('.') { (behind, "") } else { ("", behind) };
    // A round of its own parent stands above it: [catch] first, then [[catch.round]].
    let head = format!("{above}\n# a visit\n{header}\n{before}\n");
    let line = head.lines().count() + 1;
    (format!("{head}{} = {value}\n{under}\n", field.name), line, field.name.len() + 4)
}

#[test]
fn each_field_wrong_by_itself_is_pointed_at() {
    let mut tried = 0;
    let mut complaints = Vec::new();
    for section in SECTIONS {
        for field in section.fields {
            let (good, _, _) = file(section, field, field.example);
            let ran = run_with(&["visit", "check", "-"], good.as_bytes());
            if ran.err.contains(&format!("{}.{}: ", section.name, field.name)) {
                complaints.push(format!("the example itself is refused: {good}{}", ran.err));
            }
            for value in wrong(field) {
                let (text, line, column) = file(section, field, &value);
                let ran = run_with(&["visit", "check", "-"], text.as_bytes());
                let path = format!("{}.{}: ", section.name, field.name);
                let told = ran.err.lines().find(|told| told.contains(&path)).unwrap_or_default();
                let place = told
                    .split(&format!("line {line}, column "))
                    .nth(1)
                    .and_then(|rest| rest.split(':').next());
                let at = place.and_then(|column| column.parse::<usize>().ok()).unwrap_or(0);
                // Of a list the wrong one in it is pointed at.
                let right = at >= column && at <= column + 3;
                if ran.status != 2 || !ran.out.is_empty() || !right || ran.all().contains("panicked") {
                    complaints.push(format!("{path}{value} (line {line}, column {column}): {ran:?}"));
                }
                tried += 1;
            }
        }
    }
    assert!(complaints.is_empty(), "{}", complaints.join("\n"));
    assert!(tried > 400, "{tried}");
}

#[test]
fn a_message_shows_what_was_given_and_what_would_do() {
    for section in SECTIONS {
        for field in section.fields {
            for value in wrong(field).iter().filter(|value| value.starts_with('"') && value.len() > 2) {
                let (text, _, _) = file(section, field, value);
                let ran = run_with(&["visit", "check", "-"], text.as_bytes());
                let mut words =
                    value.trim_matches('"').split([' ', '/', '@']).filter(|word| !word.is_empty());
                assert!(words.any(|word| ran.err.contains(word)), "{value} is not shown: {ran:?}");
                assert!(ran.err.lines().any(|line| line.starts_with("  ")), "no help: {ran:?}");
            }
        }
    }
}
