//! Laws of an orifice that hold for every tip and pressure.

#![allow(clippy::expect_used)] // a test fails by panicking

use proptest::prelude::*;
use sprayer::{RatedFlow, density_factor, footprint, height_for_overlap};
use units::{Angle, Density, Flow, Length, Pressure};

proptest! {
    #[test]
    fn four_times_the_pressure_gives_twice_the_flow(flow in 0.01..5.0_f64, psi in 5.0..100.0_f64, at in 5.0..100.0_f64) {
        let tip = RatedFlow::new(Flow::gallons_per_minute(flow), Pressure::psi(psi)).expect("rated");
        let once = tip.flow_at(Pressure::psi(at)).expect("flow");
        let twice = tip.flow_at(Pressure::psi(4.0 * at)).expect("flow");
        prop_assert!((twice.ratio_to(once) - 2.0).abs() < 1e-12);
        let back = tip.pressure_for(once).expect("pressure");
        prop_assert!((back.as_psi() / at - 1.0).abs() < 1e-12);
    }

    #[test]
    fn heavier_carriers_flow_less(light in 5.0..12.0_f64, more in 0.1..5.0_f64) {
        let (one, other) = (density_factor(Density::pounds_per_gallon(light)), density_factor(Density::pounds_per_gallon(light + more)));
        prop_assert!(one.expect("factor") < other.expect("factor"));
    }

    #[test]
    fn the_height_for_an_overlap_gives_that_overlap(angle in 20.0..150.0_f64, spacing in 5.0..60.0_f64, overlap in 0.0..2.0_f64) {
        let (angle, spacing) = (Angle::degrees(angle), Length::inches(spacing));
        let height = height_for_overlap(angle, spacing, overlap).expect("height");
        let wide = footprint(angle, height).expect("wide");
        prop_assert!((wide.ratio_to(spacing) - 1.0 - overlap).abs() < 1e-12);
    }
}
