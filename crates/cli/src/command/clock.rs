//! The clock of this machine, for names and for people; nothing is ordered by it.

use jiff::tz::{Offset, TimeZone};
use jiff::{Timestamp, ZonedDateTime};
use notebook::At;

/// Milliseconds since 1970 in UTC; nought where the clock stands before that.
pub fn milliseconds() -> u64 {
    u64::try_from(Timestamp::now().as_millisecond()).unwrap_or(0)
}

/// When a line is written, with the minutes that the clock on the wall is ahead of UTC.
pub fn now() -> At {
    let now = ZonedDateTime::now();
    At {
        utc_milliseconds: now.timestamp().as_millisecond(),
        offset_minutes: i16::try_from(now.offset().seconds() / 60).unwrap_or(0),
    }
}

/// A line's day and time as the clock on the wall showed it, with how far that was ahead of UTC: "2027-04-14 10:05 -05:00".
/// A time that no calendar has is told in milliseconds.
pub fn day_and_time(at: At) -> String {
    let zone = Offset::from_seconds(i32::from(at.offset_minutes) * 60).map(TimeZone::fixed);
    match (Timestamp::from_millisecond(at.utc_milliseconds), zone) {
        (Ok(time), Ok(zone)) => time.to_zoned_datetime(zone).strftime("%Y-%m-%d %H:%M %:z").to_string(),
        _ => format!("{} ms", at.utc_milliseconds),
    }
}

/// The name of a copy made now, which sorts by age whatever the clock on the wall does: "2027-04-14 15.04.05", in UTC.
pub fn label() -> String {
    Timestamp::now().to_zoned_datetime(TimeZone::UTC).strftime("%Y-%m-%d %H.%M.%S").to_string()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_is_told_by_the_clock_on_its_wall() {
        // RFC 3339, 5.8: 1985-04-12T23:20:50.52Z, and the same moment five hours behind UTC.
        let at = |utc_milliseconds, offset_minutes| At { utc_milliseconds, offset_minutes };
        assert_eq!(day_and_time(at(482_196_050_520, 0)), "1985-04-12 23:20 +00:00");
        assert_eq!(day_and_time(at(482_196_050_520, -300)), "1985-04-12 18:20 -05:00");
        assert_eq!(day_and_time(at(951_782_400_000, 0)), "2000-02-29 00:00 +00:00");
    }

    #[test]
    fn any_time_of_any_line_is_told() {
        for at in [
            At { utc_milliseconds: i64::MIN, offset_minutes: i16::MAX },
            At { utc_milliseconds: i64::MAX, offset_minutes: i16::MIN },
        ] {
            assert!(day_and_time(at).ends_with(" ms"), "{}", day_and_time(at));
        }
    }
}
