//! A season's own records: how often each thing turned out to be so, added to what is believed.

use super::priors::{Counts, Priors};

/// What turned out, counted. Only what is certain belongs here: tips taken off and looked at, strainers opened, cups that
/// others of the same tip proved right or misread, tips swapped.
///
/// Who counts only the tips that looked odd will soon believe that most are: of a sprayer all tips are counted, or none.
#[derive(Clone, Debug, PartialEq)]
pub struct Records {
    /// Tips that were sound, worn, partly plugged, plugged, of another size.
    pub tips: Counts<5>,
    /// Cups that were right, and those misread or mistimed.
    pub cups: Counts<2>,
    /// Sections that were free, restricted, shut.
    pub sections: Counts<3>,
    /// Low tips that were swapped: those low for the tip's sake, and those for their place's.
    pub swaps: Counts<2>,
}

impl Default for Records {
    /// Nothing seen yet.
    fn default() -> Self {
        Self {
            tips: Counts::new([0.0; 5]),
            cups: Counts::new([0.0; 2]),
            sections: Counts::new([0.0; 3]),
            swaps: Counts::new([0.0; 2]),
        }
    }
}

impl Records {
    /// Adds those of another visit or season.
    pub fn add(&mut self, other: &Self) {
        self.tips.learn(&other.tips);
        self.cups.learn(&other.cups);
        self.sections.learn(&other.sections);
        self.swaps.learn(&other.swaps);
    }
}

impl Priors {
    /// Adds a season's own records to what is believed (Dirichlet counts): a hundred tips weigh as much as what stood here
    /// before.
    pub fn learn(&mut self, records: &Records) {
        self.tips.learn(&records.tips);
        self.catches.learn(&records.cups);
        self.sections.learn(&records.sections);
        self.swaps.learn(&records.swaps);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_season_of_nothing_changes_nothing_and_a_full_one_by_its_weight() {
        let mut priors = Priors::default();
        priors.learn(&Records::default());
        assert_eq!(priors, Priors::default());
        let season = Records {
            cups: Counts::new([180.0, 20.0]),
            swaps: Counts::new([0.0, 10.0]),
            ..Records::default()
        };
        let mut twice = season.clone();
        twice.add(&season);
        priors.learn(&twice);
        // By hand: (3 + 40) ÷ (100 + 400) and (2 + 20) ÷ (10 + 20).
        assert!((priors.catches.shares()[1] - 43.0 / 500.0).abs() < 1e-12);
        assert!((priors.at_place() - 22.0 / 30.0).abs() < 1e-12);
        assert_eq!(priors.tips, Priors::default().tips);
    }
}
