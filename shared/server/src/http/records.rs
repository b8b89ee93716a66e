//! Taking records.

use axum::Json;
use axum::extract::State;
use axum::http::HeaderMap;
use axum::http::header::CONTENT_ENCODING;
use witnessmark_sync::wire::Pushed;

use super::endpoint::{Content, Endpoint};
use super::{HttpFault, Requester, Server};
use crate::school::MOST;

pub(super) fn endpoints() -> Vec<Endpoint> {
    vec![
        Endpoint::post("/v1/records", records)
            .about(
                "Takes records, one envelope a line, whoever wrote them. What is in the log already is \
                 acknowledged again; what can't be taken is told line by line and keeps nothing else back.",
            )
            .takes(Content::Text("application/jsonl"))
            .gives(200, "What came of each line.", Content::json::<Pushed>()),
    ]
}

async fn records(
    State(server): State<Server>,
    headers: HeaderMap,
    Requester { sender, body, .. }: Requester,
) -> Result<Json<Pushed>, HttpFault> {
    as_it_is(&headers)?;
    if body.is_empty() {
        return Err(HttpFault::malformed("no records were sent", "Send them, one envelope a line."));
    }
    let lines = body.iter().filter(|byte| **byte == b'\n').take(MOST.saturating_add(1)).count();
    if lines > MOST {
        let message = format!("there are more than {MOST} lines");
        return Err(HttpFault::too_large(message, "Send fewer records at once."));
    }
    let pushed = server.work(move |server| server.school().take(&body, &sender)).await?;
    server.metrics().pushed(&pushed);
    Ok(Json(pushed))
}

/// Bodies are taken as they are: a compressed one would be read as damaged records.
pub(super) fn as_it_is(headers: &HeaderMap) -> Result<(), HttpFault> {
    match headers.get(CONTENT_ENCODING) {
        None => Ok(()),
        Some(coding) if coding.as_bytes().eq_ignore_ascii_case(b"identity") => Ok(()),
        Some(_) => Err(HttpFault::media("the body is compressed", "Send it as it is.")),
    }
}
