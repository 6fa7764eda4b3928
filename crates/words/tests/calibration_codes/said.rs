//! Holds anything coded against both catalogues, and the codes that were said against those that stand in the source.

use std::collections::BTreeSet;
use std::path::Path;

use units::{Arg, Coded, Phrase, Working};
use words::{Language, Words, sources};

/// What was found in the catalogues so far.
pub struct Said {
    english: Words,
    spanish: Words,
    /// The names of the messages that were used, as far as these checks can tell.
    pub keys: BTreeSet<String>,
    /// The codes that were said.
    pub codes: BTreeSet<String>,
}

impl Said {
    /// Nothing yet.
    pub fn new() -> Self {
        Self {
            english: Words::of(Language::English),
            spanish: Words::of(Language::Spanish),
            keys: BTreeSet::new(),
            codes: BTreeSet::new(),
        }
    }

    /// Said in both languages, in English as the code says it, with something to do exactly where the code has it.
    pub fn coded(&mut self, coded: &dyn Coded) {
        let key = coded.case().map_or_else(|| coded.code().into(), |case| format!("{}-{case}", coded.code()));
        let mut told = Vec::new();
        for words in [&self.english, &self.spanish] {
            let says =
                words.coded(coded).unwrap_or_else(|| panic!("{:?}: nothing says {key}", words.reader()));
            let does = words.coded_action(coded);
            for text in core::iter::once(&says).chain(&does) {
                assert!(!text.contains(['{', '}', '_']) && !text.is_empty(), "{key}: {text}");
            }
            assert_eq!(does.is_some(), coded.hint().is_some(), "{key}: something to do");
            told.push((says, does));
        }
        assert_eq!((told[0].0.clone(), told[0].1.clone()), (coded.to_string(), coded.hint()), "{key}");
        assert_ne!(told[0].0, told[1].0, "{key} is said the same in both");
        assert!(told[0].1.is_none() || told[0].1 != told[1].1, "{key}: what to do is said the same in both");
        for (_, arg) in coded.args().iter() {
            self.arg(arg);
        }
        self.keys.insert(key);
        self.codes.insert(coded.code().into());
    }

    /// One of our own words is said in both languages; so is all that is inside an argument.
    pub fn arg(&mut self, arg: &Arg) {
        match arg {
            Arg::Word { code, english } => {
                let key = format!("word-{code}");
                assert!(self.english.has(&key) && self.spanish.has(&key), "{key} is missing");
                assert_eq!(self.english.arg(arg), *english, "{key}");
                // The percent sign is the same for everyone.
                assert!(
                    *english == "%" || self.spanish.arg(arg) != *english,
                    "{key} is said the same in both"
                );
                self.keys.insert(key);
            }
            Arg::Phrases(phrases) => {
                phrases.iter().flat_map(|Phrase { args, .. }| args.iter()).for_each(|(_, arg)| self.arg(arg))
            }
            _ => {}
        }
    }

    /// Title, formula, names of figures and our own words of a working, and of those it rests on; the source unless it
    /// is a publication, which keeps its name.
    pub fn working(&mut self, working: &Working, is_publication: &dyn Fn(&str) -> bool) {
        let title = format!("working-{}", working.code);
        assert!(self.english.has(&title) && self.spanish.has(&title), "{title} is missing");
        let mut same: Vec<&str> = Vec::new();
        let (english, spanish) = (&self.english, &self.spanish);
        assert_eq!(english.formula(working), working.formula);
        if spanish.formula(working) == working.formula {
            same.push(working.formula);
        }
        for figure in &working.figures {
            assert_eq!(english.figure_name(figure), figure.name);
            if spanish.figure_name(figure) == figure.name {
                same.push(figure.name);
            }
        }
        assert_eq!(english.source(working.source), working.source);
        if (spanish.source(working.source) == working.source) != is_publication(working.source) {
            same.push(working.source);
        }
        assert!(same.is_empty(), "{title}: in Spanish as in English, or a publication renamed: {same:?}");
        assert!(spanish.working(working).iter().all(|line| !line.contains(['{', '}'])));
        self.keys.insert(title);
        self.codes.insert(working.code.into());
        working.figures.iter().for_each(|figure| self.arg(&figure.value));
        working.steps.iter().for_each(|step| self.working(step, is_publication));
    }

    /// Every code that stands in a folder's source was said, and every sentence of a file of the catalogue was used.
    pub fn all_of(&self, folders: &[&str], is_code: &dyn Fn(&str) -> bool, file: &str, after: &str) {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
        let mut literals = BTreeSet::new();
        folders.iter().for_each(|folder| gather(&root.join(folder), &mut literals));
        let codes: Vec<_> = literals.into_iter().filter(|text| is_code(text)).collect();
        assert!(codes.len() > 15, "the source was not found: {codes:?}");
        let missing: Vec<_> = codes.iter().filter(|code| !self.codes.contains(*code)).collect();
        assert!(missing.is_empty(), "nothing here tells {missing:?}");
        let text =
            sources(Language::English).iter().find(|(name, _)| *name == file).map_or("", |(_, text)| text);
        let (_, text) = text.split_once(after).unwrap_or_else(|| panic!("{file}.ftl lacks {after:?}"));
        let unused: Vec<_> = text
            .lines()
            .filter(|line| line.starts_with(|sign: char| sign.is_ascii_lowercase()))
            .filter_map(|line| line.split_once(" ="))
            .map(|(key, _)| key)
            .filter(|key| !["figure-", "formula-", "source-"].iter().any(|start| key.starts_with(start)))
            .filter(|key| !self.keys.contains(*key))
            .collect();
        assert!(unused.is_empty(), "{file}.ftl says what nothing tells: {unused:?}");
    }
}

/// The words in quotes of every Rust file in a folder, without those in comments.
#[allow(clippy::disallowed_methods)] // a test may read the source it is about; the crate itself reads nothing
fn gather(folder: &Path, literals: &mut BTreeSet<String>) {
    let entries = std::fs::read_dir(folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()));
    for path in entries.map(|entry| entry.expect("an entry").path()) {
        if path.is_dir() {
            gather(&path, literals);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            let text = std::fs::read_to_string(&path).expect("a source file");
            let code = text.lines().filter(|line| !line.trim_start().starts_with("//"));
            literals.extend(code.flat_map(|line| line.split('"').skip(1).step_by(2)).map(str::to_string));
        }
    }
}
