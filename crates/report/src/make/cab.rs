//! The card for the cab: the setting to repeat, to be read from the seat; a second one for the shop, or for another reader.

use units::{Amount, Kind};
use visit::Visit;
use visit::findings::Outcome;
use words::Words;

use super::said::ranged;
use super::{Maker, Readers, answers, head, repeat};
use crate::layout::fitted;
use crate::sheet::{Block, Column, Lie, Page, Run, Sheet};

/// Returns two cards on one sheet of paper: alike, or one in each language.
#[must_use]
pub fn cab(readers: &Readers<'_>, visit: &Visit, outcome: &Outcome, maker: Maker<'_>) -> Sheet {
    let words = readers.first;
    let mut blocks = card(words, visit, outcome);
    blocks.push(Block::Cut(words.label("cab-cut")));
    blocks.extend(card(readers.beside.unwrap_or(words), visit, outcome));
    let title = super::said::joined(&[Some(&words.label("cab-title")), Some(&head::name(visit))], ": ");
    let columns = vec![Column { language: words.reader().language, blocks }];
    fitted(Sheet {
        title,
        language: words.reader().language,
        paper: words.reader().paper,
        pages: vec![Page { lie: Lie::Upright, run: Run::OnePage, scale: 1.3, columns }],
        foot: head::foot(words, maker),
    })
}

/// More products than these do not stand on the card: the visit's sheet has them all. Our own choice.
const MOST_PRODUCTS: usize = 3;

fn card(words: &Words, visit: &Visit, outcome: &Outcome) -> Vec<Block> {
    let mut blocks = vec![head::title(words, visit, words.label("cab-title"))];
    blocks.extend(answers::stops(words, outcome));
    let pairs = pairs(words, visit, outcome);
    if pairs.is_empty() {
        blocks.push(Block::Text(words.label("cab-nothing")));
    } else {
        blocks.push(Block::LargeFacts { pairs, across: 2 });
    }
    blocks.push(Block::Small(words.label("cab-until")));
    blocks
}

fn pairs(words: &Words, visit: &Visit, outcome: &Outcome) -> Vec<(String, String)> {
    let setting = outcome.setting.as_ref().map(|repeat| &repeat.drive);
    let speed = outcome.speed.as_ref().map(|speed| ranged(words, &speed.speed.ranged(), Kind::Speed));
    let rate = outcome.rate.as_ref().map(|rate| words.amount(&Amount::ranged(&rate.of_mix(), Kind::Rate)));
    let tank = outcome.tank.as_ref();
    let area = tank.map(|tank| ranged(words, &tank.full.area, Kind::Area));
    let all = [
        ("cab-puts_out", rate),
        ("cab-acres_a_tank", area),
        ("sheet-pressure", setting.and_then(|setting| repeat::pressure(words, setting))),
        ("sheet-speed", speed),
        ("sheet-gear_engine", setting.and_then(|setting| repeat::engine(words, setting))),
        ("sheet-tips", repeat::tips_short(words, visit)),
    ];
    let there = |value: Option<String>| value.filter(|value| !value.trim().is_empty());
    let known = all.into_iter().filter_map(|(key, value)| Some((words.label(key), there(value)?)));
    let mut pairs: Vec<(String, String)> = known.collect();
    let products = tank.iter().flat_map(|tank| &tank.full.products).take(MOST_PRODUCTS);
    pairs.extend(products.filter_map(|product| {
        let measure = words.arg(&units::Arg::Parts(product.measure.as_ref()?.parts.clone()));
        Some((words.say("cab-product_a_tank", &[("name", product.name.clone().into())]), measure))
    }));
    pairs
}
