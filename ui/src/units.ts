// The units that a person may read and type in.
import { start } from "./state";
import type { Unit, UnitLists, UnitView } from "./types";

export type Kind = keyof UnitLists;

/** Of each kind, those that instruments and manuals of the trade show: the core's list. */
export const unitsOf = (kind: Kind): UnitView[] => start.value?.unit_lists[kind] ?? [];

/** How a unit of a kind is written. */
export const signOf = (kind: Kind, unit: Unit) => unitsOf(kind).find(({ code }) => code === unit)?.sign ?? unit;

/** In the order in which they are asked. */
export const KINDS: Kind[] = ["mass", "volume", "speed", "temperature", "pressure", "height", "torque"];

/** Among units of one kind the person's own; else the first. Theirs for heights is none for the small lengths that
 * are measured at a machine, nor theirs for the air's pressure one for compression. */
export function ownOf(units: UnitView[]): Unit | undefined {
  const first = units[0]?.code;
  const kind = KINDS.find((one) => unitsOf(one).some(({ code }) => code === first));
  const own = kind && start.value?.units[kind];
  return units.find(({ code }) => code === own)?.code ?? first;
}
