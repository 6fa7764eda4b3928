//! Whether what is said of the likeliest cause is so as often as it says: the reliability curve, bin by bin.

use crate::diagnosed::SprayerScore;
use crate::tables::diagnosed::{InWorld, likeliest, one_if};
use crate::tables::table::Table;

/// So many bins of equal width.
const BINS: usize = 20;

/// Tips of one bin: how many, the chances said, and how often it was so.
#[derive(Clone, Copy, Debug, Default)]
struct Bin {
    tips: f64,
    said: f64,
    so: f64,
}

fn bins(scores: &[SprayerScore]) -> [Bin; BINS] {
    let mut bins = [Bin::default(); BINS];
    for tip in scores.iter().flat_map(|score| &score.tips) {
        let (cause, chance) = likeliest(tip);
        // At most nineteen.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let bin = &mut bins[((chance * BINS as f64) as usize).min(BINS - 1)];
        bin.tips += 1.0;
        bin.said += chance;
        bin.so += one_if(cause == tip.truth);
    }
    bins
}

/// How far said and so are apart, by how many tips each bin has.
pub(super) fn calibration_error(scores: &[SprayerScore]) -> f64 {
    let bins = bins(scores);
    let all: f64 = bins.iter().map(|bin| bin.tips).sum();
    bins.iter().map(|bin| (bin.said - bin.so).abs() / all.max(1.0)).sum()
}

/// The curves of several worlds.
pub(crate) fn curves(worlds: &[InWorld<'_>]) -> Table {
    let says = "Tips by the chance that is said of their likeliest cause, in bins of 5 %: how many, the chance on average, and how often it \
                was so. Bins with fewer than 20 tips are left out.";
    let heads = ["world", "chance", "tips", "said", "so"];
    let mut table = Table::new("Said and so", says, &heads);
    for world in worlds {
        for (place, bin) in bins(world.scores).iter().enumerate().filter(|(_, bin)| bin.tips >= 20.0) {
            let low = 100 * place / BINS;
            table.row(vec![
                world.whole_name(),
                format!("{low} to {} %", low + 100 / BINS),
                format!("{}", bin.tips),
                format!("{:.1} %", 100.0 * bin.said / bin.tips),
                format!("{:.1} %", 100.0 * bin.so / bin.tips),
            ]);
        }
    }
    table
}
