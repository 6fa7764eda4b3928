//! A field to fill in: its label, what stands in it, how it is filled in, what is wrong with it.

use notebook::Value;
use units::{Dimension, Length, Quantity};
use visit::file::Shape;

use crate::facts::{field_of, typed_text};
use crate::opened::Opened;
use crate::plan::Step;
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
    /// Keys that make it a little less and a little more, where it is worth trying out.
    pub nudges: Vec<Nudge>,
    /// Values that two devices gave it, where they differ, each as written.
    pub two_values: Vec<String>,
}

/// A key that makes a number a little less or more.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Nudge {
    /// What it says: "1 in lower".
    pub label: String,
    /// What the field then holds.
    pub text: String,
}

/// How a field is filled in.
#[derive(Clone, Debug, PartialEq)]
pub enum Editor {
    /// One of a few: large buttons.
    Choices(Vec<Choice>),
    /// A number and one of these units.
    Number {
        /// Units, the usual one first.
        units: Vec<Choice>,
        /// Values that are at hand.
        at_hand: Vec<Choice>,
    },
    /// A whole number, or several.
    Whole,
    /// Several quantities, parted by commas.
    List {
        /// Units, the usual one first.
        units: Vec<Choice>,
    },
    /// Letters.
    Letters {
        /// Words that are at hand.
        at_hand: Vec<Choice>,
    },
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
            | "controller.widths"
            | "sprayer.row_spacing"
            | "setting.boom_height"
    );
    let (us, si): (&[&'static str], &[&'static str]) = match dimension {
        Dimension::Length if short => (&["in"], &["cm"]),
        Dimension::Length => (&["ft"], &["m"]),
        Dimension::Pressure => (&["psi"], &["bar"]),
        Dimension::Flow => (&["gal/min"], &["L/min"]),
        Dimension::Volume if field == "catch.cup_holds" => (&["fl oz"], &["mL"]),
        Dimension::Volume => (&["gal"], &["L"]),
        Dimension::VolumePerArea => (&["gal/ac"], &["L/ha"]),
        Dimension::Area => (&["ac"], &["ha"]),
        Dimension::Speed => (&["mph"], &["km/h"]),
        Dimension::Time => (&["s"], &["s"]),
        Dimension::Density => (&["lb/gal"], &["kg/L"]),
        Dimension::Angle => (&["deg"], &["deg"]),
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
        (b"sprayer.fan_angle", _) => &["110 deg", "80 deg"],
        (b"setting.boom_height", false) => &["20 in", "18 in", "30 in"],
        (b"setting.boom_height", true) => &["50 cm", "60 cm", "75 cm"],
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
    let text = typed.map(|typed| typed.text.clone()).or(kept).unwrap_or_default();
    FieldShown {
        nudges: if name == "setting.boom_height" { nudges(state, &text) } else { Vec::new() },
        field: name.to_string(),
        label: words.label(&format!("field-{}", bare.replace('.', "_"))),
        text,
        editor: editor(state, &bare, shape, metric),
        wrong,
        two_values,
    }
}

/// A height a little lower and a little higher, in its own unit: an inch or two centimetres. Our own choice: what shows on the
/// ground, and nobody sets a boom finer.
fn nudges(state: &State, text: &str) -> Vec<Nudge> {
    let Ok(height) = units::AsWritten::<Length>::parse(text) else { return Vec::new() };
    let Some(unit) = height.written().unit().cloned() else { return Vec::new() };
    let step = match unit.text() {
        "in" => 1.0,
        "cm" => 2.0,
        _ => return Vec::new(),
    };
    let now = height.value().in_unit(&unit);
    let shown = |way: f64, key: &str| {
        // To whole units: fractions that were measured are not what is tried out.
        let then = if way < 0.0 { (now - step - 1e-9).ceil() } else { (now + step + 1e-9).floor() };
        let by = state.words.say(key, &[("by", format!("{step} {}", state.words.unit(&unit)).into())]);
        (then > 0.0).then(|| Nudge { label: by, text: format!("{then} {}", unit.text()) })
    };
    [shown(-1.0, "yard-lower_by"), shown(1.0, "yard-higher_by")].into_iter().flatten().collect()
}

fn editor(state: &State, bare: &str, shape: Option<Shape>, metric: bool) -> Editor {
    let words = &state.words;
    let named = |unit: &'static str| Choice {
        word: unit,
        label: units::Unit::named(unit).map_or_else(|| unit.to_string(), |unit| words.unit(&unit)),
    };
    let units = |units: Vec<&'static str>| units.into_iter().map(named).collect::<Vec<_>>();
    let at_hand = || {
        let said = |word: &'static str| Choice { word, label: value_said(words, word) };
        at_hand(bare, metric).iter().copied().map(said).collect()
    };
    let number = |of: Vec<&'static str>| Editor::Number { units: units(of), at_hand: at_hand() };
    match shape {
        Some(Shape::Word(list)) => {
            let label = |word: &&'static str| Choice { word, label: words.label(&choice_key(bare, word)) };
            Editor::Choices(list.iter().map(label).collect())
        }
        Some(Shape::Quantity(dimension)) => number(units_for(bare, dimension, metric)),
        Some(Shape::CatchTime) => number(vec!["s"]),
        Some(Shape::Marks) => {
            number(if metric { vec!["mL", "g", "fl oz"] } else { vec!["fl oz", "mL", "g"] })
        }
        Some(Shape::Percent | Shape::Limit) => number(vec!["%"]),
        Some(Shape::ProductRate) => number(product_units(metric)),
        Some(Shape::Quantities(dimension)) => {
            Editor::List { units: units(units_for(bare, dimension, metric)) }
        }
        Some(Shape::Count | Shape::Counts) => Editor::Whole,
        Some(Shape::Day) => Editor::Day,
        _ => {
            let said = |(word, key): &(&'static str, &str)| Choice { word, label: words.label(key) };
            Editor::Letters { at_hand: words_at_hand(bare).iter().map(said).collect() }
        }
    }
}

/// The units that most labels give a rate in; the others can be typed.
fn product_units(metric: bool) -> Vec<&'static str> {
    if metric {
        vec!["L/ha", "kg/ha", "g/ha"]
    } else {
        vec!["pt/ac", "fl oz/ac", "qt/ac", "lb/ac", "oz wt/ac"]
    }
}

/// Words that most people need, as the fact has them, with the key of how people read them.
const fn words_at_hand(field: &str) -> &'static [(&'static str, &'static str)] {
    match field.as_bytes() {
        b"setting.agitation" => &[("on", "word-agitation_on"), ("off", "word-agitation_off")],
        b"setting.sections_on" => &[("all", "word-sections_on_all")],
        b"setting.controller" => &[("manual", "word-controller_manual"), ("off", "word-controller_off")],
        b"setting.water_in_tank" => &[("half full", "word-water_half_full"), ("full", "word-water_full")],
        _ => &[],
    }
}

/// What a person typed, parted from its unit: the number to go on typing in, and which of the units stands behind it.
#[must_use]
pub fn without_unit(text: &str, units: &[Choice]) -> (String, Option<&'static str>) {
    let stripped = |unit: &'static str| {
        let number = text.strip_suffix(unit)?;
        // "20 in" is 20; what has letters of its own before the unit, as "2 fl oz", is not a number of ounces.
        let plain = !number.contains(char::is_alphabetic);
        plain.then(|| (number.strip_suffix(' ').unwrap_or(number).to_string(), Some(unit)))
    };
    units.iter().find_map(|unit| stripped(unit.word)).unwrap_or_else(|| (text.to_string(), None))
}

/// The number that was typed with a unit behind it, unless the person wrote one.
#[must_use]
pub fn with_unit(number: &str, unit: &str) -> String {
    let says_itself = number.contains(|sign: char| sign.is_alphabetic() || sign == '%');
    if number.trim().is_empty() || says_itself || unit.is_empty() {
        number.to_string()
    } else {
        format!("{number} {unit}")
    }
}

/// How a word at hand is read; any other letters as they are.
#[must_use]
pub fn read_in(at_hand: &[Choice], text: &str) -> String {
    at_hand.iter().find(|one| one.word == text).map_or_else(|| text.to_string(), |one| one.label.clone())
}

/// What letters mean: the word at hand that reads like them, or the letters themselves.
#[must_use]
pub fn meant_by(at_hand: &[Choice], typed: &str) -> String {
    let typed = typed.trim();
    at_hand
        .iter()
        .find(|one| one.label == typed)
        .map_or_else(|| typed.to_string(), |one| one.word.to_string())
}

/// A list parted from its unit, where all of it has the same.
#[must_use]
pub fn list_without_unit(text: &str, units: &[Choice]) -> (String, Option<&'static str>) {
    let parts: Vec<&str> = text.split(',').collect();
    for unit in units {
        let bare: Option<Vec<String>> = parts
            .iter()
            .map(|part| match without_unit(part, core::slice::from_ref(unit)) {
                (number, Some(_)) => Some(number),
                _ => None,
            })
            .collect();
        if let Some(bare) = bare {
            return (bare.join(","), Some(unit.word));
        }
    }
    (text.to_string(), None)
}

/// The list that was typed with a unit behind each of its numbers, once it is meant.
#[must_use]
pub fn list_with_unit(text: &str, unit: &str) -> String {
    let parts = text.split([',', ';', '\n', '\t']).map(str::trim).filter(|part| !part.is_empty());
    parts.map(|part| with_unit(part, unit)).collect::<Vec<_>>().join(", ")
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

/// The names of the fields of a step, in the order they are asked for.
#[must_use]
pub fn field_names(state: &State, step: Step) -> Vec<&'static str> {
    let kind = state.visit.as_ref().map_or("", Opened::kind);
    let names: &[&'static str] = match step {
        Step::Machine => return machine(kind),
        Step::Look => &[
            "look.tips_alike",
            "look.all_spraying",
            "look.fans_straight",
            "look.no_leaks",
            "look.no_drip_after_5_s",
            "look.gauge_back_to_zero",
            "look.strainers_clean",
            "look.boom_level",
        ],
        // An angle is asked of booms that spray the whole width: where fans are meant to overlap.
        Step::Spacing if matches!(kind, "" | "boom") => &[
            "spacing.tape_marks",
            "spacing.marks",
            "spacing.cannot_move",
            "sprayer.fan_angle",
            "setting.boom_height",
        ],
        Step::Spacing => &["spacing.tape_marks", "spacing.marks", "spacing.cannot_move"],
        Step::Drive => &["drive.course", "drive.dash"],
        Step::Catch => &["catch.cup_marks", "catch.time", "catch.cup_holds", "catch.limit"],
        Step::Rate => &["target.rate", "target.within"],
        Step::Tank => &["job.area", "job.area_a_year"],
        Step::Repeat => &[
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
        Step::HandOver => &["visit.date", "visit.notes"],
        Step::Safe | Step::Change => &[],
    };
    names.to_vec()
}

/// What is asked of a machine of a kind.
fn machine(kind: &str) -> Vec<&'static str> {
    let mut names = vec!["visit.sprayer", "visit.farm", "sprayer.kind"];
    names.extend(match kind {
        "band" => &["sprayer.sections", "sprayer.spacing", "sprayer.band_width"][..],
        "directed" => &["sprayer.sections", "sprayer.row_spacing", "sprayer.tips_per_row"],
        "boomless" => &["sprayer.tips", "sprayer.effective_swath"],
        "hand" => &["sprayer.spray_width"],
        _ => &["sprayer.sections", "sprayer.spacing", "sprayer.mounting"],
    });
    names.extend(["sprayer.tip_size", "sprayer.tank", "sprayer.held_by", "visit.operator", "visit.with"]);
    names
}

/// The fields of a step, in the order they are asked for.
#[must_use]
pub fn fields_of(state: &State, visit: &Opened, step: Step) -> Vec<FieldShown> {
    field_names(state, step).into_iter().map(|name| field(state, visit, name)).collect()
}
