//! The notebook of an invented county, made out of the visit files in `demo`.

use std::path::{Path, PathBuf};
use std::process::Command;

use crate::app::stamp;
use crate::process;
use crate::workspace::Workspace;

/// The other visits of the county.
const COUNTY: &str = "demo/county";

/// The folder of the notebook, made where there is none or the visits have changed.
pub fn ready(workspace: &Workspace, program: &Path) -> Result<PathBuf, String> {
    let folder = workspace.target.join("demo");
    let (notebook, kept) = (folder.join("notebook"), folder.join("visits.stamp"));
    let (first, county) = (workspace.root.join(super::DEMO), workspace.root.join(COUNTY));
    let stamp = stamp::of(&first, std::slice::from_ref(&county))?;
    if notebook.is_dir() && std::fs::read_to_string(&kept).is_ok_and(|text| text == stamp) {
        eprintln!("{} is there, with all that was written in it since", notebook.display());
        return Ok(notebook);
    }
    let failed = |error: std::io::Error| format!("cannot make {}: {error}", notebook.display());
    if folder.exists() {
        eprintln!("The visits in demo have changed: {} begins anew.", notebook.display());
        std::fs::remove_dir_all(&folder).map_err(failed)?;
    }
    std::fs::create_dir_all(&folder).map_err(failed)?;
    let import = ["notebook", "import"];
    process::run(Command::new(program).args(import).arg(&notebook).args(by_date(&first, &county)?))?;
    std::fs::write(&kept, stamp).map_err(failed)?;
    Ok(notebook)
}

/// The visit files, the oldest visit first: so they were written.
fn by_date(first: &Path, county: &Path) -> Result<Vec<PathBuf>, String> {
    let entries =
        std::fs::read_dir(county).map_err(|error| format!("cannot read {}: {error}", county.display()))?;
    let county = entries.flatten().map(|entry| entry.path());
    let visits = county.filter(|path| path.extension().is_some_and(|ending| ending == "toml"));
    let mut dated = Vec::new();
    for path in visits.chain([first.to_path_buf()]) {
        let text = std::fs::read_to_string(&path)
            .map_err(|error| format!("cannot read {}: {error}", path.display()))?;
        dated.push((date(&text), path));
    }
    dated.sort();
    Ok(dated.into_iter().map(|(_, path)| path).collect())
}

/// The day of a visit as its file writes it, which sorts as text.
fn date(text: &str) -> String {
    let line = text.lines().find_map(|line| line.strip_prefix("date = "));
    line.unwrap_or_default().trim_matches('"').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_county_stands_in_the_order_of_its_days() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
        let files = by_date(&root.join(super::super::DEMO), &root.join(COUNTY)).unwrap();
        assert!(files.len() > 5 && files[0].ends_with("willow-bend.toml"), "{files:?}");
        let dates: Vec<String> =
            files.iter().map(|file| date(&std::fs::read_to_string(file).unwrap())).collect();
        assert!(dates.is_sorted() && dates.iter().all(|date| date.len() == "2027-04-14".len()), "{dates:?}");
    }
}
