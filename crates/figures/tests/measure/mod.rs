//! What must hold for every drawing, measured.
#![allow(dead_code, missing_docs)]

use std::collections::BTreeSet;

use figures::{Bounds, Drawing, Node, Point, Shape, TextLine, svg};

/// All texts of a drawing.
pub fn texts(drawing: &Drawing) -> Vec<&TextLine> {
    let mut texts = Vec::new();
    walk(&drawing.nodes, &mut |node| {
        if let Shape::Text(line) = &node.shape {
            texts.push(line);
        }
    });
    texts
}

fn walk<'a>(nodes: &'a [Node], visit: &mut impl FnMut(&'a Node)) {
    for node in nodes {
        visit(node);
        if let Shape::Group { nodes, .. } = &node.shape {
            walk(nodes, visit);
        }
    }
}

/// All shapes of a drawing, groups and their parts.
pub fn nodes(drawing: &Drawing) -> Vec<&Node> {
    let mut nodes = Vec::new();
    walk(&drawing.nodes, &mut |node| nodes.push(node));
    nodes
}

/// The corners that a shape reaches to.
pub fn points(node: &Node) -> Vec<Point> {
    match &node.shape {
        Shape::Rect { corner, width, height, .. } => {
            vec![*corner, Point::new(corner.x + width, corner.y + height)]
        }
        Shape::Line { from, to } => vec![*from, *to],
        Shape::Path { points, .. } => points.clone(),
        Shape::Circle { centre, radius } => {
            vec![
                Point::new(centre.x - radius, centre.y - radius),
                Point::new(centre.x + radius, centre.y + radius),
            ]
        }
        Shape::Text(line) => {
            let Bounds { left, top, right, bottom } = line.bounds();
            vec![Point::new(left, top), Point::new(right, bottom)]
        }
        Shape::Group { .. } => Vec::new(),
    }
}

/// Says what is wrong with a drawing, if anything is.
pub fn wrong(drawing: &Drawing) -> Option<String> {
    outside(drawing)
        .or_else(|| overlapping(drawing))
        .or_else(|| too_small(drawing))
        .or_else(|| unreadable(drawing))
}

/// A shape or text that is not within the drawing.
fn outside(drawing: &Drawing) -> Option<String> {
    let mut found = None;
    walk(&drawing.nodes, &mut |node| {
        for point in points(node) {
            let within = point.x >= -0.01
                && point.y >= -0.01
                && point.x <= drawing.width + 0.01
                && point.y <= drawing.height + 0.01;
            if !within {
                found =
                    Some(format!("{point:?} is outside {} x {}: {node:?}", drawing.width, drawing.height));
            }
        }
    });
    found
}

/// Two texts that stand on each other.
fn overlapping(drawing: &Drawing) -> Option<String> {
    let boxes: Vec<(Bounds, &str)> =
        texts(drawing).into_iter().map(|line| (line.bounds(), line.content.as_str())).collect();
    for (index, (one, text)) in boxes.iter().enumerate() {
        for (other, next) in boxes.iter().skip(index + 1) {
            let apart = one.right <= other.left + 0.01
                || other.right <= one.left + 0.01
                || one.bottom <= other.top + 0.01
                || other.bottom <= one.top + 0.01;
            if !apart {
                return Some(format!("{text:?} {one:?} and {next:?} {other:?} overlap"));
            }
        }
    }
    None
}

/// A text under 13 units, which is about 7 points in print.
fn too_small(drawing: &Drawing) -> Option<String> {
    texts(drawing).into_iter().find(|line| line.size < 13.0).map(|line| format!("{line:?} is too small"))
}

/// What a reader of XML, or of the drawing through it, would stumble over.
fn unreadable(drawing: &Drawing) -> Option<String> {
    let text = svg(drawing);
    let document = match roxmltree::Document::parse(&text) {
        Ok(document) => document,
        Err(error) => return Some(format!("{error} in {text}")),
    };
    let mut ids = BTreeSet::new();
    for node in document.descendants().filter(roxmltree::Node::is_element) {
        if let Some(id) = node.attribute("id")
            && !ids.insert(id.to_owned())
        {
            return Some(format!("the id {id} stands twice"));
        }
        let mut drawn =
            node.attributes().filter(|attribute| !["id", "aria-labelledby"].contains(&attribute.name()));
        if drawn.any(|attribute| attribute.value().contains("NaN") || attribute.value().contains("inf")) {
            return Some(format!("a number that is none in {node:?}"));
        }
    }
    let root = document.root_element();
    let named: Vec<&str> = root.attribute("aria-labelledby").unwrap_or_default().split(' ').collect();
    (root.attribute("role") != Some("img")
        || named.len() != 2
        || named.iter().any(|name| !ids.contains(*name)))
    .then(|| "not named for those who cannot see it".to_owned())
}
