//! Tiny booms by brute force: every flow of every tip, every middle, spread and share of faults summed one by one,
//! from the text of the model alone and sharing no code with it.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod made;

use calibration::catch::{Limit, LimitProfile, Risk, Uncertainties, summarise};
use calibration::verdict::{Model, judge_round};
use made::{Made, made};

const SPREADS: [(f64, f64); 10] = [
    (0.003, 0.15),
    (0.0045, 0.25),
    (0.0068, 0.5),
    (0.0102, 1.0),
    (0.0153, 1.3),
    (0.023, 0.9),
    (0.0346, 0.2),
    (0.052, 0.08),
    (0.079, 0.05),
    (0.12, 0.03),
];
const FAULTY: [(f64, f64); 4] = [(0.12, 0.25), (0.2, 0.4), (0.28, 0.2), (0.4, 0.15)];
const MISREAD: f64 = 0.002;

fn normal(value: f64) -> f64 {
    0.5 * libm::erfc(-value / 2.0_f64.sqrt())
}

/// The probability of one reading: volume = flow × time, timing √2 × 0.2 s, handling 0.5 %, edges a tenth of a step.
fn cup(flow: f64, reading: f64, step: f64, seconds: f64) -> f64 {
    let volume = flow * seconds;
    let timing = flow * 2.0_f64.sqrt() * 0.2;
    let smear = (timing * timing + (0.005 * volume) * (0.005 * volume) + (0.1 * step) * (0.1 * step)).sqrt();
    let read =
        normal((reading + step / 2.0 - volume) / smear) - normal((reading - step / 2.0 - volume) / smear);
    (1.0 - MISREAD) * read + MISREAD * step / (2.0 * reading)
}

fn fault(deviation: f64) -> f64 {
    if !(-0.95..=0.60).contains(&deviation) {
        return 0.0;
    }
    let side = |end: f64| 0.3 * (1.0 - 1.0 / (1.0 + end / 0.3));
    let falling = 1.0 / (1.0 + deviation.abs() / 0.3);
    falling * falling / (side(0.95) + side(0.60))
}

/// The probability that each tip is within 10 % of the mean, by summing over everything.
fn brute(readings: &[f64], step: f64, seconds: f64) -> Vec<f64> {
    let about = readings.iter().sum::<f64>() / readings.len() as f64 / seconds;
    // Flows from a quarter to one and three quarters of the mean in steps of 0.75 %.
    let flows: Vec<f64> = (0..200).map(|place| about * (0.25 + 0.0075 * f64::from(place))).collect();
    let apart = about * 0.0075;
    let likely: Vec<Vec<f64>> = readings
        .iter()
        .map(|reading| flows.iter().map(|flow| cup(*flow, *reading, step, seconds)).collect())
        .collect();
    let mut within = vec![0.0; readings.len()];
    let mut all = 0.0;
    for place in 0..121 {
        let middle = about * (0.4 + 0.01 * f64::from(place));
        for (spread, believed) in SPREADS {
            let wide = middle * spread;
            // The coarse steps would miss a narrow law; its weight over each step is exact instead.
            let sound: Vec<f64> = flows
                .iter()
                .map(|flow| {
                    normal((flow + apart / 2.0 - middle) / wide)
                        - normal((flow - apart / 2.0 - middle) / wide)
                })
                .collect();
            let broken: Vec<f64> =
                flows.iter().map(|flow| fault(flow / middle - 1.0) / middle * apart).collect();
            for (faulty, weight) in FAULTY {
                let tip = |likely: &Vec<f64>| -> Vec<f64> {
                    (0..flows.len())
                        .map(|at| likely[at] * ((1.0 - faulty) * sound[at] + faulty * broken[at]))
                        .collect()
                };
                let tips: Vec<Vec<f64>> = likely.iter().map(tip).collect();
                let sums: Vec<f64> = tips.iter().map(|tip| tip.iter().sum()).collect();
                let evidence: f64 = believed * weight * sums.iter().product::<f64>();
                if evidence < 1e-9 {
                    all += evidence;
                    continue;
                }
                all += evidence;
                pairs(&tips, &flows, &sums, evidence, &mut within);
            }
        }
    }
    within.iter().map(|within| within / all).collect()
}

/// Two tips: every pair of flows.
fn pairs(tips: &[Vec<f64>], flows: &[f64], sums: &[f64], evidence: f64, within: &mut [f64]) {
    let [one, other] = tips else { panic!("two tips") };
    for (at, first) in one.iter().enumerate().filter(|(_, weight)| **weight > 1e-12) {
        for (to, second) in other.iter().enumerate().filter(|(_, weight)| **weight > 1e-12) {
            let share = first * second / (sums[0] * sums[1]);
            let mean = f64::midpoint(flows[at], flows[to]);
            for (tip, flow) in [(0, flows[at]), (1, flows[to])] {
                if (flow / mean - 1.0).abs() <= 0.1 {
                    within[tip] += evidence * share;
                }
            }
        }
    }
}

#[test]
fn two_tips_by_brute_force() {
    let limit: Limit = LimitProfile::named("mean-10").expect("known").limit(None);
    let model = Model { doubts: Uncertainties::default(), risk: Risk::default(), ..Model::default() };
    for (readings, step, seconds) in [
        ([14.0, 14.0], 1.0, 30.0),
        ([14.0, 16.0], 1.0, 30.0),
        ([12.0, 16.0], 1.0, 30.0),
        ([40.0, 48.0], 2.0, 60.0),
        ([40.0, 50.0], 2.0, 60.0),
    ] {
        let round = made(&Made {
            readings: readings.iter().map(|reading| vec![*reading]).collect(),
            step,
            seconds,
            ..Made::default()
        });
        let summary = summarise(&round, &limit, &model.doubts, model.risk).expect("worked out");
        let ours = judge_round(&round, &summary, &limit, &model);
        let exact = brute(&readings, step, seconds);
        for (tip, exact) in ours.tips.iter().zip(exact) {
            // The two grids differ; what is left is their coarseness.
            assert!(
                (tip.probability_within - exact).abs() < 0.02,
                "{readings:?}, tip {}: {} and {exact}",
                tip.number,
                tip.probability_within
            );
        }
    }
}
