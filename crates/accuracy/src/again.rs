//! Catching again: what is named as worth it, tips taken at random, or all; and what each way settles for its minutes.

use calibration::verdict::{NextCatch, Settles, next_catches};
use simulator::{CupKind, MarkUnit, Part, Random, TestPlan, Yard};
use units::{Time, Verdict};

use crate::calls::{Call, by_boom, judged, model, summary};
use crate::draw::{Draw, DrawError, yard};
use crate::ratio::{Counted, Ratio};
use crate::split::{Cores, in_order};
use crate::world::World;
use crate::written::{WrittenCup, round};

/// What is caught again after every tip was caught once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Again {
    /// Nothing.
    Nothing,
    /// Three tips at random, as the first time.
    ThreeAtRandom,
    /// As many tips as are named, at random, with the cup and for the time that is named.
    AsManyAtRandom,
    /// What is named as worth it, once.
    Named,
    /// What is named, and what is then named, until nothing is; three goes at most.
    NamedUntilDone,
    /// All, as the first time.
    All,
}

impl Again {
    /// Every way.
    pub const EACH: [Self; 6] = [
        Self::Nothing,
        Self::ThreeAtRandom,
        Self::AsManyAtRandom,
        Self::Named,
        Self::NamedUntilDone,
        Self::All,
    ];

    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Nothing => "nothing again",
            Self::ThreeAtRandom => "three tips at random, same cup and time",
            Self::AsManyAtRandom => "as many as named, at random, cup and time as named",
            Self::Named => "what is named, once",
            Self::NamedUntilDone => "what is named, until nothing is (three goes at most)",
            Self::All => "all tips, same cup and time",
        }
    }
}

/// What a way of catching again came to, for each boom.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Came {
    /// Wrong calls.
    pub wrong: Ratio,
    /// Sound tips called outside.
    pub false_alarms: Ratio,
    /// Tips left open.
    pub open: Ratio,
    /// Of true faults, those called outside.
    pub faults_found: Ratio,
    /// Cups caught again.
    pub cups: Ratio,
    /// Minutes for them: their time, and 20 s each to walk, pour and read.
    pub minutes: Ratio,
    /// Of the tips that a named catch said it would settle, in calls: what it said.
    pub said: Ratio,
    /// What it came to: the calls' cost before less that after, counted as it counts them, by the truth.
    pub came: Ratio,
}

/// Returns what each way of catching again came to on the same booms after the same first cups.
///
/// *Errors*: the first draw that cannot be made.
pub fn again(world: &World, draws: u32, from: u64, cores: Cores) -> Result<Vec<(Again, Came)>, DrawError> {
    let each = in_order(draws, cores, |place| {
        let seed = from + u64::from(place);
        let first = FirstGo::of(world, seed)?;
        Again::EACH.map(|how| first.then(how, seed)).into_iter().collect::<Result<Vec<_>, DrawError>>()
    });
    let mut all: Vec<(Again, Came)> = Again::EACH.map(|how| (how, Came::default())).to_vec();
    for boom in each {
        for ((_, came), counts) in all.iter_mut().zip(boom?) {
            came.boom(&counts);
        }
    }
    Ok(all)
}

impl Came {
    fn boom(&mut self, counts: &Counts) {
        let per_boom = |so: f64| Counted { so, of: 1.0 };
        self.wrong.draw(per_boom(counts.wrong));
        self.false_alarms.draw(per_boom(counts.false_alarms));
        self.open.draw(per_boom(counts.open));
        self.faults_found.draw(Counted { so: counts.found, of: counts.faults });
        self.cups.draw(per_boom(counts.cups));
        self.minutes.draw(per_boom(counts.minutes));
        self.said.draw(per_boom(counts.said));
        self.came.draw(per_boom(counts.came));
    }
}

#[derive(Default)]
struct Counts {
    wrong: f64,
    false_alarms: f64,
    open: f64,
    found: f64,
    faults: f64,
    cups: f64,
    minutes: f64,
    said: f64,
    came: f64,
}

/// Every tip caught once.
struct FirstGo {
    yard: Yard,
    plan: TestPlan,
    cups: Vec<WrittenCup>,
    draw: Draw,
}

impl FirstGo {
    fn of(world: &World, seed: u64) -> Result<Self, DrawError> {
        let (mut yard, plan) = yard(world, seed)?;
        let plan = TestPlan { repeats: 1, cups_at_once: 1, ..plan };
        let draw = Draw::tested(&mut yard.clone(), &plan, world.told)?;
        let cups = yard.test(&plan).iter().map(|cup| WrittenCup::of(cup, 1)).collect();
        Ok(Self { yard, plan, cups, draw })
    }

    /// Goes on in one way; the yard is where the first go left it, whichever way.
    fn then(&self, how: Again, seed: u64) -> Result<Counts, DrawError> {
        let mut go = Go::after(self);
        let all: Vec<u32> = self.yard.boom().tips().iter().map(|tip| tip.number).collect();
        let mut random = Random::new(seed, Part::Choice);
        let same = |tips: Vec<u32>| Wanted { tips, time: self.plan.time, cup: self.plan.cup };
        let before = go.calls()?;
        match how {
            Again::Nothing => {}
            Again::ThreeAtRandom => go.catch(&same(some_of(all, 3, &mut random)))?,
            Again::All => go.catch(&same(all))?,
            Again::AsManyAtRandom => {
                for named in go.named(&self.plan)? {
                    let tips = some_of(all.clone(), named.0.tips.len(), &mut random);
                    go.catch(&Wanted { tips, ..named.0 })?;
                }
            }
            Again::Named | Again::NamedUntilDone => {
                let goes = if how == Again::Named { 1 } else { 3 };
                for _ in 0..goes {
                    let named = go.named(&self.plan)?;
                    if named.is_empty() {
                        break;
                    }
                    for (wanted, next) in named {
                        go.said += next.settles;
                        go.catch(&wanted)?;
                    }
                }
            }
        }
        let after = go.calls()?;
        Ok(go.counts(&before, &after))
    }
}

struct Wanted {
    tips: Vec<u32>,
    time: Time,
    cup: CupKind,
}

struct Go {
    yard: Yard,
    cups: Vec<WrittenCup>,
    draw: Draw,
    caught: f64,
    minutes: f64,
    said: f64,
}

impl Go {
    fn after(first: &FirstGo) -> Self {
        Self {
            yard: first.yard.clone(),
            cups: first.cups.clone(),
            draw: first.draw.clone(),
            caught: 0.0,
            minutes: 0.0,
            said: 0.0,
        }
    }

    /// What the inference names now.
    fn named(&self, plan: &TestPlan) -> Result<Vec<(Wanted, NextCatch)>, DrawError> {
        let summary = summary(&self.draw)?;
        let judged = judged(&self.draw, &summary)?;
        let ways = Settles { cup_holds: Some(plan.cup.holds()), ..Settles::default() };
        let model = model(&self.draw);
        let next = next_catches(&self.draw.round, &summary, &judged, &Draw::limit()?, &model, &ways);
        let wanted = next.into_iter().map(|next| {
            // The finer marks are on the same vessel's other side.
            let cup = if next.finer {
                CupKind::new(MarkUnit::Millilitres, 100, plan.cup.holds())
            } else {
                plan.cup
            };
            (Wanted { tips: next.tips.clone(), time: next.time, cup }, next)
        });
        Ok(wanted.collect())
    }

    /// Catches each tip under a run of its own.
    fn catch(&mut self, wanted: &Wanted) -> Result<(), DrawError> {
        for tip in &wanted.tips {
            let caught = self.yard.catch(&[*tip], wanted.time, wanted.cup);
            self.draw.note_order(&caught);
            self.cups.extend(caught.iter().map(|cup| WrittenCup::of(cup, 1)));
            self.caught += 1.0;
            self.minutes += (wanted.time + WALK_AND_POUR).as_minutes();
        }
        self.draw.round = round(self.yard.boom().layout(), &self.cups)?;
        Ok(())
    }

    fn calls(&self) -> Result<Vec<Call>, DrawError> {
        let summary = summary(&self.draw)?;
        Ok(by_boom(&self.draw, &summary, &judged(&self.draw, &summary)?))
    }

    fn counts(&self, before: &[Call], after: &[Call]) -> Counts {
        let cost = |calls: &[Call]| calls.iter().map(cost).sum::<f64>();
        let mut counts = Counts {
            cups: self.caught,
            minutes: self.minutes,
            said: self.said,
            came: cost(before) - cost(after),
            ..Counts::default()
        };
        for call in after {
            let right = call.right();
            let one = |is: bool| f64::from(u8::from(is));
            counts.open += one(call.verdict == Verdict::CannotTell);
            counts.wrong += one(call.verdict != Verdict::CannotTell && call.verdict != right);
            counts.false_alarms += one(call.verdict == Verdict::Outside && right == Verdict::Within);
            counts.faults += one(right == Verdict::Outside);
            counts.found += one(right == Verdict::Outside && call.verdict == Verdict::Outside);
        }
        counts
    }
}

/// What a call costs by the truth, counted as the inference counts: a wrong one 1, an open one the risk taken.
fn cost(call: &Call) -> f64 {
    match call.verdict {
        Verdict::CannotTell => calibration::catch::Risk::default().share(),
        verdict => f64::from(u8::from(verdict != call.right())),
    }
}

/// Some of them, drawn without putting back.
fn some_of(mut all: Vec<u32>, count: usize, random: &mut Random) -> Vec<u32> {
    let mut some = Vec::new();
    while some.len() < count && !all.is_empty() {
        let last = u32::try_from(all.len() - 1).unwrap_or(u32::MAX);
        let place = usize::try_from(random.whole(0, last)).unwrap_or(0);
        some.push(all.swap_remove(place.min(all.len() - 1)));
    }
    some.sort_unstable();
    some
}

const WALK_AND_POUR: Time = Time::seconds(20.0);
