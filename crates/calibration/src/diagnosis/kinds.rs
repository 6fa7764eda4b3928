//! The tips by section and by cups that are alike, so that each is worked out once.

use units::{Density, Quantity};

use super::cups::{Moment, Run, TipCups};
use super::evidence::{Taken, TipEvidence};
use super::infer::{Alike, OfSection};
use super::model::DiagnosisModel;
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
                let tip = &self.tips[*first];
                let evidence = TipEvidence::of(&tip.taken(moment, taken.doubts), taken);
                let seen = says(&model.seen, tip.tip.number);
                let says = core::array::from_fn(|cause| seen[cause] * tip.weigh[cause]);
                let run = tip.run.and_then(|own| runs.iter().position(|run| *run == own));
                Alike { copies: *copies, tables: laws.tables(&evidence, &says), evidence, says, run }
            };
            OfSection {
                tips: tips.iter().map(alike).collect(),
                runs: runs.iter().map(|run| run.spread).collect(),
            }
        };
        self.firsts.iter().zip(&self.runs).map(of_section).collect()
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

    /// The logarithm of the probability of all cups if the boom was not switched on.
    pub fn log_off(&self, taken: &Taken<'_>) -> f64 {
        let moment = Moment { drift: 0.0, changes: &[] };
        let of = |(first, copies): &(usize, f64)| {
            let evidence = TipEvidence::of(&self.tips[*first].taken(&moment, taken.doubts), taken);
            copies * libm::log(evidence.plugged.max(f64::MIN_POSITIVE))
        };
        let cups: f64 = self.firsts.iter().flatten().map(of).sum();
        libm::log(taken.priors.off.max(f64::MIN_POSITIVE)) + cups
    }
}
