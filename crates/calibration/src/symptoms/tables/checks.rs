//! The checks, and how often each is answered with yes by what is the matter.

use crate::symptoms::check::Before::{EngineOff, Gloves, PressureOff, Running, TankValveShut};
use crate::symptoms::check::{Before, Check, CheckRow, Costs, Risk};
use crate::symptoms::grade::Grade::{Always, Even, Never, Often, Seldom, Sometimes};
use crate::symptoms::grade::{COMMON_PRACTICE, Grade};
use crate::symptoms::limits;
use crate::symptoms::pumping::Fits;
use crate::symptoms::symptom::Symptom;
use crate::symptoms::trouble::Trouble as T;

const fn row(risk: Risk, check: Check, before: &'static [Before], minutes: f64) -> CheckRow {
    CheckRow {
        check,
        fits: Fits::All,
        only_with: None,
        before,
        minutes,
        costs: Costs::Nothing,
        risk,
        yes: &[],
        otherwise: Seldom,
        source: COMMON_PRACTICE,
    }
}

impl CheckRow {
    const fn on(mut self, fits: Fits) -> Self {
        self.fits = fits;
        self
    }

    const fn only_with(mut self, symptom: Symptom) -> Self {
        self.only_with = Some(symptom);
        self
    }

    const fn with_a_tool(mut self) -> Self {
        self.costs = Costs::SmallPart;
        self
    }

    const fn yes(mut self, yes: &'static [(T, Grade)], otherwise: Grade) -> Self {
        self.yes = yes;
        self.otherwise = otherwise;
        self
    }

    const fn by(mut self, source: &'static str) -> Self {
        self.source = source;
        self
    }
}

/// Nothing runs and nothing is touched.
const STOPPED: &[Before] = &[EngineOff];
/// It runs; only the controls are touched.
const RUNS: &[Before] = &[Running];
/// Hands on what stands still and holds no pressure.
const LET_OFF: &[Before] = &[EngineOff, PressureOff, Gloves];
/// A line between tank and boom is opened.
const OPENED: &[Before] = &[EngineOff, PressureOff, TankValveShut, Gloves];

use Risk::{AtControls, HandsOn, Looking, Opening};

/// Source: common practice, from memory, but where a row says otherwise; grades and minutes are our assumption.
pub(super) const ROWS: [CheckRow; 32] = [
    row(Looking, Check::TankLow, STOPPED, 1.0).yes(&[(T::LowWater, Always)], Seldom),
    row(Looking, Check::LineAboveWater, STOPPED, 1.0)
        .only_with(Symptom::Foam)
        .yes(&[(T::Splashing, Always), (T::LowWater, Often)], Sometimes),
    row(Looking, Check::NotWater, STOPPED, 1.0)
        .only_with(Symptom::Foam)
        .yes(&[(T::Foaming, Always)], Sometimes),
    row(Looking, Check::MilkyWater, RUNS, 3.0).yes(
        &[(T::SuctionAir, Often), (T::LowWater, Often), (T::Splashing, Even), (T::Agitation, Sometimes)],
        Seldom,
    ),
    row(Looking, Check::ShaftSlow, RUNS, 1.0).on(Fits::Shaft).yes(&[(T::SlowPump, Always)], Seldom),
    row(AtControls, Check::AgitationShut, RUNS, 2.0).yes(
        &[
            (T::Agitation, Always),
            (T::WornPump, Often),
            (T::SlowPump, Often),
            (T::LargeTips, Even),
            (T::PumpValves, Even),
            (T::Splashing, Even),
            (T::Voltage, Sometimes),
            (T::HotMotor, Sometimes),
            (T::RegulatorOpen, Sometimes),
            (T::SuctionStrainer, Sometimes),
            (T::SuctionHose, Sometimes),
            (T::TankVent, Sometimes),
        ],
        Seldom,
    ),
    row(AtControls, Check::ControllerManual, RUNS, 2.0)
        .on(Fits::Controller)
        .yes(&[(T::Controller, Always)], Seldom),
    row(AtControls, Check::TurnedFaster, RUNS, 2.0).on(Fits::Shaft).yes(
        &[
            (T::SuctionHose, Always),
            (T::SuctionStrainer, Often),
            (T::TankVent, Often),
            (T::SuctionAir, Even),
            (T::LowWater, Even),
            (T::Gauge, Even),
            (T::PumpValves, Sometimes),
            (T::RegulatorOpen, Sometimes),
            (T::Controller, Sometimes),
            (T::Agitation, Never),
            (T::SlowPump, Never),
            (T::LargeTips, Never),
        ],
        Seldom,
    ),
    row(Looking, Check::HoseFlat, RUNS, 1.0)
        .yes(&[(T::SuctionHose, Often), (T::SuctionStrainer, Sometimes), (T::TankVent, Seldom)], Never),
    row(AtControls, Check::SectionsShut, RUNS, 1.0).yes(
        &[
            (T::LargeTips, Always),
            (T::Agitation, Often),
            (T::WornPump, Often),
            (T::SlowPump, Often),
            (T::Voltage, Often),
            (T::SuctionAir, Sometimes),
            (T::LowWater, Sometimes),
            (T::SuctionStrainer, Sometimes),
            (T::SuctionHose, Sometimes),
            (T::TankVent, Sometimes),
            (T::RegulatorOpen, Seldom),
            (T::Gauge, Seldom),
        ],
        Even,
    ),
    row(AtControls, Check::ReturnFlow, &[Running, Gloves], 2.0).yes(
        &[
            (T::RegulatorOpen, Always),
            (T::Controller, Often),
            (T::Gauge, Even),
            (T::AirChamber, Even),
            (T::PressureStrainer, Often),
            (T::ReturnLine, Never),
            (T::RegulatorShut, Never),
            (T::LargeTips, Never),
        ],
        Seldom,
    ),
    row(Looking, Check::InTime, RUNS, 1.0).by(limits::ORDER).yes(
        &[
            (T::AirChamber, Always),
            (T::PumpValves, Often),
            (T::SuctionAir, Sometimes),
            (T::SuctionStrainer, Sometimes),
            (T::SuctionHose, Sometimes),
            (T::WornPump, Sometimes),
            (T::Gauge, Sometimes),
            (T::RegulatorOpen, Sometimes),
            (T::Controller, Never),
            (T::PressureSwitch, Never),
        ],
        Seldom,
    ),
    row(AtControls, Check::EngineOn, RUNS, 1.0)
        .on(Fits::TwelveVolt)
        .yes(&[(T::Voltage, Always), (T::HotMotor, Sometimes)], Seldom),
    row(Looking, Check::StartsAndStops, RUNS, 1.0)
        .on(Fits::TwelveVolt)
        .yes(&[(T::PressureSwitch, Always), (T::HotMotor, Sometimes)], Seldom),
    row(Looking, Check::SingleTipsDrip, RUNS, 2.0)
        .only_with(Symptom::Drips)
        .by(limits::ORDER)
        .yes(&[(T::CheckValves, Always), (T::BoomAir, Sometimes), (T::SectionValve, Seldom)], Even),
    row(Looking, Check::DripStops, RUNS, 2.0)
        .only_with(Symptom::Drips)
        .yes(&[(T::BoomAir, Always), (T::CheckValves, Seldom), (T::SectionValve, Seldom)], Even),
    row(AtControls, Check::TipsOverNew, &[Running, Gloves], 8.0)
        .yes(&[(T::LargeTips, Always), (T::Gauge, Even)], Seldom),
    row(Looking, Check::NotToZero, STOPPED, 1.0).yes(&[(T::Gauge, Often)], Seldom),
    row(HandsOn, Check::LidLoose, &[EngineOff, Gloves], 3.0).yes(&[(T::TankVent, Always)], Seldom),
    row(Looking, Check::MotorCooled, STOPPED, 20.0)
        .on(Fits::TwelveVolt)
        .yes(&[(T::HotMotor, Always), (T::SuctionHose, Sometimes), (T::Voltage, Sometimes)], Seldom),
    row(Looking, Check::PumpWeeps, STOPPED, 2.0)
        .on(Fits::Shaft)
        .by(limits::ORDER)
        .yes(&[(T::PumpValves, Even), (T::WornPump, Even)], Never),
    row(HandsOn, Check::ReturnKinked, LET_OFF, 2.0).yes(&[(T::ReturnLine, Always)], Never),
    row(AtControls, Check::ValveSticks, RUNS, 2.0).yes(&[(T::SectionValve, Always)], Seldom),
    row(HandsOn, Check::VoltsLow, RUNS, 5.0)
        .on(Fits::TwelveVolt)
        .with_a_tool()
        .yes(&[(T::Voltage, Always), (T::HotMotor, Sometimes)], Seldom),
    row(HandsOn, Check::ChamberCharge, LET_OFF, 5.0)
        .on(Fits::AirChamber)
        .with_a_tool()
        .by(limits::ORDER)
        .yes(&[(T::AirChamber, Always)], Sometimes),
    row(Opening, Check::SuctionStrainerDirty, OPENED, 6.0).yes(&[(T::SuctionStrainer, Always)], Seldom),
    row(Opening, Check::SuctionTightened, OPENED, 10.0).yes(&[(T::SuctionAir, Always)], Seldom),
    row(Opening, Check::SectionStrainerDirty, OPENED, 6.0).yes(&[(T::SectionStrainer, Always)], Seldom),
    row(Opening, Check::CheckValveSwapped, LET_OFF, 5.0)
        .only_with(Symptom::Drips)
        .yes(&[(T::CheckValves, Always)], Seldom),
    row(Opening, Check::PressureStrainerDirty, OPENED, 6.0).yes(&[(T::PressureStrainer, Always)], Seldom),
    row(Opening, Check::SecondGauge, LET_OFF, 10.0)
        .with_a_tool()
        .by(limits::ORDER)
        .yes(&[(T::Gauge, Always), (T::PressureStrainer, Sometimes)], Seldom),
    row(Opening, Check::PumpFlowLow, OPENED, 20.0).yes(
        &[
            (T::WornPump, Always),
            (T::PumpValves, Often),
            (T::SlowPump, Often),
            (T::SuctionStrainer, Often),
            (T::SuctionHose, Often),
            (T::Voltage, Often),
            (T::SuctionAir, Even),
            (T::LowWater, Even),
            (T::TankVent, Even),
            (T::HotMotor, Even),
            (T::Agitation, Never),
            (T::LargeTips, Never),
            (T::Gauge, Never),
            (T::Controller, Never),
        ],
        Seldom,
    ),
];
