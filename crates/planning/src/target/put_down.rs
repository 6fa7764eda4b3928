//! The product that really lands on the ground, which is not the carrier rate.

use units::{Amount, Arg, Kind, Ranged, VolumePerArea, Working};

use super::error::TargetError;
use crate::given;
use crate::product::{Basis, InMix, Product, ProductRate, RangedPerArea};

/// What really lands on the ground of one product.
#[derive(Clone, Debug, PartialEq)]
pub struct PutDown {
    /// The product's name.
    pub name: String,
    /// Product on the ground with the range it has from the rate's.
    pub rate: RangedPerArea,
    /// How strong the mix is; it does not depend on the rate that was measured.
    pub in_mix: InMix,
    /// How it was reached.
    pub working: Working,
}

/// Returns the product that lands on the ground from a tank that was mixed for one rate and sprayed at another:
/// what was mixed times the measured rate divided by the rate mixed for.
///
/// *Units*: any; shown in the label's unit.
///
/// *Assumptions*: the tank is mixed as written and well stirred. So a carrier rate above plan is not by itself over
/// the label: 20 % more water with a tank mixed for it lays the same product. For a product by the mix the rate mixed
/// for does not matter and may be left out.
///
/// *Errors*: rates of nothing, a range that does not hold the rate, a product by the ground without the rate mixed for.
///
/// *Source*: Univ. of Missouri Extension, MU Guide G1272 (rate × area the tank covers), turned round.
///
/// *Example*: 3 pt/ac mixed for 20 gal/ac and sprayed at 22 gal/ac is 3.3 pt/ac; 0.25 % v/v at 22 gal/ac is 7.04 fl oz/ac.
pub fn put_down(
    product: &Product,
    mixed_for: Option<VolumePerArea>,
    measured: &Ranged<VolumePerArea>,
) -> Result<PutDown, TargetError> {
    sound(measured)?;
    mixed_for.map(|rate| given::positive(rate, |rate| TargetError::NoRate { rate })).transpose()?;
    let written = product.rate();
    let mixed_for = match (written.rate().basis(), mixed_for) {
        (_, Some(rate)) => rate,
        // The mix is as strong at any rate, so any rate will do for it.
        (Basis::Mix, None) => measured.value,
        (Basis::Area, None) => {
            return Err(TargetError::MixedForNeeded {
                name: product.name().to_string(),
                rate: written.text().to_string(),
            });
        }
    };
    let rate = match *written.rate() {
        ProductRate::LiquidPerArea(mixed) => {
            RangedPerArea::Liquid(measured.map(|rate| mixed * rate.ratio_to(mixed_for)))
        }
        ProductRate::DryPerArea(mixed) => {
            RangedPerArea::Dry(measured.map(|rate| mixed * rate.ratio_to(mixed_for)))
        }
        ProductRate::LiquidInMix { share } => RangedPerArea::Liquid(measured.map(|rate| rate * share)),
        ProductRate::DryInMix(density) => RangedPerArea::Dry(measured.map(|rate| density * rate)),
    };
    let shown = rate.shown(written.area_unit());
    let working = match written.rate().basis() {
        Basis::Area => Working::new(
            "product_put_down",
            "product put down = product mixed × measured rate ÷ rate mixed for",
            "Univ. of Missouri Extension, MU Guide G1272, turned round",
        )
        .figure("product mixed", Arg::Text(written.text().to_string()))
        .figure("measured rate", Arg::Amount(Amount::ranged(measured, Kind::Rate)))
        .figure("rate mixed for", Arg::Amount(Amount::new(mixed_for, Kind::Rate))),
        Basis::Mix => Working::new(
            "product_put_down_by_mix",
            "product put down = product in the mix × measured rate",
            "common practice",
        )
        .figure("product in the mix", Arg::Text(written.text().to_string()))
        .figure("measured rate", Arg::Amount(Amount::ranged(measured, Kind::Rate))),
    };
    Ok(PutDown {
        name: product.name().to_string(),
        rate,
        in_mix: written.rate().in_mix(mixed_for),
        working: working.result(Arg::Amount(shown)),
    })
}

/// Refuses a measured rate whose range cannot be one.
pub(super) fn sound(measured: &Ranged<VolumePerArea>) -> Result<(), TargetError> {
    given::sound(
        measured,
        |rate| TargetError::NoRate { rate },
        |range| TargetError::RangeOfRate { low: range.low, rate: range.value, high: range.high },
    )
}
