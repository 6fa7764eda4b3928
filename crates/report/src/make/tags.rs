//! Tags to tie to the bodies whose tips are to be mended, moved or caught again.

use std::collections::BTreeMap;

use units::{Arg, Coded};
use visit::Visit;
use visit::findings::{Action, Outcome, Place, RoundOutcome};
use words::Words;

use super::measured::{shown_reading, state};
use super::said::{capital, joined, shown};
use super::{Maker, Readers, head};
use crate::sheet::{Block, Column, Lie, Page, Run, Sheet, Tag};

/// How many tags go on one sheet of paper. Our own choice: two by four, large enough for wet gloves.
const A_PAGE: usize = 8;

/// Returns a tag for each tip there is something to do about; `None` where there is none.
#[must_use]
pub fn tags(readers: &Readers<'_>, visit: &Visit, outcome: &Outcome, maker: Maker<'_>) -> Option<Sheet> {
    let words = readers.first;
    let tags = tip_by_tip(readers, visit, outcome);
    if tags.is_empty() {
        return None;
    }
    let pages = tags.chunks(A_PAGE).map(|tags| Page {
        lie: Lie::Upright,
        run: Run::OnePage,
        scale: 1.0,
        columns: vec![Column { language: words.reader().language, blocks: vec![Block::Tags(tags.to_vec())] }],
    });
    Some(Sheet {
        title: joined(&[Some(&words.label("tags-title")), Some(&head::name(visit))], ": "),
        language: words.reader().language,
        paper: words.reader().paper,
        pages: pages.collect(),
        foot: head::foot(words, maker),
    })
}

/// What stands on a tag in each language: what is wrong in a word, and what to do.
type Said<'a> = Box<dyn Fn(&Words) -> (String, String) + 'a>;

fn tip_by_tip(readers: &Readers<'_>, visit: &Visit, outcome: &Outcome) -> Vec<Tag> {
    // A tip has one tag: the first, which is the most urgent; a move comes after what is wrong with the tip itself.
    let mut wrong: BTreeMap<u32, Said<'_>> = BTreeMap::new();
    let now = outcome.catch.as_ref().map(visit::findings::CatchOutcome::now);
    for action in outcome.actions.iter().filter(|action| action.place == Place::Tips) {
        for number in tips_of(action) {
            wrong
                .entry(number)
                .or_insert_with(|| Box::new(move |words| (word(words, now, number), what(words, action))));
        }
    }
    for one in outcome.spacing.iter().flat_map(|spacing| &spacing.moves) {
        wrong.entry(one.tip).or_insert_with(|| {
            Box::new(|words| (words.label("tags-out_of_place"), words.finding(&one.finding())))
        });
    }
    let all = visit.machine.as_ref().map_or(0, visit::record::Machine::tips);
    wrong.into_iter().map(|(number, said)| tag(readers, visit, now, number, all, &said)).collect()
}

/// What to do; a cup that settles most is told by its sentence, what it takes by its action.
fn what(words: &Words, action: &Action) -> String {
    if action.finding.code() == "tips_catch_next" {
        return words.finding_and_action(&action.finding);
    }
    words.action(&action.finding).unwrap_or_default()
}

/// What is wrong with a tip, in a word.
fn word(words: &Words, now: Option<&RoundOutcome>, number: u32) -> String {
    let tip = now.and_then(|now| {
        let tip = now.verdicts.summary.tips.iter().find(|tip| tip.number == number)?;
        Some(state(tip, &now.verdicts))
    });
    match tip {
        // In order by its cup, and yet named: it is to be caught once more with others.
        Some("in_order") | None => words.label("tags-catch_again"),
        Some(state) => words.label(&format!("tip_is-{state}")),
    }
}

/// The tips an action is about: those to mend, or those to catch again.
fn tips_of(action: &Action) -> Vec<u32> {
    let args = action.finding.args();
    match args.get("tips").or_else(|| args.get("tip")).or_else(|| args.get("again")) {
        Some(Arg::Tips(tips)) => tips.clone(),
        Some(Arg::Count(tip)) => vec![*tip],
        _ => Vec::new(),
    }
}

fn tag(
    readers: &Readers<'_>,
    visit: &Visit,
    now: Option<&RoundOutcome>,
    number: u32,
    all: u32,
    said: &Said<'_>,
) -> Tag {
    let both = |say: &dyn Fn(&Words) -> String, between: &str| -> String {
        let mut said: Vec<String> = readers.each().map(say).filter(|text| !text.is_empty()).collect();
        said.dedup();
        said.join(between)
    };
    let whose = joined(
        &[
            visit.about.sprayer.as_deref(),
            visit.about.farm.as_deref(),
            visit.about.date.as_deref().map(|date| readers.first.date(date)).as_deref(),
        ],
        " · ",
    );
    Tag {
        number: number.to_string(),
        side: both(&|words| words.say("tags-side", &[("number", number.into()), ("all", all.into())]), "\n"),
        wrong: both(&|words| capital(&said(words).0), " · "),
        read: now.and_then(|now| read(readers.first, now, number)).unwrap_or_default(),
        what: both(&|words| said(words).1, "\n"),
        whose,
    }
}

/// What was read off its cup, with unit and time.
fn read(words: &Words, now: &RoundOutcome, number: u32) -> Option<String> {
    let facts = now.round.tips.iter().find(|tip| tip.number == number)?;
    let tip = now.verdicts.summary.tips.iter().find(|tip| tip.number == number)?;
    let reading = shown_reading(words, &now.round, facts, tip);
    let unit = now.round.unit.as_ref().map(|unit| words.unit(unit)).unwrap_or_default();
    let time = shown(words, now.round.time, units::Kind::Time);
    (!reading.is_empty()).then(|| {
        words.say("tags-read", &[("reading", reading.into()), ("unit", unit.into()), ("time", time.into())])
    })
}
