//! How a chance came about.

use units::{Arg, Working};

use super::rank::{Likely, Weighed, possible};
use super::said::chance_told;
use super::signs::Signs;

/// Who says so.
const SOURCE: &str = "Bayes' rule over a table of common practice, from memory";

/// Returns how the chance of a cause came about.
#[must_use]
pub fn working(signs: &Signs, of: &Likely) -> Working {
    let own = Weighed::of(signs, of.trouble);
    let all: f64 = possible(signs).map(|trouble| Weighed::of(signs, trouble).whole()).sum();
    Working::new("symptom", "chance = common × seen × checked ÷ all causes", SOURCE)
        .figure("cause", Arg::Phrases(vec![of.trouble.said()]))
        .figure("common", Arg::Number(own.common))
        .figure("seen", Arg::Number(own.seen))
        .figure("checked", Arg::Number(own.checked))
        .figure("all causes", Arg::Number(all))
        .result(chance_told(of.chance))
}
