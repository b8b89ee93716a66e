//! What a page is told before anything else: of which school, who is signed in, and what that allows.

use axum::Json;
use axum::extract::{Request, State};
use serde::Serialize;
use witnessmark_app::App;
use witnessmark_core::record::Role;

use super::guest::Guest;
use super::{Board, passphrase};
use crate::http::HttpFault;

/// The page's place.
#[derive(Serialize)]
pub(super) struct Place {
    /// The school's name.
    school: String,
    /// Whether it exists only in the demonstration.
    invented: bool,
    /// The language of the texts.
    language: String,
    /// Cautions that hold always.
    cautions: Vec<String>,
    /// Whether a passphrase is set.
    passphrase: bool,
    /// Who is signed in.
    signed_in: Option<SignedIn>,
}

#[derive(Serialize)]
struct SignedIn {
    /// The person; none by passphrase.
    name: Option<String>,
    /// As what.
    role: Option<Role>,
    /// Whether they may prepare what they then sign.
    may_prepare: bool,
    /// Until when, unix seconds.
    until: i64,
}

pub(super) async fn session(State(board): State<Board>, request: Request) -> Result<Json<Place>, HttpFault> {
    board.server().open(request.headers(), request.extensions(), 1)?;
    let guest = board.shown_by(request.headers()).await?;
    board.work(move |board| board.place(guest.as_ref())).await.map(Json)
}

impl Board {
    fn place(&self, guest: Option<&Guest>) -> Result<Place, HttpFault> {
        let school = self.server().school();
        let members = school.members();
        let trust = members.trust();
        let founded = trust.school(&school.id());
        let start = self.replica().ask(App::start)?;
        let name = |guest: &Guest| {
            let (device, _) = guest.member.as_ref()?;
            Some(trust.standing(device)?.person.clone())
        };
        Ok(Place {
            school: founded.map(|school| school.name.clone()).unwrap_or_default(),
            invented: founded.is_some_and(|school| school.invented),
            language: start.language,
            cautions: start.cautions,
            passphrase: passphrase::is_set(school)?,
            signed_in: guest.map(|guest| SignedIn {
                name: name(guest),
                role: guest.member.as_ref().map(|(_, role)| *role),
                may_prepare: guest.may_prepare(),
                until: guest.until,
            }),
        })
    }
}
