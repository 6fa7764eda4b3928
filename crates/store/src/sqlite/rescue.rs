//! What can still be read out of a damaged file, byte by byte.
//!
//! Nothing is believed of how the pages hang together: a line is looked for wherever it may begin, and its own check sum
//! says whether it is one. So a broken page costs the lines that stand on it and no others, whatever else stood there.

mod pages;
mod record;

use std::collections::BTreeSet;
use std::path::Path;

use notebook::{About, Line, NotebookId, is_withdrawal};

use self::pages::{Image, Pages};
use self::record::Loose;
use crate::StoreError;
use crate::copies::{beside, by_the_system};

/// What was found in a damaged file.
#[derive(Debug, Default)]
pub(crate) struct Found {
    /// The notebook's name, where a line shows that it is this one.
    pub(crate) notebook: Option<NotebookId>,
    /// Every line that is whole, each once.
    pub(crate) lines: Vec<Line>,
}

/// Every line that can be found in a file and in the log beside it. A line is known to be whole only where the notebook's name
/// is known: it is looked for in the file as well, for the case that none is expected.
///
/// *Errors*: those of the system; of a file that cannot be read at all.
pub(crate) fn find(path: &Path, expected: Option<NotebookId>) -> Result<Found, StoreError> {
    let file = std::fs::read(path).map_err(|error| by_the_system(&error))?;
    // Where it was closed there is no log.
    let log = std::fs::read(beside(path, "-wal")).unwrap_or_default();
    Ok(find_in(&file, &log, expected))
}

fn find_in(file: &[u8], log: &[u8], expected: Option<NotebookId>) -> Found {
    let mut loose = BTreeSet::new();
    let mut withdrawn = BTreeSet::new();
    let mut names: BTreeSet<NotebookId> = BTreeSet::new();
    for size in pages::sizes(file, log) {
        let pages = Pages::of(file, log, size);
        for image in pages.images() {
            gather(&pages, &image, &mut loose, &mut withdrawn);
            names.extend(record::names(image.bytes));
        }
    }
    let whole = |name: NotebookId| loose.iter().any(|loose| loose.sealed(name).is_some());
    let Some(notebook) = expected.into_iter().chain(names).find(|name| whole(*name)) else {
        return Found::default();
    };
    let mut lines = std::collections::BTreeMap::new();
    for line in loose.iter().filter_map(|loose| loose.sealed(notebook)) {
        // An older page may hold what was taken out since.
        let gone = withdrawn.contains(&line.about()) && !is_withdrawal(&line);
        let line = if gone { line.bare() } else { line };
        let known = lines.entry((line.device(), line.number(), line.hash())).or_insert_with(|| line.clone());
        if known.written().is_none() {
            *known = line;
        }
    }
    Found { notebook: Some(notebook), lines: lines.into_values().collect() }
}

/// Gathers whatever looks like a line or like a withdrawn thing.
fn gather(
    pages: &Pages<'_>,
    image: &Image<'_>,
    loose: &mut BTreeSet<Loose>,
    withdrawn: &mut BTreeSet<About>,
) {
    for at in 0..image.bytes.len() {
        let rest = &image.bytes[at..];
        if let Some(shape) = record::line_shape(rest) {
            // What stands on other pages may be older in the file than in the log.
            let payloads =
                [pages.payload(image, at, shape.bytes), pages.payload_of_file(image, at, shape.bytes)];
            loose.extend(payloads.into_iter().flatten().filter_map(|payload| Loose::read(&shape, &payload)));
        } else if let Some(about) = record::withdrawn(rest) {
            withdrawn.insert(about);
        }
    }
}
