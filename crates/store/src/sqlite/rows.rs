//! Lines as rows and back. A row that does not make a whole line is damage, never a guess.

use notebook::{
    About, At, DeviceId, Hash, Kept, Kind, Line, LineId, NotebookId, ThingId, Written, is_withdrawal,
};
use rusqlite::{Connection, Params, Row, Transaction, params};

use super::told;
use crate::{StoreError, TakenIn};

/// Keeps a line that is new, without what is written where its thing was withdrawn; gives it as it was kept.
pub(super) fn insert(transaction: &Transaction<'_>, line: &Line) -> Result<Line, StoreError> {
    let withdraws = is_withdrawal(line);
    let about = line.about();
    let thing = about.id.bits().to_be_bytes();
    if withdraws {
        transaction
            .execute(
                "INSERT OR IGNORE INTO withdrawn VALUES (?1, ?2)",
                params![about.kind.word(), &thing[..]],
            )
            .map_err(told)?;
    }
    let line =
        if !withdraws && is_withdrawn(transaction, about)? { line.clone().bare() } else { line.clone() };
    transaction
        .prepare_cached(
            "INSERT INTO line VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14)",
        )
        .and_then(|mut statement| {
            statement.execute(params![
                &line.device().bits().to_be_bytes()[..],
                down(line.number()),
                &line.hash().bytes()[..],
                &line.id().bits().to_be_bytes()[..],
                about.kind.word(),
                &thing[..],
                down(line.order()),
                line.at().utc_milliseconds,
                line.at().offset_minutes,
                line.version(),
                line.written().map(Written::text),
                line.written().map(|written| &written.salt()[..]),
                &line.written_hash().bytes()[..],
                &line.previous().bytes()[..],
            ])
        })
        .map_err(told)?;
    if withdraws {
        // Everything else about it goes, in the same transaction; withdrawals themselves stay.
        let mut others = select(transaction, line.notebook(), "WHERE thing = ?1", [&thing[..]])?;
        others.retain(|other| other.about() == about && other.written().is_some() && !is_withdrawal(other));
        for other in others {
            transaction
                .execute(
                    "UPDATE line SET entry = NULL, salt = NULL WHERE device = ?1 AND number = ?2 AND hash = ?3",
                    params![&other.device().bits().to_be_bytes()[..], down(other.number()), &other.hash().bytes()[..]],
                )
                .map_err(told)?;
        }
    }
    Ok(line)
}

/// Takes a line from elsewhere in, and counts what became of it.
pub(super) fn take(transaction: &Transaction<'_>, line: Line, taken: &mut TakenIn) -> Result<(), StoreError> {
    let device = line.device().bits().to_be_bytes();
    let known: Option<bool> = transaction
        .prepare_cached("SELECT entry IS NOT NULL FROM line WHERE device = ?1 AND number = ?2 AND hash = ?3")
        .and_then(|mut statement| {
            let mut found =
                statement.query(params![&device[..], down(line.number()), &line.hash().bytes()[..]])?;
            found.next()?.map(|row| row.get(0)).transpose()
        })
        .map_err(told)?;
    match (known, line.written()) {
        (None, _) => {
            insert(transaction, &line)?;
            taken.new += 1;
        }
        (Some(false), Some(written)) if !is_withdrawn(transaction, line.about())? => {
            transaction
                .execute(
                    "UPDATE line SET entry = ?4, salt = ?5 WHERE device = ?1 AND number = ?2 AND hash = ?3",
                    params![
                        &device[..],
                        down(line.number()),
                        &line.hash().bytes()[..],
                        written.text(),
                        &written.salt()[..]
                    ],
                )
                .map_err(told)?;
            taken.filled_in += 1;
        }
        (Some(_), _) => taken.known += 1,
    }
    Ok(())
}

fn is_withdrawn(transaction: &Transaction<'_>, about: About) -> Result<bool, StoreError> {
    let thing = about.id.bits().to_be_bytes();
    transaction
        .prepare_cached("SELECT 1 FROM withdrawn WHERE kind = ?1 AND thing = ?2")
        .and_then(|mut statement| statement.exists(params![about.kind.word(), &thing[..]]))
        .map_err(told)
}

/// The things that their owner has withdrawn, of whatever kind.
pub(crate) fn withdrawn_things(connection: &Connection) -> Result<Vec<ThingId>, StoreError> {
    let mut statement =
        connection.prepare_cached("SELECT thing FROM withdrawn ORDER BY thing").map_err(told)?;
    let mut rows = statement.query([]).map_err(told)?;
    let mut things = Vec::new();
    while let Some(row) = rows.next().map_err(told)? {
        things.push(ThingId::from_bits(bits(row, 0)?));
    }
    Ok(things)
}

/// What a line is found by: its device, its number there, its check sum.
pub(super) type Key = (DeviceId, u64, Hash);

/// The key of every line, in the order of the notebook.
pub(super) fn keys(connection: &Connection) -> Result<Vec<Key>, StoreError> {
    // The index holds all that is asked for, so that no line is read.
    let mut statement = connection
        .prepare_cached("SELECT device, number, hash FROM line INDEXED BY line_in_order ORDER BY place, device, number, hash")
        .map_err(told)?;
    let mut rows = statement.query([]).map_err(told)?;
    let mut keys = Vec::new();
    while let Some(row) = rows.next().map_err(told)? {
        keys.push(key(row)?);
    }
    Ok(keys)
}

/// The highest order there is; nought where there is no line.
pub(super) fn highest_order(connection: &Connection) -> Result<u64, StoreError> {
    let order: Option<i64> =
        connection.query_row("SELECT max(place) FROM line", [], |row| row.get(0)).map_err(told)?;
    up(order.unwrap_or(0))
}

/// The key in the first three columns of a row.
pub(super) fn key(row: &Row<'_>) -> Result<Key, StoreError> {
    let hash = row.get::<_, [u8; 32]>(2).map(Hash::from_bytes).map_err(told)?;
    Ok((DeviceId::from_bits(bits(row, 0)?), whole(row, 1)?, hash))
}

/// The line of a key that is there.
pub(super) fn read(connection: &Connection, notebook: NotebookId, key: Key) -> Result<Line, StoreError> {
    let (device, number, hash) = key;
    let sql = format!("SELECT {COLUMNS} FROM line WHERE device = ?1 AND number = ?2 AND hash = ?3");
    let mut statement = connection.prepare_cached(&sql).map_err(told)?;
    let mut rows = statement
        .query(params![&device.bits().to_be_bytes()[..], down(number), &hash.bytes()[..]])
        .map_err(told)?;
    match rows.next().map_err(told)? {
        Some(row) => line_of(row, notebook),
        None => {
            Err(StoreError::Damaged { what: format!("line {number} of device {device} cannot be found") })
        }
    }
}

/// The lines of a condition, in the order of the notebook.
pub(super) fn select(
    connection: &Connection,
    notebook: NotebookId,
    condition: &str,
    given: impl Params,
) -> Result<Vec<Line>, StoreError> {
    let sql = format!("SELECT {COLUMNS} FROM line {condition} ORDER BY place, device, number, hash");
    let mut statement = connection.prepare_cached(&sql).map_err(told)?;
    let mut rows = statement.query(given).map_err(told)?;
    let mut lines = Vec::new();
    while let Some(row) = rows.next().map_err(told)? {
        lines.push(line_of(row, notebook)?);
    }
    Ok(lines)
}

/// The columns of a line, in the order that [`line_of`] reads.
pub(super) const COLUMNS: &str = "device, number, hash, id, kind, thing, place, at, offset_minutes, version, entry, salt, entry_hash, previous";

pub(super) fn line_of(row: &Row<'_>, notebook: NotebookId) -> Result<Line, StoreError> {
    let damaged = |what: &str| StoreError::Damaged { what: what.to_string() };
    let kind: String = row.get(4).map_err(told)?;
    let hash = |column: usize| row.get::<_, [u8; 32]>(column).map(Hash::from_bytes).map_err(told);
    let entry: Option<String> = row.get(10).map_err(told)?;
    let salt: Option<[u8; 16]> = row.get(11).map_err(told)?;
    let kept = Kept {
        device: DeviceId::from_bits(bits(row, 0)?),
        number: whole(row, 1)?,
        hash: hash(2)?,
        id: LineId::from_bits(bits(row, 3)?),
        notebook,
        about: About {
            kind: Kind::from_word(&kind).ok_or_else(|| damaged("a line about nothing this program knows"))?,
            id: ThingId::from_bits(bits(row, 5)?),
        },
        order: whole(row, 6)?,
        at: At { utc_milliseconds: row.get(7).map_err(told)?, offset_minutes: row.get(8).map_err(told)? },
        version: row.get(9).map_err(told)?,
        written: entry.zip(salt).map(|(text, salt)| Written::new(text, salt)),
        written_hash: hash(12)?,
        previous: hash(13)?,
    };
    Line::kept(kept).ok_or_else(|| damaged("a line was changed after it was written"))
}

/// The bits of a name.
pub(super) fn bits(row: &Row<'_>, column: usize) -> Result<u128, StoreError> {
    row.get::<_, [u8; 16]>(column).map(u128::from_be_bytes).map_err(told)
}

/// A whole number from nought.
pub(super) fn whole(row: &Row<'_>, column: usize) -> Result<u64, StoreError> {
    up(row.get(column).map_err(told)?)
}

/// SQLite's numbers have a sign; ours here have none.
pub(super) fn up(number: i64) -> Result<u64, StoreError> {
    u64::try_from(number).map_err(|_| StoreError::Damaged { what: "a number below nothing".to_string() })
}

/// Every number that can be kept is far below the largest that SQLite has.
pub(super) fn down(number: u64) -> i64 {
    i64::try_from(number).unwrap_or(-1)
}
