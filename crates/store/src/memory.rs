//! A store in memory that fails when it is told to: for tests of whoever keeps things.

use std::collections::VecDeque;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use notebook::{DeviceId, Draft, Line, Notebook, NotebookId, Ranges, Taken, ThingId};

use crate::reach::{Reach, can_be_kept, in_turn};
use crate::{Store, StoreError, TakenIn};

/// How the next writing fails.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fails {
    /// It does not.
    Not,
    /// Before anything is kept: a full disk, another writer that does not let go, a process killed before it wrote.
    Before(StoreError),
    /// After all is kept, as when the power goes before the answer comes.
    After(StoreError),
    /// It is told kept, but the disk only says so: it is gone when the power goes before the next honest writing.
    Lost,
}

/// A notebook in memory.
#[derive(Debug)]
pub struct MemoryStore {
    kept: Arc<Mutex<Kept>>,
    notebook: NotebookId,
    device: DeviceId,
}

#[derive(Debug)]
struct Kept {
    book: Notebook,
    /// What is truly on the disk, where that is less.
    settled: Option<Notebook>,
    writings: VecDeque<Fails>,
    readings: VecDeque<StoreError>,
}

impl MemoryStore {
    /// An empty notebook that this device writes to.
    #[must_use]
    pub fn new(notebook: NotebookId, device: DeviceId) -> Self {
        let kept = Kept {
            book: Notebook::new(notebook),
            settled: None,
            writings: VecDeque::new(),
            readings: VecDeque::new(),
        };
        Self { kept: Arc::new(Mutex::new(kept)), notebook, device }
    }

    /// Another window on the same notebook, as the same device.
    #[must_use]
    pub fn another_window(&self) -> Self {
        Self { kept: Arc::clone(&self.kept), ..*self }
    }

    /// Tells how the next writings go, one after the other, whichever window they come from.
    pub fn fail(&self, next: impl IntoIterator<Item = Fails>) {
        self.kept().writings.extend(next);
    }

    /// Tells why the next readings fail, one after the other: a damaged page, most often.
    pub fn fail_reading(&self, next: impl IntoIterator<Item = StoreError>) {
        self.kept().readings.extend(next);
    }

    /// Cuts the power: what the disk only said it had kept is gone.
    pub fn cut_power(&self) {
        let mut kept = self.kept();
        if let Some(settled) = kept.settled.take() {
            kept.book = settled;
        }
    }

    fn kept(&self) -> MutexGuard<'_, Kept> {
        self.kept.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn write<T>(&self, work: impl FnOnce(&mut Notebook) -> Result<T, StoreError>) -> Result<T, StoreError> {
        let mut kept = self.kept();
        let fails = kept.writings.pop_front().unwrap_or(Fails::Not);
        match fails {
            Fails::Before(error) => return Err(error),
            Fails::Lost if kept.settled.is_none() => kept.settled = Some(kept.book.clone()),
            // What is forced to the disk takes everything before it there.
            Fails::Not | Fails::After(_) => kept.settled = None,
            Fails::Lost => {}
        }
        let done = work(&mut kept.book)?;
        match fails {
            Fails::After(error) => Err(error),
            _ => Ok(done),
        }
    }

    fn read<T>(&self, work: impl FnOnce(&Notebook) -> T) -> Result<T, StoreError> {
        let mut kept = self.kept();
        kept.readings.pop_front().map_or_else(|| Ok(work(&kept.book)), Err)
    }
}

impl Store for MemoryStore {
    fn notebook(&self) -> NotebookId {
        self.notebook
    }

    fn device(&self) -> DeviceId {
        self.device
    }

    async fn append(&self, drafts: Vec<Draft>) -> Result<Vec<Line>, StoreError> {
        self.write(|book| {
            // Looked at for the last of them, so that all are kept or none.
            let mut last = book.next(self.device);
            let more = u64::try_from(drafts.len()).unwrap_or(u64::MAX);
            last.number = last.number.saturating_add(more);
            last.order = last.order.saturating_add(more);
            can_be_kept(&last)?;
            Ok(drafts.into_iter().map(|draft| book.write(self.device, draft)).collect())
        })
    }

    async fn take(&self, lines: Vec<Line>) -> Result<TakenIn, StoreError> {
        self.write(|book| {
            let mut taken_in = TakenIn::default();
            let mut reach = Reach::of(book.next(self.device).order - 1);
            for line in in_turn(lines) {
                let ours = line.notebook() == book.id() && line.is_whole();
                if ours && !reach.takes(&line) {
                    taken_in.beyond += 1;
                } else {
                    taken_in.count(book.take(line));
                }
            }
            Ok(taken_in)
        })
    }

    async fn held(&self) -> Result<Ranges, StoreError> {
        self.read(|book| book.held().clone())
    }

    async fn lines_beyond(&self, held: &Ranges, most: usize) -> Result<Vec<Line>, StoreError> {
        self.read(|book| book.lines_beyond(held).take(most).cloned().collect())
    }

    async fn lines_about(&self, thing: ThingId) -> Result<Vec<Line>, StoreError> {
        self.read(|book| book.lines().filter(|line| line.about().id == thing).cloned().collect())
    }

    async fn lines(&self) -> Result<Vec<Line>, StoreError> {
        self.read(|book| book.lines().cloned().collect())
    }
}

impl TakenIn {
    /// Adds what became of more lines.
    pub fn add(&mut self, other: Self) {
        self.new += other.new;
        self.known += other.known;
        self.filled_in += other.filled_in;
        self.changed += other.changed;
        self.foreign += other.foreign;
        self.beyond += other.beyond;
    }

    /// Counts what became of one line.
    pub fn count(&mut self, taken: Taken) {
        let counted = match taken {
            Taken::New => &mut self.new,
            Taken::Known => &mut self.known,
            Taken::FilledIn => &mut self.filled_in,
            Taken::Changed => &mut self.changed,
            Taken::Foreign => &mut self.foreign,
        };
        *counted += 1;
    }
}
