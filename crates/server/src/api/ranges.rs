//! Ranges of numbers as they are sent: for each device its ranges, first and last in.

use std::collections::BTreeMap;

use notebook::{DeviceId, Ranges};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// What is held: for each device the ranges of its numbers, first and last in
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[schema(value_type = BTreeMap<String, Vec<Vec<u64>>>, example = json!({ "017f22e2-79b0-7cc3-98c4-dc0c0c07398f": [[1, 40], [42, 42]] }))]
pub struct RangesHeld(pub BTreeMap<String, Vec<(u64, u64)>>);

/// Why they cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RangesWrong {
    /// There are too many of them.
    TooMany,
    /// One is not as it should be.
    NotOne,
}

impl RangesHeld {
    /// As they are sent.
    #[must_use]
    pub fn of(ranges: &Ranges) -> Self {
        Self(ranges.iter().map(|(device, ranges)| (device.to_string(), ranges.to_vec())).collect())
    }

    /// As they are used.
    ///
    /// *Errors*: a device or range that is none; more than `most` ranges.
    pub fn read(mut self, most: usize) -> Result<Ranges, RangesWrong> {
        if self.0.values().map(Vec::len).sum::<usize>() > most {
            return Err(RangesWrong::TooMany);
        }
        let mut all = Ranges::none();
        for (device, ranges) in &mut self.0 {
            let device = DeviceId::parse(device).ok_or(RangesWrong::NotOne)?;
            // In order they are added at once each; any other order would be slow when there are many.
            ranges.sort_unstable();
            for &mut (first, last) in ranges {
                if first == 0 || first > last {
                    return Err(RangesWrong::NotOne);
                }
                all.add_range(device, first, last);
            }
        }
        Ok(all)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn they_come_back_as_they_were() {
        let mut ranges = Ranges::none();
        for (device, first, last) in [(7, 1, 9), (7, 11, 11), (8, 3, u64::MAX)] {
            ranges.add_range(DeviceId::from_bits(device), first, last);
        }
        let sent = RangesHeld::of(&ranges);
        let text = serde_json::to_string(&sent).unwrap();
        let read: RangesHeld = serde_json::from_str(&text).unwrap();
        assert_eq!(read.clone().read(3), Ok(ranges));
        assert_eq!(read.read(2), Err(RangesWrong::TooMany));
    }

    #[test]
    fn what_is_no_range_is_refused() {
        let device = DeviceId::from_bits(7).to_string();
        for (device, range) in [("nobody", (1, 2)), (device.as_str(), (0, 2)), (device.as_str(), (3, 2))] {
            let held = RangesHeld(BTreeMap::from([(device.to_string(), vec![range])]));
            assert_eq!(held.read(10), Err(RangesWrong::NotOne));
        }
    }

    #[test]
    fn many_in_the_worst_order_are_soon_read() {
        let ranges = (0..100_000_u64).rev().map(|number| (3 * number + 1, 3 * number + 1)).collect();
        let held = RangesHeld(BTreeMap::from([(DeviceId::from_bits(7).to_string(), ranges)]));
        let start = std::time::Instant::now();
        assert_eq!(held.read(100_000).unwrap().count(), 100_000);
        // Sorted at each step it takes a minute; this bound is loose enough for a slow machine.
        assert!(start.elapsed().as_secs() < 5);
    }
}
