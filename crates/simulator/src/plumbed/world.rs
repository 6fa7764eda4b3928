//! Whole sprayers drawn from a seed: what is wrong with them, what their tips truly give and what the gauge shows.

use sprayer::{BoomLayout, Mounting, Scale, TipSize};
use units::{Flow, Length, Pressure, Quantity};

use super::hoses::HoseWorld;
use super::supply::{GaugeWorld, HeldBy, METRES_IN_A_PASCAL, meter};
use crate::between::{Between, Shape};
use crate::boom::{TrueBoom, TrueTip};
use crate::boom_world::WorldError;
use crate::fault::{Fault, FaultMix};
use crate::random::{Part, Random};

/// What whole sprayers are drawn from.
#[derive(Clone, Debug, PartialEq)]
pub struct PlumbedWorld {
    /// Tips in each section.
    pub sections: Vec<u32>,
    /// The size of its tips by its number.
    pub size: &'static str,
    /// What the gauge is set to show.
    pub wanted: Pressure,
    /// What holds the pressure, each as likely as the others.
    pub held_by: Vec<HeldBy>,
    /// The gauge.
    pub gauge: GaugeWorld,
    /// Hoses, strainers and valves.
    pub hoses: HoseWorld,
    /// The standard deviation of sound tips, as a share of their flow.
    pub spread: Between<f64>,
    /// How often the whole set is worn alike, and by how much.
    pub set_worn: (f64, Between<f64>),
    /// What can be wrong with a tip.
    pub faults: FaultMix,
    /// By what share of itself the pressure changes each minute of the test; below nothing it falls.
    pub drift_per_minute: Between<f64>,
}

/// How a tip is fed and what it is by itself. Nobody at the boom knows it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fed {
    /// The true pressure before it.
    pub pressure: Pressure,
    /// How many times it gives what a new sound tip would give there.
    pub own: f64,
}

/// A whole sprayer as it truly is.
#[derive(Clone, Debug)]
pub struct PlumbedSprayer {
    /// The boom, ready to be tested.
    pub boom: TrueBoom,
    /// Each tip from left to right.
    pub fed: Vec<Fed>,
    /// What each section's tips give less, by their pressure, than those of the best-fed one: a share of flow.
    pub losses: Vec<f64>,
    /// What the gauge shows.
    pub shown: Pressure,
    /// What holds the pressure.
    pub held_by: HeldBy,
}

impl PlumbedWorld {
    /// Draws the sprayer that belongs to a seed.
    ///
    /// *Assumptions*: a sound tip differs by a normal share of the spread, a faulty one by its fault alone; where the set is
    /// worn alike that comes on top, and counts as no fault of a tip. Pressures and flows by [`sprayer::plumbing`].
    ///
    /// *Errors*: a size that is not of ISO 10625; a boom that cannot be laid out or solved.
    pub fn sprayer(&self, seed: u64) -> Result<PlumbedSprayer, WorldError> {
        let mut random = Random::new(seed, Part::Boom);
        let size = TipSize::named(self.size)?;
        let rated = size.rated(Scale::UsAt40Psi)?;
        let new = rated.flow().si() / (rated.pressure().si() * METRES_IN_A_PASCAL).sqrt();
        let hoses = self.hoses.draw(self.sections.len(), &mut random);
        let gauge = self.gauge.draw(&mut random);
        let meter = meter(&mut random);
        let held_by = random.one_of(&self.held_by).copied().unwrap_or(HeldBy::Regulator);
        let spread = self.spread.draw(Shape::Even, &mut random);
        let (often, by) = &self.set_worn;
        let set = if random.happens(*often) { 1.0 + by.draw(Shape::Even, &mut random) } else { 1.0 };
        let sections: Vec<Vec<(Fault, f64)>> = self
            .sections
            .iter()
            .map(|tips| (0..*tips).map(|_| self.tip(size, spread, &mut random)).collect())
            .collect();
        let drift = self.drift_per_minute.draw(Shape::Even, &mut random);

        let all_new: Vec<Vec<f64>> = sections.iter().map(|tips| vec![new; tips.len()]).collect();
        let now: Vec<Vec<f64>> =
            sections.iter().map(|tips| tips.iter().map(|(_, own)| new * set * own).collect()).collect();
        let wanted = (self.wanted.si(), &gauge);
        let (supply, bypass) = held_by.supply(&hoses, &all_new, wanted, meter)?;
        let at_gauge = hoses.network(&now, supply, bypass);
        let solved = at_gauge.network.solve()?;

        let head_of = |node| solved.pressure_head(node);
        let layout = BoomLayout::new(&self.sections, Length::inches(20.0), Mounting::Rear)?;
        let numbered = (1_u32..).zip(sections.iter().flatten().zip(layout.positions()));
        let mut tips = Vec::new();
        let mut fed = Vec::new();
        for ((number, ((fault, own), position)), (outlet, node)) in numbered.zip(&at_gauge.tips) {
            let flow = Flow::from_si(solved.flow(*outlet));
            tips.push(TrueTip { number, section: position.section, fault: *fault, flow });
            fed.push(Fed { pressure: Pressure::from_si(head_of(*node) / METRES_IN_A_PASCAL), own: *own });
        }
        let true_at_gauge = head_of(at_gauge.network.first()) / METRES_IN_A_PASCAL;
        Ok(PlumbedSprayer {
            losses: losses(&self.sections, &fed),
            shown: Pressure::from_si(gauge.read(true_at_gauge)),
            boom: TrueBoom::new(layout, tips, Pressure::from_si(true_at_gauge), drift),
            fed,
            held_by,
        })
    }

    fn tip(&self, size: TipSize, spread: f64, random: &mut Random) -> (Fault, f64) {
        let wrong = self.faults.draw(size, random);
        let own = spread * random.normal();
        let (fault, by) = wrong.unwrap_or((Fault::Sound, own));
        (fault, (1.0 + by).max(0.0))
    }
}

/// What each section loses beyond the best-fed one, by the pressure in the middle of its tips.
fn losses(sections: &[u32], fed: &[Fed]) -> Vec<f64> {
    let mut rest = fed;
    let mut roots = Vec::new();
    for tips in sections {
        let (of_section, others) = rest.split_at(usize::try_from(*tips).unwrap_or(0).min(rest.len()));
        let mut pressures: Vec<f64> = of_section.iter().map(|fed| fed.pressure.si()).collect();
        pressures.sort_by(f64::total_cmp);
        roots.push(pressures.get(pressures.len() / 2).map_or(0.0, |middle| middle.max(0.0).sqrt()));
        rest = others;
    }
    let best = roots.iter().copied().fold(f64::MIN_POSITIVE, f64::max);
    roots.iter().map(|root| 1.0 - root / best).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A sprayer with nothing wrong, true gauge, held by this.
    fn sound(held_by: HeldBy) -> PlumbedWorld {
        PlumbedWorld {
            sections: vec![8, 8, 8],
            size: "03",
            wanted: Pressure::psi(40.0),
            held_by: vec![held_by],
            gauge: GaugeWorld { scale: 0.0, zero: Pressure::psi(0.0), marks: Pressure::psi(1.0) },
            hoses: HoseWorld { restricted: 0.0, ..HoseWorld::mounted() },
            spread: Between::always(0.0),
            set_worn: (0.0, Between::always(0.0)),
            faults: FaultMix::none(),
            drift_per_minute: Between::always(0.0),
        }
    }

    fn flows(sprayer: &PlumbedSprayer) -> Vec<f64> {
        sprayer.boom.tips().iter().map(|tip| tip.flow.as_gallons_per_minute()).collect()
    }

    #[test]
    fn sound_tips_give_what_their_pressure_makes_them() {
        let sprayer = sound(HeldBy::Regulator).sprayer(3).unwrap();
        for (flow, fed) in flows(&sprayer).iter().zip(&sprayer.fed) {
            // ISO 10625: 0.3 gal/min at 40 psi; flow goes with the root of pressure.
            let by_root = 0.3 * (fed.pressure.as_psi() / 40.0).sqrt();
            assert!((flow / by_root - 1.0).abs() < 1e-9, "{flow} {by_root}");
            assert!(*flow < 0.3 && *flow > 0.28, "{flow}: hoses take a little");
        }
        assert!(sprayer.losses.iter().all(|loss| (0.0..0.02).contains(loss)), "{:?}", sprayer.losses);
        assert!((sprayer.shown.as_psi() - 40.0).abs() < 1e-9);
    }

    /// All plugged tips of a boom: what is held decides who gets what they leave.
    #[test]
    fn what_plugged_tips_leave_goes_where_the_supply_sends_it() {
        use crate::fault::FaultLaw;
        let often = |held_by| PlumbedWorld {
            faults: FaultMix { share: 0.2, laws: vec![(1.0, FaultLaw::Plugged)] },
            ..sound(held_by)
        };
        for seed in 0..20 {
            let of = |held_by| {
                let clean = flows(&sound(held_by).sprayer(seed).unwrap());
                let faulty = often(held_by).sprayer(seed).unwrap();
                let ratio = |((tip, flow), clean): ((&TrueTip, f64), &f64)| {
                    (tip.fault == Fault::Sound).then_some(flow / clean)
                };
                let tips = faulty.boom.tips().iter().zip(flows(&faulty)).zip(&clean);
                let running: Vec<f64> = tips.filter_map(ratio).collect();
                (running.iter().sum::<f64>() / running.len() as f64, running.len())
            };
            let (regulator, running) = of(HeldBy::Regulator);
            let (controller, _) = of(HeldBy::RateController);
            let (pump, _) = of(HeldBy::PumpAndBypass);
            if running < 24 {
                assert!((1.0..1.02).contains(&regulator), "{regulator}");
                // Tips share what is held; plugged ones still give up to 4 %, and the meter is off by the same in both.
                let all = 24.0 / running as f64;
                assert!((0.9 * (all - 1.0)..=all - 1.0).contains(&(controller - 1.0)), "{controller} {all}");
                assert!(pump > regulator && pump < controller, "{regulator} {pump} {controller}");
            }
        }
    }

    #[test]
    fn a_blocked_strainer_starves_its_section() {
        let world = PlumbedWorld {
            hoses: HoseWorld { restricted: 0.3, ..HoseWorld::mounted() },
            ..sound(HeldBy::Regulator)
        };
        let mut seen = 0;
        for seed in 0..30 {
            let sprayer = world.sprayer(seed).unwrap();
            let flows = flows(&sprayer);
            let best = flows.iter().copied().fold(0.0, f64::max);
            for (section, loss) in flows.chunks(8).zip(&sprayer.losses) {
                let mean = section.iter().sum::<f64>() / 8.0;
                assert!((1.0 - mean / best - loss).abs() < 0.004, "{loss} {}", 1.0 - mean / best);
                seen += usize::from(*loss > 0.04);
            }
        }
        assert!(seen > 10, "{seen}");
    }

    #[test]
    fn a_gauge_is_read_to_its_marks_and_a_seed_is_a_sprayer() {
        let world = PlumbedWorld { gauge: GaugeWorld::plain(), ..sound(HeldBy::PumpAndBypass) };
        for seed in 0..10 {
            let (one, same) = (world.sprayer(seed).unwrap(), world.sprayer(seed).unwrap());
            assert_eq!(flows(&one), flows(&same));
            let shown = one.shown.as_psi();
            assert!((shown - shown.round()).abs() < 1e-6 && (36.0..44.0).contains(&shown), "{shown}");
        }
    }
}
