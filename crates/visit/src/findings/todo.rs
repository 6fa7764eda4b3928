//! What to do, in order: what the label forbids, then the yard's order, then what is still open.

use units::{Arg, Coded, Finding, UnitSystem, Weight};

use super::Outcome;

/// The part of the visit an action belongs to, in yard order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Place {
    /// What was looked at.
    Look,
    /// What was seen beside the readings.
    Symptoms,
    /// Where the tips stand.
    Spacing,
    /// The tips.
    Tips,
    /// The pattern across the boom.
    Pattern,
    /// The drive.
    Drive,
    /// The controller.
    Controller,
    /// The setting.
    Setting,
    /// The rate.
    Rate,
    /// What would hit the wanted rate.
    Change,
    /// The tank.
    Tank,
    /// What the error costs.
    Cost,
}

impl Place {
    /// The stable word in JSON.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Look => "look",
            Self::Symptoms => "symptoms",
            Self::Spacing => "spacing",
            Self::Tips => "tips",
            Self::Pattern => "pattern",
            Self::Drive => "drive",
            Self::Controller => "controller",
            Self::Setting => "setting",
            Self::Rate => "rate",
            Self::Change => "change",
            Self::Tank => "tank",
            Self::Cost => "cost",
        }
    }
}

/// One thing to do.
#[derive(Clone, Debug, PartialEq)]
pub struct Action {
    /// The part of the visit it belongs to.
    pub place: Place,
    /// The finding it comes from, which says why and what.
    pub finding: Finding,
}

impl Action {
    /// What to do, in English.
    #[must_use]
    pub fn what(&self, system: UnitSystem) -> String {
        self.finding.action(system).unwrap_or_else(|| self.finding.text(system))
    }

    /// Why, in English.
    #[must_use]
    pub fn why(&self, system: UnitSystem) -> String {
        self.finding.text(system)
    }

    /// The tips it is about, where it is about certain ones.
    #[must_use]
    pub fn tips(&self) -> Option<Vec<u32>> {
        let args = self.finding.args();
        match args.get("tips").or_else(|| args.get("tip"))? {
            Arg::Tips(tips) => Some(tips.clone()),
            Arg::Count(tip) => Some(vec![*tip]),
            _ => None,
        }
    }

    /// Where, as the stable word and, where it is about certain tips, their numbers.
    #[must_use]
    pub fn at(&self, system: UnitSystem) -> String {
        let args = self.finding.args();
        match args.get("tips").or_else(|| args.get("tip")) {
            Some(tips) => format!("tip {}", tips.text(system)),
            None => self.place.word().to_string(),
        }
    }
}

/// Returns the actions: every finding that asks for something, what the label forbids first.
pub(super) fn actions(outcome: &Outcome) -> Vec<Action> {
    let asks = |finding: &Finding| match finding.weight {
        Weight::Stop | Weight::Act => true,
        Weight::Settle => finding.hint().is_some(),
        Weight::Doubt | Weight::Note => false,
    };
    let mut actions: Vec<Action> = outcome
        .all()
        .filter(|(_, finding)| asks(finding))
        .map(|(place, finding)| Action { place, finding: finding.clone() })
        .collect();
    let rank = |weight: Weight| match weight {
        Weight::Stop => 0,
        Weight::Act => 1,
        Weight::Settle => 2,
        Weight::Doubt | Weight::Note => 3,
    };
    actions.sort_by_key(|action| (rank(action.finding.weight), action.place));
    actions
}
