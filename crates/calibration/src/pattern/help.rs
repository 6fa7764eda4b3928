//! What would even a pattern out most, one thing at a time.

use sprayer::pattern::{Band, Fan, Grooves, HeightRange, Pattern, SprayBoom, SprayTip, pattern};
use units::{Angle, Length, Quantity};

use super::across::middle;

/// One thing that would help.
#[derive(Clone, Debug, PartialEq)]
pub struct Help {
    /// What to do.
    pub what: Helps,
    /// How far the grooves would then spread.
    pub spread: Band,
}

/// What there is to do about a pattern.
#[derive(Clone, Debug, PartialEq)]
pub enum Helps {
    /// Clean plugged tips.
    Clean(Vec<u32>),
    /// Change the tip whose flow is furthest off.
    Change(u32),
    /// Set tips upright that lean or are set off.
    Aim(Vec<u32>),
    /// Set tips at their spacing.
    Move,
    /// Carry the boom at another height.
    Height(Length),
}

/// Less than so much of spread is no help. Our own choice: a hundredth.
const LEAST: f64 = 0.01;
/// A tip that leans less stands upright. Our own choice: one degree, which no eye sees.
const UPRIGHT: f64 = 1.0;
/// Tips nearer to their places than this stand there, in metres. Our own choice: 5 mm.
const IN_PLACE: f64 = 0.005;

/// Returns what helps most, where anything helps.
pub(super) fn help(
    boom: &SprayBoom,
    fans: &[Fan],
    grooves: &Grooves,
    now: &Pattern,
    suits: &[HeightRange],
) -> Option<Help> {
    let changed = |change: &dyn Fn(u32, SprayTip) -> SprayTip| -> Option<Band> {
        let tips = (1..).zip(boom.tips()).map(|(number, tip)| change(number, *tip)).collect();
        let boom = SprayBoom::new(tips, boom.spacing()).ok()?;
        Some(pattern(&boom, fans, grooves).ok()?.spread)
    };
    let numbers = |is: &dyn Fn(&SprayTip) -> bool| -> Vec<u32> {
        (1..).zip(boom.tips()).filter(|(_, tip)| is(tip)).map(|(number, _)| number).collect()
    };
    let mut found: Vec<Help> = Vec::new();
    let mut try_out = |what: Helps, spread: Option<Band>| {
        found.extend(spread.map(|spread| Help { what, spread }));
    };
    let plugged = numbers(&|tip| tip.flow <= 0.0);
    if !plugged.is_empty() {
        let run = |_, tip: SprayTip| if tip.flow > 0.0 { tip } else { SprayTip { flow: 1.0, ..tip } };
        try_out(Helps::Clean(plugged), changed(&run));
    }
    let off = |tip: &SprayTip| (tip.flow - 1.0).abs();
    let worst = (1..)
        .zip(boom.tips())
        .filter(|(_, tip)| tip.flow > 0.0)
        .max_by(|one, other| off(one.1).total_cmp(&off(other.1)));
    if let Some((worst, _)) = worst {
        let sound = |number: u32, tip| if number == worst { SprayTip { flow: 1.0, ..tip } } else { tip };
        try_out(Helps::Change(worst), changed(&sound));
    }
    let aimed_off =
        numbers(&|tip| tip.tilt.as_degrees().abs() >= UPRIGHT || tip.offset.si().abs() >= IN_PLACE);
    if !aimed_off.is_empty() {
        let upright = |_, tip| SprayTip { tilt: Angle::ZERO, offset: Length::ZERO, ..tip };
        try_out(Helps::Aim(aimed_off), changed(&upright));
    }
    let at_spacing = |number: u32| boom.tips()[0].place + boom.spacing() * f64::from(number - 1);
    if (1..).zip(boom.tips()).any(|(number, tip)| (tip.place - at_spacing(number)).si().abs() >= IN_PLACE) {
        try_out(Helps::Move, changed(&|number, tip| SprayTip { place: at_spacing(number), ..tip }));
    }
    if let Some(height) = nearest(middle(boom).height, suits) {
        try_out(Helps::Height(height), changed(&|_, tip| SprayTip { height, ..tip }));
    }
    found
        .into_iter()
        .filter(|help| now.spread.high - help.spread.high >= LEAST)
        .min_by(|one, other| one.spread.high.total_cmp(&other.spread.high))
}

/// The height nearest to this one that suits; in the middle of a narrow range, and within a wide one by a hand's breadth.
fn nearest(height: Length, suits: &[HeightRange]) -> Option<Length> {
    // Our own choice: 40 mm from the edge, so that a boom that dips does not leave it.
    let inside = |range: &HeightRange| {
        let edge = ((range.to - range.from) / 2.0).min(Length::metres(0.04));
        height.max(range.from + edge).min(range.to - edge)
    };
    let off = |one: &Length| (*one - height).si().abs();
    suits.iter().map(inside).min_by(|one, other| off(one).total_cmp(&off(other)))
}
