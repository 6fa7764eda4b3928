//! What may bring a symptom.

use super::grade::Grade;
use super::named::named;
use super::pumping::Fits;

named! {
    /// What may be the matter.
    Trouble {
        /// Air gets in on the suction side: a loose clamp, the seal of a strainer's lid, a cracked hose.
        SuctionAir = "suction_air",
        /// The water in the tank is so low that the pump draws air.
        LowWater = "low_water",
        /// The suction strainer is plugged, or the tank valve is half shut.
        SuctionStrainer = "suction_strainer",
        /// The suction hose is kinked, soft or its lining loose.
        SuctionHose = "suction_hose",
        /// The vent of the tank's lid is plugged.
        TankVent = "tank_vent",
        /// Agitation takes more flow than the pump has to spare.
        Agitation = "agitation",
        /// The pump is worn.
        WornPump = "worn_pump",
        /// A valve or diaphragm of the pump is broken or stuck.
        PumpValves = "pump_valves",
        /// The pump turns too slowly: wrong gear or engine speed, a slipping belt.
        SlowPump = "slow_pump",
        /// The regulator, relief or regulating valve stays open: worn, dirty, a weak spring.
        RegulatorOpen = "regulator_open",
        /// The regulator is stuck shut, or turned in all the way.
        RegulatorShut = "regulator_shut",
        /// The regulator's return line is kinked or plugged.
        ReturnLine = "return_line",
        /// The controller hunts: it opens and shuts its regulating valve by turns.
        Controller = "controller",
        /// The air chamber has lost its charge, or has the wrong one.
        AirChamber = "air_chamber",
        /// The gauge or the line to it is at fault.
        Gauge = "gauge",
        /// The strainer on the pressure side is plugged.
        PressureStrainer = "pressure_strainer",
        /// The tips take more than the pump gives: worn, or too large.
        LargeTips = "large_tips",
        /// A section's valve does not open or shut all the way.
        SectionValve = "section_valve",
        /// A section's strainer or hose is plugged or kinked.
        SectionStrainer = "section_strainer",
        /// Check valves at the tips are dirty or worn.
        CheckValves = "check_valves",
        /// Air is trapped in the ends of the boom.
        BoomAir = "boom_air",
        /// A return or agitation line splashes into the tank from above.
        Splashing = "splashing",
        /// What is in the tank foams.
        Foaming = "foaming",
        /// The 12 V pump gets too little voltage: battery, wires, ground, connectors.
        Voltage = "voltage",
        /// The 12 V pump's pressure switch cuts in and out.
        PressureSwitch = "pressure_switch",
        /// The 12 V pump's motor gets too hot and cuts out.
        HotMotor = "hot_motor",
        /// Something else, or more than one thing.
        Other = "other",
    }
}

/// A cause as the table has it.
#[derive(Clone, Copy, Debug)]
pub struct TroubleRow {
    /// Which.
    pub trouble: Trouble,
    /// How often it is the matter among sprayers that come with something.
    pub common: Grade,
    /// On which sprayers it can be.
    pub fits: Fits,
    /// Who says so.
    pub source: &'static str,
}
