//! A line as a row: its exact text, and beside it what it is found by. The keys are bytes, most significant first, so that they
//! sort as the numbers in them do, and no number has to pass through a fraction as JavaScript's do.

use js_sys::{Object, Reflect, Uint8Array};
use notebook::{About, DeviceId, Hash, Line, NotebookId, ThingId, line_text, read_line};
use wasm_bindgen::JsValue;
use web_sys::IdbKeyRange;

use super::told::{damaged, told};
use crate::StoreError;

/// The bytes of a line's key: 16 for the device, 8 for the number, 32 for the check sum.
const KEY_BYTES: usize = 16 + 8 + 32;
/// The bytes of a place: 8 for the order, then the key.
const PLACE_BYTES: usize = 8 + KEY_BYTES;

/// The key of a line: which device wrote it, as which number. Two that claim one number are parted by their check sums.
pub(super) type Key = [u8; KEY_BYTES];

/// The property that holds the text.
const TEXT: &str = "text";
/// The property that holds the place, by which lines stand in the order of the notebook.
pub(super) const PLACE: &str = "place";
/// The property that holds the thing and then the place.
pub(super) const ABOUT: &str = "about";

/// The key of a line.
pub(super) fn key(line: &Line) -> Key {
    let mut key = [0; KEY_BYTES];
    let parts = line.device().bits().to_be_bytes().into_iter();
    let parts = parts.chain(line.number().to_be_bytes()).chain(*line.hash().bytes());
    key.iter_mut().zip(parts).for_each(|(byte, part)| *byte = part);
    key
}

/// The device and the number in a key.
pub(super) fn device_and_number(key: &Key) -> (DeviceId, u64) {
    let (device, number) = (leading(key, 0), leading(key, 16));
    (DeviceId::from_bits(u128::from_be_bytes(device)), u64::from_be_bytes(number))
}

/// The check sum in a key.
pub(super) fn hash(key: &Key) -> Hash {
    Hash::from_bytes(leading(key, 16 + 8))
}

/// So many bytes from a place on.
fn leading<const BYTES: usize>(bytes: &[u8], from: usize) -> [u8; BYTES] {
    let mut part = [0; BYTES];
    part.iter_mut().zip(bytes.iter().skip(from)).for_each(|(byte, found)| *byte = *found);
    part
}

/// A key as the browser takes it.
pub(super) fn given(bytes: &[u8]) -> JsValue {
    Uint8Array::from(bytes).into()
}

/// A key that the browser gives.
pub(super) fn key_of(value: &JsValue) -> Result<Key, StoreError> {
    <Key>::try_from(Uint8Array::new(value).to_vec()).map_err(|_| damaged("a line under a name that is none"))
}

/// The order in a place that the browser gives.
pub(super) fn order_of(value: &JsValue) -> u64 {
    u64::from_be_bytes(leading(&Uint8Array::new(value).to_vec(), 0))
}

/// The keys of every line of a device.
pub(super) fn of_device(device: DeviceId) -> Result<IdbKeyRange, StoreError> {
    beginning(&device.bits().to_be_bytes(), KEY_BYTES)
}

/// The places of every line about a thing, of whatever kind it is said to be.
pub(super) fn of_thing(thing: ThingId) -> Result<IdbKeyRange, StoreError> {
    beginning(&thing.bits().to_be_bytes(), 16 + PLACE_BYTES)
}

/// All keys of a length that begin so.
fn beginning(bytes: &[u8], length: usize) -> Result<IdbKeyRange, StoreError> {
    let filled = |with: u8| {
        let mut whole = bytes.to_vec();
        whole.resize(length, with);
        given(&whole)
    };
    IdbKeyRange::bound(&filled(0), &filled(u8::MAX)).map_err(|error| told(&error))
}

/// The word under which it is kept that a thing was withdrawn.
pub(super) fn word(about: About) -> JsValue {
    format!("{} {}", about.kind.word(), about.id).into()
}

/// A line as a row.
pub(super) fn row(line: &Line) -> Result<JsValue, StoreError> {
    let mut place = line.order().to_be_bytes().to_vec();
    place.extend(key(line));
    let mut about = line.about().id.bits().to_be_bytes().to_vec();
    about.extend(&place);
    let row = Object::new();
    for (name, value) in [(TEXT, line_text(line).into()), (PLACE, given(&place)), (ABOUT, given(&about))] {
        Reflect::set(&row, &name.into(), &value).map_err(|error| told(&error))?;
    }
    Ok(row.into())
}

/// The line of a row. A row that does not make a whole line of this notebook is damage, never a guess.
pub(super) fn line_of(row: &JsValue, notebook: NotebookId) -> Result<Line, StoreError> {
    let text = Reflect::get(row, &TEXT.into()).map_err(|error| told(&error))?;
    line_of_text(&text, notebook)
}

/// The line of a text.
pub(super) fn line_of_text(text: &JsValue, notebook: NotebookId) -> Result<Line, StoreError> {
    let text = text.as_string().ok_or_else(|| damaged("a line that is no text"))?;
    let line = read_line(&text).map_err(|error| damaged(&error.to_string()))?;
    if line.is_whole() && line.notebook() == notebook {
        Ok(line)
    } else {
        Err(damaged("a line was changed after it was written"))
    }
}
