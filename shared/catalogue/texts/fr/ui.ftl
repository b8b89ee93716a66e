# French: the screens' own words.

app-name = Witness Mark

## Opening what a code is about

code-open = Ouvrir un code
code-open-what = L’étiquette d’une machine, un compte rendu, ce qu’un autre téléphone vous montre, ou ce que le tableau de l’école vous demande de signer.
code-open-it = Ouvrir
code-open-another = Ouvrir un autre code

## Waiting and faults

waiting = Un instant…
waiting-failed = Affichage impossible
try-again = Réessayer
close = Fermer
fault-unreachable = Le programme derrière cette page ne répond pas.
fault-unreachable-hint = Ce que vous avez saisi est encore là. Voyez si le programme tourne toujours, relancez-le sinon, et réessayez.
fault-refused = Le programme a refusé cette page (code { $status }).
fault-refused-hint = Ouvrez l’adresse que le programme a affichée au démarrage : chaque démarrage en a une nouvelle.
fault-unexpected-hint = Ce que vous avez saisi est encore là. Réessayez ; si cela échoue encore, fermez le programme et rouvrez-le.

## Going places

to-machines = Vos machines
to-machine = La machine
to-record = L’enregistrement

## First start

first-title = Regardez avant de décoller
first-what = Faites le tour de votre machine avant de voler, point par point, et signez ce que vous avez vu. Tout reste sur cet appareil et fonctionne sans réseau.
first-name = Votre nom, pour signer
first-begin = Créer ma clé et commencer
first-busy = Création de la clé…
pin-choose = Choisissez un code PIN
pin-hint = Six chiffres au moins. Il verrouille la clé qui signe ; si vous l’oubliez, personne ne peut vous le redonner.
pin-twice = Le même code PIN
pin-yours = Votre code PIN
pin-old = Le code PIN actuel
pins-differ = Les deux codes PIN diffèrent.
pins-differ-hint = Saisissez de nouveau le code PIN aux deux endroits.

## Machines

machines-title = Vos machines
machines-over = { $name } signe ici · gardé sur cet appareil
machines-others = Autres machines
machines-more = Plus
machines-add = Ajouter une machine
machines-verify = Vérifier ou importer un fichier
machines-settings = Réglages
machines-walk = Faire le tour : { $machine }
machines-walk-on = Continuer : { $machine }, { $done } sur { $of }
machines-walking = Tour commencé : { $done } sur { $of } examinés
hours = { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
invented = inventée, pour essayer
empty-what = Aucune machine ici.
empty-add = Ajouter ma machine
empty-demo = Essayer avec des machines inventées
empty-demo-what = Elles n’appartiennent à personne et sont marquées comme inventées.

## Meanings and looks

means-serviceable = en état
means-watch = à surveiller
means-unserviceable = hors service
means-not-fitted = non monté
look-open = pas encore examiné
look-done = examiné
look-again = à examiner de nouveau
look-left = laissé pour l’instant
reasons = Pourquoi
cautions = Mises en garde
caution = Attention :

## The walk

walk-title = Le tour : { $machine }
walk-over = { $list } · { $done } sur { $of } examinés
walk-begin = Commencer : { $point }
walk-go-on = Continuer : { $point }
walk-to-summary = Relire, et signer
walk-to-summary-early = Relire ce qui est fait
walk-here = Vous êtes ici.
walk-count = { $done } sur { $of }
minutes = { $minutes } min

## A point

point-unknown = Cette liste n’a pas ce point.
point-unknown-hint = Revenez au tour et choisissez-y un point.
point-to-map = Retour au tour.
point-place = poste { $place } sur { $places } · point { $point } sur { $points }
point-critical = Critique : une vie en dépend
point-good = Bon :
point-bad = Mauvais :
point-said = Vous avez dit : « { $words } »
point-said-again = Vous avez dit « { $words } » avant l’interruption. Regardez de nouveau.
point-kept = Gardé : { $words }. { $done } sur { $of } examinés.
point-left = Vous avez laissé ce point pour l’instant.
answers = Que voyez-vous ?
answer-yours = votre réponse
tools = Ici aussi
tool-photo = Photo
tool-note = Préciser
tool-leave = Laisser
tool-go-on = Continuer
tool-step-back = Revenir
note-title = Préciser
note-words = Qu’avez-vous vu à « { $point } » ?
note-keep = Garder la note
photo-number = Photo { $number }
photo-open = Ouvrir la photo { $number }
keys = Touches de chiffres
keys-erase = Effacer le dernier chiffre
measure-value = Valeur mesurée ; la plage est { $band }
measure-band = Plage : { $band }
measure-unit = Unité
measure-enter = Noter

## Said back, and signed

summary-title = Ce que vous avez vu
summary-back = Le tour
summary-preview = Si vous signez maintenant
summary-found = { $count ->
    [one] { $count } constat
   *[other] { $count } constats
  }
summary-left = { $count ->
    [one] { $count } point que personne n’a examiné
   *[other] { $count } points que personne n’a examinés
  }
summary-hurried = { $count ->
    [one] { $count } point examiné à la hâte
   *[other] { $count } points examinés à la hâte
  }
some-more = { $count ->
    [one] Et { $count } de plus
   *[other] Et { $count } de plus
  }
left-must = Sans lui, la machine reste au sol.
summary-look-again = regarder de nouveau
sign-means = Votre signature dit ce que vous avez vu. Ce n’est pas un certificat légal ; le manuel du constructeur et les règles locales passent avant tout.
sign-hold = Maintenir pour signer
sign-plain = Signer sans maintenir
sign-title = Signer ce que vous avez vu
sign-now = Signer
sign-busy = Signature…
sign-not-yet = Pas encore
put-aside = Mettre de côté
verdict-over = { $machine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
verdict-to-machine = Plus sur { $machine }

## One machine

machine-over = { $engine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h · { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }
machine-why = { $count ->
    [one] voir le motif
   *[other] voir les { $count } motifs
  }
machine-lists = En faire le tour
machine-walk = Tour : { $list }
machine-walk-on = Continuer : { $list }, { $done } sur { $of }
machine-open = Encore ouvert
machine-timeline = Historique
machine-timeline-none = Rien n’est encore signé.
machine-limits = Limites de son moteur
machine-edit = La décrire de nouveau
export = Transmettre ses enregistrements
exported = Écrit dans { $place }. N’importe qui peut le vérifier avec ce seul fichier.
put-right = Remettre en état
put-right-how = Qu’avez-vous fait ?
put-right-how-hint = La pièce, le travail, le couple : ce que la personne suivante doit savoir.
put-right-means = Votre signature dit que vous avez fait ce travail et l’avez examiné ensuite. S’il exige une licence, c’est le titulaire de la licence qui signe.
put-right-sign = Signer la remise en état
put-right-nothing = Il n’y a plus rien d’ouvert à ce point.
limit-critical = Une vie dépend de cette valeur.
limit-unknown = Limite inconnue
limit-unknown-hint = La fiche de ce moteur n’a pas cette limite. Revenez en arrière et choisissez-en une.
limit-confirm = La confirmer d’après le manuel
limit-anew = La confirmer de nouveau
limit-confirm-how = Ouvrez le manuel du constructeur du moteur et recopiez ce qu’il dit, même s’il diffère de la valeur donnée ici.
limit-low = Minimum { $unit }
limit-high = Maximum { $unit }
limit-document = Manuel
limit-document-hint = Son titre et son édition, comme sur la couverture.
limit-page = Page ou chapitre
limit-sign = Signer cette limite
limit-no-number = « { $typed } » n’est pas un nombre.
limit-no-number-hint = Saisissez la valeur en chiffres, par exemple 12,5.

## Describing a machine

form-new = Une nouvelle machine
form-edit = { $machine }, décrite de nouveau
form-name = Comment l’appelez-vous ?
form-name-hint = N’importe quel nom auquel vous la reconnaîtrez.
form-engine = Type de moteur
form-parts = A-t-elle ces éléments ?
form-serials = Numéros de série, pour autant que vous les connaissiez
form-repacked = Plié le, d’après sa fiche
form-every-days = Jours jusqu’au prochain pliage, d’après son manuel
form-hours = Heures moteur
form-flights = Vols
form-note = Autre chose à savoir
form-sign = Signer la description
form-no-number = { $words } : « { $typed } » n’est pas un nombre.
form-no-number-hint = Saisissez seulement des chiffres, par exemple 41,6.

## A record

record-signature = Signature
record-by = Signé par
record-when = Quand
record-device = Clé
record-seq = Numéro
record-digest = Empreinte
record-payload = Tel que signé, mot pour mot
record-payload-what = Ce sont les octets mêmes sur lesquels porte la signature.
finding-band = plage { $band }
finding-before = Annulé : { $words }
finding-seconds = examiné pendant { $seconds } s
otherwise = Dire autrement
otherwise-said = { $by } a signé « { $words } », { $when }. Cela reste tel quel.
otherwise-answer = Qu’aurait-il fallu dire ?
otherwise-reason = Pourquoi ?
otherwise-means = Votre nouvelle déclaration est un enregistrement à part, à côté du premier.
otherwise-sign = Signer la nouvelle déclaration
otherwise-unknown = Cet enregistrement n’a pas ce constat. Revenez en arrière et choisissez-en un.

## Checking a file

verify-title = Vérifier un fichier
verify-what = On vous a remis les enregistrements d’une machine ? Ceci dit qui les a signés, et si quelque chose a été modifié ou manque.
verify-choose = Choisir le fichier
verify-paste = Ou coller son texte
verify-check = Vérifier
verify-busy = Vérification…
verify-records = { $count ->
    [one] { $count } enregistrement
   *[other] { $count } enregistrements
  } · { $machines }
verify-faults = Ce qui ne va pas
verify-people = Qui a signé
verify-people-what = Comparez chaque clé avec ce que montre, sous Réglages, l’appareil de son détenteur : alors seulement vous savez de qui est la signature.

## Settings

settings-person = { $name } signe sur cet appareil
settings-thumbprint = Voici l’empreinte de votre clé. Lisez-la à qui veut être sûr qu’une signature est de vous.
settings-keychain = La clé est verrouillée par votre code PIN et par le trousseau de cet appareil.
settings-no-keychain = La clé est verrouillée par votre code PIN.
settings-language = Langue
settings-patience = Minutes avant un retour en arrière
settings-patience-hint = Si personne ne répond plus longtemps que cela, les derniers points sont redemandés.
settings-no-minutes = « { $typed } » n’est pas un nombre de minutes.
settings-no-minutes-hint = Saisissez des minutes entières, par exemple 10.
settings-keep = Garder
settings-kept = Gardé.
settings-pin = Changer le code PIN
settings-pin-change = Changer
settings-pin-changed = Le nouveau code PIN vaut dès maintenant.
settings-about = À propos
settings-about-what = Witness Mark vous guide autour de votre machine et garde ce que vous avez signé. Ce n’est pas un certificat, et cela ne remplace ni le manuel, ni la formation, ni le jugement.

## After landing, and after working on it

after-flight = Après un vol ou une intervention
log = Noter un vol
log-title = Un vol avec { $machine }
log-how-long = Combien de temps le moteur a-t-il tourné ?
log-minutes = { $minutes ->
    [60] 1 h
   *[other] { $minutes } min
  }
log-other = autre durée
log-times = Une des durées courantes
log-tank = Un réservoir consommé
log-total = { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }{ $tanks ->
    [0] {""}
    [one] , { $tanks } réservoir consommé
   *[other] , { $tanks } réservoirs consommés
  } jusqu’ici.
log-flown = { $minutes } min, un vol
log-typed = { NUMBER($hours, maximumFractionDigits: 2) } h, { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }
log-read = horamètre à { NUMBER($hours, maximumFractionDigits: 2) } h, { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }
log-kept = Noté : { $words }.
log-waiting = { $count ->
    [one] Une saisie attend une signature ; votre prochaine signature la signe aussi.
   *[other] { $count } saisies attendent une signature ; votre prochaine signature les signe aussi.
  }
log-done = Terminé
log-undo = Annuler la saisie
log-meter = Ce que montre l’horamètre
log-meter-hint = Laissez vide pour saisir plutôt les heures.
log-hours = Heures tournées
log-tanks = Réservoirs consommés
log-it = Noter

## Work

work-title = J’y suis intervenu
work-several = Choisissez tout ce qui a été fait, ou le sera.
work-choose = Choisir ce qui a été fait
work-to-plan = { $count ->
    [one] Ce qu’implique cette intervention
   *[other] Ce qu’impliquent ces { $count } interventions
  }
work-back = Autres interventions
work-open = « { $title } » n’est pas encore remis en service. Terminez-le d’abord : sa liste, son second regard, sa remise en service.
plan-over = Si vous signez : { $count ->
    [one] { $count } point
   *[other] { $count } points
  } à examiner ensuite
plan-renew = À remplacer, jamais réutiliser
plan-count = À recompter à la fin
plan-independent = Une autre personne examine
plan-later = À échéance plus tard
plan-note = Une remarque sur l’intervention ?
plan-note-hint = La pièce, son numéro, ce qui n’allait pas.
plan-means = Dès votre signature, la machine reste au sol, jusqu’à ce que tout ceci soit examiné et l’intervention remise en service.
plan-sign = Signer le début d’intervention
order = Dans quel sens
order-off = Dépose
order-back = Repose
order-nothing = Rien n’est à déposer pour cela.
exploded-part = Pièce :
exploded-joint = Assemblage :
job-open = Intervention pas remise en service : { $title }
job-ready = Tout est examiné. La remise en service est possible.
job-lacks = Il manque encore
job-plan = Son ordre, et ce qui va avec
job-deeds = Poursuivre l’intervention
job-walk = Parcourir sa liste
job-walk-on = Continuer sa liste, { $done } sur { $of }
job-walk-again = Parcourir de nouveau sa liste
job-second = Second regard
job-release = Remettre en service
release-title = Remettre en service : { $machine }
release-says = Votre signature dit que tout ce que cette intervention a démonté ou desserré a été remis en place et examiné, et deux fois là où une vie en dépend.
release-means = C’est votre propre déclaration, pas un certificat légal. Si le travail exige une licence, c’est le titulaire de la licence qui signe, sous sa propre autorité. Le manuel du constructeur et les règles locales passent avant tout.
release-first-flight = Faites un point fixe avant de voler. Le premier vol après intervention est court, près du terrain, et la machine est examinée ensuite.
release-sign = Signer la remise en service
release-none = Aucune intervention ouverte
release-none-hint = Cette machine n’a rien à remettre en service. Revenez à elle.

## Tightening

torque-no-number = Aucune valeur de serrage n’est connue ici.
torque-to-limit = La saisir d’après le manuel
torque-which-tool = Avec quel outil serrez-vous ?
torque-no-tool = Aucun outil dynamométrique n’est encore inscrit ici.
torque-refused = Cet outil ne doit pas servir ici.
torque-watched = Méfiez-vous de cet outil.
torque-round = passe { $round } sur { $rounds }
torque-all-clicked = plein couple
torque-set-full = Réglez l’outil sur ceci · { $other } · plage { $band }
torque-set-part = Réglez l’outil sur ceci · plein couple { $full } · plage { $band }
torque-nut = Écrou { $nut } sur { $nuts }.
torque-nut-number = Écrou { $nut } :
torque-pull = Tirez lentement, et arrêtez au déclic.
torque-how-far-ask = De combien a-t-il tourné avant le déclic ?
torque-how-far = De combien l’écrou { $nut } a-t-il tourné avant le déclic ?
torque-none = rien
torque-more = plus
torque-not-at-all = n’a pas tourné
torque-turn = { $turn } tour
torque-less-by-one = Un huitième de moins
torque-more-by-one = Un huitième de plus
torque-say-how-far = Dites de combien il a tourné
torque-clicked = Déclic obtenu
torque-next = Ensuite : écrou { $nut }, { $round }, réglage { $setting }.
torque-all = Chaque écrou a donné son déclic. Détendez l’outil.
torque-moved = De combien a tourné chaque écrou
torque-reading = Ce que l’outil indique, le cas échéant
torque-reason = Pourquoi l’utiliser ou l’accepter malgré tout ?
torque-reason-use = Pourquoi l’utiliser malgré tout ?
torque-reason-first = Dites d’abord pourquoi.
torque-reason-first-hint = Le motif est consigné avec chaque écrou que cet outil serre. Ou prenez un autre outil.
torque-use-all-the-same = L’utiliser malgré tout
torque-reason-hint = Consigné ; l’assemblage est surveillé à partir de là.
torque-nut-back = Un écrou en arrière
torque-anew = Recommencer
torque-other-tool = Autre outil
adapter = Quelque chose entre l’outil et l’écrou
adapter-fitted = Un adaptateur ou un embout à fourche allonge le levier
adapter-lever = Outil : milieu de poignée à carré
adapter-length = Adaptateur : carré à écrou
adapter-angle = Angle, degrés (0 dans l’axe)
adapter-half-first = D’abord les cotes de l’adaptateur
adapter-half = Saisissez les deux longueurs et l’angle : avant cela, rien ne peut être réglé.

## Torque tools

tool-list = Outils dynamométriques
tool-list-what = Un outil hors étalonnage est refusé, sauf si vous dites pourquoi vous l’utilisez.
tool-list-none = Aucun n’est encore inscrit ici.
tool-new = Inscrire un outil
tool-usable = peut servir
tool-unusable = ne doit pas servir
tool-cycles = { $cycles } déclics sur { $allowed } depuis son étalonnage
tool-back-to-point = Le point
tool-name = Comment l’appelez-vous ?
tool-name-hint = Un nom, ou le numéro inscrit dessus.
tool-low = Plus petite graduation
tool-high = Plus grande graduation
tool-unit = Unité de sa graduation
tool-deviation = Écart permis, en pour cent
tool-deviation-hint = D’après son certificat. Une bonne clé à déclenchement a 4.
tool-calibrated = Étalonné le
tool-calibrated-hint = Laissez vide si personne ne le sait.
tool-every-days = Jours entre deux étalonnages
tool-every-cycles = Déclics entre deux étalonnages
tool-clicks = Déclics depuis l’étalonnage, si on le sait
tool-dropped = Il est tombé ou a été forcé depuis
tool-sign = Signer l’outil

## The second pair of eyes

second-title = Une deuxième paire d’yeux
second-what = Une autre personne examine : { $joints }. Son téléphone lit ce code, sans réseau, sous « Regarder pour quelqu’un ».
second-code = Code demandant un second regard à un autre téléphone
second-here = La faire signer sur cet appareil
second-reply = Ce que l’autre montre en retour
second-reply-what = Une fois la signature faite, l’autre téléphone montre un code. Importez-le ici.
second-take = Importer
second-here-title = Une autre personne examine, ici
second-here-what = Passez l’appareil. La personne qui examine ne doit pas être celle qui a fait le travail.
second-who = Qui examine ?
second-here-pin = Code PIN : { $name }
second-here-sign = Signer : { $name }
second-means = Votre signature dit ce que vous avez vu de vos propres yeux à ces assemblages, et rien de plus.
second-new = Quelqu’un de nouveau sur cet appareil
second-name = Son nom, pour signer
second-pin = Son propre code PIN
second-pin-hint = Six chiffres au moins, connus de cette personne seule.
second-add = Créer sa clé
joint-good = Comme il doit être
joint-wanting = À reprendre
joint-note = Qu’est-ce qui est à reprendre à « { $joint } » ?
look-title = Regarder pour quelqu’un
look-what = Quelqu’un est intervenu sur une machine et demande votre regard. Importez le code que son téléphone montre sous « Second regard ».
look-take = Ouvrir
look-how = Allez à chaque assemblage et regardez, comme si personne ne l’avait fait avant vous.
look-own = Cette demande vient de votre propre appareil. Qui a fait le travail ne peut pas être la deuxième paire d’yeux.
look-sign = Signer ce que vous avez vu
look-reply = Montrez-lui ceci
look-reply-what = Son téléphone l’importe sous « Ce que l’autre montre en retour ». Alors seulement votre regard y compte.
look-code = Code avec votre regard signé
look-anew = Regarder pour quelqu’un d’autre
code-camera = Utiliser la caméra
code-camera-view = Ce que voit la caméra
code-camera-off = Arrêter la caméra
code-no-camera = La caméra est inutilisable ici.
code-no-camera-hint = Autorisez-la dans les réglages de l’appareil, ou choisissez une image du code, ou collez son texte.
code-picture = Choisir une image du code
code-text = Ou coller son texte
code-busy = Lecture…
code-copy = Copier en texte
code-copied = Copié.
code-not-copied = La copie a échoué. Ouvrez le texte ci-dessous et copiez-le à la main.
code-share = Envoyer
code-as-text = En texte
code-too-long = C’est trop long pour un code. Envoyez plutôt le texte.

machines-look = Regarder pour quelqu’un

## What falls due, and what may wait

due = Échéances
due-none = Aucune échéance n’est encore suivie ici.
due-new = Ajouter une échéance
due-later = plus tard :
due-soon = bientôt :
due-tolerated = échu, encore toléré :
due-over = échu :
due-title = Quelle échéance ?
due-every = Tous les combien ? Le premier atteint compte.
due-days = Jours
due-done = Dernière fois
due-done-now = C’est fait maintenant
due-done-on = Le
due-tolerance = Retard encore toléré, en pour cent
due-tolerance-hint = D’après le manuel. 0 s’il n’en dit rien.
due-from-due = La suivante compte depuis l’échéance, non depuis le jour où c’est fait
due-ended = N’est plus à échéance sur cette machine
due-end = Signer que cela prend fin
due-sign = Signer
defer = Peut attendre
defer-may-wait = Cela peut-il attendre ?
defer-until = Jusqu’à quand, au plus ? Le premier atteint compte.
defer-now = Maintenant : { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h, { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }.
defer-hours = Heures moteur
defer-flights = Vols en tout
defer-date = Jour
defer-condition = À quelle condition peut-elle voler ?
defer-condition-hint = Par exemple : seul à bord, pas plus de mi-gaz.
defer-reason = Pourquoi cela peut-il attendre ?
defer-means = Seule la personne qui décide pour la machine peut signer ceci. Si le manuel du constructeur ou les règles locales interdisent de voler avec ce défaut, il ne peut pas attendre.
defer-sign = Signer que cela peut attendre

## Components

components = Composants à temps propre
components-none = Aucun n’est encore suivi à part de la machine.
component-new = Monter un composant
component-off = déposé
component-part = Quel élément est-ce ?
component-name = Comment l’appelez-vous ?
component-serial = Numéro de série
component-brings = Temps en service qu’il apporte
component-fit-sign = Signer le montage
component-where = Où va-t-il ?
component-take-off = Le déposer, sans le remonter
component-to = Sur { $machine }
component-keeps = Son propre temps en service le suit.
component-move-sign = Signer le déplacement
component-record = Son dernier enregistrement
component-unknown = Composant inconnu
component-unknown-hint = Il n’est plus sur cette machine. Revenez à la machine.
form-not-whole = { $words } : « { $typed } » n’est pas un nombre entier.
form-not-whole-hint = Saisissez seulement un nombre entier, par exemple 12.

## Papers

papers = À emporter
papers-label = Étiquette à coller dessus
papers-table = Tableau (CSV)
papers-calendar = Calendrier des échéances
papers-sheet-a4 = Compte rendu à imprimer, A4
papers-sheet-letter = Compte rendu à imprimer, Letter
papers-saved = Écrit dans { $place }.

## Another device of somebody

first-as = Je l’utilise déjà sur un autre appareil
first-as-title = Un autre appareil à vous
first-as-back = Je débute ici
first-as-what = Sur l’appareil que vous avez, ouvrez École, puis « Un autre appareil à moi » : il montre un code. Importez-le ici, et cet appareil signe en votre nom, avec sa propre clé.
first-as-take = Importer
first-as-taken = Le code de votre autre appareil est importé. Il faut maintenant un code PIN pour celui-ci.
first-as-anew = Importer un autre code
first-as-other = Ce n’est pas ce que montre votre autre appareil.
first-as-other-hint = Prenez le code de sa page École, sous « Un autre appareil à moi ».
device-title = Un autre appareil à moi
device-step-read = Sur le nouvel appareil, choisissez « Je l’utilise déjà sur un autre appareil », et faites-lui lire ce code.
device-step-back = Le nouvel appareil montre alors un code à lui : importez-le ici, et signez que cet appareil est à vous.
device-step-last = Cet appareil-ci montre une réponse : le nouveau l’importe, signe, et montre un dernier code.
device-shows = Ce que montre l’autre appareil
device-take = Importer
device-vouch = Cet appareil est-il à vous ?
device-compare = L’autre appareil montre ce code
device-means = Votre signature dit que vous détenez les deux appareils. Tout ce que l’autre signe est alors signé par vous.
device-sign = Signer qu’il est à moi
device-vouched = Montrez ceci à l’autre appareil
device-vouched-code = Code disant que l’autre appareil est à vous
device-vouched-what = Il l’importe à la page où se trouve son propre code. D’ici là, l’autre appareil n’est à personne.
device-anew = Recommencer avec un autre appareil
device-last = Ce que le nouvel appareil montre en dernier
device-last-what = Il dit à son tour que cet appareil-ci est à vous : alors seulement celui-ci peut mettre fin à sa clé, s’il se perdait.
device-back = Encore un code, pour votre premier appareil
device-back-code = Code disant que votre premier appareil est à vous
device-back-what = Votre premier appareil l’importe là où il en est. Chacun des deux peut alors mettre fin à la clé de l’autre, s’il se perdait.
device-done = Terminé

## The school

school = École
school-over = { $role ->
    [empty] Pas encore admis
   *[other] { $role }
  }{ $root ->
    [yes] {" · cet appareil est la racine : il admet les membres"}
   *[no] {""}
  }
school-own-code = Le code de cet appareil, à lire à voix haute
school-deeds = Ce que vous pouvez faire ici
school-no-role = Personne n’a encore admis cet appareil. Montrez son code à qui détient la racine de l’école, ou lisez-le à voix haute.
school-yours = Vous et vos appareils
school-show-code = Montrer qui je suis
school-show-code-what = Qui détient la racine de l’école lit ce code pour admettre cet appareil, ou l’admettre de nouveau.
school-code = Code disant qui détient cet appareil
school-none = Pas encore d’école
school-none-what = L’application n’a pas besoin d’école. Dans une école, les membres ont des rôles, un instructeur voit les machines qui en relèvent, et listes et fiches moteur parviennent à tous. Tout cela fonctionne sans réseau ; un serveur ne fait que l’apporter plus tôt.
school-ways = Entrer dans une école
join-by-code = Entrer par un code
join-by-address = Entrer par une adresse
found-one = Fonder une école
found-title = Fonder une école
found-what = Une école est une liste signée qui dit qui peut faire quoi sur les machines qui en relèvent.
found-name = Comment s’appelle-t-elle ?
found-root = Cet appareil en devient la racine : lui seul admet des membres et met fin à leur adhésion. Vos machines relèvent alors de l’école. La racine peut être transmise plus tard.
found-sign = Signer la fondation
join-show = Montrez ce code à qui détient la racine de l’école, ou envoyez-le en texte.
join-answer = Ce que l’école montre en retour
join-answer-what = Une fois que vous êtes admis, son appareil montre une réponse. Importez-la ici.
join-take = Importer
join-no-answer = Ce n’est pas une réponse à votre code.
join-no-answer-hint = Montrez d’abord votre code à la racine de l’école, puis importez ce que cet appareil montre.
join-sign-title = La réponse est importée
join-sign-what = Elle est vérifiée quand vous signez : si elle est pour cet appareil, et qui l’a signée.
join-means = Votre signature place vos machines sous l’école et ses rôles. Vous pouvez repartir ; ce qui a été signé reste.
join-sign = Signer que j’entre
join-other-answer = Importer une autre réponse
leave-school = Quitter l’école
leave-title = Quitter « { $school } »
leave-what = Vos machines vous suivent, et plus rien n’est envoyé au serveur de l’école. Ce que vous avez signé comme membre reste signé.
leave-sign = Signer que je pars

## A school by its server's address

address = Adresse du serveur
address-hint = Celle que donne l’école. Elle commence par https://
address-what = Le serveur montre d’abord son école. Rien n’est envoyé ni signé avant que vous ayez comparé.
address-look = Voir qui est là
address-busy = Demande…
address-says = Un serveur dit servir l’école
address-root = Sa racine est détenue par { $name }.
address-compare = Le code de l’école
address-compare-how = Comparez-le avec ce que l’école vous dit par un autre moyen : sur papier, ou lu par quelqu’un de là-bas. Un autre code, c’est une autre école.
address-not-admitted = Elle n’a pas encore admis cet appareil. Après la signature, vous attendez dans sa liste ; lisez ce code à qui détient sa racine.
address-sign = Signer que je rejoins « { $school } »
address-other = Autre adresse
address-of-server = Le serveur de l’école
address-change = Autre adresse

## Members

members = { $count ->
    [one] { $count } membre
   *[other] { $count } membres
  }
members-before = { $count ->
    [one] { $count } ancien membre
   *[other] { $count } anciens membres
  }
member-you = { $name } (vous)
member-devices = { $count ->
    [0] aucun appareil
    [one] { $count } appareil
   *[other] { $count } appareils
  }
member-their-devices = { $count ->
    [one] Appareil
   *[other] Appareils
  }
member-code-what = Chaque appareil montre son propre code sur sa page École : lu à voix haute, il dit lequel c’est.
member-deeds = Ce que la racine peut faire
member-unknown = Membre inconnu
member-unknown-hint = Revenez à l’école et choisissez-y un membre.
member-no-longer = N’est plus membre. Ce qui a été signé avant reste valable.
device-here = cet appareil
device-root = détient la racine
device-ended = sa clé a pris fin
role-as-what = À quel titre ?
role-until = Dernier jour
role-until-hint = Laissez vide s’il n’y en a pas.
role-change = Changer le rôle
role-change-title = { $name }, à partir de maintenant
role-sign = Signer le rôle
as-pilot = Pilote
as-mechanic = Mécanicien
as-instructor = Instructeur
as-viewer = Observateur
may-pilot = fait le tour des machines et signe ce qu’il a vu
may-mechanic = signe aussi des interventions, et sert de deuxième paire d’yeux
may-instructor = décide aussi de ce qui peut attendre, et publie des listes
may-viewer = lit, et ne signe rien sur les machines de l’école
end-member = Mettre fin à l’adhésion
end-title = Mettre fin à l’adhésion : { $name }
end-what = Dès votre signature, rien de ce que cette personne signe ne compte sur les machines de l’école. Ce qu’elle a signé avant reste valable.
end-reason = Pourquoi ?
end-sign = Signer la fin d’adhésion
key-lost = Il est perdu : mettre fin à sa clé
key-title = Clé d’un appareil perdu
key-what = Rien de ce que cet appareil ({ $name }) signe à partir de maintenant ne compte où que ce soit, quel qu’en soit le détenteur. C’est sans retour ; la personne continue avec un autre appareil.
key-reason = Que s’est-il passé ?
key-reason-hint = Par exemple : perdu au terrain dimanche.
key-sign = Signer la fin de sa clé
hand-root = Lui transmettre la racine
hand-title = Transmettre la racine : { $name }
hand-what = Dès votre signature, seul cet appareil ({ $name }) admet des membres et met fin aux adhésions. Celui-ci ne peut pas la reprendre.
hand-sign = Signer la transmission
admit = Admettre quelqu’un
admit-what = Qui demande montre un code sur son appareil, sous École, « Entrer par un code ».
admit-by-code = Importer son code
admit-take = Importer
admit-member = Cet appareil est déjà membre. Si vous signez, il reçoit un autre rôle.
admit-compare = Le code de son appareil
admit-compare-how = Faites lire le code à { $name } sur son propre écran : ce doit être celui-ci, lettre pour lettre.
admit-sign = Signer : admettre { $name }
admit-anew = Admettre quelqu’un d’autre
admitted = Admission faite : { $name }
admitted-code = Code d’admission
admitted-what = { $server ->
    [yes] { $name } le reçoit du serveur à la prochaine synchronisation, ou importe ce code.
   *[no] Montrez ce code à { $name }, qui l’importe là où se trouve son propre code.
  }
waiting-list = En attente au serveur
waiting-list-none = Personne n’y attend.
waiting-list-again = Demander de nouveau

## Machines under the school

enrolled = Machines
enrolled-none = Aucune ici.
enrolled-yes = relève de l’école
enrolled-no = ne relève pas de l’école
enrolled-own = la vôtre
machine-under = Relève de « { $school } »
machine-not-under = Ne relève pas de « { $school } »
enrol-title = Placer { $machine } sous l’école
enrol-what = Dans « { $school } », les rôles décident qui y signe des interventions et qui dit qu’un défaut peut attendre. Ses instructeurs voient ses enregistrements.
enrol-sign = Signer l’entrée
enrol-out-title = Retirer { $machine } de l’école
enrol-out-what = Les rôles de « { $school } » ne valent alors plus pour elle, et ce qui est signé à partir de là reste ici.
enrol-out-sign = Signer la sortie
enrol-records = C’est un enregistrement comme un autre : il reste dans l’historique de la machine.
enrol-not-yours = Seule la personne qui l’a inscrite peut le faire.
enrol-no-school = Cet appareil n’appartient à aucune école.

## Lists and data sheets from the school

published = Listes et fiches moteur de l’école
published-none = Rien n’est encore publié.
published-version = version { $version }
published-used = en usage
published-before = remplacé depuis
publish = Publier aux membres
publish-what = Choisissez des listes ou des fiches moteur. Chacune est vérifiée avant que vous la signiez, et parvient à chaque membre avec votre signature.
publish-choose = Choisir les fichiers
publish-more = Choisir d’autres fichiers
publish-without = Retirer
publish-faults = { $count ->
    [one] { $count } erreur
   *[other] { $count } erreurs
  }
publish-good = Bon. Ce sera la version { $version }.
publish-where = { $file }, ligne { $line }
publish-title = Titre
publish-title-hint = Le même titre remplace la version précédente.
publish-note = Qu’y a-t-il de nouveau ?
publish-sign = Signer, et publier
folder-engines = la fiche d’un moteur
folder-fragments = points d’une liste
folder-assembly = comment un moteur se démonte
folder-drawings = un dessin
folder-texts = textes, { $language }
school-file = Pour qui gère le serveur
school-file-what = Un serveur a besoin de ce fichier pour servir l’école. Il ne contient ni clé ni code PIN.
school-file-give = Transmettre le fichier de l’école

## The server

server-title = Le serveur
server-none = Cette école n’a pas de serveur ici.
server-more = Plus sur le serveur
sync-none-short = Pas de serveur ici : les enregistrements passent par fichier ou par code.
sync-failed-short = La dernière synchronisation a échoué.
sync-records = { $count ->
    [one] { $count } enregistrement attend
   *[other] { $count } enregistrements attendent
  }
sync-photos = { $count ->
    [one] { $count } image attend
   *[other] { $count } images attendent
  }
sync-stuck = { $count ->
    [one] { $count } refusé
   *[other] { $count } refusés
  }
sync-now = Synchroniser
sync-busy = Synchronisation…
stuck = { $count ->
    [one] { $count } enregistrement que le serveur n’a pas accepté
   *[other] { $count } enregistrements que le serveur n’a pas acceptés
  }
stuck-what = En sûreté sur cet appareil, où ils comptent.
stuck-retry = Renvoyer
truth = Le serveur dit-il la vérité ?
truth-what = { $count ->
    [0] Le serveur ne s’est encore engagé par signature sur rien.
    [one] Cet appareil a l’engagement signé du serveur pour { $count } enregistrement. Il ne peut être ni omis ni modifié sans que cela se voie.
   *[other] Cet appareil a l’engagement signé du serveur pour { $count } enregistrements, chacun à sa place. Aucun ne peut être omis ni modifié sans que cela se voie.
  }
truth-check = Tout vérifier
truth-busy = Vérification…
truth-proof = La preuve
truth-root = Racine de l’arbre qui les couvre
truth-signed = L’engagement signé du serveur
compare = Comparer avec un autre membre
compare-what = Un serveur qui raconte autre chose à chacun de deux membres est démasqué quand les deux comparent. Aucun réseau n’est nécessaire.
compare-code = Code avec ce que le serveur a dit à cet appareil
compare-theirs = Ce que montre l’autre appareil
compare-take = Comparer
anew = Suivre de nouveau le serveur
anew-what = Oublie tout ce que le serveur a dit, et relit son journal depuis le début à la prochaine synchronisation. Vos propres enregistrements restent. Ne le faites qu’après que l’école a dit pourquoi.
anew-do = Oublier ce qu’il a dit
refused = Lignes non acceptées
refused-none = Chaque ligne reçue était un bon enregistrement.
refused-what = Le serveur a fourni ces lignes, et ce ne sont pas de bons enregistrements. Elles ne comptent pour rien.
refused-line = La ligne telle que reçue
refused-away = La ranger

## The board

board = Le tableau
board-own = Toutes les machines d’un coup d’œil
board-counts = { $count ->
    [one] { $count } machine
   *[other] { $count } machines
  } : { $grounded ->
    [one] { $grounded } interdite de vol
   *[other] { $grounded } interdites de vol
  }, { $limited } avec limites, { $fit ->
    [one] { $fit } apte
   *[other] { $fit } aptes
  }
board-none = Aucune machine ici.
board-shown = { $count } sur { $of } affichées
board-filters = N’afficher que
board-machine = Machine
board-first = À traiter d’abord
board-open = Ouvert
board-due = Échéances
board-looked = Dernier examen
board-defect = Défaut :
board-watched = À surveiller :
board-deferred = Peut attendre :
board-job = Intervention ouverte :
board-second = { $count ->
    [one] { $count } second regard attend
   *[other] { $count } seconds regards attendent
  }
board-second-by = intervention de { $name }
board-people = Les membres et leurs machines
board-no-machine = aucune machine
filter-state = Verdict
filter-all = tous
filter-owner = Propriétaire
filter-everybody = tout le monde
filter-due = Une échéance
filter-second = Second regard attendu
state-grounded = interdite de vol
state-limited = avec limites
state-fit = apte

## What a board asks to be signed

desk-sign-in-title = Vous connecter au tableau ?
desk-address = Le tableau qui demande :
desk-means = Le tableau vous montre alors les machines de l’école. Il peut préparer ce que vous pouvez signer ; seul cet appareil le signe.
desk-sign-in = Oui, me connecter
desk-signed-in = Vous êtes connecté au tableau
draft-over = Préparé au tableau de « { $school } »
draft-means = Lisez-le comme si vous l’aviez écrit : votre signature le fait vôtre.
draft-sign = Signer
draft-body = Tel que ce sera signé, mot pour mot
draft-signed = Signé, et envoyé à l’école

## Taking records in, and giving all away

take-in = Importer
take-in-what = Les bons enregistrements de ce fichier entrent dans cet appareil, à côté de ce qui y est. Rien ici n’est modifié.
take-in-do = Importer ses enregistrements
take-in-busy = Importation…
take-in-known = { $count ->
    [one] { $count } était déjà là.
   *[other] { $count } étaient déjà là.
  }
everything = Tout ce qui est sur cet appareil
everything-what = Tous les enregistrements de toutes les machines dans un fichier : à conserver, ou pour un autre appareil. Il ne contient ni clé ni code PIN.
everything-give = Tout transmettre

## Charts

chart-name = { $title } : { $count ->
    [one] { $count } mesure
   *[other] { $count } mesures
  }
chart-keys = Les flèches gauche et droite vont de mesure en mesure. Entrée ouvre l’enregistrement de la mesure.
axis-hours = { $hours } h
chart-before = La mesure d’avant
chart-after = La mesure d’après
drawn-title = Ce que veulent dire les signes
drawn-reading = Une mesure
drawn-far-off = Une mesure loin de la ligne : montrée, non écartée
drawn-band = Dans la plage
drawn-limit = La limite
drawn-limit-unconfirmed = La limite, confirmée par aucun document
drawn-line = Dans quel sens cela va, avec sa marge de doute
drawn-neither = Une ligne avec sa marge de doute là où rien de sûr n’est dit : le hasard seul la tracerait
drawn-reach = Si cela continue ainsi : où la limite est atteinte, du plus tôt au plus tard
drawn-change = Un saut : le niveau avant, et après
drawn-mark = Une intervention, ou un composant monté ou déposé ; son numéro est dans la liste sous le tracé
drawn-steps = Part encore en état, palier par palier, comme trouvée
drawn-fitted = Une courbe lisse à travers, avec sa marge de doute
drawn-failed = Trouvé hors service : quelque part entre deux examens
drawn-whole = Encore en ordre au dernier examen

## Trends

drifts = Ce qui dérive
drifts-no-readings = Pas encore de mesure à suivre. Elles viennent avec chaque tour, et avec les relevés moteur.
drifts-too-little = { $count ->
    [one] Une grandeur a des mesures, mais trop peu encore pour dire dans quel sens elle va.
   *[other] { $count } grandeurs ont des mesures, mais chacune trop peu encore pour dire dans quel sens elle va.
  }
drifts-nothing = { $told ->
    [one] Rien ne dérive : une grandeur est suivie.
   *[other] Rien ne dérive : { $told } grandeurs sont suivies.
  } { $few ->
    [0] { "" }
    [one] Pour une de plus, c’est encore trop peu pour conclure.
   *[other] Pour { $few } de plus, c’est encore trop peu pour conclure.
  }
trends-title = Toutes les tendances
trends-over = { $machine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
trends-none = Encore rien à suivre. Tout ce que vous mesurez lors d’un tour est suivi ici au fil des heures moteur, comme ce que vous importez des relevés moteur.
trends-what = Chaque mesure est placée aux heures moteur où elle a été prise. Touchez un tracé pour en lire une.
trend-limit = limite { NUMBER($value, maximumFractionDigits: 2, useGrouping: 0) } { $unit }
trend-from = à partir de { NUMBER($hours, maximumFractionDigits: 0) } h
trend-far-off = loin de la ligne
trend-unsigned = pas encore signé
trend-marks = { $count ->
    [one] Ce qu’est le trait sur l’axe des heures
   *[other] Ce que sont les { $count } traits sur l’axe des heures
  }
trend-hours = Heures moteur
trend-reading = Mesure
trend-table = { $count ->
    [one] La seule mesure, en tableau
   *[other] Les { $count } mesures en tableau
  }

## Engine logs

readings-title = Importer un relevé moteur
readings-what = Le fichier qu’a écrit votre instrument moteur : un tableau avec une colonne de temps et des colonnes de température ou de régime (CSV : du texte avec une virgule, un point-virgule ou une tabulation entre ses colonnes).
readings-step-file = Choisissez le fichier.
readings-step-columns = Dites comment lire ses colonnes. C’est demandé une fois, et retenu.
readings-step-figures = Voyez ce qu’il dit, pour quel jour et par quelle température.
readings-step-sign = Signez-le : ses valeurs rejoignent les tendances.
readings-kept = Le fichier reste chez vous. Ses quelques valeurs sont signées et gardées : températures les plus hautes, régime le plus haut et de ralenti, temps de marche.
readings-choose = Choisir le fichier
readings-other = Autre fichier
readings-busy = Lecture…
readings-guessed = Est-il bien lu ainsi ?
readings-guessed-what = Ce n’est qu’une supposition d’après les en-têtes. Regardez chaque colonne, et changez ce qui est faux.
readings-remembered = Lire comme la dernière fois ?
readings-remembered-what = Un fichier avec ces en-têtes a déjà été importé. Vous aviez dit alors qu’il se lit ainsi :
readings-change = Lire autrement
readings-confirm = Oui, lire ainsi
readings-signs = Entre les colonnes : { $separator ->
    [tab] une tabulation
   *[other] « { $separator } »
  }. Devant les décimales : « { $decimal } ». Les deux se voient dans le fichier.
readings-holds = Ce qu’elle contient
readings-left-out = non lue
readings-time = Temps
readings-time-form = Comment le temps est écrit
readings-told = Ce qu’il dit
readings-rows = { $rows ->
    [one] { $rows } ligne lue, { $lasts }.
   *[other] { $rows } lignes lues, { $lasts }.
  }
readings-unread = { $count ->
    [one] Dans une ligne, quelque chose est illisible ; le reste de la ligne compte.
   *[other] Dans { $count } lignes, quelque chose est illisible ; le reste de ces lignes compte.
  }
readings-hours = Heures moteur alors
readings-on = Jour
readings-outside = Température extérieure
readings-outside-why = Avec elle, les températures de culasse sont ramenées à un seul et même jour, pour que l’été et l’hiver se comparent. Laissez vide si vous ne la connaissez pas.
readings-sign = Signer ce qu’il dit
readings-again = Déjà importé
readings-again-what = Ce même fichier a déjà été importé. Compté deux fois, il fausserait la tendance.
readings-to-record = Ouvrir son enregistrement

## What all records tell

fleet-title = Ce que disent les enregistrements
fleet-own = Toutes les machines sur cet appareil
fleet-more = Ce que disent encore les enregistrements
fleet-what = Tous les examens de toutes les machines connues ici, pris ensemble. Ils sont peu nombreux, et ne sont pas un manuel : les intervalles du constructeur valent jusqu’à ce que quelqu’un les raccourcisse.
fleet-lives = Combien durent les composants
fleet-none = Aucun examen d’un composant n’est encore signé. Avec chaque tour signé, on en sait plus ici.
fleet-counts = { $failed ->
    [0] Aucun trouvé hors service
    [one] Un trouvé hors service
   *[other] { $failed } trouvés hors service
  }, sur { $lives ->
    [one] une vie
   *[other] { $lives } vies
  }, { $machines ->
    [one] une machine
   *[other] { $machines } machines
  }
life-in-force = En vigueur : à examiner toutes les
life-asked-for = Les constats demandent de l’examiner toutes les
life-asked = Les constats demandent de l’examiner
life-every-flight = avant chaque vol
life-suggested = Rien n’est en vigueur ici. Les constats suggèrent de l’examiner toutes les
life-stays-so = Les constats ne le raccourcissent pas.
life-every = { NUMBER($hours, maximumFractionDigits: 1) } h
life-chance = pour que le risque d’une défaillance inaperçue reste sous { NUMBER($percent, maximumFractionDigits: 1) } %
life-only-shorter = Un intervalle trouvé ici ne fait de lui-même que raccourcir. En allonger un revient au manuel du constructeur et à une personne.
life-caption = Part encore en état, selon les heures propres du composant
life-share = Part encore en état
life-table = Les nombres de la courbe
life-ask = Demander un autre risque ou un autre intervalle
life-chance-borne = Risque d’une défaillance inaperçue
life-in-force-hours = Intervalle en vigueur, en heures
share = { NUMBER($percent, maximumFractionDigits: 1) } %
share-between = { NUMBER($percent, maximumFractionDigits: 0) } % ({ NUMBER($low, maximumFractionDigits: 0) } à { NUMBER($high, maximumFractionDigits: 0) } %)

## How people look, and what the points are worth

looking-title = Comment chacun regarde
looking-none = Personne n’a encore signé assez de tours pour cela.
looking-nothing = Rien ne sort du lot.
looking-you = { $name } (vous)
looking-inspections = { $count ->
    [one] { $count } tour signé
   *[other] { $count } tours signés
  } ; comparaison sur { $looks ->
    [one] { $looks } examen
   *[other] { $looks } examens
  } à des points que d’autres examinent aussi
looking-hurried = À la hâte, sur cent points
looking-points = Le plus souvent à la hâte :
looking-seconds = La moitié des points a pris moins de
looking-own-seconds = { NUMBER($seconds, maximumFractionDigits: 1) } s
looking-fleet-seconds = { NUMBER($seconds, maximumFractionDigits: 1) } s, les autres
looking-found = Constats, sur cent points
looking-own-count = { NUMBER($count, maximumFractionDigits: 1) }
looking-fleet-count = { NUMBER($count, maximumFractionDigits: 1) }, les autres
worth-title = Ce que valent les points
worth-none = Aucun tour n’est encore signé.
worth-sort-often = Souvent un constat ({ $count })
worth-sort-never = Jamais de constat ({ $count })
worth-sort-plain = Un constat de temps à autre ({ $count })
worth-sort-few = Trop peu examinés pour conclure ({ $count })
worth-scale = Chaque ligne va de zéro à { $most } examens sur 100 : le trait est la part avec constat, la barre sa marge de doute.
worth-counts = { $looks ->
    [one] { $looks } examen
   *[other] { $looks } examens
  }{ $machines ->
    [0] { "" }
    [one] : { $watch } × à surveiller, { $unserviceable } × hors service, sur une machine
   *[other] : { $watch } × à surveiller, { $unserviceable } × hors service, sur { $machines } machines
  }
worth-seconds = La moitié des examens a pris moins de { NUMBER($seconds, maximumFractionDigits: 1) } s ; { NUMBER($hurried, maximumFractionDigits: 0) } sur cent à la hâte.

## Load, fuel, air and wind before a flight

flight = Charge, essence et air
flight-what = Répondez à ce qui compte aujourd’hui, et laissez le reste. Chaque réponse est aussitôt confrontée à sa limite.
flight-reminders = Les manuels de la voile et du moteur ainsi que les règles locales passent avant tout : ces chiffres sont des rappels. S’ils diffèrent, arrêtez-vous et suivez le manuel.
flight-part-load = Que pèse le tout ?
flight-part-mix = Que met-on dans le réservoir ?
flight-part-fuel = Combien de temps tient l’essence ?
flight-part-air = L’air est-il peu dense ?
flight-part-wind = Le vent est-il fort ?
flight-left-out = Laissé de côté
flight-leave-out = Laisser de côté
flight-reckoning = Calcul…
flight-lacks = Reste à saisir : { $values }.
flight-lacks-hint = Saisissez ce qui manque, ou laissez cette question de côté.
flight-keep = Garder pour ce vol
flight-kept = Gardé. Le verdict en tient compte, et votre prochaine signature le signe.
flight-keep-means = Le verdict en tient compte aussitôt, et votre prochaine signature le signe.
flight-verdict = Avec cela :
flight-unit = Unité : { $value }
flight-pad-away = Cacher les touches
flight-pad-next = Suivant
flight-pad-done = Terminé
flight-value-pilot = Vous, en tenue de vol
flight-value-machine = Machine et voile, sans essence
flight-value-fuel = Essence au décollage
flight-value-ballast = Lest et autres
flight-value-inTank = Déjà dans le réservoir
flight-value-addFuel = Essence que vous ajoutez
flight-value-target = Parts d’essence pour une d’huile
flight-value-ratioInTank = Dans le réservoir, parts d’essence pour une d’huile
flight-value-oil = Huile que vous avez versée
flight-value-minutes = Durée du vol
flight-value-reserve = Reste à l’atterrissage, au moins
flight-value-elevation = Altitude du terrain
flight-value-setting = Calage altimétrique, QNH
flight-value-pressure = Pression au terrain, QFE
flight-value-temperature = Température
flight-value-dew = Point de rosée, si connu
flight-value-mean = Vent moyen
flight-value-gust = Plus forte rafale
flight-value-mostMean = Vent moyen, au plus
flight-value-mostGust = Rafales, au plus
flight-value-mostFactor = Rafale sur vent moyen, au plus
flight-span = { $low } à { $high } { $unit }
flight-wing = La voile porte { $range } avec moteur.
flight-wing-without = Sans moteur, { $range }.
flight-source = { $document }{ $page ->
    [empty] {""}
   *[other] , { $page }
  }.
flight-wing-unsourced = Personne n’a dit où c’est écrit : non confirmé.
flight-no-wing = Ce que la voile peut porter n’est pas encore décrit.
flight-to-wing = Le décrire d’après son manuel
flight-caution-pour = Vapeurs d’essence : aucune flamme, et pas de téléphone dans la main qui verse. Lisez le chiffre, rangez le téléphone, puis versez.
flight-pour = Huile à verser
flight-poured = Elle y est
flight-no-ratio = La fiche moteur ne donne pas de rapport : prenez-le dans le manuel du constructeur.
flight-plain = Ce qui est dans le réservoir est sans huile
flight-oil-hint = Après avoir versé. Laissez vide avant.
flight-minutes = min
flight-to-log = Noter ce qu’un vol a consommé
flight-by = Que lisez-vous ?
flight-by-altimeter = Le calage d’un altimètre (QNH : la pression ramenée au niveau de la mer)
flight-by-field = Un baromètre au terrain (QFE : la pression ici même)
flight-measured = Mesuré à { $time }. Saisissez-le de nouveau une fois que vous avez remesuré.
flight-own-limits = Vos propres limites
flight-school = Les limites de l’école :
flight-school-mean = vent moyen { $value }
flight-school-gust = rafales { $value }
flight-school-factor = rafale sur vent moyen { $value }
flight-caution-weather = Le vent d’un instant n’est pas la météo : le ciel, les prévisions et le terrain, c’est à vous d’en juger.
flight-row-not-yet = Pas calculé aujourd’hui
flight-row-well = Calculé aujourd’hui : tout est dans les limites

## What the wing may carry, and what the machine weighs

form-load = Poids, et ce que la voile peut porter
form-load-what = Pour le calcul avant chaque vol. Laissez vide ce que personne ne sait.
form-weight = Poids de la machine
form-weight-hint = Châssis, moteur, sellette, voile et secours, sans essence.
form-wing-with = Poids total volant avec moteur, d’après le manuel de la voile
form-wing-without = Poids total volant sans moteur
form-wing-without-hint = Si le manuel donne les deux.
form-wing-low = Minimum
form-wing-high = Maximum
form-wing-document = Titre et édition du manuel de la voile
form-wing-only-free = Il manque la plage avec moteur.
form-wing-only-free-hint = Saisissez aussi la plage avec moteur : c’est à elle que cette machine est confrontée.

## Fuel that a flight burned

log-burned-open = Essence consommée, si vous l’avez mesurée
log-burned = Essence consommée
log-burned-hint = Ce qu’il y avait dans le réservoir avant, moins ce qu’il y a maintenant. Les vols suivants se calculent d’après cela.

## Choices of this device

language-name = Français
settings-choices = Sur cet appareil
settings-aloud = Lire les points à voix haute
settings-aloud-what = D’abord la mise en garde, puis ce qu’il faut examiner, à quoi ressemblent le bon et le mauvais. La lecture s’arrête quand vous répondez.
settings-no-voice = Cet appareil n’a pas de voix pour la langue « { $language } » : rien n’est lu à voix haute.
settings-units = Unités que vous lisez et saisissez
settings-units-what = Chacune peut être changée là où elle est saisie. Ce que donne un manuel est montré tel qu’il le donne, et dans la vôtre.
settings-unit-mass = Poids
settings-unit-volume = Essence
settings-unit-speed = Vent
settings-unit-temperature = Température
settings-unit-pressure = Pression de l’air
settings-unit-height = Altitude
settings-unit-torque = Couple
settings-unit-sheet = comme sur la fiche moteur
settings-unit-option = { $sign }, { $words }
folder-none = dans aucun dossier, pour toutes les machines
folder-texts-other = textes, dans une autre langue
folder-language = Quelle langue ?
folder-language-hint = Son code, par exemple nl ou pt-BR.

## Read aloud

aloud = Lire à voix haute
spoken-plus-minus = plus ou moins
spoken-at-most = au plus
spoken-at-least = au moins
spoken-range = de { $low } à { $high }
spoken-unit-kg = { $count ->
    [one] kilogramme
   *[other] kilogrammes
  }
spoken-unit-lb = { $count ->
    [one] livre
   *[other] livres
  }
spoken-unit-L = { $count ->
    [one] litre
   *[other] litres
  }
spoken-unit-mL = { $count ->
    [one] millilitre
   *[other] millilitres
  }
spoken-unit-gal-us = { $count ->
    [one] gallon américain
   *[other] gallons américains
  }
spoken-unit-gal-br = { $count ->
    [one] gallon impérial
   *[other] gallons impériaux
  }
spoken-unit-L-h = { $count ->
    [one] litre par heure
   *[other] litres par heure
  }
spoken-unit-km-h = { $count ->
    [one] kilomètre par heure
   *[other] kilomètres par heure
  }
spoken-unit-kt = { $count ->
    [one] nœud
   *[other] nœuds
  }
spoken-unit-m-s = { $count ->
    [one] mètre par seconde
   *[other] mètres par seconde
  }
spoken-unit-Cel = { $count ->
    [one] degré Celsius
   *[other] degrés Celsius
  }
spoken-unit-degF = { $count ->
    [one] degré Fahrenheit
   *[other] degrés Fahrenheit
  }
spoken-unit-K = kelvins
spoken-unit-hPa = { $count ->
    [one] hectopascal
   *[other] hectopascals
  }
spoken-unit-inHg = { $count ->
    [one] pouce de mercure
   *[other] pouces de mercure
  }
spoken-unit-bar = bars
spoken-unit-psi = livres par pouce carré
spoken-unit-m = { $count ->
    [one] mètre
   *[other] mètres
  }
spoken-unit-mm = { $count ->
    [one] millimètre
   *[other] millimètres
  }
spoken-unit-in = { $count ->
    [one] pouce
   *[other] pouces
  }
spoken-unit-ft = { $count ->
    [one] pied
   *[other] pieds
  }
spoken-unit-N-m = { $count ->
    [one] newton mètre
   *[other] newtons mètres
  }
spoken-unit-lbf-in = { $count ->
    [one] livre-force pouce
   *[other] livres-force pouces
  }
spoken-unit-lbf-ft = { $count ->
    [one] livre-force pied
   *[other] livres-force pieds
  }
spoken-unit-kgf-cm = { $count ->
    [one] kilogramme-force centimètre
   *[other] kilogrammes-force centimètres
  }
spoken-unit-kgf-m = { $count ->
    [one] kilogramme-force mètre
   *[other] kilogrammes-force mètres
  }
spoken-unit-V = { $count ->
    [one] volt
   *[other] volts
  }
spoken-unit-s = { $count ->
    [one] seconde
   *[other] secondes
  }
spoken-unit-min = { $count ->
    [one] minute
   *[other] minutes
  }
spoken-unit-h = { $count ->
    [one] heure
   *[other] heures
  }
spoken-unit-per-minute = { $count ->
    [one] tour par minute
   *[other] tours par minute
  }
spoken-unit-deg = { $count ->
    [one] degré
   *[other] degrés
  }
spoken-unit-percent = pour cent
