//! A thousand devices ask the server whether there is anything new: spread evenly, all in one moment,
//! and as fast as they can; with nothing new, and with one new record, which each then fetches with its
//! proof. Over 10 000 and 100 000 records. The devices share this machine's cores with the server: where
//! they are at work, the figures are worse than a server of its own would have them.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;
#[path = "common/school.rs"]
mod school;

use std::sync::Arc;
use std::time::{Duration, Instant};

use common::life_of;
use reqwest::Client;
use school::{Root, Serving, fill, served, sqlite};
use uuid::Uuid;
use witnessmark_core::record::{Record, SigningSeed, write_bundle};

const DEVICES: u64 = 1000;
/// How often each asks, where they are spread evenly.
const EVERY: Duration = Duration::from_secs(4);

fn main() {
    if served() {
        return;
    }
    let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
    for size in [10_000, 100_000] {
        let folder = tempfile::tempdir().unwrap();
        let database = sqlite(folder.path(), "school.db");
        let mut root = Root::new();
        let (couriers, records): (Vec<SigningSeed>, Vec<[Record; 3]>) =
            (0..DEVICES).map(|n| root.member(n)).unzip();
        let (life, mut pen) = life_of([9; 32], Uuid::from_u128(9), size - 3 * DEVICES as usize - 4, |_| 1);
        let school = root.founds(&database);
        fill(&school, &records.into_iter().flatten().collect::<Vec<_>>());
        fill(&school, &life);
        drop(school);
        let begun = Instant::now();
        let serving = Arc::new(Serving::over(&database));
        let ready = begun.elapsed().as_secs_f64();
        println!("{size} records; the server is ready in {ready:.2} s, with {:.0} MB", serving.memory());
        let fleet = Fleet { serving: serving.clone(), client: client(), couriers: Arc::new(couriers) };
        runtime.block_on(fleet.nothing_new());
        let new = pen.write(
            &witnessmark_core::record::Body::Unknown { kind: "invented".into(), body: "new".into() },
            None,
            common::first_day(),
        );
        let body = write_bundle([&new]).into_bytes();
        school::ask(&serving, &school::client(), "POST", "/v1/records", body, &root.pen.seed);
        runtime.block_on(fleet.one_new(size as u64 - 1, size as u64));
        println!("  the server's memory after that: {:.0} MB", serving.memory());
    }
}

fn client() -> Client {
    let _ = rustls::crypto::ring::default_provider().install_default();
    let builder = Client::builder().no_proxy().tls_certs_only([]).pool_max_idle_per_host(DEVICES as usize);
    builder.timeout(Duration::from_secs(60)).build().unwrap()
}

#[derive(Clone)]
struct Fleet {
    serving: Arc<Serving>,
    client: Client,
    couriers: Arc<Vec<SigningSeed>>,
}

impl Fleet {
    async fn nothing_new(&self) {
        self.each("at one moment, nothing new", Duration::ZERO, &["/v1/checkpoint".into()]).await;
        self.each("spread evenly, nothing new", EVERY, &["/v1/checkpoint".into()]).await;
        self.fast("/v1/checkpoint").await;
    }

    async fn one_new(&self, before: u64, now: u64) {
        let round = [
            "/v1/checkpoint".to_owned(),
            format!("/v1/proof/consistency?from={before}&to={now}"),
            format!("/v1/log?from={before}"),
        ];
        self.each("spread evenly, one new record", EVERY, &round).await;
        self.each("at one moment, one new record", Duration::ZERO, &round).await;
        self.fast(&round[2]).await;
    }

    /// Every device makes its round once, or three times where they are spread over a time.
    async fn each(&self, what: &str, over: Duration, round: &[String]) {
        let times = if over.is_zero() { 1 } else { 3 };
        let begun = Instant::now() + Duration::from_millis(50);
        let tasks: Vec<_> = (0..self.couriers.len())
            .map(|n| {
                let (fleet, round) = (self.clone(), round.to_vec());
                tokio::spawn(async move {
                    let mut taken = Vec::new();
                    for time in 0..times {
                        let share = over.mul_f64(n as f64 / DEVICES as f64);
                        tokio::time::sleep_until((begun + over * time + share).into()).await;
                        let from = Instant::now();
                        let mut busy = 0;
                        for path in &round {
                            busy += fleet.ask(n, path).await;
                        }
                        taken.push((from.elapsed().as_secs_f64(), busy));
                    }
                    taken
                })
            })
            .collect();
        let mut taken = Vec::new();
        for task in tasks {
            taken.extend(task.await.unwrap());
        }
        let busy: u32 = taken.iter().map(|(_, busy)| busy).sum();
        let mut times: Vec<f64> = taken.into_iter().map(|(time, _)| time * 1e3).collect();
        times.sort_by(f64::total_cmp);
        let at = |part: f64| times[((times.len() - 1) as f64 * part) as usize];
        println!(
            "  {} devices {what}: p50 {:.1} ms, p99 {:.1} ms, {} requests each, {busy} told to come again",
            self.couriers.len(),
            at(0.5),
            at(0.99),
            round.len()
        );
    }

    /// As many requests as get through in some seconds.
    async fn fast(&self, path: &str) {
        let (begun, most) = (Instant::now(), Duration::from_secs(4));
        let tasks: Vec<_> = (0..64)
            .map(|n| {
                let (fleet, path) = (self.clone(), path.to_owned());
                tokio::spawn(async move {
                    let mut made = 0u32;
                    while begun.elapsed() < most {
                        fleet.ask(n, &path).await;
                        made += 1;
                    }
                    made
                })
            })
            .collect();
        let mut made = 0;
        for task in tasks {
            made += task.await.unwrap();
        }
        let route = path.split('?').next().unwrap();
        println!(
            "  64 at once, {route}: {:.0} requests a second",
            f64::from(made) / begun.elapsed().as_secs_f64()
        );
    }

    /// Asks until there is an answer; how often the server was too busy for one.
    async fn ask(&self, device: usize, path: &str) -> u32 {
        let mut busy = 0;
        loop {
            let mut asked = self.client.get(self.serving.url(path));
            if path != "/v1/checkpoint" {
                for (name, value) in self.serving.headers("GET", path, b"", &self.couriers[device]) {
                    asked = asked.header(name, value);
                }
            }
            let came = asked.send().await.unwrap();
            if came.status() != 503 {
                came.error_for_status().unwrap().bytes().await.unwrap();
                return busy;
            }
            busy += 1;
            tokio::time::sleep(Duration::from_millis(100)).await;
        }
    }
}
