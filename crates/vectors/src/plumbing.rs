//! The plumbing: pressures and flows of a boom out of its file, of a ring of hoses, and how a tip answers to another.

use core::f64::consts::PI;
use std::error::Error;

use sprayer::plumbing::{Liquid, Network, Outlet, Pipe, Supply};
use units::Quantity;

use crate::List;

pub(crate) fn put(list: &mut List) {
    for (name, supply) in [
        ("held pressure", "gauge_pressure = \"2.73 bar\""),
        ("held flow", "total_flow = \"8.37 L/min\""),
        (
            "pump",
            "pump = { pressure_at_no_flow = \"5.1 bar\", curve_point = \"41 L/min @ 1.9 bar\", bypass = \"13 L/min @ 3.3 bar\" }",
        ),
    ] {
        list.attempt(&format!("boom, {name}"), |list| boom(list, name, supply));
    }
    list.attempt("ring of hoses", ring);
}

/// Two sections of a boom, with a plugged tip, check valves and a slope, in all regimes of flow.
fn boom(list: &mut List, name: &str, supply: &str) -> Result<(), Box<dyn Error>> {
    let section = "[[section]]\nfeed_length = \"2.9 m\"\nfeed_bore = \"17 mm\"\nfeed_minor_loss = 41.7\nhose_bore = \"13 mm\"\n\
                   enters_between = [2, 3]\ntip_spacing = \"0.53 m\"\nbody_bore = \"7.7 mm\"\nbody_length = \"31 mm\"\n\
                   body_minor_loss = 6.3\ncheck_valve_opens_at = \"0.37 bar\"\nleft_height = \"-0.31 m\"\nright_height = \"0.47 m\"\n";
    let tips =
        ["\"1.61 L/min @ 3 bar\"", "\"plugged\"", "\"0.83 L/min @ 2.9 bar\"", "\"1.37 L/min @ 3 bar\""];
    let text = format!(
        "[liquid]\ndensity = \"1.13 kg/L\"\nviscosity = \"1.7 cSt\"\n[supply]\n{supply}\nhose_length = \"2.3 m\"\nhose_bore = \"23 mm\"\n\
         {section}tips = [{}]\n{section}roughness = \"0.07 mm\"\ntips = [{}]\n",
        tips.join(", "),
        [tips[3], tips[0], tips[2]].join(", "),
    );
    let flows = visit::boom::read(text.as_bytes())?.flows()?;
    list.quantity(format!("boom, {name}, in all"), flows.total);
    list.quantity(format!("boom, {name}, manifold"), flows.manifold);
    for (section, found) in flows.sections.iter().enumerate() {
        for (place, tip) in found.tips.iter().enumerate() {
            list.put(format!("boom, {name}, section {section}, tip {place}"), tip.flow.si());
            list.put(format!("boom, {name}, section {section}, pressure at tip {place}"), tip.pressure.si());
        }
        let lost = found.lost.map_or(f64::NAN, |lost| lost.feed.si());
        list.put(format!("boom, {name}, section {section}, lost in the feed"), lost);
    }
    Ok(())
}

/// Hoses that form a ring are eliminated in another order than a tree.
fn ring(list: &mut List) -> Result<(), Box<dyn Error>> {
    let pipe = |length: f64| Pipe { length, bore: 0.0131, roughness: 2.3e-6, minor_loss: length / PI };
    let (mut network, feed) = Network::fed(Liquid::default(), |at| Supply::HeldHead { at, head: 27.3 });
    let (mut before, mut tips) = (feed, Vec::new());
    for step in 1..=7_u32 {
        let along = f64::from(step) / 9.0;
        before = network.branch(before, pipe(along), along / 3.0);
        tips.push(network.outlet(before, Some(Outlet { coefficient: 4.7e-6 + along * 1e-6, opens_at: 3.1 })));
    }
    network.join(feed, before, pipe(1.7));
    let solved = network.solve()?;
    for (place, tip) in tips.iter().enumerate() {
        list.put(format!("ring of hoses, tip {place}"), solved.flow(*tip));
        list.put(format!("ring of hoses, tip {place} by tip 2"), solved.sensitivity(*tip, tips[2]));
    }
    Ok(())
}
