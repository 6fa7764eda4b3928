//! What an error costs: the grower's own prices and ground, over and under kept apart.

mod error;
mod money;
mod of_error;
mod price;

pub use error::{CostError, MoneyError};
pub use money::Money;
pub use of_error::{CostOfError, MoneyRange, Shares, cost_of_error, cost_of_overlap};
pub use price::{CostPerArea, Price, PriceFor};
