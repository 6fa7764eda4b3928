//! Work shared among cores, given back in the order of the draws: no sum depends on who did what or when.

use std::num::NonZeroUsize;
use std::thread;

/// Among how many the work is split.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cores(NonZeroUsize);

impl Cores {
    /// So many, at least one.
    #[must_use]
    pub fn new(count: usize) -> Self {
        Self(NonZeroUsize::new(count).unwrap_or(NonZeroUsize::MIN))
    }

    /// As many as this machine has.
    #[must_use]
    pub fn all() -> Self {
        Self(thread::available_parallelism().unwrap_or(NonZeroUsize::MIN))
    }
}

/// Returns what `work` makes of 0, 1, 2, …, in that order.
///
/// Each core takes every so-manyth place, which is fixed beforehand.
pub fn in_order<T: Send>(count: u32, cores: Cores, work: impl Fn(u32) -> T + Sync) -> Vec<T> {
    let cores = cores.0.get();
    let work = &work;
    let mut shares: Vec<std::vec::IntoIter<T>> = thread::scope(|scope| {
        let started: Vec<_> = (0..cores)
            .map(|core| {
                let places = (0..count).skip(core).step_by(cores);
                scope.spawn(move || places.map(work).collect::<Vec<T>>())
            })
            .collect();
        let joined = started.into_iter().map(|share| match share.join() {
            Ok(done) => done.into_iter(),
            Err(panic) => std::panic::resume_unwind(panic),
        });
        joined.collect()
    });
    let turns = (0..cores).cycle().take(usize::try_from(count).unwrap_or(usize::MAX));
    turns.filter_map(|core| shares[core].next()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_order_does_not_depend_on_the_split() {
        let alone = in_order(17, Cores::new(1), |place| place * place);
        assert_eq!(alone, (0..17).map(|place| place * place).collect::<Vec<u32>>());
        for cores in [2, 3, 5, 40] {
            assert_eq!(in_order(17, Cores::new(cores), |place| place * place), alone, "{cores}");
        }
        assert!(in_order(0, Cores::new(2), |place| place).is_empty());
    }
}
