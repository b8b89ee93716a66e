-- The school's server, as far as this device has followed it. Its settings lie in setting 'school'.
CREATE TABLE receipt (                  -- where the server has put each record in its log
  n INTEGER PRIMARY KEY,                -- from 0, without gaps: the leaves of the server's tree
  digest BLOB NOT NULL
) STRICT;
CREATE INDEX receipt_digest ON receipt (digest);

-- Records that the server wouldn't take, with its reason: they wait for a person.
CREATE TABLE stuck (
  digest BLOB PRIMARY KEY,
  kind TEXT NOT NULL,
  why TEXT NOT NULL,
  at TEXT NOT NULL                      -- RFC 3339
) STRICT, WITHOUT ROWID;

-- Pictures that the server has whole.
CREATE TABLE photo_sent (
  digest BLOB PRIMARY KEY
) STRICT, WITHOUT ROWID;

-- Pictures on their way here.
CREATE TABLE photo_part (
  digest BLOB PRIMARY KEY,
  bytes BLOB NOT NULL                   -- from the first on
) STRICT;

-- Derived: devices with two different records in one place of their chain about a machine.
CREATE TABLE split (
  machine TEXT NOT NULL,
  device TEXT NOT NULL,
  PRIMARY KEY (machine, device)
) STRICT, WITHOUT ROWID;

-- Derived: pictures that records name.
CREATE TABLE photo_named (
  digest BLOB PRIMARY KEY,
  machine TEXT NOT NULL
) STRICT, WITHOUT ROWID;
