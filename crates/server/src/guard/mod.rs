//! Who is let in: how often, under which name, from which page, with which secret.

mod authority;
mod pace;

use std::net::IpAddr;
use std::sync::Arc;

use axum::extract::{Request, State};
use axum::http::{HeaderMap, Uri, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};

pub use authority::plain_name;
pub use pace::Paces;

use crate::problem::Problem;
use crate::reach::Reach;
use crate::secret::Match;
use crate::service::Inside;
use authority::{Authority, Scheme};

/// Where a request comes from. Whoever accepts connections puts it into the request.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Peer {
    /// The address of the other end.
    pub address: IpAddr,
    /// How the bytes came.
    pub carried: Carried,
}

/// How the bytes came.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Carried {
    /// As they are.
    Plain,
    /// Over TLS.
    Tls,
}

impl Peer {
    /// Whether the other end is this machine.
    #[must_use]
    pub fn place(&self) -> Place {
        if self.address.to_canonical().is_loopback() { Place::Here } else { Place::Network }
    }
}

/// Where the other end is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// On this machine.
    Here,
    /// On the network.
    Network,
}

/// What a proxy says of whom it asks for.
const OF_PROXIES: [&str; 5] = ["forwarded", "via", "x-forwarded-for", "x-forwarded-host", "x-real-ip"];

/// The peer of a request. One that nobody put in is nobody's: the network's, never this machine.
pub fn peer_of(request: &Request) -> Peer {
    let nobody = Peer { address: IpAddr::V6(core::net::Ipv6Addr::UNSPECIFIED), carried: Carried::Plain };
    request.extensions().get::<Peer>().copied().unwrap_or(nobody)
}

/// Lets a request through, or answers with what is wrong with it.
pub async fn let_in(State(inside): State<Arc<Inside>>, request: Request, next: Next) -> Response {
    match checked(&inside, &request) {
        Ok(()) => next.run(request).await,
        Err(problem) => problem.into_response(),
    }
}

fn checked(inside: &Inside, request: &Request) -> Result<(), Problem> {
    let peer = peer_of(request);
    let (headers, uri) = (request.headers(), request.uri());
    inside.paces.ask(peer, 1)?;
    let host = host_of(headers, uri, &inside.reach)?;
    if inside.reach.secret().is_none() && through_proxy(headers) {
        return Err(Problem::Proxy);
    }
    same_site(headers, &host, peer, &inside.reach)?;
    if is_api(uri.path()) { knows_secret(inside, peer, headers) } else { Ok(()) }
}

/// Whether a path is one of the API.
pub fn is_api(path: &str) -> bool {
    path == "/api" || path.starts_with("/api/")
}

/// The name that this server is asked under: exactly one, and one that it goes by. A name of somebody else's that was
/// pointed at this machine (DNS rebinding) is none.
fn host_of(headers: &HeaderMap, uri: &Uri, reach: &Reach) -> Result<Authority, Problem> {
    let mut hosts = headers.get_all(header::HOST).iter();
    let (Some(host), None) = (hosts.next(), hosts.next()) else { return Err(Problem::Host) };
    let host = host.to_str().ok().and_then(Authority::parse).ok_or(Problem::Host)?;
    // An address written out in full comes before `Host` (RFC 9112, 3.2.2); both must be right, so that neither hides one.
    if let Some(written) = uri.authority() {
        let written = Authority::parse(written.as_str()).ok_or(Problem::Host)?;
        if written != host {
            return Err(Problem::Host);
        }
    }
    let named = reach.names().iter().any(|name| name.eq_ignore_ascii_case(&host.name));
    // No page gets a number of its own to point elsewhere: numbers are safe, and how a phone finds the laptop.
    let number = matches!(reach, Reach::Network { .. }) && host.is_number();
    if named || number || host.is_here() { Ok(host) } else { Err(Problem::Host) }
}

fn through_proxy(headers: &HeaderMap) -> bool {
    OF_PROXIES.iter().any(|name| headers.contains_key(*name))
}

/// Pages of other sites may not ask. A browser says whose page it is: by `Origin` when it writes, and by
/// `Sec-Fetch-Site` nearly always; links from elsewhere to the app itself are fine.
fn same_site(headers: &HeaderMap, host: &Authority, peer: Peer, reach: &Reach) -> Result<(), Problem> {
    let mut origins = headers.get_all(header::ORIGIN).iter();
    if let Some(origin) = origins.next() {
        let (scheme, from) = origin.to_str().ok().and_then(authority::origin).ok_or(Problem::Origin)?;
        let behind_proxy = matches!(reach, Reach::BehindProxy { .. });
        let ours = match peer.carried {
            Carried::Tls => scheme == Scheme::Https,
            // A proxy speaks HTTPS to the world and plain HTTP to us.
            Carried::Plain => scheme == Scheme::Http || behind_proxy,
        };
        if !ours || from.with_port(scheme) != host.with_port(scheme) || origins.next().is_some() {
            return Err(Problem::Origin);
        }
    }
    let site = headers.get("sec-fetch-site").map(|site| site.as_bytes());
    let mode = headers.get("sec-fetch-mode").map(|mode| mode.as_bytes());
    match site {
        None | Some(b"same-origin" | b"none") => Ok(()),
        Some(_) if mode == Some(b"navigate") && !headers.contains_key(header::ORIGIN) => Ok(()),
        Some(_) => Err(Problem::Origin),
    }
}

fn knows_secret(inside: &Inside, peer: Peer, headers: &HeaderMap) -> Result<(), Problem> {
    let Some(secret) = inside.reach.secret() else { return Ok(()) };
    let mut given = headers.get_all(header::AUTHORIZATION).iter();
    let Some(first) = given.next() else { return Err(Problem::SecretMissing) };
    let text = first.to_str().unwrap_or_default();
    let (kind, token) = text.split_once(' ').unwrap_or_default();
    let right = kind.eq_ignore_ascii_case("Bearer") && secret.is(token) == Match::Yes;
    if right && given.next().is_none() {
        return Ok(());
    }
    // Where even that is too much, it is told as too many: tries are not worth their answer then.
    inside.paces.ask(peer, inside.limits.wrong_secret_costs)?;
    Err(Problem::SecretWrong)
}

/// Whether a request was made on this machine, by a name of this machine, and through no proxy.
pub fn made_here(request: &Request) -> Place {
    let host = request.headers().get(header::HOST).and_then(|host| host.to_str().ok());
    let by_name = host.and_then(Authority::parse).is_some_and(|host| host.is_here());
    if by_name && !through_proxy(request.headers()) { peer_of(request).place() } else { Place::Network }
}
