//! The catch test: how evenly the tips put out, each against the mean of those that run and against new.
//!
//! A *round* is one go along the boom: as found, after cleaning, with a new tip. Rounds never mix. Within a
//! round, tips that are meant to differ stand in groups of their own and are never compared.
//!
//! What stands here is the plain test of the handbooks with the range that the readings alone give, and what
//! follows from verdicts: advice and telling. [`crate::verdict`] lets the boom speak too.

mod absurd;
mod advice;
mod agree;
mod conformity;
mod error;
mod limit;
mod measured;
mod new_tip;
mod profile;
mod round;
mod summary;
mod tell;
mod tell_new;
mod total;
mod workings;

pub use absurd::{CLUSTER_FLOW_CEILING, Doubtful, HAND_GUN_FLOW_CEILING, Outlet, TIP_FLOW_CEILING};
pub use advice::{Advice, Change, SET_SHARE, SetShare, advise};
pub use agree::{Agreement, without_the_odd_one};
pub use conformity::{Risk, probability_within};
pub use error::{CatchError, ShareOf};
pub(crate) use limit::OWN_LIMIT;
pub use limit::{Against, Limit};
pub(crate) use measured::flow_of;
pub use measured::{DeviationRange, Uncertainties, measured};
pub use new_tip::{AgainstNew, NewTip, against_new};
pub use profile::{LimitProfile, ProfileError, profiles};
pub use round::{Catch, Cup, Round, RoundKind, TipCatches};
pub use summary::{GroupSummary, Likely, PLUGGED_BELOW, RoundSummary, TipState, TipSummary, summarise};
pub use tell::tell;
pub use total::{ReadingErrors, total_flow, total_flow_with};
pub use workings::working;
