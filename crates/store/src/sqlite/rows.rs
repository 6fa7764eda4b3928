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
        let mut others = select(transaction, "WHERE thing = ?1", [&thing[..]], |_| true, usize::MAX)?;
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

/// The lines of a condition in the order of the notebook, of those that are wanted at most so many.
pub(super) fn select(
    connection: &Connection,
    condition: &str,
    given: impl Params,
    wanted: impl Fn(&Line) -> bool,
    most: usize,
) -> Result<Vec<Line>, StoreError> {
    let notebook: Vec<u8> =
        connection.query_row("SELECT notebook FROM book", [], |row| row.get(0)).map_err(told)?;
    let notebook = <[u8; 16]>::try_from(notebook)
        .map_err(|_| StoreError::Damaged { what: "its names cannot be read".to_string() })?;
    let notebook = NotebookId::from_bits(u128::from_be_bytes(notebook));
    let sql = format!("SELECT {COLUMNS} FROM line {condition} ORDER BY place, device, number, hash");
    let mut statement = connection.prepare_cached(&sql).map_err(told)?;
    let mut rows = statement.query(given).map_err(told)?;
    let mut lines = Vec::new();
    while lines.len() < most {
        let Some(row) = rows.next().map_err(told)? else { break };
        let line = line_of(row, notebook)?;
        if wanted(&line) {
            lines.push(line);
        }
    }
    Ok(lines)
}

/// Every line that can be read out of a file that may be damaged: a row that cannot is passed over, and what stands behind a
/// page that cannot is asked for device by device.
pub(crate) fn readable_lines(connection: &Connection) -> Result<Vec<Line>, StoreError> {
    let notebook: [u8; 16] =
        connection.query_row("SELECT notebook FROM book", [], |row| row.get(0)).map_err(told)?;
    let notebook = NotebookId::from_bits(u128::from_be_bytes(notebook));
    let mut lines = std::collections::BTreeMap::new();
    // Once along each of the three trees that hold lines, from both ends: a broken page stops each at another place.
    for order in [
        "device, number",
        "device DESC, number DESC",
        "place",
        "place DESC",
        "thing, place",
        "thing DESC, place DESC",
    ] {
        let sql = format!("SELECT {COLUMNS} FROM line ORDER BY {order}");
        let Ok(mut statement) = connection.prepare(&sql) else { continue };
        let Ok(mut rows) = statement.query([]) else { continue };
        while let Ok(Some(row)) = rows.next() {
            if let Ok(line) = line_of(row, notebook) {
                lines.insert((line.device(), line.number(), line.hash()), line);
            }
        }
    }
    Ok(lines.into_values().collect())
}

/// The columns of a line, in the order that [`line_of`] reads.
const COLUMNS: &str = "device, number, hash, id, kind, thing, place, at, offset_minutes, version, entry, salt, entry_hash, previous";

fn line_of(row: &Row<'_>, notebook: NotebookId) -> Result<Line, StoreError> {
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

/// No notebook comes near the largest number SQLite has; one that does is refused by the table.
fn down(number: u64) -> i64 {
    i64::try_from(number).unwrap_or(-1)
}
