//! How often a diagnosis is right: found and spared, said and so, beside plain rules.

use crate::diagnosed::{SectionScore, SprayerScore, TipScore};
use crate::ratio::{Counted, Ratio};
use crate::tables::table::{Table, number, percent};

/// From this chance on something is called. Our own choice: more likely than not.
const CALLED: f64 = 0.5;
/// A section that loses more is restricted.
const RESTRICTED: f64 = 0.04;
/// The names of the causes, as the tables have them.
const CAUSES: [&str; 5] = ["sound", "worn", "partly plugged", "plugged", "wrong tip"];

/// A world's scores with its name and first seed.
pub(crate) struct InWorld<'a> {
    /// Its name.
    pub name: &'a str,
    /// The first seed.
    pub from: u64,
    /// The scores.
    pub scores: &'a [SprayerScore],
}

/// Something counted over sprayers: the tips or sections that count, and those that are so.
fn share<Part>(
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

fn of_tips(scores: &[SprayerScore], so: impl Fn(&TipScore) -> Option<f64>) -> Ratio {
    share(scores, |score| &score.tips, so)
}

fn of_sections(scores: &[SprayerScore], so: impl Fn(&SectionScore) -> Option<f64>) -> Ratio {
    share(scores, |score| &score.sections, so)
}

fn one_if(so: bool) -> f64 {
    f64::from(u8::from(so))
}

fn faulty(tip: &TipScore) -> f64 {
    1.0 - tip.causes[0]
}

fn odd(tip: &TipScore) -> bool {
    tip.truth != 0 || tip.slipped
}

fn likeliest(tip: &TipScore) -> (usize, f64) {
    let better = |best: (usize, f64), (place, chance): (usize, &f64)| {
        if *chance > best.1 { (place, *chance) } else { best }
    };
    tip.causes.iter().enumerate().fold((0, -1.0), better)
}

/// What is aimed at and what is reached.
pub(crate) fn aims(worlds: &[InWorld<'_>], count: u32) -> Table {
    let says = format!(
        "24 tips in three sections, each caught once for 30 s and read to 10 mL; of 100 tips 12 are wrong and of 100 cups 3 misread or \
         mistimed. {count} sprayers a world. A tip or section is called from a chance of a half on. In the mismatched world wear begins at 6 % \
         and blockage at 7 %, sound tips, hands and gauge have heavy tails, slips are of any size and losses of sections even: a good \
         part of these faults lies where sound tips do, and no cup can part them. *Named cups again*: the cups that the diagnosis names \
         are caught once more. ± is the standard error over sprayers."
    );
    let mut heads = vec!["figure", "aim"];
    heads.extend(worlds.iter().map(|world| world.name));
    let mut table = Table::new("What is wrong: aims", &says, &heads);
    let each = |figure: &str, aim: &str, of: &dyn Fn(&[SprayerScore]) -> String| -> Vec<String> {
        let mut row = vec![figure.to_owned(), aim.to_owned()];
        row.extend(worlds.iter().map(|world| of(world.scores)));
        row
    };
    let rows = [
        each("seeds from", "", &|scores| {
            worlds
                .iter()
                .find(|world| std::ptr::eq(world.scores, scores))
                .map_or(String::new(), |world| world.from.to_string())
        }),
        each("faulty tips called", "95 %", &|scores| {
            aimed(0.95, &of_tips(scores, |tip| (tip.truth != 0).then(|| one_if(faulty(tip) >= CALLED))))
        }),
        each("sound tips not called", "98.5 %", &|scores| {
            aimed(0.985, &of_tips(scores, |tip| (tip.truth == 0).then(|| one_if(faulty(tip) < CALLED))))
        }),
        each("faulty tips called where 98.5 % of sound ones are not", "95 %", &|scores| {
            at_specificity(scores, 0.985)
        }),
        each("cups caught again, a sprayer", "", &|scores| {
            let mut ratio = Ratio::default();
            scores.iter().for_each(|score| ratio.draw(Counted { so: f64::from(score.again), of: 1.0 }));
            number(&ratio, 2)
        }),
        each("tips faulty or misread, called one or the other", "95 %", &|scores| {
            aimed(0.95, &of_tips(scores, |tip| odd(tip).then(|| one_if(tip.in_order < CALLED))))
        }),
        each("tips sound and read right, not called either", "98.5 %", &|scores| {
            aimed(0.985, &of_tips(scores, |tip| (!odd(tip)).then(|| one_if(tip.in_order >= CALLED))))
        }),
        each("false alarms a sprayer", "", &|scores| {
            let mut ratio = Ratio::default();
            for score in scores {
                let false_alarms =
                    score.tips.iter().filter(|tip| tip.truth == 0 && faulty(tip) >= CALLED).count();
                ratio.draw(Counted { so: false_alarms as f64, of: 1.0 });
            }
            number(&ratio, 3)
        }),
        each("likeliest cause is right", "", &|scores| {
            percent(&of_tips(scores, |tip| Some(one_if(likeliest(tip).0 == tip.truth))))
        }),
        each("log score of a tip", "", &|scores| {
            number(&of_tips(scores, |tip| Some(-libm::log(tip.causes[tip.truth].max(1e-12)))), 4)
        }),
        each("Brier score of any fault", "", &|scores| {
            let brier = |tip: &TipScore| {
                let off = faulty(tip) - one_if(tip.truth != 0);
                Some(off * off)
            };
            number(&of_tips(scores, brier), 4)
        }),
        each("expected calibration error", "under 1 %", &|scores| at_most(0.01, calibration_error(scores))),
        each("top bin (from 95 %): said less so", "under 2 %", &top_bin),
        each("restricted sections called", "97 %", &|scores| {
            aimed(
                0.97,
                &of_sections(scores, |one| (one.loss > RESTRICTED).then(|| one_if(one.restricted >= CALLED))),
            )
        }),
        each("free sections not called", "98.5 %", &|scores| {
            aimed(
                0.985,
                &of_sections(scores, |one| (one.loss <= RESTRICTED).then(|| one_if(one.restricted < CALLED))),
            )
        }),
        each("ranges of loss that hold it", "95 %", &|scores| {
            aimed(0.95, &of_sections(scores, |one| Some(one_if(one.covered))))
        }),
        each("misread cups called", "", &|scores| {
            percent(&of_tips(scores, |tip| tip.slipped.then(|| one_if(tip.misread >= CALLED))))
        }),
        each("cups called misread that are", "", &|scores| {
            percent(&of_tips(scores, |tip| (tip.misread >= CALLED).then(|| one_if(tip.slipped))))
        }),
    ];
    rows.into_iter().for_each(|row| table.row(row));
    table
}

/// A share beside what it should at least be.
fn aimed(aim: f64, ratio: &Ratio) -> String {
    let missed = ratio.value().is_some_and(|value| value < aim);
    format!("{}{}", percent(ratio), if missed { MISSED } else { "" })
}

/// A share beside what it should at most be.
fn at_most(aim: f64, value: f64) -> String {
    format!("{:.2} %{}", 100.0 * value, if value > aim { MISSED } else { "" })
}

/// How an aim that is not reached is marked.
const MISSED: &str = " **missed**";

/// The faulty tips called at the chance from which so many sound ones are spared.
fn at_specificity(scores: &[SprayerScore], spared: f64) -> String {
    let mut sound: Vec<f64> =
        scores.iter().flat_map(|score| &score.tips).filter(|tip| tip.truth == 0).map(faulty).collect();
    sound.sort_by(f64::total_cmp);
    let place = (sound.len() as f64 * spared).ceil();
    // A count of tips, far below any limit.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let from = sound.get((place as usize).min(sound.len().saturating_sub(1))).copied().unwrap_or(1.0);
    let found = of_tips(scores, |tip| (tip.truth != 0).then(|| one_if(faulty(tip) > from)));
    format!("{} (from {from:.2})", aimed(0.95, &found))
}

/// Twenty bins of the likeliest cause's chance: how far said and so are apart, by how many tips each has.
fn calibration_error(scores: &[SprayerScore]) -> f64 {
    let mut bins = [(0.0, 0.0, 0.0); 20];
    let tips = scores.iter().flat_map(|score| &score.tips);
    let mut all = 0.0;
    for tip in tips {
        let (cause, chance) = likeliest(tip);
        // At most nineteen.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let bin = ((chance * 20.0) as usize).min(19);
        bins[bin].0 += 1.0;
        bins[bin].1 += chance;
        bins[bin].2 += one_if(cause == tip.truth);
        all += 1.0;
    }
    bins.iter().map(|(_, said, so): &(f64, f64, f64)| (said - so).abs() / all).sum()
}

fn top_bin(scores: &[SprayerScore]) -> String {
    let top = |value: &dyn Fn(usize, f64, usize) -> f64| {
        of_tips(scores, |tip| {
            let (cause, chance) = likeliest(tip);
            (chance >= 0.95).then(|| value(cause, chance, tip.truth))
        })
    };
    let said = top(&|_, chance, _| chance).value().unwrap_or(0.0);
    let so = top(&|cause, _, truth| one_if(cause == truth)).value().unwrap_or(0.0);
    format!("{} ({:.2} less {:.2})", at_most(0.02, said - so), 100.0 * said, 100.0 * so)
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
            let mut row = vec![world.name.to_owned(), (*name).to_owned()];
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
    for world in worlds {
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
