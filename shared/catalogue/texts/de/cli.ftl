# German, "du". What the command line says beside what the core says. What is typed stays as it is.

## Help: verbs

help = Mach vor dem Flug den Rundgang um deine Maschine, unterschreib, was du gesehen hast, und bekomm ein Urteil mit seinen Gründen.
help-demo = Die erfundenen Maschinen hinzufügen, oder eine erfundene Schule mit ihrer Saison, zum Ausprobieren
help-machine = Maschinen anlegen, neu beschreiben, auflisten
help-machine-add = Eine Maschine anlegen (unterschrieben)
help-machine-change = Eine Maschine neu beschreiben (unterschrieben); was du nicht angibst, bleibt, wie es war
help-machine-list = Alle Maschinen auflisten, zuerst die, die dich brauchen
help-machine-engines = Die Motortypen auflisten, und bei jedem die Teile einer Maschine
help-machine-enrol = Eine deiner Maschinen den Rollen der Schule unterstellen (unterschrieben)
help-machine-withdraw = Eine Maschine aus der Schule nehmen (unterschrieben)
help-points = Die Punkte der Liste einer Maschine zeigen, mit ihren Antworten
help-walk = Eine Liste Punkt für Punkt durchgehen und unterschreiben (Exit-Code 1: gesperrt)
help-verdict = Sagen, ob eine Maschine fliegen darf, und warum (Exit-Code 1: gesperrt)
help-show = Eine Maschine zeigen: was offen und fällig ist, Komponenten und Grenzwerte, Verlauf
help-record = Einen Eintrag offenlegen (Exit-Code 1: seine Unterschrift ist nicht gut)
help-defect = Was an einer Maschine offen ist: auflisten, beheben oder warten lassen
help-defect-list = Auflisten, was offen ist: Mängel, und was zu beobachten ist
help-defect-rectify = Unterschreiben, dass behoben ist, was an einem Punkt offen war
help-defect-defer = Unterschreiben, dass ein Mangel warten darf, in Grenzen und unter einer Bedingung
help-flight = Vor dem Start einen Flug vorbereiten, nach der Landung die Betriebszeit eintragen
help-flight-prepare = Last, Kraftstoff, Luft und Wind berechnen; unterschrieben wird mit deiner nächsten Unterschrift (Exit-Code 1: gesperrt)
help-flight-log = Stunden, Flüge und Tankfüllungen eintragen, oder den Stand des Stundenzählers; unterschrieben wird mit deiner nächsten Unterschrift
help-flight-undo = Die zuletzt eingetragene Zeit zurücknehmen, solange sie niemand unterschrieben hat
help-due = Was nach Stunden, Flügen, Tankfüllungen oder Tagen fällig wird
help-due-list = Auflisten, was an einer Maschine fällig wird, das Nächste zuerst
help-due-keep = Etwas führen, das immer wieder fällig wird, oder es ändern (unterschrieben)
help-due-done = Unterschreiben, dass es getan wurde: jetzt, oder wann du sagst
help-due-end = Unterschreiben, dass es nicht mehr geführt wird
help-trend = Wie sich die Messgrößen einer Maschine über die Betriebszeit verhalten, und wann sie ihre Grenzwerte erreichen
help-job = Arbeit an einer Maschine: von dem, was du gemacht hast, zur Liste, die daraus folgt
help-job-choices = Die Arbeiten auflisten, die an einer Maschine möglich sind
help-job-plan = Zeigen, was Arbeiten bedeuten: was in welcher Reihenfolge abgeht und drankommt, was zu erneuern ist, was folgt
help-job-begin = Unterschreiben, dass Arbeit begonnen hat; die Maschine bleibt am Boden, bis sie freigegeben ist
help-second-look = Eine andere Person sieht sich die kritischen Verbindungen einer Arbeit an, von einem anderen Handy oder Ordner, oder hier
help-second-look-ask = Den Text ausgeben, den die andere Person bekommt
help-second-look-look = Ansehen, worum eine andere Person bittet, unterschreiben, was du siehst, den Text zum Zurückgeben ausgeben
help-second-look-take = Den Text einlesen, den die andere Person zurückgegeben hat
help-second-look-here = Eine andere Person dieses Datenordners hinsehen und mit der eigenen PIN unterschreiben lassen
help-release = Unterschreiben, dass die Kontrollen einer Arbeit vollständig sind (Exit-Code 1: etwas fehlt)
help-tool = Drehmomentwerkzeuge: Bereich, Kalibrierung, ob sie benutzt werden dürfen
help-tool-add = Ein Drehmomentwerkzeug anlegen (unterschrieben)
help-tool-change = Ein Drehmomentwerkzeug neu beschreiben (unterschrieben): neu kalibriert, heruntergefallen
help-tool-list = Die Drehmomentwerkzeuge auflisten, und ob jedes heute benutzt werden darf
help-component = Komponenten mit eigener Betriebszeit
help-component-fit = Eine Komponente anbauen, die hier neu ist, mit der Zeit, die sie mitbringt (unterschrieben)
help-component-move = Eine Komponente von einer Maschine abbauen und an eine andere anbauen (unterschrieben)
help-component-off = Eine Komponente von einer Maschine abbauen (unterschrieben)
help-fleet = Was alle Kontrollen hier zusammen sagen: wie lange Teile halten, wie jeder hinsieht, was Punkte wert sind
help-fleet-parts = Die Komponenten auflisten, zu deren Lebensdauer sich etwas sagen lässt
help-fleet-life = Sagen, wie lange Komponenten eines Typs halten und wie oft sie anzusehen sind
help-fleet-looking = Sagen, wie jeder hinsieht, neben den anderen an denselben Punkten
help-fleet-lists = Sagen, was die Punkte der Listen wert sind, für deren Verfasser
help-person = Andere Personen, die in diesem Datenordner unterschreiben
help-person-add = Eine weitere Person hinzufügen, mit eigenem Schlüssel und eigener PIN
help-person-list = Die anderen Personen auflisten
help-person-begin = In diesem Datenordner als weiteres Gerät von dir beginnen, mit dem Code von deinem ersten
help-school = Eine Schule: gründen, beitreten, ihre Mitglieder, ihre Listen, ihre Tafel
help-school-create = Eine Schule gründen (unterschrieben); dieser Datenordner wird ihr Stammgerät
help-school-show = Die Schule zeigen, wie dieses Gerät sie kennt
help-school-code = Den Text ausgeben, den dieses Gerät zeigt, um aufgenommen zu werden
help-school-admit = Ein Gerät aufnehmen, anhand des Texts, den es zeigt, oder eines, das am Server wartet (unterschrieben)
help-school-waiting = Auflisten, wer am Server auf Aufnahme wartet
help-school-join = Beitreten mit dem Text, den das Stammgerät zurückzeigt, oder mit der Adresse des Servers (unterschrieben)
help-school-leave = Aus der Schule austreten (unterschrieben); deine Maschinen gehen mit dir
help-school-members = Alle auflisten, die Mitglied sind oder waren, mit ihren Geräten
help-school-role = Einem Mitglied eine andere Rolle oder einen anderen letzten Tag geben (unterschrieben)
help-school-end = Eine Mitgliedschaft beenden (unterschrieben); was die Person unterschrieben hat, gilt weiter
help-school-revoke = Den Schlüssel eines verlorenen Handys widerrufen (unterschrieben)
help-school-hand-over = Das Gerät eines Mitglieds zum Stammgerät machen (unterschrieben)
help-school-vouch = Unterschreiben, dass ein weiteres Gerät auch deines ist, und den Text für dieses Gerät ausgeben
help-school-file = Schreiben, was ein Server braucht, um diese Schule zu bedienen
help-school-publish = Listen oder Datenblätter an die Mitglieder veröffentlichen (unterschrieben; Exit-Code 1: etwas daran stimmt nicht)
help-school-board = Jede Maschine der Schule zeigen, zuerst die, die einen Menschen brauchen
help-school-sign-in = Bestätigen, dass du es bist, der sich an der Tafel der Schule anmeldet
help-school-sign = Lesen, was an der Tafel vorbereitet wurde, und es unterschreiben (mit --json Exit-Code 1: nur gelesen; --agreed unterschreibt)
help-sync = Einträge mit dem Server der Schule austauschen (Exit-Code 1: die Schule hat dieses Gerät noch nicht aufgenommen)
help-receipts = Alles prüfen, wofür der Server unterschrieben hat (Exit-Code 1: es passt nicht)
help-receipts-code = Den Text ausgeben, der mit einem anderen Mitglied verglichen wird
help-receipts-compare = Vergleichen, was ein anderes Mitglied zeigt: Erzählt der Server euch beiden dasselbe?
help-refused = Auflisten, was von einem Server kam und kein Eintrag ist
help-confirm-limit = Einen Grenzwert unterschreiben, wie er im Handbuch des Herstellers steht
help-correct = Ein späteres Wort zu einem Befund unterschreiben; das erste bleibt, wie es unterschrieben wurde
help-put-aside = Eine Liste schließen, ohne sie zu unterschreiben; ihre Antworten bleiben gespeichert, ohne Unterschrift
help-print = Das Protokoll einer Kontrolle oder einer Arbeit schreiben, als PDF
help-label = Einen Aufkleber für eine Maschine schreiben, als PDF; sein Code öffnet die Maschine in der App
help-csv = Alles von einer Maschine als Tabelle schreiben (CSV)
help-calendar = Was an einer Maschine fällig wird, als Kalenderdatei schreiben (iCalendar)
help-export = Die Einträge einer Maschine in eine Datei schreiben, die jeder prüfen kann
help-import = Die Einträge einer Datei einlesen (Exit-Code 1: eine Zeile wurde nicht angenommen), oder ein Motorlog
help-import-readings = Die Werte eines Motorlogs mit Temperaturen und Drehzahlen einlesen (CSV), unterschrieben
help-verify = Dateien mit Einträgen prüfen, mit nichts als den Dateien (Exit-Code 1: etwas stimmt nicht)
help-serve-ui = Die Bildschirme in einem Browser auf diesem Rechner zeigen
help-server = Eine Schule bedienen: die Einträge der Mitglieder austauschen, ihre Tafel zeigen (bis er angehalten wird)
help-backup = Alles, was ein Server führt, in eine Datei schreiben, während er läuft
help-restore = Einen leeren Server aus einer Sicherung füllen: alles davon, oder nichts
help-board-passphrase = Das Kennwort setzen, mit dem man die Tafel ansehen darf, oder es wegnehmen
help-compute = Eine Sache berechnen: JSON von der Standardeingabe, JSON auf die Standardausgabe
help-validate = Datenblätter, Punktelisten, Baupläne, Texte und Zeichnungen prüfen (Exit-Code 1: etwas stimmt nicht)
help-rebuild = Alles neu aus den unterschriebenen Einträgen ableiten

## Help: what follows a verb

help-arg-data = Der Ordner mit deinen Maschinen und deinem Schlüssel, oder mit den Daten eines Servers; ohne Angabe einer unter deinen eigenen Daten
help-arg-json = In JSON antworten, für Programme
help-arg-machine = Name oder Kennung der Maschine, oder der Anfang davon
help-arg-occasion = Welche Liste: before-flight, second-flight, oder after-service, sobald eine Arbeit begonnen ist
help-arg-answers = Antworten aus einer JSON-Datei: Punktkennung zu Antwortkennung, zu einem Wert mit Einheit, oder zu Werkzeug und Achteln
help-arg-leave-missing = Unterschreiben, obwohl Pflichtpunkte in der Datei keine Antwort haben: Das sperrt die Maschine
help-arg-no-sign = Vor dem Unterschreiben aufhören; was beantwortet wurde, bleibt gespeichert
help-arg-pin-file = Eine Datei, deren erste Zeile die PIN ist; ohne sie wirst du gefragt
help-arg-signatory = Dein Name, wenn in diesem Datenordner zum ersten Mal etwas unterschrieben wird
help-arg-name = Wie du die Maschine nennst
help-arg-engine = Die Kennung des Motortyps; „machine engines“ listet sie auf
help-arg-hours = Motorstunden
help-arg-flights = Flüge
help-arg-reserve-repacked = Das Datum auf dem Packnachweis des Rettungsschirms, wie 2026-04-30
help-arg-repack-every = Tage bis zum nächsten Packen, wie im Handbuch des Rettungsschirms; 180, bis du etwas sagst
help-arg-without-reserve = Es ist kein Rettungsschirm verbaut
help-arg-weight = Was sie flugfertig wiegt, mit Schirm und Rettungsschirm, ohne Kraftstoff, wie "34 kg"
help-arg-wing-least = Startgewicht, das der Schirm mit Motor mindestens tragen muss, wie "95 kg"
help-arg-wing-most = Startgewicht, das er mit Motor höchstens tragen darf
help-arg-wing-free-least = Was er ohne Motor mindestens tragen muss, wo sein Hersteller beides nennt
help-arg-wing-free-most = Was er ohne Motor höchstens tragen darf
help-arg-wing-document = Das Handbuch des Schirms und seine Ausgabe; ohne sie ist der Gewichtsbereich unbestätigt
help-arg-wing-page = Die Seite
help-arg-without-wing-range = Was der Schirm tragen darf, ist nicht bekannt
help-arg-serial = Ein Teil und seine Seriennummer, wie propeller=1234; darf mehrmals angegeben werden
help-arg-note = Was sonst wissenswert ist
help-arg-record = Die Prüfsumme des Eintrags, oder ihr Anfang
help-arg-point = Die Kennung des Punkts; „points“ und „show“ nennen sie
help-arg-how = Was getan wurde, in einem Satz
help-arg-answer = Die Kennung der Antwort, die es hätte sein sollen
help-arg-reason = Warum das erste Wort falsch war, in einem Satz
help-arg-band = Die Kennung des Grenzwerts; „show“ nennt sie
help-arg-low = Unteres Ende, eine Zahl mit Einheit, wie "125 lbf.in"
help-arg-high = Oberes Ende
help-arg-did = Was getan wurde; „job choices“ nennt die Arbeiten; mehrere sind möglich
help-arg-ran = Gelaufene Stunden seit der letzten Eingabe
help-arg-flown = Flüge seit der letzten Eingabe
help-arg-tank = Eine Tankfüllung wurde verbraucht; darf mehrmals angegeben werden
help-arg-burned = Kraftstoff, den diese Stunden verbrauchten, mit Einheit, wie "3.2 L" oder "0.8 gal_us"
help-arg-plan = Der Plan als JSON, - für die Standardeingabe; ohne ihn wird gezeigt, was bekannt ist, als JSON zum Anfangen
help-arg-check = Nur sagen, was dabei herauskäme; nichts speichern
help-arg-reading = Der Stand des Stundenzählers, anstelle der gelaufenen Stunden
help-arg-title = Was zu tun ist; der Titel von etwas schon Geführtem ändert dieses
help-arg-item = Was geführt wird: Titel oder Kennung, oder der Anfang davon
help-arg-every-hours = Wieder fällig nach so vielen Motorstunden
help-arg-every-flights = Wieder fällig nach so vielen Flügen
help-arg-every-tanks = Wieder fällig nach so vielen Tankfüllungen
help-arg-every-days = Wieder fällig nach so vielen Tagen; von mehreren gilt, was zuerst eintritt
help-arg-tolerance = Wie viel später noch in der Toleranz liegt, Prozent des Intervalls
help-arg-from-due = Das nächste Mal ab dem Termin zählen, nicht ab dem Tun
help-arg-done-hours = Motorstunden, als es zuletzt getan wurde; jetzt, bis du etwas sagst
help-arg-done-flights = Flüge, als es zuletzt getan wurde
help-arg-done-on = Der Tag, an dem es zuletzt getan wurde, wie 2026-04-30
help-arg-until-hours = Motorstunden, bis zu denen es warten darf
help-arg-until-flights = Zahl der Flüge, bis zu der es warten darf
help-arg-until-date = Der letzte Tag, an dem es warten darf, wie 2026-04-30
help-arg-condition = Wie inzwischen geflogen werden darf
help-arg-why-wait = Warum es warten darf
help-arg-text = Der Text von der anderen Person, oder @FILE mit dem Text darin; @- für die Standardeingabe
help-arg-joint = Was an einer Verbindung zu sehen ist; gib für jede eines an, oder keines, um gefragt zu werden
help-arg-person = Wer hinsieht; „person list“ nennt sie
help-arg-person-name = Unter welchem Namen andere diese Person kennen
help-arg-tool = Name oder Kennung des Werkzeugs, oder der Anfang davon
help-arg-tool-name = Wie du das Werkzeug nennst, oder seine Nummer
help-arg-mark-low = Kleinster Skalenwert mit Einheit, wie "5 N.m"
help-arg-mark-high = Größter Skalenwert, in derselben Einheit
help-arg-deviation = Erlaubte Abweichung, Prozent des Ablesewerts; die der Norm, bis du etwas sagst
help-arg-calibrated = Das Datum auf dem Kalibrierschein, wie 2026-04-30
help-arg-calibrate-days = Tage zwischen Kalibrierungen
help-arg-calibrate-clicks = Klicks zwischen Kalibrierungen
help-arg-clicks = Klicks seit der letzten Kalibrierung
help-arg-dropped = Es ist seitdem heruntergefallen oder überlastet worden
help-arg-part = Welches Teil der Maschine es ist; „machine engines“ nennt sie
help-arg-component = Name, Seriennummer oder Kennung der Komponente
help-arg-component-type = Der Typ der Komponente, wie exhaust; „fleet parts“ listet sie auf
help-arg-chance = Die Wahrscheinlichkeit eines ungesehenen Ausfalls zwischen zwei Kontrollen, die hingenommen wird; die der Schule, sonst 0.02
help-arg-in-force = Das geltende Intervall in Motorstunden; das der Schule, bis du etwas sagst
help-arg-component-name = Wie du die Komponente nennst
help-arg-serial-number = Ihre Seriennummer
help-arg-own-hours = Stunden, die sie vorher gelaufen ist
help-arg-own-flights = Flüge, die sie vorher gemacht hat
help-arg-other-machine = Die Maschine, an die sie angebaut wird
help-arg-document = Das Handbuch und seine Ausgabe
help-arg-page = Die Seite
help-arg-measure = Kennung oder Name der Messgröße, oder der Anfang davon; ohne Angabe alle
help-arg-plot = Es in diese Datei zeichnen, statt es zu sagen: SVG oder PNG, je nach Namensendung
help-arg-dark = Hell auf dunkel zeichnen
help-arg-to = Die Datei, die geschrieben wird; - für die Standardausgabe
help-arg-paper = Die Papiergröße
help-arg-bundles = Dateien mit Einträgen; - für die Standardeingabe
help-arg-sheets = Dateien des Katalogs; ohne Angabe der Katalog des Programms selbst
help-arg-computation = Welche; ein unbekannter Name listet alle auf
help-arg-demo-school = Die erfundene Schule in diesem Datenordner gründen (unterschrieben)
help-arg-all = Alles aus diesem Datenordner in diese Datei schreiben; - für die Standardausgabe
help-arg-brought = Eine Datei mit Einträgen; - für die Standardeingabe
help-arg-log = Das Log als CSV, mit einer Zeile Überschriften; - für die Standardeingabe
help-arg-mapping = Wie seine Spalten gelesen werden: JSON, oder die Datei damit; „--dry-run --json“ zeigt, was benutzt würde
help-arg-then-hours = Die Motorstunden der Maschine, als aufgezeichnet wurde; die jetzigen, bis du etwas sagst
help-arg-on = Der Tag der Aufzeichnung, wie 2026-04-30; bis du etwas sagst, der aus der Datei, sonst heute
help-arg-outside = Wie warm es draußen war, wie "12 Cel"; bis du etwas sagst, was in der Datei steht
help-arg-yes = Lesen wie gezeigt, ohne gefragt zu werden: Du hast es dir angesehen
help-arg-dry-run = Zeigen, wie es gelesen würde und was es sagt; nichts unterschreiben
help-arg-put-away = Diese Zeile wegräumen, nachdem du sie angesehen hast
help-arg-code = Der Text vom anderen Gerät, oder @FILE mit dem Text darin; @- für die Standardeingabe
help-arg-board-code = Der Text des Codes an der Tafel, oder @FILE mit dem Text darin; @- für die Standardeingabe
help-arg-agreed = Unterschreiben, ohne noch einmal gefragt zu werden: Du hast es gelesen
help-arg-join = Der Text, den das Stammgerät zurückzeigt (oder @FILE mit dem Text darin), oder die Adresse des Servers
help-arg-school-code = Der Code der Schule, wie jemand von der Schule ihn vorliest; ohne ihn wirst du gefragt
help-arg-school-name = Wie man die Schule nennt
help-arg-school-file = Die Datei, die geschrieben wird; - für die Standardausgabe
help-arg-waiting = Jemand, der am Server wartet: der Code, oder der Name (dann sollst du den Code vergleichen)
help-arg-role = Was die Person darf
help-arg-until = Der letzte Tag davon, wie 2026-04-30; ohne Angabe offen
help-arg-member = Der Name des Mitglieds, oder sein Anfang
help-arg-device = Der Code des Geräts, oder der Name seines Besitzers, wenn er nur eines hat; „school members“ listet sie auf
help-arg-why-end = Warum es endet, in wenigen Worten
help-arg-publication = Woran Mitglieder diese Dateien erkennen; derselbe Titel noch einmal ist die nächste Version
help-arg-publish-files = Dateien, wie sie im Katalog liegen: …/engines/x.toml, …/fragments/x.toml, …/texts/en/x.ftl
help-arg-publish-note = Was neu ist
help-arg-database = Die Datenbank des Servers: postgres://…; ohne Angabe eine Datei im Datenordner
help-arg-listen = Worauf der Server lauscht
help-arg-founding-file = Was „school file“ geschrieben hat; nur beim ersten Start nötig
help-arg-public-address = Die Adresse, unter der Geräte den Server kennen, wie https://school.example
help-arg-tls-cert = Das Zertifikat und die zwischen ihm und einer Wurzel (PEM)
help-arg-tls-key = Der Schlüssel des Zertifikats (PEM)
help-arg-plain-http = Unverschlüsselt, obwohl andere Rechner ihn erreichen: nur für geschlossene Netze
help-arg-behind-proxy = Ein Proxy steht davor, reicht Host weiter und sagt, für wen er fragt (X-Forwarded-For)
help-arg-backup-to = Die Datei, die geschrieben wird; eine vorhandene wird niemals überschrieben
help-arg-backup-from = Die Sicherung
help-arg-passphrase-file = Eine Datei, deren erste Zeile das Kennwort ist; - für die Standardeingabe
help-arg-off = Niemand sieht die Tafel mehr mit Kennwort an
help-arg-port = Der Port; 0 nimmt irgendeinen freien (7420, wenn er frei ist, sonst irgendeinen)

## Signing

cli-pin = PIN von { $name }:
cli-pin-new = Wähl eine PIN für { $name }, mindestens sechs Ziffern:
cli-pin-again = Dieselbe PIN noch einmal:
cli-owner = Halter
cli-begun = { $name } unterschreibt ab jetzt in diesem Datenordner. Der Fingerabdruck des Schlüssels ist { $device }.
cli-added = Angelegt und unterschrieben. „walk“ macht den Rundgang, „verdict“ sagt, ob sie fliegen darf.
cli-changed = Neu beschrieben und unterschrieben.
cli-rectified = Behoben und unterschrieben.
cli-corrected = Berichtigt und unterschrieben; das erste Wort bleibt in seinem Eintrag.
cli-limit-confirmed = Der Grenzwert ist eingegeben und unterschrieben.

## Machines and points

cli-machine = { $engine }, { $hours } h, { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }
cli-invented = {" "}(erfunden)
cli-machine-walk = Begonnen und nicht unterschrieben: { $list }, { $done } von { $of } angesehen
cli-no-machines = Hier ist noch keine Maschine. Leg deine mit „machine add“ an, oder probier es mit „demo“ aus.
cli-demo = Diese Maschinen sind erfunden: Sie gehören niemandem.
cli-parts = Teile: { $parts }
cli-points = { $points ->
    [one] Ein Punkt
   *[other] { $points } Punkte
  } insgesamt.
cli-may-be-left = (darf ausgelassen werden)
cli-tightened = angezogen: Verbindung { $joint }, { $nuts ->
    [one] eine Schraubstelle
   *[other] { $nuts } Schraubstellen
  }; { $band }
cli-measured = ein Wert, in { $unit }; gut: { $band }
cli-open = Offen:
cli-limits = Grenzwerte:
cli-job = Arbeit nicht freigegeben:
cli-due = Was fällig wird:
cli-components = Komponenten:
cli-timeline = Verlauf, das Neueste zuerst:

## What an answer means

cli-means-not-fitted = nicht verbaut
cli-means-serviceable = brauchbar
cli-means-watch = zu beobachten
cli-means-unserviceable = unbrauchbar

## Walking

cli-walk-opened = { $list }: { $machine }, { $done } von { $of } angesehen.
cli-walk-keys = Tipp die Nummer dessen, was du siehst, oder den Wert. Außerdem: b nimmt die letzte Antwort zurück, l lässt diesen Punkt vorerst aus, n und Worte schreibt eine Notiz, q hört auf (alles bleibt gespeichert).
cli-good = Gut: { $words }
cli-bad = Schlecht: { $words }
cli-why = Warum: { $words }
cli-caution = VORSICHT: { $words }
cli-note-well = Beachte: { $words }
cli-noted = Deine Notiz: { $words }
cli-band = Sollbereich: { $band }. { $source }
cli-tighten = { $nuts ->
    [one] Eine Schraubstelle
   *[other] { $nuts } Schraubstellen
  }, auf { $band }. { $source }
cli-note-kept = Die Notiz ist gespeichert.
cli-prompt = 1 bis { $most }, b, l, n, q, ? >
cli-prompt-value = Wert in { $unit } (oder mit einer anderen Einheit), b, l, n, q, ? >
cli-prompt-tool = Drehmomentwerkzeug (Name oder Kennung; „tool list“ zeigt sie), b, l, n, q, ? >
cli-prompt-adapter = Etwas zwischen Werkzeug und Mutter? Hebel, Adapter, Winkel, wie 350 mm, 50 mm, 0 (Enter: nichts) >
cli-bench = Stell das Werkzeug beim vollen Drehmoment auf { $setting } ({ $other }).
cli-prompt-because = Warum es trotzdem benutzen? (Enter: anderes Werkzeug nehmen) >
cli-step = { $round }, Mutter { $nut }: { $setting } (Enter, wenn es geklickt hat; q verlässt die Verbindung) >
cli-step-moved = { $round }, Mutter { $nut }: { $setting }. Wie weit vor dem Klick, in Achteldrehungen (q verlässt die Verbindung) >
cli-prompt-reading = Was das Werkzeug anzeigte, mit Einheit (Enter: es zeigt nichts an) >
cli-prompt-insist = Wenn es wirklich so ist: warum? (Enter: noch einmal sagen, wie es jetzt ist) >
cli-joint-left = Diese Verbindung ist noch nicht genannt: Beginn sie neu mit der ersten Mutter.
cli-answered = Gespeichert: { $words } ({ $means })
cli-not-understood = Das ist keine der Antworten.
cli-would-be = Jetzt unterschrieben, wäre das Urteil: { $verdict }.
cli-closing-keys = s unterschreibt. Außerdem: l geht zu dem, was ausgelassen ist, die Nummer eines Punkts sieht ihn noch einmal an, b nimmt die letzte Antwort zurück, q hört auf (alles bleibt gespeichert).
cli-closing-keys-unsigned = q hört auf (alles bleibt gespeichert). Außerdem: l geht zu dem, was ausgelassen ist, die Nummer eines Punkts sieht ihn noch einmal an, b nimmt die letzte Antwort zurück.
cli-closing-not-understood = Das ist weder einer dieser Buchstaben noch die Nummer eines Punkts.
cli-kept = [{ $done }/{ $of }] { $point }: { $words } ({ $means })
cli-found = Gefunden:
cli-hurried = In Eile (noch einmal ansehen?):
cli-left = Nicht angesehen:
cli-left-grounds = {" "}(Pflicht)
cli-unsigned = Nicht unterschrieben. { $done ->
    [0] Noch wurde nichts beantwortet; derselbe Befehl beginnt hier.
    [one] Die eine Antwort ist gespeichert; derselbe Befehl macht hier weiter.
   *[other] Die { $done } Antworten sind gespeichert; derselbe Befehl macht hier weiter.
  }
cli-signed = Unterschrieben als Eintrag { $record }.
cli-put-aside = Beiseitegelegt: { $list }, { $done ->
    [one] eine Antwort
   *[other] { $done } Antworten
  } gespeichert, ohne Unterschrift.

## Time, and what falls due

cli-logged = Eingetragen; es zählt sofort.
cli-log-undone = Die letzte Eingabe ist zurückgenommen.
cli-waiting = { $entries ->
    [one] Ein Eintrag wartet
   *[other] { $entries } Einträge warten
  } auf die nächste Unterschrift.
cli-flight-kept = gespeichert; es zählt sofort, und deine nächste Unterschrift gilt auch dafür.
cli-flight-judged = was dabei herauskäme. Nichts ist gespeichert.
cli-flight-known = heute ist nichts berechnet. Das könnte noch gelten; ändere es, und gib es mit --file zurück.
cli-flight-today = das wurde heute berechnet. Ändere es, und gib es mit --file zurück.
cli-flight-example = Alles, was in einem Plan stehen darf; lass weg, was du nicht wissen willst:
cli-flight-pour = Öl für diese Mischung: { $oil }
cli-weights = Gewichte:
cli-weight = Sie wiegt flugfertig, ohne Kraftstoff, { $weight }.
cli-wing-range = Mit Motor darf ihr Schirm { $low } bis { $high } Startgewicht tragen.
cli-wing-range-free = Ohne Motor { $low } bis { $high }.
cli-nothing-due = Nichts wird als fällig geführt. „due keep“ fügt etwas hinzu.
cli-due-later = später
cli-due-soon = bald
cli-due-tolerated = über dem Termin, noch in der Toleranz
cli-due-over = überfällig
cli-due-kept = Geführt und unterschrieben.
cli-due-done = Getan und unterschrieben; von da an wird gezählt.
cli-due-ended = Unterschrieben: Es wird nicht mehr geführt.
cli-trend-nothing = Keine ihrer Messgrößen hat schon Messwerte. Mach den Rundgang, arbeite an ihr, oder lies die Werte eines Motorlogs ein („import readings“).
cli-trend-row = { $title } ({ $id }), { $n ->
    [one] ein Messwert
   *[other] { $n } Messwerte
  }{ $drifts ->
    [yes] : handle danach
   *[no] {""}
  }
cli-trend-band = Der Sollbereich:
cli-trend-readings = Messwerte:
cli-trend-reading = { $hours } h: { $words }{ $far ->
    [yes] , weit ab von der Linie
   *[no] {""}
  }
cli-trend-marks = Was getan wurde:
cli-trend-mark = { $hours } h: { $words }
cli-nothing-open = Nichts ist offen.
cli-deferred = Es darf warten, unterschrieben.

## Work

cli-take-off = Zerlegen:
cli-plan-part-off = { $words }: ab
cli-plan-joint-undone = { $words }: lösen
cli-plan-part-on = { $words }: dran
cli-plan-joint-done-up = { $words }: verbinden
cli-refit = Zusammenbauen:
cli-renew = Erneuern:
cli-count-tools = Nachzählen:
cli-independent = Eine andere Person muss sich ansehen:
cli-follow-ups = Später fällig:
cli-plan-points = { $points ->
    [one] Ein Punkt
   *[other] { $points } Punkte
  } auf der Liste danach.
cli-job-begun = Begonnen und unterschrieben. Die Maschine bleibt am Boden bis „release“. Weiter mit: „walk MACHINE --occasion after-service“.
cli-job-ready = Nichts fehlt: Sie darf freigegeben werden.
cli-job-independent = Eine andere Person sieht sich an: { $joint } [{ $id }]
cli-not-released = Sie kann noch nicht freigegeben werden:
cli-released = Freigegeben und unterschrieben.
cli-second-asked = Gib diesen Text der anderen Person; sie beantwortet ihn mit „second-look look“.
cli-second-what = Eine andere Person bittet dich, dir { $machine } anzusehen: { $title }.
cli-prompt-joint = { $joint }: wie es sein soll (g) oder mangelhaft (w), und ein Wort mehr, wenn du willst >
cli-second-signed = Unterschrieben. Gib diesen Text zurück; eingelesen wird er mit „second-look take“.
cli-second-taken = Eingelesen: Eine andere Person hat hingesehen.
cli-second-here = Unterschrieben: Eine andere Person hat hingesehen.
cli-person-added = { $name } unterschreibt auch in diesem Datenordner, mit eigener PIN.
cli-no-people = Sonst unterschreibt niemand in diesem Datenordner. „person add“ fügt jemanden hinzu.
cli-tool = { $low } bis { $high }, ±{ $deviation } %, { $clicks ->
    [one] ein Klick
   *[other] { $clicks } Klicks
  } seit der Kalibrierung
cli-tool-usable = Darf benutzt werden.
cli-tool-refused = Darf nicht benutzt werden.
cli-no-tools = Hier ist noch kein Drehmomentwerkzeug. Leg deines mit „tool add“ an.
cli-tool-added = Angelegt und unterschrieben.
cli-tool-changed = Neu beschrieben und unterschrieben.
cli-component-off = {" "}(abgebaut)
cli-component-fitted = Angebaut und unterschrieben.
cli-component-moved = Abgebaut, an die andere Maschine angebaut und unterschrieben.
cli-component-taken-off = Abgebaut und unterschrieben.

## The fleet

cli-fleet-nothing = Hier ist noch keine Kontrolle irgendeiner Komponente. Mach einen Rundgang und unterschreib, oder lies Einträge ein.
cli-fleet-nobody = Hier hat noch niemand eine Kontrolle unterschrieben, oder du darfst nicht sehen, wie andere hinsehen: An den Maschinen einer Schule sehen ihre Fluglehrer alle, und jeder sich selbst.
cli-fleet-part = { $part } [{ $id }]: { $machines ->
    [one] eine Maschine
   *[other] { $machines } Maschinen
  }, { $lives ->
    [one] eine Lebensdauer
   *[other] { $lives } Lebensdauern
  }, davon { $failed ->
    [0] keine
    [one] eine
   *[other] { $failed }
  } unbrauchbar gefunden
cli-fleet-steps = Noch brauchbar, ohne Annahme über die Form der Lebensdauer (Vertrauensbereich 95 %):
cli-fleet-step = ab { $hours } h: { $share } % ({ $low } bis { $high })
cli-fleet-fitted = Noch brauchbar, nach der angepassten Kurve (Vertrauensbereich 95 %):
cli-fleet-at = bei { $hours } h: { $share } % ({ $low } bis { $high })
cli-fleet-intervals = Wie die Vertrauensbereiche entstanden:
cli-fleet-person = { $name }{ $you ->
    [yes] {" "}(du)
   *[no] {""}
  }: { $inspections ->
    [one] ein Rundgang
   *[other] { $inspections } Rundgänge
  }, { $looks ->
    [one] eine Kontrolle
   *[other] { $looks } Kontrollen
  } einzelner Punkte, die auch andere ansehen
cli-fleet-seconds = Mittlere Zeit an einem Punkt: { $own } s{ $beside ->
    [yes] , die anderen { $others } s
   *[no] {""}
  }
cli-fleet-hurried = In Eile: { $own } %{ $beside ->
    [yes] , die anderen { $others } %
   *[no] {""}
  }
cli-fleet-found = Etwas gefunden bei 100 Kontrollen: { $own }{ $beside ->
    [yes] , die anderen { $others }
   *[no] {""}
  }
cli-fleet-hurried-points = Am häufigsten in Eile: { $points }

## The school

cli-begun-as = { $name } unterschreibt auch in diesem Datenordner. Weiter mit: „school code“, dem ersten Gerät gezeigt („school vouch“).
cli-no-school = Dieses Gerät gehört zu keiner Schule.
cli-own-code = Der Code dieses Geräts: { $code }
cli-school-code = Der Code der Schule: { $code }
cli-school-role = Du bist: { $role }
cli-school-root = Du bist: { $role}; dieses Gerät ist das Stammgerät der Schule
cli-school-address = Server: { $address }
cli-members = Mitglieder:
cli-enrolled-machines = Maschinen, der Schule unterstellt:
cli-published = Veröffentlicht:
cli-published-version = { $title }, Version { $version }
cli-superseded = {" "}(nicht mehr in Gebrauch)
cli-device = Gerät { $code }
cli-device-root = Gerät { $code }, das Stammgerät der Schule
cli-device-ended = Gerät { $code }, Schlüssel widerrufen
cli-to-send = Wartet auf das Senden: { $records ->
    [one] ein Eintrag
   *[other] { $records } Einträge
  }{ $photos ->
    [0] .
    [one] {", "}ein Bild.
   *[other] {", "}{ $photos } Bilder.
  }
cli-stuck = Vom Server nicht angenommen: { $kind }. { $words }
cli-applicant = { $name }, Code { $code }
cli-code-shown = Zeig diesen Text dem anderen Gerät und lies diesen Code vor: { $code }
cli-answer = Unterschrieben. Zeig diesen Text zurück; eingelesen wird er mit „school join“.
cli-admitted = Aufgenommen und unterschrieben.
cli-nobody-waits = Niemand wartet auf Aufnahme.
cli-prompt-applicant = { $name } wartet. Wird dort dieser Code vorgelesen: { $code }? (y = ja, n = nein) >
cli-prompt-school = Das ist „{ $name }“. Liest die Schule diesen Code vor: { $code }? (y = ja, n = nein) >
cli-prompt-sign = Unterschreiben? (y = ja, n = nein) >
cli-left-school = Ausgetreten und unterschrieben. Deine Maschinen gehören wieder dir allein.
cli-enrolled = Der Schule unterstellt, unterschrieben.
cli-withdrawn = Aus der Schule genommen, unterschrieben.
cli-desk-where = { $school }, { $address }
cli-signed-in = Angemeldet. Mach an der Tafel weiter.
cli-draft-signed = Unterschrieben.
cli-receipts-code = Zeig diesen Text einem anderen Mitglied; verglichen wird er mit „receipts compare“.
cli-none-refused = Nichts wurde abgelehnt.
cli-board-second = Wartet auf die Augen einer anderen Person:
cli-board-owner = von { $name }
cli-board-job = Arbeit nicht freigegeben: { $title }

## The server

cli-server-listens = Der Server der Schule antwortet unter
cli-backed-up = Gesichert in { $file }, und geprüft.
cli-restored = Wiederhergestellt aus { $file }.
cli-backup-has = Schule { $school }: { $records ->
    [one] ein Eintrag
   *[other] { $records } Einträge
  }, { $photos ->
    [one] ein Bild
   *[other] { $photos } Bilder
  }.
cli-passphrase-set = Das Kennwort ist gesetzt. Damit lässt sich die Tafel ansehen und nichts unterschreiben; wer mit einem älteren hereinkam, ist draußen.
cli-passphrase-off = Niemand sieht die Tafel mehr mit Kennwort an.

## Verdicts and records

cli-state-fit = flugklar
cli-state-limited = schränkt ein
cli-state-grounded = sperrt
cli-clears = Was es aufhebt: { $clears }
cli-record = Eintrag { $id }
cli-point = Punkt { $id }
cli-limit = Grenzwert { $id }
cli-record-by = Unterschrieben von { $by } am { $when }; Gerät { $device }, Nummer { $seq } seiner Kette
cli-before = Zuerst gesagt, zurückgenommen: { $words }

## Files

cli-exported = { $records ->
    [one] Ein Eintrag
   *[other] { $records } Einträge
  } geschrieben nach { $file }.
cli-written = Geschrieben nach { $file }.
cli-key-of = { $name } unterschreibt mit dem Schlüssel { $device }
cli-valid = { $files ->
    [0] Im Katalog des Programms ist kein Fehler.
    [one] In dieser Datei ist kein Fehler.
   *[other] In diesen { $files } Dateien ist kein Fehler.
  }
cli-rebuilt = Neu abgeleitet: { $machines ->
    [one] eine Maschine
   *[other] { $machines } Maschinen
  }.
cli-compute-example = Gib JSON auf der Standardeingabe an, zum Beispiel: { $example }

## Engine logs

cli-log = { $name } wird so gelesen:
cli-log-marks = zwischen Feldern { $separator }, vor Dezimalen { $decimal }
cli-log-tab = ein Tabulator
cli-log-semicolon = ein Semikolon
cli-log-comma = ein Komma
cli-log-point = ein Punkt
cli-log-time = „{ $column }“: Zeit, als { $form }
cli-log-column = „{ $column }“: { $channel }, in { $unit }
cli-log-unused = nicht gelesen: { $columns }
cli-log-remembered = Eine Datei mit denselben Überschriften wurde schon so gelesen.
cli-log-rows = { $rows ->
    [one] Eine Zeile wurde
   *[other] { $rows } Zeilen wurden
  } gelesen, insgesamt { $lasts }. Das sagen sie:
cli-log-unread = In { $rows ->
    [one] einer Zeile
   *[other] { $rows } Zeilen
  } war etwas nicht lesbar; zuerst: { $first }
cli-log-windows-1252 = Die Datei ist nicht UTF-8. Sie wurde als Windows-1252 gelesen: Sieh nach, ob die Überschriften stimmen.
cli-prompt-log = Ist es so richtig? (y = ja, n = nein) >
cli-log-taken = Die Werte des Logs sind eingelesen und unterschrieben:

## Faults: what went wrong, and what to do

fault-no-data-folder = Dieses System nennt keinen Ordner für deine Daten.
    .hint = Gib einen mit --data DIR an.
fault-no-such-record = Hier gibt es keinen Eintrag „{ $what }“.
    .hint = „show MACHINE“ nennt die Einträge; gib mindestens vier Zeichen von einem an.
fault-ambiguous-record = „{ $what }“ passt auf mehr als einen Eintrag: { $which }
    .hint = Gib mehr Zeichen von dem an, den du meinst.
fault-signatory-other = Hier unterschreibt { $name }, nicht { $given }.
    .hint = Lass --signatory weg, oder wähl mit --data einen anderen Datenordner.
fault-pins-differ = Die beiden PINs sind nicht gleich.
    .hint = Gib zweimal dieselbe PIN ein.
fault-pin-file-empty = In { $file } steht keine PIN.
    .hint = Die erste Zeile muss die PIN sein, und sonst nichts.
fault-answer-unreadable = Die Antwort auf „{ $point }“ ist nicht lesbar: { $why }
    .hint = Gib die Kennung der Antwort an, oder {"{"} "value": 4, "unit": "L" {"}"}; mit einer Notiz {"{"} "answer": "…", "note": "…" {"}"}; eine angezogene Verbindung {"{"} "tool": "…", "eighths": [1, 1, 1, 1] {"}"}.
fault-not-agreed = Dem wurde nicht zugestimmt: Nichts wurde unterschrieben.
    .hint = Vergleich oder lies zuerst; dann führ es noch einmal aus und sag y. Mit --json gib den Code selbst an, oder --agreed.
fault-log-not-confirmed = Niemand hat bestätigt, wie dieses Log gelesen wird: Nichts wurde unterschrieben.
    .hint = Sieh dir an, was --dry-run zeigt. Stimmt es, führ es noch einmal aus und sag y, oder gib --yes an; wenn nicht, gib --mapping an.
fault-log-mapping-unread = Die Zuordnung der Spalten ist nicht lesbar: { $why }
    .hint = Nimm, was „--dry-run --json“ unter "mapping" zeigt, und ändere es.
fault-school-other = Die Schule unter dieser Adresse ist „{ $name }“ mit Code { $code }, nicht { $given }.
    .hint = Frag die Schule noch einmal nach ihrer Adresse und ihrem Code.
fault-server-no-school = Dieser Server hat noch keine Schule.
    .hint = Schreib ihre Datei auf dem Stammgerät mit „school file -o FILE“, und gib sie mit --school FILE an.
fault-server-several-schools = Diese Datenbank hat mehr als eine Schule.
    .hint = Gib jedem Server eine eigene Datenbank.
fault-server-not-a-school = Die Datei der Schule ist nicht nutzbar: { $why }
    .hint = Schreib sie auf dem Stammgerät neu mit „school file -o FILE“.
fault-server-other-school = Dieser Server bedient die Schule { $here }, nicht { $given }.
    .hint = Gib der anderen Schule einen Server mit eigenem Datenordner.
fault-server-in-the-open = Andere Rechner können { $address } erreichen, und nichts dort wäre verschlüsselt.
    .hint = Gib --tls-cert und --tls-key an, oder lass ihn auf 127.0.0.1 hinter einem Proxy lauschen, der ein Zertifikat hat. Wo das Netz für andere geschlossen ist, sag --plain-http.
fault-server-certificate = Das Zertifikat oder sein Schlüssel ist nicht nutzbar: { $why }
    .hint = Beide sind PEM-Dateien und gehören zusammen.
fault-server-stopped = Der Server hat angehalten: { $why }
    .hint = Nichts, was bestätigt wurde, ist verloren; starte ihn wieder.
fault-server-damaged = Die Daten des Servers sind beschädigt: { $why }
    .hint = Lass sie, wie sie sind, und stell die letzte Sicherung in einem neuen Datenordner wieder her.
fault-server-database = Die Datenbank des Servers: { $why }
    .hint = Bring das in Ordnung und versuch es noch einmal; nichts ist halb getan.
fault-restore-not-empty = Wohin die Sicherung soll, sind schon Einträge.
    .hint = Stell sie in einem neuen Datenordner oder einer neuen Datenbank wieder her.
fault-backup-exists = { $file } gibt es schon.
    .hint = Nenn eine andere Datei: Eine Sicherung wird niemals überschrieben.
fault-not-a-backup = { $file } ist keine Sicherung: { $why }
    .hint = Gib eine Datei an, die „backup“ geschrieben hat.
fault-passphrase-short = Ein Kennwort hat mindestens { $least } Buchstaben.
    .hint = Nimm ein paar Wörter, die nicht zusammengehören.
fault-none-to-name = „{ $what }“ gibt es nicht: Hier ist noch nichts davon.
    .hint = Füg zuerst eines hinzu; „--help“ zeigt, wie.
fault-not-named = „{ $what }“ ist nicht unter diesen: { $known }
    .hint = Gib die Kennung, den Namen oder den Anfang davon an.
fault-ambiguous-name = „{ $what }“ passt auf mehr als eines: { $which }
    .hint = Gib mehr von der Kennung an, oder den ganzen Namen.
fault-joints-untold = Nichts gesagt wurde zu: { $joints }
    .hint = Sag --joint JOINT=good oder --joint JOINT=wanting für jede davon.
fault-joint-unreadable = „{ $text }“ sagt nichts über eine Verbindung.
    .hint = Sag JOINT=good oder JOINT=wanting.
fault-tool-unchanged = Das Werkzeug ist schon so beschrieben.
    .hint = Gib an, was geändert werden soll; nichts wurde unterschrieben.
fault-eighths = „{ $text }“ ist keine Zahl von Achteldrehungen.
    .hint = Gib eine ganze Zahl ein: 0, wenn es sofort klickte, 2 für eine Vierteldrehung.
fault-adapter = „{ $text }“ ist kein Adapter.
    .hint = Gib den Hebel, die Länge des Adapters und den Winkel dazwischen an: 350 mm, 50 mm, 0.
fault-quantity = „{ $text }“ ist kein Wert mit Einheit.
    .hint = Gib eine Zahl mit Dezimalpunkt und eine Einheit an: 12.5 N.m. Einheiten: { $units }.
fault-serial = „{ $text }“ ist kein Teil mit Seriennummer.
    .hint = Gib beides an, wie propeller=1234; „machine engines“ nennt die Teile.
fault-nothing-changed = Die Maschine ist schon so beschrieben.
    .hint = Gib an, was geändert werden soll; nichts wurde unterschrieben.
fault-nothing-begun = An dieser Maschine ist keine solche Liste begonnen.
    .hint = „machine list“ zeigt die Listen, die begonnen und nicht unterschrieben sind.
fault-more-begun = Mehr als eine Liste ist begonnen: { $which }
    .hint = Sag mit --occasion, welche.

## The screens in a browser

fault-not-this-server = Diese Adresse ist nicht die dieses Programms.
    .hint = Öffne die Adresse, die das Programm beim Start ausgegeben hat.
fault-token-used = Diese Adresse wurde schon geöffnet; sie geht nur einmal.
    .hint = Starte das Programm noch einmal: Es gibt eine neue aus.
fault-not-let-in = Dieser Browser hat die Adresse des Programms nicht geöffnet.
    .hint = Öffne die Adresse, die das Programm ausgegeben hat, in diesem Browser. Wurde sie anderswo geöffnet, starte das Programm noch einmal: Es gibt eine neue aus.
fault-no-such-page = Diese Seite gibt es nicht.
    .hint = Geh zurück zur ersten Seite.
fault-ui-not-built = Die Bildschirme sind nicht in dieses Programm eingebaut.
    .hint = Führ „make ui“ aus, dann bau und starte das Programm neu.
fault-call-too-large = Das ist größer als 64 MB.
    .hint = Nimm ein kleineres Bild oder eine kleinere Datei.
