//! Every problem and finding of the server is said in both languages, in English as the code says it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]

use notebook::NotebookId;
use server::{Problem, how_to_get_https, what_plain_http_cannot_do};
use units::Coded;
use words::{Language, Words};

/// One of each. The list is held to the code by the `match` below: a new problem does not compile without a place here.
fn every_problem() -> Vec<Problem> {
    let (theirs, ours) = (NotebookId::from_bits(2), NotebookId::from_bits(1));
    let all = vec![
        Problem::NoRoute,
        Problem::NoFile,
        Problem::Method { method: "PUT" },
        Problem::Host,
        Problem::Origin,
        Problem::Proxy,
        Problem::SecretMissing,
        Problem::SecretWrong,
        Problem::TooMany { seconds: 7 },
        Problem::Busy { seconds: 5 },
        Problem::TooLarge { most: 900 },
        Problem::TooManyLines { most: 900 },
        Problem::TooManyRanges { most: 900 },
        Problem::TooSlow { seconds: 70 },
        Problem::BrokenOff,
        Problem::ContentType { wanted: "application/json" },
        Problem::Unreadable { line: 3, column: 14 },
        Problem::Field { field: "held" },
        Problem::OtherNotebook { theirs, ours },
        Problem::NoCopy,
        Problem::OnlyHere,
        Problem::StoreFull,
        Problem::StoreReadOnly,
        Problem::StoreLocked,
        Problem::Fault,
    ];
    for problem in &all {
        match problem {
            Problem::NoRoute | Problem::NoFile | Problem::Method { .. } | Problem::Host | Problem::Origin => {
            }
            Problem::Proxy | Problem::SecretMissing | Problem::SecretWrong | Problem::TooMany { .. } => {}
            Problem::Busy { .. } | Problem::TooLarge { .. } | Problem::TooManyLines { .. } => {}
            Problem::TooManyRanges { .. } | Problem::TooSlow { .. } | Problem::BrokenOff => {}
            Problem::ContentType { .. } | Problem::Unreadable { .. } | Problem::Field { .. } => {}
            Problem::OtherNotebook { .. } | Problem::NoCopy | Problem::OnlyHere => {}
            Problem::StoreFull | Problem::StoreReadOnly | Problem::StoreLocked | Problem::Fault => {}
        }
    }
    all
}

fn check(coded: &dyn Coded) {
    let mut told = Vec::new();
    for language in Language::ALL {
        let words = Words::of(language);
        let says =
            words.coded(coded).unwrap_or_else(|| panic!("{}: nothing says {}", language.tag(), coded.code()));
        let does = words.coded_action(coded);
        for text in core::iter::once(&says).chain(&does) {
            assert!(!text.contains("{ $") && !text.contains("{$"), "{}: {text}", language.tag());
        }
        told.push((says, does));
    }
    assert_eq!((&told[0].0, &told[0].1), (&coded.to_string(), &coded.hint()), "{}", coded.code());
    assert_ne!(told[0].0, told[1].0, "{} is said the same in both", coded.code());
    assert_eq!(told[0].1.is_some(), told[1].1.is_some(), "{}", coded.code());
}

#[test]
fn every_problem_is_said_in_both_languages_with_a_title() {
    let mut codes = std::collections::BTreeSet::new();
    for problem in every_problem() {
        check(&problem);
        codes.insert(problem.code());
        let title = format!("title-{}", problem.code());
        let titles = Language::ALL.map(|language| Words::of(language).label(&title));
        assert!(titles.iter().all(|said| *said != title) && titles[0] != titles[1], "{titles:?}");
    }
    assert_eq!(codes.len(), every_problem().len());
}

#[test]
fn what_plain_http_cannot_do_is_said_in_both_languages() {
    let findings: Vec<_> = what_plain_http_cannot_do().into_iter().chain(how_to_get_https()).collect();
    let codes: Vec<_> = findings.iter().map(Coded::code).collect();
    for needed in [
        "plain_http_no_offline",
        "plain_http_no_position",
        "plain_http_no_install",
        "plain_http_screen_sleeps",
    ] {
        assert!(codes.contains(&needed));
    }
    findings.iter().for_each(|finding| check(finding));
}
