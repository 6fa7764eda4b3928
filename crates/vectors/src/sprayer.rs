//! Tips and their flow, carriers heavier than water, the geometry of a fan.

use sprayer::{RatedFlow, density_factor, footprint, height_for_overlap};
use units::{Angle, Density, Flow, Length, Pressure, Quantity};

use crate::List;

pub(crate) fn put(list: &mut List) {
    for step in 1..=20_u32 {
        let x = f64::from(step * 37) / 10.0;
        let tip = RatedFlow::new(Flow::gallons_per_minute(0.3), Pressure::psi(40.0));
        let flow = tip.clone().and_then(|tip| tip.flow_at(Pressure::psi(x)));
        list.try_put(format!("0.3 gal/min @ 40 psi, at {x} psi"), flow.map(Quantity::si));
        let pressure = tip.and_then(|tip| tip.pressure_for(Flow::gallons_per_minute(x / 100.0)));
        list.try_put(format!("0.3 gal/min @ 40 psi, for {x}/100 gal/min"), pressure.map(Quantity::si));

        let density = Density::pounds_per_gallon(8.0 + x / 20.0);
        list.try_put(format!("carrier of 8 + {x}/20 lb/gal"), density_factor(density));

        let angle = Angle::degrees(60.0 + x);
        list.try_put(
            format!("fan of 60 + {x} degrees at 0.53 m"),
            footprint(angle, Length::metres(0.53)).map(Quantity::si),
        );
        let height = height_for_overlap(angle, Length::inches(20.0), 0.37);
        list.try_put(format!("height for an overlap, 60 + {x} degrees"), height.map(Quantity::si));
    }
}
