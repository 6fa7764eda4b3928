//! The rounding trap: one bad tip among twenty, by cup and time, by the plain rule and by the verdict.

use simulator::{CupKind, Hands, KitWorld};
use units::{Time, Verdict};

use crate::calls::{Way, judge};
use crate::draw::DrawError;
use crate::one_bad_tip::{BAD_TIP, Off, OneTest, one_bad_tip};
use crate::ratio::{Counted, Ratio};
use crate::split::{Cores, in_order};
use crate::tables::table::Table;

/// The true faults of the published table, over the other tips.
const FAULTS: [f64; 5] = [0.08, 0.10, 0.12, 0.15, 0.20];

/// A column: its name, cup, time, repeats, and the chance that the plain rule flags each fault as first worked out.
struct Column {
    name: &'static str,
    cup: CupKind,
    time: Time,
    repeats: u32,
    expected_percent: [f64; 5],
}

/// Source of the expected percentages: this house's collection of standards, section 10.4 (Monte Carlo with real
/// rounding, derived there by other code).
const COLUMNS: &[Column] = &[
    Column {
        name: "ounces, 30 s",
        cup: CupKind::OUNCES,
        time: Time::seconds(30.0),
        repeats: 1,
        expected_percent: [1.0, 1.0, 12.0, 95.0, 100.0],
    },
    Column {
        name: "ounces, 30 s, mean of 3",
        cup: CupKind::OUNCES,
        time: Time::seconds(30.0),
        repeats: 3,
        expected_percent: [0.5, 0.7, 28.0, 100.0, 100.0],
    },
    Column {
        name: "ounces, 60 s",
        cup: CupKind::OUNCES,
        time: Time::seconds(60.0),
        repeats: 1,
        expected_percent: [3.0, 3.0, 90.0, 100.0, 100.0],
    },
    Column {
        name: "10 mL, 30 s",
        cup: CupKind::TEN_MILLILITRES,
        time: Time::seconds(30.0),
        repeats: 1,
        expected_percent: [4.0, 47.0, 82.0, 100.0, 100.0],
    },
];

pub(crate) fn rounding(draws: u32, from: u64, cores: Cores) -> Result<Table, DrawError> {
    let says = format!(
        "Twenty tips of 0.2 gal/min, sound ones spread by 2 %, one over the others by the share told; limit 10 % of the \
         mean. First how often the plain rule flags that tip where timing and the marks are the only errors: as worked \
         out beforehand by other code, and here. Then with all announced errors (a cup 1 % off as a whole moves the marks \
         against the flow): how often the plain rule flags it, and what the verdict says of it. {draws} draws for each \
         figure, seeds from {from}. On 8 and 10 % *within* is right (they are 7.6 and 9.5 % over the mean), from 12 % on *outside* is."
    );
    let heads = [
        "true fault",
        "cup",
        "plain, expected",
        "plain, here",
        "plain, all errors",
        "within",
        "cannot tell",
        "outside",
    ];
    let mut table = Table::new("The rounding trap", &says, &heads);
    for (place, fault) in FAULTS.iter().enumerate() {
        for column in COLUMNS {
            let said = |kit: KitWorld, way: Way| {
                let test = OneTest { cup: column.cup, time: column.time, repeats: column.repeats, kit };
                let said = in_order(draws, cores, |draw| {
                    let draw = one_bad_tip(Off::TheOthers(*fault), &test, from + u64::from(draw))?;
                    Ok(of_bad_tip(&judge(&draw, way)?))
                });
                said.into_iter().collect::<Result<Vec<Option<Verdict>>, DrawError>>()
            };
            let bare = said(marks_and_hand(), Way::Plain)?;
            let plain = said(KitWorld::careful(), Way::Plain)?;
            let boom = said(KitWorld::careful(), Way::Boom)?;
            table.row(vec![
                format!("+{:.0} %", 100.0 * fault),
                column.name.to_owned(),
                format!("{} %", column.expected_percent[place]),
                share(&bare, Verdict::Outside),
                share(&plain, Verdict::Outside),
                share(&boom, Verdict::Within),
                share(&boom, Verdict::CannotTell),
                share(&boom, Verdict::Outside),
            ]);
        }
    }
    Ok(table)
}

/// Timing by hand and the marks as the only errors.
fn marks_and_hand() -> KitWorld {
    let hands = Hands { handling: 0.0, eye: 0.0, ..Hands::careful() };
    KitWorld { cup_scale: 0.0, hands, ..KitWorld::careful() }
}

fn share(said: &[Option<Verdict>], wanted: Verdict) -> String {
    let mut ratio = Ratio::default();
    for one in said {
        ratio.draw(Counted { so: f64::from(u8::from(*one == Some(wanted))), of: 1.0 });
    }
    match (ratio.value(), ratio.standard_error()) {
        (Some(value), Some(error)) => format!("{:.1} ± {:.1} %", 100.0 * value, 100.0 * error),
        _ => "-".to_owned(),
    }
}

fn of_bad_tip(calls: &[crate::Call]) -> Option<Verdict> {
    calls.iter().find(|call| call.tip == BAD_TIP).map(|call| call.verdict)
}
