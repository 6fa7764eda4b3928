//! The boom: swath, and the height for an overlap of fans.

use calibration::rate::swath_of_boom;
use sprayer::{BoomLayout, Mounting, footprint, height_for_overlap};
use units::{Angle, Length};

use crate::givens::{Found, Givens};
use crate::{Calculation, Outcome};

pub const CALCULATIONS: &[(&str, Calculation)] = &[("swath", swath), ("height_for_overlap", height)];

fn swath(given: &Givens) -> Outcome<Found> {
    let (tips, spacing): (u32, Length) = (given.text("tips")?.parse()?, given.get("spacing")?);
    let boom = BoomLayout::new(&[tips], spacing, Mounting::Rear)?;
    Found::by_all(&[swath_of_boom(tips, spacing)?, boom.swath()])
}

/// The height, which must give the fan's width back.
fn height(given: &Givens) -> Outcome<Found> {
    let (angle, spacing): (Angle, Length) = (given.get("angle")?, given.get("spacing")?);
    let overlap = given.share("overlap")?;
    let height = height_for_overlap(angle, spacing, overlap)?;
    let width = footprint(angle, height)?;
    if (width.ratio_to(spacing) - 1.0 - overlap).abs() > 1e-12 {
        return Err(format!("a fan of {angle:?} is {width:?} wide at {height:?}").into());
    }
    Found::of(height)
}
