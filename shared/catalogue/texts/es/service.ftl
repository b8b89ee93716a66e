# Spanish. What is said of work on the engine; sections as in ../en/service.ftl.

occasion-after-service = Tras un trabajo

fault-occasion-needs-job = «{ $words }» sigue a un trabajo: su lista es lo que el trabajo tocó.
    .hint = Empieza primero el trabajo y di qué se hizo; entonces se compone su lista.

## Jobs: what was done, in one line

job-plug-changed = Cambio de bujía
    .what = La bujía estuvo fuera: renovada, o mirada y vuelta a poner.
job-head-retorqued = Apriete de la culata
    .what = Las tuercas de culata se aflojaron o se apretaron al par, en frío, con la culata puesta.
job-head-retorqued-again = Reapriete de la culata tras el primer depósito
    .what = Otra vez en frío, cada tuerca de culata se llevó de nuevo a su par, y se miraron las uniones.
job-cylinder-off = Desmontaje del cilindro
    .what = La culata y el cilindro estuvieron fuera, y se renovaron las dos juntas.
job-shroud-off = Desmontaje de la carcasa de refrigeración
    .what = La carcasa estuvo fuera, para limpiar o para llegar a lo que hay detrás.
job-exhaust-off = Desmontaje del escape
    .what = Se desengancharon los muelles y el escape estuvo fuera.
job-carburettor-cleaned = Limpieza del carburador
    .what = El carburador estuvo fuera, abierto y limpio.
job-intake-off = Desmontaje de la admisión
    .what = El carburador y la admisión que hay detrás estuvieron fuera.
job-propeller-changed = Cambio de hélice
    .what = La hélice estuvo fuera: cambiada, equilibrada o vuelta a poner.
job-propeller-retorqued = Reapriete de los tornillos de la hélice
    .what = Cada tornillo de la hélice se llevó de nuevo a su par.
job-reduction-adjusted = Ajuste de la reductora
    .what = Se tensó la correa, o se abrió la caja reductora.
job-belt-tensioned-again = Retensado de la correa
    .what = La correa hizo su primera hora, y se ajustó otra vez su tensión.
job-starter-repaired = Reparación del arranque
    .what = El arranque estuvo fuera: su cuerda, su muelle o su motor.
job-fuel-opened = Apertura del sistema de combustible
    .what = Un tubo de combustible estuvo suelto en el depósito o en el carburador.
job-mounts-renewed = Renovación de los soportes del motor
    .what = Los tacos de goma del motor se soltaron o se renovaron.
job-after-propeller-strike = Después de un golpe de hélice
    .what = La hélice golpeó algo: ella y su buje estuvieron fuera, y se mira todo lo que alcanzó el golpe.
job-motor-off = Desmontaje del motor eléctrico
    .what = El motor eléctrico estuvo fuera de sus soportes.
job-controller-changed = Cambio del variador
    .what = El variador estuvo fuera, o lo estuvieron sus cables.
job-battery-changed = Cambio de la batería de vuelo
    .what = La batería de vuelo estuvo fuera de sus correas.

## What falls due later

follow-up-head-retorque = Reapretar la culata tras el primer depósito, motor frío
follow-up-base-look = Volver a mirar la base del cilindro tras el primer depósito
follow-up-propeller-bolts-again = Reapretar los tornillos de la hélice tras la primera hora
follow-up-belt-again = Ajustar otra vez la tensión de la correa tras la primera hora

## Parts

graph-part-plug-cap = Capuchón de bujía
graph-part-plug = Bujía
graph-part-shroud = Carcasa de refrigeración
graph-part-exhaust = Escape
graph-part-exhaust-stub = Codo de escape
graph-part-head = Culata
graph-part-cylinder = Cilindro
graph-part-air-box = Caja de aire
graph-part-throttle-cable = Cable del gas
graph-part-fuel-line = Tubo de combustible
graph-part-pulse-line = Tubo de pulsos
graph-part-carburettor = Carburador
graph-part-intake = Admisión y sus láminas
graph-part-propeller = Hélice
graph-part-hub = Buje de la hélice
graph-part-belt = Correa de la reductora
graph-part-gear-oil-plug = Tapón de aceite de la caja reductora
graph-part-gear-cover = Tapa de la caja reductora
graph-part-starter-pull = Arranque manual
graph-part-starter-battery = Batería de arranque
graph-part-starter-motor = Motor de arranque
graph-part-crankcase = Cárter
graph-part-tank = Depósito de combustible
graph-part-frame = Chasis
graph-part-battery-lead = Conector de la batería de vuelo
graph-part-flight-battery = Batería de vuelo
graph-part-controller = Variador
graph-part-motor = Motor eléctrico

## Joints

joint-plug-cap-push = Capuchón en su bujía
joint-plug-thread = Bujía en la culata
joint-shroud-nuts = Fijaciones de la carcasa
joint-exhaust-springs = Muelles del escape
joint-exhaust-mounts = Soportes del escape
joint-exhaust-stub-nuts = Codo de escape en el cilindro
joint-head-nuts = Tuercas de culata
joint-head-seal = Culata en el cilindro
joint-base-nuts = Tuercas de la base del cilindro
joint-base-seal = Cilindro en el cárter
joint-air-box-clip = Grapa de la caja de aire
joint-throttle-cable-end = Cable del gas en el carburador
joint-fuel-line-carburettor = Tubo de combustible en el carburador
joint-fuel-line-tank = Tubo de combustible en el depósito
joint-pulse-line-ends = Los dos extremos del tubo de pulsos
joint-carburettor-clamp = Carburador en su admisión
joint-intake-screws = Admisión en el cárter
joint-propeller-bolts = Tornillos de la hélice
joint-hub-bolts = Tornillos del buje
joint-belt-adjuster = Tensor de la correa
joint-belt-run = Correa en sus poleas
joint-gear-oil-plug-thread = Tapón de aceite en la tapa de la caja reductora
joint-gear-cover-bolts = Tornillos de la tapa de la caja reductora
joint-starter-screws = Tornillos del arranque manual
joint-starter-lead = Cable del motor de arranque
joint-starter-motor-bolts = Tornillos del motor de arranque
joint-engine-mounts = Soportes del motor
joint-battery-lead-plug = Batería de vuelo en el variador
joint-battery-straps = Correas de la batería de vuelo
joint-phase-connectors = Cables del motor
joint-controller-screws = Tornillos del variador
joint-motor-bolts = Tornillos de los soportes del motor eléctrico

fastener-nut = tuercas
fastener-locknut = tuercas autoblocantes
fastener-bolt = tornillos
fastener-screw = tornillos
fastener-thread = enroscado
fastener-spring = muelles
fastener-clip = grapa
fastener-clamp = abrazadera
fastener-strap = correa
fastener-connector = conector
fastener-push = metido a presión
fastener-seal = junta
fastener-belt = correa

## What is renewed, and tools to count back

consumable-head-seal = Junta tórica o junta de culata
consumable-base-seal = Junta de la base o junta tórica
consumable-exhaust-gasket = Junta del escape
consumable-intake-gasket = Junta de la admisión
consumable-lock-wire = Alambre de frenado de los muelles del escape
consumable-fuel-clamp = Abrazaderas del tubo de combustible
consumable-gear-cover-gasket = Junta de la tapa de la caja reductora
consumable-gear-oil = Aceite de la caja reductora
consumable-mount-rubbers = Tacos de goma de los soportes

tool-torque-wrench = Llave dinamométrica de clic
tool-sockets = Vasos y alargadera
tool-plug-spanner = Llave de bujías
tool-pliers = Alicates
tool-spanners = Llaves fijas
tool-hex-keys = Llaves hexagonales
tool-screwdriver = Destornillador
tool-spring-hook = Gancho para muelles
tool-feeler-gauge = Galga de espesores
tool-port-rags = Trapos de las lumbreras abiertas
tool-oil-tray = Bandeja de aceite
tool-fuel-can = Bidón y embudo

## Limits

band-plug-gap = Separación de electrodos
band-plug-torque = Par de la bujía
band-base-nut-torque = Par de las tuercas de la base del cilindro
band-propeller-bolt-torque = Par de los tornillos de la hélice
band-motor-bolt-torque = Par de los tornillos del motor eléctrico
band-thread-protrusion = Hilos de rosca tras una tuerca autoblocante
band-compression = Compresión
band-exhaust-spring-tension = Tensión de los muelles del escape
band-mount-hardness = Dureza de los tacos de goma (Shore A)
band-belt-tension = Correa, cuánto cede
band-gear-play = Holgura de engranajes en la punta de pala

## Cautions

caution-cold-engine = Aprieta al par solo con el motor frío, en la unidad de la llave: libras-pulgada no son libras-pie. Nunca un poco más.
caution-seal-renewed = Una unión que rezumó se abre, se mira por dentro y se renueva: no basta con apretarla.
caution-daylight = Juzga el color a la luz del día: lámparas y pantallas lo tiñen.
caution-compression-turning = Interruptor de paro en parada, cable de bujía a masa, nadie al alcance de la hélice: al girar a mano el cigüeñal, el motor todavía puede encender.
caution-spring-flies = Un muelle estirado sale volando: ojos protegidos, y nunca tires de él con los dedos.
caution-strike-inside = Lo que un golpe dobló por dentro se ve tarde y falla de repente. El manual del fabricante dice qué hay que abrir y medir; el titular de una licencia, donde las normas lo pidan.
caution-direction-without-propeller = Prueba el sentido de giro con la hélice quitada: un motor que gira al revés empuja contra ti.
caution-wound-back = Devuelve la llave dinamométrica a su marca más baja. Lo que queda olvidado acaba en la hélice.

## Plug

point-after-plug-colour = Color de la punta de la bujía
    .good = Seca, marrón oscuro o café.
    .why = El blanco delata calor, a menudo una entrada de aire; quema pistones.
    .bad = Blanca, vidriada o con perlas; el tostado claro va camino de ello; mojada es mezcla rica.
    .brown = Marrón oscuro o café
    .tan = Tostado claro
    .wet = Negra y mojada
    .white = Blanca, vidriada o con perlas

point-after-plug-gap = Separación de electrodos, con galga
    .good = La galga roza ligeramente; el valor está dentro del margen.
    .why = Demasiado abierta falla en caliente, demasiado cerrada va mal al ralentí.
    .bad = Fuera del margen, o un electrodo quemado en bisel.

point-after-plug-seat = Bujía en su asiento
    .good = Empezada a mano, arandela aplastada, motor frío, { $torque }.
    .why = Floja, pierde presión y se sobrecalienta; forzada, arranca la rosca de la culata.
    .bad = Cruzada o dura en la rosca, levantada de su asiento, sin arandela.
    .pressed = A mano, arandela aplastada
    .stiff = Rosca dura, arandela aplastada
    .proud = Cruzada, levantada o floja

point-after-plug-terminal = Tuerca del terminal de la bujía
    .good = Apretada con alicates, rosca viva, el capuchón la agarra.
    .why = Un terminal que se desenrosca se lleva la chispa.
    .bad = Gira entre dos dedos, o falta.
    .pliers-tight = Apretada con alicates
    .worn = Apretada, rosca gastada
    .turns = Gira a mano, o falta

## Head and cylinder

point-after-head-nuts = Tuercas de culata, ya apretadas
    .good = Las { $nuts }, en cruz y por etapas hasta { $torque }, en frío; cada una giró un poco, todas igual.
    .why = Demasiado flojas, pierde y se calienta; demasiado apretadas, arrancan el espárrago del cárter.
    .bad = Una tuerca que nunca hace clic, o una que giró más de media vuelta.
    .clicked = Todas con clic, giro igual
    .one-moved-far = Con clic, una giró mucho
    .turns-on = Una sigue girando, o falta

point-after-base-nuts = Tuercas de la base, ya apretadas
    .good = Las { $nuts }, en cruz y por etapas hasta { $torque }, en frío.
    .why = El aire que entra bajo el cilindro lo deja pobre y caliente.
    .bad = Una tuerca que nunca hace clic, o una que giró más de media vuelta.
    .clicked = Todas con clic, giro igual
    .one-moved-far = Con clic, una giró mucho
    .turns-on = Una sigue girando, o falta

point-after-head-seal = Junta de culata y sus caras
    .good = Junta nueva, caras limpias y planas, nada pellizcado.
    .why = Una fuga aquí corta como un soplete.
    .bad = La junta vieja puesta otra vez, una cara picada o rayada.
    .new = Junta nueva, caras limpias
    .scratched = Junta nueva, cara rayada
    .old = Junta vieja otra vez

point-after-base-seal = Junta de la base y sus caras
    .good = Junta o junta tórica nueva, caras limpias, ningún agujero tapado.
    .why = El aceite que se ve aquí es aire que entra: detrás viene el calor.
    .bad = La vieja puesta otra vez, una cara picada, un conducto tapado.
    .new = Junta nueva, caras limpias
    .scratched = Junta nueva, cara rayada
    .old = Junta vieja otra vez

point-after-bore = Camisa y pistón, lado del escape
    .good = Uniformes y lisos todo alrededor, segmento libre en su ranura.
    .why = El calor raya primero el lado del escape; desde ahí se gripa.
    .bad = Rayas a lo largo, bordes fundidos, un segmento pegado o roto.
    .even = Uniformes, segmento libre
    .brown = Mancha marrón bajo el segmento
    .scored = Rayado, fundido, segmento pegado

point-after-compression = Compresión, con manómetro
    .good = Gas a fondo, varias vueltas: dentro del margen, y cerca de la última vez.
    .why = Cae antes que la potencia; un salto abajo delata segmento o junta.
    .bad = Por debajo del margen, o muy por debajo de la última vez.

## Shroud

point-after-shroud-nuts = Autoblocantes y arandelas de goma de la carcasa
    .good = Las { $mounts }: la rosca apenas asoma de la tuerca, arandela apenas apretada, carcasa sin deformar.
    .why = Una carcasa en tensión se agrieta desde sus agujeros como una telaraña.
    .bad = Carcasa deformada, arandela aplastada, una autoblocante que gira suelta.
    .just-through = Rosca asoma, arandela apretada
    .squeezed = Arandela aplastada
    .flexed = Carcasa deformada o agrietada
    .short = Rosca corta, o gira suelta

point-after-shroud-spacers = Separadores detrás de la carcasa
    .good = Uno en cada una de las { $mounts } fijaciones, derecho y entero.
    .why = Si falta uno, la carcasa se dobla al apretar la tuerca.
    .bad = Falta uno, está rajado, o hay dos en un sitio.
    .each-in = Uno en cada fijación
    .worn = Están todos, uno gastado
    .missing = Falta uno o está rajado

## Exhaust

point-after-exhaust-spring-tension = Muelles del escape, tirón con dinamómetro
    .good = Cada uno de los { $springs } tira dentro del margen, estirado hasta sus enganches.
    .why = El calor ablanda los muelles; uno flojo se desengancha en vuelo.
    .bad = Uno tira claramente menos que los otros, o sus espiras están separadas.

point-after-exhaust-stub = Codo de escape y su junta
    .good = Junta nueva, tuercas apretadas por igual, ninguna rosca arrancada.
    .why = El gas caliente junto al cilindro lo calienta y quema lo que encuentra.
    .bad = La junta vieja puesta otra vez, hollín, falta una tuerca.
    .new = Junta nueva, apriete igual
    .stud-worn = Apretado, espárrago gastado
    .old = Junta vieja, hollín o flojo

point-after-exhaust-mounts = Soportes del escape, gomas y tuercas
    .good = Gomas enteras, tuercas a fondo, escape sin tensiones.
    .why = Un escape que cuelga en tensión se agrieta por sus soldaduras.
    .bad = Una goma rota, una tuerca floja, o un tubo forzado a su sitio.
    .whole = Enteros, tuercas a fondo
    .crazed = Fisuras superficiales
    .torn = Roto, flojo o forzado

## Carburettor and intake

point-after-throttle-slide = Gas, de cerrado a fondo
    .good = Abre del todo y cierra de golpe, vaya como vaya el cable.
    .why = Atascado abierto, te lleva a donde no quieres ir.
    .bad = Se queda abierto, se engancha, o el extremo del cable está a medio asentar.
    .full-and-shut = Abre del todo, cierra de golpe
    .short = Cierra de golpe, abre corto
    .sticks = Se atasca, engancha o cuelga

point-after-carburettor-bowl = Tapas y purgas del carburador
    .good = Tapas bien asentadas, tornillos puestos, seco tras un minuto con combustible dentro.
    .why = El combustible que gotea cae sobre el escape.
    .bad = Mojado en una tapa, falta un tornillo, una junta salida.
    .dry = Seco, tornillos puestos
    .damp = Solo una película húmeda
    .wet = Mojado, o falta tornillo

point-after-pulse-line = Tubo de pulsos, los dos extremos
    .good = Flexible, metido a fondo en los dos extremos, sin dobleces.
    .why = Mueve la bomba de combustible; una fuga empobrece y calienta el motor.
    .bad = Suelto, rajado, doblado o pellizcado.
    .home = Flexible, extremos a fondo
    .hard = Duro, extremos a fondo
    .off = Suelto, rajado o pellizcado

point-after-intake-joint = Admisión en el cárter
    .good = Junta nueva, tornillos apretados por igual, sin hueco todo alrededor.
    .why = El aire que entra aquí deja el motor pobre y caliente.
    .bad = La junta vieja puesta otra vez, un hueco, un tornillo flojo.
    .new = Junta nueva, igual alrededor
    .old = Junta vieja otra vez
    .gap = Hueco, o tornillo flojo

## Fuel

point-after-fuel-ends = Extremos del tubo de combustible y abrazaderas
    .good = Metido a fondo, abrazadera detrás del reborde, seco tras un tirón firme.
    .why = El combustible que sale arde; el aire que entra deja el motor sin combustible.
    .bad = A medio meter, abrazadera floja o ausente, mojado.
    .home = A fondo, abrazaderas nuevas, seco
    .old-clamp = A fondo, seco, la vieja agarra
    .wet = A medias, flojo o mojado

point-after-fuel-air = Combustible cebado, aire fuera
    .good = Tubo lleno del depósito al carburador, ninguna burbuja en movimiento.
    .why = Una bolsa de aire para el motor justo después del despegue.
    .bad = Burbujas que no paran.
    .full = Lleno, sin burbujas
    .a-bubble = Alguna burbuja suelta
    .stream = Burbujas que no paran

## Reduction drive

point-after-belt-tension = Tensión de la correa, por lo que cede
    .good = Apretada en el centro como dice el manual, cede una longitud dentro del margen.
    .why = Floja patina y salta; demasiado tensa se come los rodamientos.
    .bad = Cede más o menos que el margen, o distinto según gira.

point-after-belt-adjuster = Tensor de la correa, bloqueado
    .good = Bloqueo apretado, marca de pintura nueva, poleas alineadas.
    .why = Un tensor que se desliza deja que la correa se afloje en vuelo.
    .bad = Gira a mano, o las poleas no están alineadas.
    .locked = Bloqueado y marcado
    .unmarked = Bloqueado, sin marca de pintura
    .turns = Gira, o desalineado

point-after-gear-play = Holgura de engranajes, en la punta de pala
    .good = Movida con suavidad contra el cigüeñal, la punta se mueve dentro del margen.
    .why = Una holgura que crece delata dientes o rodamientos gastados.
    .bad = Más que el margen, o un punto duro y áspero.

point-after-gear-cover = Tapa de la caja reductora, junta, tornillos
    .good = Junta nueva, caras limpias, tornillos apretados por igual y con marca de pintura.
    .why = Una caja reductora que pierde el aceite se desgasta y se bloquea.
    .bad = La junta vieja puesta otra vez, un tornillo flojo o ausente, aceite.
    .new = Junta nueva, tornillos marcados
    .unmarked = Junta nueva, falta la marca
    .old = Junta vieja, floja o con aceite

point-after-gear-oil = Aceite de la caja reductora y su tapón
    .good = En su nivel, de la clase que nombra el manual, tapón apretado y asegurado.
    .why = Sin aceite, se bloquea y para la hélice.
    .bad = Por debajo o por encima de su nivel, tapón flojo, o aceite desconocido.
    .at-level = En nivel, tapón asegurado
    .unsecured = En nivel, tapón sin alambre
    .short = Fuera de nivel, flojo, dudoso

## Propeller, hub, strike

point-after-propeller-bolts = Tornillos de la hélice, ya apretados
    .good = Los { $bolts }, en cruz y por etapas hasta { $torque }, con marca de pintura nueva.
    .why = Un tornillo flojo rompe los demás, y la hélice se va.
    .bad = Un tornillo que nunca hace clic, una cara del buje aplastada, uno que falta.
    .at-torque = Todos al par y marcados
    .unmarked = Al par, sin marca de pintura
    .loose = Flojo, pasado de rosca o falta

point-after-propeller-way = Hélice, en el sentido correcto
    .good = Girada como la gira el motor, los bordes redondeados van delante; las caras planas miran atrás.
    .why = Puesta al revés tira poco, y sus puntas flamean.
    .bad = Los bordes afilados van delante.
    .edges-lead = Bordes redondeados delante
    .back-to-front = Bordes afilados delante

point-after-hub-bolts = Buje en su eje
    .good = Derecho en su eje, tornillos apretados y con marca de pintura nueva.
    .why = El buje lo lleva todo: su holgura rompe tornillos y palas.
    .bad = Holgura, una grieta, polvo de roce, un tornillo flojo o ausente.
    .square = Derecho, apretado y marcado
    .unmarked = Apretado, sin marca de pintura
    .loose = Holgura, agrietado o flojo

point-after-propeller-shaft = Eje de la hélice, girado contra un índice
    .good = Medido como dice el manual, gira recto, en silencio y libre.
    .why = Un eje doblado se rompe más tarde, en el aire.
    .bad = Cabecea, rasca, se agarrota, o nadie lo ha medido.
    .true = Medido, gira recto
    .wobbles = Cabecea, rasca o sin medir

## Mounts and locknuts

point-after-mount-hardness = Taco de goma, dureza con durómetro
    .good = Cada uno de los { $mounts } dentro del margen, y parecidos.
    .why = Una goma endurecida transmite la vibración; reblandecida, deja bailar el motor.
    .bad = Fuera del margen, o uno distinto de los otros.

point-after-thread-protrusion = Hilos tras cada autoblocante, contados
    .good = Hilos enteros tras la tuerca: el menor de todos está dentro del margen.
    .why = Una tuerca autoblocante solo agarra con la rosca atravesándola entera.
    .bad = Menos, o una autoblocante tan gastada que gira con los dedos: renuévala.

## Starter

point-after-starter-screws = Arranque manual y sus tornillos
    .good = Todos los tornillos puestos, con marca de pintura; carcasa derecha respecto al eje.
    .why = Si se suelta, lo arrastra el volante.
    .bad = Un tornillo flojo o ausente, una grieta en una oreja.
    .tight = Todo apretado y marcado
    .unmarked = Apretado, sin marca de pintura
    .loose = Flojo, falta o agrietado

## Electric

point-after-motor-bolts = Tornillos del motor, ya apretados
    .good = Los { $mounts } a { $torque }, con marca de pintura nueva.
    .why = De estos cuelga la hélice.
    .bad = Un tornillo que nunca hace clic, una grieta, uno que falta.
    .at-torque = Todos al par y marcados
    .unmarked = Al par, sin marca de pintura
    .loose = Flojo, agrietado o falta

point-after-motor-direction = En qué sentido gira el motor
    .good = Probado a poca velocidad sin su hélice, gira como está marcado.
    .why = Dos cables cambiados lo hacen girar al revés.
    .bad = Gira al revés, o da tirones.
    .right-way = Gira como está marcado
    .other-way = Al revés, o da tirones

## Tools

point-after-tools-counted = Herramientas, trapos, piezas viejas
    .good = Contadas: todas de vuelta en su sitio, lumbreras sin trapos, llave destensada.
    .why = Lo que se deja atrás acaba en la hélice o pasa por dentro del motor.
    .bad = Falta una: nadie arranca el motor hasta que aparezca.
    .all-back = Todas en su sitio
    .one-missing = Falta una
