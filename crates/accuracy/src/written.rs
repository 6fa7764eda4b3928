//! From what was written at the boom to a round of catches.

use calibration::catch::{Catch, Round, RoundKind, TipCatches};
use simulator::CaughtCup;
use sprayer::{BoomLayout, WATER_AT_20_C};
use units::{Caught, Dimension, Marks, Quantity, Time, quantity};

use crate::draw::DrawError;

/// One cup as it was written, whichever generator it is from.
#[derive(Clone, Debug)]
pub(crate) struct WrittenCup {
    pub(crate) tip: u32,
    pub(crate) reading: String,
    pub(crate) marks: String,
    pub(crate) time: String,
    pub(crate) run: Option<u32>,
}

impl WrittenCup {
    /// A cup of the simulator; the run is told only where cups share one.
    pub(crate) fn of(cup: &CaughtCup, at_once: u32) -> Self {
        Self {
            tip: cup.tip,
            reading: cup.reading.clone(),
            marks: cup.marks.clone(),
            time: cup.time.clone(),
            run: (at_once > 1).then_some(cup.run),
        }
    }

    fn catch(&self) -> Result<Catch, DrawError> {
        let caught = Caught::parse(&self.reading, None)?;
        let dimension = match caught.instrument() {
            units::Instrument::Scale => Dimension::Mass,
            _ => Dimension::Volume,
        };
        let marks = Marks::every(quantity(&self.marks, dimension)?)?;
        Ok(Catch::new(caught, Some(marks), Time::parse(&self.time)?, self.run)?)
    }
}

/// The round that some cups make on a boom.
pub(crate) fn round(layout: &BoomLayout, cups: &[WrittenCup]) -> Result<Round, DrawError> {
    let mut tips: Vec<TipCatches> = (1_u32..)
        .zip(layout.positions())
        .map(|(number, position)| TipCatches {
            number,
            group: position.group,
            section: position.section,
            catches: Vec::new(),
        })
        .collect();
    for cup in cups {
        let tip =
            tips.iter_mut().find(|tip| tip.number == cup.tip).ok_or(DrawError::NoSuchTip { tip: cup.tip })?;
        tip.catches.push(cup.catch()?);
    }
    let time = tips.iter().flat_map(|tip| &tip.catches).map(Catch::time).next().unwrap_or(Time::ZERO);
    Ok(Round { kind: RoundKind::AsFound, tips, density: WATER_AT_20_C, time, unit: None })
}
