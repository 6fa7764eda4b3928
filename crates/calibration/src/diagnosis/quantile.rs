//! Medians and ranges of weights on an even grid.

/// The three shares that are told: the median and the ends of the 95 % range.
pub(super) const TOLD: [f64; 3] = [0.5, 0.025, 0.975];

/// The place below which a share of the weight lies; a node stands for its whole step, half to each side.
pub(super) fn quantile(weights: &[f64], share: f64) -> f64 {
    let total: f64 = weights.iter().sum();
    let mut sum = 0.0;
    for (place, weight) in weights.iter().enumerate() {
        if *weight > 0.0 && sum + weight >= share * total {
            return place as f64 - 0.5 + (share * total - sum) / weight;
        }
        sum += weight;
    }
    weights.len().saturating_sub(1) as f64
}

/// Mean and standard deviation of a place under weights; nothing where they weigh nothing.
pub(super) fn mean_and_spread(weights: impl Iterator<Item = (f64, f64)>) -> Option<(f64, f64)> {
    let (mut sum, mut first, mut second) = (0.0, 0.0, 0.0);
    for (value, weight) in weights {
        sum += weight;
        first += weight * value;
        second += weight * value * value;
    }
    (sum > 0.0).then(|| {
        let mean = first / sum;
        (mean, (second / sum - mean * mean).max(0.0).sqrt())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_node_stands_for_its_step() {
        assert!((quantile(&[0.0, 1.0, 0.0], 0.5) - 1.0).abs() < 1e-12);
        assert!((quantile(&[0.5, 0.5], 0.5) - 0.5).abs() < 1e-12);
        assert!((quantile(&[0.0, 1.0], 0.975) - 1.475).abs() < 1e-12);
    }
}
