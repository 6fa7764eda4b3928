//! The diagnosis beside brute force: two tips in one section, every sum written out on a denser grid by other code.

#![allow(clippy::expect_used, clippy::disallowed_methods)] // a test fails by panicking, and compares with room to spare

mod made_diagnosis;

use calibration::diagnosis::{Broad, Priors};
use made_diagnosis::{Boom, boom};

/// The step of the dense grid in the logarithm of flow.
const DENSE: f64 = 0.002;
/// The same for what is common to the boom and the section.
const BASE: f64 = 0.004;
/// What half a minute of 0.30 gal/min is, in ounces: 0.30 × 128 ÷ 2.
const NEW: f64 = 19.2;

fn normal(off: f64, spread: f64) -> f64 {
    (-0.5 * (off / spread) * (off / spread)).exp() / (spread * (2.0 * std::f64::consts::PI).sqrt())
}

fn below(value: f64) -> f64 {
    0.5 * libm::erfc(-value * std::f64::consts::FRAC_1_SQRT_2)
}

/// The chance that a cup of so much is read as told, marks an ounce apart; `shift` moves the marks.
fn read(reading: f64, volume: f64, factor: f64, shift: f64) -> f64 {
    let volume = volume * factor;
    let timing = volume * 2.0_f64.sqrt() * 0.2 / 30.0;
    let smear = (timing * timing + (0.005 * volume).powi(2) + 0.01).sqrt();
    below((reading + shift + 0.5 - volume) / smear) - below((reading + shift - 0.5 - volume) / smear)
}

/// The likelihood of one reading, right or a slip.
fn cup(reading: f64, volume: f64, priors: &Priors) -> (f64, f64) {
    let slip: f64 =
        priors.slips.iter().map(|(weight, factor)| weight * read(reading, volume, *factor, 0.0)).sum();
    let mark = 0.5 * (read(reading, volume, 1.0, 1.0) + read(reading, volume, 1.0, -1.0));
    let mut any = 0.3 / (3.0 * reading.max(NEW));
    if reading > 0.0 {
        any += 0.7 / reading.max(1.0) * normal((reading / volume).ln(), 0.3);
    }
    (0.97 * read(reading, volume, 1.0, 0.0), 0.03 * (slip + priors.one_mark * mark + priors.any_slip * any))
}

fn broad(law: &Broad, share: f64) -> f64 {
    for pair in law.0.windows(2) {
        if (pair[0].0..=pair[1].0).contains(&share) {
            return pair[0].1 + (share - pair[0].0) / (pair[1].0 - pair[0].0) * (pair[1].1 - pair[0].1);
        }
    }
    0.0
}

/// Sizes of the series beside 03 with their weights: 025, 02, 015, … and 04, 05, 06, …
fn sizes() -> Vec<(f64, f64)> {
    let weights = [1.0, 0.3, 0.1, 0.03];
    let smaller = [2.5, 2.0, 1.5, 1.0, 0.75, 0.5];
    let larger = [4.0, 5.0, 6.0, 8.0, 10.0, 15.0, 20.0];
    let side = |sizes: &[f64]| -> Vec<(f64, f64)> {
        sizes.iter().enumerate().map(|(rank, size)| (weights[rank.min(3)], (size / 3.0).ln())).collect()
    };
    let both = [side(&smaller), side(&larger)].concat();
    let all: f64 = both.iter().map(|(weight, _)| weight).sum();
    both.into_iter().map(|(weight, log)| (weight / all, log)).collect()
}

fn sound(priors: &Priors, off: f64) -> f64 {
    priors.sound.iter().map(|(weight, spread)| weight * normal(off, *spread)).sum()
}

/// How far a tip's own offset goes either way, in dense steps.
const OWN: std::ops::Range<i32> = -1500..700;
/// How many dense steps there are in a step of the base.
const WITHIN: i32 = 2;

/// The heights of all causes at each own offset, and their sums.
fn heights(priors: &Priors) -> (Vec<[f64; 5]>, [f64; 5]) {
    let sizes = sizes();
    let of = |place: i32| {
        let own = f64::from(place) * DENSE;
        [
            sound(priors, own),
            broad(&priors.worn, own.exp() - 1.0) * own.exp(),
            broad(&priors.partly_plugged, own.exp() - 1.0) * own.exp(),
            0.0,
            sizes.iter().map(|(weight, log)| weight * sound(priors, own - log)).sum(),
        ]
    };
    let all: Vec<[f64; 5]> = OWN.map(of).collect();
    let mut sums = [0.0; 5];
    all.iter().for_each(|heights| (0..5).for_each(|cause| sums[cause] += heights[cause]));
    (all, sums)
}

/// The likelihood of a tip's cups at each flow, and how much of it is a slip of the first.
fn flows(cups: &[f64], lowest: i32, highest: i32, priors: &Priors) -> Vec<(f64, f64)> {
    (lowest..highest)
        .map(|place| {
            let volume = NEW * (f64::from(place) * DENSE).exp();
            let of: Vec<(f64, f64)> = cups.iter().map(|reading| cup(*reading, volume, priors)).collect();
            let all: f64 = of.iter().map(|(right, slip)| right + slip).product();
            let first = if of[0].0 + of[0].1 > 0.0 { of[0].1 / (of[0].0 + of[0].1) } else { 0.0 };
            (all, all * first)
        })
        .collect()
}

/// A plugged tip gives nothing to a twentieth.
fn plugged(cups: &[f64]) -> (f64, f64) {
    let mut sum = (0.0, 0.0);
    for share in [0.0, 0.01, 0.02, 0.03, 0.04, 0.05] {
        let of: Vec<(f64, f64)> = cups
            .iter()
            .map(|reading| {
                let any = 1.0 / (3.0 * reading.max(NEW));
                (0.97 * read(*reading, share * NEW, 1.0, 0.0), 0.03 * any * 0.3 * 0.35)
            })
            .collect();
        let all: f64 = of.iter().map(|(right, slip)| right + slip).product();
        sum = (sum.0 + all / 6.0, sum.1 + all / 6.0 * of[0].1 / (of[0].0 + of[0].1));
    }
    sum
}

/// For every base the likelihood of a tip's cups under each cause, and the part of it in which the first was a slip.
fn table(cups: &[f64], bases: std::ops::RangeInclusive<i32>, priors: &Priors) -> Vec<([f64; 5], f64)> {
    let shares = priors.tips.shares();
    let (heights, sums) = heights(priors);
    let lowest = bases.start() * WITHIN + OWN.start;
    let flows = flows(cups, lowest, bases.end() * WITHIN + OWN.end, priors);
    let plugged = plugged(cups);
    bases
        .map(|base| {
            let from = usize::try_from(base * WITHIN + OWN.start - lowest).expect("on the grid");
            let mut causes = [0.0; 5];
            let mut misread = shares[3] * plugged.1;
            for (heights, (all, slip)) in heights.iter().zip(&flows[from..]) {
                for cause in 0..5 {
                    if heights[cause] > 0.0 {
                        causes[cause] += shares[cause] * heights[cause] / sums[cause] * all;
                        misread += shares[cause] * heights[cause] / sums[cause] * slip;
                    }
                }
            }
            causes[3] = shares[3] * plugged.0;
            (causes, misread)
        })
        .collect()
}

/// Causes of both tips, the chance that the first cup of each was a slip.
fn brute(tips: &[Vec<f64>], priors: &Priors) -> Vec<([f64; 5], f64)> {
    let reach = 125_i32;
    let deepest = 250_i32;
    let tables: Vec<Vec<([f64; 5], f64)>> =
        tips.iter().map(|cups| table(cups, -reach - deepest..=reach, priors)).collect();
    let falling: f64 = (1..=deepest).map(|steps| (-f64::from(steps) * BASE / 0.15).exp()).sum();
    let scale = 0.01_f64 * 0.01 + 0.001 * 0.001;
    let mut found = vec![([0.0; 5], 0.0); tips.len()];
    for boom in -reach..=reach {
        let believed: f64 = priors
            .boom
            .iter()
            .map(|(weight, spread)| weight * normal(f64::from(boom) * BASE, (spread * spread + scale).sqrt()))
            .sum();
        for loss in 0..=deepest {
            let lost =
                if loss == 0 { 0.9275 } else { 0.07 * (-f64::from(loss) * BASE / 0.15).exp() / falling };
            let base = usize::try_from(boom - loss + reach + deepest).expect("on the grid");
            let likely: Vec<f64> = tables.iter().map(|table| table[base].0.iter().sum()).collect();
            let weight = believed * lost * likely.iter().product::<f64>();
            for (place, table) in tables.iter().enumerate() {
                if likely[place] > 0.0 {
                    for cause in 0..5 {
                        found[place].0[cause] += weight * table[base].0[cause] / likely[place];
                    }
                    found[place].1 += weight * table[base].1 / likely[place];
                }
            }
        }
    }
    for (causes, misread) in &mut found {
        let all: f64 = causes.iter().sum();
        causes.iter_mut().for_each(|cause| *cause /= all);
        *misread /= all;
    }
    found
}

#[test]
fn brute_force_agrees() {
    for tips in [
        [vec![19.0], vec![19.0]],
        [vec![19.0], vec![22.0]],
        [vec![15.0], vec![19.0]],
        [vec![19.0], vec![0.0]],
        [vec![17.0], vec![17.0, 19.0]],
        [vec![25.0], vec![26.0]],
        [vec![19.0, 19.0], vec![10.0, 19.0]],
        [vec![13.0, 13.0], vec![19.0]],
    ] {
        let made = Boom { sections: vec![tips.to_vec()], ..boom(&[]) };
        let ours = made.diagnose();
        for (ours, (causes, misread)) in ours.tips.iter().zip(brute(&tips, &Priors::default())) {
            for (one, other) in ours.causes.iter().zip(causes) {
                assert!((one - other).abs() < 0.02, "{tips:?}: {:?}, {causes:?}", ours.causes);
            }
            assert!((ours.misread[0] - misread).abs() < 0.02, "{tips:?}: {:?}, {misread}", ours.misread);
        }
    }
}
