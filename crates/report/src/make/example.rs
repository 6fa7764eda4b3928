//! The worked example beside the arithmetic lines: our own sprayer, reckoned by the same crates that reckon visits.

use calibration::course::{Course, CourseKind};
use planning::{ProductAmount, measure};
use units::{Amount, Arg, Args, Kind, Length, Time, UnitSystem, Volume};
use words::Words;

/// One line of arithmetic: what to reckon, and the example of it.
pub struct Line {
    /// The message that says what to reckon.
    pub key: &'static str,
    /// The message of the example.
    pub example: &'static str,
}

const fn line(key: &'static str, example: &'static str) -> Line {
    Line { key, example }
}

const US: &[Line] = &[
    line("sum-total", "sum-total_example"),
    line("sum-mean", "sum-mean_example"),
    line("sum-limits", "sum-limits_example"),
    line("sum-speed_us", "sum-speed_us_example"),
    line("sum-course_us", "sum-course_us_example"),
    line("sum-rate_us", "sum-rate_us_example"),
    line("sum-tank", "sum-tank_example"),
    line("sum-product", "sum-product_example"),
];

const METRIC: &[Line] = &[
    line("sum-total", "sum-total_example"),
    line("sum-mean", "sum-mean_example"),
    line("sum-limits", "sum-limits_example"),
    line("sum-speed_metric", "sum-speed_metric_example"),
    line("sum-course_metric", "sum-course_metric_example"),
    line("sum-rate_metric", "sum-rate_metric_example"),
    line("sum-tank", "sum-tank_example"),
    line("sum-product", "sum-product_example"),
];

/// The example: an invented sprayer of twelve tips.
pub struct Example {
    system: UnitSystem,
    tips: u32,
    total: Volume,
    spacing: Length,
    time: Time,
    tank: Volume,
    product_on_area: Volume,
}

impl Example {
    /// The example in the units of the reader.
    pub fn of(words: &Words) -> Self {
        match words.reader().units {
            // Our own invented readings.
            UnitSystem::Us => Self {
                system: UnitSystem::Us,
                tips: 12,
                total: Volume::fluid_ounces(175.0),
                spacing: Length::inches(20.0),
                time: Time::seconds(28.0),
                tank: Volume::gallons(200.0),
                product_on_area: Volume::gallons(2.0 / 8.0),
            },
            UnitSystem::Metric => Self {
                system: UnitSystem::Metric,
                tips: 12,
                total: Volume::litres(9.0),
                spacing: Length::metres(0.5),
                time: Time::seconds(45.0),
                tank: Volume::litres(800.0),
                product_on_area: Volume::litres(2.0),
            },
        }
    }

    /// The lines of arithmetic, in order.
    pub fn lines(&self) -> &'static [Line] {
        match self.system {
            UnitSystem::Us => US,
            UnitSystem::Metric => METRIC,
        }
    }

    /// The figures of the example, as the reader writes them.
    pub fn args(&self, words: &Words) -> Args {
        let shown = |amount: Amount| words.amount(&amount);
        let bare = |amount: Amount| words.amount_number(&amount);
        let mean = self.total * (1.0 / f64::from(self.tips));
        let kind = if self.system == UnitSystem::Us { CourseKind::OneTip } else { CourseKind::Metric };
        // The widths of the two examples are ones that a course can be had for.
        let course = Course::new(kind, self.spacing).ok();
        let length = course.map_or(Length::default(), |course| course.length());
        let rate = course.map(|course| course.rate(mean)).unwrap_or_default();
        let speed = length / self.time;
        let flow = mean / self.time;
        let area = self.tank / rate;
        let one_area = match self.system {
            UnitSystem::Us => units::Area::acres(1.0),
            UnitSystem::Metric => units::Area::hectares(1.0),
        };
        let exact = self.product_on_area * area.ratio_to(one_area);
        let jug = measure(ProductAmount::Liquid(exact), self.system);
        let product_kind = Amount::new(self.product_on_area, Kind::Volume);
        let product = match (self.system, units::Unit::named("pt")) {
            (UnitSystem::Us, Some(pints)) => product_kind.shown_in(&pints),
            _ => product_kind,
        };
        let amount = match (self.system, units::Unit::named("pt")) {
            (UnitSystem::Us, Some(pints)) => Amount::new(exact, Kind::Volume).shown_in(&pints),
            _ => Amount::new(exact, Kind::Volume),
        };
        vec![
            ("tips", self.tips.to_string()),
            ("total", bare(Amount::new(self.total, Kind::Cup))),
            ("mean", bare(Amount::new(mean, Kind::Cup))),
            ("low", bare(Amount::new(mean * 0.9, Kind::Cup))),
            ("high", bare(Amount::new(mean * 1.1, Kind::Cup))),
            ("cup", words.amount_unit(&Amount::new(mean, Kind::Cup))),
            ("course", bare(Amount::new(length, Kind::Length))),
            ("time", bare(Amount::new(self.time, Kind::Time))),
            ("spacing", bare(Amount::new(self.spacing, Kind::Width))),
            ("speed", bare(Amount::new(speed, Kind::Speed))),
            ("speed_unit", words.amount_unit(&Amount::new(speed, Kind::Speed))),
            ("flow", bare(Amount::new(flow, Kind::Flow))),
            ("rate", bare(Amount::new(rate, Kind::Rate))),
            ("rate_unit", words.amount_unit(&Amount::new(rate, Kind::Rate))),
            ("tank", bare(Amount::new(self.tank, Kind::Volume))),
            ("area", bare(Amount::new(area, Kind::Area))),
            ("area_unit", words.amount_unit(&Amount::new(area, Kind::Area))),
            ("on_area", shown(product)),
            ("amount", shown(amount)),
            ("measure", jug.map_or(String::new(), |jug| words.arg(&Arg::Parts(jug.parts)))),
        ]
        .into_iter()
        .fold(Args::new(), |args, (name, text)| args.with(name, Arg::Text(text)))
    }
}
