//! The description of a sheet: pages, columns, blocks. Both renderers read this and nothing else.

use figures::Drawing;
use words::{Language, Paper};

use crate::picture::Picture;

/// A sheet to hand over.
#[derive(Clone, Debug, PartialEq)]
pub struct Sheet {
    /// The title of the document.
    pub title: String,
    /// The language of the document; a column may be in another.
    pub language: Language,
    /// The paper it is printed on.
    pub paper: Paper,
    /// The pages in order.
    pub pages: Vec<Page>,
    /// The small line at the foot of each page: who made it.
    pub foot: String,
}

impl Sheet {
    /// The same sheet with a sign above the head of its first page, made smaller where it must be to stay on it.
    #[must_use]
    pub fn with_picture(mut self, picture: Picture, told: String) -> Self {
        if let Some(column) = self.pages.first_mut().and_then(|page| page.columns.first_mut()) {
            column.blocks.insert(0, Block::Picture { picture, told });
        }
        crate::layout::fitted(self)
    }
}

/// Which way the paper lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Lie {
    /// The short edge on top.
    #[default]
    Upright,
    /// The long edge on top.
    OnItsSide,
}

/// Whether what stands on a page must stay on one sheet of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Run {
    /// It must; it is made smaller until it does.
    #[default]
    OnePage,
    /// It may run on over as many as it needs.
    MayRunOn,
}

/// One page.
#[derive(Clone, Debug, PartialEq)]
pub struct Page {
    /// Which way the paper lies.
    pub lie: Lie,
    /// Whether it must stay on one sheet of paper.
    pub run: Run,
    /// How large everything is, 1 being the usual size.
    pub scale: f64,
    /// Columns side by side; mostly one.
    pub columns: Vec<Column>,
}

/// What stands in one column from top to bottom.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    /// The language of its words.
    pub language: Language,
    /// From top to bottom.
    pub blocks: Vec<Block>,
}

/// One thing on a page.
#[derive(Clone, Debug, PartialEq)]
pub enum Block {
    /// The head of a sheet: what it is, of what, and at the other side when and with whom.
    Title {
        /// What it is.
        main: String,
        /// Of which sprayer.
        under: Vec<String>,
        /// When, with whom.
        aside: Vec<String>,
    },
    /// The sign of an office or a farm, above the head.
    Picture {
        /// The picture.
        picture: Picture,
        /// What it is, for those who do not see it.
        told: String,
    },
    /// What the label or safety forbids, before everything else.
    Stop(Vec<String>),
    /// The answers, side by side.
    Answers(Vec<AnswerBox>),
    /// A drawing over the whole width.
    Drawing(Box<Drawing>),
    /// A heading.
    Heading(String),
    /// What to do, in order.
    Steps {
        /// The number of the first, where a list goes on from another page.
        from: usize,
        /// The steps.
        steps: Vec<Step>,
    },
    /// Names and values in pairs.
    Facts {
        /// Name and value.
        pairs: Vec<(String, String)>,
        /// How many pairs stand beside one another.
        across: usize,
    },
    /// Names and values to be read from the driver's seat.
    LargeFacts {
        /// Name and value.
        pairs: Vec<(String, String)>,
        /// How many pairs stand beside one another.
        across: usize,
    },
    /// A table.
    Table(Table),
    /// Cautions, framed.
    Care {
        /// The first words, strong.
        lead: String,
        /// The rest.
        text: String,
    },
    /// A paragraph.
    Text(String),
    /// A paragraph in small letters.
    Small(String),
    /// Things told one below the other.
    Notes(Vec<String>),
    /// Things to tick off, with a box before each.
    Ticks {
        /// What to look at.
        items: Vec<String>,
        /// How many stand beside one another.
        across: usize,
    },
    /// Lines to write on.
    Blanks {
        /// The lines.
        blanks: Vec<Blank>,
        /// How many stand beside one another.
        across: usize,
    },
    /// A calculation on lines of its own, figures lined up as written.
    Lines(Vec<String>),
    /// Where the paper is cut.
    Cut(String),
    /// Tags to cut out and tie on.
    Tags(Vec<Tag>),
}

/// One answer: small words above, the number large, small words below.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AnswerBox {
    /// What it is.
    pub above: String,
    /// The number.
    pub number: String,
    /// Its unit.
    pub unit: String,
    /// How sure, against what.
    pub below: Vec<String>,
}

/// How soon a step is to be taken; told by sign and word.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sign {
    /// Put right.
    Act,
    /// Settle.
    Settle,
    /// Neither.
    Plain,
}

/// One thing to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// How soon.
    pub sign: Sign,
    /// Why: what is wrong.
    pub lead: String,
    /// What to do.
    pub rest: String,
}

/// A table to read or to fill in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Table {
    /// What it is, for those who hear it instead of seeing it.
    pub caption: String,
    /// The heads of its columns.
    pub heads: Vec<String>,
    /// How wide each column is beside the others.
    pub widths: Vec<u32>,
    /// Its rows; a cell may be empty to be written in.
    pub rows: Vec<Vec<String>>,
    /// Rows to be written in are higher and ruled.
    pub use_: Use,
}

/// Whether a table is read or written in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Use {
    /// Read.
    Read,
    /// Written in by hand: rows as high as a hand with a pencil needs.
    Write,
}

/// A line to write on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Blank {
    /// What to write.
    pub label: String,
    /// The unit behind it.
    pub unit: String,
}

/// A tag to tie to a body.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tag {
    /// The tip's number from the left.
    pub number: String,
    /// Which side it is counted from.
    pub side: String,
    /// What is wrong, in a word.
    pub wrong: String,
    /// What was read.
    pub read: String,
    /// What to do.
    pub what: String,
    /// Which sprayer, and when.
    pub whose: String,
}
