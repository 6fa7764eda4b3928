//! Reading one section of the boom.

use sprayer::RatedFlow;
use sprayer::plumbing::Pipe;
use toml::Spanned;
use toml::de::DeValue;
use units::{Length, Pressure};

use super::read::{bore, height, metres, metres_or_none, minor_loss, needed, optional, pipe, roughness};
use super::supply::pressure_or_none;
use super::{Enters, Section};
use crate::file::{Mistake, Part, Wanted};

const FEED_BORE: Wanted =
    ("wanted_feed_bore", "the inner diameter of the feed hose, as feed_bore = \"3/4 in\"");
const FEED_LENGTH: Wanted = ("wanted_feed_length", "how long the feed hose is, as feed_length = \"10 ft\"");
const HOSE_BORE: Wanted =
    ("wanted_boom_hose", "the inner diameter of the hose along the boom, as hose_bore = \"3/4 in\"");
const SPACING: Wanted = ("wanted_tip_spacing", "how far the tips stand apart, as tip_spacing = \"20 in\"");
const ENTERS: Wanted = (
    "wanted_enters",
    "where the feed meets the boom's hose, as enters_between = [3, 4], or feeds_at = 1 for a tip",
);
const TIPS: Wanted =
    ("wanted_boom_tips", "the tips from left to right, as tips = [\"0.30 gal/min @ 40 psi\", \"plugged\"]");
const BODY_BORE: Wanted =
    ("wanted_body_bore", "the inner diameter of the drop and body, as body_bore = \"5/16 in\"");
const BOTH_ENDS: Wanted =
    ("wanted_both_ends", "the height of the other end, as left_height = \"0 ft\", right_height = \"2 ft\"");

/// Reads one `[[section]]`.
pub(super) fn section(part: &Part<'_>) -> Option<Section> {
    let roughness = roughness(part);
    let tips = tips(part);
    let feed_bore = needed(part, "feed_bore", FEED_BORE, bore);
    let feed_length = needed(part, "feed_length", FEED_LENGTH, metres);
    let feed_loss = optional(part, "feed_minor_loss", 0.0, minor_loss);
    let check_valve = optional(part, "check_valve_opens_at", Pressure::ZERO, pressure_or_none);
    let body = body(part);
    let tips = tips?;
    let several = tips.len() > 1;
    let hose_bore = if several {
        needed(part, "hose_bore", HOSE_BORE, bore).map(Some)
    } else {
        optional(part, "hose_bore", None, |part, name| bore(part, name).map(Some))
    };
    let spacing = if several {
        needed(part, "tip_spacing", SPACING, metres)
    } else {
        optional(part, "tip_spacing", 0.0, metres)
    };
    let enters = enters(part, tips.len());
    let heights = heights(part, tips.len());
    let roughness = roughness?;
    let hose = hose_bore?.and_then(|bore| pipe(spacing?, bore, 0.0, roughness));
    let body = body?.and_then(|(length, bore, loss)| pipe(length, bore, loss, roughness));
    let feed = Pipe { length: feed_length?, bore: feed_bore?, roughness, minor_loss: feed_loss? };
    Some(Section { feed, enters: enters?, hose, body, check_valve: check_valve?, tips, heights: heights? })
}

/// The word for a tip that gives nothing.
const PLUGGED: &str = "plugged";

fn tips(part: &Part<'_>) -> Option<Vec<Option<RatedFlow>>> {
    if !part.has("tips") {
        part.missing("tips", TIPS);
        return None;
    }
    part.refuse_empty("tips", TIPS);
    let list = part.list("tips");
    let tips: Vec<Option<Option<RatedFlow>>> = list.iter().map(|value| tip(part, value)).collect();
    tips.into_iter().collect::<Option<Vec<_>>>().filter(|tips| !tips.is_empty())
}

fn tip(part: &Part<'_>, value: &Spanned<DeValue<'_>>) -> Option<Option<RatedFlow>> {
    let text = part.text_of("tips", value)?;
    if text.trim() == PLUGGED {
        return Some(None);
    }
    let (flow, pressure) = part.known("tips", value, units::flow_at_pressure(&text))?;
    part.known("tips", value, RatedFlow::new(flow, pressure)).map(Some)
}

/// Length, bore and loss of the bodies; `None` within where there is nothing between hose and tip.
fn body(part: &Part<'_>) -> Option<Option<(f64, f64, f64)>> {
    if !["body_bore", "body_length", "body_minor_loss"].iter().any(|name| part.has(name)) {
        return Some(None);
    }
    let bore = needed(part, "body_bore", BODY_BORE, bore);
    let length = optional(part, "body_length", 0.0, metres_or_none);
    let loss = optional(part, "body_minor_loss", 0.0, minor_loss);
    Some(Some((length?, bore?, loss?)))
}

fn enters(part: &Part<'_>, tips: usize) -> Option<Enters> {
    if part.has("enters_between") && part.has("feeds_at") {
        let both = Mistake::value("fed_twice", "both enters_between and feeds_at are given");
        part.fault("feeds_at", both.would_do("give one of them"));
        return None;
    }
    if part.has("enters_between") {
        let between: Vec<u32> = part.counts("enters_between");
        if part.list("enters_between").len() != between.len() {
            return None;
        }
        if let [left, right] = between[..]
            && left.abs_diff(right) == 1
            && left.max(right) as usize <= tips
        {
            return Some(Enters::Behind(left.min(right) as usize - 1));
        }
        let mistake = Mistake::value(
            "enters_between",
            "the feed cannot meet the hose there: the section's last tip is number {tips}",
        )
        .would_do("give two neighbours among its tips, as enters_between = [3, 4], or feeds_at = 1")
        .count("tips", tips);
        part.fault("enters_between", mistake);
        return None;
    }
    if part.has("feeds_at") {
        let tip = part.count("feeds_at")?;
        if tip as usize <= tips {
            return Some(Enters::At(tip as usize - 1));
        }
        let mistake = Mistake::value("feeds_at", "there is no tip {tip} in this section of {tips}")
            .would_do("give one of its tips, counted from the left of the section")
            .text("tip", &tip.to_string())
            .count("tips", tips);
        part.fault("feeds_at", mistake);
        return None;
    }
    if tips == 1 {
        return Some(Enters::At(0));
    }
    part.missing("enters_between", ENTERS);
    None
}

/// The ways to give the heights of tips, each with its fields.
const HEIGHTS: [&[&str]; 3] = [&["height"], &["left_height", "right_height"], &["tip_heights"]];

/// How much higher than the gauge each tip stands.
fn heights(part: &Part<'_>, tips: usize) -> Option<Vec<Length>> {
    let ways: Vec<&str> =
        HEIGHTS.iter().filter_map(|names| names.iter().copied().find(|name| part.has(name))).collect();
    if let [first, second, ..] = ways[..] {
        let both = Mistake::value("heights_twice", "both {first} and {second} are given");
        part.fault(second, both.would_do("give one of them").text("first", first).text("second", second));
        return None;
    }
    let one = |name: &str| part.value(name).and_then(|value| height(part, name, value));
    match ways.first() {
        Some(&"height") => Some(vec![one("height")?; tips]),
        Some(&"tip_heights") => {
            let list = part.list("tip_heights");
            let heights: Vec<_> = list.iter().map(|value| height(part, "tip_heights", value)).collect();
            if heights.len() != tips {
                let differ = Mistake::value(
                    "heights_and_tips",
                    "the heights ({heights}) and the tips ({tips}) differ in number",
                )
                .would_do("give a height for each tip, or left_height and right_height")
                .count("heights", heights.len())
                .count("tips", tips);
                part.fault("tip_heights", differ);
                return None;
            }
            heights.into_iter().collect()
        }
        Some(_) => {
            let left = needed(part, "left_height", BOTH_ENDS, |_, name| one(name));
            let right = needed(part, "right_height", BOTH_ENDS, |_, name| one(name));
            let (left, right) = (left?, right?);
            let last = (tips.max(2) - 1) as f64;
            Some((0..tips).map(|tip| left + (right - left) * (tip as f64 / last)).collect())
        }
        None => Some(vec![Length::ZERO; tips]),
    }
}
