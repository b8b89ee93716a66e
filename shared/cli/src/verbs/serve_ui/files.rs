//! The built UI, embedded.

use axum::http::header::CONTENT_TYPE;
use axum::response::{IntoResponse, Response};
use include_dir::{Dir, include_dir};

static UI: Dir<'static> = include_dir!("$OUT_DIR/ui");

/// Whether the UI was built when this program was.
pub fn are_there() -> bool {
    UI.get_file("index.html").is_some()
}

/// The bytes of a file of it.
pub fn bytes(path: &str) -> Option<&'static [u8]> {
    UI.get_file(path).map(include_dir::File::contents)
}

/// The file at a path of the address.
pub fn get(path: &str) -> Option<Response> {
    let path = match path.trim_start_matches('/') {
        "" => "index.html",
        path => path,
    };
    let file = UI.get_file(path)?;
    Some(([(CONTENT_TYPE, media(path))], file.contents()).into_response())
}

fn media(path: &str) -> &'static str {
    match path.rsplit('.').next().unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "woff2" => "font/woff2",
        "json" | "webmanifest" => "application/json",
        _ => "application/octet-stream",
    }
}
