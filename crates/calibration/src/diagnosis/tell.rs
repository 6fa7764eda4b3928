//! What a diagnosis tells, in a grower's words, the most pressing first.

use units::{Arg, Finding, Weight};

use super::answer::Diagnosis;
use super::parts::BoomParts;
use super::{patterns, tell_parts, tell_tip};

/// So many cups at least that read alike are told. Our own choice.
const ALIKE: usize = 8;
/// Marks finer than this part tips that are alike, so cups that all read alike are odd. Our own choice: new tips
/// spread by 1 to 3 %.
const FINE: f64 = 0.012;

/// Returns what a diagnosis tells.
#[must_use]
pub fn tell_diagnosis(found: &Diagnosis) -> Vec<Finding> {
    if let Some(off) = patterns::off(found) {
        return vec![off];
    }
    let mut findings = patterns::sections(found);
    if !found.boom.parts.as_ref().is_some_and(BoomParts::says_why) {
        findings.extend(patterns::whole(found));
    }
    findings.extend(tell_parts::parts(found));
    findings.extend(patterns::sides(found));
    findings.extend(tell_tip::tips(found));
    findings.extend(patterns::drift(found));
    findings.extend(all_alike(found));
    if findings.iter().all(|finding| finding.weight == Weight::Note) {
        findings.push(in_order(found));
    }
    findings.extend(found.remarks.iter().cloned());
    findings.sort_by_key(|finding| finding.weight);
    findings
}

fn in_order(found: &Diagnosis) -> Finding {
    let least = found.tips.iter().map(|tip| tip.causes[0]).fold(1.0, f64::min);
    Finding::new(
        Weight::Note,
        "nothing_found",
        "These cups show nothing wrong: every tip is sound with a chance of at least {chance}.",
    )
    .with("chance", super::chance::told(least))
}

/// Cups read finely that are all the same, to the mark: copied down rather than read.
fn all_alike(found: &Diagnosis) -> Option<Finding> {
    let read: Vec<(f64, f64)> = found.tips.iter().filter_map(|tip| tip.read.zip(tip.marks)).collect();
    let (first, marks) = *read.first()?;
    let same = |(other, _): &(f64, f64)| (other - first).abs() < 1e-9;
    (read.len() >= ALIKE && marks < FINE && read.iter().all(same)).then(|| {
        Finding::new(
            Weight::Doubt,
            "cups_all_alike",
            "All {count} cups read just the same. Tips are hardly ever so alike.",
        )
        .with("count", Arg::Count(u32::try_from(read.len()).unwrap_or(u32::MAX)))
        .to_do("Catch two or three of them again and read them one by one.")
    })
}
