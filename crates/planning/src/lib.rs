//! What goes in the tank, whether it keeps to the label, what to change, and what an error costs.
//!
//! Everything is worked out from quantities and texts that the caller hands in. A label is never relaxed:
//! where several limits are given, the stricter one counts. The order of adding and what may be mixed with
//! what are for the label; nothing here advises on them.

mod carrier;
mod change;
mod conditioning;
mod cost;
mod count;
mod given;
mod load;
mod nutrient;
mod product;
mod small_area;
mod target;
mod text;

pub use carrier::water_stands_in;
pub use change::{
    Change, ChangeError, RateAtSpeed, SMALL_CORRECTION, Setup, SpeedChange, TipNeeded, TipRange,
    change_to_hit, pressure_for_rate, pressure_to_hold, rate_at_speed, rate_error_from_speed_error,
    speed_for_rate,
};
pub use conditioning::{
    Conditioner, ConditioningError, PartsPerMillion, WaterTest, ammonium_sulfate_for_hard_water,
};
pub use cost::{
    CostError, CostOfError, CostPerArea, Money, MoneyError, MoneyRange, Price, PriceFor, Shares,
    cost_of_error, cost_of_overlap,
};
pub use load::{
    Job, Load, LoadError, LoadProduct, Loads, MOST_LOADS, Measure, SMALL_LAST_LOAD, TankAtRate, TankProduct,
    loads, measure, tank_at_rate,
};
pub use nutrient::{NutrientError, carrier_for_nutrient, nutrient_at_rate, nutrient_in_volume};
pub use product::{
    Basis, InMix, Ingredient, IngredientKind, Product, ProductAmount, ProductError, ProductPerArea,
    ProductRate, RangedAmount, RangedPerArea, RateError, Strength, WrittenRate,
};
pub use small_area::{SmallAreaError, amount_on, percent_by_weight, percent_solution, scaled_to_area};
pub use target::{
    Deviation, Judged, ProductTarget, PutDown, RateLimit, Target, TargetError, judge, put_down,
};
