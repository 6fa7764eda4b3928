//! The lines of text and signs over and under the cups of one row.

use super::marks::{SIDE, has_sign, sign};
use super::places::Place;
use super::{CupMark, CupShown, Density};
use crate::drawing::{Anchor, Node, Role};
use crate::line_up::{Rank, Stand, Wish, beside, by_rank, by_turns};
use crate::pen::{EDGE, SMALL, Type, WIDTH, count, text};
use crate::text::{Weight, drop, rise, text_width};

/// Air between texts of one line. Our own choice.
const AIR: f64 = 5.0;
/// How far a number may stand from its tip: about the width of two figures. Our own choice.
pub(crate) const FURTHEST: f64 = 18.0;
/// From one line to the next, in type sizes. Our own choice.
const LEADING: f64 = 1.25;

/// One tier: its parts for each tip, and its height.
pub(crate) struct Tier {
    pub(crate) nodes: Vec<Vec<Node>>,
    pub(crate) height: f64,
}

/// How large numbers and readings are set. Our own choice.
pub(crate) fn type_size(density: Density) -> f64 {
    match density {
        Density::Roomy => 17.0,
        Density::Usual => 15.0,
        Density::Dense => SMALL,
    }
}

/// Whether a cup asks to be looked at.
fn marked(cup: &CupShown) -> bool {
    !matches!(cup.mark, CupMark::Quiet | CupMark::NotCaught)
}

fn rank(cup: &CupShown) -> Rank {
    if marked(cup) { Rank::First } else { Rank::Second }
}

struct Label<'row> {
    /// Index in the row.
    index: usize,
    text: &'row str,
    weight: Weight,
    size: f64,
    role: Role,
}

/// The tips' numbers over the boom: all of them when they fit, else every fifth and each marked one.
pub(crate) fn numbers(cups: &[CupShown], places: &[Place], density: Density, top: f64) -> Tier {
    let texts: Vec<String> = cups.iter().map(|cup| cup.number.to_string()).collect();
    let tips: Vec<f64> = places.iter().map(|place| place.tip).collect();
    let size = type_size(density);
    let of = |choice: Choice| -> Vec<Label<'_>> {
        cups.iter()
            .zip(&texts)
            .enumerate()
            // Every fifth is enough to count by: our own choice.
            .filter(|(_, (cup, _))| choice == Choice::All || marked(cup) || cup.number.is_multiple_of(5))
            .map(|(index, (cup, text))| {
                // Among few numbers the marked ones stand out.
                let quiet = choice == Choice::Marked && !marked(cup);
                let weight = if quiet { Weight::Regular } else { Weight::Bold };
                Label { index, text, weight, size, role: Role::Text }
            })
            .collect()
    };
    if density != Density::Dense {
        let labels = of(Choice::All);
        if let Some(stands) = beside(&wishes(&labels, cups, &tips), AIR, FURTHEST, EDGE, WIDTH - EDGE) {
            return upwards(&labels, &stands, cups.len(), top);
        }
    }
    let labels = of(Choice::Marked);
    let stands = by_rank(&wishes(&labels, cups, &tips), AIR, 2, EDGE, WIDTH - EDGE);
    upwards(&labels, &stands, cups.len(), top)
}

/// Which cups a tier tells of.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Choice {
    All,
    Marked,
}

/// The readings under the cups: all of them when they fit on two lines, else those of marked cups.
pub(crate) fn readings(cups: &[CupShown], places: &[Place], density: Density, top: f64) -> Tier {
    let size = type_size(density);
    let at: Vec<f64> = places.iter().map(|place| place.cup).collect();
    let of = |choice: Choice| -> Vec<Label<'_>> {
        cups.iter()
            .enumerate()
            .filter(|(_, cup)| !cup.reading.trim().is_empty() && (marked(cup) || choice == Choice::All))
            .map(|(index, cup)| Label {
                index,
                text: &cup.reading,
                weight: if marked(cup) { Weight::Bold } else { Weight::Regular },
                size,
                role: Role::Text,
            })
            .collect()
    };
    let mut labels = of(Choice::All);
    let mut stands = by_turns(&wishes(&labels, cups, &at), AIR, EDGE, WIDTH - EDGE);
    if density == Density::Dense || stands.iter().any(Option::is_none) {
        labels = of(Choice::Marked);
        stands = by_rank(&wishes(&labels, cups, &at), AIR, 2, EDGE, WIDTH - EDGE);
    }
    downwards(&labels, &stands, cups.len(), top)
}

/// The words under marked cups, where they fit.
pub(crate) fn words(cups: &[CupShown], places: &[Place], density: Density, top: f64) -> Tier {
    let at: Vec<f64> = places.iter().map(|place| place.cup).collect();
    // A narrow dashed cup has no number to lead a word back to it, and many of them speak for themselves; our own choice.
    const FEW: usize = 3;
    let not_caught = cups.iter().filter(|cup| cup.mark == CupMark::NotCaught).count();
    let named = density != Density::Dense && not_caught <= FEW;
    let labels: Vec<Label<'_>> = cups
        .iter()
        .enumerate()
        .filter(|(_, cup)| marked(cup) || (cup.mark == CupMark::NotCaught && named))
        .filter(|(_, cup)| !cup.word.trim().is_empty())
        .map(|(index, cup)| Label {
            index,
            text: &cup.word,
            weight: if marked(cup) { Weight::Bold } else { Weight::Regular },
            size: SMALL,
            role: match cup.mark {
                CupMark::High | CupMark::Low | CupMark::Plugged | CupMark::Worn => Role::TextAct,
                CupMark::CannotTell | CupMark::Quiet => Role::Text,
                CupMark::NotCaught => Role::TextQuiet,
            },
        })
        .collect();
    let stands = by_rank(&wishes(&labels, cups, &at), AIR, 2, EDGE, WIDTH - EDGE);
    downwards(&labels, &stands, cups.len(), top)
}

/// The signs under marked cups.
pub(crate) fn signs(cups: &[CupShown], places: &[Place], top: f64) -> Tier {
    let signed: Vec<usize> =
        cups.iter().enumerate().filter(|(_, cup)| has_sign(cup.mark)).map(|(index, _)| index).collect();
    let wished: Vec<Wish> = signed
        .iter()
        .filter_map(|index| places.get(*index))
        .map(|place| Wish { centre: place.cup, width: SIDE, rank: Rank::First })
        .collect();
    // Signs are never left out: a third line takes what two cannot.
    let stands = by_rank(&wished, 2.0, 3, 0.0, WIDTH);
    let mut nodes = vec![Vec::new(); cups.len()];
    let mut lines = 0;
    for (index, stand) in signed.iter().zip(&stands) {
        let (Some(stand), Some(cup), Some(place)) = (stand, cups.get(*index), nodes.get_mut(*index)) else {
            continue;
        };
        lines = lines.max(stand.line + 1);
        *place = sign(cup.mark, stand.centre, top + SIDE / 2.0 + count(stand.line) * (SIDE + 2.0));
    }
    Tier { nodes, height: count(lines) * (SIDE + 2.0) }
}

fn wishes(labels: &[Label<'_>], cups: &[CupShown], at: &[f64]) -> Vec<Wish> {
    labels
        .iter()
        .filter_map(|label| {
            let (cup, centre) = (cups.get(label.index)?, at.get(label.index)?);
            let width = text_width(label.text, label.size, label.weight);
            Some(Wish { centre: *centre, width, rank: rank(cup) })
        })
        .collect()
}

/// Lines counted from the lowest upwards.
fn upwards(labels: &[Label<'_>], stands: &[Option<Stand>], tips: usize, top: f64) -> Tier {
    let lines = stands.iter().flatten().map(|stand| stand.line + 1).max().unwrap_or(0);
    let turned: Vec<Option<Stand>> = stands
        .iter()
        .map(|stand| stand.map(|stand| Stand { line: lines - 1 - stand.line, ..stand }))
        .collect();
    downwards(labels, &turned, tips, top)
}

fn downwards(labels: &[Label<'_>], stands: &[Option<Stand>], tips: usize, top: f64) -> Tier {
    let mut nodes = vec![Vec::new(); tips];
    let mut height: f64 = 0.0;
    for (label, stand) in labels.iter().zip(stands) {
        let (Some(stand), Some(of_tip)) = (stand, nodes.get_mut(label.index)) else { continue };
        let leading = label.size * LEADING;
        let y = top + count(stand.line) * leading + rise(label.size);
        let set = Type { role: label.role, size: label.size, weight: label.weight, anchor: Anchor::Middle };
        of_tip.push(text(set, stand.centre, y, label.text));
        height = height.max(y + drop(label.size) - top);
    }
    Tier { nodes, height }
}
