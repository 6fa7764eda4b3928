//! The whole page: draws, counts, tables, in a fixed order from fixed seeds.

use simulator::CupKind;

use crate::again::again;
use crate::announced::{announced, announced_of, announced_with};
use crate::calls::Way;
use crate::draw::{Draw, DrawError};
use crate::one_bad_tip::{BAD_TIP, Off, OneTest, one_bad_tip};
use crate::second::SecondWorld;
use crate::split::{Cores, in_order};
use crate::tables::again::InWorld;
use crate::tables::by_kind::by_kind;
use crate::tables::compare::compare;
use crate::tables::held::{Held, held};
use crate::tables::reliability::reliability;
use crate::tables::rounding::rounding;
use crate::tables::table::Table;
use crate::tables::unannounced::{Strange, unannounced};
use crate::tables::whole::whole;
use crate::tally::{Tally, ThreeWays};
use crate::unannounced::{misreads, unannounced as strange_worlds};

/// How many booms each part draws.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sizes {
    /// The announced worlds, each generator.
    pub announced: u32,
    /// Each part of the announced world, each unannounced world, each world of the next cup.
    pub others: u32,
    /// One bad tip among twenty.
    pub one_bad_tip: u32,
    /// Each row of the rounding trap.
    pub rounding: u32,
}

impl Default for Sizes {
    /// Enough that the standard error of every bar is small beside its distance from the next tenth of a percent.
    fn default() -> Self {
        Self { announced: 6_000, others: 1_500, one_bad_tip: 4_000, rounding: 1_000 }
    }
}

/// Returns the tables. `tell` is called with the name of each part before it is drawn.
///
/// *Errors*: the first draw that cannot be made.
pub fn page(sizes: &Sizes, cores: Cores, tell: &mut dyn FnMut(&str)) -> Result<Vec<Table>, DrawError> {
    let world = announced();
    tell("announced worlds");
    let simulator = ThreeWays::of(sizes.announced, seeds(1), cores, |seed| Draw::of(&world, seed))?;
    tell("announced worlds, second generator");
    let second_of =
        |kind, draws, part| ThreeWays::of(draws, seeds(part), cores, move |seed| Draw::of_second(kind, seed));
    let second = second_of(SecondWorld::Announced, sizes.announced, 2)?;
    tell("one bad tip");
    let bad = |off, part| one_bad(off, sizes.one_bad_tip, seeds(part), cores);
    let (over_others, over_mean) = (bad(Off::TheOthers(0.12), 3)?, bad(Off::TheMean(0.12), 4)?);
    let counts = Held {
        simulator: &simulator,
        second: &second,
        over_others: &over_others,
        over_mean: &over_mean,
        from: [1, 2, 3, 4].map(seeds),
    };
    let mut tables = vec![
        held(&counts),
        reliability(&simulator.boom, &second.boom),
        whole(&[("simulator", &simulator.whole), ("second", &second.whole)]),
    ];

    let mut strange = Vec::new();
    for (part, world) in (10..).zip(strange_worlds()) {
        tell(world.name);
        let ways = ThreeWays::of(sizes.others, seeds(part), cores, |seed| Draw::of(&world, seed))?;
        strange.push(Strange {
            name: world.name.to_owned(),
            says: world.says.to_owned(),
            from: seeds(part),
            ways,
        });
    }
    let of_second = [
        (SecondWorld::WideSpread, "wide spread", "sound tips spread by 6 to 10 %"),
        (SecondWorld::HalfOld, "half-old set", "half of the tips, anywhere, give 5 to 15 % more"),
        (SecondWorld::SectionStep, "step between sections", "from a section edge on, 3 to 12 % more or less"),
    ];
    for (part, (kind, name, says)) in (30..).zip(of_second) {
        tell(&format!("{name}, second generator"));
        let ways = second_of(kind, sizes.others, part)?;
        strange.push(Strange {
            name: format!("{name} (second generator)"),
            says: says.to_owned(),
            from: seeds(part),
            ways,
        });
    }
    tables.push(unannounced(&strange));
    let mut compared = vec![("announced", &simulator), ("announced (second generator)", &second)];
    compared.extend(strange.iter().map(|world| (world.name.as_str(), &world.ways)));
    tables.push(compare(&compared));

    tell("by cup and by length of the boom");
    tables.push(by_kind(&kinds(sizes.others, cores)?));
    tell("the next cup");
    let ounces = announced_with(CupKind::OUNCES, "announced, ounces");
    let mut nexts = Vec::new();
    for (part, world) in (60..).zip([world, ounces, misreads()]) {
        let from = seeds(part);
        let ways = again(&world, sizes.others, from, cores)?;
        nexts.push(InWorld { world: world.name, from, ways });
    }
    tables.push(super::again::again(&nexts, sizes.others));
    tell("the rounding trap");
    tables.push(rounding(sizes.rounding, seeds(70), cores)?);
    Ok(tables)
}

fn kinds(draws: u32, cores: Cores) -> Result<Vec<(String, u64, Tally)>, DrawError> {
    let worlds = [
        announced_with(CupKind::OUNCES, "cup marked every 1 fl oz"),
        announced_with(CupKind::HALF_OUNCES, "every 1/2 fl oz"),
        announced_with(CupKind::TEN_MILLILITRES, "every 10 mL"),
        announced_with(CupKind::FIVE_MILLILITRES, "every 5 mL"),
        announced_with(CupKind::SCALE, "scale, 2 g"),
        announced_of((7, 12), "7 to 12 tips"),
        announced_of((13, 30), "13 to 30 tips"),
        announced_of((31, 60), "31 to 60 tips"),
    ];
    let mut kinds = Vec::new();
    for (part, world) in (40_u64..).zip(worlds) {
        let ways = ThreeWays::of(draws, seeds(part), cores, |seed| Draw::of(&world, seed))?;
        kinds.push((world.name.to_owned(), seeds(part), ways.boom));
    }
    Ok(kinds)
}

/// Counts the calls on the bad tip alone.
fn one_bad(off: Off, draws: u32, from: u64, cores: Cores) -> Result<Tally, DrawError> {
    let mut tally = Tally::default();
    let judged = in_order(draws, cores, |place| {
        let draw = one_bad_tip(off, &OneTest::in_ounces(), from + u64::from(place))?;
        crate::calls::judge(&draw, Way::Boom)
    });
    for calls in judged {
        let calls: Vec<_> = calls?.into_iter().filter(|call| call.tip == BAD_TIP).collect();
        tally.boom(&calls);
    }
    Ok(tally)
}

/// The first seed of a part; parts are a million apart.
const fn seeds(part: u64) -> u64 {
    part * 1_000_000
}
