//! What is seen beside the readings, and how checks are answered: lists of words, kept as facts of the visit.

use calibration::symptoms::{Check, Outcome, Symptom};
use notebook::Value;

use crate::effect::Effect;
use crate::state::State;
use crate::write::{With, fact};

const SEEN: &str = "symptoms.seen";
const YES: &str = "symptoms.yes";
const NO: &str = "symptoms.no";
const SKIPPED: &str = "symptoms.skipped";

impl State {
    /// A symptom is seen, or no longer.
    pub fn symptom(&mut self, symptom: Symptom, with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let mut seen: Vec<Symptom> = visit.visit.symptoms.seen.clone();
        match seen.iter().position(|known| *known == symptom) {
            Some(place) => {
                seen.remove(place);
            }
            None => seen.push(symptom),
        }
        let words: Vec<&str> = seen.iter().map(|one| one.word()).collect();
        self.list(SEEN, &words, with)
    }

    /// A check is answered, or its answer is taken back.
    pub fn checked(&mut self, check: Check, outcome: Option<Outcome>, with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let facts = visit.visit.symptoms.clone();
        let mut effects = Vec::new();
        for (field, list, of) in [
            (YES, facts.yes, Outcome::Yes),
            (NO, facts.no, Outcome::No),
            (SKIPPED, facts.skipped, Outcome::Skipped),
        ] {
            let mut words: Vec<&str> =
                list.iter().filter(|known| **known != check).map(|one| one.word()).collect();
            if outcome == Some(of) {
                words.push(check.word());
            }
            effects.extend(self.list(field, &words, with));
        }
        effects
    }

    /// A list of words in the place of the one before. An empty one stands there too: taking the last line back would
    /// bring back the one before it.
    fn list(&mut self, field: &str, words: &[&str], with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let value = Value::List(words.iter().map(|word| Value::text(word)).collect());
        let before = visit.fact(field);
        if before.map_or(words.is_empty(), |held| held.value == value) {
            return Vec::new();
        }
        let told = fact(field, value, before.map(|held| held.line));
        self.write(&[told], with)
    }
}
