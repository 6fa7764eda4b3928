//! `evenswath notebook log`: every line in the order of the notebook, struck and withdrawn ones too.

use std::path::Path;

use notebook::{Told, Written, folded};
use serde_json::{Value, json};
use words::Words;

use super::kept;
use crate::error::CliError;
use crate::out::Answer;

/// Shows the lines.
pub fn run(folder: &Path, words: &Words) -> Result<Answer, CliError> {
    let book = kept::book(&kept::open(folder)?, folder)?;
    let struck = folded(&book).struck;
    let mut lines = Vec::new();
    let mut answer = Answer::default();
    for line in book.lines() {
        let written = line.written().map(Written::text);
        let mut text = match (written, Told::of(line)) {
            (None, _) => words.label("notebook-withdrawn"),
            (Some(_), None) => words.label("notebook-unknown"),
            (Some(text), Some(_)) => text.to_string(),
        };
        if let Some(reason) = struck.get(&line.id()) {
            text =
                format!("{text}  ({})", words.say("notebook-struck", &[("reason", reason.clone().into())]));
        }
        let device = line.device().to_string();
        answer.verbatim(words.say(
            "notebook-log_line",
            &[
                ("at", day_and_time(line.at().utc_milliseconds).into()),
                ("device", device[device.len().saturating_sub(4)..].to_string().into()),
                ("number", line.number().to_string().into()),
                ("about", line.about().kind.word().into()),
                ("text", text.into()),
            ],
        ));
        lines.push(json!({
            "id": line.id().to_string(),
            "about": { "kind": line.about().kind.word(), "id": line.about().id.to_string() },
            "device": device,
            "number": line.number(),
            "order": line.order(),
            "at": line.at().utc_milliseconds,
            "version": line.version(),
            "entry": written,
            "struck": struck.get(&line.id()).map_or(Value::Null, |reason| Value::from(reason.as_str())),
        }));
    }
    answer.objects = vec![json!({ "lines": lines })];
    Ok(answer)
}

/// Milliseconds since 1970 as a day and a time in UTC.
///
/// *Source*: days to a date of the Gregorian calendar, counted in eras of 400 years (146,097 days) that begin in March;
/// common practice.
fn day_and_time(milliseconds: i64) -> String {
    let seconds = milliseconds.div_euclid(1000);
    let (days, of_day) = (seconds.div_euclid(86_400), seconds.rem_euclid(86_400));
    let days = days + 719_468;
    let (era, of_era) = (days.div_euclid(146_097), days.rem_euclid(146_097));
    let year_of_era = (of_era - of_era / 1460 + of_era / 36_524 - of_era / 146_096) / 365;
    let of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    let month = (5 * of_year + 2) / 153;
    let day = of_year - (153 * month + 2) / 5 + 1;
    let month = if month < 10 { month + 3 } else { month - 9 };
    let year = year_of_era + era * 400 + i64::from(month <= 2);
    format!("{year:04}-{month:02}-{day:02} {:02}:{:02} UTC", of_day / 3600, of_day % 3600 / 60)
}

#[cfg(test)]
mod tests {
    use super::day_and_time;

    #[test]
    fn days_are_those_of_the_calendar() {
        // RFC 3339, 5.8, and `date -u` of GNU coreutils for the leap day and a day before 1970.
        for (milliseconds, text) in [
            (0, "1970-01-01 00:00 UTC"),
            (482_196_050_520, "1985-04-12 23:20 UTC"),
            (951_782_400_000, "2000-02-29 00:00 UTC"),
            (-86_400_000, "1969-12-31 00:00 UTC"),
        ] {
            assert_eq!(day_and_time(milliseconds), text);
        }
    }
}
