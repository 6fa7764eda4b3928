//! How often a diagnosis is right: what is taken for what, and plain rules beside it; what the tables count.

use crate::diagnosed::{SectionScore, SprayerScore, TipScore};
use crate::ratio::{Counted, Ratio};
use crate::tables::table::{Table, number, percent};

/// From this chance on something is called. Our own choice: more likely than not.
pub(super) const CALLED: f64 = 0.5;
/// The names of the causes, as the tables have them.
const CAUSES: [&str; 5] = ["sound", "worn", "partly plugged", "plugged", "wrong tip"];

/// A world's scores with its name and what was done.
pub(crate) struct InWorld<'a> {
    /// Its name.
    pub name: &'a str,
    /// What was done before the diagnosis.
    pub done: &'a str,
    /// The scores.
    pub scores: &'a [SprayerScore],
}

impl InWorld<'_> {
    pub fn whole_name(&self) -> String {
        if self.done == ONCE { self.name.to_owned() } else { format!("{}, {}", self.name, self.done) }
    }
}

/// What is done where each tip is caught once and no more.
pub(crate) const ONCE: &str = "each tip caught once";

/// Something counted over sprayers: the tips or sections that count, and those that are so.
pub(super) fn share<Part>(
    scores: &[SprayerScore],
    parts: impl Fn(&SprayerScore) -> &[Part],
    so: impl Fn(&Part) -> Option<f64>,
) -> Ratio {
    let mut ratio = Ratio::default();
    for score in scores {
        let mut counted = Counted::default();
        parts(score).iter().filter_map(&so).for_each(|value| counted.add(value));
        ratio.draw(counted);
    }
    ratio
}

pub(super) fn of_tips(scores: &[SprayerScore], so: impl Fn(&TipScore) -> Option<f64>) -> Ratio {
    share(scores, |score| &score.tips, so)
}

pub(super) fn of_sections(scores: &[SprayerScore], so: impl Fn(&SectionScore) -> Option<f64>) -> Ratio {
    share(scores, |score| &score.sections, so)
}

pub(super) fn one_if(so: bool) -> f64 {
    f64::from(u8::from(so))
}

pub(super) fn faulty(tip: &TipScore) -> f64 {
    1.0 - tip.causes[0]
}

pub(super) fn odd(tip: &TipScore) -> bool {
    tip.truth != 0 || tip.slipped
}

pub(super) fn likeliest(tip: &TipScore) -> (usize, f64) {
    let better = |best: (usize, f64), (place, chance): (usize, &f64)| {
        if *chance > best.1 { (place, *chance) } else { best }
    };
    tip.causes.iter().enumerate().fold((0, -1.0), better)
}

/// What is taken for what.
pub(crate) fn confusion(worlds: &[InWorld<'_>]) -> Table {
    let mut heads = vec!["world", "truly"];
    heads.extend(CAUSES);
    let says = "Tips by what they truly are and by their likeliest cause. One cup cannot tell a worn tip from one a size larger, nor a \
                misread cup from a fault: that is what the next check is for.";
    let mut table = Table::new("What is taken for what", says, &heads);
    for world in worlds {
        for (truth, name) in CAUSES.iter().enumerate() {
            let mut row = vec![world.whole_name(), (*name).to_owned()];
            for cause in 0..CAUSES.len() {
                let tips = world.scores.iter().flat_map(|score| &score.tips);
                row.push(
                    tips.filter(|tip| tip.truth == truth && likeliest(tip).0 == cause).count().to_string(),
                );
            }
            table.row(row);
        }
    }
    table
}

/// The plain rules on the same cups.
pub(crate) fn plain_rules(worlds: &[InWorld<'_>]) -> Table {
    let says = "A tip is called when its cup is farther off than the share told. The diagnosis in the first row of each world.";
    let heads = ["world", "rule", "faulty tips called", "sound tips not called", "false alarms a sprayer"];
    let mut table = Table::new("Beside plain rules", says, &heads);
    for world in worlds.iter().filter(|world| world.done == ONCE) {
        let mut line = |rule: String, called: &dyn Fn(&TipScore) -> bool| {
            let alarms =
                |score: &SprayerScore| score.tips.iter().filter(|tip| tip.truth == 0 && called(tip)).count();
            let mut ratio = Ratio::default();
            world.scores.iter().for_each(|score| ratio.draw(Counted { so: alarms(score) as f64, of: 1.0 }));
            table.row(vec![
                world.name.to_owned(),
                rule,
                percent(&of_tips(world.scores, |tip| (tip.truth != 0).then(|| one_if(called(tip))))),
                percent(&of_tips(world.scores, |tip| (tip.truth == 0).then(|| one_if(!called(tip))))),
                number(&ratio, 3),
            ]);
        };
        line("the diagnosis".to_owned(), &|tip| faulty(tip) >= CALLED);
        for (against, name) in ["mean", "median", "rated flow"].iter().enumerate() {
            for limit in [5, 10, 15] {
                line(format!("{limit} % of the {name}"), &|tip| tip.off[against] > f64::from(limit) / 100.0);
            }
        }
    }
    table
}
