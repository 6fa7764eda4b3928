//! Where tips and cups stand along the drawing.

use super::{CupShown, Seen};
use crate::line_up::apart;

/// One tip, from the left of the drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Place {
    /// The tip, at its true place on the boom.
    pub(crate) tip: f64,
    /// Its cup: right under it wherever there is room.
    pub(crate) cup: f64,
}

/// The places of all rows, and the width that cups may have.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Places {
    /// For each row, its tips in the order of their numbers.
    pub(crate) rows: Vec<Vec<Place>>,
    /// Width of a cup at its mouth.
    pub(crate) cup: f64,
    /// The usual distance between tips.
    pub(crate) pitch: f64,
}

/// Between these the cups stand, and this is how far apart and how wide they may be.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Stretch {
    pub(crate) left: f64,
    pub(crate) right: f64,
    /// A short boom is not blown up beyond this pitch.
    pub(crate) widest_pitch: f64,
    /// Nor its cups beyond this width.
    pub(crate) widest_cup: f64,
}

/// How much of the pitch a cup takes, as in the row of a real catch: cups do not touch. Our own choice.
const CUP_OF_PITCH: f64 = 0.68;
/// The least air between cups, as a share of a cup's width. Our own choice.
const AIR: f64 = 0.12;

/// Gives every tip its place, on one scale for all rows.
pub(crate) fn places(cups: &[CupShown], rows: &[usize], stretch: Stretch, seen: Seen) -> Places {
    let along = along(cups);
    let mut starts = Vec::new();
    let mut start = 0;
    for length in rows {
        starts.push((start, start + length));
        start += length;
    }
    let of_row = |&(start, end): &(usize, usize)| along.get(start..end).unwrap_or_default();
    let gap = usual_gap(&along);
    let room = stretch.right - stretch.left;
    // Half a pitch at either end keeps the outer cups inside.
    let scale = starts
        .iter()
        .map(of_row)
        .map(|row| room / (span(row) + gap))
        .fold(stretch.widest_pitch / gap, f64::min);
    let longest = rows.iter().copied().max().unwrap_or(1).max(1);
    let pitch = scale * gap;
    let even = room / u32::try_from(longest).map_or(1.0, f64::from);
    let cup = (pitch * CUP_OF_PITCH).min(even / (1.0 + 2.0 * AIR)).min(stretch.widest_cup);
    let widest = starts.iter().map(of_row).map(span).fold(0.0, f64::max) * scale;
    let left = stretch.left + (room - widest) / 2.0;
    let rows = starts
        .iter()
        .map(of_row)
        .map(|row| {
            let first = row.first().copied().unwrap_or(0.0);
            let mut tips: Vec<f64> = row.iter().map(|place| left + (place - first) * scale).collect();
            if seen == Seen::FromTheFront {
                tips = tips.iter().rev().map(|tip| stretch.left + stretch.right - tip).collect();
            }
            let wanted: Vec<(f64, f64)> = tips.iter().map(|tip| (*tip, cup)).collect();
            let cups = apart(&wanted, cup * AIR, stretch.left, stretch.right);
            let mut row: Vec<Place> =
                tips.into_iter().zip(cups).map(|(tip, cup)| Place { tip, cup }).collect();
            if seen == Seen::FromTheFront {
                row.reverse();
            }
            row
        })
        .collect();
    Places { rows, cup, pitch }
}

/// Metres along the boom; evenly spaced when any place is missing, no number, or out of order.
fn along(cups: &[CupShown]) -> Vec<f64> {
    // Longer than any boom, so that sums stay numbers: our own choice.
    const LONGEST: f64 = 1.0e6;
    let places: Option<Vec<f64>> = cups.iter().map(|cup| cup.place).collect();
    if let Some(places) = places {
        let sound = places.iter().all(|place| place.abs() < LONGEST)
            && places.windows(2).all(|pair| matches!(pair, [one, next] if next >= one))
            && places.first().zip(places.last()).is_some_and(|(first, last)| last - first > 1e-6);
        if sound {
            return places;
        }
    }
    (0..cups.len()).map(|index| u32::try_from(index).map_or(0.0, f64::from)).collect()
}

/// The middle one of the distances between neighbours, twins on one body left out.
fn usual_gap(along: &[f64]) -> f64 {
    let mut gaps: Vec<f64> = along
        .windows(2)
        .filter_map(|pair| match pair {
            [one, next] if next - one > 1e-6 => Some(next - one),
            _ => None,
        })
        .collect();
    gaps.sort_by(f64::total_cmp);
    gaps.get(gaps.len() / 2).copied().unwrap_or(1.0)
}

fn span(row: &[f64]) -> f64 {
    row.first().zip(row.last()).map_or(0.0, |(first, last)| last - first)
}
