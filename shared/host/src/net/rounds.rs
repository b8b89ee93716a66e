//! A round with the school's server.

use std::sync::TryLockError;

use witnessmark_app::views::SyncView;
use witnessmark_app::{Fault, SyncStep};
use witnessmark_sync::client::Round;

use super::{Door, Net};

/// Makes a round. Where one goes on already, tells how it stands.
///
/// # Errors
/// [`Fault`]: no server, one that can't be reached, refuses or lies. What was done before is kept.
pub fn sync(door: &impl Door, net: &Net) -> Result<SyncView, Fault> {
    let _only = match net.round.try_lock() {
        Ok(only) => only,
        // It guards no data.
        Err(TryLockError::Poisoned(poisoned)) => poisoned.into_inner(),
        Err(TryLockError::WouldBlock) => return Ok(door.app(|app| app.school())??.sync),
    };
    let went = round(door, net);
    // Pages kept before a fault may have brought lists too.
    door.app(|app| app.reload_catalogue())??;
    went
}

fn round(door: &impl Door, net: &Net) -> Result<SyncView, Fault> {
    let mut round = Round::default();
    let mut answer = None;
    loop {
        match door.app(|app| app.sync_step(&mut round, answer.take()))?? {
            SyncStep::Done(view) => return Ok(view),
            SyncStep::Ask(request) => match net.send(&request) {
                Ok(came) => answer = Some(came),
                Err(why) => {
                    return Err(door.app(|app| {
                        let why = app.say(&why.said());
                        app.sync_unreachable(&why)
                    })??);
                }
            },
        }
    }
}
