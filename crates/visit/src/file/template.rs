//! The empty visit file to fill in: every field with a word about it, switched off by a `#` until it is filled in.

use super::fields::{Field, SECTIONS, Section, Several};

/// What a remark in the file is about. Names and values of the file are the same in every language; remarks are not.
#[derive(Clone, Copy, Debug)]
pub enum Comment {
    /// The first lines: how the file is filled in.
    Opening,
    /// What a section is for.
    Section(&'static Section),
    /// What a field is.
    Field(&'static Section, &'static Field),
}

/// The first lines in English.
const OPENING: &str = "A visit: one sprayer on one day. Take away the # before a line and put your own value in.\n\
                       Leave out what was not done. Quantities carry their unit and stand in quotes; the decimal mark is a point.\n\
                       Clean water only. Brake on, out of gear, nobody near the shaft; never a tip to the mouth.";

impl Comment {
    /// The remark in English.
    #[must_use]
    pub const fn english(&self) -> &'static str {
        match self {
            Self::Opening => OPENING,
            Self::Section(section) => section.english,
            Self::Field(_, field) => field.english,
        }
    }

    /// The stable name of the remark, by which it is found in another language: `section-catch_round`,
    /// `field-drive-course`. The three settings have the same fields, so these have one remark: `field-setting-gear`.
    #[must_use]
    pub fn key(&self) -> String {
        match self {
            Self::Opening => "section-opening".to_string(),
            Self::Section(section) => format!("section-{}", section.name.replace('.', "_")),
            Self::Field(section, field) => {
                let name = section.name;
                let of =
                    if name.ends_with(".setting") { "setting".to_string() } else { name.replace('.', "_") };
                format!("field-{of}-{}", field.name)
            }
        }
    }

    /// Every remark, in the order of the file.
    pub fn all() -> impl Iterator<Item = Self> {
        let of_section = |section: &'static Section| {
            let fields = section.fields.iter().map(move |field| Self::Field(section, field));
            core::iter::once(Self::Section(section)).chain(fields)
        };
        core::iter::once(Self::Opening).chain(SECTIONS.iter().flat_map(of_section))
    }
}

/// Returns a visit file with remarks in English. Nothing in it is switched on, so that what is not filled in is not claimed.
#[must_use]
pub fn template() -> String {
    template_in(|remark| remark.english().to_string())
}

/// Returns a visit file with remarks in the reader's language, which `say` gives. Nothing in it is switched on.
#[must_use]
pub fn template_in(say: impl Fn(&Comment) -> String) -> String {
    let mut lines = Vec::new();
    for comment in Comment::all() {
        // A remark of several lines stays a remark in each of them.
        let says = say(&comment).replace('\n', "\n# ");
        match comment {
            Comment::Opening => lines.push(format!("# {says}")),
            Comment::Section(section) => {
                lines.push(String::new());
                lines.push(format!("# {says}"));
                // The headers that need a field stay off as well, so that the file as written is an empty visit.
                lines.push(match section.several {
                    Several::No => format!("# [{}]", section.name),
                    Several::Yes => format!("# [[{}]]", section.name),
                });
            }
            Comment::Field(_, field) => lines.push(format!("# {} = {}  # {says}", field.name, field.example)),
        }
    }
    lines.push(String::new());
    lines.join("\n")
}
