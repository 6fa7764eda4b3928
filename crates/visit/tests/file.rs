//! The visit file: what is understood, and how mistakes are pointed at.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use units::Coded;
use visit::file::{FileError, SECTIONS, Several, Shape, read, schema, template};

fn errors(text: &str) -> Vec<FileError> {
    match read(text.as_bytes()) {
        Ok(_) => Vec::new(),
        Err(errors) => errors.list().to_vec(),
    }
}

/// One mistake, at its place, with the words that help.
fn check(text: &str, place: (usize, usize), field: &str, words: &[&str]) {
    let found = errors(text);
    let error = found.iter().find(|error| error.field.as_deref() == Some(field));
    let error = error.unwrap_or_else(|| panic!("no mistake at {field} in {found:?}"));
    assert_eq!(error.place, Some(place), "{error}");
    let said = format!("{error}; {}", error.hint().unwrap_or_default());
    for word in words {
        assert!(said.contains(word), "\"{said}\" lacks \"{word}\"");
    }
}

#[test]
fn mistakes_are_pointed_at_with_what_would_do() {
    check(
        "[drive]\ncourse = \"204\"\nruns = [\"27 s\"]",
        (2, 10),
        "drive.course",
        &["\"204\"", "no unit", "ft, in"],
    );
    check(
        "[drive]\ncourse = \"204 ft\"\nruns = [\"27 s\", \"-3 s\"]",
        (3, 17),
        "drive.runs",
        &["-3 s", "less than nothing"],
    );
    check(
        "[sprayer]\nspacng = \"20 in\"\ntips = 3\nspacing = \"20 in\"",
        (2, 1),
        "sprayer.spacng",
        &["no field", "spacing"],
    );
    check("[boom]\ntips = 3", (1, 2), "boom", &["no part", "sprayer"]);
    check("[drive]\nruns = [\"27 s\"]", (1, 1), "drive.course", &["missing", "204 ft"]);
    check(
        "[sprayer]\ntips = 0\nspacing = \"20 in\"",
        (2, 8),
        "sprayer.tips",
        &["\"0\"", "whole number from 1"],
    );
    check(
        "[sprayer]\ntips = 3\nspacing = \"20 psi\"",
        (3, 11),
        "sprayer.spacing",
        &["a pressure", "a length"],
    );
    check("[visit]\ndate = \"14/4/2027\"", (2, 8), "visit.date", &["2027-04-14"]);
    // Rows are asked for where rows are missing, not tips.
    check(
        "[sprayer]\nkind = \"directed\"\ntips = 3\ntips_per_row = 3",
        (1, 1),
        "sprayer.row_spacing",
        &["missing", "row_spacing = \"30 in\""],
    );
    check("[look]\nno_leaks = \"maybe\"", (2, 12), "look.no_leaks", &["maybe", "yes, no"]);
    check("[target]\nrate = \"1,500 gal/ac\"", (2, 8), "target.rate", &["1500", "1.500"]);
    check("visit = 3", (1, 9), "visit", &["[visit]"]);
    check("[[product]]\nname = \"A\"\nrate = \"8 oz/ac\"", (3, 8), "product.rate", &["fl oz/ac", "oz wt/ac"]);
    check("[catch]\ntime = \"30 s\"\ncup_marks = \"1 oz\"", (3, 13), "catch.cup_marks", &["fl oz"]);
    check("[catch]\ntime = \"30 s\"\nlimit = \"mean-7\"", (3, 9), "catch.limit", &["mean-10"]);
    check(
        "[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [14, \"x\", 15]",
        (5, 17),
        "catch.round.readings",
        &["\"x\"", "number"],
    );
}

#[test]
fn every_mistake_is_told_at_once_in_the_order_they_stand() {
    let found = errors("[drive]\ncourse = \"204\"\nruns = [\"x\"]\n[sprayer]\ntips = \"y\"\nspacing = \"z\"");
    let lines: Vec<usize> = found.iter().filter_map(|error| error.place).map(|(line, _)| line).collect();
    assert!(found.len() >= 4, "{found:?}");
    assert!(lines.windows(2).all(|pair| pair[0] <= pair[1]), "{lines:?}");
}

#[test]
fn files_of_the_wrong_kind_are_told_apart() {
    assert_eq!(errors("this is = = no toml")[0].code(), "file_not_toml");
    let twice = &errors("[visit]\nfarm = \"A\"\n[visit]\nfarm = \"B\"")[0];
    assert_eq!((twice.code(), twice.case(), twice.place), ("file_not_toml", Some("twice"), Some((3, 2))));
    let not_text = read(b"[visit]\nfarm = \"\xff\xfe\"").expect_err("not UTF-8");
    assert_eq!((not_text.list()[0].code(), not_text.list()[0].place), ("file_not_text", Some((2, 9))));
    let large = read(&vec![b'#'; 1_000_001]).expect_err("too large");
    assert_eq!(large.list()[0].code(), "file_too_large");
    assert!(errors("").is_empty(), "an empty file is an empty visit");
    assert!(errors("\u{feff}[visit]\nfarm = \"with a mark some editors put in front\"").is_empty());
}

#[test]
fn bare_numbers_are_kept_as_written() {
    let text = "[catch]\ntime = \"30 s\"\ncup_marks = \"1/2 fl oz\"\n[[catch.round]]\nreadings = [14.50, 14, \"14 1/2\", [15, 14.5], \"-\"]";
    let visit = read(text.as_bytes()).expect("reads");
    let round = &visit.catch.expect("a catch").rounds[0];
    let written: Vec<String> = round
        .tips
        .iter()
        .flat_map(|(_, readings)| readings)
        .map(|reading| reading.caught.written().canonical())
        .collect();
    assert_eq!(written, ["14.50 fl oz", "14 fl oz", "14 1/2 fl oz", "15 fl oz", "14.5 fl oz"]);
    assert!(round.tips[4].1.is_empty());
}

#[test]
fn the_empty_file_to_fill_in_is_an_empty_visit() {
    assert_eq!(read(template().as_bytes()).expect("reads"), visit::Visit::default());
}

#[test]
fn every_example_in_the_empty_file_reads() {
    for section in SECTIONS {
        for field in section.fields {
            let header = if section.several == Several::Yes {
                format!("[[{}]]", section.name)
            } else {
                format!("[{}]", section.name)
            };
            let text = format!("{header}\n{} = {}\n", field.name, field.example);
            let path = format!("{}.{}", section.name, field.name);
            // Other fields may be missing, or the kind be another; this one must be in order. Bare readings need the cup's
            // marks above.
            let bare = matches!(field.shape, Shape::Readings);
            let faults: Vec<FileError> = errors(&text)
                .into_iter()
                .filter(|error| error.field.as_deref() == Some(path.as_str()))
                .filter(|error| error.code != "file_other_kind")
                .collect();
            assert!(faults.is_empty() || bare, "{path}: {faults:?}");
        }
    }
}

#[test]
fn the_schema_names_every_section_and_field() {
    let schema = schema();
    for section in SECTIONS {
        let name = section.name.rsplit('.').next().expect("a name");
        assert!(schema.contains(&format!("\"{name}\": ")), "{name}");
        for field in section.fields {
            assert!(schema.contains(&format!("\"{}\": ", field.name)), "{}", field.name);
        }
    }
}

#[test]
fn a_field_of_another_kind_of_sprayer_is_not_read_over_in_silence() {
    let text =
        "[sprayer]\ntips = 2\nspacing = \"20 in\"\nband_width = \"12 in\"\neffective_swath = \"30 ft\"\n";
    let told: Vec<String> = errors(text).iter().map(ToString::to_string).collect();
    assert_eq!(told.len(), 2, "{told:?}");
    assert!(told[0].contains("sprayer.band_width: this belongs to kind band; without a kind"), "{told:?}");
    assert!(told[1].contains("sprayer.effective_swath: this belongs to kind boomless"), "{told:?}");
    let hand = errors("[sprayer]\nkind = \"hand\"\nspray_width = \"4 ft\"\nspacing = \"20 in\"\n");
    assert!(hand[0].to_string().contains("kinds boom and band; this sprayer is kind = \"hand\""), "{hand:?}");
    // What belongs to the kind is taken as before.
    let band = "[sprayer]\nkind = \"band\"\ntips = 2\nspacing = \"30 in\"\nband_width = \"12 in\"\n";
    assert!(read(band.as_bytes()).is_ok());
}
