//! What plain HTTP cannot do for a phone, and how to get HTTPS.

use units::{Finding, Weight};

/// What a phone does without when it comes over plain HTTP. Browsers keep these for secure contexts (W3C, *Secure
/// Contexts*, 2023): HTTPS, or the machine itself.
#[must_use]
pub fn what_plain_http_cannot_do() -> Vec<Finding> {
    vec![
        Finding::new(
            Weight::Act,
            "plain_http_read_along",
            "Over plain HTTP anybody in the same network can read along, the pairing secret too.",
        )
        .to_do("Use it only in a network of your own, as a phone's hotspot."),
        Finding::new(
            Weight::Doubt,
            "plain_http_no_offline",
            "Over plain HTTP a phone does not keep the app: without this server in reach it does not open.",
        ),
        Finding::new(
            Weight::Doubt,
            "plain_http_no_install",
            "Over plain HTTP the app cannot be put on a phone's home screen as an app of its own.",
        ),
        Finding::new(
            Weight::Doubt,
            "plain_http_no_position",
            "Over plain HTTP a phone does not tell its position; fields must be measured another way.",
        ),
        Finding::new(
            Weight::Doubt,
            "plain_http_screen_sleeps",
            "Over plain HTTP the screen may go dark in the middle of a catch.",
        )
        .to_do("Set the phone's screen to stay on for the day."),
    ]
}

/// How to get HTTPS: with a certificate of one's own, or behind a proxy that has one.
#[must_use]
pub fn how_to_get_https() -> Vec<Finding> {
    vec![
        Finding::new(
            Weight::Note,
            "https_by_certificate",
            "HTTPS needs a certificate that the phones trust.",
        )
        .to_do("Start with --certificate and --key and its two files in PEM form."),
        Finding::new(
            Weight::Note,
            "https_by_proxy",
            "HTTPS can also come from a proxy on this machine that has one.",
        )
        .to_do("Let it pass on to this server, and start with --name and the name that it goes by."),
    ]
}
