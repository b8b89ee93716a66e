# Spanish. Schools: members, roles, the server, the board.

role-none = sin rol todavía
term-stands = desde el { $from }{ $open ->
    [no] {", hasta el "}{ $until }
   *[yes] {""}
  }
term-ended = terminada (empezó el { $from })
published-by = { $person }, { $day }

sync-none = Esta escuela no tiene servidor en este dispositivo. Los registros van por archivo o código.
    .hint = Pide a la escuela la dirección de su servidor, o sigue sin él.
sync-never = Todavía no se ha enviado ni recibido nada.
    .hint = Sincroniza ahora, o en la próxima conexión.
sync-done = Al día con el servidor, { $at }.
sync-waits = La escuela no ha admitido todavía este dispositivo ({ $at }).
    .hint = Lee tu código en voz alta a la raíz de la escuela.
sync-failed = { $at }: { $words }
    .hint = No se ha perdido nada: todo espera aquí y sale en el próximo intento.

net-plain = la conexión no iría cifrada
net-silent = no llegó nada en { $seconds } segundos
net-too-large = llegaron más de { $most } MB, que ningún servidor de escuela envía
net-unreachable = { $why }

lie-shrunk = El servidor ha quitado registros por los que había firmado.
    .hint = Dilo a la escuela. Tus registros están a salvo en este dispositivo; no se intercambia nada con este servidor.
lie-rewritten = El servidor muestra ahora otro historial, igual de largo que aquel por el que había firmado.
    .hint = Dilo a la escuela. Tus registros están a salvo en este dispositivo; no se intercambia nada con este servidor.
lie-inconsistent = Lo que el servidor muestra ahora no continúa aquello por lo que había firmado.
    .hint = Dilo a la escuela. Tus registros están a salvo en este dispositivo; no se intercambia nada con este servidor.
lie-other-records = El servidor entrega otros registros que aquellos por los que ha firmado.
    .hint = Dilo a la escuela. Tus registros están a salvo en este dispositivo; no se intercambia nada con este servidor.
lie-swallowed = El servidor dijo que había aceptado un registro, y lo dejó fuera.
    .hint = Dilo a la escuela. Tus registros están a salvo en este dispositivo; no se intercambia nada con este servidor.
lie-other-key = La palabra del servidor no está firmada con la clave que tenía cuando entraste.
    .hint = Pregunta a la escuela si su servidor se instaló de nuevo, antes de volver a seguirlo.
lie-two-faced = El servidor os dice a los dos cosas distintas.
    .hint = Dilo a la escuela. Tus registros están a salvo en este dispositivo; no se intercambia nada con este servidor.

receipts-good = Los { $records } registros de los que este dispositivo tiene recibo son aquellos por los que firmó el servidor.
receipts-bad = Los recibos no encajan con aquello por lo que firmó el servidor.
compare-good = El servidor os ha dicho a los dos lo mismo, para { $records } registros.

desk-sign-in = Alguien entra en el panel de la escuela como si fueras tú. Acéptalo solo si eres tú, ahora, ante una pantalla de la escuela.
desk-draft = Alguien preparó algo en el panel para que lo firmes.

publish-adds = { $file } es nuevo.
publish-replaces = { $file } sustituye al que hay.
warning-published = Lo que publicó tu escuela no lo puede usar esta versión: { $why }

board-looked = { $list }: { $person }, { $at }
board-never = Nadie lo ha mirado.

imported = { $taken ->
    [0] Nada nuevo
    [one] Un registro nuevo
   *[other] { $taken } registros nuevos
  }{ $refused ->
    [0] .
    [one] {", "}una línea no aceptada.
   *[other] {", "}{ $refused } líneas no aceptadas.
  }
imported-line = Línea { $line }: { $why }
refusal-unreadable = No es un registro.
refusal-bad-signature = La firma no encaja: el registro se alteró, o lo firmó otra persona.
refusal-unknown-key = Nada dice de quién es la clave que lo firmó.
refusal-malformed = Dice algo que un registro así no puede decir.

told-machine-enrolled = Cambio de escuela

fault-no-school = Este dispositivo no pertenece a ninguna escuela.
    .hint = Funda una, o entra en una con un código o una dirección.
fault-no-server = Esta escuela no tiene servidor en este dispositivo.
    .hint = Introduce la dirección del servidor, o intercambia por archivo o código.
fault-school-name = Una escuela necesita un nombre de hasta 80 letras.
    .hint = Di cómo la llaman.
fault-school-already = Este dispositivo pertenece a otra escuela.
    .hint = Sal primero de esa.
fault-letter-signature = Este código se alteró: una firma que contiene no es válida.
    .hint = Muéstralo y léelo otra vez, directamente de la otra pantalla.
fault-letter-of-other = Este código no es para este dispositivo.
    .hint = Muestra primero tu propio código, y lee la respuesta a él.
fault-server-answer = Lo que responde allí no es el servidor de una escuela.
    .hint = Comprueba la dirección, con https:// al principio.
fault-root-stays = La raíz no puede salir ni terminar.
    .hint = Traspasa primero la raíz al dispositivo de otro miembro.
fault-not-your-device = Este dispositivo no decide sobre aquel.
    .hint = Una clave la anula la raíz de la escuela, u otro dispositivo de la misma persona.
fault-not-your-machine = Solo su dueño pone un paramotor en una escuela, o lo saca.
    .hint = Pregunta a la persona que lo dio de alta.
fault-role-missing = No se eligió ningún rol.
    .hint = Elige qué será la persona: observador, piloto, mecánico o instructor.
fault-until-passed = Ese último día ya ha pasado.
    .hint = Introduce un día que esté por delante, o déjalo abierto.
fault-no-such-member = No existe ese miembro.
    .hint = Mira la lista de miembros.
fault-not-root = Solo la raíz de la escuela puede hacer eso.
    .hint = Usa el dispositivo de la raíz, o pregunta a quien la tiene.
fault-end-reason = No hay motivo.
    .hint = Di en pocas palabras por qué termina.
fault-server-address = «{ $address }» no es la dirección de un servidor.
    .hint = Introdúcela como la escribe la escuela: school.example, o con puerto, school.example:8443. Detrás no va nada.
fault-server-plain = Lo que va a { $address } no iría cifrado.
    .hint = Pide a la escuela su dirección con https://. Si no la tiene y la red está cerrada a otros, arranca el programa con WITNESSMARK_PLAIN_HTTP=1.
fault-draft-not-shown = Lo que se preparó no se ha mostrado aquí todavía.
    .hint = Abre otra vez su código, léelo, y después firma.
fault-server-unreachable = No se puede llegar al servidor: { $why }
    .hint = Todo espera aquí y sale en el próximo intento. La app no necesita conexión.
fault-server-busy = El servidor está ocupado (estado { $status }).
    .hint = Prueba otra vez dentro de un minuto; no se ha perdido nada.
fault-server-refused = El servidor se niega: { $words }
    .hint = { $hint }
fault-server-lies = { $words }
    .hint = Dilo a la escuela. Tus registros están a salvo en este dispositivo; no se intercambia nada con este servidor.
fault-server-distrusted = Se descubrió que este servidor se contradice: no se intercambia nada con él.
    .hint = Habla con la escuela; después sigue a su servidor de nuevo.
fault-nothing-followed = Todavía no se ha seguido al servidor.
    .hint = Sincroniza una vez primero.
fault-compare-later = El otro dispositivo ha visto más del historial que este.
    .hint = Sincroniza primero este, o muestra tu código al otro.
fault-checkpoint-other = Esta es la palabra de otro servidor.
    .hint = Compara con un miembro de la misma escuela.
fault-desk-of-other = Este código es del panel de otra escuela, o de otra dirección.
    .hint = Entra solo en el panel de tu propia escuela.
fault-draft-odd = Lo que se preparó allí no es algo que se pueda firmar así.
    .hint = Haz que se prepare de nuevo en el panel.
fault-publish-role = Solo un instructor de la escuela publica listas.
    .hint = Pregunta a un instructor.
fault-publish-title = Una publicación necesita un título de hasta 80 letras, y al menos un archivo.
    .hint = Dale un título y elige sus archivos.
fault-publish-large = Es demasiado de una vez (como mucho { $most } kB).
    .hint = Publícalo por partes.
fault-publish-faults = { $where }: { $why }
    .hint = Corrige el archivo y prueba otra vez.
