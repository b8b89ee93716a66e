//! After everything has healed: what must be so.

use std::collections::{BTreeMap, BTreeSet};

use witnessmark_core::history::History;
use witnessmark_core::record::{Digest, Record, Role, Signature, Trust};
use witnessmark_core::verdict::{Question, Verdict, judge};
use witnessmark_store::StoreFault;

use crate::common::{DeviceId, confirmed_sheet};
use crate::phone::Phone;
use crate::world::World;

/// What a phone makes of its records.
#[derive(Debug, PartialEq)]
struct Told {
    records: BTreeSet<Digest>,
    histories: Vec<History>,
    split: Vec<Vec<DeviceId>>,
    verdicts: Vec<Verdict>,
}

impl World {
    /// Nothing is in anybody's way any more, clocks are set, and whoever has a key that holds is admitted.
    pub fn heals(&mut self) {
        self.says("all heals");
        for phone in &mut self.phones {
            phone.offline = false;
            phone.rounds.clear();
            phone.set_skew(0);
        }
        let said = self.made_of();
        let trust = Trust::from_checked(&said);
        let root = trust.school(&self.school).and_then(|school| self.phone_of(&school.root)).unwrap();
        self.brings(root, &said);
        for n in 0..self.phones.len() {
            let ended = trust.standing(&self.phones[n].id()).is_some_and(|s| s.last_good.is_some());
            if !ended {
                self.admits_as(root, n, Role::Mechanic);
            }
            self.phones[n].app().sync_retry().unwrap();
        }
        let said = self.made_of();
        (0..self.phones.len()).for_each(|n| self.brings(n, &said));
        // Who lets whom in may have to come in by others first: until nothing comes to the log any more.
        let mut before = usize::MAX;
        while before != self.server.log().len() {
            before = self.server.log().len();
            (0..self.phones.len()).for_each(|n| self.whole_round(n));
        }
        (0..self.phones.len()).for_each(|n| self.whole_round(n));
    }

    /// What must be so then.
    pub fn holds(&mut self) {
        let trust = Trust::from_checked(&self.made_of());
        let log: BTreeSet<Digest> = self.server.log().into_iter().collect();
        let lost: Vec<&Digest> = self.acknowledged.difference(&log).collect();
        assert!(lost.is_empty(), "acknowledged and lost: {lost:?}");
        let now = self.phones[0].now();
        let day = now.date_naive();
        let (school, machines) = (self.school, self.machines.clone());
        // Where the root's own key was ended, nobody could be admitted anew: a viewer's words stay its own.
        let members: Vec<usize> = (0..self.phones.len())
            .filter(|n| {
                let role = trust.role_on(&school, &self.phones[*n].id(), day);
                role.is_some_and(|role| role > Role::Viewer)
            })
            .collect();
        let mut told: Option<(String, Told)> = None;
        for n in members {
            let name = self.name(n);
            let phone = &mut self.phones[n];
            let state = phone.app().school().unwrap().sync;
            assert_eq!(state.state, "done", "{name}: {state:?}");
            assert_eq!(phone.app().refused().unwrap().len(), 0, "{name}");
            assert!(phone.app().receipts().unwrap().good, "{name}");
            let records = phone.records();
            let known = Trust::from_records(&records);
            // Once for all: the others must have the same ones.
            for record in records.iter().filter(|_| told.is_none()) {
                let outcome = known.check(record);
                assert!(matches!(outcome, Signature::Good | Signature::Revoked), "{name}: {outcome:?}");
            }
            let counting: BTreeSet<Digest> =
                records.iter().filter(|record| known.counts(record)).map(|record| record.digest).collect();
            let unsent: Vec<&Digest> = counting.difference(&log).collect();
            assert!(unsent.is_empty(), "{name} keeps to itself {unsent:?}: {:?}", state.stuck);
            let here = tells(phone, &machines, &records, &known, counting, now);
            match &told {
                None => told = Some((name, here)),
                Some((other, there)) => assert_eq!(here, *there, "{name} and {other} differ"),
            }
        }
    }
}

fn tells(
    phone: &mut Phone,
    machines: &[uuid::Uuid],
    records: &[Record],
    known: &Trust,
    counting: BTreeSet<Digest>,
    now: chrono::DateTime<chrono::FixedOffset>,
) -> Told {
    let kept = |phone: &mut Phone| {
        phone
            .hand()
            .read(|tx| {
                let mut kept = Vec::new();
                for machine in machines {
                    kept.push((tx.history(*machine)?, tx.split_words(*machine)?));
                }
                Ok::<_, StoreFault>(kept)
            })
            .unwrap()
    };
    let folded = kept(phone);
    for (machine, (history, _)) in machines.iter().zip(&folded) {
        let anew = History::of(*machine, records, known);
        assert_eq!(history.clone().unwrap_or_default(), anew, "{}: kept and folded anew", phone.name);
    }
    phone.hand().write(|tx| tx.rebuild()).unwrap();
    assert_eq!(kept(phone), folded, "{}: kept and rebuilt", phone.name);
    let sheet = confirmed_sheet();
    let persons = known.devices().map(|(device, standing)| (device.clone(), standing.person_id)).collect();
    let verdict = |(history, split): &(Option<History>, Vec<DeviceId>)| {
        let history = history.clone().unwrap_or_default();
        let people = BTreeMap::new();
        judge(Question {
            history: &history,
            sheet: Some(&sheet),
            now,
            people: &people,
            persons: &persons,
            split,
            refused: 0,
            limits: &witnessmark_core::list::Limits::default(),
        })
    };
    Told {
        records: counting,
        verdicts: folded.iter().map(verdict).collect(),
        // A record past its key's end may lie on one phone only, and it moves this and nothing else.
        histories: folded
            .iter()
            .map(|(history, _)| History { upto: None, ..history.clone().unwrap_or_default() })
            .collect(),
        split: folded.into_iter().map(|(_, split)| split).collect(),
    }
}
