# Spanish. What the command line says of its own: commands, options and metavars stay as they are typed.

## Help: verbs

help = Recorre tu paramotor antes de volar, firma lo que viste, y recibe un veredicto con sus motivos.
help-demo = Añadir los paramotores inventados, o una escuela inventada con su temporada, para probar
help-machine = Dar de alta paramotores, describirlos de nuevo, listarlos
help-machine-add = Dar de alta un paramotor (firmado)
help-machine-change = Describir de nuevo un paramotor (firmado); lo que no das queda como estaba
help-machine-list = Listar todos los paramotores, primero los que te necesitan
help-machine-engines = Listar los tipos de motor, y las partes de un paramotor con cada uno
help-machine-enrol = Poner un paramotor tuyo bajo los roles de la escuela (firmado)
help-machine-withdraw = Sacar un paramotor de la escuela (firmado)
help-points = Mostrar los puntos de la lista de un paramotor, con sus respuestas
help-walk = Recorrer una lista punto por punto, y firmarla (salida 1: inmovilizado)
help-verdict = Decir si un paramotor puede volar, y por qué (salida 1: inmovilizado)
help-show = Mostrar un paramotor: lo abierto y lo que vence, sus componentes y límites, su historial
help-record = Exponer un registro (salida 1: su firma no es válida)
help-defect = Lo que está abierto en un paramotor: listarlo, arreglarlo o dejar que espere
help-defect-list = Listar lo abierto: defectos, y lo que está en vigilancia
help-defect-rectify = Firmar que se arregló lo que estaba abierto en un punto
help-defect-defer = Firmar que un defecto puede esperar, dentro de límites y con una condición
help-flight = Preparar un vuelo antes del despegue, y anotar su tiempo después de aterrizar
help-flight-prepare = Calcular carga, combustible, aire y viento; se firma con tu próxima firma (salida 1: inmovilizado)
help-flight-log = Anotar horas, vuelos y depósitos, o la lectura del cuentahoras; se firma con tu próxima firma
help-flight-undo = Retirar el último tiempo anotado, mientras nadie lo haya firmado
help-due = Lo que vence por horas, vuelos, depósitos o días
help-due-list = Listar lo que vence en un paramotor, lo más próximo primero
help-due-keep = Llevar algo que vence una y otra vez, o cambiarlo (firmado)
help-due-done = Firmar que se hizo: ahora, o cuando digas
help-due-end = Firmar que ya no se lleva
help-trend = Qué hacen las medidas de un paramotor a lo largo de su tiempo en servicio, y cuándo alcanzan sus límites
help-job = Trabajo en un paramotor: desde lo que hiciste hasta la lista que le sigue
help-job-choices = Listar los trabajos que se pueden hacer en un paramotor
help-job-plan = Mostrar qué suponen los trabajos: qué se desmonta y se monta y en qué orden, qué se renueva, qué sigue
help-job-begin = Firmar que empezó un trabajo; el paramotor se queda en tierra hasta su conformidad
help-second-look = Otra persona mira las uniones críticas de un trabajo, desde otro teléfono o carpeta, o aquí
help-second-look-ask = Mostrar el texto que hay que dar a la otra persona
help-second-look-look = Mirar lo que pide otra persona, firmar lo que ves, mostrar el texto que hay que devolver
help-second-look-take = Recibir el texto que devolvió la otra persona
help-second-look-here = Dejar que otra persona de esta carpeta de datos mire, y firme con su propio PIN
help-release = Firmar que las inspecciones de un trabajo están completas: su conformidad (salida 1: falta algo)
help-tool = Herramientas dinamométricas: alcance, calibración, si se pueden usar
help-tool-add = Dar de alta una herramienta dinamométrica (firmado)
help-tool-change = Describir de nuevo una herramienta dinamométrica (firmado): calibrada otra vez, caída
help-tool-list = Listar las herramientas dinamométricas, y si cada una se puede usar hoy
help-component = Componentes con un tiempo en servicio propio
help-component-fit = Montar un componente que es nuevo aquí, con el tiempo que trae (firmado)
help-component-move = Desmontar un componente de un paramotor y montarlo en otro (firmado)
help-component-off = Desmontar un componente de un paramotor (firmado)
help-fleet = Lo que dicen juntas todas las miradas de aquí: cuánto duran los componentes, cómo mira cada cual, lo que valen los puntos
help-fleet-parts = Listar los componentes de cuya vida se puede decir algo
help-fleet-life = Decir cuánto duran los componentes de una clase, y cada cuánto mirarlos
help-fleet-looking = Decir cómo mira cada cual, al lado de los demás en los mismos puntos
help-fleet-lists = Decir lo que valen los puntos de las listas, para quien las escribe
help-person = Otras personas que firman en esta carpeta de datos
help-person-add = Añadir a otra persona, con su propia clave y su propio PIN
help-person-list = Listar a las otras personas
help-person-begin = Empezar en esta carpeta de datos como otro dispositivo tuyo, con el código del primero
help-school = Una escuela: fundarla, entrar, sus miembros, sus listas, su panel
help-school-create = Fundar una escuela (firmado); esta carpeta de datos pasa a ser su raíz
help-school-show = Mostrar la escuela como la conoce este dispositivo
help-school-code = Mostrar el texto que este dispositivo enseña para ser admitido
help-school-admit = Admitir un dispositivo por el texto que enseña, o uno que espera en el servidor (firmado)
help-school-waiting = Listar a quienes esperan en el servidor a ser admitidos
help-school-join = Entrar con el texto que la raíz muestra de vuelta, o con la dirección del servidor (firmado)
help-school-leave = Salir de la escuela (firmado); tus paramotores se van contigo
help-school-members = Listar a todos los que son o fueron miembros, con sus dispositivos
help-school-role = Dar a un miembro otro rol u otro último día (firmado)
help-school-end = Terminar una pertenencia (firmado); lo que la persona firmó sigue valiendo
help-school-revoke = Anular la clave de un teléfono perdido (firmado)
help-school-hand-over = Traspasar la raíz al dispositivo de un miembro (firmado)
help-school-vouch = Firmar que otro dispositivo también es tuyo, y mostrar el texto que hay que enseñarle
help-school-file = Escribir lo que un servidor necesita para servir a esta escuela
help-school-publish = Publicar listas u hojas de datos para los miembros (firmado; salida 1: algo está mal en ellas)
help-school-board = Mostrar todos los paramotores de la escuela, primero los que necesitan a alguien
help-school-sign-in = Confirmar que eres tú quien entra en el panel de la escuela
help-school-sign = Leer lo que se preparó en el panel, y firmarlo (con --json, salida 1: solo leído; --agreed firma)
help-sync = Intercambiar registros con el servidor de la escuela (salida 1: la escuela no ha admitido todavía este dispositivo)
help-receipts = Comprobar todo aquello por lo que firmó el servidor (salida 1: no encaja)
help-receipts-code = Mostrar el texto para comparar con otro miembro
help-receipts-compare = Comparar lo que muestra otro miembro: ¿os dice el servidor lo mismo a los dos?
help-refused = Listar lo que llegó de un servidor y no es un registro
help-confirm-limit = Firmar un límite como está en el manual del fabricante
help-correct = Firmar una corrección de un hallazgo; lo primero queda como se firmó
help-put-aside = Cerrar una lista sin firmarla; sus respuestas se guardan, sin firmar
help-print = Escribir la hoja de registro de una inspección o de un trabajo, en PDF
help-label = Escribir una etiqueta para pegar en un paramotor, en PDF; su código abre el paramotor en la app
help-csv = Escribir todo lo de un paramotor como tabla (CSV)
help-calendar = Escribir lo que vence en un paramotor como archivo de calendario (iCalendar)
help-export = Escribir los registros de un paramotor en un archivo que cualquiera puede verificar
help-import = Incorporar los registros de un archivo (salida 1: una línea no se aceptó), o los datos de un motor
help-import-readings = Incorporar las cifras de un archivo de datos de motor, con temperaturas y régimen (CSV), firmadas
help-verify = Comprobar archivos de registros con solo los archivos (salida 1: algo está mal)
help-serve-ui = Mostrar las pantallas en un navegador de este ordenador
help-server = Servir a una escuela: intercambiar los registros de sus miembros, mostrar su panel (hasta que se le pida parar)
help-backup = Escribir en un archivo todo lo que guarda un servidor, mientras funciona
help-restore = Llenar un servidor vacío desde una copia de seguridad: toda, o nada
help-board-passphrase = Poner la frase de paso con la que alguien puede mirar el panel, o quitarla
help-compute = Hacer un cálculo: JSON por la entrada estándar, JSON por la salida estándar
help-validate = Comprobar hojas de datos, listas de puntos, grafos de montaje, palabras y dibujos (salida 1: algo está mal)
help-rebuild = Derivar todo de nuevo de los registros firmados

## Help: what follows a verb

help-arg-data = La carpeta con tus paramotores y tu clave, o con los datos de un servidor; sin ella, una entre tus propios datos
help-arg-json = Responder en JSON, para programas
help-arg-machine = El nombre o id del paramotor, o el principio de uno de los dos
help-arg-occasion = Qué lista: before-flight, second-flight, o after-service una vez empezado un trabajo
help-arg-answers = Respuestas de un archivo JSON: de id de punto a id de respuesta, a un valor con su unidad, o a herramienta y octavos
help-arg-leave-missing = Firmar aunque puntos obligatorios no tengan respuesta en el archivo: eso inmoviliza el paramotor
help-arg-no-sign = Parar antes de firmar; lo respondido se guarda
help-arg-pin-file = Un archivo cuya primera línea es el PIN; sin él, se te pregunta
help-arg-signatory = Tu nombre, la primera vez que se firma algo en esta carpeta de datos
help-arg-name = Cómo llamas al paramotor
help-arg-engine = El id del tipo de motor; «machine engines» los lista
help-arg-hours = Horas de motor
help-arg-flights = Vuelos
help-arg-reserve-repacked = La fecha de la ficha de plegado del paracaídas de emergencia, como 2026-04-30
help-arg-repack-every = Días hasta el próximo plegado, según el manual del paracaídas de emergencia; 180 mientras no digas otra cosa
help-arg-without-reserve = No lleva paracaídas de emergencia
help-arg-weight = Lo que pesa tal como vuela, con vela y paracaídas de emergencia, sin combustible, como "34 kg"
help-arg-wing-least = El mínimo que tiene que llevar la vela con motor, peso total en vuelo, como "95 kg"
help-arg-wing-most = El máximo que puede llevar con motor
help-arg-wing-free-least = El mínimo que tiene que llevar sin motor, si su fabricante da los dos
help-arg-wing-free-most = El máximo que puede llevar sin motor
help-arg-wing-document = El manual de la vela y su edición; sin él, su rango de peso queda sin confirmar
help-arg-wing-page = La página
help-arg-without-wing-range = No se sabe nada de lo que puede llevar la vela
help-arg-serial = Una parte y su número de serie, como propeller=1234; se puede dar más de una vez
help-arg-note = Algo más que convenga saber
help-arg-record = El resumen del registro, o el principio de él
help-arg-point = El id del punto; «points» y «show» los nombran
help-arg-how = Qué se hizo, en una frase
help-arg-answer = El id de la respuesta que debería haber sido
help-arg-reason = Por qué lo primero era falso, en una frase
help-arg-band = El id del límite; «show» los nombra
help-arg-low = Extremo inferior, un número con su unidad, como "125 lbf.in"
help-arg-high = Extremo superior
help-arg-did = Qué se hizo; «job choices» nombra los trabajos; puede ser más de uno
help-arg-ran = Horas de funcionamiento desde la última anotación
help-arg-flown = Vuelos desde la última anotación
help-arg-tank = Se gastó un depósito de combustible; se puede dar más de una vez
help-arg-burned = Combustible gastado en estas horas, con su unidad, como "3.2 L" o "0.8 gal_us"
help-arg-plan = El plan en JSON, - para la entrada estándar; sin él se te muestra lo que se sabe, en JSON desde el que empezar
help-arg-check = Decir solo qué resultaría; no guardar nada
help-arg-reading = La lectura del cuentahoras, en lugar de las horas de funcionamiento
help-arg-title = Qué hay que hacer; el título de uno que ya se lleva cambia ese
help-arg-item = Lo que se lleva: su título o id, o el principio de uno de los dos
help-arg-every-hours = Vence otra vez tras tantas horas de motor
help-arg-every-flights = Vence otra vez tras tantos vuelos
help-arg-every-tanks = Vence otra vez tras tantos depósitos
help-arg-every-days = Vence otra vez tras tantos días; de varios, lo que llegue primero
help-arg-tolerance = Cuánto retraso se tolera todavía, por ciento del intervalo
help-arg-from-due = Contar el próximo desde cuando vencía, no desde cuando se hizo
help-arg-done-hours = Horas de motor cuando se hizo por última vez; las de ahora, mientras no digas otra cosa
help-arg-done-flights = Vuelos cuando se hizo por última vez
help-arg-done-on = El día en que se hizo por última vez, como 2026-04-30
help-arg-until-hours = Horas de motor hasta las que puede esperar
help-arg-until-flights = Número de vuelos hasta el que puede esperar
help-arg-until-date = El último día en que puede esperar, como 2026-04-30
help-arg-condition = Cómo se puede volar mientras tanto
help-arg-why-wait = Por qué puede esperar
help-arg-text = El texto de la otra persona, o @FILE que lo contiene; @- para la entrada estándar
help-arg-joint = Lo que se ve en una unión; da uno por cada una, o ninguno para que se te pregunte
help-arg-person = Quién mira; «person list» los nombra
help-arg-person-name = Cómo conocen otros a esta persona
help-arg-tool = El nombre o id de la herramienta, o el principio de uno de los dos
help-arg-tool-name = Cómo llamas a la herramienta, o su número
help-arg-mark-low = Valor marcado más bajo, con su unidad, como "5 N.m"
help-arg-mark-high = Valor marcado más alto, en la misma unidad
help-arg-deviation = Desviación permitida, por ciento de la lectura; la de la norma mientras no digas otra cosa
help-arg-calibrated = La fecha de su certificado, como 2026-04-30
help-arg-calibrate-days = Días entre calibraciones
help-arg-calibrate-clicks = Clics entre calibraciones
help-arg-clicks = Clics desde la última calibración
help-arg-dropped = Desde entonces se cayó o se forzó
help-arg-part = Qué parte del paramotor es; «machine engines» las nombra
help-arg-component = El nombre, número de serie o id del componente
help-arg-component-type = La clase de componente, como exhaust; «fleet parts» las lista
help-arg-chance = La probabilidad que se acepta de un fallo sin ver entre dos miradas; la de la escuela, y si no 0.02
help-arg-in-force = El intervalo en vigor, en horas de motor; el de la escuela mientras no digas otra cosa
help-arg-component-name = Cómo llamas al componente
help-arg-serial-number = Su número de serie
help-arg-own-hours = Horas que ha funcionado antes
help-arg-own-flights = Vuelos que ha hecho antes
help-arg-other-machine = El paramotor en el que se monta
help-arg-document = El manual y su edición
help-arg-page = La página
help-arg-measure = El id o el nombre de la medida, o el principio de uno de los dos; sin ella, todas
help-arg-plot = Dibujarlo en este archivo, en lugar de decirlo: SVG o PNG, según como termine el nombre
help-arg-dark = Dibujar claro sobre oscuro
help-arg-to = El archivo que se escribe; - para la salida estándar
help-arg-paper = El tamaño del papel
help-arg-bundles = Archivos de registros; - para la entrada estándar
help-arg-sheets = Archivos del catálogo; sin ninguno, el catálogo propio del programa
help-arg-computation = Cuál; un nombre desconocido los lista todos
help-arg-demo-school = Fundar la escuela inventada en esta carpeta de datos (firmado)
help-arg-all = Escribir todo lo de esta carpeta de datos en este archivo; - para la salida estándar
help-arg-brought = Un archivo de registros; - para la entrada estándar
help-arg-log = Los datos de motor en CSV, con una fila de encabezados; - para la entrada estándar
help-arg-mapping = Cómo se leen sus columnas: JSON, o el archivo que lo contiene; «--dry-run --json» muestra lo que usaría
help-arg-then-hours = Las horas de motor que tenía el paramotor cuando se tomaron los datos; las de ahora, mientras no digas otra cosa
help-arg-on = El día en que se tomaron, como 2026-04-30; lo que dice el archivo, y si no hoy, mientras no digas otra cosa
help-arg-outside = Qué temperatura hacía fuera, como "12 Cel"; lo que dice el archivo, mientras no digas otra cosa
help-arg-yes = Leerlo como se muestra sin que se te pregunte: lo has mirado
help-arg-dry-run = Mostrar cómo se leería y qué dice; no firmar nada
help-arg-put-away = Apartar esta línea, después de haberla mirado
help-arg-code = El texto del otro dispositivo, o @FILE que lo contiene; @- para la entrada estándar
help-arg-board-code = El texto del código del panel, o @FILE que lo contiene; @- para la entrada estándar
help-arg-agreed = Firmar sin que se te pregunte otra vez: lo has leído
help-arg-join = El texto que la raíz muestra de vuelta (o @FILE que lo contiene), o la dirección del servidor
help-arg-school-code = El código de la escuela, leído en voz alta por alguien de ella; sin él, se te pregunta
help-arg-school-name = Cómo llaman a la escuela
help-arg-school-file = El archivo que se escribe; - para la salida estándar
help-arg-waiting = Alguien que espera en el servidor: su código, o su nombre (entonces se te pide comparar el código)
help-arg-role = Qué puede hacer la persona
help-arg-until = El último día del rol, como 2026-04-30; abierto si no se da
help-arg-member = El nombre del miembro, o el principio de él
help-arg-device = El código del dispositivo, o el nombre de su dueño si solo tiene uno; «school members» los lista
help-arg-why-end = Por qué termina, en pocas palabras
help-arg-publication = Cómo conocen los miembros estos archivos; el mismo título otra vez es su próxima versión
help-arg-publish-files = Archivos como están en el catálogo: …/engines/x.toml, …/fragments/x.toml, …/texts/en/x.ftl
help-arg-publish-note = Qué hay de nuevo
help-arg-database = La base de datos del servidor: postgres://…; sin ella, un archivo en la carpeta de datos
help-arg-listen = Dónde escuchar
help-arg-founding-file = Lo que escribió «school file»; solo hace falta en el primer arranque
help-arg-public-address = La dirección por la que los dispositivos conocen el servidor, como https://school.example
help-arg-tls-cert = El certificado y los que hay entre él y una raíz (PEM)
help-arg-tls-key = La clave del certificado (PEM)
help-arg-plain-http = Sin cifrar aunque otros ordenadores puedan llegar a él: solo para redes cerradas
help-arg-behind-proxy = Delante hay un proxy que pasa Host y dice por quién pregunta (X-Forwarded-For)
help-arg-backup-to = El archivo que se escribe; nunca se escribe encima de uno que exista
help-arg-backup-from = La copia de seguridad
help-arg-passphrase-file = Un archivo cuya primera línea es la frase de paso; - para la entrada estándar
help-arg-off = Nadie mira ya con frase de paso
help-arg-port = El puerto; 0 toma cualquiera que esté libre (7420 si está libre, si no cualquiera)

## Signing

cli-pin = PIN de { $name }:
cli-pin-new = Elige un PIN para { $name }, al menos seis cifras:
cli-pin-again = El mismo PIN otra vez:
cli-owner = Dueño
cli-begun = Desde ahora { $name } firma en esta carpeta de datos. La huella de la clave es { $device }.
cli-added = Dado de alta y firmado. «walk» lo recorre, «verdict» dice si puede volar.
cli-changed = Descrito de nuevo y firmado.
cli-rectified = Arreglado y firmado.
cli-corrected = Corregido y firmado; lo primero queda en su registro.
cli-limit-confirmed = El límite está introducido y firmado.

## Machines and points

cli-machine = { $engine }, { $hours } h, { $flights ->
    [one] un vuelo
   *[other] { $flights } vuelos
  }
cli-invented = {" "}(inventado)
cli-machine-walk = Empezada y sin firmar: { $list }, { $done } de { $of } mirados
cli-no-machines = Aún no hay ningún paramotor. Añade el tuyo con «machine add», o prueba con «demo».
cli-demo = Estos paramotores son inventados: no son de nadie.
cli-parts = partes: { $parts }
cli-points = { $points ->
    [one] Un punto
   *[other] { $points } puntos
  } en total.
cli-may-be-left = (se puede dejar fuera)
cli-tightened = apretado: unión { $joint }, { $nuts ->
    [one] una tuerca o tornillo
   *[other] { $nuts } tuercas o tornillos
  }; { $band }
cli-measured = un valor, en { $unit }; bien: { $band }
cli-open = Abierto:
cli-limits = Límites:
cli-job = Trabajo sin conformidad:
cli-due = Vencimientos:
cli-components = Componentes:
cli-timeline = Historial, lo último primero:

## What an answer means

cli-means-not-fitted = no montado
cli-means-serviceable = utilizable
cli-means-watch = en vigilancia
cli-means-unserviceable = inutilizable

## Walking

cli-walk-opened = { $list }: { $machine }, { $done } de { $of } mirados.
cli-walk-keys = Escribe el número de lo que ves, o el valor. También: b retira la última respuesta, l deja este punto por ahora, n y unas palabras escriben una nota, q para (se guarda todo).
cli-good = Bien: { $words }
cli-bad = Mal: { $words }
cli-why = Por qué: { $words }
cli-caution = PRECAUCIÓN: { $words }
cli-note-well = Nota: { $words }
cli-noted = Tu nota: { $words }
cli-band = Margen: { $band }. { $source }
cli-tighten = { $nuts ->
    [one] Una tuerca o tornillo
   *[other] { $nuts } tuercas o tornillos
  }, a { $band }. { $source }
cli-note-kept = La nota está guardada.
cli-prompt = 1 a { $most }, b, l, n, q, ? >
cli-prompt-value = Valor en { $unit } (o con otra unidad), b, l, n, q, ? >
cli-prompt-tool = Herramienta dinamométrica (nombre o id; «tool list» las muestra), b, l, n, q, ? >
cli-prompt-adapter = ¿Algo entre la herramienta y la tuerca? Palanca, adaptador, ángulo, como 350 mm, 50 mm, 0 (Intro: nada) >
cli-bench = Ajusta la herramienta a { $setting } ({ $other }) para el par completo.
cli-prompt-because = ¿Por qué usarla a pesar de todo? (Intro: tomar otra herramienta) >
cli-step = { $round }, tuerca { $nut }: { $setting } (Intro cuando haga clic, q deja la unión) >
cli-step-moved = { $round }, tuerca { $nut }: { $setting }. Cuánto antes del clic, en octavos de vuelta (q deja la unión) >
cli-prompt-reading = Lo que leyó la herramienta, con su unidad (Intro: no lee) >
cli-prompt-insist = Si de verdad es así: ¿por qué? (Intro: decirlo otra vez como está ahora) >
cli-joint-left = Esta unión no está dicha todavía: empiézala otra vez por la primera tuerca.
cli-answered = Guardado: { $words } ({ $means })
cli-not-understood = Esa no es ninguna de las respuestas.
cli-would-be = Firmado ahora, el veredicto sería: { $verdict }.
cli-closing-keys = s firma. También: l va a lo que se dejó, el número de un punto lo mira otra vez, b retira la última respuesta, q para (se guarda todo).
cli-closing-keys-unsigned = q para (se guarda todo). También: l va a lo que se dejó, el número de un punto lo mira otra vez, b retira la última respuesta.
cli-closing-not-understood = Eso no es ni una de estas letras ni el número de un punto.
cli-kept = [{ $done }/{ $of }] { $point }: { $words } ({ $means })
cli-found = Hallazgos:
cli-hurried = Con prisa (¿mirar otra vez?):
cli-left = Sin mirar:
cli-left-grounds = {" "}(obligatorio)
cli-unsigned = Sin firmar. { $done ->
    [0] Todavía no se respondió nada; la misma orden empieza aquí.
    [one] La única respuesta está guardada; la misma orden sigue desde aquí.
   *[other] Las { $done } respuestas están guardadas; la misma orden sigue desde aquí.
  }
cli-signed = Firmado como registro { $record }.
cli-put-aside = Dejada a un lado: { $list }, { $done ->
    [one] una respuesta guardada
   *[other] { $done } respuestas guardadas
  }, sin firmar.

## Time, and what falls due

cli-logged = Anotado; cuenta ya.
cli-log-undone = La última anotación está retirada.
cli-waiting = { $entries ->
    [one] Una anotación espera
   *[other] { $entries } anotaciones esperan
  } la próxima firma.
cli-flight-kept = guardado; cuenta enseguida, y tu próxima firma lo firma.
cli-flight-judged = lo que resultaría. No se guarda nada.
cli-flight-known = hoy no hay nada calculado. Esto puede valer todavía; cámbialo, y devuélvelo con --file.
cli-flight-today = esto es lo que se calculó hoy. Cámbialo, y devuélvelo con --file.
cli-flight-example = Todo lo que puede contener un plan; deja fuera lo que no preguntas:
cli-flight-pour = Aceite para esta mezcla: { $oil }
cli-weights = Pesos:
cli-weight = Pesa { $weight } tal como vuela, sin combustible.
cli-wing-range = Con motor, su vela puede llevar de { $low } a { $high } de peso total en vuelo.
cli-wing-range-free = Sin motor, de { $low } a { $high }.
cli-nothing-due = No se lleva ningún vencimiento. «due keep» añade uno.
cli-due-later = más tarde
cli-due-soon = pronto
cli-due-tolerated = pasado, todavía tolerado
cli-due-over = vencido
cli-due-kept = Se lleva desde ahora, firmado.
cli-due-done = Hecho y firmado; cuenta desde ahí.
cli-due-ended = Firmado: ya no se lleva.
cli-trend-nothing = Ninguna medida suya tiene lecturas todavía. Recórrelo, trabaja en él, o incorpora las cifras de los datos de un motor («import readings»).
cli-trend-row = { $title } ({ $id }), { $n ->
    [one] una lectura
   *[other] { $n } lecturas
  }{ $drifts ->
    [yes] : actúa
   *[no] {""}
  }
cli-trend-band = Su margen:
cli-trend-readings = Lecturas:
cli-trend-reading = { $hours } h: { $words }{ $far ->
    [yes] , lejos de la línea
   *[no] {""}
  }
cli-trend-marks = Lo que se hizo:
cli-trend-mark = { $hours } h: { $words }
cli-nothing-open = No hay nada abierto.
cli-deferred = Puede esperar, firmado.

## Work

cli-take-off = Desmontaje:
cli-plan-part-off = { $words }: desmontar
cli-plan-joint-undone = { $words }: soltar
cli-plan-part-on = { $words }: montar
cli-plan-joint-done-up = { $words }: cerrar
cli-refit = Montaje:
cli-renew = Renovar:
cli-count-tools = Contar al recoger:
cli-independent = Lo debe mirar otra persona:
cli-follow-ups = Vence más tarde:
cli-plan-points = { $points ->
    [one] Un punto
   *[other] { $points } puntos
  } en la lista que le sigue.
cli-job-begun = Empezado y firmado. El paramotor se queda en tierra hasta «release». Siguiente: «walk MACHINE --occasion after-service».
cli-job-ready = No falta nada: se puede dar la conformidad.
cli-job-independent = Otra persona mira: { $joint } [{ $id }]
cli-not-released = Aún no se puede dar la conformidad:
cli-released = Conformidad dada y firmada.
cli-second-asked = Da este texto a la otra persona; lo responde con «second-look look».
cli-second-what = Otra persona te pide que mires { $machine }: { $title }.
cli-prompt-joint = { $joint }: como debe (g) o deficiente (w), y unas palabras más si quieres >
cli-second-signed = Firmado. Devuelve este texto; se recibe con «second-look take».
cli-second-taken = Recibido: otra persona ha mirado.
cli-second-here = Firmado: otra persona ha mirado.
cli-person-added = { $name } firma también en esta carpeta de datos, con su propio PIN.
cli-no-people = Nadie más firma en esta carpeta de datos. «person add» añade a alguien.
cli-tool = { $low } a { $high }, ±{ $deviation } %, { $clicks ->
    [one] un clic
   *[other] { $clicks } clics
  } desde su calibración
cli-tool-usable = Se puede usar.
cli-tool-refused = No se puede usar.
cli-no-tools = Aún no hay ninguna herramienta dinamométrica. Añade la tuya con «tool add».
cli-tool-added = Dada de alta y firmada.
cli-tool-changed = Descrita de nuevo y firmada.
cli-component-off = {" "}(desmontado)
cli-component-fitted = Montado y firmado.
cli-component-moved = Desmontado, montado en el otro paramotor, y firmado.
cli-component-taken-off = Desmontado y firmado.

## The fleet

cli-fleet-nothing = Aquí todavía no hay ninguna mirada a un componente. Recorre un paramotor y firma, o incorpora registros.
cli-fleet-nobody = Aquí nadie ha firmado todavía una inspección, o no puedes ver cómo miran: en los paramotores de una escuela, sus instructores lo ven todo, y cada cual se ve a sí mismo.
cli-fleet-part = { $part } [{ $id }]: { $machines ->
    [one] un paramotor
   *[other] { $machines } paramotores
  }, { $lives ->
    [one] una vida
   *[other] { $lives } vidas
  }, { $failed ->
    [0] ninguno encontrado inutilizable
    [one] uno encontrado inutilizable
   *[other] { $failed } encontrados inutilizables
  }
cli-fleet-steps = Todavía utilizables, sin suponer ninguna forma de la vida (intervalo del 95 %):
cli-fleet-step = desde { $hours } h: { $share } % ({ $low } a { $high })
cli-fleet-fitted = Todavía utilizables, según la curva ajustada (intervalo del 95 %):
cli-fleet-at = con { $hours } h: { $share } % ({ $low } a { $high })
cli-fleet-intervals = Cómo se calcularon los intervalos:
cli-fleet-person = { $name }{ $you ->
    [yes] {" "}(tú)
   *[no] {""}
  }: { $inspections ->
    [one] una inspección
   *[other] { $inspections } inspecciones
  }, { $looks ->
    [one] una mirada
   *[other] { $looks } miradas
  } a puntos que otros también miran
cli-fleet-seconds = Tiempo mediano en un punto: { $own } s{ $beside ->
    [yes] ; los demás, { $others } s
   *[no] {""}
  }
cli-fleet-hurried = Con prisa: { $own } %{ $beside ->
    [yes] ; los demás, { $others } %
   *[no] {""}
  }
cli-fleet-found = Encontrado en 100 miradas: { $own }{ $beside ->
    [yes] ; los demás, { $others }
   *[no] {""}
  }
cli-fleet-hurried-points = Con prisa más a menudo: { $points }

## The school

cli-begun-as = { $name } firma también en esta carpeta de datos. Siguiente: «school code», mostrado al primer dispositivo («school vouch»).
cli-no-school = Este dispositivo no pertenece a ninguna escuela.
cli-own-code = El código de este dispositivo: { $code }
cli-school-code = El código de la escuela: { $code }
cli-school-role = Tu rol: { $role }
cli-school-root = Tu rol: { $role }; este dispositivo es la raíz de la escuela
cli-school-address = Servidor: { $address }
cli-members = Miembros:
cli-enrolled-machines = Paramotores en la escuela:
cli-published = Publicado:
cli-published-version = { $title }, versión { $version }
cli-superseded = {" "}(ya sin uso)
cli-device = dispositivo { $code }
cli-device-root = dispositivo { $code }, la raíz de la escuela
cli-device-ended = dispositivo { $code }, su clave está anulada
cli-to-send = Espera a ser enviado: { $records ->
    [one] un registro
   *[other] { $records } registros
  }{ $photos ->
    [0] .
    [one] {", "}una imagen.
   *[other] {", "}{ $photos } imágenes.
  }
cli-stuck = No aceptado por el servidor: { $kind }. { $words }
cli-applicant = { $name }, código { $code }
cli-code-shown = Muestra este texto al otro dispositivo, y lee en voz alta este código: { $code }
cli-answer = Firmado. Muestra este texto de vuelta; se recibe con «school join».
cli-admitted = Admitido y firmado.
cli-nobody-waits = Nadie espera a ser admitido.
cli-prompt-applicant = { $name } espera. ¿Lee en voz alta este código: { $code }? (y = sí / n = no) >
cli-prompt-school = Esta es «{ $name }». ¿Lee la escuela en voz alta este código: { $code }? (y = sí / n = no) >
cli-prompt-sign = ¿Firmarlo? (y = sí / n = no) >
cli-left-school = Salida firmada. Tus paramotores vuelven a ser solo tuyos.
cli-enrolled = En la escuela, firmado.
cli-withdrawn = Sacado de la escuela, firmado.
cli-desk-where = { $school }, { $address }
cli-signed-in = Has entrado. Sigue en el panel.
cli-draft-signed = Firmado.
cli-receipts-code = Muestra este texto a otro miembro; se compara con «receipts compare».
cli-none-refused = No se rechazó nada.
cli-board-second = Esperan la segunda mirada de otra persona:
cli-board-owner = de { $name }
cli-board-job = Trabajo sin conformidad: { $title }

## The server

cli-server-listens = El servidor de la escuela responde en
cli-backed-up = Copia de seguridad en { $file }, comprobada.
cli-restored = Restaurado desde { $file }.
cli-backup-has = Escuela { $school }: { $records ->
    [one] un registro
   *[other] { $records } registros
  }, { $photos ->
    [one] una imagen
   *[other] { $photos } imágenes
  }.
cli-passphrase-set = La frase de paso está puesta. Deja mirar el panel, y no firmar nada; quien entró con una anterior queda fuera.
cli-passphrase-off = Nadie mira ya el panel con frase de paso.

## Verdicts and records

cli-state-fit = apto
cli-state-limited = limita
cli-state-grounded = inmoviliza
cli-clears = Para cerrarlo: { $clears }
cli-record = registro { $id }
cli-point = punto { $id }
cli-limit = límite { $id }
cli-record-by = Firmado por { $by } el { $when }; dispositivo { $device }, número { $seq } de su cadena
cli-before = Dicho primero, retirado: { $words }

## Files

cli-exported = { $records ->
    [one] Un registro escrito
   *[other] { $records } registros escritos
  } en { $file }.
cli-written = Escrito en { $file }.
cli-key-of = { $name } firma con la clave { $device }
cli-valid = { $files ->
    [0] No hay nada mal en el catálogo propio del programa.
    [one] No hay nada mal en este archivo.
   *[other] No hay nada mal en estos { $files } archivos.
  }
cli-rebuilt = Derivado de nuevo: { $machines ->
    [one] un paramotor
   *[other] { $machines } paramotores
  }.
cli-compute-example = Da JSON por la entrada estándar, por ejemplo: { $example }

## Engine logs

cli-log = { $name } se lee así:
cli-log-marks = entre campos { $separator }, delante de los decimales { $decimal }
cli-log-tab = un tabulador
cli-log-semicolon = un punto y coma
cli-log-comma = una coma
cli-log-point = un punto
cli-log-time = «{ $column }»: tiempo, como { $form }
cli-log-column = «{ $column }»: { $channel }, en { $unit }
cli-log-unused = sin leer: { $columns }
cli-log-remembered = Un archivo con los mismos encabezados ya se leyó así antes.
cli-log-rows = { $rows ->
    [one] Se leyó una fila
   *[other] Se leyeron { $rows } filas
  }, { $lasts } en total. Dicen:
cli-log-unread = En { $rows ->
    [one] una fila
   *[other] { $rows } filas
  } hay algo que no se pudo leer; lo primero: { $first }
cli-log-windows-1252 = El archivo no está en UTF-8. Se leyó como Windows-1252: mira si los encabezados son correctos.
cli-prompt-log = ¿Es así? (y = sí / n = no) >
cli-log-taken = Las cifras del archivo de datos están incorporadas y firmadas:

## Faults: what went wrong, and what to do

fault-no-data-folder = Este sistema no nombra ninguna carpeta para tus datos.
    .hint = Da una con --data DIR.
fault-no-such-record = Aquí no hay ningún registro «{ $what }».
    .hint = «show MACHINE» nombra los registros; da al menos cuatro caracteres de uno.
fault-ambiguous-record = «{ $what }» corresponde a más de un registro: { $which }
    .hint = Da más caracteres del que quieres.
fault-signatory-other = Aquí firma { $name }, no { $given }.
    .hint = Quita --signatory, o elige otra carpeta de datos con --data.
fault-pins-differ = Los dos PIN no son iguales.
    .hint = Escribe dos veces el mismo PIN.
fault-pin-file-empty = No hay ningún PIN en { $file }.
    .hint = Su primera línea tiene que ser el PIN, y nada más.
fault-answer-unreadable = La respuesta a «{ $point }» no se puede leer: { $why }
    .hint = Da el id de la respuesta, o {"{"} "value": 4, "unit": "L" {"}"}; con una nota, {"{"} "answer": "…", "note": "…" {"}"}; una unión apretada, {"{"} "tool": "…", "eighths": [1, 1, 1, 1] {"}"}.
fault-not-agreed = No se aceptó: no se firmó nada.
    .hint = Primero compara o lee; después ejecútalo otra vez y di y. Con --json, da el código mismo, o --agreed.
fault-log-not-confirmed = Nadie confirmó cómo se lee este archivo de datos: no se firmó nada.
    .hint = Mira lo que muestra --dry-run. Si es así, ejecútalo otra vez y di y, o da --yes; si no, da --mapping.
fault-log-mapping-unread = Lo dado en --mapping no se puede leer: { $why }
    .hint = Toma lo que «--dry-run --json» muestra en "mapping", y cámbialo.
fault-school-other = La escuela de esa dirección es «{ $name }» con código { $code }, no { $given }.
    .hint = Pide otra vez a la escuela su dirección y su código.
fault-server-no-school = Este servidor no tiene escuela todavía.
    .hint = Escribe su archivo en el dispositivo de la raíz con «school file -o FILE», y dalo con --school FILE.
fault-server-several-schools = Esta base de datos tiene más de una escuela.
    .hint = Da a cada servidor una base de datos propia.
fault-server-not-a-school = El archivo de la escuela no se puede usar: { $why }
    .hint = Escríbelo de nuevo en el dispositivo de la raíz con «school file -o FILE».
fault-server-other-school = Este servidor sirve a la escuela { $here }, no a { $given }.
    .hint = Da a la otra escuela un servidor con una carpeta de datos propia.
fault-server-in-the-open = Otros ordenadores pueden llegar a { $address }, y allí nada iría cifrado.
    .hint = Da --tls-cert y --tls-key, o escucha en 127.0.0.1 detrás de un proxy que tenga certificado. Si la red está cerrada a otros, di --plain-http.
fault-server-certificate = El certificado o su clave no se puede usar: { $why }
    .hint = Los dos son archivos PEM, y van juntos.
fault-server-stopped = El servidor se paró: { $why }
    .hint = No se ha perdido nada de lo confirmado; arráncalo otra vez.
fault-server-damaged = Los datos del servidor están dañados: { $why }
    .hint = Déjalos como están, y restaura la última copia de seguridad en una carpeta de datos nueva.
fault-server-database = La base de datos del servidor: { $why }
    .hint = Corrige eso y prueba otra vez; no queda nada a medias.
fault-restore-not-empty = Ya hay registros donde debería ir la copia de seguridad.
    .hint = Restaura en una carpeta de datos nueva o en una base de datos nueva.
fault-backup-exists = { $file } ya existe.
    .hint = Nombra otro archivo: nunca se escribe encima de una copia de seguridad.
fault-not-a-backup = { $file } no es una copia de seguridad: { $why }
    .hint = Da un archivo que escribió «backup».
fault-passphrase-short = Una frase de paso tiene al menos { $least } letras.
    .hint = Toma unas palabras que no vayan juntas.
fault-none-to-name = No hay ningún «{ $what }»: aquí no hay ninguno todavía.
    .hint = Añade uno primero; «--help» muestra cómo.
fault-not-named = No hay ningún «{ $what }» entre estos: { $known }
    .hint = Da el id, el nombre, o el principio de uno de los dos.
fault-ambiguous-name = «{ $what }» corresponde a más de uno: { $which }
    .hint = Da más caracteres del id, o el nombre entero.
fault-joints-untold = No se dijo nada de: { $joints }
    .hint = Di --joint JOINT=good o --joint JOINT=wanting para cada una.
fault-joint-unreadable = «{ $text }» no dice nada de una unión.
    .hint = Di JOINT=good o JOINT=wanting.
fault-tool-unchanged = La herramienta ya está descrita así.
    .hint = Da lo que hay que cambiar; no se firmó nada.
fault-eighths = «{ $text }» no es un número de octavos de vuelta.
    .hint = Escribe un número entero: 0 si hizo clic enseguida, 2 para un cuarto de vuelta.
fault-adapter = «{ $text }» no es un adaptador.
    .hint = Da la palanca, la longitud del adaptador y el ángulo entre los dos: 350 mm, 50 mm, 0.
fault-quantity = «{ $text }» no es un valor con unidad.
    .hint = Da un número con punto decimal, y una unidad: 12.5 N.m. Unidades: { $units }.
fault-serial = «{ $text }» no es una parte con su número de serie.
    .hint = Da las dos cosas, como propeller=1234; «machine engines» nombra las partes.
fault-nothing-changed = El paramotor ya está descrito así.
    .hint = Da lo que hay que cambiar; no se firmó nada.
fault-nothing-begun = En este paramotor no se empezó ninguna lista así.
    .hint = «machine list» muestra las listas empezadas y sin firmar.
fault-more-begun = Se empezó más de una lista: { $which }
    .hint = Di cuál con --occasion.

## The screens in a browser

fault-not-this-server = Esta dirección no es la de este programa.
    .hint = Abre la dirección que el programa mostró al arrancar.
fault-token-used = Esta dirección ya se abrió antes; funciona una sola vez.
    .hint = Arranca otra vez el programa: muestra una nueva.
fault-not-let-in = Este navegador no ha abierto la dirección del programa.
    .hint = Abre en este navegador la dirección que mostró el programa. Si se abrió en otro sitio, arranca otra vez el programa: muestra una nueva.
fault-no-such-page = No existe esa página.
    .hint = Vuelve a la primera página.
fault-ui-not-built = Las pantallas no están incluidas en este programa.
    .hint = Ejecuta «make ui», y después compila y arranca el programa otra vez.
fault-call-too-large = Esto pasa de 64 MB.
    .hint = Usa una imagen o un archivo más pequeño.
