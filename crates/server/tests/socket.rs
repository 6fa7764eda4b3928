//! The server on a real socket: what is slow, too large, cut off or no HTTP at all; stopping; certificates.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]

mod common;
mod served;

use std::io::{Read, Write};
use std::net::{Shutdown, SocketAddr, TcpStream};
use std::sync::Arc;
use std::time::{Duration, Instant};

use common::{BOOK, kept, kept_with, lines_of, text_of};
use notebook::{Line, NotebookId, Ranges};
use served::Served;
use server::{Certificate, CertificateError, Kept, Limits, Service};
use store::{StoreError, TakenIn};

/// Sends bytes as they are and reads until the other side closes or is silent for long.
fn send(address: SocketAddr, bytes: &[u8]) -> String {
    let mut stream = connected(address, bytes);
    read(&mut stream)
}

/// The same, and says that nothing more will come.
fn send_cut(address: SocketAddr, bytes: &[u8]) -> String {
    let mut stream = connected(address, bytes);
    let _ = stream.shutdown(Shutdown::Write);
    read(&mut stream)
}

fn connected(address: SocketAddr, bytes: &[u8]) -> TcpStream {
    let mut stream = TcpStream::connect(address).unwrap();
    stream.set_read_timeout(Some(Duration::from_secs(20))).unwrap();
    // It may close before it has read everything.
    let _ = stream.write_all(bytes);
    stream
}

fn read(stream: &mut TcpStream) -> String {
    let mut answer = Vec::new();
    let _ = stream.read_to_end(&mut answer);
    String::from_utf8_lossy(&answer).into_owned()
}

fn status(answer: &str) -> &str {
    answer.split(' ').nth(1).unwrap_or_default()
}

fn head(address: SocketAddr, method: &str, path: &str, more: &str) -> String {
    format!("{method} {path} HTTP/1.1\r\nHost: {address}\r\nConnection: close\r\n{more}\r\n")
}

#[test]
fn what_is_no_http_is_refused_and_the_server_goes_on() {
    let served = Served::start(Service::new(kept(BOOK)));
    let address = served.address;
    let many: String = (0..100).map(|number| format!("x-{number}: 1\r\n")).collect();
    let long = format!("x-long: {}\r\n", "x".repeat(100_000));
    let path = format!("/{}", "x".repeat(200_000));
    for bytes in [
        b"\0\0\0\0\r\n\r\n".to_vec(),
        b"GET\r\n\r\n".to_vec(),
        b"\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03".to_vec(),
        b"GET / HTTP/9.9\r\n\r\n".to_vec(),
        head(address, "GET", "/api/1/health", "Bad Header: x\r\n").into_bytes(),
        head(address, "GET", "/api/1/health", &many).into_bytes(),
        head(address, "GET", "/api/1/health", &long).into_bytes(),
        head(address, "GET", &path, "").into_bytes(),
        head(address, "POST", "/api/1/lines", "Content-Length: x\r\n").into_bytes(),
        head(address, "POST", "/api/1/lines", "Content-Length: 1\r\nContent-Length: 2\r\n").into_bytes(),
        b"PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n".to_vec(),
    ] {
        let answer = send_cut(address, &bytes);
        assert!(
            answer.is_empty() || status(&answer).starts_with('4') || status(&answer) == "505",
            "{answer}"
        );
    }
    // Two lengths for one body, which two servers in a row might read differently.
    let both = "Content-Type: application/x-ndjson\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n";
    let answer = send(address, (head(address, "POST", "/api/1/lines", both) + "0\r\n\r\n").as_bytes());
    assert!(answer.is_empty() || status(&answer) == "400" || status(&answer) == "200", "{answer}");
    assert_eq!(status(&send(address, head(address, "GET", "/api/1/health", "").as_bytes())), "200");
}

#[test]
fn a_body_that_breaks_off_keeps_nothing_and_one_in_pieces_is_taken() {
    let kept = kept(BOOK);
    let served = Served::start(Service::new(Arc::clone(&kept)));
    let address = served.address;
    let body = text_of(&lines_of(BOOK, 1, 4));
    let kind = "Content-Type: application/x-ndjson\r\n";
    let more = format!("{kind}Content-Length: {}\r\n", body.len());
    let cut = head(address, "POST", "/api/1/lines", &more) + &body[..body.len() - 10];
    let answer = send_cut(address, cut.as_bytes());
    assert!(answer.is_empty() || status(&answer) == "400", "{answer}");
    assert_eq!(kept.held().unwrap(), Ranges::none());
    // Cut anywhere, in the middle of a letter too.
    let chunked = head(address, "POST", "/api/1/lines", &format!("{kind}Transfer-Encoding: chunked\r\n"));
    let mut chunked = chunked.into_bytes();
    for piece in body.as_bytes().chunks(7) {
        chunked.extend_from_slice(format!("{:x}\r\n", piece.len()).as_bytes());
        chunked.extend_from_slice(piece);
        chunked.extend_from_slice(b"\r\n");
    }
    chunked.extend_from_slice(b"0\r\n\r\n");
    assert_eq!(status(&send(address, &chunked)), "200");
    assert_eq!(kept.held().unwrap().count(), 4);
}

#[test]
fn who_is_slow_is_let_go() {
    let limits = Limits {
        head_time: Duration::from_millis(400),
        body_time: Duration::from_millis(600),
        ..Limits::USUAL
    };
    let served = Served::start(Service::new(kept(BOOK)).within(limits));
    let address = served.address;
    let begun = Instant::now();
    let more = "Content-Type: application/x-ndjson\r\nContent-Length: 100\r\n";
    let mut body = TcpStream::connect(address).unwrap();
    body.write_all(head(address, "POST", "/api/1/lines", more).as_bytes()).unwrap();
    body.write_all(b"{").unwrap();
    let answer = read(&mut body);
    assert_eq!(status(&answer), "408", "{answer}");
    assert!(answer.contains("server_too_slow") && answer.contains("application/problem+json"), "{answer}");
    // A head that never ends, a letter at a time.
    let mut slow = TcpStream::connect(address).unwrap();
    slow.set_read_timeout(Some(Duration::from_secs(20))).unwrap();
    let mut sent = 0;
    while sent < 200 && slow.write_all(b"x").is_ok() {
        std::thread::sleep(Duration::from_millis(20));
        sent += 1;
    }
    assert!(sent < 200, "a head of {sent} letters, one after the other, was waited for");
    // Nothing at all.
    let mut silent = TcpStream::connect(address).unwrap();
    assert_eq!(read(&mut silent), "");
    assert!(begun.elapsed() < Duration::from_secs(15));
    assert_eq!(status(&send(address, head(address, "GET", "/api/1/health", "").as_bytes())), "200");
}

#[test]
fn so_many_connections_and_no_more() {
    let limits = Limits { connections: (5, 5), ..Limits::USUAL };
    let served = Served::start(Service::new(kept(BOOK)).within(limits));
    let open: Vec<TcpStream> = (0..5).map(|_| TcpStream::connect(served.address).unwrap()).collect();
    std::thread::sleep(Duration::from_millis(200));
    let asking = head(served.address, "GET", "/api/1/health", "");
    assert_eq!(send(served.address, asking.as_bytes()), "");
    drop(open);
    std::thread::sleep(Duration::from_millis(200));
    assert_eq!(status(&send(served.address, asking.as_bytes())), "200");
}

/// A notebook that takes its time.
struct Slow(Duration);

impl Kept for Slow {
    fn notebook(&self) -> NotebookId {
        BOOK
    }
    fn held(&self) -> Result<Ranges, StoreError> {
        std::thread::sleep(self.0);
        Ok(Ranges::none())
    }
    fn lines_beyond(&self, _: &Ranges, _: usize) -> Result<Vec<Line>, StoreError> {
        Ok(Vec::new())
    }
    fn take(&self, _: Vec<Line>) -> Result<TakenIn, StoreError> {
        Ok(TakenIn::default())
    }
}

#[test]
fn an_open_request_is_finished_before_the_server_stops() {
    let mut served = Served::start(Service::new(Arc::new(Slow(Duration::from_millis(700)))));
    let address = served.address;
    let idle = TcpStream::connect(address).unwrap();
    let asking =
        std::thread::spawn(move || send(address, head(address, "GET", "/api/1/notebook", "").as_bytes()));
    std::thread::sleep(Duration::from_millis(250));
    let asked = Instant::now();
    served.ask_to_stop();
    served.wait();
    assert!(asked.elapsed() < Duration::from_secs(5), "{:?}", asked.elapsed());
    assert_eq!(status(&asking.join().unwrap()), "200");
    assert!(TcpStream::connect(address).is_err());
    drop(idle);
}

#[test]
fn a_request_that_hangs_does_not_hold_up_the_end_for_ever() {
    let limits = Limits { stop_time: Duration::from_millis(300), ..Limits::USUAL };
    let mut served = Served::start(Service::new(kept(BOOK)).within(limits));
    let more = "Content-Type: application/x-ndjson\r\nContent-Length: 100\r\n";
    let mut hanging = TcpStream::connect(served.address).unwrap();
    hanging.write_all(head(served.address, "POST", "/api/1/lines", more).as_bytes()).unwrap();
    std::thread::sleep(Duration::from_millis(200));
    let asked = Instant::now();
    served.ask_to_stop();
    served.wait();
    assert!(asked.elapsed() < Duration::from_secs(5), "{:?}", asked.elapsed());
}

#[test]
fn with_a_certificate_it_speaks_tls_and_nothing_else() {
    let folder = std::env::temp_dir().join(format!("evenswath-tls-{}", std::process::id()));
    std::fs::create_dir_all(&folder).unwrap();
    let (cert, key, other) = (folder.join("cert.pem"), folder.join("key.pem"), folder.join("other.pem"));
    let own = rcgen::generate_simple_self_signed(["localhost".to_string()]).unwrap();
    let another = rcgen::generate_simple_self_signed(["localhost".to_string()]).unwrap();
    std::fs::write(&cert, own.cert.pem()).unwrap();
    std::fs::write(&key, own.signing_key.serialize_pem()).unwrap();
    std::fs::write(&other, another.signing_key.serialize_pem()).unwrap();
    assert!(matches!(Certificate::of_files(&key, &key), Err(CertificateError::Certificate { .. })));
    assert!(matches!(Certificate::of_files(&cert, &cert), Err(CertificateError::Key { .. })));
    assert!(matches!(Certificate::of_files(&cert, &other), Err(CertificateError::Pair { .. })));
    assert!(matches!(
        Certificate::of_files(&folder.join("no"), &key),
        Err(CertificateError::Certificate { .. })
    ));
    let certificate = Certificate::of_files(&cert, &key).unwrap();
    std::fs::remove_dir_all(&folder).unwrap();

    let served = Served::start_with(Service::new(kept_with(&lines_of(BOOK, 1, 3))), Some(certificate));
    let plain = send_cut(served.address, head(served.address, "GET", "/api/1/health", "").as_bytes());
    assert!(!plain.contains("200 OK"), "{plain}");
    let answer = over_tls(served.address, own.cert.der().clone());
    assert_eq!(status(&answer), "200", "{answer}");
    assert!(
        answer.contains("\"status\":\"ready\"") && answer.contains("content-security-policy"),
        "{answer}"
    );
}

fn over_tls(
    address: SocketAddr,
    trusted: tokio_rustls::rustls::pki_types::CertificateDer<'static>,
) -> String {
    use tokio_rustls::rustls::{ClientConfig, ClientConnection, RootCertStore, Stream, crypto};
    let mut roots = RootCertStore::empty();
    roots.add(trusted).unwrap();
    let config = ClientConfig::builder_with_provider(Arc::new(crypto::ring::default_provider()))
        .with_safe_default_protocol_versions()
        .unwrap()
        .with_root_certificates(roots)
        .with_no_client_auth();
    let mut connection = ClientConnection::new(Arc::new(config), "localhost".try_into().unwrap()).unwrap();
    let mut socket = TcpStream::connect(address).unwrap();
    let mut stream = Stream::new(&mut connection, &mut socket);
    let asking = "GET /api/1/health HTTP/1.1\r\nHost: localhost\r\nOrigin: https://localhost\r\nConnection: close\r\n\r\n";
    stream.write_all(asking.as_bytes()).unwrap();
    let mut answer = Vec::new();
    let _ = stream.read_to_end(&mut answer);
    String::from_utf8_lossy(&answer).into_owned()
}
