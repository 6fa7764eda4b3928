//! A server on a free port of this machine, stopped when it is let go.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]
#![allow(dead_code, reason = "each test takes what it needs")]

use std::net::SocketAddr;
use std::sync::mpsc;
use std::thread::JoinHandle;

use server::{Certificate, Service, serve};
use tokio::sync::oneshot;

/// A running server.
pub struct Served {
    pub address: SocketAddr,
    stop: Option<oneshot::Sender<()>>,
    thread: Option<JoinHandle<()>>,
}

impl Served {
    /// Starts one.
    pub fn start(service: Service) -> Self {
        Self::start_with(service, None)
    }

    /// Starts one with a certificate.
    pub fn start_with(service: Service, certificate: Option<Certificate>) -> Self {
        let (say, hear) = mpsc::channel();
        let (stop, stopped) = oneshot::channel::<()>();
        let thread = std::thread::spawn(move || {
            let runtime =
                tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
            runtime.block_on(async {
                let listener = tokio::net::TcpListener::bind("127.0.0.1:0").await.unwrap();
                say.send(listener.local_addr().unwrap()).unwrap();
                serve(service, listener, certificate, async { drop(stopped.await) }).await;
            });
        });
        Self { address: hear.recv().unwrap(), stop: Some(stop), thread: Some(thread) }
    }

    /// Asks it to stop, and does not wait.
    pub fn ask_to_stop(&mut self) {
        if let Some(stop) = self.stop.take() {
            let _ = stop.send(());
        }
    }

    /// Waits until it has stopped.
    pub fn wait(&mut self) {
        if let Some(thread) = self.thread.take() {
            thread.join().unwrap();
        }
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        self.ask_to_stop();
        self.wait();
    }
}
