//! The other side over plain HTTP, with the standard library alone: enough for a server of ours, which always says how
//! long its answers are.

use std::io::{self, BufRead, BufReader, Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::time::Duration;

use super::{Answered, Other};
use crate::secret::Secret;

/// How long the other side may be silent. Our own choice: as long as a body may take there.
const SILENCE: Duration = Duration::from_secs(70);
/// The most bytes of an answer: the longest that a server of ours gives, with its last line. Our own choice.
const MOST_BODY: u64 = 16 * 1024 * 1024;
/// The most bytes of the head of an answer. Our own choice.
const MOST_HEAD: u64 = 64 * 1024;

/// A server of ours at an address.
#[derive(Debug)]
pub struct PlainHttp {
    address: SocketAddr,
    secret: Option<Secret>,
    open: Option<BufReader<TcpStream>>,
}

impl PlainHttp {
    /// The server at an address, with the pairing secret where it asks for one.
    #[must_use]
    pub const fn new(address: SocketAddr, secret: Option<Secret>) -> Self {
        Self { address, secret, open: None }
    }

    fn connect(&mut self) -> io::Result<BufReader<TcpStream>> {
        if let Some(open) = self.open.take() {
            return Ok(open);
        }
        let stream = TcpStream::connect_timeout(&self.address, SILENCE)?;
        stream.set_read_timeout(Some(SILENCE))?;
        stream.set_write_timeout(Some(SILENCE))?;
        stream.set_nodelay(true)?;
        Ok(BufReader::new(stream))
    }

    fn head(&self, path: &str, body: Option<(&str, &str)>) -> String {
        let method = if body.is_some() { "POST" } else { "GET" };
        let mut head = format!("{method} {path} HTTP/1.1\r\nHost: {}\r\n", self.address);
        if let Some(secret) = &self.secret {
            head.push_str(&format!("Authorization: Bearer {}\r\n", secret.shown()));
        }
        if let Some((kind, text)) = body {
            head.push_str(&format!("Content-Type: {kind}\r\nContent-Length: {}\r\n", text.len()));
        }
        head.push_str("\r\n");
        head
    }
}

impl Other for PlainHttp {
    fn ask(&mut self, path: &str, body: Option<(&'static str, String)>) -> io::Result<Answered> {
        let mut stream = self.connect()?;
        let body = body.as_ref().map(|(kind, text)| (*kind, text.as_str()));
        let head = self.head(path, body);
        stream.get_mut().write_all(head.as_bytes())?;
        stream.get_mut().write_all(body.map_or("", |(_, text)| text).as_bytes())?;
        let (answered, stays) = read_answer(&mut stream)?;
        if stays {
            self.open = Some(stream);
        }
        Ok(answered)
    }
}

fn read_answer(stream: &mut BufReader<TcpStream>) -> io::Result<(Answered, bool)> {
    let mut head = Vec::new();
    let mut limited = stream.take(MOST_HEAD);
    while !head.ends_with(b"\r\n\r\n") {
        if limited.read_until(b'\n', &mut head)? == 0 {
            return Err(strange("the answer broke off in its head"));
        }
    }
    let head = String::from_utf8_lossy(&head).into_owned();
    let mut lines = head.lines();
    let status = lines
        .next()
        .and_then(|line| line.strip_prefix("HTTP/1.1 "))
        .and_then(|rest| rest.get(..3))
        .and_then(|status| status.parse().ok())
        .ok_or_else(|| strange("the answer is not HTTP"))?;
    let (mut length, mut stays) = (None, true);
    for (name, value) in lines.filter_map(|line| line.split_once(':')) {
        if name.eq_ignore_ascii_case("content-length") {
            length = value.trim().parse::<u64>().ok();
        } else if name.eq_ignore_ascii_case("connection") {
            stays = !value.trim().eq_ignore_ascii_case("close");
        }
    }
    let length = length.filter(|length| *length <= MOST_BODY);
    let length = length.ok_or_else(|| strange("the answer does not say how long it is, or is too long"))?;
    let mut body = Vec::new();
    if stream.take(length).read_to_end(&mut body)? as u64 != length {
        return Err(strange("the answer broke off"));
    }
    Ok((Answered { status, body }, stays))
}

fn strange(what: &'static str) -> io::Error {
    io::Error::new(io::ErrorKind::InvalidData, what)
}
