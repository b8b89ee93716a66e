//! The shipped catalogue, and every word that the program may say.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use common::*;
use witnessmark_app::{Catalogue, validate_embedded, validate_files};

#[test]
fn the_shipped_catalogue_has_no_fault() {
    let faults = validate_embedded().unwrap();
    assert!(faults.is_empty(), "{faults:#?}");
}

/// Every string literal after one of these openings, in the crate's sources.
fn literals(openings: &[&str]) -> BTreeSet<String> {
    fn walk(folder: &Path, texts: &mut Vec<String>) {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                walk(&path, texts);
            } else {
                texts.push(fs::read_to_string(path).unwrap());
            }
        }
    }
    let mut texts = Vec::new();
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    for folder in ["src", "../core/src", "../host/src"] {
        walk(&root.join(folder), &mut texts);
    }
    let mut found = BTreeSet::new();
    for text in &texts {
        for opening in openings {
            for rest in text.split(opening).skip(1) {
                found.insert(rest.split('"').next().unwrap().to_owned());
            }
        }
    }
    found
}

#[test]
fn every_fault_has_words_and_says_what_to_do() {
    let texts = Catalogue::embedded().unwrap().texts;
    let kinds = literals(&["Fault::new(\"", "Self::new(\""]);
    assert!(kinds.len() > 40);
    for kind in kinds {
        let id = format!("fault-{kind}");
        assert!(texts.has(&id, None), "{id} has no words");
        assert!(texts.has(&id, Some("hint")), "{id} doesn't say what to do");
    }
}

#[test]
fn every_reason_and_sentence_has_words() {
    let texts = Catalogue::embedded().unwrap().texts;
    let mut ids = literals(&["Said::new(\"", ".word(\""]);
    for prefix in ["reason-", "clears-", "signature-", "verdict-"] {
        let rests = literals(&[&format!("\"{prefix}")]);
        ids.extend(rests.into_iter().map(|rest| format!("{prefix}{rest}")));
    }
    assert!(ids.len() > 50, "{}", ids.len());
    for id in ids {
        assert!(texts.has(&id, None), "{id} has no words");
    }
}

#[test]
fn every_list_of_every_engine_is_worded_whole() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let engines = app.choices().unwrap().engines;
    assert!(engines.len() >= 3);
    for engine in engines {
        for part in &engine.parts {
            assert!(!part.words.starts_with("part-"), "{}", part.words);
        }
        let mut machine = bramble();
        machine.engine = engine.id.clone();
        let machine = register(&mut app, machine);
        let page = app.machine(machine.clone()).unwrap();
        for limit in page.limits {
            assert!(!limit.words.starts_with("band-"), "{}", limit.words);
        }
        for occasion in page.occasions {
            assert!(!occasion.words.starts_with("occasion-"));
            let walk = app.walk(machine.clone(), occasion.id.clone()).unwrap();
            let all = serde_json::to_string(&walk.stations).unwrap();
            assert!(!all.contains("{$") && !all.contains("\"point-") && !all.contains("caution-"), "{all}");
            let points: Vec<_> = walk.stations.iter().flat_map(|s| &s.points).collect();
            if occasion.id == "before-flight" {
                assert!((45..=70).contains(&points.len()), "{}: {}", engine.id, points.len());
                assert!(walk.stations.len() <= 10);
                let last = points.last().unwrap();
                assert_eq!(last.id, "walk-complete", "completion is itself the last point");
            } else {
                assert!((10..=20).contains(&points.len()), "{}: {}", engine.id, points.len());
            }
        }
    }
}

#[test]
fn an_author_is_told_file_and_line() {
    let check = |name: &str, text: &str| validate_files(&[(name.to_owned(), text.to_owned())]).unwrap();
    let sheet = "id = \"x-1\"\nname = \"X\"\nkind = \"two-stroke\"\n\n[bands.a]\nlow = { value = 2, unit = \"mm\", unconfirmed = \"x\" }\nhigh = { value = 1, unit = \"mm\", unconfirmed = \"x\" }\n\n[values.b]\nvalue = 3\nunit = \"mm\"\n";
    let faults = check("x.toml", sheet);
    let told: Vec<String> = faults.iter().map(ToString::to_string).collect();
    assert_eq!(
        told,
        [
            "x.toml:5: band `a`: low lies above high",
            "x.toml:9: value `b`: has no source and doesn't say that it is unconfirmed"
        ]
    );
    let faults = check("y.toml", "id = \"y\"\nkind = \"two-stroke\"\nname = \"Y\"\nspeed = 3\n");
    assert_eq!((faults[0].line, faults.len()), (4, 1), "{faults:?}");
    let point = "[[point]]\nid = \"p\"\nstation = \"nowhere\"\ncomponent = \"engine\"\noccasions = [\"before-flight\"]\nmust = true\ndrawing = \"cylinder\"\nfocus = \"moon\"\nanswer = [{ id = \"dry\", means = \"serviceable\" }, { id = \"wet\", means = \"unserviceable\" }]\n";
    let faults = check("p.toml", point);
    assert!(faults.iter().all(|fault| fault.line == 1));
    let all = format!("{faults:?}");
    for what in ["no station `nowhere`", "no focus `moon`", "no words `point-p`", "point-p.dry"] {
        assert!(all.contains(what), "{what} in {all}");
    }
    let faults = check("d.svg", "<svg>\n<script>alert(1)</script></svg>");
    assert_eq!(faults[0].line, 2);
    let broken = check("w.ftl", "good = Well\n\nbad\n");
    assert_eq!((broken.len(), broken[0].line), (1, 3), "{broken:?}");
    let twice = check("v.ftl", "a = 1\nb = 2\na = 3\n");
    assert!(twice[0].what.contains("`a` is there already"), "{twice:?}");
    assert!(check("z.toml", "hello = 1\n")[0].what.contains("no file of the catalogue"));
}

#[test]
fn the_demonstration_tells_of_one_machine_of_each_state() {
    let clock = Clock::at("2026-05-02T10:41:07+02:00");
    let mut app = begun(&clock);
    let cards = app.demo().unwrap();
    assert_eq!(cards.len(), 3);
    assert!(cards.iter().all(|card| card.invented));
    assert_eq!(app.demo().unwrap_err().kind, "demo-here");
    for card in &cards {
        let verified = app.export(card.id.clone()).and_then(|file| app.verify(file.text)).unwrap();
        assert!(verified.good, "{:?}", verified.faults);
        assert!(verified.people.iter().all(|person| person.words.contains("invented")));
    }
    let states: BTreeSet<_> = cards.iter().map(|card| format!("{:?}", card.verdict.state)).collect();
    assert_eq!(states, BTreeSet::from(["Fit".into(), "Limited".into(), "Grounded".into()]), "{cards:#?}");
}
