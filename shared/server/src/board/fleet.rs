//! What all looks tell together: how long parts last, what the lists' points are worth, how people look.

use axum::Json;
use axum::extract::rejection::QueryRejection;
use axum::extract::{Path, Query, State};
use serde::Deserialize;
use witnessmark_app::App;
use witnessmark_app::views::{LifePart, LifeView, ListWorth, LookingReport};
use witnessmark_core::record::Role;

use super::Board;
use super::guest::Guest;
use crate::http::HttpFault;

/// What is asked of one type of component.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Asked {
    /// The chance of an unseen failure that is borne.
    chance: Option<f64>,
    /// The interval in force, hours.
    in_force: Option<f64>,
}

pub(super) async fn lives(State(board): State<Board>, _: Guest) -> Result<Json<Vec<LifePart>>, HttpFault> {
    board.work(|board| board.replica().ask(App::life_parts)).await.map(Json)
}

pub(super) async fn life(
    State(board): State<Board>,
    Path(component): Path<String>,
    _: Guest,
    asked: Result<Query<Asked>, QueryRejection>,
) -> Result<Json<LifeView>, HttpFault> {
    let Query(Asked { chance, in_force }) = asked?;
    board.work(move |board| board.replica().ask(|app| app.life(component, chance, in_force))).await.map(Json)
}

pub(super) async fn worth(State(board): State<Board>, _: Guest) -> Result<Json<ListWorth>, HttpFault> {
    board.work(|board| board.replica().ask(App::list_worth)).await.map(Json)
}

/// How people look is between each of them and who teaches: on a screen that others pass by, for a page
/// that an instructor's device signed in.
pub(super) async fn looking(
    State(board): State<Board>,
    guest: Guest,
) -> Result<Json<LookingReport>, HttpFault> {
    let Some((device, Role::Instructor)) = guest.member else {
        let hint = "Each sees how they look on their own device; an instructor signs in here for all.";
        return Err(HttpFault::forbidden(
            "looking-instructors",
            "only an instructor sees here how people look",
            hint,
        ));
    };
    board.work(move |board| board.replica().ask(|app| app.looking_for(&device))).await.map(Json)
}
