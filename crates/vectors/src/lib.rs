//! One list of numbers over the public calculations of the pure crates, to compare machines digit by digit.
//!
//! The list is computed natively and in WebAssembly, and both must agree to the last bit (`cargo xtask wasm`). What a
//! laptop works out is then what a phone works out. The list is also kept as a snapshot, so that a machine without
//! WebAssembly is held to the same digits.
//!
//! These numbers say *the same*, not *right*: whether they are right is for the tests of each crate.
//!
//! To add a calculation, put it in the file or folder named after its crate (make one if there is none, and call it in
//! [`all`]), then `cargo xtask bless`. Choose inputs that are not round, so that every step has digits to lose.

mod calibration;
mod list;
mod mathematics;
mod pattern;
mod planning;
mod plumbing;
mod sheets;
mod sprayer;
mod units;
mod visit;
#[cfg(target_arch = "wasm32")]
mod wasm;

pub use list::{List, Number};

/// Every number, in an order that does not change.
#[must_use]
pub fn all() -> List {
    let mut list = List::default();
    mathematics::put(&mut list);
    units::put(&mut list);
    sprayer::put(&mut list);
    plumbing::put(&mut list);
    pattern::put(&mut list);
    calibration::put(&mut list);
    planning::put(&mut list);
    visit::put(&mut list);
    sheets::put(&mut list);
    list
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_number_is_a_number() {
        // An error becomes NaN, whose bits are nobody's to promise: mend the input.
        for number in all().numbers() {
            assert!(number.value.is_finite(), "{} is {}", number.name, number.value);
        }
    }

    #[test]
    fn every_name_stands_once() {
        let names: std::collections::BTreeSet<_> =
            all().numbers().iter().map(|number| &number.name).cloned().collect();
        assert_eq!(names.len(), all().numbers().len());
    }

    #[test]
    fn the_digits_are_those_of_every_other_machine() {
        // Sheets are compared with WebAssembly only: a word bettered would change their check sums here each time.
        let all = all();
        let kept = all.numbers().iter().filter(|number| !number.name.starts_with("sheet "));
        let lines: Vec<String> = kept.map(Number::to_string).collect();
        insta::assert_snapshot!(lines.join("\n"));
    }
}
