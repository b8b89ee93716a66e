//! What a phone does for the board: it fetches what was prepared, and confirms who signs in.

use axum::Json;
use axum::extract::rejection::PathRejection;
use axum::extract::{Path, State};
use axum::http::StatusCode;
use witnessmark_sync::wire::Draft;

use super::endpoint::{Content, Endpoint, Form};
use super::{HttpFault, Requester, Server};

pub(super) fn endpoints() -> Vec<Endpoint> {
    vec![
        Endpoint::get("/v1/draft/{id}", draft)
            .about("What somebody prepared at the board, to be signed by a device that may.")
            .in_path("id", Form::Text("^[0-9A-Za-z_-]{1,64}$"), "Its name, from its code.")
            .gives(200, "The draft.", Content::json::<Draft>()),
        Endpoint::post("/v1/desk/{challenge}", confirm)
            .about("Signs a page of the board in. Signed with the device's own key, not its courier's.")
            .in_path("challenge", Form::Text("^[0-9A-Za-z_-]{1,64}$"), "The page's challenge, from its code.")
            .gives(204, "The page is signed in.", Content::Nothing),
    ]
}

async fn draft(
    State(server): State<Server>,
    id: Result<Path<String>, PathRejection>,
    _: Requester,
) -> Result<Json<Draft>, HttpFault> {
    let Path(id) = id?;
    let draft = server.work(move |server| server.school().draft(&id)).await?;
    let hint = "Open the code that the board shows now.";
    draft.map(Json).ok_or_else(|| HttpFault::not_found("this was not prepared, or is gone", hint))
}

async fn confirm(
    State(server): State<Server>,
    challenge: Result<Path<String>, PathRejection>,
    requester: Requester,
) -> Result<StatusCode, HttpFault> {
    let Path(challenge) = challenge?;
    if !requester.own_key {
        let hint = "Sign it with the device's own key: its holder gives the PIN.";
        return Err(HttpFault::forbidden("courier", "a courier key signs nobody in", hint));
    }
    let confirm = move |server: &Server| {
        let (school, now) = (server.school(), server.now());
        let gone = || {
            HttpFault::not_found(
                "this code is not known, or too old",
                "Open the code that the board shows now.",
            )
        };
        school.shelf().challenge(school.on_shelf(), &challenge, now)?.ok_or_else(gone)?;
        let confirmed =
            school.shelf().challenge_confirm(school.on_shelf(), &challenge, requester.device(), now)?;
        let used = || {
            let hint = "Load the board's page anew and open the code that it shows then.";
            HttpFault::new(StatusCode::CONFLICT, "used", "this code was used already", hint)
        };
        if confirmed { Ok(()) } else { Err(used()) }
    };
    server.work(confirm).await?;
    Ok(StatusCode::NO_CONTENT)
}
