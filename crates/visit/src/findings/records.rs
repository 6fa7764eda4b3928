//! What of a visit turned out for certain, counted for a season's records.

use calibration::catch::{Catch, Round, RoundKind, TipState};
use calibration::diagnosis::{Cause, Counts, Diagnosed, Records};
use units::{Flow, Quantity};

use super::Outcome;
use super::catching::CatchOutcome;
use crate::record::Visit;

/// A tip nearer to the middle one than this is sound, if its range stays within twice of it. Our own choice: worn and
/// plugged tips begin at 5 to 8 %.
const SOUND: f64 = 0.05;
/// A cup that is off the others of its tip by more than this was misread, if these are no farther apart than a third of it.
/// Our own choice: three times what hand and marks usually make.
const MISREAD: f64 = 0.06;
/// A swap that leaves less doubt than this is certain. Our own choice.
const CERTAIN: f64 = 0.97;

/// Returns what turned out. Tips and their cups are counted only where every tip of the boom was settled: found sound, put right
/// by cleaning, or replaced by a new one after its size was looked at. What the sections lost is nowhere certain from cups.
#[must_use]
pub fn records(visit: &Visit, outcome: &Outcome, diagnosed: Option<&Diagnosed>) -> Records {
    let mut records = Records::default();
    let Some(catch) = &outcome.catch else { return records };
    if let Some((tips, cups)) = settled(visit, catch) {
        records.tips = tips;
        records.cups = cups;
    }
    for tip in diagnosed.into_iter().flat_map(|diagnosed| &diagnosed.found.tips) {
        let low = tip.probability_of(Cause::PartlyPlugged) + tip.probability_of(Cause::Plugged);
        let Some(at_place) = tip.at_place.filter(|_| low > CERTAIN) else { continue };
        let share = at_place / low;
        if share > CERTAIN {
            records.swaps.learn(&Counts::new([0.0, 1.0]));
        } else if share < 1.0 - CERTAIN {
            records.swaps.learn(&Counts::new([1.0, 0.0]));
        }
    }
    records
}

/// All tips and all cups of the round that counts, where each tip was settled.
fn settled(visit: &Visit, catch: &CatchOutcome) -> Option<(Counts<5>, Counts<2>)> {
    let now = catch.now();
    let middle = middle(catch)?;
    let mean = now.verdicts.summary.groups.iter().find_map(|group| group.mean)?;
    // The mean is drawn along by the very tips in question; the middle one is not.
    let from_middle = |off: f64| (1.0 + off) * mean.ratio_to(middle) - 1.0;
    let mut causes = [0.0; 5];
    let mut cups = [0.0; 2];
    for tip in now.verdicts.summary.tips.iter().filter(|tip| tip.state != TipState::NotCaught) {
        let likely = tip.most_likely();
        let sound = likely.is_some_and(|likely| {
            from_middle(likely.deviation).abs() < SOUND
                && from_middle(likely.low) > -2.0 * SOUND
                && from_middle(likely.high) < 2.0 * SOUND
        });
        let off = likely.map(|likely| from_middle(likely.deviation));
        let cause = if sound { Cause::Sound } else { mended(visit, catch, tip.number, off, middle)? };
        causes[Cause::ALL.iter().position(|other| *other == cause)?] += 1.0;
        let read = now.round.tips.iter().find(|other| other.number == tip.number)?;
        let [right, misread] = right_and_misread(&read.catches, &now.round)?;
        cups[0] += right;
        cups[1] += misread;
    }
    Some((Counts::new(causes), Counts::new(cups)))
}

/// The flow of the middle tip of those that run.
fn middle(catch: &CatchOutcome) -> Option<Flow> {
    let running = catch.now().verdicts.summary.tips.iter().filter(|tip| tip.state == TipState::Runs);
    let mut flows: Vec<Flow> = running.filter_map(|tip| tip.flow).collect();
    flows.sort_by(|one, other| one.si().total_cmp(&other.si()));
    flows.get(flows.len() / 2).copied()
}

/// What a tip that was off must have been, by what put it right.
fn mended(visit: &Visit, catch: &CatchOutcome, number: u32, off: Option<f64>, middle: Flow) -> Option<Cause> {
    for later in &catch.rounds[catch.current + 1..] {
        let Some(tip) = later.verdicts.summary.tips.iter().find(|tip| tip.number == number) else { continue };
        let Some(flow) = tip.flow else { continue };
        let right = (flow.ratio_to(middle) - 1.0).abs() < SOUND;
        match (&later.round.kind, off) {
            (RoundKind::AfterCleaning, None) if right => return Some(Cause::Plugged),
            (RoundKind::AfterCleaning, Some(off)) if right && off < 0.0 => return Some(Cause::PartlyPlugged),
            (RoundKind::NewTips, Some(_)) if right && visit.seen.odd.contains(&number) => {
                return Some(Cause::WrongTip);
            }
            // The sizes were looked through and this one was right: what was too much and is gone was wear.
            (RoundKind::NewTips, Some(off)) if right && off > 0.0 && !visit.seen.odd.is_empty() => {
                return Some(Cause::Worn);
            }
            _ => {}
        }
    }
    None
}

/// How many cups of a tip were right and misread. One or two that agree are right; where two disagree nobody knows which.
fn right_and_misread(catches: &[Catch], round: &Round) -> Option<[f64; 2]> {
    let mut flows: Vec<f64> =
        catches.iter().map(|catch| (catch.volume(round.density) / catch.time()).si()).collect();
    flows.sort_by(f64::total_cmp);
    let middle = *flows.get(flows.len() / 2)?;
    if middle <= 0.0 {
        return Some([flows.len() as f64, 0.0]);
    }
    let off: Vec<f64> = flows.iter().map(|flow| (flow / middle - 1.0).abs()).collect();
    let right = off.iter().filter(|off| **off < MISREAD / 3.0).count();
    let misread = off.iter().filter(|off| **off > MISREAD).count();
    let clear = misread == 0 || right >= 2;
    (clear && right + misread == flows.len()).then_some([right as f64, misread as f64])
}
