//! What can be the matter with a tip.

/// What a tip is, as far as its flow tells.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Cause {
    /// As it should be.
    Sound,
    /// Worn: it gives more.
    Worn,
    /// Partly plugged: it gives less.
    PartlyPlugged,
    /// Plugged: it gives less than a twentieth.
    Plugged,
    /// A sound tip of another size.
    WrongTip,
}

impl Cause {
    /// All of them; arrays of states are in this order.
    pub const ALL: [Self; 5] = [Self::Sound, Self::Worn, Self::PartlyPlugged, Self::Plugged, Self::WrongTip];

    /// Its place in [`Cause::ALL`].
    pub(super) const fn place(self) -> usize {
        match self {
            Self::Sound => 0,
            Self::Worn => 1,
            Self::PartlyPlugged => 2,
            Self::Plugged => 3,
            Self::WrongTip => 4,
        }
    }

    /// The stable word in JSON, and its name among the sentences.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Sound => "sound",
            Self::Worn => "worn",
            Self::PartlyPlugged => "partly_plugged",
            Self::Plugged => "plugged",
            Self::WrongTip => "wrong_tip",
        }
    }
}
