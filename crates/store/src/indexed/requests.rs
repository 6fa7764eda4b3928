//! IndexedDB's requests and transactions as futures.
//!
//! A transaction ends by itself as soon as nothing is asked of it any more, so within one nothing else may be awaited. Futures
//! made here go on in the same turn of the browser in which the answer comes, while the transaction still takes questions.

use js_sys::{Array, Function, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{IdbDatabase, IdbRequest, IdbTransaction, IdbTransactionMode};

use super::told::{name, told};
use crate::StoreError;

/// Asks at once, so that several questions can be on their way together, and gives the answer when it is awaited.
pub(super) fn ask(request: Result<IdbRequest, JsValue>) -> impl Future<Output = Result<JsValue, StoreError>> {
    let asked = request.map(|request| {
        let answer = Promise::new(&mut |resolve, reject| {
            request.set_onsuccess(Some(&resolve));
            request.set_onerror(Some(&reject));
        });
        (JsFuture::from(answer), request)
    });
    async move {
        let (answer, request) = asked.map_err(|error| told(&error))?;
        match answer.await {
            Ok(_) => request.result().map_err(|error| told(&error)),
            Err(_) => Err(match request.error() {
                Ok(Some(error)) => told(&error),
                Ok(None) => StoreError::System { what: "a request failed".to_string() },
                Err(error) => told(&error),
            }),
        }
    }
}

/// How a transaction ends: well, when all of it is kept. To be called before it can end.
pub(super) fn end(transaction: &IdbTransaction) -> impl Future<Output = Result<(), StoreError>> + use<> {
    let transaction = transaction.clone();
    let ended = JsFuture::from(Promise::new(&mut |resolve, reject| {
        transaction.set_oncomplete(Some(&resolve));
        transaction.set_onabort(Some(&reject));
    }));
    async move {
        match ended.await {
            Ok(_) => Ok(()),
            Err(_) => Err(why_aborted(&transaction)
                .unwrap_or(StoreError::System { what: "it was broken off".to_string() })),
        }
    }
}

/// Why the browser broke a transaction off, if it did.
pub(super) fn why_aborted(transaction: &IdbTransaction) -> Option<StoreError> {
    transaction.error().map(|error| told(&error))
}

/// A transaction that reads.
pub(super) fn reading(database: &IdbDatabase, stores: &[&str]) -> Result<IdbTransaction, StoreError> {
    database
        .transaction_with_str_sequence_and_mode(&names(stores), IdbTransactionMode::Readonly)
        .map_err(|error| not_begun(&error))
}

/// A transaction that writes, and that is complete only when the browser has told the system to write through to the disk:
/// by themselves most browsers say so as soon as the system has taken it, and then it would not survive the power going.
pub(super) fn writing(database: &IdbDatabase, stores: &[&str]) -> Result<IdbTransaction, StoreError> {
    let begin = || -> Result<IdbTransaction, JsValue> {
        let options = Object::new();
        Reflect::set(&options, &"durability".into(), &"strict".into())?;
        // Called by name, because web-sys counts the options among what may still change.
        let function: Function = Reflect::get(database, &"transaction".into())?.dyn_into()?;
        function.call3(database, &names(stores), &"readwrite".into(), &options)?.dyn_into()
    };
    begin().map_err(|error| not_begun(&error))
}

fn not_begun(error: &JsValue) -> StoreError {
    match name(error).as_str() {
        // The connection is closed: another window made room for a newer program, or the browser cleared its data.
        "InvalidStateError" => StoreError::Closed,
        _ => told(error),
    }
}

fn names(stores: &[&str]) -> JsValue {
    stores.iter().map(|name| JsValue::from(*name)).collect::<Array>().into()
}
