//! What a pipe takes off the head, and how fast that grows with the flow, in all regimes.

use super::wall::{LAMINAR, Walls};

/// What flows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Liquid {
    /// Kilograms in a cubic metre.
    pub density: f64,
    /// Kinematic viscosity, square metres a second.
    pub viscosity: f64,
    /// What pulls it down, metres a second squared.
    pub gravity: f64,
}

impl Default for Liquid {
    /// Water near 20 °C.
    ///
    /// *Source*: 1000 kg/m³, the convention by which a bar is 10.19716 m of water; viscosity 1.1e-5 ft²/s, EPANET 2.2 User
    /// Manual (EPA/600/R-20/133), default of the option VISCOSITY; standard gravity 9.80665 m/s² (CGPM 1901).
    fn default() -> Self {
        Self { density: 1000.0, viscosity: 1.021_93e-6, gravity: 9.806_65 }
    }
}

/// A length of hose or pipe, or a body with its strainer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pipe {
    /// Metres.
    pub length: f64,
    /// Inner diameter, metres.
    pub bore: f64,
    /// Roughness of the wall, metres.
    pub roughness: f64,
    /// Loss of fittings, valve and strainer together: K on the velocity in this bore.
    pub minor_loss: f64,
}

/// A head lost and how fast it grows: metres, and metres for a cubic metre a second.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Loss {
    /// The head lost; against the flow it is negative.
    pub head: f64,
    /// Its slope; never nothing.
    pub slope: f64,
}

/// Below this slope a link carries whatever it is asked to, and the sums would divide by nothing: metres for a cubic metre a
/// second. Our own choice: at a litre a minute it is 2e-9 m of water.
const LEAST_SLOPE: f64 = 1e-4;

impl Pipe {
    /// Returns the head lost at a flow in cubic metres a second, and its slope.
    ///
    /// *Source*: Darcy and Weisbach; friction factor 64/Re up to Re 2000, Swamee and Jain (1976) from 4000 on, between them
    /// Dunlop's cubic, which joins both in value and slope: EPANET 2.2 User Manual, appendix D, eq. D.5 to D.8.
    #[must_use]
    pub fn loss(&self, flow: f64, liquid: &Liquid) -> Loss {
        let mut walls = Walls::default();
        Resistance::of(self, liquid, &mut walls).loss(flow, &mut walls)
    }
}

/// What a pipe sets against the flow of a liquid: all of its loss that does not depend on the flow.
#[derive(Clone, Copy, Debug)]
pub(super) struct Resistance {
    /// Reynolds number for a cubic metre a second.
    reynolds: f64,
    /// In laminar flow metres for a cubic metre a second.
    straight: f64,
    /// Metres for the square of that, by friction with a factor of one.
    along: f64,
    /// Metres for the square of that, by fittings.
    minor: f64,
    /// The number of its wall.
    wall: usize,
}

impl Resistance {
    pub fn of(pipe: &Pipe, liquid: &Liquid, walls: &mut Walls) -> Self {
        let (wall, bore) = walls.of(pipe, liquid);
        Self {
            reynolds: bore.reynolds,
            straight: bore.straight * pipe.length,
            along: bore.along * pipe.length,
            minor: bore.fitting * pipe.minor_loss,
            wall,
        }
    }

    /// The loss; `walls` are those it was made with.
    pub fn loss(&self, flow: f64, walls: &mut Walls) -> Loss {
        let quick = flow.abs();
        let reynolds = quick * self.reynolds;
        let (head, slope) = if reynolds <= LAMINAR {
            (self.straight * quick, self.straight)
        } else {
            let (factor, growth) = walls.factor(self.wall, reynolds);
            // d(f q²) = 2 f q + q df/d ln q
            (self.along * factor * quick * quick, self.along * quick * (2.0 * factor + growth))
        };
        let head = head + self.minor * quick * quick;
        let slope = slope + 2.0 * self.minor * quick;
        Loss { head: head.copysign(flow), slope: slope.max(LEAST_SLOPE) }
    }
}

#[cfg(test)]
mod tests {
    use core::f64::consts::PI;

    use super::super::wall::TURBULENT;
    use super::*;

    const HOSE: Pipe = Pipe { length: 0.5, bore: 0.019, roughness: 1.5e-6, minor_loss: 0.0 };

    #[test]
    fn slopes_are_those_of_the_losses() {
        let liquid = Liquid::default();
        let pipe = Pipe { minor_loss: 3.0, ..HOSE };
        for litres in [0.2, 1.0, 1.85, 2.1, 2.6, 3.2, 3.6, 3.8, 5.0, 20.0, 60.0] {
            let flow = litres / 60_000.0;
            let step = flow * 1e-6;
            let rise = pipe.loss(flow + step, &liquid).head - pipe.loss(flow - step, &liquid).head;
            let slope = pipe.loss(flow, &liquid).slope;
            assert!(
                (rise / (2.0 * step) / slope - 1.0).abs() < 1e-4,
                "{litres}: {} {slope}",
                rise / (2.0 * step)
            );
        }
    }

    #[test]
    fn the_regimes_join() {
        let liquid = Liquid::default();
        let flow_at = |reynolds: f64| reynolds * liquid.viscosity * PI * HOSE.bore / 4.0;
        for edge in [LAMINAR, TURBULENT] {
            let below = HOSE.loss(flow_at(edge * (1.0 - 1e-9)), &liquid).head;
            let above = HOSE.loss(flow_at(edge * (1.0 + 1e-9)), &liquid).head;
            // The constants are printed to five figures, and so well do the pieces join.
            assert!((above / below - 1.0).abs() < 2e-4, "{edge}: {below} {above}");
        }
        // 64/Re at Re 2000 is 0.032: h = f L v² / (2 g D), by hand.
        let speed: f64 = 2000.0 * liquid.viscosity / HOSE.bore;
        let expected = 0.032 * 0.5 * speed * speed / (2.0 * 9.806_65 * 0.019);
        assert!((HOSE.loss(flow_at(2000.0), &liquid).head / expected - 1.0).abs() < 1e-9);
    }
}
