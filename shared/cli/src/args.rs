//! What can be typed. The help's words are in the texts (`help-…` in cli.ftl), not here.

use std::path::PathBuf;

use clap::{Parser, Subcommand};
use witnessmark_app::Fault;

use crate::reply::Reply;
use crate::session::Session;

#[derive(Parser)]
#[command(name = "witnessmark", version, arg_required_else_help = true)]
pub struct Cli {
    #[arg(long, global = true, value_name = "DIR", env = "WITNESSMARK_DATA", hide_env_values = true)]
    pub data: Option<PathBuf>,
    #[arg(long, global = true)]
    pub json: bool,
    #[command(subcommand)]
    pub verb: Verb,
}

/// Ties each verb to its module, so that a new verb is one line and one file.
macro_rules! verbs {
    ($($name:ident $module:ident;)*) => {
        #[derive(Subcommand)]
        pub enum Verb { $($name(crate::verbs::$module::Args),)* }

        impl Verb {
            /// Does it.
            pub fn run(self, session: &mut Session) -> Result<Reply, Fault> {
                match self { $(Verb::$name(args) => crate::verbs::$module::run(args, session),)* }
            }
        }
    };
}

// In the order of the help: from a bare machine to flying, then what follows a service, then
// the school, then papers and files, then servers, then what authors and programs ask.
verbs! {
    Demo demo;
    Machine machine;
    Points points;
    Walk walk;
    Verdict verdict;
    Show show;
    Record record;
    Defect defect;
    Flight flight;
    Due due;
    Trend trend;
    Job job;
    SecondLook second_look;
    Release release;
    Tool tool;
    Component component;
    Fleet fleet;
    Person person;
    School school;
    Sync sync;
    Receipts receipts;
    Refused refused;
    ConfirmLimit confirm_limit;
    Correct correct;
    PutAside put_aside;
    Print print;
    Label label;
    Csv csv;
    Calendar calendar;
    Export export;
    Import import;
    Verify verify;
    ServeUi serve_ui;
    Server server;
    Backup backup;
    Restore restore;
    BoardPassphrase board_passphrase;
    Compute compute;
    Validate validate;
    Rebuild rebuild;
}
