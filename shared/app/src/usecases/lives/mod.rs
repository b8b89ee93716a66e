//! How long components last in this fleet, and how often to look at them.

mod curves;
mod told;

use witnessmark_core::reliability::{Lives, PartSeen, lives};
use witnessmark_store::Tx;

use super::fleet::Fleet;
use crate::catalogue::NO_PARTS;
use crate::house::House;
use crate::views::{LifePart, LifeView};
use crate::{App, Fault};

/// The chance of an unseen failure between two looks that is borne where no school has set one. Our
/// choice: one in fifty.
pub(super) const CHANCE: f64 = 0.02;

/// What is asked of one type of component.
pub(super) struct Asked {
    /// The chance of an unseen failure that is borne.
    pub chance: f64,
    /// Whether it is our own choice.
    pub chance_is_ours: bool,
    /// The interval in force, hours.
    pub in_force: Option<f64>,
    /// Whether a school has set that.
    pub by_school: bool,
}

impl App {
    /// Types of component of which looks have spoken.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn life_parts(&mut self) -> Result<Vec<LifePart>, Fault> {
        self.store.read(|tx| {
            let fleet = self.house.fleet(tx)?;
            let mut parts = Vec::new();
            for component in self.house.components(tx)? {
                let lives = self.house.lives_of(tx, &fleet, &component)?;
                if lives.machines > 0 {
                    parts.push(self.house.life_part(&fleet, &component, &lives));
                }
            }
            // What failed most can be told most of.
            parts.sort_by(|a, b| (b.failed, &a.words).cmp(&(a.failed, &b.words)));
            Ok(parts)
        })
    }

    /// How long components of a type last, and what that says of how often to look.
    ///
    /// Without a chance it is the school's, else one in fifty. Without an interval in force it is the
    /// school's, else there is none.
    ///
    /// # Errors
    /// [`Fault`]: no such component, a chance that is none, an interval that is none.
    pub fn life(
        &mut self,
        component: String,
        chance: Option<f64>,
        in_force: Option<f64>,
    ) -> Result<LifeView, Fault> {
        self.store.read(|tx| {
            let known = self.house.components(tx)?;
            if !known.contains(&component) {
                let known: Vec<String> = known
                    .iter()
                    .map(|component| {
                        format!("{} ({component})", self.house.word(&format!("part-{component}")))
                    })
                    .collect();
                return Err(match known.is_empty() {
                    true => Fault::new("life-no-looks"),
                    false => {
                        Fault::new("life-no-such").text("what", &component).text("known", known.join(", "))
                    }
                });
            }
            let asked = self.house.asked_of(&component, chance, in_force)?;
            let fleet = self.house.fleet(tx)?;
            let lives = self.house.lives_of(tx, &fleet, &component)?;
            self.house.life_view(&fleet, &component, &lives, &asked)
        })
    }
}

impl House {
    /// Components that looks have spoken of, and that are parts of a machine.
    fn components(&self, tx: &Tx<'_>) -> Result<Vec<String>, Fault> {
        let mut all = tx.parts_looked()?;
        all.retain(|component| !NO_PARTS.contains(&component.as_str()));
        Ok(all)
    }

    fn asked_of(&self, component: &str, chance: Option<f64>, in_force: Option<f64>) -> Result<Asked, Fault> {
        if chance.is_some_and(|chance| !(chance > 0.0 && chance < 1.0)) {
            return Err(Fault::new("life-chance"));
        }
        if in_force.is_some_and(|hours| !(hours.is_finite() && hours > 0.0)) {
            return Err(Fault::new("life-in-force"));
        }
        let set = self.catalogue.limits.inspect.get(component);
        let school = set.map(|set| (set.chance, set.every_hours));
        Ok(Asked {
            chance: chance.or(school.map(|set| set.0)).unwrap_or(CHANCE),
            chance_is_ours: chance.is_none() && school.is_none(),
            in_force: in_force.or(school.map(|set| set.1)),
            by_school: in_force.is_none() && school.is_some(),
        })
    }

    /// The lives of one type of component, by the looks that count.
    fn lives_of(&self, tx: &Tx<'_>, fleet: &Fleet, component: &str) -> Result<Lives, Fault> {
        let looks = tx.part_looks(component)?.into_iter();
        let counts = looks.filter(|look| fleet.counts(&look.seen.machine, &look.device, look.seen.means));
        let seen: Vec<PartSeen> = counts.map(|look| look.seen).collect();
        let mut moved = tx.part_moves(component)?;
        moved.retain(|moved| fleet.has(&moved.machine));
        Ok(lives(&seen, &moved))
    }

    fn life_part(&self, fleet: &Fleet, component: &str, lives: &Lives) -> LifePart {
        let count = |n: usize| u32::try_from(n).unwrap_or(u32::MAX);
        LifePart {
            id: component.to_owned(),
            words: self.word(&format!("part-{component}")),
            machines: count(lives.machines),
            lives: count(lives.all.len()),
            failed: count(lives.failed()),
            invented: fleet.invented,
        }
    }
}
