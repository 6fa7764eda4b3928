//! A sparse symmetric positive definite system, solved by elimination in an order that keeps it sparse.
//!
//! A boom is a tree or nearly one. A tree is eliminated from its tips to its root, and nothing fills in; where hoses close a
//! ring, the nodes of fewest neighbours go first. Order and pattern are found once for a network, and every step of Newton
//! uses them.
//!
//! A wide hose lets through a million times what a tip does. Subtracting the one from the other would lose the tip, so nothing
//! is subtracted: beside its links each node keeps what it has over them, and both only ever grow.
//!
//! *Source*: Grassmann, Taksar and Heyman (1985), for Markov chains; the same holds for every diagonally dominant M-matrix.

use std::collections::{BTreeMap, BTreeSet};

/// Order and pattern of an elimination.
#[derive(Clone, Debug)]
pub struct Pattern {
    /// The nodes in the order they are eliminated.
    order: Vec<usize>,
    /// The place of each node in that order.
    place: Vec<usize>,
    /// Where the row of each place begins in `reached`, and at the end how long that is.
    begins: Vec<usize>,
    /// For each place in the order, the places behind it that its row reaches; each is an entry of the system.
    reached: Vec<usize>,
    /// For each row every pair of the places that it reaches: the entry of the two, in the order they are met.
    fills: Vec<usize>,
    /// The entry of each pair that was given; `None` for a node joined to itself.
    entries: Vec<Option<usize>>,
}

impl Pattern {
    /// The pattern of so many nodes joined by these pairs.
    pub fn of(nodes: usize, joined: &[(usize, usize)]) -> Self {
        Self::of_tree(nodes, joined).unwrap_or_else(|| Self::of_any(nodes, joined))
    }

    /// The pattern of a tree whose pairs hang one node after the other on an earlier one.
    fn of_tree(nodes: usize, joined: &[(usize, usize)]) -> Option<Self> {
        let hangs = joined.iter().enumerate().all(|(place, (from, to))| *to == place + 1 && from < to);
        if !hangs || joined.len() + 1 != nodes {
            return None;
        }
        // The last node goes first; the root, which reaches nothing, last.
        let last = nodes - 1;
        Some(Self {
            order: (0..nodes).rev().collect(),
            place: (0..nodes).rev().collect(),
            begins: (0..nodes).chain([last]).collect(),
            reached: joined.iter().rev().map(|(from, _)| last - from).collect(),
            fills: Vec::new(),
            entries: (0..last).rev().map(Some).collect(),
        })
    }

    fn of_any(nodes: usize, joined: &[(usize, usize)]) -> Self {
        let mut neighbours: Vec<BTreeSet<usize>> = vec![BTreeSet::new(); nodes];
        for (one, other) in joined.iter().filter(|(one, other)| one != other) {
            neighbours[*one].insert(*other);
            neighbours[*other].insert(*one);
        }
        let mut waiting: BTreeSet<(usize, usize)> =
            neighbours.iter().enumerate().map(|(node, near)| (near.len(), node)).collect();
        let mut order = Vec::with_capacity(nodes);
        let mut near_by_place = Vec::with_capacity(nodes);
        while let Some((_, node)) = waiting.pop_first() {
            let near = core::mem::take(&mut neighbours[node]);
            for one in &near {
                waiting.remove(&(neighbours[*one].len(), *one));
                neighbours[*one].remove(&node);
                // Those that were joined through it are joined now.
                neighbours[*one].extend(near.iter().filter(|other| *other != one));
            }
            for one in &near {
                waiting.insert((neighbours[*one].len(), *one));
            }
            order.push(node);
            near_by_place.push(near);
        }
        let mut place = vec![0; nodes];
        for (at, node) in order.iter().enumerate() {
            place[*node] = at;
        }
        let (mut begins, mut reached, mut at_pair) = (vec![0], Vec::new(), BTreeMap::new());
        for (at, near) in near_by_place.iter().enumerate() {
            let mut row: Vec<usize> = near.iter().map(|node| place[*node]).collect();
            row.sort_unstable();
            for other in row {
                at_pair.insert((at, other), reached.len());
                reached.push(other);
            }
            begins.push(reached.len());
        }
        let entry = |one: usize, other: usize| at_pair.get(&(one.min(other), one.max(other))).copied();
        let mut fills = Vec::new();
        for row in begins.windows(2).map(|ends| &reached[ends[0]..ends[1]]) {
            for (i, one) in row.iter().enumerate() {
                // Both were joined when their node was eliminated, so each pair has its entry.
                fills.extend(row[i + 1..].iter().filter_map(|other| entry(*one, *other)));
            }
        }
        let entries = joined.iter().map(|(one, other)| entry(place[*one], place[*other])).collect();
        Self { order, place, begins, reached, fills, entries }
    }

    /// An empty system of this pattern.
    pub fn system(&self) -> System {
        System {
            over: vec![0.0; self.order.len()],
            links: vec![0.0; self.reached.len()],
            parts: vec![0.0; self.order.len()],
        }
    }
}

/// The numbers of a system; the pattern it was made of goes with every call.
#[derive(Clone, Debug)]
pub struct System {
    /// What the diagonal of each place has over its links.
    over: Vec<f64>,
    /// The links, each nothing or more; after factoring, as shares of the pivot.
    links: Vec<f64>,
    /// One part in each pivot.
    parts: Vec<f64>,
}

impl System {
    /// Takes all numbers out, for the next step.
    pub fn clear(&mut self) {
        self.over.fill(0.0);
        self.links.fill(0.0);
    }

    /// Adds to the diagonal of a node.
    pub fn add(&mut self, pattern: &Pattern, node: usize, value: f64) {
        self.over[pattern.place[node]] += value;
    }

    /// Adds a link, by the number of its pair: to both diagonals, and less between them.
    pub fn add_link(&mut self, pattern: &Pattern, pair: usize, value: f64) {
        if let Some(entry) = pattern.entries[pair] {
            self.links[entry] += value;
        }
    }

    /// Eliminates, so that any right-hand side can be solved.
    pub fn factor(&mut self, pattern: &Pattern) {
        let mut fill = 0;
        for at in 0..pattern.order.len() {
            let (first, end) = (pattern.begins[at], pattern.begins[at + 1]);
            let pivot = self.over[at] + self.links[first..end].iter().sum::<f64>();
            let part = 1.0 / pivot;
            self.parts[at] = part;
            for i in first..end {
                let share = self.links[i] * part;
                self.over[pattern.reached[i]] += share * self.over[at];
                for j in i + 1..end {
                    self.links[pattern.fills[fill]] += share * self.links[j];
                    fill += 1;
                }
            }
            for link in &mut self.links[first..end] {
                *link *= part;
            }
        }
    }

    /// Solves for a right-hand side, by node; the system must be factored.
    pub fn solve(&self, pattern: &Pattern, right: &[f64]) -> Vec<f64> {
        let mut x: Vec<f64> = pattern.order.iter().map(|node| right[*node]).collect();
        for at in 0..x.len() {
            for i in pattern.begins[at]..pattern.begins[at + 1] {
                x[pattern.reached[i]] += self.links[i] * x[at];
            }
        }
        for at in (0..x.len()).rev() {
            let mut value = x[at] * self.parts[at];
            for i in pattern.begins[at]..pattern.begins[at + 1] {
                value += self.links[i] * x[pattern.reached[i]];
            }
            x[at] = value;
        }
        pattern.place.iter().map(|place| x[*place]).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// Put back into the equations the solution gives the right-hand side.
        #[test]
        fn solutions_solve(links in prop::collection::vec((0_usize..12, 0_usize..12, 0.01_f64..100.0), 1..40),
                           right in prop::collection::vec(-10.0_f64..10.0, 12)) {
            check(&links, &right)?;
        }

        /// So for trees, which have an order of their own.
        #[test]
        fn solutions_of_trees_solve(links in prop::collection::vec((0_usize..12, 0.01_f64..100.0), 11),
                                    right in prop::collection::vec(-10.0_f64..10.0, 12)) {
            let links: Vec<_> =
                links.iter().enumerate().map(|(at, (from, value))| (from % (at + 1), at + 1, *value)).collect();
            let pairs: Vec<_> = links.iter().map(|(one, other, _)| (*one, *other)).collect();
            prop_assert!(Pattern::of_tree(12, &pairs).is_some());
            check(&links, &right)?;
        }
    }

    fn check(links: &[(usize, usize, f64)], right: &[f64]) -> Result<(), TestCaseError> {
        let pairs: Vec<_> = links.iter().map(|(one, other, _)| (*one, *other)).collect();
        let pattern = Pattern::of(12, &pairs);
        let mut system = pattern.system();
        let mut full = vec![vec![0.0; 12]; 12];
        for (node, row) in full.iter_mut().enumerate() {
            system.add(&pattern, node, 0.5);
            row[node] += 0.5;
        }
        for (pair, (one, other, value)) in
            links.iter().enumerate().filter(|(_, (one, other, _))| one != other)
        {
            system.add_link(&pattern, pair, *value);
            full[*one][*one] += value;
            full[*other][*other] += value;
            full[*one][*other] -= value;
            full[*other][*one] -= value;
        }
        system.factor(&pattern);
        let x = system.solve(&pattern, right);
        for (row, wanted) in full.iter().zip(right) {
            let got: f64 = row.iter().zip(&x).map(|(a, x)| a * x).sum();
            prop_assert!((got - wanted).abs() < 1e-9, "{got} {wanted}");
        }
        Ok(())
    }
}
