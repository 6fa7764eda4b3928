//! The page on diagnoses.

use crate::ailing::AilingWorld;
use crate::ceiling::Judge;
use crate::diagnosed::{Done, SprayerScore, scores};
use crate::draw::DrawError;
use crate::split::Cores;
use crate::tables::aims::{Reached, aims};
use crate::tables::diagnosed::{InWorld, ONCE, confusion, plain_rules};
use crate::tables::diagnosed_reliability::curves;
use crate::tables::table::Table;

/// What is done in each world before the diagnosis is scored.
const DONE: [(&str, Done); 4] = [
    (ONCE, Done::Once),
    ("three named cups at most again", Done::ThreeAgain),
    ("named cups again", Done::NamedAgain),
    ("named cups again, named tips looked at", Done::NamedAgainAndLooked),
];

/// A world: its seeds in millions, its name, and what is so in it.
const WORLDS: [(u64, &str, AilingWorld, &str); 3] = [
    (
        82,
        "over the plumbing",
        AilingWorld::Plumbed,
        "Whole sprayers by the network solver, held by a regulator, a rate controller, or a pump with a bypass. Other laws than the \
         inference believes: wear of 8 to 45 % and blockage of 10 to 90 %, small ones more often; every fifth set worn alike; strainers \
         blocked by 80 to 97 %; a gauge off in scale and zero; pressure that drifts; people with reactions and a lag of their own, wet cups, \
         foam; lines misread and times mistaken. This is the world that the aims are held to. Where one is missed: a misread cup of a sound tip \
         looks like a fault, and three cups in a hundred are; no judge by one cup does better, and the named cups settle it. A section that \
         loses little more than 4 % is as often told as losing little less.",
    ),
    (
        81,
        "heavy tails",
        AilingWorld::Mismatched,
        "A harder world: wear begins at 6 % and blockage at 7 %; sound tips, hands and gauge have heavy tails (t of four degrees), so that one \
         sound tip in a hundred is more than 6 % off; slips are of any size and losses of sections even. A good part of these faults lies \
         where sound tips do.",
    ),
    (80, "near belief", AilingWorld::NearBelief, "Laws near those that the inference believes."),
];

/// What is so in every world.
const EACH: &str = "24 tips in three sections, each caught once for 30 s and read to 10 mL; of 100 tips 12 are wrong and of 100 cups 3 misread or \
                    mistimed. A tip or section is called from a chance of a half on. ± is the standard error over sprayers.";

/// A world scored.
struct Scored {
    name: &'static str,
    says: String,
    from: u64,
    done: Vec<(&'static str, Vec<SprayerScore>)>,
    judge: Judge,
}

/// The judge learns from so many times as many sprayers, of seeds beyond those that are scored.
const TO_LEARN: u32 = 10;

/// Returns the tables on diagnoses of so many sprayers a world. `tell` is called with the name of each before it is drawn.
///
/// *Errors*: the first draw that cannot be made.
pub fn diagnosis_page(
    sprayers: u32,
    cores: Cores,
    tell: &mut dyn FnMut(&str),
) -> Result<Vec<Table>, DrawError> {
    let mut all = Vec::new();
    for (millions, name, world, says) in WORLDS {
        let from = millions * 1_000_000;
        let mut done = Vec::new();
        for (what, which) in DONE {
            tell(&format!("{name}, {what}"));
            done.push((what, scores(world, which, sprayers, from, cores)?));
        }
        tell(&format!("{name}, the judge"));
        let judge = Judge::of(world, TO_LEARN * sprayers, from + 500_000, cores)?;
        all.push(Scored { name, says: format!("{EACH} {says}"), from, done, judge });
    }
    let mut tables: Vec<Table> = Vec::new();
    for Scored { name, says, from, done, judge } in &all {
        let done = done.iter().map(|(what, scores)| (*what, scores.as_slice())).collect();
        tables.push(aims(&Reached { name, says, from: *from, done, judge: judge.clone() }));
    }
    let first_and_last = all.iter().flat_map(|world| {
        let done = world.done.first().into_iter().chain(world.done.last());
        done.map(|(done, scores)| InWorld { name: world.name, done, scores })
    });
    let worlds: Vec<InWorld<'_>> = first_and_last.collect();
    tables.extend([curves(&worlds), plain_rules(&worlds), confusion(&worlds)]);
    Ok(tables)
}
