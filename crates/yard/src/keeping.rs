//! What the device tells about its store, and copies in and out.

use std::rc::Rc;

use notebook::{Line, ThingId};
use words::{Language, NumberFormat, Paper, Reader, Words};

use crate::effect::Effect;
use crate::event::Keep;
use crate::moment::Moment;
use crate::opened::Opened;
use crate::state::{Keeping, Notice, Screen, State};
use crate::write::With;

/// Names of what is remembered beside the notebook.
pub const READER: &str = "reader";
/// The visit that is open.
pub const OPEN: &str = "open";
/// When the last copy was.
pub const LAST_COPY: &str = "last-copy";
/// Letters that were typed and are no fact yet.
pub const TYPED: &str = "typed";
/// Said where the words of the other language did not come.
const NO_WORDS: &str = "yard-no_words";

impl State {
    /// The store is open.
    pub fn store_opened(&mut self, keeping: Keeping, lines: Vec<Line>) -> Vec<Effect> {
        self.keeping = keeping;
        self.hold(lines);
        self.refill_shelf();
        self.refold();
        self.count_only_here();
        Vec::new()
    }

    /// The device keeps nothing: everything works, and every screen says so.
    pub fn store_refused(&mut self, why: String, with: &mut With<'_>) -> Vec<Effect> {
        let (notebook, device) = (with.chance.notebook(), with.chance.device());
        self.store_opened(Keeping::Nowhere { why, notebook, device }, Vec::new())
    }

    /// Lines came from another window, device or file.
    pub fn arrived(&mut self, lines: Vec<Line>) {
        self.kept(lines);
        self.refill_shelf();
        self.refold();
        self.count_only_here();
    }

    /// Lines were not kept: they stay on the way, and it is said.
    pub fn not_kept(&mut self, why: String) {
        let notice = Notice { key: "yard-not_kept", detail: Some(why) };
        if !self.notices.contains(&notice) {
            self.notices.push(notice);
        }
        self.to_try_again = self.on_the_way.clone();
    }

    /// What was not kept is tried once more.
    pub fn try_again(&mut self) -> Vec<Effect> {
        let again = core::mem::take(&mut self.to_try_again);
        if again.is_empty() || !matches!(self.keeping, Keeping::Here { .. }) {
            return Vec::new();
        }
        self.notices.retain(|notice| notice.key != "yard-not_kept");
        vec![Effect::Append(again)]
    }

    /// What was remembered beside the notebook.
    pub fn remembered(&mut self, pairs: &[(String, String)]) -> Vec<Effect> {
        let mut effects = Vec::new();
        for (name, text) in pairs {
            match name.as_str() {
                READER => {
                    effects.extend(reader_of(text).map(|reader| self.read(reader)).into_iter().flatten())
                }
                LAST_COPY => {
                    self.safety.last_copy = text.parse().ok();
                    self.count_only_here();
                }
                OPEN => {
                    if let Some(id) = ThingId::parse(text).filter(|id| self.lines.contains_key(id)) {
                        effects.extend(self.open(id));
                    }
                }
                TYPED => self.typed_before(text),
                _ => {}
            }
        }
        effects
    }

    /// Letters that were no fact yet when the page was closed stand in their fields again.
    fn typed_before(&mut self, text: &str) {
        let Some(visit) = &mut self.visit else { return };
        for line in text.lines() {
            if let Some((field, letters)) = line.split_once('\t') {
                let text = letters.to_string();
                visit.typed.insert(field.to_string(), crate::opened::Typed { text, wrong: None });
            }
        }
    }

    /// What is typed and no fact yet, to be remembered.
    #[must_use]
    pub fn typed_text(&self) -> String {
        let typed = self.visit.iter().flat_map(|visit| &visit.typed);
        let line = |(field, typed): (&String, &crate::opened::Typed)| {
            format!("{field}\t{}", typed.text.replace(['\n', '\t'], " "))
        };
        typed.map(line).collect::<Vec<_>>().join("\n")
    }

    /// A visit that is here is opened.
    pub fn open(&mut self, id: ThingId) -> Vec<Effect> {
        let mut visit = Opened::new(id, Keep::Kept);
        visit.unfolded = None;
        self.visit = Some(visit);
        self.catching = None;
        self.hands_free = None;
        self.screen = Screen::Visit;
        self.refold();
        vec![
            Effect::Remember { name: OPEN.to_string(), text: id.to_string() },
            Effect::Address(Some(id)),
            Effect::Focus("top".to_string()),
        ]
    }

    /// Who reads. Another language is there once its words are.
    pub fn read(&mut self, reader: Reader) -> Vec<Effect> {
        if reader.language != self.reader.language {
            return vec![Effect::FetchWords(reader)];
        }
        self.read_in(Rc::new(self.words.read_by(reader)))
    }

    /// It is read in these words from now on.
    pub fn read_in(&mut self, words: Rc<Words>) -> Vec<Effect> {
        let reader = words.reader();
        let another = reader.language != self.reader.language;
        self.reader = reader;
        self.words = words;
        self.notices.retain(|notice| notice.key != NO_WORDS);
        self.refold();
        let mut effects = vec![Effect::Remember { name: READER.to_string(), text: reader_text(reader) }];
        if another {
            effects.push(Effect::Language(reader.language));
        }
        effects
    }

    /// The words of the other language did not come.
    pub fn words_not_here(&mut self) {
        if !self.notices.iter().any(|notice| notice.key == NO_WORDS) {
            self.notices.push(Notice { key: NO_WORDS, detail: None });
        }
    }

    /// A copy was handed over: nothing is only here any more.
    pub fn copy_handed(&mut self, at: &Moment) -> Vec<Effect> {
        self.safety.last_copy = Some(at.wall);
        self.count_only_here();
        vec![Effect::Remember { name: LAST_COPY.to_string(), text: at.wall.to_string() }]
    }

    /// A file was chosen: a copy of a notebook, or a visit file. What is neither is said so, and changes nothing.
    pub fn file_chosen(&mut self, name: &str, bytes: &[u8], with: &mut With<'_>) -> Vec<Effect> {
        let content = core::str::from_utf8(bytes).ok().map(notebook::read_file);
        if let Some(Err(error)) = &content
            && *error != notebook::FileDamage::NotANotebook
        {
            let says = crate::facts::said(self, error);
            self.tell("yard-file_is_none", &format!("{name}: {says}"));
            return Vec::new();
        }
        if let Some(Ok(content)) = content {
            let Some(holder) = self.holder() else { return Vec::new() };
            let whole = content.damage.is_empty();
            let (of, lines) = (content.book.id(), content.book.lines().cloned().collect());
            if of == holder.notebook {
                self.tell(if whole { "yard-file_taken_in" } else { "yard-file_taken_in_damaged" }, name);
                return vec![Effect::TakeIn(lines)];
            }
            // A notebook that nothing was written in gives its place to the one that was brought.
            if self.lines.is_empty() && self.on_the_way.is_empty() {
                self.tell(if whole { "yard-file_moved_in" } else { "yard-file_moved_in_damaged" }, name);
                return vec![Effect::Adopt { notebook: of, lines }];
            }
            self.tell("yard-file_other_notebook", name);
            return Vec::new();
        }
        match notebook::entries_of_file(bytes, || with.chance.row()) {
            Ok(entries) => {
                let id = with.chance.thing();
                let mut effects = self.begin_as(id, Keep::Kept);
                let told: Vec<notebook::Told> = entries.into_iter().map(notebook::Told::from).collect();
                effects.extend(self.write(&told, with));
                self.refill_shelf();
                self.tell("yard-file_visit_taken_in", name);
                effects
            }
            Err(notebook::ImportError::File(errors)) => {
                let first = errors.list().first().map(|error| crate::facts::said(self, error));
                self.tell("yard-file_is_none", &format!("{name}: {}", first.unwrap_or_default()));
                Vec::new()
            }
        }
    }

    fn tell(&mut self, key: &'static str, detail: &str) {
        self.notices.push(Notice { key, detail: Some(detail.to_string()) });
    }
}

/// A reader's four settings as a few words.
#[must_use]
pub fn reader_text(reader: Reader) -> String {
    let numbers = match reader.numbers {
        NumberFormat::Point => "point",
        NumberFormat::Comma => "comma",
    };
    let units = match reader.units {
        units::UnitSystem::Us => "us",
        units::UnitSystem::Metric => "metric",
    };
    format!("{} {numbers} {} {units}", reader.language.tag(), reader.paper.name())
}

/// The settings out of these words; none where they are no such words.
#[must_use]
pub fn reader_of(text: &str) -> Option<Reader> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let [language, numbers, paper, units] = words.as_slice() else { return None };
    Some(Reader {
        language: Language::ALL.into_iter().find(|known| known.tag() == *language)?,
        numbers: match *numbers {
            "point" => NumberFormat::Point,
            "comma" => NumberFormat::Comma,
            _ => return None,
        },
        paper: [Paper::Letter, Paper::A4].into_iter().find(|known| known.name() == *paper)?,
        units: match *units {
            "us" => units::UnitSystem::Us,
            "metric" => units::UnitSystem::Metric,
            _ => return None,
        },
    })
}
