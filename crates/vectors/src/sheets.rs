//! Every sheet of the demo visit in both languages, and the visit in a notebook: each by its check sum, because a phone's
//! page and a laptop's must be the same to the last letter.

use std::error::Error;

use notebook::{
    About, At, DeviceId, Draft, Hash, Kind, LineId, Notebook, NotebookId, RowId, ThingId, VERSION, Written,
};
use report::make::{self, Maker, PaperFor, Readers};
use units::UnitSystem;
use words::{Language, NumberFormat, Paper, Reader, Words};

use crate::List;

const DEMO: &str = include_str!("../../../demo/willow-bend.toml");

pub(crate) fn put(list: &mut List) {
    list.attempt("demo sheets", sheets);
    list.attempt("demo in a notebook", book);
}

/// A check sum as eight numbers, which a comparison of numbers can take.
fn sum(list: &mut List, name: &str, text: &str) {
    let hash = Hash::of_bytes(text.as_bytes());
    for (part, bytes) in (1..).zip(hash.bytes().chunks(4)) {
        let number = bytes.iter().fold(0_u32, |number, byte| (number << 8) | u32::from(*byte));
        list.put(format!("{name}, check sum {part}"), f64::from(number));
    }
}

fn sheets(list: &mut List) -> Result<(), Box<dyn Error>> {
    let visit = visit::file::read(DEMO.as_bytes())?;
    let outcome = visit::findings::findings(&visit, UnitSystem::Us)?;
    // A fixed version, so that a release does not change the digits.
    let maker = Maker { name: "Evenswath", version: "0" };
    for language in Language::ALL {
        let words = Words::new(Reader {
            language,
            numbers: NumberFormat::Comma,
            paper: Paper::A4,
            units: UnitSystem::Us,
        });
        let readers = Readers::one(&words);
        let of = PaperFor { tips: 20, sections: vec![7, 6, 7], sprayer: String::new(), farm: String::new() };
        let mut all = vec![
            ("visit", make::visit(&readers, &visit, &outcome, maker)),
            ("cab", make::cab(&readers, &visit, &outcome, maker)),
            ("paper", make::paper(&readers, &of, maker)),
            ("before", make::before(&readers, maker)),
        ];
        all.extend(make::cups(&readers, &visit, &outcome, maker).map(|sheet| ("cups", sheet)));
        all.extend(make::tags(&readers, &visit, &outcome, maker).map(|sheet| ("tags", sheet)));
        for (name, sheet) in all {
            sum(list, &format!("sheet {name} in {}", language.tag()), &report::html::page(&sheet));
        }
    }
    Ok(())
}

fn book(list: &mut List) -> Result<(), Box<dyn Error>> {
    let mut rows = 0;
    let entries = notebook::entries_of_file(DEMO.as_bytes(), || {
        rows += 1;
        RowId::from_bits(rows)
    })?;
    let mut book = Notebook::new(NotebookId::from_bits(1));
    let about = About { kind: Kind::Visit, id: ThingId::from_bits(2) };
    for (number, entry) in (1_u32..).zip(entries) {
        let draft = Draft {
            id: LineId::from_bits(u128::from(number)),
            about,
            at: At { utc_milliseconds: i64::from(number), offset_minutes: -300 },
            version: VERSION,
            written: Written::new(notebook::Told::from(entry).text(), u128::from(number).to_be_bytes()),
        };
        book.write(DeviceId::from_bits(3), draft);
    }
    sum(list, "notebook file", &notebook::write_file(&book));
    let folded = notebook::folded(&book);
    let visit = folded.visits.get(&about.id).ok_or("the visit")?;
    sum(list, "notebook folded", &visit.file());
    Ok(())
}
