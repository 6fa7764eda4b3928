//! What is kept, in the order it was written: one change after the other, each answered before the next begins.

use std::cell::{Cell, RefCell};
use std::collections::VecDeque;
use std::rc::Rc;

use notebook::{Draft, Line, NotebookId, Ranges};
use store::{IndexedStore, Store, StoreError};
use wasm_bindgen_futures::spawn_local;
use yard::{Event, Keeping};

use super::{clock, opening, other_windows, remember};
use crate::app::App;

/// Who keeps the notebook.
#[derive(Clone, Default)]
pub struct Keeper(Rc<Work>);

#[derive(Default)]
struct Work {
    store: RefCell<Option<Rc<IndexedStore>>>,
    waiting: RefCell<VecDeque<Job>>,
    goes_on: Cell<bool>,
}

/// A change to be made, or a look at what another window changed.
enum Job {
    Open,
    Append(Vec<Draft>),
    TakeIn(Vec<Line>),
    Adopt(NotebookId, Vec<Line>),
    Reread,
}

impl Keeper {
    /// Opens the notebook.
    pub fn open(&self, app: App) {
        self.then(app, Job::Open);
    }

    /// Keeps drafts.
    pub fn append(&self, app: App, drafts: Vec<Draft>) {
        self.then(app, Job::Append(drafts));
    }

    /// Takes lines in.
    pub fn take_in(&self, app: App, lines: Vec<Line>) {
        self.then(app, Job::TakeIn(lines));
    }

    /// Keeps another notebook from now on.
    pub fn adopt(&self, app: App, notebook: NotebookId, lines: Vec<Line>) {
        self.then(app, Job::Adopt(notebook, lines));
    }

    /// Looks for what other windows wrote.
    pub fn reread(&self, app: App) {
        self.then(app, Job::Reread);
    }

    /// The store, once it is open.
    pub fn store(&self) -> Option<Rc<IndexedStore>> {
        self.0.store.borrow().clone()
    }

    fn then(&self, app: App, job: Job) {
        self.0.waiting.borrow_mut().push_back(job);
        if self.0.goes_on.replace(true) {
            return;
        }
        let keeper = self.clone();
        spawn_local(async move {
            loop {
                let next = keeper.0.waiting.borrow_mut().pop_front();
                let Some(job) = next else { break };
                keeper.work(app, job).await;
            }
            keeper.0.goes_on.set(false);
        });
    }

    async fn work(&self, app: App, job: Job) {
        let answer = match job {
            Job::Open => return self.opened(app, opening::open().await),
            Job::Adopt(notebook, lines) => return self.opened(app, adopted(notebook, lines).await),
            Job::Append(drafts) => self.appended(app, drafts).await,
            Job::TakeIn(lines) => self.taken(app, lines).await,
            Job::Reread => self.read_again(app).await,
        };
        if let Err(error) = answer {
            // All that is not kept is tried again together, so what waits behind is not tried alone and out of its order.
            self.0.waiting.borrow_mut().retain(|job| !matches!(job, Job::Append(_)));
            app.send(Event::NotKept { why: app.look(|state| state.words.error(&error)) });
        }
    }

    fn opened(&self, app: App, opened: Result<(IndexedStore, Vec<Line>), StoreError>) {
        let (store, lines) = match opened {
            Ok(opened) => opened,
            Err(error) => {
                app.send(Event::StoreRefused { why: app.look(|state| state.words.error(&error)) });
                app.send(Event::Remembered(remember::all()));
                return;
            }
        };
        let (notebook, device) = (store.notebook(), store.device());
        let keeper = self.clone();
        store.when_let_go(move || {
            keeper.0.store.take();
            app.send(Event::NotKept { why: app.look(|state| state.words.error(&StoreError::Closed)) });
        });
        self.0.store.replace(Some(Rc::new(store)));
        let first = app.look(|state| state.keeping == Keeping::Opening);
        app.send(Event::StoreOpened { notebook, device, lines });
        if first {
            app.send(Event::Remembered(remember::all()));
        }
        app.device().exchange.soon(app);
    }

    /// The store; that it was let go of, where there is none any more.
    fn at_work(&self) -> Result<Rc<IndexedStore>, StoreError> {
        self.store().ok_or(StoreError::Closed)
    }

    async fn appended(&self, app: App, drafts: Vec<Draft>) -> Result<(), StoreError> {
        // What was kept meanwhile is not kept twice: only what is still on its way goes.
        let drafts: Vec<Draft> = app.look(|state| {
            let waits = |draft: &Draft| state.on_the_way.iter().any(|waiting| waiting.id == draft.id);
            drafts.into_iter().filter(waits).collect()
        });
        if drafts.is_empty() {
            return Ok(());
        }
        let lines = self.at_work()?.append(drafts).await?;
        app.send(Event::Kept(lines));
        other_windows::tell();
        app.device().exchange.soon(app);
        Ok(())
    }

    async fn taken(&self, app: App, lines: Vec<Line>) -> Result<(), StoreError> {
        let taken = self.at_work()?.take(lines.clone()).await?;
        if taken.new + taken.filled_in > 0 {
            let whole = lines.into_iter().filter(Line::is_whole).collect();
            app.send(Event::Arrived(whole));
            other_windows::tell();
        }
        Ok(())
    }

    async fn read_again(&self, app: App) -> Result<(), StoreError> {
        let Some(store) = self.store() else { return Ok(()) };
        let lines = store.lines_beyond(&held(app), usize::MAX).await?;
        if !lines.is_empty() {
            app.send(Event::Arrived(lines));
        }
        Ok(())
    }
}

/// Keeps another notebook: it is opened as a new device, and its lines are taken in.
async fn adopted(notebook: NotebookId, lines: Vec<Line>) -> Result<(IndexedStore, Vec<Line>), StoreError> {
    let (_, mut chance) = clock::now();
    let (store, _) = opening::open_this(notebook, chance.device()).await?;
    store.take(lines).await?;
    let lines = store.lines().await?;
    Ok((store, lines))
}

/// What this window knows of the notebook.
fn held(app: App) -> Ranges {
    let mut held = Ranges::none();
    app.look(|state| {
        for line in state.lines.values().flatten() {
            held.add(line.device(), line.number());
        }
    });
    held
}
