//! The figures that are kept of a log.

use statrs::statistics::{Data, Median};

use super::idle::idle;
use super::log::{Log, Sample, Track};
use super::mapping::Channel;
use super::peak::{Cleaned, RPM, cleaned, highest};
use super::running::{GAP, RUNS, time_above, warm};
use crate::units::{Dimension, Quantity, Unit};

/// Decimals of hours that are told of a run: a few seconds.
const HOURS: u32 = 3;
/// More decimals than any instrument tells.
const MOST_DECIMALS: u32 = 6;

/// What a log tells.
#[derive(Clone, Debug, PartialEq)]
pub struct LogTold {
    /// Its figures.
    pub figures: Vec<Figure>,
    /// How warm it was outside: the median of that column, in its unit. The engine's own sensors, cold
    /// before it starts, aren't taken for it: nobody knows whether they were.
    pub outside: Option<Quantity>,
    /// How long it lasts, seconds: all runs together.
    pub lasts: f64,
    /// What else is worth knowing.
    pub notes: Vec<Note>,
}

/// One figure.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// Which: `peak-cht`, `peak-egt`, `peak-speed`, `idle-speed`, `run-time`.
    pub measure: &'static str,
    /// The figure in its column's unit, rounded to the decimals that the column is told with; a run's time
    /// in hours.
    pub value: Quantity,
    /// Samples left out of it as no engine's doing.
    pub left_out: u32,
}

/// What is worth knowing beside the figures.
#[derive(Clone, Debug, PartialEq)]
pub enum Note {
    /// The clock begins anew within the file: it holds so many runs, which are told together.
    Runs(usize),
    /// Nothing was logged for so many minutes in all, in so many gaps.
    Gaps {
        /// How many.
        gaps: usize,
        /// How long, minutes.
        minutes: f64,
    },
    /// All values of a column are the same.
    AllSame(String),
    /// Nothing in a column can be what it is said to be.
    Impossible(String),
    /// Nothing was measured in a column.
    Nothing(String),
    /// How long it ran is told by the head's temperature.
    ByHead,
    /// Nothing tells how long it ran.
    NoRunTime,
    /// It never idled for ten seconds.
    NeverIdled,
}

impl Log {
    /// Reduces it to its figures. All runs of a file are told together: the highest of all, and the sum
    /// of their times.
    pub fn told(&self) -> LogTold {
        let mut told =
            LogTold { figures: Vec::new(), outside: None, lasts: self.lengths().sum(), notes: Vec::new() };
        let columns: Vec<Cleared> = self.tracks.iter().map(|track| self.cleared(track)).collect();
        if self.runs.len() > 1 {
            told.notes.push(Note::Runs(self.runs.len()));
        }
        told.notes.extend(self.gaps());
        told.notes.extend(columns.iter().filter_map(Cleared::note));
        let of =
            |channel: Channel| columns.iter().filter(move |column| column.track.column.channel == channel);
        for (channel, measure) in
            [(Channel::Cht, "peak-cht"), (Channel::Egt, "peak-egt"), (Channel::Speed, "peak-speed")]
        {
            told.figures.extend(peak(measure, of(channel)));
        }
        if of(Channel::Speed).any(Cleared::tells) {
            let idle = of(Channel::Speed).find_map(|column| {
                let value = column.in_its_unit(idle(&column.cleaned.runs)?)?;
                Some(Figure { measure: "idle-speed", value, left_out: column.cleaned.left_out })
            });
            if idle.is_none() {
                told.notes.push(Note::NeverIdled);
            }
            told.figures.extend(idle);
        }
        let time = self.run_time(of(Channel::Speed), of(Channel::Cht));
        told.notes.extend(match &time {
            Some((_, by_head)) => by_head.then_some(Note::ByHead),
            None => Some(Note::NoRunTime),
        });
        told.figures.extend(time.map(|(figure, _)| figure));
        told.outside = of(Channel::Outside).find_map(|column| {
            let values: Vec<f64> = column.cleaned.runs.iter().flatten().map(|sample| sample.value).collect();
            if values.is_empty() { None } else { column.in_its_unit(Data::new(values).median()) }
        });
        told
    }

    fn cleared<'a>(&self, track: &'a Track) -> Cleared<'a> {
        let samples = self.samples(track);
        let measured = samples.iter().map(Vec::len).sum();
        Cleared { track, measured, cleaned: cleaned(track.column.channel, samples) }
    }

    /// How long the engine ran, and whether that is told by the head.
    fn run_time<'a>(
        &self,
        mut speeds: impl Iterator<Item = &'a Cleared<'a>>,
        heads: impl Iterator<Item = &'a Cleared<'a>>,
    ) -> Option<(Figure, bool)> {
        let figure = |seconds: f64, left_out: u32| Figure {
            measure: "run-time",
            value: Quantity::new(rounded(seconds / 3600.0, HOURS), Unit::Hour),
            left_out,
        };
        if let Some(speed) = speeds.find(|column| column.tells()) {
            return Some((figure(time_above(&speed.cleaned.runs, RUNS), speed.cleaned.left_out), false));
        }
        // Of several cylinders, the one that ran longest: a sensor that is loose reads too low.
        let told = heads.filter_map(|head| {
            let level = warm(&head.cleaned.runs)?;
            Some((time_above(&head.cleaned.runs, level), head.cleaned.left_out))
        });
        let (seconds, left_out) = told.max_by(|a, b| a.0.total_cmp(&b.0))?;
        Some((figure(seconds, left_out), true))
    }

    fn gaps(&self) -> Option<Note> {
        let pairs = self.runs.iter().filter_map(|run| self.times.get(run.clone()));
        let between = pairs.flat_map(|times| times.windows(2)).filter_map(|pair| match pair {
            [a, b] => Some(b - a),
            _ => None,
        });
        let long: Vec<f64> = between.filter(|between| *between > GAP).collect();
        let minutes = rounded(long.iter().sum::<f64>() / 60.0, 0);
        (!long.is_empty()).then_some(Note::Gaps { gaps: long.len(), minutes })
    }
}

/// A column without what no engine does.
struct Cleared<'a> {
    track: &'a Track,
    /// Values before anything was left out.
    measured: usize,
    cleaned: Cleaned,
}

impl Cleared<'_> {
    fn samples(&self) -> impl Iterator<Item = &Sample> {
        self.cleaned.runs.iter().flatten()
    }

    /// Whether anything is left of it.
    fn tells(&self) -> bool {
        self.samples().next().is_some()
    }

    fn in_its_unit(&self, si: f64) -> Option<Quantity> {
        let unit = self.track.column.unit;
        let si = match self.track.column.channel.dimension() {
            Dimension::Frequency => Quantity::new(si / RPM, Unit::PerMinute),
            _ => Quantity::new(si, Unit::Kelvin),
        };
        let value = si.to(unit).ok()?.value;
        Some(Quantity::new(rounded(value, self.track.decimals.min(MOST_DECIMALS)), unit))
    }

    /// What is wrong with it as a whole.
    fn note(&self) -> Option<Note> {
        let heading = || self.track.column.heading.clone();
        let mut samples = self.samples();
        match samples.next() {
            None if self.measured == 0 => Some(Note::Nothing(heading())),
            None => Some(Note::Impossible(heading())),
            // One or two may well be the same.
            Some(first) if self.measured > 2 && samples.all(|other| other.value == first.value) => {
                Some(Note::AllSame(heading()))
            }
            Some(_) => None,
        }
    }
}

/// The highest of all columns of a channel, in the unit of the one that has it; of all of them, what was
/// left out.
fn peak<'a>(measure: &'static str, columns: impl Iterator<Item = &'a Cleared<'a>>) -> Option<Figure> {
    let (mut best, mut left_out): (Option<(f64, &Cleared<'_>)>, u32) = (None, 0);
    for column in columns {
        left_out = left_out.saturating_add(column.cleaned.left_out);
        let Some(high) = highest(&column.cleaned.runs) else { continue };
        if best.is_none_or(|(before, _)| high > before) {
            best = Some((high, column));
        }
    }
    let (high, column) = best?;
    Some(Figure { measure, value: column.in_its_unit(high)?, left_out })
}

/// Rounded to so many decimals: to the number that a person would write so, which no sum of binary
/// fractions beside it is.
fn rounded(value: f64, decimals: u32) -> f64 {
    let scale = 10f64.powi(i32::try_from(decimals).unwrap_or_default());
    (value * scale).round() / scale
}
