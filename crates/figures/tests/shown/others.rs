//! Drives, rates, gaps and spreads of invented sprayers.

use super::cups::Language;
use figures::Drawing;
use figures::{
    Across, Allowed, DotShown, DriveFigure, GapRow, GapShown, GrooveShown, GroundRow, Labelled, LimitBand,
    Mark, MoveShown, RateScale, RunShown, Spot, SpreadStrip, TipOnTape, TipOverGround, Toward, Way,
};

fn labelled(value: f64, label: &str) -> Labelled {
    Labelled { value, label: label.to_owned() }
}

pub fn drive(language: Language) -> DriveFigure {
    let (run, length, mean_label) = match language {
        Language::English => ("run", "200 ft", "mean of both ways; most likely 4.8 to 5.0"),
        Language::Spanish => {
            ("pasada", "200 ft (61 m)", "promedio de ida y vuelta; lo más probable, de 4.8 a 5.0")
        }
    };
    let times = [("28.0 s", "4.9 mph"), ("27.4 s", "5.0 mph"), ("28.3 s", "4.8 mph")];
    DriveFigure {
        id: format!("drive-{run}"),
        language: "en".to_owned(),
        title: "The timed drive".to_owned(),
        description: "Three runs over 200 ft.".to_owned(),
        length: length.to_owned(),
        runs: times
            .iter()
            .enumerate()
            .map(|(index, (time, speed))| RunShown {
                id: format!("run-{}", index + 1),
                label: format!("{run} {}", index + 1),
                way: if index % 2 == 0 { Way::There } else { Way::Back },
                time: (*time).to_owned(),
                speed: (*speed).to_owned(),
            })
            .collect(),
        mean: "4.9 mph".to_owned(),
        mean_label: mean_label.to_owned(),
    }
}

pub fn rate(language: Language) -> RateScale {
    let (value, doubt, wanted, allowed, least, most) = match language {
        Language::English => (
            "14.6 gal/ac",
            "most likely 14.1 to 15.1",
            "wanted 15",
            "within 5 %",
            "least carrier on the label: 10",
            "most: 20",
        ),
        Language::Spanish => (
            "14.6 gal/acre",
            "lo más probable: de 14.1 a 15.1",
            "se quiere 15",
            "hasta 5 % de diferencia",
            "mínimo de agua según la etiqueta: 10",
            "máximo según la etiqueta: 20",
        ),
    };
    RateScale {
        id: format!("rate-{}", value.len()),
        language: "en".to_owned(),
        title: "What it puts out".to_owned(),
        description: "14.6 gallons per acre.".to_owned(),
        value: labelled(14.6, value),
        low: Some(14.1),
        high: Some(15.1),
        doubt_label: doubt.to_owned(),
        mark: Mark::Quiet,
        wanted: Some(labelled(15.0, wanted)),
        allowed: Some(Allowed { low: 14.25, high: 15.75, label: allowed.to_owned() }),
        least: Some(labelled(10.0, least)),
        most: Some(labelled(20.0, most)),
        ticks: [10, 12, 14, 16, 18, 20]
            .iter()
            .map(|tick| labelled(f64::from(*tick), &tick.to_string()))
            .collect(),
    }
}

pub fn gaps(tips: u32) -> GapRow {
    let mut place = 0.0;
    let mut row = GapRow {
        id: format!("gaps-{tips}"),
        language: "en".to_owned(),
        title: "Tips on the tape".to_owned(),
        description: "Gaps between tips.".to_owned(),
        tips: Vec::new(),
        gaps: Vec::new(),
        moves: vec![MoveShown { number: 4, toward: Toward::Left, label: "1½ in".to_owned() }],
        per_row: None,
    };
    for number in 1..=tips {
        row.tips.push(TipOnTape { number, place });
        let (inches, length, off, mark) = match number {
            3 => (21.5, "21½ in", "+1½ in", Mark::High),
            4 => (18.5, "18½ in", "−1½ in", Mark::Low),
            8 => (20.5, "20½ in", "+½ in", Mark::CannotTell),
            _ => (20.0, "20 in", "", Mark::Quiet),
        };
        place += inches * 0.0254;
        if number < tips {
            row.gaps.push(GapShown {
                id: format!("gap-{number}"),
                length: length.to_owned(),
                off: off.to_owned(),
                mark,
            });
        }
    }
    row
}

pub fn spread(tips: u32) -> SpreadStrip {
    let dots = (1..=tips)
        .map(|number| {
            let (off, mark) = match number {
                7 => (0.17, Mark::High),
                11 => (-1.0, Mark::Low),
                15 => (-0.14, Mark::Low),
                4 | 23 => (-0.1, Mark::CannotTell),
                _ => (f64::from((number * 7 + number / 3) % 9) * 0.01 - 0.04, Mark::Quiet),
            };
            DotShown { number, id: format!("dot-{number}"), off, mark, told: format!("{number}") }
        })
        .collect();
    SpreadStrip {
        id: format!("spread-{tips}"),
        language: "en".to_owned(),
        title: "How even it is".to_owned(),
        description: "Each tip by how far off it is.".to_owned(),
        dots,
        below: Some(0.1),
        above: Some(0.1),
        ticks: [
            (-0.3, "−30 %"),
            (-0.2, "−20 %"),
            (-0.1, "−10 %"),
            (0.0, "mean"),
            (0.1, "+10 %"),
            (0.2, "+20 %"),
            (0.3, "+30 %"),
        ]
        .iter()
        .map(|(value, label)| labelled(*value, label))
        .collect(),
    }
}

pub fn ground(tips: u32, across: Across) -> GroundRow {
    let end = f64::from(tips - 1) * 0.5;
    let grooves = (0..(tips * 5 + 9)).map(|number| {
        let from = f64::from(number) * 0.1 - 0.7;
        let (middle, inside) = (from + 0.05, (0.2..end - 0.2).contains(&(from + 0.05)));
        // Over the ends it thins out; under tip 5, which is plugged, it is thin.
        let edge = ((middle + 0.7) / 0.7).min((end + 0.7 - middle) / 0.7).clamp(0.0, 1.0);
        let thin = 0.45 * (1.0 - (middle - 2.0).abs() / 0.6).max(0.0);
        let dose = edge * (1.0 - thin);
        GrooveShown { from, to: from + 0.1, low: dose * 0.94, high: dose * 1.05, judged: inside }
    });
    GroundRow {
        id: format!("ground-{tips}"),
        language: "en".to_owned(),
        title: "What the ground gets".to_owned(),
        description: "Grooves under the boom.".to_owned(),
        tips: (1..=tips)
            .map(|number| {
                let place = f64::from(number - 1) * 0.5;
                TipOverGround { number, place, fan: (number != 5).then_some((place - 0.7, place + 0.7)) }
            })
            .collect(),
        height: 0.5,
        grooves: grooves.collect(),
        limit: Some(LimitBand {
            below: Some(0.2),
            above: Some(0.2),
            above_label: "+20 %".to_owned(),
            label: "mean".to_owned(),
            below_label: "−20 %".to_owned(),
        }),
        spots: vec![Spot { id: "thin".to_owned(), place: 2.0, mark: Mark::Low, label: "−44 %".to_owned() }],
        doubt_label: "The shaded edge hangs on the shape of the fans.".to_owned(),
        across,
    }
}

pub fn all(all: &mut Vec<(String, Drawing)>) {
    all.push(("drive-en".to_owned(), drive(Language::English).draw()));
    all.push(("drive-es".to_owned(), drive(Language::Spanish).draw()));
    all.push(("rate-en".to_owned(), rate(Language::English).draw()));
    let mut high = rate(Language::Spanish);
    high.doubt_label = "lo más probable: de 20.1 a 21.1".to_owned();
    (high.value, high.low, high.high, high.mark) =
        (labelled(20.6, "20.6 gal/acre"), Some(20.1), Some(21.1), Mark::High);
    all.push(("rate-es".to_owned(), high.draw()));
    for tips in [5, 12, 24] {
        all.push((format!("gaps-{tips}"), gaps(tips).draw()));
    }
    for (tips, across) in
        [(5, Across::Page), (12, Across::Page), (60, Across::Page), (12, Across::Phone), (40, Across::Phone)]
    {
        all.push((format!("ground-{tips}-{across:?}"), ground(tips, across).draw()));
    }
    for tips in [12, 60, 216] {
        all.push((format!("spread-{tips}"), spread(tips).draw()));
    }
}
