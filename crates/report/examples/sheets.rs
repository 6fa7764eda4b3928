//! Writes every sheet of a visit into a folder: `cargo run -p report --example sheets -- visit.toml folder`.

use std::path::Path;

use report::make::{self, Maker, PaperFor, Readers};
use words::{Language, Paper, Reader, Words};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut given = std::env::args().skip(1);
    let (file, folder) = (given.next().unwrap_or_default(), given.next().unwrap_or_default());
    let visit = visit::file::read(&std::fs::read(&file)?)?;
    let folder = Path::new(&folder);
    std::fs::create_dir_all(folder)?;
    let (english, spanish) = (Words::of(Language::English), Words::of(Language::Spanish));
    let a4 = Words::new(Reader { language: Language::Spanish, paper: Paper::A4, ..Reader::default() });
    let outcome = visit::findings::findings(&visit, english.reader().units)?;
    let maker = Maker::default();
    let both = Readers { first: &english, beside: Some(&spanish) };
    for (name, readers) in [
        ("en", Readers::one(&english)),
        ("es", Readers::one(&spanish)),
        ("es-a4", Readers::one(&a4)),
        ("both", both),
    ] {
        let tips = visit.machine.as_ref().map_or(12, visit::record::Machine::tips);
        let of = PaperFor { tips, sections: Vec::new(), sprayer: String::new(), farm: String::new() };
        let mut sheets = vec![
            ("visit", make::visit(&readers, &visit, &outcome, maker)),
            ("cab", make::cab(&readers, &visit, &outcome, maker)),
            ("paper", make::paper(&readers, &of, maker)),
            ("before", make::before(&readers, maker)),
        ];
        sheets.extend(make::cups(&readers, &visit, &outcome, maker).map(|sheet| ("cups", sheet)));
        sheets.extend(make::tags(&readers, &visit, &outcome, maker).map(|sheet| ("tags", sheet)));
        for (sheet, description) in sheets {
            std::fs::write(folder.join(format!("{sheet}-{name}.html")), report::html::page(&description))?;
        }
    }
    Ok(())
}
