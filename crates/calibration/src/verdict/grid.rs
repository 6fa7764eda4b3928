//! The flows that are tried for a tip, relative to the boom's middle one.

/// An even grid of flows.
#[derive(Clone, Debug)]
pub(super) struct FlowGrid {
    middle: f64,
    step: f64,
    nodes: usize,
}

/// The largest flow tried, relative to the middle one: a fault of +60 % on a boom whose spread is 12 %.
const LARGEST: f64 = 2.2;
/// How far beyond the largest reading the grid goes: its marks and timing leave it open by less. Our own choice.
const BEYOND: f64 = 1.3;
/// The farthest it goes, relative to the middle flow; what reads higher is taken to lie at its end. Our own choice.
const FARTHEST: f64 = 6.0;
/// The coarsest step: no coarser than the smallest spread that is tried (0.3 %), where sums over an even grid
/// still integrate a normal law to nine digits. Source: the Euler–Maclaurin (Poisson) sum of a Gaussian.
const COARSEST: f64 = 0.003;
/// The finest step, for cups on a good scale timed by a machine. Our own choice.
const FINEST: f64 = 0.0004;

impl FlowGrid {
    /// A grid about the middle flow of the boom (SI), fine enough for cups as sharp as `sharpness` (a share).
    /// It reaches beyond the largest flow that was read, within reason, so that no cup falls off its end.
    pub fn about(middle: f64, sharpness: f64, largest_read: f64) -> Self {
        let step = (sharpness / 2.0).clamp(FINEST, COARSEST);
        // The number of nodes is small: at most 15,000, and then only beside a reading of six times the middle.
        let reach = (largest_read / middle * BEYOND).clamp(LARGEST, FARTHEST);
        let nodes = (reach / step).ceil();
        Self { middle, step, nodes: whole(nodes) }
    }

    /// How many nodes there are.
    pub fn nodes(&self) -> usize {
        self.nodes
    }

    /// The distance between nodes, relative to the middle flow.
    pub fn step(&self) -> f64 {
        self.step
    }

    /// The relative flow at a node; the first is half a step above nothing.
    pub fn relative(&self, node: usize) -> f64 {
        (node as f64 + 0.5) * self.step
    }

    /// The flow at a node (SI).
    pub fn flow(&self, node: usize) -> f64 {
        self.relative(node) * self.middle
    }

    /// The node at or below a flow (SI); the first where there is none.
    pub fn node_below(&self, flow: f64) -> usize {
        self.relative_node(flow / self.middle)
    }

    /// The node at or below a relative flow.
    pub fn relative_node(&self, relative: f64) -> usize {
        whole((relative / self.step - 0.5).floor()).min(self.nodes - 1)
    }
}

/// A whole number of at least nothing as a count.
pub(super) fn whole(number: f64) -> usize {
    // Rust's cast saturates: below nothing gives nothing, not a number gives nothing.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let count = number as usize;
    count
}
