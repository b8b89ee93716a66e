//! A face's line to its school: it answers every call, and keeps in step with the server beside that.

use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::sync::{Arc, Weak};
use std::thread;
use std::time::{Duration, Instant};

use serde::{Deserialize, Deserializer};
use serde_json::Value;
use witnessmark_app::views::SyncView;
use witnessmark_app::{Asked, Fault, FaultView};

use super::door::show;
use super::{Door, Net, net_call, sync};

/// After the start: the first screen goes first.
const FIRST: Duration = Duration::from_millis(500);
/// Between two rounds.
const USUAL: Duration = Duration::from_secs(60);
/// Between two rounds while the server can't be reached.
const LONGEST: Duration = Duration::from_secs(15 * 60);
/// After something was signed: what follows at once goes along.
const SIGNED: Duration = Duration::from_secs(2);

/// Calls that may leave something to be sent, beside those that bring a PIN.
const BRINGING: [&str; 3] = ["import", "second-look-take", "sync-retry"];

/// What a screen asks for, and whether something may wait to be sent once it is answered.
pub struct Asking {
    asked: Asked,
    brings: bool,
}

impl<'de> Deserialize<'de> for Asking {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let value = Value::deserialize(deserializer)?;
        let pin = value.get("args").and_then(|args| args.get("pin")).and_then(Value::as_str);
        let name = value.get("call").and_then(Value::as_str).unwrap_or_default();
        let brings = pin.is_some_and(|pin| !pin.is_empty()) || BRINGING.contains(&name);
        let asked = Asked::deserialize(value).map_err(serde::de::Error::custom)?;
        Ok(Self { asked, brings })
    }
}

/// The line. Its thread ends with it.
pub struct Line<D> {
    door: D,
    net: Net,
    signed: Sender<()>,
}

impl<D: Door + Send + Sync + 'static> Line<D> {
    /// A line to this app, and the thread that keeps it in step.
    pub fn new(door: D) -> Arc<Self> {
        let (signed, hears) = channel();
        let line = Arc::new(Self { door, net: Net::default(), signed });
        let weak = Arc::downgrade(&line);
        thread::spawn(move || keep_in_step(&weak, &hears));
        line
    }
}

impl<D: Door> Line<D> {
    /// Answers a call. It may take as long as the network does: never from a thread that others wait for.
    ///
    /// # Errors
    /// [`FaultView`], in the person's language.
    pub fn answer(&self, asking: Asking) -> Result<Value, FaultView> {
        let answered = match asking.asked {
            Asked::Here(call) => match self.door.app(|app| app.call(*call)) {
                Ok(answered) => answered,
                Err(fault) => Err(witnessmark_app::show(&fault)),
            },
            Asked::Net(call) => net_call(&self.door, &self.net, call),
        };
        if asking.brings && answered.is_ok() {
            // Without a thread that hears it there is nothing that would go by itself.
            let _ = self.signed.send(());
        }
        answered
    }

    /// A fault in the person's language.
    pub fn show(&self, fault: &Fault) -> FaultView {
        show(&self.door, fault)
    }

    /// How it stands, where there is a server that may be asked.
    fn stands(&self) -> Option<SyncView> {
        let sync = self.door.app(|app| app.school()).ok()?.ok()?.sync;
        (!matches!(sync.state.as_str(), "none" | "distrusted")).then_some(sync)
    }

    /// A round, where there is a server for it. False where it failed.
    fn round(&self) -> bool {
        self.stands().is_none() || sync(&self.door, &self.net).is_ok()
    }
}

fn keep_in_step<D: Door>(line: &Weak<Line<D>>, hears: &Receiver<()>) {
    let mut pause = USUAL;
    let mut next = Instant::now() + FIRST;
    loop {
        match hears.recv_timeout(next.saturating_duration_since(Instant::now())) {
            Err(RecvTimeoutError::Disconnected) => return,
            Err(RecvTimeoutError::Timeout) => {}
            Ok(()) => {
                thread::sleep(SIGNED);
                while hears.try_recv().is_ok() {}
                let Some(line) = line.upgrade() else { return };
                let waits = line.stands().is_some_and(|sync| sync.records > 0 || sync.photos > 0);
                if !waits {
                    continue;
                }
            }
        }
        let Some(line) = line.upgrade() else { return };
        pause = if line.round() { USUAL } else { LONGEST.min(pause * 2) };
        next = Instant::now() + pause;
    }
}
