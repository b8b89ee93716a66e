// Where a tightening stands on this device: what the core learns of only when the last nut has clicked.
import { useKept } from "../../drafts";
import type { Adapter, Quantity, Unit } from "../../types";
import { numberOf } from "../../parts/field";
import { keepScroll } from "../../route";
import { t } from "../../words";

/** As typed, before it is an adapter. */
export interface AdapterDraft {
  fitted: boolean;
  lever: string;
  length: string;
  angle: string;
  unit: Unit;
}

export interface BenchDraft {
  tool: string;
  adapter: AdapterDraft;
  /** Steps that have clicked. */
  step: number;
  /** Each nut's movement, nut 1 first. */
  eighths: (number | null)[];
  reading: string;
  readingUnit: Unit | undefined;
  reason: string;
  /** Whether the reason for using a refused tool was given. */
  admitted: boolean;
}

const BLANK: BenchDraft = {
  tool: "",
  adapter: { fitted: false, lever: "", length: "", angle: "0", unit: "mm" },
  step: 0,
  eighths: [],
  reading: "",
  readingUnit: undefined,
  reason: "",
  admitted: false,
};

export function useBench(walk: string, point: string) {
  const [draft, setDraft, done] = useKept<BenchDraft>(`torque/${walk}/${point}`, BLANK);
  return { draft, put: (change: Partial<BenchDraft>) => setDraft({ ...draft, ...change }), done };
}

/** Started anew: with another tool or adapter nothing that clicked before counts. */
export const ANEW: Partial<BenchDraft> = { step: 0, eighths: [] };

/** Another tool in hand, or none: what is against it stands at the top, wherever the last one's words were left.
 * A reason speaks for one tool only: carried over, it would insist on the next one's reading. */
export function inHand(tool: string): Partial<BenchDraft> {
  keepScroll(0);
  return { tool, reason: "", admitted: false, ...ANEW };
}

/** The adapter as the core takes it; none while it isn't fitted or not typed whole. */
export function adapterOf(draft: AdapterDraft): Adapter | null {
  if (!draft.fitted) return null;
  const [lever, length, angle] = [numberOf(draft.lever), numberOf(draft.length), numberOf(draft.angle || "0")];
  if (lever === null || length === null || angle === null) return null;
  return { lever: { value: lever, unit: draft.unit }, adapter: { value: length, unit: draft.unit }, angle_deg: angle };
}

/** Whether an adapter is fitted that can't be reckoned with yet. */
export const halfTyped = (draft: AdapterDraft) => draft.fitted && adapterOf(draft) === null;

export function readingOf(draft: BenchDraft, unit: Unit | undefined): Quantity | null {
  if (draft.reading.trim() === "") return null;
  const value = numberOf(draft.reading);
  if (value === null || !unit)
    throw { kind: "no-number", message: t("limit-no-number", { typed: draft.reading }), hint: t("limit-no-number-hint") };
  return { value, unit };
}
