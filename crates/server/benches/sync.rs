//! Syncing 10,000 lines over loopback, both ways, beside the same bytes over a bare socket; and whether memory stays.
#![allow(clippy::print_stdout, clippy::print_stderr, reason = "a bench prints its figures")]

use std::error::Error;
use std::io::{Read, Write};
use std::net::{SocketAddr, TcpListener, TcpStream};
use std::path::Path;
use std::sync::{Arc, mpsc};
use std::time::{Duration, Instant};

use notebook::{
    About, At, DeviceId, Draft, Kind, Line, LineId, Notebook, NotebookId, ThingId, VERSION, Written,
    line_text,
};
use server::{Kept, OneAtATime, Other, PlainHttp, Service, exchange, serve};
use store::{MemoryStore, Opening, SqliteStore};
use tokio::sync::oneshot;

/// So many lines. The house's own promise: that many under two seconds.
const LINES: u64 = 10_000;
const PROMISED: Duration = Duration::from_secs(2);
/// So often, the best is told. Our own choice.
const ROUNDS: usize = 5;
/// So often is one server synced with, to see whether it keeps what it should let go. Our own choice.
const AGAIN: usize = 40;
const BOOK: NotebookId = NotebookId::from_bits(1);

type Failed = Box<dyn Error + Send + Sync>;

fn main() -> Result<(), Failed> {
    let folder = std::env::temp_dir().join(format!("evenswath-bench-{}", std::process::id()));
    std::fs::create_dir_all(&folder)?;
    let measured = measured(&folder);
    std::fs::remove_dir_all(&folder)?;
    measured
}

fn measured(folder: &Path) -> Result<(), Failed> {
    let lines = lines_of(1);
    let bytes: usize = lines.iter().map(|line| line_text(line).len() + 1).sum();
    let (mut sent, mut taken, mut bare) = (Duration::MAX, Duration::MAX, Duration::MAX);
    for round in 0..ROUNDS {
        let file = |name: &str| folder.join(format!("{name}-{round}.sqlite"));
        sent = sent.min(synced(in_memory(&lines)?, in_file(&file("there"), &[])?)?);
        taken = taken.min(synced(in_file(&file("here"), &[])?, in_file(&file("full"), &lines)?)?);
        bare = bare.min(copied(bytes)?);
    }
    println!("server_10000_lines_sent\t{}", sent.as_nanos());
    println!("server_10000_lines_taken\t{}", taken.as_nanos());
    println!("server_same_bytes_over_a_bare_socket\t{}", bare.as_nanos());
    let ratio = |time: Duration| time.as_secs_f64() / bare.as_secs_f64();
    eprintln!(
        "10,000 lines, {bytes} bytes, into a file: sent in {sent:?} ({:.0} x the bare socket), taken in {taken:?} ({:.0} x)",
        ratio(sent),
        ratio(taken),
    );
    if sent.max(taken) > PROMISED {
        return Err(format!("10,000 lines take longer than {PROMISED:?}").into());
    }
    steady(in_file(&folder.join("steady.sqlite"), &lines)?, &lines)
}

/// One server, synced with again and again: by somebody who has nothing and takes all, and by somebody who sends all again.
fn steady(there: Arc<dyn Kept>, lines: &[Line]) -> Result<(), Failed> {
    let (address, stop, thread) = started(there)?;
    let mut held = Vec::new();
    let again: String = lines.iter().map(|line| line_text(line) + "\n").collect();
    for _ in 0..AGAIN {
        let done = exchange(in_memory(&[])?.as_ref(), &mut PlainHttp::new(address, None))?;
        let known = Other::ask(
            &mut PlainHttp::new(address, None),
            "/api/1/lines",
            Some(("application/x-ndjson", again.clone())),
        )?;
        if done.taken != lines.len() || known.status != 200 {
            return Err(format!("not everything was exchanged: {done:?}, {}", known.status).into());
        }
        held.extend(resident_kilobytes());
    }
    drop(stop);
    thread.join().map_err(|_| "the server fell over")?;
    let most = |part: &[u64]| part.iter().max().copied().unwrap_or_default();
    let (early, late) = held.split_at(held.len() / 2);
    eprintln!(
        "memory of server and asker: at most {} kB in the first {} syncs, {} kB in the next {}",
        most(early),
        early.len(),
        most(late),
        late.len()
    );
    // What the allocator keeps is full by then; more than a tenth over it would be something that is never let go.
    if most(late) > most(early) + most(early) / 10 {
        return Err("memory grows from sync to sync".into());
    }
    Ok(())
}

fn in_memory(lines: &[Line]) -> Result<Arc<dyn Kept>, Failed> {
    let kept = OneAtATime::new(MemoryStore::new(BOOK, DeviceId::from_bits(9)));
    kept.take(lines.to_vec())?;
    Ok(Arc::new(kept))
}

fn in_file(path: &Path, lines: &[Line]) -> Result<Arc<dyn Kept>, Failed> {
    let opening = Opening { notebook: BOOK, device: DeviceId::from_bits(8) };
    let kept = OneAtATime::new(SqliteStore::open(path, opening)?);
    kept.take(lines.to_vec())?;
    Ok(Arc::new(kept))
}

/// How long it takes until both sides hold the lines of both.
fn synced(here: Arc<dyn Kept>, there: Arc<dyn Kept>) -> Result<Duration, Failed> {
    let (address, stop, thread) = started(Arc::clone(&there))?;
    let begun = Instant::now();
    let done = exchange(here.as_ref(), &mut PlainHttp::new(address, None))?;
    let took = begun.elapsed();
    drop(stop);
    thread.join().map_err(|_| "the server fell over")?;
    // What fails is soon done; a bench of it would look fast.
    if u64::try_from(done.sent + done.taken)? != LINES || here.held()? != there.held()? {
        return Err(format!("not everything was exchanged: {done:?}").into());
    }
    Ok(took)
}

type Started = (SocketAddr, oneshot::Sender<()>, std::thread::JoinHandle<()>);

fn started(kept: Arc<dyn Kept>) -> Result<Started, Failed> {
    let (say, hear) = mpsc::channel();
    let (stop, stopped) = oneshot::channel::<()>();
    let thread = std::thread::spawn(move || {
        let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build();
        let Ok(runtime) = runtime else { return };
        runtime.block_on(async {
            let Ok(listener) = tokio::net::TcpListener::bind("127.0.0.1:0").await else { return };
            if listener.local_addr().is_ok_and(|address| say.send(address).is_ok()) {
                serve(Service::new(kept), listener, None, async { drop(stopped.await) }).await;
            }
        });
    });
    Ok((hear.recv()?, stop, thread))
}

/// The same number of bytes from one end of a loopback socket to the other.
fn copied(bytes: usize) -> Result<Duration, Failed> {
    let listener = TcpListener::bind("127.0.0.1:0")?;
    let address = listener.local_addr()?;
    let sender = std::thread::spawn(move || -> std::io::Result<()> {
        TcpStream::connect(address)?.write_all(&vec![b'x'; bytes])
    });
    let (mut stream, _) = listener.accept()?;
    let begun = Instant::now();
    let mut all = Vec::with_capacity(bytes);
    stream.read_to_end(&mut all)?;
    let took = begun.elapsed();
    sender.join().map_err(|_| "the sender fell over")??;
    if all.len() == bytes { Ok(took) } else { Err("bytes were lost".into()) }
}

fn lines_of(writer: u128) -> Vec<Line> {
    let mut book = Notebook::new(BOOK);
    (1..=LINES)
        .map(|number| {
            let name = writer << 64 | u128::from(number);
            let round = ThingId::from_bits(5);
            let text = format!(
                "{{\"kind\":\"reading\",\"round\":\"{round}\",\"tip\":{},\"value\":\"14.5 fl oz\"}}",
                number % 60 + 1
            );
            let draft = Draft {
                id: LineId::from_bits(name),
                about: About { kind: Kind::Visit, id: ThingId::from_bits(7) },
                at: At { utc_milliseconds: 1_800_000_000_000, offset_minutes: -300 },
                version: VERSION,
                written: Written::new(text, name.to_be_bytes()),
            };
            book.write(DeviceId::from_bits(writer), draft)
        })
        .collect()
}

/// What the system says this process holds, where it says so.
fn resident_kilobytes() -> Option<u64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmRSS:"))?;
    line.trim().split(' ').next()?.parse().ok()
}
