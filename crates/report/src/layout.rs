//! How high things are on paper, and the largest scale at which they fit.
//!
//! Reckoned from the widths of the letters themselves, so that the page and the PDF can be held to one sheet of paper
//! before either is drawn. The tests measure both renderers against this.

use figures::text_width;

use crate::sheet::{AnswerBox, Block, Page, Run, Sheet, Sign, Step, Table, Tag, Use};
use crate::style::{
    BIG, GAP, HAND_ROW, HEADING, LARGE, LINE, MM_PER_POINT, SMALL, SMALLEST_SCALE, TAG, TAG_WORD, TEXT,
    TITLE, UNIT, column_width, room,
};

/// How much finer each next scale is that is tried. Our own choice.
const FINER: f64 = 0.02;
/// The share of a page that may be filled, because renderers break lines a little differently. Our own choice: less
/// than a line stays free, and heights are reckoned rather too large (`cargo xtask browser` tells by how much).
const SPARE: f64 = 0.985;

/// How many lines a text takes at this size in this width.
#[must_use]
pub fn lines(text: &str, width: f64, size: f64, weight: figures::Weight) -> usize {
    text.split('\n').map(|paragraph| mixed_lines(&[(paragraph, weight)], width, size)).sum()
}

/// How many lines texts of different weights take, one running on behind the other.
fn mixed_lines(texts: &[(&str, figures::Weight)], width: f64, size: f64) -> usize {
    lines_behind(0.0, texts, width, size)
}

/// The same where something as wide as this, in points, stands at the beginning of the first line.
fn lines_behind(before: f64, texts: &[(&str, figures::Weight)], width: f64, size: f64) -> usize {
    let room = width / MM_PER_POINT;
    let (mut count, mut taken) = (1, before);
    for (text, weight) in texts {
        let blank = blank_width(size, *weight);
        for word in text.split_whitespace() {
            let wide = text_width(word, size, *weight);
            if taken > 0.0 && taken + blank + wide > room {
                count += 1;
                taken = 0.0;
            }
            if wide > room {
                // A word longer than the line is broken wherever the line ends.
                count += lines_filled(wide, room) - 1;
            }
            taken += if taken > 0.0 { blank + wide } else { wide.min(room) };
        }
    }
    count
}

/// How many lines so wide a word fills where it is broken wherever a line ends.
fn lines_filled(wide: f64, room: f64) -> usize {
    (1..MOST_LINES)
        .find(|count| wide <= room * f64::from(*count))
        .map_or(usize::from(MOST_LINES), usize::from)
}

/// More lines of one word are not counted. Our own choice: no page holds so many.
const MOST_LINES: u16 = 1000;

/// The width of the blank between two words. A blank by itself is none: texts are drawn without those at their ends.
fn blank_width(size: f64, weight: figures::Weight) -> f64 {
    text_width("n n", size, weight) - text_width("nn", size, weight)
}

fn text(of: &str, width: f64, size: f64, scale: f64) -> f64 {
    weighted(of, width, size, scale, figures::Weight::Regular)
}

fn weighted(of: &str, width: f64, size: f64, scale: f64, weight: figures::Weight) -> f64 {
    let size = size * scale;
    lines(of, width, size, weight) as f64 * size * LINE * MM_PER_POINT
}

/// The height of a block in a column of this width, in millimetres, with the white below it.
#[must_use]
pub fn height(block: &Block, width: f64, scale: f64) -> f64 {
    let bold = figures::Weight::Bold;
    let own = match block {
        Block::Title { main, under, aside } => {
            let both = width - TITLE_GAP;
            let (left, right) = (both * TITLE_SHARE, both * (1.0 - TITLE_SHARE));
            let under: f64 = under.iter().map(|line| text(line, left, TEXT, scale)).sum();
            let aside: f64 = aside.iter().map(|line| text(line, right, SMALL, scale)).sum();
            (weighted(main, left, TITLE, scale, bold) + under).max(aside) + 2.0 * scale
        }
        Block::Picture { .. } => PICTURE_HEIGHT * scale,
        Block::Stop(stops) => {
            let inner = width - 8.0 * scale;
            stops.iter().map(|stop| weighted(stop, inner, TEXT, scale, bold)).sum::<f64>() + 6.0 * scale
        }
        Block::Answers(boxes) => {
            let each = answer_width(boxes.len(), width);
            let box_height = |answer: &AnswerBox| {
                let below: f64 = answer.below.iter().map(|line| text(line, each, SMALL, scale)).sum();
                let size = answer_size(answer, each / scale);
                weighted(&answer.above, each, SMALL, scale, bold)
                    + answer_lines(answer, size, each / scale) as f64
                        * size
                        * scale
                        * NUMBER_LINE
                        * MM_PER_POINT
                    + below
            };
            boxes.iter().map(box_height).fold(0.0, f64::max) + 3.0 * scale
        }
        Block::Drawing(drawing) => width * drawing.height / drawing.width.max(1.0),
        Block::Heading(heading) => {
            weighted(heading, width, HEADING, scale, bold) - (GAP - HEADING_GAP) * scale
        }
        Block::Steps { steps, .. } => {
            let inner = width - 7.0 * scale;
            steps.iter().map(|step| step_height(step, inner, scale)).sum()
        }
        Block::Facts { pairs, across } => {
            let each = width / (*across).max(1) as f64;
            let (name, value) = (each * 0.31 - 2.7, each * 0.69 - 3.0);
            let rows = pairs.chunks((*across).max(1)).map(|row| {
                row.iter()
                    .map(|(left, right)| text(left, name, SMALL, scale).max(text(right, value, TEXT, scale)))
                    .fold(0.0, f64::max)
                    + 1.6 * scale
                    + RULED
            });
            rows.sum()
        }
        Block::LargeFacts { pairs, across } => {
            let each = width / (*across).max(1) as f64 - 5.0;
            let rows = pairs.chunks((*across).max(1)).map(|row| {
                row.iter()
                    .map(|(left, right)| {
                        text(left, each, TEXT, scale) + weighted(right, each, LARGE, scale, bold) * 0.9
                    })
                    .fold(0.0, f64::max)
                    + 3.4 * scale
            });
            rows.sum()
        }
        Block::Table(table) => table_height(table, width, scale),
        Block::Care { lead, text: rest } => {
            let said = [(lead.as_str(), bold), (rest.as_str(), figures::Weight::Regular)];
            let size = (SMALL + 0.5) * scale;
            let lines = mixed_lines(&said, width - 6.0 * scale - 1.2, size);
            lines as f64 * size * LINE * MM_PER_POINT + 3.6 * scale + 1.2
        }
        Block::Text(paragraph) => text(paragraph, width, TEXT, scale),
        Block::Small(paragraph) => text(paragraph, width, SMALL, scale) - (GAP - SMALL_GAP) * scale,
        Block::Notes(notes) => {
            notes.iter().map(|note| text(note, width - 5.0 * scale, SMALL + 0.5, scale) + 0.6 * scale).sum()
        }
        Block::Ticks { items, across } => {
            let across = (*across).max(1);
            let each = (width - 5.0 * (across as f64 - 1.0)) / across as f64 - 2.0 - 4.2 * scale;
            let rows = items.chunks(across).map(|row| {
                row.iter().map(|item| text(item, each, TEXT, scale)).fold(0.0, f64::max) + 1.6 * scale
            });
            rows.sum()
        }
        Block::Blanks { blanks, across } => {
            blanks.len().div_ceil((*across).max(1)) as f64 * (HAND_ROW + 1.0) * scale
        }
        Block::Lines(all) => all.iter().map(|line| text(line, width - 6.0, SMALL + 0.5, scale)).sum(),
        Block::Cut(said) => text(said, width, SMALL, scale) + 1.3 * scale,
        Block::Tags(tags) => tags.len().div_ceil(2) as f64 * TAG_HEIGHT,
    };
    own + GAP * scale
}

/// The height of a picture above the head, in millimetres. Our own choice.
pub const PICTURE_HEIGHT: f64 = 14.0;
/// White below a heading, in millimetres. Our own choice.
pub const HEADING_GAP: f64 = 1.4;
/// White below a small paragraph, in millimetres. Our own choice.
pub const SMALL_GAP: f64 = 1.6;
/// The width of a step's sign as a share of its letters' size. Our own choice.
pub const SIGN: f64 = 1.1;
/// White between the two sides of the head, in millimetres. Our own choice.
pub const TITLE_GAP: f64 = 4.0;
/// The share of the head's width that its title has. Our own choice.
pub const TITLE_SHARE: f64 = 2.0 / 3.0;
/// The height of an answer's line as a share of its letters' size. Our own choice: figures have nothing below the line.
pub const NUMBER_LINE: f64 = 1.12;
/// The width of a ruled line, in millimetres. Our own choice.
pub const RULED: f64 = 0.3;
/// White inside a tag's edge and between its number and its words, in millimetres. Our own choice.
pub const TAG_PADDING: f64 = 4.0;
/// The width that a tag's number has, in millimetres. Our own choice: three figures.
pub const TAG_NUMBER: f64 = 34.0;
/// White between two answers, in millimetres. Our own choice.
pub const ANSWER_GAP: f64 = 4.0;

/// The width of one of so many answers, in millimetres.
#[must_use]
pub fn answer_width(boxes: usize, width: f64) -> f64 {
    let boxes = boxes.max(1) as f64;
    (width - ANSWER_GAP * (boxes - 1.0)) / boxes
}

/// Letters of an answer's number, in points at the scale 1: as large as the number and its unit stay on one line.
#[must_use]
pub fn answer_size(answer: &AnswerBox, width: f64) -> f64 {
    let room = width / MM_PER_POINT;
    let bold = figures::Weight::Bold;
    let unit = if answer.unit.is_empty() {
        0.0
    } else {
        let regular = figures::Weight::Regular;
        blank_width(UNIT, regular) + text_width(&answer.unit, UNIT, regular)
    };
    let fits = |size: &f64| text_width(&answer.number, *size, bold) + unit <= room * SPARE;
    ANSWER_SIZES.into_iter().find(fits).unwrap_or(ANSWER_SIZES[ANSWER_SIZES.len() - 1])
}

/// How many lines the number and its unit take: one, unless even the smallest letters are too wide.
fn answer_lines(answer: &AnswerBox, size: f64, width: f64) -> usize {
    let room = width / MM_PER_POINT;
    let number = text_width(&answer.number, size, figures::Weight::Bold);
    let unit = text_width(&answer.unit, UNIT, figures::Weight::Regular);
    let blank = blank_width(UNIT, figures::Weight::Regular);
    if number + blank + unit <= room { 1 } else { lines_filled(number, room) + lines_filled(unit, room) }
}

/// The sizes an answer's number may have, largest first. Our own choice.
const ANSWER_SIZES: [f64; 6] = [BIG, 26.0, 23.0, 20.0, 17.0, 14.0];

/// The height of a tag, in millimetres: four rows on the shorter of the two papers. Our own choice.
pub const TAG_HEIGHT: f64 = 58.0;

fn step_height(step: &Step, width: f64, scale: f64) -> f64 {
    let size = TEXT * scale;
    let said = [(step.lead.as_str(), figures::Weight::Bold), (step.rest.as_str(), figures::Weight::Regular)];
    let sign = if step.sign == Sign::Plain { 0.0 } else { SIGN * size };
    lines_behind(sign, &said, width, size) as f64 * size * LINE * MM_PER_POINT + 1.0 * scale
}

fn table_height(table: &Table, width: f64, scale: f64) -> f64 {
    let total: u32 = table.widths.iter().sum::<u32>().max(1);
    let each: Vec<f64> =
        table.widths.iter().map(|share| width * f64::from(*share) / f64::from(total) - 2.4 - RULED).collect();
    let row = |cells: &[String], weight| {
        cells
            .iter()
            .zip(&each)
            .map(|(cell, width)| weighted(cell, *width, SMALL + 0.5, scale, weight))
            .fold(0.0, f64::max)
            + 1.2 * scale
            + RULED
    };
    let heads =
        if table.heads.iter().all(String::is_empty) { 0.0 } else { row(&table.heads, figures::Weight::Bold) };
    let rows = table.rows.iter().map(|cells| {
        let read = row(cells, figures::Weight::Regular);
        match table.use_ {
            Use::Read => read,
            Use::Write => read.max(HAND_ROW * scale + RULED),
        }
    });
    heads + rows.sum::<f64>()
}

/// How small a tag's texts are set so that they fit it; 1 where the usual size does.
#[must_use]
pub fn tag_scale(tag: &Tag, width: f64) -> f64 {
    let inner = TAG_HEIGHT - 2.0 * TAG_PADDING - 2.0 * RULED;
    let beside = width - 2.0 * TAG_PADDING - 2.0 * RULED - TAG_NUMBER - TAG_PADDING;
    let fits = |scale: f64| {
        // Below each text is a millimetre of white.
        let number = TAG_HOLE + TAG * MM_PER_POINT + 1.0 + text(&tag.side, TAG_NUMBER, SMALL, scale) + 1.0;
        let words = weighted(&tag.wrong, beside, TAG_WORD, scale, figures::Weight::Bold)
            + text(&tag.read, beside, TEXT, scale)
            + text(&tag.what, beside, TEXT, scale)
            + text(&tag.whose, beside, SMALL, scale)
            + 4.0;
        number.max(words) <= inner
    };
    steps_of_scale(1.0, SMALLEST_TAG).find(|scale| fits(*scale)).unwrap_or(SMALLEST_TAG)
}

/// The hole of a tag with its rim, in millimetres: for a cable tie. Our own choice.
const TAG_HOLE: f64 = 7.8;
/// The smallest scale of a tag's texts. Our own choice: its small letters are then 5.4 pt, its words 6.3 pt.
const SMALLEST_TAG: f64 = 0.6;

/// Scales from one down to another.
fn steps_of_scale(from: f64, to: f64) -> impl Iterator<Item = f64> {
    (0_u32..).map(move |step| from - FINER * f64::from(step)).take_while(move |scale| *scale >= to - 1e-9)
}

/// The height of what stands on a page, in millimetres: of its highest column.
#[must_use]
pub fn page_height(of: words::Paper, page: &Page, scale: f64) -> f64 {
    let width = column_width(of, page);
    page.columns
        .iter()
        .map(|column| column.blocks.iter().map(|block| height(block, width, scale)).sum::<f64>())
        .fold(0.0, f64::max)
}

/// Whether a page fits one sheet of paper at this scale.
#[must_use]
pub fn fits(of: words::Paper, page: &Page, scale: f64) -> bool {
    page_height(of, page, scale) <= room(of, page).1 * SPARE
}

/// Gives each page that must stay on one sheet of paper the largest scale at which it does; the smallest there is where
/// none will do.
#[must_use]
pub fn fitted(mut sheet: Sheet) -> Sheet {
    let paper = sheet.paper;
    for page in &mut sheet.pages {
        let largest = page.scale;
        let fitting = steps_of_scale(largest, SMALLEST_SCALE).find(|scale| fits(paper, page, *scale));
        page.scale = match page.run {
            Run::OnePage => fitting.unwrap_or(SMALLEST_SCALE),
            // What may run on stays on one page where that costs little, and keeps its size where it runs on.
            Run::MayRunOn => fitting.unwrap_or(largest),
        };
    }
    sheet
}
