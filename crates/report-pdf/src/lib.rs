//! Sheets as PDF.
//!
//! [`pdf`] sets a [`report::Sheet`] on pages of the same sizes and margins as its HTML when that is printed, and tags
//! what each part is, so that it can be heard as well as read. Every text goes in as data and never as markup: a name may
//! hold any sign there is.
//!
//! The engine that sets the pages takes minutes to build. It stands behind the feature `engine`; without it, [`pdf`] says
//! so.

#[cfg(feature = "engine")]
mod engine;
mod error;

pub use error::PdfError;

use report::Sheet;

/// Returns the sheet as a PDF file: the same bytes for the same sheet, wherever and whenever it is made.
///
/// # Errors
///
/// [`PdfError::NotBuilt`] where the program was built without the engine; [`PdfError::Failed`] if the engine cannot set
/// the sheet, which would be a mistake of ours.
pub fn pdf(sheet: &Sheet) -> Result<Vec<u8>, PdfError> {
    #[cfg(feature = "engine")]
    {
        engine::pdf(sheet)
    }
    #[cfg(not(feature = "engine"))]
    {
        let _ = sheet;
        Err(PdfError::NotBuilt)
    }
}
