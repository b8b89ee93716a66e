//! Trend over ten years of readings and lives from 100 000 findings, against SciPy and lifelines on the
//! same data in the same run; and how each grows with ten times the data.
//!
//! The libraries are run by `tests/benches/baseline.py` in the checks' own Python, which times its
//! computation alone, without starting or reading.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use common::{median, ratio};
use witnessmark_core::reliability::{Findings, Wanted, life, steps, turnbull, weibull, weibull_at};
use witnessmark_core::trend::{Series, mann_kendall, theil_sen, trend};

type Pairs = Vec<(f64, Option<f64>)>;

fn main() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let python = root.join(".venv/bin/python");
    assert!(python.exists(), "run tests/outside/run.sh first: it installs the libraries");
    let ask = |what: &str, data: String| theirs(&python, &root, what, data);
    let mut last = None;
    for readings in [3_650, 36_500] {
        last = Some(trends(readings, last, &ask));
    }
    let mut last = None;
    for findings in [100_000, 1_000_000] {
        last = Some(lives(findings, last, &ask));
    }
}

/// Seconds, or none where it is too much for the library.
fn theirs(python: &PathBuf, root: &Path, what: &str, data: String) -> Option<f64> {
    let script = root.join("tests/benches/baseline.py");
    let mut run = Command::new(python)
        .arg(script)
        .arg(what)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .unwrap();
    run.stdin.take().unwrap().write_all(data.as_bytes()).unwrap();
    let told = run.wait_with_output().unwrap();
    String::from_utf8(told.stdout).unwrap().trim().parse().ok()
}

fn against(what: &str, ours: f64, library: &str, theirs: Option<f64>) {
    match theirs {
        Some(theirs) => ratio(what, ours, library, theirs),
        None => println!("{what}: {:.3} ms; {library}: not within its memory or ten minutes", ours * 1e3),
    }
}

fn grown(what: &str, now: f64, before: Option<f64>) {
    if let Some(before) = before {
        println!("  {what}: {:.1} times the time for 10 times the data", now / before);
    }
}

/// The same for everybody: SplitMix64, as parts of one.
fn chance(state: &mut u64) -> f64 {
    *state = state.wrapping_add(0x9e37_79b9_7f4a_7c15);
    let mut z = *state;
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
}

fn trends(count: usize, before: Option<f64>, ask: &impl Fn(&str, String) -> Option<f64>) -> f64 {
    println!("{count} readings");
    let mut state = 7;
    let x: Vec<f64> = (0..count).map(|at| at as f64 * 0.4).collect();
    let noise = |state: &mut u64| (0..6).map(|_| chance(state)).sum::<f64>() - 3.0;
    // Whole tenths, as a gauge gives them.
    let y: Vec<f64> =
        x.iter().map(|at| ((180.0 + 0.002 * at + 4.0 * noise(&mut state)) * 10.0).round() / 10.0).collect();
    let series = Series::paired(&x, &y).unwrap();
    let data = serde_json::json!({ "x": x, "y": y }).to_string();
    let slope = median(5, || assert!(theil_sen(&series, 0.95).unwrap().told().is_some()));
    against("  slope with interval", slope, "SciPy theilslopes", ask("theilslopes", data.clone()));
    let test = median(5, || assert!(mann_kendall(&series).p < 0.05));
    against("  Mann–Kendall", test, "pymannkendall original_test", ask("mann-kendall", data));
    let whole = median(5, || assert!(trend(&series, None).unwrap().told().is_some()));
    println!("  all of it: {:.3} ms", whole * 1e3);
    grown("all of it", whole, before);
    whole
}

fn lives(count: usize, before: Option<(f64, f64)>, ask: &impl Fn(&str, String) -> Option<f64>) -> (f64, f64) {
    println!("{count} findings");
    let mut state = 11;
    // Weibull lives of shape 2.2, seen at inspections every 5 to 40 h, in tenths, until they are sold.
    let one = |state: &mut u64| {
        let life = 80.0 * (-(1.0 - chance(state)).ln()).powf(1.0 / 2.2);
        let (sold, every) = (20.0 + 230.0 * chance(state), 5.0 + (35.0 * chance(state)).round());
        let tenths = |time: f64| (time * 10.0).round() / 10.0;
        let last = (life.min(sold) / every).floor() * every;
        if life > sold { (tenths(sold), None) } else { (last, Some(tenths((last + every).min(sold) + 0.1))) }
    };
    let pairs: Pairs = (0..count).map(|_| one(&mut state)).collect();
    let data = serde_json::json!({ "findings": pairs }).to_string();
    let findings = Findings::new(&pairs).unwrap();
    let fit = median(3, || assert!(weibull(&findings).unwrap().told().is_some()));
    against("  Weibull with profile intervals", fit, "lifelines WeibullFitter", ask("weibull", data.clone()));
    let masses = median(1, || assert!(turnbull(&findings).told().is_some()));
    // lifelines' own search takes hours for these: a hundredth of the findings each, then.
    let some: Pairs = pairs.iter().take(count / 100).copied().collect();
    let fewer = Findings::new(&some).unwrap();
    let few = median(3, || assert!(turnbull(&fewer).told().is_some()));
    let data = serde_json::json!({ "findings": some }).to_string();
    println!("  Turnbull: {:.3} ms", masses * 1e3);
    against("  Turnbull of a hundredth of them", few, "lifelines npmle", ask("turnbull", data));
    // As a screen shows them: both curves with their intervals, and how often to look.
    let ages: Vec<f64> = (0..=60).map(|at| findings.oldest() * f64::from(at) / 60.0).collect();
    let wanted = Wanted { chance: 0.02, age: None, in_force: Some(25.0) };
    let shown = median(1, || {
        let life = life(&findings, Some(&wanted)).unwrap();
        assert!(steps(&findings, life.turnbull.as_result().unwrap()).len() > 10);
        assert!(weibull_at(&findings, &ages).unwrap().told().is_some());
    });
    println!("  all that is shown of them: {:.3} ms", shown * 1e3);
    grown("Weibull", fit, before.map(|before| before.0));
    grown("Turnbull", masses, before.map(|before| before.1));
    (fit, masses)
}
