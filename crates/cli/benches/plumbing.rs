//! The plumbing of a boom of sixty tips in five sections, from its hoses to every flow, beside EPANET
//! (`tools/bench/plumbing_epanet.py`, the same boom).
#![allow(clippy::print_stdout, reason = "a bench prints its figures")]

mod timing;

use std::hint::black_box;

use sprayer::plumbing::{Liquid, Network, Outlet, Pipe, PlumbingError, Supply};
use timing::case;

const METRES_IN_A_BAR: f64 = 10.197_16;
const SMOOTH: f64 = 1.5e-6;

fn main() -> Result<(), PlumbingError> {
    let network = boom();
    network.solve()?;
    case("plumbing_60_tips", 1, || black_box(&network).solve());
    Ok(())
}

fn pipe(length: f64, bore: f64, minor_loss: f64) -> Pipe {
    Pipe { length, bore, roughness: SMOOTH, minor_loss }
}

/// Five sections of twelve tips at 0.5 m, each fed midway, as `bench_boom` in `tools/plumbing/booms.py`.
fn boom() -> Network {
    let head = 3.0 * METRES_IN_A_BAR;
    let (mut network, gauge) = Network::fed(Liquid::default(), |at| Supply::HeldHead { at, head });
    let manifold = network.branch(gauge, pipe(2.0, 0.038, 2.0), 0.0);
    let tip = Outlet { coefficient: 1.6 / 60_000.0 / head.sqrt(), opens_at: 0.0 };
    for length in [7.0, 4.0, 2.0, 4.0, 7.0] {
        let entry = network.branch(manifold, pipe(length, 0.019, 2.0), 0.0);
        for _ in 0..2 {
            let mut node = entry;
            for place in 0..6 {
                let along = if place == 0 { 0.25 } else { 0.5 };
                node = network.branch(node, pipe(along, 0.019, 0.0), 0.0);
                let body = network.branch(node, pipe(0.03, 0.008, 6.0), 0.0);
                network.outlet(body, Some(tip));
            }
        }
    }
    network
}
