//! How high things are on paper, and the largest scale at which they fit.
//!
//! Reckoned from the widths of the letters themselves, so that the page and the PDF can be held to one sheet of paper
//! before either is drawn. The tests measure both renderers against this.

use figures::text_width;

use crate::sheet::{Block, Page, Run, Sheet, Step, Table, Tag, Use};
use crate::style::{
    BIG, GAP, HAND_ROW, HEADING, LARGE, LINE, MM_PER_POINT, SMALL, SMALLEST_SCALE, TAG_WORD, TEXT, TITLE,
    UNIT, column_width, room,
};

/// How much finer each next scale is that is tried. Our own choice.
const FINER: f64 = 0.02;
/// What is kept free of a page, because renderers break lines a little differently. Our own choice.
const SPARE: f64 = 0.97;

/// How many lines a text takes at this size in this width.
#[must_use]
pub fn lines(text: &str, width: f64, size: f64, weight: figures::Weight) -> usize {
    text.split('\n').map(|paragraph| mixed_lines(&[(paragraph, weight)], width, size)).sum()
}

/// How many lines texts of different weights take, one running on behind the other.
fn mixed_lines(texts: &[(&str, figures::Weight)], width: f64, size: f64) -> usize {
    let room = width / MM_PER_POINT;
    let (mut count, mut taken) = (1, 0.0);
    for (text, weight) in texts {
        let blank = text_width(" ", size, *weight);
        for word in text.split_whitespace() {
            let wide = text_width(word, size, *weight);
            if taken > 0.0 && taken + blank + wide > room {
                count += 1;
                taken = 0.0;
            }
            if wide > room {
                // A word longer than the line is broken wherever the line ends.
                let more = (wide / room).ceil().min(1000.0);
                count += more as usize - 1;
            }
            taken += if taken > 0.0 { blank + wide } else { wide.min(room) };
        }
    }
    count
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
            let (left, right) = (width * 0.66, width * 0.33);
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
            let box_height = |answer: &crate::sheet::AnswerBox| {
                let below: f64 = answer.below.iter().map(|line| text(line, each, SMALL, scale)).sum();
                let shown = format!("{} {}", answer.number, answer.unit);
                let size = answer_size(answer, each / scale);
                weighted(&answer.above, each, SMALL, scale, bold)
                    + weighted(&shown, each, size, scale, bold) * 0.82
                    + below
            };
            boxes.iter().map(box_height).fold(0.0, f64::max) + 3.0 * scale
        }
        Block::Drawing(drawing) => width * drawing.height / drawing.width.max(1.0),
        Block::Heading(heading) => {
            weighted(heading, width, HEADING, scale, bold) - (GAP - HEADING_GAP) * scale
        }
        Block::Steps { steps, .. } => {
            let inner = width - 11.0 * scale;
            steps.iter().map(|step| step_height(step, inner, scale)).sum()
        }
        Block::Facts { pairs, across } => {
            let each = width / (*across).max(1) as f64;
            let (name, value) = (each * 0.31 - 2.0, each * 0.69 - 3.0);
            let rows = pairs.chunks((*across).max(1)).map(|row| {
                row.iter()
                    .map(|(left, right)| text(left, name, SMALL, scale).max(text(right, value, TEXT, scale)))
                    .fold(0.0, f64::max)
                    + 1.8 * scale
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
            text(&format!("{lead} {rest}"), width - 7.0 * scale, SMALL + 0.5, scale) + 5.0 * scale
        }
        Block::Text(paragraph) => text(paragraph, width, TEXT, scale),
        Block::Small(paragraph) => text(paragraph, width, SMALL, scale) - (GAP - SMALL_GAP) * scale,
        Block::Notes(notes) => {
            notes.iter().map(|note| text(note, width - 5.0 * scale, SMALL + 0.5, scale) + 0.6 * scale).sum()
        }
        Block::Ticks { items, across } => {
            let each = width / (*across).max(1) as f64 - 8.0 * scale;
            let rows = items.chunks((*across).max(1)).map(|row| {
                row.iter().map(|item| text(item, each, TEXT, scale)).fold(0.0, f64::max) + 1.6 * scale
            });
            rows.sum()
        }
        Block::Blanks { blanks, across } => {
            blanks.len().div_ceil((*across).max(1)) as f64 * (HAND_ROW + 1.0) * scale
        }
        Block::Lines(all) => all.iter().map(|line| text(line, width - 6.0, SMALL + 0.5, scale)).sum(),
        Block::Cut(_) => 8.0 * scale,
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
pub fn answer_size(answer: &crate::sheet::AnswerBox, width: f64) -> f64 {
    let room = width / MM_PER_POINT;
    let bold = figures::Weight::Bold;
    let unit = if answer.unit.is_empty() {
        0.0
    } else {
        text_width(&format!(" {}", answer.unit), UNIT, figures::Weight::Regular)
    };
    let fits = |size: &f64| text_width(&answer.number, *size, bold) + unit <= room * SPARE;
    ANSWER_SIZES.into_iter().find(fits).unwrap_or(ANSWER_SIZES[ANSWER_SIZES.len() - 1])
}

/// The sizes an answer's number may have, largest first. Our own choice.
const ANSWER_SIZES: [f64; 6] = [BIG, 26.0, 23.0, 20.0, 17.0, 14.0];

/// The height of a tag, in millimetres: four rows on the shorter of the two papers. Our own choice.
pub const TAG_HEIGHT: f64 = 58.0;

fn step_height(step: &Step, width: f64, scale: f64) -> f64 {
    let size = TEXT * scale;
    let said = [(step.lead.as_str(), figures::Weight::Bold), (step.rest.as_str(), figures::Weight::Regular)];
    mixed_lines(&said, width, size) as f64 * size * LINE * MM_PER_POINT + 1.0 * scale
}

fn table_height(table: &Table, width: f64, scale: f64) -> f64 {
    let total: u32 = table.widths.iter().sum::<u32>().max(1);
    let each: Vec<f64> =
        table.widths.iter().map(|share| width * f64::from(*share) / f64::from(total) - 2.4).collect();
    let row = |cells: &[String], weight| {
        cells
            .iter()
            .zip(&each)
            .map(|(cell, width)| weighted(cell, *width, SMALL + 0.5, scale, weight))
            .fold(0.0, f64::max)
            + 1.4 * scale
    };
    let heads =
        if table.heads.iter().all(String::is_empty) { 0.0 } else { row(&table.heads, figures::Weight::Bold) };
    let rows = table.rows.iter().map(|cells| {
        let read = row(cells, figures::Weight::Regular);
        match table.use_ {
            Use::Read => read,
            Use::Write => read.max(HAND_ROW * scale),
        }
    });
    heads + rows.sum::<f64>()
}

/// Whether a tag's texts are too long for it at the usual size; then they are set smaller.
#[must_use]
pub fn tag_scale(tag: &Tag, width: f64) -> f64 {
    let fits = |scale: f64| {
        let inner = width - 46.0;
        let all = text(&tag.wrong, inner, TAG_WORD, scale)
            + text(&tag.read, inner, TEXT, scale)
            + text(&tag.what, inner, TEXT, scale)
            + text(&tag.whose, inner, SMALL, scale)
            + 3.0;
        all <= TAG_HEIGHT - 15.0
    };
    steps_of_scale(1.0, 0.6).find(|scale| fits(*scale)).unwrap_or(0.6)
}

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
