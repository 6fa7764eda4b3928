//! Figures beside what is aimed at, and those that only make sense at a chance of their own.

use crate::diagnosed::{SectionScore, SprayerScore, TipScore};
use crate::ratio::{Counted, Ratio};
use crate::tables::diagnosed::{likeliest, of_sections, of_tips, one_if};
use crate::tables::table::{number, percent};

/// A section that loses more is restricted.
pub(super) const RESTRICTED: f64 = 0.04;

/// Something counted of each sprayer.
pub(super) fn per_sprayer(
    scores: &[SprayerScore],
    of: impl Fn(&SprayerScore) -> f64,
    digits: usize,
) -> String {
    let mut ratio = Ratio::default();
    scores.iter().for_each(|score| ratio.draw(Counted { so: of(score), of: 1.0 }));
    number(&ratio, digits)
}

/// A share beside what it should at least be.
pub(super) fn aimed(aim: f64, ratio: &Ratio) -> String {
    let missed = ratio.value().is_some_and(|value| value < aim);
    format!("{}{}", percent(ratio), if missed { MISSED } else { "" })
}

/// A share beside what it should at most be.
pub(super) fn at_most(aim: f64, value: f64) -> String {
    format!("{:.2} %{}", 100.0 * value, if value > aim { MISSED } else { "" })
}

/// How an aim that is not reached is marked.
pub(super) const MISSED: &str = " **missed**";

/// Those that should be called, called at the chance from which 98.5 % of the others are spared.
pub(super) fn at_specificity(
    scores: &[SprayerScore],
    chance: impl Fn(&TipScore) -> f64,
    should: impl Fn(&TipScore) -> bool,
) -> String {
    let tips = scores.iter().flat_map(|score| &score.tips);
    let from = spares(tips.filter(|tip| !should(tip)).map(&chance).collect());
    let found = of_tips(scores, |tip| should(tip).then(|| one_if(chance(tip) > from)));
    format!("{} (from {from:.2})", aimed(0.95, &found))
}

/// The same of restricted sections.
pub(super) fn sections_at_specificity(scores: &[SprayerScore]) -> String {
    let free = scores.iter().flat_map(|score| &score.sections).filter(|one| one.loss <= RESTRICTED);
    let from = spares(free.map(|one| one.restricted).collect());
    let called = |one: &SectionScore| (one.loss > RESTRICTED).then(|| one_if(one.restricted > from));
    format!("{} (from {from:.2})", aimed(0.97, &of_sections(scores, called)))
}

/// The chance beyond which 1.5 % of these lie.
fn spares(mut chances: Vec<f64>) -> f64 {
    chances.sort_by(f64::total_cmp);
    let place = (chances.len() as f64 * 0.985).ceil();
    // A count of tips, far below any limit.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let from = chances.get((place as usize).min(chances.len().saturating_sub(1))).copied();
    from.unwrap_or(1.0)
}

pub(super) fn top_bin(scores: &[SprayerScore]) -> String {
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
