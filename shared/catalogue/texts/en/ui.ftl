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
machines-walk-on = Go on walking: { $done } of { $of } looked at
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
point-last-time = Last time:
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
