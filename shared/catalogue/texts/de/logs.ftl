# German, "du". Engine logs: what is said while one is taken in.

## What a column may hold, and how time may be written

log-channel-cht = Zylinderkopftemperatur (CHT)
log-channel-egt = Abgastemperatur (EGT)
log-channel-speed = Motordrehzahl
log-channel-outside = Außentemperatur
log-time-seconds = Sekunden
log-time-milliseconds = Millisekunden (tausendstel Sekunden)
log-time-minutes = Minuten
log-time-clock = eine Uhr: 1:02:03, oder Minuten und Sekunden als 02:03
log-time-moment = Tag und Uhrzeit: 2026-05-02 06:41:07
log-unnamed = (eine Datei ohne Namen)

## What was guessed

log-guess-channel = Die Überschrift „{ $column }“ sagt nicht, wo gemessen wurde. Den Werten nach wird angenommen: { $channel }. Sieh nach, ob das stimmt.
log-guess-unit = Die Datei sagt nicht, in welcher Einheit „{ $column }“ steht. Den Werten nach wird { $unit } angenommen. Sieh nach, ob das stimmt.
log-guess-time = Die Datei sagt nicht, wie „{ $column }“ zählt. Den Werten nach wird angenommen: { $form }. Sieh nach, ob das stimmt.
log-guess-no-time = Keine Spalte sieht nach Zeit aus. Wähl die, in der die Zeit steht.
log-guess-no-channel = Keine Überschrift sagt, was in ihrer Spalte steht. Wähl für jede, was darin steht.

## Rows that can't be read

log-unread-fields = Zeile { $line }: { $has ->
    [one] ein Feld
   *[other] { $has } Felder
  }, aber es gibt { $wants ->
    [one] eine Überschrift
   *[other] { $wants } Überschriften
  }.
log-unread-no-time = Zeile { $line }: Es steht keine Zeit da.
log-unread-time = Zeile { $line }: „{ $cell }“ ist keine Zeit der gewählten Art.
log-unread-order = Zeile { $line }: Die Zeit „{ $cell }“ passt nicht in die Reihenfolge der Zeilen ringsum.
log-unread-number = Zeile { $line }: „{ $cell }“ in „{ $column }“ ist keine Zahl mit dem gewählten Dezimalzeichen.
log-unread-unit = Zeile { $line }: „{ $cell }“ in „{ $column }“ ist nicht in { $unit }, der gewählten Einheit.
log-nothing-measured = In keiner Zeile steht ein Wert.

## Figures

log-peak-cht = Höchste Zylinderkopftemperatur
log-peak-egt = Höchste Abgastemperatur
log-peak-speed = Höchste Motordrehzahl
log-idle-speed = Leerlaufdrehzahl
log-run-time = Laufzeit des Motors
log-left-out = { $samples ->
    [one] Ein Wert ist
   *[other] { $samples } Werte sind
  } ausgelassen: Das tut kein Motor. Ein Fühlerkabel war ab, oder die Anzeige stand am Anschlag.
log-lasts-seconds = { $seconds } s
log-lasts-minutes = { $minutes } min
log-lasts-hours = { $hours } h { $minutes } min

## What else is worth knowing

log-note-runs = Die Uhr beginnt in der Datei neu: Sie enthält { $runs } Läufe. Sie sind zusammengefasst: das Höchste von allen, und die Summe ihrer Zeiten.
log-note-gaps = Nichts aufgezeichnet wurde { $minutes ->
    [one] eine Minute lang
   *[other] { $minutes } Minuten lang
  } in { $gaps ->
    [one] einer Lücke
   *[other] { $gaps } Lücken
  }. Was dazwischen war, weiß niemand, und es zählt nicht.
log-note-all-same = Alle Werte von „{ $column }“ sind gleich, wie bei keinem Motor: Die Anzeige steht am Anschlag, oder der Fühler ist tot. Daraus wird nichts abgelesen.
log-note-impossible = Kein Wert von „{ $column }“ kann das sein, was in der Spalte stehen soll. Sieh dir die Einheit an, und was darin steht.
log-note-nothing = In „{ $column }“ wurde nichts gemessen.
log-note-by-head = Keine Spalte nennt eine Motordrehzahl über 500 rpm, die Laufzeit ist deshalb geschätzt: so lange, wie die { $head } über der halben Höhe lag.
log-note-no-run-time = Wie lange der Motor lief, lässt sich nicht sagen: In keiner Spalte steht seine Drehzahl oder die Temperatur seines Kopfs.
log-note-never-ran = In diesem Log lief der Motor nicht: Er drehte nicht schneller als 500 rpm, oder der Kopf wurde nicht warm. Daraus wird nichts abgelesen.
log-note-never-idled = Er lief niemals zehn Sekunden lang mit gleichmäßiger Drehzahl im Leerlauf, deshalb gibt es keine Leerlaufdrehzahl.

## Faults

fault-log-empty = In dieser Datei ist nichts.
    .hint = Wähl die Datei, die das Instrument geschrieben hat; sieh nach, ob sie ganz gespeichert wurde.
fault-log-too-large = Diese Datei ist größer als { $most } MB.
    .hint = Teil sie in eine Datei je Tag, oder lass das Instrument weniger Werte je Sekunde aufzeichnen.
fault-log-too-many-rows = Diese Datei hat mehr als { $millions } Millionen Zeilen.
    .hint = Teil sie in eine Datei je Tag, oder lass das Instrument weniger Werte je Sekunde aufzeichnen.
fault-log-no-text = Diese Datei ist kein Text.
    .hint = Exportier das Log im Programm des Instruments als CSV, und wähl diese Datei.
fault-log-no-rows = In dieser Datei ist keine Tabelle mit Zahlen.
    .hint = Es braucht eine Zeile mit Überschriften und darunter Zeilen mit Zahlen, getrennt durch Komma, Semikolon oder Tabulator.
fault-log-one-column = Diese Datei hat nur eine Spalte.
    .hint = Es braucht eine Spalte mit der Zeit und mindestens eine mit Temperatur oder Drehzahl, getrennt durch Komma, Semikolon oder Tabulator.
fault-log-no-headings = Über den Zahlen in dieser Datei steht keine Zeile mit Überschriften.
    .hint = Setz eine erste Zeile davor, die jede Spalte nennt, etwa: time,CHT,rpm
fault-log-heading-twice = Zwei Spalten haben dieselbe Überschrift, „{ $heading }“.
    .hint = Gib einer davon in der Datei eine andere Überschrift, etwa „{ $heading } 2“.
fault-log-mapping-missing = Niemand hat gesagt, wie die Spalten gelesen werden.
    .hint = Sieh dir die Spalten an, wie sie gezeigt werden, und bestätige, was in jeder steht.
fault-log-marks = Zwischen Feldern steht ein Komma, ein Semikolon oder ein Tabulator, und vor Dezimalen ein Punkt oder ein Komma; nichts anderes.
    .hint = Wähl eines davon.
fault-log-no-column = Die Datei hat keine Spalte „{ $heading }“.
    .hint = Wähl unter den gezeigten Spalten.
fault-log-column-twice = Die Spalte „{ $heading }“ ist zweimal benutzt.
    .hint = In einer Spalte steht die Zeit oder eine Messgröße: Wähl einmal, was es ist.
fault-log-nothing-chosen = Keine Spalte wird gelesen.
    .hint = Wähl für mindestens eine Spalte, was darin steht.
fault-log-other-unit = „{ $heading }“ kann nicht in { $unit } sein.
    .hint = Temperaturen sind in °C, °F oder K, Drehzahlen in rpm.
fault-log-taken = Diese Datei wurde schon eingelesen, am { $when }.
    .hint = Ihre Werte sind schon da. War eine andere Datei gemeint, wähl diese.
fault-log-nothing-told = So gelesen sagt diese Datei nichts. { $why }
    .hint = Sieh dir Trennzeichen, Dezimalzeichen und Einheiten an, und was in jeder Spalte steht.
fault-log-hours = Die Motorstunden des Logs müssen zwischen 0 und den { $hours } h der Maschine liegen.
    .hint = Gib die Stunden an, die die Maschine hatte, als aufgezeichnet wurde. Ist sie länger gelaufen, trag zuerst die Betriebszeit ein.
fault-log-day-ahead = Der Tag des Logs, { $day }, ist noch nicht gekommen.
    .hint = Gib den Tag an, an dem aufgezeichnet wurde: Vielleicht geht die Uhr des Instruments falsch.
fault-log-outside = So warm oder so kalt war es draußen nicht: zwischen −60 und 60 °C.
    .hint = Sieh dir Zahl und Einheit an, oder lass es weg.
fault-log-name = Der Name der Datei ist länger als { $most } Buchstaben.
    .hint = Gib der Datei einen kürzeren Namen.
