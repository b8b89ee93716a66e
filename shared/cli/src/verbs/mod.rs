//! The verbs, one a file.

/// Ties the verbs of a group to their modules, so that a new one is one line and one file.
macro_rules! group {
    ($($name:ident $module:ident;)*) => {
        #[derive(clap::Args)]
        pub struct Args {
            #[command(subcommand)]
            verb: Verb,
        }

        #[derive(clap::Subcommand)]
        enum Verb { $($name($module::Args),)* }

        pub fn run(
            args: Args,
            session: &mut crate::session::Session,
        ) -> Result<crate::reply::Reply, witnessmark_app::Fault> {
            match args.verb { $(Verb::$name(args) => $module::run(args, session),)* }
        }
    };
}
use group;

pub mod calendar;
pub mod component;
pub mod compute;
pub mod confirm_limit;
pub mod correct;
pub mod csv;
pub mod defect;
pub mod demo;
pub mod due;
pub mod export;
pub mod fleet;
pub mod flight;
pub mod import;
pub mod job;
pub mod label;
pub mod machine;
pub mod person;
pub mod points;
pub mod print;
pub mod put_aside;
pub mod rebuild;
pub mod receipts;
pub mod record;
pub mod refused;
pub mod release;
pub mod school;
pub mod second_look;
pub mod serve_ui;
pub mod server;
pub mod show;
pub mod sync;
pub mod tool;
pub mod trend;
pub mod validate;
pub mod verdict;
pub mod verify;
pub mod walk;

// A server's other verbs stand on the first level, where one looks for them.
pub use server::{backup, passphrase as board_passphrase, restore};
use witnessmark_core::list::Meaning;

/// The words of a meaning.
pub fn means(meaning: Meaning) -> &'static str {
    match meaning {
        Meaning::NotFitted => "cli-means-not-fitted",
        Meaning::Serviceable => "cli-means-serviceable",
        Meaning::Watch => "cli-means-watch",
        Meaning::Unserviceable => "cli-means-unserviceable",
    }
}
