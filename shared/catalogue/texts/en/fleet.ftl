# What a fleet's looks tell: how long components last, how people look, what points are worth.

## How long components last: what it rests on

life-rests-on = This rests on { $machines ->
    [one] one machine
   *[other] { $machines } machines
  } and { $lives ->
    [one] one life
   *[other] { $lives } lives
  }: { $failed ->
    [0] none was found unserviceable
    [one] one was found unserviceable
   *[other] { $failed } were found unserviceable
  }{ $whole ->
    [0] .
    [one] , one was in order when it was last seen.
   *[other] , { $whole } were in order when they were last seen.
  }
life-rests-on-nothing = This rests on nothing yet: { $machines ->
    [0] no machine here has one that was looked at
    [one] one machine was looked at, and hasn't run since
   *[other] { $machines } machines were looked at, and haven't run since
  }.

## Too little to say

life-too-few = Too little to say: { $has ->
    [0] nothing was seen
    [one] one was found unserviceable
   *[other] { $has } were found unserviceable
  }, and it takes { $needs }: { $more ->
    [one] one more.
   *[other] { $more } more.
  }
life-nothing-failed = Too little to say: none of { $has ->
    [one] the one
   *[other] the { $has }
  } seen was found unserviceable yet. How long they last shows only when some fail.
life-any-spread = Too little to say: these findings would fit lives that are nearly all the same, and lives that differ without end. It takes failures found at other ages, and looks that lie closer together.

## How often to look

life-shortens = Look at least every { $every } h: the chance that one fails unseen between two looks then stays under { $percent } %, even at { $age } h. That is less than the { $in_force } h in force.
life-in-force-holds = The { $in_force } h in force keep the chance that one fails unseen between two looks under { $percent } %, even at { $age } h.
life-suggests = Looking every { $every } h would keep the chance that one fails unseen between two looks under { $percent } %, even at { $age } h.
life-every-flight = Look before every flight: at { $age } h not even an interval of one hour keeps the chance that one fails unseen under { $percent } %. Think of changing it before it is that old.
life-at-half = At { $age } h it would be { $every } h.
life-never-longer = What is in force stays: nothing from here ever lengthens it.
life-stays = The { $in_force } h in force stay as they are.
life-nothing-in-force = No interval is in force for it here, so this can only suggest. What is in force your school publishes, and the maker's manual says.
life-none-in-force = No interval is in force for it here: the maker's manual says how often to look.
life-publish = It comes into force when an instructor publishes it.
life-chance-ours = { $percent } % is our choice: no school has set the chance that it bears.

## How they last

life-lasts = At { $hours } h about { $percent } of 100 are still serviceable; these findings allow { $low } to { $high }.
life-wears = They fail more often the older they are: they wear.
life-early = They fail less often the older they are: that speaks of fitting or material, not of wear. Looking more often at the old ones finds little.
life-any-age = Whether they fail more often with age these findings don't show.
life-few = It rests on { $failed } failures only. One more can change it much.

## What to bear in mind

life-put-right = Put right counts as new, whether it was repaired or changed.
life-unregistered = One that nobody registered counts as old as its machine.
life-came-old = { $n ->
    [one] One was
   *[other] { $n } were
  } first seen here after more than 10 h, and taken as in order until then. Those like it that failed before anybody here looked are missing: early failures may be more frequent than this shows.
life-never-ran = { $n ->
    [one] One was
   *[other] { $n } were
  } found unserviceable before running at all. That is no wear, and isn't counted.
life-of-no-age = { $n ->
    [one] One look
   *[other] { $n } looks
  } at a component of which nobody knows the age { $n ->
    [one] is
   *[other] are
  } left out: what stood there before was taken off, and its successor never registered.
life-invented = All of this is the demonstration's: invented machines, invented findings.
life-caution = This is about this fleet's parts, as they were flown and looked at here. The maker's manual comes first; where it asks for more, that holds.

## How the intervals were made

life-interval-turnbull = Steps: Turnbull's curve, with no form of life assumed. Its interval of 95 % comes from drawing the same findings anew { $times } times, and is nowhere narrower than so few can tell.
life-interval-weibull = Line: a Weibull's curve. Its interval of 95 % is that of its profile likelihood.

## Faults

fault-life-no-looks = No look at any component is here yet.
    .hint = Walk round a machine and sign, or take records in; then ask again.
fault-life-no-such = There is no component “{ $what }” among those that were looked at.
    .hint = These are: { $known }.
fault-life-chance = The chance that is borne must be more than 0 and less than 1.
    .hint = Give 0.02 for one in fifty.
fault-life-in-force = The interval in force must be more than 0 hours.
    .hint = Give hours, such as 25, or leave it out.
fault-life-out-of-reach = The hours in these records lie too far apart to reckon with.
    .hint = Look for a slip in a machine's engine hours, and put it right there.

## How people look

looking-hurried-point = { $point } ({ $times ->
    [one] once
   *[other] { $times } times
  })
looking-hurries = Hurries more points than the others do: { $own } % against { $others } % on the same points, of { $looks } looks.
looking-hurries-where = Walk those points together once, slowly.
looking-quick = Is quicker than the others: about { $own } s a point against { $others } s on the same points, of { $looks } looks. Watch one walk: it may be practice, or it may be the screen that is answered and not the machine.
looking-finds-less = Finds less than the others: { $own } in 100 looks against { $others } on the same points, of { $looks } looks. The machines may be in better order; walk round one together and compare what each of you sees.
looking-finds-more = Finds more than the others: { $own } in 100 looks against { $others } on the same points, of { $looks } looks. The machines may be in worse order, or this is an eye that others can learn from.
looking-caution = This shows where help may be welcome. It is no ranking: quick isn't careless, and slow isn't thorough. Each is compared with the others on the same points, those that few others look at left out. A thing found counts once while it stays open. Something is said only from 100 looks on, and only where chance alone would do it less than once in a hundred times. Machines differ: who flies a worn one finds more.
looking-invented = The people and the machines here are the demonstration's, invented.

## What points are worth

worth-few = Looked at { $looks ->
    [one] once
   *[other] { $looks } times
  }: too few to say anything; it takes 30.
worth-never = Never found wrong in { $looks } looks: at most { $percent } in 100 looks would find something (rule of three, 95 %).
worth-never-must = It stays: what is rare and grave is what a list is for.
worth-never-may = That is no reason to drop it. Ask whether its words show what to look for.
worth-often = Found wrong in { $percent } of 100 looks, on { $machines } machines. Look for the cause, and let it come early in the walk.
worth-plain = Found wrong { $found ->
    [one] once
   *[other] { $found } times
  } in { $looks } looks: in { $low } to { $high } of 100, with 95 %.
worth-caution = What was found at each point of the lists, over all machines here. A thing found counts once while it stays open. It says what was found, not what was there; and nothing of how grave it would have been. Intervals take looks to be independent of each other, which looks at one and the same machine are not quite: they are rather too narrow.
