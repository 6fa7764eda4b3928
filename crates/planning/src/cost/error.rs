//! What can be wrong with money, prices and costs, with what was given and what would do.

use units::{Area, Arg, Args, Coded, Kind, QuantityError, UnitSystem, VolumePerArea};

use crate::given::{arg, text};

/// Why a text is not money or a price.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum MoneyError {
    /// Nothing was written.
    #[error("no money was given")]
    Empty,
    /// A text longer than any price.
    #[error("a text of {length} letters is too long for money (at most 60)")]
    TooLong {
        /// How many letters were given.
        length: usize,
    },
    /// A number without the sign of a money.
    #[error("\"{given}\" does not say in which money")]
    NoSymbol {
        /// The text as given.
        given: String,
    },
    /// Not a number with one sign.
    #[error("\"{given}\" is not money")]
    NotMoney {
        /// The text as given.
        given: String,
    },
    /// Less than nothing.
    #[error("\"{given}\" is less than nothing, which a price cannot be")]
    Negative {
        /// The text as given.
        given: String,
    },
    /// The number cannot be read.
    #[error("{0}")]
    Number(QuantityError),
    /// A price that does not say what for.
    #[error("\"{given}\" does not say for how much ground, liquid or weight")]
    NoGoods {
        /// The text as given.
        given: String,
    },
    /// "oz" alone, liquid or weight.
    #[error("\"oz\" in \"{given}\" can be an ounce of liquid or of weight")]
    WhichOunce {
        /// The text as given.
        given: String,
    },
    /// A price by the gallon or pound where one by area is needed.
    #[error("\"{given}\" is not a cost on an area")]
    NotByArea {
        /// The text as given.
        given: String,
    },
    /// Two different moneys.
    #[error("\"{one}\" and \"{other}\" are different moneys")]
    OtherSymbol {
        /// The first sign.
        one: String,
        /// The second sign.
        other: String,
    },
}

impl Coded for MoneyError {
    fn code(&self) -> &'static str {
        match self {
            Self::Empty => "money_empty",
            Self::TooLong { .. } => "money_too_long",
            Self::NoSymbol { .. } => "money_no_symbol",
            Self::NotMoney { .. } => "money_not_money",
            Self::Negative { .. } => "money_negative",
            Self::Number(error) => error.code(),
            Self::NoGoods { .. } => "price_no_goods",
            Self::WhichOunce { .. } => "price_which_ounce",
            Self::NotByArea { .. } => "price_not_by_area",
            Self::OtherSymbol { .. } => "money_other_symbol",
        }
    }

    fn args(&self) -> Args {
        match self {
            Self::Empty => Args::new(),
            Self::TooLong { length } => {
                Args::new().with("length", Arg::Count(u32::try_from(*length).unwrap_or(u32::MAX)))
            }
            Self::NoSymbol { given }
            | Self::NotMoney { given }
            | Self::Negative { given }
            | Self::NoGoods { given }
            | Self::WhichOunce { given }
            | Self::NotByArea { given } => Args::new().with("given", Arg::Text(given.clone())),
            Self::Number(error) => error.args(),
            Self::OtherSymbol { one, other } => {
                Args::new().with("one", Arg::Text(one.clone())).with("other", Arg::Text(other.clone()))
            }
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NoSymbol { given } => {
                return Some(format!("write ${given} or {given} EUR, with the sign of your money"));
            }
            Self::Number(error) => return error.hint(),
            Self::NoGoods { .. } | Self::TooLong { .. } => {
                "a price is written as $25/ac, 18.50 $/gal, $300/2.5 gal or 4 $/lb"
            }
            Self::WhichOunce { .. } => "write fl oz for liquid or oz wt for weight",
            Self::NotByArea { .. } => "write the cost as $25/ac or €60/ha",
            Self::OtherSymbol { .. } => "give all prices in one money",
            Self::Empty | Self::NotMoney { .. } | Self::Negative { .. } => {
                "money is written as $25, 25 $ or 18.50 EUR"
            }
        };
        Some(hint.to_string())
    }
}

/// Why a cost cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum CostError {
    /// A price by volume for a product by weight, or the reverse.
    #[error("the price \"{price}\" does not go with how the product is measured")]
    OtherMeasure {
        /// The price as written.
        price: String,
    },
    /// A price by area where the cost of an amount is asked.
    #[error("the price \"{price}\" is for ground, not for an amount of product")]
    PriceByArea {
        /// The price as written.
        price: String,
    },
    /// No ground.
    #[error("an area of {} costs nothing; it must be more than 0", text(.area, Kind::Area))]
    NoArea {
        /// The area as given.
        area: Area,
    },
    /// A rate of nothing, or a range that does not hold it.
    #[error("a rate of {} cannot be; it must be more than 0 and lie in its own range", text(.rate, Kind::Rate))]
    NoRate {
        /// The rate as given.
        rate: VolumePerArea,
    },
    /// A tip that gives less than nothing, or not a number.
    #[error("a tip that is {} off cannot be; −100 % (plugged) and up would do", Arg::Deviation(*.percent).text(UnitSystem::Us))]
    Tip {
        /// The deviation as given, in percent.
        percent: f64,
    },
    /// A share of overlap that is none.
    #[error("an overlap of {} cannot be; 0 and up would do", Arg::Percent(*.percent).text(UnitSystem::Us))]
    Overlap {
        /// The overlap as given, in percent.
        percent: f64,
    },
}

impl Coded for CostError {
    fn code(&self) -> &'static str {
        match self {
            Self::OtherMeasure { .. } => "cost_other_measure",
            Self::PriceByArea { .. } => "cost_price_by_area",
            Self::NoArea { .. } => "cost_no_area",
            Self::NoRate { .. } => "cost_no_rate",
            Self::Tip { .. } => "cost_tip",
            Self::Overlap { .. } => "cost_overlap",
        }
    }

    fn args(&self) -> Args {
        let (name, given) = match self {
            Self::OtherMeasure { price } | Self::PriceByArea { price } => ("price", Arg::Text(price.clone())),
            Self::NoArea { area } => ("area", arg(area, Kind::Area)),
            Self::NoRate { rate } => ("rate", arg(rate, Kind::Rate)),
            Self::Tip { percent } => ("percent", Arg::Deviation(*percent)),
            Self::Overlap { percent } => ("percent", Arg::Percent(*percent)),
        };
        Args::new().with(name, given)
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::OtherMeasure { .. } => {
                "give a price by the gallon or litre for a liquid, by the pound or kilogram for a dry product"
            }
            Self::PriceByArea { .. } => "give a price as 18.50 $/gal or 4 $/lb",
            Self::NoArea { .. } => "give the ground as 25 ac or 10 ha",
            Self::NoRate { .. } => "give a rate as 20 gal/ac or 190 L/ha",
            Self::Tip { .. } => "give how far each tip is from the mean, in percent",
            Self::Overlap { .. } => "give the overlap in percent of the ground",
        };
        Some(hint.to_string())
    }
}
