//! A server run until it is stopped, and the browser of a desktop opened on it.

use std::io::{BufRead, BufReader};
use std::net::TcpListener;
use std::process::{Command, Stdio};

use super::Open;
use crate::process;

/// The port that `evenswath serve` takes by itself (`server::PORT`): what a browser has kept belongs to an address, and the
/// next run is to find it.
const PORT: u16 = 8427;

/// That port, or any where another program has it.
pub fn port() -> String {
    if TcpListener::bind(("127.0.0.1", PORT)).is_ok() {
        return PORT.to_string();
    }
    eprintln!(
        "Another program has the port {PORT}; any free one is taken. What a browser kept of the app it asks for again."
    );
    "0".to_owned()
}

/// Runs the server, passes on what it says, and opens the address that it names.
pub fn served(serve: &mut Command, open: Open) -> Result<(), String> {
    process::announce(serve);
    let mut server =
        serve.stdout(Stdio::piped()).spawn().map_err(|error| format!("could not start it: {error}"))?;
    let mut open = open;
    if let Some(said) = server.stdout.take() {
        for line in BufReader::new(said).lines().map_while(Result::ok) {
            println!("{line}");
            if let (Open::WhereThereIsOne, Some(address)) = (open, address(&line)) {
                open = Open::No;
                show(address);
            }
        }
    }
    let end = server.wait().map_err(|error| format!("it was lost: {error}"))?;
    if end.success() { Ok(()) } else { Err(format!("the server ended ({end})")) }
}

/// The address in a line that the server says.
fn address(line: &str) -> Option<&str> {
    line.split_whitespace().find(|word| word.starts_with("http://localhost"))
}

/// Opens a browser where there is a desktop. Where that does not work out, the address stands above for a person to open.
fn show(address: &str) {
    let Some(mut opener) = opener() else { return };
    let quiet = opener.arg(address).stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    if quiet.spawn().is_err() {
        eprintln!("No browser could be opened; the address is above.");
    }
}

/// What opens an address on this system.
fn opener() -> Option<Command> {
    if cfg!(target_os = "macos") {
        return Some(Command::new("open"));
    }
    if cfg!(windows) {
        let mut command = Command::new("cmd");
        // The first word in quotes would be taken for the window's title.
        command.args(["/C", "start", ""]);
        return Some(command);
    }
    let is_set = |name: &str| std::env::var_os(name).is_some_and(|value| !value.is_empty());
    (is_set("DISPLAY") || is_set("WAYLAND_DISPLAY")).then(|| Command::new("xdg-open"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_port_is_the_servers_own() {
        let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
        let text = std::fs::read_to_string(root.join("crates/server/src/run.rs")).unwrap();
        assert!(text.replace('_', "").contains(&format!("pub const PORT: u16 = {PORT};")), "{PORT}");
    }

    #[test]
    fn the_address_is_found_in_what_is_said() {
        assert_eq!(address("On this machine: http://localhost:8427/"), Some("http://localhost:8427/"));
        assert_eq!(address("Stop it with Ctrl-C"), None);
    }
}
