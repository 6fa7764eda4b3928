//! Reading one part of the file: each field by its name, mistakes collected and not the first one only.

use core::cell::RefCell;
use core::ops::Range;

use toml::Spanned;
use toml::de::{DeTable, DeValue};
use units::{Arg, AsWritten, Coded, Quantity};

use super::error::FileError;
use super::fields::SECTIONS;
use super::mistake::{Mistake, Wanted, told_by};

/// The mistakes found so far, each with the place in the text where it begins.
pub(crate) type Errors = RefCell<Vec<(usize, FileError)>>;

/// The names that may stand in a part of a file, by the part's own name, which is empty for the whole file; `None` where they
/// are the user's own.
pub(crate) type Names = fn(&str) -> Option<Vec<&'static str>>;

/// One table of the file.
pub(crate) struct Part<'a> {
    table: &'a DeTable<'a>,
    text: &'a str,
    path: String,
    span: Range<usize>,
    errors: &'a Errors,
    names: Names,
}

impl<'a> Part<'a> {
    /// The whole file, in which these names may stand.
    pub fn whole(table: &'a DeTable<'a>, text: &'a str, errors: &'a Errors, names: Names) -> Self {
        let whole = Self { table, text, path: String::new(), span: 0..0, errors, names };
        let unknown = Mistake::new(UNKNOWN, "there is no part of this name").case("part");
        whole
            .refuse_unknown(&names("").unwrap_or_default(), unknown.would_do("parts that would do: {known}"));
        whole
    }

    /// A table within this one, checked against its list of fields.
    pub fn part(&self, name: &str) -> Option<Part<'a>> {
        let value = self.value(name)?;
        let Some(table) = value.get_ref().as_table() else {
            let header = self.path_of(name);
            self.wrong(name, value, part_of_its_own(&format!("[{header}]")));
            return None;
        };
        Some(self.within(table, self.path_of(name), value.span()))
    }

    /// Tables of one name, each under its own `[[name]]`.
    pub fn parts(&self, name: &str) -> Vec<Part<'a>> {
        let Some(value) = self.value(name) else { return Vec::new() };
        let path = self.path_of(name);
        if let Some(table) = value.get_ref().as_table() {
            return vec![self.within(table, path, value.span())];
        }
        let Some(array) = value.get_ref().as_array() else {
            let wrong = Mistake::new(WRONG_KIND, "a list of parts is needed, but {found} stands here")
                .case("parts")
                .would_do("begin each with a line {header}");
            self.wrong(name, value, wrong.text("header", &format!("[[{path}]]")));
            return Vec::new();
        };
        let mut parts = Vec::new();
        for entry in array {
            match entry.get_ref().as_table() {
                Some(table) => parts.push(self.within(table, path.clone(), entry.span())),
                None => self.wrong(name, entry, part_of_its_own(&format!("[[{path}]]"))),
            }
        }
        parts
    }

    fn within(&self, table: &'a DeTable<'a>, path: String, span: Range<usize>) -> Part<'a> {
        let part = Part { table, text: self.text, path, span, errors: self.errors, names: self.names };
        if let Some(names) = (self.names)(&part.path) {
            let unknown = Mistake::new(UNKNOWN, "there is no field of this name").case("field");
            part.refuse_unknown(&names, unknown.would_do("fields that would do: {known}"));
        }
        part
    }

    fn refuse_unknown(&self, known: &[&str], unknown: Mistake) {
        let unknown = unknown.names("known", known);
        for (key, _) in self.table {
            let name = key.get_ref().as_ref();
            if !known.contains(&name) {
                self.push(key.span(), name, unknown.clone());
            }
        }
    }

    /// Every name and value, for parts whose names are the user's own.
    pub fn entries(&self) -> impl Iterator<Item = (&'a str, &'a Spanned<DeValue<'a>>)> {
        self.table.iter().map(|(key, value)| (key.get_ref().as_ref(), value))
    }

    pub fn value(&self, name: &str) -> Option<&'a Spanned<DeValue<'a>>> {
        self.table.get(name)
    }

    pub fn has(&self, name: &str) -> bool {
        self.value(name).is_some()
    }

    pub fn path_of(&self, name: &str) -> String {
        if self.path.is_empty() { name.to_string() } else { format!("{}.{name}", self.path) }
    }

    /// The letters of a value as they stand in the file, for numbers without quotes.
    pub fn letters(&self, value: &Spanned<DeValue<'_>>) -> &'a str {
        self.text.get(value.span()).unwrap_or_default()
    }

    /// A text, or a number as it stands.
    pub fn text_of(&self, name: &str, value: &Spanned<DeValue<'_>>) -> Option<String> {
        match value.get_ref() {
            DeValue::String(text) => Some(text.to_string()),
            DeValue::Integer(_) | DeValue::Float(_) | DeValue::Datetime(_) => {
                Some(self.letters(value).to_string())
            }
            _ => {
                let wrong = Mistake::new(WRONG_KIND, "a text in quotes is needed, but {found} stands here")
                    .case("text")
                    .would_do("write it as {name} = \"value\"");
                self.wrong(name, value, wrong.text("name", name));
                None
            }
        }
    }

    pub fn text(&self, name: &str) -> Option<String> {
        let text = self.text_of(name, self.value(name)?)?;
        let text = text.trim();
        (!text.is_empty()).then(|| text.to_string())
    }

    /// A day as year-month-day.
    pub fn date(&self, name: &str) -> Option<String> {
        let value = self.value(name)?;
        let text = self.text_of(name, value)?;
        let parts: Vec<&str> = text.trim().split('-').collect();
        let number = |place: usize| parts.get(place).and_then(|part| part.parse::<u32>().ok());
        let day = matches!(
            (parts.len(), number(0), number(1), number(2)),
            (3, Some(1900..=2999), Some(1..=12), Some(1..=31))
        );
        if !day {
            let mistake =
                Mistake::new("file_not_a_day", "\"{given}\" is not a day").would_do("write it as 2027-04-14");
            self.push_value(name, value, mistake.text("given", text.trim()));
        }
        day.then(|| text.trim().to_string())
    }

    /// A quantity in any unit.
    pub fn quantity<Q: Quantity>(&self, name: &str) -> Option<AsWritten<Q>> {
        self.quantity_of(name, self.value(name)?)
    }

    pub fn quantity_of<Q: Quantity>(&self, name: &str, value: &Spanned<DeValue<'_>>) -> Option<AsWritten<Q>> {
        let text = self.text_of(name, value)?;
        self.known(name, value, AsWritten::parse(&text))
    }

    /// A quantity above nothing.
    pub fn positive<Q: Quantity>(&self, name: &str) -> Option<AsWritten<Q>> {
        self.positive_of(name, self.value(name)?)
    }

    pub fn positive_of<Q: Quantity>(&self, name: &str, value: &Spanned<DeValue<'_>>) -> Option<AsWritten<Q>> {
        let quantity = self.quantity_of::<Q>(name, value)?;
        if quantity.value().is_positive() {
            return Some(quantity);
        }
        let mistake = Mistake::new("file_not_positive", "\"{given}\" must be more than nothing")
            .would_do("{kind} above nothing is needed")
            .text("given", quantity.text())
            .with("kind", Q::DIMENSION.word());
        self.push_value(name, value, mistake);
        None
    }

    /// A list of quantities.
    pub fn quantities<Q: Quantity>(&self, name: &str) -> Vec<AsWritten<Q>> {
        self.list(name).iter().filter_map(|value| self.quantity_of(name, value)).collect()
    }

    /// The values of a list; nothing where the field is absent.
    pub fn list(&self, name: &str) -> &'a [Spanned<DeValue<'a>>] {
        let Some(value) = self.value(name) else { return &[] };
        if let Some(array) = value.get_ref().as_array() {
            return array;
        }
        let wrong = Mistake::new(WRONG_KIND, "a list is needed, but {found} stands here")
            .case("list")
            .would_do("write it as {name} = [\"first\", \"second\"]");
        self.wrong(name, value, wrong.text("name", name));
        &[]
    }

    /// A count of at least one.
    pub fn count(&self, name: &str) -> Option<u32> {
        self.count_of(name, self.value(name)?)
    }

    pub fn count_of(&self, name: &str, value: &Spanned<DeValue<'_>>) -> Option<u32> {
        let text = self.text_of(name, value)?;
        match text.trim().parse::<u32>() {
            Ok(count) if count > 0 => Some(count),
            _ => {
                let mistake = Mistake::new("file_not_a_count", "\"{given}\" is not a count")
                    .would_do("write a whole number from 1");
                self.push_value(name, value, mistake.text("given", text.trim()));
                None
            }
        }
    }

    pub fn counts(&self, name: &str) -> Vec<u32> {
        self.list(name).iter().filter_map(|value| self.count_of(name, value)).collect()
    }

    /// A percentage as a share above nothing.
    pub fn share(&self, name: &str) -> Option<f64> {
        let value = self.value(name)?;
        let text = self.text_of(name, value)?;
        let share = self.known(name, value, units::percent(&text))?;
        if share > 0.0 && share <= 1.0 {
            return Some(share);
        }
        let mistake = Mistake::new("file_share", "\"{given}\" must be more than 0 % and at most 100 %")
            .would_do("write it as \"5 %\"");
        self.push_value(name, value, mistake.text("given", text.trim()));
        None
    }

    /// One of a few words.
    pub fn word<T>(&self, name: &str, words: &[&str], look_up: impl Fn(&str) -> Option<T>) -> Option<T> {
        self.word_of(name, self.value(name)?, words, look_up)
    }

    /// A list of a few words.
    pub fn words<T>(&self, name: &str, words: &[&str], look_up: impl Fn(&str) -> Option<T> + Copy) -> Vec<T> {
        self.list(name).iter().filter_map(|value| self.word_of(name, value, words, look_up)).collect()
    }

    fn word_of<T>(
        &self,
        name: &str,
        value: &Spanned<DeValue<'_>>,
        words: &[&str],
        look_up: impl Fn(&str) -> Option<T>,
    ) -> Option<T> {
        let text = self.text_of(name, value)?;
        let found = look_up(text.trim());
        if found.is_none() {
            let mistake = Mistake::new("file_word", "\"{given}\" is not one of the words here")
                .would_do("words that would do: {words}");
            self.push_value(name, value, mistake.text("given", text.trim()).names("words", words));
        }
        found
    }

    /// Takes a result, or notes its error at the value.
    pub fn known<T, E: Coded>(
        &self,
        name: &str,
        value: &Spanned<DeValue<'_>>,
        result: Result<T, E>,
    ) -> Option<T> {
        match result {
            Ok(known) => Some(known),
            Err(error) => {
                self.note(value.span(), told_by(&error, self.path_of(name)));
                None
            }
        }
    }

    /// Takes a result, or notes its error at the field, or at the head of the part where the field is absent.
    pub fn accept<T, E: Coded>(&self, name: &str, result: Result<T, E>) -> Option<T> {
        let span = self.value(name).map_or_else(|| self.span.clone(), Spanned::span);
        match result {
            Ok(known) => Some(known),
            Err(error) => {
                self.note(span, told_by(&error, self.path_of(name)));
                None
            }
        }
    }

    /// Notes that a field is missing without which the part means nothing.
    pub fn missing(&self, name: &str, wanted: Wanted) {
        self.push(self.span.clone(), name, Mistake::missing(wanted));
    }

    /// Notes that a field stands there with nothing in it.
    pub fn refuse_empty(&self, name: &str, wanted: Wanted) {
        let Some(value) = self.value(name) else { return };
        let list = value.get_ref().as_array().is_some_and(|list| list.is_empty());
        let text = value.get_ref().as_str().is_some_and(|text| text.trim().is_empty());
        if list || text {
            self.fault(name, Mistake::empty(wanted));
        }
    }

    /// Notes a mistake at a field of this part.
    pub fn fault(&self, name: &str, mistake: Mistake) {
        let span = self.value(name).map_or_else(|| self.span.clone(), Spanned::span);
        self.push(span, name, mistake);
    }

    /// Notes a mistake at a value of a field.
    pub fn push_value(&self, name: &str, value: &Spanned<DeValue<'_>>, mistake: Mistake) {
        self.push(value.span(), name, mistake);
    }

    /// Notes that a value is of the wrong kind; what `{found}` stands there is added to the mistake.
    pub fn wrong(&self, name: &str, value: &Spanned<DeValue<'_>>, mistake: Mistake) {
        let (code, english) = match value.get_ref() {
            DeValue::String(_) => ("found_text", "a text"),
            DeValue::Integer(_) | DeValue::Float(_) => ("found_number", "a number"),
            DeValue::Boolean(_) => ("found_true_or_false", "true or false"),
            DeValue::Datetime(_) => ("found_day", "a day or a time of day"),
            DeValue::Array(_) => ("found_list", "a list"),
            DeValue::Table(_) => ("found_fields", "a { } with fields of its own"),
        };
        self.push(value.span(), name, mistake.with("found", Arg::Word { code, english }));
    }

    fn push(&self, span: Range<usize>, name: &str, mistake: Mistake) {
        self.note(span, mistake.at(Some(self.path_of(name))));
    }

    fn note(&self, span: Range<usize>, error: FileError) {
        self.errors.borrow_mut().push((span.start, error));
    }
}

/// The code of a name that the file does not have.
pub(crate) const UNKNOWN: &str = "file_unknown_field";
/// The code of a value of another kind than is needed.
pub(crate) const WRONG_KIND: &str = "file_wrong_kind";

fn part_of_its_own(header: &str) -> Mistake {
    Mistake::new(WRONG_KIND, "a part of its own is needed, but {found} stands here")
        .case("part")
        .would_do("begin it with a line {header}")
        .text("header", header)
}

/// The names of a visit file.
pub(super) fn names_of_a_visit(path: &str) -> Option<Vec<&'static str>> {
    if path.is_empty() {
        return Some(
            SECTIONS.iter().map(|section| section.name).filter(|name| !name.contains('.')).collect(),
        );
    }
    let section = SECTIONS.iter().find(|section| section.name == path)?;
    if section.fields.is_empty() {
        return None;
    }
    let mut names: Vec<&str> = section.fields.iter().map(|field| field.name).collect();
    let inner = format!("{path}.");
    names.extend(SECTIONS.iter().filter_map(|section| section.name.strip_prefix(inner.as_str())));
    Some(names)
}
