# German, "du". What the readings of a machine's measures tell. Values come with their unit.

## Readings

trend-unit-eighths = Achteldrehungen
trend-eighths = { $n ->
    [one] eine Achteldrehung
   *[other] { $n } Achteldrehungen
  }
trend-point = { $value }, { $day }
trend-point-standard = { $value } am Standardtag, { $raw } auf der Anzeige, { $day }

## Too little to say

trend-few = Zu wenig für eine Aussage: { $n ->
    [0] Kein Messwert ist da
    [one] Ein Messwert ist da
   *[other] { $n } Messwerte sind da
  }, und ein Trend braucht { $needs }: noch { $more ->
    [one] einen.
   *[other] { $more }.
  }
trend-one-moment = Zu wenig für eine Aussage: Alle { $n } Messwerte stammen von denselben Motorstunden. Es braucht Messwerte bei anderen Stunden.
trend-all-same = Zu wenig für eine Aussage: Alle { $n } Messwerte sind gleich, { $value }. Es kann beständig sein, aber so sieht auch ein Fühler am Anschlag aus: Ein anderes Instrument zeigt, was gilt.
trend-same-grade = Zu wenig für eine Aussage: Alle { $n } Kontrollen fanden dasselbe, „{ $value }“. Es braucht eine Kontrolle, die etwas anderes findet.
trend-no-interval = Zu wenig für eine Aussage: So viele der { $n } Messwerte haben dieselben Stunden oder denselben Wert, dass sich nichts Sicheres sagen lässt. Es braucht Messwerte bei anderen Stunden.
trend-beyond = Zu wenig für eine Aussage: Einige dieser Zahlen sind zu groß oder zu klein, um damit zu rechnen. Such nach einem Versehen bei den Einheiten.

## Which way, how steep, how sure

trend-goes = Es { $way ->
    [rising] steigt
   *[falling] fällt
  } um etwa { $per } in 100 Motorstunden (zwischen { $low } und { $high }){ $heads ->
    [toward] , auf den Grenzwert zu
    [away] , vom Grenzwert weg
   *[nowhere] {""}
  }.
trend-goes-slightly = Es { $way ->
    [rising] steigt
   *[falling] fällt
  }{ $heads ->
    [toward] {" "}auf den Grenzwert zu
    [away] {" "}vom Grenzwert weg
   *[nowhere] {""}
  }, aber in 100 Motorstunden um weniger, als die Messwerte zeigen können.
trend-grade-goes = Es wird von Kontrolle zu Kontrolle { $way ->
    [rising] schlechter
   *[falling] besser
  }. Die letzte fand „{ $latest }“.
trend-rests = Das stützt sich auf { $n } Messwerte von { $from } bis { $to } Motorstunden. Der Zufall allein ergibt einen solchen Trend seltener als einmal in { $one_in } Fällen.
trend-neither = Kein Trend in { $n } Messwerten: Der Zufall allein bewegt sie ebenso stark. In diesen { $span } Motorstunden kann sich der Wert um alles zwischen { $low } und { $high } geändert haben.
trend-neither-flat = Kein Trend in { $n } Messwerten: Der Zufall allein bewegt sie ebenso stark.
trend-grade-neither = Kein Trend in { $n } Kontrollen: Ein solches Auf und Ab ergibt auch der Zufall allein.

## The limit

trend-reaches = Geht es so weiter, erreicht es den Grenzwert, { $limit }, frühestens bei { $low } Motorstunden{ $left ->
    [0] : Das ist jetzt
   *[other] : in { $left } h
  }. Richte dich danach. Die Mitte der Linie kommt bei { $at } dort an, ihr flachster möglicher Verlauf bei { $high }. Verschleiß kommt oft schneller als eine gerade Linie.
trend-reaches-or-never = Geht es so weiter, erreicht es den Grenzwert, { $limit }, frühestens bei { $low } Motorstunden{ $left ->
    [0] : Das ist jetzt
   *[other] : in { $left } h
  }. Richte dich danach. Die Mitte der Linie kommt bei { $at } dort an, ihr flachster möglicher Verlauf niemals. Verschleiß kommt oft schneller als eine gerade Linie.
trend-there = Die Linie hat den Grenzwert erreicht, { $limit }: Handle jetzt.
trend-past = Der letzte Messwert, { $value }, liegt { $of ->
    [limit] jenseits des Grenzwerts
   *[band] außerhalb des Sollbereichs
  }, { $bound }.
trend-past-before = { $n ->
    [one] Ein früherer Messwert lag
   *[other] { $n } frühere Messwerte lagen
  } { $of ->
    [limit] jenseits des Grenzwerts
   *[band] außerhalb des Sollbereichs
  }, { $bound }; der letzte davon, { $value }, bei { $hours } Motorstunden.
trend-standard-day = Alle Werte sind so, wie sie an einem Tag mit { $day } gewesen wären, damit sich die Jahreszeiten vergleichen lassen. Der Grenzwert meint, was die Anzeige zeigt: Halt die Anzeige dagegen, nicht diese Linie.
trend-band-unconfirmed = Der Sollbereich, { $band }, ist unbestätigt: Es zählt der Wert in deinem Handbuch.
trend-limit-missing = Es gibt keinen Grenzwert, an dem das zu messen wäre. Gib Wert und Seite aus deinem Handbuch auf der Seite der Maschine ein.

## A step

trend-step = Es sieht eher nach einem Sprung aus als nach einer Steigung: bis { $after } Motorstunden etwa { $old }, ab { $at } etwa { $new }.
trend-step-done = Dazwischen wurde getan: { $done }.
trend-step-foretells = Nach einem Sprung sagt die Linie wenig voraus: Achte auf die nächsten Messwerte.

## What else to know of the readings

trend-far-off = { $n ->
    [one] Ein Messwert liegt weit ab von der Linie. Er wird gezeigt und zählt: Sieh nach, was an jenem Tag anders war.
   *[other] { $n } Messwerte liegen weit ab von der Linie. Sie werden gezeigt und zählen: Sieh nach, was an jenen Tagen anders war.
  }
trend-weather-standard = Alle Werte sind so, wie sie an einem Tag mit { $day } gewesen wären, damit sich die Jahreszeiten vergleichen lassen.
trend-weather-partly = Manche Logs sagen nicht, wie warm es draußen war. Damit sich alle vergleichen lassen, sind alle so gezeichnet, wie die Anzeige sie zeigte, nicht wie an einem Tag mit { $day }.
trend-weather-unknown = Gezeichnet, wie die Anzeige es zeigte: Kein Log sagt, wie warm es draußen war. Schon ein heißer Tag ergibt einen höheren Messwert.
trend-left-out = { $n ->
    [one] Ein Messwert ist
   *[other] { $n } Messwerte sind
  } ausgelassen: in einer Einheit anderer Art, oder ohne Motorstunden.

## Plots as files

plot-hours = Motorstunden
plot-about = { $machine }, { $n ->
    [one] ein Messwert bei { $from } Motorstunden
   *[other] { $n } Messwerte von { $from } bis { $to } Motorstunden
  }
plot-reading = Messwert
plot-far-off = Messwert weit ab von der Linie
plot-line = Trend
plot-interval = was er sein kann (95 %)
plot-level = mittlerer Wert vor und nach einem Sprung
plot-band = Sollbereich
plot-limit = Grenzwert
plot-limit-at = Grenzwert { $value }
plot-earliest = Grenzwert frühestens erreicht
plot-work = ausgeführte Arbeit
plot-done = { $n }: { $words }, { $hours } h
plot-done-earlier = { $n ->
    [one] Eine frühere Marke ist nicht benannt.
   *[other] { $n } frühere Marken sind nicht benannt.
  }
plot-band-source = { $band }. { $source }
plot-life-hours = Betriebsstunden
plot-life-share = noch brauchbar
plot-life-steps = nach den Befunden allein
plot-life-fitted = Weibull
plot-life-interval = was es sein kann (95 %)
plot-life-failed = unbrauchbar gefunden; der Strich reicht zurück, bis wo es zuletzt heil gesehen wurde
plot-life-whole = zuletzt heil gesehen

fault-plot-ending = Ein Diagramm kann ein SVG oder ein PNG sein, und „{ $file }“ ist keines davon.
    .hint = Gib einen Dateinamen an, der auf .svg oder .png endet.
fault-plot-nothing = Es gibt keinen Messwert zum Zeichnen.
    .hint = Nimm zuerst Messwerte auf: auf einem Rundgang, nach einer Arbeit, oder aus einem Motorlog.
