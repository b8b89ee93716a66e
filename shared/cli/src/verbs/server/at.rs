//! Where a server's data are.

use std::fs;

use witnessmark_app::Fault;
use witnessmark_server::shelf::Shelf;

use super::faults::kept;
use crate::session::Session;

/// The database's name in the data folder.
const DATABASE: &str = "server.db";

/// `--database` of a server's verbs; without it, a file in the data folder.
#[derive(clap::Args)]
pub struct At {
    #[arg(long, value_name = "URL", env = "WITNESSMARK_DATABASE", hide_env_values = true)]
    database: Option<String>,
}

impl At {
    /// The database's address.
    pub fn database(&self, session: &Session) -> Result<String, Fault> {
        let folder = session.server_folder()?;
        fs::create_dir_all(&folder)
            .map_err(|why| Fault::new("file").text("file", folder.display()).text("why", why))?;
        let file = || folder.join(DATABASE).to_string_lossy().into_owned();
        Ok(self.database.clone().unwrap_or_else(file))
    }

    /// The database, opened.
    pub fn open(&self, session: &Session) -> Result<Shelf, Fault> {
        Shelf::open(&self.database(session)?).map_err(kept)
    }
}
