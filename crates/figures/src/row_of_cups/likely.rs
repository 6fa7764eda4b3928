//! What each tip most likely is: the tip as seen from below, drawn small, with a word where it is no sound one.

use super::CupShown;
use super::places::Place;
use super::tiers::Tier;
use crate::drawing::{Anchor, Node, Role};
use crate::line_up::{Rank, Wish, by_rank};
use crate::pen::{EDGE, SMALL, Type, WIDTH, circle, closed, count, line, open, rect, text};
use crate::text::{Weight, drop, rise, text_width};

/// What a tip most likely is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TipShown {
    /// The shape.
    pub shape: TipShape,
    /// The same in a word or two.
    pub word: String,
}

/// The shape of what a tip most likely is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum TipShape {
    /// A ring with its hole.
    Sound,
    /// The hole worn wide.
    Worn,
    /// The hole half closed.
    PartlyPlugged,
    /// The ring crossed out.
    Plugged,
    /// A square one: it is another.
    OtherSize,
    /// A body with the tip under it: not the tip, but what it sits in.
    AtPlace,
    /// A cup with a query in it: it may have been misread.
    DoubtfulCup,
    /// A tick: it was seen to, and gives what it should.
    Mended,
    /// An exclamation mark: it was seen to, and is still off.
    StillOff,
}

/// The widest a shape is. Our own choice: 12 units are 2.3 mm in print.
const SIDE: f64 = 12.0;
/// Air between two words. Our own choice.
const AIR: f64 = 5.0;

/// The shapes of a row, and the words of those that are no sound tips where they fit. Nothing where nothing is known.
pub(crate) fn likely(cups: &[CupShown], places: &[Place], top: f64, pitch: f64) -> Tier {
    let side = SIDE.min(pitch * 0.8);
    let mut nodes = vec![Vec::new(); cups.len()];
    if cups.iter().all(|cup| cup.likely.is_none()) {
        return Tier { nodes, height: 0.0 };
    }
    let middle = top + SIDE / 2.0 + 2.0;
    for ((cup, place), of_tip) in cups.iter().zip(places).zip(&mut nodes) {
        if let Some(likely) = &cup.likely {
            of_tip.extend(shape(likely.shape, place.cup, middle, side / 2.0));
        }
    }
    let mut height = SIDE + 6.0;
    let named: Vec<(usize, &str, f64)> = cups
        .iter()
        .zip(places)
        .enumerate()
        .filter_map(|(index, (cup, place))| {
            let likely = cup.likely.as_ref().filter(|likely| likely.shape != TipShape::Sound)?;
            Some((index, likely.word.as_str(), place.cup)).filter(|(_, word, _)| !word.trim().is_empty())
        })
        .collect();
    let wishes: Vec<Wish> = named
        .iter()
        .map(|(_, word, centre)| Wish {
            centre: *centre,
            width: text_width(word, SMALL, Weight::Bold),
            rank: Rank::First,
        })
        .collect();
    let stands = by_rank(&wishes, AIR, 2, EDGE, WIDTH - EDGE);
    let set = Type { role: Role::Text, size: SMALL, weight: Weight::Bold, anchor: Anchor::Middle };
    for ((index, word, _), stand) in named.iter().zip(&stands) {
        let (Some(stand), Some(of_tip)) = (stand, nodes.get_mut(*index)) else { continue };
        let y = top + SIDE + 6.0 + count(stand.line) * SMALL * 1.25 + rise(SMALL);
        of_tip.push(text(set, stand.centre, y, word));
        height = height.max(y + drop(SMALL) - top);
    }
    Tier { nodes, height }
}

/// A shape with its middle at this point.
fn shape(of: TipShape, x: f64, y: f64, half: f64) -> Vec<Node> {
    let ring = circle(Role::Dot, x, y, half - 0.6);
    let at = |right: f64, down: f64| (x + right * half, y + down * half);
    match of {
        TipShape::Sound => vec![circle(Role::Tick, x, y, half - 0.6), circle(Role::Value, x, y, half * 0.25)],
        TipShape::Worn => vec![ring, circle(Role::Value, x, y, half * 0.66)],
        TipShape::PartlyPlugged => {
            let arc = [(0.0, -0.9), (-0.5, -0.75), (-0.83, -0.34), (-0.83, 0.34), (-0.5, 0.75), (0.0, 0.9)];
            vec![ring, closed(Role::Value, &arc.map(|(right, down)| at(right, down)))]
        }
        TipShape::Plugged => vec![
            ring,
            line(Role::MarkCannotTell, at(-0.6, -0.6), at(0.6, 0.6)),
            line(Role::MarkCannotTell, at(-0.6, 0.6), at(0.6, -0.6)),
        ],
        TipShape::OtherSize => {
            let reach = half * 0.9;
            vec![
                rect(Role::Dot, x - reach, y - reach, x + reach, y + reach),
                circle(Role::Value, x, y, half * 0.3),
            ]
        }
        TipShape::Mended => {
            vec![open(Role::MarkCannotTell, &[at(-0.7, 0.1), at(-0.2, 0.65), at(0.75, -0.6)])]
        }
        TipShape::StillOff => vec![
            line(Role::MarkActLine, at(0.0, -0.85), at(0.0, 0.2)),
            circle(Role::MarkAct, x, y + half * 0.75, half * 0.2),
        ],
        TipShape::AtPlace => {
            let (left, right) = (at(-0.6, -0.95), at(0.6, 0.2));
            vec![
                rect(Role::Value, left.0, left.1, right.0, right.1),
                closed(Role::Tick, &[at(-0.35, 0.2), at(0.35, 0.2), at(0.2, 0.9), at(-0.2, 0.9)]),
            ]
        }
        TipShape::DoubtfulCup => vec![
            closed(Role::Tick, &[at(-0.85, -0.9), at(-0.5, 0.9), at(0.5, 0.9), at(0.85, -0.9)]),
            line(Role::Tick, at(0.0, -0.5), at(0.0, 0.15)),
            circle(Role::Value, x, y + half * 0.5, half * 0.16),
        ],
    }
}
