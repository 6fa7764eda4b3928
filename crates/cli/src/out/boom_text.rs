//! A boom's flows for people: what it puts out, then each section with its tips and what is lost on the way to them.

use units::{Amount, Arg, Args, Kind, Pressure, Quantity, UnitSystem};
use visit::boom::{BoomFlows, Lost, SectionFlows, TipState};
use words::Words;

use super::Answer;

/// The lines.
pub fn lines(answer: &mut Answer, flows: &BoomFlows, words: &Words) {
    let shown = |pressure| Arg::Amount(Amount::new(pressure, Kind::Pressure));
    let flow = |flow| Arg::Amount(Amount::new(flow, Kind::Flow));
    let told = Args::new()
        .with("flow", flow(flows.total))
        .with("gauge", shown(flows.gauge))
        .with("manifold", shown(flows.manifold))
        .with("lost", Arg::Text(small(flows.gauge - flows.manifold, words)));
    if let Some(pump) = &flows.pump {
        answer.main(words.say_with("line-boom_pump", &told.clone().with("pump", flow(pump.flow))));
        for (key, back) in [("line-boom_bypass", pump.bypass), ("line-boom_agitation", pump.agitation)] {
            if let Some(back) = back {
                answer.plain(words.say_with(key, &Args::new().with("flow", flow(back))));
            }
        }
    } else {
        answer.main(words.say_with("line-boom_total", &told));
    }
    if flows.gauge != flows.manifold {
        answer.plain(words.say_with("line-boom_to_manifold", &told));
    }
    let mut first = 1;
    for (place, section) in flows.sections.iter().enumerate() {
        let told = Args::new()
            .with("number", Arg::Count(count(place + 1)))
            .with("flow", flow(section.flow))
            .with("entry", shown(section.entry));
        answer.head(words.say_with("line-boom_section", &told));
        table(answer, section, first, words);
        if let Some(lost) = &section.lost {
            answer.plain(lost_line(lost, first, words));
        }
        first += section.tips.len();
    }
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

/// The tips one below the other: number, flow, pressure, and why nothing comes out.
fn table(answer: &mut Answer, section: &SectionFlows, first: usize, words: &Words) {
    let heads = ["line-tip", "line-boom_flow", "line-boom_pressure"].map(|key| words.label(key));
    // As wide as the longest of head and figures: "120", "0.423 gal/min", "43.1 psi".
    let wide = |place: usize, least: usize| heads[place].chars().count().max(least);
    let (one, two, three) = (wide(0, 3), wide(1, 13), wide(2, 10));
    let row = |tip: &str, flow: &str, pressure: &str, why: &str| {
        format!("  {tip:>one$}    {flow:>two$}    {pressure:>three$}    {why}").trim_end().to_string()
    };
    answer.verbatim(row(&heads[0], &heads[1], &heads[2], ""));
    for (place, tip) in section.tips.iter().enumerate() {
        let pressure = words.amount(&Amount::new(tip.pressure, Kind::Pressure));
        let number = (first + place).to_string();
        let text = match tip.state {
            TipState::Runs => row(&number, &words.amount(&Amount::new(tip.flow, Kind::Flow)), &pressure, ""),
            TipState::Plugged => row(&number, "-", &pressure, &words.label("line-plugged")),
            TipState::Shut => row(&number, "-", "-", &words.label("line-boom_shut")),
        };
        answer.verbatim(text);
    }
}

/// What is lost on the way to the tip with the least pressure; what rounds to nothing is left out but for the feed.
fn lost_line(lost: &Lost, first: usize, words: &Words) -> String {
    let part = |key: &str, pressure: Pressure| words.say(key, &[("lost", small(pressure, words).into())]);
    let mut parts = vec![part("line-boom_lost_feed", lost.feed)];
    let uphill = if lost.height.si() < 0.0 { "line-boom_gained_height" } else { "line-boom_lost_height" };
    for (key, told) in [
        ("line-boom_lost_hose", lost.hose),
        ("line-boom_lost_body", lost.body),
        ("line-boom_lost_check_valve", lost.check_valve),
        (uphill, Pressure::from_si(lost.height.si().abs())),
    ] {
        if small(told, words) != small(Pressure::ZERO, words) {
            parts.push(part(key, told));
        }
    }
    let tip = (first - 1 + lost.tip).to_string();
    words.say("line-boom_lost", &[("tip", tip.into()), ("parts", parts.join(", ").into())])
}

/// A small pressure, to a hundredth of a psi or a thousandth of a bar: finer than any gauge. Our own choice.
fn small(pressure: Pressure, words: &Words) -> String {
    let system = words.reader().units;
    let decimals = match system {
        UnitSystem::Us => 2,
        UnitSystem::Metric => 3,
    };
    let unit = Kind::Pressure.unit(system);
    format!("{} {}", words.fixed(pressure.in_unit(&unit), decimals), words.unit(&unit))
}
