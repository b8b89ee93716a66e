# German, "du". Load, fuel, air and wind before a flight: what comes of them, what can't be, and what to do.

band-mix-ratio = Teile Benzin auf einen Teil Öl

## All-up weight

reason-load = Startgewicht { $total }: { $below } unter dem, was dieser Schirm mit Motor höchstens tragen darf ({ $most }).
reason-load-over = Startgewicht { $total }: { $over } über dem, was dieser Schirm mit Motor höchstens tragen darf ({ $most }).
clears-load-over = Lass Ballast oder Kraftstoff zurück, oder flieg einen Schirm, der es tragen darf. Dann berechne es neu.
reason-load-under = Mit leergeflogenem Tank { $dry }: { $under } unter dem, was dieser Schirm mit Motor mindestens tragen muss ({ $least }).
clears-load-under = Nimm Ballast mit, oder flieg einen kleineren Schirm. Dann berechne es neu.
reason-load-unconfirmed = Niemand hat aus dem Handbuch des Schirms bestätigt, dass er mit Motor { $low } bis { $high } tragen darf.
clears-load-unconfirmed = Gib den Gewichtsbereich des Schirms mit Handbuch und Seite ein, dort, wo die Maschine beschrieben wird.
fact-load-dry = Mit leergeflogenem Tank { $dry }: { $above } über dem, was er mindestens tragen muss ({ $least }).
fact-load-source = Was der Schirm tragen darf: { $document }, { $page }.
fact-load-free = Das sind { $over } mehr, als er ohne Motor höchstens tragen darf ({ $most }): Hier zählt der Gewichtsbereich mit Motor.
fact-load-fuel = { $fuel } Kraftstoff zählen als { $mass }: { $density } kg je Liter, so schwer, wie Benzin höchstens wird.
fact-load-described-anew = Der Gewichtsbereich des Schirms wurde seither neu beschrieben: Es zählt der neue.

## Petrol and oil

reason-mix = Im Tank ist 1:{ $ratio }; verlangt ist 1:{ $wanted }.
reason-mix-add = In den Tank müssen noch { $oil } Öl, für 1:{ $wanted }.
clears-mix-add = Gieß es hinein, schüttle den Tank, und sag, dass es drin ist.
reason-mix-lean = { $ratio ->
    [none] Im Benzin ist kein Öl, und verlangt ist 1:{ $wanted }: Es fehlen { $oil }.
   *[other] Zu wenig Öl: Im Tank ist 1:{ $ratio }, und verlangt ist 1:{ $wanted }. Es fehlen { $oil }.
  }
clears-mix-lean = Gieß das fehlende Öl nach, bevor der Motor läuft, schüttle den Tank, und sag, wie viel du insgesamt hineingegossen hast.
reason-mix-rich = Zu viel Öl: Im Tank ist 1:{ $ratio }, und verlangt ist 1:{ $wanted }. { $petrol } Benzin ohne Öl würden es richtigstellen.
clears-mix-rich = Gieß das Benzin nach, oder flieg mit einer Kerze, die verrußen kann, und einem Motor, der magerer läuft, als er eingestellt ist.
reason-mix-unconfirmed = Kein Handbuch bestätigt 1:{ $wanted } für diesen Motor.
clears-mix-unconfirmed = Gib das Mischungsverhältnis mit der Seite deines Handbuchs ein, unter den Grenzwerten der Maschine.
reason-mix-manual-lean = 1:{ $wanted } ist weniger Öl, als das Handbuch des Motors verlangt (1:{ $manual }).
reason-mix-manual-rich = 1:{ $wanted } ist mehr Öl, als das Handbuch des Motors verlangt (1:{ $manual }).
clears-mix-manual = Misch, wie es im Handbuch steht; sagt dein Handbuch etwas anderes, gib es mit der Seite ein.
fact-mix-source = Das Mischungsverhältnis: { $document }, { $page }.

## Fuel

reason-fuel = Bis zur Kraftstoffreserve bleiben mindestens { $low }; geflogen werden sollen { $time }.
reason-fuel-perhaps = Bis zur Kraftstoffreserve bleiben { $low } bis { $high }: { $time } nur, wenn der Motor wenig verbraucht.
reason-fuel-short = Bis zur Kraftstoffreserve bleiben höchstens { $high }; geflogen werden sollen { $time }.
clears-fuel = Nimm mehr Kraftstoff mit, oder flieg weniger weit.
reason-fuel-unknown = Zu wenig, um zu sagen, wie lange der Kraftstoff reicht: { $has ->
    [0] Von keinem Flug
    [one] Von einem Flug
   *[other] Von { $has } Flügen
  } ist der Verbrauch eingetragen, und es braucht { $needs }.
clears-fuel-unknown = Trag ein, was jeder Flug an Kraftstoff verbraucht. Bis dahin sieh im Flug auf den Tank, und lande, solange noch reichlich drin ist.
fact-fuel-burn = { $flights } Flüge verbrauchten { $low } bis { $high }: der kleinste und der größte Verbrauch, denn für die Streuung sind es zu wenige.
fact-fuel-burn-predicted = Nach { $flights } Flügen verbraucht der nächste { $low } bis { $high }, in neun von zehn Fällen.
fact-fuel-reserve = Bei der Landung noch übrig: { $reserve }.

burns-few = Zu wenig, um zu sagen, was dieser Motor verbraucht: { $has ->
    [0] Von keinem Flug ist der Verbrauch
    [one] Von einem Flug ist der Verbrauch
   *[other] Von { $has } Flügen ist der Verbrauch
  } eingetragen, und es braucht { $needs }.

## The air

reason-air = Die Luft ist so dünn wie bei Standardatmosphäre in { $altitude } Höhe: { $thrust ->
    [0] Das kostet keinen Schub.
   *[other] Der Propeller bringt { $thrust } % weniger Schub als auf Meereshöhe, und der Startlauf ist { $run } % länger.
  }
reason-air-thin = Dünne Luft, wie bei Standardatmosphäre in { $altitude } Höhe: Der Propeller bringt { $thrust } % weniger Schub als auf Meereshöhe, der Startlauf ist { $run } % länger und der Steigflug flacher.
clears-air = Warte auf kühlere Luft, flieg leichter, oder nimm einen längeren Platz ohne Hindernis am Ende.
fact-air = Druckhöhe { $altitude }; bei Windstille trägt der Schirm erst bei { $speed } % mehr Geschwindigkeit über Grund.
fact-air-dry = Die Luft wurde trocken gerechnet: Ohne Taupunkt ist das der mildeste Fall, und feuchte Luft ist dünner.
fact-air-rule = Schub im Verhältnis zur Luftdichte, Startlauf je 1000 ft um 12 % länger: gängige Praxis, keine Quelle.

## The wind

reason-wind = Wind { $mean }{ $gust ->
    [none] {""}
   *[other] , Böen { $gust }
  }: innerhalb der gesetzten Grenzwerte.
reason-wind-mean = Wind { $mean }: über { $whose ->
    [school] dem Grenzwert der Schule
   *[own] deinem eigenen Grenzwert
  } von { $limit }.
reason-wind-gust = Böen { $gust }: über { $whose ->
    [school] dem Grenzwert der Schule
   *[own] deinem eigenen Grenzwert
  } von { $limit }.
reason-wind-gust-factor = Wind { $mean }, Böen { $gust }: { $factor ->
    [none] Böen aus stiller Luft, und damit immer
   *[other] das { $factor }-Fache des Mittelwinds, und damit
  } über { $whose ->
    [school] dem Grenzwert der Schule
   *[own] deinem eigenen Grenzwert
  } von { $limit }.
clears-wind = Starte bei diesem Wind nicht. Miss neu, wenn er sich beruhigt hat.
reason-wind-gust-unknown = Wind { $mean }: Die Böen hat niemand gemessen, und { $whose ->
    [school] die Grenzwerte der Schule
   *[own] deine eigenen Grenzwerte
  } verlangen sie.
clears-wind-gust-unknown = Beobachte den Wind zehn Minuten lang, und gib die stärkste Böe ein.
reason-wind-no-limit = Wind { $mean }{ $gust ->
    [none] {""}
   *[other] , Böen { $gust }
  }: Niemand hat einen Grenzwert gesetzt, an dem er zu messen wäre.
clears-wind-no-limit = Setz einen, bevor der Wind auffrischt: für den Mittelwind, für die Böen, oder wie viel stärker Böen sein dürfen als der Mittelwind.
fact-wind-limits = { $whose ->
    [school] Die Grenzwerte der Schule
   *[own] Deine eigenen Grenzwerte
  }: Mittelwind { $mean ->
    [none] nicht gesetzt
   *[other] { $mean }
  }, Böen { $gust ->
    [none] nicht gesetzt
   *[other] { $gust }
  }, Böenfaktor { $factor ->
    [none] nicht gesetzt
   *[other] { $factor }
  }.

## Held together

clears-flight-well = Nichts zu tun. Berechne es neu, wenn sich eine Zahl ändert.
reason-flight-impossible = { $part ->
    [load] Das Startgewicht
    [mix] Die Mischung aus Benzin und Öl
    [fuel] Wie lange der Kraftstoff reicht,
    [air] Was die Luft ausmacht,
   *[wind] Der Wind
  } lässt sich aus diesen Zahlen nicht berechnen.
clears-flight-impossible = Gib die Zahlen noch einmal ein.
reason-measured-earlier = { $what ->
    [both] Luft und Wind wurden
    [air] Die Luft wurde
   *[wind] Der Wind wurde
  } um { $time } gemessen: Sieh noch einmal nach.
clears-measured-earlier = Miss noch einmal, und gib ein, was du abliest.
reason-flight-not-prepared = Heute nicht berechnet: { $what ->
    [both] Startgewicht und Wind
    [load] Startgewicht
   *[wind] der Wind, gemessen an den Grenzwerten der Schule
  }.
clears-flight-not-prepared = Bereite den Flug vor: Last, Kraftstoff, Luft und Wind.

## Components that a school wants inspected

reason-inspect-over = { $part }: seit { $hours } h nicht angesehen; die Schule verlangt eine Kontrolle alle { $every } h.
reason-inspect-never = { $part }: in { $hours } h niemals angesehen; die Schule verlangt eine Kontrolle alle { $every } h.
clears-inspect-over = Sieh es dir auf einer Liste an, die es enthält, und unterschreib.

## What can't be

flight-fault-unit = Eine Angabe in { $from } lässt sich nicht in { $to } umrechnen: Wähl die richtige Einheit.
flight-fault-number = Eine Angabe fehlt oder ist keine Zahl.
flight-fault-too-cold = Nichts ist kälter als der absolute Nullpunkt: Sieh dir die Einheit an.
flight-fault-impossible = { $what }: muss { $must ->
    [not-negative] 0 oder mehr
    [at-least-one] 1 oder mehr
   *[positive] größer als null
  } sein.
flight-fault-backwards = { $what }: Das Mindeste darf nicht über dem Höchsten liegen.
flight-fault-outside = { $what }: { $value } liegt außerhalb von { $low } bis { $high }. Such nach einem Versehen bei Zahl oder Einheit.
flight-fault-above-saturation = Der Taupunkt kann nicht über der Lufttemperatur liegen.
flight-fault-no-ratio = 1:{ $ratio } ist kein Verhältnis von Öl zu Benzin: 5 bis 200 Teile Benzin auf einen Teil Öl.
flight-fault-calm-gust = Die Böen können nicht schwächer sein als der Mittelwind.
flight-fault-no-limit = Niemand hat einen Grenzwert gesetzt, an dem der Wind zu messen wäre.

input-pilot = Das Gewicht des Piloten
input-machine = Das Gewicht der Maschine
input-ballast = Ballast
input-fuel = Kraftstoff
input-wing-low = Was der Schirm mindestens tragen muss
input-wing-high = Was der Schirm höchstens tragen darf
input-wing = Was der Schirm tragen darf
input-in-tank = Was im Tank ist
input-add-fuel = Nachgegossenes Benzin
input-tank-or-fuel = Was im Tank ist, oder nachgegossenes Benzin
input-oil = Nachgegossenes Öl
input-reserve = Die Kraftstoffreserve bei der Landung
input-flight-time = Die geplante Flugzeit
input-burn = Was der Motor verbraucht
input-used = Kraftstoff, den ein früherer Flug verbrauchte
input-time = Die Dauer eines früheren Flugs
input-temperature = Die Temperatur
input-dew-point = Der Taupunkt
input-pressure = Der Luftdruck
input-elevation = Die Höhe des Platzes
input-setting = Die Höhenmessereinstellung
input-altitude = Die Druckhöhe
input-density = Die Luftdichte
input-density-altitude = Die Dichtehöhe
input-mean = Der Mittelwind
input-gust = Die Böen
input-mean-limit = Der Grenzwert des Mittelwinds
input-gust-limit = Der Grenzwert der Böen
input-gust-factor-limit = Der Grenzwert des Böenfaktors

## The form, its faults, and the record

ratio-words = 1:{ $ratio }. { $source }

fault-flight-impossible = So lässt es sich nicht speichern. { $why }
    .hint = Gib die Zahlen noch einmal ein; ein leerer Teil wird nicht berechnet.
fault-flight-empty = Es wurde nichts eingegeben.
    .hint = Gib mindestens eines ein: Last, Mischung, Kraftstoff, Luft oder Wind.
fault-weight-odd = { $what }: { $value } liegt nicht zwischen { $low } und { $high }.
    .hint = Such nach einem Versehen bei Zahl oder Einheit.
fault-wing-range-half = Vom Gewichtsbereich des Schirms fehlt die Hälfte.
    .hint = Gib an, was er mit Motor mindestens und höchstens trägt: --wing-least "95 kg" --wing-most "140 kg".
fault-plan-file = Der Plan in { $file } ist nicht lesbar: { $why }
    .hint = „flight prepare MACHINE“ ohne Datei zeigt einen Plan zum Anfangen.
fault-wing-range-crossed = Was der Schirm mindestens tragen muss, liegt über dem, was er höchstens tragen darf.
    .hint = Vertausch die beiden, oder sieh nach, ob eine Einheit falsch ist.
what-machine-weight = Das Gewicht der Maschine
what-wing-low = Was der Schirm mit Motor mindestens tragen muss
what-wing-high = Was der Schirm mit Motor höchstens tragen darf
what-wing-free-low = Was der Schirm ohne Motor mindestens tragen muss
what-wing-free-high = Was der Schirm ohne Motor höchstens tragen darf

says-weight = Sie wiegt flugfertig, ohne Kraftstoff, { $weight }.
says-wing-range = Ihr Schirm darf mit Motor { $low } bis { $high } tragen{ $document ->
    [none] {""}
   *[other] {" "}({ $document }, { $page })
  }.
says-wing-range-free = Ohne Motor darf er { $low } bis { $high } tragen.

says-flight-load = Startgewicht: Pilot { $pilot }, Maschine { $machine }, Kraftstoff { $fuel }, Ballast { $ballast }; der Schirm darf mit Motor { $low } bis { $high } tragen.
says-flight-mix = Mischung: { $tank } im Tank{ $before ->
    [none] {" "}ohne Öl
   *[other] {" "}mit 1:{ $before }
  }, { $petrol } Benzin nachgegossen, { $oil ->
    [none] noch kein Öl
   *[other] { $oil } Öl
  }; verlangt ist 1:{ $wanted }.
says-flight-fuel = Kraftstoff: { $fuel } an Bord, { $reserve } sollen bleiben, { $time } geplant, nach { $flights ->
    [one] einem früheren Flug
   *[other] { $flights } früheren Flügen
  }.
says-flight-air-field = Luft: { $pressure } am Platz, { $temperature }, Taupunkt { $dew ->
    [none] nicht gemessen
   *[other] { $dew }
  }.
says-flight-air-setting = Luft: Höhenmesser auf { $setting } gestellt, Platz { $elevation }, { $temperature }, Taupunkt { $dew ->
    [none] nicht gemessen
   *[other] { $dew }
  }.
says-flight-wind = Wind: { $mean }, Böen { $gust ->
    [none] nicht gemessen
   *[other] { $gust }
  }; eigene Grenzwerte: Mittelwind { $mean-limit ->
    [none] keiner
   *[other] { $mean-limit }
  }, Böen { $gust-limit ->
    [none] keiner
   *[other] { $gust-limit }
  }, Böenfaktor { $factor-limit ->
    [none] keiner
   *[other] { $factor-limit }
  }.
