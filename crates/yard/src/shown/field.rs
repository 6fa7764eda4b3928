//! A field to fill in: its label, what stands in it, how it is filled in, what is wrong with it.

use notebook::Value;
use units::Dimension;
use visit::file::Shape;

use crate::facts::{field_of, typed_text};
use crate::opened::Opened;
use crate::state::State;
use crate::usable::FaultIs;

/// A field to fill in.
#[derive(Clone, Debug, PartialEq)]
pub struct FieldShown {
    /// Its name, as `drive.course`; of a row `product.<row>.name`.
    pub field: String,
    /// What it is, in a few words.
    pub label: String,
    /// What stands in it, as written.
    pub text: String,
    /// How it is filled in.
    pub editor: Editor,
    /// What is wrong with it, and what would do.
    pub wrong: Option<String>,
    /// Values that two devices gave it, where they differ, each as written.
    pub two_values: Vec<String>,
}

/// How a field is filled in.
#[derive(Clone, Debug, PartialEq)]
pub enum Editor {
    /// One of a few: large buttons.
    Choices(Vec<Choice>),
    /// A number and one of these units.
    Number {
        /// Units, the usual one first.
        units: Vec<&'static str>,
        /// Values that are at hand, as written.
        at_hand: Vec<&'static str>,
    },
    /// A whole number, or several.
    Whole,
    /// Several quantities, parted by commas.
    List {
        /// Units, the usual one first.
        units: Vec<&'static str>,
    },
    /// Letters.
    Letters,
    /// A day.
    Day,
}

/// One of a few.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// As the fact has it.
    pub word: &'static str,
    /// As people read it.
    pub label: String,
}

/// The units a quantity may be given in: the usual one first, by who reads.
fn units_for(field: &str, dimension: Dimension, metric: bool) -> Vec<&'static str> {
    let short = matches!(
        field,
        "sprayer.spacing"
            | "spacing.marks"
            | "spacing.gaps"
            | "spacing.tape_marks"
            | "sprayer.band_width"
            | "sprayer.row_spacing"
    );
    let (us, si): (&[&'static str], &[&'static str]) = match dimension {
        Dimension::Length if short => (&["in"], &["cm"]),
        Dimension::Length => (&["ft"], &["m"]),
        Dimension::Pressure => (&["psi"], &["bar"]),
        Dimension::Volume if field == "catch.cup_holds" => (&["fl oz"], &["mL"]),
        Dimension::Volume => (&["gal"], &["L"]),
        Dimension::VolumePerArea => (&["gal/ac"], &["L/ha"]),
        Dimension::Area => (&["ac"], &["ha"]),
        Dimension::Speed => (&["mph"], &["km/h"]),
        Dimension::Time => (&["s"], &["s"]),
        Dimension::Density => (&["lb/gal"], &["kg/L"]),
        _ => (&[], &[]),
    };
    let (first, second) = if metric { (si, us) } else { (us, si) };
    let mut units: Vec<&'static str> = first.to_vec();
    units.extend(second.iter().filter(|unit| !first.contains(unit)));
    units
}

/// Values that most people need, so that a tap does. Common practice on US sprayers.
const fn at_hand(field: &str, metric: bool) -> &'static [&'static str] {
    match (field.as_bytes(), metric) {
        (b"sprayer.spacing", false) => &["20 in", "15 in", "30 in"],
        (b"sprayer.spacing", true) => &["50 cm", "75 cm", "25 cm"],
        (b"catch.time", _) => &["30 s", "60 s", "as driven"],
        (b"catch.cup_marks", false) => &["1 fl oz", "1/2 fl oz", "1/4 fl oz", "10 mL", "1 g"],
        (b"catch.cup_marks", true) => &["10 mL", "20 mL", "25 mL", "5 mL", "1 g"],
        (b"spacing.tape_marks", false) => &["1/4 in", "1/8 in", "1/2 in"],
        (b"spacing.tape_marks", true) => &["1 cm", "0.5 cm"],
        (b"setting.gauge_marks", false) => &["2 psi", "1 psi", "5 psi", "10 psi"],
        (b"catch.limit", _) => &["10 %", "5 %"],
        _ => &[],
    }
}

/// A field of the open visit.
#[must_use]
pub fn field(state: &State, visit: &Opened, name: &str) -> FieldShown {
    let words = &state.words;
    let bare = bare_name(name);
    let metric = state.reader.units == units::UnitSystem::Metric;
    let shape = field_of(name).map(|field| field.shape);
    let kept = value(visit, name).map(typed_text);
    let typed = visit.typed.get(name);
    let wrong = typed.and_then(|typed| typed.wrong.clone()).or_else(|| {
        let fault = visit.faults.iter().find(|fault| fault.field == name && fault.is == FaultIs::Wrong)?;
        Some(crate::facts::said(state, &fault.error))
    });
    let two_values = visit
        .folded
        .two_values
        .iter()
        .find(|two| two.field == name)
        .map(|two| two.values.iter().map(|(value, ..)| typed_text(value)).collect())
        .unwrap_or_default();
    FieldShown {
        field: name.to_string(),
        label: words.label(&format!("field-{}", bare.replace('.', "_"))),
        text: typed.map(|typed| typed.text.clone()).or(kept).unwrap_or_default(),
        editor: editor(state, &bare, shape, metric),
        wrong,
        two_values,
    }
}

fn editor(state: &State, bare: &str, shape: Option<Shape>, metric: bool) -> Editor {
    let at_hand = at_hand(bare, metric).to_vec();
    let number = |units: Vec<&'static str>| Editor::Number { units, at_hand: at_hand.clone() };
    match shape {
        Some(Shape::Word(list)) => {
            let label =
                |word: &&'static str| Choice { word, label: state.words.label(&choice_key(bare, word)) };
            Editor::Choices(list.iter().map(label).collect())
        }
        Some(Shape::Quantity(dimension)) => number(units_for(bare, dimension, metric)),
        Some(Shape::CatchTime) => number(vec!["s"]),
        Some(Shape::Marks) => {
            number(if metric { vec!["mL", "g", "fl oz"] } else { vec!["fl oz", "mL", "g"] })
        }
        Some(Shape::Percent | Shape::Limit) => number(vec!["%"]),
        Some(Shape::Quantities(dimension)) => Editor::List { units: units_for(bare, dimension, metric) },
        Some(Shape::Count | Shape::Counts) => Editor::Whole,
        Some(Shape::Day) => Editor::Day,
        _ => Editor::Letters,
    }
}

/// The key of a choice's label; yes and no are the same wherever they answer.
#[must_use]
pub fn choice_key(field: &str, word: &str) -> String {
    match word {
        "yes" | "no" => format!("choice-{word}"),
        _ => format!("choice-{}-{word}", field.replace('.', "_")),
    }
}

/// A value as written, in the reader's words: a number with its unit's name, or a word that may stand for one.
#[must_use]
pub fn value_said(words: &words::Words, text: &str) -> String {
    if text == "as driven" {
        return words.label("choice-as_driven");
    }
    let unit_begins = text.find(|sign: char| sign.is_alphabetic());
    let parted = unit_begins.map(|place| (text[..place].trim(), text[place..].trim()));
    match parted.and_then(|(number, unit)| Some((number, units::Unit::named(unit)?))) {
        Some((number, unit)) if !number.is_empty() => {
            format!("{} {}", words.digits(number), words.unit(&unit))
        }
        _ => words.numbers_in(text),
    }
}

/// The field without its row.
fn bare_name(name: &str) -> String {
    match name.rsplit_once('.') {
        Some((rest, last)) => match rest.rsplit_once('.') {
            Some((list, row)) if notebook::RowId::parse(row).is_some() => format!("{list}.{last}"),
            _ => name.to_string(),
        },
        None => name.to_string(),
    }
}

fn value<'a>(visit: &'a Opened, name: &str) -> Option<&'a Value> {
    if let Some(held) = visit.fact(name) {
        return Some(&held.value);
    }
    let (rest, last) = name.rsplit_once('.')?;
    let (list, row) = rest.rsplit_once('.')?;
    match &visit.row(list, notebook::RowId::parse(row)?)?.value {
        Value::Table(fields) => fields.iter().find(|(known, _)| known == last).map(|(_, value)| value),
        _ => None,
    }
}

/// The fields of a step, in the order they are asked for.
#[must_use]
pub fn fields_of(state: &State, visit: &Opened, step: crate::plan::Step) -> Vec<FieldShown> {
    let names: &[&str] = match step {
        crate::plan::Step::Machine => {
            let mut names = vec!["visit.sprayer", "visit.farm", "sprayer.kind"];
            names.extend(match visit.kind() {
                "band" => &["sprayer.sections", "sprayer.spacing", "sprayer.band_width"][..],
                "directed" => &["sprayer.sections", "sprayer.row_spacing", "sprayer.tips_per_row"],
                "boomless" => &["sprayer.tips", "sprayer.effective_swath"],
                "hand" => &["sprayer.spray_width"],
                _ => &["sprayer.sections", "sprayer.spacing", "sprayer.mounting"],
            });
            names.extend([
                "sprayer.tip_size",
                "sprayer.tank",
                "sprayer.held_by",
                "visit.operator",
                "visit.with",
            ]);
            return names.iter().map(|name| field(state, visit, name)).collect();
        }
        crate::plan::Step::Look => &[
            "look.tips_alike",
            "look.all_spraying",
            "look.fans_straight",
            "look.no_leaks",
            "look.no_drip_after_5_s",
            "look.gauge_back_to_zero",
            "look.strainers_clean",
            "look.boom_level",
        ],
        crate::plan::Step::Spacing => &["spacing.tape_marks", "spacing.marks", "spacing.cannot_move"],
        crate::plan::Step::Drive => &["drive.course", "drive.dash"],
        crate::plan::Step::Catch => &["catch.cup_marks", "catch.time", "catch.cup_holds", "catch.limit"],
        crate::plan::Step::Rate => &["target.rate", "target.within"],
        crate::plan::Step::Tank => &["job.area", "job.area_a_year"],
        crate::plan::Step::Repeat => &[
            "setting.gear",
            "setting.engine_speed",
            "setting.pressure",
            "setting.pressure_read_at",
            "setting.gauge_marks",
            "setting.pto_speed",
            "setting.agitation",
            "setting.sections_on",
            "setting.controller",
            "setting.water_in_tank",
        ],
        crate::plan::Step::HandOver => &["visit.date", "visit.notes"],
        crate::plan::Step::Safe | crate::plan::Step::Change => &[],
    };
    names.iter().map(|name| field(state, visit, name)).collect()
}
