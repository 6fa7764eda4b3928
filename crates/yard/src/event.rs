//! What can happen: what a person does, and what a device reports.

use std::rc::Rc;

use calibration::symptoms::{Check, Outcome, Symptom};
use notebook::{DeviceId, Line, NotebookId, RowId, ThingId};
use words::{Reader, Words};

use crate::hands_free::Pace;
use crate::state::{CopyFile, Promise, Screen, ServerState, SheetKind, Waits};

/// What can happen.
#[derive(Clone, Debug)]
pub enum Event {
    // --- what a device reports -------------------------------------------------------------
    /// The store is open, with all its lines.
    StoreOpened {
        /// The notebook.
        notebook: NotebookId,
        /// This device.
        device: DeviceId,
        /// Every line, in the order of the notebook.
        lines: Vec<Line>,
    },
    /// The device keeps nothing.
    StoreRefused {
        /// Why, as the device says it.
        why: String,
    },
    /// Lines handed to the store are kept.
    Kept(Vec<Line>),
    /// Lines handed to the store were not kept: they stay on the way and are tried again.
    NotKept {
        /// Why, as the store says it.
        why: String,
    },
    /// Lines of another window of this app, or of another device.
    Arrived(Vec<Line>),
    /// What is remembered beside the notebook: settings, the visit that was open, what was being typed.
    Remembered(Vec<(String, String)>),
    /// How safe what is kept is.
    SafetyTold {
        /// What the browser promised.
        promised: Promise,
        /// Whether the app stands on the home screen.
        installed: Waits,
        /// Whether this browser clears what was not visited for a week.
        clears_after_a_week: Waits,
    },
    /// The device offers to install the app.
    CanInstall,
    /// What became of the exchange with the server.
    ServerTold(ServerState),
    /// A copy was handed to the device as a file, or written to the one that keeps itself.
    CopyHanded,
    /// What became of the file that a second copy is kept in.
    CopyFileTold(CopyFile),
    /// A newer version of the app waits.
    NewerVersion,
    /// A clock tick, some ten a second while a watch runs.
    Tick,
    /// The words that were asked for with `Effect::FetchWords`, for the reader who asked.
    WordsHere(Rc<Words>),
    /// They could not be fetched: nothing changes, and it is said.
    WordsNotHere,
    /// The page is seen again after it was hidden.
    SeenAgain,
    /// The position sensor says how fast it moves.
    SpeedSensed {
        /// Metres a second.
        metres_a_second: f64,
        /// How far that may be off, metres a second; none where the device does not say.
        doubt: Option<f64>,
    },

    // --- moving about ----------------------------------------------------------------------
    /// To a screen.
    Go(Screen),
    /// To the screen above.
    Back,
    /// A notice is waved off.
    NoticeRead(usize),
    /// How many minutes there are.
    Minutes(u32),
    /// How many hands: 1, 2, or more people.
    People(u32),
    /// A new visit: of a known sprayer, or of a new one.
    Begin {
        /// The known sprayer.
        of: Option<ThingId>,
        /// Whether it is kept.
        keep: Keep,
    },
    /// A visit that is here is opened.
    OpenVisit(ThingId),
    /// A step is opened or folded.
    Unfold(crate::plan::Step),

    // --- facts -----------------------------------------------------------------------------
    /// Letters are typed into a field, not yet meant.
    Typing {
        /// The field, as `drive.course`; of a row, as `product.<row>.name`.
        field: String,
        /// The letters.
        text: String,
    },
    /// What stands in a field is meant: it becomes a fact, or the field says why not and keeps the letters.
    Say {
        /// The field.
        field: String,
        /// The letters; empty takes the fact back.
        text: String,
    },
    /// A product more.
    AddProduct,
    /// A pressure is read at a tip; what it is, is said in its row.
    AddTipPressure(u32),
    /// One more section closed in turn.
    AddClosed,
    /// A row is struck: a run, a product, a round.
    StrikeRow {
        /// The list.
        list: String,
        /// The row.
        row: RowId,
    },
    /// Of two values for one fact this one holds; the others are struck.
    Choose {
        /// The field.
        field: String,
        /// The place in the list of values.
        index: usize,
    },
    /// A symptom is seen, or no longer.
    Symptom(Symptom),
    /// A check is answered; or its answer is taken back.
    Checked(Check, Option<Outcome>),
    /// A part of the screen comes into view, by its id.
    LookAt(&'static str),
    /// A caution was seen to, by its key.
    MadeSafe(&'static str),

    // --- the timed drive ---------------------------------------------------------------------
    /// The watch starts, stops, or starts the next run.
    DriveTap,
    /// The time just stopped is thrown away, not kept.
    DriveAgain,
    /// The position sensor is asked for or let go.
    SenseSpeed(Waits),
    /// A run is typed: its time in seconds, as written.
    RunTyped(String),

    // --- the cups ------------------------------------------------------------------------------
    /// A new round begins, after something was done; the words of the visit file: as found, after cleaning, new tips.
    NewRound(String),
    /// A key of the pad.
    Key(crate::pad::Key),
    /// The cup is right: keep it, and on to the next tip.
    Next,
    /// Back to the tip before.
    BackATip,
    /// To a tip.
    ToTip(u32),
    /// To the tips that a finding asks for, one after the other.
    CatchAgain {
        /// The tips.
        tips: Vec<u32>,
        /// How long, in seconds as written; the round's time where it is empty.
        seconds: String,
    },
    /// Something was done at tips: they are caught again in a round of their own, and what they gave before stays beside it.
    Repaired {
        /// What was done, as the visit file words it.
        after: String,
        /// The tips.
        tips: Vec<u32>,
    },
    /// What is typed stands beside the reading that is there, instead of correcting it; or the other way round.
    OneMoreCup(Waits),
    /// The doubtful reading is right.
    Insist,
    /// The doubtful reading is wrong; it stays in the pad to be put right.
    NotSo,
    /// The row is typed or pasted, not yet meant.
    RowTyping(String),
    /// The row is meant.
    RowMeant,

    // --- catching without touching -------------------------------------------------------------
    /// How it goes: seconds, cups at once, the pause between.
    SetPace(Pace),
    /// The first tip is called.
    HandsFreeStart,
    /// Everything stops; what was caught so far stays.
    HandsFreeStop,
    /// The tip that was running is called once more.
    HandsFreeAgain,

    // --- what was found --------------------------------------------------------------------------
    /// A sheet is printed.
    Print(SheetKind),
    /// A sheet is handed over as a file.
    Share(SheetKind),
    /// Four lines are handed over as text.
    SendLines,
    /// The visit file is handed over.
    HandOverVisitFile,

    // --- keeping -----------------------------------------------------------------------------------
    /// A copy of the notebook is handed over as a file.
    CopyNow,
    /// A file is to be chosen for a second copy that keeps itself.
    ChooseCopyFile,
    /// A file was chosen: a notebook's copy or a visit file.
    FileChosen {
        /// Its name.
        name: String,
        /// What is in it.
        bytes: Vec<u8>,
    },
    /// The browser is asked to keep what is here.
    AskToKeep,
    /// The device is asked to install the app.
    Install,
    /// Lines are exchanged with the server at this address.
    Exchange,
    /// The owner withdraws the open visit.
    Withdraw {
        /// Why, where the owner says so.
        reason: String,
    },
    /// Who reads.
    Read(Reader),
    /// The newer version is wanted now.
    TakeNewerVersion,
}

/// Whether a visit is kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keep {
    /// Every reading is kept as it is entered.
    Kept,
    /// Just looking: nothing is kept.
    JustLooking,
}
