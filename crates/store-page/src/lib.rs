//! What browser tests call: the suite that every store must pass, run inside a browser.
//!
//! Built for WebAssembly by `cargo xtask browser`. Everything it gives back is text, for the programs in `tools/browser`.

use store::conformance::{self, BOOK, DEVICE};
use store::{MemoryStore, Store};
use wasm_bindgen::prelude::wasm_bindgen;

/// What the suite finds wrong with the store in memory, a line each.
#[wasm_bindgen]
pub async fn suite_in_memory() -> Result<String, String> {
    suite(&MemoryStore::new(BOOK, DEVICE)).await
}

async fn suite(store: &impl Store) -> Result<String, String> {
    let faults = conformance::run(store).await.map_err(|error| error.to_string())?;
    Ok(faults.join("\n"))
}
