//! Catching without touching: "tip 4 … ready … catch … stop", on to the next by itself. It reads the clock and does not
//! count ticks, so a busy or sleeping device is never late unnoticed.

use words::Language;

use crate::effect::{Effect, Sound};
use crate::moment::Moment;
use crate::state::{Screen, State, Waits};
use crate::write::With;

/// How it goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pace {
    /// Seconds that each cup is held.
    pub seconds: f64,
    /// Cups held at once, each by its own hands or under its own tip.
    pub at_once: u32,
    /// Seconds between "stop" and the next tip's call: time to read, empty and step on.
    pub pause: f64,
    /// Whether each reading is entered before the next tip is called.
    pub enter: Waits,
}

impl Default for Pace {
    /// Thirty seconds a cup, one at a time, fifteen between. Common practice; each can be changed.
    fn default() -> Self {
        Self { seconds: 30.0, at_once: 1, pause: 15.0, enter: Waits::No }
    }
}

/// Seconds from a tip's call to "catch". Our own choice: time to hear it and hold the cup ready.
pub const READY: f64 = 5.0;
/// Seconds before "catch" and before "stop" that are counted by a tone each. Our own choice.
const COUNTED: f64 = 3.0;
/// Seconds that a change may be late before it is told. Our own choice: more than a busy page, less than a cup would bear.
const LATE: f64 = 1.5;

/// Catching by voice and flash.
#[derive(Clone, Debug, PartialEq)]
pub struct HandsFree {
    /// How it goes.
    pub pace: Pace,
    /// The tips to call, in order.
    pub tips: Vec<u32>,
    /// The place of the first tip that is held now.
    pub place: usize,
    /// What goes on.
    pub phase: Phase,
    /// Since when.
    pub since: Moment,
    /// Seconds into it, as the screen shows it.
    pub shown: f64,
    /// Tones given in this phase so far.
    counted: u32,
}

/// What goes on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Phase {
    /// Nothing yet: how it goes is chosen.
    Choosing,
    /// A tip was called.
    Ready,
    /// The cup is held under.
    Catching,
    /// It was taken away: read, empty, step on.
    Between,
    /// It ended while the device slept or was elsewhere: this cup was held too long by about so many seconds.
    EndedAway {
        /// Seconds too long.
        over: f64,
    },
    /// All were called.
    Done,
}

impl HandsFree {
    /// Ready to choose how it goes.
    #[must_use]
    pub const fn new(tips: Vec<u32>, pace: Pace, at: Moment) -> Self {
        Self { pace, tips, place: 0, phase: Phase::Choosing, since: at, shown: 0.0, counted: 0 }
    }

    /// The tips that are held now.
    #[must_use]
    pub fn now(&self) -> &[u32] {
        let end = (self.place + self.at_once()).min(self.tips.len());
        self.tips.get(self.place..end).unwrap_or_default()
    }

    fn at_once(&self) -> usize {
        usize::try_from(self.pace.at_once).unwrap_or(1).max(1)
    }

    /// How long the phase lasts, in seconds; none where it waits for a person.
    #[must_use]
    pub const fn lasts(&self) -> Option<f64> {
        match self.phase {
            Phase::Ready => Some(READY),
            Phase::Catching => Some(self.pace.seconds),
            Phase::Between => match self.pace.enter {
                Waits::Yes => None,
                Waits::No => Some(self.pace.pause),
            },
            Phase::Choosing | Phase::EndedAway { .. } | Phase::Done => None,
        }
    }

    /// Seconds left of the phase.
    #[must_use]
    pub fn left(&self) -> Option<f64> {
        self.lasts().map(|lasts| (lasts - self.shown).max(0.0))
    }

    /// Whether the clock must be watched.
    #[must_use]
    pub const fn runs(&self) -> bool {
        self.lasts().is_some()
    }

    const fn go(&mut self, phase: Phase, since: Moment) {
        self.phase = phase;
        self.since = since;
        self.shown = 0.0;
        self.counted = 0;
    }
}

/// Times nearer than this many seconds are the same: less than any hand holds a cup to. Our own choice.
pub const SAME: f64 = 0.1;

/// A time to a tenth of a second as it is written down, without a nought behind the point.
pub fn seconds_text(seconds: f64) -> String {
    let text = format!("{seconds:.1}");
    format!("{} s", text.strip_suffix(".0").unwrap_or(&text))
}

/// A moment some seconds later.
fn later(moment: &Moment, seconds: f64) -> Moment {
    #[allow(
        clippy::cast_possible_truncation,
        reason = "seconds of a catch are far from the ends of the numbers"
    )]
    let milliseconds = (seconds * 1000.0) as i64;
    Moment { wall: moment.wall + milliseconds, steady: moment.steady + seconds * 1000.0, ..*moment }
}

impl State {
    /// The screen is opened: how it goes is chosen.
    pub fn open_hands_free(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        let effects = self.begin_cups(with);
        let (Some(catching), Some(visit)) = (&self.catching, &self.visit) else { return effects };
        let open: Vec<u32> =
            catching.tips.iter().copied().filter(|tip| visit.cups(catching.round, *tip).is_empty()).collect();
        let tips = if open.is_empty() { catching.tips.clone() } else { open };
        let mut pace = self.hands_free.take().map_or_else(Pace::default, |before| before.pace);
        if let Some(seconds) = self.catch_seconds() {
            pace.seconds = seconds;
        }
        self.hands_free = Some(HandsFree::new(tips, pace, *with.at));
        effects
    }

    /// How long a cup is held, in seconds, as the visit says.
    #[must_use]
    pub fn catch_seconds(&self) -> Option<f64> {
        let visit = self.visit.as_ref()?;
        let text = visit.text("catch.time");
        if text == "as driven" {
            return visit.outcome.speed.as_ref().map(|speed| units::Quantity::si(speed.mean_time));
        }
        units::quantity(text, units::Dimension::Time).ok().map(|written| written.si())
    }

    /// How it goes is changed.
    pub fn set_pace(&mut self, pace: Pace) {
        let whole = |value: f64, least: f64, most: f64| {
            if value.is_finite() { value.clamp(least, most) } else { least }
        };
        if let Some(hands_free) = &mut self.hands_free {
            hands_free.pace = Pace {
                seconds: whole(pace.seconds, 5.0, 600.0),
                at_once: pace.at_once.clamp(1, 20),
                pause: whole(pace.pause, 2.0, 120.0),
                enter: pace.enter,
            };
        }
    }

    /// The first tip is called, or the one that was running once more.
    pub fn hands_free_start(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        let mut effects = self.agree_on_the_time(with);
        let (words, at) = (self.words.clone(), with.at);
        let Some(hands_free) = &mut self.hands_free else { return effects };
        if hands_free.phase == Phase::Done {
            hands_free.place = 0;
        }
        hands_free.go(Phase::Ready, *at);
        let call = called(&words, hands_free);
        effects.extend([Effect::KeepAwake(Waits::Yes), Effect::Ticks(Waits::Yes), call]);
        effects
    }

    /// The cups are held for the time that is called, so that is the time their readings have: of a round that is still empty
    /// the time of the catch, of one that was begun otherwise each new cup's own.
    fn agree_on_the_time(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        let Some(seconds) = self.hands_free.as_ref().map(|hands_free| hands_free.pace.seconds) else {
            return Vec::new();
        };
        if self.catch_seconds().is_some_and(|known| (known - seconds).abs() < SAME) {
            if let Some(catching) = &mut self.catching {
                catching.seconds = None;
            }
            return Vec::new();
        }
        let text = seconds_text(seconds);
        let (Some(visit), Some(catching)) = (&self.visit, &mut self.catching) else { return Vec::new() };
        let any = visit.folded.readings.values().any(|tips| !tips.is_empty());
        if any {
            catching.seconds = Some(text);
            return Vec::new();
        }
        self.say("catch.time", &text, with)
    }

    /// Everything stops.
    pub fn hands_free_stop(&mut self, at: &Moment) -> Vec<Effect> {
        let Some(hands_free) = &mut self.hands_free else { return Vec::new() };
        let ended = hands_free.phase == Phase::Done;
        hands_free.go(Phase::Choosing, *at);
        if ended {
            hands_free.place = 0;
        }
        vec![Effect::Ticks(Waits::No), Effect::KeepAwake(Waits::No)]
    }

    /// The clock is read.
    pub fn hands_free_tick(&mut self, at: &Moment) -> Vec<Effect> {
        let words = self.words.clone();
        let mut effects = Vec::new();
        let Some(hands_free) = &mut self.hands_free else { return effects };
        while let Some(lasts) = hands_free.lasts() {
            let elapsed = at.since(&hands_free.since) / 1000.0;
            hands_free.shown = elapsed.min(lasts);
            if elapsed < lasts {
                effects.extend(counted(hands_free, elapsed, lasts));
                return effects;
            }
            let over = elapsed - lasts;
            // The next phase begins where this one ended, not where it was noticed: no lateness adds up.
            let began = later(&hands_free.since, lasts);
            match hands_free.phase {
                Phase::Ready if over > LATE => {
                    // Nobody heard the call: it is called again.
                    hands_free.go(Phase::Ready, *at);
                    effects.push(called(&words, hands_free));
                }
                Phase::Ready => {
                    hands_free.go(Phase::Catching, began);
                    effects.extend([
                        Effect::Sound(Sound::Go),
                        Effect::Flash,
                        spoken(&words, "yard-say_catch"),
                    ]);
                }
                Phase::Catching if over > LATE => {
                    hands_free.go(Phase::EndedAway { over }, *at);
                    effects.extend([
                        Effect::Sound(Sound::Stop),
                        Effect::Flash,
                        Effect::Ticks(Waits::No),
                        spoken(&words, "yard-say_ended_away"),
                    ]);
                }
                Phase::Catching => {
                    effects.extend([
                        Effect::Sound(Sound::Stop),
                        Effect::Flash,
                        spoken(&words, "yard-say_stop"),
                    ]);
                    let last = hands_free.place + hands_free.at_once() >= hands_free.tips.len();
                    if last && !hands_free.pace.enter.is_yes() {
                        hands_free.go(Phase::Done, *at);
                        effects.extend([Effect::Ticks(Waits::No), Effect::KeepAwake(Waits::No)]);
                    } else {
                        hands_free.go(Phase::Between, began);
                    }
                }
                Phase::Between => {
                    hands_free.place += hands_free.at_once();
                    hands_free.go(Phase::Ready, if over > LATE { *at } else { began });
                    effects.push(called(&words, hands_free));
                }
                Phase::Choosing | Phase::EndedAway { .. } | Phase::Done => {}
            }
        }
        if let (Some(hands_free), true) = (&self.hands_free, self.hands_free_waits()) {
            // Each reading is entered before the next tip is called.
            let tip = hands_free.now().first().copied();
            if let Some(tip) = tip {
                self.to_tip(tip);
            }
            self.screen = Screen::Cup;
            effects.push(Effect::Ticks(Waits::No));
        }
        effects
    }

    fn hands_free_waits(&self) -> bool {
        let waits =
            |hands_free: &HandsFree| hands_free.phase == Phase::Between && hands_free.pace.enter.is_yes();
        self.screen == Screen::HandsFree && self.hands_free.as_ref().is_some_and(waits)
    }

    /// A cup was entered while the next tip waited to be called: it is called now.
    pub fn hands_free_go_on(&mut self, entered: u32, at: &Moment) -> Vec<Effect> {
        let words = self.words.clone();
        let Some(hands_free) = &mut self.hands_free else { return Vec::new() };
        if hands_free.phase != Phase::Between || !hands_free.pace.enter.is_yes() {
            return Vec::new();
        }
        // Of several cups held at once the others are entered first.
        if hands_free.now().last() != Some(&entered) {
            return Vec::new();
        }
        hands_free.place += hands_free.at_once();
        if hands_free.now().is_empty() {
            hands_free.go(Phase::Done, *at);
            return vec![Effect::Ticks(Waits::No), Effect::KeepAwake(Waits::No)];
        }
        hands_free.go(Phase::Ready, *at);
        let call = called(&words, hands_free);
        self.screen = Screen::HandsFree;
        vec![Effect::Ticks(Waits::Yes), call]
    }
}

/// A tone for each of the last seconds, once each, however late the clock is read.
fn counted(hands_free: &mut HandsFree, elapsed: f64, lasts: f64) -> Option<Effect> {
    if !matches!(hands_free.phase, Phase::Ready | Phase::Catching) {
        return None;
    }
    let into = elapsed - (lasts - COUNTED);
    if into < 0.0 {
        return None;
    }
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between 0 and 3")]
    let due = into as u32 + 1;
    if due <= hands_free.counted {
        return None;
    }
    hands_free.counted = due;
    Some(Effect::Sound(Sound::Count))
}

fn spoken(words: &words::Words, key: &str) -> Effect {
    Effect::Speak { text: words.label(key), language: words.reader().language }
}

/// The call of the tips that are next: "tip 4, ready".
fn called(words: &words::Words, hands_free: &HandsFree) -> Effect {
    let language: Language = words.reader().language;
    let tips = hands_free.now();
    let text = words.say(
        "yard-say_tip",
        &[("tips", words.tips(tips).into()), ("count", i64::try_from(tips.len()).unwrap_or(1).into())],
    );
    Effect::Speak { text, language }
}
