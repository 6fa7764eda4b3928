//! Every error of planning, got by giving what cannot be used.

use planning::{
    ChangeError, ConditioningError, CostError, CostPerArea, Job, LoadError, Money, MoneyError, NutrientError,
    Price, Product, ProductAmount, ProductTarget, RateLimit, Setup, SmallAreaError, Target, TargetError,
    TipRange, WrittenRate, change_to_hit, cost_of_error, cost_of_overlap, judge, loads, nutrient_in_volume,
    percent_solution, rate_error_from_speed_error, scaled_to_area, tank_at_rate,
};
use units::{Area, Coded, Density, Length, MassPerArea, Pressure, Ranged, Speed, UnitSystem, Volume};

use crate::findings::{gallons, job, measured, products};

fn boxed<E: Coded + 'static>(error: E) -> Box<dyn Coded> {
    Box::new(error)
}

fn wrong_loads() -> Vec<Box<dyn Coded>> {
    let wrong = |job: Job, texts: &[&str]| boxed(loads(&job, &products(texts)).expect_err("loads"));
    let tank = Volume::gallons(300.0);
    let range = tank_at_rate(tank, &measured(15.5, 15.0, 16.0), &[], UnitSystem::Us).expect_err("range");
    assert!(matches!(range, LoadError::RangeOfRate { .. }));
    vec![
        wrong(job(0.0, 20.0, 500.0), &[]),
        wrong(job(-2.5, 20.0, 500.0), &[]),
        wrong(job(25.0, 0.0, 500.0), &[]),
        wrong(job(25.0, 20.0, 0.0), &[]),
        wrong(job(250_000.0, 20.0, 499.0), &[]),
        wrong(job(25.0, 2.0, 50.0), &["A: 3 gal/ac"]),
        boxed(range),
    ]
}

fn wrong_targets() -> Vec<Box<dyn Coded>> {
    let written = |text: &str| WrittenRate::parse(text).expect(text);
    let product = || ProductTarget::new(Product::parse("A: 3 pt/ac").expect("product"));
    let target = Target::new().product(product());
    let wrong: [TargetError; 6] = [
        Target::new().intended(gallons(0.0)).expect_err("rate"),
        judge(&target, None, &measured(15.5, 15.0, 16.0)).expect_err("range"),
        RateLimit::own(150.0, "our own limit").expect_err("limit"),
        product().at_most(written("3 lb/ac")).expect_err("kind"),
        product()
            .at_least(written("4 pt/ac"))
            .and_then(|it| it.at_most(written("3 pt/ac")))
            .expect_err("order"),
        judge(&target, None, &measured(14.0, 15.0, 16.0)).expect_err("mixed for"),
    ];
    wrong.map(boxed).into()
}

fn wrong_changes() -> Vec<Box<dyn Coded>> {
    let right = Setup::new(gallons(18.0));
    let change = |setup: Setup| change_to_hit(&setup, gallons(15.0)).expect_err("change");
    let speed = Some(Speed::miles_per_hour(5.0));
    let wrong: [ChangeError; 6] = [
        change(Setup::new(gallons(0.0))),
        change(Setup { speed: Some(Speed::miles_per_hour(0.0)), ..right }),
        change(Setup { pressure: Some(Pressure::psi(-3.0)), ..right }),
        change(Setup { speed, tip_width: Some(Length::inches(0.0)), ..right }),
        TipRange::from_table(Pressure::psi(60.0), Pressure::psi(15.0)).expect_err("range"),
        rate_error_from_speed_error(-120.0).expect_err("speed"),
    ];
    wrong.map(boxed).into()
}

fn wrong_costs() -> Vec<Box<dyn Coded>> {
    let per_area = CostPerArea::parse("$25/ac").expect("cost");
    let cost = |acres: f64, rate: f64, tips: &[f64]| {
        let measured = Ranged::exact(gallons(rate));
        cost_of_error(&per_area, Area::acres(acres), gallons(20.0), &measured, tips).expect_err("cost")
    };
    let liquid = ProductAmount::Liquid(Volume::gallons(3.0));
    let of = |price: &str| Price::parse(price).expect(price).of(liquid).expect_err(price);
    let costs: [CostError; 6] = [
        of("4 $/lb"),
        of("$25/ac"),
        cost(0.0, 20.0, &[]),
        cost(10.0, 0.0, &[]),
        cost(10.0, 20.0, &[-120.0]),
        cost_of_overlap(&per_area, -5.0, Area::acres(10.0)).expect_err("overlap"),
    ];
    let money = |text: &str| Money::parse(text).expect_err(text);
    let price = |text: &str| Price::parse(text).expect_err(text);
    let dollars = Money::parse("$5").expect("money");
    let moneys: [MoneyError; 9] = [
        money(""),
        money(&"5".repeat(70)),
        money("25"),
        money("25 %"),
        money("-$25"),
        price("$25"),
        price("$25/oz"),
        CostPerArea::parse("$25/gal").expect_err("by the gallon"),
        dollars.plus(&Money::parse("5 €").expect("money")).expect_err("two moneys"),
    ];
    costs.map(boxed).into_iter().chain(moneys.map(boxed)).collect()
}

/// Texts that are no rate, each for another reason.
const NO_RATES: &[&str] = &[
    "",
    "3",
    "3 pt",
    "3 psi",
    "4 oz/ac",
    "1/2 %",
    "1 % w/w",
    "3 lb/lb",
    "0 pt/ac",
    "150 % v/v",
    "1.5 lb ai/ac",
    "1.5 lb ae/ac",
    "1.5 lb/ac at 4 lb/gal",
    "1.5 lb ai/ac at 4 lb ae/gal",
    "1.5 lb ai/ac at four",
    "1.5 lb ai/ac at 120 %",
    "1.5 pt ai/ac at 4 lb ai/gal",
    "three pt/ac",
    "-3 pt/ac",
    "99999999999999999999 pt/ac",
];

fn wrong_products() -> Vec<Box<dyn Coded>> {
    let mut wrong: Vec<Box<dyn Coded>> = Vec::new();
    let long = "3".repeat(130);
    for text in NO_RATES.iter().copied().chain([long.as_str()]) {
        wrong.push(boxed(WrittenRate::parse(text).expect_err(text)));
        wrong.push(boxed(Product::parse(&format!("NAME: {text}")).expect_err(text)));
    }
    // These two say themselves what would do; alone they are the sentences of the number.
    for text in ["1,234 pt/ac", "1,5 pt/ac", "3/0 pt/ac"] {
        wrong.push(boxed(Product::parse(&format!("NAME: {text}")).expect_err(text)));
    }
    for text in ["", "NAME 3 pt/ac", ": 3 pt/ac", &format!("{}: 3 pt/ac", "N".repeat(130)), "N\u{7}: 3 pt/ac"]
    {
        wrong.push(boxed(Product::parse(text).expect_err(text)));
    }
    wrong
}

fn wrong_small_ground() -> Vec<Box<dyn Coded>> {
    let (area, none) = (Area::square_feet(9000.0), Volume::gallons(0.0));
    let nothing = ProductAmount::Liquid(none);
    let small: [SmallAreaError; 5] = [
        scaled_to_area(nothing, Area::square_feet(0.0), area).expect_err("area"),
        scaled_to_area(nothing, area, area).expect_err("amount"),
        percent_solution(none, 0.03).expect_err("volume"),
        percent_solution(Volume::gallons(3.0), 1.5).expect_err("share"),
        SmallAreaError::NoDensity { density: Density::pounds_per_gallon(0.0) },
    ];
    let uan = Density::pounds_per_gallon(10.65);
    let nutrient: [NutrientError; 4] = [
        nutrient_in_volume(Density::pounds_per_gallon(0.0), 0.28).expect_err("density"),
        nutrient_in_volume(uan, 28.0).expect_err("share"),
        planning::carrier_for_nutrient(MassPerArea::pounds_per_acre(0.0), uan, 0.28).expect_err("nutrient"),
        planning::nutrient_at_rate(gallons(0.0), uan, 0.28).expect_err("rate"),
    ];
    let water: ConditioningError = planning::PartsPerMillion::parse("9 grains").expect_err("water");
    let small = small.map(boxed).into_iter().chain(nutrient.map(boxed));
    small.chain([boxed(water)]).collect()
}

pub fn all_errors() -> Vec<Box<dyn Coded>> {
    let mut errors = wrong_loads();
    errors.extend(wrong_targets());
    errors.extend(wrong_changes());
    errors.extend(wrong_costs());
    errors.extend(wrong_products());
    errors.extend(wrong_small_ground());
    errors
}
