//! Cookies: out of reach of scripts, sent to this server only, and only from its own pages.

use axum::http::HeaderMap;
use axum::http::header::COOKIE;

/// A session, once signed in.
pub(super) const SESSION: &str = "witnessmark-desk";
/// A page that waits to be signed in.
pub(super) const PAGE: &str = "witnessmark-page";

/// A cookie's name as it is sent: bound to this very host where TLS allows that.
fn named(name: &str, secure: bool) -> String {
    if secure { format!("__Host-{name}") } else { name.to_owned() }
}

/// What sets a cookie for so many seconds; none: takes it away.
pub(super) fn set(name: &str, value: &str, seconds: i64, secure: bool) -> String {
    let only = if secure { "; Secure" } else { "" };
    let name = named(name, secure);
    format!("{name}={value}; Path=/; HttpOnly; SameSite=Strict; Max-Age={seconds}{only}")
}

/// What the browser shows under a name.
pub(super) fn get(headers: &HeaderMap, name: &str, secure: bool) -> Option<String> {
    let name = named(name, secure);
    let cookies = headers.get_all(COOKIE).iter().filter_map(|cookies| cookies.to_str().ok());
    cookies
        .flat_map(|cookies| cookies.split(';'))
        .filter_map(|cookie| cookie.trim().split_once('='))
        .find_map(|(named, value)| (named == name).then(|| value.to_owned()))
}
