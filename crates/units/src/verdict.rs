//! Within, outside, or cannot tell yet; and on which side a limit itself lies.

/// The three answers there are.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Inside the limit.
    Within,
    /// The readings do not settle it. Always comes with what would.
    CannotTell,
    /// Beyond the limit.
    Outside,
}

impl Verdict {
    /// The word in JSON, which never changes.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Within => "within",
            Self::Outside => "outside",
            Self::CannotTell => "cannot_tell",
        }
    }

    /// The verdict on a range against the limits `[-below, +above]`: settled only when the whole range is on one side.
    #[must_use]
    pub fn of_range(low: f64, high: f64, below: f64, above: f64, boundary: Boundary) -> Self {
        let inside = |value: f64| boundary.holds(value, -below, above);
        if inside(low) && inside(high) {
            Self::Within
        } else if !inside(low)
            && !inside(high)
            && (low >= above * (1.0 - SLACK) || high <= -below * (1.0 - SLACK))
        {
            Self::Outside
        } else {
            Self::CannotTell
        }
    }
}

/// Whether a value that lies exactly on the limit is still within it.
///
/// Sources differ ("10 percent or more", "more than 10 percent"), so each limit says which it means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Boundary {
    /// Exactly on the limit is within.
    Inclusive,
    /// Exactly on the limit is outside.
    Strict,
}

impl Boundary {
    /// Whether `value` lies in `[low, high]`, compared with a slack of one part in 10⁹ of the limit.
    #[must_use]
    pub fn holds(self, value: f64, low: f64, high: f64) -> bool {
        let slack = SLACK
            * [low, high].iter().filter(|end| end.is_finite()).fold(0.0_f64, |most, end| most.max(end.abs()));
        match self {
            Self::Inclusive => value >= low - slack && value <= high + slack,
            Self::Strict => value > low + slack && value < high - slack,
        }
    }
}

/// Slack for "exactly on the limit" in binary arithmetic. Our own choice, below any reading's last digit.
const SLACK: f64 = 1e-9;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn exactly_ten_percent_is_as_the_source_says() {
        let just = 0.1 + 1e-12;
        assert!(Boundary::Inclusive.holds(just, -0.1, 0.1));
        assert!(!Boundary::Strict.holds(0.1 - 1e-12, -0.1, 0.1));
        assert!(!Boundary::Inclusive.holds(0.1001, -0.1, 0.1));
    }

    #[test]
    fn a_range_across_the_limit_cannot_be_told() {
        let verdict = |low, high| Verdict::of_range(low, high, 0.1, 0.1, Boundary::Inclusive);
        assert_eq!(verdict(-0.05, 0.05), Verdict::Within);
        assert_eq!(verdict(0.05, 0.15), Verdict::CannotTell);
        assert_eq!(verdict(0.11, 0.15), Verdict::Outside);
        assert_eq!(verdict(-0.3, 0.3), Verdict::CannotTell);
        // A bare reading exactly on a strict limit is outside, on an inclusive one within.
        assert_eq!(Verdict::of_range(0.1, 0.1, 0.1, 0.1, Boundary::Strict), Verdict::Outside);
        assert_eq!(verdict(0.1, 0.1), Verdict::Within);
    }
}
