//! Records of the tables, found by their shape.
//!
//! *Source*: SQLite, "Database File Format", section 2.1 (record format).

use notebook::{About, At, DeviceId, Hash, Kept, Kind, Line, LineId, NotebookId, ThingId, Written};

/// The columns of a line.
const COLUMNS: usize = 14;
/// The types of 16 and of 32 bytes, and the first of texts: twice the length and 12, and 13 (section 2.1).
const BYTES_16: u64 = 12 + 2 * 16;
const BYTES_32: u64 = 12 + 2 * 32;
const TEXT: u64 = 13;
/// What stands before the notebook's name among the tables' own descriptions.
const NAMED: &[u8] = b"(notebook = x'";

/// The shape of a record that may be a line.
pub(super) struct Shape {
    head: usize,
    /// How long each column is.
    lengths: [usize; COLUMNS],
    types: [u64; COLUMNS],
    /// How long the record is with its head.
    pub(super) bytes: usize,
}

/// The shape, where a line may begin here.
pub(super) fn line_shape(bytes: &[u8]) -> Option<Shape> {
    // The device, a number of one byte's type, the check sum and the name: looked at first, since nearly no place has them.
    let &[head, device, _, hash, id, ..] = bytes else { return None };
    if (u64::from(device), u64::from(hash), u64::from(id)) != (BYTES_16, BYTES_32, BYTES_16) {
        return None;
    }
    let head = usize::from(head);
    let mut at = 1;
    let (mut lengths, mut types) = ([0; COLUMNS], [0; COLUMNS]);
    for (length, kind) in lengths.iter_mut().zip(&mut types) {
        let (found, took) = varint(bytes.get(at..)?)?;
        at += took;
        (*kind, *length) = (found, length_of(found)?);
    }
    let whole = |place: usize| (1..=9).contains(&types[place]) && types[place] != 7;
    let text = |place: usize| types[place] >= TEXT && types[place] % 2 == 1;
    let nothing = |place: usize| types[place] == 0;
    let fits = at == head
        && [1, 6, 7, 8, 9].into_iter().all(whole)
        && text(4)
        && types[5] == BYTES_16
        && [12, 13].into_iter().all(|place| types[place] == BYTES_32)
        && ((text(10) && types[11] == BYTES_16) || (nothing(10) && nothing(11)));
    let sum = lengths.iter().try_fold(head, |sum, length| sum.checked_add(*length))?;
    fits.then_some(Shape { head, lengths, types, bytes: sum })
}

/// A line as it was found, before anything says that it is whole.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Loose {
    device: DeviceId,
    number: u64,
    hash: Hash,
    id: LineId,
    about: About,
    order: u64,
    at: At,
    version: u32,
    written: Option<Written>,
    written_hash: Hash,
    previous: Hash,
}

impl Loose {
    /// Reads a record of a shape.
    pub(super) fn read(shape: &Shape, record: &[u8]) -> Option<Self> {
        let mut columns = [&record[..0]; COLUMNS];
        let mut from = shape.head;
        for (column, length) in columns.iter_mut().zip(shape.lengths) {
            *column = record.get(from..from.checked_add(length)?)?;
            from += length;
        }
        let integer = |place: usize| integer(shape.types[place], columns[place]);
        let name = |place: usize| Some(u128::from_be_bytes(columns[place].try_into().ok()?));
        let hash = |place: usize| Some(Hash::from_bytes(columns[place].try_into().ok()?));
        let text = |place: usize| core::str::from_utf8(columns[place]).ok();
        let written = match shape.types[10] {
            0 => None,
            _ => Some(Written::new(text(10)?.to_string(), columns[11].try_into().ok()?)),
        };
        Some(Self {
            device: DeviceId::from_bits(name(0)?),
            number: u64::try_from(integer(1)).ok()?,
            hash: hash(2)?,
            id: LineId::from_bits(name(3)?),
            about: About { kind: Kind::from_word(text(4)?)?, id: ThingId::from_bits(name(5)?) },
            order: u64::try_from(integer(6)).ok()?,
            at: At { utc_milliseconds: integer(7), offset_minutes: integer(8).try_into().ok()? },
            version: integer(9).try_into().ok()?,
            written,
            written_hash: hash(12)?,
            previous: hash(13)?,
        })
    }

    /// The line, where it is whole as one of this notebook.
    pub(super) fn sealed(&self, notebook: NotebookId) -> Option<Line> {
        let Self { device, number, hash, id, about, order, at, version, written, written_hash, previous } =
            self.clone();
        Line::kept(Kept {
            id,
            notebook,
            about,
            device,
            number,
            order,
            at,
            version,
            written,
            written_hash,
            previous,
            hash,
        })
    }
}

/// The thing that a record here says to be withdrawn.
pub(super) fn withdrawn(bytes: &[u8]) -> Option<About> {
    let &[3, kind, thing, ..] = bytes else { return None };
    let kind = u64::from(kind);
    if u64::from(thing) != BYTES_16 || kind < TEXT || kind.is_multiple_of(2) {
        return None;
    }
    let (word, rest) = bytes.get(3..)?.split_at_checked(length_of(kind)?)?;
    let kind = Kind::from_word(core::str::from_utf8(word).ok()?)?;
    let id = u128::from_be_bytes(*rest.first_chunk()?);
    Some(About { kind, id: ThingId::from_bits(id) })
}

/// Whatever may be the notebook's name: it stands in a table of its own and among the descriptions of the tables.
pub(super) fn names(bytes: &[u8]) -> Vec<NotebookId> {
    let in_table = bytes.windows(3 + 16).filter_map(|found| match found {
        [3, notebook, device, name @ ..] if [*notebook, *device].map(u64::from) == [BYTES_16; 2] => {
            Some(u128::from_be_bytes(name.try_into().ok()?))
        }
        _ => None,
    });
    let digits = NAMED.len() + 32;
    let described = bytes.windows(digits).filter_map(|found| {
        let name = found.strip_prefix(NAMED)?;
        u128::from_str_radix(core::str::from_utf8(name).ok()?, 16).ok()
    });
    in_table.chain(described).map(NotebookId::from_bits).collect()
}

/// How long a column of a type is (section 2.1).
fn length_of(kind: u64) -> Option<usize> {
    match kind {
        0 | 8 | 9 => Some(0),
        1..=4 => usize::try_from(kind).ok(),
        5 => Some(6),
        6 | 7 => Some(8),
        10 | 11 => None,
        _ => usize::try_from((kind - 12) / 2).ok(),
    }
}

/// A whole number of a type (section 2.1): nought and one are types of their own, others have their sign in the first bit.
fn integer(kind: u64, bytes: &[u8]) -> i64 {
    if kind == 9 {
        return 1;
    }
    let sign = if bytes.first().is_some_and(|first| first.leading_ones() > 0) { -1 } else { 0 };
    bytes.iter().fold(sign, |number: i64, byte| number << 8 | i64::from(*byte))
}

/// A number of one to nine bytes and how many it takes (section 1.6): seven bits of each, and all of the ninth.
fn varint(bytes: &[u8]) -> Option<(u64, usize)> {
    let mut number = 0;
    for (place, byte) in bytes.iter().take(9).enumerate() {
        if place == 8 {
            return Some((number << 8 | u64::from(*byte), 9));
        }
        number = number << 7 | u64::from(byte & 0x7f);
        if byte & 0x80 == 0 {
            return Some((number, place + 1));
        }
    }
    None
}
