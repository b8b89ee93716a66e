//! A phone: the app over a database in memory, and a hand that writes the records its person signs.
//! No PIN is asked for: that costs a tenth of a second each time, by design.

use std::cell::RefCell;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, AtomicU64, Ordering};

use base64ct::{Base64, Base64UrlUnpadded, Encoding};
use chrono::{DateTime, FixedOffset};
use uuid::Uuid;
use witnessmark_app::{App, Fault, Keychain, Platform, Request, SyncStep};
use witnessmark_core::record::{Body, DeviceId, Digest, Member, Record, SchoolJoined, SigningSeed};
use witnessmark_store::{Store, StoreFault};
use witnessmark_sync::client::{Answer, Following, Round};
use witnessmark_sync::merkle::Frontier;
use witnessmark_sync::message::{Unsigned, sign};

/// No round needs more requests than this here: a server can't keep a phone busy for ever.
const MOST: usize = 200;

pub const ADDRESS: &str = "http://school.test";

/// What time it is, milliseconds since 1970; all phones look at it, each with an error of its own.
#[derive(Clone, Default)]
pub struct Time(Arc<AtomicI64>);

impl Time {
    pub fn set(&self, ms: i64) {
        self.0.store(ms, Ordering::Relaxed);
    }

    pub fn ms(&self) -> i64 {
        self.0.load(Ordering::Relaxed)
    }
}

/// The operating system of one phone.
#[derive(Clone)]
struct System {
    time: Time,
    skew: Arc<AtomicI64>,
    drawn: Arc<AtomicU64>,
}

impl System {
    fn draw(&self) -> u64 {
        let drawn = self.drawn.fetch_add(1, Ordering::Relaxed);
        let digest = Digest::of(&drawn.to_be_bytes());
        u64::from_be_bytes(digest.0[..8].try_into().unwrap())
    }
}

impl Platform for System {
    fn now(&self) -> DateTime<FixedOffset> {
        let ms = self.time.ms() + self.skew.load(Ordering::Relaxed);
        DateTime::from_timestamp_millis(ms).unwrap().fixed_offset()
    }

    fn random(&self, bytes: &mut [u8]) -> Result<(), Fault> {
        for chunk in bytes.chunks_mut(8) {
            let drawn = self.draw().to_be_bytes();
            chunk.copy_from_slice(&drawn[..chunk.len()]);
        }
        Ok(())
    }

    fn keychain(&self) -> Option<&dyn Keychain> {
        None
    }
}

thread_local! {
    /// Apps not in use: what the catalogue says is read once, and not by every phone of every seed.
    static SPARE: RefCell<Vec<App>> = const { RefCell::new(Vec::new()) };
}

/// A round on its way, with what it has asked and hasn't had answered.
pub struct Going {
    pub round: Round,
    pub asked: Option<Request>,
}

pub struct Phone {
    pub name: String,
    pub person: u8,
    #[allow(dead_code)]
    number: u8,
    pub seed: SigningSeed,
    pub rounds: Vec<Going>,
    pub offline: bool,
    /// A snapshot of its database, taken some time ago.
    kept: Option<Copied>,
    hand: Store,
    app: Option<App>,
    courier: Option<SigningSeed>,
    database: String,
    system: System,
}

impl Drop for Phone {
    fn drop(&mut self) {
        self.put_away();
    }
}

/// Databases in memory, seen by every connection of this process; each name is used once.
fn database() -> String {
    static COUNT: AtomicU64 = AtomicU64::new(0);
    format!("file:/phone-{}?vfs=memdb", COUNT.fetch_add(1, Ordering::Relaxed))
}

pub fn person(n: u8) -> Uuid {
    Uuid::from_u128(u128::from(n) + 1)
}

impl Phone {
    /// A phone of a person, its key made of this number.
    pub fn new(number: u8, of: u8, time: &Time) -> Self {
        let seed = SigningSeed::from_bytes(&[number + 1; 32]);
        let name = format!(
            "{}{number}",
            ["root", "ann", "ben", "cat", "dan", "eve", "fay", "gil", "hal", "ida"][usize::from(of)]
        );
        let database = database();
        let drawn = Arc::new(AtomicU64::new(u64::from(number) << 32));
        let system = System { time: time.clone(), skew: Arc::default(), drawn };
        let hand = Store::open(&database).unwrap();
        let mut phone = Self {
            name,
            person: of,
            number,
            seed,
            rounds: Vec::new(),
            offline: false,
            kept: None,
            hand,
            app: None,
            courier: None,
            database,
            system,
        };
        let member = Member {
            person: person(of),
            name: format!("Invented {}", phone.name),
            key: phone.seed.jwk(),
            invented: false,
        };
        let signatory = serde_json::json!({
            "device": phone.seed.device(), "person": member.person, "name": member.name, "keychain": false,
        });
        phone.set("signatory", &signatory.to_string());
        phone.writes(None, &Body::Member(member));
        phone
    }

    /// The secret that its key is made of.
    #[allow(dead_code)]
    pub fn secret(&self) -> [u8; 32] {
        [self.number + 1; 32]
    }

    pub fn id(&self) -> DeviceId {
        self.seed.device()
    }

    /// How far its clock is off, milliseconds.
    pub fn set_skew(&self, ms: i64) {
        self.system.skew.store(ms, Ordering::Relaxed);
    }

    pub fn now(&self) -> DateTime<FixedOffset> {
        self.system.now()
    }

    fn set(&mut self, name: &str, value: &str) {
        self.hand.write(|tx| tx.set(name, value)).unwrap();
    }

    /// Its holder signs a record.
    pub fn writes(&mut self, machine: Option<Uuid>, body: &Body) -> Record {
        let record = self.would_write(machine, body);
        self.hand.write(|tx| tx.append(&record)).unwrap();
        record
    }

    /// The record that its holder would sign, kept nowhere.
    pub fn would_write(&mut self, machine: Option<Uuid>, body: &Body) -> Record {
        let mut salt = [0; 10];
        self.system.random(&mut salt).unwrap();
        let (now, seed) = (self.system.now(), &self.seed);
        let author = self.hand.read(|tx| tx.author(&seed.device(), machine)).unwrap();
        author.write(body, machine, now, &salt, seed).unwrap()
    }

    /// Takes its place in the school and follows its server.
    pub fn joins(&mut self, school: Digest, server: &str) {
        let mut secret = [0; 32];
        self.system.random(&mut secret).unwrap();
        let courier = SigningSeed::from_bytes(&secret);
        self.set("courier-key", &Base64::encode_string(&secret));
        let following =
            Following { school, server: server.to_owned(), frontier: Frontier::default(), checkpoint: None };
        let place = serde_json::json!({
            "school": school, "address": ADDRESS, "following": following, "last": null, "distrust": null,
        });
        self.set("school", &place.to_string());
        self.writes(None, &Body::SchoolJoined(SchoolJoined { school, courier: courier.jwk() }));
        self.courier = Some(courier);
    }

    /// A request of any kind, signed by its courier.
    #[allow(dead_code)]
    pub fn asks(&self, method: &'static str, path: &str, body: Vec<u8>) -> Request {
        let mut nonce = [0; 16];
        self.system.random(&mut nonce).unwrap();
        let nonce = Base64UrlUnpadded::encode_string(&nonce);
        let (bare, query) = path.split_once('?').map_or((path, None), |(path, query)| (path, Some(query)));
        let authority = ADDRESS.split_once("://").unwrap().1;
        let unsigned = Unsigned { method, authority, path: bare, query, body: &body };
        let signed =
            sign(&unsigned, self.system.now().timestamp(), &nonce, self.courier.as_ref().unwrap()).unwrap();
        let headers = signed.each().map(|(name, value)| (name.to_owned(), value.to_owned())).collect();
        Request { method, url: format!("{ADDRESS}{path}"), headers, body }
    }

    /// A whole round with whoever answers.
    pub fn round(&mut self, mut answers: impl FnMut(&Request) -> Answer) -> Result<(), Fault> {
        self.rounds.clear();
        self.begins_round();
        let mut answer = None;
        for _ in 0..MOST {
            if self.step(0, answer.take())? {
                return Ok(());
            }
            answer = Some(answers(self.rounds[0].asked.as_ref().unwrap()));
        }
        panic!("a round that never ends");
    }

    /// What is kept here.
    pub fn hand(&mut self) -> &mut Store {
        &mut self.hand
    }

    /// Its records about no machine.
    pub fn of_people(&mut self) -> Vec<Record> {
        self.hand.read(|tx| tx.records_of(None)).unwrap()
    }

    pub fn records(&mut self) -> Vec<Record> {
        self.hand
            .read(|tx| {
                let mut records = tx.records_of(None)?;
                for machine in tx.machines()? {
                    records.extend(tx.records_of(Some(machine))?);
                }
                Ok::<_, StoreFault>(records)
            })
            .unwrap()
    }

    /// The app, opened where it isn't.
    pub fn app(&mut self) -> &mut App {
        self.app.get_or_insert_with(|| {
            let store = Store::open(&self.database).unwrap();
            let platform = Box::new(self.system.clone());
            match SPARE.with_borrow_mut(Vec::pop) {
                Some(app) => app.over(store, platform).unwrap(),
                None => App::new(store, platform).unwrap(),
            }
        })
    }

    /// The app dies, and all that it had in its head; what it kept is kept.
    pub fn crashes(&mut self) {
        self.rounds.clear();
        self.put_away();
    }

    fn put_away(&mut self) {
        if let Some(app) = self.app.take() {
            let platform = Box::new(self.system.clone());
            let app = app.over(Store::open(":memory:").unwrap(), platform).unwrap();
            SPARE.with_borrow_mut(|spare| spare.push(app));
        }
    }

    /// One step of its round of this number; says whether that is over.
    pub fn step(&mut self, n: usize, answer: Option<Answer>) -> Result<bool, Fault> {
        let mut going = self.rounds.remove(n);
        match self.app().sync_step(&mut going.round, answer)? {
            SyncStep::Ask(request) => {
                going.asked = Some(request);
                self.rounds.insert(n, going);
                Ok(false)
            }
            SyncStep::Done(_) => Ok(true),
        }
    }

    pub fn begins_round(&mut self) {
        self.rounds.push(Going { round: Round::default(), asked: None });
    }

    /// Keeps a copy of all that is here, as a backup does.
    pub fn backs_up(&mut self) {
        self.kept = Some(copy(&self.database));
    }

    /// Goes on from the copy, and has forgotten the rest.
    pub fn is_restored(&mut self) {
        let Some(kept) = self.kept.take() else { return };
        self.crashes();
        let copied = copy(&kept.0);
        self.database.clone_from(&copied.0);
        self.hand = Store::open(&self.database).unwrap();
    }
}

/// A database copied, and what keeps it alive: in memory it lives as long as somebody has it open.
struct Copied(String, #[allow(dead_code)] rusqlite::Connection);

/// Copies a database, bytes and all.
fn copy(from: &str) -> Copied {
    let to = database();
    let open = rusqlite::Connection::open(&to).unwrap();
    rusqlite::Connection::open(from).unwrap().execute("VACUUM INTO ?1", [&to]).unwrap();
    Copied(to, open)
}
