# Engine logs: what is said while one is taken in.

## What a column may hold, and how time may be written

log-channel-cht = cylinder head temperature (CHT)
log-channel-egt = exhaust gas temperature (EGT)
log-channel-speed = engine speed
log-channel-outside = temperature outside
log-time-seconds = seconds
log-time-milliseconds = milliseconds (thousandths of a second)
log-time-minutes = minutes
log-time-clock = a clock: 1:02:03, or minutes and seconds as 02:03
log-time-moment = day and time: 2026-05-02 06:41:07
log-unnamed = (a file without a name)

## What was guessed

log-guess-channel = The heading “{ $column }” does not say where it was measured. By its values it is taken for: { $channel }. Look whether that is right.
log-guess-unit = The file does not say in which unit “{ $column }” is. By its values it is taken for { $unit }. Look whether that is right.
log-guess-time = The file does not say how “{ $column }” counts. By its values it is taken for: { $form }. Look whether that is right.
log-guess-no-time = No column looks like time. Choose the one that is.
log-guess-no-channel = No heading says what its column holds. Choose what each of them holds.

## Rows that can't be read

log-unread-fields = Line { $line }: { $has ->
    [one] one field
   *[other] { $has } fields
  }, but there are { $wants ->
    [one] one heading
   *[other] { $wants } headings
  }.
log-unread-no-time = Line { $line }: there is no time.
log-unread-time = Line { $line }: “{ $cell }” is no time of the kind chosen.
log-unread-order = Line { $line }: the time “{ $cell }” is out of order with the rows around it.
log-unread-number = Line { $line }: “{ $cell }” in “{ $column }” is no number with the decimal mark chosen.
log-unread-unit = Line { $line }: “{ $cell }” in “{ $column }” is not in { $unit }, the unit chosen.
log-nothing-measured = No row holds a value.

## Figures

log-peak-cht = Highest head temperature
log-peak-egt = Highest exhaust gas temperature
log-peak-speed = Highest engine speed
log-idle-speed = Idle speed
log-run-time = Time the engine ran
log-left-out = { $samples ->
    [one] One value is left out
   *[other] { $samples } values are left out
  }: no engine does that. A sensor's lead came off, or its gauge stood at its stop.
log-lasts-seconds = { $seconds } s
log-lasts-minutes = { $minutes } min
log-lasts-hours = { $hours } h { $minutes } min

## What else is worth knowing

log-note-runs = The clock begins anew within the file: it holds { $runs } runs. They are told together: the highest of all, and the sum of their times.
log-note-gaps = Nothing was logged for { $minutes ->
    [one] one minute
   *[other] { $minutes } minutes
  } in { $gaps ->
    [one] one gap
   *[other] { $gaps } gaps
  }. What was between is not known and not counted.
log-note-all-same = All values of “{ $column }” are the same, as no engine's are: its gauge stands at its stop, or its sensor is dead. Nothing is told of it.
log-note-impossible = No value of “{ $column }” can be what the column is said to hold. Look at its unit and at what it holds.
log-note-nothing = Nothing was measured in “{ $column }”.
log-note-by-head = No column tells an engine speed above 500 rpm, so the time it ran is an estimate: as long as its { $head } was more than half way up.
log-note-no-run-time = How long the engine ran is not told: no column holds its speed or the temperature of its head.
log-note-never-ran = The engine did not run in this log: it turned no faster than 500 rpm, or its head did not get warm. Nothing is told of it.
log-note-never-idled = It never idled for ten seconds at a steady speed, so there is no idle speed.

## Faults

fault-log-empty = There is nothing in this file.
    .hint = Choose the file that the instrument wrote; look whether it was saved whole.
fault-log-too-large = This file is larger than { $most } MB.
    .hint = Cut it into one file a day, or let the instrument log fewer samples a second.
fault-log-too-many-rows = This file has more than { $millions } million rows.
    .hint = Cut it into one file a day, or let the instrument log fewer samples a second.
fault-log-no-text = This file is not text.
    .hint = Export the log as CSV in the instrument's own program, and choose that file.
fault-log-no-rows = There is no table of numbers in this file.
    .hint = It takes a row of headings, and under it rows of numbers with a comma, a semicolon or a tab between them.
fault-log-one-column = This file has one column only.
    .hint = It takes a column of time and at least one of temperature or speed, with a comma, a semicolon or a tab between them.
fault-log-no-headings = This file has no row of headings above its numbers.
    .hint = Add a first row that names each column, such as: time,CHT,rpm
fault-log-heading-twice = Two columns have the same heading, “{ $heading }”.
    .hint = Give one of them another heading in the file, such as “{ $heading } 2”.
fault-log-mapping-missing = Nobody has said how the columns are to be read.
    .hint = Look at the columns as they are shown, and confirm what each of them holds.
fault-log-marks = Between fields there is a comma, a semicolon or a tab, and before decimals a point or a comma; nothing else.
    .hint = Choose one of these.
fault-log-no-column = The file has no column “{ $heading }”.
    .hint = Choose among the columns shown.
fault-log-column-twice = The column “{ $heading }” is used twice.
    .hint = A column holds time or one thing that was measured: choose once what it is.
fault-log-nothing-chosen = No column is read.
    .hint = Choose for at least one column what it holds.
fault-log-other-unit = “{ $heading }” cannot be in { $unit }.
    .hint = Temperatures are in °C, °F or K, speeds in rpm.
fault-log-taken = This file was taken in before, on { $when }.
    .hint = Its figures are there already. If another file was meant, choose that one.
fault-log-nothing-told = Read so, this file tells nothing. { $why }
    .hint = Look at the separator, the decimal mark, the units and what each column holds.
fault-log-hours = The engine hours of the log must lie between 0 and the machine's { $hours } h.
    .hint = Give the hours that the machine had when it was logged. If it has run longer than that, log the time first.
fault-log-day-ahead = The log's day, { $day }, has not come yet.
    .hint = Give the day on which it was logged: the instrument's clock may be wrong.
fault-log-outside = It was not so warm or so cold outside: between −60 and 60 °C.
    .hint = Look at the number and its unit, or leave it out.
fault-log-name = The file's name is longer than { $most } letters.
    .hint = Give the file a shorter name.
