//! Telling pages that there is more: server-sent events, without the data itself.

use std::convert::Infallible;
use std::time::Duration;

use axum::extract::State;
use axum::http::StatusCode;
use axum::response::sse::{Event, Sse};
use futures_util::stream::{Stream, unfold};
use tokio::sync::{OwnedSemaphorePermit, watch};
use tokio::time::sleep;

use super::Board;
use super::guest::Guest;
use crate::http::HttpFault;

/// How often a stream says that it lives, and asks whether its page still may look.
const ALIVE: Duration = Duration::from_secs(15);

/// One page's stream.
struct Open {
    board: Board,
    token: String,
    shown: watch::Receiver<u64>,
    first: bool,
    over: bool,
    _place: OwnedSemaphorePermit,
    _counted: Counted,
}

/// Counts an open stream while it lives.
struct Counted(Board);

impl Counted {
    fn begin(board: &Board) -> Self {
        board.server().metrics().open_streams.inc();
        Self(board.clone())
    }
}

impl Drop for Counted {
    fn drop(&mut self) {
        self.0.server().metrics().open_streams.dec();
    }
}

pub(super) async fn events(
    State(board): State<Board>,
    guest: Guest,
) -> Result<Sse<impl Stream<Item = Result<Event, Infallible>>>, HttpFault> {
    let place = board.0.streams.clone().try_acquire_owned().map_err(|_| {
        let hint = "Close the board on screens that nobody looks at.";
        HttpFault::new(StatusCode::SERVICE_UNAVAILABLE, "streams", "too many boards are open", hint)
    })?;
    let shown = board.0.shown.subscribe();
    let counted = Counted::begin(&board);
    let open =
        Open { board, token: guest.token, shown, first: true, over: false, _place: place, _counted: counted };
    Ok(Sse::new(unfold(open, |open| async move { open.next().await })))
}

impl Open {
    async fn next(mut self) -> Option<(Result<Event, Infallible>, Self)> {
        if self.over {
            return None;
        }
        let mut grew = std::mem::take(&mut self.first);
        if !grew {
            tokio::select! {
                () = self.board.server().stopped() => return None,
                changed = self.shown.changed() => grew = changed.is_ok(),
                () = sleep(ALIVE) => {}
            }
        }
        let token = self.token.clone();
        let event = match self.board.work(move |board| board.guest(&token)).await {
            Ok(Some(_)) if grew => {
                Event::default().event("board").data(self.shown.borrow_and_update().to_string())
            }
            Ok(Some(_)) => Event::default().comment("alive"),
            Ok(None) => {
                self.over = true;
                Event::default().event("signed-out").data("")
            }
            // The database is away: the page asks anew and is told so.
            Err(_) => return None,
        };
        Some((Ok(event), self))
    }
}
