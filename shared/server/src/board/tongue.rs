//! In which language a page is answered: the first that it asks for and the catalogue has words in.
//!
//! Every request is heard once, before its handler; whatever the handler asks of the copy is then said so.

use axum::extract::Request;
use axum::http::HeaderMap;
use axum::http::header::ACCEPT_LANGUAGE;
use axum::middleware::Next;
use axum::response::Response;

/// Nobody speaks more; a header may be as long as it likes.
const MOST: usize = 8;

tokio::task_local! {
    static HEARD: Tongue;
}

/// The languages of a request, the one liked best first.
#[derive(Clone, Debug, Default)]
pub(super) struct Tongue(Vec<String>);

impl Tongue {
    /// Of the request at hand; none outside of one.
    pub(super) fn of_request() -> Self {
        HEARD.try_with(Clone::clone).unwrap_or_default()
    }

    /// The languages, without their regions.
    pub(super) fn wished(&self) -> &[String] {
        &self.0
    }

    /// RFC 9110 § 12.5.4; browsers list what they like best first, so the weights need not be compared.
    fn read(headers: &HeaderMap) -> Self {
        let text = headers.get(ACCEPT_LANGUAGE).and_then(|value| value.to_str().ok()).unwrap_or_default();
        let language = |part: &str| {
            let (tag, weight) = part.split_once(';').unwrap_or((part, ""));
            let refused = weight.trim().strip_prefix("q=").and_then(|q| q.parse().ok()) == Some(0.0);
            let base = tag.trim().split('-').next().unwrap_or_default().to_ascii_lowercase();
            (!refused && !base.is_empty()).then_some(base)
        };
        Self(text.split(',').filter_map(language).take(MOST).collect())
    }
}

/// Lets a request be answered in its language.
pub(super) async fn heard(request: Request, next: Next) -> Response {
    let tongue = Tongue::read(request.headers());
    HEARD.scope(tongue, next.run(request)).await
}

#[cfg(test)]
mod tests {
    use super::*;

    // The examples of RFC 9110 § 12.5.4 and § 12.4.2, from memory.
    #[test]
    fn languages_are_read_as_browsers_send_them() {
        let read = |text: &'static str| {
            let headers = HeaderMap::from_iter([(ACCEPT_LANGUAGE, text.parse().expect("a value"))]);
            Tongue::read(&headers).0
        };
        assert_eq!(read("da, en-gb;q=0.8, en;q=0.7"), ["da", "en", "en"]);
        assert_eq!(read("de-CH,de;q=0.9,fr;q=0"), ["de", "de"]);
        assert_eq!(read("*"), ["*"]);
        assert!(read("").is_empty());
        assert!(read(";q=1,,").is_empty());
    }
}
