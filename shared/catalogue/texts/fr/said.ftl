# French: what the program says of machines, records and faults.

day = { $day ->
    [1] 1er
   *[other] { $day }
  } { $month ->
    [1] janvier
    [2] février
    [3] mars
    [4] avril
    [5] mai
    [6] juin
    [7] juillet
    [8] août
    [9] septembre
    [10] octobre
    [11] novembre
   *[12] décembre
  } { $year }

decimal-mark = ,

## Cautions that hold always

always-1 = Le champ de l’hélice est une zone dangereuse : capuchon de bougie retiré (électrique : batterie de vol débranchée) et coupe-circuit sur arrêt avant d’approcher une main de l’hélice.
always-2 = Laissez refroidir le moteur avant d’y toucher ou d’y mettre une clé. Les vapeurs d’essence s’enflamment : aucune flamme, et pas de téléphone dans la main qui verse.
always-3 = Les manuels des constructeurs du moteur et de la voile ainsi que les règles locales passent avant tout. Les chiffres donnés ici sont des rappels : s’ils diffèrent, arrêtez-vous et suivez le manuel.
always-4 = Si le travail exige une licence, c’est le titulaire de la licence qui signe, sous sa propre autorité. Une signature faite ici est votre propre déclaration, pas un certificat légal.
always-5 = Une liste complète n’est pas un vol sûr : la météo, le lieu et le pilote, c’est au pilote d’en juger.

## Lists, engines, parts, limits

occasion-before-flight = Visite prévol
occasion-second-flight = Deuxième vol du jour
engine-two-stroke = Moteur deux-temps
engine-four-stroke = Moteur quatre-temps
engine-electric = Moteur électrique
part-frame = Châssis
part-harness = Sellette
part-reserve = Parachute de secours
part-fuel = Circuit d’essence
part-electrics = Circuit électrique
part-engine = Moteur
part-carburettor = Carburateur
part-exhaust = Échappement
part-reduction = Réducteur
part-starter = Lanceur ou démarreur
part-throttle = Poignée de gaz
part-propeller = Hélice
part-cage = Cage et filet
part-wing = Voile
band-fuel-on-board = Essence à bord
band-throttle-free-travel = Garde du câble de gaz
band-propeller-tracking = Écart entre bouts de pale
band-idle-speed = Régime de ralenti
band-full-throttle-speed = Régime plein gaz au sol
band-head-nut-torque = Couple des écrous de culasse
band-cht-cruise = Température de culasse, croisière
band-cht-climb = Température de culasse, montée
band-pack-voltage = Tension de la batterie de vol
term-hours = heures moteur
machine-unnamed = Une machine que personne n’a décrite

source-document = { $document }, { $page }
source-unconfirmed = Non confirmé ({ $why }) : vérifiez dans votre manuel.
source-missing = Non confirmé : saisissez la valeur de votre manuel et la page.
figure-missing = (non confirmé : voyez votre manuel)
figure-unconfirmed = Cette valeur n’est pas confirmée : celle de votre manuel fait foi. Saisissez-la, avec sa page, sur l’écran de la machine.

## The verdict

verdict-fit = Apte au vol
verdict-limited = Apte au vol, avec { $limits ->
    [one] une limite
   *[other] { $limits } limites
  }
verdict-grounded = Interdite de vol

reason-no-description = Personne n’a encore décrit cette machine.
clears-no-description = Décrivez-la : moteur, éléments, secours.
reason-unknown-engine = Le type de moteur « { $engine } » n’est pas dans le catalogue de ce programme : ses limites sont inconnues.
clears-unknown-engine = Choisissez un type de moteur connu, ou ajoutez sa fiche moteur.
reason-never-looked = Personne n’en a encore fait le tour ni signé.
clears-never-looked = Faites-en le tour avant le vol, et signez.
reason-not-today = La dernière visite prévol complète date du { $day }, pas d’aujourd’hui.
clears-not-today = Faites-en le tour aujourd’hui, et signez.
reason-point-missed = Pas examiné : { $title }.
clears-point-missed = Examinez ce point sur une nouvelle liste, et signez.
reason-open-defect = { $title } : { $words }.
clears-open-defect = Remettez en état et signez ce qui a été fait. Un nouvel examen ne suffit pas à lever ce défaut.
clears-passing = Remettez en état, puis examinez de nouveau : un examen signé plus tard lève ce motif.
reason-watch-item = À surveiller. { $title } : { $words }{ $looks ->
    [one] .
   *[other] , vu lors de { $looks } examens.
  }
clears-watch-item = Un examen où l’on ne trouve plus rien lève ce point, ou une remise en état.
reason-reserve-expired = Le repliage du secours est échu depuis le { $day }.
clears-reserve-expired = Faites-le replier, et saisissez la nouvelle date inscrite sur sa fiche.
reason-reserve-unknown = Personne ne sait quand le secours a été replié.
clears-reserve-unknown = Lisez la date sur sa fiche, ou faites-le replier ; saisissez la date.
reason-reserve-soon = Le repliage du secours arrive à échéance le { $day }.
reason-limit-missing = { $band } : personne n’a saisi la limite.
reason-limit-unconfirmed = { $band }, { $value } : confirmé par aucun manuel.
clears-limit = Saisissez la valeur de votre manuel et la page.
reason-newer-record = Un enregistrement d’un genre que cette version ne sait pas lire (« { $kind } »). Il peut avoir son importance.
clears-newer-record = Installez la dernière version de ce programme.
reason-split-word = Deux enregistrements différents de l’appareil de { $person } prétendent à la même place : l’un des deux est peut-être faux.
clears-split-word = Demandez à { $person } ; la clé a pu être copiée ou perdue.
reason-refused-record = { $count ->
    [one] Un enregistrement refusé
   *[other] { $count } enregistrements refusés
  } : la signature ou la clé n’est pas bonne.
clears-refused-record = Demandez à l’auteur de le renvoyer.
reason-clock-doubt = Un enregistrement est daté du { $day }, en avance sur l’horloge de cet appareil.
clears-clock-doubt = Réglez la date et l’heure de cet appareil.
reason-job-open = Intervention pas remise en service : { $title }.
clears-job-open = Terminez sa liste, faites examiner les assemblages critiques par une autre personne, puis signez la remise en service.
clears-job-ready = Tout y est : signez la remise en service.
lack-inspection = Personne n’a encore signé la liste d’après intervention.
lack-points = Pas examiné après l’intervention : { $titles }.
lack-points-other = La liste signée après l’intervention ne contient pas tous ses points.
lack-found = Quelque chose a été trouvé hors service après l’intervention.
lack-second-look = Une autre personne ne l’a pas encore examiné : { $joint }.
lack-wanting = La deuxième personne l’a trouvé à reprendre : { $joint }.
reason-first-flight = Premier vol après intervention ({ $title }) : restez près du terrain, gardez assez de hauteur pour vous poser sans moteur.
reason-after-first-flight = A volé une fois depuis l’intervention ({ $title }), et n’a pas été examinée depuis.
clears-first-flight = Notez ce vol, puis faites le tour de la machine et signez.
reason-follow-up-due = { $by ->
    [tanks] Ne consommez pas plus de { $tanks ->
        [one] { $tanks } réservoir
       *[other] { $tanks } réservoirs
      } avant cette échéance : { $title }.
    [flights] Ne faites pas plus de { $flights ->
        [one] { $flights } vol
       *[other] { $flights } vols
      } avant cette échéance : { $title }.
    [days] À faire dans { $days ->
        [one] { $days } jour
       *[other] { $days } jours
      } : { $title }.
   *[hours] Ne volez pas plus de { $hours } h avant cette échéance : { $title }.
  }
reason-follow-up-over = À faire maintenant, après une intervention antérieure : { $title }.
clears-follow-up = Faites-le, et signez-le comme intervention.
reason-due-soon = Bientôt à échéance : { $title }, dans { $by ->
    [flights] { $flights ->
        [one] { $flights } vol
       *[other] { $flights } vols
      }
    [days] { $days ->
        [one] { $days } jour
       *[other] { $days } jours
      }
    [tanks] { $tanks ->
        [one] { $tanks } réservoir
       *[other] { $tanks } réservoirs
      }
   *[hours] { $hours } h
  }.
reason-due-tolerated = Échéance passée, mais encore tolérée : { $title }.
reason-due-over = Échu : { $title }.
clears-due = Faites-le, et saisissez quand cela a été fait.
reason-deferred = { $title } : { $words }. Peut attendre ; d’ici là : { $condition }
reason-deferral-over = { $title } : { $words }. Cela pouvait attendre, et ce délai est écoulé.
deferred-hours = Valable jusqu’à { $hours } heures moteur.
deferred-flights = Valable jusqu’au vol { $flights }.
deferred-date = Valable jusqu’au { $day }.
fact-seen = { $words } · { $day }, à { $hours } h, { $person }
open-since = { $day }, à { $hours } h, par { $person }

## Walking a list

last-time = La dernière fois : { $words }, à { $hours } h.
stepped-back = Absence de { $minutes } min : { $points ->
    [one] le dernier point est redemandé
   *[other] les { $points } derniers points sont redemandés
  }.
stepped-back-day = Cette liste a été commencée un autre jour : { $points ->
    [one] son point est redemandé
   *[other] ses { $points } points sont redemandés
  }, car personne ne sait ce que la nuit a fait.
caution-cold-wrench = Moteur froid uniquement. Petits filetages dans un métal tendre : arrêtez au déclic, jamais un peu plus. Détendez la clé ensuite.
torque-title = { $joint } : serrer
torque-good = Chaque écrou donne son déclic, dans l’ordre indiqué, et tourne à peu près autant que les autres.
torque-bad = Un écrou qui tourne sans fin, qui force, ou qui tourne nettement plus que les autres.
torque-why = Un serrage inégal laisse entrer de l’air ; un tour de trop arrache le filetage.
torque-spread = { $tool } : avec ses ±{ $deviation } %, cela fait { $low } à { $high } à l’écrou.
torque-done = Réglage { $setting } avec { $tool } ; huitièmes de tour avant le déclic : { $eighths }
torque-done-watch = Réglage { $setting } avec { $tool } ; huitièmes de tour avant le déclic : { $eighths }. { $watch }
torque-borne = Un goujon { $thread } de classe { $class } est alors tendu par { $low } à { $high } kN, au plus { $percent } % de ce qui le fait céder ; le filetage dans le métal tendre supporte { $margin } fois cette force. { $confirmed ->
    [yes] {""}
   *[no] (Ces valeurs ne sont pas confirmées.)
  }
torque-not-borne = Un goujon { $thread } de classe { $class } serait tendu par { $low } à { $high } kN, jusqu’à { $percent } % de ce qui le fait céder ; le filetage dans le métal tendre supporte { $margin } fois cette force. C’est trop pour cet assemblage. { $confirmed ->
    [yes] {""}
   *[no] (Ces valeurs ne sont pas confirmées.)
  }
torque-over = { $percent } % au-dessus de la limite : le goujon est peut-être allongé et le filetage arraché. Démontez, regardez, et remplacez ce qui a subi ce couple.
stage-share = passe à { $percent } %
stage-check = passe de contrôle
tool-good-until = Étalonné ; valable jusqu’au { $day }.
tool-outside-range = Le réglage est hors de sa graduation.
tool-overdue = Son étalonnage a expiré le { $day }.
tool-worn = Il a donné { $cycles } déclics depuis son étalonnage ; { $allowed } sont permis.
tool-dropped = Il est tombé ou a été forcé depuis son étalonnage.
tool-never-calibrated = Personne ne sait quand il a été étalonné.
tool-calibrated-later = Son étalonnage est daté du { $day }, un jour encore à venir.
tool-joint-limit = Ce qu’il peut donner atteint ce que supporte l’assemblage.
tool-overridden = Utilisé malgré tout, parce que : { $because }
movement-too-far = L’écrou { $nut } a tourné de { $eighths } huitièmes de tour avant le déclic : plus d’un demi-tour.
movement-uneven = Les écrous ont tourné inégalement : de { $least } à { $most } huitièmes de tour.
movement-growing = L’écrou { $nut } a tourné plus que la dernière fois : { $before } huitièmes alors, { $now } maintenant.
judged-serviceable = Dans la plage.
judged-watch = À surveiller.
judged-unserviceable = Inapte au vol.
judged-not-fitted = Non monté.
summary-looked = Vous avez examiné { $done } points sur { $of } en { $minutes } min.
summary-short-serviceable = Tout en état en { $seconds } secondes : { $points } points en moins de temps qu’il n’en faut pour regarder.
summary-short = Seulement { $seconds } secondes pour { $points } points : moins de temps qu’il n’en faut pour regarder.
summary-short-usual = D’ordinaire, il y faut { $seconds } secondes.
summary-hurried = { $points ->
    [one] Un point a reçu sa réponse
   *[other] { $points } points ont reçu leur réponse
  } en bien moins de temps qu’un examen n’en demande. Regarder encore ?
summary-left = { $points ->
    [one] Un point n’a pas été examiné
   *[other] { $points } points n’ont pas été examinés
  }.

## The timeline and records

told-machine = Décrite : { $words }
told-inspection = { $list } : { $worst ->
    [unserviceable] quelque chose hors service
    [watch] quelque chose à surveiller
   *[other] rien trouvé
  }
told-defect-rectified = Remis en état : { $words }
told-correction = Corrigé : { $words }
told-limit-confirmed = Limite tirée d’un manuel : { $words }
told-time-logged = Tourné ou volé : { $words } h
told-job-begun = Intervention commencée : { $words }
told-second-look = Une deuxième personne a regardé
told-job-released = Remise en service signée
told-defect-deferred = Autorisé à attendre : { $words }
told-component-moved = Composant déplacé : { $words }
told-due-item = Échéance qui revient : { $words }
due-left = { $by ->
    [flights] { $flights ->
        [one] Reste { $flights } vol
       *[other] Reste { $flights } vols
      }
    [days] { $days ->
        [one] Reste { $days } jour
       *[other] Reste { $days } jours
      }
    [tanks] { $tanks ->
        [one] Reste { $tanks } réservoir
       *[other] Reste { $tanks } réservoirs
      }
   *[hours] Reste { $hours } h
  }
due-over = { $by ->
    [flights] À faire maintenant{ $flights ->
        [0] {""}
        [one] , { $flights } vol de retard
       *[other] , { $flights } vols de retard
      }
    [days] À faire maintenant{ $days ->
        [0] {""}
        [one] , { $days } jour de retard
       *[other] , { $days } jours de retard
      }
    [tanks] À faire maintenant{ $tanks ->
        [0] {""}
        [one] , { $tanks } réservoir de retard
       *[other] , { $tanks } réservoirs de retard
      }
   *[hours] À faire maintenant, { $hours } h de retard
  }
due-forecast = À ce rythme de vol, vers le { $at } ; quatre fois sur cinq entre le { $low } et le { $high }.
component-time = { $hours } h, { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }
told-unknown = Un enregistrement d’un genre que cette version ne sait pas lire.
kind-member = Une personne et son appareil
kind-device-vouched = Autre appareil de la même personne
kind-key-revoked = Fin d’une clé
kind-machine = Description d’une machine
kind-inspection = Inspection
kind-defect-rectified = Remise en état
kind-correction = Correction
kind-limit-confirmed = Limite tirée d’un manuel
kind-time-logged = Temps en service
kind-job-begun = Intervention commencée
kind-second-look = Second regard
kind-job-released = Remise en service
kind-defect-deferred = Report
kind-tool = Outil dynamométrique
kind-component-moved = Composant déplacé
kind-due-item = Échéance récurrente
kind-school-founded = École fondée
kind-school-joined = Appareil entré dans une école
kind-member-admitted = Membre admis
kind-member-ended = Fin d’adhésion
kind-root-handed = Racine transmise
kind-machine-enrolled = Machine confiée à une école
kind-catalogue-published = Listes publiées
role-viewer = Observateur
role-pilot = Pilote
role-mechanic = Mécanicien
role-instructor = Instructeur
says-time = { $hours } h, { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }, { $tanks ->
    [one] { $tanks } réservoir
   *[other] { $tanks } réservoirs
  } ; horamètre : { $reading }.
says-job = { $title }. { $note }
says-second-look = { $joints ->
    [one] { $joints } assemblage examiné
   *[other] { $joints } assemblages examinés
  } par une deuxième personne.
says-released = Les inspections de cette intervention sont complètes. Ceci est la propre déclaration du signataire, pas un certificat légal.
says-deferred = Peut attendre, parce que : { $reason }. D’ici là : { $condition }
says-tool = { $name }, gradué de { $low } à { $high }.
says-component = { $fitted ->
    [on] Montage
   *[off] Dépose
  } : { $name }, temps propre { $hours } h.
says-due = { $title }
says-school-founded = L’école « { $name } » commence ; cet appareil en est la racine.
says-school-joined = Cet appareil entre dans l’école « { $school } » ; la racine de l’école peut mettre fin à la clé de cet appareil.
says-member-admitted = { $name } fait partie de l’école : { $role }, à partir du { $from }{ $until ->
    [empty] {""}
   *[other] {" "}et jusqu’au { $until }
  }.
says-member-ended = L’adhésion a pris fin : { $reason }
says-root-handed = L’appareil { $device } est maintenant la racine de l’école.
says-machine-enrolled = { $school ->
    [empty] La machine quitte son école.
   *[other] Les rôles de l’école « { $school } » s’appliquent à la machine.
  }
says-published = « { $title } », version { $version }, { $files ->
    [one] { $files } fichier
   *[other] { $files } fichiers
  }, pour tous les membres de l’école.
says-member = { $name } signe avec cet appareil.
says-vouched = La même personne détient aussi l’appareil { $device }.
says-revoked = La clé de l’appareil { $device } a pris fin : { $reason }
says-machine = { $name }, moteur { $engine }, { $hours } h, { $flights ->
    [one] { $flights } vol
   *[other] { $flights } vols
  }.
says-rectified = Remis en état : { $how }
says-correction = { $title } : il faut lire « { $words } ». Motif : { $reason }
says-limit = { $band } : de { $low } à { $high } ; { $document }, { $page }.
signature-good = La signature est bonne : c’est bien ce qui a été signé.
signature-bad = La signature ne correspond pas : l’enregistrement a été modifié, ou quelqu’un d’autre a signé.
signature-unknown-key = Rien ici ne dit à qui est cette clé.
signature-revoked = Signé après la fin de la clé.
signature-not-checked = Personne n’a vérifié la signature.

## Verifying a file

verify-good = { $records ->
    [one] Le seul enregistrement est tel qu’il a été signé
   *[other] Les { $records } enregistrements sont tous tels qu’ils ont été signés
  }, et aucun ne manque entre eux.
verify-bad = { $faults ->
    [one] { $faults } anomalie
   *[other] { $faults } anomalies
  } dans { $records ->
    [one] { $records } enregistrement
   *[other] { $records } enregistrements
  }. Ne vous fiez pas à ce fichier.
verify-unreadable = La ligne { $line } n’est pas un enregistrement : { $why }
    .hint = Redemandez le fichier à l’expéditeur ; ne le modifiez pas.
verify-bad-signature = Ligne { $line }, enregistrement { $record } : la signature ne correspond pas. L’enregistrement a été modifié après la signature, ou quelqu’un d’autre l’a signé.
    .hint = Ne vous y fiez pas. Demandez au détenteur de l’appareil { $device } l’enregistrement tel qu’il l’a signé.
verify-unknown-key = Ligne { $line }, enregistrement { $record } : aucun enregistrement de ce fichier ne donne la clé de l’appareil { $device }.
    .hint = Demandez à l’expéditeur le fichier entier, avec les personnes qui ont signé.
verify-revoked-key = Ligne { $line }, enregistrement { $record } : signé par l’appareil { $device } après la fin de sa clé.
    .hint = Ne vous y fiez pas : quelqu’un se sert peut-être d’un appareil perdu.
verify-malformed = Ligne { $line }, enregistrement { $record } : il dit ce qu’un enregistrement du genre « { $kind } » ne peut pas dire ({ $why }).
    .hint = Ne vous y fiez pas. Le programme de son auteur est peut-être défectueux.
verify-missing-record = Appareil { $device } : de sa chaîne sur cette machine, ce qui va de l’enregistrement { $from } à l’enregistrement { $to } n’est pas dans le fichier.
    .hint = Demandez à l’expéditeur le fichier entier : quelque chose a été omis.
verify-broken-chain = Ligne { $line }, enregistrement { $record } : il ne fait pas suite à l’enregistrement précédent.
    .hint = Un enregistrement a été mis à la place d’un autre. Demandez le fichier entier au détenteur de l’appareil { $device }.
verify-forked-chain = Ligne { $line } : les enregistrements { $record } et { $other } de l’appareil { $device } prétendent à la même place.
    .hint = L’un des deux est faux, ou la clé a été copiée. Demandez à son détenteur.

## The database set aside

warning-rescued = La base de données était endommagée et a été mise de côté sous { $file }. { $records } enregistrements et votre clé ont été repris ; { $lost } lignes sont perdues.
warning-rescued-without-key = La base de données était endommagée et a été mise de côté sous { $file }. { $records } enregistrements ont été repris, { $lost } lignes sont perdues ; la clé n’a pas pu être sauvée, une nouvelle est donc créée : prévenez ceux qui connaissent l’ancienne.

## Faults: what went wrong, and what to do

fault-internal = Le programme a fait une erreur : { $why }
    .hint = Rien de ce que vous aviez saisi n’est perdu. Réessayez une fois ; si cela persiste, transmettez ces mots aux auteurs du programme.
fault-disk-full = Il n’y a plus de place sur cet appareil : la dernière étape n’a pas été gardée.
    .hint = Faites de la place (photos et vidéos en prennent le plus), puis refaites la dernière étape. Tout ce qui précède est gardé.
fault-disk = La mémoire de l’appareil ne répond pas : { $why }
    .hint = Tout est gardé jusqu’à la dernière réponse. Voyez si la mémoire est pleine, en lecture seule ou débranchée, puis réessayez.
fault-database-damaged = La base de données est endommagée : { $why }
    .hint = Fermez le programme et relancez-le : il met le fichier endommagé de côté et reprend ce qui peut être sauvé.
fault-database-busy = Un autre programme utilise la base de données.
    .hint = Fermez l’autre fenêtre ou l’autre commande, puis réessayez.
fault-database-newer = Ces données ont été écrites par une version plus récente (format { $found } ; ce programme connaît { $known }).
    .hint = Installez la dernière version. Rien n’a été modifié.
fault-catalogue = Le catalogue a un défaut en { $where } : { $why }
    .hint = Corrigez le fichier (`witnessmark validate FILE` montre tous les défauts), puis relancez.
fault-no-randomness = Ce système ne fournit pas d’aléa, aucune clé ne peut donc être créée : { $why }
    .hint = Redémarrez l’appareil ; sans aléa, rien ne peut être signé en sûreté.
fault-no-such = Il n’y a pas de « { $what } » ici.
    .hint = Regardez la liste des machines et choisissez-en une.
fault-ambiguous = « { $what } » convient à plusieurs machines : { $which }
    .hint = Donnez une plus grande part de l’identifiant, ou le nom entier.
fault-no-such-point = Cette liste n’a pas de point « { $point } ».
    .hint = `witnessmark points` montre les points de la liste.
fault-no-such-answer = Le point « { $point } » n’a pas de réponse « { $answer } ».
    .hint = Choisissez une des réponses propres au point ; `witnessmark points` les montre.
fault-no-such-occasion = Il n’y a pas de liste « { $occasion } ».
    .hint = Les listes sont : { $known }.
fault-no-such-language = Il n’y a pas de langue « { $language } ».
    .hint = Choisissez une des langues proposées.
fault-answer-missing = Aucune réponse n’a été donnée.
    .hint = Choisissez ce que vous voyez, ou saisissez la valeur.
fault-answer-kind = Au point « { $point } », on répond { $what ->
    [torque] en serrant, avec un outil
    [value] par une valeur avec son unité
   *[words] par une de ses propres réponses
  }.
    .hint = Un point mesuré prend une valeur avec son unité ; tout autre point prend une de ses propres réponses.
fault-unit = L’unité ne convient pas : { $why }
    .hint = Donnez la valeur dans une des unités proposées.
fault-nothing-to-undo = Il n’y a pas de réponse à annuler.
    .hint = Examinez le premier point.
fault-nothing-to-sign = Rien n’a encore été examiné.
    .hint = Examinez d’abord les points.
fault-look-again-first = « { $point } » est à examiner de nouveau après l’interruption.
    .hint = Répondez encore une fois à ce point, puis signez.
fault-walk-closed = Cette inspection est close : elle a été signée ou mise de côté.
    .hint = Rouvrez la liste pour en commencer une nouvelle.
fault-walk-of-another-day = La dernière réponse a été donnée un autre jour.
    .hint = Rouvrez la liste : elle redemande ce qui doit être examiné de nouveau.
fault-note-too-long = Le texte dépasse { $most } caractères.
    .hint = Dites-le plus court ; ce que vous avez écrit est encore là.
fault-photo-unreadable = Ce fichier n’est pas une image lisible.
    .hint = Prenez une image JPEG, PNG ou WebP.
fault-photo-too-large = Cette image est trop grande.
    .hint = Prenez-en une de moins de 40 Mo et 60 mégapixels.
fault-no-photo = L’image n’est pas sur cet appareil.
    .hint = Elle est peut-être encore sur l’appareil qui l’a prise.
fault-name-missing = Il faut un nom : 80 lettres au plus.
    .hint = Saisissez le nom sous lequel les autres vous connaissent.
fault-pin-weak = Le code PIN doit avoir au moins { $least } chiffres, pas tous identiques.
    .hint = Choisissez des chiffres que personne ne devine et que vous retiendrez : personne ne peut le réinitialiser.
fault-pin-wrong = Ce n’est pas le code PIN.{ $seconds ->
    [0] {""}
   *[other] {" "}Attendez { $seconds } s avant le prochain essai.
  }
    .hint = Réessayez. Rien n’est effacé, quel que soit le nombre d’essais.
fault-pin-wait = Après plusieurs codes PIN faux, il faut attendre : encore { $seconds } s.
    .hint = Attendez, puis saisissez de nouveau le code PIN. Rien n’est effacé.
fault-pin-needed = Il faut le code PIN pour signer.
    .hint = Donnez-le avec --pin-file FILE, ou lancez la commande dans un terminal : il vous sera demandé.
fault-already-begun = Cet appareil a déjà sa clé.
    .hint = Utilisez-la ; pour recommencer à neuf, choisissez un autre dossier de données.
fault-not-begun = Personne ne signe encore sur cet appareil.
    .hint = Faites le premier démarrage : votre nom et un code PIN.
fault-key-missing = La clé de cet appareil est illisible.
    .hint = Les enregistrements déjà signés restent valables. Recommencez dans un autre dossier de données, et prévenez ceux qui connaissent l’ancienne clé.
fault-keychain-missing = Le trousseau du système, qui aide à protéger la clé, ne répond pas ({ $why }).
    .hint = Déverrouillez le trousseau, ou ouvrez la session de bureau dans laquelle la clé a été créée.
fault-patience-out-of-range = Le délai avant qu’une liste revienne en arrière va de 1 à 120 minutes.
    .hint = Saisissez un nombre de minutes.
fault-description-missing = Aucune description n’a été donnée.
    .hint = Saisissez au moins le nom et le type de moteur.
fault-machine-name = Il faut à la machine un nom de 60 lettres au plus.
    .hint = Saisissez le nom qu’on lui donne.
fault-engine-unknown = Il n’y a pas de type de moteur « { $engine } ».
    .hint = Choisissez un des types de moteur proposés.
fault-part-unknown = Il n’y a pas d’élément « { $part } ».
    .hint = Choisissez parmi les éléments proposés.
fault-number-negative = Un nombre inférieur à zéro est impossible : { $what }.
    .hint = Saisissez 0 ou plus.
fault-repack-interval = L’intervalle entre deux repliages va de 1 à { $most } jours.
    .hint = Saisissez le nombre de jours donné par le manuel du secours.
fault-repack-in-future = La date de repliage est dans l’avenir.
    .hint = Saisissez la date inscrite sur la fiche de pliage.
fault-limit-negative = La borne { $end ->
    [low] inférieure
   *[high] supérieure
  } de la limite est au-dessous de zéro.
    .hint = Saisissez 0 ou plus.
fault-limit-end-missing = Il manque la borne { $end ->
    [low] inférieure
   *[high] supérieure
  } de la limite.
    .hint = Saisissez-la comme le manuel la donne.
fault-limit-crossed = La borne inférieure est au-dessus de la borne supérieure.
    .hint = Échangez les deux, ou voyez si une unité est fausse.
fault-source-missing = Il faut le manuel et la page.
    .hint = Saisissez le titre et l’édition du manuel, et la page où se trouve la valeur.
fault-nothing-open = Rien n’est ouvert au point « { $point } ».
    .hint = Voyez sur l’écran de la machine ce qui est ouvert.
fault-rectify-how-missing = Dites ce qui a été fait.
    .hint = Une phrase : ce qui a été remis à neuf, serré ou remplacé.
fault-correction-reason-missing = Dites pourquoi.
    .hint = Une phrase : comment le premier constat en est venu à être faux.
fault-not-an-inspection = Cet enregistrement n’est pas une inspection.
    .hint = Choisissez une inspection dans l’historique.
fault-reading-behind = L’horamètre indique moins que ce qui est connu : { $hours } h.
    .hint = Relisez-le. Si les heures connues sont fausses, décrivez de nouveau la machine avec les bonnes.
fault-fuel-burned = Ce ne peut pas être l’essence consommée pendant ce temps.
    .hint = Donnez l’essence consommée, en litres ou en gallons, avec les heures moteur pendant lesquelles elle l’a été ; ou laissez vide.
fault-time-too-much = Plus de { $hours } heures ou de { $flights } vols d’un coup, ce n’est pas possible.
    .hint = Saisissez ce qui a tourné et volé depuis la dernière saisie, jour par jour.
fault-nothing-logged = Rien n’a été saisi.
    .hint = Saisissez des heures, des vols, un réservoir consommé ou la lecture de l’horamètre.
fault-log-signed = Aucune saisie n’attend encore de signature.
    .hint = Ce qui est signé reste : saisissez la bonne lecture de l’horamètre comme nouvelle saisie.
fault-deferral-words-missing = Un report demande une condition et un motif.
    .hint = Dites comment on peut voler d’ici là, et pourquoi cela peut attendre.
fault-deferral-limit-missing = Un report demande une limite.
    .hint = Saisissez les heures moteur, le numéro de vol ou le jour jusqu’où il vaut.
fault-deferral-passed = Cette limite est déjà passée (maintenant { $hours } h, { $flights } vols).
    .hint = Saisissez-en une à venir.
fault-not-entitled-owner = Seule la personne qui a inscrit cette machine peut faire attendre un défaut.
    .hint = Demandez à son propriétaire ; ou remettez en état.
fault-not-entitled = Cette machine relève { $school ->
    [empty] d’une école que cet appareil ne connaît pas
   *[other] de l’école « { $school } »
  }. { $role ->
    [none] Qui n’en est pas membre n’a pas le droit
    [role-viewer] Un observateur de l’école n’a pas le droit
    [role-pilot] Un pilote de l’école n’a pas le droit
    [role-mechanic] Un mécanicien de l’école n’a pas le droit
   *[role-instructor] Un instructeur de l’école n’a pas le droit
  } { $right ->
    [look] d’en signer les inspections
    [work] d’en signer les interventions
    [second-look] d’en être la deuxième paire d’yeux
    [defer] d’en faire attendre les défauts
   *[publish] de publier des listes
  }.
    .hint = Demandez à un instructeur de l’école. Ce que vous avez trouvé de défectueux, vous pouvez le signer à tout moment.
fault-day = « { $day } » n’est pas un jour.
    .hint = Écrivez-le ainsi : 2026-05-02.
fault-due-title = Une échéance demande un titre de 120 lettres au plus.
    .hint = Dites ce qu’il y a à faire.
fault-due-interval = Il n’y a pas d’intervalle.
    .hint = Saisissez des heures, des vols, des réservoirs ou des jours, chacun supérieur à 0.
fault-due-tolerance = La tolérance va de 0 à 100 pour cent de l’intervalle.
    .hint = Saisissez 0 si aucun retard n’est permis.
fault-due-done-ahead = La dernière fois ne peut pas être à venir (maintenant { $hours } h).
    .hint = Saisissez les heures, les vols et le jour où cela a été fait.
fault-component-name = Il faut un nom au composant.
    .hint = Saisissez le nom qu’on lui donne.
fault-component-not-here = Ce composant n’est pas sur cette machine.
    .hint = Voyez l’écran de sa machine.
fault-no-assembly = L’assemblage du moteur « { $engine } » n’est pas dans le catalogue.
    .hint = Suivez le manuel du constructeur pour l’intervention ; la liste prévol reste valable.
fault-job-missing = Aucune intervention n’a été choisie.
    .hint = Choisissez ce qui a été fait.
fault-no-such-job = Cette intervention n’est pas connue : { $why }
    .hint = Choisissez parmi les interventions proposées.
fault-job-open-already = Une autre intervention n’est pas encore remise en service : { $title }.
    .hint = Terminez-la et signez d’abord sa remise en service ; commencez ensuite la suivante.
fault-no-job-open = Aucune intervention n’est ouverte sur cette machine.
    .hint = Commencez-la d’abord : dites ce qui a été fait.
fault-job-lacks = La remise en service n’est pas encore possible. { $lack }
    .hint = L’écran de la machine montre tout ce qui manque encore.
fault-tool-name = Il faut un nom à l’outil.
    .hint = Saisissez le nom qu’on lui donne, ou son numéro.
fault-tool-range = L’étendue de l’outil est vide.
    .hint = Saisissez sa plus petite et sa plus grande graduation, les deux dans la même unité de couple, la plus petite d’abord.
fault-tool-interval = Le délai et le nombre de déclics entre deux étalonnages doivent être supérieurs à 0.
    .hint = Valeurs courantes : 365 jours et 5000 déclics.
fault-tool-calibrated-ahead = L’étalonnage est dans l’avenir.
    .hint = Saisissez la date inscrite sur son certificat.
fault-no-such-tool = Il n’y a pas cet outil ici.
    .hint = Inscrivez d’abord l’outil, avec son étendue et son étalonnage.
fault-tool-refused = Cet outil ne doit pas servir ici. { $why }
    .hint = Prenez un autre outil. S’il n’y en a pas, dites pourquoi vous l’utilisez : le motif est consigné, et l’assemblage est surveillé.
fault-torque = Le couple ne peut pas être calculé : { $why }
    .hint = Regardez la limite, l’étendue de l’outil et la longueur de l’adaptateur.
fault-torque-nuts = Il faut dire de combien a tourné chacun des { $nuts } écrous : de rien à deux tours, en huitièmes.
    .hint = Refaites une passe et dites chaque écrou.
fault-torque-slip = { $reading } ne peut pas être la bonne lecture : cela ressemble à { $meant } lu dans la mauvaise unité. Il faut { $band }.
    .hint = Relisez la graduation de l’outil : livres-pouces ou livres-pieds ? Si un écrou a vraiment reçu ce couple, arrêtez : l’écrou et son goujon sont endommagés.
fault-limit-needed = { $band } : il n’y a pas de valeur à laquelle serrer.
    .hint = Saisissez la valeur de votre manuel et la page sur l’écran de la machine, puis revenez.
fault-code-unreadable = Ce n’est pas un de nos codes, ou il est incomplet.
    .hint = Tenez le téléphone immobile et plus près, le code entier dans l’image ; ou envoyez plutôt le texte.
fault-code-other = Ce code répond à une autre demande.
    .hint = Montrez de nouveau votre demande, et que l’autre téléphone signe celle-ci.
fault-second-signature = La signature de ce code ne correspond pas.
    .hint = Que l’autre personne le montre de nouveau, sur son propre téléphone.
fault-second-same-person = Le second regard doit être celui d’une autre personne.
    .hint = Demandez à quelqu’un qui n’a ni fait le travail ni signé sa liste.
fault-second-joint-missing = Il faut un mot pour chaque assemblage : comme il doit être, ou à reprendre.
    .hint = Examinez chaque assemblage montré, et dites ce que vous voyez.
fault-second-not-needed = Rien dans cette intervention ne demande une autre personne.
    .hint = Terminez sa liste et signez la remise en service.
fault-second-too-early = La liste d’après intervention n’est pas encore signée.
    .hint = Parcourez-la et signez-la d’abord ; faites ensuite regarder une autre personne.
fault-bundle-empty = Il n’y a aucun enregistrement dans ce fichier.
    .hint = Choisissez un fichier exporté par ce programme.
fault-demo-here = Les machines inventées sont déjà là.
    .hint = Elles sont dans la liste des machines.
fault-file = Le fichier { $file } ne peut pas être lu ou écrit : { $why }
    .hint = Voyez si le chemin est juste et si le dossier accepte l’écriture.
fault-answers-file = Les réponses de { $file } sont illisibles : { $why }
    .hint = Donnez du JSON : {"{"} "point-id": "answer-id", "measured-point": {"{"} "value": 4, "unit": "L" {"}"} {"}"}.
fault-answers-missing = { $count ->
    [one] Un point obligatoire n’a pas de réponse
   *[other] { $count } points obligatoires n’ont pas de réponse
  } dans le fichier : { $points }
    .hint = Ajoutez-les, ou donnez --leave-missing pour signer sans : la machine est alors interdite de vol.
fault-input = Les données d’entrée sont inutilisables : { $why }
    .hint = { $help }
fault-no-such-computation = Il n’y a pas de calcul « { $name } ».
    .hint = Il y a : { $known }.
fault-call-unknown = Cet appel est illisible : { $why }
    .hint = L’écran et le programme sont peut-être de versions différentes : rechargez la page.
fault-address = L’adresse { $address } est inutilisable : { $why }
    .hint = Choisissez un autre port avec --port, ou 0 pour n’importe lequel.

## Why a value is unconfirmed, as data sheets say it most often

why-common-practice-no-source = usage courant, sans source
why-the-maker-s-manual-gives-it-no-common-figure = le manuel du constructeur la donne : pas de valeur courante
why-the-propeller-maker-s-manual-gives-it-no-common-figure = le manuel du fabricant de l’hélice la donne : pas de valeur courante
why-depends-on-the-propeller-and-the-gear-ratio-no-common-figure = dépend de l’hélice et du rapport de réduction : pas de valeur courante
why-depends-on-the-battery-and-the-propeller-no-common-figure = dépend de la batterie et de l’hélice : pas de valeur courante
why-compare-with-a-new-spring-no-common-figure = à comparer avec un ressort neuf : pas de valeur courante
