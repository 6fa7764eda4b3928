//! A store in memory that fails when it is told to: for tests of whoever keeps things.

use std::cell::RefCell;
use std::collections::VecDeque;

use notebook::{DeviceId, Draft, Line, Notebook, NotebookId, Ranges, Taken, ThingId};

use crate::{Store, StoreError, TakenIn};

/// How the next writing fails.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fails {
    /// It does not.
    Not,
    /// Before anything is kept.
    Before(StoreError),
    /// After all is kept, as when the power goes before the answer comes.
    After(StoreError),
}

/// A notebook in memory.
#[derive(Debug)]
pub struct MemoryStore {
    book: RefCell<Notebook>,
    device: DeviceId,
    failing: RefCell<VecDeque<Fails>>,
}

impl MemoryStore {
    /// An empty notebook that this device writes to.
    #[must_use]
    pub fn new(notebook: NotebookId, device: DeviceId) -> Self {
        Self { book: RefCell::new(Notebook::new(notebook)), device, failing: RefCell::default() }
    }

    /// Tells how the next writings go, one after the other.
    pub fn fail(&self, next: impl IntoIterator<Item = Fails>) {
        self.failing.borrow_mut().extend(next);
    }

    fn write<T>(&self, work: impl FnOnce(&mut Notebook) -> T) -> Result<T, StoreError> {
        let fails = self.failing.borrow_mut().pop_front().unwrap_or(Fails::Not);
        if let Fails::Before(error) = fails {
            return Err(error);
        }
        let done = work(&mut self.book.borrow_mut());
        match fails {
            Fails::After(error) => Err(error),
            Fails::Not | Fails::Before(_) => Ok(done),
        }
    }
}

impl Store for MemoryStore {
    fn notebook(&self) -> NotebookId {
        self.book.borrow().id()
    }

    fn device(&self) -> DeviceId {
        self.device
    }

    async fn append(&self, drafts: Vec<Draft>) -> Result<Vec<Line>, StoreError> {
        self.write(|book| drafts.into_iter().map(|draft| book.write(self.device, draft)).collect())
    }

    async fn take(&self, lines: Vec<Line>) -> Result<TakenIn, StoreError> {
        self.write(|book| {
            let mut taken_in = TakenIn::default();
            lines.into_iter().for_each(|line| taken_in.count(book.take(line)));
            taken_in
        })
    }

    async fn held(&self) -> Result<Ranges, StoreError> {
        Ok(self.book.borrow().held().clone())
    }

    async fn lines_beyond(&self, held: &Ranges, most: usize) -> Result<Vec<Line>, StoreError> {
        Ok(self.book.borrow().lines_beyond(held).take(most).cloned().collect())
    }

    async fn lines_about(&self, thing: ThingId) -> Result<Vec<Line>, StoreError> {
        Ok(self.book.borrow().lines().filter(|line| line.about().id == thing).cloned().collect())
    }

    async fn lines(&self) -> Result<Vec<Line>, StoreError> {
        Ok(self.book.borrow().lines().cloned().collect())
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
