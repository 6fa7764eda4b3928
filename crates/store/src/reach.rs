//! How far ahead a line from elsewhere may stand. The next line of every device stands behind all that were seen, so one
//! that claims a place far away would push all later ones there, in the end beyond what numbers can say.

use notebook::{Line, Standing};

use crate::StoreError;

/// The highest number and order of a line that is kept: the last that a browser's numbers tell from the next.
///
/// *Source*: ECMA-262, `Number.MAX_SAFE_INTEGER`: 2^53 - 1. A line a millisecond comes there in 285,000 years.
pub const HIGHEST: u64 = (1 << 53) - 1;

/// So far above the highest order known a line may stand, and no further. An order counts lines, so that an honest line
/// stands no further ahead than lines were lost in between. Our own choice: 2^32, more lines than any notebook has; a
/// liar needs two million lines to come from there to [`HIGHEST`].
pub const FARTHEST: u64 = 1 << 32;

/// What stands within reach of the lines that are known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Reach {
    highest: u64,
    farthest: u64,
}

impl Reach {
    /// Within reach of the highest order that is known, nought where there is no line yet.
    pub(crate) const fn of(highest: u64) -> Self {
        Self { highest, farthest: FARTHEST }
    }

    /// Anything that can be kept at all: for lines that were kept here before.
    #[cfg(not(target_arch = "wasm32"))]
    pub(crate) const fn anywhere() -> Self {
        Self { highest: 0, farthest: HIGHEST }
    }

    /// Whether a whole line of this notebook stands within reach. Those that it takes count from then on, so lines that come
    /// together are shown to it [`in_turn`].
    pub(crate) fn takes(&mut self, line: &Line) -> bool {
        let within = 1..=self.highest.saturating_add(self.farthest).min(HIGHEST);
        let takes = within.contains(&line.order()) && within.contains(&line.number());
        if takes {
            self.highest = self.highest.max(line.order());
        }
        takes
    }
}

/// Lines in the turn of their order, so that what becomes of them does not go by how they were sent.
pub(crate) fn in_turn(mut lines: Vec<Line>) -> Vec<Line> {
    lines.sort_by_key(Line::order);
    lines
}

/// Refuses a place that cannot be kept. Nobody comes there by writing.
pub(crate) fn can_be_kept(standing: &Standing) -> Result<(), StoreError> {
    if standing.number <= HIGHEST && standing.order <= HIGHEST {
        return Ok(());
    }
    Err(StoreError::Damaged { what: "a line stands so far ahead that none can follow it".to_string() })
}
