//! Why a change cannot be worked out, with what was given and what would do.

use sprayer::CarrierError;
use units::{Amount, Arg, Args, Coded, Kind, Length, Pressure, Speed, VolumePerArea};

/// Why a change cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ChangeError {
    /// A rate of nothing.
    #[error("a rate of {} gal/ac cannot be; it must be more than 0", .rate.as_gallons_per_acre())]
    NoRate {
        /// The rate as given.
        rate: VolumePerArea,
    },
    /// No speed. Time a drive.
    #[error("a speed of {} mph cannot be; it must be more than 0", .speed.as_miles_per_hour())]
    NoSpeed {
        /// The speed as given.
        speed: Speed,
    },
    /// No pressure. Read it while all tips spray.
    #[error("a pressure of {} psi cannot be; it must be more than 0", .pressure.as_psi())]
    NoPressure {
        /// The pressure as given.
        pressure: Pressure,
    },
    /// No width for a tip.
    #[error("a width of {} in for a tip cannot be; it must be more than 0", .width.as_inches())]
    NoWidth {
        /// The width as given.
        width: Length,
    },
    /// A tip's range whose ends are the wrong way round.
    #[error("a tip's range of {} to {} psi is not one", .low.as_psi(), .high.as_psi())]
    TipRange {
        /// The low end as given.
        low: Pressure,
        /// The high end as given.
        high: Pressure,
    },
    /// Speed read wrong by all of itself or more.
    #[error("a speed that is {percent} % off cannot be; more than -100 % would do")]
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
        let pressure = |pressure: Pressure| Arg::Amount(Amount::new(pressure, Kind::Pressure));
        match self {
            Self::NoRate { rate } => Args::new().with("rate", Arg::Amount(Amount::new(*rate, Kind::Rate))),
            Self::NoSpeed { speed } => {
                Args::new().with("speed", Arg::Amount(Amount::new(*speed, Kind::Speed)))
            }
            Self::NoPressure { pressure: given } => Args::new().with("pressure", pressure(*given)),
            Self::NoWidth { width } => {
                Args::new().with("width", Arg::Amount(Amount::new(*width, Kind::Width)))
            }
            Self::TipRange { low, high } => {
                Args::new().with("low", pressure(*low)).with("high", pressure(*high))
            }
            Self::SpeedError { percent } => Args::new().with("percent", Arg::Deviation(*percent)),
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
