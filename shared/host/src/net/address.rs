//! A server's address, as a person types it.

use std::net::IpAddr;

use reqwest::Url;
use witnessmark_app::Fault;

/// Says that unencrypted connections to other machines are meant: for a closed network, or for tests.
const PLAIN: &str = "WITNESSMARK_PLAIN_HTTP";

/// The address as it is kept: scheme, host and port, nothing behind them.
///
/// # Errors
/// [`Fault`]: no such address; one that would be asked unencrypted.
pub(super) fn normal(typed: &str) -> Result<String, Fault> {
    let address = read(typed)?;
    if may_be_asked(&address) {
        Ok(address)
    } else {
        Err(Fault::new("server-plain").text("address", address))
    }
}

/// The same for a server's own public address: whether it is encrypted is its own affair.
///
/// # Errors
/// [`Fault`]: no such address.
pub fn read(typed: &str) -> Result<String, Fault> {
    let typed = typed.trim();
    let bad = || Fault::new("server-address").text("address", typed);
    let whole = if typed.contains("://") { typed.to_owned() } else { format!("https://{typed}") };
    let url = Url::parse(&whole).map_err(|_| bad())?;
    let bare = url.username().is_empty()
        && url.password().is_none()
        && url.path() == "/"
        && url.query().is_none()
        && url.fragment().is_none();
    if !bare || !matches!(url.scheme(), "http" | "https") || url.host_str().is_none() {
        return Err(bad());
    }
    Ok(url.origin().ascii_serialization())
}

/// Whether what goes there is encrypted, or stays on this machine.
pub(super) fn may_be_asked(address: &str) -> bool {
    let Ok(url) = Url::parse(address) else { return false };
    match url.scheme() {
        "https" => true,
        "http" => on_this_machine(&url) || std::env::var_os(PLAIN).is_some_and(|value| value == "1"),
        _ => false,
    }
}

fn on_this_machine(url: &Url) -> bool {
    let host = url.host_str().unwrap_or_default().trim_matches(['[', ']']);
    host == "localhost" || host.parse().is_ok_and(|ip: IpAddr| ip.is_loopback())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn kept(typed: &str) -> Result<String, &'static str> {
        normal(typed).map_err(|fault| fault.kind)
    }

    #[test]
    fn an_address_is_kept_in_one_form() {
        for typed in
            ["school.example", " https://school.example/ ", "https://School.Example:443", "SCHOOL.example/"]
        {
            assert_eq!(kept(typed).as_deref(), Ok("https://school.example"), "{typed}");
        }
        assert_eq!(kept("school.example:8443").as_deref(), Ok("https://school.example:8443"));
        assert_eq!(kept("http://127.0.0.1:7430/").as_deref(), Ok("http://127.0.0.1:7430"));
        assert_eq!(kept("http://[::1]:7430").as_deref(), Ok("http://[::1]:7430"));
        assert_eq!(kept("http://localhost").as_deref(), Ok("http://localhost"));
    }

    #[test]
    fn what_is_no_address_is_refused() {
        let bad = ["", "  ", "ftp://school.example", "https://", "https://a@school.example", "two words"];
        for typed in bad.into_iter().chain(["school.example/path", "school.example?q", "school.example#f"]) {
            assert_eq!(kept(typed), Err("server-address"), "{typed}");
        }
    }

    #[test]
    fn nothing_goes_unencrypted_to_another_machine() {
        for typed in [
            "http://school.example",
            "http://192.0.2.7:80",
            "http://127.0.0.1.example",
            "http://[2001:db8::1]",
        ] {
            assert_eq!(kept(typed), Err("server-plain"), "{typed}");
        }
    }
}
