//! What is handed over: sheets, four lines of text, the visit file.

use crate::effect::Effect;
use crate::state::State;

impl State {
    /// Four lines that say what was found, to send to a phone: which sprayer, what it puts out, what a tank does, what to do.
    #[must_use]
    pub fn four_lines(&self) -> String {
        let Some(visit) = &self.visit else { return String::new() };
        let words = &self.words;
        let about = &visit.visit.about;
        let known =
            [about.sprayer.clone(), about.farm.clone(), about.date.as_deref().map(|date| words.date(date))];
        let mut lines = vec![known.into_iter().flatten().collect::<Vec<_>>().join(" · ")];
        lines.push(crate::shown::rate_line(words, &visit.outcome));
        lines.push(crate::shown::tank_line(words, &visit.outcome));
        let first: Vec<String> = visit
            .outcome
            .actions
            .iter()
            .take(3)
            .map(|action| crate::shown::action_text(words, action))
            .collect();
        lines.push(if first.is_empty() { words.label("yard-nothing_to_do") } else { first.join(" ") });
        lines.retain(|line| !line.is_empty());
        lines.join("\n")
    }

    /// The visit file of the open visit.
    pub fn visit_file(&self) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let name =
            visit.text("visit.sprayer").to_lowercase().replace(|sign: char| !sign.is_alphanumeric(), "-");
        let name = name.trim_matches('-').to_string();
        let name =
            format!("{}-{}.toml", if name.is_empty() { "visit" } else { &name }, visit.text("visit.date"));
        vec![Effect::ShareFile { name, kind: "text/plain", content: visit.folded.file() }]
    }
}
