//! The sprayers and visits that are here.

use std::collections::BTreeMap;

use notebook::{Folded, ThingId, Value};

/// What is here, as the first screen lists it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shelf {
    /// The sprayers, the one last visited first.
    pub sprayers: Vec<KnownSprayer>,
    /// The visits, the latest begun first.
    pub visits: Vec<KnownVisit>,
}

/// A sprayer that was visited.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KnownSprayer {
    /// Its name in the notebook.
    pub id: ThingId,
    /// What people call it; empty where nobody said.
    pub name: String,
    /// The farm; empty where nobody said.
    pub farm: String,
    /// Its visits, the latest first.
    pub visits: Vec<ThingId>,
}

/// A visit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KnownVisit {
    /// Its name in the notebook.
    pub id: ThingId,
    /// The sprayer it is of, where that is known.
    pub sprayer: Option<ThingId>,
    /// What people call the sprayer.
    pub name: String,
    /// The farm.
    pub farm: String,
    /// The day as written, year-month-day; empty where nobody said.
    pub date: String,
    /// How many lines it has.
    pub lines: usize,
}

/// A visit that came in as a file names no sprayer. Visits of one name on one farm are taken for the same sprayer; it has the
/// name of the first of them, which is the same on every device.
fn name_by_first_visit(visits: &mut [(i64, KnownVisit)]) {
    let called = |visit: &KnownVisit| (visit.name.trim().to_lowercase(), visit.farm.trim().to_lowercase());
    let mut first: BTreeMap<(String, String), ThingId> = BTreeMap::new();
    for (_, visit) in
        visits.iter().filter(|(_, visit)| visit.sprayer.is_none() && !visit.name.trim().is_empty())
    {
        let known = first.entry(called(visit)).or_insert(visit.id);
        *known = visit.id.min(*known);
    }
    for (_, visit) in visits.iter_mut().filter(|(_, visit)| visit.sprayer.is_none()) {
        visit.sprayer = first.get(&called(visit)).copied();
    }
}

impl Shelf {
    /// What a notebook comes to, as the first screen lists it.
    #[must_use]
    pub fn of(folded: &Folded) -> Self {
        let mut visits: Vec<(i64, KnownVisit)> = folded
            .visits
            .iter()
            .map(|(id, visit)| {
                let text = |field: &str| match visit.facts.get(field).map(|held| &held.value) {
                    Some(Value::Text(text)) => text.clone(),
                    _ => String::new(),
                };
                let known = KnownVisit {
                    id: *id,
                    sprayer: visit.sprayer,
                    name: text("visit.sprayer"),
                    farm: text("visit.farm"),
                    date: text("visit.date"),
                    lines: visit.lines,
                };
                (visit.begun.map_or(0, |at| at.utc_milliseconds), known)
            })
            .collect();
        name_by_first_visit(&mut visits);
        // The day that a person wrote counts before the clock of a phone.
        visits.sort_by(|(began, one), (then, other)| {
            (&other.date, then, other.id).cmp(&(&one.date, began, one.id))
        });
        let visits: Vec<KnownVisit> = visits.into_iter().map(|(_, visit)| visit).collect();
        let mut sprayers: Vec<KnownSprayer> = Vec::new();
        for visit in &visits {
            let Some(id) = visit.sprayer else { continue };
            match sprayers.iter_mut().find(|sprayer| sprayer.id == id) {
                Some(sprayer) => sprayer.visits.push(visit.id),
                None => sprayers.push(KnownSprayer {
                    id,
                    name: visit.name.clone(),
                    farm: visit.farm.clone(),
                    visits: vec![visit.id],
                }),
            }
        }
        Self { sprayers, visits }
    }
}
