//! What goes on while the server runs: it follows the log, and forgets what has had its time.

use std::time::Duration;

use crate::{Server, ShelfFault};

/// How often the log is looked at: another process may have appended, and a board waits for it.
const LOOK: Duration = Duration::from_secs(1);
/// How often it is tidied up.
const TIDY: Duration = Duration::from_secs(60);

/// Goes on until dropped.
pub(super) async fn tend(server: Server) {
    tokio::join!(
        every(LOOK, &server, |server| server.school().follow().map(drop)),
        every(TIDY, &server, Server::tidy),
    );
}

async fn every(
    pause: Duration,
    server: &Server,
    job: impl Fn(&Server) -> Result<(), ShelfFault> + Send + Copy + 'static,
) {
    loop {
        tokio::time::sleep(pause).await;
        // What failed is in the log, and is tried again the next time.
        let _ = server.work(job).await;
    }
}
