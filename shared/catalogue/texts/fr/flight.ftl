# French: load, fuel, air and wind before a flight.

band-mix-ratio = Parts d’essence pour une part d’huile

## All-up weight

reason-load = Poids total volant au décollage { $total } : { $below } sous le maximum que cette voile peut porter avec moteur ({ $most }).
reason-load-over = Poids total volant au décollage { $total } : { $over } au-dessus du maximum que cette voile peut porter avec moteur ({ $most }).
clears-load-over = Laissez du lest ou de l’essence, ou prenez une voile qui peut le porter. Puis refaites le calcul.
reason-load-under = Réservoir vide, { $dry } : { $under } sous le minimum que cette voile doit porter avec moteur ({ $least }).
clears-load-under = Prenez du lest, ou une voile plus petite. Puis refaites le calcul.
reason-load-unconfirmed = Personne n’a confirmé d’après le manuel de la voile qu’elle peut porter de { $low } à { $high } avec moteur.
clears-load-unconfirmed = Saisissez la plage de poids de la voile, avec son manuel et la page, là où la machine est décrite.
fact-load-dry = Réservoir vide, { $dry } : { $above } au-dessus du minimum qu’elle doit porter ({ $least }).
fact-load-source = Ce que la voile peut porter : { $document }, { $page }.
fact-load-free = C’est { $over } au-dessus du maximum qu’elle peut porter sans moteur ({ $most }) : c’est la plage avec moteur qui compte ici.
fact-load-fuel = { $fuel } d’essence comptent pour { $mass } : { $density } kg par litre, le plus lourd que soit l’essence.
fact-load-described-anew = La plage de poids de la voile a été décrite de nouveau depuis : c’est la nouvelle qui compte.

## Petrol and oil

reason-mix = Le réservoir est à { $ratio }:1 ; il faut { $wanted }:1.
reason-mix-add = Il reste { $oil } d’huile à verser dans le réservoir, pour { $wanted }:1.
clears-mix-add = Versez-la, secouez le réservoir, et dites qu’elle y est.
reason-mix-lean = { $ratio ->
    [none] Il n’y a pas d’huile dans l’essence, et il faut { $wanted }:1 : il manque { $oil } d’huile.
   *[other] Trop peu d’huile : le réservoir est à { $ratio }:1, et il faut { $wanted }:1. Il en manque { $oil }.
  }
clears-mix-lean = Ajoutez l’huile qui manque avant que le moteur tourne, secouez le réservoir, et dites combien vous en avez versé en tout.
reason-mix-rich = Trop d’huile : le réservoir est à { $ratio }:1, et il faut { $wanted }:1. { $petrol } d’essence sans huile l’y ramèneraient.
clears-mix-rich = Ajoutez l’essence, ou volez avec une bougie qui peut s’encrasser et un moteur plus pauvre que son réglage.
reason-mix-unconfirmed = Aucun manuel ne confirme { $wanted }:1 pour ce moteur.
clears-mix-unconfirmed = Saisissez le rapport avec la page de votre manuel, parmi les limites de la machine.
reason-mix-manual-lean = { $wanted }:1, c’est moins d’huile que n’en demande le manuel du moteur ({ $manual }:1).
reason-mix-manual-rich = { $wanted }:1, c’est plus d’huile que n’en demande le manuel du moteur ({ $manual }:1).
clears-mix-manual = Faites le mélange du manuel ; ou, si votre manuel dit autre chose, saisissez-le avec sa page.
fact-mix-source = Le rapport : { $document }, { $page }.

## Fuel

reason-fuel = L’essence tient { $low } au moins, réserve gardée, pour { $time } de vol.
reason-fuel-perhaps = L’essence tient de { $low } à { $high }, réserve gardée : { $time } seulement si le moteur consomme peu.
reason-fuel-short = L’essence tient { $high } au plus, réserve gardée, et le vol doit durer { $time }.
clears-fuel = Prenez plus d’essence, ou volez moins loin.
reason-fuel-unknown = Trop peu pour dire combien de temps tient l’essence : { $has ->
    [0] aucun vol n’a sa consommation notée
    [one] un seul vol a sa consommation notée
   *[other] { $has } vols ont leur consommation notée
  }, et il en faut { $needs }.
clears-fuel-unknown = Notez l’essence que consomme chaque vol. D’ici là, surveillez le réservoir en vol, et posez-vous avec une large marge d’essence.
fact-fuel-burn = { $flights } vols ont consommé de { $low } à { $high } : le moins et le plus, car ils sont trop peu pour en dire la dispersion.
fact-fuel-burn-predicted = D’après { $flights } vols, le prochain consomme de { $low } à { $high }, neuf fois sur dix.
fact-fuel-reserve = Reste à l’atterrissage : { $reserve }.

burns-few = Trop peu pour dire ce que consomme ce moteur : { $has ->
    [0] aucun vol n’a sa consommation notée
    [one] un seul vol a sa consommation notée
   *[other] { $has } vols ont leur consommation notée
  }, et il en faut { $needs }.

## The air

reason-air = L’air est aussi peu dense qu’à { $altitude } en atmosphère standard : { $thrust ->
    [0] aucune poussée n’y est perdue.
   *[other] l’hélice pousse { $thrust } % de moins qu’au niveau de la mer, et la course est { $run } % plus longue.
  }
reason-air-thin = Air peu dense, comme à { $altitude } en atmosphère standard : l’hélice pousse { $thrust } % de moins qu’au niveau de la mer, la course est { $run } % plus longue, et la montée plus plate.
clears-air = Attendez un air plus frais, allégez-vous, ou prenez un terrain plus long, sans rien à franchir au bout.
fact-air = Altitude-pression { $altitude } ; sans vent, la voile porte à une vitesse sol { $speed } % plus grande.
fact-air-dry = L’air a été pris pour sec : sans point de rosée, c’est le cas le plus favorable, et l’air humide est moins dense.
fact-air-rule = Poussée en proportion de la densité, course 12 % plus longue par 1000 ft : usage courant, sans source.

## The wind

reason-wind = Vent { $mean }{ $gust ->
    [none] {""}
   *[other] , rafales { $gust }
  } : dans les limites fixées.
reason-wind-mean = Vent { $mean } : au-dessus { $whose ->
    [school] de la limite de l’école
   *[own] de votre propre limite
  }, { $limit }.
reason-wind-gust = Rafales { $gust } : au-dessus { $whose ->
    [school] de la limite de l’école
   *[own] de votre propre limite
  }, { $limit }.
reason-wind-gust-factor = Vent { $mean }, rafales { $gust } : { $factor ->
    [none] des rafales en air calme, quelle que soit
   *[other] { $factor } fois le vent moyen, au-dessus de
  } { $whose ->
    [school] la limite de l’école
   *[own] votre propre limite
  }, { $limit }.
clears-wind = Ne décollez pas dans ce vent. Mesurez de nouveau quand il est retombé.
reason-wind-gust-unknown = Vent { $mean } : personne n’a mesuré les rafales, et { $whose ->
    [school] les limites de l’école les demandent
   *[own] vos propres limites les demandent
  }.
clears-wind-gust-unknown = Observez le vent dix minutes, et saisissez la plus forte rafale.
reason-wind-no-limit = Vent { $mean }{ $gust ->
    [none] {""}
   *[other] , rafales { $gust }
  } : personne n’a fixé de limite à laquelle le confronter.
clears-wind-no-limit = Fixez-en une avant que le vent se lève : un vent moyen, une rafale, ou de combien les rafales peuvent dépasser le vent moyen.
fact-wind-limits = { $whose ->
    [school] Limites de l’école
   *[own] Vos propres limites
  }. Vent moyen : { $mean ->
    [none] aucune
   *[other] { $mean }
  } ; rafales : { $gust ->
    [none] aucune
   *[other] { $gust }
  } ; rafale sur vent moyen : { $factor ->
    [none] aucune
   *[other] { $factor }
  }.

## Held together

clears-flight-well = Rien à faire. Refaites le calcul quand une valeur change.
reason-flight-impossible = Impossible à calculer avec ces valeurs : { $part ->
    [load] le poids total volant
    [mix] le mélange d’essence et d’huile
    [fuel] combien de temps tient l’essence
    [air] l’effet de l’air
   *[wind] le vent
  }.
clears-flight-impossible = Saisissez de nouveau les valeurs.
reason-measured-earlier = { $what ->
    [both] Air et vent mesurés
    [air] Air mesuré
   *[wind] Vent mesuré
  } à { $time } : regardez de nouveau.
clears-measured-earlier = Mesurez de nouveau, et saisissez ce que vous lisez.
reason-flight-not-prepared = Pas calculé aujourd’hui : { $what ->
    [both] poids total volant et vent
    [load] poids total volant
   *[wind] le vent face aux limites de l’école
  }.
clears-flight-not-prepared = Préparez le vol : charge, essence, air et vent.

## Components that a school wants inspected

reason-inspect-over = { $part } : aucun examen depuis { $hours } h, et l’école en veut un toutes les { $every } h.
reason-inspect-never = { $part } : jamais d’examen en { $hours } h, et l’école en veut un toutes les { $every } h.
clears-inspect-over = Examinez-le sur une liste qui le contient, et signez.

## What can't be

flight-fault-unit = Une valeur en { $from } ne se convertit pas en { $to } : choisissez la bonne unité.
flight-fault-number = Une valeur manque ou n’est pas un nombre.
flight-fault-too-cold = Rien n’est plus froid que le zéro absolu : regardez l’unité.
flight-fault-impossible = { $what } : il faut { $must ->
    [not-negative] 0 ou plus
    [at-least-one] 1 ou plus
   *[positive] plus que rien
  }.
flight-fault-backwards = { $what } : le minimum ne doit pas dépasser le maximum.
flight-fault-outside = { $what } : { $value } n’est pas entre { $low } et { $high }. Cherchez une erreur de nombre ou d’unité.
flight-fault-above-saturation = Le point de rosée ne peut pas dépasser la température de l’air.
flight-fault-no-ratio = { $ratio }:1 n’est pas un rapport d’essence à huile : de 5 à 200 parts pour une.
flight-fault-calm-gust = Les rafales ne peuvent pas être plus faibles que le vent moyen.
flight-fault-no-limit = Personne n’a fixé de limite à laquelle confronter le vent.

input-pilot = Le poids du pilote
input-machine = Le poids de la machine
input-ballast = Le lest
input-fuel = L’essence
input-wing-low = Le minimum que la voile doit porter
input-wing-high = Le maximum que la voile peut porter
input-wing = Ce que la voile peut porter
input-in-tank = Ce qui est dans le réservoir
input-add-fuel = L’essence versée
input-tank-or-fuel = Ce qui est dans le réservoir, ou l’essence versée
input-oil = L’huile versée
input-reserve = La réserve à l’atterrissage
input-flight-time = La durée du vol
input-burn = Ce que consomme le moteur
input-used = L’essence consommée lors d’un vol antérieur
input-time = La durée d’un vol antérieur
input-temperature = La température
input-dew-point = Le point de rosée
input-pressure = La pression de l’air
input-elevation = L’altitude du terrain
input-setting = Le calage altimétrique
input-altitude = L’altitude-pression
input-density = La densité de l’air
input-density-altitude = L’altitude-densité
input-mean = Le vent moyen
input-gust = Les rafales
input-mean-limit = La limite de vent moyen
input-gust-limit = La limite de rafales
input-gust-factor-limit = La limite de rafale sur vent moyen

## The form, its faults, and the record

ratio-words = { $ratio }:1. { $source }

fault-flight-impossible = Impossible de le garder ainsi. { $why }
    .hint = Saisissez de nouveau les valeurs ; une partie laissée vide n’est pas calculée.
fault-flight-empty = Rien n’a été saisi.
    .hint = Saisissez au moins une chose : charge, mélange, essence, air ou vent.
fault-weight-odd = { $what } : { $value } n’est pas entre { $low } et { $high }.
    .hint = Cherchez une erreur de nombre ou d’unité.
fault-wing-range-half = Il manque la moitié de ce que la voile peut porter.
    .hint = Donnez le minimum et le maximum avec moteur : --wing-least "95 kg" --wing-most "140 kg".
fault-plan-file = Le plan de { $file } est illisible : { $why }
    .hint = « flight prepare MACHINE » sans fichier montre un plan pour commencer.
fault-wing-range-crossed = Le minimum que la voile doit porter dépasse le maximum qu’elle peut porter.
    .hint = Échangez les deux, ou voyez si une unité est fausse.
what-machine-weight = Le poids de la machine
what-wing-low = Le minimum que la voile doit porter avec moteur
what-wing-high = Le maximum que la voile peut porter avec moteur
what-wing-free-low = Le minimum que la voile doit porter sans moteur
what-wing-free-high = Le maximum que la voile peut porter sans moteur

says-weight = Elle pèse { $weight } telle qu’elle vole, sans essence.
says-wing-range = Sa voile peut porter de { $low } à { $high } avec moteur{ $document ->
    [none] {""}
   *[other] {" "}({ $document }, { $page })
  }.
says-wing-range-free = Sans moteur, elle peut porter de { $low } à { $high }.

says-flight-load = Poids total volant : pilote { $pilot }, machine { $machine }, essence { $fuel }, lest { $ballast } ; la voile peut porter de { $low } à { $high } avec moteur.
says-flight-mix = Mélange : { $tank } dans le réservoir{ $before ->
    [none] {" "}sans huile
   *[other] {" "}à { $before }:1
  }, { $petrol } d’essence versés, { $oil ->
    [none] pas encore d’huile
   *[other] { $oil } d’huile
  } ; il faut { $wanted }:1.
says-flight-fuel = Essence : { $fuel } à bord, { $reserve } à garder, { $time } de vol, d’après { $flights ->
    [one] { $flights } vol antérieur
   *[other] { $flights } vols antérieurs
  }.
says-flight-air-field = Air : { $pressure } au terrain, { $temperature }, point de rosée { $dew ->
    [none] non mesuré
   *[other] { $dew }
  }.
says-flight-air-setting = Air : altimètre calé à { $setting } à { $elevation }, { $temperature }, point de rosée { $dew ->
    [none] non mesuré
   *[other] { $dew }
  }.
says-flight-wind = Vent : { $mean }, rafales { $gust ->
    [none] non mesurées
   *[other] { $gust }
  }. Limites propres, vent moyen : { $mean-limit ->
    [none] aucune
   *[other] { $mean-limit }
  } ; rafales : { $gust-limit ->
    [none] aucune
   *[other] { $gust-limit }
  } ; rafale sur vent moyen : { $factor-limit ->
    [none] aucune
   *[other] { $factor-limit }
  }.
