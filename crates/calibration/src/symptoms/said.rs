//! What each thing is called, and what is done, by its code alone: the sentences are many and stand in the catalogue, in
//! English too, so that the app need not carry them twice.

use units::{Amount, Arg, Kind, Phrase, Pressure};

use super::check::{Before, Check};
use super::limits;
use super::symptom::Symptom;
use super::trouble::Trouble;

fn percent(share: f64) -> Arg {
    Arg::Percent(share * 100.0)
}

fn seconds() -> Arg {
    Arg::Number(limits::SHUT_OFF_SECONDS)
}

fn minutes() -> Arg {
    Arg::Number(limits::STABILITY_MINUTES)
}

fn volts() -> Arg {
    Arg::Number(limits::PUMP_VOLTS)
}

fn charge(share: f64) -> Arg {
    percent(share)
}

/// How far the needle may swing; at the lowest pressures where it is not known what is sprayed at.
fn swing(working: Option<Pressure>) -> Arg {
    Arg::Amount(Amount::new(limits::pulsation(working.unwrap_or(Pressure::ZERO)).major, Kind::Pressure))
}

impl Symptom {
    /// What is seen.
    #[must_use]
    pub fn said(self) -> Phrase {
        match self {
            Self::NoPressure => Phrase::new("symptom_no_pressure", "symptom_no_pressure"),
            Self::NeedleJumps => Phrase::new("symptom_needle_jumps", "symptom_needle_jumps"),
            Self::Foam => Phrase::new("symptom_foam", "symptom_foam"),
            Self::SectionWeak => Phrase::new("symptom_section_weak", "symptom_section_weak"),
            Self::Drips => Phrase::new("symptom_drips", "symptom_drips").with("seconds", seconds()),
            Self::FallsWarm => Phrase::new("symptom_falls_warm", "symptom_falls_warm")
                .with("percent", percent(limits::STABILITY))
                .with("minutes", minutes()),
            Self::FallsFast => Phrase::new("symptom_falls_fast", "symptom_falls_fast"),
            Self::TooHigh => Phrase::new("symptom_too_high", "symptom_too_high"),
            Self::Knocks => Phrase::new("symptom_knocks", "symptom_knocks"),
            Self::WeakEngineOff => Phrase::new("symptom_weak_engine_off", "symptom_weak_engine_off"),
        }
    }
}

impl Trouble {
    /// What is the matter.
    #[must_use]
    pub fn said(self) -> Phrase {
        match self {
            Self::SuctionAir => Phrase::new("trouble_suction_air", "trouble_suction_air"),
            Self::LowWater => Phrase::new("trouble_low_water", "trouble_low_water"),
            Self::SuctionStrainer => Phrase::new("trouble_suction_strainer", "trouble_suction_strainer"),
            Self::SuctionHose => Phrase::new("trouble_suction_hose", "trouble_suction_hose"),
            Self::TankVent => Phrase::new("trouble_tank_vent", "trouble_tank_vent"),
            Self::Agitation => Phrase::new("trouble_agitation", "trouble_agitation"),
            Self::WornPump => Phrase::new("trouble_worn_pump", "trouble_worn_pump"),
            Self::PumpValves => Phrase::new("trouble_pump_valves", "trouble_pump_valves"),
            Self::SlowPump => Phrase::new("trouble_slow_pump", "trouble_slow_pump"),
            Self::RegulatorOpen => Phrase::new("trouble_regulator_open", "trouble_regulator_open"),
            Self::RegulatorShut => Phrase::new("trouble_regulator_shut", "trouble_regulator_shut"),
            Self::ReturnLine => Phrase::new("trouble_return_line", "trouble_return_line"),
            Self::Controller => Phrase::new("trouble_controller", "trouble_controller"),
            Self::AirChamber => Phrase::new("trouble_air_chamber", "trouble_air_chamber"),
            Self::Gauge => Phrase::new("trouble_gauge", "trouble_gauge"),
            Self::PressureStrainer => Phrase::new("trouble_pressure_strainer", "trouble_pressure_strainer"),
            Self::LargeTips => Phrase::new("trouble_large_tips", "trouble_large_tips"),
            Self::SectionValve => Phrase::new("trouble_section_valve", "trouble_section_valve"),
            Self::SectionStrainer => Phrase::new("trouble_section_strainer", "trouble_section_strainer"),
            Self::CheckValves => Phrase::new("trouble_check_valves", "trouble_check_valves"),
            Self::BoomAir => Phrase::new("trouble_boom_air", "trouble_boom_air"),
            Self::Splashing => Phrase::new("trouble_splashing", "trouble_splashing"),
            Self::Foaming => Phrase::new("trouble_foaming", "trouble_foaming"),
            Self::Voltage => Phrase::new("trouble_voltage", "trouble_voltage"),
            Self::PressureSwitch => Phrase::new("trouble_pressure_switch", "trouble_pressure_switch"),
            Self::HotMotor => Phrase::new("trouble_hot_motor", "trouble_hot_motor"),
            Self::Other => Phrase::new("trouble_other", "trouble_other"),
        }
    }
}

impl Trouble {
    /// What puts it right.
    #[must_use]
    pub fn remedy(self) -> Phrase {
        match self {
            Self::SuctionAir => Phrase::new("remedy_suction_air", "remedy_suction_air"),
            Self::LowWater => Phrase::new("remedy_low_water", "remedy_low_water"),
            Self::SuctionStrainer => Phrase::new("remedy_suction_strainer", "remedy_suction_strainer"),
            Self::SuctionHose => Phrase::new("remedy_suction_hose", "remedy_suction_hose"),
            Self::TankVent => Phrase::new("remedy_tank_vent", "remedy_tank_vent"),
            Self::Agitation => Phrase::new("remedy_agitation", "remedy_agitation"),
            Self::WornPump => Phrase::new("remedy_worn_pump", "remedy_worn_pump"),
            Self::PumpValves => Phrase::new("remedy_pump_valves", "remedy_pump_valves"),
            Self::SlowPump => Phrase::new("remedy_slow_pump", "remedy_slow_pump"),
            Self::RegulatorOpen => Phrase::new("remedy_regulator_open", "remedy_regulator_open"),
            Self::RegulatorShut => Phrase::new("remedy_regulator_shut", "remedy_regulator_shut"),
            Self::ReturnLine => Phrase::new("remedy_return_line", "remedy_return_line"),
            Self::Controller => Phrase::new("remedy_controller", "remedy_controller"),
            Self::AirChamber => Phrase::new("remedy_air_chamber", "remedy_air_chamber")
                .with("low", charge(limits::CHAMBER_CHARGE.0))
                .with("high", charge(limits::CHAMBER_CHARGE.1)),
            Self::Gauge => Phrase::new("remedy_gauge", "remedy_gauge"),
            Self::PressureStrainer => Phrase::new("remedy_pressure_strainer", "remedy_pressure_strainer"),
            Self::LargeTips => Phrase::new("remedy_large_tips", "remedy_large_tips"),
            Self::SectionValve => Phrase::new("remedy_section_valve", "remedy_section_valve"),
            Self::SectionStrainer => Phrase::new("remedy_section_strainer", "remedy_section_strainer"),
            Self::CheckValves => Phrase::new("remedy_check_valves", "remedy_check_valves"),
            Self::BoomAir => Phrase::new("remedy_boom_air", "remedy_boom_air"),
            Self::Splashing => Phrase::new("remedy_splashing", "remedy_splashing"),
            Self::Foaming => Phrase::new("remedy_foaming", "remedy_foaming"),
            Self::Voltage => Phrase::new("remedy_voltage", "remedy_voltage"),
            Self::PressureSwitch => Phrase::new("remedy_pressure_switch", "remedy_pressure_switch"),
            Self::HotMotor => Phrase::new("remedy_hot_motor", "remedy_hot_motor"),
            Self::Other => Phrase::new("remedy_other", "remedy_other"),
        }
    }
}

impl Before {
    /// What must be so, and be off, before a check.
    #[must_use]
    pub fn said(self) -> Phrase {
        match self {
            Self::Running => Phrase::new("before_running", "before_running"),
            Self::EngineOff => Phrase::new("before_engine_off", "before_engine_off"),
            Self::PressureOff => Phrase::new("before_pressure_off", "before_pressure_off"),
            Self::TankValveShut => Phrase::new("before_tank_valve_shut", "before_tank_valve_shut"),
            Self::Gloves => Phrase::new("before_gloves", "before_gloves"),
        }
    }
}

impl Check {
    /// What is done; the pressure that is sprayed at decides how far the needle may swing.
    #[must_use]
    pub fn doing(self, working: Option<Pressure>) -> Phrase {
        match self {
            Self::TankLow => Phrase::new("check_tank_low", "check_tank_low"),
            Self::LineAboveWater => Phrase::new("check_line_above_water", "check_line_above_water"),
            Self::NotWater => Phrase::new("check_not_water", "check_not_water"),
            Self::MilkyWater => Phrase::new("check_milky_water", "check_milky_water"),
            Self::ShaftSlow => Phrase::new("check_shaft_slow", "check_shaft_slow"),
            Self::AgitationShut => Phrase::new("check_agitation_shut", "check_agitation_shut"),
            Self::ControllerManual => Phrase::new("check_controller_manual", "check_controller_manual"),
            Self::TurnedFaster => Phrase::new("check_turned_faster", "check_turned_faster"),
            Self::HoseFlat => Phrase::new("check_hose_flat", "check_hose_flat"),
            Self::SectionsShut => Phrase::new("check_sections_shut", "check_sections_shut"),
            Self::ReturnFlow => Phrase::new("check_return_flow", "check_return_flow"),
            Self::InTime => Phrase::new("check_in_time", "check_in_time").with("swing", swing(working)),
            Self::EngineOn => Phrase::new("check_engine_on", "check_engine_on"),
            Self::StartsAndStops => Phrase::new("check_starts_and_stops", "check_starts_and_stops"),
            Self::SingleTipsDrip => {
                Phrase::new("check_single_tips_drip", "check_single_tips_drip").with("seconds", seconds())
            }
            Self::DripStops => Phrase::new("check_drip_stops", "check_drip_stops"),
            Self::TipsOverNew => Phrase::new("check_tips_over_new", "check_tips_over_new"),
            Self::NotToZero => Phrase::new("check_not_to_zero", "check_not_to_zero"),
            Self::LidLoose => Phrase::new("check_lid_loose", "check_lid_loose"),
            Self::MotorCooled => Phrase::new("check_motor_cooled", "check_motor_cooled"),
            Self::PumpWeeps => Phrase::new("check_pump_weeps", "check_pump_weeps"),
            Self::ReturnKinked => Phrase::new("check_return_kinked", "check_return_kinked"),
            Self::ValveSticks => Phrase::new("check_valve_sticks", "check_valve_sticks"),
            Self::VoltsLow => Phrase::new("check_volts_low", "check_volts_low"),
            Self::ChamberCharge => Phrase::new("check_chamber_charge", "check_chamber_charge")
                .with("low", charge(limits::CHAMBER_CHARGE.0))
                .with("high", charge(limits::CHAMBER_CHARGE.1)),
            Self::SuctionStrainerDirty => {
                Phrase::new("check_suction_strainer_dirty", "check_suction_strainer_dirty")
            }
            Self::SuctionTightened => Phrase::new("check_suction_tightened", "check_suction_tightened"),
            Self::SectionStrainerDirty => {
                Phrase::new("check_section_strainer_dirty", "check_section_strainer_dirty")
            }
            Self::CheckValveSwapped => Phrase::new("check_check_valve_swapped", "check_check_valve_swapped"),
            Self::PressureStrainerDirty => {
                Phrase::new("check_pressure_strainer_dirty", "check_pressure_strainer_dirty")
            }
            Self::SecondGauge => Phrase::new("check_second_gauge", "check_second_gauge"),
            Self::PumpFlowLow => Phrase::new("check_pump_flow_low", "check_pump_flow_low"),
        }
    }
}

impl Check {
    /// What is asked then, to be answered with yes or no.
    #[must_use]
    pub fn asks(self) -> Phrase {
        match self {
            Self::TankLow => Phrase::new("asks_tank_low", "asks_tank_low"),
            Self::LineAboveWater => Phrase::new("asks_line_above_water", "asks_line_above_water"),
            Self::NotWater => Phrase::new("asks_not_water", "asks_not_water"),
            Self::MilkyWater => Phrase::new("asks_milky_water", "asks_milky_water"),
            Self::ShaftSlow => Phrase::new("asks_shaft_slow", "asks_shaft_slow"),
            Self::AgitationShut => Phrase::new("asks_agitation_shut", "asks_agitation_shut"),
            Self::ControllerManual => Phrase::new("asks_controller_manual", "asks_controller_manual"),
            Self::TurnedFaster => Phrase::new("asks_turned_faster", "asks_turned_faster"),
            Self::HoseFlat => Phrase::new("asks_hose_flat", "asks_hose_flat"),
            Self::SectionsShut => Phrase::new("asks_sections_shut", "asks_sections_shut"),
            Self::ReturnFlow => Phrase::new("asks_return_flow", "asks_return_flow"),
            Self::InTime => Phrase::new("asks_in_time", "asks_in_time"),
            Self::EngineOn => Phrase::new("asks_engine_on", "asks_engine_on"),
            Self::StartsAndStops => Phrase::new("asks_starts_and_stops", "asks_starts_and_stops"),
            Self::SingleTipsDrip => Phrase::new("asks_single_tips_drip", "asks_single_tips_drip"),
            Self::DripStops => Phrase::new("asks_drip_stops", "asks_drip_stops"),
            Self::TipsOverNew => Phrase::new("asks_tips_over_new", "asks_tips_over_new")
                .with("percent", percent(limits::TIP_OVER_NEW)),
            Self::NotToZero => Phrase::new("asks_not_to_zero", "asks_not_to_zero"),
            Self::LidLoose => Phrase::new("asks_lid_loose", "asks_lid_loose"),
            Self::MotorCooled => Phrase::new("asks_motor_cooled", "asks_motor_cooled"),
            Self::PumpWeeps => Phrase::new("asks_pump_weeps", "asks_pump_weeps"),
            Self::ReturnKinked => Phrase::new("asks_return_kinked", "asks_return_kinked"),
            Self::ValveSticks => Phrase::new("asks_valve_sticks", "asks_valve_sticks"),
            Self::VoltsLow => Phrase::new("asks_volts_low", "asks_volts_low").with("volts", volts()),
            Self::ChamberCharge => Phrase::new("asks_chamber_charge", "asks_chamber_charge"),
            Self::SuctionStrainerDirty => {
                Phrase::new("asks_suction_strainer_dirty", "asks_suction_strainer_dirty")
            }
            Self::SuctionTightened => Phrase::new("asks_suction_tightened", "asks_suction_tightened"),
            Self::SectionStrainerDirty => {
                Phrase::new("asks_section_strainer_dirty", "asks_section_strainer_dirty")
            }
            Self::CheckValveSwapped => Phrase::new("asks_check_valve_swapped", "asks_check_valve_swapped"),
            Self::PressureStrainerDirty => {
                Phrase::new("asks_pressure_strainer_dirty", "asks_pressure_strainer_dirty")
            }
            Self::SecondGauge => {
                Phrase::new("asks_second_gauge", "asks_second_gauge").with("percent", percent(limits::GAUGE))
            }
            Self::PumpFlowLow => Phrase::new("asks_pump_flow_low", "asks_pump_flow_low"),
        }
    }
}

/// A chance in words. Bands: our own choice; at the uppermost the question is settled.
#[must_use]
pub fn chance_said(chance: f64) -> Phrase {
    match chance {
        _ if chance >= super::SETTLED => Phrase::new("chance_sure", "chance_sure"),
        // From an even chance on.
        _ if chance >= 0.5 => Phrase::new("chance_likely", "chance_likely"),
        _ if chance >= 0.15 => Phrase::new("chance_maybe", "chance_maybe"),
        _ => Phrase::new("chance_hardly", "chance_hardly"),
    }
}

/// A chance as a number: whole percent, at least 1 and at most 99, because a table never makes certain.
#[must_use]
pub fn chance_told(chance: f64) -> Arg {
    Arg::Percent((100.0 * chance).round().clamp(1.0, 99.0))
}

/// All that is said of a check: what must be off first, what is done, what is asked.
#[must_use]
pub fn check_said(check: Check, working: Option<Pressure>) -> Vec<Phrase> {
    let before = super::check_row(check).before.iter().map(|before| before.said());
    before.chain([check.doing(working), check.asks()]).collect()
}

/// What is said where nothing tells the causes apart any more.
#[must_use]
pub const fn nothing_more_said() -> Phrase {
    Phrase::new("nothing_more", "nothing_more")
}
