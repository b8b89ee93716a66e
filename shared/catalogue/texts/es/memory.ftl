# Spanish. Engine logs, flights prepared, and the measures whose trends are followed.

kind-flight-planned = Vuelo preparado
kind-readings-taken = Datos de motor incorporados
told-flight-planned = Carga, combustible y aire calculados
told-readings-taken = Datos de motor incorporados: { $words }
says-flight-planned = Carga, combustible, aire y viento tal como estaban a las { $time }.
says-readings-taken = { $figures ->
    [one] Una cifra
   *[other] { $figures } cifras
  } del archivo de datos «{ $name }».

measure-peak-cht = Temperatura de culata más alta
    .what = La temperatura de culata más alta de cada archivo de datos, como habría sido en un día de 15 °C si los datos dicen qué temperatura hacía. Una línea que sube habla de mezcla más pobre, de una entrada de aire, o de aire de refrigeración que se pierde.
measure-peak-egt = Temperatura de gases de escape más alta
    .what = La temperatura de gases de escape más alta de cada archivo de datos. Una línea que sube habla de mezcla más pobre.
measure-log-peak-speed = Régimen más alto en los datos
    .what = El régimen de motor más alto de cada archivo de datos. Baja cuando se pierde potencia, y sube cuando la hélice deja de morder.
measure-log-idle-speed = Régimen de ralentí en los datos
    .what = El régimen de ralentí de cada archivo de datos. Un ralentí que sube habla de aire que entra detrás del carburador.
measure-full-throttle-speed = Régimen a fondo, en tierra
    .what = Leído en la prueba de motor. Baja cuando se pierde potencia: compresión, escape, mezcla.
measure-full-power-speed = Régimen a plena potencia, en tierra
    .what = Leído en la prueba de motor. Baja con una batería que envejece, o un motor que gira duro.
measure-idle-speed = Régimen de ralentí
    .what = Leído en la prueba de motor. Un ralentí que sube habla de aire que entra detrás del carburador.
measure-compression = Compresión
    .what = Medida después de trabajar en el cilindro. Baja con los segmentos, la camisa y la junta de culata.
measure-propeller-tracking = Alineación de las puntas de pala
    .what = Cuánto se separan las puntas. Crece con un buje, un rodamiento o una pala que cede.
measure-plug-gap = Separación de electrodos
    .what = Crece según se queman los electrodos.
measure-pack-voltage = Tensión de la batería de vuelo
    .what = Leída con la carga completa. Baja según envejecen las celdas.
measure-exhaust-spring-tension = Tensión de los muelles del escape
    .what = Baja según el calor cansa los muelles.
measure-fuel-burn = Combustible gastado por hora
    .what = Como se anotó después de los vuelos. Crece con una mezcla más rica o una fuga, y baja con una más pobre.
measure-head-nuts-movement = Tuercas de culata: giro antes del clic
    .what = El mayor giro de una tuerca antes del clic de la llave, en octavos de vuelta. Un giro que crece es una junta que se asienta, o un espárrago que se estira.
measure-base-nuts-movement = Tuercas de la base: giro antes del clic
    .what = El mayor giro de una tuerca antes del clic de la llave, en octavos de vuelta. Un giro que crece es una junta que se asienta, o un espárrago que se estira.
measure-cylinder-base = Base del cilindro: lo seca que está
    .what = Lo que se vio en la base del cilindro, mirada a mirada. El aceite que sale poco a poco delata aire que entra poco a poco.
measure-plug-colour = Color de la bujía
    .what = El aspecto que tenía la bujía, mirada a mirada. Dice cómo quema el motor.
