//! The visit file: TOML that a person fills in, read into a [`Visit`] with every mistake pointed at.
//!
//! One table of sections and fields ([`SECTIONS`]) says what there is; the reader, the empty file to fill in
//! ([`template`]) and the JSON Schema ([`schema`]) all follow from it.

mod catching;
mod controller;
mod error;
mod fields;
mod ground;
mod machine;
mod mistake;
mod plan;
mod readings;
mod schema;
mod section;
mod setting;
mod template;

use core::cell::RefCell;

use toml::de::DeTable;

pub use error::{FileError, FileErrors};
pub use fields::{Field, SECTIONS, Section, Several, Shape};
pub use schema::schema;
pub use template::{Comment, template, template_in};

use crate::record::{About, Setting, Visit};
use section::Errors;

pub(crate) use mistake::{Mistake, Wanted};
pub(crate) use section::{Names, Part};

/// The largest file taken, in bytes. Our own limit: the largest boom's visit is far below it.
const LARGEST: usize = 1_000_000;

/// Returns the visit that a file tells of.
///
/// *Errors*: all of them at once, each with its line and column, what was given and what would do: not UTF-8,
/// not TOML, an unknown or missing field, a value that is none.
pub fn read(bytes: &[u8]) -> Result<Visit, FileErrors> {
    parts(bytes, section::names_of_a_visit, visit_of)
}

/// Reads the parts of a TOML file in which these names may stand; all mistakes at once.
pub(crate) fn parts<T>(
    bytes: &[u8],
    names: Names,
    read: impl FnOnce(&Part<'_>) -> T,
) -> Result<T, FileErrors> {
    if bytes.len() > LARGEST {
        return Err(FileErrors::one(FileError::too_large(LARGEST)));
    }
    let text =
        core::str::from_utf8(bytes).map_err(|error| FileErrors::one(FileError::not_text(bytes, &error)))?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let document =
        DeTable::parse(text).map_err(|error| FileErrors::one(FileError::not_toml(text, &error)))?;
    let errors: Errors = RefCell::new(Vec::new());
    let whole = Part::whole(document.get_ref(), text, &errors, names);
    let read = read(&whole);
    let found = errors.into_inner();
    if found.is_empty() { Ok(read) } else { Err(FileErrors::new(found, text)) }
}

fn visit_of(whole: &Part<'_>) -> Visit {
    let about = whole.part("visit").map(|part| About {
        sprayer: part.text("sprayer"),
        farm: part.text("farm"),
        date: part.date("date"),
        operator: part.text("operator"),
        with: part.text("with"),
        notes: part.text("notes"),
    });
    Visit {
        about: about.unwrap_or_default(),
        machine: whole.part("sprayer").and_then(|part| machine::machine(&part)),
        setting: whole.part("setting").map_or_else(Setting::default, |part| setting::setting(&part)),
        look: whole.part("look").map(|part| setting::look(&part)).unwrap_or_default(),
        seen: whole.part("look").map(|part| setting::seen(&part)).unwrap_or_default(),
        symptoms: whole.part("symptoms").map(|part| setting::symptoms(&part)).unwrap_or_default(),
        spacing: whole.part("spacing").and_then(|part| ground::spacing(&part)),
        drive: whole.part("drive").and_then(|part| ground::drive(&part)),
        catch: whole.part("catch").and_then(|part| catching::catching(&part)),
        controller: whole.part("controller").map(|part| controller::controller(&part)).unwrap_or_default(),
        refill: whole.part("refill").and_then(|part| ground::refill(&part)),
        target: whole.part("target").and_then(|part| plan::target(&part)),
        products: whole.parts("product").iter().filter_map(plan::product).collect(),
        job: whole.part("job").map(|part| plan::job(&part)).unwrap_or_default(),
    }
}
