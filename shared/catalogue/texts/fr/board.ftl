# French: the school board's own words in a browser.

wall-title = Tableau de l’école
wall-invented = Inventé, pour la démonstration
wall-unreachable = Le serveur est injoignable.
wall-unreachable-hint = Ce que vous avez saisi est encore là. Réessayez quand la connexion est revenue.
wall-nothing-there = Il n’y a rien à cette adresse.

## Signing in

wall-sign-in = Se connecter avec son appareil
wall-step-open = Ouvrez Witness Mark sur votre téléphone, puis : Ouvrir un code.
wall-step-scan = Là, scannez le code de cette page, ou collez son texte.
wall-step-pin = Vérifiez qu’il nomme bien cette école, et saisissez votre code PIN.
wall-sign-in-why = Votre téléphone signe pour cette page, douze heures au plus. La page elle-même ne peut jamais rien signer.
wall-code = Le code de cette page, à scanner avec votre téléphone
wall-code-anew = Montrer un nouveau code
wall-passphrase-open = Voir par phrase secrète
wall-passphrase = Phrase secrète
wall-passphrase-hint = Elle permet de regarder. Pour préparer quoi que ce soit, il faut votre appareil.
wall-passphrase-go = Regarder
wall-by-passphrase = Connecté par phrase secrète
wall-look-only = regarder seulement
wall-role-viewer = observateur
wall-role-pilot = pilote
wall-role-mechanic = mécanicien
wall-role-instructor = instructeur
wall-sign-out = Se déconnecter

## The board

wall-beside = À côté des machines
wall-second = Seconds regards ({ $count })
wall-prepared = Préparés, non signés ({ $count })
wall-publish = Publier une liste
wall-live-coming = Connexion…
wall-live-live = En direct depuis { $time }
wall-live-lost = Connexion perdue à { $time }. Ce que vous voyez date de là ; nouvel essai en cours.
wall-counts = Combien de chaque ; appuyez pour n’afficher que ceux-là
wall-count-defects = avec défauts ouverts
wall-count-deferred = peuvent attendre
wall-count-due = bientôt échus ou échus
wall-count-second = attendent un second regard
wall-search = Rechercher
wall-owner = Propriétaire
wall-everybody = tout le monde
wall-sort = Ordre
wall-sort-first = à traiter d’abord
wall-sort-name = par nom
wall-sort-owner = par propriétaire
wall-sort-looked = examen le plus ancien d’abord
wall-sort-due = échéances d’abord
wall-every = Tout afficher
wall-machines = Les machines de l’école
wall-verdict = Verdict
wall-eyes = Attend un second regard
wall-no-permission = Un verdict résume ce qui a été enregistré. Ce n’est pas une autorisation de voler : regardez la machine elle-même ; le manuel du constructeur, les règles locales et la pratique sous licence passent avant tout.
wall-close = Retour au tableau

## A machine

wall-open = Ouvert
wall-happened = Historique
wall-job = Intervention pas remise en service
wall-second-code = Code pour le second regard
wall-defer = Peut attendre…
wall-to-machine = Vers la machine
wall-left = { $count ->
    [one] { $count } point que personne n’a examiné
   *[other] { $count } points que personne n’a examinés
  }

## Second looks

wall-second-title = Second regard
wall-second-none = Aucune intervention n’attend une deuxième paire d’yeux.
wall-second-caution = Avant d’en approcher une main : coupe-circuit sur arrêt et capuchon de bougie retiré, ou batterie de vol débranchée. Les pièces chaudes brûlent. Regardez vous-même les assemblages ; un écran n’en montre aucun.
wall-second-how = Quelqu’un qui n’a pas fait le travail ouvre ce code dans Witness Mark, examine chaque assemblage, et signe. Cela revient ici à la prochaine synchronisation.

## Preparing

wall-until = Jusqu’à quand, au plus ? Le premier atteint compte.
wall-now = Maintenant : { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h, { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }
wall-hours = Heures moteur
wall-flights = Vols en tout
wall-date = Jour
wall-condition = À quelle condition peut-elle voler ?
wall-condition-hint = Par exemple : seul à bord, pas plus de mi-gaz.
wall-reason = Pourquoi cela peut-il attendre ?
wall-defer-caution = Qui signe ceci en répond. Si le manuel du constructeur ou les règles locales interdisent de voler avec ce défaut, il ne peut pas attendre.
wall-prepare = Préparer pour signature
wall-prepare-what = Rien ne change encore. Vous signez sur votre propre appareil, qui vous montre ce qui s’ensuivrait.
wall-sign-there = Signez-le sur votre appareil
wall-sign-there-how = Ouvrez le code dans Witness Mark, lisez ce qui y est dit, et saisissez votre code PIN. Le tableau suit de lui-même.
wall-sign-there-code = Ce que vous avez préparé, à scanner avec votre téléphone
wall-signed = Cela n’attend plus : signé, ou annulé. Le tableau montre ce qui vaut.
wall-publish-what = Choisissez des listes ou des fiches moteur. Chacune est vérifiée aussitôt ; rien de fautif ne peut être publié.
wall-publish-caution = Les listes et les limites de chaque membre suivent ce que vous publiez. Un chiffre faux peut blesser quelqu’un : confrontez chacun au manuel du constructeur.
wall-publish-title = Titre
wall-publish-title-hint = Le même titre remplace la version précédente.
wall-publish-note = Qu’y a-t-il de nouveau ?
wall-prepared-title = Préparés, non signés
wall-prepared-none = Rien de ce que vous avez préparé n’attend de signature.
wall-take-back = Annuler
wall-draft-deferral = { $machine } : { $title } peut attendre
wall-draft-publication = { $title }, version { $version }

## What the records tell

wall-lives = Combien durent les composants
wall-lives-what = Tous les examens de toutes les machines de l’école, pris ensemble. Ils sont peu nombreux, et ne sont pas un manuel : les intervalles du constructeur valent jusqu’à ce que quelqu’un les raccourcisse.
wall-worth = Ce que valent les points
wall-looking = Comment chacun regarde

## What the server refuses

wall-fault-code-gone = Ce code n’a pas été confirmé à temps.
wall-fault-code-gone-hint = Demandez un nouveau code.
wall-fault-no-device = Une phrase secrète permet de regarder, et rien de plus.
wall-fault-no-device-hint = Connectez-vous avec votre propre appareil : ce que vous préparez ici, vous le signez là.
wall-fault-looking-instructors = Seul un instructeur voit ici comment chacun regarde.
wall-fault-looking-instructors-hint = Chacun voit sur son propre appareil comment il regarde ; un instructeur se connecte ici pour voir tout le monde.
wall-fault-not-a-member = Cet appareil n’est pas membre aujourd’hui.
wall-fault-not-a-member-hint = Demandez à l’école d’admettre cet appareil.
wall-fault-not-instructor = Seul un instructeur prépare quelque chose ici.
wall-fault-not-instructor-hint = Demandez à un instructeur, ou continuez à regarder.
wall-fault-not-yours = C’est quelqu’un d’autre qui l’a préparé.
wall-fault-not-yours-hint = Seule la personne qui l’a préparé peut l’annuler.
wall-fault-other-page = Cette demande ne vient pas de la page du tableau.
wall-fault-other-page-hint = Ouvrez le tableau à l’adresse même du serveur et réessayez là.
wall-fault-passphrase-off = Ce tableau n’a pas de phrase secrète.
wall-fault-passphrase-off-hint = Connectez-vous avec votre appareil.
wall-fault-passphrase-too-often = Trop de phrases secrètes fausses. Attendez { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
  }.
wall-fault-passphrase-too-often-hint = Ou connectez-vous avec votre appareil : cela reste possible.
wall-fault-passphrase-wrong = Ce n’est pas la phrase secrète.
wall-fault-passphrase-wrong-hint = Réessayez, ou connectez-vous avec votre appareil.
wall-fault-signed-out = Personne n’est connecté sur cette page.
wall-fault-signed-out-hint = Connectez-vous avec votre appareil.
