//! What the ground gets under the boom: fans at their true places, under them a groove each filled to its dose.
//!
//! The band between the least and the most is the doubt about the fans' shape; the limit lies behind, as behind cups.

use crate::drawing::{Anchor, Drawing, Node, Role};
use crate::line_up::{Rank, Wish, apart, by_rank};
use crate::mark::Mark;
use crate::pen::{
    EDGE, Type, WIDTH, block, block_height, closed, count, group, line, open, rect, rounded, text,
};
use crate::row_of_cups::{LimitBand, SIDE};
use crate::text::{Fitted, Room, Weight, clean, drop, fit, rise, text_width};

/// The ground under a boom, to be drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct GroundRow {
    /// Begins the ids in the drawing.
    pub id: String,
    /// Language of the texts, as a language tag.
    pub language: String,
    /// What the drawing is.
    pub title: String,
    /// What it shows. Spots are told after it.
    pub description: String,
    /// The tips, from the left as the driver sits.
    pub tips: Vec<TipOverGround>,
    /// How high they are over what is sprayed, in metres.
    pub height: f64,
    /// The grooves side by side, from the left.
    pub grooves: Vec<GrooveShown>,
    /// How far a groove may be off the mean, with the labels of its edges and, between them, of the mean.
    pub limit: Option<LimitBand>,
    /// The thinnest and the thickest place, where they stand out.
    pub spots: Vec<Spot>,
    /// What the doubt is; may be empty.
    pub doubt_label: String,
    /// How wide it may be.
    pub across: Across,
}

/// How wide a drawing may be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Across {
    /// As wide as a page.
    Page,
    /// As wide as a phone, in letters that are read there.
    Phone,
}

/// One tip over the ground.
#[derive(Clone, Debug, PartialEq)]
pub struct TipOverGround {
    /// Its number from the left as the driver sits.
    pub number: u32,
    /// Metres along the boom.
    pub place: f64,
    /// From where to where its fan lies on the ground, in metres; nothing where nothing comes out.
    pub fan: Option<(f64, f64)>,
}

/// One groove.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GrooveShown {
    /// Its left edge, in metres.
    pub from: f64,
    /// Its right edge.
    pub to: f64,
    /// The least it gets, as a share of the mean.
    pub low: f64,
    /// The most it gets.
    pub high: f64,
    /// Whether it is held against the limit.
    pub judged: bool,
}

/// A place that stands out.
#[derive(Clone, Debug, PartialEq)]
pub struct Spot {
    /// A name to find it by, unique in the drawing.
    pub id: String,
    /// Where, in metres.
    pub place: f64,
    /// Low is thin, high is thick.
    pub mark: Mark,
    /// How far off it is: `−44 %`.
    pub label: String,
}

/// How high the grooves are drawn. Our own choice.
const HIGH: f64 = 130.0;
/// At which share of that the mean stands, as the mean of cups does. Our own choice.
const MEAN_AT: f64 = 0.6;
/// How high a boom is drawn over the ground, least and most. Our own choice: true to scale between.
const OVER: (f64, f64) = (40.0, 150.0);
/// The width of a phone's drawing, and its type: at 350 dots 21 units are 18. Our own choice.
const PHONE: (f64, f64) = (400.0, 21.0);
/// Type on a page. Our own choice.
const SIZE: f64 = 15.0;
/// Air between texts. Our own choice.
const AIR: f64 = 6.0;

/// The measures of one drawing.
struct Frame {
    width: f64,
    size: f64,
    /// Where the ground begins and ends.
    left: f64,
    right: f64,
    /// Metres at the left edge, and units for a metre.
    from: f64,
    scale: f64,
}

impl Frame {
    fn x(&self, place: f64) -> f64 {
        (self.left + (place - self.from) * self.scale).clamp(self.left, self.right)
    }
}

impl GroundRow {
    /// Draws it: 1000 units wide for a page, 400 for a phone.
    #[must_use]
    pub fn draw(&self) -> Drawing {
        let grooves = self.sound_grooves();
        let (width, size) = match self.across {
            Across::Page => (WIDTH, SIZE),
            Across::Phone => PHONE,
        };
        let labels = self.labels(size);
        let labels_wide = labels.iter().map(|(fitted, _)| fitted.width).fold(0.0, f64::max);
        let left = EDGE + if labels_wide > 0.0 { labels_wide + AIR } else { 0.0 };
        let right = width - EDGE;
        let (from, to) = match (grooves.first(), grooves.last()) {
            (Some(first), Some(last)) if last.to > first.from => (first.from, last.to),
            _ => (0.0, 1.0),
        };
        let frame = Frame { width, size, left, right, from, scale: (right - left) / (to - from) };
        let mut nodes = Vec::new();
        let ground = self.boom(&frame, &mut nodes);
        let top = ground + 10.0;
        let bottom = top + HIGH;
        self.doses(&frame, &grooves, top, &mut nodes);
        label_nodes(&labels, &frame, top, &mut nodes);
        nodes.push(line(Role::Axis, (left, bottom), (right, bottom)));
        let mut end = self.spots(&frame, bottom + 6.0, &mut nodes);
        let room = Room { width: right - left, lines: 3, size, least_size: size, weight: Weight::Regular };
        let fitted = fit(&self.doubt_label, room);
        if !fitted.lines.is_empty() {
            let set = Type { role: Role::TextQuiet, size, weight: Weight::Regular, anchor: Anchor::Start };
            nodes.extend(block(&fitted, set, left, end + 4.0));
            end += 4.0 + block_height(&fitted);
        }
        Drawing {
            id: self.id.clone(),
            language: self.language.clone(),
            title: self.title.clone(),
            description: self.told(),
            width: frame.width,
            height: end + EDGE,
            nodes,
        }
    }

    /// Grooves that are there, in order.
    fn sound_grooves(&self) -> Vec<GrooveShown> {
        // Longer than any boom, and more than any dose that can be drawn: our own choice.
        let sound = |groove: &&GrooveShown| {
            groove.from.abs() < 1.0e6
                && groove.to.abs() < 1.0e6
                && groove.to > groove.from
                && !groove.low.is_nan()
        };
        let mut end = f64::NEG_INFINITY;
        let mut grooves = Vec::new();
        for groove in self.grooves.iter().filter(sound) {
            if groove.from >= end - 1e-9 {
                let low = groove.low.clamp(0.0, 1.0 / MEAN_AT);
                let high = if groove.high.is_nan() { low } else { groove.high.clamp(low, 1.0 / MEAN_AT) };
                grooves.push(GrooveShown { low, high, ..*groove });
                end = groove.to;
            }
        }
        grooves
    }

    /// Numbers, boom, tips and fans; gives where the ground is.
    fn boom(&self, frame: &Frame, nodes: &mut Vec<Node>) -> f64 {
        let tips: Vec<(&TipOverGround, f64)> = self
            .tips
            .iter()
            .filter(|tip| tip.place.abs() < 1.0e6)
            .map(|tip| (tip, frame.x(tip.place)))
            .collect();
        let texts: Vec<String> = tips.iter().map(|(tip, _)| tip.number.to_string()).collect();
        let spotted = |x: f64| self.spots.iter().any(|spot| (frame.x(spot.place) - x).abs() < 1.0);
        let wishes: Vec<Wish> = tips
            .iter()
            .zip(&texts)
            .map(|((_, x), text)| Wish {
                centre: *x,
                width: text_width(text, frame.size, Weight::Bold),
                rank: if spotted(*x) { Rank::First } else { Rank::Second },
            })
            .collect();
        let stands = by_rank(&wishes, AIR, 1, EDGE, frame.width - EDGE);
        let set = Type { role: Role::Text, size: frame.size, weight: Weight::Bold, anchor: Anchor::Middle };
        let mut y = EDGE;
        for (content, stand) in texts.iter().zip(&stands) {
            nodes.extend(stand.map(|stand| text(set, stand.centre, y + rise(frame.size), content)));
        }
        y += rise(frame.size) + drop(frame.size) + 2.0;
        let ends = tips.iter().map(|(_, x)| *x);
        let (first, last) = (ends.clone().fold(frame.right, f64::min), ends.fold(frame.left, f64::max));
        if first <= last {
            let (left, right) = ((first - 12.0).max(2.0), (last + 12.0).min(frame.width - 2.0));
            nodes.push(rounded(Role::Boom, left, y, right, y + 8.0, 3.0));
        }
        y += 8.0;
        let height = if self.height.is_finite() { self.height } else { 0.5 };
        let ground = y + 8.0 + (height * frame.scale).clamp(OVER.0, OVER.1);
        for (tip, x) in &tips {
            if let Some((from, to)) = tip.fan.filter(|(from, to)| from.abs() < 1.0e6 && to.abs() < 1.0e6) {
                nodes.push(closed(
                    Role::Fan,
                    &[(*x, y + 8.0), (frame.x(to), ground), (frame.x(from), ground)],
                ));
            }
            // Never so wide that neighbours touch: our own choice.
            let half = (4.5_f64).min(0.3 * (last - first) / (count(tips.len()) - 1.0).max(1.0)).max(0.8);
            nodes.push(closed(
                Role::Tip,
                &[(x - half, y), (x + half, y), (x + half * 0.6, y + 8.0), (x - half * 0.6, y + 8.0)],
            ));
        }
        nodes.push(line(Role::Tick, (frame.left, ground), (frame.right, ground)));
        ground
    }

    /// Limit, water and doubt of every groove, as steps.
    fn doses(&self, frame: &Frame, grooves: &[GrooveShown], top: f64, nodes: &mut Vec<Node>) {
        let at = |dose: f64| top + HIGH * (1.0 - dose * MEAN_AT);
        let judged = || grooves.iter().filter(|groove| groove.judged);
        let span = judged()
            .next()
            .zip(judged().next_back())
            .map(|(one, last)| (frame.x(one.from), frame.x(last.to)));
        let limits = self.limit.as_ref().map(|limit| {
            let edge = |share: Option<f64>, way: f64| {
                share
                    .filter(|share| share.is_finite())
                    .map(|share| at((1.0 + way * share).clamp(0.0, 1.0 / MEAN_AT)))
            };
            (edge(limit.above, 1.0).unwrap_or(top), edge(limit.below, -1.0).unwrap_or(top + HIGH))
        });
        if let (Some((upper, lower)), Some((from, to))) = (limits, span) {
            nodes.push(rect(Role::Band, from, upper, to, lower));
        }
        let steps = |of: fn(&GrooveShown) -> f64| -> Vec<(f64, f64)> {
            grooves
                .iter()
                .flat_map(|groove| {
                    [(frame.x(groove.from), at(of(groove))), (frame.x(groove.to), at(of(groove)))]
                })
                .collect()
        };
        let (low, high) = (steps(|groove| groove.low), steps(|groove| groove.high));
        if let (Some(first), Some(last)) = (low.first(), low.last()) {
            let mut water = vec![(first.0, top + HIGH)];
            water.extend(&low);
            water.push((last.0, top + HIGH));
            nodes.push(closed(Role::Water, &water));
            let doubt: Vec<(f64, f64)> = high.iter().chain(low.iter().rev()).copied().collect();
            nodes.push(closed(Role::Doubt, &doubt));
            nodes.push(open(Role::WaterLine, &high));
        }
        if let (Some((upper, lower)), Some((from, to))) = (limits, span) {
            for y in [upper, lower] {
                nodes.push(line(Role::BandEdge, (from, y), (to, y)));
            }
        }
        nodes.push(line(Role::Leader, (frame.left, at(1.0)), (frame.right, at(1.0))));
    }

    /// The limit's labels and the mean's, each with where it would stand, as a share of the mean.
    fn labels(&self, size: f64) -> Vec<(Fitted, f64)> {
        let Some(limit) = &self.limit else { return Vec::new() };
        // Our own choice: a quarter of a phone's drawing.
        let room = Room { width: 100.0, lines: 1, size, least_size: size, weight: Weight::Regular };
        let share = |share: Option<f64>| share.filter(|share| share.is_finite());
        [
            share(limit.above).map(|above| (&limit.above_label, 1.0 + above)),
            Some((&limit.label, 1.0)),
            share(limit.below).map(|below| (&limit.below_label, 1.0 - below)),
        ]
        .into_iter()
        .flatten()
        .map(|(label, at)| (fit(label, room), at))
        .filter(|(fitted, _)| !fitted.lines.is_empty())
        .collect()
    }

    /// Signs and labels under the grooves; gives where they end below.
    fn spots(&self, frame: &Frame, top: f64, nodes: &mut Vec<Node>) -> f64 {
        let spots: Vec<(&Spot, f64)> = self
            .spots
            .iter()
            .filter(|spot| spot.place.abs() < 1.0e6)
            .map(|spot| (spot, frame.x(spot.place).clamp(frame.left + SIDE / 2.0, frame.right - SIDE / 2.0)))
            .collect();
        if spots.is_empty() {
            return top;
        }
        let wishes: Vec<Wish> = spots
            .iter()
            .map(|(spot, x)| Wish {
                centre: *x,
                width: text_width(&spot.label, frame.size, Weight::Bold),
                rank: Rank::First,
            })
            .collect();
        let stands = by_rank(&wishes, AIR, 2, EDGE, frame.width - EDGE);
        let under = top + SIDE + 2.0;
        let mut end = under;
        for ((spot, x), stand) in spots.iter().zip(&stands) {
            let mut parts = spot.mark.sign(*x, top + SIDE / 2.0);
            if let Some(stand) = stand
                && !clean(&spot.label).is_empty()
            {
                let set = Type {
                    role: spot.mark.text(),
                    size: frame.size,
                    weight: Weight::Bold,
                    anchor: Anchor::Middle,
                };
                let y = under + count(stand.line) * frame.size * 1.25 + rise(frame.size);
                parts.push(text(set, stand.centre, y, &spot.label));
                end = end.max(y + drop(frame.size));
            }
            nodes.push(group(Role::Part, Some(spot.id.clone()), Some(clean(&spot.label)), parts));
        }
        end
    }

    /// The description, and after it each spot.
    fn told(&self) -> String {
        let spots: Vec<String> = self.spots.iter().map(|spot| clean(&spot.label)).collect();
        clean(&[self.description.clone(), spots.join("; ")].join(" "))
    }
}

/// The labels before the grooves, moved apart where they press.
fn label_nodes(labels: &[(Fitted, f64)], frame: &Frame, top: f64, nodes: &mut Vec<Node>) {
    let high = rise(frame.size) + drop(frame.size);
    let wanted: Vec<(f64, f64)> = labels
        .iter()
        .map(|(_, share)| (top + HIGH * (1.0 - share.clamp(0.0, 1.0 / MEAN_AT) * MEAN_AT), high))
        .collect();
    let centres = apart(&wanted, 0.0, top - high, top + HIGH + high);
    let set = Type { role: Role::TextQuiet, size: frame.size, weight: Weight::Regular, anchor: Anchor::End };
    for ((fitted, _), centre) in labels.iter().zip(centres) {
        for content in &fitted.lines {
            nodes.push(text(set, frame.left - AIR, centre - high / 2.0 + rise(frame.size), content));
        }
    }
}
