//! Where doubt comes from: a stable code for each kind, a neighbour's name for it, and what makes it smaller.

use units::Arg;

/// One cause of doubt in a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum DoubtOf {
    /// A hand on the watch at both ends of the drive.
    TimingTheDrive,
    /// A hand on the watch at both ends of the catch.
    TimingTheCatch,
    /// The runs of the drive differ by more than the watch explains.
    RunsDiffer,
    /// The watch itself runs fast or slow.
    Watch,
    /// The marks of the cup are a step apart.
    CupMarks,
    /// The cup's scale is off.
    CupScale,
    /// Foam, a tilted cup, a wet cup.
    Handling,
    /// The tape over the course.
    Course,
    /// The tips' spacing.
    Spacing,
    /// The width of a swath.
    Swath,
    /// The width a boomless cluster or a hand really covers.
    SwathBySight,
    /// The width of a band.
    Band,
    /// The spacing of the rows.
    Rows,
    /// A flow taken as it was given.
    FlowAsGiven,
    /// A speed taken as it was given.
    SpeedAsGiven,
    /// What was filled up again.
    Refill,
    /// The marks of the tank.
    Tank,
    /// The area of a field.
    FieldArea,
    /// The area of a plot that was taped.
    PlotArea,
    /// The marks of the pressure gauge.
    GaugeMarks,
    /// Tips that no cup was held under.
    TipsNotCaught,
    /// Something the caller has put a figure to.
    Given,
}

/// One row a cause: its stable code, its name for a working, and what makes it smaller.
macro_rules! causes {
    ($($cause:ident: $code:literal, $name:literal, $smaller:literal;)*) => {
        impl DoubtOf {
            /// Every cause.
            pub const ALL: &[Self] = &[$(Self::$cause),*];

            /// The stable code.
            #[must_use]
            pub const fn code(self) -> &'static str {
                match self { $(Self::$cause => $code),* }
            }

            /// The name for a working.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$cause => $name),* }
            }

            /// What makes it smaller.
            #[must_use]
            pub const fn smaller(self) -> &'static str {
                match self { $(Self::$cause => $smaller),* }
            }

            /// The name, to be said in any language.
            #[must_use]
            pub const fn word(self) -> Arg {
                match self { $(Self::$cause => Arg::word(concat!("doubt_", $code), $name)),* }
            }

            /// What makes it smaller, to be said in any language.
            #[must_use]
            pub const fn smaller_word(self) -> Arg {
                match self {
                    $(Self::$cause => Arg::word(concat!("smaller_", $code), $smaller)),*
                }
            }
        }
    };
}

causes! {
    TimingTheDrive: "timing_the_drive", "timing the drive by hand",
        "drive a longer course, or drive it more often";
    TimingTheCatch: "timing_the_catch", "timing the catch by hand",
        "catch for longer";
    RunsDiffer: "runs_differ", "runs that differ",
        "drive again in the same gear at the same engine speed";
    Watch: "watch", "the watch",
        "check the watch against another one over ten minutes";
    CupMarks: "cup_marks", "cup marks",
        "read finer marks (the millilitre side), or catch for longer";
    CupScale: "cup_scale", "the cup's scale",
        "check the cup with a kitchen scale: a pint of water weighs 1.04 lb, a litre 1 kg";
    Handling: "handling", "foam and tilt of the cup",
        "let the foam settle and read the cup on a level place";
    Course: "course", "the tape over the course",
        "tape the course once more, on the ground";
    Spacing: "spacing", "tip spacing",
        "measure across several gaps and divide";
    Swath: "swath", "swath",
        "count the tips and measure their spacing";
    SwathBySight: "swath_by_sight", "swath judged by eye",
        "spray dry ground or paper and tape what is wetted";
    Band: "band", "band width",
        "spray dry ground and tape the band";
    Rows: "rows", "row spacing",
        "measure across several rows and divide";
    FlowAsGiven: "flow_as_given", "the flow as given",
        "catch it, timed, in a cup with fine marks";
    SpeedAsGiven: "speed_as_given", "the speed as given",
        "time a drive over a taped course, both ways";
    Refill: "refill", "what was filled up",
        "use up more before filling again, on the same level place";
    Tank: "tank", "tank marks",
        "fill through a meter";
    FieldArea: "field_area", "the field's area",
        "measure the ground that was really sprayed";
    PlotArea: "plot_area", "the plot's area",
        "use a larger plot";
    GaugeMarks: "gauge_marks", "gauge marks",
        "read a gauge with finer marks at the tips";
    TipsNotCaught: "tips_not_caught", "tips not caught",
        "catch the tips that were left out";
    Given: "given", "the doubt given",
        "measure that figure more closely";
}
