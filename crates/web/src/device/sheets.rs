//! The sheets of the open visit, made for the one who reads: in their language, for their paper.

use report::html::Type;
use report::make::{self, Maker, PaperFor, Readers};
use report::sheet::Sheet;
use yard::{SheetKind, State};

/// A sheet; none where there is nothing to put on it, as on tags when no tip is to be marked.
#[must_use]
pub fn sheet(state: &State, kind: SheetKind) -> Option<Sheet> {
    let opened = state.visit.as_ref()?;
    let (visit, outcome) = (&opened.visit, &opened.outcome);
    let (readers, maker) = (Readers::one(&state.words), Maker::default());
    match kind {
        SheetKind::Visit => Some(make::visit(&readers, visit, outcome, maker)),
        SheetKind::Cab => Some(make::cab(&readers, visit, outcome, maker)),
        SheetKind::Cups => make::cups(&readers, visit, outcome, maker),
        SheetKind::Tags => make::tags(&readers, visit, outcome, maker),
        SheetKind::Paper => Some(make::paper(&readers, &paper_for(state), maker)),
        SheetKind::Before => Some(make::before(&readers, maker)),
    }
}

/// A sheet as a page of its own, with the type it is set in: it fetches nothing, so it can be handed over as one file.
#[must_use]
pub fn page(state: &State, kind: SheetKind, letters: &[Type<'_>]) -> Option<String> {
    sheet(state, kind).map(|sheet| report::html::page_in(&sheet, letters))
}

/// A sheet as a page for a frame of this page, which holds it to the rules of this page and lends it its letters: the rules
/// that it carries for elsewhere would only be in the way.
#[must_use]
pub fn framed(state: &State, kind: SheetKind) -> Option<String> {
    page(state, kind, &[]).map(|page| without_its_own(&page))
}

fn without_its_own(page: &str) -> String {
    let own = |line: &&str| line.starts_with("<meta http-equiv=\"Content-Security-Policy\"");
    page.lines().filter(|line| !own(line)).collect::<Vec<_>>().join("\n")
}

/// Which sprayer the sheet to fill in by hand is for.
fn paper_for(state: &State) -> PaperFor {
    let Some(opened) = state.visit.as_ref() else {
        return PaperFor { tips: 0, sections: Vec::new(), sprayer: String::new(), farm: String::new() };
    };
    let machine = opened.visit.machine.as_ref();
    let positions =
        machine.and_then(|machine| machine.boom()).map(|boom| boom.positions()).unwrap_or_default();
    let sections: Vec<u32> = positions
        .chunk_by(|one, next| one.section == next.section)
        .map(|section| u32::try_from(section.len()).unwrap_or(0))
        .collect();
    PaperFor {
        tips: machine.map_or(0, |machine| machine.tips()),
        sections: if sections.len() > 1 { sections } else { Vec::new() },
        sprayer: opened.text("visit.sprayer").to_string(),
        farm: opened.text("visit.farm").to_string(),
    }
}

/// The name of a file about the open visit: what it is, the sprayer, the day.
#[must_use]
pub fn file_name(state: &State, what: &str, ending: &str) -> String {
    let opened = state.visit.as_ref();
    let text = |field: &str| opened.map(|opened| opened.text(field)).unwrap_or_default();
    let name = text("visit.sprayer").to_lowercase().replace(|sign: char| !sign.is_alphanumeric(), "-");
    let parts = [what, name.trim_matches('-'), text("visit.date")];
    let parts: Vec<&str> = parts.into_iter().filter(|part| !part.is_empty()).collect();
    format!("{}.{ending}", parts.join("-"))
}

/// The word of a sheet in a file's name.
#[must_use]
pub const fn word(kind: SheetKind) -> &'static str {
    match kind {
        SheetKind::Visit => "visit",
        SheetKind::Cab => "cab",
        SheetKind::Cups => "cups",
        SheetKind::Tags => "tags",
        SheetKind::Paper => "paper",
        SheetKind::Before => "before",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_framed_sheet_keeps_all_but_its_letters_and_rules() {
        let mut state = State::new(words::Words::of(words::Language::English));
        state.visit = Some(yard::Opened::new(notebook::ThingId::from_bits(1), yard::Keep::JustLooking));
        let (whole, framed) = (
            page(&state, SheetKind::Visit, &report::html::TYPE).unwrap(),
            framed(&state, SheetKind::Visit).unwrap(),
        );
        assert!(whole.contains("@font-face") && whole.contains("Content-Security-Policy"));
        assert!(!framed.contains("@font-face") && !framed.contains("Content-Security-Policy"));
        let body = |page: &str| page.split_once("<body>").map(|(_, body)| body.trim_end().to_string());
        assert_eq!(body(&whole), body(&framed));
    }
}
