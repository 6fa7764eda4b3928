//! Products as people write them, understood or refused with words that help.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use planning::{Basis, IngredientKind, Product, ProductAmount, Strength, WrittenRate};
use units::{Area, Coded, Quantity, Unit, UnitSystem, VolumePerArea};

/// On 10 ac at 20 gal/ac (10 ha at 200 L/ha where the unit is metric) the rate takes this much.
fn check(text: &str, basis: Basis, unit: &str, expected: f64) {
    let product =
        Product::parse(&format!("Made-up: {text}")).unwrap_or_else(|error| panic!("{text}: {error}"));
    assert_eq!(product.name(), "Made-up");
    let unit = Unit::named(unit).expect("unit");
    let metric = ["L", "mL", "g", "kg"].contains(&unit.text());
    let (area, carrier) = if metric {
        (Area::hectares(10.0), VolumePerArea::litres_per_hectare(200.0))
    } else {
        (Area::acres(10.0), VolumePerArea::gallons_per_acre(20.0))
    };
    let rate = product.rate();
    assert_eq!(rate.rate().basis(), basis, "{text}");
    assert_eq!(rate.text(), text.trim());
    let value = match rate.rate().amount_for(area, carrier) {
        ProductAmount::Liquid(volume) => volume.in_unit(&unit),
        ProductAmount::Dry(mass) => mass.in_unit(&unit),
    };
    assert!((value - expected).abs() <= 1e-9 * expected, "{text}: {value}, not {expected} {}", unit.text());
    let system = if metric { UnitSystem::Metric } else { UnitSystem::Us };
    assert!(rate.measured_in().is_none_or(|measured| measured == system), "{text}");
}

#[test]
fn every_form_of_the_contract_is_understood() {
    check("3 pt/ac", Basis::Area, "pt", 30.0);
    check("2 pt/100 gal", Basis::Mix, "pt", 4.0);
    check("0.25 % v/v", Basis::Mix, "gal", 0.5);
    check("1.5 lb ai/ac at 4 lb ai/gal", Basis::Area, "pt", 30.0);
    check("2 lb ai/ac at 80 %", Basis::Area, "lb", 25.0);
    check("2 lb/ac", Basis::Area, "lb", 20.0);
    check("2 lb/100 gal", Basis::Mix, "lb", 4.0);
    check("2 fl oz/1000 sq ft", Basis::Area, "fl oz", 871.2);
    check("1.5 L/ha", Basis::Area, "L", 15.0);
    check("750 mL/ha", Basis::Area, "mL", 7500.0);
    check("40 g/ha", Basis::Area, "g", 400.0);
    check("2.5 kg/ha", Basis::Area, "kg", 25.0);
    check("500 mL/100 L", Basis::Mix, "L", 10.0);
    check("720 g ai/ha at 480 g ai/L", Basis::Area, "L", 15.0);
    check("0.25 % v/v", Basis::Mix, "L", 5.0);
}

#[test]
fn other_ways_of_writing_are_understood() {
    check("  3 pt / acre ", Basis::Area, "pt", 30.0);
    check("3 pints per acre", Basis::Area, "pt", 30.0);
    check("1 1/2 pt/ac", Basis::Area, "pt", 15.0);
    check("½ pt/ac", Basis::Area, "pt", 5.0);
    check("3 oz wt/ac", Basis::Area, "oz wt", 30.0);
    check("3 dry oz/ac", Basis::Area, "oz wt", 30.0);
    check("2 fl. oz. per 1,000 sq ft", Basis::Area, "fl oz", 871.2);
    check("1 qt/100 gal", Basis::Mix, "qt", 2.0);
    check("0.25% v/v", Basis::Mix, "gal", 0.5);
    check("0.25 % (v/v)", Basis::Mix, "gal", 0.5);
    check("1 % by volume", Basis::Mix, "gal", 2.0);
    check("100 % v/v", Basis::Mix, "gal", 200.0);
    check("1.5 lb a.i./acre @ 4 lb a.i./gal", Basis::Area, "pt", 30.0);
    check("1.5 lb ai/ac at 4 lb/gal", Basis::Area, "pt", 30.0);
    check("24 oz ai/ac at 4 lb ai/gal", Basis::Area, "pt", 30.0);
    check("1.5 LB AE/AC AT 4 LB AE/GAL", Basis::Area, "pt", 30.0);
    check("2 lb ai/100 gal at 80 %", Basis::Mix, "lb", 5.0);
    check("1 lb ai/100 gal at 4 lb ai/gal", Basis::Mix, "gal", 0.5);
    check("600 g ai/ha at 800 g ai/kg", Basis::Area, "g", 7500.0);
    check("50 lb per 6,000 sq ft", Basis::Area, "lb", 3630.0);
}

#[test]
fn active_ingredient_keeps_what_the_label_says() {
    let rate = WrittenRate::parse("1.5 lb ae/ac at 3 lb ae/gal").expect("rate");
    let ingredient = rate.ingredient().expect("ingredient");
    assert_eq!(ingredient.kind(), IngredientKind::Acid);
    assert!(
        matches!(ingredient.strength(), Strength::Liquid(density) if (density.as_pounds_per_gallon() - 3.0).abs() < 1e-12)
    );
    let lines = ingredient.working().lines(UnitSystem::Us).join("\n");
    assert!(lines.contains("active ingredient ÷ strength") && lines.contains("64 fl oz/ac"), "{lines}");
    assert_eq!(rate.area_unit().map(Unit::text), Some("pt/ac"));
    assert!(WrittenRate::parse("3 pt/ac").expect("rate").ingredient().is_none());
}

#[test]
fn a_name_may_hold_colons_and_at() {
    for (text, name) in [
        ("Mix A: part 2: 3 pt/ac", "Mix A: part 2"),
        ("24:7 at the farm: 3 pt/ac", "24:7 at the farm"),
        ("Niño 2 % – ½ strength: 3 pt/ac", "Niño 2 % – ½ strength"),
        ("Tight:3 pt/ac", "Tight"),
    ] {
        assert_eq!(Product::parse(text).map(|product| product.name().to_string()), Ok(name.to_string()));
    }
}

#[test]
fn imperial_rates_go_with_metric_jugs() {
    let rate = WrittenRate::parse("2 imp pt/ac").expect("rate");
    assert_eq!(rate.measured_in(), Some(UnitSystem::Metric));
}

fn refuse(text: &str, code: &str, words: &[&str]) {
    let error = Product::parse(text).expect_err(text);
    let said = format!("{error}; {}", error.hint().unwrap_or_default());
    assert_eq!(error.code(), code, "{text}: {said}");
    for word in words {
        assert!(said.contains(word), "{text}: \"{said}\" lacks \"{word}\"");
    }
    assert!(error.hint().is_some(), "{text}");
}

#[test]
fn what_cannot_be_understood_is_refused_with_what_would_do() {
    refuse("A: 4 oz/ac", "rate_which_ounce", &["4 fl oz/ac", "4 oz wt/ac", "\"A\""]);
    refuse("A: 1/2 oz/1000 sq ft", "rate_which_ounce", &["1/2 fl oz/1000 sq ft", "1/2 oz wt/1000 sq ft"]);
    refuse("A: 3 oz", "rate_which_ounce", &["3 fl oz", "3 oz wt"]);
    refuse("A: 3 pt", "rate_no_basis", &["3 pt/ac", "3 pt/100 gal"]);
    refuse("A: 2 lb", "rate_no_basis", &["2 lb/ac"]);
    refuse("A: 3", "rate_no_unit", &["3 pt/ac"]);
    refuse("A: 1 %", "rate_bare_percent", &["1 % v/v", "by weight"]);
    refuse("A: 1 % w/w", "rate_percent_by_weight", &["lb/100 gal"]);
    refuse("A: 101 % v/v", "rate_over_whole", &["more product than mix", "100 %"]);
    refuse("A: 2 gal/1 gal", "rate_over_whole", &["2 gal/1 gal"]);
    refuse("A: 0 pt/ac", "rate_nothing", &["0 pt/ac", "more than 0"]);
    refuse("A: 1.5 lb ai/ac", "rate_strength_needed", &["at 4 lb ai/gal", "80 %"]);
    refuse("A: 1.5 lb ae/ac", "rate_strength_needed", &["counts ae"]);
    refuse("A: 1.5 lb/ac at 4 lb/gal", "rate_strength_without_mark", &["ai"]);
    refuse("A: 1.5 lb ai/ac at 4 lb ae/gal", "rate_mixed_marks", &["both sides"]);
    refuse("A: 1.5 lb ai/ac at 400 psi", "rate_not_a_strength", &["400 psi", "4 lb ai/gal"]);
    refuse("A: 1.5 lb ai/ac at 0 %", "rate_not_a_strength", &[]);
    refuse("A: 1.5 lb ai/ac at 120 %", "rate_strength_over_whole", &["100 %"]);
    refuse("A: 1.5 lb ai/ac at 5 mL/L", "rate_not_a_strength", &[]);
    refuse("A: 1.5 gal ai/ac at 4 lb ai/gal", "rate_ingredient", &["weight of ai"]);
    refuse("A: 1,5 pt/ac", "quantity_comma", &["1.5"]);
    refuse("A: -3 pt/ac", "quantity_negative", &["less than nothing"]);
    refuse("A: NaN pt/ac", "quantity_not_a_number", &["NaN"]);
    refuse("A: 99999999999999999999 pt/ac", "quantity_too_large", &[]);
    refuse("A: 2 lb/100 lb", "rate_weight_in_weight", &[]);
    refuse("A: 20 psi", "rate_not_a_rate", &["3 pt/ac"]);
    refuse("A: 3 pt/mile", "rate_not_a_rate", &["3 pt/ac"]);
    refuse("A: some", "quantity_not_a_number", &["3 pt/ac"]);
    refuse("A:", "rate_empty", &["3 pt/ac"]);
    refuse("A 3 pt/ac", "product_no_colon", &["NAME: 3 pt/ac"]);
    refuse(": 3 pt/ac", "product_no_name", &["3 pt/ac"]);
    refuse("", "product_empty", &[]);
    refuse("\u{1b}[2J: 3 pt/ac", "product_control_sign", &["u{1b}"]);
    refuse(&format!("{}: 3 pt/ac", "n".repeat(500)), "product_name_too_long", &["500", "120"]);
    refuse(&format!("A: {} pt/ac", "9".repeat(500)), "rate_too_long", &["120"]);
    refuse("A: 3 pt\u{1b}[2J/ac", "rate_not_a_rate", &["u{1b}"]);
    refuse(&"n".repeat(5000), "product_no_colon", &["…"]);
}
