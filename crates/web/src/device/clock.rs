//! When something happens, and the chance that comes with it.

use leptos::prelude::window;
use yard::{Chance, Moment};

/// Bytes of chance with an event: the seed of [`Chance`].
const SEED_BYTES: usize = 32;

/// This moment by the device's two clocks, and fresh chance.
pub fn now() -> (Moment, Chance) {
    let at = moment();
    (at, Chance::new(seed(), &at))
}

/// This moment by the device's two clocks.
#[allow(clippy::cast_possible_truncation, reason = "milliseconds since 1970 and minutes of a day fit")]
fn moment() -> Moment {
    let wall = js_sys::Date::now();
    // JavaScript says how far UTC is ahead of the wall clock; lines have it the other way round.
    let behind = js_sys::Date::new_0().get_timezone_offset();
    let steady = window().performance().map_or(wall, |performance| performance.now());
    Moment { wall: wall as i64, offset_minutes: -behind as i16, steady }
}

/// Chance of the browser. A browser without any is older than WebAssembly; names would still differ by their time.
fn seed() -> [u8; SEED_BYTES] {
    let mut seed = [0; SEED_BYTES];
    if let Ok(crypto) = window().crypto() {
        let _ = crypto.get_random_values_with_u8_array(&mut seed);
    }
    seed
}
