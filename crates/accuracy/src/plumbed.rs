//! Whole sprayers over their plumbing, tested by the simulator's own people: the third world of the diagnoses.

use simulator::{
    Between, CaughtCup, CupKind, FaultLaw, FaultMix, GaugeWorld, Hands, HeldBy, HoseWorld, KitWorld,
    PlumbedWorld, Shape, Slip, SlipChances, WatchWorld, Yard,
};
use units::{Pressure, Time, Volume};

use crate::ailing::{Ailing, AilingTip, MARK_ML, SECONDS, Truth};
use crate::draw::DrawError;

/// 24 tips in three sections of 03 at 40 psi, held by a regulator, a rate controller, or a pump and its bypass.
///
/// Other laws than the inference believes, all our assumption: wear of 8 to 45 % and blockage of 10 to 90 %, small ones more
/// often; sound tips 1 to 2 % apart; every fifth set worn alike by 3 to 12 %; every tenth strainer blocked by 80 to 97 %; a
/// gauge off in scale and zero and read to 1 psi; pressure that drifts by up to 0.4 % a minute.
fn sprayers() -> PlumbedWorld {
    PlumbedWorld {
        sections: vec![8, 8, 8],
        size: "03",
        wanted: Pressure::psi(40.0),
        held_by: vec![HeldBy::Regulator, HeldBy::RateController, HeldBy::PumpAndBypass],
        gauge: GaugeWorld::plain(),
        hoses: HoseWorld::mounted(),
        spread: Between::new(0.01, 0.02),
        set_worn: (0.2, Between::new(0.03, 0.12)),
        faults: FaultMix {
            share: 0.12,
            laws: vec![
                (5.0, FaultLaw::Worn(Between::new(0.08, 0.45), Shape::MostlySmall)),
                (4.0, FaultLaw::PartlyPlugged(Between::new(0.10, 0.90), Shape::MostlySmall)),
                (1.0, FaultLaw::Plugged),
                (2.0, FaultLaw::WrongSize),
            ],
        },
        drift_per_minute: Between::new(-0.004, 0.004),
    }
}

/// People who differ: reactions of 0.15 to 0.35 s at each end, a lag of their own, wet cups, a little foam, an eye good to a fifth
/// of a mark; three cups in a hundred misread by a line or mistimed. Our assumption.
fn people() -> KitWorld {
    KitWorld {
        watch: WatchWorld {
            reaction: Between::new(Time::seconds(0.15), Time::seconds(0.35)),
            lag: Between::new(Time::seconds(-0.1), Time::seconds(0.3)),
            rate: 0.001,
        },
        hands: Hands {
            handling: 0.006,
            film: Volume::millilitres(1.0),
            foam: 0.002,
            eye: 0.2,
            lean: 0.1,
            slips: SlipChances { one_mark: 0.0, wrong_line: 0.022, wrong_time: 0.008 },
            between_runs: Time::seconds(20.0),
        },
        ..KitWorld::careful()
    }
}

/// The sprayer that belongs to a seed, each tip caught once.
///
/// *Errors*: a sprayer that cannot be drawn; none should be.
pub(crate) fn sprayer(seed: u64) -> Result<Ailing, DrawError> {
    let world = sprayers();
    let drawn = world.sprayer(seed)?;
    let mut yard = Yard::new(drawn.boom.clone(), people().kit(seed), seed);
    let mut tips = Vec::new();
    for (tip, fed) in drawn.boom.tips().iter().zip(&drawn.fed) {
        let (slip, marks) = catch(&mut yard, tip.number);
        let volume = tip.flow.as_litres_per_minute() * 1_000.0 * SECONDS / 60.0;
        tips.push(AilingTip { truth: truth(tip.fault), slip, marks, volume, own: fed.own });
    }
    let mut rest = tips.as_slice();
    let mut sections = Vec::new();
    for count in &world.sections {
        let (section, others) = rest.split_at(usize::try_from(*count).unwrap_or(0).min(rest.len()));
        sections.push(section.to_vec());
        rest = others;
    }
    Ok(Ailing { sections, losses: drawn.losses, pressure: drawn.shown, yard: Some(yard) })
}

/// One cup: whether it was a slip, and the marks that were read.
pub(crate) fn catch(yard: &mut Yard, tip: u32) -> (bool, u32) {
    let cup = CupKind::TEN_MILLILITRES.holding(Volume::litres(2.0));
    let caught = yard.catch(&[tip], Time::seconds(SECONDS), cup);
    caught.first().map_or((false, 0), |cup| (cup.truth.slip != Slip::None, marks_of(cup)))
}

/// The marks of a reading such as `"560 mL"`.
fn marks_of(cup: &CaughtCup) -> u32 {
    let millilitres: f64 = cup.reading.trim_end_matches(" mL").parse().unwrap_or(0.0);
    // A whole number of marks.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let marks = (millilitres / MARK_ML).round() as u32;
    marks
}

const fn truth(fault: simulator::Fault) -> Truth {
    use simulator::Fault;
    match fault {
        Fault::Worn => Truth::Worn,
        Fault::PartlyPlugged => Truth::PartlyPlugged,
        Fault::Plugged => Truth::Plugged,
        Fault::WrongSize => Truth::WrongTip,
        Fault::Sound | Fault::Off | Fault::Old => Truth::Sound,
    }
}
