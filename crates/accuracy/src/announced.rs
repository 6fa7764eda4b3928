//! The worlds the inference was told about.

use simulator::{Between, BoomWorld, CupKind, FaultMix, KitWorld, Order, Pattern};
use units::{Pressure, Time, Volume};

use crate::world::{TestWorld, Told, World};

/// 7 to 60 tips, spread 1 to 3 %, a tenth of the tips off by 4 to 40 %; several cups and times, repeats, and cups
/// under one timed run; hand timing 0.2 s at each end, handling 0.5 %, an eye good to a tenth of a step.
#[must_use]
pub fn announced() -> World {
    World {
        name: "announced",
        says: "7 to 60 tips, spread 1 to 3 %, a tenth of the tips off by 4 to 40 % either way",
        boom: booms(),
        kit: KitWorld::careful(),
        tests: tests(),
        told: Told::Readings,
    }
}

/// The announced world tested with one kind of cup only, on a vessel of half a gallon, which suits every flow.
#[must_use]
pub fn announced_with(cup: CupKind, name: &'static str) -> World {
    let cups = vec![cup.holding(Volume::gallons(0.5))];
    let tests = TestWorld { cups, ..tests() };
    World { name, says: "the announced world, with this cup", tests, ..announced() }
}

/// The announced world with so many tips.
#[must_use]
pub fn announced_of(tips: (u32, u32), name: &'static str) -> World {
    let boom = BoomWorld { tips, ..booms() };
    World { name, says: "the announced world, with so many tips", boom, ..announced() }
}

/// Booms of the announced world. Sizes and pressures are our choice: 0.07 to 0.73 gal/min.
fn booms() -> BoomWorld {
    BoomWorld {
        tips: (7, 60),
        sections: (1, 5),
        sizes: vec!["01", "015", "02", "03", "04", "05", "06"],
        pressure: Between::new(Pressure::psi(20.0), Pressure::psi(60.0)),
        spread: Between::new(0.01, 0.03),
        faults: FaultMix::a_tenth_either_way(),
        patterns: vec![Pattern::Alike],
        drift_per_minute: Between::always(0.0),
    }
}

/// Tests of the announced world. Half of them catch each tip once; a third put several cups under one run.
fn tests() -> TestWorld {
    TestWorld {
        cups: vec![
            CupKind::OUNCES,
            CupKind::HALF_OUNCES,
            CupKind::TEN_MILLILITRES,
            CupKind::FIVE_MILLILITRES,
            CupKind::SCALE,
        ],
        times: [15.0, 30.0, 45.0, 60.0].map(Time::seconds).to_vec(),
        repeats: vec![1, 1, 2, 3],
        at_once: vec![1, 1, 1, 1, 2, 4],
        order: Order::LeftToRight,
        least_marks: 6,
    }
}
