//! The log: one line an answer, in fields, without anything about a person (see [`crate::front`]).

use std::sync::Arc;

use tracing_subscriber::fmt::MakeWriter;

/// Logs to standard error from now on; where a program logs already it goes on as it does.
pub fn log_to_standard_error() {
    let _ = tracing::subscriber::set_global_default(subscriber(std::io::stderr));
}

/// Logs to a writer while the given work is done on this thread.
pub fn log_to<T>(writer: impl std::io::Write + Send + 'static, work: impl FnOnce() -> T) -> T {
    let writer = Arc::new(std::sync::Mutex::new(writer));
    tracing::subscriber::with_default(subscriber(Shared(writer)), work)
}

fn subscriber<W>(writer: W) -> impl tracing::Subscriber + Send + Sync
where
    W: for<'writer> MakeWriter<'writer> + Send + Sync + 'static,
{
    tracing_subscriber::fmt().with_ansi(false).with_target(false).with_writer(writer).finish()
}

/// A writer that several share.
struct Shared<W>(Arc<std::sync::Mutex<W>>);

impl<W: std::io::Write> std::io::Write for Shared<W> {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        self.0.lock().unwrap_or_else(std::sync::PoisonError::into_inner).write(bytes)
    }

    fn flush(&mut self) -> std::io::Result<()> {
        self.0.lock().unwrap_or_else(std::sync::PoisonError::into_inner).flush()
    }
}

impl<'a, W: std::io::Write + 'a> MakeWriter<'a> for Shared<W> {
    type Writer = Self;

    fn make_writer(&'a self) -> Self {
        Self(Arc::clone(&self.0))
    }
}
