-- What the server keeps. The same tables and columns as in sqlite-0001.sql, where they are explained (a test
-- compares them).
CREATE TABLE head (
  school BYTEA NOT NULL,
  size BIGINT NOT NULL,
  PRIMARY KEY (school)
);
CREATE TABLE record (
  school BYTEA NOT NULL,
  n BIGINT NOT NULL,
  digest BYTEA NOT NULL,
  device TEXT NOT NULL,
  protected TEXT NOT NULL,
  payload TEXT NOT NULL,
  signature TEXT NOT NULL,
  PRIMARY KEY (school, n),
  UNIQUE (school, digest)
);
CREATE TABLE photo (
  school BYTEA NOT NULL,
  digest BYTEA NOT NULL,
  total BIGINT NOT NULL,
  have BIGINT NOT NULL,
  whole BIGINT NOT NULL,
  PRIMARY KEY (school, digest)
);
CREATE TABLE photo_part (
  school BYTEA NOT NULL,
  digest BYTEA NOT NULL,
  at BIGINT NOT NULL,
  bytes BYTEA NOT NULL,
  PRIMARY KEY (school, digest, at)
);
-- Pictures are compressed already.
ALTER TABLE photo_part ALTER COLUMN bytes SET STORAGE EXTERNAL;
CREATE TABLE setting (
  school BYTEA NOT NULL,
  name TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (school, name)
);
CREATE TABLE waiting (
  school BYTEA NOT NULL,
  device TEXT NOT NULL,
  lines TEXT NOT NULL,
  at BIGINT NOT NULL,
  PRIMARY KEY (school, device)
);
CREATE TABLE draft (
  school BYTEA NOT NULL,
  id TEXT NOT NULL,
  kind TEXT NOT NULL,
  body TEXT NOT NULL,
  made BIGINT NOT NULL,
  PRIMARY KEY (school, id)
);
CREATE TABLE nonce (
  school BYTEA NOT NULL,
  keyid TEXT NOT NULL,
  nonce TEXT NOT NULL,
  created BIGINT NOT NULL,
  PRIMARY KEY (school, keyid, nonce)
);
CREATE INDEX nonce_created ON nonce (school, created);
CREATE TABLE challenge (
  school BYTEA NOT NULL,
  id TEXT NOT NULL,
  token BYTEA NOT NULL,
  device TEXT,
  until BIGINT NOT NULL,
  PRIMARY KEY (school, id)
);
CREATE TABLE session (
  school BYTEA NOT NULL,
  token BYTEA NOT NULL,
  device TEXT,
  made BIGINT NOT NULL,
  until BIGINT NOT NULL,
  PRIMARY KEY (school, token)
);
CREATE TABLE attempt (
  school BYTEA NOT NULL,
  name TEXT NOT NULL,
  tries BIGINT NOT NULL,
  until BIGINT NOT NULL,
  PRIMARY KEY (school, name)
);
