//! One large cup at a time: what is typed, what is asked about, which tip is next.

use notebook::{Draft, Entry, LineId, RowId, Told, Value};
use units::{Arg, Coded};

use crate::effect::{Effect, Sound};
use crate::hands_free::{Phase, SAME, seconds_text};
use crate::opened::{Opened, ROUNDS, Worked};
use crate::pad::{Key, Pad, Sides, sides};
use crate::plan::Step;
use crate::row_of_text::RowWrong;
use crate::state::{Screen, State, Waits};
use crate::write::{With, fact, in_place_of};

/// The cup that is being entered.
#[derive(Clone, Debug, PartialEq)]
pub struct Catching {
    /// The round it belongs to.
    pub round: RowId,
    /// The tips to catch, in the order to catch them.
    pub tips: Vec<u32>,
    /// The tip.
    pub tip: u32,
    /// What was typed.
    pub pad: Pad,
    /// What is asked about, before it is kept.
    pub ask: Option<Ask>,
    /// Whether what is typed stands beside the readings that are there, or corrects the last of them.
    pub one_more: Waits,
    /// How long these cups are held, where it is not the round's time, as written.
    pub seconds: Option<String>,
    /// The row as typed or pasted.
    pub row: String,
    /// What is wrong with it.
    pub row_wrong: Option<RowWrong>,
}

/// A reading that cannot well be.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ask {
    /// The tip.
    pub tip: u32,
    /// What was read, as written.
    pub reading: String,
    /// Why it is doubted, in words.
    pub why: String,
}

/// What a round is after, in which two tips changed places, as the visit file words it.
pub const SWAPPED: &str = "swapped";
/// The same where the pressure was changed.
pub const PRESSURE_CHANGED: &str = "pressure changed";

impl Opened {
    /// The cup's marks as written; empty where nobody said.
    #[must_use]
    pub fn cup_marks(&self) -> &str {
        self.text("catch.cup_marks")
    }

    /// What the pad offers.
    #[must_use]
    pub fn sides(&self) -> Sides {
        sides(self.cup_marks())
    }

    /// The lines of what was read off a tip's cups in a round.
    #[must_use]
    pub fn cups(&self, round: RowId, tip: u32) -> &[notebook::Held] {
        self.folded.readings.get(&round).and_then(|tips| tips.get(&tip)).map_or(&[], Vec::as_slice)
    }

    /// Whether a tip has a reading in a round.
    #[must_use]
    pub fn is_caught(&self, round: RowId, tip: u32) -> bool {
        self.cups(round, tip).iter().any(|held| held.value != Value::text("-"))
    }

    /// The last round in which a tip was caught.
    #[must_use]
    pub fn round_of(&self, tip: u32) -> Option<RowId> {
        self.rounds().iter().rev().map(|(row, _)| *row).find(|round| self.is_caught(*round, tip))
    }

    /// The round that counts for entering: the last one.
    #[must_use]
    pub fn last_round(&self) -> Option<RowId> {
        self.rounds().last().map(|(row, _)| *row)
    }
}

impl State {
    /// The cups are begun or gone on with: a round is there, and the first tip without a reading is up.
    pub fn begin_cups(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let (round, effects) = match visit.last_round() {
            Some(round) => (round, Vec::new()),
            None => self.round("as found", with),
        };
        let Some(visit) = &self.visit else { return effects };
        let tips = self.plan.tips(visit.visit.machine.as_ref());
        let tips = if tips.is_empty() { vec![1] } else { tips };
        let next = tips.iter().find(|tip| visit.cups(round, **tip).is_empty()).or(tips.first()).copied();
        let kept = self.catching.take().filter(|catching| catching.round == round);
        let pad = kept.map(|catching| catching.pad).unwrap_or_default();
        self.catching = Some(Catching {
            round,
            tip: next.unwrap_or(1),
            tips,
            pad: Pad { digits: String::new(), quarters: 0, ..pad },
            ask: None,
            one_more: Waits::No,
            seconds: self.own_seconds(),
            row: String::new(),
            row_wrong: None,
        });
        effects
    }

    /// The time of cups that were just held by voice for another time than the round's.
    fn own_seconds(&self) -> Option<String> {
        let called = self.hands_free.as_ref().filter(|called| called.phase != Phase::Choosing)?;
        let differs = self.catch_seconds().is_none_or(|known| (known - called.pace.seconds).abs() >= SAME);
        differs.then(|| seconds_text(called.pace.seconds))
    }

    fn round(&mut self, after: &str, with: &mut With<'_>) -> (RowId, Vec<Effect>) {
        let row = with.chance.row();
        let value = Value::Table(vec![("after".to_string(), Value::text(after))]);
        let entry = Entry::Row { list: ROUNDS.to_string(), row, value };
        (row, self.write(&[Told::from(entry)], with))
    }

    /// A new round, after something was done. Rounds never mix.
    pub fn new_round(&mut self, after: &str, with: &mut With<'_>) -> Vec<Effect> {
        // A round in which nothing was caught yet is still the one to fill.
        let empty = self.visit.as_ref().and_then(|visit| {
            let round = visit.last_round()?;
            visit.folded.readings.get(&round).is_none_or(|tips| tips.is_empty()).then_some(round)
        });
        let mut effects = match empty {
            Some(round) => self.say(&format!("{ROUNDS}.{round}.after"), after, with),
            None => self.round(after, with).1,
        };
        effects.extend(self.begin_cups(with));
        self.screen = Screen::Cup;
        effects
    }

    /// Something was done at some tips: they are caught again, in a round of their own.
    pub fn repaired(&mut self, after: &str, tips: Vec<u32>, with: &mut With<'_>) -> Vec<Effect> {
        let Some(first) = tips.first().copied() else { return Vec::new() };
        let mut effects = self.new_round(after, with);
        let round = self.visit.as_ref().and_then(Opened::last_round);
        if let (SWAPPED, Some(round)) = (after, round) {
            let two = tips.iter().map(u32::to_string).collect::<Vec<_>>().join(", ");
            effects.extend(self.say(&format!("{ROUNDS}.{round}.swapped"), &two, with));
        }
        if let Some(catching) = &mut self.catching {
            catching.tip = first;
            catching.tips = tips;
        }
        effects
    }

    /// A key of the pad.
    pub fn key(&mut self, key: Key, with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let sides = visit.sides();
        let Some(catching) = &mut self.catching else { return Vec::new() };
        catching.ask = None;
        if key == Key::Skip {
            return self.skip(with);
        }
        catching.pad.press(key, &sides);
        vec![Effect::Sound(Sound::Key)]
    }

    fn skip(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        let (Some(visit), Some(catching)) = (&self.visit, &self.catching) else { return Vec::new() };
        let (round, tip) = (catching.round, catching.tip);
        let mut effects = Vec::new();
        if visit.cups(round, tip).is_empty() {
            let entry = Entry::Reading { round, tip, value: Value::text("-") };
            effects = self.write(&[Told::from(entry)], with);
        }
        self.on_to_the_next();
        effects
    }

    /// The cup is right: keep it, and on to the next tip. What cannot well be is asked about first.
    pub fn next(&mut self, insisted: Waits, with: &mut With<'_>) -> Vec<Effect> {
        let (Some(visit), Some(catching)) = (&self.visit, &self.catching) else { return Vec::new() };
        let sides = visit.sides();
        let Some(reading) = catching.pad.reading(&sides) else {
            // Nothing typed: on to the next; what is there stays.
            self.on_to_the_next();
            return Vec::new();
        };
        let (round, tip) = (catching.round, catching.tip);
        let value = reading_value(&reading, catching.seconds.as_deref(), catching.pad.own_marks(&sides));
        let before = self.line_to_replace(round, tip, catching.one_more);
        let mut told = vec![in_place_of(Told::from(Entry::Reading { round, tip, value }), before)];
        if insisted.is_yes() && visit.text("catch.doubtful") != "keep" {
            let line = visit.fact("catch.doubtful").map(|held| held.line);
            told.push(fact("catch.doubtful", Value::text("keep"), line));
        }
        let about = visit.about();
        let drafts: Vec<Draft> = told.iter().map(|told| with.draft(about, told)).collect();
        // Worked out once: to be asked about, and to be shown if it is kept.
        let Some(worked) = self.trial(&drafts) else { return Vec::new() };
        if let Some(why) = self.doubted(tip, &worked).filter(|_| !insisted.is_yes()) {
            if let Some(catching) = &mut self.catching {
                catching.ask = Some(Ask { tip, reading, why });
            }
            return vec![Effect::Focus("ask".to_string())];
        }
        let effects = self.keep_as(drafts, worked);
        self.on_to_the_next();
        effects
    }

    /// The line that a reading corrects: the last of the tip's, unless one more cup is meant.
    fn line_to_replace(&self, round: RowId, tip: u32, one_more: Waits) -> Option<LineId> {
        let cups = self.visit.as_ref()?.cups(round, tip);
        let last = cups.last()?;
        (!one_more.is_yes() || last.value == Value::text("-")).then_some(last.line)
    }

    /// Why a reading is doubted, in words, by what the visit would come to with it; none where it is not.
    fn doubted(&self, tip: u32, worked: &Worked) -> Option<String> {
        let visit = self.visit.as_ref()?;
        let (outcome, stuck) = (&worked.outcome, &worked.stuck);
        let of_tip = |coded: &dyn Coded| coded.args().get("tip") == Some(&Arg::Count(tip));
        if let Some(error) = stuck.iter().find(|error| error.code() == "catch_absurd" && of_tip(*error)) {
            return Some(self.words.error(error));
        }
        let kept_before = |finding: &units::Finding| {
            visit
                .outcome
                .all()
                .any(|(_, known)| known.code() == finding.code() && known.args() == finding.args())
        };
        outcome
            .all()
            .find(|(_, finding)| {
                finding.code() == "catch_doubtful_kept" && of_tip(*finding) && !kept_before(finding)
            })
            .map(|(_, finding)| self.words.finding(finding))
    }

    /// To the next tip that has no reading; behind the last one the sheet says what was found.
    pub(crate) fn on_to_the_next(&mut self) {
        let (Some(visit), Some(catching)) = (&mut self.visit, &mut self.catching) else { return };
        let round = catching.round;
        let place = catching.tips.iter().position(|tip| *tip == catching.tip);
        let behind = place.map_or(0, |place| place + 1);
        let asked = catching.one_more.is_yes();
        let open = |tip: &u32| asked || visit.cups(round, *tip).is_empty();
        // Those behind this one first, then those that were left out before.
        let next = match asked {
            true => catching.tips.get(behind).copied(),
            false => {
                catching.tips[behind..].iter().chain(&catching.tips[..behind]).copied().find(|tip| open(tip))
            }
        };
        catching.pad = Pad { digits: String::new(), quarters: 0, ..catching.pad.clone() };
        catching.ask = None;
        match next {
            Some(tip) => catching.tip = tip,
            None => {
                visit.unfolded = Some(Step::Catch);
                self.screen = Screen::Visit;
            }
        }
    }

    /// To a tip: what is typed there corrects what stands there.
    pub fn to_tip(&mut self, tip: u32) {
        let Some(catching) = &mut self.catching else { return };
        let (digits, quarters) = (String::new(), 0);
        catching.pad = Pad { digits, quarters, ..catching.pad.clone() };
        catching.tip = tip;
        catching.ask = None;
    }

    /// Back to the tip before in the order of catching.
    pub fn back_a_tip(&mut self) {
        let Some(catching) = &self.catching else { return };
        let place = catching.tips.iter().position(|tip| *tip == catching.tip).unwrap_or(0);
        if let Some(before) = place.checked_sub(1).and_then(|place| catching.tips.get(place)) {
            let before = *before;
            self.to_tip(before);
        }
    }

    /// Some tips once more, each beside what it gave before.
    pub fn catch_again(&mut self, tips: Vec<u32>, seconds: &str, with: &mut With<'_>) -> Vec<Effect> {
        if tips.is_empty() {
            return Vec::new();
        }
        let effects = self.begin_cups(with);
        let round = self.visit.as_ref().and_then(|visit| visit.round_of(tips[0]));
        if let Some(catching) = &mut self.catching {
            // Nothing was done at these tips since, so their cups belong beside those that are there.
            catching.round = round.unwrap_or(catching.round);
            catching.tip = tips[0];
            catching.tips = tips;
            catching.one_more = Waits::Yes;
            catching.seconds = (!seconds.trim().is_empty()).then(|| seconds.trim().to_string());
        }
        self.screen = Screen::Cup;
        effects
    }
}

/// A reading as a line has it: the letters, or with its own time and marks.
#[must_use]
pub fn reading_value(reading: &str, time: Option<&str>, marks: Option<&str>) -> Value {
    if time.is_none() && marks.is_none() {
        return Value::text(reading);
    }
    let mut fields = vec![("reading".to_string(), Value::text(reading))];
    fields.extend(time.map(|time| ("time".to_string(), Value::text(time))));
    fields.extend(marks.map(|marks| ("marks".to_string(), Value::text(marks))));
    Value::Table(fields)
}

/// The letters of a reading in a line. A visit file may hold a bare whole number, which is one too.
#[must_use]
pub fn reading_text(value: &Value) -> String {
    match value {
        Value::Text(_) | Value::Count(_) => crate::facts::typed_text(value),
        Value::Table(fields) => {
            let reading = fields.iter().find(|(name, _)| name == "reading");
            reading.map(|(_, value)| crate::facts::typed_text(value)).unwrap_or_default()
        }
        Value::List(_) => String::new(),
    }
}
