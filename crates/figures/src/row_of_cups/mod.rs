//! The row of cups: the boom across the page, a cup under each tip filled to its reading, the limit as one band.
//!
//! It is the overview, the result and the teaching picture. What a cup says it says by outline, sign and place; the one
//! strong colour repeats it. Every text is the caller's.

mod band;
mod cup;
mod likely;
mod marks;
mod places;
mod row;
mod rows;
mod tiers;

pub use likely::{TipShape, TipShown};
pub(crate) use marks::{SIDE, sign};
pub(crate) use rows::rows;
pub(crate) use tiers::FURTHEST;

use crate::drawing::{Drawing, Node};
use crate::pen::{EDGE, WIDTH};
use crate::text::clean;

/// Cups under a boom, to be drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct RowOfCups {
    /// Begins the ids in the drawing.
    pub id: String,
    /// Language of the texts, as a language tag.
    pub language: String,
    /// What the drawing is.
    pub title: String,
    /// What it shows. Tips that are marked are told after it, with number, reading and word.
    pub description: String,
    /// The cups by their tips' numbers, from the left as the driver sits.
    pub cups: Vec<CupShown>,
    /// How many tips each section has, from the left as the driver sits; may be empty.
    pub sections: Vec<u32>,
    /// What stands over a section's bracket, by its place: that it loses flow, and how much. Such a bracket is heavy.
    pub over_sections: Vec<(usize, String)>,
    /// Groups of tips with a level of their own; may be empty.
    pub groups: Vec<TipGroup>,
    /// The limit, if there is one.
    pub limit: Option<LimitBand>,
    /// How much room each cup has.
    pub density: Density,
    /// The most tips in a row, where the density's own number will not do.
    pub per_row: Option<u32>,
    /// From where the boom is looked at.
    pub seen: Seen,
    /// What stands over the boom's left end as the driver sits; may be empty.
    pub left_end: String,
    /// What stands over its right end; may be empty.
    pub right_end: String,
}

/// One tip with its cup.
#[derive(Clone, Debug, PartialEq)]
pub struct CupShown {
    /// The tip's number from the left as the driver sits.
    pub number: u32,
    /// A name to find the cup by, unique in the drawing.
    pub id: String,
    /// Metres from the first tip along the boom. When any tip's is missing, all are drawn evenly spaced.
    pub place: Option<f64>,
    /// What was caught, as a share of the mean; nothing when not caught.
    pub level: Option<f64>,
    /// The least it may truly have been, as a share of the mean.
    pub low: Option<f64>,
    /// The most it may truly have been.
    pub high: Option<f64>,
    /// The reading as people read it: `14½`.
    pub reading: String,
    /// What the cup says.
    pub mark: CupMark,
    /// The same in a word or two, drawn under a marked cup where there is room.
    pub word: String,
    /// Which of the groups the tip belongs to.
    pub group: Option<usize>,
    /// What the tip most likely is; nothing where that is not told.
    pub likely: Option<TipShown>,
}

/// What a cup says about its tip.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CupMark {
    /// Nothing that asks for anything.
    Quiet,
    /// Too much: act.
    High,
    /// Too little: act.
    Low,
    /// Not to be told from what was read.
    CannotTell,
    /// Nothing comes out: act.
    Plugged,
    /// No cup was put here yet.
    NotCaught,
    /// Too much for good, as a worn tip gives: act.
    Worn,
}

/// The limit about the mean, with its labels.
#[derive(Clone, Debug, PartialEq)]
pub struct LimitBand {
    /// How far below the mean it lets pass, as a share; nothing when it sets no lower limit.
    pub below: Option<f64>,
    /// How far above the mean it lets pass, as a share; nothing when it sets no upper limit.
    pub above: Option<f64>,
    /// What stands at its upper edge: `+10 %`.
    pub above_label: String,
    /// What stands between the edges: `limit`.
    pub label: String,
    /// What stands at its lower edge: `−10 %`.
    pub below_label: String,
}

/// Tips that should put out something else than the others.
#[derive(Clone, Debug, PartialEq)]
pub struct TipGroup {
    /// What stands under its bracket: `end tips, half flow`.
    pub label: String,
    /// About which share of the mean its cups should stand: the band is drawn there.
    pub about: f64,
}

/// How much room each cup has.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Density {
    /// Up to 14 tips in a row, with their spray.
    Roomy,
    /// Up to 24 tips in a row, each with its number and reading.
    Usual,
    /// Up to 72 tips in a row; every fifth has its number, marked ones have number and reading.
    Dense,
}

impl Density {
    /// The most tips that stand well in one row. Our own choice, by the width of what is written under each cup.
    #[must_use]
    pub fn most_in_a_row(self) -> u32 {
        match self {
            Density::Roomy => 14,
            Density::Usual => 24,
            Density::Dense => 72,
        }
    }

    /// The roomiest that holds so many tips in at most `rows` rows.
    #[must_use]
    pub fn for_tips(tips: usize, rows: usize) -> Density {
        [Density::Roomy, Density::Usual]
            .into_iter()
            .find(|density| {
                usize::try_from(density.most_in_a_row())
                    .is_ok_and(|most| tips <= most.saturating_mul(rows.max(1)))
            })
            .unwrap_or(Density::Dense)
    }
}

/// From where the boom is looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Seen {
    /// From behind, or from the seat: tip 1 is on the left.
    AsTheDriverSits,
    /// From before a boom in front of the machine: tip 1 is on the right.
    FromTheFront,
}

impl RowOfCups {
    /// Draws it, 1000 units wide.
    #[must_use]
    pub fn draw(&self) -> Drawing {
        let most = self.per_row.unwrap_or(self.density.most_in_a_row()).max(1);
        let lengths = rows(self.cups.len(), &self.sections, usize::try_from(most).unwrap_or(usize::MAX));
        let plan = row::Plan::new(self, &lengths);
        let mut nodes: Vec<Node> = Vec::new();
        let mut y = EDGE;
        let mut start = 0;
        for (index, length) in lengths.iter().enumerate() {
            let (row, end) = plan.row(index, start, y);
            nodes.extend(row);
            y = end + plan.between_rows();
            start += length;
        }
        let height = if lengths.is_empty() { 2.0 * EDGE } else { y - plan.between_rows() + EDGE };
        Drawing {
            id: self.id.clone(),
            language: self.language.clone(),
            title: self.title.clone(),
            description: self.told(),
            width: WIDTH,
            height,
            nodes,
        }
    }

    /// The description, and after it each marked tip: `4: 13, cannot tell; 7: 17, high`.
    fn told(&self) -> String {
        let marked: Vec<String> = self.cups.iter().filter(|cup| cup.is_told()).map(CupShown::told).collect();
        let sections = self.over_sections.iter().map(|(_, text)| format!("{text}."));
        let parts = core::iter::once(self.description.clone()).chain(sections).chain([marked.join("; ")]);
        clean(&parts.collect::<Vec<_>>().join(" "))
    }
}

impl CupShown {
    /// Whether it is told of in words: what asks for something, and what is most likely no sound tip.
    fn is_told(&self) -> bool {
        let odd = self.likely.as_ref().is_some_and(|likely| likely.shape != TipShape::Sound);
        self.mark != CupMark::Quiet || odd
    }

    /// Number, reading and words: `7: 17, high, worn`.
    fn told(&self) -> String {
        let likely = self.likely.as_ref().map(|likely| &likely.word);
        let said: Vec<String> = [&self.reading, &self.word]
            .into_iter()
            .chain(likely)
            .map(|text| clean(text))
            .filter(|text| !text.is_empty())
            .collect();
        if said.is_empty() {
            self.number.to_string()
        } else {
            format!("{}: {}", self.number, said.join(", "))
        }
    }
}
