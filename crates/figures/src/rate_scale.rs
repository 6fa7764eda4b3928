//! What the sprayer puts out, on a scale against what is wanted and what a label allows.

use crate::drawing::{Anchor, Drawing, Node, Role};
use crate::line_up::{Rank, Wish, apart, by_rank};
use crate::mark::Mark;
use crate::pen::{
    EDGE, SMALL, Type, WIDTH, block, block_height, circle, closed, count, group, line, rect, rounded, text,
};
use crate::row_of_cups::SIDE;
use crate::text::{Fitted, Room, Weight, drop, fit, rise, text_width};

/// A rate on a scale, to be drawn. All values are in one unit, whichever the caller shows.
#[derive(Clone, Debug, PartialEq)]
pub struct RateScale {
    /// Begins the ids in the drawing.
    pub id: String,
    /// Language of the texts, as a language tag.
    pub language: String,
    /// What the drawing is.
    pub title: String,
    /// What it shows.
    pub description: String,
    /// What it puts out: `14.6 gal/ac`.
    pub value: Labelled,
    /// The least it may truly put out.
    pub low: Option<f64>,
    /// The most it may truly put out.
    pub high: Option<f64>,
    /// How sure it is: `most likely 14.1 to 15.1`; may be empty.
    pub doubt_label: String,
    /// What the value says.
    pub mark: Mark,
    /// What is wanted: `wanted 15`.
    pub wanted: Option<Labelled>,
    /// What is near enough to that.
    pub allowed: Option<Allowed>,
    /// The least carrier a label allows.
    pub least: Option<Labelled>,
    /// The most a label allows.
    pub most: Option<Labelled>,
    /// Marks along the scale, with their texts.
    pub ticks: Vec<Labelled>,
}

/// A value with its text.
#[derive(Clone, Debug, PartialEq)]
pub struct Labelled {
    /// The value, in the unit of the scale.
    pub value: f64,
    /// Its text.
    pub label: String,
}

/// A range with its text.
#[derive(Clone, Debug, PartialEq)]
pub struct Allowed {
    /// From here.
    pub low: f64,
    /// To here.
    pub high: f64,
    /// Its text: `within 5 %`; may be empty.
    pub label: String,
}

/// Values to places along the drawing.
#[derive(Clone, Copy)]
pub(crate) struct Scale {
    low: f64,
    high: f64,
}

/// Air between the scale's ends and the drawing's. Our own choice.
const SIDES: f64 = 30.0;

impl Scale {
    /// From the least to the greatest of these, with air on both sides.
    pub(crate) fn over(values: &[f64]) -> Scale {
        // Values beyond this would not leave digits for the drawing: our own choice.
        const MOST: f64 = 1.0e12;
        let sound = values.iter().copied().filter(|value| value.abs() < MOST);
        let low = sound.clone().fold(f64::INFINITY, f64::min);
        let high = sound.fold(f64::NEG_INFINITY, f64::max);
        if low > high {
            return Scale { low: 0.0, high: 1.0 };
        }
        // A single value stands in the middle; a tenth of the width is left free on either side. Our own choice.
        let air = ((high - low) * 0.1).max(high.abs() * 0.01).max(1e-9);
        Scale { low: low - air, high: high + air }
    }

    /// Where a value stands; what is no number has no place.
    pub(crate) fn x(self, value: f64) -> Option<f64> {
        let share = (value - self.low) / (self.high - self.low);
        (!share.is_nan()).then(|| SIDES + share.clamp(0.0, 1.0) * (WIDTH - 2.0 * SIDES))
    }
}

/// How one of the labels under the scale looks.
struct Named<'a> {
    x: f64,
    label: &'a str,
    kind: Kind,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    Wanted,
    Allowed,
    Least,
    Most,
}

impl RateScale {
    /// Draws it, 1000 units wide.
    #[must_use]
    pub fn draw(&self) -> Drawing {
        let scale = Scale::over(&self.values());
        let mut nodes = Vec::new();
        let (above, mut y) = self.value_label(scale);
        let bar = y + 6.0;
        let axis = bar + 34.0;
        self.limits(scale, bar - 2.0, axis, &mut nodes);
        nodes.push(line(Role::Axis, (SIDES - 20.0, axis), (WIDTH - SIDES + 20.0, axis)));
        y = ticks(&self.ticks, scale, axis, &mut nodes);
        self.doubt(scale, bar, above, &mut nodes);
        let end = self.names(scale, axis, y, &mut nodes);
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

    fn values(&self) -> Vec<f64> {
        let mut values = vec![self.value.value];
        values.extend(self.low.into_iter().chain(self.high));
        values.extend([&self.wanted, &self.least, &self.most].into_iter().flatten().map(|named| named.value));
        if let Some(allowed) = &self.allowed {
            values.extend([allowed.low, allowed.high]);
        }
        values
    }

    /// The value's own label over its point, and where that ends below.
    fn value_label(&self, scale: Scale) -> (Vec<Node>, f64) {
        let room = |size, weight| Room { width: 460.0, lines: 2, size, least_size: SMALL, weight };
        let value = fit(&self.value.label, room(24.0, Weight::Bold));
        let doubt = fit(&self.doubt_label, room(15.0, Weight::Regular));
        let sign = if self.mark == Mark::Quiet { 0.0 } else { SIDE + 8.0 };
        let width = (value.width + sign).max(doubt.width);
        let x = scale.x(self.value.value).unwrap_or(WIDTH / 2.0);
        let centre = x.clamp(EDGE + width / 2.0, WIDTH - EDGE - width / 2.0);
        let mut nodes = Vec::new();
        let mut y = EDGE;
        if sign > 0.0 {
            nodes.extend(
                self.mark.sign(centre - (value.width + sign) / 2.0 + SIDE / 2.0, y + rise(value.size) * 0.62),
            );
        }
        let set =
            |role, fitted: &Fitted, weight| Type { role, size: fitted.size, weight, anchor: Anchor::Middle };
        nodes.extend(block(&value, set(self.mark.text(), &value, Weight::Bold), centre + sign / 2.0, y));
        y += block_height(&value);
        nodes.extend(block(&doubt, set(Role::TextQuiet, &doubt, Weight::Regular), centre, y));
        (nodes, y + block_height(&doubt))
    }

    /// The point with its doubt as a soft bar.
    fn doubt(&self, scale: Scale, bar: f64, label: Vec<Node>, nodes: &mut Vec<Node>) {
        let mut parts = label;
        let y = bar + 13.0;
        let ends = (self.low.and_then(|low| scale.x(low)), self.high.and_then(|high| scale.x(high)));
        if let (Some(low), Some(high)) = ends {
            parts.push(rounded(Role::Doubt, low.min(high), y - 9.0, low.max(high), y + 9.0, 3.0));
        }
        if let Some(x) = scale.x(self.value.value) {
            parts.push(line(Role::ValueLine, (x, bar - 2.0), (x, bar + 28.0)));
            parts.push(circle(self.mark.value(), x, y, 7.0));
        }
        let told = format!("{}, {}", self.value.label, self.doubt_label);
        nodes.push(group(Role::Part, Some("value".to_owned()), Some(told), parts));
    }

    /// What is allowed, and the borders of the label.
    fn limits(&self, scale: Scale, top: f64, axis: f64, nodes: &mut Vec<Node>) {
        if let Some(allowed) = &self.allowed
            && let (Some(low), Some(high)) = (scale.x(allowed.low), scale.x(allowed.high))
        {
            nodes.push(rect(Role::Band, low.min(high), top, low.max(high), axis));
            for x in [low, high] {
                nodes.push(line(Role::BandEdge, (x, top), (x, axis)));
            }
        }
        if let Some(x) = self.wanted.as_ref().and_then(|wanted| scale.x(wanted.value)) {
            nodes.push(line(Role::Wanted, (x, axis - 14.0), (x, axis + 6.0)));
            nodes.push(closed(Role::Value, &[(x, axis), (x - 7.0, axis + 11.0), (x + 7.0, axis + 11.0)]));
        }
        for (border, side) in [(&self.least, -1.0), (&self.most, 1.0)] {
            let Some(x) = border.as_ref().and_then(|border| scale.x(border.value)) else { continue };
            nodes.push(line(Role::Border, (x, top + 2.0), (x, axis + 6.0)));
            // Strokes on the side where one must not be.
            let room = if side < 0.0 { x - EDGE } else { WIDTH - EDGE - x };
            for step in 0..3 {
                let from = 4.0 + count(step) * 8.0;
                if from + 8.0 <= room {
                    let (near, far) = (x + side * from, x + side * (from + 8.0));
                    nodes.push(line(Role::Tick, (near, axis - 3.0), (far, axis - 13.0)));
                }
            }
        }
    }

    /// What is wanted, allowed, least and most, named under the scale without standing on each other.
    fn names(&self, scale: Scale, axis: f64, top: f64, nodes: &mut Vec<Node>) -> f64 {
        let mut named: Vec<Named<'_>> = Vec::new();
        let single = [(&self.wanted, Kind::Wanted), (&self.least, Kind::Least), (&self.most, Kind::Most)];
        for (labelled, kind) in single {
            if let Some(labelled) = labelled
                && let Some(x) = scale.x(labelled.value)
            {
                named.push(Named { x, label: &labelled.label, kind });
            }
        }
        if let Some(allowed) = &self.allowed
            && let (Some(low), Some(high)) = (scale.x(allowed.low), scale.x(allowed.high))
        {
            // Beside the wanted rate, whose label stands in the middle of the range.
            named.push(Named { x: low.max(high), label: &allowed.label, kind: Kind::Allowed });
        }
        named.retain(|named| !named.label.trim().is_empty());
        named.sort_by(|one, other| one.x.total_cmp(&other.x));
        let share = (WIDTH - 2.0 * EDGE) / count(named.len().max(1)) - 14.0;
        let fitted: Vec<Fitted> = named
            .iter()
            .map(|named| {
                let weight = if named.kind == Kind::Allowed { Weight::Regular } else { Weight::Bold };
                fit(
                    named.label,
                    Room { width: share.min(240.0), lines: 3, size: 15.0, least_size: SMALL, weight },
                )
            })
            .collect();
        let wanted: Vec<(f64, f64)> =
            named.iter().zip(&fitted).map(|(named, fitted)| (named.x, fitted.width)).collect();
        let centres = apart(&wanted, 14.0, EDGE, WIDTH - EDGE);
        let y = top + 16.0;
        let mut end = top;
        for ((named, fitted), centre) in named.iter().zip(&fitted).zip(centres) {
            if fitted.lines.is_empty() {
                continue;
            }
            let (role, weight) = match named.kind {
                Kind::Allowed => (Role::TextQuiet, Weight::Regular),
                Kind::Wanted | Kind::Least | Kind::Most => (Role::Text, Weight::Bold),
            };
            // From the scale straight down past the ticks' texts, then to the label.
            let from = axis + if named.kind == Kind::Allowed { 0.0 } else { 8.0 };
            if !crosses_text(&self.ticks, scale, named.x) {
                nodes.push(line(Role::Leader, (named.x, from), (named.x, top + 2.0)));
            }
            nodes.push(line(Role::Leader, (named.x, top + 2.0), (centre, y - 2.0)));
            let set = Type { role, size: fitted.size, weight, anchor: Anchor::Middle };
            nodes.extend(block(fitted, set, centre, y));
            end = end.max(y + block_height(fitted));
        }
        end
    }
}

/// The ticks' wishes for their texts.
fn wishes(ticks: &[Labelled], scale: Scale) -> Vec<Wish> {
    ticks
        .iter()
        .filter_map(|tick| {
            let width = text_width(&tick.label, SMALL, Weight::Regular);
            scale.x(tick.value).map(|centre| Wish { centre, width, rank: Rank::First })
        })
        .collect()
}

/// Whether a line straight down from here would run through a tick's text.
fn crosses_text(ticks: &[Labelled], scale: Scale, x: f64) -> bool {
    wishes(ticks, scale).iter().any(|wish| (wish.centre - x).abs() < wish.width / 2.0 + 2.0)
}

/// Ticks with their texts, those left out that would stand on each other; gives where they end below.
pub(crate) fn ticks(ticks: &[Labelled], scale: Scale, axis: f64, nodes: &mut Vec<Node>) -> f64 {
    let sound: Vec<&Labelled> = ticks.iter().filter(|tick| inside(scale, tick.value)).collect();
    let owned: Vec<Labelled> = sound.into_iter().cloned().collect();
    let stands = by_rank(&wishes(&owned, scale), 10.0, 1, EDGE, WIDTH - EDGE);
    let set = Type { role: Role::TextQuiet, size: SMALL, weight: Weight::Regular, anchor: Anchor::Middle };
    let mut end = axis + 12.0;
    for (tick, stand) in owned.iter().zip(stands) {
        let (Some(x), Some(stand)) = (scale.x(tick.value), stand) else { continue };
        nodes.push(line(Role::Tick, (x, axis), (x, axis + 7.0)));
        let y = axis + 12.0 + rise(SMALL);
        nodes.push(text(set, stand.centre, y, &tick.label));
        end = end.max(y + drop(SMALL));
    }
    end
}

fn inside(scale: Scale, value: f64) -> bool {
    value >= scale.low && value <= scale.high
}
