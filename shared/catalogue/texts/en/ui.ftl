# The screens' own words. What is looked at, found and judged is said by the core.

app-name = Witness Mark

## Waiting and faults

waiting = One moment…
waiting-failed = This could not be shown
try-again = Try again
close = Close
fault-unreachable = The program behind this page does not answer.
fault-unreachable-hint = What you typed is still here. See whether the program still runs, start it again if not, and try again.
fault-refused = The program refused this page (code { $status }).
fault-refused-hint = Open the address that the program printed when it started: each start has a new one.
fault-unexpected-hint = What you typed is still here. Try again; if it fails again, close the program and open it once more.

## Going places

to-machines = Your machines
to-machine = The machine
to-record = The record

## First start

first-title = Look before you launch
first-what = Walk round your machine before you fly, point by point, and sign what you saw. All of it stays on this device and works without a signal.
first-name = Your name, as you sign
first-begin = Make my key, and begin
first-busy = Making the key…
pin-choose = Choose a PIN
pin-hint = At least six digits. It locks the key that signs; nobody can tell it to you if you forget it.
pin-twice = The same PIN again
pin-yours = Your PIN
pin-old = The PIN until now
pins-differ = The two PINs are not the same.
pins-differ-hint = Type the PIN again in both places.

## Machines

machines-title = Your machines
machines-over = { $name } signs here · kept on this device
machines-others = Other machines
machines-more = More
machines-add = Add a machine
machines-verify = Check a file
machines-settings = Settings
machines-walk = Walk round { $machine }
machines-walk-on = Go on with { $machine }: { $done } of { $of }
machines-walking = Walk begun: { $done } of { $of } looked at
hours = { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
invented = invented, for trying out
empty-what = No machine is here yet.
empty-add = Add my machine
empty-demo = Try with invented machines
empty-demo-what = They belong to nobody, and are marked as invented.

## Meanings and looks

means-serviceable = serviceable
means-watch = to watch
means-unserviceable = unserviceable
means-not-fitted = not fitted
look-open = not looked at yet
look-done = looked at
look-again = to be looked at again
look-left = left for now
reasons = Why
cautions = Cautions
caution = Caution:

## The walk

walk-title = Round { $machine }
walk-over = { $list } · { $done } of { $of } looked at
walk-begin = Begin: { $point }
walk-go-on = Go on: { $point }
walk-to-summary = Look it over, and sign
walk-to-summary-early = Look it over so far
walk-here = You are here.
walk-count = { $done } of { $of }
minutes = { $minutes } min

## A point

point-unknown = This list has no such point.
point-unknown-hint = Go back to the walk and choose a point there.
point-to-map = Back to the walk.
point-place = place { $place } of { $places } · point { $point } of { $points }
point-critical = Critical: a life hangs on this one
point-good = Good:
point-bad = Bad:
point-said = You said: “{ $words }”
point-said-again = You said “{ $words }” before the interruption. Look again.
point-kept = Kept: { $words }. { $done } of { $of } looked at.
point-left = You left this one for now.
answers = What do you see?
answer-yours = you said this
tools = Also here
tool-photo = Photo
tool-note = Say more
tool-leave = Leave for now
tool-go-on = Go on
tool-step-back = Step back
note-title = Say more
note-words = What did you see at “{ $point }”?
note-keep = Keep the note
photo-number = Photo { $number }
photo-open = Open photo { $number }
keys = Number keys
keys-erase = Erase the last digit
measure-value = Measured value; the band is { $band }
measure-band = Band: { $band }
measure-unit = Unit
measure-enter = Write it down

## Said back, and signed

summary-title = What you saw
summary-back = The walk
summary-preview = If you sign now
summary-found = { $count ->
    [one] One thing found
   *[other] { $count } things found
  }
summary-left = { $count ->
    [one] One point nobody looked at
   *[other] { $count } points nobody looked at
  }
summary-hurried = { $count ->
    [one] One point looked at in a hurry
   *[other] { $count } points looked at in a hurry
  }
some-more = { $count ->
    [one] And one more
   *[other] And { $count } more
  }
left-must = The machine stays on the ground without it.
summary-look-again = look again
sign-means = Your signature says what you saw. It is not a legal certificate; the maker’s manual and local rules come first.
sign-hold = Hold to sign
sign-plain = Sign without holding
sign-title = Sign what you saw
sign-now = Sign
sign-busy = Signing…
sign-not-yet = Not yet
put-aside = Put aside
verdict-over = { $machine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
verdict-to-machine = More about { $machine }

## One machine

machine-over = { $engine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h · { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }
machine-why = { $count ->
    [one] see the reason
   *[other] see the { $count } reasons
  }
machine-lists = Walk round it
machine-walk = Walk: { $list }
machine-walk-on = Go on: { $list }, { $done } of { $of }
machine-open = Still open
machine-timeline = What happened
machine-timeline-none = Nothing is signed yet.
machine-limits = Limits of its engine
machine-edit = Describe it anew
export = Give its records away
exported = Written to { $place }. Anyone can verify it with nothing but the file.
put-right = Put right
put-right-how = What did you do?
put-right-how-hint = The part, the work, the torque: what the next person needs to know.
put-right-means = Your signature says that you did this work and looked at it afterwards. Where a licence is needed for it, the licensed person signs.
put-right-sign = Sign that it is right
put-right-nothing = Nothing is open at this point any more.
limit-critical = A life hangs on this value.
limit-unknown = No such limit
limit-unknown-hint = This engine’s data sheet has no such limit. Go back and choose one there.
limit-confirm = Confirm it from the manual
limit-anew = Confirm it anew
limit-confirm-how = Open the engine maker’s manual and copy what it says, also where it differs from the value here.
limit-low = Lowest { $unit }
limit-high = Highest { $unit }
limit-document = Manual
limit-document-hint = Its title and issue, as on the cover.
limit-page = Page or section
limit-sign = Sign this limit
limit-no-number = “{ $typed }” is not a number.
limit-no-number-hint = Type the value with digits, such as 12.5.

## Describing a machine

form-new = A new machine
form-edit = { $machine }, described anew
form-name = What do you call it?
form-name-hint = Any name that you will know it by.
form-engine = Type of engine
form-parts = Does it have these?
form-serials = Serial numbers, as far as you know them
form-repacked = Packed on, as its card says
form-every-days = Days until the next packing, as its manual says
form-hours = Engine hours
form-flights = Flights
form-note = Anything else worth knowing
form-sign = Sign the description
form-no-number = { $words }: “{ $typed }” is not a number.
form-no-number-hint = Type digits only, such as 41.6.

## A record

record-signature = Signature
record-by = Signed by
record-when = When
record-device = Key
record-seq = Number
record-digest = Digest
record-payload = As it was signed, word for word
record-payload-what = These are the very bytes under the signature.
finding-band = band { $band }
finding-before = Taken back: { $words }
finding-seconds = looked at for { $seconds } s
otherwise = Say it otherwise
otherwise-said = { $by } signed “{ $words }”, { $when }. That stays as it is.
otherwise-answer = What should have been said?
otherwise-reason = Why?
otherwise-means = Your later word is a record of its own, beside the first.
otherwise-sign = Sign the later word
otherwise-unknown = This record has no such finding. Go back and choose one there.

## Checking a file

verify-title = Check a file
verify-what = Somebody gave you a machine’s records? This tells who signed them, and whether anything was changed or is missing.
verify-choose = Choose the file
verify-paste = Or paste its text
verify-check = Check it
verify-busy = Checking…
verify-records = { $count ->
    [one] One record
   *[other] { $count } records
  } · { $machines }
verify-faults = What is wrong
verify-people = Who signed
verify-people-what = Compare each key with what its owner’s own device shows under Settings: only then do you know whose signature it is.

## Settings

settings-person = { $name } signs on this device
settings-thumbprint = This is your key’s thumbprint. Read it to whoever wants to be sure that a signature is yours.
settings-keychain = The key is locked by your PIN and by this device’s own keychain.
settings-no-keychain = The key is locked by your PIN.
settings-language = Language
settings-patience = Minutes before a walk steps back
settings-patience-hint = When nobody answers for longer than this, the last points are asked again.
settings-no-minutes = “{ $typed }” is not a number of minutes.
settings-no-minutes-hint = Type whole minutes, such as 10.
settings-keep = Keep these
settings-kept = Kept.
settings-pin = Change the PIN
settings-pin-change = Change it
settings-pin-changed = The new PIN holds from now on.
settings-about = About
settings-about-what = Witness Mark walks you round your machine and keeps what you signed. It is no certificate and no substitute for manual, training or judgement.

## After landing, and after working on it

after-flight = After a flight, or after work
log = Log a flight
log-title = A flight with { $machine }
log-how-long = How long did the engine run?
log-minutes = { $minutes ->
    [60] 1 h
   *[other] { $minutes } min
  }
log-other = otherwise
log-times = One of the usual times
log-tank = A tank was used up
log-total = { $flights ->
    [one] One flight
   *[other] { $flights } flights
  }{ $tanks ->
    [0] {""}
    [one] , one tank used up
   *[other] , { $tanks } tanks used up
  } so far.
log-flown = { $minutes } min, one flight
log-typed = { NUMBER($hours, maximumFractionDigits: 2) } h, { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }
log-read = meter at { NUMBER($hours, maximumFractionDigits: 2) } h, { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }
log-kept = Logged: { $words }.
log-waiting = { $count ->
    [one] One entry of time waits to be signed; your next signature signs it too.
   *[other] { $count } entries of time wait to be signed; your next signature signs them too.
  }
log-done = Done
log-undo = Take it back
log-meter = What the hour meter shows
log-meter-hint = Leave it empty to type the hours instead.
log-hours = Hours run
log-tanks = Tanks used up
log-it = Log this

## Work

work-title = I worked on it
work-several = Choose everything that was done, or will be.
work-choose = Choose what was done
work-to-plan = { $count ->
    [one] What this job means
   *[other] What these { $count } jobs mean
  }
work-back = Other jobs
work-open = “{ $title }” is not released yet. Finish it first: its list, its second look, its release.
plan-over = If you sign: { $count ->
    [one] one point
   *[other] { $count } points
  } to look at afterwards
plan-renew = Renew, never use again
plan-count = Count these back
plan-independent = Another person looks at
plan-later = Falls due later
plan-note = Anything to say about the work?
plan-note-hint = The part, its number, what was wrong.
plan-means = From your signature on the machine stays on the ground, until all of this is looked at and the work is released.
plan-sign = Sign that work began
order = Which way
order-off = Comes off
order-back = Goes back
order-nothing = Nothing has to come off for this.
exploded-part = Part:
exploded-joint = Joint:
job-open = Work not released: { $title }
job-ready = All is looked at. It can be released.
job-lacks = It still lacks
job-plan = Its order, and what goes with it
job-deeds = Go on with the work
job-walk = Walk its list
job-walk-on = Go on with its list, { $done } of { $of }
job-walk-again = Walk its list again
job-second = Second look
job-release = Release it
release-title = Release { $machine }
release-says = Your signature says that everything this work took apart or loosened was put back and looked at, and twice where a life hangs on it.
release-means = It is your own statement, not a legal certificate. Where a licence is needed for the work, the licensed person signs on their own authority. The maker’s manual and local rules come first.
release-first-flight = Run the engine up before you fly. The first flight after work is short, near the field, and looked over afterwards.
release-sign = Sign the release
release-none = No work is open
release-none-hint = This machine has nothing to release. Go back to it.

## Tightening

torque-no-number = No number to tighten to is known here.
torque-to-limit = Enter it from the manual
torque-which-tool = Which tool do you tighten with?
torque-no-tool = No torque tool is registered here yet.
torque-refused = This tool may not be used for it.
torque-watched = Mind this tool.
torque-round = round { $round } of { $rounds }
torque-all-clicked = full torque
torque-set-full = Set the tool to this · { $other } · band { $band }
torque-set-part = Set the tool to this · full torque { $full } · band { $band }
torque-nut = Nut { $nut } of { $nuts }.
torque-nut-number = Nut { $nut }:
torque-pull = Pull slowly, and stop at the click.
torque-how-far-ask = How far did it turn before the click?
torque-how-far = How far did nut { $nut } turn before the click?
torque-none = none
torque-more = more
torque-not-at-all = did not turn
torque-turn = { $turn } turn
torque-less-by-one = One eighth less
torque-more-by-one = One eighth more
torque-say-how-far = Say how far it turned
torque-clicked = It clicked
torque-next = Next: nut { $nut }, { $round }, set to { $setting }.
torque-all = Every nut has clicked. Unwind the tool.
torque-moved = How far each nut turned
torque-reading = What the tool read, if it reads
torque-reason = Why is it used or taken all the same?
torque-reason-use = Why is it used all the same?
torque-reason-first = Say why first.
torque-reason-first-hint = The reason goes into the record with every nut that this tool tightens. Or take another tool.
torque-use-all-the-same = Use it all the same
torque-reason-hint = Written into the record; the joint is watched from then on.
torque-nut-back = One nut back
torque-anew = Begin anew
torque-other-tool = Other tool
adapter = Something between the tool and the nut
adapter-fitted = An adapter or crowfoot makes the lever longer
adapter-lever = Tool: middle of grip to square
adapter-length = Adapter: square to nut
adapter-angle = Angle, degrees (0 in line)
adapter-half-first = First the adapter's sizes
adapter-half = Type both lengths and the angle: before that nothing can be set.

## Torque tools

tool-list = Torque tools
tool-list-what = A tool outside its calibration is refused, unless you say why you use it.
tool-list-none = None is registered here yet.
tool-new = Register a tool
tool-usable = may be used
tool-unusable = may not be used
tool-cycles = { $cycles } of { $allowed } clicks since its calibration
tool-back-to-point = The point
tool-name = What do you call it?
tool-name-hint = A name or the number on it.
tool-low = Lowest mark
tool-high = Highest mark
tool-unit = Unit of its scale
tool-deviation = Deviation it is allowed, percent
tool-deviation-hint = From its certificate. A good click wrench has 4.
tool-calibrated = Calibrated on
tool-calibrated-hint = Leave it empty if nobody knows.
tool-every-days = Days between calibrations
tool-every-cycles = Clicks between calibrations
tool-clicks = Clicks since the calibration, as far as known
tool-dropped = It was dropped or forced since
tool-sign = Sign the tool

## The second pair of eyes

second-title = A second pair of eyes
second-what = Another person looks at: { $joints }. Their phone reads this code, with no signal needed, under “Look for somebody else”.
second-code = Code that asks another phone for a second look
second-here = They sign on this device instead
second-reply = What they show back
second-reply-what = When they have signed, their phone shows a code. Take it in here.
second-take = Take it in
second-here-title = Another person looks, here
second-here-what = Hand the device over. Who looks must not be who did the work.
second-who = Who looks?
second-here-pin = The PIN of { $name }
second-here-sign = Sign as { $name }
second-means = Your signature says what you saw with your own eyes at these joints, and nothing more.
second-new = Somebody new on this device
second-name = Their name, as they sign
second-pin = Their own PIN
second-pin-hint = At least six digits, known to them alone.
second-add = Make their key
joint-good = As it should be
joint-wanting = Wanting
joint-note = What is wanting at “{ $joint }”?
look-title = Look for somebody else
look-what = Somebody worked on a machine and asks for your eyes. Take in the code that their phone shows under “Second look”.
look-take = Open it
look-how = Go to each joint and look, as if nobody had before you.
look-own = This was asked from your own device. Whoever did the work cannot be the second pair of eyes.
look-sign = Sign what you saw
look-reply = Show them this
look-reply-what = Their phone takes it in under “What they show back”. Only then does your look count there.
look-code = Code with your signed look
look-anew = Look for somebody else again
code-camera = Use the camera
code-camera-view = What the camera sees
code-camera-off = Stop the camera
code-no-camera = The camera cannot be used here.
code-no-camera-hint = Allow it in the device’s settings, or choose a picture of the code, or paste its text.
code-picture = Choose a picture of the code
code-text = Or paste its text
code-busy = Reading…
code-copy = Copy as text
code-copied = Copied.
code-not-copied = It could not be copied. Open the text below and copy it by hand.
code-share = Send it
code-as-text = As text
code-too-long = This is too long for a code. Send its text instead.

## Labels

machines-label = Open by its label
machines-look = Look for somebody else
label-title = Open by its label
label-what = The label that sticks on a machine opens it here.
label-open = Open it

## What falls due, and what may wait

due = Falls due
due-none = Nothing is kept here yet.
due-new = Add what falls due
due-later = later:
due-soon = soon:
due-tolerated = over, still tolerated:
due-over = over:
due-title = What falls due?
due-every = How often? Whichever comes first counts.
due-days = Days
due-done = Last done
due-done-now = It was done now
due-done-on = On
due-tolerance = How much later is still tolerated, percent
due-tolerance-hint = From the manual. 0 if nothing is said there.
due-from-due = The next counts from when it was due, not from when it was done
due-ended = It no longer falls due on this machine
due-end = Sign that it ends
due-sign = Sign this
defer = May wait
defer-may-wait = May it wait?
defer-until = Until when, at most? Whichever comes first counts.
defer-now = Now: { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h, { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }.
defer-hours = Engine hours
defer-flights = Flights in all
defer-date = Day
defer-condition = Under which condition may it fly?
defer-condition-hint = Such as: solo only, no more than half throttle.
defer-reason = Why may it wait?
defer-means = Only whoever decides on the machine may sign this. Where the maker’s manual or local rules forbid flying with the defect, it may not wait.
defer-sign = Sign that it may wait

## Components

components = Components with their own time
components-none = None is kept apart from the machine yet.
component-new = Fit a component
component-off = taken off
component-part = Which part is it?
component-name = What do you call it?
component-serial = Serial number
component-brings = Time in service that it brings
component-fit-sign = Sign that it is fitted
component-where = Where does it go?
component-take-off = Off this machine, on none
component-to = To { $machine }
component-keeps = Its own time in service goes with it.
component-move-sign = Sign the move
component-record = Its last record
component-unknown = No such component
component-unknown-hint = It is not on this machine any more. Go back to the machine.
form-not-whole = { $words }: “{ $typed }” is not a whole number.
form-not-whole-hint = Type whole digits only, such as 12.

## Papers

papers = To take away
papers-label = Label to stick on it
papers-table = Table (CSV)
papers-calendar = Calendar of what falls due
papers-sheet-a4 = Sheet to print, A4
papers-sheet-letter = Sheet to print, Letter
papers-saved = Written to { $place }.
