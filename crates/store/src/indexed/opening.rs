//! How a notebook's database is opened: made where there is none, brought up to date where it is older, left as it is where a
//! newer program made it.

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::{Array, Function, Promise, Reflect};
use notebook::{DeviceId, NotebookId};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Event, IdbDatabase, IdbFactory, IdbOpenDbRequest, IdbTransaction, IdbVersionChangeEvent};

use super::layout::{self, VERSION};
use super::requests::{ask, why_aborted};
use super::told::{in_words, name, told};
use crate::StoreError;

/// How long to wait for another window that still holds an older database open, in milliseconds. Our own choice: one that
/// writes lets go after a few; one that is stuck would hold us up for ever.
const PATIENCE_MILLISECONDS: i32 = 5_000;

/// How the browser answers.
enum Opened {
    Yes(IdbDatabase),
    Not(JsValue),
    HeldUp,
}

/// What became of bringing the database up to date, if that was needed.
#[derive(Default)]
struct Upgrade {
    transaction: Option<IdbTransaction>,
    failure: Option<StoreError>,
}

/// Opens the database of a notebook. One that is made new is written to as the device.
pub(super) async fn open(notebook: NotebookId, device: DeviceId) -> Result<IdbDatabase, StoreError> {
    let factory = factory()?;
    let request = factory.open_with_u32(&layout::name(notebook), VERSION).map_err(|error| refused(&error))?;
    let upgrade = Rc::new(RefCell::new(Upgrade::default()));
    let needed = when_needed(&request, notebook, device, &upgrade);
    let answer = opened(&request).await;
    if matches!(answer, Opened::HeldUp) {
        // When the other window closes at last, the browser still comes to it: it is done as asked, and let go.
        needed.forget();
        let opened = request.clone();
        let close = Closure::once_into_js(move || {
            if let Ok(database) = opened.result() {
                database.unchecked_into::<IdbDatabase>().close();
            }
        });
        request.set_onsuccess(Some(close.unchecked_ref()));
    } else {
        request.set_onupgradeneeded(None);
    }
    match answer {
        Opened::Yes(database) => Ok(database),
        Opened::HeldUp => Err(StoreError::HeldOpen),
        Opened::Not(error) => {
            let Upgrade { transaction, failure } = upgrade.take();
            match transaction.as_ref().and_then(why_aborted).or(failure) {
                Some(failure) => Err(failure),
                None => Err(not_opened(&factory, notebook, &error).await),
            }
        }
    }
}

/// The notebooks that this browser keeps for this site, by name.
pub(super) async fn notebooks() -> Result<Vec<NotebookId>, StoreError> {
    let factory = factory()?;
    let databases = Reflect::get(&factory, &"databases".into()).map_err(|error| told(&error))?;
    let Ok(databases) = databases.dyn_into::<Function>() else {
        return Err(StoreError::System { what: "this browser does not tell what it keeps".to_string() });
    };
    let promise: Promise =
        databases.call0(&factory).and_then(JsCast::dyn_into).map_err(|error| refused(&error))?;
    let found: Array =
        JsFuture::from(promise).await.map(JsCast::unchecked_into).map_err(|error| refused(&error))?;
    let names = found.iter().filter_map(|one| Reflect::get(&one, &"name".into()).ok()?.as_string());
    let mut notebooks: Vec<NotebookId> = names.filter_map(|name| layout::notebook(&name)).collect();
    notebooks.sort();
    Ok(notebooks)
}

fn factory() -> Result<IdbFactory, StoreError> {
    let found = Reflect::get(&js_sys::global(), &"indexedDB".into()).map_err(|error| refused(&error))?;
    found.dyn_into().map_err(|_| StoreError::Refused { what: "it has no IndexedDB".to_string() })
}

/// Brings the database up to date when the browser says that it must be. To be held until the request is answered.
fn when_needed(
    request: &IdbOpenDbRequest,
    notebook: NotebookId,
    device: DeviceId,
    upgrade: &Rc<RefCell<Upgrade>>,
) -> Closure<dyn FnMut(IdbVersionChangeEvent)> {
    let (asked, upgrade) = (request.clone(), Rc::clone(upgrade));
    let needed = Closure::once(move |event: IdbVersionChangeEvent| {
        let database = asked.result().map(JsCast::unchecked_into::<IdbDatabase>);
        let (Ok(database), Some(transaction)) = (database, asked.transaction()) else { return };
        let from = version(event.old_version());
        upgrade.borrow_mut().transaction = Some(transaction.clone());
        spawn_local(async move {
            let done = layout::upgrade(database, transaction.clone(), from, notebook, device).await;
            if let Err(error) = done {
                upgrade.borrow_mut().failure = Some(error);
                // Fails where the browser has broken it off already, which is as good.
                let _ = transaction.abort();
            }
        });
    });
    request.set_onupgradeneeded(Some(needed.as_ref().unchecked_ref()));
    needed
}

async fn opened(request: &IdbOpenDbRequest) -> Opened {
    let answer = Promise::new(&mut |resolve, reject| {
        request.set_onsuccess(Some(&resolve));
        request.set_onerror(Some(&reject));
    });
    let mut blocked = None;
    let patience = Promise::new(&mut |resolve, _| {
        let wait = Closure::once(move |_: Event| after(PATIENCE_MILLISECONDS, &resolve));
        request.set_onblocked(Some(wait.as_ref().unchecked_ref()));
        blocked = Some(wait);
    });
    let first = JsFuture::from(Promise::race(&Array::of2(&answer, &patience))).await;
    request.set_onblocked(None);
    drop(blocked);
    match first {
        Ok(event) if event.is_undefined() => Opened::HeldUp,
        Ok(_) => match request.result() {
            Ok(database) => Opened::Yes(database.unchecked_into()),
            Err(error) => Opened::Not(error),
        },
        Err(_) => Opened::Not(match request.error() {
            Ok(error) => error.map_or(JsValue::UNDEFINED, Into::into),
            Err(error) => error,
        }),
    }
}

/// Calls a function after a time, in a window and in a worker alike.
fn after(milliseconds: i32, call: &Function) {
    let timer = Reflect::get(&js_sys::global(), &"setTimeout".into()).and_then(JsCast::dyn_into::<Function>);
    if let Ok(timer) = timer {
        // Without a timer nothing is called, and the browser is waited for.
        let _ = timer.call2(&JsValue::UNDEFINED, call, &milliseconds.into());
    }
}

async fn not_opened(factory: &IdbFactory, notebook: NotebookId, error: &JsValue) -> StoreError {
    if name(error) != "VersionError" {
        return refused(error);
    }
    // Opened as whatever it is, to tell its version.
    match ask(factory.open(&layout::name(notebook)).map(Into::into)).await {
        Ok(found) => {
            let database: IdbDatabase = found.unchecked_into();
            let version = version(database.version());
            database.close();
            StoreError::Newer { version, known: VERSION }
        }
        Err(error) => error,
    }
}

/// What a browser says that lets nothing be kept: a page without an origin, a setting, some private windows.
fn refused(error: &JsValue) -> StoreError {
    match name(error).as_str() {
        "SecurityError" | "InvalidStateError" | "NotAllowedError" => {
            StoreError::Refused { what: in_words(error) }
        }
        _ => told(error),
    }
}

/// Versions are whole numbers that JavaScript carries as its only kind of number.
fn version(number: f64) -> u32 {
    number.to_string().parse().unwrap_or(u32::MAX)
}
