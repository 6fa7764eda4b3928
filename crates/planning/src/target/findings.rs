//! What is said about a target: over the label first, and in words of its own.

use units::{Amount, Arg, Finding, Kind, Ranged, Verdict, VolumePerArea, Weight, Working};

use super::judge::Deviation;
use super::limits::{ProductTarget, RateLimit};
use super::put_down::PutDown;
use crate::product::{InMix, ProductPerArea, WrittenRate};

/// Who sets a product's limits. The law: 7 U.S.C. 136j(a)(2)(G), no use inconsistent with the labeling.
const LABEL: &str = "the product's label, as given; 7 U.S.C. 136j(a)(2)(G)";

/// More product on the ground than the label allows, for certain or perhaps.
pub(super) fn over_most(
    verdict: Verdict,
    beyond: bool,
    product: &ProductTarget,
    down: &PutDown,
    most: &WrittenRate,
    mix_for: Option<VolumePerArea>,
) -> Finding {
    let finding = match (verdict, beyond) {
        (Verdict::Outside, _) => Finding::new(
            Weight::Stop,
            "product_over_label",
            "Stop: {name} goes on at {rate}. The label allows {most} at most; the label is the law.",
        ),
        (_, true) => Finding::new(
            Weight::Stop,
            "product_most_likely_over_label",
            "Stop: {name} most likely goes on at {rate}. The label allows {most} at most; the label is the law.",
        ),
        _ => Finding::new(
            Weight::Settle,
            "product_may_be_over_label",
            "{name} goes on at {rate}, so near the label's most of {most} that it may be over. The label is the law.",
        ),
    };
    let finding = about(finding, product, down).with("most", Arg::Text(most.text().to_string()));
    let finding = match mix_for {
        Some(rate) => finding.with("mix_for", Arg::Amount(Amount::new(rate, Kind::Rate))),
        None => finding,
    };
    // What would do differs: a rate by the ground is put right by mixing for another rate, one by the mix is not.
    let finding = finding.case(if mix_for.is_some() { "by_ground" } else { "by_mix" });
    let finding = match (beyond, mix_for) {
        (true, Some(_)) => finding.to_do(
            "Do not spray this mix. Put in less: work the load out for {mix_for}, and it keeps to the label for sure.",
        ),
        (true, None) => finding.to_do("Do not spray this mix. Make it weaker, or put out less of it."),
        (false, Some(_)) => finding.to_do(
            "To be sure, work the load out for {mix_for}; or catch longer to know better what the sprayer puts out.",
        ),
        (false, None) => {
            finding.to_do("To be sure, make it a little weaker; or catch longer to know better what the sprayer puts out.")
        }
    };
    finding.judged(verdict, LABEL)
}

/// The mix itself is meant for more than the label allows, whatever the sprayer then does.
pub(super) fn planned_over_most(
    product: &ProductTarget,
    planned: ProductPerArea,
    most: &WrittenRate,
) -> Finding {
    let unit = product.product().rate().area_unit();
    Finding::new(
        Weight::Stop,
        "product_planned_over_label",
        "Stop: {name} is mixed for {planned}. The label allows {most} at most; the label is the law.",
    )
    .with("name", Arg::Text(product.product().name().to_string()))
    .with("planned", Arg::Amount(planned.shown(unit)))
    .with("most", Arg::Text(most.text().to_string()))
    .to_do("Do not mix it so. Put in no more than the label allows.")
    .judged(Verdict::Outside, LABEL)
}

/// Less product on the ground than the label asks for, for certain or perhaps.
pub(super) fn under_least(
    verdict: Verdict,
    product: &ProductTarget,
    down: &PutDown,
    least: &WrittenRate,
) -> Option<Finding> {
    let finding = match verdict {
        Verdict::Within => return None,
        Verdict::Outside => Finding::new(
            Weight::Act,
            "product_under_least",
            "{name} goes on at {rate}, under the label's least of {least}. It may not do its work.",
        )
        .to_do("Mix the tank for the rate the sprayer really puts out."),
        Verdict::CannotTell => Finding::new(
            Weight::Settle,
            "product_may_be_under_least",
            "{name} goes on at {rate}, so near the label's least of {least} that it may be under.",
        )
        .to_do(
            "Mix the tank for the rate the sprayer really puts out, or catch longer to know the rate better.",
        ),
    };
    let finding = about(finding, product, down).with("least", Arg::Text(least.text().to_string()));
    Some(finding.judged(verdict, LABEL))
}

/// The mix is stronger than the label allows.
pub(super) fn too_strong(product: &ProductTarget, down: &PutDown, most: &WrittenRate) -> Finding {
    let finding = Finding::new(
        Weight::Stop,
        "mix_over_label",
        "Stop: the mix holds {strength} of {name}. The label allows {most} at most; the label is the law.",
    )
    .to_do("Do not spray this mix. Make it weaker.");
    strength(finding, product, down)
        .with("most", Arg::Text(most.text().to_string()))
        .judged(Verdict::Outside, LABEL)
}

/// The mix is weaker than the label asks for; so it goes with adjuvants by the acre in little or much water.
pub(super) fn too_weak(product: &ProductTarget, down: &PutDown, least: &WrittenRate) -> Finding {
    let finding = Finding::new(
        Weight::Act,
        "mix_under_least",
        "The mix holds {strength} of {name}, under the label's least of {least}. It may not do its work.",
    )
    .to_do("Put more of it in each tank, or use less water if the label lets you.");
    strength(finding, product, down)
        .with("least", Arg::Text(least.text().to_string()))
        .judged(Verdict::Outside, LABEL)
}

/// Less carrier than the label asks for, for certain or perhaps.
pub(super) fn carrier(
    verdict: Verdict,
    measured: &Ranged<VolumePerArea>,
    least: VolumePerArea,
) -> Option<Finding> {
    let finding = match verdict {
        Verdict::Within => return None,
        Verdict::Outside => Finding::new(
            Weight::Stop,
            "carrier_under_label",
            "Stop: the sprayer puts out {rate}. The label asks for at least {least}; the label is the law.",
        )
        .to_do("Do not spray so. Drive slower at the same pressure, or fit larger tips, and catch again."),
        Verdict::CannotTell => Finding::new(
            Weight::Settle,
            "carrier_may_be_under_label",
            "The sprayer puts out {rate}, so near the label's least of {least} that it may be under.",
        )
        .to_do("Catch longer to know the rate better, or put out a little more."),
    };
    let rate = Amount::ranged(measured, Kind::Rate);
    Some(
        finding
            .with("rate", Arg::Amount(rate.clone()))
            .with("least", Arg::Amount(Amount::new(least, Kind::Rate)))
            .about(rate)
            .judged(verdict, LABEL),
    )
}

/// The measured rate against the intended one, whatever the verdict.
pub(super) fn intended(
    deviation: &Deviation,
    measured: &Ranged<VolumePerArea>,
    intended: VolumePerArea,
    limit: &RateLimit,
) -> Finding {
    let finding = match deviation.verdict {
        Verdict::Within => Finding::new(
            Weight::Note,
            "rate_within",
            "The sprayer puts out {rate}: {deviation} from the {intended} you want, within {limit}.",
        ),
        Verdict::Outside => Finding::new(
            Weight::Act,
            "rate_outside",
            "The sprayer puts out {rate}: {deviation} from the {intended} you want, more than {limit} off.",
        )
        .to_do("Mix the tank for {rate}, or change the sprayer and catch again."),
        Verdict::CannotTell => Finding::new(
            Weight::Settle,
            "rate_cannot_tell",
            "The sprayer puts out {rate}: {deviation} from the {intended} you want. That may be more than {limit} off, \
             or not.",
        )
        .to_do("Mix the tank for {rate}; catch longer and time the drive again to know better."),
    };
    let rate = Amount::ranged(measured, Kind::Rate);
    let wanted = Arg::Amount(Amount::new(intended, Kind::Rate));
    let limit_percent = limit.share() * 100.0;
    let working = Working::new(
        "rate_deviation",
        "deviation = measured rate ÷ intended rate − 1",
        "definition; the limit: see who sets it",
    )
    .figure("measured rate", Arg::Amount(rate.clone()))
    .figure("intended rate", wanted.clone())
    .result(Arg::DeviationFrom { percent: deviation.percent, limit: limit_percent });
    finding
        .with("rate", Arg::Amount(rate.clone()))
        .with("intended", wanted)
        .with("deviation", Arg::DeviationFrom { percent: deviation.percent, limit: limit_percent })
        .with("limit", Arg::Percent(limit_percent))
        .about(rate)
        .judged(deviation.verdict, limit.source())
        .because(working)
}

fn about(finding: Finding, product: &ProductTarget, down: &PutDown) -> Finding {
    let shown = down.rate.shown(product.product().rate().area_unit());
    finding
        .with("name", Arg::Text(down.name.clone()))
        .with("rate", Arg::Amount(shown.clone()))
        .about(shown)
        .because(down.working.clone())
}

fn strength(finding: Finding, product: &ProductTarget, down: &PutDown) -> Finding {
    let strength = match down.in_mix {
        InMix::Liquid { share } => Arg::Percent(share * 100.0),
        InMix::Dry(density) => Arg::Amount(Amount::new(density, Kind::Density)),
    };
    finding.with("name", Arg::Text(product.product().name().to_string())).with("strength", strength)
}
