//! `cargo xtask run`: the program at work on a demo, from a fresh copy of the repository to the app in a browser.
//!
//! It checks a visit to an invented farm and prints what its grower needs, builds the app, keeps the visits of an invented
//! county in a notebook, and serves both until it is stopped. `cargo xtask run check` does the first of it alone.

mod browse;
mod notebook;

use std::path::PathBuf;
use std::process::Command;
use std::time::Instant;

use crate::app;
use crate::process;
use crate::wasm::Toolchain;
use crate::wasm::page::Build;
use crate::workspace::Workspace;

/// The visit of an invented farm that a newcomer sees first.
const DEMO: &str = "demo/willow-bend.toml";

/// What was asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Asked {
    /// The check of the demo visit alone; these words are passed on.
    Check(Vec<String>),
    /// The app on the demo notebook.
    App { port: Option<String>, open: Open },
}

/// Whether a browser is opened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Open {
    /// On a desktop.
    WhereThereIsOne,
    /// Not at all.
    No,
}

/// Does what was asked for.
pub fn run(workspace: &Workspace, rest: &[String]) -> Result<(), String> {
    let asked = asked(rest)?;
    eprintln!(
        "The first build fetches the libraries named in Cargo.lock into cargo's own folder and writes to\n\
         {}; where something else is installed, that is said before.",
        workspace.target.display()
    );
    match asked {
        Asked::Check(words) => check(&program(workspace)?, workspace, &words),
        Asked::App { port, open } => serve(workspace, port.as_deref(), open),
    }
}

fn asked(rest: &[String]) -> Result<Asked, String> {
    if let Some((first, words)) = rest.split_first()
        && first == "check"
    {
        return Ok(Asked::Check(words.to_vec()));
    }
    let (mut port, mut open) = (None, Open::WhereThereIsOne);
    let mut words = rest.iter();
    while let Some(word) = words.next() {
        match word.as_str() {
            "--no-open" => open = Open::No,
            "--port" => port = Some(words.next().ok_or("--port needs a number")?.clone()),
            _ => {
                return Err(format!(
                    "`{word}` is nothing that `run` knows: it takes --no-open and --port NUMBER, or the word `check` with \
                     what goes to `evenswath visit check`"
                ));
            }
        }
    }
    Ok(Asked::App { port, open })
}

fn serve(workspace: &Workspace, port: Option<&str>, open: Open) -> Result<(), String> {
    let start = Instant::now();
    let toolchain = Toolchain::find_or_install(&workspace.root);
    eprintln!("\n== 1 of 4: the command `evenswath`, and the demo visit {DEMO} checked by it");
    let program = std::thread::scope(|scope| {
        if let Ok(toolchain) = &toolchain {
            // The longest of all, so it is begun first; two cores are better used by both.
            scope.spawn(|| app::begin(workspace, toolchain, Build::Small));
        }
        let program = program(workspace)?;
        check(&program, workspace, &[])?;
        if toolchain.is_ok() {
            eprintln!(
                "\n== 2 of 4: the app for browsers, begun meanwhile; the first time this takes some minutes"
            );
            app::tools(workspace)?;
        }
        Ok::<_, String>(program)
    })?;
    let toolchain = match toolchain {
        Ok(toolchain) => toolchain,
        Err(why) => {
            eprintln!(
                "The app is left out: {why}.\nWhat the command can do is above; everything the app shows, it says."
            );
            return Ok(());
        }
    };
    let app = app::build(workspace, &toolchain, Build::Small)?;
    eprintln!("\n== 3 of 4: a notebook of an invented county");
    let notebook = notebook::ready(workspace, &program)?;
    eprintln!(
        "\n== 4 of 4: the app on this notebook, ready after {} s; Ctrl-C stops it",
        start.elapsed().as_secs()
    );
    let port = port.map_or_else(browse::port, str::to_owned);
    let mut serve = Command::new(program);
    serve.arg("serve").arg("--folder").arg(notebook).arg("--app").arg(app).args(["--port", &port]);
    browse::served(&mut serve, open)
}

/// Builds `evenswath`.
pub fn program(workspace: &Workspace) -> Result<PathBuf, String> {
    process::run(process::cargo(&workspace.root).args([
        "build",
        "--quiet",
        "--package",
        "cli",
        "--bin",
        "evenswath",
    ]))?;
    Ok(workspace.target.join("debug").join(format!("evenswath{}", std::env::consts::EXE_SUFFIX)))
}

/// Checks the demo visit.
fn check(program: &std::path::Path, workspace: &Workspace, words: &[String]) -> Result<(), String> {
    process::run(
        Command::new(program).current_dir(&workspace.root).args(["visit", "check", DEMO]).args(words),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn asked_for(words: &[&str]) -> Result<Asked, String> {
        asked(&words.iter().map(|word| (*word).to_owned()).collect::<Vec<_>>())
    }

    #[test]
    fn words_behind_check_go_to_the_command() {
        let words = vec!["--why".to_owned(), "--no-open".to_owned()];
        assert_eq!(asked_for(&["check", "--why", "--no-open"]), Ok(Asked::Check(words)));
    }

    #[test]
    fn the_app_takes_a_port_and_no_more_than_it_knows() {
        let app = |port: Option<&str>, open| Ok(Asked::App { port: port.map(str::to_owned), open });
        assert_eq!(asked_for(&[]), app(None, Open::WhereThereIsOne));
        assert_eq!(asked_for(&["--no-open", "--port", "9000"]), app(Some("9000"), Open::No));
        assert!(asked_for(&["--port"]).is_err());
        assert!(asked_for(&["--why"]).is_err_and(|message| message.contains("check")));
    }
}
