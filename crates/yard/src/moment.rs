//! When something happened and a handful of chance: both come with the event, so that the same events always give the
//! same state.

use notebook::{At, DeviceId, Hash, LineId, NotebookId, RowId, ThingId};

/// When an event happened, by the two clocks of a device.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Moment {
    /// The clock on the wall: milliseconds since 1970-01-01 UTC. It may be wrong, and be set while a cup is held.
    pub wall: i64,
    /// Minutes that the wall clock is ahead of UTC.
    pub offset_minutes: i16,
    /// The clock that only runs: milliseconds since the page was opened. It may stand still while the device sleeps.
    pub steady: f64,
}

impl Moment {
    /// The time of a line.
    #[must_use]
    pub const fn at(&self) -> At {
        At { utc_milliseconds: self.wall, offset_minutes: self.offset_minutes }
    }

    /// How long it is since an earlier moment, in milliseconds.
    ///
    /// *Assumptions*: the steady clock counts unless the device slept, when only the wall clock went on. A wall clock that was
    /// set back is not gone by. One that was set forward by more than two seconds is taken for sleep.
    #[must_use]
    pub fn since(&self, earlier: &Self) -> f64 {
        let steady = (self.steady - earlier.steady).max(0.0);
        #[allow(clippy::cast_precision_loss, reason = "milliseconds of a visit are far below 2^53")]
        let wall = (self.wall - earlier.wall) as f64;
        if wall > steady + SLEPT { wall } else { steady }
    }
}

/// Milliseconds by which the wall clock must outrun the steady one before we say that the device slept. Our own choice: more
/// than a clock is put right by itself, less than anyone would call sleep.
const SLEPT: f64 = 2_000.0;

/// Chance that the caller hands in with an event, and as many different names out of it as an event needs.
#[derive(Clone, Debug)]
pub struct Chance {
    seed: [u8; 32],
    drawn: u32,
    milliseconds: u64,
}

impl Chance {
    /// Chance of an event at a moment.
    #[must_use]
    pub fn new(seed: [u8; 32], at: &Moment) -> Self {
        Self { seed, drawn: 0, milliseconds: u64::try_from(at.wall).unwrap_or(0) }
    }

    /// The next sixteen bytes.
    pub fn bytes(&mut self) -> [u8; 16] {
        self.drawn += 1;
        let hash = Hash::of(&[b"evenswath chance", &self.seed, &self.drawn.to_be_bytes()]);
        let mut bytes = [0; 16];
        bytes.copy_from_slice(&hash.bytes()[..16]);
        bytes
    }

    fn ten(&mut self) -> [u8; 10] {
        let mut ten = [0; 10];
        ten.copy_from_slice(&self.bytes()[..10]);
        ten
    }

    /// A new name of a line.
    pub fn line(&mut self) -> LineId {
        LineId::new(self.milliseconds, &self.ten())
    }

    /// A new name of a thing.
    pub fn thing(&mut self) -> ThingId {
        ThingId::new(self.milliseconds, &self.ten())
    }

    /// A new name of a row.
    pub fn row(&mut self) -> RowId {
        RowId::new(self.milliseconds, &self.ten())
    }

    /// A new name of a device.
    pub fn device(&mut self) -> DeviceId {
        DeviceId::new(self.milliseconds, &self.ten())
    }

    /// A new name of a notebook.
    pub fn notebook(&mut self) -> NotebookId {
        NotebookId::new(self.milliseconds, &self.ten())
    }
}
