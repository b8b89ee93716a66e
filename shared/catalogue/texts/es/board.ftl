# Spanish. The school board in a browser: its own words.

wall-title = Panel de la escuela
wall-invented = Inventado, para la demostración
wall-unreachable = No se puede llegar al servidor.
wall-unreachable-hint = Lo que escribiste sigue aquí. Prueba otra vez cuando vuelva la conexión.
wall-nothing-there = En esta dirección no hay nada.

## Signing in

wall-sign-in = Entra con tu dispositivo
wall-step-open = Abre Witness Mark en tu teléfono y, dentro, «Abrir un código».
wall-step-scan = Lee el código de esta página, o copia allí su texto.
wall-step-pin = Mira que nombre esta escuela, e introduce tu PIN.
wall-sign-in-why = Tu teléfono firma por esta página durante doce horas como mucho. La página misma nunca puede firmar nada.
wall-code = El código de esta página, para leerlo con tu teléfono
wall-code-anew = Mostrar un código nuevo
wall-passphrase-open = Mirar con una frase de paso
wall-passphrase = Frase de paso
wall-passphrase-hint = Te deja mirar. Para preparar algo hace falta tu dispositivo.
wall-passphrase-go = Mirar
wall-by-passphrase = Entrada con frase de paso
wall-look-only = solo mirar
wall-role-viewer = observador
wall-role-pilot = piloto
wall-role-mechanic = mecánico
wall-role-instructor = instructor
wall-sign-out = Salir

## The board

wall-beside = Además de los paramotores
wall-second = Segundas miradas ({ $count })
wall-prepared = Preparado, sin firmar ({ $count })
wall-publish = Publicar una lista
wall-live-coming = Conectando…
wall-live-live = En directo desde las { $time }
wall-live-lost = Conexión perdida a las { $time }. Lo que ves es de entonces; se sigue intentando.
wall-counts = Cuántos de cada; pulsa para ver solo esos
wall-count-defects = con defectos abiertos
wall-count-deferred = pueden esperar
wall-count-due = vencen pronto o vencidos
wall-count-second = esperan segunda mirada
wall-search = Buscar
wall-owner = Dueño
wall-everybody = todos
wall-sort = Orden
wall-sort-first = lo que antes necesita a alguien
wall-sort-name = por nombre
wall-sort-owner = por dueño
wall-sort-looked = primero los que más llevan sin mirar
wall-sort-due = primero lo que antes vence
wall-every = Mostrar todo
wall-machines = Los paramotores de la escuela
wall-verdict = Veredicto
wall-eyes = Espera una segunda mirada
wall-no-permission = Un veredicto resume lo que se registró. No es un permiso para volar: mira el paramotor mismo; el manual del fabricante, las normas locales y la práctica con licencia van primero.
wall-close = Volver al panel

## A machine

wall-open = Abierto
wall-happened = Historial
wall-job = Trabajo sin conformidad
wall-second-code = Código para la segunda mirada
wall-defer = Puede esperar…
wall-to-machine = Al paramotor
wall-left = { $count ->
    [one] Un punto que nadie miró
   *[other] { $count } puntos que nadie miró
  }

## Second looks

wall-second-title = Segunda mirada
wall-second-none = Ningún trabajo espera una segunda mirada.
wall-second-caution = Antes de acercar una mano: interruptor de paro en parada y capuchón de bujía quitado, o batería de vuelo desconectada. Las partes calientes queman. Mira tú las uniones; una pantalla no muestra ninguna.
wall-second-how = Alguien que no hizo el trabajo abre este código en Witness Mark, mira cada unión, y firma. Vuelve aquí con la próxima sincronización.

## Preparing

wall-until = ¿Hasta cuándo, como mucho? Cuenta lo que llegue primero.
wall-now = Ahora: { NUMBER($hours, minimumFractionDigits: 1, maximumFractionDigits: 1) } h, { $flights ->
    [one] un vuelo
   *[other] { $flights } vuelos
  }
wall-hours = Horas de motor
wall-flights = Vuelos en total
wall-date = Día
wall-condition = ¿Con qué condición puede volar?
wall-condition-hint = Por ejemplo: sin pasajero, no más de medio gas.
wall-reason = ¿Por qué puede esperar?
wall-defer-caution = Quien firma esto responde de ello. Si el manual del fabricante o las normas locales prohíben volar con el defecto, no puede esperar.
wall-prepare = Prepararlo para firmar
wall-prepare-what = Todavía no cambia nada. Lo firmas en tu propio dispositivo, que te muestra qué seguiría.
wall-sign-there = Ahora fírmalo en tu dispositivo
wall-sign-there-how = Abre el código en Witness Mark, lee lo que dice allí, e introduce tu PIN. El panel se pone al día solo.
wall-sign-there-code = Lo que preparaste, para leerlo con tu teléfono
wall-signed = Ya no espera: se firmó, o se retiró. El panel muestra lo que vale.
wall-publish-what = Elige listas u hojas de datos. Cada una se comprueba al momento; nada que tenga un fallo se puede publicar.
wall-publish-caution = Las listas y los límites de todos los miembros siguen lo que publicas. Un número equivocado puede herir a alguien: compara cada uno con el manual del fabricante.
wall-publish-title = Título
wall-publish-title-hint = El mismo título sustituye a la versión anterior.
wall-publish-note = ¿Qué hay de nuevo?
wall-prepared-title = Preparado, sin firmar
wall-prepared-none = Nada de lo que preparaste espera firma.
wall-take-back = Retirarlo
wall-draft-deferral = { $machine }: { $title } puede esperar
wall-draft-publication = { $title }, versión { $version }

## What the records tell

wall-lives = Cuánto duran los componentes
wall-lives-what = Todas las miradas a todos los paramotores de la escuela, juntas. Son pocas, y no son un manual: los intervalos del fabricante valen mientras nadie los acorte.
wall-worth = Lo que valen los puntos
wall-looking = Cómo mira cada cual

## What the server refuses

wall-fault-code-gone = Este código no se confirmó a tiempo.
wall-fault-code-gone-hint = Pide un código nuevo.
wall-fault-no-device = Una frase de paso te deja mirar, y nada más.
wall-fault-no-device-hint = Entra con tu propio dispositivo: lo que preparas aquí, lo firmas allí.
wall-fault-looking-instructors = Aquí, cómo mira cada cual solo lo ve un instructor.
wall-fault-looking-instructors-hint = Cada uno ve en su propio dispositivo cómo mira; para verlos a todos, entra aquí un instructor.
wall-fault-not-a-member = Hoy este dispositivo no es miembro.
wall-fault-not-a-member-hint = Pide a la escuela que admita este dispositivo.
wall-fault-not-instructor = Aquí solo prepara algo un instructor.
wall-fault-not-instructor-hint = Pídeselo a un instructor, o sigue mirando.
wall-fault-not-yours = Esto lo preparó otra persona.
wall-fault-not-yours-hint = Solo quien preparó algo lo retira.
wall-fault-other-page = Esto no lo pidió la propia página del panel.
wall-fault-other-page-hint = Abre el panel en la propia dirección del servidor y prueba allí otra vez.
wall-fault-passphrase-off = Este panel no tiene frase de paso.
wall-fault-passphrase-off-hint = Entra con tu dispositivo.
wall-fault-passphrase-too-often = Demasiadas frases de paso equivocadas. Espera { $minutes ->
    [one] un minuto
   *[other] { $minutes } minutos
  }.
wall-fault-passphrase-too-often-hint = O entra con tu dispositivo: eso sigue funcionando.
wall-fault-passphrase-wrong = Esta no es la frase de paso.
wall-fault-passphrase-wrong-hint = Prueba otra vez, o entra con tu dispositivo.
wall-fault-signed-out = En esta página no ha entrado nadie.
wall-fault-signed-out-hint = Entra con tu dispositivo.
