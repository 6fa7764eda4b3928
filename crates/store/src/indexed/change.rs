//! Everything that is written, inside one transaction: all of it is kept, or nothing.

use js_sys::Array;
use notebook::{
    About, DeviceId, Draft, Hash, Line, MOST_ENTRY_BYTES, NotebookId, Standing, Taken, is_withdrawal,
};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{IdbCursor, IdbCursorDirection, IdbDatabase, IdbObjectStore, IdbTransaction};

use super::known::{Known, Thing, Written};
use super::layout::{LINES, OLDER, WITHDRAWN, answered, store};
use super::requests::{ask, end, why_aborted, writing};
use super::rows::{self, ABOUT, Key, PLACE};
use super::told::{damaged, told};
use crate::reach::{Reach, can_be_kept, in_turn};
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
    known: Known,
    state: State,
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
            known: Known::default(),
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
        let highest = self.highest()?;
        // Asked together with the other two: one way there and back for the most usual change, a single reading.
        let things = drafts.iter().map(|draft| draft.about);
        self.known.look_up_things(&self.withdrawn, things).await?;
        let (number, previous) = match cursor(last.await?) {
            Some(at) => {
                let key = rows::key_of(&at.key().map_err(|error| told(&error))?)?;
                (rows::device_and_number(&key).1, rows::hash(&key))
            }
            None => (0, Hash::NOTHING),
        };
        let mut standing = Standing {
            notebook: self.notebook,
            device,
            number: number.saturating_add(1),
            order: highest.await?.saturating_add(1),
            previous,
        };
        let more = u64::try_from(drafts.len()).unwrap_or(u64::MAX);
        can_be_kept(&Standing {
            number: standing.number.saturating_add(more),
            order: standing.order.saturating_add(more),
            ..standing
        })?;
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
            self.known.is_new(rows::key(&line));
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
        let mut reach = Reach::of(self.highest()?.await?);
        for some in in_turn(lines).chunks(AT_ONCE) {
            self.look_up(some).await?;
            for line in some {
                let became = if line.notebook() != self.notebook {
                    Taken::Foreign
                } else if !line.is_whole() {
                    Taken::Changed
                } else if !reach.takes(line) {
                    taken.beyond += 1;
                    continue;
                } else {
                    self.keep(line.clone()).await?.1
                };
                taken.count(became);
            }
        }
        Ok(taken)
    }

    /// Copies lines that an older version kept here.
    pub(super) async fn copy(&mut self, lines: &[Line]) -> Result<(), StoreError> {
        for some in lines.chunks(AT_ONCE) {
            self.look_up(some).await?;
            for line in some {
                self.keep(line.clone()).await?;
            }
        }
        Ok(())
    }

    /// The highest order of all lines; nought where there is none. Asked at once, answered when it is awaited.
    fn highest(&self) -> Result<impl Future<Output = Result<u64, StoreError>> + use<>, StoreError> {
        let places = self.lines.index(PLACE).map_err(|error| told(&error))?;
        let last =
            ask(places.open_key_cursor_with_range_and_direction(&JsValue::NULL, IdbCursorDirection::Prev));
        Ok(async move {
            let place = cursor(last.await?).map(|at| at.key().map_err(|error| told(&error)));
            Ok(place.transpose()?.map_or(0, |place| rows::order_of(&place)))
        })
    }

    /// Keeps a line that was looked up, without what is written where its thing was withdrawn; gives it as it was kept.
    async fn keep(&mut self, line: Line) -> Result<(Line, Taken), StoreError> {
        let about = line.about();
        let withdraws = is_withdrawal(&line);
        if withdraws && self.known.withdraw(about) == Thing::Stays {
            self.withdraw(about).await?;
        }
        let goes = !withdraws && self.known.thing(about) == Thing::Withdrawn;
        let line = if goes { line.bare() } else { line };
        let key = rows::key(&line);
        let written = Written::of(&line);
        let became = match self.known.line(&key) {
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
        self.known.is_here(key, written);
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
                self.known.is_here(key, Written::TakenOut);
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

    async fn look_up(&mut self, lines: &[Line]) -> Result<(), StoreError> {
        self.known.look_up_lines(&self.lines, lines, self.notebook).await?;
        self.known.look_up_things(&self.withdrawn, lines.iter().map(Line::about)).await
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
