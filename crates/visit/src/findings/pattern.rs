//! How evenly the ground gets it across the boom: flows from the cups, places from the tape, height and angle as given.

use calibration::catch::{RoundKind, TipState, TipSummary};
use calibration::pattern::{Across, across};
use calibration::spacing::Spacing;
use sprayer::BoomLayout;
use sprayer::pattern::{Fan, Grooves, PATTERN_LIMIT, PatternError, SprayBoom, SprayTip};
use units::{Arg, Finding, Flow, Length, Weight};

use super::catching::CatchOutcome;
use super::error::CheckError;
use crate::record::{Answer, Coverage, LookItem, Visit};

/// The pattern of a visit's boom.
#[derive(Clone, Debug)]
pub struct PatternOutcome {
    /// What the ground gets; absent where the boom is too short to tell.
    pub across: Option<Across>,
    /// What is worth telling besides.
    told: Vec<Finding>,
}

impl PatternOutcome {
    /// Everything that is worth telling, the answer first.
    pub fn findings(&self) -> impl Iterator<Item = &Finding> {
        self.across.iter().flat_map(|across| &across.findings).chain(&self.told)
    }
}

/// Works the pattern out for a boom that sprays the whole width, where its height and the fans' angle are given.
pub(super) fn pattern(
    visit: &Visit,
    spacing: Option<&Spacing>,
    catch: Option<&CatchOutcome>,
) -> Result<Option<PatternOutcome>, CheckError> {
    let Some(machine) = &visit.machine else { return Ok(None) };
    let Coverage::Boom(layout) = &machine.coverage else { return Ok(None) };
    // The way it is driven is the way it sprays; the catch is made parked.
    let setting = visit
        .drive
        .as_ref()
        .map_or_else(|| visit.setting.clone(), |drive| drive.setting.over(&visit.setting));
    let (Some(angle), Some(height)) = (&machine.fan_angle, &setting.boom_height) else { return Ok(None) };
    let places = places(layout, spacing);
    let flows = flows(layout, catch);
    let (angle, height) = (angle.value(), height.value());
    let tips = places.into_iter().zip(flows);
    let tips = tips.map(|(place, flow)| SprayTip { flow, ..SprayTip::new(place, height, angle) }).collect();
    let of = |error: PatternError| {
        let part = match error {
            PatternError::Angle { .. } => "sprayer.fan_angle",
            PatternError::NoHeight { .. } => "setting.boom_height",
            PatternError::AllPlugged => "catch",
            _ => "sprayer",
        };
        CheckError::of(part)(error)
    };
    let found = SprayBoom::new(tips, layout.spacing())
        .and_then(|boom| across(boom, &Fan::tapered(), &Grooves::default(), &PATTERN_LIMIT));
    match found {
        Ok(across) => Ok(Some(PatternOutcome { told: crooked(visit), across: Some(across) })),
        Err(PatternError::NoOverlap { .. } | PatternError::Tips { .. } | PatternError::AllPlugged) => {
            Ok(Some(PatternOutcome { across: None, told: vec![too_short(layout)] }))
        }
        Err(error) => Err(of(error)),
    }
}

/// Where the tips stand: by the tape, where every gap was measured; else one spacing apart.
fn places(layout: &BoomLayout, spacing: Option<&Spacing>) -> Vec<Length> {
    let measured = spacing.filter(|spacing| spacing.gaps.len() + 1 == layout.positions().len());
    let gaps = (1..layout.tips()).map(|gap| {
        let found = measured.and_then(|spacing| spacing.gaps.iter().find(|one| one.number == gap));
        found.map_or(layout.spacing(), |gap| gap.size)
    });
    let mut place = Length::ZERO;
    let mut places = vec![place];
    for gap in gaps {
        place = place + gap;
        places.push(place);
    }
    places
}

/// What each tip gives over the mean of the tips that run: by its last cup; one that nobody caught gives the mean.
fn flows(layout: &BoomLayout, catch: Option<&CatchOutcome>) -> Vec<f64> {
    let Some(catch) = catch else { return vec![1.0; layout.positions().len()] };
    let now = &catch.now().verdicts.summary.tips;
    let running: Vec<Flow> =
        now.iter().filter(|tip| tip.state == TipState::Runs).filter_map(|tip| tip.flow).collect();
    let mean = running.iter().copied().sum::<Flow>() / running.len() as f64;
    let of = |tip: &TipSummary| match (tip.state, tip.flow) {
        (TipState::Plugged, _) => Some(0.0),
        (TipState::Runs, Some(flow)) if !running.is_empty() => Some(flow.ratio_to(mean)),
        _ => None,
    };
    (1..=layout.tips())
        .map(|number| {
            // At another pressure every tip gives something else, and tips that changed places stand where they stood.
            let later = catch.rounds[catch.current + 1..].iter().rev();
            let later = later
                .filter(|round| !matches!(round.round.kind, RoundKind::PressureChanged | RoundKind::Swapped))
                .chain([catch.now()]);
            let tips = later.flat_map(|round| &round.verdicts.summary.tips);
            tips.filter(|tip| tip.number == number).find_map(of).unwrap_or(1.0)
        })
        .collect()
}

fn too_short(layout: &BoomLayout) -> Finding {
    Finding::new(
        Weight::Note,
        "pattern_too_short",
        "How evenly the ground gets it cannot be told: with {tips} tips, or as they run, nowhere do all the fans overlap that \
         would on a longer boom.",
    )
    .with("tips", Arg::Count(layout.tips()))
}

/// What the look found of the fans is not in the picture.
fn crooked(visit: &Visit) -> Vec<Finding> {
    let seen =
        visit.look.iter().any(|(item, answer)| *item == LookItem::FansStraight && *answer == Answer::No);
    let doubt = seen.then(|| {
        Finding::new(
            Weight::Doubt,
            "pattern_without_crooked",
            "The crooked or streaky fans that were seen are not in what the ground gets here: it will be less even.",
        )
    });
    doubt.into_iter().collect()
}
