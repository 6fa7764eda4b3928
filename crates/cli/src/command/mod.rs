//! One command, one file.

mod app;
mod batch;
mod boom;
pub mod catch;
mod catch_batch;
mod catch_test;
mod clock;
mod completions;
mod course;
mod diagnose;
mod diagnose_answer;
mod diagnose_beside;
mod flow;
mod input;
pub mod load;
mod notebook;
mod pattern;
mod print;
pub mod rate;
mod records;
mod serve;
mod sheet;
pub mod spacing;
pub mod speed;
mod symptom;
mod symptom_table;
mod visit_check;
mod visit_new;
mod visit_schema;

use words::Words;

use crate::args::{Cli, Command, SheetArgs, VisitCommand};
use crate::error::CliError;
use crate::out::Answer;

/// Runs what was typed.
pub fn run(cli: &Cli, words: &Words) -> Result<Answer, CliError> {
    let mut answer = match &cli.command {
        Command::Course(args) => course::run(args, words),
        Command::Speed(args) => speed::run(args, words),
        Command::Rate(args) => rate::run(args, words),
        Command::Flow(args) => flow::run(args, words),
        Command::Spacing(args) => spacing::run(args, words),
        Command::Pattern(args) => pattern::run(args, words),
        Command::Catch(args) if args.batch.is_some() => catch_batch::run(args, words),
        Command::Catch(args) => catch::run(args, words),
        Command::Diagnose(args) => diagnose::run(args, words),
        Command::Symptom(args) => symptom::run(args, words),
        Command::Load(args) => load::run(args, words),
        Command::Boom(args) => boom::run(args, words),
        Command::Visit(args) => match &args.command {
            VisitCommand::Check { file, sheet, beside, picture } => {
                let sheet = SheetArgs { to: sheet.clone(), beside: *beside, picture: picture.clone() };
                visit_check::run(file, &sheet, words)
            }
            VisitCommand::New => Ok(visit_new::run(words)),
            VisitCommand::Schema => visit_schema::run(),
        },
        Command::Notebook(args) => notebook::run(args, words),
        Command::Print(args) => print::run(args, words),
        Command::Serve(args) => serve::run(args, cli, words),
        Command::App(args) => app::run(args, words),
        Command::Completions { shell } => completions::run(*shell, words),
    }?;
    if !cli.why {
        answer.working.clear();
    }
    Ok(answer)
}
