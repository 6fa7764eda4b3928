//! What the drive has to say, in a neighbour's words.

use super::agree::{Difference, disagreeing};
use super::speed::{Direction, DriveSpeed};
use crate::doubt::LARGE;
use units::{Amount, Arg, Finding, Kind, NORMAL_95, Speed, Weight};

/// Faster than any sprayer drives. Our assumption.
const FASTEST: Speed = Speed::miles_per_hour(40.0);
/// Slower than anybody walks with a sprayer. Our assumption.
const SLOWEST: Speed = Speed::miles_per_hour(0.3);

/// All findings, the most pressing first.
pub(super) fn findings(drive: &DriveSpeed) -> Vec<Finding> {
    let mut findings = Vec::new();
    findings.extend(drive.dash.map(|dash| dash.finding()));
    findings.extend(disagree(drive));
    findings.extend(doubtful_speed(drive.speed.value));
    findings.extend(large_doubt(drive));
    findings.extend(drive.short.map(|short| short.finding()));
    findings.extend(outlier(drive));
    findings.extend(too_few(drive));
    findings.extend(both_ways(drive));
    findings.sort_by_key(|finding| finding.weight);
    findings
}

/// A speed that no sprayer has.
pub(crate) fn doubtful_speed(speed: Speed) -> Option<Finding> {
    let finding = if speed > FASTEST {
        Finding::new(
            Weight::Doubt,
            "speed_doubtful_fast",
            "{speed} is faster than any sprayer drives. Are length, time and their units right?",
        )
    } else if speed < SLOWEST {
        Finding::new(
            Weight::Doubt,
            "speed_doubtful_slow",
            "{speed} is slower than anybody sprays. Are length, time and their units right?",
        )
    } else {
        return None;
    };
    Some(finding.with("speed", Arg::Amount(Amount::new(speed, Kind::Speed))))
}

/// A speed that may be so far off that it says next to nothing.
fn large_doubt(drive: &DriveSpeed) -> Option<Finding> {
    let either_way = drive.speed.doubt.relative() * NORMAL_95;
    let largest = drive.speed.doubt.largest().filter(|_| either_way > LARGE)?;
    Some(
        Finding::new(
            Weight::Doubt,
            "speed_doubt_large",
            "The speed may be {either_way} off either way, mostly through {cause}: this says next to nothing.",
        )
        .with("either_way", Arg::Doubt(either_way * 100.0))
        .with("cause", largest.of.word())
        .with("smaller", largest.of.smaller_word())
        .to_do("To narrow it: {smaller}."),
    )
}

fn disagree(drive: &DriveSpeed) -> Option<Finding> {
    let left_out = drive.outlier.map(|outlier| outlier.run);
    let ways = drive.both_ways.map_or(Difference::NotClear, |both| both.difference);
    let (slower, faster, percent) = disagreeing(&drive.runs, left_out, ways)?;
    Some(
        Finding::new(Weight::Settle, "drive_runs_disagree", "Runs {runs} differ by {percent}.")
            .with("runs", Arg::Tips(vec![slower.min(faster), slower.max(faster)]))
            .with("slower", Arg::Count(slower))
            .with("faster", Arg::Count(faster))
            .with("percent", Arg::Percent(percent))
            .to_do("Drive again, both ways, in the same gear at the same engine speed."),
    )
}

fn outlier(drive: &DriveSpeed) -> Option<Finding> {
    let outlier = drive.outlier?;
    Some(
        Finding::new(
            Weight::Doubt,
            "drive_outlier",
            "Run {run} took {time}, the others about {others}. Without it the speed is {without}.",
        )
        .with("run", Arg::Count(outlier.run))
        .with("time", Arg::Amount(Amount::new(outlier.time, Kind::Time)))
        .with("others", Arg::Amount(Amount::new(outlier.others, Kind::Time)))
        .with("without", Arg::Amount(Amount::new(outlier.without, Kind::Speed)))
        .to_do("Drive that one again."),
    )
}

fn too_few(drive: &DriveSpeed) -> Option<Finding> {
    let first = drive.runs.first()?.direction;
    if drive.runs.len() == 1 {
        return Some(
            Finding::new(Weight::Doubt, "drive_one_run", "One run is not enough to trust.")
                .to_do("Drive the course once more, the other way."),
        );
    }
    let one_way = first != Direction::Unknown && drive.runs.iter().all(|run| run.direction == first);
    one_way.then(|| {
        Finding::new(
            Weight::Doubt,
            "drive_one_direction",
            "All runs went the same way, so slope and wind are in the speed.",
        )
        .to_do("Drive the other way too.")
    })
}

fn both_ways(drive: &DriveSpeed) -> Option<Finding> {
    let both = drive.both_ways.filter(|both| both.difference == Difference::Clear)?;
    Some(
        Finding::new(
            Weight::Note,
            "drive_directions_differ",
            "It went {there} there and {back} back: slope or wind.",
        )
        .with("there", Arg::Amount(Amount::new(both.there, Kind::Speed)))
        .with("back", Arg::Amount(Amount::new(both.back, Kind::Speed)))
        .with("percent", Arg::Deviation(both.back_longer_percent))
        .to_do("The speed here is for spraying both ways by turns; the rate is heavier where the sprayer goes slower."),
    )
}
