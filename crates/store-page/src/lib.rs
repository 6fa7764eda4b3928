//! What browser tests call: the suite that every store must pass, and a notebook that they write to, read and break.
//!
//! `cargo xtask browser` builds it for WebAssembly. Everything it takes and gives is numbers and text, for the programs in
//! `tools/browser`; an error is text that begins with its code.

use js_sys::Function;
use notebook::{DeviceId, Draft, Line, MOST_ENTRY_BYTES, Notebook, NotebookId, line_text, read_line, verify};
use store::conformance::{self, BOOK, DEVICE, draft, fact, withdrawal};
use store::{IndexedStore, MemoryStore, Store};
use units::Coded;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

/// What the suite finds wrong with the store in memory, a line each.
#[wasm_bindgen]
pub async fn suite_in_memory() -> Result<String, String> {
    suite(&MemoryStore::new(BOOK, DEVICE)).await
}

/// What the suite finds wrong with the store in IndexedDB, a line each. To be called where nothing is kept yet.
#[wasm_bindgen]
pub async fn suite_in_browser() -> Result<String, String> {
    suite(&IndexedStore::open(BOOK, DEVICE).await.map_err(text)?).await
}

async fn suite(store: &impl Store) -> Result<String, String> {
    Ok(conformance::run(store).await.map_err(text)?.join("\n"))
}

/// The notebooks that the browser keeps, by name, a line each.
#[wasm_bindgen]
pub async fn notebooks() -> Result<String, String> {
    let found = IndexedStore::notebooks().await.map_err(text)?;
    Ok(found.iter().map(NotebookId::to_string).collect::<Vec<_>>().join("\n"))
}

/// The names of the suite's notebook and device.
#[wasm_bindgen]
#[must_use]
pub fn names() -> String {
    format!("{BOOK}\n{DEVICE}")
}

/// So many lines of another device in the suite's notebook, a line of text each.
#[wasm_bindgen]
#[must_use]
pub fn lines_from_elsewhere(count: u32) -> String {
    let mut book = Notebook::new(BOOK);
    let device = DeviceId::from_bits(71);
    let lines = (0..count).map(|number| {
        let number = u128::from(number);
        line_text(&book.write(device, fact(1_000_000 + number, 1 + number % 2, "212 ft")))
    });
    lines.collect::<Vec<_>>().join("\n")
}

/// The suite's notebook, open in this window.
#[wasm_bindgen]
pub struct Kept(IndexedStore);

#[wasm_bindgen]
impl Kept {
    /// Opens it, or makes it anew, then written to as the device of this number.
    pub async fn open(device: u32) -> Result<Kept, String> {
        let device = DeviceId::from_bits(u128::from(device));
        Ok(Kept(IndexedStore::open(BOOK, device).await.map_err(text)?))
    }

    /// The device it is written to as.
    #[must_use]
    pub fn device(&self) -> String {
        self.0.device().to_string()
    }

    /// Keeps facts about a thing, the first with this name and the others with those that follow, in one change. Gives the number
    /// of the last.
    pub async fn write(&self, name: u32, count: u32, thing: u32, value: String) -> Result<f64, String> {
        let facts = (name..name + count).map(|name| fact(u128::from(name), u128::from(thing), &value));
        self.append(facts.collect()).await
    }

    /// A change of which the first line is well and the second is longer than a line may be.
    pub async fn write_too_much(&self, name: u32) -> Result<f64, String> {
        let name = u128::from(name);
        let long = draft(name + 1, 1, 1, &"x".repeat(MOST_ENTRY_BYTES + 1));
        self.append(vec![fact(name, 1, "well"), long]).await
    }

    /// Withdraws a thing.
    pub async fn withdraw(&self, name: u32, thing: u32) -> Result<f64, String> {
        self.append(vec![withdrawal(u128::from(name), u128::from(thing))]).await
    }

    async fn append(&self, drafts: Vec<Draft>) -> Result<f64, String> {
        let lines = self.0.append(drafts).await.map_err(text)?;
        let last = lines.last().map_or(0, Line::number);
        u32::try_from(last).map(f64::from).map_err(|error| error.to_string())
    }

    /// Takes lines in, a line of text each, and tells what became of them.
    pub async fn take(&self, lines: String) -> Result<String, String> {
        let lines: Result<Vec<Line>, _> = lines.lines().map(read_line).collect();
        let taken = self.0.take(lines.map_err(|error| error.to_string())?).await.map_err(text)?;
        Ok(format!("{taken:?}"))
    }

    /// Every line, a line of text each.
    pub async fn lines(&self) -> Result<String, String> {
        let lines = self.0.lines().await.map_err(text)?;
        Ok(lines.iter().map(line_text).collect::<Vec<_>>().join("\n"))
    }

    /// How many lines can be read and how many cannot.
    pub async fn readable(&self) -> Result<String, String> {
        let (lines, unreadable) = self.0.readable_lines().await.map_err(text)?;
        Ok(format!("{} and {unreadable} not", lines.len()))
    }

    /// What is wrong with the notebook, a line each: gaps, broken chains, two lines with one number.
    pub async fn faults(&self) -> Result<String, String> {
        let mut book = Notebook::new(BOOK);
        let lines = self.0.lines().await.map_err(text)?;
        let count = lines.len();
        lines.into_iter().for_each(|line| {
            book.take(line);
        });
        let mut faults: Vec<String> = verify(&book).iter().map(ToString::to_string).collect();
        if book.held() != &self.0.held().await.map_err(text)? {
            faults.push("what is held is told wrong".to_owned());
        }
        if book.len() != count {
            faults.push(format!("{count} lines were read, {} of them different", book.len()));
        }
        Ok(faults.join("\n"))
    }

    /// Calls back when this window lets go of the notebook.
    pub fn when_let_go(&self, tell: Function) {
        self.0.when_let_go(move || {
            // What a test's own function throws, the test sees by itself.
            let _ = tell.call0(&JsValue::UNDEFINED);
        });
    }
}

fn text(error: store::StoreError) -> String {
    format!("{}: {error}", error.code())
}
