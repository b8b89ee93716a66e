//! A server's faults as this program tells faults.

use witnessmark_app::Fault;
use witnessmark_server::run::ServerFault;
use witnessmark_server::{Refusal, ShelfFault};

/// Of the process.
pub fn told(fault: ServerFault) -> Fault {
    match fault {
        ServerFault::Shelf(fault) => kept(fault),
        ServerFault::NoSchool => Fault::new("server-no-school"),
        ServerFault::SeveralSchools => Fault::new("server-several-schools"),
        ServerFault::NotASchool(why) => Fault::new("server-not-a-school").text("why", why),
        ServerFault::OtherSchool { here, given } => {
            Fault::new("server-other-school").text("here", here).text("given", given)
        }
        ServerFault::Plain(address) => Fault::new("server-in-the-open").text("address", address),
        ServerFault::File { file, why } => Fault::new("file").text("file", file.display()).text("why", why),
        ServerFault::Certificate(why) => Fault::new("server-certificate").text("why", why),
        ServerFault::Address { address, why } => {
            Fault::new("address").text("address", address).text("why", why)
        }
        ServerFault::Randomness(why) => Fault::new("no-randomness").text("why", why),
        ServerFault::System(why) => Fault::new("server-stopped").text("why", why),
    }
}

/// Of its database.
pub fn kept(fault: ShelfFault) -> Fault {
    match fault {
        ShelfFault::Busy => Fault::new("database-busy"),
        ShelfFault::Full => Fault::new("disk-full"),
        ShelfFault::Damaged(why) => Fault::new("server-damaged").text("why", why),
        ShelfFault::Newer { found, known } => {
            Fault::new("database-newer").number("found", found).number("known", known)
        }
        ShelfFault::Refused(Refusal::NotEmpty) => Fault::new("restore-not-empty"),
        ShelfFault::Refused(Refusal::Exists(file)) => {
            Fault::new("backup-exists").text("file", file.display())
        }
        ShelfFault::Refused(Refusal::NotABackup { path, why }) => {
            Fault::new("not-a-backup").text("file", path.display()).text("why", why)
        }
        other => Fault::new("server-database").text("why", other),
    }
}
