//! What a drawing is: shapes with roles, for a renderer to make visible.
//!
//! A role says what a shape means, not how it looks; `look` gives each its ink. So a renderer for paper and one for a
//! live page draw the same tree, and a page can find the cup of tip 7 by its id.

use crate::text::{Weight, drop, rise, text_width};

/// One drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawing {
    /// Begins every id in the drawing, so that two drawings can stand in one page.
    pub id: String,
    /// The language of its texts, as a language tag (`en`, `es-MX`).
    pub language: String,
    /// What it is, in a few words.
    pub title: String,
    /// What it shows, for those who cannot see it.
    pub description: String,
    /// Width in units of the drawing.
    pub width: f64,
    /// Height in units of the drawing.
    pub height: f64,
    /// What is drawn, from back to front.
    pub nodes: Vec<Node>,
}

/// One shape, and what it means.
#[derive(Clone, Debug, PartialEq)]
pub struct Node {
    /// What it means.
    pub role: Role,
    /// A name to find it by, unique in the drawing; the drawing's own id is put before it.
    pub id: Option<String>,
    /// What is drawn.
    pub shape: Shape,
}

impl Node {
    /// A shape without a name.
    #[must_use]
    pub fn new(role: Role, shape: Shape) -> Node {
        Node { role, id: None, shape }
    }
}

/// A point: to the right, and down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// From the left edge.
    pub x: f64,
    /// From the upper edge.
    pub y: f64,
}

impl Point {
    /// A point.
    #[must_use]
    pub const fn new(x: f64, y: f64) -> Point {
        Point { x, y }
    }
}

/// What is drawn.
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    /// A rectangle.
    Rect {
        /// Upper left corner.
        corner: Point,
        /// Width.
        width: f64,
        /// Height.
        height: f64,
        /// Radius of its corners.
        round: f64,
    },
    /// A straight line.
    Line {
        /// From here.
        from: Point,
        /// To here.
        to: Point,
    },
    /// Straight lines from point to point.
    Path {
        /// The points, in order.
        points: Vec<Point>,
        /// Whether the last is joined to the first.
        end: PathEnd,
    },
    /// A circle.
    Circle {
        /// Its middle.
        centre: Point,
        /// Its radius.
        radius: f64,
    },
    /// One line of text.
    Text(TextLine),
    /// Shapes that belong together.
    Group {
        /// What they are, for a pointer held over them and for readers of the source.
        title: Option<String>,
        /// The shapes, from back to front.
        nodes: Vec<Node>,
    },
}

/// Whether a path closes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PathEnd {
    /// Its ends stay apart.
    Open,
    /// The last point is joined to the first.
    Closed,
}

/// One line of text.
#[derive(Clone, Debug, PartialEq)]
pub struct TextLine {
    /// Where it stands: on this line, by its anchor.
    pub at: Point,
    /// Which of its ends stands there.
    pub anchor: Anchor,
    /// Type size.
    pub size: f64,
    /// Regular or bold.
    pub weight: Weight,
    /// The text.
    pub content: String,
}

/// The box that something takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    /// Its left edge.
    pub left: f64,
    /// Its upper edge.
    pub top: f64,
    /// Its right edge.
    pub right: f64,
    /// Its lower edge.
    pub bottom: f64,
}

impl TextLine {
    /// The box it takes, from the top of the highest letter of the font to the foot of the lowest.
    #[must_use]
    pub fn bounds(&self) -> Bounds {
        let width = text_width(&self.content, self.size, self.weight);
        let left = match self.anchor {
            Anchor::Start => self.at.x,
            Anchor::Middle => self.at.x - width / 2.0,
            Anchor::End => self.at.x - width,
        };
        Bounds {
            left,
            top: self.at.y - rise(self.size),
            right: left + width,
            bottom: self.at.y + drop(self.size),
        }
    }
}

/// Which end of a text stands at its point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// What a shape means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Role {
    /// A group, or something whose looks its parts give.
    Part,
    /// All that belongs to one tip: its cup, reading and mark.
    CupOfTip,
    /// The boom.
    Boom,
    /// The body that holds a tip, with the tip.
    Tip,
    /// The spray under a tip.
    Fan,
    /// A bracket over a section or under a group of tips.
    Bracket,
    /// A thin line from a label to what it names.
    Leader,
    /// What the limit lets pass.
    Band,
    /// Where the limit ends.
    BandEdge,
    /// A cup that asks for nothing.
    Cup,
    /// The same among many narrow ones.
    CupNarrow,
    /// A cup to act on.
    CupAct,
    /// A cup that leaves its tip untold.
    CupCannotTell,
    /// A cup that was not caught.
    CupNotCaught,
    /// The water in a cup.
    Water,
    /// How high the water may truly stand.
    Doubt,
    /// The surface of the water.
    WaterLine,
    /// Water that runs over the brim.
    Overflow,
    /// A sign that says: act on this. Filled.
    MarkAct,
    /// The same, drawn with lines.
    MarkActLine,
    /// A sign that says: cannot tell yet.
    MarkCannotTell,
    /// A sign for what was not measured.
    MarkNothing,
    /// Text that matters.
    Text,
    /// Text that says: act on this.
    TextAct,
    /// Text that stays behind.
    TextQuiet,
    /// A line to measure along, or the ground.
    Axis,
    /// A mark on such a line.
    Tick,
    /// A value.
    Value,
    /// A line that stands for a value.
    ValueLine,
    /// One of many values.
    Dot,
    /// What is wanted.
    Wanted,
    /// A border that must not be passed.
    Border,
    /// A movement, or a way to move something.
    Arrow,
    /// The head of such an arrow.
    ArrowHead,
}
