//! What a pattern has to say, in a neighbour's words.

use sprayer::pattern::{Band, Fan, Grooves, MOVEMENT_ADDS};
use units::{Amount, Angle, Arg, Finding, Kind, Length, Phrase, Verdict, Weight};

use super::across::Across;
use super::help::Helps;

/// Fans of booms are hardly narrower or wider, in degrees. Our assumption: common practice is 65 to 120.
const USUAL_ANGLES: (f64, f64) = (60.0, 130.0);
/// Booms are hardly carried lower or higher over what they spray; heights that suit were sought between. Our assumption.
const USUAL_HEIGHTS: (Length, Length) = (Length::metres(0.25), Length::metres(1.25));

/// All findings, the answer first.
pub(super) fn findings(across: &Across, grooves: &Grooves, fans: &[Fan]) -> Vec<Finding> {
    let mut findings = vec![how_even(across, grooves)];
    findings.extend(seldom(across.height, across.angle));
    findings.push(height_that_suits(across));
    findings.push(rests_on(fans));
    findings.push(beside_cups());
    findings
}

fn width(length: Length) -> Arg {
    Arg::Amount(Amount::new(length, Kind::Width))
}

fn degrees(angle: Angle) -> Arg {
    Arg::Amount(Amount::new(angle, Kind::Angle))
}

/// From one percentage to another, or one where both read the same; never rounded to the other side of the limit.
fn span(low: f64, high: f64, limit: f64) -> Arg {
    // What is left of nothing after arithmetic is nothing.
    let percent = |share: f64| Arg::Off {
        percent: if share.abs() < 5e-5 { 0.0 } else { 100.0 * share },
        limit: Some(100.0 * limit),
    };
    let text = |share: f64| percent(share).text(units::UnitSystem::Us);
    let phrase = if text(low) == text(high) {
        Phrase::new("pattern_one", "{low}").with("low", percent(low))
    } else {
        Phrase::new("pattern_span", "{low} to {high}").with("low", percent(low)).with("high", percent(high))
    };
    Arg::Phrases(vec![phrase])
}

/// Whichever of several shapes; or the one fan that was given.
fn which(across: &Across) -> Arg {
    let phrase = match across.pattern.fans.len() {
        1 => Phrase::new("pattern_this_fan", "with this fan"),
        _ => Phrase::new("pattern_any_shape", "whichever shape the fans have"),
    };
    Arg::Phrases(vec![phrase])
}

fn how_even(across: &Across, grooves: &Grooves) -> Finding {
    let weight = |asks: Weight| if acts(across) { asks } else { Weight::Note };
    let (case, weight, english) = match across.verdict {
        Verdict::Within => (
            "within",
            Weight::Note,
            "At {height} and {angle} the ground gets it evenly, {which}: strips of {groove} differ by {spread} (limit {limit}). \
             The thinnest gets {thin} less than the mean, {thin_at}; the thickest {thick} more, {thick_at}.",
        ),
        Verdict::Outside => (
            "outside",
            weight(Weight::Act),
            "At {height} and {angle} the ground gets it unevenly, {which}: strips of {groove} differ by {spread} (limit {limit}, \
             no strip more than {each} off). The thinnest gets {thin} less than the mean, {thin_at}; the thickest {thick} more, \
             {thick_at}.",
        ),
        Verdict::CannotTell => (
            "open",
            weight(Weight::Settle),
            "At {height} and {angle} it hangs on the shape of the fans whether the ground gets it evenly: strips of {groove} \
             differ by {spread} (limit {limit}, no strip more than {each} off). The thinnest gets {thin} less than the mean, \
             {thin_at}; the thickest {thick} more, {thick_at}.",
        ),
    };
    let (pattern, limit) = (&across.pattern, &across.limit);
    let percent = |share: f64| Arg::Percent(100.0 * share);
    let (low, high) = (pattern.lowest, pattern.highest);
    let told = Finding::new(weight, "pattern_across", english)
        .case(case)
        .with("height", width(across.height))
        .with("angle", degrees(across.angle))
        .with("groove", width(grooves.width))
        .with("spread", span(pattern.spread.low, pattern.spread.high, limit.spread))
        .with("limit", percent(limit.spread))
        .with("each", percent(limit.groove))
        .with("thin", span(1.0 - low.high, 1.0 - low.low, limit.groove))
        .with("thin_at", place(&pattern.under_lowest))
        .with("thick", span(high.low - 1.0, high.high - 1.0, limit.groove))
        .with("thick_at", place(&pattern.under_highest))
        .with("which", which(across))
        .judged(across.verdict, limit.source)
        .because(across.working.clone());
    if across.verdict == Verdict::Within {
        return told;
    }
    told.with("help", Arg::Phrases(vec![help(across)])).to_do("{help}")
}

/// Whether the page has not told already what helps: plugged and worn tips and gaps have findings of their own.
fn acts(across: &Across) -> bool {
    let told = across.help.as_ref().map(|help| &help.what);
    !matches!(told, Some(Helps::Clean(_) | Helps::Change(_) | Helps::Move))
}

/// Where on the boom.
fn place(tips: &[u32]) -> Arg {
    let phrase = match tips {
        [one] => Phrase::new("pattern_under", "under tip {tip}").with("tip", Arg::Count(*one)),
        [left, right] => Phrase::new("pattern_between", "between tips {left} and {right}")
            .with("left", Arg::Count(*left))
            .with("right", Arg::Count(*right)),
        _ => Phrase::new("pattern_in_many_places", "in many places"),
    };
    Arg::Phrases(vec![phrase])
}

fn help(across: &Across) -> Phrase {
    let Some(help) = &across.help else {
        return Phrase::new(
            "pattern_help_look",
            "No one thing would help much. Look at the fans while they spray: crooked, leaning and streaky ones show in no cup.",
        );
    };
    let phrase = match &help.what {
        Helps::Clean(tips) => Phrase::new(
            "pattern_help_clean",
            "Most would be won by cleaning what is plugged (tip {tips}): strips would then differ by {spread}.",
        )
        .with("tips", Arg::Tips(tips.clone())),
        Helps::Change(tip) => Phrase::new(
            "pattern_help_change",
            "Most would be won by changing tip {tip}: strips would then differ by {spread}.",
        )
        .with("tip", Arg::Count(*tip)),
        Helps::Aim(tips) => Phrase::new(
            "pattern_help_aim",
            "Most would be won by setting tips upright (tip {tips}): strips would then differ by {spread}.",
        )
        .with("tips", Arg::Tips(tips.clone())),
        Helps::Move => Phrase::new(
            "pattern_help_move",
            "Most would be won by setting the tips at their spacing: strips would then differ by {spread}.",
        ),
        Helps::Height(height) => Phrase::new(
            "pattern_help_height",
            "Most would be won by carrying the tips {height} over what is sprayed: strips would then differ by {spread}.",
        )
        .with("height", width(*height)),
    };
    let Band { low, high } = help.spread;
    phrase.with("spread", span(low, high, across.limit.spread))
}

fn seldom(height: Length, angle: Angle) -> Vec<Finding> {
    let mut findings = Vec::new();
    if !(USUAL_ANGLES.0..=USUAL_ANGLES.1).contains(&angle.as_degrees()) {
        let says = "Hardly any boom has fans of {angle}. Is that right?";
        let doubt = Finding::new(Weight::Doubt, "pattern_seldom", says).case("angle");
        findings.push(doubt.with("angle", degrees(angle)));
    }
    if height < USUAL_HEIGHTS.0 || height > USUAL_HEIGHTS.1 {
        let says = "Hardly any boom is carried {height} over what it sprays. Is that right?";
        let doubt = Finding::new(Weight::Doubt, "pattern_seldom", says).case("height");
        findings.push(doubt.with("height", width(height)));
    }
    findings
}

fn height_that_suits(across: &Across) -> Finding {
    let (case, english) = match (across.overlap.share < 0.0, across.suits.is_empty()) {
        (true, _) => (
            "apart",
            "The fans do not meet: each is {wide} wide, and the tips are {spacing} apart. An overlap of 100 % (each fan twice as \
             wide as the spacing, every place under two) comes at {whole_at}. Tips in order lie evenly at {suits}, {which}.",
        ),
        (false, true) => (
            "none",
            "Each fan is {wide} wide: an overlap of {overlap} (100 % is twice as wide as the spacing, every place under two fans; \
             that comes at {whole_at}). Tips in order lie evenly at no height from {from} to {to}, {which}.",
        ),
        (false, false) => (
            "suits",
            "Each fan is {wide} wide: an overlap of {overlap} (100 % is twice as wide as the spacing, every place under two fans; \
             that comes at {whole_at}). Tips in order lie evenly at {suits}, {which}; the lower lose less to the wind.",
        ),
    };
    let suits = across.suits.iter().map(|range| {
        // The highest that was tried bounds nothing.
        let phrase = if range.to >= USUAL_HEIGHTS.1 - Length::metres(0.001) {
            Phrase::new("pattern_from_up", "{from} and higher")
        } else {
            Phrase::new("pattern_from_to", "{from} to {to}").with("to", width(range.to))
        };
        phrase.with("from", width(range.from))
    });
    let mut suits: Vec<Phrase> = suits.collect();
    if suits.is_empty() {
        suits.push(Phrase::new("pattern_nowhere", "no height that was tried"));
    }
    Finding::new(Weight::Note, "pattern_height", english)
        .case(case)
        .with("wide", width(across.overlap.wide))
        .with("spacing", width(across.boom.spacing()))
        .with("overlap", Arg::Percent(100.0 * across.overlap.share))
        .with("whole_at", width(across.overlap.whole_at))
        .with("from", width(USUAL_HEIGHTS.0))
        .with("to", width(USUAL_HEIGHTS.1))
        .with("suits", Arg::Phrases(suits))
        .with("which", which(across))
}

fn rests_on(fans: &[Fan]) -> Finding {
    let (case, english) = if fans.iter().any(|fan| matches!(fan, Fan::Measured(_))) {
        (
            "measured",
            "This was worked out, not measured on the ground: for the fan that was caught and a boom that stands still. Its \
             swinging in the field adds some {low} to {high} that this cannot see.",
        )
    } else {
        (
            "assumed",
            "This was worked out, not measured on the ground: for shapes that fans may have, the angle as given (it falls with \
             the pressure) and a boom that stands still. Its swinging in the field adds some {low} to {high} that this cannot \
             see.",
        )
    };
    let (low, high) = MOVEMENT_ADDS;
    Finding::new(Weight::Note, "pattern_rests_on", english)
        .case(case)
        .with("low", Arg::Percent(low))
        .with("high", Arg::Percent(high))
}

fn beside_cups() -> Finding {
    Finding::new(
        Weight::Note,
        "pattern_beside_cups",
        "Cups and ground show different faults: a worn tip hardly shows on the ground, because its neighbors spray there too; \
         height, aim and a plugged tip do. Neither test replaces the other.",
    )
}
