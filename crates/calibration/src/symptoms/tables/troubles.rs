//! What may be the matter, how common it is and where it can be.

use crate::symptoms::grade::{COMMON_PRACTICE, Grade};
use crate::symptoms::pumping::Fits;
use crate::symptoms::trouble::{Trouble, TroubleRow};

const fn row(trouble: Trouble, common: Grade, fits: Fits) -> TroubleRow {
    TroubleRow { trouble, common, fits, source: COMMON_PRACTICE }
}

/// Source: common practice, from memory: dirt and air on the suction side first, then wear, then the rest.
pub(super) const ROWS: [TroubleRow; 27] = [
    row(Trouble::SuctionAir, Grade::Even, Fits::All),
    row(Trouble::LowWater, Grade::Sometimes, Fits::All),
    row(Trouble::SuctionStrainer, Grade::Often, Fits::All),
    row(Trouble::SuctionHose, Grade::Sometimes, Fits::All),
    row(Trouble::TankVent, Grade::Seldom, Fits::All),
    row(Trouble::Agitation, Grade::Sometimes, Fits::All),
    row(Trouble::WornPump, Grade::Even, Fits::All),
    row(Trouble::PumpValves, Grade::Sometimes, Fits::All),
    row(Trouble::SlowPump, Grade::Sometimes, Fits::Shaft),
    row(Trouble::RegulatorOpen, Grade::Sometimes, Fits::All),
    row(Trouble::RegulatorShut, Grade::Sometimes, Fits::All),
    row(Trouble::ReturnLine, Grade::Sometimes, Fits::All),
    row(Trouble::Controller, Grade::Sometimes, Fits::Controller),
    row(Trouble::AirChamber, Grade::Sometimes, Fits::AirChamber),
    row(Trouble::Gauge, Grade::Sometimes, Fits::All),
    row(Trouble::PressureStrainer, Grade::Sometimes, Fits::All),
    row(Trouble::LargeTips, Grade::Sometimes, Fits::All),
    row(Trouble::SectionValve, Grade::Sometimes, Fits::All),
    row(Trouble::SectionStrainer, Grade::Even, Fits::All),
    row(Trouble::CheckValves, Grade::Even, Fits::All),
    row(Trouble::BoomAir, Grade::Sometimes, Fits::All),
    row(Trouble::Splashing, Grade::Sometimes, Fits::All),
    row(Trouble::Foaming, Grade::Sometimes, Fits::All),
    row(Trouble::Voltage, Grade::Even, Fits::TwelveVolt),
    row(Trouble::PressureSwitch, Grade::Sometimes, Fits::TwelveVolt),
    row(Trouble::HotMotor, Grade::Sometimes, Fits::TwelveVolt),
    row(Trouble::Other, Grade::Seldom, Fits::All),
];
