//! Closing each section in turn and watching the pressure of the others.

use units::{Amount, Arg, Boundary, Finding, Kind, Pressure, Quantity, Verdict, Weight, Working};

use super::limits::{SECTION_CLOSED, STABLE};

/// One section closed and opened again.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Closed {
    /// The section, from the left from 1.
    pub section: u32,
    /// The pressure with all sections open.
    pub before: Pressure,
    /// The pressure with this one closed.
    pub closed: Pressure,
    /// The pressure once it was open again.
    pub after: Option<Pressure>,
}

/// What the closing of a section says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Closing {
    /// By how much the pressure rose, as a share of what it was.
    pub rise: f64,
    /// The low end of its 95 % range.
    pub low: f64,
    /// The high end of it.
    pub high: f64,
    /// Whether that is more than it may be.
    pub verdict: Verdict,
    /// How far off it came back, as a share; none where it was not read.
    pub left: Option<f64>,
    /// Whether that is more than it may be.
    pub stays: Option<Verdict>,
}

/// A reading to marks may be off by half of them either way. Source: JCGM 100:2008, 4.3.7.
const HALF: f64 = 0.5;

impl Closing {
    /// Works it out; `marks` is how far the marks of the gauge are apart.
    ///
    /// *Assumptions*: the same gauge read all times, so its scale cancels and its marks do not.
    ///
    /// *Source*: limits of [`super::limits`].
    ///
    /// *Example*: 40 psi, 43 with the section closed, by a gauge with marks of 1 psi: 7.5 % up, between 4.9 and 10.1 %.
    #[must_use]
    pub fn of(closed: &Closed, marks: Pressure) -> Self {
        let half = marks.si() * HALF;
        let share = |now: Pressure| {
            let by = |now: f64, before: f64| now / before - 1.0;
            let least = (closed.before.si() - half).max(f64::MIN_POSITIVE);
            (
                by(now.si(), closed.before.si()),
                by(now.si() - half, closed.before.si() + half),
                by(now.si() + half, least),
            )
        };
        let (rise, low, high) = share(closed.closed);
        let after = closed.after.map(share);
        let verdict = |low, high, limit: f64| Verdict::of_range(low, high, limit, limit, Boundary::Inclusive);
        Self {
            rise,
            low,
            high,
            // A fall is no rise; what it is, is told apart.
            verdict: Verdict::of_range(low, high, f64::INFINITY, SECTION_CLOSED.share, Boundary::Inclusive),
            left: after.map(|(off, ..)| off),
            stays: after.map(|(_, low, high)| verdict(low, high, STABLE.share)),
        }
    }
}

/// Returns what is told of sections closed in turn.
#[must_use]
pub fn closing_findings(all: &[Closed], marks: Pressure) -> Vec<Finding> {
    let mut findings: Vec<Finding> =
        all.iter().flat_map(|closed| of_one(closed, &Closing::of(closed, marks), marks)).collect();
    if findings.is_empty() && !all.is_empty() {
        findings.push(
            Finding::new(
                Weight::Note,
                "controller_closing_right",
                "Closing sections one at a time raises the pressure of the others by {limit} at most, as it may.",
            )
            .with("limit", Arg::Percent(SECTION_CLOSED.share * 100.0))
            .judged(Verdict::Within, SECTION_CLOSED.source),
        );
    }
    findings
}

fn of_one(closed: &Closed, found: &Closing, marks: Pressure) -> Vec<Finding> {
    let mut findings = Vec::new();
    let rise = match found.verdict {
        Verdict::Outside => Some(
            Finding::new(
                Weight::Act,
                "controller_closing_high",
                "With section {section} closed the pressure goes from {before} to {now}: {rise}, more than {limit}.",
            )
            .to_do("Have the return of that section's valve set, or the regulator, so that the others keep their pressure."),
        ),
        Verdict::CannotTell => Some(
            Finding::new(
                Weight::Settle,
                "controller_closing_open",
                "With section {section} closed the pressure goes from {before} to {now}: {rise}. This gauge does not tell whether that is more than {limit}.",
            )
            .to_do("Read it on a gauge with finer marks."),
        ),
        Verdict::Within => None,
    };
    findings.extend(rise.map(|finding| {
        told(finding, closed, closed.closed, found.rise, SECTION_CLOSED.share)
            .judged(found.verdict, SECTION_CLOSED.source)
    }));
    // The needle stood still to its marks: neither did the others get more, nor did a return take it up by just as much.
    let still = (closed.closed.si() - closed.before.si()).abs() < marks.si() * HALF;
    if still {
        findings.push(told(
            Finding::new(
                Weight::Settle,
                "controller_closing_nothing",
                "Closing section {section} changes nothing on the gauge: it may be set just right, or its valve does not close.",
            )
            .to_do("Look whether its tips stop within five seconds, from out of the spray."),
            closed,
            closed.closed,
            found.rise,
            SECTION_CLOSED.share,
        ));
    }
    if let (Some(after), Some(left), Some(verdict)) = (closed.after, found.left, found.stays)
        && verdict == Verdict::Outside
    {
        findings.push(
            told(
                Finding::new(
                    Weight::Act,
                    "controller_closing_stays",
                    "With section {section} open again the pressure is {now} instead of {before}: {rise} off, more than {limit}.",
                )
                .to_do("Look at the regulator and its valve: they stick, or the controller does not come back."),
                closed,
                after,
                left,
                STABLE.share,
            )
            .judged(verdict, STABLE.source),
        );
    }
    findings
}

fn told(finding: Finding, closed: &Closed, now: Pressure, rise: f64, limit: f64) -> Finding {
    let pressure = |pressure: Pressure| Arg::Amount(Amount::new(pressure, Kind::Pressure));
    let working = Working::new(
        "section_closed",
        "rise = 100 × (pressure then ÷ pressure before − 1)",
        SECTION_CLOSED.source,
    )
    .figure("pressure before", pressure(closed.before))
    .figure("pressure then", pressure(now))
    .result(Arg::Deviation(rise * 100.0));
    finding
        .with("section", Arg::Count(closed.section))
        .with("before", pressure(closed.before))
        .with("now", pressure(now))
        .with("rise", Arg::DeviationFrom { percent: rise * 100.0, limit: limit * 100.0 })
        .with("limit", Arg::Percent(limit * 100.0))
        .because(working)
}
