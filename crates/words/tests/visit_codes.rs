//! Everything a visit tells, and every mistake in its file, is said in both languages: built by the real functions, and
//! held against the codes that stand in the crate's source.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking
#![allow(clippy::disallowed_methods)] // this test reads the source it holds to its sentences

use std::collections::BTreeSet;
use std::path::Path;

use units::{Arg, Coded, Dimension, ReadPlace, UnitSystem};
use visit::file::{Comment, FileError, read, template, template_in};
use visit::findings::{CheckError, Outcome, Place, findings};
use visit::record::{LookItem, Switch, place_word, setting_said};
use words::{Language, Words, sources};

fn key(coded: &dyn Coded) -> String {
    coded.case().map_or_else(|| coded.code().to_string(), |case| format!("{}-{case}", coded.code()))
}

fn in_our_file(key: &str) -> bool {
    let files = sources(Language::English)
        .iter()
        .filter(|(name, _)| ["visit", "symptoms", "controller"].contains(name));
    files
        .flat_map(|(_, text)| text.lines())
        .any(|line| line.strip_prefix(key).is_some_and(|rest| rest.starts_with(" =")))
}

/// A place for an argument that nothing was put in.
fn is_unfilled(text: &str) -> bool {
    text.split('{').skip(1).any(|behind| {
        let name = behind.split('}').next().unwrap_or_default();
        !name.is_empty() && name.chars().all(|sign| sign.is_ascii_lowercase() || "_$-".contains(sign))
    })
}

/// Said in both languages, in English as the code says it, with something to do exactly where the code has it.
fn check(coded: &dyn Coded, english: &str) {
    let (key, mut told) = (key(coded), Vec::new());
    for language in Language::ALL {
        let words = Words::of(language);
        let says = words.coded(coded).unwrap_or_else(|| panic!("{}: nothing says {key}", language.tag()));
        let does = words.coded_action(coded);
        for text in core::iter::once(&says).chain(&does) {
            assert!(!is_unfilled(text) && !text.contains(coded.code()), "{}: {key}: {text}", language.tag());
        }
        assert_eq!(does.is_some(), coded.hint().is_some(), "{}: {key}", language.tag());
        told.push((says, does));
    }
    // What is seen, its causes and the checks are phrases that stand in the catalogue alone.
    if !key.starts_with("symptom_") {
        assert_eq!((told[0].0.as_str(), &told[0].1), (english, &coded.hint()), "{key}");
    }
    assert_ne!(told[0].0, told[1].0, "{key} is said the same in both");
    assert!(told[0].1.is_none() || told[0].1 != told[1].1, "{key}: what to do is said the same in both");
}

fn mistakes(text: &str) -> Vec<FileError> {
    read(text.as_bytes()).err().map_or_else(Vec::new, |errors| errors.list().to_vec())
}

/// Files with mistakes, together with every mistake our own file can tell.
fn every_mistake() -> Vec<FileError> {
    let catch = "[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\n";
    let sprayer = "[sprayer]\ntips = 3\nspacing = \"20 in\"\n";
    let mut texts: Vec<String> = [
        "no toml = = here",
        "[visit]\nfarm = \"A\"\nfarm = \"B\"",
        "[boom]\ntips = 3",
        "[visit]\nfram = \"A\"\ndate = \"1/2/2027\"",
        "visit = 3\ncatch = { round = 4 }\nproduct = [5]",
        "[visit]\nfarm = [1]",
        "[drive]\ncourse = \"0 ft\"\nruns = [{ way = \"up\" }, { time = \"2 s\", wind = \"no\" }, \"\"]",
        "[drive]\ncourse = true\nruns = [{ time = \"2 s\", way = \"up\" }]\ndash = 2027-04-14",
        "[controller]\n[[controller.closed]]\nafter = \"40 psi\"",
        "[drive]\nruns = 4\n[drive.setting]\npressure = { value = 4 }",
        "[drive]\ncourse = \"9 ft\"\nruns = []\n[refill]\n[target]\n[[product]]",
        "[refill]\nused = \"1 gal\"\ndistance = \"3 ft\"\narea = \"2 ac\"",
        "[sprayer]\n[spacing]",
        "[sprayer]\nkind = \"directed\"\ntips = 3\n[spacing]\nmarks = []",
        "[sprayer]\nkind = \"directed\"\ntips = 3\nrow_spacing = \"30 in\"",
        "[sprayer]\nkind = \"band\"\nsections = []\nspacing = \"20 in\"\n[spacing]\ngaps = []",
        "[sprayer]\nkind = \"band\"\ntips = 4\nsections = [1, 2]\nspacing = \"20 in\"\ntip_size = \"03\"\nrated = \"1 gal/min @ 40 psi\"",
        "[sprayer]\nkind = \"boomless\"\nwetted_width = \"30 ft\"\nspacing = \"20 in\"",
        "[sprayer]\nkind = \"boomless\"\ntips = 0\n[spacing]\nmarks = [\"1 in\"]\ngaps = [\"1 in\"]\nlimit = \"0 %\"",
        "[sprayer]\nkind = \"boomless\"\n[catch]\n[[product]]\nname = \"\"\nrate = \"2 pt/ac\"",
        "[sprayer]\nkind = \"sail\"",
    ]
    .map(str::to_string)
    .to_vec();
    texts.push(format!("{sprayer}band_width = \"3 in\"\ntip_size = \"03\"\nrated = \"1 gal/min @ 40 psi\""));
    for round in [
        "",
        "readings = []",
        "readings = [{ time = \"3 s\" }, { reading = 3, wind = 4 }]",
        "readings = [1, 2]\ntips = [1]",
        "readings = [1, 2]\ntips = [1, 1]",
        "readings = [1]\nswapped = [1]",
        "readings = [1]\n[[catch.tip_pressure]]\nmarks = \"1 psi\"",
    ] {
        texts.push(format!("{catch}{round}"));
    }
    texts.push(format!("{catch}{}", "readings = [1]\n[[catch.round]]\n".repeat(51)));
    let mut found: Vec<FileError> = texts.iter().flat_map(|text| mistakes(text)).collect();
    // Every kind of quantity that must be more than nothing.
    for field in [
        "[sprayer]\nspacing = \"0 in\"\ntank = \"0 gal\"",
        "[setting]\npressure = \"0 psi\"",
        "[drive]\ndash = \"0 mph\"\nruns = [\"0 s\"]",
        "[target]\nrate = \"0 gal/ac\"\ncarrier_density = \"0 kg/L\"",
        "[job]\narea = \"0 ac\"",
    ] {
        found.extend(mistakes(field));
    }
    found.extend(read(b"[visit]\nfarm = \"\xff\"").expect_err("not UTF-8").list().to_vec());
    found.extend(read(&vec![b'#'; 1_000_001]).expect_err("too large").list().to_vec());
    found.extend(boom_mistakes());
    found
}

/// Files of a boom with mistakes.
fn boom_mistakes() -> Vec<FileError> {
    let supply = "[supply]\ngauge_pressure = \"40 psi\"\n";
    let feed = "[[section]]\nfeed_length = \"9 ft\"\nfeed_bore = \"3/4 in\"\n";
    let hose = "hose_bore = \"3/4 in\"\ntip_spacing = \"20 in\"\n";
    let tips = "tips = [\"0.3 gal/min @ 40 psi\", \"plugged\"]\n";
    let more = |more: &str| format!("{supply}{feed}{hose}{tips}{more}");
    let mut texts = vec![
        String::new(),
        "[supply]\n[[section]]\n".to_string(),
        "[supply]\ngauge_pressure = \"2000 psi\"\nhose_length = \"6 ft\"\nminor_loss = -1\n".to_string(),
        "[supply]\ngauge_pressure = \"40 psi\"\ntotal_flow = \"6 gal/min\"\n[supply.pump]\n".to_string(),
        "[supply.pump]\n".to_string(),
        "[supply.pump]\npressure_at_no_flow = \"60 psi\"\ncurve_point = \"9 gal/min @ 60 psi\"\n".to_string(),
        "[liquid]\nviscosity = \"thick\"\n".to_string(),
        format!("{supply}[[section]]\nfeed_bore = \"0.1 mm\"\nbody_length = \"1 in\"\ntips = []\n"),
        format!("{supply}{feed}{tips}"),
        more(""),
    ];
    for fields in [
        "enters_between = [1, 2]\nfeeds_at = 1",
        "enters_between = [2, 3]",
        "feeds_at = 3",
        "feeds_at = 1\nheight = \"1 ft\"\nleft_height = \"1 ft\"",
        "feeds_at = 1\nleft_height = \"1 ft\"",
        "feeds_at = 1\nheight = \"-90 ft\"",
        "feeds_at = 1\ntip_heights = [\"1 ft\"]",
    ] {
        texts.push(more(fields));
    }
    let one = "\"1 L/min @ 3 bar\",";
    texts.push(format!("{supply}{feed}{hose}feeds_at = 1\ntips = [{}]", one.repeat(1001)));
    let read = |text: &String| visit::boom::read(text.as_bytes()).expect_err(text).list().to_vec();
    texts.iter().flat_map(read).collect()
}

#[test]
fn every_mistake_in_a_file_is_said_in_both_languages() {
    for error in every_mistake().iter().filter(|error| error.code.starts_with("file_")) {
        check(error, &error.message);
    }
}

#[test]
fn a_mistake_told_by_a_reader_keeps_its_code_case_and_arguments() {
    let told = mistakes("[drive]\ncourse = \"204\"\nruns = [\"27 s\"]");
    let own = units::AsWritten::<units::Length>::parse("204").expect_err("no unit");
    assert_eq!((told[0].code(), told[0].case(), told[0].args()), (own.code(), own.case(), own.args()));
    assert_eq!(told[0].message, own.to_string());
}

/// Six tips 20 in apart of size 03 at 40 psi; 204 ft in 27.85 s; 30 s a cup.
fn boom(readings: &str, more: &str) -> String {
    format!(
        "[sprayer]\ntips = 6\nspacing = \"20 in\"\ntip_size = \"03\"\ntank = \"200 gal\"\n[setting]\npressure = \"40 psi\"\n\
         [drive]\ncourse = \"204 ft\"\nruns = [\"27.8 s\", \"27.9 s\"]\n[catch]\ntime = \"30 s\"\ncup_marks = \"1/2 fl oz\"\n\
         [[catch.round]]\nreadings = [{readings}]\n{more}"
    )
}

fn work_out(text: &str) -> Result<Outcome, CheckError> {
    let visit = read(text.as_bytes()).unwrap_or_else(|errors| panic!("{errors}\n{text}"));
    findings(&visit, UnitSystem::Us)
}

/// Visits that between them tell all that a visit tells by itself.
fn every_outcome() -> Vec<Outcome> {
    let even = "19, 19, 19, 19, 19, 19";
    let again = |readings: &str, after: &str, tips: &str, now: &str| {
        boom(
            readings,
            &format!("[[catch.round]]\nafter = \"{after}\"\ntips = [{tips}]\nreadings = [{now}]\n"),
        )
    };
    let looked: String = LookItem::ALL.iter().map(|item| format!("{} = \"no\"\n", item.word())).collect();
    let (drive, catch) = (
        "[drive.setting]\npressure = \"45 psi\"\nengine_speed = \"1700 rpm\"\npto_speed = \"540 rpm\"\nagitation = \"on\"\n\
         sections_on = \"all\"\n[catch]",
        "[catch.setting]\npressure = \"30 psi\"\nengine_speed = \"1500 rpm\"\npto_speed = \"500 rpm\"\nagitation = \"off\"\n\
         sections_on = \"left\"\ncontroller = \"on\"\n[[catch.round]]",
    );
    let mut texts = vec![
        format!("[look]\n{looked}"),
        "[sprayer]\nsections = [2, 2]\nspacing = \"20 in\"\nheld_by = \"rate_controller\"\n[controller]\nwidths = [\"45 in\", \"40 in\"]\n".to_string(),
        "[sprayer]\nsections = [2, 2]\nspacing = \"20 in\"\n[controller]\nwidths = [\"40 in\"]\n".to_string(),
        "[sprayer]\nsections = [2, 2]\nspacing = \"20 in\"\n[controller]\nwidths = [\"40 in\", \"40 in\"]\n".to_string(),
        boom(even, "[controller]\nvalves_pulse = \"yes\"\nduty = \"60 %\"\n"),
        boom(even, "[controller]\nvalves_pulse = \"yes\"\n"),
        boom(even, "[[catch.round]]\ntip_set = \"blue\"\nreadings = [25, 25, 25, 25, 25, 25]\n"),
        boom("19, \"-\", 19, 19, 19, 19", "[controller]\nshown_flow = \"1.8 gal/min\"\n"),
        boom(even, "[controller]\nshown_flow = \"1.78 gal/min\"\nshown_speed = \"5 mph\"\nshown_rate = \"15 gal/ac\"\n")
            .replace("1/2 fl oz", "1/4 fl oz"),
        boom(even, "[controller]\nshown_flow = \"1.85 gal/min\"\nshown_speed = \"5.25 mph\"\n"),
        boom(even, "[controller]\nshown_flow = \"2.2 gal/min\"\nshown_speed = \"6 mph\"\n"),
        boom(even, "[controller]\nshown_flow = \"7 gal/min\"\nshown_speed = \"8 mph\"\n"),
        "[setting]\ngauge_marks = \"1 psi\"\n[controller]\n[[controller.closed]]\nsection = 1\nbefore = \"40 psi\"\nclosed = \"46 psi\"\n\
         [[controller.closed]]\nsection = 2\nbefore = \"40 psi\"\nclosed = \"44 psi\"\n[[controller.closed]]\nsection = 3\n\
         before = \"40 psi\"\nclosed = \"40 psi\"\nafter = \"48 psi\"\n"
            .to_string(),
        "[setting]\ngauge_marks = \"1 psi\"\n[controller]\n[[controller.closed]]\nsection = 1\nbefore = \"40 psi\"\nclosed = \"41 psi\"\n"
            .to_string(),
        "[symptoms]\nseen = [\"needle_jumps\", \"foam\"]\ndrive = \"shaft\"\nair_chamber = \"no\"\n".to_string(),
        "[symptoms]\nseen = [\"drips\"]\nyes = [\"single_tips_drip\"]\nno = [\"drip_stops\"]\n".to_string(),
        "[symptoms]\nseen = [\"section_weak\"]\nabsent = [\"foam\"]\nskipped = [\"valve_sticks\", \"section_strainer_dirty\"]\n"
            .to_string(),
        boom(even, "").replace("[catch]", drive).replace("[[catch.round]]", catch),
        again("19, 19, 23, 19, 19, 19", "after cleaning", "3", "23"),
        again("19, 19, 23, 19, 19, 19", "new tips", "3", "19"),
        again("19, 19, 15, 19, 19, 19", "a new washer", "3", "19"),
        again("19, 19, 0, 19, 19, 19", "after cleaning", "3", "19"),
        again("0, 19, 0, 19, 19, 19", "after cleaning", "1, 3", "19, 19"),
        again("0, 19, 0, 19, 19, 19", "pressure changed", "3", "19"),
        again("19, 19, 21, 19, 19, 19", "new tips", "3", "19"),
        again("20.5, 20.5, 22.5, 20.5, 20.5, 20.5", "new tips", "3", "19"),
        again("19, 19, 20.5, 19, 19, 19", "new tips", "3", "19"),
        boom("19, 19, \"-\", 19, 19, 19", ""),
        boom("19, \"-\", \"-\", 19, 19, 19", ""),
        boom(
            even,
            "[spacing]\nmarks = [\"0 in\", \"20 in\"]\n[refill]\nused = \"30 gal\"\narea = \"1 ac\"\n",
        ),
        boom(
            even,
            "[target]\nrate = \"15 gal/ac\"\nmixed_for = \"12 gal/ac\"\ncarrier_density = \"1.3 kg/L\"\n\
                    [[product]]\nname = \"A\"\nrate = \"2 pt/ac\"\n",
        ),
        boom(even, "").replace("tips = 6", "tips = 6\nkind = \"band\"\nband_width = \"10 in\""),
        boom("19, 19, 19", "")
            .replace("tips = 6", "tips = 3")
            .replace("1/2 fl oz", "1 g")
            .replace("19", "560"),
    ];
    // How evenly the ground gets it: with crooked fans, and on a boom too short to tell.
    let high = |text: String| {
        text.replace("[setting]", "fan_angle = \"110 deg\"\n[setting]\nboom_height = \"20 in\"")
    };
    texts.push(high(boom(even, "[look]\nfans_straight = \"no\"\n")));
    texts.push(high(boom("19, 19", "").replace("tips = 6", "tips = 2")));
    // The limits about a rate: with a plugged tip, and out of a refill without any cups.
    let refilled = "[sprayer]\ntips = 6\nspacing = \"20 in\"\n[refill]\nused = \"14 gal\"\narea = \"1 ac\"\n";
    for wanted in (10..22).map(|rate| f64::from(rate) + 0.5) {
        for (least, most) in [(2.0, 2.0), (2.0, 2.05), (2.4, 2.4)] {
            let target = format!(
                "[target]\nrate = \"{wanted} gal/ac\"\nmixed_for = \"14.5 gal/ac\"\n[[product]]\nname = \"A\"\nrate = \"2 pt/ac\"\n\
                 label_least = \"{least} pt/ac\"\nlabel_most = \"{most} pt/ac\"\nlabel_least_carrier = \"{wanted} gal/ac\"\n"
            );
            texts.push(boom("19, 19, 0, 19, 19, 19", &target));
            texts.push(format!("{refilled}{target}"));
        }
    }
    // A share of the mix whose label speaks of an acre: 0.25 % of 14 gal is 4.48 fl oz.
    for most in [4.4, 4.5, 4.6] {
        texts.push(format!(
            "{refilled}[[product]]\nname = \"A\"\nrate = \"0.25 % v/v\"\nlabel_most = \"{most} fl oz/ac\"\n"
        ));
    }
    texts.iter().map(|text| work_out(text).unwrap_or_else(|error| panic!("{error}\n{text}"))).collect()
}

/// Visits that lack what they need.
fn every_refusal() -> Vec<CheckError> {
    [
        "[catch]\ntime = \"as driven\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [14]\n"
            .to_string(),
        boom("19, 19, 19, 19, 19, 19, 19", ""),
        "[refill]\nused = \"14 gal\"\ndistance = \"300 ft\"\n".to_string(),
        "[spacing]\ngaps = [\"20 in\"]\n".to_string(),
        "[symptoms]\nseen = [\"foam\"]\nabsent = [\"foam\"]\n".to_string(),
        "[symptoms]\nseen = [\"weak_engine_off\"]\ndrive = \"shaft\"\n".to_string(),
    ]
    .iter()
    .map(|text| work_out(text).expect_err("refused"))
    .collect()
}

#[test]
fn every_finding_of_a_visit_is_said_in_both_languages() {
    for outcome in every_outcome() {
        for (_, finding) in outcome.all().filter(|(_, finding)| in_our_file(&key(*finding))) {
            check(finding, &finding.text(UnitSystem::Us));
        }
    }
}

#[test]
fn every_refusal_is_said_in_both_languages() {
    for error in every_refusal() {
        check(&error, error.message());
        assert_eq!(error.to_string(), format!("{}: {}", error.part, error.message()));
    }
}

/// Codes in the crate's source: string literals that stand right behind one of these openings, and all those that `is_one`.
fn in_source(openings: &[&str], is_one: impl Fn(&str) -> bool) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    let mut folders = vec![Path::new(env!("CARGO_MANIFEST_DIR")).join("../visit/src")];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).expect("a folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            let text = std::fs::read_to_string(&path).expect("source");
            let is_code = |text: &&str| {
                let fits = |sign: char| sign.is_ascii_lowercase() || sign.is_ascii_digit() || sign == '_';
                !text.is_empty() && text.chars().all(fits)
            };
            for behind in openings.iter().flat_map(|opening| text.split(opening).skip(1)) {
                let mut parts = behind.split('"');
                let before = parts.next().unwrap_or_default().trim();
                // A finding has its weight first.
                if before.is_empty()
                    || (before.starts_with("Weight::") && before.find(',') == Some(before.len() - 1))
                {
                    found.extend(parts.next().filter(is_code).map(str::to_string));
                }
            }
            // What lacks something names the part first, then the code.
            for behind in
                text.split("CheckError::needed(").skip(1).filter(|_| openings.contains(&"Finding::new("))
            {
                found.extend(behind.split('"').nth(3).filter(is_code).map(str::to_string));
            }
            found.extend(text.split('"').filter(is_code).filter(|text| is_one(text)).map(str::to_string));
        }
    }
    found
}

#[test]
fn no_code_or_case_of_the_source_is_left_out() {
    let mut keys = BTreeSet::new();
    keys.extend(every_mistake().iter().map(|error| key(error)));
    keys.extend(every_refusal().iter().map(|error| key(error)));
    for outcome in every_outcome() {
        keys.extend(outcome.all().map(|(_, finding)| key(finding)));
    }
    let parts = |key: &String| {
        let (code, case) = key.split_once('-').unwrap_or((key, ""));
        (code.to_string(), case.to_string())
    };
    let codes: BTreeSet<String> = keys.iter().map(|key| parts(key).0).collect();
    let cases: BTreeSet<String> = keys.iter().map(|key| parts(key).1).collect();
    let begins = |text: &str| text.starts_with("look_") || text.starts_with("file_");
    let wanted = in_source(&["Finding::new(", "past("], begins);
    assert!(wanted.len() > 35, "{wanted:?}");
    let missing: Vec<&String> = wanted.iter().filter(|code| !codes.contains(*code)).collect();
    assert!(missing.is_empty(), "no test tells of {missing:?}");
    let wanted = in_source(&[".case(", "Mistake::value("], |_| false);
    let missing: Vec<&String> = wanted.iter().filter(|case| !cases.contains(*case)).collect();
    assert!(missing.is_empty(), "no test tells of the cases {missing:?}");
    // The other way round: nothing stands in our file that nothing tells of.
    let ours = sources(Language::English).iter().find(|(name, _)| *name == "visit").expect("visit.ftl").1;
    let names = ours.lines().filter_map(|line| line.split_once(" =")).map(|(name, _)| name);
    let labels = ["look-", "place-", "read_at-", "setting-", "word-", "phrase-", "section-", "field-"];
    let untold: Vec<&str> = names
        .filter(|name| name.starts_with(|sign: char| sign.is_ascii_lowercase()) && *name != "file_place")
        .filter(|name| !labels.iter().any(|label| name.starts_with(label)) && !keys.contains(*name))
        .collect();
    assert!(untold.is_empty(), "nothing tells of {untold:?}");
}

#[test]
fn our_own_words_and_phrases_stand_in_both() {
    let ours = [
        "round_",
        "found_",
        "agitation_o",
        "sections_on_a",
        "sections_on_n",
        "controller_o",
        "controller_m",
        "water_",
    ];
    let words =
        in_source(&[], |text| ours.iter().any(|begins| text.starts_with(begins)) && text != "water_in_tank");
    let phrases = in_source(&["Phrase::new("], |text| {
        text.starts_with("wanted_") || text.ends_with("_differs") || text.ends_with("_on_differ")
    });
    assert!(words.len() > 20 && phrases.len() > 20, "{words:?} {phrases:?}");
    for language in Language::ALL {
        let said = Words::of(language);
        for code in words.iter() {
            assert!(said.has(&format!("word-{code}")), "{}: word-{code}", language.tag());
        }
        for kind in Dimension::ALL {
            let Arg::Word { code, .. } = kind.word() else { panic!("a kind of quantity is a word of ours") };
            assert!(said.has(&format!("word-{code}")), "{}: word-{code}", language.tag());
        }
        for code in &phrases {
            assert!(said.has(&format!("phrase-{code}")), "{}: phrase-{code}", language.tag());
        }
    }
}

#[test]
fn what_was_typed_of_a_setting_is_said_where_it_is_a_usual_answer() {
    let (english, spanish) = (Words::of(Language::English), Words::of(Language::Spanish));
    for (of, typed, says) in [
        (Switch::Agitation, "On", "encendida"),
        (Switch::Controller, "on", "encendido"),
        (Switch::WaterInTank, "half full", "medio lleno"),
        (Switch::SectionsOn, "all", "todas"),
        (Switch::SectionsOn, "left two", "left two"),
    ] {
        let arg = setting_said(of, typed);
        assert_eq!((spanish.arg(&arg).as_str(), english.arg(&arg)), (says, arg.text(UnitSystem::Us)));
        if matches!(arg, Arg::Word { .. }) {
            let key = format!("setting-{}", typed.to_lowercase().replace(' ', "_"));
            let which = if of == Switch::Controller { "controller" } else { "agitation" };
            assert_eq!(spanish.say(&key, &[("of-code", which.into())]), says);
            assert_eq!(english.label(&key), typed.to_lowercase());
        }
    }
}

#[test]
fn labels_stand_in_both_languages() {
    let read = [ReadPlace::Pump, ReadPlace::Manifold, ReadPlace::Boom, ReadPlace::Tip, ReadPlace::Cab];
    let places = [
        Place::Look,
        Place::Symptoms,
        Place::Spacing,
        Place::Tips,
        Place::Pattern,
        Place::Drive,
        Place::Controller,
        Place::Setting,
        Place::Rate,
        Place::Change,
        Place::Tank,
        Place::Cost,
    ];
    let mut keys: Vec<String> = LookItem::ALL.iter().map(|item| format!("look-{}", item.word())).collect();
    keys.extend(read.iter().map(|place| format!("read_at-{}", place_word(*place))));
    keys.extend(places.iter().map(|place| format!("place-{}", place.word())));
    keys.extend(Comment::all().map(|comment| comment.key()));
    for language in Language::ALL {
        let words = Words::of(language);
        for key in &keys {
            assert_ne!(words.label(key), *key, "{}", language.tag());
        }
    }
    let outcome = work_out(&boom("19, 19, 23, 19, 19, 19", "")).expect("works out");
    let tips = outcome.actions.iter().find_map(|action| action.tips()).expect("about a tip");
    let args = units::Args::new().with("tips", Arg::Tips(tips));
    assert_eq!(Words::of(Language::Spanish).say_with("place-these_tips", &args), "boquilla 3");
}

#[test]
fn the_file_to_fill_in_has_its_remarks_in_the_readers_language() {
    let in_words = |language| {
        let words = Words::of(language);
        template_in(move |remark| words.label(&remark.key()))
    };
    assert_eq!(in_words(Language::English), template());
    let spanish = in_words(Language::Spanish);
    assert!(spanish.contains("# course = \"204 ft\"  # el tramo medido"), "{spanish}");
    assert_eq!(read(spanish.as_bytes()).expect("reads"), visit::Visit::default());
    // Names and values are those of the file in every language; only remarks differ.
    let bare = |text: &str| -> Vec<String> {
        let lines =
            text.lines().filter_map(|line| line.split_once("  # ")).map(|(field, _)| field.to_string());
        lines.collect()
    };
    assert_eq!(bare(&spanish), bare(&template()));
}

#[test]
fn the_workings_of_the_controller_are_written_in_both_languages() {
    let (english, spanish) = (Words::of(Language::English), Words::of(Language::Spanish));
    let mut seen = 0;
    for outcome in every_outcome() {
        let of_controller = outcome.all().filter(|(place, _)| *place == Place::Controller);
        for working in of_controller.filter_map(|(_, finding)| finding.working.as_ref()) {
            seen += 1;
            assert_eq!(english.formula(working), working.formula);
            assert_ne!(spanish.formula(working), working.formula);
            assert_ne!(english.working_title(working), spanish.working_title(working));
            for figure in &working.figures {
                assert_eq!(english.figure_name(figure), figure.name);
                assert_ne!(spanish.figure_name(figure), figure.name);
            }
        }
    }
    assert!(seen > 8, "{seen}");
}
