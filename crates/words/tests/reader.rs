//! Numbers, units and dates as the reader writes them; the four settings apart.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use units::{Amount, Arg, Kind, Ranged, Unit, UnitSystem, VolumePerArea};
use words::{Language, NumberFormat, Paper, Reader, Words};

fn rate() -> Amount {
    let rate = VolumePerArea::gallons_per_acre;
    Amount::ranged(&Ranged { value: rate(14.5667), low: rate(14.1), high: rate(15.1) }, Kind::Rate)
}

#[test]
fn language_and_decimal_mark_do_not_depend_on_one_another() {
    for (language, numbers, text) in [
        (Language::English, NumberFormat::Point, "14.1 to 15.1"),
        (Language::English, NumberFormat::Comma, "14,1 to 15,1"),
        (Language::Spanish, NumberFormat::Point, "14.1 a 15.1"),
        (Language::Spanish, NumberFormat::Comma, "14,1 a 15,1"),
    ] {
        let words = Words::new(Reader { language, numbers, ..Reader::default() });
        assert_eq!(words.range(&rate()).as_deref(), Some(text));
    }
}

#[test]
fn units_do_not_follow_from_the_language() {
    for language in Language::ALL {
        let us = Words::of(language);
        assert_eq!(us.amount(&rate()), "14.6 gal/ac");
        let metric = Words::new(Reader { units: UnitSystem::Metric, ..us.reader() });
        assert_eq!(metric.amount(&rate()), "136 L/ha");
        assert_eq!(metric.reader().paper, Paper::Letter);
    }
}

#[test]
fn ounces_are_told_apart_in_both_languages() {
    let unit = |name: &str| Unit::named(name).expect("a unit of the table");
    for language in Language::ALL {
        let words = Words::of(language);
        assert_ne!(words.unit(&unit("fl oz")), words.unit(&unit("oz wt")));
    }
    let spanish = Words::of(Language::Spanish);
    assert_eq!(spanish.unit(&unit("fl oz")), "oz líq");
    assert_eq!(spanish.unit(&unit("oz wt")), "oz peso");
    assert_eq!(spanish.unit(&unit("fl oz/ac")), "oz líq/ac");
    assert_eq!(spanish.unit(&unit("ft")), "pies");
    let parts = |number: &str| Arg::Parts(vec![("3".into(), unit("gal")), (number.into(), unit("pt"))]);
    assert_eq!(spanish.arg(&parts("1")), "3 gal 1 pinta");
    assert_eq!(spanish.arg(&parts("2")), "3 gal 2 pintas");
}

#[test]
fn a_day_is_written_out_and_no_day_stays_as_it_was() {
    let (english, spanish) = (Words::of(Language::English), Words::of(Language::Spanish));
    assert_eq!(english.date("2027-04-14"), "April 14, 2027");
    assert_eq!(spanish.date("2027-04-14"), "14 de abril de 2027");
    for odd in ["next spring", "2027-13-01", "14/4/2027", "", "2027-04-14-1"] {
        assert_eq!(spanish.date(odd), odd);
    }
}

#[test]
fn tips_are_named_shortly() {
    let (english, spanish) = (Words::of(Language::English), Words::of(Language::Spanish));
    assert_eq!(english.arg(&Arg::Tips(vec![1, 2, 3, 4, 9])), "1 to 4 and 9");
    assert_eq!(spanish.arg(&Arg::Tips(vec![1, 2, 3, 4, 9])), "1 a 4 y 9");
    assert_eq!(spanish.arg(&Arg::Tips(vec![4, 7])), "4 y 7");
}
