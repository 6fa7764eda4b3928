//! Budgets against a worked one, and the laws they keep.

#![allow(clippy::expect_used)] // a test fails by panicking

use calibration::doubt::{Budget, DoubtOf, Known};
use proptest::prelude::*;
use units::{Flow, Time, UnitSystem, Volume};

#[test]
fn expected_from_guide_to_uncertainty_by_hand() {
    // A catch of 830 mL ± 10 mL (anywhere within, so ÷ √3) in 30 s, each end ± 0.5 s (÷ √3), repeated to 0.5 %:
    // 1.6600 L/min with a standard uncertainty of 0.02669 L/min. Method: JCGM 100:2008 4.3.7 and 5.1.6; the same
    // budget was put through two general uncertainty libraries, which agree with it to 12 digits.
    let rectangular = |half: f64| half / 3.0_f64.sqrt();
    let volume = Known::of(
        Volume::millilitres(830.0),
        Budget::nothing().own(DoubtOf::CupMarks, rectangular(10.0) / 830.0).own(DoubtOf::Handling, 0.005),
    );
    let time = Known::of(
        Time::seconds(30.0),
        Budget::nothing().own(DoubtOf::TimingTheCatch, rectangular(0.5) * 2.0_f64.sqrt() / 30.0),
    );
    let flow: Known<Flow> = volume.over(time);
    assert!((flow.value.as_litres_per_minute() - 1.66).abs() < 1e-12);
    let standard = flow.doubt.relative() * flow.value.as_litres_per_minute();
    assert!((standard - 0.02669).abs() < 5e-6, "{standard}");
    // What each adds, in L/min: time 0.02259, volume 0.01155, repeating 0.0083.
    let shares = flow.doubt.shares();
    let adds: Vec<(DoubtOf, f64)> = shares.iter().map(|share| (share.of, share.relative * 1.66)).collect();
    for ((of, adds), (wanted, printed)) in adds.into_iter().zip([
        (DoubtOf::TimingTheCatch, 0.02259),
        (DoubtOf::CupMarks, 0.01155),
        (DoubtOf::Handling, 0.0083),
    ]) {
        assert_eq!(of, wanted);
        assert!((adds - printed).abs() < 5e-6, "{of:?} adds {adds}, not {printed}");
    }
}

#[test]
fn a_shared_watch_cancels_where_it_times_both() {
    let watch = || Budget::nothing().shared(DoubtOf::Watch, 0.01);
    assert!(watch().times(watch().raised(-1.0)).relative() < 1e-15);
    assert!((watch().times(watch()).relative() - 0.02).abs() < 1e-15);
    let own = || Budget::nothing().own(DoubtOf::Watch, 0.01);
    assert!((own().times(own().raised(-1.0)).relative() - 0.01 * 2.0_f64.sqrt()).abs() < 1e-15);
}

#[test]
fn the_working_names_what_to_do() {
    let budget = Budget::nothing().own(DoubtOf::Course, 0.002).own(DoubtOf::TimingTheDrive, 0.01);
    let lines = budget.working().lines(UnitSystem::Us).join("\n");
    assert!(lines.contains("most of it comes from = timing the drive by hand"), "{lines}");
    assert!(lines.contains("drive a longer course"), "{lines}");
    let text = budget.finding().expect("there is doubt").text(UnitSystem::Us);
    assert_eq!(text, "This figure may be 2 % off either way, mostly through timing the drive by hand.");
    assert!(Budget::nothing().finding().is_none());
}

#[test]
fn a_doubt_that_is_no_number_is_found() {
    assert!(Budget::nothing().own(DoubtOf::Course, 0.0).first_unusable().is_none());
    for bad in [-0.01, f64::NAN, f64::INFINITY] {
        assert!(Budget::nothing().own(DoubtOf::Course, bad).first_unusable().is_some(), "{bad}");
    }
}

proptest! {
    #[test]
    fn doubt_grows_with_every_own_cause_and_shares_fill_up(
        parts in proptest::collection::vec(0.0001_f64..0.1, 1..8),
    ) {
        const CAUSES: [DoubtOf; 7] = [
            DoubtOf::Watch, DoubtOf::Course, DoubtOf::Spacing, DoubtOf::CupScale,
            DoubtOf::Handling, DoubtOf::Swath, DoubtOf::Tank,
        ];
        let mut budget = Budget::nothing();
        let mut before = 0.0;
        for (part, cause) in parts.iter().zip(CAUSES) {
            budget = budget.own(cause, *part);
            prop_assert!(budget.relative() > before);
            before = budget.relative();
        }
        let whole: f64 = budget.shares().iter().map(|share| share.part).sum();
        prop_assert!((whole - 1.0).abs() < 1e-12);
        prop_assert!((budget.clone().raised(-1.0).relative() - before).abs() < 1e-15);
        prop_assert!((budget.raised(2.0).relative() - 2.0 * before).abs() < 1e-12);
    }
}
