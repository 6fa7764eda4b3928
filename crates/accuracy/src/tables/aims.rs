//! What is aimed at and what is reached, one table a world: once, after the checks that are advised, and what a judge could reach
//! who knows all of the world but the tip.

use crate::ceiling::Judge;
use crate::diagnosed::{SectionScore, SprayerScore, TipScore};
use crate::tables::aimed::{
    MISSED, RESTRICTED, aimed, at_most, at_specificity, per_sprayer, sections_at_specificity, top_bin,
};
use crate::tables::diagnosed::{CALLED, faulty, likeliest, odd, of_sections, of_tips, one_if};
use crate::tables::table::{Table, number, percent};

/// False alarms a sprayer that are aimed at after three cups more.
const FALSE_ALARMS: f64 = 0.07;
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
            let told = per_sprayer(scores, alarms, 3);
            let three =
                scores.iter().any(|score| score.again > 0) && scores.iter().all(|score| score.again <= 3);
            let mean = scores.iter().map(alarms).sum::<f64>() / scores.len().max(1) as f64;
            format!("{told}{}", if three && mean > FALSE_ALARMS { MISSED } else { "" })
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
            let called =
                |one: &SectionScore| (one.loss > RESTRICTED).then(|| one_if(one.restricted >= CALLED));
            aimed(0.97, &of_sections(scores, called))
        },
        None,
    );
    rows.row(
        "restricted sections called where 98.5 % of free ones are not",
        "97 %",
        &sections_at_specificity,
        None,
    );
    rows.row(
        "of restricted sections, those that lose less than 6 %",
        "",
        &|scores| {
            percent(&of_sections(scores, |one| (one.loss > RESTRICTED).then(|| one_if(one.loss < 0.06))))
        },
        None,
    );
    rows.row(
        "sections that lose 6 % or more, called",
        "",
        &|scores| {
            let called = |one: &SectionScore| (one.loss >= 0.06).then(|| one_if(one.restricted >= CALLED));
            percent(&of_sections(scores, called))
        },
        None,
    );
    rows.row(
        "free sections not called",
        "98.5 %",
        &|scores| {
            let spared =
                |one: &SectionScore| (one.loss <= RESTRICTED).then(|| one_if(one.restricted < CALLED));
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
