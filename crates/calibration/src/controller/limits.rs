//! How far off a controller may be, as data, each limit with who says so.

/// A limit as a share, with its source; exactly on it is within.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ControllerLimit {
    /// The share: 0.05 is 5 %.
    pub share: f64,
    /// Who says so.
    pub source: &'static str,
}

/// A flow sensor more than 5 % off the true flow is a defect.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 5.5.2.2.
pub const FLOW_SENSOR: ControllerLimit = ControllerLimit {
    share: 0.05,
    source: "French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 5.5.2.2: more than 5 % from true flow",
};

/// A speed sensor more than 5 % off the true speed is a defect.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 5.5.1.2.
pub const SPEED_SENSOR: ControllerLimit = ControllerLimit {
    share: 0.05,
    source: "French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 5.5.1.2: more than 5 % from true speed",
};

/// Closing one section may raise the pressure of the others by at most 10 % of what it was.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 5.2.2.3.
pub const SECTION_CLOSED: ControllerLimit = ControllerLimit {
    share: 0.10,
    source: "French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 5.2.2.3: at most 10 % of the starting pressure",
};

/// The pressure may change by at most 10 % at a fixed setting.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 5.3.2.
pub const STABLE: ControllerLimit = ControllerLimit {
    share: 0.10,
    source: "French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 5.3.2: more than 10 % at fixed settings",
};

/// Widths as entered belong within 1 % of tips times spacing: they are counted, not measured. Our own choice.
pub const WIDTHS: ControllerLimit =
    ControllerLimit { share: 0.01, source: "our own limit: widths are counted, not measured" };
