//! What is wanted and what goes in the tank, in the file.

use planning::{Price, Product, WrittenRate};

use super::mistake::{PRODUCT_NAME, PRODUCT_RATE, TARGET_RATE};
use super::section::Part;
use crate::record::{JobFacts, LabelFacts, PlannedProduct, TargetFacts};

/// Reads `[target]`.
pub(super) fn target(part: &Part<'_>) -> Option<TargetFacts> {
    if !part.has("rate") {
        part.missing("rate", TARGET_RATE);
    }
    Some(TargetFacts {
        rate: part.positive("rate")?,
        within: part.share("within"),
        mixed_for: part.positive("mixed_for"),
        carrier: part.positive("carrier_density"),
    })
}

/// Reads one `[[product]]`.
pub(super) fn product(part: &Part<'_>) -> Option<PlannedProduct> {
    let (name, rate) = (part.text("name"), rate(part, "rate"));
    if !part.has("name") {
        part.missing("name", PRODUCT_NAME);
    }
    part.refuse_empty("name", PRODUCT_NAME);
    if !part.has("rate") {
        part.missing("rate", PRODUCT_RATE);
    }
    let label = LabelFacts {
        least: rate_text(part, "label_least"),
        most: rate_text(part, "label_most"),
        least_carrier: part.positive("label_least_carrier"),
    };
    let product = part.accept("name", Product::new(&name?, rate?))?;
    Some(PlannedProduct { product, label, price: price(part) })
}

/// A price as it stands, once it reads as one: a slip shall not wait for the day when the cost is asked for.
fn price(part: &Part<'_>) -> Option<String> {
    let text = part.text("price")?;
    part.accept("price", Price::parse(&text))?;
    Some(text)
}

fn rate(part: &Part<'_>, name: &str) -> Option<WrittenRate> {
    let value = part.value(name)?;
    let text = part.text_of(name, value)?;
    part.known(name, value, WrittenRate::parse(&text))
}

fn rate_text(part: &Part<'_>, name: &str) -> Option<String> {
    rate(part, name).map(|rate| rate.text().to_string())
}

/// Reads `[job]`.
pub(super) fn job(part: &Part<'_>) -> JobFacts {
    JobFacts { area: part.positive("area"), area_a_year: part.positive("area_a_year") }
}
