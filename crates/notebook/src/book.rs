//! A notebook: a set of lines. Two notebooks are merged by taking the lines of both; it does not matter in which order,
//! how often or in how many parts.

use std::collections::{BTreeMap, BTreeSet};

use crate::entry::{Entry, Told};
use crate::hash::Hash;
use crate::ids::{DeviceId, LineId, NotebookId};
use crate::line::{About, Draft, Line, Standing};
use crate::ranges::Ranges;

/// Where a line stands among all others: by order, device and number; the check sum parts two that claim one place.
type Place = (u64, DeviceId, u64, Hash);

/// What became of a line that was handed in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Taken {
    /// It is new.
    New,
    /// It was there already.
    Known,
    /// It was there without what is written, and has it now.
    FilledIn,
    /// It was changed after it was sealed; it is not taken.
    Changed,
    /// It belongs to another notebook; it is not taken.
    Foreign,
}

/// A notebook.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notebook {
    id: NotebookId,
    lines: BTreeMap<Place, Line>,
    held: Ranges,
    /// The last line of each device, for the next one's place in the chain.
    ends: BTreeMap<DeviceId, (u64, Hash)>,
    withdrawn: BTreeSet<About>,
    order: u64,
}

impl Notebook {
    /// An empty notebook.
    #[must_use]
    pub const fn new(id: NotebookId) -> Self {
        Self {
            id,
            lines: BTreeMap::new(),
            held: Ranges::none(),
            ends: BTreeMap::new(),
            withdrawn: BTreeSet::new(),
            order: 0,
        }
    }

    /// Its name.
    #[must_use]
    pub const fn id(&self) -> NotebookId {
        self.id
    }

    /// Every line, in the order that folding goes by.
    pub fn lines(&self) -> impl Iterator<Item = &Line> {
        self.lines.values()
    }

    /// How many lines there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.lines.len()
    }

    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.lines.is_empty()
    }

    /// What it holds, as ranges of numbers for each device.
    #[must_use]
    pub const fn held(&self) -> &Ranges {
        &self.held
    }

    /// The things that their owner has withdrawn.
    pub fn withdrawn(&self) -> impl Iterator<Item = About> {
        self.withdrawn.iter().copied()
    }

    /// The line of a name. Names are looked for one by one: it is asked for what a person points at.
    #[must_use]
    pub fn line(&self, id: LineId) -> Option<&Line> {
        self.lines.values().find(|line| line.id == id)
    }

    /// The place that the next line of a device takes.
    #[must_use]
    pub fn next(&self, device: DeviceId) -> Standing {
        let (last, previous) = self.ends.get(&device).copied().unwrap_or((0, Hash::NOTHING));
        Standing {
            notebook: self.id,
            device,
            number: last.saturating_add(1),
            order: self.order.saturating_add(1),
            previous,
        }
    }

    /// Writes a draft as the next line of a device, and gives the line.
    pub fn write(&mut self, device: DeviceId, draft: Draft) -> Line {
        let line = Line::seal(draft, self.next(device));
        self.take(line.clone());
        line
    }

    /// Takes a line in.
    pub fn take(&mut self, line: Line) -> Taken {
        if line.notebook != self.id {
            return Taken::Foreign;
        }
        if !line.is_whole() {
            return Taken::Changed;
        }
        self.withdraw_by(&line);
        let line = if self.is_withdrawn(&line) { line.bare() } else { line };
        let place = (line.order, line.device, line.number, line.hash);
        if let Some(known) = self.lines.get_mut(&place) {
            if known.written.is_none() && line.written.is_some() {
                *known = line;
                return Taken::FilledIn;
            }
            return Taken::Known;
        }
        self.held.add(line.device, line.number);
        self.order = self.order.max(line.order);
        let end = self.ends.entry(line.device).or_insert((line.number, line.hash));
        // Of two lines that claim one number the chain goes on from the one that sorts last, on every device alike.
        if (line.number, line.hash) > *end {
            *end = (line.number, line.hash);
        }
        self.lines.insert(place, line);
        Taken::New
    }

    /// Takes every line of another notebook in.
    pub fn merge(&mut self, other: &Self) {
        other.lines().for_each(|line| {
            self.take(line.clone());
        });
    }

    /// The lines that another, who holds these, lacks.
    pub fn lines_beyond<'a>(&'a self, held: &'a Ranges) -> impl Iterator<Item = &'a Line> {
        self.lines.values().filter(|line| !held.holds(line.device, line.number))
    }

    /// Whether what is written in a line was withdrawn. The withdrawal itself stays.
    fn is_withdrawn(&self, line: &Line) -> bool {
        self.withdrawn.contains(&line.about) && !is_withdrawal(line)
    }

    /// Takes out everything about a thing whose owner withdraws it.
    fn withdraw_by(&mut self, line: &Line) {
        if !is_withdrawal(line) || !self.withdrawn.insert(line.about) {
            return;
        }
        let about = line.about;
        for known in self.lines.values_mut().filter(|known| known.about == about && !is_withdrawal(known)) {
            known.written = None;
        }
    }
}

/// Whether a line is a withdrawal: by it everything else about the same thing is taken out.
#[must_use]
pub fn is_withdrawal(line: &Line) -> bool {
    // Looked at before it is read, because nearly every line is none.
    let text = line.written.as_ref().map_or("", |written| written.text());
    text.contains("\"withdraw\"")
        && matches!(Told::of(line), Some(Told { entry: Entry::Withdraw { .. }, .. }))
}
