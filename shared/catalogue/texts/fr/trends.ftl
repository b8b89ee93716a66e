# French: what the readings of a machine's measures tell, in plain words.

## Readings

trend-unit-eighths = huitièmes de tour
trend-eighths = { $n ->
    [one] { $n } huitième de tour
   *[other] { $n } huitièmes de tour
  }
trend-point = { $value }, { $day }
trend-point-standard = { $value } ramené au jour standard, { $raw } à l’instrument, { $day }

## Too little to say

trend-few = Trop peu pour conclure : { $n ->
    [0] aucune mesure n’est là
    [one] une seule mesure est là
   *[other] { $n } mesures sont là
  }, et il en faut { $needs } pour une tendance : { $more ->
    [one] encore une.
   *[other] encore { $more }.
  }
trend-one-moment = Trop peu pour conclure : les { $n } mesures ont toutes été prises aux mêmes heures moteur. Il en faut à d’autres heures.
trend-all-same = Trop peu pour conclure : les { $n } mesures sont toutes les mêmes, { $value }. C’est peut-être stable, mais une sonde en butée donne cela aussi : un autre instrument le dira.
trend-same-grade = Trop peu pour conclure : les { $n } examens ont tous trouvé la même chose, « { $value } ». Il faut un examen qui trouve autre chose.
trend-no-interval = Trop peu pour conclure : tant des { $n } mesures ont les mêmes heures ou la même valeur que rien de sûr ne peut être dit. Il en faut à d’autres heures.
trend-beyond = Trop peu pour conclure : certains de ces nombres sont trop grands ou trop petits pour le calcul. Cherchez une erreur dans les unités.

## Which way, how steep, how sure

trend-goes = { $way ->
    [rising] En hausse
   *[falling] En baisse
  }{ $heads ->
    [toward] , vers sa limite
    [away] , en s’éloignant de sa limite
   *[nowhere] {""}
  } : environ { $per } en 100 heures moteur (entre { $low } et { $high }).
trend-goes-slightly = { $way ->
    [rising] En hausse
   *[falling] En baisse
  }{ $heads ->
    [toward] , vers sa limite
    [away] , en s’éloignant de sa limite
   *[nowhere] {""}
  }, mais de moins, en 100 heures moteur, que ses mesures ne peuvent montrer.
trend-grade-goes = D’un examen à l’autre, { $way ->
    [rising] cela empire
   *[falling] cela s’améliore
  }. Le dernier a trouvé « { $latest } ».
trend-rests = Cela repose sur { $n } mesures, de { $from } à { $to } heures moteur. Le hasard seul donne une telle tendance moins d’une fois sur { $one_in }.
trend-neither = Pas de tendance en { $n } mesures : le hasard seul les fait varier autant. Sur ces { $span } heures moteur, le changement peut être n’importe lequel entre { $low } et { $high }.
trend-neither-flat = Pas de tendance en { $n } mesures : le hasard seul les fait varier autant.
trend-grade-neither = Pas de tendance en { $n } examens : le hasard seul donne tout aussi bien une telle suite de mieux et de pire.

## The limit

trend-reaches = À ce rythme, la limite, { $limit }, est atteinte au plus tôt à { $low } heures moteur{ $left ->
    [0] : c’est maintenant
   *[other] : dans { $left } h
  }. Agissez d’après ce chiffre. Le milieu de la ligne y arrive à { $at } h, la plus plate possible à { $high } h. L’usure vient souvent plus vite qu’une ligne droite.
trend-reaches-or-never = À ce rythme, la limite, { $limit }, est atteinte au plus tôt à { $low } heures moteur{ $left ->
    [0] : c’est maintenant
   *[other] : dans { $left } h
  }. Agissez d’après ce chiffre. Le milieu de la ligne y arrive à { $at } h, la plus plate possible jamais. L’usure vient souvent plus vite qu’une ligne droite.
trend-there = La ligne a atteint la limite, { $limit } : agissez maintenant.
trend-past = La dernière mesure, { $value }, est { $of ->
    [limit] au-delà de la limite
   *[band] hors de la plage
  }, { $bound }.
trend-past-before = { $n ->
    [one] Une mesure antérieure était
   *[other] { $n } mesures antérieures étaient
  } { $of ->
    [limit] au-delà de la limite
   *[band] hors de la plage
  }, { $bound } ; la dernière d’entre elles, { $value }, à { $hours } heures moteur.
trend-standard-day = Toutes les valeurs sont telles qu’elles auraient été un jour à { $day }, pour que les saisons se comparent. La limite parle de ce que montre l’instrument : confrontez-lui l’instrument, non cette ligne.
trend-band-unconfirmed = La plage, { $band }, n’est pas confirmée : la valeur de votre manuel fait foi.
trend-limit-missing = Il n’y a pas de limite à laquelle confronter cela. Saisissez la valeur de votre manuel et la page sur l’écran de la machine.

## A step

trend-step = Cela ressemble plus à un saut qu’à une pente : environ { $old } jusqu’à { $after } heures moteur, environ { $new } à partir de { $at }.
trend-step-done = Ce qui a été fait entre-temps : { $done }.
trend-step-foretells = Après un saut, la ligne annonce peu de chose : surveillez les prochaines mesures.

## What else to know of the readings

trend-far-off = { $n ->
    [one] Une mesure est loin de la ligne. Elle est montrée et compte : voyez ce qui était différent ce jour-là.
   *[other] { $n } mesures sont loin de la ligne. Elles sont montrées et comptent : voyez ce qui était différent ces jours-là.
  }
trend-weather-standard = Toutes les valeurs sont telles qu’elles auraient été un jour à { $day }, pour que les saisons se comparent.
trend-weather-partly = Certains relevés ne disent pas quelle température il faisait. Pour que tout se compare, tout est tracé tel que l’instrument l’a montré, non comme un jour à { $day }.
trend-weather-unknown = Tracé tel que l’instrument l’a montré : aucun relevé ne dit quelle température il faisait. Un jour chaud suffit à donner une mesure plus haute.
trend-left-out = { $n ->
    [one] Une mesure est écartée
   *[other] { $n } mesures sont écartées
  } : unité d’un autre genre, ou pas d’heures moteur.

## Plots as files

plot-hours = heures moteur
plot-about = { $machine }, { $n ->
    [one] une mesure à { $from } heures moteur
   *[other] { $n } mesures de { $from } à { $to } heures moteur
  }
plot-reading = mesure
plot-far-off = mesure loin de la ligne
plot-line = tendance
plot-interval = ce que cela peut être (95 %)
plot-level = valeur médiane avant et après un saut
plot-band = plage
plot-limit = limite
plot-limit-at = limite { $value }
plot-earliest = limite atteinte au plus tôt
plot-work = intervention
plot-done = { $n } : { $words }, { $hours } h
plot-done-earlier = { $n ->
    [one] Un repère antérieur n’est pas nommé.
   *[other] { $n } repères antérieurs ne sont pas nommés.
  }
plot-band-source = { $band }. { $source }
plot-life-hours = heures en service
plot-life-share = encore en état
plot-life-steps = d’après les seuls constats
plot-life-fitted = Weibull
plot-life-interval = ce que cela peut être (95 %)
plot-life-failed = trouvé hors service ; le trait remonte à la dernière fois qu’il a été vu en ordre
plot-life-whole = vu en ordre la dernière fois

fault-plot-ending = Un tracé peut être un SVG ou un PNG, et « { $file } » n’est ni l’un ni l’autre.
    .hint = Donnez un nom de fichier qui finit par .svg ou .png.
fault-plot-nothing = Il n’y a aucune mesure à tracer.
    .hint = Prenez d’abord des mesures : lors d’un tour, après une intervention, ou d’un relevé moteur.
