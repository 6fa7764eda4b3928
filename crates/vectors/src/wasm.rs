//! The two functions that the WebAssembly module shows to the outside.
//!
//! Numbers go out one at a time as their bits, so that nobody has to share memory.
#![allow(
    unsafe_code,
    reason = "an exported name must be kept as it is; the attribute for that is called unsafe, and nothing else here is"
)]

use std::sync::OnceLock;

static BITS: OnceLock<Vec<u64>> = OnceLock::new();

fn bits() -> &'static [u64] {
    BITS.get_or_init(|| crate::all().numbers().iter().map(|number| number.value.to_bits()).collect())
}

/// How many numbers there are.
#[unsafe(no_mangle)]
pub extern "C" fn number_count() -> u64 {
    bits().len() as u64
}

/// The bits of the number at an index; of zero where there is none.
#[unsafe(no_mangle)]
pub extern "C" fn number_bits(index: u64) -> u64 {
    usize::try_from(index).ok().and_then(|index| bits().get(index).copied()).unwrap_or(0)
}
