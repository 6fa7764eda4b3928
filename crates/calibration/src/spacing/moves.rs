//! The moves themselves: which tip, which way, how far.

use super::plan::Plan;
use units::{Amount, Arg, Finding, Kind, Length, Quantity, Weight};

/// Which way, as the driver sits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Towards tip 1.
    Left,
    /// Towards the last tip.
    Right,
}

impl Side {
    /// The stable word in JSON.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Left => "left",
            Self::Right => "right",
        }
    }
}

/// One tip to move.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Move {
    /// The tip, from the left.
    pub tip: u32,
    /// Which way.
    pub direction: Side,
    /// How far.
    pub distance: Length,
}

/// A gap that stays outside the limit because the tips around it cannot move.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unmendable {
    /// The gap, from the left.
    pub gap: u32,
    /// The size it is left with.
    pub size: Length,
    /// The tip left of it that cannot move.
    pub left: u32,
    /// The tip right of it that cannot move.
    pub right: u32,
}

/// A move smaller than this is not worth the spanner: a quarter inch. Common practice.
pub(super) const SMALLEST_MOVE: Length = Length::inches(0.25);

/// Slack for "a quarter inch or more" and the like in binary arithmetic: a micrometre. Our own choice.
pub(super) const SLACK: Length = Length::metres(1e-6);

impl Move {
    /// The move as a sentence.
    #[must_use]
    pub fn finding(&self) -> Finding {
        let finding = match self.direction {
            Side::Left => {
                Finding::new(Weight::Act, "spacing_move_left", "Move tip {tip} to the left by {distance}.")
            }
            Side::Right => {
                Finding::new(Weight::Act, "spacing_move_right", "Move tip {tip} to the right by {distance}.")
            }
        };
        finding
            .with("tip", Arg::Count(self.tip))
            .with("distance", Arg::Amount(Amount::new(self.distance, Kind::Width)))
    }
}

/// The moves of a plan: those worth making, and those too small.
pub(super) fn moves(marks: &[f64], plan: &Plan) -> (Vec<Move>, Vec<Move>) {
    let all =
        marks.iter().zip(&plan.places).enumerate().filter(|(_, (mark, place))| (*place - *mark).abs() > 0.0);
    let all = all.map(|(tip, (mark, place))| Move {
        tip: number(tip),
        direction: if place < mark { Side::Left } else { Side::Right },
        distance: Length::from_si((place - mark).abs()),
    });
    all.partition(|one| one.distance >= SMALLEST_MOVE - SLACK)
}

/// The gaps that no moving mends.
pub(super) fn unmendable(plan: &Plan) -> Vec<Unmendable> {
    let gap = |gap: usize| plan.places[gap + 1] - plan.places[gap];
    plan.unmended
        .iter()
        .map(|(at, left, right)| Unmendable {
            gap: number(*at),
            size: Length::from_si(gap(*at)),
            left: number(*left),
            right: number(*right),
        })
        .collect()
}

/// The number people use, from 1.
pub(super) fn number(place: usize) -> u32 {
    u32::try_from(place + 1).unwrap_or(u32::MAX)
}
