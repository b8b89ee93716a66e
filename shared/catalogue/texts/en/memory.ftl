# Records of logs and of flights prepared, and the measures whose trends are followed: a measure's value
# is its name, .what says what it is and why it is followed.

kind-flight-planned = Flight prepared
kind-readings-taken = Engine log taken in
told-flight-planned = Load, fuel and air worked out
told-readings-taken = Engine log taken in: { $words }
says-flight-planned = Load, fuel, air and wind as they were at { $time }.
says-readings-taken = { $figures ->
    [one] One figure
   *[other] { $figures } figures
  } out of the log “{ $name }”.

measure-peak-cht = Highest head temperature
    .what = The highest cylinder head temperature of each log, as it would have been on a day of 15 °C where the log says how warm it was. A rising line speaks of a leaner mixture, an air leak, or cooling air that goes astray.
measure-peak-egt = Highest exhaust gas temperature
    .what = The highest exhaust gas temperature of each log. A rising line speaks of a leaner mixture.
measure-log-peak-speed = Highest engine speed in logs
    .what = The highest engine speed of each log. It falls with power lost, and rises when the propeller loses its bite.
measure-log-idle-speed = Idle speed in logs
    .what = The idle speed of each log. A rising idle speaks of air drawn in behind the carburettor.
measure-full-throttle-speed = Full-throttle speed on the ground
    .what = Read at the run-up. It falls with power lost: compression, exhaust, mixture.
measure-full-power-speed = Full-power speed on the ground
    .what = Read at the run-up. It falls with a battery that ages, or a motor that runs hard.
measure-idle-speed = Idle speed
    .what = Read at the run-up. A rising idle speaks of air drawn in behind the carburettor.
measure-compression = Compression
    .what = Measured after work on the cylinder. It falls with rings, bore and head seal.
measure-propeller-tracking = Propeller tracking
    .what = How far the tips run apart. It grows with a hub, a bearing or a blade that gives.
measure-plug-gap = Plug gap
    .what = It grows as the electrodes burn away.
measure-pack-voltage = Flight battery voltage
    .what = Read fully charged. It falls as cells age.
measure-exhaust-spring-tension = Exhaust spring tension
    .what = It falls as springs tire with heat.
measure-fuel-burn = Fuel burned an hour
    .what = As logged after flights. It grows with a richer mixture or a leak, and falls with a leaner one.
measure-head-nuts-movement = Head nuts: movement before the click
    .what = The greatest movement of a nut before the wrench clicked, in eighths of a turn. Growing movement is a gasket that settles, or a stud that stretches.
measure-base-nuts-movement = Base nuts: movement before the click
    .what = The greatest movement of a nut before the wrench clicked, in eighths of a turn. Growing movement is a gasket that settles, or a stud that stretches.
measure-cylinder-base = Cylinder base: how dry
    .what = What was seen at the cylinder's base, look by look. Oil that creeps out tells of air that creeps in.
measure-plug-colour = Plug colour
    .what = What the plug looked like, look by look. It tells how the engine burns.
