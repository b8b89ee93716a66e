//! The trade of Witness Mark, pure: no clock, no file, no network, no thread and no
//! randomness of its own. The same input gives the same output on every machine.

pub mod assembly;
pub mod attention;
pub mod chance;
pub mod due;
pub mod flight;
pub mod history;
pub mod list;
mod median;
pub mod record;
pub mod reliability;
pub mod runlog;
pub mod said;
pub mod told;
pub mod torque;
pub mod trend;
pub mod units;
pub mod verdict;
pub mod words;
pub mod work;
