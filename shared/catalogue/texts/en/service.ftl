# What is said of work on the engine: jobs, the parts and joints they disturb, what is looked at
# after them, and what falls due later. The form of a point's words is that of points.ftl.

occasion-after-service = After service

fault-occasion-needs-job = “{ $words }” follows a job: its list is what the job disturbed.
    .hint = Begin the job first and say what was done; its list is then composed for it.

## Jobs: what was done, in one line

job-plug-changed = Spark plug changed
    .what = The plug was out: renewed, or looked at and put back.
job-head-retorqued = Head nuts torqued
    .what = The head nuts were loosened or torqued, cold, with the head on.
job-head-retorqued-again = Head re-torqued after the first tank
    .what = Cold again, each head nut was brought back to torque, and the joints looked at.
job-cylinder-off = Cylinder off
    .what = The head and the cylinder were off, and both seals renewed.
job-shroud-off = Cooling shroud off
    .what = The shroud was off, for cleaning or to reach what lies behind it.
job-exhaust-off = Exhaust off
    .what = The springs were unhooked and the exhaust was off.
job-carburettor-cleaned = Carburettor cleaned
    .what = The carburettor was off, opened and cleaned.
job-intake-off = Intake off
    .what = The carburettor and the intake behind it were off.
job-propeller-changed = Propeller changed
    .what = The propeller was off: changed, balanced, or put back.
job-propeller-retorqued = Propeller bolts re-torqued
    .what = Each propeller bolt was brought back to torque.
job-reduction-adjusted = Reduction drive adjusted
    .what = The belt was tensioned, or the gearbox opened.
job-belt-tensioned-again = Belt tensioned again
    .what = The belt had its first hour, and its tension was set again.
job-starter-repaired = Starter repaired
    .what = The starter was off: its cord, its spring or its motor.
job-fuel-opened = Fuel system opened
    .what = A fuel line was off at the tank or the carburettor.
job-mounts-renewed = Engine mounts renewed
    .what = The engine's rubber mounts were undone or renewed.
job-after-propeller-strike = After a propeller strike
    .what = The propeller struck something: it and its hub were off, and all that the blow reached is looked at.
job-motor-off = Motor off
    .what = The electric motor was off its mounts.
job-controller-changed = Speed controller changed
    .what = The speed controller was off, or its cables were.
job-battery-changed = Flight battery changed
    .what = The flight battery was out of its straps.

## What falls due later

follow-up-head-retorque = Re-torque the head after the first tank, engine cold
follow-up-base-look = Look at the cylinder base again after the first tank
follow-up-propeller-bolts-again = Re-torque the propeller bolts after the first hour
follow-up-belt-again = Set the belt's tension again after the first hour

## Parts

graph-part-plug-cap = Plug cap
graph-part-plug = Spark plug
graph-part-shroud = Cooling shroud
graph-part-exhaust = Exhaust
graph-part-exhaust-stub = Exhaust stub
graph-part-head = Cylinder head
graph-part-cylinder = Cylinder
graph-part-air-box = Air box
graph-part-throttle-cable = Throttle cable
graph-part-fuel-line = Fuel line
graph-part-pulse-line = Pulse line
graph-part-carburettor = Carburettor
graph-part-intake = Intake and its reeds
graph-part-propeller = Propeller
graph-part-hub = Propeller hub
graph-part-belt = Drive belt
graph-part-gear-oil-plug = Gearbox oil plug
graph-part-gear-cover = Gearbox cover
graph-part-starter-pull = Pull starter
graph-part-starter-battery = Starter battery
graph-part-starter-motor = Starter motor
graph-part-crankcase = Crankcase
graph-part-tank = Fuel tank
graph-part-frame = Frame
graph-part-battery-lead = Flight battery's connector
graph-part-flight-battery = Flight battery
graph-part-controller = Speed controller
graph-part-motor = Electric motor

## Joints

joint-plug-cap-push = Cap on its plug
joint-plug-thread = Plug in the head
joint-shroud-nuts = Shroud mounts
joint-exhaust-springs = Exhaust springs
joint-exhaust-mounts = Exhaust mounts
joint-exhaust-stub-nuts = Exhaust stub on the cylinder
joint-head-nuts = Head nuts
joint-head-seal = Head on the cylinder
joint-base-nuts = Cylinder base nuts
joint-base-seal = Cylinder on the crankcase
joint-air-box-clip = Air box clip
joint-throttle-cable-end = Throttle cable at the carburettor
joint-fuel-line-carburettor = Fuel line at the carburettor
joint-fuel-line-tank = Fuel line at the tank
joint-pulse-line-ends = Pulse line's two ends
joint-carburettor-clamp = Carburettor on its intake
joint-intake-screws = Intake on the crankcase
joint-propeller-bolts = Propeller bolts
joint-hub-bolts = Hub bolts
joint-belt-adjuster = Belt adjuster
joint-belt-run = Belt round its pulleys
joint-gear-oil-plug-thread = Gearbox oil plug in its cover
joint-gear-cover-bolts = Gearbox cover bolts
joint-starter-screws = Pull starter's screws
joint-starter-lead = Starter motor's lead
joint-starter-motor-bolts = Starter motor's bolts
joint-engine-mounts = Engine mounts
joint-battery-lead-plug = Flight battery on the controller
joint-battery-straps = Flight battery's straps
joint-phase-connectors = Motor cables
joint-controller-screws = Speed controller's screws
joint-motor-bolts = Motor mount bolts

fastener-nut = nuts
fastener-locknut = locknuts
fastener-bolt = bolts
fastener-screw = screws
fastener-thread = screwed in
fastener-spring = springs
fastener-clip = clip
fastener-clamp = clamp
fastener-strap = strap
fastener-connector = connector
fastener-push = pushed on
fastener-seal = seal
fastener-belt = belt

## What is renewed, and tools to count back

consumable-head-seal = Head O-ring or gasket
consumable-base-seal = Base gasket or O-ring
consumable-exhaust-gasket = Exhaust gasket
consumable-intake-gasket = Intake gasket
consumable-lock-wire = Locking wire of the exhaust springs
consumable-fuel-clamp = Fuel line clamps
consumable-gear-cover-gasket = Gearbox cover gasket
consumable-gear-oil = Gearbox oil
consumable-mount-rubbers = Mount rubbers

tool-torque-wrench = Click torque wrench
tool-sockets = Sockets and extension
tool-plug-spanner = Plug spanner
tool-pliers = Pliers
tool-spanners = Spanners
tool-hex-keys = Hex keys
tool-screwdriver = Screwdriver
tool-spring-hook = Spring hook
tool-feeler-gauge = Feeler gauge
tool-port-rags = Rags from the open ports
tool-oil-tray = Oil tray
tool-fuel-can = Fuel can and funnel

## Limits

band-plug-gap = Spark plug gap
band-plug-torque = Spark plug torque
band-base-nut-torque = Cylinder base nut torque
band-propeller-bolt-torque = Propeller bolt torque
band-motor-bolt-torque = Motor mount bolt torque
band-thread-protrusion = Threads past a locknut
band-compression = Compression
band-exhaust-spring-tension = Exhaust spring tension
band-mount-hardness = Mount rubber hardness (Shore A)
band-belt-tension = Belt, how far it gives
band-gear-play = Gear play at the propeller tip

## Cautions

caution-cold-engine = Torque only a cold engine, in the unit on the wrench: inch-pounds are not foot-pounds. Never a bit more.
caution-seal-renewed = A joint that seeped is opened, looked into and renewed: tightening alone is not trusted.
caution-daylight = Judge the colour in daylight: lamps and screens tint it.
caution-compression-turning = Kill switch at stop, plug lead earthed, nobody in the propeller's reach: a crank turned by hand can still fire.
caution-spring-flies = A stretched spring flies: eyes covered, and never pull it with your fingers.
caution-strike-inside = What a strike bent inside shows late and fails at once. The maker's manual says what must be opened and measured; a licensed person where the rules ask for one.
caution-direction-without-propeller = Try the direction with the propeller off: a motor that turns the wrong way pushes at you.
caution-wound-back = Wind the click wrench back to its lowest mark. What lies forgotten meets the propeller.

## Plug

point-after-plug-colour = Colour of the plug's tip
    .good = Dry, dark or coffee brown.
    .why = White tells of heat, often air drawn in; it burns pistons.
    .bad = White, glazed or beaded; light tan is on the way there; wet is too rich.
    .brown = Dark or coffee brown
    .tan = Light tan
    .wet = Black and wet
    .white = White, glazed or beaded

point-after-plug-gap = Plug gap, by feeler gauge
    .good = The gauge drags lightly; the value lies inside the band.
    .why = Too wide misfires when hot, too narrow idles badly.
    .bad = Outside the band, or an electrode burnt slanting.

point-after-plug-seat = Plug in its seat
    .good = Begun by hand, washer pressed flat, engine cold, { $torque }.
    .why = Loose, it loses pressure and overheats; forced, it strips the head.
    .bad = Crossed or stiff in the thread, proud of its seat, washer missing.
    .pressed = By hand, washer pressed
    .stiff = Stiff thread, washer pressed
    .proud = Crossed, proud or loose

point-after-plug-terminal = Terminal nut on the plug
    .good = Tightened with pliers, thread sharp, cap grips it.
    .why = A terminal that unscrews takes the spark with it.
    .bad = It turns between two fingers, or is missing.
    .pliers-tight = Pliers-tight
    .worn = Pliers-tight, thread worn
    .turns = Turns by hand, or missing

## Head and cylinder

point-after-head-nuts = Head nuts, once tight
    .good = All { $nuts }, crosswise and in stages to { $torque }, cold; each moved a little, alike.
    .why = Too loose leaks and heats; too tight pulls the stud from the case.
    .bad = A nut that never clicks, or one that moved over half a turn.
    .clicked = All clicked, moved alike
    .one-moved-far = Clicked, one moved far
    .turns-on = One turns on, or missing

point-after-base-nuts = Base nuts, once tight
    .good = All { $nuts }, crosswise and in stages to { $torque }, cold.
    .why = Air drawn in under the cylinder makes it lean and hot.
    .bad = A nut that never clicks, or one that moved over half a turn.
    .clicked = All clicked, moved alike
    .one-moved-far = Clicked, one moved far
    .turns-on = One turns on, or missing

point-after-head-seal = Head seal and its faces
    .good = New seal, faces clean and flat, nothing pinched.
    .why = A leak here cuts like a torch.
    .bad = The old seal put back, a face pitted or scored.
    .new = New seal, clean faces
    .scratched = New seal, face scratched
    .old = Old seal put back

point-after-base-seal = Base seal and its faces
    .good = New gasket or O-ring, faces clean, no hole covered.
    .why = Oil seen here is air drawn in: heat follows.
    .bad = The old one put back, a face pitted, a passage covered.
    .new = New seal, clean faces
    .scratched = New seal, face scratched
    .old = Old seal put back

point-after-bore = Bore and piston, exhaust side
    .good = Even and smooth all round, ring free in its groove.
    .why = Heat scores the exhaust side first; it seizes from there.
    .bad = Lengthwise scores, melted edges, a stuck or broken ring.
    .even = Even, ring free
    .brown = Brown stain below the ring
    .scored = Scored, melted, ring stuck

point-after-compression = Compression, by gauge
    .good = Throttle full open, several turns: inside the band, and near last time's.
    .why = It falls before power does; a jump down tells of ring or seal.
    .bad = Below the band, or well below last time.

## Shroud

point-after-shroud-nuts = Shroud locknuts and rubber washers
    .good = All { $mounts }: thread just through the locknut, washer just pressed, shroud unflexed.
    .why = Shroud under tension cracks from its holes like a spider's web.
    .bad = Shroud pulled bent, washer squeezed flat, a locknut that spins freely.
    .just-through = Thread just through, washer pressed
    .squeezed = Washer squeezed flat
    .flexed = Shroud flexed or cracked
    .short = Thread short, or nut spins

point-after-shroud-spacers = Spacers behind the shroud
    .good = One at each of the { $mounts } mounts, square and whole.
    .why = One left out bends the shroud when the nut goes on.
    .bad = One missing, split, or two at one place.
    .each-in = One at each mount
    .worn = All in, one worn
    .missing = One missing or split

## Exhaust

point-after-exhaust-spring-tension = Exhaust springs, pull by balance
    .good = Each of the { $springs } pulls inside the band when stretched to its hooks.
    .why = Heat softens springs; a slack one unhooks in flight.
    .bad = One pulls clearly less than the others, or its coils stand apart.

point-after-exhaust-stub = Exhaust stub and its gasket
    .good = New gasket, nuts evenly tight, no thread pulled.
    .why = Hot gas beside the cylinder heats it and burns what it meets.
    .bad = The old gasket put back, soot, a nut missing.
    .new = New gasket, evenly tight
    .stud-worn = Tight, stud thread worn
    .old = Old gasket, sooty or loose

point-after-exhaust-mounts = Exhaust mounts, rubbers and nuts
    .good = Rubbers whole, nuts fully on, exhaust free of strain.
    .why = An exhaust that hangs in tension cracks at its welds.
    .bad = A torn rubber, a loose nut, or a pipe sprung into place.
    .whole = Whole, nuts fully on
    .crazed = Hair-thin surface cracks
    .torn = Torn, loose or strained

## Carburettor and intake

point-after-throttle-slide = Throttle, from shut to full
    .good = Opens fully and snaps shut, however the cable lies.
    .why = Stuck open, it drives you where you do not want to go.
    .bad = It stays open, catches, or the cable end is half seated.
    .full-and-shut = Opens fully, snaps shut
    .short = Snaps shut, opens short
    .sticks = Sticks, catches or hangs

point-after-carburettor-bowl = Carburettor covers and drains
    .good = Covers even, screws in, dry after a minute with fuel in it.
    .why = Fuel that drips falls on the exhaust.
    .bad = Wet at a cover, a screw missing, a gasket squeezed out.
    .dry = Dry, screws all in
    .damp = Damp film only
    .wet = Wet, or screw missing

point-after-pulse-line = Pulse line, both ends
    .good = Supple, pushed home at both ends, no kink.
    .why = It works the fuel pump; a leak starves and heats the engine.
    .bad = Off, split, kinked or pinched.
    .home = Supple, both ends home
    .hard = Hard, both ends home
    .off = Off, split or pinched

point-after-intake-joint = Intake on the crankcase
    .good = New gasket, screws evenly tight, no gap all round.
    .why = Air drawn in here makes a lean, hot engine.
    .bad = The old gasket put back, a gap, a screw loose.
    .new = New gasket, even all round
    .old = Old gasket put back
    .gap = Gap, or screw loose

## Fuel

point-after-fuel-ends = Fuel line ends and clamps
    .good = Pushed fully home, clamp behind the bead, dry after a firm pull.
    .why = Fuel let out burns; air sucked in starves the engine.
    .bad = Half on, clamp loose or missing, wet.
    .home = Home, new clamps, dry
    .old-clamp = Home, dry, old clamp grips
    .wet = Half on, loose or wet

point-after-fuel-air = Fuel drawn through, air out
    .good = Line full from tank to carburettor, no bubble moving.
    .why = An air pocket stops the engine just after launch.
    .bad = Bubbles that keep coming.
    .full = Full, free of bubbles
    .a-bubble = A bubble now and then
    .stream = Bubbles keep coming

## Reduction drive

point-after-belt-tension = Belt tension, by its give
    .good = Pressed midway as the manual says, it gives a length inside the band.
    .why = Slack slips and jumps; too tight eats the bearings.
    .bad = More or less give than the band, or different as it turns.

point-after-belt-adjuster = Belt adjuster, locked
    .good = Lock tight, newly paint-marked, pulleys in line.
    .why = An adjuster that creeps lets the belt go slack in flight.
    .bad = It turns by hand, or the pulleys stand out of line.
    .locked = Locked and marked
    .unmarked = Locked, paint mark missing
    .turns = Turns, or out of line

point-after-gear-play = Gear play, at the propeller tip
    .good = Rocked gently against the crank, the tip moves inside the band.
    .why = Growing play tells of worn teeth or bearings.
    .bad = More than the band, or a hard, gritty spot.

point-after-gear-cover = Gearbox cover, gasket, bolts
    .good = New gasket, faces clean, bolts evenly tight and paint-marked.
    .why = A gearbox that loses its oil wears out and locks.
    .bad = The old gasket put back, a bolt loose or missing, oil.
    .new = New gasket, bolts marked
    .unmarked = New gasket, mark missing
    .old = Old gasket, loose or oily

point-after-gear-oil = Gearbox oil and its plug
    .good = At its level, the kind the manual names, plug tight and secured.
    .why = Run dry, it locks and stops the propeller.
    .bad = Under or over its level, plug loose, or oil not known.
    .at-level = At level, plug secured
    .unsecured = At level, plug not wired
    .short = Off level, loose or unknown

## Propeller, hub, strike

point-after-propeller-bolts = Propeller bolts, once tight
    .good = All { $bolts }, crosswise and in stages to { $torque }, newly paint-marked.
    .why = One loose bolt breaks the others, and the propeller leaves.
    .bad = A bolt that never clicks, a crushed hub face, one missing.
    .at-torque = All at torque and marked
    .unmarked = At torque, paint mark missing
    .loose = Loose, stripped or missing

point-after-propeller-way = Propeller, the right way round
    .good = Turned as the engine turns it, the rounded edges lead; flat faces look back.
    .why = Back to front it pulls little, and its tips flutter.
    .bad = Sharp edges lead.
    .edges-lead = Rounded edges lead
    .back-to-front = Sharp edges lead

point-after-hub-bolts = Hub on its shaft
    .good = Square on its shaft, bolts tight and newly paint-marked.
    .why = The hub carries all: its play breaks bolts and blades.
    .bad = Play, a crack, rubbed-off dust, a bolt loose or missing.
    .square = Square, tight and marked
    .unmarked = Tight, paint mark missing
    .loose = Play, cracked or loose

point-after-propeller-shaft = Propeller shaft, turned against a pointer
    .good = Measured as the manual says, it runs true, silent and free.
    .why = A bent shaft breaks later, in the air.
    .bad = It wobbles, grinds, binds, or nobody has measured it.
    .true = Measured, runs true
    .wobbles = Wobbles, grinds or unmeasured

## Mounts and locknuts

point-after-mount-hardness = Mount rubber, hardness by gauge
    .good = Each of the { $mounts } inside the band, and alike.
    .why = Hardened rubber passes the shake on; softened, it lets the engine swing.
    .bad = Outside the band, or one unlike the others.

point-after-thread-protrusion = Threads past each locknut, counted
    .good = Whole threads past the nut: the fewest of all lies inside the band.
    .why = A locknut grips only with the thread right through it.
    .bad = Fewer, or a locknut so worn that fingers can turn it: renew it.

## Starter

point-after-starter-screws = Pull starter and its screws
    .good = All screws in, paint-marked; housing square to the shaft.
    .why = Come loose, it is drawn into the flywheel.
    .bad = A screw loose or missing, a crack at a lug.
    .tight = All tight and marked
    .unmarked = Tight, paint mark missing
    .loose = Loose, missing or cracked

## Electric

point-after-motor-bolts = Motor bolts, once tight
    .good = All { $mounts } to { $torque }, newly paint-marked.
    .why = The propeller hangs on these.
    .bad = A bolt that never clicks, a crack, one missing.
    .at-torque = All at torque and marked
    .unmarked = At torque, paint mark missing
    .loose = Loose, cracked or missing

point-after-motor-direction = Which way the motor turns
    .good = Tried at low speed without its propeller, it turns as marked.
    .why = Two cables swapped turn it backwards.
    .bad = It turns the other way, or twitches.
    .right-way = Turns as marked
    .other-way = Other way, or twitches

## Tools

point-after-tools-counted = Tools, rags, old parts
    .good = Counted: all back in place, ports free of rags, wrench wound back.
    .why = What is left behind meets the propeller or goes through the engine.
    .bad = One is missing: nobody starts the engine until it is found.
    .all-back = All back in place
    .one-missing = One missing
