# Spanish. Papers: record sheets, labels, tables, calendars.

fault-no-such-paper = Aquí no hay papel «{ $paper }».
    .hint = Pide a4 o letter.
fault-no-sheet = Solo hay hoja de registro de una inspección o de un trabajo.
    .hint = Elige una inspección, un trabajo, su segunda mirada o su conformidad en el historial del paramotor.

## The record sheet

paper-inspection = Registro de una inspección
paper-work = Registro de un trabajo
paper-machine = Paramotor
paper-engine = Motor
paper-serials = Números de serie
paper-owner = Dado de alta por
paper-invented = Inventado
paper-invented-words = Este paramotor y su historial existen solo en la demostración.
paper-none-written = Ninguno anotado
paper-service = { $hours } horas de motor, { $flights ->
    [one] un vuelo
   *[other] { $flights } vuelos
  }
paper-service-then = Tiempo en servicio
paper-date = Fecha de la inspección
paper-took = { $to }. Primer punto mostrado { $from }, { $minutes } min.
paper-type = Tipo y alcance
paper-extent = Lista «{ $list }»: { $looked } de { $points } puntos mirados. Lugares: { $stations }. Lista tal como se compuso: { $digest }.
paper-outcome-serviceable = Se miraron todos los puntos que exige la lista, y no se encontró nada que inmovilice el paramotor ni que haya que tener en vigilancia.
paper-outcome-watch = No se encontró nada que inmovilice el paramotor. { $watch ->
    [one] Un punto queda
   *[other] { $watch } puntos quedan
  } en vigilancia.
paper-outcome-unserviceable = No apto para volar: { $unserviceable ->
    [one] un punto se encontró inutilizable
   *[other] { $unserviceable } puntos se encontraron inutilizables
  }{ $watch ->
    [0] .
    [one] , y uno queda en vigilancia.
   *[other] , y { $watch } quedan en vigilancia.
  }
paper-outcome-missed = Incompleta: hay puntos que exige la lista y que no se miraron.
paper-outcome-released = Con conformidad: las inspecciones de este trabajo están completas.
paper-outcome-open = Sin conformidad. { $lacks }
paper-wanting = Encontrado deficiente
paper-open = Abierto en este paramotor el { $day }
paper-nothing-open = No hay nada abierto.
paper-findings = Qué se miró, y qué se vio
paper-points-left = Sin mirar
paper-left = Dejado fuera
paper-left-must = Dejado fuera, aunque la lista lo exige
paper-interruptions = Interrupciones, y puntos pasados deprisa
paper-no-interruptions = Ninguna: no se volvió a preguntar ningún punto, y ninguno se respondió en mucho menos tiempo del que lleva mirar.
paper-stepped-back = { $at }: pausa de { $minutes } min, así que se volvió a preguntar: { $titles }.
paper-hurried = { $points ->
    [one] Un punto se respondió
   *[other] { $points } puntos se respondieron
  } en mucho menos tiempo del que lleva mirar, y se firmó a pesar de todo: { $titles }.
paper-hurried-all = Los { $points } puntos se respondieron todos en mucho menos tiempo del que lleva mirar, y se firmó a pesar de todo.
paper-band = Límite { $band }. { $source }
paper-torque = { $tool } ajustada a { $setting }; con su desviación, cada tuerca tiene entre { $least } y { $most }. Giro antes del clic, octavos de vuelta, tuerca por tuerca: { $eighths }.
paper-reading = Leído: { $reading } en la tuerca.
paper-override = La herramienta se usó aunque algo lo desaconsejaba: { $because }
paper-note = Nota: { $note }
paper-photos = { $count ->
    [one] Imagen
   *[other] Imágenes
  }, por resumen: { $photos }
paper-before = Respondido antes, y retirado: { $words }
paper-corrected = Corregido después: { $words }. Motivo: { $reason }
paper-rectified = Arreglado el { $day } por { $person }: { $how }
paper-means-serviceable = utilizable
paper-means-watch = en vigilancia
paper-means-unserviceable = inutilizable
paper-means-not-fitted = no montado
paper-means-open = sin mirar

paper-begun = Trabajo empezado
paper-begun-words = { $at }, por { $person }, con { $service }.
paper-completed = Fecha de terminación
paper-not-released = Todavía sin conformidad
paper-description = Descripción del trabajo
paper-disturbed = Desmontado o aflojado: { $joints }.
paper-independent = Lo debe mirar otra persona: { $joints }.
paper-follow-up = Vence más tarde: { $title }, después de { $after }.
paper-hours = { $n ->
    [one] una hora de motor
   *[other] { $n } horas de motor
  }
paper-flights = { $n ->
    [one] un vuelo
   *[other] { $n } vuelos
  }
paper-tanks = { $n ->
    [one] un depósito de combustible
   *[other] { $n } depósitos de combustible
  }
paper-days = { $n ->
    [one] un día
   *[other] { $n } días
  }
paper-or = {" "}o{" "}
paper-first-of = { $words }, lo que llegue primero
paper-list-after = La lista posterior al trabajo
paper-second-look = Segunda mirada, de otra persona
paper-looked-by = { $person }, { $at }
paper-joint-good = Como debe
paper-joint-wanting = Encontrada deficiente
paper-no-second-look = Nadie ha firmado una segunda mirada.

paper-statement = Declaración y firmas
paper-statement-words = Las personas nombradas abajo declaran que miraron lo que figura en esta hoja, en el día y con el tiempo en servicio indicados, y que vieron lo que aquí está escrito. Donde algo figura como inutilizable, en vigilancia o sin mirar, esta hoja es la lista fechada de ello.
paper-not-a-certificate = Es la propia declaración de los firmantes. No es un certificado legal. Los manuales de los fabricantes, las normas locales y la práctica con licencia van primero; si el trabajo exige licencia, firma el titular de la licencia bajo su propia responsabilidad. Una lista completa no es un vuelo seguro: el tiempo, el lugar y el piloto los juzga el piloto.
paper-compare = Cuenta el registro, no esta copia impresa. Para comparar, lee el código o busca el resumen en la app: el registro dice lo mismo, y su firma se puede comprobar.
paper-signed-inspection = La inspección
paper-signed-job = Trabajo empezado
paper-signed-list = La lista posterior al trabajo
paper-signed-earlier-list = Una lista anterior, posterior al trabajo
paper-signed-look = Segunda mirada
paper-signed-release = Conformidad
paper-by = Firmado por
paper-at = Firmado
paper-device = Clave del dispositivo (huella)
paper-digest = Resumen del registro (SHA-256)
paper-checked = Comprobado al imprimir
paper-by-hand = A mano, donde las normas lo pidan
paper-certificate = Certificado o licencia: clase y número
paper-hand-name = Nombre y fecha
paper-hand-signature = Firma
paper-lacking = Un recuadro vacío (□) está en lugar de una letra que la fuente de esta copia no tiene. El registro contiene la letra misma.
paper-code = Un código con el resumen del registro, para buscar el registro y comparar.
paper-code-under = Leer para comparar. Registro { $digest }
paper-foot = registro { $digest } · impreso { $at } · { $machine } · { $title }

## The label

paper-label-code = Un código que abre este paramotor en la app.
paper-label-hint = Léelo en la app para abrir este paramotor.

## The table

paper-taken-back = Retirado
paper-unsigned = Todavía sin firmar.
paper-repacked = Paracaídas plegado el
paper-least = Como mínimo
paper-most = Como máximo

## The calendar

paper-calendar = { $machine }: vencimientos
paper-undated = Sin día, porque se vuela demasiado poco para estimarlo: { $titles }
paper-due = { $machine }: vence { $title }
paper-due-about = { $machine }: vence hacia ahora { $title }
paper-due-day = Por calendario, el { $day }.
paper-every = Vence después de { $every }.
paper-repack = { $machine }: replegar el paracaídas de emergencia
paper-repack-words = { $days } días después del último plegado, según la descripción del paramotor. El manual del paracaídas de emergencia y su ficha de plegado van primero.
paper-deferral = { $machine }: último día en que puede esperar: { $title }
paper-calibration = { $tool }: vence la calibración
paper-calibration-words = Desde este día su calibración ya no vale. Una herramienta que se cayó o se forzó se calibra antes de volver a usarla, sea el día que sea.
