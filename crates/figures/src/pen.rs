//! Short ways to make the shapes that every drawing is made of.

use crate::drawing::{Anchor, Node, PathEnd, Point, Role, Shape, TextLine};
use crate::text::{Fitted, Weight, drop, rise};

/// The width of every drawing: 1000 units are a printed width of 190 mm, so one unit is 0.19 mm. Our own choice.
pub(crate) const WIDTH: f64 = 1000.0;
/// The smallest type: 13 units are 2.5 mm, about 7 points, in print. Our own choice.
pub(crate) const SMALL: f64 = 13.0;
/// Air at the edges of a drawing. Our own choice.
pub(crate) const EDGE: f64 = 6.0;

pub(crate) fn line(role: Role, from: (f64, f64), to: (f64, f64)) -> Node {
    Node::new(role, Shape::Line { from: Point::new(from.0, from.1), to: Point::new(to.0, to.1) })
}

pub(crate) fn rect(role: Role, left: f64, top: f64, right: f64, bottom: f64) -> Node {
    Node::new(
        role,
        Shape::Rect { corner: Point::new(left, top), width: right - left, height: bottom - top, round: 0.0 },
    )
}

pub(crate) fn rounded(role: Role, left: f64, top: f64, right: f64, bottom: f64, round: f64) -> Node {
    Node::new(
        role,
        Shape::Rect { corner: Point::new(left, top), width: right - left, height: bottom - top, round },
    )
}

pub(crate) fn circle(role: Role, x: f64, y: f64, radius: f64) -> Node {
    Node::new(role, Shape::Circle { centre: Point::new(x, y), radius })
}

pub(crate) fn open(role: Role, points: &[(f64, f64)]) -> Node {
    path(role, points, PathEnd::Open)
}

pub(crate) fn closed(role: Role, points: &[(f64, f64)]) -> Node {
    path(role, points, PathEnd::Closed)
}

fn path(role: Role, points: &[(f64, f64)], end: PathEnd) -> Node {
    Node::new(role, Shape::Path { points: points.iter().map(|(x, y)| Point::new(*x, *y)).collect(), end })
}

/// How a text is set.
#[derive(Clone, Copy)]
pub(crate) struct Type {
    pub(crate) role: Role,
    pub(crate) size: f64,
    pub(crate) weight: Weight,
    pub(crate) anchor: Anchor,
}

pub(crate) fn text(set: Type, x: f64, y: f64, content: &str) -> Node {
    Node::new(
        set.role,
        Shape::Text(TextLine {
            at: Point::new(x, y),
            anchor: set.anchor,
            size: set.size,
            weight: set.weight,
            content: content.to_owned(),
        }),
    )
}

pub(crate) fn group(role: Role, id: Option<String>, title: Option<String>, nodes: Vec<Node>) -> Node {
    Node { role, id, shape: Shape::Group { title, nodes } }
}

/// From one line of a block of text to the next, in type sizes. Our own choice.
const LEADING: f64 = 1.2;

/// The lines of a fitted text, the first one's letters beginning at `top`.
pub(crate) fn block(fitted: &Fitted, set: Type, x: f64, top: f64) -> Vec<Node> {
    let mut y = top + rise(fitted.size);
    let mut nodes = Vec::new();
    for content in &fitted.lines {
        nodes.push(text(Type { size: fitted.size, ..set }, x, y, content));
        y += fitted.size * LEADING;
    }
    nodes
}

/// How high such a block is.
pub(crate) fn block_height(fitted: &Fitted) -> f64 {
    if fitted.lines.is_empty() {
        return 0.0;
    }
    (count(fitted.lines.len()) - 1.0) * fitted.size * LEADING + rise(fitted.size) + drop(fitted.size)
}

/// A count as a number to multiply with.
pub(crate) fn count(number: usize) -> f64 {
    u32::try_from(number).map_or(f64::from(u32::MAX), f64::from)
}
