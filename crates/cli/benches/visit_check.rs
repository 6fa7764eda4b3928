//! A whole visit: from the text of its file to everything that follows from it.
#![allow(clippy::print_stdout, reason = "a bench prints its figures")]

mod timing;

use std::error::Error;
use std::hint::black_box;

use timing::case;
use units::UnitSystem;
use visit::findings::Outcome;

const VISIT: &str = include_str!("../../../demo/willow-bend.toml");

fn check(text: &str) -> Result<Outcome, Box<dyn Error>> {
    let visit = visit::file::read(text.as_bytes())?;
    Ok(visit::findings::findings(&visit, UnitSystem::Us)?)
}

fn main() -> Result<(), Box<dyn Error>> {
    // The demo visit has readings for every step; one without its rate or tank would be half the work.
    let outcome = check(VISIT)?;
    if outcome.rate.is_none() || outcome.tank.is_none() || outcome.spacing.is_none() {
        return Err("the visit lacks a step".into());
    }
    case("visit_check", 1, || check(black_box(VISIT)));
    Ok(())
}
