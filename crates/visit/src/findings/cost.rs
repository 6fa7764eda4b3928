//! What the error costs on the grower's own acres, at the grower's own prices.

use calibration::catch::{GroupSummary, TipState};
use planning::{CostOfError, CostPerArea, Price, cost_of_error};
use units::{AsWritten, VolumePerArea};

use super::catching::CatchOutcome;
use super::error::CheckError;
use super::rate::RateOutcome;
use super::tank::mixed_for;
use crate::record::Visit;

/// Works the cost out, where there are prices and an area.
pub(super) fn cost(
    visit: &Visit,
    rate: Option<&RateOutcome>,
    catch: Option<&CatchOutcome>,
) -> Result<Option<CostOfError>, CheckError> {
    let area = visit.job.area_a_year.as_ref().or(visit.job.area.as_ref());
    let (Some(rate), Some(area), Some(target)) = (rate, area, &visit.target) else { return Ok(None) };
    // What it costs is what happens when the tank is mixed for the wanted rate, as it was until today.
    let mixed: VolumePerArea = mixed_for(visit).unwrap_or(target.rate.value());
    let mut sum: Option<CostPerArea> = None;
    for planned in &visit.products {
        let Some(text) = &planned.price else { continue };
        let price = Price::parse(text).map_err(CheckError::of("product.price"))?;
        let cost = price.on_area(&planned.product, mixed).map_err(CheckError::of("product.price"))?;
        sum = Some(match sum {
            Some(before) => before.plus(&cost).map_err(CheckError::of("product.price"))?,
            None => cost,
        });
    }
    let Some(sum) = sum else { return Ok(None) };
    let tips: Vec<f64> = catch.map(deviations).unwrap_or_default();
    let treated = AsWritten::value(area) * rate.treated.unwrap_or(1.0);
    let cost = cost_of_error(&sum, treated, mixed, &rate.of_mix(), &tips);
    cost.map(Some).map_err(CheckError::of("job"))
}

/// How far each caught tip is from what its group lays on average, plugged ones with the rest, in percent. A group's
/// own mean is what is meant for it: end tips that are to give less are neither over nor missing.
fn deviations(catch: &CatchOutcome) -> Vec<f64> {
    let summary = &catch.now().verdicts.summary;
    let of_group = |group: &GroupSummary| {
        let flows: Vec<f64> = summary
            .tips
            .iter()
            .filter(|tip| tip.group == group.group && tip.state != TipState::NotCaught)
            .filter_map(|tip| tip.flow.map(units::Quantity::si))
            .collect();
        let mean = flows.iter().sum::<f64>() / flows.len().max(1) as f64;
        let off = move |flow: f64| if mean > 0.0 { 100.0 * (flow / mean - 1.0) } else { -100.0 };
        flows.into_iter().map(off).collect::<Vec<_>>()
    };
    summary.groups.iter().flat_map(of_group).collect()
}
