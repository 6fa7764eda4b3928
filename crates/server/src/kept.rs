//! The kept notebook as the server sees it: called on a thread that may wait, one caller at a time.
//!
//! [`store::Store`] also serves browsers, so its futures may not be sent between threads. Here each is made and waited
//! for on one thread that is allowed to block.

use std::sync::{Arc, Mutex, PoisonError};

use notebook::{Line, NotebookId, Ranges};
use store::{Store, StoreError, TakenIn};

use crate::problem::Problem;

/// Whether a second copy was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Copied {
    /// It was.
    Yes,
    /// This notebook is kept without one.
    NoneKept,
}

/// A kept notebook that several threads may use.
pub trait Kept: Send + Sync + 'static {
    /// The notebook.
    fn notebook(&self) -> NotebookId;

    /// What is held.
    fn held(&self) -> Result<Ranges, StoreError>;

    /// At most so many of the lines that another, who holds these, lacks.
    fn lines_beyond(&self, held: &Ranges, most: usize) -> Result<Vec<Line>, StoreError>;

    /// Takes lines in, all that are whole and of this notebook.
    fn take(&self, lines: Vec<Line>) -> Result<TakenIn, StoreError>;

    /// Brings the second copy up to date, where there is one.
    fn copy(&self) -> Result<Copied, StoreError> {
        Ok(Copied::NoneKept)
    }
}

/// Brings the second copy of a store up to date.
type Copying<S> = Box<dyn Fn(&S) -> Result<(), StoreError> + Send + Sync>;

/// Any store, for one caller at a time.
pub struct OneAtATime<S> {
    store: Mutex<S>,
    notebook: NotebookId,
    copying: Option<Copying<S>>,
}

impl<S: Store + Send + 'static> OneAtATime<S> {
    /// A store without a second copy.
    #[must_use]
    pub fn new(store: S) -> Self {
        Self { notebook: store.notebook(), store: Mutex::new(store), copying: None }
    }

    /// The same, with how its second copy is brought up to date.
    #[must_use]
    pub fn with_copy(self, copying: impl Fn(&S) -> Result<(), StoreError> + Send + Sync + 'static) -> Self {
        Self { copying: Some(Box::new(copying)), ..self }
    }

    fn with<T>(&self, work: impl FnOnce(&S) -> Result<T, StoreError>) -> Result<T, StoreError> {
        // A caller that fell over left the store as its transaction does: all or nothing.
        work(&self.store.lock().unwrap_or_else(PoisonError::into_inner))
    }
}

impl<S: Store + Send + 'static> Kept for OneAtATime<S> {
    fn notebook(&self) -> NotebookId {
        self.notebook
    }

    fn held(&self) -> Result<Ranges, StoreError> {
        self.with(|store| wait_for(store.held()))
    }

    fn lines_beyond(&self, held: &Ranges, most: usize) -> Result<Vec<Line>, StoreError> {
        self.with(|store| wait_for(store.lines_beyond(held, most)))
    }

    fn take(&self, lines: Vec<Line>) -> Result<TakenIn, StoreError> {
        self.with(|store| wait_for(store.take(lines)))
    }

    fn copy(&self) -> Result<Copied, StoreError> {
        match &self.copying {
            Some(copying) => self.with(copying).map(|()| Copied::Yes),
            None => Ok(Copied::NoneKept),
        }
    }
}

/// Waits for a future on this thread.
fn wait_for<T>(future: impl Future<Output = T>) -> T {
    struct Unpark(std::thread::Thread);
    impl std::task::Wake for Unpark {
        fn wake(self: Arc<Self>) {
            self.0.unpark();
        }
    }
    let waker = Arc::new(Unpark(std::thread::current())).into();
    let mut context = std::task::Context::from_waker(&waker);
    let mut future = std::pin::pin!(future);
    loop {
        match future.as_mut().poll(&mut context) {
            std::task::Poll::Ready(done) => return done,
            std::task::Poll::Pending => std::thread::park(),
        }
    }
}

/// Does something with the notebook on a thread that may wait.
pub(crate) async fn off_thread<T: Send + 'static>(
    kept: &Arc<dyn Kept>,
    work: impl FnOnce(&dyn Kept) -> Result<T, StoreError> + Send + 'static,
) -> Result<T, Problem> {
    let kept = Arc::clone(kept);
    let done = tokio::task::spawn_blocking(move || work(kept.as_ref())).await;
    match done {
        Ok(Ok(value)) => Ok(value),
        Ok(Err(error)) => {
            // The code alone: what the system says may name a folder, and so a person.
            tracing::warn!(code = units::Coded::code(&error), "the notebook could not be kept or read");
            Err(Problem::of_store(&error))
        }
        Err(_fell_over) => {
            tracing::error!("the notebook's own work fell over");
            Err(Problem::Fault)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_future_that_is_not_ready_at_once_is_waited_for() {
        let (sender, receiver) = tokio::sync::oneshot::channel();
        let thread = std::thread::spawn(move || {
            std::thread::sleep(std::time::Duration::from_millis(20));
            sender.send(7)
        });
        assert_eq!(wait_for(receiver), Ok(7));
        assert_eq!(thread.join().unwrap(), Ok(()));
    }
}
