//! The notebook in a browser: one IndexedDB database for each notebook, transactions that are written through to the disk.
//!
//! Several windows of one browser are one device. Each writes inside a transaction of its own, and the browser lets one through
//! at a time, so that no two give one number. The module compiles anywhere, so that it can be checked; it runs in browsers.

mod change;
mod known;
mod layout;
mod opening;
mod requests;
mod rows;
mod told;

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::Array;
use notebook::{DeviceId, Draft, Line, NotebookId, Ranges, ThingId};
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;
use web_sys::{Event, IdbDatabase, IdbIndex, IdbObjectStore};

use self::change::Change;
use self::layout::{BOOK, LINES, answered};
use self::requests::{ask, reading};
use self::rows::{ABOUT, PLACE};
use self::told::told;
use crate::{Store, StoreError, TakenIn};

/// How many lines are read together. Our own choice: enough to keep the browser busy, few enough to hold in memory.
const AT_ONCE: usize = 512;

/// A notebook in this browser.
pub struct IndexedStore {
    database: IdbDatabase,
    notebook: NotebookId,
    device: DeviceId,
    connection: Rc<RefCell<Connection>>,
    /// Called by the browser; here so that it lives as long as the store.
    _let_go: Closure<dyn FnMut(Event)>,
}

/// Whether the browser still lets us at the database, and whom to tell when it does not any more.
enum Connection {
    Open(Vec<Box<dyn FnOnce()>>),
    LetGo,
}

impl IndexedStore {
    /// Opens the notebook that this browser keeps, or makes a new one that is written to as the device. One that is here keeps
    /// its own device.
    ///
    /// *Errors*: no room; storage refused; a newer program's database; another window that holds an older one open and does
    /// not let go; a damaged one.
    pub async fn open(notebook: NotebookId, device: DeviceId) -> Result<Self, StoreError> {
        let database = opening::open(notebook, device).await?;
        let connection = Rc::new(RefCell::new(Connection::Open(Vec::new())));
        // Another window brings a newer program, or the person clears the site's data. Changes on their way are still ended.
        let let_go = Closure::<dyn FnMut(Event)>::new({
            let (database, connection) = (database.clone(), Rc::clone(&connection));
            move |_| {
                database.close();
                let before = connection.replace(Connection::LetGo);
                if let Connection::Open(told) = before {
                    told.into_iter().for_each(|tell| tell());
                }
            }
        });
        database.set_onversionchange(Some(let_go.as_ref().unchecked_ref()));
        database.set_onclose(Some(let_go.as_ref().unchecked_ref()));
        let mut store = Self { database, notebook, device, connection, _let_go: let_go };
        let (found, device) = layout::names(&reading(&store.database, &[BOOK])?).await?;
        if found != notebook {
            return Err(StoreError::Other);
        }
        store.device = device;
        Ok(store)
    }

    /// The notebooks that this browser keeps for this site.
    ///
    /// *Errors*: storage refused; a browser that does not tell.
    pub async fn notebooks() -> Result<Vec<NotebookId>, StoreError> {
        opening::notebooks().await
    }

    /// Calls back when this window has let go of the notebook and keeps nothing any more, at once if it has already: another
    /// window brought a newer program, or the site's data were cleared. Loading the page again helps.
    pub fn when_let_go(&self, tell: impl FnOnce() + 'static) {
        match &mut *self.connection.borrow_mut() {
            Connection::Open(told) => {
                told.push(Box::new(tell));
                return;
            }
            Connection::LetGo => {}
        }
        tell();
    }

    /// Every line that can be read, in the order of the notebook, and how many cannot: for saving what is whole of a notebook that
    /// is damaged, where [`Store::lines`] gives an error.
    ///
    /// *Errors*: those of the database as a whole.
    pub async fn readable_lines(&self) -> Result<(Vec<Line>, usize), StoreError> {
        let rows: Array = answered(ask(self.lines_store()?.get_all()).await?)?;
        let mut lines: Vec<Line> =
            rows.iter().filter_map(|row| rows::line_of(&row, self.notebook).ok()).collect();
        lines.sort_by_key(|line| (line.order(), line.device(), line.number(), line.hash()));
        let unreadable = usize::try_from(rows.length()).unwrap_or(usize::MAX).saturating_sub(lines.len());
        Ok((lines, unreadable))
    }

    fn lines_store(&self) -> Result<IdbObjectStore, StoreError> {
        layout::store(&reading(&self.database, &[LINES])?, LINES)
    }
}

impl Drop for IndexedStore {
    fn drop(&mut self) {
        self.database.set_onversionchange(None);
        self.database.set_onclose(None);
        // Changes on their way are still ended.
        self.database.close();
    }
}

impl Store for IndexedStore {
    fn notebook(&self) -> NotebookId {
        self.notebook
    }

    fn device(&self) -> DeviceId {
        self.device
    }

    async fn append(&self, drafts: Vec<Draft>) -> Result<Vec<Line>, StoreError> {
        if drafts.is_empty() {
            return Ok(Vec::new());
        }
        let mut change = Change::begin(&self.database, self.notebook)?;
        let lines = change.append(self.device, drafts).await?;
        change.finish().await?;
        Ok(lines)
    }

    async fn take(&self, lines: Vec<Line>) -> Result<TakenIn, StoreError> {
        if lines.is_empty() {
            return Ok(TakenIn::default());
        }
        let mut change = Change::begin(&self.database, self.notebook)?;
        let taken = change.take(lines).await?;
        change.finish().await?;
        Ok(taken)
    }

    async fn held(&self) -> Result<Ranges, StoreError> {
        let keys: Array = answered(ask(self.lines_store()?.get_all_keys()).await?)?;
        let mut held = Ranges::none();
        for key in keys {
            let (device, number) = rows::device_and_number(&rows::key_of(&key)?);
            held.add(device, number);
        }
        Ok(held)
    }

    async fn lines_beyond(&self, held: &Ranges, most: usize) -> Result<Vec<Line>, StoreError> {
        let lines = self.lines_store()?;
        // By the keys alone it is seen what is lacking; only that is read.
        let keys: Array = answered(ask(index(&lines, PLACE)?.get_all_keys()).await?)?;
        let mut lacking = Vec::new();
        for key in keys {
            let (device, number) = rows::device_and_number(&rows::key_of(&key)?);
            if !held.holds(device, number) {
                lacking.push(key);
            }
            if lacking.len() == most {
                break;
            }
        }
        let mut found = Vec::with_capacity(lacking.len());
        for some in lacking.chunks(AT_ONCE) {
            let asked: Vec<_> = some.iter().map(|key| ask(lines.get(key))).collect();
            for answer in asked {
                found.push(rows::line_of(&answer.await?, self.notebook)?);
            }
        }
        Ok(found)
    }

    async fn lines_about(&self, thing: ThingId) -> Result<Vec<Line>, StoreError> {
        let lines = self.lines_store()?;
        let about = rows::of_thing(thing)?;
        self.lines_of(ask(index(&lines, ABOUT)?.get_all_with_key(&about)).await?)
    }

    async fn lines(&self) -> Result<Vec<Line>, StoreError> {
        let lines = self.lines_store()?;
        self.lines_of(ask(index(&lines, PLACE)?.get_all()).await?)
    }
}

impl IndexedStore {
    fn lines_of(&self, rows: JsValue) -> Result<Vec<Line>, StoreError> {
        let rows: Array = answered(rows)?;
        rows.iter().map(|row| rows::line_of(&row, self.notebook)).collect()
    }
}

fn index(lines: &IdbObjectStore, name: &str) -> Result<IdbIndex, StoreError> {
    lines.index(name).map_err(|error| told(&error))
}
