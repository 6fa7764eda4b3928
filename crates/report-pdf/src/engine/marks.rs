//! Names for the parts of lists that the template lays out itself, so that they are heard as lists.

// The macro writes the paths of its own crate.
#![allow(unreachable_pub)]

use typst_library::foundations::{Content, Dict, Func, NativeFunc, dict, func};
use typst_library::pdf::PdfMarkerTag;

/// What stands before an item of a list.
#[func]
fn item_label(
    /// What stands there.
    body: Content,
) -> Content {
    PdfMarkerTag::ListItemLabel(body)
}

/// An item of a list.
#[func]
fn item_body(
    /// The item.
    body: Content,
) -> Content {
    PdfMarkerTag::ListItemBody(body)
}

/// Both, for the template.
pub fn functions() -> Dict {
    dict! {
        "label" => Func::from(item_label::data()),
        "body" => Func::from(item_body::data()),
    }
}
