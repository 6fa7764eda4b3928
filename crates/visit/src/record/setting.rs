//! The setting to repeat: gear, engine, pressure and where it was read, what was on, how full the tank was.

use units::{AsWritten, Length, Pressure, ReadPlace};

/// How the sprayer was set. What nobody wrote down is absent.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Setting {
    /// The gear.
    pub gear: Option<String>,
    /// The engine's speed, as written.
    pub engine_speed: Option<String>,
    /// The PTO's speed, as written.
    pub pto_speed: Option<String>,
    /// The pressure.
    pub pressure: Option<AsWritten<Pressure>>,
    /// Where the pressure was read.
    pub pressure_read_at: Option<ReadPlace>,
    /// How far the gauge's marks are apart.
    pub gauge_marks: Option<AsWritten<Pressure>>,
    /// Agitation on or off.
    pub agitation: Option<String>,
    /// Which sections were on.
    pub sections_on: Option<String>,
    /// The controller on, or in manual.
    pub controller: Option<String>,
    /// How full the tank was.
    pub water_in_tank: Option<String>,
    /// How high the tips are over what is sprayed.
    pub boom_height: Option<AsWritten<Length>>,
}

impl Setting {
    /// This setting, with what it does not say taken from `general`.
    #[must_use]
    pub fn over(&self, general: &Self) -> Self {
        let text = |own: &Option<String>, general: &Option<String>| own.clone().or_else(|| general.clone());
        Self {
            gear: text(&self.gear, &general.gear),
            engine_speed: text(&self.engine_speed, &general.engine_speed),
            pto_speed: text(&self.pto_speed, &general.pto_speed),
            pressure: self.pressure.clone().or_else(|| general.pressure.clone()),
            pressure_read_at: self.pressure_read_at.or(general.pressure_read_at),
            gauge_marks: self.gauge_marks.clone().or_else(|| general.gauge_marks.clone()),
            agitation: text(&self.agitation, &general.agitation),
            sections_on: text(&self.sections_on, &general.sections_on),
            controller: text(&self.controller, &general.controller),
            water_in_tank: text(&self.water_in_tank, &general.water_in_tank),
            boom_height: self.boom_height.clone().or_else(|| general.boom_height.clone()),
        }
    }
}

/// The stable word for a place a pressure is read at.
#[must_use]
pub const fn place_word(place: ReadPlace) -> &'static str {
    match place {
        ReadPlace::Pump => "pump",
        ReadPlace::Manifold => "manifold",
        ReadPlace::Boom => "boom",
        ReadPlace::Tip => "tip",
        ReadPlace::Cab => "cab",
    }
}

/// Looks the word up.
#[must_use]
pub fn place_from_word(word: &str) -> Option<ReadPlace> {
    [ReadPlace::Pump, ReadPlace::Manifold, ReadPlace::Boom, ReadPlace::Tip, ReadPlace::Cab]
        .into_iter()
        .find(|place| place_word(*place) == word)
}
