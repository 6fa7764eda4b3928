//! What an error costs, on made-up farms and one published one.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use planning::{CostOfError, CostPerArea, Price, PriceFor, Product, cost_of_error, cost_of_overlap};
use units::{Area, Coded, Quantity, Ranged, UnitSystem, VolumePerArea};

fn gallons(rate: f64) -> VolumePerArea {
    VolumePerArea::gallons_per_acre(rate)
}

fn cost(per_area: &str, acres: f64, low: f64, value: f64, high: f64, tips: &[f64]) -> CostOfError {
    let measured = Ranged { value: gallons(value), low: gallons(low), high: gallons(high) };
    let per_area = CostPerArea::parse(per_area).expect("cost");
    cost_of_error(&per_area, Area::acres(acres), gallons(20.0), &measured, tips).expect("cost")
}

fn codes(cost: &CostOfError) -> Vec<&'static str> {
    cost.findings.iter().map(Coded::code).collect()
}

#[test]
fn expected_from_illinois_ten_percent_over() {
    // Illinois Ext., "60 Ways Farmers Can Protect Surface Water", no. 55: 10 % over at $25/ac on 1,000 ac is $2,500.
    let found = cost("$25/ac", 1000.0, 21.6, 22.0, 22.4, &[]);
    assert!((found.over.value.amount() - 2500.0).abs() < 1e-9);
    assert!(
        (found.over.low.amount() - 2000.0).abs() < 1e-9 && (found.over.high.amount() - 3000.0).abs() < 1e-9
    );
    assert!(found.missing.value.amount().abs() < 1e-9);
    assert_eq!(codes(&found), ["cost_over", "cost_gone_when_mixed_right"]);
    assert_eq!(
        found.findings[0].text(UnitSystem::Us),
        "10 % of the product goes on over what you meant: $2500 on 1000 ac."
    );
}

#[test]
fn missing_product_is_not_a_saving() {
    let found = cost("$25/ac", 100.0, 17.0, 18.0, 19.0, &[]);
    assert!(found.over.value.amount().abs() < 1e-9);
    assert!((found.missing.value.amount() - 250.0).abs() < 1e-9);
    assert!(
        (found.missing.low.amount() - 125.0).abs() < 1e-9
            && (found.missing.high.amount() - 375.0).abs() < 1e-9
    );
    assert_eq!(
        found.findings[0].text(UnitSystem::Us),
        "10 % of the product, $250.00 worth on 100 ac, is missing where you meant it to be. That is no saving: it may \
         not do its work there."
    );
}

#[test]
fn uneven_tips_cost_both_ways_though_the_mean_is_right() {
    // Half the tips 20 % over, half 20 % under: 10 % over and 10 % missing, and they do not cancel.
    let found = cost("$25/ac", 100.0, 20.0, 20.0, 20.0, &[20.0, -20.0, 20.0, -20.0]);
    assert!(
        (found.over.value.amount() - 250.0).abs() < 1e-9
            && (found.missing.value.amount() - 250.0).abs() < 1e-9
    );
    assert_eq!(codes(&found), ["cost_over", "cost_missing"]);
    // A plugged tip in ten leaves a tenth missing.
    let tips = [-100.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0];
    let found = cost("$25/ac", 100.0, 20.0, 20.0, 20.0, &tips);
    assert!((found.missing.value.amount() - 250.0).abs() < 1e-9);
    // With the rate over too, mixing for it leaves the tips' part.
    let found = cost("$25/ac", 100.0, 22.0, 22.0, 22.0, &[20.0, -20.0]);
    assert_eq!(codes(&found), ["cost_over", "cost_missing", "cost_left_when_mixed_right"]);
    assert!((found.left_when_mixed_for_measured.over - 0.1).abs() < 1e-12);
    for finding in &found.findings {
        assert!(!finding.to_string().contains(['{', '}']), "{finding}");
    }
}

#[test]
fn an_even_boom_at_the_right_rate_costs_nothing() {
    assert!(cost("$25/ac", 100.0, 20.0, 20.0, 20.0, &[]).findings.is_empty());
}

#[test]
fn prices_are_read_as_written() {
    let check = |text: &str, amount: f64, goods: PriceFor| {
        let price = Price::parse(text).unwrap_or_else(|error| panic!("{text}: {error}"));
        assert!((price.money().amount() - amount).abs() < 1e-12, "{text}");
        assert_eq!(price.goods(), goods, "{text}");
    };
    let volume = |text: &str| PriceFor::Volume(units::Volume::parse(text).expect(text));
    let mass = |text: &str| PriceFor::Mass(units::Mass::parse(text).expect(text));
    check("$25/ac", 25.0, PriceFor::Area(Area::acres(1.0)));
    check("25 $/ac", 25.0, PriceFor::Area(Area::acres(1.0)));
    check("€60/ha", 60.0, PriceFor::Area(Area::hectares(1.0)));
    check("60 €/ha", 60.0, PriceFor::Area(Area::hectares(1.0)));
    check("18.50 $/gal", 18.5, volume("1 gal"));
    check("$300/2.5 gal", 300.0, volume("2.5 gal"));
    check("4 $/lb", 4.0, mass("1 lb"));
    check("$90 per 50 lb", 90.0, mass("50 lb"));
    check("0.40 $/oz wt", 0.4, mass("1 oz wt"));
    for (text, code) in [
        ("$25", "price_no_goods"),
        ("25/ac", "money_no_symbol"),
        ("$25/hour", "price_no_goods"),
        ("$25/oz", "price_which_ounce"),
        ("$25/0 gal", "price_no_goods"),
        ("$1,234/ac", "quantity_comma"),
        ("", "money_empty"),
    ] {
        let error = Price::parse(text).expect_err(text);
        assert_eq!(error.code(), code, "{text}: {error}");
    }
    assert_eq!(CostPerArea::parse("18.50 $/gal").expect_err("by volume").code(), "price_not_by_area");
}

#[test]
fn a_price_by_the_gallon_becomes_a_cost_on_the_acre() {
    let check = |price: &str, product: &str, text: &str| {
        let product = Product::parse(product).expect(product);
        let cost = Price::parse(price).expect(price).on_area(&product, gallons(20.0)).expect("cost");
        assert_eq!(cost.text(UnitSystem::Us), text);
    };
    check("$40/gal", "A: 3 pt/ac", "$15.00/ac");
    check("$300/2.5 gal", "A: 1 qt/ac", "$30.00/ac");
    check("4 $/lb", "B: 2.5 lb/ac", "10.00 $/ac");
    check("$40/gal", "S: 0.25 % v/v", "$2.00/ac");
    check("$7/ac", "A: 3 pt/ac", "$7.00/ac");
    let acre = CostPerArea::parse("$25/ac").expect("cost");
    assert_eq!(acre.text(UnitSystem::Metric), "$61.78/ha");
    let both = acre.plus(&CostPerArea::parse("$24.71/ha").expect("cost")).expect("one money");
    assert_eq!(both.text(UnitSystem::Us), "$35.00/ac");
    assert!(acre.plus(&CostPerArea::parse("€5/ac").expect("cost")).is_err());
    let product = Product::parse("B: 2.5 lb/ac").expect("product");
    let error = Price::parse("$40/gal").expect("price").on_area(&product, gallons(20.0)).expect_err("kind");
    assert_eq!(error.code(), "cost_other_measure");
}

#[test]
fn what_cannot_be_is_refused_with_words() {
    let per_area = CostPerArea::parse("$25/ac").expect("cost");
    let sound = Ranged::exact(gallons(20.0));
    let backwards = Ranged { value: gallons(20.0), low: gallons(22.0), high: gallons(18.0) };
    for (acres, mixed, measured, tips, code) in [
        (0.0, 20.0, sound, vec![], "cost_no_area"),
        (10.0, 0.0, sound, vec![], "cost_no_rate"),
        (10.0, 20.0, backwards, vec![], "cost_no_rate"),
        (10.0, 20.0, sound, vec![0.0, -101.0], "cost_tip"),
        (10.0, 20.0, sound, vec![f64::NAN], "cost_tip"),
    ] {
        let error =
            cost_of_error(&per_area, Area::acres(acres), gallons(mixed), &measured, &tips).expect_err(code);
        assert_eq!(error.code(), code);
        assert!(error.hint().is_some() && error.args().iter().count() > 0, "{error}");
    }
    assert_eq!(
        cost_of_overlap(&per_area, -1.0, Area::acres(1.0)).expect_err("overlap").code(),
        "cost_overlap"
    );
}
