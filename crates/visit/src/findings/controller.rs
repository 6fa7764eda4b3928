//! The checker checked: what the controller shows against cups, drive and boom, and what closing its sections does.

use calibration::catch::total_flow;
use calibration::controller::{
    Closed, Pulsing, ShownCheck, ShownWhat, closing_findings, pulsing_finding, widths_findings,
};
use calibration::doubt::DoubtOf;
use calibration::drive::DriveSpeed;
use sprayer::PressureControl;
use units::{Amount, Arg, AsWritten, Finding, Kind, Length, Weight};

use super::catching::{CatchOutcome, USUAL_GAUGE_MARKS};
use super::rate::RateOutcome;
use crate::record::{Answer, Coverage, Machine, Visit};

/// What is told of the controller.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ControllerOutcome {
    /// The flow it shows against all tips together.
    pub flow: Option<ShownCheck>,
    /// The speed it shows against the timed drive.
    pub speed: Option<ShownCheck>,
    /// Everything worth telling.
    pub findings: Vec<Finding>,
}

/// How valves that pulse stood while cups were caught.
pub(super) fn pulsing(visit: &Visit) -> Pulsing {
    let facts = &visit.controller;
    match facts.valves_pulse {
        Some(Answer::Yes) => Pulsing::with_duty(facts.duty),
        Some(Answer::No) => Pulsing::None,
        // Who wrote a duty down has such valves.
        None => facts.duty.map_or(Pulsing::None, |duty| Pulsing::with_duty(Some(duty))),
    }
}

/// Works it out, where there is anything about a controller.
pub(super) fn controller(
    visit: &Visit,
    speed: Option<&DriveSpeed>,
    catch: Option<&CatchOutcome>,
    rate: Option<&RateOutcome>,
) -> Option<ControllerOutcome> {
    let facts = &visit.controller;
    let mut found = ControllerOutcome::default();
    if catch.is_some() {
        found.findings.extend(pulsing_finding(pulsing(visit)));
    }
    found.findings.extend(hold_in_manual(visit));
    if let (Some(shown), Some(catch), Some(machine)) = (&facts.shown_flow, catch, &visit.machine)
        && pulsing(visit).cups_tell()
    {
        let summary = &catch.now().verdicts.summary;
        if let Some(mut real) = total_flow(&catch.now().round, summary, &catch.doubts) {
            let uncaught: usize = summary.groups.iter().map(|group| group.uncaught.len()).sum();
            real.doubt = real.doubt.own(DoubtOf::TipsNotCaught, unseen(uncaught, machine.tips()));
            let check = ShownCheck::new(ShownWhat::Flow, shown.value(), &real);
            found.findings.push(check.finding());
            found.flow = Some(check);
            found.findings.extend(scaled(uncaught, machine.tips()));
        }
    }
    if let (Some(shown), Some(speed)) = (&facts.shown_speed, speed) {
        let check = ShownCheck::new(ShownWhat::Speed, shown.value(), &speed.speed);
        found.findings.push(check.finding());
        found.speed = Some(check);
    }
    if let (Some(shown), Some(rate)) = (&facts.shown_rate, rate) {
        found.findings.push(shown_rate(shown.value(), rate));
    }
    if let Some(real) = visit.machine.as_ref().and_then(section_widths).filter(|_| !facts.widths.is_empty()) {
        let entered: Vec<Length> = facts.widths.iter().map(AsWritten::value).collect();
        found.findings.extend(widths_findings(&entered, &real));
    }
    let closed: Vec<Closed> = facts
        .closed
        .iter()
        .map(|one| Closed {
            section: one.section,
            before: one.before.value(),
            closed: one.closed.value(),
            after: one.after.as_ref().map(AsWritten::value),
        })
        .collect();
    let marks = visit.setting.gauge_marks.as_ref().map_or(USUAL_GAUGE_MARKS, AsWritten::value);
    found.findings.extend(closing_findings(&closed, marks));
    (!found.findings.is_empty()).then_some(found)
}

/// Each section's tips times the spacing, from the left.
fn section_widths(machine: &Machine) -> Option<Vec<Length>> {
    let Coverage::Boom(boom) = &machine.coverage else { return None };
    let tips = boom.positions().chunk_by(|one, next| one.section == next.section);
    Some(tips.map(|section| boom.spacing() * section.len() as f64).collect())
}

/// Tips that nobody caught spread by this share at least, however alike the few cups read: a sensor is held to 5 %, and
/// three cups that agree do not show what the others do. Our assumption; new tips spread by 1 to 3 %.
const UNSEEN_SPREAD: f64 = 0.03;

/// What tips that were not caught add to the doubt of the sum, as a share of it: their own spread, and that of the mean they
/// are taken for.
fn unseen(uncaught: usize, tips: u32) -> f64 {
    let (missing, all) = (uncaught as f64, f64::from(tips.max(1)));
    let caught = (all - missing).max(1.0);
    UNSEEN_SPREAD * (missing + missing * missing / caught).sqrt() / all
}

/// Some tips were not caught: what they give is taken from the others, so the sum is the less sure.
fn scaled(uncaught: usize, tips: u32) -> Option<Finding> {
    let uncaught = u32::try_from(uncaught).unwrap_or(u32::MAX);
    (uncaught > 0).then(|| {
        Finding::new(
            Weight::Note,
            "controller_flow_scaled",
            "{uncaught} of {tips} tips were not caught. They are taken to give what the others give, so the sum beside the controller is the less sure.",
        )
        .with("uncaught", Arg::Count(uncaught))
        .with("tips", Arg::Count(tips))
    })
}

/// The rate that is shown beside the rate that was measured. Flow, speed and widths have limits of their own; it has none.
fn shown_rate(shown: units::VolumePerArea, rate: &RateOutcome) -> Finding {
    let real = rate.main().rate;
    Finding::new(
        Weight::Note,
        "controller_rate",
        "The controller shows {shown}; measured it is {real}: {error} off.",
    )
    .with("shown", Arg::Amount(Amount::new(shown, Kind::Rate)))
    .with("real", Arg::Amount(Amount::ranged(&real, Kind::Rate)))
    .with("error", Arg::Deviation((shown.ratio_to(real.value) - 1.0) * 100.0))
}

/// How a controller is held still for a catch, unless it was.
fn hold_in_manual(visit: &Visit) -> Option<Finding> {
    let held_by = visit.machine.as_ref().and_then(|machine| machine.held_by);
    let setting = match &visit.catch {
        Some(catch) => catch.setting.over(&visit.setting),
        None => visit.setting.clone(),
    };
    let manual = setting.controller.is_some_and(|words| words.to_lowercase().contains("manual"));
    (held_by == Some(PressureControl::RateController) && !manual).then(|| {
        Finding::new(
            Weight::Note,
            "controller_hold",
            "A parked sprayer has no speed, so a controller left in automatic shuts its valve or hunts: cups then say nothing.",
        )
        .to_do(
            "Put it in manual, switch boom and all sections on, set the pressure of the field with its switch, and leave it alone until the last cup. Where it will not spray standing still, its manual says how to give it a fixed speed; take that out again afterwards.",
        )
    })
}
