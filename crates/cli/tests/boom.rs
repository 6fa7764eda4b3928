//! `evenswath boom`: what scripts may rely on, what people read, and what is refused.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{answer, near, number, run, run_with, text, word};

const DEMO: &str = "demo/willow-bend-boom.toml";

/// A boom as the contract has it, one section.
const ONE: &str = "[supply]\ngauge_pressure = \"3 bar\"\nhose_length = \"2 m\"\nhose_bore = \"25 mm\"\nminor_loss = 2\n\
    [[section]]\nfeed_length = \"3 m\"\nfeed_bore = \"19 mm\"\nfeed_minor_loss = 2\nhose_bore = \"19 mm\"\n\
    enters_between = [3, 4]\ntip_spacing = \"0.5 m\"\nbody_bore = \"8 mm\"\nbody_length = \"0.03 m\"\nbody_minor_loss = 6\n\
    check_valve_opens_at = \"0 bar\"\nroughness = \"0.0015 mm\"\n\
    tips = [\"1.6 L/min @ 3 bar\", \"1.6 L/min @ 3 bar\", \"plugged\", \"1.6 L/min @ 3 bar\", \"1.6 L/min @ 3 bar\", \"1.6 L/min @ 3 bar\"]\n";

#[test]
fn the_answer_has_every_tip_with_flow_and_pressure() {
    let ran = run_with(&["boom", "-", "--json", "--units", "metric"], ONE.as_bytes());
    assert_eq!((ran.status, ran.err.as_str()), (0, ""), "{ran:?}");
    let found = ran.json();
    let tips = found["sections"][0]["tips"].as_array().expect("tips");
    assert_eq!(tips.len(), 6);
    let flows: Vec<f64> = tips.iter().map(|tip| number(tip, "/flow/value")).collect();
    near(number(&found, "/total_flow/value"), flows.iter().sum(), 1e-12);
    assert_eq!((flows[2], word(&tips[2], "/state")), (0.0, "plugged"));
    for tip in tips {
        assert_eq!((word(tip, "/flow/unit"), word(tip, "/pressure/unit")), ("L/min", "bar"));
    }
    // The orifice equation at the tip's own pressure: 1.6 √(p/3).
    near(flows[0], 1.6 * (number(&tips[0], "/pressure/value") / 3.0).sqrt(), 1e-9);
    // The body's K of 6 costs about 0.008 bar at 1.6 L/min (by hand: 6 · v²/2, v = 0.5305 m/s), its 3 cm of 8 mm some more.
    let body = number(&found, "/sections/0/lost/body/value");
    assert!((0.0083..0.0095).contains(&body), "{body}");
    // US units where nothing else is asked for, the same flow.
    let us = run_with(&["boom", "-", "--json"], ONE.as_bytes()).json();
    assert_eq!((word(&us, "/total_flow/unit"), word(&us, "/gauge_pressure/unit")), ("gal/min", "psi"));
    near(number(&us, "/total_flow/value") * 3.785_411_784, number(&found, "/total_flow/value"), 1e-12);
}

#[test]
fn people_read_a_table_for_each_section_and_what_is_lost() {
    let read = text(&["boom", DEMO]);
    for line in [
        "2.44 gal/min in all, with 30 psi at the gauge",
        "Section 3: 0.882 gal/min, 29.6 psi where the feed meets the hose",
        "0.35 psi in the feed with valve and",
        "plugged",
    ] {
        assert!(read.contains(line), "{line}\n{read}");
    }
    // Tips count on from section to section, as everywhere else.
    assert!(read.lines().any(|line| line.trim_start().starts_with("12 ")), "{read}");
    let json = answer(&["boom", DEMO]);
    assert_eq!(json["sections"][2]["tips"][3]["number"], 12);
    let spanish = text(&["boom", DEMO, "--lang", "es"]);
    assert!(spanish.contains("Sección 3: 0.882 gal/min") && !spanish.contains("lost"), "{spanish}");
}

#[test]
fn mistakes_have_their_place_and_status_2() {
    let sections = ONE.replace("enters_between = [3, 4]", "enters_between = [5, 7]");
    for (file, told) in [
        (sections, "line 11, column 18: section.enters_between: the feed cannot meet the hose there"),
        (ONE.replace("\"19 mm\"", "\"19 m\""), "section.feed_bore: \"19 m\" is no bore of a hose"),
        (ONE.replace("minor_loss", "minor_lost"), "there is no field of this name"),
        (ONE.replace("\"1.6 L/min @ 3 bar\"", "\"plugged\""), "standard input: no tip of this boom runs"),
        (
            ONE.replace("gauge_pressure = \"3 bar\"", "gauge_pressure = \"0 bar\""),
            "must be more than nothing",
        ),
        (
            ONE.replace("tips =", "tip_heights = [\"1 m\"]\ntips ="),
            "the heights (1) and the tips (6) differ in number",
        ),
    ] {
        let ran = run_with(&["boom", "-"], file.as_bytes());
        assert_eq!((ran.status, ran.out.as_str()), (2, ""), "{ran:?}");
        assert!(ran.err.contains(told), "{told}\n{}", ran.err);
    }
    assert_eq!(run(&["boom", "no-such-boom.toml"]).status, 3);
}
