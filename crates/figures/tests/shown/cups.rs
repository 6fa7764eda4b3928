//! Rows of cups under invented booms.

use figures::{
    CupMark, CupShown, Density, Drawing, LimitBand, RowOfCups, Seen, TipGroup, TipShape, TipShown,
};

#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Language {
    English,
    Spanish,
}

/// A boom to draw.
#[derive(Clone, Copy)]
pub struct Boom {
    pub tips: u32,
    pub section: u32,
    pub density: Density,
    pub language: Language,
}

fn word(mark: CupMark, language: Language) -> &'static str {
    match (mark, language) {
        (CupMark::Quiet, Language::English) => "within",
        (CupMark::Quiet, Language::Spanish) => "dentro",
        (CupMark::High, Language::English) => "high",
        (CupMark::High, Language::Spanish) => "alta",
        (CupMark::Low, Language::English) => "low",
        (CupMark::Low, Language::Spanish) => "baja",
        (CupMark::CannotTell, Language::English) => "cannot tell",
        (CupMark::CannotTell, Language::Spanish) => "no se sabe",
        (CupMark::Plugged, Language::English) => "plugged",
        (CupMark::Plugged, Language::Spanish) => "tapada",
        (CupMark::NotCaught, Language::English) => "not caught",
        (CupMark::NotCaught, Language::Spanish) => "sin medir",
        (CupMark::Worn, Language::English) => "worn",
        (CupMark::Worn, Language::Spanish) => "gastada",
    }
}

/// Readings in half ounces around 14½; some tips are off.
fn cup(number: u32, boom: Boom) -> CupShown {
    let mark = match number {
        4 => CupMark::CannotTell,
        7 => CupMark::High,
        11 | 38 | 170 => CupMark::Plugged,
        15 | 39 => CupMark::Low,
        16 | 130 => CupMark::NotCaught,
        18 | 19 | 66 | 67 | 68 => CupMark::Worn,
        23 | 101 => CupMark::CannotTell,
        _ => CupMark::Quiet,
    };
    let halves = match mark {
        CupMark::High => 34,
        CupMark::Low => 24,
        CupMark::Plugged => 0,
        CupMark::Worn => 33 + number % 2,
        CupMark::CannotTell => 26,
        _ => 28 + (number * 7 + number / 3) % 3,
    };
    let reading = match (mark, halves % 2) {
        (CupMark::NotCaught, _) => String::new(),
        (_, 0) => format!("{}", halves / 2),
        (_, _) => format!("{}½", halves / 2),
    };
    let level = f64::from(halves) / 29.0;
    let caught = mark != CupMark::NotCaught;
    CupShown {
        number,
        id: format!("tip-{number}"),
        place: Some(f64::from(number - 1) * 0.508),
        level: caught.then_some(level),
        low: caught.then_some((level - 0.035).max(0.0)),
        high: caught.then_some(level + 0.035),
        reading,
        mark,
        word: word(mark, boom.language).to_owned(),
        group: None,
        likely: None,
    }
}

pub fn row(boom: Boom) -> RowOfCups {
    let cups: Vec<CupShown> = (1..=boom.tips).map(|number| cup(number, boom)).collect();
    let sections =
        if boom.section == 0 { Vec::new() } else { vec![boom.section; (boom.tips / boom.section) as usize] };
    let (title, limit, left, right, language) = match boom.language {
        Language::English => ("The row of cups", "limit", "left end", "right end, as the driver sits", "en"),
        Language::Spanish => (
            "La fila de vasos",
            "límite",
            "extremo izquierdo",
            "extremo derecho, visto desde el asiento",
            "es",
        ),
    };
    RowOfCups {
        id: format!("row-{}-{:?}", boom.tips, boom.density).to_lowercase(),
        language: language.to_owned(),
        title: title.to_owned(),
        description: format!("{} · Willow Bend Farm.", boom.tips),
        cups,
        sections,
        over_sections: Vec::new(),
        groups: Vec::new(),
        limit: Some(LimitBand {
            below: Some(0.1),
            above: Some(0.1),
            above_label: "+10 %".to_owned(),
            label: limit.to_owned(),
            below_label: "−10 %".to_owned(),
        }),
        density: boom.density,
        per_row: None,
        seen: Seen::AsTheDriverSits,
        left_end: left.to_owned(),
        right_end: right.to_owned(),
    }
}

pub fn all(all: &mut Vec<(String, Drawing)>) {
    use Density::{Dense, Roomy, Usual};
    use Language::{English, Spanish};
    let cases = [
        (5, 0, Roomy, English),
        (12, 4, Roomy, English),
        (12, 4, Roomy, Spanish),
        (20, 5, Roomy, English),
        (20, 5, Usual, Spanish),
        (24, 6, Usual, English),
        (36, 9, Usual, English),
        (72, 12, Usual, Spanish),
        (72, 12, Dense, English),
        (216, 24, Dense, Spanish),
    ];
    for (tips, section, density, language) in cases {
        let boom = Boom { tips, section, density, language };
        let drawing = row(boom);
        let name = format!("cups-{tips}-{density:?}-{}", drawing.language).to_lowercase();
        all.push((name, drawing.draw()));
    }
    all.push(("cups-odd".to_owned(), odd().draw()));
    all.push(("cups-groups".to_owned(), grouped(Language::English).draw()));
    all.push(("cups-groups-es".to_owned(), grouped(Language::Spanish).draw()));
    all.push((
        "cups-likely".to_owned(),
        likely(Boom { tips: 12, section: 4, density: Roomy, language: English }),
    ));
    all.push((
        "cups-likely-es".to_owned(),
        likely(Boom { tips: 36, section: 9, density: Usual, language: Spanish }),
    ));
    all.push((
        "cups-likely-72".to_owned(),
        likely(Boom { tips: 72, section: 12, density: Dense, language: English }),
    ));
    let mut front = row(Boom { tips: 12, section: 4, density: Roomy, language: English });
    front.seen = Seen::FromTheFront;
    front.id = "front".to_owned();
    all.push(("cups-front".to_owned(), front.draw()));
}

/// What each tip most likely is, every shape, and a section that loses flow.
fn likely(boom: Boom) -> Drawing {
    use TipShape::{AtPlace, DoubtfulCup, Mended, OtherSize, PartlyPlugged, Plugged, Sound, StillOff, Worn};
    let mut row = row(boom);
    row.id = format!("likely-{}", row.id);
    for cup in row.cups.iter_mut().filter(|cup| cup.mark != CupMark::NotCaught) {
        let (shape, english, spanish) = match cup.number {
            2 | 40 => (Worn, "worn", "gastada"),
            4 | 5 => (PartlyPlugged, "partly plugged", "medio tapada"),
            7 => (OtherSize, "other size", "otra medida"),
            9 => (DoubtfulCup, "doubtful cup", "vaso dudoso"),
            8 => (AtPlace, "body or hose", "portaboquilla"),
            11 => (Plugged, "plugged", "tapada"),
            1 => (Mended, "now 14½", "ahora 14½"),
            12 => (StillOff, "now 17", "ahora 17"),
            _ => (Sound, "sound", "sana"),
        };
        let word = if boom.language == Language::English { english } else { spanish };
        cup.likely = Some(TipShown { shape, word: word.to_owned() });
    }
    let (over, also) = match boom.language {
        Language::English => ("Section 2: most likely 9 % less", "Section 3: most likely shut"),
        Language::Spanish => {
            ("Sección 2: lo más probable, 9 % menos", "Sección 3: lo más probable es que esté cerrada")
        }
    };
    row.over_sections = vec![(1, over.to_owned()), (2, also.to_owned())];
    row.draw()
}

/// Uneven places, twins, over the brim, a limit only above.
pub fn odd() -> RowOfCups {
    let mut odd = row(Boom { tips: 12, section: 6, density: Density::Roomy, language: Language::English });
    odd.id = "odd".to_owned();
    let places = [0.0, 0.5, 1.02, 1.5, 2.0, 2.0, 2.7, 3.2, 3.45, 4.2, 4.7, 5.2];
    for (cup, place) in odd.cups.iter_mut().zip(places) {
        cup.place = Some(place);
    }
    let over = &mut odd.cups[8];
    (over.level, over.mark, over.reading, over.word) =
        (Some(2.4), CupMark::High, "over 32".to_owned(), "over the brim".to_owned());
    let none = &mut odd.cups[1];
    (none.level, none.low, none.high, none.reading) = (Some(0.0), None, None, "0".to_owned());
    if let Some(limit) = &mut odd.limit {
        limit.below = None;
        limit.above_label = "at most +10 %".to_owned();
    }
    odd
}

/// End tips of half flow.
pub fn grouped(language: Language) -> RowOfCups {
    let mut grouped = row(Boom { tips: 14, section: 0, density: Density::Roomy, language });
    grouped.id = format!("grouped-{}", grouped.language);
    grouped.groups = vec![TipGroup {
        label: match language {
            Language::English => "end tips, half flow".to_owned(),
            Language::Spanish => "boquillas de los extremos, medio caudal".to_owned(),
        },
        about: 0.5,
    }];
    for index in [0, 1, 13] {
        let cup = &mut grouped.cups[index];
        cup.group = Some(0);
        cup.level = Some(0.49);
        (cup.low, cup.high) = (Some(0.47), Some(0.51));
        cup.reading = "7".to_owned();
    }
    grouped
}
