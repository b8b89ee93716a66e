//! Papers: what they refuse, and what programs read in them. How they print, and that other programs
//! read them, is checked in `tests/outside/papers.py`.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use base64ct::{Base64, Encoding};
use chrono::{Days, TimeDelta};
use common::*;
use witnessmark_app::App;
use witnessmark_app::views::{DueForm, FileBytes};
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Interval, Machine, Service};

fn bytes(file: &FileBytes) -> Vec<u8> {
    Base64::decode_vec(&file.data).unwrap()
}

fn text(file: &FileBytes) -> String {
    String::from_utf8(bytes(file)).unwrap()
}

/// The table's rows by column; read by hand, since what is tested here holds no line end in a cell.
fn rows(app: &mut App, machine: &str) -> Vec<csv::StringRecord> {
    let table = text(&app.csv(machine.into()).unwrap());
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    reader.records().collect::<Result<_, _>>().unwrap()
}

/// Calendar entries as lines, folded ones joined (RFC 5545, 3.1).
fn events(app: &mut App, machine: &str) -> Vec<Vec<String>> {
    let unfolded = text(&app.calendar(machine.into()).unwrap()).replace("\r\n ", "");
    let lines = |part: &str| part.lines().map(str::to_owned).collect();
    unfolded.split("BEGIN:VEVENT").skip(1).map(lines).collect()
}

fn event(events: &[Vec<String>], words: &str) -> Vec<String> {
    let about =
        |event: &&Vec<String>| event.iter().any(|line| line.starts_with("SUMMARY:") && line.contains(words));
    events.iter().find(about).unwrap_or_else(|| panic!("{words} is not among {events:?}")).clone()
}

fn due(title: &str, every: Interval, done_hours: f64, done_on: &str) -> DueForm {
    DueForm {
        id: String::new(),
        title: title.into(),
        every,
        tolerance_percent: 0.0,
        from_due: false,
        done_hours,
        done_flights: 0,
        done_on: done_on.parse().unwrap(),
    }
}

#[test]
fn a_sheet_of_what_is_not_there_or_has_none_or_on_an_odd_paper_is_refused() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let signed = walk_and_sign(&mut app, &clock, &machine, "before-flight", &[]);
    let mut kind = |record: &str, paper: &str| app.sheet(record.into(), paper.into()).unwrap_err().kind;
    assert_eq!(kind(&signed.record, "a5"), "no-such-paper");
    assert_eq!(kind(&"0".repeat(64), "a4"), "no-such");
    assert_eq!(kind("not a digest", "a4"), "no-such");
    let described = app.machine(machine.clone()).unwrap().timeline;
    let described = described.iter().find(|entry| entry.kind == "machine").unwrap().record.clone();
    let fault = app.sheet(described, "a4".into()).unwrap_err();
    let shown = app.show(&fault);
    assert_eq!(shown.kind, "no-sheet");
    assert!(shown.hint.contains("inspection") && !shown.message.starts_with("fault-"), "{shown:?}");
    let nobody = uuid::Uuid::nil().to_string();
    assert_eq!(app.label(nobody.clone()).unwrap_err().kind, "no-such");
    assert_eq!(app.csv(nobody.clone()).unwrap_err().kind, "no-such");
    assert_eq!(app.calendar(nobody).unwrap_err().kind, "no-such");
}

#[test]
fn a_sheet_is_a_tagged_pdf_named_after_its_machine_and_record() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let signed =
        walk_and_sign(&mut app, &clock, &machine, "before-flight", &[("cage-net", Meaning::Unserviceable)]);
    let sheet = app.sheet(signed.record.clone(), "a4".into()).unwrap();
    assert_eq!(sheet.name, format!("thistle-2026-05-02-{}.pdf", &signed.record[..8]));
    assert_eq!(sheet.media, "application/pdf");
    let pdf = bytes(&sheet);
    let holds = |what: &str| pdf.windows(what.len()).any(|window| window == what.as_bytes());
    // ISO 32000-1, 14.7 and 14.8: the structure tree, the mark that the document is tagged, its language.
    assert!(pdf.starts_with(b"%PDF-1.7") && holds("/StructTreeRoot") && holds("/Marked true"));
    // ISO 19005-2, 6.6.4, and ISO 14289-1, 5: what the file says that it conforms to.
    assert!(holds("<pdfaid:part>2</pdfaid:part>") && holds("<pdfuaid:part>1</pdfuaid:part>"));
    let again = app.sheet(signed.record, "a4".into()).unwrap();
    assert!(again == sheet, "the same record at the same moment gives the same bytes");
}

#[test]
fn letters_that_the_font_lacks_and_endless_words_still_print() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let name = "山の風 \u{200D}🪂 <&> Ünïcödé Πτήση Полёт 12x34 -> fi".to_owned();
    let machine = register(&mut app, Machine { name, note: "W".repeat(900), ..bramble() });
    let walk = app.walk(machine.clone(), "before-flight".into()).unwrap();
    let point = walk.progress.current.clone().unwrap();
    app.note(walk.id.clone(), point, "ohne".repeat(240)).unwrap();
    walk_on(&mut app, &clock, &walk);
    let record = app.sign(walk.id, PIN.into()).unwrap().record;
    for paper in ["a4", "letter"] {
        assert!(bytes(&app.sheet(record.clone(), paper.into()).unwrap()).len() > 10_000);
    }
    assert!(bytes(&app.label(machine).unwrap()).starts_with(b"%PDF-"));
}

#[test]
fn the_table_has_a_row_for_every_fact_and_none_runs_as_a_formula() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, Machine { name: "=1+1, \"Thistle\"".into(), ..bramble() });
    let walk = app.walk(machine.clone(), "before-flight".into()).unwrap();
    let taken_back = answer(&walk, "cage-net", Meaning::Unserviceable);
    app.answer(walk.id.clone(), "cage-net".into(), Some(taken_back), 5.0).unwrap();
    app.undo(walk.id.clone()).unwrap();
    app.note(walk.id.clone(), "cage-net".into(), "@home: new net,\nsee \"bill\"".into()).unwrap();
    walk_on(&mut app, &clock, &walk);
    let record = app.sign(walk.id.clone(), PIN.into()).unwrap().record;
    app.log_time(
        machine.clone(),
        Some(Service { hours: 0.7, flights: 2, tanks: 0 }),
        None,
        "-rain".into(),
        None,
    )
    .unwrap();
    let rows = rows(&mut app, &machine);
    let points: usize = walk.stations.iter().map(|station| station.points.len()).sum();
    let of_walk: Vec<_> = rows.iter().filter(|row| row[13] == record).collect();
    assert_eq!(of_walk.len(), points + 2, "the list, every finding, and the one taken back");
    let net: Vec<_> = of_walk.iter().filter(|row| &row[6] == "cage-net").collect();
    assert_eq!((&net[0][9], &net[0][12]), ("unserviceable", "Taken back"));
    assert_eq!((&net[1][9], &net[1][12]), ("serviceable", "'@home: new net,\nsee \"bill\""));
    assert!(rows.iter().any(|row| &row[1] == "machine" && &row[7] == "'=1+1, \"Thistle\""));
    let unsigned = rows.last().unwrap();
    assert_eq!((&unsigned[1], &unsigned[2], &unsigned[13]), ("time-logged", "", ""));
    assert_eq!((&unsigned[4], &unsigned[5], &unsigned[10], &unsigned[11]), ("13.2", "22", "0.7", "h"));
    assert!(unsigned[12].contains("Not signed yet"));
    for cell in rows.iter().flat_map(|row| [1, 2, 3, 6, 7, 8, 12].map(|column| row[column].to_owned())) {
        assert!(!cell.starts_with(['=', '+', '-', '@']), "{cell}");
    }
}

#[test]
fn the_calendar_has_each_thing_on_its_own_day_and_under_the_same_name_every_time() {
    let clock = Clock::at("2026-03-01T12:00:00+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    walk_and_sign(&mut app, &clock, &machine, "before-flight", &[("cage-net", Meaning::Unserviceable)]);
    let until = Some("2026-09-30".to_owned());
    let (condition, reason) = ("Solo; no passenger", "Spare net, ordered");
    app.defer(
        machine.clone(),
        "cage-net".into(),
        None,
        None,
        until,
        condition.into(),
        reason.into(),
        PIN.into(),
    )
    .unwrap();
    let mut keep = |form| app.due_save(machine.clone(), Some(form), false, PIN.into()).unwrap();
    keep(due("Belt", Interval { days: Some(100), ..Interval::default() }, 12.5, "2026-02-20"));
    keep(due(
        "Plug",
        Interval { hours: Some(25.0), days: Some(900), ..Interval::default() },
        12.5,
        "2026-02-20",
    ));
    keep(due("Lines", Interval { flights: Some(50), ..Interval::default() }, 12.5, "2026-02-20"));
    let before = events(&mut app, &machine);
    assert!(
        event(&before, "Plug").contains(&"DTSTART;VALUE=DATE:20280808".into()),
        "no rate yet: by the calendar"
    );
    for _ in 0..6 {
        clock.forward(TimeDelta::weeks(1));
        let flown = Service { hours: 2.0, flights: 3, tanks: 1 };
        app.log_time(machine.clone(), Some(flown), None, String::new(), None).unwrap();
    }
    clock.forward(TimeDelta::days(3));
    let events = events(&mut app, &machine);
    let on = |words: &str, day: &str| {
        let wanted = format!("DTSTART;VALUE=DATE:{day}");
        let found = event(&events, words);
        assert!(found.contains(&wanted), "{found:?}");
        // RFC 5545, 3.6.1: without DTEND a DATE lasts that day; a DTEND on it would be no day at all.
        assert!(!found.iter().any(|line| line.starts_with("DTEND")), "{found:?}");
        assert!(found.contains(&"BEGIN:VALARM".into()), "{found:?}");
        found
    };
    // Counted by hand: 2026-02-20 and 100 days; 2026-01-10 and 365 days.
    on("Belt", "20260531");
    on("reserve", "20270110");
    let deferral = on("last day", "20260930");
    let words = deferral.iter().find(|line| line.starts_with("DESCRIPTION:")).unwrap();
    assert!(words.contains("Solo\\; no passenger") && words.contains("Spare net\\, ordered"), "{words}");
    // What core's forecast says on the machine's page is the day in the calendar.
    let page = app.machine(machine.clone()).unwrap();
    let forecast = page.due.iter().find(|due| due.title == "Plug").unwrap().forecast.clone().unwrap();
    let plug = event(&events, "Plug");
    let day = plug.iter().find_map(|line| line.strip_prefix("DTSTART;VALUE=DATE:")).unwrap();
    let day = chrono::NaiveDate::parse_from_str(day, "%Y%m%d").unwrap();
    assert!(day > clock.now().date_naive() + Days::new(21) && day < clock.now().date_naive() + Days::new(90));
    let written = |day: chrono::NaiveDate| day.format("%-d %B %Y").to_string();
    assert!(forecast.contains(&format!("about {}", written(day))), "{forecast}: {day}");
    assert!(plug.iter().any(|line| line.starts_with("SUMMARY:") && line.contains("about now")));
    assert!(
        plug.iter().any(|line| line.starts_with("DESCRIPTION:") && line.contains("four times out of five"))
    );
    let raw = text(&app.calendar(machine.clone()).unwrap());
    // RFC 5545, 3.1: a line is no longer than 75 octets without its line end.
    assert!(raw.split("\r\n").all(|line| line.len() <= 75 && !line.contains('\n')), "{raw}");
    let whole = raw.replace("\r\n ", "");
    assert!(whole.contains("DESCRIPTION:Without a day") && whole.contains("Lines"), "told, not left out");
    // Calendars know a thing again by its UID.
    let uids = |events: &[Vec<String>]| -> Vec<String> {
        let mut uids: Vec<String> =
            events.iter().filter_map(|e| e.iter().find(|line| line.starts_with("UID:")).cloned()).collect();
        uids.sort();
        uids
    };
    assert_eq!(uids(&before), uids(&events));
    assert_eq!(uids(&events).iter().collect::<std::collections::BTreeSet<_>>().len(), events.len());
}

#[test]
fn what_is_due_by_use_already_stands_on_today() {
    let clock = Clock::at("2026-03-01T12:00:00+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let every = Interval { hours: Some(1.0), ..Interval::default() };
    app.due_save(machine.clone(), Some(due("Mounts", every, 12.5, "2026-02-20")), false, PIN.into()).unwrap();
    app.log_time(
        machine.clone(),
        Some(Service { hours: 1.5, flights: 1, tanks: 0 }),
        None,
        String::new(),
        None,
    )
    .unwrap();
    let events = events(&mut app, &machine);
    let mounts = event(&events, "Mounts");
    assert!(mounts.contains(&"DTSTART;VALUE=DATE:20260301".into()), "{mounts:?}");
    assert!(mounts.iter().any(|line| line.starts_with("DESCRIPTION:Due now")), "{mounts:?}");
}

#[test]
fn a_record_is_opened_by_the_text_in_its_sheets_code() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let record = app.machine(machine).unwrap().timeline[0].record.clone();
    let by_code = app.record(format!("WM1RECORD:{}\n", record.to_uppercase())).unwrap();
    assert_eq!(by_code, app.record(record.clone()).unwrap());
    assert_eq!(app.record(format!("WM1RECORD:{}", &record[1..])).unwrap_err().kind, "no-such");
}

#[test]
fn the_label_is_opened_by_the_text_in_its_code() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    assert_eq!(app.label(machine.clone()).unwrap().name, "thistle-label.pdf");
    let opened = app.open_label(format!("WM1MACHINE:{}", machine.to_uppercase())).unwrap();
    assert_eq!(opened.card.id, machine);
}
