//! Limits that a check is held to, as data, each with its source.

use units::Pressure;

/// Who sets the limits here.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, read in full.
pub const ORDER: &str = "uses limits from the French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B";

/// How far the needle may swing with the pump's strokes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pulsation {
    /// Up to this working pressure.
    pub up_to: Pressure,
    /// From this swing on it is a small defect.
    pub minor: Pressure,
    /// Above this swing it is a large one.
    pub major: Pressure,
}

/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 3.2.1.
pub const PULSATION: [Pulsation; 3] = [
    // Up to 6 bar: 0.2 and 0.4 bar.
    Pulsation { up_to: Pressure::bar(6.0), minor: Pressure::bar(0.2), major: Pressure::bar(0.4) },
    // Up to 16 bar: 0.5 and 1.0 bar.
    Pulsation { up_to: Pressure::bar(16.0), minor: Pressure::bar(0.5), major: Pressure::bar(1.0) },
    // Above 16 bar: 2 and 4 bar.
    Pulsation { up_to: Pressure::bar(f64::INFINITY), minor: Pressure::bar(2.0), major: Pressure::bar(4.0) },
];

/// Returns how far the needle may swing at a working pressure.
///
/// *Source*: [`PULSATION`].
///
/// *Example*: at 3 bar more than 0.4 bar is a large defect.
#[must_use]
pub fn pulsation(working: Pressure) -> Pulsation {
    let [low, middle, high] = PULSATION;
    if working <= low.up_to {
        low
    } else if working <= middle.up_to {
        middle
    } else {
        high
    }
}

/// The air chamber's charge as a share of the working pressure, lowest and highest.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 3.2.2.1: 30 to 70 %.
pub const CHAMBER_CHARGE: (f64, f64) = (0.30, 0.70);

/// How far the pressure may change at a fixed setting, as a share.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 5.3.2: more than 10 % within 5 min.
pub const STABILITY: f64 = 0.10;
/// Over how many minutes. Source: the same.
pub const STABILITY_MINUTES: f64 = 5.0;

/// After how many seconds nothing may drip any more.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 5.1.1, 5.2.1 and 8.3.3.1: 5 s.
pub const SHUT_OFF_SECONDS: f64 = 5.0;

/// How far a gauge may be off above 2 bar, as a share.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 5.4.2.3: more than 10 % above 2 bar.
pub const GAUGE: f64 = 0.10;

/// How far one section's closing may raise the pressure of the others, as a share.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 5.2.2.3: at most 10 % of the starting pressure.
pub const SECTION_CLOSED: f64 = 0.10;

/// Volts at a 12 V pump while it runs, below which it is weak.
/// Common practice, from memory: a full battery under load holds 12 V, and wires should lose less than half a volt.
pub const PUMP_VOLTS: f64 = 12.0;

/// How far a tip may be over a new one, as a share.
/// Source: Univ. of Wyoming Extension, 2021: 10 percent or more over a new tip.
pub const TIP_OVER_NEW: f64 = 0.10;
