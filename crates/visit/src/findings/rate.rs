//! What the sprayer puts out: the catch with the drive, beside what a refill says.

use calibration::catch::total_flow;
use calibration::doubt::Known;
use calibration::drive::DriveSpeed;
use calibration::rate::{
    Band, Boomless, BroadcastWidth, Collected, Directed, DistanceRefill, EffectiveSwath, FlowSpeedWidth,
    FromRow, HandWalking, KnownArea, Overlap, Rate, RateError,
};
use units::{Amount, Arg, AsWritten, Finding, Flow, Kind, Length, Ranged, Speed, VolumePerArea, Weight};

use super::catching::CatchOutcome;
use super::error::CheckError;
use super::plugged;
use super::repeat::Repeat;
use crate::record::{Coverage, Machine, Swath, UsedOver, Visit, round_said};

/// What the sprayer puts out.
#[derive(Clone, Debug)]
pub struct RateOutcome {
    /// The rate by each method there are readings for; the first is the one that counts.
    pub rates: Vec<Rate>,
    /// The share of the ground that is treated, where only bands are sprayed; the rate is then that of the bands.
    pub treated: Option<f64>,
    /// The rate of the carrier that will be sprayed, where it is heavier or lighter than water.
    pub carrier: Option<Ranged<VolumePerArea>>,
    /// The tips that were plugged while it was measured.
    pub plugged: Vec<u32>,
    /// What it will put out once they run as the others of their group do.
    pub once_cleaned: Option<Ranged<VolumePerArea>>,
    /// What is worth telling beside what each rate tells itself.
    pub own_findings: Vec<Finding>,
}

impl RateOutcome {
    /// The rate that counts, with water.
    #[must_use]
    pub fn main(&self) -> &Rate {
        &self.rates[0]
    }

    /// The rate of what will be sprayed.
    #[must_use]
    pub fn of_mix(&self) -> Ranged<VolumePerArea> {
        self.carrier.unwrap_or(self.main().rate)
    }

    /// What is worth telling.
    pub fn findings(&self) -> impl Iterator<Item = &Finding> {
        self.own_findings.iter().chain(self.rates.iter().flat_map(|rate| &rate.findings))
    }
}

/// Works the rate out by every method there are readings for.
pub(super) fn rate(
    visit: &Visit,
    speed: Option<&DriveSpeed>,
    catch: Option<&CatchOutcome>,
    setting: Option<&Repeat>,
) -> Result<Option<RateOutcome>, CheckError> {
    let mut rates = Vec::new();
    let mut once_cleaned = None;
    if let (Some(machine), Some(speed), Some(catch)) = (&visit.machine, speed, catch)
        && let Some(flow) = total_flow(&catch.now().round, &catch.now().verdicts.summary, &catch.doubts)
    {
        rates.extend(from_catch(machine, flow, &speed.speed).map_err(CheckError::of("sprayer"))?);
        if let Some(flow) = plugged::flow_once_cleaned(catch) {
            let cleaned = from_catch(machine, flow, &speed.speed).map_err(CheckError::of("sprayer"))?;
            once_cleaned = cleaned.first().map(|rate| rate.rate);
        }
    }
    let from_cups = !rates.is_empty();
    if let Some(refill) = &visit.refill {
        let used = Known::refilled(refill.used.value());
        let rate = match &refill.over {
            UsedOver::Area(area) => KnownArea { used, area: Known::field(area.value()) }.rate(),
            UsedOver::Distance(distance) => {
                let Some(swath) = visit.machine.as_ref().and_then(swath_of) else {
                    return Err(CheckError::needed(
                        "refill.distance",
                        "refill_without_swath",
                        "the swath is not known",
                        "give [sprayer] with tips and spacing, or the area instead of the distance",
                    ));
                };
                DistanceRefill { used, distance: Known::taped_course(distance.value()), swath }.rate()
            }
        };
        rates.push(rate.map_err(CheckError::of("refill"))?);
    }
    if rates.is_empty() {
        return Ok(None);
    }
    let treated =
        visit.machine.as_ref().and_then(treated_share).filter(|_| catch.is_some() && rates.len() > 1);
    let mut findings: Vec<Finding> = disagreement(&rates, treated).into_iter().collect();
    findings.extend(treated.map(|share| bands(&rates, share)));
    if setting.is_some_and(Repeat::differ) {
        findings.push(Finding::new(
            Weight::Doubt,
            "rate_of_two_settings",
            "This rate puts together a drive and a catch that were made at different settings.",
        ));
    }
    if let Some(catch) = catch.filter(|catch| catch.current + 1 < catch.rounds.len()) {
        findings.push(
            Finding::new(
                Weight::Settle,
                "rate_before_repair",
                "The rate is from the cups {round}; single tips were caught again since.",
            )
            .with("round", round_said(&catch.now().round.kind))
            .to_do("Catch the whole boom again to know what it puts out now."),
        );
    }
    let carrier = carrier(visit, &rates[0], &mut findings)?;
    let mut plugged_tips = Vec::new();
    if let Some(catch) = catch.filter(|_| from_cups) {
        plugged_tips = catch.plugged();
        let lighter = carrier.map_or(1.0, |carrier| carrier.value.ratio_to(rates[0].rate.value));
        once_cleaned = once_cleaned.map(|rate| rate.map(|rate| rate * lighter));
        findings.extend(once_cleaned.map(|rate| plugged::rate_as_found(&plugged_tips, &rate)));
        findings.extend(plugged::rate_with_uncaught(catch));
    }
    Ok(Some(RateOutcome {
        rates,
        treated,
        carrier,
        plugged: plugged_tips,
        once_cleaned,
        own_findings: findings,
    }))
}

fn from_catch(machine: &Machine, flow: Known<Flow>, speed: &Known<Speed>) -> Result<Vec<Rate>, RateError> {
    let speed = speed.clone();
    Ok(match &machine.coverage {
        Coverage::Boom(boom) => {
            let width = BroadcastWidth::Swath(Known::swath(boom.swath()));
            vec![FlowSpeedWidth { flow, speed, width }.rate()?]
        }
        Coverage::Band { boom, band } => {
            let one = flow.scaled(1.0 / f64::from(boom.tips()));
            let collected = Collected::Flow { flow: one, speed };
            let rows = Known::rows(boom.spacing());
            let rate =
                Band { collected, from: FromRow::AllTips, band: Known::band(band.value()), rows }.rate()?;
            vec![rate.treated, rate.crop]
        }
        Coverage::Directed { boom, row, tips_per_row } => {
            let one = flow.scaled(1.0 / f64::from(boom.tips()));
            let collected = Collected::Flow { flow: one, speed };
            let from = FromRow::OneOf(*tips_per_row);
            vec![Directed { collected, from, rows: Known::rows(row.value()) }.rate()?]
        }
        Coverage::Boomless { swath, .. } => {
            let swath = match swath {
                Swath::PassToPass(length) => EffectiveSwath::Given(Known::swath_by_sight(length.value())),
                Swath::Wetted { wetted, overlap } => EffectiveSwath::Wetted {
                    wetted: Known::swath_by_sight(wetted.value()),
                    overlap: Overlap::PartOfWetted(*overlap),
                },
            };
            vec![Boomless { collected: Collected::Flow { flow, speed }, swath }.rate()?]
        }
        Coverage::Hand { width: Some(width) } => {
            vec![HandWalking { flow, speed, width: Known::swath_by_sight(width.value()) }.rate()?]
        }
        Coverage::Hand { width: None } => Vec::new(),
    })
}

/// The share of the ground that a machine treats, where that is not all of it.
fn treated_share(machine: &Machine) -> Option<f64> {
    match &machine.coverage {
        Coverage::Band { boom, band } => Some(band.value().ratio_to(boom.spacing())),
        _ => None,
    }
}

/// The swath that a driven distance is multiplied with.
fn swath_of(machine: &Machine) -> Option<Known<Length>> {
    match &machine.coverage {
        Coverage::Boom(boom) | Coverage::Band { boom, .. } | Coverage::Directed { boom, .. } => {
            Some(Known::swath(boom.swath()))
        }
        Coverage::Boomless { swath: Swath::PassToPass(length), .. } => {
            Some(Known::swath_by_sight(length.value()))
        }
        Coverage::Boomless { swath: Swath::Wetted { wetted, overlap }, .. } => {
            Some(Known::swath_by_sight(wetted.value() * (1.0 - overlap)))
        }
        Coverage::Hand { width } => width.as_ref().map(|width| Known::swath_by_sight(width.value())),
    }
}

/// Two methods whose ranges do not meet: one of the readings is wrong. A refill is for the whole field, so beside
/// bands it is held against the rate over the whole row.
fn disagreement(rates: &[Rate], treated: Option<f64>) -> Option<Finding> {
    let refill = rates.last()?;
    let caught = rates.get(usize::from(treated.is_some()))?;
    let meet = caught.rate.low <= refill.rate.high && refill.rate.low <= caught.rate.high;
    if caught.method == refill.method || meet {
        return None;
    }
    let finding = Finding::new(
        Weight::Act,
        "rate_methods_disagree",
        "The catch says {catch} and the refill {refill}; they do not agree.",
    )
    .with("catch", Arg::Amount(Amount::ranged(&caught.rate, Kind::Rate)))
    .with("refill", Arg::Amount(Amount::ranged(&refill.rate, Kind::Rate)))
    .to_do(
        "Look at the speed, the swath and the gallons filled up; one of them is wrong. Drive and fill again.",
    );
    Some(finding)
}

/// What to say of bands: the rate is on treated ground, which is only a part of the field.
fn bands(rates: &[Rate], share: f64) -> Finding {
    let finding = Finding::new(
        Weight::Note,
        "rate_on_bands",
        "This is the rate on the bands, which are {share} of the ground; over the whole field it is {crop}. The acres of a \
         tank are treated acres.",
    )
    .with("share", Arg::Percent(100.0 * share));
    match rates.get(1) {
        Some(crop) => finding.with("crop", Arg::Amount(Amount::ranged(&crop.rate, Kind::Rate))),
        None => finding,
    }
}

/// The rate of a carrier that is not water, and what there is to say about it.
fn carrier(
    visit: &Visit,
    main: &Rate,
    findings: &mut Vec<Finding>,
) -> Result<Option<Ranged<VolumePerArea>>, CheckError> {
    let Some(density) = visit.target.as_ref().and_then(|target| target.carrier.as_ref()) else {
        return Ok(None);
    };
    let factor =
        sprayer::density_factor(density.value()).map_err(CheckError::of("target.carrier_density"))?;
    let ranged = main.rate.map(|rate| rate / factor);
    findings.push(
        Finding::new(
            Weight::Note,
            "rate_of_carrier",
            "With water it puts out {water}; of this carrier, {density}, it will put out {rate}.",
        )
        .with("water", Arg::Amount(Amount::ranged(&main.rate, Kind::Rate)))
        .with("density", Arg::Text(AsWritten::text(density).to_string()))
        .with("rate", Arg::Amount(Amount::ranged(&ranged, Kind::Rate))),
    );
    Ok(Some(ranged))
}
