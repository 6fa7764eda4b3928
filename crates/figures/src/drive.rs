//! The timed drive: two flags, the course between them, and each run with its time and speed.

use crate::drawing::{Anchor, Drawing, Node, Role};
use crate::pen::{EDGE, SMALL, Type, WIDTH, block, block_height, closed, group, line, text};
use crate::text::{Fitted, Room, Weight, clean, drop, fit, text_width};

/// A timed drive, to be drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DriveFigure {
    /// Begins the ids in the drawing.
    pub id: String,
    /// Language of the texts, as a language tag.
    pub language: String,
    /// What the drawing is.
    pub title: String,
    /// What it shows.
    pub description: String,
    /// How long the course is: `200 ft`.
    pub length: String,
    /// The runs, in the order they were driven.
    pub runs: Vec<RunShown>,
    /// What the runs come to: `4.9 mph`; may be empty.
    pub mean: String,
    /// What stands under it: `mean of 4 runs`; may be empty.
    pub mean_label: String,
}

/// One run.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RunShown {
    /// A name to find it by, unique in the drawing.
    pub id: String,
    /// What stands before it: `run 1`; may be empty.
    pub label: String,
    /// Which way it went.
    pub way: Way,
    /// How long it took: `28.0 s`.
    pub time: String,
    /// How fast that is: `4.9 mph`.
    pub speed: String,
}

/// Which way a run went.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Way {
    /// From the first flag to the second.
    There,
    /// From the second to the first.
    Back,
}

// Where the flags stand, and how much room a run has. Our own choice: the course in the middle, names before it, the mean behind.
const FIRST_FLAG: f64 = 150.0;
const SECOND_FLAG: f64 = 770.0;
const RUN: f64 = 40.0;
const FLAG: f64 = 46.0;

impl DriveFigure {
    /// Draws it, 1000 units wide.
    #[must_use]
    pub fn draw(&self) -> Drawing {
        let mut nodes = Vec::new();
        let ground = EDGE + FLAG + 2.0;
        self.course(ground, &mut nodes);
        let mut y = ground + 14.0;
        let first = y;
        for run in &self.runs {
            nodes.push(run.draw(y));
            y += RUN;
        }
        // The flags' lines go down along the runs.
        if !self.runs.is_empty() {
            for x in [FIRST_FLAG, SECOND_FLAG] {
                nodes.push(line(Role::Leader, (x, ground), (x, y)));
            }
        }
        let end = self.mean(first, y, &mut nodes);
        Drawing {
            id: self.id.clone(),
            language: self.language.clone(),
            title: self.title.clone(),
            description: self.description.clone(),
            width: WIDTH,
            height: end + EDGE,
            nodes,
        }
    }

    /// Flags, ground, and the length between them.
    fn course(&self, ground: f64, nodes: &mut Vec<Node>) {
        for x in [FIRST_FLAG, SECOND_FLAG] {
            nodes.push(line(Role::Axis, (x, ground), (x, ground - FLAG)));
            let top = ground - FLAG;
            nodes.push(closed(Role::Value, &[(x, top), (x + 26.0, top + 9.0), (x, top + 18.0)]));
        }
        nodes.push(line(Role::Axis, (FIRST_FLAG - 40.0, ground), (SECOND_FLAG + 40.0, ground)));
        let room = Room {
            width: SECOND_FLAG - FIRST_FLAG - 120.0,
            lines: 1,
            size: 17.0,
            least_size: SMALL,
            weight: Weight::Bold,
        };
        let length = fit(&self.length, room);
        let middle = (FIRST_FLAG + SECOND_FLAG) / 2.0;
        let y = ground - 18.0;
        // Clear of the first flag's cloth.
        let (left, right) = (FIRST_FLAG + 6.0, SECOND_FLAG - 6.0);
        let half = if length.lines.is_empty() { 0.0 } else { length.width / 2.0 + 10.0 };
        nodes.push(line(Role::Tick, (left, y), (middle - half, y)));
        nodes.push(line(Role::Tick, (middle + half, y), (right, y)));
        nodes.push(head(left, y, Way::Back, 9.0));
        nodes.push(head(right, y, Way::There, 9.0));
        let set = Type { role: Role::Text, size: length.size, weight: Weight::Bold, anchor: Anchor::Middle };
        nodes.extend(block(&length, set, middle, y - block_height(&length) / 2.0));
    }

    /// The mean, beside the runs; gives where the drawing ends.
    fn mean(&self, top: f64, bottom: f64, nodes: &mut Vec<Node>) -> f64 {
        let left = SECOND_FLAG + 36.0;
        let room =
            |lines, size, weight| Room { width: WIDTH - EDGE - left, lines, size, least_size: SMALL, weight };
        let mean = fit(&self.mean, room(2, 26.0, Weight::Bold));
        let label = fit(&self.mean_label, room(3, 15.0, Weight::Regular));
        let height = block_height(&mean) + block_height(&label);
        let mut y = ((top + bottom - height) / 2.0).max(top);
        if height > 0.0 {
            // A bracket takes the runs together.
            let x = SECOND_FLAG + 20.0;
            nodes.push(line(Role::Tick, (x, top + 4.0), (x, bottom.max(top + height) - 4.0)));
        }
        for (fitted, role, weight) in
            [(&mean, Role::Text, Weight::Bold), (&label, Role::TextQuiet, Weight::Regular)]
        {
            let set = Type { role, size: fitted.size, weight, anchor: Anchor::Start };
            nodes.extend(block(fitted, set, left, y));
            y += block_height(fitted);
        }
        y.max(bottom)
    }
}

impl RunShown {
    fn draw(&self, top: f64) -> Node {
        let mut nodes = Vec::new();
        let y = top + RUN - 8.0;
        let (left, right) = (FIRST_FLAG + 8.0, SECOND_FLAG - 8.0);
        let (start, end) = match self.way {
            Way::There => (left, right - 8.0),
            Way::Back => (right, left + 8.0),
        };
        nodes.push(line(Role::Arrow, (start, y), (end, y)));
        nodes.push(head(if self.way == Way::There { right } else { left }, y, self.way, 14.0));
        let (time, speed) = self.texts(right - left);
        let gap = if time.width > 0.0 && speed.width > 0.0 { 22.0 } else { 0.0 };
        let x = (left + right - time.width - gap - speed.width) / 2.0;
        let baseline = y - 8.0 - drop(SMALL) + 3.0;
        for (fitted, x, weight) in [(&time, x, Weight::Bold), (&speed, x + time.width + gap, Weight::Regular)]
        {
            let set = Type { role: Role::Text, size: fitted.size, weight, anchor: Anchor::Start };
            nodes.extend(fitted.lines.iter().map(|content| text(set, x, baseline, content)));
        }
        let room = Room {
            width: FIRST_FLAG - 14.0 - EDGE,
            lines: 2,
            size: 15.0,
            least_size: SMALL,
            weight: Weight::Regular,
        };
        let label = fit(&self.label, room);
        let set =
            Type { role: Role::TextQuiet, size: label.size, weight: Weight::Regular, anchor: Anchor::End };
        nodes.extend(block(
            &label,
            set,
            FIRST_FLAG - 14.0,
            (y - block_height(&label) / 2.0).min(top + RUN + 2.0 - block_height(&label)).max(top),
        ));
        let told: Vec<String> = [&self.label, &self.time, &self.speed]
            .into_iter()
            .map(|text| clean(text))
            .filter(|text| !text.is_empty())
            .collect();
        group(Role::Part, Some(self.id.clone()), Some(told.join(", ")), nodes)
    }

    /// Time and speed side by side; each gets what the other leaves.
    fn texts(&self, width: f64) -> (Fitted, Fitted) {
        let room = |width, weight| Room { width, lines: 1, size: 17.0, least_size: SMALL, weight };
        let wanted = text_width(&self.speed, 17.0, Weight::Regular);
        let half = (width - 22.0) / 2.0;
        let time = fit(&self.time, room((width - 22.0 - wanted).max(half), Weight::Bold));
        let speed = fit(&self.speed, room(width - 22.0 - time.width, Weight::Regular));
        (time, speed)
    }
}

/// An arrow's head with its point here.
pub(crate) fn head(x: f64, y: f64, way: Way, length: f64) -> Node {
    let back = match way {
        Way::There => -length,
        Way::Back => length,
    };
    // Two thirds as high as long, our own choice.
    let half = length / 3.0 + 0.5;
    closed(Role::ArrowHead, &[(x, y), (x + back, y - half), (x + back, y + half)])
}
