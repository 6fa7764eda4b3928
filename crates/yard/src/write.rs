//! Facts become lines: each is handed to the store at once, and shown before it is kept.

use notebook::{About, Draft, Entry, Line, LineId, Told, VERSION, Value, Written};

use crate::effect::Effect;
use crate::event::Keep;
use crate::moment::{Chance, Moment};
use crate::opened::{Holder, Worked, fold_one};
use crate::shelf::Shelf;
use crate::state::{Keeping, State};

/// The reason that stands in a line which puts another right.
pub const CORRECTED: &str = "corrected";
/// The reason of a line that takes another back.
pub const TAKEN_BACK: &str = "taken back";

/// With what an event comes: when it was, and chance.
#[derive(Debug)]
pub struct With<'a> {
    /// When it was.
    pub at: &'a Moment,
    /// Chance.
    pub chance: &'a mut Chance,
}

impl With<'_> {
    /// A draft of what is told about a thing.
    pub fn draft(&mut self, about: About, told: &Told) -> Draft {
        Draft {
            id: self.chance.line(),
            about,
            at: self.at.at(),
            version: VERSION,
            written: Written::new(told.text(), self.chance.bytes()),
        }
    }
}

/// A fact, which takes the place of the line that stood there.
#[must_use]
pub fn fact(field: &str, value: Value, before: Option<LineId>) -> Told {
    let told = Told::from(Entry::Fact { field: field.to_string(), value });
    in_place_of(told, before)
}

/// What is told, in the place of an earlier line.
#[must_use]
pub fn in_place_of(told: Told, before: Option<LineId>) -> Told {
    match before {
        Some(line) => told.instead_of(line, CORRECTED),
        None => told,
    }
}

/// Nothing in the place of an earlier line.
#[must_use]
pub fn nothing(line: LineId) -> Told {
    Told::from(Entry::Nothing).instead_of(line, TAKEN_BACK)
}

impl State {
    /// Who holds the notebook; none before the store is open.
    #[must_use]
    pub fn holder(&self) -> Option<Holder> {
        match &self.keeping {
            Keeping::Opening => None,
            Keeping::Here { notebook, device } | Keeping::Nowhere { notebook, device, .. } => {
                Some(Holder { notebook: *notebook, device: *device })
            }
        }
    }

    /// Writes about the open visit: keeps what is told, shows it, works everything out again.
    pub fn write(&mut self, told: &[Told], with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let about = visit.about();
        let drafts: Vec<Draft> = told.iter().map(|told| with.draft(about, told)).collect();
        self.keep(drafts)
    }

    /// Keeps drafts: in the store, or of a visit that is just looked at in the visit alone.
    pub fn keep(&mut self, drafts: Vec<Draft>) -> Vec<Effect> {
        let effects = self.hand_over(drafts);
        self.refold();
        effects
    }

    /// Keeps drafts of the open visit, of which it was worked out already what they come to.
    pub fn keep_as(&mut self, drafts: Vec<Draft>, worked: Worked) -> Vec<Effect> {
        let effects = self.hand_over(drafts);
        if let Some(visit) = &mut self.visit {
            visit.put(worked);
        }
        effects
    }

    /// What the open visit would come to with these drafts.
    #[must_use]
    pub fn trial(&self, drafts: &[Draft]) -> Option<Worked> {
        let (visit, holder) = (self.visit.as_ref()?, self.holder()?);
        let kept = self.lines.get(&visit.id).map_or(&[][..], Vec::as_slice);
        let all = self.on_the_way.iter().chain(&visit.loose).chain(drafts);
        Some(Worked::of(fold_one(visit.id, kept, all, holder), self.reader.units))
    }

    fn hand_over(&mut self, drafts: Vec<Draft>) -> Vec<Effect> {
        if drafts.is_empty() {
            return Vec::new();
        }
        let just_looking = self.visit.as_ref().is_some_and(|visit| visit.keep == Keep::JustLooking);
        let mut effects = Vec::new();
        match (&mut self.visit, just_looking, &self.keeping) {
            (Some(visit), true, _) => visit.loose.extend(drafts),
            (_, _, Keeping::Here { .. }) => {
                self.safety.only_here += drafts.len();
                self.on_the_way.extend(drafts.clone());
                effects.push(Effect::Append(drafts));
            }
            // Nothing keeps them; they are shown as long as the page is open, and said to be nowhere.
            _ => {
                self.safety.only_here += drafts.len();
                self.on_the_way.extend(drafts);
            }
        }
        effects
    }

    /// Lines that are kept now: they are no longer on the way.
    pub fn kept(&mut self, lines: Vec<Line>) {
        for line in &lines {
            self.on_the_way.retain(|draft| draft.id != line.id());
        }
        self.hold(lines);
    }

    /// Holds lines that are in the store.
    pub fn hold(&mut self, lines: Vec<Line>) {
        for line in lines {
            let of = self.lines.entry(line.about().id).or_default();
            match of.iter_mut().find(|known| known.id() == line.id()) {
                // What was withdrawn elsewhere goes here too.
                Some(known) => *known = line,
                None => of.push(line),
            }
        }
    }

    /// Works out again what is here, and the open visit.
    pub fn refold(&mut self) {
        let Some(holder) = self.holder() else { return };
        let units = self.reader.units;
        if let Some(visit) = &mut self.visit {
            let kept = self.lines.get(&visit.id).map_or(&[][..], Vec::as_slice);
            visit.refold(kept, &self.on_the_way, holder, units);
        }
    }

    /// Works out again what is here, all of it.
    pub fn refill_shelf(&mut self) {
        let Some(holder) = self.holder() else { return };
        let mut book = notebook::Notebook::new(holder.notebook);
        for line in self.lines.values().flatten() {
            book.take(line.clone());
        }
        for draft in &self.on_the_way {
            book.write(holder.device, draft.clone());
        }
        self.shelf = Shelf::of(&notebook::folded(&book));
    }

    /// How many lines are nowhere but here.
    fn only_here(&self) -> usize {
        let since = self.safety.last_copy.unwrap_or(i64::MIN);
        let later = |at: i64| at > since;
        let kept = self.lines.values().flatten().filter(|line| later(line.at().utc_milliseconds)).count();
        kept + self.on_the_way.len()
    }

    /// Counts again what is nowhere but here.
    pub fn count_only_here(&mut self) {
        self.safety.only_here = self.only_here();
    }
}
