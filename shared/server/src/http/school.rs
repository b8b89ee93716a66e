//! The school's card.

use axum::Json;
use axum::extract::{Request, State};
use witnessmark_sync::wire::SchoolCard;

use super::endpoint::{Content, Endpoint, Who};
use super::{HttpFault, Server};

pub(super) fn endpoints() -> Vec<Endpoint> {
    vec![
        Endpoint::get("/v1/school", card)
            .about("Which school this is, and what is needed to trust it.")
            .who(Who::Open)
            .gives(200, "The school's card.", Content::json::<SchoolCard>()),
    ]
}

async fn card(State(server): State<Server>, request: Request) -> Result<Json<SchoolCard>, HttpFault> {
    server.open(request.headers(), request.extensions(), 1)?;
    server.work(|server| server.school().card()).await.map(Json)
}
