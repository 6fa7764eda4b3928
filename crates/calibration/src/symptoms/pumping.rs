//! What drives the pump and holds the pressure: some causes and checks belong to one kind alone.

use super::named::named;

named! {
    /// What drives the pump.
    Drive {
        /// A shaft: PTO, engine, belt or hydraulic motor.
        Shaft = "shaft",
        /// A 12 V motor.
        TwelveVolt = "12_volt",
    }
}

named! {
    /// What holds the pressure.
    Control {
        /// A regulator set by hand.
        ByHand = "by_hand",
        /// A rate controller.
        Controller = "controller",
    }
}

named! {
    /// Whether the pump has an air chamber.
    AirChamber {
        /// It has one.
        Fitted = "yes",
        /// It has none.
        Without = "no",
    }
}

/// What is known of the pump; what nobody said rules nothing out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Pumping {
    /// What drives it.
    pub drive: Option<Drive>,
    /// What holds the pressure.
    pub control: Option<Control>,
    /// Whether it has an air chamber.
    pub air_chamber: Option<AirChamber>,
}

/// On which sprayers something can be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fits {
    /// On all.
    All,
    /// Where a shaft drives the pump.
    Shaft,
    /// Where 12 V drive it.
    TwelveVolt,
    /// Where a regulator is set by hand.
    ByHand,
    /// Where a controller holds the rate.
    Controller,
    /// Where the pump has an air chamber.
    AirChamber,
}

impl Fits {
    /// Whether it can be on a sprayer, as far as is known.
    #[must_use]
    pub fn on(self, pumping: &Pumping) -> bool {
        let not = |ruled_out: bool| !ruled_out;
        match self {
            Self::All => true,
            Self::Shaft => not(pumping.drive == Some(Drive::TwelveVolt)),
            Self::TwelveVolt => not(pumping.drive == Some(Drive::Shaft)),
            Self::ByHand => not(pumping.control == Some(Control::Controller)),
            Self::Controller => not(pumping.control == Some(Control::ByHand)),
            // A 12 V pump has none; its pressure switch does the work.
            Self::AirChamber => {
                not(pumping.air_chamber == Some(AirChamber::Without)
                    || pumping.drive == Some(Drive::TwelveVolt))
            }
        }
    }
}
