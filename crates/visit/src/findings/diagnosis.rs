//! What is most likely wrong, from the cups of a visit and what else was read and seen.

use calibration::catch::{Catch, RoundKind, TipCatches};
use calibration::diagnosis::{
    Checking, Diagnosed, DiagnosisModel, Gauge, Looked, OtherPressure, Priors, Rated, Seen, Swap,
    TipPressure, diagnose_and_tell,
};
use calibration::doubt::of_marks;
use units::{AsWritten, Pressure};

use super::catching::{CatchOutcome, USUAL_GAUGE_MARKS, outlet};
use super::error::CheckError;
use super::{Outcome, fitted};
use crate::record::{Answer, CatchFacts, LookItem, RoundFacts, Setting, Visit};

/// Returns what is most likely wrong and what to look at next, in the round that counts now; nothing where no cup was caught.
///
/// `outcome` is what [`super::findings`] made of the same visit. This is not part of it because it takes some milliseconds:
/// ask when it is shown. Rounds at another pressure and rounds of swapped tips count with the round that counts now, as long
/// as nothing else was done in between.
///
/// *Errors*: no cup of the round tells anything, or a pressure of nothing.
pub fn diagnosis(visit: &Visit, outcome: &Outcome) -> Result<Option<Diagnosed>, CheckError> {
    diagnosis_with(visit, outcome, &Priors::default())
}

/// The same with what is believed beforehand, which a season's own records may have brought up to date.
///
/// *Errors*: those of [`diagnosis`].
pub fn diagnosis_with(
    visit: &Visit,
    outcome: &Outcome,
    priors: &Priors,
) -> Result<Option<Diagnosed>, CheckError> {
    let visit = &*super::sets::in_use(visit);
    let (Some(facts), Some(catch)) = (&visit.catch, &outcome.catch) else { return Ok(None) };
    let setting = facts.setting.over(&visit.setting);
    let pressure = facts.rounds.get(catch.current).and_then(|round| pressure_of(round, &setting));
    let rated = fitted::rated(visit)?.zip(pressure).map(|(rated, pressure)| Rated { rated, pressure });
    let model = DiagnosisModel {
        doubts: catch.doubts,
        priors: priors.clone(),
        seen: seen(visit, catch),
        looked: looked(visit),
        others: others(facts, catch, &setting),
        swaps: swaps(facts, catch),
        new_tip: catch.new_tip.clone(),
        tip_pressures: tip_pressures(facts),
        gauge: gauge(visit, &setting),
        ..DiagnosisModel::default()
    };
    let round = &catch.now().round;
    diagnose_and_tell(round, outlet(visit), rated, &model, &Checking::default())
        .map(Some)
        .map_err(CheckError::of("catch"))
}

/// What the gauge showed in a round. After it was changed, nobody knows unless it was written down.
fn pressure_of(round: &RoundFacts, setting: &Setting) -> Option<Pressure> {
    match (&round.pressure, &round.kind) {
        (Some(own), _) => Some(own.value()),
        (None, RoundKind::PressureChanged) => None,
        (None, _) => setting.pressure.as_ref().map(AsWritten::value),
    }
}

/// The rounds at other pressures between which and the round that counts now nothing but the pressure was changed.
fn others(facts: &CatchFacts, catch: &CatchOutcome, setting: &Setting) -> Vec<OtherPressure> {
    let mut places = Vec::new();
    let mut place = catch.current;
    while place > 0 && facts.rounds.get(place).is_some_and(|round| round.kind == RoundKind::PressureChanged) {
        place -= 1;
        places.push(place);
    }
    let later = facts.rounds.iter().enumerate().skip(catch.current + 1);
    let same =
        later.take_while(|(_, round)| matches!(round.kind, RoundKind::AsFound | RoundKind::PressureChanged));
    places.extend(same.filter(|(_, round)| round.kind == RoundKind::PressureChanged).map(|(place, _)| place));
    let of = |place: &usize| {
        let pressure = pressure_of(facts.rounds.get(*place)?, setting)?;
        let tips = catch.rounds.get(*place)?.round.tips.iter();
        let tips: Vec<TipCatches> = tips.filter(|tip| !tip.catches.is_empty()).cloned().collect();
        Some(OtherPressure { pressure, tips })
    };
    places.iter().filter_map(of).collect()
}

/// Tips swapped after the round that counts now, nothing else being done before.
fn swaps(facts: &CatchFacts, catch: &CatchOutcome) -> Vec<Swap> {
    let mut swaps: Vec<Swap> = Vec::new();
    for (place, round) in facts.rounds.iter().enumerate().skip(catch.current + 1) {
        match round.kind {
            RoundKind::AsFound => continue,
            RoundKind::Swapped => {}
            _ => break,
        }
        let caught: Vec<u32> =
            round.tips.iter().filter(|(_, readings)| !readings.is_empty()).map(|(tip, _)| *tip).collect();
        let named = if round.swapped.is_empty() { &caught } else { &round.swapped };
        let [one, other] = named.as_slice() else { continue };
        // A tip that is moved twice is not followed any further.
        if swaps.iter().any(|swap| [swap.tips.0, swap.tips.1].iter().any(|tip| tip == one || tip == other)) {
            break;
        }
        let cups = |number: u32| -> Vec<Catch> {
            let tips = catch.rounds.get(place).map(|round| round.round.tips.iter());
            tips.into_iter()
                .flatten()
                .filter(|tip| tip.number == number)
                .flat_map(|tip| tip.catches.clone())
                .collect()
        };
        swaps.push(Swap { tips: (*one, *other), after: [cups(*one), cups(*other)] });
    }
    swaps
}

fn tip_pressures(facts: &CatchFacts) -> Vec<TipPressure> {
    let of = |read: &crate::record::TipPressureFacts| TipPressure {
        tip: read.tip,
        pressure: read.pressure.value(),
        doubt: of_marks(read.marks.as_ref().map_or(USUAL_GAUGE_MARKS, AsWritten::value)),
    };
    facts.tip_pressures.iter().map(of).collect()
}

fn gauge(visit: &Visit, setting: &Setting) -> Gauge {
    Gauge {
        doubt: of_marks(setting.gauge_marks.as_ref().map_or(USUAL_GAUGE_MARKS, AsWritten::value)),
        rests_at: visit.seen.gauge_rests_at.as_ref().map(AsWritten::value),
    }
}

/// What was seen of single tips. Who names some has looked at the others too.
fn seen(visit: &Visit, catch: &CatchOutcome) -> Vec<Seen> {
    let numbers = || catch.now().round.tips.iter().map(|tip| tip.number);
    let mut seen = Vec::new();
    let facts = &visit.seen;
    if !facts.streaky.is_empty() {
        seen.extend(numbers().map(|tip| {
            if facts.streaky.contains(&tip) { Seen::StreakyFan { tip } } else { Seen::EvenFan { tip } }
        }));
    }
    if !facts.odd.is_empty() {
        seen.extend(numbers().map(|tip| {
            if facts.odd.contains(&tip) { Seen::WrongSize { tip } } else { Seen::RightSize { tip } }
        }));
    }
    seen.extend(numbers().filter(|tip| facts.dripping.contains(tip)).map(|tip| Seen::Drips { tip }));
    seen
}

/// What the look tells of the sprayer as a whole, where single tips and figures do not tell it better.
fn looked(visit: &Visit) -> Vec<Looked> {
    let facts = &visit.seen;
    let better = |item: LookItem| match item {
        LookItem::TipsAlike => !facts.odd.is_empty(),
        LookItem::NoDripAfter5S => !facts.dripping.is_empty(),
        LookItem::GaugeBackToZero => facts.gauge_rests_at.is_some(),
        _ => false,
    };
    let answers = visit.look.iter().filter(|(item, _)| !better(*item));
    let mut looked: Vec<Looked> = answers
        .filter_map(|(item, answer)| Looked::from_answer(item.word(), *answer == Answer::Yes))
        .collect();
    looked.extend(facts.foam.and_then(|answer| Looked::from_answer("foam", answer == Answer::Yes)));
    looked
}
