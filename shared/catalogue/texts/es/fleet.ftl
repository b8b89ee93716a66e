# Spanish. What a fleet's looks tell; sections as in ../en/fleet.ftl.

## How long components last: what it rests on

life-rests-on = Esto se apoya en { $machines ->
    [one] un paramotor
   *[other] { $machines } paramotores
  } y { $lives ->
    [one] una vida
   *[other] { $lives } vidas
  }: { $failed ->
    [0] ninguno se encontró inutilizable
    [one] uno se encontró inutilizable
   *[other] { $failed } se encontraron inutilizables
  }{ $whole ->
    [0] .
    [one] , uno estaba en orden cuando se vio por última vez.
   *[other] , { $whole } estaban en orden cuando se vieron por última vez.
  }
life-rests-on-nothing = Esto todavía no se apoya en nada: { $machines ->
    [0] ningún paramotor de aquí tiene uno que se haya mirado
    [one] se miró un paramotor, y no ha funcionado desde entonces
   *[other] se miraron { $machines } paramotores, y no han funcionado desde entonces
  }.

## Too little to say

life-too-few = Todavía no se puede decir nada: { $has ->
    [0] no se ha visto nada
    [one] uno se encontró inutilizable
   *[other] { $has } se encontraron inutilizables
  }, y hacen falta { $needs }: { $more ->
    [one] uno más.
   *[other] { $more } más.
  }
life-nothing-failed = Todavía no se puede decir nada: { $has ->
    [one] el único que se vio no se ha encontrado inutilizable
   *[other] de los { $has } que se vieron, ninguno se ha encontrado inutilizable
  } hasta ahora. Cuánto duran solo se ve cuando algunos fallan.
life-any-spread = Todavía no se puede decir nada: estos hallazgos valdrían para vidas casi todas iguales y para vidas que difieren sin fin. Hacen falta fallos encontrados a otras edades, y miradas más seguidas.

## How often to look

life-shortens = Míralo al menos cada { $every } h: así, la probabilidad de que uno falle sin que nadie lo vea entre dos miradas queda por debajo del { $percent } %, incluso con { $age } h. Es menos que las { $in_force } h en vigor.
life-in-force-holds = Con las { $in_force } h en vigor, la probabilidad de que uno falle sin que nadie lo vea entre dos miradas queda por debajo del { $percent } %, incluso con { $age } h.
life-suggests = Mirando cada { $every } h, la probabilidad de que uno falle sin que nadie lo vea entre dos miradas quedaría por debajo del { $percent } %, incluso con { $age } h.
life-every-flight = Míralo antes de cada vuelo: con { $age } h, ni siquiera un intervalo de una hora deja por debajo del { $percent } % la probabilidad de que uno falle sin que nadie lo vea. Piensa en cambiarlo antes de que llegue a esa edad.
life-at-half = Con { $age } h serían { $every } h.
life-never-longer = Lo que está en vigor queda: nada de lo de aquí lo alarga nunca.
life-stays = Las { $in_force } h en vigor quedan como están.
life-nothing-in-force = Aquí no hay ningún intervalo en vigor para esto, así que solo puede ser una sugerencia. Lo que está en vigor lo publica tu escuela, y lo dice el manual del fabricante.
life-none-in-force = Aquí no hay ningún intervalo en vigor para esto: el manual del fabricante dice cada cuánto hay que mirarlo.
life-publish = Entra en vigor cuando lo publica un instructor.
life-chance-ours = El { $percent } % lo hemos elegido nosotros: ninguna escuela ha fijado la probabilidad que acepta.

## How they last

life-lasts = Con { $hours } h, unos { $percent } de cada 100 siguen utilizables; estos hallazgos admiten de { $low } a { $high }.
life-wears = Cuanto más viejos, más fallan: se desgastan.
life-early = Cuanto más viejos, menos fallan: eso habla de montaje o de material, no de desgaste. Mirar más a menudo los viejos encuentra poco.
life-any-age = Si fallan más con la edad, estos hallazgos no lo muestran.
life-few = Se apoya en solo { $failed } fallos. Uno más puede cambiarlo mucho.

## What to bear in mind

life-put-right = Lo arreglado cuenta como nuevo, se reparara o se cambiara.
life-unregistered = Uno que nadie dio de alta cuenta como tan viejo como su paramotor.
life-came-old = { $n ->
    [one] Uno se vio
   *[other] { $n } se vieron
  } aquí por primera vez con más de 10 h, y hasta entonces se supone que { $n ->
    [one] estaba
   *[other] estaban
  } en orden. Faltan los que, siendo iguales, fallaron antes de que nadie mirara aquí: los fallos tempranos pueden ser más frecuentes de lo que esto muestra.
life-never-ran = { $n ->
    [one] Uno se encontró inutilizable
   *[other] { $n } se encontraron inutilizables
  } antes de haber funcionado. Eso no es desgaste, y no se cuenta.
life-of-no-age = { $n ->
    [one] Una mirada
   *[other] { $n } miradas
  } a un componente cuya edad nadie conoce { $n ->
    [one] queda
   *[other] quedan
  } fuera: el anterior se desmontó, y el que lo sustituyó nunca se dio de alta.
life-invented = Todo esto es de la demostración: paramotores inventados, hallazgos inventados.
life-caution = Esto trata de los componentes de esta flota, tal como se volaron y se miraron aquí. El manual del fabricante va primero; donde pide más, vale eso.

## How the intervals were made

life-interval-turnbull = Escalones: curva de Turnbull, sin suponer ninguna forma de la vida. Su intervalo del 95 % sale de volver a sortear los mismos hallazgos { $times } veces, y en ningún sitio es más estrecho de lo que tan pocos permiten.
life-interval-weibull = Línea: curva de Weibull. Su intervalo del 95 % es el de su verosimilitud perfil.

## Faults

fault-life-no-looks = Aquí todavía no hay ninguna mirada a un componente.
    .hint = Recorre un paramotor y firma, o incorpora registros; después pregunta otra vez.
fault-life-no-such = No hay ningún componente «{ $what }» entre los que se miraron.
    .hint = Estos son: { $known }.
fault-life-chance = La probabilidad que se acepta tiene que ser más que 0 y menos que 1.
    .hint = Da 0.02 para una de cada cincuenta.
fault-life-in-force = El intervalo en vigor tiene que ser de más de 0 horas.
    .hint = Da horas, por ejemplo 25, o déjalo fuera.
fault-life-out-of-reach = Las horas de estos registros están demasiado alejadas entre sí para calcular con ellas.
    .hint = Busca un error en las horas de motor de un paramotor, y corrígelo allí.

## How people look

looking-hurried-point = { $point } ({ $times ->
    [one] una vez
   *[other] { $times } veces
  })
looking-hurries = Mira con prisa más puntos que los demás: { $own } % frente a { $others } % en los mismos puntos, en { $looks } miradas.
looking-hurries-where = Recorred juntos esos puntos una vez, despacio.
looking-quick = Va más rápido que los demás: cerca de { $own } s por punto frente a { $others } s en los mismos puntos, en { $looks } miradas. Observa un recorrido: puede ser práctica, o puede ser que se responda a la pantalla y no al paramotor.
looking-finds-less = Encuentra menos que los demás: { $own } en 100 miradas frente a { $others } en los mismos puntos, en { $looks } miradas. Puede que los paramotores estén mejor; recorred uno juntos y comparad lo que ve cada uno.
looking-finds-more = Encuentra más que los demás: { $own } en 100 miradas frente a { $others } en los mismos puntos, en { $looks } miradas. Puede que los paramotores estén peor, o que este sea un ojo del que otros pueden aprender.
looking-caution = Esto muestra dónde puede venir bien una ayuda. No es una clasificación: rápido no es descuidado, y lento no es minucioso. A cada cual se le compara con los demás en los mismos puntos; los que pocos más miran quedan fuera. Lo encontrado cuenta una sola vez mientras sigue abierto. Solo se dice algo a partir de 100 miradas, y solo cuando el puro azar lo daría menos de una vez de cada cien. Los paramotores son distintos: quien vuela uno gastado encuentra más.
looking-invented = Las personas y los paramotores de aquí son los de la demostración, inventados.

## What points are worth

worth-few = Mirado { $looks ->
    [one] una vez
   *[other] { $looks } veces
  }: demasiado pocas para decir algo; hacen falta 30.
worth-never = Nunca se encontró mal en { $looks } miradas: como mucho { $percent } de cada 100 miradas encontrarían algo (regla de tres, 95 %).
worth-never-must = Se queda: las listas están precisamente para lo raro y grave.
worth-never-may = Eso no es motivo para quitarlo. Pregúntate si sus palabras muestran qué hay que buscar.
worth-often = Se encontró mal en { $percent } de cada 100 miradas, en { $machines } paramotores. Busca la causa, y ponlo pronto en el recorrido.
worth-plain = Se encontró mal { $found ->
    [one] una vez
   *[other] { $found } veces
  } en { $looks } miradas: entre { $low } y { $high } de cada 100, con un 95 %.
worth-caution = Lo que se encontró en cada punto de las listas, en todos los paramotores de aquí. Lo encontrado cuenta una sola vez mientras sigue abierto. Dice lo que se encontró, no lo que había; y nada de lo grave que habría sido. Los intervalos suponen que las miradas son independientes entre sí, y las de un mismo paramotor no lo son del todo: más bien salen demasiado estrechos.
