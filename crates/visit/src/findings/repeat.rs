//! The setting to repeat, and whether drive and catch were made at the same one.

use sprayer::PressureControl;
use units::{Arg, Coded, Finding, Phrase, Quantity, Weight};

use crate::record::{Setting, Switch, Visit, setting_said};

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
    pub fn differ(&self) -> bool {
        self.findings.iter().any(|finding| finding.code() == "settings_differ")
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
    let mut findings = Vec::new();
    if visit.drive.is_some() && visit.catch.is_some() {
        findings.extend(differences(&drive, &catch));
    }
    if visit.catch.is_some() {
        let held_by = visit.machine.as_ref().and_then(|machine| machine.held_by);
        findings.extend(caught_in_automatic(&catch, held_by));
    }
    Some(Repeat { drive, catch, findings })
}

/// What differs, told once: pressure, engine, PTO, agitation, sections.
fn differences(drive: &Setting, catch: &Setting) -> Option<Finding> {
    let mut told = Vec::new();
    let mut tell = |(code, english): (&'static str, &'static str), one: Arg, other: Arg| {
        told.push(Phrase::new(code, english).with("drive", one).with("catch", other));
    };
    let typed = |text: &str| Arg::Text(text.to_string());
    if let (Some(one), Some(other)) = (&drive.pressure, &catch.pressure)
        && (one.value().si() / other.value().si() - 1.0).abs() > SAME_PRESSURE
    {
        tell(PRESSURE, typed(one.text()), typed(other.text()));
    }
    // The gear is left out: a catch is made parked, out of gear.
    for (says, of, one, other) in [
        (ENGINE_SPEED, None, &drive.engine_speed, &catch.engine_speed),
        (PTO_SPEED, None, &drive.pto_speed, &catch.pto_speed),
        (AGITATION, Some(Switch::Agitation), &drive.agitation, &catch.agitation),
        (SECTIONS_ON, Some(Switch::SectionsOn), &drive.sections_on, &catch.sections_on),
    ] {
        if let (Some(one), Some(other)) = (one, other)
            && one != other
        {
            let said = |text: &str| of.map_or_else(|| typed(text), |of| setting_said(of, text));
            tell(says, said(one), said(other));
        }
    }
    if told.is_empty() {
        return None;
    }
    let finding = Finding::new(
        Weight::Act,
        "settings_differ",
        "Drive and catch were made at different settings: {differences}.",
    )
    .with("differences", Arg::Phrases(told))
    .to_do("Do one of them again at the other's setting.");
    Some(finding)
}

/// What may differ, by code and in English.
const PRESSURE: (&str, &str) = ("pressure_differs", "pressure {drive} on the drive and {catch} at the catch");
const ENGINE_SPEED: (&str, &str) =
    ("engine_speed_differs", "engine speed {drive} on the drive and {catch} at the catch");
const PTO_SPEED: (&str, &str) =
    ("pto_speed_differs", "PTO speed {drive} on the drive and {catch} at the catch");
const AGITATION: (&str, &str) =
    ("agitation_differs", "agitation {drive} on the drive and {catch} at the catch");
const SECTIONS_ON: (&str, &str) =
    ("sections_on_differ", "sections on {drive} on the drive and {catch} at the catch");

/// A parked sprayer in automatic: the controller sees no speed and shuts or throttles the flow, so a catch says nothing.
fn caught_in_automatic(catch: &Setting, held_by: Option<PressureControl>) -> Option<Finding> {
    let words = catch.controller.as_ref()?;
    if matches!(held_by, Some(PressureControl::Constant | PressureControl::GroundDriven)) {
        return None;
    }
    let automatic = words
        .split(|sign: char| !sign.is_alphanumeric())
        .any(|word| ["auto", "automatic", "on"].iter().any(|known| word.eq_ignore_ascii_case(known)));
    let manual = words.to_lowercase().contains("manual");
    (automatic && !manual).then(|| {
        Finding::new(
            Weight::Doubt,
            "catch_in_automatic",
            "The controller was \"{controller}\" at the catch. Parked and in automatic it holds no rate, so the cups \
             may say nothing.",
        )
        .with("controller", setting_said(Switch::Controller, words))
        .to_do("Put it in manual at the job's pressure, and catch again.")
    })
}
