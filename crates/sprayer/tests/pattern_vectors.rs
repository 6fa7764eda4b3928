//! Patterns held to scipy's integrals of the dose along the ground: set-ups with one thing wrong, and booms with all of it.
//!
//! `tools/vectors/boom_pattern.py` makes the booms and what every groove gets.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use serde_json::Value;
use sprayer::pattern::{
    Evenness, Fan, Grooves, Judged, MeasuredFan, Pattern, Shape, SprayBoom, SprayTip, pattern,
};
use units::{Angle, Length};

/// The file keeps ten decimals.
const AGREE: f64 = 2e-9;

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

fn metres(value: &Value) -> Length {
    Length::metres(number(value))
}

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().expect("a list").iter().map(number).collect()
}

fn tip(of: &Value) -> SprayTip {
    let straight =
        SprayTip::new(metres(&of["place"]), metres(&of["height"]), Angle::degrees(number(&of["angle"])));
    SprayTip {
        offset: metres(&of["offset"]),
        flow: number(&of["flow"]),
        tilt: Angle::degrees(number(&of["tilt"])),
        twist: Angle::degrees(number(&of["twist"])),
        ..straight
    }
}

fn fan(of: &Value) -> Fan {
    match of.as_str() {
        Some(word) => Fan::Assumed(Shape::named(word).expect("a shape")),
        None => Fan::Measured(
            MeasuredFan::new(
                &numbers(&of["collected"]),
                metres(&of["groove"]),
                metres(&of["height"]),
                Some(metres(&of["tip_at"])),
            )
            .expect("a fan"),
        ),
    }
}

fn worked_out(line: &Value, fans: &[Fan]) -> Pattern {
    let tips = line["tips"].as_array().expect("tips").iter().map(tip).collect();
    let boom = SprayBoom::new(tips, metres(&line["spacing"])).expect("a boom");
    let grooves = Grooves { width: metres(&line["groove"]), judged: Judged::Middle(metres(&line["middle"])) };
    pattern(&boom, fans, &grooves).unwrap_or_else(|error| panic!("{}: {error}", line["name"]))
}

fn lines() -> Vec<Value> {
    let text = include_str!("vectors/pattern.jsonl");
    text.lines().map(|line| serde_json::from_str(line).expect("JSON")).collect()
}

#[test]
fn expected_from_scipy_every_groove() {
    let (mut grooves, mut measured) = (0, 0);
    for line in lines() {
        let found = worked_out(&line, &[fan(&line["fan"])]);
        let Evenness { mean, spread, lowest, highest, .. } = &found.fans[0];
        let judged: Vec<_> = found.grooves.iter().filter(|groove| groove.judged).collect();
        let expected = &line["found"];
        let doses = numbers(&expected["doses"]);
        assert_eq!(judged.len(), doses.len(), "{}", line["name"]);
        let near = |ours: f64, theirs: f64, what: &str| {
            assert!((ours - theirs).abs() <= AGREE, "{}: {what} {ours}, scipy {theirs}", line["name"]);
        };
        near(judged[0].from.as_metres(), number(&expected["left"]), "left edge");
        let scale = mean / number(&line["spacing"]);
        for (groove, dose) in judged.iter().zip(doses) {
            near(groove.dose.low * scale, dose, "dose");
            grooves += 1;
        }
        near(*spread, number(&expected["spread"]), "spread");
        near(lowest.dose, number(&expected["lowest"]), "lowest");
        near(highest.dose, number(&expected["highest"]), "highest");
        measured += u32::from(line["fan"].is_object());
    }
    assert!(grooves > 2500 && measured >= 5, "{grooves} grooves, {measured} measured fans");
}

#[test]
fn expected_from_scipy_a_plugged_tip_shows_where_flows_average_out() {
    // The lesson of these set-ups: one plugged tip takes 44 % of the dose under it, one worn by a fifth hardly shows.
    let lines = lines();
    let spread_of = |name: &str| {
        let line = lines.iter().find(|line| line["name"] == name).expect("a set-up");
        worked_out(line, &[fan(&line["fan"])])
    };
    let plugged = spread_of("triangle 110 at 0.5, plugged");
    assert!((plugged.lowest.low - 0.56).abs() < 0.005, "{:?}", plugged.lowest);
    assert_eq!(plugged.under_lowest, vec![7]);
    let worn = spread_of("triangle 110 at 0.5, worn by a fifth");
    let sound = spread_of("triangle 110 at 0.5");
    assert!(worn.spread.high - sound.spread.high < 0.02 && plugged.spread.high > 0.3);
}

#[test]
fn the_spread_is_not_monotone_in_height_and_hangs_on_the_shape() {
    // Why there is a band and never one figure.
    let boom = |height| {
        SprayBoom::alike(15, Length::metres(0.5), Length::metres(height), Angle::degrees(110.0))
            .and_then(|boom| pattern(&boom, &Fan::tapered(), &Grooves::default()))
            .expect("a pattern")
    };
    let spreads = [0.35, 0.5, 0.6].map(|height| boom(height).spread.high);
    assert!(spreads[0] > spreads[1] && spreads[1] > spreads[2], "{spreads:?}");
    let triangle = |height| boom(height).fans[0].spread;
    assert!(triangle(0.35) < triangle(0.5) && triangle(0.5) > triangle(0.6));
    assert!(boom(0.35).spread.high - boom(0.35).spread.low > 0.05);
}
