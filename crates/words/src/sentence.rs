//! Findings, errors and phrases: found by code and case, said with their arguments.

use fluent_bundle::{FluentArgs, FluentValue};
use units::{Arg, Args, Coded, Finding, Phrase};

use crate::catalogue::Words;

impl Words {
    /// The sentence of a finding.
    #[must_use]
    pub fn finding(&self, finding: &Finding) -> String {
        self.coded(finding).unwrap_or_else(|| finding.text(self.reader().units))
    }

    /// What to do about a finding, where there is something to do.
    #[must_use]
    pub fn action(&self, finding: &Finding) -> Option<String> {
        let own = finding.action(self.reader().units)?;
        Some(self.coded_action(finding).unwrap_or(own))
    }

    /// The sentence of a finding and what to do about it, one after the other.
    #[must_use]
    pub fn finding_and_action(&self, finding: &Finding) -> String {
        let mut text = self.finding(finding);
        if let Some(action) = self.action(finding) {
            text.push(' ');
            text.push_str(&action);
        }
        text
    }

    /// The sentence of anything coded; `None` where the catalogue lacks it.
    #[must_use]
    pub fn coded(&self, coded: &dyn Coded) -> Option<String> {
        self.find(&key_of(coded), Some(&self.fluent(&coded.args())))
    }

    /// What to do about anything coded; `None` where the catalogue has nothing to do.
    #[must_use]
    pub fn coded_action(&self, coded: &dyn Coded) -> Option<String> {
        self.find_attribute(&key_of(coded), "do", Some(&self.fluent(&coded.args())))
    }

    /// A short sentence inside another.
    #[must_use]
    pub fn phrase(&self, phrase: &Phrase) -> String {
        self.find(&format!("phrase-{}", phrase.code), Some(&self.fluent(&phrase.args)))
            .unwrap_or_else(|| phrase.text(self.reader().units))
    }

    /// A sentence out of the catalogue with arguments as errors and findings carry them.
    #[must_use]
    pub fn say_with(&self, key: &str, args: &Args) -> String {
        self.find(key, Some(&self.fluent(args))).unwrap_or_else(|| key.to_string())
    }

    /// The arguments as Fluent wants them: text ready to be read, and beside it what sentences choose their form by.
    pub(crate) fn fluent(&self, args: &Args) -> FluentArgs<'static> {
        let mut fluent = FluentArgs::new();
        for (name, arg) in args.iter() {
            let mut set = |behind: &str, value: FluentValue<'static>| {
                fluent.set(format!("{}{behind}", name.replace(' ', "_")), value);
            };
            match arg {
                Arg::Count(count) => set("", FluentValue::from(*count)),
                _ => set("", FluentValue::from(self.arg(arg))),
            }
            match arg {
                Arg::Tips(tips) => set("-count", FluentValue::from(tips.len())),
                Arg::Word { code, .. } => set("-code", FluentValue::from(*code)),
                Arg::Verdict(verdict) => set("-code", FluentValue::from(verdict.word())),
                Arg::Amount(amount) => {
                    if let Some((low, high)) = self.range_ends(amount) {
                        set("-low", FluentValue::from(low));
                        set("-high", FluentValue::from(high));
                    }
                }
                _ => {}
            }
        }
        fluent
    }
}

/// The key of the sentence of something coded.
fn key_of(coded: &dyn Coded) -> String {
    match coded.case() {
        Some(case) => format!("{}-{case}", coded.code()),
        None => coded.code().to_string(),
    }
}
