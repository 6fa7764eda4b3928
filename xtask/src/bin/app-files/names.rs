//! Names that change with what a file holds, and the files that speak of others by them.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

use crate::Files;

/// Bytes of a check sum that go into a name: 16 digits, as `sw.js` looks for them. Our own choice: no two files of an app
/// share them by chance.
const IN_NAME: usize = 8;

/// Files named so far, and what they were called.
#[derive(Default)]
pub struct Named {
    files: Files,
    /// The plain name, the one it got, and its check sum as browsers hold files to it.
    names: Vec<(String, String, String)>,
    /// Plain names that some file spoke of.
    spoken: Vec<String>,
}

impl Named {
    /// Takes a file in under a name with its check sum.
    pub fn hashed(&mut self, name: &str, bytes: Vec<u8>) {
        let with_sum = with_sum(name, &bytes);
        self.names.push((name.into(), with_sum.clone(), integrity(&bytes)));
        self.files.insert(with_sum, bytes);
    }

    /// The same for a file that speaks of others, as `./name`, and of their check sums, as `@SUM name@`.
    pub fn hashed_text(&mut self, name: &str, text: &str) {
        let text = self.renamed(text);
        self.hashed(name, text.into_bytes());
    }

    /// Takes in a file that speaks of others and keeps its own name.
    pub fn by_name(&mut self, name: &str, text: &str) {
        let text = self.renamed(text);
        self.files.insert(name.into(), text.into_bytes());
    }

    /// All of them. An error if one is there for nothing.
    pub fn finish(self) -> Result<Files, String> {
        match self.names.iter().find(|(name, ..)| !self.spoken.contains(name)) {
            None => Ok(self.files),
            Some((name, ..)) => Err(format!("nothing in the app speaks of {name}")),
        }
    }

    fn renamed(&mut self, text: &str) -> String {
        let mut text = text.to_owned();
        for (name, with_sum, integrity) in &self.names {
            text = text.replace(&format!("@SUM {name}@"), integrity);
            let of = format!("./{name}");
            if text.contains(&of) {
                text = text.replace(&of, &format!("./{with_sum}"));
                self.spoken.push(name.clone());
            }
        }
        text
    }
}

/// A check sum as browsers hold files to it (W3C Subresource Integrity).
pub fn integrity(bytes: &[u8]) -> String {
    format!("sha256-{}", STANDARD.encode(Sha256::digest(bytes)))
}

/// Whether a name holds a check sum.
#[cfg(test)]
pub fn is_hashed(name: &str) -> bool {
    let stem = name.split_once('.').map_or(name, |(stem, _)| stem);
    let sum = stem.rsplit('-').next().unwrap_or_default();
    sum.len() == 2 * IN_NAME && sum.bytes().all(|sign| sign.is_ascii_hexdigit())
}

/// `icon-192.png` becomes `icon-192-1f3c9a70be551234.png`.
fn with_sum(name: &str, bytes: &[u8]) -> String {
    let sum: String = Sha256::digest(bytes).iter().take(IN_NAME).map(|byte| format!("{byte:02x}")).collect();
    match name.split_once('.') {
        Some((stem, ending)) => format!("{stem}-{sum}.{ending}"),
        None => format!("{name}-{sum}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_changes_with_what_it_names_and_with_what_that_speaks_of() {
        let made = |style: &str| {
            let mut named = Named::default();
            named.hashed("a.css", style.as_bytes().to_vec());
            named.hashed_text("b.js", "import './a.css'");
            named.by_name("index.html", "<script src=\"./b.js\">");
            named.finish().unwrap()
        };
        let (one, other) = (made("p {}"), made("q {}"));
        assert!(
            one.keys().zip(other.keys()).filter(|(one, _)| is_hashed(one)).all(|(one, other)| one != other)
        );
        assert_ne!(one["index.html"], other["index.html"]);
        assert_eq!(one, made("p {}"));
    }

    #[test]
    fn a_file_that_nothing_speaks_of_is_told() {
        let mut named = Named::default();
        named.hashed("a.css", Vec::new());
        assert!(named.finish().unwrap_err().contains("a.css"));
    }

    #[test]
    fn sums_are_those_of_the_standard() {
        // FIPS 180-4's example: the message "abc".
        assert_eq!(with_sum("a.b.c", b"abc"), "a-ba7816bf8f01cfea.b.c");
        let mut named = Named::default();
        named.hashed("a.txt", b"abc".to_vec());
        // The same sum in base64.
        assert_eq!(named.renamed("@SUM a.txt@"), "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0=");
    }
}
