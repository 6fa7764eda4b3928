//! The limit, drawn as one band across all cups.

use super::{LimitBand, RowOfCups};
use crate::drawing::{Anchor, Node, Role};
use crate::line_up::apart;
use crate::pen::{EDGE, SMALL, Type, line, rect, text};
use crate::row_of_cups::cup::height_of;
use crate::text::{Fitted, Room, Weight, drop, fit, rise};

/// The most width its labels may take. Our own choice.
const LABELS: f64 = 130.0;
/// From one line of labels to the next, in type sizes. Our own choice.
const LEADING: f64 = 1.18;

/// Labels fitted, from the top.
pub(crate) struct Labels {
    fitted: Vec<(Fitted, Wanted)>,
    /// The width they take.
    pub(crate) width: f64,
}

/// Where a label would like to stand.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Wanted {
    Upper,
    Middle,
    Lower,
}

/// The part of the row that one band crosses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Part {
    pub(crate) left: f64,
    pub(crate) right: f64,
    /// The share of the mean about which its cups should stand.
    pub(crate) about: f64,
}

pub(crate) fn labels(row: &RowOfCups) -> Labels {
    let Some(limit) = &row.limit else { return Labels { fitted: Vec::new(), width: 0.0 } };
    let wanted = [
        (limit.above.map(|_| &limit.above_label), Wanted::Upper),
        (Some(&limit.label), Wanted::Middle),
        (limit.below.map(|_| &limit.below_label), Wanted::Lower),
    ];
    let room = Room { width: LABELS, lines: 2, size: SMALL, least_size: SMALL, weight: Weight::Regular };
    let fitted: Vec<(Fitted, Wanted)> = wanted
        .into_iter()
        .filter_map(|(label, wanted)| label.map(|label| (fit(label, room), wanted)))
        .filter(|(fitted, _)| !fitted.lines.is_empty())
        .collect();
    let width = fitted.iter().map(|(fitted, _)| fitted.width).fold(0.0, f64::max);
    Labels { fitted, width }
}

/// What the limit lets pass, to lie behind the cups.
pub(crate) fn band(limit: &LimitBand, parts: &[Part], top: f64, height: f64) -> Vec<Node> {
    parts
        .iter()
        .filter_map(|part| {
            let (upper, lower) = heights(limit, part.about, top, height);
            let (upper, lower) = (upper.unwrap_or(top), lower.unwrap_or(top + height));
            (limit.above.is_some() || limit.below.is_some())
                .then(|| rect(Role::Band, part.left, upper, part.right, lower))
        })
        .collect()
}

/// Its edges, to lie over the water.
pub(crate) fn edges(limit: &LimitBand, parts: &[Part], top: f64, height: f64) -> Vec<Node> {
    let mut nodes = Vec::new();
    for part in parts {
        let (upper, lower) = heights(limit, part.about, top, height);
        for y in [upper, lower].into_iter().flatten() {
            nodes.push(line(Role::BandEdge, (part.left, y), (part.right, y)));
        }
    }
    nodes
}

/// The labels, ending at `right`.
pub(crate) fn label_nodes(
    limit: &LimitBand,
    labels: &Labels,
    right: f64,
    top: f64,
    height: f64,
) -> Vec<Node> {
    let (upper, lower) = heights(limit, 1.0, top, height);
    let middle = match (upper, lower) {
        (Some(upper), Some(lower)) => (upper + lower) / 2.0,
        (Some(only), None) => only + SMALL * LEADING,
        (None, Some(only)) => only - SMALL * LEADING,
        (None, None) => height_of(1.0, top, height),
    };
    let wanted: Vec<(f64, f64)> = labels
        .fitted
        .iter()
        .map(|(fitted, wanted)| {
            let centre = match wanted {
                Wanted::Upper => upper.unwrap_or(middle),
                Wanted::Middle => middle,
                Wanted::Lower => lower.unwrap_or(middle),
            };
            (centre, lines_of(fitted) * SMALL * LEADING)
        })
        .collect();
    let centres = apart(&wanted, 0.0, top, top + height);
    let set = Type { role: Role::TextQuiet, size: SMALL, weight: Weight::Regular, anchor: Anchor::End };
    let mut nodes = Vec::new();
    for ((fitted, _), (centre, (_, extent))) in labels.fitted.iter().zip(centres.iter().zip(&wanted)) {
        let mut y = centre - extent / 2.0 + (SMALL * LEADING - rise(SMALL) - drop(SMALL)) / 2.0 + rise(SMALL);
        for content in &fitted.lines {
            nodes.push(text(set, right.max(EDGE + fitted.width), y, content));
            y += SMALL * LEADING;
        }
    }
    nodes
}

fn lines_of(fitted: &Fitted) -> f64 {
    u32::try_from(fitted.lines.len()).map_or(1.0, f64::from)
}

/// Where the band ends above and below.
fn heights(limit: &LimitBand, about: f64, top: f64, height: f64) -> (Option<f64>, Option<f64>) {
    let sound = |share: &f64| !share.is_nan();
    let upper = limit.above.filter(sound).map(|above| height_of(about * (1.0 + above), top, height));
    let lower = limit.below.filter(sound).map(|below| height_of(about * (1.0 - below), top, height));
    (upper, lower)
}
