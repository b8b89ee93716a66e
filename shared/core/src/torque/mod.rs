//! Torque and fasteners: what a wrench is set to, what that does to stud and thread, and
//! whether the tool and the joint bear it.
//!
//! Everything here is a reminder beside the engine maker's manual, never instead of it.
//! Clamp loads are bands: friction scatters more than any wrench does.

mod between;
mod class;
mod fault;
mod joint;
mod limits;
mod minimum;
mod movement;
mod pattern;
mod plan;
mod preload;
mod prevailing;
mod setting;
mod slip;
mod standard;
mod standing;
mod strip;
mod thread;
mod tool;

pub use between::{Between, Place};
pub use class::Class;
pub use fault::TorqueFault;
pub use joint::{Clamp, Harm, Joint, JointLimit, Tapped};
pub use limits::{Limits, limits};
pub use minimum::{Minimum, minimum, minimums, nylon_bears};
pub use movement::{Marks, Sign, signs};
pub use pattern::{Layout, Position};
pub use plan::{Plan, Stage, Step, Wanted, default_stages};
pub use preload::{Assembly, Bearing, Law, assembly};
pub use prevailing::{Drag, DragRule, Protrusion, protrusion, with_drag};
pub use setting::{Adapter, torque_at_fastener, wrench_setting};
pub use slip::{Slip, slips};
pub use standard::{Standard, standard};
pub use standing::{ToolReason, ToolStanding};
pub use strip::{aluminium_depth, aluminium_torque, internal_area, strip_load, tapped_depth};
pub use thread::{Series, Thread};
pub use tool::{Period, Recheck, Tool};
