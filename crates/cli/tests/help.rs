//! What `--help` says, word for word, and that every example in it works.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{command, finish, folder, root, run, shell_split};

/// Every command with its subcommands.
const COMMANDS: [&[&str]; 34] = [
    &[],
    &["course"],
    &["speed"],
    &["rate"],
    &["flow"],
    &["spacing"],
    &["pattern"],
    &["catch"],
    &["diagnose"],
    &["symptom"],
    &["load"],
    &["boom"],
    &["visit"],
    &["visit", "check"],
    &["visit", "new"],
    &["visit", "schema"],
    &["notebook"],
    &["notebook", "import"],
    &["notebook", "export"],
    &["notebook", "verify"],
    &["notebook", "save"],
    &["notebook", "log"],
    &["notebook", "visit"],
    &["print"],
    &["print", "cups"],
    &["print", "cab"],
    &["print", "tags"],
    &["print", "paper"],
    &["print", "before"],
    &["serve"],
    &["app"],
    &["app", "export"],
    &["completions"],
    &["help"],
];

fn help(of: &[&str]) -> String {
    let args = if of == ["help"] { vec!["help"] } else { [of, &["--help"]].concat() };
    let ran = run(&args);
    assert_eq!((ran.status, ran.err.as_str()), (0, ""), "{ran:?}");
    ran.out
}

/// The examples of a help text: lines that begin with the program's name, lines broken with `\` put together, and
/// the word about each (behind three blanks) left out.
fn examples(help: &str) -> Vec<String> {
    let whole = help.replace("\\\n", " ");
    let lines = whole.lines().map(str::trim).filter(|line| line.starts_with("evenswath "));
    lines
        .map(|line| {
            line.split("   ").enumerate().filter(|(at, part)| *at == 0 || part.trim().starts_with("--"))
        })
        .map(|parts| parts.map(|(_, part)| part).collect::<Vec<_>>().join(" "))
        .collect()
}

#[test]
fn help_is_as_it_was_agreed() {
    for of in COMMANDS {
        let name = if of.is_empty() { "evenswath".to_string() } else { of.join("_") };
        insta::assert_snapshot!(format!("help_{name}"), help(of));
    }
}

#[test]
fn the_list_of_commands_is_whole() {
    let listed = |help: &str| -> Vec<String> {
        let list = help.split("Commands:\n").nth(1).and_then(|rest| rest.split("\n\n").next()).unwrap_or("");
        list.lines().filter_map(|line| line.split_whitespace().next()).map(str::to_string).collect()
    };
    let mut all: Vec<String> = listed(&help(&[]));
    for of in ["visit", "notebook", "print", "app"] {
        let below = listed(&help(&[of]));
        all.extend(below.iter().filter(|name| *name != "help").map(|name| format!("{of} {name}")));
    }
    let mut tested: Vec<String> = COMMANDS.iter().skip(1).map(|of| of.join(" ")).collect();
    all.sort();
    tested.sort();
    assert_eq!(all, tested);
}

#[test]
fn every_help_holds_an_example_and_no_line_breaks_on_a_narrow_page() {
    for of in COMMANDS {
        let help = help(of);
        assert!(!examples(&help).is_empty(), "{of:?} has no example");
        for line in help.lines() {
            assert!(line.chars().count() <= 100, "{of:?}: \"{line}\"");
        }
    }
}

#[test]
fn every_example_in_the_help_works() {
    let place = folder("help");
    std::fs::copy(root().join("demo/willow-bend.toml"), place.join("my-visit.toml")).expect("the demo visit");
    std::fs::copy(root().join("demo/willow-bend-boom.toml"), place.join("my-boom.toml"))
        .expect("the demo boom");
    std::fs::write(
        place.join("readings.jsonl"),
        "{\"time\": \"30 s\", \"step\": \"1 fl oz\", \"limit\": \"10 %\", \"readings\": [\"14 fl oz\", null]}\n",
    )
    .expect("a batch");
    std::fs::write(
        place.join("sprayers.jsonl"),
        "{\"time\": \"30 s\", \"step\": \"1 fl oz\", \"sections\": [[\"14 fl oz\", null]]}\n",
    )
    .expect("a batch of sprayers");
    std::fs::write(place.join("season.toml"), "[tips]\nsound = 20\nworn = 1\n").expect("records");
    let mut ran_examples = 0;
    // A server runs until it is stopped, and the app is in this program only when it was built with it: `tests/serve.rs`
    // and `tests/app.rs` see to them.
    for of in COMMANDS.into_iter().filter(|of| !matches!(of.first(), Some(&"serve" | &"app"))) {
        for example in examples(&help(of)) {
            // What stands behind `>` is the shell's to do.
            let typed = example.split(" > ").next().unwrap_or(&example);
            let words = shell_split(typed);
            let ran = finish(command().current_dir(&place).args(&words[1..]), b"");
            // That a file was written is said beside the answer.
            let told = ran.err.lines().filter(|line| !line.starts_with("note: ")).count();
            assert_eq!((ran.status, told), (0, 0), "{example}: {ran:?}");
            assert!(!ran.out.trim().is_empty(), "{example}");
            ran_examples += 1;
        }
    }
    assert!(ran_examples >= 25, "only {ran_examples} examples were found");
}

#[test]
fn examples_say_what_comes_out() {
    // Behind each of these examples stands what it gives.
    for (example, told) in
        [("course --width \"20 in\"", "204 ft"), ("course --width \"50 cm\" --units metric", "100 m")]
    {
        assert!(help(&["course"]).contains(told));
        let ran = run(&shell_split(example).iter().map(String::as_str).collect::<Vec<_>>());
        assert!(ran.out.starts_with(told), "{example}: {ran:?}");
    }
}

#[test]
fn the_help_of_a_limit_names_every_limit() {
    let catch = help(&["catch"]);
    for profile in calibration::catch::profiles() {
        assert!(catch.contains(profile.name), "{} is not named", profile.name);
    }
}

#[test]
fn a_shell_gets_its_completions() {
    for shell in ["bash", "zsh", "fish", "powershell", "elvish"] {
        let ran = run(&["completions", shell]);
        assert_eq!((ran.status, ran.err.as_str()), (0, ""), "{ran:?}");
        for name in ["course", "spacing", "visit", "--units"] {
            assert!(ran.out.contains(name.trim_start_matches('-')), "{shell} lacks {name}");
        }
    }
}
