//! Lines are exchanged with the server at this address, by itself and quietly: what it lacks is sent, what we lack is taken,
//! in parts. Any part may break off or come twice; the next exchange goes on from what is held then.

use core::time::Duration;
use std::cell::Cell;
use std::rc::Rc;

use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::set_timeout_with_handle;
use notebook::{Line, Ranges, line_text, read_line};
use serde_json::json;
use store::{IndexedStore, Store, StoreError};
use wasm_bindgen_futures::spawn_local;
use yard::{Event, ServerState};

use super::ask::{self, Asked, NoAnswer};
use super::{opening, other_windows};
use crate::app::App;

/// Between a line that is kept and the exchange. Our own choice: cups follow one another in seconds, and go together.
const QUIET: Duration = Duration::from_secs(4);
/// So many lines are read from the store at once. Our own choice: a part that a weak radio link carries in seconds.
const AT_ONCE: usize = 2_000;
/// So long is what is sent at once. Source: the server takes 8 MB; the last line may go over ours.
const MOST_BYTES: usize = 7 * 1024 * 1024;
/// Newline-delimited JSON, as the server names it.
const LINES: &str = "application/x-ndjson";

/// When an exchange is due.
#[derive(Clone, Default)]
pub struct Turn(Rc<Due>);

#[derive(Default)]
struct Due {
    soon: Cell<Option<TimeoutHandle>>,
    goes_on: Cell<bool>,
    once_more: Cell<bool>,
}

/// Why an exchange broke off.
enum BrokenOff {
    /// It is another notebook.
    Other,
    /// No answer, or none to work with; or nothing can be kept here. The next exchange tries again.
    NotNow,
}

/// What is here and not there, after an exchange.
enum Left {
    Nothing,
    Some,
}

impl From<NoAnswer> for BrokenOff {
    fn from(_: NoAnswer) -> Self {
        Self::NotNow
    }
}

impl From<StoreError> for BrokenOff {
    fn from(_: StoreError) -> Self {
        Self::NotNow
    }
}

impl Turn {
    /// An exchange in a while, when nothing else comes.
    pub fn soon(&self, app: App) {
        if !opening::has_signal() {
            return;
        }
        if let Some(before) = self.0.soon.take() {
            before.clear();
        }
        let turn = self.clone();
        self.0.soon.set(set_timeout_with_handle(move || turn.now(app), QUIET).ok());
    }

    /// An exchange at once; after the one that goes on, if one does.
    pub fn now(&self, app: App) {
        let Some(store) = app.device().store.store() else { return };
        if self.0.goes_on.replace(true) {
            self.0.once_more.set(true);
            return;
        }
        let turn = self.clone();
        spawn_local(async move {
            let exchanged = exchanged(app, &store).await;
            let whole = matches!(exchanged, Ok(Left::Nothing));
            app.send(Event::ServerTold(told(exchanged)));
            if whole {
                // All that is here is there as well: as good as a copy.
                app.send(Event::CopyHanded);
            }
            turn.0.goes_on.set(false);
            if turn.0.once_more.replace(false) {
                turn.soon(app);
            }
        });
    }
}

const fn told(exchanged: Result<Left, BrokenOff>) -> ServerState {
    match exchanged {
        Ok(_) => ServerState::SameNotebook,
        Err(BrokenOff::Other) => ServerState::OtherNotebook,
        Err(BrokenOff::NotNow) => ServerState::NotThere,
    }
}

async fn exchanged(app: App, store: &IndexedStore) -> Result<Left, BrokenOff> {
    let there = ask::notebook().await?;
    if there.notebook != store.notebook() {
        return Err(BrokenOff::Other);
    }
    let held_there = send(store, there.held).await?;
    take(app, store, &held_there).await?;
    // What was written meanwhile goes with the next one.
    let left = store.held().await?.without(&held_there);
    Ok(if left == Ranges::none() { Left::Nothing } else { Left::Some })
}

/// Sends what the other side lacks.
async fn send(store: &IndexedStore, mut held_there: Ranges) -> Result<Ranges, BrokenOff> {
    loop {
        let lines = store.lines_beyond(&held_there, AT_ONCE).await?;
        if lines.is_empty() {
            return Ok(held_there);
        }
        let mut body = String::new();
        for line in &lines {
            // What is sent is not sent again in this exchange, whether it is taken or not.
            held_there.add(line.device(), line.number());
            body.push_str(&line_text(line));
            body.push('\n');
            if body.len() >= MOST_BYTES {
                break;
            }
        }
        let answer = ask::part(Asked::Sent { to: "api/1/lines", kind: LINES, body: &body }).await?;
        let held = ask::ranges(ask::json(&answer)?.get("held").ok_or(NoAnswer::Strange)?)?;
        held_there = held_there.with(&held);
    }
}

/// Takes what is lacking here.
async fn take(app: App, store: &IndexedStore, held_there: &Ranges) -> Result<(), BrokenOff> {
    let mut held = store.held().await?;
    // Nothing is asked where nothing is lacking; what came to the other side meanwhile comes the next time.
    while held_there.without(&held) != Ranges::none() {
        let body = json!({ "held": ask::sent(&held) }).to_string();
        let asked = Asked::Sent { to: "api/1/lines/wanted", kind: "application/json", body: &body };
        let lines = lines_of(&ask::part(asked).await?);
        let before = held.clone();
        lines.iter().for_each(|line| held.add(line.device(), line.number()));
        // A side that sends nothing new is not asked for ever.
        if before == held {
            return Ok(());
        }
        let taken = store.take(lines.clone()).await?;
        if taken.new + taken.filled_in > 0 {
            let own = |line: &Line| line.is_whole() && line.notebook() == store.notebook();
            app.send(Event::Arrived(lines.into_iter().filter(own).collect()));
            other_windows::tell();
        }
    }
    Ok(())
}

/// The lines of an answer that are lines; of one that broke off, those that came whole.
fn lines_of(text: &str) -> Vec<Line> {
    text.lines().filter_map(|line| read_line(line).ok()).collect()
}
