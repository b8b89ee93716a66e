# German, "du". Records of logs and of flights prepared, and the measures whose trends are followed.

kind-flight-planned = Flug vorbereitet
kind-readings-taken = Motorlog eingelesen
told-flight-planned = Last, Kraftstoff und Luft berechnet
told-readings-taken = Motorlog eingelesen: { $words }
says-flight-planned = Last, Kraftstoff, Luft und Wind, wie sie um { $time } waren.
says-readings-taken = { $figures ->
    [one] Eine Zahl
   *[other] { $figures } Zahlen
  } aus dem Log „{ $name }“.

measure-peak-cht = Höchste Zylinderkopftemperatur
    .what = Die höchste Zylinderkopftemperatur jedes Logs, wie sie an einem Tag mit 15 °C gewesen wäre, wo das Log sagt, wie warm es war. Eine steigende Linie spricht für ein magereres Gemisch, Falschluft oder Kühlluft, die danebengeht.
measure-peak-egt = Höchste Abgastemperatur
    .what = Die höchste Abgastemperatur jedes Logs. Eine steigende Linie spricht für ein magereres Gemisch.
measure-log-peak-speed = Höchste Motordrehzahl in Logs
    .what = Die höchste Motordrehzahl jedes Logs. Sie fällt, wenn Leistung verloren geht, und steigt, wenn der Propeller schlechter greift.
measure-log-idle-speed = Leerlaufdrehzahl in Logs
    .what = Die Leerlaufdrehzahl jedes Logs. Ein steigender Leerlauf spricht für Luft, die hinter dem Vergaser eindringt.
measure-full-throttle-speed = Vollgasdrehzahl am Boden
    .what = Im Standlauf abgelesen. Sie fällt, wenn Leistung verloren geht: Kompression, Auspuff, Gemisch.
measure-full-power-speed = Drehzahl bei voller Leistung am Boden
    .what = Im Standlauf abgelesen. Sie fällt mit einem Akku, der altert, oder einem Motor, der schwer läuft.
measure-idle-speed = Leerlaufdrehzahl
    .what = Im Standlauf abgelesen. Ein steigender Leerlauf spricht für Luft, die hinter dem Vergaser eindringt.
measure-compression = Kompression
    .what = Nach Arbeit am Zylinder gemessen. Sie fällt mit Ringen, Laufbahn und Kopfdichtung.
measure-propeller-tracking = Spurlauf des Propellers
    .what = Wie weit die Spitzen auseinanderlaufen. Es wird mehr mit einer Nabe, einem Lager oder einem Blatt, das nachgibt.
measure-plug-gap = Elektrodenabstand
    .what = Er wächst, während die Elektroden abbrennen.
measure-pack-voltage = Spannung des Flugakkus
    .what = Voll geladen abgelesen. Sie fällt, wenn Zellen altern.
measure-exhaust-spring-tension = Zugkraft der Auspufffedern
    .what = Sie fällt, wenn Federn durch Hitze ermüden.
measure-fuel-burn = Kraftstoffverbrauch je Stunde
    .what = Wie nach Flügen eingetragen. Er wächst mit einem fetteren Gemisch oder einem Leck und fällt mit einem magereren.
measure-head-nuts-movement = Kopfmuttern: Weg vor dem Klick
    .what = Der größte Weg einer Mutter, bevor der Schlüssel klickte, in Achteldrehungen. Wachsender Weg ist eine Dichtung, die sich setzt, oder ein Stehbolzen, der sich längt.
measure-base-nuts-movement = Fußmuttern: Weg vor dem Klick
    .what = Der größte Weg einer Mutter, bevor der Schlüssel klickte, in Achteldrehungen. Wachsender Weg ist eine Dichtung, die sich setzt, oder ein Stehbolzen, der sich längt.
measure-cylinder-base = Zylinderfuß: wie trocken
    .what = Was am Zylinderfuß gesehen wurde, Kontrolle für Kontrolle. Öl, das herauskriecht, verrät Luft, die hineinkriecht.
measure-plug-colour = Farbe der Zündkerze
    .what = Wie die Kerze aussah, Kontrolle für Kontrolle. Sie sagt, wie der Motor verbrennt.
