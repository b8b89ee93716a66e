//! Reading the command line, and its help, whose words come from the texts as all others do.

use std::process::ExitCode;

use clap::error::ErrorKind;
use clap::{Command, CommandFactory, Parser};
use witnessmark_app::{Catalogue, FALLBACK, FaultView};
use witnessmark_core::said::Said;

use crate::args::Cli;
use crate::told;

/// The language of the help, as the environment has it: it is shown before any data folder, and so any
/// choice of language, is known.
fn language(catalogue: &Catalogue) -> String {
    let set = ["LC_ALL", "LC_MESSAGES", "LANG"]
        .iter()
        .find_map(|name| std::env::var(name).ok().filter(|value| !value.is_empty()));
    let wanted = set.unwrap_or_default();
    let wanted = wanted.split(['_', '.', '@']).next().unwrap_or_default();
    let mut known = catalogue.texts.languages();
    known.find(|language| *language == wanted).unwrap_or(FALLBACK).to_owned()
}

/// Reads the command line; help and faults of usage are told here.
pub fn parse() -> Result<Cli, ExitCode> {
    let wrong = match Cli::try_parse() {
        Ok(cli) => return Ok(cli),
        Err(wrong) => wrong,
    };
    match wrong.kind() {
        ErrorKind::DisplayVersion => {
            // Nobody is left to tell that the version couldn't be printed.
            let _ = wrong.print();
            Err(ExitCode::SUCCESS)
        }
        ErrorKind::DisplayHelp | ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand => Err(show_help()),
        _ => {
            if std::env::args_os().any(|arg| arg == "--json" || arg == "compute") {
                told::tell(&usage(&wrong), true);
            } else {
                let _ = wrong.print();
            }
            Err(ExitCode::from(2))
        }
    }
}

/// Parses once more with the words put in: they cost a reading of the texts, which only help needs.
fn show_help() -> ExitCode {
    let dressed = match Catalogue::embedded() {
        Ok(catalogue) => dress(Cli::command(), "help", &language(&catalogue), &catalogue),
        Err(_) => Cli::command(),
    };
    match dressed.try_get_matches() {
        Ok(_) => ExitCode::SUCCESS,
        Err(help) => {
            let _ = help.print();
            ExitCode::from(u8::try_from(help.exit_code()).unwrap_or(2))
        }
    }
}

/// Puts the words in: `help-VERB` for a verb, `help-arg-NAME` for what follows it.
pub fn dress(command: Command, id: &str, language: &str, catalogue: &Catalogue) -> Command {
    let say = |id: &str| catalogue.texts.say(language, &Said::new(id));
    let verbs: Vec<String> = command.get_subcommands().map(|verb| verb.get_name().to_owned()).collect();
    let mut command = command.about(say(id)).mut_args(|arg| {
        let words = say(&format!("help-arg-{}", arg.get_id().as_str().replace('_', "-")));
        arg.help(words)
    });
    for verb in verbs {
        let id = format!("{id}-{verb}");
        command = command.mut_subcommand(verb, |verb| dress(verb, &id, language, catalogue));
    }
    command
}

fn usage(wrong: &clap::Error) -> FaultView {
    let whole = wrong.render().to_string();
    let mut parts = whole.splitn(2, "\n\n");
    let mut part = || parts.next().unwrap_or_default().trim().replace("\n  ", "\n");
    let message = part().trim_start_matches("error: ").to_owned();
    FaultView { kind: "usage".into(), message, hint: part() }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn has_words(command: &Command, id: &str, catalogue: &Catalogue) {
        assert!(catalogue.texts.has(id, None), "{id}");
        for arg in command.get_arguments() {
            let id = format!("help-arg-{}", arg.get_id().as_str().replace('_', "-"));
            assert!(catalogue.texts.has(&id, None), "{id}");
        }
        for verb in command.get_subcommands() {
            has_words(verb, &format!("{id}-{}", verb.get_name()), catalogue);
        }
    }

    #[test]
    fn every_verb_and_all_that_follows_it_has_words() {
        let command = Cli::command();
        has_words(&command, "help", &Catalogue::embedded().unwrap());
        command.debug_assert();
    }
}
