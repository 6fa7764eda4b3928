//! Asking the server at this address. No answer within a while is taken for no signal.

use core::time::Duration;
use std::collections::BTreeMap;

use leptos::prelude::{set_timeout_with_handle, window};
use notebook::{DeviceId, NotebookId, Ranges};
use serde_json::Value;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{AbortController, Headers, Request, RequestCache, RequestInit, Response};

use super::remember;

/// How long an answer may take. Our own choice: a part of an exchange over a weak radio link.
const PATIENCE: Duration = Duration::from_secs(60);
/// How long a first question may take. Our own choice: it is small, and the page opens on it.
const SHORT_PATIENCE: Duration = Duration::from_secs(3);
/// Under this name the pairing secret is remembered.
pub const PAIRING: &str = "pairing";

/// What is asked.
pub enum Asked<'a> {
    /// A path.
    Path(&'a str),
    /// Something is sent to a path.
    Sent {
        /// The path.
        to: &'a str,
        /// Its media type.
        kind: &'static str,
        /// What.
        body: &'a str,
    },
}

/// Why there is no answer to work with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoAnswer {
    /// No signal, or no server of ours.
    NotThere,
    /// It refuses; with what status.
    Refused(u16),
    /// It answers, but not as a server of ours.
    Strange,
}

/// The notebook that the server keeps, and what it holds of it.
pub struct There {
    /// The notebook.
    pub notebook: NotebookId,
    /// What it holds.
    pub held: Ranges,
}

/// Asks which notebook the server keeps.
pub async fn notebook() -> Result<There, NoAnswer> {
    let answer = json(&text(Asked::Path("api/1/notebook"), SHORT_PATIENCE).await?)?;
    let notebook = answer.get("notebook").and_then(Value::as_str).and_then(NotebookId::parse);
    Ok(There {
        notebook: notebook.ok_or(NoAnswer::Strange)?,
        held: ranges(answer.get("held").ok_or(NoAnswer::Strange)?)?,
    })
}

/// Asks, with patience for a large part.
pub async fn part(asked: Asked<'_>) -> Result<String, NoAnswer> {
    text(asked, PATIENCE).await
}

async fn text(asked: Asked<'_>, patience: Duration) -> Result<String, NoAnswer> {
    let stop = AbortController::new().map_err(|_| NoAnswer::NotThere)?;
    let request = request(&asked, &stop).map_err(|_| NoAnswer::NotThere)?;
    let in_time = set_timeout_with_handle(move || stop.abort(), patience).ok();
    let answer = answered(&request).await;
    if let Some(in_time) = in_time {
        in_time.clear();
    }
    answer
}

fn request(asked: &Asked<'_>, stop: &AbortController) -> Result<Request, wasm_bindgen::JsValue> {
    let headers = Headers::new()?;
    if let Some(secret) = remember::recall(PAIRING) {
        headers.set("authorization", &format!("Bearer {secret}"))?;
    }
    let how = RequestInit::new();
    how.set_cache(RequestCache::NoStore);
    how.set_signal(Some(&stop.signal()));
    let path = match asked {
        Asked::Path(path) => path,
        Asked::Sent { to, kind, body } => {
            how.set_method("POST");
            how.set_body(&(*body).into());
            headers.set("content-type", kind)?;
            to
        }
    };
    how.set_headers(&headers);
    Request::new_with_str_and_init(path, &how)
}

async fn answered(request: &Request) -> Result<String, NoAnswer> {
    let response =
        JsFuture::from(window().fetch_with_request(request)).await.map_err(|_| NoAnswer::NotThere)?;
    let response: Response = response.dyn_into().map_err(|_| NoAnswer::NotThere)?;
    if !response.ok() {
        return Err(NoAnswer::Refused(response.status()));
    }
    let text = JsFuture::from(response.text().map_err(|_| NoAnswer::NotThere)?).await;
    text.ok().and_then(|text| text.as_string()).ok_or(NoAnswer::NotThere)
}

/// An answer in JSON. A plain host of files answers with a page of its own, which is none.
pub fn json(text: &str) -> Result<Value, NoAnswer> {
    serde_json::from_str(text).map_err(|_| NoAnswer::Strange)
}

/// Ranges as they are sent: for each device its first and last numbers.
pub fn ranges(sent: &Value) -> Result<Ranges, NoAnswer> {
    let mut held = Ranges::none();
    for (device, ranges) in sent.as_object().ok_or(NoAnswer::Strange)? {
        let device = DeviceId::parse(device).ok_or(NoAnswer::Strange)?;
        for range in ranges.as_array().ok_or(NoAnswer::Strange)? {
            let end = |place: usize| range.get(place).and_then(Value::as_u64).filter(|number| *number > 0);
            let (Some(first), Some(last)) = (end(0), end(1)) else { return Err(NoAnswer::Strange) };
            if first > last {
                return Err(NoAnswer::Strange);
            }
            held.add_range(device, first, last);
        }
    }
    Ok(held)
}

/// Ranges to be sent.
pub fn sent(held: &Ranges) -> Value {
    let ranges: BTreeMap<String, &[(u64, u64)]> =
        held.iter().map(|(device, ranges)| (device.to_string(), ranges)).collect();
    // Texts and numbers alone can always be written.
    serde_json::to_value(ranges).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ranges_come_back_as_they_were_sent() {
        let mut held = Ranges::none();
        for (device, first, last) in [(7, 1, 9), (7, 11, 11), (8, 3, 40)] {
            held.add_range(DeviceId::from_bits(device), first, last);
        }
        assert_eq!(ranges(&sent(&held)), Ok(held));
    }

    #[test]
    fn what_is_no_answer_of_ours_is_strange() {
        let device = DeviceId::from_bits(7).to_string();
        for text in [
            "[]".to_string(),
            "{\"nobody\":[[1,2]]}".to_string(),
            format!("{{\"{device}\":[[0,2]]}}"),
            format!("{{\"{device}\":[[3,2]]}}"),
            format!("{{\"{device}\":[[3]]}}"),
        ] {
            assert_eq!(ranges(&json(&text).unwrap()), Err(NoAnswer::Strange), "{text}");
        }
        assert_eq!(json("<p>not here"), Err(NoAnswer::Strange));
    }
}
