//! The setting to repeat, and whether drive and catch were made at the same one.

use units::{Arg, Finding, Quantity, Weight};

use crate::record::{Setting, Visit};

/// Pressures that differ by more than this share are different settings. Our own rule: 3 % of pressure is 1.5 %
/// of flow, about what a gauge with marks every 2 psi can show at 40 psi.
const SAME_PRESSURE: f64 = 0.03;

/// The setting to repeat.
#[derive(Clone, Debug, PartialEq)]
pub struct Repeat {
    /// The setting of the drive, or the visit's where there was no drive.
    pub drive: Setting,
    /// The setting of the catch, or the visit's.
    pub catch: Setting,
    /// Differences between the two, and what is worth noting about them.
    pub findings: Vec<Finding>,
}

impl Repeat {
    /// Whether drive and catch differ in something that changes the flow.
    #[must_use]
    pub const fn differ(&self) -> bool {
        !self.findings.is_empty()
    }
}

/// Returns the settings, where any was written down.
pub(super) fn repeat(visit: &Visit) -> Option<Repeat> {
    let general = &visit.setting;
    let of = |own: Option<&Setting>| own.map_or_else(|| general.clone(), |own| own.over(general));
    let drive = of(visit.drive.as_ref().map(|drive| &drive.setting));
    let catch = of(visit.catch.as_ref().map(|catch| &catch.setting));
    if drive == Setting::default() && catch == Setting::default() {
        return None;
    }
    let findings =
        if visit.drive.is_some() && visit.catch.is_some() { differences(&drive, &catch) } else { Vec::new() };
    Some(Repeat { drive, catch, findings })
}

fn differences(drive: &Setting, catch: &Setting) -> Vec<Finding> {
    let mut findings = Vec::new();
    if let (Some(one), Some(other)) = (&drive.pressure, &catch.pressure)
        && (one.value().si() / other.value().si() - 1.0).abs() > SAME_PRESSURE
    {
        findings.push(difference("pressure", one.text(), other.text()));
    }
    // The gear is left out: a catch is made parked, out of gear.
    for (name, one, other) in [
        ("engine speed", &drive.engine_speed, &catch.engine_speed),
        ("PTO speed", &drive.pto_speed, &catch.pto_speed),
        ("agitation", &drive.agitation, &catch.agitation),
        ("sections on", &drive.sections_on, &catch.sections_on),
    ] {
        if let (Some(one), Some(other)) = (one, other)
            && one != other
        {
            findings.push(difference(name, one, other));
        }
    }
    findings
}

fn difference(what: &str, drive: &str, catch: &str) -> Finding {
    Finding::new(
        Weight::Act,
        "settings_differ",
        "Drive and catch were made at different settings: {what} {drive} on the drive, {catch} at the catch. The rate below \
         is for the drive's speed with the catch's flow.",
    )
    .with("what", Arg::Text(what.to_string()))
    .with("drive", Arg::Text(drive.to_string()))
    .with("catch", Arg::Text(catch.to_string()))
    .to_do("Do one of them again at the other's setting.")
}
