//! What is believed of a boom before a cup is caught: how alike its tips are, how many are faulty and how.

/// The prior of a boom. Every figure is an input; the defaults are ours and held to simulated booms.
#[derive(Clone, Debug, PartialEq)]
pub struct Prior {
    /// The spreads that are tried for tips that are alike, as shares, each with its weight.
    pub spreads: Vec<(f64, f64)>,
    /// The shares of faulty tips that are tried, each with its weight.
    pub faulty: Vec<(f64, f64)>,
    /// The share of cups that are misread, by anything. It matters where a tip's cups contradict each other.
    pub misread: f64,
    /// The drift of the whole test from first to last cup, as a share (standard uncertainty), where the order of
    /// the cups is known.
    pub drift: f64,
}

impl Default for Prior {
    /// Spreads from 0.3 % to 12 %, most likely 1 to 2.3 %; about a fifth of tips faulty, itself uncertain from 12 % to
    /// 40 %, most of them slightly; one cup in 500 misread; a drift of 1 %. Our assumptions. New tips spread by 1 to
    /// 3 % (Huyghebaert et al., Trans. ASAE 44(4), 2001); the rest is held to simulated booms (`accuracy/TABLES.md`):
    /// with a tenth faulty and all spreads alike likely, ounce cups, which cannot show the spread, hid a tip 12 % off
    /// in 9 to 13 of 100 draws; so it is 3 to 6, at the price of one more open tip in a thousand.
    fn default() -> Self {
        let spreads = [
            (0.003, 0.15),
            (0.0045, 0.25),
            (0.0068, 0.5),
            (0.0102, 1.0),
            (0.0153, 1.3),
            (0.023, 0.9),
            (0.0346, 0.2),
            (0.052, 0.08),
            (0.079, 0.05),
            (0.12, 0.03),
        ];
        let faulty = [(0.12, 0.25), (0.2, 0.4), (0.28, 0.2), (0.4, 0.15)];
        Self { spreads: spreads.to_vec(), faulty: faulty.to_vec(), misread: 0.002, drift: 0.01 }
    }
}

/// The least a faulty tip may give, relative to the sound ones. Below it a tip is plugged and set aside. Our assumption.
pub(super) const FAULT_LOW: f64 = -0.95;
/// The most a faulty tip may give. Our assumption.
pub(super) const FAULT_HIGH: f64 = 0.60;

/// The density of a faulty tip's deviation: broad over −95 % to +60 %, heavier near nothing, where wear begins
/// and blockage is slight. Our assumption: it falls off as 1 ÷ (1 + |deviation| ÷ 30 %)². Beyond +60 % a sliver is
/// left for a tip twice the size or a cup read twice: without it one such reading would have no explanation at all.
pub(super) fn fault_density(deviation: f64) -> f64 {
    if deviation < FAULT_LOW {
        return 0.0;
    }
    if deviation > FAULT_HIGH {
        return BEYOND;
    }
    let near = 1.0 + deviation.abs() / NEAR;
    let side = |end: f64| NEAR * (1.0 - 1.0 / (1.0 + end / NEAR));
    1.0 / ((side(-FAULT_LOW) + side(FAULT_HIGH)) * near * near)
}

/// The density beyond +60 %: so small that all of it together weighs 0.5 %. Our assumption.
const BEYOND: f64 = 0.001;
/// Where the density has come down to a quarter. Our assumption: the size of a large fault.
const NEAR: f64 = 0.3;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_fault_density_adds_to_one() {
        let step = 1e-4;
        let sum: f64 = (0..16_000).map(|place| fault_density(-1.0 + step * f64::from(place)) * step).sum();
        // Beyond +60 % the sliver adds up to this line's end.
        assert!((sum - 1.0).abs() < 2e-3, "{sum}");
    }

    #[test]
    fn the_weights_of_faulty_shares_add_to_one() {
        let sum: f64 = Prior::default().faulty.iter().map(|(_, weight)| weight).sum();
        assert!((sum - 1.0).abs() < 1e-12);
    }
}
