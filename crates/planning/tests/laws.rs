//! Laws that hold for every job: nothing lost, nothing above the label, no panic on any text.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use planning::{
    CostPerArea, Job, Load, Loads, Money, PartsPerMillion, Price, Product, ProductAmount, ProductRate,
    WrittenRate, cost_of_error, loads, measure, pressure_for_rate, put_down, rate_at_speed, speed_for_rate,
    tank_at_rate,
};
use proptest::prelude::*;
use units::{Area, Mass, Pressure, Quantity, Ranged, Speed, UnitSystem, Volume, VolumePerArea};

fn amount(amount: ProductAmount) -> f64 {
    match amount {
        ProductAmount::Liquid(volume) => volume.si(),
        ProductAmount::Dry(mass) => mass.si(),
    }
}

fn job(acres: f64, rate: f64, tank: f64) -> Job {
    Job {
        area: Area::acres(acres),
        carrier: VolumePerArea::gallons_per_acre(rate),
        tank: Volume::gallons(tank),
        jugs: UnitSystem::Us,
    }
}

fn products(size: f64) -> Vec<Product> {
    [
        format!("Liquid: {size:.4} pt/ac"),
        format!("Dry: {size:.4} oz wt/ac"),
        format!("Helper: {size:.4} pt/100 gal"),
        format!("Powder: {size:.4} lb/100 gal"),
        "Sticker: 0.25 % v/v".to_string(),
        format!("Metric: {size:.4} mL/ha"),
    ]
    .iter()
    .map(|text| Product::parse(text).expect(text))
    .collect()
}

fn sum(plan: &Loads, of: impl Fn(&Load) -> f64) -> f64 {
    plan.iter().map(of).sum()
}

proptest! {
    #[test]
    fn all_loads_together_are_the_whole_job(acres in 0.05..500.0_f64, rate in 3.0..60.0_f64, tank in 10.0..1200.0_f64, size in 0.05..9.0_f64) {
        let (job, products) = (job(acres, rate, tank), products(size));
        let plan = loads(&job, &products).expect("loads");
        let total = (job.carrier * job.area).si();
        prop_assert!((sum(&plan, |load| load.volume.si()) / total - 1.0).abs() < 2e-9);
        prop_assert!((sum(&plan, |load| load.area.si()) / job.area.si() - 1.0).abs() < 2e-9);
        prop_assert_eq!(plan.iter().count(), plan.count() as usize);
        for (place, product) in products.iter().enumerate() {
            let together = sum(&plan, |load| amount(load.products[place].amount));
            let whole = match product.rate().rate() {
                ProductRate::LiquidPerArea(rate) => (*rate * job.area).si(),
                ProductRate::DryPerArea(rate) => (*rate * job.area).si(),
                ProductRate::LiquidInMix { share } => total * share,
                ProductRate::DryInMix(density) => total * density.si(),
            };
            prop_assert!((together / whole - 1.0).abs() < 2e-9, "{}", product.name());
            prop_assert!((amount(plan.totals[place].amount) / whole - 1.0).abs() < 2e-9);
        }
        for load in plan.iter() {
            prop_assert!(load.volume.si() <= job.tank.si() * (1.0 + 1e-12));
        }
        if let Some(shared) = &plan.shared {
            let last = plan.last.as_ref().expect("shared, so there is a last").volume.si();
            prop_assert!((2.0 * shared.volume.si() / (last + job.tank.si()) - 1.0).abs() < 1e-12);
        }
    }

    #[test]
    fn whole_tanks_are_never_split_by_arithmetic(tanks in 1_u32..500, tenths in 10_u32..600, tank in 5_u32..1500) {
        // The area is worked out by division, as people do, so it is off by its last bits.
        let rate = f64::from(tenths) / 10.0;
        let acres = f64::from(tanks) * f64::from(tank) / rate;
        let plan = loads(&job(acres, rate, f64::from(tank)), &[]).expect("loads");
        prop_assert_eq!((plan.full_loads, plan.last.is_none()), (tanks, true));
    }

    #[test]
    fn a_measure_is_never_above_and_never_far_below(tenths in 0_u32..8, digits in 1.0..10.0_f64, metric in any::<bool>(), dry in any::<bool>()) {
        let mut si = digits;
        for _ in 0..tenths { si /= 10.0; }
        let (what, finest) = if dry { (ProductAmount::Dry(Mass::from_si(si * 100.0)), [0.028349523125 / 4.0, 0.001]) }
            else { (ProductAmount::Liquid(Volume::from_si(si)), [2.95735295625e-5 / 4.0, 1e-6]) };
        let system = if metric { UnitSystem::Metric } else { UnitSystem::Us };
        let finest = finest[usize::from(metric)];
        match measure(what, system) {
            None => prop_assert!(amount(what) < finest),
            Some(measured) => {
                let short = amount(what) - amount(measured.amount);
                prop_assert!(short >= 0.0, "above the label by {}", -short);
                prop_assert!(short <= finest.max(amount(what) * 0.01) * (1.0 + 1e-9), "{}", measured.text);
                prop_assert!(measured.text.ends_with(|sign: char| sign.is_alphabetic()));
            }
        }
    }

    #[test]
    fn a_hair_below_a_step_is_on_it_but_never_above(quarters in 1_u32..100, hair in 0.0..5e-13_f64) {
        let whole = Volume::gallons(f64::from(quarters) / 512.0);
        let below = ProductAmount::Liquid(whole * (1.0 - hair));
        let (on, under) = (measure(ProductAmount::Liquid(whole), UnitSystem::Us), measure(below, UnitSystem::Us));
        let (on, under) = (on.expect("measured"), under.expect("measured"));
        prop_assert_eq!(&on.text, &under.text);
        prop_assert!(amount(on.amount) <= whole.si() && amount(under.amount) <= amount(below));
    }

    #[test]
    fn what_a_measure_says_is_what_it_is(quarters in 1_u32..200_000, metric in any::<bool>()) {
        // The words are read back by the parser of what people write.
        let (what, system) = if metric { (Volume::millilitres(f64::from(quarters)), UnitSystem::Metric) }
            else { (Volume::fluid_ounces(f64::from(quarters) / 4.0), UnitSystem::Us) };
        let measured = measure(ProductAmount::Liquid(what), system).expect("measured");
        let read = Volume::parse(&measured.text).unwrap_or_else(|error| panic!("{}: {error}", measured.text));
        prop_assert!((read.si() / amount(measured.amount) - 1.0).abs() < 1e-12, "{}", measured.text);
    }

    #[test]
    fn twice_the_ground_is_twice_the_product(acres in 0.5..300.0_f64, rate in 3.0..40.0_f64) {
        let products = products(1.3);
        let (once, twice) = (loads(&job(acres, rate, 300.0), &products).expect("loads"), loads(&job(2.0 * acres, rate, 300.0), &products).expect("loads"));
        for (one, two) in once.totals.iter().zip(&twice.totals) {
            prop_assert!((amount(two.amount) / amount(one.amount) - 2.0).abs() < 1e-9);
        }
    }

    #[test]
    fn the_order_of_products_changes_nothing(acres in 0.5..300.0_f64, rate in 3.0..40.0_f64, turn in 0_usize..6) {
        let straight = products(2.2);
        let mut turned = straight.clone();
        turned.rotate_left(turn);
        let (one, other) = (loads(&job(acres, rate, 250.0), &straight).expect("loads"), loads(&job(acres, rate, 250.0), &turned).expect("loads"));
        for (left, right) in one.iter().zip(other.iter()) {
            for product in &left.products {
                prop_assert!(right.products.contains(product));
            }
        }
    }

    #[test]
    fn only_products_by_the_ground_follow_the_rate(rate in 5.0..30.0_f64, off in 0.01..0.2_f64) {
        let measured = Ranged { value: VolumePerArea::gallons_per_acre(rate), low: VolumePerArea::gallons_per_acre(rate * (1.0 - off)), high: VolumePerArea::gallons_per_acre(rate * (1.0 + off)) };
        let tank = tank_at_rate(Volume::gallons(300.0), &measured, &products(1.0), UnitSystem::Us).expect("tank");
        prop_assert!((tank.area.value.as_acres() - 300.0 / rate).abs() < 1e-9);
        prop_assert!((tank.area.high.as_acres() - 300.0 / (rate * (1.0 - off))).abs() < 1e-9);
        for product in &tank.products {
            let moves = match product.amount {
                planning::RangedAmount::Liquid(ranged) => ranged.high > ranged.low,
                planning::RangedAmount::Dry(ranged) => ranged.high > ranged.low,
            };
            prop_assert_eq!(moves, product.basis == planning::Basis::Area);
        }
    }

    #[test]
    fn mixing_for_the_measured_rate_puts_down_the_label_rate(rate in 5.0..30.0_f64, size in 0.05..9.0_f64) {
        let measured = Ranged::exact(VolumePerArea::gallons_per_acre(rate));
        for product in products(size) {
            let down = put_down(&product, Some(measured.value), &measured).expect("put down");
            let wanted = product.rate().rate().per_area(measured.value);
            prop_assert!((down.rate.value().ratio_to(wanted).expect("same kind") - 1.0).abs() < 1e-12);
        }
    }

    #[test]
    fn a_change_of_speed_or_pressure_hits_the_rate(rate in 5.0..40.0_f64, wanted in 5.0..40.0_f64, speed in 1.0..15.0_f64, psi in 10.0..90.0_f64) {
        let (rate, wanted) = (VolumePerArea::gallons_per_acre(rate), VolumePerArea::gallons_per_acre(wanted));
        let (speed, pressure) = (Speed::miles_per_hour(speed), Pressure::psi(psi));
        let faster = speed_for_rate(speed, rate, wanted).expect("speed");
        let at = |rate: &Ranged<VolumePerArea>, from, to| {
            rate_at_speed(rate, from, to, sprayer::PressureControl::Constant).expect("rate").rate
        };
        let there = at(&Ranged::from_relative(rate, 0.02), speed, faster);
        prop_assert!((there.value.ratio_to(wanted) - 1.0).abs() < 1e-12);
        prop_assert!((there.value < rate) == (faster > speed));
        prop_assert!((at(&there, faster, speed).value.ratio_to(rate) - 1.0).abs() < 1e-12);
        // By the square-root law of the tips themselves.
        let tip = sprayer::RatedFlow::new(units::Flow::gallons_per_minute(0.3), pressure).expect("tip");
        let new = pressure_for_rate(pressure, rate, wanted).expect("pressure");
        let flow = tip.flow_at(new).expect("flow");
        prop_assert!((flow.ratio_to(tip.flow()) / wanted.ratio_to(rate) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn over_less_missing_is_the_mean_error(rate in 10.0..30.0_f64, tips in prop::collection::vec(-60.0..60.0_f64, 1..40)) {
        let cost = CostPerArea::parse("$10/ac").expect("cost");
        let measured = Ranged::exact(VolumePerArea::gallons_per_acre(rate));
        let found = cost_of_error(&cost, Area::acres(100.0), VolumePerArea::gallons_per_acre(20.0), &measured, &tips).expect("cost");
        let mean: f64 = tips.iter().sum::<f64>() / f64::from(u32::try_from(tips.len()).expect("few"));
        let error = rate / 20.0 * (1.0 + mean / 100.0) - 1.0;
        prop_assert!((found.shares.over - found.shares.missing - error).abs() < 1e-9);
        prop_assert!(found.shares.over >= 0.0 && found.shares.missing >= 0.0);
        prop_assert!((found.over.value.amount() - 1000.0 * found.shares.over).abs() < 1e-9);
    }

    #[test]
    fn no_text_makes_the_parsers_panic(text in "\\PC{0,80}") {
        everything(&text);
    }

    #[test]
    fn no_likely_text_makes_the_parsers_panic(text in "(A ?:)? ?[0-9½ .,/%$€:@-]{0,9} ?(fl oz|pt|lb|oz|g|%|\\$)?( ai| ae| a\\.i\\.)?[ /]{0,2}(ac|ha|100 gal|1,000 sq ft|v/v|w/w|per|gal)? ?(at|@)? ?[0-9.]{0,3} ?(lb ai/gal|%|g/L)?") {
        everything(&text);
    }

    #[test]
    fn no_bytes_make_the_parsers_panic(bytes in prop::collection::vec(any::<u8>(), 0..120)) {
        everything(&String::from_utf8_lossy(&bytes));
    }

    #[test]
    fn what_is_written_is_kept(size in 1_u32..500, place in 0_usize..6) {
        let unit = ["pt/ac", "lb/ac", "fl oz/100 gal", "g/ha", "mL/100 L", "lb/100 gal"][place];
        let text = format!("Some name: {size} {unit}");
        let product = Product::parse(&text).expect("product");
        prop_assert_eq!(format!("{}: {}", product.name(), product.rate().text()), text);
    }

    #[test]
    fn money_reads_back(cents in 0_u32..99_999, place in 0_usize..4) {
        let text = match place { 0 => format!("${}.{:02}", cents / 100, cents % 100), 1 => format!("{}.{:02} $", cents / 100, cents % 100), 2 => format!("€ {}.{:02}", cents / 100, cents % 100), _ => format!("{}.{:02} EUR", cents / 100, cents % 100) };
        let money = Money::parse(&text).expect("money");
        prop_assert!((money.amount() - f64::from(cents) / 100.0).abs() < 1e-9);
        prop_assert_eq!(money.to_string(), text);
    }
}

/// Every parser on one text; each error has a code, a sentence and a hint.
fn everything(text: &str) {
    use units::Coded;
    let said = |error: &dyn Coded| {
        assert!(
            !error.code().is_empty() && !error.to_string().is_empty() && error.hint().is_some(),
            "{text:?}"
        );
        let shown = error.to_string();
        let plain = shown.chars().all(|sign| !sign.is_control() || sign.is_whitespace());
        assert!(plain && shown.chars().count() < 1500, "{text:?}: {shown:?}");
        let _ = error.args();
    };
    if let Err(error) = Product::parse(text) {
        said(&error);
    }
    if let Err(error) = WrittenRate::parse(text) {
        said(&error);
    }
    if let Err(error) = Money::parse(text) {
        said(&error);
    }
    if let Err(error) = Price::parse(text) {
        said(&error);
    }
    if let Err(error) = CostPerArea::parse(text) {
        said(&error);
    }
    if let Err(error) = PartsPerMillion::parse(text) {
        said(&error);
    }
}
