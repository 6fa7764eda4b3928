//! Each tip's cups with all that is known of how they were caught: when, at which pressure, under which timed run.

use units::Quantity;

use super::evidence::OneCup;
use super::model::{DiagnosisModel, Swap};
use crate::catch::{Catch, Round, TipCatches, Uncertainties};

/// The state of the boom at which cups are taken, as logarithms of flow.
#[derive(Clone, Copy, Debug)]
pub(super) struct Moment<'a> {
    /// How much more it gives at the last cup of the test than at the first.
    pub drift: f64,
    /// How much more it gives at each other pressure than at that of the test.
    pub changes: &'a [f64],
}

/// A timed run that several tips' cups share.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Run {
    /// Its number.
    pub number: u32,
    /// How far its time may be off: a standard uncertainty, as a share.
    pub spread: f64,
}

/// One tip's cups.
#[derive(Clone, Debug)]
pub(super) struct TipCups<'a> {
    /// The tip and the cups of the round.
    pub tip: &'a TipCatches,
    /// When each of them was caught, from −½ at the first cup of the test to ½ at the last.
    turns: Vec<f64>,
    /// Cups at other pressures, each with the pressure's place.
    pub others: Vec<(usize, &'a Catch)>,
    /// The run its first cup shares with other tips.
    pub run: Option<Run>,
    /// The run that every tip's first cup shares: it shifts the whole boom.
    everyone: Option<u32>,
    /// How much more it gives than its section lets expect: a tip of a group of its own stands on what the others found.
    pub by: f64,
    /// Cups caught after it was swapped, each with how much more the place lets expect than its own.
    pub after: Vec<(f64, &'a Catch)>,
    /// How its causes are weighed beside what was seen of it.
    pub weigh: [f64; 5],
    /// Whether something is known of it that tips with the same readings need not share.
    own: bool,
}

impl<'a> TipCups<'a> {
    /// The cups of some tips of a round, with those at other pressures where these can be compared.
    pub fn of(tips: &[&'a TipCatches], model: &'a DiagnosisModel, compared: bool) -> Vec<Self> {
        let everyone = run_of_everyone(tips, &model.doubts);
        tips.iter()
            .map(|tip| {
                let beside = model.others.iter().enumerate().flat_map(|(place, other)| {
                    let of_tip = other.tips.iter().filter(|one| one.number == tip.number);
                    of_tip.flat_map(move |one| one.catches.iter().map(move |catch| (place, catch)))
                });
                let others: Vec<(usize, &Catch)> = beside.filter(|_| compared).collect();
                // Cups in a known order are each something of their own, and so is a tip that was looked at.
                let swapped = |swap: &Swap| [swap.tips.0, swap.tips.1].contains(&tip.number);
                let own = !model.order.is_empty()
                    || !others.is_empty()
                    || model.swaps.iter().any(swapped)
                    || model.seen.iter().any(|seen| seen.tip() == tip.number);
                let run = first_run(tip, &model.doubts)
                    .filter(|run| everyone.is_none_or(|everyone| everyone.number != run.number))
                    .filter(|run| {
                        tips.iter().filter(|other| first_run(other, &model.doubts) == Some(*run)).count() > 1
                    });
                let everyone = everyone.map(|run| run.number);
                Self {
                    tip,
                    turns: turns_of(tip.number, &model.order),
                    others,
                    run,
                    everyone,
                    by: 0.0,
                    after: Vec::new(),
                    weigh: [1.0; 5],
                    own,
                }
            })
            .collect()
    }

    /// Whether all that is known of two tips is the same.
    pub fn same(&self, other: &Self) -> bool {
        !self.own
            && !other.own
            && self.tip.catches == other.tip.catches
            && self.run == other.run
            && self.by.to_bits() == other.by.to_bits()
    }

    /// The cups as they are taken at a moment: those of the round first, then those at other pressures and those after a swap.
    pub fn taken(&self, moment: &Moment<'_>, doubts: &Uncertainties) -> Vec<OneCup<'a>> {
        let own = core::f64::consts::SQRT_2 * doubts.timer.si();
        let mut cups: Vec<OneCup<'a>> = Vec::new();
        for (place, catch) in self.tip.catches.iter().enumerate() {
            let by = moment.drift * self.turns.get(place).copied().unwrap_or(0.0) + self.by;
            let shared = catch.run().is_some()
                && (catch.run() == self.run.map(|run| run.number) || catch.run() == self.everyone);
            cups.push(OneCup { catch, by, ends: if shared { 0.0 } else { self.besides(own) } });
        }
        for (pressure, catch) in &self.others {
            let by = moment.changes.get(*pressure).copied().unwrap_or(0.0) + self.by;
            cups.push(OneCup { catch, by, ends: self.besides(own) });
        }
        for (by, catch) in &self.after {
            cups.push(OneCup { catch, by: by + self.by, ends: self.besides(own) });
        }
        cups
    }

    /// The time of a cup beside the shared run: against tips of that run it is off by the run's error too.
    fn besides(&self, own: f64) -> f64 {
        if self.run.is_some() { core::f64::consts::SQRT_2 * own } else { own }
    }
}

/// When each cup of a tip was caught, from −½ at the first cup of the test to ½ at the last.
fn turns_of(number: u32, order: &[u32]) -> Vec<f64> {
    let last = (order.len().max(2) - 1) as f64;
    let turns = order.iter().enumerate().filter(|(_, tip)| **tip == number);
    turns.map(|(turn, _)| turn as f64 / last - 0.5).collect()
}

/// The run of a tip's first cup.
fn first_run(tip: &TipCatches, doubts: &Uncertainties) -> Option<Run> {
    let catch = tip.catches.first()?;
    let number = catch.run()?;
    Some(Run { number, spread: core::f64::consts::SQRT_2 * doubts.timer.ratio_to(catch.time()) })
}

/// The run that every tip's first cup shares, where there is one.
fn run_of_everyone(tips: &[&TipCatches], doubts: &Uncertainties) -> Option<Run> {
    let mut caught = tips.iter().filter(|tip| !tip.catches.is_empty());
    let first = first_run(caught.next()?, doubts)?;
    let mut others = caught.peekable();
    others.peek()?;
    others.all(|tip| first_run(tip, doubts).is_some_and(|run| run.number == first.number)).then_some(first)
}

/// How far the time that every cup shares may be off, as a share.
pub(super) fn shared_by_all(tips: &[&TipCatches], doubts: &Uncertainties) -> f64 {
    run_of_everyone(tips, doubts).map_or(0.0, |run| run.spread)
}

/// How far the times that several tips' cups share may be off in a round, as a share.
pub(super) fn shared_by_some(round: &Round, doubts: &Uncertainties) -> f64 {
    let runs: Vec<Run> = round.tips.iter().filter_map(|tip| first_run(tip, doubts)).collect();
    let shared = runs.iter().filter(|run| runs.iter().filter(|other| other.number == run.number).count() > 1);
    shared.map(|run| run.spread).fold(0.0, f64::max)
}
