//! The built program over a data folder of the test's own.

#![allow(dead_code, clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

pub mod computing;
pub mod workshop;

use std::io::Write;
use std::path::PathBuf;
use std::process::{Command, Stdio};

use serde_json::{Map, Value, json};
use tempfile::TempDir;

pub const PIN: &str = "271828";
/// The torque tool's name.
pub const WRENCH: &str = "Wrench 2";

/// A day so long ago, as it is typed.
pub fn days_ago(days: u64) -> String {
    let since = std::time::SystemTime::now().duration_since(std::time::UNIX_EPOCH).unwrap();
    let day = chrono::DateTime::from_timestamp(since.as_secs() as i64, 0).unwrap().date_naive();
    (day - chrono::Days::new(days)).to_string()
}

/// What a run gave back.
#[derive(Debug)]
pub struct Ran {
    pub code: i32,
    pub out: String,
    pub err: String,
}

impl Ran {
    pub fn json(&self) -> Value {
        serde_json::from_str(&self.out).unwrap_or_else(|why| panic!("{why}: {self:?}"))
    }

    /// The fault told on standard error, with an exit code that says so.
    pub fn fault(&self) -> Value {
        assert_eq!(self.code, 2, "{self:?}");
        let fault: Value = serde_json::from_str(&self.err).unwrap_or_else(|why| panic!("{why}: {self:?}"));
        let has_words = |member: &str| fault[member].as_str().is_some_and(|words| !words.is_empty());
        assert!(has_words("message") && has_words("hint"), "{fault}");
        fault
    }

    pub fn kind(&self) -> String {
        self.fault()["kind"].as_str().unwrap().to_owned()
    }
}

/// A data folder, and files beside it.
pub struct Desk {
    folder: TempDir,
}

impl Desk {
    pub fn new() -> Self {
        Self { folder: TempDir::new().unwrap() }
    }

    /// With the invented machines in it.
    pub fn with_demo() -> Self {
        let desk = Self::new();
        assert_eq!(desk.run(&["demo"]).code, 0);
        desk
    }

    pub fn path(&self, name: &str) -> String {
        self.folder.path().join(name).display().to_string()
    }

    pub fn write(&self, name: &str, text: &str) -> String {
        std::fs::write(self.path(name), text).unwrap();
        self.path(name)
    }

    pub fn pin_file(&self) -> String {
        self.write("pin", &format!("{PIN}\n"))
    }

    pub fn data(&self) -> PathBuf {
        self.folder.path().join("data")
    }

    pub fn command(&self, args: &[&str]) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_witnessmark"));
        command.arg("--data").arg(self.data()).args(args).env("WITNESSMARK_KEYCHAIN", "off");
        command.env_remove("WITNESSMARK_DATA").env("USER", "somebody");
        command
    }

    pub fn run(&self, args: &[&str]) -> Ran {
        self.run_with(args, "")
    }

    /// Runs with this on standard input. Nothing that is shown may hold a placeholder unfilled
    /// or the id of a message that isn't there.
    pub fn run_with(&self, args: &[&str], input: &str) -> Ran {
        let mut child = self
            .command(args)
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        // A program that doesn't read its input may be gone already.
        let _ = child.stdin.take().unwrap().write_all(input.as_bytes());
        let ran = child.wait_with_output().unwrap();
        let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
        let ran = Ran { code: ran.status.code().unwrap(), out: text(ran.stdout), err: text(ran.stderr) };
        for shown in [&ran.out, &ran.err] {
            assert!(!shown.contains("{$") && !shown.contains("cli-") && !shown.contains("fault-"), "{shown}");
        }
        ran
    }

    pub fn json(&self, args: &[&str]) -> Value {
        let mut args = args.to_vec();
        args.push("--json");
        let ran = self.run(&args);
        assert_eq!(ran.code, 0, "{ran:?}");
        ran.json()
    }

    /// An answers file in which every point of the list is serviceable, or in the middle of its
    /// band; then changed by the test.
    pub fn answers(&self, machine: &str, change: impl FnOnce(&mut Map<String, Value>)) -> String {
        self.answers_to(machine, "before-flight", change)
    }

    /// The same for any list.
    pub fn answers_to(
        &self,
        machine: &str,
        occasion: &str,
        change: impl FnOnce(&mut Map<String, Value>),
    ) -> String {
        let listed = self.json(&["points", machine, "--occasion", occasion]);
        let points = listed["points"].as_array().unwrap().iter();
        let mut answers =
            points.map(|point| (point["id"].as_str().unwrap().to_owned(), good(point))).collect();
        change(&mut answers);
        self.write("answers.json", &Value::Object(answers).to_string())
    }

    /// A machine of one's own, walked round and signed; gives the exported bundle.
    pub fn signed_bundle(&self) -> String {
        let pin = self.pin_file();
        let add = ["machine", "add", "--name", "Own", "--engine", "bramble-125", "--without-reserve"];
        let mut args = add.to_vec();
        args.extend(["--signatory", "A. Tester", "--pin-file", &pin]);
        assert_eq!(self.run(&args).code, 0);
        let answers = self.answers("Own", |_| {});
        let walked = self.run(&["walk", "Own", "--answers", &answers, "--pin-file", &pin]);
        assert_eq!(walked.code, 0, "{walked:?}");
        let file = self.path("own.jsonl");
        assert_eq!(self.run(&["export", "Own", &file]).code, 0);
        std::fs::read_to_string(file).unwrap()
    }
}

/// The answer that is serviceable; the middle of a band; every nut moved by one eighth.
fn good(point: &Value) -> Value {
    let ask = &point["ask"];
    match ask["by"].as_str().unwrap() {
        "words" => {
            let good = |answer: &&Value| answer["means"] == "serviceable";
            ask["answers"].as_array().unwrap().iter().find(good).unwrap()["id"].clone()
        }
        "torque" => tightened(ask["nuts"].as_u64().unwrap() as usize),
        _ => {
            let (low, high) = (ask["low"].as_f64(), ask["high"].as_f64());
            let value = match (low, high) {
                (Some(low), Some(high)) => (low + high) / 2.0,
                // Where nobody knows the limit, any value is written down.
                (low, high) => low.or(high.map(|high| high / 2.0)).unwrap_or(1.0),
            };
            json!({ "value": value, "unit": ask["units"][0]["code"] })
        }
    }
}

/// A joint tightened with [`WRENCH`], every nut by one eighth.
pub fn tightened(nuts: usize) -> Value {
    json!({ "tool": WRENCH, "eighths": vec![1; nuts] })
}
