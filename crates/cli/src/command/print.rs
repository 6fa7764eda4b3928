//! `evenswath print`: sheets to hand over.

use std::path::Path;

use report::make::{self, Maker, PaperFor};
use serde_json::json;
use units::{Arg, Args};
use visit::Visit;
use words::Words;

use super::sheet::{SecondReader, write, written_as};
use super::visit_check::{read, work_out};
use crate::args::{FromVisit, PaperArgs, PrintArgs, PrintSheet, SheetArgs};
use crate::error::CliError;
use crate::out::Answer;

/// Makes the sheet that was asked for.
pub fn run(args: &PrintArgs, words: &Words) -> Result<Answer, CliError> {
    match &args.sheet {
        PrintSheet::Cups(from) => from_visit("cups", from, words),
        PrintSheet::Cab(from) => from_visit("cab", from, words),
        PrintSheet::Tags(from) => from_visit("tags", from, words),
        PrintSheet::Paper(paper) => self::paper(paper, words),
        PrintSheet::Before(sheet) => {
            let second = SecondReader::of(sheet, words);
            hand_over("before", make::before(&second.readers(words), Maker::default()), sheet, words)
        }
    }
}

fn from_visit(name: &'static str, from: &FromVisit, words: &Words) -> Result<Answer, CliError> {
    // A file that nothing can be written to is told before anything is worked out.
    written_as(&from.sheet)?;
    let visit = read(&from.file)?;
    let outcome = work_out(&from.file, &visit, words)?;
    let second = SecondReader::of(&from.sheet, words);
    let (readers, maker) = (second.readers(words), Maker::default());
    let sheet = match name {
        "cab" => Some(make::cab(&readers, &visit, &outcome, maker)),
        "cups" => make::cups(&readers, &visit, &outcome, maker),
        _ => make::tags(&readers, &visit, &outcome, maker),
    };
    match sheet {
        Some(sheet) => hand_over(name, sheet, &from.sheet, words),
        None if name == "tags" => Ok(no_tags(words)),
        None => Err(CliError::usage("print_no_cups", Args::new()).at(super::input::place(&from.file))),
    }
}

/// That no tip asks for a tag is an answer, not a mistake.
fn no_tags(words: &Words) -> Answer {
    let mut answer = Answer::of(json!({ "sheet": "tags", "pages": 0, "written": null }));
    answer.main(words.label("tags-none"));
    answer
}

fn paper(args: &PaperArgs, words: &Words) -> Result<Answer, CliError> {
    written_as(&args.sheet)?;
    let of = match &args.file {
        Some(file) => of_visit(&read(file)?),
        None => {
            let sections: u32 = args.sections.iter().fold(0, |sum, size| sum.saturating_add(*size));
            let tips = match (args.tips, args.sections.is_empty()) {
                (Some(tips), false) if tips != sections => {
                    let args =
                        Args::new().with("tips", Arg::Count(tips)).with("sections", Arg::Count(sections));
                    return Err(CliError::usage("print_sections", args));
                }
                (Some(tips), _) => tips,
                (None, false) => sections,
                (None, true) => USUAL_TIPS,
            };
            PaperFor { tips, sections: args.sections.clone(), sprayer: String::new(), farm: String::new() }
        }
    };
    if of.tips > make::MOST_TIPS {
        let args = Args::new().with("tips", Arg::Count(of.tips)).with("most", Arg::Count(make::MOST_TIPS));
        return Err(CliError::usage("print_too_many_tips", args));
    }
    let second = SecondReader::of(&args.sheet, words);
    hand_over("paper", make::paper(&second.readers(words), &of, Maker::default()), &args.sheet, words)
}

/// So many tips has a small mounted boom. Our own choice, as in the demo.
const USUAL_TIPS: u32 = 12;

fn of_visit(visit: &Visit) -> PaperFor {
    let machine = visit.machine.as_ref();
    let mut sections: Vec<u32> = Vec::new();
    let mut last = None;
    for position in machine.and_then(|machine| machine.boom()).map_or(&[][..], |boom| boom.positions()) {
        match sections.last_mut() {
            Some(size) if last == Some(position.section) => *size += 1,
            _ => sections.push(1),
        }
        last = Some(position.section);
    }
    if sections.len() < 2 {
        sections.clear();
    }
    let text = |text: &Option<String>| text.clone().unwrap_or_default();
    PaperFor {
        tips: machine.map_or(USUAL_TIPS, visit::record::Machine::tips),
        sections,
        sprayer: text(&visit.about.sprayer),
        farm: text(&visit.about.farm),
    }
}

/// Writes the sheet where it was asked for, or gives the page as the answer.
fn hand_over(
    name: &'static str,
    sheet: report::Sheet,
    args: &SheetArgs,
    words: &Words,
) -> Result<Answer, CliError> {
    let sheet = super::sheet::with_picture(sheet, args.picture.as_deref(), words)?;
    let pages = sheet.pages.len();
    let Some(path) = args.to.as_deref() else {
        let page = report::html::page(&sheet);
        let mut answer = Answer::of(json!({ "sheet": name, "pages": pages, "written": null, "html": page }));
        answer.verbatim(page.trim_end());
        return Ok(answer);
    };
    write(&sheet, path)?;
    let mut answer = Answer::of(json!({ "sheet": name, "pages": pages, "written": shown(path) }));
    answer.plain(words.say("print-written", &[("file", shown(path).into())]));
    Ok(answer)
}

fn shown(path: &Path) -> String {
    path.display().to_string()
}
