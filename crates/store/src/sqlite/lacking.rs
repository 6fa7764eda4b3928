//! What another lacks, found by the gaps in what it holds: what it has already is not walked over.

use std::collections::BinaryHeap;

use notebook::{DeviceId, Hash, Ranges};
use rusqlite::{Connection, OptionalExtension, params};

use super::rows::{Key, bits, down, key, whole};
use super::told;
use crate::{HIGHEST, StoreError};

/// The next device after one. The device leads the table's own key, so that each is found without a walk.
const NEXT_DEVICE: &str = "SELECT device FROM line WHERE device > ?1 ORDER BY device LIMIT 1";
/// The first device of all.
const FIRST_DEVICE: &str = "SELECT device FROM line ORDER BY device LIMIT 1";
/// Where the lines of one gap stand.
const GAP: &str =
    "SELECT device, number, hash, place FROM line NOT INDEXED WHERE device = ?1 AND number BETWEEN ?2 AND ?3";

/// A place in the order of the notebook, and the key of the line there.
type Place = (u64, DeviceId, u64, Hash);

/// The keys of the first so many lines that another lacks, in the order of the notebook.
pub(super) fn lacking(connection: &Connection, held: &Ranges, most: usize) -> Result<Vec<Key>, StoreError> {
    // The last in order on top, so that it goes when one before it is found and there are enough.
    let mut first = BinaryHeap::new();
    for device in devices(connection)? {
        for gap in gaps(held, device) {
            of_gap(connection, device, gap, most, &mut first)?;
        }
    }
    Ok(first.into_sorted_vec().into_iter().map(|(_, device, number, hash)| (device, number, hash)).collect())
}

/// Every device that wrote here.
fn devices(connection: &Connection) -> Result<Vec<DeviceId>, StoreError> {
    let mut devices = Vec::new();
    let mut next = connection.query_row(FIRST_DEVICE, [], |row| Ok(bits(row, 0))).optional().map_err(told)?;
    while let Some(found) = next {
        let found = found?;
        devices.push(DeviceId::from_bits(found));
        let mut statement = connection.prepare_cached(NEXT_DEVICE).map_err(told)?;
        next = statement
            .query_row([&found.to_be_bytes()[..]], |row| Ok(bits(row, 0)))
            .optional()
            .map_err(told)?;
    }
    Ok(devices)
}

/// The numbers of a device that are not held, both ends in.
fn gaps(held: &Ranges, device: DeviceId) -> Vec<(u64, u64)> {
    let mut all = Ranges::none();
    all.add_range(device, 1, HIGHEST);
    let gaps = all.without(held);
    gaps.iter().flat_map(|(_, ranges)| ranges.to_vec()).collect()
}

fn of_gap(
    connection: &Connection,
    device: DeviceId,
    (from, to): (u64, u64),
    most: usize,
    first: &mut BinaryHeap<Place>,
) -> Result<(), StoreError> {
    let mut statement = connection.prepare_cached(GAP).map_err(told)?;
    let device = device.bits().to_be_bytes();
    let mut rows = statement.query(params![&device[..], down(from), down(to)]).map_err(told)?;
    while let Some(row) = rows.next().map_err(told)? {
        let (device, number, hash) = key(row)?;
        let place = (whole(row, 3)?, device, number, hash);
        if first.len() < most {
            first.push(place);
        } else if let Some(mut last) = first.peek_mut().filter(|last| place < **last) {
            *last = place;
        }
    }
    Ok(())
}

#[cfg(test)]
#[allow(clippy::expect_used)] // a test fails by panicking
mod tests {
    use rusqlite::StatementStatus;

    use super::*;
    use crate::conformance::{BOOK, DEVICE, fact};
    use crate::{Opening, SqliteStore, Store, now};

    /// What SQLite does to answer, step by step.
    fn plan(connection: &Connection, sql: &str) -> String {
        let mut statement = connection.prepare(&format!("EXPLAIN QUERY PLAN {sql}")).expect("a plan");
        let given = vec![rusqlite::types::Null; statement.parameter_count()];
        let rows = statement
            .query_map(rusqlite::params_from_iter(given), |row| row.get::<_, String>(3))
            .expect("its steps");
        rows.map(|row| row.expect("a step")).collect::<Vec<_>>().join("; ")
    }

    #[test]
    fn a_gap_is_asked_for_and_the_rest_is_not_walked_over() {
        let folder = std::env::temp_dir().join(format!("evenswath-lacking-{}", std::process::id()));
        let _ = std::fs::remove_dir_all(&folder);
        std::fs::create_dir_all(&folder).expect("a folder");
        let opening = Opening { notebook: BOOK, device: DEVICE };
        let store = SqliteStore::open(&folder.join("notebook.sqlite"), opening).expect("a new file");
        now(store.append((0..5_000).map(|number| fact(number, 1, "204 ft")).collect())).expect("kept");
        let connection = store.connection();
        assert_eq!(
            plan(&connection, GAP),
            "SEARCH line USING PRIMARY KEY (device=? AND number>? AND number<?)"
        );
        assert_eq!(plan(&connection, NEXT_DEVICE), "SEARCH line USING PRIMARY KEY (device>?)");
        // The work to find ten lines in a gap is the work for ten, not for the five thousand around them.
        let steps = |from: u64, to: u64| {
            let mut statement = connection.prepare(GAP).expect("a statement");
            let device = DEVICE.bits().to_be_bytes();
            let mut rows = statement.query(params![&device[..], down(from), down(to)]).expect("asked");
            let mut count = 0;
            while rows.next().expect("a row").is_some() {
                count += 1;
            }
            drop(rows);
            (count, statement.get_status(StatementStatus::VmStep))
        };
        let ((few, work), (all, much)) = (steps(2_000, 2_009), steps(1, HIGHEST));
        assert_eq!((few, all), (10, 5_000));
        assert!(work * 100 < much, "{work} steps for ten, {much} for all");
        let mut held = Ranges::none();
        held.add_range(DEVICE, 1, 1_999);
        held.add_range(DEVICE, 2_010, 4_998);
        let found = lacking(&connection, &held, 11).expect("found");
        let numbers: Vec<u64> = found.iter().map(|(_, number, _)| *number).collect();
        assert_eq!(numbers, (2_000..=2_009).chain([4_999]).collect::<Vec<_>>());
        assert!(lacking(&connection, &held, 0).expect("asked").is_empty());
        drop(connection);
        drop(store);
        std::fs::remove_dir_all(folder).expect("tidied up");
    }
}
