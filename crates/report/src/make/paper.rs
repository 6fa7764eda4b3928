//! The sheet to fill in by hand, in the order of the yard; the arithmetic on it for those who do it by hand.

use units::UnitSystem;
use words::Words;

use super::example::Example;
use super::{Maker, Readers, head};
use crate::layout::{fits, fitted};
use crate::sheet::{Blank, Block, Column, Lie, Page, Run, Sheet, Table, Use};
use crate::style::SMALLEST_SCALE;

/// Which sprayer the sheet is for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PaperFor {
    /// How many tips there are.
    pub tips: u32,
    /// How many of them each section has, from the left; empty where there are none.
    pub sections: Vec<u32>,
    /// What the sprayer is called, where it is known.
    pub sprayer: String,
    /// The farm, where it is known.
    pub farm: String,
}

/// The most tips a sheet is made for. Our own bound, as of a catch test.
pub const MOST_TIPS: u32 = 1000;

/// Returns the sheet, in one language or with both on every line.
#[must_use]
pub fn paper(readers: &Readers<'_>, of: &PaperFor, maker: Maker<'_>) -> Sheet {
    let words = readers.first;
    let both = Both { readers };
    let column = |blocks| vec![Column { language: words.reader().language, blocks }];
    let page = |run, columns| Page { lie: Lie::Upright, run, scale: 1.0, columns };
    let front = before_the_catch(&both, of);
    let cups = catch(&both, of);
    // All of the yard's steps on one page where they fit it; else the cups begin a page of their own.
    let whole = page(Run::OnePage, column(front.iter().chain(&cups).cloned().collect()));
    let mut pages = if fits(words.reader().paper, &whole, SMALLEST_SCALE) {
        vec![whole]
    } else {
        vec![page(Run::OnePage, column(front)), page(Run::MayRunOn, column(cups))]
    };
    pages.push(page(Run::OnePage, column(after_the_catch(&both, of))));
    fitted(Sheet {
        title: words.label("paper-title"),
        language: words.reader().language,
        paper: words.reader().paper,
        pages,
        foot: head::foot(words, maker),
    })
}

/// Words in one language, or in both one after the other.
struct Both<'a> {
    readers: &'a Readers<'a>,
}

impl Both<'_> {
    fn label(&self, key: &str) -> String {
        self.say(&|words| words.label(key))
    }

    fn say(&self, said: &dyn Fn(&Words) -> String) -> String {
        let mut texts: Vec<String> = self.readers.each().map(said).collect();
        // What reads alike in both is said once.
        texts.dedup();
        texts.join(" · ")
    }

    /// Cautions by themselves in each language: nobody reads one in two.
    fn care(&self, lead: &str, text: &str) -> Vec<Block> {
        self.readers
            .each()
            .map(|words| Block::Care { lead: words.label(lead), text: words.label(text) })
            .collect()
    }

    fn words(&self) -> &Words {
        self.readers.first
    }

    fn us(&self) -> bool {
        self.words().reader().units == UnitSystem::Us
    }

    /// A blank whose unit is that of the reader's system.
    fn blank(&self, key: &str, us: &str, metric: &str) -> Blank {
        let symbol = if self.us() { us } else { metric };
        let unit = units::Unit::named(symbol).map(|unit| self.words().unit(&unit));
        Blank { label: self.label(key), unit: unit.unwrap_or_else(|| symbol.to_string()) }
    }

    fn bare(&self, key: &str) -> Blank {
        Blank { label: self.label(key), unit: String::new() }
    }

    /// How many stand beside one another: lines in two languages are longer.
    fn across(&self, one: usize) -> usize {
        if self.readers.beside.is_some() { one.min(2) } else { one }
    }
}

fn before_the_catch(both: &Both<'_>, of: &PaperFor) -> Vec<Block> {
    let known = super::said::joined(&[Some(&of.sprayer), Some(&of.farm)], " · ");
    let mut blocks = vec![Block::Title {
        main: both.label("paper-title"),
        under: [known].into_iter().filter(|known| !known.is_empty()).collect(),
        aside: Vec::new(),
    }];
    let mut blanks = Vec::new();
    if of.sprayer.is_empty() {
        blanks.push(both.bare("paper-sprayer"));
    }
    if of.farm.is_empty() {
        blanks.push(both.bare("paper-farm"));
    }
    blanks.extend(["paper-date", "paper-driver", "paper-with"].map(|key| both.bare(key)));
    blanks.push(both.blank("paper-tank", "gal", "L"));
    blocks.push(Block::Blanks { blanks, across: both.across(3) });
    blocks.extend(both.care("paper-safe_lead", "paper-safe"));
    blocks.push(Block::Heading(both.label("paper-look")));
    let look = visit::record::LookItem::ALL.map(|item| both.label(&format!("look-{}", item.word())));
    blocks.push(Block::Ticks { items: look.to_vec(), across: both.across(4) });
    blocks.push(Block::Heading(both.label("paper-setting")));
    let setting = [
        both.bare("paper-gear"),
        Blank { label: both.label("paper-engine"), unit: "rpm".into() },
        Blank { label: both.label("paper-pto"), unit: "rpm".into() },
        both.blank("paper-pressure", "psi", "bar"),
        both.bare("paper-read_at"),
        both.bare("paper-tip"),
    ];
    blocks.push(Block::Blanks { blanks: setting.to_vec(), across: both.across(3) });
    blocks.push(Block::Heading(both.label("paper-drive")));
    let times = ["paper-there", "paper-back", "paper-there", "paper-back"];
    let mut drive = vec![both.blank("paper-spacing", "in", "cm"), both.blank("paper-course", "ft", "m")];
    drive.extend(times.map(|key| Blank { label: both.label(key), unit: "s".into() }));
    drive.push(both.blank("paper-dash", "mph", "km/h"));
    blocks.push(Block::Blanks { blanks: drive, across: both.across(4) });
    blocks
}

fn catch(both: &Both<'_>, of: &PaperFor) -> Vec<Block> {
    let unit = if both.us() { "fl oz" } else { "mL" };
    let blanks = vec![
        Blank { label: both.label("paper-catch_time"), unit: "s".into() },
        both.blank("paper-cup_marks", unit, unit),
    ];
    vec![
        Block::Heading(both.label("paper-catch")),
        Block::Blanks { blanks, across: 2 },
        Block::Small(both.label("paper-catch_how")),
        Block::Table(cups(both, of)),
    ]
}

/// How many groups of columns stand beside one another. Our own choice: rows long enough to read along.
fn beside(tips: u32) -> usize {
    match tips {
        0..=9 => 1,
        _ => 2,
    }
}

fn cups(both: &Both<'_>, of: &PaperFor) -> Table {
    let tips = of.tips.clamp(1, MOST_TIPS) as usize;
    let across = beside(of.tips);
    let high = tips.div_ceil(across);
    let one = ["paper-tip_number", "paper-on_tape", "paper-as_found", "paper-again", "paper-after"]
        .map(|key| both.label(key));
    let first_of_section = |number: usize| -> Option<usize> {
        let mut first = 1;
        for (section, size) in of.sections.iter().enumerate() {
            if first == number {
                return Some(section + 1);
            }
            first += *size as usize;
        }
        None
    };
    let name = |number: usize| match first_of_section(number) {
        Some(section) => both.say(&|words| {
            words.say("paper-tip_of_section", &[("tip", number.into()), ("section", section.into())])
        }),
        None => number.to_string(),
    };
    let rows = (0..high).map(|line| {
        (0..across)
            .flat_map(|group| {
                let number = group * high + line + 1;
                let name = if number <= tips { name(number) } else { String::new() };
                [name, String::new(), String::new(), String::new(), String::new()]
            })
            .collect()
    });
    Table {
        caption: both.label("paper-catch"),
        heads: one.iter().cloned().cycle().take(5 * across).collect(),
        widths: [8, 9, 10, 9, 9].iter().copied().cycle().take(5 * across).collect(),
        rows: rows.collect(),
        use_: Use::Write,
    }
}

fn after_the_catch(both: &Both<'_>, of: &PaperFor) -> Vec<Block> {
    let example = Example::of(both.words());
    let lines = example.lines();
    let row = |(number, line): (usize, &super::example::Line)| {
        vec![
            (number + 1).to_string(),
            both.say(&|words| words.numbers_in(&words.label(line.key))),
            both.say(&|words| words.numbers_in(&words.say_with(line.example, &example.args(words)))),
            String::new(),
        ]
    };
    let sums = Table {
        caption: both.label("paper-sums"),
        heads: vec![
            String::new(),
            both.label("paper-sum"),
            both.label("paper-example"),
            both.label("paper-yours"),
        ],
        widths: vec![2, 18, 16, 9],
        rows: lines.iter().enumerate().map(row).collect(),
        use_: Use::Write,
    };
    let known = super::said::joined(&[Some(&of.sprayer), Some(&of.farm)], " · ");
    let mut blocks = vec![
        Block::Title {
            main: both.label("paper-sums"),
            under: vec![both.label("paper-sums_under")],
            aside: [known].into_iter().filter(|known| !known.is_empty()).collect(),
        },
        Block::Table(sums),
        Block::Heading(both.label("paper-what_to_change")),
        Block::Notes(
            ["paper-change_low", "paper-change_high", "paper-change_all", "paper-change_rate"]
                .map(|key| both.label(key))
                .to_vec(),
        ),
    ];
    blocks.extend(both.care("sheet-care_lead", "sheet-care"));
    blocks
}
