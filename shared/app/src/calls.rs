//! Everything a face can ask for, in one table: the name, what goes in, what comes out.
//!
//! Each call is one use case with one transaction. The table makes the enum that the shell
//! and the loopback server read from JSON, its dispatch, and the UI's types.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use ts_rs::{TS, TypeVisitor};
use witnessmark_core::list::Given;
use witnessmark_core::record::{FlightPlanned, JointSeen, Machine, Role, Service, ToolKept};
use witnessmark_core::runlog::Mapping;
use witnessmark_core::torque::Adapter;
use witnessmark_core::units::Quantity;

use crate::views::*;
use crate::{App, Fault, FaultView};

macro_rules! calls {
    (
        $($(#[doc = $doc:literal])* $variant:ident $name:literal $method:ident ( $($arg:ident: $ty:ty),* ) -> $reply:ty;)*
        @ net
        $($(#[doc = $net_doc:literal])* $net_variant:ident $net_name:literal ( $($net_arg:ident: $net_ty:ty),* ) -> $net_reply:ty;)*
    ) => {
        /// A call that needs the network, which the face has (see `witnessmark_host`).
        #[derive(Clone, Debug, Deserialize, Serialize)]
        #[serde(tag = "call", content = "args")]
        #[allow(missing_docs)]
        pub enum NetCall {
            $($(#[doc = $net_doc])* #[serde(rename = $net_name)] $net_variant { $(#[serde(default)] $net_arg: $net_ty),* },)*
        }

        /// The names of [`NetCall`]s.
        const NET: &[&str] = &[$($net_name),*];

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
            $(
                $(types.visit::<$net_ty>();)*
                types.visit::<$net_reply>();
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
            $({
                types_of_net(&mut text, $net_name, &[$($net_doc),*], &[$((stringify!($net_arg), <$net_ty as TS>::name(&config))),*], <$net_reply as TS>::name(&config));
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

fn types_of_net(text: &mut String, name: &str, docs: &[&str], args: &[(&str, String)], reply: String) {
    docs.iter().for_each(|doc| text.push_str(&format!("  /**{doc} */\n")));
    let args: Vec<String> = args.iter().map(|(name, ty)| format!("{name}: {ty}")).collect();
    text.push_str(&format!("  \"{name}\": {{ args: {{ {} }}; reply: {reply} }};\n", args.join("; ")));
}

/// What a screen asks for: of this device, or of the network too.
#[derive(Clone, Debug)]
pub enum Asked {
    /// Of this device.
    Here(Box<Call>),
    /// Of the network too.
    Net(NetCall),
}

impl<'de> Deserialize<'de> for Asked {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let value = serde_json::Value::deserialize(deserializer)?;
        let name = value.get("call").and_then(serde_json::Value::as_str).unwrap_or_default();
        let net = NET.contains(&name);
        let read = |fault: serde_json::Error| serde::de::Error::custom(fault);
        if net {
            serde_json::from_value(value).map(Self::Net).map_err(read)
        } else {
            serde_json::from_value(value).map(|call| Self::Here(Box::new(call))).map_err(read)
        }
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
    /// Changes what this device keeps to itself: language, patience, reading aloud, units.
    Settings "settings" settings(language: String, patience_minutes: u32, read_aloud: bool, units: Option<UnitChoice>) -> Start;
    /// All drawings, by name: SVG to be inlined.
    Drawings "drawings" drawings() -> BTreeMap<String, String>;
    /// Adds the invented machines of the demonstration.
    Demo "demo" demo() -> Vec<MachineCard>;
    /// Founds the demonstration's invented school, with a season of history.
    DemoSchool "demo-school" demo_school(pin: String) -> SchoolView;
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
    /// Logs time in service, and fuel burned where it was measured; it is signed with the next signature.
    LogTime "log-time" log_time(machine: String, added: Option<Service>, reading: Option<f64>, note: String, fuel: Option<Quantity>) -> MachinePage;
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
    /// Everything on this device as a bundle.
    ExportAll "export-all" export_all() -> FileOut;
    /// Takes a bundle's records.
    Import "import" import(text: String) -> ImportView;
    /// Lines from a server that were not taken as records.
    Refused "refused" refused() -> Vec<RefusedView>;
    /// Puts away such a line.
    RefusedAway "refused-away" refused_away(number: f64) -> Vec<RefusedView>;
    /// First start of another device of a person, by the code that their first one shows.
    BeginAs "begin-as" begin_as(text: String, pin: String) -> Start;
    /// This device's place in a school.
    School "school" school() -> SchoolView;
    /// Founds a school: this device is its root.
    SchoolFound "school-found" school_found(name: String, pin: String) -> SchoolView;
    /// What this device shows to be admitted.
    SchoolCode "school-code" school_code() -> CodeOut;
    /// Who asks, by the code that their device shows.
    SchoolApplicant "school-applicant" school_applicant(text: String) -> ApplicantView;
    /// Admits that device, and gives the text to show back.
    SchoolAdmit "school-admit" school_admit(text: String, role: Option<Role>, until: Option<String>, pin: String) -> CodeOut;
    /// Joins a school by the code shown back, or takes another device's word that it is one's own.
    SchoolJoin "school-join" school_join(text: String, pin: String) -> SchoolView;
    /// Leaves the school.
    SchoolLeave "school-leave" school_leave(pin: String) -> SchoolView;
    /// Signs that another device is this person's too, and gives the text to show it.
    SchoolVouch "school-vouch" school_vouch(text: String, pin: String) -> CodeOut;
    /// Gives a member another role or end.
    SchoolRole "school-role" school_role(person: String, role: Option<Role>, until: Option<String>, pin: String) -> SchoolView;
    /// Ends a membership.
    SchoolEnd "school-end" school_end(person: String, reason: String, pin: String) -> SchoolView;
    /// Ends a key: of a lost phone.
    KeyEnd "key-end" key_end(device: String, reason: String, pin: String) -> SchoolView;
    /// Hands the root over to another member's device.
    SchoolHand "school-hand" school_hand(device: String, pin: String) -> SchoolView;
    /// Puts a machine under the school's roles, or takes it out.
    MachineEnrol "machine-enrol" machine_enrol(machine: String, enrolled: bool, pin: String) -> MachinePage;
    /// What a server needs to serve this school, as a file.
    SchoolFile "school-file" school_file() -> FileOut;
    /// The state of every machine of the school.
    Board "board" board() -> Board;
    /// Lets records that the server wouldn't take be sent again.
    SyncRetry "sync-retry" sync_retry() -> SchoolView;
    /// Checks every receipt of the server.
    Receipts "receipts" receipts() -> ReceiptsView;
    /// What to show another device so that both can tell whether the server tells them the same.
    CheckpointCode "checkpoint-code" checkpoint_code() -> CodeOut;
    /// Compares what another device shows.
    CheckpointCompare "checkpoint-compare" checkpoint_compare(text: String) -> ReceiptsView;
    /// Forgets all that the server said; the next round follows it from the beginning.
    ServerAnew "server-anew" server_anew() -> SchoolView;
    /// What a board's code is about.
    DeskOpen "desk-open" desk_open(text: String) -> DeskView;
    /// Checks files that might be published.
    PublishPreview "publish-preview" publish_preview(title: String, files: Vec<PublishFile>) -> PublishPreview;
    /// Publishes files to all members.
    Publish "publish" publish(title: String, files: Vec<PublishFile>, note: String, pin: String) -> SchoolView;
    /// What is asked of load, fuel, air and wind before a flight.
    FlightForm "flight-form" flight_form(machine: String) -> FlightForm;
    /// What comes of a plan, while it is being typed.
    FlightJudge "flight-judge" flight_judge(machine: String, plan: Option<FlightPlanned>) -> FlightView;
    /// Keeps a plan: it enters the verdict at once, and is signed with the next signature.
    FlightKeep "flight-keep" flight_keep(machine: String, plan: Option<FlightPlanned>) -> FlightView;
    /// Every measure of a machine that has readings, over its time in service.
    Trends "trends" trends(machine: String) -> Vec<TrendView>;
    /// Opens an engine's log: its columns, and how they might be read.
    LogOpen "log-open" log_open(machine: String, name: String, text: String) -> LogView;
    /// What a log would tell, read so.
    LogPreview "log-preview" log_preview(machine: String, text: String, mapping: Option<Mapping>) -> LogPreview;
    /// Signs what a log told, and remembers how its columns were read.
    LogTake "log-take" log_take(machine: String, name: String, text: String, mapping: Option<Mapping>, hours: Option<f64>, on: Option<String>, outside: Option<Quantity>, pin: String) -> MachinePage;
    /// Types of component of which lives can be told.
    LifeParts "life-parts" life_parts() -> Vec<LifePart>;
    /// How long components of a type last.
    Life "life" life(component: String, chance: Option<f64>, in_force: Option<f64>) -> LifeView;
    /// How people look, for an instructor.
    Looking "looking" looking() -> LookingReport;
    /// What the points of the lists are worth, for their author.
    ListWorth "list-worth" list_worth() -> ListWorth;

    @ net
    /// A round with the school's server.
    Sync "sync"() -> SyncView;
    /// What the server at an address says of its school.
    SchoolLook "school-look"(address: String) -> SchoolCardView;
    /// Joins that school, or brings this device's own school its server.
    SchoolFollow "school-follow"(address: String, pin: String) -> SchoolView;
    /// Those who wait at the server to be admitted.
    SchoolWaiting "school-waiting"() -> Vec<ApplicantView>;
    /// Confirms a sign-in at the board.
    DeskConfirm "desk-confirm"(text: String, pin: String) -> DeskView;
    /// Fetches what the board prepared, to be read before it is signed.
    DraftOpen "draft-open"(text: String) -> DeskView;
    /// Signs what the board prepared, and sends it.
    DraftSign "draft-sign"(text: String, pin: String) -> SyncView;
}
