# Load, fuel, air and wind before a flight: what comes of them, what can't be, and what to do.

band-mix-ratio = Parts of petrol to one part of oil

## All-up weight

reason-load = All-up { $total } at launch: { $below } below the most this wing may carry with a motor ({ $most }).
reason-load-over = All-up { $total } at launch: { $over } above the most this wing may carry with a motor ({ $most }).
clears-load-over = Leave ballast or fuel behind, or fly a wing that may carry it. Then work it out anew.
reason-load-under = With the tank run dry { $dry }: { $under } below the least this wing must carry with a motor ({ $least }).
clears-load-under = Take ballast, or fly a smaller wing. Then work it out anew.
reason-load-unconfirmed = Nobody has confirmed from the wing's manual that it may carry { $low } to { $high } with a motor.
clears-load-unconfirmed = Enter the wing's range with its manual and page where the machine is described.
fact-load-dry = With the tank run dry { $dry }: { $above } above the least it must carry ({ $least }).
fact-load-source = What the wing may carry: { $document }, { $page }.
fact-load-free = That is { $over } above the most it may carry without a motor ({ $most }): it is the motor's range that counts here.
fact-load-fuel = { $fuel } of fuel count as { $mass }: { $density } kg a litre, as heavy as petrol gets.
fact-load-described-anew = The wing's range was described anew since: it is the new one that counts.

## Petrol and oil

reason-mix = The tank holds { $ratio }:1; { $wanted }:1 is wanted.
reason-mix-add = { $oil } of oil have to go into the tank still, for { $wanted }:1.
clears-mix-add = Pour it in, shake the tank, and say that it is in.
reason-mix-lean = { $ratio ->
    [none] There is no oil in the petrol, and { $wanted }:1 is wanted: { $oil } are missing.
   *[other] Too little oil: the tank holds { $ratio }:1, and { $wanted }:1 is wanted. { $oil } are missing.
  }
clears-mix-lean = Add the oil that is missing before the engine runs, shake the tank, and say how much you poured in all.
reason-mix-rich = Too much oil: the tank holds { $ratio }:1, and { $wanted }:1 is wanted. { $petrol } of petrol without oil would bring it right.
clears-mix-rich = Add the petrol, or fly with a plug that may foul and an engine that runs leaner than it is set for.
reason-mix-unconfirmed = No manual confirms { $wanted }:1 for this engine.
clears-mix-unconfirmed = Enter the ratio with your manual's page, among the machine's limits.
reason-mix-manual-lean = { $wanted }:1 is less oil than the engine's manual asks for ({ $manual }:1).
reason-mix-manual-rich = { $wanted }:1 is more oil than the engine's manual asks for ({ $manual }:1).
clears-mix-manual = Mix as the manual has it; or, if your manual says otherwise, enter it with its page.
fact-mix-source = The ratio: { $document }, { $page }.

## Fuel

reason-fuel = The fuel lasts { $low } at least with the reserve kept, and { $time } are to be flown.
reason-fuel-perhaps = The fuel lasts { $low } to { $high } with the reserve kept: { $time } only if the engine burns little.
reason-fuel-short = The fuel lasts { $high } at most with the reserve kept, and { $time } are to be flown.
clears-fuel = Take more fuel, or fly less far.
reason-fuel-unknown = Too little to say how long the fuel lasts: { $has ->
    [0] no flight has
    [one] one flight has
   *[other] { $has } flights have
  } its fuel logged, and it takes { $needs }.
clears-fuel-unknown = Log the fuel that each flight burns. Until then look at the tank in flight, and land with plenty left.
fact-fuel-burn = { $flights } flights burned { $low } to { $high }: the least and the most, as they are too few to tell the spread.
fact-fuel-burn-predicted = By { $flights } flights, the next one burns { $low } to { $high }, nine times out of ten.
fact-fuel-reserve = Left at landing: { $reserve }.

burns-few = Too little to say what this engine burns: { $has ->
    [0] no flight has its fuel logged
    [one] one flight has its fuel logged
   *[other] { $has } flights have their fuel logged
  }, and it takes { $needs }.

## The air

reason-air = The air is as thin as at { $altitude } on a standard day: { $thrust ->
    [0] no thrust is lost by it.
   *[other] the propeller pulls { $thrust } % less than at sea level, and the run is { $run } % longer.
  }
reason-air-thin = Thin air, as at { $altitude } on a standard day: the propeller pulls { $thrust } % less than at sea level, the run is { $run } % longer, and the climb is flatter.
clears-air = Wait for cooler air, go lighter, or take a longer field with nothing to clear at its end.
fact-air = Pressure altitude { $altitude }; in still air the wing lifts at { $speed } % more speed over ground.
fact-air-dry = The air was taken as dry: without a dew point this is the mildest case, and damp air is thinner.
fact-air-rule = Thrust in proportion to density, run 12 % longer for each 1000 ft: common practice, no source.

## The wind

reason-wind = Wind { $mean }{ $gust ->
    [none] {""}
   *[other] , gusts { $gust }
  }: within the limits that are set.
reason-wind-mean = Wind { $mean }: above { $whose ->
    [school] the school's limit
   *[own] your own limit
  } of { $limit }.
reason-wind-gust = Gusts { $gust }: above { $whose ->
    [school] the school's limit
   *[own] your own limit
  } of { $limit }.
reason-wind-gust-factor = Wind { $mean }, gusts { $gust }: { $factor ->
    [none] gusts out of still air, more than any times the mean wind, and so above
   *[other] { $factor } times the mean wind, above
  } { $whose ->
    [school] the school's limit
   *[own] your own limit
  } of { $limit }.
clears-wind = Do not launch in it. Measure again when it has calmed down.
reason-wind-gust-unknown = Wind { $mean }: nobody measured the gusts, and { $whose ->
    [school] the school's limits need
   *[own] your own limits need
  } them.
clears-wind-gust-unknown = Watch the wind for ten minutes, and enter the strongest gust.
reason-wind-no-limit = Wind { $mean }{ $gust ->
    [none] {""}
   *[other] , gusts { $gust }
  }: nobody has set a limit to hold it against.
clears-wind-no-limit = Set one, before the wind is up: a mean, a gust, or how much stronger gusts may be than the mean.
fact-wind-limits = { $whose ->
    [school] The school's limits
   *[own] Your own limits
  }: mean { $mean ->
    [none] not set
   *[other] { $mean }
  }, gusts { $gust ->
    [none] not set
   *[other] { $gust }
  }, gusts over mean { $factor ->
    [none] not set
   *[other] { $factor }
  }.

## Held together

clears-flight-well = Nothing to be done. Work it out anew when a figure changes.
reason-flight-impossible = { $part ->
    [load] The all-up weight
    [mix] The mix of petrol and oil
    [fuel] How long the fuel lasts
    [air] What the air does
   *[wind] The wind
  } cannot be worked out from these figures.
clears-flight-impossible = Enter the figures once more.
reason-measured-earlier = { $what ->
    [both] Air and wind were
    [air] The air was
   *[wind] The wind was
  } measured at { $time }: look again.
clears-measured-earlier = Measure again, and enter what you read.
reason-flight-not-prepared = Not worked out today: { $what ->
    [both] all-up weight and wind
    [load] all-up weight
   *[wind] the wind against the school's limits
  }.
clears-flight-not-prepared = Prepare the flight: load, fuel, air and wind.

## Components that a school wants inspected

reason-inspect-over = { $part }: not looked at for { $hours } h, and the school wants it looked at every { $every } h.
reason-inspect-never = { $part }: never looked at in { $hours } h, and the school wants it looked at every { $every } h.
clears-inspect-over = Look at it on a list that has it, and sign.

## What can't be

flight-fault-unit = A figure in { $from } can't be turned into { $to }: choose the right unit.
flight-fault-number = A figure is missing or is no number.
flight-fault-too-cold = Nothing is colder than absolute zero: look at the unit.
flight-fault-impossible = { $what }: must be { $must ->
    [not-negative] 0 or more
    [at-least-one] 1 or more
   *[positive] more than nothing
  }.
flight-fault-backwards = { $what }: the least must not be above the most.
flight-fault-outside = { $what }: { $value } is outside { $low } to { $high }. Look for a slip in number or unit.
flight-fault-above-saturation = The dew point can't lie above the air's temperature.
flight-fault-no-ratio = { $ratio }:1 is no ratio of petrol to oil: from 5 to 200 parts to one.
flight-fault-calm-gust = The gusts can't be less than the mean wind.
flight-fault-no-limit = Nobody has set a limit to hold the wind against.

input-pilot = The pilot's weight
input-machine = The machine's weight
input-ballast = Ballast
input-fuel = Fuel
input-wing-low = The least the wing must carry
input-wing-high = The most the wing may carry
input-wing = What the wing may carry
input-in-tank = What is in the tank
input-add-fuel = Petrol poured in
input-tank-or-fuel = What is in the tank, or petrol poured in
input-oil = Oil poured in
input-reserve = The reserve at landing
input-flight-time = The time to be flown
input-burn = What the engine burns
input-used = Fuel used in an earlier flight
input-time = The time of an earlier flight
input-temperature = The temperature
input-dew-point = The dew point
input-pressure = The air pressure
input-elevation = The field's height
input-setting = The altimeter setting
input-altitude = The pressure altitude
input-density = The air's density
input-density-altitude = The density altitude
input-mean = The mean wind
input-gust = The gusts
input-mean-limit = The limit of the mean wind
input-gust-limit = The limit of the gusts
input-gust-factor-limit = The limit of gusts over mean

## The form, its faults, and the record

ratio-words = { $ratio }:1. { $source }

fault-flight-impossible = It cannot be kept so. { $why }
    .hint = Enter the figures once more; a part left empty is not worked out.
fault-flight-empty = Nothing was entered.
    .hint = Enter at least one of load, mix, fuel, air and wind.
fault-weight-odd = { $what }: { $value } is not between { $low } and { $high }.
    .hint = Look for a slip in number or unit.
fault-wing-range-half = Half of what the wing may carry is missing.
    .hint = Give the least and the most with a motor: --wing-least "95 kg" --wing-most "140 kg".
fault-plan-file = The plan in { $file } cannot be read: { $why }
    .hint = “flight prepare MACHINE” without a file shows a plan to begin from.
fault-wing-range-crossed = The least the wing must carry is above the most it may carry.
    .hint = Swap the two, or look whether a unit is wrong.
what-machine-weight = The machine's weight
what-wing-low = The least the wing must carry with a motor
what-wing-high = The most the wing may carry with a motor
what-wing-free-low = The least the wing must carry without a motor
what-wing-free-high = The most the wing may carry without a motor

says-weight = It weighs { $weight } as flown, without fuel.
says-wing-range = Its wing may carry { $low } to { $high } with a motor{ $document ->
    [none] {""}
   *[other] {" "}({ $document }, { $page })
  }.
says-wing-range-free = Without a motor it may carry { $low } to { $high }.

says-flight-load = All-up weight: pilot { $pilot }, machine { $machine }, fuel { $fuel }, ballast { $ballast }; the wing may carry { $low } to { $high } with a motor.
says-flight-mix = Mix: { $tank } in the tank{ $before ->
    [none] {" "}without oil
   *[other] {" "}at { $before }:1
  }, { $petrol } of petrol poured in, { $oil ->
    [none] no oil yet
   *[other] { $oil } of oil
  }; { $wanted }:1 wanted.
says-flight-fuel = Fuel: { $fuel } on board, { $reserve } to be left, { $time } to be flown, by { $flights ->
    [one] one earlier flight
   *[other] { $flights } earlier flights
  }.
says-flight-air-field = Air: { $pressure } at the field, { $temperature }, dew point { $dew ->
    [none] not measured
   *[other] { $dew }
  }.
says-flight-air-setting = Air: altimeter set to { $setting } at { $elevation }, { $temperature }, dew point { $dew ->
    [none] not measured
   *[other] { $dew }
  }.
says-flight-wind = Wind: { $mean }, gusts { $gust ->
    [none] not measured
   *[other] { $gust }
  }; own limits: mean { $mean-limit ->
    [none] none
   *[other] { $mean-limit }
  }, gusts { $gust-limit ->
    [none] none
   *[other] { $gust-limit }
  }, gusts over mean { $factor-limit ->
    [none] none
   *[other] { $factor-limit }
  }.
