//! Prints the tables of accuracy; with `--write` keeps them in `accuracy/TABLES.md` and `accuracy/DIAGNOSES.md`. Run by
//! `cargo xtask accuracy`; `verdicts` or `diagnoses` behind it makes only that page.
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
use accuracy::tables::{Sizes, Table, diagnosis_page, page};

/// Where the tables on verdicts are kept, from the repository's top.
const VERDICTS: &str = "accuracy/TABLES.md";
/// Where those on diagnoses are kept.
const DIAGNOSES: &str = "accuracy/DIAGNOSES.md";
/// How many sprayers of each world are diagnosed. Our own choice: the standard errors are well below a percent.
const SPRAYERS: u32 = 2_000;

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let write = words.iter().any(|word| word == "--write");
    let parts: Vec<&str> = words.iter().map(String::as_str).filter(|word| *word != "--write").collect();
    let known = ["verdicts", "diagnoses"];
    if parts.len() > 1 || parts.iter().any(|part| !known.contains(part)) {
        eprintln!("usage: cargo xtask accuracy [verdicts|diagnoses] [--write]");
        return ExitCode::from(2);
    }
    let wanted = |part: &str| parts.first().is_none_or(|only| *only == part);
    let begun = Instant::now();
    let mut tell = |part: &str| eprintln!("{:>6.1} s  {part}", begun.elapsed().as_secs_f64());
    let mut run = || -> Result<(), String> {
        if wanted("diagnoses") {
            let tables = diagnosis_page(SPRAYERS, Cores::all(), &mut tell).map_err(|why| why.to_string())?;
            keep(&diagnoses(&tables), DIAGNOSES, write)?;
        }
        if wanted("verdicts") {
            let tables = page(&Sizes::default(), Cores::all(), &mut tell).map_err(|why| why.to_string())?;
            keep(&text(&tables), VERDICTS, write)?;
        }
        Ok(())
    };
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("accuracy: {message}");
            ExitCode::FAILURE
        }
    }
}

/// Prints a page; keeps it, or says that what is kept is another.
fn keep(text: &str, kept: &str, write: bool) -> Result<(), String> {
    println!("{text}");
    if write {
        let folder = Path::new(kept).parent().unwrap_or(Path::new("."));
        fs::create_dir_all(folder).map_err(|why| format!("{}: {why}", folder.display()))?;
        fs::write(kept, text).map_err(|why| format!("{kept}: {why}"))?;
        eprintln!("written to {kept}");
    } else if fs::read_to_string(kept).ok().as_deref() != Some(text) {
        eprintln!("{kept} says otherwise; `cargo xtask accuracy --write` replaces it");
    }
    Ok(())
}

/// The page on diagnoses as it is kept.
fn diagnoses(tables: &[Table]) -> String {
    let mut text = "# How often a diagnosis is right\n\nMade by `cargo xtask accuracy diagnoses --write`; not edited by hand. \
                    Sprayers with several things wrong are drawn from fixed seeds by code that shares nothing with the \
                    inference, so that the truth is known. What is aimed at and not reached is marked.\n"
        .to_owned();
    for table in tables {
        text.push('\n');
        text.push_str(&table.markdown());
    }
    text
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
