//! No bytes make the reader panic, and what reads can always be worked out or is refused in words.

use proptest::prelude::*;
use units::UnitSystem;

proptest! {
    #[test]
    fn no_bytes_make_the_reader_panic(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        let _ = visit::file::read(&bytes);
    }

    #[test]
    fn a_demo_with_letters_changed_never_panics(place in 0..2000_usize, letter in any::<u8>(), cut in 0..2500_usize) {
        let mut bytes = include_bytes!("../../../demo/willow-bend.toml").to_vec();
        let length = bytes.len();
        bytes[place % length] = letter;
        bytes.truncate(cut.max(1));
        if let Ok(visit) = visit::file::read(&bytes) {
            let _ = visit::findings::findings(&visit, UnitSystem::Us);
        }
    }
}
