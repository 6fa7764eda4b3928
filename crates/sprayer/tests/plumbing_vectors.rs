//! Random booms held to EPANET 2.2: 4 to 120 tips, 1 to 13 sections, bores of 6 to 50 mm, plugs, check valves, slopes.
//!
//! `tools/vectors/boom_flows.py` makes the booms and the flows.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking
#![allow(clippy::float_cmp)] // places are counted, not measured

use serde_json::Value;
use sprayer::plumbing::{Liquid, Network, NodeId, Outlet, OutletId, Pipe, Supply};

/// EPANET 2.2 takes 32.2 ft/s² in friction and 1.1e-5 ft²/s for water (`src/types.h`).
const GRAVITY: f64 = 32.2 * FOOT;
const VISCOSITY: f64 = 1.1e-5 * FOOT * FOOT;
const FOOT: f64 = 0.3048;
/// In losses of fittings EPANET rounds 8/(π² 32.2) to 0.02517 (`src/input3.c`); K is scaled by that here.
const MINOR: f64 = 0.025_17 * core::f64::consts::PI * core::f64::consts::PI * 32.2 / 8.0;
const METRES_IN_A_BAR: f64 = 10.197_16;
/// L/min: the file keeps six decimals, and EPANET comes to rest within 1e-6 ft. Far below what any cup can show (1e-4).
const AGREE: f64 = 5e-6;

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

fn list(value: &Value) -> &[Value] {
    value.as_array().expect("a list")
}

/// A length, a bore in mm and a K.
fn pipe(of: &Value, roughness: f64) -> Pipe {
    let [length, bore, minor_loss] = [0, 1, 2].map(|place| number(&of[place]));
    Pipe { length, bore: bore / 1000.0, roughness, minor_loss: minor_loss * MINOR }
}

/// The hose of a section with the feed at its place, and its tips from left to right.
struct Hose<'a> {
    section: &'a Value,
    roughness: f64,
    opens_at: f64,
    tips: &'a [Value],
}

impl Hose<'_> {
    /// How much higher than the gauge; the place is counted in tips from 0.
    fn height(&self, place: f64) -> f64 {
        let [left, right] = [0, 1].map(|end| number(&self.section["heights"][end]));
        let last = f64::from(u32::try_from(self.tips.len() - 1).expect("few"));
        if last > 0.0 { left + (right - left) * place / last } else { left }
    }

    fn outlets(&self, network: &mut Network, manifold: NodeId) -> Vec<OutletId> {
        let enters = number(&self.section["enters"]) - 1.0;
        let entry =
            network.branch(manifold, pipe(&self.section["feed"], self.roughness), self.height(enters));
        let places: Vec<f64> =
            (0..self.tips.len()).map(|tip| f64::from(u32::try_from(tip).expect("few"))).collect();
        let mut nodes = vec![entry; places.len()];
        let left = places.iter().rev().filter(|place| **place < enters).collect::<Vec<_>>();
        let right = places.iter().filter(|place| **place > enters).collect();
        for side in [left, right] {
            let (mut before, mut at) = (entry, enters);
            for place in side {
                let hose = Pipe {
                    length: (place - at).abs() * number(&self.section["spacing"]),
                    bore: number(&self.section["hose"]) / 1000.0,
                    roughness: self.roughness,
                    minor_loss: 0.0,
                };
                before = network.branch(before, hose, self.height(*place));
                at = *place;
                nodes[places.iter().position(|other| other == place).expect("one of them")] = before;
            }
        }
        let body = pipe(&self.section["body"], self.roughness);
        let tips = self.tips.iter().zip(nodes).zip(places);
        tips.map(|((tip, node), place)| {
            let end = network.branch(node, body, self.height(place));
            let coefficient = number(tip) / 60_000.0 / (3.0 * METRES_IN_A_BAR).sqrt();
            let tip = (coefficient > 0.0).then_some(Outlet { coefficient, opens_at: self.opens_at });
            network.outlet(end, tip)
        })
        .collect()
    }
}

#[test]
fn expected_from_epanet_tip_flows() {
    let (mut booms, mut tips, mut worst, mut most_steps) = (0, 0, 0.0_f64, 0);
    let mut off = Vec::new();
    for line in include_str!("vectors/plumbing.jsonl").lines() {
        let boom: Value = serde_json::from_str(line).expect("JSON");
        let roughness = number(&boom["roughness_mm"]) / 1000.0;
        let viscosity = VISCOSITY * number(&boom["viscosity"]);
        let liquid = Liquid { viscosity, gravity: GRAVITY, ..Liquid::default() };
        let head = number(&boom["bar"]) * METRES_IN_A_BAR;
        let (mut network, gauge) = Network::fed(liquid, |at| Supply::HeldHead { at, head });
        let manifold = network.branch(gauge, pipe(&boom["supply"], roughness), 0.0);
        let opens_at = number(&boom["opens_at"]) * METRES_IN_A_BAR;
        let mut outlets = Vec::new();
        for section in list(&boom["sections"]) {
            let hose = Hose { section, roughness, opens_at, tips: list(&section["tips"]) };
            outlets.extend(hose.outlets(&mut network, manifold));
        }
        booms += 1;
        let solved = network.solve().unwrap_or_else(|error| panic!("boom {booms}: {error}"));
        most_steps = most_steps.max(solved.steps);
        let expected: Vec<f64> = list(&boom["flows"]).iter().flat_map(list).map(number).collect();
        assert_eq!(outlets.len(), expected.len());
        for (place, (outlet, expected)) in outlets.iter().zip(expected).enumerate() {
            let flow = solved.flow(*outlet) * 60_000.0;
            worst = worst.max((flow - expected).abs());
            if (flow - expected).abs() >= AGREE {
                off.push(format!("boom {booms}, tip {}: {flow}, EPANET {expected}", place + 1));
            }
            tips += 1;
        }
    }
    assert!(off.is_empty(), "{} tips are off, the worst by {worst}\n{}", off.len(), off.join("\n"));
    // Newton from a good beginning; more would be hunting between the regimes.
    assert!(most_steps <= 12, "{most_steps} steps");
    assert!(booms >= 300 && tips > 10_000, "{booms} booms, {tips} tips, worst {worst} L/min");
}
