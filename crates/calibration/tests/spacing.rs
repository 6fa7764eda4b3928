//! Spacing: cases to be checked by hand, the limit's edge, and what it says.

#![allow(clippy::expect_used)] // a test fails by panicking

use calibration::spacing::{
    GapLimit, Measured, Move, Side, Spacing, SpacingError, SpacingReadings, check_spacing,
};
use units::{Coded, Length, UnitSystem, Verdict};

fn inches(values: &[f64]) -> Vec<Length> {
    values.iter().map(|value| Length::inches(*value)).collect()
}

fn marks(values: &[f64]) -> SpacingReadings {
    SpacingReadings::new(Length::inches(20.0), Measured::Marks(inches(values)))
}

fn gaps(values: &[f64]) -> SpacingReadings {
    SpacingReadings::new(Length::inches(20.0), Measured::Gaps(inches(values)))
}

fn checked(readings: &SpacingReadings) -> Spacing {
    check_spacing(readings).expect("usable readings")
}

/// The moves as (tip, inches to the right).
fn moved(moves: &[Move]) -> Vec<(u32, f64)> {
    let signed = |one: &Move| match one.direction {
        Side::Left => -one.distance.as_inches(),
        Side::Right => one.distance.as_inches(),
    };
    moves.iter().map(|one| (one.tip, (signed(one) * 1e6).round() / 1e6)).collect()
}

fn check_moves(readings: &SpacingReadings, expected: &[(u32, f64)]) {
    let spacing = checked(readings);
    assert_eq!(moved(&spacing.moves), expected, "{readings:?}");
}

fn codes(spacing: &Spacing) -> Vec<&'static str> {
    spacing.findings.iter().map(Coded::code).collect()
}

fn verdicts(readings: &SpacingReadings) -> Vec<Verdict> {
    checked(readings).gaps.iter().map(|gap| gap.verdict).collect()
}

#[test]
fn expected_from_french_order() {
    // French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 8.3.1.2: a defect is "more than 5 %", so
    // 21 in and 19 in for 20 in are still within, and so are 52.5 cm for 50 cm.
    let just = [20.0, 21.0, 19.0, 21.01, 18.99];
    let (within, outside) = (Verdict::Within, Verdict::Outside);
    assert_eq!(verdicts(&gaps(&just)), [within, within, within, outside, outside]);
    assert_eq!(verdicts(&marks(&[0.0, 20.0, 41.0, 60.0])), [within; 3]);
    let metric = SpacingReadings::new(
        Length::centimetres(50.0),
        Measured::Gaps(vec![Length::centimetres(52.5), Length::centimetres(52.6)]),
    );
    assert_eq!(verdicts(&metric), [within, outside]);
}

#[test]
fn one_tip_out_of_place_is_the_one_to_move() {
    // By hand: tip 3 stands 1.5 in too far right; every other tip is where it should be.
    check_moves(&marks(&[0.0, 20.0, 41.5, 60.0, 80.0]), &[(3, -1.5)]);
    check_moves(&gaps(&[20.0, 21.5, 18.5, 20.0]), &[(3, -1.5)]);
    // Two neighbours in the same gap are spread evenly between those that stay.
    check_moves(&marks(&[0.0, 20.0, 43.0, 57.0, 80.0, 100.0]), &[(3, -3.0), (4, 3.0)]);
    // An end tip is set one spacing from the next.
    check_moves(&marks(&[0.0, 20.0, 40.0, 62.5]), &[(4, -2.5)]);
    check_moves(&marks(&[-2.5, 20.0, 40.0, 60.0]), &[(1, 2.5)]);
    // 2 in at the end are shared by two gaps of 21 in, each just within: half the distance to move.
    check_moves(&marks(&[0.0, 20.0, 40.0, 62.0]), &[(3, 1.0)]);
    // Nothing off: nothing to move.
    check_moves(&marks(&[0.0, 20.5, 40.0, 59.5]), &[]);
}

#[test]
fn of_two_equal_ways_the_outer_tip_moves() {
    // Moving tip 2 or tip 3 by 1.5 in mends gap 2 as well; the tip nearer the end is easier to get at. And mirrored.
    check_moves(&marks(&[0.0, 19.0, 41.0, 60.0, 80.0, 100.0]), &[(2, 1.5)]);
    check_moves(&marks(&[0.0, 20.0, 40.0, 59.0, 81.0, 100.0]), &[(5, -1.5)]);
}

#[test]
fn tips_that_cannot_move_stay() {
    let readings = marks(&[0.0, 20.0, 41.5, 60.0, 80.0]);
    let held = |fixed: &[u32]| SpacingReadings { fixed: fixed.to_vec(), ..readings.clone() };
    check_moves(&held(&[2, 4]), &[(3, -1.5)]);
    // Tip 3 itself is welded on: tips to its left would have to come along, but 41.5 in take two gaps of 20.75 in,
    // and to its right 38.5 in take two of 19.25 in, all within 1 in.
    check_moves(&held(&[3]), &[(2, 0.75), (4, 0.75)]);
}

#[test]
fn what_fixed_tips_do_not_allow_is_said() {
    let readings = SpacingReadings { fixed: vec![2, 3], ..marks(&[0.0, 18.0, 43.0, 63.0]) };
    let spacing = checked(&readings);
    assert_eq!(moved(&spacing.moves), [(1, -2.0)], "gap 1 is mended all the same");
    let unmendable = spacing.unmendable[0];
    assert_eq!((unmendable.gap, unmendable.left, unmendable.right), (2, 2, 3));
    assert!((unmendable.size.as_inches() - 25.0).abs() < 1e-9);
    assert!(codes(&spacing).contains(&"spacing_unmendable"));

    // With movable tips between the fixed ones only one gap is given up: 45 in between tips 1 and 3.
    let readings = SpacingReadings { fixed: vec![1, 3], ..marks(&[0.0, 5.0, 45.0, 65.0]) };
    let spacing = checked(&readings);
    assert_eq!(spacing.unmendable.len(), 1);
    let places: Vec<f64> = spacing.places.iter().map(|place| place.as_inches().round()).collect();
    assert_eq!(places, [0.0, 20.0, 45.0, 65.0]);
    assert_eq!(spacing.unmendable[0].gap, 2);

    // Fixed tips far too near each other: every gap that stays wrong is named, none is made of nothing.
    let readings = SpacingReadings { fixed: vec![1, 4], ..marks(&[0.0, 2.0, 4.0, 6.0, 26.0]) };
    let spacing = checked(&readings);
    assert!(!spacing.unmendable.is_empty());
    assert!(spacing.places.windows(2).all(|pair| pair[1] > pair[0]));
}

#[test]
fn a_move_under_a_quarter_inch_is_not_made() {
    // Gap 1 is 21.1 in, 0.1 in over the limit; spreading evenly would shift tip 2 by 0.2 in.
    let spacing = checked(&marks(&[0.0, 21.1, 41.8, 61.8]));
    assert!(spacing.moves.is_empty(), "{:?}", spacing.moves);
    assert_eq!(moved(&spacing.too_small), [(2, -0.2)]);
    assert_eq!(spacing.verdict, Verdict::Outside);
    assert!(codes(&spacing).contains(&"spacing_move_too_small"));
    // A quarter inch itself is made: (21.25 − 20.75) ÷ 2.
    check_moves(&marks(&[0.0, 21.25, 42.0]), &[(2, -0.25)]);
}

#[test]
fn marks_leave_a_step_open_and_a_gap_half_of_it() {
    let with_step = |readings: SpacingReadings, step: f64| SpacingReadings {
        step: Some(Length::inches(step)),
        ..readings
    };
    // 20.75 in read to 1/4 in: a gap lies in 20.625 to 20.875, two marks leave 20.5 to 21.
    let one_gap = checked(&with_step(gaps(&[20.75]), 0.25)).gaps[0];
    assert!((one_gap.error.low.as_inches() - 0.625).abs() < 1e-9);
    let of_marks = checked(&with_step(marks(&[0.0, 20.75]), 0.25)).gaps[0];
    assert!((of_marks.error.high.as_inches() - 1.0).abs() < 1e-9);
    assert_eq!(of_marks.verdict, Verdict::Within);
    // 21 in is on the limit: within as read, open with any step.
    let readings = with_step(marks(&[0.0, 21.0, 41.0]), 0.25);
    assert_eq!(verdicts(&readings), [Verdict::CannotTell, Verdict::Within]);
    let spacing = checked(&readings);
    assert_eq!(codes(&spacing), ["spacing_gap_open"]);
    assert_eq!(verdicts(&with_step(marks(&[0.0, 21.5]), 0.25)), [Verdict::Outside]);
    // Marks every 2 in cannot judge 1 in.
    let coarse = checked(&with_step(marks(&[0.0, 20.0, 40.0]), 2.0));
    assert_eq!(codes(&coarse), ["spacing_step_too_coarse"]);
}

#[test]
fn a_neighbour_understands_it() {
    let text = |spacing: &Spacing| -> Vec<String> {
        let line = |finding: &units::Finding| match finding.action(UnitSystem::Us) {
            Some(action) => format!("{} {action}", finding.text(UnitSystem::Us)),
            None => finding.text(UnitSystem::Us),
        };
        spacing.findings.iter().map(line).collect()
    };
    let spacing = checked(&marks(&[0.0, 20.0, 41.5, 60.0, 80.0]));
    assert_eq!(
        text(&spacing),
        [
            "Gaps 2 and 3 are more than 5 % off 20 in. The worst is gap 2: 21.5 in. Move tip 3 to the left by 1.5 in, as you sit."
        ]
    );
    assert_eq!(spacing.moves[0].finding().text(UnitSystem::Us), "Move tip 3 to the left by 1.5 in.");
    let spacing = checked(&marks(&[0.0, 20.5, 40.0, 59.5]));
    assert_eq!(text(&spacing), ["Every gap is within 5 % of 20 in; the worst, gap 1, is 20.5 in."]);
    let spacing = checked(&marks(&[0.0, 15.0, 30.0, 45.0, 60.0]));
    assert!(codes(&spacing).contains(&"spacing_intended_doubtful"));
    let spacing = checked(&gaps(&[20.0, 20.0, 20.0]));
    assert_eq!(codes(&spacing), ["spacing_even", "spacing_gaps_add_up"]);
    let lines = spacing.working.lines(UnitSystem::Us).join("\n");
    assert!(lines.contains("limit as a length = 1 in"), "{lines}");
}

#[test]
fn what_is_no_boom_is_refused() {
    fn refused(readings: &SpacingReadings, code: &str) {
        let error = check_spacing(readings).expect_err("refused");
        assert_eq!(error.code(), code, "{error}");
        assert!(error.hint().is_some());
    }
    refused(&SpacingReadings { intended: Length::ZERO, ..marks(&[0.0, 20.0]) }, "spacing_intended");
    refused(
        &SpacingReadings { intended: Length::inches(f64::NAN), ..marks(&[0.0, 1.0]) },
        "spacing_intended",
    );
    refused(&marks(&[3.0]), "spacing_too_few_tips");
    refused(&marks(&[]), "spacing_too_few_tips");
    refused(&gaps(&[]), "spacing_too_few_tips");
    refused(&gaps(&[20.0, 0.0]), "spacing_gap");
    refused(&gaps(&[20.0, f64::INFINITY]), "spacing_gap");
    refused(&gaps(&[20.0, -20.0]), "spacing_gap");
    refused(&marks(&[0.0, 20.0, 20.0]), "spacing_mark_order");
    refused(&marks(&[60.0, 40.0, 20.0]), "spacing_mark_order");
    refused(&marks(&[0.0, f64::NAN]), "spacing_mark_order");
    refused(&gaps(&[20.0; 1000]), "spacing_too_many_tips");
    refused(&SpacingReadings { step: Some(Length::ZERO), ..marks(&[0.0, 20.0]) }, "spacing_step");
    refused(&SpacingReadings { fixed: vec![3], ..marks(&[0.0, 20.0]) }, "spacing_no_such_tip");
    refused(&SpacingReadings { fixed: vec![0], ..marks(&[0.0, 20.0]) }, "spacing_no_such_tip");
    for share in [0.0, -0.1, 0.5, f64::NAN] {
        assert!(matches!(GapLimit::own(share), Err(SpacingError::Limit { .. })), "{share}");
    }
    assert_eq!(
        check_spacing(&marks(&[0.0, 20.0, 15.0])).expect_err("refused").to_string(),
        "the mark of tip 3, 15 in, is not beyond the mark before it, 20 in"
    );
}

#[test]
fn the_largest_boom_taken_is_done_at_once() {
    // A tip of ten is off by a few inches; a fixed rule, no chance.
    let values: Vec<f64> = (0..1000_u32)
        .map(|tip| f64::from(tip) * 20.0 + if tip % 10 == 3 { f64::from(tip % 7) - 3.0 } else { 0.0 })
        .collect();
    let spacing = checked(&marks(&values));
    let off = values.iter().zip(0_u32..).filter(|(mark, tip)| (**mark - f64::from(*tip) * 20.0).abs() > 1.0);
    assert_eq!(spacing.moves.len(), off.count());
    assert!(spacing.places.len() == 1000);
}

#[test]
fn several_moves_are_told_once_each() {
    let readings = SpacingReadings { fixed: vec![3], ..marks(&[0.0, 20.0, 41.5, 60.0, 80.0]) };
    let spacing = checked(&readings);
    let said: Vec<String> = spacing
        .findings
        .iter()
        .map(|one| {
            format!("{} {}", one.text(UnitSystem::Us), one.action(UnitSystem::Us).unwrap_or_default())
                .trim_end()
                .to_string()
        })
        .collect();
    assert_eq!(
        said,
        [
            "Gaps 2 and 3 are more than 5 % off 20 in. The worst is gap 2: 21.5 in.",
            "Move tip 2 to the right by 0.75 in.",
            "Move tip 4 to the right by 0.75 in.",
        ]
    );
}

#[test]
fn gaps_all_alike_have_no_worst() {
    let even = |values: &[f64]| checked(&gaps(values)).findings[0].text(UnitSystem::Us);
    assert_eq!(even(&[20.0, 20.0, 20.0]), "Every gap is 20 in.");
    assert_eq!(even(&[20.5, 20.5]), "Every gap is 20.5 in, within 5 % of 20 in.");
    assert_eq!(even(&[20.0, 20.5]), "Every gap is within 5 % of 20 in; the worst, gap 2, is 20.5 in.");
}
