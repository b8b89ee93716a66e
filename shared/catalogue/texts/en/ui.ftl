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

## First start

first-title = Look before you launch
first-what = Walk round your machine before you fly, point by point, and sign what you saw. All of it stays on this device and works without a signal.
first-name = Your name, as you sign
first-begin = Make my key
first-busy = Making the key…
pin-choose = Choose a PIN
pin-hint = At least six digits. It locks the key that signs; nobody can tell it to you if you forget it.
pin-twice = The same PIN again
pin-yours = Your PIN
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
empty-demo-what = They belong to nobody, and say so wherever they appear.

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
walk-to-summary = Hear it back and sign
walk-to-summary-early = Hear it back as far as it is
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
point-said = You said: { $words }
point-said-again = You said { $words } before the interruption. Look again.
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
left-must = The machine stays on the ground without it.
look-again = look again
sign-means = Your signature says what you saw. It is not a legal certificate; the maker’s manual and local rules come first.
sign-hold = Hold to sign
sign-plain = Sign without holding
sign-title = Sign what you saw
sign-now = Sign
sign-busy = Signing…
sign-not-yet = Not yet
put-aside = Put aside, unsigned
verdict-over = { $machine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
verdict-to-machine = More about { $machine }
