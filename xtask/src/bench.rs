//! `cargo xtask bench`: how long things take, beside a reference run on the same machine.
//!
//! A bench is a plain program in a crate's `benches` folder (`harness = false`) that prints one line per case:
//! the name, a tab, the nanoseconds for one go. A script in `tools/bench` prints the same name, or the name and `_` and
//! the library's, for the same work done by a general-purpose library. Other lines go through to standard error.

use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

use crate::process;
use crate::python;
use crate::workspace::Workspace;

const FOLDER: &str = "tools/bench";

/// Runs all benches and the reference scripts, and prints one table.
pub fn run(workspace: &Workspace, rest: &[String]) -> Result<(), String> {
    let ours = ours(workspace, rest)?;
    let (reference, missing) = reference(workspace);
    print!("{}", table(&ours, &reference));
    if let Some(why) = missing {
        eprintln!("\nNo reference beside these figures: {why}");
    }
    Ok(())
}

/// Nanoseconds by name of case.
type Times = BTreeMap<String, f64>;

fn ours(workspace: &Workspace, rest: &[String]) -> Result<Times, String> {
    let with_benches =
        workspace.crates.iter().filter(|package| package.targets.iter().any(|target| target.kind == "bench"));
    let packages: Vec<&str> = with_benches.flat_map(|package| ["--package", package.name.as_str()]).collect();
    if packages.is_empty() {
        return Err(
            "no crate has a bench yet; add one in its `benches` folder, with `harness = false`".to_owned()
        );
    }
    let mut command = process::cargo(&workspace.root);
    command.arg("bench").args(packages).args(["--bench", "*"]).arg("--").args(rest);
    process::announce(&command);
    Ok(times(&process::output_of(&mut command)?))
}

fn reference(workspace: &Workspace) -> (Times, Option<String>) {
    let scripts = python::scripts(&workspace.root.join(FOLDER));
    if scripts.is_empty() {
        return (Times::new(), Some(format!("there are no scripts in {FOLDER}")));
    }
    let python = match python::ready(workspace) {
        Ok(python) => python,
        Err(unready) => return (Times::new(), Some(unready.into())),
    };
    let mut all = Times::new();
    let mut failed = None;
    for script in scripts {
        let mut command = Command::new(&python);
        command.arg(script).current_dir(&workspace.root);
        process::announce(&command);
        match process::output_of(&mut command) {
            Ok(text) => all.extend(times(&text)),
            Err(message) => failed = Some(message),
        }
    }
    (all, failed)
}

fn times(output: &str) -> Times {
    let mut times = Times::new();
    for line in output.lines() {
        match line.split_once('\t').and_then(|(name, figure)| Some((name, figure.trim().parse().ok()?))) {
            Some((name, nanoseconds)) => {
                times.insert(name.trim().to_owned(), nanoseconds);
            }
            None => eprintln!("{line}"),
        }
    }
    times
}

/// Name, ours, reference, and how many times as long the reference takes.
///
/// A case may have several references: `measured_60_tips_numpy` is one for our `measured_60_tips`.
fn table(ours: &Times, reference: &Times) -> String {
    let mut rows: Vec<(&str, Option<f64>, Option<f64>)> = Vec::new();
    let mut matched = BTreeSet::new();
    for (name, other) in reference {
        let case = ours.keys().filter(|case| is_reference_for(name, case)).max_by_key(|case| case.len());
        matched.extend(case);
        rows.push((name, case.map(|case| ours[case]), Some(*other)));
    }
    let alone = ours.iter().filter(|(name, _)| !matched.contains(name));
    rows.extend(alone.map(|(name, own)| (name.as_str(), Some(*own), None)));
    rows.sort_by_key(|(name, _, _)| *name);

    let width = rows.iter().map(|(name, _, _)| name.chars().count()).max().unwrap_or(0).max(4);
    let mut text = format!("{:<width$}  {:>12}  {:>12}  {:>10}\n", "name", "ours", "reference", "ratio");
    for (name, own, other) in rows {
        let ratio = own.zip(other).map(|(own, other)| format!("{:.1} x", other / own));
        text.push_str(&format!(
            "{name:<width$}  {:>12}  {:>12}  {:>10}\n",
            duration(own),
            duration(other),
            ratio.unwrap_or_else(|| "-".to_owned()),
        ));
    }
    text
}

fn is_reference_for(name: &str, case: &str) -> bool {
    name.strip_prefix(case).is_some_and(|rest| rest.is_empty() || rest.starts_with('_'))
}

fn duration(nanoseconds: Option<f64>) -> String {
    match nanoseconds {
        None => "-".to_owned(),
        Some(figure) if figure < 1e3 => format!("{figure:.1} ns"),
        Some(figure) if figure < 1e6 => format!("{:.2} us", figure / 1e3),
        Some(figure) if figure < 1e9 => format!("{:.2} ms", figure / 1e6),
        Some(figure) => format!("{:.2} s", figure / 1e9),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_only_lines_of_name_tab_figure() {
        let found = times("running\nparse a reading\t120.5\nnot a figure\tfast\n");
        assert_eq!(found.len(), 1);
        assert!((found["parse a reading"] - 120.5).abs() < 1e-9);
    }

    #[test]
    fn each_reference_of_a_case_has_its_ratio() {
        let text = table(&times("tips\t100\ntips_all\t10"), &times("tips_numpy\t300\ntips_all_numpy\t500"));
        let ends: Vec<&str> = text.lines().skip(1).filter_map(|line| line.split("  ").last()).collect();
        assert_eq!(ends.len(), 2, "{text}");
        assert!(ends[0].contains("50.0 x") && ends[1].contains("3.0 x"), "{text}");
    }

    #[test]
    fn a_case_without_a_reference_has_no_ratio() {
        let ours = times("both\t1000\nalone\t5");
        let reference = times("both\t25000");
        let text = table(&ours, &reference);
        let line = |name: &str| text.lines().find(|line| line.starts_with(name)).unwrap().to_owned();
        assert!(line("both").ends_with("25.0 x"), "{text}");
        assert!(line("both").contains("1.00 us"), "{text}");
        assert!(line("alone").ends_with('-'), "{text}");
    }
}
