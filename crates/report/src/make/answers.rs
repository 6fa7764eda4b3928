//! The answer first: what it puts out, what a tank does, what goes into it.

use calibration::catch::TipState;
use units::{Amount, Kind, Verdict, Weight, percent_text};
use visit::Visit;
use visit::findings::{Outcome, RateOutcome};
use words::Words;

use super::said::{count, most_likely, shown};
use crate::sheet::{AnswerBox, Block};

/// What the label forbids: said before everything else.
pub fn stops(words: &Words, outcome: &Outcome) -> Option<Block> {
    let stops: Vec<String> = outcome
        .all()
        .filter(|(_, finding)| finding.weight == Weight::Stop)
        .map(|(_, finding)| words.finding_and_action(finding))
        .collect();
    (!stops.is_empty()).then_some(Block::Stop(stops))
}

/// The answers side by side.
pub fn answers(words: &Words, visit: &Visit, outcome: &Outcome) -> Block {
    let mut boxes = Vec::new();
    boxes.push(match &outcome.rate {
        Some(rate) => puts_out(words, visit, outcome, rate),
        None => without_rate(words, visit, outcome),
    });
    if let Some(tank) = &outcome.tank {
        let area = Amount::ranged(&tank.full.area, Kind::Area);
        let treated = outcome.rate.as_ref().is_some_and(|rate| rate.treated.is_some());
        boxes.push(AnswerBox {
            above: words.say(
                "sheet-full_tank_does",
                &[("tank", shown(words, tank.full.volume, Kind::Volume).into())],
            ),
            number: words.amount_number(&area),
            unit: unit_of_area(words, &area, treated),
            below: most_likely(words, &area).into_iter().collect(),
        });
        boxes.extend(tank.full.products.first().map(|product| first_product(words, visit, product)));
    }
    Block::Answers(boxes)
}

fn unit_of_area(words: &Words, area: &Amount, treated: bool) -> String {
    let unit = words.reader().units;
    let acres = unit == units::UnitSystem::Us;
    match (acres, treated) {
        (true, false) => words.label("sheet-acres"),
        (true, true) => words.label("sheet-treated_acres"),
        (false, false) => words.amount_unit(area),
        (false, true) => words.label("sheet-treated_hectares"),
    }
}

fn puts_out(words: &Words, visit: &Visit, outcome: &Outcome, rate: &RateOutcome) -> AnswerBox {
    let amount = Amount::ranged(&rate.of_mix(), Kind::Rate);
    let mut below: Vec<String> = most_likely(words, &amount).into_iter().collect();
    below.extend(against(words, visit, outcome));
    if !rate.plugged.is_empty() {
        below.push(words.say(
            "sheet-with_plugged",
            &[("tips", words.tips(&rate.plugged).into()), ("tips-count", rate.plugged.len().into())],
        ));
    }
    if outcome.setting.as_ref().is_some_and(visit::findings::Repeat::differ) {
        below.push(words.label("sheet-two_settings"));
    }
    AnswerBox {
        above: words.label("sheet-puts_out"),
        number: words.amount_number(&amount),
        unit: words.amount_unit(&amount),
        below,
    }
}

/// "15 gal/ac wanted; 2.2 % under: close enough".
pub fn against(words: &Words, visit: &Visit, outcome: &Outcome) -> Option<String> {
    let target = visit.target.as_ref()?;
    let against = outcome.target.as_ref()?.against_intended?;
    let limit = units::tidy_digits(100.0 * target.within.unwrap_or(USUAL_LIMIT));
    let off = percent_text(against.percent.abs(), Some(limit)).replace('+', "");
    let side = match (off.as_str(), against.percent < 0.0) {
        ("0 %", _) => "none",
        (_, true) => "under",
        (_, false) => "over",
    };
    Some(words.say(
        "sheet-wanted",
        &[
            ("wanted", shown(words, target.rate.value(), Kind::Rate).into()),
            ("off", words.digits(&off).into()),
            ("side", side.into()),
            ("verdict", against.verdict.word().into()),
        ],
    ))
}

/// The usual limit on a rate. Source: common practice, as `planning`'s own limit has it; its source stands in the working.
pub const USUAL_LIMIT: f64 = 0.05;

fn first_product(words: &Words, visit: &Visit, product: &planning::TankProduct) -> AnswerBox {
    let rate = visit
        .products
        .iter()
        .find(|planned| planned.product.name() == product.name)
        .map(|planned| planned.product.rate().text().to_string());
    let exact = words.amount(&product.amount.value().shown(product.system));
    let above = words.say(
        "sheet-product_in_tank",
        &[("name", product.name.clone().into()), ("rate", rate.unwrap_or_default().into())],
    );
    match &product.measure {
        Some(measure) => AnswerBox {
            above,
            number: words.arg(&units::Arg::Parts(measure.parts.clone())),
            unit: String::new(),
            below: vec![words.say("sheet-rounded_down", &[("exact", exact.into())])],
        },
        None => AnswerBox {
            above,
            number: exact,
            unit: String::new(),
            below: vec![words.label("sheet-too_little_to_measure")],
        },
    }
}

/// Where there is no rate the best answer there is stands in its place.
fn without_rate(words: &Words, visit: &Visit, outcome: &Outcome) -> AnswerBox {
    let plain = |above: &str, number: String, below: Option<&str>| AnswerBox {
        above: words.label(above),
        number,
        unit: String::new(),
        below: below.map(|key| words.label(key)).into_iter().collect(),
    };
    if let Some(catch) = &outcome.catch {
        let tips = &catch.now().verdicts.summary.tips;
        if tips.iter().all(|tip| tip.state != TipState::Runs) {
            return plain("sheet-the_cups", words.label("sheet-nothing_comes"), None);
        }
    }
    if let Some(speed) = &outcome.speed {
        let amount = Amount::ranged(&speed.speed.ranged(), Kind::Speed);
        let mut below: Vec<String> = most_likely(words, &amount).into_iter().collect();
        below.push(words.label("sheet-needs_cups"));
        return AnswerBox {
            above: words.label("sheet-drives"),
            number: words.amount_number(&amount),
            unit: words.amount_unit(&amount),
            below,
        };
    }
    if let Some(catch) = &outcome.catch {
        let tips = &catch.now().verdicts.summary.tips;
        let within = super::likely::standing(catch).within;
        let number = words.say(
            "sheet-of_tips_in_order",
            &[("within", count(within).into()), ("all", count(tips.len()).into())],
        );
        return plain("sheet-the_cups", number, Some("sheet-needs_drive"));
    }
    if let Some(spacing) = &outcome.spacing {
        let off = spacing.gaps.iter().filter(|gap| gap.verdict == Verdict::Outside).count();
        let number = words.say(
            "sheet-gaps",
            &[
                ("off", count(off).into()),
                ("all", count(spacing.gaps.len()).into()),
                ("verdict", spacing.verdict.word().into()),
            ],
        );
        return plain("sheet-the_spacing", number, Some("sheet-needs_drive_and_cups"));
    }
    let known = visit.machine.is_some();
    let next = if known { "sheet-measure_next" } else { "sheet-fill_in" };
    plain("sheet-so_far", words.label("sheet-nothing_measured"), Some(next))
}
