# Spanish. Load, fuel, air and wind before a flight; sections as in ../en/flight.ftl.

band-mix-ratio = Partes de gasolina por una de aceite

## All-up weight

reason-load = Peso total en vuelo al despegar: { $total }. Está { $below } por debajo del máximo que esta vela puede llevar con motor ({ $most }).
reason-load-over = Peso total en vuelo al despegar: { $total }. Está { $over } por encima del máximo que esta vela puede llevar con motor ({ $most }).
clears-load-over = Deja lastre o combustible en tierra, o vuela una vela que pueda llevarlo. Después calcula de nuevo.
reason-load-under = Con el depósito vacío { $dry }: { $under } por debajo del mínimo que esta vela tiene que llevar con motor ({ $least }).
clears-load-under = Lleva lastre, o vuela una vela más pequeña. Después calcula de nuevo.
reason-load-unconfirmed = Nadie ha confirmado con el manual de la vela que pueda llevar de { $low } a { $high } con motor.
clears-load-unconfirmed = Introduce el rango de peso de la vela, con su manual y página, donde se describe el paramotor.
fact-load-dry = Con el depósito vacío { $dry }: { $above } por encima del mínimo que tiene que llevar ({ $least }).
fact-load-source = Lo que puede llevar la vela: { $document }, { $page }.
fact-load-free = Son { $over } por encima del máximo que puede llevar sin motor ({ $most }): aquí cuenta el rango con motor.
fact-load-fuel = { $fuel } de combustible cuentan como { $mass }: { $density } kg por litro, lo más que llega a pesar la gasolina.
fact-load-described-anew = El rango de peso de la vela se describió de nuevo después: cuenta el nuevo.

## Petrol and oil

reason-mix = El depósito lleva { $ratio }:1; se quiere { $wanted }:1.
reason-mix-add = Todavía hay que echar { $oil } de aceite en el depósito, para { $wanted }:1.
clears-mix-add = Échalo, agita el depósito, y di que está dentro.
reason-mix-lean = { $ratio ->
    [none] No hay aceite en la gasolina, y se quiere { $wanted }:1: faltan { $oil }.
   *[other] Demasiado poco aceite: el depósito lleva { $ratio }:1, y se quiere { $wanted }:1. Faltan { $oil }.
  }
clears-mix-lean = Echa el aceite que falta antes de que funcione el motor, agita el depósito, y di cuánto has echado en total.
reason-mix-rich = Demasiado aceite: el depósito lleva { $ratio }:1, y se quiere { $wanted }:1. Con { $petrol } de gasolina sin aceite quedaría bien.
clears-mix-rich = Añade esa gasolina, o volarás con una bujía que puede engrasarse y un motor que va más pobre de lo que está reglado.
reason-mix-unconfirmed = Ningún manual confirma { $wanted }:1 para este motor.
clears-mix-unconfirmed = Introduce la proporción con la página de tu manual, entre los límites del paramotor.
reason-mix-manual-lean = { $wanted }:1 es menos aceite del que pide el manual del motor ({ $manual }:1).
reason-mix-manual-rich = { $wanted }:1 es más aceite del que pide el manual del motor ({ $manual }:1).
clears-mix-manual = Mezcla como dice el manual; o, si tu manual dice otra cosa, introdúcelo con su página.
fact-mix-source = La proporción: { $document }, { $page }.

## Fuel

reason-fuel = El combustible dura { $low } como mínimo sin tocar la reserva de combustible, y se van a volar { $time }.
reason-fuel-perhaps = El combustible dura de { $low } a { $high } sin tocar la reserva de combustible: { $time } solo si el motor gasta poco.
reason-fuel-short = El combustible dura { $high } como máximo sin tocar la reserva de combustible, y se van a volar { $time }.
clears-fuel = Lleva más combustible, o haz un vuelo más corto.
reason-fuel-unknown = Todavía no se puede decir cuánto dura el combustible: { $has ->
    [0] ningún vuelo tiene anotado
    [one] un vuelo tiene anotado
   *[other] { $has } vuelos tienen anotado
  } su combustible, y hacen falta { $needs }.
clears-fuel-unknown = Anota el combustible que gasta cada vuelo. Hasta entonces mira el depósito en vuelo, y aterriza con combustible de sobra.
fact-fuel-burn = { $flights } vuelos gastaron de { $low } a { $high }: lo que menos y lo que más, pues son demasiado pocos para saber cuánto varía.
fact-fuel-burn-predicted = Según { $flights } vuelos, el próximo gastará de { $low } a { $high }, nueve de cada diez veces.
fact-fuel-reserve = Queda al aterrizar: { $reserve }.

burns-few = Todavía no se puede decir cuánto gasta este motor: { $has ->
    [0] ningún vuelo tiene anotado su combustible
    [one] un vuelo tiene anotado su combustible
   *[other] { $has } vuelos tienen anotado su combustible
  }, y hacen falta { $needs }.

## The air

reason-air = El aire es tan poco denso como a { $altitude } en un día estándar: { $thrust ->
    [0] no se pierde empuje por ello.
   *[other] la hélice tira un { $thrust } % menos que a nivel del mar, y la carrera de despegue es un { $run } % más larga.
  }
reason-air-thin = Aire poco denso, como a { $altitude } en un día estándar: la hélice tira un { $thrust } % menos que a nivel del mar, la carrera de despegue es un { $run } % más larga, y la subida es más plana.
clears-air = Espera a que refresque, ve más ligero, o busca un campo más largo y sin obstáculos al final.
fact-air = Altitud de presión { $altitude }; sin viento, se despega con un { $speed } % más de velocidad sobre el suelo.
fact-air-dry = El aire se tomó como seco: sin punto de rocío es el caso más favorable, y el aire húmedo es menos denso.
fact-air-rule = Empuje en proporción a la densidad, carrera de despegue un 12 % más larga por cada 1000 ft: práctica común, sin fuente.

## The wind

reason-wind = Viento { $mean }{ $gust ->
    [none] {""}
   *[other] , rachas { $gust }
  }: dentro de los límites fijados.
reason-wind-mean = Viento { $mean }: por encima { $whose ->
    [school] del límite de la escuela
   *[own] de tu propio límite
  }, { $limit }.
reason-wind-gust = Rachas { $gust }: por encima { $whose ->
    [school] del límite de la escuela
   *[own] de tu propio límite
  }, { $limit }.
reason-wind-gust-factor = Viento { $mean }, rachas { $gust }: { $factor ->
    [none] rachas que salen de la calma, por encima
   *[other] { $factor } veces el viento medio, por encima
  } { $whose ->
    [school] del límite de la escuela
   *[own] de tu propio límite
  }, { $limit }.
clears-wind = No despegues con este viento. Mide otra vez cuando haya amainado.
reason-wind-gust-unknown = Viento { $mean }: nadie midió las rachas, y { $whose ->
    [school] los límites de la escuela
   *[own] tus propios límites
  } las necesitan.
clears-wind-gust-unknown = Observa el viento diez minutos, e introduce la racha más fuerte.
reason-wind-no-limit = Viento { $mean }{ $gust ->
    [none] {""}
   *[other] , rachas { $gust }
  }: nadie ha fijado un límite con el que compararlo.
clears-wind-no-limit = Fija uno, antes de que se levante el viento: un viento medio, una racha, o cuántas veces el viento medio pueden ser las rachas.
fact-wind-limits = { $whose ->
    [school] Los límites de la escuela
   *[own] Tus propios límites
  }: viento medio, { $mean ->
    [none] sin fijar
   *[other] { $mean }
  }; rachas, { $gust ->
    [none] sin fijar
   *[other] { $gust }
  }; racha entre viento medio, { $factor ->
    [none] sin fijar
   *[other] { $factor }
  }.

## Held together

clears-flight-well = No hay nada que hacer. Calcula de nuevo cuando cambie una cifra.
reason-flight-impossible = Con estas cifras no se puede calcular { $part ->
    [load] el peso total en vuelo
    [mix] la mezcla de gasolina y aceite
    [fuel] cuánto dura el combustible
    [air] lo que hace el aire
   *[wind] el viento
  }.
clears-flight-impossible = Introduce las cifras otra vez.
reason-measured-earlier = { $what ->
    [both] El aire y el viento se midieron
    [air] El aire se midió
   *[wind] El viento se midió
  } a las { $time }: mira otra vez.
clears-measured-earlier = Mide otra vez, e introduce lo que lees.
reason-flight-not-prepared = Sin calcular hoy: { $what ->
    [both] el peso total en vuelo y el viento
    [load] el peso total en vuelo
   *[wind] el viento frente a los límites de la escuela
  }.
clears-flight-not-prepared = Prepara el vuelo: carga, combustible, aire y viento.

## Components that a school wants inspected

reason-inspect-over = { $part }: sin mirar desde hace { $hours } h, y la escuela quiere que se mire cada { $every } h.
reason-inspect-never = { $part }: sin mirar nunca en { $hours } h, y la escuela quiere que se mire cada { $every } h.
clears-inspect-over = Míralo en una lista que lo tenga, y firma.

## What can't be

flight-fault-unit = Una cifra en { $from } no se puede pasar a { $to }: elige la unidad correcta.
flight-fault-number = Falta una cifra, o no es un número.
flight-fault-too-cold = Nada está más frío que el cero absoluto: mira la unidad.
flight-fault-impossible = { $what }: tiene que ser { $must ->
    [not-negative] 0 o más
    [at-least-one] 1 o más
   *[positive] más que cero
  }.
flight-fault-backwards = { $what }: el mínimo no puede estar por encima del máximo.
flight-fault-outside = { $what }: { $value } no está entre { $low } y { $high }. Busca un error en el número o en la unidad.
flight-fault-above-saturation = El punto de rocío no puede estar por encima de la temperatura del aire.
flight-fault-no-ratio = { $ratio }:1 no es una proporción de gasolina y aceite: de 5 a 200 partes por una.
flight-fault-calm-gust = Las rachas no pueden ser menores que el viento medio.
flight-fault-no-limit = Nadie ha fijado un límite con el que comparar el viento.

input-pilot = El peso del piloto
input-machine = El peso del paramotor
input-ballast = Lastre
input-fuel = Combustible
input-wing-low = El mínimo que tiene que llevar la vela
input-wing-high = El máximo que puede llevar la vela
input-wing = Lo que puede llevar la vela
input-in-tank = Lo que hay en el depósito
input-add-fuel = Gasolina echada
input-tank-or-fuel = Lo que hay en el depósito, o la gasolina echada
input-oil = Aceite echado
input-reserve = La reserva de combustible al aterrizar
input-flight-time = El tiempo que se va a volar
input-burn = Lo que gasta el motor
input-used = Combustible gastado en un vuelo anterior
input-time = El tiempo de un vuelo anterior
input-temperature = La temperatura
input-dew-point = El punto de rocío
input-pressure = La presión del aire
input-elevation = La elevación del campo
input-setting = El reglaje del altímetro
input-altitude = La altitud de presión
input-density = La densidad del aire
input-density-altitude = La altitud de densidad
input-mean = El viento medio
input-gust = Las rachas
input-mean-limit = El límite de viento medio
input-gust-limit = El límite de rachas
input-gust-factor-limit = El límite de racha entre viento medio

## The form, its faults, and the record

ratio-words = { $ratio }:1. { $source }

fault-flight-impossible = Así no se puede guardar. { $why }
    .hint = Introduce las cifras otra vez; una parte que se deja vacía no se calcula.
fault-flight-empty = No se introdujo nada.
    .hint = Introduce al menos una cosa: carga, mezcla, combustible, aire o viento.
fault-weight-odd = { $what }: { $value } no está entre { $low } y { $high }.
    .hint = Busca un error en el número o en la unidad.
fault-wing-range-half = Falta la mitad de lo que puede llevar la vela.
    .hint = Da el mínimo y el máximo con motor: --wing-least "95 kg" --wing-most "140 kg".
fault-plan-file = El plan de { $file } no se puede leer: { $why }
    .hint = «flight prepare MACHINE» sin archivo muestra un plan desde el que empezar.
fault-wing-range-crossed = El mínimo que tiene que llevar la vela está por encima del máximo que puede llevar.
    .hint = Cámbialos entre sí, o mira si hay una unidad equivocada.
what-machine-weight = El peso del paramotor
what-wing-low = El mínimo que tiene que llevar la vela con motor
what-wing-high = El máximo que puede llevar la vela con motor
what-wing-free-low = El mínimo que tiene que llevar la vela sin motor
what-wing-free-high = El máximo que puede llevar la vela sin motor

says-weight = Pesa { $weight } tal como vuela, sin combustible.
says-wing-range = Su vela puede llevar de { $low } a { $high } con motor{ $document ->
    [none] {""}
   *[other] {" "}({ $document }, { $page })
  }.
says-wing-range-free = Sin motor puede llevar de { $low } a { $high }.

says-flight-load = Peso total en vuelo: piloto { $pilot }, paramotor { $machine }, combustible { $fuel }, lastre { $ballast }; la vela puede llevar de { $low } a { $high } con motor.
says-flight-mix = Mezcla: { $tank } en el depósito{ $before ->
    [none] {" "}sin aceite
   *[other] {" "}a { $before }:1
  }, { $petrol } de gasolina echados, { $oil ->
    [none] todavía sin aceite
   *[other] { $oil } de aceite
  }; se quiere { $wanted }:1.
says-flight-fuel = Combustible: { $fuel } a bordo, { $reserve } que deben quedar, { $time } que se van a volar, según { $flights ->
    [one] un vuelo anterior
   *[other] { $flights } vuelos anteriores
  }.
says-flight-air-field = Aire: { $pressure } en el campo, { $temperature }, punto de rocío { $dew ->
    [none] sin medir
   *[other] { $dew }
  }.
says-flight-air-setting = Aire: altímetro reglado a { $setting } a { $elevation }, { $temperature }, punto de rocío { $dew ->
    [none] sin medir
   *[other] { $dew }
  }.
says-flight-wind = Viento: { $mean }, rachas { $gust ->
    [none] sin medir
   *[other] { $gust }
  }. Límites propios: viento medio, { $mean-limit ->
    [none] ninguno
   *[other] { $mean-limit }
  }; rachas, { $gust-limit ->
    [none] ninguno
   *[other] { $gust-limit }
  }; racha entre viento medio, { $factor-limit ->
    [none] ninguno
   *[other] { $factor-limit }
  }.
