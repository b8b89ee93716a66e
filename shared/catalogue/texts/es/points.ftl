# Spanish. The form of a point's words is told in ../en/points.ftl.

## Stations

station-day = El día y los papeles
    .stand = Antes de tocar el paramotor, de cara al viento.
station-safe = Puesto en seguro
    .stand = Al lado del paramotor, con los brazos bien lejos de la hélice.
station-frame = Chasis y brazos
    .stand = Delante, donde irá tu espalda.
station-harness = Arnés, cintas, mosquetones
    .stand = Todavía delante, de rodillas, con las cintas en las manos.
station-tank = Combustible o batería
    .stand = Abajo, junto al chasis.
station-engine = El motor
    .stand = Detrás, y a un lado de la hélice.
station-controls = Mando de gas e interruptor de paro
    .stand = Otra vez delante, con el mando de gas en la mano.
station-propeller = Hélice y jaula
    .stand = Detrás de la jaula, con el paramotor todavía en seguro.
station-wing = Vela, líneas, bandas
    .stand = A lo largo de la vela de punta a punta, y después líneas abajo hasta las bandas.
station-run-up = Tú, y la prueba de motor
    .stand = Bien lejos de la vela, sin nadie al lado ni detrás de ti.

## Cautions

caution-able-to-fire = La hélice puede mutilar. Interruptor de paro en parada y capuchón de bujía quitado antes de acercar una mano.
caution-battery-live = La hélice puede mutilar. Batería de vuelo desconectada antes de acercar una mano.
caution-propeller-arc = Ninguna mano al alcance de la hélice si el paramotor no sigue en seguro. Si dudas, vuelve atrás y ponlo en seguro.
caution-now-live = Desde aquí la hélice puede girar: que nadie esté a su alcance, y tus propias manos tampoco.
caution-running-propeller = Una hélice girando apenas se ve, y lanza lo que golpea. Nadie al lado ni detrás de ti; el pulgar en el interruptor de paro.
caution-restraint = Nunca sujetes a mano un paramotor en marcha, y nunca des gas a fondo mientras esté suelto en el suelo.
caution-eyes-only = Las partes calientes queman. Solo mirar: antes de meter la mano, otra vez interruptor de paro en parada y capuchón de bujía quitado.
caution-eyes-only-motor = Solo mirar y oler: antes de meter la mano, otra vez batería de vuelo desconectada.
caution-hot-parts = Las partes calientes queman: deja enfriar el motor antes de tocarlo.
caution-leaking-joint = Deja enfriar el motor antes de tocarlo. Apretar, por sí solo, no repara una unión que pierde.
caution-coolant-pressure = El refrigerante caliente escalda: nunca abras el tapón antes de que el motor esté frío.
caution-fuel-vapour = El vapor de combustible arde: ninguna llama, no fumes, y guarda el teléfono mientras echas el combustible.
caution-battery-arc = Una batería puede dar un arco y arder: ni anillos ni herramientas cerca de sus contactos, y aléjate de la que se hincha o huele.
caution-reserve-lightly = Mira, y palpa con suavidad: no saques el pasador ni tires del asa para probarla.
caution-manual-first = Los manuales de los fabricantes y las normas locales van primero. Si difieren de esta lista, para y síguelos.
caution-pilot-judges = Una lista completa no es un vuelo seguro: el tiempo, el lugar y el piloto los juzgas tú.

## The day and the papers

point-weather = Viento, nubes y lluvia
    .good = Viento constante que sabes manejar, buena visibilidad, sin lluvia ni tormenta cerca.
    .why = Un paramotor en buen estado no compensa un aire malo.
    .bad = Rachas, viento que sube, nubes que crecen en altura; lluvia, niebla o truenos cerca.
    .steady = Constante, dentro de mi límite
    .building = Racheado, o nubes creciendo
    .stormy = Demasiado fuerte, lluvia o tormenta

point-site = Campo de despegue y espacio aéreo
    .good = Carrera libre contra el viento, escapatoria si se para el motor, espacio aéreo abierto hoy.
    .why = Los cables, la turbulencia tras los árboles y el espacio aéreo cerrado sorprenden tarde.
    .bad = Cables, árboles o gente delante, mal suelo, espacio aéreo cerrado o sin consultar.
    .open = Carrera libre, espacio aéreo abierto
    .tight = Justo, o con límites que respetar
    .closed = Obstruido, cerrado o sin saber

point-papers = Licencia, seguro y demás papeles
    .good = Llevas encima y en vigor todo lo que piden las normas.
    .why = Después de un accidente, estas fechas se leen lo primero.
    .bad = Falta uno, o su fecha ha pasado.
    .in-date = Conmigo y en vigor
    .soon = Uno caduca este mes
    .run-out = Falta o ha caducado

point-self = Tú: descanso, salud, calma
    .good = Descanso, comida, salud, nada de alcohol, y nadie que te empuje a volar.
    .why = Con cansancio o prisas se pasa por alto lo que un piloto fresco ve.
    .bad = Enfermedad, agotamiento, disgusto, o alcohol o medicación fuerte en el cuerpo.
    .rested = Con descanso, bien, sin prisa
    .tired = Con cansancio o prisas
    .unwell = Mal, alcohol o medicación fuerte

## Made safe

point-kill-switch-off = Interruptor de paro, en parada
    .good = Girado a parada; un simple pulsador está entero y vuelve solo.
    .why = El primero de dos seguros. Algunos pulsadores solo paran mientras se pulsan.
    .bad = Dejado en marcha, o tan flojo que no se distingue.
    .at-stop = Girado a parada
    .springs-back = Pulsador entero, vuelve solo
    .at-run = En marcha, flojo o roto

point-plug-cap-off = Capuchón de bujía, quitado
    .good = Sacado de cada bujía y sujeto donde no pueda volver a tocar ninguna.
    .why = El segundo seguro: un cable de paro se rompe sin verse; una bujía sin capuchón no da chispa.
    .bad = Puesto, a medio poner, o colgando contra la bujía.
    .off = Quitado, sujeto aparte
    .still-on = Puesto, o toca la bujía

point-starter-isolated = Batería de arranque, cortada
    .good = Interruptor general abierto o conector separado: el botón de arranque no hace nada.
    .why = Un roce del botón haría girar la hélice.
    .bad = Sigue conectada, o el interruptor no muestra en qué posición está.
    .apart = Cortada o desconectada
    .live = Conectada, o no se distingue

point-battery-isolated = Batería de vuelo, cortada
    .good = Conector separado o interruptor general abierto, pantalla apagada.
    .why = Un motor eléctrico arranca sin ruido y con toda su fuerza.
    .bad = Sigue conectada, pantalla encendida, o no lo puedes saber.
    .apart = Desconectada, pantalla apagada
    .joined = Conectada, o pantalla encendida

## Frame and arms

point-arm-pivots = Articulaciones de los brazos y tornillos
    .good = Cada tornillo pasante, su tuerca a fondo, sin holgura al levantar el brazo.
    .why = De estas dos uniones cuelgas tú.
    .bad = Holgura, una grieta, un tornillo doblado, o una tuerca que se ha movido.
    .firm = Firmes, tuercas a fondo
    .play = Algo de holgura, tuercas a fondo
    .loose = Flojo, agrietado, falta tuerca
    .without = Chasis sin brazos

point-arms-and-straps = Brazos y sus cintas de seguridad
    .good = Brazos rectos y sin grietas, una cinta unida y entera en cada lado.
    .why = La cinta te sostiene si el brazo se rompe.
    .bad = Un doblez, una grieta, o una cinta cortada, gastada del todo o sin cerrar.
    .straight = Rectos, cintas unidas
    .marked = Brazo rayado o cinta con pelusa
    .bent = Doblado, agrietado, cinta suelta
    .without = Chasis sin brazos

point-frame-joints = Tubos, soldaduras y uniones del chasis
    .good = Rectos y sin grietas, cada unión metida a fondo con su pasador o grapa.
    .why = Las grietas empiezan en soldaduras y agujeros, y la vibración las hace crecer.
    .bad = Un doblez, una grieta o línea de óxido en una soldadura, falta un pasador o grapa.
    .whole = Rectos, pasadores a fondo
    .dented = Abolladura o roce, sin grietas
    .cracked = Doblado, agrietado, sin pasador

## Harness, straps, carabiners

point-leg-straps = Perneras y sus hebillas
    .good = Cinta y costuras enteras, cada hebilla cierra y aguanta un tirón fuerte.
    .why = Solo ellas impiden que te escurras del asiento.
    .bad = Un corte, una costura abierta, o una hebilla que resbala o cierra a medias.
    .hold = Enteras, las dos hebillas aguantan
    .fluffed = Borde con pelusa, hebillas aguantan
    .slip = Corte, o una hebilla resbala

point-carabiner-gates = Gatillos de los dos mosquetones
    .good = Al soltarlo, cada uno se cierra solo de golpe y su seguro entra hasta el final.
    .why = Con el gatillo abierto, un mosquetón aguanta solo una parte de su carga.
    .bad = Lento o áspero, doblado, o un seguro que no engancha.
    .snap = Cierran de golpe, seguro entra
    .gritty = Ásperos, pero cierran con seguro
    .stay-open = Se quedan abiertos o sin seguro

point-carabiner-bodies = Cuerpo de los mosquetones y su cinta
    .good = Metal liso y recto, dentro de la edad del fabricante; cinta y costuras enteras.
    .why = Una muesca en el metal o en la cinta es por donde cede.
    .bad = Una muesca, surco, grieta o doblez, costura cortada, o edad pasada.
    .smooth = Lisos, cinta entera
    .scratched = Rayado leve o pelusa
    .notched = Muesca, grieta, corte, edad pasada

point-chest-strap = Cinta pectoral y hombreras
    .good = Costuras enteras, hebillas que aguantan, las dos hombreras igual de largas.
    .why = La pectoral sujeta las hombreras, y decide cómo cuelgas.
    .bad = Un corte, una costura abierta, una hebilla que resbala, o un lado más largo.
    .even = Enteras e iguales
    .fluffed = Borde con pelusa, hebillas aguantan
    .slips = Corte, resbala o desigual

point-harness-fixings = Asiento, costuras y fijaciones al chasis
    .good = Tabla del asiento y costuras enteras, cada fijación al chasis cerrada y firme.
    .why = Estas fijaciones te unen al paramotor.
    .bad = Una costura rota, un asiento agrietado, una fijación floja o abierta.
    .closed = Entero, fijaciones cerradas
    .worn = Costura gastada, todo cerrado
    .torn = Roto, agrietado o flojo

point-reserve-pin = Pasador del paracaídas y su lazo
    .good = Recto, metido del todo en un lazo sin deshilachar, solapas cerradas encima.
    .why = A medio salir, suelta el paracaídas hacia la hélice.
    .bad = Doblado, a medio salir, algo tira de él, o el lazo deshilachado.
    .through = Recto, metido del todo
    .rust-spot = Mate u óxido, metido del todo
    .half-out = Doblado, a medias, lazo deshilachado

point-reserve-handle = Asa del paracaídas
    .good = Asentada en su funda, nada encima; tu mano la encuentra sin mirar.
    .why = Tienes un solo agarre, con prisa y con tu propio peso aplastándote.
    .bad = Colgando, o debajo de una cinta, un cordón o el cable de la radio.
    .seated = Asentada, libre para agarrar
    .worn = Asentada, funda gastada
    .covered = Suelta o tapada

point-reserve-repack = Fecha de plegado en su ficha
    .good = La ficha está con el paracaídas, y la fecha está por delante.
    .why = La tela doblada demasiado tiempo se abre tarde.
    .bad = La fecha ha pasado, o la ficha falta o no se lee.
    .ahead = La fecha está por delante
    .soon = Vence dentro de un mes
    .past = Pasada, falta o no se lee

## What it runs on

point-fuel-on-board = Combustible a bordo
    .good = Suficiente para el vuelo y una reserva; en el depósito caben { $tank }.
    .why = Un motor que se queda seco elige tu campo de aterrizaje.
    .bad = Menos que el vuelo y una reserva, o un indicador que no puede ser cierto.

point-fuel-mix = El combustible: fresco, limpio, con aceite
    .good = Fresco y limpio, con aceite según el manual del fabricante del motor.
    .why = Sin su aceite el motor se gripa; el agua lo para.
    .bad = Aceite olvidado o dudoso, agua o suciedad en el fondo, olor agrio.
    .known = Fresco, limpio, aceite conocido
    .stale = De hace semanas, limpio
    .unsure = Aceite dudoso, agua o suciedad

point-tank-walls = Depósito, costuras y correas
    .good = Seco por todas partes, bien sujeto, sin rozar con nada.
    .why = El combustible que gotea sobre un escape caliente arde.
    .bad = Mojado, agrietado, adelgazado por el roce, o suelto en sus correas.
    .dry = Seco, bien sujeto
    .stained = Mancha vieja o marca de roce
    .wet = Mojado, agrietado o suelto

point-tank-cap = Tapón de llenado y respiradero
    .good = Tapón apretado en su junta, respiradero abierto y sin doblar.
    .why = Un respiradero cerrado deja al motor sin combustible; un tapón flojo derrama sobre el escape.
    .bad = Tapón flojo, junta rajada, respiradero obstruido, doblado o cerrado.
    .tight = Tapón firme, respiradero abierto
    .worn = Tapón firme, junta gastada
    .blocked = Tapón flojo o respiradero cerrado

point-fuel-line = Tubo de combustible y sus extremos
    .good = Flexible de punta a punta, lejos de lo caliente, abrazadera en cada extremo, llave (si la hay) abierta.
    .why = El aire que entra aquí empobrece y calienta el motor; el combustible que sale arde.
    .bad = Duro, agrietado, rozado, doblado, mojado, o suelto en un extremo.
    .supple = Flexible, con abrazaderas
    .hard = Duro o amarillo, seco
    .split = Grieta, doblez, suelto, mojado

point-fuel-filter = Filtro de combustible y pera de cebado
    .good = Filtro limpio; la pera de cebado, si la hay, firme y sin grietas.
    .why = La suciedad o el aire aquí cortan el combustible al subir.
    .bad = Filtro oscuro, burbujas que no paran, pera blanda o agrietada.
    .clear = Limpio, sin burbujas
    .specks = Algunas motas
    .dirty = Sucio, con burbujas o agrietado

point-injection-oil = Aceite en su propio depósito
    .good = Por encima de la marca para este vuelo, tubo lleno de aceite.
    .why = Sin aceite, el motor se gripa.
    .bad = Por debajo de la marca, o aire en el tubo.
    .above = Por encima de la marca
    .at-mark = En la marca
    .under = Por debajo, o se ve aire

point-pack-voltage = Tensión de la batería, en reposo
    .good = Dentro del margen para { $cells } celdas en serie, cargador separado, en reposo.
    .why = Dice cuánta carga tiene; demasiado alta, puede incendiarse.
    .bad = Por debajo del margen, demasiado vacía para volar; por encima, sobrecargada.

point-battery-case = Caja de la batería y sus correas
    .good = Lados planos, secos y fríos, correas tan tensas que no se mueve.
    .why = Una batería hinchada, abollada o mojada puede incendiarse debajo de ti.
    .bad = Hinchada, abollada, agrietada, caliente, mojada, o se puede mover.
    .flat = Plana, fría, bien sujeta
    .scuffed = Rozada, plana y seca
    .swollen = Hinchada, abollada, mojada o suelta

point-battery-contacts = Contactos y conectores
    .good = Metal brillante, contactos rectos y firmes, plástico de su color.
    .why = Un mal contacto da un arco, se funde y para el motor.
    .bad = Plástico marrón o fundido, un contacto suelto, metal picado.
    .bright = Brillantes y firmes
    .dull = Mates, firmes
    .burnt = Quemado, picado o suelto

point-battery-leads = Cables de la batería
    .good = Funda entera, sujetos lejos de la hélice, de lo caliente y de los cantos vivos.
    .why = Un cable pelado pone en cortocircuito toda la batería.
    .bad = Cortado, pellizcado o pelado, o colgando donde llega la hélice.
    .clipped = Enteros y sujetos
    .rubbed = Rozados, funda entera
    .bare = Cortado, pellizcado o colgando

## The motor

point-cylinder-base = Base del cilindro, todo alrededor
    .good = Metal seco, ninguna línea oscura bajo las aletas.
    .why = Aceite aquí significa que entra aire: mezcla pobre (poco combustible), y calor.
    .bad = Una línea mojada u oscura donde el cilindro se une al cárter.
    .dry = Seca
    .old-stain = Mancha vieja, seca al tacto
    .wet = Mojada

point-cylinder-head = Unión de la culata y sus tuercas
    .good = Seca todo alrededor, cada una de las { $nuts } tuercas en su sitio.
    .why = Una fuga aquí calienta el cilindro que debería cerrar.
    .bad = Una línea mojada o de hollín en la unión, o falta una tuerca.
    .dry = Seca, todas las tuercas
    .old-stain = Mancha vieja, seca al tacto
    .wet = Mojada, hollín, falta tuerca

point-carburettor-joint = Carburador en su admisión
    .good = No se balancea; goma o junta entera, fijaciones apretadas, seco por debajo.
    .why = El aire que se cuela aquí deja el motor pobre y caliente.
    .bad = Se balancea, la goma está rajada, una fijación floja, o está mojado.
    .firm = Firme, goma entera
    .crazed = Firme, fisuras superficiales
    .rocks = Se mueve, rajado o mojado

point-intake-clip = Caja de aire y su grapa
    .good = Caja firme, grapa cerrada, filtro limpio y entero.
    .why = Si se suelta, altera la mezcla y vuela hacia la hélice.
    .bad = Grapa abierta o ausente, caja suelta, filtro roto o empapado.
    .closed = Grapa cerrada, filtro limpio
    .dusty = Grapa cerrada, filtro con polvo
    .open = Abierta, suelta o rota

point-shroud-face = Carcasa de refrigeración, caras y esquinas
    .good = Entera, sobre todo en esquinas y agujeros, donde empiezan las grietas; nada atrapado dentro.
    .why = El aire de refrigeración que se escapa por una grieta deja caliente el cilindro.
    .bad = Cualquier grieta, un trozo que falta, hojas o hierba en el paso del aire.
    .whole = Sin grietas, libre por dentro
    .hairline = Fisura
    .through = Grieta pasante u obstruida

point-shroud-mounts = Fijaciones de la carcasa, tuercas y arandelas
    .good = Las { $mounts } sujetas, arandelas de goma apenas apretadas, carcasa sin deformar.
    .why = Demasiado apretada empieza a agrietarse en araña; demasiado floja, la vibración la destroza.
    .bad = Una grieta desde un agujero, falta una tuerca o arandela, una tuerca deforma la carcasa.
    .held = Sujetas, sin grietas
    .hairline = Fisura, o arandela aplastada
    .through = Grieta pasante, floja o falta

point-cylinder-fins = Aletas de refrigeración y su color
    .good = Huecos libres, aletas enteras, metal del mismo color que la última vez.
    .why = Las aletas obstruidas dan calor; un tono azul o marrón muestra que lo hubo.
    .bad = Hierba, barro o un nido entre aletas, una aleta rota, color quemado.
    .clear = Libres, mismo color
    .darker = Con polvo, o algo más oscuras
    .blocked = Obstruidas, rotas o quemadas
    .finless = Cilindro sin aletas

point-ground-under = Suelo debajo del paramotor
    .good = Seco donde estuvo.
    .why = Una gota en el suelo tiene una fuga encima.
    .bad = Combustible, aceite o refrigerante frescos: busca de dónde vienen.
    .dry = Seco
    .spot = Una mancha vieja de aceite
    .fresh = Gotas frescas o un charco

point-engine-mounts = Soportes del motor y tacos de goma
    .good = Los { $mounts } tacos de goma enteros, tuercas puestas; al empujarlo, el motor cede por igual.
    .why = Un soporte roto deja que la hélice dé contra la jaula.
    .bad = Un taco roto, una tuerca que se ha movido, metal contra metal.
    .whole = Tacos enteros, con tuercas
    .crazed = Fisuras superficiales
    .torn = Roto, flojo o falta

point-exhaust-springs = Muelles del escape y sus enganches
    .good = Los { $springs } enganchados por los dos extremos y asegurados para que no salgan volando.
    .why = Un muelle que se suelta vuela derecho a la hélice.
    .bad = Uno roto, desenganchado o sin asegurar, o un enganche adelgazado.
    .hooked = Enganchados y asegurados
    .worn = Enganche gastado, asegurado
    .missing = Roto, suelto o sin asegurar

point-exhaust-body = Tubo de escape, silenciador y soportes
    .good = Sin grietas, soportes enteros, sin hollín fresco en las uniones.
    .why = Aquí una grieta crece deprisa, y los trozos acaban en la hélice.
    .bad = Una grieta, un soporte roto, una parte que traquetea, mucho hollín en una unión.
    .whole = Entero, soportes firmes
    .sooty = Algo de hollín en una unión
    .cracked = Agrietado, flojo o roto

point-plug-terminal = Terminal de la bujía y agarre del capuchón
    .good = Bujía enroscada a fondo, terminal apretado, capuchón entero con su agarre y su sujeción.
    .why = Un capuchón que se suelta por la vibración para el motor en el aire.
    .bad = Terminal que gira a mano, capuchón rajado, agarre flojo, sujeción rota o perdida.
    .tight = Terminal apretado, capuchón agarra
    .worn = Apretado, sujeción gastada
    .loose = Flojo, rajado o sin agarre

point-plug-lead = Cable de la bujía
    .good = Funda entera, firme en capuchón y bobina, sujeto lejos de aletas y escape.
    .why = Una chispa que encuentra otro camino te deja sin motor.
    .bad = Cortado, quemado, rozando metal, o suelto en un extremo.
    .clipped = Entero y sujeto
    .rubbed = Rozado, funda entera
    .bare = Cortado, quemado o suelto

point-engine-hardware = Tuercas, tornillos y marcas de pintura
    .good = Cada tuerca, grapa y alambre en su sitio, marcas de pintura alineadas.
    .why = La vibración lo afloja todo, y la hélice atrapa lo que cae.
    .bad = Una marca desalineada, metal brillante junto a una tuerca, algo que falta.
    .aligned = Todo está, marcas alineadas
    .faded = Todo está, marca borrada
    .turned = Girada, floja o falta

point-reduction-belt = Correa de la reductora y poleas
    .good = Bordes enteros, correa centrada y tensa por igual según su manual.
    .why = Una correa que patina o se rompe te quita el empuje.
    .bad = Deshilachada, con grietas de través, descentrada, floja, con aceite.
    .centred = Entera, centrada, tensa
    .shiny = Brillante o con algo de pelusa
    .frayed = Deshilachada, grietas, floja, aceite

point-reduction-gear = Caja reductora, retenes y tapones
    .good = Cárter seco, tapones de aceite puestos y asegurados, ningún tornillo de menos.
    .why = Una caja reductora que ha perdido el aceite se desgasta y se bloquea.
    .bad = Aceite que gotea de un retén o tapón, una grieta, un tornillo flojo.
    .dry = Seca, tapones asegurados
    .film = Película fina de aceite
    .drips = Gotea, agrietada o floja

point-starter-cord = Cuerda y tirador de arranque
    .good = Al tirar con suavidad, la cuerda está entera y se recoge del todo; nudo del tirador firme.
    .why = Una cuerda que cuelga se enrolla en la hélice.
    .bad = Deshilachada, nudo que corre, carcasa floja, o cuelga.
    .winds-back = Entera, se recoge del todo
    .fluffed = Con pelusa, se recoge del todo
    .hangs-out = Deshilachada, floja, cuelga

point-starter-motor = Motor de arranque y su batería
    .good = Motor firme en sus tornillos, batería atada y plana, cables sujetos.
    .why = Un cable o una batería que se suelta arde, o acaba en la hélice.
    .bad = Tornillos flojos, batería hinchada, contacto quemado, cable colgando.
    .firm = Firme, cables sujetos
    .dull = Firme, contacto mate
    .loose = Suelto, hinchado o quemado

point-engine-oil = Aceite del motor en su varilla
    .good = Entre las marcas, motor nivelado, aceite limpio y claro.
    .why = Poco aceite, o agua en él, destroza los cojinetes en minutos.
    .bad = Por debajo de la marca baja, por encima de la alta, o lechoso.
    .between = Entre las marcas
    .at-low-mark = En la marca baja
    .under = Fuera de las marcas, o lechoso

point-coolant = Refrigerante y sus manguitos
    .good = En la marca de nivel, en frío; manguitos flexibles, abrazaderas apretadas, todo seco.
    .why = Sin refrigerante, el motor se sobrecalienta en minutos.
    .bad = Por debajo de la marca, mojado, un manguito blando, agrietado o rozando.
    .full = En la marca, seco
    .old-stain = Mancha vieja, mismo nivel
    .low = Bajo, mojado o agrietado

point-motor-mounts = Soportes del motor, tornillos, marcas de pintura
    .good = Los { $mounts } soportes firmes y sin grietas, tornillos puestos, marcas de pintura alineadas.
    .why = La vibración afloja los tornillos, y de estos cuelga la hélice.
    .bad = Una marca desalineada, una grieta, un tornillo flojo o ausente.
    .aligned = Firmes, marcas alineadas
    .faded = Firmes, marca borrada
    .turned = Girado, agrietado o falta

point-motor-windings = Bobinado y rodamientos del motor
    .good = Color uniforme, limpio; girado a mano va en silencio y sin holgura.
    .why = Un bobinado quemado o unos rodamientos secos lo paran, y antes se calientan.
    .bad = Bobinado oscuro o que huele, polvo de metal, un roce, holgura.
    .turns = Limpio, gira en silencio
    .dusty = Con polvo, gira en silencio
    .scrapes = Roza, oscuro o huele

point-motor-cables = Cables y conectores del motor
    .good = Cada uno metido a fondo y enclavado, funda entera, plástico de su color.
    .why = Una mala conexión de las tres hace que el motor dé tirones y se pare.
    .bad = Suelto, marrón o fundido, rozando, o cerca de la hélice.
    .home = A fondo, mismo color
    .tinted = A fondo, algo teñido
    .loose = Suelto, fundido o rozando

point-motor-controller = Variador y su refrigeración
    .good = Firme, seco, refrigeración libre, ninguna mancha oscura.
    .why = Dosifica toda la potencia; caliente o mojado, corta.
    .bad = Mojado, suelto, hinchado, quemado, o con la refrigeración obstruida.
    .dry = Firme, seco y libre
    .dusty = Con polvo, firme y seco
    .wet = Mojado, quemado u obstruido

## Throttle and kill switch

point-throttle-return = Palanca de gas, al soltarla
    .good = Apretada a fondo y soltada, vuelve sola del todo; bloqueo de crucero quitado.
    .why = Un gas que se queda abierto te lleva a donde no quieres ir.
    .bad = Lenta, áspera o se engancha, en cualquier posición del brazo.
    .springs-back = Vuelve sola del todo
    .slow = Lenta, pero vuelve del todo
    .sticks = Se engancha o queda abierta

point-throttle-free-travel = Juego libre del gas
    .good = Un poco de juego en el cable antes de que abra el carburador.
    .why = Sin juego, mover el brazo abre el gas por sí solo.
    .bad = Sin juego, o con tanto que se pierde el gas a fondo.

point-control-leads = Interruptor de paro, cable e hilos
    .good = Botón libre y entero; todo cable atado lejos de la hélice, funda entera.
    .why = Un hilo roto te deja sin poder parar la hélice.
    .bad = Un botón que se engancha, un doblez, un hilo pelado, un cable al alcance de la hélice.
    .whole = Entero y atado lejos
    .rubbed = Rozado, funda entera
    .bare = Pelado, doblado, enganchado, colgando

## Propeller and cage

point-propeller-hub = Buje de la hélice y tornillos
    .good = Los { $bolts } tornillos puestos, marcas alineadas, buje sin grietas ni holgura.
    .why = Un tornillo flojo rompe los demás, y la hélice se va.
    .bad = Una marca desalineada, falta un tornillo, una grieta, polvo de roce, u holgura.
    .firm = Firme, marcas alineadas
    .faded = Firme, marca borrada
    .loose = Holgura, grieta, girado o falta

point-propeller-edges = Bordes de ataque y puntas
    .good = Cada pala lisa y entera del buje a la punta.
    .why = Una mella se vuelve grieta, y unas palas desiguales destrozan el paramotor a vibraciones.
    .bad = Una mella que engancha la uña, una raja, cinta de borde levantada, un trozo perdido.
    .smooth = Lisos y enteros
    .scuffed = Roce, la uña no engancha
    .nicked = Mella, raja o levantado

point-propeller-faces = Caras de las palas, delante y detrás
    .good = Uniformes y duras del buje a la punta, por los dos lados.
    .why = Una pala agrietada sale lanzada, y nada la detiene.
    .bad = Una grieta, una ampolla, un sitio blando o que suena sordo.
    .even = Uniformes, sin grietas
    .scratched = Rayado solo en la superficie
    .cracked = Grieta, ampolla o blanda

point-propeller-tracking = Alineación de las puntas, pala contra pala
    .good = Girada despacio a mano, cada punta pasa por el mismo sitio de la jaula.
    .why = Puntas en caminos distintos delatan un buje, una pala o un eje doblado.
    .bad = Las puntas pasan separadas, más de lo que permite el margen.

point-cage-hoop = Aros, radios y uniones de la jaula
    .good = Redonda, uniones cerradas y enclavadas, bien separada de las palas todo alrededor.
    .why = Mantiene separados manos, líneas y hélice.
    .bad = Agrietada o doblada, una unión abierta, o tan cerca que las palas pueden tocar.
    .round = Redonda, uniones enclavadas
    .bent = Algo doblada, palas libres
    .close = Agrietada, abierta o cerca

point-cage-net = Red, hilo por hilo
    .good = Tensa por todas partes, cada hilo y nudo entero.
    .why = Por el agujero que queda se cuela una mano o una empuñadura de freno.
    .bad = Un hilo roto, un agujero, o tan floja que llega a las palas.
    .tight = Tensa, hilos enteros
    .slack = Algo floja, hilos enteros
    .torn = Agujero, o hilo roto

## Wing, lines, risers

point-lines-free = Líneas, libres de la tela a la banda
    .good = Cada grupo de líneas corre libre; bandas sin torcer, líneas de freno por fuera.
    .why = Una sola línea enganchada puede girar la vela contra el suelo.
    .bad = Un nudo, una vuelta o una rama, o una línea enlazada en una punta.
    .free = Libres de punta a punta
    .caught = Nudo, vuelta, rama o lazo

point-risers-links = Bandas y maillones
    .good = Cinta y costuras enteras, cada maillón cerrado a tope.
    .why = Todas tus líneas acaban en estos pocos maillones.
    .bad = Cinta cortada, costura abierta, un maillón abierto, agrietado u oxidado.
    .shut = Enteras, maillones cerrados
    .fluffed = Borde con pelusa, maillones cerrados
    .open = Corte, o un maillón abierto

point-canopy = Tela de la vela y bocas de los cajones
    .good = Tela y costuras enteras y secas, cada cajón abierto y vacío.
    .why = Un desgarro corre, y un cajón mojado u obstruido se abre el último.
    .bad = Un desgarro, una costura abierta, tela empapada, arena, nieve o hierba en un cajón.
    .whole = Entera, seca, cajones vacíos
    .pinhole = Agujerito, o algo húmeda
    .torn = Rota, empapada o con restos

point-line-sheaths = Fundas de las líneas y ojales
    .good = Funda entera, ojales cosidos, ningún sitio rígido o fino.
    .why = Una línea se rompe primero donde asoma el alma.
    .bad = El alma a la vista, un sitio fino, rígido o quemado, una costura abierta.
    .whole = Entera de punta a punta
    .furry = Con pelusa, alma cubierta
    .core = Alma a la vista, fina, rígida

point-trimmers = Trimmers y acelerador
    .good = Los dos trimmers en la marca de despegue del manual de la vela; líneas del acelerador, si las hay, libres.
    .why = Unos trimmers desiguales te hacen girar desde el primer paso.
    .bad = Desiguales, resbalan, gastados en la hebilla, o una línea del acelerador enganchada.
    .same-mark = Misma marca, hebillas agarran
    .worn = Misma marca, cinta gastada
    .uneven = Desiguales, resbalan, enganchados
    .without = Vela sin trimmers

point-brakes = Nudos, poleas y empuñaduras de freno
    .good = Nudos firmes, líneas que corren en las poleas, empuñaduras sujetas en las bandas.
    .why = Con ellos giras y aterrizas; una empuñadura suelta acaba en la hélice.
    .bad = Un nudo que corre, una línea deshilachada, una polea dura, una sujeción que suelta.
    .firm = Nudos firmes, poleas giran
    .furry = Línea con pelusa, nudos firmes
    .slips = Corre, deshilachada, dura, cuelga

## You, and the run-up

point-helmet = Casco, oídos y radio
    .good = Casco entero y abrochado, oídos protegidos; la radio, si la llevas, se oye.
    .why = Sin abrochar, se pierde antes de que tu cabeza dé con algo.
    .bad = Barboquejo abierto o flojo, calota agrietada, radio muda.
    .radio-heard = Abrochado, la radio se oye
    .without-radio = Abrochado, vuelo sin radio
    .radio-silent = Abrochado, radio muda
    .open = Sin abrochar, flojo, agrietado

point-loose-ends = Ropa, bolsillos y cabos sueltos
    .good = Botas y guantes puestos, bolsillos cerrados, cada cordón y punta de cinta recogidos.
    .why = La hélice se traga lo que le llega.
    .bad = Una bufanda, cordón, cámara o cinta colgando; manos desnudas, zapato bajo.
    .tied = Ropa puesta, todo cerrado y atado
    .thin = Recogido, poca ropa para hoy
    .loose = Cuelga, abierto o sin guantes

point-plug-cap-on = Capuchón de bujía, otra vez puesto
    .good = Metido a fondo en cada bujía, sujeción cerrada; aguanta un tirón firme.
    .why = A medio poner, se suelta vibrando en la subida.
    .bad = A medio poner, sujeción abierta, o se levanta al tirar.
    .home = A fondo, aguanta un tirón
    .lifts = A medio poner, o se levanta

point-battery-joined = Batería conectada, pantalla leída
    .good = Conector a fondo y enclavado, pantalla sin avisos, gas a cero.
    .why = La pantalla puede señalar una celda débil antes de que la notes.
    .bad = Un conector a medias, una alarma, o un motor que da tirones.
    .home = Enclavado, pantalla sin avisos
    .notice = Enclavado, se ve un aviso
    .alarm = Alarma, a medias, o da tirones

point-stance = Tu postura, y lo que la sostiene
    .good = A la espalda, perneras y pectoral cerradas, pies afianzados; o atado a algo firme.
    .why = A fondo, tira con fuerza bastante para tumbarte.
    .bad = Sujeto a mano, apoyado en el suelo, o con una cinta abierta.
    .worn = Puesto, cintas cerradas, pies firmes
    .tied = Atado a algo que aguanta
    .by-hand = A mano, apoyado o abierto

point-area-clear = Espacio alrededor y detrás de ti
    .good = Nadie al lado ni detrás; sin piedras sueltas; vela desenganchada, fuera del chorro.
    .why = Las palas rotas salen hacia los lados; piedras y líneas vuelan hacia la hélice.
    .bad = Gente, animales, cosas sueltas o la vela al alcance de la hélice o del chorro.
    .clear = Libre por todos lados
    .near = Alguien o algo cerca

point-kill-stops-engine = Interruptor de paro, motor al ralentí
    .good = Pulsado al ralentí, antes de dar gas a fondo: el motor se para al instante.
    .why = Es tu modo más rápido de parar la hélice.
    .bad = El motor sigue, o se para solo a la segunda pulsación.
    .dies = El motor se para al instante
    .runs-on = Sigue, o duda

point-kill-stops-motor = Interruptor de paro, motor girando despacio
    .good = Pulsado a poca velocidad, antes de dar toda la potencia: la tracción se corta al instante.
    .why = Es tu modo más rápido de parar la hélice.
    .bad = Sigue tirando, o corta solo a la segunda pulsación.
    .stops = Se corta al instante
    .turns-on = Sigue tirando, o duda

point-clutch-idle = La hélice con el motor al ralentí
    .good = Quieta, o apenas se mueve, con el embrague desacoplado.
    .why = Un embrague que arrastra mueve la hélice cuando la crees quieta.
    .bad = Arrastrada a girar al ralentí.
    .still = Quieta
    .creeps = Se mueve de vez en cuando
    .driven = Girando arrastrada

point-idle-speed = Régimen de ralentí, motor caliente
    .good = Sin tocar el gas: revoluciones por minuto (rpm) constantes, dentro del margen.
    .why = Un ralentí que sube o fluctúa puede ser una entrada de aire: detrás viene el calor.
    .bad = Tan bajo que puede pararse en el aire, o tan alto que te empuja.

point-full-throttle-speed = Régimen a fondo, en tierra
    .good = Gas a fondo unos segundos: revoluciones por minuto (rpm) dentro del margen.
    .why = Bajo: empuje perdido. Alto: mezcla pobre, o una transmisión que patina.
    .bad = Por debajo o por encima del margen, o sube y baja por sí solo.

point-full-power-speed = Régimen a plena potencia, en tierra
    .good = Plena potencia unos segundos: revoluciones por minuto (rpm) dentro del margen.
    .why = Bajo: empuje perdido, o batería cansada. Alto: la hélice muerde menos.
    .bad = Por debajo o por encima del margen, o sube y baja por sí solo.

point-sound-shake = Sonido y vibración, a todo régimen
    .good = Suave de bajo a fondo; al soltar, cae de inmediato.
    .why = Una vibración nueva, o un sonido que se queda arriba, es el primer aviso de un fallo.
    .bad = Un golpeteo, una vibración nueva, o un régimen que no baja al soltar.
    .smooth = Suave, cae de inmediato
    .buzz = Zumbido o temblor nuevo
    .rough = Golpea, vibra o no baja

point-after-running = Debajo del motor, después de funcionar
    .good = Motor parado: seco por debajo, nada suelto, nada que falte.
    .why = El calor y la presión abren fugas que en frío quedan cerradas.
    .bad = Un goteo, una línea mojada fresca, una parte que se ha movido o se ha ido.
    .dry = Seco, todo en su sitio
    .damp = Película húmeda fina
    .drips = Gotea, se movió o falta

point-after-running-motor = Motor y batería, después de funcionar
    .good = Parado: sin olor, sin humo, temperaturas en la pantalla como siempre.
    .why = Un calor nuevo hoy es un fallo que ha empezado.
    .bad = Olor a quemado, humo, hinchazón, o mucho más caliente que de costumbre.
    .as-usual = Como siempre, sin olor
    .warmer = Más caliente que siempre
    .smells = Huele, humea o se hincha

point-carabiner-gates-again = Bandas enganchadas, gatillos otra vez
    .good = Banda izquierda a la izquierda, derecha a la derecha, sin torcer; toca cada gatillo: cerrado, con seguro.
    .why = Una banda a medias en su mosquetón aguanta en el suelo y se suelta en el aire.
    .bad = Una vuelta, una banda sobre el gatillo, un seguro que no ha entrado.
    .both-in = Las dos dentro, con seguro
    .not-shut = Torcida, o un gatillo abierto

point-leg-straps-again = Perneras, una vez más
    .good = Toca y tira de la izquierda, luego de la derecha: las dos cerradas en ti.
    .why = Abiertas un momento y olvidadas, te dejan caer del asiento.
    .bad = Una abierta, cerrada a medias, o colgando floja.
    .both-closed = Izquierda y derecha cerradas
    .open = Una abierta o floja

point-walk-complete = Este recorrido, del primero al último
    .good = Estuviste en cada lugar y miraste cada punto con tus propios ojos.
    .why = Una lista interrumpida a medias parece completa.
    .bad = Un punto supuesto, saltado, o perdido por una llamada o una charla.
    .every-point = Todos los puntos mirados
    .left-out = Algo supuesto o dejado
