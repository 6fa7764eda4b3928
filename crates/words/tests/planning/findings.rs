//! Every finding and working of planning, got by asking for it as a grower would.

use planning::{
    CostPerArea, Job, Product, ProductTarget, Setup, Target, WaterTest, WrittenRate,
    ammonium_sulfate_for_hard_water, change_to_hit, cost_of_error, judge, loads, put_down, rate_at_speed,
    tank_at_rate, water_stands_in,
};
use sprayer::PressureControl;
use units::{
    Area, Density, Finding, Length, Pressure, Ranged, Speed, UnitSystem, Volume, VolumePerArea, Working,
};

pub fn gallons(rate: f64) -> VolumePerArea {
    VolumePerArea::gallons_per_acre(rate)
}

pub fn measured(low: f64, value: f64, high: f64) -> Ranged<VolumePerArea> {
    Ranged { value: gallons(value), low: gallons(low), high: gallons(high) }
}

pub fn products(texts: &[&str]) -> Vec<Product> {
    texts.iter().map(|text| Product::parse(text).expect(text)).collect()
}

pub fn job(acres: f64, rate: f64, tank: f64) -> Job {
    Job {
        area: Area::acres(acres),
        carrier: gallons(rate),
        tank: Volume::gallons(tank),
        jugs: UnitSystem::Us,
    }
}

fn loading() -> Vec<Finding> {
    let mut findings = Vec::new();
    for (acres, tank, texts) in [
        (26.0, 500.0, &["A: 3 pt/ac"][..]),
        (0.1, 4.0, &["A: 2 fl oz/ac", "B: 4 fl oz/ac", "C: 3 pt/ac"]),
        (5.0, 50.0, &["A: 3 pt/ac", "B: 1 pt/ac", "a: 3 pt/ac"]),
    ] {
        findings.extend(loads(&job(acres, 20.0, tank), &products(texts)).expect("loads").findings);
    }
    let tank = Volume::gallons(300.0);
    let at_rate = tank_at_rate(tank, &measured(14.4, 15.0, 15.6), &products(&["A: 1 qt/ac"]), UnitSystem::Us);
    findings.extend(at_rate.expect("tank").findings);
    findings
}

fn judging() -> Vec<Finding> {
    let written = |text: &str| WrittenRate::parse(text).expect(text);
    let mut findings = Vec::new();
    for (text, least, most, rate) in [
        ("A: 3 pt/ac", None, Some("3.2 pt/ac"), measured(21.6, 22.0, 22.4)),
        ("A: 3 pt/ac", None, Some("3.2 pt/ac"), measured(21.0, 22.0, 23.0)),
        ("A: 3 pt/ac", None, Some("3.2 pt/ac"), measured(20.5, 21.0, 22.0)),
        ("S: 0.5 % v/v", None, Some("13 fl oz/ac"), measured(21.6, 22.0, 22.4)),
        ("S: 0.5 % v/v", None, Some("13 fl oz/ac"), measured(20.0, 21.0, 22.0)),
        ("S: 0.5 % v/v", None, Some("13 fl oz/ac"), measured(19.5, 20.0, 21.0)),
        ("A: 3.5 pt/ac", None, Some("3.2 pt/ac"), measured(17.9, 18.0, 18.1)),
        ("A: 3 pt/ac", Some("3 pt/ac"), None, measured(17.9, 18.0, 18.1)),
        ("A: 3 pt/ac", Some("3 pt/ac"), None, measured(19.0, 20.0, 21.0)),
        ("S: 2 % v/v", None, Some("1 % v/v"), measured(19.0, 20.0, 21.0)),
        ("D: 2 lb/ac", Some("20 lb/100 gal"), None, measured(19.0, 20.0, 21.0)),
    ] {
        let mut product = ProductTarget::new(Product::parse(text).expect(text));
        if let Some(least) = least {
            product = product.at_least(written(least)).expect(least);
        }
        if let Some(most) = most {
            product = product.at_most(written(most)).expect(most);
        }
        let judged = judge(&Target::new().product(product), Some(gallons(20.0)), &rate).expect("judged");
        findings.extend(judged.findings);
    }
    for rate in [measured(19.9, 20.0, 20.1), measured(21.8, 22.0, 22.2), measured(20.5, 21.0, 21.5)] {
        let target = Target::new().intended(gallons(20.0)).expect("target");
        findings.extend(judge(&target, None, &rate).expect("judged").findings);
    }
    for least in [25.0, 20.0] {
        let target = Target::new().least_carrier(gallons(least)).expect("target");
        findings.extend(judge(&target, None, &measured(19.0, 20.0, 21.0)).expect("judged").findings);
    }
    findings
}

const CONTROLS: [PressureControl; 3] =
    [PressureControl::Constant, PressureControl::GroundDriven, PressureControl::RateController];

fn changing() -> Vec<Finding> {
    let mut findings = Vec::new();
    for control in CONTROLS.map(Some).into_iter().chain([None]) {
        for speed in [Some(Speed::miles_per_hour(5.0)), None] {
            for pressure in [Some(Pressure::psi(40.0)), None] {
                for carrier in [Density::pounds_per_gallon(8.34), Density::pounds_per_gallon(10.65)] {
                    for wanted in [17.5, 15.0, 5.0, 40.0] {
                        let tip_width = Some(Length::inches(20.0));
                        let setup = Setup {
                            speed,
                            pressure,
                            control,
                            tip_width,
                            carrier,
                            ..Setup::new(gallons(18.0))
                        };
                        findings.extend(change_to_hit(&setup, gallons(wanted)).expect("change").findings);
                    }
                }
            }
        }
    }
    for control in CONTROLS {
        findings.extend(at_speed(control).finding);
    }
    for density in [10.65, 7.0] {
        findings.extend(water_stands_in(Density::pounds_per_gallon(density)).expect("density"));
    }
    findings
}

pub fn at_speed(control: PressureControl) -> planning::RateAtSpeed {
    let (slow, fast) = (Speed::miles_per_hour(3.0), Speed::miles_per_hour(6.0));
    rate_at_speed(&measured(19.0, 20.0, 21.0), slow, fast, control).expect("rate")
}

fn costing() -> Vec<Finding> {
    let per_area = CostPerArea::parse("$25/ac").expect("cost");
    let mut findings = Vec::new();
    for tips in [&[][..], &[-30.0, 10.0, 20.0]] {
        for rate in [measured(21.6, 22.0, 22.4), measured(17.0, 18.0, 19.0)] {
            let cost = cost_of_error(&per_area, Area::acres(100.0), gallons(20.0), &rate, tips);
            findings.extend(cost.expect("cost").findings);
        }
    }
    findings
}

pub fn all_findings() -> Vec<Finding> {
    let mut findings = loading();
    findings.extend(judging());
    findings.extend(changing());
    findings.extend(costing());
    findings.push(ammonium_sulfate_for_hard_water(&WaterTest::default()).finding);
    findings
}

/// Workings: those of the findings and those that results carry themselves.
pub fn all_workings() -> Vec<Working> {
    let mut workings: Vec<Working> =
        all_findings().into_iter().filter_map(|finding| finding.working).collect();
    for text in ["A: 3 pt/ac", "S: 0.5 % v/v"] {
        let product = Product::parse(text).expect(text);
        let down = put_down(&product, Some(gallons(20.0)), &measured(19.0, 20.0, 21.0));
        workings.push(down.expect("put down").working);
    }
    workings.extend(CONTROLS.map(|control| at_speed(control).working));
    workings.push(loads(&job(25.0, 20.0, 500.0), &[]).expect("loads").working);
    for text in ["1.5 lb ai/ac at 4 lb ai/gal", "2 lb ai/ac at 80 %"] {
        workings.push(WrittenRate::parse(text).expect(text).ingredient().expect("ingredient").working());
    }
    workings
}
