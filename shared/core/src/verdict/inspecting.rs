//! Components that nobody inspected for longer than the school allows.

use super::{Question, Reason, Rule, State, reason};
use crate::said::Said;

/// One reason for each.
pub(super) fn reasons(q: Question<'_>) -> Vec<Reason> {
    let Some((machine, _)) = &q.history.machine else { return Vec::new() };
    let fitted = q.limits.inspect.iter().filter(|(part, _)| machine.fitted.contains_key(*part));
    let over = fitted.filter_map(|(part, inspecting)| {
        let looked = q.history.looked.get(part);
        // Never looked at: since the machine's first hour.
        let since = q.history.hours - looked.copied().unwrap_or_default();
        (since > inspecting.every_hours).then(|| {
            let id = if looked.is_some() { "reason-inspect-over" } else { "reason-inspect-never" };
            reason(
                State::Limited,
                Rule::InspectOver,
                Said::new(id)
                    .naming("part", format!("part-{part}"))
                    .figures("hours", format!("{since:.1}"))
                    .number("every", inspecting.every_hours),
                "clears-inspect-over",
            )
        })
    });
    over.collect()
}
