//! What the readings of a measure tell, in plain words: the first sentence is the main one.

use witnessmark_core::list::{Followed, From, Side};
use witnessmark_core::said::Said;
use witnessmark_core::told::{Told, TooLittle};
use witnessmark_core::trend::{Change, Direction, STANDARD_DAY, Slope, ToLimit, Trend};
use witnessmark_core::units::{Quantity, Unit};

use super::gather::{Air, Gathered, Scale, Taken};
use super::rounding::hours;
use super::{Outcome, PER_HOURS};
use crate::house::House;
use crate::views::{TrendBand, TrendMark};

/// One in so many: how rarely chance alone makes a trend, from the rarest.
const ONE_IN: [f64; 3] = [1000.0, 100.0, 20.0];

/// All that a measure's sentences are made of.
pub(super) struct Telling<'a> {
    pub measure: &'a Followed,
    pub gathered: &'a Gathered,
    pub band: Option<&'a TrendBand>,
    pub outcome: &'a Outcome,
    pub change: Option<Change>,
    pub marks: &'a [TrendMark],
    /// Engine hours now.
    pub now: f64,
}

impl Telling<'_> {
    pub(super) fn trend(&self) -> Option<&Trend> {
        match self.outcome {
            Outcome::Told(trend) => Some(trend),
            Outcome::TooLittle(_) | Outcome::Beyond => None,
        }
    }

    /// `toward` the limit or to the worse, `away` from it, or neither of the two.
    fn heads(&self, trend: &Trend) -> &'static str {
        let worse = match self.measure.from {
            From::Grade(_) | From::Movement(_) => Some(Side::AtMost),
            _ => self.measure.limit,
        };
        match (trend.direction, worse) {
            (Direction::Rising, Some(Side::AtMost)) | (Direction::Falling, Some(Side::AtLeast)) => "toward",
            (Direction::Neither, _) | (_, None) => "nowhere",
            _ => "away",
        }
    }

    /// Whether a person should act on it.
    pub(super) fn drifts(&self) -> bool {
        let toward = |trend: &Trend| {
            self.heads(trend) == "toward" || matches!(trend.to_limit, Some(Told::Told(ToLimit::There)))
        };
        let past = |taken: &Taken| self.past(taken);
        self.trend().is_some_and(toward) || self.gathered.readings.last().is_some_and(past)
    }

    /// Whether the gauge showed more than the limit, or less; or either where no end is the limit.
    pub(super) fn past(&self, taken: &Taken) -> bool {
        let Some(band) = self.band else { return false };
        let (low, high) = match self.measure.limit {
            Some(Side::AtLeast) => (band.low, None),
            Some(Side::AtMost) => (None, band.high),
            None => (band.low, band.high),
        };
        let gauge = taken.gauge();
        low.is_some_and(|low| gauge < low) || high.is_some_and(|high| gauge > high)
    }
}

impl House {
    pub(super) fn trend_sentences(&self, telling: &Telling<'_>) -> Vec<String> {
        let mut said = match telling.outcome {
            Outcome::Told(trend) => self.goes(telling, trend),
            Outcome::TooLittle(why) => vec![self.too_little(telling, *why)],
            Outcome::Beyond => vec![Said::new("trend-beyond")],
        };
        said.extend(self.held(telling));
        said.extend(telling.change.into_iter().flat_map(|change| self.stepped(telling, &change)));
        said.extend(aside(telling, self));
        said.iter().map(|said| self.say(said)).collect()
    }

    fn too_little(&self, telling: &Telling<'_>, why: TooLittle) -> Said {
        let readings = &telling.gathered.readings;
        let count = readings.len() as f64;
        match why {
            TooLittle::Few { needs, .. } => Said::new("trend-few")
                .number("n", count)
                .number("needs", needs as f64)
                .number("more", needs as f64 - count),
            TooLittle::OneMoment => Said::new("trend-one-moment").number("n", count),
            TooLittle::AllSame => {
                let id = match telling.gathered.scale {
                    Scale::Grades(_) => "trend-same-grade",
                    Scale::Unit(_) | Scale::Eighths => "trend-all-same",
                };
                let value = readings.last().map_or(0.0, |last| last.value);
                Said::new(id).number("n", count).figures("value", self.amount(&telling.gathered.scale, value))
            }
            _ => Said::new("trend-no-interval").number("n", count),
        }
    }

    /// Which way, how steep and how sure.
    fn goes(&self, telling: &Telling<'_>, trend: &Trend) -> Vec<Said> {
        let scale = &telling.gathered.scale;
        let slope = trend.slope;
        let told = [slope.slope, slope.low, slope.high].map(|slope| slope * PER_HOURS);
        let counted = |id: &str| Said::new(id).number("n", trend.readings as f64);
        let (graded, latest) = match scale {
            Scale::Grades(_) => (true, telling.gathered.readings.last().map_or(0.0, |last| last.value)),
            Scale::Unit(_) | Scale::Eighths => (false, 0.0),
        };
        let way = match trend.direction {
            Direction::Rising => "rising",
            Direction::Falling => "falling",
            Direction::Neither if graded => return vec![counted("trend-grade-neither")],
            Direction::Neither => return vec![self.neither(telling, &slope, counted)],
        };
        // A fall is told as so much less.
        let [per, low, high] = if way == "rising" { told } else { [-told[0], -told[2], -told[1]] };
        let main = match self.slopes(scale, [per, low, high]) {
            _ if graded => {
                Said::new("trend-grade-goes").text("way", way).figures("latest", self.amount(scale, latest))
            }
            Some([per, low, high]) => Said::new("trend-goes")
                .text("way", way)
                .text("heads", self.heads_of(telling, trend))
                .figures("per", per)
                .figures("low", low)
                .figures("high", high),
            None => {
                Said::new("trend-goes-slightly").text("way", way).text("heads", self.heads_of(telling, trend))
            }
        };
        let (first, last) = (telling.gathered.readings.first(), telling.gathered.readings.last());
        let one_in = ONE_IN.into_iter().find(|one_in| trend.test.p * one_in < 1.0).unwrap_or(20.0);
        let sure = counted("trend-rests")
            .number("from", hours(first.map_or(0.0, |first| first.hours)))
            .number("to", hours(last.map_or(0.0, |last| last.hours)))
            .number("one_in", one_in);
        vec![main, sure]
    }

    /// No trend: how much it may have changed while it was read. Not beyond: a slope that isn't one leads
    /// nowhere.
    fn neither(&self, telling: &Telling<'_>, slope: &Slope, counted: impl Fn(&str) -> Said) -> Said {
        let readings = &telling.gathered.readings;
        let ends = readings.first().zip(readings.last());
        let span = ends.map_or(0.0, |(first, last)| last.hours - first.hours);
        match self.interval(&telling.gathered.scale, [slope.low * span, slope.high * span]) {
            Some([low, high]) => {
                counted("trend-neither").number("span", hours(span)).figures("low", low).figures("high", high)
            }
            None => counted("trend-neither-flat"),
        }
    }

    /// As `heads`, but that movement has no limit to head for.
    fn heads_of(&self, telling: &Telling<'_>, trend: &Trend) -> &'static str {
        match telling.measure.from {
            From::Movement(_) => "nowhere",
            _ => telling.heads(trend),
        }
    }

    /// A step, and what was done where it lies.
    fn stepped(&self, telling: &Telling<'_>, change: &Change) -> Vec<Said> {
        let scale = &telling.gathered.scale;
        let done: Vec<&str> = telling
            .marks
            .iter()
            .filter(|mark| (change.after..=change.at).contains(&mark.hours))
            .map(|mark| mark.words.as_str())
            .collect();
        let step = Said::new("trend-step")
            .figures("old", self.amount(scale, change.old))
            .figures("new", self.amount(scale, change.new))
            .number("after", hours(change.after))
            .number("at", hours(change.at));
        let between = (!done.is_empty()).then(|| Said::new("trend-step-done").text("done", done.join("; ")));
        let foretold = telling
            .trend()
            .is_some_and(|trend| matches!(trend.to_limit, Some(Told::Told(ToLimit::Ahead { .. }))));
        let warned = foretold.then(|| Said::new("trend-step-foretells"));
        [Some(step), between, warned].into_iter().flatten().collect()
    }
}

/// What else a reader must know of the readings.
fn aside(telling: &Telling<'_>, house: &House) -> Vec<Said> {
    let mut said = Vec::new();
    let graded = matches!(telling.gathered.scale, Scale::Grades(_));
    let far = telling.trend().map_or(0, |trend| trend.outliers.len());
    if far > 0 && !graded {
        said.push(Said::new("trend-far-off").number("n", far as f64));
    }
    let day = house.shown(Quantity::new(STANDARD_DAY, Unit::Celsius));
    match telling.gathered.air {
        // Held against a limit, that is said beside the limit.
        Air::Standard if telling.band.is_none() => {
            said.push(Said::new("trend-weather-standard").text("day", day));
        }
        Air::Partly => said.push(Said::new("trend-weather-partly").text("day", day)),
        Air::Unknown => said.push(Said::new("trend-weather-unknown").text("day", day)),
        Air::Apart | Air::Standard => {}
    }
    if telling.gathered.left_out > 0 {
        said.push(Said::new("trend-left-out").number("n", telling.gathered.left_out as f64));
    }
    said
}
