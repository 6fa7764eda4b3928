//! What is said about a change, in the words one would say over the fence.

use sprayer::PressureControl;
use units::{Amount, Arg, Finding, Kind, Pressure, VolumePerArea, Weight};

use super::to_hit::{Change, SMALL_CORRECTION, Setup, SpeedChange};

/// Findings about a change, in the order to try them.
pub(super) fn about_change(change: &Change, setup: &Setup, wanted: VolumePerArea) -> Vec<Finding> {
    let mut findings = Vec::new();
    let ratio = wanted.ratio_to(setup.rate);
    if (ratio - 1.0).abs() <= NOTHING_TO_DO {
        return findings;
    }
    findings.push(speed(change, setup, wanted));
    if let (Some(now), Some(new)) = (setup.pressure, change.pressure) {
        let in_range = setup.tip_range.holds(new);
        // A pressure the tips are not meant for is not offered; a controller goes there by itself, so it is told.
        if in_range || setup.control == Some(PressureControl::RateController) {
            findings.extend(pressure(now, new, setup, wanted));
        }
        if !in_range {
            findings.push(leaves_range(new, setup, wanted));
        } else if (ratio - 1.0).abs() > SMALL_CORRECTION {
            findings.push(more_than_small(ratio));
        }
    }
    findings.extend(tip(change, wanted));
    findings
}

/// A difference that is only the last bits of arithmetic. Our own slack.
const NOTHING_TO_DO: f64 = 1e-9;

fn speed(change: &Change, setup: &Setup, wanted: VolumePerArea) -> Finding {
    let finding = match (setup.control, change.speed) {
        (Some(PressureControl::GroundDriven), _) => Finding::new(
            Weight::Act,
            "change_ground_driven",
            "The pump is driven from the ground, so going faster or slower does not change the rate.",
        )
        .to_do("Set the pump for {wanted}: it must give {times} times what it gives now. Then catch again."),
        (Some(PressureControl::RateController), _) => Finding::new(
            Weight::Act,
            "change_controller",
            "The controller holds the rate, so going faster or slower does not change it. If it was set to {wanted} \
             and puts out {rate}, its own figures are off.",
        )
        .to_do("Check width, speed and flow meter in the controller against tape, timed drive and catch. Then set {wanted}."),
        (None, SpeedChange::DriveIfConstant(_)) => Finding::new(
            Weight::Settle,
            "change_ask_control",
            "What holds the pressure? With a plain regulator, {speed} instead of {speed_now} at the same pressure \
             gives {wanted}. With a pump driven from the ground, or a rate controller, speed changes nothing.",
        )
        .to_do("Say which it is: regulator, ground-driven pump or rate controller."),
        (None, _) => Finding::new(
            Weight::Settle,
            "change_ask_control_and_speed",
            "What holds the pressure, and how fast did you drive? With a plain regulator, driving at {inverse} times \
             the speed gives {wanted}. With a pump driven from the ground, or a rate controller, speed changes nothing.",
        )
        .to_do("Say which it is: regulator, ground-driven pump or rate controller."),
        (Some(PressureControl::Constant), SpeedChange::Drive(_) | SpeedChange::DriveIfConstant(_)) => {
            Finding::new(
                Weight::Act,
                "change_speed",
                "Drive {speed} instead of {speed_now} at the same pressure, and it puts out {wanted}.",
            )
            .to_do("Time the drive again at the new speed, in the gear you will spray in.")
        }
        (Some(PressureControl::Constant), _) => Finding::new(
            Weight::Act,
            "change_speed_by_times",
            "Drive at {inverse} times the speed at the same pressure, and it puts out {wanted}.",
        )
        .to_do("Time the drive again at the new speed, in the gear you will spray in."),
    };
    let mut finding = finding
        .with("rate", Arg::Amount(Amount::new(setup.rate, Kind::Rate)))
        .with("wanted", Arg::Amount(Amount::new(wanted, Kind::Rate)))
        .with("times", Arg::Number(wanted.ratio_to(setup.rate)))
        .with("inverse", Arg::Number(setup.rate.ratio_to(wanted)));
    if let Some(now) = setup.speed {
        finding = finding.with("speed_now", Arg::Amount(Amount::new(now, Kind::Speed)));
    }
    if let SpeedChange::Drive(speed) | SpeedChange::DriveIfConstant(speed) = change.speed {
        finding = finding.with("speed", Arg::Amount(Amount::new(speed, Kind::Speed)));
    }
    finding
}

fn pressure(now: Pressure, new: Pressure, setup: &Setup, wanted: VolumePerArea) -> Option<Finding> {
    let finding = match setup.control {
        // The pump makes the flow; the pressure follows and cannot be set by itself.
        Some(PressureControl::GroundDriven) => return None,
        Some(PressureControl::RateController) => Finding::new(
            Weight::Note,
            "change_controller_pressure",
            "At {wanted} and the same speed the controller will run near {new} instead of {now}.",
        ),
        Some(PressureControl::Constant) | None => Finding::new(
            Weight::Act,
            "change_pressure",
            "Or set {new} instead of {now} at the same speed, and it puts out {wanted}.",
        )
        .to_do("Catch a few tips again at the new pressure."),
    };
    Some(
        finding
            .with("new", Arg::Amount(Amount::new(new, Kind::Pressure)))
            .with("now", Arg::Amount(Amount::new(now, Kind::Pressure)))
            .with("wanted", Arg::Amount(Amount::new(wanted, Kind::Rate))),
    )
}

fn leaves_range(new: Pressure, setup: &Setup, wanted: VolumePerArea) -> Finding {
    let (low, high) = (setup.tip_range.low(), setup.tip_range.high());
    let finding = if new < low {
        Finding::new(
            Weight::Act,
            "change_pressure_too_low",
            "For {wanted} at the same speed it would take {new}. That is under the {low} to {high} these tips are meant for: \
             the fans fold in and leave strips.",
        )
        .to_do("Leave the pressure in that range and fit smaller tips.")
    } else {
        Finding::new(
            Weight::Act,
            "change_pressure_too_high",
            "For {wanted} at the same speed it would take {new}. That is over the {low} to {high} these tips are meant for: \
             the drops get fine and drift.",
        )
        .to_do("Leave the pressure in that range and fit larger tips.")
    };
    let mut finding = finding
        .with("wanted", Arg::Amount(Amount::new(wanted, Kind::Rate)))
        .with("new", Arg::Amount(Amount::new(new, Kind::Pressure)))
        .with("low", Arg::Amount(Amount::new(low, Kind::Pressure)))
        .with("high", Arg::Amount(Amount::new(high, Kind::Pressure)));
    finding.limit_source = Some(setup.tip_range.source());
    finding
}

fn more_than_small(ratio: f64) -> Finding {
    let mut finding = Finding::new(
        Weight::Note,
        "change_pressure_small_only",
        "Pressure is for small corrections: twice the flow takes four times the pressure. High pressure drifts, low \
         pressure leaves strips.",
    )
    .with("change", Arg::Deviation((ratio - 1.0) * 100.0))
    .to_do("For {change} of flow change the tips, or the speed.");
    finding.limit_source =
        Some("Iowa State Univ. Extension and Oklahoma State Univ. Extension; the 10 % is our own");
    finding
}

fn tip(change: &Change, wanted: VolumePerArea) -> Option<Finding> {
    let tip = change.tip?;
    let same = (tip.water_flow.ratio_to(tip.flow) - 1.0).abs() <= NOTHING_TO_DO;
    let finding = match (tip.pressure, same) {
        (Some(_), true) => Finding::new(
            Weight::Note,
            "change_tip",
            "For {wanted} at the speed you drive, a tip must give {water_flow} at {pressure}.",
        ),
        (None, true) => Finding::new(
            Weight::Note,
            "change_tip_any_pressure",
            "For {wanted} at the speed you drive, a tip must give {water_flow} at the pressure you run.",
        ),
        (Some(_), false) => Finding::new(
            Weight::Note,
            "change_tip_other_carrier",
            "For {wanted} at the speed you drive, a tip must give {flow} of your liquid at {pressure}. \
             In the tip's table, which is for water, look for {water_flow}.",
        ),
        (None, false) => Finding::new(
            Weight::Note,
            "change_tip_other_carrier_any_pressure",
            "For {wanted} at the speed you drive, a tip must give {flow} of your liquid at the pressure you run. \
             In the tip's table, which is for water, look for {water_flow}.",
        ),
    };
    let mut finding = finding
        .with("wanted", Arg::Amount(Amount::new(wanted, Kind::Rate)))
        .with("flow", Arg::Amount(Amount::new(tip.flow, Kind::Flow)))
        .with("water_flow", Arg::Amount(Amount::new(tip.water_flow, Kind::Flow)));
    if let Some(pressure) = tip.pressure {
        finding = finding.with("pressure", Arg::Amount(Amount::new(pressure, Kind::Pressure)));
    }
    Some(finding)
}
