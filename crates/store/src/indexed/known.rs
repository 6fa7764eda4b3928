//! What a change has found out about lines and things, so that each is looked up once, and many together.

use std::collections::{BTreeMap, BTreeSet};

use notebook::{About, Line, NotebookId};
use web_sys::IdbObjectStore;

use super::requests::ask;
use super::rows::{self, Key};
use crate::StoreError;

/// What was found out, and what the change itself has done since.
#[derive(Default)]
pub(super) struct Known {
    /// Of lines, whether they are here and whether something is written in them.
    lines: BTreeMap<Key, Option<Written>>,
    things: BTreeMap<About, Thing>,
}

/// Whether a line that is here has what was written in it.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Written {
    Here,
    TakenOut,
}

/// Whether a thing was withdrawn.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Thing {
    Stays,
    Withdrawn,
}

impl Written {
    pub(super) fn of(line: &Line) -> Self {
        if line.written().is_some() { Self::Here } else { Self::TakenOut }
    }
}

impl Known {
    /// Looks up which of these lines are here.
    pub(super) async fn look_up_lines(
        &mut self,
        store: &IdbObjectStore,
        lines: &[Line],
        notebook: NotebookId,
    ) -> Result<(), StoreError> {
        let keys: BTreeSet<Key> = lines.iter().map(rows::key).collect();
        let new = keys.into_iter().filter(|key| !self.lines.contains_key(key));
        let asked: Vec<_> = new.map(|key| (key, ask(store.get(&rows::given(&key))))).collect();
        for (key, answer) in asked {
            let row = answer.await?;
            let known =
                if row.is_undefined() { None } else { Some(Written::of(&rows::line_of(&row, notebook)?)) };
            self.lines.insert(key, known);
        }
        Ok(())
    }

    /// Looks up which of these things were withdrawn.
    pub(super) async fn look_up_things(
        &mut self,
        store: &IdbObjectStore,
        things: impl Iterator<Item = About>,
    ) -> Result<(), StoreError> {
        let things: BTreeSet<About> = things.filter(|about| !self.things.contains_key(about)).collect();
        let asked: Vec<_> =
            things.into_iter().map(|about| (about, ask(store.get(&rows::word(about))))).collect();
        for (about, answer) in asked {
            let thing = if answer.await?.is_undefined() { Thing::Stays } else { Thing::Withdrawn };
            self.things.insert(about, thing);
        }
        Ok(())
    }

    /// The line that was looked up, if it is here.
    pub(super) fn line(&self, key: &Key) -> Option<Written> {
        self.lines.get(key).copied().flatten()
    }

    /// A line that nobody can have kept before.
    pub(super) fn is_new(&mut self, key: Key) {
        self.lines.insert(key, None);
    }

    /// The change keeps a line so.
    pub(super) fn is_here(&mut self, key: Key, written: Written) {
        self.lines.insert(key, Some(written));
    }

    /// The thing that was looked up.
    pub(super) fn thing(&self, about: About) -> Thing {
        self.things.get(&about).copied().unwrap_or(Thing::Stays)
    }

    /// The change withdraws a thing; tells how it was before.
    pub(super) fn withdraw(&mut self, about: About) -> Thing {
        self.things.insert(about, Thing::Withdrawn).unwrap_or(Thing::Stays)
    }
}
