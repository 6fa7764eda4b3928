//! Where doubt comes from: a stable code for each kind, a neighbour's name for it, and what makes it smaller.

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

impl DoubtOf {
    /// The stable code.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::TimingTheDrive => "timing_the_drive",
            Self::TimingTheCatch => "timing_the_catch",
            Self::RunsDiffer => "runs_differ",
            Self::Watch => "watch",
            Self::CupMarks => "cup_marks",
            Self::CupScale => "cup_scale",
            Self::Handling => "handling",
            Self::Course => "course",
            Self::Spacing => "spacing",
            Self::Swath => "swath",
            Self::SwathBySight => "swath_by_sight",
            Self::Band => "band",
            Self::Rows => "rows",
            Self::FlowAsGiven => "flow_as_given",
            Self::SpeedAsGiven => "speed_as_given",
            Self::Refill => "refill",
            Self::Tank => "tank",
            Self::FieldArea => "field_area",
            Self::PlotArea => "plot_area",
            Self::GaugeMarks => "gauge_marks",
            Self::TipsNotCaught => "tips_not_caught",
            Self::Given => "given",
        }
    }

    /// The name for a working.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::TimingTheDrive => "timing the drive by hand",
            Self::TimingTheCatch => "timing the catch by hand",
            Self::RunsDiffer => "runs that differ",
            Self::Watch => "the watch",
            Self::CupMarks => "cup marks",
            Self::CupScale => "the cup's scale",
            Self::Handling => "foam and tilt of the cup",
            Self::Course => "the tape over the course",
            Self::Spacing => "tip spacing",
            Self::Swath => "swath",
            Self::SwathBySight => "swath judged by eye",
            Self::Band => "band width",
            Self::Rows => "row spacing",
            Self::FlowAsGiven => "the flow as given",
            Self::SpeedAsGiven => "the speed as given",
            Self::Refill => "what was filled up",
            Self::Tank => "tank marks",
            Self::FieldArea => "the field's area",
            Self::PlotArea => "the plot's area",
            Self::GaugeMarks => "gauge marks",
            Self::TipsNotCaught => "tips not caught",
            Self::Given => "the doubt given",
        }
    }

    /// What makes it smaller.
    #[must_use]
    pub const fn smaller(self) -> &'static str {
        match self {
            Self::TimingTheDrive => "drive a longer course, or drive it more often",
            Self::TimingTheCatch => "catch for longer",
            Self::RunsDiffer => "drive again in the same gear at the same engine speed",
            Self::Watch => "check the watch against another one over ten minutes",
            Self::CupMarks => "read finer marks (the millilitre side), or catch for longer",
            Self::CupScale => {
                "check the cup with a kitchen scale: a pint of water weighs 1.04 lb, a litre 1 kg"
            }
            Self::Handling => "let the foam settle and read the cup on a level place",
            Self::Course => "tape the course once more, on the ground",
            Self::Spacing => "measure across several gaps and divide",
            Self::Swath => "count the tips and measure their spacing",
            Self::SwathBySight => "spray dry ground or paper and tape what is wetted",
            Self::Band => "spray dry ground and tape the band",
            Self::Rows => "measure across several rows and divide",
            Self::FlowAsGiven => "catch it, timed, in a cup with fine marks",
            Self::SpeedAsGiven => "time a drive over a taped course, both ways",
            Self::Refill => "use up more before filling again, on the same level place",
            Self::Tank => "fill through a meter",
            Self::FieldArea => "measure the ground that was really sprayed",
            Self::PlotArea => "use a larger plot",
            Self::GaugeMarks => "read a gauge with finer marks at the tips",
            Self::TipsNotCaught => "catch the tips that were left out",
            Self::Given => "measure that figure more closely",
        }
    }
}
