# French: engine logs, flights prepared, and the measures whose trends are followed.

kind-flight-planned = Vol préparé
kind-readings-taken = Relevé moteur importé
told-flight-planned = Charge, essence et air calculés
told-readings-taken = Relevé moteur importé : { $words }
says-flight-planned = Charge, essence, air et vent tels qu’ils étaient à { $time }.
says-readings-taken = { $figures ->
    [one] { $figures } valeur
   *[other] { $figures } valeurs
  } du relevé « { $name } ».

measure-peak-cht = Température de culasse la plus haute
    .what = La plus haute température de culasse de chaque relevé, telle qu’elle aurait été par 15 °C si le relevé dit quelle température il faisait. Une ligne qui monte parle d’un mélange plus pauvre, d’une prise d’air, ou d’air de refroidissement qui se perd.
measure-peak-egt = Température d’échappement la plus haute
    .what = La plus haute température des gaz d’échappement de chaque relevé. Une ligne qui monte parle d’un mélange plus pauvre.
measure-log-peak-speed = Régime le plus haut des relevés
    .what = Le plus haut régime moteur de chaque relevé. Il baisse quand la puissance se perd, et monte quand l’hélice ne mord plus.
measure-log-idle-speed = Régime de ralenti des relevés
    .what = Le régime de ralenti de chaque relevé. Un ralenti qui monte parle d’une prise d’air derrière le carburateur.
measure-full-throttle-speed = Régime plein gaz au sol
    .what = Lu au point fixe. Il baisse quand la puissance se perd : compression, échappement, mélange.
measure-full-power-speed = Régime pleine puissance au sol
    .what = Lu au point fixe. Il baisse avec une batterie qui vieillit, ou un moteur qui tourne dur.
measure-idle-speed = Régime de ralenti
    .what = Lu au point fixe. Un ralenti qui monte parle d’une prise d’air derrière le carburateur.
measure-compression = Compression
    .what = Mesurée après une intervention sur le cylindre. Elle baisse avec les segments, le cylindre et le joint de culasse.
measure-propeller-tracking = Écart entre bouts de pale
    .what = De combien les bouts passent écartés. Il grandit avec un moyeu, un roulement ou une pale qui cède.
measure-plug-gap = Écartement des électrodes
    .what = Il grandit à mesure que les électrodes brûlent.
measure-pack-voltage = Tension de la batterie de vol
    .what = Lue à pleine charge. Elle baisse à mesure que les éléments vieillissent.
measure-exhaust-spring-tension = Tension des ressorts d’échappement
    .what = Elle baisse à mesure que la chaleur fatigue les ressorts.
measure-fuel-burn = Essence consommée par heure
    .what = Telle que notée après les vols. Elle monte avec un mélange plus riche ou une fuite, et baisse avec un mélange plus pauvre.
measure-head-nuts-movement = Écrous de culasse : rotation avant le déclic
    .what = La plus grande rotation d’un écrou avant le déclic de la clé, en huitièmes de tour. Une rotation qui grandit, c’est un joint qui se tasse, ou un goujon qui s’allonge.
measure-base-nuts-movement = Écrous d’embase : rotation avant le déclic
    .what = La plus grande rotation d’un écrou avant le déclic de la clé, en huitièmes de tour. Une rotation qui grandit, c’est un joint qui se tasse, ou un goujon qui s’allonge.
measure-cylinder-base = Embase du cylindre : sèche ou non
    .what = Ce qui a été vu à l’embase du cylindre, examen après examen. L’huile qui suinte trahit l’air qui entre.
measure-plug-colour = Couleur de la bougie
    .what = L’aspect de la bougie, examen après examen. Il dit comment le moteur brûle.
