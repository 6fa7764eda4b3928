//! "Why?": how a number came about, with the reader's own figures and the source.

use report::sheet::Block;
use units::{Coded, Finding, Working};
use words::Words;

use crate::opened::Opened;
use crate::state::{State, WhyOf};

/// How one number came about.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Worked {
    /// What is said of it.
    pub says: String,
    /// What it is called.
    pub title: String,
    /// Formula, figures, outcome, source: one a line.
    pub lines: Vec<String>,
}

/// Whether a finding has a working to show.
#[must_use]
pub const fn has_why(finding: &Finding) -> bool {
    finding.working.is_some()
}

/// How a number of the open visit came about; empty where it is not there any more.
#[must_use]
pub fn why(state: &State, of: &WhyOf) -> (Vec<Worked>, Vec<Block>) {
    let Some(visit) = &state.visit else { return (Vec::new(), Vec::new()) };
    let (words, outcome) = (&state.words, &visit.outcome);
    let one = |working: Option<&Working>| working.map(|working| worked(words, String::new(), working));
    let list = match of {
        WhyOf::Finding { code, index } => of_finding(words, visit, code, *index),
        WhyOf::Rate => one(outcome.rate.as_ref().map(|rate| &rate.main().working)),
        WhyOf::Speed => one(outcome.speed.as_ref().map(|speed| &speed.working)),
        WhyOf::Tank => outcome
            .tank
            .iter()
            .flat_map(|tank| tank.findings())
            .find_map(|finding| one(finding.working.as_ref())),
        WhyOf::Cups => one(outcome.catch.as_ref().and_then(|catch| catch.now().verdicts.working.as_ref())),
    };
    let tables = match of {
        WhyOf::Cups => report::make::cup_tables(words, outcome).into_iter().map(narrow).collect(),
        _ => Vec::new(),
    };
    (list.into_iter().collect(), tables)
}

/// Tables stand twice beside themselves on paper; on a screen the second half goes below the first.
fn narrow(block: Block) -> Block {
    let Block::Table(mut table) = block else { return block };
    let half = table.heads.len() / 2;
    let whole = table.rows.iter().all(|row| row.len() == table.heads.len());
    if half == 0 || !whole || table.heads.len() % 2 == 1 || table.heads[..half] != table.heads[half..] {
        return Block::Table(table);
    }
    let (first, second): (Vec<_>, Vec<_>) =
        table.rows.iter().map(|row| (row[..half].to_vec(), row[half..].to_vec())).unzip();
    let filled = |row: &Vec<String>| row.iter().any(|cell| !cell.is_empty());
    table.rows = first.into_iter().chain(second).filter(filled).collect();
    table.heads.truncate(half);
    table.widths.truncate(half);
    Block::Table(table)
}

fn of_finding(words: &Words, visit: &Opened, code: &str, index: usize) -> Option<Worked> {
    let (_, finding) = visit.outcome.all().nth(index).filter(|(_, finding)| finding.code() == code)?;
    Some(worked(words, words.finding_and_action(finding), finding.working.as_ref()?))
}

fn worked(words: &Words, says: String, working: &Working) -> Worked {
    Worked { says, title: words.working_title(working), lines: words.working(working) }
}
