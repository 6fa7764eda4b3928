//! What is wanted, what the labels say, what goes in the tank, the work ahead.

use planning::Product;
use units::{Area, AsWritten, Density, VolumePerArea};

/// What is wanted.
#[derive(Clone, Debug, PartialEq)]
pub struct TargetFacts {
    /// The intended rate.
    pub rate: AsWritten<VolumePerArea>,
    /// How far off it may be, where another than 5 % is wanted.
    pub within: Option<f64>,
    /// The rate the tank was mixed for, where it has been mixed already.
    pub mixed_for: Option<AsWritten<VolumePerArea>>,
    /// The carrier's density, where it is not water.
    pub carrier: Option<AsWritten<Density>>,
}

/// What the label allows.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct LabelFacts {
    /// The least product, as written.
    pub least: Option<String>,
    /// The most product, as written.
    pub most: Option<String>,
    /// The least carrier.
    pub least_carrier: Option<AsWritten<VolumePerArea>>,
}

/// A product that goes in the tank.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedProduct {
    /// Its name and rate.
    pub product: Product,
    /// What its label allows.
    pub label: LabelFacts,
    /// Its price, as written.
    pub price: Option<String>,
}

/// The work ahead.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct JobFacts {
    /// The area to spray.
    pub area: Option<AsWritten<Area>>,
    /// The acres sprayed in a year, for what the error costs.
    pub area_a_year: Option<AsWritten<Area>>,
}
