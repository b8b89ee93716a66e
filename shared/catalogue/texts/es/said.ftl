# Spanish. The meaning of each section is told in ../en/said.ftl.

day = { $day } de { $month ->
    [1] enero
    [2] febrero
    [3] marzo
    [4] abril
    [5] mayo
    [6] junio
    [7] julio
    [8] agosto
    [9] septiembre
    [10] octubre
    [11] noviembre
   *[12] diciembre
  } de { $year }

decimal-mark = ,

## Cautions that hold always

always-1 = El arco de la hélice es zona de peligro: capuchón de bujía quitado (eléctrico: batería de vuelo desconectada) e interruptor de paro en parada antes de acercar una mano a la hélice.
always-2 = Deja enfriar el motor antes de tocarlo o de ponerle una llave. El vapor de combustible arde: ninguna llama, y nada de teléfono en la mano que echa el combustible.
always-3 = Los manuales de los fabricantes del motor y de la vela y las normas locales van primero. Los números de aquí son recordatorios: si no coinciden, para y sigue el manual.
always-4 = Si el trabajo exige licencia, firma el titular de la licencia bajo su propia responsabilidad. Una firma aquí es tu propia declaración, no un certificado legal.
always-5 = Una lista completa no es un vuelo seguro: el tiempo, el lugar y el piloto los juzga el piloto.

## Lists, engines, parts, limits

occasion-before-flight = Antes del vuelo
occasion-second-flight = Segundo vuelo del día
engine-two-stroke = Motor de dos tiempos
engine-four-stroke = Motor de cuatro tiempos
engine-electric = Motor eléctrico
part-frame = Chasis
part-harness = Arnés
part-reserve = Paracaídas de emergencia
part-fuel = Sistema de combustible
part-electrics = Sistema eléctrico
part-engine = Motor
part-carburettor = Carburador
part-exhaust = Escape
part-reduction = Reductora
part-starter = Arranque
part-throttle = Mando de gas
part-propeller = Hélice
part-cage = Jaula y red
part-wing = Vela
band-fuel-on-board = Combustible a bordo
band-throttle-free-travel = Juego libre del gas
band-propeller-tracking = Alineación de las puntas de pala
band-idle-speed = Régimen de ralentí
band-full-throttle-speed = Régimen a fondo, en tierra
band-head-nut-torque = Par de las tuercas de culata
band-cht-cruise = Temperatura de culata, crucero
band-cht-climb = Temperatura de culata, subida
band-pack-voltage = Tensión de la batería de vuelo
term-hours = horas de motor
machine-unnamed = Un paramotor que nadie ha descrito

source-document = { $document }, { $page }
source-unconfirmed = Sin confirmar ({ $why }): compáralo con tu manual.
source-missing = Sin confirmar: introduce el valor y la página de tu manual.
figure-missing = (sin confirmar: mira tu manual)
figure-unconfirmed = Esta cifra está sin confirmar: cuenta el valor de tu manual. Introdúcelo con su página en la pantalla del paramotor.

## The verdict

verdict-fit = Apto para volar
verdict-limited = Apto para volar, con { $limits ->
    [one] un límite
   *[other] { $limits } límites
  }
verdict-grounded = Inmovilizado

reason-no-description = Nadie ha descrito todavía este paramotor.
clears-no-description = Descríbelo: motor, partes, paracaídas de emergencia.
reason-unknown-engine = El tipo de motor «{ $engine }» no está en el catálogo de este programa, así que no se conocen sus límites.
clears-unknown-engine = Elige un tipo de motor conocido, o añade su hoja de datos.
reason-never-looked = Nadie lo ha recorrido y firmado todavía.
clears-never-looked = Recórrelo antes del vuelo, y firma.
reason-not-today = El último recorrido completo antes del vuelo fue el { $day }, no hoy.
clears-not-today = Recórrelo hoy, y firma.
reason-point-missed = Sin mirar: { $title }.
clears-point-missed = Míralo en una lista nueva, y firma.
reason-open-defect = { $title }: { $words }.
clears-open-defect = Arréglalo y firma lo que se hizo. Volver a mirar, por sí solo, no lo cierra.
clears-passing = Arréglalo y vuelve a mirar: lo cierra una mirada posterior firmada.
reason-watch-item = En vigilancia. { $title }: { $words }{ $looks ->
    [one] .
   *[other] , visto en { $looks } recorridos.
  }
clears-watch-item = Lo cierra una mirada que no encuentra nada, o arreglarlo.
reason-reserve-expired = El plegado del paracaídas de emergencia venció el { $day }.
clears-reserve-expired = Haz que lo replieguen, e introduce la nueva fecha de su ficha.
reason-reserve-unknown = Nadie sabe cuándo se plegó el paracaídas de emergencia.
clears-reserve-unknown = Lee la fecha en su ficha, o haz que lo replieguen; introduce la fecha.
reason-reserve-soon = El plegado del paracaídas de emergencia vence el { $day }.
reason-limit-missing = { $band }: nadie ha introducido el límite.
reason-limit-unconfirmed = { $band }, { $value }: ningún manual lo confirma.
clears-limit = Introduce el valor y la página de tu manual.
reason-newer-record = Un registro de una clase que esta versión no sabe leer («{ $kind }»). Puede ser importante.
clears-newer-record = Instala la versión más reciente de este programa.
reason-split-word = Dos registros distintos del dispositivo de { $person } reclaman el mismo sitio: uno de ellos puede ser falso.
clears-split-word = Pregunta a { $person }; la clave puede estar copiada o perdida.
reason-refused-record = { $count ->
    [one] Se rechazó un registro
   *[other] Se rechazaron { $count } registros
  }: la firma o la clave no es válida.
clears-refused-record = Pide a su autor que lo envíe otra vez.
reason-clock-doubt = Un registro lleva fecha del { $day }, por delante del reloj de este dispositivo.
clears-clock-doubt = Pon bien la fecha y la hora de este dispositivo.
reason-job-open = Trabajo sin conformidad: { $title }.
clears-job-open = Termina su lista, haz que otra persona mire las uniones críticas, y después da la conformidad.
clears-job-ready = Está todo: da la conformidad.
lack-inspection = Nadie ha firmado todavía la lista posterior al trabajo.
lack-points = Sin mirar después del trabajo: { $titles }.
lack-points-other = La lista firmada después del trabajo no contiene todos sus puntos.
lack-found = Después del trabajo se encontró algo inutilizable.
lack-second-look = Otra persona no lo ha mirado todavía: { $joint }.
lack-wanting = La segunda persona la encontró deficiente: { $joint }.
reason-first-flight = Primer vuelo tras un trabajo ({ $title }): quédate cerca del campo, con altura para aterrizar sin motor.
reason-after-first-flight = Ha volado una vez desde el trabajo ({ $title }), y no se ha mirado desde entonces.
clears-first-flight = Anota ese vuelo, después recórrelo y firma.
reason-follow-up-due = { $by ->
    [tanks] No vueles más de { $tanks ->
        [one] un depósito
       *[other] { $tanks } depósitos
      } antes de que venza: { $title }.
    [flights] No hagas más de { $flights ->
        [one] un vuelo
       *[other] { $flights } vuelos
      } antes de que venza: { $title }.
    [days] Vence dentro de { $days ->
        [one] un día
       *[other] { $days } días
      }: { $title }.
   *[hours] No vueles más de { $hours } h antes de que venza: { $title }.
  }
reason-follow-up-over = Vence ya, por un trabajo anterior: { $title }.
clears-follow-up = Hazlo, y fírmalo como trabajo.
reason-due-soon = Vence pronto: { $title }, dentro de { $by ->
    [flights] { $flights ->
        [one] un vuelo
       *[other] { $flights } vuelos
      }
    [days] { $days ->
        [one] un día
       *[other] { $days } días
      }
    [tanks] { $tanks ->
        [one] un depósito
       *[other] { $tanks } depósitos
      }
   *[hours] { $hours } h
  }.
reason-due-tolerated = Pasado de plazo, aunque todavía tolerado: { $title }.
reason-due-over = Vencido: { $title }.
clears-due = Hazlo, e introduce cuándo se hizo.
reason-deferred = { $title }: { $words }. Puede esperar; hasta entonces: { $condition }
reason-deferral-over = { $title }: { $words }. Podía esperar, y ese plazo ha terminado.
deferred-hours = Vale hasta { $hours } horas de motor.
deferred-flights = Vale hasta el vuelo { $flights }.
deferred-date = Vale hasta el { $day }.
fact-seen = { $words } · { $day }, con { $hours } h, { $person }
open-since = { $day }, con { $hours } h, por { $person }

## Walking a list

last-time = La última vez: { $words }, con { $hours } h.
stepped-back = Hubo una pausa de { $minutes } min, así que se { $points ->
    [one] vuelve a preguntar el último punto.
   *[other] vuelven a preguntar los últimos { $points } puntos.
  }
stepped-back-day = Esta lista se empezó otro día, así que se { $points ->
    [one] vuelve a preguntar su punto
   *[other] vuelven a preguntar sus { $points } puntos
  }: nadie sabe qué pasó durante la noche.
caution-cold-wrench = Solo con el motor frío. Roscas pequeñas en metal blando: para en el clic, nunca un poco más. Después, devuelve la llave a su marca más baja.
torque-title = { $joint }: apretar
torque-good = Todas las tuercas hacen clic, en el orden indicado, y giran más o menos lo mismo.
torque-bad = Una tuerca que sigue girando, que se agarrota o que gira mucho más que las otras.
torque-why = Un apriete desigual deja entrar aire; una vuelta de más arranca la rosca.
torque-spread = { $tool }: con su ±{ $deviation } %, esto da entre { $low } y { $high } en la tuerca.
torque-done = Ajustada a { $setting } con { $tool }; octavos de vuelta antes del clic: { $eighths }
torque-done-watch = Ajustada a { $setting } con { $tool }; octavos de vuelta antes del clic: { $eighths }. { $watch }
torque-borne = Un espárrago { $thread } de clase { $class } queda entonces traccionado con { $low } a { $high } kN, como mucho el { $percent } % de lo que lo hace ceder; la rosca en el metal blando aguanta { $margin } veces eso. { $confirmed ->
    [yes] {""}
   *[no] (Estas cifras están sin confirmar.)
  }
torque-not-borne = Un espárrago { $thread } de clase { $class } quedaría traccionado con { $low } a { $high } kN, hasta el { $percent } % de lo que lo hace ceder; la rosca en el metal blando aguanta { $margin } veces eso. Demasiado para esta unión. { $confirmed ->
    [yes] {""}
   *[no] (Estas cifras están sin confirmar.)
  }
torque-over = { $percent } % por encima del límite: el espárrago puede haberse estirado y la rosca arrancado. Desmonta, mira, y renueva lo que lo sufrió.
stage-share = ronda al { $percent } %
stage-check = Ronda de control
tool-good-until = Calibrada; vale hasta el { $day }.
tool-outside-range = El ajuste no está en su escala marcada.
tool-overdue = Su calibración caducó el { $day }.
tool-worn = Ha hecho clic { $cycles } veces desde su calibración; se permiten { $allowed }.
tool-dropped = Se cayó o se forzó después de su calibración.
tool-never-calibrated = Nadie sabe cuándo se calibró.
tool-calibrated-later = Su calibración lleva fecha del { $day }, que aún no ha llegado.
tool-joint-limit = Lo que puede dar alcanza lo que aguanta la unión.
tool-overridden = Usada a pesar de todo, porque: { $because }
movement-too-far = La tuerca { $nut } giró { $eighths } octavos de vuelta antes del clic: más de media vuelta.
movement-uneven = Las tuercas giraron desigual: de { $least } a { $most } octavos de vuelta.
movement-growing = La tuerca { $nut } giró más que la última vez: { $before } octavos entonces, { $now } ahora.
judged-serviceable = Dentro del margen.
judged-watch = En vigilancia.
judged-unserviceable = Así no es apto para volar.
judged-not-fitted = No montado.
summary-looked = Has mirado { $done } de { $of } puntos en { $minutes } min.
summary-short-serviceable = Todo utilizable en { $seconds } segundos: { $points } puntos en menos tiempo del que lleva mirar.
summary-short = Solo { $seconds } segundos para { $points } puntos: menos tiempo del que lleva mirar.
summary-short-usual = Lo habitual son { $seconds } segundos.
summary-hurried = { $points ->
    [one] Un punto se respondió
   *[other] { $points } puntos se respondieron
  } en mucho menos tiempo del que lleva mirar. ¿Miras otra vez?
summary-left = { $points ->
    [one] Un punto quedó
   *[other] { $points } puntos quedaron
  } sin mirar.

## The timeline and records

told-machine = Descrito: { $words }
told-inspection = { $list }: { $worst ->
    [unserviceable] algo inutilizable
    [watch] algo en vigilancia
   *[other] no se encontró nada
  }
told-defect-rectified = Arreglado: { $words }
told-correction = Corregido: { $words }
told-limit-confirmed = Límite introducido de un manual: { $words }
told-time-logged = Funcionado o volado: { $words } h
told-job-begun = Trabajo empezado: { $words }
told-second-look = Miró una segunda persona
told-job-released = Trabajo con conformidad
told-defect-deferred = Puede esperar: { $words }
told-component-moved = Componente cambiado de sitio: { $words }
told-due-item = Vence una y otra vez: { $words }
due-left = { $by ->
    [flights] { $flights ->
        [one] Queda un vuelo
       *[other] Quedan { $flights } vuelos
      }
    [days] { $days ->
        [one] Queda un día
       *[other] Quedan { $days } días
      }
    [tanks] { $tanks ->
        [one] Queda un depósito
       *[other] Quedan { $tanks } depósitos
      }
   *[hours] Quedan { $hours } h
  }
due-over = { $by ->
    [flights] Vence ya{ $flights ->
        [0] {""}
        [one] , un vuelo de más
       *[other] , { $flights } vuelos de más
      }
    [days] Vence ya{ $days ->
        [0] {""}
        [one] , un día de más
       *[other] , { $days } días de más
      }
    [tanks] Vence ya{ $tanks ->
        [0] {""}
        [one] , un depósito de más
       *[other] , { $tanks } depósitos de más
      }
   *[hours] Vence ya, { $hours } h de más
  }
due-forecast = A este ritmo de vuelo, hacia el { $at }; cuatro de cada cinco veces, entre el { $low } y el { $high }.
component-time = { $hours } h, { $flights ->
    [one] un vuelo
   *[other] { $flights } vuelos
  }
told-unknown = Un registro de una clase que esta versión no sabe leer.
kind-member = Una persona y su dispositivo
kind-device-vouched = Otro dispositivo de la misma persona
kind-key-revoked = Una clave anulada
kind-machine = Descripción de un paramotor
kind-inspection = Inspección
kind-defect-rectified = Algo arreglado
kind-correction = Corrección
kind-limit-confirmed = Límite de un manual
kind-time-logged = Tiempo en servicio
kind-job-begun = Trabajo empezado
kind-second-look = Segunda mirada
kind-job-released = Conformidad
kind-defect-deferred = Diferimiento
kind-tool = Herramienta dinamométrica
kind-component-moved = Componente cambiado de sitio
kind-due-item = Vencimiento periódico
kind-school-founded = Escuela fundada
kind-school-joined = Un dispositivo entra en una escuela
kind-member-admitted = Miembro admitido
kind-member-ended = Fin de la pertenencia
kind-root-handed = Raíz traspasada
kind-machine-enrolled = Paramotor en una escuela
kind-catalogue-published = Listas publicadas
role-viewer = Observador
role-pilot = Piloto
role-mechanic = Mecánico
role-instructor = Instructor
says-time = { $hours } h, { $flights ->
    [one] un vuelo
   *[other] { $flights } vuelos
  }, { $tanks ->
    [one] un depósito
   *[other] { $tanks } depósitos
  }; cuentahoras: { $reading }.
says-job = { $title }. { $note }
says-second-look = Una segunda persona ha mirado { $joints ->
    [one] una unión
   *[other] { $joints } uniones
  }.
says-released = Las inspecciones de este trabajo están completas. Es la propia declaración del firmante, no un certificado legal.
says-deferred = Puede esperar, porque: { $reason }. Hasta entonces: { $condition }
says-tool = { $name }, marcada de { $low } a { $high }.
says-component = { $name }: { $fitted ->
    [on] montado
   *[off] desmontado
  }, su propio tiempo { $hours } h.
says-due = { $title }
says-school-founded = Empieza la escuela «{ $name }»; este dispositivo es su raíz.
says-school-joined = Este dispositivo entra en la escuela { $school }; su raíz puede anular la clave de este dispositivo.
says-member-admitted = { $name } pertenece a la escuela: { $role }, desde el { $from }{ $until ->
    [empty] {""}
   *[other] {" "}hasta el { $until }
  }.
says-member-ended = Terminó la pertenencia: { $reason }
says-root-handed = El dispositivo { $device } es ahora la raíz de la escuela.
says-machine-enrolled = { $school ->
    [empty] El paramotor deja su escuela.
   *[other] El paramotor queda bajo los roles de la escuela { $school }.
  }
says-published = «{ $title }», versión { $version }, { $files ->
    [one] un archivo
   *[other] { $files } archivos
  }, para todos los miembros de la escuela.
says-member = { $name } firma con este dispositivo.
says-vouched = La misma persona tiene también el dispositivo { $device }.
says-revoked = Se anuló la clave del dispositivo { $device }: { $reason }
says-machine = { $name }, motor { $engine }, { $hours } h, { $flights ->
    [one] un vuelo
   *[other] { $flights } vuelos
  }.
says-rectified = Arreglado: { $how }
says-correction = { $title } debe decir «{ $words }»: { $reason }
says-limit = { $band }: de { $low } a { $high }; { $document }, { $page }.
signature-good = La firma es válida: esto es lo que se firmó.
signature-bad = La firma no encaja: el registro se alteró, o lo firmó otra persona.
signature-unknown-key = Nada aquí dice de quién es esta clave.
signature-revoked = Firmado después de anularse la clave.
signature-not-checked = Nadie ha comprobado la firma.

## Verifying a file

verify-good = { $records ->
    [one] El único registro está tal como se firmó, y no falta ninguno.
   *[other] Los { $records } registros están tal como se firmaron, y entre ellos no falta ninguno.
  }
verify-bad = { $faults ->
    [one] Un fallo
   *[other] { $faults } fallos
  } en { $records ->
    [one] un registro
   *[other] { $records } registros
  }. No te fíes de este archivo.
verify-unreadable = La línea { $line } no es un registro: { $why }
    .hint = Pide otra vez el archivo a quien te lo envió; no lo edites.
verify-bad-signature = Línea { $line }, registro { $record }: la firma no encaja. El registro se alteró después de firmarse, o lo firmó otra persona.
    .hint = No te fíes de él. Pide al dueño del dispositivo { $device } el registro tal como lo firmó.
verify-unknown-key = Línea { $line }, registro { $record }: ningún registro de este archivo declara la clave del dispositivo { $device }.
    .hint = Pide a quien te lo envió el archivo entero, con las personas que firmaron.
verify-revoked-key = Línea { $line }, registro { $record }: firmado por el dispositivo { $device } después de anularse su clave.
    .hint = No te fíes de él: alguien puede estar usando un dispositivo perdido.
verify-malformed = Línea { $line }, registro { $record }: dice algo que un registro de clase «{ $kind }» no puede decir ({ $why }).
    .hint = No te fíes de él. El programa de su autor puede fallar.
verify-missing-record = Dispositivo { $device }: de su cadena sobre este paramotor no está en el archivo lo que va del registro { $from } al registro { $to }.
    .hint = Pide a quien te lo envió el archivo entero: se dejó algo fuera.
verify-broken-chain = Línea { $line }, registro { $record }: no sigue al registro anterior.
    .hint = Se puso un registro en el sitio de otro. Pide el archivo entero al dueño del dispositivo { $device }.
verify-forked-chain = Línea { $line }: los registros { $record } y { $other } del dispositivo { $device } reclaman el mismo sitio.
    .hint = Uno de los dos es falso, o se copió la clave. Pregunta a su dueño.

## The database set aside

warning-rescued = La base de datos estaba dañada y se ha apartado como { $file }. Se recuperaron { $records } registros y tu clave; se perdieron { $lost } filas.
warning-rescued-without-key = La base de datos estaba dañada y se ha apartado como { $file }. Se recuperaron { $records } registros y se perdieron { $lost } filas; la clave no se pudo salvar, así que se crea una nueva: avisa a quienes conocen la antigua.

## Faults: what went wrong, and what to do

fault-internal = El programa ha cometido un error: { $why }
    .hint = No se ha perdido nada de lo que introdujiste antes. Prueba otra vez; si sigue igual, comunica estas palabras a los autores.
fault-disk-full = No queda espacio en este dispositivo, así que el último paso no se guardó.
    .hint = Libera espacio (las fotos y los vídeos son lo que más ocupa) y repite el último paso. Todo lo anterior está guardado.
fault-disk = El almacenamiento del dispositivo no responde: { $why }
    .hint = Todo hasta la última respuesta está guardado. Mira si el almacenamiento está lleno, es de solo lectura o se ha desconectado, y prueba otra vez.
fault-database-damaged = La base de datos está dañada: { $why }
    .hint = Cierra el programa y ábrelo de nuevo: aparta el archivo dañado y recupera lo que se puede salvar.
fault-database-busy = Otro programa está usando la base de datos.
    .hint = Cierra la otra ventana u orden, y prueba otra vez.
fault-database-newer = Estos datos los escribió una versión más nueva (formato { $found }; este programa conoce hasta el { $known }).
    .hint = Instala la versión más reciente. No se ha cambiado nada.
fault-catalogue = El catálogo tiene un fallo en { $where }: { $why }
    .hint = Corrige el archivo (`witnessmark validate FILE` muestra todos los fallos) y empieza de nuevo.
fault-no-randomness = Este sistema no da números aleatorios, así que no se puede crear una clave: { $why }
    .hint = Reinicia el dispositivo; sin números aleatorios no se puede firmar nada con seguridad.
fault-no-such = Aquí no hay ningún «{ $what }».
    .hint = Mira la lista de paramotores y elige uno.
fault-ambiguous = «{ $what }» corresponde a más de un paramotor: { $which }
    .hint = Da más caracteres del id, o el nombre entero.
fault-no-such-point = Esta lista no tiene ningún punto «{ $point }».
    .hint = `witnessmark points` muestra los puntos de la lista.
fault-no-such-answer = El punto «{ $point }» no tiene ninguna respuesta «{ $answer }».
    .hint = Elige una de las respuestas propias del punto; `witnessmark points` las muestra.
fault-no-such-occasion = No hay ninguna lista «{ $occasion }».
    .hint = Las listas son: { $known }.
fault-no-such-language = No hay ningún idioma «{ $language }».
    .hint = Elige uno de los idiomas que se muestran.
fault-answer-missing = No se dio ninguna respuesta.
    .hint = Elige lo que ves, o introduce el valor.
fault-answer-kind = El punto «{ $point }» se responde { $what ->
    [torque] apretando, con una herramienta
    [value] con un valor y su unidad
   *[words] con una de sus propias respuestas
  }.
    .hint = Un punto de medida lleva un valor con su unidad; los demás, una de sus propias respuestas.
fault-unit = La unidad no encaja: { $why }
    .hint = Da el valor en una de las unidades que se muestran.
fault-nothing-to-undo = No hay ninguna respuesta que retirar.
    .hint = Mira el primer punto.
fault-nothing-to-sign = Todavía no se ha mirado nada.
    .hint = Mira primero los puntos.
fault-look-again-first = Después de la interrupción hay que volver a mirar «{ $point }».
    .hint = Respóndelo otra vez, y después firma.
fault-walk-closed = Esta inspección está cerrada: se firmó o se dejó a un lado.
    .hint = Abre otra vez la lista para empezar una nueva.
fault-walk-of-another-day = La última respuesta se dio otro día.
    .hint = Abre otra vez la lista: pregunta lo que hay que volver a mirar.
fault-note-too-long = El texto pasa de { $most } caracteres.
    .hint = Dilo más corto; lo que escribiste sigue ahí.
fault-photo-unreadable = Este archivo no es una imagen que se pueda leer.
    .hint = Usa una imagen JPEG, PNG o WebP.
fault-photo-too-large = Esta imagen es demasiado grande.
    .hint = Usa una de menos de 40 MB y 60 megapíxeles.
fault-no-photo = La imagen no está en este dispositivo.
    .hint = Puede seguir en el dispositivo que la tomó.
fault-name-missing = Hace falta un nombre: hasta 80 letras.
    .hint = Introduce el nombre por el que te conocen.
fault-pin-weak = El PIN necesita al menos { $least } cifras, no todas iguales.
    .hint = Elige cifras que nadie adivine y que tú recuerdes: nadie puede restablecerlo.
fault-pin-wrong = Ese no es el PIN.{ $seconds ->
    [0] {""}
   *[other] {" "}Espera { $seconds } s antes del próximo intento.
  }
    .hint = Prueba otra vez. No se borra nada, por muchas veces que pruebes.
fault-pin-wait = Después de varios PIN equivocados hay una espera: { $seconds } s más.
    .hint = Espera, e introduce el PIN otra vez. No se borra nada.
fault-pin-needed = Para firmar hace falta el PIN.
    .hint = Dalo con --pin-file FILE, o ejecuta la orden en una terminal para que te lo pida.
fault-already-begun = Este dispositivo ya tiene su clave.
    .hint = Úsala; para empezar de nuevo, elige otra carpeta de datos.
fault-not-begun = En este dispositivo todavía no firma nadie.
    .hint = Haz el primer inicio: tu nombre y un PIN.
fault-key-missing = No se puede leer la clave de este dispositivo.
    .hint = Los registros ya firmados siguen valiendo. Empieza de nuevo en otra carpeta de datos, y avisa a quienes conocen la clave antigua.
fault-keychain-missing = El llavero del sistema, que ayuda a guardar la clave, no responde ({ $why }).
    .hint = Desbloquea el llavero, o entra en la sesión de escritorio en la que se creó la clave.
fault-patience-out-of-range = El tiempo hasta que una lista retrocede es de 1 a 120 minutos.
    .hint = Introduce un número de minutos.
fault-description-missing = No se dio ninguna descripción.
    .hint = Introduce al menos el nombre y el tipo de motor.
fault-machine-name = El paramotor necesita un nombre de hasta 60 letras.
    .hint = Introduce cómo lo llamáis.
fault-engine-unknown = No hay ningún tipo de motor «{ $engine }».
    .hint = Elige uno de los tipos de motor que se muestran.
fault-part-unknown = No hay ninguna parte «{ $part }».
    .hint = Elige entre las partes que se muestran.
fault-number-negative = No puede haber un número menor que cero: { $what }.
    .hint = Introduce 0 o más.
fault-repack-interval = El plazo entre plegados es de 1 a { $most } días.
    .hint = Introduce los días que da el manual del paracaídas de emergencia.
fault-repack-in-future = La fecha de plegado está en el futuro.
    .hint = Introduce la fecha de la ficha de plegado.
fault-limit-negative = El extremo { $end ->
    [low] inferior
   *[high] superior
  } del límite está por debajo de cero.
    .hint = Introduce 0 o más.
fault-limit-end-missing = Falta el extremo { $end ->
    [low] inferior
   *[high] superior
  } del límite.
    .hint = Introdúcelo como está en el manual.
fault-limit-crossed = El extremo inferior está por encima del superior.
    .hint = Cámbialos entre sí, o mira si hay una unidad equivocada.
fault-source-missing = Hacen falta el manual y la página.
    .hint = Introduce el título y la edición del manual, y la página donde está el valor.
fault-nothing-open = No hay nada abierto en «{ $point }».
    .hint = Mira en la pantalla del paramotor lo que está abierto.
fault-rectify-how-missing = Di qué se hizo.
    .hint = Una frase: qué se renovó, apretó o cambió.
fault-correction-reason-missing = Di por qué.
    .hint = Una frase: cómo llegó a ser falso lo que se dijo primero.
fault-not-an-inspection = Este registro no es una inspección.
    .hint = Elige una inspección en el historial.
fault-reading-behind = La lectura del cuentahoras queda por detrás de lo conocido: { $hours } h.
    .hint = Léelo otra vez. Si las horas conocidas son falsas, describe de nuevo el paramotor con las correctas.
fault-fuel-burned = Ese no puede ser el combustible que se gastó en ese tiempo.
    .hint = Da el combustible gastado, en litros o galones, con las horas de motor en que se gastó; o déjalo fuera.
fault-time-too-much = No pueden ser más de { $hours } horas o { $flights } vuelos de una vez.
    .hint = Introduce lo funcionado y volado desde la última anotación, día por día.
fault-nothing-logged = No se introdujo nada.
    .hint = Introduce horas, vuelos, un depósito gastado o la lectura del cuentahoras.
fault-log-signed = No hay ninguna anotación que espere todavía una firma.
    .hint = Lo firmado queda: introduce la lectura correcta del cuentahoras como anotación nueva.
fault-deferral-words-missing = Un diferimiento necesita una condición y un motivo.
    .hint = Di cómo se puede volar mientras tanto, y por qué puede esperar.
fault-deferral-limit-missing = Un diferimiento necesita un límite.
    .hint = Introduce las horas de motor, el número de vuelo o el día hasta el que vale.
fault-deferral-passed = Ese límite ya ha pasado (ahora { $hours } h, { $flights } vuelos).
    .hint = Introduce uno que esté por delante.
fault-not-entitled-owner = Solo la persona que dio de alta este paramotor puede dejar que un defecto espere.
    .hint = Pregunta a su dueño, o arregla el defecto.
fault-not-entitled = Este paramotor está en { $school ->
    [empty] una escuela que este dispositivo no conoce
   *[other] { $school }
  }. { $role ->
    [none] Quien no es miembro de ella
    [role-viewer] Un observador de ella
    [role-pilot] Un piloto de ella
    [role-mechanic] Un mecánico de ella
   *[role-instructor] Un instructor de ella
  } no puede { $right ->
    [look] firmar sus inspecciones
    [work] firmar trabajos en él
    [second-look] dar la segunda mirada
    [defer] dejar que sus defectos esperen
   *[publish] publicar listas
  }.
    .hint = Pregunta a un instructor de la escuela. Lo que encuentres mal lo puedes firmar en cualquier momento.
fault-day = «{ $day }» no es un día.
    .hint = Escríbelo así: 2026-05-02.
fault-due-title = Un vencimiento necesita un título de hasta 120 letras.
    .hint = Di qué hay que hacer.
fault-due-interval = No hay intervalo.
    .hint = Introduce horas, vuelos, depósitos o días, cada uno mayor que 0.
fault-due-tolerance = La tolerancia va de 0 a 100 por ciento del intervalo.
    .hint = Introduce 0 si no puede retrasarse nunca.
fault-due-done-ahead = La última vez que se hizo no puede estar por delante (ahora { $hours } h).
    .hint = Introduce las horas, los vuelos y el día en que se hizo.
fault-component-name = El componente necesita un nombre.
    .hint = Introduce cómo lo llamáis.
fault-component-not-here = Este componente no está en este paramotor.
    .hint = Mira en la pantalla de su paramotor.
fault-no-assembly = El catálogo no dice cómo está montado el motor «{ $engine }».
    .hint = Para el trabajo, usa el manual de su fabricante; la lista antes del vuelo sigue valiendo.
fault-job-missing = No se eligió ningún trabajo.
    .hint = Elige qué se hizo.
fault-no-such-job = Ese trabajo no se conoce: { $why }
    .hint = Elige entre los trabajos que se muestran.
fault-job-open-already = Otro trabajo está todavía sin conformidad: { $title }.
    .hint = Termínalo y da su conformidad primero; después empieza el siguiente.
fault-no-job-open = No hay ningún trabajo abierto en este paramotor.
    .hint = Empiézalo primero: di qué se hizo.
fault-job-lacks = Aún no se puede dar la conformidad. { $lack }
    .hint = La pantalla del paramotor muestra todo lo que falta.
fault-tool-name = La herramienta necesita un nombre.
    .hint = Introduce cómo la llamáis, o su número.
fault-tool-range = El alcance de la herramienta está vacío.
    .hint = Introduce su valor marcado más bajo y el más alto, los dos en la misma unidad de par, el más bajo primero.
fault-tool-interval = El plazo y los clics entre calibraciones tienen que ser mayores que 0.
    .hint = Valores corrientes son 365 días y 5000 clics.
fault-tool-calibrated-ahead = La calibración está en el futuro.
    .hint = Introduce la fecha de su certificado.
fault-no-such-tool = Aquí no hay ninguna herramienta así.
    .hint = Da de alta primero la herramienta, con su alcance y su calibración.
fault-tool-refused = Esta herramienta no se puede usar para esto. { $why }
    .hint = Toma otra herramienta. Si no hay, di por qué la usas: el motivo queda escrito, y la unión queda en vigilancia.
fault-torque = No se puede calcular el par: { $why }
    .hint = Mira el límite, el alcance de la herramienta y la longitud del adaptador.
fault-torque-nuts = Cada una de las { $nuts } tuercas necesita su giro: de ninguno a dos vueltas, en octavos.
    .hint = Da la vuelta otra vez y di el giro de cada tuerca.
fault-torque-slip = Aquí no puede ser { $reading }: parece { $meant } leído en la unidad equivocada. Se pide { $band }.
    .hint = Lee otra vez la escala de la herramienta: ¿libras por pulgada o por pie? Si una tuerca recibió de verdad tanto, para: ella y su espárrago están dañados.
fault-limit-needed = { $band }: no hay número al que apretar.
    .hint = Introduce el valor y la página de tu manual en la pantalla del paramotor, y vuelve.
fault-code-unreadable = Este no es uno de nuestros códigos, o no está entero.
    .hint = Sujeta el teléfono quieto y más cerca, que el código entero quepa en la imagen; o envía el texto en su lugar.
fault-code-other = Este código responde a otra petición.
    .hint = Muestra otra vez tu petición y deja que el otro teléfono firme para esta.
fault-second-signature = La firma de este código no encaja.
    .hint = Pide a la otra persona que lo muestre otra vez desde su propio teléfono.
fault-second-same-person = La segunda mirada tiene que ser de otra persona.
    .hint = Pídesela a alguien que no haya hecho el trabajo ni firmado su lista.
fault-second-joint-missing = Cada unión necesita una palabra: como debe, o deficiente.
    .hint = Mira cada unión que se muestra, y di lo que ves.
fault-second-not-needed = Nada en este trabajo necesita a otra persona.
    .hint = Termina su lista y da la conformidad.
fault-second-too-early = La lista posterior al trabajo no está firmada todavía.
    .hint = Recórrela y fírmala primero; después deja que mire otra persona.
fault-bundle-empty = No hay ningún registro en este archivo.
    .hint = Elige un archivo exportado desde este programa.
fault-demo-here = Los paramotores inventados ya están aquí.
    .hint = Están en la lista de paramotores.
fault-file = El archivo { $file } no se puede leer o escribir: { $why }
    .hint = Mira si la ruta es correcta y si se puede escribir en la carpeta.
fault-answers-file = Las respuestas de { $file } no se pueden leer: { $why }
    .hint = Da JSON: {"{"} "point-id": "answer-id", "measured-point": {"{"} "value": 4, "unit": "L" {"}"} {"}"}.
fault-answers-missing = { $count ->
    [one] Un punto obligatorio no tiene
   *[other] { $count } puntos obligatorios no tienen
  } respuesta en el archivo: { $points }
    .hint = Añádelos, o da --leave-missing para firmar sin ellos: el paramotor queda entonces inmovilizado.
fault-input = La entrada no se puede usar: { $why }
    .hint = { $help }
fault-no-such-computation = No hay ningún cálculo «{ $name }».
    .hint = Hay: { $known }.
fault-call-unknown = Esta llamada no se puede leer: { $why }
    .hint = La pantalla y el programa pueden ser de versiones distintas: carga otra vez la página.
fault-address = La dirección { $address } no se puede usar: { $why }
    .hint = Elige otro puerto con --port, o 0 para cualquiera.

## Why a value is unconfirmed, as data sheets say it most often

why-common-practice-no-source = práctica común, sin fuente
why-the-maker-s-manual-gives-it-no-common-figure = lo da el manual del fabricante: no hay cifra común
why-the-propeller-maker-s-manual-gives-it-no-common-figure = lo da el manual del fabricante de la hélice: no hay cifra común
why-depends-on-the-propeller-and-the-gear-ratio-no-common-figure = depende de la hélice y de la relación de la reductora: no hay cifra común
why-depends-on-the-battery-and-the-propeller-no-common-figure = depende de la batería y de la hélice: no hay cifra común
why-compare-with-a-new-spring-no-common-figure = compáralo con un muelle nuevo: no hay cifra común
