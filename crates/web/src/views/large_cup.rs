//! The one large cup, drawn: its marks, the water in it, the band in which the others' mean lies.

use std::fmt::Write as _;

use yard::shown::CupScreen;

// Our own layout, in units of the drawing.
/// Width of the drawing.
const WIDTH: f64 = 200.0;
/// Height of the drawing.
const HEIGHT: f64 = 262.0;
/// The bottom of the cup.
const BOTTOM: f64 = 256.0;
/// Height of the water in a full cup.
const FULL: f64 = 248.0;
/// How far the cup's walls stand in at its bottom, and at its brim.
const IN_AT_BOTTOM: f64 = 42.0;
/// See above.
const IN_AT_BRIM: f64 = 22.0;
/// How long a mark is, and one with a number.
const MARK: f64 = 12.0;
/// See above.
const LONG_MARK: f64 = 22.0;

/// Height on the page of a height in the cup, 0 at its bottom to 1 at its brim.
fn down(height: f64) -> f64 {
    BOTTOM - FULL * height
}

/// The left wall at a height in the cup.
fn wall(height: f64) -> f64 {
    IN_AT_BOTTOM + (IN_AT_BRIM - IN_AT_BOTTOM) * height
}

/// The drawing, as SVG. It is looked at only: all that it shows is said in words beside it.
pub fn drawn(shown: &CupScreen) -> String {
    let mut svg = format!(
        "<svg viewBox=\"0 0 {WIDTH} {HEIGHT}\" class=\"large-cup\" aria-hidden=\"true\" focusable=\"false\">"
    );
    if let Some((low, high)) = shown.band {
        let (top, high) = (down(high), down(low));
        part(
            &mut svg,
            "rect",
            "band",
            &format!("x=\"0\" width=\"{WIDTH}\" y=\"{top:.1}\" height=\"{:.1}\"", high - top),
        );
        part(&mut svg, "path", "band-edge", &format!("d=\"M0 {top:.1}H{WIDTH}M0 {high:.1}H{WIDTH}\""));
    }
    if let Some(level) = shown.level {
        let (top, left, right) = (down(level), wall(level), WIDTH - wall(level));
        let (in_left, in_right) = (wall(0.0), WIDTH - wall(0.0));
        part(
            &mut svg,
            "path",
            "water",
            &format!("d=\"M{left:.1} {top:.1}H{right:.1}L{in_right:.1} {BOTTOM}H{in_left:.1}Z\""),
        );
        part(&mut svg, "path", "water-line", &format!("d=\"M{left:.1} {top:.1}H{right:.1}\""));
    }
    for (height, number) in &shown.marks {
        let (at, from) = (down(*height), wall(*height));
        let to = from + if number.is_some() { LONG_MARK } else { MARK };
        part(&mut svg, "path", "mark", &format!("d=\"M{from:.1} {at:.1}H{to:.1}\""));
        if let Some(number) = number {
            let (x, y) = (to + 6.0, at);
            let _ =
                write!(svg, "<text x=\"{x:.1}\" y=\"{y:.1}\" dominant-baseline=\"central\">{number}</text>");
        }
    }
    let (brim, foot) = (wall(1.0), wall(0.0));
    let shape = format!(
        "d=\"M{brim} {top}L{foot} {BOTTOM}H{right_foot}L{right_brim} {top}\"",
        top = down(1.0),
        right_foot = WIDTH - foot,
        right_brim = WIDTH - brim,
    );
    part(&mut svg, "path", "cup", &shape);
    svg.push_str("</svg>");
    svg
}

fn part(svg: &mut String, shape: &str, class: &str, how: &str) {
    // Writing into a text cannot fail.
    let _ = write!(svg, "<{shape} class=\"{class}\" {how}/>");
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_full_cup_ends_at_its_brim_and_an_empty_one_at_its_bottom() {
        assert!((down(0.0) - BOTTOM).abs() < 1e-9 && down(1.0) > 0.0);
        // It is wider at its brim, so that cups can stand in one another.
        assert!(wall(1.0) < wall(0.0) && wall(1.0) > 0.0);
    }

    #[test]
    fn nothing_stands_out_of_the_drawing() {
        for height in [0.0, 0.25, 0.5, 0.98, 1.0] {
            assert!((0.0..=HEIGHT).contains(&down(height)));
            assert!(wall(height) + LONG_MARK < WIDTH / 2.0);
        }
    }
}
