//! The state of every machine of a school, for an instructor: on the phone and on the board.

use std::cmp::Reverse;

use uuid::Uuid;
use witnessmark_core::history::History;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::DeviceId;
use witnessmark_core::said::Said;
use witnessmark_core::verdict::{Rule, State};
use witnessmark_core::work::{Lack, lacks};
use witnessmark_store::Tx;

use super::place::place;
use super::replica::replica_size;
use super::view::brief;
use crate::house::House;
use crate::rights::role_id;
use crate::verdicts::People;
use crate::views::{Board, BoardPerson, BoardRow, BoardSecond, OpenView};
use crate::{App, Fault};

impl App {
    /// The board of this device's school.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn board(&mut self) -> Result<Board, Fault> {
        self.store.read(|tx| self.house.board(tx))
    }
}

impl House {
    fn board(&self, tx: &Tx<'_>) -> Result<Board, Fault> {
        let place = place(tx)?;
        let trust = tx.trust()?;
        let people = self.people(tx)?;
        let school = place.as_ref().and_then(|place| trust.school(&place.school));
        let (mut rows, mut second) = (Vec::new(), Vec::new());
        for machine in tx.machines()? {
            let history = self.known(tx, machine)?;
            let theirs = school.is_none_or(|school| history.school == Some(school.id));
            if history.machine.is_none() || !theirs {
                continue;
            }
            second.extend(self.board_second(machine, &history, &people));
            rows.push(self.board_row(tx, machine, &history, &people)?);
        }
        let looked = |row: &BoardRow| row.looked_at.clone().unwrap_or_default();
        rows.sort_by(|a, b| {
            let key = |row: &BoardRow| (Reverse(row.card.verdict.state), looked(row), row.card.name.clone());
            key(a).cmp(&key(b))
        });
        let today = self.now().date_naive();
        let mut members: Vec<BoardPerson> = Vec::new();
        for term in school.map(|school| school.terms.as_slice()).unwrap_or_default() {
            let person = term.person.to_string();
            let Some(role) = school.and_then(|school| trust.role_on(&school.id, &term.device, today)) else {
                continue;
            };
            if members.iter().any(|member| member.person == person) {
                continue;
            }
            let own = rows.iter().filter(|row| row.person == person).map(|row| row.card.name.clone());
            members.push(BoardPerson {
                machines: own.collect(),
                person,
                name: term.name.clone(),
                role,
                role_words: self.word(role_id(role)),
            });
        }
        members.sort_by(|a, b| (Reverse(a.role), &a.name).cmp(&(Reverse(b.role), &b.name)));
        Ok(Board {
            school: school
                .map(|school| brief(school, place.as_ref().and_then(|place| place.address.clone()))),
            rows,
            people: members,
            second,
            size: tx.receipts()?.max(replica_size(tx)?) as f64,
        })
    }

    fn board_row(
        &self,
        tx: &Tx<'_>,
        machine: Uuid,
        history: &History,
        people: &People,
    ) -> Result<BoardRow, Fault> {
        let card = self.card(tx, machine, people)?;
        let owner = history.registered_by.as_ref();
        let open = self.open_views(history, people);
        let deferred = card.verdict.reasons.iter().filter(|reason| reason.rule == Rule::DefectDeferred);
        let deferred = deferred.map(|reason| reason.words.clone()).collect();
        let (defects, watched): (Vec<OpenView>, Vec<OpenView>) =
            open.into_iter().partition(|open| open.means == Meaning::Unserviceable);
        let look = history.looks.iter().max_by_key(|look| look.at);
        let signed = look.map(|look| tx.record(&look.record)).transpose()?.flatten();
        let by = signed.map(|record| people.name(&record.payload.device)).unwrap_or_default();
        let looked = match look {
            Some(look) => {
                let list = self.word(&format!("occasion-{}", look.occasion));
                Said::new("board-looked").text("person", by).text("at", self.when(look.at)).text("list", list)
            }
            None => Said::new("board-never"),
        };
        // What is well of a flight prepared needs nobody.
        let wanting = card.verdict.reasons.iter().find(|reason| reason.state > State::Fit);
        Ok(BoardRow {
            owner: owner.map(|device| people.name(device)).unwrap_or_default(),
            person: owner
                .and_then(|device| people.person(device))
                .map(|person| person.to_string())
                .unwrap_or_default(),
            looked: self.say(&looked),
            looked_at: look.map(|look| look.at.to_rfc3339()),
            due: self.due_views(history).into_iter().next(),
            defects,
            watched,
            deferred,
            job: history
                .work
                .jobs
                .iter()
                .find(|job| job.released.is_none())
                .map(|job| job.body.title.clone()),
            first: wanting.map(|reason| reason.words.clone()).unwrap_or_default(),
            card,
        })
    }

    /// Work on a machine that lacks nothing but another person's eyes.
    fn board_second(&self, machine: Uuid, history: &History, people: &People) -> Option<BoardSecond> {
        let job = history.work.jobs.iter().find(|job| job.released.is_none())?;
        let lacking = lacks(job, |device: &DeviceId| people.person(device));
        let eyes = |lack: &Lack| matches!(lack, Lack::SecondLook { .. } | Lack::Wanting { .. });
        let waits = !lacking.is_empty() && lacking.iter().all(eyes);
        waits.then(|| BoardSecond {
            machine: machine.to_string(),
            name: history.machine.as_ref().map(|(machine, _)| machine.name.clone()).unwrap_or_default(),
            title: job.body.title.clone(),
            by: people.name(&job.device),
        })
    }
}
