//! Names of things: 128 bits that nobody else has, written as RFC 9562 writes them.

use uuid::{Builder, Uuid};

macro_rules! id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(Uuid);

        impl $name {
            /// The name with these bits.
            #[must_use]
            pub const fn from_bits(bits: u128) -> Self {
                Self(Uuid::from_u128(bits))
            }

            /// Its bits.
            #[must_use]
            pub const fn bits(self) -> u128 {
                self.0.as_u128()
            }

            /// A new name out of a time and chance that the caller hands in: a UUID of version 7, which sorts by time.
            ///
            /// *Units*: milliseconds since 1970-01-01 UTC; ten bytes of chance.
            ///
            /// *Source*: RFC 9562 (2024), 5.7.
            #[must_use]
            pub fn new(milliseconds: u64, chance: &[u8; 10]) -> Self {
                Self(Builder::from_unix_timestamp_millis(milliseconds, chance).into_uuid())
            }

            /// The name in its usual writing; `None` where the text is no such name.
            #[must_use]
            pub fn parse(text: &str) -> Option<Self> {
                // Only the one writing, so that a name is the same letters everywhere.
                Uuid::try_parse(text).ok().map(Self).filter(|id| id.to_string() == text)
            }
        }

        impl core::fmt::Display for $name {
            fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                write!(out, "{}", self.0.as_hyphenated())
            }
        }
    };
}

id!(
    /// A line.
    LineId
);
id!(
    /// A notebook.
    NotebookId
);
id!(
    /// A device: one browser on one phone, one installation on one laptop, one restored copy.
    DeviceId
);
id!(
    /// A visit, sprayer, day or product that lines are about.
    ThingId
);
id!(
    /// A row of a list: a round of catches, a run of the drive, a product.
    RowId
);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_reads_back_and_sorts_by_time() {
        let (early, late) = (LineId::new(1_000, &[255; 10]), LineId::new(1_001, &[0; 10]));
        assert!(early < late);
        assert_eq!(LineId::parse(&early.to_string()), Some(early));
        assert_eq!(LineId::from_bits(early.bits()), early);
        // RFC 9562, appendix A.6: the version 7 example of 2022-02-22 19:22:22 UTC.
        let example =
            LineId::new(0x017F_22E2_79B0, &[0x0C, 0xC3, 0x18, 0xC4, 0xDC, 0x0C, 0x0C, 0x07, 0x39, 0x8F]);
        assert!(example.to_string().starts_with("017f22e2-79b0-7cc3-98c4-dc0c0c07398f"), "{example}");
    }

    #[test]
    fn other_writings_are_no_names() {
        for text in ["", "017F22E2-79B0-7CC3-98C4-DC0C0C07398F", "017f22e279b07cc398c4dc0c0c07398f", "{x}"] {
            assert_eq!(LineId::parse(text), None, "{text}");
        }
    }
}
