//! Running a server from a program that knows no asynchronous code: it is opened, then runs until somebody stops it.

use std::io;
use std::net::{IpAddr, Ipv4Addr, SocketAddr, UdpSocket};

use tokio::net::TcpListener;
use tokio::runtime::Runtime;

use crate::listen::serve;
use crate::service::Service;
use crate::tls::Certificate;

/// The port where nothing else is asked for. Our own choice: above 1,023, so that nobody needs rights for it, below 32,768,
/// from where systems hand out ports to others, and none that web servers usually take.
pub const PORT: u16 = 8427;

/// A number set aside for documents (RFC 5737), which nobody has.
const NOBODY: Ipv4Addr = Ipv4Addr::new(192, 0, 2, 1);

/// Why it does not run.
#[derive(Debug, thiserror::Error)]
pub enum RunError {
    /// The port is taken, or not allowed.
    #[error("port {port} cannot be opened: {why}")]
    Port {
        /// The port.
        port: u16,
        /// What the system says.
        why: io::Error,
    },
    /// The system gives no threads.
    #[error("the server cannot be started: {0}")]
    Start(io::Error),
}

/// An open port that nobody answers yet.
#[derive(Debug)]
pub struct Listening {
    runtime: Runtime,
    listener: TcpListener,
    address: SocketAddr,
}

impl Listening {
    /// Where it listens; with the port that the system chose where 0 was asked for.
    #[must_use]
    pub const fn address(&self) -> SocketAddr {
        self.address
    }
}

/// Opens a port.
///
/// *Errors*: it is taken or not allowed; the system gives no threads.
pub fn listen(address: SocketAddr) -> Result<Listening, RunError> {
    let runtime =
        tokio::runtime::Builder::new_multi_thread().enable_all().build().map_err(RunError::Start)?;
    let port = |why| RunError::Port { port: address.port(), why };
    let listener = runtime.block_on(TcpListener::bind(address)).map_err(port)?;
    let address = listener.local_addr().map_err(port)?;
    Ok(Listening { runtime, listener, address })
}

/// Serves until the person at the keyboard or the system asks to stop, then finishes open requests.
pub fn run(service: Service, listening: Listening, certificate: Option<Certificate>) {
    let Listening { runtime, listener, .. } = listening;
    runtime.block_on(serve(service, listener, certificate, asked_to_stop()));
}

/// Ctrl-C, and where there are such signals the one that asks a process to end.
async fn asked_to_stop() {
    let keyboard = async {
        if tokio::signal::ctrl_c().await.is_err() {
            core::future::pending::<()>().await;
        }
    };
    #[cfg(unix)]
    {
        use tokio::signal::unix::{SignalKind, signal};
        let system = async {
            match signal(SignalKind::terminate()) {
                Ok(mut asked) => drop(asked.recv().await),
                Err(_) => core::future::pending().await,
            }
        };
        tokio::select! { () = keyboard => {}, () = system => {} }
    }
    #[cfg(not(unix))]
    keyboard.await;
}

/// The number that this machine has in its network, as a phone would type it; none where it is in none.
#[must_use]
pub fn own_address() -> Option<IpAddr> {
    // Nothing is sent: the system only says which of its numbers it would send from.
    let socket = UdpSocket::bind((Ipv4Addr::UNSPECIFIED, 0)).ok()?;
    socket.connect((NOBODY, PORT)).ok()?;
    let own = socket.local_addr().ok()?.ip();
    (!own.is_unspecified() && !own.is_loopback()).then_some(own)
}
