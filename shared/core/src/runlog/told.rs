//! The figures that are kept of a log.

use super::idle::idle;
use super::log::{Log, Sample, Track};
use super::mapping::Channel;
use super::peak::{Cleaned, RPM, cleaned, highest};
use super::running::{GAP, RUNS, time_above, warm};
use super::when::HAIR;
use crate::median::median;
use crate::units::{Dimension, Quantity, Unit};

/// Decimals of hours that are told of a run: a few seconds.
const HOURS: u32 = 3;
/// So many values that are all the same are no engine's. Our choice.
const STUCK: usize = 10;
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
    /// All values of a head's or exhaust's column are the same: nothing is told of it.
    AllSame(String),
    /// Nothing in a column can be what it is said to be.
    Impossible(String),
    /// Nothing was measured in a column.
    Nothing(String),
    /// How long it ran is told by the head's temperature.
    ByHead,
    /// Nothing tells how long it ran.
    NoRunTime,
    /// The engine didn't run: no figure is told, as none would be of a run.
    NeverRan,
    /// It never idled for ten seconds.
    NeverIdled,
}

impl Log {
    /// Reduces it to its figures. All runs of a file are told together: the highest of all, and the sum
    /// of their times. Of a log in which the engine didn't run nothing is told.
    pub fn told(&self) -> LogTold {
        let mut told =
            LogTold { figures: Vec::new(), outside: None, lasts: self.lengths().sum(), notes: Vec::new() };
        let columns: Vec<Cleared> = self.tracks.iter().map(|track| self.cleared(track)).collect();
        let columns = Columns(&columns);
        if self.runs.len() > 1 {
            told.notes.push(Note::Runs(self.runs.len()));
        }
        told.notes.extend(self.gaps());
        told.notes.extend(columns.0.iter().filter_map(Cleared::note));
        told.outside = columns.of(Channel::Outside).find_map(|column| {
            column.in_its_unit(median(column.samples().map(|sample| sample.value).collect())?)
        });
        let ran = columns.ran();
        told.notes.extend(match &ran {
            Ran::BySpeed(_) => None,
            Ran::ByHead(_) => Some(Note::ByHead),
            Ran::Never => Some(Note::NeverRan),
            Ran::Unknown => Some(Note::NoRunTime),
        });
        if matches!(ran, Ran::Never) {
            return told;
        }
        told.figures.extend(columns.peak(Channel::Cht, "peak-cht"));
        told.figures.extend(columns.peak(Channel::Egt, "peak-egt"));
        if let Ran::BySpeed(_) = ran {
            told.figures.extend(columns.peak(Channel::Speed, "peak-speed"));
            let idle = columns.idle();
            told.notes.extend(idle.is_none().then_some(Note::NeverIdled));
            told.figures.extend(idle);
        }
        if let Ran::BySpeed(time) | Ran::ByHead(time) = ran {
            told.figures.push(time);
        }
        told
    }

    fn cleared<'a>(&self, track: &'a Track) -> Cleared<'a> {
        let samples = self.samples(track);
        let measured = samples.iter().map(Vec::len).sum();
        let mut cleaned = cleaned(track.column.channel, samples);
        let kept = cleaned.runs.iter().map(Vec::len).sum::<usize>();
        let first = cleaned.runs.iter().flatten().next().map(|sample| sample.value);
        let same = cleaned.runs.iter().flatten().all(|sample| Some(sample.value) == first);
        // A speed may be governed, and air may stay as it is; a head and its gas don't.
        let hot = matches!(track.column.channel, Channel::Cht | Channel::Egt);
        let stuck = hot && same && kept >= STUCK;
        if stuck {
            cleaned.runs.clear();
            cleaned.left_out = cleaned.left_out.saturating_add(u32::try_from(kept).unwrap_or(u32::MAX));
        }
        Cleared { track, measured, stuck, cleaned }
    }

    fn gaps(&self) -> Option<Note> {
        let pairs = self.runs.iter().filter_map(|run| self.times.get(run.clone()));
        let between = pairs.flat_map(|times| times.windows(2)).filter_map(|pair| match pair {
            [a, b] => Some(b - a),
            _ => None,
        });
        let long: Vec<f64> = between.filter(|between| *between > GAP + HAIR).collect();
        let minutes = rounded(long.iter().sum::<f64>() / 60.0, 0);
        (!long.is_empty()).then_some(Note::Gaps { gaps: long.len(), minutes })
    }
}

/// How long the engine ran, and what tells it.
enum Ran {
    BySpeed(Figure),
    ByHead(Figure),
    /// Not at all.
    Never,
    /// Nothing tells it.
    Unknown,
}

/// All columns.
struct Columns<'a>(&'a [Cleared<'a>]);

impl<'a> Columns<'a> {
    fn of(&self, channel: Channel) -> impl Iterator<Item = &'a Cleared<'a>> {
        self.0.iter().filter(move |column| column.track.column.channel == channel)
    }

    /// The highest of all columns of a channel, in the unit of the one that has it; of all of them, what
    /// was left out.
    fn peak(&self, channel: Channel, measure: &'static str) -> Option<Figure> {
        let left_out =
            self.of(channel).fold(0_u32, |sum, column| sum.saturating_add(column.cleaned.left_out));
        let highs = self.of(channel).filter_map(|column| Some((highest(&column.cleaned.runs)?, column)));
        let (high, column) = highs.max_by(|a, b| a.0.total_cmp(&b.0))?;
        Some(Figure { measure, value: column.in_its_unit(high)?, left_out })
    }

    /// By the first column of speed that tells it.
    fn idle(&self) -> Option<Figure> {
        self.of(Channel::Speed).find_map(|column| {
            let value = column.in_its_unit(idle(&column.cleaned.runs)?)?;
            Some(Figure { measure: "idle-speed", value, left_out: column.cleaned.left_out })
        })
    }

    /// By the speed; where that stands still or isn't there, by the head that was warm the longest, as one
    /// whose sensor is loose reads too low.
    fn ran(&self) -> Ran {
        let longest = |above: &dyn Fn(&Cleared<'_>) -> f64, channel: Channel| {
            let times = self.of(channel).map(|column| (above(column), column.cleaned.left_out));
            let (seconds, left_out) =
                times.max_by(|a, b| a.0.total_cmp(&b.0)).filter(|(time, _)| *time > 0.0)?;
            let value = Quantity::new(rounded(seconds / 3600.0, HOURS), Unit::Hour);
            Some(Figure { measure: "run-time", value, left_out })
        };
        let turning = |column: &Cleared<'_>| time_above(&column.cleaned.runs, RUNS);
        let warmed = |column: &Cleared<'_>| {
            warm(&column.cleaned.runs).map_or(0.0, |level| time_above(&column.cleaned.runs, level))
        };
        let told = |channel: Channel| self.of(channel).any(|column| column.samples().next().is_some());
        match (longest(&turning, Channel::Speed), longest(&warmed, Channel::Cht)) {
            (Some(time), _) => Ran::BySpeed(time),
            (None, Some(time)) => Ran::ByHead(time),
            _ if told(Channel::Speed) || told(Channel::Cht) => Ran::Never,
            _ => Ran::Unknown,
        }
    }
}

/// A column without what no engine does.
struct Cleared<'a> {
    track: &'a Track,
    /// Values before anything was left out.
    measured: usize,
    /// Whether all of them are left out since they never move.
    stuck: bool,
    cleaned: Cleaned,
}

impl Cleared<'_> {
    fn samples(&self) -> impl Iterator<Item = &Sample> {
        self.cleaned.runs.iter().flatten()
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
        let heading = self.track.column.heading.clone();
        match self.samples().next() {
            Some(_) => None,
            None if self.stuck => Some(Note::AllSame(heading)),
            None if self.measured == 0 => Some(Note::Nothing(heading)),
            None => Some(Note::Impossible(heading)),
        }
    }
}

/// Rounded to so many decimals: to the number that a person would write so, which no sum of binary
/// fractions beside it is.
fn rounded(value: f64, decimals: u32) -> f64 {
    let scale = 10f64.powi(i32::try_from(decimals).unwrap_or_default());
    (value * scale).round() / scale
}
