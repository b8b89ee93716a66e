//! Laws of the composed list, over catalogues made at random.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::collections::{BTreeMap, BTreeSet};

use proptest::collection::{btree_set, vec};
use proptest::prelude::*;
use proptest::sample::select;
use witnessmark_core::list::{
    Answer, Ask, EngineKind, List, Machinery, Meaning, Measure, Parts, Point, Rememberance, ResolvedBand,
    Sheet, Source, Sourced, Station, When, compose, read_sheet,
};
use witnessmark_core::record::Digest;
use witnessmark_core::units::Unit;

const STATIONS: &[&str] = &["frame", "engine", "propeller", "wing"];
const OCCASIONS: &[&str] = &["before-flight", "second-flight"];
const FEATURES: &[&str] = &["shroud", "battery", "starter-pull"];
const PARTS: &[&str] = &["reserve", "radio", "trimmers"];

fn names(of: &'static [&'static str], most: usize) -> impl Strategy<Value = BTreeSet<String>> {
    btree_set(select(of).prop_map(str::to_owned), 0..=most)
}

fn kinds(most: usize) -> impl Strategy<Value = BTreeSet<EngineKind>> {
    btree_set(select(vec![EngineKind::TwoStroke, EngineKind::FourStroke, EngineKind::Electric]), 0..=most)
}

fn point() -> impl Strategy<Value = Point> {
    let when = (kinds(2), names(FEATURES, 2), names(PARTS, 2));
    let flags = (any::<bool>(), any::<bool>(), any::<bool>(), any::<bool>());
    (select(STATIONS), names(OCCASIONS, 2), when, flags).prop_map(
        |(station, occasions, (engine, feature, fitted), (must, critical, passing, measured))| Point {
            id: String::new(),
            station: station.into(),
            component: "engine".into(),
            occasions,
            must,
            critical,
            passing,
            when: When { engine, feature, fitted },
            drawing: "engine".into(),
            focus: "base".into(),
            caution: None,
            fill: BTreeMap::new(),
            answer: if measured { Vec::new() } else { answers() },
            measure: measured.then(|| Measure {
                band: "travel".into(),
                below: Meaning::Watch,
                above: Meaning::Unserviceable,
            }),
        },
    )
}

fn answers() -> Vec<Answer> {
    let answer = |id: &str, means| Answer { id: id.into(), means };
    vec![answer("good", Meaning::Serviceable), answer("bad", Meaning::Unserviceable)]
}

/// Points with ids of their own, as a catalogue has.
fn points() -> impl Strategy<Value = Vec<Point>> {
    vec(point(), 0..25).prop_map(|points| {
        let numbered = points.into_iter().enumerate();
        numbered.map(|(n, point)| Point { id: format!("point-{n}"), ..point }).collect()
    })
}

fn sheet() -> impl Strategy<Value = Sheet> {
    (select(vec!["two-stroke", "four-stroke", "electric"]), names(FEATURES, 3)).prop_map(|(kind, features)| {
        let features = Vec::from_iter(features);
        let text = format!(
            "id = \"invented\"\nname = \"Invented\"\nkind = \"{kind}\"\nfeatures = {features:?}\n\
             [bands.travel]\ncritical = true\nhigh = {{ value = 3, unit = \"mm\", unconfirmed = \"common practice\" }}\n"
        );
        read_sheet("invented.toml", &text).unwrap()
    })
}

fn stations() -> Vec<Station> {
    STATIONS.iter().map(|id| Station { id: (*id).into() }).collect()
}

fn remembered(points: &[Point], which: &BTreeSet<usize>) -> BTreeMap<String, Rememberance> {
    let some = points.iter().enumerate().filter(|(n, _)| which.contains(n));
    some.map(|(_, point)| {
        let what = Rememberance {
            means: Meaning::Watch,
            words: "old stain".into(),
            record: Digest::of(point.id.as_bytes()),
            hours: 9.5,
        };
        (point.id.clone(), what)
    })
    .collect()
}

fn holds(point: &Point, machine: &Machinery<'_>) -> bool {
    (point.when.engine.is_empty() || point.when.engine.contains(&machine.sheet.kind))
        && point.when.feature.iter().all(|feature| machine.sheet.features.contains(feature))
        && point.when.fitted.iter().all(|part| machine.fitted.contains(part))
}

fn ids(list: &List) -> Vec<&str> {
    list.points().map(|point| point.id.as_str()).collect()
}

proptest! {
    #[test]
    fn a_list_holds_what_applies_once_in_walking_order(
        points in points(),
        sheet in sheet(),
        fitted in names(PARTS, 3),
        which in btree_set(0..25usize, 0..4),
        occasion in select(OCCASIONS),
    ) {
        let stations = stations();
        let machine = Machinery { sheet: &sheet, fitted, confirmed: BTreeMap::new(), remembered: remembered(&points, &which) };
        let list = compose(Parts { stations: &stations, points: &points }, &machine, occasion).unwrap();

        // What is asked of this occasion, or remembered from last time, if its conditions hold; once each.
        let wanted: BTreeSet<&str> = points.iter()
            .filter(|p| holds(p, &machine))
            .filter(|p| p.occasions.contains(occasion) || machine.remembered.contains_key(&p.id))
            .map(|p| p.id.as_str())
            .collect();
        prop_assert_eq!(ids(&list).len(), wanted.len());
        prop_assert_eq!(ids(&list).into_iter().collect::<BTreeSet<_>>(), wanted);

        // Stations in walking order, none empty, no point at another's.
        let order: Vec<usize> = list.stations.iter()
            .map(|station| STATIONS.iter().position(|id| *id == station.id).unwrap())
            .collect();
        prop_assert!(order.is_sorted_by(|a, b| a < b));
        for station in &list.stations {
            prop_assert!(!station.points.is_empty());
            prop_assert!(station.points.iter().all(|point| point.station == station.id));
            // What grounds first comes first; beside that, the author's order.
            let key: Vec<(bool, usize)> = station.points.iter()
                .map(|p| (!p.critical, points.iter().position(|authored| authored.id == p.id).unwrap()))
                .collect();
            prop_assert!(key.is_sorted());
        }

        for point in list.points() {
            let authored = points.iter().find(|p| p.id == point.id).unwrap();
            prop_assert_eq!(
                (point.must, point.critical, point.passing),
                (authored.must, authored.critical, authored.passing)
            );
            prop_assert_eq!(point.remembered.as_ref(), machine.remembered.get(&point.id));
        }
        // A draft keeps the list as composed.
        let kept: List = serde_json::from_str(&serde_json::to_string(&list).unwrap()).unwrap();
        prop_assert_eq!(kept.digest().unwrap(), list.digest().unwrap());
        prop_assert_eq!(kept, list);
    }

    /// What the owner confirmed goes into every measured point; the list's name then changes.
    #[test]
    fn a_confirmed_limit_reaches_the_list(points in points(), sheet in sheet()) {
        let stations = stations();
        let parts = Parts { stations: &stations, points: &points };
        let fitted: BTreeSet<String> = PARTS.iter().map(|part| (*part).to_owned()).collect();
        let plain = Machinery { sheet: &sheet, fitted, confirmed: BTreeMap::new(), remembered: BTreeMap::new() };
        let source = Some(Source { document: "invented manual".into(), page: "7".into() });
        let end = Sourced { value: Some(2.0), unit: Unit::Millimetre, source, unconfirmed: None };
        let band = ResolvedBand { name: "travel".into(), critical: false, low: None, high: Some(end) };
        let confirmed = Machinery { confirmed: BTreeMap::from([("travel".into(), band)]), ..plain.clone() };
        let (before, after) = (compose(parts, &plain, "before-flight").unwrap(), compose(parts, &confirmed, "before-flight").unwrap());
        let measured = |list: &List| -> Vec<ResolvedBand> {
            list.points().filter_map(|p| match &p.ask {
                Ask::Value { band, .. } => Some(band.clone()),
                Ask::Words { .. } | Ask::Torque { .. } => None,
            }).collect()
        };
        prop_assert!(measured(&before).iter().all(|band| !band.confirmed() && band.critical));
        prop_assert!(measured(&after).iter().all(|band| band.confirmed() && band.critical));
        prop_assert_eq!(before.digest().unwrap() == after.digest().unwrap(), measured(&before).is_empty());
    }
}

#[test]
fn a_band_that_the_sheet_lacks_is_named() {
    let sheet = read_sheet("bare.toml", "id = \"bare\"\nname = \"Bare\"\nkind = \"electric\"\n").unwrap();
    let stations = stations();
    let point = Point {
        id: "free-travel".into(),
        station: "engine".into(),
        component: "throttle".into(),
        occasions: BTreeSet::from(["before-flight".into()]),
        must: true,
        critical: false,
        passing: false,
        when: When::default(),
        drawing: "throttle".into(),
        focus: "lever".into(),
        caution: None,
        fill: BTreeMap::new(),
        answer: Vec::new(),
        measure: Some(Measure { band: "travel".into(), below: Meaning::Watch, above: Meaning::Watch }),
    };
    let filled = Point {
        fill: BTreeMap::from([("nuts".into(), "head-nuts".into())]),
        answer: answers(),
        measure: None,
        ..point.clone()
    };
    let machine = Machinery {
        sheet: &sheet,
        fitted: BTreeSet::new(),
        confirmed: BTreeMap::new(),
        remembered: BTreeMap::new(),
    };
    for (point, name) in [(point, "travel"), (filled, "head-nuts")] {
        let fault =
            compose(Parts { stations: &stations, points: &[point] }, &machine, "before-flight").unwrap_err();
        assert_eq!(
            (fault.point.as_str(), fault.name.as_str(), fault.sheet.as_str()),
            ("free-travel", name, "bare")
        );
    }
}
