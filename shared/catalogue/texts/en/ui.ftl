# The screens' own words. What is looked at, found and judged is said by the core.

app-name = Witness Mark

## Opening what a code is about

code-open = Open a code
code-open-what = A machine’s label, a record sheet, what another phone shows you, or what the school’s board asks you to sign.
code-open-it = Open it
code-open-another = Open another code

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
machines-verify = Check a file, or take it in
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
settings-keep = Keep
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
    [one] One entry waits to be signed; your next signature signs it too.
   *[other] { $count } entries wait to be signed; your next signature signs them too.
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

machines-look = Look for somebody else

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

## Another device of somebody

first-as = I use it on another device already
first-as-title = Another device of yours
first-as-back = I am new here
first-as-what = On the device that you have, open School, then “Another device of mine”: it shows a code. Take it in here, and this device signs as you, with a key of its own.
first-as-take = Take it in
first-as-taken = Your other device’s code is taken in. Now a PIN for this one.
first-as-anew = Take in another code
first-as-other = That is not what your other device shows.
first-as-other-hint = Take the code from its School page, under “Another device of mine”.
device-title = Another device of mine
device-step-read = On the new device choose “I use it on another device already”, and let it read this code.
device-step-back = The new device then shows a code of its own: take that in here, and sign that it is yours.
device-step-last = This device shows an answer: the new device takes it in, signs, and shows one last code.
device-shows = What the other device shows
device-take = Take it in
device-vouch = Is this device yours?
device-compare = The other device shows this code
device-means = Your signature says that you hold both devices. Whatever the other one signs is then signed by you.
device-sign = Sign that it is mine
device-vouched = Show this to the other device
device-vouched-code = Code that says the other device is yours
device-vouched-what = It takes it in on the page where its own code stands. Until then the other device is nobody’s.
device-anew = Begin again with another device
device-last = What the new device shows last
device-last-what = It says in turn that this device is yours: only then can this one end its key, should it be lost.
device-back = One more code, for your first device
device-back-code = Code that says your first device is yours
device-back-what = Your first device takes it in where it stands now. Then each of the two can end the other’s key, should it be lost.
device-done = Done

## The school

school = School
school-over = { $role ->
    [empty] Not admitted yet
   *[other] { $role }
  }{ $root ->
    [yes] {" · this device is the root: it admits members"}
   *[no] {""}
  }
school-own-code = This device’s code, to be read out
school-deeds = What you can do here
school-no-role = Nobody has admitted this device yet. Show its code to whoever holds the school’s root, or read it out.
school-yours = You and your devices
school-show-code = Show who I am
school-show-code-what = Whoever holds the school’s root reads this code to admit this device, or to admit it anew.
school-code = Code that says who holds this device
school-none = No school yet
school-none-what = The app needs no school. In one, members have roles, an instructor sees the machines under it, and lists and data sheets come to everybody. All of it works without a signal; a server only makes it come sooner.
school-ways = Ways into a school
join-by-code = Join by code
join-by-address = Join by address
found-one = Found a school
found-title = Found a school
found-what = A school is a signed list of who may do what on the machines under it.
found-name = What is it called?
found-root = This device becomes its root: it alone admits members and ends them. Your machines come under the school. The root can be handed over later.
found-sign = Sign that it is founded
join-show = Show this code to whoever holds the school’s root, or send it as text.
join-answer = What they show back
join-answer-what = When they have admitted you, their device shows an answer. Take it in here.
join-take = Take it in
join-no-answer = That is not an answer to your code.
join-no-answer-hint = Show your code to the school’s root first, and take in what that device shows then.
join-sign-title = The answer is taken in
join-sign-what = It is checked when you sign: whether it is for this device, and who signed it.
join-means = Your signature puts your machines under the school and its roles. You can leave again; what was signed stays.
join-sign = Sign that I join
join-other-answer = Take in another answer
leave-school = Leave the school
leave-title = Leave { $school }
leave-what = Your machines go with you, and nothing more is sent to the school’s server. What you signed as a member stays signed.
leave-sign = Sign that I leave

## A school by its server’s address

address = Address of the server
address-hint = As the school tells it. It begins with https://
address-what = The server shows its school first. Nothing is sent or signed before you have compared it.
address-look = Look who is there
address-busy = Asking…
address-says = A server says that it serves
address-root = Its root is held by { $name }.
address-compare = The school’s code
address-compare-how = Compare it with what the school tells you in another way: on paper, or read out by somebody there. Another code is another school.
address-not-admitted = It has not admitted this device yet. After you sign you wait in its list; read this code to whoever holds its root.
address-sign = Sign that I follow { $school }
address-other = Another address
address-of-server = The school’s server
address-change = Another address

## Members

members = { $count ->
    [one] One member
   *[other] { $count } members
  }
members-before = { $count ->
    [one] One former member
   *[other] { $count } former members
  }
member-you = { $name } (you)
member-devices = { $count ->
    [0] no device
    [one] one device
   *[other] { $count } devices
  }
member-their-devices = { $count ->
    [one] Device
   *[other] Devices
  }
member-code-what = Each device shows its own code on its School page: read out, it tells which one it is.
member-deeds = What the root can do
member-unknown = No such member
member-unknown-hint = Go back to the school and choose one there.
member-no-longer = No longer a member. What was signed before stands.
device-here = this device
device-root = holds the root
device-ended = its key was ended
role-as-what = As what?
role-until = Last day
role-until-hint = Leave it empty if there is none.
role-change = Change the role
role-change-title = { $name }, from now on
role-sign = Sign the role
as-pilot = Pilot
as-mechanic = Mechanic
as-instructor = Instructor
as-viewer = Viewer
may-pilot = walks round machines and signs what was seen
may-mechanic = also signs work, and is a second pair of eyes
may-instructor = also decides what may wait, and publishes lists
may-viewer = reads, and signs nothing on machines of the school
end-member = End the membership
end-title = End the membership of { $name }
end-what = From your signature on nothing that they sign counts on the school’s machines. What they signed before stands.
end-reason = Why?
end-sign = Sign that it ends
key-lost = It is lost: end its key
key-title = End a lost device’s key
key-what = Nothing that this device of { $name } signs from now on counts anywhere, whoever holds it. It cannot be taken back; its person goes on with another device.
key-reason = What happened?
key-reason-hint = Such as: lost at the field on Sunday.
key-sign = Sign that its key ends
hand-root = Hand it the root
hand-title = Hand the root to { $name }
hand-what = From your signature on only that device of { $name } admits and ends members. This one can’t take it back.
hand-sign = Sign the root over
admit = Admit somebody
admit-what = Whoever asks shows a code on their device, under School, “Join by code”.
admit-by-code = Take in their code
admit-take = Take it in
admit-member = This device is a member already. If you sign, it gets another role.
admit-compare = Their device’s code
admit-compare-how = Let { $name } read the code out from their own screen: it must be this one, letter by letter.
admit-sign = Sign: admit { $name }
admit-anew = Admit somebody else
admitted = { $name } is admitted
admitted-code = Code that admits them
admitted-what = { $server ->
    [yes] { $name } gets it from the server at the next sync, or takes this code in.
   *[no] Show { $name } this code. They take it in where their own code stands.
  }
waiting-list = Waiting at the server
waiting-list-none = Nobody waits there.
waiting-list-again = Ask again

## Machines under the school

enrolled = Machines
enrolled-none = None is here yet.
enrolled-yes = under the school
enrolled-no = not under the school
enrolled-own = yours
machine-under = Under { $school }
machine-not-under = Not under { $school }
enrol-title = Put { $machine } under the school
enrol-what = In { $school } roles decide who signs work on it and who says that a defect may wait. Its instructors see its records.
enrol-sign = Sign it in
enrol-out-title = Take { $machine } out of the school
enrol-out-what = Then { $school }’s roles no longer hold for it, and what is signed from then on stays here.
enrol-out-sign = Sign it out
enrol-records = It is a record like any other: it stays in the machine’s history.
enrol-not-yours = Only whoever registered it can do that.
enrol-no-school = This device belongs to no school.

## Lists and data sheets from the school

published = Lists and data sheets from the school
published-none = Nothing is published yet.
published-version = version { $version }
published-used = in use
published-before = replaced since
publish = Publish to the members
publish-what = Choose lists or data sheets. Each is checked before you sign it, and comes to every member with your signature.
publish-choose = Choose the files
publish-more = Choose more files
publish-without = Leave out
publish-faults = { $count ->
    [one] One fault
   *[other] { $count } faults
  }
publish-good = Good. This will be version { $version }.
publish-where = { $file }, line { $line }
publish-title = Title
publish-title-hint = The same title takes the place of the version before.
publish-note = What is new?
publish-sign = Sign, and publish
folder-engines = a data sheet of an engine
folder-fragments = points of a list
folder-assembly = how an engine comes apart
folder-drawings = a drawing
folder-texts = words, in { $language }
school-file = For whoever runs the server
school-file-what = A server needs this file to serve the school. It holds no key and no PIN.
school-file-give = Give the school’s file

## The server

server-title = The server
server-none = This school has no server here.
server-more = More about the server
sync-none-short = No server here: records go by file or code.
sync-failed-short = The last sync did not come through.
sync-records = { $count ->
    [one] one record waits
   *[other] { $count } records wait
  }
sync-photos = { $count ->
    [one] one picture waits
   *[other] { $count } pictures wait
  }
sync-stuck = { $count ->
    [one] one refused
   *[other] { $count } refused
  }
sync-now = Sync now
sync-busy = Syncing…
stuck = { $count ->
    [one] One record that the server would not take
   *[other] { $count } records that the server would not take
  }
stuck-what = They are safe on this device and count here.
stuck-retry = Send them again
truth = Does the server tell the truth?
truth-what = { $count ->
    [0] The server has signed for nothing yet.
    [one] This device has the server’s signed word for one record. It cannot be dropped or changed unnoticed.
   *[other] This device has the server’s signed word for { $count } records, each in its place. None of them can be dropped or changed unnoticed.
  }
truth-check = Check all of it
truth-busy = Checking…
truth-proof = The proof
truth-root = Root of the tree over them
truth-signed = The server’s signed word
compare = Compare with another member
compare-what = A server that shows each of two members another story is found out when the two compare. No signal is needed.
compare-code = Code with what the server told this device
compare-theirs = What their device shows
compare-take = Compare
anew = Follow the server anew
anew-what = Forgets everything that the server said, and reads its log from the beginning at the next sync. Your own records stay. Do this only after the school has said why.
anew-do = Forget what it said
refused = Lines not taken
refused-none = Every line that came was a good record.
refused-what = The server handed out these lines, and they are no good records. They count for nothing.
refused-line = The line as it came
refused-away = Put it away

## The board

board = The board
board-own = All machines at a glance
board-counts = { $count ->
    [one] One machine
   *[other] { $count } machines
  }: { $grounded } grounded, { $limited } with limits, { $fit } fit
board-none = No machine is here yet.
board-shown = { $count } of { $of } shown
board-filters = Show only
board-machine = Machine
board-first = What needs a person first
board-open = Open
board-due = Falls due
board-looked = Last look
board-defect = Defect:
board-watched = Watch:
board-deferred = May wait:
board-job = Work open:
board-second = { $count ->
    [one] A second look waits
   *[other] { $count } second looks wait
  }
board-second-by = worked on by { $name }
board-people = Members and their machines
board-no-machine = no machine
filter-state = Verdict
filter-all = all
filter-owner = Owner
filter-everybody = everybody
filter-due = Something due
filter-second = Second look waits
state-grounded = grounded
state-limited = with limits
state-fit = fit

## What a board asks to be signed

desk-sign-in-title = Sign in at the board?
desk-address = The board that asks:
desk-means = The board then shows you the school’s machines. It can prepare what you may sign; only this device signs it.
desk-sign-in = Yes, sign me in
desk-signed-in = You are signed in at the board
draft-over = Prepared at the board of { $school }
draft-means = Read it as if you had written it: your signature makes it yours.
draft-sign = Sign this
draft-body = As it will be signed, word for word
draft-signed = Signed, and sent to the school

## Taking records in, and giving all away

take-in = Take it in
take-in-what = The good records of this file come into this device, beside what is here. Nothing here is changed.
take-in-do = Take its records in
take-in-busy = Taking in…
take-in-known = { $count ->
    [one] One was here already.
   *[other] { $count } were here already.
  }
everything = Everything on this device
everything-what = All records of all machines in one file: to keep, or for another device. It holds no key and no PIN.
everything-give = Give everything

## Charts

chart-name = { $title }: { $count ->
    [one] one reading
   *[other] { $count } readings
  }
chart-keys = The left and right arrow keys go from reading to reading. Enter opens the reading’s record.
axis-hours = { $hours } h
chart-before = The reading before
chart-after = The reading after
drawn-title = What the marks mean
drawn-reading = A reading
drawn-far-off = A reading far from the line: shown, not left out
drawn-band = Within the band
drawn-limit = The limit
drawn-limit-unconfirmed = The limit, not confirmed by a document
drawn-line = Which way it goes, with its room for doubt
drawn-neither = A line with its room for doubt where nothing sure is told: chance alone would draw it
drawn-reach = If it goes on like this: where it reaches the limit, from the earliest to the latest
drawn-change = A step: the level before, and after
drawn-mark = Work, or a part fitted or taken off; its number stands in the list under the chart
drawn-steps = Share still serviceable, step by step as found
drawn-fitted = A smooth curve through it, with its room for doubt
drawn-failed = Found failed: some time between two looks
drawn-whole = Still whole when last looked at

## Trends

drifts = What drifts
drifts-no-readings = No reading that could be followed yet. They come with every walk, and with engine logs.
drifts-too-little = { $count ->
    [one] One measure has readings, but still too few to say which way it goes.
   *[other] { $count } measures have readings, but each still too few to say which way it goes.
  }
drifts-nothing = { $told ->
    [one] Nothing drifts: one measure is followed.
   *[other] Nothing drifts: { $told } measures are followed.
  } { $few ->
    [0] { "" }
    [one] For one more there is still too little to say.
   *[other] For { $few } more there is still too little to say.
  }
trends-title = All trends
trends-over = { $machine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
trends-none = Nothing to follow yet. Whatever you measure on a walk is followed here over the engine hours, and so is what you take in from engine logs.
trends-what = Each reading stands over the engine hours at which it was taken. Touch a chart to read one.
trend-limit = limit { NUMBER($value, maximumFractionDigits: 2, useGrouping: 0) } { $unit }
trend-from = from { NUMBER($hours, maximumFractionDigits: 0) } h on
trend-far-off = far from the line
trend-unsigned = not signed yet
trend-marks = { $count ->
    [one] What the stroke on the line of hours is
   *[other] What the { $count } strokes on the line of hours are
  }
trend-hours = Engine hours
trend-reading = Reading
trend-table = { $count ->
    [one] The one reading, as a table
   *[other] The { $count } readings as a table
  }

## Engine logs

readings-title = Take in an engine log
readings-what = The file that your engine instrument wrote: a table with a column of time and columns of temperature or engine speed (CSV: text with a comma, a semicolon or a tab between its columns).
readings-step-file = Choose the file.
readings-step-columns = Say how its columns are read. That is asked once, and remembered.
readings-step-figures = See what it tells, when and how warm it was.
readings-step-sign = Sign it: its figures join the trends.
readings-kept = The file stays with you. Its few figures are signed and kept: highest temperatures, highest and idle speed, time run.
readings-choose = Choose the file
readings-other = Another file
readings-busy = Reading…
readings-guessed = Is it read rightly?
readings-guessed-what = This is only a guess from the headings. Look at each column, and change what is wrong.
readings-remembered = Read as last time?
readings-remembered-what = A file with these headings was taken in before. You said then that it is read so:
readings-change = Read it otherwise
readings-confirm = Yes, read it so
readings-signs = Between columns: { $separator ->
    [tab] a tab
   *[other] “{ $separator }”
  }. Before decimals: “{ $decimal }”. Both are seen in the file.
readings-holds = What it holds
readings-left-out = left out
readings-time = Time
readings-time-form = How time is written
readings-told = What it tells
readings-rows = { $rows ->
    [one] One row read, { $lasts }.
   *[other] { $rows } rows read, { $lasts }.
  }
readings-unread = { $count ->
    [one] In one row something can’t be read; the rest of it counts.
   *[other] In { $count } rows something can’t be read; the rest of them counts.
  }
readings-hours = Engine hours then
readings-on = Day
readings-outside = How warm it was outside
readings-outside-why = With it, head temperatures are brought to one and the same day, so that summer and winter can be compared. Leave it empty if you don’t know.
readings-sign = Sign what it told
readings-again = Taken in already
readings-again-what = This very file was taken in before. Counted twice, it would bend the trend.
readings-to-record = Open its record

## What all records tell

fleet-title = What the records tell
fleet-own = All machines on this device
fleet-more = More that the records tell
fleet-what = All looks at all machines known here, taken together. They are few, and no manual: the maker’s intervals stand until somebody shortens them.
fleet-lives = How long parts last
fleet-none = No look at a part is signed yet. With every walk signed, more is known here.
fleet-counts = { $failed ->
    [0] None found failed
    [one] One found failed
   *[other] { $failed } found failed
  }, of { $lives ->
    [one] one
   *[other] { $lives }
  } on { $machines ->
    [one] one machine
   *[other] { $machines } machines
  }
life-in-force = In force: look at it every
life-asked-for = The findings ask for every
life-asked = The findings ask to look at it
life-every-flight = before every flight
life-suggested = None is in force here. The findings suggest every
life-stays-so = The findings don’t shorten it.
life-every = { NUMBER($hours, maximumFractionDigits: 1) } h
life-chance = so that the chance of a failure that nobody has seen stays under { NUMBER($percent, maximumFractionDigits: 1) } %
life-only-shorter = An interval found here only ever shortens by itself. To lengthen one is for the maker’s manual and a person.
life-caption = Share still serviceable, over the part’s own hours
life-share = Share still serviceable
life-table = The numbers of the curve
life-ask = Ask for another chance or interval
life-chance-borne = Chance of an unseen failure
life-in-force-hours = Interval in force, hours
share = { NUMBER($percent, maximumFractionDigits: 1) } %
share-between = { NUMBER($percent, maximumFractionDigits: 0) } % ({ NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) } %)

## How people look, and what the points are worth

looking-title = How people look
looking-none = Nobody has signed enough walks for this yet.
looking-nothing = Nothing stands out.
looking-you = { $name } (you)
looking-inspections = { $count ->
    [one] One walk signed
   *[other] { $count } walks signed
  }; compared on { $looks ->
    [one] one look
   *[other] { $looks } looks
  } at points that others look at too
looking-hurried = Hurried, in a hundred points
looking-points = Hurried most often:
looking-seconds = Half of the points took less than
looking-own-seconds = { NUMBER($seconds, maximumFractionDigits: 1) } s
looking-fleet-seconds = { NUMBER($seconds, maximumFractionDigits: 1) } s, others
looking-found = Found wrong, in a hundred points
looking-own-count = { NUMBER($count, maximumFractionDigits: 1) }
looking-fleet-count = { NUMBER($count, maximumFractionDigits: 1) }, others
worth-title = What the points are worth
worth-none = No walk is signed yet.
worth-sort-often = Often found wrong ({ $count })
worth-sort-never = Never found wrong ({ $count })
worth-sort-plain = Found wrong now and then ({ $count })
worth-sort-few = Looked at too seldom to say ({ $count })
worth-scale = Each line goes from none to { $most } in 100 looks: the stroke is the share found wrong, the bar its room for doubt.
worth-counts = { $looks ->
    [one] one look
   *[other] { $looks } looks
  }{ $machines ->
    [0] { "" }
    [one] : { $watch } × to watch, { $unserviceable } × unserviceable, on one machine
   *[other] : { $watch } × to watch, { $unserviceable } × unserviceable, on { $machines } machines
  }
worth-seconds = Half of the looks took less than { NUMBER($seconds, maximumFractionDigits: 1) } s; { NUMBER($hurried, maximumFractionDigits: 0) } in a hundred were hurried.

## Load, fuel, air and wind before a flight

flight = Load, fuel and air
flight-what = Answer what matters today, and leave out the rest. Each answer is held against its limit at once.
flight-reminders = The manuals of wing and engine and local rules come first: these numbers are reminders. Where they disagree, stop and follow the manual.
flight-part-load = What goes up?
flight-part-mix = What goes into the tank?
flight-part-fuel = How long does the fuel last?
flight-part-air = How thin is the air?
flight-part-wind = How strong is the wind?
flight-left-out = Left out
flight-leave-out = Leave this out
flight-reckoning = Reckoning…
flight-lacks = Still to be typed: { $values }.
flight-lacks-hint = Type what is missing, or leave that question out.
flight-keep = Keep it for this flight
flight-kept = Kept. It stands in the verdict, and your next signature signs it.
flight-keep-means = It stands in the verdict at once, and your next signature signs it.
flight-verdict = With this:
flight-unit = Unit: { $value }
flight-pad-away = Keys away
flight-pad-next = Next
flight-pad-done = Done
flight-value-pilot = You, dressed to fly
flight-value-machine = Machine and wing, no fuel
flight-value-fuel = Fuel at take-off
flight-value-ballast = Ballast and the rest
flight-value-inTank = In the tank now
flight-value-addFuel = Petrol that you add
flight-value-target = Parts of petrol to one of oil
flight-value-ratioInTank = Parts of petrol in the tank, to one of oil
flight-value-oil = Oil that you poured in
flight-value-minutes = Time to fly
flight-value-reserve = Left at landing, at least
flight-value-elevation = Height of the field
flight-value-setting = Altimeter setting, QNH
flight-value-pressure = Pressure at the field, QFE
flight-value-temperature = Temperature
flight-value-dew = Dew point, if known
flight-value-mean = Mean wind
flight-value-gust = Strongest gust
flight-value-mostMean = Mean wind, at most
flight-value-mostGust = Gusts, at most
flight-value-mostFactor = Gust over mean, at most
flight-span = { $low } to { $high } { $unit }
flight-wing = The wing carries { $range } with a motor.
flight-wing-without = Without one { $range }.
flight-source = { $document }{ $page ->
    [empty] {""}
   *[other] , { $page }
  }.
flight-wing-unsourced = Nobody has said where that is written: unconfirmed.
flight-no-wing = What the wing may carry is not described yet.
flight-to-wing = Describe it from its manual
flight-caution-pour = Fuel vapour: no flames, and no phone in the hand while pouring. Read the number, put the phone away, then pour.
flight-pour = Oil to pour in
flight-poured = It is in
flight-no-ratio = The engine’s data sheet has no ratio: take it from the maker’s manual.
flight-plain = What is in the tank has no oil in it
flight-oil-hint = After pouring. Leave it empty before.
flight-minutes = min
flight-to-log = Log what a flight burned
flight-by = What do you read?
flight-by-altimeter = An altimeter’s setting (QNH: the pressure reduced to sea level)
flight-by-field = A barometer at the field (QFE: the pressure right here)
flight-measured = From { $time }. Type it anew once you have measured again.
flight-own-limits = Your own limits
flight-school = The school’s limits:
flight-school-mean = mean { $value }
flight-school-gust = gusts { $value }
flight-school-factor = gust over mean { $value }
flight-caution-weather = Wind at one moment is not the weather: sky, forecast and terrain are yours to judge.
flight-row-not-yet = Not worked out today
flight-row-well = Worked out today: all within limits

## What the wing may carry, and what the machine weighs

form-load = Weight, and what the wing may carry
form-load-what = For the sum before each flight. Leave empty what nobody knows.
form-weight = The machine’s weight
form-weight-hint = Frame, engine, harness, wing and reserve, no fuel.
form-wing-with = All-up weight with a motor, by the wing’s manual
form-wing-without = All-up weight without a motor
form-wing-without-hint = Where the manual states both.
form-wing-low = Least
form-wing-high = Most
form-wing-document = Title and issue of the wing’s manual
form-wing-only-free = The range with a motor is missing.
form-wing-only-free-hint = Type the range with a motor too: that is the one this machine is held against.

## Fuel that a flight burned

log-burned-open = Fuel burned, if you measured it
log-burned = Fuel burned
log-burned-hint = What was in the tank before, less what is in it now. Later flights reckon from it.

## Choices of this device

language-name = English
settings-choices = On this device
settings-aloud = Read points aloud
settings-aloud-what = The caution first, then what to look at, what good and what bad looks like. It stops when you answer.
settings-no-voice = This device has no voice for { $language }, so nothing is read aloud.
settings-units = Units that you read and type in
settings-units-what = Each can be changed where it is typed. What a manual states is shown as it states it, and in yours.
settings-unit-mass = Weight
settings-unit-volume = Fuel
settings-unit-speed = Wind
settings-unit-temperature = Temperature
settings-unit-pressure = Air pressure
settings-unit-height = Height
settings-unit-torque = Torque
settings-unit-sheet = as the data sheet has it
settings-unit-option = { $sign }, { $words }
folder-none = in no folder, for all machines
folder-texts-other = words, in another language
folder-language = Which language?
folder-language-hint = Its code, such as nl or pt-BR.

## Read aloud

aloud = Read aloud
spoken-plus-minus = plus or minus
spoken-at-most = at most
spoken-at-least = at least
spoken-range = { $low } to { $high }
spoken-unit-kg = { $count ->
    [one] kilogram
   *[other] kilograms
  }
spoken-unit-lb = { $count ->
    [one] pound
   *[other] pounds
  }
spoken-unit-L = { $count ->
    [one] litre
   *[other] litres
  }
spoken-unit-mL = { $count ->
    [one] millilitre
   *[other] millilitres
  }
spoken-unit-gal-us = { $count ->
    [one] US gallon
   *[other] US gallons
  }
spoken-unit-gal-br = { $count ->
    [one] imperial gallon
   *[other] imperial gallons
  }
spoken-unit-L-h = { $count ->
    [one] litre per hour
   *[other] litres per hour
  }
spoken-unit-km-h = { $count ->
    [one] kilometre per hour
   *[other] kilometres per hour
  }
spoken-unit-kt = { $count ->
    [one] knot
   *[other] knots
  }
spoken-unit-m-s = { $count ->
    [one] metre per second
   *[other] metres per second
  }
spoken-unit-Cel = { $count ->
    [one] degree Celsius
   *[other] degrees Celsius
  }
spoken-unit-degF = { $count ->
    [one] degree Fahrenheit
   *[other] degrees Fahrenheit
  }
spoken-unit-K = kelvin
spoken-unit-hPa = { $count ->
    [one] hectopascal
   *[other] hectopascals
  }
spoken-unit-inHg = { $count ->
    [one] inch of mercury
   *[other] inches of mercury
  }
spoken-unit-bar = bar
spoken-unit-psi = pounds per square inch
spoken-unit-m = { $count ->
    [one] metre
   *[other] metres
  }
spoken-unit-mm = { $count ->
    [one] millimetre
   *[other] millimetres
  }
spoken-unit-in = { $count ->
    [one] inch
   *[other] inches
  }
spoken-unit-ft = { $count ->
    [one] foot
   *[other] feet
  }
spoken-unit-N-m = { $count ->
    [one] newton metre
   *[other] newton metres
  }
spoken-unit-lbf-in = { $count ->
    [one] pound-force inch
   *[other] pound-force inches
  }
spoken-unit-lbf-ft = { $count ->
    [one] pound-force foot
   *[other] pound-force feet
  }
spoken-unit-kgf-cm = { $count ->
    [one] kilogram-force centimetre
   *[other] kilogram-force centimetres
  }
spoken-unit-kgf-m = { $count ->
    [one] kilogram-force metre
   *[other] kilogram-force metres
  }
spoken-unit-V = { $count ->
    [one] volt
   *[other] volts
  }
spoken-unit-s = { $count ->
    [one] second
   *[other] seconds
  }
spoken-unit-min = { $count ->
    [one] minute
   *[other] minutes
  }
spoken-unit-h = { $count ->
    [one] hour
   *[other] hours
  }
spoken-unit-per-minute = { $count ->
    [one] revolution per minute
   *[other] revolutions per minute
  }
spoken-unit-deg = { $count ->
    [one] degree
   *[other] degrees
  }
spoken-unit-percent = percent
