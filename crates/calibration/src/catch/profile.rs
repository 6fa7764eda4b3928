//! The limits people use, kept as data, each with who says so. Sources disagree, so which is used is said.

use units::{Arg, Args, Boundary, Coded, Flow};

use super::limit::{Against, Limit, OWN_LIMIT};

/// A named limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LimitProfile {
    /// Its stable name.
    pub name: &'static str,
    /// What it says in a line.
    pub english: &'static str,
    rule: Rule,
    against: Against,
    source: &'static str,
    source_code: &'static str,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Rule {
    Even(f64, Boundary),
    Over(f64, Boundary),
    BySize { small: f64, large: f64, small_below: Flow },
}

impl LimitProfile {
    /// Looks a profile up by its name.
    ///
    /// *Errors*: a name that is not in the list.
    pub fn named(name: &str) -> Result<Self, ProfileError> {
        let wanted = name.trim();
        PROFILES
            .iter()
            .find(|profile| profile.name == wanted)
            .copied()
            .ok_or_else(|| ProfileError::Unknown { given: wanted.to_string() })
    }

    /// The limit for a tip; some profiles depend on the tip's nominal flow, and hold it against new where that is known.
    #[must_use]
    pub fn limit(&self, nominal: Option<Flow>) -> Limit {
        match self.rule {
            Rule::Even(share, boundary) => Limit::new(share, share, boundary, self.against, self.source),
            Rule::Over(share, boundary) => {
                Limit::new(f64::INFINITY, share, boundary, self.against, self.source)
            }
            Rule::BySize { small, large, small_below } => {
                let share = if nominal.is_some_and(|flow| flow < small_below) { small } else { large };
                let against = if nominal.is_some() { Against::New } else { Against::Mean };
                Limit::new(share, share, Boundary::Inclusive, against, self.source)
            }
        }
    }

    /// The limit about the mean that this profile sets, where it sets one.
    #[must_use]
    pub fn about_mean(&self, nominal: Option<Flow>) -> Option<Limit> {
        match self.rule {
            Rule::Even(..) => Some(self.limit(nominal)),
            Rule::Over(..) => None,
            // Held against nominal where that is known, and by the same share against one another.
            Rule::BySize { .. } => {
                let rule = self.limit(nominal);
                Some(Limit::new(rule.below(), rule.above(), rule.boundary(), Against::Mean, self.source))
            }
        }
    }

    /// The limit over a new tip that this profile sets, where it sets one.
    #[must_use]
    pub fn over_new(&self, nominal: Option<Flow>) -> Option<Limit> {
        let rule = self.limit(nominal);
        (rule.against() == Against::New).then_some(rule)
    }

    /// Who sets it.
    #[must_use]
    pub const fn source(&self) -> &'static str {
        self.source
    }

    /// What a tip is held against, where it does not depend on the tip.
    #[must_use]
    pub const fn against(&self) -> Against {
        self.against
    }
}

/// Who sets a limit, as a figure of a working: our words about a source are ours to say in another language.
pub(super) fn who_sets(source: &'static str) -> Arg {
    let known = PROFILES.iter().find(|profile| profile.source == source).map(|profile| profile.source_code);
    match known.or((source == OWN_LIMIT).then_some("source_own_limit")) {
        Some(code) => Arg::Word { code, english: source },
        None => Arg::Text(source.to_string()),
    }
}

/// Every profile there is.
#[must_use]
pub const fn profiles() -> &'static [LimitProfile] {
    PROFILES
}

/// The profiles. Source: each row's own.
const PROFILES: &[LimitProfile] = &[
    LimitProfile {
        name: "mean-10",
        english: "no tip more than 10 % from the mean of the tips",
        rule: Rule::Even(0.10, Boundary::Inclusive),
        against: Against::Mean,
        source: "Ohio State Univ. Extension: output errors of more than 10 % count",
        source_code: "source_mean_10",
    },
    LimitProfile {
        name: "mean-5",
        english: "every tip within 5 % of the mean of the tips",
        rule: Rule::Even(0.05, Boundary::Inclusive),
        against: Against::Mean,
        source: "Alberta Agriculture, Agdex 606-1, p. 11: within 5 % of the boom's average",
        source_code: "source_mean_5",
    },
    LimitProfile {
        name: "new-10",
        english: "a tip that gives 10 % or more over a new one is worn out",
        rule: Rule::Over(0.10, Boundary::Strict),
        against: Against::New,
        source: "Univ. of Wyoming Extension, 2021: 10 percent or more over a new tip",
        source_code: "source_new_10",
    },
    LimitProfile {
        name: "new-over-10",
        english: "a tip that gives more than 10 % over a new one is worn out",
        rule: Rule::Over(0.10, Boundary::Inclusive),
        against: Against::New,
        source: "USGA, 2016: differs by more than 10 % from a new tip",
        source_code: "source_new_over_10",
    },
    LimitProfile {
        name: "inspection-10-15",
        english: "within 15 % of nominal, 10 % for tips below 1 L/min; of the mean where nominal is not known",
        rule: Rule::BySize { small: 0.10, large: 0.15, small_below: Flow::litres_per_minute(1.0) },
        against: Against::New,
        source: "uses limits from the French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 9.2.2",
        source_code: "source_inspection_10_15",
    },
];

/// Why a profile is not known.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ProfileError {
    /// Not in the list.
    #[error("\"{given}\" is not a limit known here")]
    Unknown {
        /// The name as given.
        given: String,
    },
}

impl Coded for ProfileError {
    fn code(&self) -> &'static str {
        "limit_unknown"
    }

    fn args(&self) -> Args {
        let Self::Unknown { given } = self;
        Args::new().with("given", Arg::Text(given.clone())).with("known", Arg::Text(known_names()))
    }

    fn hint(&self) -> Option<String> {
        Some(format!("give a percentage as 10 %, or one of {}", known_names()))
    }
}

/// The names as they are written, which are the same in every language.
fn known_names() -> String {
    PROFILES.iter().map(|profile| profile.name).collect::<Vec<_>>().join(", ")
}
