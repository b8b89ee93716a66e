### Papers: record sheets, labels, tables, calendars.

fault-no-such-paper = There is no paper “{ $paper }” here.
    .hint = Ask for a4 or letter.
fault-no-sheet = There is a record sheet only of an inspection or of work.
    .hint = Choose an inspection, a job, its second look or its release in the machine's history.

## The record sheet

paper-inspection = Record of an inspection
paper-work = Record of work
paper-machine = Machine
paper-engine = Engine
paper-serials = Serial numbers
paper-owner = Registered by
paper-invented = Invented
paper-invented-words = This machine and its history exist only in the demonstration.
paper-none-written = None written down
paper-service = { $hours } engine hours, { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }
paper-service-then = Time in service
paper-date = Date of the inspection
paper-took = { $to }. First point shown { $from }, { $minutes } min.
paper-type = Type and extent
paper-extent = List “{ $list }”: { $looked } of { $points } points looked at. Places: { $stations }. List as composed: { $digest }.
paper-outcome-serviceable = Every point that the list demands was looked at, and nothing was found that keeps the machine on the ground or has to be watched.
paper-outcome-watch = Nothing was found that keeps the machine on the ground. { $watch ->
    [one] One point has
   *[other] { $watch } points have
  } to be watched.
paper-outcome-unserviceable = Not fit to fly: { $unserviceable ->
    [one] one point was
   *[other] { $unserviceable } points were
  } found unserviceable{ $watch ->
    [0] .
    [one] , and one has to be watched.
   *[other] , and { $watch } have to be watched.
  }
paper-outcome-missed = Not complete: points that the list demands were not looked at.
paper-outcome-released = Released: the inspections of this work are complete.
paper-outcome-open = Not released. { $lacks }
paper-wanting = Found wanting
paper-open = Open on this machine on { $day }
paper-nothing-open = Nothing is open.
paper-findings = What was looked at, and what was seen
paper-points-left = Not looked at
paper-left = Left out
paper-left-must = Left out, although the list demands it
paper-interruptions = Interruptions, and points passed quickly
paper-no-interruptions = None: no point was asked again, and none was answered in much less time than a look takes.
paper-stepped-back = { $at }: away for { $minutes } min, so these were asked again: { $titles }.
paper-hurried = { $points ->
    [one] One point was
   *[other] { $points } points were
  } answered in much less time than a look takes, and signed all the same: { $titles }.
paper-hurried-all = All { $points } points were answered in much less time than a look takes, and signed all the same.
paper-band = Limit { $band }. { $source }
paper-torque = { $tool } set to { $setting }; with its deviation each nut has between { $least } and { $most }. Movement before the click, eighths of a turn, nut by nut: { $eighths }.
paper-reading = Read: { $reading } at the nut.
paper-override = The tool was used although something was against it: { $because }
paper-note = Note: { $note }
paper-photos = { $count ->
    [one] Picture
   *[other] Pictures
  }, by digest: { $photos }
paper-before = Answered before, and taken back: { $words }
paper-corrected = Corrected later: { $words }. Reason: { $reason }
paper-rectified = Put right on { $day } by { $person }: { $how }
paper-means-serviceable = serviceable
paper-means-watch = to be watched
paper-means-unserviceable = unserviceable
paper-means-not-fitted = not fitted
paper-means-open = not looked at

paper-begun = Work begun
paper-begun-words = { $at } by { $person }, at { $service }.
paper-completed = Date of completion
paper-not-released = Not released yet
paper-description = Description of the work
paper-disturbed = Taken apart or loosened: { $joints }.
paper-independent = To be looked at by another person: { $joints }.
paper-follow-up = Falls due later: { $title }, after { $after }.
paper-hours = { $n ->
    [one] one engine hour
   *[other] { $n } engine hours
  }
paper-flights = { $n ->
    [one] one flight
   *[other] { $n } flights
  }
paper-tanks = { $n ->
    [one] one tank of fuel
   *[other] { $n } tanks of fuel
  }
paper-days = { $n ->
    [one] one day
   *[other] { $n } days
  }
paper-or = {" "}or{" "}
paper-first-of = { $words }, whichever comes first
paper-list-after = The list after the work
paper-second-look = Second look by another person
paper-looked-by = { $person }, { $at }
paper-joint-good = As it should be
paper-joint-wanting = Found wanting
paper-no-second-look = Nobody has signed a second look.

paper-statement = Statement and signatures
paper-statement-words = The people named below state that they looked at what is listed on this sheet, on the day and at the time in service given, and saw what is written here. Where something is listed as unserviceable, to be watched or not looked at, this sheet is the dated list of it.
paper-not-a-certificate = This is the signatories' own statement. It is not a legal certificate. The makers' manuals, local rules and licensed practice come first; where the work needs a licence, the licensed person signs on their own authority. A full list is not a safe flight: weather, site and pilot are judged by the pilot.
paper-compare = The record counts, not this print. To compare, scan the code or look the digest up in the app: the record says the same, and its signature can be checked.
paper-signed-inspection = The inspection
paper-signed-job = Work begun
paper-signed-list = The list after the work
paper-signed-earlier-list = An earlier list after the work
paper-signed-look = Second look
paper-signed-release = Release
paper-by = Signed by
paper-at = Signed at
paper-device = Device key (thumbprint)
paper-digest = Digest of the record (SHA-256)
paper-checked = Checked when printed
paper-by-hand = By hand, where rules ask for it
paper-certificate = Certificate or licence: kind and number
paper-hand-name = Name and date
paper-hand-signature = Signature
paper-lacking = An empty box (□) stands for a letter that this print's font does not have. The record holds the letter itself.
paper-code = A code with the record's digest, to look the record up and compare.
paper-code-under = Scan to compare. Record { $digest }
paper-foot = record { $digest } · printed { $at } · { $machine } · { $title }

## The label

paper-label-code = A code that opens this machine in the app.
paper-label-hint = Scan in the app to open this machine.

## The table

paper-taken-back = Taken back
paper-unsigned = Not signed yet.
paper-repacked = Reserve repacked on
paper-least = At least
paper-most = At most

## The calendar

paper-calendar = { $machine }: what falls due
paper-undated = Without a day, since there is too little flying to tell one: { $titles }
paper-due = { $machine }: { $title } is due
paper-due-about = { $machine }: { $title } is due about now
paper-due-day = By the calendar on { $day }.
paper-every = Due after { $every }.
paper-repack = { $machine }: repack the reserve parachute
paper-repack-words = { $days } days after the last repack, as the machine's description says. The reserve's manual and its packing card come first.
paper-deferral = { $machine }: last day that this may wait: { $title }
paper-calibration = { $tool }: calibration is due
paper-calibration-words = From this day its calibration holds no longer. A tool that was dropped or forced is calibrated before it is used again, whatever the day.
