//! Classic cases, as handbooks and mechanics tell them. All of them are common practice, from memory.

#![allow(clippy::expect_used)] // a test fails by panicking

use calibration::symptoms::{
    Check, Control, Drive, NextStep, Outcome, Pumping, Ranked, Risk, Seen, Signs, Symptom, Trouble,
    check_row, ranked,
};

const SHAFT: Pumping =
    Pumping { drive: Some(Drive::Shaft), control: Some(Control::ByHand), air_chamber: None };
const TWELVE_VOLT: Pumping =
    Pumping { drive: Some(Drive::TwelveVolt), control: Some(Control::ByHand), air_chamber: None };

fn case(pumping: Pumping, seen: &[Symptom], checked: &[(Check, Outcome)]) -> Ranked {
    let seen = seen.iter().map(|symptom| (*symptom, Seen::Present)).collect();
    ranked(&Signs { seen, pumping, checked: checked.to_vec() }).expect("a case that can be")
}

fn firsts(found: &Ranked, many: usize) -> Vec<Trouble> {
    found.causes.iter().take(many).map(|one| one.trouble).collect()
}

use Outcome::{No, Yes};

#[test]
fn low_pressure_that_returns_with_agitation_shut_is_agitation_or_a_worn_pump() {
    let found = case(SHAFT, &[Symptom::NoPressure], &[(Check::AgitationShut, Yes), (Check::ShaftSlow, No)]);
    let mut first = firsts(&found, 2);
    first.sort_unstable();
    assert_eq!(first, [Trouble::Agitation, Trouble::WornPump]);
    // Measuring what the pump gives parts the two.
    let weak = [(Check::AgitationShut, Yes), (Check::ShaftSlow, No), (Check::PumpFlowLow, Yes)];
    assert_eq!(firsts(&case(SHAFT, &[Symptom::NoPressure], &weak), 1), [Trouble::WornPump]);
    let sound = [(Check::AgitationShut, Yes), (Check::ShaftSlow, No), (Check::PumpFlowLow, No)];
    assert_eq!(firsts(&case(SHAFT, &[Symptom::NoPressure], &sound), 1), [Trouble::Agitation]);
}

#[test]
fn milky_water_and_a_jumping_needle_are_air_in_the_suction() {
    let found = case(SHAFT, &[Symptom::NeedleJumps, Symptom::Foam], &[(Check::TankLow, No)]);
    assert_eq!(found.causes[0].trouble, Trouble::SuctionAir);
    assert!(found.causes[0].chance > 0.7, "{:?}", &found.causes[..3]);
    // With the tank nearly empty it is the water that is low.
    let low = case(SHAFT, &[Symptom::NeedleJumps, Symptom::Foam], &[(Check::TankLow, Yes)]);
    assert_eq!(low.causes[0].trouble, Trouble::LowWater);
}

#[test]
fn collapsing_only_at_high_speed_is_the_suction_hose_or_its_strainer() {
    let found = case(SHAFT, &[Symptom::FallsFast], &[]);
    let mut first = firsts(&found, 2);
    first.sort_unstable();
    assert_eq!(first, [Trouble::SuctionStrainer, Trouble::SuctionHose]);
    let flat = case(SHAFT, &[Symptom::FallsFast], &[(Check::HoseFlat, Yes)]);
    assert_eq!(flat.causes[0].trouble, Trouble::SuctionHose);
    let dirty =
        case(SHAFT, &[Symptom::FallsFast], &[(Check::HoseFlat, No), (Check::SuctionStrainerDirty, Yes)]);
    assert_eq!((dirty.causes[0].trouble, dirty.next), (Trouble::SuctionStrainer, NextStep::Settled));
}

#[test]
fn a_needle_that_jumps_in_time_with_the_pump_is_the_air_chamber_or_a_valve() {
    let found = case(SHAFT, &[Symptom::NeedleJumps, Symptom::Knocks], &[(Check::InTime, Yes)]);
    let mut first = firsts(&found, 2);
    first.sort_unstable();
    assert_eq!(first, [Trouble::PumpValves, Trouble::AirChamber]);
    let charge = [(Check::InTime, Yes), (Check::ChamberCharge, Yes)];
    let found = case(SHAFT, &[Symptom::NeedleJumps, Symptom::Knocks], &charge);
    assert_eq!(found.causes[0].trouble, Trouble::AirChamber);
}

#[test]
fn pressure_that_comes_back_with_the_lid_loose_is_the_vent() {
    let found = case(SHAFT, &[Symptom::FallsWarm], &[(Check::LidLoose, Yes)]);
    assert_eq!(found.causes[0].trouble, Trouble::TankVent);
}

#[test]
fn a_12_volt_pump_that_is_weak_with_the_engine_off_lacks_voltage() {
    let found = case(TWELVE_VOLT, &[Symptom::WeakEngineOff], &[]);
    assert_eq!(found.causes[0].trouble, Trouble::Voltage);
    let low = case(TWELVE_VOLT, &[Symptom::WeakEngineOff, Symptom::NoPressure], &[(Check::VoltsLow, Yes)]);
    assert_eq!((low.causes[0].trouble, low.next), (Trouble::Voltage, NextStep::Settled));
}

#[test]
fn a_12_volt_pump_that_starts_and_stops_has_its_switch_at_work() {
    let found = case(TWELVE_VOLT, &[Symptom::NeedleJumps], &[(Check::StartsAndStops, Yes)]);
    assert_eq!(found.causes[0].trouble, Trouble::PressureSwitch);
}

#[test]
fn dripping_tips_are_check_valves_a_whole_section_its_valve() {
    let single = case(SHAFT, &[Symptom::Drips], &[(Check::SingleTipsDrip, Yes), (Check::DripStops, No)]);
    assert_eq!(single.causes[0].trouble, Trouble::CheckValves);
    let whole = case(SHAFT, &[Symptom::Drips], &[(Check::SingleTipsDrip, No), (Check::DripStops, No)]);
    assert_eq!(whole.causes[0].trouble, Trouble::SectionValve);
    let ends = case(SHAFT, &[Symptom::Drips], &[(Check::SingleTipsDrip, No), (Check::DripStops, Yes)]);
    assert_eq!(ends.causes[0].trouble, Trouble::BoomAir);
}

#[test]
fn a_weak_section_is_its_strainer_unless_its_valve_sticks() {
    let found = case(SHAFT, &[Symptom::SectionWeak], &[]);
    assert_eq!(found.causes[0].trouble, Trouble::SectionStrainer);
    let sticks = case(SHAFT, &[Symptom::SectionWeak], &[(Check::ValveSticks, Yes)]);
    assert_eq!(sticks.causes[0].trouble, Trouble::SectionValve);
}

#[test]
fn much_water_coming_back_is_the_regulator() {
    let answers = [(Check::SectionsShut, No), (Check::ReturnFlow, Yes)];
    let found = case(SHAFT, &[Symptom::NoPressure], &answers);
    assert_eq!(found.causes[0].trouble, Trouble::RegulatorOpen);
}

#[test]
fn a_needle_that_stands_still_in_manual_is_the_controller() {
    let pumping = Pumping { control: Some(Control::Controller), ..SHAFT };
    let found =
        case(pumping, &[Symptom::NeedleJumps], &[(Check::ControllerManual, Yes), (Check::InTime, No)]);
    assert_eq!(found.causes[0].trouble, Trouble::Controller);
}

#[test]
fn nothing_is_opened_before_looking_has_been_done() {
    for seen in [Symptom::NoPressure, Symptom::NeedleJumps, Symptom::FallsWarm, Symptom::TooHigh] {
        let NextStep::Check(first) = case(SHAFT, &[seen], &[]).next else { continue };
        assert_eq!(check_row(first).risk, Risk::Looking, "{seen:?}");
    }
}
