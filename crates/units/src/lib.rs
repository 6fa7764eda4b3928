//! The ground floor: quantities in SI, exact factors, and what people write on a tailgate.
//!
//! Nothing here guesses a unit and nothing here is put into a reader's language. What a person wrote is
//! kept as written ([`Written`]); it becomes a typed quantity only when it is used.
//!
//! | quantity | type | US unit | metric unit | SI inside |
//! |---|---|---|---|---|
//! | length, course, height | [`Length`] | ft | m | m |
//! | width, spacing | [`Length`] | in | cm | m |
//! | area | [`Area`] | ac | ha | m² |
//! | volume | [`Volume`] | gal | L | m³ |
//! | mass | [`Mass`] | lb | kg | kg |
//! | time | [`Time`] | s | s | s |
//! | speed | [`Speed`] | mph | km/h | m/s |
//! | flow | [`Flow`] | gal/min | L/min | m³/s |
//! | pressure | [`Pressure`] | psi | bar | Pa |
//! | density, mass in a volume of carrier | [`Density`] | lb/gal | kg/L | kg/m³ |
//! | application rate (volume on an area) | [`VolumePerArea`] | gal/ac | L/ha | m³/m² |
//! | dry product on an area | [`MassPerArea`] | lb/ac | kg/ha | kg/m² |
//! | area covered in a time | [`WorkRate`] | ac/h | ha/h | m²/s |
//! | fan angle | [`Angle`] | deg | deg | rad |
//!
//! A volume on an area has the dimension of a length, as rain has; it is a type of its own here so that a
//! rate can never be taken for a width.

mod amount;
mod as_written;
mod coded;
mod dimension;
pub mod factor;
mod finding;
mod kind;
mod last_resort;
mod operations;
mod parse;
mod print;
mod quantity;
mod ranged;
mod reading;
mod unit;
mod verdict;
mod working;
mod written;

pub use amount::{Amount, Arg, Args, Phrase, phrases_joined};
pub use as_written::AsWritten;
pub use coded::Coded;
pub use dimension::Dimension;
pub use finding::{Finding, Weight};
pub use kind::{Kind, UnitSystem};
pub use last_resort::last_resort;
pub use parse::{
    Doubted, QuantityError, clock_time, decimal, doubted, flow_at_pressure, percent, quantity,
    signed_quantity, span,
};
pub use print::{canonical, percent_text, sensible, sensible_doubt, sensible_with_doubt, tidy_digits};
pub use quantity::{
    Angle, Area, Density, Flow, Length, Mass, MassPerArea, Pressure, Quantity, Speed, Time, Volume,
    VolumePerArea, WorkRate,
};
pub use ranged::{NORMAL_95, Ranged};
pub use reading::{Caught, Instrument, Marks, ReadPlace, Reading, ReadingError};
pub use unit::{Unit, UnitDefinition, base_units};
pub use verdict::{Boundary, Verdict};
pub use working::{Figure, Working};
pub use written::{Term, Written};
