-- What the server keeps. The same tables and columns as in postgres-0001.sql (a test compares them);
-- everything belongs to a school: the 32-byte digest of its founding record. Times are unix seconds.

-- How long each school's log is; who appends holds this row.
CREATE TABLE head (
  school BLOB NOT NULL,
  size INTEGER NOT NULL,
  PRIMARY KEY (school)
) STRICT, WITHOUT ROWID;

-- The log, in order of arrival, as signed. Never updated, never deleted.
CREATE TABLE record (
  school BLOB NOT NULL,
  n INTEGER NOT NULL,                   -- its leaf in the Merkle tree, from 0, without a gap
  digest BLOB NOT NULL,                 -- SHA-256 of the payload
  device TEXT NOT NULL,                 -- thumbprint of the signing key
  protected TEXT NOT NULL,              -- the envelope's three members
  payload TEXT NOT NULL,
  signature TEXT NOT NULL,
  PRIMARY KEY (school, n),
  UNIQUE (school, digest)
) STRICT;

-- Pictures, named by the SHA-256 of their bytes, in the parts in which they came.
CREATE TABLE photo (
  school BLOB NOT NULL,
  digest BLOB NOT NULL,
  total INTEGER NOT NULL,
  have INTEGER NOT NULL,
  whole INTEGER NOT NULL,               -- 1 once all is here and the digest fits
  PRIMARY KEY (school, digest)
) STRICT, WITHOUT ROWID;
CREATE TABLE photo_part (
  school BLOB NOT NULL,
  digest BLOB NOT NULL,
  at INTEGER NOT NULL,                  -- where it begins
  bytes BLOB NOT NULL,
  PRIMARY KEY (school, digest, at)
) STRICT;

-- The school's own: its server's sealed key, the passphrase's hash.
CREATE TABLE setting (
  school BLOB NOT NULL,
  name TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (school, name)
) STRICT, WITHOUT ROWID;

-- Devices that ask to be admitted.
CREATE TABLE waiting (
  school BLOB NOT NULL,
  device TEXT NOT NULL,
  lines TEXT NOT NULL,                  -- their records, as JSON Lines
  at INTEGER NOT NULL,
  PRIMARY KEY (school, device)
) STRICT;

-- What the board prepared and a device is to sign.
CREATE TABLE draft (
  school BLOB NOT NULL,
  id TEXT NOT NULL,
  kind TEXT NOT NULL,
  body TEXT NOT NULL,                   -- JSON
  made INTEGER NOT NULL,
  PRIMARY KEY (school, id)
) STRICT;

-- Below: what passes, and is in no backup.

-- Nonces of signed requests that were answered: none is answered twice.
CREATE TABLE nonce (
  school BLOB NOT NULL,
  keyid TEXT NOT NULL,
  nonce TEXT NOT NULL,
  created INTEGER NOT NULL,
  PRIMARY KEY (school, keyid, nonce)
) STRICT, WITHOUT ROWID;
CREATE INDEX nonce_created ON nonce (school, created);

-- Signing in to the board: what a page asks for, and what came of it.
CREATE TABLE challenge (
  school BLOB NOT NULL,
  id TEXT NOT NULL,
  token BLOB NOT NULL,                  -- SHA-256 of the page's secret
  device TEXT,                          -- who confirmed it
  until INTEGER NOT NULL,
  PRIMARY KEY (school, id)
) STRICT;
CREATE TABLE session (
  school BLOB NOT NULL,
  token BLOB NOT NULL,                  -- SHA-256 of the cookie
  device TEXT,                          -- none: by passphrase
  made INTEGER NOT NULL,
  until INTEGER NOT NULL,
  PRIMARY KEY (school, token)
) STRICT, WITHOUT ROWID;

-- How often something was tried in vain, and until when that counts.
CREATE TABLE attempt (
  school BLOB NOT NULL,
  name TEXT NOT NULL,
  tries INTEGER NOT NULL,
  until INTEGER NOT NULL,
  PRIMARY KEY (school, name)
) STRICT, WITHOUT ROWID;
