//! What a rate becomes at another speed, for each way of holding the pressure.

use sprayer::PressureControl;
use units::{Amount, Arg, Finding, Kind, Ranged, Speed, VolumePerArea, Weight, Working};

use super::error::ChangeError;
use super::sums::{rate_given, speed_given};

/// What a rate becomes at another speed.
#[derive(Clone, Debug, PartialEq)]
pub struct RateAtSpeed {
    /// The rate then, with its 95 % range.
    pub rate: Ranged<VolumePerArea>,
    /// What holds the rate, where something does, and what to look at then.
    pub finding: Option<Finding>,
    /// How it was reached.
    pub working: Working,
}

/// Returns what a measured rate becomes at another speed.
///
/// *Units*: any.
///
/// *Assumptions*: at one pressure the flow stays, so the rate goes with one over the speed. A ground-driven pump and a
/// rate controller hold the rate, as long as the pump or the tips' range of pressures lasts; whether it lasts is not
/// looked at here. Both speeds are taken as they stand.
///
/// *Errors*: a rate or speed of nothing, below nothing or not a number.
///
/// *Source*: NC State Extension, The Calibration of Turfgrass Boom Sprayers and Spreaders (constant pressure); Iowa
/// State Univ. Extension, Integrated Crop Management News, item 844 (a controller holds the rate through the pressure).
///
/// *Example*: 20 gal/ac at 3 mph is 10 gal/ac at 6 mph and the same pressure.
pub fn rate_at_speed(
    rate: &Ranged<VolumePerArea>,
    measured_at: Speed,
    new: Speed,
    control: PressureControl,
) -> Result<RateAtSpeed, ChangeError> {
    rate_given(rate.value)?;
    speed_given(measured_at)?;
    speed_given(new)?;
    let (rate_then, formula, source) = match control {
        PressureControl::Constant => (
            rate.map(|rate| rate * measured_at.ratio_to(new)),
            "new rate = rate × speed ÷ new speed",
            "NC State Extension, The Calibration of Turfgrass Boom Sprayers and Spreaders",
        ),
        PressureControl::GroundDriven => (
            *rate,
            "new rate = rate: the pump's flow goes with the speed",
            "common practice with ground-driven pumps",
        ),
        PressureControl::RateController => (
            *rate,
            "new rate = rate: the controller changes the pressure to hold it",
            "Iowa State Univ. Extension, Integrated Crop Management News, item 844",
        ),
    };
    let working = Working::new("rate_at_speed", formula, source)
        .figure("rate", Arg::Amount(Amount::ranged(rate, Kind::Rate)))
        .figure("speed", Arg::Amount(Amount::new(measured_at, Kind::Speed)))
        .figure("new speed", Arg::Amount(Amount::new(new, Kind::Speed)))
        .figure("what holds the pressure", Arg::Word { code: control.word(), english: in_english(control) })
        .result(Arg::Amount(Amount::ranged(&rate_then, Kind::Rate)));
    Ok(RateAtSpeed { rate: rate_then, finding: held(control, new), working })
}

/// What holds the pressure, in the word of a sentence.
const fn in_english(control: PressureControl) -> &'static str {
    match control {
        PressureControl::Constant => "constant pressure",
        PressureControl::GroundDriven => "ground-driven pump",
        PressureControl::RateController => "rate controller",
    }
}

fn held(control: PressureControl, new: Speed) -> Option<Finding> {
    let finding = match control {
        PressureControl::Constant => return None,
        PressureControl::GroundDriven => Finding::new(
            Weight::Note,
            "rate_held_by_pump",
            "The ground-driven pump keeps the rate at {speed}; the pressure changes with the speed.",
        ),
        PressureControl::RateController => Finding::new(
            Weight::Note,
            "rate_held_by_controller",
            "The controller keeps the rate at {speed} by changing the pressure, as far as the tips allow.",
        ),
    };
    Some(
        finding
            .with("speed", Arg::Amount(Amount::new(new, Kind::Speed)))
            .to_do("Look at the gauge at that speed: the pressure must be one the tips are made for."),
    )
}
