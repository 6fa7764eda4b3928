//! What a notebook holds, said shortly: ranges of numbers for each device. Merging is the union, asking is the difference.

use std::collections::BTreeMap;

use crate::ids::DeviceId;

/// Ranges of numbers, both ends in, for each device; in order, apart and none empty.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Ranges(BTreeMap<DeviceId, Vec<(u64, u64)>>);

impl Ranges {
    /// Nothing held.
    #[must_use]
    pub const fn none() -> Self {
        Self(BTreeMap::new())
    }

    /// Adds one number.
    pub fn add(&mut self, device: DeviceId, number: u64) {
        self.add_range(device, number, number);
    }

    /// Adds a range; one with its ends the wrong way round adds nothing.
    pub fn add_range(&mut self, device: DeviceId, first: u64, last: u64) {
        if first > last {
            return;
        }
        let ranges = self.0.entry(device).or_default();
        // The common case by far: the next number of a device.
        if let Some(end) = ranges.last_mut().filter(|end| end.0 <= first) {
            if first <= end.1.saturating_add(1) {
                end.1 = end.1.max(last);
            } else {
                ranges.push((first, last));
            }
            return;
        }
        ranges.push((first, last));
        ranges.sort_unstable();
        let mut joined: Vec<(u64, u64)> = Vec::with_capacity(ranges.len());
        for (first, last) in ranges.drain(..) {
            match joined.last_mut() {
                Some(end) if first <= end.1.saturating_add(1) => end.1 = end.1.max(last),
                _ => joined.push((first, last)),
            }
        }
        *ranges = joined;
    }

    /// Each device with its ranges.
    pub fn iter(&self) -> impl Iterator<Item = (DeviceId, &[(u64, u64)])> {
        self.0.iter().map(|(device, ranges)| (*device, ranges.as_slice()))
    }

    /// Whether a number is held.
    #[must_use]
    pub fn holds(&self, device: DeviceId, number: u64) -> bool {
        let ranges = self.0.get(&device).map_or(&[][..], Vec::as_slice);
        let after = ranges.partition_point(|range| range.0 <= number);
        after > 0 && ranges[after - 1].1 >= number
    }

    /// The highest number of a device; nought where none is held.
    #[must_use]
    pub fn last(&self, device: DeviceId) -> u64 {
        self.0.get(&device).and_then(|ranges| ranges.last()).map_or(0, |range| range.1)
    }

    /// How many numbers are held in all.
    #[must_use]
    pub fn count(&self) -> u64 {
        self.0
            .values()
            .flatten()
            .fold(0, |sum, (first, last)| sum.saturating_add(last - first).saturating_add(1))
    }

    /// What is held here and not there.
    #[must_use]
    pub fn without(&self, other: &Self) -> Self {
        let mut left = Self::none();
        for (device, ranges) in self.iter() {
            let taken = other.0.get(&device).map_or(&[][..], Vec::as_slice);
            for &(first, last) in ranges {
                let mut next = Some(first);
                for &(low, high) in taken.iter().filter(|(low, high)| *low <= last && *high >= first) {
                    if let Some(from) = next.filter(|from| *from < low) {
                        left.add_range(device, from, low - 1);
                    }
                    next = high.checked_add(1).map(|after| next.map_or(after, |next| next.max(after)));
                }
                if let Some(from) = next.filter(|from| *from <= last) {
                    left.add_range(device, from, last);
                }
            }
        }
        left
    }

    /// What is held here or there.
    #[must_use]
    pub fn with(&self, other: &Self) -> Self {
        let mut all = self.clone();
        for (device, ranges) in other.iter() {
            ranges.iter().for_each(|(first, last)| all.add_range(device, *first, *last));
        }
        all
    }

    /// The numbers from 1 to the highest held that are not: what was lost or has not come yet.
    #[must_use]
    pub fn gaps(&self) -> Self {
        let mut whole = Self::none();
        for (device, _) in self.iter() {
            whole.add_range(device, 1, self.last(device));
        }
        whole.without(self)
    }
}
