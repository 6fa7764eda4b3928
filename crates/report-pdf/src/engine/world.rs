//! All that the engine can reach: the template, the sheet and our two fonts. No files, no clock, no network.

use std::sync::LazyLock;

use figures::fonts::{BOLD_TTF, REGULAR_TTF};
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Dict, Duration};
use typst::syntax::{FileId, Source};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Library, LibraryExt, World};

/// How each block is set.
const TEMPLATE: &str = include_str!("../sheet.typ");

struct Fonts {
    fonts: Vec<Font>,
    book: LazyHash<FontBook>,
}

static FONTS: LazyLock<Fonts> = LazyLock::new(|| {
    let fonts: Vec<Font> =
        [REGULAR_TTF, BOLD_TTF].into_iter().flat_map(|file| Font::iter(Bytes::new(file))).collect();
    let book = LazyHash::new(FontBook::from_fonts(&fonts));
    Fonts { fonts, book }
});

static SOURCE: LazyLock<Source> = LazyLock::new(|| Source::detached(TEMPLATE));

/// What lies before the engine for one sheet.
pub struct Desk {
    library: LazyHash<Library>,
}

impl Desk {
    /// For the sheet that is given as data.
    pub fn new(sheet: Dict) -> Self {
        // Lets a table say what it is to those who hear it.
        let features = [Feature::A11yExtras].into_iter().collect();
        let library = Library::builder().with_inputs(sheet).with_features(features).build();
        Self { library: LazyHash::new(library) }
    }
}

impl World for Desk {
    fn library(&self) -> &LazyHash<Library> {
        &self.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &FONTS.book
    }

    fn main(&self) -> FileId {
        SOURCE.id()
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        if id == SOURCE.id() { Ok(SOURCE.clone()) } else { Err(FileError::AccessDenied) }
    }

    fn file(&self, _: FileId) -> FileResult<Bytes> {
        Err(FileError::AccessDenied)
    }

    fn font(&self, index: usize) -> Option<Font> {
        FONTS.fonts.get(index).cloned()
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}
