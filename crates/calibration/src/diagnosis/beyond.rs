//! What each section loses beyond the best-fed one: sections are independent given the boom, but the best of them is not.

use super::section::{LOSSES, Losses};

/// What a section loses beyond the best-fed, and what the best-fed loses.
pub(super) struct Beyond {
    /// For each section the chance of each loss beyond the best-fed; a shut one is not among them.
    pub sections: Vec<Vec<f64>>,
    /// The chance of each loss of the best-fed.
    pub best: Vec<f64>,
}

/// Chances below this are passed over. Our own choice.
const NOTHING: f64 = 1e-9;

/// Returns them, given the losses of all sections at one offset of the boom.
pub(super) fn beyond(sections: &[Losses]) -> Beyond {
    // The chance that a section loses at least so much, shut ones more than any.
    let at_least: Vec<Vec<f64>> = sections.iter().map(at_least).collect();
    let least_of = |without: Option<usize>| -> Vec<f64> {
        let all = |loss: usize| -> f64 {
            at_least
                .iter()
                .enumerate()
                .filter(|(place, _)| Some(*place) != without)
                .map(|(_, chances)| chances[loss])
                .product()
        };
        let together: Vec<f64> = (0..=LOSSES).map(all).collect();
        together.windows(2).map(|pair| pair[0] - pair[1]).collect()
    };
    let of_section = |(place, losses): (usize, &Losses)| {
        let others: Vec<(usize, f64)> =
            least_of(Some(place)).into_iter().enumerate().filter(|(_, chance)| *chance > NOTHING).collect();
        // No other section runs: this one is the best-fed.
        let alone = 1.0 - others.iter().map(|(_, chance)| chance).sum::<f64>();
        let mut found = vec![0.0; LOSSES];
        for (own, chance) in losses.chances.iter().enumerate().filter(|(_, chance)| **chance > NOTHING) {
            found[0] += chance * alone;
            for (best, other) in &others {
                found[own.saturating_sub(*best)] += chance * other;
            }
        }
        found
    };
    Beyond { sections: sections.iter().enumerate().map(of_section).collect(), best: least_of(None) }
}

fn at_least(losses: &Losses) -> Vec<f64> {
    let mut sum = losses.shut;
    let mut chances = vec![sum; LOSSES + 1];
    for (loss, chance) in losses.chances.iter().enumerate().rev() {
        sum += chance;
        chances[loss] = sum;
    }
    chances
}

#[cfg(test)]
mod tests {
    use super::*;

    fn certain(loss: usize) -> Losses {
        let mut chances = vec![0.0; LOSSES];
        chances[loss] = 1.0;
        Losses { chances, shut: 0.0 }
    }

    #[test]
    fn a_loss_counts_from_the_best_fed() {
        let found = beyond(&[certain(7), certain(3), Losses { chances: vec![0.0; LOSSES], shut: 1.0 }]);
        assert!((found.sections[0][4] - 1.0).abs() < 1e-9);
        assert!((found.sections[1][0] - 1.0).abs() < 1e-9);
        assert!((found.best[3] - 1.0).abs() < 1e-12);
        assert!(found.sections[2].iter().all(|chance| *chance == 0.0));
    }

    #[test]
    fn a_section_by_itself_is_the_best_fed() {
        let found = beyond(&[certain(20)]);
        assert!((found.sections[0][0] - 1.0).abs() < 1e-12);
    }
}
