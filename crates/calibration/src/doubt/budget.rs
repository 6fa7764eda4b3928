//! Adding up doubts of products and quotients, and naming the one that matters most.

use super::source::DoubtOf;
use units::{Arg, Finding, NORMAL_95, Weight, Working};

/// Whether a doubt is met once or by everything measured with the same thing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tie {
    /// Of this one figure.
    Own,
    /// The same error enters wherever its [`DoubtOf`] does, with its sign: one watch timed drive and catch.
    Shared,
}

/// One doubt of a result.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contribution {
    /// What is doubtful.
    pub of: DoubtOf,
    /// The relative standard uncertainty of that input (one part in one).
    pub relative: f64,
    /// The power with which the input enters the result: 1 above the line, -1 below it.
    pub exponent: f64,
    /// Whether the same error enters elsewhere too.
    pub tie: Tie,
}

/// A figure that may be more than this off either way (95 %, one part in one) says next to nothing. Our own choice.
pub const LARGE: f64 = 0.30;

/// What one cause adds to the doubt of a result.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Share {
    /// What is doubtful.
    pub of: DoubtOf,
    /// The relative standard uncertainty it brings to the result (one part in one).
    pub relative: f64,
    /// Its part of the combined variance, from nothing to one.
    pub part: f64,
}

/// The doubts of one figure, by name.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Budget(Vec<Contribution>);

impl Budget {
    /// No doubt at all.
    #[must_use]
    pub const fn nothing() -> Self {
        Self(Vec::new())
    }

    /// Adds a doubt of this figure alone. `relative` is its relative standard uncertainty (one part in one).
    #[must_use]
    pub fn own(self, of: DoubtOf, relative: f64) -> Self {
        self.with(Contribution { of, relative, exponent: 1.0, tie: Tie::Own })
    }

    /// Adds a doubt that other figures share. `relative` is its relative standard uncertainty (one part in one).
    #[must_use]
    pub fn shared(self, of: DoubtOf, relative: f64) -> Self {
        self.with(Contribution { of, relative, exponent: 1.0, tie: Tie::Shared })
    }

    /// Adds a contribution.
    #[must_use]
    pub fn with(mut self, contribution: Contribution) -> Self {
        self.0.push(contribution);
        self
    }

    /// The doubts of the figure raised to a power (-1 for one that stands below the line).
    #[must_use]
    pub fn raised(mut self, exponent: f64) -> Self {
        for contribution in &mut self.0 {
            contribution.exponent *= exponent;
        }
        self
    }

    /// The doubts of the product of two figures.
    #[must_use]
    pub fn times(mut self, other: Self) -> Self {
        self.0.extend(other.0);
        self
    }

    /// All contributions in the order they were added.
    #[must_use]
    pub fn contributions(&self) -> &[Contribution] {
        &self.0
    }

    /// Whether every doubt is a number from nothing upwards; one that is not makes every range senseless.
    #[must_use]
    pub fn first_unusable(&self) -> Option<&Contribution> {
        self.0
            .iter()
            .find(|one| !(one.relative >= 0.0 && one.relative.is_finite() && one.exponent.is_finite()))
    }

    /// Returns the combined relative standard uncertainty (one part in one).
    ///
    /// *Assumptions*: first order; doubts of a few percent; own doubts independent of each other; shared ones of
    /// one cause wholly the same error, so that they add with their signs before they are squared.
    ///
    /// *Source*: JCGM 100:2008 (GUM) 5.1.6, equation 12; 5.2.2, note 1, for shared ones.
    ///
    /// *Example*: 1 % and 0.94 % combine to 1.37 %; a watch shared by drive and catch cancels in the rate.
    #[must_use]
    pub fn relative(&self) -> f64 {
        self.by_cause().iter().map(|(_, variance)| variance).sum::<f64>().sqrt()
    }

    /// Returns what each cause adds, the largest first.
    ///
    /// *Source*: JCGM 100:2008 (GUM) 5.1.2: the parts add in squares.
    #[must_use]
    pub fn shares(&self) -> Vec<Share> {
        let causes = self.by_cause();
        let total: f64 = causes.iter().map(|(_, variance)| variance).sum();
        let mut shares: Vec<Share> = causes
            .into_iter()
            .map(|(of, variance)| Share {
                of,
                relative: variance.sqrt(),
                part: if total > 0.0 { variance / total } else { 0.0 },
            })
            .collect();
        shares.sort_by(|one, other| other.part.total_cmp(&one.part).then(one.of.cmp(&other.of)));
        shares
    }

    /// The cause that adds most, where there is any doubt.
    #[must_use]
    pub fn largest(&self) -> Option<Share> {
        self.shares().into_iter().find(|share| share.part > 0.0)
    }

    /// The working: every cause with what it adds (95 %), the whole, and the one to work on.
    #[must_use]
    pub fn working(&self) -> Working {
        let mut working = Working::new(
            "doubt",
            "how far off, 95 % = 1.96 × √(sum of the squares of what each doubt adds)",
            "JCGM 100:2008 (GUM) 5.1.6",
        );
        for share in self.shares() {
            working = working.figure(share.of.name(), Arg::Doubt(share.relative * 100.0));
        }
        if let Some(largest) = self.largest() {
            working = working
                .figure("most of it comes from", largest.of.word())
                .figure("its part", Arg::Percent(largest.part * 100.0))
                .figure("to make it smaller", largest.of.smaller_word());
        }
        working.result(Arg::Doubt(self.relative() * NORMAL_95 * 100.0))
    }

    /// A finding that names the largest cause and what would make it smaller, where there is any doubt.
    #[must_use]
    pub fn finding(&self) -> Option<Finding> {
        let largest = self.largest()?;
        let finding = Finding::new(
            Weight::Note,
            "doubt_mostly_from",
            "This figure may be {either_way} off either way, mostly through {cause}.",
        );
        Some(
            finding
                .with("either_way", Arg::Doubt(self.relative() * NORMAL_95 * 100.0))
                .with("cause", largest.of.word())
                .with("cause_code", Arg::Text(largest.of.code().to_string()))
                .with("smaller", largest.of.smaller_word())
                .to_do("To narrow it: {smaller}."),
        )
    }

    /// The variance that each cause brings, in the order in which causes were met.
    fn by_cause(&self) -> Vec<(DoubtOf, f64)> {
        // Per cause: the signed sum of what is shared, and the squares of what is not.
        let mut causes: Vec<(DoubtOf, f64, f64)> = Vec::new();
        for one in &self.0 {
            let adds = one.exponent * one.relative;
            let place = match causes.iter().position(|(of, _, _)| *of == one.of) {
                Some(place) => place,
                None => {
                    causes.push((one.of, 0.0, 0.0));
                    causes.len() - 1
                }
            };
            match one.tie {
                Tie::Shared => causes[place].1 += adds,
                Tie::Own => causes[place].2 += adds * adds,
            }
        }
        causes.into_iter().map(|(of, shared, own)| (of, shared * shared + own)).collect()
    }
}
