//! The row of cups of a visit, as a drawing for its sheets and as a sheet of its own.

use core::ops::Range;
use std::collections::BTreeMap;

use calibration::diagnosis::Diagnosed;
use figures::{
    CupMark, CupShown, Density, Drawing, LimitBand, RowOfCups, Seen, TipGroup, TipShape, TipShown,
};
use sprayer::{GroupId, Mounting};
use units::{Arg, Args, Coded, Quantity, Verdict};
use visit::Visit;
use visit::findings::{Outcome, RoundOutcome, diagnosis};
use words::Words;

use super::likely::{section_said, since, tip_likely, tip_likely_said};
use super::measured::{shown_reading, state};
use super::said::{capital, count, joined};
use super::worked::round_heading;
use super::{Maker, Readers, head};
use crate::layout::fitted;
use crate::sheet::{Block, Column, Lie, Page, Run, Sheet};

/// The row of cups by itself, large on a sheet of paper; `None` where no cup was caught.
#[must_use]
pub fn cups(readers: &Readers<'_>, visit: &Visit, outcome: &Outcome, maker: Maker<'_>) -> Option<Sheet> {
    let words = readers.first;
    let catch = outcome.catch.as_ref()?;
    let diagnosed = diagnosed(visit, outcome);
    let column = |words: &Words| {
        let mut blocks = vec![head::title(words, visit, words.label("cups-title"))];
        blocks.extend(self::blocks(words, visit, outcome, diagnosed.as_ref()));
        Column { language: words.reader().language, blocks }
    };
    let tips = catch.now().verdicts.summary.tips.len();
    let pages = readers.each().map(|words| Page {
        // One row is largest on its side; several rows stand better upright.
        lie: if tips <= IN_A_ROW { Lie::OnItsSide } else { Lie::Upright },
        run: if tips <= IN_A_DRAWING { Run::OnePage } else { Run::MayRunOn },
        scale: 1.0,
        columns: vec![column(words)],
    });
    Some(fitted(Sheet {
        title: joined(&[Some(&words.label("cups-title")), Some(&head::name(visit))], ": "),
        language: words.reader().language,
        paper: words.reader().paper,
        pages: pages.collect(),
        foot: head::foot(words, maker),
    }))
}

/// What is most likely wrong with the boom of a visit; `None` where that cannot be told, and of what is no boom.
pub fn diagnosed(visit: &Visit, outcome: &Outcome) -> Option<Diagnosed> {
    visit.machine.as_ref()?.boom()?;
    diagnosis(visit, outcome).ok().flatten()
}

/// How many tips stand in a row of a long boom.
const IN_A_ROW: usize = 72;
/// How many tips one drawing shows, so that it never is higher than a page. Our own choice: three rows.
const IN_A_DRAWING: usize = 3 * IN_A_ROW;
/// More tips than these stand behind the first page of a visit's sheet. Our own choice: two rows leave room for the rest.
const ON_THE_FRONT: usize = 2 * IN_A_ROW;

/// What the first page of a visit's sheet shows of the cups: the row itself, or of a very long boom where it stands.
pub fn on_the_front(
    words: &Words,
    visit: &Visit,
    outcome: &Outcome,
    diagnosed: Option<&Diagnosed>,
) -> Vec<Block> {
    let Some(catch) = &outcome.catch else { return Vec::new() };
    let tips = catch.now().verdicts.summary.tips.len();
    if tips <= ON_THE_FRONT {
        return blocks(words, visit, outcome, diagnosed);
    }
    let told = [
        Some(description(words, catch.now())),
        plain_means(words, catch.now()),
        Some(words.label("cups-stand_behind")),
    ];
    vec![Block::Text(told.into_iter().flatten().collect::<Vec<_>>().join(" "))]
}

/// The row of a boom that was too long for the first page.
pub fn behind(words: &Words, visit: &Visit, outcome: &Outcome, diagnosed: Option<&Diagnosed>) -> Vec<Block> {
    let long =
        outcome.catch.as_ref().is_some_and(|catch| catch.now().verdicts.summary.tips.len() > ON_THE_FRONT);
    if long { blocks(words, visit, outcome, diagnosed) } else { Vec::new() }
}

/// The drawing with what each tip most likely is, its caption, key, and what was caught again since.
#[must_use]
pub fn blocks(words: &Words, visit: &Visit, outcome: &Outcome, diagnosed: Option<&Diagnosed>) -> Vec<Block> {
    let Some(catch) = &outcome.catch else { return Vec::new() };
    let now = catch.now();
    let tips = now.verdicts.summary.tips.len();
    let mut blocks: Vec<Block> = (0..tips.div_ceil(IN_A_DRAWING).max(1))
        .filter_map(|part| {
            let shown = part * IN_A_DRAWING..((part + 1) * IN_A_DRAWING).min(tips);
            row_of_cups(words, visit, outcome, diagnosed, shown)
        })
        .map(|drawing| Block::Drawing(Box::new(drawing)))
        .collect();
    let mut caption = vec![round_heading(words, now)];
    caption.extend(plain_means(words, now));
    let signs = now.verdicts.summary.tips.iter().any(|tip| state(tip, &now.verdicts) != "in_order");
    caption.extend(signs.then(|| words.label("cups-key")));
    caption.extend(diagnosed.is_some().then(|| words.label("likely-key")));
    blocks.push(Block::Small(caption.join(" · ")));
    let since: Vec<String> = catch.rounds[catch.current + 1..]
        .iter()
        .flat_map(|round| &round.verdicts.findings)
        .filter(|finding| finding.code() == "tip_caught_again")
        .map(|finding| words.finding(finding))
        .collect();
    if !since.is_empty() {
        blocks.push(Block::Small(words.say("cups-since", &[("found", since.join(" ").into())])));
    }
    blocks
}

/// The mean in plain words; the spread is for the working.
fn plain_means(words: &Words, now: &RoundOutcome) -> Option<String> {
    let [group] = now.verdicts.summary.groups.as_slice() else { return None };
    let mean = group.mean.filter(|_| group.running.len() > 1)?;
    let mean = words.amount(&super::measured::caught(&now.round, mean));
    Some(words.say("cups-mean", &[("mean", mean.into())]))
}

/// The row of cups of the round that counts now, of the tips at these places of it.
fn row_of_cups(
    words: &Words,
    visit: &Visit,
    outcome: &Outcome,
    diagnosed: Option<&Diagnosed>,
    of: Range<usize>,
) -> Option<Drawing> {
    let catch = outcome.catch.as_ref()?;
    let now = catch.now();
    let verdicts = &now.verdicts;
    let tips = &verdicts.summary.tips;
    let boom = visit.machine.as_ref().and_then(|machine| machine.boom());
    let means: BTreeMap<GroupId, f64> =
        verdicts.summary.groups.iter().filter_map(|group| Some((group.group, group.mean?.si()))).collect();
    // Cups are drawn against the fullest group, so that none of the others runs over.
    let reference = means.values().copied().fold(0.0, f64::max);
    let order: Vec<GroupId> = means.keys().copied().collect();
    let places = places(outcome);
    let cups = tips.iter().enumerate().take(of.end).skip(of.start).map(|(index, tip)| {
        let facts = now.round.tips.iter().find(|facts| facts.number == tip.number);
        let reading = facts.map(|facts| shown_reading(words, &now.round, facts, tip)).unwrap_or_default();
        let own = means.get(&tip.group).copied().unwrap_or(reference) / reference.max(f64::MIN_POSITIVE);
        let level = tip.flow.filter(|_| reference > 0.0).map(|flow| flow.si() / reference);
        let word = state(tip, verdicts);
        // Of what was seen to since, the newest reading stands in place of what it most likely was.
        let seen_to = since(catch, tip.number).filter(|since| since.repaired);
        let likely = match (seen_to, diagnosed) {
            (Some(since), Some(_)) => {
                let now = Args::new().with("reading", Arg::Text(since.reading(words)));
                let shape = if since.state == "in_order" { TipShape::Mended } else { TipShape::StillOff };
                Some(TipShown { shape, word: words.say_with("likely-now", &now) })
            }
            (None, Some(found)) => tip_likely(found, tip.number)
                .map(|(is, _)| TipShown { shape: shape(is), word: tip_likely_said(words, is) }),
            (_, None) => None,
        };
        CupShown {
            number: tip.number,
            id: format!("cup-{}", tip.number),
            place: places.get(index).copied(),
            level,
            low: tip.measured.map(|range| (1.0 + range.low) * own),
            high: tip.measured.map(|range| (1.0 + range.high) * own),
            reading,
            mark: mark(word),
            word: words.label(&format!("tip_is-{word}")),
            group: (order.len() > 1).then(|| order.iter().position(|group| *group == tip.group)).flatten(),
            likely,
        }
    });
    let cups: Vec<CupShown> = cups.collect();
    let groups = order.iter().filter(|_| order.len() > 1).map(|group| TipGroup {
        // The usual group has no name of a person's giving.
        label: match boom.and_then(|boom| boom.groups().iter().find(|known| known.id == *group)) {
            Some(known) if known.id != GroupId(0) => known.name.clone(),
            _ => words.label("group-boom"),
        },
        about: means.get(group).copied().unwrap_or(reference) / reference.max(f64::MIN_POSITIVE),
    });
    // Who catches under a front boom stands before it, and there tip 1 is on the right.
    let front = boom.is_some_and(|boom| boom.mounting() == Mounting::Front);
    let row = RowOfCups {
        id: format!("cups-{}-{}", of.start + 1, words.reader().language.tag()),
        language: words.reader().language.tag().to_string(),
        title: capital(&round_heading(words, now)),
        description: description(words, now),
        over_sections: over_sections(words, diagnosed, &of),
        sections: sections(visit, tips.len(), &of),
        groups: groups.collect(),
        limit: limit(words, now),
        density: Density::for_tips(cups.len(), 1),
        per_row: None,
        seen: if front { Seen::FromTheFront } else { Seen::AsTheDriverSits },
        left_end: if front { words.label("cups-left") } else { String::new() },
        right_end: if front { words.label("cups-right") } else { String::new() },
        cups,
    };
    Some(row.draw())
}

fn shape(is: &str) -> TipShape {
    match is {
        "worn" => TipShape::Worn,
        "partly_plugged" => TipShape::PartlyPlugged,
        "plugged" => TipShape::Plugged,
        "other_size" => TipShape::OtherSize,
        "at_place" => TipShape::AtPlace,
        "doubtful_cup" => TipShape::DoubtfulCup,
        _ => TipShape::Sound,
    }
}

/// What stands over the brackets of sections that lose flow, by their places among the sections of the tips drawn.
fn over_sections(words: &Words, diagnosed: Option<&Diagnosed>, of: &Range<usize>) -> Vec<(usize, String)> {
    let Some(diagnosed) = diagnosed else { return Vec::new() };
    let found = &diagnosed.found;
    let first = found.tips.get(of.start).map_or(0, |tip| tip.section);
    let told = found.sections.iter().enumerate().skip(first);
    told.filter_map(|(place, section)| Some((place - first, section_said(words, place, section)?))).collect()
}

fn mark(word: &str) -> CupMark {
    match word {
        "high" => CupMark::High,
        "low" => CupMark::Low,
        "worn" => CupMark::Worn,
        "plugged" => CupMark::Plugged,
        "not_caught" => CupMark::NotCaught,
        "cannot_tell" => CupMark::CannotTell,
        _ => CupMark::Quiet,
    }
}

fn description(words: &Words, now: &RoundOutcome) -> String {
    let tips = &now.verdicts.summary.tips;
    let are = |verdict| count(tips.iter().filter(|tip| tip.verdict == Some(verdict)).count());
    words.say(
        "cups-describe",
        &[
            ("all", count(tips.len()).into()),
            ("outside", are(Verdict::Outside).into()),
            ("open", are(Verdict::CannotTell).into()),
        ],
    )
}

fn limit(words: &Words, now: &RoundOutcome) -> Option<LimitBand> {
    let limit = &now.verdicts.limit;
    let side = |share: f64| share.is_finite().then_some(share);
    let (below, above) = (side(limit.below()), side(limit.above()));
    let text = |share: Option<f64>, sign: &str| {
        share.map_or(String::new(), |share| {
            let percent = units::sensible(units::tidy_digits(100.0 * share));
            format!("{sign}{} %", words.digits(&percent))
        })
    };
    (below.is_some() || above.is_some()).then(|| LimitBand {
        below,
        above,
        above_label: text(above, "+"),
        label: words.label("cups-limit"),
        below_label: text(below, "−"),
    })
}

/// How many tips each section has among those drawn, where the boom is divided into more than one.
fn sections(visit: &Visit, tips: usize, of: &Range<usize>) -> Vec<u32> {
    let Some(boom) = visit.machine.as_ref().and_then(|machine| machine.boom()) else { return Vec::new() };
    let positions = boom.positions();
    let several = positions.iter().any(|position| position.section != positions[0].section);
    if !several || positions.len() != tips {
        return Vec::new();
    }
    let mut sizes: BTreeMap<u16, u32> = BTreeMap::new();
    for position in &positions[of.clone()] {
        *sizes.entry(position.section).or_default() += 1;
    }
    sizes.into_values().collect()
}

/// Where the tips stand along the boom in metres, where their gaps were measured.
fn places(outcome: &Outcome) -> Vec<f64> {
    let Some(spacing) = &outcome.spacing else { return Vec::new() };
    let mut places = vec![0.0];
    for gap in &spacing.gaps {
        let last = places.last().copied().unwrap_or(0.0);
        places.push(last + gap.size.si());
    }
    places
}
