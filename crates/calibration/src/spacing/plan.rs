//! The fewest tips to move, found exactly by going over which tips stay.
//!
//! Two tips that stay one after the other must be so far apart that the tips between them can be spread evenly with
//! every gap within the limit. Of all sets of tips that fit so, the largest leaves the fewest to move; of those the
//! one with the least total distance is taken, then the one that keeps the middle of the boom.

use units::Boundary;

/// Where every tip goes, which of them stay, and the gaps that no moving can mend.
pub(super) struct Plan {
    /// The place of every tip afterwards, in metres.
    pub(super) places: Vec<f64>,
    /// The gaps left outside, counted from nothing, each with the fixed tips either side of it.
    pub(super) unmended: Vec<(usize, usize, usize)>,
}

/// What the plan is made for, in metres.
pub(super) struct Boom<'a> {
    pub(super) marks: &'a [f64],
    pub(super) spacing: f64,
    pub(super) share: f64,
    pub(super) boundary: Boundary,
    /// The tips that cannot move, counted from nothing, in order.
    pub(super) fixed: &'a [usize],
}

/// What a plan costs; compared from the top down.
#[derive(Clone, Copy, PartialEq, PartialOrd)]
struct Cost {
    unmended: u32,
    moved: u32,
    /// Whole nanometres, so that two ways round the same boom come out equal to the last digit.
    distance_nm: f64,
    /// How near the middle the moved tips are: the ends of a boom are easier to get at.
    near_middle: f64,
}

/// How a tip that stays is joined to the one before it that stays.
#[derive(Clone, Copy)]
enum Link {
    /// Nothing before it stays.
    First,
    /// The tips from that one on are spread evenly.
    Even { from: usize },
    /// From that one and from this one tips stand one spacing apart; the gap that is left over stays wrong.
    Broken { from: usize, gap: usize },
}

impl Boom<'_> {
    /// Returns the plan.
    pub(super) fn plan(&self) -> Plan {
        let count = self.marks.len();
        let mut best: Vec<Option<(Cost, Link)>> = vec![None; count];
        for tip in 0..count {
            let mut chosen = None;
            if !self.fixed_within(0, tip) {
                offer(&mut chosen, self.moved_cost(0, tip, |at| self.before(tip, at)), Link::First);
            }
            for from in (0..tip).rev() {
                if self.fixed_within(from + 1, tip) {
                    break;
                }
                if let Some((so_far, _)) = best[from] {
                    self.offer_link(&mut chosen, so_far, from, tip);
                }
            }
            best[tip] = chosen;
        }
        let mut last: Option<(Cost, usize)> = None;
        for (tip, entry) in best.iter().enumerate() {
            if let Some((so_far, _)) = entry
                && !self.fixed_within(tip + 1, count)
            {
                let cost = so_far.and(self.moved_cost(tip + 1, count, |at| self.after(tip, at)));
                if last.is_none_or(|(least, _)| cost < least) {
                    last = Some((cost, tip));
                }
            }
        }
        self.lay_out(&best, last.map_or(0, |(_, tip)| tip))
    }

    /// Whether the tips between may be spread evenly with every gap within.
    fn even(&self, from: usize, to: usize) -> bool {
        let gaps = gaps_between(from, to);
        let off = self.marks[to] - self.marks[from] - gaps * self.spacing;
        let allowed = gaps * self.share * self.spacing;
        self.boundary.holds(off, -allowed, allowed)
    }

    fn offer_link(&self, chosen: &mut Option<(Cost, Link)>, so_far: Cost, from: usize, to: usize) {
        let least_moved = so_far.moved.saturating_add(count(to - from - 1));
        let even = self.even(from, to);
        let least_unmended = if even { so_far.unmended } else { so_far.unmended + 1 };
        // Distances are summed only where the counts do not settle it already.
        if chosen.is_some_and(|(cost, _)| (cost.unmended, cost.moved) < (least_unmended, least_moved)) {
            return;
        }
        if even {
            let cost = self.moved_cost(from + 1, to, |at| self.spread(from, to, at));
            offer(chosen, so_far.and(cost), Link::Even { from });
        } else if self.between_irreconcilable(from, to)
            && self.marks[to] - self.marks[from] > (gaps_between(from, to) - 1.0) * self.spacing
        {
            let (gap, cost) = self.best_break(from, to);
            offer(chosen, so_far.and(cost), Link::Broken { from, gap });
        }
    }

    /// The gap to give up between two tips that stay, so that the tips between move the least.
    fn best_break(&self, from: usize, to: usize) -> (usize, Cost) {
        // Begin with the leftmost gap wrong: every tip between goes with the right-hand one. Then tip after tip
        // goes over to the left-hand one.
        let mut cost = self.moved_cost(from + 1, to, |at| self.before(to, at));
        let mut least = (from, cost);
        for gap in from + 1..to {
            cost.distance_nm +=
                self.distance(gap, self.after(from, gap)) - self.distance(gap, self.before(to, gap));
            if cost < least.1 {
                least = (gap, cost);
            }
        }
        least.1.unmended += 1;
        least
    }

    /// How far a tip is from a place, in whole nanometres.
    fn distance(&self, tip: usize, place: f64) -> f64 {
        ((place - self.marks[tip]).abs() * NANOMETRES).round()
    }

    /// The fixed tips next to one another either side of both, if these cannot be brought in line.
    fn irreconcilable_around(&self, from: usize, to: usize) -> Option<(usize, usize)> {
        let left = self.fixed.iter().rev().find(|tip| **tip <= from)?;
        let right = self.fixed.iter().find(|tip| **tip >= to)?;
        (!self.even(*left, *right)).then_some((*left, *right))
    }

    fn between_irreconcilable(&self, from: usize, to: usize) -> bool {
        self.irreconcilable_around(from, to).is_some()
    }

    fn fixed_within(&self, from: usize, to: usize) -> bool {
        let first = self.fixed.partition_point(|tip| *tip < from);
        self.fixed.get(first).is_some_and(|tip| *tip < to)
    }

    /// One spacing after another to the right of `tip`.
    fn after(&self, tip: usize, at: usize) -> f64 {
        self.marks[tip] + gaps_between(tip, at) * self.spacing
    }

    /// One spacing after another to the left of `tip`.
    fn before(&self, tip: usize, at: usize) -> f64 {
        self.marks[tip] - gaps_between(at, tip) * self.spacing
    }

    fn spread(&self, from: usize, to: usize, at: usize) -> f64 {
        let stretch = self.marks[to] - self.marks[from];
        self.marks[from] + stretch * (gaps_between(from, at) / gaps_between(from, to))
    }

    /// What it costs to move the tips of `from..to` to their places.
    fn moved_cost(&self, from: usize, to: usize, place: impl Fn(usize) -> f64) -> Cost {
        let mut cost = Cost { unmended: 0, moved: 0, distance_nm: 0.0, near_middle: 0.0 };
        let ends = gaps_between(0, self.marks.len() - 1);
        for tip in from..to {
            cost.moved += 1;
            cost.distance_nm += self.distance(tip, place(tip));
            cost.near_middle += ends - (2.0 * gaps_between(0, tip) - ends).abs();
        }
        cost
    }

    fn lay_out(&self, best: &[Option<(Cost, Link)>], last: usize) -> Plan {
        let mut places = self.marks.to_vec();
        let mut unmended = Vec::new();
        for (at, place) in places.iter_mut().enumerate().skip(last + 1) {
            *place = self.after(last, at);
        }
        let mut to = last;
        // Each step goes to a tip further left, so it ends.
        while let Some((_, link)) = best[to] {
            match link {
                Link::First => {
                    for (at, place) in places.iter_mut().enumerate().take(to) {
                        *place = self.before(to, at);
                    }
                    break;
                }
                Link::Even { from } => {
                    for (at, place) in places.iter_mut().enumerate().take(to).skip(from + 1) {
                        *place = self.spread(from, to, at);
                    }
                    to = from;
                }
                Link::Broken { from, gap } => {
                    for (at, place) in places.iter_mut().enumerate().take(to).skip(from + 1) {
                        *place = if at <= gap { self.after(from, at) } else { self.before(to, at) };
                    }
                    let (left, right) = self.irreconcilable_around(from, to).unwrap_or((from, to));
                    unmended.push((gap, left, right));
                    to = from;
                }
            }
        }
        unmended.reverse();
        Plan { places, unmended }
    }
}

impl Cost {
    fn and(self, other: Self) -> Self {
        Self {
            unmended: self.unmended + other.unmended,
            moved: self.moved + other.moved,
            distance_nm: self.distance_nm + other.distance_nm,
            near_middle: self.near_middle + other.near_middle,
        }
    }
}

/// Nanometres in a metre, by definition.
const NANOMETRES: f64 = 1e9;

fn offer(chosen: &mut Option<(Cost, Link)>, cost: Cost, link: Link) {
    if chosen.is_none_or(|(least, _)| cost < least) {
        *chosen = Some((cost, link));
    }
}

fn count(tips: usize) -> u32 {
    u32::try_from(tips).unwrap_or(u32::MAX)
}

fn gaps_between(from: usize, to: usize) -> f64 {
    f64::from(count(to - from))
}
