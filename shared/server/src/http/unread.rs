//! Bodies of requests that are refused before they are read.

use std::time::Duration;

use axum::body::Body;
use futures_util::StreamExt;

use super::LARGEST;

/// How long such a body is listened to.
const PATIENCE: Duration = Duration::from_secs(5);

/// Lets a body run out, keeping nothing of it: a connection that is cut while the other end is still
/// sending takes the answer with it (RFC 9112 § 9.6), and whoever was refused would never read why.
pub(super) async fn let_go(body: Body) {
    let run_out = async {
        let mut left = LARGEST;
        let mut parts = body.into_data_stream();
        while let Some(Ok(part)) = parts.next().await {
            match left.checked_sub(part.len()) {
                Some(less) => left = less,
                None => return,
            }
        }
    };
    // Who is slower than that has had its chance.
    let _ = tokio::time::timeout(PATIENCE, run_out).await;
}
