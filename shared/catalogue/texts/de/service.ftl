# German, "du". What is said of work on the engine: jobs, parts, joints, what is looked at after them.

occasion-after-service = Nach der Wartung

fault-occasion-needs-job = „{ $words }“ folgt auf eine Arbeit: Die Liste ist, was die Arbeit gelöst oder zerlegt hat.
    .hint = Beginn zuerst die Arbeit und sag, was getan wurde; dann wird ihre Liste dafür zusammengestellt.

## Jobs: what was done, in one line

job-plug-changed = Zündkerze gewechselt
    .what = Die Kerze war draußen: erneuert, oder angesehen und wieder eingesetzt.
job-head-retorqued = Kopfmuttern angezogen
    .what = Die Kopfmuttern wurden kalt gelöst oder angezogen, der Kopf blieb drauf.
job-head-retorqued-again = Kopf nach erster Tankfüllung nachgezogen
    .what = Wieder kalt wurde jede Kopfmutter auf ihr Drehmoment nachgezogen und die Verbindungen angesehen.
job-cylinder-off = Zylinder ab
    .what = Kopf und Zylinder waren ab, beide Dichtungen wurden erneuert.
job-shroud-off = Kühlhaube ab
    .what = Die Kühlhaube war ab, zum Reinigen oder um dahinterzukommen.
job-exhaust-off = Auspuff ab
    .what = Die Federn waren ausgehängt, der Auspuff war ab.
job-carburettor-cleaned = Vergaser gereinigt
    .what = Der Vergaser war ab, geöffnet und gereinigt.
job-intake-off = Ansaugstutzen ab
    .what = Der Vergaser und der Ansaugstutzen dahinter waren ab.
job-propeller-changed = Propeller gewechselt
    .what = Der Propeller war ab: gewechselt, ausgewuchtet oder wieder montiert.
job-propeller-retorqued = Propellerschrauben nachgezogen
    .what = Jede Propellerschraube wurde auf ihr Drehmoment nachgezogen.
job-reduction-adjusted = Untersetzung eingestellt
    .what = Der Riemen wurde gespannt, oder das Getriebe geöffnet.
job-belt-tensioned-again = Riemen nachgespannt
    .what = Der Riemen hatte seine erste Stunde, seine Spannung wurde neu eingestellt.
job-starter-repaired = Starter repariert
    .what = Der Starter war ab: sein Seil, seine Feder oder sein Motor.
job-fuel-opened = Kraftstoffanlage geöffnet
    .what = Eine Kraftstoffleitung war ab, am Tank oder am Vergaser.
job-mounts-renewed = Motorlager erneuert
    .what = Die Gummilager des Motors wurden gelöst oder erneuert.
job-after-propeller-strike = Nach einer Propellerberührung
    .what = Der Propeller ist angeschlagen: Er und seine Nabe waren ab, und alles, was der Schlag erreicht hat, wird angesehen.
job-motor-off = Motor ab
    .what = Der Elektromotor war von seinen Haltern ab.
job-controller-changed = Regler gewechselt
    .what = Der Regler war ab, oder seine Kabel waren es.
job-battery-changed = Flugakku gewechselt
    .what = Der Flugakku war aus seinen Gurten.

## What falls due later

follow-up-head-retorque = Kopf nach der ersten Tankfüllung nachziehen, Motor kalt
follow-up-base-look = Zylinderfuß nach der ersten Tankfüllung noch einmal ansehen
follow-up-propeller-bolts-again = Propellerschrauben nach der ersten Stunde nachziehen
follow-up-belt-again = Riemenspannung nach der ersten Stunde neu einstellen

## Parts

graph-part-plug-cap = Kerzenstecker
graph-part-plug = Zündkerze
graph-part-shroud = Kühlhaube
graph-part-exhaust = Auspuff
graph-part-exhaust-stub = Auspuffstutzen
graph-part-head = Zylinderkopf
graph-part-cylinder = Zylinder
graph-part-air-box = Luftfilterkasten
graph-part-throttle-cable = Gaszug
graph-part-fuel-line = Kraftstoffleitung
graph-part-pulse-line = Impulsleitung
graph-part-carburettor = Vergaser
graph-part-intake = Ansaugstutzen und Membranen
graph-part-propeller = Propeller
graph-part-hub = Propellernabe
graph-part-belt = Antriebsriemen
graph-part-gear-oil-plug = Getriebeölschraube
graph-part-gear-cover = Getriebedeckel
graph-part-starter-pull = Seilzugstarter
graph-part-starter-battery = Starterbatterie
graph-part-starter-motor = Anlasser
graph-part-crankcase = Kurbelgehäuse
graph-part-tank = Kraftstofftank
graph-part-frame = Rahmen
graph-part-battery-lead = Stecker des Flugakkus
graph-part-flight-battery = Flugakku
graph-part-controller = Regler
graph-part-motor = Elektromotor

## Joints

joint-plug-cap-push = Stecker auf der Kerze
joint-plug-thread = Kerze im Kopf
joint-shroud-nuts = Haubenhalter
joint-exhaust-springs = Auspufffedern
joint-exhaust-mounts = Auspuffhalter
joint-exhaust-stub-nuts = Auspuffstutzen am Zylinder
joint-head-nuts = Kopfmuttern
joint-head-seal = Kopf auf dem Zylinder
joint-base-nuts = Fußmuttern
joint-base-seal = Zylinder auf dem Kurbelgehäuse
joint-air-box-clip = Klammer am Luftfilterkasten
joint-throttle-cable-end = Gaszug am Vergaser
joint-fuel-line-carburettor = Kraftstoffleitung am Vergaser
joint-fuel-line-tank = Kraftstoffleitung am Tank
joint-pulse-line-ends = Beide Enden der Impulsleitung
joint-carburettor-clamp = Vergaser am Ansaugstutzen
joint-intake-screws = Ansaugstutzen am Kurbelgehäuse
joint-propeller-bolts = Propellerschrauben
joint-hub-bolts = Nabenschrauben
joint-belt-adjuster = Riemenspanner
joint-belt-run = Riemen um seine Scheiben
joint-gear-oil-plug-thread = Getriebeölschraube im Deckel
joint-gear-cover-bolts = Schrauben des Getriebedeckels
joint-starter-screws = Schrauben des Seilzugstarters
joint-starter-lead = Kabel des Anlassers
joint-starter-motor-bolts = Schrauben des Anlassers
joint-engine-mounts = Motorlager
joint-battery-lead-plug = Flugakku am Regler
joint-battery-straps = Gurte des Flugakkus
joint-phase-connectors = Motorkabel
joint-controller-screws = Schrauben des Reglers
joint-motor-bolts = Motorschrauben

fastener-nut = Muttern
fastener-locknut = Stoppmuttern
fastener-bolt = Schrauben
fastener-screw = Schrauben
fastener-thread = eingeschraubt
fastener-spring = Federn
fastener-clip = Klammer
fastener-clamp = Schelle
fastener-strap = Gurt
fastener-connector = Stecker
fastener-push = aufgesteckt
fastener-seal = Dichtung
fastener-belt = Riemen

## What is renewed, and tools to count back

consumable-head-seal = O-Ring oder Dichtung am Kopf
consumable-base-seal = Fußdichtung oder O-Ring
consumable-exhaust-gasket = Auspuffdichtung
consumable-intake-gasket = Dichtung am Ansaugstutzen
consumable-lock-wire = Sicherungsdraht der Auspufffedern
consumable-fuel-clamp = Schellen der Kraftstoffleitung
consumable-gear-cover-gasket = Dichtung des Getriebedeckels
consumable-gear-oil = Getriebeöl
consumable-mount-rubbers = Gummilager

tool-torque-wrench = Drehmomentschlüssel mit Klick
tool-sockets = Steckschlüsseleinsätze, Verlängerung
tool-plug-spanner = Kerzenschlüssel
tool-pliers = Zange
tool-spanners = Gabelschlüssel
tool-hex-keys = Innensechskantschlüssel
tool-screwdriver = Schraubendreher
tool-spring-hook = Federhaken
tool-feeler-gauge = Fühlerlehre
tool-port-rags = Lappen aus den offenen Kanälen
tool-oil-tray = Ölwanne
tool-fuel-can = Kanister und Trichter

## Limits

band-plug-gap = Elektrodenabstand der Zündkerze
band-plug-torque = Drehmoment der Zündkerze
band-base-nut-torque = Drehmoment der Fußmuttern
band-propeller-bolt-torque = Drehmoment der Propellerschrauben
band-motor-bolt-torque = Drehmoment der Motorschrauben
band-thread-protrusion = Gewindegänge hinter einer Stoppmutter
band-compression = Kompression
band-exhaust-spring-tension = Zugkraft der Auspufffedern
band-mount-hardness = Härte der Gummilager (Shore A)
band-belt-tension = Riemen, wie weit er nachgibt
band-gear-play = Getriebespiel an der Blattspitze

## Cautions

caution-cold-engine = Nur einen kalten Motor anziehen, in der Einheit auf dem Schlüssel: Inch-Pound (in-lb) sind keine Foot-Pound (ft-lb). Niemals ein bisschen mehr.
caution-seal-renewed = Eine Verbindung, die geschwitzt hat, wird geöffnet, untersucht und erneuert: Auf Anziehen allein ist kein Verlass.
caution-daylight = Beurteile die Farbe bei Tageslicht: Lampen und Bildschirme verfälschen sie.
caution-compression-turning = Stoppschalter auf Stopp, Zündkabel an Masse, niemand in Reichweite des Propellers: Auch von Hand gedreht kann der Motor zünden.
caution-spring-flies = Eine gespannte Feder fliegt: Augen schützen, und zieh sie niemals mit den Fingern.
caution-strike-inside = Was ein Anschlagen innen verbogen hat, zeigt sich spät und versagt plötzlich. Das Handbuch des Herstellers sagt, was zu öffnen und zu messen ist; wo die Vorschriften es verlangen, macht es jemand mit Berechtigung.
caution-direction-without-propeller = Probier die Drehrichtung ohne Propeller: Ein Motor, der falsch herum dreht, schiebt auf dich zu.
caution-wound-back = Entspann den Drehmomentschlüssel bis zum kleinsten Skalenwert. Was liegen bleibt, trifft den Propeller.

## Plug

point-after-plug-colour = Farbe der Kerzenspitze
    .good = Trocken, dunkel oder kaffeebraun.
    .why = Weiß verrät Hitze, oft von Falschluft; sie verbrennt Kolben.
    .bad = Weiß, glasig oder mit Perlen; helles Beige ist auf dem Weg dahin; nass ist zu fett.
    .brown = Dunkel oder kaffeebraun
    .tan = Helles Beige
    .wet = Schwarz und nass
    .white = Weiß, glasig oder mit Perlen

point-after-plug-gap = Elektrodenabstand, mit Fühlerlehre
    .good = Die Lehre zieht leicht; der Wert liegt im Sollbereich.
    .why = Zu weit gibt Aussetzer, wenn es heiß ist; zu eng läuft der Leerlauf schlecht.
    .bad = Außerhalb des Sollbereichs, oder eine Elektrode schräg abgebrannt.

point-after-plug-seat = Kerze auf ihrem Sitz
    .good = Von Hand angesetzt, Dichtring flach gedrückt, Motor kalt, { $torque }.
    .why = Locker verliert sie Druck und überhitzt; mit Gewalt reißt sie das Gewinde im Kopf aus.
    .bad = Schief oder schwer im Gewinde, steht vom Sitz ab, Dichtring fehlt.
    .pressed = Von Hand, Dichtring gedrückt
    .stiff = Gewinde schwer, Ring gedrückt
    .proud = Schief, steht ab oder locker

point-after-plug-terminal = Anschlussmutter der Kerze
    .good = Mit der Zange festgezogen, Gewinde scharf, der Stecker hält darauf.
    .why = Eine Anschlussmutter, die sich losdreht, nimmt den Funken mit.
    .bad = Sie dreht sich zwischen zwei Fingern, oder fehlt.
    .pliers-tight = Zangenfest
    .worn = Zangenfest, Gewinde abgenutzt
    .turns = Dreht von Hand, oder fehlt

## Head and cylinder

point-after-head-nuts = Kopfmuttern, nach dem Anziehen
    .good = Alle { $nuts }, über Kreuz und in Stufen auf { $torque }, kalt; jede drehte sich ein wenig, gleich weit.
    .why = Zu locker leckt und heizt; zu fest zieht den Stehbolzen aus dem Gehäuse.
    .bad = Eine Mutter, die nie klickt, oder eine, die sich über eine halbe Drehung bewegte.
    .clicked = Alle geklickt, gleich weit
    .one-moved-far = Geklickt, eine drehte weit
    .turns-on = Eine dreht weiter, oder fehlt

point-after-base-nuts = Fußmuttern, nach dem Anziehen
    .good = Alle { $nuts }, über Kreuz und in Stufen auf { $torque }, kalt.
    .why = Luft, die unter dem Zylinder eindringt, macht ihn mager und heiß.
    .bad = Eine Mutter, die nie klickt, oder eine, die sich über eine halbe Drehung bewegte.
    .clicked = Alle geklickt, gleich weit
    .one-moved-far = Geklickt, eine drehte weit
    .turns-on = Eine dreht weiter, oder fehlt

point-after-head-seal = Kopfdichtung und ihre Flächen
    .good = Neue Dichtung, Flächen sauber und eben, nichts eingeklemmt.
    .why = Ein Leck hier schneidet wie ein Brenner.
    .bad = Die alte Dichtung wieder drin, eine Fläche zerfressen oder mit Riefen.
    .new = Neue Dichtung, Flächen sauber
    .scratched = Neue Dichtung, Fläche zerkratzt
    .old = Alte Dichtung wieder drin

point-after-base-seal = Fußdichtung und ihre Flächen
    .good = Neue Dichtung oder neuer O-Ring, Flächen sauber, kein Loch verdeckt.
    .why = Öl, das hier zu sehen ist, heißt Falschluft: Hitze folgt.
    .bad = Die alte wieder drin, eine Fläche zerfressen, ein Kanal verdeckt.
    .new = Neue Dichtung, Flächen sauber
    .scratched = Neue Dichtung, Fläche zerkratzt
    .old = Alte Dichtung wieder drin

point-after-bore = Laufbahn und Kolben, Auslassseite
    .good = Ringsum gleichmäßig und glatt, Ring frei in seiner Nut.
    .why = Hitze macht zuerst auf der Auslassseite Riefen; von dort frisst er.
    .bad = Längsriefen, angeschmolzene Kanten, ein Ring, der klemmt oder gebrochen ist.
    .even = Gleichmäßig, Ring frei
    .brown = Brauner Fleck unter dem Ring
    .scored = Riefen, Schmelze, Ring klemmt

point-after-compression = Kompression, mit Messgerät
    .good = Gas ganz offen, mehrere Umdrehungen: im Sollbereich, und nah am letzten Mal.
    .why = Sie fällt, bevor die Leistung fällt; ein Sprung nach unten verrät Ring oder Dichtung.
    .bad = Unter dem Sollbereich, oder deutlich unter dem letzten Mal.

## Shroud

point-after-shroud-nuts = Stoppmuttern und Scheiben der Haube
    .good = Alle { $mounts }: Gewinde eben durch die Stoppmutter, Gummischeibe eben angedrückt, Haube unverzogen.
    .why = Eine Haube unter Spannung reißt von den Löchern aus wie ein Spinnennetz.
    .bad = Haube krumm gezogen, Scheibe platt gedrückt, eine Stoppmutter, die frei dreht.
    .just-through = Gewinde durch, Scheibe gedrückt
    .squeezed = Scheibe platt gedrückt
    .flexed = Haube verzogen oder rissig
    .short = Gewinde kurz, Mutter dreht

point-after-shroud-spacers = Distanzhülsen hinter der Haube
    .good = Eine an jedem der { $mounts } Halter, gerade und heil.
    .why = Fehlt eine, verbiegt die Haube, wenn die Mutter draufkommt.
    .bad = Eine fehlt, ist gespalten, oder zwei an einer Stelle.
    .each-in = Eine an jedem Halter
    .worn = Alle da, eine abgenutzt
    .missing = Eine fehlt oder gespalten

## Exhaust

point-after-exhaust-spring-tension = Auspufffedern, Zug mit Federwaage
    .good = Jede der { $springs } zieht im Sollbereich, wenn sie bis zu ihren Haken gespannt ist.
    .why = Hitze macht Federn weich; eine schlaffe hängt sich im Flug aus.
    .bad = Eine zieht deutlich weniger als die anderen, oder ihre Windungen stehen auseinander.

point-after-exhaust-stub = Auspuffstutzen und Dichtung
    .good = Neue Dichtung, Muttern gleichmäßig fest, kein Gewinde ausgezogen.
    .why = Heißes Gas neben dem Zylinder heizt ihn auf und verbrennt, was es trifft.
    .bad = Die alte Dichtung wieder drin, Ruß, eine Mutter fehlt.
    .new = Neue Dichtung, gleichmäßig fest
    .stud-worn = Fest, Bolzengewinde abgenutzt
    .old = Alte Dichtung, Ruß oder locker

point-after-exhaust-mounts = Auspuffhalter, Gummis und Muttern
    .good = Gummis heil, Muttern ganz drauf, Auspuff spannungsfrei.
    .why = Ein Auspuff, der unter Spannung hängt, reißt an seinen Schweißnähten.
    .bad = Ein gerissener Gummi, eine lockere Mutter, oder ein Rohr in seine Lage gezwungen.
    .whole = Heil, Muttern ganz drauf
    .crazed = Haarfeine Gummirisse
    .torn = Gerissen, locker, verspannt

## Carburettor and intake

point-after-throttle-slide = Gas, von zu bis voll
    .good = Öffnet ganz und schnappt zu, wie der Zug auch liegt.
    .why = Offen hängen geblieben treibt es dich, wohin du nicht willst.
    .bad = Es bleibt offen, hakt, oder das Zugende sitzt nur halb.
    .full-and-shut = Öffnet ganz, schnappt zu
    .short = Schnappt zu, öffnet zu wenig
    .sticks = Klemmt, hakt oder hängt

point-after-carburettor-bowl = Vergaserdeckel und Ablässe
    .good = Deckel gleichmäßig drauf, Schrauben drin, mit Kraftstoff nach einer Minute trocken.
    .why = Kraftstoff, der tropft, fällt auf den Auspuff.
    .bad = Nass an einem Deckel, eine Schraube fehlt, eine Dichtung herausgedrückt.
    .dry = Trocken, alle Schrauben drin
    .damp = Nur feuchter Film
    .wet = Nass, oder Schraube fehlt

point-after-pulse-line = Impulsleitung, beide Enden
    .good = Geschmeidig, an beiden Enden ganz aufgesteckt, kein Knick.
    .why = Sie treibt die Kraftstoffpumpe; ein Leck nimmt dem Motor Kraftstoff und heizt ihn auf.
    .bad = Ab, gespalten, geknickt oder gequetscht.
    .home = Geschmeidig, beide Enden drauf
    .hard = Hart, beide Enden drauf
    .off = Ab, gespalten, gequetscht

point-after-intake-joint = Ansaugstutzen am Kurbelgehäuse
    .good = Neue Dichtung, Schrauben gleichmäßig fest, ringsum kein Spalt.
    .why = Luft, die hier eindringt, macht den Motor mager und heiß.
    .bad = Die alte Dichtung wieder drin, ein Spalt, eine Schraube locker.
    .new = Neue Dichtung, ringsum eben
    .old = Alte Dichtung wieder drin
    .gap = Spalt, oder Schraube locker

## Fuel

point-after-fuel-ends = Leitungsenden und Schellen
    .good = Ganz aufgesteckt, Schelle hinter dem Wulst, trocken nach festem Zug.
    .why = Kraftstoff, der austritt, brennt; Luft, die eindringt, lässt den Motor verhungern.
    .bad = Halb drauf, Schelle locker oder weg, nass.
    .home = Drauf, neue Schellen, trocken
    .old-clamp = Drauf, trocken, Schelle alt
    .wet = Halb drauf, locker oder nass

point-after-fuel-air = Kraftstoff angesaugt, Luft heraus
    .good = Leitung voll vom Tank zum Vergaser, keine Blase wandert.
    .why = Ein Luftpolster stoppt den Motor kurz nach dem Start.
    .bad = Blasen, die immer wieder kommen.
    .full = Voll, ohne Blasen
    .a-bubble = Hin und wieder eine Blase
    .stream = Immer wieder Blasen

## Reduction drive

point-after-belt-tension = Riemenspannung, am Nachgeben
    .good = In der Mitte gedrückt, wie es das Handbuch sagt, gibt er eine Länge im Sollbereich nach.
    .why = Schlaff rutscht und springt er; zu straff frisst er die Lager.
    .bad = Gibt mehr oder weniger nach als der Sollbereich, oder beim Drehen verschieden.

point-after-belt-adjuster = Riemenspanner, gesichert
    .good = Sicherung fest, neue Lackmarke, Scheiben in Flucht.
    .why = Ein Spanner, der wandert, lässt den Riemen im Flug schlaff werden.
    .bad = Er dreht sich von Hand, oder die Scheiben stehen aus der Flucht.
    .locked = Gesichert, mit Lackmarke
    .unmarked = Gesichert, Lackmarke fehlt
    .turns = Dreht, oder aus der Flucht

point-after-gear-play = Getriebespiel, an der Blattspitze
    .good = Sanft gegen die Kurbelwelle hin und her gedreht, bewegt sich die Spitze im Sollbereich.
    .why = Wachsendes Spiel verrät verschlissene Zähne oder Lager.
    .bad = Mehr als der Sollbereich, oder eine harte, kratzige Stelle.

point-after-gear-cover = Getriebedeckel, Dichtung, Schrauben
    .good = Neue Dichtung, Flächen sauber, Schrauben gleichmäßig fest und mit Lackmarke.
    .why = Ein Getriebe, das sein Öl verliert, läuft sich kaputt und blockiert.
    .bad = Die alte Dichtung wieder drin, eine Schraube locker oder weg, Öl.
    .new = Neue Dichtung, mit Lackmarken
    .unmarked = Neue Dichtung, Marke fehlt
    .old = Alte Dichtung, locker, ölig

point-after-gear-oil = Getriebeöl und seine Schraube
    .good = Am Ölstand, die Sorte aus dem Handbuch, Ölschraube fest und gesichert.
    .why = Trocken gelaufen blockiert es und stoppt den Propeller.
    .bad = Unter oder über dem Ölstand, Ölschraube locker, oder Öl unbekannt.
    .at-level = Am Stand, Schraube gesichert
    .unsecured = Am Stand, Draht fehlt
    .short = Stand falsch, locker, unbekannt

## Propeller, hub, strike

point-after-propeller-bolts = Propellerschrauben, nach dem Anziehen
    .good = Alle { $bolts }, über Kreuz und in Stufen auf { $torque }, neue Lackmarken.
    .why = Eine lockere Schraube bricht die anderen, und der Propeller geht davon.
    .bad = Eine Schraube, die nie klickt, eine zerdrückte Nabenfläche, eine fehlt.
    .at-torque = Alle auf Moment, mit Marke
    .unmarked = Auf Moment, Lackmarke fehlt
    .loose = Locker, ausgerissen, fehlt

point-after-propeller-way = Propeller, richtig herum
    .good = In Drehrichtung des Motors gehen die runden Kanten voran; flache Seiten zeigen nach hinten.
    .why = Verkehrt herum gibt er wenig Schub, und seine Spitzen flattern.
    .bad = Scharfe Kanten gehen voran.
    .edges-lead = Runde Kanten voran
    .back-to-front = Scharfe Kanten voran

point-after-hub-bolts = Nabe auf ihrer Welle
    .good = Gerade auf ihrer Welle, Schrauben fest und mit neuer Lackmarke.
    .why = Die Nabe trägt alles: Ihr Spiel bricht Schrauben und Blätter.
    .bad = Spiel, ein Riss, Abriebstaub, eine Schraube locker oder weg.
    .square = Gerade, fest, mit Lackmarke
    .unmarked = Fest, Lackmarke fehlt
    .loose = Spiel, Riss oder locker

point-after-propeller-shaft = Propellerwelle, gegen Zeiger gedreht
    .good = Gemessen, wie es das Handbuch sagt, läuft sie rund, still und frei.
    .why = Eine krumme Welle bricht später, in der Luft.
    .bad = Sie eiert, schleift, klemmt, oder niemand hat sie gemessen.
    .true = Gemessen, läuft rund
    .wobbles = Eiert, schleift, ungemessen

## Mounts and locknuts

point-after-mount-hardness = Gummilager, Härte mit Messgerät
    .good = Jedes der { $mounts } im Sollbereich, und alle gleich.
    .why = Harter Gummi gibt das Rütteln weiter; weicher lässt den Motor schwingen.
    .bad = Außerhalb des Sollbereichs, oder eines anders als die übrigen.

point-after-thread-protrusion = Gewindegänge hinter Stoppmuttern
    .good = Ganze Gänge hinter der Mutter: Die kleinste Zahl von allen liegt im Sollbereich.
    .why = Eine Stoppmutter hält nur, wenn das Gewinde ganz durch sie geht.
    .bad = Weniger, oder eine Stoppmutter so abgenutzt, dass Finger sie drehen: erneuern.

## Starter

point-after-starter-screws = Seilzugstarter, seine Schrauben
    .good = Alle Schrauben drin, mit Lackmarke; Gehäuse gerade zur Welle.
    .why = Löst er sich, wird er in das Schwungrad gezogen.
    .bad = Eine Schraube locker oder weg, ein Riss an einer Lasche.
    .tight = Alle fest, mit Lackmarke
    .unmarked = Fest, Lackmarke fehlt
    .loose = Locker, fehlt oder Riss

## Electric

point-after-motor-bolts = Motorschrauben, nach dem Anziehen
    .good = Alle { $mounts } auf { $torque }, neue Lackmarken.
    .why = An ihnen hängt der Propeller.
    .bad = Eine Schraube, die nie klickt, ein Riss, eine fehlt.
    .at-torque = Alle auf Moment, mit Marke
    .unmarked = Auf Moment, Lackmarke fehlt
    .loose = Locker, Riss oder fehlt

point-after-motor-direction = Wie herum der Motor dreht
    .good = Bei kleiner Drehzahl ohne Propeller probiert, dreht er wie markiert.
    .why = Zwei vertauschte Kabel drehen ihn rückwärts.
    .bad = Er dreht andersherum, oder zuckt.
    .right-way = Dreht wie markiert
    .other-way = Andersherum, oder zuckt

## Tools

point-after-tools-counted = Werkzeug, Lappen, alte Teile
    .good = Gezählt: alles wieder am Platz, Kanäle frei von Lappen, Schlüssel entspannt.
    .why = Was liegen bleibt, trifft den Propeller oder geht durch den Motor.
    .bad = Eines fehlt: Niemand lässt den Motor an, bis es gefunden ist.
    .all-back = Alles wieder am Platz
    .one-missing = Eines fehlt
