//! Any split, shuffle, repeat or interleaving of the same lines comes to the same notebook, whatever the clocks say.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use notebook::{
    About, At, DeviceId, Draft, Entry, Kind, Line, LineId, Notebook, NotebookId, Ranges, RowId, Strike,
    Taken, ThingId, Told, VERSION, Value, Written, folded, verify,
};
use proptest::prelude::*;

use common::{BOOK, Pen, device, fact, reading, row, visit};

/// Something a device does: writes a fact or a reading, strikes a line, withdraws a visit, or learns from another device.
#[derive(Clone, Debug)]
enum Deed {
    Fact(u8, u8),
    Reading(u8, u8),
    Strike(u8),
    Withdraw,
    Learn(u8),
    Later,
}

fn deeds() -> impl Strategy<Value = Vec<(u8, u8, Deed)>> {
    let deed = prop_oneof![
        6 => (0_u8..4, 0_u8..3).prop_map(|(field, value)| Deed::Fact(field, value)),
        6 => (1_u8..6, 0_u8..4).prop_map(|(tip, value)| Deed::Reading(tip, value)),
        2 => any::<u8>().prop_map(Deed::Strike),
        1 => Just(Deed::Withdraw),
        3 => (0_u8..3).prop_map(Deed::Learn),
        1 => Just(Deed::Later),
    ];
    prop::collection::vec((0_u8..3, 0_u8..2, deed), 0..60)
}

/// Three devices at work, now and then learning from one another; every line that was written.
fn written(deeds: &[(u8, u8, Deed)], clock: &[i64]) -> Vec<Line> {
    let mut books = [Notebook::new(BOOK), Notebook::new(BOOK), Notebook::new(BOOK)];
    let mut pen = Pen::default();
    let mut lines: Vec<Line> = Vec::new();
    for (place, (who, about, deed)) in deeds.iter().enumerate() {
        let (who, about) = (usize::from(*who), visit(u128::from(*about)));
        let mut draft = match deed {
            Deed::Fact(field, value) => {
                pen.draft(about, fact(&format!("setting.gear{field}"), &format!("value {value}")))
            }
            Deed::Reading(tip, value) => {
                pen.draft(about, reading(row(1), u32::from(*tip), &format!("{value} fl oz")))
            }
            Deed::Strike(which) => {
                match books[who].lines().nth(usize::from(*which) % books[who].len().max(1)) {
                    Some(line) => {
                        let id = line.id();
                        pen.draft(about, Told::from(Entry::Nothing).instead_of(id, "misread"))
                    }
                    None => continue,
                }
            }
            Deed::Withdraw => pen.draft(about, Entry::Withdraw { reason: "the owner asks".to_string() }),
            Deed::Learn(from) => {
                let other = books[usize::from(*from)].clone();
                books[who].merge(&other);
                continue;
            }
            Deed::Later => pen.later(about, 7, "{\"kind\": \"not  known\u{fe0f} yet\"}"),
        };
        // Clocks are wrong: nothing may go by them.
        draft.at = At { utc_milliseconds: clock.get(place).copied().unwrap_or(0), offset_minutes: 0 };
        lines.push(books[who].write(device(who as u128), draft));
    }
    lines
}

fn taken(lines: impl IntoIterator<Item = Line>) -> Notebook {
    let mut book = Notebook::new(BOOK);
    for line in lines {
        let taken = book.take(line);
        assert!(!matches!(taken, Taken::Changed | Taken::Foreign), "{taken:?}");
    }
    book
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, ..ProptestConfig::default() })]

    #[test]
    fn order_repeats_and_parts_do_not_matter(
        deeds in deeds(),
        shuffle in prop::collection::vec(any::<u64>(), 64),
        repeats in prop::collection::vec(any::<prop::sample::Index>(), 0..20),
        cut in any::<prop::sample::Index>(),
    ) {
        let lines = written(&deeds, &[]);
        let whole = taken(lines.clone());
        let mut other = lines.clone();
        if !lines.is_empty() {
            other.extend(repeats.iter().map(|index| lines[index.index(lines.len())].clone()));
        }
        let mut keyed: Vec<(u64, Line)> =
            other.into_iter().enumerate().map(|(place, line)| (shuffle[place % shuffle.len()].wrapping_mul(place as u64 + 1), line)).collect();
        keyed.sort_by_key(|(key, _)| *key);
        let other: Vec<Line> = keyed.into_iter().map(|(_, line)| line).collect();
        let shuffled = taken(other.clone());
        prop_assert_eq!(&whole, &shuffled);
        // In two parts, merged either way round.
        let at = if other.is_empty() { 0 } else { cut.index(other.len()) };
        let (one, two) = (taken(other[..at].to_vec()), taken(other[at..].to_vec()));
        let (mut there, mut back) = (one.clone(), two.clone());
        there.merge(&two);
        back.merge(&one);
        prop_assert_eq!(&whole, &there);
        prop_assert_eq!(&whole, &back);
        prop_assert_eq!(folded(&whole), folded(&back));
        prop_assert_eq!(verify(&whole), vec![]);
    }

    #[test]
    fn clocks_do_not_matter(deeds in deeds(), clock in prop::collection::vec(any::<i32>(), 60)) {
        let clock: Vec<i64> = clock.into_iter().map(i64::from).collect();
        let values = |lines: Vec<Line>| {
            let folded = folded(&taken(lines));
            let facts = folded.visits.values().map(|visit| (visit.facts.clone(), visit.readings.clone(), visit.file()));
            facts.collect::<Vec<_>>()
        };
        prop_assert_eq!(values(written(&deeds, &[])), values(written(&deeds, &clock)));
    }

    #[test]
    fn what_the_other_lacks_makes_both_the_same(deeds in deeds(), cut in any::<prop::sample::Index>()) {
        let lines = written(&deeds, &[]);
        let at = if lines.is_empty() { 0 } else { cut.index(lines.len()) };
        let (whole, mut part) = (taken(lines.clone()), taken(lines[..at].to_vec()));
        let sent: Vec<Line> = whole.lines_beyond(part.held()).cloned().collect();
        prop_assert_eq!(sent.len() + part.len(), whole.len());
        sent.into_iter().for_each(|line| { part.take(line); });
        prop_assert_eq!(whole, part);
    }

    #[test]
    fn ranges_are_sets(one in prop::collection::vec((0_u8..2, 1_u64..40), 0..60), two in prop::collection::vec((0_u8..2, 1_u64..40), 0..60)) {
        let of = |numbers: &[(u8, u64)]| {
            let mut ranges = Ranges::none();
            numbers.iter().for_each(|(who, number)| ranges.add(device(u128::from(*who)), *number));
            ranges
        };
        let (first, second) = (of(&one), of(&two));
        let (union, left) = (first.with(&second), first.without(&second));
        for who in 0_u8..2 {
            for number in 0_u64..42 {
                let holds = |set: &[(u8, u64)]| set.contains(&(who, number));
                let asked = device(u128::from(who));
                prop_assert_eq!(first.holds(asked, number), holds(&one));
                prop_assert_eq!(union.holds(asked, number), holds(&one) || holds(&two));
                prop_assert_eq!(left.holds(asked, number), holds(&one) && !holds(&two));
            }
        }
        prop_assert_eq!(first.with(&first.gaps()).gaps().count(), 0);
    }
}

#[test]
fn a_withdrawn_visit_leaves_bare_envelopes_on_every_device() {
    let (mut one, mut two, mut pen) = (Notebook::new(BOOK), Notebook::new(BOOK), Pen::default());
    one.write(device(1), pen.draft(visit(1), fact("visit.farm", "Willow Bend Farm")));
    one.write(device(1), pen.draft(visit(2), fact("visit.farm", "Another farm")));
    two.merge(&one);
    // One withdraws while the other, who does not know it yet, goes on writing.
    one.write(device(1), pen.draft(visit(1), Entry::Withdraw { reason: "sold".to_string() }));
    two.write(device(2), pen.draft(visit(1), fact("visit.operator", "T. Marsh")));
    one.merge(&two);
    two.merge(&one);
    assert_eq!(one, two);
    let text = notebook::write_file(&one);
    assert!(!text.contains("Willow Bend Farm") && !text.contains("T. Marsh"), "{text}");
    assert!(text.contains("Another farm"));
    assert_eq!((one.len(), verify(&one)), (4, vec![]));
    assert!(!folded(&one).visits.contains_key(&visit(1).id));
}

#[test]
fn two_values_are_both_kept_until_one_is_struck() {
    let (mut one, mut two, mut pen) = (Notebook::new(BOOK), Notebook::new(BOOK), Pen::default());
    one.write(device(1), pen.draft(visit(1), fact("drive.course", "204 ft")));
    let wrong = two.write(device(2), pen.draft(visit(1), fact("drive.course", "240 ft")));
    one.merge(&two);
    let first = folded(&one);
    let two_values = &first.visits[&visit(1).id].two_values;
    assert_eq!(two_values.len(), 1);
    assert_eq!(two_values[0].field, "drive.course");
    assert_eq!(two_values[0].values.len(), 2);
    one.write(
        device(1),
        pen.draft(
            visit(1),
            Told::from(Entry::Nothing).instead_of(wrong.id(), "tape read from the wrong end"),
        ),
    );
    let second = folded(&one);
    assert!(second.visits[&visit(1).id].two_values.is_empty());
    assert_eq!(second.visits[&visit(1).id].facts["drive.course"].value, notebook::Value::text("204 ft"));
    // What was struck stays readable, with the reason.
    assert_eq!(second.struck[&wrong.id()], "tape read from the wrong end");
    assert!(one.line(wrong.id()).and_then(Line::written).is_some());
}

#[test]
fn a_strike_that_was_struck_does_not_count() {
    let (mut book, mut pen) = (Notebook::new(BOOK), Pen::default());
    let value = book.write(device(1), pen.draft(visit(1), fact("drive.course", "204 ft")));
    let strike = book
        .write(device(1), pen.draft(visit(1), Told::from(Entry::Nothing).instead_of(value.id(), "wrong")));
    assert!(folded(&book).visits[&visit(1).id].facts.is_empty());
    book.write(
        device(1),
        pen.draft(visit(1), Told::from(Entry::Nothing).instead_of(strike.id(), "it was right")),
    );
    assert_eq!(folded(&book).visits[&visit(1).id].facts.len(), 1);
}

/// A value that came from elsewhere and is put right again and again, as by keys that make it a little more each time.
#[test]
fn what_was_put_right_does_not_come_back() {
    let (mut book, mut pen) = (Notebook::new(BOOK), Pen::default());
    let mut stands = book.write(device(2), pen.draft(visit(1), fact("setting.boom_height", "20 in"))).id();
    for height in ["21 in", "22 in", "23 in", "24 in"] {
        let entry = fact("setting.boom_height", height);
        stands = book
            .write(device(1), pen.draft(visit(1), Told::from(entry).instead_of(stands, "corrected")))
            .id();
        let told = folded(&book);
        let found = &told.visits[&visit(1).id];
        assert!(found.two_values.is_empty(), "{height}: {:?}", found.two_values);
        assert_eq!(found.facts["setting.boom_height"].value, notebook::Value::text(height));
    }
    // Emptied it is empty, and not what it was first.
    let none = Told::from(Entry::Nothing).instead_of(stands, "taken back");
    let taken_back = book.write(device(1), pen.draft(visit(1), none));
    assert!(folded(&book).visits[&visit(1).id].facts.is_empty());
    // Taking that back brings back what stood last.
    let again = Told::from(Entry::Nothing).instead_of(taken_back.id(), "it was right");
    book.write(device(1), pen.draft(visit(1), again));
    let told = folded(&book);
    assert_eq!(told.visits[&visit(1).id].facts["setting.boom_height"].value, notebook::Value::text("24 in"));
}

#[test]
fn a_corrected_row_keeps_its_turn() {
    let thing = ThingId::from_bits(1);
    let about = About { kind: Kind::Visit, id: thing };
    let mut book = Notebook::new(NotebookId::from_bits(7));
    let mut told = |number: u128, row: u128, after: &str, strikes: Option<LineId>| {
        let value = Value::Table(vec![("after".to_string(), Value::text(after))]);
        let entry = Entry::Row { list: "catch.round".to_string(), row: RowId::from_bits(row), value };
        let told = Told { entry, strikes: strikes.map(|line| Strike { line, reason: "corrected".into() }) };
        let id = LineId::from_bits(number);
        let at = At { utc_milliseconds: 0, offset_minutes: 0 };
        let written = Written::new(told.text(), [0; 16]);
        book.write(DeviceId::from_bits(70), Draft { id, about, at, version: VERSION, written });
        id
    };
    let first = told(1, 10, "as found", None);
    told(2, 11, "new tips", None);
    told(3, 10, "after cleaning", Some(first));
    let rounds: Vec<RowId> =
        folded(&book).visits[&thing].rows["catch.round"].iter().map(|(row, _)| *row).collect();
    assert_eq!(rounds, [RowId::from_bits(10), RowId::from_bits(11)]);
}
