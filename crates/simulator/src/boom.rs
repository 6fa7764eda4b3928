//! A boom as it truly is: what every tip gives, and why.

use sprayer::BoomLayout;
use units::{Flow, Pressure, Quantity, Time};

use crate::fault::Fault;

/// A tip that gives less than this share of the boom's median does not run: it is plugged and stands in no mean.
/// Our own rule, the one the plain catch test of this program goes by.
pub const RUNS_FROM: f64 = 0.05;

/// A tip as it truly is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TrueTip {
    /// Its number from the left as the driver sits, from 1.
    pub number: u32,
    /// The section that feeds it, counted from the left from 0.
    pub section: u16,
    /// What is wrong with it.
    pub fault: Fault,
    /// What it gives at the start of the test.
    pub flow: Flow,
}

/// A boom as it truly is.
#[derive(Clone, Debug, PartialEq)]
pub struct TrueBoom {
    pub(crate) layout: BoomLayout,
    pub(crate) tips: Vec<TrueTip>,
    pub(crate) pressure: Pressure,
    pub(crate) drift_per_minute: f64,
}

impl TrueBoom {
    /// A boom with these tips at a pressure that changes by a share of itself each minute.
    #[must_use]
    pub fn new(layout: BoomLayout, tips: Vec<TrueTip>, pressure: Pressure, drift_per_minute: f64) -> Self {
        Self { layout, tips, pressure, drift_per_minute }
    }

    /// How the boom is laid out; this much can be seen.
    #[must_use]
    pub const fn layout(&self) -> &BoomLayout {
        &self.layout
    }

    /// The tips from left to right.
    #[must_use]
    pub fn tips(&self) -> &[TrueTip] {
        &self.tips
    }

    /// The pressure at the start, before any section's loss.
    #[must_use]
    pub const fn pressure(&self) -> Pressure {
        self.pressure
    }

    /// Returns what a tip gives at a time after the start; `None` for a number that is not on the boom.
    ///
    /// *Assumptions*: flow goes with the root of pressure, as in [`sprayer::RatedFlow`]; the pressure drifts in a
    /// straight line and never below a tenth of itself.
    #[must_use]
    pub fn flow_of(&self, number: u32, after: Time) -> Option<Flow> {
        let tip = self.tips.iter().find(|tip| tip.number == number)?;
        let drifted = (1.0 + self.drift_per_minute * after.as_minutes()).max(0.1);
        Some(tip.flow * drifted.sqrt())
    }

    /// Whether a tip runs: it gives at least [`RUNS_FROM`] of the median.
    #[must_use]
    pub fn runs(&self, tip: &TrueTip) -> bool {
        tip.flow.si() >= RUNS_FROM * self.median()
    }

    /// The mean flow of the tips that run, at the start of the test.
    #[must_use]
    pub fn mean(&self) -> Flow {
        let least = RUNS_FROM * self.median();
        let running = self.tips.iter().map(|tip| tip.flow).filter(|flow| flow.si() >= least);
        let count = running.clone().count() as f64;
        running.sum::<Flow>() / count
    }

    /// How far each tip is from the mean of those that run, as a share, from left to right: 0.1 is 10 % over.
    #[must_use]
    pub fn deviations(&self) -> Vec<f64> {
        let mean = self.mean();
        self.tips.iter().map(|tip| tip.flow.ratio_to(mean) - 1.0).collect()
    }

    fn median(&self) -> f64 {
        let mut flows: Vec<f64> = self.tips.iter().map(|tip| tip.flow.si()).collect();
        flows.sort_by(f64::total_cmp);
        let middle = flows.len() / 2;
        match flows.as_slice() {
            [] => 0.0,
            _ if flows.len() % 2 == 1 => flows[middle],
            _ => f64::midpoint(flows[middle - 1], flows[middle]),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use sprayer::Mounting;
    use units::Length;

    fn boom(flows: &[f64], drift: f64) -> TrueBoom {
        let count = u32::try_from(flows.len()).unwrap();
        let layout = BoomLayout::new(&[count], Length::inches(20.0), Mounting::Rear).unwrap();
        let tips = (1_u32..)
            .zip(flows)
            .map(|(number, flow)| TrueTip {
                number,
                section: 0,
                fault: Fault::Sound,
                flow: Flow::gallons_per_minute(*flow),
            })
            .collect();
        TrueBoom::new(layout, tips, Pressure::psi(40.0), drift)
    }

    #[test]
    fn a_plugged_tip_is_not_in_the_mean() {
        // By hand: of 0.2, 0.2, 0.23, 0.17 and 0.004 the last is 2 % of the median; the mean of the others is 0.2.
        let deviations = boom(&[0.2, 0.2, 0.23, 0.17, 0.004], 0.0).deviations();
        for (found, expected) in deviations.iter().zip([0.0, 0.0, 0.15, -0.15, -0.98]) {
            assert!((found - expected).abs() < 1e-12);
        }
    }

    #[test]
    fn pressure_down_by_19_percent_is_flow_down_by_10() {
        // √0.81 = 0.9.
        let flow = boom(&[0.2], -0.019).flow_of(1, Time::minutes(10.0)).unwrap();
        assert!((flow.as_gallons_per_minute() - 0.18).abs() < 1e-12);
        assert!(boom(&[0.2], 0.0).flow_of(2, Time::ZERO).is_none());
    }
}
