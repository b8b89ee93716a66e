# French: schools, members, roles, the server, the board.

role-none = pas encore de rôle
term-stands = depuis le { $from }{ $open ->
    [no] {", jusqu’au "}{ $until }
   *[yes] {""}
  }
term-ended = terminé (commencé le { $from })
published-by = { $person }, { $day }

sync-none = Cette école n’a pas de serveur sur cet appareil. Les enregistrements passent par fichier ou par code.
    .hint = Demandez à l’école l’adresse de son serveur, ou continuez sans.
sync-never = Rien n’a encore été envoyé ni reçu.
    .hint = Synchronisez maintenant, ou à la prochaine connexion.
sync-done = Au pas avec le serveur, { $at }.
sync-waits = L’école n’a pas encore admis cet appareil ({ $at }).
    .hint = Lisez votre code à la racine de l’école.
sync-failed = { $at } : { $words }
    .hint = Rien n’est perdu : tout attend ici et partira au prochain essai.

net-plain = la connexion ne serait pas chiffrée
net-silent = rien n’est venu en { $seconds } secondes
net-too-large = il est venu plus de { $most } Mo, ce qu’aucun serveur d’école n’envoie
net-unreachable = { $why }

lie-shrunk = Le serveur a supprimé des enregistrements pour lesquels il s’était engagé par signature.
    .hint = Prévenez l’école. Vos enregistrements sont en sûreté sur cet appareil ; plus rien n’est échangé avec ce serveur.
lie-rewritten = Le serveur montre maintenant une autre histoire, de même longueur, que celle pour laquelle il s’était engagé par signature.
    .hint = Prévenez l’école. Vos enregistrements sont en sûreté sur cet appareil ; plus rien n’est échangé avec ce serveur.
lie-inconsistent = Ce que le serveur montre maintenant ne fait pas suite à ce pour quoi il s’était engagé par signature.
    .hint = Prévenez l’école. Vos enregistrements sont en sûreté sur cet appareil ; plus rien n’est échangé avec ce serveur.
lie-other-records = Le serveur fournit d’autres enregistrements que ceux pour lesquels il s’est engagé par signature.
    .hint = Prévenez l’école. Vos enregistrements sont en sûreté sur cet appareil ; plus rien n’est échangé avec ce serveur.
lie-swallowed = Le serveur a dit qu’il avait pris un enregistrement, et l’a omis.
    .hint = Prévenez l’école. Vos enregistrements sont en sûreté sur cet appareil ; plus rien n’est échangé avec ce serveur.
lie-other-key = La parole du serveur n’est pas signée avec la clé qu’il avait quand vous êtes entré.
    .hint = Demandez à l’école si son serveur a été réinstallé, avant de le suivre de nouveau.
lie-two-faced = Le serveur dit à chacun de vous deux autre chose.
    .hint = Prévenez l’école. Vos enregistrements sont en sûreté sur cet appareil ; plus rien n’est échangé avec ce serveur.

receipts-good = Les { $records } enregistrements dont cet appareil a un reçu sont bien ceux pour lesquels le serveur s’est engagé par signature.
receipts-bad = Les reçus ne correspondent pas à ce pour quoi le serveur s’est engagé par signature.
compare-good = Le serveur vous a dit la même chose à tous les deux, pour { $records } enregistrements.

desk-sign-in = Quelqu’un se connecte au tableau de l’école sous votre nom. N’acceptez que si c’est vous, maintenant, devant un écran de l’école.
desk-draft = Quelqu’un a préparé au tableau quelque chose à vous faire signer.

publish-adds = { $file } est nouveau.
publish-replaces = { $file } remplace celui qui existe.
warning-published = Cette version ne peut pas utiliser ce que votre école a publié : { $why }

board-looked = { $list } : { $person }, { $at }
board-never = Personne ne l’a examinée.

imported = { $taken ->
    [0] Rien de nouveau
    [one] { $taken } nouvel enregistrement
   *[other] { $taken } nouveaux enregistrements
  }{ $refused ->
    [0] .
    [one] {", "}{ $refused } ligne non acceptée.
   *[other] {", "}{ $refused } lignes non acceptées.
  }
imported-line = Ligne { $line } : { $why }
refusal-unreadable = Ce n’est pas un enregistrement.
refusal-bad-signature = La signature ne correspond pas : l’enregistrement a été modifié, ou quelqu’un d’autre a signé.
refusal-unknown-key = Rien ne dit de qui est la clé qui l’a signé.
refusal-malformed = Il dit ce qu’un tel enregistrement ne peut pas dire.

told-machine-enrolled = École changée

fault-no-school = Cet appareil n’appartient à aucune école.
    .hint = Fondez-en une, ou entrez dans une école par un code ou une adresse.
fault-no-server = Cette école n’a pas de serveur sur cet appareil.
    .hint = Saisissez l’adresse du serveur, ou échangez par fichier ou par code.
fault-school-name = Il faut à l’école un nom de 80 lettres au plus.
    .hint = Dites comment on l’appelle.
fault-school-already = Cet appareil appartient à une autre école.
    .hint = Quittez d’abord celle-là.
fault-letter-signature = Ce code a été modifié : une de ses signatures n’est pas bonne.
    .hint = Montrez-le et scannez-le de nouveau, directement depuis l’autre écran.
fault-letter-of-other = Ce code n’est pas pour cet appareil.
    .hint = Montrez d’abord votre propre code, et scannez la réponse à celui-ci.
fault-server-answer = Ce qui répond là n’est pas le serveur d’une école.
    .hint = Vérifiez l’adresse, avec https:// au début.
fault-root-stays = La racine ne peut ni partir ni prendre fin.
    .hint = Transmettez d’abord la racine à l’appareil d’un autre membre.
fault-not-your-device = Cet appareil n’a rien à dire sur celui-là.
    .hint = Une clé prend fin par la racine de l’école, ou par un autre appareil de la même personne.
fault-not-your-machine = Seul son propriétaire place une machine sous une école, ou l’en retire.
    .hint = Demandez à la personne qui l’a inscrite.
fault-role-missing = Aucun rôle n’a été choisi.
    .hint = Choisissez ce que sera la personne : observateur, pilote, mécanicien ou instructeur.
fault-until-passed = Ce dernier jour est déjà passé.
    .hint = Saisissez un jour à venir, ou laissez ouvert.
fault-no-such-member = Ce membre n’existe pas.
    .hint = Regardez la liste des membres.
fault-not-root = Seule la racine de l’école peut le faire.
    .hint = Prenez l’appareil racine, ou demandez à la personne qui le détient.
fault-end-reason = Il manque un motif.
    .hint = Dites en quelques mots pourquoi cela prend fin.
fault-server-address = « { $address } » n’est pas l’adresse d’un serveur.
    .hint = Saisissez-la comme l’école l’écrit : school.example, ou avec un port, school.example:8443. Rien ne vient derrière.
fault-server-plain = Ce qui va à { $address } ne serait pas chiffré.
    .hint = Demandez à l’école son adresse en https://. Si elle n’en a pas et que le réseau est fermé aux autres, lancez le programme avec WITNESSMARK_PLAIN_HTTP=1.
fault-draft-not-shown = Ce qui a été préparé n’a pas encore été montré ici.
    .hint = Rouvrez son code, lisez-le, puis signez.
fault-server-unreachable = Le serveur est injoignable : { $why }
    .hint = Tout attend ici et partira au prochain essai. L’application n’a pas besoin de connexion.
fault-server-busy = Le serveur est occupé (statut { $status }).
    .hint = Réessayez dans une minute ; rien n’est perdu.
fault-server-refused = Le serveur refuse : { $words }
    .hint = { $hint }
fault-server-lies = { $words }
    .hint = Prévenez l’école. Vos enregistrements sont en sûreté sur cet appareil ; plus rien n’est échangé avec ce serveur.
fault-server-distrusted = Ce serveur s’est contredit : plus rien n’est échangé avec lui.
    .hint = Parlez-en avec l’école ; suivez ensuite son serveur de nouveau.
fault-nothing-followed = Le serveur n’a pas encore été suivi.
    .hint = Synchronisez d’abord une fois.
fault-compare-later = L’autre appareil a vu une plus grande part du journal que celui-ci.
    .hint = Synchronisez d’abord celui-ci, ou montrez votre code à l’autre.
fault-checkpoint-other = C’est la parole d’un autre serveur.
    .hint = Comparez avec un membre de la même école.
fault-desk-of-other = Ce code est celui du tableau d’une autre école, ou d’une autre adresse.
    .hint = Ne vous connectez qu’au tableau de votre propre école.
fault-draft-odd = Ce qui a été préparé là ne peut pas être signé ainsi.
    .hint = Faites-le préparer de nouveau au tableau.
fault-publish-role = Seul un instructeur de l’école publie des listes.
    .hint = Demandez à un instructeur.
fault-publish-title = Une publication demande un titre de 80 lettres au plus, et au moins un fichier.
    .hint = Donnez-lui un titre et choisissez ses fichiers.
fault-publish-large = C’est trop en une fois (au plus { $most } ko).
    .hint = Publiez en plusieurs parties.
fault-publish-faults = { $where } : { $why }
    .hint = Corrigez le fichier et réessayez.
