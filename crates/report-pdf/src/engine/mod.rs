//! The sheet set by the engine and written as PDF.

mod data;
mod letters;
mod marks;
mod world;

#[cfg(test)]
mod tests;

use report::Sheet;
use report::layout::fitted;
use typst::diag::SourceDiagnostic;
use typst::foundations::Smart;
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};
use world::Desk;

use crate::PdfError;

/// How many sheets long the engine keeps what it worked out for one, for the next that is like it. Our own choice:
/// somebody who makes a sheet mostly makes it again with one thing changed.
const REMEMBERED: usize = 2;

/// The sheet as PDF.
pub fn pdf(sheet: &Sheet) -> Result<Vec<u8>, PdfError> {
    let document = set(sheet)?;
    // The standard for files that can be heard refuses signs that no font of ours has; such a sheet is tagged the same,
    // and only does not claim the standard.
    let written = write(&document, &[PdfStandard::Ua_1]).or_else(|_| write(&document, &[]));
    typst::comemo::evict(REMEMBERED);
    written
}

/// The sheet on pages.
fn set(sheet: &Sheet) -> Result<PagedDocument, PdfError> {
    let desk = Desk::new(data::sheet(&fitted(sheet.clone())));
    typst::compile::<PagedDocument>(&desk).output.map_err(|errors| failed(&errors))
}

/// The pages as a file that conforms to these standards.
fn write(document: &PagedDocument, standards: &[PdfStandard]) -> Result<Vec<u8>, PdfError> {
    let standards = PdfStandards::new(standards)
        .map_err(|error| PdfError::Failed { why: error.message().to_string() })?;
    // No time and no name of a file: the same sheet is the same file.
    let options = PdfOptions {
        ident: Smart::Auto,
        creator: Smart::Custom(Some(format!("Evenswath {}", env!("CARGO_PKG_VERSION")))),
        standards,
        ..PdfOptions::default()
    };
    typst_pdf::pdf(document, &options).map_err(|errors| failed(&errors))
}

/// What the engine says, in one line.
fn failed(errors: &[SourceDiagnostic]) -> PdfError {
    let why: Vec<&str> = errors.iter().map(|error| error.message.as_str()).collect();
    PdfError::Failed { why: why.join("; ") }
}
