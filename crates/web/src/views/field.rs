//! A field to fill in. What is typed stays as it is until it is meant: on leaving the field, at Enter, or at a tap on a value
//! that is at hand.

use leptos::ev::KeyboardEvent;
use leptos::prelude::*;
use yard::Event;
use yard::shown::{self, Choice, Editor, FieldShown};

use crate::app::{App, app};
use crate::told::Told;

/// A field of the open visit, or of a row of it.
#[component]
pub fn FieldView(
    /// Its name, as `drive.course`.
    #[prop(into)]
    name: String,
) -> impl IntoView {
    let app = app();
    let of = name.clone();
    let shown: Told<Option<FieldShown>> =
        app.memo(move |state| state.visit.as_ref().map(|visit| shown::field(state, visit, &of)));
    let editor = Told::of(move || shown.with(|shown| shown.as_ref().map(|shown| shown.editor.clone())));
    let field = StoredValue::new(name);
    let text = Told::of(move || of_shown(shown, |shown| shown.text.clone()));
    let is = Is { app, field, text, shown };
    view! {
        <div class="field">
            {move || editor.get().map(|editor| match editor {
                Editor::Choices(choices) => is.choices(choices).into_any(),
                Editor::Number { units, at_hand } => is.number(units, at_hand).into_any(),
                Editor::List { units } => is.list(units).into_any(),
                Editor::Whole => is.letters("decimal", Vec::new()).into_any(),
                Editor::Letters { at_hand } => is.letters("text", at_hand).into_any(),
                Editor::Day => is.day().into_any(),
            })}
            {move || of_shown(shown, |shown| shown.wrong.clone()).map(|wrong| view! {
                <p class="wrong" role="alert" id=is.id("wrong")>{wrong}</p>
            })}
            {move || is.two_values()}
        </div>
    }
}

fn of_shown<T: Default>(shown: Told<Option<FieldShown>>, read: impl FnOnce(&FieldShown) -> T) -> T {
    shown.with(|shown| shown.as_ref().map(read).unwrap_or_default())
}

/// A field as its editors see it.
#[derive(Clone, Copy)]
struct Is {
    app: App,
    field: StoredValue<String>,
    text: Told<String>,
    shown: Told<Option<FieldShown>>,
}

impl Is {
    fn id(self, part: &str) -> String {
        format!("{part}-{}", self.field.get_value())
    }

    fn say(self, text: String) {
        self.app.send(Event::Say { field: self.field.get_value(), text });
    }

    fn type_in(self, text: String) {
        self.app.send(Event::Typing { field: self.field.get_value(), text });
    }

    fn label(self) -> impl IntoView {
        let (id, name) = (self.id("label"), self.id("entry"));
        view! { <label class="label" id=id for=name>{move || of_shown(self.shown, |shown| shown.label.clone())}</label> }
    }

    /// A label over buttons, which are no field that a label could name.
    fn head(self) -> impl IntoView {
        view! { <p class="label" id=self.id("label")>{move || of_shown(self.shown, |shown| shown.label.clone())}</p> }
    }

    /// The line that is typed in; `number` is what stands in it, `meant` what is said when it is left.
    fn entry(
        self,
        mode: &'static str,
        number: impl Fn() -> String + Copy + Send + Sync + 'static,
        meant: impl Fn(String) -> String + Copy + Send + Sync + 'static,
    ) -> impl IntoView {
        let is_wrong = move || of_shown(self.shown, |shown| shown.wrong.is_some());
        view! {
            <input
                type="text"
                id=self.id("entry")
                inputmode=mode
                autocomplete="off"
                autocapitalize="off"
                spellcheck="false"
                enterkeyhint="done"
                aria-invalid=move || is_wrong().then_some("true")
                aria-describedby=move || is_wrong().then(|| self.id("wrong"))
                prop:value=number
                on:input:target=move |event| self.type_in(event.target().value())
                on:blur:target=move |event| self.say(meant(event.target().value()))
                on:keydown:target=move |event| {
                    if KeyboardEvent::key(&event) == "Enter" {
                        self.say(meant(event.target().value()));
                    }
                }
            />
        }
    }

    fn number(self, units: Vec<Choice>, at_hand: Vec<Choice>) -> impl IntoView {
        let units = StoredValue::new(units);
        let parted =
            move || self.text.with(|text| units.with_value(|units| shown::without_unit(text, units)));
        let unit = self.unit(units, move || parted().1);
        view! {
            {self.label()}
            <div class="entry">
                {self.entry("decimal", move || parted().0, move |typed| shown::with_unit(&typed, unit.get_untracked()))}
                {self.units(units, unit, move |unit| shown::with_unit(&parted().0, unit))}
            </div>
            {self.hand(at_hand)}
            {self.nudges()}
        }
    }

    /// Keys that make it a little less or more; they stay while what they lead to changes.
    fn nudges(self) -> impl IntoView {
        let labels = Told::of(move || {
            of_shown(self.shown, |shown| shown.nudges.iter().map(|key| key.label.clone()).collect::<Vec<_>>())
        });
        let text = move |place: usize| {
            self.shown.with_untracked(|shown| {
                shown.as_ref().and_then(|shown| shown.nudges.get(place)).map(|key| key.text.clone())
            })
        };
        let one = move |(place, label): (usize, String)| {
            let tap = move |_| {
                if let Some(text) = text(place) {
                    self.say(text);
                }
            };
            view! { <button type="button" on:click=tap>{label}</button> }
        };
        move || {
            let labels = labels.get();
            (!labels.is_empty()).then(|| {
                view! {
                    <div class="buttons choices pair" role="group" aria-labelledby=self.id("label")>
                        {labels.into_iter().enumerate().map(one).collect_view()}
                    </div>
                }
            })
        }
    }

    fn list(self, units: Vec<Choice>) -> impl IntoView {
        let units = StoredValue::new(units);
        let parted =
            move || self.text.with(|text| units.with_value(|units| shown::list_without_unit(text, units)));
        let unit = self.unit(units, move || parted().1);
        view! {
            {self.label()}
            <div class="entry long">
                {self.entry("text", move || parted().0, move |typed| shown::list_with_unit(&typed, unit.get_untracked()))}
                {self.units(units, unit, move |unit| shown::list_with_unit(&parted().0, unit))}
            </div>
        }
    }

    /// The unit that goes with what is typed: the one tapped, else the one that stands there, else the usual one.
    fn unit(
        self,
        units: StoredValue<Vec<Choice>>,
        stands: impl Fn() -> Option<&'static str> + Send + Sync + 'static,
    ) -> Chosen {
        let tapped = RwSignal::new(None::<&'static str>);
        let first = units.with_value(|units| units.first().map_or("", |unit| unit.word));
        let now = Told::of(move || tapped.get().or_else(&stands).unwrap_or(first));
        Chosen { tapped, now }
    }

    /// One unit is a word behind the line; of several one is tapped.
    fn units(
        self,
        units: StoredValue<Vec<Choice>>,
        chosen: Chosen,
        meant: impl Fn(&'static str) -> String + Copy + Send + Sync + 'static,
    ) -> impl IntoView {
        let label = self.app.label("yard-unit_of");
        let one = move |unit: Choice| {
            let word = unit.word;
            view! {
                <button
                    type="button"
                    aria-pressed=move || (chosen.now.get() == word).to_string()
                    on:click=move |_| {
                        chosen.tapped.set(Some(word));
                        self.say(meant(word));
                    }
                >{unit.label}</button>
            }
        };
        view! {
            <div class="units" role="group" aria-label=move || label.get()>
                {units.get_value().into_iter().map(one).collect_view()}
            </div>
        }
    }

    fn hand(self, at_hand: Vec<Choice>) -> impl IntoView {
        let label = self.app.label("yard-at_hand");
        (!at_hand.is_empty()).then(|| {
            view! {
                <div class="buttons hand" role="group" aria-label=move || label.get()>
                    {at_hand.into_iter().map(|one| self.choice(one)).collect_view()}
                </div>
            }
        })
    }

    fn choice(self, choice: Choice) -> impl IntoView {
        let word = choice.word;
        view! {
            <button
                type="button"
                aria-pressed=move || self.text.with(|text| text == word).to_string()
                on:click=move |_| self.say(word.to_string())
            >{choice.label}</button>
        }
    }

    fn choices(self, choices: Vec<Choice>) -> impl IntoView {
        let class = if choices.len() == 2 { "buttons choices pair" } else { "buttons choices" };
        view! {
            {self.head()}
            <div class=class role="group" aria-labelledby=self.id("label")>
                {choices.into_iter().map(|one| self.choice(one)).collect_view()}
            </div>
        }
    }

    /// Words at hand are read in the reader's language, and meant as the visit file has them.
    fn letters(self, mode: &'static str, at_hand: Vec<Choice>) -> impl IntoView {
        let hand = StoredValue::new(at_hand.clone());
        let read = move || self.text.with(|text| hand.with_value(|hand| shown::read_in(hand, text)));
        let meant = move |typed: String| hand.with_value(|hand| shown::meant_by(hand, &typed));
        view! {
            {self.label()}
            <div class="entry">{self.entry(mode, read, meant)}</div>
            {self.hand(at_hand)}
        }
    }

    fn day(self) -> impl IntoView {
        view! {
            {self.label()}
            <input
                type="date"
                id=self.id("entry")
                prop:value=move || self.text.get()
                on:change:target=move |event| self.say(event.target().value())
            />
        }
    }

    /// Two devices gave it different values: both are shown until one is chosen.
    fn two_values(self) -> Option<impl IntoView> {
        let values = of_shown(self.shown, |shown| shown.two_values.clone());
        let app = self.app;
        (!values.is_empty()).then(|| {
            let one = |(index, value): (usize, String)| {
                let says = app.with(|state| {
                    let value = shown::value_said(&state.words, &value);
                    state.words.say("yard-this_holds", &[("value", value.into())])
                });
                let tap = move |_| app.send(Event::Choose { field: self.field.get_value(), index });
                view! { <button type="button" on:click=tap>{says}</button> }
            };
            view! {
                <p class="wrong">{app.with(|state| state.words.label("yard-two_values"))}</p>
                <div class="buttons">{values.into_iter().enumerate().map(one).collect_view()}</div>
            }
        })
    }
}

/// A unit to be chosen.
#[derive(Clone, Copy)]
struct Chosen {
    tapped: RwSignal<Option<&'static str>>,
    now: Told<&'static str>,
}

impl Chosen {
    fn get_untracked(self) -> &'static str {
        self.now.get_untracked()
    }
}
