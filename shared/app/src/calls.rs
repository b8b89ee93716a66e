//! Everything a face can ask for, in one table: the name, what goes in, what comes out.
//!
//! Each call is one use case with one transaction. The table makes the enum that the shell
//! and the loopback server read from JSON, its dispatch, and the UI's types.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use ts_rs::{TS, TypeVisitor};
use witnessmark_core::list::Given;
use witnessmark_core::record::{JointSeen, Machine, Service, ToolKept};
use witnessmark_core::torque::Adapter;
use witnessmark_core::units::Quantity;

use crate::views::*;
use crate::{App, Fault, FaultView};

macro_rules! calls {
    ($($(#[doc = $doc:literal])* $variant:ident $name:literal $method:ident ( $($arg:ident: $ty:ty),* ) -> $reply:ty;)*) => {
        /// A call with its arguments, as `{"call": NAME, "args": {…}}`.
        #[derive(Clone, Debug, Deserialize, Serialize)]
        #[serde(tag = "call", content = "args")]
        #[allow(missing_docs)]
        pub enum Call {
            $($(#[doc = $doc])* #[serde(rename = $name)] $variant { $(#[serde(default)] $arg: $ty),* },)*
        }

        impl App {
            /// Does what the call asks for, and gives the reply as JSON.
            ///
            /// # Errors
            /// [`FaultView`], in the person's language.
            pub fn call(&mut self, call: Call) -> Result<serde_json::Value, FaultView> {
                match call {
                    $(Call::$variant { $($arg),* } => {
                        self.$method($($arg),*).and_then(reply).map_err(|fault| self.show(&fault))
                    })*
                }
            }
        }

        /// The TypeScript of all calls and of every type in them.
        pub fn typescript() -> String {
            let config = ts_rs::Config::new();
            let mut types = Types { config: &config, declared: BTreeMap::new() };
            types.visit::<FaultView>();
            $(
                $(types.visit::<$ty>();)*
                types.visit::<$reply>();
            )*
            let mut text = String::from("// Generated from the Rust types by `make types`; do not edit.\n\n");
            types.declared.values().for_each(|declared| text.push_str(declared));
            text.push_str("/** Every call: what goes in, what comes out. */\nexport interface Calls {\n");
            $({
                $(text.push_str(&format!("  /**{} */\n", $doc));)*
                let args: Vec<String> =
                    vec![$(format!("{}: {}", stringify!($arg), <$ty as TS>::name(&config))),*];
                text.push_str(&format!(
                    "  \"{}\": {{ args: {{ {} }}; reply: {} }};\n",
                    $name, args.join("; "), <$reply as TS>::name(&config),
                ));
            })*
            text.push_str("}\n");
            text
        }
    };
}

/// Collects the declarations of types and of all that they are made of.
struct Types<'a> {
    config: &'a ts_rs::Config,
    declared: BTreeMap<String, String>,
}

impl ts_rs::TypeVisitor for Types<'_> {
    fn visit<T: TS + 'static + ?Sized>(&mut self) {
        if T::output_path().is_some() {
            let name = T::ident(self.config);
            if self.declared.contains_key(&name) {
                return;
            }
            let docs = T::docs().unwrap_or_default();
            self.declared.insert(name, format!("{docs}export {}\n\n", T::decl(self.config)));
        }
        T::visit_dependencies(self);
        T::visit_generics(self);
    }
}

fn reply(value: impl Serialize) -> Result<serde_json::Value, Fault> {
    serde_json::to_value(value).map_err(Fault::internal)
}

calls! {
    /// What the app is when it opens.
    Start "start" start() -> Start;
    /// First start: makes this device's key and seals it with the PIN.
    Begin "begin" begin(name: String, pin: String) -> Start;
    /// Changes the PIN.
    ChangePin "change-pin" change_pin(old: String, new: String) -> Start;
    /// Changes what this device keeps to itself: language, patience.
    Settings "settings" settings(language: String, patience_minutes: u32) -> Start;
    /// All drawings, by name: SVG to be inlined.
    Drawings "drawings" drawings() -> BTreeMap<String, String>;
    /// Adds the invented machines of the demonstration.
    Demo "demo" demo() -> Vec<MachineCard>;
    /// All machines, those that need a person first.
    Machines "machines" machines() -> Vec<MachineCard>;
    /// What a machine can be made of.
    Choices "choices" choices() -> Choices;
    /// Registers a machine (`id` empty) or describes it anew.
    MachineSave "machine-save" machine_save(id: String, description: Option<Machine>, pin: String) -> MachinePage;
    /// Everything about one machine.
    Machine "machine" machine(id: String) -> MachinePage;
    /// Opens or resumes an inspection.
    Walk "walk" walk(machine: String, occasion: String) -> Walk;
    /// Answers a point; durable when it returns.
    Answer "answer" answer(walk: String, point: String, given: Option<Given>, seconds: f64) -> WalkProgress;
    /// What a value would mean, while it is being typed.
    Judge "judge" judge_value(walk: String, point: String, value: Option<Quantity>) -> JudgedView;
    /// Takes back the last answer; it stays in the record's history.
    Undo "undo" undo(walk: String) -> WalkProgress;
    /// Leaves a point for now.
    Leave "leave" leave(walk: String, point: String) -> WalkProgress;
    /// Writes the note beside a point.
    Note "note" note(walk: String, point: String, note: String) -> WalkProgress;
    /// Puts a picture (JPEG, PNG or WebP, base64) to a point.
    PhotoAdd "photo-add" photo_add(walk: String, point: String, data: String) -> WalkProgress;
    /// A picture by its digest.
    Photo "photo" photo(digest: String) -> Photo;
    /// The inspection said back.
    Summary "summary" summary(walk: String) -> Summary;
    /// Signs and closes the inspection.
    Sign "sign" sign(walk: String, pin: String) -> Signed;
    /// Puts an inspection aside without signing; what was answered is kept, unsigned.
    PutAside "put-aside" put_aside(walk: String) -> MachinePage;
    /// A record laid open, by its digest or by the text in a record sheet's code.
    Record "record" record(digest: String) -> RecordView;
    /// Signs that what is open at a point was put right.
    Rectify "rectify" rectify(machine: String, point: String, how: String, pin: String) -> MachinePage;
    /// Signs a later word on a finding.
    Correct "correct" correct(record: String, point: String, answer: String, reason: String, pin: String) -> MachinePage;
    /// Signs a limit as the maker's manual has it.
    ConfirmLimit "confirm-limit" confirm_limit(machine: String, band: String, low: Option<Quantity>, high: Option<Quantity>, document: String, page: String, pin: String) -> MachinePage;
    /// Logs time in service; it is signed with the next signature.
    LogTime "log-time" log_time(machine: String, added: Option<Service>, reading: Option<f64>, note: String) -> MachinePage;
    /// Takes back the time logged last, while nobody has signed it.
    LogUndo "log-undo" log_undo(machine: String) -> MachinePage;
    /// Signs that a defect may wait, within limits.
    Defer "defer" defer(machine: String, point: String, until_hours: Option<f64>, until_flights: Option<u32>, until_date: Option<String>, condition: String, reason: String, pin: String) -> MachinePage;
    /// Keeps something that falls due again and again, changes it, ends it, or signs that it was done.
    DueSave "due-save" due_save(machine: String, form: Option<DueForm>, ended: bool, pin: String) -> MachinePage;
    /// Fits a component that is new here, with the time in service it brings.
    ComponentFit "component-fit" component_fit(machine: String, part: String, name: String, serial: String, own: Option<Service>, pin: String) -> MachinePage;
    /// Takes a component off, and fits it to another machine where one is named.
    ComponentMove "component-move" component_move(machine: String, component: String, to: Option<String>, pin: String) -> MachinePage;
    /// Jobs that can be done on a machine.
    JobChoices "job-choices" job_choices(machine: String) -> Vec<JobChoice>;
    /// What doing these jobs means, before anything is signed.
    JobPlan "job-plan" job_plan(machine: String, jobs: Vec<String>) -> JobPlan;
    /// Signs that work was begun: the machine stays on the ground until it is released.
    JobBegin "job-begin" job_begin(machine: String, jobs: Vec<String>, note: String, pin: String) -> MachinePage;
    /// Signs that the inspections of the open job are complete.
    JobRelease "job-release" job_release(machine: String, pin: String) -> MachinePage;
    /// The torque tools.
    Tools "tools" tools() -> Vec<ToolView>;
    /// Registers a torque tool (`tool` all zeros) or describes it anew.
    ToolSave "tool-save" tool_save(kept: Option<ToolKept>, pin: String) -> Vec<ToolView>;
    /// How to tighten a joint with a tool.
    TorquePlan "torque-plan" torque_plan(walk: String, point: String, tool: String, adapter: Option<Adapter>) -> TorqueView;
    /// Tells that a joint was tightened.
    TorqueDone "torque-done" torque_done(walk: String, point: String, tool: String, adapter: Option<Adapter>, eighths: Vec<u8>, reading: Option<Quantity>, override_reason: String, seconds: f64) -> WalkProgress;
    /// What to show to another phone so that its person looks at the open job's critical joints.
    SecondLookAsk "second-look-ask" second_look_ask(machine: String) -> CodeOut;
    /// Opens what another phone asks.
    SecondLookOpen "second-look-open" second_look_open(text: String) -> SecondLookView;
    /// Signs what was seen, and gives the text to show back.
    SecondLookSign "second-look-sign" second_look_sign(text: String, joints: Vec<JointSeen>, pin: String) -> CodeOut;
    /// Takes what the other phone shows back.
    SecondLookTake "second-look-take" second_look_take(machine: String, text: String) -> MachinePage;
    /// Another person of this device signs what they saw at the open job's joints.
    SecondLookHere "second-look-here" second_look_here(machine: String, device: String, joints: Vec<JointSeen>, pin: String) -> MachinePage;
    /// The other people who sign on this device.
    SecondPeople "second-people" second_people() -> Vec<SecondPerson>;
    /// Another person who signs on this device, with a key and PIN of their own.
    SecondPersonAdd "second-person-add" second_person_add(name: String, pin: String) -> Vec<SecondPerson>;
    /// The text in a picture of a code (base64).
    ReadCode "read-code" read_code(data: String) -> String;
    /// The machine that a label's code names.
    OpenLabel "open-label" open_label(text: String) -> MachinePage;
    /// One machine's records as a bundle.
    Export "export" export(machine: String) -> FileOut;
    /// The record sheet of an inspection, or of a job by any of its records, as PDF; `paper` is `a4` or `letter`.
    Sheet "sheet" sheet(record: String, paper: String) -> FileBytes;
    /// The label of a machine as PDF.
    Label "label" label(machine: String) -> FileBytes;
    /// Everything of one machine as a table, one row a fact.
    Csv "csv" csv(machine: String) -> FileBytes;
    /// What falls due on a machine, as an iCalendar file.
    Calendar "calendar" calendar(machine: String) -> FileBytes;
    /// Checks a bundle with nothing but itself.
    Verify "verify" verify(text: String) -> VerifyView;
}
