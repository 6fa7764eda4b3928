//! Whether a notebook is whole: what is missing, what was changed, which two lines claim one place.

use std::collections::BTreeMap;

use units::{Arg, Args, Coded};

use crate::book::{Notebook, is_withdrawal};
use crate::hash::Hash;
use crate::ids::{DeviceId, LineId};
use crate::line::Line;

/// Something that is not as it should be.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Damage {
    /// Lines of a device that are not here: lost, or not come yet.
    #[error("lines {first} to {last} of device {device} are not here")]
    Missing {
        /// The device.
        device: DeviceId,
        /// The first that is missing.
        first: u64,
        /// The last that is missing.
        last: u64,
    },
    /// Two lines claim one number of one device: a copy went on writing under the old name, or one is forged.
    #[error("two different lines claim number {number} of device {device}")]
    TwoInOnePlace {
        /// The device.
        device: DeviceId,
        /// The number.
        number: u64,
    },
    /// A line does not go on from the one before it: one of the two was changed or put in.
    #[error("line {number} of device {device} does not go on from the line before it")]
    BrokenChain {
        /// The device.
        device: DeviceId,
        /// The number of the line that does not fit.
        number: u64,
    },
    /// A line stands in the order before one that its device wrote earlier.
    #[error("line {number} of device {device} stands before the line that was written before it")]
    OutOfOrder {
        /// The device.
        device: DeviceId,
        /// Its number.
        number: u64,
    },
    /// A line without what was written, though nobody withdrew it.
    #[error("what was written in line {number} of device {device} is not here, and nobody withdrew it")]
    Emptied {
        /// The device.
        device: DeviceId,
        /// Its number.
        number: u64,
    },
    /// One name for two lines.
    #[error("two lines have the name {id}")]
    OneName {
        /// The name.
        id: LineId,
    },
}

impl Coded for Damage {
    fn code(&self) -> &'static str {
        match self {
            Self::Missing { .. } => "notebook_missing",
            Self::TwoInOnePlace { .. } => "notebook_two_in_one_place",
            Self::BrokenChain { .. } => "notebook_broken_chain",
            Self::OutOfOrder { .. } => "notebook_out_of_order",
            Self::Emptied { .. } => "notebook_emptied",
            Self::OneName { .. } => "notebook_one_name",
        }
    }

    fn args(&self) -> Args {
        let number = |number: &u64| Arg::Text(number.to_string());
        let of = |device: &DeviceId| Args::new().with("device", Arg::Text(device.to_string()));
        match self {
            Self::Missing { device, first, last } => {
                of(device).with("first", number(first)).with("last", number(last))
            }
            Self::TwoInOnePlace { device, number: at }
            | Self::BrokenChain { device, number: at }
            | Self::OutOfOrder { device, number: at }
            | Self::Emptied { device, number: at } => of(device).with("number", number(at)),
            Self::OneName { id } => Args::new().with("id", Arg::Text(id.to_string())),
        }
    }
}

/// Returns everything that is not as it should be; nothing where the notebook is whole.
///
/// *Assumptions*: lines that were changed were not taken in ([`Notebook::take`]); so a changed line shows here as missing.
/// A notebook cannot know that a device's last lines are missing; the other side's ranges tell that.
#[must_use]
pub fn verify(book: &Notebook) -> Vec<Damage> {
    let mut damage = Vec::new();
    for (device, gaps) in book.held().gaps().iter() {
        damage.extend(gaps.iter().map(|(first, last)| Damage::Missing {
            device,
            first: *first,
            last: *last,
        }));
    }
    let mut by_device: BTreeMap<DeviceId, Vec<&Line>> = BTreeMap::new();
    let mut names: BTreeMap<LineId, Hash> = BTreeMap::new();
    let withdrawn: Vec<_> = book.withdrawn().collect();
    for line in book.lines() {
        by_device.entry(line.device()).or_default().push(line);
        if names.insert(line.id(), line.hash()).is_some_and(|other| other != line.hash()) {
            damage.push(Damage::OneName { id: line.id() });
        }
        if line.written().is_none() && !is_withdrawal(line) && !withdrawn.contains(&line.about()) {
            damage.push(Damage::Emptied { device: line.device(), number: line.number() });
        }
    }
    for (device, mut lines) in by_device {
        lines.sort_by_key(|line| (line.number(), line.hash()));
        chain(device, &lines, &mut damage);
    }
    damage
}

fn chain(device: DeviceId, lines: &[&Line], damage: &mut Vec<Damage>) {
    if let Some(first) = lines.first().filter(|line| line.number() == 1 && line.previous() != Hash::NOTHING) {
        damage.push(Damage::BrokenChain { device, number: first.number() });
    }
    for (place, pair) in lines.windows(2).enumerate() {
        let (before, line) = (pair[0], pair[1]);
        let number = line.number();
        if before.number() == number {
            // Three claims are told once.
            if place == 0 || lines[place - 1].number() != number {
                damage.push(Damage::TwoInOnePlace { device, number });
            }
            continue;
        }
        if before.number() + 1 != number {
            continue;
        }
        let goes_on = lines[..=place]
            .iter()
            .rev()
            .take_while(|other| other.number() + 1 == number)
            .any(|other| other.hash() == line.previous());
        if !goes_on {
            damage.push(Damage::BrokenChain { device, number });
        }
        if line.order() <= before.order() {
            damage.push(Damage::OutOfOrder { device, number });
        }
    }
}
