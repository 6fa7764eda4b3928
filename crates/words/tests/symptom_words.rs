//! Every symptom, cause, remedy and check is said in both languages, and each check says what must be off first.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use std::collections::BTreeSet;

use calibration::symptoms::{
    Before, Check, Outcome, Seen, Signs, SignsError, Symptom, Trouble, chance_said, check_row, check_said,
    nothing_more_said, ranked,
};
use units::{Coded, Phrase, Pressure};
use words::{Language, Words, sources};

fn every_phrase() -> Vec<Phrase> {
    let mut all: Vec<Phrase> = Symptom::ALL.iter().map(|one| one.said()).collect();
    all.extend(Trouble::ALL.iter().flat_map(|one| [one.said(), one.remedy()]));
    all.extend(Before::ALL.iter().map(|one| one.said()));
    all.extend(Check::ALL.iter().flat_map(|one| [one.doing(Some(Pressure::psi(40.0))), one.asks()]));
    all.extend([0.9, 0.6, 0.2, 0.01].map(chance_said));
    all.push(nothing_more_said());
    all
}

#[test]
fn all_of_it_is_said_in_both_languages() {
    let [english, spanish] = Language::ALL.map(Words::of);
    for phrase in every_phrase() {
        let (here, there) = (english.phrase(&phrase), spanish.phrase(&phrase));
        assert!(here != phrase.code && there != phrase.code, "nothing says {}", phrase.code);
        assert_ne!(here, there, "{} is said the same in both", phrase.code);
        assert!(!here.contains(['{', '_']) && !there.contains(['{', '_']), "{}: {here} {there}", phrase.code);
    }
    let errors = [
        SignsError::NothingSeen,
        SignsError::TwoAnswers { given: "foam" },
        SignsError::OtherSprayer { given: "volts_low" },
    ];
    for error in errors {
        assert_eq!(english.coded(&error), Some(error.to_string()));
        assert_eq!(english.coded_action(&error), error.hint());
        assert_ne!(english.coded_action(&error), spanish.coded_action(&error));
    }
}

/// Nothing stands in the files that no code says, so that no sentence grows old unread.
#[test]
fn nothing_more_stands_in_the_file() {
    let said: BTreeSet<String> =
        every_phrase().iter().map(|phrase| format!("phrase-{}", phrase.code)).collect();
    for language in Language::ALL {
        let file = sources(language).iter().find(|(name, _)| *name == "symptoms").expect("symptoms.ftl").1;
        let keys = file.lines().filter_map(|line| line.split_once(" = ")).map(|(key, _)| key.trim());
        for key in keys.filter(|key| key.starts_with("phrase-")) {
            assert!(said.contains(key), "{}: nothing says {key}", language.tag());
        }
    }
}

/// What each check must have off, in words of either language.
const OFF: [(Before, [&str; 2]); 5] = [
    (Before::Running, ["nobody near a turning shaft", "nadie cerca de una flecha que gira"]),
    (Before::EngineOff, ["Engine and pump off", "Motor y bomba apagados"]),
    (Before::PressureOff, ["Let the pressure off", "Quite la presión"]),
    (Before::TankValveShut, ["Shut the tank valve", "Cierre la válvula del tanque"]),
    (Before::Gloves, ["Gloves and eye protection", "guantes y protección para los ojos"]),
];

#[test]
fn every_check_says_what_is_off_before_it_says_what_is_done() {
    for (place, language) in Language::ALL.into_iter().enumerate() {
        let words = Words::of(language);
        for check in Check::ALL {
            let said: Vec<String> = check_said(*check, None).iter().map(|one| words.phrase(one)).collect();
            let whole = said.join(" ");
            let done = whole.find(&words.phrase(&check.doing(None))).expect("what is done");
            for (before, texts) in OFF.iter().filter(|(before, _)| check_row(*check).before.contains(before))
            {
                let off = whole.find(texts[place]).unwrap_or_else(|| panic!("{check:?} {before:?}: {whole}"));
                assert!(off < done, "{check:?}: {whole}");
            }
            assert!(whole.ends_with('?'), "{check:?}: {whole}");
            // What is run again after something was opened is run with everybody away.
            let runs = ["run it", "run the pump", "póngala a trabajar", "trabaje la bomba"];
            let away = ["nobody near", "sin nadie cerca", "nadie cerca"];
            let waits = [Check::MotorCooled];
            if runs.iter().any(|run| whole.contains(run)) && !waits.contains(check) {
                assert!(away.iter().any(|away| whole.contains(away)), "{check:?}: {whole}");
            }
        }
    }
}

#[test]
fn remedies_that_open_something_say_what_is_off() {
    for language in Language::ALL {
        let words = Words::of(language);
        let opens = [Trouble::SuctionStrainer, Trouble::PressureStrainer, Trouble::SectionStrainer];
        for trouble in opens {
            let text = words.phrase(&trouble.remedy());
            let off = ["pressure off", "sin presión"].iter().any(|off| text.contains(off));
            let valve =
                ["tank valve shut", "válvula del tanque cerrada"].iter().any(|off| text.contains(off));
            let mouth = ["never the mouth", "nunca con la boca"].iter().any(|off| text.contains(off));
            assert!(off && valve && mouth, "{text}");
        }
    }
    // The last resort is a person.
    let signs = Signs { seen: vec![(Symptom::Foam, Seen::Present)], ..Signs::default() };
    let found = ranked(&Signs { checked: vec![(Check::TankLow, Outcome::No)], ..signs }).expect("can be");
    assert!(found.causes.len() > 20);
}
