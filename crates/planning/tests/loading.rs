//! The tank as a grower meets it: full loads, the last part load, what can be measured, what is said.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use planning::{
    Basis, Job, LoadProduct, Loads, Product, ProductAmount, RangedAmount, loads, measure, tank_at_rate,
};
use units::{Area, Coded, Finding, Mass, Quantity, Ranged, UnitSystem, Volume, VolumePerArea, Weight};

fn job(area: &str, rate: &str, tank: &str) -> Job {
    Job {
        area: Area::parse(area).expect(area),
        carrier: VolumePerArea::parse(rate).expect(rate),
        tank: Volume::parse(tank).expect(tank),
        jugs: UnitSystem::Us,
    }
}

fn products(texts: &[&str]) -> Vec<Product> {
    texts.iter().map(|text| Product::parse(text).expect(text)).collect()
}

fn plan(area: &str, rate: &str, tank: &str, texts: &[&str]) -> Loads {
    loads(&job(area, rate, tank), &products(texts)).expect("loads")
}

fn words(product: &LoadProduct) -> &str {
    product.measure.as_ref().map_or("", |measure| measure.text.as_str())
}

fn finding<'a>(findings: &'a [Finding], code: &str) -> &'a Finding {
    findings
        .iter()
        .find(|finding| finding.code() == code)
        .unwrap_or_else(|| panic!("no {code} in {:?}", findings.iter().map(Coded::code).collect::<Vec<_>>()))
}

/// No placeholder is left unfilled in what is said.
fn all_filled(findings: &[Finding]) {
    for finding in findings {
        for system in [UnitSystem::Us, UnitSystem::Metric] {
            let said = format!("{} {}", finding.text(system), finding.action(system).unwrap_or_default());
            assert!(!said.contains(['{', '}']), "{said}");
        }
    }
}

#[test]
fn twenty_five_acres_is_exactly_one_load() {
    let plan = plan("25 ac", "20 gal/ac", "500 gal", &["A: 3 pt/ac"]);
    assert_eq!((plan.full_loads, plan.last.is_none(), plan.count()), (1, true, 1));
    let load = plan.full.as_ref().expect("one load");
    assert!((load.area.as_acres() - 25.0).abs() < 1e-9 && (load.volume.as_gallons() - 500.0).abs() < 1e-9);
    assert_eq!(words(&load.products[0]), "9 gal 3 pt");
}

#[test]
fn the_last_load_is_worked_out_from_the_acres_left() {
    // Agrochemical and Pesticide Safety handbook: the last load from the acres that are left. Figures ours.
    let plan = plan("60 ac", "20 gal/ac", "500 gal", &["A: 3 pt/ac", "B: 0.25 % v/v", "C: 2 lb/100 gal"]);
    assert_eq!((plan.full_loads, plan.count()), (2, 3));
    let last = plan.last.as_ref().expect("a part load");
    assert!((last.volume.as_gallons() - 200.0).abs() < 1e-9 && (last.area.as_acres() - 10.0).abs() < 1e-9);
    // 30 pt is 3 gal 6 pt, 3 qt; 0.25 % of 200 gal is half a gallon; 4 lb.
    assert_eq!(last.products.iter().map(words).collect::<Vec<_>>(), ["3 gal 3 qt", "2 qt", "4 lb"]);
    assert!(plan.shared.is_none());
    all_filled(&plan.findings);
}

#[test]
fn a_last_load_has_no_noise_of_subtracting() {
    let last = |area: &str, rate: &str, tank: &str| {
        let last = loads(&job(area, rate, tank), &[]).expect("loads").last.expect("a part load");
        (units::tidy_digits(last.volume.as_gallons()), units::tidy_digits(last.area.as_acres()))
    };
    // 1100 gal less two tanks of 500; 1100 less three of 307; a third of a gallon stays one.
    assert_eq!(last("55 ac", "20 gal/ac", "500 gal"), (100.0, 5.0));
    assert_eq!(last("55 ac", "20 gal/ac", "307 gal"), (179.0, 8.95));
    let (third, _) = last("1/3 ac", "20 gal/ac", "6 gal");
    assert!((third - 2.0 / 3.0).abs() < 1e-12, "{third}");
}

#[test]
fn a_small_last_load_is_shared() {
    let plan = plan("26 ac", "20 gal/ac", "500 gal", &["A: 3 pt/ac"]);
    let shared = plan.shared.as_ref().expect("shared");
    assert!((shared.volume.as_gallons() - 260.0).abs() < 1e-9);
    assert_eq!(words(&shared.products[0]), "4 gal 7 pt");
    let told = finding(&plan.findings, "load_last_small");
    assert_eq!(
        told.text(UnitSystem::Us),
        "The last load is only 20 gal in a 500 gal tank. A little mix is hard to measure and to stir."
    );
    assert_eq!(
        told.action(UnitSystem::Us).as_deref(),
        Some("Make the last two loads alike: 260 gal each, for 13 ac each.")
    );
    all_filled(&plan.findings);
    // A tenth of a tank is not small, and a job below a tank has nothing to share with.
    assert!(loads(&job("27.5 ac", "20 gal/ac", "500 gal"), &[]).expect("loads").shared.is_none());
    assert!(loads(&job("1 ac", "20 gal/ac", "500 gal"), &[]).expect("loads").shared.is_none());
}

#[test]
fn measures_round_down_to_what_a_jug_shows() {
    let check = |amount, system, text: Option<&str>| {
        let measured = measure(amount, system);
        assert_eq!(measured.as_ref().map(|measured| measured.text.as_str()), text, "{amount:?}");
    };
    let ounces = |ounces: f64| ProductAmount::Liquid(Volume::fluid_ounces(ounces));
    let (us, metric) = (UnitSystem::Us, UnitSystem::Metric);
    for (amount, text) in [
        (75.0 * 16.0, Some("9 gal 3 pt")),
        (128.0 * 200.0 + 127.0, Some("200 gal")),
        (128.0 * 10.0 + 9.0, Some("10 gal 8 fl oz")),
        (22.0, Some("22 fl oz")),
        (22.2, Some("22 fl oz")),
        (22.49, Some("22 1/4 fl oz")),
        (52.7, Some("3 pt 4 1/2 fl oz")),
        (0.26, Some("1/4 fl oz")),
        (0.249, None),
        (0.0, None),
    ] {
        check(ounces(amount), us, text);
    }
    let litres = |litres: f64| ProductAmount::Liquid(Volume::litres(litres));
    for (amount, text) in [
        (12.93, Some("12.9 L")),
        (129.9, Some("129 L")),
        (60.6, Some("60.5 L")),
        (1.2965, Some("1.29 L")),
        (0.7529, Some("750 mL")),
        (0.0995, Some("99 mL")),
        (0.0009, None),
    ] {
        check(litres(amount), metric, text);
    }
    let pounds = |pounds: f64| ProductAmount::Dry(Mass::pounds(pounds));
    for (amount, text) in [
        (2.5, Some("2 lb 8 oz wt")),
        (120.9, Some("120 lb")),
        (60.9, Some("60 lb 8 oz wt")),
        (0.4, Some("6 1/4 oz wt")),
        (0.01, None),
    ] {
        check(pounds(amount), us, text);
    }
    check(ProductAmount::Dry(Mass::kilograms(2.345)), metric, Some("2.34 kg"));
    check(ProductAmount::Dry(Mass::grams(45.9)), metric, Some("45 g"));
}

#[test]
fn metric_labels_are_measured_in_metric() {
    let plan = plan("25 ac", "20 gal/ac", "500 gal", &["A: 1.28 L/ha", "B: 40 g/ha", "C: 3 pt/ac"]);
    let load = plan.full.as_ref().expect("load");
    assert_eq!(load.products.iter().map(words).collect::<Vec<_>>(), ["12.9 L", "404 g", "9 gal 3 pt"]);
    let metric = Job { jugs: UnitSystem::Metric, ..job("10 ha", "200 L/ha", "2000 L") };
    let sticker = loads(&metric, &products(&["S: 0.25 % v/v"])).expect("loads");
    assert_eq!(words(&sticker.full.as_ref().expect("load").products[0]), "5 L");
}

#[test]
fn too_little_to_measure_is_said() {
    let plan = plan("0.1 ac", "20 gal/ac", "4 gal", &["A: 2 fl oz/ac", "B: 4 fl oz/ac", "C: 3 pt/ac"]);
    let last = plan.last.as_ref().expect("load");
    assert_eq!(last.products.iter().map(words).collect::<Vec<_>>(), ["", "1/4 fl oz", "4 3/4 fl oz"]);
    let told = finding(&plan.findings, "load_too_little_to_measure");
    assert_eq!(told.weight, Weight::Act);
    assert_eq!(
        told.text(UnitSystem::Us),
        "A load of 2 gal takes only 0.2 fl oz of A. A jug or farm scale cannot measure that."
    );
    assert_eq!(
        told.action(UnitSystem::Us).as_deref(),
        Some("Use a syringe or a fine scale for 5.91 mL, or mix a larger load.")
    );
    let coarse = finding(&plan.findings, "load_measure_too_coarse");
    assert_eq!(
        coarse.text(UnitSystem::Us),
        "1/4 fl oz of B is 37.5 % less than the 0.4 fl oz that a load of 2 gal takes."
    );
    all_filled(&plan.findings);
}

#[test]
fn labels_decide_and_slips_are_pointed_out() {
    assert!(plan("5 ac", "20 gal/ac", "50 gal", &[]).findings.is_empty());
    let one = plan("5 ac", "20 gal/ac", "50 gal", &["A: 3 pt/ac"]);
    assert!(finding(&one.findings, "load_label_decides").text(UnitSystem::Us).contains("label is the law"));
    let twice = plan("5 ac", "20 gal/ac", "50 gal", &["A: 3 pt/ac", "B: 1 pt/ac", "a: 3 pt/ac"]);
    assert_eq!(finding(&twice.findings, "load_product_twice").text(UnitSystem::Us), "a is listed twice.");
    assert!(
        finding(&twice.findings, "load_labels_decide_mix")
            .text(UnitSystem::Us)
            .contains("which goes in first")
    );
    all_filled(&twice.findings);
}

#[test]
fn absurd_jobs_are_refused_with_words() {
    for (area, rate, tank, texts, code, words) in [
        ("0 ac", "20 gal/ac", "500 gal", &[][..], "load_no_area", "must be more than 0"),
        ("25 ac", "0 gal/ac", "500 gal", &[], "load_no_rate", "must be more than 0"),
        ("25 ac", "20 gal/ac", "0 gal", &[], "load_no_tank", "must hold more than 0"),
        ("250000 ac", "20 gal/ac", "499 gal", &[], "load_too_many", "at most 10000"),
        ("900000000000000 ac", "900000000000000 gal/ac", "1 fl oz", &[], "load_too_many", "at most 10000"),
        ("25 ac", "2 gal/ac", "50 gal", &["A: 3 gal/ac"], "load_more_product_than_mix", "A at \"3 gal/ac\""),
    ] {
        let error = loads(&job(area, rate, tank), &products(texts)).expect_err(code);
        assert_eq!(error.code(), code);
        assert!(error.to_string().contains(words), "{error}");
        assert!(error.hint().is_some() && error.args().iter().count() > 0);
    }
    // A carrier that is the product itself fills the tank.
    assert!(loads(&job("25 ac", "20 gal/ac", "500 gal"), &products(&["UAN: 20 gal/ac"])).is_ok());
    assert_eq!(loads(&job("250000 ac", "20 gal/ac", "500 gal"), &[]).expect("just").full_loads, 10_000);
}

#[test]
fn the_tank_at_the_measured_rate_carries_its_range() {
    let rate = |gallons| VolumePerArea::gallons_per_acre(gallons);
    let measured = Ranged { value: rate(15.0), low: rate(14.4), high: rate(15.6) };
    let given = products(&["A: 1 qt/ac", "S: 0.25 % v/v"]);
    let tank = tank_at_rate(Volume::gallons(300.0), &measured, &given, UnitSystem::Us).expect("tank");
    assert!((tank.area.value.as_acres() - 20.0).abs() < 1e-9);
    assert!((tank.area.low.as_acres() - 300.0 / 15.6).abs() < 1e-9);
    assert!((tank.area.high.as_acres() - 300.0 / 14.4).abs() < 1e-9);
    let RangedAmount::Liquid(quarts) = tank.products[0].amount else { panic!("a quart is liquid") };
    assert!((quarts.value.as_gallons() - 5.0).abs() < 1e-9);
    assert!((quarts.low.as_gallons() - 75.0 / 15.6).abs() < 1e-9);
    assert_eq!(tank.products[0].measure.as_ref().expect("measured").text, "5 gal");
    assert_eq!(tank.products[1].basis, Basis::Mix);
    let RangedAmount::Liquid(sticker) = tank.products[1].amount else { panic!("a percentage is liquid") };
    assert_eq!((sticker.low, sticker.high), (sticker.value, sticker.value));
    let told = finding(&tank.findings, "tank_at_measured_rate");
    assert_eq!(
        told.text(UnitSystem::Us),
        "At 15.0 gal/ac, which is what your sprayer puts out, a tank of 300 gal covers 20.0 ac."
    );
    let working = told.working.as_ref().expect("working").lines(UnitSystem::Us).join("\n");
    assert!(working.contains("tank ÷ rate") && working.contains("G1272"));
    all_filled(&tank.findings);
    for wrong in [
        Ranged { low: rate(15.3), ..measured },
        Ranged { high: rate(14.9), ..measured },
        Ranged { low: rate(0.0), ..measured },
    ] {
        let error = tank_at_rate(Volume::gallons(300.0), &wrong, &given, UnitSystem::Us).expect_err("range");
        assert_eq!(error.code(), "load_range_of_rate");
    }
}
