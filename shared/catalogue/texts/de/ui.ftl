# German, "du". The screens' own words.

app-name = Witness Mark
language-name = Deutsch

## Opening what a code is about

code-open = Code öffnen
code-open-what = Der Aufkleber einer Maschine, ein Protokoll, was ein anderes Handy dir zeigt, oder was du für die Tafel der Schule unterschreiben sollst.
code-open-it = Öffnen
code-open-another = Anderen Code öffnen

## Waiting and faults

waiting = Einen Moment …
waiting-failed = Das war nicht zu zeigen
try-again = Noch einmal
close = Schließen
fault-unreachable = Das Programm hinter dieser Seite antwortet nicht.
fault-unreachable-hint = Was du eingegeben hast, ist noch hier. Sieh nach, ob das Programm noch läuft, starte es sonst neu und versuch es noch einmal.
fault-refused = Das Programm hat diese Seite abgewiesen (Code { $status }).
fault-refused-hint = Öffne die Adresse, die das Programm beim Start ausgegeben hat: Jeder Start hat eine neue.
fault-unexpected-hint = Was du eingegeben hast, ist noch hier. Versuch es noch einmal; geht es wieder nicht, schließ das Programm und öffne es neu.

## Going places

to-machines = Deine Maschinen
to-machine = Die Maschine
to-record = Der Eintrag

## First start

first-title = Sieh hin, bevor du startest
first-what = Mach vor dem Flug den Rundgang um deine Maschine, Punkt für Punkt, und unterschreib, was du gesehen hast. Alles bleibt auf diesem Gerät und geht ohne Netz.
first-name = Dein Name, wie du unterschreibst
first-begin = Schlüssel anlegen und beginnen
first-busy = Der Schlüssel entsteht …
pin-choose = Wähl eine PIN
pin-hint = Mindestens sechs Ziffern. Sie schützt den Schlüssel, der unterschreibt; vergisst du sie, kann niemand sie dir sagen.
pin-twice = Dieselbe PIN noch einmal
pin-yours = Deine PIN
pin-old = Die bisherige PIN
pins-differ = Die beiden PINs sind nicht gleich.
pins-differ-hint = Gib die PIN an beiden Stellen noch einmal ein.

## Machines

machines-title = Deine Maschinen
machines-over = { $name } unterschreibt hier · liegt auf diesem Gerät
machines-others = Andere Maschinen
machines-more = Mehr
machines-add = Maschine anlegen
machines-verify = Datei prüfen oder einlesen
machines-settings = Einstellungen
machines-walk = Rundgang: { $machine }
machines-walk-on = Weiter mit { $machine }: { $done } von { $of }
machines-walking = Rundgang begonnen: { $done } von { $of } angesehen
hours = { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
invented = erfunden, zum Ausprobieren
empty-what = Hier ist noch keine Maschine.
empty-add = Meine Maschine anlegen
empty-demo = Mit erfundenen ausprobieren
empty-demo-what = Sie gehören niemandem und sind als erfunden gekennzeichnet.

## Meanings and looks

means-serviceable = brauchbar
means-watch = zu beobachten
means-unserviceable = unbrauchbar
means-not-fitted = nicht verbaut
look-open = noch nicht angesehen
look-done = angesehen
look-again = noch einmal anzusehen
look-left = vorerst ausgelassen
reasons = Warum
cautions = Warnhinweise
caution = Vorsicht:

## The walk

walk-title = Rund um { $machine }
walk-over = { $list } · { $done } von { $of } angesehen
walk-begin = Beginnen: { $point }
walk-go-on = Weiter: { $point }
walk-to-summary = Durchsehen und unterschreiben
walk-to-summary-early = Bisheriges durchsehen
walk-here = Hier stehst du.
walk-count = { $done } von { $of }
minutes = { $minutes } min

## A point

point-unknown = Diese Liste hat keinen solchen Punkt.
point-unknown-hint = Geh zurück zum Rundgang und wähl dort einen Punkt.
point-to-map = Zurück zum Rundgang.
point-place = Station { $place } von { $places } · Punkt { $point } von { $points }
point-critical = Kritisch: Hieran hängt ein Leben
point-good = Gut:
point-bad = Schlecht:
point-said = Du hast gesagt: „{ $words }“
point-said-again = Vor der Unterbrechung hast du gesagt: „{ $words }“. Sieh noch einmal hin.
point-kept = Gespeichert: { $words }. { $done } von { $of } angesehen.
point-left = Diesen hast du vorerst ausgelassen.
answers = Was siehst du?
answer-yours = das hast du gesagt
tools = Sonst noch hier
tool-photo = Foto
tool-note = Mehr sagen
tool-leave = Auslassen
tool-go-on = Weiter
tool-step-back = Zurück
note-title = Mehr sagen
note-words = Was hast du gesehen bei „{ $point }“?
note-keep = Notiz speichern
photo-number = Foto { $number }
photo-open = Foto { $number } öffnen
keys = Zifferntasten
keys-erase = Letzte Ziffer löschen
measure-value = Messwert; der Sollbereich ist { $band }
measure-band = Sollbereich: { $band }
measure-unit = Einheit
measure-enter = Aufschreiben

## Said back, and signed

summary-title = Was du gesehen hast
summary-back = Der Rundgang
summary-preview = Wenn du jetzt unterschreibst
summary-found = { $count ->
    [one] Eine Sache gefunden
   *[other] { $count } Sachen gefunden
  }
summary-left = { $count ->
    [one] Ein Punkt, den niemand angesehen hat
   *[other] { $count } Punkte, die niemand angesehen hat
  }
summary-hurried = { $count ->
    [one] Ein Punkt, in Eile angesehen
   *[other] { $count } Punkte, in Eile angesehen
  }
some-more = { $count ->
    [one] Und noch eins
   *[other] Und noch { $count }
  }
left-must = Ohne ihn bleibt die Maschine am Boden.
summary-look-again = noch einmal ansehen
sign-means = Deine Unterschrift sagt, was du gesehen hast. Sie ist keine amtliche Bescheinigung; das Handbuch des Herstellers und die örtlichen Vorschriften gehen vor.
sign-hold = Zum Unterschreiben halten
sign-plain = Unterschreiben ohne Halten
sign-title = Unterschreib, was du gesehen hast
sign-now = Unterschreiben
sign-busy = Wird unterschrieben …
sign-not-yet = Noch nicht
put-aside = Beiseitelegen
verdict-over = { $machine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
verdict-to-machine = Mehr zu { $machine }

## One machine

machine-over = { $engine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h · { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }
machine-why = { $count ->
    [one] Grund ansehen
   *[other] { $count } Gründe ansehen
  }
machine-lists = Rundgang machen
machine-walk = Rundgang: { $list }
machine-walk-on = Weiter: { $list }, { $done } von { $of }
machine-open = Noch offen
machine-timeline = Verlauf
machine-timeline-none = Noch ist nichts unterschrieben.
machine-limits = Grenzwerte des Motors
machine-edit = Neu beschreiben
export = Einträge weitergeben
exported = Geschrieben nach { $place }. Zum Prüfen braucht niemand mehr als die Datei.
put-right = Beheben
put-right-how = Was hast du gemacht?
put-right-how-hint = Das Teil, die Arbeit, das Drehmoment: was der Nächste wissen muss.
put-right-means = Deine Unterschrift sagt, dass du diese Arbeit gemacht und danach angesehen hast. Verlangt sie eine Berechtigung, unterschreibt, wer sie hat.
put-right-sign = Behebung unterschreiben
put-right-nothing = An diesem Punkt ist nichts mehr offen.
limit-critical = An diesem Wert hängt ein Leben.
limit-unknown = Kein solcher Grenzwert
limit-unknown-hint = Das Datenblatt dieses Motors hat keinen solchen Grenzwert. Geh zurück und wähl dort einen.
limit-confirm = Aus dem Handbuch bestätigen
limit-anew = Neu bestätigen
limit-confirm-how = Schlag das Handbuch des Motorherstellers auf und übernimm, was dort steht, auch wenn es vom Wert hier abweicht.
limit-low = Kleinster Wert, { $unit }
limit-high = Größter Wert, { $unit }
limit-document = Handbuch
limit-document-hint = Titel und Ausgabe, wie auf dem Umschlag.
limit-page = Seite oder Abschnitt
limit-sign = Grenzwert unterschreiben
limit-no-number = „{ $typed }“ ist keine Zahl.
limit-no-number-hint = Gib den Wert in Ziffern ein, etwa 12,5.

## Describing a machine

form-new = Eine neue Maschine
form-edit = { $machine }, neu beschrieben
form-name = Wie nennst du sie?
form-name-hint = Irgendein Name, an dem du sie erkennst.
form-engine = Motortyp
form-parts = Was davon hat sie?
form-serials = Seriennummern, soweit du sie kennst
form-repacked = Gepackt am, laut Packnachweis
form-every-days = Tage bis zum nächsten Packen, laut Handbuch
form-hours = Motorstunden
form-flights = Flüge
form-note = Was sonst wissenswert ist
form-sign = Beschreibung unterschreiben
form-no-number = { $words }: „{ $typed }“ ist keine Zahl.
form-no-number-hint = Gib nur Ziffern ein, etwa 41,6.

## A record

record-signature = Unterschrift
record-by = Unterschrieben von
record-when = Wann
record-device = Schlüssel
record-seq = Nummer
record-digest = Prüfsumme
record-payload = Wie unterschrieben, Wort für Wort
record-payload-what = Genau diese Bytes stehen unter der Unterschrift.
finding-band = Sollbereich { $band }
finding-before = Zurückgenommen: { $words }
finding-seconds = { $seconds } s angesehen
otherwise = Anders sagen
otherwise-said = { $by } unterschrieb „{ $words }“, { $when }. Das bleibt, wie es ist.
otherwise-answer = Was hätte es heißen sollen?
otherwise-reason = Warum?
otherwise-means = Dein späteres Wort ist ein eigener Eintrag neben dem ersten.
otherwise-sign = Späteres Wort unterschreiben
otherwise-unknown = Dieser Eintrag hat keinen solchen Befund. Geh zurück und wähl dort einen.

## Checking a file

verify-title = Datei prüfen
verify-what = Jemand hat dir die Einträge einer Maschine gegeben? Hier siehst du, wer sie unterschrieben hat und ob etwas geändert wurde oder fehlt.
verify-choose = Datei wählen
verify-paste = Oder ihren Text einfügen
verify-check = Prüfen
verify-busy = Wird geprüft …
verify-records = { $count ->
    [one] Ein Eintrag
   *[other] { $count } Einträge
  } · { $machines }
verify-faults = Was nicht stimmt
verify-people = Wer unterschrieben hat
verify-people-what = Vergleich jeden Schlüssel mit dem, was das Gerät des Besitzers selbst unter Einstellungen zeigt: Erst dann weißt du, wessen Unterschrift es ist.

## Settings

settings-person = { $name } unterschreibt auf diesem Gerät
settings-thumbprint = Das ist der Fingerabdruck deines Schlüssels. Lies ihn vor, wenn jemand sicher sein will, dass eine Unterschrift von dir ist.
settings-keychain = Den Schlüssel schützen deine PIN und der Schlüsselbund dieses Geräts.
settings-no-keychain = Den Schlüssel schützt deine PIN.
settings-language = Sprache
settings-patience = Minuten, bis ein Rundgang zurückgeht
settings-patience-hint = Antwortet länger niemand, werden die letzten Punkte noch einmal abgefragt.
settings-no-minutes = „{ $typed }“ ist keine Zahl von Minuten.
settings-no-minutes-hint = Gib ganze Minuten ein, etwa 10.
settings-keep = Speichern
settings-kept = Gespeichert.
settings-pin = PIN ändern
settings-pin-change = Ändern
settings-pin-changed = Ab jetzt gilt die neue PIN.
settings-about = Über das Programm
settings-about-what = Witness Mark führt dich um deine Maschine und bewahrt, was du unterschrieben hast. Es ist keine Bescheinigung und kein Ersatz für Handbuch, Ausbildung oder Urteilsvermögen.

## After landing, and after working on it

after-flight = Nach einem Flug oder einer Arbeit
log = Flug eintragen
log-title = Ein Flug mit { $machine }
log-how-long = Wie lange lief der Motor?
log-minutes = { $minutes ->
    [60] 1 h
   *[other] { $minutes } min
  }
log-other = anders
log-times = Eine der üblichen Zeiten
log-tank = Eine Tankfüllung verbraucht
log-total = Bisher { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }{ $tanks ->
    [0] {""}
    [one] , eine Tankfüllung verbraucht
   *[other] , { $tanks } Tankfüllungen verbraucht
  }.
log-flown = { $minutes } min, ein Flug
log-typed = { NUMBER($hours, maximumFractionDigits: 2) } h, { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }
log-read = Stundenzähler bei { NUMBER($hours, maximumFractionDigits: 2) } h, { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }
log-kept = Eingetragen: { $words }.
log-waiting = { $count ->
    [one] Ein Eintrag wartet auf die Unterschrift; deine nächste Unterschrift gilt auch für ihn.
   *[other] { $count } Einträge warten auf die Unterschrift; deine nächste Unterschrift gilt auch für sie.
  }
log-done = Fertig
log-undo = Zurücknehmen
log-meter = Was der Stundenzähler zeigt
log-meter-hint = Lass es leer, um stattdessen die Stunden einzugeben.
log-hours = Gelaufene Stunden
log-tanks = Tankfüllungen
log-it = Eintragen

## Work

work-title = Daran gearbeitet
work-several = Wähl alles, was getan wurde oder wird.
work-choose = Wähl, was getan wurde
work-to-plan = { $count ->
    [one] Was diese Arbeit bedeutet
   *[other] Was diese { $count } Arbeiten bedeuten
  }
work-back = Andere Arbeiten
work-open = „{ $title }“ ist noch nicht freigegeben. Bring das zuerst zu Ende: Liste, Zweitkontrolle, Freigabe.
plan-over = Wenn du unterschreibst: { $count ->
    [one] ein Punkt
   *[other] { $count } Punkte
  } danach anzusehen
plan-renew = Erneuern, niemals wieder verwenden
plan-count = Nachzählen
plan-independent = Eine andere Person sieht sich an
plan-later = Später fällig
plan-note = Etwas zur Arbeit zu sagen?
plan-note-hint = Das Teil, seine Nummer, was nicht stimmte.
plan-means = Ab deiner Unterschrift bleibt die Maschine am Boden, bis all das angesehen und die Arbeit freigegeben ist.
plan-sign = Beginn unterschreiben
order = Welcher Weg
order-off = Zerlegen
order-back = Zusammenbauen
order-nothing = Hierfür muss nichts ab.
exploded-part = Teil:
exploded-joint = Verbindung:
job-open = Arbeit nicht freigegeben: { $title }
job-ready = Alles ist angesehen. Sie kann freigegeben werden.
job-lacks = Noch fehlt
job-plan = Reihenfolge und was dazugehört
job-deeds = Weiter mit der Arbeit
job-walk = Liste durchgehen
job-walk-on = Weiter mit der Liste, { $done } von { $of }
job-walk-again = Liste noch einmal durchgehen
job-second = Zweitkontrolle
job-release = Freigeben
release-title = { $machine } freigeben
release-says = Deine Unterschrift sagt, dass alles, was diese Arbeit gelöst oder zerlegt hat, wieder zusammengebaut und angesehen wurde, und zweimal dort, wo ein Leben daran hängt.
release-means = Das ist deine eigene Erklärung, keine amtliche Bescheinigung. Wo die Arbeit eine Berechtigung verlangt, unterschreibt, wer sie hat, in eigener Verantwortung. Das Handbuch des Herstellers und die örtlichen Vorschriften gehen vor.
release-first-flight = Mach vor dem Flug einen Standlauf. Der erste Flug nach der Arbeit ist kurz, in Platznähe, und danach wird alles angesehen.
release-sign = Freigabe unterschreiben
release-none = Keine Arbeit ist offen
release-none-hint = An dieser Maschine gibt es nichts freizugeben. Geh zu ihr zurück.

## Tightening

torque-no-number = Hier ist keine Zahl bekannt, auf die angezogen wird.
torque-to-limit = Aus dem Handbuch eingeben
torque-which-tool = Mit welchem Werkzeug ziehst du an?
torque-no-tool = Hier ist noch kein Drehmomentwerkzeug angelegt.
torque-refused = Dieses Werkzeug darf dafür nicht benutzt werden.
torque-watched = Achte auf dieses Werkzeug.
torque-round = Runde { $round } von { $rounds }
torque-all-clicked = volles Drehmoment
torque-set-full = Werkzeug hierauf einstellen · { $other } · Sollbereich { $band }
torque-set-part = Werkzeug hierauf einstellen · volles Drehmoment { $full } · Sollbereich { $band }
torque-nut = Mutter { $nut } von { $nuts }.
torque-nut-number = Mutter { $nut }:
torque-pull = Zieh langsam, und hör beim Klick auf.
torque-how-far-ask = Wie weit drehte sie sich vor dem Klick?
torque-how-far = Wie weit drehte sich Mutter { $nut } vor dem Klick?
torque-none = nicht
torque-more = mehr
torque-not-at-all = drehte sich nicht
torque-turn = { $turn } Drehung
torque-less-by-one = Ein Achtel weniger
torque-more-by-one = Ein Achtel mehr
torque-say-how-far = Sag, wie weit sie sich drehte
torque-clicked = Es hat geklickt
torque-next = Als Nächstes: Mutter { $nut }, { $round }, Einstellung { $setting }.
torque-all = Jede Mutter hat geklickt. Entspann das Werkzeug.
torque-moved = Wie weit sich jede Mutter drehte
torque-reading = Was das Werkzeug anzeigte, falls es anzeigt
torque-reason = Warum wird es trotzdem benutzt oder so übernommen?
torque-reason-use = Warum wird es trotzdem benutzt?
torque-reason-first = Sag zuerst, warum.
torque-reason-first-hint = Der Grund steht im Eintrag bei jeder Mutter, die dieses Werkzeug anzieht. Oder nimm ein anderes Werkzeug.
torque-use-all-the-same = Trotzdem benutzen
torque-reason-hint = Kommt in den Eintrag; die Verbindung ist von da an zu beobachten.
torque-nut-back = Eine Mutter zurück
torque-anew = Neu beginnen
torque-other-tool = Anderes Werkzeug
adapter = Etwas zwischen Werkzeug und Mutter
adapter-fitted = Ein Adapter oder Hahnenfußschlüssel macht den Hebel länger
adapter-lever = Werkzeug: Griffmitte bis Vierkant
adapter-length = Adapter: Vierkant bis Mutter
adapter-angle = Winkel in Grad (0 gestreckt)
adapter-half-first = Zuerst die Maße des Adapters
adapter-half = Gib beide Längen und den Winkel ein: Vorher lässt sich nichts einstellen.

## Torque tools

tool-list = Drehmomentwerkzeuge
tool-list-what = Ein Werkzeug außerhalb seiner Kalibrierung wird abgelehnt, es sei denn, du sagst, warum du es benutzt.
tool-list-none = Hier ist noch keines angelegt.
tool-new = Werkzeug anlegen
tool-usable = darf benutzt werden
tool-unusable = darf nicht benutzt werden
tool-cycles = { $cycles } von { $allowed } Klicks seit der Kalibrierung
tool-back-to-point = Der Punkt
tool-name = Wie nennst du es?
tool-name-hint = Ein Name, oder die Nummer darauf.
tool-low = Kleinster Skalenwert
tool-high = Größter Skalenwert
tool-unit = Einheit der Skala
tool-deviation = Erlaubte Abweichung, Prozent
tool-deviation-hint = Vom Kalibrierschein. Ein guter Drehmomentschlüssel hat 4.
tool-calibrated = Kalibriert am
tool-calibrated-hint = Lass es leer, wenn es niemand weiß.
tool-every-days = Tage zwischen Kalibrierungen
tool-every-cycles = Klicks zwischen Kalibrierungen
tool-clicks = Klicks seit der Kalibrierung, soweit bekannt
tool-dropped = Seitdem heruntergefallen oder überlastet
tool-sign = Werkzeug unterschreiben

## The second pair of eyes

second-title = Ein zweites Paar Augen
second-what = Eine andere Person sieht sich an: { $joints }. Ihr Handy liest diesen Code, ganz ohne Netz, unter „Für jemanden hinsehen“.
second-code = Code, der ein anderes Handy um eine Zweitkontrolle bittet
second-here = Stattdessen auf diesem Gerät
second-reply = Was dir zurückgezeigt wird
second-reply-what = Nach der Unterschrift zeigt das andere Handy einen Code. Lies ihn hier ein.
second-take = Einlesen
second-here-title = Hier sieht eine andere Person hin
second-here-what = Gib das Gerät weiter. Hinsehen darf nicht, wer die Arbeit gemacht hat.
second-who = Wer sieht hin?
second-here-pin = Die PIN von { $name }
second-here-sign = Unterschreiben als { $name }
second-means = Deine Unterschrift sagt, was du an diesen Verbindungen mit eigenen Augen gesehen hast, und nichts weiter.
second-new = Jemand Neues auf diesem Gerät
second-name = Name, mit dem unterschrieben wird
second-pin = Eigene PIN dieser Person
second-pin-hint = Mindestens sechs Ziffern, die nur diese Person kennt.
second-add = Schlüssel anlegen
joint-good = Wie es sein soll
joint-wanting = Mangelhaft
joint-note = Was ist mangelhaft an „{ $joint }“?
look-title = Für jemanden hinsehen
look-what = Jemand hat an einer Maschine gearbeitet und bittet um deine Augen. Lies den Code ein, den das andere Handy unter „Zweitkontrolle“ zeigt.
look-take = Öffnen
look-how = Geh zu jeder Verbindung und sieh hin, als hätte es noch niemand getan.
look-own = Das wurde von deinem eigenen Gerät angefragt. Wer die Arbeit gemacht hat, kann nicht das zweite Paar Augen sein.
look-sign = Gesehenes unterschreiben
look-reply = Zeig das zurück
look-reply-what = Das andere Handy liest es ein unter „Was dir zurückgezeigt wird“. Erst dann zählt deine Zweitkontrolle dort.
look-code = Code mit deiner unterschriebenen Zweitkontrolle
look-anew = Für jemand anderen hinsehen
code-camera = Kamera benutzen
code-camera-view = Was die Kamera sieht
code-camera-off = Kamera aus
code-no-camera = Die Kamera lässt sich hier nicht benutzen.
code-no-camera-hint = Erlaub sie in den Einstellungen des Geräts, oder wähl ein Bild des Codes, oder füg seinen Text ein.
code-picture = Bild des Codes wählen
code-text = Oder seinen Text einfügen
code-busy = Wird gelesen …
code-copy = Als Text kopieren
code-copied = Kopiert.
code-not-copied = Es ließ sich nicht kopieren. Öffne den Text darunter und kopier ihn von Hand.
code-share = Schicken
code-as-text = Als Text
code-too-long = Das ist zu lang für einen Code. Schick stattdessen seinen Text.

machines-look = Für jemanden hinsehen

## What falls due, and what may wait

due = Fällig
due-none = Hier wird noch nichts geführt.
due-new = Fälliges hinzufügen
due-later = später:
due-soon = bald:
due-tolerated = darüber, noch in der Toleranz:
due-over = überfällig:
due-title = Was wird fällig?
due-every = Wie oft? Was zuerst eintritt, gilt.
due-days = Tage
due-done = Zuletzt getan
due-done-now = Gerade getan
due-done-on = Am
due-tolerance = Wie viel später noch in der Toleranz liegt, Prozent
due-tolerance-hint = Aus dem Handbuch. 0, wenn dort nichts steht.
due-from-due = Das nächste Mal zählt ab dem Termin, nicht ab dem Tun
due-ended = Wird an dieser Maschine nicht mehr fällig
due-end = Ende unterschreiben
due-sign = Unterschreiben
defer = Darf warten
defer-may-wait = Darf es warten?
defer-until = Bis wann, höchstens? Was zuerst eintritt, gilt.
defer-now = Jetzt: { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h, { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }.
defer-hours = Motorstunden
defer-flights = Flüge insgesamt
defer-date = Tag
defer-condition = Unter welcher Bedingung darf sie fliegen?
defer-condition-hint = Etwa: nur solo, höchstens Halbgas.
defer-reason = Warum darf es warten?
defer-means = Nur wer über die Maschine entscheidet, darf das unterschreiben. Verbieten das Handbuch des Herstellers oder die örtlichen Vorschriften, mit dem Mangel zu fliegen, darf er nicht warten.
defer-sign = Unterschreiben: darf warten

## Components

components = Komponenten mit eigener Zeit
components-none = Noch wird keine getrennt von der Maschine geführt.
component-new = Komponente anbauen
component-off = abgebaut
component-part = Welches Teil ist es?
component-name = Wie nennst du es?
component-serial = Seriennummer
component-brings = Betriebszeit, die es mitbringt
component-fit-sign = Anbau unterschreiben
component-where = Wohin kommt es?
component-take-off = Ab von dieser Maschine, an keine
component-to = An { $machine }
component-keeps = Seine eigene Betriebszeit geht mit.
component-move-sign = Umbau unterschreiben
component-record = Letzter Eintrag
component-unknown = Keine solche Komponente
component-unknown-hint = Sie ist nicht mehr an dieser Maschine. Geh zurück zur Maschine.
form-not-whole = { $words }: „{ $typed }“ ist keine ganze Zahl.
form-not-whole-hint = Gib nur ganze Ziffern ein, etwa 12.

## Papers

papers = Zum Mitnehmen
papers-label = Aufkleber für die Maschine
papers-table = Tabelle (CSV)
papers-calendar = Kalender: was fällig wird
papers-sheet-a4 = Protokoll zum Drucken, A4
papers-sheet-letter = Protokoll zum Drucken, Letter
papers-saved = Geschrieben nach { $place }.

## Another device of somebody

first-as = Ich benutze es schon auf einem anderen Gerät
first-as-title = Ein weiteres Gerät von dir
first-as-back = Ich bin neu hier
first-as-what = Öffne auf dem Gerät, das du hast, die Schule, dann „Ein weiteres Gerät von mir“: Es zeigt einen Code. Lies ihn hier ein, und dieses Gerät unterschreibt als du, mit einem eigenen Schlüssel.
first-as-take = Einlesen
first-as-taken = Der Code deines anderen Geräts ist eingelesen. Nun eine PIN für dieses.
first-as-anew = Anderen Code einlesen
first-as-other = Das ist nicht, was dein anderes Gerät zeigt.
first-as-other-hint = Nimm den Code von seiner Seite Schule, unter „Ein weiteres Gerät von mir“.
device-title = Ein weiteres Gerät von mir
device-step-read = Wähl auf dem neuen Gerät „Ich benutze es schon auf einem anderen Gerät“ und lass es diesen Code lesen.
device-step-back = Das neue Gerät zeigt dann einen eigenen Code: Lies ihn hier ein und unterschreib, dass es deines ist.
device-step-last = Dieses Gerät zeigt eine Antwort: Das neue Gerät liest sie ein, unterschreibt und zeigt einen letzten Code.
device-shows = Was das andere Gerät zeigt
device-take = Einlesen
device-vouch = Ist dieses Gerät deines?
device-compare = Das andere Gerät zeigt diesen Code
device-means = Deine Unterschrift sagt, dass beide Geräte dir gehören. Was das andere unterschreibt, hast von da an du unterschrieben.
device-sign = Unterschreiben: meines
device-vouched = Zeig das dem anderen Gerät
device-vouched-code = Code, der sagt, dass das andere Gerät deines ist
device-vouched-what = Es liest ihn auf der Seite ein, auf der sein eigener Code steht. Bis dahin gehört das andere Gerät niemandem.
device-anew = Mit anderem Gerät neu beginnen
device-last = Was das neue Gerät zuletzt zeigt
device-last-what = Es sagt umgekehrt, dass dieses Gerät deines ist: Erst dann kann dieses den Schlüssel des neuen widerrufen, sollte es verloren gehen.
device-back = Noch ein Code, für dein erstes Gerät
device-back-code = Code, der sagt, dass dein erstes Gerät deines ist
device-back-what = Dein erstes Gerät liest ihn dort ein, wo es jetzt steht. Dann kann jedes der beiden den Schlüssel des anderen widerrufen, sollte es verloren gehen.
device-done = Fertig

## The school

school = Schule
school-over = { $role ->
    [empty] Noch nicht aufgenommen
   *[other] { $role }
  }{ $root ->
    [yes] {" · dieses Gerät ist das Stammgerät: Es nimmt Mitglieder auf"}
   *[no] {""}
  }
school-own-code = Der Code dieses Geräts, zum Vorlesen
school-deeds = Was du hier tun kannst
school-no-role = Dieses Gerät hat noch niemand aufgenommen. Zeig seinen Code dem, der das Stammgerät der Schule hat, oder lies ihn vor.
school-yours = Du und deine Geräte
school-show-code = Zeigen, wer ich bin
school-show-code-what = Wer das Stammgerät der Schule hat, liest diesen Code, um dieses Gerät aufzunehmen, auch von Neuem.
school-code = Code, der sagt, wem dieses Gerät gehört
school-none = Noch keine Schule
school-none-what = Die App braucht keine Schule. In einer Schule haben Mitglieder Rollen, ein Fluglehrer sieht die Maschinen, die ihr unterstellt sind, und Listen und Datenblätter kommen zu allen. All das geht ohne Netz; ein Server macht es nur schneller.
school-ways = Wege in eine Schule
join-by-code = Beitreten mit Code
join-by-address = Beitreten mit Adresse
found-one = Schule gründen
found-title = Schule gründen
found-what = Eine Schule ist eine unterschriebene Liste, wer was tun darf an den Maschinen, die ihr unterstellt sind.
found-name = Wie heißt sie?
found-root = Dieses Gerät wird ihr Stammgerät: Es allein nimmt Mitglieder auf und beendet Mitgliedschaften. Deine Maschinen werden der Schule unterstellt. Das Stammgerät kann später wechseln.
found-sign = Gründung unterschreiben
join-show = Zeig diesen Code dem, der das Stammgerät der Schule hat, oder schick ihn als Text.
join-answer = Was dir zurückgezeigt wird
join-answer-what = Bist du aufgenommen, zeigt das andere Gerät eine Antwort. Lies sie hier ein.
join-take = Einlesen
join-no-answer = Das ist keine Antwort auf deinen Code.
join-no-answer-hint = Zeig deinen Code zuerst dem Stammgerät der Schule, und lies ein, was es dann zeigt.
join-sign-title = Die Antwort ist eingelesen
join-sign-what = Geprüft wird sie, wenn du unterschreibst: ob sie für dieses Gerät ist und wer sie unterschrieben hat.
join-means = Deine Unterschrift unterstellt deine Maschinen der Schule und ihren Rollen. Du kannst wieder austreten; was unterschrieben ist, bleibt.
join-sign = Beitritt unterschreiben
join-other-answer = Andere Antwort einlesen
leave-school = Aus der Schule austreten
leave-title = Aus { $school } austreten
leave-what = Deine Maschinen gehen mit dir, und an den Server der Schule wird nichts mehr gesendet. Was du als Mitglied unterschrieben hast, bleibt unterschrieben.
leave-sign = Austritt unterschreiben

## A school by its server’s address

address = Adresse des Servers
address-hint = Wie die Schule sie nennt. Sie beginnt mit https://
address-what = Der Server zeigt zuerst seine Schule. Nichts wird gesendet oder unterschrieben, bevor du verglichen hast.
address-look = Nachsehen, wer dort ist
address-busy = Wird gefragt …
address-says = Ein Server nennt als seine Schule
address-root = Ihr Stammgerät hat { $name }.
address-compare = Der Code der Schule
address-compare-how = Vergleich ihn mit dem, was die Schule dir auf anderem Weg nennt: auf Papier, oder dort von jemandem vorgelesen. Ein anderer Code ist eine andere Schule.
address-not-admitted = Sie hat dieses Gerät noch nicht aufgenommen. Nach deiner Unterschrift wartest du in ihrer Liste; lies diesen Code dem vor, der ihr Stammgerät hat.
address-sign = Unterschreiben: { $school } folgen
address-other = Andere Adresse
address-of-server = Der Server der Schule
address-change = Andere Adresse

## Members

members = { $count ->
    [one] Ein Mitglied
   *[other] { $count } Mitglieder
  }
members-before = { $count ->
    [one] Ein früheres Mitglied
   *[other] { $count } frühere Mitglieder
  }
member-you = { $name } (du)
member-devices = { $count ->
    [0] kein Gerät
    [one] ein Gerät
   *[other] { $count } Geräte
  }
member-their-devices = { $count ->
    [one] Gerät
   *[other] Geräte
  }
member-code-what = Jedes Gerät zeigt seinen Code auf seiner Seite Schule: Vorgelesen sagt er, welches es ist.
member-deeds = Was das Stammgerät tun kann
member-unknown = Kein solches Mitglied
member-unknown-hint = Geh zurück zur Schule und wähl dort eines.
member-no-longer = Kein Mitglied mehr. Was vorher unterschrieben wurde, gilt weiter.
device-here = dieses Gerät
device-root = Stammgerät
device-ended = Schlüssel widerrufen
role-as-what = Als was?
role-until = Letzter Tag
role-until-hint = Lass es leer, wenn es keinen gibt.
role-change = Rolle ändern
role-change-title = { $name }, von jetzt an
role-sign = Rolle unterschreiben
as-pilot = Pilot
as-mechanic = Mechaniker
as-instructor = Fluglehrer
as-viewer = Leser
may-pilot = macht Rundgänge und unterschreibt, was gesehen wurde
may-mechanic = unterschreibt auch Arbeit und ist ein zweites Paar Augen
may-instructor = entscheidet auch, was warten darf, und veröffentlicht Listen
may-viewer = liest, und unterschreibt nichts an Maschinen der Schule
end-member = Mitgliedschaft beenden
end-title = Mitgliedschaft von { $name } beenden
end-what = Ab deiner Unterschrift zählt an den Maschinen der Schule nichts mehr, was diese Person unterschreibt. Was vorher unterschrieben wurde, gilt weiter.
end-reason = Warum?
end-sign = Ende unterschreiben
key-lost = Verloren: Schlüssel widerrufen
key-title = Verlorenes Gerät: Schlüssel widerrufen
key-what = Was dieses Gerät von { $name } von jetzt an unterschreibt, zählt nirgends mehr, wer es auch hat. Das lässt sich nicht zurücknehmen; die Person macht mit einem anderen Gerät weiter.
key-reason = Was ist passiert?
key-reason-hint = Etwa: am Sonntag am Platz verloren.
key-sign = Widerruf unterschreiben
hand-root = Zum Stammgerät machen
hand-title = Stammgerät: künftig bei { $name }
hand-what = Ab deiner Unterschrift nimmt nur noch dieses Gerät von { $name } Mitglieder auf und beendet Mitgliedschaften. Deines kann es nicht zurückholen.
hand-sign = Wechsel unterschreiben
admit = Jemanden aufnehmen
admit-what = Wer anfragt, zeigt einen Code auf dem eigenen Gerät, unter Schule, „Beitreten mit Code“.
admit-by-code = Code einlesen
admit-take = Einlesen
admit-member = Dieses Gerät ist schon Mitglied. Wenn du unterschreibst, bekommt es eine andere Rolle.
admit-compare = Der Code des anderen Geräts
admit-compare-how = Lass { $name } den Code vom eigenen Bildschirm vorlesen: Es muss dieser sein, Buchstabe für Buchstabe.
admit-sign = Aufnahme unterschreiben: { $name }
admit-anew = Jemand anderen aufnehmen
admitted = { $name } ist aufgenommen
admitted-code = Code zur Aufnahme
admitted-what = { $server ->
    [yes] { $name } bekommt es beim nächsten Abgleich vom Server, oder liest diesen Code ein.
   *[no] Zeig { $name } diesen Code. Eingelesen wird er dort, wo der eigene Code steht.
  }
waiting-list = Warten am Server
waiting-list-none = Dort wartet niemand.
waiting-list-again = Noch einmal fragen

## Machines under the school

enrolled = Maschinen
enrolled-none = Hier ist noch keine.
enrolled-yes = der Schule unterstellt
enrolled-no = nicht der Schule unterstellt
enrolled-own = deine
machine-under = Unterstellt: { $school }
machine-not-under = Nicht unterstellt: { $school }
enrol-title = { $machine } der Schule unterstellen
enrol-what = In { $school } entscheiden Rollen, wer Arbeit an ihr unterschreibt und wer sagt, dass ein Mangel warten darf. Die Fluglehrer dort sehen ihre Einträge.
enrol-sign = Unterstellung unterschreiben
enrol-out-title = { $machine } aus der Schule nehmen
enrol-out-what = Dann gelten die Rollen von { $school } nicht mehr für sie, und was von da an unterschrieben wird, bleibt hier.
enrol-out-sign = Herausnahme unterschreiben
enrol-records = Das ist ein Eintrag wie jeder andere: Er bleibt in der Geschichte der Maschine.
enrol-not-yours = Das kann nur, wer sie angelegt hat.
enrol-no-school = Dieses Gerät gehört zu keiner Schule.

## Lists and data sheets from the school

published = Listen und Datenblätter der Schule
published-none = Noch ist nichts veröffentlicht.
published-version = Version { $version }
published-used = in Gebrauch
published-before = seither ersetzt
publish = An Mitglieder veröffentlichen
publish-what = Wähl Listen oder Datenblätter. Jedes wird geprüft, bevor du es unterschreibst, und kommt mit deiner Unterschrift zu jedem Mitglied.
publish-choose = Dateien wählen
publish-more = Weitere Dateien wählen
publish-without = Weglassen
publish-faults = { $count ->
    [one] Ein Fehler
   *[other] { $count } Fehler
  }
publish-good = Gut. Das wird Version { $version }.
publish-where = { $file }, Zeile { $line }
publish-title = Titel
publish-title-hint = Derselbe Titel tritt an die Stelle der Version davor.
publish-note = Was ist neu?
publish-sign = Unterschreiben, veröffentlichen
folder-engines = Datenblatt eines Motors
folder-fragments = Punkte einer Liste
folder-assembly = wie ein Motor zerlegt wird
folder-drawings = eine Zeichnung
folder-texts = Texte, { $language }
school-file = Für den, der den Server betreibt
school-file-what = Ein Server braucht diese Datei, um die Schule zu bedienen. Sie enthält keinen Schlüssel und keine PIN.
school-file-give = Datei der Schule ausgeben

## The server

server-title = Der Server
server-none = Diese Schule hat hier keinen Server.
server-more = Mehr zum Server
sync-none-short = Hier kein Server: Einträge gehen per Datei oder Code.
sync-failed-short = Der letzte Abgleich kam nicht durch.
sync-records = { $count ->
    [one] ein Eintrag wartet
   *[other] { $count } Einträge warten
  }
sync-photos = { $count ->
    [one] ein Bild wartet
   *[other] { $count } Bilder warten
  }
sync-stuck = { $count ->
    [one] einer abgelehnt
   *[other] { $count } abgelehnt
  }
sync-now = Jetzt abgleichen
sync-busy = Wird abgeglichen …
stuck = { $count ->
    [one] Ein Eintrag, den der Server nicht annahm
   *[other] { $count } Einträge, die der Server nicht annahm
  }
stuck-what = Auf diesem Gerät sind sie sicher und zählen hier.
stuck-retry = Noch einmal senden
truth = Sagt der Server die Wahrheit?
truth-what = { $count ->
    [0] Der Server hat noch für nichts unterschrieben.
    [one] Dieses Gerät hat das unterschriebene Wort des Servers für einen Eintrag. Er lässt sich nicht unbemerkt weglassen oder ändern.
   *[other] Dieses Gerät hat das unterschriebene Wort des Servers für { $count } Einträge, jeden an seinem Platz. Keiner lässt sich unbemerkt weglassen oder ändern.
  }
truth-check = Alles prüfen
truth-busy = Wird geprüft …
truth-proof = Der Beweis
truth-root = Wurzel des Baums darüber
truth-signed = Das unterschriebene Wort des Servers
compare = Mit einem anderen Mitglied vergleichen
compare-what = Ein Server, der zwei Mitgliedern verschiedene Geschichten zeigt, wird entlarvt, wenn die beiden vergleichen. Dazu braucht es kein Netz.
compare-code = Code mit dem, was der Server diesem Gerät gesagt hat
compare-theirs = Was das andere Gerät zeigt
compare-take = Vergleichen
anew = Dem Server neu folgen
anew-what = Vergisst alles, was der Server gesagt hat, und liest beim nächsten Abgleich sein Logbuch von vorn. Deine eigenen Einträge bleiben. Tu das nur, wenn die Schule gesagt hat, warum.
anew-do = Vergessen, was er gesagt hat
refused = Nicht angenommene Zeilen
refused-none = Jede Zeile, die kam, war ein guter Eintrag.
refused-what = Diese Zeilen hat der Server ausgegeben, und sie sind keine guten Einträge. Sie zählen nicht.
refused-line = Die Zeile, wie sie kam
refused-away = Wegräumen

## The board

board = Die Tafel
board-own = Alle Maschinen auf einen Blick
board-counts = { $count ->
    [one] Eine Maschine
   *[other] { $count } Maschinen
  }: { $grounded } gesperrt, { $limited } mit Einschränkungen, { $fit } flugklar
board-none = Hier ist noch keine Maschine.
board-shown = { $count } von { $of } gezeigt
board-filters = Nur zeigen
board-machine = Maschine
board-first = Was zuerst einen Menschen braucht
board-open = Offen
board-due = Fällig
board-looked = Zuletzt angesehen
board-defect = Mangel:
board-watched = Zu beobachten:
board-deferred = Darf warten:
board-job = Arbeit offen:
board-second = { $count ->
    [one] Eine Zweitkontrolle wartet
   *[other] { $count } Zweitkontrollen warten
  }
board-second-by = gearbeitet hat { $name }
board-people = Mitglieder und ihre Maschinen
board-no-machine = keine Maschine
filter-state = Urteil
filter-all = alle
filter-owner = Halter
filter-everybody = alle
filter-due = Etwas fällig
filter-second = Zweitkontrolle wartet
state-grounded = gesperrt
state-limited = mit Einschränkungen
state-fit = flugklar

## What a board asks to be signed

desk-sign-in-title = An der Tafel anmelden?
desk-address = Die Tafel, die fragt:
desk-means = Die Tafel zeigt dir dann die Maschinen der Schule. Sie kann vorbereiten, was du unterschreiben darfst; unterschreiben kann nur dieses Gerät.
desk-sign-in = Ja, melde mich an
desk-signed-in = Du bist an der Tafel angemeldet
draft-over = An der Tafel von { $school } vorbereitet
draft-means = Lies es, als hättest du es geschrieben: Deine Unterschrift macht es zu deinem.
draft-sign = Unterschreiben
draft-body = Wie es unterschrieben wird, Wort für Wort
draft-signed = Unterschrieben und an die Schule gesendet

## Taking records in, and giving all away

take-in = Einlesen
take-in-what = Die guten Einträge dieser Datei kommen in dieses Gerät, neben die vorhandenen. Hier wird nichts geändert.
take-in-do = Einträge einlesen
take-in-busy = Wird eingelesen …
take-in-known = { $count ->
    [one] Einer war schon hier.
   *[other] { $count } waren schon hier.
  }
everything = Alles auf diesem Gerät
everything-what = Alle Einträge aller Maschinen in einer Datei: zum Aufheben, oder für ein anderes Gerät. Sie enthält keinen Schlüssel und keine PIN.
everything-give = Alles ausgeben

## Charts

chart-name = { $title }: { $count ->
    [one] ein Messwert
   *[other] { $count } Messwerte
  }
chart-keys = Die Pfeiltasten links und rechts gehen von Messwert zu Messwert. Die Eingabetaste öffnet den Eintrag dazu.
axis-hours = { $hours } h
chart-before = Der Messwert davor
chart-after = Der Messwert danach
drawn-title = Was die Zeichen bedeuten
drawn-reading = Ein Messwert
drawn-far-off = Ein Messwert weit ab von der Linie: gezeigt, nicht weggelassen
drawn-band = Im Sollbereich
drawn-limit = Der Grenzwert
drawn-limit-unconfirmed = Der Grenzwert, von keinem Dokument bestätigt
drawn-line = Wohin es geht, mit Unsicherheitsbereich
drawn-neither = Eine Linie mit Unsicherheitsbereich, wo nichts Sicheres zu sagen ist: Der Zufall allein ergäbe sie auch
drawn-reach = Geht es so weiter: wo es den Grenzwert erreicht, vom frühesten bis zum spätesten
drawn-change = Ein Sprung: die Höhe davor und danach
drawn-mark = Arbeit, oder ein Teil an- oder abgebaut; die Nummer steht in der Liste unter dem Diagramm
drawn-steps = Anteil noch brauchbar, in Stufen, wie gefunden
drawn-fitted = Eine glatte Kurve hindurch, mit Unsicherheitsbereich
drawn-failed = Unbrauchbar gefunden: ausgefallen irgendwann zwischen zwei Kontrollen
drawn-whole = Noch heil, als es zuletzt angesehen wurde

## Trends

drifts = Was sich verschiebt
drifts-no-readings = Noch kein Messwert, der sich verfolgen ließe. Sie kommen mit jedem Rundgang und mit Motorlogs.
drifts-too-little = { $count ->
    [one] Eine Messgröße hat Messwerte, aber noch zu wenige, um zu sagen, wohin sie geht.
   *[other] { $count } Messgrößen haben Messwerte, aber jede noch zu wenige, um zu sagen, wohin sie geht.
  }
drifts-nothing = { $told ->
    [one] Nichts verschiebt sich: Eine Messgröße wird verfolgt.
   *[other] Nichts verschiebt sich: { $told } Messgrößen werden verfolgt.
  } { $few ->
    [0] { "" }
    [one] Bei einer weiteren ist es noch zu wenig für eine Aussage.
   *[other] Bei { $few } weiteren ist es noch zu wenig für eine Aussage.
  }
trends-title = Alle Trends
trends-over = { $machine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
trends-none = Noch nichts zu verfolgen. Was du auf einem Rundgang misst, wird hier über die Motorstunden verfolgt, und ebenso, was du aus Motorlogs einliest.
trends-what = Jeder Messwert steht über den Motorstunden, bei denen er aufgenommen wurde. Tipp auf ein Diagramm, um einen abzulesen.
trend-limit = Grenzwert { NUMBER($value, maximumFractionDigits: 2, useGrouping: 0) } { $unit }
trend-from = ab { NUMBER($hours, maximumFractionDigits: 0) } h
trend-far-off = weit ab von der Linie
trend-unsigned = noch nicht unterschrieben
trend-marks = { $count ->
    [one] Was der Strich auf der Stundenlinie ist
   *[other] Was die { $count } Striche auf der Stundenlinie sind
  }
trend-hours = Motorstunden
trend-reading = Messwert
trend-table = { $count ->
    [one] Der eine Messwert als Tabelle
   *[other] Die { $count } Messwerte als Tabelle
  }

## Engine logs

readings-title = Motorlog einlesen
readings-what = Die Datei, die dein Motorinstrument geschrieben hat: eine Tabelle mit einer Spalte für die Zeit und Spalten für Temperatur oder Drehzahl (CSV: Text mit Komma, Semikolon oder Tabulator zwischen den Spalten).
readings-step-file = Wähl die Datei.
readings-step-columns = Sag, wie ihre Spalten gelesen werden. Das wird einmal gefragt und dann gemerkt.
readings-step-figures = Sieh, was sie sagt; sag, wann es war und wie warm.
readings-step-sign = Unterschreib: Ihre Werte kommen zu den Trends.
readings-kept = Die Datei bleibt bei dir. Nur wenige Werte werden unterschrieben und gespeichert: höchste Temperaturen, höchste Drehzahl und Leerlaufdrehzahl, Laufzeit.
readings-choose = Datei wählen
readings-other = Andere Datei
readings-busy = Wird gelesen …
readings-guessed = Ist sie richtig gelesen?
readings-guessed-what = Das ist nur nach den Überschriften geraten. Sieh dir jede Spalte an, und ändere, was nicht stimmt.
readings-remembered = Lesen wie letztes Mal?
readings-remembered-what = Eine Datei mit diesen Überschriften wurde schon eingelesen. Damals hast du gesagt, dass sie so gelesen wird:
readings-change = Anders lesen
readings-confirm = Ja, so lesen
readings-signs = Zwischen Spalten: { $separator ->
    [tab] ein Tabulator
   *[other] „{ $separator }“
  }. Vor Dezimalen: „{ $decimal }“. Beides ist der Datei anzusehen.
readings-holds = Was darin steht
readings-left-out = ausgelassen
readings-time = Zeit
readings-time-form = Wie die Zeit geschrieben ist
readings-told = Was das Log sagt
readings-rows = { $rows ->
    [one] Eine Zeile gelesen, { $lasts }.
   *[other] { $rows } Zeilen gelesen, { $lasts }.
  }
readings-unread = { $count ->
    [one] In einer Zeile ist etwas nicht lesbar; der Rest davon zählt.
   *[other] In { $count } Zeilen ist etwas nicht lesbar; der Rest davon zählt.
  }
readings-hours = Motorstunden damals
readings-on = Tag
readings-outside = Wie warm es draußen war
readings-outside-why = Damit werden Zylinderkopftemperaturen auf ein und denselben Tag umgerechnet, sodass sich Sommer und Winter vergleichen lassen. Lass es leer, wenn du es nicht weißt.
readings-sign = Werte unterschreiben
readings-again = Schon eingelesen
readings-again-what = Genau diese Datei wurde schon eingelesen. Zweimal gezählt, würde sie den Trend verfälschen.
readings-to-record = Ihren Eintrag öffnen

## What all records tell

fleet-title = Was die Einträge sagen
fleet-own = Alle Maschinen auf diesem Gerät
fleet-more = Was die Einträge noch sagen
fleet-what = Alle Kontrollen an allen hier bekannten Maschinen, zusammengenommen. Es sind wenige, und sie sind kein Handbuch: Die Intervalle des Herstellers gelten, bis jemand sie verkürzt.
fleet-lives = Wie lange Teile halten
fleet-none = Noch ist keine Kontrolle eines Teils unterschrieben. Mit jedem unterschriebenen Rundgang weiß man hier mehr.
fleet-counts = { $failed ->
    [0] Keines
    [one] Eines
   *[other] { $failed }
  } von { $lives ->
    [one] einem
   *[other] { $lives }
  } unbrauchbar gefunden, an { $machines ->
    [one] einer Maschine
   *[other] { $machines } Maschinen
  }
life-in-force = Es gilt: Kontrolle alle
life-asked-for = Die Befunde verlangen: alle
life-asked = Die Befunde verlangen eine Kontrolle
life-every-flight = vor jedem Flug
life-suggested = Hier gilt noch kein Intervall. Die Befunde legen nahe: alle
life-stays-so = Die Befunde verkürzen es nicht.
life-every = { NUMBER($hours, maximumFractionDigits: 1) } h
life-chance = damit die Wahrscheinlichkeit eines Ausfalls, den niemand gesehen hat, unter { NUMBER($percent, maximumFractionDigits: 1) } % bleibt
life-only-shorter = Ein hier gefundenes Intervall kann von selbst immer nur verkürzen. Eines zu verlängern ist Sache des Herstellerhandbuchs und eines Menschen.
life-caption = Anteil noch brauchbar, über den eigenen Stunden des Teils
life-share = Anteil noch brauchbar
life-table = Die Zahlen der Kurve
life-ask = Andere Wahrscheinlichkeit, anderes Intervall
life-chance-borne = Wahrscheinlichkeit eines ungesehenen Ausfalls
life-in-force-hours = Geltendes Intervall, Stunden
share = { NUMBER($percent, maximumFractionDigits: 1) } %
share-between = { NUMBER($percent, maximumFractionDigits: 0) } % ({ NUMBER($low, maximumFractionDigits: 0) } bis { NUMBER($high, maximumFractionDigits: 0) } %)

## How people look, and what the points are worth

looking-title = Wie jeder hinsieht
looking-none = Noch hat niemand genug Rundgänge dafür unterschrieben.
looking-nothing = Nichts fällt auf.
looking-you = { $name } (du)
looking-inspections = { $count ->
    [one] Ein Rundgang unterschrieben
   *[other] { $count } Rundgänge unterschrieben
  }; verglichen an { $looks ->
    [one] einer Kontrolle
   *[other] { $looks } Kontrollen
  } einzelner Punkte, die auch andere ansehen
looking-hurried = In Eile, von hundert Punkten
looking-points = Am häufigsten in Eile:
looking-seconds = Die Hälfte der Punkte dauerte weniger als
looking-own-seconds = { NUMBER($seconds, maximumFractionDigits: 1) } s
looking-fleet-seconds = { NUMBER($seconds, maximumFractionDigits: 1) } s, andere
looking-found = Etwas gefunden, von hundert Punkten
looking-own-count = { NUMBER($count, maximumFractionDigits: 1) }
looking-fleet-count = { NUMBER($count, maximumFractionDigits: 1) }, andere
worth-title = Was die Punkte wert sind
worth-none = Noch ist kein Rundgang unterschrieben.
worth-sort-often = Oft etwas gefunden ({ $count })
worth-sort-never = Niemals etwas gefunden ({ $count })
worth-sort-plain = Hin und wieder etwas gefunden ({ $count })
worth-sort-few = Zu selten angesehen für eine Aussage ({ $count })
worth-scale = Jede Linie geht von 0 bis { $most } von 100 Kontrollen: Der Strich ist der Anteil mit Befund, der Balken sein Unsicherheitsbereich.
worth-counts = { $looks ->
    [one] eine Kontrolle
   *[other] { $looks } Kontrollen
  }{ $machines ->
    [0] { "" }
    [one] : { $watch } × zu beobachten, { $unserviceable } × unbrauchbar, an einer Maschine
   *[other] : { $watch } × zu beobachten, { $unserviceable } × unbrauchbar, an { $machines } Maschinen
  }
worth-seconds = Die Hälfte der Kontrollen dauerte weniger als { NUMBER($seconds, maximumFractionDigits: 1) } s; { NUMBER($hurried, maximumFractionDigits: 0) } von hundert waren in Eile.

## Load, fuel, air and wind before a flight

flight = Last, Kraftstoff und Luft
flight-what = Antworte auf das, was heute zählt, und lass den Rest aus. Jede Antwort wird sofort an ihrem Grenzwert gemessen.
flight-reminders = Die Handbücher von Schirm und Motor und die örtlichen Vorschriften gehen vor: Diese Zahlen sind Gedächtnisstützen. Weichen sie ab, halt ein und folge dem Handbuch.
flight-part-load = Was geht in die Luft?
flight-part-mix = Was kommt in den Tank?
flight-part-fuel = Wie lange reicht der Kraftstoff?
flight-part-air = Wie dünn ist die Luft?
flight-part-wind = Wie stark ist der Wind?
flight-left-out = Ausgelassen
flight-leave-out = Auslassen
flight-reckoning = Wird berechnet …
flight-lacks = Noch einzugeben: { $values }.
flight-lacks-hint = Gib ein, was fehlt, oder lass diese Frage aus.
flight-keep = Für diesen Flug speichern
flight-kept = Gespeichert. Es steht im Urteil, und deine nächste Unterschrift gilt auch dafür.
flight-keep-means = Es steht sofort im Urteil, und deine nächste Unterschrift gilt auch dafür.
flight-verdict = Damit:
flight-unit = Einheit: { $value }
flight-pad-away = Tasten weg
flight-pad-next = Weiter
flight-pad-done = Fertig
flight-value-pilot = Du, flugfertig angezogen
flight-value-machine = Maschine und Schirm, Tank leer
flight-value-fuel = Kraftstoff beim Start
flight-value-ballast = Ballast und der Rest
flight-value-inTank = Jetzt im Tank
flight-value-addFuel = Benzin, das du nachgießt
flight-value-target = Teile Benzin auf 1 Teil Öl
flight-value-ratioInTank = Im Tank: Teile Benzin auf 1 Teil Öl
flight-value-oil = Öl, das du hineingegossen hast
flight-value-minutes = Geplante Flugzeit
flight-value-reserve = Kraftstoffreserve, mindestens
flight-value-elevation = Höhe des Platzes
flight-value-setting = Höhenmessereinstellung, QNH
flight-value-pressure = Druck am Platz, QFE
flight-value-temperature = Temperatur
flight-value-dew = Taupunkt, falls bekannt
flight-value-mean = Mittelwind
flight-value-gust = Stärkste Böe
flight-value-mostMean = Mittelwind, höchstens
flight-value-mostGust = Böen, höchstens
flight-value-mostFactor = Böenfaktor, höchstens
flight-span = { $low } bis { $high } { $unit }
flight-wing = Der Schirm trägt mit Motor { $range }.
flight-wing-without = Ohne Motor { $range }.
flight-source = { $document }{ $page ->
    [empty] {""}
   *[other] , { $page }
  }.
flight-wing-unsourced = Niemand hat gesagt, wo das steht: unbestätigt.
flight-no-wing = Was der Schirm tragen darf, ist noch nicht beschrieben.
flight-to-wing = Aus dem Handbuch eingeben
flight-caution-pour = Kraftstoffdampf: keine Flamme, und beim Eingießen kein Handy in der Hand. Lies die Zahl, leg das Handy weg, dann gieß.
flight-pour = Öl zum Eingießen
flight-poured = Ist drin
flight-no-ratio = Das Datenblatt des Motors nennt kein Mischungsverhältnis: Nimm es aus dem Handbuch des Herstellers.
flight-plain = Was im Tank ist, enthält kein Öl
flight-oil-hint = Erst nach dem Eingießen. Vorher leer lassen.
flight-minutes = min
flight-to-log = Verbrauch eines Flugs eintragen
flight-by = Was liest du ab?
flight-by-altimeter = Die Einstellung eines Höhenmessers (QNH: auf Meereshöhe umgerechneter Druck)
flight-by-field = Ein Barometer am Platz (QFE: der Druck genau hier)
flight-measured = Von { $time }. Gib es neu ein, sobald du wieder gemessen hast.
flight-own-limits = Deine eigenen Grenzwerte
flight-school = Die Grenzwerte der Schule:
flight-school-mean = Mittelwind { $value }
flight-school-gust = Böen { $value }
flight-school-factor = Böenfaktor { $value }
flight-caution-weather = Der Wind eines Augenblicks ist nicht das Wetter: Himmel, Vorhersage und Gelände beurteilst du.
flight-row-not-yet = Heute nicht berechnet
flight-row-well = Heute berechnet: alles innerhalb der Grenzwerte

## What the wing may carry, and what the machine weighs

form-load = Gewicht, und was der Schirm tragen darf
form-load-what = Für die Rechnung vor jedem Flug. Lass leer, was niemand weiß.
form-weight = Gewicht der Maschine
form-weight-hint = Rahmen, Motor, Gurtzeug, Schirm und Rettungsschirm, ohne Kraftstoff.
form-wing-with = Startgewicht mit Motor, laut Handbuch des Schirms
form-wing-without = Startgewicht ohne Motor
form-wing-without-hint = Wo das Handbuch beides nennt.
form-wing-low = Mindestens
form-wing-high = Höchstens
form-wing-document = Titel und Ausgabe des Schirmhandbuchs
form-wing-only-free = Der Gewichtsbereich mit Motor fehlt.
form-wing-only-free-hint = Gib auch den Gewichtsbereich mit Motor ein: An ihm wird diese Maschine gemessen.

## Fuel that a flight burned

log-burned-open = Verbrauchter Kraftstoff, falls gemessen
log-burned = Verbrauchter Kraftstoff
log-burned-hint = Was vorher im Tank war, weniger das, was jetzt darin ist. Spätere Flüge werden damit berechnet.

## Choices of this device

settings-choices = Auf diesem Gerät
settings-aloud = Punkte vorlesen
settings-aloud-what = Zuerst der Warnhinweis, dann, worauf zu sehen ist und wie gut und schlecht aussieht. Es hört auf, wenn du antwortest.
settings-no-voice = Dieses Gerät hat keine Stimme für { $language }, deshalb wird nichts vorgelesen.
settings-units = Einheiten, in denen du liest und eingibst
settings-units-what = Jede lässt sich dort ändern, wo man sie eingibt. Was ein Handbuch nennt, steht da, wie es dort steht, und in deiner Einheit.
settings-unit-mass = Gewicht
settings-unit-volume = Kraftstoff
settings-unit-speed = Wind
settings-unit-temperature = Temperatur
settings-unit-pressure = Luftdruck
settings-unit-height = Höhe
settings-unit-torque = Drehmoment
settings-unit-sheet = wie im Datenblatt
settings-unit-option = { $sign }, { $words }
folder-none = in keinem Ordner, für alle Maschinen
folder-texts-other = Texte, andere Sprache
folder-language = Welche Sprache?
folder-language-hint = Ihr Kürzel, etwa nl oder pt-BR.

## Read aloud

aloud = Vorlesen
spoken-plus-minus = plus minus
spoken-at-most = höchstens
spoken-at-least = mindestens
spoken-range = { $low } bis { $high }
spoken-unit-kg = { $count ->
    [one] Kilogramm
   *[other] Kilogramm
  }
spoken-unit-lb = { $count ->
    [one] Pfund
   *[other] Pfund
  }
spoken-unit-L = { $count ->
    [one] Liter
   *[other] Liter
  }
spoken-unit-mL = { $count ->
    [one] Milliliter
   *[other] Milliliter
  }
spoken-unit-gal-us = { $count ->
    [one] US-Gallone
   *[other] US-Gallonen
  }
spoken-unit-gal-br = { $count ->
    [one] britische Gallone
   *[other] britische Gallonen
  }
spoken-unit-L-h = { $count ->
    [one] Liter pro Stunde
   *[other] Liter pro Stunde
  }
spoken-unit-km-h = { $count ->
    [one] Kilometer pro Stunde
   *[other] Kilometer pro Stunde
  }
spoken-unit-kt = { $count ->
    [one] Knoten
   *[other] Knoten
  }
spoken-unit-m-s = { $count ->
    [one] Meter pro Sekunde
   *[other] Meter pro Sekunde
  }
spoken-unit-Cel = { $count ->
    [one] Grad Celsius
   *[other] Grad Celsius
  }
spoken-unit-degF = { $count ->
    [one] Grad Fahrenheit
   *[other] Grad Fahrenheit
  }
spoken-unit-K = Kelvin
spoken-unit-hPa = { $count ->
    [one] Hektopascal
   *[other] Hektopascal
  }
spoken-unit-inHg = { $count ->
    [one] Zoll Quecksilbersäule
   *[other] Zoll Quecksilbersäule
  }
spoken-unit-bar = Bar
spoken-unit-psi = Pfund pro Quadratzoll
spoken-unit-m = { $count ->
    [one] Meter
   *[other] Meter
  }
spoken-unit-mm = { $count ->
    [one] Millimeter
   *[other] Millimeter
  }
spoken-unit-in = { $count ->
    [one] Zoll
   *[other] Zoll
  }
spoken-unit-ft = { $count ->
    [one] Fuß
   *[other] Fuß
  }
spoken-unit-N-m = { $count ->
    [one] Newtonmeter
   *[other] Newtonmeter
  }
spoken-unit-lbf-in = { $count ->
    [one] Pfund-Zoll
   *[other] Pfund-Zoll
  }
spoken-unit-lbf-ft = { $count ->
    [one] Pfund-Fuß
   *[other] Pfund-Fuß
  }
spoken-unit-kgf-cm = { $count ->
    [one] Kilopondzentimeter
   *[other] Kilopondzentimeter
  }
spoken-unit-kgf-m = { $count ->
    [one] Kilopondmeter
   *[other] Kilopondmeter
  }
spoken-unit-V = { $count ->
    [one] Volt
   *[other] Volt
  }
spoken-unit-s = { $count ->
    [one] Sekunde
   *[other] Sekunden
  }
spoken-unit-min = { $count ->
    [one] Minute
   *[other] Minuten
  }
spoken-unit-h = { $count ->
    [one] Stunde
   *[other] Stunden
  }
spoken-unit-per-minute = { $count ->
    [one] Umdrehung pro Minute
   *[other] Umdrehungen pro Minute
  }
spoken-unit-deg = { $count ->
    [one] Grad
   *[other] Grad
  }
spoken-unit-percent = Prozent
