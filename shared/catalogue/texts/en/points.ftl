# What the lists say. A point's value is what to look at; .good and .bad tell the two apart, .why
# says what hangs on it, every other attribute is one answer and says what is seen.

## Stations

station-day = The day and the papers
    .stand = Before you touch the machine, facing the wind.
station-safe = Made safe
    .stand = Beside the machine, arms well clear of the propeller.
station-frame = Frame and arms
    .stand = In front, where your back will go.
station-harness = Harness, straps, carabiners
    .stand = Still in front, kneeling, straps in your hands.
station-tank = What it runs on
    .stand = Low down beside the frame.
station-engine = The motor
    .stand = Behind, and to one side of the propeller.
station-controls = Throttle and kill switch
    .stand = In front again, the throttle in your hand.
station-propeller = Propeller and cage
    .stand = Behind the cage, with the machine still made safe.
station-wing = Wing, lines, risers
    .stand = Along the wing from tip to tip, then down the lines to the risers.
station-run-up = You, and the run-up
    .stand = Well away from the wing, nobody beside or behind you.

## Cautions

caution-able-to-fire = The propeller can maim. Kill switch at stop and plug cap off before any hand goes near it.
caution-battery-live = The propeller can maim. Flight battery apart before any hand goes near it.
caution-propeller-arc = No hand in the propeller's reach unless the machine is still made safe. If you are not sure, go back and make it safe.
caution-now-live = From here on the propeller can turn: keep everyone out of its reach, and your own hands too.
caution-running-propeller = A turning propeller is hard to see and throws what it hits. Nobody beside or behind you; thumb on the kill switch.
caution-restraint = Never hold a running machine by hand, and never give full throttle while it stands loose on the ground.
caution-eyes-only = Hot parts burn. Eyes only: before you reach in, kill switch at stop and plug cap off again.
caution-eyes-only-motor = Eyes and nose only: before you reach in, flight battery apart again.
caution-hot-parts = Hot parts burn: let the engine cool before you touch it.
caution-leaking-joint = Let the engine cool before you touch it. Tightening alone does not mend a leaking joint.
caution-coolant-pressure = Hot coolant scalds: never open the cap before the engine is cold.
caution-fuel-vapour = Fuel vapour burns: no flame, no smoking, and put the phone away while you pour.
caution-battery-arc = A battery can arc and burn: keep rings and tools off its contacts, and walk away from one that swells or smells.
caution-reserve-lightly = Look, and feel lightly: do not draw the pin or pull the handle to try it.
caution-manual-first = The makers' manuals and local rules come first. Where they differ from this list, stop and follow them.
caution-pilot-judges = A full list is not a safe flight: weather, place and pilot are for you to judge.

## The day and the papers

point-weather = Wind, cloud and rain
    .good = Steady wind that you can handle, clear view, no rain or storm in reach.
    .why = No sound machine makes up for the wrong air.
    .bad = Gusts, wind rising, tall cloud building; rain, fog or thunder near.
    .steady = Steady, inside my limit
    .building = Gusty, or cloud building
    .stormy = Too strong, wet or thundery

point-site = Launch field and the airspace
    .good = Clear run into wind, a way out if the motor stops, airspace open today.
    .why = Wires, rough air behind trees and closed airspace surprise you late.
    .bad = Wires, trees or people ahead, a poor surface, airspace shut or not looked up.
    .open = Clear run, airspace open
    .tight = Tight, or limits to keep
    .closed = Blocked, shut or not known

point-papers = Licence, insurance and other papers
    .good = Everything that the rules ask for is with you and in date.
    .why = After an accident these dates are read first.
    .bad = One is missing, or its date has passed.
    .in-date = With me and in date
    .soon = One runs out this month
    .run-out = Missing or run out

point-self = Yourself: rest, health, calm
    .good = Rested, fed, well, sober, and nobody pushing you to fly.
    .why = A tired or hurried pilot misses what a fresh one sees.
    .bad = Ill, worn out, upset, or with drink or strong medicine in you.
    .rested = Rested, well, unhurried
    .tired = Tired or hurried
    .unwell = Ill, drink or strong medicine

## Made safe

point-kill-switch-off = Kill switch, at stop
    .good = Turned to stop; a plain push button is whole and springs back.
    .why = The first of two locks. Some buttons only stop while pressed.
    .bad = Left at run, or so loose that you cannot tell.
    .at-stop = Turned to stop
    .springs-back = Push button, whole, springs back
    .at-run = At run, loose or broken

point-plug-cap-off = Spark plug cap, taken off
    .good = Pulled off every plug and tucked where it cannot touch one again.
    .why = The second lock: a kill wire can break unseen, a bare plug cannot fire.
    .bad = Still on, half on, or hanging against the plug.
    .off = Off, held away
    .still-on = On, or touching the plug

point-starter-isolated = Starter battery, cut off
    .good = Main switch off or connector pulled apart: the start button does nothing.
    .why = One touch of the button would swing the propeller.
    .bad = Still joined, or the switch does not show which way it is.
    .apart = Switched off or apart
    .live = Still joined, or unclear

point-battery-isolated = Flight battery, cut off
    .good = Connector apart or main switch out, display dark.
    .why = An electric motor starts without a sound and with full force.
    .bad = Still joined, display lit, or you cannot tell.
    .apart = Apart, display dark
    .joined = Still joined, or lit

## Frame and arms

point-arm-pivots = Arm pivots and their bolts
    .good = Each bolt right through, its nut fully on, no play when you lift the arm.
    .why = You hang on these two joints.
    .bad = Play, a crack, a bent bolt, or a nut that has moved.
    .firm = Firm, nuts fully on
    .play = Slight play, nuts fully on
    .loose = Loose, cracked, nut missing
    .without = Frame without arms

point-arms-and-straps = Arms and their safety straps
    .good = Arms straight and uncracked, a strap joined and whole on each side.
    .why = The strap holds you if the arm breaks.
    .bad = A bend, a crack, or a strap cut, worn through or left undone.
    .straight = Straight, straps joined
    .marked = Scratched arm or fluffed strap
    .bent = Bent, cracked, strap undone
    .without = Frame without arms

point-frame-joints = Frame tubes, welds and joints
    .good = Straight and uncracked, each joint pushed home with its pin or clip.
    .why = Cracks begin at welds and holes, and shaking makes them grow.
    .bad = A bend, a crack or rust line at a weld, a pin or clip missing.
    .whole = Straight, pins all home
    .dented = Dent or scrape, uncracked
    .cracked = Bent, cracked, pin missing

## Harness, straps, carabiners

point-leg-straps = Leg straps and their buckles
    .good = Webbing and stitching whole, each buckle latches and holds a hard pull.
    .why = They alone keep you from sliding out of the seat.
    .bad = A cut, a pulled stitch, or a buckle that slips or half latches.
    .hold = Whole, both buckles hold
    .fluffed = Fluffed edge, buckles hold
    .slip = Cut, or a buckle slips

point-carabiner-gates = Both carabiner gates
    .good = Let go, each snaps shut by itself and its lock goes home.
    .why = With its gate open a carabiner holds only part of its load.
    .bad = Slow or gritty, bent, or a lock that does not catch.
    .snap = Snap shut and lock
    .gritty = Gritty, but shut and lock
    .stay-open = Stay open or unlocked

point-carabiner-bodies = Carabiner bodies and their webbing
    .good = Smooth, straight metal, within its maker's age; webbing and stitching whole.
    .why = A notch in the metal or the webbing is where it gives way.
    .bad = A notch, groove, crack or bend, cut stitching, or past its age.
    .smooth = Smooth, webbing whole
    .scratched = Light scratch or fluff
    .notched = Notched, cracked, cut, too old

point-chest-strap = Chest and shoulder straps
    .good = Stitching whole, buckles hold, both shoulders the same length.
    .why = The chest strap keeps the shoulders on, and sets how you hang.
    .bad = A cut, a pulled stitch, a buckle that slips, or one side longer.
    .even = Whole and even
    .fluffed = Fluffed edge, buckles hold
    .slips = Cut, slipping or uneven

point-harness-fixings = Seat, seams and frame fixings
    .good = Seat board and seams whole, each fixing to the frame closed and tight.
    .why = These fixings join you to the machine.
    .bad = A torn seam, a cracked seat, a fixing loose or open.
    .closed = Whole, fixings all closed
    .worn = Worn seam, fixings closed
    .torn = Torn, cracked or loose

point-reserve-pin = Reserve pin and its loop
    .good = Straight, right through an unfrayed loop, flaps closed over it.
    .why = Half out, it lets the reserve into the propeller.
    .bad = Bent, half out, pulled tight by something, or the loop frayed.
    .through = Straight, right through
    .rust-spot = Dull or rusty, right through
    .half-out = Bent, half out, loop frayed

point-reserve-handle = Reserve handle
    .good = Seated in its pocket, nothing over it; your hand finds it without looking.
    .why = You get one grab, in a hurry and pressed by your own weight.
    .bad = Hanging out, or under a strap, cord or radio lead.
    .seated = Seated, free to grab
    .worn = Seated, pocket worn
    .covered = Loose or covered

point-reserve-repack = Repack date on its card
    .good = The card is with the reserve, and the date lies ahead.
    .why = Cloth folded too long opens late.
    .bad = The date has passed, or the card is missing or unreadable.
    .ahead = Date lies ahead
    .soon = Due within a month
    .past = Gone by, missing, unreadable

## What it runs on

point-fuel-on-board = Fuel on board
    .good = Enough for the flight and a reserve; the tank holds { $tank }.
    .why = An engine that runs dry chooses your landing field.
    .bad = Less than the flight and a reserve, or a gauge that cannot be right.

point-fuel-mix = The fuel: fresh, clean, oiled
    .good = Fresh and clean, with oil as the engine maker's manual says.
    .why = Without its oil the engine seizes; water stops it.
    .bad = Oil forgotten or not sure, water or dirt at the bottom, a sour smell.
    .known = Fresh, clean, oil known
    .stale = Some weeks old, clean
    .unsure = Oil unsure, water or dirt

point-tank-walls = Tank, seams and straps
    .good = Dry all round, held firm, rubbing on nothing.
    .why = Fuel that drips on a hot exhaust burns.
    .bad = Wet, cracked, rubbed thin, or loose in its straps.
    .dry = Dry, held firm
    .stained = Old stain or rub mark
    .wet = Wet, cracked or loose

point-tank-cap = Filler cap and vent
    .good = Cap tight on its seal, vent open and not kinked.
    .why = A shut vent starves the engine; a loose cap spills on the exhaust.
    .bad = Cap loose, seal split, vent blocked, kinked or shut.
    .tight = Cap tight, vent open
    .worn = Cap tight, seal worn
    .blocked = Cap loose or vent shut

point-fuel-line = Fuel line and its ends
    .good = Supple all along, clear of hot parts, every end clamped, any tap open.
    .why = Air sucked in here starves and heats the engine; fuel let out burns.
    .bad = Hard, cracked, chafed, kinked, wet, or loose at an end.
    .supple = Supple, ends clamped
    .hard = Hard or yellow, dry
    .split = Cracked, kinked, loose, wet

point-fuel-filter = Fuel filter and primer bulb
    .good = Filter clean; primer bulb, if there is one, firm and uncracked.
    .why = Dirt or air here cuts the fuel when you climb.
    .bad = Dark filter, bubbles that keep coming, a soft or cracked bulb.
    .clear = Clean, free of bubbles
    .specks = A few specks
    .dirty = Dirty, bubbling or cracked

point-injection-oil = Oil in its own tank
    .good = Above the mark for this flight, pipe full of oil.
    .why = Run dry of oil, the engine seizes.
    .bad = Under the mark, or air in the pipe.
    .above = Above the mark
    .at-mark = At the mark
    .under = Under it, or air seen

point-pack-voltage = Battery voltage, at rest
    .good = Inside the band for { $cells } cells in series, charger apart, at rest.
    .why = It tells how full the pack is; too high, it may catch fire.
    .bad = Below the band it is too empty to fly, above it overcharged.

point-battery-case = Battery case and straps
    .good = Sides flat, dry and cool, straps so tight that it cannot shift.
    .why = A swollen, dented or wet pack can catch fire under you.
    .bad = Swollen, dented, cracked, warm, wet, or able to move.
    .flat = Flat, cool, held firm
    .scuffed = Scuffed, flat and dry
    .swollen = Swollen, dented, wet or loose

point-battery-contacts = Contacts and connectors
    .good = Bright metal, pins straight and tight, plastic in its own colour.
    .why = A poor contact arcs, melts, and stops the motor.
    .bad = Brown or melted plastic, a loose pin, pitted metal.
    .bright = Bright and tight
    .dull = Dull, tight
    .burnt = Burnt, pitted or loose

point-battery-leads = Battery leads
    .good = Skin whole, clipped clear of propeller, hot parts and sharp edges.
    .why = A bared lead short-circuits the whole pack.
    .bad = Cut, pinched or bare, or hanging where the propeller reaches.
    .clipped = Whole and clipped
    .rubbed = Rubbed, skin whole
    .bare = Cut, pinched or hanging

## The motor

point-cylinder-base = Cylinder base, all the way round
    .good = Dry metal, no dark line under the fins.
    .why = Oil here means air gets in: a lean mixture (too little fuel), and heat.
    .bad = A wet or dark line where the cylinder meets the case.
    .dry = Dry
    .old-stain = Old stain, dry to touch
    .wet = Wet

point-cylinder-head = Cylinder head joint and its nuts
    .good = Dry all round, each of the { $nuts } nuts in place.
    .why = A leak here heats the cylinder that it should seal.
    .bad = A wet or sooty line at the joint, or a nut missing.
    .dry = Dry, nuts all there
    .old-stain = Old stain, dry to touch
    .wet = Wet, sooty, nut missing

point-carburettor-joint = Carburettor on its intake
    .good = Does not rock; rubber or gasket whole, fixings tight, dry underneath.
    .why = Air that sneaks in here makes a lean, hot engine.
    .bad = It rocks, the rubber is split, a fixing is loose, or it is wet.
    .firm = Firm, rubber whole
    .crazed = Firm, hair-thin surface cracks
    .rocks = Rocks, split or wet

point-intake-clip = Air box and its clip
    .good = Box firm, clip closed, filter clean and whole.
    .why = Come off, it upsets the mixture and flies into the propeller.
    .bad = Clip open or missing, box loose, filter torn or soaked.
    .closed = Clip closed, filter clean
    .dusty = Clip closed, filter dusty
    .open = Open, loose or torn

point-shroud-face = Cooling shroud, faces and corners
    .good = Whole, mostly at corners and holes where cracks begin; nothing caught inside.
    .why = Cooling air that escapes through a crack leaves the cylinder hot.
    .bad = Any crack, a missing piece, leaves or grass in the air's way.
    .whole = Free of cracks, clear inside
    .hairline = Hairline crack
    .through = Cracked through or blocked

point-shroud-mounts = Shroud mounts, nuts and washers
    .good = All { $mounts } held, rubber washers just pressed, shroud not pulled bent.
    .why = Too tight starts spider cracks; too loose lets it shake to bits.
    .bad = A crack from a hole, a nut or washer missing, the shroud bent by a nut.
    .held = Held, free of cracks
    .hairline = Hairline, or washer squeezed flat
    .through = Cracked through, loose or missing

point-cylinder-fins = Cooling fins and their colour
    .good = Gaps clear, fins whole, metal the same colour as last time.
    .why = Blocked fins make heat; a blue or brown tint shows that it was there.
    .bad = Grass, mud or a nest between fins, a fin broken off, burnt colour.
    .clear = Clear, colour unchanged
    .darker = Dusty, or slightly darker
    .blocked = Blocked, broken or burnt
    .finless = Cylinder without fins

point-ground-under = Ground under the machine
    .good = Dry where it stood.
    .why = A drop on the ground has a leak above it.
    .bad = Fresh fuel, oil or coolant: find where it comes from.
    .dry = Dry
    .spot = One old oily spot
    .fresh = Fresh drops or a puddle

point-engine-mounts = Engine mounts and rubbers
    .good = All { $mounts } rubbers whole, nuts on; pushed, the engine gives evenly.
    .why = A torn mount lets the propeller swing into the cage.
    .bad = A torn rubber, a nut that has moved, metal on metal.
    .whole = Rubbers whole, nuts on
    .crazed = Hair-thin surface cracks
    .torn = Torn, loose or missing

point-exhaust-springs = Exhaust springs and their hooks
    .good = All { $springs } hooked at both ends and secured against flying off.
    .why = A spring that lets go flies straight into the propeller.
    .bad = One broken, unhooked or unsecured, or a hook worn thin.
    .hooked = Hooked and secured
    .worn = Hook worn, still secured
    .missing = Broken, unhooked or unsecured

point-exhaust-body = Exhaust pipe, silencer and mounts
    .good = Free of cracks, mounts whole, no fresh soot at a joint.
    .why = A crack here grows fast, and the pieces meet the propeller.
    .bad = A crack, a torn mount, a part that rattles, thick soot at a joint.
    .whole = Whole, mounts firm
    .sooty = Light soot at a joint
    .cracked = Cracked, loose or torn

point-plug-terminal = Plug terminal and cap grip
    .good = Plug screwed home, terminal tight, cap whole with its grip and retainer.
    .why = A cap that shakes off stops the engine in the air.
    .bad = Terminal turns by hand, cap split, grip slack, retainer broken or lost.
    .tight = Terminal tight, cap grips
    .worn = Tight, retainer worn
    .loose = Loose, split or slack

point-plug-lead = Spark plug lead
    .good = Skin whole, firm in cap and coil, clipped clear of fins and exhaust.
    .why = A spark that finds another way leaves you without an engine.
    .bad = Cut, burnt, rubbing on metal, or loose at an end.
    .clipped = Whole and clipped
    .rubbed = Rubbed, skin whole
    .bare = Cut, burnt or loose

point-engine-hardware = Nuts, bolts and paint marks
    .good = Each nut, clip and wire in its place, paint marks in line.
    .why = Shaking loosens everything, and the propeller catches what drops.
    .bad = A mark out of line, bright metal round a nut, something missing.
    .aligned = All there, marks in line
    .faded = All there, mark worn off
    .turned = Turned, loose or missing

point-reduction-belt = Drive belt and pulleys
    .good = Edges whole, belt centred and evenly tight as its manual says.
    .why = A belt that slips or tears takes the thrust away.
    .bad = Frayed, cracked across, running off centre, slack, oily.
    .centred = Whole, centred, tight
    .shiny = Shiny or lightly fluffed
    .frayed = Frayed, cracked, slack, oily

point-reduction-gear = Gearbox, seals and plugs
    .good = Dry case, oil plugs in and secured, bolts all there.
    .why = A gearbox that has lost its oil wears out and locks.
    .bad = Oil dripping from a seal or plug, a crack, a loose bolt.
    .dry = Dry, plugs secured
    .film = Thin oil film
    .drips = Drips, cracked or loose

point-starter-cord = Starter cord and handle
    .good = Drawn gently, the cord is whole, winds right back; handle knot firm.
    .why = A cord that hangs out is wound in by the propeller.
    .bad = Frayed, knot slipping, housing loose, or it hangs out.
    .winds-back = Whole, winds right back
    .fluffed = Fluffed, winds right back
    .hangs-out = Frayed, loose, hangs out

point-starter-motor = Starter motor and its battery
    .good = Starter firm on its bolts, battery strapped and flat, leads clipped.
    .why = A lead or battery that comes loose burns, or meets the propeller.
    .bad = Loose bolts, a swollen battery, a burnt contact, a hanging lead.
    .firm = Firm, leads clipped
    .dull = Firm, contact dull
    .loose = Loose, swollen or burnt

point-engine-oil = Engine oil on its stick
    .good = Between the marks, engine level, oil clean and clear.
    .why = Too little oil, or water in it, ruins the bearings in minutes.
    .bad = Under the low mark, over the high one, or milky.
    .between = Between the marks
    .at-low-mark = At the low mark
    .under = Outside the marks, or milky

point-coolant = Coolant and its hoses
    .good = At the level mark, cold; hoses supple, clamps tight, dry all round.
    .why = Without coolant the engine overheats within minutes.
    .bad = Under the mark, wet, a hose soft, cracked or rubbing.
    .full = At the mark, dry
    .old-stain = Old stain, level unchanged
    .low = Low, wet or cracked

point-motor-mounts = Motor mounts, bolts, paint marks
    .good = All { $mounts } mounts firm and uncracked, bolts in, paint marks in line.
    .why = Shaking loosens bolts, and the propeller hangs on these.
    .bad = A mark out of line, a crack, a bolt loose or missing.
    .aligned = Firm, marks in line
    .faded = Firm, mark worn off
    .turned = Turned, cracked or missing

point-motor-windings = Motor windings and bearings
    .good = Even colour, clean; turned by hand it runs silent and without play.
    .why = Burnt windings or dry bearings stop it, and get hot first.
    .bad = Dark or smelling windings, metal dust, a scrape, play.
    .turns = Clean, turns silently
    .dusty = Dusty, turns silently
    .scrapes = Scrapes, dark or smells

point-motor-cables = Motor cables and connectors
    .good = Each pushed home and locked, skin whole, plastic in its own colour.
    .why = One poor joint of the three makes the motor stutter and stop.
    .bad = Loose, brown or melted, rubbing, or near the propeller.
    .home = Home, colour unchanged
    .tinted = Home, slightly tinted
    .loose = Loose, melted or rubbing

point-motor-controller = Speed controller and its cooling
    .good = Firm, dry, its cooling clear, no dark spot.
    .why = It meters all the power; hot or wet, it cuts out.
    .bad = Wet, loose, swollen, burnt, or its cooling blocked.
    .dry = Firm, dry and clear
    .dusty = Dusty, firm and dry
    .wet = Wet, burnt or blocked

## Throttle and kill switch

point-throttle-return = Throttle lever, let go
    .good = Squeezed home and let go, it springs right back; cruise lock released.
    .why = A throttle that sticks open drives you where you do not want to go.
    .bad = Slow, gritty or sticking, in any position of your arm.
    .springs-back = Springs right back
    .slow = Slow, but right back
    .sticks = Sticks or stays open

point-throttle-free-travel = Throttle free travel
    .good = A little slack at the cable before the carburettor opens.
    .why = With no slack, moving your arm opens the throttle by itself.
    .bad = Without slack, or so much of it that full throttle is lost.

point-control-leads = Kill switch, cable and wires
    .good = Button free and whole; every lead tied clear of the propeller, skin whole.
    .why = A broken wire leaves you unable to stop the propeller.
    .bad = A button that sticks, a kink, a bare wire, a lead the propeller can reach.
    .whole = Whole and tied clear
    .rubbed = Rubbed, skin whole
    .bare = Bare, kinked, sticking, hanging

## Propeller and cage

point-propeller-hub = Propeller hub and bolts
    .good = All { $bolts } bolts in, marks in line, hub uncracked and without play.
    .why = One loose bolt breaks the others, and the propeller leaves.
    .bad = A mark out of line, a bolt missing, a crack, rubbed-off dust, or play.
    .firm = Firm, marks in line
    .faded = Firm, mark worn off
    .loose = Play, cracked, turned, missing

point-propeller-edges = Leading edges and tips
    .good = Every blade smooth and whole from hub to tip.
    .why = A nick grows to a crack, and uneven blades shake the machine apart.
    .bad = A nick that catches your nail, a split, lifted edge tape, a piece gone.
    .smooth = Smooth and whole
    .scuffed = Scuffed, nail glides over
    .nicked = Nicked, split or lifted

point-propeller-faces = Blade faces, front and back
    .good = Even and hard from hub to tip, both sides.
    .why = A cracked blade is thrown, and nothing stops it.
    .bad = A crack, a bubble, a soft or dull-sounding place.
    .even = Even, free of cracks
    .scratched = Scratch in the surface only
    .cracked = Cracked, bubbled or soft

point-propeller-tracking = Tip tracking, blade against blade
    .good = Turned slowly by hand, every tip passes the same spot on the cage.
    .why = Tips on different paths tell of a bent hub, blade or shaft.
    .bad = The tips pass apart, further than the band allows.

point-cage-hoop = Cage hoops, spokes and joints
    .good = Round, joints closed and locked, well clear of the blades all round.
    .why = It keeps hands, lines and propeller apart.
    .bad = Cracked or bent, a joint open, or so close that blades may touch.
    .round = Round, joints locked
    .bent = Slight bend, blades clear
    .close = Cracked, open or close

point-cage-net = Netting, every string
    .good = Tight all over, each string and knot whole.
    .why = A hand or a brake handle goes through the hole that is left.
    .bad = A broken string, a hole, or slack that reaches the blades.
    .tight = Tight, strings whole
    .slack = A little slack, strings whole
    .torn = Hole, or string broken

## Wing, lines, risers

point-lines-free = Lines, free from cloth to riser
    .good = Each line group runs free; risers untwisted, brake lines on the outside.
    .why = One caught line can turn the wing into the ground.
    .bad = A knot, twist or twig, or a line looped round a tip.
    .free = Free from end to end
    .caught = Knot, twist, twig or loop

point-risers-links = Risers and line links
    .good = Webbing and stitching whole, every link shut tight.
    .why = All your lines end on these few links.
    .bad = Cut webbing, a pulled stitch, a link open, cracked or rusty.
    .shut = Whole, links shut
    .fluffed = Fluffed edge, links shut
    .open = Cut, or a link open

point-canopy = Canopy cloth and cell openings
    .good = Cloth and seams whole and dry, every cell open and empty.
    .why = A tear runs on, and a wet or blocked cell opens last.
    .bad = A tear, an open seam, soaked cloth, sand, snow or grass in a cell.
    .whole = Whole, dry, cells empty
    .pinhole = Pinhole, or slightly damp
    .torn = Torn, soaked or filled

point-line-sheaths = Line sheaths and end loops
    .good = Sheath whole, end loops stitched, no stiff or thin place.
    .why = A line breaks first where its core shows.
    .bad = Core showing, a thin, stiff or burnt place, a pulled stitch.
    .whole = Whole from end to end
    .furry = Furry, core covered
    .core = Core showing, thin, stiff

point-trimmers = Trimmers and speed system
    .good = Trimmers both at the wing manual's launch mark; speed lines, if any, free.
    .why = Uneven trimmers turn you from the first step.
    .bad = Unequal, slipping, worn at the buckle, or a speed line caught.
    .same-mark = Same mark, buckles grip
    .worn = Same mark, webbing worn
    .uneven = Uneven, slipping or caught
    .without = Wing without trimmers

point-brakes = Brake knots, pulleys and handles
    .good = Knots firm, lines run free in the pulleys, handles held on the risers.
    .why = You steer and land with these; a loose handle meets the propeller.
    .bad = A slipping knot, a frayed line, a stiff pulley, a holder that lets go.
    .firm = Knots firm, pulleys run
    .furry = Furry line, knots firm
    .slips = Slips, frayed, stuck, hanging

## You, and the run-up

point-helmet = Helmet, ears and radio
    .good = Helmet whole and buckled, ears protected; radio, if you carry one, heard.
    .why = Unbuckled, it is gone before your head meets anything.
    .bad = Chin strap open or slack, shell cracked, radio silent.
    .radio-heard = Buckled, radio heard
    .without-radio = Buckled, flying without radio
    .radio-silent = Buckled, radio silent
    .open = Unbuckled, slack or cracked

point-loose-ends = Clothing, pockets and loose ends
    .good = Boots and gloves on, pockets shut, every cord and strap end tied away.
    .why = The propeller draws in whatever can reach it.
    .bad = A scarf, cord, camera or strap hanging free; bare hands, low shoes.
    .tied = Dressed, pockets shut, ends tied
    .thin = Tied, thin for today
    .loose = Hanging, open or bare

point-plug-cap-on = Spark plug cap, back on
    .good = Pushed fully home on every plug, retainer closed; it holds a firm pull.
    .why = Half on, it shakes off in the climb.
    .bad = Half on, retainer open, or it lifts when pulled.
    .home = Home, holds a pull
    .lifts = Half on, or lifts

point-battery-joined = Battery joined, display read
    .good = Connector home and locked, display clear of warnings, throttle at zero.
    .why = The display may name a weak cell before you can feel it.
    .bad = A connector half in, a warning, or a motor that twitches.
    .home = Locked, display clear
    .notice = Locked, a notice shows
    .alarm = Warning, half in, or twitches

point-stance = Your stance, and what holds it
    .good = On your back, leg and chest straps closed, feet braced; or tied fast.
    .why = At full throttle it pulls hard enough to throw you over.
    .bad = Held by hand, propped on the ground, or a strap still open.
    .worn = Worn, straps closed, feet braced
    .tied = Tied to something that holds
    .by-hand = Hand-held, propped or open

point-area-clear = Room around and behind you
    .good = Nobody beside or behind; no loose stones; wing unhooked, out of the blast.
    .why = Broken blades fly sideways, stones and lines fly into the propeller.
    .bad = People, animals, loose things or the wing within reach of propeller or blast.
    .clear = Clear on every side
    .near = Someone or something near

point-kill-stops-engine = Kill switch, engine idling
    .good = Pressed at idle, before any full throttle: the engine dies at once.
    .why = It is your quickest way to stop the propeller.
    .bad = The engine runs on, or stops only at the second press.
    .dies = Engine dies at once
    .runs-on = Runs on, or hesitates

point-kill-stops-motor = Kill switch, motor turning slowly
    .good = Pressed at low speed, before any full power: the drive cuts at once.
    .why = It is your quickest way to stop the propeller.
    .bad = It goes on driving, or cuts only at the second press.
    .stops = Drive cuts at once
    .turns-on = Drives on, or hesitates

point-clutch-idle = Propeller while the engine idles
    .good = Stands still, or is barely nudged, with the clutch let go.
    .why = A clutch that drags drives the propeller while you think it rests.
    .bad = Driven round at idle.
    .still = Stands still
    .creeps = Creeps now and then
    .driven = Driven round

point-idle-speed = Idle speed, engine warm
    .good = Hands off the throttle: turns a minute (rpm) steady, inside the band.
    .why = An idle that climbs or wanders may be an air leak: heat follows.
    .bad = So low that it may die in the air, or so high that it pushes you.

point-full-throttle-speed = Full-throttle speed, standing
    .good = Full throttle for a few seconds: turns a minute (rpm) inside the band.
    .why = Low: lost thrust. High: a lean mixture, or a drive that slips.
    .bad = Slower or faster than the band, or rising and falling by itself.

point-full-power-speed = Full-power speed, standing
    .good = Full power for a few seconds: turns a minute (rpm) inside the band.
    .why = Low: lost thrust, or a tired battery. High: the propeller grips less.
    .bad = Slower or faster than the band, or rising and falling by itself.

point-sound-shake = Sound and shake, every speed
    .good = Smooth from low to full; let go, it falls straight back.
    .why = A new shake, or a note that hangs on, is a fault's first word.
    .bad = A knock, a new shake, or speed that hangs on after you let go.
    .smooth = Smooth, falls straight back
    .buzz = New buzz or tremor
    .rough = Knocks, shakes or hangs on

point-after-running = Under the engine, after running
    .good = Engine stopped: dry underneath, nothing loose, nothing missing.
    .why = Heat and pressure open leaks that stay shut when cold.
    .bad = A drip, a fresh wet line, a part that has moved or gone.
    .dry = Dry, all in place
    .damp = Thin damp film
    .drips = Drips, moved or missing

point-after-running-motor = Motor and battery, after running
    .good = Stopped: no smell, no smoke, temperatures on the display as usual.
    .why = Heat that is new today is a fault that has begun.
    .bad = A burnt smell, smoke, swelling, or much hotter than usual.
    .as-usual = As usual, free of smell
    .warmer = Warmer than usual
    .smells = Smells, smokes or swells

point-carabiner-gates-again = Risers hooked in, gates again
    .good = Left riser left, right riser right, untwisted; touch each gate: shut, locked.
    .why = A riser half in its carabiner holds on the ground and lets go in the air.
    .bad = A twist, a riser on the gate, a lock that has not gone home.
    .both-in = Both in, both locked
    .not-shut = Twisted, or a gate open

point-leg-straps-again = Leg straps, once more
    .good = Touch and pull left, then right: both closed on you.
    .why = Opened for a moment and forgotten, they drop you out of the seat.
    .bad = One open, half latched, or hanging slack.
    .both-closed = Left and right closed
    .open = One open or slack

point-walk-complete = This walk, first to last
    .good = You stood at every place and looked at every point yourself.
    .why = A list broken off half way feels complete.
    .bad = A point guessed, skipped, or lost to a call or a talk.
    .every-point = Every point looked at
    .left-out = Something guessed or left out
