//! Each block as elements of the page.

use super::{escape, table};
use crate::layout::{answer_size, answer_width, tag_scale};
use crate::sheet::{AnswerBox, Block, Sign, Step, Tag};

/// Writes a block of a column so wide, in millimetres at the scale 1.
pub fn write(out: &mut String, block: &Block, width: f64) {
    match block {
        Block::Title { main, under, aside } => {
            out.push_str(&format!("<header class=\"title\"><div><h1>{}</h1>", escape(main)));
            paragraphs(out, under);
            out.push_str("</div><div>");
            paragraphs(out, aside);
            out.push_str("</div></header>\n");
        }
        Block::Picture { picture, told } => {
            out.push_str(&format!(
                "<img class=\"picture\" alt=\"{}\" src=\"{}\">\n",
                escape(told),
                super::data_url(picture.format().media_type(), picture.bytes())
            ));
        }
        Block::Stop(stops) => {
            out.push_str("<div class=\"stop\">");
            paragraphs(out, stops);
            out.push_str("</div>\n");
        }
        Block::Answers(boxes) => {
            out.push_str("<div class=\"answers\">");
            let each = answer_width(boxes.len(), width);
            boxes.iter().for_each(|one| answer(out, one, each));
            out.push_str("</div>\n");
        }
        Block::Drawing(drawing) => {
            out.push_str(&format!("<div class=\"drawing\" tabindex=\"0\">{}</div>\n", figures::svg(drawing)));
        }
        Block::Heading(heading) => out.push_str(&format!("<h2>{}</h2>\n", escape(heading))),
        Block::Steps { from, steps } => {
            out.push_str(&format!("<ol start=\"{from}\">"));
            steps.iter().for_each(|one| step(out, one));
            out.push_str("</ol>\n");
        }
        Block::Facts { pairs, across } => facts(out, "facts", pairs, *across),
        Block::LargeFacts { pairs, across } => facts(out, "large", pairs, *across),
        Block::Table(one) => table::write(out, one),
        Block::Care { lead, text } => {
            out.push_str(&format!("<p class=\"care\"><b>{}</b> {}</p>\n", escape(lead), escape(text)));
        }
        Block::Text(text) => out.push_str(&format!("<p>{}</p>\n", escape(text))),
        Block::Small(text) => out.push_str(&format!("<p class=\"small\">{}</p>\n", escape(text))),
        Block::Notes(notes) => {
            out.push_str("<ul class=\"notes\">");
            notes.iter().for_each(|note| out.push_str(&format!("<li>{}</li>", escape(note))));
            out.push_str("</ul>\n");
        }
        Block::Ticks { items, across } => {
            out.push_str(&format!("<ul class=\"ticks k{across}\">"));
            for item in items {
                out.push_str(&format!("<li><i></i><span>{}</span></li>", escape(item)));
            }
            out.push_str("</ul>\n");
        }
        Block::Blanks { blanks, across } => {
            out.push_str(&format!("<div class=\"blanks k{across}\">"));
            for blank in blanks {
                let (label, unit) = (escape(&blank.label), escape(&blank.unit));
                out.push_str(&format!("<div><span>{label}</span><i></i><span>{unit}</span></div>"));
            }
            out.push_str("</div>\n");
        }
        Block::Lines(lines) => {
            out.push_str(&format!("<pre>{}</pre>\n", escape(&lines.join("\n"))));
        }
        Block::Cut(text) => out.push_str(&format!("<p class=\"cut\">{}</p>\n", escape(text))),
        Block::Tags(tags) => {
            out.push_str("<div class=\"tags\">");
            tags.iter().for_each(|one| tag(out, one));
            out.push_str("</div>\n");
        }
    }
}

fn paragraphs(out: &mut String, lines: &[String]) {
    for line in lines {
        out.push_str(&format!("<p>{}</p>", escape(line)));
    }
}

fn answer(out: &mut String, answer: &AnswerBox, width: f64) {
    out.push_str(&format!(
        "<div><p class=\"above\">{}</p><p class=\"number\" style=\"--size:{}pt\">{} <span class=\"unit\">{}</span></p>",
        escape(&answer.above),
        answer_size(answer, width),
        escape(&answer.number),
        escape(&answer.unit)
    ));
    for line in &answer.below {
        out.push_str(&format!("<p class=\"below\">{}</p>", escape(line)));
    }
    out.push_str("</div>");
}

fn step(out: &mut String, step: &Step) {
    let (class, sign) = match step.sign {
        Sign::Act => (" class=\"act\"", "!"),
        Sign::Settle => ("", "?"),
        Sign::Plain => ("", ""),
    };
    let sign = if sign.is_empty() { String::new() } else { format!("<span class=\"sign\">{sign}</span>") };
    out.push_str(&format!("<li{class}>{sign}<b>{}</b> {}</li>", escape(&step.lead), escape(&step.rest)));
}

fn facts(out: &mut String, class: &str, pairs: &[(String, String)], across: usize) {
    out.push_str(&format!("<dl class=\"{class} a{across}\">"));
    for (name, value) in pairs {
        out.push_str(&format!("<div><dt>{}</dt><dd>{}</dd></div>", escape(name), escape(value)));
    }
    out.push_str("</dl>\n");
}

/// The width of a tag, in millimetres: half of the narrower paper between its margins. Our own choice.
const TAG_WIDTH: f64 = 92.0;

fn tag(out: &mut String, tag: &Tag) {
    out.push_str(&format!(
        "<div class=\"tag\" style=\"--scale:{:.2}\"><div><div class=\"hole\"></div><p class=\"number\">{}</p><p \
         class=\"small\">{}</p></div><div><p class=\"wrong\">{}</p><p>{}</p><p>{}</p><p class=\"small\">{}</p></div></div>",
        tag_scale(tag, TAG_WIDTH),
        escape(&tag.number),
        escape(&tag.side),
        escape(&tag.wrong),
        escape(&tag.read),
        escape(&tag.what),
        escape(&tag.whose)
    ));
}
