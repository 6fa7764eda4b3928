//! All that the app knows at one moment.

use std::collections::BTreeMap;
use std::rc::Rc;

use notebook::{DeviceId, Draft, Line, NotebookId, ThingId};
use words::{Reader, Words};

use crate::catching::Catching;
use crate::drive::DriveWatch;
use crate::hands_free::HandsFree;
use crate::opened::Opened;
use crate::plan::Plan;
use crate::shelf::Shelf;

/// All that the app knows at one moment. [`crate::step`] makes the next of it.
#[derive(Clone, Debug)]
pub struct State {
    /// Who reads: four settings that do not depend on one another.
    pub reader: Reader,
    /// The sentences for that reader.
    pub words: Rc<Words>,
    /// Where lines go.
    pub keeping: Keeping,
    /// How safe what is kept here is, as far as the device tells.
    pub safety: Safety,
    /// Every line that is here, by the thing it is about.
    pub lines: BTreeMap<ThingId, Vec<Line>>,
    /// Lines on their way to the store: shown already, not yet kept. Each bunch is kept whole or not at all.
    pub on_the_way: Vec<Draft>,
    /// Of these, what the store refused; it is tried again with the next line, and when the page is seen again.
    pub to_try_again: Vec<Draft>,
    /// The sprayers and visits that are here.
    pub shelf: Shelf,
    /// What is on the screen.
    pub screen: Screen,
    /// How many minutes and hands there are today.
    pub plan: Plan,
    /// The visit that is open.
    pub visit: Option<Opened>,
    /// The cup that is being entered.
    pub catching: Option<Catching>,
    /// Catching by voice and flash.
    pub hands_free: Option<HandsFree>,
    /// The watch of the timed drive.
    pub drive: DriveWatch,
    /// What is to be said at the top of the screen until it is waved off.
    pub notices: Vec<Notice>,
    /// A newer version of the app waits for a tap.
    pub newer_version: Waits,
}

/// Where lines go.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Keeping {
    /// The store is being opened.
    Opening,
    /// Kept in the store of this device.
    Here {
        /// The notebook.
        notebook: NotebookId,
        /// This device.
        device: DeviceId,
    },
    /// The device keeps nothing: all is lost when the page is closed. Said on every screen.
    Nowhere {
        /// Why, as the device says it.
        why: String,
        /// The notebook as if it were kept.
        notebook: NotebookId,
        /// The device as if it were kept.
        device: DeviceId,
    },
}

/// How safe the notebook on this device is.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Safety {
    /// Whether the browser promised not to clear it.
    pub promised: Promise,
    /// Whether the app stands on the home screen.
    pub installed: Waits,
    /// Whether this kind of browser clears what was not visited for seven days.
    pub clears_after_a_week: Waits,
    /// Lines that are nowhere but here: written since the last copy or exchange.
    pub only_here: usize,
    /// When the last copy or exchange was, by this device's clock, in milliseconds since 1970.
    pub last_copy: Option<i64>,
    /// Whether the device can install the app at a tap.
    pub can_install: Waits,
    /// Whether a server at this address keeps the same notebook.
    pub server: ServerState,
    /// A second copy in a file that keeps itself.
    pub copy_file: CopyFile,
}

/// A second copy in a file of the person's choosing, written again by itself whenever something new is kept.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum CopyFile {
    /// This browser cannot write to a file by itself.
    #[default]
    CannotBe,
    /// It can, and none was chosen.
    NotChosen,
    /// One was chosen, and the browser wants to be asked again.
    Asks,
    /// It is kept.
    Kept,
}

/// What the server at this address is to this notebook.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum ServerState {
    /// There is none, or no signal.
    #[default]
    NotThere,
    /// It keeps this notebook; what is here is there, up to the last exchange.
    SameNotebook,
    /// It keeps another notebook; nothing is exchanged.
    OtherNotebook,
}

/// What the browser promised.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Promise {
    /// Not asked yet, or it does not say.
    #[default]
    Unknown,
    /// It may clear what is kept when room is short.
    MayClear,
    /// It will not clear it by itself.
    Keeps,
}

/// Yes or no, for what is waiting, there, or so.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Waits {
    /// No.
    #[default]
    No,
    /// Yes.
    Yes,
}

impl Waits {
    /// Yes where it holds.
    #[must_use]
    pub const fn when(holds: bool) -> Self {
        if holds { Self::Yes } else { Self::No }
    }

    /// Whether it is so.
    #[must_use]
    pub const fn is_yes(self) -> bool {
        matches!(self, Self::Yes)
    }
}

/// What is on the screen.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Screen {
    /// Minutes and hands, the sprayers known here, visits not finished.
    #[default]
    Gate,
    /// The sheet of the open visit, in yard order.
    Visit,
    /// One large cup at a time.
    Cup,
    /// A whole row typed or pasted from paper.
    CupRow,
    /// Spoken tip numbers, ready, catch, stop.
    HandsFree,
    /// The watch of the timed drive; the whole screen starts and stops it.
    DriveWatch,
    /// What is seen beside the readings, and one check at a time.
    Symptoms,
    /// How a number came about.
    Why(WhyOf),
    /// A sheet to hand over.
    Sheet(SheetKind),
    /// Earlier visits of this sprayer beside today's.
    LastTime,
    /// Language, numbers, units, paper.
    Settings,
    /// Where the notebook is kept, how safe that is, copies.
    Keeping,
}

/// Which number is asked about.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhyOf {
    /// The finding at this place in [`visit::findings::Outcome::all`], by its code and the tip it is about.
    Finding {
        /// Its code.
        code: String,
        /// The place in the list.
        index: usize,
    },
    /// What the sprayer puts out.
    Rate,
    /// What goes in the tank.
    Tank,
    /// The speed.
    Speed,
    /// The cups: mean, limit, each tip.
    Cups,
}

/// A sheet to hand over.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SheetKind {
    /// The visit.
    Visit,
    /// The card for the cab.
    Cab,
    /// The row of cups, large.
    Cups,
    /// Tags to tie to tips.
    Tags,
    /// The sheet to fill in by hand.
    Paper,
    /// What to bring and do before.
    Before,
}

/// Something said at the top of the screen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notice {
    /// A key of the words.
    pub key: &'static str,
    /// What it says beside, as a device or person wrote it.
    pub detail: Option<String>,
}

impl State {
    /// The state in which the app opens, read in these words.
    #[must_use]
    pub fn new(words: Words) -> Self {
        Self {
            reader: words.reader(),
            words: Rc::new(words),
            keeping: Keeping::Opening,
            safety: Safety::default(),
            lines: BTreeMap::new(),
            on_the_way: Vec::new(),
            to_try_again: Vec::new(),
            shelf: Shelf::default(),
            screen: Screen::default(),
            plan: Plan::default(),
            visit: None,
            catching: None,
            hands_free: None,
            drive: DriveWatch::default(),
            notices: Vec::new(),
            newer_version: Waits::No,
        }
    }
}
