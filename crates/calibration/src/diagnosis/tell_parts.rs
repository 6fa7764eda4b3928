//! What the boom's offset is made of, in a grower's words.

use units::{Amount, Arg, Finding, Kind, Pressure, Quantity, Ranged, Weight};

use super::answer::Diagnosis;
use super::parts::{BoomParts, Middle};

/// Pressure off by less than this is not told (a share). Our own choice: what a good small gauge shows.
const PRESSURE_OFF: f64 = 0.05;
/// A set off by less than this is not told (a share of flow). Our own choice, as for the boom.
const SET_OFF: f64 = 0.04;

/// Returns what a second pressure, a pressure at a tip or a new tip told.
pub(super) fn parts(found: &Diagnosis) -> Vec<Finding> {
    let Some(parts) = &found.boom.parts else { return Vec::new() };
    let mut told: Vec<Finding> = Vec::new();
    told.extend(parts.pressure.as_ref().and_then(pressure));
    told.extend(zero(parts));
    told.extend(set(&parts.set));
    if told.is_empty() && parts.decides() {
        told.push(Finding::new(
            Weight::Note,
            "boom_parts_in_order",
            "Beside the cups: the set of tips gives what new ones would, and the gauge shows what the tips get, as far as this tells.",
        ));
    }
    told
}

impl BoomParts {
    /// Whether the set is known well enough to say that it is in order.
    fn decides(&self) -> bool {
        self.set.low > -SET_OFF && self.set.high < SET_OFF
    }

    /// Whether something was told that says why a whole boom is off.
    pub(super) fn says_why(&self) -> bool {
        self.pressure.as_ref().and_then(pressure).is_some() || set(&self.set).is_some()
    }
}

/// With its range, the nearer end first; signs are in the words.
fn with_range(finding: Finding, off: &Middle) -> Finding {
    let (near, far) = if off.middle > 0.0 { (off.low, off.high) } else { (off.high, off.low) };
    let share = |share: f64| Arg::Off { percent: 100.0 * share, limit: None };
    finding.with("off", share(off.middle)).with("low", share(near)).with("high", share(far))
}

fn pressure(off: &Middle) -> Option<Finding> {
    let (case, says, does) = if off.high < -PRESSURE_OFF {
        (
            "less",
            "The tips most likely get {off} less pressure than was read ({low} to {high}): the gauge reads high, or pressure is lost on the way.",
            "Hold the gauge against one you trust; look at strainers, valves and hoses between gauge and boom.",
        )
    } else if off.low > PRESSURE_OFF {
        (
            "more",
            "The tips most likely get {off} more pressure than was read ({low} to {high}): the gauge reads low.",
            "Hold the gauge against one you trust, and replace it if it is off.",
        )
    } else {
        return None;
    };
    let finding = Finding::new(Weight::Act, "tips_get_pressure", says).case(case).to_do(does);
    Some(with_range(finding, off))
}

/// What stays the same at every pressure.
fn zero(parts: &BoomParts) -> Option<Finding> {
    let zero = parts.zero?;
    let (case, says) = if zero.low.is_positive() {
        (
            "lost",
            "About {lost} of what the gauge shows does not reach the tips at any pressure ({low} to {high}): the gauge starts too high, or check valves and strainers take it.",
        )
    } else if zero.high.is_positive() {
        return None;
    } else {
        (
            "shown",
            "At any pressure the tips get about {lost} more than the gauge shows ({low} to {high}): it starts too low.",
        )
    };
    let (near, far) = if zero.low.is_positive() { (zero.low, zero.high) } else { (zero.high, zero.low) };
    // Each to the digit that the whole range allows; signs are in the words.
    let size = |pressure: Pressure| Pressure::from_si(pressure.si().abs());
    let shown = |pressure: Pressure| {
        let ranged = Ranged { value: size(pressure), low: size(near), high: size(far) };
        Arg::Amount(Amount::ranged(&ranged, Kind::Pressure))
    };
    Some(
        Finding::new(Weight::Note, "pressure_zero", says)
            .case(case)
            .with("lost", shown(zero.middle))
            .with("low", shown(near))
            .with("high", shown(far)),
    )
}

fn set(off: &Middle) -> Option<Finding> {
    let (case, says, does) = if off.low > SET_OFF {
        (
            "high",
            "At the pressure they get, the tips most likely give {off} more than new ones ({low} to {high}): the set is worn alike, or larger tips are fitted.",
            "Look at the size printed on the tips. If it is right, replace the whole set.",
        )
    } else if off.high < -SET_OFF {
        (
            "low",
            "At the pressure they get, the tips most likely give {off} less than new ones ({low} to {high}): smaller tips are fitted, or all of them are coated.",
            "Look at the size printed on the tips. If it is right, clean them all with a soft brush, gloves on, never the mouth, and catch again.",
        )
    } else {
        return None;
    };
    let finding = Finding::new(Weight::Act, "set_is_off", says).case(case).to_do(does);
    Some(with_range(finding, off))
}
