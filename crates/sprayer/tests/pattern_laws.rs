//! Laws of a pattern across the boom, and what cannot be.
#![allow(clippy::expect_used)] // a test fails by panicking
#![allow(clippy::float_cmp)] // doses of nothing are nothing

use proptest::prelude::*;
use sprayer::pattern::{
    Fan, Grooves, Judged, MeasuredFan, PATTERN_LIMIT, Pattern, PatternError, Shape, SprayBoom, SprayTip,
    heights_within, pattern,
};
use units::{Angle, Coded, Length, Quantity, Verdict};

fn grooves(metres: f64) -> Grooves {
    Grooves { width: Length::metres(metres), ..Grooves::default() }
}

/// The height at which a fan reaches so far to either side.
fn height_for(half_width: f64, angle: f64) -> Length {
    Length::metres(half_width / libm::tan(angle.to_radians() / 2.0))
}

fn spread_of(shape: Shape, half_width: f64, spacing: f64, groove: f64, angle: f64) -> f64 {
    let boom =
        SprayBoom::alike(24, Length::metres(spacing), height_for(half_width, angle), Angle::degrees(angle));
    let pattern =
        pattern(&boom.expect("a boom"), &[Fan::Assumed(shape)], &grooves(groove)).expect("a pattern");
    pattern.spread.high
}

fn any_tip() -> impl Strategy<Value = SprayTip> {
    (0.3..0.8_f64, 60.0..120.0_f64, 0.0..1.5_f64, -15.0..15.0_f64, 0.0..20.0_f64, -0.05..0.05_f64).prop_map(
        |(height, angle, flow, tilt, twist, offset)| SprayTip {
            flow,
            tilt: Angle::degrees(tilt),
            twist: Angle::degrees(twist),
            offset: Length::metres(offset),
            ..SprayTip::new(Length::ZERO, Length::metres(height), Angle::degrees(angle))
        },
    )
}

/// Tips with gaps between them; at least one sound one in the middle.
fn any_boom() -> impl Strategy<Value = SprayBoom> {
    (prop::collection::vec((any_tip(), 0.3..0.7_f64), 9..20), 0.3..0.7_f64).prop_map(|(tips, spacing)| {
        let mut place = 0.0;
        let mut tips: Vec<SprayTip> = tips
            .into_iter()
            .map(|(tip, gap)| {
                place += gap;
                SprayTip { place: Length::metres(place), ..tip }
            })
            .collect();
        let middle = tips.len() / 2;
        tips[middle].flow = 1.0;
        SprayBoom::new(tips, Length::metres(spacing)).expect("a boom")
    })
}

fn middle_of(boom: &SprayBoom) -> Grooves {
    Grooves { judged: Judged::Middle(boom.spacing() * 2.0), ..Grooves::default() }
}

fn found(boom: &SprayBoom) -> Pattern {
    let mut fans = Fan::tapered();
    fans.push(Fan::Assumed(Shape::EvenFan));
    pattern(boom, &fans, &middle_of(boom)).expect("a pattern")
}

proptest! {
    #[test]
    fn triangles_as_wide_as_spacings_are_level(times in 1..4_u32, spacing in 0.2..0.8_f64, groove in 0.04..0.12_f64, angle in 60.0..120.0_f64) {
        prop_assert!(spread_of(Shape::Triangle, f64::from(times) * spacing, spacing, groove, angle) < 1e-9);
    }

    #[test]
    fn raised_cosines_as_wide_as_half_spacings_are_level(halves in 2..7_u32, spacing in 0.2..0.8_f64, groove in 0.04..0.12_f64, angle in 60.0..120.0_f64) {
        prop_assert!(spread_of(Shape::RaisedCosine, f64::from(halves) * spacing / 2.0, spacing, groove, angle) < 1e-9);
    }

    #[test]
    fn even_fans_edge_to_edge_are_level(times in 1..8_u32, spacing in 0.2..0.8_f64, groove in 0.04..0.12_f64, angle in 60.0..120.0_f64) {
        prop_assert!(spread_of(Shape::EvenFan, f64::from(times) * spacing / 2.0, spacing, groove, angle) < 1e-9);
    }

    #[test]
    fn nothing_is_lost_or_gained(boom in any_boom()) {
        let flow: f64 = boom.tips().iter().map(|tip| tip.flow).sum();
        let found = found(&boom);
        for fan in &found.fans {
            let fell: f64 = fan.doses.iter().map(|dose| dose * fan.mean / boom.spacing().si() * 0.1).sum();
            prop_assert!((fell - flow).abs() < 1e-9 * flow, "{}: {fell} of {flow}", fan.fan);
        }
    }

    #[test]
    fn sound_tips_give_flow_over_spacing_on_the_mean(tips in 8..30_u32, fifths in 3..8_u32, height in 0.3..0.8_f64) {
        // Whole spacings are judged, and so the mean is exact: sum of flows over tips times spacing.
        let spacing = 0.1 * f64::from(fifths);
        let boom = SprayBoom::alike(tips + 20, Length::metres(spacing), Length::metres(height), Angle::degrees(100.0)).expect("a boom");
        for fan in found(&boom).fans {
            prop_assert!((fan.mean - 1.0).abs() < 1e-9, "{}: {}", fan.fan, fan.mean);
        }
    }

    #[test]
    fn a_mirrored_boom_has_the_mirrored_pattern(boom in any_boom()) {
        let mirrored = boom.tips().iter().rev().map(|tip| SprayTip { place: -tip.place, offset: -tip.offset, tilt: -tip.tilt, ..*tip }).collect();
        let mirrored = SprayBoom::new(mirrored, boom.spacing()).expect("a boom");
        let (one, other) = (found(&boom), found(&mirrored));
        prop_assert_eq!(one.grooves.len(), other.grooves.len());
        for (one, other) in one.grooves.iter().zip(other.grooves.iter().rev()) {
            prop_assert!((one.dose.low - other.dose.low).abs() < 1e-9 && (one.dose.high - other.dose.high).abs() < 1e-9);
            prop_assert!((one.from.si() + other.to.si()).abs() < 1e-9 && one.judged == other.judged);
        }
        prop_assert!((one.spread.high - other.spread.high).abs() < 1e-9);
    }

    #[test]
    fn moving_or_enlarging_the_whole_changes_nothing(boom in any_boom(), along in -50.0..50.0_f64, times in 0.5..2.0_f64) {
        let tips = boom.tips().iter().map(|tip| SprayTip {
            place: tip.place * times + Length::metres(along),
            offset: tip.offset * times,
            height: tip.height * times,
            ..*tip
        }).collect();
        let other = SprayBoom::new(tips, boom.spacing() * times).expect("a boom");
        let scaled = Grooves { width: Length::metres(0.1 * times), judged: Judged::Middle(boom.spacing() * 2.0 * times) };
        let one = pattern(&boom, &Fan::tapered(), &middle_of(&boom)).expect("a pattern");
        let other = pattern(&other, &Fan::tapered(), &scaled).expect("a pattern");
        prop_assert!((one.spread.high - other.spread.high).abs() < 1e-6 && (one.lowest.low - other.lowest.low).abs() < 1e-6);
    }

    #[test]
    fn the_band_holds_every_shape_and_the_mean_lies_between_thin_and_thick(boom in any_boom()) {
        let found = found(&boom);
        for fan in &found.fans {
            prop_assert!(found.spread.low <= fan.spread && fan.spread <= found.spread.high);
            prop_assert!(fan.lowest.dose <= 1.0 + 1e-12 && fan.highest.dose >= 1.0 - 1e-12);
            for (groove, dose) in found.grooves.iter().zip(&fan.doses) {
                prop_assert!(groove.dose.low <= *dose && *dose <= groove.dose.high && *dose > -1e-12);
            }
        }
        prop_assert!(found.under_lowest.len() <= 2 && found.under_highest.len() <= 2);
    }

    #[test]
    fn a_shape_caught_in_fine_grooves_is_that_shape(height in 0.4..0.7_f64) {
        let angle = Angle::degrees(110.0);
        let half = 0.5 * libm::tan(110_f64.to_radians() / 2.0);
        let fine: Vec<f64> = (0..1000).map(|groove| {
            let edge = |place: f64| Shape::Parabola.share_left_of(place / 500.0 - 1.0);
            edge(f64::from(groove) + 1.0) - edge(f64::from(groove))
        }).collect();
        let measured = MeasuredFan::new(&fine, Length::metres(half / 500.0), Length::metres(0.5), None).expect("a fan");
        let boom = SprayBoom::alike(15, Length::metres(0.5), Length::metres(height), angle).expect("a boom");
        let both = pattern(&boom, &[Fan::Assumed(Shape::Parabola), Fan::Measured(measured)], &Grooves::default()).expect("a pattern");
        prop_assert!((both.fans[0].spread - both.fans[1].spread).abs() < 1e-4);
    }

    #[test]
    fn nothing_given_makes_it_panic(
        place in prop::collection::vec(prop::num::f64::ANY, 0..5), height in prop::num::f64::ANY, angle in prop::num::f64::ANY,
        flow in prop::num::f64::ANY, tilt in prop::num::f64::ANY, groove in prop::num::f64::ANY, spacing in prop::num::f64::ANY,
    ) {
        let tips = place.into_iter().map(|place| SprayTip {
            flow,
            tilt: Angle::from_si(tilt),
            twist: Angle::from_si(tilt),
            ..SprayTip::new(Length::from_si(place), Length::from_si(height), Angle::from_si(angle))
        }).collect();
        if let Ok(boom) = SprayBoom::new(tips, Length::from_si(spacing)) {
            let _ = pattern(&boom, &Fan::tapered(), &Grooves { width: Length::from_si(groove), ..Grooves::default() });
        }
        let _ = MeasuredFan::new(&[flow, tilt], Length::from_si(groove), Length::from_si(height), None);
    }
}

/// A boom as most are: 110 degrees, 20 in apart.
fn usual(tips: u32, height: f64) -> Result<SprayBoom, PatternError> {
    SprayBoom::alike(tips, Length::inches(20.0), Length::inches(height), Angle::degrees(110.0))
}

#[test]
fn what_cannot_be_is_told() {
    let code = |result: Result<SprayBoom, PatternError>| result.expect_err("refused").code();
    assert_eq!(code(usual(1, 20.0)), "pattern_tips");
    assert_eq!(code(usual(13, 0.0)), "pattern_no_height");
    let with = |change: fn(&mut SprayTip)| {
        let mut tips = usual(13, 20.0).expect("a boom").tips().to_vec();
        change(&mut tips[4]);
        SprayBoom::new(tips, Length::inches(20.0))
    };
    assert_eq!(code(with(|tip| tip.angle = Angle::degrees(175.0))), "pattern_angle");
    assert_eq!(code(with(|tip| tip.place = Length::ZERO)), "pattern_order");
    assert_eq!(code(with(|tip| tip.flow = -0.1)), "pattern_flow");
    assert_eq!(code(with(|tip| tip.tilt = Angle::degrees(40.0))), "pattern_into_the_air");
    assert_eq!(code(with(|tip| tip.twist = Angle::degrees(80.0))), "pattern_twist");
    let plugged =
        usual(13, 20.0).expect("a boom").tips().iter().map(|tip| SprayTip { flow: 0.0, ..*tip }).collect();
    assert_eq!(code(SprayBoom::new(plugged, Length::inches(20.0))), "pattern_all_plugged");
    let of = |tips, height, groove| {
        pattern(&usual(tips, height).expect("a boom"), &Fan::tapered(), &grooves(groove))
            .expect_err("refused")
            .code()
    };
    assert_eq!(of(3, 40.0, 0.1), "pattern_no_overlap");
    assert_eq!(of(3, 20.0, 2.0), "pattern_groove_wider_than_boom");
    assert_eq!(of(3, 20.0, 0.0), "pattern_groove");
    let fan = |collected: &[f64]| {
        MeasuredFan::new(collected, Length::metres(0.05), Length::metres(0.5), None)
            .expect_err("refused")
            .code()
    };
    assert_eq!(fan(&[0.0, 0.0]), "pattern_nothing_collected");
    assert_eq!(fan(&[1.0, -1.0]), "pattern_collected");
}

#[test]
fn a_plugged_tip_is_the_thin_place_and_a_gap_lies_between_two() {
    let mut tips = usual(13, 20.0).expect("a boom").tips().to_vec();
    tips[3].flow = 0.0;
    let boom = SprayBoom::new(tips, Length::inches(20.0)).expect("a boom");
    let found = pattern(&boom, &Fan::tapered(), &Grooves::default()).expect("a pattern");
    assert_eq!(found.under_lowest, vec![4]);
    assert_eq!(found.verdict(&PATTERN_LIMIT), Verdict::Outside);
    // Tips all alike have their thin places everywhere, and none is named.
    let sound = usual(13, 14.0).expect("a boom");
    let found = pattern(&sound, &Fan::tapered(), &Grooves::default()).expect("a pattern");
    assert_eq!((found.under_lowest.len(), found.under_highest.len()), (0, 0));
    let narrow = SprayBoom::alike(2, Length::inches(20.0), Length::inches(20.0), Angle::degrees(110.0));
    assert_eq!(narrow.expect("a boom").over(Length::inches(10.0)), vec![1, 2]);
}

#[test]
fn heights_that_suit_lie_where_fans_overlap_well() {
    let heights = |angle: f64| {
        heights_within(Angle::degrees(angle), Length::metres(0.5), &Fan::tapered(), &PATTERN_LIMIT)
            .expect("heights")
    };
    // Common practice: 110 degrees at half a metre, narrower fans higher.
    let wide = heights(110.0);
    assert!(
        wide.iter().any(|range| range.from < Length::metres(0.45) && range.to > Length::metres(0.6)),
        "{wide:?}"
    );
    let narrow = heights(80.0);
    assert!(narrow[0].from > Length::metres(0.55) && narrow[0].from > wide[0].from, "{narrow:?}");
    for range in wide.iter().chain(&narrow) {
        let angle = Angle::degrees(if wide.contains(range) { 110.0 } else { 80.0 });
        for height in [range.from, range.to] {
            let boom = SprayBoom::alike(40, Length::metres(0.5), height, angle).expect("a boom");
            let found = pattern(&boom, &Fan::tapered(), &Grooves::default()).expect("a pattern");
            assert!(found.spread.high < 0.105, "{height:?}: {:?}", found.spread);
        }
    }
    // A limit that nothing holds leaves no height.
    let none = sprayer::pattern::PatternLimit { spread: 0.0, ..PATTERN_LIMIT };
    let at = heights_within(Angle::degrees(110.0), Length::metres(0.5), &Fan::tapered(), &none);
    assert!(at.expect("heights").is_empty());
}
