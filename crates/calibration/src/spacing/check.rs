//! From gaps or marks to each gap's error and verdict, and what to move.

use super::MOST_TIPS;
use super::error::SpacingError;
use super::findings;
use super::limit::{GAP_LIMIT, GapLimit};
use super::moves::{Move, Unmendable, moves, number, unmendable};
use super::plan::Boom;
use units::{Amount, Arg, Finding, Kind, Length, Quantity, Ranged, Verdict, Working};

/// What was measured on the boom, from the left as the driver sits.
#[derive(Clone, Debug, PartialEq)]
pub enum Measured {
    /// Each gap by itself.
    Gaps(Vec<Length>),
    /// Each tip's mark on one stretched tape; where the tape begins does not matter.
    Marks(Vec<Length>),
}

/// The readings of one boom's spacing.
#[derive(Clone, Debug, PartialEq)]
pub struct SpacingReadings {
    /// The spacing the boom is meant to have.
    pub intended: Length,
    /// What was measured.
    pub measured: Measured,
    /// The distance between two marks of the tape, where it is known.
    pub step: Option<Length>,
    /// The tips that cannot move, by number.
    pub fixed: Vec<u32>,
    /// How far off a gap may be.
    pub limit: GapLimit,
}

/// One gap.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GapResult {
    /// Its number: gap 1 lies between tips 1 and 2.
    pub number: u32,
    /// Its size as read.
    pub size: Length,
    /// Its size less the intended one, with the interval that the marks of the tape leave open.
    pub error: Ranged<Length>,
    /// The error in percent of the intended spacing.
    pub error_percent: f64,
    /// The verdict: on the interval where the step is known, as read where it is not.
    pub verdict: Verdict,
}

/// What follows from the readings.
#[derive(Clone, Debug, PartialEq)]
pub struct Spacing {
    /// The spacing the boom is meant to have.
    pub intended: Length,
    /// How far off a gap may be.
    pub limit: GapLimit,
    /// Every gap from the left.
    pub gaps: Vec<GapResult>,
    /// Outside if a gap is; otherwise open if a gap is; otherwise within.
    pub verdict: Verdict,
    /// The fewest tips to move, from the left.
    pub moves: Vec<Move>,
    /// Moves under a quarter inch that the letter of the limit would ask for besides; not worth making.
    pub too_small: Vec<Move>,
    /// Gaps that moving cannot mend.
    pub unmendable: Vec<Unmendable>,
    /// Where every tip stands after all moves, also those too small, as marks on the same tape.
    pub places: Vec<Length>,
    /// What is worth telling.
    pub findings: Vec<Finding>,
    /// How the errors were reached.
    pub working: Working,
}

impl SpacingReadings {
    /// Readings with the usual limit of 5 %, no known step and every tip free to move.
    #[must_use]
    pub fn new(intended: Length, measured: Measured) -> Self {
        Self { intended, measured, step: None, fixed: Vec::new(), limit: GAP_LIMIT }
    }
}

/// Returns each gap's error and verdict, and the fewest tips to move so that every gap is within the limit.
///
/// *Units*: lengths; percent of the intended spacing.
///
/// *Assumptions*: a mark is off by half a step of the tape at most, so a gap between two marks by a whole step and a
/// gap read by itself by half a step. Tips between two that stay are spread evenly; tips beyond the ends stand one
/// spacing apart; a move under a quarter inch is not made. Where two ways are equally good, the ends of the boom move
/// rather than its middle, and then the right-hand tips. At most 1000 tips.
///
/// *Errors*: [`SpacingError`]: no length, fewer than two or too many tips, marks out of order, a fixed tip there is not.
///
/// *Source*: the limit: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 8.3.1.2. A quarter inch:
/// common practice. The search for the fewest moves is our own and exact.
///
/// *Example*: marks at 0, 20, 41.5 and 60 in for 20 in: gap 2 is 1.5 in (7.5 %) too wide, gap 3 as much too narrow;
/// moving tip 3 by 1.5 in to the left mends both.
pub fn check_spacing(readings: &SpacingReadings) -> Result<Spacing, SpacingError> {
    let SpacingReadings { intended, measured, step, fixed, limit } = readings;
    if !intended.is_positive() {
        return Err(SpacingError::Intended { given: *intended });
    }
    if let Some(step) = step
        && !step.is_positive()
    {
        return Err(SpacingError::Step { given: *step });
    }
    let marks = marks(measured)?;
    let fixed = fixed_places(fixed, marks.len())?;
    let gaps = gap_results(readings, &marks);
    let boom = Boom {
        marks: &marks,
        spacing: intended.si(),
        share: limit.share(),
        boundary: limit.boundary(),
        fixed: &fixed,
    };
    let plan = boom.plan();
    let (moves, too_small) = moves(&marks, &plan);
    let mut spacing = Spacing {
        intended: *intended,
        limit: *limit,
        verdict: gaps.iter().map(|gap| gap.verdict).max().unwrap_or(Verdict::CannotTell),
        working: working(readings, &gaps),
        gaps,
        moves,
        too_small,
        unmendable: unmendable(&plan),
        places: plan.places.iter().map(|place| Length::from_si(*place)).collect(),
        findings: Vec::new(),
    };
    spacing.findings = findings::findings(readings, &spacing);
    Ok(spacing)
}

/// The marks in metres; gaps are added up from nothing.
fn marks(measured: &Measured) -> Result<Vec<f64>, SpacingError> {
    let tips = match measured {
        Measured::Gaps(gaps) if gaps.is_empty() => 1,
        Measured::Gaps(gaps) => gaps.len() + 1,
        Measured::Marks(marks) => marks.len(),
    };
    if tips < 2 {
        return Err(SpacingError::TooFew { tips });
    }
    if tips > MOST_TIPS {
        return Err(SpacingError::TooMany { tips });
    }
    match measured {
        Measured::Gaps(gaps) => {
            let mut places = vec![0.0];
            let mut place = 0.0;
            for (at, gap) in gaps.iter().enumerate() {
                if !gap.is_positive() {
                    return Err(SpacingError::Gap { number: number(at), given: *gap });
                }
                place += gap.si();
                places.push(place);
            }
            Ok(places)
        }
        Measured::Marks(marks) => {
            for (at, pair) in marks.windows(2).enumerate() {
                let numbers = pair.iter().all(|mark| mark.si().is_finite());
                if !numbers || pair[1] <= pair[0] {
                    return Err(SpacingError::MarkOrder {
                        tip: number(at + 1),
                        given: pair[1],
                        before: pair[0],
                    });
                }
            }
            Ok(marks.iter().map(|mark| mark.si()).collect())
        }
    }
}

fn fixed_places(fixed: &[u32], tips: usize) -> Result<Vec<usize>, SpacingError> {
    let mut places = Vec::new();
    for tip in fixed {
        let place = usize::try_from(*tip).unwrap_or(usize::MAX);
        if place == 0 || place > tips {
            return Err(SpacingError::NoSuchTip { tip: *tip, tips: u32::try_from(tips).unwrap_or(u32::MAX) });
        }
        places.push(place - 1);
    }
    places.sort_unstable();
    places.dedup();
    Ok(places)
}

fn gap_results(readings: &SpacingReadings, marks: &[f64]) -> Vec<GapResult> {
    let intended = readings.intended;
    let half = readings.either_way();
    let gap = |(at, pair): (usize, &[f64])| {
        // A gap read by itself is taken as it was read, not from marks added up.
        let size = match &readings.measured {
            Measured::Gaps(gaps) => gaps[at],
            Measured::Marks(_) => Length::from_si(pair[1] - pair[0]),
        };
        let error = size - intended;
        let error = Ranged { value: error, low: error - half, high: error + half };
        GapResult {
            number: number(at),
            size,
            error,
            error_percent: error.value.ratio_to(intended) * 100.0,
            verdict: readings.limit.verdict(error.low.ratio_to(intended), error.high.ratio_to(intended)),
        }
    };
    marks.windows(2).enumerate().map(gap).collect()
}

impl SpacingReadings {
    /// How far a gap may be off its reading through the marks of the tape.
    pub(super) fn either_way(&self) -> Length {
        match (self.step, &self.measured) {
            (None, _) => Length::ZERO,
            (Some(step), Measured::Gaps(_)) => step / 2.0,
            (Some(step), Measured::Marks(_)) => step,
        }
    }
}

fn working(readings: &SpacingReadings, gaps: &[GapResult]) -> Working {
    let width = |length: Length| Arg::Amount(Amount::new(length, Kind::Width));
    let (code, formula) = match readings.measured {
        Measured::Gaps(_) => ("spacing_of_gaps", "error = gap − intended"),
        Measured::Marks(_) => (
            "spacing_of_marks",
            "error = mark − mark before it − intended; marks off one tape do not let errors add up",
        ),
    };
    let mut working = Working::new(code, formula, readings.limit.source())
        .figure("intended", width(readings.intended))
        .figure("limit", Arg::Percent(readings.limit.share() * 100.0))
        .figure("limit as a length", width(readings.intended * readings.limit.share()));
    if readings.step.is_some() {
        working = working.figure("the marks leave open, either way", width(readings.either_way()));
    }
    if let Some(worst) = findings::worst(gaps) {
        working = working
            .figure("the worst gap", Arg::Count(worst.number))
            .figure("its size", width(worst.size))
            .result(Arg::Deviation(worst.error_percent));
    }
    working
}
