//! From screen to screen; a visit begun.

use notebook::{Entry, ThingId, Told};

use crate::effect::Effect;
use crate::event::Keep;
use crate::keeping::OPEN;
use crate::opened::{Opened, fold_one};
use crate::state::{Screen, State, Waits};
use crate::write::{With, fact};

/// Facts of a sprayer that hold from visit to visit, by their beginning. The setting is what to repeat: it is read off again
/// where it changed, and last time's stands there to be compared.
const HOLD_ON: &[&str] = &[
    "visit.sprayer",
    "visit.farm",
    "visit.operator",
    "sprayer.",
    "catch.cup_marks",
    "catch.cup_holds",
    "catch.limit",
    "catch.new_limit",
    "spacing.tape_marks",
    "target.",
    "drive.course",
];

impl State {
    /// To a screen; what belongs to it is made ready.
    pub fn go(&mut self, screen: Screen, with: &mut With<'_>) -> Vec<Effect> {
        let mut effects = Vec::new();
        match &screen {
            Screen::Gate => self.refill_shelf(),
            Screen::Cup | Screen::CupRow if self.visit.is_some() => effects.extend(self.begin_cups(with)),
            Screen::HandsFree if self.visit.is_some() => effects.extend(self.open_hands_free(with)),
            Screen::DriveWatch if matches!(self.drive.is, crate::drive::Watch::Stopped { .. }) => {
                self.drive.is = crate::drive::Watch::Idle;
            }
            _ => {}
        }
        let needs_visit = !matches!(screen, Screen::Gate | Screen::Settings | Screen::Keeping);
        self.screen = if needs_visit && self.visit.is_none() { Screen::Gate } else { screen };
        effects.push(Effect::Focus("top".to_string()));
        effects
    }

    /// To the screen above. A running watch is not left by accident: it stops.
    pub fn back(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        let mut effects = Vec::new();
        let above = match self.screen {
            Screen::Gate | Screen::Visit => Screen::Gate,
            Screen::Settings | Screen::Keeping if self.visit.is_none() => Screen::Gate,
            Screen::HandsFree => {
                effects.extend(self.hands_free_stop(with.at));
                Screen::Visit
            }
            Screen::DriveWatch => {
                if matches!(self.drive.is, crate::drive::Watch::Running { .. }) {
                    effects.extend(self.drive_again(with));
                }
                Screen::Visit
            }
            _ => Screen::Visit,
        };
        if above == Screen::Gate {
            effects.extend(self.leave());
        }
        self.screen = above;
        effects.push(Effect::Focus("top".to_string()));
        effects
    }

    /// The open visit is left; what is kept of it is found again.
    fn leave(&mut self) -> Vec<Effect> {
        self.visit = None;
        self.catching = None;
        self.hands_free = None;
        self.refill_shelf();
        vec![Effect::Remember { name: OPEN.to_string(), text: String::new() }, Effect::Address(None)]
    }

    /// A new visit.
    pub fn begin(&mut self, of: Option<ThingId>, keep: Keep, with: &mut With<'_>) -> Vec<Effect> {
        if self.holder().is_none() {
            return Vec::new();
        }
        let id = with.chance.thing();
        let sprayer = of.unwrap_or_else(|| with.chance.thing());
        let mut told = vec![Told::from(Entry::Of { sprayer })];
        told.push(fact("visit.date", notebook::Value::text(&day(with)), None));
        told.extend(self.last_time_of(sprayer));
        let mut effects = self.begin_as(id, keep);
        effects.extend(self.write(&told, with));
        if of.is_some()
            && let Some(visit) = &mut self.visit
            && visit.visit.machine.is_some()
        {
            visit.unfolded = Some(crate::plan::Step::Safe);
        }
        effects
    }

    /// An empty visit of this name is open.
    pub(crate) fn begin_as(&mut self, id: ThingId, keep: Keep) -> Vec<Effect> {
        self.visit = Some(Opened::new(id, keep));
        self.catching = None;
        self.hands_free = None;
        self.drive = crate::drive::DriveWatch { sensing: Waits::No, ..Default::default() };
        self.screen = Screen::Visit;
        let mut effects = vec![Effect::Focus("top".to_string())];
        if keep == Keep::Kept {
            effects.push(Effect::Remember { name: OPEN.to_string(), text: id.to_string() });
            effects.push(Effect::Address(Some(id)));
        }
        effects
    }

    /// What held at the last visit of a sprayer and holds until someone says otherwise.
    fn last_time_of(&self, sprayer: ThingId) -> Vec<Told> {
        let known = self.shelf.sprayers.iter().find(|known| known.id == sprayer);
        let (Some(last), Some(holder)) = (known.and_then(|known| known.visits.first()), self.holder()) else {
            return Vec::new();
        };
        let kept = self.lines.get(last).map_or(&[][..], Vec::as_slice);
        let folded = fold_one(*last, kept, self.on_the_way.iter(), holder);
        folded
            .facts
            .iter()
            .filter(|(field, _)| HOLD_ON.iter().any(|begin| field.starts_with(begin)))
            .map(|(field, held)| fact(field, held.value.clone(), None))
            .collect()
    }
}

/// The day on the wall, as year-month-day.
fn day(with: &With<'_>) -> String {
    let seconds = with.at.wall.div_euclid(1000) + i64::from(with.at.offset_minutes) * 60;
    date_of_days(seconds.div_euclid(86_400))
}

/// A day by its number since 1970-01-01, as year-month-day.
///
/// *Source*: proleptic Gregorian calendar of ISO 8601; the count of days by eras of 400 years is common arithmetic.
pub(crate) fn date_of_days(days: i64) -> String {
    // Counted from 0000-03-01, so that the leap day is the last of its year. 719,468 days before 1970-01-01.
    let shifted = days + 719_468;
    // 146,097 days are 400 years.
    let (era, of_era) = (shifted.div_euclid(146_097), shifted.rem_euclid(146_097));
    // Years in the era: a leap day each 4 years (1,460 days), none each 100 (36,524), one each 400 (146,096).
    let year_of_era = (of_era - of_era / 1_460 + of_era / 36_524 - of_era / 146_096) / 365;
    let of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    // From March on, five months have 153 days.
    let month = (5 * of_year + 2) / 153;
    let day = of_year - (153 * month + 2) / 5 + 1;
    let month = if month < 10 { month + 3 } else { month - 9 };
    let year = year_of_era + era * 400 + i64::from(month <= 2);
    format!("{year:04}-{month:02}-{day:02}")
}

#[cfg(test)]
mod tests {
    use super::date_of_days;

    #[test]
    fn days_have_their_dates() {
        // POSIX.1-2017, 4.16 "Seconds Since the Epoch", and the Gregorian rule of leap years (ISO 8601).
        for (days, date) in [
            (0, "1970-01-01"),
            (-1, "1969-12-31"),
            (59, "1970-03-01"),
            (11_016, "2000-02-29"),
            (20_782, "2026-11-25"),
        ] {
            assert_eq!(date_of_days(days), date);
        }
    }
}
