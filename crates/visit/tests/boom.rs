//! A boom's file: what flows, held to EPANET's table and to sums by hand, and every mistake refused.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use units::{Pressure, Quantity};
use visit::boom::{Boom, BoomFlows, PlumbingError, TipState, read};

/// Two sections of six tips; `more` goes into the right one, `tips` are the left one's.
fn two_sections(supply: &str, tips: &str, hose: &str, more: &str) -> String {
    let section = |length: &str, tips: &str| {
        format!(
            "[[section]]\nfeed_length = \"{length}\"\nfeed_bore = \"{hose}\"\nhose_bore = \"{hose}\"\n\
             enters_between = [3, 4]\ntip_spacing = \"0.5 m\"\nbody_bore = \"8 mm\"\nbody_length = \"0.03 m\"\n\
             body_minor_loss = 6\ntips = [{tips}]\n"
        )
    };
    let six = "\"1.6 L/min @ 3 bar\", ".repeat(6);
    let tips = if tips.is_empty() { &six } else { tips };
    format!(
        "[supply]\n{supply}\nhose_length = \"2 m\"\nhose_bore = \"25 mm\"\nminor_loss = 2\n{}feed_minor_loss = 2\n{}{more}\n",
        section("3 m", tips),
        section("4 m", &six)
    )
}

fn boom(text: &str) -> Boom {
    read(text.as_bytes()).unwrap_or_else(|errors| panic!("{errors}\n{text}"))
}

fn flows(text: &str) -> BoomFlows {
    boom(text).flows().expect("it flows")
}

fn tips(flows: &BoomFlows) -> Vec<f64> {
    flows
        .sections
        .iter()
        .flat_map(|section| section.tips.iter().map(|tip| tip.flow.as_litres_per_minute()))
        .collect()
}

const HELD: &str = "gauge_pressure = \"3 bar\"";

#[test]
fn expected_from_epanet_two_sections() {
    // EPANET 2.2 (its g is 32.2 ft/s², ours 9.80665 m/s²: 8e-4 of a loss, below the four decimals here). The right tips have the
    // longer feed; left and right, L/min and bar; then the manifold, both entries, and the total.
    let cases = [
        (two_sections(HELD, "", "19 mm", "feed_minor_loss = 2"), [1.5924, 1.5917], [2.9714, 2.9689], 19.1044),
        (
            two_sections(HELD, "", "19 mm", "feed_minor_loss = 122"),
            [1.5924, 1.5437],
            [2.9716, 2.7926],
            18.8171,
        ),
        (two_sections(HELD, "", "13 mm", "feed_minor_loss = 2"), [1.5787, 1.5747], [2.9206, 2.9058], 18.9220),
    ];
    for (text, expected, bars, total) in cases {
        let found = flows(&text);
        for (section, (flow, bar)) in found.sections.iter().zip(expected.into_iter().zip(bars)) {
            let first = &section.tips[0];
            assert!((first.flow.as_litres_per_minute() - flow).abs() < 1.5e-4, "{first:?} {flow}");
            assert!((first.pressure.as_bar() - bar).abs() < 3e-4, "{first:?} {bar}");
        }
        assert!(
            (found.total.as_litres_per_minute() - total).abs() < 2e-3,
            "{}",
            found.total.as_litres_per_minute()
        );
        assert!((found.gauge.as_bar() - 3.0).abs() < 1e-12);
    }
    let plugged = "\"1.6 L/min @ 3 bar\", \"1.6 L/min @ 3 bar\", \"1.6 L/min @ 3 bar\", \"plugged\", \
                   \"1.6 L/min @ 3 bar\", \"1.6 L/min @ 3 bar\"";
    let found = flows(&two_sections(HELD, plugged, "19 mm", "feed_minor_loss = 2"));
    for (tip, expected) in tips(&found).iter().zip([1.5935, 1.5935, 1.5936, 0.0, 1.5935, 1.5935, 1.5920]) {
        assert!((tip - expected).abs() < 1.5e-4, "{tip} {expected}");
    }
    assert_eq!(found.sections[0].tips[3].state, TipState::Plugged);
    let valve =
        flows(&two_sections(HELD, "", "19 mm", "feed_minor_loss = 2\ncheck_valve_opens_at = \"0.5 bar\""));
    assert!((tips(&valve)[6] - 1.4529).abs() < 5e-4, "{}", tips(&valve)[6]);
}

#[test]
fn what_is_lost_on_the_way_is_what_is_missing_at_the_tip() {
    let more = "feed_minor_loss = 40\ncheck_valve_opens_at = \"0.4 bar\"\nleft_height = \"-0.6 m\"\nright_height = \"0.8 m\"";
    for supply in [
        HELD,
        "total_flow = \"17 L/min\"",
        "[supply.pump]\npressure_at_no_flow = \"5 bar\"\ncurve_point = \"60 L/min @ 2 bar\"\nbypass = \"15 L/min @ 3 bar\"",
    ] {
        let text = if supply.starts_with('[') {
            // A part of its own comes behind the fields of the part above it.
            let (first, rest) = two_sections("", "", "13 mm", more)
                .split_once("[[section]]")
                .map(|(a, b)| (a.to_string(), b.to_string()))
                .expect("sections");
            format!("{first}{supply}\n[[section]]{rest}")
        } else {
            two_sections(supply, "", "13 mm", more)
        };
        let found = flows(&text);
        for section in &found.sections {
            let lost = section.lost.expect("it runs");
            let parts = [lost.feed, lost.hose, lost.body, lost.check_valve, lost.height];
            let sum: f64 = parts.iter().map(|part| part.si()).sum();
            let tip = &section.tips[lost.tip - 1];
            assert!((found.manifold.si() - tip.pressure.si() - sum).abs() < 1e-3, "{lost:?}");
            assert!([lost.feed, lost.hose, lost.body].iter().all(|part| part.si() > 0.0), "{lost:?}");
            assert!(section.tips.iter().all(|other| other.pressure >= tip.pressure), "{lost:?}");
        }
        // The right end stands higher than the left by 1.4 m: 1000 · 9.80665 · 1.4 Pa less pressure but for the losses.
        let right = &found.sections[1].tips;
        let falls = right[0].pressure.si() - right[5].pressure.si();
        assert!((falls - 13_729.0).abs() < 300.0, "{falls}");
    }
}

#[test]
fn a_controller_holds_the_flow_and_a_pump_gives_what_is_left() {
    let held = flows(&two_sections("total_flow = \"17 L/min\"", "", "19 mm", "feed_minor_loss = 2"));
    assert!((held.total.as_litres_per_minute() - 17.0).abs() < 1e-9);
    let worn = "\"1.76 L/min @ 3 bar\", ".repeat(6);
    let worn = flows(&two_sections("total_flow = \"17 L/min\"", &worn, "19 mm", "feed_minor_loss = 2"));
    assert!(worn.gauge < held.gauge);
    // One orifice at the pump, by hand: p = 6 bar - 4 bar (q/40)², q = 20 √(p/3): p (1 + 4/12) = 6, p = 4.5 bar, q = 24.49 L/min.
    let text = "[supply.pump]\npressure_at_no_flow = \"6 bar\"\ncurve_point = \"40 L/min @ 2 bar\"\n[[section]]\n\
                feed_length = \"1 cm\"\nfeed_bore = \"200 mm\"\ntips = [\"20 L/min @ 3 bar\"]\n";
    let found = flows(text);
    assert!((found.gauge.as_bar() - 4.5).abs() < 1e-5, "{}", found.gauge.as_bar());
    assert!((found.total.as_litres_per_minute() - 24.494_9).abs() < 1e-3);
    let with = flows(&text.replace("[[section]]", "bypass = \"20 L/min @ 3 bar\"\nbypass_opens_at = \"2 bar\"\nagitation = \"5 L/min @ 3 bar\"\n[[section]]"));
    let pump = with.pump.expect("a pump");
    let back = pump.bypass.expect("a bypass") + pump.agitation.expect("agitation");
    assert!((pump.flow.si() - back.si() - with.total.si()).abs() < 1e-12);
    assert!(with.gauge < found.gauge && with.gauge > Pressure::bar(2.0));
}

#[test]
fn a_heavier_liquid_flows_less_by_the_root_of_its_density() {
    let one = |liquid: &str| {
        let text = format!(
            "{liquid}[supply]\ngauge_pressure = \"3 bar\"\n[[section]]\nfeed_length = \"1 cm\"\nfeed_bore = \"200 mm\"\ntips = [\"1.6 L/min @ 3 bar\"]\n"
        );
        flows(&text).total.as_litres_per_minute()
    };
    assert!((one("") - 1.6).abs() < 1e-6);
    // 1.44 times as heavy: 1/1.2 of the flow (orifice equation).
    assert!((one("[liquid]\ndensity = \"1.44 kg/L\"\nviscosity = \"2.5 cSt\"\n") - 1.6 / 1.2).abs() < 1e-6);
}

#[test]
fn a_boom_that_cannot_flow_says_so() {
    let plugged = "\"plugged\", ".repeat(6);
    let all = two_sections(HELD, &plugged, "19 mm", "feed_minor_loss = 2")
        .replace("\"1.6 L/min @ 3 bar\"", "\"plugged\"");
    assert_eq!(boom(&all).flows(), Err(PlumbingError::NothingFlows));
    let shut = "[supply]\ngauge_pressure = \"0.4 bar\"\n[[section]]\nfeed_length = \"1 m\"\nfeed_bore = \"19 mm\"\n\
                check_valve_opens_at = \"0.5 bar\"\ntips = [\"1.6 L/min @ 3 bar\"]\n";
    assert_eq!(boom(shut).flows(), Err(PlumbingError::NothingFlows));
}

#[test]
fn every_mistake_is_pointed_at() {
    let good = two_sections(HELD, "", "19 mm", "feed_minor_loss = 2");
    boom(&good);
    // What stands there, what is put there instead, the code, the case and the field.
    let cases = [
        ("feed_bore = \"19 mm\"", "feed_bore = \"0.4 mm\"", "file_value", Some("bore"), "section.feed_bore"),
        ("hose_bore = \"25 mm\"", "hose_bore = \"2 m\"", "file_value", Some("bore"), "supply.hose_bore"),
        ("[3, 4]", "[3, 5]", "file_value", Some("enters_between"), "section.enters_between"),
        ("[3, 4]", "[6, 7]", "file_value", Some("enters_between"), "section.enters_between"),
        ("[3, 4]", "[3]", "file_value", Some("enters_between"), "section.enters_between"),
        ("enters_between = [3, 4]", "feeds_at = 7", "file_value", Some("feeds_at"), "section.feeds_at"),
        (
            "enters_between = [3, 4]",
            "enters_here = 3",
            "file_unknown_field",
            Some("field"),
            "section.enters_here",
        ),
        ("enters_between = [3, 4]\n", "", "file_missing_field", None, "section.enters_between"),
        (
            "tip_spacing = \"0.5 m\"",
            "tip_spacing = \"0 m\"",
            "file_not_positive",
            None,
            "section.tip_spacing",
        ),
        (
            "body_minor_loss = 6",
            "body_minor_loss = \"six\"",
            "file_minor_loss",
            None,
            "section.body_minor_loss",
        ),
        ("\"1.6 L/min @ 3 bar\"", "\"1.6 L/min\"", "quantity_no_pressure", None, "section.tips"),
        ("\"1.6 L/min @ 3 bar\"", "true", "file_wrong_kind", Some("text"), "section.tips"),
        (
            "gauge_pressure = \"3 bar\"",
            "gauge_pressure = \"3\"",
            "quantity_missing_unit",
            None,
            "supply.gauge_pressure",
        ),
        ("gauge_pressure = \"3 bar\"\n", "", "file_missing_field", None, "supply.gauge_pressure"),
        (
            "body_length",
            "tip_heights = [\"1 m\"]\nbody_length",
            "file_value",
            Some("heights_and_tips"),
            "section.tip_heights",
        ),
    ];
    for (from, to, code, case, field) in cases {
        let text = good.replacen(from, to, 1);
        assert_ne!(text, good, "{from}");
        let errors = read(text.as_bytes()).expect_err(to);
        let found = errors.list().iter().find(|error| error.field.as_deref() == Some(field));
        let found = found.unwrap_or_else(|| panic!("{to}: {errors}"));
        assert_eq!((found.code, found.case), (code, case), "{to}");
        assert!(found.place.is_some_and(|(line, _)| line > 0), "{to}");
    }
    let (line, column) = read(good.replacen("feed_bore = \"19 mm\"", "feed_bore = \"0.4 mm\"", 1).as_bytes())
        .expect_err("a bore")
        .list()[0]
        .place
        .expect("a place");
    assert_eq!((line, column), (8, 13));
}
