//! Every tip as a dot, by how far it is off: how even the boom is, at one glance.

use crate::drawing::{Anchor, Drawing, Node, Role};
use crate::line_up::{Rank, Wish, beside, by_rank};
use crate::mark::Mark;
use crate::pen::{EDGE, SMALL, Type, WIDTH, circle, closed, count, group, line, rect, text};
use crate::rate_scale::{Labelled, Scale, ticks};
use crate::text::{Weight, drop, rise, text_width};

/// Deviations from the mean on one line, to be drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct SpreadStrip {
    /// Begins the ids in the drawing.
    pub id: String,
    /// Language of the texts, as a language tag.
    pub language: String,
    /// What the drawing is.
    pub title: String,
    /// What it shows.
    pub description: String,
    /// The tips.
    pub dots: Vec<DotShown>,
    /// How far below the mean the limit lets pass, as a share.
    pub below: Option<f64>,
    /// How far above the mean the limit lets pass, as a share.
    pub above: Option<f64>,
    /// Marks along the line: shares off the mean, with their texts.
    pub ticks: Vec<Labelled>,
}

/// One tip.
#[derive(Clone, Debug, PartialEq)]
pub struct DotShown {
    /// The tip's number from the left as the driver sits.
    pub number: u32,
    /// A name to find it by, unique in the drawing.
    pub id: String,
    /// How far off the mean, as a share; −1 is nothing at all.
    pub off: f64,
    /// What it says.
    pub mark: Mark,
    /// All of it in words, for a pointer held over it.
    pub told: String,
}

/// Radius of a dot, and the least it may shrink to when many tips are alike. Our own choice.
const RADIUS: f64 = 6.5;
const LEAST_RADIUS: f64 = 3.2;
/// How high a stack may grow before its dots shrink. Our own choice.
const STACK: f64 = 130.0;

impl SpreadStrip {
    /// Draws it, 1000 units wide.
    #[must_use]
    pub fn draw(&self) -> Drawing {
        let reach = self.reach();
        let scale = Scale::over(&[-reach, reach]);
        let mut nodes = Vec::new();
        let (radius, stands) = stacked(&self.dots, reach, scale);
        let highest = count(stands.iter().map(|(_, level)| level + 1).max().unwrap_or(1));
        let labels = self.numbers(&stands);
        let label_lines = count(labels.iter().flatten().map(|stand| stand.1 + 1).max().unwrap_or(0));
        let stack_top = EDGE + label_lines * SMALL * 1.25 + 6.0;
        let axis = stack_top + highest * 2.0 * radius + 6.0;
        self.band(scale, stack_top - 4.0, axis, &mut nodes);
        nodes.push(line(Role::Axis, (EDGE, axis), (WIDTH - EDGE, axis)));
        if let Some(x) = scale.x(0.0) {
            nodes.push(line(Role::Tick, (x, stack_top - 4.0), (x, axis)));
        }
        let end = ticks(&self.ticks, scale, axis, &mut nodes);
        for ((dot, (x, level)), label) in self.dots.iter().zip(&stands).zip(&labels) {
            let y = axis - 3.0 - radius - count(*level) * 2.0 * radius;
            let mut parts = Vec::new();
            if let Some((centre, line_number)) = label {
                let base = EDGE + (label_lines - 1.0 - count(*line_number)) * SMALL * 1.25 + rise(SMALL);
                parts.push(line(Role::Leader, (*centre, base + drop(SMALL)), (*x, y)));
                let set =
                    Type { role: Role::Text, size: SMALL, weight: Weight::Bold, anchor: Anchor::Middle };
                parts.push(text(set, *centre, base, &dot.number.to_string()));
            }
            parts.extend(shape(dot, *x, y, radius, reach));
            nodes.push(group(Role::Part, Some(dot.id.clone()), Some(dot.told.clone()), parts));
        }
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

    /// How far the line reaches on either side: three times the limit, so that what is near it can be told apart;
    /// what is further off stands beyond its end as a double head. Our own choice.
    fn reach(&self) -> f64 {
        let sound = |share: &f64| share.is_finite() && *share > 0.0;
        let limit = self.below.into_iter().chain(self.above).filter(sound).fold(0.0, f64::max);
        let furthest = self.dots.iter().map(|dot| dot.off.abs()).filter(sound).fold(0.0, f64::max);
        let reach =
            if limit > 0.0 { (3.0 * limit).min(furthest.max(1.5 * limit)) } else { furthest.min(1.0) };
        if reach > 0.0 { reach } else { 0.1 }
    }

    fn band(&self, scale: Scale, top: f64, axis: f64, nodes: &mut Vec<Node>) {
        let ends = (self.below.map(|below| scale.x(-below)), self.above.map(|above| scale.x(above)));
        let (left, right) = match ends {
            (None, None) => return,
            (below, above) => (below.flatten().unwrap_or(EDGE), above.flatten().unwrap_or(WIDTH - EDGE)),
        };
        nodes.push(rect(Role::Band, left.min(right), top, left.max(right), axis));
        for (edge, x) in [(self.below, left), (self.above, right)] {
            if edge.is_some() {
                nodes.push(line(Role::BandEdge, (x, top), (x, axis)));
            }
        }
    }

    /// Where the numbers of marked tips stand: centre and line from the lowest.
    fn numbers(&self, stands: &[(f64, usize)]) -> Vec<Option<(f64, usize)>> {
        let marked: Vec<usize> = (0..self.dots.len())
            .filter(|index| self.dots.get(*index).is_some_and(|dot| dot.mark != Mark::Quiet))
            .collect();
        let wishes: Vec<Wish> = marked
            .iter()
            .filter_map(|index| {
                let (dot, (x, _)) = (self.dots.get(*index)?, stands.get(*index)?);
                let width = text_width(&dot.number.to_string(), SMALL, Weight::Bold);
                Some(Wish { centre: *x, width, rank: Rank::First })
            })
            .collect();
        let mut labels = vec![None; self.dots.len()];
        let stands = beside(&wishes, 6.0, WIDTH, EDGE, WIDTH - EDGE)
            .unwrap_or_else(|| by_rank(&wishes, 6.0, 3, EDGE, WIDTH - EDGE));
        for (index, stand) in marked.iter().zip(stands) {
            if let (Some(label), Some(stand)) = (labels.get_mut(*index), stand) {
                *label = Some((stand.centre, stand.line));
            }
        }
        labels
    }
}

/// What is off the line stands beyond its last mark, in the air that the scale leaves there. Our own choice.
fn shown(off: f64, reach: f64) -> f64 {
    const BEYOND: f64 = 1.13; // of the reach
    if off.abs() > reach { reach * BEYOND * off.signum() } else { off }
}

/// The place of each dot: along the line, and how many dots it stands on.
fn stacked(dots: &[DotShown], reach: f64, scale: Scale) -> (f64, Vec<(f64, usize)>) {
    let xs: Vec<f64> = dots
        .iter()
        .map(|dot| if dot.off.is_nan() { 0.0 } else { shown(dot.off, reach) })
        .map(|off| scale.x(off).unwrap_or(WIDTH / 2.0))
        .collect();
    let mut order: Vec<usize> = (0..xs.len()).collect();
    let x = |index: &usize| xs.get(*index).copied().unwrap_or(0.0);
    order.sort_by(|one, other| x(one).total_cmp(&x(other)));
    let mut radius = RADIUS;
    loop {
        let mut ends: Vec<f64> = Vec::new();
        let mut stands = vec![(WIDTH / 2.0, 0); xs.len()];
        for index in &order {
            let left = x(index) - radius;
            let level = ends.iter().position(|end| left >= *end - 1e-9).unwrap_or(ends.len());
            if level == ends.len() {
                ends.push(0.0);
            }
            if let (Some(end), Some(stand)) = (ends.get_mut(level), stands.get_mut(*index)) {
                *end = left + 2.0 * radius;
                *stand = (x(index), level);
            }
        }
        if count(ends.len()) * 2.0 * radius <= STACK || radius <= LEAST_RADIUS {
            return (radius, stands);
        }
        radius = (radius - 0.5).max(LEAST_RADIUS);
    }
}

/// A dot; one to act on is a triangle that points the way it is off, a double head when it is off the line.
fn shape(dot: &DotShown, x: f64, y: f64, radius: f64, reach: f64) -> Vec<Node> {
    // What is to be acted on does not shrink with the rest.
    let size = (radius * 1.15).max(5.5);
    if dot.off.abs() > reach {
        let sense = if dot.off > 0.0 { 1.0 } else { -1.0 };
        // Two heads in a row: much further.
        return [-0.55, 0.55]
            .into_iter()
            .map(|along| {
                let at = x + sense * size * along;
                let (tip, back) = (at + sense * size * 0.55, at - sense * size * 0.55);
                closed(dot.mark.value(), &[(tip, y), (back, y - size), (back, y + size)])
            })
            .collect();
    }
    match dot.mark {
        Mark::Quiet => vec![circle(Role::Dot, x, y, radius - 0.8)],
        Mark::CannotTell => {
            vec![circle(Role::Dot, x, y, radius - 0.8), circle(Role::MarkCannotTell, x, y, radius - 1.0)]
        }
        Mark::High => {
            vec![closed(Role::MarkAct, &[(x + size, y), (x - size, y - size), (x - size, y + size)])]
        }
        Mark::Low => {
            vec![closed(Role::MarkAct, &[(x - size, y), (x + size, y - size), (x + size, y + size)])]
        }
    }
}
