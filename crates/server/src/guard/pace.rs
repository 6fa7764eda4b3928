//! How often a place may ask: a bucket for each, filled at an even pace, and a bound on how many buckets there are.

use std::collections::BTreeMap;
use std::net::IpAddr;
use std::sync::{Mutex, PoisonError};
use std::time::Duration;

use super::{Peer, Place};
use crate::limits::{Clock, Limits, Pace};
use crate::problem::Problem;

/// The most places kept in mind. Our own choice: a megabyte at most, and more than any yard has phones.
const MOST_PLACES: usize = 4_096;
/// Bits of a number of IP version 6 that name a household or yard; the rest its owner may choose at will (RFC 7421).
const OWN_BITS: u32 = 64;

/// How often each place has asked.
pub struct Paces {
    limits: Limits,
    clock: Clock,
    buckets: Mutex<BTreeMap<u128, Bucket>>,
}

/// What is left at a moment.
#[derive(Clone, Copy, Debug)]
struct Bucket {
    left: f64,
    at: Duration,
}

impl Bucket {
    fn now(self, now: Duration, pace: Pace) -> Self {
        let since = now.saturating_sub(self.at).as_secs_f64();
        let left = (self.left + since * f64::from(pace.each_second)).min(f64::from(pace.at_once));
        Self { left, at: now }
    }
}

impl Paces {
    /// Nobody has asked yet.
    pub fn new(limits: Limits, clock: Clock) -> Self {
        Self { limits, clock, buckets: Mutex::default() }
    }

    /// Counts a request of so much.
    ///
    /// *Errors*: the place has used up what it may; when there is room again.
    pub fn ask(&self, peer: Peer, costs: u32) -> Result<(), Problem> {
        let pace = self.pace(peer.place());
        let now = (self.clock)();
        let mut buckets = self.buckets.lock().unwrap_or_else(PoisonError::into_inner);
        let key = key(peer.address);
        if !buckets.contains_key(&key) && buckets.len() >= MOST_PLACES {
            self.forget(&mut buckets, now);
        }
        let full = Bucket { left: f64::from(pace.at_once), at: now };
        let bucket = buckets.entry(key).or_insert(full);
        *bucket = bucket.now(now, pace);
        let costs = f64::from(costs);
        if bucket.left < costs {
            // Whoever keeps asking too much stays where it is: an answer that costs nothing is not counted.
            let wait = (costs - bucket.left) / f64::from(pace.each_second.max(1));
            // From 1 s to an hour, so the cast holds.
            #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held to 1..=3600")]
            let seconds = wait.ceil().clamp(1.0, 3600.0) as u32;
            return Err(Problem::TooMany { seconds });
        }
        bucket.left -= costs;
        Ok(())
    }

    const fn pace(&self, place: Place) -> Pace {
        match place {
            Place::Here => self.limits.here,
            Place::Network => self.limits.network,
        }
    }

    /// Makes room: places that may ask as if they never had, and if that is not enough those that asked least.
    fn forget(&self, buckets: &mut BTreeMap<u128, Bucket>, now: Duration) {
        let pace = self.limits.network;
        buckets.retain(|_, bucket| bucket.now(now, pace).left < f64::from(pace.at_once));
        if buckets.len() >= MOST_PLACES {
            let mut left: Vec<f64> = buckets.values().map(|bucket| bucket.now(now, pace).left).collect();
            left.sort_unstable_by(f64::total_cmp);
            let middle = left[left.len() / 2];
            buckets.retain(|_, bucket| bucket.now(now, pace).left < middle);
        }
    }
}

/// A place: the whole number of IP version 4, the network's part of version 6.
fn key(address: IpAddr) -> u128 {
    match address.to_canonical() {
        IpAddr::V4(number) => u128::from(u32::from(number)),
        IpAddr::V6(number) => (u128::from(number) >> OWN_BITS) << OWN_BITS | 1 << OWN_BITS.saturating_sub(1),
    }
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;
    use std::sync::atomic::{AtomicU64, Ordering};

    use super::*;
    use crate::guard::Carried;

    fn peer(text: &str) -> Peer {
        Peer { address: text.parse().unwrap(), carried: Carried::Plain }
    }

    fn paces() -> (Paces, Arc<AtomicU64>) {
        let time = Arc::new(AtomicU64::new(0));
        let hand = Arc::clone(&time);
        let clock: Clock = Arc::new(move || Duration::from_millis(hand.load(Ordering::Relaxed)));
        let network = Pace { at_once: 3, each_second: 2 };
        (Paces::new(Limits { network, ..Limits::USUAL }, clock), time)
    }

    #[test]
    fn so_many_at_once_and_then_so_many_a_second() {
        let (paces, time) = paces();
        let phone = peer("192.168.1.7");
        (0..3).for_each(|_| assert_eq!(paces.ask(phone, 1), Ok(())));
        assert_eq!(paces.ask(phone, 1), Err(Problem::TooMany { seconds: 1 }));
        assert_eq!(paces.ask(phone, 20), Err(Problem::TooMany { seconds: 10 }));
        // Another phone is not held up by it.
        assert_eq!(paces.ask(peer("192.168.1.8"), 1), Ok(()));
        time.store(500, Ordering::Relaxed);
        assert_eq!(paces.ask(phone, 1), Ok(()));
        assert!(paces.ask(phone, 1).is_err());
        // A clock that is asked again after a long night fills the bucket and no more.
        time.store(86_400_000, Ordering::Relaxed);
        (0..3).for_each(|_| assert_eq!(paces.ask(phone, 1), Ok(())));
        assert!(paces.ask(phone, 1).is_err());
    }

    #[test]
    fn a_house_has_one_bucket_whatever_numbers_it_takes() {
        let (paces, _) = paces();
        (0..3).for_each(|host| assert_eq!(paces.ask(peer(&format!("2001:db8::{host}")), 1), Ok(())));
        assert!(paces.ask(peer("2001:db8::99"), 1).is_err());
        assert_eq!(paces.ask(peer("2001:db8:0:1::99"), 1), Ok(()));
        assert_eq!(paces.ask(peer("::ffff:192.168.1.7"), 3), Ok(()));
        assert!(paces.ask(peer("192.168.1.7"), 1).is_err());
    }

    #[test]
    fn many_places_do_not_fill_the_memory_and_do_not_free_who_asks_most() {
        let (paces, _) = paces();
        let greedy = peer("10.0.0.1");
        paces.ask(greedy, 3).unwrap();
        for number in 0..20_000_u32 {
            let address = IpAddr::from((0x0B00_0000 + number).to_be_bytes());
            paces.ask(Peer { address, carried: Carried::Plain }, 1).unwrap();
        }
        assert!(paces.buckets.lock().unwrap().len() <= MOST_PLACES);
        assert!(paces.ask(greedy, 1).is_err());
    }
}
