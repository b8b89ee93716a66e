//! A school without a server: three data folders, texts and files handed from one to another.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::{Desk, Ran};
use serde_json::Value;

fn signed(desk: &Desk, args: &[&str]) -> Ran {
    let pin = desk.pin_file();
    desk.run(&[args, &["--pin-file", &pin, "--json"]].concat())
}

fn done(desk: &Desk, args: &[&str]) -> Value {
    let ran = signed(desk, args);
    assert_eq!(ran.code, 0, "{ran:?}");
    ran.json()
}

/// A folder in which this person signs, with a machine called Own that was walked round.
fn pilot(name: &str) -> Desk {
    let desk = Desk::new();
    let add = ["machine", "add", "--name", "Own", "--engine", "bramble-125", "--without-reserve"];
    done(&desk, &[&add[..], &["--signatory", name]].concat());
    desk
}

fn founded() -> Desk {
    let root = Desk::new();
    let school = done(&root, &["school", "create", "Invented school", "--signatory", "Invented root"]);
    assert_eq!((&school["root"], &school["role"]), (&Value::Bool(true), &Value::from("instructor")));
    root
}

/// Both ways by text: one shows who it is, the root answers.
fn admit(root: &Desk, other: &Desk, role: &str) -> Value {
    let shown = other.run(&["school", "code"]);
    let code = root.write("code", &shown.out);
    // What is read out is beside the text, so that the two can be compared.
    let spoken = other.json(&["school", "show"])["code"].as_str().unwrap().to_owned();
    assert!(shown.err.contains(&spoken), "{shown:?}");
    let pin = root.pin_file();
    let answer = root.run(&["school", "admit", &format!("@{code}"), "--role", role, "--pin-file", &pin]);
    assert!(answer.code == 0 && answer.err.contains(&spoken), "{answer:?}");
    done(other, &["school", "join", answer.out.trim()])
}

fn carry(from: &Desk, to: &Desk) -> Value {
    let file = to.path("stick.jsonl");
    assert_eq!(from.run(&["export", "--all", &file]).code, 0);
    to.json(&["import", &file])
}

#[test]
fn a_school_by_texts_and_files_between_three_folders() {
    let (root, pilot) = (founded(), pilot("Invented pilot"));
    let mechanic = Desk::new();
    done(
        &mechanic,
        &["machine", "add", "--name", "Shop", "--engine", "bramble-125", "--signatory", "Invented mechanic"],
    );
    let joined = admit(&root, &pilot, "pilot");
    assert_eq!((&joined["role"], &joined["school"]["name"]), (&"pilot".into(), &"Invented school".into()));
    assert_eq!(admit(&root, &mechanic, "mechanic")["role"], "mechanic");
    let members = root.run(&["school", "members"]);
    assert!(
        members.out.contains("Invented pilot") && members.out.contains("Invented mechanic"),
        "{members:?}"
    );

    // The pilot finds a defect; the board shows it once the file has come.
    let answers = pilot.answers("Own", |answers| drop(answers.insert("cylinder-base".into(), "wet".into())));
    assert_eq!(signed(&pilot, &["walk", "Own", "--answers", &answers]).code, 1);
    assert!(carry(&pilot, &root)["taken"].as_u64().unwrap() > 3);
    assert_eq!(carry(&pilot, &root)["taken"], 0, "nothing twice");
    carry(&root, &mechanic);
    let board = root.json(&["school", "board"]);
    let row = board["rows"].as_array().unwrap().iter().find(|row| row["card"]["name"] == "Own").unwrap();
    assert_eq!(
        (&row["owner"], &row["card"]["verdict"]["state"]),
        (&"Invented pilot".into(), &"grounded".into())
    );
    assert!(row["defects"].as_array().unwrap().iter().any(|open| open["point"] == "cylinder-base"));

    // A pilot lets nothing wait in a school; the root, an instructor, does; a mechanic puts it right.
    let defer =
        ["defect", "defer", "Own", "cylinder-base", "--until-date", "2999-01-01", "--condition", "near home"];
    let defer = [&defer[..], &["--reason", "parts come"]].concat();
    assert_eq!(signed(&pilot, &defer).kind(), "not-entitled");
    done(&root, &defer);
    done(&mechanic, &["defect", "rectify", "Own", "cylinder-base", "--how", "New base gasket"]);
    carry(&root, &pilot);
    carry(&mechanic, &pilot);
    assert_eq!(pilot.run(&["verdict", "Own"]).code, 0);

    // Another role, an end, and the root handed over.
    let members = done(&root, &["school", "role", "Invented pilot", "viewer", "--until", "2999-12-31"]);
    let of = |view: &Value, name: &str| {
        view["members"].as_array().unwrap().iter().find(|member| member["name"] == name).unwrap().clone()
    };
    assert_eq!(of(&members, "Invented pilot")["role"], "viewer");
    let ended = done(&root, &["school", "end", "Invented pilot", "--why", "season is over"]);
    assert_eq!(of(&ended, "Invented pilot")["standing"], false);
    assert_eq!(signed(&root, &["school", "end", "Invented root", "--why", "no"]).kind(), "root-stays");
    let handed = done(&root, &["school", "hand-over", "Invented mechanic"]);
    assert_eq!(handed["root"], false);
    carry(&root, &mechanic);
    assert_eq!(mechanic.json(&["school", "show"])["root"], true);
    assert_eq!(signed(&root, &["school", "end", "Invented mechanic", "--why", "no"]).kind(), "not-root");
    // The pilot leaves with the machine.
    let left = done(&pilot, &["school", "leave"]);
    assert_eq!(left["school"], Value::Null);
    assert_eq!(left["machines"][0]["enrolled"], false);
}

#[test]
fn a_second_device_of_a_person_is_vouched_for_and_a_lost_one_ended() {
    let (root, first) = (founded(), pilot("Invented pilot"));
    admit(&root, &first, "pilot");
    let second = Desk::new();
    let shown = first.run(&["school", "code"]).out;
    let begun = done(&second, &["person", "begin", shown.trim()]);
    assert_eq!(begun["person"]["name"], "Invented pilot");
    assert_eq!(signed(&second, &["person", "begin", shown.trim()]).kind(), "already-begun");
    let code = second.run(&["school", "code"]).out;
    let pin = first.pin_file();
    let answer = first.run(&["school", "vouch", code.trim(), "--pin-file", &pin]);
    assert_eq!(answer.code, 0, "{answer:?}");
    done(&second, &["school", "join", answer.out.trim()]);
    // It signs as the same person.
    carry(&first, &second);
    let walked = second.answers("Own", |_| {});
    assert_eq!(signed(&second, &["walk", "Own", "--answers", &walked]).code, 0);

    let lost = second.json(&["school", "show"])["code"].as_str().unwrap().to_owned();
    carry(&second, &root);
    carry(&first, &root);
    admit(&root, &second, "pilot");
    let ended = done(&root, &["school", "revoke", &lost.to_lowercase(), "--why", "lost in a field"]);
    let devices = |view: &Value| {
        let members = view["members"].as_array().unwrap().clone();
        members.iter().flat_map(|m| m["devices"].as_array().unwrap().clone()).collect::<Vec<_>>()
    };
    assert!(devices(&ended).iter().any(|device| device["code"] == lost.as_str() && device["ended"] == true));
    // The name alone names two devices now.
    assert_eq!(signed(&root, &["school", "revoke", "Invented pilot", "--why", "x"]).kind(), "ambiguous-name");
}

#[test]
fn what_does_not_fit_is_told_and_nothing_is_signed() {
    let (root, other) = (founded(), pilot("Invented pilot"));
    assert_eq!(signed(&root, &["school", "create", "Second"]).kind(), "school-already");
    assert_eq!(signed(&root, &["school", "leave"]).kind(), "root-stays");
    assert_eq!(other.run(&["school", "file", "--json"]).kind(), "no-school");
    assert_eq!(other.run(&["sync", "--json"]).kind(), "no-school");
    assert_eq!(root.run(&["sync", "--json"]).kind(), "no-server");
    assert_eq!(root.run(&["receipts", "--json"]).kind(), "no-server");
    assert_eq!(root.run(&["receipts", "code", "--json"]).kind(), "no-server");
    assert_eq!(root.run(&["receipts", "compare", "WM1SEEN:X", "--json"]).kind(), "code-unreadable");
    assert_eq!(root.run(&["school", "waiting", "--json"]).kind(), "no-server");
    assert_eq!(signed(&root, &["school", "sign-in", "WM1DESK:X"]).kind(), "code-unreadable");
    assert_eq!(signed(&root, &["school", "sign", "WM1DESK:X"]).kind(), "code-unreadable");
    assert_eq!(signed(&root, &["school", "revoke", "Nobody", "--why", "lost"]).kind(), "not-named");
    assert_eq!(signed(&root, &["school", "admit", "WM1JOIN:X", "--role", "pilot"]).kind(), "code-unreadable");
    assert_eq!(signed(&other, &["school", "join", "WM1ADMIT:X"]).kind(), "code-unreadable");
    assert_eq!(signed(&other, &["school", "join", "http://school.example"]).kind(), "server-plain");
    assert_eq!(signed(&other, &["school", "join", "two words"]).kind(), "server-address");
    // Bound and let go: nobody listens there.
    let free = std::net::TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap();
    assert_eq!(signed(&other, &["school", "join", &format!("http://{free}")]).kind(), "server-unreachable");
    assert_eq!(other.json(&["school", "show"])["school"], Value::Null);
    assert_eq!(other.json(&["refused"]), Value::Array(Vec::new()));
    let none = other.run(&["refused", "--put-away", "7", "--json"]);
    assert_eq!(none.kind(), "no-such");
    // A code that was altered on the way: the signature is not good.
    let shown = other.run(&["school", "code"]).out;
    let (head, tail) = shown.trim().split_at(shown.len() / 2);
    let swapped = if tail.starts_with('7') { "8" } else { "7" };
    let altered = format!("{head}{swapped}{}", &tail[1..]);
    let kind = signed(&root, &["school", "admit", &altered, "--role", "pilot"]).kind();
    assert!(["letter-signature", "code-unreadable"].contains(&kind.as_str()), "{kind}");
}

#[test]
fn a_machine_goes_in_and_out_of_a_school() {
    let (root, pilot) = (founded(), pilot("Invented pilot"));
    admit(&root, &pilot, "pilot");
    let enrolled = |desk: &Desk| desk.json(&["school", "show"])["machines"][0]["enrolled"].clone();
    assert_eq!(enrolled(&pilot), true, "a member's machines come along");
    done(&pilot, &["machine", "withdraw", "Own"]);
    assert_eq!(enrolled(&pilot), false);
    done(&pilot, &["machine", "enrol", "Own"]);
    assert_eq!(enrolled(&pilot), true);
    carry(&pilot, &root);
    assert_eq!(signed(&root, &["machine", "enrol", "Own"]).kind(), "not-your-machine");
}

#[test]
fn lists_are_published_to_the_members_once_they_are_right() {
    let (root, pilot) = (founded(), pilot("Invented pilot"));
    admit(&root, &pilot, "pilot");
    let sheet = include_str!("../../catalogue/engines/bramble-125.toml");
    let folder = root.path("lists/engines");
    std::fs::create_dir_all(&folder).unwrap();
    let file = format!("{folder}/invented-9.toml");
    let own = sheet.replace("\"bramble-125\"", "\"invented-9\"");
    assert_ne!(own, sheet);
    std::fs::write(&file, "id = 9\n").unwrap();
    let faulty = signed(&root, &["school", "publish", "Own engines", &file]);
    assert_eq!(faulty.code, 1, "{faulty:?}");
    assert_eq!(faulty.json()["faults"][0]["file"], "engines/invented-9.toml");
    std::fs::write(&file, own).unwrap();
    let published = done(&root, &["school", "publish", "Own engines", &file, "--note", "For the spring"]);
    assert_eq!(
        (&published["published"][0]["version"], &published["published"][0]["used"]),
        (&1.into(), &true.into())
    );
    carry(&root, &pilot);
    done(&pilot, &["machine", "add", "--name", "New", "--engine", "invented-9"]);
    assert_eq!(signed(&pilot, &["school", "publish", "Mine", &file]).kind(), "publish-role");
}

#[test]
fn a_file_with_a_bad_line_gives_the_others() {
    let (root, pilot) = (founded(), pilot("Invented pilot"));
    let file = pilot.path("all.jsonl");
    assert_eq!(pilot.run(&["export", "--all", &file]).code, 0);
    let text = std::fs::read_to_string(&file).unwrap();
    let bad = root.write("bad.jsonl", &format!("{text}no record\n"));
    let brought = root.run(&["import", &bad, "--json"]);
    assert_eq!(brought.code, 1);
    assert_eq!(brought.json()["taken"].as_u64().unwrap(), text.lines().count() as u64);
    assert_eq!(brought.json()["refused"].as_array().unwrap().len(), 1);
    let from_input = root.run_with(&["import", "-", "--json"], &text);
    assert_eq!((from_input.code, from_input.json()["taken"].as_u64()), (0, Some(0)));
}

#[test]
fn the_invented_school_says_that_it_is_invented() {
    let desk = Desk::new();
    let school = done(&desk, &["demo", "--school", "--signatory", "Invented root"]);
    assert_eq!((&school["school"]["invented"], &school["root"]), (&true.into(), &true.into()));
    let board = desk.json(&["school", "board"]);
    assert_eq!(board["rows"].as_array().unwrap().len(), 12);
    let shown = desk.run(&["school", "show"]);
    assert!(shown.out.contains("(invented)"), "{shown:?}");
    assert_eq!(desk.run(&["school", "board"]).code, 0);
}
