//! Dates as the reader writes them, out of year-month-day.

use fluent_bundle::FluentValue;

use crate::catalogue::Words;

impl Words {
    /// A day written "2027-04-14" as the reader writes it: "April 14, 2027", "14 de abril de 2027". What is no such day
    /// is given back as it was written.
    #[must_use]
    pub fn date(&self, written: &str) -> String {
        match year_month_day(written) {
            Some((year, month, day)) => {
                let month = self.label(&format!("month-{month}"));
                let args = [
                    ("day", FluentValue::from(day.to_string())),
                    ("month", FluentValue::from(month)),
                    ("year", FluentValue::from(year.to_string())),
                ];
                self.say("date", &args)
            }
            None => written.to_string(),
        }
    }
}

/// The parts of a day in ISO 8601's extended form, where the text is one.
fn year_month_day(written: &str) -> Option<(u32, u32, u32)> {
    let mut parts = written.trim().split('-');
    let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
    let number = |text: &str, letters: usize| -> Option<u32> {
        (text.len() == letters && text.bytes().all(|sign| sign.is_ascii_digit()))
            .then(|| text.parse().ok())
            .flatten()
    };
    let found = (number(year, 4)?, number(month, 2)?, number(day, 2)?);
    (parts.next().is_none() && (1..=12).contains(&found.1) && (1..=31).contains(&found.2)).then_some(found)
}
