//! Chance from a seed: a small generator that never changes, and what is drawn with it.

/// A stream of chance. The same seed and part give the same stream on every machine and in every version.
///
/// *Source*: PCG32 (XSH RR 64/32), M. E. O'Neill, PCG: A Family of Simple Fast Space-Efficient Statistically Good
/// Algorithms for Random Number Generation, Harvey Mudd College HMC-CS-2014-0905; held to the published output of
/// its demonstration program by test. Written here because twenty lines that stand still keep seeds meaning the
/// same; a library may change its stream between versions.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Random {
    state: u64,
    increment: u64,
}

/// What a stream is for. Streams of different parts are independent, so that the same boom can be tested by other
/// hands, or the same hands can test another boom.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// What is on the boom.
    Boom,
    /// Which cup and watch there are and how they are off.
    Kit,
    /// What happens at each catch.
    Catching,
    /// What the caller chooses, such as a time or a number of repeats.
    Choice,
}

impl Random {
    /// The stream of one part of what belongs to a seed.
    #[must_use]
    pub fn new(seed: u64, part: Part) -> Self {
        // Neighbouring seeds would give related streams; mixed first, they do not.
        let part = match part {
            Part::Boom => 1,
            Part::Kit => 2,
            Part::Catching => 3,
            Part::Choice => 4,
        };
        Self::reference(mixed(seed), mixed(seed ^ mixed(part)))
    }

    /// As the publication seeds it.
    fn reference(seed: u64, stream: u64) -> Self {
        let mut random = Self { state: 0, increment: (stream << 1) | 1 };
        random.bits();
        random.state = random.state.wrapping_add(seed);
        random.bits();
        random
    }

    /// 32 bits.
    #[expect(clippy::cast_possible_truncation, reason = "the permutation keeps the lower 32 bits")]
    fn bits(&mut self) -> u32 {
        let old = self.state;
        self.state = old.wrapping_mul(MULTIPLIER).wrapping_add(self.increment);
        let shifted = (((old >> 18) ^ old) >> 27) as u32;
        shifted.rotate_right((old >> 59) as u32)
    }

    /// A share from 0 up to, but not, 1: 53 bits.
    pub fn share(&mut self) -> f64 {
        let upper = u64::from(self.bits() >> 5);
        let lower = u64::from(self.bits() >> 6);
        ((upper << 26) | lower) as f64 / TWO_TO_53
    }

    /// Whether something happens that has this chance.
    pub fn happens(&mut self, chance: f64) -> bool {
        self.share() < chance
    }

    /// A whole number from `low` to `high`, both possible.
    pub fn whole(&mut self, low: u32, high: u32) -> u32 {
        let count = u64::from(high.saturating_sub(low)) + 1;
        // The upper half of bits × count; its bias is below count ÷ 2³².
        low.saturating_add(u32::try_from((u64::from(self.bits()) * count) >> 32).unwrap_or(0))
    }

    /// One of several; `None` of nothing.
    pub fn one_of<'a, T>(&mut self, several: &'a [T]) -> Option<&'a T> {
        let last = u32::try_from(several.len()).ok()?.checked_sub(1)?;
        several.get(usize::try_from(self.whole(0, last)).ok()?)
    }

    /// A normal deviate of mean 0 and standard deviation 1.
    ///
    /// *Source*: G. E. P. Box and M. E. Muller, Annals of Mathematical Statistics 29 (1958) 610.
    pub fn normal(&mut self) -> f64 {
        // 1 − share is above 0, so that the logarithm is finite.
        let radius = (-2.0 * libm::log(1.0 - self.share())).sqrt();
        radius * libm::cos(2.0 * core::f64::consts::PI * self.share())
    }
}

/// Mixes 64 bits well. Source: finaliser of SplitMix64, Steele, Lea and Flood, OOPSLA 2014.
fn mixed(value: u64) -> u64 {
    let mut mixed = value.wrapping_add(0x9e37_79b9_7f4a_7c15);
    mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    mixed ^ (mixed >> 31)
}

/// The multiplier of the 64-bit generator. Source: O'Neill (2014), as for [`Random`].
const MULTIPLIER: u64 = 6_364_136_223_846_793_005;
/// 2 to the 53rd: as many steps as a share has. Source: IEEE 754, bits of a double's significand.
const TWO_TO_53: f64 = 9_007_199_254_740_992.0;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_published_stream_comes_out() {
        // Source: the output of pcg32-demo in O'Neill's minimal C library (seed 42, stream 54), from memory.
        let mut random = Random::reference(42, 54);
        let first: Vec<u32> = (0..6).map(|_| random.bits()).collect();
        assert_eq!(first, [0xa15c_02b7, 0x7b47_f409, 0xba1d_3330, 0x83d2_f293, 0xbfa4_784b, 0xcbed_606e]);
    }

    #[test]
    fn shares_and_normals_have_their_means_and_spreads() {
        // Uniform: mean 1/2, variance 1/12. Normal: mean 0, variance 1, 95 % within 1.96. Standard errors of
        // 200,000 draws: 0.0006, 0.0002, 0.0022, 0.0032, 0.0005; the bounds are five times as wide.
        let mut random = Random::new(7, Part::Boom);
        let (mut sum, mut squares, mut normal, mut normal_squares, mut inside) = (0.0, 0.0, 0.0, 0.0, 0);
        for _ in 0..200_000 {
            let share = random.share();
            assert!((0.0..1.0).contains(&share));
            sum += share;
            squares += (share - 0.5) * (share - 0.5);
            let deviate = random.normal();
            normal += deviate;
            normal_squares += deviate * deviate;
            inside += u32::from(deviate.abs() < 1.96);
        }
        let mean = |sum: f64| sum / 200_000.0;
        assert!((mean(sum) - 0.5).abs() < 0.003 && (mean(squares) - 1.0 / 12.0).abs() < 0.001);
        assert!(mean(normal).abs() < 0.011 && (mean(normal_squares) - 1.0).abs() < 0.016);
        assert!((mean(f64::from(inside)) - 0.95).abs() < 0.0025);
    }

    #[test]
    fn parts_and_neighbouring_seeds_are_unrelated() {
        // Correlation of the first shares of neighbouring seeds, and of two parts; standard error 1 ÷ √20,000.
        let first = |seed, part| Random::new(seed, part).share() - 0.5;
        let related = |other: &dyn Fn(u64) -> f64| {
            (0..20_000).map(|seed| first(seed, Part::Boom) * other(seed)).sum::<f64>() * 12.0 / 20_000.0
        };
        assert!(related(&|seed| first(seed + 1, Part::Boom)).abs() < 0.03);
        assert!(related(&|seed| first(seed, Part::Kit)).abs() < 0.03);
    }

    #[test]
    fn whole_numbers_reach_both_ends() {
        let mut random = Random::new(1, Part::Choice);
        let mut seen = [0; 4];
        (0..400).for_each(|_| seen[random.whole(3, 6) as usize - 3] += 1);
        assert!(seen.iter().all(|times| *times > 60), "{seen:?}");
        assert_eq!(random.whole(5, 5), 5);
        assert_eq!(random.one_of::<u8>(&[]), None);
    }
}
