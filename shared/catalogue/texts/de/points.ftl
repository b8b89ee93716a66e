# German, "du". What the lists say: what to look at, what good and bad look like, why, and the answers.

## Stations

station-day = Der Tag und die Papiere
    .stand = Bevor du die Maschine anfasst, Gesicht zum Wind.
station-safe = Gesichert
    .stand = Neben der Maschine, Arme weit weg vom Propeller.
station-frame = Rahmen und Arme
    .stand = Vorn, wo nachher dein Rücken ist.
station-harness = Gurtzeug, Gurte, Karabiner
    .stand = Noch vorn, kniend, die Gurte in der Hand.
station-tank = Womit sie läuft
    .stand = Tief unten neben dem Rahmen.
station-engine = Der Motor
    .stand = Hinten, seitlich neben dem Propeller.
station-controls = Gashebel und Stoppschalter
    .stand = Wieder vorn, den Gashebel in der Hand.
station-propeller = Propeller und Käfig
    .stand = Hinter dem Käfig, die Maschine noch immer gesichert.
station-wing = Schirm, Leinen, Tragegurte
    .stand = Am Schirm entlang von Ende zu Ende, dann die Leinen hinunter zu den Tragegurten.
station-run-up = Du und der Standlauf
    .stand = Weit weg vom Schirm, niemand neben oder hinter dir.

## Cautions

caution-able-to-fire = Der Propeller kann verstümmeln. Stoppschalter auf Stopp und Kerzenstecker ab, bevor eine Hand in seine Nähe kommt.
caution-battery-live = Der Propeller kann verstümmeln. Flugakku trennen, bevor eine Hand in seine Nähe kommt.
caution-propeller-arc = Keine Hand in die Reichweite des Propellers, wenn die Maschine nicht noch gesichert ist. Bist du nicht sicher, geh zurück und sichere sie.
caution-now-live = Von jetzt an kann der Propeller drehen: Halt alle aus seiner Reichweite, und deine eigenen Hände auch.
caution-running-propeller = Ein drehender Propeller ist schlecht zu sehen und schleudert weg, was er trifft. Niemand neben oder hinter dir; Daumen am Stoppschalter.
caution-restraint = Halt eine laufende Maschine niemals mit der Hand, und gib niemals Vollgas, solange sie lose am Boden steht.
caution-eyes-only = An heißen Teilen verbrennst du dich. Nur mit den Augen: Bevor du hineingreifst, Stoppschalter auf Stopp und Kerzenstecker wieder ab.
caution-eyes-only-motor = Nur mit Augen und Nase: Bevor du hineingreifst, Flugakku wieder trennen.
caution-hot-parts = An heißen Teilen verbrennst du dich: Lass den Motor abkühlen, bevor du ihn anfasst.
caution-leaking-joint = Lass den Motor abkühlen, bevor du ihn anfasst. Anziehen allein heilt keine undichte Verbindung.
caution-coolant-pressure = Heißes Kühlmittel verbrüht: Öffne den Deckel niemals, bevor der Motor kalt ist.
caution-fuel-vapour = Kraftstoffdampf brennt: keine Flamme, nicht rauchen, und leg das Handy weg, während du tankst.
caution-battery-arc = Ein Akku kann Lichtbögen ziehen und brennen: Halt Ringe und Werkzeug von den Kontakten fern, und geh weg von einem, der sich bläht oder riecht.
caution-reserve-lightly = Sieh hin und fühl leicht: Zieh nicht am Splint und nicht am Griff, um sie zu probieren.
caution-manual-first = Die Handbücher der Hersteller und die örtlichen Vorschriften gehen vor. Weichen sie von dieser Liste ab, halt ein und folge ihnen.
caution-pilot-judges = Eine volle Liste ist kein sicherer Flug: Wetter, Platz und dich selbst musst du beurteilen.

## The day and the papers

point-weather = Wind, Wolken und Regen
    .good = Gleichmäßiger Wind, den du beherrschst, klare Sicht, kein Regen oder Gewitter in Reichweite.
    .why = Keine heile Maschine macht die falsche Luft wett.
    .bad = Böen, zunehmender Wind, hoch aufquellende Wolken; Regen, Nebel oder Donner in der Nähe.
    .steady = Gleichmäßig, in meiner Grenze
    .building = Böig, oder Wolken quellen auf
    .stormy = Zu stark, nass oder gewittrig

point-site = Startplatz und Luftraum
    .good = Freier Anlauf gegen den Wind, ein Ausweg, falls der Motor stehen bleibt, Luftraum heute offen.
    .why = Leitungen, Turbulenz hinter Bäumen und gesperrter Luftraum überraschen dich zu spät.
    .bad = Leitungen, Bäume oder Menschen voraus, schlechter Boden, Luftraum zu oder nicht nachgesehen.
    .open = Anlauf frei, Luftraum offen
    .tight = Eng, oder mit Auflagen
    .closed = Verstellt, zu oder unbekannt

point-papers = Lizenz, Versicherung, andere Papiere
    .good = Alles, was die Vorschriften verlangen, ist dabei und gültig.
    .why = Nach einem Unfall werden diese Daten zuerst gelesen.
    .bad = Eines fehlt oder ist abgelaufen.
    .in-date = Dabei und gültig
    .soon = Eines läuft diesen Monat ab
    .run-out = Fehlt oder abgelaufen

point-self = Du selbst: Schlaf, Gesundheit, Ruhe
    .good = Ausgeruht, gegessen, gesund, nüchtern, und niemand drängt dich zu fliegen.
    .why = Ein müder oder gehetzter Pilot übersieht, was ein frischer sieht.
    .bad = Krank, erschöpft, aufgewühlt, oder mit Alkohol oder starken Medikamenten im Blut.
    .rested = Ausgeruht, gesund, ohne Eile
    .tired = Müde oder in Eile
    .unwell = Krank, Alkohol oder Medikamente

## Made safe

point-kill-switch-off = Stoppschalter, auf Stopp
    .good = Auf Stopp gedreht; ein reiner Druckknopf ist heil und federt zurück.
    .why = Die erste von zwei Sicherungen. Manche Knöpfe stoppen nur, solange man drückt.
    .bad = Steht noch auf Betrieb, oder ist so locker, dass man es nicht erkennt.
    .at-stop = Auf Stopp gedreht
    .springs-back = Druckknopf, heil, federt zurück
    .at-run = Auf Betrieb, locker oder kaputt

point-plug-cap-off = Kerzenstecker, abgezogen
    .good = Von jeder Kerze abgezogen und so verwahrt, dass er keine mehr berühren kann.
    .why = Die zweite Sicherung: Ein Kurzschlusskabel kann unbemerkt brechen, eine blanke Kerze kann nicht zünden.
    .bad = Noch drauf, halb drauf, oder hängt an der Kerze.
    .off = Ab und verwahrt
    .still-on = Drauf, oder berührt die Kerze

point-starter-isolated = Starterbatterie, abgetrennt
    .good = Hauptschalter aus oder Stecker getrennt: Der Startknopf tut nichts.
    .why = Eine Berührung des Knopfs ließe den Propeller drehen.
    .bad = Noch verbunden, oder dem Schalter ist seine Stellung nicht anzusehen.
    .apart = Ausgeschaltet oder getrennt
    .live = Noch verbunden, oder unklar

point-battery-isolated = Flugakku, abgetrennt
    .good = Stecker getrennt oder Hauptschalter gezogen, Anzeige dunkel.
    .why = Ein Elektromotor läuft lautlos und mit voller Kraft an.
    .bad = Noch verbunden, Anzeige leuchtet, oder man erkennt es nicht.
    .apart = Getrennt, Anzeige dunkel
    .joined = Noch verbunden, oder leuchtet

## Frame and arms

point-arm-pivots = Armgelenke und ihre Bolzen
    .good = Jeder Bolzen ganz durch, seine Mutter ganz drauf, kein Spiel, wenn du den Arm anhebst.
    .why = An diesen zwei Gelenken hängst du.
    .bad = Spiel, ein Riss, ein krummer Bolzen, oder eine Mutter, die gewandert ist.
    .firm = Fest, Muttern ganz drauf
    .play = Etwas Spiel, Muttern ganz drauf
    .loose = Locker, Riss, Mutter fehlt
    .without = Rahmen ohne Arme

point-arms-and-straps = Arme und ihre Sicherungsgurte
    .good = Arme gerade und ohne Riss, auf jeder Seite ein Gurt, eingehängt und heil.
    .why = Der Gurt hält dich, wenn der Arm bricht.
    .bad = Verbogen, ein Riss, oder ein Gurt eingeschnitten, durchgescheuert oder offen.
    .straight = Gerade, Gurte eingehängt
    .marked = Arm verkratzt oder Gurt flusig
    .bent = Krumm, Riss, Gurt offen
    .without = Rahmen ohne Arme

point-frame-joints = Rohre, Schweißnähte, Steckstellen
    .good = Gerade und ohne Riss, jede Steckstelle ganz zusammen, mit Stift oder Klammer.
    .why = Risse beginnen an Schweißnähten und Löchern, und Rütteln lässt sie wachsen.
    .bad = Verbogen, ein Riss oder eine Rostlinie an einer Naht, ein Stift oder eine Klammer fehlt.
    .whole = Gerade, alle Stifte drin
    .dented = Delle oder Schramme, ohne Riss
    .cracked = Krumm, Riss, Stift fehlt

## Harness, straps, carabiners

point-leg-straps = Beingurte und ihre Schnallen
    .good = Gurtband und Nähte heil, jede Schnalle rastet ein und hält kräftigen Zug.
    .why = Sie allein halten dich davon ab, aus dem Sitz zu rutschen.
    .bad = Ein Schnitt, eine gezogene Naht, oder eine Schnalle, die rutscht oder nur halb einrastet.
    .hold = Heil, beide Schnallen halten
    .fluffed = Kante flusig, Schnallen halten
    .slip = Schnitt, oder Schnalle rutscht

point-carabiner-gates = Beide Karabinerschnapper
    .good = Losgelassen schnappt jeder von selbst zu, und seine Verriegelung rastet ein.
    .why = Mit offenem Schnapper hält ein Karabiner nur einen Teil seiner Last.
    .bad = Träge oder sandig, verbogen, oder eine Verriegelung, die nicht greift.
    .snap = Schnappen zu und verriegeln
    .gritty = Sandig, aber zu und verriegelt
    .stay-open = Bleiben offen, unverriegelt

point-carabiner-bodies = Karabinerkörper und ihr Gurtband
    .good = Glattes, gerades Metall, nicht älter, als sein Hersteller erlaubt; Gurtband und Nähte heil.
    .why = An einer Kerbe im Metall oder im Gurtband gibt es nach.
    .bad = Eine Kerbe, eine Rille, ein Riss, verbogen, Naht durch, oder zu alt.
    .smooth = Glatt, Gurtband heil
    .scratched = Leicht verkratzt oder flusig
    .notched = Kerbe, Riss, Schnitt, zu alt

point-chest-strap = Brust- und Schultergurte
    .good = Nähte heil, Schnallen halten, beide Schultern gleich lang.
    .why = Der Brustgurt hält die Schultergurte oben und bestimmt, wie du hängst.
    .bad = Ein Schnitt, eine gezogene Naht, eine Schnalle, die rutscht, oder eine Seite länger.
    .even = Heil und gleich lang
    .fluffed = Kante flusig, Schnallen halten
    .slips = Schnitt, rutscht oder ungleich

point-harness-fixings = Sitz, Nähte und Rahmenbefestigungen
    .good = Sitzbrett und Nähte heil, jede Befestigung am Rahmen zu und fest.
    .why = Diese Befestigungen verbinden dich mit der Maschine.
    .bad = Eine gerissene Naht, ein Riss im Sitz, eine Befestigung locker oder offen.
    .closed = Heil, alle Befestigungen zu
    .worn = Naht abgenutzt, alle zu
    .torn = Gerissen oder locker

point-reserve-pin = Splint des Rettungsschirms, Schlaufe
    .good = Gerade, ganz durch eine unversehrte Schlaufe, Klappen darüber geschlossen.
    .why = Halb draußen lässt er den Rettungsschirm in den Propeller.
    .bad = Krumm, halb draußen, von etwas straff gezogen, oder die Schlaufe ausgefranst.
    .through = Gerade, ganz durch
    .rust-spot = Matt oder rostig, ganz durch
    .half-out = Krumm, halb draußen, ausgefranst

point-reserve-handle = Rettungsgriff
    .good = Sitzt in seiner Tasche, nichts darüber; deine Hand findet ihn blind.
    .why = Du hast einen einzigen Griff, in Eile und vom eigenen Gewicht gedrückt.
    .bad = Hängt heraus, oder liegt unter einem Gurt, einer Schnur oder einem Funkkabel.
    .seated = Sitzt, frei zu greifen
    .worn = Sitzt, Tasche abgenutzt
    .covered = Lose oder verdeckt

point-reserve-repack = Packtermin auf dem Packnachweis
    .good = Der Packnachweis ist beim Rettungsschirm, der Termin liegt in der Zukunft.
    .why = Zu lange gefaltetes Tuch öffnet spät.
    .bad = Der Termin ist vorbei, oder der Packnachweis fehlt oder ist unlesbar.
    .ahead = Termin liegt in der Zukunft
    .soon = Fällig in einem Monat
    .past = Vorbei, fehlt, unlesbar

## What it runs on

point-fuel-on-board = Kraftstoff an Bord
    .good = Genug für den Flug und eine Reserve; der Tank fasst { $tank }.
    .why = Ein Motor ohne Kraftstoff sucht dir den Landeplatz aus.
    .bad = Weniger als Flug und Reserve, oder eine Anzeige, die nicht stimmen kann.

point-fuel-mix = Der Kraftstoff: frisch, sauber, mit Öl
    .good = Frisch und sauber, mit Öl nach dem Handbuch des Motorherstellers.
    .why = Ohne sein Öl frisst der Motor; Wasser bringt ihn zum Stehen.
    .bad = Öl vergessen oder unsicher, Wasser oder Schmutz am Boden, saurer Geruch.
    .known = Frisch, sauber, Öl bekannt
    .stale = Einige Wochen alt, sauber
    .unsure = Öl unsicher, Wasser, Schmutz

point-tank-walls = Tank, Nähte und Gurte
    .good = Rundum trocken, fest gehalten, scheuert nirgends.
    .why = Kraftstoff, der auf den heißen Auspuff tropft, brennt.
    .bad = Nass, Riss, dünn gescheuert, oder locker in den Gurten.
    .dry = Trocken, fest gehalten
    .stained = Alter Fleck, Scheuerstelle
    .wet = Nass, Riss oder locker

point-tank-cap = Tankdeckel und Belüftung
    .good = Deckel fest auf seiner Dichtung, Belüftung offen und ohne Knick.
    .why = Eine verschlossene Belüftung lässt den Motor verhungern; ein loser Deckel läuft auf den Auspuff aus.
    .bad = Deckel lose, Dichtung rissig, Belüftung verstopft, geknickt oder zu.
    .tight = Deckel fest, Belüftung offen
    .worn = Deckel fest, Dichtung alt
    .blocked = Deckel lose, Belüftung zu

point-fuel-line = Kraftstoffleitung und ihre Enden
    .good = Überall geschmeidig, weg von heißen Teilen, jedes Ende geklemmt, ein Hahn, falls da, offen.
    .why = Luft, die hier eindringt, nimmt dem Motor Kraftstoff und heizt ihn auf; Kraftstoff, der austritt, brennt.
    .bad = Hart, rissig, gescheuert, geknickt, nass, oder locker an einem Ende.
    .supple = Geschmeidig, Enden geklemmt
    .hard = Hart oder gelb, trocken
    .split = Riss, Knick, locker, nass

point-fuel-filter = Kraftstofffilter und Pumpball
    .good = Filter sauber; der Pumpball, falls vorhanden, fest und ohne Riss.
    .why = Schmutz oder Luft hier nimmt dem Motor den Kraftstoff, wenn du steigst.
    .bad = Dunkler Filter, Blasen, die immer wieder kommen, ein weicher oder rissiger Pumpball.
    .clear = Sauber, blasenfrei
    .specks = Ein paar Krümel
    .dirty = Schmutz, Blasen oder Riss

point-injection-oil = Öl im eigenen Tank
    .good = Über der Marke für diesen Flug, Leitung voll Öl.
    .why = Ohne Öl frisst der Motor.
    .bad = Unter der Marke, oder Luft in der Leitung.
    .above = Über der Marke
    .at-mark = An der Marke
    .under = Darunter, oder Luft zu sehen

point-pack-voltage = Akkuspannung in Ruhe
    .good = Im Sollbereich für { $cells } Zellen in Reihe, Ladegerät ab, in Ruhe.
    .why = Sie sagt, wie voll der Akku ist; zu hoch, und er kann Feuer fangen.
    .bad = Unter dem Sollbereich ist er zum Fliegen zu leer, darüber überladen.

point-battery-case = Akkugehäuse und Gurte
    .good = Seiten flach, trocken und kühl, Gurte so straff, dass er nicht rutschen kann.
    .why = Ein geblähter, verbeulter oder nasser Akku kann unter dir Feuer fangen.
    .bad = Gebläht, Delle, Riss, warm, nass, oder kann rutschen.
    .flat = Flach, kühl, fest gehalten
    .scuffed = Verschrammt, flach und trocken
    .swollen = Gebläht, Delle, nass, locker

point-battery-contacts = Kontakte und Stecker
    .good = Blankes Metall, Stifte gerade und fest, Kunststoff in seiner eigenen Farbe.
    .why = Ein schlechter Kontakt zieht Lichtbögen, schmilzt und stoppt den Motor.
    .bad = Brauner oder geschmolzener Kunststoff, ein lockerer Stift, zerfressenes Metall.
    .bright = Blank und fest
    .dull = Matt, fest
    .burnt = Verbrannt, zerfressen, locker

point-battery-leads = Akkukabel
    .good = Isolierung heil, befestigt, weg von Propeller, heißen Teilen und scharfen Kanten.
    .why = Ein blankes Kabel schließt den ganzen Akku kurz.
    .bad = Schnitt, gequetscht oder blank, oder hängt in Reichweite des Propellers.
    .clipped = Heil und befestigt
    .rubbed = Gescheuert, Isolierung heil
    .bare = Schnitt, gequetscht, hängend

## The motor

point-cylinder-base = Zylinderfuß, ringsum
    .good = Trockenes Metall, keine dunkle Linie unter den Rippen.
    .why = Öl hier heißt, dass Luft eindringt (Falschluft): mageres Gemisch, also zu wenig Kraftstoff, und Hitze.
    .bad = Eine nasse oder dunkle Linie, wo der Zylinder auf dem Gehäuse sitzt.
    .dry = Trocken
    .old-stain = Alter Fleck, trocken
    .wet = Nass

point-cylinder-head = Zylinderkopf-Fuge und Muttern
    .good = Ringsum trocken, jede der { $nuts } Muttern an ihrem Platz.
    .why = Ein Leck hier heizt den Zylinder auf, den die Dichtung schützen soll.
    .bad = Eine nasse oder rußige Linie an der Fuge, oder eine Mutter fehlt.
    .dry = Trocken, alle Muttern da
    .old-stain = Alter Fleck, trocken
    .wet = Nass, rußig, Mutter fehlt

point-carburettor-joint = Vergaser am Ansaugstutzen
    .good = Wackelt nicht; Gummi oder Dichtung heil, Befestigungen fest, darunter trocken.
    .why = Luft, die sich hier einschleicht, macht den Motor mager und heiß.
    .bad = Er wackelt, der Gummi ist gerissen, eine Befestigung locker, oder es ist nass.
    .firm = Fest, Gummi heil
    .crazed = Fest, haarfeine Gummirisse
    .rocks = Wackelt, gerissen oder nass

point-intake-clip = Luftfilterkasten und seine Klammer
    .good = Kasten fest, Klammer zu, Filter sauber und heil.
    .why = Fällt er ab, stimmt das Gemisch nicht mehr, und er fliegt in den Propeller.
    .bad = Klammer offen oder weg, Kasten locker, Filter gerissen oder durchtränkt.
    .closed = Klammer zu, Filter sauber
    .dusty = Klammer zu, Filter staubig
    .open = Offen, locker, gerissen

point-shroud-face = Kühlhaube, Flächen und Ecken
    .good = Heil, vor allem an Ecken und Löchern, wo Risse beginnen; nichts darin hängen geblieben.
    .why = Kühlluft, die durch einen Riss entweicht, fehlt dem Zylinder: Er wird heiß.
    .bad = Irgendein Riss, ein fehlendes Stück, Laub oder Gras im Weg der Luft.
    .whole = Ohne Riss, innen frei
    .hairline = Haarriss
    .through = Durchgerissen oder verstopft

point-shroud-mounts = Haubenhalter, Muttern und Scheiben
    .good = Alle { $mounts } halten, Gummischeiben eben angedrückt, Haube nicht krumm gezogen.
    .why = Zu fest beginnen Risse wie ein Spinnennetz; zu locker rüttelt sie sich kaputt.
    .bad = Ein Riss an einem Loch, Mutter oder Scheibe fehlt, Haube von einer Mutter verzogen.
    .held = Halten, ohne Riss
    .hairline = Haarriss, Scheibe platt
    .through = Durchgerissen, locker, fehlt

point-cylinder-fins = Kühlrippen und ihre Farbe
    .good = Zwischenräume frei, Rippen heil, Metall in derselben Farbe wie letztes Mal.
    .why = Verstopfte Rippen machen Hitze; eine blaue oder braune Färbung zeigt, dass sie da war.
    .bad = Gras, Schlamm oder ein Nest zwischen den Rippen, eine Rippe abgebrochen, verbrannte Farbe.
    .clear = Frei, Farbe unverändert
    .darker = Staubig, oder etwas dunkler
    .blocked = Verstopft, Bruch, verbrannt
    .finless = Zylinder ohne Rippen

point-ground-under = Boden unter der Maschine
    .good = Trocken, wo sie stand.
    .why = Ein Tropfen am Boden hat ein Leck über sich.
    .bad = Frischer Kraftstoff, frisches Öl oder Kühlmittel: Such, woher es kommt.
    .dry = Trocken
    .spot = Ein alter Ölfleck
    .fresh = Frische Tropfen oder Lache

point-engine-mounts = Motorhalter und Gummilager
    .good = Alle { $mounts } Gummilager heil, Muttern drauf; gedrückt gibt der Motor gleichmäßig nach.
    .why = Ein gerissenes Lager lässt den Propeller in den Käfig schwingen.
    .bad = Ein gerissener Gummi, eine gewanderte Mutter, Metall auf Metall.
    .whole = Gummis heil, Muttern drauf
    .crazed = Haarfeine Gummirisse
    .torn = Gerissen, locker oder fehlt

point-exhaust-springs = Auspufffedern und ihre Haken
    .good = Alle { $springs } an beiden Enden eingehängt und gegen Wegfliegen gesichert.
    .why = Eine Feder, die loslässt, fliegt geradewegs in den Propeller.
    .bad = Eine gebrochen, ausgehängt oder ungesichert, oder ein Haken dünn gescheuert.
    .hooked = Eingehängt und gesichert
    .worn = Haken dünn, noch gesichert
    .missing = Bruch, ausgehängt, ungesichert

point-exhaust-body = Auspuffrohr, Schalldämpfer, Halter
    .good = Ohne Riss, Halter heil, kein frischer Ruß an einer Fuge.
    .why = Ein Riss hier wächst schnell, und die Stücke treffen den Propeller.
    .bad = Ein Riss, ein gerissener Halter, ein klapperndes Teil, dicker Ruß an einer Fuge.
    .whole = Heil, Halter fest
    .sooty = Leichter Ruß an einer Fuge
    .cracked = Riss, locker, abgerissen

point-plug-terminal = Kerzenanschluss und Steckersitz
    .good = Kerze ganz eingeschraubt, Anschluss fest, Stecker heil, mit Halt und Sicherung.
    .why = Ein Stecker, der sich abrüttelt, stoppt den Motor in der Luft.
    .bad = Anschluss von Hand drehbar, Stecker rissig, Sitz schlaff, Sicherung kaputt oder weg.
    .tight = Anschluss fest, Stecker hält
    .worn = Fest, Sicherung abgenutzt
    .loose = Locker, rissig, schlaff

point-plug-lead = Zündkabel
    .good = Isolierung heil, fest in Stecker und Zündspule, befestigt, weg von Rippen und Auspuff.
    .why = Ein Funke, der einen anderen Weg findet, lässt dich ohne Motor.
    .bad = Schnitt, verbrannt, scheuert an Metall, oder locker an einem Ende.
    .clipped = Heil und befestigt
    .rubbed = Gescheuert, Isolierung heil
    .bare = Schnitt, verbrannt, locker

point-engine-hardware = Muttern, Schrauben und Lackmarken
    .good = Jede Mutter, Klammer und jeder Draht am Platz, Lackmarken in einer Linie.
    .why = Rütteln löst alles, und der Propeller fängt, was fällt.
    .bad = Eine Marke aus der Linie, blankes Metall um eine Mutter, etwas fehlt.
    .aligned = Alles da, Marken in Linie
    .faded = Alles da, Marke abgerieben
    .turned = Verdreht, locker oder fehlt

point-reduction-belt = Antriebsriemen und Riemenscheiben
    .good = Kanten heil, Riemen mittig und gleichmäßig gespannt, wie es das Handbuch sagt.
    .why = Ein Riemen, der rutscht oder reißt, nimmt dir den Schub.
    .bad = Ausgefranst, quer gerissen, läuft aus der Mitte, schlaff, ölig.
    .centred = Heil, mittig, gespannt
    .shiny = Glänzend oder leicht flusig
    .frayed = Fransen, Riss, schlaff, ölig

point-reduction-gear = Getriebe, Dichtringe, Ölschrauben
    .good = Gehäuse trocken, Ölschrauben drin und gesichert, Schrauben alle da.
    .why = Ein Getriebe ohne Öl läuft sich kaputt und blockiert.
    .bad = Öl tropft an Dichtring oder Ölschraube, ein Riss, eine lockere Schraube.
    .dry = Trocken, Schrauben gesichert
    .film = Dünner Ölfilm
    .drips = Tropft, Riss oder locker

point-starter-cord = Starterseil und Griff
    .good = Sanft gezogen ist das Seil heil und läuft ganz zurück; der Knoten im Griff fest.
    .why = Ein Seil, das heraushängt, wickelt der Propeller auf.
    .bad = Ausgefranst, Knoten rutscht, Gehäuse locker, oder es hängt heraus.
    .winds-back = Heil, läuft ganz zurück
    .fluffed = Flusig, läuft ganz zurück
    .hangs-out = Fransen, locker, hängt heraus

point-starter-motor = Anlasser und seine Batterie
    .good = Anlasser fest an seinen Schrauben, Batterie festgegurtet und flach, Kabel befestigt.
    .why = Ein Kabel oder eine Batterie, die sich löst, brennt oder trifft den Propeller.
    .bad = Lockere Schrauben, geblähte Batterie, verbrannter Kontakt, hängendes Kabel.
    .firm = Fest, Kabel befestigt
    .dull = Fest, Kontakt matt
    .loose = Locker, gebläht, verbrannt

point-engine-oil = Motoröl am Messstab
    .good = Zwischen den Marken, Motor waagerecht, Öl sauber und klar.
    .why = Zu wenig Öl, oder Wasser darin, zerstört die Lager in Minuten.
    .bad = Unter der unteren Marke, über der oberen, oder milchig.
    .between = Zwischen den Marken
    .at-low-mark = An der unteren Marke
    .under = Außerhalb, oder milchig

point-coolant = Kühlmittel und Schläuche
    .good = An der Standmarke, kalt; Schläuche geschmeidig, Schellen fest, ringsum trocken.
    .why = Ohne Kühlmittel überhitzt der Motor in wenigen Minuten.
    .bad = Unter der Marke, nass, ein Schlauch weich, rissig oder scheuernd.
    .full = An der Marke, trocken
    .old-stain = Alter Fleck, Stand unverändert
    .low = Zu wenig, nass oder rissig

point-motor-mounts = Motorhalter, Schrauben, Lackmarken
    .good = Alle { $mounts } Halter fest und ohne Riss, Schrauben drin, Lackmarken in einer Linie.
    .why = Rütteln löst Schrauben, und an diesen hängt der Propeller.
    .bad = Eine Marke aus der Linie, ein Riss, eine Schraube locker oder weg.
    .aligned = Fest, Marken in Linie
    .faded = Fest, Marke abgerieben
    .turned = Verdreht, Riss oder fehlt

point-motor-windings = Motorwicklung und Lager
    .good = Gleichmäßige Farbe, sauber; von Hand gedreht läuft er still und ohne Spiel.
    .why = Verbrannte Wicklung oder trockene Lager stoppen ihn; vorher wird er heiß.
    .bad = Dunkle oder riechende Wicklung, Metallstaub, ein Schleifen, Spiel.
    .turns = Sauber, dreht still
    .dusty = Staubig, dreht still
    .scrapes = Schleift, dunkel oder riecht

point-motor-cables = Motorkabel und Stecker
    .good = Jeder ganz gesteckt und verriegelt, Isolierung heil, Kunststoff in seiner eigenen Farbe.
    .why = Ein schlechter Kontakt von dreien lässt den Motor stottern und stehen bleiben.
    .bad = Locker, braun oder geschmolzen, scheuert, oder nah am Propeller.
    .home = Gesteckt, Farbe unverändert
    .tinted = Gesteckt, leicht verfärbt
    .loose = Locker, geschmolzen, scheuert

point-motor-controller = Regler und seine Kühlung
    .good = Fest, trocken, seine Kühlung frei, kein dunkler Fleck.
    .why = Durch ihn geht die ganze Leistung; heiß oder nass schaltet er ab.
    .bad = Nass, locker, gebläht, verbrannt, oder seine Kühlung verstopft.
    .dry = Fest, trocken und frei
    .dusty = Staubig, fest und trocken
    .wet = Nass, verbrannt, verstopft

## Throttle and kill switch

point-throttle-return = Gashebel, losgelassen
    .good = Ganz gezogen und losgelassen, federt er sofort zurück; Feststeller gelöst.
    .why = Gas, das offen hängen bleibt, treibt dich, wohin du nicht willst.
    .bad = Träge, kratzig oder klemmend, in irgendeiner Stellung deines Arms.
    .springs-back = Federt sofort zurück
    .slow = Träge, aber ganz zurück
    .sticks = Klemmt oder bleibt offen

point-throttle-free-travel = Leerweg am Gaszug
    .good = Etwas Spiel am Zug, bevor der Vergaser öffnet.
    .why = Ohne Spiel gibt schon die Bewegung deines Arms von selbst Gas.
    .bad = Ohne Spiel, oder so viel davon, dass Vollgas verloren geht.

point-control-leads = Stoppschalter, Gaszug und Kabel
    .good = Knopf frei und heil; jede Leitung weg vom Propeller angebunden, Isolierung heil.
    .why = Ist ein Kabel gebrochen, kannst du den Propeller nicht mehr stoppen.
    .bad = Ein Knopf, der klemmt, ein Knick, ein blankes Kabel, eine Leitung in Reichweite des Propellers.
    .whole = Heil und angebunden
    .rubbed = Gescheuert, Isolierung heil
    .bare = Blank, Knick, klemmt, hängt

## Propeller and cage

point-propeller-hub = Propellernabe und Schrauben
    .good = Alle { $bolts } Schrauben drin, Marken in einer Linie, Nabe ohne Riss und ohne Spiel.
    .why = Eine lockere Schraube bricht die anderen, und der Propeller geht davon.
    .bad = Eine Marke aus der Linie, eine Schraube fehlt, ein Riss, Abriebstaub oder Spiel.
    .firm = Fest, Marken in Linie
    .faded = Fest, Marke abgerieben
    .loose = Spiel, Riss, verdreht, fehlt

point-propeller-edges = Vorderkanten und Blattspitzen
    .good = Jedes Blatt glatt und heil von der Nabe bis zur Spitze.
    .why = Aus einer Kerbe wird ein Riss, und ungleiche Blätter rütteln die Maschine auseinander.
    .bad = Eine Kerbe, an der dein Nagel hängen bleibt, ein Spalt, gelöstes Kantenband, ein Stück weg.
    .smooth = Glatt und heil
    .scuffed = Verschrammt, Nagel gleitet
    .nicked = Kerbe, Spalt oder gelöst

point-propeller-faces = Blattflächen, vorn und hinten
    .good = Eben und hart von der Nabe bis zur Spitze, auf beiden Seiten.
    .why = Ein gerissenes Blatt fliegt davon, und nichts hält es auf.
    .bad = Ein Riss, eine Blase, eine weiche oder dumpf klingende Stelle.
    .even = Eben, ohne Riss
    .scratched = Kratzer nur an der Oberfläche
    .cracked = Riss, Blase oder weich

point-propeller-tracking = Spurlauf, Blatt gegen Blatt
    .good = Langsam von Hand gedreht, geht jede Spitze an derselben Stelle des Käfigs vorbei.
    .why = Spitzen auf verschiedenen Bahnen verraten eine krumme Nabe, Welle oder ein krummes Blatt.
    .bad = Die Spitzen laufen weiter auseinander, als der Sollbereich erlaubt.

point-cage-hoop = Käfigringe, Speichen, Steckstellen
    .good = Rund, Steckstellen zu und verriegelt, ringsum reichlich Abstand zu den Blättern.
    .why = Er hält Hände, Leinen und Propeller auseinander.
    .bad = Riss oder krumm, eine Steckstelle offen, oder so nah, dass Blätter anstoßen können.
    .round = Rund, Steckstellen verriegelt
    .bent = Etwas krumm, Blätter frei
    .close = Riss, offen oder zu nah

point-cage-net = Netz, jede Schnur
    .good = Überall straff, jede Schnur und jeder Knoten heil.
    .why = Durch das Loch, das bleibt, geht eine Hand oder ein Bremsgriff.
    .bad = Eine gerissene Schnur, ein Loch, oder so schlaff, dass es an die Blätter reicht.
    .tight = Straff, Schnüre heil
    .slack = Etwas schlaff, Schnüre heil
    .torn = Loch, oder Schnur gerissen

## Wing, lines, risers

point-lines-free = Leinen, frei vom Tuch zum Tragegurt
    .good = Jede Leinenebene läuft frei; Tragegurte unverdreht, Bremsleinen außen.
    .why = Eine einzige verhängte Leine kann den Schirm in den Boden drehen.
    .bad = Ein Knoten, Verdreher oder Zweig, oder eine Leine um ein Flügelende geschlungen.
    .free = Frei von Ende zu Ende
    .caught = Knoten, Dreher, Zweig, Schlinge

point-risers-links = Tragegurte und Leinenschlösser
    .good = Gurtband und Nähte heil, jedes Leinenschloss fest zu.
    .why = Alle deine Leinen enden an diesen wenigen Schlössern.
    .bad = Gurtband eingeschnitten, gezogene Naht, ein Schloss offen, rissig oder rostig.
    .shut = Heil, Schlösser zu
    .fluffed = Kante flusig, Schlösser zu
    .open = Schnitt, oder Schloss offen

point-canopy = Kappe: Tuch und Zellöffnungen
    .good = Tuch und Nähte heil und trocken, jede Zelle offen und leer.
    .why = Ein Riss läuft weiter, und eine nasse oder verstopfte Zelle öffnet zuletzt.
    .bad = Ein Riss, eine offene Naht, nasses Tuch, Sand, Schnee oder Gras in einer Zelle.
    .whole = Heil, trocken, Zellen leer
    .pinhole = Nadelloch, oder etwas feucht
    .torn = Riss, durchnässt oder gefüllt

point-line-sheaths = Leinenmäntel und Endschlaufen
    .good = Mantel heil, Endschlaufen vernäht, keine steife oder dünne Stelle.
    .why = Eine Leine reißt zuerst da, wo ihr Kern zu sehen ist.
    .bad = Kern zu sehen, eine dünne, steife oder verbrannte Stelle, eine gezogene Naht.
    .whole = Heil von Ende zu Ende
    .furry = Pelzig, Kern bedeckt
    .core = Kern sichtbar, dünn, steif

point-trimmers = Trimmer und Beschleuniger
    .good = Beide Trimmer auf der Startmarke des Schirmhandbuchs; Beschleunigerleinen, falls da, frei.
    .why = Ungleiche Trimmer drehen dich vom ersten Schritt an.
    .bad = Ungleich, rutschend, an der Schnalle abgenutzt, oder eine Beschleunigerleine hängt.
    .same-mark = Gleiche Marke, Schnallen halten
    .worn = Gleiche Marke, Band abgenutzt
    .uneven = Ungleich, rutscht oder hängt
    .without = Schirm ohne Trimmer

point-brakes = Bremsknoten, Rollen und Griffe
    .good = Knoten fest, Leinen laufen frei in den Rollen, Griffe halten an den Tragegurten.
    .why = Damit steuerst und landest du; ein loser Griff gerät in den Propeller.
    .bad = Ein rutschender Knoten, eine ausgefranste Leine, eine schwere Rolle, ein Halter, der loslässt.
    .firm = Knoten fest, Rollen laufen
    .furry = Leine pelzig, Knoten fest
    .slips = Rutscht, Fransen, klemmt, hängt

## You, and the run-up

point-helmet = Helm, Gehörschutz und Funk
    .good = Helm heil und geschlossen, Ohren geschützt; Funk, falls dabei, zu hören.
    .why = Offen ist er weg, bevor dein Kopf auf etwas trifft.
    .bad = Kinnriemen offen oder schlaff, Schale rissig, Funk stumm.
    .radio-heard = Geschlossen, Funk zu hören
    .without-radio = Geschlossen, Flug ohne Funk
    .radio-silent = Geschlossen, Funk stumm
    .open = Offen, schlaff oder rissig

point-loose-ends = Kleidung, Taschen und lose Enden
    .good = Stiefel und Handschuhe an, Taschen zu, jede Schnur und jedes Gurtende verstaut.
    .why = Der Propeller zieht ein, was ihn erreichen kann.
    .bad = Ein Schal, eine Schnur, Kamera oder ein Gurt hängt frei; bloße Hände, Halbschuhe.
    .tied = Angezogen, zu, Enden verstaut
    .thin = Verstaut, zu dünn für heute
    .loose = Hängt, offen oder bloß

point-plug-cap-on = Kerzenstecker, wieder drauf
    .good = Auf jeder Kerze ganz aufgedrückt, Sicherung zu; er hält festen Zug.
    .why = Halb drauf rüttelt er sich im Steigen ab.
    .bad = Halb drauf, Sicherung offen, oder er hebt ab, wenn man zieht.
    .home = Ganz drauf, hält Zug
    .lifts = Halb drauf, oder hebt ab

point-battery-joined = Akku verbunden, Anzeige gelesen
    .good = Stecker ganz drin und verriegelt, Anzeige ohne Warnung, Gas auf null.
    .why = Die Anzeige nennt eine schwache Zelle vielleicht, bevor du sie spürst.
    .bad = Ein Stecker halb drin, eine Warnung, oder ein Motor, der zuckt.
    .home = Verriegelt, ohne Warnung
    .notice = Verriegelt, ein Hinweis
    .alarm = Warnung, halb drin, zuckt

point-stance = Dein Stand, und was sie hält
    .good = Auf deinem Rücken, Bein- und Brustgurte zu, Füße gestemmt; oder festgebunden.
    .why = Bei Vollgas zieht sie stark genug, um dich umzuwerfen.
    .bad = Mit der Hand gehalten, am Boden abgestützt, oder ein Gurt noch offen.
    .worn = Am Rücken, Gurte zu, gestemmt
    .tied = An etwas, das hält, gebunden
    .by-hand = Von Hand, abgestützt, offen

point-area-clear = Platz um dich und hinter dir
    .good = Niemand daneben oder dahinter; keine losen Steine; Schirm ausgehängt, aus dem Propellerstrahl.
    .why = Gebrochene Blätter fliegen zur Seite, Steine und Leinen in den Propeller.
    .bad = Menschen, Tiere, lose Dinge oder der Schirm in Reichweite des Propellers oder seines Strahls.
    .clear = Frei nach allen Seiten
    .near = Jemand oder etwas nahe

point-kill-stops-engine = Stoppschalter, Motor im Leerlauf
    .good = Im Leerlauf gedrückt, vor jedem Vollgas: Der Motor geht sofort aus.
    .why = So stoppst du den Propeller am schnellsten.
    .bad = Der Motor läuft weiter, oder stoppt erst beim zweiten Druck.
    .dies = Motor geht sofort aus
    .runs-on = Läuft weiter, oder zögert

point-kill-stops-motor = Stoppschalter, Motor dreht langsam
    .good = Bei kleiner Drehzahl gedrückt, vor jeder vollen Leistung: Der Antrieb schaltet sofort ab.
    .why = So stoppst du den Propeller am schnellsten.
    .bad = Er treibt weiter, oder schaltet erst beim zweiten Druck ab.
    .stops = Antrieb schaltet sofort ab
    .turns-on = Treibt weiter, oder zögert

point-clutch-idle = Propeller, Motor im Leerlauf
    .good = Steht still, oder wird kaum bewegt: Die Kupplung trennt.
    .why = Eine Kupplung, die schleift, treibt den Propeller, während du ihn in Ruhe glaubst.
    .bad = Wird im Leerlauf herumgetrieben.
    .still = Steht still
    .creeps = Kriecht hin und wieder
    .driven = Wird herumgetrieben

point-idle-speed = Leerlaufdrehzahl, Motor warm
    .good = Hände weg vom Gas: Umdrehungen pro Minute (rpm) ruhig, im Sollbereich.
    .why = Ein Leerlauf, der steigt oder schwankt, kann Falschluft sein: Hitze folgt.
    .bad = So niedrig, dass er in der Luft ausgehen kann, oder so hoch, dass er dich schiebt.

point-full-throttle-speed = Vollgasdrehzahl im Stand
    .good = Einige Sekunden Vollgas: Umdrehungen pro Minute (rpm) im Sollbereich.
    .why = Zu niedrig: Schub fehlt. Zu hoch: mageres Gemisch, oder der Antrieb rutscht.
    .bad = Langsamer oder schneller als der Sollbereich, oder steigt und fällt von selbst.

point-full-power-speed = Drehzahl bei voller Leistung, Stand
    .good = Einige Sekunden volle Leistung: Umdrehungen pro Minute (rpm) im Sollbereich.
    .why = Zu niedrig: Schub fehlt, oder der Akku ist müde. Zu hoch: Der Propeller greift weniger.
    .bad = Langsamer oder schneller als der Sollbereich, oder steigt und fällt von selbst.

point-sound-shake = Klang und Rütteln, jede Drehzahl
    .good = Ruhig von unten bis Vollgas; losgelassen fällt er sofort ab.
    .why = Ein neues Rütteln, oder ein Ton, der hängen bleibt, ist das erste Wort eines Fehlers.
    .bad = Ein Klopfen, ein neues Rütteln, oder Drehzahl, die nach dem Loslassen hängen bleibt.
    .smooth = Ruhig, fällt sofort ab
    .buzz = Neues Summen oder Zittern
    .rough = Klopft, rüttelt, bleibt hängen

point-after-running = Unter dem Motor, nach dem Lauf
    .good = Motor aus: unten trocken, nichts locker, nichts fehlt.
    .why = Hitze und Druck öffnen Lecks, die kalt dicht sind.
    .bad = Ein Tropfen, eine frische nasse Linie, ein Teil, das gewandert oder weg ist.
    .dry = Trocken, alles am Platz
    .damp = Dünner feuchter Film
    .drips = Tropft, gewandert oder fehlt

point-after-running-motor = Motor und Akku, nach dem Lauf
    .good = Aus: kein Geruch, kein Rauch, Temperaturen in der Anzeige wie sonst.
    .why = Hitze, die heute neu ist, ist ein Fehler, der begonnen hat.
    .bad = Brandgeruch, Rauch, Blähung, oder viel heißer als sonst.
    .as-usual = Wie sonst, ohne Geruch
    .warmer = Wärmer als sonst
    .smells = Riecht, raucht oder bläht sich

point-carabiner-gates-again = Eingehängt, noch einmal die Schnapper
    .good = Linker Tragegurt links, rechter rechts, unverdreht; fass jeden Schnapper an: zu, verriegelt.
    .why = Ein halb eingehängter Tragegurt hält am Boden und lässt in der Luft los.
    .bad = Verdreht, ein Tragegurt auf dem Schnapper, eine Verriegelung nicht eingerastet.
    .both-in = Beide drin, beide verriegelt
    .not-shut = Verdreht, Schnapper offen

point-leg-straps-again = Beingurte, noch einmal
    .good = Fass an und zieh, links, dann rechts: beide an dir geschlossen.
    .why = Kurz geöffnet und vergessen, lassen sie dich aus dem Sitz fallen.
    .bad = Einer offen, halb eingerastet, oder hängt schlaff.
    .both-closed = Links und rechts zu
    .open = Einer offen oder schlaff

point-walk-complete = Dieser Rundgang, Anfang bis Ende
    .good = Du standest an jeder Station und hast jeden Punkt selbst angesehen.
    .why = Eine halb abgebrochene Liste fühlt sich vollständig an.
    .bad = Ein Punkt geraten, übersprungen, oder an einen Anruf oder ein Gespräch verloren.
    .every-point = Jeder Punkt angesehen
    .left-out = Etwas geraten, ausgelassen
