//! What the records say, taken apart into single facts: one row each of a machine's table.

use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Body, Finding, Inspection, LimitConfirmed, Machine, Record};
use witnessmark_core::said::Said;
use witnessmark_core::units::{Quantity, Unit};

use crate::house::House;

/// What one row says beside when, who and where it stands.
#[derive(Default)]
pub(super) struct Fact {
    /// When, if not when its record was signed.
    pub when: Option<String>,
    pub point: String,
    pub title: String,
    pub words: String,
    pub means: Option<Meaning>,
    pub value: Option<Quantity>,
    pub note: String,
}

impl House {
    /// Every fact of a record, in its order.
    pub(super) fn facts_of(&self, record: &Record) -> Vec<Fact> {
        match record.payload.typed() {
            Ok(body) => self.facts_in(&body),
            Err(_) => vec![Fact { words: self.word("told-unknown"), ..Fact::default() }],
        }
    }

    /// The facts in a body.
    pub(super) fn facts_in(&self, body: &Body) -> Vec<Fact> {
        let said = Fact { words: self.body_words(body), ..Fact::default() };
        match body {
            Body::Inspection(body) => self.inspection_facts(body),
            Body::Machine(body) => self.machine_facts(body, said),
            Body::LimitConfirmed(body) => self.limit_facts(body),
            Body::TimeLogged(body) => {
                let value = Quantity::new(body.added.hours, Unit::Hour);
                vec![Fact { value: Some(value), note: body.note.clone(), ..said }]
            }
            Body::SecondLook(body) => body
                .joints
                .iter()
                .map(|seen| Fact {
                    point: seen.joint.clone(),
                    title: self.word(&format!("joint-{}", seen.joint)),
                    means: Some(seen.means),
                    note: seen.note.clone(),
                    ..Fact::default()
                })
                .collect(),
            Body::JobBegun(body) => vec![Fact { title: body.title.clone(), note: body.note.clone(), ..said }],
            Body::Rectified(body) => vec![Fact { point: body.point.clone(), ..said }],
            Body::Correction(body) => vec![Fact {
                point: body.point.clone(),
                title: body.title.clone(),
                words: body.words.clone(),
                means: Some(body.means),
                note: body.reason.clone(),
                ..Fact::default()
            }],
            Body::Deferred(body) => {
                let day = body.until_date.map(|day| Said::new("deferred-date").date("day", day));
                let hours = body
                    .until_hours
                    .map(|hours| Said::new("deferred-hours").figures("hours", format!("{hours:.1}")));
                let flights = body.until_flights.map(|n| Said::new("deferred-flights").number("flights", n));
                let until = [hours, flights, day].into_iter().flatten().map(|said| self.say(&said));
                let note = until.collect::<Vec<_>>().join(" ");
                vec![Fact { point: body.point.clone(), note, ..said }]
            }
            Body::ComponentMoved(body) => vec![Fact {
                point: body.part.clone(),
                title: self.word(&format!("part-{}", body.part)),
                note: body.serial.clone(),
                ..said
            }],
            Body::DueKept(body) => vec![Fact { title: body.title.clone(), ..said }],
            _ => vec![said],
        }
    }

    /// The list, then every finding with the answers taken back before it, then what was left.
    fn inspection_facts(&self, body: &Inspection) -> Vec<Fact> {
        let whole = Fact {
            title: self.word(&format!("occasion-{}", body.occasion)),
            means: body.findings.iter().map(|finding| finding.means).max(),
            ..Fact::default()
        };
        let findings = body.findings.iter().flat_map(|finding| self.finding_facts(finding));
        let left = body.left.iter().map(|left| Fact {
            point: left.point.clone(),
            title: left.title.clone(),
            words: self.word(if left.must { "paper-left-must" } else { "paper-left" }),
            ..Fact::default()
        });
        std::iter::once(whole).chain(findings).chain(left).collect()
    }

    fn finding_facts(&self, finding: &Finding) -> Vec<Fact> {
        let about = |words: &str, means| Fact {
            point: finding.point.clone(),
            title: finding.title.clone(),
            words: words.to_owned(),
            means: Some(means),
            ..Fact::default()
        };
        let taken_back = finding.before.iter().map(|before| Fact {
            when: Some(before.at.to_rfc3339()),
            note: self.word("paper-taken-back"),
            ..about(&before.words, before.means)
        });
        let tightened = finding.torque.as_ref().map(|torque| torque.reading.unwrap_or(torque.setting));
        let stands = Fact {
            when: Some(finding.at.to_rfc3339()),
            value: finding.measured.or(tightened),
            note: finding.note.clone(),
            ..about(&finding.words, finding.means)
        };
        taken_back.chain(std::iter::once(stands)).collect()
    }

    fn machine_facts(&self, body: &Machine, said: Fact) -> Vec<Fact> {
        let parts = body.fitted.iter().map(|(part, serial)| Fact {
            point: part.clone(),
            title: self.word(&format!("part-{part}")),
            words: serial.clone(),
            ..Fact::default()
        });
        let repacked = body.reserve.as_ref().and_then(|reserve| reserve.repacked_on);
        let repacked = repacked.map(|day| Fact {
            point: "reserve".into(),
            title: self.word("paper-repacked"),
            words: day.to_string(),
            ..Fact::default()
        });
        let whole = Fact { title: body.name.clone(), note: body.note.clone(), ..said };
        std::iter::once(whole).chain(parts).chain(repacked).chain(self.weight_facts(body)).collect()
    }

    /// What it weighs, and each end of what its wing may carry.
    fn weight_facts(&self, body: &Machine) -> Vec<Fact> {
        let wing = body.wing_load.as_ref();
        let free = wing.and_then(|wing| wing.without_motor);
        let of = |what: &str, value: Option<Quantity>, note: String| {
            Some(Fact { title: self.word(what), value: Some(value?), note, ..Fact::default() })
        };
        let source = || wing.map(|wing| format!("{}, {}", wing.document, wing.page)).unwrap_or_default();
        let facts = [
            of("what-machine-weight", body.weight, String::new()),
            of("what-wing-low", wing.map(|wing| wing.with_motor.low), source()),
            of("what-wing-high", wing.map(|wing| wing.with_motor.high), source()),
            of("what-wing-free-low", free.map(|range| range.low), source()),
            of("what-wing-free-high", free.map(|range| range.high), source()),
        ];
        facts.into_iter().flatten().collect()
    }

    /// Each end of the limit is a fact.
    fn limit_facts(&self, body: &LimitConfirmed) -> Vec<Fact> {
        let ends = [("paper-least", body.low), ("paper-most", body.high)];
        let ends = ends.into_iter().filter_map(|(words, end)| Some((words, end?)));
        ends.map(|(words, end)| Fact {
            point: body.band.clone(),
            title: self.word(&format!("band-{}", body.band)),
            words: self.word(words),
            value: Some(end),
            note: format!("{}, {}", body.document, body.page),
            ..Fact::default()
        })
        .collect()
    }
}
