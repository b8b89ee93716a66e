-- What waits for a signature is time logged, or a flight prepared.
ALTER TABLE pending ADD COLUMN kind TEXT NOT NULL DEFAULT 'time-logged';

-- Derived: what each look found at each point. People's pace, the measures of a machine, the lives of
-- parts and the worth of a list's points are read from it. Only records that count are in it.
DROP TABLE pace;
CREATE TABLE looked (
  digest BLOB NOT NULL,                 -- the inspection
  n INTEGER NOT NULL,                   -- the finding's place in it
  machine TEXT NOT NULL,
  device TEXT NOT NULL,
  at_ms INTEGER NOT NULL,
  occasion TEXT NOT NULL,
  point TEXT NOT NULL,
  component TEXT NOT NULL,
  means INTEGER NOT NULL,               -- 0 not fitted, 1 serviceable, 2 watch, 3 unserviceable
  passing INTEGER NOT NULL,             -- of the day, the pilot, a buckle: no part's life
  hours REAL NOT NULL,                  -- engine hours then
  seconds REAL NOT NULL,                -- how long it was on the screen
  hurried INTEGER NOT NULL,
  value REAL,                           -- as measured
  unit TEXT,
  moved REAL,                           -- a tightened joint's greatest movement before the click, eighths
  PRIMARY KEY (digest, n)
) STRICT, WITHOUT ROWID;
CREATE INDEX looked_pace ON looked (device, point, at_ms);
CREATE INDEX looked_measure ON looked (machine, point, at_ms);
CREATE INDEX looked_part ON looked (component, machine, at_ms);
CREATE INDEX looked_point ON looked (point, at_ms);

-- Derived: figures out of engine logs.
CREATE TABLE reading (
  digest BLOB NOT NULL,
  n INTEGER NOT NULL,
  machine TEXT NOT NULL,
  at_ms INTEGER NOT NULL,
  measure TEXT NOT NULL,
  hours REAL NOT NULL,
  value REAL NOT NULL,
  unit TEXT NOT NULL,
  outside REAL,                         -- °C
  file BLOB NOT NULL,                         -- SHA-256 of the log's bytes
  PRIMARY KEY (digest, n)
) STRICT, WITHOUT ROWID;
CREATE INDEX reading_measure ON reading (machine, measure, at_ms);
CREATE INDEX reading_file ON reading (file);

-- Derived: components fitted and taken off.
CREATE TABLE fitted (
  digest BLOB PRIMARY KEY,
  machine TEXT NOT NULL,
  part TEXT NOT NULL,
  component TEXT NOT NULL,
  at_ms INTEGER NOT NULL,
  on_machine INTEGER NOT NULL,          -- fitted, else taken off
  own REAL NOT NULL,                    -- the component's own hours then
  hours REAL NOT NULL                   -- the machine's
) STRICT, WITHOUT ROWID;
CREATE INDEX fitted_part ON fitted (part, machine, at_ms);
