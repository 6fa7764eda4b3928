//! A whole row typed or pasted from paper. The letters stay as they are typed; what is wrong is said and selected.

use leptos::html::Textarea;
use leptos::prelude::*;
use yard::{Event, row_parts};

use crate::app::app;

/// The screen of the row.
#[component]
pub fn CupRow() -> impl IntoView {
    let app = app();
    let field = NodeRef::<Textarea>::new();
    // What stood there when the screen came on; from then on the field holds its letters itself.
    let begun =
        app.look(|state| state.catching.as_ref().map(|catching| catching.row.clone()).unwrap_or_default());
    let wrong = app.memo(|state| state.catching.as_ref().and_then(|catching| catching.row_wrong.clone()));
    let how = app.memo(|state| {
        let tips = state.catching.as_ref().map(|catching| catching.tips.as_slice()).unwrap_or_default();
        let unit = state.visit.as_ref().map(|visit| visit.sides().given).unwrap_or_default();
        let unit = units::Unit::named(unit).map(|unit| state.words.unit(&unit)).unwrap_or_default();
        state.words.say("yard-row_how", &[("tips", state.words.tips(tips).into()), ("unit", unit.into())])
    });
    let so_far = app.memo(|state| {
        let (given, tips) = state
            .catching
            .as_ref()
            .map_or((0, 0), |catching| (row_parts(&catching.row).len(), catching.tips.len()));
        let count = |number: usize| i64::try_from(number).unwrap_or(i64::MAX);
        state.words.say("yard-row_so_far", &[("given", count(given).into()), ("tips", count(tips).into())])
    });
    Effect::new(move |_| {
        let place = wrong.with(|wrong| wrong.as_ref().and_then(|wrong| wrong.place));
        if let (Some(place), Some(field)) = (place, field.get()) {
            select(&field, place);
        }
    });
    view! {
        <div class="row-head">
            <button on:click=move |_| app.send(Event::Back)>{app.label("yard-to_sheet").said()}</button>
            <h1>{app.label("yard-row_title").said()}</h1>
        </div>
        <label for="row">{how.said()}</label>
        <textarea
            id="row"
            node_ref=field
            rows="6"
            autocomplete="off"
            autocapitalize="off"
            spellcheck="false"
            aria-describedby="row-so-far row-wrong"
            aria-invalid=move || wrong.with(Option::is_some).to_string()
            prop:value=begun
            on:input=move |event| app.send(Event::RowTyping(event_target_value(&event)))
        ></textarea>
        <p id="row-so-far" class="row-so-far" aria-live="polite">{so_far.said()}</p>
        <div id="row-wrong" tabindex="-1" role="alert">
            {move || wrong.get().map(|wrong| view! { <p class="wrong"><span class="sign" aria-hidden="true">"!"</span> {wrong.says}</p> })}
        </div>
        <button class="strong" on:click=move |_| app.send(Event::RowMeant)>{app.label("yard-row_keep").said()}</button>
    }
}

/// Selects the reading at a place, counted from 1, and takes the keyboard there.
fn select(field: &web_sys::HtmlTextAreaElement, place: usize) {
    let Some((begin, end)) = of_reading(&field.value(), place) else { return };
    // After the drawing that says what is wrong, which takes the keyboard to itself.
    let field = field.clone();
    set_timeout(
        move || {
            // A field that stands on the page takes both.
            let _ = field.focus();
            let _ = field.set_selection_range(begin, end);
        },
        AFTER_DRAWING,
    );
}

/// Where a reading stands in the letters, from and to, in units of UTF-16 as browsers count.
fn of_reading(text: &str, place: usize) -> Option<(u32, u32)> {
    let mut from = 0;
    for (number, part) in row_parts(text).iter().enumerate() {
        let begin = from + text.get(from..)?.find(part.as_str())?;
        let end = begin + part.len();
        if number + 1 == place {
            let count = |text: &str| u32::try_from(text.encode_utf16().count()).ok();
            return Some((count(text.get(..begin)?)?, count(text.get(..end)?)?));
        }
        from = end;
    }
    None
}

/// Later than the drawing that follows an event. Our own choice: some frames of 16 ms.
const AFTER_DRAWING: core::time::Duration = core::time::Duration::from_millis(120);

#[cfg(test)]
mod tests {
    use super::of_reading;

    #[test]
    fn a_reading_is_found_where_it_stands() {
        assert_eq!(of_reading("14 15 16", 2), Some((3, 5)));
        assert_eq!(of_reading("14, 14½;\n14 1/2", 2), Some((4, 7)));
        // The same letters before it are another reading.
        assert_eq!(of_reading("4 14 4", 3), Some((5, 6)));
        assert_eq!(of_reading("14 15", 3), None);
    }
}
