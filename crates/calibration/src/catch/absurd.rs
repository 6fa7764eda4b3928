//! Readings that cannot be: more than the cup holds, or several times what such a tip can give.

use units::{Amount, Arg, Finding, Flow, Kind, Quantity, UnitSystem, Weight};

use super::error::CatchError;
use super::round::{Cup, Round};

/// No single tip on a boom gives more. Size 20, the largest of ISO 10625, gives 3 gal/min at 90 psi; this is
/// our own ceiling above it.
pub const TIP_FLOW_CEILING: Flow = Flow::gallons_per_minute(5.0);

/// A reading of more than this many times the rated flow is a slip of cup, unit or watch. Our own rule: a worn
/// tip gives at most some 1.3 times, two neighbouring sizes differ by at most 1.5 times.
const TIMES_RATED: f64 = 3.0;

/// What to do with a reading that cannot be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Doubtful {
    /// Refuse it and say why.
    #[default]
    Refuse,
    /// Keep it because its writer insists, and say that it is doubtful.
    Keep,
}

impl Round {
    /// Looks for readings that cannot be. Refused, or kept with a finding each.
    ///
    /// *Errors*: the first absurd reading, where they are refused.
    pub fn look_for_absurd(
        &self,
        cup: &Cup,
        rated: Option<Flow>,
        doubtful: Doubtful,
    ) -> Result<Vec<Finding>, CatchError> {
        let mut findings = Vec::new();
        for tip in &self.tips {
            for catch in &tip.catches {
                let volume = catch.volume(self.density);
                let reading = catch.reading().written().text().to_string();
                if let Some(why) = why_absurd(volume, volume / catch.time(), cup, rated) {
                    if doubtful == Doubtful::Refuse {
                        return Err(CatchError::Absurd { tip: tip.number, reading, time: catch.time(), why });
                    }
                    findings.push(
                        Finding::new(
                            Weight::Doubt,
                            "catch_doubtful_kept",
                            "Tip {tip}: {reading} was kept though {why}.",
                        )
                        .with("tip", Arg::Count(tip.number))
                        .with("reading", Arg::Text(reading.clone()))
                        .with("why", Arg::Text(why)),
                    );
                }
                let step = catch.step(self.density);
                if volume.si() > 0.0 && step > volume {
                    findings.push(
                        Finding::new(
                            Weight::Doubt,
                            "catch_marks_coarser",
                            "Tip {tip}: {reading} was read on marks {step} apart, which is more than was caught.",
                        )
                        .with("tip", Arg::Count(tip.number))
                        .with("reading", Arg::Text(reading))
                        .with("step", Arg::Amount(Amount::new(step, Kind::Cup)))
                        .to_do("Use a cup with finer marks, or catch longer."),
                    );
                }
            }
        }
        Ok(findings)
    }
}

fn why_absurd(volume: units::Volume, flow: Flow, cup: &Cup, rated: Option<Flow>) -> Option<String> {
    let half_step = cup.marks.as_ref().map_or(0.0, |marks| marks.step().si() / 2.0);
    if let Some(holds) = cup.holds.filter(|holds| volume.si() > holds.si() + half_step) {
        let holds = Amount::new(holds, Kind::Cup).text(UnitSystem::Us);
        return Some(format!("the cup holds {holds} and would have run over"));
    }
    let shown = |flow: Flow| Amount::new(flow, Kind::Flow).text(UnitSystem::Us);
    match rated {
        Some(rated) if flow > rated * TIMES_RATED => {
            let times = units::sensible(flow.ratio_to(rated));
            Some(format!("that is {}, {times} times what a new tip gives ({})", shown(flow), shown(rated)))
        }
        None if flow > TIP_FLOW_CEILING => {
            Some(format!("that is {}, more than any tip on a boom gives", shown(flow)))
        }
        _ => None,
    }
}
