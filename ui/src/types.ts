// Generated from the Rust types by `make types`; do not edit.

/**
 * Anything between the wrench's square and the fastener that makes the lever longer or shorter.
 */
export type Adapter = { 
/**
 * From the handle's mark to the square drive.
 */
lever: Quantity, 
/**
 * From the square drive to the fastener.
 */
adapter: Quantity, 
/**
 * Between the two: 0 in line, lengthening; 90 changes nothing.
 */
angle_deg: number, };

/**
 * The air at the field.
 */
export type AirPlanned = { 
/**
 * Its pressure.
 */
pressure: Pressure, 
/**
 * Its temperature.
 */
temperature: Quantity, 
/**
 * Its dew point, where that is known.
 */
dew_point?: Quantity, 
/**
 * When, where that was before the plan was worked out anew.
 */
measured?: string, };

/**
 * An answer.
 */
export type AnswerView = { 
/**
 * Its id.
 */
id: string, 
/**
 * What is seen.
 */
words: string, 
/**
 * What it means.
 */
means: Meaning, };

/**
 * Somebody who asks to be admitted.
 */
export type ApplicantView = { 
/**
 * What to give back to admit them.
 */
text: string, 
/**
 * What they are called.
 */
name: string, 
/**
 * What they read out.
 */
code: string, 
/**
 * Whether they are a member already.
 */
member: boolean, };

/**
 * How a point is answered.
 */
export type AskView = { "by": "words", 
/**
 * In the author's order.
 */
answers: Array<AnswerView>, } | { "by": "value" } & ValueAsk | { "by": "torque" } & TorqueAsk;

/**
 * The state of a school's machines, for an instructor.
 */
export type Board = { 
/**
 * The school; none where this device belongs to none.
 */
school: SchoolBrief | null, 
/**
 * Every machine under it (all machines where there is no school), those that need a person first.
 */
rows: Array<BoardRow>, 
/**
 * Members and their machines.
 */
people: Array<BoardPerson>, 
/**
 * Work that waits for a second pair of eyes.
 */
second: Array<BoardSecond>, 
/**
 * Records in the log when this was made.
 */
size: number, };

/**
 * A member on the board.
 */
export type BoardPerson = { 
/**
 * The person.
 */
person: string, 
/**
 * What they are called.
 */
name: string, 
/**
 * As what.
 */
role: Role, 
/**
 * The role's name.
 */
role_words: string, 
/**
 * Their machines' names.
 */
machines: Array<string>, };

/**
 * One machine on the board.
 */
export type BoardRow = { 
/**
 * The machine and its verdict.
 */
card: MachineCard, 
/**
 * Whose it is.
 */
owner: string, 
/**
 * The owner, for filters.
 */
person: string, 
/**
 * Who signed the last look, and when; in words.
 */
looked: string, 
/**
 * When, RFC 3339, for sorting.
 */
looked_at: string | null, 
/**
 * What falls due next.
 */
due: DueView | null, 
/**
 * Open defects.
 */
defects: Array<OpenView>, 
/**
 * What is watched.
 */
watched: Array<OpenView>, 
/**
 * Defects that may wait, each in a sentence.
 */
deferred: Array<string>, 
/**
 * Work not released.
 */
job: string | null, 
/**
 * What needs a person first, in a few words.
 */
first: string, };

/**
 * Work that waits for a second pair of eyes.
 */
export type BoardSecond = { 
/**
 * The machine.
 */
machine: string, 
/**
 * What people call it.
 */
name: string, 
/**
 * The work.
 */
title: string, 
/**
 * Who did it.
 */
by: string, };

/**
 * What one flight burned.
 */
export type Burn = Burned | Quantity;

/**
 * Fuel used in a flight.
 */
export type Burned = { 
/**
 * Volume.
 */
used: Quantity, 
/**
 * Engine time.
 */
time: Quantity, };

/**
 * What a column holds.
 */
export type Channel = "cht" | "egt" | "speed" | "outside";

/**
 * What a machine can be made of.
 */
export type Choices = { 
/**
 * The engine types there are.
 */
engines: Array<EngineType>, };

/**
 * A code to be shown to another phone.
 */
export type CodeOut = { 
/**
 * The text in it.
 */
text: string, 
/**
 * The code as SVG, where it fits one.
 */
svg: string | null, };

/**
 * One column that is read.
 */
export type Column = { 
/**
 * Its heading in the file.
 */
heading: string, 
/**
 * What it holds.
 */
channel: Channel, 
/**
 * In which unit.
 */
unit: Unit, };

/**
 * A component with its own time in service.
 */
export type ComponentView = { 
/**
 * Its id.
 */
id: string, 
/**
 * The part it is.
 */
part: string, 
/**
 * The part in words.
 */
part_words: string, 
/**
 * What people call it.
 */
name: string, 
/**
 * Its serial number.
 */
serial: string, 
/**
 * Whether it is on this machine now.
 */
fitted: boolean, 
/**
 * Its own time in service.
 */
own: Service, 
/**
 * That in a sentence.
 */
words: string, 
/**
 * The record it rests on.
 */
record: string, };

/**
 * Something that a board asks this device to sign.
 */
export type DeskView = { 
/**
 * `sign-in` or `draft`.
 */
kind: string, 
/**
 * The school.
 */
school: string, 
/**
 * The server's address.
 */
address: string, 
/**
 * What will be signed, in a sentence.
 */
words: string, 
/**
 * The machine it is about.
 */
machine: string | null, 
/**
 * What will be signed, as a record's body.
 */
body: string, 
/**
 * What would then be the verdict on the machine.
 */
preview: VerdictView | null, };

/**
 * Something that falls due again and again, as a form has it.
 */
export type DueForm = { 
/**
 * Its id; empty for a new one.
 */
id: string, 
/**
 * What is due.
 */
title: string, 
/**
 * How often; whichever comes first.
 */
every: Interval, 
/**
 * How much later is still tolerated, percent of the interval.
 */
tolerance_percent: number, 
/**
 * Whether the next counts from when it was due rather than from when it was done.
 */
from_due: boolean, 
/**
 * When it was last done: engine hours then.
 */
done_hours: number, 
/**
 * Flights then.
 */
done_flights: number, 
/**
 * The day.
 */
done_on: string, };

/**
 * Something that falls due.
 */
export type DueView = { 
/**
 * Its id; empty for what a job made due.
 */
id: string, 
/**
 * What is due.
 */
title: string, 
/**
 * How it stands (`later`, `soon`, `tolerated`, `over`).
 */
standing: Standing, 
/**
 * What is left, in a sentence.
 */
left: string, 
/**
 * When, at this rate of flying, in a sentence; none where there is too little to say.
 */
forecast: string | null, 
/**
 * The record it rests on.
 */
record: string, 
/**
 * The item as kept, for changing it; none for what a job made due.
 */
kept: DueForm | null, };

/**
 * What drives the propeller.
 */
export type EngineKind = "two-stroke" | "four-stroke" | "electric";

/**
 * An engine type.
 */
export type EngineType = { 
/**
 * Its id.
 */
id: string, 
/**
 * Its name.
 */
name: string, 
/**
 * What drives the propeller.
 */
kind: EngineKind, 
/**
 * The kind in words.
 */
words: string, 
/**
 * Whether it exists only in the demonstration.
 */
invented: boolean, 
/**
 * The parts of a machine with this engine; each may have a serial number.
 */
parts: Array<PartView>, };

/**
 * A machine and its school.
 */
export type EnrolledView = { 
/**
 * Its id.
 */
id: string, 
/**
 * What people call it.
 */
name: string, 
/**
 * Whether it is under the school.
 */
enrolled: boolean, 
/**
 * Whether this person registered it.
 */
own: boolean, };

/**
 * A fact behind a reason.
 */
export type FactView = { 
/**
 * What is so.
 */
words: string, 
/**
 * The record that says so.
 */
record: string | null, };

/**
 * The same in the person's language.
 */
export type FaultView = { 
/**
 * For programs.
 */
kind: string, 
/**
 * What went wrong.
 */
message: string, 
/**
 * What to do.
 */
hint: string, };

/**
 * A file to give to somebody, of any kind.
 */
export type FileBytes = { 
/**
 * Its name.
 */
name: string, 
/**
 * Its media type.
 */
media: string, 
/**
 * Its bytes, base64.
 */
data: string, };

/**
 * A file to give to somebody.
 */
export type FileOut = { 
/**
 * Its name.
 */
name: string, 
/**
 * Its text.
 */
text: string, };

/**
 * A finding laid open.
 */
export type FindingView = { 
/**
 * The point.
 */
point: string, 
/**
 * Where it lies.
 */
station: string, 
/**
 * What was to be looked at.
 */
title: string, 
/**
 * What was seen.
 */
words: string, 
/**
 * What it means.
 */
means: Meaning, 
/**
 * The band it was held against.
 */
band: string | null, 
/**
 * What the inspector added.
 */
note: string, 
/**
 * Pictures, by digest.
 */
photos: Array<string>, 
/**
 * How long it was looked at, seconds.
 */
seconds: number, 
/**
 * Answers taken back, in words.
 */
before: Array<string>, 
/**
 * Corrections signed later, in sentences.
 */
corrections: Array<string>, 
/**
 * What a correction may say instead.
 */
choices: Array<AnswerView>, };

/**
 * What is wrong in one part of a plan.
 */
export type FlightFaultView = { 
/**
 * `load`, `mix`, `fuel`, `air` or `wind`.
 */
part: string, 
/**
 * What is wrong and what to do.
 */
words: string, };

/**
 * What is asked before a flight, with what is known already.
 */
export type FlightForm = { 
/**
 * The machine.
 */
machine: string, 
/**
 * What people call it.
 */
machine_name: string, 
/**
 * The plan as it stands: today's, or the last one's figures that may still hold (never air or wind).
 */
plan: FlightPlanned, 
/**
 * Whether that is today's.
 */
today: boolean, 
/**
 * What the person stated last, for those parts that the plan doesn't have yet.
 */
own: FlightOwn, 
/**
 * What the wing may carry, by the machine's description.
 */
wing: WingLoad | null, 
/**
 * What the machine weighs, by its description.
 */
weight: Quantity | null, 
/**
 * Whether its engine burns a mix of petrol and oil.
 */
mixes: boolean, 
/**
 * Whether its engine burns fuel at all.
 */
burns_fuel: boolean, 
/**
 * Parts of petrol to one of oil by the data sheet, in words with its source; none where it has none.
 */
ratio_words: string | null, 
/**
 * The number in that.
 */
ratio: number | null, 
/**
 * What the latest flights burned.
 */
burns: Array<Burn>, 
/**
 * That in a sentence, or that there is too little to say.
 */
burns_words: string, 
/**
 * The school's wind limits, where one has set any.
 */
school_wind: WindLimits | null, 
/**
 * Units of each kind, the person's own first; of fuel also the small one of a measuring cup.
 */
units: UnitLists, };

/**
 * What is gravest in a plan: what can't be reckoned goes before what is past a limit.
 */
export type FlightGravest = { 
/**
 * What it makes of the machine.
 */
state: State, 
/**
 * In words.
 */
words: string, };

/**
 * What a person stated when they prepared a flight last, on whatever machine.
 */
export type FlightOwn = { 
/**
 * Their weight as dressed for flying.
 */
pilot: Quantity | null, 
/**
 * Ballast.
 */
ballast: Quantity | null, 
/**
 * Fuel at take-off.
 */
fuel: Quantity | null, 
/**
 * What must be left at landing.
 */
reserve: FuelReserve | null, 
/**
 * Parts of petrol to one of oil.
 */
ratio: number | null, 
/**
 * Wind limits that they set.
 */
wind: WindLimits | null, 
/**
 * How high the field lies.
 */
elevation: Quantity | null, };

/**
 * What comes of one part of a plan.
 */
export type FlightPartView = { 
/**
 * `load`, `mix`, `fuel`, `air` or `wind`.
 */
part: string, 
/**
 * As it enters the verdict.
 */
reason: ReasonView, };

/**
 * A flight prepared. Each part is there if it was asked.
 */
export type FlightPlanned = { 
/**
 * When it was worked out: air and wind hold for a few hours.
 */
at: string, 
/**
 * All-up weight.
 */
load?: LoadPlanned, 
/**
 * Petrol and oil.
 */
mix?: MixPlanned, 
/**
 * How long the fuel lasts.
 */
fuel?: FuelPlanned, 
/**
 * The air.
 */
air?: AirPlanned, 
/**
 * The wind.
 */
wind?: WindPlanned, };

/**
 * Oil to pour into the tank.
 */
export type FlightPourView = { 
/**
 * How much.
 */
oil: Quantity, 
/**
 * That, as a person reads it.
 */
words: string, };

/**
 * What comes of a plan.
 */
export type FlightView = { 
/**
 * What comes of each part that was asked.
 */
parts: Array<FlightPartView>, 
/**
 * What to pour into the tank, by itself, to be shown large; none unless a mix can be made of it.
 */
pour: FlightPourView | null, 
/**
 * What is wrong in a part, where something is.
 */
faults: Array<FlightFaultView>, 
/**
 * What is gravest in it; none where all is well.
 */
gravest: FlightGravest | null, 
/**
 * The verdict with this plan.
 */
verdict: VerdictView, };

/**
 * A finding in short.
 */
export type FoundView = { 
/**
 * The point.
 */
id: string, 
/**
 * What was to be looked at.
 */
title: string, 
/**
 * What was seen.
 */
words: string, 
/**
 * What it means.
 */
means: Meaning, };

/**
 * Fuel against the time to be flown.
 */
export type FuelPlanned = { 
/**
 * In the tank at launch.
 */
on_board: Quantity, 
/**
 * What earlier flights burned.
 */
burns: Array<Burn>, 
/**
 * What must be left at landing.
 */
reserve: FuelReserve, 
/**
 * How long the flight is meant to last.
 */
flight_time: Quantity, };

/**
 * What must be left at landing: a volume, or a time at the burn.
 */
export type FuelReserve = Quantity;

/**
 * What a person answered.
 */
export type Given = { 
/**
 * Its id.
 */
answer: string, } | { 
/**
 * The value as read.
 */
value: Quantity, } | { 
/**
 * How.
 */
torque: TorqueDone, };

/**
 * An answer given.
 */
export type GivenView = { 
/**
 * As given.
 */
given: Given, 
/**
 * In words.
 */
words: string, 
/**
 * What it means.
 */
means: Meaning, };

/**
 * What a bundle brought.
 */
export type ImportView = { 
/**
 * In a sentence.
 */
words: string, 
/**
 * Records that are new here.
 */
taken: number, 
/**
 * Records that were here.
 */
known: number, 
/**
 * Lines that weren't taken, each with the reason.
 */
refused: Array<string>, };

/**
 * How much may pass; whichever comes first.
 */
export type Interval = { 
/**
 * Engine hours.
 */
hours?: number | null, 
/**
 * Flights.
 */
flights?: number | null, 
/**
 * Tanks of fuel.
 */
tanks?: number | null, 
/**
 * Calendar days.
 */
days?: number | null, };

/**
 * Jobs that can be done on a machine.
 */
export type JobChoice = { 
/**
 * Its id.
 */
id: string, 
/**
 * What people call it.
 */
words: string, 
/**
 * What it is, in one line.
 */
what: string, };

/**
 * What doing some jobs means.
 */
export type JobPlan = { 
/**
 * What comes off, first to last.
 */
take_off: Array<PlanItem>, 
/**
 * The same backwards.
 */
refit: Array<PlanItem>, 
/**
 * What is renewed.
 */
renew: Array<string>, 
/**
 * Tools to count back.
 */
count_tools: Array<string>, 
/**
 * Joints that another person must look at.
 */
independent: Array<string>, 
/**
 * What falls due later.
 */
follow_ups: Array<string>, 
/**
 * Points on the list after the work.
 */
points: number, };

/**
 * A job not released.
 */
export type JobView = { 
/**
 * The record that began it.
 */
record: string, 
/**
 * The jobs in words.
 */
title: string, 
/**
 * When and by whom.
 */
since: string, 
/**
 * What it means.
 */
plan: JobPlan | null, 
/**
 * What it still lacks, in sentences.
 */
lacks: Array<string>, 
/**
 * Whether its list has been signed.
 */
inspected: boolean, 
/**
 * Joints that another person must look at.
 */
independent: Array<Named>, 
/**
 * Whether it may be released.
 */
ready: boolean, };

/**
 * What a second person saw at one joint.
 */
export type JointSeen = { 
/**
 * The joint.
 */
joint: string, 
/**
 * What it means.
 */
means: Meaning, 
/**
 * What was added.
 */
note?: string, };

/**
 * A value held against its band while it is being typed.
 */
export type JudgedView = { 
/**
 * What it means.
 */
means: Meaning, 
/**
 * The value in the band's unit.
 */
value: number, 
/**
 * In a sentence.
 */
words: string, };

/**
 * What was found last time.
 */
export type LastTime = { 
/**
 * In a sentence.
 */
words: string, 
/**
 * Watch or unserviceable.
 */
means: Meaning, 
/**
 * The record that says so.
 */
record: string, };

/**
 * A point that nobody looked at.
 */
export type LeftView = { 
/**
 * Its id.
 */
id: string, 
/**
 * What was to be looked at.
 */
words: string, 
/**
 * Whether that grounds the machine.
 */
must: boolean, };

/**
 * One life.
 */
export type LifeFinding = { 
/**
 * Still whole at so many hours.
 */
after: number, 
/**
 * Found failed at so many.
 */
by: number | null, };

/**
 * A type of component of which lives can be told.
 */
export type LifePart = { 
/**
 * Its id.
 */
id: string, 
/**
 * Its name.
 */
words: string, 
/**
 * Machines whose looks speak of it.
 */
machines: number, 
/**
 * Lives counted.
 */
lives: number, 
/**
 * Of these ended by something unserviceable.
 */
failed: number, 
/**
 * Whether all of it is the demonstration's.
 */
invented: boolean, };

/**
 * A point of the fitted curve.
 */
export type LifePoint = { 
/**
 * Hours.
 */
hours: number, 
/**
 * Share still serviceable.
 */
share: number, 
/**
 * Lower end of its interval of 95 %.
 */
low: number, 
/**
 * Upper end.
 */
high: number, };

/**
 * A step of the survival curve. Between `since` and `hours` it fell from the step before: where, the
 * findings can't say.
 */
export type LifeStep = { 
/**
 * Hours up to which the step before holds.
 */
since: number, 
/**
 * Hours from which this holds.
 */
hours: number, 
/**
 * Share still serviceable.
 */
share: number, 
/**
 * Lower end of its interval of 95 %.
 */
low: number, 
/**
 * Upper end.
 */
high: number, };

/**
 * How long components of one type last.
 */
export type LifeView = { 
/**
 * The type.
 */
part: LifePart, 
/**
 * What it rests on, in a sentence: always there.
 */
rests_on: string, 
/**
 * Share still serviceable over time in service, with no form assumed: steps.
 */
survival: Array<LifeStep>, 
/**
 * The same by a Weibull, with its interval at each age; empty where the findings tell too little.
 */
fitted: Array<LifePoint>, 
/**
 * Findings, for the marks: where each was last seen whole, and first found failed.
 */
findings: Array<LifeFinding>, 
/**
 * What it says, in plain words; or that there is too little to say.
 */
sentences: Array<string>, 
/**
 * The suggested interval between inspections, hours: never more than the one in force.
 */
every: number | null, 
/**
 * Whether that is less than what is in force.
 */
shortens: boolean, 
/**
 * The interval in force, hours.
 */
in_force: number | null, 
/**
 * The chance of an unseen failure that is borne.
 */
chance: number, 
/**
 * How the intervals around the curves were made, in sentences; empty where there are none.
 */
intervals: Array<string>, };

/**
 * A limit of the engine.
 */
export type LimitView = { 
/**
 * The band's name in the data sheet.
 */
band: string, 
/**
 * Its words.
 */
words: string, 
/**
 * The band as a person reads it.
 */
value: string, 
/**
 * Lower end.
 */
low: Quantity | null, 
/**
 * Upper end.
 */
high: Quantity | null, 
/**
 * Which ends the band has: the form asks for these.
 */
has_low: boolean, 
/**
 * See `has_low`.
 */
has_high: boolean, 
/**
 * The sheet's unit, and others of its kind.
 */
units: Array<UnitView>, 
/**
 * Whether a life hangs on it.
 */
critical: boolean, 
/**
 * Whether a document confirms it.
 */
confirmed: boolean, 
/**
 * Where it is written, or that it is unconfirmed and why.
 */
source: string, };

/**
 * What the points of the lists are worth, for their author.
 */
export type ListWorth = { 
/**
 * One row a point.
 */
points: Array<PointWorth>, 
/**
 * What it rests on, and what it doesn't say.
 */
caution: string, };

/**
 * All-up weight and what the wing may carry.
 */
export type LoadPlanned = { 
/**
 * What goes up.
 */
loads: Loads, 
/**
 * The wing's, as the machine's description had it then.
 */
wing: WingLoad, };

/**
 * What goes up.
 */
export type Loads = { 
/**
 * As dressed for flying.
 */
pilot: Quantity, 
/**
 * Frame, engine, propeller, harness, reserve and the wing itself, with no fuel.
 */
machine: Quantity, 
/**
 * Fuel at take-off, by mass or by volume.
 */
fuel: Quantity, 
/**
 * Ballast, and whatever else is carried.
 */
ballast: Quantity, };

/**
 * A column of a log.
 */
export type LogColumn = { 
/**
 * Its heading.
 */
heading: string, 
/**
 * Its first values.
 */
sample: Array<string>, };

/**
 * What a log would tell, read by a mapping.
 */
export type LogPreview = { 
/**
 * Rows read whole.
 */
rows: number, 
/**
 * Rows of which something can't be read; the rest of such a row is used.
 */
unread: number, 
/**
 * The first of those, and why.
 */
first_unread: string | null, 
/**
 * How long it lasts, in words.
 */
lasts: string, 
/**
 * The day it begins, where the file says it.
 */
on: string | null, 
/**
 * How warm it was outside, where the file says it.
 */
outside: Quantity | null, 
/**
 * The figures.
 */
readings: Array<LogReading>, 
/**
 * What else is worth knowing, in sentences.
 */
notes: Array<string>, };

/**
 * A figure out of a log.
 */
export type LogReading = { 
/**
 * Its measure.
 */
measure: string, 
/**
 * Its name.
 */
words: string, 
/**
 * The figure, as a person reads it.
 */
value: string, 
/**
 * What was left out of it, in a sentence.
 */
left_out: string | null, };

/**
 * A way in which time may be written.
 */
export type LogTimeForm = { 
/**
 * Its id.
 */
id: TimeForm, 
/**
 * In words.
 */
words: string, };

/**
 * A log opened, before it is taken in.
 */
export type LogView = { 
/**
 * SHA-256 of its text in UTF-8, without a byte order mark.
 */
file: string, 
/**
 * What it was called.
 */
name: string, 
/**
 * How its columns are to be read: as remembered for these headings, else as guessed.
 */
mapping: Mapping, 
/**
 * Whether that was remembered from an earlier file with the same headings.
 */
remembered: boolean, 
/**
 * What of it rests on the values alone, in sentences: to be looked at before it is confirmed. None
 * where it is remembered.
 */
guesses: Array<string>, 
/**
 * Its columns.
 */
columns: Array<LogColumn>, 
/**
 * What a column may hold.
 */
channels: Array<Named>, 
/**
 * How time may be written.
 */
time_forms: Array<LogTimeForm>, 
/**
 * Units of temperature.
 */
temperatures: Array<UnitView>, 
/**
 * Units of speed.
 */
speeds: Array<UnitView>, 
/**
 * The record by which this very file was taken in before.
 */
taken: string | null, 
/**
 * The machine's engine hours now.
 */
hours: number, };

/**
 * Whether a point needs a look.
 */
export type Look = "open" | "done" | "again" | "left";

/**
 * How one person looks.
 */
export type LookingPerson = { 
/**
 * Their name.
 */
name: string, 
/**
 * Whether that is who asks.
 */
you: boolean, 
/**
 * Inspections signed.
 */
inspections: number, 
/**
 * Points looked at that others look at too: what all comparing rests on.
 */
looks: number, 
/**
 * Middle time on a point, seconds.
 */
seconds: number, 
/**
 * The others' middle time on the same points, seconds; none where too few others look at them.
 */
fleet_seconds: number | null, 
/**
 * Share of points hurried, percent.
 */
hurried_percent: number, 
/**
 * That of the others on the same points.
 */
fleet_hurried_percent: number | null, 
/**
 * Things found other than serviceable in a hundred points; what stays open counts once.
 */
found_percent: number, 
/**
 * That of the others on the same points.
 */
fleet_found_percent: number | null, 
/**
 * What stands out, in sentences; none when nothing does, or there is too little to say.
 */
sentences: Array<string>, 
/**
 * Points hurried most often, by name.
 */
points: Array<string>, };

/**
 * How people look, for an instructor.
 */
export type LookingReport = { 
/**
 * One row a person.
 */
people: Array<LookingPerson>, 
/**
 * What it rests on, and what it doesn't say.
 */
caution: string, };

/**
 * A machine as flown, described whole; the latest description holds.
 */
export type Machine = { 
/**
 * What people call it.
 */
name: string, 
/**
 * The engine's data sheet, by id.
 */
engine: string, 
/**
 * Parts fitted, each with its serial number or an empty text.
 */
fitted: { [key in string]: string }, 
/**
 * The reserve, where one is fitted.
 */
reserve?: Reserve, 
/**
 * What the wing may carry.
 */
wing_load?: WingLoad, 
/**
 * What it weighs as flown, wing and reserve with it, without fuel.
 */
weight?: Quantity, 
/**
 * Engine hours when this was written.
 */
hours: number, 
/**
 * Flights when this was written.
 */
flights: number, 
/**
 * Anything else worth knowing.
 */
note?: string, 
/**
 * True for the invented machines of the demonstration.
 */
invented?: boolean, };

/**
 * A machine in short.
 */
export type MachineCard = { 
/**
 * Its id.
 */
id: string, 
/**
 * What people call it.
 */
name: string, 
/**
 * Its engine's name.
 */
engine: string, 
/**
 * Engine hours.
 */
hours: number, 
/**
 * Flights.
 */
flights: number, 
/**
 * Whether it exists only in the demonstration.
 */
invented: boolean, 
/**
 * The verdict.
 */
verdict: VerdictView, 
/**
 * An inspection begun and not signed.
 */
walk: WalkBrief | null, };

/**
 * Everything about one machine.
 */
export type MachinePage = { 
/**
 * In short.
 */
card: MachineCard, 
/**
 * As described.
 */
description: Machine, 
/**
 * The lists that can be walked.
 */
occasions: Array<Named>, 
/**
 * What is open.
 */
open: Array<OpenView>, 
/**
 * What happened, latest first.
 */
timeline: Array<TimelineEntry>, 
/**
 * The engine's limits.
 */
limits: Array<LimitView>, 
/**
 * What falls due, nearest first.
 */
due: Array<DueView>, 
/**
 * Components with their own time in service.
 */
components: Array<ComponentView>, 
/**
 * The job not released, if there is one.
 */
job: JobView | null, 
/**
 * Tanks of fuel used up, as logged.
 */
tanks: number, 
/**
 * Entries of time that wait for a signature.
 */
waiting: number, };

/**
 * How a log's columns are to be read.
 */
export type Mapping = { 
/**
 * Between fields: `,`, `;` or a tab.
 */
separator: string, 
/**
 * Before decimals: `.` or `,`.
 */
decimal: string, 
/**
 * The heading of the column of time.
 */
time: string, 
/**
 * How that is written.
 */
time_form: TimeForm, 
/**
 * The columns read, in the file's order.
 */
columns: Array<Column>, };

/**
 * What a finding means for the machine, mildest first.
 */
export type Meaning = "not-fitted" | "serviceable" | "watch" | "unserviceable";

/**
 * A member's device.
 */
export type MemberDevice = { 
/**
 * The device.
 */
device: string, 
/**
 * What its holder reads out.
 */
code: string, 
/**
 * Whether its key was ended.
 */
ended: boolean, 
/**
 * Whether it is the school's root.
 */
root: boolean, };

/**
 * A member.
 */
export type MemberView = { 
/**
 * The person.
 */
person: string, 
/**
 * What they are called.
 */
name: string, 
/**
 * As what.
 */
role: Role, 
/**
 * The role's name.
 */
role_words: string, 
/**
 * From when until when, in words.
 */
term: string, 
/**
 * Whether they are a member today.
 */
standing: boolean, 
/**
 * Whether it is the person who signs here.
 */
you: boolean, 
/**
 * Their devices.
 */
devices: Array<MemberDevice>, };

/**
 * What is in the tank, and what shall be.
 */
export type Mix = { 
/**
 * Petrol and oil together, as they stand in the tank.
 */
in_tank: Quantity, 
/**
 * Their ratio; none for petrol without oil.
 */
ratio_in_tank: number | null, 
/**
 * The ratio wanted.
 */
target_ratio: number, 
/**
 * Petrol without oil that is added.
 */
add_fuel: Quantity, };

/**
 * What was poured into the tank.
 */
export type MixPlanned = { 
/**
 * What is in it, what comes in, and the ratio wanted.
 */
mix: Mix, 
/**
 * Oil poured in; none while it wasn't.
 */
oil?: Quantity, };

/**
 * An id with its words.
 */
export type Named = { 
/**
 * The id.
 */
id: string, 
/**
 * Its words.
 */
words: string, };

/**
 * A defect or a watch item.
 */
export type OpenView = { 
/**
 * The point.
 */
point: string, 
/**
 * What is to be looked at.
 */
title: string, 
/**
 * Watch or unserviceable.
 */
means: Meaning, 
/**
 * What was seen.
 */
words: string, 
/**
 * When and by whom.
 */
since: string, 
/**
 * The record that says so.
 */
record: string, };

/**
 * A part.
 */
export type PartView = { 
/**
 * Its id: the key in `Machine.fitted`.
 */
id: string, 
/**
 * Its name.
 */
words: string, 
/**
 * Whether there are machines without it.
 */
optional: boolean, };

/**
 * The person who signs on this device.
 */
export type Person = { 
/**
 * Their name.
 */
name: string, 
/**
 * The key's thumbprint: what another person compares.
 */
device: string, 
/**
 * Whether the platform's keychain helps to seal the key.
 */
keychain: boolean, };

/**
 * A picture.
 */
export type Photo = { 
/**
 * Its media type.
 */
media: string, 
/**
 * Its bytes, base64.
 */
data: string, };

/**
 * A part or a joint in its place of the order.
 */
export type PlanItem = { 
/**
 * Its id.
 */
id: string, 
/**
 * Its words.
 */
words: string, 
/**
 * Whether it is a joint.
 */
joint: boolean, };

/**
 * One point's state.
 */
export type PointState = { 
/**
 * Whether it needs a look.
 */
state: Look, 
/**
 * The answer that stands.
 */
given: GivenView | null, 
/**
 * The note beside it.
 */
note: string, 
/**
 * Pictures, by digest.
 */
photos: Array<string>, };

/**
 * One thing to look at.
 */
export type PointView = { 
/**
 * Its id.
 */
id: string, 
/**
 * What to look at.
 */
title: string, 
/**
 * What good looks like.
 */
good: string, 
/**
 * What bad looks like.
 */
bad: string, 
/**
 * Why it matters.
 */
why: string, 
/**
 * Whether leaving it out grounds the machine.
 */
must: boolean, 
/**
 * Whether it comes first within its station.
 */
critical: boolean, 
/**
 * The drawing's name.
 */
drawing: string, 
/**
 * The place in the drawing.
 */
focus: string, 
/**
 * Caution to show above the answers.
 */
caution: string | null, 
/**
 * How it is answered.
 */
ask: AskView, 
/**
 * That a figure in it is unconfirmed, and what to do.
 */
unconfirmed: string | null, 
/**
 * What was found last time, if it must be looked at again.
 */
last_time: LastTime | null, };

/**
 * One point's worth.
 */
export type PointWorth = { 
/**
 * Its id.
 */
point: string, 
/**
 * What is looked at.
 */
title: string, 
/**
 * Whether a list demands it, or the joint is critical.
 */
must: boolean, 
/**
 * Times looked at.
 */
looks: number, 
/**
 * Times it was found to be watched; what stays open counts once.
 */
watch: number, 
/**
 * Times it was found unserviceable; what stays open counts once.
 */
unserviceable: number, 
/**
 * Machines on which it was found wrong.
 */
machines: number, 
/**
 * Share found wrong, percent of the looks, with its interval of 95 %.
 */
percent: number, 
/**
 * See `percent`.
 */
low: number, 
/**
 * See `percent`.
 */
high: number, 
/**
 * Middle time on it, seconds; none from fewer than three looks.
 */
seconds: number | null, 
/**
 * Share hurried, percent.
 */
hurried_percent: number, 
/**
 * What it means for its author, in a sentence.
 */
words: string, 
/**
 * `never`, `often` or `plain`; `few` where too few looks tell nothing.
 */
sort: string, };

/**
 * Where a nut is drawn: x to the right, y down, all within the unit circle.
 */
export type Position = { 
/**
 * Its number, from 1.
 */
nut: number, 
/**
 * To the right of the middle.
 */
x: number, 
/**
 * Below the middle.
 */
y: number, };

/**
 * How the pressure is known.
 */
export type Pressure = { "altimeter": { 
/**
 * The field's, above mean sea level.
 */
elevation: Quantity, 
/**
 * The setting.
 */
setting: Quantity, } } | { "field": Quantity };

/**
 * One fault of a file to be published.
 */
export type PublishFault = { 
/**
 * The file.
 */
file: string, 
/**
 * The line.
 */
line: number, 
/**
 * What is wrong.
 */
words: string, 
/**
 * What to do.
 */
hint: string, };

/**
 * A file to be published.
 */
export type PublishFile = { 
/**
 * Its path in the catalogue.
 */
path: string, 
/**
 * Its text.
 */
text: string, };

/**
 * Files to be published, checked.
 */
export type PublishPreview = { 
/**
 * Everything wrong with them; they can be published only if there is nothing.
 */
faults: Array<PublishFault>, 
/**
 * What changes for whom, in sentences.
 */
changes: Array<string>, 
/**
 * The version that this would be.
 */
version: number, };

/**
 * Something published.
 */
export type PublishedView = { 
/**
 * The record.
 */
record: string, 
/**
 * Its title.
 */
title: string, 
/**
 * Which version of it.
 */
version: number, 
/**
 * By whom and when.
 */
by: string, 
/**
 * What is new.
 */
note: string, 
/**
 * Its files.
 */
files: Array<string>, 
/**
 * Whether it is the one in use.
 */
used: boolean, };

/**
 * A number with its unit.
 */
export type Quantity = { 
/**
 * The number, in `unit`; always finite.
 */
value: number, 
/**
 * Its unit.
 */
unit: Unit, };

/**
 * What the wing is certified or tested for, as its maker states it for flying with a motor.
 */
export type Range = { 
/**
 * The least.
 */
low: Quantity, 
/**
 * The most.
 */
high: Quantity, };

/**
 * One reason.
 */
export type ReasonView = { 
/**
 * What this reason alone makes of the machine.
 */
state: State, 
/**
 * The rule it comes from.
 */
rule: Rule, 
/**
 * What is so.
 */
words: string, 
/**
 * What would clear it.
 */
clears: string, 
/**
 * The record it rests on.
 */
record: string | null, 
/**
 * The point it is about.
 */
point: string | null, 
/**
 * The limit it is about.
 */
band: string | null, 
/**
 * Whether it speaks of a flight that is prepared: it is answered there.
 */
of_flight: boolean, 
/**
 * The facts behind it.
 */
because: Array<FactView>, };

/**
 * What came of checking every receipt.
 */
export type ReceiptsView = { 
/**
 * Whether all is as the server signed for.
 */
good: boolean, 
/**
 * In a sentence.
 */
words: string, 
/**
 * Records in the server's log, as far as it was followed.
 */
records: number, 
/**
 * Their root, hexadecimal.
 */
root: string, 
/**
 * The server's signed word, where there is one.
 */
checkpoint: string | null, };

/**
 * A record laid open.
 */
export type RecordView = { 
/**
 * Its digest.
 */
digest: string, 
/**
 * Its kind in words.
 */
kind: string, 
/**
 * What it says, in a sentence.
 */
words: string, 
/**
 * Who signed.
 */
by: string, 
/**
 * The device that signed.
 */
device: string, 
/**
 * When, as the language writes it.
 */
when: string, 
/**
 * Number in the device's chain.
 */
seq: number, 
/**
 * Whether its signature is good, in words.
 */
signature: string, 
/**
 * Whether its signature is good.
 */
good: boolean, 
/**
 * The machine it is about.
 */
machine: string | null, 
/**
 * Whether a sheet can be printed of it.
 */
sheet: boolean, 
/**
 * What was seen, for an inspection.
 */
findings: Array<FindingView>, 
/**
 * Points nobody looked at, for an inspection.
 */
left: Array<LeftView>, 
/**
 * Interruptions, in sentences.
 */
interruptions: Array<string>, 
/**
 * The payload, as signed.
 */
payload: string, };

/**
 * A line that was not taken as a record.
 */
export type RefusedView = { 
/**
 * Its number here.
 */
number: number, 
/**
 * The machine it speaks of, where that could be read.
 */
machine: string | null, 
/**
 * Why it was not taken.
 */
words: string, 
/**
 * As it came.
 */
line: string, };

/**
 * A reserve parachute and its repacking.
 */
export type Reserve = { 
/**
 * The date on its packing card; none when nobody knows.
 */
repacked_on: string | null, 
/**
 * Days until the next repack, as its manual says.
 */
every_days: number, };

/**
 * What a person may be in a school, least rights first.
 */
export type Role = "viewer" | "pilot" | "mechanic" | "instructor";

/**
 * The rule a reason comes from.
 */
export type Rule = "no-description" | "unknown-engine" | "never-looked" | "not-today" | "point-missed" | "open-defect" | "watch-item" | "reserve-expired" | "reserve-unknown" | "reserve-soon" | "limit-missing" | "limit-unconfirmed" | "newer-record" | "split-word" | "refused-record" | "clock-doubt" | "job-open" | "first-flight" | "follow-up-due" | "follow-up-over" | "due-soon" | "due-over" | "defect-deferred" | "load" | "mix" | "fuel-time" | "thin-air" | "wind" | "measured-earlier" | "flight-not-prepared" | "inspect-over";

/**
 * A school in short.
 */
export type SchoolBrief = { 
/**
 * Its name for programs.
 */
id: string, 
/**
 * What people call it.
 */
name: string, 
/**
 * What to compare so that nobody joins another school of that name.
 */
code: string, 
/**
 * The server's address, where it has one.
 */
address: string | null, 
/**
 * Whether it exists only in the demonstration.
 */
invented: boolean, };

/**
 * A school that a server or a code speaks of, before it is joined.
 */
export type SchoolCardView = { 
/**
 * The school.
 */
school: SchoolBrief, 
/**
 * Who its root is.
 */
root: string, 
/**
 * Whether it has admitted this device.
 */
admitted: boolean, };

/**
 * This device's place in a school.
 */
export type SchoolView = { 
/**
 * The school; none where this device belongs to none.
 */
school: SchoolBrief | null, 
/**
 * What this person is there today; none while nobody has admitted them, or no longer.
 */
role: Role | null, 
/**
 * The role's name, or that there is none.
 */
role_words: string, 
/**
 * Whether this device admits and ends members.
 */
root: boolean, 
/**
 * What to read out so that the school knows this device.
 */
code: string, 
/**
 * Everybody who is or was a member.
 */
members: Array<MemberView>, 
/**
 * Machines known here, and whether they are under the school.
 */
machines: Array<EnrolledView>, 
/**
 * Lists and data sheets published.
 */
published: Array<PublishedView>, 
/**
 * How it stands with the server.
 */
sync: SyncView, };

/**
 * What another phone asks to be looked at.
 */
export type SecondLookView = { 
/**
 * The machine.
 */
machine: string, 
/**
 * The job in words.
 */
title: string, 
/**
 * The joints.
 */
joints: Array<Named>, 
/**
 * Whether this device asks itself: then somebody else must look.
 */
own: boolean, };

/**
 * Somebody who signs on this device beside its own person.
 */
export type SecondPerson = { 
/**
 * Their device key.
 */
device: string, 
/**
 * Their name.
 */
name: string, };

/**
 * The three things that time in service counts, and fuel, for what falls due after a tank.
 */
export type Service = { 
/**
 * Engine hours.
 */
hours: number, 
/**
 * Flights.
 */
flights: number, 
/**
 * Tanks of fuel used up.
 */
tanks: number, };

/**
 * An inspection signed.
 */
export type Signed = { 
/**
 * The record.
 */
record: string, 
/**
 * The machine.
 */
machine: string, 
/**
 * The verdict.
 */
verdict: VerdictView, };

/**
 * How something due stands.
 */
export type Standing = "later" | "soon" | "tolerated" | "over";

/**
 * What the app is when it opens.
 */
export type Start = { 
/**
 * Who signs here; none before the first start is done.
 */
person: Person | null, 
/**
 * The language in use.
 */
language: string, 
/**
 * The languages there are.
 */
languages: Array<string>, 
/**
 * Minutes without an answer after which a list steps back.
 */
patience_minutes: number, 
/**
 * Whether points are read aloud where the platform speaks.
 */
read_aloud: boolean, 
/**
 * The units that the person reads and types in.
 */
units: UnitChoice, 
/**
 * The units that they may choose from.
 */
unit_lists: UnitLists, 
/**
 * The cautions that hold always.
 */
cautions: Array<string>, 
/**
 * Something that went wrong with the stored data, and what was done.
 */
warning: string | null, };

/**
 * The judgement, mildest first.
 */
export type State = "fit" | "limited" | "grounded";

/**
 * A place to stand.
 */
export type StationView = { 
/**
 * Its id, as in the machine's drawing.
 */
id: string, 
/**
 * Its name.
 */
words: string, 
/**
 * Where to stand.
 */
stand: string, 
/**
 * Its points, in the order in which they are asked.
 */
points: Array<PointView>, };

/**
 * A record that the server wouldn't take.
 */
export type StuckView = { 
/**
 * The record.
 */
record: string, 
/**
 * What sort of record.
 */
kind: string, 
/**
 * Why, in the server's words.
 */
words: string, };

/**
 * An inspection said back before it is signed.
 */
export type Summary = { 
/**
 * Minutes from the first point shown to the last answered.
 */
minutes: number, 
/**
 * Points done.
 */
done: number, 
/**
 * Points in all.
 */
of: number, 
/**
 * What is said back, sentence by sentence.
 */
sentences: Array<string>, 
/**
 * Points answered in much less than the usual time.
 */
hurried: Array<Named>, 
/**
 * Points that nobody looked at.
 */
left: Array<LeftView>, 
/**
 * Findings that aren't serviceable.
 */
found: Array<FoundView>, 
/**
 * The verdict that signing would give.
 */
preview: VerdictView, };

/**
 * How it stands with the school's server.
 */
export type SyncView = { 
/**
 * For programs: `none`, `never`, `done`, `waits`, `failed`, `distrusted`.
 */
state: string, 
/**
 * In a sentence.
 */
words: string, 
/**
 * What to do, where there is something to do.
 */
hint: string, 
/**
 * Records that wait to be sent.
 */
records: number, 
/**
 * Pictures that wait to be sent.
 */
photos: number, 
/**
 * Records that the server wouldn't take.
 */
stuck: Array<StuckView>, 
/**
 * Records in the server's log, as far as it was followed.
 */
receipts: number, };

/**
 * How a column of time is written.
 */
export type TimeForm = "seconds" | "milliseconds" | "minutes" | "clock" | "moment";

/**
 * One mark on the line of time.
 */
export type TimelineEntry = { 
/**
 * The record.
 */
record: string, 
/**
 * When, as the language writes it.
 */
when: string, 
/**
 * When (RFC 3339).
 */
at: string, 
/**
 * Kind of record.
 */
kind: string, 
/**
 * What happened, in a sentence.
 */
words: string, 
/**
 * Engine hours then, where known.
 */
hours: number | null, 
/**
 * The worst that was seen, for an inspection.
 */
worst: Meaning | null, 
/**
 * Who signed.
 */
by: string, };

/**
 * A torque tool, described whole; the latest description holds.
 */
export type ToolKept = { 
/**
 * The tool, the same in every description.
 */
tool: string, 
/**
 * What people call it.
 */
name: string, 
/**
 * Lowest marked value.
 */
low: Quantity, 
/**
 * Highest marked value.
 */
high: Quantity, 
/**
 * Permissible deviation, percent of the reading.
 */
deviation_percent: number, 
/**
 * When it was last calibrated; none when nobody knows.
 */
calibrated_on: string | null, 
/**
 * Days between calibrations.
 */
every_days: number, 
/**
 * Clicks between calibrations.
 */
every_cycles: number, 
/**
 * Clicks since the last calibration, as known when this was written.
 */
cycles: number, 
/**
 * Dropped or forced since.
 */
dropped: boolean, };

/**
 * A torque tool.
 */
export type ToolView = { 
/**
 * As kept.
 */
kept: ToolKept, 
/**
 * Clicks since its calibration, those of signed inspections among them.
 */
cycles: number, 
/**
 * Whether it may be used today.
 */
usable: boolean, 
/**
 * Why or why not, in a sentence.
 */
words: string, };

/**
 * A joint to be tightened.
 */
export type TorqueAsk = { 
/**
 * The joint in the assembly graph.
 */
joint: string, 
/**
 * The torque as a person reads it.
 */
words: string, 
/**
 * Where it is written, or that it is unconfirmed.
 */
source: string, 
/**
 * The band's name in the data sheet.
 */
band: string, 
/**
 * Whether there is a number at all: without one nothing can be set.
 */
has_number: boolean, 
/**
 * How many fasteners.
 */
nuts: number, 
/**
 * Where each is drawn, within the unit circle.
 */
positions: Array<Position>, 
/**
 * What may be typed for a reading; the first is the data sheet's.
 */
units: Array<UnitView>, };

/**
 * A joint tightened: with what, how far, and how each nut moved before the click.
 */
export type TorqueDone = { 
/**
 * The tool.
 */
tool: string, 
/**
 * What it was called then.
 */
tool_name: string, 
/**
 * What it was set to in the last stage.
 */
setting: Quantity, 
/**
 * What each nut may then have, given the tool's deviation: least.
 */
least: Quantity, 
/**
 * Most.
 */
most: Quantity, 
/**
 * Each nut's movement before the click in the last stage, eighths of a turn; nut 1 first.
 */
eighths: Array<number>, 
/**
 * What the tool read, where it reads.
 */
reading?: Quantity | null, 
/**
 * What was against the tool or the movement, in words; empty where nothing was.
 */
watch?: Array<string>, 
/**
 * Why the tool was used although it is overdue or outside its marked range.
 */
override_reason?: string | null, };

/**
 * One nut at one stage.
 */
export type TorqueStep = { 
/**
 * Which round, from 1.
 */
stage: number, 
/**
 * The round in words.
 */
stage_words: string, 
/**
 * Which nut, from 1.
 */
nut: number, 
/**
 * What the tool is set to.
 */
setting: string, 
/**
 * Whether the movement before the click is asked: in the round at full torque.
 */
movement: boolean, };

/**
 * How to tighten a joint with one tool.
 */
export type TorqueView = { 
/**
 * How the tool stands (`fit`, `watch`, `refused`).
 */
standing: string, 
/**
 * Why, in sentences; empty where nothing is against it.
 */
against: Array<string>, 
/**
 * What to set the tool to at the full torque.
 */
setting: string, 
/**
 * The same in another unit.
 */
setting_other: string, 
/**
 * What the nut then gets, in a sentence.
 */
spread: string, 
/**
 * What that does to stud and thread, in a sentence; none where the data sheet doesn't know them.
 */
borne: string | null, 
/**
 * Every step in its order.
 */
steps: Array<TorqueStep>, };

/**
 * The band that a measure is held against.
 */
export type TrendBand = { 
/**
 * Its lower end.
 */
low: number | null, 
/**
 * Its upper end.
 */
high: number | null, 
/**
 * Which end is the limit, where one is.
 */
limit: number | null, 
/**
 * As a person reads it.
 */
words: string, 
/**
 * Where it is written, or that it is unconfirmed.
 */
source: string, 
/**
 * Whether a document confirms it.
 */
confirmed: boolean, };

/**
 * A step in level.
 */
export type TrendChange = { 
/**
 * Engine hours of the first reading at the new level.
 */
hours: number, 
/**
 * Middle value before.
 */
before: number, 
/**
 * Middle value after.
 */
after: number, };

/**
 * A line through readings: all turn about the medians.
 */
export type TrendLine = { 
/**
 * Change in a hundred engine hours.
 */
per_100_hours: number, 
/**
 * The least it may be.
 */
low: number, 
/**
 * The most.
 */
high: number, 
/**
 * Where it begins and ends, engine hours.
 */
from_hours: number, 
/**
 * See `from_hours`.
 */
to_hours: number, 
/**
 * Its value at the beginning, and at the end.
 */
from: number, 
/**
 * See `from`.
 */
to: number, 
/**
 * The ends of the line with the least slope.
 */
low_from: number, 
/**
 * See `low_from`.
 */
low_to: number, 
/**
 * The ends of the line with the greatest slope.
 */
high_from: number, 
/**
 * See `high_from`.
 */
high_to: number, };

/**
 * Something that was done to the machine.
 */
export type TrendMark = { 
/**
 * Engine hours.
 */
hours: number, 
/**
 * What.
 */
words: string, 
/**
 * Its record.
 */
record: string, };

/**
 * A reading.
 */
export type TrendPoint = { 
/**
 * Engine hours.
 */
hours: number, 
/**
 * The value, as drawn.
 */
value: number, 
/**
 * As it was read, where it was brought to a standard day.
 */
raw: number | null, 
/**
 * In words: value and day.
 */
words: string, 
/**
 * The record it is from; empty while that isn't signed.
 */
record: string, 
/**
 * Whether it lies far off the line: shown, not dropped.
 */
far_off: boolean, };

/**
 * When a line reaches its limit, engine hours.
 */
export type TrendReach = { 
/**
 * The earliest: the one to act on.
 */
low: number, 
/**
 * By the slope.
 */
at: number, 
/**
 * The latest, where there is one.
 */
high: number | null, };

/**
 * One measure of a machine over its time in service.
 */
export type TrendView = { 
/**
 * The measure's id.
 */
id: string, 
/**
 * Its name.
 */
title: string, 
/**
 * What it is, and why it is followed.
 */
what: string, 
/**
 * In which unit all values here are; its sign is empty for grades, and in words for eighths of a turn.
 */
unit: UnitView, 
/**
 * For grades: the words for 0, 1, 2.
 */
grades: Array<string>, 
/**
 * The readings, in order of time in service.
 */
points: Array<TrendPoint>, 
/**
 * The band it is held against; none where the data sheet has no number.
 */
band: TrendBand | null, 
/**
 * The line through the readings with its interval; none where they tell too little, and through grades.
 */
line: TrendLine | null, 
/**
 * How often chance alone makes such a trend, 0 to 1; none where the readings tell too little.
 */
chance: number | null, 
/**
 * A step in level, where two levels are nearer to the readings than the line is.
 */
change: TrendChange | null, 
/**
 * When the line reaches the limit, engine hours.
 */
reaches: TrendReach | null, 
/**
 * Jobs, and components fitted or taken off.
 */
marks: Array<TrendMark>, 
/**
 * What it all says, in plain words: the first is the main one; or that there is too little to say.
 */
sentences: Array<string>, 
/**
 * Whether a trend is told (`rising`, `falling`), or nothing (`neither`, `too-little`).
 */
direction: string, 
/**
 * Whether a person should act on it: a trend toward the limit, or to the worse; or past it already.
 */
drifts: boolean, };

/**
 * A unit, written as a UCUM-like code (`N.m`, `lbf.in`, `Cel`).
 */
export type Unit = "N.m" | "lbf.in" | "lbf.ft" | "kgf.m" | "kgf.cm" | "m" | "mm" | "in" | "ft" | "K" | "Cel" | "degF" | "Pa" | "hPa" | "bar" | "MPa" | "psi" | "inHg" | "V" | "s" | "h" | "d" | "L" | "mL" | "m3" | "gal_us" | "gal_br" | "kg" | "lb" | "kg/m3" | "L/h" | "m/s" | "km/h" | "kt" | "N" | "kN" | "lbf" | "m2" | "mm2" | "in2" | "1/min" | "deg" | "%" | "1";

/**
 * The units that a person reads and types in; the machine's own are shown beside them where they differ.
 */
export type UnitChoice = { 
/**
 * Of weight.
 */
mass: Unit, 
/**
 * Of fuel.
 */
volume: Unit, 
/**
 * Of wind.
 */
speed: Unit, 
/**
 * Of temperature.
 */
temperature: Unit, 
/**
 * Of air pressure.
 */
pressure: Unit, 
/**
 * Of heights.
 */
height: Unit, 
/**
 * Of torque; none: as each machine's data sheet has it.
 */
torque: Unit | null, };

/**
 * The units of each kind that may be chosen.
 */
export type UnitLists = { 
/**
 * Of weight.
 */
mass: Array<UnitView>, 
/**
 * Of fuel.
 */
volume: Array<UnitView>, 
/**
 * Of wind.
 */
speed: Array<UnitView>, 
/**
 * Of temperature.
 */
temperature: Array<UnitView>, 
/**
 * Of air pressure.
 */
pressure: Array<UnitView>, 
/**
 * Of heights.
 */
height: Array<UnitView>, 
/**
 * Of torque.
 */
torque: Array<UnitView>, };

/**
 * A unit.
 */
export type UnitView = { 
/**
 * Its code.
 */
code: Unit, 
/**
 * As a person reads it.
 */
sign: string, };

/**
 * A measured point's question.
 */
export type ValueAsk = { 
/**
 * The band's name in the data sheet.
 */
band: string, 
/**
 * The band as a person reads it.
 */
words: string, 
/**
 * Lower end, in the first of `units`.
 */
low: number | null, 
/**
 * Upper end, in the first of `units`.
 */
high: number | null, 
/**
 * What may be typed; the first is the data sheet's.
 */
units: Array<UnitView>, 
/**
 * Where the band is written, or that it is unconfirmed.
 */
source: string, };

/**
 * May it fly?
 */
export type VerdictView = { 
/**
 * The judgement.
 */
state: State, 
/**
 * The judgement as a sentence.
 */
headline: string, 
/**
 * Why, worst first.
 */
reasons: Array<ReasonView>, };

/**
 * One fault of a file.
 */
export type VerifyFault = { 
/**
 * What is wrong, for programs (`bad-signature`).
 */
what: string, 
/**
 * Line in the file.
 */
line: number | null, 
/**
 * The record.
 */
record: string | null, 
/**
 * In a sentence.
 */
words: string, 
/**
 * What to do.
 */
hint: string, };

/**
 * What came of verifying a file.
 */
export type VerifyView = { 
/**
 * Whether nothing is wrong.
 */
good: boolean, 
/**
 * In a sentence.
 */
headline: string, 
/**
 * Records read.
 */
records: number, 
/**
 * Who signed, with the thumbprint to compare.
 */
people: Array<Named>, 
/**
 * What it tells of: each machine's id and name.
 */
machines: Array<Named>, 
/**
 * Every fault.
 */
faults: Array<VerifyFault>, };

/**
 * A list being walked.
 */
export type Walk = { 
/**
 * The inspection's id.
 */
id: string, 
/**
 * The machine.
 */
machine: string, 
/**
 * What people call it.
 */
machine_name: string, 
/**
 * Which list.
 */
occasion: string, 
/**
 * The list's name.
 */
words: string, 
/**
 * In walking order.
 */
stations: Array<StationView>, 
/**
 * Where the inspector stands.
 */
progress: WalkProgress, };

/**
 * An inspection begun and not signed.
 */
export type WalkBrief = { 
/**
 * Its id.
 */
id: string, 
/**
 * Which list.
 */
occasion: string, 
/**
 * The list's name.
 */
words: string, 
/**
 * Points looked at.
 */
done: number, 
/**
 * Points in all.
 */
of: number, };

/**
 * Where the inspector stands.
 */
export type WalkProgress = { 
/**
 * The point to look at now; none when all are done or left once more.
 */
current: string | null, 
/**
 * Points done.
 */
done: number, 
/**
 * Points in all.
 */
of: number, 
/**
 * Minutes since the first point was shown.
 */
minutes: number, 
/**
 * Each point's state.
 */
points: { [key in string]: PointState }, 
/**
 * Why the list stepped back when it was opened, in a sentence.
 */
stepped_back: string | null, 
/**
 * Whether there is an answer to take back.
 */
can_undo: boolean, };

/**
 * The wind as measured.
 */
export type Wind = { 
/**
 * Mean.
 */
mean: Quantity, 
/**
 * The strongest gust; none when nobody measured it.
 */
gust: Quantity | null, };

/**
 * What it may be at most. There is no default: somebody has to set it.
 */
export type WindLimits = { 
/**
 * Mean.
 */
mean: Quantity | null, 
/**
 * Gusts.
 */
gust: Quantity | null, 
/**
 * Gust over mean.
 */
gust_factor: number | null, };

/**
 * The wind and what it may be.
 */
export type WindPlanned = { 
/**
 * As measured at launch.
 */
wind: Wind, 
/**
 * The limits that the pilot set.
 */
limits: WindLimits, 
/**
 * When it was measured, where that was before the plan was worked out anew.
 */
measured?: string, };

/**
 * What the wing may carry, as its maker states it.
 */
export type WingLoad = { 
/**
 * All-up weight with a motor.
 */
with_motor: Range, 
/**
 * All-up weight without one, where its maker states both.
 */
without_motor?: Range, 
/**
 * The manual; empty while nobody has looked it up.
 */
document?: string, 
/**
 * Where in it.
 */
page?: string, };

/** Every call: what goes in, what comes out. */
export interface Calls {
  /** What the app is when it opens. */
  "start": { args: {  }; reply: Start };
  /** First start: makes this device's key and seals it with the PIN. */
  "begin": { args: { name: string; pin: string }; reply: Start };
  /** Changes the PIN. */
  "change-pin": { args: { old: string; new: string }; reply: Start };
  /** Changes what this device keeps to itself: language, patience, reading aloud, units. */
  "settings": { args: { language: string; patience_minutes: number; read_aloud: boolean; units: UnitChoice | null }; reply: Start };
  /** All drawings, by name: SVG to be inlined. */
  "drawings": { args: {  }; reply: { [key in string]: string } };
  /** Adds the invented machines of the demonstration. */
  "demo": { args: {  }; reply: Array<MachineCard> };
  /** Founds the demonstration's invented school, with a season of history. */
  "demo-school": { args: { pin: string }; reply: SchoolView };
  /** All machines, those that need a person first. */
  "machines": { args: {  }; reply: Array<MachineCard> };
  /** What a machine can be made of. */
  "choices": { args: {  }; reply: Choices };
  /** Registers a machine (`id` empty) or describes it anew. */
  "machine-save": { args: { id: string; description: Machine | null; pin: string }; reply: MachinePage };
  /** Everything about one machine. */
  "machine": { args: { id: string }; reply: MachinePage };
  /** Opens or resumes an inspection. */
  "walk": { args: { machine: string; occasion: string }; reply: Walk };
  /** Answers a point; durable when it returns. */
  "answer": { args: { walk: string; point: string; given: Given | null; seconds: number }; reply: WalkProgress };
  /** What a value would mean, while it is being typed. */
  "judge": { args: { walk: string; point: string; value: Quantity | null }; reply: JudgedView };
  /** Takes back the last answer; it stays in the record's history. */
  "undo": { args: { walk: string }; reply: WalkProgress };
  /** Leaves a point for now. */
  "leave": { args: { walk: string; point: string }; reply: WalkProgress };
  /** Writes the note beside a point. */
  "note": { args: { walk: string; point: string; note: string }; reply: WalkProgress };
  /** Puts a picture (JPEG, PNG or WebP, base64) to a point. */
  "photo-add": { args: { walk: string; point: string; data: string }; reply: WalkProgress };
  /** A picture by its digest. */
  "photo": { args: { digest: string }; reply: Photo };
  /** The inspection said back. */
  "summary": { args: { walk: string }; reply: Summary };
  /** Signs and closes the inspection. */
  "sign": { args: { walk: string; pin: string }; reply: Signed };
  /** Puts an inspection aside without signing; what was answered is kept, unsigned. */
  "put-aside": { args: { walk: string }; reply: MachinePage };
  /** A record laid open, by its digest or by the text in a record sheet's code. */
  "record": { args: { digest: string }; reply: RecordView };
  /** Signs that what is open at a point was put right. */
  "rectify": { args: { machine: string; point: string; how: string; pin: string }; reply: MachinePage };
  /** Signs a later word on a finding. */
  "correct": { args: { record: string; point: string; answer: string; reason: string; pin: string }; reply: MachinePage };
  /** Signs a limit as the maker's manual has it. */
  "confirm-limit": { args: { machine: string; band: string; low: Quantity | null; high: Quantity | null; document: string; page: string; pin: string }; reply: MachinePage };
  /** Logs time in service, and fuel burned where it was measured; it is signed with the next signature. */
  "log-time": { args: { machine: string; added: Service | null; reading: number | null; note: string; fuel: Quantity | null }; reply: MachinePage };
  /** Takes back the time logged last, while nobody has signed it. */
  "log-undo": { args: { machine: string }; reply: MachinePage };
  /** Signs that a defect may wait, within limits. */
  "defer": { args: { machine: string; point: string; until_hours: number | null; until_flights: number | null; until_date: string | null; condition: string; reason: string; pin: string }; reply: MachinePage };
  /** Keeps something that falls due again and again, changes it, ends it, or signs that it was done. */
  "due-save": { args: { machine: string; form: DueForm | null; ended: boolean; pin: string }; reply: MachinePage };
  /** Fits a component that is new here, with the time in service it brings. */
  "component-fit": { args: { machine: string; part: string; name: string; serial: string; own: Service | null; pin: string }; reply: MachinePage };
  /** Takes a component off, and fits it to another machine where one is named. */
  "component-move": { args: { machine: string; component: string; to: string | null; pin: string }; reply: MachinePage };
  /** Jobs that can be done on a machine. */
  "job-choices": { args: { machine: string }; reply: Array<JobChoice> };
  /** What doing these jobs means, before anything is signed. */
  "job-plan": { args: { machine: string; jobs: Array<string> }; reply: JobPlan };
  /** Signs that work was begun: the machine stays on the ground until it is released. */
  "job-begin": { args: { machine: string; jobs: Array<string>; note: string; pin: string }; reply: MachinePage };
  /** Signs that the inspections of the open job are complete. */
  "job-release": { args: { machine: string; pin: string }; reply: MachinePage };
  /** The torque tools. */
  "tools": { args: {  }; reply: Array<ToolView> };
  /** Registers a torque tool (`tool` all zeros) or describes it anew. */
  "tool-save": { args: { kept: ToolKept | null; pin: string }; reply: Array<ToolView> };
  /** How to tighten a joint with a tool. */
  "torque-plan": { args: { walk: string; point: string; tool: string; adapter: Adapter | null }; reply: TorqueView };
  /** Tells that a joint was tightened. */
  "torque-done": { args: { walk: string; point: string; tool: string; adapter: Adapter | null; eighths: Array<number>; reading: Quantity | null; override_reason: string; seconds: number }; reply: WalkProgress };
  /** What to show to another phone so that its person looks at the open job's critical joints. */
  "second-look-ask": { args: { machine: string }; reply: CodeOut };
  /** Opens what another phone asks. */
  "second-look-open": { args: { text: string }; reply: SecondLookView };
  /** Signs what was seen, and gives the text to show back. */
  "second-look-sign": { args: { text: string; joints: Array<JointSeen>; pin: string }; reply: CodeOut };
  /** Takes what the other phone shows back. */
  "second-look-take": { args: { machine: string; text: string }; reply: MachinePage };
  /** Another person of this device signs what they saw at the open job's joints. */
  "second-look-here": { args: { machine: string; device: string; joints: Array<JointSeen>; pin: string }; reply: MachinePage };
  /** The other people who sign on this device. */
  "second-people": { args: {  }; reply: Array<SecondPerson> };
  /** Another person who signs on this device, with a key and PIN of their own. */
  "second-person-add": { args: { name: string; pin: string }; reply: Array<SecondPerson> };
  /** The text in a picture of a code (base64). */
  "read-code": { args: { data: string }; reply: string };
  /** The machine that a label's code names. */
  "open-label": { args: { text: string }; reply: MachinePage };
  /** One machine's records as a bundle. */
  "export": { args: { machine: string }; reply: FileOut };
  /** The record sheet of an inspection, or of a job by any of its records, as PDF; `paper` is `a4` or `letter`. */
  "sheet": { args: { record: string; paper: string }; reply: FileBytes };
  /** The label of a machine as PDF. */
  "label": { args: { machine: string }; reply: FileBytes };
  /** Everything of one machine as a table, one row a fact. */
  "csv": { args: { machine: string }; reply: FileBytes };
  /** What falls due on a machine, as an iCalendar file. */
  "calendar": { args: { machine: string }; reply: FileBytes };
  /** Checks a bundle with nothing but itself. */
  "verify": { args: { text: string }; reply: VerifyView };
  /** Everything on this device as a bundle. */
  "export-all": { args: {  }; reply: FileOut };
  /** Takes a bundle's records. */
  "import": { args: { text: string }; reply: ImportView };
  /** Lines from a server that were not taken as records. */
  "refused": { args: {  }; reply: Array<RefusedView> };
  /** Puts away such a line. */
  "refused-away": { args: { number: number }; reply: Array<RefusedView> };
  /** First start of another device of a person, by the code that their first one shows. */
  "begin-as": { args: { text: string; pin: string }; reply: Start };
  /** This device's place in a school. */
  "school": { args: {  }; reply: SchoolView };
  /** Founds a school: this device is its root. */
  "school-found": { args: { name: string; pin: string }; reply: SchoolView };
  /** What this device shows to be admitted. */
  "school-code": { args: {  }; reply: CodeOut };
  /** Who asks, by the code that their device shows. */
  "school-applicant": { args: { text: string }; reply: ApplicantView };
  /** Admits that device, and gives the text to show back. */
  "school-admit": { args: { text: string; role: Role | null; until: string | null; pin: string }; reply: CodeOut };
  /** Joins a school by the code shown back, or takes another device's word that it is one's own. */
  "school-join": { args: { text: string; pin: string }; reply: SchoolView };
  /** Leaves the school. */
  "school-leave": { args: { pin: string }; reply: SchoolView };
  /** Signs that another device is this person's too, and gives the text to show it. */
  "school-vouch": { args: { text: string; pin: string }; reply: CodeOut };
  /** Gives a member another role or end. */
  "school-role": { args: { person: string; role: Role | null; until: string | null; pin: string }; reply: SchoolView };
  /** Ends a membership. */
  "school-end": { args: { person: string; reason: string; pin: string }; reply: SchoolView };
  /** Ends a key: of a lost phone. */
  "key-end": { args: { device: string; reason: string; pin: string }; reply: SchoolView };
  /** Hands the root over to another member's device. */
  "school-hand": { args: { device: string; pin: string }; reply: SchoolView };
  /** Puts a machine under the school's roles, or takes it out. */
  "machine-enrol": { args: { machine: string; enrolled: boolean; pin: string }; reply: MachinePage };
  /** What a server needs to serve this school, as a file. */
  "school-file": { args: {  }; reply: FileOut };
  /** The state of every machine of the school. */
  "board": { args: {  }; reply: Board };
  /** Lets records that the server wouldn't take be sent again. */
  "sync-retry": { args: {  }; reply: SchoolView };
  /** Checks every receipt of the server. */
  "receipts": { args: {  }; reply: ReceiptsView };
  /** What to show another device so that both can tell whether the server tells them the same. */
  "checkpoint-code": { args: {  }; reply: CodeOut };
  /** Compares what another device shows. */
  "checkpoint-compare": { args: { text: string }; reply: ReceiptsView };
  /** Forgets all that the server said; the next round follows it from the beginning. */
  "server-anew": { args: {  }; reply: SchoolView };
  /** What a board's code is about. */
  "desk-open": { args: { text: string }; reply: DeskView };
  /** Checks files that might be published. */
  "publish-preview": { args: { title: string; files: Array<PublishFile> }; reply: PublishPreview };
  /** Publishes files to all members. */
  "publish": { args: { title: string; files: Array<PublishFile>; note: string; pin: string }; reply: SchoolView };
  /** What is asked of load, fuel, air and wind before a flight. */
  "flight-form": { args: { machine: string }; reply: FlightForm };
  /** What comes of a plan, while it is being typed. */
  "flight-judge": { args: { machine: string; plan: FlightPlanned | null }; reply: FlightView };
  /** Keeps a plan: it enters the verdict at once, and is signed with the next signature. */
  "flight-keep": { args: { machine: string; plan: FlightPlanned | null }; reply: FlightView };
  /** Every measure of a machine that has readings, over its time in service. */
  "trends": { args: { machine: string }; reply: Array<TrendView> };
  /** Opens an engine's log: its columns, and how they might be read. */
  "log-open": { args: { machine: string; name: string; text: string }; reply: LogView };
  /** What a log would tell, read so. */
  "log-preview": { args: { machine: string; text: string; mapping: Mapping | null }; reply: LogPreview };
  /** Signs what a log told, and remembers how its columns were read. */
  "log-take": { args: { machine: string; name: string; text: string; mapping: Mapping | null; hours: number | null; on: string | null; outside: Quantity | null; pin: string }; reply: MachinePage };
  /** Types of component of which lives can be told. */
  "life-parts": { args: {  }; reply: Array<LifePart> };
  /** How long components of a type last. */
  "life": { args: { component: string; chance: number | null; in_force: number | null }; reply: LifeView };
  /** How people look, for an instructor. */
  "looking": { args: {  }; reply: LookingReport };
  /** What the points of the lists are worth, for their author. */
  "list-worth": { args: {  }; reply: ListWorth };
  /** A round with the school's server. */
  "sync": { args: {  }; reply: SyncView };
  /** What the server at an address says of its school. */
  "school-look": { args: { address: string }; reply: SchoolCardView };
  /** Joins that school, or brings this device's own school its server. */
  "school-follow": { args: { address: string; pin: string }; reply: SchoolView };
  /** Those who wait at the server to be admitted. */
  "school-waiting": { args: {  }; reply: Array<ApplicantView> };
  /** Confirms a sign-in at the board. */
  "desk-confirm": { args: { text: string; pin: string }; reply: DeskView };
  /** Fetches what the board prepared, to be read before it is signed. */
  "draft-open": { args: { text: string }; reply: DeskView };
  /** Signs what the board prepared, and sends it. */
  "draft-sign": { args: { text: string; pin: string }; reply: SyncView };
}
