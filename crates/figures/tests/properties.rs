//! Laws that every drawing keeps, whatever it is given.
#![allow(missing_docs)]

mod measure;
mod shown;

use figures::{
    Across, Allowed, Anchor, CupMark, CupShown, Density, DotShown, Drawing, DriveFigure, GapRow, GapShown,
    GrooveShown, GroundRow, Labelled, LimitBand, Mark, MoveShown, Node, Point, RateScale, Role, Room,
    RowOfCups, RunShown, Seen, Shape, Spot, SpreadStrip, TextLine, TipGroup, TipOnTape, TipOverGround,
    TipShape, TipShown, Toward, Way, Weight, fit, svg, text_width,
};
use proptest::prelude::*;

/// Texts as people write them, and as nobody should.
fn words() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => "[a-zñáéA-ZÑ0-9½%,.·]{1,9}( [a-zñáéA-Z0-9½%]{1,12}){0,6}",
        1 => "[<>&\"' ]{0,12}",
        1 => any::<String>(),
        1 => Just(String::new()),
        1 => "[A-Za-z]{40,90}",
    ]
}

fn number() -> impl Strategy<Value = f64> {
    prop_oneof![6 => 0.0..2.0f64, 1 => any::<f64>(), 1 => Just(f64::NAN), 1 => -3.0..30.0f64, 1 => Just(0.0)]
}

fn cup_mark() -> impl Strategy<Value = CupMark> {
    use CupMark::{CannotTell, High, Low, NotCaught, Plugged, Quiet, Worn};
    prop_oneof![
        5 => Just(Quiet), 1 => Just(High), 1 => Just(Low), 1 => Just(CannotTell), 1 => Just(Plugged),
        1 => Just(NotCaught), 1 => Just(Worn),
    ]
}

fn mark() -> impl Strategy<Value = Mark> {
    prop_oneof![3 => Just(Mark::Quiet), 1 => Just(Mark::High), 1 => Just(Mark::Low), 1 => Just(Mark::CannotTell)]
}

fn tip_shape() -> impl Strategy<Value = TipShape> {
    use TipShape::{AtPlace, DoubtfulCup, Mended, OtherSize, PartlyPlugged, Plugged, Sound, StillOff, Worn};
    prop_oneof![
        4 => Just(Sound), 1 => Just(Worn), 1 => Just(PartlyPlugged), 1 => Just(Plugged), 1 => Just(OtherSize),
        1 => Just(DoubtfulCup), 1 => Just(Mended), 1 => Just(AtPlace), 1 => Just(StillOff),
    ]
}

fn cup() -> impl Strategy<Value = CupShown> {
    let reading = prop_oneof![5 => "[0-9]{1,2}[½¼¾]?".boxed(), 1 => words().boxed()];
    (
        (any::<u8>(), words(), proptest::option::weighted(0.9, number())),
        proptest::option::of(number()),
        proptest::option::of(number()),
        proptest::option::of(number()),
        (reading, cup_mark(), words(), proptest::option::weighted(0.2, 0..4usize)),
        proptest::option::weighted(0.5, (tip_shape(), words())),
    )
        .prop_map(|((_, id, place), level, low, high, (reading, mark, word, group), likely)| CupShown {
            number: 0,
            id,
            place,
            level,
            low,
            high,
            reading,
            mark,
            word,
            group,
            likely: likely.map(|(shape, word)| TipShown { shape, word }),
        })
}

fn limit() -> impl Strategy<Value = LimitBand> {
    (proptest::option::of(number()), proptest::option::of(number()), words(), words(), words()).prop_map(
        |(below, above, above_label, label, below_label)| LimitBand {
            below,
            above,
            above_label,
            label,
            below_label,
        },
    )
}

prop_compose! {
    fn row()(
        cups in proptest::collection::vec(cup(), 0..80),
        sorted in any::<bool>(),
        sections in proptest::collection::vec(0..20u32, 0..6),
        groups in proptest::collection::vec((words(), number()), 0..3),
        limit in proptest::option::of(limit()),
        density in prop_oneof![Just(Density::Roomy), Just(Density::Usual), Just(Density::Dense)],
        per_row in proptest::option::weighted(0.2, 0..90u32),
        mirrored in any::<bool>(),
        texts in (words(), words(), words(), words(), words()),
        over_sections in proptest::collection::vec((0..7usize, words()), 0..3),
    ) -> RowOfCups {
        let mut cups = cups;
        if sorted {
            // Places in order, so that uneven ones are drawn too.
            let mut place = 0.0;
            for cup in &mut cups {
                place += cup.place.filter(|place| place.is_finite()).unwrap_or(0.5).clamp(0.0, 1.0);
                cup.place = Some(place);
            }
        }
        for (number, cup) in (1..).zip(&mut cups) {
            cup.number = number;
        }
        RowOfCups {
            id: texts.0,
            language: "en".to_owned(),
            title: texts.1,
            description: texts.2,
            cups,
            sections,
            over_sections,
            groups: groups.into_iter().map(|(label, about)| TipGroup { label, about }).collect(),
            limit,
            density,
            per_row,
            seen: if mirrored { Seen::FromTheFront } else { Seen::AsTheDriverSits },
            left_end: texts.3,
            right_end: texts.4,
        }
    }
}

fn labelled() -> impl Strategy<Value = Labelled> {
    (number(), words()).prop_map(|(value, label)| Labelled { value, label })
}

prop_compose! {
    fn rate()(
        value in labelled(),
        doubt in (proptest::option::of(number()), proptest::option::of(number()), words()),
        mark in mark(),
        wanted in proptest::option::of(labelled()),
        allowed in proptest::option::of((number(), number(), words())),
        least in proptest::option::of(labelled()),
        most in proptest::option::of(labelled()),
        ticks in proptest::collection::vec(labelled(), 0..12),
    ) -> RateScale {
        let (low, high, doubt_label) = doubt;
        RateScale {
            id: "rate".to_owned(),
            language: "es".to_owned(),
            title: "Rate".to_owned(),
            description: String::new(),
            value,
            low,
            high,
            doubt_label,
            mark,
            wanted,
            allowed: allowed.map(|(low, high, label)| Allowed { low, high, label }),
            least,
            most,
            ticks,
        }
    }
}

prop_compose! {
    fn gaps()(
        tips in proptest::collection::vec((number(), words(), words(), mark()), 0..40),
        sorted in any::<bool>(),
        moves in proptest::collection::vec((0..45u32, any::<bool>(), words()), 0..6),
        per_row in proptest::option::weighted(0.3, 0..40u32),
    ) -> GapRow {
        let mut place = 0.0;
        let mut row = GapRow {
            id: "gaps".to_owned(),
            language: "en".to_owned(),
            title: "Gaps".to_owned(),
            description: String::new(),
            tips: Vec::new(),
            gaps: Vec::new(),
            moves: Vec::new(),
            per_row,
        };
        for (number, (step, length, off, mark)) in (1..).zip(tips) {
            place += if step.is_finite() { step.clamp(0.0, 2.0) } else { 0.5 };
            row.tips.push(TipOnTape { number, place: if sorted { place } else { step } });
            row.gaps.push(GapShown { id: format!("gap-{number}"), length, off, mark });
        }
        row.gaps.pop();
        row.moves = moves
            .into_iter()
            .map(|(number, left, label)| MoveShown {
                number,
                toward: if left { Toward::Left } else { Toward::Right },
                label,
            })
            .collect();
        row
    }
}

prop_compose! {
    fn ground()(
        tips in proptest::collection::vec((number(), proptest::option::of((number(), number()))), 0..40),
        grooves in proptest::collection::vec((number(), number(), number(), any::<bool>()), 0..60),
        limit in proptest::option::of((proptest::option::of(number()), words(), words(), words())),
        spots in proptest::collection::vec((number(), mark(), words()), 0..4),
        height in number(),
        doubt_label in words(),
        phone in any::<bool>(),
        sound in any::<bool>(),
    ) -> GroundRow {
        let mut place = 0.0;
        GroundRow {
            id: "ground".to_owned(),
            language: "en".to_owned(),
            title: "Ground".to_owned(),
            description: String::new(),
            tips: (1..).zip(tips).map(|(number, (place, fan))| TipOverGround { number, place, fan }).collect(),
            height,
            grooves: grooves.into_iter().map(|(step, low, high, judged)| {
                let from = if sound { place } else { step };
                place += if step.is_finite() { step.clamp(0.01, 0.5) } else { 0.1 };
                GrooveShown { from, to: if sound { place } else { high }, low, high, judged }
            }).collect(),
            limit: limit.map(|(share, above_label, label, below_label)| LimitBand { below: share, above: share, above_label, label, below_label }),
            spots: (1..).zip(spots).map(|(number, (place, mark, label))| Spot { id: format!("spot-{number}"), place, mark, label }).collect(),
            doubt_label,
            across: if phone { Across::Phone } else { Across::Page },
        }
    }
}

prop_compose! {
    fn drive()(
        length in words(),
        runs in proptest::collection::vec((words(), any::<bool>(), words(), words()), 0..6),
        mean in words(),
        mean_label in words(),
    ) -> DriveFigure {
        DriveFigure {
            id: "drive".to_owned(),
            language: "en".to_owned(),
            title: "Drive".to_owned(),
            description: String::new(),
            length,
            runs: runs
                .into_iter()
                .map(|(label, there, time, speed)| RunShown {
                    id: "run".to_owned(),
                    label,
                    way: if there { Way::There } else { Way::Back },
                    time,
                    speed,
                })
                .collect(),
            mean,
            mean_label,
        }
    }
}

prop_compose! {
    fn spread()(
        dots in proptest::collection::vec((number(), mark(), words()), 0..120),
        below in proptest::option::of(number()),
        above in proptest::option::of(number()),
        ticks in proptest::collection::vec(labelled(), 0..9),
    ) -> SpreadStrip {
        SpreadStrip {
            id: "spread".to_owned(),
            language: "en".to_owned(),
            title: "Spread".to_owned(),
            description: String::new(),
            dots: (1..)
                .zip(dots)
                .map(|(number, (off, mark, told))| DotShown { number, id: format!("dot-{number}"), off, mark, told })
                .collect(),
            below,
            above,
            ticks,
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn a_row_of_cups_holds(row in row()) {
        let drawing = row.draw();
        prop_assert_eq!(measure::wrong(&drawing), None);
        let text = svg(&drawing);
        let document = roxmltree::Document::parse(&text).expect("an SVG");
        let cups: Vec<_> =
            document.descendants().filter(|node| node.attribute("data-role") == Some("cup-of-tip")).collect();
        prop_assert_eq!(cups.len(), row.cups.len());
        for (shown, node) in row.cups.iter().zip(&cups) {
            prop_assert!(node.attribute("id").is_some());
            let title = node.children().find(|child| child.has_tag_name("title")).and_then(|title| title.text());
            prop_assert!(title.is_some_and(|title| title.starts_with(&shown.number.to_string())));
        }
    }

    #[test]
    fn a_rate_holds(rate in rate()) {
        prop_assert_eq!(measure::wrong(&rate.draw()), None);
    }

    #[test]
    fn gaps_hold(gaps in gaps()) {
        prop_assert_eq!(measure::wrong(&gaps.draw()), None);
    }

    #[test]
    fn the_ground_holds(ground in ground()) {
        prop_assert_eq!(measure::wrong(&ground.draw()), None);
    }

    #[test]
    fn a_drive_holds(drive in drive()) {
        prop_assert_eq!(measure::wrong(&drive.draw()), None);
    }

    #[test]
    fn a_spread_holds(spread in spread()) {
        prop_assert_eq!(measure::wrong(&spread.draw()), None);
    }

    #[test]
    fn what_fits_is_within_its_room(
        text in words(),
        width in -10.0..400.0f64,
        lines in 0..4usize,
        size in 5.0..40.0f64,
        least_size in prop_oneof![4 => 5.0..40.0f64, 1 => any::<f64>()],
    ) {
        let room = Room { width, lines, size, least_size, weight: Weight::Bold };
        let fitted = fit(&text, room);
        prop_assert!(fitted.lines.len() <= lines.max(1));
        prop_assert!(fitted.size <= size);
        for line in &fitted.lines {
            prop_assert!(text_width(line, fitted.size, Weight::Bold) <= width);
        }
    }
}

/// The measure itself must find what is wrong.
#[test]
fn the_measure_bites() {
    let drawing = shown::drive(shown::Language::English).draw();
    assert_eq!(measure::wrong(&drawing), None);
    let found = |change: &dyn Fn(&mut Drawing)| {
        let mut changed = drawing.clone();
        change(&mut changed);
        measure::wrong(&changed).unwrap_or_default()
    };
    let label = |x: f64, size: f64| {
        let line = TextLine {
            at: Point::new(x, 60.0),
            anchor: Anchor::Start,
            size,
            weight: Weight::Regular,
            content: "200 ft".to_owned(),
        };
        Node::new(Role::Text, Shape::Text(line))
    };
    assert!(found(&|drawing| drawing.nodes.push(label(430.0, 17.0))).contains("overlap"));
    assert!(found(&|drawing| drawing.nodes.push(label(970.0, 17.0))).contains("outside"));
    assert!(found(&|drawing| drawing.nodes.push(label(60.0, 12.0))).contains("too small"));
    assert!(found(&|drawing| drawing.height -= 10.0).contains("outside"));
}

#[test]
fn the_gallery_holds() {
    let all = shown::all();
    assert!(all.len() > 20);
    for (name, drawing) in all {
        assert_eq!(measure::wrong(&drawing), None, "{name}");
    }
}

/// Each density with every number of tips up to 80, in both languages.
#[test]
fn no_texts_overlap_whatever_the_number_of_tips() {
    for density in [Density::Roomy, Density::Usual, Density::Dense] {
        for tips in 1..=80 {
            let language = if tips % 2 == 0 { shown::Language::English } else { shown::Language::Spanish };
            let boom = shown::Boom { tips, section: 6, density, language };
            assert_eq!(measure::wrong(&shown::row(boom).draw()), None, "{tips} tips, {density:?}");
        }
    }
}

/// Up to what each density promises, every tip has its number and its reading.
#[test]
fn usual_rows_keep_every_number_and_reading() {
    for (density, most) in [(Density::Roomy, 14), (Density::Usual, 24)] {
        for tips in 1..=most {
            let boom = shown::Boom { tips, section: 0, density, language: shown::Language::English };
            let row = shown::row(boom);
            let drawing = row.draw();
            let texts: Vec<&str> =
                measure::texts(&drawing).into_iter().map(|line: &TextLine| line.content.as_str()).collect();
            for cup in &row.cups {
                assert!(
                    texts.contains(&cup.number.to_string().as_str()),
                    "number of {} of {tips}",
                    cup.number
                );
                assert!(
                    texts.contains(&cup.reading.as_str()) || cup.reading.is_empty(),
                    "reading of {}",
                    cup.number
                );
            }
        }
    }
}

/// In a dense row marked tips have number, reading and sign; quiet ones give way.
#[test]
fn dense_rows_keep_what_is_marked() {
    let boom =
        shown::Boom { tips: 72, section: 12, density: Density::Dense, language: shown::Language::English };
    let row = shown::row(boom);
    let drawing = row.draw();
    let texts: Vec<&str> =
        measure::texts(&drawing).into_iter().map(|line: &TextLine| line.content.as_str()).collect();
    for cup in row.cups.iter().filter(|cup| !matches!(cup.mark, CupMark::Quiet | CupMark::NotCaught)) {
        assert!(texts.contains(&cup.number.to_string().as_str()), "number of {}", cup.number);
    }
    assert!(texts.contains(&"45") && !texts.contains(&"46"));
}
