//! The app's faults as the board tells them.

use axum::http::StatusCode;
use witnessmark_app::{App, Fault};

use crate::ShelfFault;
use crate::http::HttpFault;

/// A fault in words, with the status that suits it.
pub(super) fn told(app: &App, fault: &Fault) -> HttpFault {
    let status = match fault.kind {
        "no-such" | "no-photo" | "life-no-such" | "life-no-looks" => StatusCode::NOT_FOUND,
        "not-entitled" | "not-entitled-owner" | "publish-role" => StatusCode::FORBIDDEN,
        "internal" | "catalogue" | "disk" | "disk-full" | "database-damaged" | "database-busy" => {
            return ShelfFault::Other(fault.to_string()).into();
        }
        _ => StatusCode::UNPROCESSABLE_ENTITY,
    };
    let view = app.show(fault);
    HttpFault::new(status, fault.kind, view.message, &view.hint)
}
