//! What is aimed at and what is reached, one table a world: once, after the checks that are advised, and what a judge could reach
//! who knows all of the world but the tip.

use crate::ceiling::Judge;
use crate::diagnosed::{SprayerScore, TipScore};
use crate::ratio::{Counted, Ratio};
use crate::tables::diagnosed::{CALLED, faulty, likeliest, odd, of_sections, of_tips, one_if};
use crate::tables::table::{Table, number, percent};

/// A section that loses more is restricted.
const RESTRICTED: f64 = 0.04;
/// The place of a tip of another size among the causes.
const WRONG_TIP: usize = 4;

/// A world as it was drawn, and what was done in it.
pub(crate) struct Reached<'a> {
    /// Its name.
    pub name: &'a str,
    /// What is so in it.
    pub says: &'a str,
    /// The first seed.
    pub from: u64,
    /// What was done, and the scores after it; the first with each tip caught once.
    pub done: Vec<(&'a str, &'a [SprayerScore])>,
    /// The judge, who learned from other sprayers.
    pub judge: Judge,
}

/// One table: its rows by column.
struct Rows<'a> {
    world: &'a Reached<'a>,
    table: Table,
}

impl Rows<'_> {
    /// A row; the judge has a cell only where one is given.
    fn row(
        &mut self,
        figure: &str,
        aim: &str,
        of: &dyn Fn(&[SprayerScore]) -> String,
        judge: Option<String>,
    ) {
        let mut row = vec![figure.to_owned(), aim.to_owned()];
        row.extend(self.world.done.iter().map(|(_, scores)| of(scores)));
        row.push(judge.unwrap_or_default());
        self.table.row(row);
    }
}

/// What is aimed at and what is reached in one world.
pub(crate) fn aims(world: &Reached<'_>) -> Table {
    let count = world.done.first().map_or(0, |(_, scores)| scores.len());
    let says = format!("{} {count} sprayers, seeds from {}.", world.says, world.from);
    let mut heads = vec!["figure", "aim"];
    heads.extend(world.done.iter().map(|(done, _)| *done));
    heads.push("one cup, a judge who knows the rest");
    let table = Table::new(&format!("What is wrong: {}", world.name), &says, &heads);
    let mut rows = Rows { world, table };
    found(&mut rows);
    honest(&mut rows);
    sections_and_cups(&mut rows);
    rows.table
}

fn found(rows: &mut Rows<'_>) {
    rows.row(
        "cups caught again, a sprayer",
        "",
        &|scores| per_sprayer(scores, |score| f64::from(score.again), 2),
        None,
    );
    rows.row(
        "tips looked at, a sprayer",
        "",
        &|scores| per_sprayer(scores, |score| f64::from(score.looked), 2),
        None,
    );
    rows.row(
        "faulty tips called",
        "95 %",
        &|scores| {
            aimed(0.95, &of_tips(scores, |tip| (tip.truth != 0).then(|| one_if(faulty(tip) >= CALLED))))
        },
        None,
    );
    rows.row(
        "sound tips not called",
        "98.5 %",
        &|scores| {
            aimed(0.985, &of_tips(scores, |tip| (tip.truth == 0).then(|| one_if(faulty(tip) < CALLED))))
        },
        None,
    );
    let once = rows.world.done.first().map_or(&[][..], |(_, scores)| *scores);
    let (by_fault, by_odd) = {
        let judge = &rows.world.judge;
        (
            at_specificity(once, |tip| judge.faulty(tip), |tip| tip.truth != 0),
            at_specificity(once, |tip| judge.odd(tip), odd),
        )
    };
    rows.row(
        "faulty tips called where 98.5 % of sound ones are not",
        "95 %",
        &|scores| at_specificity(scores, faulty, |tip| tip.truth != 0),
        Some(by_fault),
    );
    rows.row(
        "faulty or misread, called one or the other",
        "95 %",
        &|scores| aimed(0.95, &of_tips(scores, |tip| odd(tip).then(|| one_if(tip.in_order < CALLED)))),
        None,
    );
    rows.row(
        "sound and read right, not called either",
        "98.5 %",
        &|scores| aimed(0.985, &of_tips(scores, |tip| (!odd(tip)).then(|| one_if(tip.in_order >= CALLED)))),
        None,
    );
    rows.row(
        "faulty or misread, called where 98.5 % of the others are not",
        "95 %",
        &|scores| at_specificity(scores, |tip| 1.0 - tip.in_order, odd),
        Some(by_odd),
    );
    rows.row(
        "false alarms a sprayer",
        "under 0.07 after three cups at most",
        &|scores| {
            let alarms = |score: &SprayerScore| {
                score.tips.iter().filter(|tip| tip.truth == 0 && faulty(tip) >= CALLED).count() as f64
            };
            per_sprayer(scores, alarms, 3)
        },
        None,
    );
}

fn honest(rows: &mut Rows<'_>) {
    rows.row(
        "likeliest cause is right",
        "",
        &|scores| percent(&of_tips(scores, |tip| Some(one_if(likeliest(tip).0 == tip.truth)))),
        None,
    );
    rows.row(
        "log score of a tip",
        "",
        &|scores| number(&of_tips(scores, |tip| Some(-libm::log(tip.causes[tip.truth].max(1e-12)))), 4),
        None,
    );
    let brier = |tip: &TipScore| {
        let off = faulty(tip) - one_if(tip.truth != 0);
        Some(off * off)
    };
    rows.row("Brier score of any fault", "", &|scores| number(&of_tips(scores, brier), 4), None);
    rows.row(
        "expected calibration error",
        "under 1 %",
        &|scores| at_most(0.01, super::diagnosed_reliability::calibration_error(scores)),
        None,
    );
    rows.row("top bin (from 95 %): said less so", "under 2 %", &top_bin, None);
}

fn sections_and_cups(rows: &mut Rows<'_>) {
    rows.row(
        "restricted sections called",
        "97 %",
        &|scores| {
            let called = |one: &crate::diagnosed::SectionScore| {
                (one.loss > RESTRICTED).then(|| one_if(one.restricted >= CALLED))
            };
            aimed(0.97, &of_sections(scores, called))
        },
        None,
    );
    rows.row(
        "sections that lose 6 % or more, called",
        "",
        &|scores| {
            let called = |one: &crate::diagnosed::SectionScore| {
                (one.loss >= 0.06).then(|| one_if(one.restricted >= CALLED))
            };
            percent(&of_sections(scores, called))
        },
        None,
    );
    rows.row(
        "free sections not called",
        "98.5 %",
        &|scores| {
            let spared = |one: &crate::diagnosed::SectionScore| {
                (one.loss <= RESTRICTED).then(|| one_if(one.restricted < CALLED))
            };
            aimed(0.985, &of_sections(scores, spared))
        },
        None,
    );
    rows.row(
        "ranges of loss that hold it",
        "95 %",
        &|scores| aimed(0.95, &of_sections(scores, |one| Some(one_if(one.covered)))),
        None,
    );
    rows.row(
        "tips of another size called that",
        "80 % after the checks",
        &|scores| {
            let called =
                |tip: &TipScore| (tip.truth == WRONG_TIP).then(|| one_if(likeliest(tip).0 == WRONG_TIP));
            percent(&of_tips(scores, called))
        },
        None,
    );
    rows.row(
        "misread cups called",
        "80 % after the checks",
        &|scores| percent(&of_tips(scores, |tip| tip.slipped.then(|| one_if(tip.misread >= CALLED)))),
        None,
    );
    rows.row(
        "cups called misread that are",
        "",
        &|scores| percent(&of_tips(scores, |tip| (tip.misread >= CALLED).then(|| one_if(tip.slipped)))),
        None,
    );
}

fn per_sprayer(scores: &[SprayerScore], of: impl Fn(&SprayerScore) -> f64, digits: usize) -> String {
    let mut ratio = Ratio::default();
    scores.iter().for_each(|score| ratio.draw(Counted { so: of(score), of: 1.0 }));
    number(&ratio, digits)
}

/// A share beside what it should at least be.
fn aimed(aim: f64, ratio: &Ratio) -> String {
    let missed = ratio.value().is_some_and(|value| value < aim);
    format!("{}{}", percent(ratio), if missed { MISSED } else { "" })
}

/// A share beside what it should at most be.
fn at_most(aim: f64, value: f64) -> String {
    format!("{:.2} %{}", 100.0 * value, if value > aim { MISSED } else { "" })
}

/// How an aim that is not reached is marked.
const MISSED: &str = " **missed**";

/// Those that should be called, called at the chance from which 98.5 % of the others are spared.
fn at_specificity(
    scores: &[SprayerScore],
    chance: impl Fn(&TipScore) -> f64,
    should: impl Fn(&TipScore) -> bool,
) -> String {
    let tips = || scores.iter().flat_map(|score| &score.tips);
    let mut others: Vec<f64> = tips().filter(|tip| !should(tip)).map(&chance).collect();
    others.sort_by(f64::total_cmp);
    let place = (others.len() as f64 * 0.985).ceil();
    // A count of tips, far below any limit.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let from = others.get((place as usize).min(others.len().saturating_sub(1))).copied().unwrap_or(1.0);
    let found = of_tips(scores, |tip| should(tip).then(|| one_if(chance(tip) > from)));
    format!("{} (from {from:.2})", aimed(0.95, &found))
}

fn top_bin(scores: &[SprayerScore]) -> String {
    let top = |value: &dyn Fn(usize, f64, usize) -> f64| {
        of_tips(scores, |tip| {
            let (cause, chance) = likeliest(tip);
            (chance >= 0.95).then(|| value(cause, chance, tip.truth))
        })
    };
    let said = top(&|_, chance, _| chance).value().unwrap_or(0.0);
    let so = top(&|cause, _, truth| one_if(cause == truth)).value().unwrap_or(0.0);
    format!("{} ({:.2} less {:.2})", at_most(0.02, said - so), 100.0 * said, 100.0 * so)
}
