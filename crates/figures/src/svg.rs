//! A drawing as SVG, for pages, print and PDF.
//!
//! Looks are presentation attributes, so the drawing needs no style sheet; the roles stand beside them for pages that
//! want to find a shape.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use crate::drawing::{Anchor, Drawing, Node, PathEnd, Point, Shape, TextLine};
use crate::fonts::FAMILY;
use crate::look::{look, name};
use crate::text::{Weight, clean};

/// The drawing as one `<svg>` element, without an XML heading, to stand in a page or in a file of its own.
#[must_use]
pub fn svg(drawing: &Drawing) -> String {
    let mut page = Page { text: String::new(), prefix: name_token(&drawing.id), used: BTreeSet::new() };
    let (title, description) = (page.id("title"), page.id("description"));
    let (width, height) = (number(drawing.width), number(drawing.height));
    page.add(&format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" id=\"{}\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" \
         height=\"{height}\" role=\"img\" lang=\"{language}\" xml:lang=\"{language}\" \
         aria-labelledby=\"{title} {description}\" font-family=\"'{FAMILY}', sans-serif\">\n",
        page.prefix,
        language = escaped(&drawing.language),
    ));
    page.add(&format!("<title id=\"{title}\">{}</title>\n", escaped(&drawing.title)));
    page.add(&format!("<desc id=\"{description}\">{}</desc>\n", escaped(&drawing.description)));
    for node in &drawing.nodes {
        page.node(node);
    }
    page.add("</svg>\n");
    page.text
}

struct Page {
    text: String,
    prefix: String,
    used: BTreeSet<String>,
}

impl Page {
    fn add(&mut self, text: &str) {
        self.text.push_str(text);
    }

    /// An id that no other element of the drawing has.
    fn id(&mut self, name: &str) -> String {
        let wanted = format!("{}-{}", self.prefix, name_token(name));
        let mut id = wanted.clone();
        let mut count = 1_u32;
        while !self.used.insert(id.clone()) {
            count += 1;
            id = format!("{wanted}-{count}");
        }
        id
    }

    fn node(&mut self, node: &Node) {
        let mut attributes = format!(" data-role=\"{}\"", name(node.role));
        if let Some(id) = &node.id {
            let id = self.id(id);
            let _ = write!(attributes, " id=\"{id}\"");
        }
        if !matches!(node.shape, Shape::Group { .. }) {
            attributes.push_str(&ink(node));
        }
        match &node.shape {
            Shape::Rect { corner, width, height, round } => {
                let round = if *round > 0.0 { format!(" rx=\"{}\"", number(*round)) } else { String::new() };
                self.add(&format!(
                    "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"{round}{attributes}/>\n",
                    number(corner.x),
                    number(corner.y),
                    number(width.max(0.0)),
                    number(height.max(0.0)),
                ));
            }
            Shape::Line { from, to } => self.add(&format!(
                "<line x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\"{attributes}/>\n",
                number(from.x),
                number(from.y),
                number(to.x),
                number(to.y),
            )),
            Shape::Path { points, end } => {
                self.add(&format!("<path d=\"{}\"{attributes}/>\n", course(points, *end)));
            }
            Shape::Circle { centre, radius } => self.add(&format!(
                "<circle cx=\"{}\" cy=\"{}\" r=\"{}\"{attributes}/>\n",
                number(centre.x),
                number(centre.y),
                number(radius.max(0.0)),
            )),
            Shape::Text(line) => self.add(&text(line, &attributes)),
            Shape::Group { title, nodes } => {
                self.add(&format!("<g{attributes}>\n"));
                if let Some(title) = title {
                    self.add(&format!("<title>{}</title>\n", escaped(title)));
                }
                for node in nodes {
                    self.node(node);
                }
                self.add("</g>\n");
            }
        }
    }
}

fn text(line: &TextLine, attributes: &str) -> String {
    let anchor = match line.anchor {
        Anchor::Start => "",
        Anchor::Middle => " text-anchor=\"middle\"",
        Anchor::End => " text-anchor=\"end\"",
    };
    let weight = match line.weight {
        Weight::Regular => "",
        Weight::Bold => " font-weight=\"700\"",
    };
    format!(
        "<text x=\"{}\" y=\"{}\" font-size=\"{}\"{anchor}{weight}{attributes}>{}</text>\n",
        number(line.at.x),
        number(line.at.y),
        number(line.size),
        escaped(&line.content),
    )
}

fn course(points: &[Point], end: PathEnd) -> String {
    let mut course = String::new();
    for (index, point) in points.iter().enumerate() {
        let step = if index == 0 { "M" } else { " L" };
        let _ = write!(course, "{step}{} {}", number(point.x), number(point.y));
    }
    if end == PathEnd::Closed && !points.is_empty() {
        course.push_str(" Z");
    }
    course
}

/// The looks of a shape as attributes.
fn ink(node: &Node) -> String {
    let look = look(node.role);
    let mut ink = format!(" fill=\"{}\"", look.fill.unwrap_or("none"));
    if look.fill.is_some() && look.fill_opacity < 1.0 {
        let _ = write!(ink, " fill-opacity=\"{}\"", number(look.fill_opacity));
    }
    if let Some(stroke) = look.stroke {
        let _ = write!(ink, " stroke=\"{stroke}\" stroke-width=\"{}\"", number(look.stroke_width));
        if let Some(dashes) = look.dashes {
            let _ = write!(ink, " stroke-dasharray=\"{dashes}\"");
        }
        if matches!(node.shape, Shape::Path { .. }) {
            ink.push_str(" stroke-linejoin=\"round\"");
        }
    }
    ink
}

/// A number of at most two decimals; what is no number stands at 0, so that a drawing can always be read.
fn number(value: f64) -> String {
    if !value.is_finite() {
        return "0".to_owned();
    }
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// Text as XML can hold it: whitespace made single, what XML forbids left out, markup written as entities.
fn escaped(text: &str) -> String {
    let mut escaped = String::new();
    for letter in clean(text).chars() {
        match letter {
            '&' => escaped.push_str("&amp;"),
            '<' => escaped.push_str("&lt;"),
            '>' => escaped.push_str("&gt;"),
            '"' => escaped.push_str("&quot;"),
            '\'' => escaped.push_str("&#39;"),
            other => escaped.push(other),
        }
    }
    escaped
}

/// A name of letters, digits and hyphens that begins with a letter.
fn name_token(name: &str) -> String {
    let mut token: String =
        name.chars().map(|letter| if letter.is_ascii_alphanumeric() { letter } else { '-' }).collect();
    if !token.starts_with(|letter: char| letter.is_ascii_alphabetic()) {
        token.insert_str(0, "n-");
    }
    token
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_short_and_always_numbers() {
        let check = |value, expected: &str| assert_eq!(number(value), expected);
        check(1.0, "1");
        check(1.25, "1.25");
        check(-0.001, "0");
        check(100.0, "100");
        check(f64::NAN, "0");
        check(f64::NEG_INFINITY, "0");
    }

    #[test]
    fn markup_and_what_xml_forbids_do_not_pass() {
        assert_eq!(
            escaped("<b a=\"1\">R&D's</b>\u{0}\u{ffff}"),
            "&lt;b a=&quot;1&quot;&gt;R&amp;D&#39;s&lt;/b&gt;"
        );
    }

    #[test]
    fn names_are_fit_to_be_ids() {
        assert_eq!(name_token("tip 7\""), "tip-7-");
        assert_eq!(name_token("7"), "n-7");
        assert_eq!(name_token(""), "n-");
    }
}
