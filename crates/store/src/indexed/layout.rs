//! What stands in a notebook's database, and how an older one becomes one of today.
//!
//! Version 2 is the first that the app ever had. Version 1, lines as texts in the order they came, was never handed out: it is
//! here so that the way from one version to the next is one that tests go, before anybody's readings depend on it. What an older
//! version kept is copied, not moved, and stays beside the new until something is withdrawn.

use js_sys::Array;
use notebook::{DeviceId, NotebookId};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{IdbDatabase, IdbIndexParameters, IdbObjectStore, IdbObjectStoreParameters, IdbTransaction};

use super::change::Change;
use super::requests::ask;
use super::rows::{ABOUT, PLACE, line_of_text};
use super::told::{damaged, told};
use crate::StoreError;

/// The version of the store: of its names, keys and indexes, not of what lines say.
pub(super) const VERSION: u32 = 2;

/// What the names of all notebooks' databases begin with.
const PREFIX: &str = "evenswath-notebook-";

/// The names of the notebook and of the device.
pub(super) const BOOK: &str = "book";
/// The lines.
pub(super) const LINES: &str = "lines";
/// The things that were withdrawn.
pub(super) const WITHDRAWN: &str = "withdrawn";
/// What older versions kept lines in.
pub(super) const OLDER: &[&str] = &["texts"];

/// The two names in [`BOOK`].
const NOTEBOOK: &str = "notebook";
const DEVICE: &str = "device";

/// The name of a notebook's database.
pub(super) fn name(notebook: NotebookId) -> String {
    format!("{PREFIX}{notebook}")
}

/// The notebook of a database, if it is one of a notebook.
pub(super) fn notebook(name: &str) -> Option<NotebookId> {
    name.strip_prefix(PREFIX).and_then(NotebookId::parse)
}

/// Makes the database one of today, from nothing or from an older version, inside the browser's own transaction for it.
pub(super) async fn upgrade(
    database: IdbDatabase,
    transaction: IdbTransaction,
    from: u32,
    notebook: NotebookId,
    device: DeviceId,
) -> Result<(), StoreError> {
    make(&database).map_err(|error| told(&error))?;
    let book = store(&transaction, BOOK)?;
    match from {
        0 => {
            for (key, value) in [(NOTEBOOK, notebook.to_string()), (DEVICE, device.to_string())] {
                ask(book.add_with_key(&value.into(), &key.into())).await?;
            }
            Ok(())
        }
        1 => from_texts(&transaction, &book).await,
        _ => Err(damaged(&format!("a version of its store that never was ({from})"))),
    }
}

fn make(database: &IdbDatabase) -> Result<(), JsValue> {
    let plain = IdbObjectStoreParameters::new();
    database.create_object_store_with_optional_parameters(BOOK, &plain)?;
    database.create_object_store_with_optional_parameters(WITHDRAWN, &plain)?;
    let lines = database.create_object_store_with_optional_parameters(LINES, &plain)?;
    let unique = IdbIndexParameters::new();
    unique.set_unique(true);
    lines.create_index_with_str_and_optional_parameters(PLACE, PLACE, &unique)?;
    lines.create_index_with_str_and_optional_parameters(ABOUT, ABOUT, &unique)?;
    Ok(())
}

/// Version 1: a store `names` with the two names, and a store `texts` of lines as texts.
async fn from_texts(transaction: &IdbTransaction, book: &IdbObjectStore) -> Result<(), StoreError> {
    let names = store(transaction, "names")?;
    let (notebook, device) = names_in(&names).await?;
    for (key, value) in [(NOTEBOOK, notebook.to_string()), (DEVICE, device.to_string())] {
        ask(book.add_with_key(&value.into(), &key.into())).await?;
    }
    let texts: Array = answered(ask(store(transaction, "texts")?.get_all()).await?)?;
    let lines: Result<Vec<_>, _> = texts.iter().map(|text| line_of_text(&text, notebook)).collect();
    let mut change = Change::within(transaction, notebook)?;
    change.copy(&lines?).await?;
    change.let_be();
    Ok(())
}

/// The names in a database of today.
pub(super) async fn names(transaction: &IdbTransaction) -> Result<(NotebookId, DeviceId), StoreError> {
    names_in(&store(transaction, BOOK)?).await
}

async fn names_in(book: &IdbObjectStore) -> Result<(NotebookId, DeviceId), StoreError> {
    let (notebook, device) = (ask(book.get(&NOTEBOOK.into())), ask(book.get(&DEVICE.into())));
    let (notebook, device) = (notebook.await?, device.await?);
    let notebook = notebook.as_string().and_then(|name| NotebookId::parse(&name));
    let device = device.as_string().and_then(|name| DeviceId::parse(&name));
    notebook.zip(device).ok_or_else(|| damaged("its names cannot be read"))
}

/// A part of the database.
pub(super) fn store(transaction: &IdbTransaction, name: &str) -> Result<IdbObjectStore, StoreError> {
    transaction.object_store(name).map_err(|error| told(&error))
}

/// An answer as what it should be.
pub(super) fn answered<T: JsCast>(answer: JsValue) -> Result<T, StoreError> {
    answer.dyn_into().map_err(|_| damaged("the browser's answer is not what was asked for"))
}
