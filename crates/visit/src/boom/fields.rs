//! The parts of a boom's file and the names that may stand in each.

/// Each part with its fields; the first has the names of the parts themselves.
pub const BOOM_PARTS: &[(&str, &[&str])] = &[
    ("", &["liquid", "supply", "section"]),
    ("liquid", &["density", "viscosity"]),
    (
        "supply",
        &["gauge_pressure", "total_flow", "pump", "hose_length", "hose_bore", "minor_loss", "roughness"],
    ),
    ("supply.pump", &["pressure_at_no_flow", "curve_point", "bypass", "bypass_opens_at", "agitation"]),
    (
        "section",
        &[
            "feed_length",
            "feed_bore",
            "feed_minor_loss",
            "hose_bore",
            "enters_between",
            "feeds_at",
            "tip_spacing",
            "body_bore",
            "body_length",
            "body_minor_loss",
            "check_valve_opens_at",
            "roughness",
            "height",
            "left_height",
            "right_height",
            "tip_heights",
            "tips",
        ],
    ),
];

/// The names in a part.
pub(super) fn names(path: &str) -> Option<Vec<&'static str>> {
    BOOM_PARTS.iter().find(|(name, _)| *name == path).map(|(_, names)| names.to_vec())
}
