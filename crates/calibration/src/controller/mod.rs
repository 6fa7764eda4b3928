//! The checker checked: what a controller shows against what cups, watch and tape say, and what closing a section does.
//!
//! | file | idea |
//! |---|---|
//! | `limits` | how far off it may be, with who says so |
//! | `shown` | a flow or speed that is shown against the true one, and what follows for its setting |
//! | `widths` | section widths as entered against tips times spacing |
//! | `closing` | closing each section and watching the pressure |
//! | `pulsing` | valves that pulse: no flow from cups unless they stay open |

mod closing;
pub mod limits;
mod pulsing;
mod shown;
mod widths;

pub use closing::{Closed, Closing, closing_findings};
pub use pulsing::{Pulsing, pulsing_finding};
pub use shown::{ShownCheck, ShownWhat};
pub use widths::widths_findings;
