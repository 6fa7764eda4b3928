//! The watch of the timed drive. The helper at the flags holds it; a tap anywhere starts and stops it.

use crate::effect::{Effect, Sound};
use crate::moment::Moment;
use crate::opened::RUNS;
use crate::state::{State, Waits};
use crate::write::{With, nothing};

/// The watch.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DriveWatch {
    /// What it does.
    pub is: Watch,
    /// The speed by the position sensor: metres a second, and how far that may be off.
    pub sensed: Option<(f64, Option<f64>)>,
    /// Whether the sensor is asked.
    pub sensing: Waits,
}

/// What the watch does.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum Watch {
    /// It stands at nothing.
    #[default]
    Idle,
    /// It runs.
    Running {
        /// Since when.
        since: Moment,
        /// How long it has run, in seconds, as the screen shows it.
        shown: f64,
    },
    /// It stands.
    Stopped {
        /// At so many seconds.
        seconds: f64,
    },
}

/// A run shorter than this is a slip of the finger and is not kept. Our own choice: no course is driven in a second.
const LEAST: f64 = 1.0;

impl State {
    /// The watch starts, or stops and the run is kept.
    pub fn drive_tap(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        match self.drive.is {
            Watch::Idle | Watch::Stopped { .. } => {
                self.drive.is = Watch::Running { since: *with.at, shown: 0.0 };
                vec![
                    Effect::KeepAwake(Waits::Yes),
                    Effect::Ticks(Waits::Yes),
                    Effect::Sound(Sound::Go),
                    Effect::Flash,
                ]
            }
            Watch::Running { since, .. } => {
                let seconds = with.at.since(&since) / 1000.0;
                let mut effects = vec![
                    Effect::Ticks(Waits::No),
                    Effect::KeepAwake(Waits::No),
                    Effect::Sound(Sound::Stop),
                    Effect::Flash,
                ];
                if seconds < LEAST {
                    self.drive.is = Watch::Idle;
                    return effects;
                }
                self.drive.is = Watch::Stopped { seconds };
                effects.extend(self.run(&format!("{seconds:.1} s"), with));
                effects
            }
        }
    }

    /// The run just kept was no good: it is struck, or the running watch stands at nothing again.
    pub fn drive_again(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        let was = core::mem::take(&mut self.drive.is);
        match was {
            Watch::Idle => Vec::new(),
            Watch::Running { .. } => vec![Effect::Ticks(Waits::No), Effect::KeepAwake(Waits::No)],
            Watch::Stopped { .. } => {
                let last = self.visit.as_ref().and_then(|visit| visit.folded.rows.get(RUNS)?.last());
                match last.map(|(_, held)| held.line) {
                    Some(line) => self.write(&[nothing(line)], with),
                    None => Vec::new(),
                }
            }
        }
    }

    /// The watch's face.
    pub fn drive_tick(&mut self, at: &Moment) {
        if let Watch::Running { since, shown } = &mut self.drive.is {
            *shown = at.since(since) / 1000.0;
        }
    }
}
