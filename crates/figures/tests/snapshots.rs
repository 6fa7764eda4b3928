//! Small drawings in full, so that a change to the picture is seen in review.
#![allow(missing_docs)]

mod shown;

use figures::{CupMark, Density, Mark, svg};
use shown::{Boom, Language};

#[test]
fn three_cups() {
    let mut row =
        shown::row(Boom { tips: 3, section: 3, density: Density::Roomy, language: Language::English });
    row.cups[1].mark = CupMark::High;
    row.cups[1].word = "R&D says <high>".to_owned();
    row.cups[2].mark = CupMark::NotCaught;
    insta::assert_snapshot!(svg(&row.draw()));
}

#[test]
fn two_dense_cups_one_plugged() {
    let mut row =
        shown::row(Boom { tips: 2, section: 0, density: Density::Dense, language: Language::Spanish });
    row.cups[0].mark = CupMark::Plugged;
    row.cups[0].level = Some(0.0);
    row.cups[0].word = "tapada".to_owned();
    row.cups[0].reading = "0".to_owned();
    row.limit = None;
    insta::assert_snapshot!(svg(&row.draw()));
}

#[test]
fn a_drive_of_one_run() {
    let mut drive = shown::drive(Language::English);
    drive.runs.truncate(1);
    insta::assert_snapshot!(svg(&drive.draw()));
}

#[test]
fn a_rate() {
    let mut rate = shown::rate(Language::English);
    rate.mark = Mark::CannotTell;
    insta::assert_snapshot!(svg(&rate.draw()));
}

#[test]
fn gaps_with_one_too_wide() {
    let mut gaps = shown::gaps(5);
    gaps.tips.drain(..2);
    gaps.gaps.drain(..2);
    insta::assert_snapshot!(svg(&gaps.draw()));
}

#[test]
fn ground_with_a_thin_place() {
    let mut ground = shown::ground(5, figures::Across::Phone);
    ground.tips.truncate(3);
    ground.grooves.drain(12..);
    insta::assert_snapshot!(svg(&ground.draw()));
}
