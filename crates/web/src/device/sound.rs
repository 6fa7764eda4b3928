//! Tones that beat engine noise. Browsers sound nothing before the first tap; so the first tap makes them ready.

use std::cell::RefCell;

use leptos::ev;
use leptos::prelude::window_event_listener;
use wasm_bindgen::JsValue;
use web_sys::{AudioContext, AudioContextState, OscillatorType};
use yard::Sound;

use crate::app::App;

/// The tones of this page.
#[derive(Default)]
pub struct Tones(RefCell<Option<AudioContext>>);

/// A tone.
struct Tone {
    /// Hertz.
    pitch: f32,
    /// Seconds.
    lasts: f64,
    /// Share of the loudest.
    loud: f32,
}

/// How each sounds. Our own choice: counts short at 880 Hz, "catch" high and long, "stop" low and longest, so that they differ
/// by pitch and by length; a key is barely heard. Phones' speakers are loudest about 1 to 3 kHz, engines below 500 Hz; the low
/// one is square and so rich in overtones.
const fn tone(sound: Sound) -> Tone {
    match sound {
        Sound::Count => Tone { pitch: 880.0, lasts: 0.12, loud: 0.6 },
        Sound::Go => Tone { pitch: 1760.0, lasts: 0.7, loud: 0.9 },
        Sound::Stop => Tone { pitch: 440.0, lasts: 0.9, loud: 0.9 },
        Sound::Key => Tone { pitch: 1200.0, lasts: 0.02, loud: 0.05 },
    }
}

/// Seconds in which a tone fades, so that it ends without a click. Our own choice.
const FADES: f64 = 0.015;

impl Tones {
    /// Sounds a tone; silent where there is no sound.
    pub fn sound(&self, sound: Sound) {
        if let Some(context) = &*self.0.borrow() {
            // A device without a loudspeaker may refuse any step of it.
            let _ = play(context, &tone(sound));
        }
    }

    /// Makes ready to sound; to be called while a tap is worked on.
    fn wake(&self) {
        let mut ready = self.0.borrow_mut();
        if ready.is_none() {
            *ready = AudioContext::new().ok();
        }
        if let Some(context) = &*ready
            && context.state() == AudioContextState::Suspended
        {
            // Where it is refused now, the next tap asks again.
            let _ = context.resume();
        }
    }
}

fn play(context: &AudioContext, tone: &Tone) -> Result<(), JsValue> {
    let (from, to) = (context.current_time(), context.current_time() + tone.lasts);
    let (source, volume) = (context.create_oscillator()?, context.create_gain()?);
    source.set_type(OscillatorType::Square);
    source.frequency().set_value(tone.pitch);
    volume.gain().set_value_at_time(tone.loud, from)?;
    volume.gain().set_value_at_time(tone.loud, (to - FADES).max(from))?;
    volume.gain().linear_ramp_to_value_at_time(0.0, to)?;
    source.connect_with_audio_node(&volume)?.connect_with_audio_node(&context.destination())?;
    source.start()?;
    source.stop_with_when(to)
}

/// Listens for taps and keys for as long as the page is there; a phone call in between lets the tones sleep again.
pub fn listen(app: App) {
    window_event_listener(ev::pointerdown, move |_| app.device().sound.wake());
    window_event_listener(ev::keydown, move |_| app.device().sound.wake());
}
