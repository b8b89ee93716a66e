# What the command line says beside what the core says: its help, its prompts, its own faults.

## Help: verbs

help = Walk round your machine before you fly, sign what you saw, and get a verdict with its reasons.
help-machine = Register machines and list them
help-machine-list = List all machines, those that need you first
help-demo = Add the invented machines, for trying out
help-points = Show the points of a machine's list, with their answers
help-walk = Walk a list point by point, and sign it
help-verdict = Say whether a machine may fly, and why (exit 1: grounded)
help-serve-ui = Show the screens in a browser of this machine

## Help: what follows a verb

help-arg-data = The folder with your machines and your key [default: your own data folder]
help-arg-json = Answer in JSON, for programs
help-arg-machine = The machine's name or id, or the beginning of either
help-arg-occasion = Which list
help-arg-answers = Answers from a JSON file: point id to answer id, or to a value with its unit
help-arg-leave-missing = Sign although mandatory points have no answer in the file
help-arg-no-sign = Stop before signing; what was answered is kept
help-arg-pin-file = A file whose first line is the PIN; without it you are asked
help-arg-signatory = Your name, the first time something is signed in this data folder
help-arg-port = The port; 0 takes any that is free

## Signing

cli-pin = PIN of { $name }:
cli-pin-new = Choose a PIN for { $name }, at least six digits:
cli-pin-again = The same PIN again:
cli-owner = Owner
cli-begun = { $name } signs in this data folder from now on. The key's thumbprint is { $device }.

## Machines and points

cli-machine = { $name }  { $id }
  { $engine }, { $hours } h, { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }
cli-invented = , invented
cli-machine-walk = Begun and not signed: { $list }, { $done } of { $of } looked at
cli-no-machines = No machine is here yet. Add yours with “machine add”, or try with “demo”.
cli-demo = These machines are invented: they belong to nobody.
cli-points = { $points ->
    [one] One point
   *[other] { $points } points
  } in all.
cli-may-be-left = (may be left out)
cli-measured = a value, in { $unit }; good: { $band }

## What an answer means

cli-means-not-fitted = not fitted
cli-means-serviceable = serviceable
cli-means-watch = to watch
cli-means-unserviceable = unserviceable

## Walking

cli-kept = [{ $done }/{ $of }] { $point }: { $words } ({ $means })
cli-found = Found:
cli-hurried = Hurried:
cli-left = Not looked at:
cli-left-grounds = {" "}(mandatory)
cli-unsigned = Not signed. { $done ->
    [one] The one answer is
   *[other] The { $done } answers are
  } kept; the same command goes on from here.
cli-signed = Signed as record { $record }.

## Verdicts

cli-state-fit = fit
cli-state-limited = limits
cli-state-grounded = grounds
cli-clears = Clears: { $clears }
cli-record = record { $record }

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
    .hint = Run the command again, and type the same PIN twice.
fault-pin-file-empty = There is no PIN in { $file }.
    .hint = Its first line must be the PIN, and nothing else.
fault-answer-unreadable = The answer to “{ $point }” cannot be read: { $why }
    .hint = Give the answer's id, or {"{"} "value": 4, "unit": "L" {"}"}; with a note, {"{"} "answer": "…", "note": "…" {"}"}.

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
