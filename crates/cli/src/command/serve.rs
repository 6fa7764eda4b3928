//! `evenswath serve`: the notebook and the app for this machine, or for phones in the yard.

use std::net::{IpAddr, Ipv4Addr, SocketAddr};
use std::path::Path;
use std::sync::Arc;

use notebook::{DeviceId, NotebookId};
use serde_json::{Value, json};
use server::{AppFiles, Certificate, Kept, Listening, OneAtATime, Reach, RunError, Secret, Service};
use store::{Opening, SqliteStore};
use units::{Arg, Args, Coded, Finding};
use words::Words;

use super::app;
use super::input::{bytes, cannot, place};
use crate::args::{Cli, ServeArgs};
use crate::error::CliError;
use crate::out::Answer;

/// The most bytes of a file with a secret. Our own choice: a line that a person wrote.
const SECRET_BYTES: u64 = 4_096;

/// The notebook's file in its folder.
const NOTEBOOK: &str = "notebook.sqlite";

/// Says where the server is, then serves until it is stopped. What it says is printed before: a person and a script both
/// wait for it.
pub fn run(args: &ServeArgs, cli: &Cli, words: &Words) -> Result<Answer, CliError> {
    // All that may be at fault is looked at before anything is opened.
    let (reach, secret) = reach(args)?;
    let certificate = certificate(args)?;
    let files = match &args.app {
        None => app::built_in(),
        Some(folder) => Some(app::of_folder(folder)?),
    };
    let kept = open(&args.folder)?;
    let address = if args.on_network { Ipv4Addr::UNSPECIFIED } else { Ipv4Addr::LOCALHOST };
    let listening =
        server::listen(SocketAddr::from((address, args.port))).map_err(|error| cannot_run(&error))?;
    if args.log {
        server::log_to_standard_error();
    }
    let opened = Opened {
        addresses: addresses(args, &listening, certificate.as_ref(), &reach),
        secret,
        findings: findings(args),
        app: files.as_ref(),
    };
    opened.answer(kept.as_ref(), words).print(cli, words);
    let files = files.unwrap_or_else(AppFiles::placeholder);
    server::run(Service::new(kept).with_files(files).for_reach(reach), listening, certificate);
    // Everything was said at the start.
    Ok(Answer::default())
}

/// The notebook in a folder, made where there is none; with a second copy beside it.
fn open(folder: &Path) -> Result<Arc<dyn Kept>, CliError> {
    let no_chance = || CliError::fault("serve_no_chance", Args::new());
    std::fs::create_dir_all(folder).map_err(|error| cannot(folder, &error))?;
    let milliseconds = super::clock::milliseconds();
    let opening = Opening {
        notebook: NotebookId::new(milliseconds, &server::chance().ok_or_else(no_chance)?),
        device: DeviceId::new(milliseconds, &server::chance().ok_or_else(no_chance)?),
    };
    let store = SqliteStore::open(&folder.join(NOTEBOOK), opening)
        .map_err(|error| CliError::input(place(folder), &error))?;
    let of = folder.to_path_buf();
    let copying =
        move |store: &SqliteStore| store::copies::copy(store, &of, &super::clock::label()).map(|_| ());
    // One at the start, by itself; a broken copy is no reason not to serve, and it is told when one is asked for.
    let _ = copying(&store);
    Ok(Arc::new(OneAtATime::new(store).with_copy(copying)))
}

/// Who may ask, and the secret where it is to be shown.
fn reach(args: &ServeArgs) -> Result<(Reach, Shown), CliError> {
    let name = |text: &String| {
        let args = Args::new().with("name", Arg::Text(text.clone()));
        server::plain_name(text).ok_or_else(|| CliError::usage("serve_name", args).at("--name"))
    };
    let names = args.name.iter().map(name).collect::<Result<Vec<_>, _>>()?;
    if !args.on_network && names.is_empty() && args.pairing_secret_file.is_none() {
        return Ok((Reach::ThisMachine, Shown::NoneNeeded));
    }
    let (secret, shown) = match &args.pairing_secret_file {
        Some(file) => (secret_of(file)?, Shown::InItsFile),
        None => {
            let secret = Secret::new().ok_or_else(|| CliError::fault("serve_no_chance", Args::new()))?;
            let shown = Shown::Now(secret.shown());
            (secret, shown)
        }
    };
    let reach =
        if args.on_network { Reach::Network { names, secret } } else { Reach::BehindProxy { names, secret } };
    Ok((reach, shown))
}

/// How the pairing secret is told.
enum Shown {
    NoneNeeded,
    InItsFile,
    Now(String),
}

fn secret_of(file: &Path) -> Result<Secret, CliError> {
    let content = bytes(file, SECRET_BYTES)?;
    let text = String::from_utf8_lossy(&content);
    let line = text.lines().next().unwrap_or_default();
    Secret::chosen(line).map_err(|_| CliError::usage("serve_secret_short", Args::new()).at(place(file)))
}

fn certificate(args: &ServeArgs) -> Result<Option<Certificate>, CliError> {
    let (Some(certificate), Some(key)) = (&args.certificate, &args.key) else { return Ok(None) };
    let read = Certificate::of_files(certificate, key);
    read.map(Some).map_err(|error| why("serve_certificate", &error).at("--certificate"))
}

fn why(code: &'static str, error: &dyn core::fmt::Display) -> CliError {
    CliError::usage(code, Args::new().with("why", Arg::Text(error.to_string())))
}

fn cannot_run(error: &RunError) -> CliError {
    match error {
        RunError::Port { port, why } => {
            let args =
                Args::new().with("port", Arg::Text(port.to_string())).with("why", Arg::Text(why.to_string()));
            CliError::usage("serve_port", args).at("--port")
        }
        RunError::Start(why) => {
            CliError::fault("serve_start", Args::new().with("why", Arg::Text(why.to_string())))
        }
    }
}

/// What a phone does without: on the network without a certificate.
fn findings(args: &ServeArgs) -> Vec<Finding> {
    if !args.on_network || args.certificate.is_some() {
        return Vec::new();
    }
    let mut findings = server::what_plain_http_cannot_do();
    findings.extend(server::how_to_get_https());
    findings
}

/// Where the server is: the key of the sentence that tells it, and the address.
fn addresses(
    args: &ServeArgs,
    listening: &Listening,
    certificate: Option<&Certificate>,
    reach: &Reach,
) -> Vec<(&'static str, String)> {
    let scheme = if certificate.is_some() { "https" } else { "http" };
    let port = listening.address().port();
    let mut all = vec![("serve-open_here", format!("{scheme}://localhost:{port}/"))];
    if args.on_network {
        let own = server::own_address().map(|own| match own {
            IpAddr::V4(own) => own.to_string(),
            IpAddr::V6(own) => format!("[{own}]"),
        });
        all.extend(own.map(|own| ("serve-open_network", format!("{scheme}://{own}:{port}/"))));
    }
    for name in reach.names() {
        // A proxy has its own port and certificate; what it passes on comes here.
        let address =
            if args.on_network { format!("{scheme}://{name}:{port}/") } else { format!("https://{name}/") };
        all.push(("serve-open_name", address));
    }
    all
}

/// A server that is about to serve.
struct Opened<'a> {
    addresses: Vec<(&'static str, String)>,
    secret: Shown,
    findings: Vec<Finding>,
    app: Option<&'a AppFiles>,
}

impl Opened<'_> {
    fn answer(&self, kept: &dyn Kept, words: &Words) -> Answer {
        let addresses: Vec<&str> = self.addresses.iter().map(|(_, address)| address.as_str()).collect();
        let secret = match &self.secret {
            Shown::Now(secret) => Value::from(secret.as_str()),
            Shown::NoneNeeded | Shown::InItsFile => Value::Null,
        };
        let findings: Vec<Value> = self
            .findings
            .iter()
            .map(|finding| json!({ "code": finding.code(), "text": words.finding_and_action(finding) }))
            .collect();
        let mut answer = Answer::of(json!({
            "notebook": kept.notebook().to_string(),
            "addresses": addresses,
            "pairing_secret": secret,
            "findings": findings,
        }));
        for (key, address) in &self.addresses {
            answer.main(words.say(key, &[("address", address.as_str().into())]));
        }
        match &self.secret {
            Shown::Now(secret) => {
                answer.main(words.say("serve-secret", &[("secret", secret.as_str().into())]))
            }
            Shown::InItsFile => answer.plain(words.label("serve-secret_from_file")),
            Shown::NoneNeeded => {}
        }
        if self.app.is_none() {
            answer.plain(words.label("serve-without_app"));
        }
        answer.findings(&self.findings, words);
        answer.plain(words.label("serve-stop"));
        answer
    }
}
