//! Ammonium sulfate for hard water, from a water test; the label decides.

use units::{Amount, Arg, Args, Coded, Density, Finding, Kind, Unit, Weight, Working};

/// What a water test found, weight in a million weights of water (1 ppm is 1 mg/L).
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct WaterTest {
    /// Potassium, K.
    pub potassium: PartsPerMillion,
    /// Sodium, Na.
    pub sodium: PartsPerMillion,
    /// Calcium, Ca: the metal itself, not "hardness as CaCO₃".
    pub calcium: PartsPerMillion,
    /// Magnesium, Mg.
    pub magnesium: PartsPerMillion,
    /// Iron, Fe.
    pub iron: PartsPerMillion,
}

/// Parts per million.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Default)]
pub struct PartsPerMillion(f64);

impl PartsPerMillion {
    /// A number of parts in a million.
    ///
    /// *Errors*: less than nothing, more than a million, or not a number.
    pub fn new(parts: f64) -> Result<Self, ConditioningError> {
        if (0.0..=MILLION).contains(&parts) {
            Ok(Self(parts))
        } else {
            Err(ConditioningError::Parts { given: parts.to_string() })
        }
    }

    /// Reads what a laboratory writes: `"150 ppm"` or `"150 mg/L"`.
    ///
    /// *Errors*: no number, another unit (grains of hardness are not ppm of one metal).
    pub fn parse(text: &str) -> Result<Self, ConditioningError> {
        let not_parts = || ConditioningError::Parts { given: crate::text::for_message(text.trim()) };
        let lower = text.trim().to_ascii_lowercase();
        let number =
            lower.strip_suffix("ppm").or_else(|| lower.strip_suffix("mg/l")).ok_or_else(not_parts)?;
        let parts = units::decimal(number).map_err(|_| not_parts())?;
        Self::new(parts).map_err(|_| not_parts())
    }

    /// The number of parts.
    #[must_use]
    pub const fn parts(self) -> f64 {
        self.0
    }
}

/// The whole, in parts per million. Source: the meaning of the word.
const MILLION: f64 = 1_000_000.0;

/// Ammonium sulfate for a water, with what must be said about it.
#[derive(Clone, Debug, PartialEq)]
pub struct Conditioner {
    /// Ammonium sulfate in a volume of water.
    pub amount: Density,
    /// Where it stands beside the labels, and that they decide.
    pub finding: Finding,
}

/// Returns the ammonium sulfate (AMS) that takes up what makes a water hard:
/// 0.002 K + 0.005 Na + 0.009 Ca + 0.014 Mg + 0.042 Fe, in lb per 100 gal from ppm.
///
/// *Units*: ppm in, weight in a volume out.
///
/// *Assumptions*: calcium and magnesium are those of the metals, as laboratories report them for irrigation or livestock
/// water. It says nothing about products that must not meet AMS.
///
/// *Errors*: none; a test of nothing needs none.
///
/// *Source*: North Dakota State Univ., Crop & Pest Report, Equation Used to Calculate Rate of AMS, 2 July 2015. The same
/// source holds 4 to 6 lb per 100 gal to be enough for most waters, and names 8.5 to 17 lb per 100 gal on labels.
///
/// *Example*: K 10, Na 50, Ca 150, Mg 40, Fe 0.5 ppm: 0.02 + 0.25 + 1.35 + 0.56 + 0.021 = 2.2 lb in 100 gal.
#[must_use]
pub fn ammonium_sulfate_for_hard_water(test: &WaterTest) -> Conditioner {
    let pounds_in_100_gallons = PER_POTASSIUM * test.potassium.parts()
        + PER_SODIUM * test.sodium.parts()
        + PER_CALCIUM * test.calcium.parts()
        + PER_MAGNESIUM * test.magnesium.parts()
        + PER_IRON * test.iron.parts();
    let amount = Density::pounds_per_gallon(pounds_in_100_gallons / 100.0);
    let shown = shown(amount);
    let working = Working::new(
        "ams_for_hard_water",
        "AMS (lb/100 gal) = 0.002 K + 0.005 Na + 0.009 Ca + 0.014 Mg + 0.042 Fe (ppm)",
        SOURCE,
    )
    .figure("K", Arg::Number(test.potassium.parts()))
    .figure("Na", Arg::Number(test.sodium.parts()))
    .figure("Ca", Arg::Number(test.calcium.parts()))
    .figure("Mg", Arg::Number(test.magnesium.parts()))
    .figure("Fe", Arg::Number(test.iron.parts()))
    .result(Arg::Amount(shown.clone()));
    let mut finding = Finding::new(
        Weight::Note,
        "ams_for_hard_water",
        "By this water test, {ams} of ammonium sulfate ties up what makes the water hard. North Dakota State holds {low} \
         to {high} to be enough for most waters; many labels ask for {label_low} to {label_high}. The label decides.",
    )
    .with("ams", Arg::Amount(shown.clone()))
    .to_do("Put in what the product's label asks for. Some products must not be mixed with it: the label says so.")
    .about(shown)
    .because(working);
    for (name, pounds) in [
        ("low", ENOUGH_FOR_MOST.0),
        ("high", ENOUGH_FOR_MOST.1),
        ("label_low", ON_LABELS.0),
        ("label_high", ON_LABELS.1),
    ] {
        let density = Density::pounds_per_gallon(pounds / 100.0);
        finding = finding.with(name, Arg::Amount(self::shown(density)));
    }
    finding.limit_source = Some(SOURCE);
    Conditioner { amount, finding }
}

/// Who gives the equation and the figures beside it.
const SOURCE: &str =
    "North Dakota State Univ., Crop & Pest Report, Equation Used to Calculate Rate of AMS, 2015-07-02";

// lb of AMS in 100 gal for each ppm. Source: North Dakota State Univ., Crop & Pest Report, 2 July 2015.
const PER_POTASSIUM: f64 = 0.002;
const PER_SODIUM: f64 = 0.005;
const PER_CALCIUM: f64 = 0.009;
const PER_MAGNESIUM: f64 = 0.014;
const PER_IRON: f64 = 0.042;

/// lb in 100 gal held to be enough for most waters. Source: the same.
const ENOUGH_FOR_MOST: (f64, f64) = (4.0, 6.0);
/// lb in 100 gal on labels. Source: the same; Washington State Univ. recommends as much.
const ON_LABELS: (f64, f64) = (8.5, 17.0);

fn shown(density: Density) -> Amount {
    let amount = Amount::new(density, Kind::Density);
    match Unit::named("lb/100 gal") {
        Some(unit) => amount.shown_in(&unit),
        None => amount,
    }
}

/// Why a water test cannot be used.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ConditioningError {
    /// Not a number of parts per million.
    #[error("\"{given}\" is not a part of water; 0 to 1000000 ppm would do")]
    Parts {
        /// The text or number as given.
        given: String,
    },
}

impl Coded for ConditioningError {
    fn code(&self) -> &'static str {
        "water_test_parts"
    }

    fn args(&self) -> Args {
        let Self::Parts { given } = self;
        Args::new().with("given", Arg::Text(given.clone()))
    }

    fn hint(&self) -> Option<String> {
        Some(
            "write each metal as the laboratory gives it, as 150 ppm or 150 mg/L; hardness in grains is another thing"
                .to_string(),
        )
    }
}
