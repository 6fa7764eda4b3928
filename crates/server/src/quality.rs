//! How much one thing is wanted over another: the `q` of `Accept-…` headers (RFC 9110, 12.4.2).

/// A thing and how much it is wanted, from 0 (not at all) to 1. What cannot be read is not wanted.
pub fn split(range: &str) -> (&str, f32) {
    let mut parts = range.split(';').map(str::trim);
    let thing = parts.next().unwrap_or_default();
    let wanted = parts
        .find_map(|part| part.strip_prefix("q=").or_else(|| part.strip_prefix("Q=")))
        .map_or(1.0, |wanted| wanted.parse().unwrap_or(0.0));
    (thing, if (0.0..=1.0).contains(&wanted) { wanted } else { 0.0 })
}
