//! Every text of a sheet in reading order, for searching it and for holding renderers to it.

use crate::sheet::{Block, Sheet};

/// Returns every text of a sheet from the first page to the last; of drawings their title and description.
#[must_use]
pub fn texts(sheet: &Sheet) -> Vec<String> {
    let mut all = vec![sheet.title.clone()];
    for column in sheet.pages.iter().flat_map(|page| &page.columns) {
        for block in &column.blocks {
            of_block(block, &mut all);
        }
    }
    all.push(sheet.foot.clone());
    all.retain(|text| !text.is_empty());
    all
}

fn of_block(block: &Block, all: &mut Vec<String>) {
    let mut pairs = |pairs: &[(String, String)]| {
        pairs.iter().for_each(|(name, value)| all.extend([name.clone(), value.clone()]));
    };
    match block {
        Block::Facts { pairs: facts, .. } | Block::LargeFacts { pairs: facts, .. } => pairs(facts),
        Block::Title { main, under, aside } => {
            all.push(main.clone());
            all.extend(under.iter().chain(aside).cloned());
        }
        Block::Picture { told, .. } => all.push(told.clone()),
        Block::Stop(lines) | Block::Notes(lines) | Block::Lines(lines) => all.extend(lines.iter().cloned()),
        Block::Answers(boxes) => {
            for answer in boxes {
                all.extend([answer.above.clone(), answer.number.clone(), answer.unit.clone()]);
                all.extend(answer.below.iter().cloned());
            }
        }
        Block::Drawing(drawing) => all.extend([drawing.title.clone(), drawing.description.clone()]),
        Block::Heading(text) | Block::Text(text) | Block::Small(text) | Block::Cut(text) => {
            all.push(text.clone());
        }
        Block::Steps { steps, .. } => {
            steps.iter().for_each(|step| all.extend([step.lead.clone(), step.rest.clone()]));
        }
        Block::Table(table) => {
            all.extend(table.heads.iter().chain(table.rows.iter().flatten()).cloned());
        }
        Block::Care { lead, text } => all.extend([lead.clone(), text.clone()]),
        Block::Ticks { items, .. } => all.extend(items.iter().cloned()),
        Block::Blanks { blanks, .. } => {
            blanks.iter().for_each(|blank| all.extend([blank.label.clone(), blank.unit.clone()]));
        }
        Block::Tags(tags) => {
            for tag in tags {
                all.extend(
                    [&tag.number, &tag.side, &tag.wrong, &tag.read, &tag.what, &tag.whose].map(Clone::clone),
                );
            }
        }
    }
}
