//! One draw: a catch test as people have it, and the truth beside it.

use calibration::catch::{CatchError, Limit, Round, Uncertainties};
use simulator::{CaughtCup, Part, RUNS_FROM, Random, TestPlan, WorldError, Yard};
use sprayer::{BoomError, BoomLayout, Mounting};
use units::{Length, QuantityError, ReadingError, Time};

use crate::second::{SecondWorld, second_boom};
use crate::world::{Told, World};
use crate::written::{WrittenCup, round};

/// The limit everything here is held against: 10 % of the mean, exactly on it is within.
pub const LIMIT: f64 = 0.10;

/// A catch test and its truth.
#[derive(Clone, Debug)]
pub struct Draw {
    /// What was read.
    pub round: Round,
    /// The order of the cups by tip number, where the inference is told; otherwise empty.
    pub order: Vec<u32>,
    /// What the inference is told about reading and timing.
    pub doubts: Uncertainties,
    /// True deviations from the mean of the tips that run, from left to right.
    pub deviations: Vec<f64>,
    /// Whether a tip truly runs (gives at least 5 % of the median), from left to right.
    pub runs: Vec<bool>,
}

impl Draw {
    /// The draw of a world that belongs to a seed.
    ///
    /// *Errors*: a world that cannot be drawn; text the parser refuses. Neither should happen.
    pub fn of(world: &World, seed: u64) -> Result<Self, DrawError> {
        let (mut yard, plan) = yard(world, seed)?;
        Self::tested(&mut yard, &plan, world.told)
    }

    /// What comes of testing a boom as planned.
    ///
    /// *Errors*: those of [`Draw::of`].
    pub fn tested(yard: &mut Yard, plan: &TestPlan, told: Told) -> Result<Self, DrawError> {
        let caught = yard.test(plan);
        let cups: Vec<WrittenCup> = caught.iter().map(|cup| WrittenCup::of(cup, plan.cups_at_once)).collect();
        let order = match told {
            Told::Readings => Vec::new(),
            Told::Order => caught.iter().map(|cup| cup.tip).collect(),
        };
        let boom = yard.boom();
        Ok(Self {
            round: round(boom.layout(), &cups)?,
            order,
            doubts: Uncertainties::default(),
            deviations: boom.deviations(),
            runs: boom.tips().iter().map(|tip| boom.runs(tip)).collect(),
        })
    }

    /// The draw of the second generator that belongs to a seed.
    ///
    /// *Errors*: those of [`Draw::of`].
    pub fn of_second(world: SecondWorld, seed: u64) -> Result<Self, DrawError> {
        let second = second_boom(seed, world);
        let tips = u32::try_from(second.flows.len()).unwrap_or(u32::MAX);
        let layout = BoomLayout::new(&[tips], Length::inches(20.0), Mounting::Rear)?;
        let at_once = second.shared_run.unwrap_or(1).max(1);
        let runs_of_a_go = tips.div_ceil(at_once);
        let mut cups = Vec::new();
        for (place, readings) in (0_u32..).zip(&second.readings_ml) {
            for (go, millilitres) in (0_u32..).zip(readings) {
                cups.push(WrittenCup {
                    tip: place + 1,
                    reading: format!("{millilitres} mL"),
                    marks: format!("{} mL", second.step_ml),
                    time: format!("{} s", second.seconds),
                    run: second.shared_run.map(|_| go * runs_of_a_go + place / at_once),
                });
            }
        }
        let doubts = Uncertainties {
            timer: Time::seconds(second.timer_seconds),
            handling: second.handling,
            ..Uncertainties::default()
        };
        let mut sorted = second.flows.clone();
        sorted.sort_by(f64::total_cmp);
        let median = f64::midpoint(sorted[(sorted.len() - 1) / 2], sorted[sorted.len() / 2]);
        Ok(Self {
            round: round(&layout, &cups)?,
            order: Vec::new(),
            doubts,
            runs: second.flows.iter().map(|flow| *flow >= RUNS_FROM * median).collect(),
            deviations: second.deviations,
        })
    }

    /// Notes further cups in the order, where the order is told.
    pub(crate) fn note_order(&mut self, caught: &[CaughtCup]) {
        if !self.order.is_empty() {
            self.order.extend(caught.iter().map(|cup| cup.tip));
        }
    }

    /// The limit everything here is held against.
    ///
    /// *Errors*: none; 10 % is a limit.
    pub fn limit() -> Result<Limit, DrawError> {
        Ok(Limit::own(LIMIT)?)
    }
}

/// The boom and kit of a seed, ready to be tested, and the plan somebody would make: a cup and a time that suit.
///
/// *Errors*: a world that cannot be drawn.
pub fn yard(world: &World, seed: u64) -> Result<(Yard, TestPlan), DrawError> {
    let boom = world.boom.boom(seed)?;
    let kit = world.kit.kit(seed);
    let mean = boom.mean();
    let mut choice = Random::new(seed, Part::Choice);
    let tests = &world.tests;
    let combined = tests.cups.iter().flat_map(|cup| tests.times.iter().map(move |time| (*cup, *time)));
    let suited: Vec<_> = combined.filter(|(cup, time)| cup.suits(mean, *time, tests.least_marks)).collect();
    let (cup, time) = choice.one_of(&suited).copied().ok_or(DrawError::NothingSuits { seed })?;
    let plan = TestPlan {
        cup,
        time,
        repeats: choice.one_of(&tests.repeats).copied().unwrap_or(1),
        cups_at_once: choice.one_of(&tests.at_once).copied().unwrap_or(1),
        order: tests.order,
    };
    Ok((Yard::new(boom, kit, seed), plan))
}

/// Why a draw cannot be made.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum DrawError {
    /// No cup and time of the world suit the flow of this boom.
    #[error("no cup and time suit the boom of seed {seed}")]
    NothingSuits {
        /// The seed.
        seed: u64,
    },
    /// A cup under a tip that is not there.
    #[error("there is no tip {tip}")]
    NoSuchTip {
        /// The tip.
        tip: u32,
    },
    /// A world that cannot be drawn.
    #[error(transparent)]
    World(#[from] WorldError),
    /// A boom that cannot be laid out.
    #[error(transparent)]
    Boom(#[from] BoomError),
    /// A text the parser refuses.
    #[error(transparent)]
    Written(#[from] QuantityError),
    /// Marks that cannot be.
    #[error(transparent)]
    Reading(#[from] ReadingError),
    /// A catch that cannot be.
    #[error(transparent)]
    Catch(#[from] CatchError),
}
