//! What to look at next: the check that settles most for the minutes it takes; and when to stop.

use units::{Finding, Time, Weight};

use super::answer::Diagnosis;
use super::checks::every_check;
use super::model::DiagnosisModel;
use crate::catch::Round;

/// A check that can be made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CheckKind {
    /// Catch tips once more, same cup and time.
    CatchAgain,
    /// Look at the size and colour of tips.
    LookAtTip,
    /// Read the pressure at a tip.
    ReadPressure,
    /// Open a section's strainer.
    OpenStrainer,
    /// Swap two tips and catch both.
    SwapTips,
    /// Catch some tips at another pressure.
    SecondPressure,
    /// Fit one new tip of the same size and catch it.
    NewTip,
}

impl CheckKind {
    /// All of them.
    pub const ALL: [Self; 7] = [
        Self::CatchAgain,
        Self::LookAtTip,
        Self::ReadPressure,
        Self::OpenStrainer,
        Self::SwapTips,
        Self::SecondPressure,
        Self::NewTip,
    ];

    /// The stable word in JSON, and its name among the sentences.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::CatchAgain => "catch_again",
            Self::LookAtTip => "look_at_tip",
            Self::ReadPressure => "read_pressure",
            Self::OpenStrainer => "open_strainer",
            Self::SwapTips => "swap_tips",
            Self::SecondPressure => "second_pressure",
            Self::NewTip => "new_tip",
        }
    }
}

/// A check worth making.
#[derive(Clone, Debug, PartialEq)]
pub struct NextCheck {
    /// What.
    pub kind: CheckKind,
    /// At which tips.
    pub tips: Vec<u32>,
    /// In which section, by its place from 0, where it is about one.
    pub section: Option<usize>,
    /// The wrong and undecided answers this takes away, on average.
    pub settles: f64,
    /// The minutes it takes.
    pub minutes: f64,
}

/// What checks cost, and from when on they are worth it.
#[derive(Clone, Debug, PartialEq)]
pub struct Checking {
    /// Walking, pouring and reading for each cup, beside its time.
    pub cup: Time,
    /// Looking at one tip.
    pub look: Time,
    /// Reading the pressure at a tip.
    pub pressure: Time,
    /// Opening a strainer, the pressure let off and the tank valve shut first.
    pub strainer: Time,
    /// Swapping two tips, pressure off.
    pub swap: Time,
    /// Setting another pressure and back.
    pub set_pressure: Time,
    /// Finding a new tip of the same size and fitting it.
    pub new_tip: Time,
    /// What a minute must settle to be worth it.
    pub worth: f64,
    /// At most so many tips for one check: what one remembers walking there.
    pub most_tips: usize,
}

impl Default for Checking {
    /// 20 s a cup, 30 s a look, 4 min to fit a gauge at a tip, 6 min for a strainer, 1 min to swap two tips
    /// or to set another pressure, 3 min for a new tip: our assumptions. A minute must settle
    /// a hundredth of a call, as for the next cup of a catch test (our own choice).
    fn default() -> Self {
        Self {
            cup: Time::seconds(20.0),
            look: Time::seconds(30.0),
            pressure: Time::seconds(240.0),
            strainer: Time::seconds(360.0),
            swap: Time::seconds(60.0),
            set_pressure: Time::seconds(60.0),
            new_tip: Time::seconds(180.0),
            worth: 0.03,
            most_tips: MOST_TIPS,
        }
    }
}

/// Checks that settle less than this share of the best for their minutes are not named beside it. Our own choice.
const BESIDE_THE_BEST: f64 = 0.1;
/// At most so many tips for one check. Our own choice.
const MOST_TIPS: usize = 6;
/// Answers that are open by less than this, all together, are settled. Our own choice.
const SETTLED: f64 = 0.02;

/// Returns the checks worth making, the best first; none when the next one costs more than it settles.
///
/// *Units*: `settles` counts answers: a wrong cause of a tip as one, a section wrongly called as one.
///
/// *Assumptions*: each check by itself; a further cup is read as likely as what is known now makes it; how often looking,
/// swapping, gauge and strainer tell is our assumption.
///
/// *Source*: expected value of one more observation (preposterior analysis).
#[must_use]
pub fn next_checks(
    round: &Round,
    found: &Diagnosis,
    model: &DiagnosisModel,
    costs: &Checking,
) -> Vec<NextCheck> {
    let mut all = every_check(round, found, model, costs);
    all.sort_by(|one, other| other.rate().total_cmp(&one.rate()));
    let best = all.first().map_or(0.0, NextCheck::rate);
    all.retain(|check| check.rate() >= costs.worth.max(BESIDE_THE_BEST * best));
    all
}

/// Returns why there is nothing worth looking at next; nothing where there is.
#[must_use]
pub fn why_stop(
    round: &Round,
    found: &Diagnosis,
    model: &DiagnosisModel,
    costs: &Checking,
) -> Option<Finding> {
    let all = every_check(round, found, model, costs);
    if all.iter().any(|check| check.rate() >= costs.worth) {
        return None;
    }
    if found.boom.is_off() {
        return Some(Finding::new(
            Weight::Note,
            "stop_boom_off",
            "Nothing until it is switched on: then catch the cups again.",
        ));
    }
    let open: f64 = found.tips.iter().map(|tip| super::worth::loss(&tip.causes)).sum();
    Some(if open < SETTLED {
        Finding::new(
            Weight::Note,
            "stop_settled",
            "Nothing: these cups leave nothing open that is worth a minute.",
        )
    } else {
        Finding::new(
            Weight::Note,
            "stop_costs_more",
            "Nothing: the next check would take longer than what it settles is worth. What is open stays open.",
        )
    })
}

impl NextCheck {
    /// What it settles for a minute.
    fn rate(&self) -> f64 {
        self.settles / self.minutes
    }
}
