//! The app as a browser starts it: `page/boot.js` loads this module, and what it shows goes into the page's `#yard`.

mod app;
mod device;
mod shell;
mod told;
mod views;

fn main() {
    // On a machine without a page there is nothing to show; `cargo check` and the tests build this all the same.
    if cfg!(target_arch = "wasm32") {
        shell::mount(app::Yard);
    }
}
