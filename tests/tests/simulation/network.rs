//! Between the phones and the server: what is lost, comes twice, breaks off or comes late.

use witnessmark_app::Request;
use witnessmark_core::record::Digest;
use witnessmark_sync::client::Answer;
use witnessmark_sync::wire::Pushed;

use crate::world::World;

/// Faults that a round may end with while the network is bad. That an honest server lies is none of them.
const EXCUSED: [&str; 4] = ["server-busy", "server-refused", "server-answer", "server-unreachable"];

impl World {
    /// A phone goes on with its round for a while, or begins one.
    pub fn talks(&mut self, n: usize) {
        for _ in 0..1 + self.chance.below(9) {
            let going = self.phones[n].rounds.len();
            if self.phones[n].offline {
                return self.cut_off(n);
            }
            // In the background and by hand at once.
            if going == 0 || (going == 1 && self.chance.one_in(15)) {
                self.phones[n].begins_round();
            }
            let round = self.chance.below(self.phones[n].rounds.len() as u64) as usize;
            let Some(answer) = self.bad_network(n, round) else { return self.cut_off(n) };
            match self.phones[n].step(round, answer) {
                Ok(_) => {}
                Err(fault) if EXCUSED.contains(&fault.kind) => {
                    let told = format!("{}: {} {:?}", self.name(n), fault.kind, fault.said.args);
                    self.says(told);
                }
                Err(fault) => panic!("{} is told {fault:?}", self.name(n)),
            }
        }
    }

    fn cut_off(&mut self, n: usize) {
        if self.phones[n].rounds.pop().is_some() {
            self.phones[n].app().sync_unreachable("no route").unwrap();
        }
    }

    /// What comes back of what a round has asked; nothing where it gets lost.
    #[allow(clippy::option_option)]
    fn bad_network(&mut self, n: usize, round: usize) -> Option<Option<Answer>> {
        let Some(request) = self.phones[n].rounds[round].asked.clone() else { return Some(None) };
        match self.chance.below(20) {
            0 => None,
            1 => {
                self.carried(&request);
                self.says(format!("{}: the answer to {} is lost", self.name(n), request.url));
                None
            }
            2 => {
                self.says(format!("{}: {} comes twice", self.name(n), request.url));
                let first = self.carried(&request);
                let second = self.carried(&request);
                Some(Some(if self.chance.one_in(2) { first } else { second }))
            }
            3 => {
                let mut answer = self.carried(&request);
                let upto = self.chance.below(answer.body.len() as u64 + 1) as usize;
                answer.broken = upto < answer.body.len();
                answer.body.truncate(upto);
                self.says(format!("{}: {} breaks off at {upto}", self.name(n), request.url));
                Some(Some(answer))
            }
            _ => {
                let answer = self.carried(&request);
                self.acknowledged.extend(taken(&request, &answer));
                Some(Some(answer))
            }
        }
    }

    fn carried(&mut self, request: &Request) -> Answer {
        let now = self.seconds();
        self.server.answer(request, now)
    }

    /// A whole round with nothing in its way.
    pub fn whole_round(&mut self, n: usize) {
        let now = self.seconds();
        let (server, acknowledged) = (&mut self.server, &mut self.acknowledged);
        let done = self.phones[n].round(|request| {
            let answer = server.answer(request, now);
            acknowledged.extend(taken(request, &answer));
            answer
        });
        if let Err(fault) = done {
            panic!("{}, with nothing in its way, is told {fault:?}", self.name(n));
        }
    }
}

/// What an answer says was taken.
fn taken(request: &Request, answer: &Answer) -> Vec<Digest> {
    let pushed = serde_json::from_slice::<Pushed>(&answer.body).ok();
    let pushed = pushed.filter(|_| request.url.ends_with("/v1/records"));
    pushed.map(|pushed| pushed.taken.iter().map(|taken| taken.digest).collect()).unwrap_or_default()
}
