//! Proofs from the log's tree.

use axum::Json;
use axum::extract::rejection::QueryRejection;
use axum::extract::{Query, State};
use serde::Deserialize;
use witnessmark_core::record::Digest;
use witnessmark_sync::wire::Proof;

use super::endpoint::{Content, Count, Endpoint, Form};
use super::{HttpFault, Requester, Server};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Between {
    from: Count,
    to: Count,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Within {
    digest: Digest,
    size: Count,
}

pub(super) fn endpoints() -> Vec<Endpoint> {
    vec![
        Endpoint::get("/v1/proof/consistency", consistency)
            .about("Proves that the longer log goes on from the shorter one (RFC 9162 § 2.1.4).")
            .query("from", true, Form::Count, "The shorter one's length.")
            .query("to", true, Form::Count, "The longer one's length.")
            .gives(200, "The proof.", Content::json::<Proof>()),
        Endpoint::get("/v1/proof/inclusion", inclusion)
            .about("Proves that a record lies in the log (RFC 9162 § 2.1.3).")
            .query("digest", true, Form::Digest, "The record.")
            .query("size", true, Form::Count, "The log's length.")
            .gives(200, "The proof, and the record's number.", Content::json::<Proof>()),
    ]
}

async fn consistency(
    State(server): State<Server>,
    asked: Result<Query<Between>, QueryRejection>,
    _: Requester,
) -> Result<Json<Proof>, HttpFault> {
    let Query(Between { from: Count(from), to: Count(to) }) = asked?;
    let proof = server.work(move |server| server.school().consistency(from, to)).await?;
    proof.map(Json).ok_or_else(|| HttpFault::not_found("the log never had these lengths", HINT))
}

async fn inclusion(
    State(server): State<Server>,
    asked: Result<Query<Within>, QueryRejection>,
    _: Requester,
) -> Result<Json<Proof>, HttpFault> {
    let Query(Within { digest, size: Count(size) }) = asked?;
    let proof = server.work(move |server| server.school().inclusion(digest, size)).await?;
    proof.map(Json).ok_or_else(|| HttpFault::not_found("the log of this length has no such record", HINT))
}

const HINT: &str = "Ask for lengths that a checkpoint of this server names.";
