//! Each block as data. Texts carry places to break where a word is wider than the line it will stand in.

use figures::{Drawing, Weight};
use report::layout::{answer_size, answer_width, height, tag_scale};
use report::picture::Format;
use report::sheet::{AnswerBox, Blank, Block, Sign, Step, Tag};
use report::style::{HEADING, LARGE, SMALL, TAG, TAG_WORD, TEXT, TITLE, UNIT};
use typst::foundations::{Array, Bytes, Dict, IntoValue, Value, dict};

use super::super::letters::{Letters, sound};
use super::table;

/// A block that is higher than this share of a page may be broken over two; a lower one is kept together. Our own
/// choice: so that a long text is never pushed off the paper and little paper is left empty.
const KEPT_TOGETHER: f64 = 0.4;

/// The width of a tag, in millimetres: half of the narrower paper between its margins. Our own choice, as in the page.
const TAG_WIDTH: f64 = 92.0;

/// Where blocks stand.
#[derive(Clone, Copy)]
pub struct Place {
    /// The width of the column, in millimetres.
    pub width: f64,
    /// The height of the page that blocks may take, in millimetres.
    pub room: f64,
    /// How large everything is.
    pub scale: f64,
}

impl Place {
    /// A block as data.
    pub fn block(&self, block: &Block) -> Value {
        let mut data = self.named(block);
        let keep = height(block, self.width, self.scale) < self.room * KEPT_TOGETHER;
        data.insert("keep".into(), keep.into_value());
        data.into_value()
    }

    /// Letters of this size in a line narrower than the column by so many millimetres.
    pub fn letters(&self, width: f64, size: f64, weight: Weight) -> Letters {
        Letters { width, size: size * self.scale, weight }
    }

    fn all(&self, texts: &[String], width: f64, size: f64, weight: Weight) -> Array {
        let letters = self.letters(width, size, weight);
        texts.iter().map(|text| letters.flowing(text).into_value()).collect()
    }

    fn one(&self, text: &str, width: f64, size: f64, weight: Weight) -> String {
        self.letters(width, size, weight).flowing(text)
    }

    fn named(&self, block: &Block) -> Dict {
        let (bold, regular) = (Weight::Bold, Weight::Regular);
        let (width, scale) = (self.width, self.scale);
        let middling = SMALL + 0.5;
        match block {
            // The two sides of the head share the width as two to one, less the white between them.
            Block::Title { main, under, aside } => dict! {
                "kind" => "title",
                "main" => self.one(main, width * 0.64, TITLE, bold),
                "under" => self.all(under, width * 0.64, TEXT, regular),
                "aside" => self.all(aside, width * 0.31, SMALL, regular),
            },
            Block::Picture { picture, told } => dict! {
                "kind" => "picture",
                "file" => Bytes::new(picture.bytes().to_vec()),
                "format" => match picture.format() {
                    Format::Png => "png",
                    Format::Jpeg => "jpg",
                },
                "shape" => picture.shape(),
                "said" => sound(told),
            },
            Block::Stop(stops) => dict! {
                "kind" => "stop",
                "texts" => self.all(stops, width - 8.0, TEXT, bold),
            },
            Block::Answers(boxes) => {
                let each = answer_width(boxes.len(), width);
                let boxes: Array = boxes.iter().map(|one| self.answer(one, each)).collect();
                dict! { "kind" => "answers", "boxes" => boxes }
            }
            Block::Drawing(drawing) => drawn(drawing),
            Block::Heading(heading) => dict! {
                "kind" => "heading",
                "text" => self.one(heading, width, HEADING, bold),
            },
            Block::Steps { from, steps } => {
                let steps: Array = steps.iter().map(|one| self.step(one, width - 12.0 * scale)).collect();
                dict! { "kind" => "steps", "from" => *from as i64, "steps" => steps }
            }
            Block::Facts { pairs, across } => {
                let each = width / (*across).max(1) as f64 - 4.0;
                let name = self.letters(each * 0.31 - 2.0, SMALL, regular);
                let value = self.letters(each * 0.69, TEXT, regular);
                facts("facts", pairs, *across, name, value)
            }
            Block::LargeFacts { pairs, across } => {
                let each = width / (*across).max(1) as f64 - 5.0;
                let name = self.letters(each, TEXT, regular);
                let value = self.letters(each, LARGE, bold);
                facts("large-facts", pairs, *across, name, value)
            }
            Block::Table(one) => table::table(one, self),
            Block::Care { lead, text } => dict! {
                "kind" => "care",
                "lead" => self.one(lead, width - 8.0, middling, bold),
                "text" => self.one(text, width - 8.0, middling, regular),
            },
            Block::Text(text) => dict! {
                "kind" => "text",
                "text" => self.one(text, width, TEXT, regular),
            },
            Block::Small(text) => dict! {
                "kind" => "small",
                "text" => self.one(text, width, SMALL, regular),
            },
            Block::Notes(notes) => dict! {
                "kind" => "notes",
                "notes" => self.all(notes, width - 5.0, middling, regular),
            },
            Block::Ticks { items, across } => {
                let each = width / (*across).max(1) as f64 - 12.0;
                dict! {
                    "kind" => "ticks",
                    "items" => self.all(items, each, TEXT, regular),
                    "across" => (*across).max(1) as i64,
                }
            }
            Block::Blanks { blanks, across } => {
                let each = width / (*across).max(1) as f64 - 5.0;
                let blanks: Array = blanks.iter().map(|one| self.blank(one, each)).collect();
                dict! { "kind" => "blanks", "blanks" => blanks, "across" => (*across).max(1) as i64 }
            }
            Block::Lines(lines) => {
                let letters = self.letters(width - 4.0, middling, regular);
                let lines: Array = lines.iter().map(|line| letters.as_written(line).into_value()).collect();
                dict! { "kind" => "lines", "lines" => lines }
            }
            Block::Cut(text) => dict! {
                "kind" => "cut",
                "text" => self.one(text, width, SMALL, regular),
            },
            Block::Tags(tags) => {
                let tags: Array = tags.iter().map(tag).collect();
                dict! { "kind" => "tags", "tags" => tags }
            }
        }
    }

    fn answer(&self, answer: &AnswerBox, width: f64) -> Value {
        let size = answer_size(answer, width / self.scale);
        dict! {
            "above" => self.one(&answer.above, width, SMALL, Weight::Bold),
            "number" => self.one(&answer.number, width, size, Weight::Bold),
            "size" => size,
            "unit" => self.one(&answer.unit, width, UNIT, Weight::Regular),
            "below" => self.all(&answer.below, width, SMALL, Weight::Regular),
        }
        .into_value()
    }

    fn step(&self, step: &Step, width: f64) -> Value {
        let sign = match step.sign {
            Sign::Act => "!",
            Sign::Settle => "?",
            Sign::Plain => "",
        };
        dict! {
            "sign" => sign,
            "act" => step.sign == Sign::Act,
            "lead" => self.one(&step.lead, width, TEXT, Weight::Bold),
            "rest" => self.one(&step.rest, width, TEXT, Weight::Regular),
        }
        .into_value()
    }

    /// A label may take three quarters of the place, the line to write on has the rest.
    fn blank(&self, blank: &Blank, width: f64) -> Value {
        dict! {
            "label" => self.one(&blank.label, width * 0.74, TEXT, Weight::Regular),
            "unit" => self.one(&blank.unit, width * 0.24, TEXT, Weight::Regular),
        }
        .into_value()
    }
}

fn facts(kind: &str, pairs: &[(String, String)], across: usize, name: Letters, value: Letters) -> Dict {
    let pairs: Array = pairs
        .iter()
        .map(|(left, right)| {
            dict! { "name" => name.flowing(left), "value" => value.flowing(right) }.into_value()
        })
        .collect();
    dict! { "kind" => kind, "pairs" => pairs, "across" => across.max(1) as i64 }
}

fn drawn(drawing: &Drawing) -> Dict {
    let said: Vec<String> = [&drawing.title, &drawing.description]
        .into_iter()
        .map(|text| sound(text).trim().trim_end_matches('.').to_owned())
        .filter(|text| !text.is_empty())
        .collect();
    dict! {
        "kind" => "drawing",
        "file" => Bytes::from_string(figures::svg(drawing)),
        "said" => format!("{}.", said.join(". ")),
    }
}

/// A tag. Its texts may hold lines of their own.
fn tag(tag: &Tag) -> Value {
    let scale = tag_scale(tag, TAG_WIDTH);
    let inner = Place { width: TAG_WIDTH - 46.0, room: TAG_WIDTH, scale };
    let text = |text: &str, size, weight| -> Array {
        text.split('\n').map(|line| inner.one(line, inner.width, size, weight).into_value()).collect()
    };
    // Beside them the number and the side, under the hole.
    let number = Letters { width: 34.0, size: TAG, weight: Weight::Bold };
    let side = Letters { width: 34.0, size: SMALL * scale, weight: Weight::Regular };
    dict! {
        "scale" => scale,
        "number" => number.flowing(&tag.number),
        "side" => side.flowing(&tag.side),
        "wrong" => text(&tag.wrong, TAG_WORD, Weight::Bold),
        "read" => text(&tag.read, TEXT, Weight::Regular),
        "what" => text(&tag.what, TEXT, Weight::Regular),
        "whose" => text(&tag.whose, SMALL, Weight::Regular),
    }
    .into_value()
}
