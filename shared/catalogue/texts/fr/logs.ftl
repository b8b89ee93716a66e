# French: engine logs, what is said while one is taken in.

## What a column may hold, and how time may be written

log-channel-cht = température de culasse (CHT)
log-channel-egt = température des gaz d’échappement (EGT)
log-channel-speed = régime moteur
log-channel-outside = température extérieure
log-time-seconds = secondes
log-time-milliseconds = millisecondes (millièmes de seconde)
log-time-minutes = minutes
log-time-clock = une horloge : 1:02:03, ou minutes et secondes comme 02:03
log-time-moment = jour et heure : 2026-05-02 06:41:07
log-unnamed = (un fichier sans nom)

## What was guessed

log-guess-channel = L’en-tête « { $column } » ne dit pas où la mesure a été prise. D’après ses valeurs, la colonne est prise pour : { $channel }. Voyez si c’est juste.
log-guess-unit = Le fichier ne dit pas dans quelle unité est « { $column } ». D’après ses valeurs, l’unité est prise pour { $unit }. Voyez si c’est juste.
log-guess-time = Le fichier ne dit pas comment compte « { $column } ». D’après ses valeurs, le temps est pris pour : { $form }. Voyez si c’est juste.
log-guess-no-time = Aucune colonne ne ressemble à du temps. Choisissez celle qui en est.
log-guess-no-channel = Aucun en-tête ne dit ce que contient sa colonne. Choisissez ce que contient chacune.

## Rows that can't be read

log-unread-fields = Ligne { $line } : { $has ->
    [one] { $has } champ
   *[other] { $has } champs
  }, mais il y a { $wants ->
    [one] { $wants } en-tête
   *[other] { $wants } en-têtes
  }.
log-unread-no-time = Ligne { $line } : il n’y a pas de temps.
log-unread-time = Ligne { $line } : « { $cell } » n’est pas un temps du genre choisi.
log-unread-order = Ligne { $line } : le temps « { $cell } » ne suit pas l’ordre des lignes voisines.
log-unread-number = Ligne { $line } : « { $cell } », dans « { $column } », n’est pas un nombre avec le signe décimal choisi.
log-unread-unit = Ligne { $line } : « { $cell } », dans « { $column } », n’est pas en { $unit }, l’unité choisie.
log-nothing-measured = Aucune ligne ne contient de valeur.

## Figures

log-peak-cht = Température de culasse la plus haute
log-peak-egt = Température d’échappement la plus haute
log-peak-speed = Régime moteur le plus haut
log-idle-speed = Régime de ralenti
log-run-time = Temps de marche du moteur
log-left-out = { $samples ->
    [one] Une valeur est écartée
   *[other] { $samples } valeurs sont écartées
  } : aucun moteur ne fait cela. Le fil d’une sonde s’est débranché, ou son instrument était en butée.
log-lasts-seconds = { $seconds } s
log-lasts-minutes = { $minutes } min
log-lasts-hours = { $hours } h { $minutes } min

## What else is worth knowing

log-note-runs = L’horloge repart dans le fichier : il contient { $runs } marches du moteur. Elles sont dites ensemble : le plus haut de toutes, et la somme de leurs temps.
log-note-gaps = Rien n’a été relevé pendant { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
  }, en { $gaps ->
    [one] une interruption
   *[other] { $gaps } interruptions
  }. Ce qui s’est passé entre-temps n’est ni connu ni compté.
log-note-all-same = Toutes les valeurs de « { $column } » sont les mêmes, comme celles d’aucun moteur : son instrument est en butée, ou sa sonde est morte. Rien n’en est dit.
log-note-impossible = Aucune valeur de « { $column } » ne peut être ce que la colonne est censée contenir. Regardez son unité et ce qu’elle contient.
log-note-nothing = Rien n’a été mesuré dans « { $column } ».
log-note-by-head = Aucune colonne ne donne un régime moteur au-dessus de 500 tr/min ; le temps de marche est donc estimé : aussi longtemps que la { $head } était à plus de la moitié de sa montée.
log-note-no-run-time = Combien de temps le moteur a tourné n’est pas dit : aucune colonne ne contient son régime ni sa température de culasse.
log-note-never-ran = Le moteur n’a pas tourné dans ce relevé : il n’a pas dépassé 500 tr/min, ou sa culasse n’a pas chauffé. Rien n’en est dit.
log-note-never-idled = Il n’est jamais resté dix secondes au ralenti à régime stable : il n’y a donc pas de régime de ralenti.

## Faults

fault-log-empty = Il n’y a rien dans ce fichier.
    .hint = Choisissez le fichier que l’instrument a écrit ; voyez s’il a été enregistré en entier.
fault-log-too-large = Ce fichier dépasse { $most } Mo.
    .hint = Découpez-le en un fichier par jour, ou faites relever à l’instrument moins de valeurs par seconde.
fault-log-too-many-rows = Ce fichier a plus de { $millions } millions de lignes.
    .hint = Découpez-le en un fichier par jour, ou faites relever à l’instrument moins de valeurs par seconde.
fault-log-no-text = Ce fichier n’est pas du texte.
    .hint = Exportez le relevé en CSV avec le programme de l’instrument, et choisissez ce fichier-là.
fault-log-no-rows = Il n’y a pas de tableau de nombres dans ce fichier.
    .hint = Il faut une ligne d’en-têtes, et dessous des lignes de nombres séparés par une virgule, un point-virgule ou une tabulation.
fault-log-one-column = Ce fichier n’a qu’une colonne.
    .hint = Il faut une colonne de temps et au moins une de température ou de régime, séparées par une virgule, un point-virgule ou une tabulation.
fault-log-no-headings = Ce fichier n’a pas de ligne d’en-têtes au-dessus de ses nombres.
    .hint = Ajoutez une première ligne qui nomme chaque colonne, par exemple : time,CHT,rpm
fault-log-heading-twice = Deux colonnes ont le même en-tête, « { $heading } ».
    .hint = Donnez à l’une un autre en-tête dans le fichier, par exemple « { $heading } 2 ».
fault-log-mapping-missing = Personne n’a dit comment lire les colonnes.
    .hint = Regardez les colonnes telles qu’elles sont montrées, et confirmez ce que contient chacune.
fault-log-marks = Entre les champs, une virgule, un point-virgule ou une tabulation ; devant les décimales, un point ou une virgule ; rien d’autre.
    .hint = Choisissez parmi ces signes.
fault-log-no-column = Le fichier n’a pas de colonne « { $heading } ».
    .hint = Choisissez parmi les colonnes montrées.
fault-log-column-twice = La colonne « { $heading } » est utilisée deux fois.
    .hint = Une colonne contient le temps ou une seule chose mesurée : choisissez une fois ce que c’est.
fault-log-nothing-chosen = Aucune colonne n’est lue.
    .hint = Choisissez pour une colonne au moins ce qu’elle contient.
fault-log-other-unit = « { $heading } » ne peut pas être en { $unit }.
    .hint = Les températures sont en °C, °F ou K, les régimes en tr/min.
fault-log-taken = Ce fichier a déjà été importé, le { $when }.
    .hint = Ses valeurs sont déjà là. Si vous pensiez à un autre fichier, choisissez celui-là.
fault-log-nothing-told = Lu ainsi, ce fichier ne dit rien. { $why }
    .hint = Regardez le séparateur, le signe décimal, les unités et ce que contient chaque colonne.
fault-log-hours = Les heures moteur du relevé doivent être entre 0 et les { $hours } h de la machine.
    .hint = Donnez les heures qu’avait la machine au moment du relevé. Si elle a tourné plus que cela, notez d’abord ce temps.
fault-log-day-ahead = Le jour du relevé, { $day }, est encore à venir.
    .hint = Donnez le jour du relevé : l’horloge de l’instrument est peut-être fausse.
fault-log-outside = Il n’a pas pu faire si chaud ou si froid dehors : de −60 à 60 °C.
    .hint = Regardez le nombre et son unité, ou ne donnez rien.
fault-log-name = Le nom du fichier dépasse { $most } lettres.
    .hint = Donnez au fichier un nom plus court.
