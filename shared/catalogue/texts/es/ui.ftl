# Spanish: the screens' own words. Sections as in ../en/ui.ftl.

app-name = Witness Mark

## Opening what a code is about

code-open = Abrir un código
code-open-what = La etiqueta de un paramotor, una hoja de registro, lo que te muestra otro teléfono, o lo que el panel de la escuela te pide firmar.
code-open-it = Abrirlo
code-open-another = Abrir otro código

## Waiting and faults

waiting = Un momento…
waiting-failed = Esto no se pudo mostrar
try-again = Probar otra vez
close = Cerrar
fault-unreachable = El programa que hay detrás de esta página no responde.
fault-unreachable-hint = Lo que escribiste sigue aquí. Mira si el programa sigue funcionando, ábrelo de nuevo si no, y prueba otra vez.
fault-refused = El programa rechazó esta página (código { $status }).
fault-refused-hint = Abre la dirección que el programa mostró al arrancar: cada arranque tiene una nueva.
fault-unexpected-hint = Lo que escribiste sigue aquí. Prueba otra vez; si vuelve a fallar, cierra el programa y ábrelo de nuevo.

## Going places

to-machines = Tus paramotores
to-machine = El paramotor
to-record = El registro

## First start

first-title = Mira antes de despegar
first-what = Recorre tu paramotor antes de volar, punto por punto, y firma lo que viste. Todo queda en este dispositivo y funciona sin cobertura.
first-name = Tu nombre, como firmas
first-begin = Crear mi clave y empezar
first-busy = Creando la clave…
pin-choose = Elige un PIN
pin-hint = Al menos seis cifras. Cierra la clave que firma; si lo olvidas, nadie te lo puede decir.
pin-twice = El mismo PIN otra vez
pin-yours = Tu PIN
pin-old = El PIN de ahora
pins-differ = Los dos PIN no son iguales.
pins-differ-hint = Escribe otra vez el PIN en los dos sitios.

## Machines

machines-title = Tus paramotores
machines-over = { $name } firma aquí · guardado en este dispositivo
machines-others = Otros paramotores
machines-more = Más
machines-add = Añadir un paramotor
machines-verify = Comprobar o incorporar un archivo
machines-settings = Ajustes
machines-walk = Recorrer { $machine }
machines-walk-on = Seguir con { $machine }: { $done } de { $of }
machines-walking = Recorrido empezado: { $done } de { $of } mirados
hours = { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
invented = inventado, para probar
empty-what = Aún no hay ningún paramotor.
empty-add = Añadir mi paramotor
empty-demo = Probar con paramotores inventados
empty-demo-what = No son de nadie, y están marcados como inventados.

## Meanings and looks

means-serviceable = utilizable
means-watch = en vigilancia
means-unserviceable = inutilizable
means-not-fitted = no montado
look-open = sin mirar todavía
look-done = mirado
look-again = hay que volver a mirarlo
look-left = dejado por ahora
reasons = Por qué
cautions = Precauciones
caution = Precaución:

## The walk

walk-title = Recorrido de { $machine }
walk-over = { $list } · { $done } de { $of } mirados
walk-begin = Empezar: { $point }
walk-go-on = Seguir: { $point }
walk-to-summary = Repasar y firmar
walk-to-summary-early = Repasar lo hecho
walk-here = Estás aquí.
walk-count = { $done } de { $of }
minutes = { $minutes } min

## A point

point-unknown = Esta lista no tiene ese punto.
point-unknown-hint = Vuelve al recorrido y elige un punto allí.
point-to-map = Volver al recorrido.
point-place = lugar { $place } de { $places } · punto { $point } de { $points }
point-critical = Crítico: de este depende una vida
point-good = Bien:
point-bad = Mal:
point-said = Dijiste: «{ $words }»
point-said-again = Dijiste «{ $words }» antes de la interrupción. Mira otra vez.
point-kept = Guardado: { $words }. { $done } de { $of } mirados.
point-left = Este lo dejaste por ahora.
answers = ¿Qué ves?
answer-yours = esto dijiste
tools = También aquí
tool-photo = Foto
tool-note = Decir más
tool-leave = Dejar por ahora
tool-go-on = Seguir
tool-step-back = Paso atrás
note-title = Decir más
note-words = ¿Qué viste en «{ $point }»?
note-keep = Guardar la nota
photo-number = Foto { $number }
photo-open = Abrir la foto { $number }
keys = Teclas de números
keys-erase = Borrar la última cifra
measure-value = Valor medido; el margen es { $band }
measure-band = Margen: { $band }
measure-unit = Unidad
measure-enter = Apuntarlo

## Said back, and signed

summary-title = Lo que viste
summary-back = El recorrido
summary-preview = Si firmas ahora
summary-found = { $count ->
    [one] Un hallazgo
   *[other] { $count } hallazgos
  }
summary-left = { $count ->
    [one] Un punto que nadie miró
   *[other] { $count } puntos que nadie miró
  }
summary-hurried = { $count ->
    [one] Un punto mirado con prisa
   *[other] { $count } puntos mirados con prisa
  }
some-more = { $count ->
    [one] Y uno más
   *[other] Y { $count } más
  }
left-must = Sin él, el paramotor se queda en tierra.
summary-look-again = volver a mirar
sign-means = Tu firma dice lo que viste. No es un certificado legal; el manual del fabricante y las normas locales van primero.
sign-hold = Mantener para firmar
sign-plain = Firmar sin mantener pulsado
sign-title = Firma lo que viste
sign-now = Firmar
sign-busy = Firmando…
sign-not-yet = Todavía no
put-aside = Dejar a un lado
verdict-over = { $machine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
verdict-to-machine = Más sobre { $machine }

## One machine

machine-over = { $engine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h · { $flights ->
    [one] un vuelo
   *[other] { $flights } vuelos
  }
machine-why = { $count ->
    [one] ver el motivo
   *[other] ver los { $count } motivos
  }
machine-lists = Recorrerlo
machine-walk = Recorrer: { $list }
machine-walk-on = Seguir: { $list }, { $done } de { $of }
machine-open = Todavía abierto
machine-timeline = Historial
machine-timeline-none = Todavía no hay nada firmado.
machine-limits = Límites de su motor
machine-edit = Describirlo de nuevo
export = Entregar sus registros
exported = Escrito en { $place }. Cualquiera puede verificarlo con solo el archivo.
put-right = Arreglar
put-right-how = ¿Qué hiciste?
put-right-how-hint = La pieza, el trabajo, el par: lo que necesita saber quien venga después.
put-right-means = Tu firma dice que hiciste este trabajo y lo miraste después. Si exige licencia, firma el titular de la licencia.
put-right-sign = Firmar que está bien
put-right-nothing = En este punto ya no hay nada abierto.
limit-critical = De este valor depende una vida.
limit-unknown = No existe ese límite
limit-unknown-hint = La hoja de datos de este motor no tiene ese límite. Vuelve y elige uno allí.
limit-confirm = Confirmarlo con el manual
limit-anew = Confirmarlo de nuevo
limit-confirm-how = Abre el manual del fabricante del motor y copia lo que dice, también donde difiera del valor de aquí.
limit-low = Mínimo { $unit }
limit-high = Máximo { $unit }
limit-document = Manual
limit-document-hint = Su título y edición, como en la portada.
limit-page = Página o apartado
limit-sign = Firmar este límite
limit-no-number = «{ $typed }» no es un número.
limit-no-number-hint = Escribe el valor con cifras, por ejemplo 12,5.

## Describing a machine

form-new = Un paramotor nuevo
form-edit = { $machine }, descrito de nuevo
form-name = ¿Cómo lo llamas?
form-name-hint = Cualquier nombre por el que lo reconozcas.
form-engine = Tipo de motor
form-parts = ¿Tiene esto?
form-serials = Números de serie, los que conozcas
form-repacked = Plegado el, según su ficha
form-every-days = Días hasta el próximo plegado, según su manual
form-hours = Horas de motor
form-flights = Vuelos
form-note = Algo más que convenga saber
form-sign = Firmar la descripción
form-no-number = { $words }: «{ $typed }» no es un número.
form-no-number-hint = Escribe solo cifras, por ejemplo 41,6.

## A record

record-signature = Firma
record-by = Firmado por
record-when = Cuándo
record-device = Clave
record-seq = Número
record-digest = Resumen
record-payload = Tal como se firmó, palabra por palabra
record-payload-what = Estos son los bytes exactos bajo la firma.
finding-band = margen { $band }
finding-before = Retirado: { $words }
finding-seconds = mirado durante { $seconds } s
otherwise = Corregirlo
otherwise-said = { $by } firmó «{ $words }», { $when }. Eso queda como está.
otherwise-answer = ¿Qué se debería haber dicho?
otherwise-reason = ¿Por qué?
otherwise-means = Tu palabra posterior es un registro aparte, al lado del primero.
otherwise-sign = Firmar la corrección
otherwise-unknown = Este registro no tiene ese hallazgo. Vuelve y elige uno allí.

## Checking a file

verify-title = Comprobar un archivo
verify-what = ¿Alguien te dio los registros de un paramotor? Esto dice quién los firmó, y si algo se cambió o falta.
verify-choose = Elegir el archivo
verify-paste = O pega su texto
verify-check = Comprobarlo
verify-busy = Comprobando…
verify-records = { $count ->
    [one] Un registro
   *[other] { $count } registros
  } · { $machines }
verify-faults = Qué está mal
verify-people = Quién firmó
verify-people-what = Compara cada clave con la que muestra el propio dispositivo de su dueño en Ajustes: solo entonces sabes de quién es la firma.

## Settings

settings-person = { $name } firma en este dispositivo
settings-thumbprint = Esta es la huella de tu clave. Léesela a quien quiera estar seguro de que una firma es tuya.
settings-keychain = La clave está cerrada con tu PIN y con el llavero de este dispositivo.
settings-no-keychain = La clave está cerrada con tu PIN.
settings-language = Idioma
settings-patience = Minutos hasta que un recorrido retrocede
settings-patience-hint = Si nadie responde durante más tiempo, los últimos puntos se preguntan otra vez.
settings-no-minutes = «{ $typed }» no es un número de minutos.
settings-no-minutes-hint = Escribe minutos enteros, por ejemplo 10.
settings-keep = Guardar
settings-kept = Guardado.
settings-pin = Cambiar el PIN
settings-pin-change = Cambiarlo
settings-pin-changed = Desde ahora vale el PIN nuevo.
settings-about = Acerca de
settings-about-what = Witness Mark te lleva en un recorrido por tu paramotor y guarda lo que firmaste. No es un certificado ni sustituye al manual, la formación o el criterio.

## After landing, and after working on it

after-flight = Después de un vuelo o de un trabajo
log = Anotar un vuelo
log-title = Un vuelo con { $machine }
log-how-long = ¿Cuánto tiempo funcionó el motor?
log-minutes = { $minutes ->
    [60] 1 h
   *[other] { $minutes } min
  }
log-other = otro
log-times = Uno de los tiempos habituales
log-tank = Se gastó un depósito
log-total = { $flights ->
    [one] Un vuelo
   *[other] { $flights } vuelos
  }{ $tanks ->
    [0] {""}
    [one] , un depósito gastado
   *[other] , { $tanks } depósitos gastados
  } hasta ahora.
log-flown = { $minutes } min, un vuelo
log-typed = { NUMBER($hours, maximumFractionDigits: 2) } h, { $flights ->
    [one] un vuelo
   *[other] { $flights } vuelos
  }
log-read = cuentahoras en { NUMBER($hours, maximumFractionDigits: 2) } h, { $flights ->
    [one] un vuelo
   *[other] { $flights } vuelos
  }
log-kept = Anotado: { $words }.
log-waiting = { $count ->
    [one] Una anotación espera firma; tu próxima firma la firma también.
   *[other] { $count } anotaciones esperan firma; tu próxima firma las firma también.
  }
log-done = Listo
log-undo = Retirarla
log-meter = Lo que marca el cuentahoras
log-meter-hint = Déjalo vacío para escribir las horas.
log-hours = Horas en marcha
log-tanks = Depósitos gastados
log-it = Anotar esto

## Work

work-title = Trabajé en él
work-several = Elige todo lo que se hizo, o se hará.
work-choose = Elige qué se hizo
work-to-plan = { $count ->
    [one] Qué supone este trabajo
   *[other] Qué suponen estos { $count } trabajos
  }
work-back = Otros trabajos
work-open = «{ $title }» está todavía sin conformidad. Termínalo primero: su lista, su segunda mirada, su conformidad.
plan-over = Si firmas: { $count ->
    [one] un punto
   *[other] { $count } puntos
  } que mirar después
plan-renew = Renovar, nunca reutilizar
plan-count = Contar al recoger
plan-independent = Otra persona mira
plan-later = Vence más tarde
plan-note = ¿Algo que decir del trabajo?
plan-note-hint = La pieza, su número, qué estaba mal.
plan-means = Desde tu firma, el paramotor se queda en tierra hasta que todo esto esté mirado y el trabajo tenga su conformidad.
plan-sign = Firmar que empezó el trabajo
order = En qué sentido
order-off = Desmontar
order-back = Montar
order-nothing = Para esto no hay que desmontar nada.
exploded-part = Parte:
exploded-joint = Unión:
job-open = Trabajo sin conformidad: { $title }
job-ready = Está todo mirado. Se puede dar la conformidad.
job-lacks = Todavía le falta
job-plan = Su orden, y lo que lleva
job-deeds = Seguir con el trabajo
job-walk = Recorrer su lista
job-walk-on = Seguir con su lista, { $done } de { $of }
job-walk-again = Recorrer su lista otra vez
job-second = Segunda mirada
job-release = Dar la conformidad
release-title = Conformidad de { $machine }
release-says = Tu firma dice que todo lo que este trabajo desmontó o aflojó se volvió a montar y se miró, y dos veces donde de ello depende una vida.
release-means = Es tu propia declaración, no un certificado legal. Si el trabajo exige licencia, firma el titular de la licencia bajo su propia responsabilidad. El manual del fabricante y las normas locales van primero.
release-first-flight = Haz la prueba de motor antes de volar. El primer vuelo tras un trabajo es corto, cerca del campo, y después se mira el paramotor.
release-sign = Firmar la conformidad
release-none = No hay ningún trabajo abierto
release-none-hint = Este paramotor no tiene nada que espere conformidad. Vuelve a él.

## Tightening

torque-no-number = Aquí no se conoce ningún número al que apretar.
torque-to-limit = Introducirlo del manual
torque-which-tool = ¿Con qué herramienta aprietas?
torque-no-tool = Aún no hay ninguna herramienta dinamométrica dada de alta.
torque-refused = Esta herramienta no se puede usar para esto.
torque-watched = Cuidado con esta herramienta.
torque-round = ronda { $round } de { $rounds }
torque-all-clicked = par completo
torque-set-full = Ajusta la herramienta a esto · { $other } · margen { $band }
torque-set-part = Ajusta la herramienta a esto · par completo { $full } · margen { $band }
torque-nut = Tuerca { $nut } de { $nuts }.
torque-nut-number = Tuerca { $nut }:
torque-pull = Tira despacio, y para en el clic.
torque-how-far-ask = ¿Cuánto giró antes del clic?
torque-how-far = ¿Cuánto giró la tuerca { $nut } antes del clic?
torque-none = nada
torque-more = más
torque-not-at-all = no giró
torque-turn = { $turn } vuelta
torque-less-by-one = Un octavo menos
torque-more-by-one = Un octavo más
torque-say-how-far = Di cuánto giró
torque-clicked = Hizo clic
torque-next = Siguiente: tuerca { $nut }, { $round }, ajustada a { $setting }.
torque-all = Todas las tuercas hicieron clic. Destensa la herramienta.
torque-moved = Cuánto giró cada tuerca
torque-reading = Lo que leyó la herramienta, si lee
torque-reason = ¿Por qué se usa o se da por bueno a pesar de todo?
torque-reason-use = ¿Por qué se usa a pesar de todo?
torque-reason-first = Di primero por qué.
torque-reason-first-hint = El motivo entra en el registro con cada tuerca que aprieta esta herramienta. O toma otra herramienta.
torque-use-all-the-same = Usarla a pesar de todo
torque-reason-hint = Queda escrito en el registro; desde entonces la unión está en vigilancia.
torque-nut-back = Una tuerca atrás
torque-anew = Empezar de nuevo
torque-other-tool = Otra herramienta
adapter = Algo entre la herramienta y la tuerca
adapter-fitted = Un adaptador o llave de pata de gallo alarga la palanca
adapter-lever = Herramienta: centro de empuñadura a cuadradillo
adapter-length = Adaptador: cuadradillo a tuerca
adapter-angle = Ángulo, grados (0 en línea)
adapter-half-first = Primero, las medidas del adaptador
adapter-half = Escribe las dos longitudes y el ángulo: antes no se puede ajustar nada.

## Torque tools

tool-list = Herramientas dinamométricas
tool-list-what = Una herramienta fuera de su calibración se rechaza, salvo que digas por qué la usas.
tool-list-none = Aún no hay ninguna dada de alta.
tool-new = Dar de alta una herramienta
tool-usable = se puede usar
tool-unusable = no se puede usar
tool-cycles = { $cycles } de { $allowed } clics desde su calibración
tool-back-to-point = El punto
tool-name = ¿Cómo la llamas?
tool-name-hint = Un nombre o el número que lleva.
tool-low = Marca más baja
tool-high = Marca más alta
tool-unit = Unidad de su escala
tool-deviation = Desviación que se le permite, por ciento
tool-deviation-hint = De su certificado. Una buena llave dinamométrica de clic tiene 4.
tool-calibrated = Calibrada el
tool-calibrated-hint = Déjalo vacío si nadie lo sabe.
tool-every-days = Días entre calibraciones
tool-every-cycles = Clics entre calibraciones
tool-clicks = Clics desde la calibración, hasta donde se sabe
tool-dropped = Desde entonces se cayó o se forzó
tool-sign = Firmar la herramienta

## The second pair of eyes

second-title = Una segunda mirada
second-what = Otra persona mira: { $joints }. Su teléfono lee este código, sin necesidad de cobertura, en «Mirar para otra persona».
second-code = Código que pide a otro teléfono una segunda mirada
second-here = Que firme en este dispositivo
second-reply = Lo que te muestra de vuelta
second-reply-what = Cuando haya firmado, su teléfono muestra un código. Léelo aquí.
second-take = Leerlo
second-here-title = Otra persona mira, aquí
second-here-what = Entrega el dispositivo. Quien mira no puede ser quien hizo el trabajo.
second-who = ¿Quién mira?
second-here-pin = El PIN de { $name }
second-here-sign = Firmar como { $name }
second-means = Tu firma dice lo que viste con tus propios ojos en estas uniones, y nada más.
second-new = Alguien nuevo en este dispositivo
second-name = Su nombre, como firma
second-pin = Su propio PIN
second-pin-hint = Al menos seis cifras, que nadie más conozca.
second-add = Crear su clave
joint-good = Como debe
joint-wanting = Deficiente
joint-note = ¿Qué falla en «{ $joint }»?
look-title = Mirar para otra persona
look-what = Alguien trabajó en un paramotor y pide tus ojos. Lee el código que muestra su teléfono en «Segunda mirada».
look-take = Abrirlo
look-how = Ve a cada unión y mírala como si nadie lo hubiera hecho antes que tú.
look-own = Esto se pidió desde tu propio dispositivo. Quien hizo el trabajo no puede dar la segunda mirada.
look-sign = Firma lo que viste
look-reply = Muestra esto
look-reply-what = Su teléfono lo lee en «Lo que te muestra de vuelta». Solo entonces cuenta allí tu mirada.
look-code = Código con tu mirada firmada
look-anew = Mirar otra vez para otra persona
code-camera = Usar la cámara
code-camera-view = Lo que ve la cámara
code-camera-off = Parar la cámara
code-no-camera = Aquí no se puede usar la cámara.
code-no-camera-hint = Permítela en los ajustes del dispositivo, o elige una imagen del código, o pega su texto.
code-picture = Elegir una imagen del código
code-text = O pega su texto
code-busy = Leyendo…
code-copy = Copiar como texto
code-copied = Copiado.
code-not-copied = No se pudo copiar. Abre el texto de abajo y cópialo a mano.
code-share = Enviarlo
code-as-text = Como texto
code-too-long = Esto es demasiado largo para un código. Envía su texto en su lugar.

machines-look = Mirar para otra persona

## What falls due, and what may wait

due = Vencimientos
due-none = Aquí no se lleva ninguno todavía.
due-new = Añadir un vencimiento
due-later = más tarde:
due-soon = pronto:
due-tolerated = pasado, todavía tolerado:
due-over = vencido:
due-title = ¿Qué vence?
due-every = ¿Cada cuánto? Cuenta lo que llegue primero.
due-days = Días
due-done = Última vez hecho
due-done-now = Se hizo ahora
due-done-on = Hecho el
due-tolerance = Cuánto retraso se tolera todavía, por ciento
due-tolerance-hint = Del manual. 0 si allí no se dice nada.
due-from-due = El próximo cuenta desde cuando vencía, no desde cuando se hizo
due-ended = Ya no vence en este paramotor
due-end = Firmar que termina
due-sign = Firmar esto
defer = Puede esperar
defer-may-wait = ¿Puede esperar?
defer-until = ¿Hasta cuándo, como mucho? Cuenta lo que llegue primero.
defer-now = Ahora: { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h, { $flights ->
    [one] un vuelo
   *[other] { $flights } vuelos
  }.
defer-hours = Horas de motor
defer-flights = Vuelos en total
defer-date = Día
defer-condition = ¿Con qué condición puede volar?
defer-condition-hint = Por ejemplo: sin pasajero, no más de medio gas.
defer-reason = ¿Por qué puede esperar?
defer-means = Esto solo puede firmarlo quien decide sobre el paramotor. Si el manual del fabricante o las normas locales prohíben volar con el defecto, no puede esperar.
defer-sign = Firmar que puede esperar

## Components

components = Componentes con tiempo propio
components-none = Todavía no se lleva ninguno aparte del paramotor.
component-new = Montar un componente
component-off = desmontado
component-part = ¿Qué parte es?
component-name = ¿Cómo lo llamas?
component-serial = Número de serie
component-brings = Tiempo en servicio que trae
component-fit-sign = Firmar que está montado
component-where = ¿Adónde va?
component-take-off = Fuera de este paramotor, a ninguno
component-to = A { $machine }
component-keeps = Su propio tiempo en servicio va con él.
component-move-sign = Firmar el cambio
component-record = Su último registro
component-unknown = No existe ese componente
component-unknown-hint = Ya no está en este paramotor. Vuelve al paramotor.
form-not-whole = { $words }: «{ $typed }» no es un número entero.
form-not-whole-hint = Escribe solo cifras, sin decimales, por ejemplo 12.

## Papers

papers = Para llevarse
papers-label = Etiqueta para pegar
papers-table = Tabla (CSV)
papers-calendar = Calendario de vencimientos
papers-sheet-a4 = Hoja para imprimir, A4
papers-sheet-letter = Hoja para imprimir, Carta
papers-saved = Escrito en { $place }.

## Another device of somebody

first-as = Ya lo uso en otro dispositivo
first-as-title = Otro dispositivo tuyo
first-as-back = Es mi primera vez
first-as-what = En el dispositivo que ya tienes, abre Escuela y después «Otro dispositivo mío»: muestra un código. Léelo aquí, y este dispositivo firma como tú, con una clave propia.
first-as-take = Leerlo
first-as-taken = El código de tu otro dispositivo está leído. Ahora, un PIN para este.
first-as-anew = Leer otro código
first-as-other = Eso no es lo que muestra tu otro dispositivo.
first-as-other-hint = Lee el código de su página Escuela, en «Otro dispositivo mío».
device-title = Otro dispositivo mío
device-step-read = En el dispositivo nuevo elige «Ya lo uso en otro dispositivo», y haz que lea este código.
device-step-back = El dispositivo nuevo muestra entonces un código propio: léelo aquí, y firma que es tuyo.
device-step-last = Este dispositivo muestra una respuesta: el nuevo la lee, firma, y muestra un último código.
device-shows = Lo que muestra el otro dispositivo
device-take = Leerlo
device-vouch = ¿Es tuyo este dispositivo?
device-compare = El otro dispositivo muestra este código
device-means = Tu firma dice que los dos dispositivos son tuyos. Lo que firme el otro queda entonces firmado por ti.
device-sign = Firmar que es mío
device-vouched = Muestra esto al otro dispositivo
device-vouched-code = Código que dice que el otro dispositivo es tuyo
device-vouched-what = Lo lee en la página donde está su propio código. Hasta entonces el otro dispositivo no es de nadie.
device-anew = Empezar otra vez con otro dispositivo
device-last = Lo último que muestra el dispositivo nuevo
device-last-what = Dice a su vez que este dispositivo es tuyo: solo entonces puede este anular la clave del otro, si se pierde.
device-back = Un código más, para tu primer dispositivo
device-back-code = Código que dice que tu primer dispositivo es tuyo
device-back-what = Tu primer dispositivo lo lee donde está ahora. Después, cada uno de los dos puede anular la clave del otro, si se pierde.
device-done = Listo

## The school

school = Escuela
school-over = { $role ->
    [empty] Sin admitir todavía
   *[other] { $role }
  }{ $root ->
    [yes] {" · este dispositivo es la raíz: admite miembros"}
   *[no] {""}
  }
school-own-code = El código de este dispositivo, para leerlo en voz alta
school-deeds = Lo que puedes hacer aquí
school-no-role = Nadie ha admitido todavía este dispositivo. Muestra su código a quien tiene la raíz de la escuela, o léeselo en voz alta.
school-yours = Tú y tus dispositivos
school-show-code = Mostrar quién soy
school-show-code-what = Quien tiene la raíz de la escuela lee este código para admitir este dispositivo, o para admitirlo de nuevo.
school-code = Código que dice de quién es este dispositivo
school-none = Sin escuela todavía
school-none-what = La app no necesita ninguna escuela. En una, los miembros tienen roles, un instructor ve los paramotores que están en ella, y las listas y hojas de datos llegan a todos. Todo ello funciona sin cobertura; un servidor solo hace que llegue antes.
school-ways = Maneras de entrar en una escuela
join-by-code = Entrar con un código
join-by-address = Entrar con una dirección
found-one = Fundar una escuela
found-title = Fundar una escuela
found-what = Una escuela es una lista firmada de quién puede hacer qué en los paramotores que están en ella.
found-name = ¿Cómo se llama?
found-root = Este dispositivo pasa a ser su raíz: solo él admite miembros y termina su pertenencia. Tus paramotores pasan a la escuela. La raíz se puede traspasar más adelante.
found-sign = Firmar que se funda
join-show = Muestra este código a quien tiene la raíz de la escuela, o envíalo como texto.
join-answer = Lo que te muestra de vuelta
join-answer-what = Cuando te haya admitido, su dispositivo muestra una respuesta. Léela aquí.
join-take = Leerla
join-no-answer = Eso no es una respuesta a tu código.
join-no-answer-hint = Muestra primero tu código a la raíz de la escuela, y lee lo que ese dispositivo muestre entonces.
join-sign-title = La respuesta está leída
join-sign-what = Se comprueba cuando firmas: si es para este dispositivo, y quién la firmó.
join-means = Tu firma pone tus paramotores bajo la escuela y sus roles. Puedes salir otra vez; lo firmado queda.
join-sign = Firmar que entro
join-other-answer = Leer otra respuesta
leave-school = Salir de la escuela
leave-title = Salir de { $school }
leave-what = Tus paramotores se van contigo, y no se envía nada más al servidor de la escuela. Lo que firmaste como miembro queda firmado.
leave-sign = Firmar que salgo

## A school by its server’s address

address = Dirección del servidor
address-hint = Como la da la escuela. Empieza por https://
address-what = El servidor muestra primero su escuela. No se envía ni se firma nada antes de que la hayas comparado.
address-look = Mirar quién hay
address-busy = Preguntando…
address-says = Un servidor dice que sirve a
address-root = Su raíz la tiene { $name }.
address-compare = El código de la escuela
address-compare-how = Compáralo con lo que la escuela te diga por otro camino: en papel, o leído en voz alta por alguien de allí. Otro código es otra escuela.
address-not-admitted = Todavía no ha admitido este dispositivo. Después de firmar esperas en su lista; lee este código en voz alta a quien tiene su raíz.
address-sign = Firmar que sigo a { $school }
address-other = Otra dirección
address-of-server = El servidor de la escuela
address-change = Otra dirección

## Members

members = { $count ->
    [one] Un miembro
   *[other] { $count } miembros
  }
members-before = { $count ->
    [one] Un antiguo miembro
   *[other] { $count } antiguos miembros
  }
member-you = { $name } (tú)
member-devices = { $count ->
    [0] ningún dispositivo
    [one] un dispositivo
   *[other] { $count } dispositivos
  }
member-their-devices = { $count ->
    [one] Dispositivo
   *[other] Dispositivos
  }
member-code-what = Cada dispositivo muestra su propio código en su página Escuela: leído en voz alta, dice cuál es.
member-deeds = Lo que puede hacer la raíz
member-unknown = No existe ese miembro
member-unknown-hint = Vuelve a la escuela y elige uno allí.
member-no-longer = Ya no es miembro. Lo firmado antes sigue valiendo.
device-here = este dispositivo
device-root = tiene la raíz
device-ended = su clave está anulada
role-as-what = ¿Como qué?
role-until = Último día
role-until-hint = Déjalo vacío si no hay.
role-change = Cambiar el rol
role-change-title = { $name }, desde ahora
role-sign = Firmar el rol
as-pilot = Piloto
as-mechanic = Mecánico
as-instructor = Instructor
as-viewer = Observador
may-pilot = recorre paramotores y firma lo que vio
may-mechanic = además firma trabajos, y da la segunda mirada
may-instructor = además decide qué puede esperar, y publica listas
may-viewer = lee, y no firma nada en paramotores de la escuela
end-member = Terminar la pertenencia
end-title = Terminar la pertenencia de { $name }
end-what = Desde tu firma, nada de lo que firme cuenta en los paramotores de la escuela. Lo que firmó antes sigue valiendo.
end-reason = ¿Por qué?
end-sign = Firmar que termina
key-lost = Se perdió: anular su clave
key-title = Anular la clave de un dispositivo perdido
key-what = Nada de lo que este dispositivo de { $name } firme desde ahora cuenta en ninguna parte, lo tenga quien lo tenga. No se puede deshacer; su dueño sigue con otro dispositivo.
key-reason = ¿Qué pasó?
key-reason-hint = Por ejemplo: perdido en el campo el domingo.
key-sign = Firmar que su clave se anula
hand-root = Traspasarle la raíz
hand-title = Traspasar la raíz a { $name }
hand-what = Desde tu firma, solo ese dispositivo de { $name } admite miembros y termina pertenencias. Este no puede deshacerlo.
hand-sign = Firmar el traspaso
admit = Admitir a alguien
admit-what = Quien lo pide muestra un código en su dispositivo, en Escuela, «Entrar con un código».
admit-by-code = Leer su código
admit-take = Leerlo
admit-member = Este dispositivo ya es miembro. Si firmas, recibe otro rol.
admit-compare = El código de su dispositivo
admit-compare-how = Haz que { $name } lea en voz alta el código de su propia pantalla: tiene que ser este, letra por letra.
admit-sign = Firmar: admitir a { $name }
admit-anew = Admitir a otra persona
admitted = { $name }: admisión firmada
admitted-code = Código de su admisión
admitted-what = { $server ->
    [yes] A { $name } le llega del servidor en la próxima sincronización, o lee este código.
   *[no] Muestra a { $name } este código. Lo lee donde está su propio código.
  }
waiting-list = Esperan en el servidor
waiting-list-none = Allí no espera nadie.
waiting-list-again = Preguntar otra vez

## Machines under the school

enrolled = Paramotores
enrolled-none = Aquí no hay ninguno todavía.
enrolled-yes = en la escuela
enrolled-no = fuera de la escuela
enrolled-own = tuyo
machine-under = En { $school }
machine-not-under = No está en { $school }
enrol-title = Poner { $machine } en la escuela
enrol-what = En { $school } los roles deciden quién firma trabajos en él y quién dice que un defecto puede esperar. Sus instructores ven sus registros.
enrol-sign = Firmar que entra
enrol-out-title = Sacar { $machine } de la escuela
enrol-out-what = Entonces los roles de { $school } ya no valen para él, y lo que se firme desde ahí se queda aquí.
enrol-out-sign = Firmar que sale
enrol-records = Es un registro como cualquier otro: queda en el historial del paramotor.
enrol-not-yours = Eso solo puede hacerlo quien lo dio de alta.
enrol-no-school = Este dispositivo no pertenece a ninguna escuela.

## Lists and data sheets from the school

published = Listas y hojas de datos de la escuela
published-none = Todavía no se ha publicado nada.
published-version = versión { $version }
published-used = en uso
published-before = sustituida después
publish = Publicar para los miembros
publish-what = Elige listas u hojas de datos. Cada una se comprueba antes de que la firmes, y llega a todos los miembros con tu firma.
publish-choose = Elegir los archivos
publish-more = Elegir más archivos
publish-without = Dejar fuera
publish-faults = { $count ->
    [one] Un fallo
   *[other] { $count } fallos
  }
publish-good = Bien. Será la versión { $version }.
publish-where = { $file }, línea { $line }
publish-title = Título
publish-title-hint = El mismo título sustituye a la versión anterior.
publish-note = ¿Qué hay de nuevo?
publish-sign = Firmar y publicar
folder-engines = una hoja de datos de un motor
folder-fragments = puntos de una lista
folder-assembly = cómo se desmonta un motor
folder-drawings = un dibujo
folder-texts = palabras, { $language }
school-file = Para quien lleva el servidor
school-file-what = Un servidor necesita este archivo para servir a la escuela. No contiene ninguna clave ni ningún PIN.
school-file-give = Entregar el archivo de la escuela

## The server

server-title = El servidor
server-none = Esta escuela no tiene aquí ningún servidor.
server-more = Más sobre el servidor
sync-none-short = Aquí no hay servidor: los registros van por archivo o código.
sync-failed-short = La última sincronización no se completó.
sync-records = { $count ->
    [one] un registro espera
   *[other] { $count } registros esperan
  }
sync-photos = { $count ->
    [one] una imagen espera
   *[other] { $count } imágenes esperan
  }
sync-stuck = { $count ->
    [one] uno rechazado
   *[other] { $count } rechazados
  }
sync-now = Sincronizar ahora
sync-busy = Sincronizando…
stuck = { $count ->
    [one] Un registro que el servidor no aceptó
   *[other] { $count } registros que el servidor no aceptó
  }
stuck-what = Están a salvo en este dispositivo y aquí cuentan.
stuck-retry = Enviarlos otra vez
truth = ¿Dice la verdad el servidor?
truth-what = { $count ->
    [0] El servidor no ha firmado nada todavía.
    [one] Este dispositivo tiene la palabra firmada del servidor por un registro. No se puede quitar ni cambiar sin que se note.
   *[other] Este dispositivo tiene la palabra firmada del servidor por { $count } registros, cada uno en su sitio. Ninguno se puede quitar ni cambiar sin que se note.
  }
truth-check = Comprobarlo todo
truth-busy = Comprobando…
truth-proof = La prueba
truth-root = Raíz del árbol que los cubre
truth-signed = La palabra firmada del servidor
compare = Comparar con otro miembro
compare-what = Un servidor que cuenta a dos miembros historias distintas queda descubierto cuando los dos comparan. No hace falta cobertura.
compare-code = Código con lo que el servidor dijo a este dispositivo
compare-theirs = Lo que muestra su dispositivo
compare-take = Comparar
anew = Seguir al servidor de nuevo
anew-what = Olvida todo lo que dijo el servidor, y lee su historial desde el principio en la próxima sincronización. Tus propios registros quedan. Hazlo solo después de que la escuela haya dicho por qué.
anew-do = Olvidar lo que dijo
refused = Líneas no aceptadas
refused-none = Cada línea que llegó era un registro válido.
refused-what = El servidor entregó estas líneas, y no son registros válidos. No cuentan para nada.
refused-line = La línea tal como llegó
refused-away = Apartarla

## The board

board = El panel
board-own = Todos los paramotores de un vistazo
board-counts = { $count ->
    [one] Un paramotor
   *[other] { $count } paramotores
  }. Inmovilizados: { $grounded }; con límites: { $limited }; aptos: { $fit }
board-none = Aún no hay ningún paramotor.
board-shown = { $count } de { $of } a la vista
board-filters = Mostrar solo
board-machine = Paramotor
board-first = Lo que antes necesita a alguien
board-open = Abierto
board-due = Vence
board-looked = Última mirada
board-defect = Defecto:
board-watched = En vigilancia:
board-deferred = Puede esperar:
board-job = Trabajo abierto:
board-second = { $count ->
    [one] Espera una segunda mirada
   *[other] Esperan { $count } segundas miradas
  }
board-second-by = trabajo de { $name }
board-people = Miembros y sus paramotores
board-no-machine = ningún paramotor
filter-state = Veredicto
filter-all = todos
filter-owner = Dueño
filter-everybody = todos
filter-due = Algo vence
filter-second = Espera segunda mirada
state-grounded = inmovilizado
state-limited = con límites
state-fit = apto

## What a board asks to be signed

desk-sign-in-title = ¿Entrar en el panel?
desk-address = El panel que lo pide:
desk-means = El panel te muestra entonces los paramotores de la escuela. Puede preparar lo que tú puedes firmar; solo este dispositivo lo firma.
desk-sign-in = Sí, entrar
desk-signed-in = Has entrado en el panel
draft-over = Preparado en el panel de { $school }
draft-means = Léelo como si lo hubieras escrito tú: tu firma lo hace tuyo.
draft-sign = Firmar esto
draft-body = Como se firmará, palabra por palabra
draft-signed = Firmado, y enviado a la escuela

## Taking records in, and giving all away

take-in = Incorporar
take-in-what = Los registros válidos de este archivo entran en este dispositivo, junto a lo que ya hay. Aquí no se cambia nada.
take-in-do = Incorporar sus registros
take-in-busy = Incorporando…
take-in-known = { $count ->
    [one] Uno ya estaba aquí.
   *[other] { $count } ya estaban aquí.
  }
everything = Todo lo de este dispositivo
everything-what = Todos los registros de todos los paramotores en un archivo: para guardar, o para otro dispositivo. No contiene ninguna clave ni ningún PIN.
everything-give = Entregarlo todo

## Charts

chart-name = { $title }: { $count ->
    [one] una lectura
   *[other] { $count } lecturas
  }
chart-keys = Las flechas izquierda y derecha van de lectura en lectura. Intro abre el registro de la lectura.
axis-hours = { $hours } h
chart-before = La lectura anterior
chart-after = La lectura siguiente
drawn-title = Qué significan las marcas
drawn-reading = Una lectura
drawn-far-off = Una lectura lejos de la línea: se muestra, no se deja fuera
drawn-band = Dentro del margen
drawn-limit = El límite
drawn-limit-unconfirmed = El límite, sin confirmar por un documento
drawn-line = Hacia dónde va, con su franja de duda
drawn-neither = Una línea con su franja de duda donde no se puede decir nada seguro: el puro azar la dibujaría
drawn-reach = Si sigue así: dónde alcanza el límite, de lo más pronto a lo más tarde
drawn-change = Un escalón: el nivel de antes y el de después
drawn-mark = Un trabajo, o una parte montada o desmontada; su número está en la lista bajo el gráfico
drawn-steps = Proporción todavía utilizable, escalón a escalón, tal como se encontró
drawn-fitted = Una curva suave que la sigue, con su franja de duda
drawn-failed = Encontrado inutilizable: falló entre dos miradas
drawn-whole = Todavía entero en la última mirada

## Trends

drifts = Lo que se desvía
drifts-no-readings = Todavía no hay lecturas que seguir. Llegan con cada recorrido, y con los datos de motor.
drifts-too-little = { $count ->
    [one] Una medida tiene lecturas, pero todavía no se puede decir hacia dónde va.
   *[other] { $count } medidas tienen lecturas, pero de ninguna se puede decir todavía hacia dónde va.
  }
drifts-nothing = { $told ->
    [one] Nada se desvía: se sigue una medida.
   *[other] Nada se desvía: se siguen { $told } medidas.
  } { $few ->
    [0] {""}
    [one] De una más todavía no se puede decir nada.
   *[other] De { $few } más todavía no se puede decir nada.
  }
trends-title = Todas las tendencias
trends-over = { $machine } · { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h
trends-none = Todavía no hay nada que seguir. Lo que mides en un recorrido se sigue aquí a lo largo de las horas de motor, y también lo que incorporas de los datos de motor.
trends-what = Cada lectura está sobre las horas de motor con que se tomó. Toca un gráfico para leer una.
trend-limit = límite { NUMBER($value, maximumFractionDigits: 2, useGrouping: 0) } { $unit }
trend-from = desde { NUMBER($hours, maximumFractionDigits: 0) } h
trend-far-off = lejos de la línea
trend-unsigned = sin firmar todavía
trend-marks = { $count ->
    [one] Qué es el trazo de la línea de horas
   *[other] Qué son los { $count } trazos de la línea de horas
  }
trend-hours = Horas de motor
trend-reading = Lectura
trend-table = { $count ->
    [one] La única lectura, en una tabla
   *[other] Las { $count } lecturas en una tabla
  }

## Engine logs

readings-title = Incorporar datos de motor
readings-what = El archivo que escribió el instrumento de tu motor: una tabla con una columna de tiempo y columnas de temperatura o de régimen (CSV: texto con columnas separadas por coma, punto y coma o tabulador).
readings-step-file = Elige el archivo.
readings-step-columns = Di cómo se leen sus columnas. Se pregunta una vez, y se recuerda.
readings-step-figures = Mira qué dice, y pon cuándo fue y qué temperatura hacía.
readings-step-sign = Fírmalo: sus cifras pasan a las tendencias.
readings-kept = El archivo se queda contigo. Se firman y guardan sus pocas cifras: temperaturas más altas, régimen más alto y de ralentí, tiempo en marcha.
readings-choose = Elegir el archivo
readings-other = Otro archivo
readings-busy = Leyendo…
readings-guessed = ¿Se lee bien así?
readings-guessed-what = Esto es solo una suposición por los encabezados. Mira cada columna, y cambia lo que esté mal.
readings-remembered = ¿Se lee como la última vez?
readings-remembered-what = Ya se incorporó un archivo con estos encabezados. Entonces dijiste que se lee así:
readings-change = Leerlo de otra manera
readings-confirm = Sí, leerlo así
readings-signs = Entre columnas: { $separator ->
    [tab] un tabulador
   *[other] «{ $separator }»
  }. Delante de los decimales: «{ $decimal }». Los dos se ven en el archivo.
readings-holds = Qué contiene
readings-left-out = se deja fuera
readings-time = Tiempo
readings-time-form = Cómo está escrito el tiempo
readings-told = Qué dice
readings-rows = { $rows ->
    [one] Una fila leída, { $lasts }.
   *[other] { $rows } filas leídas, { $lasts }.
  }
readings-unread = { $count ->
    [one] En una fila hay algo que no se puede leer; lo demás de ella cuenta.
   *[other] En { $count } filas hay algo que no se puede leer; lo demás de ellas cuenta.
  }
readings-hours = Horas de motor de entonces
readings-on = Día
readings-outside = Temperatura que hacía fuera
readings-outside-why = Con ella, las temperaturas de culata se llevan todas a un mismo día, para poder comparar verano e invierno. Déjalo vacío si no la sabes.
readings-sign = Firmar lo que dice
readings-again = Ya incorporado
readings-again-what = Este mismo archivo ya se incorporó antes. Contado dos veces, torcería la tendencia.
readings-to-record = Abrir su registro

## What all records tell

fleet-title = Lo que dicen los registros
fleet-own = Todos los paramotores de este dispositivo
fleet-more = Más de lo que dicen los registros
fleet-what = Todas las miradas a todos los paramotores conocidos aquí, juntas. Son pocas, y no son un manual: los intervalos del fabricante valen mientras nadie los acorte.
fleet-lives = Cuánto duran los componentes
fleet-none = Todavía no hay firmada ninguna mirada a un componente. Con cada recorrido firmado se sabe más aquí.
fleet-counts = { $failed ->
    [0] Ninguno encontrado inutilizable
    [one] Uno encontrado inutilizable
   *[other] { $failed } encontrados inutilizables
  }, de { $lives ->
    [one] uno
   *[other] { $lives }
  } en { $machines ->
    [one] un paramotor
   *[other] { $machines } paramotores
  }
life-in-force = En vigor: mirarlo cada
life-asked-for = Los hallazgos piden mirarlo cada
life-asked = Los hallazgos piden mirarlo
life-every-flight = antes de cada vuelo
life-suggested = Aquí no hay ninguno en vigor. Los hallazgos sugieren cada
life-stays-so = Los hallazgos no lo acortan.
life-every = { NUMBER($hours, maximumFractionDigits: 1) } h
life-chance = para que la probabilidad de un fallo que nadie ha visto quede por debajo del { NUMBER($percent, maximumFractionDigits: 1) } %
life-only-shorter = Un intervalo hallado aquí, por sí solo, nunca alarga: solo acorta. Alargar uno es cosa del manual del fabricante y de una persona.
life-caption = Proporción todavía utilizable, según las horas propias del componente
life-share = Proporción todavía utilizable
life-table = Los números de la curva
life-ask = Preguntar con otra probabilidad o intervalo
life-chance-borne = Probabilidad de un fallo sin ver
life-in-force-hours = Intervalo en vigor, horas
share = { NUMBER($percent, maximumFractionDigits: 1) } %
share-between = { NUMBER($percent, maximumFractionDigits: 0) } % ({ NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) } %)

## How people look, and what the points are worth

looking-title = Cómo mira cada cual
looking-none = Nadie ha firmado todavía bastantes recorridos para esto.
looking-nothing = No llama la atención nada.
looking-you = { $name } (tú)
looking-inspections = { $count ->
    [one] Un recorrido firmado
   *[other] { $count } recorridos firmados
  }; comparación en { $looks ->
    [one] una mirada
   *[other] { $looks } miradas
  } a puntos que otros también miran
looking-hurried = Con prisa, de cada cien puntos
looking-points = Con prisa más a menudo:
looking-seconds = La mitad de los puntos, en menos de
looking-own-seconds = { NUMBER($seconds, maximumFractionDigits: 1) } s
looking-fleet-seconds = { NUMBER($seconds, maximumFractionDigits: 1) } s, los demás
looking-found = Encontrados mal, de cada cien puntos
looking-own-count = { NUMBER($count, maximumFractionDigits: 1) }
looking-fleet-count = { NUMBER($count, maximumFractionDigits: 1) }, los demás
worth-title = Lo que valen los puntos
worth-none = Todavía no hay firmado ningún recorrido.
worth-sort-often = Encontrados mal a menudo ({ $count })
worth-sort-never = Nunca encontrados mal ({ $count })
worth-sort-plain = Encontrados mal alguna vez ({ $count })
worth-sort-few = Mirados demasiado poco para decir algo ({ $count })
worth-scale = Cada línea va de ninguno a { $most } de cada 100 miradas: el trazo es la proporción encontrada mal; la barra, hasta dónde llega la duda.
worth-counts = { $looks ->
    [one] una mirada
   *[other] { $looks } miradas
  }{ $machines ->
    [0] {""}
    [one] : { $watch } × en vigilancia, { $unserviceable } × inutilizable, en un paramotor
   *[other] : { $watch } × en vigilancia, { $unserviceable } × inutilizable, en { $machines } paramotores
  }
worth-seconds = La mitad de las miradas llevó menos de { NUMBER($seconds, maximumFractionDigits: 1) } s; { NUMBER($hurried, maximumFractionDigits: 0) } de cada cien fueron con prisa.

## Load, fuel, air and wind before a flight

flight = Carga, combustible y aire
flight-what = Responde lo que hoy importa, y deja fuera lo demás. Cada respuesta se compara enseguida con su límite.
flight-reminders = Los manuales de la vela y del motor y las normas locales van primero: estos números son recordatorios. Si no coinciden, para y sigue el manual.
flight-part-load = ¿Cuánto peso sube?
flight-part-mix = ¿Qué entra en el depósito?
flight-part-fuel = ¿Cuánto dura el combustible?
flight-part-air = ¿Qué densidad tiene el aire?
flight-part-wind = ¿Qué fuerza tiene el viento?
flight-left-out = Dejado fuera
flight-leave-out = Dejar esto fuera
flight-reckoning = Calculando…
flight-lacks = Falta por escribir: { $values }.
flight-lacks-hint = Escribe lo que falta, o deja fuera esa pregunta.
flight-keep = Guardarlo para este vuelo
flight-kept = Guardado. Está en el veredicto, y tu próxima firma lo firma.
flight-keep-means = Entra enseguida en el veredicto, y tu próxima firma lo firma.
flight-verdict = Con esto:
flight-unit = Unidad: { $value }
flight-pad-away = Quitar teclas
flight-pad-next = Siguiente
flight-pad-done = Listo
flight-value-pilot = Tú, con la ropa de vuelo
flight-value-machine = Paramotor y vela, sin combustible
flight-value-fuel = Combustible al despegar
flight-value-ballast = Lastre y lo demás
flight-value-inTank = Ahora en el depósito
flight-value-addFuel = Gasolina que echas
flight-value-target = Partes de gasolina por una de aceite
flight-value-ratioInTank = Partes de gasolina en el depósito por una de aceite
flight-value-oil = Aceite que has echado
flight-value-minutes = Tiempo de vuelo
flight-value-reserve = Debe quedar al aterrizar
flight-value-elevation = Elevación del campo
flight-value-setting = Reglaje del altímetro, QNH
flight-value-pressure = Presión en el campo, QFE
flight-value-temperature = Temperatura
flight-value-dew = Punto de rocío, si se sabe
flight-value-mean = Viento medio
flight-value-gust = Racha más fuerte
flight-value-mostMean = Viento medio, máximo
flight-value-mostGust = Rachas, máximo
flight-value-mostFactor = Racha entre viento medio, máximo
flight-span = { $low } a { $high } { $unit }
flight-wing = La vela lleva de { $range } con motor.
flight-wing-without = Sin motor, de { $range }.
flight-source = { $document }{ $page ->
    [empty] {""}
   *[other] , { $page }
  }.
flight-wing-unsourced = Nadie ha dicho dónde está escrito: sin confirmar.
flight-no-wing = Todavía no está descrito lo que puede llevar la vela.
flight-to-wing = Describirlo con su manual
flight-caution-pour = Vapor de combustible: ninguna llama, y nada de teléfono en la mano mientras lo echas. Lee el número, guarda el teléfono, y solo entonces échalo.
flight-pour = Aceite que echar
flight-poured = Ya está dentro
flight-no-ratio = La hoja de datos del motor no tiene proporción: tómala del manual del fabricante.
flight-plain = Lo que hay en el depósito no lleva aceite
flight-oil-hint = Después de echarlo. Antes, déjalo vacío.
flight-minutes = min
flight-to-log = Anotar lo que gastó un vuelo
flight-by = ¿Qué lees?
flight-by-altimeter = El reglaje de un altímetro (QNH: la presión reducida al nivel del mar)
flight-by-field = Un barómetro en el campo (QFE: la presión de aquí mismo)
flight-measured = De las { $time }. Escríbelo de nuevo cuando hayas vuelto a medir.
flight-own-limits = Tus propios límites
flight-school = Los límites de la escuela:
flight-school-mean = viento medio { $value }
flight-school-gust = rachas { $value }
flight-school-factor = racha entre viento medio { $value }
flight-caution-weather = El viento de un momento no es el tiempo que hace: el cielo, la previsión y el terreno los juzgas tú.
flight-row-not-yet = Sin calcular hoy
flight-row-well = Calculado hoy: todo dentro de los límites

## What the wing may carry, and what the machine weighs

form-load = Peso, y lo que puede llevar la vela
form-load-what = Para el cálculo antes de cada vuelo. Deja vacío lo que nadie sepa.
form-weight = El peso del paramotor
form-weight-hint = Chasis, motor, arnés, vela y paracaídas de emergencia, sin combustible.
form-wing-with = Peso total en vuelo con motor, según el manual de la vela
form-wing-without = Peso total en vuelo sin motor
form-wing-without-hint = Si el manual da los dos.
form-wing-low = Mínimo
form-wing-high = Máximo
form-wing-document = Título y edición del manual de la vela
form-wing-only-free = Falta el rango con motor.
form-wing-only-free-hint = Escribe también el rango con motor: con ese se compara este paramotor.

## Fuel that a flight burned

log-burned-open = Combustible gastado, si lo mediste
log-burned = Combustible gastado
log-burned-hint = Lo que había antes en el depósito, menos lo que hay ahora. Los próximos vuelos se calculan con ello.

## Choices of this device

language-name = Español
settings-choices = En este dispositivo
settings-aloud = Leer los puntos en voz alta
settings-aloud-what = Primero la precaución, después qué mirar, y cómo se ve bien y cómo mal. Se calla cuando respondes.
settings-no-voice = Este dispositivo no tiene voz para { $language }, así que no se lee nada en voz alta.
settings-units = Unidades en que lees y escribes
settings-units-what = Cada una se puede cambiar donde se escribe. Lo que dice un manual se muestra como él lo dice, y en la tuya.
settings-unit-mass = Peso
settings-unit-volume = Combustible
settings-unit-speed = Viento
settings-unit-temperature = Temperatura
settings-unit-pressure = Presión del aire
settings-unit-height = Altura
settings-unit-torque = Par
settings-unit-sheet = como en la hoja de datos
settings-unit-option = { $sign }, { $words }
folder-none = en ninguna carpeta, para todos los paramotores
folder-texts-other = palabras, en otro idioma
folder-language = ¿Qué idioma?
folder-language-hint = Su código, por ejemplo nl o pt-BR.

## Read aloud

aloud = Leer en voz alta
spoken-plus-minus = más o menos
spoken-at-most = como máximo
spoken-at-least = como mínimo
spoken-range = { $low } a { $high }
spoken-unit-kg = { $count ->
    [one] kilogramo
   *[other] kilogramos
  }
spoken-unit-lb = { $count ->
    [one] libra
   *[other] libras
  }
spoken-unit-L = { $count ->
    [one] litro
   *[other] litros
  }
spoken-unit-mL = { $count ->
    [one] mililitro
   *[other] mililitros
  }
spoken-unit-gal-us = { $count ->
    [one] galón estadounidense
   *[other] galones estadounidenses
  }
spoken-unit-gal-br = { $count ->
    [one] galón imperial
   *[other] galones imperiales
  }
spoken-unit-L-h = { $count ->
    [one] litro por hora
   *[other] litros por hora
  }
spoken-unit-km-h = { $count ->
    [one] kilómetro por hora
   *[other] kilómetros por hora
  }
spoken-unit-kt = { $count ->
    [one] nudo
   *[other] nudos
  }
spoken-unit-m-s = { $count ->
    [one] metro por segundo
   *[other] metros por segundo
  }
spoken-unit-Cel = { $count ->
    [one] grado Celsius
   *[other] grados Celsius
  }
spoken-unit-degF = { $count ->
    [one] grado Fahrenheit
   *[other] grados Fahrenheit
  }
spoken-unit-K = kelvin
spoken-unit-hPa = { $count ->
    [one] hectopascal
   *[other] hectopascales
  }
spoken-unit-inHg = { $count ->
    [one] pulgada de mercurio
   *[other] pulgadas de mercurio
  }
spoken-unit-bar = bar
spoken-unit-psi = libras por pulgada cuadrada
spoken-unit-m = { $count ->
    [one] metro
   *[other] metros
  }
spoken-unit-mm = { $count ->
    [one] milímetro
   *[other] milímetros
  }
spoken-unit-in = { $count ->
    [one] pulgada
   *[other] pulgadas
  }
spoken-unit-ft = { $count ->
    [one] pie
   *[other] pies
  }
spoken-unit-N-m = { $count ->
    [one] newton metro
   *[other] newtons metro
  }
spoken-unit-lbf-in = { $count ->
    [one] libra fuerza pulgada
   *[other] libras fuerza pulgada
  }
spoken-unit-lbf-ft = { $count ->
    [one] libra fuerza pie
   *[other] libras fuerza pie
  }
spoken-unit-kgf-cm = { $count ->
    [one] kilogramo fuerza centímetro
   *[other] kilogramos fuerza centímetro
  }
spoken-unit-kgf-m = { $count ->
    [one] kilogramo fuerza metro
   *[other] kilogramos fuerza metro
  }
spoken-unit-V = { $count ->
    [one] voltio
   *[other] voltios
  }
spoken-unit-s = { $count ->
    [one] segundo
   *[other] segundos
  }
spoken-unit-min = { $count ->
    [one] minuto
   *[other] minutos
  }
spoken-unit-h = { $count ->
    [one] hora
   *[other] horas
  }
spoken-unit-per-minute = { $count ->
    [one] revolución por minuto
   *[other] revoluciones por minuto
  }
spoken-unit-deg = { $count ->
    [one] grado
   *[other] grados
  }
spoken-unit-percent = por ciento
