//! What the device is asked to do. Nothing here is done by the state itself.

use notebook::{Draft, Line, NotebookId, ThingId};
use words::{Language, Reader};

use crate::state::{SheetKind, Waits};

/// What the device is asked to do.
#[derive(Clone, Debug, PartialEq)]
pub enum Effect {
    /// Keep these lines, all or none; answer with `Kept` or `NotKept`.
    Append(Vec<Draft>),
    /// Take lines from elsewhere into the store; answer with `Arrived`.
    TakeIn(Vec<Line>),
    /// Keep another notebook here from now on, as a new device of it; nothing was written in the one that was here. Answer
    /// with `StoreOpened`.
    Adopt {
        /// The notebook.
        notebook: NotebookId,
        /// Its lines.
        lines: Vec<Line>,
    },
    /// Say aloud.
    Speak {
        /// What.
        text: String,
        /// In which language.
        language: Language,
    },
    /// A tone that beats engine noise.
    Sound(Sound),
    /// Flash the whole screen once.
    Flash,
    /// Keep the screen awake, or let it sleep again.
    KeepAwake(Waits),
    /// Send `Tick` some ten times a second, or stop.
    Ticks(Waits),
    /// Report the speed that the position sensor tells, or stop.
    SenseSpeed(Waits),
    /// Remember a small thing beside the notebook; empty forgets it. Nothing is lost where the device refuses.
    Remember {
        /// Its name.
        name: String,
        /// What.
        text: String,
    },
    /// Print a sheet of the open visit.
    Print(SheetKind),
    /// Hand a sheet of the open visit over as a file.
    ShareSheet(SheetKind),
    /// Hand a text over.
    ShareText(String),
    /// Hand a file over.
    ShareFile {
        /// Its name.
        name: String,
        /// Its media type.
        kind: &'static str,
        /// What is in it.
        content: String,
    },
    /// Write the whole notebook to a file and hand it over; answer with `CopyHanded`.
    CopyNotebook,
    /// Let the person choose a file for a second copy; answer with `CopyFileTold`.
    ChooseCopyFile,
    /// Write the second copy again, soon; answer with `CopyHanded`.
    WriteCopyFile,
    /// Ask the browser to promise to keep what is here; answer with `SafetyTold`.
    AskToKeep,
    /// Ask the device to install the app.
    Install,
    /// Exchange lines with the server at this address; answer with `Arrived` and `ServerTold`.
    Exchange,
    /// Change to the newer version.
    TakeNewerVersion,
    /// Fetch the words of another language for this reader; answer with `WordsHere` or `WordsNotHere`.
    FetchWords(Reader),
    /// The page speaks another language from now on.
    Language(Language),
    /// Bring the top of the screen, or a part of it by its id, into view and to the keyboard.
    Focus(String),
    /// The open visit changed in the address, so that a reload comes back to it.
    Address(Option<ThingId>),
}

/// A tone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sound {
    /// One of the counts before.
    Count,
    /// Hold the cup under now.
    Go,
    /// Take it away.
    Stop,
    /// A key was taken.
    Key,
}
