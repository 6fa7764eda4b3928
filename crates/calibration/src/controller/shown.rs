//! A flow or a speed that the controller shows against the true one.

use units::{Amount, Arg, Boundary, Finding, Kind, Quantity, Verdict, Weight, Working};

use super::limits::{ControllerLimit, FLOW_SENSOR, SPEED_SENSOR};
use crate::doubt::Known;

/// What is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShownWhat {
    /// The flow, against the cups of all tips together.
    Flow,
    /// The speed, against the timed drive.
    Speed,
}

/// How far off what is shown is.
#[derive(Clone, Debug, PartialEq)]
pub struct ShownCheck {
    what: ShownWhat,
    shown: Amount,
    real: Amount,
    /// Its error in percent of the true one: above nothing when it shows too much.
    pub error_percent: f64,
    /// The low end of the 95 % range of the error, in percent.
    pub low_percent: f64,
    /// The high end of it, in percent.
    pub high_percent: f64,
    /// Whether it is off by more than its sensor may be.
    pub verdict: Verdict,
    /// By what its count for an amount (pulses a gallon, pulses a mile) is to be multiplied: shown over true.
    pub factor: f64,
}

/// What is further off than this was read wrongly, or in another unit. Our assumption: gal/min and L/min differ by 3.8.
const DOUBTFUL: f64 = 0.5;

impl ShownCheck {
    /// Holds what is shown against the true one.
    ///
    /// *Units*: both of one kind; `shown` above nothing.
    ///
    /// *Assumptions*: what is shown is read without a doubt of its own beside its digits; the doubt is the true one's, the
    /// cup's scale and the watch among it, since nothing cancels here.
    ///
    /// *Source*: limits of [`super::limits`]; a meter that counts at a number for each gallon shows what it counted over
    /// that number, so it is to be multiplied by shown over true (arithmetic).
    ///
    /// *Example*: 3.30 gal/min shown, 3.00 caught: 10 % too much, and 100 pulses a gallon become 110.
    #[must_use]
    pub fn new<Q: Quantity>(what: ShownWhat, shown: Q, real: &Known<Q>) -> Self {
        let kind = match what {
            ShownWhat::Flow => Kind::Flow,
            ShownWhat::Speed => Kind::Speed,
        };
        let ranged = real.ranged();
        let error = |real: Q| shown.si() / real.si() - 1.0;
        let low = error(ranged.high);
        let high = if ranged.low.si() > 0.0 { error(ranged.low) } else { f64::INFINITY };
        let share = limit(what).share;
        Self {
            what,
            shown: Amount::new(shown, kind),
            real: Amount::ranged(&ranged, kind),
            error_percent: error(real.value) * 100.0,
            low_percent: low * 100.0,
            high_percent: high * 100.0,
            verdict: Verdict::of_range(low, high, share, share, Boundary::Inclusive),
            factor: shown.si() / real.value.si(),
        }
    }

    /// How it was reached.
    #[must_use]
    pub fn working(&self) -> Working {
        let (code, formula) = match self.what {
            ShownWhat::Flow => ("shown_flow", "error = 100 × (shown flow ÷ flow of all tips − 1)"),
            ShownWhat::Speed => ("shown_speed", "error = 100 × (shown speed ÷ speed driven − 1)"),
        };
        let (shown, real) = match self.what {
            ShownWhat::Flow => ("shown flow", "flow of all tips"),
            ShownWhat::Speed => ("shown speed", "speed driven"),
        };
        Working::new(code, formula, limit(self.what).source)
            .figure(shown, Arg::Amount(self.shown.clone()))
            .figure(real, Arg::Amount(self.real.clone()))
            .result(Arg::Deviation(self.error_percent))
    }

    /// What is told of it.
    #[must_use]
    pub fn finding(&self) -> Finding {
        let off = (self.error_percent / 100.0).abs() > DOUBTFUL;
        let finding = match (self.what, self.verdict) {
            (ShownWhat::Flow, _) if off => Finding::new(
                Weight::Doubt,
                "controller_flow_doubtful",
                "The controller shows {shown}, but the tips together give {real}. Was it read in the right unit, with all tips on?",
            ),
            (ShownWhat::Speed, _) if off => Finding::new(
                Weight::Doubt,
                "controller_speed_doubtful",
                "The controller shows {shown}, but {real} were driven. Was it read in the right unit?",
            ),
            (ShownWhat::Flow, Verdict::Within) => Finding::new(
                Weight::Note,
                "controller_flow_right",
                "The controller shows {shown}, the tips together give {real}: {error} off, near enough.",
            ),
            (ShownWhat::Flow, Verdict::Outside) => Finding::new(
                Weight::Act,
                "controller_flow_off",
                "The controller shows {shown}, but the tips together give {real}: {error} off.",
            )
            .to_do("Multiply its flow meter's number (counts for a volume) by {factor}: 100 become {hundred}. Then check again; clean the meter first if it never was."),
            (ShownWhat::Flow, Verdict::CannotTell) => Finding::new(
                Weight::Settle,
                "controller_flow_open",
                "The controller shows {shown}, the tips together give {real}: {error} off ({low} to {high}). These cups do not tell whether that is too much.",
            )
            .to_do("Catch more tips, for longer, in a finer cup, and read the controller again meanwhile."),
            (ShownWhat::Speed, Verdict::Within) => Finding::new(
                Weight::Note,
                "controller_speed_right",
                "The controller shows {shown}, {real} were driven: {error} off, near enough.",
            ),
            (ShownWhat::Speed, Verdict::Outside) => Finding::new(
                Weight::Act,
                "controller_speed_off",
                "The controller shows {shown}, but {real} were driven: {error} off.",
            )
            .to_do("Multiply its speed sensor's number (counts for a distance) by {factor}: 100 become {hundred}. Then drive again."),
            (ShownWhat::Speed, Verdict::CannotTell) => Finding::new(
                Weight::Settle,
                "controller_speed_open",
                "The controller shows {shown}, {real} were driven: {error} off ({low} to {high}). These runs do not tell whether that is too much.",
            )
            .to_do("Drive a longer course, or more runs."),
        };
        finding
            .with("shown", Arg::Amount(self.shown.clone()))
            .with("real", Arg::Amount(self.real.clone()))
            .with("error", Arg::Deviation(self.error_percent))
            .with("low", Arg::Deviation(self.low_percent))
            .with("high", Arg::Deviation(self.high_percent))
            .with("factor", Arg::Number(self.factor))
            .with("hundred", Arg::Number(self.factor * 100.0))
            .judged(self.verdict, limit(self.what).source)
            .because(self.working())
    }
}

const fn limit(what: ShownWhat) -> ControllerLimit {
    match what {
        ShownWhat::Flow => FLOW_SENSOR,
        ShownWhat::Speed => SPEED_SENSOR,
    }
}
