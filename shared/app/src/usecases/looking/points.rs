//! What the points of the lists are worth.

use witnessmark_core::attention::{Worth, WorthSort};
use witnessmark_core::said::Said;
use witnessmark_store::Tx;

use super::names::Called;
use crate::Fault;
use crate::house::House;
use crate::views::{ListWorth, PointWorth};

impl House {
    pub(super) fn list_worth(&self, tx: &Tx<'_>) -> Result<ListWorth, Fault> {
        let tallied = self.tallied(tx)?;
        let called = self.points_called()?;
        let mut worth = tallied.tally.worth();
        // What is found often first, what was never found last; of those what was looked at most.
        let place = |worth: &Worth| match worth.sort {
            WorthSort::Often => 0,
            WorthSort::Plain => 1,
            WorthSort::Never => 2,
            WorthSort::Few => 3,
        };
        worth.sort_by(|a, b| {
            place(a).cmp(&place(b)).then(b.share.total_cmp(&a.share)).then(b.looks.cmp(&a.looks))
        });
        let mut points = Vec::new();
        for worth in worth {
            let Some((point, latest)) = tallied.points.get(worth.point) else { continue };
            let called = self.point_called(tx, &called, point, latest)?;
            points.push(self.point_worth(point, called, &worth));
        }
        let mut caution = self.word("worth-caution");
        if tallied.fleet.invented {
            caution = format!("{caution} {}", self.word("looking-invented"));
        }
        Ok(ListWorth { points, caution })
    }

    fn point_worth(&self, point: &str, called: Called, worth: &Worth) -> PointWorth {
        let percent = |share: f64| (share * 1000.0).round() / 10.0;
        let looks = |id: &str| Said::new(id).number("looks", worth.looks);
        let said = match worth.sort {
            WorthSort::Few => looks("worth-few"),
            WorthSort::Never => looks("worth-never").number("percent", percent(worth.at_most())),
            WorthSort::Often => looks("worth-often")
                .number("percent", percent(worth.share))
                .number("machines", worth.machines as f64),
            WorthSort::Plain => looks("worth-plain")
                .number("found", worth.watch + worth.unserviceable)
                .number("low", percent(worth.low))
                .number("high", percent(worth.high)),
        };
        let mut words = self.say(&said);
        let rest = match worth.sort {
            WorthSort::Never if called.must => Some("worth-never-must"),
            WorthSort::Never => Some("worth-never-may"),
            _ => None,
        };
        if let Some(rest) = rest {
            words = format!("{words} {}", self.word(rest));
        }
        PointWorth {
            point: point.to_owned(),
            title: called.title,
            must: called.must,
            looks: worth.looks,
            watch: worth.watch,
            unserviceable: worth.unserviceable,
            machines: u32::try_from(worth.machines).unwrap_or(u32::MAX),
            percent: percent(worth.share),
            low: percent(worth.low),
            high: percent(worth.high),
            seconds: worth.seconds.map(|seconds| (seconds * 10.0).round() / 10.0),
            hurried_percent: percent(worth.hurried),
            words,
            sort: match worth.sort {
                WorthSort::Never => "never",
                WorthSort::Often => "often",
                WorthSort::Plain => "plain",
                WorthSort::Few => "few",
            }
            .to_owned(),
        }
    }
}
