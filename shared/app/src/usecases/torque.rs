//! The torque bench: tools, what to set them to, and joints tightened.

use chrono::NaiveDate;
use witnessmark_core::list::{Ask, Given, ListPoint, ResolvedBand, Sourced, Step, Stud};
use witnessmark_core::record::{Body, ToolKept, TorqueDone};
use witnessmark_core::said::Said;
use witnessmark_core::torque::{
    Adapter, Between, Layout, Period, Place, Plan, Recheck, Sign, Stage, Tool, ToolReason, ToolStanding,
    TorqueFault, Wanted, default_stages, signs, slips,
};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_store::Tx;

use super::walking::Going;
use crate::house::{House, id};
use crate::views::{ToolView, TorqueAsk, TorqueStep, TorqueView, WalkProgress};
use crate::{App, Fault, identity};

/// How near a reading must lie to a mistaken unit's value to be explained by it, a share.
const SLIP_TOLERANCE: f64 = 0.1;
/// Most eighths before a click that anybody would enter on purpose: two turns.
const MOST_EIGHTHS: u8 = 16;

impl App {
    /// The torque tools, by name.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn tools(&mut self) -> Result<Vec<ToolView>, Fault> {
        self.store.read(|tx| self.house.tool_views(tx))
    }

    /// Registers a torque tool (`tool` all zeros) or describes it anew.
    ///
    /// # Errors
    /// [`Fault`]: no name, a range that is none, a wrong PIN.
    pub fn tool_save(&mut self, kept: Option<ToolKept>, pin: String) -> Result<Vec<ToolView>, Fault> {
        let mut kept = kept.ok_or_else(|| Fault::new("tool-name"))?;
        kept.name = kept.name.trim().to_owned();
        if kept.name.is_empty() {
            return Err(Fault::new("tool-name"));
        }
        if kept.tool.is_nil() {
            kept.tool = self.house.uuid()?;
        }
        let range = (kept.low.to(Unit::NewtonMetre), kept.high.to(Unit::NewtonMetre));
        let (Ok(low), Ok(high)) = range else { return Err(Fault::new("tool-range")) };
        if low.value <= 0.0 || high.value <= low.value || kept.low.unit != kept.high.unit {
            return Err(Fault::new("tool-range"));
        }
        if kept.every_days == 0 || kept.every_cycles == 0 {
            return Err(Fault::new("tool-interval"));
        }
        tool(&kept, 0).deviation().map_err(|fault| torque_fault(&fault))?;
        if kept.calibrated_on > Some(self.house.now().date_naive()) {
            return Err(Fault::new("tool-calibrated-ahead"));
        }
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            self.house.write_record(tx, &seed, None, &Body::ToolKept(kept))?;
            self.house.tool_views(tx)
        })
    }

    /// How to tighten a joint with a tool.
    ///
    /// # Errors
    /// [`Fault`]: a point that isn't tightened, a limit without a number, no such tool.
    pub fn torque_plan(
        &mut self,
        walk: String,
        point: String,
        tool: String,
        adapter: Option<Adapter>,
    ) -> Result<TorqueView, Fault> {
        let (walk, tool) = (id(&walk)?, id(&tool)?);
        self.store.read(|tx| {
            let going = self.house.going(tx, walk)?;
            let bench = self.house.bench(tx, &going, &point, tool, adapter)?;
            self.house.torque_view(&bench)
        })
    }

    /// Tells that a joint was tightened: each nut's movement before the click, and a reading where
    /// the tool reads. Durable when it returns.
    ///
    /// # Errors
    /// [`Fault`]: not every nut told, a tool that may not be used without a reason, a reading
    /// that a mistaken unit would explain.
    #[allow(clippy::too_many_arguments)]
    pub fn torque_done(
        &mut self,
        walk: String,
        point: String,
        tool: String,
        adapter: Option<Adapter>,
        eighths: Vec<u8>,
        reading: Option<Quantity>,
        override_reason: String,
        seconds: f64,
    ) -> Result<WalkProgress, Fault> {
        let (walk_id, tool) = (id(&walk)?, id(&tool)?);
        let torque = self.store.read(|tx| {
            let going = self.house.going(tx, walk_id)?;
            let bench = self.house.bench(tx, &going, &point, tool, adapter)?;
            self.house.tightened(&bench, &eighths, reading, override_reason.trim())
        })?;
        let seconds = if seconds.is_finite() { seconds.clamp(0.0, 3600.0) } else { 0.0 };
        self.step(&walk, |house, _| {
            Ok(Step::Answered { point, given: Given::Torque { torque }, seconds, at: house.now() })
        })
    }
}

/// A joint, a tool and what goes between.
struct Bench {
    kept: ToolKept,
    tool: Tool,
    wanted: Wanted,
    band: ResolvedBand,
    nuts: u32,
    stud: Option<Stud>,
    /// Earlier movements of the same nuts.
    passes: Vec<Vec<u8>>,
    today: NaiveDate,
}

fn tool(kept: &ToolKept, clicks: u32) -> Tool {
    Tool {
        marked: Between::new(kept.low, kept.high),
        deviation: Some(Quantity::new(kept.deviation_percent, Unit::Percent)),
        calibrated_on: kept.calibrated_on,
        cycles: kept.cycles.saturating_add(clicks),
        dropped: kept.dropped,
        recheck: Recheck { every: Period::Days(kept.every_days), cycles: kept.every_cycles },
    }
}

fn torque_fault(fault: &TorqueFault) -> Fault {
    Fault::new("torque").text("why", fault)
}

impl Bench {
    fn layout(&self) -> Layout {
        layout(self.nuts)
    }

    fn setting(&self) -> Result<Quantity, Fault> {
        self.wanted.setting(1.0).map_err(|fault| torque_fault(&fault))
    }

    /// What the nut gets of a torque at the tool, a share.
    fn gain(&self) -> Result<f64, Fault> {
        self.wanted.adapter.map_or(Ok(1.0), Adapter::gain).map_err(|fault| torque_fault(&fault))
    }
}

fn layout(nuts: u32) -> Layout {
    Layout::Circle { nuts: usize::try_from(nuts).unwrap_or(1) }
}

impl House {
    fn tools_kept(&self, tx: &Tx<'_>) -> Result<Vec<(ToolKept, u32)>, Fault> {
        let mut kept: Vec<(ToolKept, i64)> = Vec::new();
        for record in tx.records_of(None)? {
            if let Ok(Body::ToolKept(body)) = record.payload.typed() {
                kept.retain(|(known, _)| known.tool != body.tool);
                kept.push((body, record.payload.at.timestamp_millis()));
            }
        }
        kept.sort_by(|(a, _), (b, _)| a.name.cmp(&b.name));
        kept.into_iter()
            .map(|(kept, since)| Ok((tx.clicks(kept.tool, since)?, kept)))
            .map(|r| r.map(|(c, k)| (k, c)))
            .collect()
    }

    /// The torque tools whose calibration falls due on a known day.
    pub(crate) fn tools_due(&self, tx: &Tx<'_>) -> Result<Vec<(ToolKept, NaiveDate)>, Fault> {
        let kept = self.tools_kept(tx)?.into_iter();
        Ok(kept.filter_map(|(kept, clicks)| tool(&kept, clicks).due().map(|day| (kept, day))).collect())
    }

    fn tool_views(&self, tx: &Tx<'_>) -> Result<Vec<ToolView>, Fault> {
        let today = self.now().date_naive();
        let kept = self.tools_kept(tx)?;
        kept.into_iter()
            .map(|(kept, clicks)| {
                let tool = tool(&kept, clicks);
                let stands = tool.judge(kept.high, today, None).map_err(|fault| torque_fault(&fault))?;
                let against: Vec<String> = stands.reasons().iter().map(|r| self.reason_words(r)).collect();
                let words = match (against.is_empty(), tool.due()) {
                    (false, _) => against.join(" "),
                    (true, Some(due)) => self.say(&Said::new("tool-good-until").date("day", due)),
                    (true, None) => String::new(),
                };
                Ok(ToolView {
                    cycles: tool.cycles,
                    usable: !matches!(stands, ToolStanding::Refused(_)),
                    words,
                    kept,
                })
            })
            .collect()
    }

    fn bench(
        &self,
        tx: &Tx<'_>,
        going: &Going,
        point: &str,
        tool_id: uuid::Uuid,
        adapter: Option<Adapter>,
    ) -> Result<Bench, Fault> {
        let missing = || Fault::new("no-such-point").text("point", point);
        let point: &ListPoint = going.body.list.point(point).ok_or_else(missing)?;
        let Ask::Torque { joint, band, nuts } = &point.ask else {
            let what = if matches!(point.ask, Ask::Value { .. }) { "value" } else { "words" };
            return Err(Fault::new("answer-kind").text("what", what).text("point", &point.id));
        };
        let (kept, clicks) = self
            .tools_kept(tx)?
            .into_iter()
            .find(|(kept, _)| kept.tool == tool_id)
            .ok_or_else(|| Fault::new("no-such-tool"))?;
        let end = |end: &Option<Sourced>| end.as_ref().and_then(Sourced::quantity);
        let (low, high) = match (end(&band.low), end(&band.high)) {
            (Some(low), Some(high)) => (low, high),
            (Some(only), None) | (None, Some(only)) => (only, only),
            (None, None) => {
                let words = self.word(&format!("band-{}", band.name));
                return Err(Fault::new("limit-needed").text("band", words));
            }
        };
        let high = high.to(low.unit).map_err(|fault| Fault::new("unit").text("why", fault))?;
        let wanted = Wanted { band: Between::new(low, high), drag: None, rule: Default::default(), adapter };
        Ok(Bench {
            tool: tool(&kept, clicks),
            kept,
            wanted,
            band: band.clone(),
            nuts: *nuts,
            stud: self.stud(tx, going, joint)?,
            passes: self.passes(tx, going, &point.id, *nuts)?,
            today: self.now().date_naive(),
        })
    }

    /// What holds a joint of the walked machine's engine, where its data sheet knows.
    fn stud(&self, tx: &Tx<'_>, going: &Going, joint: &str) -> Result<Option<Stud>, Fault> {
        let history = self.known(tx, going.draft.machine)?;
        let sheet = self.machinery(&history).map(|machinery| machinery.sheet);
        Ok(sheet.and_then(|sheet| sheet.studs.get(joint)).map(|stud| stud.get_ref().clone()))
    }

    /// How the nuts moved before, in the joint's present series.
    fn passes(&self, tx: &Tx<'_>, going: &Going, point: &str, nuts: u32) -> Result<Vec<Vec<u8>>, Fault> {
        let history = self.known(tx, going.draft.machine)?;
        let job = going.body.job.as_ref().and_then(|record| history.work.job(record));
        let mut passes = job.map(|job| history.work.passes(job, point)).unwrap_or_default();
        // Another number of nuts is another engine.
        passes.retain(|pass| pass.len() == nuts as usize);
        Ok(passes)
    }

    /// The setting weighed against what the joint bears: a sentence, and what of it wants watching.
    fn weighed(&self, bench: &Bench, setting: Quantity) -> Result<Option<(String, Vec<ToolReason>)>, Fault> {
        let Some(stud) = &bench.stud else { return Ok(None) };
        let weigh = || {
            let joint = stud.joint()?;
            bench.tool.weigh(setting, bench.wanted.adapter, None, &joint)
        };
        let (clamp, reasons) = weigh().map_err(|fault| torque_fault(&fault))?;
        let kilonewton = |quantity: Quantity| format!("{:.1}", quantity.value / 1000.0);
        let percent = |share: Option<Between<f64>>| share.map_or(0.0, |share| (share.high * 100.0).round());
        let yields = clamp.yield_share.or(clamp.proof_share);
        let said = Said::new(if reasons.is_empty() { "torque-borne" } else { "torque-not-borne" })
            .text("thread", stud.thread.name())
            .text("class", stud.class.name())
            .figures("low", kilonewton(clamp.preload.low))
            .figures("high", kilonewton(clamp.preload.high))
            .number("percent", percent(yields))
            .figures("margin", clamp.strip_margin.map_or("–".into(), |margin| format!("{:.1}", margin.low)))
            .text("confirmed", if stud.source.is_some() { "yes" } else { "no" });
        Ok(Some((self.say(&said), reasons)))
    }

    /// The setting in the tool's own unit first: that is what its scale shows.
    fn both_units(&self, bench: &Bench, setting: Quantity) -> (String, String) {
        let scale = bench.kept.low.unit;
        let other = if scale == Unit::NewtonMetre { Unit::PoundForceInch } else { Unit::NewtonMetre };
        let show = |unit| setting.to(unit).map(|q| shown(q).to_string()).unwrap_or_default();
        (show(scale), show(other))
    }

    fn torque_view(&self, bench: &Bench) -> Result<TorqueView, Fault> {
        let setting = bench.setting()?;
        let weighed = self.weighed(bench, setting)?;
        let (borne, harm) = weighed.unzip();
        let stands = bench.tool.judge(setting, bench.today, None).map_err(|fault| torque_fault(&fault))?;
        let stands = stands.watching(harm.unwrap_or_default());
        let stages = default_stages();
        // Without the tool here: a setting off its scale is told as a reason, not as a fault.
        let plan =
            Plan::new(bench.layout(), &stages, &bench.wanted, None).map_err(|fault| torque_fault(&fault))?;
        let spread = bench.wanted.spread(&bench.tool).map_err(|fault| torque_fault(&fault))?;
        let (setting_words, setting_other) = self.both_units(bench, setting);
        let steps = plan.steps.iter().map(|step| {
            let stage = stages.get(step.stage.saturating_sub(1));
            TorqueStep {
                stage: u32::try_from(step.stage).unwrap_or(u32::MAX),
                stage_words: match stage {
                    Some(Stage::Check) => self.word("stage-check"),
                    Some(Stage::Share(share)) => {
                        self.say(&Said::new("stage-share").number("percent", share * 100.0))
                    }
                    None => String::new(),
                },
                nut: u32::try_from(step.nut).unwrap_or(u32::MAX),
                setting: self.both_units(bench, step.setting).0,
                movement: matches!(stage, Some(Stage::Share(share)) if *share >= 1.0),
            }
        });
        Ok(TorqueView {
            standing: match stands {
                ToolStanding::Fit => "fit",
                ToolStanding::Watch(_) => "watch",
                ToolStanding::Refused(_) => "refused",
            }
            .to_owned(),
            against: stands.reasons().iter().map(|reason| self.reason_words(reason)).collect(),
            setting: setting_words,
            setting_other,
            spread: self.say(
                &Said::new("torque-spread")
                    .text("tool", &bench.kept.name)
                    .figures("deviation", shown(Quantity::new(bench.kept.deviation_percent, Unit::One)))
                    .figures("low", shown(spread.low))
                    .figures("high", shown(spread.high)),
            ),
            borne,
            steps: steps.collect(),
        })
    }

    fn tightened(
        &self,
        bench: &Bench,
        eighths: &[u8],
        reading: Option<Quantity>,
        because: &str,
    ) -> Result<TorqueDone, Fault> {
        if eighths.len() != bench.nuts as usize || eighths.iter().any(|n| *n > MOST_EIGHTHS) {
            return Err(Fault::new("torque-nuts").number("nuts", bench.nuts));
        }
        let setting = bench.setting()?;
        let reason = (!because.is_empty()).then_some(because);
        let stands = bench.tool.judge(setting, bench.today, reason).map_err(|fault| torque_fault(&fault))?;
        if let ToolStanding::Refused(reasons) = &stands {
            let why: Vec<String> = reasons.iter().map(|reason| self.reason_words(reason)).collect();
            return Err(Fault::new("tool-refused").text("why", why.join(" ")));
        }
        // The tool reads what it gives; the nut, behind an adapter, gets more or less of it.
        let gain = bench.gain()?;
        let times = |quantity: Quantity, by: f64| Quantity::new(quantity.value * by, quantity.unit);
        let (read, reading) = (reading, reading.map(|reading| times(reading, gain)));
        if let (Some(read), Some(reading)) = (read, reading) {
            let slip =
                slips(reading, bench.wanted.band, SLIP_TOLERANCE).map_err(|fault| torque_fault(&fault))?;
            // Insisted on with a reason, it is taken as it was read: then the joint is a defect.
            if let (Some(slip), None) = (slip.first(), reason) {
                return Err(Fault::new("torque-slip")
                    .figures("reading", read)
                    .figures("meant", shown(times(slip.would_be, gain.recip())))
                    .text("band", &bench.band));
            }
        }
        let spread = bench.wanted.spread(&bench.tool).map_err(|fault| torque_fault(&fault))?;
        let mut passes = bench.passes.clone();
        passes.push(eighths.to_vec());
        let signs = signs(&passes).map_err(|fault| torque_fault(&fault))?;
        let over = reading.filter(|reading| bench.wanted.band.place(*reading).ok() == Some(Place::Above));
        let harmed = match over.and(read) {
            Some(read) => self.weighed(bench, read)?.map(|(words, _)| words),
            None => None,
        };
        let over = over.map(|reading| {
            let most = bench.wanted.band.high.to(reading.unit).map_or(reading.value, |high| high.value);
            self.say(
                &Said::new("torque-over").number("percent", ((reading.value / most - 1.0) * 100.0).round()),
            )
        });
        let against =
            stands.reasons().iter().map(|reason| self.reason_words(reason)).chain(over).chain(harmed);
        let moved = signs.iter().map(|sign| self.sign_words(sign));
        Ok(TorqueDone {
            tool: bench.kept.tool,
            tool_name: bench.kept.name.clone(),
            setting,
            least: spread.low,
            most: spread.high,
            eighths: eighths.to_vec(),
            reading,
            watch: against.chain(moved).collect(),
            override_reason: reason.map(str::to_owned),
        })
    }

    /// What a joint's tightening asks on its screen.
    pub(crate) fn torque_ask(&self, joint: &str, band: &ResolvedBand, nuts: u32) -> TorqueAsk {
        // Four nuts lie on a square head's corners.
        let turned = if nuts == 4 { 45.0 } else { 0.0 };
        TorqueAsk {
            joint: joint.to_owned(),
            words: self.band_words(band),
            source: self.source_words(band),
            band: band.name.clone(),
            has_number: band.has_number(),
            nuts,
            positions: layout(nuts).positions(turned).unwrap_or_default(),
            units: self.units_beside(band.unit()),
        }
    }

    /// The words of a joint's own point.
    pub(crate) fn torque_point_words(&self, joint: &str, attribute: Option<&str>) -> String {
        let id = match attribute {
            None => "torque-title".to_owned(),
            Some(attribute) => format!("torque-{attribute}"),
        };
        self.say(&Said::new(id).text("joint", self.word(&format!("joint-{joint}"))))
    }

    /// A tightening as a person reads it.
    pub(crate) fn torque_words(&self, torque: &TorqueDone) -> String {
        let turns: Vec<String> = torque.eighths.iter().map(ToString::to_string).collect();
        let said = Said::new(if torque.watch.is_empty() { "torque-done" } else { "torque-done-watch" })
            .figures("setting", shown(torque.setting))
            .text("tool", &torque.tool_name)
            .text("eighths", turns.join(", "))
            .text("watch", torque.watch.join(" "));
        self.say(&said)
    }

    fn reason_words(&self, reason: &ToolReason) -> String {
        self.say(&match reason {
            ToolReason::OutsideRange => Said::new("tool-outside-range"),
            ToolReason::Overdue { since } => Said::new("tool-overdue").date("day", *since),
            ToolReason::Worn { cycles, allowed } => {
                Said::new("tool-worn").number("cycles", *cycles).number("allowed", *allowed)
            }
            ToolReason::Dropped => Said::new("tool-dropped"),
            ToolReason::NeverCalibrated => Said::new("tool-never-calibrated"),
            ToolReason::CalibratedLater { on } => Said::new("tool-calibrated-later").date("day", *on),
            ToolReason::JointLimit { .. } => Said::new("tool-joint-limit"),
            ToolReason::Overridden { because } => Said::new("tool-overridden").text("because", because),
        })
    }

    fn sign_words(&self, sign: &Sign) -> String {
        self.say(&match sign {
            Sign::TooFar { nut, eighths } => {
                Said::new("movement-too-far").number("nut", *nut as f64).number("eighths", *eighths)
            }
            Sign::Uneven { least, most } => {
                Said::new("movement-uneven").number("least", *least).number("most", *most)
            }
            Sign::Growing { nut, before, now } => Said::new("movement-growing")
                .number("nut", *nut as f64)
                .number("before", *before)
                .number("now", *now),
        })
    }
}

/// Rounded as a scale can be set: three figures that count.
fn shown(quantity: Quantity) -> Quantity {
    quantity.significant(3)
}
