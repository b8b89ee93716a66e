-- The log: every record taken, as signed. Never updated, never deleted.
CREATE TABLE record (
  arrival INTEGER PRIMARY KEY,          -- order of arrival on this device
  digest BLOB NOT NULL UNIQUE,          -- SHA-256 of the payload
  device TEXT NOT NULL,                 -- thumbprint of the signing key
  seq INTEGER NOT NULL,                 -- its number in the device's chain
  machine TEXT,                         -- the machine it is about
  of_seq INTEGER NOT NULL,              -- its number among the device's records about that machine
  kind TEXT NOT NULL,
  clock_ms INTEGER NOT NULL,            -- causal time
  clock_n INTEGER NOT NULL,
  protected TEXT NOT NULL,              -- the envelope's three members
  payload TEXT NOT NULL,
  signature TEXT NOT NULL
) STRICT;
CREATE INDEX record_chain ON record (device, seq);
CREATE INDEX record_clock ON record (clock_ms, clock_n);
CREATE INDEX record_machine ON record (machine, device, of_seq);

-- Records that were not taken, with the reason: shown, and they ground their machine.
CREATE TABLE refused (
  arrival INTEGER PRIMARY KEY,
  machine TEXT,
  line TEXT NOT NULL,
  reason TEXT NOT NULL
) STRICT;

-- Derived from the log; thrown away and rebuilt at will.
CREATE TABLE history (
  machine TEXT PRIMARY KEY,
  folded TEXT NOT NULL                  -- witnessmark_core::history::History as JSON
) STRICT, WITHOUT ROWID;
CREATE TABLE mark (                     -- the timeline
  machine TEXT NOT NULL,
  at_ms INTEGER NOT NULL,
  digest BLOB NOT NULL,
  kind TEXT NOT NULL,
  told TEXT NOT NULL,                   -- what a timeline tells of it, as JSON
  PRIMARY KEY (machine, at_ms, digest)
) STRICT, WITHOUT ROWID;
CREATE TABLE pace (                     -- how long each device's person looks at a point
  device TEXT NOT NULL,
  point TEXT NOT NULL,
  at_ms INTEGER NOT NULL,
  seconds REAL NOT NULL,
  PRIMARY KEY (device, point, at_ms)
) STRICT, WITHOUT ROWID;

-- Inspections begun: not yet facts, so not in the log, but durable at every answer.
CREATE TABLE draft (
  id TEXT PRIMARY KEY,
  machine TEXT NOT NULL,
  occasion TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('open', 'signed', 'aside')),
  started TEXT NOT NULL,                -- RFC 3339
  body TEXT NOT NULL                    -- the list as composed and its words, as JSON
) STRICT;
CREATE UNIQUE INDEX draft_open ON draft (machine, occasion) WHERE state = 'open';
CREATE TABLE step (
  draft TEXT NOT NULL REFERENCES draft (id),
  n INTEGER NOT NULL,
  body TEXT NOT NULL,                   -- witnessmark_core::list::Step as JSON
  PRIMARY KEY (draft, n)
) STRICT, WITHOUT ROWID;

-- Pictures, named by the SHA-256 of their bytes.
CREATE TABLE photo (
  digest BLOB PRIMARY KEY,
  media TEXT NOT NULL,
  bytes BLOB NOT NULL
) STRICT;

-- What this device keeps to itself: settings, and its sealed key.
CREATE TABLE setting (
  name TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
