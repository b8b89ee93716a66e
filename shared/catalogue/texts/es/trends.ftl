# Spanish. What the readings of a machine's measures tell; sections as in ../en/trends.ftl.

## Readings

trend-unit-eighths = octavos de vuelta
trend-eighths = { $n ->
    [one] un octavo de vuelta
   *[other] { $n } octavos de vuelta
  }
trend-point = { $value }, { $day }
trend-point-standard = { $value } en un día estándar, { $raw } en el indicador, { $day }

## Too little to say

trend-few = Todavía no se puede decir nada: { $n ->
    [0] no hay ninguna lectura
    [one] hay una lectura
   *[other] hay { $n } lecturas
  }, y una tendencia necesita { $needs }: { $more ->
    [one] una más.
   *[other] { $more } más.
  }
trend-one-moment = Todavía no se puede decir nada: las { $n } lecturas se tomaron con las mismas horas de motor. Hacen falta lecturas con otras horas.
trend-all-same = Todavía no se puede decir nada: las { $n } lecturas son iguales, { $value }. Puede ser estable, pero un sensor en su tope también se ve así: otro instrumento dirá cuál de las dos cosas es.
trend-same-grade = Todavía no se puede decir nada: las { $n } miradas encontraron lo mismo, «{ $value }». Hace falta una mirada que encuentre otra cosa.
trend-no-interval = Todavía no se puede decir nada: tantas de las { $n } lecturas comparten sus horas o su valor que nada seguro sale de ellas. Hacen falta lecturas con otras horas.
trend-beyond = Todavía no se puede decir nada: algunos de estos números son demasiado grandes o demasiado pequeños para calcular con ellos. Busca un error en las unidades.

## Which way, how steep, how sure

trend-goes = { $way ->
    [rising] Sube
   *[falling] Baja
  }{ $heads ->
    [toward] {" "}hacia su límite
    [away] {" "}y se aleja de su límite
   *[nowhere] {""}
  }: cerca de { $per } cada 100 horas de motor (entre { $low } y { $high }).
trend-goes-slightly = { $way ->
    [rising] Sube
   *[falling] Baja
  }{ $heads ->
    [toward] {" "}hacia su límite
    [away] {" "}y se aleja de su límite
   *[nowhere] {""}
  }, pero en 100 horas de motor menos de lo que pueden mostrar sus lecturas.
trend-grade-goes = { $way ->
    [rising] Empeora
   *[falling] Mejora
  } de mirada en mirada. La última encontró «{ $latest }».
trend-rests = Esto se apoya en { $n } lecturas, de las { $from } a las { $to } horas de motor. El puro azar da una tendencia así menos de una de cada { $one_in } veces.
trend-neither = Sin tendencia en { $n } lecturas: el puro azar las mueve otro tanto. En estas { $span } horas de motor, el cambio puede ser cualquiera entre { $low } y { $high }.
trend-neither-flat = Sin tendencia en { $n } lecturas: el puro azar las mueve otro tanto.
trend-grade-neither = Sin tendencia en { $n } miradas: el puro azar da igualmente una serie así, mejor unas veces y peor otras.

## The limit

trend-reaches = A ese ritmo alcanza el límite, { $limit }, como muy pronto a las { $low } horas de motor{ $left ->
    [0] : es decir, ya
   *[other] : dentro de { $left } h
  }. Actúa según eso. La línea media llega a las { $at }; la más plana que puede ser, a las { $high }. El desgaste suele llegar antes de lo que dice una línea recta.
trend-reaches-or-never = A ese ritmo alcanza el límite, { $limit }, como muy pronto a las { $low } horas de motor{ $left ->
    [0] : es decir, ya
   *[other] : dentro de { $left } h
  }. Actúa según eso. La línea media llega a las { $at }; la más plana que puede ser, nunca. El desgaste suele llegar antes de lo que dice una línea recta.
trend-there = La línea ha alcanzado el límite, { $limit }: actúa ya.
trend-past = La última lectura, { $value }, está { $of ->
    [limit] más allá del límite
   *[band] fuera del margen
  }, { $bound }.
trend-past-before = { $n ->
    [one] Una lectura anterior estaba
   *[other] { $n } lecturas anteriores estaban
  } { $of ->
    [limit] más allá del límite
   *[band] fuera del margen
  }, { $bound }; la última así, { $value }, a las { $hours } horas de motor.
trend-standard-day = Todos los valores son como habrían sido en un día de { $day }, para que se puedan comparar las estaciones. El límite se refiere a lo que marca el indicador: compara con él el indicador, no esta línea.
trend-band-unconfirmed = El margen, { $band }, está sin confirmar: cuenta el valor de tu manual.
trend-limit-missing = No hay ningún límite con el que compararlo. Introduce el valor y la página de tu manual en la pantalla del paramotor.

## A step

trend-step = Parece más un escalón que una pendiente: cerca de { $old } hasta las { $after } horas de motor, cerca de { $new } desde las { $at }.
trend-step-done = Lo que se hizo entremedias: { $done }.
trend-step-foretells = Después de un escalón, la línea predice poco: atiende a las próximas lecturas.

## What else to know of the readings

trend-far-off = { $n ->
    [one] Una lectura queda lejos de la línea. Se muestra y cuenta: mira qué fue distinto ese día.
   *[other] { $n } lecturas quedan lejos de la línea. Se muestran y cuentan: mira qué fue distinto esos días.
  }
trend-weather-standard = Todos los valores son como habrían sido en un día de { $day }, para que se puedan comparar las estaciones.
trend-weather-partly = Algunos archivos de datos no dicen qué temperatura hacía fuera. Para que todas se puedan comparar, se dibujan todas como las mostró el indicador, no como en un día de { $day }.
trend-weather-unknown = Dibujado como lo mostró el indicador: ningún archivo de datos dice qué temperatura hacía fuera. Un día de calor, por sí solo, da una lectura más alta.
trend-left-out = { $n ->
    [one] Una lectura se deja
   *[other] { $n } lecturas se dejan
  } fuera: en una unidad de otra clase, o sin horas de motor.

## Plots as files

plot-hours = horas de motor
plot-about = { $machine }, { $n ->
    [one] una lectura a las { $from } horas de motor
   *[other] { $n } lecturas, de las { $from } a las { $to } horas de motor
  }
plot-reading = lectura
plot-far-off = lectura lejos de la línea
plot-line = tendencia
plot-interval = lo que puede ser (95 %)
plot-level = valor medio antes y después de un escalón
plot-band = margen
plot-limit = límite
plot-limit-at = límite { $value }
plot-earliest = límite alcanzado como muy pronto
plot-work = trabajo hecho
plot-done = { $n }: { $words }, { $hours } h
plot-done-earlier = { $n ->
    [one] Una marca anterior queda sin nombrar.
   *[other] { $n } marcas anteriores quedan sin nombrar.
  }
plot-band-source = { $band }. { $source }
plot-life-hours = horas en servicio
plot-life-share = todavía utilizables
plot-life-steps = solo según los hallazgos
plot-life-fitted = Weibull
plot-life-interval = lo que puede ser (95 %)
plot-life-failed = encontrado inutilizable; la línea llega hasta donde se vio entero por última vez
plot-life-whole = visto entero por última vez

fault-plot-ending = Un gráfico puede ser SVG o PNG, y «{ $file }» no es ni lo uno ni lo otro.
    .hint = Da un nombre de archivo que termine en .svg o .png.
fault-plot-nothing = No hay ninguna lectura que dibujar.
    .hint = Toma primero lecturas: en un recorrido, después de un trabajo, o de los datos de un motor.
