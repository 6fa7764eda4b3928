//! The sheet as the template reads it: sizes, colours and texts as data, drawings as files in memory.

mod block;
mod table;

use report::sheet::{Column, Lie, Page, Run, Sheet};
use report::{layout, style};
use typst::foundations::{Array, Dict, IntoValue, Value, dict};

use super::letters::sound;
use super::marks;

/// The whole sheet.
pub fn sheet(sheet: &Sheet) -> Dict {
    let pages: Array = sheet.pages.iter().map(|one| page(sheet, one)).collect();
    dict! {
        "title" => sound(&sheet.title),
        "language" => sheet.language.tag(),
        "foot" => sound(&sheet.foot),
        "pages" => pages,
        "look" => look(),
        "item" => marks::functions(),
    }
}

/// Sizes and colours.
fn look() -> Dict {
    dict! {
        "family" => figures::fonts::FAMILY,
        "ink" => style::INK,
        "quiet" => style::QUIET,
        "rule" => style::RULE,
        "act" => style::ACT,
        "text" => style::TEXT,
        "small" => style::SMALL,
        "heading" => style::HEADING,
        "title" => style::TITLE,
        "unit" => style::UNIT,
        "large" => style::LARGE,
        "tag" => style::TAG,
        "tag-word" => style::TAG_WORD,
        "line" => style::LINE,
        "margin" => style::MARGIN,
        "foot" => style::FOOT,
        "gutter" => style::GUTTER,
        "gap" => style::GAP,
        "hand-row" => style::HAND_ROW,
        "tag-height" => layout::TAG_HEIGHT,
        "answer-gap" => layout::ANSWER_GAP,
        "heading-gap" => layout::HEADING_GAP,
        "picture-height" => layout::PICTURE_HEIGHT,
        "small-gap" => layout::SMALL_GAP,
    }
}

fn page(sheet: &Sheet, page: &Page) -> Value {
    let (width, height) = style::paper(sheet.paper, page.lie);
    let column_width = style::column_width(sheet.paper, page);
    let room = style::room(sheet.paper, page).1;
    let columns: Array = page.columns.iter().map(|one| column(one, column_width, room, page.scale)).collect();
    dict! {
        "width" => width,
        "height" => height,
        "flipped" => page.lie == Lie::OnItsSide,
        "runs-on" => page.run == Run::MayRunOn,
        "scale" => page.scale,
        "columns" => columns,
    }
    .into_value()
}

fn column(column: &Column, width: f64, room: f64, scale: f64) -> Value {
    let place = block::Place { width, room, scale };
    let blocks: Array = column.blocks.iter().map(|one| place.block(one)).collect();
    dict! { "language" => column.language.tag(), "blocks" => blocks }.into_value()
}
