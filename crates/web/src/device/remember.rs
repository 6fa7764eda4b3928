//! Small things beside the notebook, in the browser's local storage. Where that is refused they are forgotten; nothing of
//! the notebook is among them.

use leptos::prelude::window;
use web_sys::Storage;
use words::Reader;
use yard::{LAST_COPY, OPEN, READER, TYPED};

use super::address;

/// What our names begin with, as other pages of the same address may remember things too.
const BEGIN: &str = "evenswath-";

fn storage() -> Option<Storage> {
    window().local_storage().ok().flatten()
}

/// What is remembered under a name.
pub fn recall(name: &str) -> Option<String> {
    storage()?.get_item(&format!("{BEGIN}{name}")).ok().flatten()
}

/// Remembers; empty forgets.
pub fn remember(name: &str, text: &str) {
    let Some(storage) = storage() else { return };
    let name = format!("{BEGIN}{name}");
    // Refused in private windows and where it is full; then it is not remembered.
    let _ = if text.is_empty() { storage.remove_item(&name) } else { storage.set_item(&name, text) };
}

/// Who reads, as it was chosen; the page has looked for the language already.
pub fn reader() -> Reader {
    recall(READER).as_deref().and_then(yard::reader_of).unwrap_or_default()
}

/// All that the state remembers, in the order it is taken up: the visit in the address before the one that was open.
pub fn all() -> Vec<(String, String)> {
    let pair = |name: &str| recall(name).map(|text| (name.to_string(), text));
    let mut pairs: Vec<_> = [READER, LAST_COPY].iter().filter_map(|name| pair(name)).collect();
    let open = recall(OPEN);
    match address::visit_at_start() {
        Some(visit) => {
            pairs.push((OPEN.to_string(), visit.clone()));
            // What was typed belongs to the visit that was open.
            if open.as_deref() == Some(visit.as_str()) {
                pairs.extend(pair(TYPED));
            }
        }
        None => {
            pairs.extend(pair(OPEN));
            pairs.extend(pair(TYPED));
        }
    }
    pairs
}
