//! The plumbing: from what holds the pressure to the pressure and flow at every tip.
//!
//! Inside a healthy section the pressure is flat; losses live in feeds, valves, strainers and check valves until tips are big
//! or hoses small. Pulsing valves, filling up and booms that flow round in circles on purpose are not modelled.

mod friction;
mod guess;
mod matrix;
mod network;
mod solve;
mod solved;
mod wall;
mod ways;

pub use friction::{Liquid, Loss, Pipe};
pub use network::{Network, NodeId, Outlet, OutletId, Supply};
pub use solve::PlumbingError;
pub use solved::Solved;
