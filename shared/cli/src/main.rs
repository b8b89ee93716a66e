//! `witnessmark`: the command line. Exit 0: done; 1: the answer is no; 2: a fault, told as
//! `{kind, message, hint}`.

mod args;
mod help;
mod naming;
mod pin;
mod reading;
mod reply;
mod session;
mod told;
mod verbs;
mod voice;
mod writing;

use std::process::ExitCode;

fn main() -> ExitCode {
    let cli = match help::parse() {
        Ok(cli) => cli,
        Err(done) => return done,
    };
    let mut session = session::Session::new(cli.data, cli.json);
    let told = cli.verb.run(&mut session).and_then(|reply| reply.print(&session));
    match told {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::from(1),
        Err(fault) => {
            told::tell(&session.show(&fault), session.json);
            ExitCode::from(2)
        }
    }
}
