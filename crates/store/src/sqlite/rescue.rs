//! What can still be read out of a damaged file.
//!
//! A broken page stops whoever reads along the table. So the places of lines are gathered from every tree that holds them,
//! from both ends, and each line is then asked for by itself.

use std::collections::{BTreeMap, BTreeSet};

use notebook::{DeviceId, Hash, Line, NotebookId};
use rusqlite::{Connection, params};

use super::rows::{COLUMNS, down, key, line_of};

/// At most so many numbers that no tree names are asked for one by one. Our own choice: some seconds of asking, and far more
/// lines than a device loses.
const MOST_GUESSES: u64 = 1_000_000;

/// The orders in which places are read: along each of the three trees, from both ends.
const WAYS: [&str; 6] = [
    "INDEXED BY line_in_order ORDER BY place, device, number, hash",
    "INDEXED BY line_in_order ORDER BY place DESC, device DESC, number DESC, hash DESC",
    "INDEXED BY line_of_thing ORDER BY thing, place, device, number, hash",
    "INDEXED BY line_of_thing ORDER BY thing DESC, place DESC, device DESC, number DESC, hash DESC",
    "NOT INDEXED ORDER BY device, number, hash",
    "NOT INDEXED ORDER BY device DESC, number DESC, hash DESC",
];

type Found = BTreeMap<(DeviceId, u64, Hash), Line>;

/// Every line that can be read out of a file that may be damaged. Where even its name cannot, it is taken to be of the
/// notebook that the caller expects; a line of another one does not fit its check sum then.
pub(crate) fn readable_lines(connection: &Connection, expected: Option<NotebookId>) -> Vec<Line> {
    let named = connection.query_row("SELECT notebook FROM book", [], |row| row.get::<_, [u8; 16]>(0));
    let named = named.ok().map(|bytes| NotebookId::from_bits(u128::from_be_bytes(bytes)));
    let Some(notebook) = named.or(expected) else { return Vec::new() };
    let mut found = Found::new();
    let places = places(connection);
    for (device, number) in &places {
        ask(connection, notebook, *device, *number, &mut found);
    }
    // Numbers go on without gaps, so that those between two known ones are known too, whatever became of the trees.
    let devices: BTreeSet<DeviceId> = places.iter().map(|(device, _)| *device).collect();
    let mut guesses = 0;
    for device in devices {
        let last = places.range(..=(device, u64::MAX)).next_back().map_or(0, |(_, number)| *number);
        for number in (1..=last).filter(|number| !places.contains(&(device, *number))) {
            if guesses == MOST_GUESSES {
                return found.into_values().collect();
            }
            guesses += 1;
            ask(connection, notebook, device, number, &mut found);
        }
    }
    found.into_values().collect()
}

fn places(connection: &Connection) -> BTreeSet<(DeviceId, u64)> {
    let mut places = BTreeSet::new();
    for way in WAYS {
        let sql = format!("SELECT device, number, hash FROM line {way}");
        let Ok(mut statement) = connection.prepare(&sql) else { continue };
        let Ok(mut rows) = statement.query([]) else { continue };
        while let Ok(Some(row)) = rows.next() {
            places.extend(key(row).map(|(device, number, _)| (device, number)));
        }
    }
    places
}

/// Asks for the lines at one number of a device. A row that makes no whole line is passed over.
fn ask(connection: &Connection, notebook: NotebookId, device: DeviceId, number: u64, found: &mut Found) {
    let sql = format!("SELECT {COLUMNS} FROM line NOT INDEXED WHERE device = ?1 AND number = ?2");
    let Ok(mut statement) = connection.prepare_cached(&sql) else { return };
    let Ok(mut rows) = statement.query(params![&device.bits().to_be_bytes()[..], down(number)]) else { return };
    while let Ok(Some(row)) = rows.next() {
        if let Ok(line) = line_of(row, notebook) {
            found.insert((line.device(), line.number(), line.hash()), line);
        }
    }
}
