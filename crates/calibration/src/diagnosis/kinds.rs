//! The tips by section and by cups that are alike, so that each is worked out once.

use units::{Density, Quantity};

use super::cups::{Moment, Run, TipCups};
use super::evidence::{Taken, TipEvidence};
use super::infer::{Alike, OfSection};
use super::model::DiagnosisModel;
use super::priors::Priors;
use super::seen::says;
use super::states::Laws;
use crate::catch::{TipCatches, flow_of};

/// The tips by section and by cups that are alike.
pub(super) struct Boom<'a> {
    /// The tips and their cups.
    pub tips: Vec<TipCups<'a>>,
    /// For each tip its section's place and the place of its kind in it.
    pub kinds: Vec<(usize, usize)>,
    /// For each section the first tip of each kind, and how many there are.
    firsts: Vec<Vec<(usize, f64)>>,
    /// For each section the timed runs that its tips share.
    runs: Vec<Vec<Run>>,
    new_flow: f64,
    density: Density,
}

impl<'a> Boom<'a> {
    /// `section` gives a tip's section by its place from the left.
    pub fn of(
        tips: Vec<TipCups<'a>>,
        sections: usize,
        section: impl Fn(&TipCatches) -> usize,
        new_flow: f64,
        density: Density,
    ) -> Self {
        let mut firsts: Vec<Vec<(usize, f64)>> = vec![Vec::new(); sections];
        let mut runs: Vec<Vec<Run>> = vec![Vec::new(); sections];
        let mut kinds = Vec::new();
        for (place, tip) in tips.iter().enumerate() {
            let section = section(tip.tip);
            if let Some(run) = tip.run.filter(|run| !runs[section].contains(run)) {
                runs[section].push(run);
            }
            let of_section = &mut firsts[section];
            match of_section.iter().position(|(first, _)| tips[*first].same(tip)) {
                Some(kind) => {
                    of_section[kind].1 += 1.0;
                    kinds.push((section, kind));
                }
                None => {
                    of_section.push((place, 1.0));
                    kinds.push((section, of_section.len() - 1));
                }
            }
        }
        Self { tips, kinds, firsts, runs, new_flow, density }
    }

    /// The sections' tips with their tables at a moment.
    pub fn sections(
        &self,
        moment: &Moment<'_>,
        taken: &Taken<'_>,
        laws: &Laws,
        model: &DiagnosisModel,
    ) -> Vec<OfSection> {
        let of_section = |(tips, runs): (&Vec<(usize, f64)>, &Vec<Run>)| {
            let alike = |(first, copies): &(usize, f64)| {
                self.alike(&self.tips[*first], *copies, runs, moment, (taken, laws, model))
            };
            OfSection {
                tips: tips.iter().map(alike).collect(),
                runs: runs.iter().map(|run| run.spread).collect(),
            }
        };
        self.firsts.iter().zip(&self.runs).map(of_section).collect()
    }

    /// The same where only tips that were swapped differ from tables that are at hand.
    pub fn over(
        &self,
        plain: &[OfSection],
        moment: &Moment<'_>,
        taken: &Taken<'_>,
        laws: &Laws,
        model: &DiagnosisModel,
    ) -> Vec<OfSection> {
        let mut sections = plain.to_vec();
        for (tip, (section, kind)) in
            self.tips.iter().zip(&self.kinds).filter(|(tip, _)| !tip.after.is_empty())
        {
            if let Some(own) = sections.get_mut(*section).and_then(|section| section.tips.get_mut(*kind)) {
                *own = self.alike(tip, own.copies, &self.runs[*section], moment, (taken, laws, model));
            }
        }
        sections
    }

    fn alike(
        &self,
        tip: &TipCups<'_>,
        copies: f64,
        runs: &[Run],
        moment: &Moment<'_>,
        (taken, laws, model): (&Taken<'_>, &Laws, &DiagnosisModel),
    ) -> Alike {
        let evidence = TipEvidence::of(&tip.taken(moment, taken.doubts), taken);
        let seen = says(&model.seen, tip.tip.number);
        let says = core::array::from_fn(|cause| seen[cause] * tip.weigh[cause]);
        let run = tip.run.and_then(|own| runs.iter().position(|run| *run == own));
        Alike { copies, tables: laws.tables(&evidence, &says), evidence, says, run }
    }

    /// What a tip's cups read against a new tip, all together: the logarithm; nothing where nothing was read.
    pub fn read(&self, tip: &TipCatches) -> Option<f64> {
        let flow = flow_of(tip, self.density);
        (flow > 0.0).then(|| libm::log(flow / self.new_flow))
    }

    /// How far the marks of a tip's first cup are apart, as a share of what was read.
    pub fn marks(&self, tip: &TipCatches) -> Option<f64> {
        let first = tip.catches.first()?;
        let volume = first.volume(self.density);
        volume.is_positive().then(|| first.step(self.density).ratio_to(volume))
    }
}

/// The logarithm of the probability of all cups if the boom was not switched on.
pub(super) fn log_off(sections: &[OfSection], priors: &Priors) -> f64 {
    let of = |tip: &Alike| tip.copies * libm::log(tip.evidence.plugged.max(f64::MIN_POSITIVE));
    let cups: f64 = sections.iter().flat_map(|section| &section.tips).map(of).sum();
    libm::log(priors.off.max(f64::MIN_POSITIVE)) + cups
}
