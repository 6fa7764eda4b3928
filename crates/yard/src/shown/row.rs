//! The row of cups for a narrow screen: each tip a cell of its own, as many beside one another as there is room for, section
//! by section.

use calibration::diagnosis::Diagnosed;
use report::make::{self, shown_reading, tip_state};
use units::{Arg, Args, Quantity};
use visit::findings::CatchOutcome;
use words::Words;

use crate::state::State;

/// The cups of a section.
#[derive(Clone, Debug, PartialEq)]
pub struct CupSection {
    /// What stands over it; empty where the boom has one section.
    pub head: String,
    /// Whether it most likely loses flow.
    pub loses: bool,
    /// Its cups.
    pub cells: Vec<CupCell>,
}

/// A tip and its cup.
#[derive(Clone, Debug, PartialEq)]
pub struct CupCell {
    /// The tip.
    pub number: u32,
    /// What was read last, as people read it; empty where nothing was.
    pub reading: String,
    /// What was read before something was done at the tip; it stays to be seen.
    pub before: Option<String>,
    /// How full it is drawn, 0 to 1; none where nothing was caught.
    pub level: Option<f64>,
    /// The band of the limit, as two heights 0 to 1; none where there is no limit.
    pub band: Option<(f64, f64)>,
    /// The stable word of how it stands: in_order, high, low, worn, plugged, cannot_tell, not_caught.
    pub state: &'static str,
    /// The same in the reader's words.
    pub word: String,
    /// What the tip most likely is; none where it was not caught.
    pub likely: Option<TipLikely>,
}

/// What a tip most likely is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TipLikely {
    /// The stable word: sound, worn, partly_plugged, plugged, other_size, at_place, doubtful_cup.
    pub is: &'static str,
    /// The same in the reader's words.
    pub word: String,
    /// The same with its chance, for whoever hears the page.
    pub heard: String,
}

/// At the mean a cup is drawn so full, so that a high one has room. Our own choice.
const AT_THE_MEAN: f64 = 0.65;

/// The cups of the round that counts now, section by section; empty before any was caught.
#[must_use]
pub fn cup_sections(state: &State) -> Vec<CupSection> {
    let Some(visit) = &state.visit else { return Vec::new() };
    let Some(catch) = &visit.outcome.catch else { return Vec::new() };
    let words = &state.words;
    let diagnosed = visit.diagnosed();
    let cells = cells(words, catch, diagnosed);
    let boom = visit.visit.machine.as_ref().and_then(|machine| machine.boom());
    let positions = boom.map(|boom| boom.positions()).unwrap_or_default();
    let section_of = |cell: &CupCell| {
        let place = usize::try_from(cell.number).ok()?.checked_sub(1)?;
        positions.get(place).map(|position| position.section)
    };
    let several = cells.iter().any(|cell| section_of(cell) != cells.first().and_then(section_of));
    if !several {
        return vec![CupSection { head: String::new(), loses: false, cells }];
    }
    let sections = cells.chunk_by(|one, next| section_of(one) == section_of(next));
    sections.enumerate().map(|(place, cells)| section(words, diagnosed, place, cells)).collect()
}

fn section(words: &Words, diagnosed: Option<&Diagnosed>, place: usize, cells: &[CupCell]) -> CupSection {
    let found = diagnosed.and_then(|diagnosed| diagnosed.found.sections.get(place));
    let loses = found.and_then(|found| make::section_said(words, place, found));
    let number = Args::new().with("section", Arg::Count(u32::try_from(place + 1).unwrap_or(u32::MAX)));
    CupSection {
        loses: loses.is_some(),
        head: loses.unwrap_or_else(|| words.say_with("likely-section", &number)),
        cells: cells.to_vec(),
    }
}

fn cells(words: &Words, catch: &CatchOutcome, diagnosed: Option<&Diagnosed>) -> Vec<CupCell> {
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
            let reading = facts.map(|facts| shown_reading(words, &now.round, facts, tip)).unwrap_or_default();
            let level = tip.flow.zip(mean).map(|(flow, mean)| edge(flow.si() / mean));
            let since = make::since(catch, tip.number);
            let repaired = since.as_ref().is_some_and(|since| since.repaired);
            let mended = since.filter(|_| repaired).map(|since| since.state);
            let is = mended.unwrap_or_else(|| tip_state(tip, verdicts));
            // What the cups of before told of it was told before it was seen to.
            let likely =
                diagnosed.filter(|_| !repaired).and_then(|found| make::tip_likely(found, tip.number));
            CupCell {
                number: tip.number,
                before: since.is_some().then(|| reading.clone()),
                level: since.as_ref().map_or(level, |since| Some(edge(since.level))),
                reading: since.map_or(reading, |since| since.reading(words)),
                band: mean.map(|_| (edge(1.0 - limit.below()), edge(1.0 + limit.above()))),
                state: is,
                word: words.label(&format!("tip_is-{is}")),
                likely: likely.map(|(is, chance)| tip_likely(words, is, chance)),
            }
        })
        .collect()
}

fn tip_likely(words: &Words, is: &'static str, chance: f64) -> TipLikely {
    let word = make::tip_likely_said(words, is);
    // As the sentences have it: whole percent, and never certain.
    let percent = Arg::Percent((100.0 * chance).round().clamp(1.0, 99.0));
    let args = Args::new().with("is", Arg::Text(word.clone())).with("chance", percent);
    TipLikely { is, heard: words.say_with("likely-with_chance", &args), word }
}
