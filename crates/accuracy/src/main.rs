//! Prints the tables of accuracy; with `--write` keeps them in `accuracy/TABLES.md`. Run by `cargo xtask accuracy`.
#![allow(
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "a command-line tool: tables go to standard output, what it is doing to standard error"
)]

use std::fs;
use std::path::Path;
use std::process::ExitCode;
use std::time::Instant;

use accuracy::split::Cores;
use accuracy::tables::{Sizes, Table, page};

/// Where the tables are kept, from the repository's top.
const KEPT: &str = "accuracy/TABLES.md";

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let write = match words.as_slice() {
        [] => false,
        [word] if word == "--write" => true,
        _ => {
            eprintln!("usage: cargo xtask accuracy [--write]");
            return ExitCode::from(2);
        }
    };
    match run(write) {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("accuracy: {message}");
            ExitCode::FAILURE
        }
    }
}

fn run(write: bool) -> Result<(), String> {
    let begun = Instant::now();
    let mut tell = |part: &str| eprintln!("{:>6.1} s  {part}", begun.elapsed().as_secs_f64());
    let tables = page(&Sizes::default(), Cores::all(), &mut tell).map_err(|why| why.to_string())?;
    let text = text(&tables);
    println!("{text}");
    eprintln!("{:>6.1} s  done", begun.elapsed().as_secs_f64());
    if write {
        let folder = Path::new(KEPT).parent().unwrap_or(Path::new("."));
        fs::create_dir_all(folder).map_err(|why| format!("{}: {why}", folder.display()))?;
        fs::write(KEPT, text).map_err(|why| format!("{KEPT}: {why}"))?;
        eprintln!("written to {KEPT}");
    } else if fs::read_to_string(KEPT).ok().as_deref() != Some(text.as_str()) {
        eprintln!("{KEPT} says otherwise; `cargo xtask accuracy --write` replaces it");
    }
    Ok(())
}

/// The page as it is kept.
fn text(tables: &[Table]) -> String {
    let missed: u32 = tables.iter().map(|table| table.missed).sum();
    let bars = match missed {
        0 => "Every bar is held.".to_owned(),
        1 => "**One bar is MISSED**; it is marked below.".to_owned(),
        _ => format!("**{missed} bars are MISSED**; they are marked below."),
    };
    let mut text = format!(
        "# How often verdicts are right\n\nMade by `cargo xtask accuracy --write`; not edited by hand. Sprayers are \
         simulated from fixed seeds by code that shares nothing with the inference, so that the truth is known. The limit \
         is 10 % of the mean of the tips that run, the risk taken 5 %. {bars}\n"
    );
    for table in tables {
        text.push('\n');
        text.push_str(&table.markdown());
    }
    text
}
