//! The pairing secret: what a phone must know before it may read or write the notebook.
//!
//! It is written in groups of four of the 32 signs that are not taken for one another, the same in every language. Small
//! letters, blanks and dashes make no difference, and what was misread (O for 0, I or L for 1) is put right.

use notebook::Hash;
use subtle::ConstantTimeEq;

/// The signs: digits and letters but I, L, O and U.
const SIGNS: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";
/// Bits in one sign: 2^5 = 32.
const BITS: u32 = 5;
/// The fewest signs of a secret. Our own choice: 80 bits, which nobody tries out at one a second.
const FEWEST: usize = 16;
/// The most signs of a secret. Our own choice: far more than anybody types.
const MOST: usize = 256;
/// Signs in a group. Our own choice: what is read at a glance.
const GROUP: usize = 4;

/// A pairing secret. It shows itself only when asked to.
#[derive(Clone)]
pub struct Secret {
    signs: String,
    sum: Hash,
}

/// A text that makes no secret.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("a pairing secret has {FEWEST} letters and digits or more")]
pub struct TooShort;

impl Secret {
    /// A new secret out of chance that the caller hands in.
    #[must_use]
    pub fn made_of(chance: [u8; 10]) -> Self {
        let mut signs = String::with_capacity(FEWEST);
        let (mut kept, mut bits) = (0_usize, 0_u32);
        for byte in chance {
            kept = (kept << u8::BITS) | usize::from(byte);
            bits += u8::BITS;
            while bits >= BITS {
                bits -= BITS;
                signs.push(char::from(SIGNS[(kept >> bits) % SIGNS.len()]));
            }
            kept %= 1 << bits;
        }
        let sum = sum(&signs);
        Self { signs, sum }
    }

    /// A new secret out of the system's chance; none where the system has none to give.
    #[must_use]
    pub fn new() -> Option<Self> {
        chance().map(Self::made_of)
    }

    /// A secret that somebody chose.
    ///
    /// *Errors*: fewer than 16 letters and digits, or far too many.
    pub fn chosen(text: &str) -> Result<Self, TooShort> {
        let signs = plain(text);
        if !(FEWEST..=MOST).contains(&signs.len()) {
            return Err(TooShort);
        }
        let sum = sum(&signs);
        Ok(Self { signs, sum })
    }

    /// The secret, to be shown once.
    #[must_use]
    pub fn shown(&self) -> String {
        let groups: Vec<String> =
            self.signs.as_bytes().chunks(GROUP).map(|group| String::from_utf8_lossy(group).into()).collect();
        groups.join("-")
    }

    /// Whether a text is this secret. It takes as long for a near miss as for a far one.
    #[must_use]
    pub fn is(&self, text: &str) -> Match {
        if text.len() > 2 * MOST {
            return Match::No;
        }
        if bool::from(self.sum.bytes().ct_eq(sum(&plain(text)).bytes())) { Match::Yes } else { Match::No }
    }
}

/// Whether a text is the secret.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Match {
    /// It is.
    Yes,
    /// It is not.
    No,
}

impl core::fmt::Debug for Secret {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.write_str("Secret(not shown)")
    }
}

/// Ten bytes of the system's chance, for a secret or a name; none where the system has none to give.
#[must_use]
pub fn chance() -> Option<[u8; 10]> {
    let mut chance = [0; 10];
    getrandom::fill(&mut chance).ok()?;
    Some(chance)
}

/// Letters and digits alone, large, with what was misread put right.
fn plain(text: &str) -> String {
    let signs = text.chars().filter(char::is_ascii_alphanumeric).map(|sign| sign.to_ascii_uppercase());
    signs
        .map(|sign| {
            if sign == 'O' {
                '0'
            } else if matches!(sign, 'I' | 'L') {
                '1'
            } else {
                sign
            }
        })
        .collect()
}

/// Sums are compared, and not the texts: they are of one length whatever was sent.
fn sum(signs: &str) -> Hash {
    Hash::of(&[b"evenswath pairing 1", signs.as_bytes()])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_secret_is_known_however_it_is_typed() {
        let secret = Secret::made_of([0, 1, 2, 3, 4, 250, 251, 252, 253, 254]);
        let shown = secret.shown();
        assert_eq!(shown.len(), 19, "{shown}");
        assert_eq!(shown, "000G-40R4-ZBXZ-SZFY");
        for typed in [shown.clone(), shown.to_lowercase(), shown.replace('-', " "), shown.replace('0', "o")] {
            assert_eq!(secret.is(&typed), Match::Yes, "{typed}");
        }
        for typed in ["", "0000", &shown[1..], &format!("{shown}0"), &"0".repeat(100_000)] {
            assert_eq!(secret.is(typed), Match::No);
        }
        assert!(!format!("{secret:?}").contains("ZBXZ"));
    }

    #[test]
    fn every_bit_of_chance_counts() {
        let mut seen = std::collections::BTreeSet::new();
        for bit in 0..80 {
            let mut chance = [0; 10];
            chance[bit / 8] = 1 << (bit % 8);
            seen.insert(Secret::made_of(chance).shown());
        }
        assert_eq!(seen.len(), 80);
        assert_ne!(Secret::new().unwrap().shown(), Secret::new().unwrap().shown());
    }

    #[test]
    fn a_short_secret_is_refused() {
        assert!(Secret::chosen("willow-bend").is_err());
        assert!(Secret::chosen("----------------------------").is_err());
        assert!(Secret::chosen(&"a".repeat(300)).is_err());
        let secret = Secret::chosen("the gray mare kicked over the milk").unwrap();
        assert_eq!(secret.is("THE-GRAY-MARE kicked over the m1lk"), Match::Yes);
    }
}
