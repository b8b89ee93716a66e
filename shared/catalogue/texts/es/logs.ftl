# Spanish. Engine logs: what is said while one is taken in; sections as in ../en/logs.ftl.

## What a column may hold, and how time may be written

log-channel-cht = temperatura de culata (CHT)
log-channel-egt = temperatura de gases de escape (EGT)
log-channel-speed = régimen del motor
log-channel-outside = temperatura exterior
log-time-seconds = segundos
log-time-milliseconds = milisegundos (milésimas de segundo)
log-time-minutes = minutos
log-time-clock = un reloj: 1:02:03, o minutos y segundos como 02:03
log-time-moment = día y hora: 2026-05-02 06:41:07
log-unnamed = (un archivo sin nombre)

## What was guessed

log-guess-channel = El encabezado «{ $column }» no dice dónde se midió. Por sus valores se toma por: { $channel }. Mira si es así.
log-guess-unit = El archivo no dice en qué unidad está «{ $column }». Por sus valores se toma por { $unit }. Mira si es así.
log-guess-time = El archivo no dice cómo cuenta «{ $column }». Por sus valores se toma por: { $form }. Mira si es así.
log-guess-no-time = Ninguna columna parece el tiempo. Elige la que lo es.
log-guess-no-channel = Ningún encabezado dice qué contiene su columna. Elige qué contiene cada una.

## Rows that can't be read

log-unread-fields = Línea { $line }: { $has ->
    [one] un campo
   *[other] { $has } campos
  }, pero hay { $wants ->
    [one] un encabezado
   *[other] { $wants } encabezados
  }.
log-unread-no-time = Línea { $line }: falta el tiempo.
log-unread-time = Línea { $line }: «{ $cell }» no es un tiempo de la clase elegida.
log-unread-order = Línea { $line }: el tiempo «{ $cell }» no sigue el orden de las filas vecinas.
log-unread-number = Línea { $line }: «{ $cell }» en «{ $column }» no es un número con el signo decimal elegido.
log-unread-unit = Línea { $line }: «{ $cell }» en «{ $column }» no está en { $unit }, la unidad elegida.
log-nothing-measured = Ninguna fila contiene un valor.

## Figures

log-peak-cht = Temperatura de culata más alta
log-peak-egt = Temperatura de gases de escape más alta
log-peak-speed = Régimen de motor más alto
log-idle-speed = Régimen de ralentí
log-run-time = Tiempo de motor en marcha
log-left-out = { $samples ->
    [one] Un valor se deja
   *[other] { $samples } valores se dejan
  } fuera: ningún motor hace eso. Se soltó el cable de un sensor, o su indicador estaba en el tope.
log-lasts-seconds = { $seconds } s
log-lasts-minutes = { $minutes } min
log-lasts-hours = { $hours } h { $minutes } min

## What else is worth knowing

log-note-runs = El reloj vuelve a empezar dentro del archivo: contiene { $runs } puestas en marcha. Se cuentan juntas: lo más alto de todas, y la suma de sus tiempos.
log-note-gaps = No hay datos durante { $minutes ->
    [one] un minuto
   *[other] { $minutes } minutos
  }, en { $gaps ->
    [one] un hueco
   *[other] { $gaps } huecos
  }. Lo que hubo ahí no se sabe, y no se cuenta.
log-note-all-same = Todos los valores de «{ $column }» son iguales, como no lo son los de ningún motor: su indicador está en el tope, o su sensor no funciona. De esa columna no se saca nada.
log-note-impossible = Ningún valor de «{ $column }» puede ser lo que se dice que contiene esa columna. Mira su unidad y lo que contiene.
log-note-nothing = En «{ $column }» no se midió nada.
log-note-by-head = Ninguna columna muestra un régimen de motor por encima de 500 rpm, así que el tiempo en marcha es una estimación: mientras su { $head } estuvo por encima de la mitad de su subida.
log-note-no-run-time = No se dice cuánto funcionó el motor: ninguna columna contiene su régimen ni la temperatura de su culata.
log-note-never-ran = El motor no funcionó en este archivo de datos: no giró a más de 500 rpm, o su culata no se calentó. De estos datos no se saca nada.
log-note-never-idled = No estuvo nunca diez segundos al ralentí con régimen constante, así que no hay régimen de ralentí.

## Faults

fault-log-empty = En este archivo no hay nada.
    .hint = Elige el archivo que escribió el instrumento; mira si se guardó entero.
fault-log-too-large = Este archivo pasa de { $most } MB.
    .hint = Divídelo en un archivo por día, o haz que el instrumento guarde menos muestras por segundo.
fault-log-too-many-rows = Este archivo tiene más de { $millions } millones de filas.
    .hint = Divídelo en un archivo por día, o haz que el instrumento guarde menos muestras por segundo.
fault-log-no-text = Este archivo no es texto.
    .hint = Exporta los datos como CSV en el programa del propio instrumento, y elige ese archivo.
fault-log-no-rows = En este archivo no hay ninguna tabla de números.
    .hint = Hace falta una fila de encabezados y, debajo, filas de números separados por coma, punto y coma o tabulador.
fault-log-one-column = Este archivo tiene una sola columna.
    .hint = Hace falta una columna de tiempo y al menos una de temperatura o de régimen, separadas por coma, punto y coma o tabulador.
fault-log-no-headings = Este archivo no tiene una fila de encabezados encima de sus números.
    .hint = Añade una primera fila que nombre cada columna, por ejemplo: time,CHT,rpm
fault-log-heading-twice = Dos columnas tienen el mismo encabezado, «{ $heading }».
    .hint = Da a una de ellas otro encabezado en el archivo, por ejemplo «{ $heading } 2».
fault-log-mapping-missing = Nadie ha dicho cómo se leen las columnas.
    .hint = Mira las columnas tal como se muestran, y confirma qué contiene cada una.
fault-log-marks = Entre los campos va una coma, un punto y coma o un tabulador, y delante de los decimales un punto o una coma; nada más.
    .hint = Elige uno de estos.
fault-log-no-column = El archivo no tiene ninguna columna «{ $heading }».
    .hint = Elige entre las columnas que se muestran.
fault-log-column-twice = La columna «{ $heading }» se usa dos veces.
    .hint = Una columna contiene el tiempo o una sola cosa medida: elige una vez cuál.
fault-log-nothing-chosen = No se lee ninguna columna.
    .hint = Elige qué contiene al menos una columna.
fault-log-other-unit = «{ $heading }» no puede estar en { $unit }.
    .hint = Las temperaturas van en °C, °F o K; los regímenes, en rpm.
fault-log-taken = Este archivo ya se incorporó antes, el { $when }.
    .hint = Sus cifras ya están ahí. Si era otro archivo, elige ese.
fault-log-nothing-told = Leído así, este archivo no dice nada. { $why }
    .hint = Mira el separador, el signo decimal, las unidades y qué contiene cada columna.
fault-log-hours = Las horas de motor de estos datos tienen que estar entre 0 y las { $hours } h del paramotor.
    .hint = Da las horas que tenía el paramotor cuando se tomaron los datos. Si ha funcionado más, anota antes ese tiempo.
fault-log-day-ahead = El día de estos datos, { $day }, no ha llegado todavía.
    .hint = Da el día en que se tomaron: el reloj del instrumento puede estar mal.
fault-log-outside = Fuera no hacía tanto calor ni tanto frío: entre −60 y 60 °C.
    .hint = Mira el número y su unidad, o déjalo fuera.
fault-log-name = El nombre del archivo tiene más de { $most } letras.
    .hint = Da al archivo un nombre más corto.
