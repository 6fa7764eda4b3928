//! What hits a rate, for what holds the pressure on this sprayer; where that is not known, it is asked.

use sprayer::{PressureControl, RatedFlow, WATER_DENSITY, density_factor};
use units::{Density, Finding, Flow, Length, Pressure, Quantity, Speed, VolumePerArea};

use super::error::ChangeError;
use super::findings;
use super::sums::{pressure_for_rate, pressure_given, rate_given, speed_for_rate, speed_given};

/// Up to this share of the flow is a small correction, for pressure to make. Our own figure: Iowa State Univ. and
/// Oklahoma State Univ. Extension say "small" and give none. (10 % of flow is 21 % of pressure.)
pub const SMALL_CORRECTION: f64 = 0.10;

/// The pressures a tip is meant for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TipRange {
    low: Pressure,
    high: Pressure,
    source: &'static str,
}

impl TipRange {
    /// 15 to 60 psi, the usual range of plain flat fans.
    ///
    /// *Source*: common practice, from memory; a setting, to be replaced by the range in the tip's own table.
    #[must_use]
    pub const fn flat_fan() -> Self {
        Self {
            low: Pressure::psi(15.0),
            high: Pressure::psi(60.0),
            source: "common practice for plain flat fans, from memory; the tip's own table decides",
        }
    }

    /// The range from a tip's table.
    ///
    /// *Errors*: a low end of nothing, or not below the high end.
    pub fn from_table(low: Pressure, high: Pressure) -> Result<Self, ChangeError> {
        if low.is_positive() && high.is_positive() && low < high {
            Ok(Self { low, high, source: "the tip's table, as given" })
        } else {
            Err(ChangeError::TipRange { low, high })
        }
    }

    /// The smallest pressure.
    #[must_use]
    pub const fn low(&self) -> Pressure {
        self.low
    }

    /// The largest pressure.
    #[must_use]
    pub const fn high(&self) -> Pressure {
        self.high
    }

    /// Who says so.
    #[must_use]
    pub const fn source(&self) -> &'static str {
        self.source
    }

    /// Whether a pressure lies in it; exactly on an end is in it.
    pub(super) fn holds(&self, pressure: Pressure) -> bool {
        // A billionth of slack, our own, for the last bits of binary arithmetic.
        pressure >= self.low * (1.0 - 1e-9) && pressure <= self.high * (1.0 + 1e-9)
    }
}

/// The sprayer as it was measured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Setup {
    /// What it puts out.
    pub rate: VolumePerArea,
    /// How fast it was driven.
    pub speed: Option<Speed>,
    /// The pressure at the tips.
    pub pressure: Option<Pressure>,
    /// What holds the pressure; `None` where nobody has said, and then it is asked.
    pub control: Option<PressureControl>,
    /// The width one tip covers: the spacing, for broadcast.
    pub tip_width: Option<Length>,
    /// The liquid that will be sprayed.
    pub carrier: Density,
    /// The pressures the tips are meant for.
    pub tip_range: TipRange,
}

impl Setup {
    /// A sprayer of which only the rate is known, with water and plain flat fans.
    #[must_use]
    pub const fn new(rate: VolumePerArea) -> Self {
        Self {
            rate,
            speed: None,
            pressure: None,
            control: None,
            tip_width: None,
            carrier: WATER_DENSITY,
            tip_range: TipRange::flat_fan(),
        }
    }
}

/// What a change of speed does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SpeedChange {
    /// This speed hits the rate at the same pressure.
    Drive(Speed),
    /// It hits the rate if the pressure is held; with a ground-driven pump or a rate controller it does nothing.
    DriveIfConstant(Speed),
    /// The pump or the controller goes with the speed, so it does nothing.
    NoEffect,
    /// The speed was not given.
    Unknown,
}

/// The flow a tip must give.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TipNeeded {
    /// Of the liquid that is sprayed.
    pub flow: Flow,
    /// Of water: what to look for in a tip's table.
    pub water_flow: Flow,
    /// At this pressure, where it is known; else at the pressure one means to run.
    pub pressure: Option<Pressure>,
}

/// What to change to hit a rate.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// Speed.
    pub speed: SpeedChange,
    /// The pressure that goes with the wanted rate at the same speed, where the pressure now is known.
    pub pressure: Option<Pressure>,
    /// The tip for the wanted rate at the same speed, where speed and width are known.
    pub tip: Option<TipNeeded>,
    /// What is worth telling.
    pub findings: Vec<Finding>,
}

/// Returns what hits a wanted rate: another speed, another pressure, or another tip.
///
/// *Units*: any.
///
/// *Assumptions*: one change at a time, all else as measured. At constant pressure the rate goes with 1 ÷ speed and with
/// the square root of pressure; a ground-driven pump or a rate controller keeps the rate whatever the speed, so there
/// the speed is no remedy. The tip's flow as water is the liquid's times √(density ÷ density of water).
///
/// *Errors*: a rate, speed, pressure or width of nothing; a density no carrier has.
///
/// *Source*: NC State Extension (rate and speed); Iowa State Univ. Extension, ICM News item 844 (pressure); Univ. of
/// Nebraska-Lincoln CropWatch, 2016 (density).
///
/// *Example*: 18 gal/ac at 5 mph and 40 psi, 15 wanted: 6 mph, or 27.8 psi; at 5 mph on 20 in a tip of 0.253 gal/min.
pub fn change_to_hit(setup: &Setup, wanted: VolumePerArea) -> Result<Change, ChangeError> {
    rate_given(setup.rate)?;
    rate_given(wanted)?;
    setup.speed.map_or(Ok(()), speed_given)?;
    setup.pressure.map_or(Ok(()), pressure_given)?;
    let pressure =
        setup.pressure.map(|pressure| pressure_for_rate(pressure, setup.rate, wanted)).transpose()?;
    let drive = setup.speed.map(|speed| speed_for_rate(speed, setup.rate, wanted)).transpose()?;
    let speed = match (setup.control, drive) {
        (Some(PressureControl::GroundDriven | PressureControl::RateController), _) => SpeedChange::NoEffect,
        (_, None) => SpeedChange::Unknown,
        (Some(PressureControl::Constant), Some(drive)) => SpeedChange::Drive(drive),
        (None, Some(drive)) => SpeedChange::DriveIfConstant(drive),
    };
    let tip = tip_needed(setup, wanted)?;
    let mut change = Change { speed, pressure, tip, findings: Vec::new() };
    change.findings = findings::about_change(&change, setup, wanted);
    Ok(change)
}

fn tip_needed(setup: &Setup, wanted: VolumePerArea) -> Result<Option<TipNeeded>, ChangeError> {
    let factor = density_factor(setup.carrier).map_err(ChangeError::Carrier)?;
    let (Some(speed), Some(width)) = (setup.speed, setup.tip_width) else { return Ok(None) };
    if !width.is_positive() {
        return Err(ChangeError::NoWidth { width });
    }
    let flow = wanted * (speed * width);
    Ok(Some(TipNeeded { flow, water_flow: flow * factor, pressure: setup.pressure }))
}

impl TipNeeded {
    /// The needed water flow as a rating, to compare with tips' ratings; `None` where the pressure is not known.
    #[must_use]
    pub fn as_rated(&self) -> Option<RatedFlow> {
        RatedFlow::new(self.water_flow, self.pressure?).ok()
    }
}
