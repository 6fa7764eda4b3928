//! The plumbing beside EPANET 2.2.
//!
//! Source of the figures: EPANET 2.2 by wntr 1.5.0 (emitters, Darcy-Weisbach, accuracy 1e-5), agreeing with an independent solver
//! to 4e-6 L/min. The network: gauge pressure -> 2 m of 25 mm, K 2 -> manifold -> 3 m (left) and 4 m (right) of hose, K 2 ->
//! six tips a section at 0.5 m, fed midway between the third and fourth, each over 0.03 m of 8 mm with K 6; hose and feeds are of 19 mm.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use proptest::prelude::*;
use sprayer::plumbing::{Liquid, Network, NodeId, Outlet, OutletId, Pipe, PlumbingError, Supply};

/// EPANET's own constant in head losses, 32.2 ft/s² (EPANET 2.2, source). Pressures are metres of water, 10.19716 to a bar.
const EPANET: f64 = 32.2 * 0.3048;
const METRES_IN_A_BAR: f64 = 10.197_16;
const SMOOTH: f64 = 1.5e-6;

struct Case {
    pressure: f64,
    hose: f64,
    right_k: f64,
    viscosity: f64,
    rated: f64,
    opens_at: f64,
    plugged: Option<usize>,
    worn: Option<(usize, f64)>,
}

const A: Case = Case {
    pressure: 3.0,
    hose: 0.019,
    right_k: 0.0,
    viscosity: 1.0,
    rated: 1.6,
    opens_at: 0.0,
    plugged: None,
    worn: None,
};

struct Boom {
    network: Network,
    tips: Vec<OutletId>,
    places: [NodeId; 3],
}

/// Flow at a metre of head out of L/min at 3 bar.
fn coefficient(rated: f64) -> f64 {
    rated / 60_000.0 / (3.0 * METRES_IN_A_BAR).sqrt()
}

fn boom(case: &Case) -> Boom {
    let pipe = |length: f64, bore: f64, minor_loss: f64| Pipe { length, bore, roughness: SMOOTH, minor_loss };
    let liquid = Liquid { viscosity: 1.021_93e-6 * case.viscosity, gravity: EPANET, ..Liquid::default() };
    let (mut network, gauge) =
        Network::fed(liquid, |at| Supply::HeldHead { at, head: case.pressure * METRES_IN_A_BAR });
    let manifold = network.branch(gauge, pipe(2.0, 0.025, 2.0), 0.0);
    let mut tips = Vec::new();
    let mut entries = Vec::new();
    for (section, (length, k)) in [(3.0, 2.0), (4.0, 2.0 + case.right_k)].into_iter().enumerate() {
        let entry = network.branch(manifold, pipe(length, case.hose, k), 0.0);
        entries.push(entry);
        let third = network.branch(entry, pipe(0.25, case.hose, 0.0), 0.0);
        let second = network.branch(third, pipe(0.5, case.hose, 0.0), 0.0);
        let first = network.branch(second, pipe(0.5, case.hose, 0.0), 0.0);
        let fourth = network.branch(entry, pipe(0.25, case.hose, 0.0), 0.0);
        let fifth = network.branch(fourth, pipe(0.5, case.hose, 0.0), 0.0);
        let sixth = network.branch(fifth, pipe(0.5, case.hose, 0.0), 0.0);
        for (place, node) in [first, second, third, fourth, fifth, sixth].into_iter().enumerate() {
            let number = section * 6 + place;
            let worn = case.worn.filter(|(tip, _)| *tip == number).map_or(1.0, |(_, factor)| factor);
            let body = network.branch(node, pipe(0.03, 0.008, 6.0), 0.0);
            let tip = Outlet {
                coefficient: coefficient(case.rated) * worn,
                opens_at: case.opens_at * METRES_IN_A_BAR,
            };
            tips.push(network.outlet(body, (case.plugged != Some(number)).then_some(tip)));
        }
    }
    Boom { network, tips, places: [manifold, entries[0], entries[1]] }
}

/// Flows in L/min, tip by tip.
fn flows(case: &Case) -> Vec<f64> {
    let boom = boom(case);
    let solved = boom.network.solve().expect("it is solved");
    boom.tips.iter().map(|tip| solved.flow(*tip) * 60_000.0).collect()
}

/// The table prints four decimals. EPANET rounds 8/(π² 32.2) to 0.02517, which takes 1.2e-4 off a loss by fittings: with K 1600
/// that is 7e-5 L/min; all else agrees to 1e-5.
fn near(got: f64, printed: f64, what: &str) {
    assert!((got - printed).abs() <= 0.5e-4 + 7e-5, "{what}: {got} beside {printed}");
}

fn six(ends: [f64; 3]) -> Vec<f64> {
    ends.iter().chain(ends.iter().rev()).copied().collect()
}

#[test]
fn the_check_network_flows_as_epanet_says() {
    let left_right = |left: [f64; 3], right: [f64; 3]| [six(left), six(right)].concat();
    let plugged = [1.5935, 1.5935, 1.5936, 0.0, 1.5935, 1.5935];
    let worn = [1.5922, 1.5922, 1.5922, 1.8302, 1.5922, 1.5922];
    let cases: [(&str, Case, Vec<f64>); 12] = [
        ("A", A, left_right([1.5924; 3], [1.5917; 3])),
        ("B", Case { pressure: 2.0, ..A }, left_right([1.3; 3], [1.2994, 1.2994, 1.2995])),
        ("C", Case { plugged: Some(3), ..A }, [plugged.to_vec(), six([1.5920, 1.5920, 1.5921])].concat()),
        ("D", Case { worn: Some((3, 1.15)), ..A }, [worn.to_vec(), six([1.5916, 1.5916, 1.5917])].concat()),
        ("E", Case { right_k: 120.0, ..A }, left_right([1.5924, 1.5924, 1.5925], [1.5437, 1.5437, 1.5438])),
        ("F", Case { right_k: 400.0, ..A }, left_right([1.5925, 1.5925, 1.5926], [1.4468; 3])),
        ("K", Case { right_k: 1600.0, ..A }, left_right([1.5929, 1.5929, 1.5930], [1.1730, 1.1730, 1.1731])),
        ("H", Case { viscosity: 2.0, ..A }, left_right([1.5917; 3], [1.5908, 1.5909, 1.5909])),
        ("G", Case { hose: 0.013, ..A }, left_right([1.5787, 1.5788, 1.5791], [1.5747, 1.5747, 1.5751])),
        (
            "I",
            Case { rated: 3.2, hose: 0.013, ..A },
            left_right([3.0537, 3.0543, 3.0563], [3.0289, 3.0295, 3.0314]),
        ),
        ("J", Case { rated: 3.2, ..A }, left_right([3.1442, 3.1443, 3.1447], [3.1398, 3.1399, 3.1402])),
        ("CV", Case { opens_at: 0.5, ..A }, left_right([1.4535, 1.4535, 1.4536], [1.4529; 3])),
    ];
    for (name, case, expected) in cases {
        for (tip, (got, printed)) in flows(&case).into_iter().zip(expected).enumerate() {
            near(got, printed, &format!("case {name}, tip {}", tip + 1));
        }
    }
}

#[test]
fn pressures_and_totals_are_those_of_the_table() {
    let figures = [
        (A, [2.9912, 2.9804, 2.9778], 19.1044),
        (Case { pressure: 2.0, ..A }, [1.9939, 1.9865, 1.9847], 15.5968),
        (Case { right_k: 1600.0, ..A }, [2.9932, 2.9824, 1.6173], 16.5958),
        (Case { rated: 3.2, hose: 0.013, ..A }, [2.9702, 2.7716, 2.7267], 36.5081),
    ];
    for (case, bars, total) in figures {
        let boom = boom(&case);
        let solved = boom.network.solve().expect("it is solved");
        for (place, bar) in boom.places.iter().zip(bars) {
            near(solved.pressure_head(*place) / METRES_IN_A_BAR, bar, "pressure");
        }
        // Twelve tips, each as near as the table.
        assert!((solved.total() * 60_000.0 - total).abs() < 12.0 * 4e-5, "{}", solved.total() * 60_000.0);
    }
}

#[test]
fn a_controller_that_holds_the_flow_lets_worn_tips_drop_the_pressure() {
    let held = boom(&A).network.solve().expect("it is solved").total();
    let with = |worn: f64| {
        let liquid = Liquid { gravity: EPANET, ..Liquid::default() };
        let (mut network, feed) = Network::fed(liquid, |at| Supply::HeldFlow { at, flow: held });
        let mut tips = Vec::new();
        for _ in 0..12 {
            let body = network.branch(
                feed,
                Pipe { length: 0.5, bore: 0.019, roughness: SMOOTH, minor_loss: 6.0 },
                0.0,
            );
            tips.push(
                network.outlet(body, Some(Outlet { coefficient: coefficient(1.6) * worn, opens_at: 0.0 })),
            );
        }
        let solved = network.solve().expect("it is solved");
        assert!((solved.total() / held - 1.0).abs() < 1e-9);
        solved.pressure_head(feed)
    };
    // An orifice a tenth larger needs 1/1.21 of the pressure for the same flow (orifice equation), but for the body's loss.
    let ratio = with(1.1) / with(1.0);
    assert!((ratio - 1.0 / 1.21).abs() < 5e-3, "{ratio}");
}

#[test]
fn a_pump_and_its_bypass_find_where_they_agree() {
    let liquid = Liquid::default();
    let (shut_off, fall) = (60.0, 4.0e7);
    let (mut network, outlet_of_pump) = Network::fed(liquid, |at| Supply::Pump { at, shut_off, fall });
    let bypass = network.outlet(outlet_of_pump, Some(Outlet { coefficient: 5e-5, opens_at: 0.0 }));
    let solved = network.solve().expect("it is solved");
    // h = 60 - 4e7 q² and q = 5e-5 √h: h = 60 / (1 + 4e7 x 25e-10) = 54.545 m; by hand.
    assert!((solved.pressure_head(outlet_of_pump) - 60.0 / 1.1).abs() < 1e-6);
    assert!((solved.flow(bypass) - 5e-5 * (60.0_f64 / 1.1).sqrt()).abs() < 1e-12);
}

#[test]
fn on_a_slope_the_lower_tips_get_more() {
    let pipe = Pipe { length: 3.0, bore: 0.019, roughness: SMOOTH, minor_loss: 0.0 };
    let (mut network, feed) = Network::fed(Liquid::default(), |at| Supply::HeldHead { at, head: 20.0 });
    let mut tip = |elevation: f64| {
        let end = network.branch(feed, pipe, elevation);
        network.outlet(end, Some(Outlet { coefficient: coefficient(1.6), opens_at: 0.0 }))
    };
    let (low, high) = (tip(-1.0), tip(1.0));
    let solved = network.solve().expect("it is solved");
    // The same loss on both, so the squares differ by two metres of head.
    let share = |tip| solved.flow(tip) / coefficient(1.6);
    let square = |tip| share(tip) * share(tip);
    assert!((square(low) - square(high) - 2.0).abs() < 1e-3, "{} {}", square(low), square(high));
}

#[test]
fn what_cannot_be_is_refused() {
    let pipe = Pipe { length: 1.0, bore: 0.0, roughness: 0.0, minor_loss: 0.0 };
    let (mut network, feed) = Network::fed(Liquid::default(), |at| Supply::HeldHead { at, head: 20.0 });
    let end = network.branch(feed, pipe, 0.0);
    network.outlet(end, Some(Outlet { coefficient: 1e-5, opens_at: 0.0 }));
    assert_eq!(network.solve().map(|_| ()), Err(PlumbingError::Impossible));
    let (mut network, feed) = Network::fed(Liquid::default(), |at| Supply::HeldHead { at, head: 20.0 });
    network.outlet(feed, None);
    assert_eq!(network.solve().map(|_| ()), Err(PlumbingError::NothingFlows));
    // A check valve that stays shut at this pressure.
    let (mut network, feed) = Network::fed(Liquid::default(), |at| Supply::HeldHead { at, head: 3.0 });
    network.outlet(feed, Some(Outlet { coefficient: 1e-5, opens_at: 5.0 }));
    assert_eq!(network.solve().map(|_| ()), Err(PlumbingError::NothingFlows));
}

#[derive(Clone, Debug)]
struct Section {
    feed: (f64, f64, f64),
    hose: f64,
    tips: Vec<(f64, bool)>,
}

fn sections() -> impl Strategy<Value = Vec<Section>> {
    let tip = (0.4_f64..4.0, prop::bool::weighted(0.06)).prop_map(|(rated, plugged)| (rated, plugged));
    let section = (
        (0.3_f64..8.0, 0.008_f64..0.05, 0.0_f64..2000.0),
        0.008_f64..0.05,
        prop::collection::vec(tip, 1..10),
    )
        .prop_map(|(feed, hose, tips)| Section { feed, hose, tips });
    prop::collection::vec(section, 1..14)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// Any boom comes to rest: what flows in flows out at every node by how it was solved, and each tip's flow is that of its own
    /// pressure. A larger orifice never gives less, and takes from its neighbours, as the sensitivities say.
    #[test]
    fn any_boom_comes_to_rest(sections in sections(), bar in 0.7_f64..8.0, opens in prop::sample::select(vec![0.0, 0.3, 0.6])) {
        let build = |factor: f64| {
            let head = bar * METRES_IN_A_BAR;
            let (mut network, gauge) = Network::fed(Liquid::default(), |at| Supply::HeldHead { at, head });
            let pipe = |length, bore, minor_loss| Pipe { length, bore, roughness: SMOOTH, minor_loss };
            let manifold = network.branch(gauge, pipe(2.0, 0.025, 2.0), 0.0);
            let mut tips = Vec::new();
            for section in &sections {
                let (length, bore, k) = section.feed;
                let mut node = network.branch(manifold, pipe(length, bore, k), 0.0);
                for (rated, plugged) in &section.tips {
                    node = network.branch(node, pipe(0.5, section.hose, 0.0), 0.0);
                    let body = network.branch(node, pipe(0.03, 0.008, 6.0), 0.0);
                    let factor = if tips.is_empty() { factor } else { 1.0 };
                    let tip = Outlet { coefficient: coefficient(*rated) * factor, opens_at: opens * METRES_IN_A_BAR };
                    tips.push((network.outlet(body, (!plugged).then_some(tip)), body, tip));
                }
            }
            (network, tips)
        };
        let (network, tips) = build(1.0);
        let solved = match network.solve() {
            Ok(solved) => solved,
            Err(PlumbingError::NothingFlows) => return Ok(()),
            Err(error) => return Err(TestCaseError::fail(format!("{error}"))),
        };
        for (outlet, body, tip) in &tips {
            let flow = solved.flow(*outlet);
            prop_assert!(flow >= 0.0);
            if flow > 0.0 {
                let over = solved.pressure_head(*body) - tip.opens_at;
                prop_assert!((flow - tip.coefficient * over.max(0.0).sqrt()).abs() < 1e-9, "{flow} {over}");
            }
        }
        // The sensitivities beside a small change of the first tip.
        let (first, ..) = tips[0];
        if solved.flow(first) > 1e-7 {
            let step = 1e-4;
            let (up, _) = build(1.0 + step);
            let up = up.solve().map_err(|error| TestCaseError::fail(format!("{error}")))?;
            for (outlet, ..) in &tips {
                let change = (up.flow(*outlet) - solved.flow(*outlet)) / step;
                let said = solved.sensitivity(*outlet, first);
                prop_assert!((change - said).abs() < 2e-3 * solved.flow(first) , "{change} {said}");
            }
        }
    }
}

#[test]
fn hoses_that_form_a_ring_share_the_flow() {
    // Two equal fittings side by side take half of the flow each, and so a quarter of the head: K 8 twice is K 2 once.
    let pipe = |minor_loss| Pipe { length: 0.0, bore: 0.008, roughness: 0.0, minor_loss };
    let flow = |loss: f64, twice: usize| {
        let (mut network, feed) = Network::fed(Liquid::default(), |at| Supply::HeldHead { at, head: 20.0 });
        let end = network.branch(feed, pipe(loss), 0.0);
        for _ in 1..twice {
            network.join(feed, end, pipe(loss));
        }
        let tips: Vec<OutletId> = (0..2)
            .map(|_| {
                let body = network.branch(end, pipe(6.0), 0.0);
                network.outlet(body, Some(Outlet { coefficient: coefficient(1.6), opens_at: 0.0 }))
            })
            .collect();
        network.solve().expect("it is solved").flow(tips[1])
    };
    assert!((flow(8.0, 2) / flow(2.0, 1) - 1.0).abs() < 1e-9, "{} {}", flow(8.0, 2), flow(2.0, 1));
    assert!(flow(8.0, 2) > flow(8.0, 1));
}
