//! What holds the pressure, and the gauge it is read at.

use sprayer::plumbing::{NodeId, Outlet, Supply};
use units::{Pressure, Quantity};

use super::hoses::Hoses;
use crate::boom_world::WorldError;
use crate::random::Random;

/// What holds the pressure of a sprayer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum HeldBy {
    /// A regulator, set until the gauge shows what is wanted.
    Regulator,
    /// A rate controller that holds the flow of the whole boom.
    RateController,
    /// A pump with a bypass that was set when the tips were new, and not touched since.
    PumpAndBypass,
}

/// How a gauge is off. Nobody at the boom knows it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GaugeWorld {
    /// The standard deviation of its scale, as a share.
    pub scale: f64,
    /// The standard deviation of its zero.
    pub zero: Pressure,
    /// How far its marks are apart.
    pub marks: Pressure,
}

impl GaugeWorld {
    /// A plain gauge: 2 % of what it shows, half a psi at nothing, a mark every psi.
    ///
    /// *Source*: our assumption; gauges of grade B read within 2 to 3 % (ASME B40.100, from memory).
    #[must_use]
    pub const fn plain() -> Self {
        Self { scale: 0.02, zero: Pressure::psi(0.5), marks: Pressure::psi(1.0) }
    }

    pub(super) fn draw(&self, random: &mut Random) -> Gauge {
        Gauge {
            scale: self.scale * random.normal(),
            zero: self.zero.si() * random.normal(),
            marks: self.marks.si(),
        }
    }
}

/// One gauge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Gauge {
    scale: f64,
    zero: f64,
    marks: f64,
}

impl Gauge {
    /// What is read off it at a true pressure.
    pub fn read(&self, pressure: f64) -> f64 {
        let shown = pressure * (1.0 + self.scale) + self.zero;
        (shown / self.marks).round().max(1.0) * self.marks
    }

    /// The true pressure at which it shows this.
    fn at(&self, shown: f64) -> f64 {
        ((shown - self.zero) / (1.0 + self.scale)).max(0.1 * shown)
    }
}

/// A pascal is so many metres of water. Source: 1,000 kg/m³ and 9.80665 m/s² (CGPM 1901), as the plumbing takes them.
pub(super) const METRES_IN_A_PASCAL: f64 = 1.0 / 9_806.65;
/// How far off the meter of a controller is: the standard deviation, a share. Our assumption.
const METER: f64 = 0.03;

/// Draws by how many times a controller's meter is off.
pub(super) fn meter(random: &mut Random) -> f64 {
    (1.0 + METER * random.normal()).max(0.5)
}

/// A pump's head with nothing flowing, and the share of its flow that goes back to the tank by the bypass when it is set, both
/// against what the tips need. Our assumption.
const SHUT_OFF: f64 = 1.6;
const BYPASSED: f64 = 0.4;

impl HeldBy {
    /// What feeds the network, and a bypass where there is one: set while `new` tips were on, to show `wanted` (Pa). The meter of
    /// a controller is off by so many times.
    pub(super) fn supply(
        self,
        hoses: &Hoses,
        new: &[Vec<f64>],
        (wanted, gauge): (f64, &Gauge),
        meter: f64,
    ) -> Result<(impl Fn(NodeId) -> Supply + use<>, Option<Outlet>), WorldError> {
        let head = gauge.at(wanted) * METRES_IN_A_PASCAL;
        let held = move |at: NodeId| Supply::HeldHead { at, head };
        let flow = hoses.network(new, held, None).network.solve()?.total();
        let rate = flow * meter;
        // A curve that gives the tips and the bypass what they take at the wanted head.
        let shut_off = SHUT_OFF * head;
        let through = flow * (1.0 + BYPASSED);
        let fall = (shut_off - head) / (through * through);
        let bypass = Outlet { coefficient: BYPASSED * flow / head.sqrt(), opens_at: 0.0 };
        let bypass = (self == Self::PumpAndBypass).then_some(bypass);
        let supply = move |at: NodeId| match self {
            Self::Regulator => Supply::HeldHead { at, head },
            Self::RateController => Supply::HeldFlow { at, flow: rate },
            Self::PumpAndBypass => Supply::Pump { at, shut_off, fall },
        };
        Ok((supply, bypass))
    }
}
