//! `component`: parts with a time in service of their own, which move between machines.

mod fit;
mod r#move;
mod off;

use witnessmark_app::views::{ComponentView, MachinePage};
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::naming;

super::group! {
    Fit fit;
    Move r#move;
    Off off;
}

/// A machine's components, a line each.
pub fn in_words(app: &App, components: &[ComponentView]) -> Vec<String> {
    let line = |component: &ComponentView| {
        let off = if component.fitted { String::new() } else { app.say(&Said::new("cli-component-off")) };
        let serial =
            if component.serial.is_empty() { String::new() } else { format!(" {}", component.serial) };
        let ComponentView { part_words, name, words, id, .. } = component;
        format!("{part_words}: {name}{serial}, {words}{off} [{id}]")
    };
    components.iter().map(line).collect()
}

/// The id of the component of this machine that is meant: by id, name, or serial number.
fn find(page: &MachinePage, named: &str) -> Result<String, Fault> {
    let by_serial = page.components.iter().find(|known| known.serial == named && !named.is_empty());
    match by_serial {
        Some(component) => Ok(component.id.clone()),
        None => {
            let known = page.components.iter().map(|known| (known.id.clone(), known.name.clone()));
            naming::one(named, known.collect())
        }
    }
}

/// Said of what was signed.
fn signed(app: &App, id: &str, page: &MachinePage) -> String {
    format!("{}\n\n{}", app.say(&Said::new(id)), in_words(app, &page.components).join("\n"))
}
