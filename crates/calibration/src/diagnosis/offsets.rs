//! The grid everything is summed on: logarithms of flow against what a new tip gives.

/// The step of the grid. Our own choice: half of the sharpest spread in play (1 %), where sums over an even grid
/// still integrate a normal law to three digits (Euler–Maclaurin sum of a Gaussian).
pub(super) const STEP: f64 = 0.005;
/// The lowest flow of a tip that runs, in steps: ln 0.05 = −3.0, below which it is plugged.
pub(super) const LOWEST_FLOW: i32 = -600;
/// The highest flow, in steps: four times a new tip's. Our own choice: more is a slip.
pub(super) const HIGHEST_FLOW: i32 = 278;
/// What is common to the boom reaches so far either way, in steps: 50 %, four standard deviations of the wider law.
pub(super) const BOOM_REACH: i32 = 100;
/// What a section that is not shut loses at most, in steps: e⁻¹, 63 %. Our own choice: seven times the mean loss.
pub(super) const MOST_LOSS: i32 = 200;
/// The lowest base: a boom that is low and a section that loses most.
pub(super) const LOWEST_BASE: i32 = -BOOM_REACH - MOST_LOSS;

/// How many flows there are on the grid.
pub(super) const FLOWS: usize = place(LOWEST_FLOW, HIGHEST_FLOW) + 1;
/// How many bases (boom and section together) there are.
pub(super) const BASES: usize = place(LOWEST_BASE, BOOM_REACH) + 1;

/// How far a node lies above another.
pub(super) const fn place(lowest: i32, node: i32) -> usize {
    if node < lowest { 0 } else { node.abs_diff(lowest) as usize }
}

/// The logarithm at a node.
pub(super) fn at(node: i32) -> f64 {
    f64::from(node) * STEP
}

/// The logarithm of the flow at a place.
pub(super) fn flow_at(place: usize) -> f64 {
    at(LOWEST_FLOW) + place as f64 * STEP
}

/// No logarithm here comes near so many steps; a number beyond them is cut there. Our own choice.
const MOST_STEPS: f64 = 1e6;

/// A logarithm in steps, as the step below it and how far it is beyond that.
pub(super) fn split(logarithm: f64) -> (i32, f64) {
    let steps = (logarithm / STEP).clamp(-MOST_STEPS, MOST_STEPS);
    // The number of steps is small by the clamp.
    #[allow(clippy::cast_possible_truncation)]
    let below = steps.floor() as i32;
    (below, steps - steps.floor())
}
