-- Time logged after landing, before anybody signed: counted at once, and signed along with the
-- next signature on this device.
CREATE TABLE pending (
  n INTEGER PRIMARY KEY,
  machine TEXT NOT NULL,
  at TEXT NOT NULL,                     -- RFC 3339: when it was logged
  body TEXT NOT NULL                    -- witnessmark_core::record::TimeLogged as JSON
) STRICT;

-- Derived: how often each torque tool clicked, by the inspections signed.
CREATE TABLE click (
  tool TEXT NOT NULL,
  at_ms INTEGER NOT NULL,
  digest BLOB NOT NULL,
  point TEXT NOT NULL,
  clicks INTEGER NOT NULL,
  PRIMARY KEY (tool, at_ms, digest, point)
) STRICT, WITHOUT ROWID;
