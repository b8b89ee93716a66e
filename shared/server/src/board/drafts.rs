//! What somebody prepared here and hasn't signed yet.

use axum::Json;
use axum::extract::State;
use axum::http::{HeaderMap, StatusCode};
use serde::{Deserialize, Serialize};
use witnessmark_app::views::CodeOut;
use witnessmark_core::record::DeviceId;
use witnessmark_sync::wire;

use super::Board;
use super::guest::Guest;
use super::prepare::mine;
use super::typed::Typed;
use crate::ShelfFault;
use crate::http::HttpFault;

/// Something prepared.
#[derive(Serialize)]
pub(super) struct Waiting {
    #[serde(flatten)]
    draft: wire::Draft,
    /// When, unix seconds.
    made: i64,
    code: CodeOut,
}

/// Which one.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Which {
    id: String,
}

pub(super) async fn drafts(
    State(board): State<Board>,
    headers: HeaderMap,
    guest: Guest,
) -> Result<Json<Vec<Waiting>>, HttpFault> {
    let Some((device, _)) = guest.member else { return Ok(Json(Vec::new())) };
    let found = board.work(move |board| board.drafts_of(&device)).await?;
    let waiting = found.into_iter().map(|(draft, made)| {
        Ok(Waiting { code: board.code(&headers, None, Some(draft.id.clone()))?, draft, made })
    });
    waiting.collect::<Result<_, HttpFault>>().map(Json)
}

pub(super) async fn drop_draft(
    State(board): State<Board>,
    guest: Guest,
    Typed(Which { id }): Typed<Which>,
) -> Result<StatusCode, HttpFault> {
    let device = guest.instructor()?.clone();
    if !id.starts_with(&mine(&device)) {
        let hint = "Only who prepared something takes it back.";
        return Err(HttpFault::forbidden("not-yours", "somebody else prepared this", hint));
    }
    let dropped = move |board: &Board| {
        let school = board.server().school();
        school.shelf().draft_drop(school.on_shelf(), &id)
    };
    board.work(dropped).await?;
    Ok(StatusCode::NO_CONTENT)
}

impl Board {
    fn drafts_of(&self, device: &DeviceId) -> Result<Vec<(wire::Draft, i64)>, ShelfFault> {
        let (school, begins) = (self.server().school(), mine(device));
        let mut found = Vec::new();
        for kept in school.shelf().drafts(school.on_shelf())? {
            if !kept.id.starts_with(&begins) {
                continue;
            }
            // It may have been signed in between.
            if let Some(draft) = school.draft(&kept.id)? {
                found.push((draft, kept.made));
            }
        }
        Ok(found)
    }
}
