//! A visit as one would tell it to a neighbour: the answer first, then what to do, then how to get it again.

use calibration::catch::TipState;
use units::{Amount, Finding, Kind, UnitSystem, Verdict, Weight, percent_text};
use visit::Visit;
use visit::findings::{CatchOutcome, Outcome, Place, RateOutcome};
use visit::record::place_word;

use super::Answer;
use crate::command::load;

/// Writes it.
pub fn lines(answer: &mut Answer, visit: &Visit, outcome: &Outcome, system: UnitSystem) {
    super::visit_head::heading(answer, &visit.about);
    if outcome.all().next().is_none()
        && outcome.rate.is_none()
        && outcome.speed.is_none()
        && outcome.catch.is_none()
        && outcome.spacing.is_none()
    {
        super::visit_head::nothing_measured(answer, visit.machine.as_ref());
        return;
    }
    stops(answer, outcome, system);
    puts_out(answer, visit, outcome, system);
    full_tank(answer, outcome, system);
    to_do(answer, outcome, system);
    super::visit_cups::cups(answer, visit, outcome, system);
    again(answer, outcome, system);
    good_to_know(answer, outcome, system);
    answer.plain("");
    answer.plain(
        "Take care: the label is the law. Clean water only for a check; gloves and eye protection; brake on, nobody near \
         the shaft; never a tip to the mouth. Local rules and licensed people decide.",
    );
    working(answer, outcome);
}

/// What the label forbids, before everything else.
fn stops(answer: &mut Answer, outcome: &Outcome, system: UnitSystem) {
    let stops: Vec<&Finding> =
        outcome.all().map(|(_, finding)| finding).filter(|finding| finding.weight == Weight::Stop).collect();
    for stop in &stops {
        let action = stop.action(system).map_or(String::new(), |action| format!(" {action}"));
        answer.act(format!("{}{action}", stop.text(system)));
    }
    if !stops.is_empty() {
        answer.plain("");
    }
}

fn puts_out(answer: &mut Answer, visit: &Visit, outcome: &Outcome, system: UnitSystem) {
    if let Some(rate) = &outcome.rate {
        let amount = Amount::ranged(&rate.of_mix(), Kind::Rate);
        answer.main(format!("It puts out {}", amount.text(system)));
        if let Some(range) = amount.range_text(system) {
            answer.plain(format!("  most likely {range}"));
        }
        as_found(answer, rate, system);
        if outcome.setting.as_ref().is_some_and(visit::findings::Repeat::differ) {
            answer.plain("  put together from a drive and a catch at different settings");
        }
        let against = outcome.target.as_ref().and_then(|target| target.against_intended);
        if let (Some(target), Some(against)) = (&visit.target, against) {
            let wanted = Amount::new(target.rate.value(), Kind::Rate).text(system);
            let limit = units::tidy_digits(100.0 * target.within.unwrap_or(0.05));
            let off = match percent_text(against.percent.abs(), Some(limit)).trim_start_matches('+') {
                "0 %" => "just that".to_string(),
                off if against.percent < 0.0 => format!("{off} under"),
                off => format!("{off} over"),
            };
            let word = match against.verdict {
                Verdict::Within => "close enough",
                Verdict::Outside => "too far off",
                Verdict::CannotTell => "cannot tell yet whether that is close enough",
            };
            answer.plain(format!("  {wanted} is wanted; it is {off}: {word} (the limit is {limit} %)"));
        }
    } else if let Some(none) = outcome.catch.as_ref().filter(|catch| nothing_comes(catch)) {
        let caught =
            none.now().verdicts.summary.tips.iter().filter(|tip| tip.state == TipState::Plugged).count();
        answer
            .main(format!("Nothing comes out of {}", if caught == 1 { "the tip" } else { "any tip caught" }));
    } else if let Some(speed) = &outcome.speed {
        let amount = Amount::ranged(&speed.speed.ranged(), Kind::Speed);
        answer.main(format!("It drives {}", amount.text(system)));
        if let Some(range) = amount.range_text(system) {
            answer.plain(format!("  most likely {range}"));
        }
        answer.plain("  what it puts out needs the cups too");
    } else if outcome.catch.is_some() {
        answer.main("The cups are caught; what it puts out needs a timed drive too.");
    } else if let Some(spacing) = outcome.spacing.as_ref() {
        let off = spacing.gaps.iter().filter(|gap| gap.verdict == Verdict::Outside).count();
        answer.main(match (spacing.verdict, off) {
            (Verdict::Within, _) if spacing.gaps.len() == 1 => "The gap is in order".to_string(),
            (Verdict::Within, _) => format!("All {} gaps are in order", spacing.gaps.len()),
            (Verdict::Outside, 1) => format!("One of {} gaps is off", spacing.gaps.len()),
            (Verdict::Outside, off) => format!("{off} of {} gaps are off", spacing.gaps.len()),
            (Verdict::CannotTell, _) => "Whether every gap is in order cannot be told yet".to_string(),
        });
    }
}

/// With tips plugged the rate is as found; what it will be once they run stands beside it.
fn as_found(answer: &mut Answer, rate: &RateOutcome, system: UnitSystem) {
    if let Some(cleaned) = &rate.once_cleaned {
        let (tips, runs) = match rate.plugged.as_slice() {
            [one] => (format!("tip {one}"), "it runs as the others do"),
            many => (units::Arg::Tips(many.to_vec()).text(system), "they run as the others do"),
        };
        let tips = if rate.plugged.len() > 1 { format!("tips {tips}") } else { tips };
        let cleaned = Amount::ranged(cleaned, Kind::Rate).text(system);
        answer.plain(format!("  as found, with {tips} plugged; about {cleaned} once {runs}"));
    }
}

/// Whether cups were held and not one caught anything.
fn nothing_comes(catch: &CatchOutcome) -> bool {
    catch.now().verdicts.summary.tips.iter().all(|tip| tip.state != TipState::Runs)
}

fn full_tank(answer: &mut Answer, outcome: &Outcome, system: UnitSystem) {
    let Some(tank) = &outcome.tank else { return };
    let volume = Amount::new(tank.full.volume, Kind::Volume).text(system);
    let area = Amount::ranged(&tank.full.area, Kind::Area);
    let range = area.range_text(system).map_or(String::new(), |range| format!(" (most likely {range})"));
    let text = area.text(system);
    let text = match (outcome.rate.as_ref().and_then(|rate| rate.treated), text.split_once(' ')) {
        // Of a field sprayed in bands a tank does the bands alone.
        (Some(_), Some((number, _))) => match system {
            UnitSystem::Us => format!("{number} treated acres"),
            UnitSystem::Metric => format!("{number} treated hectares"),
        },
        _ => text,
    };
    answer.main(format!("A full tank of {volume} does {text}{range}"));
    for finding in &tank.own_findings {
        let action = finding.action(system).map_or(String::new(), |action| format!(" {action}"));
        answer.plain(format!("  {}{action}", finding.text(system)));
    }
    for product in &tank.full.products {
        let exact = product.amount.value().shown(product.system).text(product.system);
        match &product.measure {
            Some(measure) => {
                answer.plain(format!("  in it: {} of {}", load::measured(measure, &exact), product.name))
            }
            None => answer.plain(format!("  in it: {exact} of {}, too little to measure", product.name)),
        }
    }
    if let Some(loads) = &tank.loads {
        let last = loads.last.as_ref().map(|load| {
            let products: Vec<String> = load
                .products
                .iter()
                .map(|product| match &product.measure {
                    Some(measure) => format!("{} {}", measure.text, product.name),
                    None => format!("{} too little to measure", product.name),
                })
                .collect();
            let with =
                if products.is_empty() { String::new() } else { format!(" with {}", products.join(", ")) };
            format!("{}{with}", Amount::new(load.volume, Kind::Volume).text(system))
        });
        answer.plain(format!("  the job ahead: {}", load::in_words(loads, last)));
    }
}

fn to_do(answer: &mut Answer, outcome: &Outcome, system: UnitSystem) {
    let list: Vec<_> =
        outcome.actions.iter().filter(|action| action.finding.weight != Weight::Stop).collect();
    if list.is_empty() {
        return;
    }
    answer.head("What to do");
    for (number, action) in (1..).zip(list) {
        let sign = match action.finding.weight {
            Weight::Settle => "?",
            _ => "!",
        };
        let (why, what) = (action.why(system), action.what(system));
        let text = if why == what {
            format!("{number:>3}. {sign} {why}")
        } else {
            format!("{number:>3}. {sign} {why} {what}")
        };
        match action.finding.weight {
            Weight::Act => answer.act(text),
            _ => answer.plain(text),
        }
    }
}

fn again(answer: &mut Answer, outcome: &Outcome, system: UnitSystem) {
    let Some(repeat) = &outcome.setting else { return };
    let setting = &repeat.drive;
    answer.head("To get the same again");
    let mut parts: Vec<String> = Vec::new();
    parts.extend(setting.gear.as_ref().map(|gear| format!("gear {gear}")));
    parts.extend(setting.engine_speed.as_ref().map(|speed| format!("engine {speed}")));
    parts.extend(setting.pto_speed.as_ref().map(|speed| format!("PTO {speed}")));
    if let Some(pressure) = &setting.pressure {
        let place = match setting.pressure_read_at {
            Some(units::ReadPlace::Cab) => " in the cab".to_string(),
            Some(place) => format!(" at the {}", place_word(place)),
            None => String::new(),
        };
        parts.push(format!("{}{place}", Amount::new(pressure.value(), Kind::Pressure).text(system)));
    }
    parts.extend(setting.agitation.as_ref().map(|agitation| format!("agitation {agitation}")));
    parts.extend(setting.sections_on.as_ref().map(|sections| format!("sections on: {sections}")));
    parts.extend(setting.controller.as_ref().map(|controller| format!("controller {controller}")));
    parts.extend(setting.water_in_tank.as_ref().map(|water| format!("tank {water}")));
    if let Some(speed) = &outcome.speed {
        let amount = Amount::ranged(&speed.speed.ranged(), Kind::Speed).text(system);
        let time = Amount::new(speed.mean_time, Kind::Time).text(system);
        parts.push(format!("{amount} ({time} over the course, {} runs)", speed.runs.len()));
    }
    for part in parts {
        answer.plain(format!("  {part}"));
    }
    answer.plain("  Catch again when tips, speed, pressure or product change, and next spring.");
}

fn good_to_know(answer: &mut Answer, outcome: &Outcome, system: UnitSystem) {
    let notes: Vec<String> = outcome
        .all()
        .filter(|(place, finding)| {
            let told = *place == Place::Tank || TOLD_ABOVE.contains(&units::Coded::code(*finding));
            let note = match finding.weight {
                Weight::Note | Weight::Doubt => true,
                Weight::Settle => finding.action(system).is_none(),
                Weight::Stop | Weight::Act => false,
            };
            note && !told
        })
        .map(|(_, finding)| match finding.action(system) {
            Some(action) => format!("  - {} {action}", finding.text(system)),
            None => format!("  - {}", finding.text(system)),
        })
        .collect();
    if notes.is_empty() {
        return;
    }
    answer.head("Good to know");
    for note in notes {
        answer.plain(note);
    }
}

/// Findings whose figures stand at the top of the page already.
const TOLD_ABOVE: &[&str] =
    &["rate_within", "rate_outside", "rate_cannot_tell", "rate_of_two_settings", "rate_with_plugged"];

fn working(answer: &mut Answer, outcome: &Outcome) {
    answer.working.extend(outcome.rate.as_ref().map(|rate| rate.main().working.clone()));
    answer.working.extend(outcome.speed.as_ref().map(|speed| speed.working.clone()));
    answer.working.extend(outcome.catch.as_ref().and_then(|catch| catch.now().verdicts.working.clone()));
    answer.working.extend(outcome.spacing.as_ref().map(|spacing| spacing.working.clone()));
    let told: Vec<_> = outcome.all().filter_map(|(_, finding)| finding.working.clone()).collect();
    answer.working.extend(told);
}
