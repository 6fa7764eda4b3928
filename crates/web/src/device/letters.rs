//! The type that a sheet carries with it when it is handed over, fetched from the app's own files.

use std::cell::RefCell;
use std::rc::Rc;

use wasm_bindgen_futures::spawn_local;

use crate::app::App;
use crate::shell;

/// The weights of our sheets, as CSS numbers them, and their names in `page/boot.js`.
const WEIGHTS: [(u16, &str); 2] = [(400, "regular"), (700, "bold")];

/// Weight and WOFF2 file of each.
type Fetched = Rc<Vec<(u16, Vec<u8>)>>;

/// The type, once it was fetched.
#[derive(Default)]
pub struct Letters(RefCell<Option<Fetched>>);

impl Letters {
    /// Fetches it, so that it is here when a sheet is handed over: a browser hands over only right after a tap.
    pub fn fetch(&self, app: App) {
        if self.0.borrow().is_none() {
            spawn_local(async move {
                ready(app).await;
            });
        }
    }

    /// The type, where it is here.
    pub fn here(&self) -> Option<Fetched> {
        self.0.borrow().clone()
    }
}

/// The type, fetched where it is not here. What is not to be had is left out: the sheet is then set in the type of wherever it
/// is opened, and all its words are there.
pub async fn ready(app: App) -> Fetched {
    let device = app.device();
    if let Some(here) = device.letters.here() {
        return here;
    }
    let mut fetched = Vec::new();
    for (weight, name) in WEIGHTS {
        if let Some(bytes) = shell::file(name).await {
            fetched.push((weight, bytes));
        }
    }
    let fetched = Rc::new(fetched);
    if fetched.len() == WEIGHTS.len() {
        *device.letters.0.borrow_mut() = Some(Rc::clone(&fetched));
    }
    fetched
}
