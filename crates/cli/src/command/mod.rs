//! One command, one file.

pub mod catch;
mod catch_batch;
mod catch_test;
mod completions;
mod course;
mod flow;
mod input;
pub mod load;
pub mod rate;
pub mod spacing;
pub mod speed;
mod visit_check;
mod visit_new;
mod visit_schema;

use crate::args::{Cli, Command, VisitCommand};
use crate::error::CliError;
use crate::out::Answer;

/// Runs what was typed.
pub fn run(cli: &Cli) -> Result<Answer, CliError> {
    let system = cli.system();
    let mut answer = match &cli.command {
        Command::Course(args) => course::run(args, system),
        Command::Speed(args) => speed::run(args, system),
        Command::Rate(args) => rate::run(args, system),
        Command::Flow(args) => flow::run(args, system),
        Command::Spacing(args) => spacing::run(args, system),
        Command::Catch(args) if args.batch.is_some() => catch_batch::run(args, system),
        Command::Catch(args) => catch::run(args, system),
        Command::Load(args) => load::run(args, system),
        Command::Visit(args) => match &args.command {
            VisitCommand::Check { file } => visit_check::run(file, system),
            VisitCommand::New => Ok(visit_new::run()),
            VisitCommand::Schema => visit_schema::run(),
        },
        Command::Completions { shell } => completions::run(*shell),
    }?;
    if !cli.why {
        answer.working.clear();
    }
    Ok(answer)
}
