//! What to do with the cup, and which course would do where this one cannot be driven.

use super::{Course, CourseKind, EIGHTH, TEN_128THS};
use units::{Amount, Arg, Finding, Kind, Length, Weight};

/// Shorter courses cannot be timed by hand. Our assumption: 60 ft and 20 m are 14 s at a walk and 8 s at 5 mph.
const SHORTEST: [Length; 2] = [Length::feet(60.0), Length::metres(20.0)];
/// Longer courses do not fit into a farmyard or field end. Our assumption.
const LONGEST: [Length; 2] = [Length::feet(1000.0), Length::metres(300.0)];

impl Course {
    /// What to do with the cup, and a warning where the course is too short or too long to be driven.
    #[must_use]
    pub fn findings(&self) -> Vec<Finding> {
        let mut findings = vec![self.rule()];
        findings.extend(self.impractical());
        findings
    }

    fn rule(&self) -> Finding {
        let finding = match self.kind {
            CourseKind::OneTip => Finding::new(
                Weight::Note,
                "course_one_tip",
                "Drive {length}. Catch one tip for as long: its fluid ounces are gallons per acre.",
            ),
            CourseKind::WholeBoom => Finding::new(
                Weight::Note,
                "course_whole_boom",
                "Drive {length}. Catch every tip for as long: all fluid ounces together are gallons per acre.",
            ),
            CourseKind::Boomless => Finding::new(
                Weight::Note,
                "course_boomless",
                "Drive {length}. Catch the whole cluster for as long: a tenth of its fluid ounces is gallons per acre.",
            ),
            CourseKind::Pints => Finding::new(
                Weight::Note,
                "course_pints",
                "Drive {length}. Catch all that serves this width for as long: its pints are gallons per acre.",
            ),
            CourseKind::Metric => Finding::new(
                Weight::Note,
                "course_metric",
                "Drive {length}. Catch for as long: millilitres times {factor} are litres per hectare.",
            ),
        };
        finding
            .with("length", Arg::Amount(Amount::new(self.length(), Kind::Length)))
            .with("factor", Arg::Number(self.factor()))
            .about(Amount::new(self.length(), Kind::Length))
    }

    fn impractical(&self) -> Option<Finding> {
        let place = usize::from(self.kind == CourseKind::Metric);
        let (shortest, longest) = (SHORTEST[place], LONGEST[place]);
        let length = self.length();
        let amount = |length| Arg::Amount(Amount::new(length, Kind::Length));
        if length < shortest {
            let finding = Finding::new(
                Weight::Doubt,
                "course_short",
                "A course of {length} is over before it can be timed well.",
            )
            .with("length", amount(length));
            return Some(match self.longer(shortest, longest) {
                Some((other, case, english)) => {
                    finding.case(case).with("instead", amount(other.length())).to_do(english)
                }
                None => finding
                    .case("by_clock")
                    .to_do("Catch for 30 s by the clock and work the rate from flow, speed and width."),
            });
        }
        (length > longest).then(|| {
            let halves = halves_within(length, longest);
            Finding::new(
                Weight::Doubt,
                "course_long",
                "A course of {length} is longer than most yards allow.",
            )
            .with("length", amount(length))
            .with("instead", amount(length / f64::from(halves)))
            .with("times", Arg::Count(halves))
            .to_do("Drive {instead} and take the catch {times} times.")
        })
    }

    /// The next larger course for the same width that can be driven, which case it is, and how to use it.
    fn longer(&self, shortest: Length, longest: Length) -> Option<(Self, &'static str, &'static str)> {
        let others = [
            (CourseKind::Boomless, "tenths", "Drive {instead} and divide the fluid ounces by ten."),
            (CourseKind::Pints, "pints", "Drive {instead} and read pints: they are gallons per acre."),
        ];
        others
            .into_iter()
            .filter(|_| self.kind != CourseKind::Metric)
            .map(|(kind, case, english)| {
                (
                    Self { area: if kind == CourseKind::Pints { EIGHTH } else { TEN_128THS }, kind, ..*self },
                    case,
                    english,
                )
            })
            .find(|(other, _, _)| {
                other.area > self.area && other.length() >= shortest && other.length() <= longest
            })
    }
}

/// Into how many equal parts a course must be cut to be no longer than `longest`.
fn halves_within(length: Length, longest: Length) -> u32 {
    let mut parts: u32 = 2;
    while length / f64::from(parts) > longest && parts < 1024 {
        parts *= 2;
    }
    parts
}
