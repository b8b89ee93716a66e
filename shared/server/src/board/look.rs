//! What is shown: the board, a machine, a record, a photo, the code of work that waits for a second look.

use axum::Json;
use axum::body::Bytes;
use axum::extract::{Path, State};
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use witnessmark_app::views::{CodeOut, MachinePage, RecordView};
use witnessmark_core::record::Digest;

use super::Board;
use super::guest::Guest;
use crate::http::HttpFault;

/// What a photo may be. Nothing that a browser would run.
const MEDIA: [&str; 3] = ["image/jpeg", "image/png", "image/webp"];

pub(super) async fn board(State(board): State<Board>, _: Guest) -> Result<Response, HttpFault> {
    let text: Bytes = board.work(|board| board.replica().board(board.server().now())).await?;
    Ok(([(CONTENT_TYPE, "application/json")], text).into_response())
}

pub(super) async fn machine(
    State(board): State<Board>,
    Path(id): Path<String>,
    _: Guest,
) -> Result<Json<MachinePage>, HttpFault> {
    board.work(move |board| board.replica().ask(|app| app.machine(id))).await.map(Json)
}

pub(super) async fn record(
    State(board): State<Board>,
    Path(digest): Path<String>,
    _: Guest,
) -> Result<Json<RecordView>, HttpFault> {
    board.work(move |board| board.replica().ask(|app| app.record(digest))).await.map(Json)
}

pub(super) async fn second_look(
    State(board): State<Board>,
    Path(machine): Path<String>,
    _: Guest,
) -> Result<Json<CodeOut>, HttpFault> {
    board.work(move |board| board.replica().ask(|app| app.second_look_ask(machine))).await.map(Json)
}

pub(super) async fn photo(
    State(board): State<Board>,
    Path(digest): Path<String>,
    _: Guest,
) -> Result<Response, HttpFault> {
    let none =
        || HttpFault::not_found("this photo is not here", "Its author's device will send it when it can.");
    let digest: Digest = digest.parse().map_err(|_| none())?;
    let photo = board.work(move |board| board.server().school().photo_read(digest, 0, usize::MAX)).await?;
    let (media, bytes) = photo.ok_or_else(none)?;
    let media = MEDIA.into_iter().find(|known| **known == media).unwrap_or("application/octet-stream");
    // It never changes, and stays in this browser.
    let headers = [(CONTENT_TYPE, media), (CACHE_CONTROL, "private, max-age=31536000, immutable")];
    Ok((headers, bytes).into_response())
}
