//! Worlds the inference was not told about.

use simulator::{Between, BoomWorld, FaultMix, Hands, KitWorld, Order, Pattern, SlipChances, WatchWorld};
use units::Time;

use crate::announced::announced;
use crate::world::{TestWorld, Told, World};

/// All of them, each the announced world with one thing changed.
#[must_use]
pub fn unannounced() -> Vec<World> {
    vec![
        wide_spread(),
        half_old(),
        section_step(),
        taper(),
        faults_of_the_yard(),
        many_faults(),
        heavier_timing(),
        misreads(),
        hurried(),
        drift(),
        drift_told(),
    ]
}

/// Tips that are alike spread by 6 to 10 %.
#[must_use]
pub fn wide_spread() -> World {
    with_boom("wide spread", "sound tips spread by 6 to 10 %", |boom| boom.spread = Between::new(0.06, 0.10))
}

/// Half of the tips, anywhere, are of an older set.
#[must_use]
pub fn half_old() -> World {
    let says = "half of the tips, anywhere, are older and give 5 to 15 % more";
    with_boom("half-old set", says, |boom| boom.patterns = vec![Pattern::HalfOld(Between::new(0.05, 0.15))])
}

/// One section is short of pressure.
#[must_use]
pub fn section_step() -> World {
    let says = "one section of two to five is 6 to 25 % short of pressure: 3 to 13 % less flow";
    with_boom("step between sections", says, |boom| {
        boom.sections = (2, 5);
        boom.patterns = vec![Pattern::SectionStep(Between::new(0.06, 0.25))];
    })
}

/// Pressure falls towards the ends.
#[must_use]
pub fn taper() -> World {
    let says = "pressure falls to the ends by 5 to 25 %: 3 to 13 % less flow there";
    with_boom("taper", says, |boom| boom.patterns = vec![Pattern::Taper(Between::new(0.05, 0.25))])
}

/// Faults by the laws of a yard.
#[must_use]
pub fn faults_of_the_yard() -> World {
    let says = "a tenth of the tips worn (8 to 26 %), partly plugged (11 to 65 %), plugged or of a neighbouring size";
    with_boom("faults of the yard", says, |boom| boom.faults = FaultMix::of_the_yard())
}

/// Three times as many faults.
#[must_use]
pub fn many_faults() -> World {
    with_boom("many faults", "three tips of ten are off by 4 to 40 %", |boom| boom.faults.share = 0.3)
}

/// A slower hand than the inference is told.
#[must_use]
pub fn heavier_timing() -> World {
    let watch = WatchWorld {
        reaction: Between::new(Time::seconds(0.3), Time::seconds(0.6)),
        lag: Between::new(Time::seconds(-0.5), Time::seconds(0.5)),
        rate: 0.01,
    };
    let kit = KitWorld { watch, ..KitWorld::careful() };
    let says =
        "the hand is off by 0.3 to 0.6 s at each end (0.2 is told), lags up to half a second, watch 1 %";
    World { name: "heavier timing", says, kit, ..announced() }
}

/// People who slip.
#[must_use]
pub fn misreads() -> World {
    let hands = Hands { slips: SlipChances::now_and_then(), ..Hands::careful() };
    let kit = KitWorld { hands, ..KitWorld::careful() };
    let says =
        "of 100 cups 2 are misread by a mark, 0.8 by 10 to 25 %; of 500 runs 1 has half or double its time";
    World { name: "misreads", says, kit, ..announced() }
}

/// People in a hurry.
#[must_use]
pub fn hurried() -> World {
    let kit = KitWorld { hands: Hands::hurried(), ..KitWorld::careful() };
    let says =
        "film of 2 mL left in the cup, foam, handling 1 %, parallax, an eye twice as unsure, and misreads";
    World { name: "hurried hands", says, kit, ..announced() }
}

/// The pressure drifts during the test and nobody says in what order the cups were caught.
#[must_use]
pub fn drift() -> World {
    let mut drifting = with_boom(
        "drift, order not told",
        "pressure changes by up to 0.3 % a minute; 7 to 30 tips, caught once: up to some 5 % in flow",
        |boom| {
            boom.tips = (7, 30);
            boom.drift_per_minute = Between::new(-0.003, 0.003);
        },
    );
    drifting.tests = TestWorld { repeats: vec![1], ..drifting.tests };
    drifting
}

/// The same with the order told and the first tip caught once more at the end.
#[must_use]
pub fn drift_told() -> World {
    let drifting = drift();
    World {
        name: "drift, order told",
        says: "the same; the order is told and the first tip is caught once more at the end",
        tests: TestWorld { order: Order::FirstAgainAtTheEnd, ..drifting.tests },
        told: Told::Order,
        ..drifting
    }
}

fn with_boom(name: &'static str, says: &'static str, change: impl FnOnce(&mut BoomWorld)) -> World {
    let mut world = World { name, says, ..announced() };
    change(&mut world.boom);
    world
}
