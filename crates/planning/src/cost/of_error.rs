//! What a rate that is off, and tips that are uneven, cost on the grower's own ground.

use units::{Amount, Area, Arg, Finding, Kind, Quantity, Ranged, VolumePerArea, Weight, Working};

use super::error::CostError;
use super::money::Money;
use super::price::CostPerArea;

/// Shares of the product that was meant: put on too much, and missing. Neither pays for the other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shares {
    /// Put on where it was not meant to be: 0.1 for 10 % of the product.
    pub over: f64,
    /// Missing where it was meant to be.
    pub missing: f64,
}

/// Money with its 95 % range.
#[derive(Clone, Debug, PartialEq)]
pub struct MoneyRange {
    /// The best value.
    pub value: Money,
    /// The low end.
    pub low: Money,
    /// The high end.
    pub high: Money,
}

/// What an error costs.
#[derive(Clone, Debug, PartialEq)]
pub struct CostOfError {
    /// The shares as the sprayer stands.
    pub shares: Shares,
    /// Product put on too much.
    pub over: MoneyRange,
    /// Product missing where it was meant to be. Not a saving.
    pub missing: MoneyRange,
    /// What is left of both when the tank is mixed for the measured rate: only the tips' unevenness.
    pub left_when_mixed_for_measured: Shares,
    /// What is worth telling.
    pub findings: Vec<Finding>,
}

/// Returns what an error costs: product over and product missing, each on its own.
///
/// *Units*: money as written; `tips` are deviations from the mean of the tips that run, in percent (−100 for a plugged
/// one), and may be empty, when the boom counts as even.
///
/// *Assumptions*: the tank is mixed for `mixed_for` at `cost`. Each tip covers the same ground, and puts down
/// (measured ÷ mixed for) × (1 + its deviation) of what was meant; what is over 1 is over, what is under 1 is missing.
/// The range is that of the measured rate; over and missing each grow or shrink with it all the way.
///
/// *Errors*: an area or rate of nothing, a range that does not hold the rate, a tip below −100 %.
///
/// *Source*: Illinois Ext., "60 Ways Farmers Can Protect Surface Water", no. 55: 10 % over at $25/ac on 1,000 ac is $2,500.
///
/// *Example*: 22 gal/ac measured, mixed for 20, $25/ac, 100 ac, an even boom: 0.1 × $25 × 100 = $250 over, nothing missing.
pub fn cost_of_error(
    cost: &CostPerArea,
    area: Area,
    mixed_for: VolumePerArea,
    measured: &Ranged<VolumePerArea>,
    tips: &[f64],
) -> Result<CostOfError, CostError> {
    if !area.is_positive() {
        return Err(CostError::NoArea { area });
    }
    let in_range = measured.low <= measured.value && measured.value <= measured.high;
    for rate in [mixed_for, measured.low, measured.value, measured.high] {
        if !rate.is_positive() || !in_range {
            return Err(CostError::NoRate { rate });
        }
    }
    if let Some(percent) = tips.iter().copied().find(|percent| !(percent.is_finite() && *percent >= -100.0)) {
        return Err(CostError::Tip { percent });
    }
    let at = |rate: VolumePerArea| shares(rate.ratio_to(mixed_for), tips);
    let (value, low, high) = (at(measured.value), at(measured.low), at(measured.high));
    let all = cost.on(area);
    let over =
        MoneyRange { value: all.times(value.over), low: all.times(low.over), high: all.times(high.over) };
    // The higher the rate, the less is missing, so the ends change places.
    let missing = MoneyRange {
        value: all.times(value.missing),
        low: all.times(high.missing),
        high: all.times(low.missing),
    };
    let left = shares(1.0, tips);
    let mut result = CostOfError {
        shares: value,
        over,
        missing,
        left_when_mixed_for_measured: left,
        findings: Vec::new(),
    };
    result.findings = findings(&result, cost, area);
    Ok(result)
}

/// Returns the cost of ground that is sprayed twice: overlap × cost on the area.
///
/// *Units*: `percent` of the ground that is covered twice; money as written.
///
/// *Assumptions*: the product on it is wasted.
///
/// *Errors*: an overlap below 0, an area of nothing.
///
/// *Source*: AgProfessional reporting Univ. of Missouri Extension: 20 % overlap at $50/ac on 1,000 ac is $10,000.
///
/// *Example*: 0.2 × $50 × 1,000 = $10,000.
pub fn cost_of_overlap(cost: &CostPerArea, percent: f64, area: Area) -> Result<Money, CostError> {
    if !area.is_positive() {
        return Err(CostError::NoArea { area });
    }
    if percent.is_finite() && percent >= 0.0 {
        Ok(cost.times(percent / 100.0).on(area))
    } else {
        Err(CostError::Overlap { percent })
    }
}

fn shares(ratio: f64, tips: &[f64]) -> Shares {
    let even = [0.0];
    let tips = if tips.is_empty() { even.as_slice() } else { tips };
    let mut sum = Shares { over: 0.0, missing: 0.0 };
    let mut count = 0.0;
    for percent in tips {
        let off = ratio * (1.0 + percent / 100.0) - 1.0;
        sum.over += off.max(0.0);
        sum.missing += (-off).max(0.0);
        count += 1.0;
    }
    Shares { over: sum.over / count, missing: sum.missing / count }
}

/// Below this share of the product nothing is said. Our own choice: a cent in ten dollars.
const WORTH_TELLING: f64 = 0.001;

fn findings(cost: &CostOfError, per_area: &CostPerArea, area: Area) -> Vec<Finding> {
    let mut findings = Vec::new();
    let ground = Arg::Amount(Amount::new(area, Kind::Area));
    if cost.shares.over > WORTH_TELLING {
        let finding = Finding::new(
            Weight::Note,
            "cost_over",
            "{share} of the product goes on over what you meant: {money} on {area}.",
        );
        findings.push(told(finding, cost.shares.over, &cost.over, &ground, per_area, area));
    }
    if cost.shares.missing > WORTH_TELLING {
        let finding = Finding::new(
            Weight::Note,
            "cost_missing",
            "{share} of the product, {money} worth on {area}, is missing where you meant it to be. That is no saving: \
             it may not do its work there.",
        );
        findings.push(told(finding, cost.shares.missing, &cost.missing, &ground, per_area, area));
    }
    let left = &cost.left_when_mixed_for_measured;
    let rate_matters =
        cost.shares.over - left.over > WORTH_TELLING || cost.shares.missing - left.missing > WORTH_TELLING;
    if rate_matters {
        let even = left.over <= WORTH_TELLING && left.missing <= WORTH_TELLING;
        let finding = if even {
            Finding::new(
                Weight::Note,
                "cost_gone_when_mixed_right",
                "Mix the tank for what the sprayer really puts out, and this cost is gone.",
            )
        } else {
            Finding::new(
                Weight::Note,
                "cost_left_when_mixed_right",
                "Mix the tank for what the sprayer really puts out, and {over} over and {missing} missing are left. That \
                 part comes from tips that differ.",
            )
            .with("over", Arg::Percent(left.over * 100.0))
            .with("missing", Arg::Percent(left.missing * 100.0))
        };
        findings.push(finding);
    }
    findings
}

fn told(
    finding: Finding,
    share: f64,
    money: &MoneyRange,
    ground: &Arg,
    per_area: &CostPerArea,
    area: Area,
) -> Finding {
    let working = Working::new(
        "cost_of_error",
        "money = share × cost on the area",
        "Illinois Ext., \"60 Ways Farmers Can Protect Surface Water\", no. 55",
    )
    .figure("share", Arg::Percent(share * 100.0))
    .figure("cost on the area", Arg::Money(per_area.on(area).to_string()))
    .result(Arg::Money(money.value.to_string()));
    finding
        .with("share", Arg::Percent(share * 100.0))
        .with("money", Arg::Money(money.value.to_string()))
        .with("low", Arg::Money(money.low.to_string()))
        .with("high", Arg::Money(money.high.to_string()))
        .with("area", ground.clone())
        .because(working)
}
