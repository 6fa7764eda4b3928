//! What would hit the wanted rate, where the sprayer misses it.

use calibration::drive::DriveSpeed;
use planning::{Change, Judged, Setup, change_to_hit};
use units::{AsWritten, Verdict};

use super::error::CheckError;
use super::rate::RateOutcome;
use crate::record::{Coverage, Visit};

/// Whether a change is worth advising: only when the wanted rate is missed for certain.
#[must_use]
pub fn change_advice(judged: &Judged) -> bool {
    judged.against_intended.is_some_and(|deviation| deviation.verdict == Verdict::Outside)
}

/// Works out what would hit the wanted rate.
pub(super) fn change(
    visit: &Visit,
    rate: Option<&RateOutcome>,
    speed: Option<&DriveSpeed>,
    judged: Option<&Judged>,
) -> Result<Option<Change>, CheckError> {
    let (Some(rate), Some(facts), Some(judged)) = (rate, &visit.target, judged) else { return Ok(None) };
    // A blocked boom is cleaned, not set otherwise.
    if !change_advice(judged) || !rate.plugged.is_empty() {
        return Ok(None);
    }
    let mut setup = Setup::new(rate.of_mix().value);
    setup.speed = speed.map(|speed| speed.speed.value);
    setup.pressure = visit.setting.pressure.as_ref().map(AsWritten::value);
    if let Some(machine) = &visit.machine {
        setup.control = machine.held_by;
        setup.tip_width = match &machine.coverage {
            Coverage::Boom(boom) | Coverage::Directed { boom, .. } => Some(boom.spacing()),
            Coverage::Band { band, .. } => Some(band.value()),
            Coverage::Boomless { .. } | Coverage::Hand { .. } => None,
        };
    }
    if let Some(carrier) = &facts.carrier {
        setup.carrier = carrier.value();
    }
    change_to_hit(&setup, facts.rate.value()).map(Some).map_err(CheckError::of("target"))
}
