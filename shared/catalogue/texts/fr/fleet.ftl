# French: how long components last, how people look, what points are worth.

## How long components last: what it rests on

life-rests-on = Cela repose sur { $machines ->
    [one] une machine
   *[other] { $machines } machines
  } et { $lives ->
    [one] une vie
   *[other] { $lives } vies
  } de composant : { $failed ->
    [0] aucune ne s’est achevée hors service
    [one] une s’est achevée hors service
   *[other] { $failed } se sont achevées hors service
  }{ $whole ->
    [0] .
    [one] , dans une le composant était en ordre au dernier examen.
   *[other] , dans { $whole } le composant était en ordre au dernier examen.
  }
life-rests-on-nothing = Cela ne repose encore sur rien : { $machines ->
    [0] aucune machine ici n’en a un qui ait été examiné
    [one] une machine a été examinée, et n’a pas tourné depuis
   *[other] { $machines } machines ont été examinées, et n’ont pas tourné depuis
  }.

## Too little to say

life-too-few = Trop peu pour conclure : { $has ->
    [0] rien n’a été vu
    [one] un seul a été trouvé hors service
   *[other] { $has } ont été trouvés hors service
  }, et il en faut { $needs } : { $more ->
    [one] encore un.
   *[other] encore { $more }.
  }
life-nothing-failed = Trop peu pour conclure : { $has ->
    [one] le seul qui ait été vu n’a pas
   *[other] sur les { $has } qui ont été vus, aucun n’a
  } encore été trouvé hors service. Combien de temps ils durent ne se montre que quand certains défaillent.
life-any-spread = Trop peu pour conclure : ces constats conviendraient à des vies presque toutes pareilles comme à des vies qui diffèrent sans fin. Il faut des défaillances trouvées à d’autres âges, et des examens plus rapprochés.

## How often to look

life-shortens = Examinez-le au moins toutes les { $every } h : le risque d’une défaillance inaperçue entre deux examens reste alors sous { $percent } %, même à { $age } h. C’est moins que les { $in_force } h en vigueur.
life-in-force-holds = Les { $in_force } h en vigueur tiennent le risque d’une défaillance inaperçue entre deux examens sous { $percent } %, même à { $age } h.
life-suggests = L’examiner toutes les { $every } h tiendrait le risque d’une défaillance inaperçue entre deux examens sous { $percent } %, même à { $age } h.
life-every-flight = Examinez-le avant chaque vol : à { $age } h, aucun intervalle d’une heure ou plus ne tient le risque d’une défaillance inaperçue sous { $percent } %. Songez à le remplacer avant cet âge.
life-at-half = À { $age } h, ce serait { $every } h.
life-never-longer = Ce qui est en vigueur reste : rien de ce qui est dit ici ne l’allonge jamais.
life-stays = Les { $in_force } h en vigueur restent telles quelles.
life-nothing-in-force = Aucun intervalle n’est en vigueur ici pour lui : ceci ne peut donc que suggérer. Ce qui est en vigueur, votre école le publie, et le manuel du constructeur le dit.
life-none-in-force = Aucun intervalle n’est en vigueur ici pour lui : le manuel du constructeur dit tous les combien l’examiner.
life-publish = Cela entre en vigueur quand un instructeur le publie.
life-chance-ours = { $percent } % est notre choix : aucune école n’a fixé le risque qu’elle accepte.

## How they last

life-lasts = À { $hours } h, environ { $percent } sur 100 sont encore en état ; ces constats admettent de { $low } à { $high }.
life-wears = Ils défaillent d’autant plus souvent qu’ils sont vieux : ils s’usent.
life-early = Ils défaillent d’autant moins souvent qu’ils sont vieux : cela parle du montage ou de la matière, non de l’usure. Examiner plus souvent les vieux n’apporte guère.
life-any-age = Ces constats ne montrent pas s’ils défaillent plus souvent avec l’âge.
life-few = Cela ne repose que sur { $failed } défaillances. Une de plus peut y changer beaucoup.

## What to bear in mind

life-put-right = Remis en état compte comme neuf, qu’il ait été réparé ou remplacé.
life-unregistered = Un composant que personne n’a inscrit a l’âge de sa machine.
life-came-old = { $n ->
    [one] Un composant a été vu ici pour la première fois après plus de 10 h, et tenu pour en ordre
   *[other] { $n } composants ont été vus ici pour la première fois après plus de 10 h, et tenus pour en ordre
  } jusque-là. Manquent ceux, semblables, qui ont défailli avant que quelqu’un ici les examine : les défaillances précoces sont peut-être plus fréquentes que cela ne le montre.
life-never-ran = { $n ->
    [one] Un a été trouvé hors service avant d’avoir tourné. Ce n’est pas de l’usure, et il n’est pas compté.
   *[other] { $n } ont été trouvés hors service avant d’avoir tourné. Ce n’est pas de l’usure, et ils ne sont pas comptés.
  }
life-of-no-age = { $n ->
    [one] Un examen d’un composant dont personne ne connaît l’âge est écarté
   *[other] { $n } examens d’un composant dont personne ne connaît l’âge sont écartés
  } : celui d’avant a été déposé, et son successeur jamais inscrit.
life-invented = Tout ceci est de la démonstration : machines inventées, constats inventés.
life-caution = Ceci parle des composants de ce parc, tels qu’ils ont volé et ont été examinés ici. Le manuel du constructeur passe avant tout ; là où il demande davantage, c’est lui qui vaut.

## How the intervals were made

life-interval-turnbull = Escalier : courbe de Turnbull, sans forme de vie supposée. Son intervalle à 95 % vient de { $times } nouveaux tirages des mêmes constats, et n’est nulle part plus étroit que ce que si peu de constats peuvent dire.
life-interval-weibull = Ligne : courbe de Weibull. Son intervalle à 95 % est celui de sa vraisemblance profilée.

## Faults

fault-life-no-looks = Il n’y a encore ici aucun examen d’un composant.
    .hint = Faites le tour d’une machine et signez, ou importez des enregistrements ; redemandez ensuite.
fault-life-no-such = Il n’y a pas de composant « { $what } » parmi ceux qui ont été examinés.
    .hint = Il y a : { $known }.
fault-life-chance = Le risque accepté doit être supérieur à 0 et inférieur à 1.
    .hint = Donnez 0.02 pour un sur cinquante.
fault-life-in-force = L’intervalle en vigueur doit être supérieur à 0 heure.
    .hint = Donnez des heures, par exemple 25, ou ne donnez rien.
fault-life-out-of-reach = Les heures de ces enregistrements sont trop éloignées les unes des autres pour être calculées.
    .hint = Cherchez une erreur dans les heures moteur d’une machine, et corrigez-la là.

## How people look

looking-hurried-point = { $point } ({ $times ->
    [one] une fois
   *[other] { $times } fois
  })
looking-hurries = Examine à la hâte plus de points que les autres : { $own } % contre { $others } % aux mêmes points, sur { $looks } examens.
looking-hurries-where = Parcourez une fois ces points ensemble, lentement.
looking-quick = Est plus rapide que les autres : environ { $own } s par point contre { $others } s aux mêmes points, sur { $looks } examens. Assistez à un tour : c’est peut-être l’habitude, ou peut-être que la réponse va à l’écran et non à la machine.
looking-finds-less = Trouve moins que les autres : { $own } fois en 100 examens contre { $others } aux mêmes points, sur { $looks } examens. Les machines sont peut-être en meilleur ordre ; faites ensemble le tour de l’une d’elles et comparez ce que chacun voit.
looking-finds-more = Trouve plus que les autres : { $own } fois en 100 examens contre { $others } aux mêmes points, sur { $looks } examens. Les machines sont peut-être en moins bon ordre, ou c’est un œil dont les autres peuvent apprendre.
looking-caution = Ceci montre où une aide peut être bienvenue. Ce n’est pas un classement : rapide n’est pas négligent, et lent n’est pas minutieux. Chacun est comparé aux autres aux mêmes points, sans ceux que peu d’autres examinent. Une chose trouvée compte une fois tant qu’elle reste ouverte. Rien n’est dit avant 100 examens, et seulement là où le hasard seul le ferait moins d’une fois sur cent. Les machines diffèrent : qui en vole une usée trouve davantage.
looking-invented = Les personnes et les machines montrées ici sont celles de la démonstration, inventées.

## What points are worth

worth-few = Examiné { $looks ->
    [one] { $looks } fois
   *[other] { $looks } fois
  } : trop peu pour conclure ; il en faut 30.
worth-never = Aucun constat en { $looks } examens : au plus { $percent } examens sur 100 trouveraient quelque chose (règle des trois, 95 %).
worth-never-must = Il reste : ce qui est rare et grave, c’est la raison d’être d’une liste.
worth-never-may = Ce n’est pas une raison de le supprimer. Demandez-vous si ses mots montrent ce qu’il faut chercher.
worth-often = Un constat dans { $percent } examens sur 100, sur { $machines } machines. Cherchez la cause, et placez-le tôt dans le tour.
worth-plain = Constat { $found ->
    [one] une fois
   *[other] { $found } fois
  } en { $looks } examens : dans { $low } à { $high } examens sur 100, à 95 %.
worth-caution = Ce qui a été trouvé à chaque point des listes, sur toutes les machines d’ici. Une chose trouvée compte une fois tant qu’elle reste ouverte. Cela dit ce qui a été trouvé, non ce qui était là ; et rien de la gravité que cela aurait eue. Les intervalles supposent que les examens ne dépendent pas les uns des autres, ce qui n’est pas tout à fait vrai de ceux d’une même machine : ils sont plutôt trop étroits.
