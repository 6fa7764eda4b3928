//! Readings that cannot be: more than the cup holds, or several times what such an outlet can give.

use units::{Amount, Arg, Finding, Flow, Kind, Phrase, Quantity, Weight};

use super::error::CatchError;
use super::round::{Cup, Round};

/// No single tip on a boom gives more. Size 20, the largest of ISO 10625, gives 3 gal/min at 90 psi; this is
/// our own ceiling above it.
pub const TIP_FLOW_CEILING: Flow = Flow::gallons_per_minute(5.0);

/// No outlet of a cluster gives more, and no boomless tip. Our own ceiling: 20 gal/min over 30 ft at 5 mph would
/// be 66 gal/ac, more than anybody means to lay with one.
pub const CLUSTER_FLOW_CEILING: Flow = Flow::gallons_per_minute(20.0);

/// No hand gun gives more. Our own ceiling: the water of a garden hose, with room above it.
pub const HAND_GUN_FLOW_CEILING: Flow = Flow::gallons_per_minute(20.0);

/// What the cup was held under, which decides how much may come out of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Outlet {
    /// A tip on a boom.
    #[default]
    BoomTip,
    /// An outlet of a cluster, or a boomless tip.
    Cluster,
    /// A hand gun or wand.
    HandGun,
}

impl Outlet {
    /// What no such outlet gives more of.
    #[must_use]
    pub const fn flow_ceiling(self) -> Flow {
        match self {
            Self::BoomTip => TIP_FLOW_CEILING,
            Self::Cluster => CLUSTER_FLOW_CEILING,
            Self::HandGun => HAND_GUN_FLOW_CEILING,
        }
    }

    const fn in_words(self) -> Arg {
        match self {
            Self::BoomTip => Arg::Word { code: "outlet_boom_tip", english: "any tip on a boom" },
            Self::Cluster => Arg::Word { code: "outlet_cluster", english: "any cluster or boomless tip" },
            Self::HandGun => Arg::Word { code: "outlet_hand_gun", english: "any hand gun" },
        }
    }
}

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
    /// Looks for readings of boom tips that cannot be. Refused, or kept with a finding each.
    ///
    /// *Errors*: the first absurd reading, where they are refused.
    pub fn look_for_absurd(
        &self,
        cup: &Cup,
        rated: Option<Flow>,
        doubtful: Doubtful,
    ) -> Result<Vec<Finding>, CatchError> {
        self.look_for_absurd_from(Outlet::BoomTip, cup, rated, doubtful)
    }

    /// As [`Round::look_for_absurd`], for whatever the cup was held under.
    ///
    /// *Errors*: the first absurd reading, where they are refused.
    pub fn look_for_absurd_from(
        &self,
        outlet: Outlet,
        cup: &Cup,
        rated: Option<Flow>,
        doubtful: Doubtful,
    ) -> Result<Vec<Finding>, CatchError> {
        let mut findings = Vec::new();
        for tip in &self.tips {
            for catch in &tip.catches {
                let volume = catch.volume(self.density);
                let reading = catch.reading().written().text().to_string();
                if let Some(why) = why_absurd(volume, volume / catch.time(), outlet, cup, rated) {
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
                        .with("why", Arg::Phrases(vec![why])),
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

fn why_absurd(
    volume: units::Volume,
    flow: Flow,
    outlet: Outlet,
    cup: &Cup,
    rated: Option<Flow>,
) -> Option<Phrase> {
    let half_step = cup.marks.as_ref().map_or(0.0, |marks| marks.step().si() / 2.0);
    if let Some(holds) = cup.holds.filter(|holds| volume.si() > holds.si() + half_step) {
        return Some(
            Phrase::new("absurd_runs_over", "the cup holds {holds} and would have run over")
                .with("holds", Arg::Amount(Amount::new(holds, Kind::Cup))),
        );
    }
    let shown = |flow: Flow| Arg::Amount(Amount::new(flow, Kind::Flow));
    match rated {
        Some(rated) if flow > rated * TIMES_RATED => Some(
            Phrase::new("absurd_times_new", "that is {flow}, {times} times what a new tip gives ({new})")
                .with("flow", shown(flow))
                .with("times", Arg::Number(flow.ratio_to(rated)))
                .with("new", shown(rated)),
        ),
        None if flow > outlet.flow_ceiling() => Some(
            Phrase::new("absurd_more_than_any", "that is {flow}, more than {outlet} gives")
                .with("flow", shown(flow))
                .with("outlet", outlet.in_words()),
        ),
        _ => None,
    }
}
