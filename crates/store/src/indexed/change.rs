//! Everything that is written, inside one transaction: all of it is kept, or nothing.

use std::collections::{BTreeMap, BTreeSet};

use js_sys::Array;
use notebook::{
    About, DeviceId, Draft, Hash, Line, MOST_ENTRY_BYTES, NotebookId, Standing, Taken, is_withdrawal,
};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{IdbCursor, IdbCursorDirection, IdbDatabase, IdbObjectStore, IdbTransaction};

use super::layout::{LINES, OLDER, WITHDRAWN, answered, store};
use super::requests::{ask, end, why_aborted, writing};
use super::rows::{self, ABOUT, Key, PLACE};
use super::told::{damaged, told};
use crate::{StoreError, TakenIn};

/// How many lines are looked up together. Our own choice: enough to keep the browser busy, few enough to hold in memory.
const AT_ONCE: usize = 256;

/// A transaction that writes. Dropped before it is finished, nothing of it is kept.
pub(super) struct Change {
    transaction: IdbTransaction,
    lines: IdbObjectStore,
    withdrawn: IdbObjectStore,
    /// What older versions kept lines in.
    older: Vec<IdbObjectStore>,
    notebook: NotebookId,
    /// Of lines that were looked up, whether they are here and whether something is written in them.
    known: BTreeMap<Key, Option<Written>>,
    /// Of things that were looked up, whether they were withdrawn.
    things: BTreeMap<About, Thing>,
    state: State,
}

/// Whether a line that is here has what was written in it.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Written {
    Here,
    TakenOut,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Thing {
    Stays,
    Withdrawn,
}

#[derive(PartialEq, Eq)]
enum State {
    Open,
    Finished,
}

impl Change {
    /// Begins one.
    pub(super) fn begin(database: &IdbDatabase, notebook: NotebookId) -> Result<Self, StoreError> {
        let there = database.object_store_names();
        let older = OLDER.iter().copied().filter(|name| there.contains(name));
        let stores: Vec<&str> = [LINES, WITHDRAWN].into_iter().chain(older).collect();
        Self::within(&writing(database, &stores)?, notebook)
    }

    /// One within a transaction that is open already.
    pub(super) fn within(transaction: &IdbTransaction, notebook: NotebookId) -> Result<Self, StoreError> {
        let there = transaction.object_store_names();
        let older = OLDER.iter().filter(|name| there.contains(name));
        Ok(Self {
            transaction: transaction.clone(),
            lines: store(transaction, LINES)?,
            withdrawn: store(transaction, WITHDRAWN)?,
            older: older.map(|name| store(transaction, name)).collect::<Result<_, _>>()?,
            notebook,
            known: BTreeMap::new(),
            things: BTreeMap::new(),
            state: State::Open,
        })
    }

    /// Keeps drafts as the next lines of a device.
    pub(super) async fn append(
        &mut self,
        device: DeviceId,
        drafts: Vec<Draft>,
    ) -> Result<Vec<Line>, StoreError> {
        let done = self.append_in_turn(device, drafts).await;
        done.map_err(|error| self.reason(error))
    }

    async fn append_in_turn(
        &mut self,
        device: DeviceId,
        drafts: Vec<Draft>,
    ) -> Result<Vec<Line>, StoreError> {
        let of_device = rows::of_device(device)?;
        let last =
            ask(self.lines.open_key_cursor_with_range_and_direction(&of_device, IdbCursorDirection::Prev));
        let by_place = self.lines.index(PLACE).map_err(|error| told(&error))?;
        let order =
            ask(by_place.open_key_cursor_with_range_and_direction(&JsValue::NULL, IdbCursorDirection::Prev));
        // Asked together with the other two: one way there and back for the most usual change, a single reading.
        self.look_up_things(drafts.iter().map(|draft| draft.about)).await?;
        let last = cursor(last.await?).map(|at| rows::key_of(&at.key().map_err(|error| told(&error))?));
        let order = cursor(order.await?).map(|at| at.key().map_err(|error| told(&error)));
        let (number, previous) = match last.transpose()? {
            Some(key) => (rows::device_and_number(&key).1, rows::hash(&key)),
            None => (0, Hash::NOTHING),
        };
        let order = order.transpose()?.map_or(0, |place| rows::order_of(&place));
        let mut standing = Standing {
            notebook: self.notebook,
            device,
            number: number.saturating_add(1),
            order: order.saturating_add(1),
            previous,
        };
        let mut lines = Vec::with_capacity(drafts.len());
        for draft in drafts {
            let line = Line::seal(draft, standing);
            standing = Standing {
                number: standing.number.saturating_add(1),
                order: standing.order.saturating_add(1),
                previous: line.hash(),
                ..standing
            };
            // A number that nobody had before is not looked up.
            self.known.insert(rows::key(&line), None);
            lines.push(self.keep(line).await?.0);
        }
        Ok(lines)
    }

    /// Takes lines from elsewhere in.
    pub(super) async fn take(&mut self, lines: Vec<Line>) -> Result<TakenIn, StoreError> {
        let done = self.take_in_turn(lines).await;
        done.map_err(|error| self.reason(error))
    }

    async fn take_in_turn(&mut self, lines: Vec<Line>) -> Result<TakenIn, StoreError> {
        let mut taken = TakenIn::default();
        for some in lines.chunks(AT_ONCE) {
            self.look_up_lines(some).await?;
            self.look_up_things(some.iter().map(Line::about)).await?;
            for line in some {
                let became = if line.notebook() != self.notebook {
                    Taken::Foreign
                } else if !line.is_whole() {
                    Taken::Changed
                } else {
                    self.keep(line.clone()).await?.1
                };
                taken.count(became);
            }
        }
        Ok(taken)
    }

    /// Keeps a line that was looked up, without what is written where its thing was withdrawn; gives it as it was kept.
    async fn keep(&mut self, line: Line) -> Result<(Line, Taken), StoreError> {
        let about = line.about();
        let withdraws = is_withdrawal(&line);
        if withdraws && self.things.insert(about, Thing::Withdrawn) != Some(Thing::Withdrawn) {
            self.withdraw(about).await?;
        }
        let withdrawn = self.things.get(&about) == Some(&Thing::Withdrawn);
        let line = if withdrawn && !withdraws { line.bare() } else { line };
        let key = rows::key(&line);
        let written = if line.written().is_some() { Written::Here } else { Written::TakenOut };
        let became = match self.known.get(&key).copied().flatten() {
            None => {
                readable_again(&line)?;
                // Not awaited: should it fail, the whole transaction does, and says why at its end.
                self.lines
                    .add_with_key(&rows::row(&line)?, &rows::given(&key))
                    .map_err(|error| told(&error))?;
                Taken::New
            }
            Some(Written::TakenOut) if written == Written::Here => {
                self.write_over(&key, &line)?;
                Taken::FilledIn
            }
            Some(_) => return Ok((line, Taken::Known)),
        };
        self.known.insert(key, Some(written));
        Ok((line, became))
    }

    /// Takes out what is written in everything else about a thing; withdrawals themselves stay.
    async fn withdraw(&mut self, about: About) -> Result<(), StoreError> {
        self.withdrawn.put_with_key(&JsValue::TRUE, &rows::word(about)).map_err(|error| told(&error))?;
        // What an older program kept holds it too. It was copied, whole, when this one came.
        for store in &self.older {
            store.clear().map_err(|error| told(&error))?;
        }
        let index = self.lines.index(ABOUT).map_err(|error| told(&error))?;
        let of_thing = rows::of_thing(about.id)?;
        let others: Array = answered(ask(index.get_all_with_key(&of_thing)).await?)?;
        for row in others {
            let other = rows::line_of(&row, self.notebook)?;
            if other.about() == about && other.written().is_some() && !is_withdrawal(&other) {
                let key = rows::key(&other);
                self.write_over(&key, &other.bare())?;
                self.known.insert(key, Some(Written::TakenOut));
            }
        }
        Ok(())
    }

    /// The only change to a line that is here: what is written goes, or comes back.
    fn write_over(&self, key: &Key, line: &Line) -> Result<(), StoreError> {
        let row = rows::row(line)?;
        self.lines.put_with_key(&row, &rows::given(key)).map_err(|error| told(&error))?;
        Ok(())
    }

    async fn look_up_lines(&mut self, lines: &[Line]) -> Result<(), StoreError> {
        let keys: BTreeSet<Key> = lines.iter().map(rows::key).collect();
        let new = keys.into_iter().filter(|key| !self.known.contains_key(key));
        let asked: Vec<_> = new.map(|key| (key, ask(self.lines.get(&rows::given(&key))))).collect();
        for (key, answer) in asked {
            let row = answer.await?;
            let known = if row.is_undefined() {
                None
            } else {
                let line = rows::line_of(&row, self.notebook)?;
                Some(if line.written().is_some() { Written::Here } else { Written::TakenOut })
            };
            self.known.insert(key, known);
        }
        Ok(())
    }

    async fn look_up_things(&mut self, things: impl Iterator<Item = About>) -> Result<(), StoreError> {
        let things: BTreeSet<About> = things.filter(|about| !self.things.contains_key(about)).collect();
        let asked: Vec<_> =
            things.into_iter().map(|about| (about, ask(self.withdrawn.get(&rows::word(about))))).collect();
        for (about, answer) in asked {
            let thing = if answer.await?.is_undefined() { Thing::Stays } else { Thing::Withdrawn };
            self.things.insert(about, thing);
        }
        Ok(())
    }

    /// Ends it, and comes back when all of it is on the disk.
    #[expect(
        deprecated,
        reason = "the second edition of the standard had no `commit`; the third has it again"
    )]
    pub(super) async fn finish(mut self) -> Result<(), StoreError> {
        self.state = State::Finished;
        let ended = end(&self.transaction);
        // Ends sooner where the browser can be told that nothing more comes; where it cannot, it finds out.
        let _ = self.transaction.commit();
        ended.await
    }

    /// Leaves the end to whoever began the transaction.
    pub(super) fn let_be(mut self) {
        self.state = State::Finished;
    }

    /// Of the errors of a transaction that the browser broke off, the one that made it do so.
    fn reason(&self, error: StoreError) -> StoreError {
        why_aborted(&self.transaction).unwrap_or(error)
    }
}

impl Drop for Change {
    fn drop(&mut self) {
        if self.state == State::Open {
            // Fails where the browser has broken it off already, which is as good.
            let _ = self.transaction.abort();
        }
    }
}

/// A line must be read again from its text. Only a line that no program of ours writes is not.
fn readable_again(line: &Line) -> Result<(), StoreError> {
    let bytes = line.written().map_or(0, |written| written.text().len());
    if line.number() == 0 || bytes > MOST_ENTRY_BYTES {
        return Err(damaged("a line without a number, or longer than lines are"));
    }
    Ok(())
}

fn cursor(answer: JsValue) -> Option<IdbCursor> {
    answer.dyn_into().ok()
}
