//! `evenswath notebook export` and `visit`: the whole as one plain file, a visit as a visit file.

use std::path::Path;

use notebook::{ThingId, folded, write_file};
use serde_json::json;
use units::{Arg, Args};
use words::Words;

use super::kept;
use crate::error::CliError;
use crate::out::Answer;

/// Writes the whole notebook.
pub fn run(folder: &Path, to: Option<&Path>, words: &Words) -> Result<Answer, CliError> {
    let book = kept::book(&kept::open(folder)?, folder)?;
    let text = write_file(&book);
    let Some(path) = to else {
        let mut answer = Answer::of(json!({ "lines": book.len(), "written": null, "notebook": text }));
        answer.verbatim(text.trim_end());
        return Ok(answer);
    };
    super::super::sheet::write_whole(path, text.as_bytes())?;
    let file = path.display().to_string();
    let mut answer = Answer::of(json!({ "lines": book.len(), "written": file }));
    answer.plain(words.say("notebook-exported", &[("file", file.into()), ("lines", book.len().into())]));
    Ok(answer)
}

/// Prints a visit as a visit file.
pub fn visit(folder: &Path, wanted: Option<&str>) -> Result<Answer, CliError> {
    let folded = folded(&kept::book(&kept::open(folder)?, folder)?);
    let id = match wanted {
        Some(name) => ThingId::parse(name).filter(|id| folded.visits.contains_key(id)),
        None if folded.visits.len() == 1 => folded.visits.keys().next().copied(),
        None => None,
    };
    let Some((id, visit)) = id.and_then(|id| Some((id, folded.visits.get(&id)?))) else {
        let visits: Vec<String> = folded.visits.keys().map(ToString::to_string).collect();
        return Err(match wanted {
            Some(name) => {
                CliError::usage("notebook_no_visit", Args::new().with("visit", Arg::Text(name.to_string())))
            }
            None => {
                let count = u32::try_from(visits.len()).unwrap_or(u32::MAX);
                let args =
                    Args::new().with("count", Arg::Count(count)).with("visits", Arg::Text(visits.join(", ")));
                CliError::usage("notebook_several_visits", args)
            }
        });
    };
    let file = visit.file();
    let mut answer = Answer::of(json!({ "visit": id.to_string(), "file": file }));
    answer.verbatim(file.trim_end());
    Ok(answer)
}
