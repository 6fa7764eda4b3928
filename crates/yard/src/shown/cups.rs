//! The screen of the large cup, and the small row above it as the map.

use figures::{CupMark, CupShown, Density, Drawing, LimitBand, RowOfCups, Seen};
use notebook::Value;
use sprayer::Mounting;
use units::{Amount, Arg, Caught, Kind, Verdict};

use crate::catching::{Catching, reading_text};
use crate::opened::Opened;
use crate::pad::{Sides, step_si};
use crate::state::State;

/// The screen of one large cup.
#[derive(Clone, Debug, PartialEq)]
pub struct CupScreen {
    /// "Catch · as found".
    pub title: String,
    /// "7 of 12".
    pub place: String,
    /// The tip.
    pub tip: u32,
    /// What is typed, as the reader writes it; empty where nothing is.
    pub number: String,
    /// Its unit.
    pub unit: String,
    /// "28 s · half-ounce marks".
    pub how: String,
    /// How full the large cup is drawn, 0 to 1; none where nothing is typed.
    pub level: Option<f64>,
    /// Marks of the large cup, from the bottom: how high, 0 to 1, and the number at the long ones.
    pub marks: Vec<(f64, Option<String>)>,
    /// The band of the limit about the others' mean, as two heights 0 to 1.
    pub band: Option<(f64, f64)>,
    /// How it stands to the others so far: a word and a sentence.
    pub so_far: Option<SoFar>,
    /// What this cup gave before, as written.
    pub before: Vec<String>,
    /// Whether what is typed stands beside these or corrects the last of them.
    pub one_more: bool,
    /// Whether the side has quarters; else a point.
    pub quarters: bool,
    /// The unit of the other side, where the cup has one.
    pub other_side: Option<&'static str>,
    /// The marks of the side that is read, where they can be changed.
    pub other_marks: Option<&'static str>,
    /// The tip before, where there is one.
    pub back: Option<u32>,
    /// The tip behind; none at the end.
    pub next: Option<u32>,
}

/// How a cup stands to the others so far.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SoFar {
    /// High, low, or like the others.
    pub side: SideOfMean,
    /// In words.
    pub says: String,
}

/// High, low, or like the others.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SideOfMean {
    /// More than the limit over the others' mean.
    High,
    /// More than the limit under it.
    Low,
    /// Neither.
    Alike,
}

/// The limit that "high, so far" goes by while cups come in; the verdict goes by the visit's own. Source: common practice,
/// 10 % of the mean.
const SO_FAR: f64 = 0.10;

/// Cups fill the drawing up to three quarters at the mean, so that a high one still has room. Our own choice.
const AT_THE_MEAN: f64 = 0.75;

/// The screen of the cup that is being entered.
#[must_use]
pub fn cup_screen(state: &State) -> Option<CupScreen> {
    let (visit, catching) = (state.visit.as_ref()?, state.catching.as_ref()?);
    let words = &state.words;
    let sides = visit.sides();
    let place = catching.tips.iter().position(|tip| *tip == catching.tip).unwrap_or(0);
    let number = catching.pad.number();
    let before: Vec<String> = visit
        .cups(catching.round, catching.tip)
        .iter()
        .filter(|held| held.value != Value::text("-"))
        .map(|held| pretty(&super::value_said(words, &reading_text(&held.value))))
        .collect();
    let typed = catching.pad.si(&sides);
    let mean = mean_of_others(visit, catching);
    let full = full_si(visit, mean.or(typed));
    let shown = typed.or_else(|| before_si(visit, catching));
    Some(CupScreen {
        title: title(state, visit, catching),
        place: words.say(
            "yard-place",
            &[("place", count(place + 1).into()), ("all", count(catching.tips.len()).into())],
        ),
        tip: catching.tip,
        number: pretty(&words.digits(&number)),
        unit: unit_name(state, catching.pad.unit(&sides)),
        how: how(state, visit, catching, &sides),
        level: shown.map(|si| (si / full).clamp(0.0, 1.0)),
        marks: marks(state, visit, full, &sides),
        band: mean.map(|mean| {
            ((mean * (1.0 - SO_FAR) / full).clamp(0.0, 1.0), (mean * (1.0 + SO_FAR) / full).clamp(0.0, 1.0))
        }),
        so_far: typed.zip(mean).map(|(typed, mean)| so_far(state, typed, mean)),
        one_more: catching.one_more.is_yes(),
        before,
        quarters: catching.pad.has_quarters(&sides),
        other_side: sides
            .other
            .map(|other| if catching.pad.side == crate::pad::Side::Given { other } else { sides.given }),
        other_marks: catching.pad.own_marks(&sides),
        back: place.checked_sub(1).and_then(|place| catching.tips.get(place)).copied(),
        next: catching.tips.get(place + 1).copied(),
    })
}

fn count(of: usize) -> i64 {
    i64::try_from(of).unwrap_or(i64::MAX)
}

fn title(state: &State, visit: &Opened, catching: &Catching) -> String {
    let words = &state.words;
    let after = match visit.row(crate::opened::ROUNDS, catching.round).map(|held| &held.value) {
        Some(Value::Table(fields)) => {
            fields.iter().find(|(name, _)| name == "after").map(|(_, value)| crate::facts::typed_text(value))
        }
        _ => None,
    };
    let kind = calibration::catch::RoundKind::from_words(after.as_deref().unwrap_or("as found"));
    words.say("yard-catch_title", &[("round", words.arg(&visit::record::round_said(&kind)).into())])
}

/// The unit as people read it.
fn unit_name(state: &State, unit: &str) -> String {
    units::Unit::named(unit).map_or_else(|| unit.to_string(), |unit| state.words.unit(&unit))
}

fn how(state: &State, visit: &Opened, catching: &Catching, sides: &Sides) -> String {
    let words = &state.words;
    let time = match (&catching.seconds, state.catch_seconds()) {
        (Some(seconds), _) => super::value_said(words, seconds),
        (None, Some(seconds)) => words.amount(&Amount::new(units::Time::seconds(seconds), Kind::Time)),
        (None, None) => String::new(),
    };
    let marks = catching.pad.own_marks(sides).unwrap_or_else(|| visit.cup_marks());
    let marks = words.say("yard-marks", &[("step", super::value_said(words, marks).into())]);
    [time, marks].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" · ")
}

/// What each other tip of the round gave, as what would have been caught in the round's time is taken by its last cup.
fn mean_of_others(visit: &Opened, catching: &Catching) -> Option<f64> {
    let tips = visit.folded.readings.get(&catching.round)?;
    let others: Vec<f64> = tips
        .iter()
        .filter(|(tip, _)| **tip != catching.tip)
        .filter_map(|(_, cups)| cups.last().and_then(|held| si_of(visit, &held.value)))
        .filter(|si| *si > 0.0)
        .collect();
    #[allow(clippy::cast_precision_loss, reason = "a boom has at most a thousand tips")]
    let count = others.len() as f64;
    (!others.is_empty()).then(|| others.iter().sum::<f64>() / count)
}

fn before_si(visit: &Opened, catching: &Catching) -> Option<f64> {
    visit.cups(catching.round, catching.tip).last().and_then(|held| si_of(visit, &held.value))
}

fn si_of(visit: &Opened, value: &Value) -> Option<f64> {
    // A cup that was held for a time of its own is not to be drawn beside the others.
    if matches!(value, Value::Table(fields) if fields.iter().any(|(name, _)| name == "time")) {
        return None;
    }
    let caught = Caught::parse(&reading_text(value), visit.cup_unit().as_ref()).ok()?;
    Some(caught.written().si())
}

/// What a full drawing of the cup stands for, in SI: a third more than the mean, and never less than four marks.
fn full_si(visit: &Opened, about: Option<f64>) -> f64 {
    let step = step_si(visit.cup_marks()).unwrap_or(30e-6);
    (about.unwrap_or(0.0) / AT_THE_MEAN).max(4.0 * step)
}

/// The marks of the large cup: every step where there is room, a number at each fifth or so.
fn marks(state: &State, visit: &Opened, full: f64, sides: &Sides) -> Vec<(f64, Option<String>)> {
    let Some(step) = step_si(visit.cup_marks()) else { return Vec::new() };
    let unit = units::Unit::named(sides.given).map_or(1.0, |unit| unit.si_factor());
    // No more marks than can be told apart, and about five with a number. Our own choice.
    let every = [1.0, 2.0, 4.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0];
    let fine = every.iter().copied().find(|times| full / (step * times) <= 40.0).unwrap_or(500.0) * step;
    let numbered = [1.0, 2.0, 5.0, 10.0, 20.0, 25.0, 50.0, 100.0, 200.0, 500.0, 1000.0]
        .iter()
        .copied()
        .find(|whole| full / (whole * unit) <= 6.0)
        .unwrap_or(1000.0)
        * unit;
    let mut marks = Vec::new();
    let mut at = fine;
    while at < full * 0.98 && marks.len() < 60 {
        let whole = (at / numbered).round();
        let is_numbered = (at - whole * numbered).abs() < fine * 0.01 && whole > 0.0;
        let number = is_numbered.then(|| state.words.number(whole * numbered / unit));
        marks.push((at / full, number));
        at += fine;
    }
    marks
}

fn so_far(state: &State, typed: f64, mean: f64) -> SoFar {
    let words = &state.words;
    let off = typed / mean - 1.0;
    let side = if off > SO_FAR {
        SideOfMean::High
    } else if off < -SO_FAR {
        SideOfMean::Low
    } else {
        SideOfMean::Alike
    };
    let off = words.arg(&Arg::Off { percent: 100.0 * off.abs(), limit: Some(100.0 * SO_FAR) });
    let off = off.trim_start_matches('+').to_string();
    let key = match side {
        SideOfMean::High => "yard-so_far_high",
        SideOfMean::Low => "yard-so_far_low",
        SideOfMean::Alike => "yard-so_far_alike",
    };
    SoFar { side, says: words.say(key, &[("off", off.into())]) }
}

/// `14 1/2` as people print it: 14½.
fn pretty(number: &str) -> String {
    [(" 1/4", "¼"), (" 1/2", "½"), (" 3/4", "¾"), ("1/4", "¼"), ("1/2", "½"), ("3/4", "¾")]
        .iter()
        .fold(number.to_string(), |text, (from, to)| text.replace(from, to))
}

/// More tips than these, and the row shows the section of the tip alone. Our own choice: a phone is 320 units wide, and a cup
/// must be told from the next.
const IN_THE_ROW: usize = 16;

/// The row above the large cup: every tip of the boom, or of a long one those about the tip, with what was caught so far.
#[must_use]
pub fn small_row(state: &State) -> Option<Drawing> {
    let (visit, catching) = (state.visit.as_ref()?, state.catching.as_ref()?);
    let words = &state.words;
    let all = visit
        .visit
        .machine
        .as_ref()
        .map_or_else(|| catching.tips.clone(), |machine| (1..=machine.tips()).collect());
    let shown = about(&all, catching.tip, visit);
    let mean = {
        let values: Vec<f64> = all
            .iter()
            .filter_map(|tip| {
                visit.cups(catching.round, *tip).last().and_then(|held| si_of(visit, &held.value))
            })
            .filter(|si| *si > 0.0)
            .collect();
        #[allow(clippy::cast_precision_loss, reason = "a boom has at most a thousand tips")]
        let count = values.len().max(1) as f64;
        values.iter().sum::<f64>() / count
    };
    let verdicts = visit.outcome.catch.as_ref().map(|catch| catch.now());
    let cups = shown.iter().map(|tip| {
        let last = visit.cups(catching.round, *tip).last();
        let si = last.and_then(|held| si_of(visit, &held.value));
        let judged =
            verdicts.and_then(|now| now.verdicts.summary.tips.iter().find(|known| known.number == *tip));
        let mark = match (si, judged.and_then(|tip| tip.verdict)) {
            _ if *tip == catching.tip => CupMark::Quiet,
            (None, _) => CupMark::NotCaught,
            (Some(_), Some(Verdict::CannotTell)) => CupMark::CannotTell,
            (Some(si), Some(Verdict::Outside)) if si > mean => CupMark::High,
            (Some(_), Some(Verdict::Outside)) => CupMark::Low,
            _ => CupMark::Quiet,
        };
        CupShown {
            number: *tip,
            id: format!("map-{tip}"),
            place: None,
            level: si.filter(|_| mean > 0.0).map(|si| si / mean),
            low: None,
            high: None,
            reading: String::new(),
            mark,
            word: String::new(),
            group: None,
            likely: None,
        }
    });
    let cups: Vec<CupShown> = cups.collect();
    let front = visit.visit.machine.as_ref().and_then(|machine| machine.boom());
    let front = front.is_some_and(|boom| boom.mounting() == Mounting::Front);
    let density = Density::for_tips(cups.len(), 1);
    Some(
        RowOfCups {
            id: "map".to_string(),
            language: words.reader().language.tag().to_string(),
            title: title(state, visit, catching),
            description: words.say("yard-map", &[("tip", i64::from(catching.tip).into())]),
            sections: Vec::new(),
            over_sections: Vec::new(),
            groups: Vec::new(),
            limit: None::<LimitBand>,
            density,
            per_row: None,
            seen: if front { Seen::FromTheFront } else { Seen::AsTheDriverSits },
            left_end: String::new(),
            right_end: String::new(),
            cups,
        }
        .draw(),
    )
}

/// The tips about one: its section, or where that is long, a piece of it with the tip inside.
fn about(all: &[u32], tip: u32, visit: &Opened) -> Vec<u32> {
    if all.len() <= IN_THE_ROW {
        return all.to_vec();
    }
    let boom = visit.visit.machine.as_ref().and_then(|machine| machine.boom());
    let section_of = |tip: u32| {
        let place = usize::try_from(tip).ok()?.checked_sub(1)?;
        Some(boom?.positions().get(place)?.section)
    };
    let own = section_of(tip);
    let section: Vec<u32> = all.iter().copied().filter(|other| section_of(*other) == own).collect();
    if section.len() <= IN_THE_ROW {
        return section;
    }
    let place = section.iter().position(|other| *other == tip).unwrap_or(0);
    let from = place.saturating_sub(IN_THE_ROW / 2).min(section.len() - IN_THE_ROW);
    section[from..from + IN_THE_ROW].to_vec()
}
