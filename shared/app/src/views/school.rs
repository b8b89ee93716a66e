//! A school: its members, its server, its board.

use serde::{Deserialize, Serialize};
use ts_rs::TS;
use witnessmark_core::record::Role;

use super::{DueView, MachineCard, OpenView, VerdictView};

views! {
/// This device's place in a school.
struct SchoolView {
    /// The school; none where this device belongs to none.
    pub school: Option<SchoolBrief>,
    /// What this person is there today; none while nobody has admitted them, or no longer.
    pub role: Option<Role>,
    /// The role's name, or that there is none.
    pub role_words: String,
    /// Whether this device admits and ends members.
    pub root: bool,
    /// What to read out so that the school knows this device.
    pub code: String,
    /// Everybody who is or was a member.
    pub members: Vec<MemberView>,
    /// Machines known here, and whether they are under the school.
    pub machines: Vec<EnrolledView>,
    /// Lists and data sheets published.
    pub published: Vec<PublishedView>,
    /// How it stands with the server.
    pub sync: SyncView,
}
/// A school in short.
struct SchoolBrief {
    /// Its name for programs.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// What to compare so that nobody joins another school of that name.
    pub code: String,
    /// The server's address, where it has one.
    pub address: Option<String>,
    /// Whether it exists only in the demonstration.
    pub invented: bool,
}
/// A member.
struct MemberView {
    /// The person.
    pub person: String,
    /// What they are called.
    pub name: String,
    /// As what.
    pub role: Role,
    /// The role's name.
    pub role_words: String,
    /// From when until when, in words.
    pub term: String,
    /// Whether they are a member today.
    pub standing: bool,
    /// Whether it is the person who signs here.
    pub you: bool,
    /// Their devices.
    pub devices: Vec<MemberDevice>,
}
/// A member's device.
struct MemberDevice {
    /// The device.
    pub device: String,
    /// What its holder reads out.
    pub code: String,
    /// Whether its key was ended.
    pub ended: bool,
    /// Whether it is the school's root.
    pub root: bool,
}
/// A machine and its school.
struct EnrolledView {
    /// Its id.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// Whether it is under the school.
    pub enrolled: bool,
    /// Whether this person registered it.
    pub own: bool,
}
/// Something published.
struct PublishedView {
    /// The record.
    pub record: String,
    /// Its title.
    pub title: String,
    /// Which version of it.
    pub version: u32,
    /// By whom and when.
    pub by: String,
    /// What is new.
    pub note: String,
    /// Its files.
    pub files: Vec<String>,
    /// Whether it is the one in use.
    pub used: bool,
}
/// How it stands with the school's server.
struct SyncView {
    /// For programs: `none`, `never`, `done`, `waits`, `failed`, `distrusted`.
    pub state: String,
    /// In a sentence.
    pub words: String,
    /// What to do, where there is something to do.
    pub hint: String,
    /// Records that wait to be sent.
    pub records: u32,
    /// Pictures that wait to be sent.
    pub photos: u32,
    /// Records that the server wouldn't take.
    pub stuck: Vec<StuckView>,
    /// Records in the server's log, as far as it was followed.
    pub receipts: f64,
}
/// A record that the server wouldn't take.
struct StuckView {
    /// The record.
    pub record: String,
    /// What sort of record.
    pub kind: String,
    /// Why, in the server's words.
    pub words: String,
}
/// Somebody who asks to be admitted.
struct ApplicantView {
    /// What to give back to admit them.
    pub text: String,
    /// What they are called.
    pub name: String,
    /// What they read out.
    pub code: String,
    /// Whether they are a member already.
    pub member: bool,
}
/// A school that a server or a code speaks of, before it is joined.
struct SchoolCardView {
    /// The school.
    pub school: SchoolBrief,
    /// Who its root is.
    pub root: String,
    /// Whether it has admitted this device.
    pub admitted: bool,
}
/// Something that a board asks this device to sign.
struct DeskView {
    /// `sign-in` or `draft`.
    pub kind: String,
    /// The school.
    pub school: String,
    /// The server's address.
    pub address: String,
    /// What will be signed, in a sentence.
    pub words: String,
    /// The machine it is about.
    pub machine: Option<String>,
    /// What will be signed, as a record's body.
    pub body: String,
    /// What would then be the verdict on the machine.
    pub preview: Option<VerdictView>,
}
/// What came of checking every receipt.
struct ReceiptsView {
    /// Whether all is as the server signed for.
    pub good: bool,
    /// In a sentence.
    pub words: String,
    /// Records in the server's log, as far as it was followed.
    pub records: f64,
    /// Their root, hexadecimal.
    pub root: String,
    /// The server's signed word, where there is one.
    pub checkpoint: Option<String>,
}
/// What a bundle brought.
struct ImportView {
    /// In a sentence.
    pub words: String,
    /// Records that are new here.
    pub taken: u32,
    /// Records that were here.
    pub known: u32,
    /// Lines that weren't taken, each with the reason.
    pub refused: Vec<String>,
}
/// A line that was not taken as a record.
struct RefusedView {
    /// Its number here.
    pub number: f64,
    /// The machine it speaks of, where that could be read.
    pub machine: Option<String>,
    /// Why it was not taken.
    pub words: String,
    /// As it came.
    pub line: String,
}
/// Files to be published, checked.
struct PublishPreview {
    /// Everything wrong with them; they can be published only if there is nothing.
    pub faults: Vec<PublishFault>,
    /// What changes for whom, in sentences.
    pub changes: Vec<String>,
    /// The version that this would be.
    pub version: u32,
}
/// One fault of a file to be published.
struct PublishFault {
    /// The file.
    pub file: String,
    /// The line.
    pub line: u32,
    /// What is wrong.
    pub words: String,
    /// What to do.
    pub hint: String,
}
/// A file to be published.
struct PublishFile {
    /// Its path in the catalogue.
    pub path: String,
    /// Its text.
    pub text: String,
}
/// The state of a school's machines, for an instructor.
struct Board {
    /// The school; none where this device belongs to none.
    pub school: Option<SchoolBrief>,
    /// Every machine under it (all machines where there is no school), those that need a person first.
    pub rows: Vec<BoardRow>,
    /// Members and their machines.
    pub people: Vec<BoardPerson>,
    /// Work that waits for a second pair of eyes.
    pub second: Vec<BoardSecond>,
    /// Records in the log when this was made.
    pub size: f64,
}
/// One machine on the board.
struct BoardRow {
    /// The machine and its verdict.
    pub card: MachineCard,
    /// Whose it is.
    pub owner: String,
    /// The owner, for filters.
    pub person: String,
    /// Who signed the last look, and when; in words.
    pub looked: String,
    /// When, RFC 3339, for sorting.
    pub looked_at: Option<String>,
    /// What falls due next.
    pub due: Option<DueView>,
    /// Open defects.
    pub defects: Vec<OpenView>,
    /// What is watched.
    pub watched: Vec<OpenView>,
    /// Defects that may wait, each in a sentence.
    pub deferred: Vec<String>,
    /// Work not released.
    pub job: Option<String>,
    /// What needs a person first, in a few words.
    pub first: String,
}
/// A member on the board.
struct BoardPerson {
    /// The person.
    pub person: String,
    /// What they are called.
    pub name: String,
    /// As what.
    pub role: Role,
    /// The role's name.
    pub role_words: String,
    /// Their machines' names.
    pub machines: Vec<String>,
}
/// Work that waits for a second pair of eyes.
struct BoardSecond {
    /// The machine.
    pub machine: String,
    /// What people call it.
    pub name: String,
    /// The work.
    pub title: String,
    /// Who did it.
    pub by: String,
}
}
