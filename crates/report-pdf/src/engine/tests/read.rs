//! The file read back, as a reader of PDF files has it.

use lopdf::{Dictionary, Document, Object};

/// A file read back.
pub struct Read(Document);

impl Read {
    pub fn of(file: &[u8]) -> Self {
        Self(Document::load_mem(file).unwrap())
    }

    pub fn pages(&self) -> usize {
        self.0.get_pages().len()
    }

    /// The text of all pages without any white, as it is found by a search; without the foot that stands on each, so
    /// that what runs on from one page to the next stays together.
    pub fn text(&self, foot: &str) -> String {
        let foot = without_white(foot);
        let pages = self.pages();
        let mut all = String::new();
        for (index, page) in self.0.get_pages().into_keys().enumerate() {
            let text = without_white(&self.0.extract_text(&[page]).unwrap());
            let text = text.strip_suffix(&format!("{}/{pages}", index + 1)).unwrap_or(&text);
            all += text.strip_suffix(&foot).unwrap_or_else(|| panic!("no foot at the end of\n{text}"));
        }
        all + &foot
    }

    pub fn catalog(&self) -> &Dictionary {
        self.0.catalog().unwrap()
    }

    /// A dictionary of the catalog.
    pub fn of_catalog(&self, key: &[u8]) -> &Dictionary {
        self.dictionary(self.catalog().get(key).unwrap())
    }

    pub fn dictionary<'a>(&'a self, object: &'a Object) -> &'a Dictionary {
        self.0.dereference(object).unwrap().1.as_dict().unwrap()
    }

    /// The title in the file's own description.
    pub fn title(&self) -> String {
        let info = self.dictionary(self.0.trailer.get(b"Info").unwrap());
        text(info.get(b"Title").unwrap())
    }

    /// Every dictionary of the file.
    fn dictionaries(&self) -> impl Iterator<Item = &Dictionary> {
        self.0.objects.values().filter_map(|object| match object {
            Object::Dictionary(one) => Some(one),
            Object::Stream(stream) => Some(&stream.dict),
            _ => None,
        })
    }

    /// The parts of the document by what they are, each with what it says instead of itself.
    pub fn parts(&self) -> Vec<(String, Option<String>)> {
        self.dictionaries()
            .filter_map(|one| {
                let name = one.get(b"S").and_then(Object::as_name).ok()?;
                one.get(b"P").ok()?;
                let said = one.get(b"Alt").ok().map(text);
                Some((String::from_utf8_lossy(name).into_owned(), said))
            })
            .collect()
    }

    /// What stands directly under parts of this name.
    pub fn under(&self, name: &[u8]) -> Vec<String> {
        let kids =
            self.dictionaries().filter(|one| one.get(b"S").and_then(Object::as_name).ok() == Some(name));
        kids.filter_map(|one| one.get(b"K").ok())
            .flat_map(|kids| kids.as_array().cloned().unwrap_or_else(|_| vec![kids.clone()]))
            .filter_map(|kid| self.0.dereference(&kid).ok()?.1.as_dict().ok()?.get(b"S").ok().cloned())
            .filter_map(|part| Some(String::from_utf8_lossy(part.as_name().ok()?).into_owned()))
            .collect()
    }

    /// The languages that parts of the document name.
    pub fn languages(&self) -> Vec<String> {
        self.dictionaries().filter_map(|one| one.get(b"Lang").ok()).map(text).collect()
    }

    /// The names of the fonts in the file, and whether each comes with it.
    pub fn fonts(&self) -> Vec<(String, bool)> {
        self.dictionaries()
            .filter(|one| one.has_type(b"FontDescriptor"))
            .map(|one| {
                let name = one.get(b"FontName").and_then(Object::as_name).unwrap();
                let with_it = one.has(b"FontFile2") || one.has(b"FontFile3");
                (String::from_utf8_lossy(name).into_owned(), with_it)
            })
            .collect()
    }
}

fn text(object: &Object) -> String {
    lopdf::decode_text_string(object).unwrap()
}

/// A text without any white.
pub fn without_white(text: &str) -> String {
    text.chars().filter(|sign| !sign.is_whitespace()).collect()
}
