//! A name is a name, whatever letters it has; nothing on a page runs, and nothing is fetched.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use report::make::Readers;
use words::{Language, Words};

use common::{faulty, page_without_fonts, sheets, worked_out};

const HOSTILE: &str = "<script>alert(1)</script><img src=x onerror=alert(2)> & \"quoted\" 'so' ñ ü </style>";

#[test]
fn a_name_that_is_markup_stays_a_name() {
    let text = faulty("NAME", &[12], 3).replace("\"NAME\"", &format!("'''{HOSTILE}'''"));
    let text = text.replace("\"Product A\"", &format!("'''{HOSTILE}'''"));
    let (visit, outcome) = worked_out(&text);
    for language in Language::ALL {
        let words = Words::of(language);
        for (name, sheet) in sheets(&Readers::one(&words), &visit, &outcome) {
            let page = report::html::page(&sheet);
            for never in
                ["<script", "<img", "onerror=alert(2)>", "</style></", "http://", "https://", "url(//"]
            {
                let shown = page.replace("http://www.w3.org", "");
                assert!(!shown.contains(never), "{name} in {language:?} holds {never}");
            }
            assert!(page.contains("default-src 'none'"));
            if name != "before" && name != "paper" {
                assert!(page.contains("&lt;script&gt;alert(1)&lt;/script&gt;"), "{name} lost the name");
            }
        }
    }
}

#[test]
fn drawings_are_well_formed_and_ids_are_unique() {
    let (visit, outcome) = worked_out(&faulty("Blue & <b>bold</b>", &[8, 8], 3));
    let (english, spanish) = (Words::of(Language::English), Words::of(Language::Spanish));
    let both = Readers { first: &english, beside: Some(&spanish) };
    for (name, sheet) in sheets(&both, &visit, &outcome) {
        let page = page_without_fonts(&sheet);
        for svg in page.split("<svg").skip(1) {
            let svg = format!("<svg{}</svg>", svg.split("</svg>").next().unwrap_or_default());
            let parsed = roxmltree::Document::parse(&svg);
            assert!(parsed.is_ok(), "{name}: {:?}", parsed.err());
        }
        let mut ids: Vec<&str> =
            page.split(" id=\"").skip(1).filter_map(|rest| rest.split('"').next()).collect();
        let all = ids.len();
        ids.sort_unstable();
        ids.dedup();
        assert_eq!(ids.len(), all, "{name} has an id twice");
    }
}
