# What the program says of machines, records and faults. The words of points are in
# points.ftl, those of the screens in ui.ftl.

# A day: { $day } { $month } { $year } are numbers.
day = { $day } { $month ->
    [1] January
    [2] February
    [3] March
    [4] April
    [5] May
    [6] June
    [7] July
    [8] August
    [9] September
    [10] October
    [11] November
   *[12] December
  } { $year }

# What stands before decimals: a point or a comma.
decimal-mark = .

## Cautions that hold always

always-1 = The propeller arc is a danger area: plug cap off (electric: flight battery apart) and kill switch at stop before any hand goes near the propeller.
always-2 = Let the engine cool before you touch it or use a wrench on it. Fuel vapour burns: no flames, and no phone in the hand that pours.
always-3 = The engine maker's and the wing maker's manuals and local rules come first. Numbers here are reminders: where they disagree, stop and follow the manual.
always-4 = Where a licence is needed for the work, the licensed person signs on their own authority. A signature here is your own statement, not a legal certificate.
always-5 = A full list is not a safe flight: weather, place and pilot are judged by the pilot.

## Lists, engines, parts, limits

occasion-before-flight = Before flight
occasion-second-flight = Second flight of the day
engine-two-stroke = Two-stroke engine
engine-four-stroke = Four-stroke engine
engine-electric = Electric motor
part-frame = Frame
part-harness = Harness
part-reserve = Reserve parachute
part-fuel = Fuel system
part-electrics = Electrics
part-engine = Engine
part-carburettor = Carburettor
part-exhaust = Exhaust
part-reduction = Reduction drive
part-starter = Starter
part-throttle = Throttle
part-propeller = Propeller
part-cage = Cage and netting
part-wing = Wing
band-fuel-on-board = Fuel on board
band-throttle-free-travel = Throttle free travel
band-propeller-tracking = Propeller tracking
band-idle-speed = Idle speed
band-full-throttle-speed = Full-throttle speed on the ground
band-head-nut-torque = Head nut torque
band-cht-cruise = Cylinder head temperature, cruise
band-cht-climb = Cylinder head temperature, climb
band-pack-voltage = Flight battery voltage
term-hours = engine hours
machine-unnamed = A machine nobody has described

source-document = { $document }, { $page }
source-unconfirmed = Unconfirmed ({ $why }): check it against your manual.
source-missing = Unconfirmed: enter your manual's value and page.
figure-missing = (unconfirmed: see your manual)
figure-unconfirmed = This figure is unconfirmed: your manual's value counts. Enter it with its page on the machine's screen.

## The verdict

verdict-fit = Fit to fly
verdict-limited = Fit to fly, with { $limits ->
    [one] one limit
   *[other] { $limits } limits
  }
verdict-grounded = Grounded

reason-no-description = Nobody has described this machine yet.
clears-no-description = Describe it: engine, parts, reserve.
reason-unknown-engine = The engine type “{ $engine }” is not in this program's catalogue, so its limits are unknown.
clears-unknown-engine = Choose a known engine type, or add its data sheet.
reason-never-looked = Nobody has walked round it and signed yet.
clears-never-looked = Walk round it before flight, and sign.
reason-not-today = The last full look before flight was on { $day }, not today.
clears-not-today = Walk round it today, and sign.
reason-point-missed = Not looked at: { $title }.
clears-point-missed = Look at it on a new list, and sign.
reason-open-defect = { $title }: { $words }.
clears-open-defect = Put it right and sign what was done. A later look alone does not clear it.
clears-passing = Put it right and look again: a later signed look clears it.
reason-watch-item = To be watched. { $title }: { $words }{ $looks ->
    [one] .
   *[other] , seen on { $looks } looks.
  }
clears-watch-item = A look that finds nothing clears it, or putting it right.
reason-reserve-expired = The reserve's repack fell due on { $day }.
clears-reserve-expired = Have it repacked, and enter the new date from its card.
reason-reserve-unknown = Nobody knows when the reserve was repacked.
clears-reserve-unknown = Read the date on its card, or have it repacked; enter the date.
reason-reserve-soon = The reserve's repack falls due on { $day }.
reason-limit-missing = { $band }: nobody has entered the limit.
reason-limit-unconfirmed = { $band }, { $value }: unconfirmed by any manual.
clears-limit = Enter your manual's value and page.
reason-newer-record = A record of a kind this version cannot read (“{ $kind }”). It might matter.
clears-newer-record = Install the newest version of this program.
reason-split-word = Two different records of { $person }'s device claim the same place: one of them may be false.
clears-split-word = Ask { $person }; the key may be copied or lost.
reason-refused-record = { $count ->
    [one] A record was
   *[other] { $count } records were
  } refused: the signature or the key is not good.
clears-refused-record = Ask its author to send it again.
reason-clock-doubt = A record is dated { $day }, ahead of this device's clock.
clears-clock-doubt = Set this device's date and time right.
reason-job-open = Work not released: { $title }.
clears-job-open = Finish its list, have the critical joints looked at by another person, then release it.
clears-job-ready = Everything is there: release it.
lack-inspection = Nobody has signed the list after the work yet.
lack-points = Not looked at after the work: { $titles }.
lack-points-other = The signed list after the work does not hold all its points.
lack-found = Something unserviceable was found after the work.
lack-second-look = Another person has not looked at it yet: { $joint }.
lack-wanting = The second person found it wanting: { $joint }.
reason-first-flight = First flight after work ({ $title }): stay near the field, keep height for landing without power.
reason-after-first-flight = Flown once since the work ({ $title }), and not looked at since.
clears-first-flight = Log that flight, then walk round it and sign.
reason-follow-up-due = { $by ->
    [tanks] Fly no more than { $tanks ->
        [one] one tank
       *[other] { $tanks } tanks
      } before this is due: { $title }.
    [flights] Fly no more than { $flights ->
        [one] one flight
       *[other] { $flights } flights
      } before this is due: { $title }.
    [days] Due in { $days ->
        [one] one day
       *[other] { $days } days
      }: { $title }.
   *[hours] Fly no more than { $hours } h before this is due: { $title }.
  }
reason-follow-up-over = Due now, after earlier work: { $title }.
clears-follow-up = Do it, and sign it as a job.
reason-due-soon = Due soon: { $title }, in { $by ->
    [flights] { $flights ->
        [one] one flight
       *[other] { $flights } flights
      }
    [days] { $days ->
        [one] one day
       *[other] { $days } days
      }
    [tanks] { $tanks ->
        [one] one tank
       *[other] { $tanks } tanks
      }
   *[hours] { $hours } h
  }.
reason-due-tolerated = Past due, but still tolerated: { $title }.
reason-due-over = Overdue: { $title }.
clears-due = Do it, and enter when it was done.
reason-deferred = { $title }: { $words }. It may wait; until then: { $condition }
reason-deferral-over = { $title }: { $words }. It was allowed to wait, and that time is over.
deferred-hours = Holds up to { $hours } engine hours.
deferred-flights = Holds up to flight { $flights }.
deferred-date = Holds up to { $day }.
fact-seen = { $words } · { $day }, at { $hours } h, { $person }
open-since = { $day }, at { $hours } h, by { $person }

## Walking a list

last-time = Last time: { $words }, at { $hours } h.
stepped-back = You were away for { $minutes } min, so the last { $points ->
    [one] point is
   *[other] { $points } points are
  } asked again.
stepped-back-day = This list was begun on another day, so { $points ->
    [one] its point is
   *[other] its { $points } points are
  } asked again: nobody knows what the night did.
caution-cold-wrench = Cold engine only. Small threads in soft metal: stop at the click, never a bit more. Wind the wrench back afterwards.
torque-title = { $joint }: tighten
torque-good = Every nut clicks, in the order shown, and moves about as far as the others.
torque-bad = A nut that goes on turning, binds, or moves much further than the others.
torque-why = Uneven clamping lets air in; one turn too many strips the thread.
torque-spread = { $tool }: its ±{ $deviation } % makes this { $low } to { $high } at the nut.
torque-done = Set to { $setting } with { $tool }; eighths of a turn before the click: { $eighths }
torque-done-watch = Set to { $setting } with { $tool }; eighths of a turn before the click: { $eighths }. { $watch }
torque-borne = An { $thread } stud of class { $class } is then pulled with { $low } to { $high } kN, at most { $percent } % of what makes it yield; the thread in the soft metal bears { $margin } times that. { $confirmed ->
    [yes] {""}
   *[no] (These figures are unconfirmed.)
  }
torque-not-borne = An { $thread } stud of class { $class } would be pulled with { $low } to { $high } kN, up to { $percent } % of what makes it yield; the thread in the soft metal bears { $margin } times that. Too much for this joint. { $confirmed ->
    [yes] {""}
   *[no] (These figures are unconfirmed.)
  }
torque-over = { $percent } % over the limit: the stud may be stretched and the thread pulled. Take it apart, look, and renew what had it.
stage-share = { $percent } % round
stage-check = Check round
tool-good-until = Calibrated; good until { $day }.
tool-outside-range = The setting is not on its marked scale.
tool-overdue = Its calibration ran out on { $day }.
tool-worn = It has clicked { $cycles } times since its calibration; { $allowed } are allowed.
tool-dropped = It was dropped or forced since its calibration.
tool-never-calibrated = Nobody knows when it was calibrated.
tool-calibrated-later = Its calibration is dated { $day }, which has not come yet.
tool-joint-limit = What it may give reaches what the joint bears.
tool-overridden = Used all the same, because: { $because }
movement-too-far = Nut { $nut } moved { $eighths } eighths of a turn before the click: more than half a turn.
movement-uneven = The nuts moved unevenly: from { $least } to { $most } eighths of a turn.
movement-growing = Nut { $nut } moved further than last time: { $before } then, { $now } eighths now.
judged-serviceable = Inside the band.
judged-watch = To be watched.
judged-unserviceable = Not fit to fly with.
judged-not-fitted = Not fitted.
summary-looked = You looked at { $done } of { $of } points in { $minutes } min.
summary-short-serviceable = All serviceable in { $seconds } s: { $points } points in less time than looking takes.
summary-short = Only { $seconds } s for { $points } points: less time than looking takes.
summary-short-usual = Usually they take { $seconds } s.
summary-hurried = { $points ->
    [one] One point was
   *[other] { $points } points were
  } answered in much less time than a look takes. Look again?
summary-left = { $points ->
    [one] One point was
   *[other] { $points } points were
  } not looked at.

## The timeline and records

told-machine = Described: { $words }
told-inspection = { $list }: { $worst ->
    [unserviceable] found unserviceable
    [watch] something to watch
   *[other] nothing found
  }
told-defect-rectified = Put right: { $words }
told-correction = Corrected: { $words }
told-limit-confirmed = Limit entered from a manual: { $words }
told-time-logged = Run or flown: { $words } h
told-job-begun = Work begun: { $words }
told-second-look = A second person looked
told-job-released = Work released
told-defect-deferred = Allowed to wait: { $words }
told-component-moved = Component moved: { $words }
told-due-item = Falls due again and again: { $words }
due-left = { $by ->
    [flights] { $flights ->
        [one] One flight left
       *[other] { $flights } flights left
      }
    [days] { $days ->
        [one] One day left
       *[other] { $days } days left
      }
    [tanks] { $tanks ->
        [one] One tank left
       *[other] { $tanks } tanks left
      }
   *[hours] { $hours } h left
  }
due-over = { $by ->
    [flights] Due now{ $flights ->
        [0] {""}
        [one] , one flight past
       *[other] , { $flights } flights past
      }
    [days] Due now{ $days ->
        [0] {""}
        [one] , one day past
       *[other] , { $days } days past
      }
    [tanks] Due now{ $tanks ->
        [0] {""}
        [one] , one tank past
       *[other] , { $tanks } tanks past
      }
   *[hours] Due now, { $hours } h past
  }
due-forecast = At this rate of flying about { $at }; four times out of five between { $low } and { $high }.
component-time = { $hours } h, { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }
told-unknown = A record of a kind that this version cannot read.
kind-member = A person and their device
kind-device-vouched = Another device of the same person
kind-key-revoked = A key ended
kind-machine = Description of a machine
kind-inspection = Inspection
kind-defect-rectified = Something put right
kind-correction = Correction
kind-limit-confirmed = Limit from a manual
kind-time-logged = Time in service
kind-job-begun = Work begun
kind-second-look = Second look
kind-job-released = Release
kind-defect-deferred = Deferral
kind-tool = Torque tool
kind-component-moved = Component moved
kind-due-item = Recurring item
kind-school-founded = School founded
kind-school-joined = Device joins a school
kind-member-admitted = Member admitted
kind-member-ended = Membership ended
kind-root-handed = Root handed over
kind-machine-enrolled = Machine under a school
kind-catalogue-published = Lists published
role-viewer = Viewer
role-pilot = Pilot
role-mechanic = Mechanic
role-instructor = Instructor
says-time = { $hours } h, { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }, { $tanks ->
    [one] one tank
   *[other] { $tanks } tanks
  }; hour meter: { $reading }.
says-job = { $title }. { $note }
says-second-look = { $joints ->
    [one] One joint
   *[other] { $joints } joints
  } looked at by a second person.
says-released = The inspections of this work are complete. This is the signatory's own statement, not a legal certificate.
says-deferred = It may wait, because: { $reason }. Until then: { $condition }
says-tool = { $name }, marked from { $low } to { $high }.
says-component = { $name } { $fitted ->
    [on] fitted
   *[off] taken off
  }, its own time { $hours } h.
says-due = { $title }
says-school-founded = The school “{ $name }” begins; this device is its root.
says-school-joined = This device joins the school { $school }; its root may end this device's key.
says-member-admitted = { $name } belongs to the school: { $role }, from { $from }{ $until ->
    [empty] {""}
   *[other] {" "}until { $until }
  }.
says-member-ended = The membership ended: { $reason }
says-root-handed = Device { $device } is the school's root now.
says-machine-enrolled = { $school ->
    [empty] The machine leaves its school.
   *[other] The machine is under the roles of the school { $school }.
  }
says-published = “{ $title }”, version { $version }, { $files ->
    [one] one file
   *[other] { $files } files
  }, for all members of the school.
says-member = { $name } signs with this device.
says-vouched = The same person holds device { $device } too.
says-revoked = The key of device { $device } ended: { $reason }
says-machine = { $name }, engine { $engine }, { $hours } h, { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }.
says-rectified = Put right: { $how }
says-correction = { $title } should read “{ $words }”: { $reason }
says-limit = { $band }: from { $low } to { $high }; { $document }, { $page }.
signature-good = The signature is good: this is what was signed.
signature-bad = The signature does not fit: the record was altered, or somebody else signed.
signature-unknown-key = Nothing here tells whose key this is.
signature-revoked = Signed after the key was ended.
signature-not-checked = Nobody has checked the signature.

## Verifying a file

verify-good = { $records ->
    [one] The one record is
   *[other] All { $records } records are
  } as signed, and none is missing between them.
verify-bad = { $faults ->
    [one] One fault
   *[other] { $faults } faults
  } in { $records ->
    [one] one record
   *[other] { $records } records
  }. Do not rely on this file.
verify-unreadable = Line { $line } is no record: { $why }
    .hint = Ask the sender for the file again; do not edit it.
verify-bad-signature = Line { $line }, record { $record }: the signature does not fit. The record was altered after signing, or somebody else signed it.
    .hint = Do not rely on it. Ask device { $device }'s owner for the record as they signed it.
verify-unknown-key = Line { $line }, record { $record }: no record in this file states the key of device { $device }.
    .hint = Ask the sender for the whole file, with the people who signed.
verify-revoked-key = Line { $line }, record { $record }: signed by device { $device } after its key was ended.
    .hint = Do not rely on it: somebody may be using a lost device.
verify-malformed = Line { $line }, record { $record }: says something that a record of kind “{ $kind }” cannot say ({ $why }).
    .hint = Do not rely on it. Its author's program may be faulty.
verify-missing-record = Device { $device }: of its chain about this machine, what lies from record { $from } to record { $to } is not in the file.
    .hint = Ask the sender for the whole file: something was left out.
verify-broken-chain = Line { $line }, record { $record }: does not follow from the record before it.
    .hint = A record was put in another's place. Ask device { $device }'s owner for the whole file.
verify-forked-chain = Line { $line }, records { $record } and { $other } of device { $device } claim the same place.
    .hint = One of the two is false, or the key was copied. Ask its owner.

## The database set aside

warning-rescued = The database was damaged and has been set aside as { $file }. { $records } records and your key were brought over; { $lost } rows were lost.
warning-rescued-without-key = The database was damaged and has been set aside as { $file }. { $records } records were brought over, { $lost } rows were lost; the key could not be saved, so a new one is made: tell those who know the old one.

## Faults: what went wrong, and what to do

fault-internal = The program made a mistake: { $why }
    .hint = Nothing you entered before is lost. Try once more; if it stays, tell the makers these words.
fault-disk-full = There is no room left on this device, so the last step was not kept.
    .hint = Make room (photos and films take most), then do the last step again. Everything before it is kept.
fault-disk = The device's storage does not answer: { $why }
    .hint = Everything up to the last answer is kept. Look whether the storage is full, read-only or unplugged, then try again.
fault-database-damaged = The database is damaged: { $why }
    .hint = Close the program and start it again: it sets the damaged file aside and brings over what can be saved.
fault-database-busy = Another program is using the database.
    .hint = Close the other window or command, then try again.
fault-database-newer = This data was written by a newer version (format { $found }; this program knows { $known }).
    .hint = Install the newest version. Nothing was changed.
fault-catalogue = The catalogue has a fault at { $where }: { $why }
    .hint = Mend the file (`witnessmark validate FILE` shows every fault), then start again.
fault-no-randomness = This system gives no randomness, so no key can be made: { $why }
    .hint = Restart the device; without randomness nothing can be signed safely.
fault-no-such = There is no “{ $what }” here.
    .hint = Look at the list of machines and choose one of them.
fault-ambiguous = “{ $what }” fits more than one machine: { $which }
    .hint = Give more of the id, or the whole name.
fault-no-such-point = This list has no point “{ $point }”.
    .hint = `witnessmark points` shows the points of the list.
fault-no-such-answer = The point “{ $point }” has no answer “{ $answer }”.
    .hint = Choose one of the point's own answers; `witnessmark points` shows them.
fault-no-such-occasion = There is no list “{ $occasion }”.
    .hint = The lists are: { $known }.
fault-no-such-language = There is no language “{ $language }”.
    .hint = Choose one of the languages shown.
fault-answer-missing = No answer was given.
    .hint = Choose what you see, or enter the value.
fault-answer-kind = The point “{ $point }” is answered by { $what ->
    [torque] tightening it, with a tool
    [value] a value with its unit
   *[words] one of its own answers
  }.
    .hint = A measured point takes a value with its unit; every other takes one of its own answers.
fault-unit = The unit does not fit: { $why }
    .hint = Give the value in one of the units shown.
fault-nothing-to-undo = There is no answer to take back.
    .hint = Look at the first point.
fault-nothing-to-sign = Nothing has been looked at yet.
    .hint = Look at the points first.
fault-look-again-first = “{ $point }” is to be looked at again after the interruption.
    .hint = Answer it once more, then sign.
fault-walk-closed = This inspection is closed: it was signed or put aside.
    .hint = Open the list again to begin a new one.
fault-walk-of-another-day = The last answer was given on another day.
    .hint = Open the list again: it asks what must be looked at again.
fault-note-too-long = The text is longer than { $most } characters.
    .hint = Say it shorter; what you wrote is still there.
fault-photo-unreadable = This file is not a picture that can be read.
    .hint = Use a JPEG, PNG or WebP picture.
fault-photo-too-large = This picture is too large.
    .hint = Use one below 40 MB and 60 megapixels.
fault-no-photo = The picture is not on this device.
    .hint = It may still be on the device that took it.
fault-name-missing = A name is needed: up to 80 letters.
    .hint = Enter the name that others know you by.
fault-pin-weak = The PIN needs at least { $least } digits, not all the same.
    .hint = Choose digits that nobody guesses, and that you remember: nobody can reset it.
fault-pin-wrong = That is not the PIN.{ $seconds ->
    [0] {""}
   *[other] {" "}Wait { $seconds } s before the next try.
  }
    .hint = Try again. Nothing is erased, however often you try.
fault-pin-wait = After several wrong PINs there is a wait: { $seconds } s more.
    .hint = Wait, then enter the PIN once more. Nothing is erased.
fault-pin-needed = Signing needs the PIN.
    .hint = Give it with --pin-file FILE, or run the command in a terminal to be asked.
fault-already-begun = This device has its key already.
    .hint = Use it; to begin anew, choose another data folder.
fault-not-begun = Nobody signs on this device yet.
    .hint = Do the first start: your name and a PIN.
fault-key-missing = This device's key cannot be read.
    .hint = Records already signed stand. Begin anew in another data folder, and tell those who know the old key.
fault-keychain-missing = The system's keychain, which helps to guard the key, does not answer ({ $why }).
    .hint = Unlock the keychain, or sign in to the desktop session in which the key was made.
fault-patience-out-of-range = The time before a list steps back is 1 to 120 minutes.
    .hint = Enter a number of minutes.
fault-description-missing = No description was given.
    .hint = Enter at least name and engine type.
fault-machine-name = The machine needs a name of up to 60 letters.
    .hint = Enter what people call it.
fault-engine-unknown = There is no engine type “{ $engine }”.
    .hint = Choose one of the engine types shown.
fault-part-unknown = There is no part “{ $part }”.
    .hint = Choose among the parts shown.
fault-number-negative = A number below nothing cannot be: { $what }.
    .hint = Enter 0 or more.
fault-repack-interval = The time between repacks is 1 to { $most } days.
    .hint = Enter the days that the reserve's manual gives.
fault-repack-in-future = The repack date lies in the future.
    .hint = Enter the date on the packing card.
fault-limit-negative = The { $end ->
    [low] lower
   *[high] upper
  } end of the limit lies below nothing.
    .hint = Enter 0 or more.
fault-limit-end-missing = The { $end ->
    [low] lower
   *[high] upper
  } end of the limit is missing.
    .hint = Enter it as the manual has it.
fault-limit-crossed = The lower end lies above the upper end.
    .hint = Swap the two, or look whether a unit is wrong.
fault-source-missing = The manual and the page are needed.
    .hint = Enter the manual's title and issue, and the page where the value stands.
fault-nothing-open = Nothing is open at “{ $point }”.
    .hint = Look at the machine's screen for what is open.
fault-rectify-how-missing = Say what was done.
    .hint = One sentence: what was renewed, tightened or replaced.
fault-correction-reason-missing = Say why.
    .hint = One sentence: how the first word came to be wrong.
fault-not-an-inspection = This record is not an inspection.
    .hint = Choose an inspection in the timeline.
fault-reading-behind = The hour meter's reading lies behind what is known: { $hours } h.
    .hint = Read it once more. If the known hours are wrong, describe the machine anew with the right ones.
fault-fuel-burned = That can't be the fuel this time burned.
    .hint = Give the fuel that was used up, in litres or gallons, with the engine hours it was used in; or leave it out.
fault-time-too-much = More than { $hours } hours or { $flights } flights at once cannot be.
    .hint = Enter what was run and flown since the last entry, day by day.
fault-nothing-logged = Nothing was entered.
    .hint = Enter hours, flights, a used-up tank, or the hour meter's reading.
fault-log-signed = There is no entry that still waits for a signature.
    .hint = What is signed stays: enter the hour meter's right reading as a new entry.
fault-deferral-words-missing = A deferral needs a condition and a reason.
    .hint = Say how it may be flown meanwhile, and why it may wait.
fault-deferral-limit-missing = A deferral needs a limit.
    .hint = Enter engine hours, a flight number or a day up to which it holds.
fault-deferral-passed = That limit has passed already (now { $hours } h, { $flights } flights).
    .hint = Enter one that lies ahead.
fault-not-entitled-owner = Only the person who registered this machine may let a defect wait.
    .hint = Ask its owner; or put the defect right.
fault-not-entitled = This machine is under { $school ->
    [empty] a school that this device does not know
   *[other] { $school }
  }. { $role ->
    [none] Who is no member there may
    [role-viewer] A viewer there may
    [role-pilot] A pilot there may
    [role-mechanic] A mechanic there may
   *[role-instructor] An instructor there may
  } not { $right ->
    [look] sign inspections of it
    [work] sign work on it
    [second-look] be its second pair of eyes
    [defer] let its defects wait
   *[publish] publish lists
  }.
    .hint = Ask an instructor of the school. What you found wrong you can sign at any time.
fault-day = “{ $day }” is not a day.
    .hint = Write it as 2026-05-02.
fault-due-title = What falls due needs a title of up to 120 letters.
    .hint = Say what is to be done.
fault-due-interval = There is no interval.
    .hint = Enter hours, flights, tanks or days, each more than 0.
fault-due-tolerance = The tolerance is 0 to 100 percent of the interval.
    .hint = Enter 0 if it may never be late.
fault-due-done-ahead = When it was last done cannot lie ahead (now { $hours } h).
    .hint = Enter the hours, flights and day at which it was done.
fault-component-name = The component needs a name.
    .hint = Enter what people call it.
fault-component-not-here = This component is not on this machine.
    .hint = Look at its machine's screen.
fault-no-assembly = How the engine “{ $engine }” is put together is not in the catalogue.
    .hint = Use its maker's manual for the work; the list before flight still holds.
fault-job-missing = No work was chosen.
    .hint = Choose what was done.
fault-no-such-job = That work is not known: { $why }
    .hint = Choose among the jobs shown.
fault-job-open-already = Other work is not released yet: { $title }.
    .hint = Finish and release it first; then begin the next.
fault-no-job-open = No work is open on this machine.
    .hint = Begin it first: say what was done.
fault-job-lacks = It cannot be released yet. { $lack }
    .hint = The machine's screen shows all that is still missing.
fault-tool-name = The tool needs a name.
    .hint = Enter what people call it, or its number.
fault-tool-range = The tool's range is none.
    .hint = Enter its lowest and highest marked value, both in one unit of torque, lowest first.
fault-tool-interval = The time and the clicks between calibrations must be more than 0.
    .hint = Common values are 365 days and 5000 clicks.
fault-tool-calibrated-ahead = The calibration lies in the future.
    .hint = Enter the date on its certificate.
fault-no-such-tool = There is no such tool here.
    .hint = Register the tool first, with its range and calibration.
fault-tool-refused = This tool may not be used for it. { $why }
    .hint = Take another tool. If there is none, say why you use it: the reason is written down, and the joint is watched.
fault-torque = The torque cannot be worked out: { $why }
    .hint = Look at the limit, the tool's range and the adapter's length.
fault-torque-nuts = Each of the { $nuts } nuts needs its movement: none to two turns, in eighths.
    .hint = Go round once more and tell every nut.
fault-torque-slip = { $reading } cannot be meant here: it looks like { $meant } read in the wrong unit. Wanted is { $band }.
    .hint = Read the tool's scale again: pounds by inches or by feet? If a nut really got that much, stop: it and its stud are damaged.
fault-limit-needed = { $band }: there is no number to tighten to.
    .hint = Enter your manual's value and page on the machine's screen, then come back.
fault-code-unreadable = This is not one of our codes, or not all of it.
    .hint = Hold the phone still and nearer, let the whole code be in the picture; or send the text instead.
fault-code-other = This code answers another request.
    .hint = Show your request again and let the other phone sign for this one.
fault-second-signature = The signature in this code does not fit.
    .hint = Let the other person show it again from their own phone.
fault-second-same-person = The second look must be another person's.
    .hint = Ask somebody who neither did the work nor signed its list.
fault-second-joint-missing = Every joint needs a word: as it should be, or wanting.
    .hint = Look at each joint shown, and say what you see.
fault-second-not-needed = Nothing in this work needs another person.
    .hint = Finish its list and release it.
fault-second-too-early = The list after the work is not signed yet.
    .hint = Walk it and sign it first; then let another person look.
fault-bundle-empty = There is no record in this file.
    .hint = Choose a file that was exported from this program.
fault-demo-here = The invented machines are here already.
    .hint = They are in the list of machines.
fault-file = The file { $file } cannot be read or written: { $why }
    .hint = Look whether the path is right and the folder writable.
fault-answers-file = The answers in { $file } cannot be read: { $why }
    .hint = Give JSON: {"{"} "point-id": "answer-id", "measured-point": {"{"} "value": 4, "unit": "L" {"}"} {"}"}.
fault-answers-missing = { $count ->
    [one] One mandatory point has
   *[other] { $count } mandatory points have
  } no answer in the file: { $points }
    .hint = Add them, or give --leave-missing to sign without them: the machine is then grounded.
fault-input = The input cannot be used: { $why }
    .hint = { $help }
fault-no-such-computation = There is no computation “{ $name }”.
    .hint = There are: { $known }.
fault-call-unknown = This call cannot be read: { $why }
    .hint = The screen and the program may be of different versions: load the page again.
fault-address = The address { $address } cannot be used: { $why }
    .hint = Choose another port with --port, or 0 for any.

## Why a value is unconfirmed, as data sheets say it most often

why-common-practice-no-source = common practice, no source
why-the-maker-s-manual-gives-it-no-common-figure = the maker's manual gives it: no common figure
why-the-propeller-maker-s-manual-gives-it-no-common-figure = the propeller maker's manual gives it: no common figure
why-depends-on-the-propeller-and-the-gear-ratio-no-common-figure = depends on the propeller and the gear ratio: no common figure
why-depends-on-the-battery-and-the-propeller-no-common-figure = depends on the battery and the propeller: no common figure
why-compare-with-a-new-spring-no-common-figure = compare with a new spring: no common figure
