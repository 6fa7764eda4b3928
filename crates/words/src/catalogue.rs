//! The catalogue of one language, and saying something out of it.

use std::sync::Arc;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

#[cfg(feature = "embedded")]
use crate::reader::Language;
use crate::reader::Reader;

/// The Fluent files of one language: name and text. Both languages have the same names.
#[cfg(feature = "embedded")]
#[must_use]
pub const fn sources(language: Language) -> &'static [(&'static str, &'static str)] {
    match language {
        Language::English => ENGLISH,
        Language::Spanish => SPANISH,
    }
}

#[cfg(feature = "embedded")]
macro_rules! files {
    ($folder:literal: $($name:literal),* $(,)?) => {
        &[$(($name, include_str!(concat!("../locales/", $folder, "/", $name, ".ftl")))),*]
    };
}

#[cfg(feature = "embedded")]
macro_rules! all_files {
    ($folder:literal) => {
        files!(
            $folder: "common", "units", "catch", "calibration", "planning", "visit", "report", "notebook", "yard", "command",
            "server", "diagnosis", "likely", "pattern", "pattern_command", "symptoms", "controller",
        )
    };
}

#[cfg(feature = "embedded")]
const ENGLISH: &[(&str, &str)] = all_files!("en");
#[cfg(feature = "embedded")]
const SPANISH: &[(&str, &str)] = all_files!("es");

/// What is read out of: the words of one language, said the way one reader writes numbers, units and dates.
pub struct Words {
    reader: Reader,
    bundle: Arc<FluentBundle<FluentResource>>,
}

impl core::fmt::Debug for Words {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.debug_struct("Words").field("reader", &self.reader).finish_non_exhaustive()
    }
}

impl Words {
    /// The words for a reader, out of the texts within the program.
    #[cfg(feature = "embedded")]
    #[must_use]
    pub fn new(reader: Reader) -> Self {
        Self::out_of(reader, sources(reader.language).iter().map(|(_, text)| *text))
    }

    /// The words for a reader, out of Fluent texts in the reader's language. Whoever hands them in has held them to their
    /// check sum.
    ///
    /// A line of a Fluent file that cannot be read is left out here; `cargo xtask tidy` and the tests of this crate fail
    /// on it, and on a key or argument that one language lacks.
    #[must_use]
    pub fn out_of<'a>(reader: Reader, texts: impl IntoIterator<Item = &'a str>) -> Self {
        // Both tags are valid (a test holds them to it); the tag decides how counts are said.
        let tag: LanguageIdentifier = reader.language.tag().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        // The marks that keep writing directions apart would stand as boxes in a drawing or a terminal.
        bundle.set_use_isolating(false);
        for text in texts {
            let resource = match FluentResource::try_new(text.to_string()) {
                Ok(resource) | Err((resource, _)) => resource,
            };
            bundle.add_resource_overriding(resource);
        }
        Self { reader, bundle: Arc::new(bundle) }
    }

    /// The same words for a reader who may differ in numbers, paper and units; the language stays that of the words.
    #[must_use]
    pub fn read_by(&self, reader: Reader) -> Self {
        let reader = Reader { language: self.reader.language, ..reader };
        Self { reader, bundle: Arc::clone(&self.bundle) }
    }

    /// The words for a reader of this language, all else as usual in the United States.
    #[cfg(feature = "embedded")]
    #[must_use]
    pub fn of(language: Language) -> Self {
        Self::new(Reader { language, ..Reader::default() })
    }

    /// Who reads.
    #[must_use]
    pub const fn reader(&self) -> Reader {
        self.reader
    }

    /// The same words for a reader of another language who is alike in all else.
    #[cfg(feature = "embedded")]
    #[must_use]
    pub fn in_language(&self, language: Language) -> Self {
        Self::new(Reader { language, ..self.reader })
    }

    /// A label: a message without arguments. A key that nobody wrote shows itself, so that it is found.
    #[must_use]
    pub fn label(&self, key: &str) -> String {
        self.find(key, None).unwrap_or_else(|| key.to_string())
    }

    /// A sentence with its arguments. A key that nobody wrote shows itself, so that it is found.
    #[must_use]
    pub fn say(&self, key: &str, args: &[(&str, FluentValue<'_>)]) -> String {
        let mut fluent = FluentArgs::with_capacity(args.len());
        for (name, value) in args {
            fluent.set((*name).to_string(), value.clone());
        }
        self.find(key, Some(&fluent)).unwrap_or_else(|| key.to_string())
    }

    /// The message of a key, where there is one.
    pub(crate) fn find(&self, key: &str, args: Option<&FluentArgs<'_>>) -> Option<String> {
        let pattern = self.bundle.get_message(key)?.value()?;
        Some(self.bundle.format_pattern(pattern, args, &mut Vec::new()).into_owned())
    }

    /// An attribute of a message, where there is one.
    pub(crate) fn find_attribute(
        &self,
        key: &str,
        attribute: &str,
        args: Option<&FluentArgs<'_>>,
    ) -> Option<String> {
        let pattern = self.bundle.get_message(key)?.get_attribute(attribute)?.value();
        Some(self.bundle.format_pattern(pattern, args, &mut Vec::new()).into_owned())
    }

    /// Whether there is a message of this key.
    #[must_use]
    pub fn has(&self, key: &str) -> bool {
        self.bundle.has_message(key)
    }
}
