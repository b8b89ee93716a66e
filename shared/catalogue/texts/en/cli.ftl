# What the command line says beside what the core says: its help, its prompts, its own faults.

## Help: verbs

help = Walk round your machine before you fly, sign what you saw, and get a verdict with its reasons.
help-demo = Add the invented machines, or an invented school with its season, for trying out
help-machine = Register machines, describe them anew, list them
help-machine-add = Register a machine (signed)
help-machine-change = Describe a machine anew (signed); what you do not give stays as it was
help-machine-list = List all machines, those that need you first
help-machine-engines = List the engine types, and the parts of a machine with each
help-machine-enrol = Put a machine of yours under the school's roles (signed)
help-machine-withdraw = Take a machine out of the school (signed)
help-points = Show the points of a machine's list, with their answers
help-walk = Walk a list point by point, and sign it (exit 1: grounded)
help-verdict = Say whether a machine may fly, and why (exit 1: grounded)
help-show = Show a machine: what is open and due, its components and limits, what happened
help-record = Lay a record open (exit 1: its signature is not good)
help-defect = What is open on a machine: list it, put it right, or let it wait
help-defect-list = List what is open: defects, and what is to be watched
help-defect-rectify = Sign that what is open at a point was put right
help-defect-defer = Sign that a defect may wait, within limits and under a condition
help-flight = Prepare a flight before launch, and log its time after landing
help-flight-prepare = Work out load, fuel, air and wind; it is signed with your next signature (exit 1: grounded)
help-flight-log = Log hours, flights and tanks, or the hour meter's reading; it is signed with your next signature
help-flight-undo = Take back the time logged last, while nobody has signed it
help-due = What falls due by hours, flights, tanks or days
help-due-list = List what falls due on a machine, nearest first
help-due-keep = Keep something that falls due again and again, or change it (signed)
help-due-done = Sign that it was done: now, or when you say
help-due-end = Sign that it is no longer kept
help-trend = What a machine's measures do over its time in service, and when they reach their limits
help-job = Work on a machine: from what you did to the list that follows it
help-job-choices = List the jobs that can be done on a machine
help-job-plan = Show what jobs mean: what comes off and goes back in which order, what to renew, what follows
help-job-begin = Sign that work was begun; the machine stays on the ground until it is released
help-second-look = Another person looks at a job's critical joints, from another phone or folder, or here
help-second-look-ask = Print the text to hand to the other person
help-second-look-look = Look at what another person asks, sign what you see, print the text to hand back
help-second-look-take = Take the text that the other person handed back
help-second-look-here = Let another person of this data folder look, and sign with their own PIN
help-release = Sign that a job's inspections are complete (exit 1: something is lacking)
help-tool = Torque tools: range, calibration, whether they may be used
help-tool-add = Register a torque tool (signed)
help-tool-change = Describe a torque tool anew (signed): calibrated again, dropped
help-tool-list = List the torque tools, and whether each may be used today
help-component = Components with a time in service of their own
help-component-fit = Fit a component that is new here, with the time it brings (signed)
help-component-move = Take a component off one machine and fit it to another (signed)
help-component-off = Take a component off a machine (signed)
help-fleet = What all looks here tell together: how long parts last, how people look, what points are worth
help-fleet-parts = List the components of which lives can be told
help-fleet-life = Say how long components of a type last, and how often to look at them
help-fleet-looking = Say how people look, each beside the others on the same points
help-fleet-lists = Say what the points of the lists are worth, for their author
help-person = Other people who sign in this data folder
help-person-add = Add another person, with a key and PIN of their own
help-person-list = List the other people
help-person-begin = Begin in this data folder as another device of yours, by the code from your first one
help-school = A school: found it, join it, its members, its lists, its board
help-school-create = Found a school (signed); this data folder becomes its root
help-school-show = Show the school as this device knows it
help-school-code = Print the text that this device shows to be admitted
help-school-admit = Admit a device by the text that it shows, or one that waits at the server (signed)
help-school-waiting = List those who wait at the server to be admitted
help-school-join = Join by the text that the root shows back, or by the server's address (signed)
help-school-leave = Leave the school (signed); your machines go with you
help-school-members = List everybody who is or was a member, with their devices
help-school-role = Give a member another role or last day (signed)
help-school-end = End a membership (signed); what the person signed stands
help-school-revoke = End the key of a lost phone (signed)
help-school-hand-over = Hand the root over to a member's device (signed)
help-school-vouch = Sign that another device is yours too, and print the text to show it
help-school-file = Write what a server needs to serve this school
help-school-publish = Publish lists or data sheets to the members (signed; exit 1: something is wrong with them)
help-school-board = Show every machine of the school, those that need a person first
help-school-sign-in = Confirm that it is you who signs in at the school's board
help-school-sign = Read what was prepared at the board, and sign it (with --json exit 1: only read; --agreed signs)
help-sync = Exchange records with the school's server (exit 1: the school has not admitted this device yet)
help-receipts = Check all that the server signed for (exit 1: it does not fit)
help-receipts-code = Print the text to compare with another member
help-receipts-compare = Compare what another member shows: does the server tell you both the same?
help-refused = List what came from a server and is no record
help-confirm-limit = Sign a limit as the maker's manual has it
help-correct = Sign a later word on a finding; the first one stays as it was signed
help-put-aside = Close a list without signing it; its answers are kept, unsigned
help-print = Write the record sheet of an inspection or a job, as PDF
help-label = Write a label to stick on a machine, as PDF; its code opens the machine in the app
help-csv = Write everything of a machine as a table (CSV)
help-calendar = Write what falls due on a machine as a calendar file (iCalendar)
help-export = Write a machine's records to a file that anybody can verify
help-import = Take the records of a file (exit 1: a line was not taken), or an engine's log
help-import-readings = Take the figures of an engine's log of temperatures and speeds (CSV), signed
help-verify = Check files of records with nothing but the files (exit 1: something is wrong)
help-serve-ui = Show the screens in a browser on this machine
help-server = Serve a school: exchange its members' records, show its board (until told to stop)
help-backup = Write all that a server keeps to a file, while it runs
help-restore = Fill an empty server from a backup: all of it, or nothing
help-board-passphrase = Set the passphrase with which somebody may look at the board, or take it away
help-compute = Compute one thing: JSON from standard input, JSON to standard output
help-validate = Check data sheets, lists of points, assembly graphs, words and drawings (exit 1: something is wrong)
help-rebuild = Derive everything anew from the signed records

## Help: what follows a verb

help-arg-data = The folder with your machines and your key, or with a server's data; without it, one among your own data
help-arg-json = Answer in JSON, for programs
help-arg-machine = The machine's name or id, or the beginning of either
help-arg-occasion = Which list: before-flight, second-flight, or after-service once a job is begun
help-arg-answers = Answers from a JSON file: point id to answer id, to a value with its unit, or to tool and eighths
help-arg-leave-missing = Sign although mandatory points have no answer in the file: that grounds the machine
help-arg-no-sign = Stop before signing; what was answered is kept
help-arg-pin-file = A file whose first line is the PIN; without it you are asked
help-arg-signatory = Your name, the first time something is signed in this data folder
help-arg-name = What you call the machine
help-arg-engine = The engine type's id; “machine engines” lists them
help-arg-hours = Engine hours
help-arg-flights = Flights
help-arg-reserve-repacked = The date on the reserve's packing card, as 2026-04-30
help-arg-repack-every = Days until the next repack, as the reserve's manual says; 180 until you say
help-arg-without-reserve = No reserve is fitted
help-arg-weight = What it weighs as flown, wing and reserve with it, without fuel, as "34 kg"
help-arg-wing-least = The least the wing must carry with a motor, all up, as "95 kg"
help-arg-wing-most = The most it may carry with a motor
help-arg-wing-free-least = The least it must carry without a motor, where its maker states both
help-arg-wing-free-most = The most it may carry without a motor
help-arg-wing-document = The wing's manual and its issue, without which its range is unconfirmed
help-arg-wing-page = The page
help-arg-without-wing-range = Nothing is known of what the wing may carry
help-arg-serial = A part and its serial number, as propeller=1234; may be given more than once
help-arg-note = Anything else worth knowing
help-arg-record = The record's digest, or the beginning of it
help-arg-point = The point's id; “points” and “show” name them
help-arg-how = What was done, in a sentence
help-arg-answer = The id of the answer it should have been
help-arg-reason = Why the first word was wrong, in a sentence
help-arg-band = The limit's id; “show” names them
help-arg-low = Lower end, a number with its unit, as "125 lbf.in"
help-arg-high = Upper end
help-arg-did = What was done; “job choices” names the jobs; may be more than one
help-arg-ran = Hours run since the last entry
help-arg-flown = Flights since the last entry
help-arg-tank = A tank of fuel was used up; may be given more than once
help-arg-burned = Fuel that these hours burned, with its unit, as "3.2 L" or "0.8 gal_us"
help-arg-plan = The plan as JSON, - for standard input; without it you are shown what is known, as JSON to begin from
help-arg-check = Only say what would come of it; keep nothing
help-arg-reading = The hour meter's reading, in place of the hours run
help-arg-title = What is to be done; the title of a kept one changes that one
help-arg-item = What is kept: its title or id, or the beginning of either
help-arg-every-hours = Due again after so many engine hours
help-arg-every-flights = Due again after so many flights
help-arg-every-tanks = Due again after so many tanks
help-arg-every-days = Due again after so many days; of several, whichever comes first
help-arg-tolerance = How much later is still tolerated, percent of the interval
help-arg-from-due = Count the next from when it was due, not from when it was done
help-arg-done-hours = Engine hours when it was last done; now, until you say
help-arg-done-flights = Flights when it was last done
help-arg-done-on = The day on which it was last done, as 2026-04-30
help-arg-until-hours = Engine hours up to which it may wait
help-arg-until-flights = Number of flights up to which it may wait
help-arg-until-date = The last day on which it may wait, as 2026-04-30
help-arg-condition = How it may be flown meanwhile
help-arg-why-wait = Why it may wait
help-arg-text = The text from the other person, or @FILE that holds it; @- for standard input
help-arg-joint = What is seen at a joint; give one for each, or none to be asked
help-arg-person = Who looks; “person list” names them
help-arg-person-name = What others know this person by
help-arg-tool = The tool's name or id, or the beginning of either
help-arg-tool-name = What you call the tool, or its number
help-arg-mark-low = Lowest marked value with its unit, as "5 N.m"
help-arg-mark-high = Highest marked value, in the same unit
help-arg-deviation = Permissible deviation, percent of the reading; that of the standard until you say
help-arg-calibrated = The date on its certificate, as 2026-04-30
help-arg-calibrate-days = Days between calibrations
help-arg-calibrate-clicks = Clicks between calibrations
help-arg-clicks = Clicks since the last calibration
help-arg-dropped = It was dropped or forced since
help-arg-part = Which part of the machine it is; “machine engines” names them
help-arg-component = The component's name, serial number or id
help-arg-component-type = The type of component, as exhaust; “fleet parts” lists them
help-arg-chance = The chance of an unseen failure between two looks that is borne; the school's, else 0.02
help-arg-in-force = The interval in force, engine hours; the school's until you say
help-arg-component-name = What you call the component
help-arg-serial-number = Its serial number
help-arg-own-hours = Hours it has run before
help-arg-own-flights = Flights it has made before
help-arg-other-machine = The machine it is fitted to
help-arg-document = The manual and its issue
help-arg-page = The page
help-arg-measure = The measure's id or name, or the beginning of either; without it, all of them
help-arg-plot = Draw it into this file, in place of telling it: SVG or PNG, by the name's ending
help-arg-dark = Draw light on dark
help-arg-to = The file to write; - for standard output
help-arg-paper = The paper's size
help-arg-bundles = Files of records; - for standard input
help-arg-sheets = Files of the catalogue; without any, the program's own catalogue
help-arg-computation = Which one; an unknown name lists them all
help-arg-demo-school = Found the invented school in this data folder (signed)
help-arg-all = Write everything of this data folder to this file; - for standard output
help-arg-brought = A file of records; - for standard input
help-arg-log = The log as CSV, with a row of headings; - for standard input
help-arg-mapping = How its columns are read: JSON, or the file that holds it; “--dry-run --json” shows the one it would use
help-arg-then-hours = The machine's engine hours when it was logged; now, until you say
help-arg-on = The day it was logged on, as 2026-04-30; what the file says, else today, until you say
help-arg-outside = How warm it was outside, as "12 Cel"; what the file says, until you say
help-arg-yes = Read it as shown without being asked: you have looked at it
help-arg-dry-run = Show how it would be read and what it tells; sign nothing
help-arg-put-away = Put this line away, after you have looked into it
help-arg-code = The text from the other device, or @FILE that holds it; @- for standard input
help-arg-board-code = The text of the board's code, or @FILE that holds it; @- for standard input
help-arg-agreed = Sign without being asked again: you have read it
help-arg-join = The text that the root shows back (or @FILE that holds it), or the server's address
help-arg-school-code = The school's code as somebody of the school reads it out; without it you are asked
help-arg-school-name = What people call the school
help-arg-school-file = The file to write; - for standard output
help-arg-waiting = One who waits at the server: their code, or their name (then you are asked to compare the code)
help-arg-role = What the person may do
help-arg-until = The last day of it, as 2026-04-30; open without
help-arg-member = The member's name, or the beginning of it
help-arg-device = The device's code, or its holder's name if they have only one; “school members” lists them
help-arg-why-end = Why it ends, in a few words
help-arg-publication = What members know these files by; the same title again is its next version
help-arg-publish-files = Files as they lie in the catalogue: …/engines/x.toml, …/fragments/x.toml, …/texts/en/x.ftl
help-arg-publish-note = What is new
help-arg-database = The server's database: postgres://…; without it, a file in the data folder
help-arg-listen = Where to listen
help-arg-founding-file = What “school file” wrote; needed at the first start only
help-arg-public-address = The address by which devices know the server, as https://school.example
help-arg-tls-cert = The certificate and those between it and a root (PEM)
help-arg-tls-key = The certificate's key (PEM)
help-arg-plain-http = Unencrypted although other machines can reach it: for closed networks only
help-arg-behind-proxy = A proxy stands before it, passes Host on and tells whom it asks for (X-Forwarded-For)
help-arg-backup-to = The file to write; none that is there is written over
help-arg-backup-from = The backup
help-arg-passphrase-file = A file whose first line is the passphrase; - for standard input
help-arg-off = Nobody looks by passphrase any more
help-arg-port = The port; 0 takes any that is free (7420 if it is free, else any)

## Signing

cli-pin = PIN of { $name }:
cli-pin-new = Choose a PIN for { $name }, at least six digits:
cli-pin-again = The same PIN again:
cli-owner = Owner
cli-begun = { $name } signs in this data folder from now on. The key's thumbprint is { $device }.
cli-added = Registered and signed. “walk” goes round it, “verdict” says whether it may fly.
cli-changed = Described anew and signed.
cli-rectified = Put right and signed.
cli-corrected = Corrected and signed; the first word stays in its record.
cli-limit-confirmed = The limit is entered and signed.

## Machines and points

cli-machine = { $engine }, { $hours } h, { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }
cli-invented = {" "}(invented)
cli-machine-walk = Begun and not signed: { $list }, { $done } of { $of } looked at
cli-no-machines = No machine is here yet. Add yours with “machine add”, or try with “demo”.
cli-demo = These machines are invented: they belong to nobody.
cli-parts = parts: { $parts }
cli-points = { $points ->
    [one] One point
   *[other] { $points } points
  } in all.
cli-may-be-left = (may be left out)
cli-tightened = tightened: joint { $joint }, { $nuts ->
    [one] one fastener
   *[other] { $nuts } fasteners
  }; { $band }
cli-measured = a value, in { $unit }; good: { $band }
cli-open = Open:
cli-limits = Limits:
cli-job = Work not released:
cli-due = What falls due:
cli-components = Components:
cli-timeline = What happened, latest first:

## What an answer means

cli-means-not-fitted = not fitted
cli-means-serviceable = serviceable
cli-means-watch = to watch
cli-means-unserviceable = unserviceable

## Walking

cli-walk-opened = { $list }: { $machine }, { $done } of { $of } looked at.
cli-walk-keys = Type the number of what you see, or the value. Also: b takes the last answer back, l leaves this point for now, n and words write a note, q stops (all is kept).
cli-good = Good: { $words }
cli-bad = Bad: { $words }
cli-why = Why: { $words }
cli-caution = CAUTION: { $words }
cli-note-well = Note: { $words }
cli-noted = Your note: { $words }
cli-band = Band: { $band }. { $source }
cli-tighten = { $nuts ->
    [one] One fastener
   *[other] { $nuts } fasteners
  }, to { $band }. { $source }
cli-note-kept = The note is kept.
cli-prompt = 1 to { $most }, b, l, n, q, ? >
cli-prompt-value = Value in { $unit } (or with another unit), b, l, n, q, ? >
cli-prompt-tool = Torque tool (name or id; “tool list” shows them), b, l, n, q, ? >
cli-prompt-adapter = Anything between tool and nut? Lever, adapter, angle, as 350 mm, 50 mm, 0 (Enter: nothing) >
cli-bench = Set the tool to { $setting } ({ $other }) at the full torque.
cli-prompt-because = Why use it all the same? (Enter: take another tool) >
cli-step = { $round }, nut { $nut }: { $setting } (Enter when it clicked, q leaves the joint) >
cli-step-moved = { $round }, nut { $nut }: { $setting }. How far before the click, in eighths of a turn (q leaves the joint) >
cli-prompt-reading = What the tool read, with its unit (Enter: it does not read) >
cli-prompt-insist = If it is really so: why? (Enter: tell it again as it is now) >
cli-joint-left = This joint is not told yet: begin it again with the first nut.
cli-answered = Kept: { $words } ({ $means })
cli-not-understood = This is none of the answers.
cli-would-be = Signed now, the verdict would be: { $verdict }.
cli-closing-keys = s signs. Also: l goes to what was left, a point's number looks at it again, b takes the last answer back, q stops (all is kept).
cli-closing-keys-unsigned = q stops (all is kept). Also: l goes to what was left, a point's number looks at it again, b takes the last answer back.
cli-closing-not-understood = This is neither one of these letters nor a point's number.
cli-kept = [{ $done }/{ $of }] { $point }: { $words } ({ $means })
cli-found = Found:
cli-hurried = Hurried (look again?):
cli-left = Not looked at:
cli-left-grounds = {" "}(mandatory)
cli-unsigned = Not signed. { $done ->
    [0] Nothing was answered yet; the same command begins here.
    [one] The one answer is kept; the same command goes on from here.
   *[other] The { $done } answers are kept; the same command goes on from here.
  }
cli-signed = Signed as record { $record }.
cli-put-aside = Put aside: { $list }, { $done ->
    [one] one answer
   *[other] { $done } answers
  } kept, unsigned.

## Time, and what falls due

cli-logged = Logged; it counts at once.
cli-log-undone = The last entry is taken back.
cli-waiting = { $entries ->
    [one] One entry waits
   *[other] { $entries } entries wait
  } for the next signature.
cli-flight-kept = kept; it counts at once, and your next signature signs it.
cli-flight-judged = what would come of it. Nothing is kept.
cli-flight-known = nothing is worked out today. This may still hold; change it, and give it back with --file.
cli-flight-today = this is what was worked out today. Change it, and give it back with --file.
cli-flight-example = All that a plan may have in it; leave out what you don't ask:
cli-flight-pour = Oil for this mix: { $oil }
cli-weights = Weights:
cli-weight = It weighs { $weight } as flown, without fuel.
cli-wing-range = With a motor its wing may carry { $low } to { $high } all up.
cli-wing-range-free = Without one { $low } to { $high }.
cli-nothing-due = Nothing is kept as falling due. “due keep” adds something.
cli-due-later = later
cli-due-soon = soon
cli-due-tolerated = past due, still tolerated
cli-due-over = over
cli-due-kept = Kept and signed.
cli-due-done = Done and signed; it counts from there.
cli-due-ended = Signed: it is no longer kept.
cli-trend-nothing = No measure of it has readings yet. Walk round it, work on it, or take the figures of an engine's log (“import readings”).
cli-trend-row = { $title } ({ $id }), { $n ->
    [one] one reading
   *[other] { $n } readings
  }{ $drifts ->
    [yes] : act on it
   *[no] {""}
  }
cli-trend-band = Its band:
cli-trend-readings = Readings:
cli-trend-reading = { $hours } h: { $words }{ $far ->
    [yes] , far off the line
   *[no] {""}
  }
cli-trend-marks = What was done:
cli-trend-mark = { $hours } h: { $words }
cli-nothing-open = Nothing is open.
cli-deferred = It may wait, signed.

## Work

cli-take-off = Taking apart:
cli-plan-part-off = { $words }: off
cli-plan-joint-undone = { $words }: undo
cli-plan-part-on = { $words }: on
cli-plan-joint-done-up = { $words }: do up
cli-refit = Refitting:
cli-renew = Renew:
cli-count-tools = Count back:
cli-independent = Another person must look at:
cli-follow-ups = Falls due later:
cli-plan-points = { $points ->
    [one] One point
   *[other] { $points } points
  } on the list after it.
cli-job-begun = Begun and signed. The machine stays on the ground until “release”. Next: “walk MACHINE --occasion after-service”.
cli-job-ready = Nothing is lacking: it may be released.
cli-job-independent = Another person looks at: { $joint } [{ $id }]
cli-not-released = It cannot be released yet:
cli-released = Released and signed.
cli-second-asked = Hand this text to the other person; they answer it with “second-look look”.
cli-second-what = Another person asks you to look at { $machine }: { $title }.
cli-prompt-joint = { $joint }: good (g) or wanting (w), and a word more if you like >
cli-second-signed = Signed. Hand this text back; it is taken with “second-look take”.
cli-second-taken = Taken: another person has looked.
cli-second-here = Signed: another person has looked.
cli-person-added = { $name } signs in this data folder too, with a PIN of their own.
cli-no-people = Nobody else signs in this data folder. “person add” adds somebody.
cli-tool = { $low } to { $high }, ±{ $deviation } %, { $clicks ->
    [one] one click
   *[other] { $clicks } clicks
  } since its calibration
cli-tool-usable = May be used.
cli-tool-refused = May not be used.
cli-no-tools = No torque tool is here yet. Add yours with “tool add”.
cli-tool-added = Registered and signed.
cli-tool-changed = Described anew and signed.
cli-component-off = {" "}(off)
cli-component-fitted = Fitted and signed.
cli-component-moved = Taken off, fitted to the other machine, and signed.
cli-component-taken-off = Taken off and signed.

## The fleet

cli-fleet-nothing = No look at any component is here yet. Walk round a machine and sign, or take records in.
cli-fleet-nobody = Nobody has signed an inspection here yet, or you may not see how they look: of a school's machines its instructors see all, everybody sees themselves.
cli-fleet-part = { $part } [{ $id }]: { $machines ->
    [one] one machine
   *[other] { $machines } machines
  }, { $lives ->
    [one] one life
   *[other] { $lives } lives
  }, { $failed ->
    [0] none
    [one] one
   *[other] { $failed }
  } of them found unserviceable
cli-fleet-steps = Still serviceable, with no form of life assumed (interval of 95 %):
cli-fleet-step = from { $hours } h: { $share } % ({ $low } to { $high })
cli-fleet-fitted = Still serviceable, by the fitted curve (interval of 95 %):
cli-fleet-at = at { $hours } h: { $share } % ({ $low } to { $high })
cli-fleet-intervals = How the intervals were made:
cli-fleet-person = { $name }{ $you ->
    [yes] {" "}(you)
   *[no] {""}
  }: { $inspections ->
    [one] one inspection
   *[other] { $inspections } inspections
  }, { $looks ->
    [one] one look
   *[other] { $looks } looks
  } at points that others look at, too
cli-fleet-seconds = Middle time on a point: { $own } s{ $beside ->
    [yes] , the others { $others } s
   *[no] {""}
  }
cli-fleet-hurried = Hurried: { $own } %{ $beside ->
    [yes] , the others { $others } %
   *[no] {""}
  }
cli-fleet-found = Found in 100 looks: { $own }{ $beside ->
    [yes] , the others { $others }
   *[no] {""}
  }
cli-fleet-hurried-points = Hurried most often: { $points }

## The school

cli-begun-as = { $name } signs in this data folder too. Next: “school code”, shown to the first device (“school vouch”).
cli-no-school = This device belongs to no school.
cli-own-code = This device's code: { $code }
cli-school-code = The school's code: { $code }
cli-school-role = You are: { $role }
cli-school-root = You are: { $role}; this device is the school's root
cli-school-address = Server: { $address }
cli-members = Members:
cli-enrolled-machines = Machines under the school:
cli-published = Published:
cli-published-version = { $title }, version { $version }
cli-superseded = {" "}(no longer used)
cli-device = device { $code }
cli-device-root = device { $code }, the school's root
cli-device-ended = device { $code }, its key was ended
cli-to-send = Waiting to be sent: { $records ->
    [one] one record
   *[other] { $records } records
  }{ $photos ->
    [0] .
    [one] {", "}one picture.
   *[other] {", "}{ $photos } pictures.
  }
cli-stuck = Not taken by the server: { $kind }. { $words }
cli-applicant = { $name }, code { $code }
cli-code-shown = Show this text to the other device, and read out this code: { $code }
cli-answer = Signed. Show this text back; it is taken with “school join”.
cli-admitted = Admitted and signed.
cli-nobody-waits = Nobody waits to be admitted.
cli-prompt-applicant = { $name } waits. Do they read out this code: { $code }? (y/n) >
cli-prompt-school = This is “{ $name }”. Does the school read out this code: { $code }? (y/n) >
cli-prompt-sign = Sign it? (y/n) >
cli-left-school = Left and signed. Your machines are yours alone again.
cli-enrolled = Under the school, signed.
cli-withdrawn = Taken out of the school, signed.
cli-desk-where = { $school }, { $address }
cli-signed-in = Signed in. Go on at the board.
cli-draft-signed = Signed.
cli-receipts-code = Show this text to another member; it is compared with “receipts compare”.
cli-none-refused = Nothing was refused.
cli-board-second = Waiting for another person's eyes:
cli-board-owner = of { $name }
cli-board-job = Work not released: { $title }

## The server

cli-server-listens = The school's server answers at
cli-backed-up = Backed up to { $file }, and checked.
cli-restored = Restored from { $file }.
cli-backup-has = School { $school }: { $records ->
    [one] one record
   *[other] { $records } records
  }, { $photos ->
    [one] one picture
   *[other] { $photos } pictures
  }.
cli-passphrase-set = The passphrase is set. It lets look at the board, and sign nothing; whoever came in by an older one is out.
cli-passphrase-off = Nobody looks at the board by passphrase any more.

## Verdicts and records

cli-state-fit = fit
cli-state-limited = limits
cli-state-grounded = grounds
cli-clears = To clear it: { $clears }
cli-record = record { $id }
cli-point = point { $id }
cli-limit = limit { $id }
cli-record-by = Signed by { $by } on { $when }; device { $device }, number { $seq } of its chain
cli-before = Said first, taken back: { $words }

## Files

cli-exported = { $records ->
    [one] One record
   *[other] { $records } records
  } written to { $file }.
cli-written = Written to { $file }.
cli-key-of = { $name } signs with key { $device }
cli-valid = { $files ->
    [0] Nothing is wrong in the program's own catalogue.
    [one] Nothing is wrong in this file.
   *[other] Nothing is wrong in these { $files } files.
  }
cli-rebuilt = Derived anew: { $machines ->
    [one] one machine
   *[other] { $machines } machines
  }.
cli-compute-example = Give JSON on standard input, for example: { $example }

## Engine logs

cli-log = { $name } is read so:
cli-log-marks = between fields { $separator }, before decimals { $decimal }
cli-log-tab = a tab
cli-log-semicolon = a semicolon
cli-log-comma = a comma
cli-log-point = a point
cli-log-time = “{ $column }”: time, as { $form }
cli-log-column = “{ $column }”: { $channel }, in { $unit }
cli-log-unused = not read: { $columns }
cli-log-remembered = A file with the same headings was read so before.
cli-log-rows = { $rows ->
    [one] One row was read
   *[other] { $rows } rows were read
  }, { $lasts } in all. They tell:
cli-log-unread = In { $rows ->
    [one] one row
   *[other] { $rows } rows
  } something could not be read; the first: { $first }
cli-log-windows-1252 = The file is not UTF-8. It was read as Windows-1252: look whether the headings are right.
cli-prompt-log = Is it right so? (y/n) >
cli-log-taken = The log's figures are taken in and signed:

## Faults: what went wrong, and what to do

fault-no-data-folder = This system names no folder for your data.
    .hint = Give one with --data DIR.
fault-no-such-record = There is no record “{ $what }” here.
    .hint = “show MACHINE” names the records; give at least four characters of one.
fault-ambiguous-record = “{ $what }” fits more than one record: { $which }
    .hint = Give more characters of the one you mean.
fault-signatory-other = Here { $name } signs, not { $given }.
    .hint = Leave --signatory out, or choose another data folder with --data.
fault-pins-differ = The two PINs are not the same.
    .hint = Type the same PIN twice.
fault-pin-file-empty = There is no PIN in { $file }.
    .hint = Its first line must be the PIN, and nothing else.
fault-answer-unreadable = The answer to “{ $point }” cannot be read: { $why }
    .hint = Give the answer's id, or {"{"} "value": 4, "unit": "L" {"}"}; with a note, {"{"} "answer": "…", "note": "…" {"}"}; a joint tightened, {"{"} "tool": "…", "eighths": [1, 1, 1, 1] {"}"}.
fault-not-agreed = This was not agreed to: nothing was signed.
    .hint = Compare or read first; then run it again and say y. With --json give the code itself, or --agreed.
fault-log-not-confirmed = Nobody confirmed how this log is read: nothing was signed.
    .hint = Look at what --dry-run shows. If it is right, run it again and say y, or give --yes; if not, give --mapping.
fault-log-mapping-unread = The mapping cannot be read: { $why }
    .hint = Take what “--dry-run --json” shows under "mapping", and change it.
fault-school-other = The school at that address is “{ $name }” with code { $code }, not { $given }.
    .hint = Ask the school for its address and its code again.
fault-server-no-school = This server has no school yet.
    .hint = Write its file on the root's device with “school file -o FILE”, and give it with --school FILE.
fault-server-several-schools = This database has more than one school.
    .hint = Give each server a database of its own.
fault-server-not-a-school = The school's file cannot be used: { $why }
    .hint = Write it anew on the root's device with “school file -o FILE”.
fault-server-other-school = This server serves school { $here }, not { $given }.
    .hint = Give the other school a server with a data folder of its own.
fault-server-in-the-open = Other machines can reach { $address }, and nothing there would be encrypted.
    .hint = Give --tls-cert and --tls-key, or listen on 127.0.0.1 behind a proxy that has a certificate. Where the network is closed to others, say --plain-http.
fault-server-certificate = The certificate or its key cannot be used: { $why }
    .hint = Both are PEM files, and belong together.
fault-server-stopped = The server stopped: { $why }
    .hint = Nothing that was acknowledged is lost; start it again.
fault-server-damaged = The server's data are damaged: { $why }
    .hint = Leave them as they are, and restore the latest backup into a new data folder.
fault-server-database = The server's database: { $why }
    .hint = Put that right and try again; nothing is half done.
fault-restore-not-empty = There are records already where the backup should go.
    .hint = Restore into a new data folder or a new database.
fault-backup-exists = { $file } is there already.
    .hint = Name another file: a backup is never written over.
fault-not-a-backup = { $file } is no backup: { $why }
    .hint = Give a file that “backup” wrote.
fault-passphrase-short = A passphrase has at least { $least } letters.
    .hint = Take some words that do not belong together.
fault-none-to-name = There is no “{ $what }”: none is here yet.
    .hint = Add one first; “--help” shows how.
fault-not-named = There is no “{ $what }” among these: { $known }
    .hint = Give the id, the name, or the beginning of either.
fault-ambiguous-name = “{ $what }” fits more than one: { $which }
    .hint = Give more of the id, or the whole name.
fault-joints-untold = Nothing was said of: { $joints }
    .hint = Say --joint JOINT=good or --joint JOINT=wanting for each of them.
fault-joint-unreadable = “{ $text }” says nothing of a joint.
    .hint = Say JOINT=good or JOINT=wanting.
fault-tool-unchanged = The tool is described like that already.
    .hint = Give what is to be changed; nothing was signed.
fault-eighths = “{ $text }” is no number of eighths of a turn.
    .hint = Type a whole number: 0 if it clicked at once, 2 for a quarter of a turn.
fault-adapter = “{ $text }” is no adapter.
    .hint = Give the lever, the adapter's length and the angle between them: 350 mm, 50 mm, 0.
fault-quantity = “{ $text }” is no value with a unit.
    .hint = Give a number with a decimal point, and a unit: 12.5 N.m. Units: { $units }.
fault-serial = “{ $text }” is no part with its serial number.
    .hint = Give both, as propeller=1234; “machine engines” names the parts.
fault-nothing-changed = The machine is described like that already.
    .hint = Give what is to be changed; nothing was signed.
fault-nothing-begun = No such list was begun on this machine.
    .hint = “machine list” shows the lists that were begun and not signed.
fault-more-begun = More than one list was begun: { $which }
    .hint = Say which with --occasion.

## The screens in a browser

fault-not-this-server = This address is not this program's.
    .hint = Open the address that the program printed when it started.
fault-token-used = This address was opened before; it works once.
    .hint = Start the program again: it prints a new one.
fault-not-let-in = This browser has not opened the program's address.
    .hint = Open the address that the program printed, in this browser. If it was opened elsewhere, start the program again: it prints a new one.
fault-no-such-page = There is no such page.
    .hint = Go back to the first page.
fault-ui-not-built = The screens were not built into this program.
    .hint = Run “make ui”, then build and start the program again.
fault-call-too-large = This is larger than 64 MB.
    .hint = Use a smaller picture or file.
