//! The friction of a wall: Darcy's factor by Reynolds number and roughness, above laminar flow.
//!
//! A boom asks for it hundreds of times, and each time two logarithms and a power are most of the work. Tips that are alike
//! draw almost the same flow, and from one step of Newton to the next a flow hardly moves; so Reynolds numbers are parted into
//! narrow ranges, and in each that is met a short series about its middle is made once.

use core::f64::consts::{LN_10, PI};

use super::friction::{Liquid, Pipe};

/// Reynolds numbers between which neither laminar nor turbulent flow holds. Source: Dunlop (1991), as EPANET 2.2 uses it.
pub(super) const LAMINAR: f64 = 2000.0;
/// The upper end of that range. Same source.
pub(super) const TURBULENT: f64 = 4000.0;

/// 5.74/4000^0.9. Source: Swamee and Jain (1976) at Re 4000; EPANET 2.2 has the same digits.
const SMOOTH_AT_4000: f64 = 3.288_954_763_45e-3;
/// How the smooth part falls with the Reynolds number. Source: Swamee and Jain (1976).
const FALL: f64 = 0.9;
/// Two logarithms to the base of ten are as many natural ones.
const TWO_LOG: f64 = 2.0 / LN_10;

/// What a bore alone sets against the flow of a liquid.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bore {
    /// Metres.
    of: f64,
    /// Reynolds number for a cubic metre a second.
    pub reynolds: f64,
    /// In laminar flow metres for a cubic metre a second, of a metre of it.
    pub straight: f64,
    /// Metres for the square of that, by friction with a factor of one, of a metre of it.
    pub along: f64,
    /// Metres for the square of that, by a fitting of K = 1.
    pub fitting: f64,
}

impl Bore {
    fn of(bore: f64, liquid: &Liquid) -> Self {
        let area = PI * bore * bore / 4.0;
        // Head lost by fittings: K v²/2g.
        let fitting = 1.0 / (2.0 * liquid.gravity * area * area);
        Self {
            of: bore,
            reynolds: bore / (area * liquid.viscosity),
            // f = 64/Re makes the loss straight: 32 ν L v / (g D²).
            straight: 32.0 * liquid.viscosity / (liquid.gravity * bore * bore * area),
            along: fitting / bore,
            fitting,
        }
    }
}

/// A wall: bore, roughness and what follows from them.
#[derive(Clone, Copy, Debug)]
struct Wall {
    bore: Bore,
    roughness: f64,
    /// Roughness as a part of the bore.
    rough: f64,
    /// Dunlop's cubic in Re/2000.
    cubic: [f64; 4],
}

/// What is known of 1/√f over a narrow range of Reynolds numbers.
#[derive(Clone, Copy, Debug, Default)]
struct Stretch {
    /// Which range, by the first digits of its Reynolds numbers; nothing where none is known yet.
    range: u64,
    /// The wall that it holds for.
    wall: usize,
    /// One part in the Reynolds number at its middle.
    inverse: f64,
    /// There the parts of 1/√f by powers of the logarithm of the Reynolds number.
    root: [f64; 5],
}

/// The bits of a number behind those that tell ranges apart: sixty-four ranges from each power of two to the next, so that
/// the series is taken 0.8 % at most to either side. Our own choice: what it leaves out is below 1e-12 of the factor.
const BEHIND: u32 = 46;
/// So many ranges are kept, each in the place that its last digits give. Our own choice: a boom meets a few dozen.
const KEPT: usize = 128;
/// So far apart are the places of two walls for one range, so that those of a boom seldom meet. Our own choice.
const APART: usize = 41;

/// The walls of a network, and the stretches that were met so far.
#[derive(Clone, Debug)]
pub(super) struct Walls {
    walls: Vec<Wall>,
    met: Vec<Stretch>,
}

impl Default for Walls {
    fn default() -> Self {
        Self { walls: Vec::new(), met: vec![Stretch::default(); KEPT] }
    }
}

impl Walls {
    /// The number of the wall of a pipe, and what its bore sets against the flow of this liquid.
    pub fn of(&mut self, pipe: &Pipe, liquid: &Liquid) -> (usize, Bore) {
        // Exactly: pipes that are alike are so to the last digit.
        #[allow(clippy::float_cmp)]
        let known =
            self.walls.iter().position(|wall| wall.bore.of == pipe.bore && wall.roughness == pipe.roughness);
        let number = known.unwrap_or_else(|| {
            let rough = pipe.roughness / pipe.bore;
            let (bore, cubic) = (Bore::of(pipe.bore, liquid), dunlop(rough));
            self.walls.push(Wall { bore, roughness: pipe.roughness, rough, cubic });
            self.walls.len() - 1
        });
        (number, self.walls[number].bore)
    }

    /// The friction factor of a wall and its slope against the logarithm of the Reynolds number, above 2000.
    pub fn factor(&mut self, wall: usize, reynolds: f64) -> (f64, f64) {
        if reynolds <= TURBULENT {
            self.walls[wall].between(reynolds)
        } else {
            self.stretch(wall, reynolds).at(reynolds)
        }
    }

    fn stretch(&mut self, wall: usize, reynolds: f64) -> &Stretch {
        let range = reynolds.to_bits() >> BEHIND;
        // Two walls of one boom rarely meet in a place; where they do, the later one takes it.
        let place = usize::try_from(range % KEPT as u64).unwrap_or(0);
        let stretch = &mut self.met[(place + APART * wall) % KEPT];
        if stretch.range != range || stretch.wall != wall {
            let middle = f64::from_bits((range << BEHIND) | 1 << (BEHIND - 1));
            *stretch = self.walls[wall].about(wall, range, middle);
        }
        stretch
    }
}

impl Stretch {
    fn at(&self, reynolds: f64) -> (f64, f64) {
        let by = reynolds * self.inverse - 1.0;
        // ln(1 + by), by its series to the fifth power.
        let by = by * (1.0 - by * (0.5 - by * (1.0 / 3.0 - by * (0.25 - by * 0.2))));
        let [root, first, second, third, fourth] = self.root;
        let now = root + by * (first + by * (second + by * (third + by * fourth)));
        let slope = first + by * (2.0 * second + by * (3.0 * third + by * (4.0 * fourth)));
        let part = 1.0 / now;
        let factor = part * part;
        (factor, -2.0 * factor * part * slope)
    }
}

/// Dunlop's cubic joins the regimes at 2000 and 4000. Where the manual (eq. D.8) writes the sum of roughness and Reynolds
/// number at the flow's own Reynolds number, EPANET itself takes it at 4000 (`src/hydcoeffs.c`), which alone makes a cubic
/// of it.
fn dunlop(rough: f64) -> [f64; 4] {
    // Dunlop's y2 and y3. His 0.86859 is 2/ln 10, and his 0.00514215 is 1.8 · 2/ln 10 · 5.74/4000^0.9, written out here.
    let y2 = rough / 3.7 + SMOOTH_AT_4000;
    let y3 = -TWO_LOG * libm::log(y2);
    let fa = 1.0 / (y3 * y3);
    let fb = fa * (2.0 - 1.8 * TWO_LOG * SMOOTH_AT_4000 / (y2 * y3));
    [7.0 * fa - fb, 0.128 - 17.0 * fa + 2.5 * fb, -0.128 + 13.0 * fa - 2.0 * fb, 0.032 - 3.0 * fa + 0.5 * fb]
}

impl Wall {
    /// By Dunlop's cubic.
    fn between(&self, reynolds: f64) -> (f64, f64) {
        let r = reynolds * (1.0 / LAMINAR);
        let [x1, x2, x3, x4] = self.cubic;
        let factor = x1 + r * (x2 + r * (x3 + r * x4));
        (factor, r * (x2 + r * (2.0 * x3 + 3.0 * r * x4)))
    }

    /// Swamee and Jain: f = 0.25 / log10(ε/3.7D + 5.74/Re^0.9)², so 1/√f = −2/ln 10 · ln(…).
    fn about(&self, wall: usize, range: u64, reynolds: f64) -> Stretch {
        let smooth = 5.74 / libm::exp(FALL * libm::log(reynolds));
        let sum = self.rough / 3.7 + smooth;
        // The smooth part's share of the sum, u, falls by 0.9 u (1 − u) with the logarithm of the Reynolds number.
        let share = smooth / sum;
        let first = TWO_LOG * FALL * share;
        let second = -FALL * first * (1.0 - share);
        let third = -FALL * second * (1.0 - 2.0 * share);
        let fourth = FALL * FALL * second * (1.0 - 6.0 * share * (1.0 - share));
        let root = [-TWO_LOG * libm::log(sum), first, second / 2.0, third / 6.0, fourth / 24.0];
        Stretch { range, wall, inverse: 1.0 / reynolds, root }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// As it stands in print, in another order of steps.
    fn printed(reynolds: f64, rough: f64) -> f64 {
        let log = libm::log10(rough / 3.7 + 5.74 / libm::pow(reynolds, 0.9));
        0.25 / (log * log)
    }

    fn number(walls: &mut Walls, rough: f64) -> usize {
        let pipe = Pipe { length: 1.0, bore: 0.019, roughness: 0.019 * rough, minor_loss: 0.0 };
        walls.of(&pipe, &Liquid::default()).0
    }

    proptest! {
        /// Source: Swamee and Jain (1976), the formula itself. The slope is held to two of its values a little apart.
        #[test]
        fn the_series_is_as_good_as_the_formula(reynolds in 4_001.0_f64..1e6, rough in 0.0_f64..0.05) {
            let mut walls = Walls::default();
            let wall = number(&mut walls, rough);
            let (factor, slope) = walls.factor(wall, reynolds);
            prop_assert!((factor / printed(reynolds, rough) - 1.0).abs() < 1e-12);
            let apart = 1e-5;
            let rise = printed(reynolds * (1.0 + apart), rough) - printed(reynolds * (1.0 - apart), rough);
            prop_assert!((rise / (2.0 * apart) - slope).abs() < 1e-6 * factor);
        }

        /// Whatever was asked before, of this wall or others, the answer is the same to the last digit.
        #[test]
        fn what_was_asked_before_changes_nothing(
            before in prop::collection::vec((2_000.0_f64..1e6, 0_usize..3), 0..60),
            reynolds in 2_000.0_f64..1e6,
        ) {
            let mut walls = Walls::default();
            let numbers = [0.0, 8e-5, 2e-4].map(|rough| number(&mut walls, rough));
            let mut afresh = walls.clone();
            for (reynolds, wall) in before {
                walls.factor(numbers[wall], reynolds);
            }
            prop_assert_eq!(walls.factor(numbers[1], reynolds), afresh.factor(numbers[1], reynolds));
        }
    }
}
