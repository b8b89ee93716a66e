//! `tool`: torque tools with their range and calibration.

mod add;
mod change;
mod described;
mod list;

use witnessmark_app::views::ToolView;
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::naming;

super::group! {
    Add add;
    Change change;
    List list;
}

/// The tool that is meant.
pub fn find(app: &mut App, named: &str) -> Result<ToolView, Fault> {
    let mut tools = app.tools()?;
    let known = tools.iter().map(|tool| (tool.kept.tool.to_string(), tool.kept.name.clone()));
    let id = naming::one(named, known.collect())?;
    tools.retain(|tool| tool.kept.tool.to_string() == id);
    tools.pop().ok_or_else(|| Fault::new("no-such-tool"))
}

/// Tools with whether they may be used today.
fn in_words(app: &App, tools: &[ToolView]) -> String {
    let words = |tool: &ToolView| {
        let kept = &tool.kept;
        let range = Said::new("cli-tool")
            .text("low", kept.low)
            .text("high", kept.high)
            .text("deviation", kept.deviation_percent)
            .number("clicks", tool.cycles);
        let usable = app.say(&Said::new(if tool.usable { "cli-tool-usable" } else { "cli-tool-refused" }));
        format!("{}\n  {}\n  {}\n  {usable} {}\n", kept.name, kept.tool, app.say(&range), tool.words)
    };
    match tools {
        [] => app.say(&Said::new("cli-no-tools")),
        tools => tools.iter().map(words).collect::<Vec<_>>().join("\n"),
    }
}
