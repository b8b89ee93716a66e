//! What holds of engine logs whatever is in them.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use proptest::prelude::*;
use witnessmark_core::runlog::{Channel, Column, LogTold, Mapping, Note, Reader, TimeForm, Why};
use witnessmark_core::units::Unit;

const HEADINGS: [&str; 4] = ["time", "head 1", "head 2", "rpm"];

fn mapping(temperature: Unit, decimal: char) -> Mapping {
    let column = |heading: &str, channel, unit| Column { heading: heading.into(), channel, unit };
    Mapping {
        separator: ';',
        decimal,
        time: "time".into(),
        time_form: TimeForm::Seconds,
        columns: vec![
            column("head 1", Channel::Cht, temperature),
            column("head 2", Channel::Cht, temperature),
            column("rpm", Channel::Speed, Unit::PerMinute),
        ],
    }
}

fn told(mapping: &Mapping, rows: &[[String; 4]]) -> LogTold {
    let mut reader = Reader::new(mapping, &HEADINGS).unwrap();
    for (line, row) in (2..).zip(rows) {
        reader.row(line, &row.each_ref().map(String::as_str));
    }
    let log = reader.finish();
    assert_eq!((log.unread, log.rows as usize), (0, rows.len()), "{:?}", log.first_unread);
    log.told()
}

fn value(told: &LogTold, measure: &str) -> Option<f64> {
    told.figures.iter().find(|figure| figure.measure == measure).map(|figure| figure.value.value)
}

/// A run: it idles, climbs, and idles again; heads that warm up to their levels, and noise.
#[derive(Clone, Debug)]
struct Run {
    idle: f64,
    full: f64,
    heads: [f64; 2],
    phases: [usize; 3],
    noise: Vec<f64>,
}

fn run() -> impl Strategy<Value = Run> {
    let heads = (120.0..240.0, 120.0..240.0);
    let phases = (40_usize..120, 60_usize..300, 40_usize..120);
    let noise = prop::collection::vec(-1.0..1.0, 17..40);
    (1600.0..2400.0, 5000.0..9000.0, heads, phases, noise).prop_map(|(idle, full, heads, phases, noise)| {
        Run { idle, full, heads: [heads.0, heads.1], phases: [phases.0, phases.1, phases.2], noise }
    })
}

impl Run {
    /// Seconds, °C, °C and turns a minute, once a second.
    fn rows(&self) -> Vec<[f64; 4]> {
        let [before, climb, after] = self.phases;
        let noise = |n: usize, k: usize| self.noise[(n * (2 * k + 1) + k) % self.noise.len()];
        let row = |n: usize| {
            let seconds = n as f64;
            let climbing = (before..before + climb).contains(&n);
            let speed =
                if climbing { self.full + 60.0 * noise(n, 1) } else { self.idle + 40.0 * noise(n, 1) };
            let head = |k: usize| {
                20.0 + (self.heads[k] - 20.0) * (1.0 - (-seconds / 60.0).exp()) + 0.5 * noise(n, k)
            };
            [seconds, head(0), head(1), speed]
        };
        (0..before + climb + after).map(row).collect()
    }
}

/// As an instrument writes it.
fn written(rows: &[[f64; 4]], fahrenheit: bool) -> Vec<[String; 4]> {
    let degrees = |celsius: f64| if fahrenheit { celsius * 1.8 + 32.0 } else { celsius };
    let write = |row: &[f64; 4]| {
        let head = |k: usize| format!("{:.2}", degrees(row[k]));
        [format!("{:.1}", row[0]), head(1), head(2), format!("{:.0}", row[3])]
    };
    rows.iter().map(write).collect()
}

proptest! {
    #[test]
    fn figures_are_those_of_the_run(run in run()) {
        let rows = run.rows();
        let told = told(&mapping(Unit::Celsius, '.'), &written(&rows, false));
        let highest = rows.iter().flat_map(|row| [row[1], row[2]]).fold(f64::MIN, f64::max);
        prop_assert!((value(&told, "peak-cht").unwrap() - highest).abs() <= 0.005 + 1e-9);
        // Its middle value, and the noise is 40 turns at most.
        prop_assert!((value(&told, "idle-speed").unwrap() - run.idle).abs() <= 41.0);
        let hours = (rows.len() - 1) as f64 / 3600.0;
        prop_assert!((value(&told, "run-time").unwrap() - hours).abs() <= 0.0005 + 1e-9);
        prop_assert!(told.notes.is_empty(), "{:?}", told.notes);
        prop_assert!(told.figures.iter().all(|figure| figure.left_out == 0));
    }

    #[test]
    fn a_columns_unit_says_nothing(run in run()) {
        let rows = run.rows();
        let celsius = told(&mapping(Unit::Celsius, '.'), &written(&rows, false));
        let fahrenheit = told(&mapping(Unit::Fahrenheit, '.'), &written(&rows, true));
        for (a, b) in celsius.figures.iter().zip(&fahrenheit.figures) {
            prop_assert_eq!((a.measure, a.left_out), (b.measure, b.left_out));
            let (a, b) = (a.value.si().unwrap(), b.value.si().unwrap());
            // Both are written with two decimals.
            prop_assert!((a - b).abs() <= 0.01, "{} {}", a, b);
        }
        prop_assert_eq!(celsius.figures.len(), fahrenheit.figures.len());
    }

    #[test]
    fn every_second_row_tells_the_same(run in run(), odd in 0_usize..2) {
        let rows = run.rows();
        let half: Vec<[f64; 4]> = rows.iter().skip(odd).step_by(2).copied().collect();
        let mapping = mapping(Unit::Celsius, '.');
        let (whole, half) = (told(&mapping, &written(&rows, false)), told(&mapping, &written(&half, false)));
        let apart = |measure: &str| value(&whole, measure).unwrap() - value(&half, measure).unwrap();
        // The highest sample may be one of those that are gone: then its neighbour tells, less the noise
        // and what the head warms in two seconds.
        prop_assert!((0.0..=1.0 + 220.0 / 60.0 * 2.0).contains(&apart("peak-cht")), "{}", apart("peak-cht"));
        prop_assert!((0.0..=120.0).contains(&apart("peak-speed")));
        prop_assert!(apart("idle-speed").abs() <= 60.0);
        prop_assert!(apart("run-time").abs() <= 0.002);
    }

    #[test]
    fn the_order_of_columns_and_of_rows_of_one_moment_says_nothing(run in run()) {
        // Two rows a second, the second with half of the noise.
        let twice = |rows: &[[f64; 4]], first: usize| -> Vec<[f64; 4]> {
            let both = |pair: &[[f64; 4]]| [pair[first], [pair[first][0], pair[1 - first][1], pair[1 - first][2], pair[1 - first][3]]];
            rows.windows(2).step_by(2).flat_map(both).collect()
        };
        let rows = run.rows();
        let mapping = mapping(Unit::Celsius, '.');
        let one = told(&mapping, &written(&twice(&rows, 0), false));
        let mut swapped = Vec::new();
        for pair in twice(&rows, 0).chunks(2) {
            swapped.extend(pair.iter().rev().copied());
        }
        let other = told(&mapping, &written(&swapped, false));
        for measure in ["peak-cht", "peak-speed"] {
            prop_assert_eq!(value(&one, measure), value(&other, measure));
        }
        // Where the throttle opens, one sample more or less is part of the idling.
        let apart = |measure: &str| (value(&one, measure).unwrap() - value(&other, measure).unwrap()).abs();
        prop_assert!(apart("idle-speed") <= 80.0 && apart("run-time") <= 0.001);
        let mut columns = mapping.clone();
        columns.columns.reverse();
        prop_assert_eq!(&told(&columns, &written(&twice(&rows, 0), false)).figures, &one.figures);
    }

    #[test]
    fn one_lead_that_comes_off_changes_no_figure(run in run(), at in 5_usize..90, shown in prop::sample::select(vec![399.0, 449.0, 999.0, 1023.75, -999.0])) {
        let rows = run.rows();
        let mapping = mapping(Unit::Celsius, '.');
        let mut wrong = rows.clone();
        wrong[at][1] = shown;
        let (clean, told) = (told(&mapping, &written(&rows, false)), told(&mapping, &written(&wrong, false)));
        let left_out = told.figures.iter().find(|figure| figure.measure == "peak-cht").unwrap().left_out;
        prop_assert_eq!(left_out, 1);
        // The sample that is gone may itself have been the highest.
        let gone = value(&clean, "peak-cht").unwrap() - value(&told, "peak-cht").unwrap();
        prop_assert!((0.0..=1.0 + 220.0 / 60.0).contains(&gone), "{}", gone);
    }

    #[test]
    fn garbage_is_counted_and_never_panics(
        rows in prop::collection::vec(prop::collection::vec("\\PC{0,12}|[0-9:;,.eE+-]{0,14}", 0..7), 0..40),
        form in prop::sample::select(vec![TimeForm::Seconds, TimeForm::Milliseconds, TimeForm::Minutes, TimeForm::Clock, TimeForm::Moment]),
        decimal in prop::sample::select(vec!['.', ',']),
    ) {
        let mapping = Mapping { time_form: form, ..mapping(Unit::Fahrenheit, decimal) };
        let mut reader = Reader::new(&mapping, &HEADINGS).unwrap();
        let mut taken = 0;
        for (line, row) in (2..).zip(&rows) {
            let cells: Vec<&str> = row.iter().map(String::as_str).collect();
            taken += u32::from(cells.iter().any(|cell| !cell.trim().is_empty()));
            reader.row(line, &cells);
        }
        let log = reader.finish();
        prop_assert_eq!(log.rows + log.unread, taken, "every row is one or the other");
        prop_assert_eq!(log.first_unread.is_some(), log.unread > 0);
        for figure in log.told().figures {
            prop_assert!(figure.value.value.is_finite());
        }
    }

    #[test]
    fn numbers_of_any_size_never_panic(
        rows in prop::collection::vec((any::<f64>(), any::<f64>(), any::<f64>()), 0..60),
        form in prop::sample::select(vec![TimeForm::Seconds, TimeForm::Milliseconds, TimeForm::Minutes]),
    ) {
        let mapping = Mapping { time_form: form, ..mapping(Unit::Celsius, '.') };
        let mut reader = Reader::new(&mapping, &HEADINGS).unwrap();
        for (line, (time, head, speed)) in (2..).zip(&rows) {
            let cells = [time.to_string(), head.to_string(), String::new(), format!("{speed:e}")];
            reader.row(line, &cells.each_ref().map(String::as_str));
        }
        for figure in reader.finish().told().figures {
            prop_assert!(figure.value.value.is_finite(), "{:?}", figure);
        }
    }
}

#[test]
fn a_clock_begun_anew_makes_two_runs_that_are_told_together() {
    let rows = |from: f64| (0..61).map(move |n| [f64::from(n), from, from - 5.0, 6200.0]);
    let both: Vec<[f64; 4]> = rows(180.0).chain(rows(195.0)).collect();
    let told = told(&mapping(Unit::Celsius, '.'), &written(&both, false));
    assert!(told.notes.contains(&Note::Runs(2)), "{:?}", told.notes);
    assert_eq!((value(&told, "peak-cht"), value(&told, "run-time")), (Some(195.0), Some(0.033)));
    assert_eq!((told.lasts, value(&told, "idle-speed")), (120.0, None));
    assert!(told.notes.contains(&Note::NeverIdled));
}

#[test]
fn what_cannot_be_read_is_counted_and_the_first_named() {
    let mapping = mapping(Unit::Celsius, '.');
    let mut reader = Reader::new(&mapping, &HEADINGS).unwrap();
    reader.row(2, &["0", "20", "21", "2000"]);
    reader.row(3, &["1", "20", "21"]);
    reader.row(4, &["later", "20", "21", "2000"]);
    reader.row(5, &["2", "ERR", "199", "2000"]);
    reader.row(6, &["3", "70 °F", "21", "2000"]);
    reader.row(7, &["", "", "", ""]);
    let log = reader.finish();
    assert_eq!((log.rows, log.unread), (1, 4));
    let first = log.first_unread.clone().unwrap();
    assert_eq!((first.line, first.why), (3, Why::Fields { has: 3, wants: 4 }));
    let told = log.told();
    assert_eq!(value(&told, "peak-cht"), Some(21.0), "199 after 21 is a leap, and the only one");
}

#[test]
fn a_figure_has_no_more_decimals_than_its_instrument() {
    let mut rows = written(&[[0.0, 20.0, 20.0, 2000.0], [1.0, 20.0, 20.0, 2000.0]], false);
    rows[1][1] = "20.7".into();
    rows[0][1] = "20.1".into();
    rows.iter_mut().for_each(|row| row[2] = String::new());
    let told = told(&mapping(Unit::Celsius, '.'), &rows);
    assert_eq!(serde_json::to_string(&told.figures[0].value).unwrap(), r#"{"value":20.7,"unit":"Cel"}"#);
}

#[test]
fn nothing_is_told_of_an_engine_that_stood() {
    let cold: Vec<[f64; 4]> = (0..60).map(|n| [f64::from(n), 20.0 + f64::from(n % 3), 20.0, 0.0]).collect();
    let told = told(&mapping(Unit::Celsius, '.'), &written(&cold, false));
    assert!(told.figures.is_empty(), "{:?}", told.figures);
    assert!(told.notes.contains(&Note::NeverRan));
}

#[test]
fn a_gauge_at_its_stop_tells_nothing_and_a_dead_pickup_leaves_the_head_to_tell() {
    let row = |n: i32| [f64::from(n), 400.0, 20.0 + 2.0 * f64::from(n.min(80)), 0.0];
    let rows: Vec<[f64; 4]> = (0..200).map(row).collect();
    let told = told(&mapping(Unit::Celsius, '.'), &written(&rows, false));
    assert_eq!(told.notes, [Note::AllSame("head 1".into()), Note::ByHead]);
    assert_eq!((value(&told, "peak-cht"), value(&told, "peak-speed")), (Some(180.0), None));
    assert_eq!(told.figures[0].left_out, 200, "the other head's, all of them");
    // Half way up at 100 °C, after 40 seconds.
    assert_eq!(value(&told, "run-time"), Some(0.044));
}
