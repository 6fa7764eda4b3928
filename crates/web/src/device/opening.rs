//! The notebook of this browser is opened: the one that was here, else the one that a server at this address keeps, else a
//! new one.

use leptos::prelude::window;
use notebook::{DeviceId, Line, NotebookId};
use store::{IndexedStore, Store, StoreError};
use yard::Chance;

use super::{ask, clock, remember};

/// Under this name it is remembered which notebook this browser keeps.
const NOTEBOOK: &str = "notebook";

/// Opens it, and reads all its lines.
///
/// *Errors*: the browser keeps nothing; it is held by another window; it is damaged.
pub async fn open() -> Result<(IndexedStore, Vec<Line>), StoreError> {
    let (_, mut chance) = clock::now();
    let wanted = match here().await? {
        Some(notebook) => notebook,
        None => claimed(new_here(&mut chance).await),
    };
    open_this(wanted, chance.device()).await
}

/// Opens one notebook, as a new device of it where it was not here before, and reads all its lines.
pub async fn open_this(
    notebook: NotebookId,
    device: DeviceId,
) -> Result<(IndexedStore, Vec<Line>), StoreError> {
    let store = IndexedStore::open(notebook, device).await?;
    let lines = store.lines().await?;
    remember::remember(NOTEBOOK, &notebook.to_string());
    Ok((store, lines))
}

/// The notebook that this browser keeps: the one it remembers; where it forgot, the one with the most in it.
async fn here() -> Result<Option<NotebookId>, StoreError> {
    let remembered = remember::recall(NOTEBOOK).as_deref().and_then(NotebookId::parse);
    let all = match IndexedStore::notebooks().await {
        Ok(all) => all,
        // A browser that does not tell what it keeps still keeps it.
        Err(StoreError::System { .. }) => return Ok(remembered),
        Err(error) => return Err(error),
    };
    if let Some(known) = remembered.filter(|known| all.contains(known)) {
        return Ok(Some(known));
    }
    let (_, mut chance) = clock::now();
    let mut most: Option<(u64, NotebookId)> = None;
    for notebook in all {
        let held = IndexedStore::open(notebook, chance.device()).await?.held().await?.count();
        if most.is_none_or(|(lines, _)| held > lines) {
            most = Some((held, notebook));
        }
    }
    Ok(most.map(|(_, notebook)| notebook))
}

/// The notebook that a browser begins with.
async fn new_here(chance: &mut Chance) -> NotebookId {
    match ask::notebook().await {
        Ok(there) => there.notebook,
        // No server of ours at this address, no signal, or it asks for a secret that nobody gave yet.
        Err(_) => chance.notebook(),
    }
}

/// Two windows that open for the first time together must not begin two notebooks: the first to write its name down is
/// followed by the other.
fn claimed(wanted: NotebookId) -> NotebookId {
    // Windows of one address take turns at their storage, so whoever comes second reads what the first wrote.
    let first = remember::recall(NOTEBOOK).as_deref().and_then(NotebookId::parse);
    if let Some(first) = first {
        return first;
    }
    remember::remember(NOTEBOOK, &wanted.to_string());
    wanted
}

/// Whether the browser says that it has a signal; one that does not know says that it has.
pub fn has_signal() -> bool {
    window().navigator().on_line()
}
