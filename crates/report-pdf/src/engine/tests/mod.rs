//! The PDF is read back and measured.

mod laid;
mod read;
mod real;
mod sheets;

use report::sheet::{Block, Run};
use typst_layout::PagedDocument;
use words::{Language, Paper};

use laid::{nothing_covered, within_the_margins};
use read::{Read, without_white};
use sheets::{HARD, blocks, everything, page, sheet};

const PAPERS: [Paper; 2] = [Paper::Letter, Paper::A4];

/// Bytes that a page of a sheet may take. Our own choice: a season of sheets goes by mail.
const PAGE_BYTES: usize = 120_000;

/// The sheet on pages; measured, and held to what holds for all.
fn set(sheet: &report::Sheet) -> PagedDocument {
    let document = super::set(sheet).unwrap();
    within_the_margins(&document);
    nothing_covered(&document);
    document
}

/// The file; held to what holds for all.
fn file(sheet: &report::Sheet) -> Read {
    let file = super::pdf(sheet).unwrap();
    let read = Read::of(&file);
    assert!(file.len() < PAGE_BYTES * read.pages(), "{} bytes for {} pages", file.len(), read.pages());
    // What is drawn is said as well, and the title stands beside the text too.
    let mut text = read.text(&sheet.foot) + &without_white(&read.title());
    read.parts().iter().filter_map(|(_, said)| said.as_ref()).for_each(|said| text += &without_white(said));
    for string in report::texts(sheet).iter().flat_map(|text| text.lines()) {
        // Two marks are drawn, beside the words that say the same.
        let string = without_white(&string.replace(['▲', '▼'], ""));
        let sentence = string.trim_end_matches('.');
        assert!(text.contains(sentence), "`{string}` is not in\n{text}");
    }
    read
}

#[test]
fn every_text_is_found_as_it_was_written_whatever_it_holds() {
    for (index, text) in HARD.iter().enumerate() {
        let sheet = everything(PAPERS[index % 2], Language::ALL[index % 2], text);
        set(&sheet);
        file(&sheet);
    }
}

#[test]
fn a_page_that_must_stay_on_one_sheet_of_paper_does() {
    let long = "A long sentence that a person wrote into a field that was meant for a name. ".repeat(6);
    for paper in PAPERS {
        for text in ["short", long.as_str(), &"Unbroken".repeat(60), &"W".repeat(400)] {
            let document = set(&sheet(paper, Language::English, vec![page(Run::OnePage, blocks(text))]));
            assert_eq!(document.pages().len(), 1);
        }
        let tags = sheet(paper, Language::English, vec![page(Run::OnePage, vec![sheets::tags(&long)])]);
        assert_eq!(set(&tags).pages().len(), 1);
    }
}

#[test]
fn papers_are_as_large_as_they_are_and_lie_as_they_should() {
    let points = |millimetres: f64| millimetres / report::style::MM_PER_POINT;
    for paper in PAPERS {
        let document = set(&everything(paper, Language::English, "short"));
        let (short, long) = paper.millimetres();
        let size = |index: usize| {
            let frame = &document.pages()[index].frame;
            (frame.width().to_pt(), frame.height().to_pt())
        };
        let near = |(width, height): (f64, f64), (wide, high): (f64, f64)| {
            assert!(
                (width - points(wide)).abs() < 0.01 && (height - points(high)).abs() < 0.01,
                "{width} {height}"
            );
        };
        near(size(0), (short, long));
        near(size(document.pages().len() - 2), (long, short));
    }
}

#[test]
fn what_may_run_on_repeats_its_heads_and_counts_its_pages() {
    let sheet = sheet(Paper::Letter, Language::English, vec![page(Run::MayRunOn, sheets::long())]);
    let document = set(&sheet);
    let pages = laid::laid(&document);
    assert!(pages.len() > 1);
    for (index, page) in pages.iter().enumerate() {
        let all = page.iter().map(|one| one.what.as_str()).collect::<Vec<_>>().join("|");
        assert!(all.contains(&format!("{} / {}", index + 1, pages.len())), "{all}");
        assert!(all.contains(&sheet.foot), "{all}");
        let cups = page.iter().any(|one| one.what.starts_with("cup ") && one.what != "cup by name");
        assert_eq!(cups, all.contains("cup by name"), "{all}");
    }
    // Heard once, not on each page.
    assert_eq!(file(&sheet).parts().iter().filter(|(name, _)| name == "TH").count(), 3);
    let one = sheets::sheet(Paper::Letter, Language::English, vec![page(Run::OnePage, blocks("short"))]);
    assert!(!laid::laid(&set(&one))[0].iter().any(|one| one.what.contains(" / 1")));
}

#[test]
fn a_row_that_is_longer_than_a_page_is_told_to_its_end() {
    let mut blocks = sheets::long();
    let Some(Block::Table(table)) = blocks.get_mut(1) else { panic!("a table") };
    table.rows[1][2] = "one of very many words ".repeat(600);
    let sheet = sheet(Paper::A4, Language::English, vec![page(Run::MayRunOn, blocks)]);
    let document = set(&sheet);
    let told = |page: Vec<laid::Laid>| page.iter().map(|one| one.what.matches("many").count()).sum::<usize>();
    assert_eq!(laid::laid(&document).into_iter().map(told).sum::<usize>(), 600);
}

#[test]
fn the_parts_are_heard_as_what_they_are() {
    for language in Language::ALL {
        let read = file(&everything(Paper::Letter, language, "short"));
        assert_eq!(read.title(), "What this sprayer puts out");
        let catalog = read.catalog();
        assert_eq!(catalog.get(b"Lang").and_then(lopdf::Object::as_str).unwrap(), language.tag().as_bytes());
        assert!(read.of_catalog(b"MarkInfo").get(b"Marked").and_then(lopdf::Object::as_bool).unwrap());
        assert!(
            read.of_catalog(b"ViewerPreferences")
                .get(b"DisplayDocTitle")
                .and_then(lopdf::Object::as_bool)
                .unwrap()
        );
        assert!(read.of_catalog(b"StructTreeRoot").has(b"K"));
        // The columns beside one another are in two languages, whatever the sheet is in.
        let languages = read.languages();
        assert!(
            Language::ALL.iter().all(|one| languages.iter().any(|named| named == one.tag())),
            "{languages:?}"
        );

        let parts = read.parts();
        let count = |name: &str| parts.iter().filter(|(part, _)| part == name).count();
        assert_eq!(count("H1"), 1);
        assert_eq!(count("H2"), 4);
        assert_eq!(count("Table"), 3);
        assert_eq!(count("TH"), 9);
        // Steps, two kinds of facts; ticks and notes on each of two pages; notes that run on.
        assert_eq!(count("L"), 8);
        assert_eq!(count("LI"), count("LBody"));
        assert!(read.under(b"L").iter().all(|part| part == "LI"));
        assert!(read.under(b"LI").iter().all(|part| part == "Lbl" || part == "LBody"));
        let figures: Vec<_> = parts.iter().filter(|(part, _)| part == "Figure").collect();
        assert_eq!(figures.len(), 1);
        let said = figures[0].1.as_deref();
        assert_eq!(said, Some("Twelve cups under a boom. Tip 7 is 17 % over; the others are alike."));
    }
}

/// A PNG of one dot.
const DOT: &[u8] = &[
    0x89, 0x50, 0x4e, 0x47, 0xd, 0xa, 0x1a, 0xa, 0, 0, 0, 0xd, 0x49, 0x48, 0x44, 0x52, 0, 0, 0, 1, 0, 0, 0,
    1, 8, 2, 0, 0, 0, 0x90, 0x77, 0x53, 0xde, 0, 0, 0, 0xc, 0x49, 0x44, 0x41, 0x54, 0x78, 0x9c, 0x63, 0x90,
    0x91, 0x12, 7, 0, 0, 0xa3, 0, 0x4e, 0xf, 0x86, 9, 0x45, 0, 0, 0, 0, 0x49, 0x45, 0x4e, 0x44, 0xae, 0x42,
    0x60, 0x82,
];

#[test]
fn a_sign_stands_above_the_head_and_is_said() {
    let picture = report::Picture::new(DOT.to_vec()).unwrap();
    let sign = Block::Picture { picture, told: "The sign of <Willow Bend>".into() };
    let title = blocks("short").swap_remove(0);
    let sheet = sheet(Paper::Letter, Language::English, vec![page(Run::OnePage, vec![sign, title])]);
    let pages = laid::laid(&set(&sheet));
    let sign = pages[0].iter().find(|one| one.size == 0.0).unwrap();
    assert!((sign.bottom - sign.top - report::layout::PICTURE_HEIGHT).abs() < 0.01, "{sign:?}");
    let below = pages[0].iter().filter(|one| one.size > 0.0).all(|one| one.top > sign.bottom);
    assert!(below);
    let said = file(&sheet).parts().into_iter().find(|(name, _)| name == "Figure").and_then(|(_, said)| said);
    assert_eq!(said.as_deref(), Some("The sign of <Willow Bend>"));
}

#[test]
fn a_sign_that_is_damaged_inside_is_told_so() {
    let mut damaged = DOT.to_vec();
    // Within the dots, which stand between the head and the twelve bytes of the end.
    let within = damaged.len() - 20;
    damaged[within] ^= 0xff;
    let Ok(picture) = report::Picture::new(damaged) else { return };
    let sign = Block::Picture { picture, told: "The sign".into() };
    let sheet = sheet(Paper::Letter, Language::English, vec![page(Run::OnePage, vec![sign])]);
    let error = super::pdf(&sheet).unwrap_err();
    assert_eq!(units::Coded::code(&error), "pdf_failed");
    assert!(error.to_string().contains("image"), "{error}");
}

#[test]
fn the_standard_for_files_that_can_be_heard_is_met() {
    let document = set(&everything(Paper::Letter, Language::Spanish, HARD[7]));
    super::write(&document, &[typst_pdf::PdfStandard::Ua_1]).unwrap();
}

#[test]
fn only_our_fonts_are_in_the_file_and_only_in_part() {
    let fonts = file(&everything(Paper::Letter, Language::English, "short")).fonts();
    assert_eq!(fonts.len(), 2, "{fonts:?}");
    for (name, with_it) in fonts {
        // Six letters and a plus sign stand before the name of a font that is there in part (ISO 32000-1, 9.6.4).
        assert!(
            with_it && name.as_bytes().get(6) == Some(&b'+') && name.contains("AtkinsonHyperlegible"),
            "{name}"
        );
    }
}

#[test]
fn signs_that_our_fonts_lack_do_not_stop_the_sheet() {
    let text = "🚜 blue 农场 ферма";
    let sheet = everything(Paper::Letter, Language::English, text);
    set(&sheet);
    let file = super::pdf(&sheet).unwrap();
    assert!(Read::of(&file).pages() > 3);
}

#[test]
fn the_same_sheet_is_the_same_file() {
    let sheet = everything(Paper::Letter, Language::English, "short");
    let first = super::pdf(&sheet).unwrap();
    super::pdf(&everything(Paper::A4, Language::Spanish, "another")).unwrap();
    assert!(first == super::pdf(&sheet).unwrap());
    assert!(!first.windows(13).any(|bytes| bytes == b"/CreationDate"));
}

#[test]
fn an_empty_sheet_is_a_file_too() {
    let empty = sheet(Paper::Letter, Language::English, vec![page(Run::OnePage, vec![])]);
    assert_eq!(file(&empty).pages(), 1);
    for across in [0, 1, 4] {
        let blocks = vec![
            Block::Facts { pairs: vec![], across },
            Block::Ticks { items: vec!["one".into()], across },
            Block::Blanks { blanks: vec![], across },
            Block::Answers(vec![]),
            Block::Lines(vec![]),
            Block::Tags(vec![]),
            Block::Steps { from: 1, steps: vec![] },
        ];
        set(&sheet(Paper::A4, Language::Spanish, vec![page(Run::OnePage, blocks)]));
    }
}
