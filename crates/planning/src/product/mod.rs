//! A product and its rate as written, and how much of it an area or a tank takes.

mod amount;
mod error;
mod named;
mod ounce;
mod parse;
mod rate;
mod rate_error;
mod strength;

pub use amount::{ProductAmount, ProductPerArea, RangedAmount, RangedPerArea};
pub use error::ProductError;
pub use named::Product;
pub use rate::{Basis, InMix, ProductRate, WrittenRate};
pub use rate_error::RateError;
pub use strength::{Ingredient, IngredientKind, Strength};
