//! What reaches the screen when something can't be done: `{kind, message, hint}`.
//! The words are `fault-KIND` and its `.hint` in the catalogue's texts.

use serde::{Deserialize, Serialize};
use ts_rs::TS;
use witnessmark_core::list::CatalogueFault;
use witnessmark_core::record::{BundleFault, EnvelopeFault, KeyFault};
use witnessmark_core::said::Said;
use witnessmark_store::StoreFault;

/// Why it couldn't be done, not yet in any language.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{kind}: {said:?}")]
pub struct Fault {
    /// For programs.
    pub kind: &'static str,
    /// For people.
    pub said: Said,
}

/// The same in the person's language.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FaultView {
    /// For programs.
    pub kind: String,
    /// What went wrong.
    pub message: String,
    /// What to do.
    pub hint: String,
}

impl Fault {
    /// A fault of this kind.
    pub fn new(kind: &'static str) -> Self {
        Self { kind, said: Said::new(format!("fault-{kind}")) }
    }

    /// With figures, such as `12.5 N·m`.
    #[must_use]
    pub fn figures(mut self, name: &str, value: impl ToString) -> Self {
        self.said = self.said.figures(name, value);
        self
    }

    /// With words that its message speaks of.
    #[must_use]
    pub fn text(mut self, name: &str, value: impl ToString) -> Self {
        self.said = self.said.text(name, value);
        self
    }

    /// With a number that its message speaks of.
    #[must_use]
    pub fn number(mut self, name: &str, value: impl Into<f64>) -> Self {
        self.said = self.said.number(name, value);
        self
    }

    /// A fault of this program.
    pub fn internal(why: impl ToString) -> Self {
        Self::new("internal").text("why", why.to_string())
    }
}

impl From<StoreFault> for Fault {
    fn from(fault: StoreFault) -> Self {
        match fault {
            StoreFault::Full => Self::new("disk-full"),
            StoreFault::Disk(why) => Self::new("disk").text("why", why),
            StoreFault::Damaged(why) => Self::new("database-damaged").text("why", why),
            StoreFault::Busy => Self::new("database-busy"),
            StoreFault::Newer { found, known } => {
                Self::new("database-newer").number("found", found).number("known", known)
            }
            StoreFault::Other(why) => Self::internal(why),
        }
    }
}

impl From<EnvelopeFault> for Fault {
    fn from(fault: EnvelopeFault) -> Self {
        Self::internal(fault)
    }
}

impl From<KeyFault> for Fault {
    fn from(fault: KeyFault) -> Self {
        Self::internal(fault)
    }
}

impl From<serde_json::Error> for Fault {
    fn from(fault: serde_json::Error) -> Self {
        Self::internal(fault)
    }
}

impl From<BundleFault> for Fault {
    fn from(fault: BundleFault) -> Self {
        match fault {
            BundleFault::Empty => Self::new("bundle-empty"),
        }
    }
}

impl From<CatalogueFault> for Fault {
    fn from(fault: CatalogueFault) -> Self {
        Self::new("catalogue").text("where", format!("{}:{}", fault.file, fault.line)).text("why", fault.what)
    }
}
