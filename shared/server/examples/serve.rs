//! For the tests: a school's server as a process of its own, without a board. Prints its address once
//! it answers.
//!
//!     serve DATABASE FOUNDING-FILE

use std::io::Write as _;
use std::net::{Ipv4Addr, SocketAddr};

use axum::Router;
use witnessmark_server::run::LogForm;
use witnessmark_server::{Config, run};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let words: Vec<String> = std::env::args().collect();
    let [_, database, founding] = words.as_slice() else {
        return Err("serve DATABASE FOUNDING-FILE".into());
    };
    let mut config = Config::on(SocketAddr::from((Ipv4Addr::LOCALHOST, 0)), database);
    config.school = Some(founding.into());
    config.log = LogForm::Silent;
    let tell = |address| {
        // Nobody listens any more: then nobody needs to know.
        let _ = writeln!(std::io::stdout(), "http://{address}");
    };
    run(&config, |_| Router::new(), tell)?;
    Ok(())
}
