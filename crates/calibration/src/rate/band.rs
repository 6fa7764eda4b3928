//! The rate of bands: on the ground that is treated, and per acre of crop.

use super::collected::Collected;
use super::directed::FromRow;
use super::error::{Input, RateError};
use super::findings::{checked, doubtful_rate};
use super::method::{Method, WidthKind};
use super::outcome::Rate;
use crate::doubt::Known;
use units::{Amount, Arg, Finding, Kind, Length, Weight};

/// A band over each row.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// What one tip gave, or all tips of one band together.
    pub collected: Collected,
    /// Which of the two.
    pub from: FromRow,
    /// The width of the band.
    pub band: Known<Length>,
    /// The distance from row to row.
    pub rows: Known<Length>,
}

/// Both rates of bands.
#[derive(Clone, Debug, PartialEq)]
pub struct BandRate {
    /// On the ground that is treated: the one a label's broadcast rate is compared with.
    pub treated: Rate,
    /// Per acre of crop: the one that fills tanks.
    pub crop: Rate,
    /// The part of the field that is treated, in percent.
    pub treated_percent: f64,
}

/// Who says which width.
const SOURCE: &str =
    "Univ. of Missouri Extension, G1270a; NDSU Extension, AE-1042: treated acre and crop acre";

impl Band {
    /// Returns the rate on the treated ground, and per acre of crop: the same times band over row spacing.
    ///
    /// *Units*: any.
    ///
    /// *Assumptions*: one band to each row. The band's width matters to the treated ground only: per acre of crop it is
    /// the row spacing that counts, so a band judged badly does not make that rate doubtful.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number; no tips.
    ///
    /// *Source*: Univ. of Missouri Extension, G1270a (width = band width); NDSU Extension, AE-1042.
    ///
    /// *Example*: 30 gal/ac on 12 in bands of 36 in rows are 10 gal per acre of crop.
    pub fn rate(&self) -> Result<BandRate, RateError> {
        checked(Input::Band, &self.band, Kind::Width)?;
        checked(Input::Rows, &self.rows, Kind::Width)?;
        let (treated, crop) = match self.from {
            FromRow::AllTips => (WidthKind::Band, WidthKind::Rows),
            FromRow::OneOf(_) => (WidthKind::BandShare, WidthKind::RowShare),
        };
        let treated = self.over(Input::Band, &self.band, treated)?;
        let crop = self.over(Input::Rows, &self.rows, crop)?;
        Ok(BandRate { treated, crop, treated_percent: self.band.value.ratio_to(self.rows.value) * 100.0 })
    }

    fn over(&self, what: Input, width: &Known<Length>, kind: WidthKind) -> Result<Rate, RateError> {
        let share = self.from.share(width)?;
        let known = self.collected.rate_over(what, &share)?;
        let working = self
            .collected
            .working(Method::Band.code(), SOURCE)
            .figure("width", Arg::Amount(Amount::new(share.value, Kind::Width)))
            .figure("band", Arg::Amount(Amount::new(self.band.value, Kind::Width)))
            .figure("row spacing", Arg::Amount(Amount::new(self.rows.value, Kind::Width)));
        let mut findings: Vec<Finding> = self.collected.doubtful().into_iter().collect();
        findings.extend(self.wider_than_rows());
        findings.extend(doubtful_rate(known.value));
        Ok(Rate::new(known, Method::Band, kind, working, findings))
    }

    fn wider_than_rows(&self) -> Option<Finding> {
        (self.band.value > self.rows.value).then(|| {
            Finding::new(
                Weight::Doubt,
                "rate_band_wider_than_rows",
                "Bands of {band} overlap on rows of {rows}. Are the two mixed up?",
            )
            .with("band", Arg::Amount(Amount::new(self.band.value, Kind::Width)))
            .with("rows", Arg::Amount(Amount::new(self.rows.value, Kind::Width)))
        })
    }
}
