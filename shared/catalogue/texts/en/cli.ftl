# What the command line says beside what the core says: its help, its prompts, its own faults.

## Help: verbs

help = Walk round your machine before you fly, sign what you saw, and get a verdict with its reasons.
help-machine = Register machines, describe them anew, list them
help-machine-add = Register a machine (signed)
help-machine-change = Describe a machine anew (signed); what you do not give stays as it was
help-machine-list = List all machines, those that need you first
help-machine-engines = List the engine types, and the parts of a machine with each
help-demo = Add the invented machines, for trying out
help-points = Show the points of a machine's list, with their answers
help-walk = Walk a list point by point, and sign it (exit 1: grounded)
help-verdict = Say whether a machine may fly, and why (exit 1: grounded)
help-show = Show a machine: what is open, its limits, what happened
help-record = Lay a record open (exit 1: its signature is not good)
help-rectify = Sign that what is open at a point was put right
help-correct = Sign a later word on a finding; the first one stays as it was signed
help-confirm-limit = Sign a limit as the maker's manual has it
help-put-aside = Close a list without signing it; its answers are kept, unsigned
help-export = Write a machine's records to a file that anybody can verify
help-verify = Check files of records with nothing but the files (exit 1: something is wrong)
help-validate = Check data sheets, lists of points, words and drawings (exit 1: something is wrong)
help-rebuild = Derive everything anew from the signed records
help-compute = Compute one thing: JSON from standard input, JSON to standard output
help-serve-ui = Show the screens in a browser on this machine

## Help: what follows a verb

help-arg-data = The folder with your machines and your key; without it, “witnessmark” among your own data
help-arg-json = Answer in JSON, for programs
help-arg-machine = The machine's name or id, or the beginning of either
help-arg-occasion = Which list: before-flight or second-flight
help-arg-answers = Answers from a JSON file: point id to answer id, or to a value with its unit
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
help-arg-document = The manual and its issue
help-arg-page = The page
help-arg-to = The file to write; - for standard output
help-arg-bundles = Files of records; - for standard input
help-arg-sheets = Files of the catalogue; without any, the program's own catalogue
help-arg-computation = Which one; an unknown name lists them all
help-arg-port = The port; 0 takes any that is free

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
fault-none-to-name = There is no “{ $what }”: none is here yet.
    .hint = Add one first; “--help” shows how.
fault-not-named = There is no “{ $what }” among these: { $known }
    .hint = Give the id, the name, or the beginning of either.
fault-ambiguous-name = “{ $what }” fits more than one: { $which }
    .hint = Give more of the id, or the whole name.
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
