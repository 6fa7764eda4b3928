//! The spray pattern: what grooves get under booms of every shape, with tips that lean, hang low and are worn.

use sprayer::pattern::{
    Fan, Grooves, MeasuredFan, PATTERN_LIMIT, Shape, SprayBoom, SprayTip, heights_within, pattern,
};
use units::{Angle, Length, Quantity};

use crate::List;

pub(crate) fn put(list: &mut List) {
    list.attempt("pattern", boom);
    list.attempt("pattern, heights", |list| {
        let (angle, spacing) = (Angle::degrees(107.3), Length::metres(0.513));
        for range in heights_within(angle, spacing, &Fan::tapered(), &PATTERN_LIMIT)? {
            list.quantity("pattern, heights from", range.from);
            list.quantity("pattern, heights to", range.to);
        }
        Ok(())
    });
}

fn boom(list: &mut List) -> Result<(), Box<dyn std::error::Error>> {
    let tip = |number: u32| {
        let off = f64::from(number * 7 % 5) - 2.0;
        let straight = SprayTip::new(
            Length::metres(0.513 * f64::from(number) + 0.0113 * off),
            Length::metres(0.531 + 0.0171 * off),
            Angle::degrees(103.7 + 1.3 * off),
        );
        SprayTip {
            flow: 1.0 - 0.037 * off,
            tilt: Angle::degrees(3.1 * off),
            twist: Angle::degrees(5.7),
            offset: Length::metres(0.0037 * off),
            ..straight
        }
    };
    let boom = SprayBoom::new((0..9).map(tip).collect(), Length::metres(0.513))?;
    let caught = [0.3, 1.7, 4.1, 6.3, 7.9, 8.3, 7.7, 5.9, 3.7, 1.3, 0.7];
    let measured =
        MeasuredFan::new(&caught, Length::metres(0.131), Length::metres(0.503), Some(Length::metres(0.713)))?;
    let fans: Vec<Fan> = Shape::ALL.into_iter().map(Fan::Assumed).chain([Fan::Measured(measured)]).collect();
    let grooves = Grooves { width: Length::metres(0.0973), ..Grooves::default() };
    let found = pattern(&boom, &fans, &grooves)?;
    for fan in &found.fans {
        list.put(format!("pattern, {}, spread", fan.fan), fan.spread);
        list.put(format!("pattern, {}, mean", fan.fan), fan.mean);
        list.put(format!("pattern, {}, thinnest", fan.fan), fan.lowest.dose);
        list.put(format!("pattern, {}, thickest", fan.fan), fan.highest.dose);
        for (number, dose) in fan.doses.iter().enumerate().step_by(5) {
            list.put(format!("pattern, {}, groove {number}", fan.fan), *dose);
        }
    }
    list.put("pattern, first edge", found.grooves.first().map_or(f64::NAN, |groove| groove.from.si()));
    Ok(())
}
