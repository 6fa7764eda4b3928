//! `app-files MODULE PAGE FONTS LOCALES FOLDER`: the app's files as they are served, out of what was built and what is written.
//!
//! MODULE is the folder that `bindgen` wrote the app into, PAGE `crates/web/page`, FONTS the folder of the type, LOCALES that of
//! the words. A file that
//! may be kept for ever gets its check sum into its name, the service worker the list of all files, and each file its
//! compressed forms beside it. A program of its own, behind a feature, so that the everyday `xtask` does not wait for the
//! libraries that compress.
#![allow(clippy::print_stderr, reason = "a command-line tool: it says what it did on standard error")]

mod names;
mod squeeze;
mod texts;
mod worker;

use std::collections::BTreeMap;
use std::path::Path;
use std::process::ExitCode;

use names::Named;

/// The files of the finished app, by their paths.
type Files = BTreeMap<String, Vec<u8>>;

/// What bindgen calls the two files of the crate `web`.
const GLUE: &str = "web.js";
const MODULE: &str = "web_bg.wasm";
/// The type, in two weights, and its licence.
const FONTS: &[&str] = &["AtkinsonHyperlegible-Regular.woff2", "AtkinsonHyperlegible-Bold.woff2"];
const LICENCE: &str = "OFL.txt";
const LICENCE_HERE: &str = "AtkinsonHyperlegible-OFL.txt";
const ICONS: &[&str] =
    &["icon.svg", "icon-192.png", "icon-512.png", "icon-maskable-512.png", "icon-touch-180.png"];
/// One style sheet out of these, in this order.
const STYLES: &[&str] = &["type.css", "yard.css"];
/// Files that are asked for by a name that never changes.
const BY_NAME: &[&str] = &["index.html", "manifest.webmanifest", "manifest.es.webmanifest"];
const WORKER: &str = "sw.js";

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let [module, page, fonts, locales, folder] = words.as_slice() else {
        eprintln!("app-files MODULE PAGE FONTS LOCALES FOLDER");
        return ExitCode::from(2);
    };
    let made = make(Path::new(module), Path::new(page), Path::new(fonts), Path::new(locales));
    match made.and_then(|files| squeeze::write(&files, Path::new(folder))) {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

/// Every file, named; those that are spoken of by others first.
fn make(module: &Path, page: &Path, fonts: &Path, locales: &Path) -> Result<Files, String> {
    if module.join("snippets").exists() {
        return Err(
            "bindgen wrote `snippets`, JavaScript out of a library; the app has no place for it".into()
        );
    }
    let mut named = Named::default();
    for font in FONTS {
        named.hashed(font, bytes(fonts, font)?);
    }
    for icon in ICONS {
        named.hashed(icon, bytes(&page.join("icons"), icon)?);
    }
    for language in texts::LANGUAGES {
        let words = texts::of(&locales.join(language))?;
        named.hashed(&format!("words-{language}.txt"), words.into_bytes());
    }
    named.hashed("app.wasm", bytes(module, MODULE)?);
    named.hashed_text("app.js", &text(module, GLUE)?);
    let styles: Result<Vec<_>, _> = STYLES.iter().map(|style| text(page, style)).collect();
    named.hashed_text("yard.css", &styles?.concat());
    named.hashed_text("boot.js", &text(page, "boot.js")?);
    for name in BY_NAME {
        named.by_name(name, &text(page, name)?);
    }
    let mut files = named.finish()?;
    files.insert(LICENCE_HERE.into(), bytes(fonts, LICENCE)?);
    let worker = worker::worker(&text(page, WORKER)?, &files)?;
    files.insert(WORKER.into(), worker.into_bytes());
    Ok(files)
}

fn bytes(folder: &Path, name: &str) -> Result<Vec<u8>, String> {
    let path = folder.join(name);
    std::fs::read(&path).map_err(|error| format!("{} cannot be read: {error}", path.display()))
}

fn text(folder: &Path, name: &str) -> Result<String, String> {
    let text = String::from_utf8(bytes(folder, name)?).map_err(|_| format!("{name} is no UTF-8"))?;
    // The same bytes from a copy of the repository whose lines end otherwise.
    Ok(text.replace("\r\n", "\n"))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn root() -> std::path::PathBuf {
        Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
    }

    /// The app with a module that does nothing.
    fn made() -> Files {
        let module = std::env::temp_dir().join(format!(
            "app-files-{}-{:?}",
            std::process::id(),
            std::thread::current().id()
        ));
        std::fs::create_dir_all(&module).unwrap();
        std::fs::write(module.join(GLUE), "export default (module) => fetch(module)").unwrap();
        std::fs::write(module.join(MODULE), "\0asm").unwrap();
        let files = make(
            &module,
            &root().join("crates/web/page"),
            &root().join("crates/figures/fonts"),
            &root().join("crates/words/locales"),
        );
        std::fs::remove_dir_all(&module).unwrap();
        files.unwrap()
    }

    #[test]
    fn whatever_a_file_speaks_of_is_there() {
        let files = made();
        let mut spoken = 0;
        for (path, bytes) in &files {
            let Ok(text) = std::str::from_utf8(bytes) else { continue };
            for part in text.split("./").skip(1) {
                let name: String = part
                    .chars()
                    .take_while(|sign| sign.is_ascii_alphanumeric() || "-_.".contains(*sign))
                    .collect();
                if name.contains('.') {
                    assert!(files.contains_key(&name), "{path} speaks of {name}");
                    spoken += 1;
                }
            }
        }
        assert!(spoken > 15, "{spoken}");
    }

    #[test]
    fn only_what_is_asked_for_by_name_keeps_it() {
        let plain: Vec<String> = made().into_keys().filter(|path| !names::is_hashed(path)).collect();
        assert_eq!(
            plain,
            [LICENCE_HERE, "index.html", "manifest.es.webmanifest", "manifest.webmanifest", "sw.js"]
        );
    }

    #[test]
    fn the_type_is_asked_for_exactly_what_it_has() {
        let style = text(&root().join("crates/web/page"), "type.css").unwrap();
        let widths = text(&root().join("crates/figures/src"), "type_widths.rs").unwrap();
        let has: std::collections::BTreeSet<u32> = widths
            .split("\\u{")
            .skip(1)
            .map(|rest| u32::from_str_radix(&rest[..rest.find('}').unwrap()], 16).unwrap())
            // The carriage return, which nobody sees.
            .filter(|letter| *letter >= 0x20)
            .collect();
        let ranges: Vec<&str> = style.split("unicode-range:").skip(1).collect();
        assert_eq!(ranges.len(), FONTS.len());
        for range in ranges {
            let list =
                range.split(';').next().unwrap().split(',').map(|one| one.trim().trim_start_matches("U+"));
            let asked: std::collections::BTreeSet<u32> = list
                .flat_map(|one| {
                    let (from, to) = one.split_once('-').unwrap_or((one, one));
                    let read = |text| u32::from_str_radix(text, 16).unwrap();
                    read(from)..=read(to)
                })
                .collect();
            assert_eq!(asked, has);
        }
    }

    #[test]
    fn what_can_be_installed_says_so_in_both_languages_alike() {
        let read = |name: &str| -> serde_json::Value { serde_json::from_slice(&made()[name]).expect("JSON") };
        let (mut en, mut es) = (read("manifest.webmanifest"), read("manifest.es.webmanifest"));
        for (manifest, language) in [(&mut en, "en"), (&mut es, "es")] {
            let map = manifest.as_object_mut().unwrap();
            assert_eq!(map.remove("lang").unwrap(), language);
            assert!(map.remove("description").unwrap().as_str().unwrap().len() > 40);
        }
        assert_eq!(en, es);
    }
}
