//! Checks that tell causes apart: what is shut off first, how long they take, what they cost, what a yes says.

use super::grade::Grade;
use super::named::named;
use super::pumping::Fits;
use super::symptom::Symptom;
use super::trouble::Trouble;

named! {
    /// A check. Each is one question that is answered with yes or no.
    Check {
        /// Is the tank low?
        TankLow = "tank_low",
        /// Does a return or agitation line end above the water?
        LineAboveWater = "line_above_water",
        /// Is there anything but clean water in the tank?
        NotWater = "not_water",
        /// Does the water turn milky with air while it runs?
        MilkyWater = "milky_water",
        /// Is the shaft slower than the pump needs?
        ShaftSlow = "shaft_slow",
        /// Does the pressure come back with agitation shut?
        AgitationShut = "agitation_shut",
        /// Does the needle stand still with the controller in manual?
        ControllerManual = "controller_manual",
        /// Does the pressure fall when the pump is turned a little faster?
        TurnedFaster = "turned_faster",
        /// Is the suction hose sucked flat while it runs?
        HoseFlat = "hose_flat",
        /// Does the pressure come up with all sections shut?
        SectionsShut = "sections_shut",
        /// Does much water come back through the regulator's return?
        ReturnFlow = "return_flow",
        /// Does the needle jump in time with the pump?
        InTime = "in_time",
        /// Does the pressure come back with the engine running?
        EngineOn = "engine_on",
        /// Does the 12 V pump start and stop by itself?
        StartsAndStops = "starts_and_stops",
        /// Do only single tips drip?
        SingleTipsDrip = "single_tips_drip",
        /// Does the dripping stop by itself within a minute?
        DripStops = "drip_stops",
        /// Do the tips give more than new ones at this pressure?
        TipsOverNew = "tips_over_new",
        /// Does the needle fail to go back to zero?
        NotToZero = "not_to_zero",
        /// Does it run as before with the lid loosened?
        LidLoose = "lid_loose",
        /// Does the motor run as before once it has cooled?
        MotorCooled = "motor_cooled",
        /// Is there oil in the water or water in the pump's oil, or does the pump weep?
        PumpWeeps = "pump_weeps",
        /// Is the return line kinked or plugged?
        ReturnKinked = "return_kinked",
        /// Does the section's valve fail to turn all the way?
        ValveSticks = "valve_sticks",
        /// Is there less than 12 V at the pump while it runs?
        VoltsLow = "volts_low",
        /// Is the air chamber's charge outside its range?
        ChamberCharge = "chamber_charge",
        /// Is the suction strainer dirty?
        SuctionStrainerDirty = "suction_strainer_dirty",
        /// Does it run steadily once joints and seals of the suction side are tight?
        SuctionTightened = "suction_tightened",
        /// Is the section's strainer dirty, or its hose kinked?
        SectionStrainerDirty = "section_strainer_dirty",
        /// Does the drip move along with the check valve?
        CheckValveSwapped = "check_valve_swapped",
        /// Is the strainer on the pressure side dirty?
        PressureStrainerDirty = "pressure_strainer_dirty",
        /// Do two gauges differ?
        SecondGauge = "second_gauge",
        /// Does the pump give less than its plate says?
        PumpFlowLow = "pump_flow_low",
    }
}

impl Check {
    /// The symptom that says the same, where there is one: whoever sees it has made the check.
    #[must_use]
    pub const fn said_by(self) -> Option<Symptom> {
        match self {
            Self::TurnedFaster => Some(Symptom::FallsFast),
            Self::EngineOn => Some(Symptom::WeakEngineOff),
            _ => None,
        }
    }
}

/// What must be so before a check is begun; the words for each say what is shut off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Before {
    /// It runs: parked, brake on, out of gear, clean water, nobody near a turning shaft.
    Running,
    /// Engine and pump off, key out.
    EngineOff,
    /// The pressure let off.
    PressureOff,
    /// The tank valve shut.
    TankValveShut,
    /// Gloves and eye protection on.
    Gloves,
}

impl Before {
    /// All of them, in the order they are said.
    pub const ALL: [Self; 5] =
        [Self::Running, Self::EngineOff, Self::PressureOff, Self::TankValveShut, Self::Gloves];

    /// Its name among the sentences.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Running => "running",
            Self::EngineOff => "engine_off",
            Self::PressureOff => "pressure_off",
            Self::TankValveShut => "tank_valve_shut",
            Self::Gloves => "gloves",
        }
    }
}

/// How much can go wrong for whoever does it, the safest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Risk {
    /// Looking and reading, from the seat or with everything off.
    Looking,
    /// The controls are moved while it runs.
    AtControls,
    /// Hands on hoses, lids and wires, everything off.
    HandsOn,
    /// A line that held liquid is opened.
    Opening,
}

impl Risk {
    /// The stable word in JSON.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Looking => "looking",
            Self::AtControls => "at_controls",
            Self::HandsOn => "hands_on",
            Self::Opening => "opening",
        }
    }
}

/// What a check costs beside the time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Costs {
    /// Nothing.
    Nothing,
    /// A tool or a small part: a tire gauge, a voltmeter, a second gauge.
    SmallPart,
}

impl Costs {
    /// The stable word in JSON.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Nothing => "nothing",
            Self::SmallPart => "small_part",
        }
    }
}

/// A check as the table has it.
#[derive(Clone, Copy, Debug)]
pub struct CheckRow {
    /// Which.
    pub check: Check,
    /// On which sprayers it can be made.
    pub fits: Fits,
    /// With which symptom it is worth asking; with any where there is none.
    pub only_with: Option<Symptom>,
    /// What must be so before.
    pub before: &'static [Before],
    /// The minutes it takes. Our assumption.
    pub minutes: f64,
    /// What it costs.
    pub costs: Costs,
    /// How much can go wrong.
    pub risk: Risk,
    /// How often it is answered with yes, by what is the matter.
    pub yes: &'static [(Trouble, Grade)],
    /// How often under causes not named above.
    pub otherwise: Grade,
    /// Who says so.
    pub source: &'static str,
}
