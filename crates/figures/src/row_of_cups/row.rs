//! One row: a stretch of the boom with its sections, tips, cups, signs and groups.

use super::band::{Labels, Part, band, edges, label_nodes, labels};
use super::cup::{Frame, outline, water};
use super::places::{Place, Places, Stretch, places};
use super::rows::borders;
use super::{CupMark, CupShown, Density, RowOfCups, Seen, likely, tiers};
use crate::drawing::{Anchor, Node, Role};
use crate::line_up::apart;
use crate::pen::{EDGE, SMALL, Type, WIDTH, block, block_height, closed, group, line, rounded, text};
use crate::text::{Room, Weight, drop, fit, rise};

/// Heights of the parts of a row, our own choice: as in the yard, the cup is what one looks at.
struct Heights {
    /// Air over the boom, in which a section's bracket lies.
    bracket: f64,
    boom: f64,
    tip: f64,
    /// From tip to brim.
    fall: f64,
    cup: f64,
}

/// How high cups stand over what their tips most likely are. Our own choice: the two lines there take a sixth.
const LOWER: f64 = 0.83;

/// What is the same for all rows of a drawing.
pub(crate) struct Plan<'a> {
    drawing: &'a RowOfCups,
    places: Places,
    labels: Labels,
    heights: Heights,
    /// Where the cups may stand.
    left: f64,
    borders: Vec<usize>,
    rows: usize,
}

impl<'a> Plan<'a> {
    pub(crate) fn new(drawing: &'a RowOfCups, rows: &[usize]) -> Plan<'a> {
        let labels = labels(drawing);
        // Twelve units of air between labels and cups, and the boom's ends stand out a little: our own choice.
        let left = if labels.width > 0.0 { EDGE + labels.width + 12.0 } else { 20.0 };
        let (widest_pitch, widest_cup) = match drawing.density {
            Density::Roomy => (130.0, 78.0),
            Density::Usual => (80.0, 48.0),
            Density::Dense => (40.0, 26.0),
        };
        let stretch = Stretch { left, right: WIDTH - 20.0, widest_pitch, widest_cup };
        let places = places(&drawing.cups, rows, stretch, drawing.seen);
        let bracket = if drawing.sections.is_empty() { 6.0 } else { 18.0 };
        let (boom, tip, fall, cup) = match drawing.density {
            Density::Roomy => (11.0, 10.0, 42.0, 190.0),
            Density::Usual => (9.0, 8.0, 26.0, 150.0),
            Density::Dense => (8.0, 6.0, 20.0, 110.0),
        };
        // What the tips most likely are stands below; the cups give way, so that a sheet holds as much as before.
        let told = drawing.cups.iter().any(|cup| cup.likely.is_some());
        let cup = if told { cup * LOWER } else { cup };
        let heights = Heights { bracket, boom, tip, fall, cup };
        let borders = borders(&drawing.sections);
        Plan { drawing, places, labels, heights, left, borders, rows: rows.len() }
    }

    /// Air between two rows.
    pub(crate) fn between_rows(&self) -> f64 {
        // Our own choice: more than between any two lines within a row.
        28.0
    }

    /// The row's shapes, and where it ends below.
    pub(crate) fn row(&self, index: usize, start: usize, top: f64) -> (Vec<Node>, f64) {
        let empty = Vec::new();
        let places = self.places.rows.get(index).unwrap_or(&empty);
        let cups = self.drawing.cups.get(start..start + places.len()).unwrap_or_default();
        let density = self.drawing.density;
        let mut back: Vec<Node> = Vec::new();
        let mut y = top;
        if index == 0 {
            y = self.ends(places, y, &mut back);
        }
        let numbers = tiers::numbers(cups, places, density, y);
        y += numbers.height;
        y = self.over_brackets(places, start, y, &mut back);
        back.extend(self.brackets(places, start, y + self.heights.bracket / 2.0));
        y += self.heights.bracket;
        back.push(self.boom(places, index, start, y));
        let outlet = y + self.heights.boom + self.heights.tip;
        let brim = outlet + self.heights.fall;
        let base = brim + self.heights.cup;
        let parts = self.parts(cups, places);
        if let Some(limit) = &self.drawing.limit {
            back.extend(band(limit, &parts, brim, self.heights.cup));
            let right = parts.first().map_or(self.left, |part| part.left) - 6.0;
            back.extend(label_nodes(limit, &self.labels, right, brim, self.heights.cup));
        }
        let frames: Vec<Frame> = places
            .iter()
            .map(|place| Frame { x: place.cup, top: brim, height: self.heights.cup, width: self.places.cup })
            .collect();
        for ((cup, place), frame) in cups.iter().zip(places).zip(&frames) {
            back.extend(self.tip(cup, place, y + self.heights.boom, frame));
            back.extend(water(cup, frame));
        }
        if let Some(limit) = &self.drawing.limit {
            back.extend(edges(limit, &parts, brim, self.heights.cup));
        }
        let mut below = base + 7.0;
        let readings = tiers::readings(cups, places, density, below);
        below += readings.height + 3.0;
        let signs = tiers::signs(cups, places, below);
        below += signs.height;
        let words = tiers::words(cups, places, density, below);
        below += words.height;
        let most_likely = likely::likely(cups, places, below, self.places.pitch);
        below += most_likely.height;
        let mut parts_of_tips: Vec<Vec<Node>> =
            cups.iter().zip(&frames).map(|(cup, frame)| outline(cup, frame)).collect();
        for tier in [numbers, readings, signs, words, most_likely] {
            for (of_tip, nodes) in parts_of_tips.iter_mut().zip(tier.nodes) {
                of_tip.extend(nodes);
            }
        }
        for (cup, nodes) in cups.iter().zip(parts_of_tips) {
            back.push(group(Role::CupOfTip, Some(cup.id.clone()), Some(cup.told()), nodes));
        }
        let end = self.groups(cups, places, below + 4.0, &mut back).unwrap_or(below);
        (back, end)
    }

    /// What stands over the boom's ends.
    fn ends(&self, places: &[Place], top: f64, nodes: &mut Vec<Node>) -> f64 {
        let (mut left, mut right) = (&self.drawing.left_end, &self.drawing.right_end);
        if self.drawing.seen == Seen::FromTheFront {
            (left, right) = (right, left);
        }
        let room =
            Room { width: WIDTH * 0.46, lines: 1, size: SMALL, least_size: SMALL, weight: Weight::Regular };
        let (left, right) = (fit(left, room), fit(right, room));
        if left.lines.is_empty() && right.lines.is_empty() {
            return top;
        }
        let (start, end) = self.span(places);
        let y = top + rise(SMALL);
        for (fitted, anchor, x) in [
            (&left, Anchor::Start, start.min(WIDTH / 2.0 - left.width - EDGE).max(EDGE)),
            (&right, Anchor::End, end.max(WIDTH / 2.0 + right.width + EDGE).min(WIDTH - EDGE)),
        ] {
            let set = Type { role: Role::TextQuiet, size: SMALL, weight: Weight::Regular, anchor };
            nodes.extend(fitted.lines.iter().map(|content| text(set, x, y, content)));
        }
        y + drop(SMALL) + 2.0
    }

    /// The outer edges of the row's cups, or its tips where they stand further out.
    fn span(&self, places: &[Place]) -> (f64, f64) {
        let half = self.places.cup / 2.0;
        let start = places.iter().map(|place| (place.cup - half).min(place.tip)).fold(WIDTH, f64::min);
        let end = places.iter().map(|place| (place.cup + half).max(place.tip)).fold(0.0, f64::max);
        (start, end)
    }

    /// The boom; where it goes on in another row its end is cut off, not rounded.
    fn boom(&self, places: &[Place], index: usize, start: usize, y: f64) -> Node {
        let tips: Vec<f64> = places.iter().map(|place| place.tip).collect();
        let (mut left, mut right) = (
            tips.iter().copied().fold(WIDTH, f64::min) - 14.0,
            tips.iter().copied().fold(0.0, f64::max) + 14.0,
        );
        let goes_on = |far: bool| if far { index + 1 < self.rows } else { start > 0 };
        let mirrored = self.drawing.seen == Seen::FromTheFront;
        if goes_on(mirrored) {
            left -= 4.0;
        }
        if goes_on(!mirrored) {
            right += 4.0;
        }
        rounded(Role::Boom, left.max(2.0), y, right.min(WIDTH - 2.0), y + self.heights.boom, 3.0)
    }

    /// What stands over the bracket of the section that ends at this border.
    fn text_over(&self, border: usize) -> Option<&str> {
        let place = self.borders.iter().position(|known| *known == border)?;
        let over = self.drawing.over_sections.iter().find(|(section, _)| *section == place);
        over.map(|(_, text)| text.as_str())
    }

    /// The texts over sections that lose flow, once each; where they end below.
    fn over_brackets(&self, places: &[Place], start: usize, top: f64, nodes: &mut Vec<Node>) -> f64 {
        let end = start + places.len();
        let mut told: Vec<(&str, f64)> = Vec::new();
        for border in &self.borders {
            let (from, to) = (self.section_start(*border).max(start), (*border).min(end));
            let (Some(text), true) = (self.text_over(*border), from < to) else { continue };
            let of_row = places.get(from - start..to - start).unwrap_or_default();
            let low = of_row.iter().map(|place| place.tip).fold(WIDTH, f64::min);
            let high = of_row.iter().map(|place| place.tip).fold(0.0, f64::max);
            told.push((text, (low + high) / 2.0));
        }
        told.sort_by(|one, other| one.1.total_cmp(&other.1));
        if told.is_empty() {
            return top;
        }
        // An even share of the row for each, on as many lines as that takes: our own choice.
        let width = (WIDTH - 2.0 * EDGE) / u32::try_from(told.len()).map_or(1.0, f64::from) - 10.0;
        let room = Room { width, lines: 3, size: SMALL + 1.0, least_size: SMALL, weight: Weight::Bold };
        let fitted: Vec<_> = told.iter().map(|(text, _)| fit(text, room)).collect();
        let wanted: Vec<(f64, f64)> =
            told.iter().zip(&fitted).map(|((_, centre), fitted)| (*centre, fitted.width)).collect();
        let mut below = top;
        for (fitted, centre) in fitted.iter().zip(apart(&wanted, 10.0, EDGE, WIDTH - EDGE)) {
            let set =
                Type { role: Role::TextAct, size: fitted.size, weight: Weight::Bold, anchor: Anchor::Middle };
            nodes.extend(block(fitted, set, centre, top + 2.0));
            below = below.max(top + 2.0 + block_height(fitted));
        }
        below
    }

    /// A bracket over each section; where a section goes on in another row its bracket stays open.
    fn brackets(&self, places: &[Place], start: usize, y: f64) -> Vec<Node> {
        let half = (self.places.pitch * 0.36).max(self.places.cup / 2.0 * 0.9);
        let end = start + places.len();
        let mut nodes = Vec::new();
        let mut first = 0;
        for border in &self.borders {
            let (from, to) = (first.max(start), (*border).min(end));
            first = *border;
            if from >= to {
                continue;
            }
            let begins = from == self.section_start(*border);
            let ends = to == *border;
            let of_row = places.get(from - start..to - start).unwrap_or_default();
            let low = of_row.iter().map(|place| place.tip).fold(WIDTH, f64::min) - half;
            let high = of_row.iter().map(|place| place.tip).fold(0.0, f64::max) + half;
            let (low, high) = (low.max(3.0), high.min(WIDTH - 3.0));
            let role = if self.text_over(*border).is_some() { Role::Border } else { Role::Bracket };
            nodes.push(line(role, (low, y), (high, y)));
            let mirrored = self.drawing.seen == Seen::FromTheFront;
            let (left_ends, right_ends) = if mirrored { (ends, begins) } else { (begins, ends) };
            if left_ends {
                nodes.push(line(Role::Bracket, (low, y - 4.0), (low, y + 4.0)));
            }
            if right_ends {
                nodes.push(line(Role::Bracket, (high, y - 4.0), (high, y + 4.0)));
            }
        }
        nodes
    }

    /// How many tips stand before the section that ends at this border.
    fn section_start(&self, border: usize) -> usize {
        self.borders.iter().copied().filter(|before| *before < border).max().unwrap_or(0)
    }

    /// The tip, its spray, and a thin line to its cup where that had to move.
    fn tip(&self, cup: &CupShown, place: &Place, top: f64, frame: &Frame) -> Vec<Node> {
        let half = (self.places.cup * 0.16).clamp(2.0, 6.0);
        let outlet = top + self.heights.tip;
        let mut nodes = Vec::new();
        let moved = (place.tip - place.cup).abs() > 1.0;
        if self.drawing.density == Density::Roomy && cup.mark != CupMark::Plugged && !moved {
            let reach = frame.width * 0.36;
            let end = frame.top - 4.0;
            nodes.push(closed(
                Role::Fan,
                &[(place.tip, outlet), (place.tip - reach, end), (place.tip + reach, end)],
            ));
        }
        if moved {
            nodes.push(line(Role::Leader, (place.tip, outlet + 1.0), (place.cup, frame.top - 2.0)));
        }
        nodes.push(closed(
            Role::Tip,
            &[
                (place.tip - half, top),
                (place.tip + half, top),
                (place.tip + half * 0.6, outlet),
                (place.tip - half * 0.6, outlet),
            ],
        ));
        nodes
    }

    /// The stretches of the band: one through the row, broken where a group has a level of its own.
    fn parts(&self, cups: &[CupShown], places: &[Place]) -> Vec<Part> {
        let half = self.places.pitch / 2.0;
        let about = |cup: &CupShown| {
            cup.group
                .and_then(|group| self.drawing.groups.get(group))
                .map(|group| group.about)
                .filter(|about| about.is_finite())
                .unwrap_or(1.0)
        };
        let mut order: Vec<(&CupShown, f64)> =
            cups.iter().zip(places).map(|(cup, place)| (cup, place.cup)).collect();
        order.sort_by(|one, other| one.1.total_cmp(&other.1));
        let mut parts: Vec<Part> = Vec::new();
        for (index, (cup, x)) in order.iter().enumerate() {
            let about = about(cup);
            match parts.last_mut() {
                Some(part) if (part.about - about).abs() < 1e-9 => part.right = *x,
                Some(part) => {
                    // Halfway between the two cups one level ends and the other begins.
                    let before = order.get(index.saturating_sub(1)).map_or(*x, |(_, x)| *x);
                    part.right = (before + x) / 2.0;
                    let left = part.right;
                    parts.push(Part { left, right: *x, about });
                }
                None => parts.push(Part { left: (x - half - 6.0).max(self.left - 6.0), right: *x, about }),
            }
        }
        if let Some(last) = parts.last_mut() {
            last.right = (last.right + half + 6.0).min(WIDTH - 4.0);
        }
        parts
    }

    /// Brackets under groups of tips, with their labels.
    fn groups(&self, cups: &[CupShown], places: &[Place], top: f64, nodes: &mut Vec<Node>) -> Option<f64> {
        let mut runs: Vec<(usize, f64, f64)> = Vec::new();
        let mut order: Vec<(Option<usize>, f64)> =
            cups.iter().zip(places).map(|(cup, place)| (cup.group, place.cup)).collect();
        order.sort_by(|one, other| one.1.total_cmp(&other.1));
        let mut before = None;
        for (of, x) in order {
            let of = of.filter(|of| self.drawing.groups.get(*of).is_some());
            match (of, runs.last_mut()) {
                (Some(of), Some(run)) if before == Some(of) => run.2 = x,
                (Some(of), _) => runs.push((of, x, x)),
                (None, _) => {}
            }
            before = of;
        }
        if runs.is_empty() {
            return None;
        }
        let half = self.places.cup / 2.0;
        // A label may be wider than its bracket, up to an even share of the row: our own choice.
        let share = (WIDTH - 2.0 * EDGE) / u32::try_from(runs.len()).map_or(1.0, f64::from) - 8.0;
        let size = SMALL + 1.0;
        let labels: Vec<_> = runs
            .iter()
            .map(|(of, from, to)| {
                let label = self.drawing.groups.get(*of).map_or("", |group| group.label.as_str());
                let width = share.min((to - from + 2.0 * half).max(150.0));
                fit(label, Room { width, lines: 3, size, least_size: SMALL, weight: Weight::Regular })
            })
            .collect();
        let wanted: Vec<(f64, f64)> =
            runs.iter().zip(&labels).map(|((_, from, to), label)| ((from + to) / 2.0, label.width)).collect();
        let centres = apart(&wanted, 8.0, EDGE, WIDTH - EDGE);
        let y = top + 2.0;
        let mut end = y + 8.0;
        for (((_, from, to), label), centre) in runs.iter().zip(&labels).zip(centres) {
            let (low, high) = ((from - half).max(3.0), (to + half).min(WIDTH - 3.0));
            nodes.push(line(Role::Bracket, (low, y + 4.0), (high, y + 4.0)));
            nodes.push(line(Role::Bracket, (low, y - 1.0), (low, y + 5.0)));
            nodes.push(line(Role::Bracket, (high, y - 1.0), (high, y + 5.0)));
            let mut line_y = y + 8.0 + rise(label.size);
            let set =
                Type { role: Role::Text, size: label.size, weight: Weight::Regular, anchor: Anchor::Middle };
            for content in &label.lines {
                nodes.push(text(set, centre, line_y, content));
                end = end.max(line_y + drop(label.size));
                line_y += label.size * 1.2;
            }
        }
        Some(end)
    }
}
