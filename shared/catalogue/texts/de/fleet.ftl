# German, "du". What a fleet's looks tell: how long components last, how people look, what points are worth.

## How long components last: what it rests on

life-rests-on = Das stützt sich auf { $machines ->
    [one] eine Maschine
   *[other] { $machines } Maschinen
  } und { $lives ->
    [one] eine Lebensdauer
   *[other] { $lives } Lebensdauern
  }: { $failed ->
    [0] Keine Komponente wurde unbrauchbar gefunden
    [one] Eine Komponente wurde unbrauchbar gefunden
   *[other] { $failed } Komponenten wurden unbrauchbar gefunden
  }{ $whole ->
    [0] .
    [one] , eine war heil, als sie zuletzt gesehen wurde.
   *[other] , { $whole } waren heil, als sie zuletzt gesehen wurden.
  }
life-rests-on-nothing = Das stützt sich noch auf nichts: { $machines ->
    [0] Keine Maschine hier hat so eine Komponente, die angesehen wurde
    [one] Eine Maschine wurde angesehen und ist seither nicht gelaufen
   *[other] { $machines } Maschinen wurden angesehen und sind seither nicht gelaufen
  }.

## Too little to say

life-too-few = Zu wenig für eine Aussage: { $has ->
    [0] Nichts wurde gesehen
    [one] Eine wurde unbrauchbar gefunden
   *[other] { $has } wurden unbrauchbar gefunden
  }, und es braucht { $needs }: noch { $more ->
    [one] eine.
   *[other] { $more }.
  }
life-nothing-failed = Zu wenig für eine Aussage: { $has ->
    [one] Die eine gesehene wurde noch nicht
   *[other] Von den { $has } gesehenen wurde noch keine
  } unbrauchbar gefunden. Wie lange sie halten, zeigt sich erst, wenn einige ausfallen.
life-any-spread = Zu wenig für eine Aussage: Diese Befunde passen zu Lebensdauern, die fast alle gleich sind, und zu solchen, die sich endlos unterscheiden. Es braucht Ausfälle, die bei anderem Alter gefunden werden, und Kontrollen, die dichter beieinander liegen.

## How often to look

life-shortens = Sieh sie mindestens alle { $every } h an: Dann bleibt die Wahrscheinlichkeit, dass eine zwischen zwei Kontrollen ungesehen ausfällt, unter { $percent } %, auch noch bei { $age } h. Das ist weniger als die { $in_force } h, die gelten.
life-in-force-holds = Die geltenden { $in_force } h halten die Wahrscheinlichkeit, dass eine zwischen zwei Kontrollen ungesehen ausfällt, unter { $percent } %, auch noch bei { $age } h.
life-suggests = Eine Kontrolle alle { $every } h würde die Wahrscheinlichkeit, dass eine zwischen zwei Kontrollen ungesehen ausfällt, unter { $percent } % halten, auch noch bei { $age } h.
life-every-flight = Sieh sie vor jedem Flug an: Bei { $age } h hält nicht einmal ein Intervall von einer Stunde die Wahrscheinlichkeit, dass eine ungesehen ausfällt, unter { $percent } %. Überleg, sie zu erneuern, bevor sie so alt ist.
life-at-half = Bei { $age } h wären es { $every } h.
life-never-longer = Was gilt, bleibt: Nichts von hier verlängert es jemals.
life-stays = Die geltenden { $in_force } h bleiben, wie sie sind.
life-nothing-in-force = Hier gilt dafür kein Kontrollintervall, das kann also nur ein Vorschlag sein. Was gilt, veröffentlicht deine Schule, und sagt das Handbuch des Herstellers.
life-none-in-force = Hier gilt dafür kein Kontrollintervall: Wie oft hinzusehen ist, sagt das Handbuch des Herstellers.
life-publish = Es gilt, sobald ein Fluglehrer es veröffentlicht.
life-chance-ours = { $percent } % haben wir gewählt: Keine Schule hat die Wahrscheinlichkeit festgelegt, die sie hinnimmt.

## How they last

life-lasts = Bei { $hours } h sind etwa { $percent } von 100 noch brauchbar; diese Befunde lassen { $low } bis { $high } zu.
life-wears = Je älter, desto häufiger fallen sie aus: Sie verschleißen.
life-early = Je älter, desto seltener fallen sie aus: Das spricht für Einbau oder Material, nicht für Verschleiß. Die alten häufiger anzusehen bringt wenig.
life-any-age = Ob sie mit dem Alter häufiger ausfallen, zeigen diese Befunde nicht.
life-few = Es stützt sich auf nur { $failed } Ausfälle. Einer mehr kann viel daran ändern.

## What to bear in mind

life-put-right = Behoben zählt als neu, ob repariert oder erneuert.
life-unregistered = Eine, die niemand angelegt hat, zählt so alt wie ihre Maschine.
life-came-old = { $n ->
    [one] Eine wurde
   *[other] { $n } wurden
  } hier erst nach mehr als 10 h zum ersten Mal gesehen; bis dahin ist angenommen, dass nichts fehlte. Solche, die ausfielen, bevor hier jemand hinsah, fehlen: Frühe Ausfälle können häufiger sein, als das zeigt.
life-never-ran = { $n ->
    [one] Eine wurde
   *[other] { $n } wurden
  } unbrauchbar gefunden, ohne gelaufen zu sein. Das ist kein Verschleiß und zählt nicht.
life-of-no-age = { $n ->
    [one] Eine Kontrolle
   *[other] { $n } Kontrollen
  } einer Komponente, deren Alter niemand kennt, { $n ->
    [one] ist
   *[other] sind
  } ausgelassen: Was vorher dort war, wurde abgebaut, und die neue niemals angelegt.
life-invented = All das gehört zur Vorführung: erfundene Maschinen, erfundene Befunde.
life-caution = Das gilt für die Teile der Maschinen hier, wie sie geflogen und angesehen wurden. Das Handbuch des Herstellers geht vor; wo es mehr verlangt, gilt das.

## How the intervals were made

life-interval-turnbull = Stufen: Turnbulls Kurve, ohne Annahme über die Form der Lebensdauer. Ihr Vertrauensbereich von 95 % entsteht, indem dieselben Befunde { $times }-mal neu gezogen werden, und ist nirgends enger, als so wenige es erlauben.
life-interval-weibull = Linie: eine Weibull-Kurve. Ihr Vertrauensbereich von 95 % ist der ihrer Profil-Likelihood.

## Faults

fault-life-no-looks = Hier ist noch keine Kontrolle irgendeiner Komponente.
    .hint = Mach einen Rundgang und unterschreib, oder lies Einträge ein; dann frag noch einmal.
fault-life-no-such = Unter den angesehenen Komponenten gibt es keine „{ $what }“.
    .hint = Es gibt: { $known }.
fault-life-chance = Die Wahrscheinlichkeit, die hingenommen wird, muss mehr als 0 und weniger als 1 sein.
    .hint = Gib 0.02 an für eine von fünfzig.
fault-life-in-force = Das geltende Intervall muss mehr als 0 Stunden sein.
    .hint = Gib Stunden an, etwa 25, oder lass es weg.
fault-life-out-of-reach = Die Stunden in diesen Einträgen liegen zu weit auseinander, um damit zu rechnen.
    .hint = Such nach einem Versehen bei den Motorstunden einer Maschine, und stell es dort richtig.

## How people look

looking-hurried-point = { $point } ({ $times ->
    [one] einmal
   *[other] { $times }-mal
  })
looking-hurries = Ist an mehr Punkten in Eile als die anderen: { $own } % gegenüber { $others } % an denselben Punkten, aus { $looks } Kontrollen.
looking-hurries-where = Geht diese Punkte einmal zusammen durch, langsam.
looking-quick = Ist schneller als die anderen: etwa { $own } s je Punkt gegenüber { $others } s an denselben Punkten, aus { $looks } Kontrollen. Begleite einen Rundgang: Es kann Übung sein, oder es wird der Bildschirm beantwortet und nicht die Maschine.
looking-finds-less = Findet weniger als die anderen: bei { $own } von 100 Kontrollen gegenüber { $others } an denselben Punkten, aus { $looks } Kontrollen. Vielleicht sind die Maschinen in besserem Zustand; macht zusammen einen Rundgang und vergleicht, was jeder von euch sieht.
looking-finds-more = Findet mehr als die anderen: bei { $own } von 100 Kontrollen gegenüber { $others } an denselben Punkten, aus { $looks } Kontrollen. Vielleicht sind die Maschinen in schlechterem Zustand, oder das ist ein Auge, von dem andere lernen können.
looking-caution = Das zeigt, wo Hilfe willkommen sein kann. Es ist keine Rangliste: Schnell heißt nicht leichtfertig, und langsam heißt nicht gründlich. Jeder wird mit den anderen an denselben Punkten verglichen, ohne die Punkte, die wenige andere ansehen. Ein Befund zählt einmal, solange er offen ist. Gesagt wird erst etwas ab 100 Kontrollen einzelner Punkte, und nur, wo der Zufall allein es seltener als einmal in hundert Fällen ergäbe. Maschinen sind verschieden: Wer eine abgenutzte fliegt, findet mehr.
looking-invented = Die Personen und Maschinen hier gehören zur Vorführung und sind erfunden.

## What points are worth

worth-few = { $looks ->
    [one] Einmal
   *[other] { $looks }-mal
  } angesehen: zu wenig für irgendeine Aussage; es braucht 30.
worth-never = Bei { $looks } Kontrollen niemals etwas gefunden: Höchstens { $percent } von 100 Kontrollen würden etwas finden (Dreierregel, 95 %).
worth-never-must = Er bleibt: Was selten und schwer ist, dafür ist eine Liste da.
worth-never-may = Das ist kein Grund, ihn wegzulassen. Frag, ob seine Worte zeigen, wonach zu sehen ist.
worth-often = Bei { $percent } von 100 Kontrollen etwas gefunden, an { $machines } Maschinen. Such die Ursache, und lass ihn im Rundgang früh kommen.
worth-plain = { $found ->
    [one] Einmal
   *[other] { $found }-mal
  } bei { $looks } Kontrollen etwas gefunden: bei { $low } bis { $high } von 100 (Vertrauensbereich 95 %).
worth-caution = Was an jedem Punkt der Listen gefunden wurde, über alle Maschinen hier. Ein Befund zählt einmal, solange er offen ist. Das sagt, was gefunden wurde, nicht, was da war; und nichts darüber, wie schwer es gewesen wäre. Die Vertrauensbereiche nehmen Kontrollen als unabhängig voneinander an, was Kontrollen an ein und derselben Maschine nicht ganz sind: Sie sind eher zu eng.
