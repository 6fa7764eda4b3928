//! The demo visit from its file's text to what follows from it.

use std::error::Error;

use units::UnitSystem;

use crate::List;

const DEMO: &str = include_str!("../../../demo/willow-bend.toml");

pub(crate) fn put(list: &mut List) {
    list.attempt("demo visit", demo);
}

fn demo(list: &mut List) -> Result<(), Box<dyn Error>> {
    let visit = visit::file::read(DEMO.as_bytes())?;
    let outcome = visit::findings::findings(&visit, UnitSystem::Us)?;
    let speed = outcome.speed.as_ref().ok_or("a drive")?;
    list.ranged("demo visit, speed", &speed.speed.ranged());
    let catch = outcome.catch.as_ref().ok_or("a catch")?;
    for (number, round) in (1..).zip(&catch.rounds) {
        for tip in &round.verdicts.summary.tips {
            if let Some(range) = tip.measured {
                let name = format!("demo visit, round {number}, tip {}", tip.number);
                list.put(format!("{name}, off"), range.deviation);
                list.put(format!("{name}, off, low"), range.low);
                list.put(format!("{name}, off, high"), range.high);
            }
        }
        for tip in &round.verdicts.judged.tips {
            let name = format!("demo visit, round {number}, tip {} judged", tip.number);
            list.put(format!("{name}, off"), tip.deviation);
            list.put(format!("{name}, low"), tip.low);
            list.put(format!("{name}, high"), tip.high);
            list.put(format!("{name}, within"), tip.probability_within);
        }
        for (turn, next) in (1..).zip(&round.verdicts.next) {
            list.put(format!("demo visit, round {number}, next cup {turn} settles"), next.settles);
        }
        for tip in &round.verdicts.new {
            let name = format!("demo visit, round {number}, tip {} against new", tip.number);
            list.put(name, tip.measured.deviation);
        }
    }
    let rate = outcome.rate.as_ref().ok_or("a rate")?;
    list.ranged("demo visit, rate", &rate.main().rate);
    let tank = outcome.tank.as_ref().ok_or("a tank")?;
    list.ranged("demo visit, ground a tank does", &tank.full.area);
    let cost = outcome.cost.as_ref().ok_or("a cost")?;
    list.put("demo visit, cost over", cost.over.value.amount());
    list.put("demo visit, cost missing", cost.missing.value.amount());
    list.put("demo visit, findings", outcome.all().count() as f64);
    list.put("demo visit, actions", outcome.actions.len() as f64);
    Ok(())
}
