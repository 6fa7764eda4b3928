//! The fitted tip's rated flow, by its size or as its maker gives it.

use sprayer::{RatedFlow, Scale};

use super::error::CheckError;
use crate::record::{NamedTip, Visit};

/// Returns the rated flow of the fitted tip, where it is known. A size is taken on the scale its pressure was read in.
///
/// *Errors*: a flow or pressure of nothing.
pub fn rated(visit: &Visit) -> Result<Option<RatedFlow>, CheckError> {
    match visit.machine.as_ref().and_then(|machine| machine.tip.as_ref()) {
        None => Ok(None),
        Some(NamedTip::Rated { flow, pressure }) => {
            RatedFlow::new(flow.value(), pressure.value()).map(Some).map_err(CheckError::of("sprayer.rated"))
        }
        Some(NamedTip::Size(size)) => {
            let unit =
                visit.setting.pressure.as_ref().and_then(|pressure| pressure.written().unit().cloned());
            let metric = unit.is_some_and(|unit| unit.text() != "psi");
            let scale = if metric { Scale::MetricAt3Bar } else { Scale::UsAt40Psi };
            size.rated(scale).map(Some).map_err(CheckError::of("sprayer.tip_size"))
        }
    }
}
