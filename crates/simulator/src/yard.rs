//! A boom, a kit and somebody who catches: what is written down, and what truly went on.

use units::{Time, Volume};

use crate::boom::TrueBoom;
use crate::cup::CupKind;
use crate::kit::Kit;
use crate::plan::{Order, TestPlan};
use crate::random::{Part, Random};
use crate::slip::Slip;

/// One cup as it was written down, with what nobody at the boom knows beside it.
#[derive(Clone, Debug, PartialEq)]
pub struct CaughtCup {
    /// The tip's number from the left.
    pub tip: u32,
    /// The reading as written, `"14 fl oz"`.
    pub reading: String,
    /// The marks it was read to, `"1 fl oz"`.
    pub marks: String,
    /// The time as written, `"30 s"`.
    pub time: String,
    /// The timed run it was caught under; cups of one run have the same number.
    pub run: u32,
    /// Its place in the order of all cups, from 1.
    pub order: u32,
    /// What truly went on.
    pub truth: CupTruth,
}

/// What truly went on at one cup.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CupTruth {
    /// How long the cup stood under the tip.
    pub time: Time,
    /// What the tip gave in that time.
    pub volume: Volume,
    /// The slip that was made.
    pub slip: Slip,
}

/// A boom that is being tested. It goes on where it stopped: later catches are drawn after the earlier ones.
#[derive(Clone, Debug)]
pub struct Yard {
    boom: TrueBoom,
    kit: Kit,
    random: Random,
    clock: Time,
    runs: u32,
    cups: u32,
}

impl Yard {
    /// A boom and a kit; what happens at the catches belongs to the seed.
    #[must_use]
    pub fn new(boom: TrueBoom, kit: Kit, seed: u64) -> Self {
        let random = Random::new(seed, Part::Catching);
        Self { boom, kit, random, clock: Time::ZERO, runs: 0, cups: 0 }
    }

    /// The boom as it truly is.
    #[must_use]
    pub const fn boom(&self) -> &TrueBoom {
        &self.boom
    }

    /// The kit as it truly is.
    #[must_use]
    pub const fn kit(&self) -> &Kit {
        &self.kit
    }

    /// How long it has taken so far.
    #[must_use]
    pub const fn clock(&self) -> Time {
        self.clock
    }

    /// Catches the whole boom as planned.
    pub fn test(&mut self, plan: &TestPlan) -> Vec<CaughtCup> {
        let numbers: Vec<u32> = self.boom.tips().iter().map(|tip| tip.number).collect();
        let at_once = usize::try_from(plan.cups_at_once.max(1)).unwrap_or(1);
        let mut caught = Vec::new();
        for _ in 0..plan.repeats {
            for tips in numbers.chunks(at_once) {
                caught.extend(self.catch(tips, plan.time, plan.cup));
            }
        }
        if plan.order == Order::FirstAgainAtTheEnd {
            caught.extend(self.catch(numbers.get(..1).unwrap_or(&[]), plan.time, plan.cup));
        }
        caught
    }

    /// Catches some tips under one timed run. Numbers that are not on the boom are passed over.
    pub fn catch(&mut self, tips: &[u32], time: Time, cup: CupKind) -> Vec<CaughtCup> {
        self.runs += 1;
        let hands = *self.kit.hands();
        let times = hands.slips.of_run(&mut self.random);
        let true_time = self.kit.watch().run(time * times, &mut self.random);
        // The flow in the middle of the catch: over a straight drift that is its mean.
        let middle = self.clock + true_time * 0.5;
        let cup = self.kit.cup(cup);
        let mut caught = Vec::with_capacity(tips.len());
        for number in tips {
            let Some(flow) = self.boom.flow_of(*number, middle) else { continue };
            let volume = flow * true_time;
            let in_cup = hands.handled(volume, &mut self.random);
            let (marks, slip) = hands.read(&cup, in_cup, &mut self.random);
            let slip =
                if slip == Slip::None && (times - 1.0).abs() > f64::EPSILON { Slip::WrongTime } else { slip };
            self.cups += 1;
            caught.push(CaughtCup {
                tip: *number,
                reading: cup.kind.text(marks),
                marks: cup.kind.step_text(),
                time: format!("{} s", time.as_seconds()),
                run: self.runs,
                order: self.cups,
                truth: CupTruth { time: true_time, volume, slip },
            });
        }
        self.clock = self.clock + true_time + hands.between_runs;
        caught
    }
}
