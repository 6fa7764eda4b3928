//! The label and the plan against what the sprayer really puts out.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use planning::{Judged, Product, ProductTarget, RateLimit, Target, WrittenRate, judge, put_down};
use units::{Arg, Coded, Quantity, Ranged, Unit, UnitSystem, Verdict, VolumePerArea, Weight};

fn gallons(rate: f64) -> VolumePerArea {
    VolumePerArea::gallons_per_acre(rate)
}

fn measured(low: f64, value: f64, high: f64) -> Ranged<VolumePerArea> {
    Ranged { value: gallons(value), low: gallons(low), high: gallons(high) }
}

fn written(text: &str) -> WrittenRate {
    WrittenRate::parse(text).expect(text)
}

fn product(text: &str) -> ProductTarget {
    ProductTarget::new(Product::parse(text).expect(text))
}

/// A product mixed for 20 gal/ac with a label's least and most.
fn judged(text: &str, least: Option<&str>, most: Option<&str>, rate: Ranged<VolumePerArea>) -> Judged {
    let mut target = product(text);
    if let Some(least) = least {
        target = target.at_least(written(least)).expect("least");
    }
    if let Some(most) = most {
        target = target.at_most(written(most)).expect("most");
    }
    let judged = judge(&Target::new().product(target), Some(gallons(20.0)), &rate).expect("judged");
    for finding in &judged.findings {
        let said = format!("{finding} {}", finding.action(UnitSystem::Us).unwrap_or_default());
        assert!(!said.contains(['{', '}']), "{said}");
    }
    judged
}

fn codes(judged: &Judged) -> Vec<&'static str> {
    judged.findings.iter().map(Coded::code).collect()
}

#[test]
fn more_water_with_a_tank_mixed_for_it_is_not_over_the_label() {
    // Planned 20 gal/ac, puts out 24, tank mixed for 24: the label's rate lands, nothing more.
    let a = Product::parse("A: 3 pt/ac").expect("product");
    let down = put_down(&a, Some(gallons(24.0)), &measured(24.0, 24.0, 24.0)).expect("put down");
    let pints = Unit::named("pt/ac").expect("unit");
    let planning::ProductPerArea::Liquid(rate) = down.rate.value() else { panic!("pints are liquid") };
    assert!((rate.in_unit(&pints) - 3.0).abs() < 1e-12);
}

#[test]
fn over_the_label_is_said_first_and_differently() {
    let rate = measured(21.6, 22.0, 22.4);
    let target = Target::new()
        .intended(gallons(20.0))
        .and_then(|target| target.least_carrier(gallons(25.0)))
        .expect("target")
        .product(product("A: 3 pt/ac").at_most(written("3.2 pt/ac")).expect("most"));
    let judged = judge(&target, None, &rate).expect("judged");
    assert_eq!(codes(&judged), ["product_over_label", "carrier_under_label", "rate_outside"]);
    let first = &judged.findings[0];
    assert_eq!((first.weight, first.verdict), (Weight::Stop, Some(Verdict::Outside)));
    assert_eq!(
        first.text(UnitSystem::Us),
        "Stop: A goes on at 3.30 pt/ac. The label allows 3.2 pt/ac at most; the label is the law."
    );
    assert!(first.action(UnitSystem::Us).expect("action").starts_with("Do not spray this mix."));
    // What it says to mix for does keep to the label, at the high end of the range too: 3 × 22.4 ÷ 21.1 = 3.185.
    assert!(first.action(UnitSystem::Us).expect("action").contains("21.1 gal/ac"));
    let working = first.working.as_ref().expect("working").lines(UnitSystem::Us).join("\n");
    assert!(working.contains("measured rate ÷ rate mixed for"), "{working}");
    let off = judged.against_intended.expect("intended");
    assert!((off.percent - 10.0).abs() < 1e-9 && off.verdict == Verdict::Outside);
}

#[test]
fn near_the_label_is_settled_or_said_to_be_open() {
    let most = Some("3.3 pt/ac");
    assert_eq!(codes(&judged("A: 3 pt/ac", None, most, measured(20.0, 20.5, 21.0))), [] as [&str; 0]);
    assert_eq!(
        codes(&judged("A: 3 pt/ac", None, most, measured(21.0, 21.8, 22.6))),
        ["product_may_be_over_label"]
    );
    let likely = judged("A: 3 pt/ac", None, most, measured(21.6, 22.2, 22.8));
    assert_eq!(codes(&likely), ["product_most_likely_over_label"]);
    assert_eq!(
        (likely.findings[0].weight, likely.findings[0].verdict),
        (Weight::Stop, Some(Verdict::CannotTell))
    );
    // Exactly on the label's most is within it.
    assert_eq!(codes(&judged("A: 3 pt/ac", None, most, measured(22.0, 22.0, 22.0))), [] as [&str; 0]);
}

#[test]
fn a_mix_planned_over_the_label_is_stopped_whatever_the_sprayer_does() {
    let found = judged("A: 5 pt/ac", None, Some("4 pt/ac"), measured(14.0, 15.0, 15.9));
    assert_eq!(codes(&found), ["product_planned_over_label"]);
    assert_eq!(found.findings[0].weight, Weight::Stop);
    assert_eq!(
        found.findings[0].text(UnitSystem::Us),
        "Stop: A is mixed for 5 pt/ac. The label allows 4 pt/ac at most; the label is the law."
    );
}

#[test]
fn under_the_least_is_told() {
    let least = Some("2.9 pt/ac");
    let found = judged("A: 3 pt/ac", least, None, measured(17.5, 18.0, 18.5));
    assert_eq!(codes(&found), ["product_under_least"]);
    assert_eq!(
        found.findings[0].text(UnitSystem::Us),
        "A goes on at 2.70 pt/ac, under the label's least of 2.9 pt/ac. It may not do its work."
    );
    assert_eq!(
        codes(&judged("A: 3 pt/ac", least, None, measured(19.0, 19.5, 20.0))),
        ["product_may_be_under_least"]
    );
    assert_eq!(codes(&judged("A: 3 pt/ac", least, None, measured(19.9, 20.0, 20.1))), [] as [&str; 0]);
}

#[test]
fn limits_by_active_ingredient_hold_for_the_product() {
    let found = judged("A: 3 pt/ac", None, Some("1.4 lb ai/ac at 4 lb ai/gal"), measured(20.0, 20.0, 20.0));
    assert_eq!(codes(&found), ["product_over_label"]);
    let found = judged("A: 1.5 lb ai/ac at 4 lb ai/gal", None, Some("3.1 pt/ac"), measured(19.9, 20.0, 20.1));
    assert_eq!(codes(&found), [] as [&str; 0]);
}

#[test]
fn an_adjuvant_by_the_mix_follows_the_carrier_and_not_the_plan() {
    // 0.25 % v/v at 24 gal/ac is 0.06 gal/ac, 7.68 fl oz/ac, whatever it was mixed for.
    let found = judged("S: 0.25 % v/v", None, Some("7 fl oz/ac"), measured(23.9, 24.0, 24.1));
    assert_eq!(codes(&found), ["product_over_label"]);
    assert!(found.findings[0].text(UnitSystem::Us).contains("7.68 fl oz/ac"), "{}", found.findings[0]);
    assert!(found.findings[0].action(UnitSystem::Us).expect("action").contains("weaker"));
    // Its strength in the mix does not move with the rate.
    for gallons in [10.0, 40.0] {
        let rate = measured(gallons, gallons, gallons);
        assert_eq!(
            codes(&judged("S: 0.25 % v/v", Some("0.25 % v/v"), Some("0.25 % v/v"), rate)),
            [] as [&str; 0]
        );
        assert_eq!(codes(&judged("S: 0.5 % v/v", None, Some("0.25 % v/v"), rate)), ["mix_over_label"]);
    }
    // A quart on the acre in 40 gal is 0.625 %, under a label's 1 %.
    let target =
        Target::new().product(product("S: 1 qt/ac").at_least(written("1 gal/100 gal")).expect("least"));
    let found = judge(&target, Some(gallons(40.0)), &measured(40.0, 40.0, 40.0)).expect("judged");
    assert_eq!(codes(&found), ["mix_under_least"]);
    assert!(found.findings[0].text(UnitSystem::Us).starts_with("The mix holds 0.625 % of S"));
    // It may be judged without any plan.
    let alone = Target::new().product(product("S: 0.25 % v/v"));
    assert!(judge(&alone, None, &measured(24.0, 24.0, 24.0)).is_ok());
}

#[test]
fn the_intended_rate_is_judged_by_five_percent_or_less() {
    let check = |target: &Target, rate, code: &str| {
        let judged = judge(target, None, &rate).expect("judged");
        assert_eq!(codes(&judged), [code]);
        judged.findings[0].clone()
    };
    // Ohio State Univ. Extension, FABE-520 (2016), attributes ±5 % to USDA and EPA; exactly 5 % is within.
    let target = Target::new().intended(gallons(20.0)).expect("target");
    check(&target, measured(21.0, 21.0, 21.0), "rate_within");
    check(&target, measured(19.0, 19.0, 19.0), "rate_within");
    let outside = check(&target, measured(21.01, 21.01, 21.01), "rate_outside");
    assert_eq!(
        outside.text(UnitSystem::Us),
        "The sprayer puts out 21 gal/ac: +5.1 % from the 20 gal/ac you want, more than 5 % off."
    );
    assert!(outside.limit_source.expect("source").contains("FABE-520"));
    let open = check(&target, measured(20.2, 20.8, 21.4), "rate_cannot_tell");
    assert!(open.action(UnitSystem::Us).expect("action").contains("catch longer"));
    // The stricter of two limits counts, whichever came last.
    let strict = RateLimit::own(3.0, "our own").expect("limit");
    let loose = RateLimit::own(10.0, "our own").expect("limit");
    check(&target.clone().limit(loose), measured(21.5, 21.5, 21.5), "rate_outside");
    check(&target.clone().limit(strict).limit(loose), measured(20.8, 20.8, 20.8), "rate_outside");
    for percent in [0.0, -5.0, 100.0, f64::NAN] {
        assert!(RateLimit::own(percent, "our own").is_err(), "{percent}");
    }
}

#[test]
fn half_of_the_labels_least_carrier_stops_before_all_else() {
    // 15 gal/ac as it is meant, where the label asks for 30.
    let target = Target::new()
        .intended(gallons(15.0))
        .and_then(|target| target.least_carrier(gallons(30.0)))
        .expect("target")
        .product(product("A: 3 pt/ac").at_least(written("4 pt/ac")).expect("least"));
    let found = judge(&target, None, &measured(14.6, 15.0, 15.4)).expect("judged");
    assert_eq!(codes(&found), ["carrier_under_label", "product_under_least", "rate_within"]);
    let first = &found.findings[0];
    assert_eq!((first.weight, first.verdict), (Weight::Stop, Some(Verdict::Outside)));
    assert_eq!(
        first.text(UnitSystem::Us),
        "Stop: the sprayer puts out 15.0 gal/ac. The label asks for at least 30 gal/ac; the label is the law."
    );
}

#[test]
fn a_deviation_is_a_number_for_scripts_and_words_for_people() {
    let target = Target::new().intended(gallons(15.0)).expect("target");
    let found = judge(&target, None, &measured(14.3, 14.67, 15.0)).expect("judged");
    let args = found.findings[0].args();
    let deviation = args.get("deviation").expect("a deviation");
    let Arg::DeviationFrom { percent, limit } = deviation else { panic!("{deviation:?} is no number") };
    assert!((percent + 2.2).abs() < 1e-9 && (limit - 5.0).abs() < 1e-12);
    assert_eq!(deviation.text(UnitSystem::Us), "−2.2 %");
}

#[test]
fn the_stricter_of_two_labels_counts() {
    let target = Target::new()
        .least_carrier(gallons(15.0))
        .and_then(|target| target.least_carrier(gallons(10.0)))
        .expect("target")
        .product(
            product("A: 3 pt/ac")
                .at_most(written("2.9 pt/ac"))
                .and_then(|target| target.at_most(written("4 pt/ac")))
                .expect("most"),
        );
    let found = judge(&target, Some(gallons(12.0)), &measured(12.0, 12.0, 12.0)).expect("judged");
    assert_eq!(codes(&found), ["product_over_label", "carrier_under_label"]);
    assert_eq!(
        found.findings[1].text(UnitSystem::Us),
        "Stop: the sprayer puts out 12 gal/ac. The label asks for at least 15 gal/ac; the label is the law."
    );
    assert!(found.findings[1].action(UnitSystem::Us).expect("action").starts_with("Do not spray so."));
    let near = judge(&target, Some(gallons(12.0)), &measured(14.8, 15.1, 15.4)).expect("judged");
    assert!(codes(&near).contains(&"carrier_may_be_under_label"));
}

#[test]
fn targets_that_cannot_be_are_refused_with_words() {
    let check = |error: planning::TargetError, code: &str| {
        assert_eq!(error.code(), code);
        assert!(error.hint().is_some() && error.args().iter().count() > 0, "{error}");
    };
    check(product("A: 3 pt/ac").at_most(written("2 lb/ac")).expect_err("kind"), "target_other_kind");
    let both = product("A: 3 pt/ac").at_most(written("3 pt/ac")).expect("most");
    check(both.at_least(written("4 pt/ac")).expect_err("order"), "target_least_over_most");
    check(Target::new().intended(gallons(0.0)).expect_err("rate"), "target_no_rate");
    let target = Target::new().product(product("A: 3 pt/ac"));
    let rate = measured(20.0, 20.0, 20.0);
    check(judge(&target, None, &rate).expect_err("plan"), "target_mixed_for_needed");
    check(judge(&target, None, &measured(21.0, 20.0, 22.0)).expect_err("range"), "target_range_of_rate");
    check(judge(&target, None, &measured(-1.0, 20.0, 22.0)).expect_err("range"), "target_range_of_rate");
    check(judge(&target, Some(gallons(-3.0)), &rate).expect_err("plan"), "target_no_rate");
    check(RateLimit::own(200.0, "our own").expect_err("limit"), "target_limit");
}
