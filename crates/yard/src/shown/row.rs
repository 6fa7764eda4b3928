//! The row of cups for a narrow screen: each tip a cell of its own, as many beside one another as there is room for.

use report::make::{shown_reading, tip_state};
use units::Quantity;

use crate::state::State;

/// A tip and its cup.
#[derive(Clone, Debug, PartialEq)]
pub struct CupCell {
    /// The tip.
    pub number: u32,
    /// What was read, as people read it; empty where nothing was.
    pub reading: String,
    /// How full it is drawn, 0 to 1; none where nothing was caught.
    pub level: Option<f64>,
    /// The band of the limit, as two heights 0 to 1; none where there is no limit.
    pub band: Option<(f64, f64)>,
    /// The stable word of how it stands: in_order, high, low, worn, plugged, cannot_tell, not_caught.
    pub state: &'static str,
    /// The same in the reader's words.
    pub word: String,
}

/// At the mean a cup is drawn so full, so that a high one has room. Our own choice.
const AT_THE_MEAN: f64 = 0.65;

/// The cups of the round that counts now; empty before any was caught.
#[must_use]
pub fn cup_cells(state: &State) -> Vec<CupCell> {
    let words = &state.words;
    let Some(catch) = state.visit.as_ref().and_then(|visit| visit.outcome.catch.as_ref()) else {
        return Vec::new();
    };
    let now = catch.now();
    let verdicts = &now.verdicts;
    let limit = &verdicts.limit;
    let mean_of = |group| {
        verdicts.summary.groups.iter().find(|known| known.group == group).and_then(|known| known.mean)
    };
    let edge = |share: f64| (AT_THE_MEAN * share).clamp(0.0, 1.0);
    verdicts
        .summary
        .tips
        .iter()
        .map(|tip| {
            let mean = mean_of(tip.group).map(Quantity::si).filter(|mean| *mean > 0.0);
            let facts = now.round.tips.iter().find(|facts| facts.number == tip.number);
            let is = tip_state(tip, verdicts);
            CupCell {
                number: tip.number,
                reading: facts.map(|facts| shown_reading(words, &now.round, facts, tip)).unwrap_or_default(),
                level: tip.flow.zip(mean).map(|(flow, mean)| edge(flow.si() / mean)),
                band: mean.map(|_| (edge(1.0 - limit.below()), edge(1.0 + limit.above()))),
                state: is,
                word: words.label(&format!("tip_is-{is}")),
            }
        })
        .collect()
}
