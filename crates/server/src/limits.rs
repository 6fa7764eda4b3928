//! How much, how often and how long. All of them our own choice, each with what it was weighed against.

use std::sync::Arc;
use std::time::{Duration, Instant};

/// The limits of a server.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Limits {
    /// The most bytes of a body with lines.
    pub body_bytes: usize,
    /// The most bytes of a body that asks for lines.
    pub asking_bytes: usize,
    /// The most lines taken in one request.
    pub lines_taken: usize,
    /// The most lines given in one answer.
    pub lines_given: usize,
    /// An answer ends with the line that takes it over so many bytes.
    pub answer_bytes: usize,
    /// The most ranges that an asker may say it holds.
    pub ranges: usize,
    /// How long a body may take to come.
    pub body_time: Duration,
    /// How long the head of a request may take to come, and a connection stay idle.
    pub head_time: Duration,
    /// How long a connection may live.
    pub connection_time: Duration,
    /// How long open requests have when the server stops.
    pub stop_time: Duration,
    /// The most connections, and the most from one place on the network.
    pub connections: (usize, usize),
    /// The most bodies read at once.
    pub bodies_at_once: usize,
    /// How often this machine may ask.
    pub here: Pace,
    /// How often each place on the network may ask.
    pub network: Pace,
    /// A wrong secret counts as so many requests.
    pub wrong_secret_costs: u32,
}

/// How often one place may ask: so many at once, and then so many a second.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pace {
    /// At once.
    pub at_once: u32,
    /// A second.
    pub each_second: u32,
}

impl Limits {
    /// The usual ones.
    pub const USUAL: Self = Self {
        // Our own choice: some ten thousand readings, and little enough for a small machine to hold a few of them.
        body_bytes: 8 * 1024 * 1024,
        // Our own choice: ten thousand ranges fit in.
        asking_bytes: 1024 * 1024,
        // Our own choice: a day of ten sprayers with room.
        lines_taken: 10_000,
        // Our own choice: as many as are taken.
        lines_given: 10_000,
        // Our own choice: what another server of ours takes back, less the one line that may go over.
        answer_bytes: 7 * 1024 * 1024,
        // Our own choice: a notebook without loss has one range a device.
        ranges: 10_000,
        // Our own choice: the largest body over a weak radio link of 1 Mbit/s.
        body_time: Duration::from_secs(70),
        // Our own choice: a phone at the end of the yard.
        head_time: Duration::from_secs(10),
        // Our own choice: a sync is done in less, and who reads slowly on purpose is let go.
        connection_time: Duration::from_secs(300),
        // Our own choice: longer than a person waits for a window to close, nobody's work is lost by it.
        stop_time: Duration::from_secs(10),
        // Our own choice: a crew's phones with several connections each; system limits begin at 1,024 files.
        connections: (256, 32),
        // Our own choice: with their lines read they stay below 200 MB.
        bodies_at_once: 4,
        // Our own choice: several windows, and a proxy's guests.
        here: Pace { at_once: 1_000, each_second: 200 },
        // Our own choice: opening the app takes some ten requests, a reading one.
        network: Pace { at_once: 200, each_second: 20 },
        // Our own choice: ten tries at once, then one a second; a secret has more than 10^24 others.
        wrong_secret_costs: 20,
    };
}

impl Default for Limits {
    fn default() -> Self {
        Self::USUAL
    }
}

/// A clock that only goes forward: how long since some moment.
pub type Clock = Arc<dyn Fn() -> Duration + Send + Sync>;

/// The machine's own clock.
#[must_use]
pub fn machine_clock() -> Clock {
    let start = Instant::now();
    Arc::new(move || start.elapsed())
}
