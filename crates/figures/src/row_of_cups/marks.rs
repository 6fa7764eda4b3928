//! The signs under the cups: what to act on, what cannot be told yet.

use super::CupMark;
use crate::drawing::{Node, Role};
use crate::pen::{circle, closed, line, open};

/// How much room a sign takes, either way. Our own choice: 19 units are 3.6 mm in print.
pub(crate) const SIDE: f64 = 19.0;

/// Whether a sign stands under this cup.
pub(crate) fn has_sign(mark: CupMark) -> bool {
    match mark {
        CupMark::High | CupMark::Low | CupMark::Worn | CupMark::CannotTell | CupMark::Plugged => true,
        CupMark::Quiet | CupMark::NotCaught => false,
    }
}

/// The sign, with its middle at this point.
pub(crate) fn sign(mark: CupMark, x: f64, y: f64) -> Vec<Node> {
    let half = SIDE / 2.0 - 0.5;
    let up = [(x - half, y + half * 0.85), (x, y - half * 0.85), (x + half, y + half * 0.85)];
    match mark {
        CupMark::High => vec![closed(Role::MarkAct, &up)],
        CupMark::Low => {
            let down = [(x - half, y - half * 0.85), (x, y + half * 0.85), (x + half, y - half * 0.85)];
            vec![closed(Role::MarkAct, &down)]
        }
        // Worn is high, and for good: the triangle stands on a bar.
        CupMark::Worn => {
            let high = up.map(|(x, y)| (x, y - 2.5));
            let base = y + half;
            vec![closed(Role::MarkAct, &high), line(Role::MarkActLine, (x - half, base), (x + half, base))]
        }
        CupMark::Plugged => {
            let reach = half * 0.72;
            vec![
                line(Role::MarkActLine, (x - reach, y - reach), (x + reach, y + reach)),
                line(Role::MarkActLine, (x - reach, y + reach), (x + reach, y - reach)),
            ]
        }
        CupMark::CannotTell => question(x, y, half - 0.6),
        CupMark::Quiet | CupMark::NotCaught => Vec::new(),
    }
}

/// A ringed question mark, drawn, so that it needs no type.
fn question(x: f64, y: f64, radius: f64) -> Vec<Node> {
    let at = |right: f64, down: f64| (x + right * radius, y + down * radius);
    vec![
        circle(Role::MarkCannotTell, x, y, radius),
        open(
            Role::MarkCannotTell,
            &[
                at(-0.36, -0.28),
                at(-0.3, -0.46),
                at(-0.12, -0.6),
                at(0.1, -0.6),
                at(0.3, -0.46),
                at(0.36, -0.24),
                at(0.26, -0.04),
                at(0.06, 0.1),
                at(0.0, 0.3),
            ],
        ),
        circle(Role::Value, x, y + radius * 0.58, radius * 0.15),
    ]
}
