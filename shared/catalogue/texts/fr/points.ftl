# French: what the lists say.

## Stations

station-day = Le jour et les papiers
    .stand = Avant de toucher la machine, face au vent.
station-safe = Mise en sécurité
    .stand = À côté de la machine, les bras loin de l’hélice.
station-frame = Châssis et bras
    .stand = Devant, là où viendra votre dos.
station-harness = Sellette, sangles, mousquetons
    .stand = Toujours devant, à genoux, les sangles en main.
station-tank = Essence ou batterie
    .stand = Accroupi, à côté du châssis.
station-engine = Le moteur
    .stand = Derrière, et sur le côté de l’hélice.
station-controls = Gaz et coupe-circuit
    .stand = De nouveau devant, la poignée de gaz en main.
station-propeller = Hélice et cage
    .stand = Derrière la cage, la machine toujours en sécurité.
station-wing = Voile, suspentes, élévateurs
    .stand = Le long de la voile, d’un bout à l’autre, puis des suspentes aux élévateurs.
station-run-up = Vous, et le point fixe
    .stand = Bien à l’écart de la voile, personne à côté ni derrière vous.

## Cautions

caution-able-to-fire = L’hélice peut mutiler. Coupe-circuit sur arrêt et capuchon de bougie retiré avant d’en approcher une main.
caution-battery-live = L’hélice peut mutiler. Batterie de vol débranchée avant d’en approcher une main.
caution-propeller-arc = Aucune main à portée de l’hélice si la machine n’est plus en sécurité. Dans le doute, revenez en arrière et remettez-la en sécurité.
caution-now-live = À partir d’ici, l’hélice peut tourner : tenez tout le monde hors de sa portée, et vos propres mains aussi.
caution-running-propeller = Une hélice qui tourne se voit mal et projette ce qu’elle touche. Personne à côté ni derrière vous ; le pouce sur le coupe-circuit.
caution-restraint = Ne tenez jamais à la main une machine qui tourne, et ne mettez jamais plein gaz quand elle est posée au sol sans être retenue.
caution-eyes-only = Les pièces chaudes brûlent. Les yeux seulement : avant d’y mettre la main, coupe-circuit sur arrêt et capuchon de bougie de nouveau retiré.
caution-eyes-only-motor = Les yeux et le nez seulement : avant d’y mettre la main, batterie de vol de nouveau débranchée.
caution-hot-parts = Les pièces chaudes brûlent : laissez refroidir le moteur avant d’y toucher.
caution-leaking-joint = Laissez refroidir le moteur avant d’y toucher. Resserrer seulement ne répare pas un assemblage qui fuit.
caution-coolant-pressure = Le liquide chaud ébouillante : n’ouvrez jamais le bouchon avant que le moteur soit froid.
caution-fuel-vapour = Les vapeurs d’essence s’enflamment : pas de flamme, pas de cigarette, et rangez le téléphone pendant que vous versez.
caution-battery-arc = Une batterie peut faire un arc et brûler : ni bagues ni outils près de ses contacts, et éloignez-vous de celle qui gonfle ou qui sent.
caution-reserve-lightly = Regardez et palpez légèrement : ne tirez ni l’aiguille ni la poignée pour essayer.
caution-manual-first = Les manuels des constructeurs et les règles locales passent avant tout. S’ils diffèrent de cette liste, arrêtez-vous et suivez-les.
caution-pilot-judges = Une liste complète n’est pas un vol sûr : la météo, le lieu et le pilote, c’est à vous d’en juger.

## The day and the papers

point-weather = Vent, nuages et pluie
    .good = Vent régulier et à votre mesure, bonne visibilité, ni pluie ni orage à portée.
    .why = Une machine saine ne rattrape pas une mauvaise masse d’air.
    .bad = Rafales, vent qui forcit, nuages qui montent ; pluie, brouillard ou tonnerre proches.
    .steady = Régulier, dans ma limite
    .building = Rafales, ou nuages qui montent
    .stormy = Trop fort, pluie ou orage

point-site = Terrain et espace aérien
    .good = Course dégagée face au vent, une issue si le moteur s’arrête, espace ouvert aujourd’hui.
    .why = Câbles, air agité derrière les arbres, espace fermé : on les découvre trop tard.
    .bad = Câbles, arbres ou gens devant, mauvais sol, espace fermé ou non vérifié.
    .open = Course dégagée, espace ouvert
    .tight = Juste, ou limites à tenir
    .closed = Obstrué, fermé ou inconnu

point-papers = Licence, assurance, autres papiers
    .good = Tout ce que les règles exigent est avec vous et à jour.
    .why = Après un accident, ces dates sont lues en premier.
    .bad = Il en manque un, ou sa date est passée.
    .in-date = Avec moi et à jour
    .soon = L’un expire ce mois-ci
    .run-out = Manquant ou expiré

point-self = Vous : repos, santé, calme
    .good = Reposé, nourri, en forme, sobre, et personne ne vous pousse à voler.
    .why = Un pilote fatigué ou pressé manque ce qu’un pilote frais voit.
    .bad = Malade, épuisé, contrarié, ou sous l’effet d’alcool ou d’un médicament fort.
    .rested = Reposé, en forme, pas pressé
    .tired = Fatigué ou pressé
    .unwell = Malade, alcool, médicament fort

## Made safe

point-kill-switch-off = Coupe-circuit, sur arrêt
    .good = Tourné sur arrêt ; un simple bouton-poussoir est entier et revient.
    .why = Le premier des deux verrous. Certains boutons n’arrêtent que pressés.
    .bad = Laissé sur marche, ou si mou qu’on ne sait plus où il est.
    .at-stop = Tourné sur arrêt
    .springs-back = Bouton-poussoir, entier, revient
    .at-run = Sur marche, mou ou cassé

point-plug-cap-off = Capuchon de bougie, retiré
    .good = Retiré de chaque bougie et rangé là où il ne peut pas en retoucher une.
    .why = Le second verrou : le fil du coupe-circuit peut casser sans se voir, une bougie nue ne peut pas allumer.
    .bad = Encore en place, à moitié mis, ou pendant contre la bougie.
    .off = Retiré, tenu à l’écart
    .still-on = En place, ou touche la bougie

point-starter-isolated = Batterie de démarrage, coupée
    .good = Interrupteur général coupé ou connecteur séparé : le bouton de démarrage ne fait rien.
    .why = Un effleurement du bouton lancerait l’hélice.
    .bad = Encore branchée, ou l’interrupteur ne montre pas sa position.
    .apart = Coupée ou séparée
    .live = Encore branchée, ou incertain

point-battery-isolated = Batterie de vol, coupée
    .good = Connecteur séparé ou interrupteur général coupé, afficheur éteint.
    .why = Un moteur électrique démarre sans un bruit et à pleine force.
    .bad = Encore branchée, afficheur allumé, ou on ne peut pas le dire.
    .apart = Séparée, afficheur éteint
    .joined = Encore branchée, ou allumée

## Frame and arms

point-arm-pivots = Axes des bras et leurs vis
    .good = Chaque vis traverse bien, son écrou vissé à fond, aucun jeu quand on lève le bras.
    .why = Vous êtes suspendu à ces deux assemblages.
    .bad = Du jeu, une fissure, une vis tordue, ou un écrou qui a bougé.
    .firm = Ferme, écrous à fond
    .play = Léger jeu, écrous à fond
    .loose = Jeu, fissuré, écrou absent
    .without = Châssis sans bras

point-arms-and-straps = Bras et leurs sangles de sécurité
    .good = Bras droits et sans fissure, une sangle reliée et entière de chaque côté.
    .why = La sangle vous retient si le bras casse.
    .bad = Un bras plié, une fissure, ou une sangle coupée, usée jusqu’à la trame ou détachée.
    .straight = Droits, sangles reliées
    .marked = Bras rayé ou sangle peluchée
    .bent = Plié, fissuré, sangle détachée
    .without = Châssis sans bras

point-frame-joints = Tubes, soudures et emboîtements
    .good = Droits et sans fissure, chaque emboîtement à fond avec sa goupille ou son clip.
    .why = Les fissures partent des soudures et des trous, les vibrations les font grandir.
    .bad = Un pli, une fissure ou un trait de rouille à une soudure, une goupille ou un clip absent.
    .whole = Droits, goupilles en place
    .dented = Bosse ou éraflure, sans fissure
    .cracked = Plié, fissuré, goupille absente

## Harness, straps, carabiners

point-leg-straps = Cuissardes et leurs boucles
    .good = Sangles et coutures entières, chaque boucle se verrouille et tient si l’on tire fort.
    .why = Elles seules vous empêchent de glisser hors de l’assise.
    .bad = Une coupure, une couture tirée, ou une boucle qui glisse ou se verrouille à moitié.
    .hold = Entières, les deux tiennent
    .fluffed = Bord peluché, boucles tiennent
    .slip = Coupée, ou une boucle glisse

point-carabiner-gates = Les deux doigts de mousqueton
    .good = Lâché, chacun se referme seul d’un coup sec et son verrou va à fond.
    .why = Doigt ouvert, un mousqueton ne tient qu’une partie de sa charge.
    .bad = Lent ou qui grippe, tordu, ou un verrou qui n’accroche pas.
    .snap = Se ferment et se verrouillent
    .gritty = Grippent un peu, se verrouillent
    .stay-open = Restent ouverts ou sans verrou

point-carabiner-bodies = Corps des mousquetons et sangles
    .good = Métal lisse et droit, dans l’âge permis par le constructeur ; sangles et coutures entières.
    .why = C’est à une entaille du métal ou de la sangle que cela cède.
    .bad = Une entaille, une gorge, une fissure ou un pli, une couture coupée, ou trop vieux.
    .smooth = Lisse, sangle entière
    .scratched = Rayure légère ou peluche
    .notched = Entaillé, fendu, coupé, trop vieux

point-chest-strap = Ventrale et bretelles
    .good = Coutures entières, les boucles tiennent, les deux bretelles à la même longueur.
    .why = La ventrale retient les bretelles et règle votre position en vol.
    .bad = Une coupure, une couture tirée, une boucle qui glisse, ou un côté plus long.
    .even = Entières et égales
    .fluffed = Bord peluché, boucles tiennent
    .slips = Coupée, glisse ou inégale

point-harness-fixings = Assise, coutures, fixations au châssis
    .good = Planchette et coutures entières, chaque fixation au châssis fermée et serrée.
    .why = Ces fixations vous relient à la machine.
    .bad = Une couture déchirée, une planchette fendue, une fixation desserrée ou ouverte.
    .closed = Entière, fixations fermées
    .worn = Couture usée, fixations fermées
    .torn = Déchirée, fendue, desserrée

point-reserve-pin = Aiguille du secours et sa bouclette
    .good = Droite, bien passée dans une bouclette non effilochée, rabats fermés par-dessus.
    .why = À moitié sortie, elle lâche le secours dans l’hélice.
    .bad = Tordue, à moitié sortie, tirée par quelque chose, ou bouclette effilochée.
    .through = Droite, bien passée
    .rust-spot = Terne ou rouillée, bien passée
    .half-out = Tordue, sortie, effilochée

point-reserve-handle = Poignée du secours
    .good = Logée dans sa poche, rien par-dessus ; la main la trouve sans regarder.
    .why = Vous n’avez qu’un geste, dans l’urgence, écrasé par votre propre poids.
    .bad = Pendante, ou sous une sangle, un cordon ou un fil de radio.
    .seated = Logée, libre à saisir
    .worn = Logée, poche usée
    .covered = Pendante ou recouverte

point-reserve-repack = Date de repliage sur sa fiche
    .good = La fiche est avec le secours, et la date est à venir.
    .why = Un tissu plié trop longtemps s’ouvre tard.
    .bad = La date est passée, ou la fiche manque ou est illisible.
    .ahead = Date à venir
    .soon = Échéance dans le mois
    .past = Passée, absente, illisible

## What it runs on

point-fuel-on-board = Essence à bord
    .good = Assez pour le vol et une réserve ; le réservoir contient { $tank }.
    .why = Un moteur à sec choisit votre terrain d’atterrissage.
    .bad = Moins que le vol et une réserve, ou une jauge qui ne peut pas dire vrai.

point-fuel-mix = L’essence : fraîche, propre, huilée
    .good = Fraîche et propre, avec l’huile que dit le manuel du constructeur du moteur.
    .why = Sans son huile, le moteur serre ; l’eau l’arrête.
    .bad = Huile oubliée ou douteuse, eau ou saleté au fond, odeur aigre.
    .known = Fraîche, propre, huile connue
    .stale = Quelques semaines, propre
    .unsure = Huile douteuse, eau ou saleté

point-tank-walls = Réservoir, soudures et sangles
    .good = Sec tout autour, bien tenu, ne frotte nulle part.
    .why = L’essence qui goutte sur un échappement chaud s’enflamme.
    .bad = Mouillé, fissuré, aminci par frottement, ou qui bouge dans ses sangles.
    .dry = Sec, bien tenu
    .stained = Vieille trace ou frottement
    .wet = Mouillé, fissuré ou mobile

point-tank-cap = Bouchon et mise à l’air
    .good = Bouchon serré sur son joint, mise à l’air ouverte et sans pli.
    .why = Mise à l’air bouchée, le moteur manque d’essence ; bouchon mal serré, elle coule sur l’échappement.
    .bad = Bouchon mal serré, joint fendu, mise à l’air bouchée, pliée ou fermée.
    .tight = Bouchon serré, air ouvert
    .worn = Bouchon serré, joint usé
    .blocked = Bouchon mal serré ou air fermé

point-fuel-line = Tuyau d’essence et ses extrémités
    .good = Souple partout, loin des pièces chaudes, chaque bout serré par un collier, robinet éventuel ouvert.
    .why = L’air aspiré ici appauvrit le mélange et fait chauffer le moteur ; l’essence qui sort brûle.
    .bad = Dur, fendu, frotté, plié, mouillé, ou mal tenu à un bout.
    .supple = Souple, colliers serrés
    .hard = Dur ou jauni, sec
    .split = Fendu, plié, mal tenu, mouillé

point-fuel-filter = Filtre et poire d’amorçage
    .good = Filtre propre ; la poire, s’il y en a une, ferme et sans craquelure.
    .why = Saleté ou air ici coupent l’essence en montée.
    .bad = Filtre foncé, bulles qui reviennent sans cesse, poire molle ou fendue.
    .clear = Propre, sans bulles
    .specks = Quelques grains
    .dirty = Sale, bulles ou fendu

point-injection-oil = Huile dans son réservoir à part
    .good = Au-dessus du repère pour ce vol, tuyau plein d’huile.
    .why = Sans huile, le moteur serre.
    .bad = Sous le repère, ou de l’air dans le tuyau.
    .above = Au-dessus du repère
    .at-mark = Au repère
    .under = Dessous, ou air visible

point-pack-voltage = Tension de la batterie, au repos
    .good = Dans la plage pour { $cells } éléments en série, chargeur débranché, au repos.
    .why = Elle indique la charge de la batterie ; trop haute, celle-ci peut prendre feu.
    .bad = Sous la plage, trop vide pour voler ; au-dessus, surchargée.

point-battery-case = Boîtier de batterie et sangles
    .good = Faces planes, sèches et froides, sangles si serrées qu’elle ne peut pas bouger.
    .why = Une batterie gonflée, cabossée ou mouillée peut prendre feu sous vous.
    .bad = Gonflée, cabossée, fendue, chaude, mouillée, ou mobile.
    .flat = Plane, froide, bien tenue
    .scuffed = Éraflée, plane et sèche
    .swollen = Gonflée, cabossée, mouillée, mobile

point-battery-contacts = Contacts et connecteurs
    .good = Métal brillant, broches droites et serrées, plastique de sa couleur d’origine.
    .why = Un mauvais contact fait un arc, fond, et arrête le moteur.
    .bad = Plastique bruni ou fondu, une broche qui bouge, métal piqué.
    .bright = Brillants et serrés
    .dull = Ternes, serrés
    .burnt = Brûlés, piqués ou mobiles

point-battery-leads = Câbles de batterie
    .good = Gaine entière, attachés loin de l’hélice, des pièces chaudes et des arêtes vives.
    .why = Un câble dénudé met toute la batterie en court-circuit.
    .bad = Coupé, pincé ou dénudé, ou pendant à portée de l’hélice.
    .clipped = Entiers et attachés
    .rubbed = Frottés, gaine entière
    .bare = Coupé, pincé ou pendant

## The motor

point-cylinder-base = Embase du cylindre, tout autour
    .good = Métal sec, pas de trait sombre sous les ailettes.
    .why = De l’huile ici, c’est une prise d’air : mélange pauvre (trop peu d’essence), et chaleur.
    .bad = Un trait mouillé ou sombre là où le cylindre rejoint le carter.
    .dry = Sèche
    .old-stain = Vieille trace, sèche au toucher
    .wet = Mouillée

point-cylinder-head = Plan de joint de culasse et écrous
    .good = Sec tout autour, chacun des { $nuts } écrous en place.
    .why = Une fuite ici fait chauffer le cylindre que ce plan doit fermer.
    .bad = Un trait mouillé ou de suie au plan de joint, ou un écrou absent.
    .dry = Sec, tous les écrous présents
    .old-stain = Vieille trace, sèche au toucher
    .wet = Mouillé, suie, écrou absent

point-carburettor-joint = Carburateur sur sa pipe d’admission
    .good = Ne bascule pas ; caoutchouc ou joint entier, fixations serrées, sec dessous.
    .why = Une prise d’air ici donne un moteur pauvre et chaud.
    .bad = Il bascule, le caoutchouc est fendu, une fixation est desserrée, ou c’est mouillé.
    .firm = Ferme, caoutchouc entier
    .crazed = Ferme, fines craquelures
    .rocks = Bascule, fendu ou mouillé

point-intake-clip = Boîte à air et son clip
    .good = Boîte ferme, clip fermé, filtre propre et entier.
    .why = Détachée, elle dérègle le mélange et part dans l’hélice.
    .bad = Clip ouvert ou absent, boîte mal tenue, filtre déchiré ou trempé.
    .closed = Clip fermé, filtre propre
    .dusty = Clip fermé, filtre poussiéreux
    .open = Ouvert, mal tenu ou déchiré

point-shroud-face = Carénage, faces et angles
    .good = Entier, surtout aux angles et aux trous où partent les fissures ; rien de coincé dedans.
    .why = L’air de refroidissement qui fuit par une fissure laisse le cylindre chaud.
    .bad = Toute fissure, un morceau absent, des feuilles ou de l’herbe sur le passage de l’air.
    .whole = Sans fissure, dégagé dedans
    .hairline = Fissure fine
    .through = Fissuré à travers ou bouché

point-shroud-mounts = Fixations du carénage, écrous, rondelles
    .good = Les { $mounts } fixations tiennent, rondelles de caoutchouc à peine pressées, carénage non déformé.
    .why = Trop serré, des fissures en étoile partent ; trop lâche, il se disloque en vibrant.
    .bad = Une fissure partant d’un trou, un écrou ou une rondelle absents, le carénage plié par un écrou.
    .held = Tenu, sans fissure
    .hairline = Fissure fine, rondelle écrasée
    .through = Fissuré à travers, desserré, absent

point-cylinder-fins = Ailettes du cylindre et leur couleur
    .good = Intervalles dégagés, ailettes entières, métal de la même couleur que la dernière fois.
    .why = Des ailettes bouchées font de la chaleur ; une teinte bleue ou brune montre qu’elle est passée.
    .bad = Herbe, boue ou nid entre les ailettes, une ailette cassée, couleur de brûlé.
    .clear = Dégagées, couleur inchangée
    .darker = Poussière, ou un peu plus foncé
    .blocked = Bouchées, cassées ou brûlées
    .finless = Cylindre sans ailettes

point-ground-under = Le sol sous la machine
    .good = Sec là où elle était posée.
    .why = Une goutte au sol a une fuite au-dessus d’elle.
    .bad = Essence, huile ou liquide de refroidissement frais : trouvez d’où cela vient.
    .dry = Sec
    .spot = Une vieille tache d’huile
    .fresh = Gouttes fraîches ou flaque

point-engine-mounts = Plots moteur et caoutchoucs
    .good = Les { $mounts } caoutchoucs entiers, écrous en place ; poussé, le moteur cède également.
    .why = Un plot déchiré laisse l’hélice battre dans la cage.
    .bad = Un caoutchouc déchiré, un écrou qui a bougé, métal contre métal.
    .whole = Entiers, écrous en place
    .crazed = Fines craquelures
    .torn = Déchiré, desserré ou absent

point-exhaust-springs = Ressorts d’échappement et crochets
    .good = Les { $springs } accrochés aux deux bouts et assurés contre l’envol.
    .why = Un ressort qui lâche part droit dans l’hélice.
    .bad = Un ressort cassé, décroché ou non assuré, ou un crochet aminci par l’usure.
    .hooked = Accrochés et assurés
    .worn = Crochet usé, encore assuré
    .missing = Cassé, décroché ou non assuré

point-exhaust-body = Tube, silencieux et fixations
    .good = Sans fissure, fixations entières, pas de suie fraîche aux raccords.
    .why = Une fissure ici grandit vite, et les morceaux rencontrent l’hélice.
    .bad = Une fissure, une fixation déchirée, une pièce qui cliquette, suie épaisse à un raccord.
    .whole = Entier, fixations fermes
    .sooty = Un peu de suie à un raccord
    .cracked = Fissuré, desserré ou déchiré

point-plug-terminal = Olive de bougie et tenue du capuchon
    .good = Bougie vissée à fond, olive serrée, capuchon entier avec sa pince et sa retenue.
    .why = Un capuchon que les vibrations font tomber arrête le moteur en l’air.
    .bad = L’olive tourne à la main, capuchon fendu, pince molle, retenue cassée ou perdue.
    .tight = Olive serrée, capuchon tient
    .worn = Serrée, retenue usée
    .loose = Desserrée, fendu, pince molle

point-plug-lead = Fil de bougie
    .good = Gaine entière, ferme dans le capuchon et la bobine, attaché loin des ailettes et de l’échappement.
    .why = Une étincelle qui passe ailleurs vous laisse sans moteur.
    .bad = Coupé, brûlé, frottant sur du métal, ou mal tenu à un bout.
    .clipped = Entier et attaché
    .rubbed = Frotté, gaine entière
    .bare = Coupé, brûlé ou mal tenu

point-engine-hardware = Écrous, vis et repères de peinture
    .good = Chaque écrou, clip et fil à sa place, repères de peinture alignés.
    .why = Les vibrations desserrent tout, et l’hélice attrape ce qui tombe.
    .bad = Un repère décalé, du métal brillant autour d’un écrou, quelque chose d’absent.
    .aligned = Tout y est, repères alignés
    .faded = Tout y est, repère effacé
    .turned = Tourné, desserré ou absent

point-reduction-belt = Courroie et poulies
    .good = Bords entiers, courroie centrée et également tendue comme dit son manuel.
    .why = Une courroie qui patine ou se déchire, et la poussée s’en va.
    .bad = Effilochée, fendue en travers, décentrée, molle, huileuse.
    .centred = Entière, centrée, tendue
    .shiny = Lustrée ou un peu peluchée
    .frayed = Effilochée, fendue, molle, huile

point-reduction-gear = Boîte d’engrenages, joints, bouchons
    .good = Carter sec, bouchons d’huile en place et freinés, toutes les vis présentes.
    .why = Une boîte d’engrenages qui a perdu son huile s’use et se bloque.
    .bad = De l’huile qui goutte d’un joint ou d’un bouchon, une fissure, une vis desserrée.
    .dry = Sèche, bouchons freinés
    .film = Mince film d’huile
    .drips = Goutte, fissurée ou desserrée

point-starter-cord = Corde de lanceur et poignée
    .good = Tirée doucement, la corde est entière et se rembobine à fond ; nœud de poignée ferme.
    .why = Une corde qui pend est avalée par l’hélice.
    .bad = Effilochée, nœud qui glisse, boîtier desserré, ou elle pend.
    .winds-back = Entière, se rembobine à fond
    .fluffed = Peluchée, se rembobine à fond
    .hangs-out = Effilochée, desserrée ou pendante

point-starter-motor = Démarreur et sa batterie
    .good = Démarreur ferme sur ses vis, batterie sanglée et plane, câbles attachés.
    .why = Un câble ou une batterie qui se détache brûle, ou rencontre l’hélice.
    .bad = Vis desserrées, batterie gonflée, contact brûlé, câble qui pend.
    .firm = Ferme, câbles attachés
    .dull = Ferme, contact terne
    .loose = Desserré, gonflée ou brûlé

point-engine-oil = Huile moteur à la jauge
    .good = Entre les repères, moteur de niveau, huile propre et claire.
    .why = Trop peu d’huile, ou de l’eau dedans, ruine les paliers en quelques minutes.
    .bad = Sous le repère bas, au-dessus du haut, ou laiteuse.
    .between = Entre les repères
    .at-low-mark = Au repère bas
    .under = Hors repères, ou laiteuse

point-coolant = Liquide de refroidissement, tuyaux
    .good = Au repère de niveau, à froid ; tuyaux souples, colliers serrés, sec tout autour.
    .why = Sans liquide, le moteur surchauffe en quelques minutes.
    .bad = Sous le repère, mouillé, un tuyau mou, fendu ou qui frotte.
    .full = Au repère, sec
    .old-stain = Vieille trace, niveau inchangé
    .low = Bas, mouillé ou fendu

point-motor-mounts = Fixations du moteur, vis, repères
    .good = Les { $mounts } fixations fermes et sans fissure, vis en place, repères de peinture alignés.
    .why = Les vibrations desserrent les vis, et l’hélice y est suspendue.
    .bad = Un repère décalé, une fissure, une vis desserrée ou absente.
    .aligned = Ferme, repères alignés
    .faded = Ferme, repère effacé
    .turned = Tournée, fissurée ou absente

point-motor-windings = Bobinages et roulements du moteur
    .good = Couleur égale, propre ; tourné à la main, il tourne sans bruit ni jeu.
    .why = Bobinages brûlés ou roulements secs l’arrêtent, et chauffent d’abord.
    .bad = Bobinages foncés ou qui sentent, poussière de métal, un frottement, du jeu.
    .turns = Propre, tourne sans bruit
    .dusty = Poussiéreux, tourne sans bruit
    .scrapes = Frotte, foncé ou sent

point-motor-cables = Câbles et connecteurs du moteur
    .good = Chacun poussé à fond et verrouillé, gaine entière, plastique de sa couleur d’origine.
    .why = Un mauvais contact sur les trois, et le moteur hoquette puis s’arrête.
    .bad = Mal enfiché, bruni ou fondu, frottant, ou près de l’hélice.
    .home = À fond, couleur inchangée
    .tinted = À fond, légèrement teinté
    .loose = Mal enfiché, fondu, frottant

point-motor-controller = Variateur et son refroidissement
    .good = Ferme, sec, refroidissement dégagé, pas de tache sombre.
    .why = Il dose toute la puissance ; chaud ou mouillé, il coupe.
    .bad = Mouillé, desserré, gonflé, brûlé, ou refroidissement bouché.
    .dry = Ferme, sec et dégagé
    .dusty = Poussiéreux, ferme et sec
    .wet = Mouillé, brûlé ou bouché

## Throttle and kill switch

point-throttle-return = Poignée de gaz, relâchée
    .good = Pressée à fond puis relâchée, elle revient tout à fait ; blocage de gaz libéré.
    .why = Des gaz qui restent ouverts vous emmènent où vous ne voulez pas.
    .bad = Lente, rugueuse ou qui colle, dans une position quelconque du bras.
    .springs-back = Revient tout à fait
    .slow = Lente, mais revient
    .sticks = Colle ou reste ouverte

point-throttle-free-travel = Garde du câble de gaz
    .good = Un peu de mou au câble avant que le carburateur ouvre.
    .why = Sans mou, un mouvement du bras ouvre les gaz tout seul.
    .bad = Pas de mou, ou tant de mou que le plein gaz est perdu.

point-control-leads = Coupe-circuit, câble et fils
    .good = Bouton libre et entier ; chaque fil attaché loin de l’hélice, gaine entière.
    .why = Un fil cassé, et vous ne pouvez plus arrêter l’hélice.
    .bad = Un bouton qui colle, un pli, un fil nu, un fil que l’hélice peut atteindre.
    .whole = Entiers et attachés au loin
    .rubbed = Frottés, gaine entière
    .bare = Nu, plié, colle ou pend

## Propeller and cage

point-propeller-hub = Moyeu d’hélice et ses vis
    .good = Les { $bolts } vis en place, repères alignés, moyeu sans fissure ni jeu.
    .why = Une vis desserrée casse les autres, et l’hélice s’en va.
    .bad = Un repère décalé, une vis absente, une fissure, de la poussière de frottement, ou du jeu.
    .firm = Ferme, repères alignés
    .faded = Ferme, repère effacé
    .loose = Jeu, fissure, tournée, absente

point-propeller-edges = Bords d’attaque et bouts de pale
    .good = Chaque pale lisse et entière du moyeu au bout.
    .why = Une entaille devient fissure, et des pales inégales disloquent la machine.
    .bad = Une entaille qui accroche l’ongle, une fente, un ruban de bord décollé, un morceau parti.
    .smooth = Lisses et entiers
    .scuffed = Éraflés, l’ongle glisse
    .nicked = Entaillé, fendu ou décollé

point-propeller-faces = Faces des pales, avant et arrière
    .good = Régulières et dures du moyeu au bout, des deux côtés.
    .why = Une pale fissurée est projetée, et rien ne l’arrête.
    .bad = Une fissure, une cloque, un endroit mou ou qui sonne mat.
    .even = Régulières, sans fissure
    .scratched = Rayure de surface seulement
    .cracked = Fissure, cloque ou endroit mou

point-propeller-tracking = Bouts de pale, l’un après l’autre
    .good = Tournée lentement à la main, chaque bout de pale passe au même point de la cage.
    .why = Des bouts qui passent à côté l’un de l’autre trahissent un moyeu, une pale ou un arbre tordu.
    .bad = Les bouts passent écartés, plus que la plage ne permet.

point-cage-hoop = Cerceaux, rayons et raccords de cage
    .good = Ronde, raccords fermés et verrouillés, bien loin des pales tout autour.
    .why = Elle sépare les mains et les suspentes de l’hélice.
    .bad = Fissurée ou pliée, un raccord ouvert, ou si près que les pales peuvent toucher.
    .round = Ronde, raccords verrouillés
    .bent = Léger pli, pales dégagées
    .close = Fissurée, ouverte ou trop près

point-cage-net = Filet, chaque brin
    .good = Tendu partout, chaque brin et chaque nœud entier.
    .why = Une main ou une poignée de frein passe par le trou qui reste.
    .bad = Un brin cassé, un trou, ou du mou qui atteint les pales.
    .tight = Tendu, brins entiers
    .slack = Un peu de mou, brins entiers
    .torn = Trou, ou brin cassé

## Wing, lines, risers

point-lines-free = Suspentes libres jusqu’aux élévateurs
    .good = Chaque groupe de suspentes est libre ; élévateurs non torsadés, drisses de frein à l’extérieur.
    .why = Une seule suspente prise peut tourner la voile vers le sol.
    .bad = Un nœud, une torsade, une brindille, ou une suspente en boucle autour d’un bout d’aile.
    .free = Libres d’un bout à l’autre
    .caught = Nœud, torsade, brindille, boucle

point-risers-links = Élévateurs et maillons
    .good = Sangles et coutures entières, chaque maillon vissé à fond.
    .why = Toutes vos suspentes aboutissent à ces quelques maillons.
    .bad = Sangle coupée, couture tirée, un maillon ouvert, fissuré ou rouillé.
    .shut = Entiers, maillons fermés
    .fluffed = Bord peluché, maillons fermés
    .open = Coupé, ou maillon ouvert

point-canopy = Tissu de voile et entrées d’air
    .good = Tissu et coutures entiers et secs, chaque caisson ouvert et vide.
    .why = Une déchirure court, et un caisson mouillé ou bouché s’ouvre le dernier.
    .bad = Une déchirure, une couture ouverte, tissu trempé, sable, neige ou herbe dans un caisson.
    .whole = Entier, sec, caissons vides
    .pinhole = Petit trou, ou un peu humide
    .torn = Déchiré, trempé ou rempli

point-line-sheaths = Gaines et boucles des suspentes
    .good = Gaine entière, boucles cousues, aucun endroit raide ou aminci.
    .why = Une suspente casse d’abord là où son âme se montre.
    .bad = Âme visible, un endroit aminci, raide ou brûlé, une couture tirée.
    .whole = Entières d’un bout à l’autre
    .furry = Peluchée, âme couverte
    .core = Âme visible, amincie, raide

point-trimmers = Trims et accélérateur
    .good = Les deux trims au repère de décollage du manuel de la voile ; drisses d’accélérateur éventuel libres.
    .why = Des trims inégaux vous font tourner dès le premier pas.
    .bad = Inégaux, qui glissent, usés à la boucle, ou une drisse d’accélérateur prise.
    .same-mark = Même repère, boucles tiennent
    .worn = Même repère, sangle usée
    .uneven = Inégaux, glissent ou pris
    .without = Voile sans trims

point-brakes = Freins : nœuds, poulies, poignées
    .good = Nœuds fermes, drisses libres dans les poulies, poignées tenues aux élévateurs.
    .why = Avec eux vous pilotez et vous posez ; une poignée qui pend rencontre l’hélice.
    .bad = Un nœud qui glisse, une drisse effilochée, une poulie dure, une attache qui lâche.
    .firm = Nœuds fermes, poulies libres
    .furry = Drisse peluchée, nœuds fermes
    .slips = Glisse, effilochée, coincée, pend

## You, and the run-up

point-helmet = Casque, oreilles et radio
    .good = Casque entier et attaché, oreilles protégées ; radio, si vous en portez une, entendue.
    .why = Non attaché, il est parti avant que votre tête touche quoi que ce soit.
    .bad = Jugulaire ouverte ou lâche, coque fendue, radio muette.
    .radio-heard = Attaché, radio entendue
    .without-radio = Attaché, vol sans radio
    .radio-silent = Attaché, radio muette
    .open = Non attaché, mal serré ou fendu

point-loose-ends = Vêtements, poches, bouts qui pendent
    .good = Chaussures montantes et gants, poches fermées, chaque cordon et bout de sangle rangé.
    .why = L’hélice aspire tout ce qui peut l’atteindre.
    .bad = Une écharpe, un cordon, une caméra ou une sangle qui pend ; mains nues, chaussures basses.
    .tied = Vêtu, poches fermées, tout rangé
    .thin = Tout rangé, léger pour ce jour
    .loose = Pend, ouvert ou mains nues

point-plug-cap-on = Capuchon de bougie, remis
    .good = Poussé à fond sur chaque bougie, retenue fermée ; il tient si l’on tire fort.
    .why = À moitié mis, il tombe en montée.
    .bad = À moitié mis, retenue ouverte, ou il se soulève quand on tire.
    .home = À fond, tient quand on tire
    .lifts = À moitié mis, ou se soulève

point-battery-joined = Batterie branchée, afficheur lu
    .good = Connecteur à fond et verrouillé, afficheur sans alerte, gaz à zéro.
    .why = L’afficheur peut nommer un élément faible avant que vous le sentiez.
    .bad = Connecteur à moitié entré, une alerte, ou un moteur qui tressaute.
    .home = Verrouillé, aucune alerte
    .notice = Verrouillé, un message s’affiche
    .alarm = Alerte, à moitié, ou tressaute

point-stance = Votre appui et la retenue
    .good = Machine portée sur le dos, cuissardes et ventrale fermées, pieds calés ; ou solidement attachée.
    .why = Plein gaz, elle tire assez fort pour vous renverser.
    .bad = Tenue à la main, calée au sol, ou une sangle encore ouverte.
    .worn = Portée, sangles fermées, calé
    .tied = Attachée à ce qui tient
    .by-hand = À la main, calée ou ouverte

point-area-clear = L’espace autour et derrière vous
    .good = Personne à côté ni derrière ; pas de pierres libres ; voile décrochée, hors du souffle.
    .why = Une pale cassée part de côté, pierres et suspentes partent dans l’hélice.
    .bad = Gens, animaux, objets libres ou voile à portée de l’hélice ou du souffle.
    .clear = Dégagé de tous côtés
    .near = Quelqu’un ou quelque chose proche

point-kill-stops-engine = Coupe-circuit, moteur au ralenti
    .good = Pressé au ralenti, avant tout plein gaz : le moteur s’arrête aussitôt.
    .why = C’est votre moyen le plus rapide d’arrêter l’hélice.
    .bad = Le moteur continue, ou ne s’arrête qu’à la deuxième pression.
    .dies = Le moteur s’arrête aussitôt
    .runs-on = Continue, ou hésite

point-kill-stops-motor = Coupe-circuit, moteur à bas régime
    .good = Pressé à bas régime, avant toute pleine puissance : l’entraînement coupe aussitôt.
    .why = C’est votre moyen le plus rapide d’arrêter l’hélice.
    .bad = Il continue d’entraîner, ou ne coupe qu’à la deuxième pression.
    .stops = L’entraînement coupe aussitôt
    .turns-on = Continue d’entraîner, ou hésite

point-clutch-idle = L’hélice, moteur au ralenti
    .good = Immobile, ou à peine poussée, embrayage débrayé.
    .why = Un embrayage qui traîne entraîne l’hélice quand vous la croyez au repos.
    .bad = Entraînée par le moteur au ralenti.
    .still = Immobile
    .creeps = Avance un peu par moments
    .driven = Entraînée

point-idle-speed = Régime de ralenti, moteur chaud
    .good = Gaz relâchés : tours par minute (tr/min) stables, dans la plage.
    .why = Un ralenti qui monte ou qui erre peut être une prise d’air : la chaleur suit.
    .bad = Si bas qu’il peut caler en l’air, ou si haut qu’il vous pousse.

point-full-throttle-speed = Régime plein gaz, à l’arrêt
    .good = Plein gaz quelques secondes : tours par minute (tr/min) dans la plage.
    .why = Bas : poussée perdue. Haut : mélange pauvre, ou transmission qui patine.
    .bad = Plus lent ou plus rapide que la plage, ou montant et descendant tout seul.

point-full-power-speed = Régime pleine puissance, à l’arrêt
    .good = Pleine puissance quelques secondes : tours par minute (tr/min) dans la plage.
    .why = Bas : poussée perdue, ou batterie fatiguée. Haut : l’hélice mord moins.
    .bad = Plus lent ou plus rapide que la plage, ou montant et descendant tout seul.

point-sound-shake = Bruit et vibrations, à tout régime
    .good = Régulier du ralenti au plein gaz ; relâché, il retombe aussitôt.
    .why = Une vibration nouvelle, ou un son qui traîne, est le premier mot d’une panne.
    .bad = Un cognement, une vibration nouvelle, ou un régime qui traîne quand vous relâchez.
    .smooth = Régulier, retombe aussitôt
    .buzz = Bourdonnement ou frisson nouveau
    .rough = Cogne, vibre ou traîne

point-after-running = Sous le moteur, après le point fixe
    .good = Moteur arrêté : sec dessous, rien de desserré, rien d’absent.
    .why = Chaleur et pression ouvrent des fuites fermées à froid.
    .bad = Une goutte, un trait mouillé frais, une pièce qui a bougé ou disparu.
    .dry = Sec, tout en place
    .damp = Mince film humide
    .drips = Goutte, bougé ou absent

point-after-running-motor = Moteur et batterie, après le point fixe
    .good = Arrêté : pas d’odeur, pas de fumée, températures de l’afficheur comme d’habitude.
    .why = Une chaleur nouvelle aujourd’hui est une panne qui a commencé.
    .bad = Odeur de brûlé, fumée, gonflement, ou bien plus chaud que d’habitude.
    .as-usual = Comme d’habitude, sans odeur
    .warmer = Plus chaud que d’habitude
    .smells = Sent, fume ou gonfle

point-carabiner-gates-again = Élévateurs accrochés, doigts revus
    .good = Élévateur gauche à gauche, droit à droite, sans torsade ; touchez chaque doigt : fermé, verrouillé.
    .why = Un élévateur à moitié entré dans son mousqueton tient au sol et lâche en l’air.
    .bad = Une torsade, un élévateur sur le doigt, un verrou qui n’est pas allé à fond.
    .both-in = Les deux dedans et verrouillés
    .not-shut = Torsadé, ou un doigt ouvert

point-leg-straps-again = Cuissardes, encore une fois
    .good = Touchez et tirez la gauche, puis la droite : les deux fermées sur vous.
    .why = Ouvertes un instant et oubliées, elles vous laissent tomber de l’assise.
    .bad = Une ouverte, à moitié verrouillée, ou qui pend.
    .both-closed = Gauche et droite fermées
    .open = Une ouverte ou lâche

point-walk-complete = Ce tour, du premier au dernier point
    .good = Vous étiez à chaque poste et avez examiné chaque point vous-même.
    .why = Une liste interrompue à mi-chemin paraît complète.
    .bad = Un point deviné, sauté, ou perdu à cause d’un appel ou d’une conversation.
    .every-point = Chaque point examiné
    .left-out = Quelque chose de deviné ou sauté
