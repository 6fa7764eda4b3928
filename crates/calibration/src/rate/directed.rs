//! The rate of several tips directed at a row.

use super::collected::Collected;
use super::error::{Input, RateError};
use super::findings::{checked, doubtful_rate};
use super::method::{Method, WidthKind};
use super::outcome::Rate;
use crate::doubt::Known;
use units::{Amount, Arg, Finding, Kind, Length};

/// What was collected of the tips that spray one row or band.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FromRow {
    /// All of them together.
    AllTips,
    /// One of so many that are alike.
    OneOf(u32),
}

impl FromRow {
    /// The part of the row's or band's width that what was collected serves.
    pub(super) fn share(self, width: &Known<Length>) -> Result<Known<Length>, RateError> {
        match self {
            Self::AllTips => Ok(width.clone()),
            Self::OneOf(tips) if (1..=1000).contains(&tips) => {
                Ok(width.clone().scaled(1.0 / f64::from(tips)))
            }
            Self::OneOf(given) => Err(RateError::Tips { given }),
        }
    }
}

/// Tips directed at a row from both sides and above.
#[derive(Clone, Debug, PartialEq)]
pub struct Directed {
    /// What one tip gave, or all tips of one row together.
    pub collected: Collected,
    /// Which of the two.
    pub from: FromRow,
    /// The distance from row to row.
    pub rows: Known<Length>,
}

impl Directed {
    /// Returns the rate: one tip's amount over its share of the row spacing, or the whole row's over all of it.
    ///
    /// *Units*: any.
    ///
    /// *Assumptions*: every row is sprayed by as many tips. With one tip collected, the row's tips are alike; where they
    /// are not (a small one above, large ones beside), collect all of them.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number; no tips.
    ///
    /// *Source*: Univ. of Missouri Extension, G1270a (width = row spacing divided by nozzles per row); Clemson Univ. and
    /// LSU AgCenter: for several nozzles on one row collect all of them.
    ///
    /// *Example*: three tips of 0.1 gal/min on 30 in rows at 3 mph (264 ft/min): 0.3 gal on 264 ft × 2.5 ft = 660 sq ft,
    /// 19.8 gal/ac.
    pub fn rate(&self) -> Result<Rate, RateError> {
        checked(Input::Rows, &self.rows, Kind::Width)?;
        let width = self.from.share(&self.rows)?;
        let known = self.collected.rate_over(Input::Rows, &width)?;
        let kind = match self.from {
            FromRow::AllTips => WidthKind::Rows,
            FromRow::OneOf(_) => WidthKind::RowShare,
        };
        let working = self
            .collected
            .working(Method::Directed.code(), "Univ. of Missouri Extension, G1270a")
            .figure("width", Arg::Amount(Amount::new(width.value, Kind::Width)))
            .figure("row spacing", Arg::Amount(Amount::new(self.rows.value, Kind::Width)));
        let findings: Vec<Finding> =
            self.collected.doubtful().into_iter().chain(doubtful_rate(known.value)).collect();
        Ok(Rate::new(known, Method::Directed, kind, working, findings))
    }
}
