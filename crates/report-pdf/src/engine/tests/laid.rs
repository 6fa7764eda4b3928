//! Where everything stands on the pages, as the engine laid it.

use report::style::{MARGIN, MM_PER_POINT};
use typst::layout::{Abs, Frame, FrameItem, Point, Transform};
use typst_layout::PagedDocument;

/// The ink of a text, or a drawing, on a page; in millimetres from its upper left corner.
#[derive(Debug)]
pub struct Laid {
    pub what: String,
    /// The size of its letters, in points; 0 for a drawing.
    pub size: f64,
    pub left: f64,
    pub top: f64,
    pub right: f64,
    pub bottom: f64,
}

/// All that stands on each page.
pub fn laid(document: &PagedDocument) -> Vec<Vec<Laid>> {
    let on_page = |frame| {
        let mut all = Vec::new();
        walk(&mut all, frame, Transform::identity());
        all
    };
    document.pages().iter().map(|page| on_page(&page.frame)).collect()
}

fn walk(all: &mut Vec<Laid>, frame: &Frame, at: Transform) {
    for (place, item) in frame.items() {
        let here = at.pre_concat(Transform::translate(place.x, place.y));
        let mut add = |what: String, size: Abs, from: Point, to: Point| {
            let (from, to) = (from.transform(here), to.transform(here));
            let mm = |length: Abs| length.to_pt() * MM_PER_POINT;
            let (left, top, right, bottom) = (mm(from.x), mm(from.y), mm(to.x), mm(to.y));
            all.push(Laid { what, size: size.to_pt(), left, top, right, bottom });
        };
        match item {
            FrameItem::Group(group) => walk(all, &group.frame, here.pre_concat(group.transform)),
            FrameItem::Text(text) => {
                let ink = text.bbox();
                // The engine counts upwards here; a text of spaces has no ink.
                if ink.min.x.to_pt().is_finite() {
                    let (from, to) = (Point::new(ink.min.x, ink.max.y), Point::new(ink.max.x, ink.min.y));
                    add(text.text.to_string(), text.size, from, to);
                }
            }
            FrameItem::Image(_, size, _) => {
                add("a drawing".into(), Abs::zero(), Point::zero(), size.to_point())
            }
            FrameItem::Shape(..) | FrameItem::Link(..) | FrameItem::Tag(_) => {}
        }
    }
}

/// How far ink may reach out of its place, in millimetres: the tail of a letter at the end of a line. Measured: the `q`.
const TAIL: f64 = 0.3;

/// Fails where something stands in the margin or off the page.
pub fn within_the_margins(document: &PagedDocument) {
    for (page, all) in document.pages().iter().zip(laid(document)) {
        let width = page.frame.width().to_pt() * MM_PER_POINT;
        let height = page.frame.height().to_pt() * MM_PER_POINT;
        for one in all {
            let inside = one.left >= MARGIN - TAIL
                && one.right <= width - MARGIN + TAIL
                && one.top >= MARGIN - TAIL
                && one.bottom <= height - MARGIN + TAIL;
            assert!(inside, "{one:?} on a page of {width} by {height}");
        }
    }
}

/// Fails where two texts stand on one another.
pub fn nothing_covered(document: &PagedDocument) {
    for all in laid(document) {
        let texts: Vec<&Laid> =
            all.iter().filter(|one| one.size > 0.0 && !one.what.trim().is_empty()).collect();
        for (index, one) in texts.iter().enumerate() {
            for other in &texts[index + 1..] {
                let wide = one.right.min(other.right) - one.left.max(other.left);
                let high = one.bottom.min(other.bottom) - one.top.max(other.top);
                // Letters that reach far up and down may touch those of the next line where lines are set close.
                let touch = one.size.min(other.size) * MM_PER_POINT * 0.1;
                assert!(wide < 0.1 || high < touch, "{one:?} and {other:?}");
            }
        }
    }
}
