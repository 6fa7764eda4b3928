//! Parts of a browser that some lack, or that are too new to have a name in Rust: they are asked for by name, and are none
//! where they are not there.

use js_sys::{Array, Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// A property; none where it is missing or empty.
pub fn get(of: &JsValue, name: &str) -> Option<JsValue> {
    let found = Reflect::get(of, &name.into()).ok()?;
    (!found.is_undefined() && !found.is_null()).then_some(found)
}

/// Calls a method; none where it is missing or refuses.
pub fn call(of: &JsValue, name: &str, with: &[&JsValue]) -> Option<JsValue> {
    let method: Function = get(of, name)?.dyn_into().ok()?;
    let with: Array = with.iter().copied().collect();
    method.apply(of, &with).ok()
}

/// Calls a method that promises something, and waits for it.
pub async fn ask(of: &JsValue, name: &str, with: &[&JsValue]) -> Option<JsValue> {
    let promise: Promise = call(of, name, with)?.dyn_into().ok()?;
    JsFuture::from(promise).await.ok()
}

/// An object of these properties.
pub fn object(pairs: &[(&str, &JsValue)]) -> JsValue {
    let object = js_sys::Object::new();
    for (name, value) in pairs {
        // Setting a property of a new plain object cannot fail.
        let _ = Reflect::set(&object, &(*name).into(), value);
    }
    object.into()
}

/// The navigator, as an object whose parts may be missing.
pub fn navigator() -> JsValue {
    leptos::prelude::window().navigator().into()
}
