# French: record sheets, labels, tables, calendars.

fault-no-such-paper = Il n’y a pas de papier « { $paper } » ici.
    .hint = Demandez a4 ou letter.
fault-no-sheet = Il n’y a de compte rendu que d’une inspection ou d’une intervention.
    .hint = Choisissez dans l’historique de la machine une inspection, une intervention, son second regard ou sa remise en service.

## The record sheet

paper-inspection = Compte rendu d’inspection
paper-work = Compte rendu d’intervention
paper-machine = Machine
paper-engine = Moteur
paper-serials = Numéros de série
paper-owner = Inscrite par
paper-invented = Inventé
paper-invented-words = Cette machine et son historique n’existent que dans la démonstration.
paper-none-written = Aucun inscrit
paper-service = { $hours } heures moteur, { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }
paper-service-then = Temps en service
paper-date = Date de l’inspection
paper-took = { $to }. Premier point montré { $from }, { $minutes } min.
paper-type = Type et étendue
paper-extent = Liste « { $list } » : { $looked } points examinés sur { $points }. Postes : { $stations }. Liste telle que composée : { $digest }.
paper-outcome-serviceable = Chaque point exigé par la liste a été examiné, et rien n’a été trouvé qui retienne la machine au sol ou doive être surveillé.
paper-outcome-watch = Rien n’a été trouvé qui retienne la machine au sol. { $watch ->
    [one] Un point est
   *[other] { $watch } points sont
  } à surveiller.
paper-outcome-unserviceable = Inapte au vol : { $unserviceable ->
    [one] un point trouvé
   *[other] { $unserviceable } points trouvés
  } hors service{ $watch ->
    [0] .
    [one] , et un à surveiller.
   *[other] , et { $watch } à surveiller.
  }
paper-outcome-missed = Incomplet : des points exigés par la liste n’ont pas été examinés.
paper-outcome-released = Remis en service : les inspections de cette intervention sont complètes.
paper-outcome-open = Pas remis en service. { $lacks }
paper-wanting = Trouvé à reprendre
paper-open = Ouvert sur cette machine le { $day }
paper-nothing-open = Rien n’est ouvert.
paper-findings = Ce qui a été examiné, et ce qui a été vu
paper-points-left = Pas examiné
paper-left = Laissé de côté
paper-left-must = Laissé de côté, bien que la liste l’exige
paper-interruptions = Interruptions, et points passés vite
paper-no-interruptions = Aucun : aucun point n’a été redemandé, et aucun n’a reçu sa réponse en bien moins de temps qu’un examen n’en demande.
paper-stepped-back = { $at } : absence de { $minutes } min, ont donc été redemandés : { $titles }.
paper-hurried = { $points ->
    [one] Un point a reçu sa réponse
   *[other] { $points } points ont reçu leur réponse
  } en bien moins de temps qu’un examen n’en demande, et la signature a été donnée malgré tout : { $titles }.
paper-hurried-all = Les { $points } points ont tous reçu leur réponse en bien moins de temps qu’un examen n’en demande, et la signature a été donnée malgré tout.
paper-band = Limite { $band }. { $source }
paper-torque = { $tool } réglé sur { $setting } ; avec son écart, chaque écrou a reçu entre { $least } et { $most }. Rotation avant le déclic, en huitièmes de tour, écrou par écrou : { $eighths }.
paper-reading = Lu : { $reading } à l’écrou.
paper-override = L’outil a servi malgré une objection : { $because }
paper-note = Note : { $note }
paper-photos = { $count ->
    [one] Image
   *[other] Images
  }, par empreinte : { $photos }
paper-before = Réponse antérieure, annulée : { $words }
paper-corrected = Corrigé plus tard : { $words }. Motif : { $reason }
paper-rectified = Remis en état le { $day } par { $person } : { $how }
paper-means-serviceable = en état
paper-means-watch = à surveiller
paper-means-unserviceable = hors service
paper-means-not-fitted = non monté
paper-means-open = pas examiné

paper-begun = Intervention commencée
paper-begun-words = { $at } par { $person }, à { $service }.
paper-completed = Date d’achèvement
paper-not-released = Pas encore remis en service
paper-description = Description de l’intervention
paper-disturbed = Démonté ou desserré : { $joints }.
paper-independent = À examiner par une autre personne : { $joints }.
paper-follow-up = À échéance plus tard : { $title }, après { $after }.
paper-hours = { $n ->
    [one] { $n } heure moteur
   *[other] { $n } heures moteur
  }
paper-flights = { $n ->
    [one] { $n } vol
   *[other] { $n } vols
  }
paper-tanks = { $n ->
    [one] { $n } réservoir d’essence
   *[other] { $n } réservoirs d’essence
  }
paper-days = { $n ->
    [one] { $n } jour
   *[other] { $n } jours
  }
paper-or = {" "}ou{" "}
paper-first-of = { $words }, au premier atteint
paper-list-after = La liste d’après intervention
paper-second-look = Second regard par une autre personne
paper-looked-by = { $person }, { $at }
paper-joint-good = Comme il doit être
paper-joint-wanting = Trouvé à reprendre
paper-no-second-look = Personne n’a signé de second regard.

paper-statement = Déclaration et signatures
paper-statement-words = Les personnes nommées ci-dessous déclarent avoir examiné ce qui figure sur ce compte rendu, au jour et au temps en service indiqués, et avoir vu ce qui y est écrit. Là où quelque chose est donné comme hors service, à surveiller ou pas examiné, ce compte rendu en est la liste datée.
paper-not-a-certificate = Ceci est la propre déclaration des signataires. Ce n’est pas un certificat légal. Les manuels des constructeurs, les règles locales et la pratique sous licence passent avant tout ; si le travail exige une licence, c’est le titulaire de la licence qui signe, sous sa propre autorité. Une liste complète n’est pas un vol sûr : la météo, le lieu et le pilote, c’est au pilote d’en juger.
paper-compare = C’est l’enregistrement qui compte, pas cette impression. Pour comparer, scannez le code ou cherchez l’empreinte dans l’application : l’enregistrement dit la même chose, et sa signature peut être vérifiée.
paper-signed-inspection = L’inspection
paper-signed-job = Intervention commencée
paper-signed-list = La liste d’après intervention
paper-signed-earlier-list = Une liste antérieure d’après intervention
paper-signed-look = Second regard
paper-signed-release = Remise en service
paper-by = Signé par
paper-at = Signé le
paper-device = Clé de l’appareil (empreinte)
paper-digest = Empreinte de l’enregistrement (SHA-256)
paper-checked = Vérifié à l’impression
paper-by-hand = À la main, là où les règles le demandent
paper-certificate = Certificat ou licence : type et numéro
paper-hand-name = Nom et date
paper-hand-signature = Signature
paper-lacking = Une case vide (□) remplace une lettre que la police de cette impression n’a pas. L’enregistrement contient la lettre elle-même.
paper-code = Un code portant l’empreinte de l’enregistrement, pour le retrouver et comparer.
paper-code-under = Scannez pour comparer. Enregistrement { $digest }
paper-foot = enregistrement { $digest } · imprimé le { $at } · { $machine } · { $title }

## The label

paper-label-code = Un code qui ouvre cette machine dans l’application.
paper-label-hint = Scannez dans l’application pour ouvrir cette machine.

## The table

paper-taken-back = Annulé
paper-unsigned = Pas encore signé.
paper-repacked = Secours replié le
paper-least = Au moins
paper-most = Au plus

## The calendar

paper-calendar = { $machine } : échéances
paper-undated = Sans date, faute de vols en nombre suffisant pour en donner une : { $titles }
paper-due = { $machine } : échéance, { $title }
paper-due-about = { $machine } : échéance à peu près maintenant, { $title }
paper-due-day = D’après le calendrier, le { $day }.
paper-every = À échéance après { $every }.
paper-repack = { $machine } : replier le parachute de secours
paper-repack-words = { $days } jours après le dernier repliage, comme le dit la description de la machine. Le manuel du secours et sa fiche de pliage passent avant tout.
paper-deferral = { $machine } : dernier jour où ceci peut attendre : { $title }
paper-calibration = { $tool } : étalonnage à échéance
paper-calibration-words = À partir de ce jour, son étalonnage n’est plus valable. Un outil tombé ou forcé est étalonné avant de resservir, quel que soit le jour.
