//! Whether a calibration with water stands for the liquid that will be sprayed.

use sprayer::{CarrierError, OWN_TEST_ABOVE, density_factor};
use units::{Amount, Arg, Density, Finding, Kind, Weight, Working};

/// Returns what to tell where water does not stand for a carrier; nothing where it does.
///
/// *Units*: any.
///
/// *Assumptions*: the tips' flow goes with 1 ÷ √density; thickness is not looked at.
///
/// *Errors*: a density no carrier has.
///
/// *Source*: ASTM E549-87 (reapproved 2022), section 4.2: water, unless the flow differs by more than 5 %.
///
/// *Example*: at 9.19 lb/gal the factor is 1.0497, and water does; at 10.65 lb/gal (28 % UAN) it is 1.13, and it does not.
pub fn water_stands_in(carrier: Density) -> Result<Option<Finding>, CarrierError> {
    let factor = density_factor(carrier)?;
    // Heavier or lighter: the larger of the two flows over the smaller.
    let apart = factor.max(1.0 / factor) - 1.0;
    if apart <= OWN_TEST_ABOVE * (1.0 + HAIR) {
        return Ok(None);
    }
    let working = Working::new(
        "density_factor",
        "factor = √(density of the liquid ÷ density of water)",
        "Univ. of Nebraska-Lincoln CropWatch, Setting the Sprayer Flow Rate for Non-Water Solutions, 2016",
    )
    .figure("density of the liquid", Arg::Amount(Amount::new(carrier, Kind::Density)))
    .result(Arg::Number(factor));
    let mut finding = if factor > 1.0 {
        Finding::new(
            Weight::Act,
            "carrier_heavier_than_water",
            "Your liquid at {density} is heavier than water, so the same tips put out {less} less of it.",
        )
        .with("less", Arg::Percent((1.0 - 1.0 / factor) * 100.0))
    } else {
        Finding::new(
            Weight::Act,
            "carrier_lighter_than_water",
            "Your liquid at {density} is lighter than water, so the same tips put out {more} more of it.",
        )
        .with("more", Arg::Percent((1.0 / factor - 1.0) * 100.0))
    };
    finding = finding
        .with("density", Arg::Amount(Amount::new(carrier, Kind::Density)))
        .with("factor", Arg::Number(factor))
        .to_do("With water in the tank, aim for {factor} times the rate you want of the liquid.")
        .because(working);
    finding.limit_source = Some("ASTM E549-87 (reapproved 2022), section 4.2: more than 5 %");
    Ok(Some(finding))
}

/// Slack for exactly 5 % in binary arithmetic. Our own.
const HAIR: f64 = 1e-9;
