//! Check sums: SHA-256, so that loss or change can be shown and not made unseen.

use sha2::{Digest, Sha256};

/// A check sum of 32 bytes.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Hash([u8; 32]);

impl Hash {
    /// What stands before a device's first line.
    pub const NOTHING: Self = Self([0; 32]);

    /// The check sum of these bytes, as a store kept them.
    #[must_use]
    pub const fn from_bytes(bytes: [u8; 32]) -> Self {
        Self(bytes)
    }

    /// The check sum of texts one after the other, each with its length, so that no two lists of texts run together.
    ///
    /// *Source*: FIPS 180-4, SHA-256.
    #[must_use]
    pub fn of(parts: &[&[u8]]) -> Self {
        let mut sum = Sha256::new();
        for part in parts {
            sum.update((part.len() as u64).to_be_bytes());
            sum.update(part);
        }
        Self(sum.finalize().into())
    }

    /// The check sum of bytes as they are.
    #[must_use]
    pub fn of_bytes(bytes: &[u8]) -> Self {
        Self(Sha256::digest(bytes).into())
    }

    /// Its bytes.
    #[must_use]
    pub const fn bytes(&self) -> &[u8; 32] {
        &self.0
    }

    /// Out of 64 small hexadecimal digits; `None` where the text is something else.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        unhex(text).map(Self)
    }
}

/// Bytes out of small hexadecimal digits, exactly as many as are asked for.
pub(crate) fn unhex<const BYTES: usize>(text: &str) -> Option<[u8; BYTES]> {
    let digits = text.as_bytes();
    if digits.len() != 2 * BYTES {
        return None;
    }
    let digit = |sign: u8| match sign {
        b'0'..=b'9' => Some(sign - b'0'),
        b'a'..=b'f' => Some(sign - b'a' + 10),
        _ => None,
    };
    let mut bytes = [0; BYTES];
    for (byte, pair) in bytes.iter_mut().zip(digits.chunks(2)) {
        *byte = digit(pair[0])? * 16 + digit(pair[1])?;
    }
    Some(bytes)
}

/// Bytes as small hexadecimal digits.
pub(crate) fn hex(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(2 * bytes.len());
    for byte in bytes {
        for half in [byte >> 4, byte & 15] {
            text.push(char::from(if half < 10 { b'0' + half } else { b'a' + half - 10 }));
        }
    }
    text
}

impl core::fmt::Display for Hash {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.write_str(&hex(&self.0))
    }
}

impl core::fmt::Debug for Hash {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(out, "Hash({self})")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn expected_from_fips_180_4() {
        // FIPS 180-4 examples (NIST, "SHA256", one-block message "abc").
        let sum = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        assert_eq!(Hash::of_bytes(b"abc").to_string(), sum);
        assert_eq!(Hash::parse(sum), Some(Hash::of_bytes(b"abc")));
    }

    #[test]
    fn texts_do_not_run_together() {
        assert_ne!(Hash::of(&[b"ab", b"c"]), Hash::of(&[b"a", b"bc"]));
        assert_ne!(Hash::of(&[b"abc"]), Hash::of(&[b"abc", b""]));
    }
}
