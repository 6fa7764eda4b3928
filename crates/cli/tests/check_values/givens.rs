//! What a row gives, read by the program's own parsers, and what a calculation finds.

use std::cell::RefCell;
use std::collections::BTreeMap;

use planning::{InMix, Money, ProductAmount, ProductPerArea};
use units::{Dimension, Quantity};

use crate::Outcome;
use crate::table::Measures;

/// The givens of a row by name, with note of those nobody has asked for.
pub struct Givens {
    texts: BTreeMap<&'static str, &'static str>,
    unused: RefCell<Vec<&'static str>>,
}

impl Givens {
    /// Reads `width=18 in; speed=4 mph`.
    pub fn read(text: &'static str) -> Outcome<Self> {
        let mut texts = BTreeMap::new();
        for part in text.split(';') {
            let (name, value) = part.trim().split_once('=').ok_or_else(|| format!("no value in {part}"))?;
            texts.insert(name, value);
        }
        let unused = RefCell::new(texts.keys().copied().collect());
        Ok(Self { texts, unused })
    }

    /// A given as written.
    pub fn text(&self, name: &str) -> Outcome<&'static str> {
        self.unused.borrow_mut().retain(|other| *other != name);
        self.texts.get(name).copied().ok_or_else(|| format!("no {name} is given").into())
    }

    /// Whether the row gives it.
    pub fn has(&self, name: &str) -> bool {
        self.texts.contains_key(name)
    }

    /// A given as a quantity.
    pub fn get<Q: Quantity>(&self, name: &str) -> Outcome<Q> {
        let text = self.text(name)?;
        Ok(Q::parse(text).map_err(|error| format!("{name}: {error}"))?)
    }

    /// A percentage as a share of one; it may be below nothing, as an error of speed is.
    pub fn share(&self, name: &str) -> Outcome<f64> {
        Ok(units::signed_quantity(self.text(name)?, Dimension::Ratio)?.si())
    }

    /// The givens nobody has asked for.
    pub fn unused(&self) -> Vec<&'static str> {
        self.unused.borrow().clone()
    }
}

/// What a calculation finds, in SI or in money.
#[derive(Clone, Copy, Debug)]
pub struct Found {
    pub value: f64,
    pub measures: Measures,
}

impl Found {
    /// A quantity.
    pub fn of<Q: Quantity>(quantity: Q) -> Outcome<Self> {
        Ok(Self { value: quantity.si(), measures: Measures::Quantity(Q::DIMENSION) })
    }

    /// A quantity that several functions of ours find; they must agree.
    pub fn by_all<Q: Quantity>(ways: &[Q]) -> Outcome<Self> {
        let first = ways.first().ok_or("no way was tried")?;
        for (place, way) in ways.iter().enumerate() {
            let off = (way.si() - first.si()).abs();
            if off.is_nan() || off > WAYS_AGREE * first.si().abs() {
                return Err(format!("way {} finds {way:?}, the first {first:?}", place + 1).into());
            }
        }
        Self::of(*first)
    }

    /// A number without a unit.
    pub fn ratio(value: f64) -> Outcome<Self> {
        Ok(Self { value, measures: Measures::Quantity(Dimension::Ratio) })
    }

    /// Product in all.
    pub fn amount(amount: ProductAmount) -> Outcome<Self> {
        match amount {
            ProductAmount::Liquid(volume) => Self::of(volume),
            ProductAmount::Dry(mass) => Self::of(mass),
        }
    }

    /// Product on an area.
    pub fn per_area(rate: ProductPerArea) -> Outcome<Self> {
        match rate {
            ProductPerArea::Liquid(rate) => Self::of(rate),
            ProductPerArea::Dry(rate) => Self::of(rate),
        }
    }

    /// Product in a volume of mix.
    pub fn in_mix(strength: InMix) -> Outcome<Self> {
        match strength {
            InMix::Liquid { share } => Self::ratio(share),
            InMix::Dry(density) => Self::of(density),
        }
    }

    /// Money, in all or on an acre.
    pub fn money(money: &Money, measures: Measures) -> Outcome<Self> {
        Ok(Self { value: money.amount(), measures })
    }
}

/// Functions that say the same by other ways agree to the last few bits.
const WAYS_AGREE: f64 = 1e-12;

/// The value at which a verdict turns over, between one that it holds for and one that it does not.
pub fn turning_point(holds: f64, does_not: f64, verdict: impl Fn(f64) -> Outcome<bool>) -> Outcome<f64> {
    let (mut inside, mut outside) = (holds, does_not);
    if !verdict(inside)? || verdict(outside)? {
        return Err("the verdict does not turn over between these".into());
    }
    // Sixty halvings go below the last bit of any start.
    for _ in 0..60 {
        let middle = f64::midpoint(inside, outside);
        if verdict(middle)? {
            inside = middle;
        } else {
            outside = middle;
        }
    }
    Ok(inside)
}
