//! Verdicts on a target: the label's most product and least carrier first and differently, then the rest.

use units::{Boundary, Finding, Ranged, Verdict, VolumePerArea};

use super::error::TargetError;
use super::findings;
use super::limits::{ProductTarget, Target};
use super::put_down::{PutDown, put_down, sound};
use crate::product::{Basis, WrittenRate};

/// A target held against what the sprayer really puts out.
#[derive(Clone, Debug, PartialEq)]
pub struct Judged {
    /// The measured rate against the intended one, where that is given.
    pub against_intended: Option<Deviation>,
    /// The measured rate against the label's least carrier, where that is given.
    pub against_least_carrier: Option<Deviation>,
    /// What lands on the ground of each product.
    pub products: Vec<PutDown>,
    /// What is worth telling; anything against the label comes first.
    pub findings: Vec<Finding>,
}

/// How far one thing is from another, in percent, with its 95 % range and the verdict.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Deviation {
    /// In percent; more than nothing is over.
    pub percent: f64,
    /// The low end of its range.
    pub low: f64,
    /// The high end of its range.
    pub high: f64,
    /// Within, outside, or cannot tell yet.
    pub verdict: Verdict,
}

/// Returns the verdicts on a target.
///
/// *Units*: any; deviations in percent.
///
/// *Assumptions*: `mixed_for` is the rate that the tank is mixed for; where it is left out, the intended rate. A verdict
/// is settled only when the whole 95 % range lies on one side; exactly on a limit is within it. Where a label's limit
/// goes by the mix (at most 1 % v/v), the strength of the mix is judged, which no rate changes.
///
/// *Errors*: rates of nothing, a range that does not hold the rate, a product by the ground without the rate mixed for.
///
/// *Source*: the label (7 U.S.C. 136j(a)(2)(G): no use inconsistent with it); [`super::RateLimit`] for the rate.
///
/// *Example*: 3 pt/ac mixed for 20 gal/ac, sprayed at 22 (21.6 to 22.4) gal/ac with a label's most of 3.2 pt/ac: 3.3
/// (3.24 to 3.36) pt/ac is outside, and said first.
pub fn judge(
    target: &Target,
    mixed_for: Option<VolumePerArea>,
    measured: &Ranged<VolumePerArea>,
) -> Result<Judged, TargetError> {
    sound(measured)?;
    let mixed_for = mixed_for.or(target.meant());
    let mut judged = Judged {
        against_intended: None,
        against_least_carrier: None,
        products: Vec::new(),
        findings: Vec::new(),
    };
    for product in target.products() {
        let down = put_down(product.product(), mixed_for, measured)?;
        product_findings(product, &down, mixed_for, measured, &mut judged.findings);
        judged.products.push(down);
    }
    if let Some(least) = target.carrier_at_least() {
        let deviation = deviation(measured, least, at_least);
        judged.findings.extend(findings::carrier(deviation.verdict, measured, least));
        judged.against_least_carrier = Some(deviation);
    }
    if let Some(intended) = target.meant() {
        let share = target.rate_limit().share();
        let deviation = deviation(measured, intended, |low, high| {
            Verdict::of_range(low - 1.0, high - 1.0, share, share, Boundary::Inclusive)
        });
        judged.findings.push(findings::intended(&deviation, measured, intended, target.rate_limit()));
        judged.against_intended = Some(deviation);
    }
    judged.findings.sort_by_key(|finding| finding.weight);
    Ok(judged)
}

fn product_findings(
    product: &ProductTarget,
    down: &PutDown,
    mixed_for: Option<VolumePerArea>,
    measured: &Ranged<VolumePerArea>,
    into: &mut Vec<Finding>,
) {
    if let Some(most) = product.most(Basis::Area) {
        into.extend(most_on_ground(product, down, most, mixed_for, measured));
    }
    if let Some(least) = product.least(Basis::Area) {
        let limit = least.rate().per_area(measured.value);
        if let (Some(low), Some(high)) = (down.rate.low().ratio_to(limit), down.rate.high().ratio_to(limit)) {
            into.extend(findings::under_least(at_least(low, high), product, down, least));
        }
    }
    for (limit, over) in [(product.most(Basis::Mix), true), (product.least(Basis::Mix), false)] {
        let Some(limit) = limit else { continue };
        let strength = limit.rate().in_mix(measured.value);
        let Some(ratio) = down.in_mix.ratio_to(strength) else { continue };
        let verdict = if over { at_most(ratio, ratio) } else { at_least(ratio, ratio) };
        if verdict == Verdict::Outside {
            into.push(if over {
                findings::too_strong(product, down, limit)
            } else {
                findings::too_weak(product, down, limit)
            });
        }
    }
}

fn most_on_ground(
    product: &ProductTarget,
    down: &PutDown,
    most: &WrittenRate,
    mixed_for: Option<VolumePerArea>,
    measured: &Ranged<VolumePerArea>,
) -> Option<Finding> {
    let limit = most.rate().per_area(measured.value);
    let (low, high) = (down.rate.low().ratio_to(limit)?, down.rate.high().ratio_to(limit)?);
    let value = down.rate.value().ratio_to(limit)?;
    let verdict = at_most(low, high);
    let planned = product.product().rate().rate().per_area(mixed_for.unwrap_or(measured.value));
    if verdict != Verdict::Outside
        && at_most(planned.ratio_to(limit)?, planned.ratio_to(limit)?) == Verdict::Outside
    {
        return Some(findings::planned_over_most(product, planned, most));
    }
    if verdict == Verdict::Within {
        return None;
    }
    // Mixed for this rate or a higher one, even the high end of the range keeps to the label. Half a percent goes on top,
    // because the figure is shown with three digits and must not be rounded to the wrong side.
    let mix_for = match product.product().rate().rate().basis() {
        Basis::Area => mixed_for.map(|mixed_for| mixed_for * (high * ROUNDING)),
        Basis::Mix => None,
    };
    let beyond = at_most(value, value) == Verdict::Outside;
    Some(findings::over_most(verdict, beyond, product, down, most, mix_for))
}

/// Three digits are off by half a percent at most. Source: arithmetic.
const ROUNDING: f64 = 1.005;

fn at_most(low: f64, high: f64) -> Verdict {
    Verdict::of_range(low, high, 0.0, 1.0, Boundary::Inclusive)
}

fn at_least(low: f64, high: f64) -> Verdict {
    Verdict::of_range(low, high, -1.0, f64::INFINITY, Boundary::Inclusive)
}

fn deviation(
    measured: &Ranged<VolumePerArea>,
    against: VolumePerArea,
    verdict: impl Fn(f64, f64) -> Verdict,
) -> Deviation {
    let percent = |rate: VolumePerArea| (rate.ratio_to(against) - 1.0) * 100.0;
    Deviation {
        percent: percent(measured.value),
        low: percent(measured.low),
        high: percent(measured.high),
        verdict: verdict(measured.low.ratio_to(against), measured.high.ratio_to(against)),
    }
}
