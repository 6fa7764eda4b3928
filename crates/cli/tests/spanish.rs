//! What a reader of Spanish gets, word for word: the main commands, a visit, mistakes and help.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{run, run_with, text};

/// A command in Spanish, as it is typed and as it answers.
fn in_spanish(lines: &[&[&str]]) -> String {
    let shown = |args: &&[&str]| {
        let args = [args, &["--lang", "es"][..]].concat();
        let ran = run(&args);
        let typed: Vec<String> = args
            .iter()
            .map(|arg| if arg.contains(' ') { format!("\"{arg}\"") } else { (*arg).to_string() })
            .collect();
        format!("> evenswath {}\n{}{}[{}]\n", typed.join(" "), ran.out, ran.err, ran.status)
    };
    lines.iter().map(shown).collect::<Vec<_>>().join("\n")
}

#[test]
fn the_single_steps() {
    insta::assert_snapshot!(
        "es_steps",
        in_spanish(&[
            &["course", "--width", "20 in", "--speed", "5 mph"],
            &["course", "--width", "50 cm", "--units", "metric"],
            &["speed", "--distance", "204 ft", "--there", "27.6 s", "--back", "28.3 s", "--dash", "5.4 mph"],
            &["rate", "--catch", "15 fl oz", "--course", "204 ft", "--width", "20 in"],
            &[
                "rate",
                "--flow",
                "1.2 L/min",
                "--speed",
                "8 km/h",
                "--width",
                "50 cm",
                "--units",
                "metric",
                "--numbers",
                "comma"
            ],
            &["flow", "--size", "03", "--pressure", "30 psi", "--density", "10.65 lb/gal"],
            &["spacing", "--intended", "20 in", "--marks", "0 in", "20 in", "41.5 in", "60 in", "80 in"],
            &[
                "load",
                "--area",
                "55 ac",
                "--rate",
                "20 gal/ac",
                "--tank",
                "500 gal",
                "--product",
                "Producto A: 3 pt/ac"
            ],
        ])
    );
}

#[test]
fn a_catch_test() {
    let test =
        ["catch", "--time", "30 s", "--step", "1 fl oz", "14", "14.5", "15", "13", "14.5", "-", "17", "0"];
    insta::assert_snapshot!("es_catch", in_spanish(&[&test, &[&test[..], &["--why"]].concat()]));
}

#[test]
fn a_whole_visit() {
    let demo = ["visit", "check", "demo/willow-bend.toml", "--lang", "es"];
    insta::assert_snapshot!("es_demo_us", text(&demo));
    insta::assert_snapshot!(
        "es_demo_metric",
        text(&[&demo[..], &["--units", "metric", "--numbers", "comma"]].concat())
    );
}

#[test]
fn mistakes() {
    insta::assert_snapshot!(
        "es_mistakes",
        in_spanish(&[
            &["course", "--width", "20"],
            &["course", "--width", "0.0001 in"],
            &["course", "--width", "1,234 in"],
            &["course", "--wide", "20 in"],
            &["course"],
            &["rate", "--kind", "round", "--flow", "0.3 gal/min", "--speed", "5 mph", "--width", "20 in"],
            &["rate", "--used", "6 gal"],
            &["flow", "--size", "03", "--pressure", "100000 psi"],
            &["catch", "--time", "30 s", "--step", "1 fl oz", "14", "corn"],
            &["catch", "--time", "30 s", "--step", "1 fl oz", "--risk", "5", "14", "15"],
            &["visit", "chek"],
            &["visit", "check", "no-such-file.toml"],
        ])
    );
}

#[test]
fn mistakes_in_files() {
    let visit = "[visit]\nfram = \"A\"\n[drive]\ncourse = \"204\"\nruns = [\"28 s\"]\n[catch]\ntime = 30\n";
    let file = run_with(&["visit", "check", "-", "--lang", "es"], visit.as_bytes());
    let lines =
        "{\"time\": \"30 s\", \"step\": \"1 fl oz\", \"readings\": [\"14 fl oz\", \"corn\"]}\nnonsense\n";
    let batch = run_with(&["catch", "--batch", "-", "--lang", "es"], lines.as_bytes());
    assert_eq!((file.status, batch.status), (2, 2));
    insta::assert_snapshot!("es_mistakes_in_files", format!("{}\n{}\n{}", file.err, batch.out, batch.err));
}

#[test]
fn help() {
    for (name, args) in
        [("evenswath", &["--help"][..]), ("rate", &["rate", "--help"]), ("catch", &["catch", "-h"])]
    {
        insta::assert_snapshot!(format!("es_help_{name}"), text(&[args, &["--lang", "es"]].concat()));
    }
    // The language is known wherever it stands, and help of either kind is the same.
    let long = text(&["rate", "--help", "--lang", "es"]);
    for args in [
        &["--lang", "es", "rate", "--help"][..],
        &["help", "rate", "--lang", "es"],
        &["--lang=es", "help", "rate"],
        &["rate", "--lang=es", "--help"],
    ] {
        assert_eq!(text(args), long, "{args:?}");
    }
}

#[test]
fn a_file_to_fill_in_is_an_empty_visit_in_either_language() {
    let english = text(&["visit", "new"]);
    let spanish = text(&["visit", "new", "--lang", "es"]);
    assert_ne!(english, spanish);
    let fields = |file: &str| -> Vec<String> {
        let lines = file.lines().filter_map(|line| line.split_once("  # "));
        lines.map(|(field, _)| field.to_string()).collect()
    };
    assert_eq!(fields(&english), fields(&spanish));
    assert!(fields(&spanish).len() > 60);
    let empty = run_with(&["visit", "check", "-", "--lang", "es"], spanish.as_bytes());
    assert!(empty.status == 0 && empty.out.starts_with("Todavía no hay nada en esta visita."), "{empty:?}");
}
