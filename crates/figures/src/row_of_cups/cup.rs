//! One cup with what is in it.

use super::{CupMark, CupShown};
use crate::drawing::{Node, Role};
use crate::pen::{closed, line, open};

/// The share of the mean that stands at the brim: the mean stands at 60 % of the height, which leaves room to see a tip
/// that puts out half as much again. Our own choice.
pub(crate) const BRIM: f64 = 1.0 / 0.6;
/// The bottom's width as a share of the mouth's: a common measuring cup. Our own choice.
const BOTTOM: f64 = 0.8;
/// Cups narrower than this have thinner lines, so that a long row does not turn grey. Our own choice.
const NARROW: f64 = 16.0;

/// Where a cup stands and how large it is.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Frame {
    /// Its middle.
    pub(crate) x: f64,
    /// Its brim.
    pub(crate) top: f64,
    /// Its height.
    pub(crate) height: f64,
    /// Its width at the mouth.
    pub(crate) width: f64,
}

impl Frame {
    pub(crate) fn base(&self) -> f64 {
        self.top + self.height
    }

    /// How high a share of the mean stands, between bottom and brim.
    pub(crate) fn height_of(&self, share: f64) -> f64 {
        height_of(share, self.top, self.height)
    }

    /// Half the width inside at this height.
    fn half(&self, y: f64) -> f64 {
        let down = ((y - self.top) / self.height).clamp(0.0, 1.0);
        self.width / 2.0 * (1.0 - (1.0 - BOTTOM) * down)
    }

    /// What stands between two heights.
    fn between(&self, role: Role, upper: f64, lower: f64) -> Node {
        let (high, low) = (self.half(upper), self.half(lower));
        closed(
            role,
            &[(self.x - high, upper), (self.x - low, lower), (self.x + low, lower), (self.x + high, upper)],
        )
    }
}

/// How high a share of the mean stands in a cup of this height.
pub(crate) fn height_of(share: f64, top: f64, height: f64) -> f64 {
    let share = if share.is_nan() { 0.0 } else { share.clamp(0.0, BRIM) };
    top + height * (1.0 - share / BRIM)
}

/// The water, drawn under the band's edges.
pub(crate) fn water(cup: &CupShown, frame: &Frame) -> Vec<Node> {
    match level(cup) {
        Some(share) if share > 0.0 => {
            vec![frame.between(Role::Water, frame.height_of(share), frame.base())]
        }
        _ => Vec::new(),
    }
}

/// The doubt, the surface, what runs over, and the cup itself.
pub(crate) fn outline(cup: &CupShown, frame: &Frame) -> Vec<Node> {
    let mut nodes = Vec::new();
    if let Some(share) = level(cup) {
        // A cup with nothing in it shows its surface just above its bottom line.
        let y = frame.height_of(share).min(frame.base() - 2.0);
        if cup.mark != CupMark::Plugged
            && let (Some(low), Some(high)) =
                (cup.low.filter(|low| !low.is_nan()), cup.high.filter(|high| !high.is_nan()))
        {
            let (upper, lower) = (frame.height_of(high.max(low)), frame.height_of(low.min(high)));
            if lower - upper > 0.1 {
                nodes.push(frame.between(Role::Doubt, upper, lower));
            }
        }
        if cup.mark != CupMark::Plugged || share > 0.0 {
            let half = frame.half(y);
            nodes.push(line(Role::WaterLine, (frame.x - half, y), (frame.x + half, y)));
        }
        if share > BRIM {
            nodes.extend(overflow(frame));
        }
    }
    let role = match cup.mark {
        CupMark::Quiet if frame.width < NARROW => Role::CupNarrow,
        CupMark::Quiet => Role::Cup,
        CupMark::High | CupMark::Low | CupMark::Plugged | CupMark::Worn => Role::CupAct,
        CupMark::CannotTell => Role::CupCannotTell,
        CupMark::NotCaught => Role::CupNotCaught,
    };
    let (mouth, bottom) = (frame.width / 2.0, frame.width / 2.0 * BOTTOM);
    nodes.push(open(
        role,
        &[
            (frame.x - mouth, frame.top),
            (frame.x - bottom, frame.base()),
            (frame.x + bottom, frame.base()),
            (frame.x + mouth, frame.top),
        ],
    ));
    match cup.mark {
        CupMark::Plugged => {
            // The cross stands in the lower half, where water is missing.
            let reach = (frame.width * 0.26).min(frame.height * 0.16);
            let y = frame.base() - frame.height * 0.3;
            nodes.push(line(Role::MarkActLine, (frame.x - reach, y - reach), (frame.x + reach, y + reach)));
            nodes.push(line(Role::MarkActLine, (frame.x - reach, y + reach), (frame.x + reach, y - reach)));
        }
        CupMark::NotCaught => {
            let reach = (frame.width * 0.2).min(10.0);
            let y = frame.base() - frame.height * 0.3;
            nodes.push(line(Role::MarkNothing, (frame.x - reach, y), (frame.x + reach, y)));
        }
        _ => {}
    }
    nodes
}

/// A heap over the brim, and a drop running down either side.
fn overflow(frame: &Frame) -> Vec<Node> {
    let half = frame.width / 2.0;
    let heap = (frame.width * 0.14).min(6.0);
    let out = (frame.width * 0.1).min(4.0);
    let run = frame.height * 0.12;
    vec![
        closed(
            Role::Overflow,
            &[
                (frame.x - half, frame.top),
                (frame.x - half * 0.6, frame.top - heap * 0.8),
                (frame.x, frame.top - heap),
                (frame.x + half * 0.6, frame.top - heap * 0.8),
                (frame.x + half, frame.top),
            ],
        ),
        line(Role::Overflow, (frame.x - half - out, frame.top), (frame.x - half - out, frame.top + run)),
        line(Role::Overflow, (frame.x + half + out, frame.top), (frame.x + half + out, frame.top + run)),
    ]
}

/// The level as drawn: what is no number was not read, and nothing is below nothing.
fn level(cup: &CupShown) -> Option<f64> {
    cup.level.filter(|level| !level.is_nan() && cup.mark != CupMark::NotCaught).map(|level| level.max(0.0))
}
