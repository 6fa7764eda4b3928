//! Files of the wrong kind, and readings that cannot be: what a stranger is told.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{Ran, folder, run, run_with, visit, word};

/// Checks a visit that stands in a file of these bytes.
fn check(name: &str, content: &[u8]) -> Ran {
    let file = folder(&format!("bad-{name}")).join("visit.toml");
    std::fs::write(&file, content).expect("a file");
    let ran = run(&["visit", "check", file.to_str().expect("a path")]);
    assert!(!ran.all().contains("panicked") && !ran.all().contains('\u{1b}'), "{ran:?}");
    ran
}

/// The file is refused with these words.
fn refused(name: &str, content: &[u8], words: &[&str]) {
    let ran = check(name, content);
    assert_eq!((ran.status, ran.out.as_str()), (2, ""), "{ran:?}");
    for word in words {
        assert!(ran.err.contains(word), "{name} lacks \"{word}\": {ran:?}");
    }
    assert!(ran.err.contains("visit.toml: "), "the file is named: {ran:?}");
    assert!(ran.err.lines().any(|line| line.starts_with("  ")), "what would do: {ran:?}");
    assert!(ran.err.lines().count() <= 30, "a screen's worth: {ran:?}");
}

#[test]
fn an_empty_file_is_an_empty_visit_and_says_how_to_begin() {
    for (name, content) in
        [("empty", &b""[..]), ("blank", b"\n\n"), ("comment", b"# nothing yet\n"), ("mark", b"\xef\xbb\xbf")]
    {
        let ran = check(name, content);
        assert_eq!((ran.status, ran.err.as_str()), (0, ""), "{ran:?}");
        assert!(
            ran.out.contains("nothing in this visit yet") && ran.out.contains("evenswath visit new"),
            "{ran:?}"
        );
    }
    // Windows lines, and one part alone.
    let ran = check("windows", b"[visit]\r\nfarm = \"Willow Bend Farm\"\r\n");
    assert_eq!(ran.status, 0);
    assert!(ran.out.contains("Willow Bend Farm"), "{ran:?}");
}

#[test]
fn files_of_another_kind_are_told_apart() {
    refused("latin", b"[visit]\nfarm = \"Sm\xf8rum\"", &["line 2, column 11", "UTF-8"]);
    refused("png", b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\x02X", &["line 1, column 1", "UTF-8", "spreadsheet"]);
    refused("zip", b"PK\x03\x04\x14\0\0\0\x08\0", &["line 1", "TOML"]);
    refused("utf-16", b"\xff\xfe[\0v\0i\0s\0i\0t\0]\0", &["UTF-8"]);
    refused("zeros", &[0; 64], &["line 1"]);
    refused("csv", b"tip,reading\n1,14\n2,15\n", &["line 1", "TOML"]);
    refused("json", b"{\"visit\": {\"farm\": \"Willow Bend\"}}", &["line 1", "TOML"]);
    refused("prose", b"Tip one gave fourteen ounces.\n", &["line 1", "TOML"]);
}

#[test]
fn a_cut_off_file_is_pointed_at_where_it_ends() {
    refused("in-a-text", b"[visit]\nfarm = \"Wil", &["line 2"]);
    refused("in-a-list", b"[catch]\ntime = \"30 s\"\n[[catch.round]]\nreadings = [14, 15", &["line 4"]);
    refused("in-a-header", b"[visit]\nfarm = \"A\"\n[dri", &["line 3"]);
    refused("twice", b"[visit]\nfarm = \"A\"\nfarm = \"B\"", &["line 3"]);
    // The demo visit cut at every line: some of it is lacking, nothing crashes.
    let demo = std::fs::read_to_string(common::root().join("demo/willow-bend.toml")).expect("the demo visit");
    for end in demo.match_indices('\n').map(|(place, _)| place).step_by(7) {
        let ran = run_with(&["visit", "check", "-"], &demo.as_bytes()[..end]);
        assert!(matches!(ran.status, 0 | 2) && !ran.all().contains("panicked"), "cut at {end}: {ran:?}");
    }
}

#[test]
fn files_too_large_or_full_of_mistakes_are_refused_in_a_screenful() {
    refused("million", "# a line\n".repeat(1_000_000).as_bytes(), &["more than 1000000 bytes", "visit new"]);
    refused("endless", "x".repeat(3_000_000).as_bytes(), &["more than 1000000 bytes"]);
    // As many mistakes as fit: the first dozen are shown, the rest counted.
    let list = vec!["\"x\""; 200_000].join(",");
    refused(
        "mistakes",
        format!("[spacing]\nmarks = [{list}]").as_bytes(),
        &["line 2, column 10", "line 2, column 14", "and 199988 more"],
    );
    refused("deep", format!("a = {}", "[".repeat(100_000)).as_bytes(), &["TOML"]);
    refused("dotted", format!("{}a = 1", "a.".repeat(100_000)).as_bytes(), &["TOML"]);
    let rounds = "[[catch.round]]\nreadings = [14]\n".repeat(20_000);
    let ran =
        check("rounds", format!("[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n{rounds}").as_bytes());
    assert!(ran.status == 2 && ran.err.contains("line 4") && ran.err.contains("20000 rounds"), "{ran:?}");
}

#[test]
fn what_is_no_file_at_all_is_status_3() {
    let place = folder("bad-none");
    for (path, told) in [(place.join("visit.toml"), "no such file"), (place, "is it a file")] {
        let path = path.to_str().expect("a path").to_string();
        let ran = run(&["visit", "check", &path]);
        assert_eq!((ran.status, ran.out.as_str()), (3, ""), "{ran:?}");
        assert!(ran.err.contains(&path) && ran.err.contains(told), "{ran:?}");
    }
}

#[test]
fn several_mistakes_are_told_at_once_in_the_order_they_stand() {
    let ran = check(
        "several",
        b"[sprayer]\ntips = 0\nspacing = \"20\"\n[drive]\ncourse = \"204\"\nrun = [\"27 s\"]\n",
    );
    let lines: Vec<&str> = ran.err.lines().filter(|line| line.starts_with("error: ")).collect();
    let places: Vec<usize> = ["line 2", "line 3", "line 4", "line 5", "line 6"]
        .iter()
        .map(|place| {
            lines.iter().position(|line| line.contains(place)).unwrap_or_else(|| panic!("{place}: {ran:?}"))
        })
        .collect();
    assert_eq!(places, [0, 1, 2, 3, 4], "{ran:?}");
}

/// A boom of size 02 tips, 0.20 gal/min at 40 psi, with these readings and this word about doubtful ones.
fn absurd(readings: &str, doubtful: &str) -> Ran {
    let text = format!(
        "[sprayer]\ntips = 4\nspacing = \"20 in\"\ntip_size = \"02\"\n[setting]\npressure = \"40 psi\"\n[catch]\ntime = \"30 s\"\n\
         cup_marks = \"1 fl oz\"\ncup_holds = \"32 fl oz\"\n{doubtful}\n[[catch.round]]\nreadings = {readings}\n"
    );
    run_with(&["visit", "check", "-", "--json"], text.as_bytes())
}

#[test]
fn readings_that_cannot_be_are_refused_unless_they_are_kept() {
    // A size 02 tip gives 0.20 gal/min: 12.8 fl oz in half a minute. 600 is a slip, so is more than the cup holds.
    for (readings, words) in [
        ("[13, \"600 fl oz\", 13, 13]", vec!["tip 2", "600 fl oz", "30 s", "cup holds 32 fl oz"]),
        ("[13, 13, 13, \"33 fl oz\"]", vec!["tip 4", "33 fl oz", "run over"]),
        (
            "[13, 13, { reading = \"30 fl oz\", time = \"10 s\" }, 13]",
            vec!["tip 3", "30 fl oz", "10 s", "new tip"],
        ),
    ] {
        let ran = absurd(readings, "");
        assert_eq!((ran.status, ran.out.as_str()), (2, ""), "{ran:?}");
        for told in words.iter().chain(&["doubtful = \"keep\"", "[catch]"]) {
            assert!(ran.err.contains(told), "{told} is missing: {ran:?}");
        }
        let kept = absurd(readings, "doubtful = \"keep\"");
        assert_eq!((kept.status, kept.err.as_str()), (0, ""), "{kept:?}");
        let answer = kept.json();
        let findings = answer["catch"]["findings"].as_array().expect("findings");
        let doubt = findings.iter().find(|finding| word(finding, "/code") == "catch_doubtful_kept");
        let doubt = word(doubt.expect("the doubt is told"), "/text");
        assert!(words.iter().skip(1).take(1).all(|told| doubt.contains(told)), "{doubt}");
    }
    let typed = ["catch", "--time", "30 s", "--step", "1 fl oz", "--cup-holds", "32 fl oz", "13", "40"];
    let ran = run(&typed);
    assert!(ran.status == 2 && ran.err.contains("tip 2") && ran.err.contains("--keep-doubtful"), "{ran:?}");
    let kept = run(&[&typed[..], &["--keep-doubtful"]].concat());
    assert_eq!(kept.status, 0);
    assert!(kept.out.contains("40 fl oz was kept though"), "{kept:?}");
    let line =
        b"{\"time\": \"30 s\", \"step\": \"1 fl oz\", \"cup_holds\": \"32 fl oz\", \"readings\": [13, 40]}";
    let ran = run_with(&["catch", "--batch", "-"], line);
    assert!(ran.status == 2 && ran.out.contains("--keep-doubtful"), "{ran:?}");
    assert_eq!(run_with(&["catch", "--batch", "-", "--keep-doubtful"], line).status, 0);
}

#[test]
fn parts_that_need_one_another_say_so() {
    for (text, told) in [
        ("[spacing]\nmarks = [\"0 in\", \"20 in\"]", "[sprayer]"),
        ("[refill]\nused = \"5 gal\"\ndistance = \"660 ft\"", "[sprayer]"),
        (
            "[catch]\ntime = \"as driven\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [14]",
            "[drive]",
        ),
        (
            "[sprayer]\ntips = 2\nspacing = \"20 in\"\n[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [14, 14, 14]",
            "tip 3",
        ),
    ] {
        let ran = run_with(&["visit", "check", "-"], text.as_bytes());
        assert!(ran.status == 2 && ran.err.contains(told), "{text}: {ran:?}");
    }
    assert_eq!(run(&["visit", "check", &visit("boom")]).status, 0);
}

#[test]
fn an_empty_list_is_not_passed_over_in_silence() {
    for (text, told) in [
        (
            "[sprayer]\nsections = []\nspacing = \"20 in\"",
            "line 2, column 12: sprayer.sections: nothing was given",
        ),
        ("[spacing]\nmarks = []", "line 2, column 9: spacing.marks: nothing was given"),
        ("[spacing]\ngaps = []", "line 2, column 8: spacing.gaps: nothing was given"),
        ("[drive]\ncourse = \"204 ft\"\nruns = []", "line 3, column 8: drive.runs: nothing was given"),
        ("[[product]]\nname = \"\"\nrate = \"2 pt/ac\"", "line 2, column 8: product.name: nothing was given"),
    ] {
        let ran = run_with(&["visit", "check", "-"], text.as_bytes());
        assert!(ran.status == 2 && ran.err.contains(told), "{text}: {ran:?}");
        assert_eq!(ran.err.matches("error: ").count(), 1, "told once: {ran:?}");
    }
}
