//! A visit file goes into a notebook and comes out saying the same.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use notebook::folded;

use common::{of_file, visit};

fn same(name: &str, file: &str) {
    let before = visit::file::read(file.as_bytes()).unwrap_or_else(|errors| panic!("{name}: {errors}"));
    let (book, _) = of_file(file);
    let folded = folded(&book);
    let Some(found) = folded.visits.get(&visit(1).id) else {
        // A file without a single field is a visit of which nothing was written yet.
        assert_eq!(before, visit::Visit::default(), "{name}");
        return;
    };
    let after = found.visit().unwrap_or_else(|errors| panic!("{name}: {errors}\n{}", found.file()));
    assert_eq!(before, after, "{name}:\n{}", found.file());
    assert!(found.two_values.is_empty() && folded.unknown.is_empty(), "{name}");
}

#[test]
fn the_demo_comes_out_as_it_went_in() {
    same("demo", include_str!("../../../demo/willow-bend.toml"));
}

#[test]
fn every_field_there_is_comes_out_as_it_went_in() {
    // The template with every line switched on names each field; those that exclude one another are taken by turns.
    let fields: &[(&str, &str)] = &[
        (
            "spaced marks",
            "[sprayer]\nkind = \"boom\"\ntips = 3\nspacing = \"20 in\"\n[spacing]\nmarks = [\"0 in\", \"20 in\", \"40 1/4 in\"]\ntape_marks = \"1/4 in\"\ncannot_move = [1, 3]\nlimit = \"5 %\"\n",
        ),
        (
            "groups",
            "[sprayer]\nkind = \"boom\"\nsections = [2, 2]\nspacing = \"20 in\"\n[sprayer.groups]\n\"end tips\" = [1, 4]\n",
        ),
        ("bands", "[sprayer]\nkind = \"band\"\ntips = 4\nspacing = \"30 in\"\nband_width = \"12 in\"\n"),
        (
            "boomless",
            "[sprayer]\nkind = \"boomless\"\ntips = 2\nwetted_width = \"36 ft\"\noverlap = \"15 %\"\n",
        ),
        ("hand", "[sprayer]\nkind = \"hand\"\nspray_width = \"6 ft\"\n"),
        (
            "settings apart",
            "[setting]\npressure = \"30 psi\"\n[drive]\ncourse = \"204 ft\"\nruns = [\"27.80 s\", { time = \"1:05\", way = \"back\" }]\n[drive.setting]\ngear = \"4th\"\n[catch]\ntime = \"as driven\"\ncup_marks = \"1 fl oz\"\nnew_tip = [\"19\", \"19.5\"]\n[catch.setting]\npressure = \"31 psi\"\n[[catch.round]]\nreadings = [14, 14.50, [15, 14.5], \"-\", { reading = \"14 fl oz\", time = \"29 s\", run = 2 }]\n[[catch.round]]\nafter = \"new tips\"\ntips = [2, 4]\ntime = \"60 s\"\nreadings = [28.5, [29, \"28 fl oz\"]]\n",
        ),
        (
            "plan",
            "[sprayer]\nkind = \"boom\"\ntips = 3\nspacing = \"20 in\"\n[refill]\nused = \"6.5 gal\"\narea = \"0.5 ac\"\n[target]\nrate = \"15 gal/ac\"\nwithin = \"5 %\"\nmixed_for = \"15 gal/ac\"\n[[product]]\nname = \"Product \\\"A\\\" \\\\ ñ\"\nrate = \"2 pt/ac\"\nlabel_most = \"2 pt/ac\"\nprice = \"$40/gal\"\n[[product]]\nname = \"Product B\"\nrate = \"0.25 % v/v\"\n[job]\narea = \"40 ac\"\n",
        ),
        ("nothing", ""),
    ];
    for (name, file) in fields {
        same(name, file);
    }
}

#[test]
fn a_file_with_mistakes_gives_nothing() {
    let mut rows = 0;
    let entries = notebook::entries_of_file(b"[drive]\ncourse = \"204\"\n", || {
        rows += 1;
        common::row(rows)
    });
    assert!(entries.is_err());
}
