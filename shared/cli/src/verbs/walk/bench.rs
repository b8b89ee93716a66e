//! A joint tightened in the terminal: nut by nut in its order, then told as a whole.

use std::time::SystemTime;

use witnessmark_app::views::{PointView, TorqueStep, TorqueView, Walk, WalkProgress};
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;
use witnessmark_core::torque::Adapter;
use witnessmark_core::units::Unit;

use super::tightened::Tightened;
use crate::reading;
use crate::verbs::tool;
use crate::voice::Voice;

/// How a round over the nuts ended.
pub enum Round {
    /// Told, and durable.
    Told(Box<WalkProgress>),
    /// Left by the person; the joint isn't told.
    Left,
    /// The input ended.
    Ended,
}

/// Ends a round before it is told.
struct Short(Round);

/// One line, or the end of the round.
type Line = Result<Result<String, Short>, Fault>;

/// Goes round: what is against the tool, the setting of each step, each nut's movement, the reading.
pub fn round(
    app: &mut App,
    walk: &Walk,
    voice: Voice,
    point: &PointView,
    named: &str,
    shown: SystemTime,
) -> Result<Round, Fault> {
    let tool = tool::find(app, named)?;
    let id = tool.kept.tool.to_string();
    let bench = Bench { app, voice };
    let adapter = match bench.adapter()? {
        Ok(adapter) => adapter,
        Err(Short(end)) => return Ok(end),
    };
    let plan = bench.app.torque_plan(walk.id.clone(), point.id.clone(), id.clone(), adapter)?;
    let mut told =
        Tightened { tool: id, eighths: Vec::new(), reading: None, adapter, because: String::new() };
    if let Err(Short(end)) = bench.go_round(&plan, &mut told)? {
        return Ok(end);
    }
    loop {
        let seconds = shown.elapsed().map_or(0.0, |spent| spent.as_secs_f64());
        match told.tell(bench.app, walk, &point.id, seconds) {
            Ok(progress) => return Ok(Round::Told(Box::new(progress))),
            // Nothing of the round is lost: only the reading and the reason can be wrong now.
            Err(fault) => bench.tell(&fault)?,
        }
        if let Err(Short(end)) = bench.once_more(&mut told)? {
            return Ok(end);
        }
    }
}

struct Bench<'a> {
    app: &'a mut App,
    voice: Voice,
}

impl Bench<'_> {
    fn words(&self, said: &Said) -> String {
        self.app.say(said)
    }

    fn tell(&self, fault: &Fault) -> Result<(), Fault> {
        let told = self.app.show(fault);
        self.voice.say(&format!("{}\n  {}", told.message, told.hint))
    }

    /// One line; `q` leaves the joint.
    fn ask(&self, said: &Said) -> Line {
        Ok(match self.voice.ask(&self.words(said))? {
            None => Err(Short(Round::Ended)),
            Some(line) if line == "q" => {
                self.voice.say(&self.words(&Said::new("cli-joint-left")))?;
                Err(Short(Round::Left))
            }
            Some(line) => Ok(line),
        })
    }

    /// Asks until what is typed can be read.
    fn ask_for<T>(
        &self,
        said: &Said,
        read: impl Fn(&str) -> Result<T, Fault>,
    ) -> Result<Result<T, Short>, Fault> {
        loop {
            match self.ask(said)? {
                Err(short) => return Ok(Err(short)),
                Ok(line) => match read(&line) {
                    Ok(read) => return Ok(Ok(read)),
                    Err(fault) => self.tell(&fault)?,
                },
            }
        }
    }

    fn adapter(&self) -> Result<Result<Option<Adapter>, Short>, Fault> {
        self.ask_for(&Said::new("cli-prompt-adapter"), |line| {
            if line.is_empty() { Ok(None) } else { adapter(line).map(Some) }
        })
    }

    fn go_round(&self, plan: &TorqueView, told: &mut Tightened) -> Result<Result<(), Short>, Fault> {
        let setting =
            Said::new("cli-bench").text("setting", &plan.setting).text("other", &plan.setting_other);
        self.voice.say(&format!("  {}\n  {}", self.words(&setting), plan.spread))?;
        for words in plan.borne.iter().chain(&plan.against) {
            self.voice.say(&format!("  {words}"))?;
        }
        if plan.standing == "refused" {
            match self.ask(&Said::new("cli-prompt-because"))? {
                Ok(because) if because.is_empty() => {
                    self.voice.say(&self.words(&Said::new("cli-joint-left")))?;
                    return Ok(Err(Short(Round::Left)));
                }
                Ok(because) => told.because = because,
                Err(short) => return Ok(Err(short)),
            }
        }
        let mut moved: Vec<(u32, u8)> = Vec::new();
        for step in &plan.steps {
            match self.step(step)? {
                Ok(Some(eighths)) => moved.push((step.nut, eighths)),
                Ok(None) => {}
                Err(short) => return Ok(Err(short)),
            }
        }
        moved.sort_by_key(|(nut, _)| *nut);
        told.eighths = moved.into_iter().map(|(_, eighths)| eighths).collect();
        self.reading(told)
    }

    /// One nut in one round; its movement where that is asked.
    fn step(&self, step: &TorqueStep) -> Result<Result<Option<u8>, Short>, Fault> {
        let said = Said::new(if step.movement { "cli-step-moved" } else { "cli-step" })
            .text("round", &step.stage_words)
            .number("nut", step.nut)
            .text("setting", &step.setting);
        if !step.movement {
            return Ok(self.ask(&said)?.map(|_| None));
        }
        self.ask_for(&said, |line| {
            line.parse().map(Some).map_err(|_| Fault::new("eighths").text("text", line))
        })
    }

    fn reading(&self, told: &mut Tightened) -> Result<Result<(), Short>, Fault> {
        let read = self.ask_for(&Said::new("cli-prompt-reading"), |line| {
            if line.is_empty() { Ok(None) } else { reading::quantity(line, None).map(Some) }
        })?;
        Ok(read.map(|reading| told.reading = reading))
    }

    /// After a fault: the reading as it is, and a reason to insist on it.
    fn once_more(&self, told: &mut Tightened) -> Result<Result<(), Short>, Fault> {
        if let Err(short) = self.reading(told)? {
            return Ok(Err(short));
        }
        Ok(self.ask(&Said::new("cli-prompt-insist"))?.map(|because| {
            if !because.is_empty() {
                told.because = because;
            }
        }))
    }
}

/// Reads `350 mm, 50 mm, 90`: lever, adapter, angle in degrees; the angle may be left out.
fn adapter(line: &str) -> Result<Adapter, Fault> {
    let mut parts = line.split(',').map(str::trim);
    let unreadable = || Fault::new("adapter").text("text", line);
    let mut length = || reading::quantity(parts.next().unwrap_or_default(), Some(Unit::Millimetre));
    let (lever, adapter) = (length().map_err(|_| unreadable())?, length().map_err(|_| unreadable())?);
    let angle_deg = parts.next().map_or(Ok(0.0), str::parse).map_err(|_| unreadable())?;
    if parts.next().is_some() {
        return Err(unreadable());
    }
    Ok(Adapter { lever, adapter, angle_deg })
}

#[cfg(test)]
mod tests {
    use super::*;
    use witnessmark_core::units::Quantity;

    #[test]
    fn an_adapter_is_read_with_or_without_its_angle() {
        let length = |value| Quantity::new(value, Unit::Millimetre);
        let bent = Adapter { lever: length(350.0), adapter: length(50.0), angle_deg: 90.0 };
        assert_eq!(adapter("350 mm, 50, 90").unwrap(), bent);
        assert_eq!(adapter("350, 50 mm").unwrap(), Adapter { angle_deg: 0.0, ..bent });
        for text in ["350", "350, x", "350, 50, right", "350, 50, 90, 1"] {
            assert_eq!(adapter(text).unwrap_err().kind, "adapter", "{text}");
        }
    }
}
