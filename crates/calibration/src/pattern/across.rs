//! The pattern across a boom with all that follows from it.

use sprayer::pattern::{
    Fan, Grooves, HeightRange, Pattern, PatternError, PatternLimit, SprayBoom, SprayTip, heights_within,
    pattern,
};
use sprayer::{footprint, height_for_overlap};
use units::{Amount, Angle, Arg, Finding, Kind, Length, Verdict, Working};

use super::help::{Help, help};
use super::tell;

/// How the fans overlap. An overlap of 100 % means that each fan is twice as wide as the spacing, so that every place lies
/// under two.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Overlap {
    /// How wide a fan lies on what is sprayed.
    pub wide: Length,
    /// The overlap as a share of the spacing; below nothing the fans do not meet.
    pub share: f64,
    /// The height at which it would be 100 %.
    pub whole_at: Length,
}

/// The pattern across a boom.
#[derive(Clone, Debug, PartialEq)]
pub struct Across {
    /// The boom's tips.
    pub boom: SprayBoom,
    /// What every groove gets.
    pub pattern: Pattern,
    /// The limit it is held against.
    pub limit: PatternLimit,
    /// The whole band against that limit.
    pub verdict: Verdict,
    /// The height and angle of most tips.
    pub height: Length,
    /// As above.
    pub angle: Angle,
    /// How the fans overlap.
    pub overlap: Overlap,
    /// The heights at which sound tips lie evenly whichever of the fans they have.
    pub suits: Vec<HeightRange>,
    /// What would help most, where it is not even enough.
    pub help: Option<Help>,
    /// What is worth telling.
    pub findings: Vec<Finding>,
    /// How it was reached.
    pub working: Working,
}

/// Returns how evenly the ground gets it across a boom, what would help most, and the heights that suit.
///
/// *Units*: any; shares and doses over the mean.
///
/// *Assumptions*: those of [`pattern`]. Height and angle are those of the middle tip where tips differ.
///
/// *Errors*: [`PatternError`].
///
/// *Source*: the limit's own; what would help is our own search, one thing at a time.
///
/// *Example*: 13 tips of 110 degrees, 20 in apart, 20 in high: from strip to strip it differs by 0.4 to 6.4 %.
pub fn across(
    boom: SprayBoom,
    fans: &[Fan],
    grooves: &Grooves,
    limit: &PatternLimit,
) -> Result<Across, PatternError> {
    let pattern = pattern(&boom, fans, grooves)?;
    let verdict = pattern.verdict(limit);
    let SprayTip { height, angle, .. } = middle(&boom);
    let spacing = boom.spacing();
    // Both were checked with the boom, so neither fails; a fan that cannot be is told as its tip's.
    let unusable = |_| PatternError::Angle { tip: 1, angle };
    let wide = footprint(angle, height).map_err(unusable)?;
    let overlap = Overlap {
        wide,
        share: wide.ratio_to(spacing) - 1.0,
        whole_at: height_for_overlap(angle, spacing, 1.0).map_err(unusable)?,
    };
    let suits = heights_within(angle, spacing, fans, limit)?;
    let help = match verdict {
        Verdict::Within => None,
        Verdict::Outside | Verdict::CannotTell => help(&boom, fans, grooves, &pattern, &suits),
    };
    let working = working(&boom, &pattern, grooves, fans);
    let mut across = Across {
        boom,
        limit: *limit,
        verdict,
        height,
        angle,
        overlap,
        suits,
        help,
        findings: Vec::new(),
        working,
        pattern,
    };
    across.findings = tell::findings(&across, grooves, fans);
    Ok(across)
}

/// The middle tip: what most tips of a boom are like.
pub(super) fn middle(boom: &SprayBoom) -> SprayTip {
    let tips = boom.tips();
    tips[tips.len() / 2]
}

fn working(boom: &SprayBoom, pattern: &Pattern, grooves: &Grooves, fans: &[Fan]) -> Working {
    let width = |length: Length| Arg::Amount(Amount::new(length, Kind::Width));
    let tip = middle(boom);
    let count = |count: usize| Arg::Count(u32::try_from(count).unwrap_or(u32::MAX));
    let measured = fans.iter().any(|fan| matches!(fan, Fan::Measured(_)));
    let source = if measured {
        "plane geometry; the fan as measured"
    } else {
        "plane geometry; the shapes of the fans are our assumption: triangle, parabola, raised cosine, beta, cut-off normal"
    };
    let mut working = Working::new(
        "pattern_across",
        "groove = sum of each tip's flow × the share of its fan between the groove's edges; spread = standard deviation (n − 1) ÷ mean",
        source,
    )
    .figure("tips on the boom", count(boom.tips().len()))
    .figure("spacing", width(boom.spacing()))
    .figure("height over what is sprayed", width(tip.height))
    .figure("fan angle", Arg::Amount(Amount::new(tip.angle, Kind::Angle)))
    .figure("groove", width(grooves.width))
    .figure("grooves that are judged", count(pattern.grooves.iter().filter(|groove| groove.judged).count()));
    for fan in &pattern.fans {
        working = working.figure(name(fan.fan), Arg::Percent(100.0 * fan.spread));
    }
    working
}

/// The name of a figure for a fan's word.
fn name(fan: &'static str) -> &'static str {
    match fan {
        "triangle" => "spread of triangles",
        "parabola" => "spread of parabolas",
        "raised-cosine" => "spread of raised cosines",
        "beta" => "spread of betas",
        "truncated-normal" => "spread of cut-off normals",
        "even" => "spread of even fans",
        _ => "spread of the measured fan",
    }
}
