//! What browsers say when something fails, as what it means for the one who writes.

use wasm_bindgen::{JsCast, JsValue};
use web_sys::DomException;

use crate::StoreError;

/// What a failed call or request says.
///
/// *Source*: the names are those of the Web IDL standard, section "DOMException"; which is given when, of Indexed Database API
/// 3.0, section "Exceptions".
pub(super) fn told(error: &JsValue) -> StoreError {
    let what = in_words(error);
    match name(error).as_str() {
        "QuotaExceededError" => StoreError::Full,
        "ReadOnlyError" => StoreError::ReadOnly,
        // A row where none may be, a value that its file has lost, or a database without the parts it was made with.
        "ConstraintError" | "NotReadableError" | "NotFoundError" | "DataError" => {
            StoreError::Damaged { what }
        }
        _ => StoreError::System { what },
    }
}

/// The name of an exception; nothing where it is none.
pub(super) fn name(error: &JsValue) -> String {
    error.dyn_ref::<DomException>().map(DomException::name).unwrap_or_default()
}

/// All that it says.
pub(super) fn in_words(error: &JsValue) -> String {
    match error.dyn_ref::<DomException>() {
        Some(exception) => format!("{}: {}", exception.name(), exception.message()),
        None => error.as_string().unwrap_or_else(|| format!("{error:?}")),
    }
}

/// Something is not as this program keeps it.
pub(super) fn damaged(what: &str) -> StoreError {
    StoreError::Damaged { what: what.to_string() }
}
