//! Reading one part of the file: each field by its name, mistakes collected and not the first one only.

use core::cell::RefCell;
use core::ops::Range;

use toml::Spanned;
use toml::de::{DeTable, DeValue};
use units::{AsWritten, Coded, Quantity};

use super::error::FileError;
use super::fields::{SECTIONS, Section};

/// The mistakes found so far, each with the place in the text where it begins.
pub(super) type Errors = RefCell<Vec<(usize, FileError)>>;

/// One table of the file.
pub(super) struct Part<'a> {
    table: &'a DeTable<'a>,
    text: &'a str,
    path: String,
    span: Range<usize>,
    errors: &'a Errors,
}

impl<'a> Part<'a> {
    /// The whole file.
    pub fn whole(table: &'a DeTable<'a>, text: &'a str, errors: &'a Errors) -> Self {
        let whole = Self { table, text, path: String::new(), span: 0..0, errors };
        let tops: Vec<&str> =
            SECTIONS.iter().map(|section| section.name).filter(|name| !name.contains('.')).collect();
        whole.refuse_unknown(&tops, "part");
        whole
    }

    /// A table within this one, checked against its list of fields.
    pub fn part(&self, name: &str) -> Option<Part<'a>> {
        let value = self.value(name)?;
        let Some(table) = value.get_ref().as_table() else {
            let header = self.path_of(name);
            self.wrong(name, value, "a part of its own", &format!("begin it with a line [{header}]"));
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
            self.wrong(name, value, "a list of parts", &format!("begin each with a line [[{path}]]"));
            return Vec::new();
        };
        let mut parts = Vec::new();
        for entry in array {
            match entry.get_ref().as_table() {
                Some(table) => parts.push(self.within(table, path.clone(), entry.span())),
                None => {
                    self.wrong(name, entry, "a part of its own", &format!("begin it with a line [[{path}]]"))
                }
            }
        }
        parts
    }

    fn within(&self, table: &'a DeTable<'a>, path: String, span: Range<usize>) -> Part<'a> {
        let part = Part { table, text: self.text, path, span, errors: self.errors };
        if let Some(section) = section_named(&part.path)
            && !section.fields.is_empty()
        {
            let mut names: Vec<&str> = section.fields.iter().map(|field| field.name).collect();
            let inner = format!("{}.", part.path);
            names.extend(SECTIONS.iter().filter_map(|section| section.name.strip_prefix(inner.as_str())));
            part.refuse_unknown(&names, "field");
        }
        part
    }

    fn refuse_unknown(&self, known: &[&str], what: &str) {
        for (key, _) in self.table {
            let name = key.get_ref().as_ref();
            if !known.contains(&name) {
                self.push(
                    key.span(),
                    self.path_of(name),
                    "file_unknown_field",
                    format!("there is no {what} of this name"),
                    Some(format!("{what}s that would do: {}", known.join(", "))),
                );
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
                self.wrong(name, value, "a text in quotes", &format!("write it as {name} = \"value\""));
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
            self.push_value(
                name,
                value,
                "file_not_a_day",
                format!("\"{}\" is not a day", text.trim()),
                Some("write it as 2027-04-14".into()),
            );
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
        let message = format!("\"{}\" must be more than nothing", quantity.text());
        self.push_value(
            name,
            value,
            "file_not_positive",
            message,
            Some(format!("{} above nothing is needed", Q::DIMENSION.name())),
        );
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
        self.wrong(name, value, "a list", &format!("write it as {name} = [\"first\", \"second\"]"));
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
                let message = format!("\"{}\" is not a count", text.trim());
                self.push_value(
                    name,
                    value,
                    "file_not_a_count",
                    message,
                    Some("write a whole number from 1".into()),
                );
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
        let message = format!("\"{}\" must be more than 0 % and at most 100 %", text.trim());
        self.push_value(name, value, "file_share", message, Some("write it as \"5 %\"".into()));
        None
    }

    /// One of a few words.
    pub fn word<T>(&self, name: &str, words: &[&str], look_up: impl Fn(&str) -> Option<T>) -> Option<T> {
        let value = self.value(name)?;
        let text = self.text_of(name, value)?;
        let found = look_up(text.trim());
        if found.is_none() {
            let message = format!("\"{}\" is not one of the words here", text.trim());
            self.push_value(
                name,
                value,
                "file_word",
                message,
                Some(format!("words that would do: {}", words.join(", "))),
            );
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
                self.push(value.span(), self.path_of(name), error.code(), error.to_string(), error.hint());
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
                self.push(span, self.path_of(name), error.code(), error.to_string(), error.hint());
                None
            }
        }
    }

    /// Notes that a field is missing without which the part means nothing.
    pub fn missing(&self, name: &str, would_do: &str) {
        let message = "this field is missing".to_string();
        self.push(
            self.span.clone(),
            self.path_of(name),
            "file_missing_field",
            message,
            Some(would_do.to_string()),
        );
    }

    /// Notes that a field stands there with nothing in it.
    pub fn refuse_empty(&self, name: &str, would_do: &str) {
        let Some(value) = self.value(name) else { return };
        let list = value.get_ref().as_array().is_some_and(|list| list.is_empty());
        let text = value.get_ref().as_str().is_some_and(|text| text.trim().is_empty());
        if list || text {
            self.fault(name, "nothing was given".to_string(), would_do);
        }
    }

    /// Notes a mistake at a field of this part.
    pub fn fault(&self, name: &str, message: String, hint: &str) {
        let span = self.value(name).map_or_else(|| self.span.clone(), Spanned::span);
        self.push(span, self.path_of(name), "file_value", message, Some(hint.to_string()));
    }

    pub fn push_value(
        &self,
        name: &str,
        value: &Spanned<DeValue<'_>>,
        code: &'static str,
        message: String,
        hint: Option<String>,
    ) {
        self.push(value.span(), self.path_of(name), code, message, hint);
    }

    pub fn wrong(&self, name: &str, value: &Spanned<DeValue<'_>>, wanted: &str, hint: &str) {
        let found = match value.get_ref() {
            DeValue::String(_) => "a text",
            DeValue::Integer(_) | DeValue::Float(_) => "a number",
            DeValue::Boolean(_) => "true or false",
            DeValue::Datetime(_) => "a day or a time of day",
            DeValue::Array(_) => "a list",
            DeValue::Table(_) => "a { } with fields of its own",
        };
        let message = format!("{wanted} is needed, but {found} stands here");
        self.push(value.span(), self.path_of(name), "file_wrong_kind", message, Some(hint.to_string()));
    }

    fn push(
        &self,
        span: Range<usize>,
        field: String,
        code: &'static str,
        message: String,
        hint: Option<String>,
    ) {
        let error = FileError { place: None, field: Some(field), code, message, hint };
        self.errors.borrow_mut().push((span.start, error));
    }
}

/// The section a part of the file belongs to.
fn section_named(path: &str) -> Option<&'static Section> {
    SECTIONS.iter().find(|section| section.name == path)
}
