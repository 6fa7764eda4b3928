//! The machine's part of the file.

use sprayer::{BoomLayout, Mounting, PressureControl, TipSize};
use toml::Spanned;
use units::{AsWritten, Length};

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
        let theirs = match kinds {
            [one] => format!("kind {one}"),
            [first @ .., last] => format!("kinds {} and {last}", first.join(", ")),
            [] => continue,
        };
        let this = if part.has("kind") {
            format!("this sprayer is kind = \"{kind}\"")
        } else {
            "without a kind a sprayer is a boom".to_string()
        };
        let hint = format!("take it out, or write kind = \"{}\"", kinds[0]);
        if let Some(value) = part.value(name) {
            let message = format!("this belongs to {theirs}; {this}");
            part.push_value(name, value, "file_other_kind", message, Some(hint));
        }
    }
}

fn boom(part: &Part<'_>, kind: &str) -> Option<Coverage> {
    let sections =
        if part.has("sections") { part.counts("sections") } else { part.count("tips").into_iter().collect() };
    let total: u64 = sections.iter().copied().map(u64::from).sum();
    if let Some(tips) = part.count("tips").filter(|tips| part.has("sections") && u64::from(*tips) != total) {
        part.fault(
            "tips",
            format!("{tips} tips, but the sections hold {total}"),
            "give tips or sections, or make them agree",
        );
    }
    let (spacing_name, spacing) = match kind {
        "directed" => ("row_spacing", directed_spacing(part)),
        _ => ("spacing", part.positive::<Length>("spacing").map(|spacing| spacing.value())),
    };
    if sections.is_empty() {
        if !part.has(spacing_name) {
            part.missing(spacing_name, "how far the tips stand apart, as spacing = \"20 in\"");
        }
        if !part.has("sections") && !part.has("tips") {
            part.missing("tips", "how many tips there are, as tips = 12, or sections = [4, 4, 4]");
        }
        part.refuse_empty("sections", "how many tips each section has, as sections = [4, 4, 4]");
        return None;
    }
    let Some(spacing) = spacing else {
        if !part.has(spacing_name) {
            part.missing(spacing_name, "how far the tips stand apart, as spacing = \"20 in\"");
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
                part.missing("band_width", "the width of a band, as band_width = \"12 in\"");
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
        part.missing("tips_per_row", "how many tips are directed at a row, as tips_per_row = 3");
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
                part.missing(
                    "overlap",
                    "the share of the wetted width covered again by the next pass, as overlap = \"15 %\"",
                );
            }
            return None;
        };
        Swath::Wetted { wetted: part.positive("wetted_width")?, overlap }
    } else {
        part.missing(
            "effective_swath",
            "the width from pass to pass, as effective_swath = \"30 ft\"; it is less than what is wetted",
        );
        return None;
    };
    Some(Coverage::Boomless { outlets, swath })
}

fn tip(part: &Part<'_>) -> Option<NamedTip> {
    if part.has("tip_size") && part.has("rated") {
        part.fault("rated", "both tip_size and rated are given".to_string(), "give one of them");
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
