//! Reading a boom's file, with every mistake pointed at.

use sprayer::plumbing::{Liquid, Pipe};
use toml::Spanned;
use toml::de::DeValue;
use units::{Arg, AsWritten, Density, Length, Quantity};

use super::{Boom, fields, section, supply};
use crate::file::{self, FileErrors, Mistake, Part, Wanted};

/// Returns the boom that a file tells of.
///
/// *Errors*: all of them at once, each with its line and column, what was given and what would do.
pub fn read(bytes: &[u8]) -> Result<Boom, FileErrors> {
    // What could not be read has been noted as a mistake, and then nothing is returned.
    file::parts(bytes, fields::names, boom_of).map(|boom| boom.unwrap_or_else(nothing))
}

fn boom_of(whole: &Part<'_>) -> Option<Boom> {
    let liquid = whole.part("liquid").map_or_else(|| Some(Liquid::default()), |part| liquid(&part));
    let supply = match whole.part("supply") {
        Some(part) => supply::supply(&part),
        None => {
            if !whole.has("supply") {
                whole.missing("supply", SUPPLY_PART);
            }
            None
        }
    };
    let parts = whole.parts("section");
    if !whole.has("section") {
        whole.missing("section", SECTION_PART);
    } else {
        whole.refuse_empty("section", SECTION_PART);
    }
    let sections: Vec<_> = parts.iter().map(section::section).collect();
    let tips: usize = sections.iter().flatten().map(|section| section.tips.len()).sum();
    if tips > MOST_TIPS {
        let many = Mistake::value("too_many_tips", "{tips} tips are more than a boom has")
            .would_do("at most {most} tips")
            .count("tips", tips)
            .count("most", MOST_TIPS);
        whole.fault("section", many);
    }
    let (supply, to_manifold) = supply?;
    Some(Boom {
        liquid: liquid?,
        supply,
        to_manifold,
        sections: sections.into_iter().collect::<Option<_>>()?,
    })
}

/// A boom without anything, for the type's sake: a file with a mistake in it is refused before this is seen.
fn nothing() -> Boom {
    let supply = super::Supply::Pressure(units::Pressure::ZERO);
    Boom { liquid: Liquid::default(), supply, to_manifold: None, sections: Vec::new() }
}

/// The most tips of a boom. Our own limit: many times the widest.
const MOST_TIPS: usize = 1000;

const SUPPLY_PART: Wanted = ("wanted_supply_part", "what feeds the boom, under a line [supply]");
const SECTION_PART: Wanted = ("wanted_section_part", "the boom's sections, each under a line [[section]]");

fn liquid(part: &Part<'_>) -> Option<Liquid> {
    let water = Liquid::default();
    let density = optional(part, "density", water.density, |part, name| {
        part.positive::<Density>(name).map(|density| density.value().si())
    });
    let viscosity = optional(part, "viscosity", water.viscosity, viscosity);
    Some(Liquid { density: density?, viscosity: viscosity?, ..water })
}

/// Square millimetres a second, which are centistokes, in square metres a second.
const CENTISTOKES: f64 = 1e-6; // exact by the SI prefix
/// The thinnest and the thickest that flows through tips as these sums have it, square metres a second. Our own limit: a tenth
/// of water, and a hundred times water; thicker liquids change what an orifice lets through.
const VISCOSITIES: (f64, f64) = (1e-7, 1e-4);

fn viscosity(part: &Part<'_>, name: &str) -> Option<f64> {
    let value = part.value(name)?;
    let text = part.text_of(name, value)?;
    let text = text.trim();
    let units = ["cSt", "mm2/s", "mm²/s"];
    let number = units.iter().find_map(|unit| text.strip_suffix(unit));
    let viscosity =
        number.and_then(|number| number.trim().parse::<f64>().ok()).map(|number| number * CENTISTOKES);
    let sound = viscosity.filter(|found| (VISCOSITIES.0..=VISCOSITIES.1).contains(found));
    if sound.is_none() {
        let mistake =
            Mistake::new("file_viscosity", "\"{given}\" is no kinematic viscosity that these sums are for")
                .would_do("write it as \"1.3 cSt\"; from 0.1 to 100 cSt will do, and water has about 1");
        part.push_value(name, value, mistake.text("given", text));
    }
    sound
}

/// A field that may be left out, and then is this.
pub(super) fn optional<T>(
    part: &Part<'_>,
    name: &str,
    otherwise: T,
    read: impl FnOnce(&Part<'_>, &str) -> Option<T>,
) -> Option<T> {
    if part.has(name) { read(part, name) } else { Some(otherwise) }
}

/// A field without which the part means nothing.
pub(super) fn needed<T>(
    part: &Part<'_>,
    name: &str,
    wanted: Wanted,
    read: impl FnOnce(&Part<'_>, &str) -> Option<T>,
) -> Option<T> {
    if !part.has(name) {
        part.missing(name, wanted);
        return None;
    }
    read(part, name)
}

/// Metres, of a length above nothing.
pub(super) fn metres(part: &Part<'_>, name: &str) -> Option<f64> {
    part.positive::<Length>(name).map(|length| length.value().si())
}

/// Metres, of a length that may be nothing.
pub(super) fn metres_or_none(part: &Part<'_>, name: &str) -> Option<f64> {
    part.quantity::<Length>(name).map(|length| length.value().si())
}

/// The narrowest and the widest bore that is taken, metres. Our own limits: a drop's capillary, and a lorry's suction hose.
const BORES: (f64, f64) = (0.001, 0.3);

/// An inner diameter in metres.
pub(super) fn bore(part: &Part<'_>, name: &str) -> Option<f64> {
    let written: AsWritten<Length> = part.positive(name)?;
    let bore = written.value().si();
    if (BORES.0..=BORES.1).contains(&bore) {
        return Some(bore);
    }
    let mistake = Mistake::value("bore", "\"{given}\" is no bore of a hose")
        .would_do("give its inner diameter, from 1 mm to 300 mm");
    part.fault(name, mistake.text("given", written.text()));
    None
}

/// The largest loss of fittings that is taken. Our own limit: more lets nothing through.
const MOST_LOSS: f64 = 1e6;

/// A loss of fittings, K.
pub(super) fn minor_loss(part: &Part<'_>, name: &str) -> Option<f64> {
    let value = part.value(name)?;
    let text = part.text_of(name, value)?;
    let found = text.trim().parse::<f64>().ok().filter(|loss| (0.0..=MOST_LOSS).contains(loss));
    if found.is_none() {
        let mistake = Mistake::new("file_minor_loss", "\"{given}\" is no loss coefficient K")
            .would_do("write a number without a unit from 0 up, as {name} = 2");
        part.push_value(name, value, mistake.text("given", text.trim()).text("name", name));
    }
    found
}

/// The roughness of smooth hose, metres. Source: 0.0015 mm, drawn tubing and plastic, Moody (1944).
const SMOOTH: f64 = 1.5e-6;

/// The roughness of a part's hoses, metres.
pub(super) fn roughness(part: &Part<'_>) -> Option<f64> {
    optional(part, "roughness", SMOOTH, metres_or_none)
}

/// A hose out of its fields; without length or loss there is none of it.
pub(super) fn pipe(length: f64, bore: f64, minor_loss: f64, roughness: f64) -> Option<Pipe> {
    (length > 0.0 || minor_loss > 0.0).then_some(Pipe { length, bore, roughness, minor_loss })
}

/// A height above the gauge, or with a minus below it, in metres.
pub(super) fn height(part: &Part<'_>, name: &str, value: &Spanned<DeValue<'_>>) -> Option<Length> {
    let text = part.text_of(name, value)?;
    let text = text.trim();
    let (sign, rest) = match text.strip_prefix('-').or_else(|| text.strip_prefix('−')) {
        Some(rest) => (-1.0, rest),
        None => (1.0, text),
    };
    let height = part.known(name, value, AsWritten::<Length>::parse(rest.trim()))?.value();
    if height.si() > HIGHEST {
        let mistake = Mistake::value("height", "no part of a boom is \"{given}\" above or below its gauge")
            .would_do("give how much higher it is, as \"0.5 m\", or lower, as \"-0.5 m\"");
        part.push_value(name, value, mistake.with("given", Arg::Text(text.to_string())));
        return None;
    }
    Some(height * sign)
}

/// The most that a part of a boom is above or below its gauge, metres. Our own limit.
const HIGHEST: f64 = 20.0;
