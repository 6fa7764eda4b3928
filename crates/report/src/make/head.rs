//! The head and the foot of a sheet.

use sprayer::BoomLayout;
use units::{Amount, Kind};
use visit::Visit;
use visit::record::Coverage;
use words::Words;

use super::Maker;
use super::said::joined;
use crate::sheet::Block;

/// The head: what it is, of which sprayer, when and with whom.
pub fn title(words: &Words, visit: &Visit, main: String) -> Block {
    Block::Title { main, under: under(words, visit), aside: aside(words, visit) }
}

/// "Blue mounted boom, 12 tips at 20 in · Willow Bend Farm".
fn under(words: &Words, visit: &Visit) -> Vec<String> {
    let machine = joined(&[visit.about.sprayer.as_deref(), machine(words, visit).as_deref()], ", ");
    let line = joined(&[Some(&machine), visit.about.farm.as_deref()], " · ");
    let notes = visit.about.notes.clone().filter(|notes| !notes.trim().is_empty());
    [Some(line).filter(|line| !line.is_empty()), notes].into_iter().flatten().collect()
}

/// What the machine is, in a few words.
pub fn machine(words: &Words, visit: &Visit) -> Option<String> {
    let machine = visit.machine.as_ref()?;
    let boom = |boom: &BoomLayout| {
        words.say(
            "sheet-boom",
            &[
                ("tips", boom.tips().into()),
                ("spacing", words.amount(&Amount::new(boom.spacing(), Kind::Width)).into()),
            ],
        )
    };
    Some(match &machine.coverage {
        Coverage::Boom(layout) => boom(layout),
        Coverage::Band { boom: layout, band } => words.say(
            "sheet-boom_bands",
            &[
                ("boom", boom(layout).into()),
                ("band", words.amount(&Amount::new(band.value(), Kind::Width)).into()),
            ],
        ),
        Coverage::Directed { boom: layout, tips_per_row, .. } => words
            .say("sheet-boom_directed", &[("tips", layout.tips().into()), ("row", (*tips_per_row).into())]),
        Coverage::Boomless { outlets, .. } => words.say("sheet-boomless", &[("outlets", (*outlets).into())]),
        Coverage::Hand { .. } => words.label("sheet-hand"),
    })
}

/// When, and with whom.
fn aside(words: &Words, visit: &Visit) -> Vec<String> {
    let about = &visit.about;
    let given = |text: &Option<String>| text.clone().filter(|text| !text.trim().is_empty());
    let date = given(&about.date).map(|date| words.date(&date));
    let operator = given(&about.operator).map(|name| words.say("sheet-driven_by", &[("name", name.into())]));
    let with = given(&about.with).map(|name| words.say("sheet-checked_with", &[("name", name.into())]));
    [date, operator, with].into_iter().flatten().collect()
}

/// The foot of a visit's sheet: who made it, and that the sums stand behind it.
pub fn foot_of_visit(words: &Words, maker: Maker<'_>) -> String {
    made_by(words, maker, "sheet-foot_of_visit")
}

/// The foot of any other sheet: who made it.
pub fn foot(words: &Words, maker: Maker<'_>) -> String {
    made_by(words, maker, "sheet-foot")
}

fn made_by(words: &Words, maker: Maker<'_>, key: &str) -> String {
    words.say(
        key,
        &[("program", maker.name.to_string().into()), ("version", maker.version.to_string().into())],
    )
}

/// Which sprayer, in one line, for the title of the document.
pub fn name(visit: &Visit) -> String {
    joined(&[visit.about.sprayer.as_deref(), visit.about.farm.as_deref()], " · ")
}

/// The cautions of every sheet.
pub fn care(words: &Words) -> Block {
    Block::Care { lead: words.label("sheet-care_lead"), text: words.label("sheet-care") }
}
