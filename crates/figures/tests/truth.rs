//! The row of cups shows what it was given, at the height and place it was given.
#![allow(missing_docs)]

mod measure;
mod shown;

use figures::{CupMark, Density, Drawing, GapRow, LimitBand, Mark, Node, Point, Role, RowOfCups, Seen};
use shown::{Boom, Language};

fn row(tips: u32) -> RowOfCups {
    let boom = Boom { tips, section: 0, density: Density::Roomy, language: Language::English };
    let mut row = shown::row(boom);
    for cup in &mut row.cups {
        (cup.mark, cup.level, cup.low, cup.high) = (CupMark::Quiet, Some(1.0), None, None);
    }
    row
}

/// Upper left and lower right of every shape with this role, from the left.
fn boxes(drawing: &Drawing, role: Role) -> Vec<(Point, Point)> {
    let mut boxes: Vec<(Point, Point)> = measure::nodes(drawing)
        .into_iter()
        .filter(|node: &&Node| node.role == role)
        .map(|node| {
            let points = measure::points(node);
            let least = |of: fn(&Point) -> f64| points.iter().map(of).fold(f64::INFINITY, f64::min);
            let most = |of: fn(&Point) -> f64| points.iter().map(of).fold(f64::NEG_INFINITY, f64::max);
            (Point::new(least(|p| p.x), least(|p| p.y)), Point::new(most(|p| p.x), most(|p| p.y)))
        })
        .collect();
    boxes.sort_by(|one, other| one.0.x.total_cmp(&other.0.x));
    boxes
}

fn near(one: f64, other: f64) -> bool {
    (one - other).abs() < 1e-6
}

/// By hand: the mean stands at 60 % of the cup's height, so twice a third of it more stands at 60 % × 4/3 = 80 %.
#[test]
fn water_stands_as_high_as_the_reading() {
    let mut row = row(4);
    for (cup, level) in row.cups.iter_mut().zip([1.0, 4.0 / 3.0, 0.5, 0.0]) {
        cup.level = Some(level);
    }
    let drawing = row.draw();
    let (cups, lines) = (boxes(&drawing, Role::Cup), boxes(&drawing, Role::WaterLine));
    let share = |index: usize| {
        let (top, bottom) = (cups[index].0.y, cups[index].1.y);
        (bottom - lines[index].0.y) / (bottom - top)
    };
    assert!(near(share(0), 0.6) && near(share(1), 0.8) && near(share(2), 0.3), "{}", share(1));
    assert!(share(3) < 0.02, "a zero reading shows its surface at the bottom");
    assert_eq!(boxes(&drawing, Role::Water).len(), 3, "and no water");
    assert!(boxes(&drawing, Role::Overflow).is_empty());
}

#[test]
fn what_is_over_the_brim_is_seen_to_run_over() {
    let mut row = row(3);
    row.cups[1].level = Some(5.0);
    let drawing = row.draw();
    let cup = boxes(&drawing, Role::Cup)[1];
    assert!(near(boxes(&drawing, Role::WaterLine)[1].0.y, cup.0.y));
    assert!(
        boxes(&drawing, Role::Overflow)
            .iter()
            .all(|over| over.0.x > cup.0.x - 5.0 && over.1.x < cup.1.x + 5.0)
    );
    assert_eq!(boxes(&drawing, Role::Overflow).len(), 3);
}

#[test]
fn doubt_lies_about_the_water_line() {
    let mut row = row(1);
    (row.cups[0].low, row.cups[0].high) = (Some(0.9), Some(1.2));
    let drawing = row.draw();
    let (cup, doubt) = (boxes(&drawing, Role::Cup)[0], boxes(&drawing, Role::Doubt)[0]);
    let height = cup.1.y - cup.0.y;
    assert!(near(cup.1.y - doubt.0.y, height * 0.72) && near(cup.1.y - doubt.1.y, height * 0.54));
}

#[test]
fn unequal_limits_are_drawn_where_they_are_and_missing_ones_not_at_all() {
    let edges = |below, above| {
        let mut row = row(2);
        row.limit = Some(LimitBand {
            below,
            above,
            above_label: "above".to_owned(),
            label: "limit".to_owned(),
            below_label: "below".to_owned(),
        });
        let drawing = row.draw();
        let cup = boxes(&drawing, Role::Cup)[0];
        let mut edges: Vec<f64> = boxes(&drawing, Role::BandEdge)
            .iter()
            .map(|edge| (cup.1.y - edge.0.y) / (cup.1.y - cup.0.y) / 0.6)
            .collect();
        edges.sort_by(f64::total_cmp);
        let labels: Vec<String> = measure::texts(&drawing)
            .iter()
            .map(|text| text.content.clone())
            .filter(|text| ["above", "limit", "below"].contains(&text.as_str()))
            .collect();
        (edges, labels.join(" "))
    };
    let (both, labels) = edges(Some(0.05), Some(0.15));
    assert!(near(both[0], 0.95) && near(both[1], 1.15));
    assert_eq!(labels, "above limit below");
    let (above, labels) = edges(None, Some(0.1));
    assert!(above.len() == 1 && near(above[0], 1.1));
    assert_eq!(labels, "above limit");
    assert!(edges(None, None).0.is_empty());
    let mut none = row(2);
    none.limit = None;
    assert!(boxes(&none.draw(), Role::Band).is_empty());
}

#[test]
fn tips_stand_at_their_true_places_even_when_cups_must_give_way() {
    let places = [0.0, 0.5, 0.5, 1.5, 2.5];
    let mut row = row(5);
    for (cup, place) in row.cups.iter_mut().zip(places) {
        cup.place = Some(place);
    }
    let drawing = row.draw();
    let middle = |pair: &(Point, Point)| (pair.0.x + pair.1.x) / 2.0;
    let tips: Vec<f64> = boxes(&drawing, Role::Tip).iter().map(middle).collect();
    let scale = (tips[4] - tips[0]) / 2.5;
    for (tip, place) in tips.iter().zip(places) {
        assert!(near(tip - tips[0], place * scale), "{tip} for {place} m");
    }
    let cups = boxes(&drawing, Role::Cup);
    assert!(cups.windows(2).all(|pair| pair[0].1.x < pair[1].0.x), "cups do not overlap");
    let moved = cups.iter().map(middle).zip(&tips).filter(|(cup, tip)| (cup - *tip).abs() > 1.0).count();
    assert!(moved >= 2, "twins cannot both stand under their tips");
    assert_eq!(boxes(&drawing, Role::Leader).len(), moved, "each moved cup is led back to its tip");
}

#[test]
fn a_front_boom_seen_from_the_front_has_tip_one_on_the_right() {
    let mut row = row(6);
    let first = |drawing: &Drawing| {
        let line = measure::texts(drawing).into_iter().find(|text| text.content == "1").cloned();
        line.map(|line| line.at.x).unwrap_or_default()
    };
    let behind = first(&row.draw());
    row.seen = Seen::FromTheFront;
    let front = first(&row.draw());
    assert!(behind < 500.0 && front > 500.0);
}

#[test]
fn a_group_has_its_band_at_its_own_level() {
    let drawing = shown::grouped(Language::English).draw();
    let bands = boxes(&drawing, Role::Band);
    let cup = boxes(&drawing, Role::Cup)[0];
    let middle = |band: &(Point, Point)| (cup.1.y - (band.0.y + band.1.y) / 2.0) / (cup.1.y - cup.0.y) / 0.6;
    let levels: Vec<f64> = bands.iter().map(middle).collect();
    assert!(levels.len() == 3 && near(levels[0], 0.5) && near(levels[1], 1.0) && near(levels[2], 0.5));
}

/// A mark must be told by shape alone: no two kinds of cup leave the same shapes when colour is taken away.
#[test]
fn marks_differ_without_colour() {
    use CupMark::{CannotTell, High, Low, NotCaught, Plugged, Quiet, Worn};
    let mut seen: Vec<(CupMark, String)> = Vec::new();
    for mark in [Quiet, High, Low, CannotTell, Plugged, NotCaught, Worn] {
        let mut row = row(1);
        (row.cups[0].mark, row.cups[0].word) = (mark, String::new());
        let text = figures::svg(&row.draw());
        let drawn: Vec<String> =
            text.split('#').map(|part| part.get(6..).unwrap_or_default().to_owned()).collect();
        // Colours cut out, and the names of roles, which nobody sees.
        let shapes = roleless(&drawn.join(""));
        for (other, same) in &seen {
            assert_ne!(same, &shapes, "{mark:?} looks like {other:?}");
        }
        seen.push((mark, shapes));
    }
}

fn roleless(text: &str) -> String {
    text.split(" data-role=\"").map(|part| part.split_once('"').map_or(part, |(_, rest)| rest)).collect()
}

#[test]
fn marked_tips_are_told_to_those_who_cannot_see() {
    let mut row = row(3);
    row.description = "Three cups.".to_owned();
    (row.cups[1].mark, row.cups[1].reading, row.cups[1].word) =
        (CupMark::High, "17".to_owned(), "high".to_owned());
    assert_eq!(row.draw().description, "Three cups. 2: 17, high");
    let gaps: GapRow = shown::gaps(5);
    assert_eq!(gaps.draw().description, "Gaps between tips. 3–4: 21½ in, +1½ in; 4–5: 18½ in, −1½ in");
}

#[test]
fn the_roomiest_density_that_holds_all() {
    assert_eq!(Density::for_tips(14, 1), Density::Roomy);
    assert_eq!(Density::for_tips(20, 1), Density::Usual);
    assert_eq!(Density::for_tips(20, 2), Density::Roomy);
    assert_eq!(Density::for_tips(72, 1), Density::Dense);
    assert_eq!(Density::for_tips(72, 3), Density::Usual);
}

#[test]
fn a_gap_too_wide_points_outward_and_one_too_narrow_inward() {
    let heads = |mark| {
        let mut gaps = shown::gaps(2);
        gaps.moves.clear();
        gaps.gaps[0].mark = mark;
        boxes(&gaps.draw(), Role::MarkAct)
    };
    let (wide, narrow) = (heads(Mark::High), heads(Mark::Low));
    assert_eq!((wide.len(), narrow.len()), (2, 2));
    assert!(wide[0].0.x < narrow[0].0.x && wide[1].1.x > narrow[1].1.x);
    assert!(heads(Mark::Quiet).is_empty() && heads(Mark::CannotTell).is_empty());
}

/// Beyond the limit by more than the strip reaches, a tip stands at its end, still counted.
#[test]
fn no_tip_is_lost_from_the_spread() {
    let spread = shown::spread(60);
    let drawing = spread.draw();
    let acts = boxes(&drawing, Role::MarkAct);
    // Tip 11, plugged, is off the line: a double head, and left of all the others.
    assert_eq!(boxes(&drawing, Role::Dot).len() + acts.len(), spread.dots.len() + 1);
    let ticks = boxes(&drawing, Role::Tick);
    assert!(acts[0].0.x < ticks[0].0.x && acts[1].1.x < ticks[0].0.x, "beyond the last mark");
}

/// By hand: a mean stands at 60 % of a groove's height, so 0.75 of it at 45 % and the limit of 20 % between 48 and 72 %.
#[test]
fn grooves_are_filled_to_their_dose_under_their_place() {
    let mut ground = shown::ground(12, figures::Across::Page);
    for groove in &mut ground.grooves {
        (groove.low, groove.high) = (0.75, 1.25);
    }
    let drawing = ground.draw();
    let (water, doubt, band) =
        (boxes(&drawing, Role::Water)[0], boxes(&drawing, Role::Doubt)[0], boxes(&drawing, Role::Band)[0]);
    let bottom = water.1.y;
    let whole = (bottom - water.0.y) / 0.45;
    assert!(near(bottom - doubt.0.y, whole * 0.75) && near(doubt.1.y, water.0.y));
    assert!(near(bottom - band.0.y, whole * 0.72) && near(bottom - band.1.y, whole * 0.48));
    // Only what is judged lies before the limit; tips stand over their places.
    let scale = (water.1.x - water.0.x) / (ground.grooves.len() as f64 * 0.1);
    let judged: Vec<_> = ground.grooves.iter().filter(|groove| groove.judged).collect();
    assert!(near(band.0.x, water.0.x + (judged[0].from + 0.7) * scale));
    let tips = boxes(&drawing, Role::Tip);
    assert!(near((tips[3].0.x + tips[3].1.x) / 2.0, water.0.x + (1.5 + 0.7) * scale));
    // A plugged tip has no fan.
    assert_eq!((tips.len(), boxes(&drawing, Role::Fan).len()), (12, 11));
    // Half a metre over the ground, true to scale.
    let fan = boxes(&drawing, Role::Fan)[0];
    assert!(near(fan.1.y - fan.0.y, 0.5 * scale));
}
