//! What lives tell, in plain words.

use witnessmark_core::reliability::{Inspect, Lives, RESAMPLES};
use witnessmark_core::said::Said;
use witnessmark_core::told::TooLittle;

use super::Asked;
use super::curves::{Reckoned, shortens, whole_down};
use crate::house::House;
use crate::views::LifePart;

/// Fewer failures than this are few: said with everything that rests on them. Our choice.
const FEW: usize = 10;

impl House {
    /// What it rests on.
    pub(super) fn life_rests_on(&self, part: &LifePart, lives: &Lives) -> String {
        let id = if lives.all.is_empty() { "life-rests-on-nothing" } else { "life-rests-on" };
        let said = Said::new(id)
            .text("part", &part.words)
            .number("lives", part.lives)
            .number("failed", part.failed)
            .number("whole", part.lives.saturating_sub(part.failed))
            .number("machines", part.machines);
        self.say(&said)
    }

    /// What it says, the main thing first, and what to bear in mind.
    pub(super) fn life_sentences(
        &self,
        part: &LifePart,
        lives: &Lives,
        asked: &Asked,
        reckoned: &Reckoned,
    ) -> Vec<String> {
        let mut said = Vec::new();
        said.extend(self.of_looking(asked, reckoned));
        said.extend(of_life(reckoned));
        let failed = reckoned.counted.failed;
        if reckoned.weibull.is_ok() && failed < FEW {
            said.push(Said::new("life-few").number("failed", failed as f64));
        }
        said.extend(of_data(lives));
        if part.invented {
            said.push(Said::new("life-invented"));
        }
        said.push(Said::new("life-caution"));
        said.iter().map(|said| self.say(said)).collect()
    }

    /// How often to look.
    fn of_looking(&self, asked: &Asked, reckoned: &Reckoned) -> Vec<Said> {
        let percent = (asked.chance * 1e5).round() / 1e3;
        let with = |id: &str| Said::new(id).number("percent", percent);
        let stays = || {
            let said = |hours: f64| Said::new("life-stays").number("in_force", tenths(hours));
            asked.in_force.map_or_else(|| Said::new("life-none-in-force"), said)
        };
        let inspect = match &reckoned.inspect {
            Ok(inspect) => inspect,
            Err(why) => return vec![too_little(*why), stays()],
        };
        let every = whole_down(inspect.every);
        let at = |said: Said, inspect: &Inspect| {
            said.number("every", whole_down(inspect.allowed)).number("age", inspect.age.round())
        };
        let mut told = vec![match asked.in_force {
            _ if whole_down(inspect.allowed) < 1.0 => at(with("life-every-flight"), inspect),
            Some(in_force) if inspect.shortens => {
                at(with("life-shortens"), inspect).number("every", every).number("in_force", tenths(in_force))
            }
            Some(in_force) => at(with("life-in-force-holds"), inspect).number("in_force", tenths(in_force)),
            None => at(with("life-suggests"), inspect),
        }];
        // What is in force is no suggestion, at no age.
        let half = reckoned.half.as_ref().filter(|half| whole_down(half.every) > every.max(0.5));
        told.extend(
            half.map(|half| at(Said::new("life-at-half"), half).number("every", whole_down(half.every))),
        );
        if asked.in_force.is_none() {
            told.push(Said::new("life-nothing-in-force"));
        } else if !shortens(reckoned) {
            told.push(Said::new("life-never-longer"));
        } else if asked.by_school && every >= 1.0 {
            told.push(Said::new("life-publish"));
        }
        if asked.chance_is_ours {
            told.push(with("life-chance-ours"));
        }
        told
    }

    /// How the intervals around the curves were made.
    pub(super) fn life_intervals(&self, turnbull: bool, weibull: bool) -> Vec<String> {
        let turnbull =
            turnbull.then(|| Said::new("life-interval-turnbull").number("times", RESAMPLES as f64));
        let weibull = weibull.then(|| Said::new("life-interval-weibull"));
        turnbull.into_iter().chain(weibull).map(|said| self.say(&said)).collect()
    }
}

/// How they last.
fn of_life(reckoned: &Reckoned) -> Vec<Said> {
    let mut told = Vec::new();
    let percent = |share: f64| (share * 100.0).round();
    if let Some(at) = &reckoned.nine_in_ten {
        told.push(
            Said::new("life-lasts")
                .number("hours", at.hours)
                .number("percent", percent(at.share))
                .number("low", percent(at.low))
                .number("high", percent(at.high)),
        );
    }
    if let Ok(weibull) = &reckoned.weibull {
        let shape = weibull.shape_interval;
        told.push(Said::new(match (shape.low, shape.high) {
            (Some(low), _) if low > 1.0 => "life-wears",
            (_, Some(high)) if high < 1.0 => "life-early",
            _ => "life-any-age",
        }));
    }
    told
}

/// What the findings are, and what they aren't.
fn of_data(lives: &Lives) -> Vec<Said> {
    let mut told = vec![Said::new("life-put-right"), Said::new("life-unregistered")];
    let counted = [
        ("life-came-old", lives.came_old),
        ("life-never-ran", lives.never_ran),
        ("life-of-no-age", lives.of_no_age),
    ];
    told.extend(counted.iter().filter(|(_, n)| *n > 0).map(|(id, n)| Said::new(*id).number("n", *n as f64)));
    told
}

/// Why nothing is told, and what it would take.
fn too_little(why: TooLittle) -> Said {
    match why {
        TooLittle::Few { has, needs } => {
            let more = needs.saturating_sub(has);
            let said = Said::new("life-too-few").number("has", has as f64).number("needs", needs as f64);
            said.number("more", more as f64)
        }
        TooLittle::NothingFailed { has } => Said::new("life-nothing-failed").number("has", has as f64),
        _ => Said::new("life-any-spread"),
    }
}

fn tenths(hours: f64) -> f64 {
    (hours * 10.0).round() / 10.0
}
