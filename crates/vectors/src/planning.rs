//! Products, loads, the tank at the measured rate, targets, changes and cost.

use std::error::Error;

use planning::{
    Change, CostPerArea, Job, MoneyRange, PartsPerMillion, Price, Product, ProductAmount, ProductPerArea,
    ProductTarget, RangedAmount, RangedPerArea, Setup, SpeedChange, Target, WaterTest, WrittenRate,
    ammonium_sulfate_for_hard_water, carrier_for_nutrient, change_to_hit, cost_of_error, cost_of_overlap,
    judge, loads, nutrient_at_rate, percent_by_weight, percent_solution, pressure_to_hold, put_down,
    rate_error_from_speed_error, tank_at_rate,
};
use sprayer::PressureControl;
use units::{
    Area, Density, Length, MassPerArea, Pressure, Quantity, Ranged, Speed, UnitSystem, Volume, VolumePerArea,
};

use crate::List;

pub(crate) fn put(list: &mut List) {
    list.attempt("tank", tank);
    list.attempt("target", target);
    list.attempt("change", change);
    list.attempt("cost", cost);
    list.attempt("small sums", small_sums);
}

/// What the sprayer puts out here.
fn measured() -> Ranged<VolumePerArea> {
    Ranged::from_relative(VolumePerArea::gallons_per_acre(15.37), 0.0143)
}

fn products() -> Result<Vec<Product>, Box<dyn Error>> {
    let texts = [
        "A: 2.3 pt/ac",
        "B: 1.7 oz wt/ac",
        "C: 2.3 lb/100 gal",
        "D: 0.27 % v/v",
        "E: 1.3 lb ai/ac at 3.7 lb ai/gal",
        "F: 0.7 lb ae/ac at 70 %",
        "G: 37 mL/1000 sq ft",
    ];
    Ok(texts.into_iter().map(Product::parse).collect::<Result<_, _>>()?)
}

fn tank(list: &mut List) -> Result<(), Box<dyn Error>> {
    let products = products()?;
    let tank = tank_at_rate(Volume::gallons(207.0), &measured(), &products, UnitSystem::Us)?;
    list.ranged("ground a tank does", &tank.area);
    for product in &tank.products {
        ranged_amount(list, &format!("product {} in a tank", product.name), &product.amount);
        if let Some(measure) = &product.measure {
            amount(list, format!("product {} to measure", product.name), measure.amount);
        }
    }
    let job = Job {
        area: Area::acres(41.3),
        carrier: measured().value,
        tank: Volume::gallons(207.0),
        jugs: UnitSystem::Metric,
    };
    let plan = loads(&job, &products)?;
    list.put("loads", f64::from(plan.count()));
    let last = plan.last.ok_or("a last part load")?;
    list.quantity("last load", last.volume);
    list.quantity("ground of the last load", last.area);
    for (part, group) in [("last load", &last.products), ("all", &plan.totals)] {
        for product in group {
            amount(list, format!("product {}, {part}", product.name), product.amount);
        }
    }
    Ok(())
}

fn target(list: &mut List) -> Result<(), Box<dyn Error>> {
    let mixed_for = VolumePerArea::gallons_per_acre(14.7);
    for product in products()? {
        let down = put_down(&product, Some(mixed_for), &measured())?;
        ranged_per_area(list, &format!("product {} put down", product.name()), &down.rate);
    }
    let limited = ProductTarget::new(Product::parse("A: 2.3 pt/ac")?)
        .at_least(WrittenRate::parse("1 pt/ac")?)?
        .at_most(WrittenRate::parse("2.37 pt/ac")?)?;
    let target = Target::new()
        .least_carrier(VolumePerArea::gallons_per_acre(9.7))?
        .intended(mixed_for)?
        .product(limited);
    let judged = judge(&target, None, &measured())?;
    for (name, deviation) in
        [("intended", judged.against_intended), ("least carrier", judged.against_least_carrier)]
    {
        let deviation = deviation.ok_or("a deviation")?;
        list.put(format!("against the {name}"), deviation.percent);
        list.put(format!("against the {name}, low"), deviation.low);
        list.put(format!("against the {name}, high"), deviation.high);
    }
    list.put("findings of the target", judged.findings.len() as f64);
    Ok(())
}

fn change(list: &mut List) -> Result<(), Box<dyn Error>> {
    let setup = Setup {
        speed: Some(Speed::miles_per_hour(5.3)),
        pressure: Some(Pressure::psi(29.3)),
        control: Some(PressureControl::Constant),
        tip_width: Some(Length::inches(19.7)),
        carrier: Density::pounds_per_gallon(10.65),
        ..Setup::new(measured().value)
    };
    let Change { speed, pressure, tip, .. } = change_to_hit(&setup, VolumePerArea::gallons_per_acre(14.7))?;
    let SpeedChange::Drive(speed) = speed else { return Err("a speed".into()) };
    list.quantity("speed to hit a rate", speed);
    list.quantity("pressure to hit a rate", pressure.ok_or("a pressure")?);
    let tip = tip.ok_or("a tip")?;
    list.quantity("flow to hit a rate", tip.flow);
    list.quantity("water flow to hit a rate", tip.water_flow);
    let held = pressure_to_hold(Pressure::psi(29.3), Speed::miles_per_hour(5.3), Speed::miles_per_hour(6.1))?;
    list.quantity("pressure to hold a rate", held);
    for step in 1..=10_u32 {
        let percent = f64::from(step * 37) / 10.0 - 20.0;
        list.put(format!("speed {percent} % off"), rate_error_from_speed_error(percent)?);
    }
    Ok(())
}

fn cost(list: &mut List) -> Result<(), Box<dyn Error>> {
    let price = Price::parse("$37.3 per 2.5 gal")?;
    let product = Product::parse("A: 2.3 pt/ac")?;
    let mixed_for = VolumePerArea::gallons_per_acre(14.7);
    let on_area = price.on_area(&product, mixed_for)?;
    list.put("cost of an acre", on_area.on(Area::acres(1.0)).amount());
    let tips = [1.3, -2.7, 18.3, 0.4, -100.0, 3.1, -1.9];
    let cost = cost_of_error(&on_area, Area::acres(41.3), mixed_for, &measured(), &tips)?;
    list.put("share over", cost.shares.over);
    list.put("share missing", cost.shares.missing);
    money(list, "cost over", &cost.over);
    money(list, "cost missing", &cost.missing);
    list.put("share over, mixed right", cost.left_when_mixed_for_measured.over);
    let twice = cost_of_overlap(&CostPerArea::parse("€23.7/ha")?, 7.3, Area::acres(41.3))?;
    list.put("cost of overlap", twice.amount());
    Ok(())
}

fn small_sums(list: &mut List) -> Result<(), Box<dyn Error>> {
    let parts = PartsPerMillion::parse;
    let test = WaterTest {
        potassium: parts("11.3 ppm")?,
        sodium: parts("47 ppm")?,
        calcium: parts("153 mg/L")?,
        magnesium: parts("41 ppm")?,
        iron: parts("0.53 ppm")?,
    };
    list.quantity("ammonium sulfate", ammonium_sulfate_for_hard_water(&test).amount);
    let uan = Density::pounds_per_gallon(10.65);
    let rate = carrier_for_nutrient(MassPerArea::pounds_per_acre(73.0), uan, 0.28)?;
    list.quantity("carrier for nutrient", rate);
    list.quantity("nutrient at a rate", nutrient_at_rate(measured().value, uan, 0.28)?);
    list.quantity("percent solution", percent_solution(Volume::gallons(3.7), 0.013)?);
    list.quantity("percent by weight", percent_by_weight(Volume::gallons(3.7), uan, 0.013)?);
    Ok(())
}

fn amount(list: &mut List, name: String, amount: ProductAmount) {
    match amount {
        ProductAmount::Liquid(volume) => list.quantity(name, volume),
        ProductAmount::Dry(mass) => list.quantity(name, mass),
    }
}

fn ranged_amount(list: &mut List, name: &str, amount: &RangedAmount) {
    match amount {
        RangedAmount::Liquid(volume) => list.ranged(name, volume),
        RangedAmount::Dry(mass) => list.ranged(name, mass),
    }
}

fn ranged_per_area(list: &mut List, name: &str, rate: &RangedPerArea) {
    for (end, rate) in [("", rate.value()), (", low", rate.low()), (", high", rate.high())] {
        let si = match rate {
            ProductPerArea::Liquid(rate) => rate.si(),
            ProductPerArea::Dry(rate) => rate.si(),
        };
        list.put(format!("{name}{end}"), si);
    }
}

fn money(list: &mut List, name: &str, money: &MoneyRange) {
    list.put(name, money.value.amount());
    list.put(format!("{name}, low"), money.low.amount());
    list.put(format!("{name}, high"), money.high.amount());
}
