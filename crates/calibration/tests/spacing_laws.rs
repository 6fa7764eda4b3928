//! Spacing: the fewest moves against trying every set of tips, and laws that hold for any boom.

#![allow(clippy::expect_used)] // a test fails by panicking

use calibration::spacing::{Measured, Side, Spacing, SpacingReadings, check_spacing};
use proptest::prelude::*;
use units::{Length, Quantity, Verdict};

const SPACING: f64 = 20.0;
const SHARE: f64 = 0.05;

fn checked(marks: &[f64], fixed: &[u32]) -> Spacing {
    let marks = marks.iter().map(|mark| Length::inches(*mark)).collect();
    let readings = SpacingReadings {
        fixed: fixed.to_vec(),
        ..SpacingReadings::new(Length::inches(SPACING), Measured::Marks(marks))
    };
    check_spacing(&readings).expect("usable readings")
}

/// Every move, also those too small to be made: (tip, inches to the right), from the left.
fn all_moves(spacing: &Spacing) -> Vec<(u32, f64)> {
    let mut moves: Vec<(u32, f64)> = spacing
        .moves
        .iter()
        .chain(&spacing.too_small)
        .map(|one| {
            let distance = one.distance.as_inches();
            (one.tip, if one.direction == Side::Left { -distance } else { distance })
        })
        .collect();
    moves.sort_by_key(|(tip, _)| *tip);
    moves
}

/// Tries every set of tips that may stay. Gives the fewest moves, the least distance for it, and how many sets
/// do it with that distance. Written from the problem alone: place the others evenly, look at every gap.
fn by_trying_all(marks: &[f64], fixed: &[u32]) -> (usize, f64, usize) {
    let tips = marks.len();
    let mut best = (usize::MAX, f64::INFINITY, 0);
    'sets: for set in 1_u32..(1 << tips) {
        if fixed.iter().any(|tip| set & (1 << (tip - 1)) == 0) {
            continue;
        }
        let kept: Vec<usize> = (0..tips).filter(|tip| set & (1 << tip) != 0).collect();
        let mut places = marks.to_vec();
        for tip in 0..tips {
            let left = kept.iter().rev().find(|kept| **kept <= tip);
            let right = kept.iter().find(|kept| **kept >= tip);
            places[tip] = match (left, right) {
                (Some(left), Some(right)) if left == right => marks[tip],
                (Some(left), Some(right)) => {
                    let part = (tip - left) as f64 / (right - left) as f64;
                    marks[*left] + (marks[*right] - marks[*left]) * part
                }
                (Some(left), None) => marks[*left] + (tip - left) as f64 * SPACING,
                (None, Some(right)) => marks[*right] - (right - tip) as f64 * SPACING,
                (None, None) => continue 'sets,
            };
        }
        let off = |pair: &[f64]| (pair[1] - pair[0] - SPACING).abs() > SPACING * SHARE + 1e-9;
        if places.windows(2).any(off) {
            continue;
        }
        let moved = tips - kept.len();
        let distance: f64 = marks.iter().zip(&places).map(|(mark, place)| (mark - place).abs()).sum();
        if moved < best.0 || (moved == best.0 && distance < best.1 - 1e-6) {
            best = (moved, distance, 1);
        } else if moved == best.0 && (distance - best.1).abs() <= 1e-6 {
            best.2 += 1;
        }
    }
    best
}

/// Marks of a boom of which some tips are out of place, in steps of an eighth of an inch.
fn boom(tips: std::ops::Range<usize>) -> impl Strategy<Value = Vec<f64>> {
    proptest::collection::vec((-4_i32..=4, prop_oneof![3 => Just(0_i32), 1 => -40_i32..=40]), tips).prop_map(
        |errors| {
            let place = |(tip, (small, large)): (usize, &(i32, i32))| {
                tip as f64 * SPACING + f64::from(small + large) / 8.0
            };
            errors.iter().enumerate().map(place).collect()
        },
    )
}

fn fixed(marks: &[f64], picks: &[bool]) -> Vec<u32> {
    (1_u32..).zip(marks.iter().zip(picks)).filter(|(_, (_, pick))| **pick).map(|(tip, _)| tip).collect()
}

proptest! {
    #[test]
    fn the_fewest_moves_are_those_of_trying_every_set(marks in boom(2..9)) {
        let (moved, distance, _) = by_trying_all(&marks, &[]);
        let moves = all_moves(&checked(&marks, &[]));
        prop_assert_eq!(moves.len(), moved);
        let sum: f64 = moves.iter().map(|(_, inches)| inches.abs()).sum();
        prop_assert!((sum - distance).abs() < 1e-6, "{} is not {}", sum, distance);
    }

    #[test]
    fn the_same_around_tips_that_cannot_move(
        marks in boom(2..9), picks in proptest::collection::vec(proptest::bool::weighted(0.3), 9),
    ) {
        let fixed = fixed(&marks, &picks);
        let spacing = checked(&marks, &fixed);
        for tip in &fixed {
            let place = usize::try_from(*tip).expect("small") - 1;
            prop_assert!((spacing.places[place].as_inches() - marks[place]).abs() < 1e-12);
        }
        let (moved, distance, _) = by_trying_all(&marks, &fixed);
        prop_assert_eq!(moved == usize::MAX, !spacing.unmendable.is_empty());
        if moved != usize::MAX {
            let moves = all_moves(&spacing);
            prop_assert_eq!(moves.len(), moved);
            let sum: f64 = moves.iter().map(|(_, inches)| inches.abs()).sum();
            prop_assert!((sum - distance).abs() < 1e-6);
        }
    }

    #[test]
    fn after_the_moves_every_gap_is_within_but_those_said_to_be_unmendable(
        marks in boom(2..40), picks in proptest::collection::vec(proptest::bool::weighted(0.1), 40),
    ) {
        let fixed = fixed(&marks, &picks);
        let spacing = checked(&marks, &fixed);
        let after: Vec<f64> = spacing.places.iter().map(|place| place.as_inches()).collect();
        let again = checked(&after, &fixed);
        let outside: Vec<u32> =
            again.gaps.iter().filter(|gap| gap.verdict != Verdict::Within).map(|gap| gap.number).collect();
        let unmendable: Vec<u32> = spacing.unmendable.iter().map(|gap| gap.gap).collect();
        prop_assert_eq!(outside, unmendable);
    }

    #[test]
    fn without_the_moves_that_are_too_small_a_gap_is_over_by_less_than_half_an_inch(marks in boom(2..40)) {
        let spacing = checked(&marks, &[]);
        let mut after: Vec<f64> = spacing.places.iter().map(|place| place.as_inches()).collect();
        for small in &spacing.too_small {
            prop_assert!(small.distance < Length::inches(0.25));
            let place = usize::try_from(small.tip).expect("small") - 1;
            after[place] = marks[place];
        }
        for pair in after.windows(2) {
            prop_assert!((pair[1] - pair[0] - SPACING).abs() < SPACING * SHARE + 0.5);
        }
    }

    #[test]
    fn a_boom_seen_from_the_front_is_mended_the_same_way(marks in boom(2..9)) {
        let mirrored: Vec<f64> = marks.iter().rev().map(|mark| 1000.0 - mark).collect();
        let (one, other) = (checked(&marks, &[]), checked(&mirrored, &[]));
        let tips = u32::try_from(marks.len()).expect("small");
        let mut turned: Vec<(u32, f64)> =
            all_moves(&other).iter().map(|(tip, inches)| (tips + 1 - tip, -inches)).collect();
        turned.sort_by_key(|(tip, _)| *tip);
        let moves = all_moves(&one);
        prop_assert_eq!(moves.len(), turned.len());
        let sum = |moves: &[(u32, f64)]| moves.iter().map(|(_, inches)| inches.abs()).sum::<f64>();
        prop_assert!((sum(&moves) - sum(&turned)).abs() < 1e-6);
        // Where two sets of tips are equally good, one of them has to be picked; otherwise tip for tip.
        if by_trying_all(&marks, &[]).2 == 1 {
            for (one, other) in moves.iter().zip(&turned) {
                prop_assert_eq!(one.0, other.0);
                prop_assert!((one.1 - other.1).abs() < 1e-6);
            }
        }
        for (gap, turned) in one.gaps.iter().zip(other.gaps.iter().rev()) {
            prop_assert_eq!(gap.verdict, turned.verdict);
        }
    }

    #[test]
    fn where_the_tape_begins_changes_nothing(marks in boom(2..30), shift in -1000_i32..1000) {
        let shifted: Vec<f64> = marks.iter().map(|mark| mark + f64::from(shift) / 8.0).collect();
        let (one, other) = (all_moves(&checked(&marks, &[])), all_moves(&checked(&shifted, &[])));
        prop_assert_eq!(one.len(), other.len());
        for (one, other) in one.iter().zip(&other) {
            prop_assert_eq!(one.0, other.0);
            prop_assert!((one.1 - other.1).abs() < 1e-6);
        }
    }

    #[test]
    fn gaps_and_marks_of_one_boom_agree(marks in boom(2..30)) {
        let gaps: Vec<Length> = marks.windows(2).map(|pair| Length::inches(pair[1] - pair[0])).collect();
        prop_assume!(gaps.iter().all(|gap| gap.is_positive()));
        let readings = SpacingReadings::new(Length::inches(SPACING), Measured::Gaps(gaps));
        let by_gaps = check_spacing(&readings).expect("usable readings");
        let by_marks = checked(&marks, &[]);
        for (one, other) in by_gaps.gaps.iter().zip(&by_marks.gaps) {
            prop_assert_eq!(one.verdict, other.verdict);
            prop_assert!((one.error_percent - other.error_percent).abs() < 1e-6);
        }
        prop_assert_eq!(all_moves(&by_gaps).len(), all_moves(&by_marks).len());
    }
}
