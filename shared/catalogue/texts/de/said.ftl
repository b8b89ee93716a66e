# German, "du". What the program says of machines, records and faults.

day = { $day }. { $month ->
    [1] Januar
    [2] Februar
    [3] März
    [4] April
    [5] Mai
    [6] Juni
    [7] Juli
    [8] August
    [9] September
    [10] Oktober
    [11] November
   *[12] Dezember
  } { $year }

decimal-mark = ,

## Cautions that hold always

always-1 = Der Propellerkreis ist Gefahrenbereich: Kerzenstecker ab (elektrisch: Flugakku getrennt) und Stoppschalter auf Stopp, bevor eine Hand in die Nähe des Propellers kommt.
always-2 = Lass den Motor abkühlen, bevor du ihn anfasst oder einen Schlüssel ansetzt. Kraftstoffdampf brennt: keine Flamme, und kein Handy in der Hand, die tankt.
always-3 = Die Handbücher von Motor- und Schirmhersteller und die örtlichen Vorschriften gehen vor. Zahlen hier sind Gedächtnisstützen: Weichen sie ab, halt ein und folge dem Handbuch.
always-4 = Wo die Arbeit eine Berechtigung verlangt, unterschreibt, wer sie hat, in eigener Verantwortung. Eine Unterschrift hier ist deine eigene Erklärung, keine amtliche Bescheinigung.
always-5 = Eine volle Liste ist kein sicherer Flug: Wetter, Platz und sich selbst beurteilt der Pilot.

## Lists, engines, parts, limits

occasion-before-flight = Vor dem Flug
occasion-second-flight = Zweiter Flug des Tages
engine-two-stroke = Zweitaktmotor
engine-four-stroke = Viertaktmotor
engine-electric = Elektromotor
part-frame = Rahmen
part-harness = Gurtzeug
part-reserve = Rettungsschirm
part-fuel = Kraftstoffanlage
part-electrics = Elektrik
part-engine = Motor
part-carburettor = Vergaser
part-exhaust = Auspuff
part-reduction = Untersetzung
part-starter = Starter
part-throttle = Gashebel
part-propeller = Propeller
part-cage = Käfig und Netz
part-wing = Schirm
band-fuel-on-board = Kraftstoff an Bord
band-throttle-free-travel = Leerweg am Gaszug
band-propeller-tracking = Spurlauf des Propellers
band-idle-speed = Leerlaufdrehzahl
band-full-throttle-speed = Vollgasdrehzahl am Boden
band-head-nut-torque = Drehmoment der Kopfmuttern
band-cht-cruise = Zylinderkopftemperatur im Reiseflug
band-cht-climb = Zylinderkopftemperatur im Steigflug
band-pack-voltage = Spannung des Flugakkus
term-hours = Motorstunden
machine-unnamed = Eine Maschine, die niemand beschrieben hat

source-document = { $document }, { $page }
source-unconfirmed = Unbestätigt ({ $why }): Vergleich es mit deinem Handbuch.
source-missing = Unbestätigt: Gib Wert und Seite aus deinem Handbuch ein.
figure-missing = (unbestätigt: siehe dein Handbuch)
figure-unconfirmed = Diese Zahl ist unbestätigt: Es zählt der Wert in deinem Handbuch. Gib ihn mit seiner Seite auf der Seite der Maschine ein.

## The verdict

verdict-fit = Flugklar
verdict-limited = Flugklar, mit { $limits ->
    [one] einer Einschränkung
   *[other] { $limits } Einschränkungen
  }
verdict-grounded = Gesperrt

reason-no-description = Diese Maschine hat noch niemand beschrieben.
clears-no-description = Beschreib sie: Motor, Teile, Rettungsschirm.
reason-unknown-engine = Der Motortyp „{ $engine }“ steht nicht im Katalog dieses Programms, seine Grenzwerte sind also unbekannt.
clears-unknown-engine = Wähl einen bekannten Motortyp, oder füg sein Datenblatt hinzu.
reason-never-looked = Noch niemand hat den Rundgang gemacht und unterschrieben.
clears-never-looked = Mach den Rundgang vor dem Flug und unterschreib.
reason-not-today = Die letzte volle Kontrolle vor dem Flug war am { $day }, nicht heute.
clears-not-today = Mach heute den Rundgang und unterschreib.
reason-point-missed = Nicht angesehen: { $title }.
clears-point-missed = Sieh es dir auf einer neuen Liste an und unterschreib.
reason-open-defect = { $title }: { $words }.
clears-open-defect = Behebe es und unterschreib, was getan wurde. Eine spätere Kontrolle allein hebt es nicht auf.
clears-passing = Behebe es und sieh noch einmal hin: Eine spätere unterschriebene Kontrolle hebt es auf.
reason-watch-item = Zu beobachten. { $title }: { $words }{ $looks ->
    [one] .
   *[other] , bei { $looks } Kontrollen gesehen.
  }
clears-watch-item = Eine Kontrolle, die nichts findet, hebt es auf, oder die Behebung.
reason-reserve-expired = Der Packtermin des Rettungsschirms war am { $day }.
clears-reserve-expired = Lass ihn neu packen und gib das neue Datum vom Packnachweis ein.
reason-reserve-unknown = Niemand weiß, wann der Rettungsschirm gepackt wurde.
clears-reserve-unknown = Lies das Datum auf dem Packnachweis, oder lass ihn neu packen; gib das Datum ein.
reason-reserve-soon = Der Packtermin des Rettungsschirms ist am { $day }.
reason-limit-missing = { $band }: Den Grenzwert hat noch niemand eingegeben.
reason-limit-unconfirmed = { $band }, { $value }: von keinem Handbuch bestätigt.
clears-limit = Gib Wert und Seite aus deinem Handbuch ein.
reason-newer-record = Ein Eintrag einer Art, die diese Version nicht lesen kann („{ $kind }“). Er könnte wichtig sein.
clears-newer-record = Installier die neueste Version dieses Programms.
reason-split-word = Zwei verschiedene Einträge vom Gerät von { $person } beanspruchen denselben Platz: Einer davon kann falsch sein.
clears-split-word = Frag { $person }; der Schlüssel kann kopiert oder verloren sein.
reason-refused-record = { $count ->
    [one] Ein Eintrag wurde
   *[other] { $count } Einträge wurden
  } abgelehnt: Unterschrift oder Schlüssel ist nicht gut.
clears-refused-record = Bitte den Verfasser, ihn noch einmal zu schicken.
reason-clock-doubt = Ein Eintrag trägt das Datum { $day } und ist damit der Uhr dieses Geräts voraus.
clears-clock-doubt = Stell Datum und Uhrzeit dieses Geräts richtig.
reason-job-open = Arbeit nicht freigegeben: { $title }.
clears-job-open = Arbeite ihre Liste ab, lass die kritischen Verbindungen von einer anderen Person ansehen, dann gib sie frei.
clears-job-ready = Alles ist da: Gib sie frei.
lack-inspection = Die Liste nach der Arbeit hat noch niemand unterschrieben.
lack-points = Nach der Arbeit nicht angesehen: { $titles }.
lack-points-other = Die unterschriebene Liste nach der Arbeit enthält nicht alle Punkte der Arbeit.
lack-found = Nach der Arbeit wurde etwas Unbrauchbares gefunden.
lack-second-look = Eine andere Person hat es noch nicht angesehen: { $joint }.
lack-wanting = Die zweite Person fand es mangelhaft: { $joint }.
reason-first-flight = Erster Flug nach der Arbeit ({ $title }): Bleib in Platznähe und hoch genug, um ohne Motor zu landen.
reason-after-first-flight = Seit der Arbeit ({ $title }) einmal geflogen und danach nicht angesehen.
clears-first-flight = Trag diesen Flug ein, dann mach den Rundgang und unterschreib.
reason-follow-up-due = { $by ->
    [tanks] Höchstens noch { $tanks ->
        [one] eine Tankfüllung
       *[other] { $tanks } Tankfüllungen
      } fliegen, dann ist fällig: { $title }.
    [flights] Höchstens noch { $flights ->
        [one] einen Flug
       *[other] { $flights } Flüge
      } fliegen, dann ist fällig: { $title }.
    [days] Fällig in { $days ->
        [one] einem Tag
       *[other] { $days } Tagen
      }: { $title }.
   *[hours] Höchstens noch { $hours } h fliegen, dann ist fällig: { $title }.
  }
reason-follow-up-over = Jetzt fällig, nach früherer Arbeit: { $title }.
clears-follow-up = Mach es und unterschreib es als Arbeit.
reason-due-soon = Bald fällig: { $title }, in { $by ->
    [flights] { $flights ->
        [one] einem Flug
       *[other] { $flights } Flügen
      }
    [days] { $days ->
        [one] einem Tag
       *[other] { $days } Tagen
      }
    [tanks] { $tanks ->
        [one] einer Tankfüllung
       *[other] { $tanks } Tankfüllungen
      }
   *[hours] { $hours } h
  }.
reason-due-tolerated = Über dem Termin, aber noch in der Toleranz: { $title }.
reason-due-over = Überfällig: { $title }.
clears-due = Mach es und gib ein, wann es getan wurde.
reason-deferred = { $title }: { $words }. Darf warten; bis dahin: { $condition }
reason-deferral-over = { $title }: { $words }. Es durfte warten, und diese Zeit ist um.
deferred-hours = Gilt bis { $hours } Motorstunden.
deferred-flights = Gilt bis Flug { $flights }.
deferred-date = Gilt bis { $day }.
fact-seen = { $words } · { $day }, bei { $hours } h, { $person }
open-since = { $day }, bei { $hours } h, von { $person }

## Walking a list

last-time = Letztes Mal: { $words }, bei { $hours } h.
stepped-back = Du warst { $minutes } min weg, deshalb { $points ->
    [one] wird der letzte Punkt
   *[other] werden die letzten { $points } Punkte
  } noch einmal abgefragt.
stepped-back-day = Diese Liste wurde an einem anderen Tag begonnen, deshalb { $points ->
    [one] wird ihr Punkt
   *[other] werden ihre { $points } Punkte
  } noch einmal abgefragt: Niemand weiß, was die Nacht getan hat.
caution-cold-wrench = Nur bei kaltem Motor. Kleine Gewinde in weichem Metall: Beim Klick ist Schluss, niemals ein bisschen mehr. Danach den Schlüssel entspannen.
torque-title = { $joint }: anziehen
torque-good = Jede Mutter klickt, in der gezeigten Reihenfolge, und dreht sich etwa so weit wie die anderen.
torque-bad = Eine Mutter, die weiterdreht, klemmt oder sich viel weiter dreht als die anderen.
torque-why = Ungleich gespannt zieht die Verbindung Luft; eine Drehung zu viel reißt das Gewinde aus.
torque-spread = { $tool }: Seine ±{ $deviation } % machen daraus { $low } bis { $high } an der Mutter.
torque-done = Mit { $tool } auf { $setting }; Achteldrehungen vor dem Klick: { $eighths }
torque-done-watch = Mit { $tool } auf { $setting }; Achteldrehungen vor dem Klick: { $eighths }. { $watch }
torque-borne = Ein Stehbolzen { $thread } der Festigkeitsklasse { $class } wird dann mit { $low } bis { $high } kN gezogen, höchstens { $percent } % dessen, was ihn fließen lässt; das Gewinde im weichen Metall trägt das { $margin }-Fache davon. { $confirmed ->
    [yes] {""}
   *[no] (Diese Zahlen sind unbestätigt.)
  }
torque-not-borne = Ein Stehbolzen { $thread } der Festigkeitsklasse { $class } würde mit { $low } bis { $high } kN gezogen, bis zu { $percent } % dessen, was ihn fließen lässt; das Gewinde im weichen Metall trägt das { $margin }-Fache davon. Zu viel für diese Verbindung. { $confirmed ->
    [yes] {""}
   *[no] (Diese Zahlen sind unbestätigt.)
  }
torque-over = { $percent } % über dem Grenzwert: Der Stehbolzen kann gelängt, das Gewinde ausgezogen sein. Nimm es auseinander, sieh nach und erneuere, was das abbekommen hat.
stage-share = Runde mit { $percent } %
stage-check = Kontrollrunde
tool-good-until = Kalibriert; gültig bis { $day }.
tool-outside-range = Der Einstellwert liegt nicht auf seiner Skala.
tool-overdue = Seine Kalibrierung lief am { $day } ab.
tool-worn = Es hat seit der Kalibrierung { $cycles }-mal geklickt; erlaubt sind { $allowed }.
tool-dropped = Es ist seit der Kalibrierung heruntergefallen oder überlastet worden.
tool-never-calibrated = Niemand weiß, wann es kalibriert wurde.
tool-calibrated-later = Seine Kalibrierung trägt das Datum { $day }, und der Tag kommt erst noch.
tool-joint-limit = Was es abgeben kann, reicht an das heran, was die Verbindung trägt.
tool-overridden = Trotzdem benutzt, Grund: { $because }
movement-too-far = Mutter { $nut } drehte sich vor dem Klick um { $eighths } Achtel: mehr als eine halbe Drehung.
movement-uneven = Die Muttern drehten sich ungleich: von { $least } bis { $most } Achteldrehungen.
movement-growing = Mutter { $nut } drehte sich weiter als letztes Mal: damals { $before }, jetzt { $now } Achtel.
judged-serviceable = Im Sollbereich.
judged-watch = Zu beobachten.
judged-unserviceable = Damit nicht flugklar.
judged-not-fitted = Nicht verbaut.
summary-looked = Du hast { $done } von { $of } Punkten in { $minutes } min angesehen.
summary-short-serviceable = Alles brauchbar in { $seconds } Sekunden: { $points } Punkte in weniger Zeit, als Hinsehen dauert.
summary-short = Nur { $seconds } Sekunden für { $points } Punkte: weniger Zeit, als Hinsehen dauert.
summary-short-usual = Meist dauern sie { $seconds } Sekunden.
summary-hurried = { $points ->
    [one] Ein Punkt wurde
   *[other] { $points } Punkte wurden
  } viel schneller beantwortet, als Hinsehen dauert. Noch einmal ansehen?
summary-left = { $points ->
    [one] Ein Punkt wurde
   *[other] { $points } Punkte wurden
  } nicht angesehen.

## The timeline and records

told-machine = Beschrieben: { $words }
told-inspection = { $list }: { $worst ->
    [unserviceable] Unbrauchbares gefunden
    [watch] etwas zu beobachten
   *[other] nichts gefunden
  }
told-defect-rectified = Behoben: { $words }
told-correction = Berichtigt: { $words }
told-limit-confirmed = Grenzwert aus einem Handbuch eingegeben: { $words }
told-time-logged = Gelaufen oder geflogen: { $words } h
told-job-begun = Arbeit begonnen: { $words }
told-second-look = Eine zweite Person hat es angesehen
told-job-released = Arbeit freigegeben
told-defect-deferred = Darf warten: { $words }
told-component-moved = Komponente umgebaut: { $words }
told-due-item = Immer wieder fällig: { $words }
due-left = { $by ->
    [flights] { $flights ->
        [one] Noch ein Flug
       *[other] Noch { $flights } Flüge
      }
    [days] { $days ->
        [one] Noch ein Tag
       *[other] Noch { $days } Tage
      }
    [tanks] { $tanks ->
        [one] Noch eine Tankfüllung
       *[other] Noch { $tanks } Tankfüllungen
      }
   *[hours] Noch { $hours } h
  }
due-over = { $by ->
    [flights] Jetzt fällig{ $flights ->
        [0] {""}
        [one] , ein Flug darüber
       *[other] , { $flights } Flüge darüber
      }
    [days] Jetzt fällig{ $days ->
        [0] {""}
        [one] , ein Tag darüber
       *[other] , { $days } Tage darüber
      }
    [tanks] Jetzt fällig{ $tanks ->
        [0] {""}
        [one] , eine Tankfüllung darüber
       *[other] , { $tanks } Tankfüllungen darüber
      }
   *[hours] Jetzt fällig, { $hours } h darüber
  }
due-forecast = Wenn du weiter so viel fliegst, etwa am { $at }; in vier von fünf Fällen zwischen { $low } und { $high }.
component-time = { $hours } h, { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }
told-unknown = Ein Eintrag einer Art, die diese Version nicht lesen kann.
kind-member = Eine Person und ihr Gerät
kind-device-vouched = Weiteres Gerät derselben Person
kind-key-revoked = Schlüssel widerrufen
kind-machine = Beschreibung einer Maschine
kind-inspection = Kontrolle
kind-defect-rectified = Etwas behoben
kind-correction = Berichtigung
kind-limit-confirmed = Grenzwert aus einem Handbuch
kind-time-logged = Betriebszeit
kind-job-begun = Arbeit begonnen
kind-second-look = Zweitkontrolle
kind-job-released = Freigabe
kind-defect-deferred = Zurückstellung
kind-tool = Drehmomentwerkzeug
kind-component-moved = Komponente umgebaut
kind-due-item = Wiederkehrend Fälliges
kind-school-founded = Schule gegründet
kind-school-joined = Gerät tritt einer Schule bei
kind-member-admitted = Mitglied aufgenommen
kind-member-ended = Mitgliedschaft beendet
kind-root-handed = Stammgerät gewechselt
kind-machine-enrolled = Maschine einer Schule unterstellt
kind-catalogue-published = Listen veröffentlicht
role-viewer = Leser
role-pilot = Pilot
role-mechanic = Mechaniker
role-instructor = Fluglehrer
says-time = { $hours } h, { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }, { $tanks ->
    [one] eine Tankfüllung
   *[other] { $tanks } Tankfüllungen
  }; Stundenzähler: { $reading }.
says-job = { $title }. { $note }
says-second-look = { $joints ->
    [one] Eine Verbindung
   *[other] { $joints } Verbindungen
  } von einer zweiten Person angesehen.
says-released = Die Kontrollen dieser Arbeit sind vollständig. Das ist die eigene Erklärung des Unterzeichners, keine amtliche Bescheinigung.
says-deferred = Es darf warten, Grund: { $reason }. Bis dahin: { $condition }
says-tool = { $name }, Skala von { $low } bis { $high }.
says-component = { $name } { $fitted ->
    [on] angebaut
   *[off] abgebaut
  }, eigene Betriebszeit { $hours } h.
says-due = { $title }
says-school-founded = Die Schule „{ $name }“ beginnt; dieses Gerät ist ihr Stammgerät.
says-school-joined = Dieses Gerät tritt der Schule { $school } bei; ihr Stammgerät darf den Schlüssel dieses Geräts widerrufen.
says-member-admitted = { $name } gehört zur Schule: { $role }, ab { $from }{ $until ->
    [empty] {""}
   *[other] {" "}bis { $until }
  }.
says-member-ended = Die Mitgliedschaft endete: { $reason }
says-root-handed = Gerät { $device } ist jetzt das Stammgerät der Schule.
says-machine-enrolled = { $school ->
    [empty] Die Maschine verlässt ihre Schule.
   *[other] Für die Maschine gelten die Rollen der Schule { $school }.
  }
says-published = „{ $title }“, Version { $version }, { $files ->
    [one] eine Datei
   *[other] { $files } Dateien
  }, für alle Mitglieder der Schule.
says-member = { $name } unterschreibt mit diesem Gerät.
says-vouched = Dieselbe Person hat auch das Gerät { $device }.
says-revoked = Der Schlüssel von Gerät { $device } wurde widerrufen: { $reason }
says-machine = { $name }, Motor { $engine }, { $hours } h, { $flights ->
    [one] ein Flug
   *[other] { $flights } Flüge
  }.
says-rectified = Behoben: { $how }
says-correction = { $title } soll heißen „{ $words }“: { $reason }
says-limit = { $band }: von { $low } bis { $high }; { $document }, { $page }.
signature-good = Die Unterschrift ist gut: Genau das wurde unterschrieben.
signature-bad = Die Unterschrift passt nicht: Der Eintrag wurde geändert, oder jemand anders hat unterschrieben.
signature-unknown-key = Nichts hier sagt, wessen Schlüssel das ist.
signature-revoked = Unterschrieben, nachdem der Schlüssel widerrufen war.
signature-not-checked = Die Unterschrift hat niemand geprüft.

## Verifying a file

verify-good = { $records ->
    [one] Der eine Eintrag ist
   *[other] Alle { $records } Einträge sind
  } so, wie unterschrieben, und dazwischen fehlt keiner.
verify-bad = { $faults ->
    [one] Ein Fehler
   *[other] { $faults } Fehler
  } in { $records ->
    [one] einem Eintrag
   *[other] { $records } Einträgen
  }. Verlass dich nicht auf diese Datei.
verify-unreadable = Zeile { $line } ist kein Eintrag: { $why }
    .hint = Bitte den Absender noch einmal um die Datei; bearbeite sie nicht.
verify-bad-signature = Zeile { $line }, Eintrag { $record }: Die Unterschrift passt nicht. Der Eintrag wurde nach dem Unterschreiben geändert, oder jemand anders hat unterschrieben.
    .hint = Verlass dich nicht darauf. Bitte den Besitzer von Gerät { $device } um den Eintrag, wie er ihn unterschrieben hat.
verify-unknown-key = Zeile { $line }, Eintrag { $record }: Kein Eintrag in dieser Datei nennt den Schlüssel von Gerät { $device }.
    .hint = Bitte den Absender um die ganze Datei, mit den Personen, die unterschrieben haben.
verify-revoked-key = Zeile { $line }, Eintrag { $record }: unterschrieben von Gerät { $device }, nachdem sein Schlüssel widerrufen war.
    .hint = Verlass dich nicht darauf: Vielleicht benutzt jemand ein verlorenes Gerät.
verify-malformed = Zeile { $line }, Eintrag { $record }: sagt etwas, das ein Eintrag der Art „{ $kind }“ nicht sagen kann ({ $why }).
    .hint = Verlass dich nicht darauf. Das Programm des Verfassers kann fehlerhaft sein.
verify-missing-record = Gerät { $device }: Von seiner Kette zu dieser Maschine fehlt in der Datei, was von Eintrag { $from } bis Eintrag { $to } liegt.
    .hint = Bitte den Absender um die ganze Datei: Etwas wurde weggelassen.
verify-broken-chain = Zeile { $line }, Eintrag { $record }: folgt nicht auf den Eintrag davor.
    .hint = Ein Eintrag wurde an die Stelle eines anderen gesetzt. Bitte den Besitzer von Gerät { $device } um die ganze Datei.
verify-forked-chain = Zeile { $line }, die Einträge { $record } und { $other } von Gerät { $device } beanspruchen denselben Platz.
    .hint = Einer der beiden ist falsch, oder der Schlüssel wurde kopiert. Frag den Besitzer.

## The database set aside

warning-rescued = Die Datenbank war beschädigt und liegt jetzt beiseite als { $file }. { $records } Einträge und dein Schlüssel wurden übernommen; { $lost } Zeilen gingen verloren.
warning-rescued-without-key = Die Datenbank war beschädigt und liegt jetzt beiseite als { $file }. { $records } Einträge wurden übernommen, { $lost } Zeilen gingen verloren; der Schlüssel war nicht zu retten, deshalb entsteht ein neuer: Sag es allen, die den alten kennen.

## Faults: what went wrong, and what to do

fault-internal = Das Programm hat einen Fehler gemacht: { $why }
    .hint = Nichts, was du vorher eingegeben hast, ist verloren. Versuch es noch einmal; bleibt es so, nenn den Herstellern diese Worte.
fault-disk-full = Auf diesem Gerät ist kein Platz mehr, deshalb wurde der letzte Schritt nicht gespeichert.
    .hint = Schaff Platz (Fotos und Filme brauchen am meisten), dann mach den letzten Schritt noch einmal. Alles davor ist gespeichert.
fault-disk = Der Speicher des Geräts antwortet nicht: { $why }
    .hint = Alles bis zur letzten Antwort ist gespeichert. Sieh nach, ob der Speicher voll, schreibgeschützt oder abgezogen ist, dann versuch es noch einmal.
fault-database-damaged = Die Datenbank ist beschädigt: { $why }
    .hint = Schließ das Programm und starte es wieder: Es legt die beschädigte Datei beiseite und übernimmt, was zu retten ist.
fault-database-busy = Ein anderes Programm benutzt die Datenbank.
    .hint = Schließ das andere Fenster oder den anderen Befehl, dann versuch es noch einmal.
fault-database-newer = Diese Daten hat eine neuere Version geschrieben (Format { $found }; dieses Programm kennt { $known }).
    .hint = Installier die neueste Version. Nichts wurde geändert.
fault-catalogue = Der Katalog hat einen Fehler bei { $where }: { $why }
    .hint = Bring die Datei in Ordnung (`witnessmark validate FILE` zeigt jeden Fehler), dann starte neu.
fault-no-randomness = Dieses System liefert keinen Zufall, deshalb kann kein Schlüssel entstehen: { $why }
    .hint = Starte das Gerät neu; ohne Zufall lässt sich nichts sicher unterschreiben.
fault-no-such = „{ $what }“ gibt es hier nicht.
    .hint = Sieh in die Liste der Maschinen und wähl eine davon.
fault-ambiguous = „{ $what }“ passt auf mehr als eine Maschine: { $which }
    .hint = Gib mehr von der Kennung an, oder den ganzen Namen.
fault-no-such-point = Diese Liste hat keinen Punkt „{ $point }“.
    .hint = `witnessmark points` zeigt die Punkte der Liste.
fault-no-such-answer = Der Punkt „{ $point }“ hat keine Antwort „{ $answer }“.
    .hint = Wähl eine der Antworten dieses Punkts; `witnessmark points` zeigt sie.
fault-no-such-occasion = Es gibt keine Liste „{ $occasion }“.
    .hint = Die Listen sind: { $known }.
fault-no-such-language = Es gibt keine Sprache „{ $language }“.
    .hint = Wähl eine der gezeigten Sprachen.
fault-answer-missing = Es wurde keine Antwort gegeben.
    .hint = Wähl, was du siehst, oder gib den Wert ein.
fault-answer-kind = Der Punkt „{ $point }“ verlangt als Antwort { $what ->
    [torque] das Anziehen, mit einem Werkzeug
    [value] einen Wert mit Einheit
   *[words] eine seiner eigenen Antworten
  }.
    .hint = Ein Messpunkt nimmt einen Wert mit Einheit; jeder andere eine seiner eigenen Antworten.
fault-unit = Die Einheit passt nicht: { $why }
    .hint = Gib den Wert in einer der gezeigten Einheiten an.
fault-nothing-to-undo = Es gibt keine Antwort, die du zurücknehmen kannst.
    .hint = Sieh dir den ersten Punkt an.
fault-nothing-to-sign = Noch ist nichts angesehen.
    .hint = Sieh dir zuerst die Punkte an.
fault-look-again-first = „{ $point }“ ist nach der Unterbrechung noch einmal anzusehen.
    .hint = Antworte noch einmal, dann unterschreib.
fault-walk-closed = Diese Kontrolle ist abgeschlossen: Sie wurde unterschrieben oder beiseitegelegt.
    .hint = Öffne die Liste wieder, um eine neue zu beginnen.
fault-walk-of-another-day = Die letzte Antwort stammt von einem anderen Tag.
    .hint = Öffne die Liste wieder: Sie fragt, was noch einmal anzusehen ist.
fault-note-too-long = Der Text ist länger als { $most } Zeichen.
    .hint = Sag es kürzer; was du geschrieben hast, ist noch da.
fault-photo-unreadable = Diese Datei ist kein lesbares Bild.
    .hint = Nimm ein Bild im Format JPEG, PNG oder WebP.
fault-photo-too-large = Dieses Bild ist zu groß.
    .hint = Nimm eines unter 40 MB und 60 Megapixeln.
fault-no-photo = Das Bild ist nicht auf diesem Gerät.
    .hint = Vielleicht ist es noch auf dem Gerät, das es aufgenommen hat.
fault-name-missing = Es braucht einen Namen: bis zu 80 Buchstaben.
    .hint = Gib den Namen ein, unter dem andere dich kennen.
fault-pin-weak = Die PIN braucht mindestens { $least } Ziffern, nicht alle gleich.
    .hint = Wähl Ziffern, die niemand errät und die du dir merkst: Niemand kann sie zurücksetzen.
fault-pin-wrong = Das ist nicht die PIN.{ $seconds ->
    [0] {""}
   *[other] {" "}Warte { $seconds } s bis zum nächsten Versuch.
  }
    .hint = Versuch es noch einmal. Nichts wird gelöscht, so oft du es auch versuchst.
fault-pin-wait = Nach mehreren falschen PINs gibt es eine Wartezeit: noch { $seconds } s.
    .hint = Warte, dann gib die PIN noch einmal ein. Nichts wird gelöscht.
fault-pin-needed = Zum Unterschreiben braucht es die PIN.
    .hint = Gib sie mit --pin-file FILE an, oder führ den Befehl in einem Terminal aus, dann wirst du gefragt.
fault-already-begun = Dieses Gerät hat seinen Schlüssel schon.
    .hint = Benutz ihn; für einen neuen Anfang wähl einen anderen Datenordner.
fault-not-begun = Auf diesem Gerät unterschreibt noch niemand.
    .hint = Mach den ersten Start: dein Name und eine PIN.
fault-key-missing = Der Schlüssel dieses Geräts ist nicht lesbar.
    .hint = Was schon unterschrieben ist, gilt weiter. Beginn neu in einem anderen Datenordner und sag es allen, die den alten Schlüssel kennen.
fault-keychain-missing = Der Schlüsselbund des Systems, der den Schlüssel hüten hilft, antwortet nicht ({ $why }).
    .hint = Entsperr den Schlüsselbund, oder melde dich in der Sitzung an, in der der Schlüssel entstand.
fault-patience-out-of-range = Die Zeit, nach der eine Liste zurückgeht, ist 1 bis 120 Minuten.
    .hint = Gib eine Zahl von Minuten ein.
fault-description-missing = Es wurde keine Beschreibung angegeben.
    .hint = Gib mindestens Name und Motortyp ein.
fault-machine-name = Die Maschine braucht einen Namen von bis zu 60 Buchstaben.
    .hint = Gib ein, wie man sie nennt.
fault-engine-unknown = Es gibt keinen Motortyp „{ $engine }“.
    .hint = Wähl einen der gezeigten Motortypen.
fault-part-unknown = Es gibt kein Teil „{ $part }“.
    .hint = Wähl unter den gezeigten Teilen.
fault-number-negative = Eine Zahl unter null kann nicht sein: { $what }.
    .hint = Gib 0 oder mehr ein.
fault-repack-interval = Die Zeit zwischen zwei Packterminen ist 1 bis { $most } Tage.
    .hint = Gib die Tage ein, die im Handbuch des Rettungsschirms stehen.
fault-repack-in-future = Das Packdatum liegt in der Zukunft.
    .hint = Gib das Datum vom Packnachweis ein.
fault-limit-negative = Das { $end ->
    [low] untere
   *[high] obere
  } Ende des Grenzwerts liegt unter null.
    .hint = Gib 0 oder mehr ein.
fault-limit-end-missing = Das { $end ->
    [low] untere
   *[high] obere
  } Ende des Grenzwerts fehlt.
    .hint = Gib es so ein, wie es im Handbuch steht.
fault-limit-crossed = Das untere Ende liegt über dem oberen.
    .hint = Vertausch die beiden, oder sieh nach, ob eine Einheit falsch ist.
fault-source-missing = Handbuch und Seite sind nötig.
    .hint = Gib Titel und Ausgabe des Handbuchs ein, und die Seite, auf der der Wert steht.
fault-nothing-open = Bei „{ $point }“ ist nichts offen.
    .hint = Auf der Seite der Maschine steht, was offen ist.
fault-rectify-how-missing = Sag, was getan wurde.
    .hint = Ein Satz: was erneuert, angezogen oder getauscht wurde.
fault-correction-reason-missing = Sag, warum.
    .hint = Ein Satz: wie das erste Wort falsch wurde.
fault-not-an-inspection = Dieser Eintrag ist keine Kontrolle.
    .hint = Wähl eine Kontrolle im Verlauf.
fault-reading-behind = Der Stand des Stundenzählers liegt unter dem, was bekannt ist: { $hours } h.
    .hint = Lies ihn noch einmal ab. Sind die bekannten Stunden falsch, beschreib die Maschine neu mit den richtigen.
fault-fuel-burned = Das kann nicht der Kraftstoff sein, der in dieser Zeit verbrannte.
    .hint = Gib den verbrauchten Kraftstoff an, in Litern oder Gallonen, mit den Motorstunden, in denen er verbraucht wurde; oder lass es weg.
fault-time-too-much = Mehr als { $hours } Stunden oder { $flights } Flüge auf einmal kann nicht sein.
    .hint = Gib Tag für Tag ein, was seit der letzten Eingabe gelaufen und geflogen ist.
fault-nothing-logged = Es wurde nichts eingegeben.
    .hint = Gib Stunden, Flüge, eine verbrauchte Tankfüllung oder den Stand des Stundenzählers ein.
fault-log-signed = Keine Betriebszeit wartet noch auf eine Unterschrift.
    .hint = Was unterschrieben ist, bleibt: Gib den richtigen Stand des Stundenzählers neu ein.
fault-deferral-words-missing = Eine Zurückstellung braucht eine Bedingung und einen Grund.
    .hint = Sag, wie inzwischen geflogen werden darf und warum es warten darf.
fault-deferral-limit-missing = Eine Zurückstellung braucht eine Grenze.
    .hint = Gib Motorstunden, eine Flugnummer oder einen Tag ein, bis zu dem sie gilt.
fault-deferral-passed = Diese Grenze ist schon überschritten (jetzt { $hours } h, { $flights } Flüge).
    .hint = Gib eine ein, die noch vor dir liegt.
fault-not-entitled-owner = Nur wer diese Maschine angelegt hat, darf einen Mangel warten lassen.
    .hint = Frag den Halter; oder behebe den Mangel.
fault-not-entitled = Diese Maschine ist { $school ->
    [empty] einer Schule unterstellt, die dieses Gerät nicht kennt
   *[other] der Schule { $school } unterstellt
  }. { $role ->
    [none] Wer dort kein Mitglied ist, darf
    [role-viewer] Ein Leser dort darf
    [role-pilot] Ein Pilot dort darf
    [role-mechanic] Ein Mechaniker dort darf
   *[role-instructor] Ein Fluglehrer dort darf
  } { $right ->
    [look] keine Kontrollen an ihr unterschreiben
    [work] keine Arbeit an ihr unterschreiben
    [second-look] nicht ihr zweites Paar Augen sein
    [defer] ihre Mängel nicht warten lassen
   *[publish] keine Listen veröffentlichen
  }.
    .hint = Frag einen Fluglehrer der Schule. Einen Mangel, den du gefunden hast, kannst du jederzeit unterschreiben.
fault-day = „{ $day }“ ist kein Tag.
    .hint = Schreib ihn so: 2026-05-02.
fault-due-title = Was fällig wird, braucht einen Titel von bis zu 120 Buchstaben.
    .hint = Sag, was zu tun ist.
fault-due-interval = Es fehlt ein Intervall.
    .hint = Gib Stunden, Flüge, Tankfüllungen oder Tage ein, jeweils mehr als 0.
fault-due-tolerance = Die Toleranz ist 0 bis 100 Prozent des Intervalls.
    .hint = Gib 0 ein, wenn es niemals später sein darf.
fault-due-done-ahead = Wann es zuletzt getan wurde, kann nicht in der Zukunft liegen (jetzt { $hours } h).
    .hint = Gib die Stunden, Flüge und den Tag ein, an dem es getan wurde.
fault-component-name = Die Komponente braucht einen Namen.
    .hint = Gib ein, wie man sie nennt.
fault-component-not-here = Diese Komponente ist nicht an dieser Maschine.
    .hint = Sieh auf der Seite ihrer Maschine nach.
fault-no-assembly = Wie der Motor „{ $engine }“ zusammengebaut ist, steht nicht im Katalog.
    .hint = Nimm für die Arbeit das Handbuch des Herstellers; die Liste vor dem Flug gilt weiter.
fault-job-missing = Es wurde keine Arbeit gewählt.
    .hint = Wähl, was getan wurde.
fault-no-such-job = Diese Arbeit ist nicht bekannt: { $why }
    .hint = Wähl unter den gezeigten Arbeiten.
fault-job-open-already = Eine andere Arbeit ist noch nicht freigegeben: { $title }.
    .hint = Bring sie zu Ende und gib sie frei; dann beginn die nächste.
fault-no-job-open = An dieser Maschine ist keine Arbeit offen.
    .hint = Beginn sie zuerst: Sag, was getan wurde.
fault-job-lacks = Sie kann noch nicht freigegeben werden. { $lack }
    .hint = Die Seite der Maschine zeigt alles, was noch fehlt.
fault-tool-name = Das Werkzeug braucht einen Namen.
    .hint = Gib ein, wie man es nennt, oder seine Nummer.
fault-tool-range = Der Bereich des Werkzeugs ist keiner.
    .hint = Gib den kleinsten und den größten Skalenwert ein, beide in einer Drehmomenteinheit, den kleinsten zuerst.
fault-tool-interval = Zeit und Klicks zwischen zwei Kalibrierungen müssen mehr als 0 sein.
    .hint = Üblich sind 365 Tage und 5000 Klicks.
fault-tool-calibrated-ahead = Die Kalibrierung liegt in der Zukunft.
    .hint = Gib das Datum vom Kalibrierschein ein.
fault-no-such-tool = Dieses Werkzeug gibt es hier nicht.
    .hint = Leg das Werkzeug zuerst an, mit Bereich und Kalibrierung.
fault-tool-refused = Dieses Werkzeug darf dafür nicht benutzt werden. { $why }
    .hint = Nimm ein anderes Werkzeug. Gibt es keines, sag, warum du es benutzt: Der Grund wird aufgeschrieben, und die Verbindung ist zu beobachten.
fault-torque = Das Drehmoment lässt sich nicht berechnen: { $why }
    .hint = Sieh dir den Grenzwert, den Bereich des Werkzeugs und die Länge des Adapters an.
fault-torque-nuts = Jede der { $nuts } Muttern braucht ihren Weg: null bis zwei Drehungen, in Achteln.
    .hint = Geh noch einmal herum und nenn jede Mutter.
fault-torque-slip = { $reading } kann hier nicht gemeint sein: Es sieht aus wie { $meant }, in der falschen Einheit abgelesen. Gefordert ist { $band }.
    .hint = Lies die Skala noch einmal: in-lb oder ft-lb? Hat eine Mutter wirklich so viel bekommen, hör auf: Sie und ihr Stehbolzen sind beschädigt.
fault-limit-needed = { $band }: Es gibt keine Zahl, auf die angezogen werden kann.
    .hint = Gib Wert und Seite aus deinem Handbuch auf der Seite der Maschine ein, dann komm zurück.
fault-code-unreadable = Das ist keiner unserer Codes, oder nicht der ganze.
    .hint = Halt das Handy still und näher, der ganze Code muss im Bild sein; oder schick stattdessen den Text.
fault-code-other = Dieser Code antwortet auf eine andere Anfrage.
    .hint = Zeig deine Anfrage noch einmal und lass das andere Handy für diese unterschreiben.
fault-second-signature = Die Unterschrift in diesem Code passt nicht.
    .hint = Lass die andere Person ihn noch einmal vom eigenen Handy zeigen.
fault-second-same-person = Die Zweitkontrolle muss von einer anderen Person sein.
    .hint = Bitte jemanden, der weder die Arbeit gemacht noch ihre Liste unterschrieben hat.
fault-second-joint-missing = Jede Verbindung braucht ein Wort: wie es sein soll, oder mangelhaft.
    .hint = Sieh dir jede gezeigte Verbindung an und sag, was du siehst.
fault-second-not-needed = Nichts an dieser Arbeit braucht eine andere Person.
    .hint = Arbeite ihre Liste ab und gib sie frei.
fault-second-too-early = Die Liste nach der Arbeit ist noch nicht unterschrieben.
    .hint = Geh sie zuerst durch und unterschreib; dann lass eine andere Person hinsehen.
fault-bundle-empty = In dieser Datei ist kein Eintrag.
    .hint = Wähl eine Datei, die aus diesem Programm exportiert wurde.
fault-demo-here = Die erfundenen Maschinen sind schon hier.
    .hint = Sie stehen in der Liste der Maschinen.
fault-file = Die Datei { $file } lässt sich nicht lesen oder schreiben: { $why }
    .hint = Sieh nach, ob der Pfad stimmt und der Ordner beschreibbar ist.
fault-answers-file = Die Antworten in { $file } sind nicht lesbar: { $why }
    .hint = Gib JSON an: {"{"} "point-id": "answer-id", "measured-point": {"{"} "value": 4, "unit": "L" {"}"} {"}"}.
fault-answers-missing = { $count ->
    [one] Ein Pflichtpunkt hat
   *[other] { $count } Pflichtpunkte haben
  } keine Antwort in der Datei: { $points }
    .hint = Ergänz sie, oder gib --leave-missing an, um ohne sie zu unterschreiben: Dann ist die Maschine gesperrt.
fault-input = Die Eingabe ist nicht brauchbar: { $why }
    .hint = { $help }
fault-no-such-computation = Es gibt keine Berechnung „{ $name }“.
    .hint = Es gibt: { $known }.
fault-call-unknown = Dieser Aufruf ist nicht lesbar: { $why }
    .hint = Bildschirm und Programm sind vielleicht verschiedene Versionen: Lade die Seite neu.
fault-address = Die Adresse { $address } ist nicht nutzbar: { $why }
    .hint = Wähl mit --port einen anderen Port, oder 0 für irgendeinen.

## Why a value is unconfirmed, as data sheets say it most often

why-common-practice-no-source = gängige Praxis, keine Quelle
why-the-maker-s-manual-gives-it-no-common-figure = das Handbuch des Herstellers nennt ihn: keine gängige Zahl
why-the-propeller-maker-s-manual-gives-it-no-common-figure = das Handbuch des Propellerherstellers nennt ihn: keine gängige Zahl
why-depends-on-the-propeller-and-the-gear-ratio-no-common-figure = hängt von Propeller und Übersetzung ab: keine gängige Zahl
why-depends-on-the-battery-and-the-propeller-no-common-figure = hängt von Akku und Propeller ab: keine gängige Zahl
why-compare-with-a-new-spring-no-common-figure = mit einer neuen Feder vergleichen: keine gängige Zahl
