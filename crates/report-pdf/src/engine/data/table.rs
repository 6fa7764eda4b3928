//! A table as data: as many cells in each row as there are columns, and how high each row is.

use figures::Weight;
use report::layout::lines;
use report::sheet::{Table, Use};
use report::style::{HAND_ROW, LINE, MM_PER_POINT, SMALL};
use typst::foundations::{Array, Dict, IntoValue, Value, dict};

use super::super::letters::sound;
use super::block::Place;

/// A row of more lines than this may be broken over two pages. Our own choice: a third of a page.
const KEPT_TOGETHER: usize = 16;

/// A table.
pub fn table(table: &Table, place: &Place) -> Dict {
    let size = SMALL + 0.5;
    let longest = table.rows.iter().map(Vec::len).max().unwrap_or(0);
    let columns = table.widths.len().max(table.heads.len()).max(longest).max(1);
    let shares: Vec<u32> =
        (0..columns).map(|index| table.widths.get(index).copied().unwrap_or(1).max(1)).collect();
    let total: u32 = shares.iter().sum();
    let widths: Vec<f64> =
        shares.iter().map(|share| place.width * f64::from(*share) / f64::from(total) - 2.4).collect();
    let cells = |texts: &[String], weight| -> Array {
        (0..columns)
            .map(|index| {
                let text = texts.get(index).map_or("", String::as_str);
                place.letters(widths[index], size, weight).flowing(text).into_value()
            })
            .collect()
    };
    let rows: Array = table
        .rows
        .iter()
        .map(|row| {
            let count = row
                .iter()
                .zip(&widths)
                .map(|(text, width)| lines(text, *width, size * place.scale, Weight::Regular))
                .max()
                .unwrap_or(1);
            let high = count as f64 * size * place.scale * LINE * MM_PER_POINT;
            // Where a row to write in holds more than fits its height, it is as high as that.
            let by_hand = table.use_ == Use::Write && high <= HAND_ROW * place.scale;
            dict! {
                "cells" => cells(row, Weight::Regular),
                "by-hand" => by_hand,
                "keep" => count <= KEPT_TOGETHER,
            }
            .into_value()
        })
        .collect::<Array>();
    let heads = table.heads.iter().any(|head| !head.is_empty());
    dict! {
        "kind" => "table",
        "said" => sound(&table.caption),
        "shares" => shares.iter().map(|share| Value::Int(i64::from(*share))).collect::<Array>(),
        "heads" => if heads { cells(&table.heads, Weight::Bold) } else { Array::new() },
        "rows" => rows,
        "write" => table.use_ == Use::Write,
    }
}
