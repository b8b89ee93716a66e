### The school board in a browser: its own words. Those that it shares with the app are in ui.ftl.

wall-title = School board
wall-invented = Invented, for the demonstration
wall-unreachable = The server cannot be reached.
wall-unreachable-hint = What you typed is still here. Try again when the connection is back.
wall-nothing-there = There is nothing at this address.

## Signing in

wall-sign-in = Sign in with your device
wall-step-open = Open Witness Mark on your phone, and in it: Open a code.
wall-step-scan = Scan the code on this page, or copy its text there.
wall-step-pin = Check that it names this school, and enter your PIN.
wall-sign-in-why = Your phone signs for this page for twelve hours at most. The page itself can never sign anything.
wall-code = This page’s code, to be scanned with your phone
wall-code-anew = Show a new code
wall-passphrase-open = Look with a passphrase
wall-passphrase = Passphrase
wall-passphrase-hint = It lets you look. Preparing anything takes your device.
wall-passphrase-go = Look
wall-by-passphrase = Signed in by passphrase
wall-look-only = looking only
wall-role-viewer = viewer
wall-role-pilot = pilot
wall-role-mechanic = mechanic
wall-role-instructor = instructor
wall-sign-out = Sign out

## The board

wall-beside = Beside the machines
wall-second = Second looks ({ $count })
wall-prepared = Prepared, not signed ({ $count })
wall-publish = Publish a list
wall-live-coming = Connecting…
wall-live-live = Live since { $time }
wall-live-lost = Connection lost at { $time }. What you see is from then; trying again.
wall-counts = How many of what; press to show only those
wall-count-defects = with open defects
wall-count-deferred = may wait
wall-count-due = due soon or over
wall-count-second = wait for a second look
wall-search = Search
wall-owner = Owner
wall-everybody = everybody
wall-sort = Order
wall-sort-first = what needs a person first
wall-sort-name = by name
wall-sort-owner = by owner
wall-sort-looked = longest not looked at first
wall-sort-due = due first
wall-every = Show all
wall-machines = The machines of the school
wall-verdict = Verdict
wall-eyes = Waits for a second look
wall-no-permission = A verdict sums up what was recorded. It is not permission to fly: look at the machine itself; the maker’s manual, local rules and licensed practice come first.
wall-close = Back to the board

## A machine

wall-open = Open
wall-happened = What happened
wall-job = Work not released
wall-second-code = Code for the second look
wall-defer = May wait…
wall-to-machine = To the machine
wall-left = { $count ->
    [one] One point nobody looked at
   *[other] { $count } points nobody looked at
  }

## Second looks

wall-second-title = Second look
wall-second-none = No work waits for a second pair of eyes.
wall-second-caution = Before any hand goes near: kill switch at stop and plug cap off, or the flight battery apart. Hot parts burn. Look at the joints yourself; a screen shows none of them.
wall-second-how = Somebody who did not do the work opens this code in Witness Mark, looks at each joint, and signs. It comes back here by the next sync.

## Preparing

wall-until = Until when, at most? Whichever comes first counts.
wall-now = Now: { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h, { $flights ->
    [one] one flight
   *[other] { $flights } flights
  }
wall-hours = Engine hours
wall-flights = Flights in all
wall-date = Day
wall-condition = Under which condition may it fly?
wall-condition-hint = Such as: solo only, no more than half throttle.
wall-reason = Why may it wait?
wall-defer-caution = Whoever signs this answers for it. Where the maker’s manual or local rules forbid flying with the defect, it may not wait.
wall-prepare = Prepare it for signing
wall-prepare-what = Nothing changes yet. You sign it on your own device, which shows you what would follow.
wall-sign-there = Now sign it on your device
wall-sign-there-how = Open the code in Witness Mark, read what it says there, and enter your PIN. The board follows by itself.
wall-sign-there-code = What you prepared, to be scanned with your phone
wall-signed = It waits no more: it was signed, or taken back. The board shows what holds.
wall-publish-what = Choose lists or data sheets. Each is checked at once; nothing with a fault in it can be published.
wall-publish-caution = Every member’s lists and limits follow what you publish. A wrong number can hurt: hold each against the maker’s manual.
wall-publish-title = Title
wall-publish-title-hint = The same title takes the place of the version before.
wall-publish-note = What is new?
wall-prepared-title = Prepared, not signed
wall-prepared-none = Nothing that you prepared waits to be signed.
wall-take-back = Take it back
wall-draft-deferral = { $machine }: { $title } may wait
wall-draft-publication = { $title }, version { $version }

## What the records tell

wall-lives = How long parts last
wall-lives-what = All looks at all machines of the school, taken together. They are few, and no manual: the maker’s intervals stand until somebody shortens them.
wall-worth = What the points are worth
wall-looking = How people look

## What the server refuses

wall-fault-code-gone = This code was not confirmed in time.
wall-fault-code-gone-hint = Ask for a new code.
wall-fault-no-device = A passphrase lets you look, and no more.
wall-fault-no-device-hint = Sign in with your own device: what you prepare here, you sign there.
wall-fault-looking-instructors = Only an instructor sees here how people look.
wall-fault-looking-instructors-hint = Each sees how they look on their own device; an instructor signs in here for all.
wall-fault-not-a-member = This device is no member today.
wall-fault-not-a-member-hint = Ask the school to admit this device.
wall-fault-not-instructor = Only an instructor prepares anything here.
wall-fault-not-instructor-hint = Ask an instructor, or go on looking.
wall-fault-not-yours = Somebody else prepared this.
wall-fault-not-yours-hint = Only who prepared something takes it back.
wall-fault-other-page = This was not asked by the board’s own page.
wall-fault-other-page-hint = Open the board at the server’s own address and try again there.
wall-fault-passphrase-off = This board has no passphrase.
wall-fault-passphrase-off-hint = Sign in with your device.
wall-fault-passphrase-too-often = Too many wrong passphrases. Wait { $minutes ->
    [one] one minute
   *[other] { $minutes } minutes
  }.
wall-fault-passphrase-too-often-hint = Or sign in with your device: that goes on.
wall-fault-passphrase-wrong = This is not the passphrase.
wall-fault-passphrase-wrong-hint = Try again, or sign in with your device.
wall-fault-signed-out = Nobody is signed in on this page.
wall-fault-signed-out-hint = Sign in with your device.
