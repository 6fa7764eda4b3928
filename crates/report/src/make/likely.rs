//! What each tip most likely is, which sections lose flow, and what tips gave that were caught again since.

use calibration::catch::{Round, RoundKind, TipCatches, TipState, TipSummary};
use calibration::diagnosis::{Cause, CheckKind, Diagnosed, NextCheck, SectionDiagnosis, TipDiagnosis};
use units::{Arg, Args, Coded, Finding, Quantity, Verdict};
use visit::findings::{CatchOutcome, RoundOutcome};
use words::Words;

use super::measured::shown_reading;

/// From this chance on a section is told as most likely losing flow. Our own choice, as in `calibration::diagnosis`: more
/// likely than not.
const LIKELY: f64 = 0.5;

/// What a tip may most likely be, as stable words. At its place: not the tip, but the body it sits in, its hose or check valve.
pub const TIP_IS: [&str; 7] =
    ["sound", "worn", "partly_plugged", "plugged", "other_size", "at_place", "doubtful_cup"];

/// What a tip most likely is, as one of [`TIP_IS`], and its chance; `None` where it was not caught.
#[must_use]
pub fn tip_is(tip: &TipDiagnosis) -> Option<(&'static str, f64)> {
    if tip.misread.is_empty() {
        return None;
    }
    let sound = tip.probability_of(Cause::Sound);
    let misread = tip.misread.iter().copied().fold(0.0, f64::max).min(sound);
    // What sits at the place counts among the plugged until two tips were swapped.
    let partly = tip.probability_of(Cause::PartlyPlugged);
    let at_place = tip.at_place.unwrap_or(0.0);
    let of_partly = at_place.min(partly);
    let chances = [
        sound - misread,
        tip.probability_of(Cause::Worn),
        partly - of_partly,
        tip.probability_of(Cause::Plugged) - (at_place - of_partly),
        tip.probability_of(Cause::WrongTip),
        at_place,
        misread,
    ];
    TIP_IS.into_iter().zip(chances).reduce(|best, one| if one.1 > best.1 { one } else { best })
}

/// The same by the tip's number.
#[must_use]
pub fn tip_likely(diagnosed: &Diagnosed, number: u32) -> Option<(&'static str, f64)> {
    tip_is(diagnosed.found.tips.iter().find(|tip| tip.number == number)?)
}

/// What a tip most likely is, in the reader's words.
#[must_use]
pub fn tip_likely_said(words: &Words, is: &str) -> String {
    words.label(&format!("tip_likely-{is}"))
}

/// What is told at the bracket of a section that is shut or loses flow; `None` where it most likely does not.
#[must_use]
pub fn section_said(words: &Words, place: usize, section: &SectionDiagnosis) -> Option<String> {
    let number = Arg::Count(u32::try_from(place + 1).unwrap_or(u32::MAX));
    let args = Args::new().with("section", number);
    if section.probability_shut >= LIKELY {
        return Some(words.say_with("likely-section_shut", &args));
    }
    let loss = Arg::Off { percent: 100.0 * section.loss, limit: None };
    (section.probability_restricted >= LIKELY)
        .then(|| words.say_with("likely-section_loses", &args.with("loss", loss)))
}

/// A tip that was caught again since the round that counts now.
#[derive(Clone, Copy, Debug)]
pub struct Since<'a> {
    /// What it gave against the mean of the round that counts now.
    pub level: f64,
    /// The stable word of how it stands now: in_order, high, low, plugged.
    pub state: &'static str,
    /// Whether something was done at it in between.
    pub repaired: bool,
    round: &'a Round,
    facts: &'a TipCatches,
    tip: &'a TipSummary,
}

impl Since<'_> {
    /// What was read, as people read it.
    #[must_use]
    pub fn reading(&self, words: &Words) -> String {
        shown_reading(words, self.round, self.facts, self.tip)
    }
}

/// What a tip gave the last time it was caught again; `None` where it was not.
#[must_use]
pub fn since(catch: &CatchOutcome, number: u32) -> Option<Since<'_>> {
    let now = catch.now();
    let summary = &now.verdicts.summary;
    // At another pressure every tip gives something else.
    let alike = |later: &&RoundOutcome| later.round.kind != RoundKind::PressureChanged;
    catch.rounds[catch.current + 1..].iter().rev().filter(alike).find_map(|later| {
        let tip = later.verdicts.summary.tips.iter().find(|tip| tip.number == number)?;
        let facts = later.round.tips.iter().find(|facts| facts.number == number)?;
        let mean = summary.groups.iter().find(|group| group.group == tip.group)?.mean?;
        let level = tip.flow?.si() / mean.si();
        let state = match (tip.state, now.verdicts.limit.as_read(level - 1.0)) {
            (TipState::NotCaught, _) => return None,
            (TipState::Plugged, _) => "plugged",
            (TipState::Runs, Verdict::Within | Verdict::CannotTell) => "in_order",
            (TipState::Runs, Verdict::Outside) if level > 1.0 => "high",
            (TipState::Runs, Verdict::Outside) => "low",
        };
        // A second cup of an untouched tip and a swap mend nothing.
        let repaired = !matches!(later.round.kind, RoundKind::AsFound | RoundKind::Swapped);
        Some(Since { level, state, repaired, round: &later.round, facts, tip })
    })
}

/// How many tips stand how, each by its newest reading since something was done at it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Standing {
    /// Within the limit.
    pub within: usize,
    /// Beyond it, or plugged.
    pub off: usize,
    /// Not to be told yet.
    pub open: usize,
}

/// How the tips stand now.
#[must_use]
pub fn standing(catch: &CatchOutcome) -> Standing {
    let mut standing = Standing::default();
    for tip in &catch.now().verdicts.summary.tips {
        let seen_to = since(catch, tip.number).filter(|since| since.repaired);
        match (seen_to.map(|since| since.state), tip.state, tip.verdict) {
            (Some("in_order"), _, _) | (None, _, Some(Verdict::Within)) => standing.within += 1,
            (Some(_), _, _) | (None, TipState::Plugged, _) | (None, _, Some(Verdict::Outside)) => {
                standing.off += 1;
            }
            (None, _, Some(Verdict::CannotTell)) => standing.open += 1,
            (None, _, None) => {}
        }
    }
    standing
}

/// What is most likely wrong, the most pressing first, but for tips that were seen to since.
pub fn findings_now<'a>(
    catch: &'a CatchOutcome,
    diagnosed: &'a Diagnosed,
) -> impl Iterator<Item = &'a Finding> {
    let open = |finding: &&Finding| match finding.args().get("tip") {
        Some(Arg::Count(tip)) => !seen_to(catch, *tip),
        _ => true,
    };
    diagnosed.findings.iter().filter(open)
}

/// What is told of sections and of the lie of the whole boom, which no step of a tip, of the look or of the rate says already.
const OF_MORE: [&str; 5] =
    ["boom_is_off", "section_shut", "section_restricted", "boom_one_side", "boom_tapers"];

/// What is to be done of that, where it is about more than a tip.
pub fn of_more_than_a_tip<'a>(
    catch: &'a CatchOutcome,
    diagnosed: &'a Diagnosed,
) -> impl Iterator<Item = &'a Finding> {
    findings_now(catch, diagnosed).filter(|finding| OF_MORE.contains(&finding.code()))
}

/// The checks worth making, the best first, but for those of tips that were seen to since.
pub fn checks_now<'a>(
    catch: &'a CatchOutcome,
    diagnosed: &'a Diagnosed,
) -> impl Iterator<Item = &'a NextCheck> {
    let open =
        |check: &&NextCheck| check.tips.is_empty() || !check.tips.iter().all(|tip| seen_to(catch, *tip));
    diagnosed.next.iter().filter(open)
}

/// Whether something was done at a tip since the round that counts now, and it was caught again.
fn seen_to(catch: &CatchOutcome, tip: u32) -> bool {
    since(catch, tip).is_some_and(|since| since.repaired)
}

/// The next best check in one line, with how it is done safely; `None` where nothing more is worth checking.
#[must_use]
pub fn next_line(words: &Words, catch: &CatchOutcome, diagnosed: &Diagnosed) -> Option<String> {
    let check = checks_now(catch, diagnosed).next()?;
    // How cups are caught safely stands on every sheet already.
    let how = (check.kind != CheckKind::CatchAgain).then(|| check_how(words, check.kind));
    let what = [Some(check_said(words, check)), how].into_iter().flatten().collect::<Vec<_>>().join(" ");
    let minutes = check_minutes(words, check);
    Some(words.say("likely-next_line", &[("what", what.into()), ("minutes", minutes.into())]))
}

/// What a check is, in the reader's words.
#[must_use]
pub fn check_said(words: &Words, check: &NextCheck) -> String {
    let place = check.section.map_or(0, |place| place + 1);
    let args = Args::new()
        .with("tips", Arg::Tips(check.tips.clone()))
        .with("section", Arg::Count(u32::try_from(place).unwrap_or(u32::MAX)));
    words.say_with(&format!("check-{}", check.kind.word()), &args)
}

/// How it is done safely.
#[must_use]
pub fn check_how(words: &Words, kind: CheckKind) -> String {
    words.label(&format!("likely-how_{}", kind.word()))
}

/// The minutes it takes.
#[must_use]
pub fn check_minutes(words: &Words, check: &NextCheck) -> String {
    let minutes = check.minutes.round().max(1.0);
    words.say("likely-minutes", &[("minutes", words.number(minutes).into())])
}
