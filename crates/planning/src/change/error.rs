//! Why a change cannot be worked out, with what was given and what would do.

use sprayer::CarrierError;
use units::{Arg, Args, Coded, Kind, Length, Pressure, Speed, UnitSystem, VolumePerArea};

use crate::given::{arg, text};

/// Why a change cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ChangeError {
    /// A rate of nothing.
    #[error("a rate of {} cannot be; it must be more than 0", text(.rate, Kind::Rate))]
    NoRate {
        /// The rate as given.
        rate: VolumePerArea,
    },
    /// No speed. Time a drive.
    #[error("a speed of {} cannot be; it must be more than 0", text(.speed, Kind::Speed))]
    NoSpeed {
        /// The speed as given.
        speed: Speed,
    },
    /// No pressure. Read it while all tips spray.
    #[error("a pressure of {} cannot be; it must be more than 0", text(.pressure, Kind::Pressure))]
    NoPressure {
        /// The pressure as given.
        pressure: Pressure,
    },
    /// No width for a tip.
    #[error("a width of {} for a tip cannot be; it must be more than 0", text(.width, Kind::Width))]
    NoWidth {
        /// The width as given.
        width: Length,
    },
    /// A tip's range whose ends are the wrong way round.
    #[error("a tip's range of {} to {} is not one", text(.low, Kind::Pressure), text(.high, Kind::Pressure))]
    TipRange {
        /// The low end as given.
        low: Pressure,
        /// The high end as given.
        high: Pressure,
    },
    /// Speed read wrong by all of itself or more.
    #[error("a speed that is {} off cannot be; more than −100 % would do", Arg::Deviation(*.percent).text(UnitSystem::Us))]
    SpeedError {
        /// The error as given, in percent.
        percent: f64,
    },
    /// No carrier has this density.
    #[error("{0}")]
    Carrier(CarrierError),
}

impl Coded for ChangeError {
    fn code(&self) -> &'static str {
        match self {
            Self::NoRate { .. } => "change_no_rate",
            Self::NoSpeed { .. } => "change_no_speed",
            Self::NoPressure { .. } => "change_no_pressure",
            Self::NoWidth { .. } => "change_no_width",
            Self::TipRange { .. } => "change_tip_range",
            Self::SpeedError { .. } => "change_speed_error",
            Self::Carrier(error) => error.code(),
        }
    }

    fn args(&self) -> Args {
        let args = Args::new();
        match self {
            Self::NoRate { rate } => args.with("rate", arg(rate, Kind::Rate)),
            Self::NoSpeed { speed } => args.with("speed", arg(speed, Kind::Speed)),
            Self::NoPressure { pressure } => args.with("pressure", arg(pressure, Kind::Pressure)),
            Self::NoWidth { width } => args.with("width", arg(width, Kind::Width)),
            Self::TipRange { low, high } => {
                args.with("low", arg(low, Kind::Pressure)).with("high", arg(high, Kind::Pressure))
            }
            Self::SpeedError { percent } => args.with("percent", Arg::Deviation(*percent)),
            Self::Carrier(error) => error.args(),
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NoRate { .. } => "give a rate as 20 gal/ac or 190 L/ha",
            Self::NoSpeed { .. } => "give the speed of a timed drive, as 4 mph or 6.5 km/h",
            Self::NoPressure { .. } => "read the gauge while all tips spray, as 40 psi or 2.8 bar",
            Self::NoWidth { .. } => "give the distance from tip to tip, as 20 in or 50 cm",
            Self::TipRange { .. } => "give the smaller pressure first, as the tip's table has it",
            Self::SpeedError { .. } => "10 % slow is written as -10",
            Self::Carrier(error) => return error.hint(),
        };
        Some(hint.to_string())
    }
}
