//! The page on diagnoses.

use crate::ailing::AilingWorld;
use crate::diagnosed::{Done, scores};
use crate::draw::DrawError;
use crate::split::Cores;
use crate::tables::diagnosed::{InWorld, aims, confusion, plain_rules};
use crate::tables::table::Table;

/// Returns the tables on diagnoses of so many sprayers a world. `tell` is called with the name of each before it is drawn.
///
/// *Errors*: the first draw that cannot be made.
pub fn diagnosis_page(
    sprayers: u32,
    cores: Cores,
    tell: &mut dyn FnMut(&str),
) -> Result<Vec<Table>, DrawError> {
    let mut scored = Vec::new();
    let worlds = [
        (80, "near belief", AilingWorld::NearBelief, Done::Once),
        (80, "near belief, named cups again", AilingWorld::NearBelief, Done::NamedAgain),
        (81, "mismatched", AilingWorld::Mismatched, Done::Once),
        (81, "mismatched, named cups again", AilingWorld::Mismatched, Done::NamedAgain),
    ];
    for (part, name, world, done) in worlds {
        tell(name);
        let from = part * 1_000_000;
        scored.push((name, from, scores(world, done, sprayers, from, cores)?));
    }
    let worlds: Vec<InWorld<'_>> =
        scored.iter().map(|(name, from, scores)| InWorld { name, from: *from, scores }).collect();
    Ok(vec![aims(&worlds, sprayers), plain_rules(&worlds), confusion(&worlds)])
}
