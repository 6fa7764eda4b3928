//! Chances as they are told: whole percent, and never certain.

use units::Arg;

/// A chance as an argument: whole percent, at least 1 and at most 99, because cups alone never make certain.
pub(super) fn told(chance: f64) -> Arg {
    Arg::Percent((100.0 * chance).round().clamp(1.0, 99.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_is_told_as_certain() {
        for (chance, told_as) in [(0.0, 1.0), (0.004, 1.0), (0.784, 78.0), (0.9999, 99.0), (1.0, 99.0)] {
            assert_eq!(told(chance), Arg::Percent(told_as));
        }
    }
}
