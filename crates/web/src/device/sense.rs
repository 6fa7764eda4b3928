//! The speed that the position sensor tells, only while it is asked for.

use std::cell::{Cell, RefCell};

use leptos::prelude::window;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;
use web_sys::PositionOptions;
use yard::{Event, Waits};

use super::js;
use crate::app::App;

/// What the browser calls with a position.
type Told = Closure<dyn FnMut(JsValue)>;

/// The sensor.
#[derive(Default)]
pub struct Sensor {
    watch: Cell<Option<i32>>,
    /// Called by the browser; here so that it lives as long as it is called.
    told: RefCell<Option<Told>>,
}

impl Sensor {
    /// Asks the sensor, or lets it go.
    pub fn run(&self, app: App, wanted: Waits) {
        let Ok(sensor) = window().navigator().geolocation() else { return };
        if let Some(watch) = self.watch.take() {
            sensor.clear_watch(watch);
        }
        self.told.take();
        if !wanted.is_yes() {
            return;
        }
        let told = Closure::<dyn FnMut(JsValue)>::new(move |position: JsValue| {
            if let Some(event) = speed(&position) {
                app.send(event);
            }
        });
        let options = PositionOptions::new();
        options.set_enable_high_accuracy(true);
        // Refused, or none there: nothing is told, and the screen says that it waits.
        let watch = sensor.watch_position_with_error_callback_and_options(
            told.as_ref().unchecked_ref(),
            None,
            &options,
        );
        self.watch.set(watch.ok());
        self.told.replace(Some(told));
    }
}

/// The speed in a position, where the device says one. Browsers give no range of the speed; only some give it beside.
fn speed(position: &JsValue) -> Option<Event> {
    let place = js::get(position, "coords")?;
    let metres_a_second = js::get(&place, "speed")?.as_f64().filter(|speed| speed.is_finite())?;
    let doubt = js::get(&place, "speedAccuracy").and_then(|doubt| doubt.as_f64());
    Some(Event::SpeedSensed { metres_a_second, doubt })
}
