//! The pattern over several fans: a band for each groove, for the spread, for the thinnest and the thickest.

use units::{Boundary, Length, Quantity, Verdict};

use super::boom::SprayBoom;
use super::error::PatternError;
use super::fan::Fan;
use super::grooves::{Evenness, Extreme, Grooves, Laid, number};
use super::limit::PatternLimit;

/// From the least to the most over the fans.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Band {
    /// The least.
    pub low: f64,
    /// The most.
    pub high: f64,
}

/// What one groove gets, over the mean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GrooveBand {
    /// Its left edge, on the scale of the tips' places.
    pub from: Length,
    /// Its right edge.
    pub to: Length,
    /// What it gets over the mean of the judged grooves: 1 is the mean.
    pub dose: Band,
    /// Whether it is judged: fans beyond the ends are not missing from it.
    pub judged: bool,
}

/// The pattern across the boom.
#[derive(Clone, Debug, PartialEq)]
pub struct Pattern {
    /// Every groove from the left.
    pub grooves: Vec<GrooveBand>,
    /// Each fan by itself.
    pub fans: Vec<Evenness>,
    /// How far the judged grooves spread: standard deviation (n − 1) over mean, as a share.
    pub spread: Band,
    /// What the thinnest judged groove gets.
    pub lowest: Band,
    /// What the thickest judged groove gets.
    pub highest: Band,
    /// The tips over the thinnest groove of the fan in which it is thinnest; none where there are many places as thin.
    pub under_lowest: Vec<u32>,
    /// The tips over the thickest; none where there are many places as thick.
    pub under_highest: Vec<u32>,
}

/// Returns what every strip of ground gets across the boom, as a band over the fans.
///
/// *Units*: doses over the mean of the judged grooves, which is 1; spreads as shares.
///
/// *Assumptions*: the boom stands still over level ground; drops fly straight on from the tip; all fans are of one shape,
/// whichever it is. What a groove gets is exact for each shape: the share between its two edges.
///
/// *Errors*: [`PatternError`]: no groove, a groove wider than the boom, no part in which all fans overlap.
///
/// *Source*: plane geometry; the spread with n − 1 as ISO 5682-2 and ISO 16122-2, from memory.
///
/// *Example*: triangles one spacing wide to each side add up to the same everywhere: a spread of nothing.
pub fn pattern(boom: &SprayBoom, fans: &[Fan], grooves: &Grooves) -> Result<Pattern, PatternError> {
    let laid = Laid::under(boom, fans, grooves)?;
    let doses = laid.doses(boom, fans);
    let evenness: Result<Vec<Evenness>, PatternError> =
        fans.iter().zip(doses).map(|(fan, doses)| laid.evenness(fan, doses, boom.spacing().si())).collect();
    let fans = evenness?;
    let edge = |place: usize| Length::from_si(laid.left + number(place) * laid.width);
    let grooves: Vec<GrooveBand> = (0..laid.count)
        .map(|place| GrooveBand {
            from: edge(place),
            to: edge(place + 1),
            dose: Band::over(fans.iter().map(|fan| fan.doses[place])),
            judged: laid.judged.contains(&place),
        })
        .collect();
    let thinnest = fans.iter().reduce(|one, two| if two.lowest.dose < one.lowest.dose { two } else { one });
    let thickest = fans.iter().reduce(|one, two| if two.highest.dose > one.highest.dose { two } else { one });
    let over = |fan: Option<&Evenness>, extreme: fn(&Evenness) -> Extreme| {
        let of = fan.filter(|fan| laid.stands_out(&fan.doses, extreme(fan).dose));
        let groove = of.and_then(|fan| grooves.get(extreme(fan).groove));
        groove.map(|groove| boom.over((groove.from + groove.to) / 2.0)).unwrap_or_default()
    };
    Ok(Pattern {
        spread: Band::over(fans.iter().map(|fan| fan.spread)),
        lowest: Band::over(fans.iter().map(|fan| fan.lowest.dose)),
        highest: Band::over(fans.iter().map(|fan| fan.highest.dose)),
        under_lowest: over(thinnest, |fan| fan.lowest),
        under_highest: over(thickest, |fan| fan.highest),
        grooves,
        fans,
    })
}

impl Pattern {
    /// The whole band against a limit: within when every shape holds it, outside when none does.
    #[must_use]
    pub fn verdict(&self, limit: &PatternLimit) -> Verdict {
        let holds = |fan: &Evenness| {
            Boundary::Inclusive.holds(fan.spread, f64::NEG_INFINITY, limit.spread)
                && Boundary::Inclusive.holds(fan.lowest.dose, 1.0 - limit.groove, f64::INFINITY)
                && Boundary::Inclusive.holds(fan.highest.dose, f64::NEG_INFINITY, 1.0 + limit.groove)
        };
        match self.fans.iter().filter(|fan| holds(fan)).count() {
            0 => Verdict::Outside,
            some if some == self.fans.len() => Verdict::Within,
            _ => Verdict::CannotTell,
        }
    }
}

impl Band {
    fn over(values: impl Iterator<Item = f64>) -> Self {
        values.fold(Self { low: f64::INFINITY, high: f64::NEG_INFINITY }, |band, value| Self {
            low: band.low.min(value),
            high: band.high.max(value),
        })
    }
}
