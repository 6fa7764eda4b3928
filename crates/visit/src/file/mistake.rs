//! A mistake in the file before it has its field and place: English with places for its arguments, and what would do.

use units::{Arg, Args, Coded, Phrase, UnitSystem, last_resort};

use super::error::FileError;

/// What is wrong and what would do. `{name}` in either stands for an argument.
#[derive(Clone, Debug)]
pub(crate) struct Mistake {
    code: &'static str,
    case: Option<&'static str>,
    english: &'static str,
    would_do: Option<&'static str>,
    args: Args,
}

impl Mistake {
    /// A mistake with its code and its English sentence.
    pub const fn new(code: &'static str, english: &'static str) -> Self {
        Self { code, case: None, english: last_resort(english), would_do: None, args: Args::new() }
    }

    /// A value that cannot be, for one of several reasons.
    pub const fn value(case: &'static str, english: &'static str) -> Self {
        Self::new("file_value", english).case(case)
    }

    /// A field is missing without which the part means nothing.
    pub fn missing(wanted: Wanted) -> Self {
        Self::new("file_missing_field", "this field is missing").wanting(wanted)
    }

    /// A field stands there with nothing in it.
    pub fn empty(wanted: Wanted) -> Self {
        Self::value("empty", "nothing was given").wanting(wanted)
    }

    fn wanting(self, (code, english): Wanted) -> Self {
        self.would_do("{wanted}").with("wanted", Arg::Phrases(vec![Phrase::new(code, english)]))
    }

    /// Says which of the sentences of its code is meant.
    pub const fn case(mut self, case: &'static str) -> Self {
        self.case = Some(case);
        self
    }

    /// Adds what would do.
    pub const fn would_do(mut self, english: &'static str) -> Self {
        self.would_do = Some(last_resort(english));
        self
    }

    /// Adds an argument.
    pub fn with(mut self, name: &'static str, arg: Arg) -> Self {
        self.args = self.args.with(name, arg);
        self
    }

    /// Adds letters as a person wrote them, or the name of a field.
    pub fn text(self, name: &'static str, text: &str) -> Self {
        self.with(name, Arg::Text(text.to_string()))
    }

    /// Adds names of the file, one after the other.
    pub fn names(self, name: &'static str, names: &[&str]) -> Self {
        self.text(name, &names.join(", "))
    }

    /// Adds a count of things.
    pub fn count(self, name: &'static str, count: usize) -> Self {
        self.with(name, Arg::Count(u32::try_from(count).unwrap_or(u32::MAX)))
    }

    /// The mistake at a field; its place in the text is found later.
    pub fn at(self, field: Option<String>) -> FileError {
        let fill = |english: &str| self.args.fill(english, UnitSystem::Us);
        FileError {
            place: None,
            field,
            code: self.code,
            case: self.case,
            message: fill(self.english),
            hint: self.would_do.map(fill),
            args: self.args,
        }
    }
}

/// The error of a reader or calculation at a field: its code, case and arguments stay what they are.
pub(super) fn told_by(error: &dyn Coded, field: String) -> FileError {
    FileError {
        place: None,
        field: Some(field),
        code: error.code(),
        case: error.case(),
        message: error.to_string(),
        hint: error.hint(),
        args: error.args(),
    }
}

/// What would do in a field: the code of the phrase and its English.
pub(crate) type Wanted = (&'static str, &'static str);

pub(super) const ROUND: Wanted = ("wanted_round", "the readings, under a line [[catch.round]]");
pub(super) const CATCH_TIME: Wanted =
    ("wanted_catch_time", "how long each cup was held, as time = \"30 s\", or time = \"as driven\"");
pub(super) const TIP_PRESSURE: Wanted =
    ("wanted_tip_pressure", "which tip and what was read there, as tip = 5 and pressure = \"38 psi\"");
pub(super) const CLOSED_SECTION: Wanted = ("wanted_closed_section", "which section, as section = 1");
pub(super) const PRESSURE_BEFORE: Wanted =
    ("wanted_pressure_before", "the pressure with all sections open, as before = \"40 psi\"");
pub(super) const PRESSURE_CLOSED: Wanted =
    ("wanted_pressure_closed", "the pressure with that section closed, as closed = \"42 psi\"");
pub(super) const READINGS: Wanted =
    ("wanted_readings", "a reading for each tip, as readings = [14.5, 14, \"-\"]");
pub(super) const MARKS: Wanted =
    ("wanted_marks", "what the tape shows at each tip, as marks = [\"0 in\", \"20 in\"]");
pub(super) const GAPS: Wanted = ("wanted_gaps", "each gap, as gaps = [\"20 in\", \"20 1/4 in\"]");
pub(super) const COURSE: Wanted = ("wanted_course", "the measured course, as course = \"204 ft\"");
pub(super) const RUNS: Wanted = ("wanted_runs", "each run's time, as runs = [\"27.8 s\", \"28.3 s\"]");
pub(super) const USED: Wanted = ("wanted_used", "what it took to fill up again, as used = \"6.5 gal\"");
pub(super) const USED_OVER: Wanted =
    ("wanted_used_over", "over which distance or area, as distance = \"660 ft\" or area = \"13.5 ac\"");
pub(super) const SPACING: Wanted = ("wanted_spacing", "how far the tips stand apart, as spacing = \"20 in\"");
pub(super) const ROW_SPACING: Wanted =
    ("wanted_row_spacing", "how far the rows stand apart, as row_spacing = \"30 in\"");
pub(super) const TIPS: Wanted =
    ("wanted_tips", "how many tips there are, as tips = 12, or sections = [4, 4, 4]");
pub(super) const SECTIONS: Wanted =
    ("wanted_sections", "how many tips each section has, as sections = [4, 4, 4]");
pub(super) const BAND_WIDTH: Wanted = ("wanted_band_width", "the width of a band, as band_width = \"12 in\"");
pub(super) const TIPS_PER_ROW: Wanted =
    ("wanted_tips_per_row", "how many tips are directed at a row, as tips_per_row = 3");
pub(super) const OVERLAP: Wanted =
    ("wanted_overlap", "the share of the wetted width covered again by the next pass, as overlap = \"15 %\"");
pub(super) const EFFECTIVE_SWATH: Wanted = (
    "wanted_effective_swath",
    "the width from pass to pass, as effective_swath = \"30 ft\"; it is less than what is wetted",
);
pub(super) const TARGET_RATE: Wanted = ("wanted_target_rate", "the intended rate, as rate = \"15 gal/ac\"");
pub(super) const PRODUCT_NAME: Wanted = ("wanted_product_name", "what it is called, as name = \"Product A\"");
pub(super) const PRODUCT_RATE: Wanted = ("wanted_product_rate", "its rate, as rate = \"2 pt/ac\"");
