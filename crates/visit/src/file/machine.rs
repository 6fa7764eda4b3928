//! The machine's part of the file.

use sprayer::{BoomLayout, Mounting, PressureControl, TipSize};
use toml::Spanned;
use units::{Arg, AsWritten, Length, Phrase};

use super::mistake::{
    BAND_WIDTH, EFFECTIVE_SWATH, Mistake, OVERLAP, ROW_SPACING, SECTIONS, SPACING, TIPS, TIPS_PER_ROW,
};
use super::section::Part;
use crate::record::{Coverage, Machine, NamedTip, Swath};

/// Reads `[sprayer]`.
pub(super) fn machine(part: &Part<'_>) -> Option<Machine> {
    let kinds = ["boom", "band", "directed", "boomless", "hand"];
    let kind = part.word("kind", &kinds, |word| kinds.iter().copied().find(|kind| *kind == word));
    let kind = if part.has("kind") { kind? } else { "boom" };
    refuse_fields_of_other_kinds(part, kind);
    let coverage = match kind {
        "boomless" => boomless(part),
        "hand" => Some(Coverage::Hand { width: part.positive("spray_width") }),
        _ => boom(part, kind),
    };
    let machine = Machine {
        coverage: coverage?,
        tip: tip(part),
        fan_angle: part.positive("fan_angle"),
        tank: part.positive("tank"),
        held_by: part.word(
            "held_by",
            &["constant_pressure", "rate_controller", "ground_driven_pump"],
            PressureControl::from_word,
        ),
    };
    Some(machine)
}

/// Fields that only some kinds have, each with those kinds.
const OF_KINDS: &[(&str, &[&str])] = &[
    ("tips", &["boom", "band", "directed", "boomless"]),
    ("sections", &["boom", "band", "directed"]),
    ("groups", &["boom", "band", "directed"]),
    ("mounting", &["boom", "band", "directed"]),
    ("spacing", &["boom", "band"]),
    ("fan_angle", &["boom"]),
    ("band_width", &["band"]),
    ("row_spacing", &["directed"]),
    ("tips_per_row", &["directed"]),
    ("effective_swath", &["boomless"]),
    ("wetted_width", &["boomless"]),
    ("overlap", &["boomless"]),
    ("spray_width", &["hand"]),
];

/// A field of another kind of sprayer would be read over in silence and the rate worked out as if it were not there.
fn refuse_fields_of_other_kinds(part: &Part<'_>, kind: &str) {
    for (name, kinds) in OF_KINDS.iter().filter(|(name, kinds)| part.has(name) && !kinds.contains(&kind)) {
        let text = |text: &str| Arg::Text(text.to_string());
        let theirs = match kinds {
            [one] => Phrase::new("of_kind", "kind {kind}").with("kind", text(one)),
            [before @ .., last] => Phrase::new("of_kinds", "kinds {before} and {last}")
                .with("before", text(&before.join(", ")))
                .with("last", text(last)),
            [] => continue,
        };
        let this = if part.has("kind") {
            Phrase::new("this_kind", "this sprayer is kind = \"{kind}\"").with("kind", text(kind))
        } else {
            Phrase::new("no_kind", "without a kind a sprayer is a boom")
        };
        if let Some(value) = part.value(name) {
            let other = Mistake::new("file_other_kind", "this belongs to {theirs}; {this}")
                .would_do("take it out, or write kind = \"{kind}\"")
                .with("theirs", Arg::Phrases(vec![theirs]))
                .with("this", Arg::Phrases(vec![this]))
                .text("kind", kinds[0]);
            part.push_value(name, value, other);
        }
    }
}

fn boom(part: &Part<'_>, kind: &str) -> Option<Coverage> {
    let sections =
        if part.has("sections") { part.counts("sections") } else { part.count("tips").into_iter().collect() };
    let total: u64 = sections.iter().copied().map(u64::from).sum();
    if let Some(tips) = part.count("tips").filter(|tips| part.has("sections") && u64::from(*tips) != total) {
        let differ = Mistake::value("tips_and_sections", "{tips} tips, but the sections hold {total}")
            .would_do("give tips or sections, or make them agree")
            .with("tips", Arg::Count(tips))
            .count("total", usize::try_from(total).unwrap_or(usize::MAX));
        part.fault("tips", differ);
    }
    let (spacing_name, wanted, spacing) = match kind {
        "directed" => ("row_spacing", ROW_SPACING, directed_spacing(part)),
        _ => ("spacing", SPACING, part.positive::<Length>("spacing").map(|spacing| spacing.value())),
    };
    if sections.is_empty() {
        if !part.has(spacing_name) {
            part.missing(spacing_name, wanted);
        }
        if !part.has("sections") && !part.has("tips") {
            part.missing("tips", TIPS);
        }
        part.refuse_empty("sections", SECTIONS);
        return None;
    }
    let Some(spacing) = spacing else {
        if !part.has(spacing_name) {
            part.missing(spacing_name, wanted);
        }
        return None;
    };
    let mounting = part.word("mounting", &["rear", "front"], |word| match word {
        "rear" => Some(Mounting::Rear),
        "front" => Some(Mounting::Front),
        _ => None,
    });
    let name = if part.has("sections") { "sections" } else { "tips" };
    let mut boom = part.accept(name, BoomLayout::new(&sections, spacing, mounting.unwrap_or_default()))?;
    if let Some(groups) = part.part("groups") {
        for (name, value) in groups.entries() {
            let numbers: Vec<u32> =
                groups.list(name).iter().filter_map(|number| groups.count_of(name, number)).collect();
            boom = groups.known(name, value, boom.clone().with_group(name, &numbers)).unwrap_or(boom);
        }
    }
    match kind {
        "band" => {
            if !part.has("band_width") {
                part.missing("band_width", BAND_WIDTH);
            }
            Some(Coverage::Band { boom, band: part.positive("band_width")? })
        }
        "directed" => Some(Coverage::Directed {
            boom,
            row: part.positive("row_spacing")?,
            tips_per_row: tips_per_row(part)?,
        }),
        _ => Some(Coverage::Boom(boom)),
    }
}

/// With several tips to a row each tip stands for its share of the row.
fn directed_spacing(part: &Part<'_>) -> Option<Length> {
    let row: AsWritten<Length> = part.positive("row_spacing")?;
    Some(row.value() / f64::from(tips_per_row(part)?))
}

fn tips_per_row(part: &Part<'_>) -> Option<u32> {
    if !part.has("tips_per_row") {
        part.missing("tips_per_row", TIPS_PER_ROW);
    }
    part.count("tips_per_row")
}

fn boomless(part: &Part<'_>) -> Option<Coverage> {
    let outlets = if part.has("tips") { part.count("tips")? } else { 1 };
    let swath = if part.has("effective_swath") {
        Swath::PassToPass(part.positive("effective_swath")?)
    } else if part.has("wetted_width") {
        let Some(overlap) = part.share("overlap") else {
            if !part.has("overlap") {
                part.missing("overlap", OVERLAP);
            }
            return None;
        };
        Swath::Wetted { wetted: part.positive("wetted_width")?, overlap }
    } else {
        part.missing("effective_swath", EFFECTIVE_SWATH);
        return None;
    };
    Some(Coverage::Boomless { outlets, swath })
}

fn tip(part: &Part<'_>) -> Option<NamedTip> {
    if part.has("tip_size") && part.has("rated") {
        let both = Mistake::value("tip_size_and_rated", "both tip_size and rated are given");
        part.fault("rated", both.would_do("give one of them"));
    }
    if let Some(value) = part.value("tip_size") {
        let text = part.text_of("tip_size", value)?;
        return part.known("tip_size", value, TipSize::named(&text)).map(NamedTip::Size);
    }
    let value: &Spanned<_> = part.value("rated")?;
    let text = part.text_of("rated", value)?;
    let (flow, pressure) = text.split_once('@').unwrap_or((text.as_str(), ""));
    part.known("rated", value, units::flow_at_pressure(&text))?;
    let flow = part.known("rated", value, AsWritten::parse(flow))?;
    let pressure = part.known("rated", value, AsWritten::parse(pressure))?;
    Some(NamedTip::Rated { flow, pressure })
}
