//! Readings, conversions and printing.

use units::{Area, Flow, Length, Pressure, Quantity, Speed, Time, Volume, VolumePerArea, tidy_digits};

use crate::List;

pub(crate) fn put(list: &mut List) {
    written(list);
    for step in 1..=20_u32 {
        let x = f64::from(step * 137) / 100.0;
        list.put(format!("{x} ft in m"), Length::feet(x).as_metres());
        list.put(format!("{x} cm in in"), Length::centimetres(x).as_inches());
        list.put(format!("{x} ac in ha"), Area::acres(x).as_hectares());
        list.put(format!("{x} fl oz in mL"), Volume::fluid_ounces(x).as_millilitres());
        list.put(format!("{x} mph in km/h"), Speed::miles_per_hour(x).as_kilometres_per_hour());
        list.put(format!("{x} psi in bar"), Pressure::psi(x).as_bar());
        list.put(format!("{x} gal/ac in L/ha"), VolumePerArea::gallons_per_acre(x).as_litres_per_hectare());
        list.put(format!("{x} thirds, tidied"), tidy_digits(x / 3.0));
        let rate = Flow::gallons_per_minute(x / 10.0) / (Speed::miles_per_hour(5.3) * Length::inches(20.0));
        list.put(format!("gal/ac of {x}/10 gal/min, 5.3 mph, 20 in"), rate.as_gallons_per_acre());
    }
}

/// What people write, read.
fn written(list: &mut List) {
    for text in ["16 ft 8 in", "0.1 mi", "62.5 m"] {
        list.try_put(format!("{text} in m"), Length::parse(text).map(Quantity::si));
    }
    for text in ["14.3 fl oz", "1 1/2 pt", "0.7 imp gal", "423 mL"] {
        list.try_put(format!("{text} in m3"), Volume::parse(text).map(Quantity::si));
    }
    for text in ["23.7 s", "1.35 min"] {
        list.try_put(format!("{text} in s"), Time::parse(text).map(Quantity::si));
    }
}
