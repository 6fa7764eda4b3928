//! What is told of a tip: the likeliest explanations, the likeliest first, and what settles them.

use units::{Arg, Finding, Weight};

use super::answer::{Diagnosis, TipDiagnosis};
use super::cause::Cause;
use super::chance::told;

/// From this chance of a fault on a tip is told as most likely at fault. Our own choice: more likely than not.
pub(super) const LIKELY: f64 = 0.5;
/// From this chance on it is told as open. Our own choice: one in seven, three times what is believed beforehand.
const OPEN: f64 = 0.15;
/// A catch that was misread with this chance is told, whatever the tip is. Our own choice.
const MISREAD: f64 = 0.3;
/// Explanations less likely than this are left out behind the first. Our own choice.
const WORTH_NAMING: f64 = 0.05;
/// What is off by less is neither high nor low (logarithm of flow). Our own choice: twice the spread of new tips.
const OFF: f64 = 0.04;

/// One explanation of what a tip's cups show.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Explained {
    word: OurWord,
    chance: f64,
}

/// A word of ours with its English.
type OurWord = (&'static str, &'static str);

/// What it is called when no tip is at fault.
const MISREAD_CUP: OurWord = ("cause_misread", "a cup misread or mistimed");

/// What may explain a tip's cups, the likeliest first.
pub(super) fn explanations(tip: &TipDiagnosis) -> Vec<Explained> {
    let misread = tip.misread.iter().copied().fold(0.0, f64::max).min(tip.probability_of(Cause::Sound));
    let size: OurWord = if tip.wrong_size_is_larger() {
        ("cause_larger_tip", "a larger tip fitted")
    } else {
        ("cause_smaller_tip", "a smaller tip fitted")
    };
    let of = |word, chance| Explained { word, chance };
    let mut all = vec![
        of(("cause_worn", "a worn tip"), tip.probability_of(Cause::Worn)),
        of(("cause_partly_plugged", "a partly plugged tip"), tip.probability_of(Cause::PartlyPlugged)),
        of(("cause_plugged", "a plugged tip"), tip.probability_of(Cause::Plugged)),
        of(size, tip.probability_of(Cause::WrongTip)),
        of(MISREAD_CUP, misread),
        of(("cause_chance", "a sound tip, off by chance"), tip.probability_of(Cause::Sound) - misread),
    ];
    all.sort_by(|one, other| other.chance.total_cmp(&one.chance));
    all
}

impl TipDiagnosis {
    /// Whether a wrong tip here would be a larger one: where its cups lie under that cause.
    fn wrong_size_is_larger(&self) -> bool {
        let which = Cause::WrongTip.place();
        let others = self.flows.iter().map(|weights| weights[which]);
        let sound: f64 = self.flows.iter().map(|weights| weights[Cause::Sound.place()]).sum();
        let centre = |cause: usize| {
            let places = self.flows.iter().enumerate();
            let (sum, moment) = places.fold((0.0, 0.0), |(sum, moment), (place, weights)| {
                (sum + weights[cause], moment + weights[cause] * place as f64)
            });
            if sum > 0.0 { moment / sum } else { 0.0 }
        };
        let sound_at = if sound > 0.0 { centre(Cause::Sound.place()) } else { 0.0 };
        others.sum::<f64>() > 0.0 && centre(which) > sound_at
    }
}

/// What is told of each tip that is likely at fault or open.
pub(super) fn tips(found: &Diagnosis) -> Vec<Finding> {
    found.tips.iter().filter_map(|tip| one(tip, found)).collect()
}

fn one(tip: &TipDiagnosis, found: &Diagnosis) -> Option<Finding> {
    let faulty = tip.probability_faulty();
    let misread = tip.misread.iter().copied().fold(0.0, f64::max);
    if tip.misread.is_empty() || (faulty < OPEN && misread < MISREAD) {
        return None;
    }
    if let Some(swapped) = swapped(tip) {
        return Some(swapped);
    }
    let explained: Vec<Explained> = explanations(tip)
        .into_iter()
        .enumerate()
        .filter(|(rank, explained)| *rank == 0 || explained.chance >= WORTH_NAMING)
        .map(|(_, explained)| explained)
        .collect();
    let first = *explained.first()?;
    let slip = first.word == MISREAD_CUP;
    if slip && tip.misread.len() > 1 && first.chance >= LIKELY {
        return Some(hardly_counts(tip, first.chance));
    }
    let direction = direction(tip, found);
    let likely = faulty >= LIKELY;
    let alone = neighbour(tip, found).is_none();
    let (case, says) = match (direction, explained.len()) {
        // What was most likely read wrong is read again before anything is taken off.
        (Direction::Low, 1) if slip => {
            ("low_once_sure", "Tip {tip} is low: most likely {first} ({first_chance}).")
        }
        (Direction::Low, _) if slip => (
            "low_once",
            "Tip {tip} is low: most likely {first} ({first_chance}), or {second} ({second_chance}).",
        ),
        (Direction::High, 1) if slip => {
            ("high_once_sure", "Tip {tip} is high: most likely {first} ({first_chance}).")
        }
        (Direction::High, _) if slip => (
            "high_once",
            "Tip {tip} is high: most likely {first} ({first_chance}), or {second} ({second_chance}).",
        ),
        (Direction::Nothing, 1) => {
            ("nothing_sure", "Tip {tip} gives next to nothing: most likely {first} ({first_chance}).")
        }
        (Direction::Nothing, _) => (
            "nothing",
            "Tip {tip} gives next to nothing: most likely {first} ({first_chance}), or {second} ({second_chance}).",
        ),
        (Direction::Low, 1) if alone => {
            ("low_alone_sure", "Tip {tip} is low: most likely {first} ({first_chance}).")
        }
        (Direction::Low, _) if alone => (
            "low_alone",
            "Tip {tip} is low: most likely {first} ({first_chance}), or {second} ({second_chance}).",
        ),
        (Direction::Low, 1) => ("low_sure", "Tip {tip} is low: most likely {first} ({first_chance})."),
        (Direction::Low, _) => {
            ("low", "Tip {tip} is low: most likely {first} ({first_chance}), or {second} ({second_chance}).")
        }
        (Direction::High, 1) => ("high_sure", "Tip {tip} is high: most likely {first} ({first_chance})."),
        (Direction::High, _) => (
            "high",
            "Tip {tip} is high: most likely {first} ({first_chance}), or {second} ({second_chance}).",
        ),
        (Direction::Either, 1) => ("odd_sure", "Tip {tip} is odd: most likely {first} ({first_chance})."),
        (Direction::Either, _) => {
            ("odd", "Tip {tip} is odd: most likely {first} ({first_chance}), or {second} ({second_chance}).")
        }
    };
    let word = |explained: Explained| Arg::word(explained.word.0, explained.word.1);
    let mut finding =
        Finding::new(if likely { Weight::Act } else { Weight::Settle }, "tip_most_likely", says)
            .case(case)
            .with("tip", Arg::Count(tip.number))
            .with("first", word(first))
            .with("first_chance", told(first.chance));
    if let Some(second) = explained.get(1) {
        finding = finding.with("second", word(*second)).with("second_chance", told(second.chance));
    }
    Some(if slip {
        finding.to_do("Catch it again.")
    } else {
        with_what_to_do(finding, direction, tip, found)
    })
}

/// One cup of several was misread: the others tell what the tip gives.
fn hardly_counts(tip: &TipDiagnosis, chance: f64) -> Finding {
    Finding::new(
        Weight::Note,
        "cup_misread",
        "A cup of tip {tip} was most likely misread or mistimed ({chance}). By its other cups the tip is in order; the odd one hardly counts.",
    )
    .with("tip", Arg::Count(tip.number))
    .with("chance", told(chance))
}

/// What a swap told of a tip that is low.
fn swapped(tip: &TipDiagnosis) -> Option<Finding> {
    let low = tip.probability_of(Cause::PartlyPlugged) + tip.probability_of(Cause::Plugged);
    let at_place = tip.at_place.filter(|_| low >= LIKELY)? / low;
    let (case, says, does, chance) = if at_place >= LIKELY {
        (
            "stayed",
            "Place {tip} stays low with another tip in it: most likely the body, the hose to it or its check valve ({chance}).",
            "Pressure off, tank valve shut, gloves on: open that body; clean its strainer, check valve and hose with a soft brush or air, never the mouth. Catch it again.",
            at_place,
        )
    } else {
        (
            "moved",
            "What was low went along with tip {tip}: most likely it is the tip ({chance}).",
            "Pressure off, gloves on: clean the tip and its strainer with a soft brush or air, never the mouth. If it stays low, replace it.",
            1.0 - at_place,
        )
    };
    Some(
        Finding::new(Weight::Act, "tip_swapped", says)
            .case(case)
            .with("tip", Arg::Count(tip.number))
            .with("chance", told(chance))
            .to_do(does),
    )
}

/// Which way a tip's cups are off.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Direction {
    Nothing,
    Low,
    High,
    Either,
}

/// As read: a cup misread high is told as high although the tip is most likely sound.
fn direction(tip: &TipDiagnosis, found: &Diagnosis) -> Direction {
    let Some(read) = tip.read else { return Direction::Either };
    let mut others: Vec<f64> = found
        .tips
        .iter()
        .filter(|other| other.section == tip.section)
        .filter_map(|other| other.read)
        .collect();
    others.sort_by(f64::total_cmp);
    let middle = others[others.len() / 2];
    match tip.probability_of(Cause::Plugged) {
        plugged if plugged >= LIKELY => Direction::Nothing,
        _ if read < middle - OFF => Direction::Low,
        _ if read > middle + OFF => Direction::High,
        _ => Direction::Either,
    }
}

fn with_what_to_do(finding: Finding, direction: Direction, tip: &TipDiagnosis, found: &Diagnosis) -> Finding {
    match direction {
        Direction::Nothing => finding.to_do(
            "Pressure off. Clean the tip and its strainer with a soft brush or air, gloves on, never the mouth, and catch it again.",
        ),
        Direction::Low => {
            let neighbour = neighbour(tip, found);
            match neighbour {
                Some(other) => finding
                    .with("other", Arg::Count(other))
                    .to_do("Swap tips {tip} and {other} and catch both: if the low one moves with the tip, it is the tip."),
                None => finding.to_do("Catch it again, then clean it."),
            }
        }
        Direction::High => finding.to_do("Look at the size and colour of the tip, then catch it again."),
        Direction::Either => finding.to_do("Catch it again."),
    }
}

/// The tip beside it that is surest to be sound.
pub(super) fn neighbour(tip: &TipDiagnosis, found: &Diagnosis) -> Option<u32> {
    if tip.at_place.is_some() {
        // It was swapped already.
        return None;
    }
    found
        .tips
        .iter()
        .filter(|other| other.number.abs_diff(tip.number) == 1 && !other.misread.is_empty())
        .max_by(|one, other| one.probability_of(Cause::Sound).total_cmp(&other.probability_of(Cause::Sound)))
        .filter(|other| other.probability_faulty() < LIKELY)
        .map(|other| other.number)
}
