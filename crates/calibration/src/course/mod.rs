//! Courses to drive so that what the cup shows is the rate, or the rate by one round factor.
//!
//! Each course knows its area, its cup unit and its divisor, and turns a catch into a rate itself, so that the divisor
//! of one course is never used with the length of another.

mod error;
mod findings;

pub use error::CourseError;

use units::{Amount, Area, Arg, Kind, Length, Quantity, Volume, VolumePerArea, Working};

/// Which course.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CourseKind {
    /// 1/128 acre for one tip: its fluid ounces are gallons per acre.
    OneTip,
    /// 1/128 acre for the whole boom: the sum of all catches in fluid ounces is gallons per acre.
    WholeBoom,
    /// 1/12.8 acre for a boomless cluster: its fluid ounces divided by ten are gallons per acre.
    Boomless,
    /// 1/8 acre: pints are gallons per acre.
    Pints,
    /// A round number of square metres: millilitres times a round factor are litres per hectare.
    Metric,
}

/// In which unit the cup is read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CupUnit {
    /// Fluid ounces, for gallons per acre.
    FluidOunce,
    /// Pints, for gallons per acre.
    Pint,
    /// Millilitres, for litres per hectare.
    Millilitre,
}

/// A course for a width.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Course {
    kind: CourseKind,
    width: Length,
    area: Area,
}

/// A fluid ounce is 1/128 gallon, so on 1/128 acre fluid ounces are gallons per acre.
/// Source: Ohio State Univ. Extension, FABE-520, Boom Sprayer Calibration (2016).
const ONE_128TH: Area = Area::acres(1.0 / 128.0);
/// Ten times as much: 3,403.125 sq ft. Source: LSU AgCenter, Calibrating a cluster nozzle/Boomless sprayer, which takes
/// 3,400 sq ft; the round figure makes a rate 0.09 % too high.
const TEN_128THS: Area = Area::acres(10.0 / 128.0);
/// A pint is 1/8 gallon, so on 1/8 acre pints are gallons per acre.
/// Source: Clemson Univ., Weeds programme, Sprayer/spreader calibration guide.
const EIGHTH: Area = Area::acres(1.0 / 8.0);
/// A metric course is at least so long. Our assumption: 20 s at 11 km/h.
const METRIC_LENGTH: Length = Length::metres(60.0);
/// The rounded areas of metric courses, in square metres: the ones, twos and fives. Our choice.
const ROUND_AREAS: [f64; 10] = [10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0, 5000.0, 10_000.0];
/// Millilitres on a square metre are ten litres on a hectare: 10,000 sq m ÷ 1000 mL. By definition of the units.
const LITRES_PER_HECTARE: f64 = 10.0;

/// The narrowest width taken, 1 in: a course for less is a mile long. Our own limit.
const NARROWEST: Length = Length::inches(1.0);
/// The widest width taken, 200 ft: no sprayer is wider. Our own limit.
const WIDEST: Length = Length::feet(200.0);
/// Slack for "at least 60 m" in binary arithmetic. Our own choice.
const LENGTH_SLACK: f64 = 1e-9;

impl Course {
    /// Returns the course of a kind for the width that the catch serves.
    ///
    /// *Units*: `width` is one tip's spacing, band or row share; the whole boom's tips times spacing; a cluster's
    /// effective swath.
    ///
    /// *Assumptions*: what is caught lasted exactly as long as the drive. A metric course takes the smallest area of
    /// 10, 20, 50, 100 … sq m for which it is at least 60 m long.
    ///
    /// *Errors*: [`CourseError`]: a width of nothing, below nothing or not a number, under 1 in or over 200 ft.
    ///
    /// *Source*: Ohio State Univ. Extension, FABE-520 (2016); Utah State Univ. Cooperative Extension,
    /// Horticulture/Vegetables/2014-03 (whole boom); LSU AgCenter (boomless); Clemson Univ. (1/8 acre).
    ///
    /// *Example*: 20 in: 43,560 sq ft ÷ 128 ÷ (20/12 ft) = 204.1875 ft. 50 cm: 50 sq m ÷ 0.5 m = 100 m.
    pub fn new(kind: CourseKind, width: Length) -> Result<Self, CourseError> {
        if !width.is_positive() || width < NARROWEST || width > WIDEST {
            return Err(CourseError::Width { given: width });
        }
        let area = match kind {
            CourseKind::OneTip | CourseKind::WholeBoom => ONE_128TH,
            CourseKind::Boomless => TEN_128THS,
            CourseKind::Pints => EIGHTH,
            CourseKind::Metric => metric_area(width),
        };
        Ok(Self { kind, width, area })
    }

    /// Which course it is.
    #[must_use]
    pub const fn kind(&self) -> CourseKind {
        self.kind
    }

    /// The width it is for.
    #[must_use]
    pub const fn width(&self) -> Length {
        self.width
    }

    /// The area driven over.
    #[must_use]
    pub const fn area(&self) -> Area {
        self.area
    }

    /// The length to drive.
    #[must_use]
    pub fn length(&self) -> Length {
        self.area / self.width
    }

    /// The unit to read the cup in.
    #[must_use]
    pub const fn cup_unit(&self) -> CupUnit {
        match self.kind {
            CourseKind::OneTip | CourseKind::WholeBoom | CourseKind::Boomless => CupUnit::FluidOunce,
            CourseKind::Pints => CupUnit::Pint,
            CourseKind::Metric => CupUnit::Millilitre,
        }
    }

    /// The number (a factor) that turns cup units into gal/ac, or into L/ha on a metric course.
    #[must_use]
    pub fn factor(&self) -> f64 {
        match self.kind {
            CourseKind::OneTip | CourseKind::WholeBoom | CourseKind::Pints => 1.0,
            CourseKind::Boomless => 0.1,
            CourseKind::Metric => LITRES_PER_HECTARE / self.area.as_square_metres(),
        }
    }

    /// Returns the rate from what was caught while this course was driven.
    ///
    /// *Units*: any volume; on the whole-boom course the sum of all tips.
    ///
    /// *Assumptions*: the course was driven at its full length, and the catch lasted as long.
    ///
    /// *Source*: the definition of the rate: volume over area.
    ///
    /// *Example*: 14 fl oz on the one-tip course are 14 gal/ac; 140 fl oz on the boomless one as well.
    #[must_use]
    pub fn rate(&self, caught: Volume) -> VolumePerArea {
        caught / self.area
    }

    /// The working of the length.
    #[must_use]
    pub fn working(&self) -> Working {
        let source = match self.kind {
            CourseKind::OneTip => "Ohio State Univ. Extension, FABE-520, Boom Sprayer Calibration (2016)",
            CourseKind::WholeBoom => {
                "Utah State Univ. Cooperative Extension, Horticulture/Vegetables/2014-03 (2014)"
            }
            CourseKind::Boomless => {
                "LSU AgCenter, Calibrating a cluster nozzle/Boomless sprayer (there rounded to 3,400 sq ft)"
            }
            CourseKind::Pints => "Clemson Univ., Weeds programme, Sprayer/spreader calibration guide",
            CourseKind::Metric => "the definition of the rate; the area is our choice",
        };
        Working::new("course", "length = area ÷ width", source)
            .figure("area", Arg::Amount(Amount::new(self.area, Kind::Area)))
            .figure("width", Arg::Amount(Amount::new(self.width, Kind::Width)))
            .result(Arg::Amount(Amount::new(self.length(), Kind::Length)))
    }
}

/// The smallest round area that makes a course long enough.
fn metric_area(width: Length) -> Area {
    let enough = |area: &Area| *area / width >= METRIC_LENGTH * (1.0 - LENGTH_SLACK);
    // The largest is enough for any width taken.
    ROUND_AREAS.iter().map(|area| Area::square_metres(*area)).find(enough).unwrap_or(Area::hectares(1.0))
}
