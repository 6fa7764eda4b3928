//! The app's files, held in memory with their compressed forms, so that no request ever reaches the disk.

mod give;
mod kind;

use std::collections::BTreeMap;
use std::fs;
use std::io;
use std::path::Path;

use axum::body::Bytes;
use notebook::Hash;

pub use give::give;

/// The most bytes of all files together. Our own choice: some twenty times the app.
const MOST_BYTES: u64 = 256 * 1024 * 1024;
/// The most folders within folders. Our own choice: an app has two or three.
const MOST_DEEP: usize = 16;
/// Hexadecimal digits from which on a part of a name is taken for a check sum. Our own choice: what builders write, and
/// longer than words out of the letters a to f.
const HASH_DIGITS: usize = 8;

/// One file of the app.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AppFile {
    /// Its path under the top, with `/` and without one in front: `assets/app.css`.
    pub path: String,
    /// What is in it.
    pub bytes: Bytes,
    /// The same, compressed with Brotli.
    pub br: Option<Bytes>,
    /// The same, compressed with gzip.
    pub gz: Option<Bytes>,
}

/// The app's files.
#[derive(Clone, Debug, Default)]
pub struct AppFiles(BTreeMap<String, Held>);

#[derive(Clone, Debug)]
struct Held {
    file: AppFile,
    sum: Hash,
}

/// Why the files of a folder cannot be served.
#[derive(Debug, thiserror::Error)]
pub enum FilesError {
    /// A file or folder cannot be read.
    #[error("the app's files cannot be read: {0}")]
    Read(#[from] io::Error),
    /// There is no `index.html`.
    #[error("there is no index.html in this folder, so it is not the app's")]
    NoIndex,
    /// Far more than an app.
    #[error("there is more in this folder than an app has, so it is not the app's")]
    TooMuch,
}

impl AppFiles {
    /// The files of a list.
    #[must_use]
    pub fn of(files: impl IntoIterator<Item = AppFile>) -> Self {
        let held = |file: AppFile| (file.path.clone(), Held { sum: Hash::of_bytes(&file.bytes), file });
        Self(files.into_iter().map(held).collect())
    }

    /// The page that says that the app is not here.
    #[must_use]
    pub fn placeholder() -> Self {
        let file = |path: &str, text: &'static str| AppFile {
            path: path.to_string(),
            bytes: Bytes::from_static(text.as_bytes()),
            br: None,
            gz: None,
        };
        Self::of([
            file("index.html", include_str!("../../page/index.html")),
            file("placeholder.css", include_str!("../../page/placeholder.css")),
        ])
    }

    /// Every file of a folder, read once. `app.css.br` and `app.css.gz` beside `app.css` are its compressed forms. Names
    /// that begin with a dot and links are left out.
    ///
    /// *Errors*: something cannot be read; it has no `index.html`; it is far larger than an app.
    pub fn of_folder(folder: &Path) -> Result<Self, FilesError> {
        let mut read = BTreeMap::new();
        let mut bytes = 0;
        read_folder(folder, "", 0, &mut read, &mut bytes)?;
        Self::with_forms(&read)
    }

    /// The files, each with the compressed forms that stand beside it.
    fn with_forms(read: &BTreeMap<String, Bytes>) -> Result<Self, FilesError> {
        let mut files = Vec::new();
        for (path, content) in read {
            let form = |end: &str| read.get(&format!("{path}{end}")).cloned();
            let whole = |end: &str| path.strip_suffix(end).is_some_and(|plain| read.contains_key(plain));
            if !whole(".br") && !whole(".gz") {
                let (br, gz) = (form(".br"), form(".gz"));
                files.push(AppFile { path: path.clone(), bytes: content.clone(), br, gz });
            }
        }
        let files = Self::of(files);
        if files.0.contains_key("index.html") { Ok(files) } else { Err(FilesError::NoIndex) }
    }

    /// The files of a list of names and bytes; `app.css.br` and `app.css.gz` beside `app.css` are its compressed forms.
    ///
    /// *Errors*: there is no `index.html`.
    pub fn of_list<'a>(list: impl IntoIterator<Item = (&'a str, &'static [u8])>) -> Result<Self, FilesError> {
        Self::with_forms(
            &list.into_iter().map(|(path, bytes)| (path.to_string(), Bytes::from_static(bytes))).collect(),
        )
    }

    /// All of them, in order of path.
    pub fn files(&self) -> impl Iterator<Item = &AppFile> {
        self.0.values().map(|held| &held.file)
    }

    fn get(&self, path: &str) -> Option<&Held> {
        self.0.get(path)
    }
}

fn read_folder(
    folder: &Path,
    under: &str,
    deep: usize,
    read: &mut BTreeMap<String, Bytes>,
    bytes: &mut u64,
) -> Result<(), FilesError> {
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = entry.file_name();
        let Some(name) = name.to_str().filter(|name| !name.starts_with('.')) else { continue };
        let (kind, path) = (entry.file_type()?, format!("{under}{name}"));
        if kind.is_dir() {
            if deep >= MOST_DEEP {
                return Err(FilesError::TooMuch);
            }
            read_folder(&entry.path(), &format!("{path}/"), deep + 1, read, bytes)?;
        } else if kind.is_file() {
            *bytes = bytes.saturating_add(entry.metadata()?.len());
            if *bytes > MOST_BYTES {
                return Err(FilesError::TooMuch);
            }
            read.insert(path, Bytes::from(fs::read(entry.path())?));
        }
    }
    Ok(())
}

/// Whether a file's name holds its check sum, as `app-1f3c9a70.css`: its content never changes then.
fn is_hashed(path: &str) -> bool {
    let name = path.rsplit('/').next().unwrap_or(path);
    let is_sum = |part: &str| {
        part.len() >= HASH_DIGITS
            && part.bytes().all(|sign| matches!(sign, b'0'..=b'9' | b'a'..=b'f'))
            && part.bytes().any(|sign| sign.is_ascii_digit())
    };
    // What stands before the first sign that parts is the name proper, whatever it looks like.
    name.split(['-', '.', '_']).skip(1).any(is_sum)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_check_sum_in_a_name_is_seen_and_a_word_is_none() {
        for name in ["app-1f3c9a70.css", "assets/app.1f3c9a70bb.js", "app_bg-0011223344556677.wasm"] {
            assert!(is_hashed(name), "{name}");
        }
        for name in ["index.html", "sw.js", "app-defaced.css", "12345678.html", "a-1f3c.js"] {
            assert!(!is_hashed(name), "{name}");
        }
    }

    #[test]
    fn compressed_forms_go_with_their_file() {
        let folder = std::env::temp_dir().join(format!("evenswath-files-{}", std::process::id()));
        fs::create_dir_all(folder.join("deep")).unwrap();
        assert!(matches!(AppFiles::of_folder(&folder), Err(FilesError::NoIndex)));
        for (name, content) in [
            ("index.html", "page"),
            ("index.html.br", "B"),
            ("index.html.gz", "G"),
            (".hidden", "no"),
            ("deep/alone.gz", "alone"),
        ] {
            fs::write(folder.join(name), content).unwrap();
        }
        let files = AppFiles::of_folder(&folder).unwrap();
        fs::remove_dir_all(&folder).unwrap();
        assert_eq!(files.0.keys().collect::<Vec<_>>(), ["deep/alone.gz", "index.html"]);
        let index = &files.get("index.html").unwrap().file;
        assert_eq!((index.br.as_deref(), index.gz.as_deref()), (Some(&b"B"[..]), Some(&b"G"[..])));
        assert!(AppFiles::of_folder(&folder).is_err());
    }
}
