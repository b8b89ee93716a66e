# French: what is said of work on the engine.

occasion-after-service = Après intervention

fault-occasion-needs-job = « { $words } » suit une intervention : sa liste est ce que l’intervention a touché.
    .hint = Commencez d’abord l’intervention et dites ce qui a été fait ; sa liste est alors composée pour elle.

## Jobs: what was done, in one line

job-plug-changed = Bougie changée
    .what = La bougie a été sortie : remplacée, ou regardée et remise.
job-head-retorqued = Culasse serrée au couple
    .what = Les écrous de culasse ont été desserrés ou serrés au couple, à froid, culasse en place.
job-head-retorqued-again = Culasse resserrée après le premier réservoir
    .what = De nouveau à froid, chaque écrou de culasse a été ramené au couple, et les plans de joint regardés.
job-cylinder-off = Cylindre déposé
    .what = La culasse et le cylindre ont été déposés, et les deux joints remplacés.
job-shroud-off = Carénage déposé
    .what = Le carénage a été déposé, pour le nettoyer ou atteindre ce qui est derrière.
job-exhaust-off = Échappement déposé
    .what = Les ressorts ont été décrochés et l’échappement déposé.
job-carburettor-cleaned = Carburateur nettoyé
    .what = Le carburateur a été déposé, ouvert et nettoyé.
job-intake-off = Admission déposée
    .what = Le carburateur et la pipe d’admission derrière lui ont été déposés.
job-propeller-changed = Hélice changée
    .what = L’hélice a été déposée : changée, équilibrée ou remise.
job-propeller-retorqued = Vis d’hélice resserrées au couple
    .what = Chaque vis d’hélice a été ramenée au couple.
job-reduction-adjusted = Réducteur réglé
    .what = La courroie a été tendue, ou la boîte d’engrenages ouverte.
job-belt-tensioned-again = Courroie retendue
    .what = La courroie a fait sa première heure, et sa tension a été refaite.
job-starter-repaired = Lanceur ou démarreur réparé
    .what = Le lanceur ou le démarreur a été déposé : sa corde, son ressort ou son moteur.
job-fuel-opened = Circuit d’essence ouvert
    .what = Un tuyau d’essence a été retiré au réservoir ou au carburateur.
job-mounts-renewed = Plots moteur remplacés
    .what = Les plots en caoutchouc du moteur ont été démontés ou remplacés.
job-after-propeller-strike = Après un choc d’hélice
    .what = L’hélice a heurté quelque chose : elle et son moyeu ont été déposés, et tout ce que le choc a atteint est examiné.
job-motor-off = Moteur électrique déposé
    .what = Le moteur électrique a été déposé de ses fixations.
job-controller-changed = Variateur changé
    .what = Le variateur, ou ses câbles, ont été déposés.
job-battery-changed = Batterie de vol changée
    .what = La batterie de vol a été sortie de ses sangles.

## What falls due later

follow-up-head-retorque = Resserrer la culasse au couple après le premier réservoir, moteur froid
follow-up-base-look = Examiner de nouveau l’embase du cylindre après le premier réservoir
follow-up-propeller-bolts-again = Resserrer au couple les vis d’hélice après la première heure
follow-up-belt-again = Refaire la tension de la courroie après la première heure

## Parts

graph-part-plug-cap = Capuchon de bougie
graph-part-plug = Bougie
graph-part-shroud = Carénage de refroidissement
graph-part-exhaust = Échappement
graph-part-exhaust-stub = Coude d’échappement
graph-part-head = Culasse
graph-part-cylinder = Cylindre
graph-part-air-box = Boîte à air
graph-part-throttle-cable = Câble de gaz
graph-part-fuel-line = Tuyau d’essence
graph-part-pulse-line = Tuyau de pulsation
graph-part-carburettor = Carburateur
graph-part-intake = Pipe d’admission et clapets
graph-part-propeller = Hélice
graph-part-hub = Moyeu d’hélice
graph-part-belt = Courroie
graph-part-gear-oil-plug = Bouchon d’huile de la boîte
graph-part-gear-cover = Couvercle de boîte d’engrenages
graph-part-starter-pull = Lanceur
graph-part-starter-battery = Batterie de démarrage
graph-part-starter-motor = Démarreur
graph-part-crankcase = Carter
graph-part-tank = Réservoir d’essence
graph-part-frame = Châssis
graph-part-battery-lead = Connecteur de la batterie de vol
graph-part-flight-battery = Batterie de vol
graph-part-controller = Variateur
graph-part-motor = Moteur électrique

## Joints

joint-plug-cap-push = Capuchon sur sa bougie
joint-plug-thread = Bougie dans la culasse
joint-shroud-nuts = Fixations du carénage
joint-exhaust-springs = Ressorts d’échappement
joint-exhaust-mounts = Fixations d’échappement
joint-exhaust-stub-nuts = Coude d’échappement sur le cylindre
joint-head-nuts = Écrous de culasse
joint-head-seal = Culasse sur le cylindre
joint-base-nuts = Écrous d’embase du cylindre
joint-base-seal = Cylindre sur le carter
joint-air-box-clip = Clip de boîte à air
joint-throttle-cable-end = Câble de gaz au carburateur
joint-fuel-line-carburettor = Tuyau d’essence au carburateur
joint-fuel-line-tank = Tuyau d’essence au réservoir
joint-pulse-line-ends = Deux bouts du tuyau de pulsation
joint-carburettor-clamp = Carburateur sur sa pipe d’admission
joint-intake-screws = Pipe d’admission sur le carter
joint-propeller-bolts = Vis d’hélice
joint-hub-bolts = Vis de moyeu
joint-belt-adjuster = Tendeur de courroie
joint-belt-run = Courroie sur ses poulies
joint-gear-oil-plug-thread = Bouchon d’huile dans son couvercle
joint-gear-cover-bolts = Vis du couvercle de boîte
joint-starter-screws = Vis du lanceur
joint-starter-lead = Câble du démarreur
joint-starter-motor-bolts = Vis du démarreur
joint-engine-mounts = Plots moteur
joint-battery-lead-plug = Batterie de vol sur le variateur
joint-battery-straps = Sangles de la batterie de vol
joint-phase-connectors = Câbles du moteur
joint-controller-screws = Vis du variateur
joint-motor-bolts = Vis de fixation du moteur

fastener-nut = écrous
fastener-locknut = écrous autofreinés
fastener-bolt = vis
fastener-screw = vis
fastener-thread = vissé
fastener-spring = ressorts
fastener-clip = clip
fastener-clamp = collier
fastener-strap = sangle
fastener-connector = connecteur
fastener-push = emboîté
fastener-seal = joint
fastener-belt = courroie

## What is renewed, and tools to count back

consumable-head-seal = Joint torique ou joint de culasse
consumable-base-seal = Joint d’embase ou joint torique
consumable-exhaust-gasket = Joint d’échappement
consumable-intake-gasket = Joint d’admission
consumable-lock-wire = Fil à freiner des ressorts d’échappement
consumable-fuel-clamp = Colliers du tuyau d’essence
consumable-gear-cover-gasket = Joint du couvercle de boîte
consumable-gear-oil = Huile de boîte d’engrenages
consumable-mount-rubbers = Plots en caoutchouc

tool-torque-wrench = Clé dynamométrique à déclenchement
tool-sockets = Douilles et rallonge
tool-plug-spanner = Clé à bougie
tool-pliers = Pinces
tool-spanners = Clés plates
tool-hex-keys = Clés six pans
tool-screwdriver = Tournevis
tool-spring-hook = Crochet à ressorts
tool-feeler-gauge = Jeu de cales
tool-port-rags = Chiffons des lumières ouvertes
tool-oil-tray = Bac à huile
tool-fuel-can = Bidon d’essence et entonnoir

## Limits

band-plug-gap = Écartement des électrodes
band-plug-torque = Couple de la bougie
band-base-nut-torque = Couple des écrous d’embase
band-propeller-bolt-torque = Couple des vis d’hélice
band-motor-bolt-torque = Couple des vis du moteur
band-thread-protrusion = Filets au-delà d’un écrou autofreiné
band-compression = Compression
band-exhaust-spring-tension = Tension des ressorts d’échappement
band-mount-hardness = Dureté des plots (Shore A)
band-belt-tension = Courroie, flèche
band-gear-play = Jeu d’engrenage en bout de pale

## Cautions

caution-cold-engine = Ne serrez au couple qu’un moteur froid, dans l’unité de la clé : des livres-pouces ne sont pas des livres-pieds. Jamais un peu plus.
caution-seal-renewed = Un assemblage qui a suinté s’ouvre, se regarde et se refait à neuf : on ne se fie pas au seul resserrage.
caution-daylight = Jugez la couleur à la lumière du jour : lampes et écrans la faussent.
caution-compression-turning = Coupe-circuit sur arrêt, fil de bougie à la masse, personne à portée de l’hélice : un vilebrequin tourné à la main peut encore donner un allumage.
caution-spring-flies = Un ressort tendu s’envole : protégez vos yeux, et ne le tirez jamais avec les doigts.
caution-strike-inside = Ce qu’un choc a tordu à l’intérieur se voit tard et lâche d’un coup. Le manuel du constructeur dit ce qu’il faut ouvrir et mesurer ; un titulaire de licence là où les règles l’exigent.
caution-direction-without-propeller = Essayez le sens de rotation hélice déposée : un moteur qui tourne à l’envers pousse vers vous.
caution-wound-back = Détendez la clé à déclenchement jusqu’à sa plus petite graduation. Ce qui reste oublié rencontre l’hélice.

## Plug

point-after-plug-colour = Couleur du bec de la bougie
    .good = Sec, brun foncé ou café.
    .why = Le blanc trahit la chaleur, souvent une prise d’air ; il brûle les pistons.
    .bad = Blanc, vitrifié ou perlé ; le beige clair y mène ; mouillé, c’est trop riche.
    .brown = Brun foncé ou café
    .tan = Beige clair
    .wet = Noir et mouillé
    .white = Blanc, vitrifié ou perlé

point-after-plug-gap = Écartement, au jeu de cales
    .good = La cale glisse en frottant légèrement ; la valeur est dans la plage.
    .why = Trop large, ratés à chaud ; trop étroit, mauvais ralenti.
    .bad = Hors de la plage, ou une électrode brûlée en biais.

point-after-plug-seat = Bougie dans son siège
    .good = Engagée à la main, rondelle bien écrasée, moteur froid, { $torque }.
    .why = Mal serrée, elle perd la compression et surchauffe ; forcée, elle arrache le filetage de culasse.
    .bad = De travers ou dure dans le filetage, décollée de son siège, rondelle absente.
    .pressed = À la main, rondelle écrasée
    .stiff = Filetage dur, rondelle écrasée
    .proud = De travers, décollée, mobile

point-after-plug-terminal = Olive sur la bougie
    .good = Serrée à la pince, filetage net, le capuchon l’agrippe.
    .why = Une olive qui se dévisse emporte l’étincelle.
    .bad = Elle tourne entre deux doigts, ou elle est absente.
    .pliers-tight = Serrée à la pince
    .worn = Serrée à la pince, filet usé
    .turns = Tourne à la main, ou absente

## Head and cylinder

point-after-head-nuts = Écrous de culasse, une fois serrés
    .good = Les { $nuts }, en croix et par paliers jusqu’à { $torque }, à froid ; chacun a un peu tourné, autant que les autres.
    .why = Pas assez serré, cela fuit et chauffe ; trop, le goujon s’arrache du carter.
    .bad = Un écrou qui ne donne jamais son déclic, ou qui a tourné de plus d’un demi-tour.
    .clicked = Tous au déclic, tous autant
    .one-moved-far = Au déclic, un a trop tourné
    .turns-on = Un tourne sans fin, ou absent

point-after-base-nuts = Écrous d’embase, une fois serrés
    .good = Les { $nuts }, en croix et par paliers jusqu’à { $torque }, à froid.
    .why = Une prise d’air sous le cylindre appauvrit le mélange et fait chauffer.
    .bad = Un écrou qui ne donne jamais son déclic, ou qui a tourné de plus d’un demi-tour.
    .clicked = Tous au déclic, tous autant
    .one-moved-far = Au déclic, un a trop tourné
    .turns-on = Un tourne sans fin, ou absent

point-after-head-seal = Joint de culasse et ses portées
    .good = Joint neuf, portées propres et planes, rien de pincé.
    .why = Une fuite ici coupe comme un chalumeau.
    .bad = L’ancien joint remis, une portée piquée ou rayée.
    .new = Joint neuf, portées propres
    .scratched = Joint neuf, portée éraflée
    .old = Ancien joint remis

point-after-base-seal = Joint d’embase et ses portées
    .good = Joint neuf, plat ou torique, portées propres, aucun trou couvert.
    .why = De l’huile ici, c’est une prise d’air : la chaleur suit.
    .bad = L’ancien joint remis, une portée piquée, un passage couvert.
    .new = Joint neuf, portées propres
    .scratched = Joint neuf, portée éraflée
    .old = Ancien joint remis

point-after-bore = Cylindre et piston, côté échappement
    .good = Régulier et lisse tout autour, segment libre dans sa gorge.
    .why = La chaleur raye d’abord le côté échappement ; c’est de là que le moteur serre.
    .bad = Rayures en long, bords fondus, un segment collé ou cassé.
    .even = Régulier, segment libre
    .brown = Trace brune sous le segment
    .scored = Rayé, fondu, segment collé

point-after-compression = Compression, au manomètre
    .good = Plein gaz, plusieurs tours : dans la plage, et proche de la dernière fois.
    .why = Elle baisse avant la puissance ; une chute nette trahit un segment ou un joint.
    .bad = Sous la plage, ou nettement sous la dernière fois.

## Shroud

point-after-shroud-nuts = Écrous et rondelles du carénage
    .good = Les { $mounts } : filet tout juste au travers de l’écrou autofreiné, rondelle de caoutchouc à peine pressée, carénage non fléchi.
    .why = Un carénage sous tension se fend depuis ses trous comme une toile d’araignée.
    .bad = Carénage plié par le serrage, rondelle écrasée à plat, un écrou autofreiné qui tourne librement.
    .just-through = Filet au travers, rondelle pressée
    .squeezed = Rondelle écrasée à plat
    .flexed = Carénage fléchi ou fissuré
    .short = Filet court, ou écrou libre

point-after-shroud-spacers = Entretoises derrière le carénage
    .good = Une à chacune des { $mounts } fixations, d’équerre et entière.
    .why = Une seule oubliée, et le carénage plie quand on serre l’écrou.
    .bad = Une absente, fendue, ou deux au même endroit.
    .each-in = Une à chaque fixation
    .worn = Toutes là, une usée
    .missing = Une absente ou fendue

## Exhaust

point-after-exhaust-spring-tension = Ressorts d’échappement, au peson
    .good = Chacun des { $springs } tire dans la plage quand il est tendu jusqu’à ses crochets.
    .why = La chaleur amollit les ressorts ; un ressort mou se décroche en vol.
    .bad = Un qui tire nettement moins que les autres, ou dont les spires s’écartent.

point-after-exhaust-stub = Coude d’échappement et son joint
    .good = Joint neuf, écrous serrés également, aucun filetage arraché.
    .why = Du gaz brûlant contre le cylindre le chauffe, et brûle ce qu’il touche.
    .bad = L’ancien joint remis, de la suie, un écrou absent.
    .new = Joint neuf, serrage égal
    .stud-worn = Serré, filet de goujon usé
    .old = Ancien joint, suie ou desserré

point-after-exhaust-mounts = Fixations, plots, écrous d’échappement
    .good = Caoutchoucs entiers, écrous à fond, échappement sans contrainte.
    .why = Un échappement monté sous tension se fend à ses soudures.
    .bad = Un caoutchouc déchiré, un écrou desserré, ou un tube mis en place de force.
    .whole = Entiers, écrous à fond
    .crazed = Fines craquelures
    .torn = Déchiré, desserré, contraint

## Carburettor and intake

point-after-throttle-slide = Gaz, de fermé à plein ouvert
    .good = S’ouvre en grand et se referme d’un coup sec, où que passe le câble.
    .why = Bloqués ouverts, les gaz vous emmènent où vous ne voulez pas.
    .bad = Reste ouvert, accroche, ou le bout du câble est à moitié logé.
    .full-and-shut = S’ouvre en grand, se referme sec
    .short = Se referme sec, ouverture courte
    .sticks = Colle, accroche ou traîne

point-after-carburettor-bowl = Couvercles et purges du carburateur
    .good = Couvercles bien à plat, vis en place, sec après une minute avec de l’essence dedans.
    .why = L’essence qui goutte tombe sur l’échappement.
    .bad = Mouillé à un couvercle, une vis absente, un joint chassé.
    .dry = Sec, toutes les vis là
    .damp = Film humide seulement
    .wet = Mouillé, ou vis absente

point-after-pulse-line = Tuyau de pulsation, ses deux bouts
    .good = Souple, poussé à fond aux deux bouts, sans pli.
    .why = Il actionne la pompe à essence ; une fuite prive le moteur d’essence et le fait chauffer.
    .bad = Débranché, fendu, plié ou pincé.
    .home = Souple, les deux bouts à fond
    .hard = Dur, les deux bouts à fond
    .off = Débranché, fendu ou pincé

point-after-intake-joint = Pipe d’admission sur le carter
    .good = Joint neuf, vis serrées également, aucun jour tout autour.
    .why = Une prise d’air ici donne un moteur pauvre et chaud.
    .bad = L’ancien joint remis, un jour, une vis desserrée.
    .new = Joint neuf, égal tout autour
    .old = Ancien joint remis
    .gap = Un jour, ou vis desserrée

## Fuel

point-after-fuel-ends = Bouts de tuyau d’essence et colliers
    .good = Poussé à fond, collier derrière le bourrelet, sec après une traction ferme.
    .why = L’essence qui sort brûle ; l’air aspiré prive le moteur d’essence.
    .bad = À moitié mis, collier desserré ou absent, mouillé.
    .home = À fond, colliers neufs, sec
    .old-clamp = À fond, sec, ancien collier tient
    .wet = À moitié, desserré, mouillé

point-after-fuel-air = Essence amenée, air chassé
    .good = Tuyau plein du réservoir au carburateur, aucune bulle qui avance.
    .why = Une poche d’air arrête le moteur juste après le décollage.
    .bad = Des bulles qui reviennent sans cesse.
    .full = Plein, sans bulles
    .a-bubble = Une bulle de temps en temps
    .stream = Des bulles sans cesse

## Reduction drive

point-after-belt-tension = Tension de courroie, à sa flèche
    .good = Pressée au milieu comme le dit le manuel, elle fléchit d’une longueur dans la plage.
    .why = Molle, elle patine et saute ; trop tendue, elle mange les roulements.
    .bad = Flèche plus grande ou plus petite que la plage, ou qui change en tournant.

point-after-belt-adjuster = Tendeur de courroie, bloqué
    .good = Blocage serré, repère de peinture refait, poulies alignées.
    .why = Un tendeur qui glisse détend la courroie en vol.
    .bad = Il tourne à la main, ou les poulies sont désalignées.
    .locked = Bloqué, repère refait
    .unmarked = Bloqué, repère absent
    .turns = Tourne, ou désaligné

point-after-gear-play = Jeu d’engrenage, en bout de pale
    .good = Balancée doucement contre le vilebrequin, la pale bouge au bout dans la plage.
    .why = Un jeu qui grandit trahit des dents ou des roulements usés.
    .bad = Plus que la plage, ou un point dur, rugueux.

point-after-gear-cover = Couvercle de boîte, joint, vis
    .good = Joint neuf, portées propres, vis serrées également et marquées de peinture.
    .why = Une boîte d’engrenages qui perd son huile s’use et se bloque.
    .bad = L’ancien joint remis, une vis desserrée ou absente, de l’huile.
    .new = Joint neuf, vis marquées
    .unmarked = Joint neuf, repère absent
    .old = Ancien joint, desserré ou huile

point-after-gear-oil = Huile de boîte et son bouchon
    .good = À son niveau, du type que nomme le manuel, bouchon serré et freiné.
    .why = À sec, elle se bloque et arrête l’hélice.
    .bad = Sous ou au-dessus du niveau, bouchon desserré, ou huile inconnue.
    .at-level = Au niveau, bouchon freiné
    .unsecured = Au niveau, bouchon non freiné
    .short = Hors niveau, desserré, inconnue

## Propeller, hub, strike

point-after-propeller-bolts = Vis d’hélice, une fois serrées
    .good = Les { $bolts }, en croix et par paliers jusqu’à { $torque }, repères de peinture refaits.
    .why = Une vis desserrée casse les autres, et l’hélice s’en va.
    .bad = Une vis qui ne donne jamais son déclic, une portée de moyeu écrasée, une vis absente.
    .at-torque = Toutes au couple, marquées
    .unmarked = Au couple, repère absent
    .loose = Desserrée, foirée ou absente

point-after-propeller-way = Hélice, dans le bon sens
    .good = Tournée dans le sens du moteur, les bords arrondis attaquent ; les faces plates regardent l’arrière.
    .why = À l’envers, elle tire peu, et ses bouts flottent.
    .bad = Les bords minces attaquent.
    .edges-lead = Bords arrondis en avant
    .back-to-front = Bords minces en avant

point-after-hub-bolts = Moyeu sur son arbre
    .good = D’équerre sur son arbre, vis serrées, repères de peinture refaits.
    .why = Le moyeu porte tout : son jeu casse vis et pales.
    .bad = Du jeu, une fissure, de la poussière de frottement, une vis desserrée ou absente.
    .square = D’équerre, serré et marqué
    .unmarked = Serré, repère absent
    .loose = Jeu, fissuré ou desserré

point-after-propeller-shaft = Arbre d’hélice, contre une pointe fixe
    .good = Mesuré comme le dit le manuel, il tourne rond, sans bruit et librement.
    .why = Un arbre tordu casse plus tard, en l’air.
    .bad = Il voile, gratte, force, ou personne ne l’a mesuré.
    .true = Mesuré, tourne rond
    .wobbles = Voile, gratte ou non mesuré

## Mounts and locknuts

point-after-mount-hardness = Plots, dureté au duromètre
    .good = Chacun des { $mounts } dans la plage, et tous pareils.
    .why = Un caoutchouc durci transmet les vibrations ; ramolli, il laisse le moteur battre.
    .bad = Hors de la plage, ou l’un différent des autres.

point-after-thread-protrusion = Filets au-delà des écrous, comptés
    .good = Filets entiers au-delà de l’écrou : le moins dépassant de tous est dans la plage.
    .why = Un écrou autofreiné ne tient que si le filet le traverse entièrement.
    .bad = Moins, ou un écrou autofreiné si usé qu’il tourne avec les doigts : remplacez-le.

## Starter

point-after-starter-screws = Lanceur et ses vis
    .good = Toutes les vis en place, marquées de peinture ; boîtier d’équerre à l’arbre.
    .why = Desserré, il est entraîné dans le volant moteur.
    .bad = Une vis desserrée ou absente, une fissure à une patte.
    .tight = Toutes serrées et marquées
    .unmarked = Serrées, repère absent
    .loose = Desserrée, absente, fissure

## Electric

point-after-motor-bolts = Vis du moteur, une fois serrées
    .good = Les { $mounts } à { $torque }, repères de peinture refaits.
    .why = L’hélice y est suspendue.
    .bad = Une vis qui ne donne jamais son déclic, une fissure, une vis absente.
    .at-torque = Toutes au couple, marquées
    .unmarked = Au couple, repère absent
    .loose = Desserrée, fissure ou absente

point-after-motor-direction = Sens de rotation du moteur
    .good = Essayé à bas régime sans son hélice, il tourne comme indiqué.
    .why = Deux câbles inversés le font tourner à l’envers.
    .bad = Il tourne dans l’autre sens, ou tressaute.
    .right-way = Tourne comme indiqué
    .other-way = Autre sens, ou tressaute

## Tools

point-after-tools-counted = Outils, chiffons, vieilles pièces
    .good = Comptés : tous rangés, lumières sans chiffon, clé détendue.
    .why = Ce qui est oublié rencontre l’hélice ou passe dans le moteur.
    .bad = Un manque : personne ne démarre le moteur avant qu’on l’ait trouvé.
    .all-back = Tout est rangé
    .one-missing = Il en manque un
