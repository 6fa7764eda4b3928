//! The card to send before the day, and the kit list of the one who comes.

use words::Words;

use super::{Maker, Readers, head};
use crate::layout::fitted;
use crate::sheet::{Blank, Block, Column, Lie, Page, Run, Sheet};

/// How the sprayer is to come, in the order it is done.
const SPRAYER: &[&str] = &[
    "before-rinsed",
    "before-half_full",
    "before-own_tractor",
    "before-strainers",
    "before-spray_at_home",
    "before-lights",
];
/// What is to be brought.
const BRING: &[&str] = &[
    "before-bring_label",
    "before-bring_rate",
    "before-bring_tips",
    "before-bring_parts",
    "before-bring_last",
    "before-bring_field",
    "before-bring_gloves",
    "before-bring_driver",
];
/// What the agent brings: to measure, to mend, to keep safe, to write.
const KIT: &[(&str, &[&str])] = &[
    (
        "kit-measure",
        &["kit-cups", "kit-jug", "kit-watches", "kit-tape", "kit-flags", "kit-gauge", "kit-scale"],
    ),
    ("kit-mend", &["kit-tips", "kit-brushes", "kit-valves", "kit-wrenches", "kit-ties", "kit-bucket"]),
    (
        "kit-safe",
        &["kit-chocks", "kit-gloves", "kit-eyes", "kit-water", "kit-first_aid", "kit-shade", "kit-spill"],
    ),
    ("kit-write", &["kit-sheets", "kit-pencils", "kit-tags", "kit-phone", "kit-labels"]),
];

/// Returns the card to send and, on a page of its own, the kit list.
#[must_use]
pub fn before(readers: &Readers<'_>, maker: Maker<'_>) -> Sheet {
    let words = readers.first;
    let page = |column: &dyn Fn(&Words) -> Column| Page {
        lie: if readers.beside.is_some() { Lie::OnItsSide } else { Lie::Upright },
        run: Run::OnePage,
        scale: 1.1,
        columns: readers.each().map(column).collect(),
    };
    fitted(Sheet {
        title: words.label("before-title"),
        language: words.reader().language,
        paper: words.reader().paper,
        pages: vec![page(&card), page(&kit)],
        foot: head::foot(words, maker),
    })
}

fn labels(words: &Words, keys: &[&str]) -> Vec<String> {
    keys.iter().map(|key| words.label(key)).collect()
}

fn card(words: &Words) -> Column {
    let blank = |key: &str| Blank { label: words.label(key), unit: String::new() };
    let title = Block::Title {
        main: words.label("before-title"),
        under: vec![words.label("before-why")],
        aside: Vec::new(),
    };
    let blocks = vec![
        title,
        Block::Blanks {
            blanks: ["before-day", "before-hour", "before-place", "before-call"].map(blank).to_vec(),
            across: 2,
        },
        Block::Heading(words.label("before-the_sprayer")),
        Block::Ticks { items: labels(words, SPRAYER), across: 1 },
        Block::Heading(words.label("before-bring")),
        Block::Ticks { items: labels(words, BRING), across: 1 },
        Block::Heading(words.label("before-takes_heading")),
        Block::Text(words.label("before-takes")),
        Block::Care { lead: words.label("sheet-care_lead"), text: words.label("before-care") },
    ];
    Column { language: words.reader().language, blocks }
}

fn kit(words: &Words) -> Column {
    let mut blocks = vec![Block::Title {
        main: words.label("kit-title"),
        under: vec![words.label("kit-under")],
        aside: Vec::new(),
    }];
    for (heading, items) in KIT {
        blocks.push(Block::Heading(words.label(heading)));
        blocks.push(Block::Ticks { items: labels(words, items), across: 1 });
    }
    Column { language: words.reader().language, blocks }
}
