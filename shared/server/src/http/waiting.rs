//! Asking to be admitted, and who asks.

use axum::Json;
use axum::body::Bytes;
use axum::extract::{FromRequest, Request, State};
use axum::http::StatusCode;
use witnessmark_sync::wire::WaitingDevice;

use super::endpoint::{Content, Endpoint, Who};
use super::records::as_it_is;
use super::unread::let_go;
use super::{HttpFault, Requester, Server};
use crate::school::Introduced;

/// Two short records.
const LARGEST: usize = 16 * 1024;
/// Anybody may ask, and each time something is kept: that counts as so many requests.
const COST: u32 = 20;

pub(super) fn endpoints() -> Vec<Endpoint> {
    vec![
        Endpoint::post("/v1/waiting", introduce)
            .about(
                "A device asks to be admitted: it shows its member record and its word that it joins \
                 (school-joined), one envelope a line.",
            )
            .who(Who::Open)
            .takes(Content::Text("application/jsonl"))
            .gives(200, "The root has admitted it; its records are in the log.", Content::Nothing)
            .gives(202, "It waits.", Content::Nothing)
            .at_most(LARGEST),
        Endpoint::get("/v1/waiting", waiting)
            .about("Who waits, longest first. For the school's root only.")
            .gives(200, "Those who wait.", Content::json::<Vec<WaitingDevice>>()),
    ]
}

async fn introduce(State(server): State<Server>, request: Request) -> Result<StatusCode, HttpFault> {
    let may = server.open(request.headers(), request.extensions(), COST);
    if let Err(fault) = may.and_then(|()| as_it_is(request.headers())) {
        let_go(request.into_body()).await;
        return Err(fault);
    }
    let body = Bytes::from_request(request, &server).await?;
    match server.work(move |server| server.school().introduce(&body, server.now())).await? {
        Introduced::In => Ok(StatusCode::OK),
        Introduced::Waits => Ok(StatusCode::ACCEPTED),
        Introduced::No(why) => {
            Err(HttpFault::malformed(why, "Send the device's member record and its school-joined record."))
        }
    }
}

async fn waiting(
    State(server): State<Server>,
    requester: Requester,
) -> Result<Json<Vec<WaitingDevice>>, HttpFault> {
    if server.school().members().root() != Some(requester.device()) {
        let hint = "Only the device that admits members sees who waits.";
        return Err(HttpFault::forbidden("not-the-root", "this device is not the school's root", hint));
    }
    server.work(|server| server.school().waiting(server.now())).await.map(Json)
}
