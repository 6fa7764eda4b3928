//! What each thing is called, and what is done: the English beside the code; people read the catalogue's.

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
            Self::NoPressure => Phrase::new("symptom_no_pressure", "will not build pressure"),
            Self::NeedleJumps => Phrase::new("symptom_needle_jumps", "needle of the gauge jumps"),
            Self::Foam => Phrase::new("symptom_foam", "foam or milky water in the tank"),
            Self::SectionWeak => Phrase::new("symptom_section_weak", "one section weak, all along it"),
            Self::Drips => Phrase::new("symptom_drips", "tips still drip {seconds} s after shutting off")
                .with("seconds", seconds()),
            Self::FallsWarm => Phrase::new(
                "symptom_falls_warm",
                "pressure falls as it warms: over {percent} in {minutes} min",
            )
            .with("percent", percent(limits::STABILITY))
            .with("minutes", minutes()),
            Self::FallsFast => Phrase::new("symptom_falls_fast", "pressure falls when the pump turns faster"),
            Self::TooHigh => Phrase::new("symptom_too_high", "pressure will not come down"),
            Self::Knocks => Phrase::new("symptom_knocks", "pump knocks or hoses shake"),
            Self::WeakEngineOff => {
                Phrase::new("symptom_weak_engine_off", "12 V pump weak with the engine off")
            }
        }
    }
}

impl Trouble {
    /// What is the matter.
    #[must_use]
    pub fn said(self) -> Phrase {
        match self {
            Self::SuctionAir => Phrase::new("trouble_suction_air", "air gets in on the suction side"),
            Self::LowWater => Phrase::new("trouble_low_water", "so little water that the pump draws air"),
            Self::SuctionStrainer => {
                Phrase::new("trouble_suction_strainer", "suction strainer plugged, or tank valve half shut")
            }
            Self::SuctionHose => {
                Phrase::new("trouble_suction_hose", "suction hose kinked, soft, or its lining loose")
            }
            Self::TankVent => Phrase::new("trouble_tank_vent", "vent of the tank's lid plugged"),
            Self::Agitation => Phrase::new("trouble_agitation", "agitation takes too much of the flow"),
            Self::WornPump => Phrase::new("trouble_worn_pump", "pump worn"),
            Self::PumpValves => {
                Phrase::new("trouble_pump_valves", "valve or diaphragm of the pump broken or stuck")
            }
            Self::SlowPump => Phrase::new("trouble_slow_pump", "pump turns too slowly, or its belt slips"),
            Self::RegulatorOpen => {
                Phrase::new("trouble_regulator_open", "regulator or relief valve stays open")
            }
            Self::RegulatorShut => {
                Phrase::new("trouble_regulator_shut", "regulator stuck shut, or turned in too far")
            }
            Self::ReturnLine => {
                Phrase::new("trouble_return_line", "regulator's return line kinked or plugged")
            }
            Self::Controller => Phrase::new("trouble_controller", "controller hunts"),
            Self::AirChamber => {
                Phrase::new("trouble_air_chamber", "air chamber has lost its charge, or has too much")
            }
            Self::Gauge => Phrase::new("trouble_gauge", "gauge, or the line to it, at fault"),
            Self::PressureStrainer => {
                Phrase::new("trouble_pressure_strainer", "strainer on the pressure side plugged")
            }
            Self::LargeTips => {
                Phrase::new("trouble_large_tips", "tips take more than the pump gives: worn or too large")
            }
            Self::SectionValve => {
                Phrase::new("trouble_section_valve", "section valve does not open or shut all the way")
            }
            Self::SectionStrainer => {
                Phrase::new("trouble_section_strainer", "section's strainer or hose plugged or kinked")
            }
            Self::CheckValves => {
                Phrase::new("trouble_check_valves", "check valves at the tips dirty or worn")
            }
            Self::BoomAir => Phrase::new("trouble_boom_air", "air trapped in the ends of the boom"),
            Self::Splashing => Phrase::new("trouble_splashing", "return or agitation splashes from above"),
            Self::Foaming => Phrase::new("trouble_foaming", "what is in the tank foams"),
            Self::Voltage => Phrase::new("trouble_voltage", "too little voltage at the pump"),
            Self::PressureSwitch => {
                Phrase::new("trouble_pressure_switch", "pump's pressure switch cuts in and out")
            }
            Self::HotMotor => Phrase::new("trouble_hot_motor", "pump's motor gets hot and cuts out"),
            Self::Other => Phrase::new("trouble_other", "something else, or more than one thing"),
        }
    }
}

impl Trouble {
    /// What puts it right.
    #[must_use]
    pub fn remedy(self) -> Phrase {
        match self {
            Self::SuctionAir => Phrase::new("remedy_suction_air", "Pressure off, tank valve shut: tighten the clamps from tank to pump, clean and grease the seal of the strainer's lid, replace cracked hose."),
            Self::LowWater => Phrase::new("remedy_low_water", "Fill the tank at least half with clean water and try again."),
            Self::SuctionStrainer => Phrase::new("remedy_suction_strainer", "Engine off, pressure off, tank valve shut, gloves on: clean the strainer with a soft brush or air, never the mouth. Then open the tank valve all the way."),
            Self::SuctionHose => Phrase::new("remedy_suction_hose", "Engine off, pressure off, tank valve shut: fit new suction hose that does not go flat, as wide as the pump's inlet, without kinks."),
            Self::TankVent => Phrase::new("remedy_tank_vent", "Engine off, gloves on: take the lid off and clean its vent. Do not spray with the lid loose."),
            Self::Agitation => Phrase::new("remedy_agitation", "Shut the agitation valve until the surface just moves, or fit a smaller agitation jet. Some products need strong agitation: the label says so."),
            Self::WornPump => Phrase::new("remedy_worn_pump", "Have the pump rebuilt or replaced; until then shut agitation as far as the label lets you, and spray at a lower rate."),
            Self::PumpValves => Phrase::new("remedy_pump_valves", "Stop using the pump; let someone who knows pumps open it and renew valves and diaphragms."),
            Self::SlowPump => Phrase::new("remedy_slow_pump", "Run the shaft at the speed the pump is made for, never faster. Engine off and key out before you tighten a belt."),
            Self::RegulatorOpen => Phrase::new("remedy_regulator_open", "Engine off, pressure off, tank valve shut: clean the valve's seat, look at spring and seal, replace what is worn."),
            Self::RegulatorShut => Phrase::new("remedy_regulator_shut", "Turn it out. If the pressure stays up: engine off, let the pressure off, then free and clean the valve."),
            Self::ReturnLine => Phrase::new("remedy_return_line", "Engine off, pressure off: clear the return line, lay it without kinks, never put a valve in it."),
            Self::Controller => Phrase::new("remedy_controller", "Look up in its manual how fast it may move its valve, and slow it down; look at plugs, flow meter and speed sensor."),
            Self::AirChamber => Phrase::new("remedy_air_chamber", "Engine off, pressure off: charge it with air to between {low} and {high} of the pressure you spray at. If it does not hold, its diaphragm is broken.").with("low", charge(limits::CHAMBER_CHARGE.0)).with("high", charge(limits::CHAMBER_CHARGE.1)),
            Self::Gauge => Phrase::new("remedy_gauge", "Pressure off: clean the line to the gauge, or fit a new gauge."),
            Self::PressureStrainer => Phrase::new("remedy_pressure_strainer", "Engine off, pressure off, tank valve shut, gloves on: clean it with a soft brush or air, never the mouth."),
            Self::LargeTips => Phrase::new("remedy_large_tips", "Fit new tips of a size the pump can feed."),
            Self::SectionValve => Phrase::new("remedy_section_valve", "Engine off, pressure off, gloves on: look at its plug, clean or replace the valve."),
            Self::SectionStrainer => Phrase::new("remedy_section_strainer", "Engine off, pressure off, tank valve shut, gloves on: clean the strainer with a soft brush or air, never the mouth; lay the hose straight."),
            Self::CheckValves => Phrase::new("remedy_check_valves", "Pressure off, gloves on: clean or replace the check valves of the bodies that drip."),
            Self::BoomAir => Phrase::new("remedy_boom_air", "Pressure off, gloves on: open the ends of the boom until water comes without air; have the ends shortened or fitted with a bleed."),
            Self::Splashing => Phrase::new("remedy_splashing", "Engine off: lead the line down to the bottom of the tank, with a small hole above the water so that it cannot draw the tank empty."),
            Self::Foaming => Phrase::new("remedy_foaming", "Less agitation, return line under water; a defoamer only where the label allows it. Calibrate with clean water."),
            Self::Voltage => Phrase::new("remedy_voltage", "Lead off the battery first: clean its posts, the ground and the plugs, fit thicker wire; then charge or replace the battery."),
            Self::PressureSwitch => Phrase::new("remedy_pressure_switch", "Let some flow back to the tank, or fit larger tips or more of them, so that the pump never has to stop; have the switch set or replaced."),
            Self::HotMotor => Phrase::new("remedy_hot_motor", "Let it cool, with the switch off. Lower pressure, fewer or smaller tips, shade and air around the motor."),
            Self::Other => Phrase::new("remedy_other", "Let a sprayer mechanic or your dealer look at it."),
        }
    }
}

impl Before {
    /// What must be so, and be off, before a check.
    #[must_use]
    pub fn said(self) -> Phrase {
        match self {
            Self::Running => Phrase::new(
                "before_running",
                "Parked, brake on, out of gear, clean water only; nobody near a turning shaft.",
            ),
            Self::EngineOff => Phrase::new("before_engine_off", "Engine and pump off, key out."),
            Self::PressureOff => {
                Phrase::new("before_pressure_off", "Let the pressure off until the gauge is at zero.")
            }
            Self::TankValveShut => Phrase::new("before_tank_valve_shut", "Shut the tank valve."),
            Self::Gloves => Phrase::new("before_gloves", "Gloves and eye protection on."),
        }
    }
}

impl Check {
    /// What is done; the pressure that is sprayed at decides how far the needle may swing.
    #[must_use]
    pub fn doing(self, working: Option<Pressure>) -> Phrase {
        match self {
            Self::TankLow => Phrase::new("check_tank_low", "Look into the tank from beside."),
            Self::LineAboveWater => Phrase::new("check_line_above_water", "Look in through the lid; do not reach in."),
            Self::NotWater => Phrase::new("check_not_water", "Think what was in the tank, and look."),
            Self::MilkyWater => Phrase::new("check_milky_water", "Look into the tank from beside while it runs, then stop it and wait two minutes."),
            Self::ShaftSlow => Phrase::new("check_shaft_slow", "Read the speed of the PTO or engine from the seat."),
            Self::AgitationShut => Phrase::new("check_agitation_shut", "Shut the agitation."),
            Self::ControllerManual => Phrase::new("check_controller_manual", "Put the controller in manual."),
            Self::TurnedFaster => Phrase::new("check_turned_faster", "From the seat, turn the pump a little faster, never over the speed it is made for."),
            Self::HoseFlat => Phrase::new("check_hose_flat", "While it sprays, look at the suction hose from where you are away from the shaft."),
            Self::SectionsShut => Phrase::new("check_sections_shut", "Shut all sections from the seat, for a moment only."),
            Self::ReturnFlow => Phrase::new("check_return_flow", "While it sprays, look at the regulator's return where it runs into the tank, from beside."),
            Self::InTime => Phrase::new("check_in_time", "Watch the needle while all tips spray. More than {swing} of swing is a defect.").with("swing", swing(working)),
            Self::EngineOn => Phrase::new("check_engine_on", "Start the engine, brake on, and let it run a minute."),
            Self::StartsAndStops => Phrase::new("check_starts_and_stops", "Listen to the pump for a minute while it sprays."),
            Self::SingleTipsDrip => Phrase::new("check_single_tips_drip", "Shut the boom off and walk along behind it after {seconds} s.").with("seconds", seconds()),
            Self::DripStops => Phrase::new("check_drip_stops", "Shut the boom off and wait a minute."),
            Self::TipsOverNew => Phrase::new("check_tips_over_new", "Catch three tips for 30 s at the pressure you have."),
            Self::NotToZero => Phrase::new("check_not_to_zero", "Open a section, so that all pressure goes, and look at the gauge."),
            Self::LidLoose => Phrase::new("check_lid_loose", "Loosen the tank's lid. Then run it so, clean water only and nobody near the shaft, and watch the pressure from the seat."),
            Self::MotorCooled => Phrase::new("check_motor_cooled", "Do not touch the hot motor. Wait 20 min, then run it again."),
            Self::PumpWeeps => Phrase::new("check_pump_weeps", "Look at the pump all around, and at its oil where it has a glass."),
            Self::ReturnKinked => Phrase::new("check_return_kinked", "Feel along the regulator's return line to its end."),
            Self::ValveSticks => Phrase::new("check_valve_sticks", "Switch the section on and off from the seat; a helper watches its valve from out of the spray."),
            Self::VoltsLow => Phrase::new("check_volts_low", "With a voltmeter at the pump's own plug while it sprays; keep the probes apart, and rings and tools off the battery."),
            Self::ChamberCharge => Phrase::new("check_chamber_charge", "Read the air chamber's charge with a tire gauge. It belongs between {low} and {high} of the pressure you spray at.").with("low", charge(limits::CHAMBER_CHARGE.0)).with("high", charge(limits::CHAMBER_CHARGE.1)),
            Self::SuctionStrainerDirty => Phrase::new("check_suction_strainer_dirty", "Open the suction strainer; catch what runs out."),
            Self::SuctionTightened => Phrase::new("check_suction_tightened", "Tighten every clamp from tank to pump, clean and grease the seal of the strainer's lid. Open the tank valve again and run it with nobody near the shaft."),
            Self::SectionStrainerDirty => Phrase::new("check_section_strainer_dirty", "Open the section's strainer and follow its hose."),
            Self::CheckValveSwapped => Phrase::new("check_check_valve_swapped", "Swap the check valve of a body that drips with that of one that does not, then spray and shut off again."),
            Self::PressureStrainerDirty => Phrase::new("check_pressure_strainer_dirty", "Open the strainer between pump and boom."),
            Self::SecondGauge => Phrase::new("check_second_gauge", "Fit a gauge you trust beside the first. Then run it with nobody near the shaft and read both."),
            Self::PumpFlowLow => Phrase::new("check_pump_flow_low", "Lead the pump's outlet into a drum and tie the hose, or let your dealer do it. Open the tank valve, run the pump at its speed with nobody near the shaft, and time 30 s."),
        }
    }
}

impl Check {
    /// What is asked then, to be answered with yes or no.
    #[must_use]
    pub fn asks(self) -> Phrase {
        match self {
            Self::TankLow => Phrase::new("asks_tank_low", "Is it less than a quarter full?"),
            Self::LineAboveWater => {
                Phrase::new("asks_line_above_water", "Does a return or agitation line end above the water?")
            }
            Self::NotWater => Phrase::new(
                "asks_not_water",
                "Is there anything in it but clean water: product, soap, tank cleaner?",
            ),
            Self::MilkyWater => Phrase::new(
                "asks_milky_water",
                "Does the water turn milky while it runs, and clear up when it stands?",
            ),
            Self::ShaftSlow => Phrase::new("asks_shaft_slow", "Is it slower than the pump is made for?"),
            Self::AgitationShut => Phrase::new("asks_agitation_shut", "Does it get clearly better at once?"),
            Self::ControllerManual => {
                Phrase::new("asks_controller_manual", "Does it get clearly better, the needle at rest?")
            }
            Self::TurnedFaster => {
                Phrase::new("asks_turned_faster", "Does the pressure fall, or stop rising?")
            }
            Self::HoseFlat => Phrase::new("asks_hose_flat", "Is it sucked flat or kinked?"),
            Self::SectionsShut => Phrase::new("asks_sections_shut", "Does the pressure come up well?"),
            Self::ReturnFlow => Phrase::new("asks_return_flow", "Does much water come back through it?"),
            Self::InTime => {
                Phrase::new("asks_in_time", "Does it jump fast and evenly, in time with the pump?")
            }
            Self::EngineOn => Phrase::new("asks_engine_on", "Does the pump come back?"),
            Self::StartsAndStops => {
                Phrase::new("asks_starts_and_stops", "Does it start and stop by itself, again and again?")
            }
            Self::SingleTipsDrip => {
                Phrase::new("asks_single_tips_drip", "Do only single tips drip, their neighbors not?")
            }
            Self::DripStops => Phrase::new("asks_drip_stops", "Does the dripping stop by itself?"),
            Self::TipsOverNew => Phrase::new(
                "asks_tips_over_new",
                "Do they give over {percent} more than new ones at that pressure?",
            )
            .with("percent", percent(limits::TIP_OVER_NEW)),
            Self::NotToZero => Phrase::new("asks_not_to_zero", "Does its needle stay above zero?"),
            Self::LidLoose => Phrase::new("asks_lid_loose", "Does the pressure come back?"),
            Self::MotorCooled => Phrase::new("asks_motor_cooled", "Does it run as before?"),
            Self::PumpWeeps => Phrase::new("asks_pump_weeps", "Does it drip or weep, or is its oil milky?"),
            Self::ReturnKinked => Phrase::new("asks_return_kinked", "Is it kinked, flattened or plugged?"),
            Self::ValveSticks => {
                Phrase::new("asks_valve_sticks", "Does the valve stop halfway, or not move?")
            }
            Self::VoltsLow => {
                Phrase::new("asks_volts_low", "Does it read less than {volts} V?").with("volts", volts())
            }
            Self::ChamberCharge => Phrase::new("asks_chamber_charge", "Is it outside that?"),
            Self::SuctionStrainerDirty => {
                Phrase::new("asks_suction_strainer_dirty", "Is it so dirty that water hardly gets through?")
            }
            Self::SuctionTightened => Phrase::new("asks_suction_tightened", "Does it run clearly steadier?"),
            Self::SectionStrainerDirty => {
                Phrase::new("asks_section_strainer_dirty", "Is it dirty, or the hose kinked?")
            }
            Self::CheckValveSwapped => {
                Phrase::new("asks_check_valve_swapped", "Does the drip move along with it?")
            }
            Self::PressureStrainerDirty => {
                Phrase::new("asks_pressure_strainer_dirty", "Is it so dirty that water hardly gets through?")
            }
            Self::SecondGauge => Phrase::new("asks_second_gauge", "Do they differ by more than {percent}?")
                .with("percent", percent(limits::GAUGE)),
            Self::PumpFlowLow => {
                Phrase::new("asks_pump_flow_low", "Does it give clearly less than its plate says?")
            }
        }
    }
}

/// A chance in words. Bands: our own choice; at the uppermost the question is settled.
#[must_use]
pub fn chance_said(chance: f64) -> Phrase {
    match chance {
        _ if chance >= super::SETTLED => Phrase::new("chance_sure", "almost certainly"),
        // From an even chance on.
        _ if chance >= 0.5 => Phrase::new("chance_likely", "likely"),
        _ if chance >= 0.15 => Phrase::new("chance_maybe", "may be"),
        _ => Phrase::new("chance_hardly", "less likely"),
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
    Phrase::new(
        "nothing_more",
        "Nothing that can be done at the sprayer tells these apart any more: let a sprayer mechanic or your dealer look.",
    )
}
