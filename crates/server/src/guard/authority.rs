//! The name and port that a server is asked under, and whose page asks.

use std::net::{IpAddr, Ipv6Addr};

/// A name or number, and a port where one is written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Authority {
    /// In small letters; a number of IP version 6 without its brackets.
    pub name: String,
    port: Option<u16>,
}

/// How an address begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scheme {
    /// `http`
    Http,
    /// `https`
    Https,
}

impl Scheme {
    /// The port where none is written (RFC 9110, 4.2).
    const fn port(self) -> u16 {
        match self {
            Self::Http => 80,
            Self::Https => 443,
        }
    }
}

impl Authority {
    /// Reads `name`, `name:port`, `[number]:port`. Names are letters, digits, dots, dashes; anything else is none.
    pub fn parse(text: &str) -> Option<Self> {
        let (name, rest) = match text.strip_prefix('[') {
            Some(inside) => {
                let (number, rest) = inside.split_once(']')?;
                number.parse::<Ipv6Addr>().ok()?;
                (number, rest)
            }
            None => text.split_at(text.find(':').unwrap_or(text.len())),
        };
        let sign = |sign: u8| sign.is_ascii_alphanumeric() || matches!(sign, b'.' | b'-');
        if name.is_empty() || !(text.starts_with('[') || name.bytes().all(sign)) {
            return None;
        }
        let port = match rest.strip_prefix(':') {
            None if rest.is_empty() => None,
            None => return None,
            Some(digits) if digits.bytes().all(|digit| digit.is_ascii_digit()) => Some(digits.parse().ok()?),
            Some(_) => return None,
        };
        Some(Self { name: name.to_ascii_lowercase(), port })
    }

    /// Whether it is a number and no name.
    pub fn is_number(&self) -> bool {
        self.name.parse::<IpAddr>().is_ok()
    }

    /// Whether it is this machine itself.
    pub fn is_here(&self) -> bool {
        self.name == "localhost" || self.name.parse::<IpAddr>().is_ok_and(|number| number.is_loopback())
    }

    /// The name and the port, with the usual port where none is written.
    pub fn with_port(&self, scheme: Scheme) -> (&str, u16) {
        (&self.name, self.port.unwrap_or(scheme.port()))
    }
}

/// The name of a server as it is given when it is started: without `https://` and without a port.
#[must_use]
pub fn plain_name(text: &str) -> Option<String> {
    let read = Authority::parse(text.trim())?;
    (read.port.is_none() && !read.is_number()).then_some(read.name)
}

/// Whose page asks; `null` and anything with more to it is nobody's.
pub fn origin(text: &str) -> Option<(Scheme, Authority)> {
    let (scheme, rest) = text.split_once("://")?;
    let scheme = match scheme {
        "http" => Scheme::Http,
        "https" => Scheme::Https,
        _ => return None,
    };
    Some((scheme, Authority::parse(rest)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_and_numbers_with_and_without_port() {
        for (text, name, here) in [
            ("localhost", "localhost", true),
            ("LOCALHOST:8427", "localhost", true),
            ("127.0.0.1:8427", "127.0.0.1", true),
            ("[::1]:8427", "::1", true),
            ("192.168.1.5", "192.168.1.5", false),
            ("barn.example:443", "barn.example", false),
        ] {
            let read = Authority::parse(text).unwrap();
            assert_eq!((read.name.as_str(), read.is_here()), (name, here), "{text}");
        }
    }

    #[test]
    fn what_is_no_name_is_refused() {
        for text in [
            "",
            ":80",
            "a b",
            "localhost:",
            "localhost:99999",
            "localhost:80:80",
            "[::1",
            "[::1]x",
            "[evil]",
            "user@localhost",
            "localhost/",
            "local\u{a0}host",
            "localhost:+80",
            "localhost\0",
        ] {
            // An empty port is a port of no digits, which parses as none.
            assert_eq!(Authority::parse(text), None, "{text:?}");
        }
    }

    #[test]
    fn a_name_to_be_known_by_is_a_name_alone() {
        assert_eq!(plain_name(" Barn.Example "), Some("barn.example".to_string()));
        for text in ["https://barn.example", "barn.example:443", "192.168.1.5", "", "a b", "[::1]"] {
            assert_eq!(plain_name(text), None, "{text}");
        }
    }

    #[test]
    fn an_origin_is_scheme_name_and_port() {
        let (scheme, from) = origin("http://localhost:8427").unwrap();
        assert_eq!(from.with_port(scheme), ("localhost", 8427));
        let (scheme, from) = origin("https://barn.example").unwrap();
        assert_eq!(from.with_port(scheme), ("barn.example", 443));
        for text in ["null", "", "file://", "http://localhost/", "ftp://localhost", "http://"] {
            assert_eq!(origin(text), None, "{text}");
        }
    }
}
