//! The log, page by page.

use axum::extract::rejection::QueryRejection;
use axum::extract::{Query, State};
use axum::http::header::CONTENT_TYPE;
use axum::response::{IntoResponse, Response};
use serde::Deserialize;
use witnessmark_sync::wire::LogLine;

use super::endpoint::{Content, Count, Endpoint, Form};
use super::{HttpFault, Requester, Server};
use crate::school::MOST;
use crate::shelf::Line;

/// Most bytes of a page, as they are before compression.
const BYTES: usize = 1024 * 1024;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Asked {
    from: Count,
    own: Option<Own>,
}

#[derive(Clone, Copy, PartialEq, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Own {
    Whole,
}

pub(super) fn endpoints() -> Vec<Endpoint> {
    vec![
        Endpoint::get("/v1/log", log)
            .about(
                "A page of the log: one JSON object a line, in the log's order. A line is a record's \
                 envelope, or {\"have\": digest} for a record that the asking device signed itself. \
                 The server decides how long a page is; past the log's end it is empty.",
            )
            .query("from", true, Form::Count, "The number of the first record wanted, from 0.")
            .query("own", false, Form::Words(&["whole"]), "Sends the asking device's own records too.")
            .gives(200, "The page.", Content::Text("application/jsonl")),
    ]
}

async fn log(
    State(server): State<Server>,
    asked: Result<Query<Asked>, QueryRejection>,
    requester: Requester,
) -> Result<Response, HttpFault> {
    let Query(Asked { from: Count(from), own }) = asked?;
    let page = server
        .work(move |server| {
            let school = server.school();
            let lines = school.shelf().log(school.on_shelf(), from, MOST, BYTES)?;
            let mut page = Vec::new();
            for line in lines {
                let shown = shown(line, own, &requester);
                serde_json::to_writer(&mut page, &shown).map_err(HttpFault::internal)?;
                page.push(b'\n');
            }
            Ok::<_, HttpFault>(page)
        })
        .await?;
    Ok(([(CONTENT_TYPE, "application/jsonl")], page).into_response())
}

fn shown(line: Line, own: Option<Own>, requester: &Requester) -> LogLine {
    if own.is_none() && line.device == *requester.device() {
        return LogLine::Have { have: line.digest };
    }
    LogLine::Whole(line.envelope)
}
