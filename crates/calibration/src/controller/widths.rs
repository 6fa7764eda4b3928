//! Section widths as entered in the controller against tips times spacing.

use units::{Amount, Arg, Finding, Kind, Length, Quantity, Verdict, Weight};

use super::limits::WIDTHS;

/// Returns what is told of widths as entered.
///
/// *Units*: widths; `real` has each section's tips times the spacing, from the left.
///
/// *Assumptions*: each tip covers one spacing.
///
/// *Source*: [`WIDTHS`].
///
/// *Example*: 4 tips 20 in apart are 80 in: 6 ft 8 in. 7 ft entered is 5 % too much, and that section gets 5 % too much.
#[must_use]
pub fn widths_findings(entered: &[Length], real: &[Length]) -> Vec<Finding> {
    if entered.len() != real.len() {
        let count = |list: &[Length]| Arg::Count(u32::try_from(list.len()).unwrap_or(u32::MAX));
        return vec![
            Finding::new(
                Weight::Doubt,
                "controller_widths_count",
                "{entered} widths are entered, but the boom has {sections} sections.",
            )
            .with("entered", count(entered))
            .with("sections", count(real)),
        ];
    }
    let off = |entered: Length, real: Length| entered.ratio_to(real) - 1.0;
    // A width typed in whole inches or centimetres is a hair off the limit at most.
    let beyond = |entered: Length, real: Length| off(entered, real).abs() > WIDTHS.share * (1.0 + 1e-9);
    let wrong =
        (1_u32..).zip(entered.iter().zip(real)).filter(|(_, (entered, real))| beyond(**entered, **real));
    let mut findings: Vec<Finding> = wrong
        .map(|(section, (entered, real))| {
            about(*entered, *real, Kind::Width)(Finding::new(
                Weight::Act,
                "controller_width_off",
                "Section {section} is entered as {entered}, but its tips cover {real}: it gets {error} against what it should.",
            ))
            .with("section", Arg::Count(section))
            .to_do("Enter {real}: tips times spacing.")
        })
        .collect();
    let sum =
        |list: &[Length]| list.iter().fold(Length::ZERO, |sum, one| Length::from_si(sum.si() + one.si()));
    let (entered, real) = (sum(entered), sum(real));
    if beyond(entered, real) {
        findings.push(about(entered, real, Kind::Length)(Finding::new(
            Weight::Act,
            "controller_swath_off",
            "All widths entered make {entered}, but the boom covers {real}: the whole rate and the acres counted are {error} off.",
        ))
        .to_do("Put the widths right, then check the rate again."));
    } else if findings.is_empty() {
        findings.push(
            Finding::new(
                Weight::Note,
                "controller_widths_right",
                "The section widths entered in the controller agree with tips times spacing.",
            )
            .judged(Verdict::Within, WIDTHS.source),
        );
    }
    findings
}

fn about(entered: Length, real: Length, kind: Kind) -> impl Fn(Finding) -> Finding {
    move |finding| {
        finding
            .with("entered", Arg::Amount(Amount::new(entered, kind)))
            .with("real", Arg::Amount(Amount::new(real, kind)))
            .with("error", Arg::Deviation((entered.ratio_to(real) - 1.0) * 100.0))
            .judged(Verdict::Outside, WIDTHS.source)
    }
}
