//! The second page: how the numbers were reached, tip by tip and formula by formula.

use units::{Amount, Arg, Kind, Working};
use visit::Visit;
use visit::findings::{Outcome, RoundOutcome};
use visit::record::round_said;
use words::Words;

use super::measured::{reading_text, state};
use super::said::{joined, shown};
use crate::sheet::{Block, Table, Use};

/// The rounds of cups as tables, each under its heading.
pub fn cups(words: &Words, outcome: &Outcome) -> Vec<Block> {
    let Some(catch) = &outcome.catch else { return Vec::new() };
    let mut blocks = Vec::new();
    for round in &catch.rounds {
        blocks.push(Block::Heading(round_heading(words, round)));
        blocks.push(Block::Table(table(words, round)));
        blocks.extend(means(words, round).into_iter().map(Block::Small));
    }
    blocks
}

/// "The cups, as found: 28 s, fl oz".
pub fn round_heading(words: &Words, round: &RoundOutcome) -> String {
    let unit = round.round.unit.as_ref().map(|unit| words.unit(unit)).unwrap_or_default();
    let time = shown(words, round.round.time, Kind::Time);
    words.say(
        "sheet-cups_of",
        &[
            ("round", words.arg(&round_said(&round.round.kind)).into()),
            ("time", time.into()),
            ("unit", unit.into()),
        ],
    )
}

/// How many tips stand beside one another, so that a table stays on its page. Our own choice.
fn beside(tips: usize) -> usize {
    match tips {
        0..=6 => 1,
        7..=36 => 2,
        _ => 3,
    }
}

fn table(words: &Words, round: &RoundOutcome) -> Table {
    let verdicts = &round.verdicts;
    // A round of single tips shows those alone.
    let whole =
        round.round.tips.iter().filter(|tip| !tip.catches.is_empty()).count() * 2 >= round.round.tips.len();
    let rows: Vec<Vec<String>> = verdicts
        .summary
        .tips
        .iter()
        .filter(|tip| whole || tip.state != calibration::catch::TipState::NotCaught)
        .filter_map(|tip| {
            let facts = round.round.tips.iter().find(|facts| facts.number == tip.number)?;
            let off = tip.most_likely().map_or(String::new(), |likely| {
                let percent = |share: f64| {
                    let limit =
                        100.0 * if share < 0.0 { verdicts.limit.below() } else { verdicts.limit.above() };
                    words
                        .deviation(100.0 * share, Some(limit).filter(|limit| limit.is_finite()))
                        .replace(" %", "")
                };
                words.say(
                    "sheet-off_with_range",
                    &[
                        ("off", percent(likely.deviation).into()),
                        ("low", percent(likely.low).into()),
                        ("high", percent(likely.high).into()),
                    ],
                )
            });
            // A later round of a few tips has no mean of its own to be off from.
            let alone = verdicts.summary.groups.iter().all(|group| group.running.len() < 2);
            let (off, word) = if alone {
                (String::new(), String::new())
            } else {
                (off, words.label(&format!("tip_is-{}", state(tip, verdicts))))
            };
            Some(vec![tip.number.to_string(), reading_text(words, facts), off, word])
        })
        .collect();
    let across = beside(rows.len());
    let high = rows.len().div_ceil(across).max(1);
    let heads = ["sheet-tip", "sheet-cup", "sheet-off_the_mean", "sheet-verdict"];
    let one: Vec<String> = heads.iter().map(|key| words.label(key)).collect();
    let laid = (0..high)
        .map(|line| {
            (0..across)
                .flat_map(|group| {
                    rows.get(group * high + line).cloned().unwrap_or_else(|| vec![String::new(); 4])
                })
                .collect()
        })
        .collect();
    Table {
        caption: round_heading(words, round),
        heads: one.iter().cloned().cycle().take(4 * across).collect(),
        widths: [6, 6, 12, 10].iter().copied().cycle().take(4 * across).collect(),
        rows: laid,
        use_: Use::Read,
    }
}

/// Mean and spread of each group of tips that are meant to be alike.
pub fn means(words: &Words, round: &RoundOutcome) -> Vec<String> {
    let several = round.verdicts.summary.groups.len() > 1;
    let groups = round.verdicts.summary.groups.iter().filter(|group| group.running.len() > 1);
    groups
        .filter_map(|group| {
            let mean = words.amount(&super::measured::caught(&round.round, group.mean?));
            let spread = group.cv_percent.map_or("none".to_string(), |cv| words.fixed(cv, 1));
            let tips = if several { words.tips(&group.running) } else { String::new() };
            Some(words.say(
                "sheet-mean_of",
                &[
                    ("mean", mean.into()),
                    ("spread", spread.into()),
                    ("tips", tips.into()),
                    ("several", if several { "yes" } else { "no" }.into()),
                ],
            ))
        })
        .collect()
}

/// The formulas with their figures and sources.
pub fn workings(words: &Words, outcome: &Outcome) -> Vec<Block> {
    let mut workings: Vec<&Working> = Vec::new();
    workings.extend(outcome.rate.as_ref().map(|rate| &rate.main().working));
    workings.extend(outcome.speed.as_ref().map(|speed| &speed.working));
    workings.extend(outcome.catch.as_ref().and_then(|catch| catch.now().verdicts.working.as_ref()));
    workings.extend(outcome.spacing.as_ref().map(|spacing| &spacing.working));
    let mut blocks = Vec::new();
    for working in workings {
        blocks.push(Block::Heading(words.working_title(working)));
        let mut lines = Vec::new();
        compact(words, working, "", &mut lines);
        blocks.push(Block::Lines(lines));
    }
    blocks
}

/// A working on few lines: the formula, its figures one after the other, what it gives and who says so.
fn compact(words: &Words, working: &Working, before: &str, lines: &mut Vec<String>) {
    lines.push(format!("{before}{}", words.formula(working)));
    let figures: Vec<String> = working
        .figures
        .iter()
        .map(|figure| format!("{} = {}", words.figure_name(figure), words.arg(&figure.value)))
        .collect();
    if !figures.is_empty() {
        lines.push(format!("{before}{}", figures.join(" · ")));
    }
    let source = words.say("working_source", &[("source", words.source(working.source).into())]);
    let gives = working
        .result
        .as_ref()
        .map(|result| words.say("working_gives", &[("result", words.arg(result).into())]));
    lines.push(format!("{before}{}", joined(&[gives.as_deref(), Some(&source)], " · ")));
    for step in &working.steps {
        compact(words, step, "– ", lines);
    }
}

/// Every product of a full tank and the loads of the job ahead, where there is more to tell than the first page does.
pub fn tank(words: &Words, visit: &Visit, outcome: &Outcome) -> Vec<Block> {
    let Some(tank) = &outcome.tank else { return Vec::new() };
    if tank.full.products.is_empty() {
        return Vec::new();
    }
    let full_area = Amount::ranged(&tank.full.area, Kind::Area);
    let mut heads = vec![words.label("sheet-product"), words.label("sheet-label_rate")];
    heads.push(words.say(
        "sheet-full_load",
        &[
            ("volume", shown(words, tank.full.volume, Kind::Volume).into()),
            ("area", words.amount(&full_area).into()),
        ],
    ));
    let last = tank.loads.as_ref().and_then(|loads| loads.last.as_ref());
    heads.extend(last.map(|last| {
        words.say(
            "sheet-last_load",
            &[
                ("volume", shown(words, last.volume, Kind::Volume).into()),
                ("area", shown(words, last.area, Kind::Area).into()),
            ],
        )
    }));
    let rows = tank.full.products.iter().map(|product| {
        let planned = visit.products.iter().find(|planned| planned.product.name() == product.name);
        let rate = planned.map(|planned| planned.product.rate().text().to_string()).unwrap_or_default();
        let mut row = vec![product.name.clone(), rate];
        row.push(measured(words, product.measure.as_ref()));
        if let Some(last) = last {
            let same = last.products.iter().find(|other| other.name == product.name);
            row.push(measured(words, same.and_then(|product| product.measure.as_ref())));
        }
        row
    });
    let table = Table {
        caption: words.label("sheet-in_the_tank"),
        widths: if last.is_some() { vec![8, 6, 9, 9] } else { vec![8, 6, 10] },
        rows: rows.collect(),
        heads,
        use_: Use::Read,
    };
    let mut blocks = vec![Block::Heading(words.label("sheet-in_the_tank")), Block::Table(table)];
    if let Some(loads) = &tank.loads {
        let area =
            visit.job.area.as_ref().map(|area| shown(words, area.value(), Kind::Area)).unwrap_or_default();
        blocks.push(Block::Small(words.say(
            "sheet-job_loads",
            &[
                ("area", area.into()),
                ("full", loads.full_loads.into()),
                ("last", u32::from(loads.last.is_some()).into()),
            ],
        )));
    }
    blocks
}

fn measured(words: &Words, measure: Option<&planning::Measure>) -> String {
    match measure {
        Some(measure) => words.arg(&Arg::Parts(measure.parts.clone())),
        None => words.label("sheet-too_little_to_measure"),
    }
}
