//! Every check that could be made, with what it settles and the minutes it takes.

use units::Time;

use super::answer::{Diagnosis, TipDiagnosis};
use super::cause::Cause;
use super::model::DiagnosisModel;
use super::next::{CheckKind, Checking, NextCheck};
use super::parts::BoomParts;
use super::tell_tip::neighbour;
use super::worth::{loss, one_look, one_more_cup, test};
use crate::catch::Round;

/// How often a pressure reading tells a restricted section, and a free one, for what it is. Our assumption: a gauge
/// good to 3 % against 8 % of pressure.
const PRESSURE_TELLS: (f64, f64) = (0.95, 0.95);
/// How often the strainer of a restricted section is dirty, and that of a free one clean. Our assumption: valves and
/// hoses restrict too, and many strainers are a little dirty.
const STRAINER_TELLS: (f64, f64) = (0.80, 0.85);
/// How often a swap tells what goes along, and what stays, for what it is. Our assumption: both cups may be misread.
const SWAP_TELLS: (f64, f64) = (0.95, 0.95);
/// How often a gauge at a tip tells that the pressure is why a whole boom is off, and that it is not. Our assumption.
const AT_TIP_TELLS: (f64, f64) = (0.95, 0.90);
/// The same of a second pressure, which does not see a gauge whose scale is off. Our assumption.
const SECOND_TELLS: (f64, f64) = (0.80, 0.90);
/// The same of a new tip: it may be off itself. Our assumption.
const NEW_TIP_TELLS: (f64, f64) = (0.90, 0.90);
/// A boom off by more than this is worth asking about. Our own choice, as in `patterns`.
const BOOM_OFF: f64 = 0.04;
/// Tips settled better than this are not looked at. Our own choice.
const LEAST: f64 = 0.005;
/// So many tips are caught at a second pressure. Our own choice: six give the zero to 0.08 bar at 2 and 4 bar.
const AT_SECOND: usize = 6;

fn minutes(time: Time) -> f64 {
    time.as_seconds() / 60.0
}

/// Returns all of them, worth it or not.
pub(super) fn every_check(
    round: &Round,
    found: &Diagnosis,
    model: &DiagnosisModel,
    costs: &Checking,
) -> Vec<NextCheck> {
    let mut all: Vec<NextCheck> = Vec::new();
    if found.boom.is_off() {
        // Until it is switched on nothing can be looked at.
        return all;
    }
    let mut again: Vec<(u32, f64, f64)> = Vec::new();
    let mut looks: Vec<(u32, f64, f64)> = Vec::new();
    let mut swaps: Vec<NextCheck> = Vec::new();
    for tip in &found.tips {
        let Some(cups) = round.tips.iter().find(|other| other.number == tip.number) else { continue };
        if loss(&tip.causes) <= LEAST && tip.probability_of(Cause::PartlyPlugged) <= LEAST {
            continue;
        }
        let more = one_more_cup(tip, cups, round, model);
        if let Some((settles, time)) = more {
            swaps.extend(swap(tip, settles, time, found, model, costs));
        }
        if loss(&tip.causes) <= LEAST {
            continue;
        }
        if let Some((settles, time)) = more {
            again.push((tip.number, settles, minutes(time + costs.cup)));
        }
        looks.push((tip.number, one_look(tip), minutes(costs.look)));
    }
    all.extend(together(CheckKind::CatchAgain, again, costs));
    all.extend(together(CheckKind::LookAtTip, looks, costs));
    let rate = |check: &NextCheck| check.settles / check.minutes;
    all.extend(swaps.into_iter().max_by(|one, other| rate(one).total_cmp(&rate(other))));
    all.extend(of_sections(found, costs));
    all.extend(of_boom(round, found, model, costs));
    all
}

/// One check at several tips: those worth it by themselves.
fn together(kind: CheckKind, mut tips: Vec<(u32, f64, f64)>, costs: &Checking) -> Option<NextCheck> {
    tips.retain(|(_, settles, minutes)| settles / minutes >= costs.worth);
    tips.sort_by(|one, other| (other.1 / other.2).total_cmp(&(one.1 / one.2)));
    tips.truncate(costs.most_tips);
    let settles = tips.iter().map(|(_, settles, _)| settles).sum();
    let minutes = tips.iter().map(|(_, _, minutes)| minutes).sum();
    let mut numbers: Vec<u32> = tips.iter().map(|(tip, _, _)| *tip).collect();
    numbers.sort_unstable();
    (!numbers.is_empty()).then_some(NextCheck { kind, tips: numbers, section: None, settles, minutes })
}

/// Swapping a low tip with its neighbour: another cup of it, and whether what is low sits in the tip or at its place.
fn swap(
    tip: &TipDiagnosis,
    cup: f64,
    time: Time,
    found: &Diagnosis,
    model: &DiagnosisModel,
    costs: &Checking,
) -> Option<NextCheck> {
    // One that gives nothing is opened anyway.
    let low = tip.probability_of(Cause::PartlyPlugged);
    if tip.at_place.is_some() || low <= LEAST {
        return None;
    }
    let other = neighbour(tip, found)?;
    let mut tips = vec![tip.number, other];
    tips.sort_unstable();
    Some(NextCheck {
        kind: CheckKind::SwapTips,
        tips,
        section: None,
        settles: cup + low * test(model.priors.at_place(), SWAP_TELLS.0, SWAP_TELLS.1),
        minutes: minutes(costs.swap) + 2.0 * minutes(time + costs.cup),
    })
}

/// Pressures and strainers of sections.
fn of_sections(found: &Diagnosis, costs: &Checking) -> Vec<NextCheck> {
    if found.sections.len() < 2 {
        return Vec::new();
    }
    let of = |(place, section): (usize, &super::answer::SectionDiagnosis)| {
        let tell = |kind, (sensitive, specific), time: Time| NextCheck {
            kind,
            tips: section.tips.clone(),
            section: Some(place),
            settles: test(section.probability_restricted, sensitive, specific),
            minutes: minutes(time),
        };
        [
            tell(CheckKind::ReadPressure, PRESSURE_TELLS, costs.pressure),
            tell(CheckKind::OpenStrainer, STRAINER_TELLS, costs.strainer),
        ]
    };
    found.sections.iter().enumerate().flat_map(of).collect()
}

/// Why a whole boom is high or low: the pressure, or the set of tips.
fn of_boom(round: &Round, found: &Diagnosis, model: &DiagnosisModel, costs: &Checking) -> Vec<NextCheck> {
    let off = found.boom.low > BOOM_OFF || found.boom.high < -BOOM_OFF;
    let known = found.boom.parts.as_ref().is_some_and(BoomParts::says_why);
    if found.new_flow.is_none() || !off || known {
        return Vec::new();
    }
    let chance = chance_of_pressure(found.boom.offset, model);
    let check = |kind, tips: Vec<u32>, (sensitive, specific), minutes| NextCheck {
        kind,
        tips,
        section: None,
        settles: test(chance, sensitive, specific),
        minutes,
    };
    let mut checks = Vec::new();
    if model.tip_pressures.is_empty() {
        checks.push(check(CheckKind::ReadPressure, Vec::new(), AT_TIP_TELLS, minutes(costs.pressure)));
    }
    let cup = round.time + costs.cup;
    if model.others.is_empty() {
        let tips = surest(found);
        let cups = tips.len() as f64 * minutes(cup);
        checks.push(check(CheckKind::SecondPressure, tips, SECOND_TELLS, minutes(costs.set_pressure) + cups));
    }
    if model.new_tip.is_empty() {
        checks.push(check(CheckKind::NewTip, Vec::new(), NEW_TIP_TELLS, minutes(costs.new_tip + cup)));
    }
    checks
}

/// The chance that the pressure is why a boom is off so much, not the set: each kind of boom by how likely it is so far off.
fn chance_of_pressure(offset: f64, model: &DiagnosisModel) -> f64 {
    let off = libm::log1p(offset.max(-0.9));
    let (mut all, mut pressure) = (0.0, 0.0);
    for law in &model.priors.parts {
        let by_pressure = 0.25 * (law.gauge * law.gauge + law.zero * law.zero);
        let whole = law.set * law.set + by_pressure;
        let weight = law.weight * libm::exp(-0.5 * off * off / whole) / whole.sqrt();
        all += weight;
        pressure += weight * by_pressure / whole;
    }
    if all > 0.0 { pressure / all } else { 0.5 }
}

/// Some tips that are surest to be sound, from left to right.
fn surest(found: &Diagnosis) -> Vec<u32> {
    let mut tips: Vec<&TipDiagnosis> = found.tips.iter().filter(|tip| !tip.misread.is_empty()).collect();
    tips.sort_by(|one, other| other.in_order.total_cmp(&one.in_order));
    let mut numbers: Vec<u32> = tips.iter().take(AT_SECOND).map(|tip| tip.number).collect();
    numbers.sort_unstable();
    numbers
}
