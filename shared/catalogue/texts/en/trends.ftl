# What the readings of a machine's measures tell, in plain words. Values come with their unit.

## Readings

# In place of a unit.
trend-unit-eighths = eighths of a turn
trend-eighths = { $n ->
    [one] one eighth of a turn
   *[other] { $n } eighths of a turn
  }
trend-point = { $value }, { $day }
trend-point-standard = { $value } on a standard day, { $raw } on the gauge, { $day }

## Too little to say

trend-few = Too little to say: { $n ->
    [0] no reading is there
    [one] one reading is there
   *[other] { $n } readings are there
  }, and a trend needs { $needs }: { $more ->
    [one] one more.
   *[other] { $more } more.
  }
trend-one-moment = Too little to say: all { $n } readings were taken at the same engine hours. It takes readings at other hours.
trend-all-same = Too little to say: all { $n } readings are the same, { $value }. It may be steady, but a sensor at its stop looks like this, too: another instrument tells which.
trend-same-grade = Too little to say: all { $n } looks found the same, “{ $value }”. It takes a look that finds something else.
trend-no-interval = Too little to say: so many of the { $n } readings share their hours or their value that nothing sure can be told. It takes readings at other hours.
trend-beyond = Too little to say: some of these numbers are too large or too small to reckon with. Look for a slip in the units.

## Which way, how steep, how sure

# $heads: toward the limit, away from it, or nowhere.
trend-goes = It { $way ->
    [rising] rises
   *[falling] falls
  }{ $heads ->
    [toward] {" "}toward its limit
    [away] {" "}away from its limit
   *[nowhere] {""}
  } by about { $per } in 100 engine hours (between { $low } and { $high }).
trend-goes-slightly = It { $way ->
    [rising] rises
   *[falling] falls
  }{ $heads ->
    [toward] {" "}toward its limit
    [away] {" "}away from its limit
   *[nowhere] {""}
  }, but by less in 100 engine hours than its readings can show.
trend-grade-goes = It gets { $way ->
    [rising] worse
   *[falling] better
  } from look to look. The latest found “{ $latest }”.
trend-rests = This rests on { $n } readings from { $from } to { $to } engine hours. Chance alone makes such a trend less than once in { $one_in } times.
trend-neither = No trend in { $n } readings: chance alone moves them as much. Over these { $span } engine hours it may have changed by anything between { $low } and { $high }.
trend-neither-flat = No trend in { $n } readings: chance alone moves them as much.
trend-grade-neither = No trend in { $n } looks: chance alone gives such a run of better and worse as well.

## The limit

trend-reaches = At that rate it reaches the limit, { $limit }, at { $low } engine hours at the earliest{ $left ->
    [0] : that is now
   *[other] : in { $left } h
  }. Act on that. The middle of the line gets there at { $at }, the flattest it may be at { $high }. Wear often comes faster than a straight line.
trend-reaches-or-never = At that rate it reaches the limit, { $limit }, at { $low } engine hours at the earliest{ $left ->
    [0] : that is now
   *[other] : in { $left } h
  }. Act on that. The middle of the line gets there at { $at }, the flattest it may be never. Wear often comes faster than a straight line.
trend-there = The line has reached the limit, { $limit }: act now.
trend-past = The latest reading, { $value }, is { $of ->
    [limit] past the limit
   *[band] outside the band
  }, { $bound }.
trend-past-before = { $n ->
    [one] One earlier reading was
   *[other] { $n } earlier readings were
  } { $of ->
    [limit] past the limit
   *[band] outside the band
  }, { $bound }; the last of them, { $value }, at { $hours } engine hours.
trend-standard-day = All values are as they would have been on a day of { $day }, so that seasons compare. The limit means what the gauge shows: hold the gauge against it, not this line.
trend-band-unconfirmed = The band, { $band }, is unconfirmed: your manual's value counts.
trend-limit-missing = There is no limit to hold it against. Enter your manual's value and page on the machine's screen.

## A step

trend-step = It looks more like a step than a slope: about { $old } up to { $after } engine hours, about { $new } from { $at } on.
trend-step-done = What was done in between: { $done }.
trend-step-foretells = After a step, the line foretells little: watch the next readings.

## What else to know of the readings

trend-far-off = { $n ->
    [one] One reading lies far off the line. It is shown and counts: look at what was different that day.
   *[other] { $n } readings lie far off the line. They are shown and count: look at what was different on those days.
  }
trend-weather-standard = All values are as they would have been on a day of { $day }, so that seasons compare.
trend-weather-partly = Some logs don't say how warm it was outside. So that all compare, all are drawn as the gauge showed them, not as on a day of { $day }.
trend-weather-unknown = Drawn as the gauge showed it: no log says how warm it was outside. A hot day alone makes a higher reading.
trend-left-out = { $n ->
    [one] One reading is
   *[other] { $n } readings are
  } left out: in a unit of another kind, or at no engine hours.

## Plots as files

plot-hours = engine hours
plot-about = { $machine }, { $n ->
    [one] one reading at { $from } engine hours
   *[other] { $n } readings from { $from } to { $to } engine hours
  }
plot-reading = reading
plot-far-off = reading far off the line
plot-line = trend
plot-interval = what it may be (95 %)
plot-level = middle value before and after a step
plot-band = band
plot-limit = limit
plot-limit-at = limit { $value }
plot-earliest = limit reached at the earliest
plot-work = work done
plot-done = { $n }: { $words }, { $hours } h
plot-done-earlier = { $n ->
    [one] One earlier mark isn't named.
   *[other] { $n } earlier marks aren't named.
  }
plot-band-source = { $band }. { $source }
plot-life-hours = hours in service
plot-life-share = still serviceable
plot-life-steps = by the findings alone
plot-life-fitted = Weibull
plot-life-interval = what it may be (95 %)
plot-life-failed = found failed; the line goes back to where it was last seen whole
plot-life-whole = last seen whole

fault-plot-ending = A plot can be an SVG or a PNG, and “{ $file }” is neither.
    .hint = Give a file name that ends in .svg or .png.
fault-plot-nothing = There is no reading to draw.
    .hint = Take readings first: by a walk round, after work, or out of an engine's log.
