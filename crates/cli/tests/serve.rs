//! `evenswath serve` as it is started: it says where it is, gives and takes lines over a real socket, and what it took is
//! in the notebook of its folder when it is gone.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::{Child, Stdio};

use common::{command, folder, run};

/// A server that is stopped when the test is done with it, however it ends.
struct Running(Child, String);

impl Drop for Running {
    fn drop(&mut self) {
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

fn start(of: &Path) -> Running {
    let mut server = command()
        .args(["serve", "--port", "0", "--folder", of.to_str().expect("UTF-8")])
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .expect("it starts");
    let said = BufReader::new(server.stdout.take().expect("its words")).lines().map_while(Result::ok);
    let address = said
        .filter_map(|line| line.split_once("http://").map(|(_, rest)| rest.trim_end_matches('/').to_string()))
        .next();
    Running(server, address.expect("it says where it is"))
}

/// The answer to a request: its status and what follows.
fn ask(server: &Running, method: &str, path: &str, body: &str) -> (u16, String) {
    let mut socket = TcpStream::connect(&server.1).expect("it listens");
    let host = &server.1;
    write!(
        socket,
        "{method} {path} HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\nContent-Type: application/x-ndjson\r\n\
         Content-Length: {}\r\n\r\n{body}",
        body.len()
    )
    .expect("asked");
    let mut answer = String::new();
    socket.read_to_string(&mut answer).expect("answered");
    let status = answer.split(' ').nth(1).and_then(|status| status.parse().ok()).expect("a status");
    (status, answer)
}

#[test]
fn lines_go_to_the_server_and_are_in_its_notebook_when_it_is_gone() {
    let place = folder("serve");
    let (mine, theirs) = (place.join("mine"), place.join("theirs"));
    let name = |path: &Path| path.to_str().expect("UTF-8").to_string();
    assert_eq!(run(&["notebook", "import", &name(&mine), "demo/willow-bend.toml"]).status, 0);
    let file = place.join("mine.jsonl");
    assert_eq!(run(&["notebook", "export", &name(&mine), "--to", &name(&file)]).status, 0);
    // The server keeps a copy of the same notebook, and goes on as a device of its own.
    assert_eq!(run(&["notebook", "import", &name(&theirs), &name(&file)]).status, 0);
    assert_eq!(run(&["notebook", "import", &name(&mine), "demo/willow-bend.toml"]).status, 0);
    assert_eq!(run(&["notebook", "export", &name(&mine), "--to", &name(&file)]).status, 0);
    let text = std::fs::read_to_string(&file).expect("a file");
    let lines: String =
        text.lines().filter(|line| line.contains("\"entry_hash\"")).map(|line| format!("{line}\n")).collect();
    {
        let server = start(&theirs);
        assert_eq!(ask(&server, "GET", "/api/1/health", "").0, 200);
        let (status, answer) = ask(&server, "POST", "/api/1/lines", &lines);
        assert_eq!(status, 200, "{answer}");
        let (_, again) = ask(&server, "POST", "/api/1/lines", &lines);
        assert!(again.contains("\"new\":0"), "the same lines again change nothing: {again}");
        let (status, problem) = ask(&server, "GET", "/no-such-page.png", "");
        assert!(status == 404 && problem.contains("application/problem+json"), "{problem}");
    }
    let verify = run(&["notebook", "verify", &name(&theirs), "--json"]).json();
    assert_eq!((verify["whole"].as_bool(), verify["visits"].as_u64()), (Some(true), Some(2)), "{verify}");
}

#[test]
fn what_cannot_be_served_is_told_and_nothing_listens() {
    let place = folder("serve-refused");
    let book = place.join("book");
    let ran =
        run(&["serve", "--folder", book.to_str().expect("UTF-8"), "--port", "0", "--app", "no-such-folder"]);
    assert!(ran.status != 0 && ran.err.contains("no-such-folder"), "{ran:?}");
    let ran = run(&["serve", "--folder", book.to_str().expect("UTF-8"), "--certificate", "a.pem"]);
    assert_eq!(ran.status, 2, "a certificate needs its key: {ran:?}");
}
