# French: what the command line says beside what the core says.

## Help: verbs

help = Faites le tour de votre machine avant de voler, signez ce que vous avez vu, et obtenez un verdict avec ses motifs.
help-demo = Ajouter les machines inventées, ou une école inventée avec sa saison, pour essayer
help-machine = Inscrire des machines, les décrire de nouveau, en donner la liste
help-machine-add = Inscrire une machine (signé)
help-machine-change = Décrire de nouveau une machine (signé) ; ce que vous ne donnez pas reste tel quel
help-machine-list = Liste de toutes les machines, celles qui ont besoin de vous d’abord
help-machine-engines = Liste des types de moteur, et des éléments d’une machine avec chacun
help-machine-enrol = Placer une de vos machines sous les rôles de l’école (signé)
help-machine-withdraw = Retirer une machine de l’école (signé)
help-points = Montrer les points de la liste d’une machine, avec leurs réponses
help-walk = Parcourir une liste point par point, et la signer (code 1 : interdite de vol)
help-verdict = Dire si une machine peut voler, et pourquoi (code 1 : interdite de vol)
help-show = Montrer une machine : ce qui est ouvert et à échéance, ses composants et limites, son historique
help-record = Ouvrir un enregistrement (code 1 : sa signature n’est pas bonne)
help-defect = Ce qui est ouvert sur une machine : liste, remise en état, ou report
help-defect-list = Liste de ce qui est ouvert : défauts, et ce qui est à surveiller
help-defect-rectify = Signer que ce qui était ouvert à un point a été remis en état
help-defect-defer = Signer qu’un défaut peut attendre, dans des limites et sous condition
help-flight = Préparer un vol avant le décollage, et noter son temps après l’atterrissage
help-flight-prepare = Calculer charge, essence, air et vent ; signé avec votre prochaine signature (code 1 : interdite de vol)
help-flight-log = Noter heures, vols et réservoirs, ou la lecture de l’horamètre ; signé avec votre prochaine signature
help-flight-undo = Annuler la dernière saisie de temps, tant que personne ne l’a signée
help-due = Ce qui arrive à échéance par heures, vols, réservoirs ou jours
help-due-list = Liste des échéances d’une machine, la plus proche d’abord
help-due-keep = Suivre une échéance qui revient, ou la changer (signé)
help-due-done = Signer que c’est fait : maintenant, ou quand vous le dites
help-due-end = Signer que ce n’est plus suivi
help-trend = Ce que font les grandeurs d’une machine au fil de son temps en service, et quand elles atteignent leurs limites
help-job = Intervention sur une machine : de ce que vous avez fait à la liste qui s’ensuit
help-job-choices = Liste des interventions possibles sur une machine
help-job-plan = Montrer ce qu’impliquent des interventions : ce qui se dépose et se repose dans quel ordre, ce qu’il faut remplacer, ce qui s’ensuit
help-job-begin = Signer le début d’une intervention ; la machine reste au sol jusqu’à la remise en service
help-second-look = Une autre personne examine les assemblages critiques d’une intervention, depuis un autre téléphone ou dossier, ou ici
help-second-look-ask = Afficher le texte à donner à l’autre personne
help-second-look-look = Examiner ce qu’une autre personne demande, signer ce que vous voyez, afficher le texte à rendre
help-second-look-take = Importer le texte que l’autre personne a rendu
help-second-look-here = Faire examiner par une autre personne de ce dossier de données, qui signe avec son propre code PIN
help-release = Signer que les inspections d’une intervention sont complètes (code 1 : il manque quelque chose)
help-tool = Outils dynamométriques : étendue, étalonnage, s’ils peuvent servir
help-tool-add = Inscrire un outil dynamométrique (signé)
help-tool-change = Décrire de nouveau un outil dynamométrique (signé) : réétalonné, tombé
help-tool-list = Liste des outils dynamométriques, et si chacun peut servir aujourd’hui
help-component = Composants qui ont leur propre temps en service
help-component-fit = Monter un composant nouveau ici, avec le temps qu’il apporte (signé)
help-component-move = Déposer un composant d’une machine et le monter sur une autre (signé)
help-component-off = Déposer un composant d’une machine (signé)
help-fleet = Ce que disent ensemble tous les examens d’ici : combien durent les composants, comment chacun regarde, ce que valent les points
help-fleet-parts = Liste des composants dont la vie peut être dite
help-fleet-life = Dire combien durent les composants d’un type, et tous les combien les examiner
help-fleet-looking = Dire comment chacun regarde, à côté des autres aux mêmes points
help-fleet-lists = Dire ce que valent les points des listes, pour leur auteur
help-person = Autres personnes qui signent dans ce dossier de données
help-person-add = Ajouter une autre personne, avec sa propre clé et son propre code PIN
help-person-list = Liste des autres personnes
help-person-begin = Commencer dans ce dossier de données comme un autre appareil à vous, par le code de votre premier
help-school = Une école : la fonder, y entrer, ses membres, ses listes, son tableau
help-school-create = Fonder une école (signé) ; ce dossier de données en devient la racine
help-school-show = Montrer l’école telle que cet appareil la connaît
help-school-code = Afficher le texte que cet appareil montre pour être admis
help-school-admit = Admettre un appareil par le texte qu’il montre, ou un qui attend au serveur (signé)
help-school-waiting = Liste de ceux qui attendent au serveur d’être admis
help-school-join = Entrer par le texte que la racine montre en retour, ou par l’adresse du serveur (signé)
help-school-leave = Quitter l’école (signé) ; vos machines vous suivent
help-school-members = Liste de tous ceux qui sont ou furent membres, avec leurs appareils
help-school-role = Donner à un membre un autre rôle ou un dernier jour (signé)
help-school-end = Mettre fin à une adhésion (signé) ; ce que la personne a signé reste valable
help-school-revoke = Mettre fin à la clé d’un téléphone perdu (signé)
help-school-hand-over = Transmettre la racine à l’appareil d’un membre (signé)
help-school-vouch = Signer qu’un autre appareil est aussi à vous, et afficher le texte à lui montrer
help-school-file = Écrire ce qu’il faut à un serveur pour servir cette école
help-school-publish = Publier des listes ou des fiches moteur aux membres (signé ; code 1 : elles ont un défaut)
help-school-board = Montrer toutes les machines de l’école, celles à traiter d’abord en tête
help-school-sign-in = Confirmer que c’est vous qui vous connectez au tableau de l’école
help-school-sign = Lire ce qui a été préparé au tableau, et le signer (avec --json, code 1 : seulement lu ; --agreed signe)
help-sync = Échanger des enregistrements avec le serveur de l’école (code 1 : l’école n’a pas encore admis cet appareil)
help-receipts = Vérifier tout ce pour quoi le serveur s’est engagé par signature (code 1 : cela ne correspond pas)
help-receipts-code = Afficher le texte pour comparer avec un autre membre
help-receipts-compare = Comparer avec ce que montre un autre membre : le serveur vous dit-il la même chose à tous deux ?
help-refused = Liste de ce qui est venu d’un serveur sans être un enregistrement
help-confirm-limit = Signer une limite telle que la donne le manuel du constructeur
help-correct = Signer une nouvelle déclaration sur un constat ; la première reste telle que signée
help-put-aside = Clore une liste sans la signer ; ses réponses sont gardées, non signées
help-print = Écrire le compte rendu d’une inspection ou d’une intervention, en PDF
help-label = Écrire une étiquette à coller sur une machine, en PDF ; son code ouvre la machine dans l’application
help-csv = Écrire tout ce qui concerne une machine dans un tableau (CSV)
help-calendar = Écrire les échéances d’une machine dans un fichier de calendrier (iCalendar)
help-export = Écrire les enregistrements d’une machine dans un fichier que n’importe qui peut vérifier
help-import = Importer les enregistrements d’un fichier (code 1 : une ligne n’a pas été acceptée), ou un relevé moteur
help-import-readings = Importer les valeurs d’un relevé moteur de températures et de régimes (CSV), signé
help-verify = Vérifier des fichiers d’enregistrements avec ces seuls fichiers (code 1 : quelque chose ne va pas)
help-serve-ui = Montrer les écrans dans un navigateur sur cet ordinateur
help-server = Servir une école : échanger les enregistrements de ses membres, montrer son tableau (jusqu’à l’arrêt)
help-backup = Écrire tout ce que garde un serveur dans un fichier, pendant qu’il tourne
help-restore = Remplir un serveur vide depuis une sauvegarde : tout, ou rien
help-board-passphrase = Poser la phrase secrète avec laquelle on peut regarder le tableau, ou la retirer
help-compute = Calculer une chose : JSON en entrée standard, JSON en sortie standard
help-validate = Vérifier fiches moteur, listes de points, graphes d’assemblage, textes et dessins (code 1 : quelque chose ne va pas)
help-rebuild = Tout déduire à nouveau des enregistrements signés

## Help: what follows a verb

help-arg-data = Le dossier avec vos machines et votre clé, ou avec les données d’un serveur ; sans cela, un dossier parmi vos propres données
help-arg-json = Répondre en JSON, pour des programmes
help-arg-machine = Le nom ou l’identifiant de la machine, ou le début de l’un ou de l’autre
help-arg-occasion = Quelle liste : before-flight, second-flight, ou after-service une fois une intervention commencée
help-arg-answers = Réponses d’un fichier JSON : identifiant du point vers identifiant de la réponse, vers une valeur avec son unité, ou vers outil et huitièmes
help-arg-leave-missing = Signer bien que des points obligatoires n’aient pas de réponse dans le fichier : la machine est alors interdite de vol
help-arg-no-sign = S’arrêter avant la signature ; les réponses sont gardées
help-arg-pin-file = Un fichier dont la première ligne est le code PIN ; sans cela il vous est demandé
help-arg-signatory = Votre nom, la première fois que quelque chose est signé dans ce dossier de données
help-arg-name = Le nom que vous donnez à la machine
help-arg-engine = L’identifiant du type de moteur ; « machine engines » en donne la liste
help-arg-hours = Heures moteur
help-arg-flights = Vols
help-arg-reserve-repacked = La date inscrite sur la fiche de pliage du secours, comme 2026-04-30
help-arg-repack-every = Jours jusqu’au prochain repliage, d’après le manuel du secours ; 180 tant que vous n’en dites rien
help-arg-without-reserve = Aucun secours n’est monté
help-arg-weight = Ce qu’elle pèse telle qu’elle vole, voile et secours compris, sans essence, comme "34 kg"
help-arg-wing-least = Le minimum que la voile doit porter avec moteur, poids total volant, comme "95 kg"
help-arg-wing-most = Le maximum qu’elle peut porter avec moteur
help-arg-wing-free-least = Le minimum qu’elle doit porter sans moteur, si son constructeur donne les deux
help-arg-wing-free-most = Le maximum qu’elle peut porter sans moteur
help-arg-wing-document = Le manuel de la voile et son édition, sans quoi sa plage de poids est non confirmée
help-arg-wing-page = La page
help-arg-without-wing-range = On ne sait pas ce que la voile peut porter
help-arg-serial = Un élément et son numéro de série, comme propeller=1234 ; peut être donné plusieurs fois
help-arg-note = Autre chose à savoir
help-arg-record = L’empreinte de l’enregistrement, ou son début
help-arg-point = L’identifiant du point ; « points » et « show » les nomment
help-arg-how = Ce qui a été fait, en une phrase
help-arg-answer = L’identifiant de la réponse qu’il aurait fallu donner
help-arg-reason = Pourquoi la première déclaration était fausse, en une phrase
help-arg-band = L’identifiant de la limite ; « show » les nomme
help-arg-low = Borne inférieure, un nombre avec son unité, comme "125 lbf.in"
help-arg-high = Borne supérieure
help-arg-did = Ce qui a été fait ; « job choices » nomme les interventions ; on peut en donner plusieurs
help-arg-ran = Heures tournées depuis la dernière saisie
help-arg-flown = Vols depuis la dernière saisie
help-arg-tank = Un réservoir d’essence a été consommé ; peut être donné plusieurs fois
help-arg-burned = Essence consommée pendant ces heures, avec son unité, comme "3.2 L" ou "0.8 gal_us"
help-arg-plan = Le plan en JSON, - pour l’entrée standard ; sans lui, on vous montre ce qui est connu, en JSON, pour commencer
help-arg-check = Dire seulement ce qui s’ensuivrait ; ne rien garder
help-arg-reading = La lecture de l’horamètre, à la place des heures tournées
help-arg-title = Ce qu’il y a à faire ; le titre d’une échéance suivie change celle-là
help-arg-item = Ce qui est suivi : son titre ou son identifiant, ou le début de l’un ou de l’autre
help-arg-every-hours = De nouveau à échéance après tant d’heures moteur
help-arg-every-flights = De nouveau à échéance après tant de vols
help-arg-every-tanks = De nouveau à échéance après tant de réservoirs
help-arg-every-days = De nouveau à échéance après tant de jours ; s’il y en a plusieurs, le premier atteint compte
help-arg-tolerance = Retard encore toléré, en pour cent de l’intervalle
help-arg-from-due = Compter la suivante depuis l’échéance, non depuis le jour où c’est fait
help-arg-done-hours = Heures moteur la dernière fois que c’était fait ; maintenant, tant que vous n’en dites rien
help-arg-done-flights = Vols la dernière fois que c’était fait
help-arg-done-on = Le jour où c’était fait la dernière fois, comme 2026-04-30
help-arg-until-hours = Heures moteur jusqu’où cela peut attendre
help-arg-until-flights = Nombre de vols jusqu’où cela peut attendre
help-arg-until-date = Le dernier jour où cela peut attendre, comme 2026-04-30
help-arg-condition = Comment on peut voler d’ici là
help-arg-why-wait = Pourquoi cela peut attendre
help-arg-text = Le texte de l’autre personne, ou @FILE qui le contient ; @- pour l’entrée standard
help-arg-joint = Ce qui est vu à un assemblage ; un pour chacun, ou aucun pour être interrogé
help-arg-person = Qui examine ; « person list » les nomme
help-arg-person-name = Le nom sous lequel les autres connaissent cette personne
help-arg-tool = Le nom ou l’identifiant de l’outil, ou le début de l’un ou de l’autre
help-arg-tool-name = Le nom que vous donnez à l’outil, ou son numéro
help-arg-mark-low = Plus petite graduation avec son unité, comme "5 N.m"
help-arg-mark-high = Plus grande graduation, dans la même unité
help-arg-deviation = Écart permis, en pour cent de la lecture ; celui de la norme tant que vous n’en dites rien
help-arg-calibrated = La date inscrite sur son certificat, comme 2026-04-30
help-arg-calibrate-days = Jours entre deux étalonnages
help-arg-calibrate-clicks = Déclics entre deux étalonnages
help-arg-clicks = Déclics depuis le dernier étalonnage
help-arg-dropped = Il est tombé ou a été forcé depuis
help-arg-part = Quel élément de la machine c’est ; « machine engines » les nomme
help-arg-component = Le nom du composant, son numéro de série ou son identifiant
help-arg-component-type = Le type de composant, comme exhaust ; « fleet parts » en donne la liste
help-arg-chance = Le risque accepté d’une défaillance inaperçue entre deux examens ; celui de l’école, sinon 0.02
help-arg-in-force = L’intervalle en vigueur, en heures moteur ; celui de l’école tant que vous n’en dites rien
help-arg-component-name = Le nom que vous donnez au composant
help-arg-serial-number = Son numéro de série
help-arg-own-hours = Heures qu’il a déjà tournées
help-arg-own-flights = Vols qu’il a déjà faits
help-arg-other-machine = La machine sur laquelle il est monté
help-arg-document = Le manuel et son édition
help-arg-page = La page
help-arg-measure = L’identifiant ou le nom de la grandeur, ou le début de l’un ou de l’autre ; sans cela, toutes
help-arg-plot = La tracer dans ce fichier au lieu de la dire : SVG ou PNG, selon la fin du nom
help-arg-dark = Tracer en clair sur fond sombre
help-arg-to = Le fichier à écrire ; - pour la sortie standard
help-arg-paper = Le format du papier
help-arg-bundles = Fichiers d’enregistrements ; - pour l’entrée standard
help-arg-sheets = Fichiers du catalogue ; sans aucun, le catalogue du programme lui-même
help-arg-computation = Lequel ; un nom inconnu en donne la liste
help-arg-demo-school = Fonder l’école inventée dans ce dossier de données (signé)
help-arg-all = Écrire tout ce dossier de données dans ce fichier ; - pour la sortie standard
help-arg-brought = Un fichier d’enregistrements ; - pour l’entrée standard
help-arg-log = Le relevé en CSV, avec une ligne d’en-têtes ; - pour l’entrée standard
help-arg-mapping = Comment lire ses colonnes : du JSON, ou le fichier qui le contient ; « --dry-run --json » montre ce qui servirait
help-arg-then-hours = Les heures moteur de la machine au moment du relevé ; celles de maintenant, tant que vous n’en dites rien
help-arg-on = Le jour du relevé, comme 2026-04-30 ; celui que dit le fichier, sinon aujourd’hui, tant que vous n’en dites rien
help-arg-outside = La température extérieure, comme "12 Cel" ; celle que dit le fichier, tant que vous n’en dites rien
help-arg-yes = Lire comme montré sans nouvelle question : vous l’avez regardé
help-arg-dry-run = Montrer comment il serait lu et ce qu’il dit ; ne rien signer
help-arg-put-away = Ranger cette ligne, après l’avoir examinée
help-arg-code = Le texte de l’autre appareil, ou @FILE qui le contient ; @- pour l’entrée standard
help-arg-board-code = Le texte du code du tableau, ou @FILE qui le contient ; @- pour l’entrée standard
help-arg-agreed = Signer sans nouvelle question : vous l’avez lu
help-arg-join = Le texte que la racine montre en retour (ou @FILE qui le contient), ou l’adresse du serveur
help-arg-school-code = Le code de l’école, tel que quelqu’un de l’école le lit à voix haute ; sans cela il vous est demandé
help-arg-school-name = Comment on appelle l’école
help-arg-school-file = Le fichier à écrire ; - pour la sortie standard
help-arg-waiting = Quelqu’un qui attend au serveur : son code, ou son nom (on vous demande alors de comparer le code)
help-arg-role = Ce que la personne a le droit de faire
help-arg-until = Son dernier jour, comme 2026-04-30 ; sans cela, ouvert
help-arg-member = Le nom du membre, ou son début
help-arg-device = Le code de l’appareil, ou le nom de son détenteur s’il n’en a qu’un ; « school members » en donne la liste
help-arg-why-end = Pourquoi cela prend fin, en quelques mots
help-arg-publication = Le nom sous lequel les membres connaissent ces fichiers ; le même titre encore en est la version suivante
help-arg-publish-files = Fichiers tels qu’ils se trouvent dans le catalogue : …/engines/x.toml, …/fragments/x.toml, …/texts/en/x.ftl
help-arg-publish-note = Ce qu’il y a de nouveau
help-arg-database = La base de données du serveur : postgres://… ; sans cela, un fichier dans le dossier de données
help-arg-listen = Où écouter
help-arg-founding-file = Ce que « school file » a écrit ; nécessaire au premier démarrage seulement
help-arg-public-address = L’adresse par laquelle les appareils connaissent le serveur, comme https://school.example
help-arg-tls-cert = Le certificat et ceux entre lui et une racine (PEM)
help-arg-tls-key = La clé du certificat (PEM)
help-arg-plain-http = Sans chiffrement bien que d’autres machines puissent l’atteindre : pour les réseaux fermés seulement
help-arg-behind-proxy = Un mandataire est devant, transmet Host et dit pour qui il demande (X-Forwarded-For)
help-arg-backup-to = Le fichier à écrire ; aucun fichier existant n’est écrasé
help-arg-backup-from = La sauvegarde
help-arg-passphrase-file = Un fichier dont la première ligne est la phrase secrète ; - pour l’entrée standard
help-arg-off = Plus personne ne regarde par phrase secrète
help-arg-port = Le port ; 0 en prend un libre (7420 s’il est libre, sinon n’importe lequel)

## Signing

cli-pin = Code PIN ({ $name }) :
cli-pin-new = Choisissez un code PIN ({ $name }), six chiffres au moins :
cli-pin-again = Le même code PIN :
cli-owner = Propriétaire
cli-begun = { $name } signe désormais dans ce dossier de données. L’empreinte de la clé est { $device }.
cli-added = Inscrite et signée. « walk » en fait le tour, « verdict » dit si elle peut voler.
cli-changed = Décrite de nouveau et signée.
cli-rectified = Remis en état et signé.
cli-corrected = Corrigé et signé ; la première déclaration reste dans son enregistrement.
cli-limit-confirmed = La limite est saisie et signée.

## Machines and points

cli-machine = { $engine }, { $hours } h, { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }
cli-invented = {" "}(inventée)
cli-machine-walk = Commencé et pas signé : { $list }, { $done } sur { $of } examinés
cli-no-machines = Aucune machine ici. Ajoutez la vôtre avec « machine add », ou essayez avec « demo ».
cli-demo = Ces machines sont inventées : elles n’appartiennent à personne.
cli-parts = éléments : { $parts }
cli-points = { $points ->
    [one] { $points } point
   *[other] { $points } points
  } en tout.
cli-may-be-left = (facultatif)
cli-tightened = serré : assemblage { $joint }, { $nuts ->
    [one] { $nuts } élément de fixation
   *[other] { $nuts } éléments de fixation
  } ; { $band }
cli-measured = une valeur, en { $unit } ; bon : { $band }
cli-open = Ouvert :
cli-limits = Limites :
cli-job = Intervention pas remise en service :
cli-due = Échéances :
cli-components = Composants :
cli-timeline = Historique, le plus récent d’abord :

## What an answer means

cli-means-not-fitted = non monté
cli-means-serviceable = en état
cli-means-watch = à surveiller
cli-means-unserviceable = hors service

## Walking

cli-walk-opened = { $list } : { $machine }, { $done } sur { $of } examinés.
cli-walk-keys = Tapez le numéro de ce que vous voyez, ou la valeur. Aussi : b annule la dernière réponse, l laisse ce point pour l’instant, n suivi de mots écrit une note, q arrête (tout est gardé).
cli-good = Bon : { $words }
cli-bad = Mauvais : { $words }
cli-why = Pourquoi : { $words }
cli-caution = ATTENTION : { $words }
cli-note-well = À noter : { $words }
cli-noted = Votre note : { $words }
cli-band = Plage : { $band }. { $source }
cli-tighten = { $nuts ->
    [one] { $nuts } élément de fixation
   *[other] { $nuts } éléments de fixation
  }, à { $band }. { $source }
cli-note-kept = La note est gardée.
cli-prompt = 1 à { $most }, b, l, n, q, ? >
cli-prompt-value = Valeur en { $unit } (ou avec une autre unité), b, l, n, q, ? >
cli-prompt-tool = Outil dynamométrique (nom ou identifiant ; « tool list » les montre), b, l, n, q, ? >
cli-prompt-adapter = Quelque chose entre outil et écrou ? Levier, adaptateur, angle, comme 350 mm, 50 mm, 0 (Entrée : rien) >
cli-bench = Réglez l’outil sur { $setting } ({ $other }) au plein couple.
cli-prompt-because = Pourquoi l’utiliser malgré tout ? (Entrée : prendre un autre outil) >
cli-step = { $round }, écrou { $nut } : { $setting } (Entrée au déclic, q quitte l’assemblage) >
cli-step-moved = { $round }, écrou { $nut } : { $setting }. De combien avant le déclic, en huitièmes de tour (q quitte l’assemblage) >
cli-prompt-reading = Ce que l’outil indique, avec son unité (Entrée : il n’indique rien) >
cli-prompt-insist = S’il en est vraiment ainsi : pourquoi ? (Entrée : le redire tel qu’il est maintenant) >
cli-joint-left = Cet assemblage n’est pas encore dit : recommencez-le au premier écrou.
cli-answered = Gardé : { $words } ({ $means })
cli-not-understood = Ce n’est aucune des réponses.
cli-would-be = Signé maintenant, le verdict serait : { $verdict }.
cli-closing-keys = s signe. Aussi : l va à ce qui a été laissé, le numéro d’un point l’examine de nouveau, b annule la dernière réponse, q arrête (tout est gardé).
cli-closing-keys-unsigned = q arrête (tout est gardé). Aussi : l va à ce qui a été laissé, le numéro d’un point l’examine de nouveau, b annule la dernière réponse.
cli-closing-not-understood = Ce n’est ni une de ces lettres ni le numéro d’un point.
cli-kept = [{ $done }/{ $of }] { $point } : { $words } ({ $means })
cli-found = Constats :
cli-hurried = À la hâte (regarder encore ?) :
cli-left = Pas examiné :
cli-left-grounds = {" "}(obligatoire)
cli-unsigned = Pas signé. { $done ->
    [0] Rien n’a encore reçu de réponse ; la même commande commence ici.
    [one] La seule réponse est gardée ; la même commande continue d’ici.
   *[other] Les { $done } réponses sont gardées ; la même commande continue d’ici.
  }
cli-signed = Signé comme enregistrement { $record }.
cli-put-aside = Mis de côté : { $list }, { $done ->
    [one] { $done } réponse gardée, non signée
   *[other] { $done } réponses gardées, non signées
  }.

## Time, and what falls due

cli-logged = Noté ; cela compte aussitôt.
cli-log-undone = La dernière saisie est annulée.
cli-waiting = { $entries ->
    [one] { $entries } saisie attend
   *[other] { $entries } saisies attendent
  } la prochaine signature.
cli-flight-kept = gardé ; cela compte aussitôt, et votre prochaine signature le signe.
cli-flight-judged = ce qui s’ensuivrait. Rien n’est gardé.
cli-flight-known = rien n’est calculé aujourd’hui. Ceci vaut peut-être encore ; changez-le, et redonnez-le avec --file.
cli-flight-today = voici ce qui a été calculé aujourd’hui. Changez-le, et redonnez-le avec --file.
cli-flight-example = Tout ce qu’un plan peut contenir ; omettez ce que vous ne demandez pas :
cli-flight-pour = Huile pour ce mélange : { $oil }
cli-weights = Poids :
cli-weight = Elle pèse { $weight } telle qu’elle vole, sans essence.
cli-wing-range = Avec moteur, sa voile peut porter de { $low } à { $high }, poids total volant.
cli-wing-range-free = Sans moteur, de { $low } à { $high }.
cli-nothing-due = Aucune échéance n’est suivie. « due keep » en ajoute une.
cli-due-later = plus tard
cli-due-soon = bientôt
cli-due-tolerated = échu, encore toléré
cli-due-over = échu
cli-due-kept = Suivi et signé.
cli-due-done = Fait et signé ; on compte à partir de là.
cli-due-ended = Signé : ce n’est plus suivi.
cli-trend-nothing = Aucune de ses grandeurs n’a encore de mesure. Faites-en le tour, intervenez-y, ou importez les valeurs d’un relevé moteur (« import readings »).
cli-trend-row = { $title } ({ $id }), { $n ->
    [one] { $n } mesure
   *[other] { $n } mesures
  }{ $drifts ->
    [yes] : agissez
   *[no] {""}
  }
cli-trend-band = Sa plage :
cli-trend-readings = Mesures :
cli-trend-reading = { $hours } h : { $words }{ $far ->
    [yes] , loin de la ligne
   *[no] {""}
  }
cli-trend-marks = Ce qui a été fait :
cli-trend-mark = { $hours } h : { $words }
cli-nothing-open = Rien n’est ouvert.
cli-deferred = Peut attendre, signé.

## Work

cli-take-off = Dépose :
cli-plan-part-off = { $words } : déposer
cli-plan-joint-undone = { $words } : défaire
cli-plan-part-on = { $words } : reposer
cli-plan-joint-done-up = { $words } : refaire
cli-refit = Repose :
cli-renew = À remplacer :
cli-count-tools = À recompter à la fin :
cli-independent = Une autre personne doit examiner :
cli-follow-ups = À échéance plus tard :
cli-plan-points = { $points ->
    [one] { $points } point
   *[other] { $points } points
  } sur la liste qui s’ensuit.
cli-job-begun = Commencé et signé. La machine reste au sol jusqu’à « release ». Ensuite : « walk MACHINE --occasion after-service ».
cli-job-ready = Il ne manque rien : la remise en service est possible.
cli-job-independent = Une autre personne examine : { $joint } [{ $id }]
cli-not-released = La remise en service n’est pas encore possible :
cli-released = Remis en service et signé.
cli-second-asked = Donnez ce texte à l’autre personne ; elle y répond avec « second-look look ».
cli-second-what = Une autre personne vous demande d’examiner { $machine } : { $title }.
cli-prompt-joint = { $joint } : comme il doit être (g) ou à reprendre (w), et un mot de plus si vous voulez >
cli-second-signed = Signé. Rendez ce texte ; il s’importe avec « second-look take ».
cli-second-taken = Importé : une autre personne a examiné.
cli-second-here = Signé : une autre personne a examiné.
cli-person-added = { $name } signe aussi dans ce dossier de données, avec son propre code PIN.
cli-no-people = Personne d’autre ne signe dans ce dossier de données. « person add » ajoute quelqu’un.
cli-tool = { $low } à { $high }, ±{ $deviation } %, { $clicks ->
    [one] { $clicks } déclic
   *[other] { $clicks } déclics
  } depuis son étalonnage
cli-tool-usable = Peut servir.
cli-tool-refused = Ne doit pas servir.
cli-no-tools = Aucun outil dynamométrique ici. Ajoutez le vôtre avec « tool add ».
cli-tool-added = Inscrit et signé.
cli-tool-changed = Décrit de nouveau et signé.
cli-component-off = {" "}(déposé)
cli-component-fitted = Monté et signé.
cli-component-moved = Déposé, monté sur l’autre machine, et signé.
cli-component-taken-off = Déposé et signé.

## The fleet

cli-fleet-nothing = Il n’y a encore ici aucun examen d’un composant. Faites le tour d’une machine et signez, ou importez des enregistrements.
cli-fleet-nobody = Personne n’a encore signé d’inspection ici, ou vous n’avez pas à voir comment les autres regardent : sur les machines d’une école, ses instructeurs voient tout le monde, et chacun se voit soi-même.
cli-fleet-part = { $part } [{ $id }] : { $machines ->
    [one] { $machines } machine
   *[other] { $machines } machines
  }, { $lives ->
    [one] { $lives } vie
   *[other] { $lives } vies
  }, { $failed ->
    [0] aucune achevée hors service
    [one] { $failed } achevée hors service
   *[other] { $failed } achevées hors service
  }
cli-fleet-steps = Encore en état, sans forme de vie supposée (intervalle à 95 %) :
cli-fleet-step = à partir de { $hours } h : { $share } % ({ $low } à { $high })
cli-fleet-fitted = Encore en état, selon la courbe ajustée (intervalle à 95 %) :
cli-fleet-at = à { $hours } h : { $share } % ({ $low } à { $high })
cli-fleet-intervals = Comment les intervalles ont été faits :
cli-fleet-person = { $name }{ $you ->
    [yes] {" "}(vous)
   *[no] {""}
  } : { $inspections ->
    [one] { $inspections } inspection
   *[other] { $inspections } inspections
  }, { $looks ->
    [one] { $looks } examen
   *[other] { $looks } examens
  } à des points que d’autres examinent aussi
cli-fleet-seconds = Temps médian sur un point : { $own } s{ $beside ->
    [yes] , les autres { $others } s
   *[no] {""}
  }
cli-fleet-hurried = À la hâte : { $own } %{ $beside ->
    [yes] , les autres { $others } %
   *[no] {""}
  }
cli-fleet-found = Constats en 100 examens : { $own }{ $beside ->
    [yes] , les autres { $others }
   *[no] {""}
  }
cli-fleet-hurried-points = Le plus souvent à la hâte : { $points }

## The school

cli-begun-as = { $name } signe aussi dans ce dossier de données. Ensuite : « school code », montré au premier appareil (« school vouch »).
cli-no-school = Cet appareil n’appartient à aucune école.
cli-own-code = Le code de cet appareil : { $code }
cli-school-code = Le code de l’école : { $code }
cli-school-role = Vous êtes : { $role }
cli-school-root = Vous êtes : { $role } ; cet appareil est la racine de l’école
cli-school-address = Serveur : { $address }
cli-members = Membres :
cli-enrolled-machines = Machines relevant de l’école :
cli-published = Publié :
cli-published-version = { $title }, version { $version }
cli-superseded = {" "}(n’est plus utilisé)
cli-device = appareil { $code }
cli-device-root = appareil { $code }, la racine de l’école
cli-device-ended = appareil { $code }, sa clé a pris fin
cli-to-send = En attente d’envoi : { $records ->
    [one] { $records } enregistrement
   *[other] { $records } enregistrements
  }{ $photos ->
    [0] .
    [one] {", "}{ $photos } image.
   *[other] {", "}{ $photos } images.
  }
cli-stuck = Pas accepté par le serveur : { $kind }. { $words }
cli-applicant = { $name }, code { $code }
cli-code-shown = Montrez ce texte à l’autre appareil, et lisez ce code à voix haute : { $code }
cli-answer = Signé. Montrez ce texte en retour ; il s’importe avec « school join ».
cli-admitted = Admis et signé.
cli-nobody-waits = Personne n’attend d’être admis.
cli-prompt-applicant = { $name } attend. Le code lu à voix haute est-il bien : { $code } ? (y : oui, n : non) >
cli-prompt-school = C’est « { $name } ». Le code que lit l’école est-il bien : { $code } ? (y : oui, n : non) >
cli-prompt-sign = Signer ? (y : oui, n : non) >
cli-left-school = Départ signé. Vos machines ne sont de nouveau qu’à vous.
cli-enrolled = Placée sous l’école, signé.
cli-withdrawn = Retirée de l’école, signé.
cli-desk-where = { $school }, { $address }
cli-signed-in = Connecté. Continuez au tableau.
cli-draft-signed = Signé.
cli-receipts-code = Montrez ce texte à un autre membre ; il se compare avec « receipts compare ».
cli-none-refused = Rien n’a été refusé.
cli-board-second = Attendent le regard d’une autre personne :
cli-board-owner = à { $name }
cli-board-job = Intervention pas remise en service : { $title }

## The server

cli-server-listens = Le serveur de l’école répond à
cli-backed-up = Sauvegardé dans { $file }, et vérifié.
cli-restored = Restauré depuis { $file }.
cli-backup-has = École { $school } : { $records ->
    [one] { $records } enregistrement
   *[other] { $records } enregistrements
  }, { $photos ->
    [one] { $photos } image
   *[other] { $photos } images
  }.
cli-passphrase-set = La phrase secrète est posée. Elle permet de regarder le tableau, et de ne rien signer ; qui était entré par une ancienne est dehors.
cli-passphrase-off = Plus personne ne regarde le tableau par phrase secrète.

## Verdicts and records

cli-state-fit = apte
cli-state-limited = limite
cli-state-grounded = interdit
cli-clears = Pour le lever : { $clears }
cli-record = enregistrement { $id }
cli-point = point { $id }
cli-limit = limite { $id }
cli-record-by = Signé par { $by } le { $when } ; appareil { $device }, numéro { $seq } de sa chaîne
cli-before = Dit d’abord, puis annulé : { $words }

## Files

cli-exported = { $records ->
    [one] { $records } enregistrement écrit
   *[other] { $records } enregistrements écrits
  } dans { $file }.
cli-written = Écrit dans { $file }.
cli-key-of = { $name } signe avec la clé { $device }
cli-valid = { $files ->
    [0] Rien de fautif dans le catalogue du programme.
    [one] Rien de fautif dans ce fichier.
   *[other] Rien de fautif dans ces { $files } fichiers.
  }
cli-rebuilt = Déduit à nouveau : { $machines ->
    [one] { $machines } machine
   *[other] { $machines } machines
  }.
cli-compute-example = Donnez du JSON en entrée standard, par exemple : { $example }

## Engine logs

cli-log = { $name } est lu ainsi :
cli-log-marks = entre les champs { $separator }, devant les décimales { $decimal }
cli-log-tab = une tabulation
cli-log-semicolon = un point-virgule
cli-log-comma = une virgule
cli-log-point = un point
cli-log-time = « { $column } » : temps, sous la forme { $form }
cli-log-column = « { $column } » : { $channel }, en { $unit }
cli-log-unused = non lues : { $columns }
cli-log-remembered = Un fichier avec les mêmes en-têtes a déjà été lu ainsi.
cli-log-rows = { $rows ->
    [one] { $rows } ligne a été lue
   *[other] { $rows } lignes ont été lues
  }, { $lasts } en tout. Ce qu’elles disent :
cli-log-unread = Dans { $rows ->
    [one] { $rows } ligne
   *[other] { $rows } lignes
  }, quelque chose n’a pas pu être lu ; le premier cas : { $first }
cli-log-windows-1252 = Le fichier n’est pas en UTF-8. Il a été lu en Windows-1252 : voyez si les en-têtes sont justes.
cli-prompt-log = Est-ce bien ainsi ? (y : oui, n : non) >
cli-log-taken = Les valeurs du relevé sont importées et signées :

## Faults: what went wrong, and what to do

fault-no-data-folder = Ce système ne nomme aucun dossier pour vos données.
    .hint = Donnez-en un avec --data DIR.
fault-no-such-record = Il n’y a pas d’enregistrement « { $what } » ici.
    .hint = « show MACHINE » nomme les enregistrements ; donnez au moins quatre caractères de l’un d’eux.
fault-ambiguous-record = « { $what } » convient à plusieurs enregistrements : { $which }
    .hint = Donnez plus de caractères de celui que vous voulez.
fault-signatory-other = Ici c’est { $name } qui signe, pas { $given }.
    .hint = Omettez --signatory, ou choisissez un autre dossier de données avec --data.
fault-pins-differ = Les deux codes PIN diffèrent.
    .hint = Saisissez deux fois le même code PIN.
fault-pin-file-empty = Il n’y a pas de code PIN dans { $file }.
    .hint = Sa première ligne doit être le code PIN, et rien d’autre.
fault-answer-unreadable = La réponse à « { $point } » est illisible : { $why }
    .hint = Donnez l’identifiant de la réponse, ou {"{"} "value": 4, "unit": "L" {"}"} ; avec une note, {"{"} "answer": "…", "note": "…" {"}"} ; un assemblage serré, {"{"} "tool": "…", "eighths": [1, 1, 1, 1] {"}"}.
fault-not-agreed = Aucun accord n’a été donné : rien n’a été signé.
    .hint = Comparez ou lisez d’abord ; relancez ensuite et répondez y. Avec --json, donnez le code lui-même, ou --agreed.
fault-log-not-confirmed = Personne n’a confirmé comment ce relevé est lu : rien n’a été signé.
    .hint = Regardez ce que montre --dry-run. Si c’est juste, relancez et répondez y, ou donnez --yes ; sinon, donnez --mapping.
fault-log-mapping-unread = La lecture des colonnes (--mapping) est illisible : { $why }
    .hint = Prenez ce que « --dry-run --json » montre sous "mapping", et changez-le.
fault-school-other = L’école à cette adresse est « { $name } » avec le code { $code }, pas { $given }.
    .hint = Redemandez à l’école son adresse et son code.
fault-server-no-school = Ce serveur n’a pas encore d’école.
    .hint = Écrivez son fichier sur l’appareil racine avec « school file -o FILE », et donnez-le avec --school FILE.
fault-server-several-schools = Cette base de données a plus d’une école.
    .hint = Donnez à chaque serveur sa propre base de données.
fault-server-not-a-school = Le fichier de l’école est inutilisable : { $why }
    .hint = Écrivez-le de nouveau sur l’appareil racine avec « school file -o FILE ».
fault-server-other-school = Ce serveur sert l’école { $here }, pas { $given }.
    .hint = Donnez à l’autre école un serveur avec son propre dossier de données.
fault-server-in-the-open = D’autres machines peuvent atteindre { $address }, et rien n’y serait chiffré.
    .hint = Donnez --tls-cert et --tls-key, ou écoutez sur 127.0.0.1 derrière un mandataire qui a un certificat. Là où le réseau est fermé aux autres, dites --plain-http.
fault-server-certificate = Le certificat ou sa clé sont inutilisables : { $why }
    .hint = Les deux sont des fichiers PEM, et vont ensemble.
fault-server-stopped = Le serveur s’est arrêté : { $why }
    .hint = Rien de ce qui a été confirmé n’est perdu ; relancez-le.
fault-server-damaged = Les données du serveur sont endommagées : { $why }
    .hint = Laissez-les telles quelles, et restaurez la dernière sauvegarde dans un nouveau dossier de données.
fault-server-database = La base de données du serveur : { $why }
    .hint = Remédiez-y et réessayez ; rien n’est fait à moitié.
fault-restore-not-empty = Il y a déjà des enregistrements là où la sauvegarde doit aller.
    .hint = Restaurez dans un nouveau dossier de données ou une nouvelle base de données.
fault-backup-exists = { $file } existe déjà.
    .hint = Nommez un autre fichier : une sauvegarde n’en écrase jamais un.
fault-not-a-backup = { $file } n’est pas une sauvegarde : { $why }
    .hint = Donnez un fichier que « backup » a écrit.
fault-passphrase-short = Une phrase secrète a au moins { $least } lettres.
    .hint = Prenez quelques mots qui ne vont pas ensemble.
fault-none-to-name = Il n’y a pas de « { $what } » : il n’y en a encore aucun ici.
    .hint = Ajoutez-en d’abord un ; « --help » montre comment.
fault-not-named = Il n’y a pas de « { $what } » parmi : { $known }
    .hint = Donnez l’identifiant, le nom, ou le début de l’un ou de l’autre.
fault-ambiguous-name = « { $what } » convient à plusieurs : { $which }
    .hint = Donnez une plus grande part de l’identifiant, ou le nom entier.
fault-joints-untold = Rien n’a été dit de : { $joints }
    .hint = Dites --joint JOINT=good ou --joint JOINT=wanting pour chacun d’eux.
fault-joint-unreadable = « { $text } » ne dit rien d’un assemblage.
    .hint = Dites JOINT=good ou JOINT=wanting.
fault-tool-unchanged = L’outil est déjà décrit ainsi.
    .hint = Donnez ce qui est à changer ; rien n’a été signé.
fault-eighths = « { $text } » n’est pas un nombre de huitièmes de tour.
    .hint = Tapez un nombre entier : 0 si le déclic est venu aussitôt, 2 pour un quart de tour.
fault-adapter = « { $text } » n’est pas un adaptateur.
    .hint = Donnez le levier, la longueur de l’adaptateur et l’angle entre eux : 350 mm, 50 mm, 0.
fault-quantity = « { $text } » n’est pas une valeur avec une unité.
    .hint = Donnez un nombre avec un point décimal, et une unité : 12.5 N.m. Unités : { $units }.
fault-serial = « { $text } » n’est pas un élément avec son numéro de série.
    .hint = Donnez les deux, comme propeller=1234 ; « machine engines » nomme les éléments.
fault-nothing-changed = La machine est déjà décrite ainsi.
    .hint = Donnez ce qui est à changer ; rien n’a été signé.
fault-nothing-begun = Aucune liste de ce genre n’a été commencée sur cette machine.
    .hint = « machine list » montre les listes commencées et pas signées.
fault-more-begun = Plus d’une liste a été commencée : { $which }
    .hint = Dites laquelle avec --occasion.

## The screens in a browser

fault-not-this-server = Cette adresse n’est pas celle de ce programme.
    .hint = Ouvrez l’adresse que le programme a affichée au démarrage.
fault-token-used = Cette adresse a déjà été ouverte ; elle ne sert qu’une fois.
    .hint = Relancez le programme : il en affiche une nouvelle.
fault-not-let-in = Ce navigateur n’a pas ouvert l’adresse du programme.
    .hint = Ouvrez dans ce navigateur l’adresse que le programme a affichée. Si elle a été ouverte ailleurs, relancez le programme : il en affiche une nouvelle.
fault-no-such-page = Cette page n’existe pas.
    .hint = Revenez à la première page.
fault-ui-not-built = Les écrans n’ont pas été intégrés à ce programme.
    .hint = Lancez « make ui », puis compilez et relancez le programme.
fault-call-too-large = C’est plus grand que 64 Mo.
    .hint = Prenez une image ou un fichier plus petit.
