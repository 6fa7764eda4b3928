//! What is said of a boom as a whole, beside what is so: wrong calls to expect, the chance that every tip is within.

use calibration::verdict::BoomJudgement;
use units::Verdict;

use crate::calls::Call;
use crate::ratio::{Counted, Ratio};

/// The bins of the chance that every tip is within.
pub const FIFTHS: usize = 5;

/// Counts over many booms.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Whole {
    /// Wrong calls to expect, for each boom.
    pub wrong_said: Ratio,
    /// Wrong calls there are, for each boom.
    pub wrong_found: Ratio,
    /// For each bin of the chance that every tip is within: its mean.
    pub all_within_said: [Ratio; FIFTHS],
    /// For each bin: the share of booms of which every tip is within.
    pub all_within_found: [Ratio; FIFTHS],
}

impl Whole {
    /// Counts one boom.
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a probability lies in 0 to 1"
    )]
    pub(crate) fn boom(&mut self, calls: &[Call], said: &BoomJudgement) {
        let wrong =
            calls.iter().filter(|call| call.verdict != Verdict::CannotTell && call.verdict != call.right());
        self.wrong_said.draw(Counted { so: said.expected_wrong_calls, of: 1.0 });
        self.wrong_found.draw(Counted { so: wrong.count() as f64, of: 1.0 });
        let all_within = calls.iter().all(|call| call.right() == Verdict::Within);
        let bin = ((said.probability_all_within * FIFTHS as f64) as usize).min(FIFTHS - 1);
        self.all_within_said[bin].draw(Counted { so: said.probability_all_within, of: 1.0 });
        self.all_within_found[bin].draw(Counted { so: f64::from(u8::from(all_within)), of: 1.0 });
    }
}
