//! Stable words for the kinds of things here, each kind an enum whose values are listed once.

/// An enum of things with their stable words, in the order they are listed to people.
macro_rules! named {
    ($(#[$about:meta])* $name:ident { $($(#[$doc:meta])* $value:ident = $word:literal,)* }) => {
        $(#[$about])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name { $($(#[$doc])* $value,)* }

        impl $name {
            /// All of them, in the order they are listed.
            pub const ALL: &'static [Self] = &[$(Self::$value,)*];

            /// Their words, in the same order.
            pub const WORDS: &'static [&'static str] = &[$($word,)*];

            /// The stable word in files and JSON, and its name among the sentences.
            #[must_use]
            pub const fn word(self) -> &'static str {
                match self { $(Self::$value => $word,)* }
            }

            /// Looks the word up.
            #[must_use]
            pub fn from_word(word: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|one| one.word() == word)
            }
        }
    };
}

pub(super) use named;
