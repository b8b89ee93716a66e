### Schools: members, roles, the server, the board.

role-none = no role yet
term-stands = since { $from }{ $open ->
    [no] {", until "}{ $until }
   *[yes] {""}
  }
term-ended = ended (began { $from })
published-by = { $person }, { $day }

sync-none = This school has no server on this device. Records go by file or code.
    .hint = Ask the school for its server's address, or go on without.
sync-never = Nothing was sent or fetched yet.
    .hint = Sync now, or at the next connection.
sync-done = In step with the server, { $at }.
sync-waits = The school has not admitted this device yet ({ $at }).
    .hint = Read your code out to the school's root.
sync-failed = { $at }: { $words }
    .hint = Nothing is lost: everything waits here and goes at the next try.

net-plain = the connection would not be encrypted
net-silent = nothing came within { $seconds } seconds
net-too-large = more than { $most } MB came, which no school's server sends
net-unreachable = { $why }

lie-shrunk = The server has dropped records that it had signed for.
    .hint = Tell the school. Your records are safe on this device; nothing is exchanged with this server.
lie-rewritten = The server now shows another history of the same length than the one it had signed for.
    .hint = Tell the school. Your records are safe on this device; nothing is exchanged with this server.
lie-inconsistent = What the server shows now does not go on from what it had signed for.
    .hint = Tell the school. Your records are safe on this device; nothing is exchanged with this server.
lie-other-records = The server hands out other records than those it has signed for.
    .hint = Tell the school. Your records are safe on this device; nothing is exchanged with this server.
lie-swallowed = The server said that it had taken a record, and left it out.
    .hint = Tell the school. Your records are safe on this device; nothing is exchanged with this server.
lie-other-key = The server's word is not signed with the key it had when you joined.
    .hint = Ask the school whether its server was set up anew before you follow it again.
lie-two-faced = The server tells the two of you different things.
    .hint = Tell the school. Your records are safe on this device; nothing is exchanged with this server.

receipts-good = All { $records } records that this device has a receipt for are the ones that the server signed for.
receipts-bad = The receipts do not fit what the server signed for.
compare-good = The server has told both of you the same, for { $records } records.

desk-sign-in = Somebody signs in at the school's board as you. Agree only if that is you, now, at a screen of the school.
desk-draft = Somebody prepared something at the board for you to sign.

publish-adds = { $file } is new.
publish-replaces = { $file } takes the place of the one there is.
warning-published = What your school published cannot be used by this version: { $why }

board-looked = { $list }: { $person }, { $at }
board-never = Nobody has looked at it.

imported = { $taken ->
    [0] Nothing new
    [one] One new record
   *[other] { $taken } new records
  }{ $refused ->
    [0] .
    [one] {", "}one line not taken.
   *[other] {", "}{ $refused } lines not taken.
  }
imported-line = Line { $line }: { $why }
refusal-unreadable = It is no record.
refusal-bad-signature = The signature does not fit: the record was altered, or somebody else signed.
refusal-unknown-key = Nothing tells whose key signed it.
refusal-malformed = It says something that such a record cannot say.

told-machine-enrolled = School changed

fault-no-school = This device belongs to no school.
    .hint = Found one, or join one by code or address.
fault-no-server = This school has no server on this device.
    .hint = Enter the server's address, or exchange by file or code.
fault-school-name = A school needs a name of up to 80 letters.
    .hint = Say what people call it.
fault-school-already = This device belongs to another school.
    .hint = Leave that one first.
fault-letter-signature = This code was altered: a signature in it is not good.
    .hint = Show and scan it again, straight from the other screen.
fault-letter-of-other = This code is not for this device.
    .hint = Show your own code first, and scan the answer to it.
fault-server-answer = What answers there is not a school's server.
    .hint = Check the address, with https:// at its beginning.
fault-root-stays = The root cannot leave or be ended.
    .hint = Hand the root over to another member's device first.
fault-not-your-device = This device has no say about that one.
    .hint = A key is ended by the school's root, or by another device of the same person.
fault-not-your-machine = Only its owner puts a machine under a school, or takes it out.
    .hint = Ask the person who registered it.
fault-role-missing = No role was chosen.
    .hint = Choose what the person will be: viewer, pilot, mechanic or instructor.
fault-until-passed = That last day has passed already.
    .hint = Enter a day that lies ahead, or leave it open.
fault-no-such-member = There is no such member.
    .hint = Look at the list of members.
fault-not-root = Only the school's root can do that.
    .hint = Use the root's device, or ask the person who holds it.
fault-end-reason = There is no reason.
    .hint = Say in a few words why it ends.
fault-server-address = “{ $address }” is no server's address.
    .hint = Enter it as the school writes it: school.example, or with a port, school.example:8443. Nothing goes behind that.
fault-server-plain = What goes to { $address } would not be encrypted.
    .hint = Ask the school for its address with https://. If it has none and the network is closed to others, start the program with WITNESSMARK_PLAIN_HTTP=1.
fault-draft-not-shown = What was prepared has not been shown here yet.
    .hint = Open its code again, read it, then sign.
fault-server-unreachable = The server cannot be reached: { $why }
    .hint = Everything waits here and goes at the next try. The app needs no connection.
fault-server-busy = The server is busy (status { $status }).
    .hint = Try again in a minute; nothing is lost.
fault-server-refused = The server refuses: { $words }
    .hint = { $hint }
fault-server-lies = { $words }
    .hint = Tell the school. Your records are safe on this device; nothing is exchanged with this server.
fault-server-distrusted = This server was found to contradict itself: nothing is exchanged with it.
    .hint = Speak with the school; then follow its server anew.
fault-nothing-followed = The server has not been followed yet.
    .hint = Sync once first.
fault-compare-later = The other device has seen more of the log than this one.
    .hint = Sync this one first, or show your code to the other.
fault-checkpoint-other = This is the word of another server.
    .hint = Compare with a member of the same school.
fault-desk-of-other = This code is of another school's board, or of another address.
    .hint = Sign in at your own school's board only.
fault-draft-odd = What was prepared there is nothing to be signed so.
    .hint = Have it prepared anew at the board.
fault-publish-role = Only an instructor of the school publishes lists.
    .hint = Ask an instructor.
fault-publish-title = A publication needs a title of up to 80 letters, and at least one file.
    .hint = Give it a title and choose its files.
fault-publish-large = That is too much at once (at most { $most } kB).
    .hint = Publish it in parts.
fault-publish-faults = { $where }: { $why }
    .hint = Put the file right and try again.
