//! A share or a mean over many draws, with its standard error.

/// Counts of one draw: so many out of so many. Sums for a mean.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Counted {
    /// How many are so, or the sum of a figure.
    pub so: f64,
    /// Of how many.
    pub of: f64,
}

impl Counted {
    /// Counts one more, with what it adds.
    pub fn add(&mut self, so: f64) {
        self.so += so;
        self.of += 1.0;
    }
}

/// A share or a mean over many draws.
///
/// Tips of one boom share its mean, its cup and its cups under one run; they are no independent draws. So the
/// standard error is that of a ratio of sums over booms: √(n ÷ (n − 1) · Σ(soᵢ − R·ofᵢ)²) ÷ Σofᵢ.
/// Source: W. G. Cochran, Sampling Techniques, 3rd ed. (1977), section 2.11 (ratio estimate), from memory.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Ratio {
    draws: f64,
    so: f64,
    of: f64,
    so_squared: f64,
    so_of: f64,
    of_squared: f64,
}

impl Ratio {
    /// Adds the counts of one draw.
    pub fn draw(&mut self, counted: Counted) {
        self.draws += 1.0;
        self.so += counted.so;
        self.of += counted.of;
        self.so_squared += counted.so * counted.so;
        self.so_of += counted.so * counted.of;
        self.of_squared += counted.of * counted.of;
    }

    /// The share or mean; `None` of nothing.
    #[must_use]
    pub fn value(&self) -> Option<f64> {
        (self.of > 0.0).then(|| self.so / self.of)
    }

    /// Its Monte Carlo standard error. When all or none are so it is taken as that of one case more (the rule of
    /// three's third): 1 ÷ of, so that a share of 100 % out of few does not look certain.
    #[must_use]
    pub fn standard_error(&self) -> Option<f64> {
        let value = self.value()?;
        if self.draws < 2.0 {
            return None;
        }
        let squares = self.so_squared - 2.0 * value * self.so_of + value * value * self.of_squared;
        let error = (squares.max(0.0) * self.draws / (self.draws - 1.0)).sqrt() / self.of;
        Some(if error > 1e-9 { error } else { 1.0 / self.of })
    }

    /// Of how many.
    #[must_use]
    pub const fn of(&self) -> f64 {
        self.of
    }

    /// How many are so.
    #[must_use]
    pub const fn so(&self) -> f64 {
        self.so
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn single_trials_have_the_binomial_error() {
        // 30 of 100: √(0.3 × 0.7 ÷ 99) = 0.04606.
        let mut ratio = Ratio::default();
        for place in 0..100 {
            ratio.draw(Counted { so: f64::from(u8::from(place < 30)), of: 1.0 });
        }
        assert!((ratio.value().unwrap() - 0.3).abs() < 1e-12);
        assert!((ratio.standard_error().unwrap() - (0.21_f64 / 99.0).sqrt()).abs() < 1e-9);
    }

    #[test]
    fn booms_that_are_all_or_nothing_count_as_one_each() {
        // 100 booms of 10 tips, 30 of them all so: the same error as for 100 single trials, not 1,000.
        let mut ratio = Ratio::default();
        for place in 0..100 {
            ratio.draw(Counted { so: if place < 30 { 10.0 } else { 0.0 }, of: 10.0 });
        }
        assert!((ratio.standard_error().unwrap() - (0.21_f64 / 99.0).sqrt()).abs() < 1e-9);
    }

    #[test]
    fn none_of_few_is_not_certain() {
        let mut ratio = Ratio::default();
        (0..10).for_each(|_| ratio.draw(Counted { so: 0.0, of: 1.0 }));
        assert_eq!(ratio.standard_error(), Some(0.1));
        assert_eq!(Ratio::default().value(), None);
    }
}
