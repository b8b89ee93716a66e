# German, "du". Papers: record sheets, labels, tables, calendars.

fault-no-such-paper = Es gibt hier kein Papier „{ $paper }“.
    .hint = Verlang a4 oder letter.
fault-no-sheet = Ein Protokoll gibt es nur von einer Kontrolle oder einer Arbeit.
    .hint = Wähl im Verlauf der Maschine eine Kontrolle, eine Arbeit, ihre Zweitkontrolle oder ihre Freigabe.

## The record sheet

paper-inspection = Protokoll einer Kontrolle
paper-work = Protokoll einer Arbeit
paper-machine = Maschine
paper-engine = Motor
paper-serials = Seriennummern
paper-owner = Angelegt von
paper-invented = Erfunden
paper-invented-words = Diese Maschine und ihre Geschichte gibt es nur in der Vorführung.
paper-none-written = Keine aufgeschrieben
paper-service = { $hours } Motorstunden, { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }
paper-service-then = Betriebszeit
paper-date = Datum der Kontrolle
paper-took = { $to }. Erster Punkt gezeigt { $from }, { $minutes } min.
paper-type = Art und Umfang
paper-extent = Liste „{ $list }“: { $looked } von { $points } Punkten angesehen. Stationen: { $stations }. Liste, wie zusammengestellt: { $digest }.
paper-outcome-serviceable = Jeder Punkt, den die Liste verlangt, wurde angesehen, und nichts wurde gefunden, das die Maschine am Boden hält oder zu beobachten ist.
paper-outcome-watch = Nichts wurde gefunden, das die Maschine am Boden hält. { $watch ->
    [one] Ein Punkt ist
   *[other] { $watch } Punkte sind
  } zu beobachten.
paper-outcome-unserviceable = Nicht flugklar: { $unserviceable ->
    [one] Ein Punkt wurde
   *[other] { $unserviceable } Punkte wurden
  } für unbrauchbar befunden{ $watch ->
    [0] .
    [one] , und einer ist zu beobachten.
   *[other] , und { $watch } sind zu beobachten.
  }
paper-outcome-missed = Nicht vollständig: Punkte, die die Liste verlangt, wurden nicht angesehen.
paper-outcome-released = Freigegeben: Die Kontrollen dieser Arbeit sind vollständig.
paper-outcome-open = Nicht freigegeben. { $lacks }
paper-wanting = Für mangelhaft befunden
paper-open = Offen an dieser Maschine am { $day }
paper-nothing-open = Nichts ist offen.
paper-findings = Was angesehen und was gesehen wurde
paper-points-left = Nicht angesehen
paper-left = Ausgelassen
paper-left-must = Ausgelassen, obwohl die Liste es verlangt
paper-interruptions = Unterbrechungen, und rasch übergangene Punkte
paper-no-interruptions = Keine: Kein Punkt wurde noch einmal abgefragt, und keiner wurde viel schneller beantwortet, als Hinsehen dauert.
paper-stepped-back = { $at }: { $minutes } min weg, deshalb wurden noch einmal abgefragt: { $titles }.
paper-hurried = { $points ->
    [one] Ein Punkt wurde
   *[other] { $points } Punkte wurden
  } viel schneller beantwortet, als Hinsehen dauert, und trotzdem unterschrieben: { $titles }.
paper-hurried-all = Alle { $points } Punkte wurden viel schneller beantwortet, als Hinsehen dauert, und trotzdem unterschrieben.
paper-band = Grenzwert { $band }. { $source }
paper-torque = { $tool } auf { $setting } eingestellt; mit seiner Abweichung hat jede Mutter zwischen { $least } und { $most }. Weg vor dem Klick, Achteldrehungen, Mutter für Mutter: { $eighths }.
paper-reading = Abgelesen: { $reading } an der Mutter.
paper-override = Das Werkzeug wurde benutzt, obwohl etwas dagegen sprach: { $because }
paper-note = Notiz: { $note }
paper-photos = { $count ->
    [one] Bild
   *[other] Bilder
  }, nach Prüfsumme: { $photos }
paper-before = Vorher geantwortet und zurückgenommen: { $words }
paper-corrected = Später berichtigt: { $words }. Grund: { $reason }
paper-rectified = Behoben am { $day } von { $person }: { $how }
paper-means-serviceable = brauchbar
paper-means-watch = zu beobachten
paper-means-unserviceable = unbrauchbar
paper-means-not-fitted = nicht verbaut
paper-means-open = nicht angesehen

paper-begun = Arbeit begonnen
paper-begun-words = { $at } von { $person }, bei { $service }.
paper-completed = Datum des Abschlusses
paper-not-released = Noch nicht freigegeben
paper-description = Beschreibung der Arbeit
paper-disturbed = Gelöst oder zerlegt: { $joints }.
paper-independent = Von einer anderen Person anzusehen: { $joints }.
paper-follow-up = Später fällig: { $title }, nach { $after }.
paper-hours = { $n ->
    [one] einer Motorstunde
   *[other] { $n } Motorstunden
  }
paper-flights = { $n ->
    [one] einem Flug
   *[other] { $n } Flügen
  }
paper-tanks = { $n ->
    [one] einer Tankfüllung
   *[other] { $n } Tankfüllungen
  }
paper-days = { $n ->
    [one] einem Tag
   *[other] { $n } Tagen
  }
paper-or = {" "}oder{" "}
paper-first-of = { $words }, was zuerst eintritt
paper-list-after = Die Liste nach der Arbeit
paper-second-look = Zweitkontrolle durch eine andere Person
paper-looked-by = { $person }, { $at }
paper-joint-good = Wie es sein soll
paper-joint-wanting = Für mangelhaft befunden
paper-no-second-look = Niemand hat eine Zweitkontrolle unterschrieben.

paper-statement = Erklärung und Unterschriften
paper-statement-words = Die unten genannten Personen erklären, dass sie an dem angegebenen Tag und bei der angegebenen Betriebszeit angesehen haben, was auf diesem Blatt aufgeführt ist, und gesehen haben, was hier geschrieben steht. Wo etwas als unbrauchbar, zu beobachten oder nicht angesehen aufgeführt ist, ist dieses Blatt die datierte Liste davon.
paper-not-a-certificate = Das ist die eigene Erklärung der Unterzeichner. Es ist keine amtliche Bescheinigung. Die Handbücher der Hersteller, die örtlichen Vorschriften und wer die nötige Berechtigung hat, gehen vor; wo die Arbeit eine Berechtigung verlangt, unterschreibt, wer sie hat, in eigener Verantwortung. Eine volle Liste ist kein sicherer Flug: Wetter, Platz und sich selbst beurteilt der Pilot.
paper-compare = Es zählt der Eintrag, nicht dieser Druck. Zum Vergleichen lies den Code ein oder such die Prüfsumme in der App: Der Eintrag sagt dasselbe, und seine Unterschrift lässt sich prüfen.
paper-signed-inspection = Die Kontrolle
paper-signed-job = Arbeit begonnen
paper-signed-list = Die Liste nach der Arbeit
paper-signed-earlier-list = Eine frühere Liste nach der Arbeit
paper-signed-look = Zweitkontrolle
paper-signed-release = Freigabe
paper-by = Unterschrieben von
paper-at = Unterschrieben am
paper-device = Geräteschlüssel (Fingerabdruck)
paper-digest = Prüfsumme des Eintrags (SHA-256)
paper-checked = Beim Drucken geprüft
paper-by-hand = Von Hand, wo Vorschriften es verlangen
paper-certificate = Schein oder Berechtigung: Art und Nummer
paper-hand-name = Name und Datum
paper-hand-signature = Unterschrift
paper-lacking = Ein leeres Kästchen (□) steht für einen Buchstaben, den die Schrift dieses Drucks nicht hat. Im Eintrag steht der Buchstabe selbst.
paper-code = Ein Code mit der Prüfsumme des Eintrags, um den Eintrag zu suchen und zu vergleichen.
paper-code-under = Zum Vergleichen einlesen. Eintrag { $digest }
paper-foot = Eintrag { $digest } · gedruckt { $at } · { $machine } · { $title }

## The label

paper-label-code = Ein Code, der diese Maschine in der App öffnet.
paper-label-hint = In der App einlesen, um diese Maschine zu öffnen.

## The table

paper-taken-back = Zurückgenommen
paper-unsigned = Noch nicht unterschrieben.
paper-repacked = Rettungsschirm gepackt am
paper-least = Mindestens
paper-most = Höchstens

## The calendar

paper-calendar = { $machine }: was fällig wird
paper-undated = Ohne Tag, weil zu wenig geflogen wird, um einen zu nennen: { $titles }
paper-due = { $machine }: fällig ist { $title }
paper-due-about = { $machine }: etwa jetzt fällig ist { $title }
paper-due-day = Nach dem Kalender am { $day }.
paper-every = Fällig nach { $every }.
paper-repack = { $machine }: Rettungsschirm packen
paper-repack-words = { $days } Tage nach dem letzten Packen, wie die Beschreibung der Maschine sagt. Das Handbuch des Rettungsschirms und sein Packnachweis gehen vor.
paper-deferral = { $machine }: letzter Tag, an dem es warten darf: { $title }
paper-calibration = { $tool }: Kalibrierung fällig
paper-calibration-words = Ab diesem Tag gilt seine Kalibrierung nicht mehr. Ein Werkzeug, das heruntergefallen oder überlastet worden ist, wird kalibriert, bevor es wieder benutzt wird, welcher Tag auch ist.
