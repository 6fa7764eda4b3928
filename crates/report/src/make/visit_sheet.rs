//! The visit's sheet: the answer first, on one page; how it was reached on the pages behind it.

use calibration::diagnosis::Diagnosed;
use visit::Visit;
use visit::findings::Outcome;
use words::Words;

use super::{Maker, Readers, answers, cups, figures_of, head, likely, repeat, steps, told, worked};
use crate::layout::{fits, fitted};
use crate::sheet::{Block, Column, Lie, Page, Run, Sheet, Step};
use crate::style::SMALLEST_SCALE;

/// Returns the sheet of a visit, for one reader or for two side by side.
#[must_use]
pub fn visit(readers: &Readers<'_>, visit: &Visit, outcome: &Outcome, maker: Maker<'_>) -> Sheet {
    let words = readers.first;
    let diagnosed = cups::diagnosed(visit, outcome);
    let diagnosed = diagnosed.as_ref();
    let lie = if readers.beside.is_some() { Lie::OnItsSide } else { Lie::Upright };
    let paper = words.reader().paper;
    let front = |shown: Shown| Page {
        lie,
        run: Run::OnePage,
        scale: 1.0,
        columns: readers.each().map(|words| front(words, visit, outcome, diagnosed, shown)).collect(),
    };
    let shown = what_fits(steps::steps_and_likely(words, outcome, diagnosed).len(), |shown| {
        fits(paper, &front(shown), SMALLEST_SCALE)
    });
    let mut first = front(shown);
    if !fits(paper, &first, SMALLEST_SCALE) {
        first.run = Run::MayRunOn;
    }
    let mut pages = vec![first];
    pages.extend(readers.each().filter_map(|words| behind(words, visit, outcome, diagnosed, shown)));
    let pages_behind = pages.len() > 1;
    let title =
        super::said::joined(&[Some(&words.label(title_key(outcome))), Some(&head::name(visit))], ": ");
    fitted(Sheet {
        title,
        language: words.reader().language,
        paper,
        pages,
        foot: if pages_behind { head::foot_of_visit(words, maker) } else { head::foot(words, maker) },
    })
}

/// The title says what there is to say: without a rate it is what was found.
fn title_key(outcome: &Outcome) -> &'static str {
    if outcome.rate.is_some() { "sheet-visit_title" } else { "sheet-found_title" }
}

/// What of a visit stands on its first page.
#[derive(Clone, Copy, Debug)]
struct Shown {
    /// So many of the steps.
    steps: usize,
    /// The setting to repeat.
    setting: Place,
}

/// Where something stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Place {
    Front,
    Behind,
}

/// What fits the first page at the smallest letters: all; or all but the setting; or as many steps as it holds. What
/// does not fit stands on the next page, and it is said so.
fn what_fits(all: usize, fits: impl Fn(Shown) -> bool) -> Shown {
    let whole = Shown { steps: all, setting: Place::Front };
    let fewer = (1..=all).rev().map(|steps| Shown { steps, setting: Place::Behind });
    core::iter::once(whole)
        .chain(fewer)
        .find(|shown| fits(*shown))
        .unwrap_or(Shown { steps: all.min(1), setting: Place::Behind })
}

/// The first page in one language.
fn front(
    words: &Words,
    visit: &Visit,
    outcome: &Outcome,
    diagnosed: Option<&Diagnosed>,
    shown: Shown,
) -> Column {
    let mut blocks = vec![head::title(words, visit, words.label(title_key(outcome)))];
    blocks.extend(answers::stops(words, outcome));
    blocks.push(answers::answers(words, visit, outcome));
    blocks.extend(cups::on_the_front(words, visit, outcome, diagnosed));
    if outcome.catch.is_none() {
        blocks.extend(figures_of::spacing(words, outcome));
    }
    let mut told = steps::steps_and_likely(words, outcome, diagnosed);
    let more = told.len().saturating_sub(shown.steps);
    told.truncate(shown.steps);
    blocks.extend(steps::blocks(words, outcome, told));
    if more > 0 {
        blocks.push(Block::Text(words.say("sheet-more_steps", &[("more", super::said::count(more).into())])));
    }
    let catch = outcome.catch.as_ref().zip(diagnosed);
    blocks.extend(catch.and_then(|(catch, found)| likely::next_line(words, catch, found)).map(Block::Text));
    if shown.setting == Place::Front {
        blocks.extend(same_again(words, visit, outcome));
    }
    blocks.push(head::care(words));
    Column { language: words.reader().language, blocks }
}

/// The setting to repeat under its heading.
fn same_again(words: &Words, visit: &Visit, outcome: &Outcome) -> Vec<Block> {
    let pairs = repeat::pairs(words, visit, outcome);
    if pairs.is_empty() {
        return Vec::new();
    }
    vec![Block::Heading(words.label("sheet-same_again")), Block::Facts { pairs, across: 2 }]
}

/// The pages behind, in one language; none where there is nothing to tell on them.
fn behind(
    words: &Words,
    visit: &Visit,
    outcome: &Outcome,
    diagnosed: Option<&Diagnosed>,
    shown: Shown,
) -> Option<Page> {
    let mut blocks = Vec::new();
    let rest: Vec<Step> =
        steps::steps_and_likely(words, outcome, diagnosed).into_iter().skip(shown.steps).collect();
    if !rest.is_empty() {
        blocks.push(Block::Heading(words.label("sheet-what_to_do_on")));
        blocks.push(Block::Steps { from: shown.steps + 1, steps: rest });
    }
    if shown.setting == Place::Behind {
        blocks.extend(same_again(words, visit, outcome));
    }
    blocks.extend(figures_of::rate(words, visit, outcome));
    blocks.extend(cups::behind(words, visit, outcome, diagnosed));
    blocks.extend(worked::cups(words, outcome));
    blocks.extend(worked::tank(words, visit, outcome));
    blocks.extend(figures_of::drive(words, visit, outcome));
    if outcome.catch.is_some() {
        blocks.extend(figures_of::spacing(words, outcome));
    }
    if let Some((catch, found)) = outcome.catch.as_ref().zip(diagnosed) {
        let told = likely::findings_now(catch, found).map(|finding| words.finding_and_action(finding));
        blocks.push(Block::Heading(words.label("likely-head")));
        blocks.push(Block::Notes(told.collect()));
    }
    blocks.extend(figures_of::ground(words, outcome, figures::Across::Page));
    let notes = told::notes(words, outcome);
    if !notes.is_empty() {
        blocks.push(Block::Heading(words.label("sheet-good_to_know")));
        blocks.push(Block::Notes(notes));
    }
    let workings = worked::workings(words, outcome);
    if !workings.is_empty() {
        blocks.push(Block::Heading(words.label("sheet-how_reached")));
        blocks.push(Block::Small(words.label("sheet-how_sure")));
        blocks.extend(workings);
    }
    if blocks.is_empty() {
        return None;
    }
    blocks.insert(0, head::title(words, visit, words.label("sheet-working_title")));
    let column = Column { language: words.reader().language, blocks };
    Some(Page { lie: Lie::Upright, run: Run::MayRunOn, scale: 0.94, columns: vec![column] })
}
