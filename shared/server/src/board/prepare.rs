//! Preparing what an instructor's device then signs: a deferral, a publication.

use axum::Json;
use axum::extract::State;
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};
use serde::{Deserialize, Serialize};
use witnessmark_app::views::{CodeOut, PublishFile, PublishPreview};
use witnessmark_core::record::DeviceId;
use witnessmark_sync::wire::Draft;

use super::guest::Guest;
use super::typed::Typed;
use super::{Board, secret};
use crate::http::HttpFault;

/// A deferral, as the page has it.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Deferral {
    machine: String,
    point: String,
    until_hours: Option<f64>,
    until_flights: Option<u32>,
    until_date: Option<String>,
    condition: String,
    reason: String,
}

/// Files to be published, as the page has them.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Publication {
    title: String,
    files: Vec<PublishFile>,
    note: String,
    /// Whether they are only to be looked at.
    only_preview: bool,
}

/// What waits to be signed.
#[derive(Serialize)]
struct Prepared {
    id: String,
    code: CodeOut,
}

/// What became of files: every fault and change, and what waits to be signed.
#[derive(Serialize)]
struct Published {
    preview: PublishPreview,
    prepared: Option<Prepared>,
}

pub(super) async fn deferral(
    State(board): State<Board>,
    headers: HeaderMap,
    guest: Guest,
    Typed(asked): Typed<Deferral>,
) -> Result<Response, HttpFault> {
    let device = guest.instructor()?.clone();
    let prepared = board
        .work(move |board| {
            let (machine, kind, body) = board.replica().ask(|app| {
                app.prepare_deferral(
                    &device,
                    &asked.machine,
                    &asked.point,
                    asked.until_hours,
                    asked.until_flights,
                    asked.until_date,
                    &asked.condition,
                    &asked.reason,
                )
            })?;
            board.keep(&headers, &device, Some(machine), kind, body)
        })
        .await?;
    Ok(Json(prepared).into_response())
}

pub(super) async fn publication(
    State(board): State<Board>,
    headers: HeaderMap,
    guest: Guest,
    Typed(asked): Typed<Publication>,
) -> Result<Response, HttpFault> {
    let device = guest.instructor()?.clone();
    let Publication { title, files, note, only_preview } = asked;
    let published = board
        .work(move |board| {
            let preview = board.replica().ask(|app| app.publish_preview(title.clone(), files.clone()))?;
            if only_preview || !preview.faults.is_empty() {
                return Ok::<_, HttpFault>(Published { preview, prepared: None });
            }
            let (kind, body) =
                board.replica().ask(|app| app.prepare_publication(&device, &title, &files, &note))?;
            let prepared = Some(board.keep(&headers, &device, None, kind, body)?);
            Ok(Published { preview, prepared })
        })
        .await?;
    let bad = !only_preview && !published.preview.faults.is_empty();
    let status = if bad { StatusCode::UNPROCESSABLE_ENTITY } else { StatusCode::OK };
    Ok((status, Json(published)).into_response())
}

/// How the names of a device's drafts begin.
pub(super) fn mine(device: &DeviceId) -> String {
    format!("{}-", device.0.chars().take(16).collect::<String>())
}

impl Board {
    /// Keeps a draft of this device's holder, and makes its code.
    fn keep(
        &self,
        headers: &HeaderMap,
        device: &DeviceId,
        machine: Option<uuid::Uuid>,
        kind: String,
        body: serde_json::Value,
    ) -> Result<Prepared, HttpFault> {
        let secret = secret()?;
        let id = format!("{}{}", mine(device), secret.get(..32).unwrap_or_default());
        let code = self.code(headers, None, Some(id.clone()))?;
        self.server().school().prepare(Draft { id: id.clone(), machine, kind, body }, self.server().now())?;
        Ok(Prepared { id, code })
    }
}
