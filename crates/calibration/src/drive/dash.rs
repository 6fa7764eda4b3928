//! The dash against the timed drive.

use crate::doubt::Known;
use units::{Amount, Arg, Boundary, Finding, Kind, Speed, Verdict, Weight};

/// How far off the dash is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DashCheck {
    /// What it showed.
    pub shown: Speed,
    /// The speed really driven.
    pub driven: Speed,
    /// Its error in percent of the speed really driven: above nothing when it shows too much.
    pub error_percent: f64,
    /// The low end of the 95 % range of the error, in percent.
    pub low_percent: f64,
    /// The high end of the 95 % range of the error, in percent.
    pub high_percent: f64,
    /// Whether it is off by more than a sprayer's speed sensor may be.
    pub verdict: Verdict,
}

/// A speed sensor more than 5 % off the true speed is a defect.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 5.5.1.2.
const SENSOR_LIMIT: f64 = 0.05;
/// Who says so.
const SENSOR_SOURCE: &str =
    "French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 5.5.1.2: more than 5 % from true speed";
/// A dash further off than this was read wrongly, or in another unit: mph and km/h differ by 61 %. Our assumption.
const DOUBTFUL: f64 = 0.5;

impl DashCheck {
    pub(super) fn new(shown: Speed, driven: &Known<Speed>) -> Self {
        let ranged = driven.ranged();
        let error = |true_speed: Speed| shown.ratio_to(true_speed) - 1.0;
        // The faster the sprayer really was, the less too much the dash showed. A doubt of more than the speed itself
        // leaves the error open upwards.
        let low = error(ranged.high);
        let high = if ranged.low > Speed::ZERO { error(ranged.low) } else { f64::INFINITY };
        Self {
            shown,
            driven: driven.value,
            error_percent: error(driven.value) * 100.0,
            low_percent: low * 100.0,
            high_percent: high * 100.0,
            verdict: Verdict::of_range(low, high, SENSOR_LIMIT, SENSOR_LIMIT, Boundary::Inclusive),
        }
    }

    /// The number by which to multiply what the dash shows (a factor).
    #[must_use]
    pub fn correction(&self) -> f64 {
        self.driven.ratio_to(self.shown)
    }

    /// What the dash must show to drive a speed.
    #[must_use]
    pub fn shows_at(&self, wanted: Speed) -> Speed {
        wanted / self.correction()
    }

    pub(super) fn finding(&self) -> Finding {
        let finding = if (self.error_percent / 100.0).abs() > DOUBTFUL {
            Finding::new(
                Weight::Doubt,
                "drive_dash_doubtful",
                "The dash showed {shown}, but {driven} were driven. Was it read in the right unit?",
            )
        } else {
            match self.verdict {
                Verdict::Outside if self.error_percent > 0.0 => Finding::new(
                    Weight::Act,
                    "drive_dash_high",
                    "The dash showed {shown}, but only {driven} were driven: it shows {percent} too much.",
                )
                .to_do("Have it set right; until then multiply what it shows by {correction}."),
                Verdict::Outside => Finding::new(
                    Weight::Act,
                    "drive_dash_low",
                    "The dash showed {shown}, but {driven} were driven: it shows {percent} too little.",
                )
                .to_do("Have it set right; until then multiply what it shows by {correction}."),
                Verdict::CannotTell => Finding::new(
                    Weight::Settle,
                    "drive_dash_open",
                    "The dash is {error} off; whether that is too much, these runs do not tell.",
                )
                .to_do("Drive a longer course, or more runs, to settle it."),
                Verdict::Within => Finding::new(
                    Weight::Note,
                    "drive_dash_right",
                    "The dash is {error} off; that is near enough.",
                ),
            }
        };
        finding
            .with("shown", Arg::Amount(Amount::new(self.shown, Kind::Speed)))
            .with("driven", Arg::Amount(Amount::new(self.driven, Kind::Speed)))
            .with("error", Arg::Deviation(self.error_percent))
            .with("percent", Arg::Percent(self.error_percent.abs()))
            .with("correction", Arg::Number(self.correction()))
            .judged(self.verdict, SENSOR_SOURCE)
    }
}
