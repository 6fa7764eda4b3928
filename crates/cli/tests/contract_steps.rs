//! What scripts may rely on of the single steps: their main fields, and figures that a pocket calculator confirms.
#![allow(clippy::expect_used, clippy::panic, clippy::float_cmp)] // a test fails by panicking; what is exact comes out so

mod common;

use common::{answer, near, number, run, word};

#[test]
fn a_course_makes_the_cup_show_the_rate() {
    let metric = answer(&["course", "--width", "50 cm", "--units", "metric"]);
    assert_eq!((number(&metric, "/length/value"), word(&metric, "/length/unit")), (100.0, "m"));
    assert_eq!((word(&metric, "/cup_unit"), word(&metric, "/rate_unit")), ("mL", "L/ha"));
    let factor = number(&metric, "/factor");
    assert_eq!(factor, 0.2, "a round factor, which is named");
    for (width, units, cup, rate) in [
        ("20 in", "us", "fl oz", "gal/ac"),
        ("0.7 m", "metric", "mL", "L/ha"),
        ("30 in", "us", "fl oz", "gal/ac"),
    ] {
        let course = answer(&["course", "--width", width, "--units", units]);
        let long = format!("{} {}", course["length"]["value"], word(&course, "/length/unit"));
        // 300 of the cup's units caught over that course, worked out by the other command.
        let caught = format!("300 {cup}");
        let worked =
            answer(&["rate", "--catch", &caught, "--course", &long, "--width", width, "--units", units]);
        assert_eq!(word(&worked, "/rate/unit"), rate);
        near(number(&worked, "/rate/value"), 300.0 * number(&course, "/factor"), 1e-12);
    }
    // A boomless cluster over 30 ft: 1/128 acre there is 11.3 ft, too short to drive; ten times that, and a tenth
    // of the ounces.
    let cluster = answer(&["course", "--width", "30 ft", "--boomless"]);
    near(number(&cluster, "/length/value"), 10.0 * 43560.0 / 128.0 / 30.0, 1e-12);
    assert_eq!(number(&cluster, "/factor"), 0.1);
}

#[test]
fn speed_has_its_range_its_spread_and_the_error_of_the_dash() {
    // mph = feet × 60 ÷ (seconds × 88): 200 × 60 ÷ (45 × 88) = 3.0303 (Ohio State Univ. Extension, FABE-520).
    let one = answer(&["speed", "--distance", "200 ft", "--time", "45 s"]);
    near(number(&one, "/speed/value"), 200.0 * 60.0 / (45.0 * 88.0), 1e-12);
    assert!(number(&one, "/speed/low") < 3.03 && number(&one, "/speed/high") > 3.04);
    assert!(one.get("dash").is_none(), "no dash was read");
    let two =
        answer(&["speed", "--distance", "200 ft", "--there", "44 s", "--back", "46 s", "--dash", "3.2 mph"]);
    near(number(&two, "/mean_time/value"), 45.0, 1e-12);
    // 200 ft in 44 s and in 46 s: 46 ÷ 44 − 1 = 4.5 % apart, of the mean 4.44 %.
    near(number(&two, "/spread_percent"), 4.45, 0.02);
    let driven = number(&two, "/speed/value");
    near(number(&two, "/dash/error_percent"), 100.0 * (3.2 / driven - 1.0), 1e-9);
    let runs: Vec<&str> =
        two["runs"].as_array().expect("runs").iter().map(|run| word(run, "/direction")).collect();
    assert_eq!(runs, ["there", "back"]);
}

#[test]
fn every_way_to_the_rate_gives_the_same() {
    // gal/ac = 5940 × gal/min ÷ (mph × inches): 5940 × 0.30 ÷ (5 × 20) = 17.82 (Ohio State Univ. Extension, FABE-520).
    let flow = answer(&["rate", "--flow", "0.30 gal/min", "--speed", "5 mph", "--width", "20 in"]);
    near(number(&flow, "/rate/value"), 17.82, 1e-12);
    // The same by the other ways: 5 mph is 440 ft/min, so 0.30 gal/min puts 38.4 fl oz on 440 ft of 20 in.
    let catch = answer(&["rate", "--catch", "38.4 fl oz", "--course", "440 ft", "--width", "20 in"]);
    near(number(&catch, "/rate/value"), 17.82, 1e-12);
    // Twelve such tips, 20 ft together, over 660 ft: 1.5 minutes, 5.4 gal.
    let refill = answer(&["rate", "--used", "5.4 gal", "--distance", "660 ft", "--swath", "20 ft"]);
    near(number(&refill, "/rate/value"), 17.82, 1e-12);
    let area = answer(&["rate", "--used", "5.4 gal", "--area", "13200 sq ft"]);
    near(number(&area, "/rate/value"), 17.82, 1e-12);
    let row = answer(&[
        "rate",
        "--flow",
        "0.15 gal/min",
        "--speed",
        "5 mph",
        "--row",
        "30 in",
        "--tips-per-row",
        "3",
    ]);
    near(number(&row, "/rate/value"), 17.82, 1e-12);
    let mut methods: Vec<&str> =
        [&flow, &catch, &refill, &area, &row].map(|rate| word(rate, "/method")).to_vec();
    methods.sort_unstable();
    methods.dedup();
    assert_eq!(methods.len(), 5, "each says its method: {methods:?}");
    for rate in [&flow, &catch, &refill, &area, &row] {
        assert!(number(rate, "/rate/low") < 17.82 && number(rate, "/rate/high") > 17.82);
    }
    let band = answer(&[
        "rate",
        "--kind",
        "band",
        "--flow",
        "0.15 gal/min",
        "--speed",
        "5 mph",
        "--width",
        "10 in",
        "--row",
        "30 in",
    ]);
    near(number(&band, "/rate/value"), 17.82, 1e-12);
    near(number(&band, "/crop_rate/value"), 5.94, 1e-12);
}

#[test]
fn figures_of_two_methods_are_not_mixed() {
    for args in [
        vec!["--catch", "15 fl oz", "--course", "204 ft", "--width", "20 in", "--speed", "5 mph"],
        vec!["--flow", "0.3 gal/min", "--speed", "5 mph", "--width", "20 in", "--course", "204 ft"],
        vec!["--used", "6 gal", "--area", "1 ac", "--width", "20 in"],
        vec!["--used", "6 gal", "--area", "1 ac", "--distance", "660 ft", "--swath", "20 ft"],
        vec!["--flow", "0.3 gal/min", "--speed", "5 mph", "--width", "20 in", "--row", "30 in"],
        vec![
            "--flow",
            "0.3 gal/min",
            "--speed",
            "5 mph",
            "--width",
            "20 in",
            "--row",
            "30 in",
            "--kind",
            "directed",
        ],
        vec!["--flow", "0.3 gal/min", "--catch", "15 fl oz", "--speed", "5 mph", "--width", "20 in"],
        vec!["--flow", "0.3 gal/min", "--speed", "5 mph"],
        vec!["--used", "6 gal"],
    ] {
        let ran = run(&[&["rate"], args.as_slice()].concat());
        assert_eq!((ran.status, ran.out.as_str()), (2, ""), "a figure was passed over in silence: {args:?}");
    }
}

#[test]
fn flow_follows_pressure_and_a_heavy_carrier_flows_less() {
    // Size 03 is 0.30 gal/min at 40 psi (ISO 10625): at 30 psi 0.30 × √(30 ÷ 40) = 0.2598.
    let water = answer(&["flow", "--size", "03", "--pressure", "30 psi"]);
    near(number(&water, "/flow/value"), 0.30 * 0.75_f64.sqrt(), 1e-12);
    assert_eq!(number(&water, "/density_factor"), 1.0);
    let heavy = answer(&[
        "flow",
        "--rated",
        "0.30 gal/min @ 40 psi",
        "--pressure",
        "30 psi",
        "--density",
        "10.65 lb/gal",
    ]);
    // √(10.65 ÷ 8.34) = 1.13, the factor that tables print for 28 % nitrogen (common practice).
    near(number(&heavy, "/density_factor"), 1.13, 0.002);
    near(
        number(&heavy, "/flow/value") * number(&heavy, "/density_factor"),
        number(&water, "/flow/value"),
        1e-12,
    );
    let back = format!("{} gal/min", heavy["flow"]["value"]);
    let pressure =
        answer(&["flow", "--rated", "0.30 gal/min @ 40 psi", "--flow", &back, "--density", "10.65 lb/gal"]);
    near(number(&pressure, "/pressure/value"), 30.0, 1e-12);
}

#[test]
fn spacing_names_each_gap_and_the_fewest_tips_to_move() {
    let marks = ["0 in", "20 in", "41.5 in", "60 in", "80 in"];
    let gaps = ["20 in", "21.5 in", "18.5 in", "20 in"];
    let by_marks = answer(&[&["spacing", "--intended", "20 in", "--marks"], &marks[..]].concat());
    let by_gaps = answer(&[&["spacing", "--intended", "20 in"], &gaps[..]].concat());
    for spacing in [&by_marks, &by_gaps] {
        let list = spacing["gaps"].as_array().expect("gaps");
        let told: Vec<(f64, f64, &str)> = list
            .iter()
            .map(|gap| (number(gap, "/number"), number(gap, "/error/value"), word(gap, "/verdict")))
            .collect();
        // 1.5 in of 20 in is 7.5 %, more than the usual 5 %.
        assert_eq!(
            told,
            [(1.0, 0.0, "within"), (2.0, 1.5, "outside"), (3.0, -1.5, "outside"), (4.0, 0.0, "within")]
        );
        let moves = spacing["moves"].as_array().expect("moves");
        assert_eq!(moves.len(), 1, "one tip moved mends both gaps");
        assert_eq!((number(&moves[0], "/tip"), word(&moves[0], "/direction")), (3.0, "left"));
        near(number(&moves[0], "/distance/value"), 1.5, 1e-12);
    }
    let around =
        answer(&[&["spacing", "--intended", "20 in", "--fixed", "3", "--marks"], &marks[..]].concat());
    let moved: Vec<f64> =
        around["moves"].as_array().expect("moves").iter().map(|one| number(one, "/tip")).collect();
    assert_eq!(moved, [2.0, 4.0], "around a tip that cannot move");
    let slack =
        answer(&[&["spacing", "--intended", "20 in", "--limit", "8 %", "--marks"], &marks[..]].concat());
    assert_eq!(word(&slack, "/verdict"), "within");
}

#[test]
fn doubts_of_given_figures_stay_above_nothing() {
    let speed = ["speed", "--distance", "204 ft", "--time", "28 s", "--timer"];
    let ran = run(&[&speed[..], &["20 s"]].concat());
    assert_eq!((ran.status, ran.out.as_str()), (2, ""), "a hand of 20 s on a run of 28 s: {ran:?}");
    assert!(ran.err.contains("--timer: a time may be 55.4 s off"), "{ran:?}");
    let rate = |speed: &str| run(&["rate", "--flow", "0.3 gal/min", "--speed", speed, "--width", "20 in"]);
    let ran = rate("5 mph +- 900 mph");
    assert!(ran.status == 2 && ran.err.contains("larger than the value itself"), "{ran:?}");
    let ran = rate("5 mph +- 90 %");
    assert!(ran.status == 0 && ran.out.contains("this says next to nothing"), "{ran:?}");
    // Two percent are shown as two digits: 2 % of the speed, and the flow's own 1.5 % × 1.96.
    assert!(rate("5 mph +- 0.1 mph").out.contains("(± 2.9 %)"), "{:?}", rate("5 mph +- 0.1 mph"));
}

#[test]
fn a_band_wider_than_its_row_is_doubted_once() {
    let args = ["--flow", "0.3 gal/min", "--speed", "5 mph", "--width", "30 in", "--row", "10 in"];
    let ran = run(&[&["rate", "--kind", "band"], &args[..]].concat());
    assert_eq!((ran.status, ran.out.matches("overlap on rows").count()), (0, 1), "{ran:?}");
}

#[test]
fn a_last_load_is_whole_where_it_is() {
    let job = answer(&["load", "--area", "55 ac", "--rate", "20 gal/ac", "--tank", "500 gal"]);
    assert_eq!((number(&job, "/loads/2/volume/value"), number(&job, "/loads/2/area/value")), (100.0, 5.0));
}
