//! Where the tips stand.

use calibration::spacing::{GapLimit, Measured, Spacing, SpacingReadings, check_spacing};
use units::{Arg, Finding, Weight};

use super::error::CheckError;
use crate::record::Visit;

/// Works the spacing out, where it was measured.
pub(super) fn spacing(visit: &Visit) -> Result<Option<Spacing>, CheckError> {
    let Some(facts) = &visit.spacing else { return Ok(None) };
    let boom = visit.machine.as_ref().and_then(|machine| machine.boom());
    let Some(boom) = boom else {
        return Err(CheckError::needed(
            "spacing",
            "spacing_without_boom",
            "the intended spacing is not known",
            "give [sprayer] with tips and spacing",
        ));
    };
    let lengths = |list: &[units::AsWritten<units::Length>]| {
        list.iter().map(units::AsWritten::value).collect::<Vec<_>>()
    };
    let (measured, tips) = if facts.marks.is_empty() {
        (Measured::Gaps(lengths(&facts.gaps)), facts.gaps.len() + 1)
    } else {
        (Measured::Marks(lengths(&facts.marks)), facts.marks.len())
    };
    let usual = SpacingReadings::new(boom.spacing(), measured);
    let limit = match facts.limit {
        Some(share) => GapLimit::own(share).map_err(CheckError::of("spacing"))?,
        None => usual.limit,
    };
    let readings = SpacingReadings {
        step: facts.tape_marks.as_ref().map(units::AsWritten::value),
        fixed: facts.cannot_move.clone(),
        limit,
        ..usual
    };
    let mut spacing = check_spacing(&readings).map_err(CheckError::of("spacing"))?;
    if tips != boom.positions().len() {
        spacing.findings.push(
            Finding::new(
                Weight::Doubt,
                "spacing_other_count",
                "The spacing was measured for {measured} tips, but the boom has {boom}.",
            )
            .with("measured", Arg::Number(tips as f64))
            .with("boom", Arg::Count(boom.tips())),
        );
    }
    Ok(Some(spacing))
}
