// Made from the Rust types; don't edit.

export type Unit = "N.m" | "lbf.in" | "lbf.ft" | "kgf.m" | "kgf.cm" | "m" | "mm" | "in" | "ft" | "K" | "Cel" | "degF" | "Pa" | "hPa" | "bar" | "psi" | "inHg" | "V" | "s" | "h" | "d" | "L" | "kg" | "lb" | "N" | "1/min" | "deg" | "%" | "1";

export type Quantity = { value: number; unit: Unit };

export type Given = { answer: string } | { value: Quantity };

export type EngineKind = "two-stroke" | "four-stroke" | "electric";

export type Meaning = "not-fitted" | "serviceable" | "watch" | "unserviceable";

export type State = "fit" | "limited" | "grounded";

export type Rule =
  | "no-description" | "unknown-engine" | "never-looked" | "not-today" | "point-missed" | "open-defect"
  | "watch-item" | "reserve-expired" | "reserve-unknown" | "reserve-soon" | "limit-missing"
  | "limit-unconfirmed" | "newer-record" | "split-word" | "refused-record" | "clock-doubt";

export type Reserve = { repacked_on: string | null; every_days: number };

export type Machine = {
  name: string;
  engine: string;
  fitted: { [key: string]: string };
  reserve?: Reserve;
  hours: number;
  flights: number;
  note: string;
  invented: boolean;
};

export type Look = "open" | "done" | "again" | "left";

export type AskView = { by: "words"; answers: Array<AnswerView> } | ({ by: "value" } & ValueAsk);

export type Start = {
  person: Person | null;
  language: string;
  languages: Array<string>;
  patience_minutes: number;
  cautions: Array<string>;
  warning: string | null;
};

export type Person = {
  name: string;
  device: string;
  keychain: boolean;
};

export type MachineCard = {
  id: string;
  name: string;
  engine: string;
  hours: number;
  flights: number;
  invented: boolean;
  verdict: VerdictView;
  walk: WalkBrief | null;
};

export type WalkBrief = {
  id: string;
  occasion: string;
  words: string;
  done: number;
  of: number;
};

export type VerdictView = {
  state: State;
  headline: string;
  reasons: Array<ReasonView>;
};

export type ReasonView = {
  state: State;
  rule: Rule;
  words: string;
  clears: string;
  record: string | null;
  point: string | null;
  band: string | null;
  because: Array<FactView>;
};

export type FactView = {
  words: string;
  record: string | null;
};

export type Choices = {
  engines: Array<EngineType>;
  parts: Array<Named>;
};

export type EngineType = {
  id: string;
  name: string;
  kind: EngineKind;
  words: string;
  invented: boolean;
};

export type Named = {
  id: string;
  words: string;
};

export type MachinePage = {
  card: MachineCard;
  description: Machine;
  occasions: Array<Named>;
  open: Array<OpenView>;
  timeline: Array<TimelineEntry>;
  limits: Array<LimitView>;
};

export type OpenView = {
  point: string;
  title: string;
  means: Meaning;
  words: string;
  since: string;
  record: string;
};

export type TimelineEntry = {
  record: string;
  when: string;
  at: string;
  kind: string;
  words: string;
  hours: number | null;
  worst: Meaning | null;
  by: string;
};

export type LimitView = {
  band: string;
  words: string;
  value: string;
  low: Quantity | null;
  high: Quantity | null;
  has_low: boolean;
  has_high: boolean;
  units: Array<UnitView>;
  critical: boolean;
  confirmed: boolean;
  source: string;
};

export type UnitView = {
  code: Unit;
  sign: string;
};

export type Walk = {
  id: string;
  machine: string;
  machine_name: string;
  occasion: string;
  words: string;
  stations: Array<StationView>;
  progress: WalkProgress;
};

export type StationView = {
  id: string;
  words: string;
  stand: string;
  points: Array<PointView>;
};

export type PointView = {
  id: string;
  title: string;
  good: string;
  bad: string;
  why: string;
  must: boolean;
  critical: boolean;
  drawing: string;
  focus: string;
  caution: string | null;
  ask: AskView;
  unconfirmed: string | null;
  last_time: LastTime | null;
};

export type LastTime = {
  words: string;
  means: Meaning;
  record: string;
};

export type AnswerView = {
  id: string;
  words: string;
  means: Meaning;
};

export type ValueAsk = {
  band: string;
  words: string;
  low: number | null;
  high: number | null;
  units: Array<UnitView>;
  source: string;
};

export type WalkProgress = {
  current: string | null;
  done: number;
  of: number;
  minutes: number;
  points: { [key: string]: PointState };
  stepped_back: string | null;
  can_undo: boolean;
};

export type PointState = {
  state: Look;
  given: GivenView | null;
  note: string;
  photos: Array<string>;
};

export type GivenView = {
  given: Given;
  words: string;
  means: Meaning;
};

export type JudgedView = {
  means: Meaning;
  value: number;
  words: string;
};

export type Summary = {
  minutes: number;
  done: number;
  of: number;
  sentences: Array<string>;
  hurried: Array<Named>;
  left: Array<LeftView>;
  found: Array<FoundView>;
  preview: VerdictView;
};

export type LeftView = {
  id: string;
  words: string;
  must: boolean;
};

export type FoundView = {
  id: string;
  title: string;
  words: string;
  means: Meaning;
};

export type Signed = {
  record: string;
  machine: string;
  verdict: VerdictView;
};

export type RecordView = {
  digest: string;
  kind: string;
  words: string;
  by: string;
  device: string;
  when: string;
  seq: number;
  signature: string;
  good: boolean;
  machine: string | null;
  findings: Array<FindingView>;
  left: Array<LeftView>;
  interruptions: Array<string>;
  payload: string;
};

export type FindingView = {
  point: string;
  station: string;
  title: string;
  words: string;
  means: Meaning;
  band: string | null;
  note: string;
  photos: Array<string>;
  seconds: number;
  before: Array<string>;
  corrections: Array<string>;
  choices: Array<AnswerView>;
};

export type FileOut = {
  name: string;
  text: string;
};

export type VerifyView = {
  good: boolean;
  headline: string;
  records: number;
  people: Array<Named>;
  machines: Array<Named>;
  faults: Array<VerifyFault>;
};

export type VerifyFault = {
  what: string;
  line: number | null;
  record: string | null;
  words: string;
  hint: string;
};

export type Photo = {
  media: string;
  data: string;
};

export interface Calls {
  /** What the app is when it opens. */
  "start": { args: {  }; reply: Start };
  /** First start: makes this device's key and seals it with the PIN. */
  "begin": { args: { name: string; pin: string }; reply: Start };
  /** Changes the PIN. */
  "change-pin": { args: { old: string; new: string }; reply: Start };
  /** Changes what this device keeps to itself: language, patience. */
  "settings": { args: { language: string; patience_minutes: number }; reply: Start };
  /** All drawings, by name: SVG to be inlined. */
  "drawings": { args: {  }; reply: { [key: string]: string } };
  /** Adds the invented machines of the demonstration. */
  "demo": { args: {  }; reply: Array<MachineCard> };
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
  /** A record laid open. */
  "record": { args: { digest: string }; reply: RecordView };
  /** Signs that what is open at a point was put right. */
  "rectify": { args: { machine: string; point: string; how: string; pin: string }; reply: MachinePage };
  /** Signs a later word on a finding. */
  "correct": { args: { record: string; point: string; answer: string; reason: string; pin: string }; reply: MachinePage };
  /** Signs a limit as the maker's manual has it. */
  "confirm-limit": { args: { machine: string; band: string; low: Quantity | null; high: Quantity | null; document: string; page: string; pin: string }; reply: MachinePage };
  /** One machine's records as a bundle. */
  "export": { args: { machine: string }; reply: FileOut };
  /** Checks a bundle with nothing but itself. */
  "verify": { args: { text: string }; reply: VerifyView };
}
