//! How people look, each against the others on the same points.

use super::cell::{Cell, weighed_median};
use super::tally::Tally;
use crate::median::median;
use crate::reliability::{Z_99, wilson};

/// A point is compared where others have looked at it at least so often: fewer have no middle.
const OTHERS_LEAST: u32 = 3;
/// Nothing stands out of fewer looks than this. Our choice.
const LOOKS_LEAST: u32 = 100;
/// A person quicker than this share of the others' time stands out, if most of their looks are quicker,
/// too. Our choice.
const QUICK: f64 = 0.6;
/// A point is told as hurried from so many times on. Our choice.
const OFTEN_HURRIED: u32 = 3;
/// At most so many points are told.
const POINTS_TOLD: usize = 5;

/// How something compares with the others.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Than {
    /// Less than theirs, and chance alone hardly makes it so.
    Less,
    /// More than theirs, likewise.
    More,
    /// Nothing that stands out, or too little to say.
    Like,
}

/// A point that somebody hurries.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct HurriedPoint {
    /// The point.
    pub point: usize,
    /// How often it was hurried.
    pub times: u32,
}

/// How one person looks. What has an `others_` beside it is of the points that others look at, too.
#[derive(Clone, Debug, PartialEq)]
pub struct Looker {
    /// The person.
    pub person: usize,
    /// Inspections signed.
    pub inspections: usize,
    /// Looks at points that others look at, too.
    pub looks: u32,
    /// Middle time on a point.
    pub seconds: Option<f64>,
    /// The others' on the same points.
    pub others_seconds: Option<f64>,
    /// Share of looks hurried, 0 to 1.
    pub hurried: f64,
    /// The others'.
    pub others_hurried: Option<f64>,
    /// Things found in a look, 0 to 1.
    pub found: f64,
    /// The others'.
    pub others_found: Option<f64>,
    /// Whether they are quicker than the others by much.
    pub quick: bool,
    /// Whether they hurry more, or less, than the others.
    pub hurries: Than,
    /// Whether they find more, or less, than the others.
    pub finds: Than,
    /// Points hurried most often.
    pub points: Vec<HurriedPoint>,
}

/// One person's looks at a point, and the others'.
struct Beside<'a> {
    own: &'a Cell,
    looks: u32,
    hurried: u32,
    found: u32,
    /// The others' middle time.
    seconds: Option<f64>,
    /// Looks quicker than that, one as quick counted half.
    quicker: f64,
}

impl Tally {
    /// Everybody who signed an inspection.
    ///
    /// The others' figure is what they would have had on this person's points, each as often as this person
    /// looked at it. Something stands out, from a hundred looks on, where the interval of 99 % of the
    /// difference doesn't reach nothing: 99 since everybody is compared, and of twenty people one would stand
    /// out of 95 by chance. The interval is Newcombe's, of Wilson's for both (Statistics in Medicine 17
    /// (1998) 873–890, method 10; from memory).
    pub fn people(&self) -> Vec<Looker> {
        let points = self.by_point();
        let looker = |(person, signed): (&usize, &std::collections::BTreeSet<_>)| {
            let all: Vec<(usize, &Cell)> = points
                .iter()
                .filter_map(|(point, cells)| Some((*point, cells.iter().find(|(who, _)| who == person)?.1)))
                .collect();
            let beside: Vec<Beside<'_>> =
                all.iter().filter_map(|(point, own)| beside(own, *person, points.get(point)?)).collect();
            looker(*person, signed.len(), &all, &beside)
        };
        self.inspections.iter().map(looker).collect()
    }
}

fn beside<'a>(own: &'a Cell, person: usize, cells: &[(usize, &'a Cell)]) -> Option<Beside<'a>> {
    let others = || cells.iter().filter(|(who, _)| *who != person).map(|(_, cell)| *cell);
    let looks: u32 = others().map(|cell| cell.looks).sum();
    if looks < OTHERS_LEAST {
        return None;
    }
    let seconds: Vec<f64> = others().flat_map(|cell| cell.seconds.iter().copied()).collect();
    let seconds = median(seconds);
    let quicker = |theirs: f64| {
        let one = |own: &f64| if *own < theirs { 1.0 } else { 0.5 * f64::from(u8::from(*own == theirs)) };
        own.seconds.iter().map(one).sum()
    };
    Some(Beside {
        own,
        looks,
        hurried: others().map(|cell| cell.hurried).sum(),
        found: others().map(Cell::found).sum(),
        seconds,
        quicker: seconds.map_or(0.0, quicker),
    })
}

fn looker(person: usize, inspections: usize, all: &[(usize, &Cell)], beside: &[Beside<'_>]) -> Looker {
    let compared: Vec<&Cell> = beside.iter().map(|one| one.own).collect();
    // With nobody to compare with, the person's figures are those of all their points.
    let own = if compared.is_empty() { all.iter().map(|(_, cell)| *cell).collect() } else { compared };
    let looks: u32 = own.iter().map(|cell| cell.looks).sum();
    let share = |count: fn(&Cell) -> u32| {
        f64::from(own.iter().map(|cell| count(cell)).sum::<u32>()) / f64::from(looks.max(1))
    };
    let others = |count: fn(&Beside<'_>) -> u32| {
        let theirs =
            |one: &Beside<'_>| f64::from(one.own.looks) * f64::from(count(one)) / f64::from(one.looks);
        (!beside.is_empty()).then(|| beside.iter().map(theirs).sum::<f64>() / f64::from(looks.max(1)))
    };
    let (hurried, found) = (share(|cell| cell.hurried), share(Cell::found));
    let (others_hurried, others_found) = (others(|one| one.hurried), others(|one| one.found));
    let seconds = weighed_median(
        own.iter().filter_map(|cell| Some((median(cell.seconds.clone())?, cell.looks))).collect(),
    );
    let others_seconds =
        weighed_median(beside.iter().filter_map(|one| Some((one.seconds?, one.own.looks))).collect());
    // Few looks of theirs at a point that this person often looks at make their figure unsure.
    let unsure = |one: &Beside<'_>| {
        (f64::from(one.own.looks) / f64::from(looks.max(1))).powi(2) / f64::from(one.looks)
    };
    let theirs_in_effect = beside.iter().map(unsure).sum::<f64>().recip();
    let quicker = beside.iter().map(|one| one.quicker).sum::<f64>() / f64::from(looks.max(1));
    let mostly = than(quicker, looks, Some((0.5, theirs_in_effect))) == Than::More;
    let quick = mostly && seconds.zip(others_seconds).is_some_and(|(own, theirs)| own < QUICK * theirs);
    let mut points: Vec<HurriedPoint> = all
        .iter()
        .filter(|(_, cell)| cell.hurried >= OFTEN_HURRIED)
        .map(|(point, cell)| HurriedPoint { point: *point, times: cell.hurried })
        .collect();
    points.sort_by_key(|one| (std::cmp::Reverse(one.times), one.point));
    points.truncate(POINTS_TOLD);
    Looker {
        person,
        inspections,
        looks: if beside.is_empty() { 0 } else { looks },
        seconds,
        others_seconds,
        hurried,
        others_hurried,
        found,
        others_found,
        quick,
        hurries: than(hurried, looks, others_hurried.map(|theirs| (theirs, theirs_in_effect))),
        finds: than(found, looks, others_found.map(|theirs| (theirs, theirs_in_effect))),
        points,
    }
}

/// How a share among so many looks compares with the others' among so many.
fn than(share: f64, looks: u32, others: Option<(f64, f64)>) -> Than {
    let Some((others, theirs)) = others.filter(|_| looks >= LOOKS_LEAST) else { return Than::Like };
    let (low, high) = wilson(share, f64::from(looks), Z_99);
    let (others_low, others_high) = wilson(others, theirs, Z_99);
    match share - others {
        more if more > (share - low).hypot(others_high - others) => Than::More,
        less if -less > (high - share).hypot(others - others_low) => Than::Less,
        _ => Than::Like,
    }
}
