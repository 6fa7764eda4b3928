//! Where each crate stands in the house.
//!
//! A crate may use workspace crates on lower floors only; crates on one floor do not know each other. The pure ones
//! touch no clock, file, network, environment or source of chance, and give the same digits on every machine.
//! ARCHITECTURE.md draws the house; `tidy` holds the code to this table.

/// The file to open when a crate is missing here, for messages.
pub const FILE: &str = "xtask/src/floors.rs";

/// One crate's place.
pub struct Place {
    pub name: &'static str,
    pub floor: u8,
    pub purity: Purity,
}

/// Whether a crate may reach out of itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Purity {
    /// Held to `xtask/pure-clippy.toml`.
    Pure,
    /// May read files, clocks and the rest.
    Worldly,
}

/// The whole house, crates still to be built included.
pub const PLACES: &[Place] = &[
    pure(0, "units"),
    pure(1, "sprayer"),
    pure(2, "calibration"),
    pure(2, "planning"),
    pure(2, "field"),
    pure(2, "simulator"),
    pure(3, "visit"),
    pure(4, "notebook"),
    pure(5, "words"),
    pure(5, "figures"),
    worldly(5, "store"),
    pure(6, "report"),
    worldly(7, "report-pdf"),
    worldly(7, "server"),
    pure(7, "yard"),
    worldly(8, "web"),
    worldly(8, "cli"),
    // Tools: they look at the house from outside, so they stand on top.
    worldly(8, "accuracy"),
    worldly(8, "store-page"),
    worldly(8, "vectors"),
    worldly(8, "xtask"),
];

/// The place of a crate, if it has one.
pub fn place(name: &str) -> Option<&'static Place> {
    PLACES.iter().find(|place| place.name == name)
}

/// Whether the table calls this crate pure.
pub fn is_pure(name: &str) -> bool {
    place(name).is_some_and(|place| place.purity == Purity::Pure)
}

const fn pure(floor: u8, name: &'static str) -> Place {
    Place { name, floor, purity: Purity::Pure }
}

const fn worldly(floor: u8, name: &'static str) -> Place {
    Place { name, floor, purity: Purity::Worldly }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_crate_has_one_place() {
        for place in PLACES {
            let same = PLACES.iter().filter(|other| other.name == place.name);
            assert_eq!(same.count(), 1, "{}", place.name);
        }
    }
}
