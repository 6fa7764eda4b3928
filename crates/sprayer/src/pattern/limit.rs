//! How even a pattern is asked to be, and what standing still leaves out.

/// Limits of a pattern, as data with who sets them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PatternLimit {
    /// The most its grooves may spread: standard deviation over mean, as a share.
    pub spread: f64,
    /// The most any groove may be off the mean, either way, as a share.
    pub groove: f64,
    /// Who sets it. Our figures use it; they were not taken on a table and comply with nothing.
    pub source: &'static str,
}

/// The usual limits. Source: ISO 16122-2 and EN 13790-1, both from memory; grooves of 100 mm on the fully overlapped part.
pub const PATTERN_LIMIT: PatternLimit = PatternLimit {
    spread: 0.10,
    groove: 0.20,
    source: "uses limits from ISO 16122-2 and EN 13790-1 (10 % spread, each groove within 20 %), from memory",
};

/// What the boom's swinging fore and aft adds in the field, in percent of spread: nothing that stands still can see it.
/// Source: Ooms et al., Crop Protection 22 (2003) 813-820.
pub const MOVEMENT_ADDS: (f64, f64) = (3.5, 5.2);

/// Where that is from.
pub const MOVEMENT_SOURCE: &str = "Ooms et al., Crop Protection 22 (2003) 813-820";
