//! One reading kept on disk, beside the least that any program must do to keep one; 100,000 lines folded, beside reading
//! the same text as plain JSON; and whether memory stays while an hour's lines are kept.
#![allow(clippy::print_stdout, clippy::print_stderr, reason = "a bench prints its figures")]

use std::error::Error;
use std::io::Write;
use std::path::Path;
use std::time::{Duration, Instant};

use notebook::{
    About, At, DeviceId, Draft, Entry, Kind, LineId, Notebook, NotebookId, RowId, ThingId, Told, VERSION,
    Value, Written, folded, line_text,
};
use store::{Opening, SqliteStore, Store, now};

/// So many readings are kept one by one. Our own choice: a long boom twice over.
const READINGS: u32 = 400;
/// The house's own promise for one.
const PROMISED_READING: Duration = Duration::from_millis(5);
/// So many lines are folded, and the house's own promise for them.
const LINES: u32 = 100_000;
const PROMISED_FOLD: Duration = Duration::from_secs(1);
/// An hour of a busy day: a line a second. Our own choice.
const HOUR: u32 = 3_600;

fn main() -> Result<(), Box<dyn Error>> {
    let folder = std::env::temp_dir().join(format!("evenswath-keeping-{}", std::process::id()));
    std::fs::create_dir_all(&folder)?;
    let measured = keeping(&folder).and_then(|()| folding());
    std::fs::remove_dir_all(&folder)?;
    measured
}

fn draft(number: u32) -> Draft {
    let entry = Entry::Reading {
        round: RowId::from_bits(1),
        tip: number % 60 + 1,
        value: Value::text(if number.is_multiple_of(7) { "14 fl oz" } else { "14.5 fl oz" }),
    };
    Draft {
        id: LineId::from_bits(u128::from(number)),
        about: About { kind: Kind::Visit, id: ThingId::from_bits(u128::from(number / 200)) },
        at: At { utc_milliseconds: i64::from(number), offset_minutes: -300 },
        version: VERSION,
        written: Written::new(Told::from(entry).text(), u128::from(number).to_be_bytes()),
    }
}

fn opening() -> Opening {
    Opening { notebook: NotebookId::from_bits(1), device: DeviceId::from_bits(2) }
}

/// The middle of the times: a disk has a slow moment now and then.
fn middle(mut times: Vec<Duration>) -> Duration {
    times.sort_unstable();
    times[times.len() / 2]
}

fn keeping(folder: &Path) -> Result<(), Box<dyn Error>> {
    let store = SqliteStore::open(&folder.join("notebook.sqlite"), opening())?;
    let mut times = Vec::new();
    for number in 0..READINGS {
        let start = Instant::now();
        now(store.append(vec![draft(number)]))?;
        times.push(start.elapsed());
    }
    let kept = middle(times);
    // The least: the line's own bytes written to a file and forced to the disk.
    let bytes = line_text(&now(store.lines())?[0]).into_bytes();
    let mut file = std::fs::File::create(folder.join("bare"))?;
    let mut times = Vec::new();
    for _ in 0..READINGS {
        let start = Instant::now();
        file.write_all(&bytes)?;
        file.sync_data()?;
        times.push(start.elapsed());
    }
    let bare = middle(times);
    println!("store_reading_kept\t{}", kept.as_nanos());
    println!("store_bare_write_and_sync\t{}", bare.as_nanos());
    eprintln!(
        "a reading kept in {kept:?}, {:.1} x a bare write and sync of its bytes",
        kept.as_secs_f64() / bare.as_secs_f64()
    );
    let before = memory();
    for number in 0..HOUR {
        now(store.append(vec![draft(1_000_000 + number)]))?;
    }
    eprintln!("memory before and after an hour's lines: {before} and {} kB", memory());
    if kept > PROMISED_READING {
        return Err(format!("a reading takes longer than {PROMISED_READING:?}").into());
    }
    Ok(())
}

fn folding() -> Result<(), Box<dyn Error>> {
    let mut book = Notebook::new(NotebookId::from_bits(1));
    (0..LINES).for_each(|number| {
        book.write(DeviceId::from_bits(2), draft(number));
    });
    let start = Instant::now();
    let visits = folded(&book).visits.len();
    let fold = start.elapsed();
    let start = Instant::now();
    let objects = book
        .lines()
        .filter_map(|line| line.written())
        .filter(|written| serde_json::from_str::<serde_json::Value>(written.text()).is_ok())
        .count();
    let plain = start.elapsed();
    println!("notebook_100000_lines_folded\t{}", fold.as_nanos());
    println!("notebook_100000_entries_read_as_plain_json\t{}", plain.as_nanos());
    eprintln!(
        "{objects} lines folded into {visits} visits in {fold:?}, {:.1} x reading them as plain JSON",
        fold.as_secs_f64() / plain.as_secs_f64()
    );
    if fold > PROMISED_FOLD {
        return Err(format!("{LINES} lines take longer than {PROMISED_FOLD:?}").into());
    }
    Ok(())
}

/// The memory of this process in kB, where the system tells it.
fn memory() -> String {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmRSS:")).unwrap_or("?");
    line.trim().trim_end_matches(" kB").to_string()
}
