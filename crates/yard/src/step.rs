//! What an event makes of the state.

use notebook::{Entry, Told};

use crate::effect::Effect;
use crate::event::Event;
use crate::keeping::TYPED;
use crate::moment::{Chance, Moment};
use crate::state::{CopyFile, Keeping, Notice, Screen, State, Waits};
use crate::write::With;

/// What an event makes of the state, and what the device is then asked to do, in this order.
pub fn step(state: &mut State, event: Event, at: &Moment, mut chance: Chance) -> Vec<Effect> {
    let mut with = With { at, chance: &mut chance };
    let typed = state.typed_text();
    let mut effects = match event {
        Event::Tick => ticked(state, at),
        Event::SeenAgain => seen_again(state, at),
        Event::StoreOpened { .. }
        | Event::StoreRefused { .. }
        | Event::Kept(_)
        | Event::NotKept { .. }
        | Event::Arrived(_)
        | Event::Remembered(_)
        | Event::SafetyTold { .. }
        | Event::CanInstall
        | Event::ServerTold(_)
        | Event::CopyHanded
        | Event::CopyFileTold(_)
        | Event::NewerVersion
        | Event::WordsHere(_)
        | Event::WordsNotHere
        | Event::SpeedSensed { .. } => told_by_device(state, event, &mut with),
        event => done_by_person(state, event, &mut with),
    };
    let now_typed = state.typed_text();
    if now_typed != typed {
        effects.push(Effect::Remember { name: TYPED.to_string(), text: now_typed });
    }
    effects
}

fn ticked(state: &mut State, at: &Moment) -> Vec<Effect> {
    state.drive_tick(at);
    state.hands_free_tick(at)
}

/// What passed while nobody looked is told at once.
fn seen_again(state: &mut State, at: &Moment) -> Vec<Effect> {
    let mut effects = ticked(state, at);
    effects.extend(state.try_again());
    let runs = state.hands_free.as_ref().is_some_and(crate::HandsFree::runs)
        || matches!(state.drive.is, crate::Watch::Running { .. });
    if runs {
        // A screen that was hidden has let go of being kept awake.
        effects.push(Effect::KeepAwake(Waits::Yes));
    }
    effects
}

fn told_by_device(state: &mut State, event: Event, with: &mut With<'_>) -> Vec<Effect> {
    match event {
        Event::StoreOpened { notebook, device, lines } => {
            return state.store_opened(Keeping::Here { notebook, device }, lines);
        }
        Event::StoreRefused { why } => return state.store_refused(why, with),
        Event::Kept(lines) => {
            state.kept(lines);
            state.count_only_here();
            return second_copy(state);
        }
        Event::NotKept { why } => state.not_kept(why),
        Event::Arrived(lines) => {
            state.arrived(lines);
            return second_copy(state);
        }
        Event::CopyFileTold(copy_file) => {
            state.safety.copy_file = copy_file;
            return second_copy(state);
        }
        Event::Remembered(pairs) => return state.remembered(&pairs),
        Event::SafetyTold { promised, installed, clears_after_a_week } => {
            state.safety.promised = promised;
            state.safety.installed = installed;
            state.safety.clears_after_a_week = clears_after_a_week;
        }
        Event::CanInstall => state.safety.can_install = Waits::Yes,
        Event::ServerTold(server) => state.safety.server = server,
        Event::CopyHanded => return state.copy_handed(with.at),
        Event::NewerVersion => state.newer_version = Waits::Yes,
        Event::WordsHere(words) => return state.read_in(words),
        Event::WordsNotHere => state.words_not_here(),
        Event::SpeedSensed { metres_a_second, doubt } => {
            state.drive.sensed = Some((metres_a_second, doubt));
        }
        _ => {}
    }
    Vec::new()
}

/// What is new goes into the second copy too, where one keeps itself.
fn second_copy(state: &State) -> Vec<Effect> {
    let kept = state.safety.copy_file == CopyFile::Kept && matches!(state.keeping, Keeping::Here { .. });
    if kept { vec![Effect::WriteCopyFile] } else { Vec::new() }
}

fn done_by_person(state: &mut State, event: Event, with: &mut With<'_>) -> Vec<Effect> {
    match event {
        Event::Go(screen) => return state.go(screen, with),
        Event::Back => return state.back(with),
        Event::NoticeRead(index) => {
            if index < state.notices.len() {
                state.notices.remove(index);
            }
        }
        Event::Minutes(minutes) => state.plan.minutes = Some(minutes),
        Event::People(people) => state.plan.people = Some(people),
        Event::Begin { of, keep } => return state.begin(of, keep, with),
        Event::OpenVisit(id) => return state.open(id),
        Event::Unfold(step) => {
            if let Some(visit) = &mut state.visit {
                visit.unfolded = (visit.unfolded != Some(step)).then_some(step);
                return vec![Effect::Focus(format!("step-{}", step.word()))];
            }
        }
        Event::Typing { field, text } => state.typing(field, text),
        Event::Say { field, text } => return state.say(&field, &text, with),
        Event::AddProduct => return state.add_product(with),
        Event::AddTipPressure(tip) => return state.add_tip_pressure(tip, with),
        Event::AddClosed => return state.add_closed(with),
        Event::StrikeRow { list, row } => return state.strike_row(&list, row, with),
        Event::Choose { field, index } => return state.choose(&field, index, with),
        Event::Symptom(symptom) => return state.symptom(symptom, with),
        Event::Checked(check, outcome) => return state.checked(check, outcome, with),
        Event::LookAt(id) => return vec![Effect::Focus(id.to_string())],
        Event::MadeSafe(key) => {
            if let Some(visit) = &mut state.visit
                && !visit.made_safe.remove(key)
            {
                visit.made_safe.insert(key);
            }
        }
        Event::DriveTap => return state.drive_tap(with),
        Event::DriveAgain => return state.drive_again(with),
        Event::SenseSpeed(sensing) => {
            state.drive.sensing = sensing;
            state.drive.sensed = None;
            return vec![Effect::SenseSpeed(sensing)];
        }
        Event::RunTyped(text) => return state.run_typed(&text, with),
        event => return with_the_cups(state, event, with),
    }
    Vec::new()
}

fn with_the_cups(state: &mut State, event: Event, with: &mut With<'_>) -> Vec<Effect> {
    match event {
        Event::NewRound(after) => return state.new_round(&after, with),
        Event::Key(key) => return state.key(key, with),
        Event::Next => return entered(state, Waits::No, with),
        Event::Insist => return entered(state, Waits::Yes, with),
        Event::NotSo => {
            if let Some(catching) = &mut state.catching {
                catching.ask = None;
            }
        }
        Event::BackATip => state.back_a_tip(),
        Event::ToTip(tip) => state.to_tip(tip),
        Event::CatchAgain { tips, seconds } => return state.catch_again(tips, &seconds, with),
        Event::Repaired { after, tips } => return state.repaired(&after, tips, with),
        Event::OneMoreCup(more) => {
            if let Some(catching) = &mut state.catching {
                catching.one_more = more;
            }
        }
        Event::RowTyping(text) => state.row_typing(text),
        Event::RowMeant => return state.row_meant(with),
        Event::SetPace(pace) => state.set_pace(pace),
        Event::HandsFreeStart | Event::HandsFreeAgain => return state.hands_free_start(with),
        Event::HandsFreeStop => return state.hands_free_stop(with.at),
        event => return kept_and_handed(state, event, with),
    }
    Vec::new()
}

/// A cup is entered, and where the next tip waited for it, that one is called.
fn entered(state: &mut State, insisted: Waits, with: &mut With<'_>) -> Vec<Effect> {
    let tip = state.catching.as_ref().map(|catching| catching.tip);
    let mut effects = state.next(insisted, with);
    let asked = state.catching.as_ref().is_some_and(|catching| catching.ask.is_some());
    if let (Some(tip), false) = (tip, asked) {
        effects.extend(state.hands_free_go_on(tip, with.at));
    }
    effects
}

fn kept_and_handed(state: &mut State, event: Event, with: &mut With<'_>) -> Vec<Effect> {
    match event {
        Event::Print(kind) => vec![Effect::Print(kind)],
        Event::Share(kind) => vec![Effect::ShareSheet(kind)],
        Event::SendLines => vec![Effect::ShareText(state.four_lines())],
        Event::HandOverVisitFile => state.visit_file(),
        Event::CopyNow => vec![Effect::CopyNotebook],
        Event::ChooseCopyFile => vec![Effect::ChooseCopyFile],
        Event::FileChosen { name, bytes } => state.file_chosen(&name, &bytes, with),
        Event::AskToKeep => vec![Effect::AskToKeep],
        Event::Install => vec![Effect::Install],
        Event::Exchange => vec![Effect::Exchange],
        Event::Withdraw { reason } => {
            let effects = state.write(&[Told::from(Entry::Withdraw { reason })], with);
            state.notices.push(Notice { key: "yard-withdrawn", detail: None });
            state.visit = None;
            state.screen = Screen::Gate;
            state.refill_shelf();
            effects
        }
        Event::Read(reader) => state.read(reader),
        Event::TakeNewerVersion => vec![Effect::TakeNewerVersion],
        _ => Vec::new(),
    }
}
