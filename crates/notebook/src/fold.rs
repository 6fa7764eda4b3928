//! Lines folded into sprayers and visits: what holds now, what was struck, what two devices say differently.

use std::collections::{BTreeMap, BTreeSet};

use visit::Visit;
use visit::file::{FileErrors, SECTIONS, Several};

use crate::book::Notebook;
use crate::entry::{Entry, Told};
use crate::ids::{DeviceId, LineId, RowId, ThingId};
use crate::import::{ROUNDS, RUNS};
use crate::line::{About, At, Kind, Line};
use crate::value::{Value, key};

/// What a notebook comes to.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Folded {
    /// The sprayers that are kept from visit to visit.
    pub sprayers: BTreeMap<ThingId, FoldedSprayer>,
    /// The visits.
    pub visits: BTreeMap<ThingId, FoldedVisit>,
    /// The devices with the names they gave themselves.
    pub devices: BTreeMap<DeviceId, String>,
    /// Lines of a version or kind that this program does not know; they are kept, and read past.
    pub unknown: Vec<LineId>,
    /// What was withdrawn.
    pub withdrawn: BTreeSet<About>,
    /// Lines that were struck, with the reason.
    pub struck: BTreeMap<LineId, String>,
}

/// A fact that holds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Held {
    /// What it is worth.
    pub value: Value,
    /// The line that says so.
    pub line: LineId,
}

/// Two values for one fact. Both are kept; the later in the order of the notebook is worked with until one is struck.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TwoValues {
    /// The section and field.
    pub field: String,
    /// Every value that was not struck, with its line and device, in the order of the notebook.
    pub values: Vec<(Value, LineId, DeviceId)>,
}

/// A sprayer that is kept from visit to visit.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FoldedSprayer {
    /// Its facts by section and field.
    pub facts: BTreeMap<String, Held>,
    /// Facts with two values.
    pub two_values: Vec<TwoValues>,
    /// The visits of it, in the order they were begun.
    pub visits: Vec<ThingId>,
}

/// A visit.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FoldedVisit {
    /// The kept sprayer it is of, where it is of one.
    pub sprayer: Option<ThingId>,
    /// When its first line was written, by that device's clock.
    pub begun: Option<At>,
    /// Its facts by section and field.
    pub facts: BTreeMap<String, Held>,
    /// Its rows, list by list, each in the order written.
    pub rows: BTreeMap<String, Vec<(RowId, Held)>>,
    /// Its readings: round, tip, and each cup in the order written.
    pub readings: BTreeMap<RowId, BTreeMap<u32, Vec<Held>>>,
    /// Facts and rows with two values.
    pub two_values: Vec<TwoValues>,
    /// How many lines it has, struck ones among them.
    pub lines: usize,
}

/// Returns what a notebook comes to.
///
/// *Assumptions*: folding goes by (order, device, number). A line strikes only lines that stand before it. What was put right stays
/// struck when that is put right again or taken back; only a taking back that is struck itself no longer counts. A visit
/// that was withdrawn is not there.
#[must_use]
pub fn folded(book: &Notebook) -> Folded {
    let mut folded = Folded { withdrawn: book.withdrawn().collect(), ..Folded::default() };
    let told: Vec<(&Line, Told)> = book
        .lines()
        .filter_map(|line| match Told::of(line) {
            Some(told) => Some((line, told)),
            None => {
                if line.written().is_some() {
                    folded.unknown.push(line.id());
                }
                None
            }
        })
        .collect();
    folded.struck = struck(&told);
    let mut facts = Facts::new();
    let mut turns: BTreeMap<(ThingId, RowId), usize> = BTreeMap::new();
    for (line, told) in told {
        let about = line.about();
        if folded.withdrawn.contains(&about) {
            continue;
        }
        if about.kind == Kind::Visit {
            let visit = folded.visits.entry(about.id).or_default();
            visit.lines += 1;
            visit.begun.get_or_insert(line.at());
            // A row that is corrected stays where it was first written: a round does not change its turn.
            if let Entry::Row { row, .. } = &told.entry {
                let turn = turns.len();
                turns.entry((about.id, *row)).or_insert(turn);
            }
        }
        if folded.struck.contains_key(&line.id()) {
            continue;
        }
        put(&mut folded, &mut facts, line, told.entry);
    }
    settle(&mut folded, facts);
    for (id, visit) in &mut folded.visits {
        for rows in visit.rows.values_mut() {
            rows.sort_by_key(|(row, _)| turns.get(&(*id, *row)).copied());
        }
    }
    let of: Vec<(ThingId, ThingId)> =
        folded.visits.iter().filter_map(|(id, visit)| Some((visit.sprayer?, *id))).collect();
    for (sprayer, visit) in of {
        folded.sprayers.entry(sprayer).or_default().visits.push(visit);
    }
    folded
}

/// The lines that are struck, each with the reason. From the last line to the first: a strike counts, unless its line only took
/// something back and was struck later. A line that said something else in the place of another has done away with that one,
/// whatever became of it: a value corrected twice, or corrected and taken back, does not return to what it was first.
fn struck(told: &[(&Line, Told)]) -> BTreeMap<LineId, String> {
    let mut struck = BTreeMap::new();
    let mut before: BTreeMap<LineId, usize> = BTreeMap::new();
    if told.iter().all(|(_, told)| told.strikes.is_none()) {
        return struck;
    }
    for (place, (line, _)) in told.iter().enumerate() {
        before.entry(line.id()).or_insert(place);
    }
    for (place, (line, told)) in told.iter().enumerate().rev() {
        let counts = told.entry != Entry::Nothing || !struck.contains_key(&line.id());
        if let Some(strike) = told.strikes.as_ref().filter(|_| counts)
            && before.get(&strike.line).is_some_and(|target| *target < place)
        {
            struck.insert(strike.line, strike.reason.clone());
        }
    }
    struck
}

/// The values of each fact of each thing, with their lines and devices.
type Facts = BTreeMap<(About, String), Vec<(Value, LineId, DeviceId)>>;

fn put(folded: &mut Folded, facts: &mut Facts, line: &Line, entry: Entry) {
    let about = line.about();
    match entry {
        Entry::Fact { field, value } => {
            facts.entry((about, field)).or_default().push((value, line.id(), line.device()));
        }
        Entry::Row { list, row, value } if about.kind == Kind::Visit => {
            let visit = folded.visits.entry(about.id).or_default();
            let rows = visit.rows.entry(list.clone()).or_default();
            let held = Held { value, line: line.id() };
            match rows.iter_mut().find(|(known, _)| *known == row) {
                // A row written twice and not struck: the later is worked with, and both are pointed out.
                Some((_, known)) if known.value != held.value => {
                    let first = (known.value.clone(), known.line, line.device());
                    let second = (held.value.clone(), held.line, line.device());
                    let field = format!("{list}.{row}");
                    match visit.two_values.iter_mut().find(|two| two.field == field) {
                        Some(two) => two.values.push(second),
                        None => visit.two_values.push(TwoValues { field, values: vec![first, second] }),
                    }
                    *known = held;
                }
                Some(_) => {}
                None => rows.push((row, held)),
            }
        }
        Entry::Reading { round, tip, value } if about.kind == Kind::Visit => {
            let visit = folded.visits.entry(about.id).or_default();
            let cups = visit.readings.entry(round).or_default().entry(tip).or_default();
            cups.push(Held { value, line: line.id() });
        }
        Entry::Of { sprayer } if about.kind == Kind::Visit => {
            folded.visits.entry(about.id).or_default().sprayer = Some(sprayer);
        }
        Entry::Device { name, .. } => {
            folded.devices.insert(line.device(), name);
        }
        Entry::Row { .. } | Entry::Reading { .. } | Entry::Of { .. } => folded.unknown.push(line.id()),
        Entry::Nothing | Entry::Withdraw { .. } => {}
    }
}

/// Gives each thing its facts, and points out those with two values.
fn settle(folded: &mut Folded, facts: Facts) {
    for ((about, field), values) in facts {
        let (held, two_values) = match about.kind {
            Kind::Visit => {
                let visit = folded.visits.entry(about.id).or_default();
                (&mut visit.facts, &mut visit.two_values)
            }
            Kind::Sprayer => {
                let sprayer = folded.sprayers.entry(about.id).or_default();
                (&mut sprayer.facts, &mut sprayer.two_values)
            }
            // Days and products come later; their lines are kept.
            Kind::Day | Kind::Product | Kind::Notebook => {
                folded.unknown.extend(values.iter().map(|(_, line, _)| *line));
                continue;
            }
        };
        if values.iter().any(|(value, ..)| *value != values[0].0) {
            two_values.push(TwoValues { field: field.clone(), values: values.clone() });
        }
        if let Some((value, line, _)) = values.into_iter().last() {
            held.insert(field, Held { value, line });
        }
    }
}

impl FoldedVisit {
    /// The visit file that says the same. A field that a visit file does not know is left out of it, not lost: it stays in
    /// the notebook.
    #[must_use]
    pub fn file(&self) -> String {
        let mut out = String::new();
        for section in SECTIONS {
            match section.several {
                Several::Yes => {
                    // A row in which nothing stands yet, as a product just begun, would be a mistake in the file.
                    let says = |(_, held): &&(RowId, Held)| {
                        section.name == ROUNDS || held.value != Value::Table(Vec::new())
                    };
                    for (row, held) in self.rows.get(section.name).into_iter().flatten().filter(says) {
                        out.push_str(&format!("[[{}]]\n", section.name));
                        if let Value::Table(fields) = &held.value {
                            fields.iter().for_each(|(name, value)| field(&mut out, name, value));
                        }
                        if section.name == ROUNDS {
                            self.readings_of(*row, &mut out);
                        }
                        out.push('\n');
                    }
                }
                Several::No => self.section(section.name, &mut out),
            }
        }
        out
    }

    fn section(&self, name: &str, out: &mut String) {
        let inner = |field: &str| -> Option<String> {
            let rest = field.strip_prefix(name)?.strip_prefix('.')?;
            // What belongs to a section of its own within this one is written there.
            let deeper = SECTIONS.iter().any(|other| {
                other.name.len() > name.len()
                    && field.starts_with(other.name)
                    && field[other.name.len()..].starts_with('.')
            });
            (!deeper).then(|| rest.to_string())
        };
        let mut fields: Vec<(String, Value)> =
            self.facts.iter().filter_map(|(field, held)| Some((inner(field)?, held.value.clone()))).collect();
        if format!("{name}.runs") == RUNS
            && let Some(runs) = self.rows.get(RUNS)
        {
            fields.push((
                "runs".to_string(),
                Value::List(runs.iter().map(|(_, run)| run.value.clone()).collect()),
            ));
        }
        if fields.is_empty() {
            return;
        }
        out.push_str(&format!("[{name}]\n"));
        fields.iter().for_each(|(name, value)| field(out, name, value));
        out.push('\n');
    }

    fn readings_of(&self, round: RowId, out: &mut String) {
        let Some(tips) = self.readings.get(&round) else { return };
        let numbers: Vec<u32> = tips.keys().copied().collect();
        if numbers.iter().zip(1..).any(|(number, place)| *number != place) {
            let list = numbers.iter().map(|tip| Value::Count(i64::from(*tip))).collect();
            field(out, "tips", &Value::List(list));
        }
        let readings = tips.values().map(|cups| match cups.as_slice() {
            [one] => one.value.clone(),
            // A tip caught again: what is no cup is left out, and lists are drawn together.
            several => {
                let flat = several.iter().flat_map(|cup| match &cup.value {
                    Value::List(list) => list.clone(),
                    Value::Text(text) if text == "-" => Vec::new(),
                    value => vec![value.clone()],
                });
                Value::List(flat.collect())
            }
        });
        field(out, "readings", &Value::List(readings.collect()));
    }

    /// The visit.
    ///
    /// *Errors*: those of its file: a fact that is none, as a course without a unit.
    pub fn visit(&self) -> Result<Visit, FileErrors> {
        visit::file::read(self.file().as_bytes())
    }
}

fn field(out: &mut String, name: &str, value: &Value) {
    out.push_str(&format!("{} = {}\n", key(name), value.to_toml()));
}
