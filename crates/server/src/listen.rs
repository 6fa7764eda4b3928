//! Accepting connections: so many and for so long, with TLS or without, until told to stop; then open requests are
//! finished.

use std::collections::BTreeMap;
use std::net::IpAddr;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;

use axum::Router;
use axum::extract::Request;
use axum::response::Response;
use hyper::body::Incoming;
use hyper::server::conn::http1;
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::server::graceful::{GracefulShutdown, Watcher};
use tokio::io::{AsyncRead, AsyncWrite};
use tokio::net::{TcpListener, TcpStream};
use tokio::task::JoinSet;

use crate::guard::{Carried, Peer, Place};
use crate::limits::Limits;
use crate::service::Service;
use crate::tls::Certificate;

/// The most headers of a request. Our own choice: browsers send some twenty.
const MOST_HEADERS: usize = 64;
/// The most bytes of a request's head. Our own choice: more than any browser sends; hyper takes no less than 8 KiB.
const HEAD_BYTES: usize = 32 * 1024;
/// How long to wait when the system has no room for another connection. Our own choice.
const NO_ROOM: Duration = Duration::from_millis(100);

/// Serves until `stop` is done, then finishes open requests within [`Limits::stop_time`].
pub async fn serve(
    service: Service,
    listener: TcpListener,
    certificate: Option<Certificate>,
    stop: impl Future<Output = ()>,
) {
    let limits = *service.limits();
    let router = service.router();
    let graceful = GracefulShutdown::new();
    let mut open = JoinSet::new();
    let from_each = FromEach::default();
    let mut stop = std::pin::pin!(stop);
    loop {
        let accepted = tokio::select! {
            () = &mut stop => break,
            Some(_) = open.join_next(), if !open.is_empty() => continue,
            accepted = listener.accept() => accepted,
        };
        let Ok((stream, address)) = accepted else {
            tokio::time::sleep(NO_ROOM).await;
            continue;
        };
        let carried = if certificate.is_some() { Carried::Tls } else { Carried::Plain };
        let peer = Peer { address: address.ip().to_canonical(), carried };
        let (most, most_from_one) = limits.connections;
        // Behind a proxy everybody comes from here, so this machine has no bound of its own.
        let most_from_here = if peer.place() == Place::Here { most } else { most_from_one };
        let Some(counted) = from_each.count(peer.address, most_from_here).filter(|_| open.len() < most)
        else {
            tracing::warn!("too many connections; one was closed");
            continue;
        };
        let asked = Asked { router: router.clone(), peer };
        let (watcher, certificate) = (graceful.watcher(), certificate.clone());
        open.spawn(async move {
            let _counted = counted;
            connection(stream, certificate, asked, watcher, limits).await;
        });
    }
    drop(listener);
    tracing::info!(open = open.len(), "stopping");
    if tokio::time::timeout(limits.stop_time, graceful.shutdown()).await.is_err() {
        tracing::warn!("some requests were not done in time");
    }
    open.shutdown().await;
}

async fn connection(
    stream: TcpStream,
    certificate: Option<Certificate>,
    asked: Asked,
    watcher: Watcher,
    limits: Limits,
) {
    // Answers are written whole; waiting for more to send would only hold them up. Where it cannot be set they still go.
    let _ = stream.set_nodelay(true);
    match certificate {
        None => requests(stream, asked, watcher, limits).await,
        Some(certificate) => {
            let shaking = certificate.acceptor().accept(stream);
            match tokio::time::timeout(limits.head_time, shaking).await {
                Ok(Ok(stream)) => requests(stream, asked, watcher, limits).await,
                Ok(Err(_)) | Err(_) => tracing::debug!("a connection did not become one of TLS"),
            }
        }
    }
}

async fn requests(
    stream: impl AsyncRead + AsyncWrite + Unpin + Send + 'static,
    asked: Asked,
    watcher: Watcher,
    limits: Limits,
) {
    let connection = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(limits.head_time)
        .max_headers(MOST_HEADERS)
        .max_buf_size(HEAD_BYTES)
        .serve_connection(TokioIo::new(stream), asked);
    // Errors here are the other end's: it went away, or sent what is no HTTP, which hyper has answered.
    let _ = tokio::time::timeout(limits.connection_time, watcher.watch(connection)).await;
}

/// What is asked, and by whom.
#[derive(Clone)]
struct Asked {
    router: Router,
    peer: Peer,
}

impl hyper::service::Service<Request<Incoming>> for Asked {
    type Response = Response;
    type Error = core::convert::Infallible;
    type Future = <Router as tower_service::Service<Request<Incoming>>>::Future;

    fn call(&self, mut request: Request<Incoming>) -> Self::Future {
        request.extensions_mut().insert(self.peer);
        // A router is always ready.
        tower_service::Service::call(&mut self.router.clone(), request)
    }
}

/// How many connections there are from each place.
#[derive(Clone, Default)]
struct FromEach(Arc<Mutex<BTreeMap<IpAddr, usize>>>);

/// One connection, counted as long as it lives.
struct Counted {
    all: FromEach,
    address: IpAddr,
}

impl FromEach {
    fn count(&self, address: IpAddr, most: usize) -> Option<Counted> {
        let mut counts = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let count = counts.entry(address).or_default();
        if *count >= most {
            return None;
        }
        *count += 1;
        Some(Counted { all: self.clone(), address })
    }
}

impl Drop for Counted {
    fn drop(&mut self) {
        let mut counts = self.all.0.lock().unwrap_or_else(PoisonError::into_inner);
        let left = counts.get(&self.address).map_or(0, |count| count.saturating_sub(1));
        if left == 0 {
            counts.remove(&self.address);
        } else {
            counts.insert(self.address, left);
        }
    }
}
