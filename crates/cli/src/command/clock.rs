//! The clock of this machine, for names and for people; nothing is ordered by it.

use std::time::{SystemTime, UNIX_EPOCH};

/// Milliseconds since 1970 in UTC; nought where the clock stands before that.
pub fn milliseconds() -> u64 {
    let since = SystemTime::now().duration_since(UNIX_EPOCH).unwrap_or_default();
    u64::try_from(since.as_millis()).unwrap_or(u64::MAX)
}

/// Milliseconds since 1970 as a day and a time in UTC.
///
/// *Source*: days to a date of the Gregorian calendar, counted in eras of 400 years (146,097 days) that begin in March;
/// common practice.
pub fn day_and_time(milliseconds: i64) -> String {
    let (day, of_day) = day_and_seconds(milliseconds);
    format!("{day} {:02}:{:02} UTC", of_day / 3600, of_day % 3600 / 60)
}

/// The name of a copy made now, which sorts by age: "2027-04-14 15.04.05".
pub fn label() -> String {
    let now = i64::try_from(milliseconds()).unwrap_or(i64::MAX);
    let (day, of_day) = day_and_seconds(now);
    format!("{day} {:02}.{:02}.{:02}", of_day / 3600, of_day % 3600 / 60, of_day % 60)
}

fn day_and_seconds(milliseconds: i64) -> (String, i64) {
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
    (format!("{year:04}-{month:02}-{day:02}"), of_day)
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
