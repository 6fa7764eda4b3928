//! Syncing 10,000 lines over loopback, both ways, beside the same bytes over a bare socket; and whether memory stays.
#![allow(clippy::print_stdout, clippy::print_stderr, reason = "a bench prints its figures")]

use std::error::Error;
use std::io::{Read, Write};
use std::net::{SocketAddr, TcpListener, TcpStream};
use std::sync::{Arc, mpsc};
use std::time::{Duration, Instant};

use notebook::{
    About, At, DeviceId, Draft, Kind, Line, LineId, Notebook, NotebookId, ThingId, VERSION, Written,
    line_text,
};
use server::{Exchanged, Kept, OneAtATime, PlainHttp, Service, exchange, serve};
use store::MemoryStore;
use tokio::sync::oneshot;

/// So many lines each way. The house's own promise: that many under two seconds.
const LINES: u64 = 10_000;
const PROMISED: Duration = Duration::from_secs(2);
/// So often, the best is told. Our own choice.
const ROUNDS: usize = 12;
const BOOK: NotebookId = NotebookId::from_bits(1);

type Failed = Box<dyn Error + Send + Sync>;

fn main() -> Result<(), Failed> {
    let (ours, theirs) = (lines_of(1), lines_of(2));
    let bytes: usize = ours.iter().chain(&theirs).map(|line| line_text(line).len() + 1).sum();
    let (mut sending, mut taking, mut memory) = (Vec::new(), Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        let (send, take) = (synced(&ours, &[])?, synced(&[], &theirs)?);
        sending.push(send);
        taking.push(take);
        memory.extend(resident_kilobytes());
    }
    let bare = (0..ROUNDS).map(|_| copied(bytes / 2)).collect::<Result<Vec<_>, _>>()?;
    let best = |times: &[Duration]| times.iter().min().copied().unwrap_or_default();
    let (sending, taking, bare) = (best(&sending), best(&taking), best(&bare));
    println!("server_10000_lines_sent\t{}", sending.as_nanos());
    println!("server_10000_lines_taken\t{}", taking.as_nanos());
    println!("server_same_bytes_over_a_bare_socket\t{}", bare.as_nanos());
    let ratio = |time: Duration| time.as_secs_f64() / bare.as_secs_f64().max(f64::MIN_POSITIVE);
    eprintln!(
        "10,000 lines, {} bytes each way: sent in {sending:?} ({:.0} x the bare socket), taken in {taking:?} ({:.0} x)",
        bytes / 2,
        ratio(sending),
        ratio(taking),
    );
    // The first rounds fill what the allocator keeps; from the third on it should stay.
    if let (Some(early), Some(late)) = (memory.get(2), memory.last()) {
        eprintln!("memory held by the process: {early} kB after 3 rounds, {late} kB after {ROUNDS}");
        if *late > early + early / 4 {
            return Err("memory grows from round to round".into());
        }
    }
    if sending.max(taking) > PROMISED {
        return Err(format!("10,000 lines take longer than {PROMISED:?}").into());
    }
    Ok(())
}

/// How long it takes until both sides hold the lines of both.
fn synced(here: &[Line], there: &[Line]) -> Result<Duration, Failed> {
    let kept = |lines: &[Line]| -> Result<Arc<dyn Kept>, Failed> {
        let kept = OneAtATime::new(MemoryStore::new(BOOK, DeviceId::from_bits(9)));
        kept.take(lines.to_vec())?;
        Ok(Arc::new(kept))
    };
    let (here, there) = (kept(here)?, kept(there)?);
    let lines = usize::try_from(LINES)?;
    let (address, stop, thread) = started(Arc::clone(&there))?;
    let begun = Instant::now();
    let done = exchange(here.as_ref(), &mut PlainHttp::new(address, None))?;
    let took = begun.elapsed();
    drop(stop);
    thread.join().map_err(|_| "the server fell over")?;
    // What fails is soon done; a bench of it would look fast.
    if done.sent + done.taken != lines || done == Exchanged::default() || here.held()? != there.held()? {
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
