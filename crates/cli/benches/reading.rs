//! Reading what people write: one quantity, and a whole visit file.
#![allow(clippy::print_stdout, reason = "a bench prints its figures")]

mod timing;

use std::error::Error;
use std::hint::black_box;

use timing::case;
use units::{Length, Quantity};

const QUANTITY: &str = "16 ft 8 in";
const VISIT: &str = include_str!("../../../demo/willow-bend.toml");

fn main() -> Result<(), Box<dyn Error>> {
    // What fails is soon done; a bench of it would look fast.
    Length::parse(QUANTITY)?;
    visit::file::read(VISIT.as_bytes())?;
    case("parse_quantity", 1, || Length::parse(black_box(QUANTITY)));
    case("parse_visit_file", 1, || visit::file::read(black_box(VISIT.as_bytes())));
    Ok(())
}
