//! The clock that ticks while a watch runs, and not otherwise.

use core::time::Duration;
use std::cell::Cell;

use leptos::leptos_dom::helpers::IntervalHandle;
use leptos::prelude::set_interval_with_handle;
use yard::{Event, Waits};

use crate::app::App;

/// Between two ticks. Our own choice: tenths of a second are shown, and the watch reads the clock and counts no ticks.
const BETWEEN: Duration = Duration::from_millis(100);

/// The clock.
#[derive(Default)]
pub struct Clock(Cell<Option<IntervalHandle>>);

impl Clock {
    /// Lets it tick, or stops it.
    pub fn run(&self, app: App, wanted: Waits) {
        let before = self.0.take();
        if !wanted.is_yes() {
            if let Some(runs) = before {
                runs.clear();
            }
            return;
        }
        let runs = before.or_else(|| set_interval_with_handle(move || app.send(Event::Tick), BETWEEN).ok());
        self.0.set(runs);
    }
}
