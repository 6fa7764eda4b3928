//! The tips along a tape: how far apart they are, which gaps are off, and which tip to move.

use crate::drawing::{Anchor, Drawing, Node, Role};
use crate::line_up::{Rank, Stand, Wish, beside, by_rank, by_turns};
use crate::mark::Mark;
use crate::pen::{EDGE, Type, WIDTH, closed, count, group, line, rect, rounded, text};
use crate::row_of_cups::{FURTHEST, SIDE, rows};
use crate::text::{Weight, clean, drop, rise, text_width};

/// Tips on a tape, to be drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct GapRow {
    /// Begins the ids in the drawing.
    pub id: String,
    /// Language of the texts, as a language tag.
    pub language: String,
    /// What the drawing is.
    pub title: String,
    /// What it shows. Gaps that are marked are told after it.
    pub description: String,
    /// The tips, from the left as the driver sits.
    pub tips: Vec<TipOnTape>,
    /// The gaps between them, one less than there are tips.
    pub gaps: Vec<GapShown>,
    /// Which tips to move.
    pub moves: Vec<MoveShown>,
    /// The most gaps in a row, where our own number will not do.
    pub per_row: Option<u32>,
}

/// One tip.
#[derive(Clone, Debug, PartialEq)]
pub struct TipOnTape {
    /// Its number from the left as the driver sits.
    pub number: u32,
    /// Metres from the first tip along the boom.
    pub place: f64,
}

/// The gap between one tip and the next.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GapShown {
    /// A name to find it by, unique in the drawing.
    pub id: String,
    /// How long it is: `20 in`.
    pub length: String,
    /// How far off that is: `+1½ in`; drawn where the gap is marked.
    pub off: String,
    /// What it says: high is too wide, low too narrow.
    pub mark: Mark,
}

/// A tip to move.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MoveShown {
    /// The tip's number.
    pub number: u32,
    /// Which way, as the driver sits.
    pub toward: Toward,
    /// How far: `1½ in`.
    pub label: String,
}

/// Which way to move a tip, as the driver sits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Toward {
    /// To the left.
    Left,
    /// To the right.
    Right,
}

/// The most gaps in a row. Our own choice: `20½ in` stands under each.
const IN_A_ROW: u32 = 13;
/// Air at the ends of a row. Our own choice.
const SIDES: f64 = 34.0;
/// Type of numbers and lengths. Our own choice.
const SIZE: f64 = 15.0;
/// Air between texts. Our own choice.
const AIR: f64 = 6.0;

/// A stretch of the tape: these tips, and the gaps between them.
struct Row<'a> {
    tips: &'a [TipOnTape],
    gaps: &'a [GapShown],
    /// Where the tips stand.
    xs: Vec<f64>,
}

impl GapRow {
    /// Draws it, 1000 units wide.
    #[must_use]
    pub fn draw(&self) -> Drawing {
        let gaps = self.tips.len().saturating_sub(1).min(self.gaps.len());
        let most = usize::try_from(self.per_row.unwrap_or(IN_A_ROW).max(1)).unwrap_or(usize::MAX);
        let mut nodes = Vec::new();
        let mut y = EDGE;
        let stretches = self.stretches(&rows(gaps, &[], most));
        for (index, row) in stretches.iter().enumerate() {
            if index > 0 {
                // Our own choice: more than between lines within a row.
                y += 24.0;
            }
            y = self.row(row, y, &mut nodes);
        }
        Drawing {
            id: self.id.clone(),
            language: self.language.clone(),
            title: self.title.clone(),
            description: self.told(),
            width: WIDTH,
            height: y + EDGE,
            nodes,
        }
    }

    /// The rows, all on one scale; the last tip of one row is the first of the next.
    fn stretches(&self, lengths: &[usize]) -> Vec<Row<'_>> {
        let places = self.places();
        let mut starts = Vec::new();
        let mut start = 0;
        for length in lengths {
            starts.push((start, start + length));
            start += length;
        }
        let span = |&(from, to): &(usize, usize)| match (places.get(from), places.get(to)) {
            (Some(from), Some(to)) => to - from,
            _ => 0.0,
        };
        let widest = starts.iter().map(span).fold(0.0, f64::max);
        let most_gaps = count(lengths.iter().copied().max().unwrap_or(1));
        // A short row is not blown up: our own choice of 150 units for a gap.
        let room = (WIDTH - 2.0 * SIDES).min(most_gaps * 150.0);
        let scale = if widest > 0.0 { room / widest } else { 0.0 };
        let left = (WIDTH - room) / 2.0;
        starts
            .iter()
            .map(|&(from, to)| {
                let first = places.get(from).copied().unwrap_or(0.0);
                Row {
                    tips: self.tips.get(from..=to).unwrap_or_default(),
                    gaps: self.gaps.get(from..to).unwrap_or_default(),
                    xs: places
                        .get(from..=to)
                        .unwrap_or_default()
                        .iter()
                        .map(|place| left + (place - first) * scale)
                        .collect(),
                }
            })
            .collect()
    }

    /// Metres along the tape; evenly spaced when any place is no number or out of order.
    fn places(&self) -> Vec<f64> {
        let places: Vec<f64> = self.tips.iter().map(|tip| tip.place).collect();
        // Longer than any boom: our own choice.
        let sound = places.iter().all(|place| place.abs() < 1.0e6)
            && places.windows(2).all(|pair| matches!(pair, [one, next] if next >= one));
        if sound { places } else { (0..places.len()).map(count).collect() }
    }

    fn row(&self, row: &Row<'_>, top: f64, nodes: &mut Vec<Node>) -> f64 {
        let mut y = self.moves(row, top, nodes);
        let texts: Vec<String> = row.tips.iter().map(|tip| tip.number.to_string()).collect();
        let wishes: Vec<Wish> = row
            .xs
            .iter()
            .zip(&texts)
            .map(|(x, text)| Wish {
                centre: *x,
                width: text_width(text, SIZE, Weight::Bold),
                rank: Rank::First,
            })
            .collect();
        let set = Type { role: Role::Text, size: SIZE, weight: Weight::Bold, anchor: Anchor::Middle };
        let stands = beside(&wishes, AIR, FURTHEST, EDGE, WIDTH - EDGE)
            .unwrap_or_else(|| by_rank(&wishes, AIR, 1, EDGE, WIDTH - EDGE));
        for (content, stand) in texts.iter().zip(&stands) {
            nodes.extend(stand.map(|stand| text(set, stand.centre, y + rise(SIZE), content)));
        }
        y += rise(SIZE) + drop(SIZE) + 2.0;
        let (first, last) = (row.xs.first().copied().unwrap_or(0.0), row.xs.last().copied().unwrap_or(0.0));
        let (left, right) = ((first - 16.0).max(2.0), (last + 16.0).min(WIDTH - 2.0));
        nodes.push(rounded(Role::Boom, left, y, right, y + 10.0, 3.0));
        y += 10.0;
        let tape = y + 26.0;
        for x in &row.xs {
            nodes.push(closed(
                Role::Tip,
                &[(x - 5.0, y), (x + 5.0, y), (x + 3.0, y + 9.0), (x - 3.0, y + 9.0)],
            ));
            nodes.push(line(Role::Leader, (*x, y + 12.0), (*x, tape)));
        }
        nodes.push(rect(Role::Band, left, tape, right, tape + 14.0));
        nodes.push(line(Role::Tick, (left, tape), (right, tape)));
        for x in &row.xs {
            nodes.push(line(Role::Tick, (*x, tape), (*x, tape + 14.0)));
        }
        self.gaps(row, tape + 14.0, nodes)
    }

    /// Lines, lengths and marks of the gaps; gives where they end below.
    fn gaps(&self, row: &Row<'_>, top: f64, nodes: &mut Vec<Node>) -> f64 {
        let line_y = top + 12.0;
        let weight = |gap: &GapShown| if gap.mark == Mark::Quiet { Weight::Regular } else { Weight::Bold };
        let spans: Vec<(f64, f64)> =
            row.xs.windows(2).filter_map(|pair| Some((*pair.first()?, *pair.get(1)?))).collect();
        let wishes = |of: fn(&GapShown) -> &str, size: f64| -> Vec<Wish> {
            row.gaps
                .iter()
                .zip(&spans)
                .map(|(gap, (from, to))| Wish {
                    centre: (from + to) / 2.0,
                    width: text_width(of(gap), size, weight(gap)),
                    rank: if gap.mark == Mark::Quiet { Rank::Second } else { Rank::First },
                })
                .collect()
        };
        let lengths = by_turns(&wishes(|gap| &gap.length, SIZE), AIR, EDGE, WIDTH - EDGE);
        let lengths_top = line_y + 10.0;
        let offs_top = lengths_top + lines_of(&lengths) * SIZE * 1.25 + 2.0;
        let marked: Vec<bool> = row.gaps.iter().map(|gap| gap.mark != Mark::Quiet).collect();
        let mut wished = wishes(|gap| &gap.off, SIZE);
        for (wish, marked) in wished.iter_mut().zip(&marked) {
            if !marked {
                // No text, no room.
                wish.width = f64::INFINITY;
            }
        }
        let offs = by_rank(&wished, AIR, 2, EDGE, WIDTH - EDGE);
        let signs_top =
            offs_top + lines_of(&offs) * SIZE * 1.25 + if lines_of(&offs) > 0.0 { 2.0 } else { 0.0 };
        let mut end = offs_top;
        for (index, (gap, (from, to))) in row.gaps.iter().zip(&spans).enumerate() {
            let mut parts = dimension(gap.mark, *from, *to, line_y);
            let tiers = [
                (&lengths, lengths_top, &gap.length, Role::Text),
                (&offs, offs_top, &gap.off, gap.mark.text()),
            ];
            for (stands, top, content, role) in tiers {
                if let Some(stand) = stands.get(index).copied().flatten()
                    && !content.trim().is_empty()
                {
                    let set = Type { role, size: SIZE, weight: weight(gap), anchor: Anchor::Middle };
                    let y = top + count(stand.line) * SIZE * 1.25 + rise(SIZE);
                    parts.push(text(set, stand.centre, y, content));
                    end = end.max(y + drop(SIZE));
                }
            }
            if gap.mark == Mark::CannotTell {
                parts.extend(gap.mark.sign((from + to) / 2.0, signs_top + SIDE / 2.0 + 2.0));
                end = end.max(signs_top + SIDE + 4.0);
            }
            let told = told(gap, row.tips.get(index), row.tips.get(index + 1));
            nodes.push(group(Role::Part, Some(gap.id.clone()), Some(told), parts));
        }
        end
    }

    /// Arrows over the tips to move; gives where they end below.
    fn moves(&self, row: &Row<'_>, top: f64, nodes: &mut Vec<Node>) -> f64 {
        let found: Vec<(&MoveShown, f64)> = self
            .moves
            .iter()
            .filter_map(|moved| {
                let index = row.tips.iter().position(|tip| tip.number == moved.number)?;
                row.xs.get(index).map(|x| (moved, *x))
            })
            .collect();
        if found.is_empty() {
            return top;
        }
        // As long as there is room to the neighbour, within what still looks like an arrow: our own choice.
        let pitch =
            row.xs.windows(2).filter_map(|pair| Some(pair.get(1)? - pair.first()?)).fold(WIDTH, f64::min);
        let length = (pitch * 0.42).clamp(14.0, 34.0);
        let wished: Vec<Wish> = found
            .iter()
            .map(|(moved, x)| Wish {
                centre: x + sense(moved.toward) * length / 2.0,
                width: text_width(&moved.label, SIZE, Weight::Bold),
                rank: Rank::First,
            })
            .collect();
        let stands = by_rank(&wished, AIR, 2, EDGE, WIDTH - EDGE);
        let lines = lines_of(&stands);
        let arrow = top + lines * SIZE * 1.25 + 8.0;
        for ((moved, x), stand) in found.iter().zip(&stands) {
            if let Some(stand) = stand {
                let set =
                    Type { role: Role::TextAct, size: SIZE, weight: Weight::Bold, anchor: Anchor::Middle };
                let y = top + (lines - 1.0 - count(stand.line)) * SIZE * 1.25 + rise(SIZE);
                nodes.push(text(set, stand.centre, y, &moved.label));
            }
            let end = x + sense(moved.toward) * length;
            nodes.push(line(Role::MarkActLine, (*x, arrow), (end - sense(moved.toward) * 7.0, arrow)));
            nodes.push(line(Role::MarkActLine, (*x, arrow - 6.0), (*x, arrow + 6.0)));
            nodes.push(point(end, arrow, sense(moved.toward)));
        }
        arrow + 10.0
    }

    /// The description, and after it each marked gap.
    fn told(&self) -> String {
        let marked: Vec<String> = self
            .gaps
            .iter()
            .enumerate()
            .filter(|(_, gap)| gap.mark != Mark::Quiet)
            .map(|(index, gap)| told(gap, self.tips.get(index), self.tips.get(index + 1)))
            .collect();
        clean(&[self.description.clone(), marked.join("; ")].join(" "))
    }
}

/// Numbers, length and how far off: `3–4: 23 in, +3 in`.
fn told(gap: &GapShown, from: Option<&TipOnTape>, to: Option<&TipOnTape>) -> String {
    let numbers: Vec<String> = from.into_iter().chain(to).map(|tip| tip.number.to_string()).collect();
    let off = if gap.mark == Mark::Quiet { "" } else { gap.off.as_str() };
    let said: Vec<String> =
        [gap.length.as_str(), off].into_iter().map(clean).filter(|text| !text.is_empty()).collect();
    format!("{}: {}", numbers.join("–"), said.join(", "))
}

/// The line of one gap: thin when quiet; heavy with heads outwards when too wide, inwards when too narrow.
fn dimension(mark: Mark, from: f64, to: f64, y: f64) -> Vec<Node> {
    // Clear of the neighbours' lines.
    let (left, right) = (from + 3.0, to - 3.0);
    if right - left < 4.0 {
        return Vec::new();
    }
    match mark {
        Mark::Quiet => vec![line(Role::Tick, (left, y), (right, y))],
        Mark::CannotTell => vec![line(Role::ValueLine, (left, y), (right, y))],
        Mark::High => vec![
            line(Role::MarkActLine, (left + 6.0, y), (right - 6.0, y)),
            point(left, y, -1.0),
            point(right, y, 1.0),
        ],
        Mark::Low => {
            let reach = ((right - left) / 2.0 - 1.0).min(16.0);
            let (one, other) = (left + reach, right - reach);
            vec![
                line(Role::MarkActLine, (left, y), (one - 6.0, y)),
                line(Role::MarkActLine, (other + 6.0, y), (right, y)),
                point(one, y, 1.0),
                point(other, y, -1.0),
            ]
        }
    }
}

fn point(x: f64, y: f64, sense: f64) -> Node {
    closed(Role::MarkAct, &[(x, y), (x - sense * 10.0, y - 5.5), (x - sense * 10.0, y + 5.5)])
}

fn sense(toward: Toward) -> f64 {
    match toward {
        Toward::Left => -1.0,
        Toward::Right => 1.0,
    }
}

fn lines_of(stands: &[Option<Stand>]) -> f64 {
    count(stands.iter().flatten().map(|stand| stand.line + 1).max().unwrap_or(0))
}
