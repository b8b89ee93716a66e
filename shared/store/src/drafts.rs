//! Inspections begun: the list as composed, and the steps taken, one row each.

use rusqlite::{OptionalExtension, Row, params};
use uuid::Uuid;
use witnessmark_core::list::Step;

use crate::{StoreFault, Tx};

/// What became of an inspection begun.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DraftState {
    /// It goes on.
    Open,
    /// It was signed, and is a record.
    Signed,
    /// It was put aside, unsigned; its steps are kept.
    Aside,
}

impl DraftState {
    fn name(self) -> &'static str {
        match self {
            Self::Open => "open",
            Self::Signed => "signed",
            Self::Aside => "aside",
        }
    }

    fn from_name(name: &str) -> Self {
        match name {
            "open" => Self::Open,
            "signed" => Self::Signed,
            _ => Self::Aside,
        }
    }
}

/// An inspection begun.
#[derive(Clone, Debug, PartialEq)]
pub struct Draft {
    /// Its id.
    pub id: Uuid,
    /// The machine.
    pub machine: Uuid,
    /// Which list.
    pub occasion: String,
    /// What became of it.
    pub state: DraftState,
    /// When it was begun, RFC 3339.
    pub started: String,
    /// The list as composed and its words, as the app writes it.
    pub body: String,
}

const COLUMNS: &str = "id, machine, occasion, state, started, body";

fn read(row: &Row<'_>) -> rusqlite::Result<(String, String, String, String, String, String)> {
    Ok((row.get(0)?, row.get(1)?, row.get(2)?, row.get(3)?, row.get(4)?, row.get(5)?))
}

fn draft(row: (String, String, String, String, String, String)) -> Result<Draft, StoreFault> {
    let id = |text: &str| text.parse().map_err(|_| StoreFault::Damaged("a draft's id".into()));
    let (own, machine, occasion, state, started, body) = row;
    Ok(Draft {
        id: id(&own)?,
        machine: id(&machine)?,
        occasion,
        state: DraftState::from_name(&state),
        started,
        body,
    })
}

impl Tx<'_> {
    /// Begins an inspection.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn draft_begin(&self, draft: &Draft) -> Result<(), StoreFault> {
        self.inner.execute(
            "INSERT INTO draft (id, machine, occasion, state, started, body) VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            params![
                draft.id.to_string(),
                draft.machine.to_string(),
                draft.occasion,
                draft.state.name(),
                draft.started,
                draft.body
            ],
        )?;
        Ok(())
    }

    /// A draft by id.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn draft(&self, id: Uuid) -> Result<Option<Draft>, StoreFault> {
        let sql = format!("SELECT {COLUMNS} FROM draft WHERE id = ?1");
        let row = self.inner.prepare_cached(&sql)?.query_row([id.to_string()], read).optional()?;
        row.map(draft).transpose()
    }

    /// The drafts of a machine that go on.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn drafts_open(&self, machine: Uuid) -> Result<Vec<Draft>, StoreFault> {
        let sql =
            format!("SELECT {COLUMNS} FROM draft WHERE machine = ?1 AND state = 'open' ORDER BY started, id");
        let mut statement = self.inner.prepare_cached(&sql)?;
        let rows = statement.query_map([machine.to_string()], read)?;
        rows.map(|row| draft(row?)).collect()
    }

    /// Closes a draft.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn draft_close(&self, id: Uuid, state: DraftState) -> Result<(), StoreFault> {
        self.inner
            .execute("UPDATE draft SET state = ?2 WHERE id = ?1", params![id.to_string(), state.name()])?;
        Ok(())
    }

    /// The steps taken, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn steps(&self, draft: Uuid) -> Result<Vec<Step>, StoreFault> {
        let mut statement = self.inner.prepare_cached("SELECT body FROM step WHERE draft = ?1 ORDER BY n")?;
        let rows = statement.query_map([draft.to_string()], |row| row.get::<_, String>(0))?;
        rows.map(|row| Ok(serde_json::from_str(&row?)?)).collect()
    }

    /// Takes one more step.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn step(&self, draft: Uuid, step: &Step) -> Result<(), StoreFault> {
        self.inner
            .prepare_cached(
                "INSERT INTO step (draft, n, body)
                 SELECT ?1, coalesce(max(n), 0) + 1, ?2 FROM step WHERE draft = ?1",
            )?
            .execute(params![draft.to_string(), serde_json::to_string(step)?])?;
        Ok(())
    }
}
