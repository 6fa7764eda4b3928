//! What there is time for: the steps of a visit in yard order, and the tips to catch.

use visit::record::Machine;

/// How many minutes and hands there are today.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Plan {
    /// Minutes, as chosen; none where nobody said.
    pub minutes: Option<u32>,
    /// People, as chosen; none where nobody said.
    pub people: Option<u32>,
}

/// With no more minutes than these, one tip of each section is caught. Our own choice: a drive and three cups fit in.
const SHORT: u32 = 10;

/// A part of a visit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Step {
    /// What the machine is.
    Machine,
    /// Rinsed, filled with clean water, made safe.
    Safe,
    /// The two minutes' look.
    Look,
    /// Where the tips stand.
    Spacing,
    /// The timed drive.
    Drive,
    /// The catch.
    Catch,
    /// What it puts out, and what is wanted.
    Rate,
    /// What goes in the tank.
    Tank,
    /// What to change.
    Change,
    /// How to get the same again: gear, engine, pressure.
    Repeat,
    /// Sheets, the four lines to send, the end.
    HandOver,
}

/// Whether a part belongs to what there is time for today.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Today {
    /// It does.
    Planned,
    /// Only with more time.
    WithMoreTime,
}

impl Step {
    /// The step's word in keys and ids.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Machine => "machine",
            Self::Safe => "safe",
            Self::Look => "look",
            Self::Spacing => "spacing",
            Self::Drive => "drive",
            Self::Catch => "catch",
            Self::Rate => "rate",
            Self::Tank => "tank",
            Self::Change => "change",
            Self::Repeat => "repeat",
            Self::HandOver => "hand_over",
        }
    }
}

/// What kind of machine it is, as the visit file words it; a boom where nothing is said.
#[must_use]
pub fn is_boom(kind: &str) -> bool {
    matches!(kind, "" | "boom" | "band" | "directed")
}

impl Plan {
    /// Whether there is only time for a drive and a few cups.
    #[must_use]
    pub fn is_short(&self) -> bool {
        self.minutes.is_some_and(|minutes| minutes <= SHORT)
    }

    /// The steps for a kind of machine, in yard order.
    #[must_use]
    pub fn steps(&self, kind: &str) -> Vec<(Step, Today)> {
        let all = [
            Step::Machine,
            Step::Safe,
            Step::Look,
            Step::Spacing,
            Step::Drive,
            Step::Catch,
            Step::Rate,
            Step::Tank,
            Step::Change,
            Step::Repeat,
            Step::HandOver,
        ];
        let later = |step: Step| self.is_short() && matches!(step, Step::Look | Step::Spacing);
        all.into_iter()
            // A cluster and a wand have no tips that stand apart.
            .filter(|step| *step != Step::Spacing || is_boom(kind))
            .map(|step| (step, if later(step) { Today::WithMoreTime } else { Today::Planned }))
            .collect()
    }

    /// The tips to catch, in the order to catch them. In a hurry it is the middle one of each section; of a boom in one
    /// piece both ends and the middle.
    #[must_use]
    pub fn tips(&self, machine: Option<&Machine>) -> Vec<u32> {
        let Some(machine) = machine else { return Vec::new() };
        let Some(boom) = machine.boom() else { return (1..=machine.tips()).collect() };
        let all = boom.tips();
        if !self.is_short() {
            return (1..=all).collect();
        }
        let mut first = 1;
        let mut sections: Vec<(u32, u32)> = Vec::new();
        for section in boom.positions().chunk_by(|one, next| one.section == next.section) {
            let tips = u32::try_from(section.len()).unwrap_or(u32::MAX);
            sections.push((first, first + tips - 1));
            first += tips;
        }
        match sections.as_slice() {
            [(first, last)] if last - first >= 2 => vec![*first, u32::midpoint(*first, *last), *last],
            sections => sections.iter().map(|(first, last)| u32::midpoint(*first, *last)).collect(),
        }
    }
}
