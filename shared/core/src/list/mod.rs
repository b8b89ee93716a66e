//! Inspection lists: data sheets and fragments as authored, and the list composed of
//! them for one machine.

mod authored;
mod compose;
mod fault;
mod judge;
mod limits;
mod measures;
mod sheet;
mod walk;

pub use authored::{
    Answer, Fragment, Meaning, Measure, Occasion, Point, Station, Valid, When, read_fragment, read_occasions,
    read_stations,
};
pub use compose::{
    Ask, Filling, List, ListPoint, ListStation, Machinery, MissingBand, Parts, Rememberance, compose,
};
pub(crate) use fault::read_toml;
pub use fault::{CatalogueFault, line_at};
pub use judge::{JudgeFault, Judged, judge};
pub use limits::{Inspecting, Limits, read_limits};
pub use measures::{Followed, Followeds, From, Side, read_measures};
pub use sheet::{Band, EngineKind, ResolvedBand, Sheet, Source, Sourced, Stud, read_sheet};
pub use walk::{Given, Progress, Seen, Step, StepBack, progress, resume};
