//! Saying aloud. Silent where the browser has no voice.

use leptos::prelude::window;
use web_sys::SpeechSynthesisUtterance;
use words::Language;

use super::js;

/// The voices asked for, as BCP 47 has them: as the words are written, for the United States and Mexico.
const fn voice(language: Language) -> &'static str {
    match language {
        Language::English => "en-US",
        Language::Spanish => "es-MX",
    }
}

/// Says a text; what is still being said gives way, so that "stop" never waits for the end of a sentence.
pub fn speak(text: &str, language: Language) {
    let window = window();
    if js::get(&window, "speechSynthesis").is_none() {
        return;
    }
    let (Ok(speaker), Ok(said)) = (window.speech_synthesis(), SpeechSynthesisUtterance::new_with_text(text))
    else {
        return;
    };
    said.set_lang(voice(language));
    speaker.cancel();
    speaker.speak(&said);
}
