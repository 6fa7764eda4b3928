//! The notebook kept: on disk, in a browser, in memory for tests. One trait, and one set of tests that all of them pass.
//!
//! A store gives each line its number, order and place in the chain inside the same transaction that keeps it, so that two
//! windows of one device never give one number twice. When [`Store::append`] has answered, the lines are kept whatever
//! happens next. A store does not know what a line's entry means, but for one thing: what an owner withdraws is taken out in
//! the transaction that keeps the withdrawal.

pub mod conformance;
#[cfg(not(target_arch = "wasm32"))]
pub mod copies;
mod error;
#[cfg(feature = "indexed")]
mod indexed;
mod memory;
mod reach;
#[cfg(not(target_arch = "wasm32"))]
mod sqlite;

pub use error::StoreError;
#[cfg(feature = "indexed")]
pub use indexed::IndexedStore;
pub use memory::{Fails, MemoryStore};
pub use reach::{FARTHEST, HIGHEST};
#[cfg(not(target_arch = "wasm32"))]
pub use sqlite::{Opening, SqliteStore};

use notebook::{DeviceId, Draft, Line, NotebookId, Ranges, ThingId};

/// Runs a future of a store that waits for nothing but the disk, as those of [`MemoryStore`] and `SqliteStore` do.
///
/// *Errors*: those of the store; that it waits for something else, where it does.
pub fn now<T>(work: impl Future<Output = Result<T, StoreError>>) -> Result<T, StoreError> {
    let mut work = core::pin::pin!(work);
    match work.as_mut().poll(&mut core::task::Context::from_waker(core::task::Waker::noop())) {
        core::task::Poll::Ready(done) => done,
        core::task::Poll::Pending => {
            Err(StoreError::System { what: "the store waits for something else than its disk".to_string() })
        }
    }
}

/// What became of lines from elsewhere.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct TakenIn {
    /// How many were new.
    pub new: usize,
    /// How many were here already.
    pub known: usize,
    /// How many were here without what is written and have it now.
    pub filled_in: usize,
    /// How many were changed after they were sealed, and were not taken.
    pub changed: usize,
    /// How many belong to another notebook, and were not taken.
    pub foreign: usize,
    /// How many stand so far ahead of all that is known that nobody can have come there by writing ([`FARTHEST`]), and were
    /// not taken.
    pub beyond: usize,
}

/// A kept notebook.
#[allow(async_fn_in_trait, reason = "browsers have one thread; who needs more names the store it uses")]
pub trait Store {
    /// The notebook that is kept.
    fn notebook(&self) -> NotebookId;

    /// The device that this store writes as.
    fn device(&self) -> DeviceId;

    /// Keeps drafts as the next lines of this device, all of them or none, and gives them back as lines.
    async fn append(&self, drafts: Vec<Draft>) -> Result<Vec<Line>, StoreError>;

    /// Takes lines from elsewhere in, all that are whole, of this notebook and within reach; the same lines again change
    /// nothing, and it does not matter in which order they are handed in.
    async fn take(&self, lines: Vec<Line>) -> Result<TakenIn, StoreError>;

    /// What is held, as ranges of numbers for each device.
    async fn held(&self) -> Result<Ranges, StoreError>;

    /// At most so many of the lines that another, who holds these, lacks; in the order of the notebook.
    async fn lines_beyond(&self, held: &Ranges, most: usize) -> Result<Vec<Line>, StoreError>;

    /// Every line about a thing, in the order of the notebook.
    async fn lines_about(&self, thing: ThingId) -> Result<Vec<Line>, StoreError>;

    /// Every line, in the order of the notebook.
    async fn lines(&self) -> Result<Vec<Line>, StoreError>;
}
