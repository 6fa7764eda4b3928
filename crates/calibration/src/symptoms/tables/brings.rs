//! How often each cause brings each symptom.

use crate::symptoms::grade::{COMMON_PRACTICE, Grade};
use crate::symptoms::symptom::Symptom;
use crate::symptoms::trouble::Trouble;

/// How often a cause brings a symptom.
#[derive(Clone, Copy, Debug)]
pub struct Brings {
    /// The symptom.
    pub symptom: Symptom,
    /// The cause.
    pub trouble: Trouble,
    /// How often it is seen where this is the matter.
    pub how: Grade,
    /// Who says so.
    pub source: &'static str,
}

const fn row(symptom: Symptom, trouble: Trouble, how: Grade) -> Brings {
    Brings { symptom, trouble, how, source: COMMON_PRACTICE }
}

use Grade::{Always, Even, Often, Seldom, Sometimes};
use Symptom as S;
use Trouble as T;

/// Source: common practice, from memory; the grades are our assumption. What stands in no row comes next to never.
pub(super) const ROWS: &[Brings] = &[
    row(S::NoPressure, T::SuctionAir, Even),
    row(S::NoPressure, T::LowWater, Sometimes),
    row(S::NoPressure, T::SuctionStrainer, Often),
    row(S::NoPressure, T::SuctionHose, Even),
    row(S::NoPressure, T::TankVent, Sometimes),
    row(S::NoPressure, T::Agitation, Often),
    row(S::NoPressure, T::WornPump, Often),
    row(S::NoPressure, T::PumpValves, Even),
    row(S::NoPressure, T::SlowPump, Often),
    row(S::NoPressure, T::RegulatorOpen, Often),
    row(S::NoPressure, T::Controller, Sometimes),
    row(S::NoPressure, T::Gauge, Even),
    row(S::NoPressure, T::PressureStrainer, Sometimes),
    row(S::NoPressure, T::LargeTips, Often),
    row(S::NoPressure, T::Voltage, Often),
    row(S::NoPressure, T::PressureSwitch, Sometimes),
    row(S::NoPressure, T::HotMotor, Sometimes),
    row(S::NeedleJumps, T::SuctionAir, Often),
    row(S::NeedleJumps, T::LowWater, Often),
    row(S::NeedleJumps, T::SuctionStrainer, Sometimes),
    row(S::NeedleJumps, T::SuctionHose, Sometimes),
    row(S::NeedleJumps, T::TankVent, Seldom),
    row(S::NeedleJumps, T::WornPump, Seldom),
    row(S::NeedleJumps, T::PumpValves, Often),
    row(S::NeedleJumps, T::RegulatorOpen, Sometimes),
    row(S::NeedleJumps, T::Controller, Often),
    row(S::NeedleJumps, T::AirChamber, Always),
    row(S::NeedleJumps, T::Gauge, Sometimes),
    row(S::NeedleJumps, T::PressureSwitch, Often),
    row(S::Foam, T::SuctionAir, Often),
    row(S::Foam, T::LowWater, Often),
    row(S::Foam, T::Agitation, Sometimes),
    row(S::Foam, T::PumpValves, Seldom),
    row(S::Foam, T::Splashing, Often),
    row(S::Foam, T::Foaming, Always),
    row(S::SectionWeak, T::SectionValve, Often),
    row(S::SectionWeak, T::SectionStrainer, Always),
    row(S::SectionWeak, T::CheckValves, Seldom),
    row(S::Drips, T::SectionValve, Even),
    row(S::Drips, T::CheckValves, Always),
    row(S::Drips, T::BoomAir, Often),
    row(S::FallsWarm, T::SuctionAir, Seldom),
    row(S::FallsWarm, T::LowWater, Sometimes),
    row(S::FallsWarm, T::SuctionStrainer, Sometimes),
    row(S::FallsWarm, T::SuctionHose, Often),
    row(S::FallsWarm, T::TankVent, Often),
    row(S::FallsWarm, T::WornPump, Often),
    row(S::FallsWarm, T::PumpValves, Seldom),
    row(S::FallsWarm, T::SlowPump, Sometimes),
    row(S::FallsWarm, T::RegulatorOpen, Sometimes),
    row(S::FallsWarm, T::PressureStrainer, Sometimes),
    row(S::FallsWarm, T::Voltage, Even),
    row(S::FallsWarm, T::HotMotor, Often),
    row(S::FallsFast, T::SuctionAir, Sometimes),
    row(S::FallsFast, T::LowWater, Sometimes),
    row(S::FallsFast, T::SuctionStrainer, Often),
    row(S::FallsFast, T::SuctionHose, Always),
    row(S::FallsFast, T::TankVent, Even),
    row(S::FallsFast, T::PumpValves, Sometimes),
    row(S::TooHigh, T::RegulatorShut, Often),
    row(S::TooHigh, T::ReturnLine, Always),
    row(S::TooHigh, T::Controller, Sometimes),
    row(S::TooHigh, T::Gauge, Even),
    row(S::Knocks, T::SuctionAir, Sometimes),
    row(S::Knocks, T::LowWater, Sometimes),
    row(S::Knocks, T::SuctionStrainer, Sometimes),
    row(S::Knocks, T::SuctionHose, Sometimes),
    row(S::Knocks, T::PumpValves, Often),
    row(S::Knocks, T::AirChamber, Often),
    row(S::Knocks, T::PressureSwitch, Sometimes),
    row(S::WeakEngineOff, T::Voltage, Always),
    row(S::WeakEngineOff, T::HotMotor, Sometimes),
    row(S::WeakEngineOff, T::WornPump, Seldom),
    row(S::WeakEngineOff, T::SuctionStrainer, Seldom),
];
