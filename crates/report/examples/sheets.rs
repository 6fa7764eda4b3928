//! Writes every sheet of a visit into a folder: `cargo run -p report --example sheets -- visit.toml folder`.
//!
//! Beside the pages it writes `sheets.json`: of each page how it lies, whether it must stay on one sheet of paper, and the
//! heights that the layout reckons with. `cargo xtask browser` holds what a browser makes of the pages against these.
// An example is a program: it reads a visit and writes pages.
#![allow(clippy::disallowed_methods)]

use std::collections::BTreeMap;
use std::path::Path;

use report::layout::{self, page_height};
use report::make::{self, Maker, PaperFor, Readers};
use report::sheet::{Lie, Page, Run};
use report::style::{column_width, room};
use report::{Sheet, html};
use units::UnitSystem;
use visit::Visit;
use words::{Language, Paper, Reader, Words};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut given = std::env::args().skip(1);
    let (file, folder) = (given.next().unwrap_or_default(), given.next().unwrap_or_default());
    let visit = visit::file::read(&std::fs::read(&file)?)?;
    let folder = Path::new(&folder);
    std::fs::create_dir_all(folder)?;
    let words = |language, paper, units| Words::new(Reader { language, paper, units, ..Reader::default() });
    // Letter paper with US units, A4 with metric ones: as they are used together.
    let of = |language| {
        [(Paper::Letter, UnitSystem::Us), (Paper::A4, UnitSystem::Metric)]
            .map(|(paper, units)| words(language, paper, units))
    };
    let ([english, english_a4], [spanish, spanish_a4]) = (of(Language::English), of(Language::Spanish));
    let mut told = Vec::new();
    for (name, first, beside) in [
        ("en", &english, None),
        ("es", &spanish, None),
        ("both", &english, Some(&spanish)),
        ("en-a4", &english_a4, None),
        ("es-a4", &spanish_a4, None),
        ("both-a4", &spanish_a4, Some(&english_a4)),
    ] {
        for (kind, sheet) in sheets(&Readers { first, beside }, &visit)? {
            std::fs::write(folder.join(format!("{kind}-{name}.html")), html::page(&sheet))?;
            told.push(told_of(&format!("{kind}-{name}"), &layout::fitted(sheet)));
        }
    }
    std::fs::write(folder.join("sheets.json"), format!("[{}]\n", told.join(",\n")))?;
    Ok(())
}

/// Every sheet there is of a visit.
fn sheets(
    readers: &Readers<'_>,
    visit: &Visit,
) -> Result<Vec<(&'static str, Sheet)>, Box<dyn std::error::Error>> {
    let maker = Maker::default();
    let outcome = visit::findings::findings(visit, readers.first.reader().units)?;
    let machine = visit.machine.as_ref();
    let mut sections: BTreeMap<u16, u32> = BTreeMap::new();
    for position in machine.and_then(|machine| machine.boom()).map_or(&[][..], |boom| boom.positions()) {
        *sections.entry(position.section).or_default() += 1;
    }
    let paper_for = PaperFor {
        // Our own choice: a boom as common as any, where the visit does not say.
        tips: machine.map_or(12, visit::record::Machine::tips),
        sections: if sections.len() > 1 { sections.into_values().collect() } else { Vec::new() },
        sprayer: visit.about.sprayer.clone().unwrap_or_default(),
        farm: visit.about.farm.clone().unwrap_or_default(),
    };
    let mut sheets = vec![
        ("visit", make::visit(readers, visit, &outcome, maker)),
        ("cab", make::cab(readers, visit, &outcome, maker)),
        ("paper", make::paper(readers, &paper_for, maker)),
        ("before", make::before(readers, maker)),
    ];
    sheets.extend(make::cups(readers, visit, &outcome, maker).map(|sheet| ("cups", sheet)));
    sheets.extend(make::tags(readers, visit, &outcome, maker).map(|sheet| ("tags", sheet)));
    Ok(sheets)
}

/// What the layout reckons of a sheet, as JSON.
fn told_of(name: &str, sheet: &Sheet) -> String {
    let pages: Vec<String> = sheet.pages.iter().map(|page| page_told(sheet, page)).collect();
    format!(
        "{{\"name\":\"{name}\",\"language\":\"{}\",\"paper\":\"{}\",\"pages\":[{}]}}",
        sheet.language.tag(),
        sheet.paper.name(),
        pages.join(",")
    )
}

fn page_told(sheet: &Sheet, page: &Page) -> String {
    let columns = page.columns.iter().map(|column| {
        let width = column_width(sheet.paper, page);
        let heights: Vec<String> = column
            .blocks
            .iter()
            .map(|block| format!("{:.2}", layout::height(block, width, page.scale)))
            .collect();
        format!("{{\"language\":\"{}\",\"blocks\":[{}]}}", column.language.tag(), heights.join(","))
    });
    format!(
        "{{\"one\":{},\"on_its_side\":{},\"scale\":{:.3},\"reckoned_mm\":{:.2},\"room_mm\":{:.2},\"columns\":[{}]}}",
        page.run == Run::OnePage,
        page.lie == Lie::OnItsSide,
        page.scale,
        page_height(sheet.paper, page, page.scale),
        room(sheet.paper, page).1,
        columns.collect::<Vec<_>>().join(",")
    )
}
