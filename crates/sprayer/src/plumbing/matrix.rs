//! A sparse symmetric positive definite system, solved by elimination in an order that keeps it sparse.
//!
//! A boom is a tree or nearly one: with the nodes of fewest neighbours first hardly anything fills in, and a solution takes
//! some operations for each node. The order and the pattern are found once for a network, and every step of Newton uses them.
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
    /// For each place in the order, the places behind it that its row reaches.
    rows: Vec<Vec<usize>>,
    /// Where the entry of two places is kept.
    at: BTreeMap<(usize, usize), usize>,
    place: Vec<usize>,
}

impl Pattern {
    /// The pattern of so many nodes joined by these pairs.
    pub fn of(nodes: usize, joined: impl Iterator<Item = (usize, usize)>) -> Self {
        let mut neighbours: Vec<BTreeSet<usize>> = vec![BTreeSet::new(); nodes];
        for (one, other) in joined.filter(|(one, other)| one != other) {
            neighbours[one].insert(other);
            neighbours[other].insert(one);
        }
        let mut waiting: BTreeSet<(usize, usize)> =
            neighbours.iter().enumerate().map(|(node, near)| (near.len(), node)).collect();
        let mut order = Vec::with_capacity(nodes);
        let mut reached = Vec::with_capacity(nodes);
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
            reached.push(near);
        }
        let mut place = vec![0; nodes];
        for (at, node) in order.iter().enumerate() {
            place[*node] = at;
        }
        let rows: Vec<Vec<usize>> = reached
            .iter()
            .map(|near| {
                let mut row: Vec<usize> = near.iter().map(|node| place[*node]).collect();
                row.sort_unstable();
                row
            })
            .collect();
        let pairs = rows.iter().enumerate().flat_map(|(at, row)| row.iter().map(move |other| (at, *other)));
        let at = pairs.enumerate().map(|(index, pair)| (pair, index)).collect();
        Self { order, rows, at, place }
    }

    /// An empty system of this pattern.
    pub fn system(&self) -> System<'_> {
        System {
            pattern: self,
            over: vec![0.0; self.order.len()],
            links: vec![0.0; self.at.len()],
            pivots: Vec::new(),
        }
    }
}

/// The numbers of a system.
#[derive(Clone, Debug)]
pub struct System<'a> {
    pattern: &'a Pattern,
    /// What the diagonal of each place has over its links.
    over: Vec<f64>,
    /// The links, each nothing or more; after factoring, as shares of the pivot.
    links: Vec<f64>,
    pivots: Vec<f64>,
}

impl System<'_> {
    /// Adds to the diagonal of a node.
    pub fn add(&mut self, node: usize, value: f64) {
        self.over[self.pattern.place[node]] += value;
    }

    /// Adds a link: to both diagonals, and less between them.
    pub fn add_link(&mut self, one: usize, other: usize, value: f64) {
        let (one, other) = (self.pattern.place[one], self.pattern.place[other]);
        if let Some(index) = self.pattern.at.get(&(one.min(other), one.max(other))) {
            self.links[*index] += value;
        }
    }

    /// Eliminates, so that any right-hand side can be solved.
    pub fn factored(mut self) -> Self {
        let pattern = self.pattern;
        let mut index = 0;
        self.pivots.reserve(pattern.rows.len());
        for (at, row) in pattern.rows.iter().enumerate() {
            let first = index;
            index += row.len();
            let pivot = self.over[at] + self.links[first..index].iter().sum::<f64>();
            self.pivots.push(pivot);
            for (i, one) in row.iter().enumerate() {
                let share = self.links[first + i] / pivot;
                self.over[*one] += share * self.over[at];
                for (j, other) in row.iter().enumerate().skip(i + 1) {
                    if let Some(filled) = pattern.at.get(&(*one, *other)) {
                        self.links[*filled] += share * self.links[first + j];
                    }
                }
            }
            for link in &mut self.links[first..index] {
                *link /= pivot;
            }
        }
        self
    }

    /// Solves for a right-hand side, by node; the system must be factored.
    pub fn solve(&self, right: &[f64]) -> Vec<f64> {
        let pattern = self.pattern;
        let mut x: Vec<f64> = pattern.order.iter().map(|node| right[*node]).collect();
        let mut index = 0;
        for (at, row) in pattern.rows.iter().enumerate() {
            for (i, other) in row.iter().enumerate() {
                x[*other] += self.links[index + i] * x[at];
            }
            index += row.len();
        }
        for (at, row) in pattern.rows.iter().enumerate().rev() {
            index -= row.len();
            let mut value = x[at] / self.pivots[at];
            for (i, other) in row.iter().enumerate() {
                value += self.links[index + i] * x[*other];
            }
            x[at] = value;
        }
        let mut by_node = vec![0.0; x.len()];
        for (node, at) in pattern.order.iter().zip(x) {
            by_node[*node] = at;
        }
        by_node
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
            let pattern = Pattern::of(12, links.iter().map(|(one, other, _)| (*one, *other)));
            let mut system = pattern.system();
            let mut full = vec![vec![0.0; 12]; 12];
            for (node, row) in full.iter_mut().enumerate() {
                system.add(node, 0.5);
                row[node] += 0.5;
            }
            for (one, other, value) in links.into_iter().filter(|(one, other, _)| one != other) {
                system.add_link(one, other, value);
                full[one][one] += value;
                full[other][other] += value;
                full[one][other] -= value;
                full[other][one] -= value;
            }
            let x = system.factored().solve(&right);
            for (row, wanted) in full.iter().zip(&right) {
                let got: f64 = row.iter().zip(&x).map(|(a, x)| a * x).sum();
                prop_assert!((got - wanted).abs() < 1e-9, "{got} {wanted}");
            }
        }
    }
}
