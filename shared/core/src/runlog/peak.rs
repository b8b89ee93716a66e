//! The highest that a channel showed, without what no engine does.

use super::log::Sample;
use super::mapping::Channel;

/// What a channel can show and how fast it can move. Our choices, wide enough for any engine of the
/// trade (common practice, no source): whatever lies outside comes from a sensor or its lead.
pub(super) struct Physics {
    /// The least and the most, SI.
    range: (f64, f64),
    /// The fastest that it rises, SI a second.
    rate: f64,
    /// Less than this is no leap, however fast: noise and coarse steps. SI.
    step: f64,
    /// The longest that a lead is taken to be off, seconds; none where one sample alone is left out.
    off: Option<f64>,
}

/// 0 °C.
const ICE: f64 = 273.15;
/// One turn a minute, 1/s.
pub(super) const RPM: f64 = 1.0 / 60.0;
/// The longest that a lead is taken to be off, seconds.
const LEAD_OFF: f64 = 10.0;
/// An instrument may show one value so long before it shows the next, seconds.
const HELD: f64 = 1.0;

impl Channel {
    pub(super) fn physics(self) -> Physics {
        match self {
            // Aluminium heads are ruined well below 450 °C; a head's mass warms by a few kelvin a second.
            Channel::Cht => {
                Physics { range: (ICE - 60.0, ICE + 450.0), rate: 10.0, step: 25.0, off: Some(LEAD_OFF) }
            }
            // Gas follows the throttle at once, the sensor's own mass about a second later.
            Channel::Egt => {
                Physics { range: (ICE - 60.0, ICE + 1200.0), rate: 300.0, step: 150.0, off: Some(LEAD_OFF) }
            }
            // An unloaded two-stroke gains some ten thousand turns a minute each second.
            Channel::Speed => {
                Physics { range: (0.0, 20_000.0 * RPM), rate: 20_000.0 * RPM, step: 2000.0 * RPM, off: None }
            }
            Channel::Outside => {
                Physics { range: (ICE - 60.0, ICE + 60.0), rate: 10.0, step: 25.0, off: Some(LEAD_OFF) }
            }
        }
    }
}

/// One column's samples without what no engine does, and how many those were.
pub(super) struct Cleaned {
    pub runs: Vec<Vec<Sample>>,
    pub left_out: u32,
}

/// Leaves out of a column what comes from a sensor or its lead:
///
/// - values that the channel can't have: where a sensor's scale ends, and the numbers by which
///   instruments say that it is missing;
/// - a spike: samples that rise from the one before, and fall to the one after, faster than physics allows
///   (|Δ| > max(step, rate · Δt)). One sample; or, of a temperature, up to ten seconds, or any time at one
///   and the very same value, as at a sensor's stop; also where the run ends there.
///
/// Falls alone stay: no highest value rests on them.
pub(super) fn cleaned(channel: Channel, runs: Vec<Vec<Sample>>) -> Cleaned {
    let physics = channel.physics();
    let mut left_out = 0;
    let runs = runs.into_iter().map(|run| {
        let before = run.len();
        let (low, high) = physics.range;
        let possible: Vec<Sample> = run.into_iter().filter(|s| (low..=high).contains(&s.value)).collect();
        let kept = without_spikes(possible, &physics);
        left_out += before - kept.len();
        kept
    });
    let runs = runs.collect();
    Cleaned { runs, left_out: u32::try_from(left_out).unwrap_or(u32::MAX) }
}

fn without_spikes(run: Vec<Sample>, physics: &Physics) -> Vec<Sample> {
    let leaps = leaps(&run, physics);
    // Several leaps one way make one rise or fall.
    let ways: Vec<Way> = leaps.chunk_by(|a, b| a.1 == b.1).filter_map(Way::of).collect();
    let mut spike = vec![false; run.len()];
    let (mut at, mut level) = (0, None);
    while let Some(way) = ways.get(at) {
        let next = ways.get(at + 1);
        at += 1;
        let (from, to, fell) = if way.up {
            let mut falls = ways.iter().enumerate().skip(at).filter(|(_, fall)| !fall.up);
            // After a fall that nothing brought back, what was before it is the level to come back to.
            let before = level.take().or(way.first.checked_sub(1)).and_then(|at| run.get(at));
            let end = falls.find(|(_, fall)| ends(before, run.get(fall.last), physics));
            at = end.map_or(at, |(end, _)| end + 1);
            (way.first, end.map_or(run.len(), |(_, fall)| fall.last), end.is_some())
        } else if next.is_some_and(|rise| back(&run, way, rise, physics)) {
            at += 1;
            continue;
        } else {
            level = way.first.checked_sub(1);
            if at > 1 {
                continue;
            }
            // A run may begin with its lead off.
            (0, way.last, false)
        };
        if run.get(from..to).is_some_and(|high| is_lead(high, fell, physics)) {
            level = None;
            spike.iter_mut().take(to).skip(from).for_each(|out| *out = true);
        }
    }
    run.into_iter().zip(spike).filter(|(_, out)| !out).map(|(sample, _)| sample).collect()
}

/// Leaps one way: the places of the first sample and of the last that they lead to.
struct Way {
    first: usize,
    last: usize,
    up: bool,
}

impl Way {
    fn of(leaps: &[(usize, bool)]) -> Option<Self> {
        Some(Self { first: leaps.first()?.0, last: leaps.last()?.0, up: leaps.first()?.1 })
    }
}

/// Whether a fall ends what a rise began: it leads to what an engine can have come to from before the rise,
/// in the time since, ten seconds of it at most.
fn ends(before: Option<&Sample>, after: Option<&Sample>, physics: &Physics) -> bool {
    before.zip(after).is_some_and(|(before, after)| {
        let time = (after.at - before.at).min(LEAD_OFF);
        after.value - before.value <= physics.step.max(physics.rate * time)
    })
}

/// Whether a rise leads back to where a fall began: then what lies between was too low, and what
/// comes after is as true as what was before.
fn back(run: &[Sample], fall: &Way, rise: &Way, physics: &Physics) -> bool {
    let before = fall.first.checked_sub(1).and_then(|at| run.get(at));
    let after = run.get(rise.last);
    before.zip(after).is_some_and(|(before, after)| (after.value - before.value).abs() <= physics.step)
}

/// Whether samples from a rise on are a lead's doing; `fell`: whether a fall ends them.
fn is_lead(high: &[Sample], fell: bool, physics: &Physics) -> bool {
    let (Some(first), Some(last)) = (high.first(), high.last()) else { return false };
    let short = physics.off.is_some_and(|off| fell && last.at - first.at <= off);
    high.len() == 1 || short || (physics.off.is_some() && same(high))
}

/// Whether all are the very same: a gauge at its stop, unlike an engine.
fn same(samples: &[Sample]) -> bool {
    samples.windows(2).all(|pair| matches!(pair, [a, b] if a.value == b.value))
}

/// Where a value moves faster than physics allows: the place of the sample after, and whether up.
fn leaps(run: &[Sample], physics: &Physics) -> Vec<(usize, bool)> {
    let mut held_since = run.first().map_or(0.0, |first| first.at);
    let mut found = Vec::new();
    for (n, pair) in run.windows(2).enumerate() {
        let [before, now] = pair else { continue };
        // An instrument that renews its value once a second moves a second's worth in one sample.
        let time = (now.at - before.at).max((now.at - held_since).min(HELD));
        let moved = now.value - before.value;
        if moved.abs() > physics.step.max(physics.rate * time) {
            found.push((n + 1, moved > 0.0));
        }
        if moved != 0.0 {
            held_since = now.at;
        }
    }
    found
}

/// The highest of all samples.
pub(super) fn highest(runs: &[Vec<Sample>]) -> Option<f64> {
    runs.iter().flatten().map(|sample| sample.value).max_by(f64::total_cmp)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// One sample a second, °C.
    fn cht(values: &[f64]) -> (Option<f64>, u32) {
        let sample = |(n, value): (usize, &f64)| Sample { at: n as f64, value: value + ICE };
        let cleaned = cleaned(Channel::Cht, vec![values.iter().enumerate().map(sample).collect()]);
        (highest(&cleaned.runs).map(|kelvin| (kelvin - ICE).round()), cleaned.left_out)
    }

    #[test]
    fn what_an_engine_does_stays() {
        assert_eq!(cht(&[20.0, 25.0, 33.0, 180.0]), (Some(33.0), 1), "a lead that came off at the end");
        let warming: Vec<f64> = (0..20).map(|n| 20.0 + 9.0 * f64::from(n)).collect();
        assert_eq!(cht(&warming), (Some(191.0), 0));
        assert_eq!(cht(&[190.0, 150.0, 149.0]), (Some(150.0), 1), "nothing cools so fast");
    }

    #[test]
    fn a_spike_is_left_out_and_counted() {
        assert_eq!(cht(&[180.0, 181.0, 399.0, 182.0, 183.0]), (Some(183.0), 1));
        assert_eq!(cht(&[180.0, 181.0, 399.0, 350.0, 399.0, 182.0]), (Some(182.0), 3));
    }

    #[test]
    fn a_stop_is_left_out_however_long() {
        let mut values = vec![180.0; 5];
        values.extend([400.0; 60]);
        assert_eq!(cht(&values), (Some(180.0), 60), "to the end");
        values.extend([182.0; 5]);
        assert_eq!(cht(&values), (Some(182.0), 60));
        assert_eq!(cht(&[400.0, 400.0, 400.0, 20.0, 21.0]), (Some(21.0), 3), "from the beginning");
    }

    #[test]
    fn what_no_sensor_of_the_kind_can_show_is_left_out() {
        assert_eq!(cht(&[180.0, 1023.75, 1023.75, -999.0, 181.0]), (Some(181.0), 3));
        assert_eq!(cht(&[999.0, 999.0]), (None, 2));
        assert_eq!(cht(&[]), (None, 0));
    }

    #[test]
    fn a_dropout_takes_nothing_with_it() {
        assert_eq!(cht(&[180.0, 180.0, 20.0, 180.0, 180.0]), (Some(180.0), 0));
        assert_eq!(cht(&[180.0, 181.0, 20.0, 400.0, 400.0, 182.0]), (Some(182.0), 2));
        assert_eq!(cht(&[180.0, 300.0, 400.0, 300.0, 181.0]), (Some(181.0), 3), "in two steps");
        assert_eq!(cht(&[180.0, 400.0, 181.0, 400.0, 182.0]), (Some(182.0), 2), "rattling");
    }

    #[test]
    fn a_throttle_opened_is_no_spike() {
        let at = |n: usize, rpm: f64| Sample { at: n as f64 / 10.0, value: rpm * RPM };
        // Renewed twice a second, logged ten times.
        let told: Vec<Sample> = [2000.0; 5]
            .into_iter()
            .chain([8000.0; 5])
            .chain([2000.0; 5])
            .enumerate()
            .map(|(n, rpm)| at(n, rpm))
            .collect();
        assert_eq!(cleaned(Channel::Speed, vec![told]).left_out, 0);
        let sparks: Vec<Sample> =
            [6000.0, 6010.0, 12_400.0, 6020.0].into_iter().enumerate().map(|(n, rpm)| at(n, rpm)).collect();
        assert_eq!(cleaned(Channel::Speed, vec![sparks]).left_out, 1);
    }
}
