//! Ailing sprayers diagnosed, and the diagnosis held against the truth.

use calibration::catch::{Catch, Round, RoundKind, TipCatches};
use calibration::diagnosis::{
    CheckKind, Checking, Diagnosis, DiagnosisModel, Rated, Seen, diagnose, next_checks,
};
use simulator::{Part, Random};
use sprayer::{GroupId, RatedFlow, WATER_AT_20_C};
use units::{Caught, Dimension, Flow, Marks, Pressure, Time, quantity};

use crate::ailing::{Ailing, AilingWorld, Truth};
use crate::draw::DrawError;
use crate::split::{Cores, in_order};

/// One tip's diagnosis beside its truth.
#[derive(Clone, Copy, Debug)]
pub struct TipScore {
    /// The chance of each cause.
    pub causes: [f64; 5],
    /// The true one's place.
    pub truth: usize,
    /// The chance that its cup was a slip.
    pub misread: f64,
    /// Whether it was.
    pub slipped: bool,
    /// The chance that it is sound and its cups read right.
    pub in_order: f64,
    /// What was read against what a sound tip gives in this place, read right: what a judge who knows the place would go by.
    pub against_sound: f64,
    /// How far its reading is from the mean, the median and the rated flow, as plain rules look at it.
    pub off: [f64; 3],
}

/// One section's diagnosis beside its truth.
#[derive(Clone, Copy, Debug)]
pub struct SectionScore {
    /// The chance that it is restricted.
    pub restricted: f64,
    /// What it truly loses.
    pub loss: f64,
    /// Whether the range holds that.
    pub covered: bool,
}

/// One sprayer scored.
#[derive(Clone, Debug)]
pub struct SprayerScore {
    /// Its tips.
    pub tips: Vec<TipScore>,
    /// Its sections.
    pub sections: Vec<SectionScore>,
    /// How many cups were caught again.
    pub again: u32,
    /// How many tips were looked at.
    pub looked: u32,
}

/// What is done before the diagnosis is scored.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Done {
    /// Each tip was caught once.
    Once,
    /// The cups that the diagnosis names were caught again, once.
    NamedAgain,
    /// The cups that the diagnosis names where it may name three at most.
    ThreeAgain,
    /// The cups that the diagnosis names were caught again, and the tips looked at whose size it wants to be looked at.
    NamedAgainAndLooked,
}

/// How often somebody who looks at a tip of another size sees that, and how often a right one is taken for wrong: numbers are
/// small and dirty. Our assumption, worse than what the inference believes.
const SEEN: (f64, f64) = (0.95, 0.02);

/// Draws sprayers from a seed on and scores their diagnoses.
///
/// *Errors*: text the parser refuses; should not happen.
pub fn scores(
    world: AilingWorld,
    done: Done,
    count: u32,
    from: u64,
    cores: Cores,
) -> Result<Vec<SprayerScore>, DrawError> {
    in_order(count, cores, |place| {
        let seed = from + u64::from(place);
        let mut ailing = Ailing::of(world, seed)?;
        let (mut round, rated) = written(&ailing)?;
        let mut model = DiagnosisModel::default();
        let mut found = diagnose(&round, Some(rated), &model)?;
        let (mut again, mut looked) = (0, 0);
        if done != Done::Once {
            let mut random = Random::new(seed, Part::Catching);
            let usual = Checking::default();
            let most_tips = if done == Done::ThreeAgain { 3 } else { usual.most_tips };
            let next = next_checks(&round, &found, &model, &Checking { most_tips, ..usual });
            let named =
                next.iter().filter(|next| next.kind == CheckKind::CatchAgain).flat_map(|next| &next.tips);
            for number in named {
                let (_, marks) = ailing.again(*number, world, &mut random);
                if let Some(tip) = round.tips.iter_mut().find(|tip| tip.number == *number) {
                    tip.catches.push(cup(marks)?);
                    again += 1;
                }
            }
            if done == Done::NamedAgainAndLooked {
                let looks = next.iter().filter(|next| next.kind == CheckKind::LookAtTip);
                for number in looks.flat_map(|next| next.tips.iter().copied()) {
                    model.seen.push(look(&ailing, number, &mut random));
                    looked += 1;
                }
            }
            found = diagnose(&round, Some(rated), &model)?;
        }
        Ok(SprayerScore { again, looked, ..score(&ailing, &found) })
    })
    .into_iter()
    .collect()
}

/// What somebody who looks at a tip's size sees.
fn look(ailing: &Ailing, tip: u32, random: &mut Random) -> Seen {
    let place = usize::try_from(tip).unwrap_or(usize::MAX).wrapping_sub(1);
    let other = ailing.sections.iter().flatten().nth(place).is_some_and(|tip| tip.truth == Truth::WrongTip);
    let wrong = random.happens(if other { SEEN.0 } else { SEEN.1 });
    if wrong { Seen::WrongSize { tip } } else { Seen::RightSize { tip } }
}

fn cup(marks: u32) -> Result<Catch, DrawError> {
    let of = Marks::every(quantity("10 mL", Dimension::Volume)?)?;
    let caught = Caught::parse(&format!("{} mL", 10 * marks), None)?;
    Ok(Catch::new(caught, Some(of), Time::seconds(30.0), None)?)
}

/// The cups as they are written down.
fn written(ailing: &Ailing) -> Result<(Round, Rated), DrawError> {
    let time = Time::seconds(30.0);
    let mut tips = Vec::new();
    for (section, of_section) in (0_u16..).zip(&ailing.sections) {
        for tip in of_section {
            let number = u32::try_from(tips.len() + 1).unwrap_or(u32::MAX);
            let catches = vec![cup(tip.marks)?];
            tips.push(TipCatches { number, group: GroupId(0), section, catches });
        }
    }
    let rated = RatedFlow::new(Flow::gallons_per_minute(0.3), Pressure::psi(40.0))
        .map_err(calibration::catch::CatchError::NewTip)?;
    let round = Round { kind: RoundKind::AsFound, tips, density: WATER_AT_20_C, time, unit: None };
    Ok((round, Rated { rated, pressure: ailing.pressure }))
}

fn score(ailing: &Ailing, found: &Diagnosis) -> SprayerScore {
    let tips: Vec<_> = ailing.sections.iter().flatten().collect();
    let running: Vec<f64> =
        tips.iter().map(|tip| f64::from(tip.marks)).filter(|marks| *marks > 2.0).collect();
    let mut sorted = running.clone();
    sorted.sort_by(f64::total_cmp);
    let count = running.len().max(1) as f64;
    let mean = running.iter().sum::<f64>() / count;
    let median = sorted.get(sorted.len() / 2).copied().unwrap_or(1.0);
    // 0.15 gal in marks of 10 mL.
    let rated = 0.15 * 378.541_178_4;
    let tips = tips
        .iter()
        .zip(&found.tips)
        .zip(ailing.read_against_sound())
        .map(|((tip, found), against_sound)| TipScore {
            causes: found.causes,
            truth: tip.truth as usize,
            misread: found.misread.first().copied().unwrap_or(0.0),
            slipped: tip.slip,
            in_order: found.in_order,
            against_sound,
            off: [mean, median, rated].map(|against| (f64::from(tip.marks) / against - 1.0).abs()),
        })
        .collect();
    let sections = ailing
        .losses
        .iter()
        .zip(&found.sections)
        .map(|(loss, found)| SectionScore {
            restricted: found.probability_restricted,
            loss: *loss,
            covered: found.low - 1e-3 <= *loss && *loss <= found.high + 1e-3,
        })
        .collect();
    SprayerScore { tips, sections, again: 0, looked: 0 }
}
